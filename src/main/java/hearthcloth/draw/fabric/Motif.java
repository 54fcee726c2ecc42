package hearthcloth.draw.fabric;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import hearthcloth.stash.FabricPattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** How each {@link FabricPattern} is drawn, to scale; the forms are our own. */
enum Motif {
    CHECK {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            double half = side / 2;
            sketch.fill(new Bounds(0, 0, side, side), inks.pale());
            sketch.fill(new Bounds(0, 0, half, side), inks.ground());
            sketch.fill(new Bounds(0, 0, side, half), inks.ground());
            sketch.fill(new Bounds(0, 0, half, half), inks.figure());
        }
    },
    STRIPE {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            sketch.fill(new Bounds(side * 0.1, 0, side * 0.34, side), inks.figure());
            sketch.fill(new Bounds(side * 0.62, 0, side * 0.06, side), inks.figure());
            sketch.fill(new Bounds(side * 0.78, 0, side * 0.06, side), inks.figure());
        }
    },
    DOT {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            double radius = side * 0.145;
            sketch.add(new Mark.Disc(new Point(side * 0.25, side * 0.25), radius, inks.figure()));
            sketch.add(new Mark.Disc(new Point(side * 0.75, side * 0.75), radius, inks.figure()));
        }
    },
    FLORAL {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            for (int i = 0; i < 4; i++) {
                Point middle = cell(i, side, chance, 0.06);
                double petal = side * (i % 2 == 0 ? 0.062 : 0.045);
                double turn = chance.nextDouble(Math.PI);
                for (int j = 0; j < 5; j++) {
                    sketch.add(new Mark.Disc(
                            around(middle, petal * 1.25, turn + j * 2 * Math.PI / 5), petal, inks.figure()));
                }
                sketch.add(new Mark.Disc(middle, petal * 0.7, inks.pale()));
            }
        }
    },
    LEAVES {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            for (int i = 0; i < 4; i++) {
                double turn = (i % 2 == 0 ? 0.6 : -0.9) + chance.nextDouble(0.4);
                sketch.add(new Mark.Area(lens(cell(i, side, chance, 0.04), side * 0.17, turn), inks.figure()));
            }
        }
    },
    STARS {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            sketch.add(new Mark.Area(star(new Point(side * 0.28, side * 0.28), side * 0.17), inks.figure()));
            sketch.add(new Mark.Area(star(new Point(side * 0.76, side * 0.74), side * 0.11), inks.figure()));
        }
    },
    LANTERNS {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            for (int i = 0; i < 2; i++) {
                double x = side * (0.27 + 0.48 * i);
                double y = side * (0.27 + 0.48 * i);
                double r = side * 0.14;
                sketch.add(new Mark.Area(lens(new Point(x, y), r * 1.3, 0), inks.figure()));
                sketch.fill(new Bounds(x - r * 0.45, y - r * 1.15, r * 0.9, r * 0.3), inks.figure());
                sketch.fill(new Bounds(x - r * 0.45, y + r * 0.85, r * 0.9, r * 0.3), inks.figure());
            }
        }
    },
    BIRDS {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            for (int i = 0; i < 2; i++) {
                double x = side * (0.27 + 0.48 * i);
                double y = side * (0.28 + 0.46 * i);
                double s = side * (i == 0 ? 0.16 : -0.16);
                double h = Math.abs(s);
                sketch.add(new Mark.Area(
                        List.of(
                                new Point(x - s, y + h * 0.1),
                                new Point(x - s * 0.2, y - h * 0.25),
                                new Point(x, y - h * 0.9),
                                new Point(x + s * 0.3, y - h * 0.2),
                                new Point(x + s * 0.8, y - h * 0.3),
                                new Point(x + s, y),
                                new Point(x + s * 0.3, y + h * 0.4),
                                new Point(x - s * 0.4, y + h * 0.3)),
                        inks.figure()));
            }
        }
    },
    PRINT {
        @Override
        void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance) {
            sketch.fill(new Bounds(0, 0, side, side), inks.ground());
            for (int i = 0; i < 4; i++) {
                double size = side * (0.05 + chance.nextDouble(0.05));
                Point middle = cell(i, side, chance, 0.08);
                if (chance.nextInt(2) == 0) {
                    sketch.add(new Mark.Disc(middle, size, inks.figure()));
                } else {
                    sketch.add(new Mark.Area(lens(middle, size * 2, chance.nextDouble(Math.PI)), inks.figure()));
                }
            }
        }
    };

    /** The colours of a motif: what it lies on, what it is, and a third a little lighter than the ground. */
    record Inks(Colour ground, Colour figure, Colour pale) {}

    /** Draws one repeat, a square of this side. */
    abstract void draw(Sketch sketch, double side, Inks inks, SplittableRandom chance);

    /** The first motif that the words name; "print" only where no other is named. */
    static Optional<Motif> named(String name) {
        return FabricPattern.named(name).map(pattern -> valueOf(pattern.name()));
    }

    double repeatInches() {
        return FabricPattern.valueOf(name()).repeatInches();
    }

    /** The middle of quarter {@code i} of the repeat, moved a little. */
    private static Point cell(int i, double side, SplittableRandom chance, double most) {
        double x = side * (0.25 + 0.5 * (i % 2) + most * (2 * chance.nextDouble() - 1));
        double y = side * (0.25 + 0.5 * Math.floorDiv(i, 2) + most * (2 * chance.nextDouble() - 1));
        return new Point(x, y);
    }

    private static Point around(Point middle, double distance, double turn) {
        return middle.plus(distance * Math.cos(turn), distance * Math.sin(turn));
    }

    private static List<Point> lens(Point middle, double half, double turn) {
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double at = 2 * Math.PI * i / 16;
            double x = half * 0.45 * Math.sin(at) * Math.abs(Math.sin(at));
            double y = half * Math.cos(at);
            outline.add(middle.plus(x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)));
        }
        return outline;
    }

    private static List<Point> star(Point middle, double radius) {
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            outline.add(around(middle, i % 2 == 0 ? radius : radius * 0.42, Math.PI * i / 5 - Math.PI / 2));
        }
        return outline;
    }
}
