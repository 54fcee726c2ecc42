package hearthcloth.words.framing;

import hearthcloth.words.Language;

/** What is said in the room of framing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface FramingWords {

    /** What is said in one language; the class of no other is loaded. */
    static FramingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishFraming();
            case KOREAN -> new KoreanFraming();
            case JAPANESE -> new JapaneseFraming();
            case FRENCH -> new FrenchFraming();
            case GERMAN -> new GermanFraming();
            case SPANISH -> new SpanishFraming();
        };
    }

    String begunCuts(int n);

    String begunGoCutting();

    String begunGoOn();

    String begunGoSewing();

    String begunGoSewingNext(String next);

    String begunLacks();

    String begunLook();

    String begunPlanned();

    String begunPlannedFor(String gift);

    String begunRecut(String seams, String sewn);

    String begunSewn(String seams, String sewn);

    String begunSewnFor(String gift, String seams, String sewn);

    String drawerMeasures();

    String drawerTitle();

    String field(String field);

    String firstAgain();

    String firstExample();

    String firstFilm();

    String firstFour();

    String firstKinds();

    String firstOne();

    String firstPrivate();

    String firstStop();

    String firstThree();

    String firstTwo();

    String frameBesides();

    String frameCopies();

    String frameExample();

    String frameExampleAway();

    String frameExampleIs();

    String frameExampleNotYours();

    String frameGuidelines();

    String frameHome();

    String frameLeave();

    String framePeople();

    String frameSkip();

    String frameStages();

    String frameStudio();

    String giftCloth(String size);

    String giftKind(String shape);

    String giftMeasure(String measure);

    String giftTied(String gift, String tie);

    String handEats(String eats, String n, String spread, String usual);

    String handFrom();

    String handIsOwn();

    String handIsUsual();

    String handOwn();

    String handTitle();

    String handUnknown(String n);

    String handUsual();

    String homeAll(String n);

    String homeEmpty();

    String homeFirst();

    String homeMade();

    String homeMaking();

    String homeNothing();

    String homeOnTable();

    String homePhotograph();

    String homePieces(int n);

    String homeTitle();

    String key(String key);

    String keysArrows();

    String keysEnter();

    String keysEscape();

    String keysNumbers();

    String keysPages();

    String keysPlusMinus();

    String keysSingle();

    String keysSpace();

    String keysTab();

    String keysTitle();

    String keysU();

    String measureA4();

    String measureEighths();

    String measureKeep();

    String measureLanguage();

    String measureLetter();

    String measureMillimetres();

    String measurePaper();

    String measureQuarters();

    String measureRuler();

    String measureSixteenths();

    String safeArchive();

    String safeArchiveHow();

    String safeClose();

    String safeCloseHow();

    String safeCopies();

    String safeDevices();

    String safeDevicesHow();

    String safeTitle();

    String scriptKeeping();

    String scriptKeepingMore();

    String scriptKeepingOne();

    String scriptSilent();

    String stage(String stage);

    String staleCloth(String name);

    String staleTitle();

    String threadsColour(String line, String name);

    String threadsKept(int n);

    String threadsLines();

    String threadsMany(String longest, String most);

    String threadsNeed(String all, String bobbin);

    String threadsSave();

    String threadsSeam(String least, String most);

    String threadsSeamOne(String least);

    String threadsSuits(String least, String most);

    String threadsSuitsOne(String least);

    String threadsTitle();

    String threadsUsed();

    String troubleColour(String written);

    String troubleComeIn();

    String troubleGone();

    String troubleInside();

    String troubleLarge(String most);

    String troubleNoFile();

    String troubleNotWhole();

    String troubleNothing();

    String troublePlain();

    String troubleTitle();

    String troubleUnread();

    String unitCentimetres();

    String unitInches();

    String wayExample();

    String wayExampleHow();

    String wayGift();

    String wayGiftHow();

    String wayPhotograph();

    String wayPhotographHow();

    String waySay();

    String waySayHow();
}
