/** The program {@code skewback}: its verbs, what it prints, and its exit codes. */
@NullMarked
package org.skewback.desk.command;

import org.jspecify.annotations.NullMarked;
