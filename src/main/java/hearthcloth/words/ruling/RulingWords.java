package hearthcloth.words.ruling;

/** What is said in the room of ruling, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface RulingWords {

    String asked();

    String askedGift(String gift, String tie);

    String bars(String rule);

    String bendBars(String rule, String widths);

    String bendColours(String found, String scheme, String ways);

    String bendHearth(String rule, String share, String size);

    String bendJoins(int joins, String most);

    String bendMiddle(String lies, String wanted);

    String bendOrder(String found, String wanted);

    String bendRounds(int rounds, String rule);

    String bendSize(String rule, String size);

    String bendWidths(String least, String most);

    String colours(String rule);

    String fileField(String field, String what);

    String fileFormat(String guideline, String plan, String text);

    String fileGuideline(String what);

    String fileJson(String line, String text, String why);

    String fileKind(String kind, String signs);

    String fileLong(String letters, String most);

    String fileMissing();

    String fileObject(String sign);

    String filePatches(String why);

    String filePicture(String why);

    String filePlan(String what);

    String fileUnknown(String names);

    String fileWhole(String least, String most, String there);

    String giftBooks(String sizes);

    String giftBottle(String across, String high);

    String giftBottles(String across, String high);

    String giftBox(String sizes);

    String giftRoll(String across, String length);

    String giftRound(String across);

    String hearth(String rule);

    String isBars(String kind, String most, String width);

    String isColours(String open, String ways);

    String isGift(String gift, String tie);

    String isHearth(String kind, String least, String most, String size);

    String isRounds(String least, int most);

    String isSize(String kind, String most, String size);

    String isWay(String idea, String scheme);

    String joins(String least, int most);

    String middle(String middle);

    String order(String order);

    String orderOpen();

    String plannerMissing();

    String rounds(String rule);

    String ruleBar(String text);

    String ruleMeasure(String rule, String text);

    String ruleMost(String most, String none, String text);

    String ruleRange(String text);

    String ruleReach(String text);

    String ruleRounds(String most, String text);

    String ruleSeam(String names, String text);

    String ruleShare(String text);

    String ruleWay(String names, String text);

    String ruleWider();

    String seam(String name, String seam);

    String sewn(String corner, String first, String narrow, String seam, String second, String wide);

    String size(String rule);

    String suited(String tie);

    String tie(String tie);
}
