package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** Reads the two kinds of benchmark file as jobs. */
public final class BenchJobs {

    private BenchJobs() {}

    /** The lines of a resource without comments. */
    public static List<String> lines(String resource) {
        try (InputStream in = Objects.requireNonNull(BenchJobs.class.getResourceAsStream(resource), resource);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long[] numbers(String line) {
        return Arrays.stream(line.split("\\s+")).mapToLong(Long::parseLong).toArray();
    }

    /** Strips that have the bars' width. */
    static CutJoinJob join(List<String> lines) {
        long[] head = numbers(lines.get(0));
        long[] bars = numbers(lines.get(1));
        long[] strips = numbers(lines.get(2));
        List<StockPiece> stock = IntStream.range(0, strips.length)
                .mapToObj(i -> new StockPiece(i, head[4], strips[i], 0, true))
                .toList();
        List<JobBar> wanted = IntStream.range(0, bars.length)
                .mapToObj(i -> bar(i, head[4], bars[i], 0, head[3]))
                .toList();
        return new CutJoinJob(stock, List.of(), wanted, List.of(), head[2], 0, head[3]);
    }

    /** Rectangles of several colours, one square, bars of one width. */
    public static CutJoinJob cutAndJoin(List<String> lines) {
        long[] head = numbers(lines.get(0));
        int stockCount = Integer.parseInt(lines.get(1));
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0; i < stockCount; i++) {
            long[] row = numbers(lines.get(2 + i));
            stock.add(new StockPiece(i, row[0], row[1], (int) row[2], false));
        }
        List<JobBlock> blocks = new ArrayList<>();
        List<JobBar> bars = new ArrayList<>();
        int lastColour = stock.stream().mapToInt(StockPiece::fabric).max().orElse(0);
        for (String line : lines.subList(3 + stockCount, lines.size())) {
            long[] row = numbers(line);
            int id = blocks.size() + bars.size();
            if (row[0] == row[1] && row[2] == lastColour && blocks.isEmpty()) {
                blocks.add(new JobBlock(id, row[0], row[1], FabricSets.of((int) row[2]), true));
            } else {
                bars.add(bar(id, head[0], row[0], (int) row[2], head[2]));
            }
        }
        return new CutJoinJob(stock, blocks, bars, List.of(), head[1], 0, head[2]);
    }

    private static JobBar bar(int id, long width, long length, int fabric, long least) {
        return new JobBar(
                id, width, length, FabricSets.of(fabric), false, Integer.MAX_VALUE - 1, least, BarTurn.ANY, List.of());
    }
}
