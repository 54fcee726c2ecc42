package hearthcloth.draw.soft;

import java.util.Arrays;

/** Dots with the depth of what is seen in each. Not thread-safe. */
final class Canvas {

    final int width;
    final int height;
    private final Sight sight;
    private final double left;
    private final double top;
    private final double scale;
    private final float[] depth;

    /** Red, green and blue of eight bits each; below 0 where nothing is seen. */
    private final int[] colours;

    /**
     * An empty one.
     *
     * @param left millimetres to the right on the picture at its left rim, {@code top} upwards at its top
     * @param scale dots a millimetre
     */
    Canvas(int width, int height, Sight sight, double left, double top, double scale) {
        this.width = width;
        this.height = height;
        this.sight = sight;
        this.left = left;
        this.top = top;
        this.scale = scale;
        this.depth = new float[width * height];
        this.colours = new int[width * height];
        Arrays.fill(depth, Float.NEGATIVE_INFINITY);
        Arrays.fill(colours, -1);
    }

    /** Draws a surface whose two sides show two faces; {@code front} is where its normals point to. */
    void draw(Shape shape, Skin front, Skin back) {
        double[] seen = seen(shape);
        double[] lightOfFront = Daylight.on(shape, 1);
        double[] lightOfBack = Daylight.on(shape, -1);
        double[] x = new double[3];
        double[] y = new double[3];
        for (int t = 0; t < shape.corners.length; t += 3) {
            for (int c = 0; c < 3; c++) {
                x[c] = seen[3 * shape.corners[t + c]];
                y[c] = seen[3 * shape.corners[t + c] + 1];
            }
            Triangle triangle = new Triangle(x, y);
            // on the picture y goes down, so corners that go round anticlockwise turn the other way
            boolean isFront = triangle.twice() < 0;
            new Patch(shape, seen, isFront ? lightOfFront : lightOfBack, isFront ? front : back, t).draw(triangle);
        }
    }

    /** Where each point is on the picture, in dots to the right and down, and how near to the eye. */
    private double[] seen(Shape shape) {
        double[] seen = new double[shape.places.length];
        for (int k = 0; k < seen.length; k += 3) {
            double x = shape.places[k];
            double y = shape.places[k + 1];
            double z = shape.places[k + 2];
            seen[k] = (x * sight.right().x()
                            + y * sight.right().y()
                            + z * sight.right().z()
                            - left)
                    * scale;
            seen[k + 1] = (top
                            - x * sight.up().x()
                            - y * sight.up().y()
                            - z * sight.up().z())
                    * scale;
            seen[k + 2] = x * sight.towards().x()
                    + y * sight.towards().y()
                    + z * sight.towards().z();
        }
        return seen;
    }

    /** One triangle on its way to the canvas. */
    private final class Patch {
        private final double[] lights;
        private final Skin skin;
        private final double[] near = new double[3];
        private final double[] u = new double[3];
        private final double[] v = new double[3];
        private final int[] at = new int[3];
        private final double[] colour = new double[3];
        private int level;

        Patch(Shape shape, double[] seen, double[] lights, Skin skin, int t) {
            this.lights = lights;
            this.skin = skin;
            for (int c = 0; c < 3; c++) {
                int k = shape.corners[t + c];
                at[c] = 3 * k;
                near[c] = seen[3 * k + 2];
                u[c] = shape.shares[2 * k];
                v[c] = shape.shares[2 * k + 1];
            }
        }

        void draw(Triangle triangle) {
            double cloth = Math.abs((u[1] - u[0]) * (v[2] - v[0]) - (u[2] - u[0]) * (v[1] - v[0]));
            level = skin.level(skin.side() * Math.sqrt(cloth / Math.max(1e-12, Math.abs(triangle.twice()))));
            triangle.dots(width, height, this::dot);
        }

        private void dot(int place, double second, double third) {
            float here = (float) mean(near[0], near[1], near[2], second, third);
            if (here > depth[place]) {
                depth[place] = here;
                skin.sample(
                        level, mean(u[0], u[1], u[2], second, third), mean(v[0], v[1], v[2], second, third), colour);
                int lit = 0;
                for (int c = 0; c < 3; c++) {
                    double light = mean(lights[at[0] + c], lights[at[1] + c], lights[at[2] + c], second, third);
                    lit = lit << 8 | (int) Math.round(Math.min(255, colour[c] * light));
                }
                colours[place] = lit;
            }
        }

        private static double mean(double a, double b, double c, double second, double third) {
            return a + (b - a) * second + (c - a) * third;
        }
    }

    /**
     * What is seen in a square of dots: red, green and blue to 255, each times the share that is covered, and that share.
     */
    void mean(int x, int y, int side, double[] into) {
        Arrays.fill(into, 0);
        double each = 1.0 / side / side;
        for (int j = y; j < y + side; j++) {
            for (int i = x; i < x + side; i++) {
                int seen = colours[j * width + i];
                if (seen >= 0) {
                    into[0] += (seen >> 16) * each;
                    into[1] += (seen >> 8 & 0xff) * each;
                    into[2] += (seen & 0xff) * each;
                    into[3] += each;
                }
            }
        }
    }
}
