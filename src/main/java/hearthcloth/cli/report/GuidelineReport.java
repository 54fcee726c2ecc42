package hearthcloth.cli.report;

import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.wish.ListWords;
import hearthcloth.words.reporting.ReportingWords;
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

    private ReportingWords words() {
        return voice.rooms().reporting();
    }

    /** The nearest cloths that are in the folder, each with what it bends. */
    public void bent(Fitted fitted, String folder) {
        if (fitted.cloths().isEmpty()) {
            say(words().guidelineNone());
        } else {
            say(words().guidelineNoneKept(guideline.told().name()));
        }
        fitted.why().forEach(why -> say("   " + why.in(voice)));
        List<Fitted.Nearest> cloths = fitted.cloths();
        for (int i = 0; i < cloths.size(); i++) {
            nearest(cloths.get(i), i + 1, folder);
        }
    }

    private void nearest(Fitted.Nearest cloth, int number, String folder) {
        Plan plan = cloth.plan();
        say(words().guidelineNearest(
                        folder + "/" + number,
                        String.valueOf(number),
                        guideline.told().ruler().write(plan.cloth().finished(), Rounding.NEAREST),
                        plan.story().title().in(voice)));
        bends(cloth).forEach(bend -> say("   " + words().guidelineBent(bend)));
    }

    private List<String> bends(Fitted.Nearest cloth) {
        if (cloth.isScraps()) {
            return List.of(words().guidelineScraps());
        }
        return cloth.bends().isEmpty()
                ? List.of(words().guidelineKeeps())
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
