package org.skewback.figure;

import org.skewback.frame.BeamColumn;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Member;
import org.skewback.frame.SpringLink;
import org.skewback.frame.Vector;

/**
 * Where a member lies.
 *
 * @param member the member
 * @param startNode place of the node where it starts
 * @param start where its flexible part starts
 * @param end where its flexible part ends
 * @param endNode place of the node where it ends
 */
record MemberLine(Member member, Vector startNode, Vector start, Vector end, Vector endNode) {

    static MemberLine of(FrameModel model, Member member) {
        Vector from = model.node(member.start()).place();
        Vector to = model.node(member.end()).place();
        if (member instanceof BeamColumn beam) {
            return new MemberLine(
                    member, from, from.plus(beam.startOffset()), to.plus(beam.endOffset()), to);
        }
        return new MemberLine(member, from, from, to, to);
    }

    String name() {
        return member.name();
    }

    boolean isLink() {
        return member instanceof SpringLink;
    }

    /** Whether its axis can leave the straight line between its ends. */
    boolean bends() {
        return member instanceof BeamColumn;
    }

    double length() {
        return end.minus(start).length();
    }

    /** The point at a share of its length. */
    Vector at(double share) {
        return start.plus(end.minus(start).times(share));
    }
}
