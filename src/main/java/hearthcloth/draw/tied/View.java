package hearthcloth.draw.tied;

import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.soft.Sight;
import hearthcloth.draw.soft.SoftCloth;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Motion;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A scene seen from one direction: patches and rows of stitches from far to near, in millimetres of the gift, right and
 * down.
 *
 * @param things later ones hide earlier ones
 */
record View(Eye eye, List<Thing> things, List<Point> shadow) {

    /** Something visible. */
    sealed interface Thing {
        /** A part of one patch, or of something else where {@code patch} is empty. */
        record Area(List<Point> outline, Colour colour, String patch, boolean fell, Optional<Fabric> fabric)
                implements Thing {
            public Area {
                outline = List.copyOf(outline);
            }

            /** A part of which only the colour is drawn. */
            static Area plain(List<Point> outline, Colour colour, String patch) {
                return new Area(outline, colour, patch, false, Optional.empty());
            }
        }

        /**
         * The fabric of an area.
         *
         * @param laid where the millimetres of its face lie in the view
         * @param shade how much darker than in full light
         */
        record Fabric(FabricLook look, Affine laid, double shade) {

            Fabric scaled(double scale) {
                return new Fabric(look, laid.dividedBy(scale), shade);
            }
        }

        /** The whole of it dot by dot, its room in millimetres of the gift. */
        record Whole(Bounds at, String png) implements Thing {}

        /** A row of stitches, or a crease. */
        record Row(Point from, Point to, Colour colour, boolean stitched) implements Thing {}
    }

    /** The unit vector towards the light, which comes from the near left above, as on a table by a window. */
    private static final Vector LIGHT = new Vector(-0.5, -0.6, 0.9).times(1 / Math.sqrt(1.42));

    private static final double DARKEST = 0.7;
    private static final double LIT = 0.4;

    View {
        things = List.copyOf(things);
        shadow = List.copyOf(shadow);
    }

    static View of(Scene scene, Eye eye, Pattern pattern, Face table, TiedLook look) {
        Painter painter = new Painter(eye, pattern, table, look);
        scene.from(eye).forEach(painter::paint);
        return new View(eye, painter.things, Shadow.of(scene.ground(), eye));
    }

    /** A cloth drawn dot by dot, so many of them along the longer side. */
    static View of(SoftCloth cloth, Eye eye, double dots) {
        Sight sight = new Sight(eye.towards(), eye.right(), eye.up());
        Bounds room = cloth.bounds(sight);
        byte[] png = PngWriter.write(cloth.drawn(sight, room, dots / Math.max(room.width(), room.height())));
        return new View(eye, List.of(new Thing.Whole(room, Base64.getEncoder().encodeToString(png))), List.of());
    }

    /** Paints one pane after another. */
    private static final class Painter {
        private final Eye eye;
        private final Pattern pattern;
        private final Face table;
        private final TiedLook look;
        private final List<Thing> things = new ArrayList<>();

        Painter(Eye eye, Pattern pattern, Face table, TiedLook look) {
            this.eye = eye;
            this.pattern = pattern;
            this.table = table;
            this.look = look;
        }

        void paint(Pane pane) {
            double light = light(pane);
            if (pane.skin() instanceof Pane.Skin.Cloth cloth) {
                cloth(pane, cloth, light);
            } else if (pane.skin() instanceof Pane.Skin.Bunch bunch) {
                Pattern.Field field = pattern.at(table, bunch.middle());
                Colour colour = lit(look.look(field.patch()).ground(), bunch.light());
                things.add(Thing.Area.plain(seen(pane.corners()), colour, field.name()));
            } else if (pane.skin() instanceof Pane.Skin.Plain plain) {
                things.add(Thing.Area.plain(seen(pane.corners()), lit(plain.colour(), light), ""));
            }
        }

        private double light(Pane pane) {
            double facing = pane.out().dot(eye.towards()) < 0 ? -1 : 1;
            return DARKEST + LIT * Math.max(0, facing * pane.out().dot(LIGHT));
        }

        private void cloth(Pane pane, Pane.Skin.Cloth skin, double light) {
            Facet facet = skin.facet();
            Motion motion = facet.motion();
            ConvexPolygon outline = ConvexPolygon.anticlockwise(
                    pane.corners().stream().map(motion::back).toList());
            if (outline.isEmpty()) {
                return;
            }
            Face face = motion.inside().dot(eye.towards()) > 0 ? table.other() : table;
            Pattern.Box box = Pattern.Box.of(outline.corners());
            Affine laid = laid(face, motion);
            for (Pattern.Field field : pattern.fields(face)) {
                if (field.box().meets(box)) {
                    ConvexPolygon part = outline.and(field.at());
                    if (!part.isEmpty()) {
                        things.add(area(field, laid(part.corners(), motion), laid, light));
                    }
                }
            }
            for (Pattern.Row row : pattern.rows(face)) {
                outline.clip(row.from(), row.to())
                        .ifPresent(ends -> things.add(new Thing.Row(
                                seen(motion.at(ends.get(0))),
                                seen(motion.at(ends.get(1))),
                                lit(look.thread(), light),
                                true)));
            }
            creases(outline, skin);
        }

        private Thing.Area area(Pattern.Field field, List<Point> outline, Affine laid, double light) {
            FabricLook fabric = look.look(field.patch());
            Colour ground = field.fell() ? fabric.ground().shade() : fabric.ground();
            double full = Math.min(1, light);
            // A fell is narrow, and its shade tells more than its print would.
            Optional<Thing.Fabric> drawn =
                    field.fell() ? Optional.empty() : Optional.of(new Thing.Fabric(fabric, laid, 1 - full));
            return new Thing.Area(outline, lit(ground, light), field.name(), field.fell(), drawn);
        }

        /** Where the millimetres of a face lie in the view, where the facet has gone. */
        private Affine laid(Face face, Motion motion) {
            Point at = seen(motion.at(pattern.place(face, 0, 0)));
            Point across = seen(motion.at(pattern.place(face, 1, 0)));
            Point down = seen(motion.at(pattern.place(face, 0, 1)));
            return new Affine(
                    across.x() - at.x(), across.y() - at.y(), down.x() - at.x(), down.y() - at.y(), at.x(), at.y());
        }

        /** Draws the facet's own edges, and not those where panes were cut. */
        private void creases(ConvexPolygon outline, Pane.Skin.Cloth skin) {
            Facet facet = skin.facet();
            List<Point> corners = outline.corners();
            for (int i = 0; i < corners.size(); i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                if (skin.creases().stream().anyMatch(crease -> crease.holds(a, b))) {
                    things.add(new Thing.Row(
                            seen(facet.motion().at(a)), seen(facet.motion().at(b)), CREASE, false));
                }
            }
        }

        private List<Point> laid(List<Point> corners, Motion motion) {
            return corners.stream().map(motion::at).map(this::seen).toList();
        }

        private List<Point> seen(List<Vector> corners) {
            return corners.stream().map(this::seen).toList();
        }

        private Point seen(Vector place) {
            return new Point(eye.x(place), eye.y(place));
        }

        private static Colour lit(Colour colour, double light) {
            return Colour.of(part(colour.red(), light), part(colour.green(), light), part(colour.blue(), light));
        }

        private static int part(int part, double light) {
            return (int) Math.round(Math.min(255, part * Math.min(1, light)));
        }
    }

    private static final Colour CREASE = Colour.of(0x4a4d52);

    /** The room of everything, in millimetres of the gift. */
    Bounds bounds() {
        Sketch all = new Sketch();
        things.forEach(thing -> {
            if (thing instanceof Thing.Area area) {
                all.add(new Mark.Area(area.outline(), area.colour()));
            } else if (thing instanceof Thing.Whole whole) {
                all.add(new Mark.Dotted(whole.at(), ""));
            }
        });
        if (!shadow.isEmpty()) {
            all.add(new Mark.Area(shadow, Shadow.COLOUR));
        }
        return all.bounds();
    }

    /** The picture at {@code scale} millimetres of the gift to one of paper, on a sheet just large enough. */
    Picture picture(String title, double scale) {
        return sketch(scale).trimmed(title, 0.5);
    }

    /** The picture as large as this room allows, with arrows for what moved. */
    Picture picture(String title, Moves moves, double width, double height) {
        Bounds room = bounds();
        double air = AIR * Math.max(room.width(), room.height());
        Bounds wide = new Bounds(room.x() - air, room.y() - air, room.width() + 2 * air, room.height() + 2 * air);
        List<List<Point>> arrows = moves.lines(eye, wide);
        Sketch all = new Sketch().add(new Mark.Area(room.outline(), Shadow.COLOUR));
        arrows.forEach(line -> all.add(new Mark.Line(line, Stroke.solid(0.1, CREASE))));
        Bounds full = all.bounds();
        double scale = Math.max(full.width() / (width - EDGE), full.height() / (height - EDGE));
        Sketch sketch = sketch(scale);
        arrows.forEach(line -> Moves.draw(scaled(line, scale), sketch));
        return sketch.trimmed(title, 0.5);
    }

    /** Millimetres of paper kept for the width of arrows and the softness of the shadow at the rim. */
    private static final double EDGE = 9;

    /** The share of the picture's width by which arrows may begin outside it. */
    private static final double AIR = 0.08;

    private Sketch sketch(double scale) {
        Sketch sketch = new Sketch();
        if (shadow.size() > 2) {
            soft(sketch, scaled(shadow, scale));
        }
        for (Thing thing : things) {
            if (thing instanceof Thing.Area area) {
                List<Point> outline = Polygons.grown(scaled(area.outline(), scale), BLEED);
                area.fabric()
                        .map(fabric -> fabric.scaled(scale))
                        .ifPresentOrElse(
                                fabric -> fabric.look().fillPart(sketch, outline, fabric.laid(), fabric.shade()),
                                () -> sketch.add(new Mark.Area(outline, area.colour())));
            } else if (thing instanceof Thing.Row row) {
                List<Point> line = scaled(List.of(row.from(), row.to()), scale);
                Stroke stroke = row.stitched()
                        ? new Stroke(0.18, row.colour(), List.of(0.9, 0.7))
                        : Stroke.solid(0.1, row.colour());
                sketch.add(new Mark.Line(line, stroke));
            } else if (thing instanceof Thing.Whole whole) {
                Bounds at = whole.at();
                sketch.add(new Mark.Dotted(
                        new Bounds(at.x() / scale, at.y() / scale, at.width() / scale, at.height() / scale),
                        whole.png()));
            }
        }
        return sketch;
    }

    /** A shadow with a soft edge: layers of it, each a little larger. */
    private static void soft(Sketch sketch, List<Point> outline) {
        for (int layer = 0; layer < SOFT; layer++) {
            sketch.add(new Mark.Tint(Polygons.grown(outline, (layer - SOFT / 3.0) * 0.5), CREASE, 0.05));
        }
    }

    private static final int SOFT = 7;
    /** Areas reach under what is drawn after them by this many millimetres, so that no ground shows between. */
    private static final double BLEED = 0.05;

    private static List<Point> scaled(List<Point> points, double scale) {
        return points.stream()
                .map(point -> new Point(point.x() / scale, point.y() / scale))
                .toList();
    }
}
