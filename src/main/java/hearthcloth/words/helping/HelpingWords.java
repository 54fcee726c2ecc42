package hearthcloth.words.helping;

import hearthcloth.words.Language;

/** What is said in the room of helping, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface HelpingWords {

    /** What is said in one language; the class of no other is loaded. */
    static HelpingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishHelping();
            case KOREAN -> new KoreanHelping();
            case JAPANESE -> new JapaneseHelping();
            case FRENCH -> new FrenchHelping();
            case GERMAN -> new GermanHelping();
            case SPANISH -> new SpanishHelping();
        };
    }

    String command();

    String completionHeader();

    String completionKind();

    String guidelineAbout();

    String guidelineBars();

    String guidelineBy();

    String guidelineCloth();

    String guidelineColours();

    String guidelineExFollow();

    String guidelineExPage();

    String guidelineHeader();

    String guidelineHearth();

    String guidelineMiddle();

    String guidelineMostJoins();

    String guidelineName();

    String guidelineOrder();

    String guidelinePicture();

    String guidelineRounds();

    String guidelineSize();

    String guidelineUnit();

    String guidelineWords();

    String heading(String of);

    String helpAbout();

    String helpHeader();

    String helpWhich();

    String ideaAbout();

    String ideaExFrom();

    String ideaFile();

    String ideaFrom();

    String ideaHeader();

    String kitsAbout();

    String kitsCsv();

    String kitsDone();

    String kitsExList();

    String kitsExStudents();

    String kitsFirst();

    String kitsHeader();

    String kitsSecond();

    String kitsShort();

    String kitsStudents();

    String kitsWishes();

    String label(String of);

    String mainAbout();

    String mainAddress();

    String mainCode();

    String mainData();

    String mainDone();

    String mainHeader();

    String mainLan();

    String mainLanguage();

    String mainMore(String command);

    String mainNew();

    String mainNoBrowser();

    String mainPort(String usual);

    String mainRestore();

    String mainShort();

    String mainWrong();

    String manualFiles();

    String manualSame();

    String manualSettings();

    String optionBudget(String usual);

    String optionFile();

    String optionFolder();

    String optionGift();

    String optionGuide(String usual);

    String optionHelp();

    String optionJson();

    String optionLanguage();

    String optionPaper();

    String optionReplace();

    String optionStash();

    String optionTie();

    String optionUnit();

    String optionVersion();

    String optional();

    String planAbout();

    String planCsv();

    String planCsvOther();

    String planCsvPlain();

    String planDone();

    String planExBest();

    String planExBlocks();

    String planExCut();

    String planExFree();

    String planExGift();

    String planExIdea();

    String planExInput();

    String planExPairs();

    String planFavourite();

    String planGuideline();

    String planHeader();

    String planLike();

    String planNet();

    String planPng();

    String planShort();

    String planSlips();

    String readAbout();

    String readDone();

    String readExPicture();

    String readExPlan();

    String readFile();

    String readHeader();

    String readKeepDoubtful();

    String readOut();

    String readPhoto();

    String readPicture();

    String readSheet();

    String readShort();

    String readUnit();

    String sheetAbout();

    String sheetExRuler();

    String sheetHeader();

    String sheetPaper();

    String sizeAbout();

    String sizeCloth();

    String sizeExCloth();

    String sizeExSteps();

    String sizeExTie();

    String sizeHeader();

    String sizeSteps();

    String usage();

    String wishBands();

    String wishBars();

    String wishBlocks();

    String wishClearance();

    String wishContrast();

    String wishCorner();

    String wishFabrics();

    String wishFell();

    String wishFree();

    String wishHearth();

    String wishHem();

    String wishLeastPiece();

    String wishLeeway();

    String wishMiddle();

    String wishMostJoins();

    String wishMostTrim();

    String wishOffMiddle();

    String wishOrder();

    String wishOutside();

    String wishProposals();

    String wishRounds();

    String wishScheme();

    String wishScraps();

    String wishSeam();

    String wishSeed();

    String wishSetting();

    String wishShow();

    String wishSize();

    String wishSizes();

    String wishSlack();

    String wishTrim();

    String wishTurned();

    String wishWith();
}
