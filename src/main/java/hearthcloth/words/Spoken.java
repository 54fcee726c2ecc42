package hearthcloth.words;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** In which languages what is written for, as its catalogues are complete; anything else is said in English. */
public final class Spoken {

    /** The pages of the workroom, whose {@code lang} says so. */
    private static final Set<Language> PAGES = EnumSet.allOf(Language.class);

    /** Guides, slips and the class guide, all of which are printed in one language. */
    private static final Set<Language> GUIDES = EnumSet.allOf(Language.class);

    private Spoken() {}

    /** The language that pages are written in for somebody who chose this one. */
    public static Language onPages(Language chosen) {
        return PAGES.contains(chosen) ? chosen : Language.ENGLISH;
    }

    /**
     * The language of pages for a reader of whom only her browser is known.
     *
     * @param header the field Accept-Language of her request; null where she sent none
     */
    public static Language toReader(@Nullable String header) {
        return onPages((header == null ? Preferred.UNSAID : Preferred.of(header)).language());
    }

    /** The language that a guide is printed in for somebody who chose this one. */
    public static Language inGuides(Language chosen) {
        return GUIDES.contains(chosen) ? chosen : Language.ENGLISH;
    }

    /** The languages that a guide can be printed in. */
    public static List<Language> guides() {
        return List.copyOf(GUIDES);
    }
}
