package hearthcloth.work.photo;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The real outline of a four-cornered cloth, as a photograph beside a sheet shows it: its sides, its diagonals and how square it is.
 *
 * @param sides in order round the cloth
 * @param diagonals from the first corner to the third, and from the second to the fourth
 * @param offSquareDeg by how much the corner that is farthest from a right angle is off it, in degrees
 */
public record FinishedOutline(List<MeasuredLength> sides, List<MeasuredLength> diagonals, double offSquareDeg) {

    public FinishedOutline {
        sides = List.copyOf(sides);
        diagonals = List.copyOf(diagonals);
    }

    /** Of a cloth with four corners; empty where it has more or fewer. */
    public static Optional<FinishedOutline> of(PieceOutline cloth, FloorScale scale) {
        if (cloth.floor().size() != 4) {
            return Optional.empty();
        }
        List<MeasuredLength> diagonals = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            // Its two ends are seen as surely as those of the sides that meet there.
            double own = Math.max(ownMm(cloth, scale, i), ownMm(cloth, scale, i + 1));
            diagonals.add(scale.measured(cloth.picture().get(i), cloth.picture().get(i + 2), own));
        }
        double off = IntStream.range(0, 4)
                .mapToDouble(i -> offSquareDeg(cloth.floor(), i))
                .max()
                .orElse(0);
        return Optional.of(new FinishedOutline(cloth.sides(), diagonals, off));
    }

    /** The deviation of a side that is its own, in millimetres: what its ± holds beyond what the sheet leaves uncertain. */
    private static double ownMm(PieceOutline cloth, FloorScale scale, int side) {
        Point from = cloth.picture().get(side);
        Point to = cloth.picture().get((side + 1) % 4);
        double whole = mm(cloth.sides().get(side).giveOrTake());
        double shared = mm(scale.measured(from, to, 0).giveOrTake());
        return Math.sqrt(Math.max(0, whole * whole - shared * shared)) / SURE;
    }

    /** A ± is this many deviations. */
    private static final double SURE = 1.96;

    private static double mm(hearthcloth.measure.Length length) {
        return length.in(hearthcloth.measure.Unit.MILLIMETRE);
    }

    private static double offSquareDeg(List<Point> corners, int i) {
        Line in = Line.through(corners.get((i + 3) % 4), corners.get(i));
        Line out = Line.through(corners.get(i), corners.get((i + 1) % 4));
        double sine = Math.max(-1, Math.min(1, in.sine(out)));
        return 90 - Math.toDegrees(Math.asin(Math.abs(sine)));
    }

    /** Whether the two diagonals are the same, as far as the picture tells. */
    public boolean isSame() {
        MeasuredLength one = diagonals.get(0);
        MeasuredLength two = diagonals.get(1);
        double apart = Math.abs(mm(one.length()) - mm(two.length()));
        return apart <= Math.hypot(mm(one.giveOrTake()), mm(two.giveOrTake()));
    }
}
