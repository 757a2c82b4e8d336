@NullMarked
package org.skewback.kernel.repository;

import org.jspecify.annotations.NullMarked;
