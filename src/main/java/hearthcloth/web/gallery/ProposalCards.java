package hearthcloth.web.gallery;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.GoodAt;
import hearthcloth.web.cloth.ClothFigures;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.Language;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Proposals as cards: the cloth flat and tied round her gift, a name of its own, an honest reason, its figures.
 *
 * @param wished what it is for
 */
public record ProposalCards(PageContext room, Purpose wished) {

    /**
     * One proposal.
     *
     * @param tied round her gift, or the back where there is none, as SVG
     */
    public record Card(
            String name, String title, Words words, String front, String tied, boolean isTied, boolean isFirst) {

        /** The front as large as it is beside others: a third of a millimetre of the screen for one of cloth. */
        public String scaled() {
            Matcher box = BOX.matcher(front);
            return box.find()
                    ? front.replaceFirst(
                            "<svg ",
                            "<svg width=\"" + pixels(box.group(1)) + "\" height=\"" + pixels(box.group(2)) + "\" ")
                    : front;
        }

        private static String pixels(String mm) {
            return String.valueOf(Math.round(Double.parseDouble(mm) / 3));
        }
    }

    private static final int PLACES = 4;

    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

    /**
     * What is said of it.
     *
     * @param reason the first thing it is good at; {@code goodAt} all of it
     */
    public record Words(String size, String figures, String joins, String reason, String goodAt) {}

    /**
     * Whether it still goes on.
     *
     * @param share tried so far, 0 to 100
     * @param places how many cloths are shown at first
     */
    public record Going(boolean on, int share, int places) {}

    /**
     * How far the search is.
     *
     * @param found how many there are, of which the cards are the first
     * @param why what is short where nothing can be made
     */
    public record State(Going going, int found, List<Card> cards, String verdict, List<String> why) {

        public boolean running() {
            return going.on();
        }

        public int share() {
            return going.share();
        }

        /** How many pale places stand for what is still looked for. */
        public int looking() {
            return going.on() ? Math.max(0, going.places() - cards.size()) : 0;
        }

        /** The address of the same with more; empty where there are no more. */
        public String more() {
            return cards.size() < found ? "/cloth?more=" + (cards.size() / 4) : "";
        }
    }

    /**
     * What the search found, with the forms for it.
     *
     * @param again the address of the same as it is later
     */
    @PageView.Template("part/proposals.jte")
    public record View(Language language, State state, String token, String again) implements PageView {}

    private ChoosingWords words() {
        return ChoosingWords.in(room.language());
    }

    /** @param again the address at which the same is asked for later */
    View view(Optional<ProposalSearch> search, int most, Set<String> taken, String again) {
        return new View(
                room.language(),
                search.map(now -> state(now, most, taken))
                        .orElseGet(() -> new State(new Going(false, 0, 0), 0, List.of(), "", List.of())),
                room.token(),
                again);
    }

    private State state(ProposalSearch search, int most, Set<String> taken) {
        int of = Math.max(1, search.progress().of());
        Map<String, Plan> plans = search.plans();
        List<String> names = ProposalNames.of(plans, taken, room.settings().voice());
        List<Card> cards = new ArrayList<>();
        int place = 0;
        for (Map.Entry<String, Plan> one : plans.entrySet()) {
            if (cards.size() < most) {
                cards.add(card(search, one.getKey(), one.getValue(), names.get(place), place == 0));
            }
            place++;
        }
        String verdict = search.isFailed()
                ? words().foundFailed()
                : search.outcome().map(this::verdict).orElse("");
        List<String> why = search.outcome()
                .filter(outcome -> outcome instanceof PlanOutcome.CannotMake)
                .map(outcome -> said(((PlanOutcome.CannotMake) outcome).why()))
                .orElse(List.of());
        Going going = new Going(search.isRunning(), 100 * search.progress().tried() / of, Math.min(PLACES, most));
        return new State(going, plans.size(), cards, verdict, why);
    }

    private String verdict(PlanOutcome outcome) {
        if (outcome instanceof PlanOutcome.CannotMake cannot) {
            return cannot.proven() ? words().foundCannot() : words().foundNotYet();
        }
        return "";
    }

    private Card card(ProposalSearch search, String name, Plan plan, String title, boolean isFirst) {
        Map<String, Length> pictures = room.store().swatches().across();
        Swatches swatches = new Swatches(plan.fabrics(), pictures);
        Voice voice = room.settings().voice();
        Cloth cloth = plan.cloth();
        Size size = cloth.finished();
        String words = size.isSquare()
                ? words().tiesSquare(voice.write(size.width(), Rounding.NEAREST))
                : voice.write(size, Rounding.NEAREST);
        Sentence all = plan.story().goodAt();
        Sentence good = search.isReordered() ? GoodAt.uncompared(all) : all;
        String goodAt = good.in(voice);
        String tied = search.tied(name, () -> tied(plan));
        return new Card(
                name,
                title,
                new Words(words, figures(plan), joins(plan), GoodAt.reason(good).in(voice), goodAt),
                ClothDrawing.named(
                        cloth,
                        swatches,
                        words().foundFront(words, title),
                        voice.printing().labelHearth()),
                tied.isEmpty() ? ClothDrawing.still(cloth, Face.BACK, swatches, words().foundBackFace()) : tied,
                !tied.isEmpty(),
                isFirst);
    }

    private String tied(Plan plan) {
        return gift(plan).map(Thumbnail::of).orElse("");
    }

    /** The plan tied as soft cloth, as a picture of its own; empty where it is for no gift. */
    String soft(Plan plan) {
        return gift(plan).map(gift -> Thumbnail.file(gift.softly(SOFT))).orElse("");
    }

    /** Dots along a card's picture of the tied gift. */
    private static final int SOFT = 240;

    private Optional<TiedGift> gift(Plan plan) {
        Ruler ruler = room.settings().ruler();
        return wished.wrapped(ruler)
                .flatMap(wrapped -> new PlanFolder(plan, ruler, room.settings().paper(), Optional.of(wrapped)).tied());
    }

    private List<String> said(List<Sentence> sentences) {
        Voice voice = room.settings().voice();
        return sentences.stream().map(one -> one.in(voice)).toList();
    }

    private String figures(Plan plan) {
        PlanFigures figures = plan.figures();
        String patches = words().foundPatches(plan.cloth().patches().size());
        String lost = room.settings()
                .voice()
                .measuring()
                .percent(String.valueOf(figures.areas().lostPercent()));
        return plan.cloth().isFree()
                ? words().foundFiguresFree(lost, patches)
                : words().foundFigures(figures.joins(), lost, patches);
    }

    private String joins(Plan plan) {
        return plan.cloth().isFree() || plan.figures().joins() == 0
                ? ""
                : words().foundJoins(
                                ClothFigures.joins(plan.figures(), plan.bound(), DesigningWords.in(room.language())));
    }
}
