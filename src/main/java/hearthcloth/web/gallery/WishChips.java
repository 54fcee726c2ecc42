package hearthcloth.web.gallery;

import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.palette.SuitedSchemes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What she wishes as chips, and what else she may wish.
 *
 * @param chips those that are set
 * @param fabrics to choose from
 * @param looks the plans of colour to choose from, those the heap is good for first
 * @param waiting what earlier wishes were for, which are asked about; empty where none are
 */
public record WishChips(List<Chip> chips, List<Cloth> fabrics, List<Look> looks, Optional<String> waiting) {

    /**
     * One wish.
     *
     * @param what and {@code value} by which it is taken back
     * @param fill of its swatch; empty for none
     * @param note why it is not met; empty where it is
     */
    public record Chip(String what, String value, String kind, String words, String fill, String note) {}

    /** A fabric to choose. */
    public record Cloth(String name, String fill) {}

    /**
     * A plan of colour to choose.
     *
     * @param idea what it looks like, in a few words
     * @param why the heap is good for it; empty where it is not
     */
    public record Look(Scheme.Kind kind, String words, String idea, String why) {}

    /** Up to three plans of colour that the heap is good for, each for another reason, where none is wished yet. */
    public List<Look> best() {
        Map<String, Look> best = new LinkedHashMap<>();
        if (chips.stream().noneMatch(chip -> chip.what().equals("scheme"))) {
            looks.stream().filter(look -> !look.why.isEmpty()).forEach(look -> best.putIfAbsent(look.why, look));
        }
        return best.values().stream().limit(3).toList();
    }

    /**
     * Of what is wished now.
     *
     * @param stash what is planned from
     * @param plans what was found; empty while nothing is
     */
    static WishChips of(Asked asked, Stash stash, Swatches swatches, Collection<Plan> plans) {
        List<Cloth> fabrics = stash.fabrics().stream()
                .map(fabric -> new Cloth(fabric.name(), swatches.fill(fabric)))
                .toList();
        return new WishChips(
                new SetChips(asked, stash, swatches, plans).all(), fabrics, looks(asked, stash), asked.waiting);
    }

    private static List<Look> looks(Asked asked, Stash stash) {
        ChoosingWords words = ChoosingWords.in(asked.voice.language());
        PlanningWords planning = asked.voice.rooms().planning();
        Map<Scheme.Kind, String> why = new LinkedHashMap<>();
        SuitedSchemes.of(stash, asked.lean.contrast())
                .forEach(one -> why.put(
                        one.kind(),
                        words.wishGoodWhy(
                                one.fabric().map(Fabric::name).orElse(""),
                                one.kind().name())));
        Scheme.WISHED.forEach(kind -> why.putIfAbsent(kind, ""));
        List<Look> looks = new ArrayList<>();
        why.forEach((kind, good) ->
                looks.add(new Look(kind, planning.scheme(kind.name()), planning.schemeIdea(kind.name()), good)));
        return looks;
    }

    /**
     * All that is wished.
     *
     * @param all every piece there is, also those of fabrics that are left out
     */
    record Asked(
            Leanings lean,
            WishForm form,
            Stash first,
            Stash all,
            Voice voice,
            boolean isTied,
            Optional<String> waiting) {}
}
