package hearthcloth.benchmarks.sets;

import hearthcloth.benchmarks.sheet.SheetJob;
import hearthcloth.benchmarks.sheet.Wanted;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.join.JoinJob;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The formats of the problem sets, as they are described in {@code benchmarks/README.md}. */
public final class Formats {

    private Formats() {}

    /** Bars pieced from strips that have the bars' width. */
    public static JoinJob join(NumberFile file) {
        long[] head = file.row(5, "bars strips seamLoss leastPiece barWidth");
        int bars = file.count(head[0]);
        int strips = file.count(head[1]);
        if (head[2] < 0 || head[3] < 0) {
            throw file.wrong("has a seam loss or a least piece below 0");
        }
        List<Long> lengths = list(file.positiveRow(bars, "the lengths of the bars"));
        JoinJob job = new JoinJob(lengths, list(file.positiveRow(strips, "the strips' lengths")), head[2], head[3]);
        file.end();
        return job;
    }

    /** Rectangles of several colours, a square of the last colour, bars of one width. */
    public static CutJoinJob cutAndJoin(NumberFile file) {
        long[] head = file.positiveRow(3, "bar_width seam_loss_per_join min_piece_length");
        List<StockPiece> stock = new ArrayList<>();
        for (long[] row : file.rows(file.count("the number of stock pieces"), 3, "width height colour")) {
            requireRectangle(file, row);
            stock.add(new StockPiece(stock.size(), row[0], row[1], colour(file, row[2]), false));
        }
        List<long[]> wanted = file.rows(file.count("the number wanted"), 3, "length width colour");
        wanted.forEach(row -> requireRectangle(file, row));
        file.end();
        long last = wanted.stream().mapToLong(row -> row[2]).max().orElse(0);
        List<JobBlock> blocks = new ArrayList<>();
        List<JobBar> bars = new ArrayList<>();
        for (long[] row : wanted) {
            int id = blocks.size() + bars.size();
            FabricSets fabrics = FabricSets.of(colour(file, row[2]));
            if (blocks.isEmpty() && row[2] == last && row[0] == row[1]) {
                blocks.add(new JobBlock(id, row[0], row[1], fabrics, true));
            } else {
                bars.add(new JobBar(
                        id, row[1], row[0], fabrics, false, Integer.MAX_VALUE - 1, head[2], BarTurn.ANY, List.of()));
            }
        }
        return new CutJoinJob(stock, blocks, bars, List.of(), head[1], 0, head[2]);
    }

    /** One sheet, rectangles with a profit and limited copies, no turning. */
    public static SheetJob knapsack(NumberFile file) {
        long[] sheet = file.positiveRow(2, "the sheet: L W");
        List<Wanted> wanted = new ArrayList<>();
        for (long[] row : file.rows(file.count("the number of kinds"), 4, "l w profit copies")) {
            requireRectangle(file, row);
            if (row[2] > 0 && row[3] > 0) {
                wanted.add(new Wanted(row[0], row[1], row[2], row[3]));
            }
        }
        return sheet(file, sheet, wanted, false);
    }

    /** One sheet, rectangles with a value and as many copies as fit. */
    public static SheetJob unconstrained(NumberFile file, boolean turned) {
        int kinds = file.count("the number of kinds");
        long[] sheet = file.positiveRow(2, "the sheet: L W");
        List<Wanted> wanted = new ArrayList<>();
        for (long[] row : file.rows(kinds, 3, "length width value")) {
            requireRectangle(file, row);
            if (row[2] > 0) {
                wanted.add(new Wanted(row[0], row[1], row[2], Wanted.UNLIMITED));
            }
        }
        return sheet(file, sheet, wanted, turned);
    }

    private static SheetJob sheet(NumberFile file, long[] sheet, List<Wanted> wanted, boolean turned) {
        file.end();
        if (wanted.isEmpty()) {
            throw file.wrong("ends a list in which nothing is worth cutting");
        }
        try {
            return new SheetJob(sheet[0], sheet[1], wanted, turned);
        } catch (IllegalArgumentException tooLarge) {
            throw file.wrong("ends a list that cannot be computed: " + tooLarge.getMessage());
        }
    }

    private static void requireRectangle(NumberFile file, long[] row) {
        if (row[0] < 1 || row[1] < 1) {
            throw file.wrong("or one before it has a rectangle without size: " + Arrays.toString(row));
        }
    }

    private static int colour(NumberFile file, long number) {
        if (number < 0 || number > 10_000) {
            throw file.wrong("or one before it has colour " + number + ", which is not between 0 and 10000");
        }
        return (int) number;
    }

    private static List<Long> list(long[] numbers) {
        return Arrays.stream(numbers).boxed().toList();
    }
}
