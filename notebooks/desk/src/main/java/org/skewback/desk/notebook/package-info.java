/** The notebook document: read, written, and checked against the open format. */
@NullMarked
package org.skewback.desk.notebook;

import org.jspecify.annotations.NullMarked;
