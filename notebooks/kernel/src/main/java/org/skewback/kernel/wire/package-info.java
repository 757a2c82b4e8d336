/**
 * The Jupyter wire protocol: messages, their signature and the connection file.
 *
 * <p>Nothing here knows of Java cells; a client and a kernel use the same classes.
 */
@NullMarked
package org.skewback.kernel.wire;

import org.jspecify.annotations.NullMarked;
