package hearthcloth.plan.model;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * A cloth without one hearth and its rounds: scraps as they are, small log cabins set together, or log cabins with scraps
 * round them.
 *
 * @param blocks the log cabins; empty where all is scraps
 * @param scraps whether scraps fill the cloth, or what is left round the blocks
 * @param cutting how scraps may be cut
 * @param wishes what else is wished of scraps
 */
public record Patchwork(Optional<Blocks> blocks, boolean scraps, ScrapRule cutting, ScrapWishes wishes) {

    /** The most blocks in a row, and the most rows. */
    public static final int MOST_BLOCKS = 12;

    public Patchwork {
        if (blocks.isEmpty() && !scraps) {
            throw new IllegalArgumentException("neither blocks nor scraps");
        }
    }

    /** A cloth of which nothing else is wished. */
    public Patchwork(Optional<Blocks> blocks, boolean scraps, ScrapRule cutting) {
        this(blocks, scraps, cutting, ScrapWishes.NONE);
    }

    /** Scraps as they are, cut where it helps. */
    public static Patchwork free() {
        return new Patchwork(Optional.empty(), true, ScrapRule.EITHER);
    }

    /**
     * What is wished of the scraps of a cloth.
     *
     * @param with ids of pieces that have to be in it
     * @param middle id of the piece that lies in the middle as it is, the others round it; empty where any may
     * @param mostTrim how much may be trimmed off the width or the length of a piece; empty for as much as need be
     * @param sizes how alike the patches are to be
     * @param direction whether seams run right across or down the whole cloth
     */
    public record ScrapWishes(
            List<String> with, Optional<String> middle, Optional<Length> mostTrim, Sizes sizes, Direction direction) {

        /** Nothing is wished. */
        public static final ScrapWishes NONE =
                new ScrapWishes(List.of(), Optional.empty(), Optional.empty(), Sizes.ANY, Direction.ANY);

        public ScrapWishes {
            with = List.copyOf(with);
        }
    }

    /** How alike the patches of a cloth are to be in size. */
    public enum Sizes {
        /** Arrangements of all kinds are offered. */
        ANY,
        /** Large and small ones beside each other. */
        MIXED,
        /** As alike as the pieces allow: large ones make two or three patches, the smallest stay out. */
        EVEN
    }

    /** Which way seams run from rim to rim. */
    public enum Direction {
        /** As it comes. */
        ANY,
        /** The cloth is of bands that lie across it from the left rim to the right. */
        ACROSS,
        /** The cloth is of bands that run down it from the upper rim to the lower. */
        DOWN
    }

    /** How scraps may be cut. */
    public enum ScrapRule {
        /** No scrap is cut in two; only edges are trimmed. */
        AS_THEY_ARE,
        /** A scrap may be cut in two where its offcut can be used again. */
        CUT,
        /** Arrangements of both kinds are offered. */
        EITHER
    }

    /**
     * Small log cabins, set together in rows.
     *
     * @param across how many in a row
     * @param down how many rows
     * @param rounds rounds of bars in each
     * @param order in which the bars of a block are laid
     * @param setting how the light and dark halves of the blocks lie; empty where several are to be offered
     */
    public record Blocks(int across, int down, int rounds, Order order, Optional<Setting> setting) {

        public Blocks {
            if (across < 1 || down < 1 || rounds < 1 || across > MOST_BLOCKS || down > MOST_BLOCKS) {
                throw new IllegalArgumentException(across + " x " + down + " blocks of " + rounds + " rounds");
            }
        }
    }

    /**
     * How the blocks of a cloth are turned against each other, each with a light and a dark half: the settings of the trade
     * (docs/sources.md#block-settings).
     */
    public enum Setting {
        /** All alike: each block lies as the first. */
        ALIKE("all alike"),
        /** Straight furrow: light and dark run in diagonal bands. */
        STRAIGHT_FURROW("straight furrow"),
        /** Barn raising: light and dark lie in squares on their points round the middle. */
        BARN_RAISING("barn raising"),
        /** Sunshine and shadow: light halves of four blocks meet, and so do the dark ones. */
        SUNSHINE_AND_SHADOW("sunshine and shadow"),
        /** Each block is turned as chance will have it. */
        TURNED_AT_WILL("turned at will");

        private final String words;

        Setting(String words) {
            this.words = words;
        }

        /** The setting of this name. */
        public static Optional<Setting> named(String text) {
            String plain = text.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[\\s_-]+", " ");
            for (Setting setting : values()) {
                if (setting.words.equals(plain)) {
                    return Optional.of(setting);
                }
            }
            return Optional.empty();
        }
    }
}
