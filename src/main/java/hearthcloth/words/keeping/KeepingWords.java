package hearthcloth.words.keeping;

import hearthcloth.words.Language;

/** What is said in the room of keeping, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface KeepingWords {

    /** What is said in one language; the class of no other is loaded. */
    static KeepingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishKeeping();
            case KOREAN -> new KoreanKeeping();
            case JAPANESE -> new JapaneseKeeping();
            case FRENCH -> new FrenchKeeping();
            case GERMAN -> new GermanKeeping();
            case SPANISH -> new SpanishKeeping();
        };
    }

    String aboutAlsoWith(String before, String who);

    String aboutAlsoWrapped(String before, String what);

    String aboutMade(String day);

    String aboutWith(String who);

    String aboutWrapped(String what);

    String archiveAdd();

    String archiveBring();

    String archiveBrought(int cloths, int pieces);

    String archiveHow();

    String archiveIn();

    String archiveInstead();

    String archiveOut();

    String archiveTitle();

    String archiveWhat();

    String beside();

    String cardLacking();

    String cardMore();

    String cardPhotograph();

    String cardSlip();

    String cardUsed(String stage, String used);

    String classes();

    String compareBack();

    String compareFew();

    String copy();

    String find();

    String findExample();

    String findGo();

    String first();

    String found(String all, String found, String sought);

    String ideaGo();

    String ideaTitle();

    String ideaWhat();

    String kits();

    String labelRemoved(String name);

    String name();

    String open(String name);

    String redo(String deed);

    String remove();

    String removeSure(String name);

    String removed(String name);

    String rename();

    String see();

    String showAll();

    String stage(String stage);

    String take(String what);

    String tick();

    String title();

    String undo(String deed);

    String useFor(String who);

    String used(int n);

    String usedLast(String last, int n);
}
