package hearthcloth.cli.help;

import hearthcloth.words.helping.HelpingWords;
import hearthcloth.wrap.Tie;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is said of a command.
 *
 * @param header what it does, in one sentence
 * @param about how it does it; empty where the header says all
 * @param options the heading of its options
 * @param more what stands below the options
 */
record CommandWords(String header, String about, String options, List<Block> more) {

    private static final String BOX = "box 30 x 20 x 8 cm";
    private static final String SCRAPS = "examples/scraps.csv";

    private static final String ERRAND = Tie.ERRAND.words();

    CommandWords {
        more = List.copyOf(more);
    }

    /** The words of the command of this name. */
    static CommandWords of(String command, HelpingWords w) {
        String header = header(command, w);
        String options = w.heading("options");
        return switch (command) {
            case "hearthcloth" -> new CommandWords(header, w.mainAbout(), options, program(w));
            case "help" -> new CommandWords(header, w.helpAbout(), options, List.of());
            case "plan" -> new CommandWords(header, w.planAbout(), w.heading("wishes"), plan(w));
            case "kits" -> new CommandWords(header, w.kitsAbout(), w.heading("wishes"), kits(w));
            case "read" -> new CommandWords(header, w.readAbout(), options, read(w));
            case "size" -> new CommandWords(header, w.sizeAbout(), options, size(w));
            case "guideline" -> new CommandWords(header, w.guidelineAbout(), w.heading("idea"), guideline(w));
            case "idea" -> new CommandWords(header, w.ideaAbout(), options, idea(w));
            case "sheet" -> new CommandWords(header, w.sheetAbout(), options, sheet(w));
            case "completion" -> new CommandWords(header, "", options, completion(w));
            default -> throw new IllegalStateException("nothing is said of " + command);
        };
    }

    /** What the command of this name does, in one sentence. */
    static String header(String command, HelpingWords w) {
        return switch (command) {
            case "hearthcloth" -> w.mainHeader();
            case "help" -> w.helpHeader();
            case "plan" -> w.planHeader();
            case "kits" -> w.kitsHeader();
            case "read" -> w.readHeader();
            case "size" -> w.sizeHeader();
            case "guideline" -> w.guidelineHeader();
            case "idea" -> w.ideaHeader();
            case "sheet" -> w.sheetHeader();
            case "completion" -> w.completionHeader();
            default -> throw new IllegalStateException("nothing is said of " + command);
        };
    }

    private static List<Block> program(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("ends")),
                new Block.Meaning("0", w.mainDone()),
                new Block.Meaning("1", w.mainShort()),
                new Block.Meaning("2", w.mainWrong()),
                new Block.Heading(w.heading("try")),
                ours("", "plan", "examples/scraps.csv", "--gift", BOX, "--out", "out"),
                ours("", "size", "--gift", BOX),
                ours("", "read", "table.jpg", "--sheet", "a4", "--out", "scraps.csv"),
                new Block.Prose(w.mainMore(String.join(" ", "hearthcloth", "help", "plan"))));
    }

    private static Block ours(String says, String... words) {
        String[] all = new String[words.length + 1];
        all[0] = "hearthcloth";
        System.arraycopy(words, 0, all, 1, words.length);
        return Block.example(says, all);
    }

    private static List<Block> plan(HelpingWords w) {
        List<Block> file = List.of(
                new Block.Heading(w.heading("stash")),
                new Block.Prose(w.planCsv()),
                new Block.Line("fabric,width,length,count,colour,faces"),
                new Block.Line(w.planCsvPlain() + ",6 1/2 in,20 in,3,#3f5a4a,same"),
                new Block.Line(w.planCsvOther() + ",44 in,1/2 yd,1,#d8d2c0,right"),
                new Block.Heading(w.heading("examples")));
        List<Block> ends = List.of(
                new Block.Heading(w.heading("ends")),
                new Block.Meaning("0", w.planDone()),
                new Block.Meaning("1", w.planShort()),
                new Block.Meaning("2", w.mainWrong()));
        return Stream.of(file, planExamples(w), ends).flatMap(List::stream).toList();
    }

    private static List<Block> planExamples(HelpingWords w) {
        return List.of(
                ours(w.planExBest(), "plan", SCRAPS, "--out", "out"),
                ours(w.planExGift(), "plan", SCRAPS, "--gift", BOX, "--out", "out"),
                cut(w.planExCut()),
                pairs(w.planExPairs()),
                ours(w.planExFree(), "plan", SCRAPS, "--free", "--size", "30 x 24 in", "--out", "out"),
                ours(w.planExBlocks(), "plan", SCRAPS, "--blocks", "3 x 3", "--out", "out"),
                ours(w.planExIdea(), "plan", SCRAPS, "--guideline", "examples/idea.json", "--out", "out"),
                ours(w.planExInput(), "plan", "-", "--size", "30 x 24 in", "--out", "out"));
    }

    private static Block cut(String says) {
        String[] sewn = {"--seam", "1/4 + 1/2 in", "--hem", "1/4 + 1/4 in", "--out", "out"};
        String[] shape = {"plan", "examples/two-lengths.csv", "--hearth", "18 in", "--bars", "6 in", "--rounds", "2"};
        return ours(says, Stream.of(shape, sewn).flatMap(Stream::of).toArray(String[]::new));
    }

    private static Block pairs(String says) {
        String[] shape = {"plan", "examples/metric.csv", "--size", "70 cm", "--order", "pairs"};
        String[] fabrics = {"--fabrics", "Rope, Slate", "--out", "out"};
        return ours(says, Stream.of(shape, fabrics).flatMap(Stream::of).toArray(String[]::new));
    }

    private static List<Block> kits(HelpingWords w) {
        String heap = "examples/two-hundred.csv";
        return List.of(
                new Block.Heading(w.heading("list")),
                new Block.Prose(w.kitsCsv()),
                new Block.Line("name,size,gift,fabrics"),
                new Block.Line(w.kitsFirst() + ",16 in,,"),
                new Block.Line(w.kitsSecond() + ",," + BOX + ",\"" + w.planCsvPlain() + ", " + w.planCsvOther() + "\""),
                new Block.Heading(w.heading("examples")),
                ours(w.kitsExStudents(), "kits", heap, "--students", "12", "--size", "16 in", "--out", "class"),
                ours(w.kitsExList(), "kits", heap, "--wishes", "examples/season.csv", "--out", "season"),
                new Block.Heading(w.heading("ends")),
                new Block.Meaning("0", w.kitsDone()),
                new Block.Meaning("1", w.kitsShort()),
                new Block.Meaning("2", w.mainWrong()));
    }

    private static List<Block> read(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "read", "table.jpg", "--sheet", "letter", "--out", "scraps.csv"),
                ours(
                        w.readExPicture(),
                        "read",
                        "table.jpg",
                        "--sheet",
                        "a4",
                        "--out",
                        "scraps.csv",
                        "--picture",
                        "read.png"),
                ours("", "read", "mat.jpg", "--sheet", "12 x 18 in", "--out", "scraps.csv", "--unit", "cm"),
                ours(w.readExPlan(), "plan", "scraps.csv", "--out", "out"),
                new Block.Heading(w.heading("stash")),
                new Block.Prose(w.readFile()),
                new Block.Heading(w.heading("ends")),
                new Block.Meaning("0", w.readDone()),
                new Block.Meaning("1", w.readShort()),
                new Block.Meaning("2", w.mainWrong()));
    }

    private static List<Block> size(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "size", "--gift", BOX),
                ours("", "size", "--gift", "bottle 3 x 12 in"),
                ours(w.sizeExTie(), "size", "--gift", "box 12 x 8 x 3 in", "--tie", ERRAND, "--unit", "cm"),
                ours(w.sizeExSteps(), "size", "--gift", "books 21 x 15 x 2 cm", "--steps"),
                ours(w.sizeExCloth(), "size", "--cloth", "38 1/2 in"),
                ours("", "size", "--cloth", "90 x 100 cm"));
    }

    private static List<Block> guideline(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "guideline", "out/1/plan.json", "--name", "Tide", "--out", "idea.json"),
                ours(
                        "",
                        "guideline",
                        "out/1/plan.json",
                        "--size",
                        "16 to 20 in",
                        "--hearth",
                        "30 to 40 %",
                        "--bars",
                        "strips",
                        "--rounds",
                        "2 to 4",
                        "--middle",
                        "favourite",
                        "--out",
                        "idea.json"),
                ours(w.guidelineExFollow(), "plan", "my-scraps.csv", "--guideline", "idea.json", "--out", "mine"),
                ours(w.guidelineExPage(), "idea", "idea.json", "--out", "page.html"));
    }

    private static List<Block> idea(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "idea", "examples/idea.json", "--out", "page.html"),
                ours(w.ideaExFrom(), "idea", "idea.json", "--from", "my-scraps.csv", "--out", "page.html"));
    }

    private static List<Block> sheet(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "sheet", "--out", "sheet.pdf"),
                ours("", "sheet", "--paper", "letter", "--out", "sheet.pdf"),
                ours("", "read", "table.jpg", "--sheet", "sheet", "--out", "scraps.csv"),
                ours(w.sheetExRuler(), "read", "table.jpg", "--sheet", "sheet 19.9 cm", "--out", "scraps.csv"));
    }

    private static List<Block> completion(HelpingWords w) {
        return List.of(
                new Block.Heading(w.heading("examples")),
                ours("", "completion", "fish", ">", "~/.config/fish/completions/hearthcloth.fish"));
    }
}
