package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.cli.report.JsonText;
import hearthcloth.cli.report.SizeJson;
import hearthcloth.cli.report.SizeReport;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.Rulers;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code size}: how large a cloth ties round a gift, or what a cloth ties round. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Says how large a cloth a gift needs, or what a cloth ties round.",
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  hearthcloth size --gift \"box 30 x 20 x 8 cm\"",
            "  hearthcloth size --gift \"bottle 3 x 12 in\"",
            "  hearthcloth size --gift \"box 12 x 8 x 3 in\" --tie \"errand wrap\" --unit cm",
            "  hearthcloth size --gift \"two bottles 8 x 30 cm\" --steps",
            "  hearthcloth size --cloth \"38 1/2 in\"",
            "  hearthcloth size --cloth \"90 x 100 cm\"",
            "",
            "A gift's measures are its outside ones, in any order you like for the base: box length x width x",
            "height, bottle diameter x height, ball diameter, books height x width x thickness (of one of two),",
            "roll diameter x length. Sizes are those of the finished, hemmed cloth."
        })
final class SizeCommand implements Callable<Integer> {

    private static final double LEAST_CM = 5;
    private static final double MOST_CM = 500;

    private final Shell shell;

    @Option(names = "--gift", paramLabel = "GIFT", description = "What is to be wrapped: \"box 30 x 20 x 8 cm\".")
    @Nullable
    private String gift;

    @Option(names = "--tie", paramLabel = "TIE", description = "One tie only, such as \"errand wrap\".")
    @Nullable
    private String tie;

    @Option(names = "--cloth", paramLabel = "SIZE", description = "A finished cloth: \"38 1/2 in\" or \"90 x 100 cm\".")
    @Nullable
    private String cloth;

    @Option(names = "--unit", paramLabel = "in|cm", description = "Say sizes in inches or centimetres; as written.")
    @Nullable
    private String unit;

    @Option(names = "--steps", description = "Also say how the tie is done, step by step; best with --tie.")
    private boolean steps;

    @Option(names = "--json", description = "Say it as JSON, for programs; lengths in nanometres.")
    private boolean json;

    SizeCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        if ((gift == null) == (cloth == null)) {
            throw new BadInputException(
                    "Say either what is to be wrapped, --gift \"box 30 x 20 x 8 cm\", or which cloth there"
                            + " is, --cloth \"38 1/2 in\".");
        }
        Ruler ruler = Rulers.wished(unit)
                .orElseGet(() -> ListWords.unitIn(gift == null ? String.valueOf(cloth) : gift)
                        .map(Rulers::of)
                        .orElse(Ruler.EIGHTHS));
        SizeReport report = new SizeReport(shell.out(), ruler);
        if (cloth == null) {
            Unit assumed = unit == null ? null : ruler.unit();
            GiftWish.read(gift, tie, assumed).ifPresent(wish -> {
                if (json) {
                    shell.out()
                            .println(
                                    JsonText.of(SizeJson.forGift(wish.gift(), tie == null ? null : wish.tie(), ruler)));
                    return;
                }
                report.gift(wish.gift(), tie == null ? null : wish.tie());
                if (steps) {
                    report.steps(wish.gift(), wish.tie());
                }
            });
        } else if (json) {
            shell.out().println(JsonText.of(SizeJson.forCloth(clothSize(cloth, ruler), namedTie(), ruler)));
        } else {
            report.cloth(clothSize(cloth, ruler), namedTie());
        }
        return 0;
    }

    private hearthcloth.wrap.@Nullable Tie namedTie() {
        return tie == null ? null : GiftWish.tie(tie);
    }

    private Size clothSize(String written, Ruler ruler) {
        OptionText text = new OptionText();
        Size size = text.read("--cloth", written, Size.square(ruler.step()), given -> {
            Size read = Measures.size(given, unit == null ? null : ruler.unit());
            for (double cm : new double[] {
                read.width().in(Unit.CENTIMETRE), read.height().in(Unit.CENTIMETRE)
            }) {
                if (cm < LEAST_CM || cm > MOST_CM) {
                    throw new MeasureException("\"" + given
                            + "\" is out of reach; a cloth is from 5 cm to 5 m, so check the number and its unit");
                }
            }
            return read;
        });
        text.check();
        return size;
    }
}
