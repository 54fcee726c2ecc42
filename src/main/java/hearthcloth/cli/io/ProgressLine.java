package hearthcloth.cli.io;

import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.together.TogetherProgress;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.speech.Voice;
import java.util.OptionalInt;

/** One line on the terminal that shows how far planning has come; silent when nobody watches. */
public final class ProgressLine {

    private static final int WIDTH = 70;

    private final Shell shell;
    private final Voice voice;
    private OptionalInt best = OptionalInt.empty();

    public ProgressLine(Shell shell, Voice voice) {
        this.shell = shell;
        this.voice = voice;
    }

    private ReportingWords words() {
        return voice.rooms().reporting();
    }

    public void show(PlanProgress progress) {
        progress.best().ifPresent(plan -> best = OptionalInt.of(plan.figures().joins()));
        String tried = words().progressLayouts(
                        String.valueOf(progress.found()),
                        String.valueOf(progress.of()),
                        String.valueOf(progress.tried()));
        say(best.isPresent() ? words().progressBest(best.getAsInt(), tried) : tried);
    }

    /** Says how far planning together has come. */
    public void together(TogetherProgress progress) {
        int made = progress.asked() - progress.best().lacking();
        say(words().progressTogether(
                        progress.asked(),
                        String.valueOf(made),
                        String.valueOf(progress.best().worst()),
                        String.valueOf(progress.of()),
                        String.valueOf(progress.tried())));
    }

    public void say(String words) {
        if (shell.isWatched()) {
            shell.err().print("\r" + words + " ".repeat(Math.max(0, WIDTH - words.length())));
            shell.err().flush();
        }
    }

    public void clear() {
        if (shell.isWatched()) {
            shell.err().print("\r" + " ".repeat(WIDTH) + "\r");
            shell.err().flush();
        }
    }
}
