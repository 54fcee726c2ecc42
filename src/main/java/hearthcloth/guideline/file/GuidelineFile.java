package hearthcloth.guideline.file;

import hearthcloth.cloth.layout.Order;
import hearthcloth.guideline.BarsRule;
import hearthcloth.guideline.ColourRule;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.HearthRule;
import hearthcloth.guideline.RoundsRule;
import hearthcloth.guideline.SizeRule;
import hearthcloth.json.JsonException;
import hearthcloth.json.JsonParser;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The guideline file. Its rules are written in the words a teacher would use ({@code "30 to 40 %"}), so that it can be mended
 * by hand; docs/formats describes it, and a JSON Schema lies beside. Nothing of a file with a fault is taken in.
 */
public final class GuidelineFile {

    /** What the field {@code format} says. */
    public static final String FORMAT = "hearthcloth-guideline";

    /** The version that is written, and the newest that is read. */
    private static final int VERSION = 1;

    /** Letters of her words; a page of a book has 3000. */
    private static final int MOST_WORDS = 20_000;

    private static final int MOST_NAME = 120;

    /** Letters of a picture in base 64: 600 kB, so that an idea page stays under 1.5 MB. */
    private static final int MOST_PICTURE = 450_000;

    private GuidelineFile() {}

    /** The result of reading. */
    public sealed interface Reading {

        /** A guideline. */
        record Read(Guideline guideline) implements Reading {}

        /** What is wrong, a sentence for each field. */
        record Faulty(List<Sentence> said) implements Reading {
            public Faulty {
                said = List.copyOf(said);
            }
        }
    }

    public static Reading read(String text) {
        List<Sentence> faults = new ArrayList<>();
        Optional<Guideline> guideline = Optional.empty();
        try {
            guideline = Optional.of(guideline(FieldReader.of(JsonParser.read(text), faults)));
        } catch (JsonException e) {
            faults.add(RulingSentences.fileGuideline(amiss(e)));
        }
        return faults.isEmpty() && guideline.isPresent()
                ? new Reading.Read(guideline.get())
                : new Reading.Faulty(faults);
    }

    /** What is amiss in a text that is no JSON. */
    static Sentence amiss(JsonException thrown) {
        return RulingSentences.fileJson(
                Argument.number(thrown.line()),
                Argument.written(thrown.text()),
                thrown.slip().name());
    }

    /** The refusal of words other than these. */
    static RefusedException other(String written, String... known) {
        return new RefusedException(RefusingSentences.wishWord(
                Argument.names(Argument.Joined.OR, List.of(known)), Argument.written(written)));
    }

    private static Guideline guideline(FieldReader file) {
        file.need("format", "", written -> {
            if (!written.equals(FORMAT)) {
                throw format(written);
            }
            return written;
        });
        file.whole("version", VERSION, 1, VERSION);
        Guideline.Told told = told(file);
        Unit unit = told.ruler().unit();
        Guideline guideline = new Guideline(
                told,
                file.read("size", SizeRule.parse("open", unit), words -> SizeRule.parse(words, unit)),
                shape(file, unit),
                colours(file),
                new SewingFields(told.ruler()).read(file));
        file.noOthers();
        return guideline;
    }

    /** The refusal of a file that says it is of another kind. */
    static RefusedException format(String written) {
        return new RefusedException(RulingSentences.fileFormat(
                Argument.text(FORMAT), Argument.text(PlanReader.FORMAT), Argument.written(written)));
    }

    private static Guideline.Told told(FieldReader file) {
        String name = file.need("name", "A cloth", written -> words(written, MOST_NAME));
        String by = file.read("by", "", written -> words(written, MOST_NAME));
        String words = file.read("words", "", written -> words(written, MOST_WORDS));
        Ruler ruler = file.read("unit", Ruler.EIGHTHS, GuidelineFile::ruler);
        return new Guideline.Told(name.isBlank() ? "A cloth" : name.strip(), by, words, picture(file), ruler);
    }

    private static Ruler ruler(String written) {
        return switch (written) {
            case "in" -> Ruler.EIGHTHS;
            case "cm" -> Ruler.MILLIMETRES;
            default -> throw other(written, "in", "cm");
        };
    }

    /** Text as it stands, without control characters but line ends; what looks like a program stays mere letters. */
    private static String words(String written, int most) {
        if (written.length() > most) {
            throw new RefusedException(
                    RulingSentences.fileLong(Argument.number(written.length()), Argument.number(most)));
        }
        return written.replace("\r\n", "\n").replaceAll("[\\p{Cntrl}&&[^\n]]", " ");
    }

    private static Optional<Guideline.Picture> picture(FieldReader file) {
        if (!file.has("picture")) {
            file.inside("picture");
            return Optional.empty();
        }
        FieldReader inside = file.inside("picture");
        String kind = inside.need("kind", "", written -> {
            if (!written.equals("image/png") && !written.equals("image/jpeg")) {
                throw other(written, "image/png", "image/jpeg");
            }
            return written;
        });
        String bytes = inside.need("base64", "", written -> {
            if (written.length() > MOST_PICTURE) {
                throw new RefusedException(RulingSentences.filePicture("LARGE"));
            }
            if (!written.matches("[A-Za-z0-9+/]+={0,2}") || written.length() % 4 != 0) {
                throw new RefusedException(RulingSentences.filePicture("NONE"));
            }
            return written;
        });
        String words = inside.read("words", "", written -> words(written, MOST_NAME));
        inside.noOthers();
        return Optional.of(new Guideline.Picture(kind, bytes, words));
    }

    private static Guideline.ShapeRule shape(FieldReader file, Unit unit) {
        return new Guideline.ShapeRule(
                file.read("hearth", HearthRule.parse("open", unit), words -> HearthRule.parse(words, unit)),
                file.read("bars", BarsRule.parse("open", unit), words -> BarsRule.parse(words, unit)),
                file.read("rounds", RoundsRule.parse("open"), RoundsRule::parse),
                file.read("order", Optional.<Order>empty(), GuidelineFile::order));
    }

    private static Optional<Order> order(String written) {
        if (written.strip().toLowerCase(Locale.ROOT).equals("open")) {
            return Optional.empty();
        }
        return Optional.of(
                Order.named(written).orElseThrow(() -> other(written, "round", "pairs", "two-sides", "open")));
    }

    private static ColourRule colours(FieldReader file) {
        return new ColourRule(
                file.read("colours", List.of(), ColourRule::parse),
                file.read("middle", ColourRule.Middle.ANY, ColourRule.Middle::parse));
    }

    /** The file's text; reading it gives the same guideline. */
    public static String write(Guideline guideline) {
        Guideline.Told told = guideline.told();
        Ruler ruler = told.ruler();
        Guideline.ShapeRule shape = guideline.shape();
        JsonValue.Building file = JsonValue.object()
                .with("format", FORMAT)
                .with("version", VERSION)
                .with("name", told.name())
                .with("by", told.by())
                .with("words", told.words())
                .with("unit", ruler.isMetric() ? "cm" : "in")
                .with("size", guideline.size().written(ruler))
                .with("hearth", shape.hearth().written(ruler))
                .with("bars", shape.bars().written(ruler))
                .with("rounds", shape.rounds().written())
                .with("order", shape.order().map(Order::word).orElse("open"))
                .with("colours", guideline.colours().written())
                .with("middle", guideline.colours().middle().word());
        new SewingFields(ruler).write(guideline.sewing(), file);
        told.picture()
                .ifPresent(picture -> file.with(
                        "picture",
                        JsonValue.object()
                                .with("kind", picture.kind())
                                .with("base64", picture.base64())
                                .with("words", picture.words())
                                .done()));
        return JsonWriter.write(file.done());
    }
}
