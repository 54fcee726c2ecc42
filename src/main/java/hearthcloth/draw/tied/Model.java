package hearthcloth.draw.tied;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Face;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Outline;
import hearthcloth.wrap.fold.Point;
import hearthcloth.wrap.fold.Space;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;

/**
 * The tied gift as a model that a page can turn: flat convex polygons in millimetres (x right, y away, z up), in order
 * from the gift outwards, so that of two in one plane the later lies outside. Knots are left out; their places are given.
 */
public record Model(List<Polygon> polygons, List<Tied> knots) {

    /**
     * A part of one patch.
     *
     * @param patch its name in the plan
     * @param colour of the face that looks outwards, as {@code #rrggbb}
     * @param out unit way outwards
     * @param corners in order round the edge
     * @param fell true for the strip of a seam that lies over its neighbour, in the same plane
     * @param loose true for what hangs free and is seen from both sides
     */
    public record Polygon(
            String patch, String fabric, String colour, Spot out, List<Spot> corners, boolean loose, boolean fell) {
        public Polygon {
            corners = List.copyOf(corners);
        }
    }

    /** A knot's middle, the way along it and the diameter of its strands. */
    public record Tied(Spot at, Spot along, Spot up, double bunch) {}

    /** A place or a way, to a thousandth. */
    public record Spot(double x, double y, double z) {

        static Spot of(Space space) {
            return new Spot(rounded(space.x()), rounded(space.y()), rounded(space.z()));
        }

        private static double rounded(double number) {
            return Math.round(number * 1000) / 1000.0;
        }
    }

    public Model {
        polygons = List.copyOf(polygons);
        knots = List.copyOf(knots);
    }

    static Model of(Cloth cloth, Visible visible, Look look) {
        Fold fold = visible.fold();
        Pattern pattern = Pattern.of(cloth, fold.laying());
        Face table = fold.fit().placing().out();
        List<Polygon> polygons = new ArrayList<>();
        for (Visible.Piece piece : visible.pieces()) {
            add(piece.facet(), piece.cloth(), pattern, table, look, polygons);
        }
        for (Facet facet : fold.facets()) {
            if (facet.isLoose() && facet.part() != Facet.Part.KNOT) {
                add(facet, facet.cloth(), pattern, table, look, polygons);
            }
        }
        List<Tied> knots = fold.knots().stream()
                .map(knot -> new Tied(Spot.of(knot.at()), Spot.of(knot.along()), Spot.of(knot.up()), knot.bunch()))
                .toList();
        return new Model(polygons, knots);
    }

    private static void add(
            Facet facet, Outline outline, Pattern pattern, Face table, Look look, List<Polygon> polygons) {
        Face outer = facet.showsTableFace() ? table : table.other();
        for (Pattern.Field field : pattern.fields(outer)) {
            Outline part = outline.and(field.at());
            if (!part.isEmpty()) {
                String colour =
                        (field.fell() ? look.fabric(field.fabric()).shade() : look.fabric(field.fabric())).hex();
                List<Spot> corners = new ArrayList<>();
                for (Point corner : part.corners()) {
                    corners.add(Spot.of(facet.motion().at(corner)));
                }
                polygons.add(new Polygon(
                        field.patch(),
                        field.fabric(),
                        colour,
                        Spot.of(facet.plane().out()),
                        corners,
                        facet.isLoose(),
                        field.fell()));
            }
        }
    }

    /** As JSON. */
    public String text() {
        try {
            return new JsonMapper().writeValueAsString(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and words cannot be written", e);
        }
    }
}
