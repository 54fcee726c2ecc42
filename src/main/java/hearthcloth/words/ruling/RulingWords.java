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

    String rounds(String rule);

    String seam(String name, String seam);

    String sewn(String corner, String first, String narrow, String seam, String second, String wide);

    String size(String rule);

    String suited(String tie);

    String tie(String tie);
}
