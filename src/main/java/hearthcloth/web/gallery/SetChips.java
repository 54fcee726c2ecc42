package hearthcloth.web.gallery;

import hearthcloth.cloth.Place;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.FirstUse;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.speech.Voice;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A chip for each wish that is set, in the order in which they stand.
 *
 * @param stash what is planned from
 * @param plans what was found; empty while nothing is
 */
record SetChips(WishChips.Asked asked, Stash stash, Swatches swatches, Collection<Plan> plans) {

    List<WishChips.Chip> all() {
        return Stream.of(
                        hearth().stream(),
                        shown().stream(),
                        only().stream(),
                        without(),
                        first().stream(),
                        scheme().stream(),
                        mixed().stream(),
                        contrast().stream(),
                        bars().stream(),
                        quick().stream())
                .flatMap(chips -> chips)
                .toList();
    }

    private ChoosingWords words() {
        return ChoosingWords.in(asked.voice().language());
    }

    private WishChips.Chip chip(String what, String value, String said) {
        return new WishChips.Chip(what, value, words().chipKind(what), said, "", "");
    }

    /** One for a fabric, with its swatch. */
    private WishChips.Chip fabric(String what, String name, Stash from, String note) {
        String fill = from.fabric(name).map(swatches::fill).orElse("none");
        return new WishChips.Chip(what, name, words().chipKind(what), name, fill, note);
    }

    /** Whether something like it was found, or nothing is yet. */
    private boolean isMet(Predicate<Plan> like) {
        return plans.isEmpty() || plans.stream().anyMatch(like);
    }

    private Optional<WishChips.Chip> hearth() {
        String name = asked.lean().hearth();
        return name.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        fabric("hearth", name, stash, isMet(plan -> middle(plan, name)) ? "" : words().chipNoPiece()));
    }

    private Optional<WishChips.Chip> shown() {
        String name = asked.form().show();
        return name.isEmpty()
                ? Optional.empty()
                : Optional.of(fabric("show", name, stash, asked.isTied() ? "" : words().chipNoGift()));
    }

    private Optional<WishChips.Chip> only() {
        List<String> names = asked.form().fabrics();
        return names.isEmpty() ? Optional.empty() : Optional.of(chip("only", "", String.join(", ", names)));
    }

    private Stream<WishChips.Chip> without() {
        return asked.lean().without().stream().map(name -> fabric("without", name, asked.all(), ""));
    }

    private Optional<WishChips.Chip> first() {
        return asked.first().pieces().isEmpty()
                ? Optional.empty()
                : Optional.of(chip("first", "", FirstUse.words(asked.first())));
    }

    private Optional<WishChips.Chip> scheme() {
        return asked.lean()
                .kind()
                .map(kind -> liked(
                        "scheme",
                        kind,
                        new ProposalOrder(Optional.of(kind), Set.of(), false),
                        words().chipNeeds(asked.voice().rooms().planning().schemeNeeds(kind.name()))));
    }

    private Optional<WishChips.Chip> mixed() {
        return asked.lean()
                .mixed()
                .map(kind -> liked(
                        "with",
                        kind,
                        new ProposalOrder(asked.lean().kind(), Optional.of(kind), Set.of(), false),
                        words().chipNotTogether()));
    }

    private WishChips.Chip liked(String what, Scheme.Kind kind, ProposalOrder order, String unmet) {
        return new WishChips.Chip(
                what,
                kind.name(),
                words().chipKind(what),
                asked.voice().rooms().planning().scheme(kind.name()),
                "",
                isMet(order::isLiked) ? "" : unmet);
    }

    private Optional<WishChips.Chip> contrast() {
        Contrast contrast = asked.lean().contrast();
        return contrast == Contrast.READS
                ? Optional.empty()
                : Optional.of(chip("contrast", contrast.word(), words().contrast(contrast.word())));
    }

    private Optional<WishChips.Chip> bars() {
        Leanings lean = asked.lean();
        Voice voice = asked.voice();
        return lean.bars().isEmpty()
                ? Optional.empty()
                : Optional.of(chip(
                        "bars",
                        lean.bars(),
                        words().chipBars(
                                        lean.bars(),
                                        voice.local(lean.width(voice.ruler().isMetric())) + " " + voice.unit())));
    }

    private Optional<WishChips.Chip> quick() {
        return asked.lean().isQuick()
                ? Optional.of(new WishChips.Chip("quick", "yes", "", words().chipQuick(), "", ""))
                : Optional.empty();
    }

    private static boolean middle(Plan plan, String fabric) {
        return plan.cloth().patches().stream()
                .anyMatch(patch ->
                        patch.place() instanceof Place.Hearth && patch.fabric().equals(fabric));
    }
}
