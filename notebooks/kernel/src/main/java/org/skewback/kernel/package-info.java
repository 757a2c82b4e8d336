/**
 * The Jupyter kernel for Java: the front process that speaks the protocol.
 *
 * <p>It compiles cells itself and has them run by a worker VM, so that nothing a cell does can end the
 * kernel.
 */
@NullMarked
package org.skewback.kernel;

import org.jspecify.annotations.NullMarked;
