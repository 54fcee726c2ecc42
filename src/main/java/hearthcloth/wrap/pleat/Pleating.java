package hearthcloth.wrap.pleat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Motion;
import java.util.ArrayList;
import java.util.List;

/**
 * Cloth folded to and fro under a middle pleat, so that no more than the middle shows. Pleat 0 is the middle; positive
 * ones lie to its left on the cloth, negative ones to its right; odd ones are reversed.
 */
public sealed interface Pleating {

    /** The part of a region that pleat k holds. */
    ConvexPolygon within(ConvexPolygon region, int k);

    /** How pleat k is laid. */
    Motion motion(int k);

    /** The pleat a point of the cloth belongs to. */
    int pleat(Point point);

    /** Pleats from the outermost on either side inwards, the middle last. */
    default List<Facet> lay(ConvexPolygon region, Facet.Part part, FacetPlane plane) {
        List<Facet> facets = new ArrayList<>();
        for (int far = most(region); far >= 0; far--) {
            for (int k = -far; k <= far; k += Math.max(1, 2 * far)) {
                ConvexPolygon piece = within(region, k);
                if (!piece.isEmpty()) {
                    facets.add(new Facet(k == 0 ? part : Facet.Part.TUCK, piece, motion(k), plane));
                }
            }
        }
        return facets;
    }

    /** The farthest pleat, either side, that a region needs. */
    default int most(ConvexPolygon region) {
        int most = 0;
        for (Point corner : region.corners()) {
            most = Math.max(most, Math.abs(pleat(corner)));
        }
        return most;
    }

    /**
     * Parallel pleats.
     *
     * @param origin a point on the middle line
     * @param axis unit vector of the middle line
     * @param at where the origin lies in space
     * @param along where the axis points in space, {@code side} where its left points
     * @param half half the width of the middle pleat
     */
    record Parallel(Point origin, Point axis, Vector at, Vector along, Vector side, double half) implements Pleating {

        @Override
        public ConvexPolygon within(ConvexPolygon region, int k) {
            double zero = axis.left().dot(origin);
            return region.between(axis.left(), zero + (2 * k - 1) * half, zero + (2 * k + 1) * half);
        }

        @Override
        public Motion motion(int k) {
            Point from = origin.plus(axis.left().times(2 * k * half));
            return Motion.along(from, at, axis, along, k % 2 == 0 ? side : side.times(-1));
        }

        @Override
        public int pleat(Point point) {
            return (int) Math.floor(axis.left().dot(point.minus(origin)) / (2 * half) + 0.5);
        }
    }

    /**
     * Pleats that meet in a point, as a fan.
     *
     * @param tip where they meet on the cloth, {@code at} in space
     * @param axis unit vector of the middle line from the tip, {@code along} in space, {@code side} where its left
     *     points
     * @param half half the angle of the middle pleat, in radians
     */
    record Fan(Point tip, Point axis, Vector at, Vector along, Vector side, double half) implements Pleating {

        @Override
        public ConvexPolygon within(ConvexPolygon region, int k) {
            Point right = ray((2 * k - 1) * half).left();
            Point left = ray((2 * k + 1) * half).left();
            return region.above(right, right.dot(tip)).below(left, left.dot(tip));
        }

        @Override
        public Motion motion(int k) {
            return Motion.along(tip, at, ray(2 * k * half), along, k % 2 == 0 ? side : side.times(-1));
        }

        @Override
        public int pleat(Point point) {
            Point way = point.minus(tip);
            return (int) Math.floor(Elementary.atan2(axis.left().dot(way), axis.dot(way)) / (2 * half) + 0.5);
        }

        Point ray(double angle) {
            return axis.times(Elementary.cos(angle)).plus(axis.left().times(Elementary.sin(angle)));
        }
    }
}
