package hearthcloth.cloth.making;

import hearthcloth.measure.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A single-layer reversible seam: what it takes from each edge and how far its colour line lies from its joining line.
 *
 * <p>For a felled seam with narrow allowance n and wide allowance W the finished band is f = W − n (the wide edge is
 * turned under by n), and the two pieces together lose n + W (docs/sources.md#seam-arithmetic).
 *
 * @param name as makers call it
 * @param build how the layers lie, from which plies are counted
 * @param narrow allowance of the wrapped edge, when cut
 * @param wide allowance of the wrapping edge, when cut
 * @param band finished width of the band (fell, lap or flap)
 */
public record SeamKind(String name, Build build, Length narrow, Length wide, Length band) {

    /** How the layers of a seam lie; it counts plies from those of the two edges sewn. */
    public enum Build {
        /** The wide edge encloses the narrow one and lies flat: two layers of each. */
        FELLED {
            @Override
            public int plies(int wrapping, int wrapped) {
                return 2 * wrapping + 2 * wrapped;
            }
        },
        /** Sewn twice, raw edges inside a flap that is pressed to one side, onto the body. */
        FRENCH {
            @Override
            public int plies(int wrapping, int wrapped) {
                return 2 * wrapping + 2 * wrapped + Math.max(wrapping, wrapped);
            }
        },
        /** Each edge folded over the other's raw edge, the raw edges meeting inside the lap. */
        LAPPED {
            @Override
            public int plies(int wrapping, int wrapped) {
                return wrapping + wrapped + Math.max(wrapping, wrapped);
            }
        },
        /** Two folded edges whipped together; nothing overlaps. */
        WHIPPED {
            @Override
            public int plies(int wrapping, int wrapped) {
                return 2 * Math.max(wrapping, wrapped);
            }
        };

        /** The plies where an edge of {@code wrapping} plies meets one of {@code wrapped}. */
        public abstract int plies(int wrapping, int wrapped);
    }

    public SeamKind {
        if (narrow.isNegative() || wide.isNegative() || band.isNegative()) {
            throw new IllegalArgumentException("the allowances of a seam are zero or more");
        }
        if (build == Build.FELLED && wide.isLessThan(narrow)) {
            throw new IllegalArgumentException("the wide allowance of a felled seam is at least the narrow one");
        }
    }

    /**
     * A felled seam. The wide edge is turned under by {@code narrow}, so the band is W − n. Where that would be
     * narrower than the wrapped edge it has to hide, it is folded at that edge and turned under by less.
     */
    public static SeamKind felled(Length narrow, Length wide) {
        return new SeamKind(
                "felled", Build.FELLED, narrow, wide, wide.minus(narrow).max(narrow));
    }

    /** ¼ + ½ in, offset and felled without trimming. Source: docs/sources.md#felled-inches. */
    public static SeamKind felledInches() {
        return felled(Length.inches(1, 4), Length.inches(1, 2));
    }

    /** 5 + 10 mm, the same in metric units. Source: docs/sources.md#felled-metric. */
    static SeamKind felledMetric() {
        return felled(Length.mm(5), Length.mm(10));
    }

    /**
     * The table of seams, felled first. All can be given other allowances. Sources of these:
     * docs/sources.md#felled-inches, #felled-metric, #felled-trimmed, #lapped, #french, #whipped.
     */
    public static List<SeamKind> table() {
        return List.of(
                felledInches(),
                new SeamKind("ssamsol", Build.FELLED, Length.mm(5), Length.mm(10), Length.mm(5)),
                new SeamKind(
                        "felled and trimmed",
                        Build.FELLED,
                        Length.inches(5, 8),
                        Length.inches(5, 8),
                        Length.inches(3, 8)),
                new SeamKind("lapped", Build.LAPPED, Length.inches(1, 2), Length.inches(1, 2), Length.inches(1, 2)),
                new SeamKind("french", Build.FRENCH, Length.inches(5, 8), Length.inches(5, 8), Length.inches(3, 8)),
                new SeamKind(
                        "french, trimmed", Build.FRENCH, Length.inches(3, 4), Length.inches(3, 4), Length.inches(3, 8)),
                new SeamKind("gamchimjil", Build.WHIPPED, Length.mm(7), Length.mm(7), Length.ZERO));
    }

    public static Optional<SeamKind> named(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return table().stream().filter(kind -> kind.name.equals(plain)).findFirst();
    }

    /** What the two edges lose together. */
    public Length loss() {
        return narrow.plus(wide);
    }

    /** The allowance of an edge: wide where it wraps. */
    public Length allowance(boolean wraps) {
        return wraps ? wide : narrow;
    }

    /**
     * How far the colour line lies from the joining line, towards the wrapped half, on the face with the fell
     * (docs/sources.md#colour-line). The flap of a French seam is pressed over the wrapped half, and the wrapping
     * fabric is what shows of it.
     */
    public Length shiftOnFell() {
        return switch (build) {
            case FELLED, FRENCH -> band;
            case LAPPED -> new Length(band.nm() / 2);
            case WHIPPED -> Length.ZERO;
        };
    }

    /**
     * How far the colour line lies towards the wrapping half on the other face. Only folds that grip each other move it
     * there.
     */
    public Length shiftOnOther() {
        return build == Build.LAPPED ? new Length(band.nm() / 2) : Length.ZERO;
    }

    /** How far its thickness reaches from the joining line over the wrapped half. */
    public Length reachOverWrapped() {
        return build == Build.WHIPPED ? narrow : shiftOnFell();
    }

    /** How far its thickness reaches from the joining line over the wrapping half. */
    public Length reachOverWrapping() {
        return build == Build.WHIPPED ? wide : shiftOnOther();
    }

    /** The rows of stitches that hold it: both edges of a fell, both passes of a French seam, one whipped row. */
    public int rows() {
        return build == Build.WHIPPED ? 1 : 2;
    }
}
