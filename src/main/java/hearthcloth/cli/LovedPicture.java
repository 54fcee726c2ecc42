package hearthcloth.cli;

import hearthcloth.cli.io.PhotoFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.colour.ColourName;
import hearthcloth.photo.PictureColours;
import hearthcloth.stash.Stash;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.NearestFabrics;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A picture she loves, whose colours a cloth is to have as near as her heap comes. */
final class LovedPicture {

    /** Five to seven colours make a palette. */
    private static final int COLOURS = 6;

    @Option(names = "--like", paramLabel = "PICTURE")
    @Nullable
    private String name;

    /** The wishes with the fabrics nearest to the picture's colours; the same where no picture was given. */
    WishWords in(WishWords words, Stash stash, Shell shell, Voice voice) {
        if (name == null) {
            return words;
        }
        List<PictureColours.Main> colours;
        try {
            colours = PictureColours.of(PhotoFile.read(name, shell.in()), COLOURS);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(RefusingSentences.wishAt(Argument.text(ListWords.plain(name)), Refusal.of(e)));
        }
        List<NearestFabrics.Match> matches = NearestFabrics.of(
                colours.stream().map(PictureColours.Main::colour).toList(), stash);
        shell.err()
                .println(ListWords.line(
                        TypingSentences.note(told(colours, matches)).in(voice)));
        return matches.isEmpty()
                ? words
                : words.with(WishField.FABRICS, String.join("\n", NearestFabrics.names(matches, stash)));
    }

    private static Sentence told(List<PictureColours.Main> colours, List<NearestFabrics.Match> matches) {
        List<Sentence> said = colours.stream()
                .map(main -> near(
                        main,
                        matches.stream()
                                .filter(match -> match.wished().equals(main.colour()))
                                .map(match -> match.fabric().name())
                                .findFirst()))
                .toList();
        return TypingSentences.pictureColours(Argument.row(Argument.Joined.SEMICOLONS, said));
    }

    private static Sentence near(PictureColours.Main main, Optional<String> fabric) {
        Argument colour = Argument.text(ColourName.of(main.colour()));
        Argument share = Argument.percent(Math.round(100 * main.share()));
        return fabric.map(name -> TypingSentences.pictureNear(colour, Argument.text(name), share))
                .orElseGet(() -> TypingSentences.pictureNothing(colour, share));
    }
}
