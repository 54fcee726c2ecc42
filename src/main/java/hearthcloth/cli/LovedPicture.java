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
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A picture she loves, whose colours a cloth is to have as near as her heap comes. */
final class LovedPicture {

    /** Five to seven colours make a palette. */
    private static final int COLOURS = 6;

    @Option(
            names = "--like",
            paramLabel = "PICTURE",
            description = "A picture whose colours you love; only the fabrics nearest to its main colours are used.")
    @Nullable
    private String name;

    /** The wishes with the fabrics nearest to the picture's colours; the same where no picture was given. */
    WishWords in(WishWords words, Stash stash, Shell shell) {
        if (name == null) {
            return words;
        }
        List<PictureColours.Main> colours;
        try {
            colours = PictureColours.of(PhotoFile.read(name, shell.in()), COLOURS);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(ListWords.plain(name) + ": " + e.getMessage());
        }
        List<NearestFabrics.Match> matches = NearestFabrics.of(
                colours.stream().map(PictureColours.Main::colour).toList(), stash);
        shell.err().println("Note: " + ListWords.line(told(colours, matches)));
        return matches.isEmpty()
                ? words
                : words.with(WishField.FABRICS, String.join("\n", NearestFabrics.names(matches, stash)));
    }

    private static String told(List<PictureColours.Main> colours, List<NearestFabrics.Match> matches) {
        List<String> said = new ArrayList<>();
        for (PictureColours.Main main : colours) {
            String near = matches.stream()
                    .filter(match -> match.wished().equals(main.colour()))
                    .map(match -> match.fabric().name())
                    .findFirst()
                    .orElse("nothing near it");
            said.add(ColourName.of(main.colour()) + " " + Math.round(100 * main.share()) + " %, " + near);
        }
        return "The picture's colours and your nearest fabrics: " + String.join("; ", said) + ".";
    }
}
