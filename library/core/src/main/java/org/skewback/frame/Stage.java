package org.skewback.frame;

import java.util.List;

/**
 * A step of construction: what is done before the structure is looked at again.
 *
 * <p>All actions of a stage act on the structure as the stage before left it; their order does not
 * matter, save that of two changes to one thing the later counts.
 *
 * @param name what the stage is called
 * @param actions what is done
 */
public record Stage(String name, List<StageAction> actions) {

    /**
     * Copies the actions.
     *
     * @param name what the stage is called
     * @param actions what is done
     * @throws IllegalArgumentException if the name is blank
     */
    public Stage {
        Require.name("stage", name);
        actions = List.copyOf(actions);
    }

    /**
     * Makes a stage.
     *
     * @param name what it is called
     * @param actions what is done
     * @return the stage
     */
    public static Stage of(String name, StageAction... actions) {
        return new Stage(name, List.of(actions));
    }
}
