package hearthcloth.cli.report;

import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.stash.Stash;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What {@code plan --json} prints: which cloths were planned into which folders, or why none could be. Lengths are whole
 * nanometres; everything about one cloth stands in the plan.json of its folder.
 *
 * @param outcome planned, impossible (a bound proves it) or none-found
 * @param gift in words; left out where there is none
 */
public record PlanJson(
        String format,
        int version,
        String units,
        String outcome,
        StashAtHand stash,
        @Nullable String gift,
        List<Proposal> proposals,
        List<String> why,
        List<Proposal> nearest) {

    /** The stash as it was read. */
    record StashAtHand(int pieces, int fabrics, double areaMm2) {}

    /** The finished cloth. */
    record Extent(long width, long height) {
        static Extent of(Size size) {
            return new Extent(size.width().nm(), size.height().nm());
        }
    }

    /**
     * One cloth.
     *
     * @param folder where it is drawn
     * @param fewestJoins no plan has fewer
     * @param leastTouchedMm2 no plan cuts into less
     */
    record Proposal(
            String folder,
            String title,
            Extent finished,
            int joins,
            int fewestJoins,
            int cuts,
            double lostMm2,
            double touchedMm2,
            double leastTouchedMm2,
            List<String> chosen,
            List<String> cautions) {}

    public static PlanJson planned(Stash stash, Optional<GiftWish> gift, Voice voice, List<Plan> plans, String folder) {
        return made("planned", heap(stash), words(gift, voice), proposals(plans, voice, folder), List.of(), List.of());
    }

    private static List<Proposal> proposals(List<Plan> plans, Voice voice, String folder) {
        return IntStream.range(0, plans.size())
                .mapToObj(i -> proposal(plans.get(i), voice, folder + "/" + (i + 1)))
                .toList();
    }

    public static PlanJson shortage(
            Stash stash, Optional<GiftWish> gift, Voice voice, PlanOutcome.CannotMake cannot, String folder) {
        return made(
                cannot.proven() ? "impossible" : "none-found",
                heap(stash),
                words(gift, voice),
                List.of(),
                said(cannot.why(), voice),
                proposals(cannot.nearest(), voice, folder));
    }

    private static PlanJson made(
            String outcome,
            StashAtHand stash,
            @Nullable String gift,
            List<Proposal> proposals,
            List<String> why,
            List<Proposal> nearest) {
        return new PlanJson("hearthcloth-plans", 1, "nm", outcome, stash, gift, proposals, why, nearest);
    }

    private static StashAtHand heap(Stash stash) {
        return new StashAtHand(stash.pieces().size(), stash.fabrics().size(), stash.areaMm2());
    }

    private static @Nullable String words(Optional<GiftWish> gift, Voice voice) {
        return gift.map(wish -> wish.sentence(voice)).orElse(null);
    }

    private static Proposal proposal(Plan plan, Voice voice, String folder) {
        var figures = plan.figures();
        return new Proposal(
                folder,
                plan.story().title().in(voice),
                Extent.of(plan.cloth().finished()),
                figures.joins(),
                plan.bound().joins(),
                figures.cuts(),
                figures.areas().lost(),
                figures.areas().touched(),
                plan.bound().touchedMm2(),
                said(plan.story().chosen(), voice),
                said(plan.story().cautions(), voice));
    }

    private static List<String> said(List<Sentence> sentences, Voice voice) {
        return sentences.stream().map(one -> one.in(voice)).toList();
    }
}
