package hearthcloth.words.printing;

/** What is said in the room of printing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface PrintingWords {

    String altCut(String fabric, int n, String piece, String size);

    String altFace(String face, String size, String title);

    String altPatches(int n);

    String altStep(String added, String step, String work);

    String bagAbout(String size, String title);

    String bagFor(String gift, String size, String title);

    String bagHow();

    String bagPiece(String patches, String piece, String size);

    String bagSlips();

    String bagTitle(String n, String name);

    String beforeTitle();

    String boxMeasure();

    String boxWay();

    String cardMeasures(String size);

    String cardOthers(int n);

    String cardThick(String places);

    String careTitle();

    String chosenTitle();

    String coloursEyes(String eyes);

    String coloursGrey(String shade);

    String coloursLeast();

    String coloursLike(String fabric);

    String coloursMost();

    String coloursSeams();

    String coloursThread();

    String coloursTitle();

    String coloursValues();

    String corner();

    String cornerFirst(String length);

    String cornerLast(String length);

    String cornerLife();

    String cornerMitre();

    String cornerOff();

    String cutHead(String row, String scale, String unit, String washed);

    String cutHow();

    String cutLeft(String left);

    String cutNothing();

    String cutSheet(int n, String title);

    String cutTitle();

    String cutWhole();

    String drawn(String scale);

    String faceDrawn(String face, String scale);

    String faceFells(String face);

    String faceName(String face);

    String faceSheet(String scale, String size, String title);

    String figureCuts();

    String figureFinished();

    String figureJoins();

    String figureLost();

    String figurePatches();

    String figureSeams();

    String figureThread();

    String grain();

    String grainNap();

    String hemTitle();

    String item(String topic, String words);

    String kitsBuy(String name, String what);

    String kitsEach(String shared);

    String kitsFirst(String of, String piece, String size, String who);

    String kitsHanded(String of, String piece, String who);

    String kitsLacks(String made, String name, String why);

    String kitsNearest();

    String kitsQuarters(int n);

    String kitsRunning(int n);

    String kitsTitle();

    String kitsWay(String goods, String unit);

    String kitsWorst(int n);

    String kitsYards(String n, String way);

    String labelHearth();

    String labelOffcut(String number);

    String legendFell();

    String legendStitches();

    String legendUnknown(String fabric);

    String legendWrong();

    String lostJoins(int n);

    String lostLeast(String least, String touched);

    String lostLeastLost(String least, String lost, String touched);

    String lostTouched(String touched);

    String matStays();

    String matTitle(String all, String made, String piece);

    String measuringPrint();

    String measuringRuler();

    String measuringSay();

    String measuringTitle();

    String needsTitle();

    String netFold();

    String netHow(String gift, String scale, String size, String small);

    String netSquare(String side);

    String netTitle(String tie);

    String page(String all, String number);

    String pictureCuts(String name);

    String pictureDone();

    String pictureKnot();

    String pictureNet();

    String pictureTied();

    String pictureTying();

    String piecesDone(String piece);

    String piecesHow(String unit);

    String piecesTitle();

    String pinHatched();

    String pinLies(String added, String face, String work);

    String pinSticksOut(String length, String wrapping);

    String pinStitching();

    String pinTitle();

    String seamTitle();

    String sectionFold();

    String sectionOpen();

    String sectionStitch();

    String sectionWrapped(String name);

    String sectionWraps(String name);

    String sewTitle();

    String shopNoWay();

    String shopNone();

    String shopTitle();

    String shopWays();

    String slipsHow();

    String slipsRunning(String title);

    String slipsSize(String size);

    String slipsTitle();

    String slipsTop();

    String slipsUp(String showing);

    String square(String side);

    String stepTrim();

    String stepWraps();

    String tableAlone(String alone, String measure);

    String tableHow();

    String tableJoin(String n, String what);

    String tableMeasures();

    String tableNewWraps();

    String tableOldWraps();

    String tableSew();

    String tableStep();

    String tableThick();

    String tableTitle();

    String tableWraps();

    String teacherAbout(int joins, int patches, int pieces, String size, String title);

    String teacherDot();

    String teacherNoCross();

    String teacherThick(int count, int places, String plies, String steps);

    String teacherTitle();

    String thickTitle();

    String threadTitle();

    String tieCare();

    String tieKnot();

    String tieTitle();

    String tiedCare();

    String tiedHow(String suited, String tie);

    String tiedHowNamed(String suited, String tie, String trade);

    String tiedJust(String reason, String size);

    String tiedKnot();

    String tiedLeaves(String reason, String size, String spare);

    String tiedNear();

    String tiedNext(String size, String uses);

    String tiedNextNamed(String size, String trade, String uses);

    String tiedSheet(String gift, String tie);

    String tiedShort();

    String tiedShows();

    String tiedSure();

    String tiedTitle();

    String tiedTying();

    String toolsEach(String tool);

    String toolsTitle();

    String view(String view);

    String washingTitle();
}
