package hearthcloth.web.gift;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.stash.Stash;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.PublishedRule;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The ties that suit her gift, each drawn from her sizes, one of them chosen.
 *
 * @param gift as it is written; empty until every measure is there
 * @param rule the published rule of thumb beside ours, in a sentence
 * @param trouble with what she typed; empty where there is none
 */
public record GiftTies(String gift, List<Card> cards, Optional<Chosen> chosen, String rule, String trouble) {

    /**
     * One tie.
     *
     * @param size of the square it takes; empty until every measure is there
     * @param note in two words what it is good for
     * @param cannot why her stash cannot make that cloth; empty where it may
     * @param picture tied, as SVG
     */
    public record Card(
            String name, String size, String note, String cannot, String picture, String href, boolean isChosen) {}

    /**
     * The chosen one.
     *
     * @param tie by which an address knows it
     * @param told the square it takes and its name
     * @param range with short and with long ends; empty for a tie without a knot
     * @param laid how the gift lies on the cloth, as SVG
     * @param how the page that shows it step by step
     */
    public record Chosen(String tie, String told, String range, String laid, String how) {}

    static GiftTies of(GiftPage.Asked asked, Settings settings, Stash heap, TiePictures pictures) {
        String usual = asked.shape()
                .text(asked.shape().usual().stream().map(one -> one + " in").toList())
                .orElseThrow();
        Gift common = Gift.parse(usual, settings.bare());
        Optional<String> text = asked.shape().text(asked.measures());
        try {
            Optional<Gift> gift = text.map(written -> Gift.parse(written, settings.bare()));
            Drawer drawer = new Drawer(asked, gift, gift.orElse(common), settings.voice(), heap, pictures);
            return new GiftTies(
                    text.orElse(""),
                    drawer.cards(),
                    gift.map(one -> drawer.chosen(one, text.orElse(""))),
                    gift.map(drawer::rule).orElse(""),
                    "");
        } catch (MeasureException e) {
            Drawer drawer = new Drawer(asked, Optional.empty(), common, settings.voice(), heap, pictures);
            return new GiftTies(
                    "", drawer.cards(), Optional.empty(), "", Refusal.of(e).in(settings.voice()));
        }
    }

    /**
     * Draws them.
     *
     * @param gift hers; empty until every measure is there
     * @param shown the one that is drawn
     */
    private record Drawer(
            GiftPage.Asked asked, Optional<Gift> gift, Gift shown, Voice voice, Stash heap, TiePictures pictures) {

        private ChoosingWords words() {
            return ChoosingWords.in(voice.language());
        }

        private String name(Tie tie) {
            return voice.tying().tieName(tie.name());
        }

        private Tail tail() {
            return Purpose.tail(voice.ruler());
        }

        private Tie tie() {
            List<Tie> suiting = Tie.suiting(shown);
            return Tie.named(asked.tie()).filter(suiting::contains).orElse(suiting.get(0));
        }

        List<Card> cards() {
            List<Card> cards = new ArrayList<>();
            for (Tie tie : Tie.suiting(shown)) {
                Optional<Length> side = gift.map(one -> tie.smallestSquare(one, tail().usual()));
                cards.add(new Card(
                        upper(name(tie)),
                        side.map(one -> voice.write(one, Rounding.UP)).orElse(""),
                        words().tiesNote(tie.name()),
                        side.map(this::cannot).orElse(""),
                        pictures.of(tie, shown, tail().usual()).tied(),
                        asked.with(tie.words()),
                        tie == tie()));
            }
            theirs(cards).ifPresent(cards::add);
            return cards;
        }

        /** For whoever leaves it to the workroom: of the ties that can be made, the one that shows most cloth. */
        private Optional<Card> theirs(List<Card> cards) {
            List<Tie> suiting = Tie.suiting(shown);
            List<Integer> can = IntStream.range(0, cards.size())
                    .filter(i -> cards.get(i).cannot().isEmpty())
                    .boxed()
                    .toList();
            return can.size() < 2
                    ? Optional.empty()
                    : can.stream()
                            .max(Comparator.comparingDouble(i -> seen(suiting.get(i))))
                            .map(cards::get)
                            .map(most -> new Card(
                                    words().tiesTheirs(),
                                    most.size(),
                                    words().tiesTheirsNote(),
                                    "",
                                    most.picture(),
                                    most.href(),
                                    false));
        }

        private double seen(Tie tie) {
            return pictures.of(tie, shown, tail().usual()).seenMm2();
        }

        /** A square larger than all her pieces together cannot be made of them, whatever is sewn. */
        private String cannot(Length side) {
            double most = Math.sqrt(heap.areaMm2());
            if (heap.pieces().isEmpty() || side.in(hearthcloth.measure.Unit.MILLIMETRE) <= most) {
                return "";
            }
            return words().tiesCannot(voice.write(Length.mm((long) most), Rounding.DOWN));
        }

        Chosen chosen(Gift own, String written) {
            Tie tie = tie();
            TiePictures.Seen seen = pictures.of(tie, own, tail().usual());
            String range = tie.isKnotted()
                    ? words().tiesRange(
                                    voice.number(tie.smallestSquare(own, tail().least()), Rounding.UP),
                                    voice.number(tie.smallestSquare(own, tail().most()), Rounding.UP))
                    : "";
            return new Chosen(
                    tie.words(),
                    words().tiesFinished(voice.write(tie.smallestSquare(own, tail().usual()), Rounding.UP), name(tie)),
                    range,
                    seen.laid(),
                    "/tie/" + tie.words().replace(' ', '-') + "?gift="
                            + URLEncoder.encode(written, StandardCharsets.UTF_8));
        }

        String rule(Gift own) {
            return PublishedRule.of(own).sentence(own, tie(), tail().usual(), voice);
        }

        private static String upper(String words) {
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
    }
}
