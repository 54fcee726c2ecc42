package hearthcloth.cli.report;

import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** Says what of a guideline a heap could not keep, and what the nearest cloths bend. */
public final class GuidelineReport {

    private final Shell shell;
    private final Guideline guideline;
    private final Voice voice;

    public GuidelineReport(Shell shell, Guideline guideline, Voice voice) {
        this.shell = shell;
        this.guideline = guideline;
        this.voice = voice;
    }

    /** The nearest cloths that are in the folder, each with what it bends. */
    public void bent(Fitted fitted, String folder) {
        if (fitted.cloths().isEmpty()) {
            say("No cloth can be made from this stash.");
        } else {
            say("No cloth that keeps every rule of \"" + guideline.told().name() + "\" was found in this stash.");
        }
        fitted.why().forEach(why -> say("   " + why.in(voice)));
        List<Fitted.Nearest> cloths = fitted.cloths();
        for (int i = 0; i < cloths.size(); i++) {
            nearest(cloths.get(i), i + 1, folder);
        }
    }

    private void nearest(Fitted.Nearest cloth, int number, String folder) {
        Plan plan = cloth.plan();
        say(number + "  " + plan.story().title().in(voice) + ", "
                + guideline.told().ruler().write(plan.cloth().finished(), Rounding.NEAREST) + ", in " + folder + "/"
                + number + ", ready to cut and sew by.");
        bends(cloth).forEach(bend -> say("   Bent: " + bend));
    }

    private List<String> bends(Fitted.Nearest cloth) {
        if (cloth.isScraps()) {
            return List.of("These pieces give no hearth with bars round it; the scraps are laid together as they are.");
        }
        return cloth.bends().isEmpty()
                ? List.of("nothing; it keeps every rule.")
                : cloth.bends().stream().map(bend -> bend.what().in(voice)).toList();
    }

    /** The same for programs: what is short and what the first cloth bends. */
    public PlanOutcome.CannotMake outcome(Fitted fitted) {
        List<Sentence> why = new ArrayList<>(fitted.why());
        fitted.cloths().stream()
                .findFirst()
                .ifPresent(cloth -> bends(cloth).forEach(bend -> why.add(Sentence.itself(bend))));
        return new PlanOutcome.CannotMake(
                false, why, fitted.cloths().stream().map(Fitted.Nearest::plan).toList());
    }

    private void say(String sentence) {
        shell.err().println(ListWords.line(sentence));
    }
}
