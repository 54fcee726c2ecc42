package hearthcloth.cli.option;

import hearthcloth.wish.OptionText;
import hearthcloth.wish.PlanBudget;
import picocli.CommandLine.Option;

/** How long a search may last. */
public final class TimeOption {

    @Option(names = "--budget", paramLabel = "TIME")
    private String budget;

    /** @param usual where nothing is said */
    public TimeOption(String usual) {
        this.budget = usual;
    }

    /** The time; what cannot be used of it is kept in {@code text}. */
    public PlanBudget read(OptionText text) {
        return text.read("--budget", budget, new PlanBudget(0), PlanBudget::parse);
    }
}
