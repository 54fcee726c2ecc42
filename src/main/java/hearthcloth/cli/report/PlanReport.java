package hearthcloth.cli.report;

import hearthcloth.cloth.Cloth;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.TiedColours;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.stash.Stash;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Slack;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tying.WhatShows;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reports the result of planning: a short paragraph for each proposal, or why there is none and what would help. */
public final class PlanReport {

    private static final double MM2_PER_M2 = 1_000_000;
    private static final double MM2_PER_SQUARE_YARD = 914.4 * 914.4;

    private final PrintStream out;
    private final Ruler ruler;
    private final Voice voice;

    public PlanReport(PrintStream out, Ruler ruler) {
        this.out = out;
        this.ruler = ruler;
        this.voice = Voice.english(ruler);
    }

    public void stash(Stash stash) {
        out.println("Stash: " + ListWords.count(stash.pieces().size(), "piece") + " of "
                + ListWords.count(stash.fabrics().size(), "fabric") + ", " + large(stash.areaMm2()) + ".");
    }

    public void gift(GiftWish gift, Slack slack) {
        String larger = slack.sentence(ruler);
        out.println("Gift: " + gift.sentence(ruler) + "." + (larger.isEmpty() ? "" : " " + larger));
    }

    public void proposals(PlanOutcome.Proposals proposals, String folder, Optional<GiftWish> gift) {
        List<Plan> plans = proposals.plans();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            out.println();
            proposal(plan, i + 1, folder);
            gift.ifPresent(wish -> tied(plan, wish));
        }
    }

    /**
     * Reports what can be seen of the cloth once it is tied; nothing where it does not tie the gift, which was reported
     * before.
     */
    private void tied(Plan plan, GiftWish wish) {
        Cloth cloth = plan.cloth();
        wish.wrapped(ruler).fold(cloth).map(Visible::of).ifPresent(visible -> {
            List<String> said = new ArrayList<>(WhatShows.of(cloth, visible).sentences(voice));
            String colours = cloth.isFree()
                    ? ""
                    : TiedColours.sentence(cloth, plan.fabrics(), visible).in(voice);
            if (!plan.story().goodAt().in(voice).contains(colours)) {
                said.add(colours);
            }
            line("Tied: " + String.join(" ", said).strip());
        });
    }

    /** A sentence on what every plan loses, where the stash proves that some loss cannot be avoided. */
    private String leastLost(Plan plan) {
        String lost = ruler.area(plan.bound().lostMm2(), Rounding.DOWN);
        return lost.equals(ruler.area(0, Rounding.DOWN)) ? "" : " or loses less than " + lost;
    }

    private void proposal(Plan plan, int number, String folder) {
        PlanFigures figures = plan.figures();
        out.println(number + "  " + plan.story().title().in(voice) + ", " + finished(plan) + ", in " + folder + "/" + number);
        line(plan.story().goodAt().in(voice));
        line(seams(plan, figures) + " Cuts: " + figures.cuts() + ". Lost: "
                + ruler.area(figures.areas().lost(), Rounding.NEAREST)
                + " (" + figures.areas().lostPercent() + " % of the "
                + ruler.area(figures.areas().touched(), Rounding.NEAREST)
                + " cut into" + leastTouched(plan) + ").");
        if (!plan.story().chosen().isEmpty()) {
            line("Chosen for you: " + Sentence.row(plan.story().chosen()).in(voice));
        }
        plan.story().cautions().forEach(caution -> line("Take care: " + caution.in(voice)));
    }

    private String leastTouched(Plan plan) {
        return plan.cloth().isFree()
                ? ""
                : "; no plan for it cuts into less than "
                        + ruler.area(plan.bound().touchedMm2(), Rounding.DOWN) + leastLost(plan);
    }

    private static String seams(Plan plan, PlanFigures figures) {
        return plan.cloth().isFree()
                ? "Patches: " + plan.cloth().patches().size() + ". Seams: "
                        + plan.cloth().steps().size() + "."
                : "Joins: " + joins(plan, figures);
    }

    private static String joins(Plan plan, PlanFigures figures) {
        int above = figures.joins() - plan.bound().joins();
        return figures.joins()
                + (above <= 0 ? ", the fewest possible." : ", at most " + above + " above the fewest possible.");
    }

    private String finished(Plan plan) {
        return size(plan.cloth().finished());
    }

    private String size(Size size) {
        return size.isSquare()
                ? ruler.write(size.width(), Rounding.NEAREST) + " square"
                : ruler.write(size, Rounding.NEAREST);
    }

    /** Reports why nothing can be made, and the nearest cloth that can, which is drawn in the folder. */
    public void shortage(PlanOutcome.CannotMake cannot, String folder) {
        out.println(
                cannot.proven()
                        ? "This cloth cannot be made from this stash."
                        : "No way was found to make this cloth from this stash.");
        cannot.why().forEach(why -> line(why.in(voice)));
        cannot.nearest().stream().findFirst().ifPresent(plan -> nearest(plan, folder));
    }

    private void nearest(Plan plan, String folder) {
        int joins = plan.figures().joins();
        line("The nearest that can be made is " + finished(plan) + ": "
                + plan.story().title().in(voice)
                + (plan.cloth().isFree()
                        ? ". "
                        : ", " + (joins == 0 ? "no joins" : ListWords.count(joins, "join")) + ". ")
                + Sentence.row(plan.story().chosen()).in(voice));
        line("It is in " + folder + "/1, ready to cut and sew by: in " + fabrics(plan) + ".");
        line("For more like it, ask with --size \"" + asked(plan) + "\", leaving the rest to the stash.");
    }

    private static String fabrics(Plan plan) {
        return String.join(
                ", ", plan.fabrics().stream().map(fabric -> fabric.name()).toList());
    }

    private String asked(Plan plan) {
        Size size = plan.cloth().finished();
        String unit = ruler.isMetric() ? " cm" : " in";
        String width = ruler.number(size.width(), Rounding.NEAREST);
        return size.isSquare() ? width + unit : width + " x " + ruler.number(size.height(), Rounding.NEAREST) + unit;
    }

    private void line(String sentence) {
        if (!sentence.isBlank()) {
            out.println("   " + ListWords.line(sentence));
        }
    }

    private String large(double mm2) {
        return ruler.isMetric()
                ? String.format(Locale.ROOT, "%.2f m²", mm2 / MM2_PER_M2)
                : String.format(Locale.ROOT, "%.2f sq yd", mm2 / MM2_PER_SQUARE_YARD);
    }
}
