package hearthcloth.wrap.drape;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * The cloth of a fold brought to rest over its gift: a fine mesh that hangs, gathers and lies as cloth does. Geometry
 * alone: it knows neither fabrics nor patches. The same fold gives the same mesh to the last bit.
 *
 * @param fold what was draped
 * @param acceptance how well it came to rest
 */
public record Drape(Fold fold, Mesh mesh, Acceptance acceptance) {

    /** The cloth's longer side in the drape's own world, in which every length is alike whatever the gift's size. */
    private static final double WORLD_MM = 700;

    /** Cotton of middling weight (docs/sources.md#drape). */
    private static final Stuff COTTON = new Stuff(140, 1e-5, 60, 0.115, 0.12);

    private static final long SEED = 7;

    /** When the cloth has moved no more than this share of a gap in a tenth of a second it rests. */
    private static final double REST = 0.02;

    private static final double LONGEST_REST = 1.2;

    /** Whether hands know how to tie this; else it keeps its facets. */
    public static boolean isKnown(Tie tie, Gift gift) {
        return gift instanceof Gift.Box && tie == Tie.FOUR_CORNER;
    }

    /**
     * Brings the cloth of a fold to rest. It takes seconds.
     *
     * @param fine points along the cloth's longer side
     * @param wanted asked now and then; false ends it
     * @return the drape, whether accepted or not; empty where no hands know this tie or where it was not wanted to the end
     */
    public static Optional<Drape> of(Fold fold, int fine, BooleanSupplier wanted) {
        if (!isKnown(fold.fit().tie(), fold.fit().gift())) {
            return Optional.empty();
        }
        double side = Math.max(
                fold.fit().cloth().width().in(Unit.MILLIMETRE),
                fold.fit().cloth().height().in(Unit.MILLIMETRE));
        double scale = WORLD_MM / side;
        BoxScript script = BoxScript.of(fold, scale);
        Grid grid = Grid.of(fold.laying().whole(), fine, scale, script.creases());
        Stuff stuff = COTTON.scaled(scale);
        Sheet sheet = new Sheet(grid, stuff.thickness() * grid.gap);
        lay(sheet, stuff);
        Handling hands = script.hands(sheet);
        Draping draping = new Draping(sheet, hands, script.solid(), stuff);
        if (!rest(draping, hands, sheet, wanted)) {
            return Optional.empty();
        }
        Acceptance acceptance = new DrapeJudge(sheet, script.solid(), scale).of(fold.knots());
        return Optional.of(new Drape(fold, Mesh.of(sheet, scale), acceptance));
    }

    /** Spreads the cloth on the table, a little uneven so that it may fold either way. */
    private static void lay(Sheet sheet, Stuff stuff) {
        Random chance = new Random(SEED);
        Grid grid = sheet.grid;
        for (int k = 0; k < grid.points(); k++) {
            sheet.x[3 * k] = grid.u[k];
            sheet.x[3 * k + 1] = grid.v[k];
            sheet.x[3 * k + 2] = grid.gap * (0.02 * chance.nextDouble() - stuff.off());
        }
    }

    private static boolean rest(Draping draping, Handling hands, Sheet sheet, BooleanSupplier wanted) {
        int tenth = (int) Math.round(Draping.STEPS / 10);
        for (int step = 1; draping.time() < hands.busy() + LONGEST_REST; step++) {
            double late = draping.time() - hands.busy();
            draping.step(late > 0.5 ? 60 : late > 0.3 ? 25 : late > 0 ? 8 : 10);
            if (step % tenth == 0) {
                boolean rests = draping.moved() < REST * sheet.grid.gap && late > 0.5;
                if (!wanted.getAsBoolean()) {
                    return false;
                }
                if (rests) {
                    break;
                }
            }
        }
        for (int k = 0; k < sheet.points(); k++) {
            // what the knots hold may shift a little
            sheet.ease[k] = sheet.knotted[k] ? 0.6 : sheet.ease[k];
        }
        draping.relax();
        return wanted.getAsBoolean();
    }

    /**
     * A mesh at rest, in millimetres.
     *
     * @param places in space, by number
     * @param cloth where each lies on the flat cloth on the table
     * @param triangles three numbers each, anticlockwise seen from the cloth's inside; without what the knots hold
     */
    public record Mesh(List<Vector> places, List<Point> cloth, List<Integer> triangles) {

        public Mesh {
            places = List.copyOf(places);
            cloth = List.copyOf(cloth);
            triangles = List.copyOf(triangles);
        }

        static Mesh of(Sheet sheet, double scale) {
            List<Vector> places = new ArrayList<>();
            List<Point> cloth = new ArrayList<>();
            for (int k = 0; k < sheet.points(); k++) {
                places.add(new Vector(sheet.x[3 * k], sheet.x[3 * k + 1], sheet.x[3 * k + 2]).times(1 / scale));
                cloth.add(new Point(sheet.grid.u[k], sheet.grid.v[k]).times(1 / scale));
            }
            List<Integer> triangles = new ArrayList<>();
            int[] corners = sheet.grid.triangles;
            for (int t = 0; t < corners.length; t += 3) {
                if (!sheet.knotted[corners[t]] || !sheet.knotted[corners[t + 1]] || !sheet.knotted[corners[t + 2]]) {
                    triangles.add(corners[t]);
                    triangles.add(corners[t + 1]);
                    triangles.add(corners[t + 2]);
                }
            }
            return new Mesh(places, cloth, triangles);
        }
    }

    /**
     * How well a cloth came to rest. What the knots hold is left out: it is drawn by the knots' own strands.
     *
     * @param stretch the longest stretch of a thread between two points, as a share
     * @param depthMm how deep cloth lies inside the gift above its foot, in millimetres
     * @param piercing the share of the triangles' sides that pass through other cloth, away from the knots
     */
    public record Acceptance(double stretch, double depthMm, double piercing) {

        /** Cotton threads give about this much before they are pulled straight; more would show as a rubber cloth. */
        public static final double MOST_STRETCH = 0.02;

        /** Twice the thickness of light cotton (docs/sources.md#ply). */
        public static final double MOST_DEPTH_MM = 0.5;

        public static final double MOST_PIERCING = 0.01;

        /** Whether it may be shown. */
        public boolean holds() {
            return stretch < MOST_STRETCH && depthMm < MOST_DEPTH_MM && piercing < MOST_PIERCING;
        }
    }
}
