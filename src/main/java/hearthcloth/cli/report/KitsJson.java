package hearthcloth.cli.report;

import hearthcloth.measure.Length;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Fairness;
import hearthcloth.plan.together.Leftover;
import hearthcloth.plan.together.Purchase;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * {@code kits.json}: who has what of one heap. Lengths are whole nanometres; everything about one cloth stands in the
 * plan.json of its folder. Described by docs/kits.schema.json.
 *
 * @param outcome planned, or some-lack
 * @param oneAfterAnother what planning in turn would have given; left out where the time ended before
 * @param worstJoinsAtLeast however the heap is divided, the worst cloth has at least so many joins
 * @param cuttingOrder numbers of cloths in an order in which whoever leaves something cuts before whoever takes it
 */
public record KitsJson(
        String format,
        int version,
        String units,
        String outcome,
        Heaped stash,
        Sharing fairness,
        @Nullable Sharing oneAfterAnother,
        int worstJoinsAtLeast,
        List<Entry> cloths,
        List<Integer> cuttingOrder,
        List<Handed> leftovers,
        List<ToBuy> shopping) {

    /** The stash as it was read. */
    record Heaped(int pieces, int fabrics, double areaMm2) {}

    /**
     * How fair it is; less is better.
     *
     * @param darkSpread how much more of the darkest cloth is dark than of the lightest, from 0 to 1
     */
    record Sharing(int lacking, int worstJoins, int joins, int likeHearths, double darkSpread, int leftoversHandedOn) {
        static Sharing of(Fairness fairness) {
            return new Sharing(
                    fairness.lacking(),
                    fairness.worst(),
                    fairness.joins(),
                    fairness.alike(),
                    Math.round(1000 * fairness.shades().spread()) / 1000.0,
                    fairness.shades().waits());
        }
    }

    /**
     * One cloth.
     *
     * @param number from 1, in the order of the list
     * @param folder where it is drawn; left out where nothing could be made
     * @param why what it lacks, in sentences; empty where it is as it was asked for
     */
    record Entry(
            int number,
            String name,
            String asked,
            boolean asWished,
            @Nullable String folder,
            @Nullable Made made,
            List<String> why) {}

    /**
     * What was planned.
     *
     * @param pieces what it is cut from: pieces of the stash, or leftovers
     */
    record Made(String title, long width, long height, int joins, List<String> pieces, List<String> fabrics) {
        static Made of(Plan plan) {
            return new Made(
                    plan.story().title().english(),
                    plan.cloth().finished().width().nm(),
                    plan.cloth().finished().height().nm(),
                    plan.figures().joins(),
                    plan.cuts().stream().map(cut -> cut.piece().id()).toList(),
                    plan.fabrics().stream().map(fabric -> fabric.name()).toList());
        }
    }

    /** What one cloth leaves of a piece and another takes; the place is on that piece, from its top left. */
    record Handed(String id, String of, int leftBy, long x, long y, long width, long length) {
        static Handed of(Leftover left) {
            return new Handed(
                    left.part().id(),
                    left.of().id(),
                    left.by() + 1,
                    left.at().x().nm(),
                    left.at().y().nm(),
                    nm(left.at().width()),
                    nm(left.at().height()));
        }

        private static long nm(Length length) {
            return length.nm();
        }
    }

    /** Fabric that makes a cloth that lacks something, by how it is sold. */
    record ToBuy(int cloth, String goods, int count, long width, long length) {
        static ToBuy of(Purchase purchase) {
            return new ToBuy(
                    purchase.cloth() + 1,
                    purchase.goods().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    purchase.count(),
                    purchase.size().width().nm(),
                    purchase.size().height().nm());
        }
    }

    /**
     * The file.
     *
     * @param asked for each cloth, what was asked for in a few words
     */
    public static KitsJson of(Stash stash, Together together, List<String> asked) {
        return new KitsJson(
                "hearthcloth-kits",
                1,
                "nm",
                together.isComplete() ? "planned" : "some-lack",
                new Heaped(stash.pieces().size(), stash.fabrics().size(), stash.areaMm2()),
                Sharing.of(together.measure().fairness()),
                together.measure().oneAfterAnother().map(Sharing::of).orElse(null),
                together.measure().bound(),
                entries(together, asked),
                together.order().stream().map(cloth -> cloth + 1).toList(),
                together.leftovers().stream().map(Handed::of).toList(),
                together.shopping().stream().map(ToBuy::of).toList());
    }

    private static List<Entry> entries(Together together, List<String> asked) {
        List<Entry> entries = new ArrayList<>();
        int folder = 0;
        for (int i = 0; i < together.parts().size(); i++) {
            Together.Part part = together.parts().get(i);
            String drawn = part.plan().isPresent() ? Integer.toString(++folder) : null;
            entries.add(new Entry(
                    i + 1,
                    part.asked().name(),
                    asked.get(i),
                    part.isAsWished(),
                    drawn,
                    part.plan().map(Made::of).orElse(null),
                    part.shortage()
                            .map(shortage -> shortage.why().stream()
                                    .map(Sentence::english)
                                    .toList())
                            .orElse(List.of())));
        }
        return entries;
    }
}
