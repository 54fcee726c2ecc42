package hearthcloth.cli.io;

import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.together.TogetherProgress;
import hearthcloth.wish.ListWords;

/** One line on the terminal that shows how far planning has come; silent when nobody watches. */
public final class ProgressLine {

    private static final int WIDTH = 70;

    private final Shell shell;
    private String best = "";

    public ProgressLine(Shell shell) {
        this.shell = shell;
    }

    public void show(PlanProgress progress) {
        progress.best()
                .ifPresent(plan ->
                        best = ", best with " + ListWords.count(plan.figures().joins(), "join"));
        say("planning: " + progress.tried() + " of " + progress.of() + " layouts tried, " + progress.found()
                + " can be made" + best);
    }

    /** Says how far planning together has come. */
    public void together(TogetherProgress progress) {
        int made = progress.asked() - progress.best().lacking();
        say("planning together: " + progress.tried() + " of " + progress.of() + " divisions tried, " + made + " of "
                + ListWords.count(progress.asked(), "cloth") + " made, most joins "
                + progress.best().worst());
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
