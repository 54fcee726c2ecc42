package hearthcloth.cli.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishWords;
import hearthcloth.words.Language;
import hearthcloth.wrap.Tie;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Options that several commands have, typed to a command that has them all. */
class SharedOptionsTest {

    /** Every kind of option once. */
    @Command(name = "all", sortOptions = false)
    private static final class All {

        @Mixin
        private FolderOptions out = new FolderOptions();

        @Mixin
        private PrintOptions print = new PrintOptions(GuideLength.CLASS);

        @Mixin
        private JsonOption json = new JsonOption();

        @Mixin
        private WishOptions wishes = new WishOptions();

        @Mixin
        @SuppressWarnings("unused") // picocli wants it to be there
        private StashInput stash = new StashInput();

        @Mixin
        private TimeOption budget = new TimeOption("10s");
    }

    private static All typed(String... words) {
        All all = new All();
        new CommandLine(all).parseArgs(words);
        return all;
    }

    @Test
    void what_is_left_out_is_as_each_command_has_it() {
        All all = typed("scraps.csv", "--out", "out/");
        OptionText text = new OptionText();
        assertThat(all.print.read(text, Ruler.EIGHTHS))
                .isEqualTo(new PrintOptions.Asked(Paper.LETTER, Language.ENGLISH, GuideLength.CLASS, Ruler.EIGHTHS));
        assertThat(all.print.read(text, Ruler.MILLIMETRES).paper()).isEqualTo(Paper.A4);
        assertThat(all.out.shown()).isEqualTo("out");
        assertThat(all.budget.read(text)).isEqualTo(new TimeOption("10s").read(text));
        assertThat(all.json.isWished()).isFalse();
        assertThat(all.wishes.gift().read(Unit.CENTIMETRE)).isEmpty();
        assertThat(all.wishes.gift().named()).isEmpty();
        text.check();
    }

    @Test
    void what_is_typed_counts() {
        All all = typed(
                "-",
                "--out",
                "/",
                "--guide",
                "full",
                "--paper",
                "a4",
                "--language",
                "fr",
                "--json",
                "--gift",
                "box 30 x 20 x 8",
                "--tie",
                "errand wrap",
                "--size",
                "40",
                "--free",
                "--proposals",
                "2",
                "--seed",
                "7");
        assertThat(all.print.read(new OptionText(), Ruler.EIGHTHS))
                .isEqualTo(new PrintOptions.Asked(Paper.A4, Language.FRENCH, GuideLength.FULL, Ruler.EIGHTHS));
        assertThat(all.out.shown()).isEqualTo("/");
        assertThat(all.json.isWished()).isTrue();
        assertThat(all.wishes.gift().named()).contains(Tie.ERRAND);
        assertThat(all.wishes.gift().read(Unit.CENTIMETRE).orElseThrow().tie()).isEqualTo(Tie.ERRAND);
        assertThat(all.wishes.words())
                .isEqualTo(WishWords.NOTHING
                        .with(WishField.SIZE, "40")
                        .with(WishField.FREE, "yes")
                        .with(WishField.PROPOSALS, "2")
                        .with(WishField.SEED, "7"));
        assertThat(all.wishes.proposals()).isEqualTo("2");
        assertThat(all.wishes.seed()).isEqualTo("7");
    }

    @Test
    void what_cannot_be_used_is_told_at_once() {
        All all = typed(
                "scraps.csv",
                "--out",
                "out",
                "--guide",
                "long",
                "--paper",
                "a5",
                "--budget",
                "soon",
                "--language",
                "tide");
        OptionText text = new OptionText();
        all.print.read(text, Ruler.EIGHTHS);
        all.budget.read(text);
        assertThatThrownBy(text::check)
                .isInstanceOfSatisfying(
                        BadInputException.class,
                        e -> assertThat(e.in(Language.ENGLISH)).hasSize(4));
        assertThatThrownBy(() -> typed("scraps.csv")).hasMessageContaining("--out");
        UnitOption unit = new UnitOption();
        new CommandLine(CommandLine.Model.CommandSpec.create()
                        .addMixin("unit", CommandLine.Model.CommandSpec.forAnnotatedObject(unit)))
                .parseArgs("--unit", "ell");
        assertThatThrownBy(unit::ruler).isInstanceOf(BadInputException.class).hasMessageContaining("write in or cm");
    }
}
