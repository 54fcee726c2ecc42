package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.pleat.ReefStrands;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The tied gift as a model that a page can turn: flat convex polygons in millimetres (x right, y away, z up), in order
 * from the gift outwards, so that of two in one plane the later lies outside.
 *
 * @param rows of stitches that are seen
 * @param strands of the knots
 * @param thread colour of the rows, as {@code #rrggbb}
 */
public record Model(List<Polygon> polygons, List<Row> rows, List<Strand> strands, List<Tied> knots, String thread) {

    /**
     * A part of one patch.
     *
     * @param patch its name in the plan
     * @param colour of the face that looks outwards, as {@code #rrggbb}
     * @param out unit vector outwards
     * @param corners in order round the edge
     * @param fell true for the strip of a seam that lies over its neighbour, in the same plane
     * @param loose true for what hangs free and is seen from both sides
     */
    public record Polygon(
            String patch, String fabric, String colour, Corner out, List<Corner> corners, boolean loose, boolean fell) {
        public Polygon {
            corners = List.copyOf(corners);
        }
    }

    /**
     * A straight row of stitches.
     *
     * @param on the number of the last polygon of its facet, over which it lies
     */
    public record Row(int on, Corner from, Corner to) {}

    /**
     * One end of cloth in a knot, as a round band along a line.
     *
     * @param line its middle line
     * @param half half its width, in millimetres
     * @param colours of what lies on the middle of each stretch, one fewer than there are points
     */
    record Strand(List<Corner> line, double half, List<String> colours) {
        public Strand {
            line = List.copyOf(line);
            colours = List.copyOf(colours);
        }
    }

    /** A knot's middle, the way along it and the diameter of its strands. */
    public record Tied(Corner at, Corner along, Corner up, double bunch) {}

    /** A place or a way, to a thousandth. */
    public record Corner(double x, double y, double z) {

        static Corner of(Vector space) {
            return new Corner(rounded(space.x()), rounded(space.y()), rounded(space.z()));
        }

        private static double rounded(double number) {
            return Math.round(number * 1000) / 1000.0;
        }
    }

    public Model {
        polygons = List.copyOf(polygons);
        rows = List.copyOf(rows);
        strands = List.copyOf(strands);
        knots = List.copyOf(knots);
    }

    static Model of(Cloth cloth, Visible visible, TiedLook look) {
        Fold fold = visible.fold();
        Builder builder = new Builder(
                Pattern.of(cloth, fold.laying()), fold.fit().placing().out(), look);
        for (Visible.Piece piece : visible.pieces()) {
            builder.add(piece.facet(), piece.cloth());
        }
        for (Facet facet : fold.facets()) {
            if (facet.isLoose() && facet.part() != Facet.Part.KNOT) {
                builder.add(facet, facet.cloth());
            }
        }
        List<Tied> knots = new ArrayList<>();
        for (ReefKnot knot : fold.knots()) {
            builder.add(knot);
            knots.add(new Tied(Corner.of(knot.at()), Corner.of(knot.along()), Corner.of(knot.up()), knot.bunch()));
        }
        return new Model(
                builder.polygons,
                builder.rows,
                builder.strands,
                knots,
                look.thread().hex());
    }

    /** As JSON, on one line. */
    public String text() {
        return JsonWriter.tight(JsonValue.object()
                .with(
                        "polygons",
                        JsonValue.of(polygons.stream().map(Model::json).toList()))
                .with("rows", JsonValue.of(rows.stream().map(Model::json).toList()))
                .with("strands", JsonValue.of(strands.stream().map(Model::json).toList()))
                .with("knots", JsonValue.of(knots.stream().map(Model::json).toList()))
                .with("thread", thread)
                .done());
    }

    private static JsonValue json(Polygon polygon) {
        return JsonValue.object()
                .with("patch", polygon.patch())
                .with("fabric", polygon.fabric())
                .with("colour", polygon.colour())
                .with("out", json(polygon.out()))
                .with(
                        "corners",
                        JsonValue.of(polygon.corners().stream().map(Model::json).toList()))
                .with("loose", JsonValue.of(polygon.loose()))
                .with("fell", JsonValue.of(polygon.fell()))
                .done();
    }

    private static JsonValue json(Row row) {
        return JsonValue.object()
                .with("on", row.on())
                .with("from", json(row.from()))
                .with("to", json(row.to()))
                .done();
    }

    private static JsonValue json(Strand strand) {
        return JsonValue.object()
                .with(
                        "line",
                        JsonValue.of(strand.line().stream().map(Model::json).toList()))
                .with("half", number(strand.half()))
                .with(
                        "colours",
                        JsonValue.of(strand.colours().stream()
                                .map(colour -> JsonValue.of(colour))
                                .toList()))
                .done();
    }

    private static JsonValue json(Tied knot) {
        return JsonValue.object()
                .with("at", json(knot.at()))
                .with("along", json(knot.along()))
                .with("up", json(knot.up()))
                .with("bunch", number(knot.bunch()))
                .done();
    }

    static JsonValue json(Corner corner) {
        return JsonValue.object()
                .with("x", number(corner.x()))
                .with("y", number(corner.y()))
                .with("z", number(corner.z()))
                .done();
    }

    private static JsonValue number(double number) {
        return JsonValue.of(BigDecimal.valueOf(number));
    }

    /** Colours facets and knots one by one. */
    private static final class Builder {
        private final Pattern pattern;
        private final Face table;
        private final TiedLook look;
        private final List<Polygon> polygons = new ArrayList<>();
        private final List<Row> rows = new ArrayList<>();
        private final List<Strand> strands = new ArrayList<>();

        Builder(Pattern pattern, Face table, TiedLook look) {
            this.pattern = pattern;
            this.table = table;
            this.look = look;
        }

        void add(Facet facet, ConvexPolygon outline) {
            Face outer = facet.showsTableFace() ? table : table.other();
            Pattern.Box box = Pattern.Box.of(outline.corners());
            for (Pattern.Field field : pattern.fields(outer)) {
                ConvexPolygon part = field.box().meets(box) ? outline.and(field.at()) : ConvexPolygon.EMPTY;
                if (!part.isEmpty()) {
                    add(facet, part, field);
                }
            }
            for (Pattern.Row row : pattern.rows(outer)) {
                outline.clip(row.from(), row.to())
                        .ifPresent(ends -> rows.add(
                                new Row(polygons.size() - 1, spot(facet, ends.get(0)), spot(facet, ends.get(1)))));
            }
        }

        private void add(Facet facet, ConvexPolygon part, Pattern.Field field) {
            Colour ground = look.fabric(field.fabric());
            polygons.add(new Polygon(
                    field.patch(),
                    field.fabric(),
                    (field.fell() ? ground.shade() : ground).hex(),
                    Corner.of(facet.plane().out()),
                    part.corners().stream().map(corner -> spot(facet, corner)).toList(),
                    facet.isLoose(),
                    field.fell()));
        }

        private static Corner spot(Facet facet, Point point) {
            return Corner.of(facet.motion().at(point));
        }

        void add(ReefKnot knot) {
            ReefStrands reef = ReefStrands.of(knot);
            add(knot, knot.leads().get(0), reef.first());
            add(knot, knot.leads().get(1), reef.second());
        }

        /** Adds a strand that shows what lies on the middle line of its end, as in the still pictures. */
        private void add(ReefKnot knot, ReefKnot.Lead lead, List<Vector> line) {
            double whole = 0;
            for (int i = 1; i < line.size(); i++) {
                whole += line.get(i).minus(line.get(i - 1)).length();
            }
            List<String> colours = new ArrayList<>();
            double gone = 0;
            for (int i = 1; i < line.size(); i++) {
                double length = line.get(i).minus(line.get(i - 1)).length();
                Point middle = lead.after(knot.taken() * (gone + length / 2) / whole);
                colours.add(look.fabric(pattern.at(table, middle).fabric()).hex());
                gone += length;
            }
            strands.add(new Strand(
                    line.stream().map(Corner::of).toList(), Strands.TIGHT * knot.taken() / ReefStrands.UNITS, colours));
        }
    }
}
