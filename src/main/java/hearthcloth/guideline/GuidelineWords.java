package hearthcloth.guideline;

import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;

/** A guideline in plain words, a sentence for each rule. */
public final class GuidelineWords {

    private GuidelineWords() {}

    /** Every rule; what is open is said too, since that is where a reader's heap speaks. */
    public static List<Sentence> of(Guideline guideline) {
        Guideline.ShapeRule shape = guideline.shape();
        PiecingRules joins = guideline.sewing().joins();
        return List.of(
                RulingSentences.size(guideline.size().said()),
                RulingSentences.hearth(shape.hearth().said()),
                RulingSentences.bars(shape.bars().said()),
                RulingSentences.rounds(shape.rounds().said()),
                shape.order().map(order -> RulingSentences.order(order.name())).orElseGet(RulingSentences::orderOpen),
                RulingSentences.colours(guideline.colours().said()),
                RulingSentences.middle(guideline.colours().middle().name()),
                RulingSentences.joins(Argument.of(joins.leastPiece(), Rounding.UP), joins.mostJoins()),
                sewn(guideline.sewing().making()));
    }

    private static Sentence sewn(Making making) {
        SeamKind seam = making.seam();
        Hem hem = making.hem();
        return RulingSentences.sewn(
                hem.corner().name(),
                near(hem.first()),
                near(seam.narrow()),
                RulingSentences.seam(Argument.text(seam.name()), seam.name().replaceAll("\\W+", "_")),
                near(hem.second()),
                near(seam.wide()));
    }

    private static Argument near(Length length) {
        return Argument.of(length, Rounding.NEAREST);
    }
}
