package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A reader who knows only the sentences and the size of the piece, and has every patch at its size in the end. */
final class BlindCutter {

    private static final Pattern CUT = Pattern.compile("Cut (.+?) from (top to bottom|left to right), ([^ ]+ (?:in|cm))"
            + " from its (left|right|top|bottom) edge\\. This gives (.+?) and leaves (.+?)\\.");

    private BlindCutter() {}

    static void cuts(Plan plan, List<PieceTask> pieces) {
        for (PieceTask piece : pieces) {
            Map<String, Size> table = new HashMap<>();
            table.put("the piece", piece.cut().piece().size());
            piece.lines().forEach(line -> follow(line.sentence(), table));
            for (CutTree.Kept kept : piece.cut().tree().kept()) {
                String name = kept == piece.cut().tree() ? "the piece" : name(plan, kept);
                assertThat(table.get(name)).as(name).isEqualTo(kept.at().size());
            }
        }
    }

    private static String name(Plan plan, CutTree.Kept kept) {
        return new MakerWords(Voice.english(Ruler.MILLIMETRES))
                .patch(Objects.requireNonNull(plan.laid().get(kept.patch()), kept.patch())
                        .patch());
    }

    private static void follow(String sentence, Map<String, Size> table) {
        Matcher cut = CUT.matcher(sentence);
        assertThat(cut.matches()).as(sentence).isTrue();
        Size whole = Objects.requireNonNull(table.remove(cut.group(1)), sentence);
        Length measured = Measures.length(cut.group(3), null);
        boolean upright = cut.group(2).equals("top to bottom");
        Size off = upright ? new Size(measured, whole.height()) : new Size(whole.width(), measured);
        Size stays = upright
                ? new Size(whole.width().minus(measured), whole.height())
                : new Size(whole.width(), whole.height().minus(measured));
        assertThat(stays.width().isPositive() && stays.height().isPositive())
                .as(sentence)
                .isTrue();
        table.put(cut.group(5), off);
        table.put(cut.group(6), stays);
    }
}
