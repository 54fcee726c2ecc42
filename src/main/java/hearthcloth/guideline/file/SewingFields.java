package hearthcloth.guideline.file;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.guideline.Guideline;
import hearthcloth.json.JsonValue;
import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import java.util.List;
import java.util.Locale;

/** Seam, hem, margins and joins in a guideline file; what is left out is what is usual in the unit. */
record SewingFields(Ruler ruler) {

    /** Allowances beyond this are a slip of the unit (docs/sources.md#input-limits). */
    private static final Length WIDEST = Length.cm(10);

    private static final Length LONGEST = Length.cm(100);

    private static final int MOST_JOINS = 40;

    Guideline.SewingRule read(FieldReader file) {
        Making usual = ruler.isMetric() ? Making.metric() : Making.inches();
        Making making = usual.withSeam(seam(file.inside("seam"), usual.seam()))
                .withHem(hem(file.inside("hem"), usual.hem()))
                .withLeeway(file.read("leeway", usual.leeway(), words -> length(words, WIDEST, true)))
                .withTrim(file.read("trim", usual.trim(), words -> length(words, WIDEST, true)))
                .felledOn(file.read("fell", Face.BACK, SewingFields::face));
        return new Guideline.SewingRule(making, joins(file.inside("joins")));
    }

    private SeamKind seam(FieldReader fields, SeamKind usual) {
        SeamKind kind = fields.read("kind", usual, SewingFields::kind);
        Length narrow = fields.read("narrow", kind.narrow(), words -> length(words, WIDEST, false));
        Length wide = fields.read("wide", kind.wide(), words -> length(words, WIDEST, false));
        fields.noOthersBut("band");
        if (narrow.equals(kind.narrow()) && wide.equals(kind.wide())) {
            return kind;
        }
        if (kind.build() == SeamKind.Build.FELLED) {
            // told at a field that is there, since one of the two was written
            String written = fields.text("wide").isPresent() ? "wide" : "narrow";
            return fields.read(written, kind, words -> felled(kind, narrow, wide));
        }
        return new SeamKind(kind.name(), kind.build(), narrow, wide, fields.read("band", kind.band(), this::band));
    }

    private static SeamKind felled(SeamKind kind, Length narrow, Length wide) {
        if (!wide.isMoreThan(narrow)) {
            throw new RefusedException(RulingSentences.ruleWider());
        }
        SeamKind felled = SeamKind.felled(narrow, wide);
        return new SeamKind(kind.name(), felled.build(), narrow, wide, felled.band());
    }

    private Length band(String words) {
        return length(words, WIDEST, true);
    }

    private static SeamKind kind(String words) {
        return SeamKind.named(words).orElseThrow(() -> unknownSeam(words));
    }

    static RefusedException unknownSeam(String words) {
        List<String> known = SeamKind.table().stream().map(SeamKind::name).toList();
        return new RefusedException(
                RulingSentences.ruleSeam(Argument.names(Argument.Joined.SEMICOLONS, known), Argument.written(words)));
    }

    private Hem hem(FieldReader fields, Hem usual) {
        Hem hem = new Hem(
                fields.read("first", usual.first(), words -> length(words, WIDEST, false)),
                fields.read("second", usual.second(), words -> length(words, WIDEST, false)),
                fields.read("corner", usual.corner(), SewingFields::corner));
        fields.noOthers();
        return hem;
    }

    private PiecingRules joins(FieldReader fields) {
        PiecingRules usual = ruler.isMetric() ? PiecingRules.metric() : PiecingRules.inches();
        PiecingRules rules = new PiecingRules(
                fields.read("leastPiece", usual.leastPiece(), words -> length(words, LONGEST, false)),
                fields.read("clearance", usual.clearance(), words -> length(words, LONGEST, true)),
                fields.read("most", usual.mostJoins(), SewingFields::count));
        fields.noOthers();
        return rules;
    }

    private static int count(String words) {
        if (!words.strip().matches("[0-9]|[1-3][0-9]|40")) {
            throw new RefusedException(RefusingSentences.wishWhole(
                    Argument.number(0), Argument.number(MOST_JOINS), Argument.written(words)));
        }
        return Integer.parseInt(words.strip());
    }

    private Length length(String words, Length most, boolean none) {
        Length length = Measures.length(words, ruler.unit());
        if (length.isMoreThan(most) || (!none && !length.isPositive())) {
            // On the file's own ruler, since that is what is to be written.
            throw new RefusedException(RulingSentences.ruleMost(
                    Argument.text(ruler.write(most, Rounding.DOWN)), none ? "yes" : "no", Argument.written(words)));
        }
        return length;
    }

    private static Face face(String words) {
        return switch (words.strip().toLowerCase(Locale.ROOT)) {
            case "front" -> Face.FRONT;
            case "back" -> Face.BACK;
            default -> throw GuidelineFile.other(words, "front", "back");
        };
    }

    private static Hem.Corner corner(String words) {
        return switch (words.strip().toLowerCase(Locale.ROOT)) {
            case "square" -> Hem.Corner.SQUARE;
            case "mitred" -> Hem.Corner.MITRED;
            default -> throw GuidelineFile.other(words, "square", "mitred");
        };
    }

    void write(Guideline.SewingRule sewing, JsonValue.Building file) {
        Making making = sewing.making();
        SeamKind seam = making.seam();
        Hem hem = making.hem();
        PiecingRules joins = sewing.joins();
        file.with("seam", written(seam))
                .with(
                        "hem",
                        JsonValue.object()
                                .with("first", exact(hem.first()))
                                .with("second", exact(hem.second()))
                                .with("corner", hem.corner() == Hem.Corner.MITRED ? "mitred" : "square")
                                .done())
                .with("leeway", exact(making.leeway()))
                .with("trim", exact(making.trim()))
                .with("fell", making.fell() == Face.FRONT ? "front" : "back")
                .with(
                        "joins",
                        JsonValue.object()
                                .with("most", joins.mostJoins())
                                .with("leastPiece", exact(joins.leastPiece()))
                                .with("clearance", exact(joins.clearance()))
                                .done());
    }

    private JsonValue written(SeamKind seam) {
        JsonValue.Building sewn = JsonValue.object()
                .with("kind", seam.name())
                .with("narrow", exact(seam.narrow()))
                .with("wide", exact(seam.wide()));
        boolean named = SeamKind.named(seam.name()).filter(seam::equals).isPresent();
        if (!named && seam.build() != SeamKind.Build.FELLED) {
            sewn.with("band", exact(seam.band()));
        }
        return sewn.done();
    }

    /** In the ruler's unit where the length lies on its marks, else in exact millimetres. */
    private String exact(Length length) {
        boolean onMark = ruler.mark(length, Rounding.NEAREST).equals(length);
        return onMark ? ruler.write(length, Rounding.NEAREST) : length.toString();
    }
}
