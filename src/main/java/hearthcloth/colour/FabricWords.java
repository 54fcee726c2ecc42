package hearthcloth.colour;

import static java.util.Map.entry;

import hearthcloth.colour.tongue.ClothWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Reads everyday words for the colour of cloth. Particular words and their colours ("sage", "navy") are ours:
 * docs/sources.md#cloth-words; the light, dark, pale and bright forms of plain words are published:
 * docs/sources.md#iscc-nbs.
 *
 * <p>Grammar: the longest run of words that is a colour ("duck egg", "pale yellowish green") counts as one; "light",
 * "dark" and words like them change the colour that follows where no list has the two together; a particular colour
 * beside the plain one it belongs to ("sage green", "charcoal grey") is that particular colour; a word for undyed cloth
 * ("linen") gives way to any colour beside it.
 */
final class FabricWords {

    private static final Map<String, Colour> PLAIN = CssNames.read("""
            black 1c1b1d white fafaf7 grey 8a8b8c gray 8a8b8c red c4262e orange e8792b yellow f2cf3b
            green 3f8f4f blue 2b69b0 purple 6f4391 pink eea5b6 brown 70492f
            reddish c4262e yellowish f2cf3b greenish 3f8f4f bluish 2b69b0 purplish 6f4391 greyish 8a8b8c
            brownish 70492f pinkish eea5b6
            """);

    private static final Map<String, Colour> PARTICULAR = CssNames.read("""
            brightblue 4997d0 paleblue a6bccf palegreen a3bfae palepurple bba8bb paleviolet aaa2c4
            amber d98e1f amethyst 8e6bb0 anthracite 34373b apple 8db84a apricot f3b27a aqua 5cc3c0
            aubergine 43263f beige d9c9a9 biscuit d8b98b bluedenim 4a6488 bone e6dcc8 bottle 1f4a38
            bottlegreen 1f4a38 brick a0472f burgundy 6b1c2f burntorange c0561f buttermilk f6ebc0 butter f3dc8c
            calico e9dfc8 camel bd9460 caramel b0743a celadon a9c7ac cerise c42a63 charcoal 414346
            cherry a51c30 chestnut 6e3b2a chocolate 4b3022 cinnamon a5632f claret 701d33 cobalt 23489c
            cocoa 6b4a3a coffee 54382a copper ad663a coral ee7b66 cornflower 6e8fd0 cranberry 8f2238
            cream f4ead0 crimson b01b35 damson 4b2a45 denim 4a6488
            duckegg b7d3cf duckeggblue b7d3cf ecru e0d3b8 eggplant 43263f
            eggshell f0e8d6 emerald 1d8a5b fawn c9a983 fern 5b8c4a flax d6c08e forest 24523a forestgreen 24523a
            fuchsia c9328f ginger b8672f gold c99b2e golden c99b2e greige bdb3a3
            heather a08aa8 indigo 2b3a67 ivory f6f0dd jade 3f9b78 khaki a39a6b kingfisher 0f7c92
            lavender b5a4d3 lemon f6e36b lichen a9b095 lilac c3a8d1 lime a6cc3a linen d8ccb2 loden 4b5a46
            madder a33b2c weld d9bf3c woad 5b7a99
            magenta b8297f mahogany 5a2a22 marine 1f3f6b maroon 6a2030 mauve a98aa6 midnight 1b2440
            mink 8f7b6e mint b4dcc4 mocha 80604a moss 6b7a3e mulberry 6e2a4e mustard c9992b natural e3d8c2
            navy 1f2d50 nude e3c1aa oat ddd0b7 oatmeal d8cbb4 ochre c28a35 oxblood 5b1a22 offwhite f3efe4 olive 6d6b35
            oyster ded6c8 peach f5c0a0 peacock 0f6672 pearl ece6dc peppermint a5d8c4 petrol 17505e
            pistachio b3c98a plum 5f2f52 poppy d63a2a porcelain eef0ee pumpkin d5722a
            putty c6bba5 raspberry b02a56 rose d68a98 royalblue 2a4ba0 ruby 96203c russet 8c4a2b
            rust a84f2a saffron e2a32e sage a3b08e salmon ee9580 sand d6c19a sapphire 1f4690 scarlet cb2a27
            seafoam a9d8c4 sepia 6a4a33 shell f2dccf silver b9bcbf sky 8fc1e3 slate 5d6b78 smoke 9a9c9e
            snow f7f8f9 steel 7b8894 stone bdb4a3 straw e2cf8f tan c49e72 taupe 8c7c6d teal 1b7072
            terracotta bb6446 toffee a06a3c turquoise 35b3b5 unbleached e6dac0 vanilla f3e7c4 violet 6d55a3
            walnut 5d4534 wheat e3cb98 wine 6a1f36 wisteria a892cb
            """);

    /** Words that name a cloth as well as its colour; beside another colour they are only the cloth. */
    private static final Set<String> CLOTHS =
            Set.of("linen", "denim", "calico", "flax", "unbleached", "natural", "bluedenim");

    /** What makers say, and what the published list calls it (ours): tried in this order. */
    private static final Map<String, List<String>> TONES = Map.ofEntries(
            entry("bright", List.of("vivid", "brilliant", "strong")),
            entry("pale", List.of("pale", "verypale", "light")),
            entry("pastel", List.of("verypale", "pale", "verylight", "light")),
            entry("light", List.of("light", "pale")),
            entry("dark", List.of("dark", "verydark", "deep")),
            entry("deep", List.of("deep", "dark")),
            entry("medium", List.of("moderate", "strong")),
            entry("mid", List.of("moderate", "strong")),
            entry("strong", List.of("strong", "vivid")),
            entry("vivid", List.of("vivid", "brilliant", "strong")),
            entry("brilliant", List.of("brilliant", "vivid")),
            entry("moderate", List.of("moderate", "strong")),
            entry("dull", List.of("greyish", "moderate")));

    private static final Map<String, UnaryOperator<Colour>> CHANGES = Map.ofEntries(
            entry("light", towards(100, 0.30)),
            entry("pale", towards(100, 0.45)),
            entry("pastel", towards(100, 0.45)),
            entry("dark", towards(0, 0.40)),
            entry("deep", towards(0, 0.30)),
            entry("dusty", FabricWords::dulled),
            entry("dusky", FabricWords::dulled),
            entry("muted", FabricWords::dulled),
            entry("soft", FabricWords::dulled),
            entry("faded", FabricWords::dulled));

    /** The tones that a name such as "reddish orange" has where none is said, the usual one first (ours). */
    private static final List<String> UNTONED = List.of("moderate", "strong", "light");

    /** The most words of one colour's name. */
    private static final int MOST_WORDS = 4;
    /** Hues no farther apart than this are of one family, so that "sage green" is one colour (ours). */
    private static final double SAME_FAMILY_DEGREES = 80;
    /** Colours with a smaller chroma belong to the family of greys (ours). */
    private static final double NEARLY_GREY = 25;

    /** One colour read, from word {@code from} up to word {@code to}; plain if it is a basic word, unchanged. */
    private record Found(Lab lab, boolean plain, boolean cloth, int from, int to) {

        boolean belongsTo(Found other) {
            boolean touches = other.to == from || other.from == to;
            return plain && !other.plain && !other.cloth && touches && sameFamily(lab, other.lab);
        }
    }

    private FabricWords() {}

    /** All colours that the words name, in any of six languages, each once, in their order. */
    static List<Colour> colours(String text) {
        String[] words = ClothWords.english(text)
                .toLowerCase(Locale.ROOT)
                .replace('é', 'e')
                .replaceAll("\\bgray", "grey")
                .split("[^\\p{L}]+", -1);
        List<Found> all = found(words);
        boolean dyed = all.stream().anyMatch(one -> !one.cloth());
        return all.stream()
                .filter(one -> !dyed || !one.cloth())
                .filter(one -> all.stream().noneMatch(one::belongsTo))
                .map(one -> one.lab().toColour())
                .distinct()
                .toList();
    }

    private static List<Found> found(String[] words) {
        List<Found> found = new ArrayList<>();
        UnaryOperator<Colour> change = UnaryOperator.identity();
        boolean changed = false;
        int at = 0;
        while (at < words.length) {
            UnaryOperator<Colour> next = CHANGES.get(words[at]);
            int tone = endOfTone(words, at);
            int to = tone > at || next != null ? tone : endOfColour(words, at);
            if (to > at) {
                String name = run(words, at, to);
                Lab lab = change.apply(
                                toned(words, at, to).or(() -> lookUp(name)).orElseThrow())
                        .lab();
                found.add(new Found(lab, PLAIN.containsKey(name) && !changed, CLOTHS.contains(name), at, to));
                change = UnaryOperator.identity();
                changed = false;
            } else if (next != null) {
                UnaryOperator<Colour> outer = change;
                change = colour -> outer.apply(next.apply(colour));
                changed = true;
            }
            at = Math.max(to, at + 1);
        }
        return found;
    }

    /** The end of the longest published name, of two words or more, that starts at {@code from}; itself if none. */
    private static int endOfTone(String[] words, int from) {
        for (int to = Math.min(words.length, from + MOST_WORDS); to > from + 1; to--) {
            if (toned(words, from, to).isPresent()) {
                return to;
            }
        }
        return from;
    }

    /** The published colour of a name of two words or more; a maker's own word for the tone may be in its place. */
    private static Optional<Colour> toned(String[] words, int from, int to) {
        String name = run(words, from, to);
        if (to - from < 2 || PARTICULAR.containsKey(name) || PLAIN.containsKey(name)) {
            return Optional.empty();
        }
        String rest = name.substring(words[from].length());
        return NbsNames.find(name)
                .or(() -> TONES.getOrDefault(words[from], List.of()).stream()
                        .flatMap(tone -> NbsNames.find(tone + rest).stream())
                        .findFirst())
                .or(() -> UNTONED.stream()
                        .flatMap(
                                tone -> words[from].endsWith("ish") ? NbsNames.find(tone + name).stream() : Stream.of())
                        .findFirst());
    }

    /** The end of the longest colour that starts at {@code from}; {@code from} itself if none does. */
    private static int endOfColour(String[] words, int from) {
        for (int to = Math.min(words.length, from + MOST_WORDS); to > from; to--) {
            if (lookUp(run(words, from, to)).isPresent()) {
                return to;
            }
        }
        return from;
    }

    private static String run(String[] words, int from, int to) {
        return String.join("", Arrays.asList(words).subList(from, to));
    }

    private static Optional<Colour> lookUp(String name) {
        Colour cloth = PARTICULAR.getOrDefault(name, PLAIN.get(name));
        return cloth != null ? Optional.of(cloth) : CssNames.find(name).or(() -> NbsNames.find(name));
    }

    private static boolean sameFamily(Lab plain, Lab particular) {
        if (plain.chroma() < NEARLY_GREY) {
            return particular.chroma() < NEARLY_GREY;
        }
        double apart = Math.abs(plain.hue() - particular.hue());
        return Math.min(apart, 360 - apart) <= SAME_FAMILY_DEGREES;
    }

    private static UnaryOperator<Colour> towards(double end, double share) {
        return colour -> {
            double lightness = colour.lab().lightness();
            return colour.withLightness(lightness + share * (end - lightness));
        };
    }

    private static Colour dulled(Colour colour) {
        Lab lab = colour.lab();
        return lab.mixed(new Lab(lab.lightness(), 0, 0), 0.4).toColour();
    }
}
