package hearthcloth.words.reporting;

/** What is said in the room of reporting, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface ReportingWords {

    String areaLarge(String number, String unit);

    String care(String what);

    String giftLeast(String gift, String size, String tie);

    String giftRange(String gift, String least, String most, String size, String tie);

    String guidelineBent(String what);

    String guidelineKeeps();

    String guidelineNearest(String folder, String number, String size, String title);

    String guidelineNone();

    String guidelineNoneKept(String name);

    String guidelineScraps();

    String kitsCloth(String fabric, int n, String size, String title);

    String kitsFree(int n, String size, String title);

    String kitsHanded(int n);

    String kitsInTurn(String n);

    String kitsMost(String bound, String worst);

    String kitsNothing(String name);

    String kitsPart(String cloth, String folder, String name);

    String kitsPartOther(String cloth, String folder, String name);

    String kitsPrint(String file);

    String kitsWithout(String n);

    String planChosen(String what);

    String planCuts(String cuts, String lost, String percent, String touched);

    String planCutsBound(String cuts, String least, String lost, String percent, String touched);

    String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched);

    String planGift(String gift);

    String planHead(String folder, String size, String title);

    String planImpossible();

    String planJoinsAbove(String above, String n);

    String planJoinsFewest(String n);

    String planLarger(String length);

    String planMore(String size);

    String planNearest(String size, String title);

    String planNearestJoins(int n, String size, String title);

    String planNotFound();

    String planPatches(String patches, String seams);

    String planReady(String fabrics, String folder);

    String planStash(String area, int fabrics, int pieces);

    String planTied(String what);

    String planTimeOut(String budget);

    String progressBest(int n, String tried);

    String progressLayouts(String found, String of, String tried);

    String progressTogether(int asked, String made, String most, String of, String tried);

    String readAll(String doubt);

    String readColumn(String column);

    String readDoubts();

    String readFound(int fabrics, int pieces);

    String readKnow();

    String readLeft(int n, String numbers);

    String readLittle();

    String readLook(String figured);

    String readNarrow(int n, String numbers);

    String readNone();

    String readPiece(String doubt, String number);

    String readShape(String n, String shape);

    String readWrote(int fabrics, String file, int lines, int pieces);

    String sizeCloth(String end, String size);

    String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual);

    String sizeFits(String enough);

    String sizeGift(String gift);

    String sizeKnot();

    String sizeNoKnot();

    String sizeNone(String uses);

    String sizeNothing();

    String sizeShape(String shape);

    String sizeSold(String tie);

    String sizeSteps(String tie);

    String sizeTrade(String size);

    String sizeTradeNamed(String size, String trade);

    String sizeUpTo(String gift, String uses);

    String square(String side);

    String student(String n);
}
