package hearthcloth.web.gift;

import hearthcloth.wish.WishField;
import hearthcloth.wish.WishWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What she wishes of a cloth of scraps beside its size, in her own words; whatever is empty the stash decides.
 *
 * @param said the fields she filled in, by their names on the page
 */
public record ScrapForm(Map<String, String> said) {

    /** The stash decides everything. */
    public static final ScrapForm OPEN = new ScrapForm(Map.of());

    /** The field of the pieces that have to be in, their ids parted by spaces. */
    private static final String WITH = "with";

    /** The field of the piece in the middle, by its id. */
    private static final String MIDDLE = "middle";

    private static final Map<String, WishField> FIELDS = Map.of(
            "scraps",
            WishField.SCRAPS,
            WITH,
            WishField.WITH,
            MIDDLE,
            WishField.MIDDLE,
            "most-trim",
            WishField.MOST_TRIM,
            "sizes",
            WishField.SIZES,
            "bands",
            WishField.BANDS);

    public ScrapForm {
        said = Map.copyOf(said);
    }

    /**
     * What was filled in.
     *
     * @param with ids of the pieces that have to be in
     */
    public static ScrapForm read(Function<String, String> field, List<String> with) {
        Map<String, String> said = new TreeMap<>();
        for (String name : FIELDS.keySet()) {
            String text = (name.equals(WITH) ? String.join(" ", with) : field.apply(name)).strip();
            if (!text.isEmpty()) {
                said.put(name, text);
            }
        }
        return new ScrapForm(said);
    }

    /** As {@link #kept} wrote it. */
    static ScrapForm parse(String kept) {
        Map<String, String> said = new TreeMap<>();
        kept.lines().map(line -> line.split("=", 2)).forEach(line -> {
            if (line.length == 2 && FIELDS.containsKey(line[0])) {
                said.put(line[0], line[1]);
            }
        });
        return new ScrapForm(said);
    }

    /** A line for each field. */
    String kept() {
        return new TreeMap<>(said)
                .entrySet().stream()
                        .map(field -> field.getKey() + "=" + field.getValue().replaceAll("\\R", " "))
                        .collect(Collectors.joining("\n"));
    }

    /** What stands in a field; empty where nothing does. */
    public String of(String name) {
        return said.getOrDefault(name, "");
    }

    /** Whether a piece has to be in the cloth. */
    public boolean isIn(String piece) {
        return List.of(of(WITH).split(" ", -1)).contains(piece);
    }

    /** The same without pieces that are gone; {@code there} are the ids of those that are not. */
    ScrapForm among(List<String> there) {
        Map<String, String> known = new TreeMap<>(said);
        List<String> with = new ArrayList<>(List.of(of(WITH).split(" ", -1)));
        with.retainAll(there);
        known.remove(WITH);
        if (!with.isEmpty()) {
            known.put(WITH, String.join(" ", with));
        }
        if (!there.contains(of(MIDDLE))) {
            known.remove(MIDDLE);
        }
        return new ScrapForm(known);
    }

    /** As the shell has them. */
    WishWords in(WishWords words) {
        WishWords all = words;
        for (Map.Entry<String, String> field : said.entrySet()) {
            WishField known = FIELDS.get(field.getKey());
            all = known == null ? all : all.with(known, field.getValue());
        }
        return all;
    }
}
