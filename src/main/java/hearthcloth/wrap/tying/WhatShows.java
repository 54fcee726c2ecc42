package hearthcloth.wrap.tying;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What can be seen of a cloth once it is tied, patch by patch and fabric by fabric. Free ends and knots show in part
 * and from changing sides, so they are named but not counted as seen. Where a tie leaves spare corners, shares are told
 * from one end of what hands do with them to the other: tucked in, as the fold has them, and outside, as they fall.
 *
 * @param patches with the spare corners tucked in, in the cloth's own order
 * @param falling the same with them outside; the same as {@code patches} where there are none
 */
public record WhatShows(Gift gift, List<Seen> patches, List<Seen> falling) {

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

        private double seenMm2() {
            return shares.sides() + shares.top();
        }

        private double share(double area) {
            return shares.total() == 0 ? 0 : area / shares.total();
        }
    }

    public WhatShows {
        patches = List.copyOf(patches);
        falling = List.copyOf(falling);
    }

    /** What shows of a tied cloth, of which this can be seen with its spare corners tucked in. */
    public static WhatShows of(Cloth cloth, Visible visible) {
        List<Seen> patches = patches(cloth, visible);
        return new WhatShows(
                visible.fold().fit().gift(),
                patches,
                TiedFold.asItFalls(visible.fold())
                        .map(fold -> patches(cloth, Visible.of(fold)))
                        .orElse(patches));
    }

    private static List<Seen> patches(Cloth cloth, Visible visible) {
        List<Seen> seen = new ArrayList<>();
        for (Laid laid : cloth.laid()) {
            boolean hearth = laid.patch().place() instanceof Place.Hearth;
            String name = hearth ? "hearth" : laid.patch().place().label();
            List<Visible.View> from = AROUND.stream()
                    .filter(view -> visible.from(view, laid.at()) >= SEEN)
                    .toList();
            seen.add(new Seen(name, laid.patch().fabric(), visible.shares(laid.at()), from));
        }
        return List.copyOf(seen);
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

    /** The share, from 0 to 1, of what is seen on sides and top that is of this fabric, the spare corners tucked in. */
    public double score(String fabric) {
        return share(patches, patch -> patch.fabric.equals(fabric));
    }

    /** Between what that share lies, however the spare corners do. */
    public Between between(String fabric) {
        return Between.of(score(fabric), share(falling, patch -> patch.fabric.equals(fabric)));
    }

    /** The same of one patch. */
    public Between betweenOfPatch(String name) {
        return Between.of(
                share(patches, patch -> patch.name.equals(name)), share(falling, patch -> patch.name.equals(name)));
    }

    private static double share(List<Seen> patches, Predicate<Seen> which) {
        double all = 0;
        double own = 0;
        for (Seen patch : patches) {
            double seen = patch.seenMm2();
            all += seen;
            own += which.test(patch) ? seen : 0;
        }
        return all == 0 ? 0 : own / all;
    }

    /** The area seen on sides and top, in square millimetres. */
    public double seenMm2() {
        return patches.stream().mapToDouble(Seen::seenMm2).reduce(0, Double::sum);
    }

    /** A sentence on the hearth where there is one, then one for each fabric, then why some have two figures. */
    public List<String> sentences(Voice voice) {
        List<String> sentences = new ArrayList<>();
        hearth(patches).ifPresent(hearth -> sentences.add(hearth(hearth, voice)));
        List<Seen> fabrics = fabrics();
        fabrics.forEach(fabric -> sentences.add(fabric(fabric, voice)));
        if (!fabrics.stream().allMatch(fabric -> between(fabric.fabric).isOne())) {
            sentences.add(voice.tying().showsSpare());
        }
        return sentences;
    }

    private static Optional<Seen> hearth(List<Seen> patches) {
        return patches.stream().filter(patch -> patch.name.equals("hearth")).findFirst();
    }

    /** A fabric that is neither on the sides nor on top may still hang out of the knot, where it can be seen well. */
    private String fabric(Seen fabric, Voice voice) {
        TyingWords words = voice.tying();
        Between share = between(fabric.fabric);
        if (share.most() >= LEAST) {
            return words.showsFabric(fabric.name, share.percent(voice), where(outside(fabric)));
        }
        return fabric.share(fabric.shares.loose()) >= WORTH
                ? words.showsFabricInKnot(fabric.name)
                : words.showsFabricNot(fabric.name);
    }

    /** The fabric with all that may show of it, however the corners lie. */
    private Seen outside(Seen fabric) {
        return falling.stream()
                .filter(patch -> patch.fabric.equals(fabric.fabric))
                .reduce(fabric, Seen::with);
    }

    private String hearth(Seen hearth, Voice voice) {
        TyingWords words = voice.tying();
        Visible.Shares shares = hearth.shares;
        Between seen = Between.of(
                shares.seen(), hearth(falling).map(other -> other.shares.seen()).orElse(0.0));
        if (seen.most() >= WORTH) {
            double under = hearth.share(shares.underneath());
            return under >= WORTH
                    ? words.showsHearthAndUnder(seen.percent(voice), thing(), percent(under, voice), where(hearth))
                    : words.showsHearth(seen.percent(voice), where(hearth));
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
