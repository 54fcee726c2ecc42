package hearthcloth.wrap.tying;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What can be seen of a cloth once it is tied, patch by patch and fabric by fabric. Free ends and knots show in part
 * and from changing sides, so they are named but not counted as seen.
 *
 * @param patches in the cloth's own order
 */
public record WhatShows(Gift gift, List<Seen> patches) {

    /** Smaller shares than this are not mentioned. */
    private static final double WORTH = 0.05;

    /** A smaller share of what is seen than this rounds to zero. */
    private static final double LEAST = 0.005;

    /** The five directions from which one sees a standing gift. */
    private static final List<Visible.View> AROUND =
            List.of(Visible.View.ABOVE, Visible.View.FRONT, Visible.View.RIGHT, Visible.View.BACK, Visible.View.LEFT);

    /** The least area, in square millimetres, that counts as seen from a side: a square centimetre. */
    private static final double SEEN = 100;

    /**
     * A patch, or all of one fabric, and where its cloth lies.
     *
     * @param from the directions from which a square centimetre or more of it faces the eye
     */
    public record Seen(String name, String fabric, Visible.Shares shares, List<Visible.View> from) {

        public Seen {
            from = List.copyOf(from);
        }

        private Seen with(Seen other) {
            Visible.Shares a = shares;
            Visible.Shares b = other.shares;
            return new Seen(
                    name,
                    fabric,
                    new Visible.Shares(
                            a.underneath() + b.underneath(),
                            a.sides() + b.sides(),
                            a.top() + b.top(),
                            a.loose() + b.loose(),
                            a.hidden() + b.hidden()),
                    AROUND.stream()
                            .filter(view -> from.contains(view) || other.from.contains(view))
                            .toList());
        }

        private double share(double area) {
            return shares.total() == 0 ? 0 : area / shares.total();
        }
    }

    public WhatShows {
        patches = List.copyOf(patches);
    }

    /** What shows of a tied cloth. */
    public static WhatShows of(Cloth cloth, Visible visible) {
        List<Seen> seen = new ArrayList<>();
        for (Laid laid : cloth.laid()) {
            boolean hearth = laid.patch().place() instanceof Place.Hearth;
            String name = hearth ? "hearth" : laid.patch().place().label();
            List<Visible.View> from = AROUND.stream()
                    .filter(view -> visible.from(view, laid.at()) >= SEEN)
                    .toList();
            seen.add(new Seen(name, laid.patch().fabric(), visible.shares(laid.at()), from));
        }
        return new WhatShows(visible.fold().fit().gift(), seen);
    }

    /** The same summed over each fabric, most seen first. */
    public List<Seen> fabrics() {
        Map<String, Seen> sums = new LinkedHashMap<>();
        for (Seen patch : patches) {
            sums.merge(patch.fabric, new Seen(patch.fabric, patch.fabric, patch.shares, patch.from), Seen::with);
        }
        return sums.values().stream()
                .sorted((a, b) -> Double.compare(score(b.fabric), score(a.fabric)))
                .toList();
    }

    /** The share, from 0 to 1, of what is seen on sides and top that is of this fabric; plans can be compared by it. */
    public double score(String fabric) {
        double all = 0;
        double own = 0;
        for (Seen patch : patches) {
            double seen = patch.shares.sides() + patch.shares.top();
            all += seen;
            own += patch.fabric.equals(fabric) ? seen : 0;
        }
        return all == 0 ? 0 : own / all;
    }

    /** The area seen on sides and top, in square millimetres. */
    public double seenMm2() {
        return patches.stream()
                .mapToDouble(patch -> patch.shares.sides() + patch.shares.top())
                .reduce(0, Double::sum);
    }

    /** {@link #score} alone, without the other figures. */
    public static double score(Cloth cloth, Visible visible, String fabric) {
        double all = 0;
        double own = 0;
        for (Laid laid : cloth.laid()) {
            double seen = visible.seen(laid.at());
            all += seen;
            own += laid.patch().fabric().equals(fabric) ? seen : 0;
        }
        return all == 0 ? 0 : own / all;
    }

    /** A sentence on the hearth where there is one, then one for each fabric. */
    public List<String> sentences(Voice voice) {
        List<String> sentences = new ArrayList<>();
        patches.stream()
                .filter(patch -> patch.name.equals("hearth"))
                .forEach(hearth -> sentences.add(hearth(hearth, voice)));
        for (Seen fabric : fabrics()) {
            sentences.add(fabric(fabric, voice));
        }
        return sentences;
    }

    /** A fabric that is neither on the sides nor on top may still hang out of the knot, where it can be seen well. */
    private String fabric(Seen fabric, Voice voice) {
        TyingWords words = voice.tying();
        double share = score(fabric.fabric);
        if (share >= LEAST) {
            return words.showsFabric(fabric.name, percent(share, voice), where(fabric));
        }
        return fabric.share(fabric.shares.loose()) >= WORTH
                ? words.showsFabricInKnot(fabric.name)
                : words.showsFabricNot(fabric.name);
    }

    private String hearth(Seen hearth, Voice voice) {
        TyingWords words = voice.tying();
        Visible.Shares shares = hearth.shares;
        if (shares.seen() >= WORTH) {
            double under = hearth.share(shares.underneath());
            String seen = percent(shares.seen(), voice);
            return under >= WORTH
                    ? words.showsHearthAndUnder(seen, thing(), percent(under, voice), where(hearth))
                    : words.showsHearth(seen, where(hearth));
        }
        if (shares.underneath() >= Math.max(shares.loose(), shares.hidden())) {
            return words.showsHearthUnder(thing());
        }
        return shares.loose() >= shares.hidden() ? words.showsHearthInKnot() : words.showsHearthInside();
    }

    private static String where(Seen patch) {
        Visible.Shares shares = patch.shares;
        double seen = shares.sides() + shares.top();
        if (seen <= 0) {
            return "nowhere";
        }
        if (shares.sides() / seen < WORTH) {
            return "top";
        }
        return shares.top() / seen < WORTH ? "sides" : "both";
    }

    private static String percent(double share, Voice voice) {
        return voice.measuring().percent(Long.toString(Math.round(share * 100)));
    }

    private String thing() {
        if (gift instanceof Gift.Box) {
            return "box";
        }
        if (gift instanceof Gift.Books) {
            return "books";
        }
        if (gift instanceof Gift.Roll) {
            return "roll";
        }
        if (gift instanceof Gift.Round) {
            return "ball";
        }
        return gift instanceof Gift.TwoBottles ? "bottles" : "bottle";
    }
}
