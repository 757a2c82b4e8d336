/** The checker's side: independent numbers, comments, concessions, and who signed what. */
@NullMarked
package org.skewback.desk.checking;

import org.jspecify.annotations.NullMarked;
