package hearthcloth.words.sewing;

/** What is said in the room of sewing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface SewingWords {

    String about(String length);

    String beforeGrain();

    String beforeMeasure(String length);

    String beforePin();

    String beforePress();

    String beforeStraight();

    String blockBegins(String first, String last, String letters);

    String blockDone(String letters);

    String briefSew(String added, String part, String side, String work);

    String briefSticksOut(String length, String wrapping);

    String briefStitch(String top);

    String briefTurn(String added, String part, String side, String work);

    String briefWraps(String wrapping);

    String careChildren();

    String careChildrenTitle();

    String careCutter();

    String careCutterTitle();

    String careDye();

    String careDyeTitle();

    String careFlames();

    String careFlamesTitle();

    String careFood();

    String careFoodTitle();

    String careIron();

    String careIronTitle();

    String careNeedle();

    String careNeedleTitle();

    String cutGives(String how, String patch, String size);

    String cutKeep(String number, String size);

    String cutLine(String gives, String leaves, String measure, String side, String way, String what);

    String cutScraps(int n);

    String cutTitle(String fabric, String piece, String size);

    String cutTitleDone(String fabric, String piece, String size);

    String fewClip(String length);

    String fewClipNoMore();

    String fewClosePush();

    String fewCloseSew();

    String fewDiagonals(String length);

    String fewFold(String under, String wrapped, String wrapping);

    String fewFoldShort(String under);

    String fewFrenchFold(String band);

    String fewFrenchOpen(String wrapped);

    String fewFrenchOpenShort();

    String fewHemFold(String edges, String face, String length);

    String fewHemFoldAgain(String length);

    String fewHemFoldOnce(String edges, String face, String length);

    String fewHemOpen();

    String fewHemPress();

    String fewHemStitch(String edge, String from);

    String fewHemStitchRound(String edge, String from);

    String fewLappedHook(String band);

    String fewLappedLay(String added, String face, String side);

    String fewLappedLayShort(String face);

    String fewLappedPress(String face, String turn, String under, String wrapping);

    String fewLappedPressShort();

    String fewLappedStitch();

    String fewLay(String added, String face, String part, String side);

    String fewLayLook();

    String fewLayOut(int n);

    String fewLayShort(String added, String face, String part, String side);

    String fewLayStack();

    String fewLevel(String end, String length, String start);

    String fewMitreFold(String face);

    String fewMitreMark(String length);

    String fewMitreRule();

    String fewMitreStitch(String about);

    String fewMitreStitchOut();

    String fewMitreTrim(String about);

    String fewPress(String wrapped);

    String fewPressShort();

    String fewPull();

    String fewRoundCorner();

    String fewRoundEnd();

    String fewRoundFold();

    String fewRoundStart();

    String fewSides();

    String fewSquare(String face);

    String fewSticksOut(String length, String wrapping);

    String fewSticksOutShort(String length);

    String fewStitch(String top);

    String fewTrialCut(String side);

    String fewTrialLength(String stitch);

    String fewTrialMeasure();

    String fewTrialNarrow();

    String fewTrialWide();

    String fewTrimBoth(String length);

    String fewTrimEdge(String length);

    String fewTrimEdges();

    String fewTrimEnd();

    String fewWhipOpen();

    String fewWhipPress(String face, String narrow, String wide, String wrapping);

    String fewWhipPressShort(String face);

    String fewWhipSew();

    String frenchOpen(String face, String wrapped);

    String frenchOther(String face);

    String frenchSecond(String band);

    String frenchSharp();

    String frenchSnip();

    String frenchTrim(String length);

    String hemCheck(String size);

    String hemClip(String length);

    String hemClipTitle();

    String hemClosePush();

    String hemCloseSew();

    String hemCloseTitle();

    String hemCreases();

    String hemFold(String edges, String length);

    String hemFoldAgain(String length);

    String hemFoldOnce(String edges, String length);

    String hemLay(String face);

    String hemMitreFold(String face);

    String hemMitreMark(String length);

    String hemMitreStitch(String about);

    String hemMitreStitchOut();

    String hemMitreTitle();

    String hemMitreTrim(String about);

    String hemPressTitle();

    String hemRoundCorner();

    String hemRoundFold();

    String hemRoundStitch(String edge, String from);

    String hemRoundTitle();

    String hemSidesTitle();

    String hemSquareDiagonals(String length);

    String hemSquarePress(String face);

    String hemSquareTitle();

    String hemSquareTrim();

    String hemStitch(String edge, String from, String stitch);

    String hemThick(String places, String plies, String side);

    String hemThickCorners(String plies);

    String hemTopBottomTitle();

    String lappedHook(String band, String wrapping);

    String lappedLay(String added, String face, String side, String work);

    String lappedPress(String face, String turn, String under, String wrapped, String wrapping);

    String lappedStitch(String edge, String stitch);

    String layAll(int n);

    String layBars();

    String layLetters();

    String layLook();

    String layStack();

    String layTitle();

    String layWork();

    String lessThan(String length);

    String nameBar(String label);

    String nameBlock(String letters);

    String nameFree(String label);

    String nameHearth();

    String nameJoined(String label);

    String nameOffcut(String number);

    String namePair(String from, String to);

    String namePart(String label);

    String namePartTo(String from, String to);

    String namePatch(String label);

    String namePiece(String label);

    String nameScrap();

    String nameStepBlock(String step);

    String nameStrip(String label);

    String nameThePiece();

    String nameWork();

    String nameWorkTo(String from, String to);

    String needPiece(String piece, String size);

    String needPieceDone(String piece, String size);

    String seamCheck(String size, String what);

    String seamEdgestitch(String edge, int plies);

    String seamEven();

    String seamFold(String band, String under, String wrapped, String wrapping);

    String seamLay(String added, String face, String part, String side, String work);

    String seamLevel(String start);

    String seamOffset(String length, String wrapped, String wrapping);

    String seamOpen(String face, String wrapped, String wrapping);

    String seamOpenEven(String face, String wrapped, String wrapping);

    String seamRunsPast(String added, String end, String length);

    String seamStitch(String added, String stitch, String top);

    String seamStitchBoth(String added, String below, String stitch, String top, String work);

    String seamThickAt(String end, String places);

    String seamTrimAllowance(String length, String wrapped);

    String seamTrimEdge(String across, String added, String length, String way);

    String seamTrimEnd(String added, String work);

    String seamWarning(String end, String places, String plies);

    String thickAt(String places);

    String thickBand(String plies);

    String thickFoot();

    String thickHem();

    String thickPlace(String height, int n, String plies);

    String thickPress();

    String threadHand(String percent, String ply, String stitch, String tail, String total);

    String threadMachine(String each, String percent, String ply, String stitch, String tail, String total);

    String titleJoin(String added, String work);

    String titleSeam(String added, String side, String work);

    String toolCutter();

    String toolHand();

    String toolIron();

    String toolMachine(String needle);

    String toolPins();

    String toolSlips();

    String toolThread();

    String touchBoth(String added, String ofAdded, String ofWork, String work);

    String touchFacing(String one, String other, String side);

    String touchLayBoth(String added, String ofAdded, String ofWork, String work);

    String touchLayFacing(String one, String other, String side);

    String touchLayMixed();

    String touchLayTogether(String side);

    String touchMixed();

    String touchTogether(String side);

    String trialCheck(String size);

    String trialCut(String side);

    String trialFells(String fells);

    String trialFree();

    String trialLeeway(String leeway);

    String trialLength(String loss, String narrow, String stitch, String wide);

    String trialTitle();

    String trialWidth();

    String washAll();

    String washDye(String fabrics);

    String washMixed(String pieces, String which);

    String washMixedThen(String length);

    String washNone();

    String washNoneSaid();

    String washSomeUnknown(int n, String pieces);

    String washUnknown();

    String washingAlone();

    String washingSquare(String face);

    String whipOpen(String face);

    String whipPress(String face, String narrow, String wide, String wrapped, String wrapping);

    String whipSew();
}
