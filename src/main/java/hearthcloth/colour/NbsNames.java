package hearthcloth.colour;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The 267 colour names of ISCC–NBS and their centroids: "vivid red", "pale yellowish green", "dark greyish brown". They
 * are what a light, dark, pale or bright form of a plain colour word means here. Source: docs/sources.md#iscc-nbs.
 */
final class NbsNames {

    /** For each hue, written together, its tones and their centroids. */
    private static final Map<String, Colour> COLOURS = read("""
            black: plain 222222
            blue: blackish 202830 brilliant 4997d0 dark 00304e darkgreyish 36454f deep 00416a greyish 536878
            light 70a3cc moderate 436b95 pale 91a3b0 strong 0067a5 verylight a1caf1 verypale bcd4e6 vivid 00a1c2
            bluishblack: plain 202428
            bluishgreen: brilliant 00a693 dark 004b49 deep 00443f light 66ada4 moderate 317873 strong 007a74
            verydark 002a29 verylight 96ded1 vivid 008882
            bluishgrey: plain 81878b dark 51585e light b4bcc0
            bluishwhite: plain e9e9ed
            brown: dark 422518 darkgreyish 3e322c deep 593319 greyish 635147 light a67b5b lightgreyish 958070
            moderate 6f4e37 strong 80461b
            brownishblack: plain 28201c
            brownishgrey: plain 5b504f light 8e8279
            brownishorange: plain ae6938
            brownishpink: plain c2ac99
            green: blackish 1a2421 brilliant 3eb489 dark 1b4d3e darkgreyish 3a4b47 deep 00543d greyish 5e716a
            light 6aab8e moderate 3b7861 pale 8da399 strong 007959 verydark 1c352d verylight 8ed1b2 verypale c7e6d7
            vivid 008856
            greenishblack: plain 1e2321
            greenishblue: brilliant 239eba dark 004958 deep 2e8495 light 66aabc moderate 367588 strong 007791
            verydark 002e3b verylight 9cd1dc vivid 0085a1
            greenishgrey: dark 4e5755 plain 7d8984 light b2beb5
            greenishwhite: plain dfede8
            greenishyellow: brilliant e9e450 dark 98943e deep 9b9400 greyish b9b57d light eae679 moderate b9b459
            pale ebe8a4 strong beb72e vivid dcd300
            grey: dark 555555 light b9b8b5
            mediumgrey: plain 848482
            olive: darkgreyish 363527 dark 403d21 greyish 5b5842 lightgreyish 8c8767 light 867e36 moderate 665d1e
            oliveblack: plain 25241d
            olivebrown: dark 3b3121 light 967117 moderate 6c541e
            olivegreen: darkgreyish 31362b dark 2b3d26 deep 232f00 greyish 515744 moderate 4a5d23 strong 404f00
            olivegrey: light 8a8776 plain 57554c
            orange: brilliant fd943f deep be6516 light fab57f moderate d99058 strong ed872d vivid f38400
            orangeyellow: brilliant ffc14f dark be8a3d deep c98500 light fbc97f moderate e3a857 pale fad6a5
            strong eaa221 vivid f6a600
            pink: dark c08081 deep e4717a greyish c4aead light f9ccca moderate dea5a4 pale ead8d7 strong ea9399
            vivid ffb5ba
            pinkishgrey: plain c1b6b3
            pinkishwhite: plain eae3e1
            purple: blackish 291e29 brilliant d399e6 darkgreyish 50404d dark 563c5c deep 602f6b greyish 796878
            light b695c0 moderate 86608e pale aa98a9 strong 875692 verydark 301934 verydeep 401a4c verylight d5badb
            verypale d6cadd vivid 9a4eae
            purplishblack: plain 242124
            purplishblue: brilliant 6c79b8 dark 252440 deep 272458 greyish 4c516d light 8791bf moderate 4e5180
            pale 8c92ac strong 545aa7 verylight b3bce2 verypale c0c8e1 vivid 30267a
            purplishgrey: dark 5d555b light bfb9bd plain 8b8589
            purplishpink: brilliant ffc8d6 dark c17e91 deep de6fa1 greyish c3a6b1 light efbbcc moderate d597ae
            pale e8ccd7 strong e68fac
            purplishred: dark 673147 deep 78184a greyish 915f6d lightgreyish af868e moderate a8516e strong b3446c
            verydark 38152c verydeep 54133b vivid ce4676
            purplishwhite: plain e8e3e5
            red: blackish 2e1d21 darkgreyish 543d3f dark 722f37 deep 841b2d greyish 905d5d lightgreyish ad8884
            moderate ab4e52 strong bc3f4a verydark 3f1728 verydeep 5c0923 vivid be0032
            reddishblack: plain 282022
            reddishbrown: darkgreyish 43302e dark 3e1d1e deep 56070c greyish 674c47 lightgreyish 977f73 light a87c6d
            moderate 79443b strong 882d17
            reddishgrey: dark 5c504f plain 8f817f
            reddishorange: dark 9e4732 deep aa381e greyish b4745e moderate cb6d51 strong d9603b vivid e25822
            reddishpurple: dark 5d3954 deep 702963 greyish 836479 light b784a7 moderate 915c83 pale aa8a9e
            strong 9e4f88 verydark 341731 verydeep 54194e vivid 870074
            violet: brilliant 7e73b8 dark 2f2140 deep 32174d greyish 554c69 light 8c82b6 moderate 604e81 pale 9690ab
            strong 604e97 verylight dcd0ff verypale c4c3dd vivid 9065ca
            white: plain f2f3f4
            yellow: brilliant fada5e darkgreyish a18f60 dark ab9144 deep af8d13 greyish c2b280 light f8de7e
            moderate c9ae5d pale f3e5ab strong d4af37 vivid f3c300
            yellowgreen: brilliant bdda57 deep 467129 greyish 8f9779 light c9dc89 moderate 8a9a5b pale dadfb7
            strong 7e9f2e vivid 8db600
            yellowishbrown: darkgreyish 483c32 dark 4b3621 deep 654522 greyish 7e6d5a lightgreyish ae9b82
            light c19a6b moderate 826644 strong 996515
            yellowishgreen: brilliant 83d37d dark 355e3b deep 00622d light 93c592 moderate 679267 strong 44944a
            verydark 173620 verydeep 003118 verylight b6e5af vivid 27a64c
            yellowishgrey: plain bfb8a5
            yellowishpink: dark c48379 deep e66721 greyish c7ada3 light f4c2c2 moderate d9a6a9 pale ecd5c5
            strong f99379 vivid ffb7a5
            yellowishwhite: plain f0ead6
            """);

    private NbsNames() {}

    /** The centroid of a name in lower case, in British spelling, without spaces: {@code verypaleblue}. */
    static Optional<Colour> find(String name) {
        return Optional.ofNullable(COLOURS.get(name));
    }

    private static Map<String, Colour> read(String table) {
        String[] words = table.strip().split("\\s+", -1);
        Map<String, Colour> colours = new HashMap<>();
        String hue = "";
        int at = 0;
        while (at < words.length) {
            if (words[at].endsWith(":")) {
                hue = words[at].substring(0, words[at].length() - 1);
                at++;
            } else {
                String tone = words[at].equals("plain") ? "" : words[at];
                if (colours.put(tone + hue, Colour.of(Integer.parseInt(words[at + 1], 16))) != null) {
                    throw new IllegalStateException("named twice: " + tone + hue);
                }
                at += 2;
            }
        }
        return Map.copyOf(colours);
    }
}
