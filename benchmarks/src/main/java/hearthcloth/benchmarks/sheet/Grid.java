package hearthcloth.benchmarks.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stops of both sides of a sheet, and the laid pieces that fit it. */
final class Grid {

    private final SheetJob job;
    private final Stops across;
    private final Stops down;
    private final List<Laid> laid;
    private final long[] copies;

    /** A kind of piece in one direction, with its stops. */
    record Laid(int kind, boolean turned, int across, int down) {}

    private Grid(SheetJob job, Stops across, Stops down, List<Laid> laid, long[] copies) {
        this.job = job;
        this.across = across;
        this.down = down;
        this.laid = laid;
        this.copies = copies;
    }

    /** The grid of a job, or nothing if a side has too many stops. */
    static Optional<Grid> of(SheetJob job) {
        int kinds = job.wanted().size();
        long[] copies = new long[kinds];
        long[][] widths = new long[kinds][];
        long[][] heights = new long[kinds][];
        for (int kind = 0; kind < kinds; kind++) {
            Wanted piece = job.wanted().get(kind);
            copies[kind] = job.copies(kind);
            boolean upright = fits(job, piece.width(), piece.height());
            boolean turned =
                    job.turning() && piece.width() != piece.height() && fits(job, piece.height(), piece.width());
            widths[kind] = lengths(upright, piece.width(), turned, piece.height());
            heights[kind] = lengths(upright, piece.height(), turned, piece.width());
        }
        return Stops.of(job.width(), widths, copies)
                .flatMap(across -> Stops.of(job.height(), heights, copies)
                        .map(down -> new Grid(job, across, down, laid(job, across, down, widths, heights), copies)));
    }

    private static List<Laid> laid(SheetJob job, Stops across, Stops down, long[][] widths, long[][] heights) {
        List<Laid> laid = new ArrayList<>();
        for (int kind = 0; kind < widths.length; kind++) {
            Wanted piece = job.wanted().get(kind);
            boolean upright = fits(job, piece.width(), piece.height());
            for (int i = 0; i < widths[kind].length; i++) {
                laid.add(new Laid(
                        kind, i == 1 || !upright, across.exact(widths[kind][i]), down.exact(heights[kind][i])));
            }
        }
        return List.copyOf(laid);
    }

    private static boolean fits(SheetJob job, long width, long height) {
        return width <= job.width() && height <= job.height();
    }

    private static long[] lengths(boolean upright, long one, boolean turned, long other) {
        if (upright && turned) {
            return new long[] {one, other};
        }
        return upright ? new long[] {one} : turned ? new long[] {other} : new long[0];
    }

    SheetJob job() {
        return job;
    }

    /** Stops along the width. */
    Stops across() {
        return across;
    }

    /** Stops along the height. */
    Stops down() {
        return down;
    }

    List<Laid> laid() {
        return laid;
    }

    /** The most copies of each kind that matter; not to be written to. */
    long[] copies() {
        return copies;
    }

    int cells() {
        return across.size() * down.size();
    }

    int cell(int i, int j) {
        return i * down.size() + j;
    }

    Slicing.Piece piece(Laid laid) {
        return new Slicing.Piece(laid.kind(), laid.turned(), across.at(laid.across()), down.at(laid.down()));
    }

    long worth(Slicing slicing) {
        long[] counts = new long[copies.length];
        Slicing.count(slicing, counts);
        long sum = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            sum += counts[kind] * job.wanted().get(kind).worth();
        }
        return sum;
    }
}
