package hearthcloth.sew;

import java.util.List;

/** The guide as plain text: what a printer without pictures would print. */
final class GuideText {

    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder();

    private GuideText() {}

    static String of(Guide guide) {
        GuideText out = new GuideText();
        out.gather(guide.gather());
        out.heading("Cut");
        out.line("Where it says \"quarter turn\", the patch lies a quarter turn from how it sits in the cloth.");
        guide.cutting().forEach(out::piece);
        out.heading("Sew");
        out.task("", guide.sewing().layout());
        out.task("", guide.sewing().trial());
        for (SeamTask seam : guide.sewing().seams()) {
            out.task("Step " + seam.step().number() + ". ", seam.task());
        }
        if (!guide.hemming().isEmpty()) {
            out.heading("Hem");
            guide.hemming().forEach(task -> out.task("", task));
        }
        out.notes(guide.notes());
        return out.text.toString();
    }

    private void gather(Gather gather) {
        heading("Gather");
        for (Gather.FabricNeed fabric : gather.fabrics()) {
            line(fabric.fabric() + ": " + String.join("; ", fabric.pieces()));
        }
        titled("Tools", gather.tools());
        titled("Wash first", gather.washing());
        titled("Before you cut", gather.before());
    }

    private void piece(PieceTask piece) {
        line("");
        line(piece.title());
        for (CutLine cut : piece.lines()) {
            line(INDENT + cut.number() + ". " + cut.sentence());
        }
        piece.gives().forEach(patch -> line(INDENT + "= " + patch));
        piece.left().forEach(left -> line(INDENT + "~ " + left));
    }

    private void task(String number, Task task) {
        line("");
        line(number + task.title());
        task.lines().forEach(sentence -> line(INDENT + "- " + sentence));
        task.check().ifPresent(check -> line(INDENT + "= " + check.sentence()));
        task.warnings().forEach(warning -> line(INDENT + "! " + warning));
    }

    private void notes(Notes notes) {
        heading("Thread");
        line(notes.threadWords());
        heading("Thick places");
        notes.thick().forEach(this::line);
        heading("Take care");
        notes.cautions().forEach(caution -> line(caution.topic() + ": " + caution.words()));
        heading("Washing the finished cloth");
        notes.washing().forEach(this::line);
    }

    private void titled(String title, List<String> lines) {
        line("");
        line(title);
        lines.forEach(line -> line(INDENT + "- " + line));
    }

    private void heading(String heading) {
        if (text.length() > 0) {
            line("");
        }
        line("== " + heading + " ==");
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
