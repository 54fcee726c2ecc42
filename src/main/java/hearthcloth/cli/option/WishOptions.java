package hearthcloth.cli.option;

import hearthcloth.wish.WishField;
import hearthcloth.wish.WishWords;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The wishes as options of a command. */
public final class WishOptions {

    @Mixin
    private GiftOptions gift = new GiftOptions();

    @Option(names = "--slack", paramLabel = "LENGTH")
    @Nullable
    private String slack;

    @Option(names = "--outside", paramLabel = "FACE")
    @Nullable
    private String outside;

    @Option(names = "--turned", paramLabel = "N")
    @Nullable
    private String turned;

    @Option(names = "--off-middle", paramLabel = "WAY")
    @Nullable
    private String offMiddle;

    @Option(names = "--show", paramLabel = "FABRIC")
    @Nullable
    private String show;

    @Option(names = "--size", paramLabel = "SIZE")
    @Nullable
    private String size;

    @Option(names = "--hearth", paramLabel = "SIZE")
    @Nullable
    private String hearth;

    @Option(names = "--bars", paramLabel = "WIDTHS")
    @Nullable
    private String bars;

    @Option(names = "--rounds", paramLabel = "N")
    @Nullable
    private String rounds;

    @Option(names = "--order", paramLabel = "ORDER")
    @Nullable
    private String order;

    @Option(names = "--free")
    private boolean free;

    @Option(names = "--blocks", paramLabel = "N x M")
    @Nullable
    private String blocks;

    @Option(names = "--setting", paramLabel = "SETTING")
    @Nullable
    private String setting;

    @Option(names = "--scraps", paramLabel = "RULE")
    @Nullable
    private String scraps;

    @Option(names = "--with", paramLabel = "PIECES")
    @Nullable
    private String with;

    @Option(names = "--middle", paramLabel = "PIECE")
    @Nullable
    private String middle;

    @Option(names = "--most-trim", paramLabel = "LENGTH")
    @Nullable
    private String mostTrim;

    @Option(names = "--sizes", paramLabel = "SIZES")
    @Nullable
    private String sizes;

    @Option(names = "--bands", paramLabel = "WAY")
    @Nullable
    private String bands;

    @Option(names = "--seam", paramLabel = "SEAM")
    @Nullable
    private String seam;

    @Option(names = "--hem", paramLabel = "HEM")
    @Nullable
    private String hem;

    @Option(names = "--corner", paramLabel = "CORNER")
    @Nullable
    private String corner;

    @Option(names = "--fell", paramLabel = "FACE")
    @Nullable
    private String fell;

    @Option(names = "--leeway", paramLabel = "LENGTH")
    @Nullable
    private String leeway;

    @Option(names = "--trim", paramLabel = "LENGTH")
    @Nullable
    private String trim;

    @Option(names = "--least-piece", paramLabel = "LENGTH")
    @Nullable
    private String leastPiece;

    @Option(names = "--clearance", paramLabel = "LENGTH")
    @Nullable
    private String clearance;

    @Option(names = "--most-joins", paramLabel = "N")
    @Nullable
    private String mostJoins;

    @Option(names = "--scheme", paramLabel = "COLOURS")
    @Nullable
    private String scheme;

    @Option(names = "--contrast", paramLabel = "HOW")
    @Nullable
    private String contrast;

    @Option(names = "--fabrics", paramLabel = "NAMES")
    @Nullable
    private String fabrics;

    @Option(names = "--proposals", paramLabel = "N")
    @Nullable
    private String proposals;

    @Option(names = "--seed", paramLabel = "N")
    @Nullable
    private String seed;

    /** How many cloths, as typed. */
    public @Nullable String proposals() {
        return proposals;
    }

    /** The seed, as typed. */
    public @Nullable String seed() {
        return seed;
    }

    /** What is wrapped, and how. */
    public GiftOptions gift() {
        return gift;
    }

    /** What was typed, but for the gift. */
    public WishWords words() {
        return WishWords.NOTHING
                .with(WishField.SLACK, slack)
                .with(WishField.OUTSIDE, outside)
                .with(WishField.TURNED, turned)
                .with(WishField.OFF_MIDDLE, offMiddle)
                .with(WishField.SHOW, show)
                .with(WishField.SIZE, size)
                .with(WishField.HEARTH, hearth)
                .with(WishField.BARS, bars)
                .with(WishField.ROUNDS, rounds)
                .with(WishField.ORDER, order)
                .with(WishField.BLOCKS, blocks)
                .with(WishField.SETTING, setting)
                .with(WishField.SCRAPS, scraps)
                .with(WishField.WITH, with)
                .with(WishField.MIDDLE, middle)
                .with(WishField.MOST_TRIM, mostTrim)
                .with(WishField.SIZES, sizes)
                .with(WishField.BANDS, bands)
                .with(WishField.SEAM, seam)
                .with(WishField.HEM, hem)
                .with(WishField.CORNER, corner)
                .with(WishField.FELL, fell)
                .with(WishField.LEEWAY, leeway)
                .with(WishField.TRIM, trim)
                .with(WishField.LEAST_PIECE, leastPiece)
                .with(WishField.CLEARANCE, clearance)
                .with(WishField.MOST_JOINS, mostJoins)
                .with(WishField.SCHEME, scheme)
                .with(WishField.CONTRAST, contrast)
                .with(WishField.FABRICS, fabrics)
                .with(WishField.PROPOSALS, proposals)
                .with(WishField.SEED, seed)
                .with(WishField.FREE, free ? "yes" : null);
    }
}
