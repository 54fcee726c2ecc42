package hearthcloth.words;

import java.util.Locale;
import java.util.Optional;

/** The languages that Hearthcloth speaks, each with its tag of IETF BCP 47 (docs/sources.md#language-tags). */
public enum Language {
    ENGLISH("en", "English"),
    KOREAN("ko", "한국어"),
    JAPANESE("ja", "日本語"),
    FRENCH("fr", "Français"),
    GERMAN("de", "Deutsch"),
    SPANISH("es", "Español");

    private final String tag;
    private final String ownName;

    Language(String tag, String ownName) {
        this.tag = tag;
        this.ownName = ownName;
    }

    /** The tag: {@code ko}. */
    public String tag() {
        return tag;
    }

    /** The language of a tag, or called so in English or in itself: {@code ko-KR}, {@code Korean}, {@code 한국어}. */
    public static Optional<Language> named(String text) {
        String plain = text.strip();
        for (Language language : values()) {
            if (language.name().equalsIgnoreCase(plain) || language.ownName.equalsIgnoreCase(plain)) {
                return Optional.of(language);
            }
        }
        return tagged(plain);
    }

    /** What the language is called in itself: {@code 한국어}. */
    public String ownName() {
        return ownName;
    }

    /** The language of a tag, with or without a place or script after it ({@code de}, {@code de-AT}); empty for others. */
    public static Optional<Language> tagged(String text) {
        String first = text.strip().toLowerCase(Locale.ROOT).split("[-_]", 2)[0];
        for (Language language : values()) {
            if (language.tag.equals(first)) {
                return Optional.of(language);
            }
        }
        return Optional.empty();
    }
}
