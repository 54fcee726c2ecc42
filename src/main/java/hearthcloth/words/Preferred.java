package hearthcloth.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a browser says its reader would like, before anything is chosen.
 *
 * @param region where she is, as two letters of ISO 3166 or three figures of UN M49; where it is not said, the place where
 *     most of those live who speak the language (docs/sources.md#likely-regions)
 */
public record Preferred(Language language, String region) {

    /** Where nothing is said. */
    public static final Preferred UNSAID = new Preferred(Language.ENGLISH, "US");

    /** One entry of the list. */
    private record Entry(String tag, double weight) {}

    /**
     * The first of our languages in the order of the reader's wishes; English where none is wished.
     *
     * @param header the field Accept-Language of a request, as RFC 9110 has it (docs/sources.md#accept-language); anything
     *     that cannot be read is passed over
     */
    public static Preferred of(String header) {
        List<Entry> entries = entries(header);
        for (Entry entry : entries) {
            Optional<Language> language = Language.tagged(entry.tag());
            if (language.isPresent()) {
                return new Preferred(language.get(), region(language.get(), entries));
            }
        }
        return UNSAID;
    }

    private static List<Entry> entries(String header) {
        List<Entry> entries = new ArrayList<>();
        for (String part : header.split(",", -1)) {
            String[] halves = part.strip().split("\\s*;\\s*q\\s*=\\s*", 2);
            double weight = halves.length == 1
                    ? 1
                    : halves[1].matches("[01](\\.\\d{0,3})?") ? Double.parseDouble(halves[1]) : 0;
            if (weight > 0 && halves[0].matches("[A-Za-z0-9-]{2,35}")) {
                entries.add(new Entry(halves[0], weight));
            }
        }
        entries.sort(Comparator.comparingDouble((Entry entry) -> -entry.weight()));
        return entries;
    }

    private static String region(Language language, List<Entry> entries) {
        for (Entry entry : entries) {
            String[] parts = entry.tag().split("-", -1);
            for (int i = 1; i < parts.length && parts[0].equalsIgnoreCase(language.tag()); i++) {
                if (parts[i].matches("[A-Za-z]{2}|\\d{3}")) {
                    return parts[i].toUpperCase(Locale.ROOT);
                }
            }
        }
        return switch (language) {
            case ENGLISH -> "US";
            case KOREAN -> "KR";
            case JAPANESE -> "JP";
            case FRENCH -> "FR";
            case GERMAN -> "DE";
            case SPANISH -> "ES";
        };
    }
}
