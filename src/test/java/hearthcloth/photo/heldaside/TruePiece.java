package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One scrap as it really lies.
 *
 * @param made its shape, its edges, its figure
 * @param corners on the floor, mm, in order
 * @param rim the woven edge, with its wandering, without loose threads; the same as the corners where it is straight
 * @param contrast CIELAB 1976 difference between its mean colour and the ground round it, as lit and exposed
 * @param troubles what must not be expected of a reader
 */
public record TruePiece(Made made, List<Point> corners, List<Point> rim, double contrast, Set<Trouble> troubles) {

    /** How it was made. */
    public record Made(Form form, Edge edge, String figure) {}

    /** What is the matter with it. */
    public enum Trouble {
        TOUCHING,
        OVERLAPPING,
        CUT_OFF
    }

    public TruePiece {
        corners = List.copyOf(corners);
        rim = List.copyOf(rim);
        troubles = Set.copyOf(troubles);
    }

    /** Side i runs from corner i to the next, mm. */
    public List<Double> sides() {
        List<Double> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(corners.get(i).to(corners.get((i + 1) % corners.size())));
        }
        return List.copyOf(sides);
    }

    /** Whether its sides are straight lines from corner to corner. */
    public boolean isStraight() {
        return made.edge() != Edge.WAVY;
    }
}
