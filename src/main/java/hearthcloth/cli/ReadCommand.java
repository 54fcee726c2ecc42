package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.PhotoFile;
import hearthcloth.cli.io.ProgressLine;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.report.ReadReport;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.ReadingOverlay;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.Rulers;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.FabricGroup;
import hearthcloth.work.photo.GatheredStash;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code read}: from a photograph of scraps beside a sheet of paper to a stash file. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Reads pieces off a photograph and writes them as a stash file.",
        description = {
            "",
            "Lay the pieces flat and apart on ground they stand out from, with a sheet of paper, a bank card or a",
            "cutting mat of known size among them, and take one picture from above, everything whole in it. Every",
            "piece is measured by the sheet. What is doubtful is said and left out, unless you want it written."
        },
        parameterListHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  hearthcloth read table.jpg --sheet letter --out scraps.csv",
            "  hearthcloth read table.jpg --sheet a4 --out scraps.csv --picture read.png",
            "      and draws what was read on the picture",
            "  hearthcloth read mat.jpg --sheet \"12 x 18 in\" --out scraps.csv --unit cm",
            "  hearthcloth plan scraps.csv --out out",
            "      plans cloths from what was read",
            "",
            "The file has a line for each fabric and size: the largest rectangle that surely can be cut from the",
            "piece, rounded down to your ruler's marks. Pieces that look alike are taken for one fabric and called",
            "by their colour; give them your own names, and say which have a right side, in the file.",
            "",
            "Ends with 0 when a stash file was written, 1 when no piece could be (and says why), 2 when the picture",
            "or something typed cannot be used (and says what to do)."
        })
final class ReadCommand implements Callable<Integer> {

    private final Shell shell;

    @Parameters(index = "0", paramLabel = "PHOTO", description = "A JPEG or PNG; - reads standard input.")
    private String photo = "";

    @Option(
            names = "--sheet",
            paramLabel = "SHEET",
            required = true,
            description =
                    "What of known size lies in the picture: sheet (the measuring sheet; \"sheet 19.9 cm\" with what"
                            + " its line measures), a4, letter, card (a bank card), or a size such as \"12 x 18 in\".")
    private String sheetName = "";

    @Option(names = "--out", paramLabel = "FILE.csv", required = true, description = "The stash file to write.")
    private String outName = "";

    @Option(names = "--picture", paramLabel = "FILE.png", description = "Also draw what was read on the picture.")
    @Nullable
    private String pictureName;

    @Option(
            names = "--unit",
            paramLabel = "in|cm",
            description = "Ruler in hand; inches with letter, centimetres with a4, otherwise as the sheet is written.")
    @Nullable
    private String unit;

    @Option(names = "--keep-doubtful", description = "Also write the pieces with a doubt.")
    private boolean keepDoubtful;

    @Option(names = "--replace", description = "Write over files that are there already.")
    private boolean replace;

    ReadCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        ReferenceSheet sheet = text.read("--sheet", sheetName, ReferenceSheet.A4, ReferenceSheet::parse);
        text.check();
        Ruler ruler = Rulers.wished(unit).orElseGet(() -> usual(sheet));
        OutputFile out = OutputFile.of("--out", outName, ".csv", replace);
        Optional<OutputFile> picture =
                Optional.ofNullable(pictureName).map(name -> OutputFile.of("--picture", name, ".png", replace));
        byte[] bytes = PhotoFile.read(photo, shell.in());
        try {
            Reading.Read read = read(bytes, sheet);
            picture.ifPresent(file -> file.write(ReadingOverlay.png(bytes, read, ruler)));
            return written(read, ruler, out, picture);
        } catch (OutOfMemoryError e) {
            throw new BadInputException("There was not enough memory for this picture; send a smaller one.");
        }
    }

    private Ruler usual(ReferenceSheet sheet) {
        return ListWords.unitIn(sheetName)
                .map(Rulers::of)
                .orElse(sheet.equals(ReferenceSheet.LETTER) ? Ruler.EIGHTHS : Ruler.MILLIMETRES);
    }

    private Reading.Read read(byte[] bytes, ReferenceSheet sheet) {
        ProgressLine progress = new ProgressLine(shell, Voice.english(Ruler.EIGHTHS));
        Reading reading = PhotoReader.read(
                bytes, sheet, (share, what) -> progress.say("reading: " + Math.round(share * 100) + " %, " + what));
        progress.clear();
        if (reading instanceof Reading.Read read) {
            return read;
        }
        String name = photo.equals("-") ? "The picture" : ListWords.plain(photo);
        throw new BadInputException(List.of(
                name + " cannot be read:",
                "  " + ListWords.line(((Reading.Refused) reading).reason().english())));
    }

    private int written(Reading.Read read, Ruler ruler, OutputFile out, Optional<OutputFile> picture) {
        List<FabricGroup> groups = FabricGroup.of(read.pieces());
        Predicate<ReadPiece> taken = piece -> keepDoubtful || piece.doubts().isEmpty();
        GatheredStash gathered = GatheredStash.of(groups, ruler, taken);
        ReadReport report = new ReadReport(shell.out(), Voice.english(ruler));
        report.found(read, groups);
        report.doubts(read, taken);
        picture.ifPresent(file -> report.line("Drawn on the picture: " + file.shown() + "."));
        if (gathered.lines() == 0) {
            shell.err().println("No stash file was written, since no piece can be put into it as it is.");
            return 1;
        }
        out.write(gathered.write(ruler).getBytes(StandardCharsets.UTF_8));
        report.wrote(out.shown(), gathered);
        return 0;
    }
}
