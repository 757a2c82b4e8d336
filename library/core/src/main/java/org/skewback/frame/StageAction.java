package org.skewback.frame;

import java.util.List;

/** Something done to a structure while it is built, changed or taken down. */
public sealed interface StageAction {

    /** How a new member meets nodes that have moved. */
    enum Fit {
        /**
         * Made to its length and shape in the unloaded model. From a node that is there to a new one it
         * goes on straight along the tangent and carries the new node with it; between two nodes that
         * are there it is forced in, and the forces are locked in.
         */
        DESIGNED,
        /**
         * Cut and fitted to where its nodes are now, so that it has no stress. A new node is set out at
         * its place in the model.
         */
        FITTED
    }

    /**
     * Adds members and the nodes they bring.
     *
     * @param members names of the members
     * @param fit how they meet nodes that have moved
     */
    record Install(List<String> members, Fit fit) implements StageAction {
        /**
         * Copies the names.
         *
         * @param members names of the members
         * @param fit how they meet nodes that have moved
         */
        public Install {
            members = List.copyOf(members);
        }
    }

    /**
     * Takes members away; what they carried goes to the rest.
     *
     * @param members names of the members
     */
    record Dismantle(List<String> members) implements StageAction {
        /**
         * Copies the names.
         *
         * @param members names of the members
         */
        public Dismantle {
            members = List.copyOf(members);
        }
    }

    /**
     * Puts loads on, until they are withdrawn. A {@link SelfWeight} of all members acts on every
     * member from the stage in which it is installed.
     *
     * @param loads the loads
     */
    record Apply(LoadCase loads) implements StageAction {}

    /**
     * Takes loads off.
     *
     * @param loads name of a load case that was put on
     */
    record Withdraw(String loads) implements StageAction {}

    /**
     * Tensions a member: its unstressed length is changed so that, when the stage is done, it has a
     * given axial force at its start. Several in one stage reach their forces together.
     *
     * @param member the member
     * @param force axial force wanted at its start, N, positive in tension
     */
    record Tension(String member, double force) implements StageAction {
        /**
         * Checks the force.
         *
         * @param member the member
         * @param force axial force wanted, N
         * @throws IllegalArgumentException if it is not finite
         */
        public Tension {
            Require.finite("force of member " + member, force, "N");
        }
    }

    /**
     * Jacks a member: its unstressed length is changed by a given amount.
     *
     * @param member the member
     * @param lengthening change of its unstressed length, m; negative draws in
     */
    record Jack(String member, double lengthening) implements StageAction {
        /**
         * Checks the amount.
         *
         * @param member the member
         * @param lengthening change of its unstressed length, m
         * @throws IllegalArgumentException if it is not finite
         */
        public Jack {
            Require.finite("jacking of member " + member, lengthening, "m");
        }
    }

    /**
     * Releases a joint at an end of a beam-column; what it carried goes to the rest.
     *
     * @param member the member
     * @param atEnd whether at its end, else at its start
     * @param motion what is released, local axes
     */
    record Release(String member, boolean atEnd, Motion motion) implements StageAction {}

    /**
     * Locks a released joint as it stands, so that it carries from now on.
     *
     * @param member the member
     * @param atEnd whether at its end, else at its start
     * @param motion what is locked, local axes
     */
    record Lock(String member, boolean atEnd, Motion motion) implements StageAction {}

    /**
     * Adds a support that takes its node where it is now, without force.
     *
     * @param support the support
     */
    record Hold(Support support) implements StageAction {}

    /**
     * Takes a support away; what it carried goes to the rest.
     *
     * @param support the support, as it was given
     */
    record LetGo(Support support) implements StageAction {}
}
