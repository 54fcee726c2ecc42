package hearthcloth.words.handing;

import hearthcloth.words.Language;

/** What is said in the room of handing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface HandingWords {

    /** What is said in one language; the class of no other is loaded. */
    static HandingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishHanding();
            case KOREAN -> new KoreanHanding();
            case JAPANESE -> new JapaneseHanding();
            case FRENCH -> new FrenchHanding();
            case GERMAN -> new GermanHanding();
            case SPANISH -> new SpanishHanding();
        };
    }

    String asScraps();

    String by();

    String choice(String choice);

    String classAfter(String cloth, String teacher);

    String classAway();

    String classAwayAbout(String cloth);

    String classAwayAsk(String cloth);

    String classFitAbout(String cloth);

    String classFits();

    String classFrom(String size, String teacher);

    String classHand();

    String classHandOut();

    String classHanded(String cloth);

    String classIsAway();

    String classKeepFirst();

    String classLacks();

    String classLead();

    String classNone();

    String classOne();

    String classTitle();

    String classWithdrawn();

    String empty();

    String field(String field);

    String fitsAll();

    String inFavourite();

    String inFile();

    String inFit();

    String inHow();

    String inTitle();

    String is();

    String lacks();

    String lead(String cloth);

    String name();

    String nearest(String bent, String why);

    String noCloth();

    String noneFits(String why);

    String outNone();

    String outTitle();

    String own(String example);

    String refused(String why);

    String saveFile();

    String savePage();

    String scraps();

    String title();

    String words();
}
