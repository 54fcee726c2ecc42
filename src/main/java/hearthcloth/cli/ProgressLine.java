package hearthcloth.cli;

import hearthcloth.plan.model.PlanProgress;
import hearthcloth.words.ListWords;

/** One line on the terminal that shows how far planning has come; silent when nobody watches. */
final class ProgressLine {

    private static final int WIDTH = 70;

    private final Shell shell;
    private String best = "";

    ProgressLine(Shell shell) {
        this.shell = shell;
    }

    void show(PlanProgress progress) {
        progress.best()
                .ifPresent(plan ->
                        best = ", best with " + ListWords.count(plan.figures().joins(), "join"));
        say("planning: " + progress.tried() + " of " + progress.of() + " layouts tried, " + progress.found()
                + " can be made" + best);
    }

    void say(String words) {
        if (shell.isWatched()) {
            shell.err().print("\r" + words + " ".repeat(Math.max(0, WIDTH - words.length())));
            shell.err().flush();
        }
    }

    void clear() {
        if (shell.isWatched()) {
            shell.err().print("\r" + " ".repeat(WIDTH) + "\r");
            shell.err().flush();
        }
    }
}
