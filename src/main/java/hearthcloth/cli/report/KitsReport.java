package hearthcloth.cli.report;

import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Fairness;
import hearthcloth.plan.together.Together;
import hearthcloth.wish.ListWords;
import hearthcloth.words.speech.Voice;
import java.io.PrintStream;
import java.util.Optional;

/** Reports cloths planned together: a line for each, and how fair the division is. */
public final class KitsReport {

    private final PrintStream out;
    private final Ruler ruler;

    public KitsReport(PrintStream out, Ruler ruler) {
        this.out = out;
        this.ruler = ruler;
    }

    public void say(Together together, String folder) {
        int number = 0;
        for (Together.Part part : together.parts()) {
            String where = part.plan().isPresent() ? ", in " + folder + "/" + ++number : "";
            out.println(ListWords.line(part.asked().name() + ": "
                    + part.plan().map(this::cloth).orElse("nothing could be made") + where + "."
                    + (part.isAsWished() ? "" : " Not as it was asked for.")));
            part.shortage()
                    .ifPresent(shortage -> shortage.why().forEach(why -> out.println("   " + ListWords.line(why.in(Voice.english(ruler))))));
        }
        out.println();
        fairness(together);
        out.println("Slips, shopping list and the teacher's sheet: " + folder + "/kits.pdf");
    }

    private String cloth(Plan plan) {
        int joins = plan.figures().joins();
        String hearth = plan.cloth().isFree()
                ? ""
                : ", hearth of "
                        + plan.cloth().patches().stream()
                                .filter(patch -> patch.place().id().equals("hearth"))
                                .map(patch -> patch.fabric())
                                .findFirst()
                                .orElse("?");
        return plan.story().title().english() + ", " + ruler.write(plan.cloth().finished(), Rounding.NEAREST) + hearth + ", "
                + (joins == 0 ? "no joins" : ListWords.count(joins, "join"));
    }

    private void fairness(Together together) {
        Fairness fairness = together.measure().fairness();
        Optional<Fairness> turn = together.measure().oneAfterAnother();
        out.println("Most joins: " + fairness.worst() + "; no division of this stash has fewer than "
                + together.measure().bound() + "."
                + turn.map(KitsReport::inTurn).orElse(""));
        if (!together.leftovers().isEmpty()) {
            int handed = together.leftovers().size();
            out.println((handed == 1 ? "1 piece is" : handed + " pieces are")
                    + " left by one cloth for another; kits.pdf says who cuts first.");
        }
    }

    private static String inTurn(Fairness turn) {
        return turn.lacking() > 0
                ? " One after another, " + turn.lacking() + " would have gone without."
                : " One after another: " + turn.worst() + ".";
    }
}
