package org.skewback.frame;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A load case read for a model: forces on nodes, loads on members, movements of the ground. */
final class AppliedLoads {

    private final double[] nodal;
    private final double[] ground;
    private final @Nullable ElementLoad[] members;
    private boolean places;

    private AppliedLoads(int nodes, int members) {
        nodal = new double[6 * nodes];
        ground = new double[6 * nodes];
        this.members = new ElementLoad[members];
    }

    /** Forces and moments on nodes, six a node, global axes. */
    double[] nodal() {
        return nodal;
    }

    /** Movements of the ground under nodes, six a node, global axes. */
    double[] ground() {
        return ground;
    }

    /** Lets supports hold their nodes where they took them, see {@link FrameSystem#stage}. */
    void takePlaces() {
        places = true;
    }

    boolean takesPlaces() {
        return places;
    }

    /** A load on one member only. */
    static AppliedLoads onMember(FrameModel model, int member, ElementLoad load) {
        AppliedLoads applied = new AppliedLoads(model.nodes().size(), model.members().size());
        applied.addOnMember(member, load);
        return applied;
    }

    void addOnMember(int member, ElementLoad load) {
        if (!load.isNothing()) {
            loadOf(member).plus(1, load);
        }
    }

    boolean isLoaded(int member) {
        return members[member] != null;
    }

    ElementLoad member(int member) {
        ElementLoad load = members[member];
        return load == null ? ElementLoad.NONE : load;
    }

    /** The sum of some loads, each times a factor. */
    static AppliedLoads sum(FrameModel model, List<AppliedLoads> loads, double[] factors) {
        AppliedLoads sum = new AppliedLoads(model.nodes().size(), model.members().size());
        for (int k = 0; k < factors.length; k++) {
            AppliedLoads one = loads.get(k);
            if (factors[k] == 0) {
                continue;
            }
            for (int i = 0; i < sum.nodal.length; i++) {
                sum.nodal[i] += factors[k] * one.nodal[i];
                sum.ground[i] += factors[k] * one.ground[i];
            }
            for (int m = 0; m < sum.members.length; m++) {
                ElementLoad load = one.members[m];
                if (load != null) {
                    sum.loadOf(m).plus(factors[k], load);
                }
            }
        }
        return sum;
    }

    private ElementLoad loadOf(int member) {
        ElementLoad load = members[member];
        if (load == null) {
            load = new ElementLoad();
            members[member] = load;
        }
        return load;
    }

    static AppliedLoads of(FrameModel model, List<Element> elements, List<Load> loads) {
        AppliedLoads applied = new AppliedLoads(model.nodes().size(), elements.size());
        for (Load load : loads) {
            applied.add(model, elements, load);
        }
        for (int m = 0; m < elements.size(); m++) {
            if (applied.isLoaded(m)) {
                elements.get(m).requireCarries(applied.member(m));
            }
        }
        return applied;
    }

    private void add(FrameModel model, List<Element> elements, Load load) {
        if (load instanceof NodalLoad nodalLoad) {
            addSix(
                    nodal,
                    model.indexOfNode(nodalLoad.node()),
                    nodalLoad.force(),
                    nodalLoad.moment());
        } else if (load instanceof GroundMovement movement) {
            addSix(
                    ground,
                    model.indexOfNode(movement.node()),
                    movement.translation(),
                    movement.rotation());
        } else if (load instanceof SelfWeight weight) {
            if (weight.members().isEmpty()) {
                for (int m = 0; m < elements.size(); m++) {
                    addWeight(m, elements.get(m), weight.acceleration());
                }
            }
            for (String name : weight.members()) {
                int m = model.indexOfMember(name);
                addWeight(m, elements.get(m), weight.acceleration());
            }
        } else if (load instanceof PointLoad point) {
            Element element = elements.get(model.indexOfMember(point.member()));
            boolean local = point.axes() == LoadAxes.LOCAL;
            loadOf(model.indexOfMember(point.member()))
                    .add(
                            new ElementLoad.Point(
                                    within(element, point.position()),
                                    components(element, point.force(), local),
                                    components(element, point.moment(), local)));
        } else if (load instanceof LineLoad line) {
            Element element = elements.get(model.indexOfMember(line.member()));
            double[][] force =
                    coefficients(
                            intensity(element, line.atFrom(), line.axes()),
                            intensity(element, line.atTo(), line.axes()),
                            end(element, line.to()) - line.from());
            addPiece(model, element, line.from(), line.to(), force, new double[3][3]);
        } else if (load instanceof LineMoment line) {
            Element element = elements.get(model.indexOfMember(line.member()));
            double[][] moment =
                    coefficients(
                            intensity(element, line.atFrom(), line.axes()),
                            intensity(element, line.atTo(), line.axes()),
                            end(element, line.to()) - line.from());
            addPiece(model, element, line.from(), line.to(), new double[3][3], moment);
        } else {
            addDeformation(model, elements, load);
        }
    }

    private void addDeformation(FrameModel model, List<Element> elements, Load load) {
        if (load instanceof Warming warming) {
            int m = model.indexOfMember(warming.member());
            double expansion = elements.get(m).expansion();
            ElementLoad on = loadOf(m);
            on.addStrain(0, expansion * warming.rise());
            // A warmer top (+z) curves the member as tension on top would: against M_y.
            on.addStrain(4, -expansion * warming.gradientZ());
            on.addStrain(5, -expansion * warming.gradientY());
        } else if (load instanceof LackOfFit misfit) {
            int m = model.indexOfMember(misfit.member());
            loadOf(m).addStrain(0, misfit.excess() / positiveLength(elements.get(m)));
        } else if (load instanceof InitialForce initial) {
            int m = model.indexOfMember(initial.member());
            positiveLength(elements.get(m));
            loadOf(m).addHeldTension(initial.tension());
        } else if (load instanceof Tendon tendon) {
            int m = model.indexOfMember(tendon.member());
            double length = positiveLength(elements.get(m));
            loadOf(m)
                    .add(
                            new ElementLoad.Cable(
                                    tendon.force(),
                                    parabola(
                                            tendon.startY(),
                                            tendon.middleY(),
                                            tendon.endY(),
                                            length),
                                    parabola(
                                            tendon.startZ(),
                                            tendon.middleZ(),
                                            tendon.endZ(),
                                            length)));
        } else if (load instanceof CablePull pull) {
            List<String> names = pull.members();
            for (int m = 0; m < elements.size(); m++) {
                if (elements.get(m) instanceof CableElement && names.isEmpty()) {
                    loadOf(m).addStanding(1);
                }
            }
            for (String name : names) {
                int m = model.indexOfMember(name);
                if (!(elements.get(m) instanceof CableElement)) {
                    throw new IllegalArgumentException(
                            "member " + name + " pulls as a cable; allowed are cables.");
                }
                loadOf(m).addStanding(1);
            }
        } else if (load instanceof Dislocation gap) {
            int m = model.indexOfMember(gap.member());
            loadOf(m)
                    .add(
                            new ElementLoad.Gap(
                                    within(elements.get(m), gap.position()),
                                    gap.component().index(),
                                    gap.amount()));
        } else {
            throw new IllegalArgumentException("load " + load + " is of no known kind.");
        }
    }

    private static void addSix(double[] to, int node, Vector first, Vector second) {
        for (int k = 0; k < 3; k++) {
            to[6 * node + k] += first.get(k);
            to[6 * node + 3 + k] += second.get(k);
        }
    }

    private void addWeight(int m, Element element, Vector acceleration) {
        double length = element.length();
        if (length == 0 || element.massPerLength(0) == 0 || element.hasOwnWeight()) {
            return;
        }
        double[] mass = {
            element.massPerLength(0),
            element.massPerLength(length / 2),
            element.massPerLength(length)
        };
        double[] byPower = parabola(mass[0], mass[1], mass[2], length);
        double[] pull = element.localComponents(acceleration);
        double[][] force = new double[3][3];
        for (int power = 0; power < 3; power++) {
            for (int k = 0; k < 3; k++) {
                force[power][k] = byPower[power] * pull[k];
            }
        }
        loadOf(m).add(new ElementLoad.Piece(0, length, force, new double[3][3]));
    }

    /** Coefficients by power of the parabola through values at the start, middle and end. */
    private static double[] parabola(double start, double middle, double end, double length) {
        if (start == middle && middle == end) {
            return new double[] {start, 0, 0};
        }
        return new double[] {
            start,
            (4 * middle - 3 * start - end) / length,
            2 * (start + end - 2 * middle) / (length * length)
        };
    }

    private static double positiveLength(Element element) {
        if (element.length() == 0) {
            throw new IllegalArgumentException(
                    "link " + element.name() + " is deformed by a load; allowed are members.");
        }
        return element.length();
    }

    private static double within(Element element, double position) {
        double length = element.length();
        double slack = 1e-9 * length;
        return Math.min(
                Require.within(
                        "position on member " + element.name(), position, 0, length + slack, "m"),
                length);
    }

    private static double end(Element element, double to) {
        return to == Double.POSITIVE_INFINITY ? element.length() : within(element, to);
    }

    private static double[] components(Element element, Vector vector, boolean local) {
        return local
                ? new double[] {vector.x(), vector.y(), vector.z()}
                : element.localComponents(vector);
    }

    private static double[] intensity(Element element, Vector given, LoadAxes axes) {
        if (axes != LoadAxes.PROJECTED) {
            return components(element, given, axes == LoadAxes.LOCAL);
        }
        Vector along = element.axis(0);
        return components(
                element,
                new Vector(
                        given.x() * across(along.x()),
                        given.y() * across(along.y()),
                        given.z() * across(along.z())),
                false);
    }

    /** Projected length over length. */
    private static double across(double cosine) {
        return Math.sqrt(Math.max(0, 1 - cosine * cosine));
    }

    private static double[][] coefficients(double[] from, double[] to, double width) {
        double[][] coefficients = new double[3][3];
        for (int k = 0; k < 3; k++) {
            coefficients[0][k] = from[k];
            coefficients[1][k] = (to[k] - from[k]) / width;
        }
        return coefficients;
    }

    private void addPiece(
            FrameModel model,
            Element element,
            double from,
            double to,
            double[][] force,
            double[][] moment) {
        double end = end(element, to);
        if (!(end > from)) {
            throw Require.refused(
                    "begin of a load on member " + element.name(),
                    from,
                    "m",
                    "less than " + end + " m");
        }
        loadOf(model.indexOfMember(element.name()))
                .add(new ElementLoad.Piece(from, end, force, moment));
    }
}
