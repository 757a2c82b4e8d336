package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * A model with its beam-columns divided into equal pieces, so that shapes between nodes come out as
 * they are and not as a cubic. Nodes keep their numbers; bars and links are not divided.
 */
final class Division {

    private final FrameModel divided;
    private final List<Piece> pieces;
    private final int[] first;

    /**
     * A piece of a member.
     *
     * @param member number of the member it is part of
     * @param from distance of its start from the start of the member, m
     */
    record Piece(int member, double from) {}

    private Division(FrameModel divided, List<Piece> pieces, int[] first) {
        this.divided = divided;
        this.pieces = pieces;
        this.first = first;
    }

    static Division of(FrameModel model, List<Element> elements, int parts) {
        FrameModelBuilder builder = FrameModel.builder();
        model.nodes().forEach(builder::node);
        model.supports().forEach(builder::support);
        List<Piece> pieces = new ArrayList<>();
        int[] first = new int[elements.size() + 1];
        for (int m = 0; m < elements.size(); m++) {
            first[m] = pieces.size();
            Element element = elements.get(m);
            int count = element.member() instanceof BeamColumn ? parts : 1;
            for (int k = 0; k < count; k++) {
                pieces.add(new Piece(m, k * element.length() / count));
                builder.add(piece(model, element, k, count, builder));
            }
        }
        first[elements.size()] = pieces.size();
        FrameModel divided = (model.isInPlane() ? builder.inPlane() : builder).build();
        return new Division(divided, List.copyOf(pieces), first);
    }

    private static Member piece(
            FrameModel model, Element element, int k, int count, FrameModelBuilder builder) {
        if (count == 1 || !(element.member() instanceof BeamColumn whole)) {
            return element.member();
        }
        boolean last = k == count - 1;
        if (!last) {
            Vector place =
                    element.startPlace(model)
                            .plus(element.axis(0).times((k + 1) * element.length() / count));
            builder.node(new Node(inner(whole, k + 1, count), place));
        }
        SectionProfile profile = whole.profile();
        if (!(profile instanceof SectionProfile.Uniform)) {
            SectionProfile all = profile;
            profile = fraction -> all.at((k + fraction) / count);
        }
        return new BeamColumn(
                whole.name() + ", piece " + (k + 1) + " of " + count,
                k == 0 ? whole.start() : inner(whole, k, count),
                last ? whole.end() : inner(whole, k + 1, count),
                whole.material(),
                profile,
                new Orientation(element.axis(2), 0),
                k == 0 ? whole.startOffset() : Vector.ZERO,
                last ? whole.endOffset() : Vector.ZERO,
                k == 0 ? whole.startConnection() : EndConnection.RIGID,
                last ? whole.endConnection() : EndConnection.RIGID);
    }

    private static String inner(BeamColumn whole, int k, int count) {
        return whole.name() + " at " + k + "/" + count;
    }

    FrameModel model() {
        return divided;
    }

    /** What a member of the divided model is a piece of. */
    Piece piece(int index) {
        return pieces.get(index);
    }

    int size() {
        return pieces.size();
    }

    /** Number of the first piece of a member. */
    int first(int member) {
        return first[member];
    }

    /** Number after the last piece of a member. */
    int after(int member) {
        return first[member + 1];
    }

    /** Number of the piece of a member that holds a place. */
    int holding(int member, double x) {
        int index = first[member];
        while (index + 1 < first[member + 1] && pieces.get(index + 1).from() <= x) {
            index++;
        }
        return index;
    }

    /** Which pieces are there when only some members are. */
    boolean[] present(boolean[] members) {
        boolean[] present = new boolean[pieces.size()];
        for (int p = 0; p < present.length; p++) {
            present[p] = members[pieces.get(p).member()];
        }
        return present;
    }
}
