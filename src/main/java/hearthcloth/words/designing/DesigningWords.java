package hearthcloth.words.designing;

import hearthcloth.words.Language;

/** What is said in the room of designing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface DesigningWords {

    /** What is said in one language; the class of no other is loaded. */
    static DesigningWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishDesigning();
            case KOREAN -> new KoreanDesigning();
            case JAPANESE -> new JapaneseDesigning();
            case FRENCH -> new FrenchDesigning();
            case GERMAN -> new GermanDesigning();
            case SPANISH -> new SpanishDesigning();
        };
    }

    String againButton();

    String againLocked();

    String altEyes(String eyes, String name, String size);

    String altFace(String face, String name, String size);

    String altFront();

    String altTarget(String bar, String cut, String fabrics, String locked);

    String altValues(String name);

    String altWide(String width);

    String barAny();

    String barAnySays();

    String barCut(String unit);

    String barLock();

    String barLockIt();

    String barLocked();

    String barMiddle();

    String barName(String bar, String label);

    String barNarrower();

    String barSet();

    String barUnlock();

    String barWhere(String round, String side);

    String barWider();

    String benchChoices();

    String benchClose();

    String benchHolds(String largest, String tie);

    String benchLacking();

    String benchPanel();

    String benchRedo();

    String benchRedoWhat(String deed);

    String benchReplan();

    String benchReplanCuts();

    String benchTap();

    String benchTies();

    String benchUndo();

    String benchUndoWhat(String deed);

    String benchViews();

    String benchWall();

    String besideName(String deed, String name);

    String besideOld();

    String besideSaid(String deed, String name);

    String coloursBest();

    String coloursContrast();

    String coloursLabel();

    String copyName(String name);

    String deedAgain();

    String deedAnyFabric();

    String deedBar(String bar);

    String deedFabric(String fabric, String place);

    String deedFell();

    String deedHearth();

    String deedLock(String on, String place);

    String deedMaking(String what);

    String deedOrder();

    String deedReplan();

    String deedRound(String round);

    String deedRounds(int n);

    String deedRules();

    String deedSwap();

    String exampleAway();

    String exampleGone();

    String exampleLaid();

    String exampleLay();

    String exampleName(String title);

    String eyes(String eyes);

    String eyesTo();

    String eyesTold(String colours, String eyes);

    String fabricsSwap();

    String fabricsTitle();

    String fabricsWith();

    String face(String face);

    String figureCuts();

    String figureJoins();

    String figureJoinsFew(int above, String joins);

    String figureLayers(int n);

    String figureLost();

    String figurePatches();

    String figurePieces();

    String figureThickest();

    String figureThread();

    String figureWas(String was);

    String figuresAll();

    String goCut();

    String goRecut();

    String goSew();

    String handEnough();

    String handJoined();

    String handShort();

    String handWide(String width);

    String labelRenamed(String name, String was);

    String look(String look);

    String nameCopy();

    String nameMore();

    String nameName();

    String nameRename();

    String nameTitle();

    String nearGone();

    String nearKind(String kind);

    String nearLead();

    String nearNone();

    String nearOf(String fabrics);

    String nearTaken(String way);

    String nearTitle();

    String picturesBack(String kind);

    String picturesBoth();

    String picturesFlat(String kind);

    String picturesTied(String kind);

    String picturesTitle();

    String picturesWhat();

    String piecingApart(String several);

    String piecingClear();

    String piecingDeed();

    String piecingFill(String again);

    String piecingFit(String piece, String way);

    String piecingFrom();

    String piecingGo();

    String piecingHeap(int n);

    String piecingIntro();

    String piecingIsLocked(String piece);

    String piecingJoined(String a, String b, String trims);

    String piecingKeep(String cloth);

    String piecingLay();

    String piecingLock(String on);

    String piecingMake();

    String piecingMore(String area, String how);

    String piecingNext();

    String piecingNone(String what);

    String piecingPanel();

    String piecingPiece(String fabric, String piece, String size);

    String piecingSaid(String what);

    String piecingSet();

    String piecingSize(String unit);

    String piecingStale();

    String piecingSwap();

    String piecingTable();

    String piecingTitle();

    String piecingTrim(String length, String off, String piece);

    String piecingTurn();

    String piecingWay(String turned, String where);

    String piecingWays(String piece);

    String piecingWhole(String cloth, int n, String percent);

    String place(String label, String place);

    String saidCalled(String name);

    String saidCopy();

    String saidLacking();

    String saidLocked();

    String saidNothing();

    String saidPlanned();

    String saidRedone(String deed);

    String saidUndone(String deed);

    String saidUnlocked();

    String seamKind(String name, String seam);

    String set();

    String sewingAllowances();

    String sewingCorner();

    String sewingCorners(String corner);

    String sewingFell();

    String sewingHelp();

    String sewingHelpSays();

    String sewingHem(String unit);

    String sewingJoins();

    String sewingLeast(String unit);

    String sewingSeam();

    String sewingTitle();

    String shapeHearth(String unit);

    String shapeHearthHeight(String unit);

    String shapeHearthWidth(String unit);

    String shapeHelp();

    String shapeHelpSays();

    String shapeMixed();

    String shapeOrder();

    String shapeRound(String round, String unit);

    String shapeRounds();

    String shapeSetHearth();

    String shapeTitle();

    String shapeWhole();

    String shortJoins(int n);

    String shortLayers();

    String shortLost();

    String shortSize(String kind);

    String shortThread();

    String sinceEnough();

    String sinceJoins(String before, String now);

    String sinceLacking(String why);

    String sinceLost(String before, String now);

    String sinceSame();

    String sinceSize(String before, String now);

    String sizeSquare(String size);

    String staleCalled(String name);

    String staleRenamed();

    String tiedAlt(String fit, String name);

    String tiedColours();

    String tiedExample();

    String tiedFaces();

    String tiedGreys();

    String tiedMore();

    String tiedQuarter(String turn);

    String tiedRound();

    String tiedRoundWhat();

    String tiedSay();

    String tiedShow();

    String tiedSize();

    String tiedTooSmall();

    String tiedUnsaid(String gift);

    String tiedWhich();

    String turnCanvas();

    String turnGroup();

    String turnSaid(String way);

    String turnTo(String way);

    String warnAside(int n, String pieces);

    String warnMany(String fabrics, int n);

    String warnMissing(int n, String pieces);

    String warnPiece(String fabric, String number);

    String warnPieces(int n, String pieces);

    String warnRuler(String begun, String ruler);

    String warnShared(String cloth, String pieces);

    String wrongBar();

    String wrongCloth();

    String wrongFabric(String fabric);

    String wrongForm();

    String wrongIsCut();

    String wrongLacking();

    String wrongLeast();

    String wrongName();

    String wrongNoBars();

    String wrongNoOther();

    String wrongNone();

    String wrongOrder(String written);

    String wrongPart();

    String wrongScheme(String needs, String scheme);

    String wrongSeam(String written);

    String wrongTiesNone();

    String wrongTwo(String what, String written);

    String wrongWhole(String least, String most, String written);

    String wrongWide(String written);

    String wrongWrap();
}
