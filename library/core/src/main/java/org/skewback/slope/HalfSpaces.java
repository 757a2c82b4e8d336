package org.skewback.slope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A convex body as the space common to half-spaces, with volume and faces.
 *
 * <p>Corners are the meeting points of three planes that lie in all half-spaces; the volume is the
 * sum of pyramids from a corner over the faces.
 */
final class HalfSpaces {

    /** Slack of the membership of a corner, over the size of the body. */
    private static final double SLACK = 1e-9;

    private final List<List<Vector>> faces = new ArrayList<>();
    private final List<Vector> normals = new ArrayList<>();
    private double volume;

    /** One half-space: outward · (p − point) ≤ 0. */
    record Side(Vector outward, Vector point) {}

    HalfSpaces(List<Side> sides, double size) {
        for (int i = 0; i < sides.size(); i++) {
            faces.add(face(i, sides, size));
            normals.add(sides.get(i).outward());
        }
        measure();
    }

    private static List<Vector> face(int which, List<Side> sides, double size) {
        Side side = sides.get(which);
        List<Vector> corners = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                if (i != which && j != which) {
                    addCorner(corners, side, sides.get(i), sides.get(j), sides, size);
                }
            }
        }
        if (corners.size() < 3) {
            return List.of();
        }
        Vector middle = Vector.ORIGIN;
        for (Vector corner : corners) {
            middle = middle.plus(corner.times(1.0 / corners.size()));
        }
        Vector centre = middle;
        Vector first = corners.get(0).minus(centre).unit();
        Vector second = side.outward().cross(first);
        corners.sort(
                Comparator.comparingDouble(
                        corner ->
                                StrictMath.atan2(
                                        corner.minus(centre).dot(second),
                                        corner.minus(centre).dot(first))));
        return corners;
    }

    private static void addCorner(
            List<Vector> corners, Side a, Side b, Side c, List<Side> sides, double size) {
        Vector across = b.outward().cross(c.outward());
        double volumeOfNormals = a.outward().dot(across);
        if (Math.abs(volumeOfNormals) < 1e-12) {
            return;
        }
        Vector corner =
                across.times(a.outward().dot(a.point()))
                        .plus(c.outward().cross(a.outward()).times(b.outward().dot(b.point())))
                        .plus(a.outward().cross(b.outward()).times(c.outward().dot(c.point())))
                        .times(1 / volumeOfNormals);
        for (Side side : sides) {
            if (side.outward().dot(corner.minus(side.point())) > SLACK * size) {
                return;
            }
        }
        for (Vector known : corners) {
            if (known.minus(corner).length() < SLACK * size) {
                return;
            }
        }
        corners.add(corner);
    }

    private void measure() {
        Vector apex =
                faces.stream()
                        .filter(face -> !face.isEmpty())
                        .map(face -> face.get(0))
                        .findFirst()
                        .orElse(Vector.ORIGIN);
        for (List<Vector> face : faces) {
            for (int i = 1; i + 1 < face.size(); i++) {
                Vector a = face.get(0).minus(apex);
                Vector b = face.get(i).minus(apex);
                Vector c = face.get(i + 1).minus(apex);
                volume += a.dot(b.cross(c)) / 6;
            }
        }
    }

    double volume() {
        return volume;
    }

    List<Vector> face(int side) {
        return List.copyOf(faces.get(side));
    }

    double area(int side) {
        List<Vector> face = faces.get(side);
        Vector sum = Vector.ORIGIN;
        for (int i = 1; i + 1 < face.size(); i++) {
            sum =
                    sum.plus(
                            face.get(i)
                                    .minus(face.get(0))
                                    .cross(face.get(i + 1).minus(face.get(0))));
        }
        return face.isEmpty() ? 0 : sum.dot(normals.get(side)) / 2;
    }
}
