package hearthcloth.web.gallery;

import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.palette.SuitedSchemes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.FirstUse;
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
        List<Chip> chips = new ArrayList<>();
        ChoosingWords words = ChoosingWords.in(asked.voice.language());
        Leanings lean = asked.lean;
        if (!lean.hearth().isEmpty()) {
            boolean isMet = plans.isEmpty() || plans.stream().anyMatch(plan -> middle(plan, lean.hearth()));
            chips.add(new Chip(
                    "hearth",
                    lean.hearth(),
                    words.chipKind("hearth"),
                    lean.hearth(),
                    fill(stash, swatches, lean.hearth()),
                    isMet ? "" : words.chipNoPiece()));
        }
        if (!asked.form.show().isEmpty()) {
            String show = asked.form.show();
            chips.add(new Chip(
                    "show",
                    show,
                    words.chipKind("show"),
                    show,
                    fill(stash, swatches, show),
                    asked.isTied ? "" : words.chipNoGift()));
        }
        if (!asked.form.fabrics().isEmpty()) {
            chips.add(new Chip("only", "", words.chipKind("only"), String.join(", ", asked.form.fabrics()), "", ""));
        }
        lean.without()
                .forEach(name -> chips.add(new Chip(
                        "without", name, words.chipKind("without"), name, fill(asked.all, swatches, name), "")));
        if (!asked.first.pieces().isEmpty()) {
            chips.add(new Chip("first", "", words.chipKind("first"), FirstUse.words(asked.first), "", ""));
        }
        lean.kind().ifPresent(kind -> {
            ProposalOrder order = new ProposalOrder(Optional.of(kind), java.util.Set.of(), false);
            boolean isMet = plans.isEmpty() || plans.stream().anyMatch(order::isLiked);
            chips.add(new Chip(
                    "scheme",
                    kind.name(),
                    words.chipKind("scheme"),
                    asked.voice.rooms().planning().scheme(kind.name()),
                    "",
                    isMet ? "" : words.chipNeeds(asked.voice.rooms().planning().schemeNeeds(kind.name()))));
        });
        lean.mixed().ifPresent(kind -> {
            ProposalOrder order = new ProposalOrder(lean.kind(), Optional.of(kind), java.util.Set.of(), false);
            boolean isMet = plans.isEmpty() || plans.stream().anyMatch(order::isLiked);
            chips.add(new Chip(
                    "with",
                    kind.name(),
                    words.chipKind("with"),
                    asked.voice.rooms().planning().scheme(kind.name()),
                    "",
                    isMet ? "" : words.chipNotTogether()));
        });
        if (lean.contrast() != Contrast.READS) {
            chips.add(new Chip(
                    "contrast",
                    lean.contrast().word(),
                    words.chipKind("contrast"),
                    words.contrast(lean.contrast().word()),
                    "",
                    ""));
        }
        if (!lean.bars().isEmpty()) {
            Voice voice = asked.voice;
            String cut = voice.local(lean.width(voice.ruler().isMetric())) + " " + voice.unit();
            chips.add(new Chip("bars", lean.bars(), words.chipKind("bars"), words.chipBars(lean.bars(), cut), "", ""));
        }
        if (lean.isQuick()) {
            chips.add(new Chip("quick", "yes", "", words.chipQuick(), "", ""));
        }
        List<Cloth> fabrics = stash.fabrics().stream()
                .map(fabric -> new Cloth(fabric.name(), swatches.fill(fabric)))
                .toList();
        return new WishChips(chips, fabrics, looks(asked, stash), asked.waiting);
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

    private static boolean middle(Plan plan, String fabric) {
        return plan.cloth().patches().stream()
                .anyMatch(patch -> patch.place() instanceof hearthcloth.cloth.Place.Hearth
                        && patch.fabric().equals(fabric));
    }

    private static String fill(Stash stash, Swatches swatches, String name) {
        return stash.fabric(name).map(swatches::fill).orElse("none");
    }
}
