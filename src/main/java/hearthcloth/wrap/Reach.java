package hearthcloth.wrap;

import hearthcloth.number.Elementary;

/**
 * One way of measuring how far the cloth reaches. {@link #left} is what remains of it beyond a path over the gift;
 * {@link #square} is the side of the smallest square, with the gift in the middle, that reaches that far.
 */
sealed interface Reach {

    /** Real millimetres left beyond {@code path}; negative when the cloth falls short. */
    double left(Spread cloth, double path);

    /** The side of the square in real millimetres. */
    double square(double path);

    /**
     * A diamond's corner brought along its axis to a knot over the gift's middle line. What is left is the straight
     * distance from the knot to the tip, which lies a little to one side on an oblong cloth or off the middle.
     */
    record Tip(Corner corner) implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            double on = cloth.along(corner) - path;
            return on < 0 ? on : Elementary.hypot(on, cloth.aside(corner));
        }

        @Override
        public double square(double path) {
            return Math.sqrt(2) * path;
        }
    }

    /**
     * A diamond's corner brought up a gift that is round about its middle: the straight distance from the middle to the
     * tip.
     */
    record Ray(Corner corner) implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            return Elementary.hypot(cloth.along(corner), cloth.aside(corner)) - path;
        }

        @Override
        public double square(double path) {
            return Math.sqrt(2) * path;
        }
    }

    /** A diamond's edges: every point with |u| + |v| at most this is cloth. */
    record Band() implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            return cloth.band() - path;
        }

        @Override
        public double square(double path) {
            return Math.sqrt(2) * path;
        }
    }

    /** Edge along edge: the straight distance from the corner of an l × w base to the corner of the cloth. */
    record FromBase(Corner corner, double l, double w) implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            double a = (cloth.width() - l) / 2 - corner.right() * cloth.right();
            double b = (cloth.height() - w) / 2 - corner.away() * cloth.away();
            return (a < 0 || b < 0 ? Math.min(a, b) : Elementary.hypot(a, b)) - path;
        }

        /** Solves (S − l)² + (S − w)² = (2·path)² for S. */
        @Override
        public double square(double path) {
            double sum = l + w;
            double under = sum * sum - 2 * (l * l + w * w - 4 * path * path);
            return under < 0 ? Math.max(l, w) : Math.max(Math.max(l, w), (sum + Math.sqrt(under)) / 2);
        }
    }

    /** Edge along edge: how high the lowest of the four flaps stands against its wall. */
    record Walls(double l, double w) implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            double a = (cloth.width() - l) / 2 - Math.abs(cloth.right());
            double b = (cloth.height() - w) / 2 - Math.abs(cloth.away());
            return Math.min(a, b) - path;
        }

        @Override
        public double square(double path) {
            return Math.max(l, w) + 2 * path;
        }
    }

    /** Edge along edge: two facing flaps meet on the top; the pair with the shorter way decides. */
    record Lid(double l, double w) implements Reach {

        @Override
        public double left(Spread cloth, double path) {
            return Math.max(cloth.width() / 2 - l, cloth.height() / 2 - w) - path;
        }

        @Override
        public double square(double path) {
            return 2 * (Math.min(l, w) + path);
        }
    }
}
