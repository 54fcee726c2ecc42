package hearthcloth.web.stash;

import java.util.List;

/**
 * How many pixels an inch of cloth takes on each kind of screen, as one of {@link #PIXELS}. Everything on the table is
 * written in ems of four inches, so that this one number is all that a nearer look, a telephone or paper changes.
 *
 * @param landscape step on a tablet held across, from the farthest
 */
public record TableFit(int landscape, int portrait, int phone, int desk) {

    /** Pixels an inch, an eighth more each step; {@code table.css} has the same. */
    private static final double[] PIXELS = {
        1.6, 1.79, 2.0, 2.24, 2.51, 2.81, 3.1, 3.5, 4.0, 4.4, 5.0,
        5.5, 6.2, 6.9, 7.8, 8.7, 9.7, 10.9, 12.2, 13.7, 15.3, 17.2
    };

    /** What {@code stash.css} leaves of each screen for the table, in pixels, and the farthest that is legible there. */
    private record Room(double width, double height, int least, int most) {

        Room less(int above) {
            return new Room(width, height - above, least, most);
        }
    }

    private static final Room LANDSCAPE = new Room(950, 456, 0, 14);
    private static final Room PORTRAIT = new Room(694, 676, 0, 14);
    private static final Room DESK = new Room(1326, 586, 0, 16);
    private static final Room PHONE = new Room(338, 440, 8, 9);

    private static final double BETWEEN_PIECES = 5;
    private static final double BETWEEN_GROUPS = 20;
    private static final double NAME = 48;
    private static final double LETTER = 8.2;

    /** Two lines that ask for a colour, as wide as the style sheet lets them be. */
    private static final double ASKED = 36;

    private static final double ASKED_WIDE = 150;
    private static final double LEAST_PIECE = 26;

    /** @param above pixels that a line over the page takes of its height */
    static TableFit of(List<StashTable.Group> groups, int zoom, int above) {
        return new TableFit(
                step(groups, LANDSCAPE.less(above), zoom),
                step(groups, PORTRAIT.less(above), zoom),
                step(groups, PHONE.less(above), zoom),
                step(groups, DESK.less(above), zoom));
    }

    private static int step(List<StashTable.Group> groups, Room room, int zoom) {
        int fits = room.most;
        while (fits > room.least && height(groups, room.width, PIXELS[fits]) > room.height) {
            fits--;
        }
        return Math.max(0, Math.min(PIXELS.length - 1, fits + zoom));
    }

    /** How high the table is when groups stand in rows of this width. */
    private static double height(List<StashTable.Group> groups, double width, double pixels) {
        double all = 0;
        double row = 0;
        double at = 0;
        for (StashTable.Group group : groups) {
            double wide = width(group, pixels);
            if (at > 0 && at + BETWEEN_GROUPS + wide > width) {
                all += row;
                row = 0;
                at = 0;
            }
            at += (at > 0 ? BETWEEN_GROUPS : 0) + wide;
            row = Math.max(row, tall(group, pixels) + NAME + (group.said().hasColour() ? 0 : ASKED));
        }
        return all + row;
    }

    private static double width(StashTable.Group group, double pixels) {
        double all = 0;
        for (StashTable.Column column : group.columns()) {
            double widest = column.lots().stream()
                    .mapToDouble(lot -> seen(lot.widthInches(), pixels))
                    .max()
                    .orElse(0);
            all += widest + BETWEEN_PIECES;
        }
        return Math.max(
                all, Math.max(group.fabric().length() * LETTER, group.said().hasColour() ? 0 : ASKED_WIDE));
    }

    private static double tall(StashTable.Group group, double pixels) {
        return group.columns().stream()
                .mapToDouble(column -> column.lots().stream()
                        .mapToDouble(lot -> seen(lot.heightInches(), pixels) + BETWEEN_PIECES)
                        .sum())
                .max()
                .orElse(0);
    }

    private static double seen(double inches, double pixels) {
        return Math.max(LEAST_PIECE, inches * pixels);
    }
}
