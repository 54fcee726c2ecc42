package hearthcloth.cli;

import static hearthcloth.cli.Called.call;
import static hearthcloth.cli.Called.refused;
import static hearthcloth.cli.Called.with;
import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.PrintOptions;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.HearthRule;
import hearthcloth.guideline.RoundsRule;
import hearthcloth.guideline.SizeRule;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of proposals ({@link ProposalFiles}), and a guideline made from one of them. */
class ProposalFilesTest {

    private static final Plan PLAN = Planned.plans(Stashes.yardage(), 20, 1).get(0);

    private final Called called = new Called();

    private final Shell shell = called.shell;

    @TempDir
    private Path folder = Path.of("");

    private String said() {
        return called.said();
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private void written(ProposalFiles files, String name) {
        files.write(List.of(PLAN), OutputFolder.of(at(name)));
    }

    private Set<String> in(String name) throws IOException {
        try (var entries = Files.list(folder.resolve(name))) {
            return new TreeSet<>(
                    entries.map(file -> String.valueOf(file.getFileName())).toList());
        }
    }

    private static ProposalFiles files(Optional<GiftWish> gift, boolean slips, boolean png, boolean net) {
        return new ProposalFiles(
                gift,
                new PrintOptions.Print(Paper.LETTER, Voice.english(Ruler.EIGHTHS), GuideLength.FULL),
                new ProposalFiles.Extras(slips, png, net));
    }

    @Test
    void files_beside_the_usual_ones_are_written_where_they_are_wanted() throws IOException {
        String[] usual = {"back.svg", "cut.svg", "front.svg", "guide.pdf", "plan.json"};
        written(files(Optional.empty(), false, false, false), "a");
        assertThat(in("a/1")).containsExactlyInAnyOrder(usual);
        written(files(Optional.empty(), true, false, false), "b");
        assertThat(in("b/1")).containsExactlyInAnyOrder(with(usual, "slips.pdf"));
        written(files(Optional.empty(), false, true, false), "c");
        assertThat(in("c/1")).containsExactlyInAnyOrder(with(usual, "front.png", "back.png", "cut.png"));
        written(files(GiftWish.read("box 5 x 4 x 2 in", null, null), false, false, true), "d");
        assertThat(in("d/1")).containsExactlyInAnyOrder(with(usual, "tied.svg", "net.pdf", "net.svg"));
    }

    @Test
    void a_guideline_made_from_a_cloth_holds_what_was_said_and_the_usual_where_nothing_was() throws IOException {
        written(files(Optional.empty(), false, false, false), "a");
        String plan = at("a/1/plan.json");
        assertThat(call(new GuidelineCommand(shell, (asked, said) -> 0), plan, "--out", at("idea.json")))
                .isZero();
        assertThat(said())
                .startsWith("Wrote " + at("idea.json") + ": " + PLAN.story().title() + ".");
        Guideline idea = GuidelineWish.guideline(at("idea.json"), shell);
        assertThat(idea.told().name()).isEqualTo(PLAN.story().title().english());
        assertThat(idea.told().ruler()).isEqualTo(Ruler.EIGHTHS);
        assertThat(idea.size()).isEqualTo(new SizeRule.Open());
        assertThat(idea.shape().hearth()).isInstanceOf(HearthRule.OfWidth.class);
        assertThat(idea.shape().order()).isPresent();

        refused(
                () -> call(new GuidelineCommand(shell, (asked, said) -> 0), plan, "--out", at("idea.json")),
                "--replace");
        call(
                new GuidelineCommand(shell, (asked, said) -> 0),
                plan,
                "--out",
                at("idea.json"),
                "--replace",
                "--name",
                "Tide",
                "--by",
                "Ada",
                "--words",
                "Go on.",
                "--size",
                "kept",
                "--hearth",
                "14 in cut",
                "--rounds",
                "2 to 4",
                "--order",
                "open",
                "--most-joins",
                "7",
                "--unit",
                "cm");
        Guideline other = GuidelineWish.guideline(at("idea.json"), shell);
        assertThat(other.told().name() + other.told().by() + other.told().words())
                .isEqualTo("TideAdaGo on.");
        assertThat(other.told().ruler()).isEqualTo(Ruler.MILLIMETRES);
        assertThat(other.size()).isEqualTo(new SizeRule.Exactly(PLAN.cloth().finished()));
        assertThat(other.shape().rounds()).isEqualTo(new RoundsRule(2, 4));
        assertThat(other.shape().order()).isEmpty();
        assertThat(other.sewing().joins().mostJoins()).isEqualTo(7);

        refused(
                () -> call(
                        new GuidelineCommand(shell, (asked, said) -> 0),
                        plan,
                        "--out",
                        at("b.json"),
                        "--most-joins",
                        "41",
                        "--middle",
                        "blue",
                        "--size",
                        "kelp"),
                "--most-joins",
                "--middle",
                "--size");
        assertThat(GuidelineFile.read(Files.readString(folder.resolve("a/1/plan.json"))))
                .isInstanceOf(GuidelineFile.Reading.Faulty.class);
    }
}
