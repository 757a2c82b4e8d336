package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.sheet.Figure;
import org.skewback.slope.Orientation;

/**
 * Draws planes and lines of rock on the lower half of a sphere seen from above: great circles, poles,
 * friction, the face, and where a line of intersection may slide out of it.
 *
 * <p>North is up, east to the right. A line of plunge p lies at the distance {@code tan(45° − p/2)}
 * from the middle in the projection of equal angles, {@code √2 sin(45° − p/2)} in that of equal
 * areas, the rim having the radius 1. Source: any textbook of structural geology; E. Hoek and J. W.
 * Bray, Rock Slope Engineering (1981), ch. 3 (from memory). A drawing in the making belongs to one
 * thread.
 */
public final class Stereonet {

    private static final double MM = Board.MILLIMETRE;
    private static final int PARTS = 72;

    /** Into how many parts a curve is divided to find a place for its name. */
    private static final int NAME_PLACES = 18;

    private static final LineStyle[] IN_TURN = {
        LineStyle.FIRST, LineStyle.SECOND, LineStyle.THIRD, LineStyle.FOURTH, LineStyle.RESULT
    };

    private final String title;
    private final Projection projection;
    private final List<Curve> curves = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final List<Poles> poles = new ArrayList<>();
    private final List<double[]> zones = new ArrayList<>();
    private String description = "";
    private int turn;

    /** How the half sphere is laid flat. */
    public enum Projection {
        /** Angles are kept: circles on the sphere are circles on the page. */
        EQUAL_ANGLE,
        /** Areas are kept: for the density of poles. */
        EQUAL_AREA;

        /**
         * Gives where a line that points down comes to lie.
         *
         * @param trend trend, clockwise from north, rad, finite
         * @param plunge plunge below the level, rad, from 0 to π/2
         * @return {@code {east, north}} over the radius of the rim
         * @throws IllegalArgumentException if the plunge is out of its range
         */
        public double[] place(double trend, double plunge) {
            Check.finite("trend", trend);
            Check.within("plunge in rad", plunge, -1e-9, Math.PI / 2 + 1e-9);
            double half = Math.PI / 4 - plunge / 2;
            double radius =
                    this == EQUAL_ANGLE
                            ? StrictMath.tan(half)
                            : Math.sqrt(2) * StrictMath.sin(half);
            return new double[] {radius * StrictMath.sin(trend), radius * StrictMath.cos(trend)};
        }

        /** Place of a direction with its part upward taken to the other side. */
        private double[] place(double[] v) {
            double sign = v[2] > 0 ? -1 : 1;
            double plunge = StrictMath.asin(Math.min(1, Math.max(0, -sign * v[2])));
            return place(StrictMath.atan2(sign * v[0], sign * v[1]), plunge);
        }
    }

    /** A curve; its arrays are never changed. */
    private static final class Curve {
        private final String name;
        private final double[] x;
        private final double[] y;
        private final LineStyle style;

        Curve(String name, double[][] points, LineStyle style) {
            this.name = name;
            this.style = style;
            x = new double[points.length];
            y = new double[points.length];
            for (int i = 0; i < points.length; i++) {
                x[i] = points[i][0];
                y[i] = points[i][1];
            }
        }
    }

    /**
     * A named point.
     *
     * @param name what to call it
     * @param at its place
     */
    private record Spot(String name, Point at) {}

    /**
     * Poles of a set.
     *
     * @param name what to call it
     * @param places their places
     * @param mean place of the mean pole
     * @param marker marker
     */
    private record Poles(String name, List<Point> places, Point mean, Marker marker) {}

    private Stereonet(String title, Projection projection) {
        this.title = Check.words("title", title);
        this.projection = projection;
    }

    /**
     * Starts an empty net.
     *
     * @param title the figure's title, one line
     * @param projection how the half sphere is laid flat
     * @return a net with its rim
     * @throws IllegalArgumentException if the title is blank
     */
    public static Stereonet titled(String title, Projection projection) {
        return new Stereonet(title, projection);
    }

    /**
     * Says what the figure shows, for whoever cannot see it. Without it there is no figure.
     *
     * @param text one or more sentences
     * @return this net
     * @throws IllegalArgumentException if the text is blank
     */
    public Stereonet describedBy(String text) {
        description = Check.words("description", text);
        return this;
    }

    /**
     * Draws a joint as a great circle.
     *
     * @param name what to call it
     * @param joint its orientation, not overhanging
     * @return this net
     * @throws IllegalArgumentException if the name is blank, the plane overhangs, or five great
     *     circles are there already
     */
    public Stereonet plane(String name, Orientation joint) {
        if (turn >= IN_TURN.length) {
            throw new IllegalArgumentException(
                    "plane \"" + name + "\" would be the sixth; a net shows at most five");
        }
        return greatCircle(name, joint, IN_TURN[turn++]);
    }

    /**
     * Draws the face as a heavy great circle.
     *
     * @param name what to call it
     * @param face its orientation, not overhanging
     * @return this net
     * @throws IllegalArgumentException if the name is blank or the plane overhangs
     */
    public Stereonet face(String name, Orientation face) {
        return greatCircle(name, face, LineStyle.CUT);
    }

    private Stereonet greatCircle(String name, Orientation plane, LineStyle style) {
        Check.printable("name of the plane", name);
        Check.within("dip in rad", plane.dip(), 0, Math.PI / 2);
        double[] strike = direction(plane.dipDirection() - Math.PI / 2, 0);
        double[] down = direction(plane.dipDirection(), plane.dip());
        double[][] points = new double[PARTS + 1][];
        for (int i = 0; i <= PARTS; i++) {
            points[i] = projection.place(turned(strike, down, Math.PI * i / PARTS));
        }
        curves.add(new Curve(name, points, style));
        return this;
    }

    /**
     * Marks the poles of a set of joints: the lines square to them, pointing down.
     *
     * @param name what to call the set
     * @param joints their orientations, at least one
     * @return this net
     * @throws IllegalArgumentException if the name is blank, there is no joint, or four sets are
     *     there already
     */
    public Stereonet poles(String name, List<Orientation> joints) {
        Check.printable("name of the set", name);
        Check.atLeast("set \"" + name + "\"", joints.size(), 1);
        if (poles.size() >= Marker.IN_TURN.size()) {
            throw new IllegalArgumentException(
                    "set \"" + name + "\" would be the fifth; the house has four markers");
        }
        double[] sum = new double[3];
        List<Point> places = new ArrayList<>();
        for (Orientation joint : joints) {
            double[] pole = pole(joint);
            double sign = dot(sum, pole) < 0 ? -1 : 1;
            for (int k = 0; k < 3; k++) {
                sum[k] += sign * pole[k];
            }
            double[] at = projection.place(pole);
            places.add(Point.at(at[0], at[1]));
        }
        double length = Math.sqrt(dot(sum, sum));
        double[] mean =
                projection.place(new double[] {sum[0] / length, sum[1] / length, sum[2] / length});
        poles.add(
                new Poles(
                        name,
                        List.copyOf(places),
                        Point.at(mean[0], mean[1]),
                        Marker.IN_TURN.get(poles.size())));
        return this;
    }

    /**
     * Marks a line, such as that in which two joints meet.
     *
     * @param name what to call it
     * @param trend trend, clockwise from north, rad
     * @param plunge plunge below the level, rad, from 0 to π/2
     * @return this net
     * @throws IllegalArgumentException if the name is blank or the plunge out of its range
     */
    public Stereonet line(String name, double trend, double plunge) {
        double[] at = projection.place(trend, plunge);
        spots.add(new Spot(Check.printable("name of the line", name), Point.at(at[0], at[1])));
        return this;
    }

    /**
     * Draws the circle of lines that plunge at the friction angle: inside it they are steeper.
     *
     * @param name what to call it
     * @param friction friction angle, rad, from 0 to π/2
     * @return this net
     * @throws IllegalArgumentException if the name is blank or the angle out of its range
     */
    public Stereonet frictionCircle(String name, double friction) {
        Check.printable("name of the friction circle", name);
        double[][] points = new double[PARTS + 1][];
        for (int i = 0; i <= PARTS; i++) {
            points[i] = projection.place(2 * Math.PI * i / PARTS, friction);
        }
        curves.add(new Curve(name, points, LineStyle.HIDDEN));
        return this;
    }

    /**
     * Draws the cone of directions at the friction angle about the pole of a joint: a force within
     * it does not slide on the joint.
     *
     * @param name what to call it
     * @param joint the joint
     * @param friction friction angle, rad, from 0 to π/2
     * @return this net
     * @throws IllegalArgumentException if the name is blank or the angle out of its range
     */
    public Stereonet frictionCone(String name, Orientation joint, double friction) {
        Check.printable("name of the friction cone", name);
        Check.within("friction angle in rad", friction, 0, Math.PI / 2);
        double[] axis = pole(joint);
        double[] across = direction(joint.dipDirection() - Math.PI / 2, 0);
        double[] third = cross(axis, across);
        List<double[]> piece = new ArrayList<>();
        boolean named = false;
        double before = Double.NaN;
        for (int i = 0; i <= PARTS; i++) {
            double angle = 2 * Math.PI * i / PARTS;
            double[] side = turned(across, third, angle);
            double[] v = turned(axis, side, friction);
            // Where the cone goes through the rim it comes back on the other side.
            if (v[2] * before < 0) {
                named = addPiece(name, piece, named);
            }
            before = v[2];
            piece.add(projection.place(v));
        }
        addPiece(name, piece, named);
        return this;
    }

    private boolean addPiece(String name, List<double[]> piece, boolean named) {
        if (piece.size() > 1) {
            curves.add(
                    new Curve(named ? "" : name, piece.toArray(new double[0][]), LineStyle.HIDDEN));
            piece.clear();
            return true;
        }
        piece.clear();
        return named;
    }

    /**
     * Fills where a line of intersection slides out of a face: steeper than friction, flatter than
     * the face in its direction.
     *
     * <p>Source: J. W. Markland (1972) (from memory). Outside it, a wedge may still fail by water,
     * loads or an earthquake.
     *
     * @param face the face, steeper than the friction angle, not overhanging
     * @param friction friction angle, rad, from 0 to less than the face's dip
     * @return this net
     * @throws IllegalArgumentException if an angle is out of its range
     */
    public Stereonet slidingZone(Orientation face, double friction) {
        Check.within("dip of the face in rad", face.dip(), 0, Math.PI / 2 - 1e-9);
        Check.within("friction angle in rad", friction, 0, Math.nextDown(face.dip()));
        double half = StrictMath.acos(StrictMath.tan(friction) / StrictMath.tan(face.dip()));
        List<double[]> rim = new ArrayList<>();
        for (int i = 0; i <= PARTS; i++) {
            double trend = face.dipDirection() - half + 2 * half * i / PARTS;
            double dip = Math.max(friction, face.apparentDip(trend));
            rim.add(projection.place(trend, dip));
        }
        for (int i = PARTS; i >= 0; i--) {
            rim.add(projection.place(face.dipDirection() - half + 2 * half * i / PARTS, friction));
        }
        double[] xy = new double[2 * rim.size()];
        for (int i = 0; i < rim.size(); i++) {
            xy[2 * i] = rim.get(i)[0];
            xy[2 * i + 1] = rim.get(i)[1];
        }
        zones.add(xy);
        return this;
    }

    /**
     * Draws.
     *
     * @return the figure
     * @throws IllegalArgumentException if nothing is described
     */
    public Figure figure() {
        return drawing().figure();
    }

    Elevation drawing() {
        Elevation drawing = Elevation.inUnit(title, "").size(165, 112);
        if (!description.isEmpty()) {
            drawing.describedBy(description);
        }
        for (double[] zone : zones) {
            drawing.drawn(Elevation.AREAS, board -> board.area(page(board, zone), Area.CUT));
        }
        double[] rimX = new double[PARTS + 1];
        double[] rimY = new double[PARTS + 1];
        for (int i = 0; i <= PARTS; i++) {
            rimX[i] = StrictMath.sin(2 * Math.PI * i / PARTS);
            rimY[i] = StrictMath.cos(2 * Math.PI * i / PARTS);
        }
        // Ticks have a size on the page, not in the net, and so are no shape that sets the scale.
        drawing.line(LineStyle.MEMBER, rimX, rimY).drawn(Elevation.LOADS, Stereonet::rim);
        curves.forEach(curve -> drawing.line(curve.style, curve.x, curve.y));
        for (Poles set : poles) {
            drawing.drawn(
                    Elevation.LOADS,
                    board -> {
                        for (Point at : set.places()) {
                            set.marker().draw(board.marks(), board.x(at.x()), board.y(at.y()));
                        }
                    });
        }
        for (Spot spot : spots) {
            drawing.drawn(
                    Elevation.LOADS,
                    board ->
                            board.fill(
                                    Annotations.disc(
                                            board.x(spot.at().x()),
                                            board.y(spot.at().y()),
                                            0.9 * MM),
                                    Ink.BLACK));
        }
        drawing.drawn(Elevation.DIMENSIONS, this::compass);
        labels(drawing);
        return drawing;
    }

    private void labels(Elevation drawing) {
        spots.forEach(spot -> drawing.label(spot.at(), spot.name()));
        poles.forEach(set -> drawing.label(set.mean(), set.name()));
        List<Point> taken = new ArrayList<>();
        spots.forEach(spot -> taken.add(spot.at()));
        poles.forEach(set -> taken.addAll(set.places()));
        for (Curve curve : curves) {
            if (!curve.name.isEmpty()) {
                Point at = freest(curve, taken);
                drawing.label(at, curve.name, curve.style);
                taken.add(at);
            }
        }
    }

    /** The place on a curve farthest from poles, points, names there already and other curves. */
    private Point freest(Curve curve, List<Point> taken) {
        int last = curve.x.length - 1;
        Point best = Point.at(curve.x[0], curve.y[0]);
        double most = -1;
        for (int part = 1; part < NAME_PLACES; part++) {
            int i = last * part / NAME_PLACES;
            Point here = Point.at(curve.x[i], curve.y[i]);
            double room = Double.POSITIVE_INFINITY;
            for (Point point : taken) {
                room = Math.min(room, distance(here, point.x(), point.y()));
            }
            for (Curve other : curves) {
                for (int k = 0; other != curve && k < other.x.length; k++) {
                    // A curve is broken by a text, a pole lost: keep farther from poles.
                    room = Math.min(room, 2 * distance(here, other.x[k], other.y[k]));
                }
            }
            if (room > most) {
                most = room;
                best = here;
            }
        }
        return best;
    }

    private static double distance(Point a, double x, double y) {
        return StrictMath.hypot(a.x() - x, a.y() - y);
    }

    private static double[] page(Board board, double[] xy) {
        double[] page = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            page[i] = board.x(xy[i]);
            page[i + 1] = board.y(xy[i + 1]);
        }
        return page;
    }

    /** Ticks every ten degrees, and the middle. */
    private static void rim(Board board) {
        for (int i = 0; i < 36; i++) {
            double angle = StrictMath.toRadians(10.0 * i);
            double s = StrictMath.sin(angle);
            double c = StrictMath.cos(angle);
            double out = 1 + (i % 9 == 0 ? 2.2 : 1.2) * MM / board.scale();
            board.segment(
                    board.x(s),
                    board.y(c),
                    board.x(out * s),
                    board.y(out * c),
                    Pen.full(0.5, Ink.GREY));
        }
        double arm = 1.2 * MM;
        board.segment(-arm, 0, arm, 0, Pen.full(0.5, Ink.GREY));
        board.segment(0, -arm, 0, arm, Pen.full(0.5, Ink.GREY));
    }

    private void compass(Board board) {
        String[] names = {"N", "E", "S", "W"};
        for (int i = 0; i < 4; i++) {
            double angle = i * Math.PI / 2;
            double out = board.scale() + 4.6 * MM;
            board.write(
                    new Mark.Words(
                            names[i],
                            out * StrictMath.sin(angle),
                            -out * StrictMath.cos(angle) + 0.25 * Board.TEXT,
                            Mark.Anchor.MIDDLE,
                            Board.TEXT,
                            0,
                            Ink.BLACK));
        }
        String how =
                projection == Projection.EQUAL_ANGLE
                        ? "lower half sphere, equal angles"
                        : "lower half sphere, equal areas";
        board.write(
                new Mark.Words(
                        how,
                        -board.scale() - 12 * MM,
                        board.scale() + 7 * MM,
                        Mark.Anchor.START,
                        Board.SMALL,
                        0,
                        Ink.BLACK));
    }

    private static double[] direction(double trend, double plunge) {
        double flat = StrictMath.cos(plunge);
        return new double[] {
            flat * StrictMath.sin(trend), flat * StrictMath.cos(trend), -StrictMath.sin(plunge)
        };
    }

    private static double[] pole(Orientation joint) {
        return direction(joint.dipDirection() + Math.PI, Math.PI / 2 - joint.dip());
    }

    /** a cos t + b sin t. */
    private static double[] turned(double[] a, double[] b, double t) {
        double c = StrictMath.cos(t);
        double s = StrictMath.sin(t);
        return new double[] {a[0] * c + b[0] * s, a[1] * c + b[1] * s, a[2] * c + b[2] * s};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {
            a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
        };
    }
}
