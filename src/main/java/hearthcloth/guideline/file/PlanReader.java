package hearthcloth.guideline.file;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.guideline.SentCloth;
import hearthcloth.json.JsonException;
import hearthcloth.json.JsonParser;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.ReadingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the cloth of a plan file again: hearth, bars with their parts, seam, hem and the fabrics' colours. */
public final class PlanReader {

    /** What the field {@code format} of a plan file says. */
    static final String FORMAT = "hearthcloth-plan";

    private static final long MOST_NM = Length.cm(50_000).nm();
    private static final int MOST_PATCHES = 2_000;

    private final List<Sentence> faults = new ArrayList<>();

    private PlanReader() {}

    /** The result of reading. */
    public sealed interface Reading {

        /** The cloth. */
        record Read(SentCloth cloth) implements Reading {}

        /** What is wrong, a sentence for each field. */
        record Faulty(List<Sentence> said) implements Reading {
            public Faulty {
                said = List.copyOf(said);
            }
        }
    }

    public static Reading read(String text) {
        return new PlanReader().reading(text);
    }

    private Reading reading(String text) {
        Optional<SentCloth> cloth = Optional.empty();
        try {
            FieldReader file = FieldReader.of(JsonParser.read(text), faults);
            file.need("format", "", PlanReader::format);
            file.whole("version", 1, 1, 1);
            cloth = faults.isEmpty() ? Optional.of(cloth(file)) : Optional.empty();
        } catch (JsonException e) {
            faults.add(RulingSentences.filePlan(GuidelineFile.amiss(e)));
        } catch (RefusedException e) {
            faults.add(e.sentence());
        } catch (IllegalArgumentException e) {
            // Sizes that no seam joins: which two halves is nothing that somebody who was sent the file could mend.
            faults.add(RulingSentences.filePatches("FIT"));
        }
        return faults.isEmpty() && cloth.isPresent() ? new Reading.Read(cloth.get()) : new Reading.Faulty(faults);
    }

    private static String format(String written) {
        if (!written.equals(FORMAT)) {
            throw GuidelineFile.format(written);
        }
        return written;
    }

    private SentCloth cloth(FieldReader file) {
        List<FieldReader> patches = file.each("patches");
        if (patches.isEmpty() || patches.size() > MOST_PATCHES) {
            throw new RefusedException(RulingSentences.filePatches(patches.isEmpty() ? "NONE" : "MANY"));
        }
        FieldReader more = file.inside("making");
        Making making = making(file, more);
        PiecingRules rules = new PiecingRules(
                length(file, "leastPiece"),
                length(file, "clearance"),
                more.has("mostJoins") ? (int) more.whole("mostJoins", 4, 0, 40) : 4);
        Layouts layouts = new Layouts(patches);
        return new SentCloth(
                file.read("title", "A cloth", written -> written.isBlank() ? "A cloth" : written),
                new Cloth(layouts.sewn(), making),
                fabrics(file, layouts.names()),
                rules);
    }

    private static Length length(FieldReader fields, String name) {
        return new Length(fields.whole(name, 1, 0, MOST_NM));
    }

    private Making making(FieldReader file, FieldReader more) {
        FieldReader seam = file.inside("seam");
        FieldReader hem = file.inside("hem");
        Length narrow = length(seam, "narrow");
        Length wide = length(seam, "wide");
        SeamKind kind = more.read("kind", SeamKind.felledInches(), PlanReader::kind);
        SeamKind.Build build = kind.build();
        Length band = more.has("band")
                ? length(more, "band")
                : SeamKind.felled(narrow, wide).band();
        Hem.Corner corner =
                more.read("corner", "square", word -> word).equals("mitred") ? Hem.Corner.MITRED : Hem.Corner.SQUARE;
        Face fell = more.read("fell", "back", word -> word).equals("front") ? Face.FRONT : Face.BACK;
        Margins margins = new Margins(
                length(file, "leeway"),
                more.has("trim") ? length(more, "trim") : Length.ZERO,
                more.has("mark") ? new Length(more.whole("mark", 1, 1, MOST_NM)) : new Length(1));
        return new Making(
                new SeamKind(kind.name(), build, narrow, wide, band),
                new Hem(length(hem, "first"), length(hem, "second"), corner),
                margins,
                fell);
    }

    private static SeamKind kind(String name) {
        return SeamKind.named(name).orElseThrow(() -> SewingFields.unknownSeam(name));
    }

    private static Colour colour(String written) {
        try {
            return Colour.parse(written);
        } catch (ColourException e) {
            throw new RefusedException(ReadingSentences.lineColour(Argument.written(written)));
        }
    }

    /** The fabrics with their colours; those of a file from before colours were sent are of no known colour. */
    private static List<Fabric> fabrics(FieldReader file, List<String> names) {
        Map<String, Fabric> fabrics = new LinkedHashMap<>();
        names.forEach(name -> fabrics.put(name, new Fabric(name, Colour.UNDYED, Fabric.Faces.SAME, Fabric.Nap.ANY)));
        for (FieldReader each : file.has("fabrics") ? file.each("fabrics") : List.<FieldReader>of()) {
            String name = each.need("name", "", word -> word);
            Colour colour = each.need("colour", Colour.UNDYED, PlanReader::colour);
            boolean right = each.read("faces", "same", word -> word).equals("right");
            boolean lengthwise = each.read("nap", "any", word -> word).equals("lengthwise");
            if (fabrics.containsKey(name)) {
                fabrics.put(
                        name,
                        new Fabric(
                                name,
                                colour,
                                right ? Fabric.Faces.RIGHT : Fabric.Faces.SAME,
                                lengthwise ? Fabric.Nap.LENGTHWISE : Fabric.Nap.ANY,
                                each.read("wrong", Optional.<Colour>empty(), word -> Optional.of(colour(word)))));
            }
        }
        return List.copyOf(fabrics.values());
    }

    /** Hearth and bars of a plan file, in sewing order. */
    private static final class Layouts {

        private record Part(String fabric, Showing showing, Size size, int number) {}

        private record Bar(Side side, List<Part> parts) {}

        private final Map<String, Bar> bars = new java.util.TreeMap<>(Layouts::inOrder);
        private final List<String> names = new ArrayList<>();
        private Optional<Part> hearth = Optional.empty();

        Layouts(List<FieldReader> patches) {
            patches.forEach(this::add);
        }

        List<String> names() {
            return names.stream().distinct().toList();
        }

        private void add(FieldReader patch) {
            String id = patch.need("id", "hearth", word -> word);
            String fabric = patch.need("fabric", "?", word -> word.isBlank() ? "?" : word);
            FieldReader at = patch.inside("finished");
            Size size = new Size(length(at, "width"), length(at, "height"));
            Showing showing = patch.read("front", Showing.SAME, Layouts::showing);
            names.add(fabric);
            switch (patch.need("role", "patch", word -> word)) {
                case "hearth" -> hearth = Optional.of(new Part(fabric, showing, size, 0));
                case "bar" -> bar(patch, new Part(fabric, showing, size, part(id)));
                default -> throw new RefusedException(RulingSentences.filePatches("SCRAPS"));
            }
        }

        private void bar(FieldReader patch, Part part) {
            String name = patch.need("bar", "1A", Layouts::name);
            Side side = patch.need("side", Side.RIGHT, Layouts::side);
            bars.computeIfAbsent(name, bar -> new Bar(side, new ArrayList<>()))
                    .parts()
                    .add(part);
        }

        private static String name(String word) {
            if (!word.matches("[1-9]\\d?[A-Z]{1,2}")) {
                throw new RefusedException(RulingSentences.ruleBar(Argument.written(word)));
            }
            return word;
        }

        private static int part(String id) {
            int dot = id.indexOf('.');
            return dot < 0 || !id.substring(dot + 1).matches("\\d{1,3}") ? 0 : Integer.parseInt(id.substring(dot + 1));
        }

        private static Side side(String word) {
            for (Side side : Side.values()) {
                if (side.word().equals(word)) {
                    return side;
                }
            }
            throw GuidelineFile.other(word, "left", "top", "right", "bottom");
        }

        private static Showing showing(String word) {
            for (Showing showing : Showing.values()) {
                if (showing.word().equals(word)) {
                    return showing;
                }
            }
            throw GuidelineFile.other(word, "same", "right", "wrong");
        }

        private static int inOrder(String one, String other) {
            int round = Integer.compare(round(one), round(other));
            int letters = Integer.compare(one.length(), other.length());
            return round != 0 ? round : letters != 0 ? letters : one.compareTo(other);
        }

        private static int round(String bar) {
            return Integer.parseInt(bar.replaceAll("\\D", ""));
        }

        hearthcloth.cloth.Assembly sewn() {
            Part middle = hearth.orElseThrow(() -> new RefusedException(RulingSentences.filePatches("HEARTH")));
            List<Layout.Course> courses = new ArrayList<>();
            List<List<Layout.Part>> parts = new ArrayList<>();
            for (Bar bar : bars.values()) {
                boolean upright = bar.side().isUpright();
                List<Part> sorted = new ArrayList<>(bar.parts());
                sorted.sort(java.util.Comparator.comparingInt(Part::number));
                Size first = sorted.get(0).size();
                courses.add(new Layout.Course(bar.side(), upright ? first.width() : first.height()));
                parts.add(sorted.stream()
                        .map(part -> new Layout.Part(
                                part.fabric(),
                                part.showing(),
                                upright ? part.size().height() : part.size().width()))
                        .toList());
            }
            return new Layout(middle.size(), courses).sewn(middle.fabric(), middle.showing(), parts);
        }
    }
}
