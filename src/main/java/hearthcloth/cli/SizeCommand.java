package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.GiftOptions;
import hearthcloth.cli.option.JsonOption;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.cli.option.UnitOption;
import hearthcloth.cli.report.JsonText;
import hearthcloth.cli.report.SizeJson;
import hearthcloth.cli.report.SizeReport;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.Rulers;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Tie;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code size}: how large a cloth ties round a gift, or what a cloth ties round. */
@Command(name = "size", mixinStandardHelpOptions = true, sortOptions = false)
final class SizeCommand implements Callable<Integer> {

    private static final double LEAST_CM = 5;
    private static final double MOST_CM = 500;

    private final Shell shell;

    @Mixin
    private GiftOptions gift = new GiftOptions();

    @Option(names = "--cloth", paramLabel = "SIZE")
    @Nullable
    private String cloth;

    @Mixin
    private UnitOption unit = new UnitOption();

    @Option(names = "--steps")
    private boolean steps;

    @Mixin
    private LanguageOption language = new LanguageOption();

    @Mixin
    private JsonOption json = new JsonOption();

    SizeCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        String typed = gift.gift();
        if ((typed == null) == (cloth == null)) {
            throw new BadInputException(TypingSentences.sizeWhich());
        }
        Ruler ruler = unit.ruler()
                .orElseGet(() -> ListWords.unitIn(typed == null ? String.valueOf(cloth) : typed)
                        .map(Rulers::of)
                        .orElse(Ruler.EIGHTHS));
        if (cloth == null) {
            gift.read(bare()).ifPresent(wish -> forGift(wish, ruler));
        } else {
            forCloth(clothSize(cloth, ruler), ruler);
        }
        return 0;
    }

    /** The unit of numbers without one; none where no ruler was asked for. */
    private @Nullable Unit bare() {
        return unit.ruler().map(Ruler::unit).orElse(null);
    }

    private void forGift(GiftWish wish, Ruler ruler) {
        Tie named = gift.named().orElse(null);
        if (json.isWished()) {
            shell.out().println(JsonText.of(SizeJson.forGift(wish.gift(), named, ruler)));
            return;
        }
        SizeReport report = new SizeReport(shell.out(), voice(ruler));
        report.gift(wish.gift(), named);
        if (steps) {
            report.steps(wish.gift(), wish.tie());
        }
    }

    private void forCloth(Size size, Ruler ruler) {
        Tie named = gift.named().orElse(null);
        if (json.isWished()) {
            shell.out().println(JsonText.of(SizeJson.forCloth(size, named, ruler)));
        } else {
            new SizeReport(shell.out(), voice(ruler)).cloth(size, named);
        }
    }

    private Voice voice(Ruler ruler) {
        OptionText text = new OptionText();
        Voice voice = Voice.of(language.read(text), ruler);
        text.check();
        return voice;
    }

    private Size clothSize(String written, Ruler ruler) {
        OptionText text = new OptionText();
        Size size = text.read("--cloth", written, Size.square(ruler.step()), given -> {
            Size read = Measures.size(given, bare());
            for (double cm : new double[] {
                read.width().in(Unit.CENTIMETRE), read.height().in(Unit.CENTIMETRE)
            }) {
                if (cm < LEAST_CM || cm > MOST_CM) {
                    throw new RefusedException(TypingSentences.sizeReach(Argument.text(given)));
                }
            }
            return read;
        });
        text.check();
        return size;
    }
}
