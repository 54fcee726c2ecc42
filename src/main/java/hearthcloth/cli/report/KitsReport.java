package hearthcloth.cli.report;

import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Fairness;
import hearthcloth.plan.together.Together;
import hearthcloth.wish.ListWords;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.speech.Voice;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;

/** Reports cloths planned together: a line for each, and how fair the division is. */
public final class KitsReport {

    private final PrintStream out;
    private final Voice voice;
    private final ReportingWords words;

    public KitsReport(PrintStream out, Voice voice) {
        this.out = out;
        this.voice = voice;
        this.words = voice.rooms().reporting();
    }

    public void say(Together together, String folder) {
        int number = 0;
        for (Together.Part part : together.parts()) {
            String where = part.plan().isPresent() ? folder + "/" + ++number : "";
            out.println(ListWords.line(part(part, where)));
            part.shortage()
                    .ifPresent(shortage ->
                            shortage.why().forEach(why -> out.println("   " + ListWords.line(why.in(voice)))));
        }
        out.println();
        fairness(together);
        out.println(words.kitsPrint(folder + "/kits.pdf"));
    }

    private String part(Together.Part part, String where) {
        String name = part.asked().name();
        Optional<String> cloth = part.plan().map(this::cloth);
        if (cloth.isEmpty()) {
            return words.kitsNothing(name);
        }
        return part.isAsWished()
                ? words.kitsPart(cloth.get(), where, name)
                : words.kitsPartOther(cloth.get(), where, name);
    }

    private String cloth(Plan plan) {
        int joins = plan.figures().joins();
        String title = plan.story().title().in(voice);
        String size = voice.write(plan.cloth().finished(), Rounding.NEAREST);
        return plan.cloth().patches().stream()
                .filter(patch -> !plan.cloth().isFree() && patch.place().id().equals("hearth"))
                .map(patch -> words.kitsCloth(patch.fabric(), joins, size, title))
                .findFirst()
                .orElseGet(() -> words.kitsFree(joins, size, title));
    }

    private void fairness(Together together) {
        Fairness fairness = together.measure().fairness();
        String most = words.kitsMost(Integer.toString(together.measure().bound()), Integer.toString(fairness.worst()));
        String turn = together.measure().oneAfterAnother().map(this::inTurn).orElse("");
        out.println(voice.sentences(List.of(most, turn)));
        if (!together.leftovers().isEmpty()) {
            out.println(words.kitsHanded(together.leftovers().size()));
        }
    }

    private String inTurn(Fairness turn) {
        return turn.lacking() > 0
                ? words.kitsWithout(Integer.toString(turn.lacking()))
                : words.kitsInTurn(Integer.toString(turn.worst()));
    }
}
