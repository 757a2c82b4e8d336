/**
 * The program of the worker VM: it runs the cells and renders their values.
 *
 * <p>Only the Java platform is used here, so that nothing on the class path of the notebook can clash
 * with the kernel's own libraries. Only {@link org.skewback.kernel.worker.Link} is used on both sides.
 */
@NullMarked
package org.skewback.kernel.worker;

import org.jspecify.annotations.NullMarked;
