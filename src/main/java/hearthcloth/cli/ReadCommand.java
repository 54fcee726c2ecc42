package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.PhotoFile;
import hearthcloth.cli.io.ProgressLine;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
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
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
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
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code read}: from a photograph of scraps beside a sheet of paper to a stash file. */
@Command(name = "read", mixinStandardHelpOptions = true, sortOptions = false)
final class ReadCommand implements Callable<Integer> {

    private final Shell shell;

    @Parameters(index = "0", paramLabel = "PHOTO")
    private String photo = "";

    @Option(names = "--sheet", paramLabel = "SHEET", required = true)
    private String sheetName = "";

    @Option(names = "--out", paramLabel = "FILE.csv", required = true)
    private String outName = "";

    @Option(names = "--picture", paramLabel = "FILE.png")
    @Nullable
    private String pictureName;

    @Option(names = "--unit", paramLabel = "in|cm")
    @Nullable
    private String unit;

    @Option(names = "--keep-doubtful")
    private boolean keepDoubtful;

    @Option(names = "--replace")
    private boolean replace;

    @Mixin
    private LanguageOption language = new LanguageOption();

    ReadCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Language spoken = language.read(text);
        ReferenceSheet sheet = text.read("--sheet", sheetName, ReferenceSheet.A4, ReferenceSheet::parse);
        text.check();
        Voice voice = Voice.of(spoken, Rulers.wished(unit).orElseGet(() -> usual(sheet)));
        OutputFile out = OutputFile.of("--out", outName, ".csv", replace);
        Optional<OutputFile> picture =
                Optional.ofNullable(pictureName).map(name -> OutputFile.of("--picture", name, ".png", replace));
        byte[] bytes = PhotoFile.read(photo, shell.in());
        try {
            Reading.Read read = read(bytes, sheet, voice);
            picture.ifPresent(file -> file.write(ReadingOverlay.png(bytes, read, voice.ruler())));
            return written(read, voice, out, picture);
        } catch (OutOfMemoryError e) {
            throw new BadInputException(TypingSentences.readMemory());
        }
    }

    private Ruler usual(ReferenceSheet sheet) {
        return ListWords.unitIn(sheetName)
                .map(Rulers::of)
                .orElse(sheet.equals(ReferenceSheet.LETTER) ? Ruler.EIGHTHS : Ruler.MILLIMETRES);
    }

    private Reading.Read read(byte[] bytes, ReferenceSheet sheet, Voice voice) {
        ProgressLine progress = new ProgressLine(shell, voice);
        Reading reading = PhotoReader.read(
                bytes,
                sheet,
                (share, what) ->
                        progress.say(TypingSentences.progress(Argument.percent(Math.round(share * 100)), "reading")
                                .in(voice)));
        progress.clear();
        if (reading instanceof Reading.Read read) {
            return read;
        }
        Sentence head = photo.equals("-")
                ? TypingSentences.readCannotInput()
                : TypingSentences.readCannot(Argument.text(ListWords.plain(photo)));
        throw new BadInputException(List.of(
                head.in(voice),
                "  " + ListWords.line(((Reading.Refused) reading).reason().in(voice))));
    }

    private int written(Reading.Read read, Voice voice, OutputFile out, Optional<OutputFile> picture) {
        List<FabricGroup> groups = FabricGroup.of(read.pieces());
        Predicate<ReadPiece> taken = piece -> keepDoubtful || !piece.isDoubted();
        GatheredStash gathered = GatheredStash.of(groups, voice, taken);
        ReadReport report = new ReadReport(shell.out(), voice);
        report.found(read, groups);
        report.doubts(read, taken);
        picture.ifPresent(file -> report.line(
                TypingSentences.readDrawn(Argument.text(file.shown())).in(voice)));
        if (gathered.lines() == 0) {
            shell.err().println(TypingSentences.readNothing().in(voice));
            return 1;
        }
        out.write(gathered.write(voice.ruler()).getBytes(StandardCharsets.UTF_8));
        report.wrote(out.shown(), gathered);
        return 0;
    }
}
