package hearthcloth.web.gallery;

import hearthcloth.colour.Colour;
import hearthcloth.draw.ClothPhotograph;
import hearthcloth.photo.PictureColours;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.stash.FabricSaid;
import hearthcloth.wish.NearestFabrics;
import hearthcloth.words.Language;
import hearthcloth.words.choosing.ChoosingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The colours of a picture she loves, a garden or a wall, and the fabrics of hers that lie nearest them. Of the picture
 * itself nothing is kept.
 *
 * @param colours that which takes most of the picture first
 */
public record LovedPalette(List<Main> colours) {

    /** A palette is of five to seven colours; a picture of fewer has fewer. */
    private static final int COLOURS = 6;

    private static final String SETTING = "wish.loved";

    /** One of them, and how many hundredths of the picture it takes. */
    public record Main(Colour colour, long percent) {}

    /**
     * A colour beside the fabric nearest to it.
     *
     * @param hex of the colour
     * @param name what the colour is called
     * @param fill of the fabric's swatch; empty where no fabric lies near
     * @param fabric its name, or that none lies near
     */
    public record Row(String hex, String name, long percent, String fill, String fabric) {}

    public LovedPalette {
        colours = List.copyOf(colours);
    }

    /**
     * Looks at a picture that was sent.
     *
     * @throws hearthcloth.draw.RefusedPictureException with a sentence, where it is no picture or too large
     */
    static LovedPalette seen(byte[] file) {
        return new LovedPalette(PictureColours.of(ClothPhotograph.jpeg(file), COLOURS).stream()
                .map(main -> new Main(main.colour(), Math.round(100 * main.share())))
                .toList());
    }

    /** The one she wished last; of no colours where she wishes none. */
    static LovedPalette of(Store store) {
        String kept = store.setting(SETTING).orElse("");
        return new LovedPalette(kept.lines()
                .map(line -> line.split(" ", -1))
                .map(parts -> new Main(Colour.parse(parts[0]), Long.parseLong(parts[1])))
                .toList());
    }

    void keep(Store store) {
        store.set(
                SETTING,
                colours.stream()
                        .map(main -> main.colour.hex() + " " + main.percent)
                        .collect(Collectors.joining("\n")));
    }

    static void clear(Store store) {
        store.unset(SETTING);
    }

    private List<NearestFabrics.Match> matches(Stash stash) {
        return NearestFabrics.of(colours.stream().map(Main::colour).toList(), stash);
    }

    /** The names of the fabrics nearest its colours, the one for the hearth first; none where none lies near. */
    List<String> fabrics(Stash stash) {
        return NearestFabrics.names(matches(stash), stash);
    }

    /** Each colour with its fabric. */
    List<Row> rows(Stash stash, Swatches swatches, Language language) {
        List<NearestFabrics.Match> matches = matches(stash);
        List<Row> rows = new ArrayList<>();
        for (Main main : colours) {
            Optional<Fabric> near = matches.stream()
                    .filter(match -> match.wished().equals(main.colour))
                    .map(NearestFabrics.Match::fabric)
                    .findFirst();
            rows.add(new Row(
                    main.colour.hex(),
                    FabricSaid.colour(main.colour, language),
                    main.percent,
                    near.map(swatches::fill).orElse(""),
                    near.map(Fabric::name).orElseGet(ChoosingWords.in(language)::lovedNothing)));
        }
        return rows;
    }
}
