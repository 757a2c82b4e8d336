package org.skewback.frame;

/** What joins two nodes. */
public sealed interface Member permits BeamColumn, Bar, CableMember, SpringLink {

    /**
     * Gives the name.
     *
     * @return what the member is called, unique in a model
     */
    String name();

    /**
     * Gives the node where the member starts.
     *
     * @return name of the node
     */
    String start();

    /**
     * Gives the node where the member ends.
     *
     * @return name of the node
     */
    String end();
}
