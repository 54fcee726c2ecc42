package hearthcloth.cli.report;

import hearthcloth.cloth.Cloth;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.TiedColours;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.stash.Stash;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.words.reporting.ReportingWords;
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
    private final Voice voice;
    private final ReportingWords words;

    public PlanReport(PrintStream out, Voice voice) {
        this.out = out;
        this.voice = voice;
        this.words = voice.rooms().reporting();
    }

    public void stash(Stash stash) {
        out.println(words.planStash(
                large(stash.areaMm2()), stash.fabrics().size(), stash.pieces().size()));
    }

    public void gift(GiftWish gift, Slack slack) {
        out.println(voice.sentences(List.of(words.planGift(gift.sentence(voice)), slack.sentence(voice))));
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
        wish.wrapped(voice.ruler()).fold(cloth).map(Visible::of).ifPresent(visible -> {
            List<String> said = new ArrayList<>(WhatShows.of(cloth, visible).sentences(voice));
            String colours = cloth.isFree()
                    ? ""
                    : TiedColours.sentence(cloth, plan.fabrics(), visible).in(voice);
            if (!plan.story().goodAt().in(voice).contains(colours)) {
                said.add(colours);
            }
            line(words.planTied(voice.sentences(said)));
        });
    }

    private void proposal(Plan plan, int number, String folder) {
        PlanFigures figures = plan.figures();
        out.println(number + "  "
                + words.planHead(
                        folder + "/" + number,
                        finished(plan),
                        plan.story().title().in(voice)));
        line(plan.story().goodAt().in(voice));
        line(voice.sentences(List.of(seams(plan, figures), cuts(plan, figures))));
        if (!plan.story().chosen().isEmpty()) {
            line(words.planChosen(Sentence.row(plan.story().chosen()).in(voice)));
        }
        plan.story().cautions().forEach(caution -> line(words.care(caution.in(voice))));
    }

    /** How often is cut, what is lost, and where the stash proves it what every plan loses. */
    private String cuts(Plan plan, PlanFigures figures) {
        String cuts = Integer.toString(figures.cuts());
        String lost = voice.area(figures.areas().lost(), Rounding.NEAREST);
        String percent = voice.measuring().percent(Long.toString(figures.areas().lostPercent()));
        String touched = voice.area(figures.areas().touched(), Rounding.NEAREST);
        String least = voice.area(plan.bound().touchedMm2(), Rounding.DOWN);
        String leastLost = voice.area(plan.bound().lostMm2(), Rounding.DOWN);
        if (plan.cloth().isFree()) {
            return words.planCuts(cuts, lost, percent, touched);
        }
        return leastLost.equals(voice.area(0, Rounding.DOWN))
                ? words.planCutsBound(cuts, least, lost, percent, touched)
                : words.planCutsBounds(cuts, least, leastLost, lost, percent, touched);
    }

    private String seams(Plan plan, PlanFigures figures) {
        if (plan.cloth().isFree()) {
            return words.planPatches(
                    Integer.toString(plan.cloth().patches().size()),
                    Integer.toString(plan.cloth().steps().size()));
        }
        int above = figures.joins() - plan.bound().joins();
        String joins = Integer.toString(figures.joins());
        return above <= 0 ? words.planJoinsFewest(joins) : words.planJoinsAbove(Integer.toString(above), joins);
    }

    private String finished(Plan plan) {
        return size(plan.cloth().finished());
    }

    private String size(Size size) {
        return size.isSquare()
                ? words.square(voice.write(size.width(), Rounding.NEAREST))
                : voice.write(size, Rounding.NEAREST);
    }

    /** Reports why nothing can be made, and the nearest cloth that can, which is drawn in the folder. */
    public void shortage(PlanOutcome.CannotMake cannot, String folder) {
        out.println(cannot.proven() ? words.planImpossible() : words.planNotFound());
        cannot.why().forEach(why -> line(why.in(voice)));
        cannot.nearest().stream().findFirst().ifPresent(plan -> nearest(plan, folder));
    }

    private void nearest(Plan plan, String folder) {
        String title = plan.story().title().in(voice);
        String nearest = plan.cloth().isFree()
                ? words.planNearest(finished(plan), title)
                : words.planNearestJoins(plan.figures().joins(), finished(plan), title);
        line(voice.sentences(
                List.of(nearest, Sentence.row(plan.story().chosen()).in(voice))));
        line(words.planReady(fabrics(plan), folder + "/1"));
        line(words.planMore(asked(plan)));
    }

    private static String fabrics(Plan plan) {
        return String.join(
                ", ", plan.fabrics().stream().map(fabric -> fabric.name()).toList());
    }

    private String asked(Plan plan) {
        Size size = plan.cloth().finished();
        String unit = voice.ruler().isMetric() ? " cm" : " in";
        String width = voice.ruler().number(size.width(), Rounding.NEAREST);
        return size.isSquare()
                ? width + unit
                : width + " x " + voice.ruler().number(size.height(), Rounding.NEAREST) + unit;
    }

    private void line(String sentence) {
        if (!sentence.isBlank()) {
            out.println("   " + ListWords.line(sentence));
        }
    }

    private String large(double mm2) {
        boolean metric = voice.ruler().isMetric();
        String number = String.format(Locale.ROOT, "%.2f", mm2 / (metric ? MM2_PER_M2 : MM2_PER_SQUARE_YARD));
        return words.areaLarge(voice.local(number), metric ? "metric" : "inches");
    }
}
