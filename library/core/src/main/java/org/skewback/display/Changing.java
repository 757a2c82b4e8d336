package org.skewback.display;

/**
 * A value whose display changes while it is shown, such as the progress of long work.
 *
 * <p>A kernel that knows the interface asks, when it shows such a value, to be called whenever the
 * display has changed, and then shows it anew in the same place. As with {@link Displayable}, only
 * {@code java.*} types appear, and a kernel that does not know the interface never calls it.
 */
public interface Changing extends Displayable {

    /**
     * Says what to call whenever the display has changed.
     *
     * @param show shows the value anew; called on the thread that changes it
     */
    void whenChanged(Runnable show);
}
