package hearthcloth.words;

import java.util.EnumSet;
import java.util.Set;

/** In which languages what is written for, as its catalogues are complete; anything else is said in English. */
public final class Spoken {

    /** The pages of the workroom, whose {@code lang} says so. */
    private static final Set<Language> PAGES = EnumSet.of(Language.ENGLISH);

    private Spoken() {}

    /** The language that pages are written in for somebody who chose this one. */
    public static Language onPages(Language chosen) {
        return PAGES.contains(chosen) ? chosen : Language.ENGLISH;
    }
}
