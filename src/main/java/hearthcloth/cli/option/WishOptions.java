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

    @Option(
            names = "--slack",
            paramLabel = "LENGTH",
            description = "How much larger than the least a cloth for a gift is planned, for what sewing may take;"
                    + " \"1/2 in\" or \"12 mm\". none plans the least.")
    @Nullable
    private String slack;

    @Option(
            names = "--outside",
            paramLabel = "FACE",
            description = "The face that shows on the tied gift: front or back; front.")
    @Nullable
    private String outside;

    @Option(
            names = "--turned",
            paramLabel = "N",
            description = "Quarter turns of the cloth under the gift, to the left: 0 to 3; 0.")
    @Nullable
    private String turned;

    @Option(
            names = "--off-middle",
            paramLabel = "WAY",
            description = "The gift set off the cloth's middle: \"1 in right\", \"2 cm left, 3 cm away\" (or near).")
    @Nullable
    private String offMiddle;

    @Option(
            names = "--show",
            paramLabel = "FABRIC",
            description = "Put this fabric where it shows once the gift is tied.")
    @Nullable
    private String show;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "The finished cloth instead of a gift: \"38 1/2 in\" (a square) or \"38 x 30 in\".")
    @Nullable
    private String size;

    @Option(
            names = "--hearth",
            paramLabel = "SIZE",
            description =
                    "The piece in the middle, as cut: \"14 in\", \"12 x 9 in\"; \"12 in finished\" for what shows;"
                            + " stash (let the stash decide).")
    @Nullable
    private String hearth;

    @Option(
            names = "--bars",
            paramLabel = "WIDTHS",
            description = "Widths of the bars, as cut: \"5 in\" for all, \"5 in, 4 in\" round by round (the last one"
                    + " goes on); with \"finished\" for what shows; stash.")
    @Nullable
    private String bars;

    @Option(names = "--rounds", paramLabel = "N", description = "Rounds of bars, 1 to 40, or stash.")
    @Nullable
    private String rounds;

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "round (each bar on the next side), pairs (opposite sides), two-sides (the hearth stays in a"
                    + " corner).")
    @Nullable
    private String order;

    @Option(
            names = "--free",
            description =
                    "Scraps laid together as they are, without hearth and bars; with --blocks or --rounds, scraps round"
                            + " the log cabins.")
    private boolean free;

    @Option(
            names = "--blocks",
            paramLabel = "N x M",
            description =
                    "So many small log cabins in a row, and so many rows: \"3 x 3\"; --rounds and --order are those of"
                            + " each block.")
    @Nullable
    private String blocks;

    @Option(
            names = "--setting",
            paramLabel = "SETTING",
            description =
                    "How the light and dark halves of the blocks lie: \"straight furrow\", \"barn raising\", \"sunshine"
                            + " and shadow\", \"turned at will\" or \"all alike\".")
    @Nullable
    private String setting;

    @Option(
            names = "--scraps",
            paramLabel = "RULE",
            description = "With --free: as-they-are (no scrap is cut in two), cut (where it helps), either; either.")
    @Nullable
    private String scraps;

    @Option(
            names = "--with",
            paramLabel = "PIECES",
            description = "With --free: numbers of pieces that have to be in the cloth, parted by commas: \"3, 12-2\".")
    @Nullable
    private String with;

    @Option(
            names = "--middle",
            paramLabel = "PIECE",
            description = "With --free: the number of a piece that lies in the middle as it is, the others round it.")
    @Nullable
    private String middle;

    @Option(
            names = "--most-trim",
            paramLabel = "LENGTH",
            description =
                    "With --free: no more than this is trimmed off the width or the length of a piece; \"1/2 in\".")
    @Nullable
    private String mostTrim;

    @Option(
            names = "--sizes",
            paramLabel = "SIZES",
            description = "With --free: mixed (large and small patches), even (as alike as can be), any; any.")
    @Nullable
    private String sizes;

    @Option(
            names = "--bands",
            paramLabel = "WAY",
            description = "With --free: bands that lie across the cloth or run down it: across, down, any; any.")
    @Nullable
    private String bands;

    @Option(
            names = "--seam",
            paramLabel = "SEAM",
            description = "Narrow + wide allowance of a felled seam, \"1/4 + 1/2 in\", or the name of a seam: ssamsol,"
                    + " french, lapped …")
    @Nullable
    private String seam;

    @Option(names = "--hem", paramLabel = "HEM", description = "First + second fold, \"1/4 + 1/4 in\".")
    @Nullable
    private String hem;

    @Option(names = "--corner", paramLabel = "CORNER", description = "Hem corners: square or mitred.")
    @Nullable
    private String corner;

    @Option(names = "--fell", paramLabel = "FACE", description = "The face on which fells and hem lie: front or back.")
    @Nullable
    private String fell;

    @Option(
            names = "--leeway",
            paramLabel = "LENGTH",
            description = "Cut onto the length of each bar and trimmed off after sewing; \"1/2 in\" or \"12 mm\".")
    @Nullable
    private String leeway;

    @Option(
            names = "--trim",
            paramLabel = "LENGTH",
            description = "Cut onto the width of each bar and trimmed off after sewing; none.")
    @Nullable
    private String trim;

    @Option(
            names = "--least-piece",
            paramLabel = "LENGTH",
            description = "No part of a pieced bar shows less than this; \"2 in\" or \"5 cm\".")
    @Nullable
    private String leastPiece;

    @Option(
            names = "--clearance",
            paramLabel = "LENGTH",
            description = "A join keeps this far from every seam it would cross; \"1 in\" or \"25 mm\".")
    @Nullable
    private String clearance;

    @Option(names = "--most-joins", paramLabel = "N", description = "Joins in one bar, 0 to 40; 4.")
    @Nullable
    private String mostJoins;

    @Option(
            names = "--scheme",
            paramLabel = "COLOURS",
            description =
                    "How the colours lie: two halves, spiral, turn and turn about, ring by ring, light to dark,"
                            + " frames, one field, scattered evenly, one bright scrap; stash. Two at once: two halves + one bright scrap.")
    @Nullable
    private String scheme;

    @Option(
            names = "--contrast",
            paramLabel = "HOW",
            description = "most (as contrasty as can be), reads (the log cabin reads), easy, quiet, melts (into one"
                    + " field); reads.")
    @Nullable
    private String contrast;

    @Option(
            names = "--fabrics",
            paramLabel = "NAMES",
            description = "Use only these fabrics, parted by commas, the first for the hearth.")
    @Nullable
    private String fabrics;

    @Option(names = "--proposals", paramLabel = "N", description = "How many different cloths to offer, 1 to 12; 4.")
    @Nullable
    private String proposals;

    @Option(names = "--seed", paramLabel = "N", description = "Another number, other chances: a whole number; 1.")
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
