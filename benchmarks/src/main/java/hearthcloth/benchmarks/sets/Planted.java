package hearthcloth.benchmarks.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Cutting and joining with an answer known by construction: of each colour there are only lanes of one length, exactly
 * as many as the bars need. No part is longer than a lane, so a bar of length l needs (l - loss) / (lane - loss) parts,
 * rounded up, and the planted plan has no more.
 */
final class Planted {

    private final SplittableRandom chance;
    private final long width;
    private final long loss;
    private final long least;
    private final boolean exact;
    private final List<String> stock = new ArrayList<>();
    private final List<String> wanted = new ArrayList<>();

    private Planted(SplittableRandom chance) {
        this.chance = chance;
        this.width = new long[] {40, 50, 60, 65}[chance.nextInt(4)];
        this.loss = new long[] {10, 12, 15}[chance.nextInt(3)];
        this.least = Math.max(width, 50 + 10L * chance.nextInt(4));
        this.exact = chance.nextBoolean();
    }

    static String text(SplittableRandom chance) {
        return new Planted(chance).text();
    }

    private String text() {
        int colours = 1 + chance.nextInt(3);
        for (int colour = 0; colour < colours; colour++) {
            colour(colour);
        }
        long square = width * (1 + chance.nextInt(2));
        stock.add(square + " " + square + " " + colours);
        wanted.add(square + " " + square + " " + colours);
        shuffle(stock);
        shuffle(wanted);
        return width + " " + loss + " " + least + "\n" + stock.size() + "\n" + String.join("\n", stock) + "\n"
                + wanted.size() + "\n" + String.join("\n", wanted) + "\n";
    }

    private void colour(int colour) {
        long lane = chance.nextLong(3 * least, 10 * least);
        int lanes = 0;
        for (int bars = 2 + chance.nextInt(6); bars > 0; bars--) {
            int parts = 1 + chance.nextInt(5);
            long length = parts * (lane - loss) + loss;
            if (!exact) {
                length -= chance.nextLong(0, (lane - loss) / 2);
            }
            lanes += parts;
            wanted.add(length + " " + width + " " + colour);
        }
        while (lanes > 0) {
            int wide = Math.min(lanes, 1 + chance.nextInt(4));
            stock.add(wide * width + " " + lane + " " + colour);
            lanes -= wide;
        }
        for (int useless = chance.nextInt(3); useless > 0; useless--) {
            long narrow = chance.nextLong(width / 4, width);
            stock.add(narrow + " " + chance.nextLong(width, lane) + " " + colour);
        }
    }

    private void shuffle(List<String> lines) {
        for (int i = lines.size() - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            String swap = lines.get(i);
            lines.set(i, lines.get(j));
            lines.set(j, swap);
        }
    }
}
