package hearthcloth.guideline;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import java.util.List;

/** A guideline in plain words, a sentence for each rule. */
public final class GuidelineWords {

    private GuidelineWords() {}

    /** Every rule; what is open is said too, since that is where a reader's heap speaks. */
    public static List<String> of(Guideline guideline) {
        Ruler ruler = guideline.told().ruler();
        Guideline.ShapeRule shape = guideline.shape();
        return List.of(
                "The cloth is " + guideline.size().words(ruler) + ".",
                "The hearth, the piece in the middle, is " + shape.hearth().words(ruler) + ".",
                "The bars round it are " + shape.bars().words(ruler) + ".",
                "There are " + shape.rounds().words() + ".",
                shape.order().map(GuidelineWords::laid).orElse("The order of the bars is as your heap gives it."),
                "Colours: " + guideline.colours().words() + ".",
                "In the middle lies " + guideline.colours().middle().words() + ".",
                joins(guideline.sewing().joins(), ruler),
                sewn(guideline.sewing().making(), ruler));
    }

    private static String laid(Order order) {
        return switch (order) {
            case ROUND -> "Each bar is laid to the next side, round and round.";
            case PAIRS -> "Bars are laid in opposite pairs.";
            case TWO_SIDES -> "Bars are laid to two sides only, so that the hearth stays in a corner.";
        };
    }

    private static String joins(PiecingRules rules, Ruler ruler) {
        if (rules.mostJoins() == 0) {
            return "Each bar is one piece; none is joined.";
        }
        return "A bar may be joined from pieces, with at most " + rules.mostJoins()
                + (rules.mostJoins() == 1 ? " join" : " joins") + ", none finishing under "
                + ruler.write(rules.leastPiece(), Rounding.UP) + ".";
    }

    private static String sewn(Making making, Ruler ruler) {
        SeamKind seam = making.seam();
        Hem hem = making.hem();
        return "Seams: " + seam.name() + ", " + ruler.number(seam.narrow(), Rounding.NEAREST) + " + "
                + ruler.write(seam.wide(), Rounding.NEAREST) + ". Hem: "
                + ruler.number(hem.first(), Rounding.NEAREST) + " + "
                + ruler.write(hem.second(), Rounding.NEAREST) + ", "
                + (hem.corner() == Hem.Corner.MITRED ? "mitred" : "square") + " corners.";
    }
}
