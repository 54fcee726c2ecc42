package hearthcloth.web.cloth;

import gg.jte.Content;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourVision;
import hearthcloth.plan.colour.ColourWords;
import hearthcloth.stash.Fabric;
import hearthcloth.web.kit.HeldPart;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A cloth on the bench: its pictures, everything that can be changed about it, and what a change did.
 *
 * @param look which of its pictures is large
 * @param tied how it is tied, where that is looked at
 */
@PageView.Template("part/bench.jte")
public record ClothBench(ClothView cloth, Look look, TiedStage tied, History history, Told told) implements PageView {

    /** What can be taken back and what done again, in words; empty where there is nothing. */
    public record History(String undo, String redo) {}

    /**
     * What is told.
     *
     * @param said what was just done; may be empty
     * @param warnings what has become of the pieces it counts on, a sentence each
     * @param figures in few words, and what they were before the last change
     * @param token proves that a form came from one of our own pages
     * @param held the marks of the sections that the page which asks has already
     */
    public record Told(
            String said, List<String> warnings, List<ClothFigures.Figure> figures, String token, Set<String> held) {}

    /** A way of looking at a cloth. */
    public enum Look {
        FLAT("flat"),
        BACK("back"),
        TIED("tied"),
        VALUES("light-and-dark"),
        PROTAN(ColourVision.PROTAN),
        DEUTAN(ColourVision.DEUTAN),
        TRITAN(ColourVision.TRITAN);

        private final String address;
        private final Optional<ColourVision> eyes;

        Look(String address) {
            this.address = address;
            this.eyes = Optional.empty();
        }

        Look(ColourVision eyes) {
            this.address = eyes.word();
            this.eyes = Optional.of(eyes);
        }

        /** The eyes it is seen by, where they lack something. */
        public Optional<ColourVision> eyes() {
            return eyes;
        }

        /** The one with this address, else flat. */
        static Look named(String address) {
            for (Look look : values()) {
                if (look.address.equals(address)) {
                    return look;
                }
            }
            return FLAT;
        }

        public String address() {
            return address;
        }
    }

    /** The language of the page. */
    public Language language() {
        return cloth.settings().pages();
    }

    /** Whether it can be changed patch by patch: a cloth of scraps of which nothing is cut. */
    public boolean byHand() {
        return !cloth.barred()
                && cloth.editable()
                && cloth.document().bench().ticked().isEmpty();
    }

    /** The large picture. */
    public String shown() {
        return switch (look) {
            case FLAT -> cloth.front();
            case BACK -> cloth.back();
            case TIED -> "";
            case VALUES -> cloth.values();
            case PROTAN, DEUTAN, TRITAN -> cloth.seenBy(look.eyes().orElseThrow());
        };
    }

    /** What its colours do, in a sentence, to the eyes it is looked at with; empty where nothing is worth telling. */
    public String colours() {
        if (!cloth.barred()) {
            return "";
        }
        return look.eyes().map(eyes -> toldBy(colours(eyes::seen))).orElseGet(() -> colours(colour -> colour));
    }

    private String colours(UnaryOperator<Colour> seen) {
        List<Fabric> fabrics =
                cloth.fabrics().stream().map(fabric -> fabric.seen(seen)).toList();
        return cloth.settings()
                .voice()
                .sentences(ColourWords.of(cloth.cloth(), fabrics, Optional.empty()).stream()
                        .map(sentence -> sentence.in(cloth.settings().voice()))
                        .toList());
    }

    private String toldBy(String colours) {
        DesigningWords words = DesigningWords.in(language());
        return colours.isEmpty()
                ? ""
                : words.eyesTold(
                        colours.substring(0, 1).toLowerCase(Locale.ROOT) + colours.substring(1),
                        words.eyes(look.name()));
    }

    /** A section that is sent only to who does not have it. */
    public HeldPart held(String of, Content content) {
        return HeldPart.of(of, told.held(), content);
    }

    public String token() {
        return told.token();
    }

    public String said() {
        return told.said();
    }

    public List<String> warnings() {
        return told.warnings();
    }

    /**
     * The fields that every form of the bench carries.
     *
     * @param what the form changes
     */
    public record Change(ClothBench bench, String what) {}

    public Change change(String what) {
        return new Change(this, what);
    }
}
