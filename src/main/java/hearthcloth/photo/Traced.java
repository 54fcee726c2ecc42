package hearthcloth.photo;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A polygon followed in the full picture: its corners in raw pixels and, for each side, how well it was found.
 *
 * @param fits one for each side, from corner i to the next; null-free: a side too short or too faint has an empty Side
 */
record Traced(List<Spot> corners, List<Side> sides, List<Side.Fit> fits) {

    private static final double CORNER_COST = 0.02;

    Traced {
        corners = List.copyOf(corners);
        sides = List.copyOf(sides);
        fits = List.copyOf(fits);
    }

    /**
     * Follows a polygon.
     *
     * @param wide the same reader with a longer reach, to see fringe by
     * @param near how far a place may be off its side and still belong to it, in pixels
     * @param leash how far a corner may move from where it was, in pixels
     */
    static Traced of(List<Spot> rough, Sides reader, @Nullable Sides wide, Lens lens, double near, double leash) {
        List<Side> sides = reader.of(rough);
        List<Side.Fit> fits = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            Side side = sides.get(i);
            if (side.isUsable()) {
                Side.Fit fit = side.fit(lens, near);
                if (fit.share() > 0.25) {
                    fits.add(
                            wide == null
                                    ? fit
                                    : wide.settled(
                                            fit, side, rough.get(i), rough.get((i + 1) % rough.size()), lens, near));
                    continue;
                }
            }
            Line line = Line.through(lens.straight(rough.get(i)), lens.straight(rough.get((i + 1) % rough.size())));
            fits.add(new Side.Fit(line, near, near * 1.5, 0, 0));
        }
        return new Traced(crossings(rough, fits, lens, leash), sides, fits);
    }

    private static List<Spot> crossings(List<Spot> rough, List<Side.Fit> fits, Lens lens, double leash) {
        List<Spot> corners = new ArrayList<>();
        for (int i = 0; i < rough.size(); i++) {
            Line before = fits.get(Math.floorMod(i - 1, fits.size())).line();
            Line after = fits.get(i).line();
            Spot cross = lens.bent(before.crossing(after));
            corners.add(cross.to(rough.get(i)) < leash ? cross : rough.get(i));
        }
        return corners;
    }

    /**
     * How badly the picture supports this polygon: the part of its rim where nothing was found on the sides, plus a little
     * for every corner, so that of two polygons the simpler one wins unless the other explains more.
     */
    double misfit() {
        double all = 0;
        double bare = 0;
        for (int i = 0; i < corners.size(); i++) {
            double length = corners.get(i).to(corners.get((i + 1) % corners.size()));
            all += length;
            bare += length * (1 - Math.min(1, fits.get(i).share() / 0.8));
        }
        return bare / all + CORNER_COST * corners.size();
    }

    /** The sine of the angle at corner i. */
    double sine(int i) {
        Line before = fits.get(Math.floorMod(i - 1, fits.size())).line();
        return Math.max(0.05, Math.abs(before.sine(fits.get(i).line())));
    }

    double worstDeviation() {
        return fits.stream().mapToDouble(Side.Fit::deviation).max().orElse(1);
    }
}
