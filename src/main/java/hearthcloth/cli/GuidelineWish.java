package hearthcloth.cli;

import hearthcloth.cli.io.InputText;
import hearthcloth.cli.io.Shell;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.SentCloth;
import hearthcloth.guideline.SizeRule;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.file.PlanReader;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.stash.Stash;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.wrap.Placing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A guideline in the place of wishes of one's own. */
final class GuidelineWish {

    /** What a guideline says itself, so that it is not wished beside it. */
    private static final List<String> SAID = List.of(
            "--gift",
            "--tie",
            "--outside",
            "--turned",
            "--off-middle",
            "--show",
            "--size",
            "--hearth",
            "--bars",
            "--rounds",
            "--order",
            "--free",
            "--blocks",
            "--setting",
            "--scraps",
            "--seam",
            "--hem",
            "--corner",
            "--fell",
            "--leeway",
            "--trim",
            "--least-piece",
            "--clearance",
            "--most-joins",
            "--fabrics",
            "--unit");

    @Option(names = "--guideline", paramLabel = "IDEA.json")
    @Nullable
    private String file;

    @Option(names = "--favourite", paramLabel = "FABRIC")
    @Nullable
    private String favourite;

    @Spec(Spec.Target.MIXEE)
    @Nullable
    private CommandSpec command;

    boolean isGiven() {
        return file != null;
    }

    /**
     * The guideline.
     *
     * @throws BadInputException with a sentence for each field that cannot be used
     */
    Guideline read(Shell shell) {
        CommandSpec spec = java.util.Objects.requireNonNull(command);
        List<String> twice = SAID.stream()
                .filter(name -> spec.commandLine().getParseResult().hasMatchedOption(name))
                .toList();
        if (!twice.isEmpty()) {
            throw new BadInputException(twice.stream()
                    .map(name -> TypingSentences.guidelineTwice(Argument.text(name)))
                    .toArray(Sentence[]::new));
        }
        return guideline(java.util.Objects.requireNonNull(file), shell);
    }

    /** Reads a guideline file. */
    static Guideline guideline(String name, Shell shell) {
        GuidelineFile.Reading reading = GuidelineFile.read(InputText.read(name, shell.in()));
        if (reading instanceof GuidelineFile.Reading.Read read) {
            return read.guideline();
        }
        throw faulty(name, ((GuidelineFile.Reading.Faulty) reading).said());
    }

    /** Reads the cloth of a plan file. */
    static SentCloth cloth(String name, Shell shell) {
        PlanReader.Reading reading = PlanReader.read(InputText.read(name, shell.in()));
        if (reading instanceof PlanReader.Reading.Read read) {
            return read.cloth();
        }
        throw faulty(name, ((PlanReader.Reading.Faulty) reading).said());
    }

    private static BadInputException faulty(String name, List<Sentence> faults) {
        List<Sentence> sentences = new ArrayList<>();
        sentences.add(
                name.equals("-")
                        ? TypingSentences.unusableInput("input")
                        : TypingSentences.unusable(Argument.text(ListWords.plain(name))));
        sentences.addAll(faults);
        return new BadInputException(sentences.toArray(new Sentence[0]));
    }

    Ask ask(@Nullable String proposals, @Nullable String seed, Stash stash) {
        OptionText text = new OptionText();
        int count = text.whole("--proposals", proposals, 4, 1, 12);
        int number = text.whole("--seed", seed, 1, 0, 999_999_999);
        text.check();
        Optional<String> named = Optional.ofNullable(favourite);
        if (named.isPresent() && stash.fabric(named.get()).isEmpty()) {
            String there = String.join(
                    ", ", stash.fabrics().stream().map(fabric -> fabric.name()).toList());
            throw new BadInputException(TypingSentences.guidelineFavourite(
                    Argument.text(ListWords.plain(there)), Argument.text(ListWords.plain(named.get()))));
        }
        return new Ask(named, count, number);
    }

    static Fitted fit(
            Guideline guideline, Stash stash, Ask ask, int effort, Budget budget, Consumer<PlanProgress> seen) {
        return GuidelinePlanner.fit(guideline, stash, ask, effort, budget, seen);
    }

    /** What the guideline's cloth is for, where it is for a gift. */
    static Optional<GiftWish> gift(Guideline guideline) {
        return guideline.size() instanceof SizeRule.ForGift gift
                ? Optional.of(new GiftWish(gift.gift(), gift.tie(), Placing.CENTRED))
                : Optional.empty();
    }

    static Ruler ruler(Guideline guideline) {
        return guideline.told().ruler();
    }
}
