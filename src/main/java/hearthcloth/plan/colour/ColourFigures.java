package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the eye makes of a cloth, in figures: how much of the hearth's edge stands out, how much fabric meets itself,
 * which bars are of several fabrics, and how far light and dark are out of balance. Read off one fold over the assembly tree
 * ({@link EdgeMap}), for each face. The thresholds are ours: docs/sources.md#colour-figures.
 *
 * @param mixedBars bars of more than one fabric
 * @param offCentre how far the lightness lies from the middle, as a share of the cloth's longer side
 */
public record ColourFigures(Hearth hearth, Neighbours neighbours, int mixedBars, double offCentre) {

    private static final ColourParameters.Faults FAULTS =
            ColourParameters.standard().faults();

    /**
     * The hearth's edge towards the bars, in millimetres.
     *
     * @param standsOutMm how much of it stands out
     * @param ownMm how much of it meets the hearth's own fabric
     * @param unlikeMm each millimetre counted by how unlike both sides look, up to 1
     */
    public record Hearth(double edgeMm, double standsOutMm, double ownMm, double unlikeMm) {

        /** The share that stands out, from 0 to 1; 1 where no bar meets it. */
        public double standsOut() {
            return edgeMm == 0 ? 1 : standsOutMm / edgeMm;
        }
    }

    /**
     * The edges that bars share with each other, in millimetres.
     *
     * @param sameMm how much of them has the same fabric on both sides
     * @param alikeMm how much lies between other fabrics that look nearly alike, each millimetre counted by how nearly
     * @param unlikeMm each millimetre counted by how unlike both sides look, up to 1
     */
    public record Neighbours(double edgeMm, double sameMm, double alikeMm, double unlikeMm) {

        /** The share at which a fabric meets itself, from 0 to 1. */
        public double same() {
            return edgeMm == 0 ? 0 : sameMm / edgeMm;
        }
    }

    /** The figures of a cloth made of these fabrics. */
    public static ColourFigures of(Cloth cloth, List<Fabric> fabrics) {
        FabricDifferences differences = new FabricDifferences(fabrics);
        return EdgeMap.of(cloth, differences).figures(differences);
    }

    /** The figures of its back; empty where it has the colours of the front, since the cloth is one layer. */
    static Optional<ColourFigures> ofBack(Cloth cloth, List<Fabric> fabrics) {
        FabricDifferences differences = new FabricDifferences(fabrics);
        return differences.isTwoFaced()
                ? Optional.of(EdgeMap.of(cloth, differences).figures(differences.back()))
                : Optional.empty();
    }

    /** Whether a hearth of one fabric stands out from a bar of the other. */
    public static boolean standsOut(Fabric one, Fabric other) {
        return FabricDifferences.standsOut(one, other);
    }

    static Tile tile(int bar, int fabric, Rect at) {
        return new Tile(
                bar,
                fabric,
                at.x().in(Unit.MILLIMETRE),
                at.y().in(Unit.MILLIMETRE),
                at.right().in(Unit.MILLIMETRE),
                at.bottom().in(Unit.MILLIMETRE));
    }

    /** How much is amiss where the log cabin is to read. */
    public double amissMm() {
        return amissMm(Contrast.READS);
    }

    /**
     * How much is amiss, in millimetres of edge: each edge as {@link EdgeCost} counts it, bars of several fabrics and
     * lightness out of balance as {@link ColourParameters.Faults} has them.
     */
    public double amissMm(Contrast wanted) {
        return EdgeCost.of(wanted).of(this) + FAULTS.mixed() * mixedBars + unbalancedMm(offCentre);
    }

    /** How much is amiss about the hearth and in bars of several fabrics alone, in millimetres of edge. */
    public double hearthAmissMm(Contrast wanted) {
        Neighbours none = new Neighbours(0, 0, 0, 0);
        return new ColourFigures(hearth, none, mixedBars, 0).amissMm(wanted);
    }

    /** What a lightness so far off the middle, as a share of the side, counts like. */
    static double unbalancedMm(double offCentre) {
        return FAULTS.unbalanced() * Math.max(0, offCentre - FAULTS.balanced());
    }

    /** The figures in a sentence for the maker, only what is worth telling; nothing where nothing is. */
    public Sentence sentence() {
        List<Sentence> said = parts();
        return said.isEmpty()
                ? Sentence.none()
                : PlanningSentences.colour(Argument.capital(Argument.row(Joined.SEMICOLONS, said)));
    }

    /** What is worth telling, each by itself. */
    List<Sentence> parts() {
        List<Sentence> said = new ArrayList<>();
        hearthWords().ifPresent(said::add);
        long same = Math.round(100 * neighbours.same());
        if (neighbours.edgeMm > 0) {
            said.add(
                    same == 0
                            ? PlanningSentences.colourApart()
                            : same == 100
                                    ? PlanningSentences.colourField()
                                    : PlanningSentences.colourSame(Argument.percent(same)));
        }
        if (mixedBars > 0) {
            said.add(PlanningSentences.colourMixed(mixedBars));
        }
        return said;
    }

    private Optional<Sentence> hearthWords() {
        if (hearth.edgeMm == 0) {
            return Optional.empty();
        }
        long share = (long) Math.floor(100 * hearth.standsOut() + 1e-9);
        if (share == 100) {
            return Optional.of(PlanningSentences.colourHearthAll());
        }
        return Optional.of(
                share == 0
                        ? PlanningSentences.colourHearthNone()
                        : PlanningSentences.colourHearthSome(Argument.percent(share)));
    }
}
