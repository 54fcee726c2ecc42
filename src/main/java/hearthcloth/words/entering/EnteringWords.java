package hearthcloth.words.entering;

import hearthcloth.words.Language;

/** What is said in the room of entering, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface EnteringWords {

    /** What is said in one language; the class of no other is loaded. */
    static EnteringWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishEntering();
            case KOREAN -> new KoreanEntering();
            case JAPANESE -> new JapaneseEntering();
            case FRENCH -> new FrenchEntering();
            case GERMAN -> new GermanEntering();
            case SPANISH -> new SpanishEntering();
        };
    }

    String awayAgain();

    String awayAnew();

    String awayAnewHow();

    String awayHeading();

    String awaySend();

    String awayTitle();

    String awayWrote();

    String bothAgain();

    String bothLook();

    String bothNow();

    String bothWrote();

    String closeClosed();

    String closeElsewhere();

    String closeKept();

    String closeOpen();

    String closeOthers();

    String closeTitle();

    String copiesAlone();

    String copiesAnew();

    String copiesBack();

    String copiesBackAbout(String made);

    String copiesBackAsk(String made);

    String copiesIsBack(String made);

    String copiesIsMade(String size);

    String copiesKeeper();

    String copiesLead();

    String copiesLie(String folder);

    String copiesMade();

    String copiesNone();

    String copiesNow();

    String copiesReason(String reason);

    String copiesSize();

    String copiesStudio();

    String copiesTime(String day, String month, String time, String year);

    String copiesTitle();

    String copiesTo();

    String copiesWhy();

    String copiesWrongClock(String made);

    String devicesAsks(String address, String mark, String name);

    String devicesAtMachine();

    String devicesCode();

    String devicesComes(String yes);

    String devicesHere();

    String devicesInside();

    String devicesIsOut();

    String devicesKeepOut(String mark);

    String devicesLet();

    String devicesLetAbout(String mark);

    String devicesNo();

    String devicesNone();

    String devicesNotShared();

    String devicesOnce();

    String devicesOut();

    String devicesOutAbout(String name);

    String devicesPhotograph();

    String devicesPicture();

    String devicesPoint();

    String devicesSew();

    String devicesSince(String name, String since);

    String devicesStart();

    String devicesTitle();

    String devicesTooMany();

    String devicesTrust();

    String devicesWait();

    String devicesWrongCode();

    String doorBefore();

    String doorBusy();

    String doorCharset();

    String doorClosing();

    String doorEarlier();

    String doorLarge(String most);

    String doorLargePhotograph();

    String doorLetters();

    String doorNotIn();

    String doorNotOurs();

    String doorOwnAddress();

    String enterAtMachine();

    String enterBegin();

    String enterBusy();

    String enterFirst();

    String enterForgotten();

    String enterIn();

    String enterLeft();

    String enterLong();

    String enterName();

    String enterOwn();

    String enterPassphrase();

    String enterTitle(String first);

    String enterWrong();

    String joinAsk();

    String joinAsks();

    String joinCode();

    String joinHeading();

    String joinLook();

    String joinName();

    String joinNoCode();

    String joinTablet();

    String joinTitle();

    String peopleAs();

    String peopleBring();

    String peopleBringIn();

    String peopleCanCome(String name);

    String peopleChange();

    String peopleChanged();

    String peopleCurrent();

    String peopleFirstPassphrase();

    String peopleGive();

    String peopleHasNew(String name);

    String peopleNew();

    String peopleNewFor(String name);

    String peopleNewPassphrase();

    String peopleNobody();

    String peopleNotYours();

    String peoplePart(String part);

    String peopleTeacherOnly();

    String peopleTitle();

    String peopleYours();

    String troubleBack();
}
