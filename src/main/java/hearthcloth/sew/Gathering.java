package hearthcloth.sew;

import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sewing.SewingWords;
import java.util.ArrayList;
import java.util.List;

/**
 * What to have ready before cutting. Cloths that shrink by different amounts pucker each other, so all are washed or
 * none (docs/sources.md#mixed-washing); cotton shrinks by 2 to 5 %, most of it in the first wash
 * (docs/sources.md#shrinkage).
 */
final class Gathering {

    /**
     * How much more unwashed cotton shrinks than washed, in thousandths: 3 % against ½ %
     * (docs/sources.md#shrink-difference).
     */
    private static final long SHRINKS_PER_THOUSAND = 25;

    /**
     * A relative luminance (0 to 1) below which a dye counts as deep; above {@link #PALE} another cloth shows every
     * stain (docs/sources.md#deep-dye).
     */
    private static final double DEEP = 0.08;

    private static final double PALE = 0.35;

    private Gathering() {}

    static Gather of(Plan plan, MakerWords words) {
        return new Gather(fabrics(plan, words), tools(plan, words.said()), washing(plan, words), before(words));
    }

    private static List<Gather.FabricNeed> fabrics(Plan plan, MakerWords words) {
        List<Gather.FabricNeed> needs = new ArrayList<>();
        for (Fabric fabric : plan.fabrics()) {
            List<String> pieces = plan.cuts().stream()
                    .filter(cut -> cut.piece().fabric().name().equals(fabric.name()))
                    .map(cut -> need(cut, words))
                    .toList();
            needs.add(new Gather.FabricNeed(fabric.name(), pieces));
        }
        return needs;
    }

    private static String need(PieceCut cut, MakerWords words) {
        String id = cut.piece().id();
        String size = words.had(cut.piece().size());
        return cut.past() ? words.said().needPieceDone(id, size) : words.said().needPiece(id, size);
    }

    /** The tools. Needle sizes, and when needles break: docs/sources.md#needles. */
    private static List<String> tools(Plan plan, SewingWords said) {
        boolean byHand = plan.cloth().making().seam().build() == SeamKind.Build.WHIPPED;
        boolean thick = Layers.most(plan.cloth()) >= 10;
        return List.of(
                said.toolCutter(),
                said.toolIron(),
                byHand ? said.toolHand() : said.toolMachine(thick ? "90/14" : "80/12"),
                said.toolThread(),
                said.toolPins(),
                said.toolSlips());
    }

    private static List<String> washing(Plan plan, MakerWords words) {
        SewingWords said = words.said();
        List<String> yes = pieces(plan, Piece.Washed.YES, said);
        List<String> no = pieces(plan, Piece.Washed.NO, said);
        List<String> unknown = pieces(plan, Piece.Washed.UNKNOWN, said);
        List<String> lines = new ArrayList<>();
        if (!yes.isEmpty() && !no.isEmpty()) {
            boolean fewWashed = yes.size() < no.size();
            String few = words.voice().list(fewWashed ? yes : no);
            lines.add(said.washMixed(few, fewWashed ? "washed" : "unwashed"));
            lines.add(said.washMixedThen(words.near(difference(plan))));
        } else if (!no.isEmpty()) {
            lines.add(unknown.isEmpty() ? said.washNone() : said.washNoneSaid());
        }
        if (!unknown.isEmpty()) {
            boolean some = !no.isEmpty() || !yes.isEmpty();
            lines.add(some ? said.washSomeUnknown(unknown.size(), words.voice().list(unknown)) : said.washUnknown());
        }
        if (no.isEmpty() && unknown.isEmpty()) {
            lines.add(said.washAll());
        }
        dye(plan, words, lines);
        return lines;
    }

    /**
     * How much an unwashed piece shrinks beyond a washed one over the cloth's longer side: 8.5 mm over 340 mm
     * (docs/sources.md#shrink-difference).
     */
    static Length difference(Plan plan) {
        Size size = plan.cloth().finished();
        return size.width().max(size.height()).times(SHRINKS_PER_THOUSAND).dividedBy(1_000, Rounding.UP);
    }

    /** A warning where deep and pale fabrics meet, with the soak test: docs/sources.md#soak-test. */
    private static void dye(Plan plan, MakerWords words, List<String> lines) {
        List<String> deep = new ArrayList<>();
        boolean pale = false;
        for (Fabric fabric : plan.fabrics()) {
            double luminance = fabric.colour().luminance();
            if (luminance < DEEP) {
                deep.add(fabric.name());
            }
            pale |= luminance > PALE;
        }
        if (!deep.isEmpty() && pale) {
            lines.add(words.said().washDye(words.voice().list(deep)));
        }
    }

    private static List<String> pieces(Plan plan, Piece.Washed washed, SewingWords said) {
        return plan.cuts().stream()
                .map(PieceCut::piece)
                .filter(piece -> piece.washed() == washed)
                .map(piece -> said.namePiece(piece.id()))
                .toList();
    }

    private static List<String> before(MakerWords words) {
        SewingWords said = words.said();
        return List.of(
                said.beforePress(),
                said.beforeGrain(),
                said.beforeStraight(),
                said.beforeMeasure(words.exact(words.ruler().step().times(2))),
                said.beforePin());
    }
}
