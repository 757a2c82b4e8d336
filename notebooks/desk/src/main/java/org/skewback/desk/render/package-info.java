/** The issued pages: HTML for the screen and PDF for paper, from records and prose. */
@NullMarked
package org.skewback.desk.render;

import org.jspecify.annotations.NullMarked;
