package hearthcloth.words.tying;

/** What is said in the room of tying, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface TyingWords {

    String booksClosed();

    String booksEnds();

    String booksLaid();

    String booksTied();

    String booksWound();

    String bottleCrossed();

    String bottleHandle();

    String bottleLaid();

    String bottlePair();

    String bottleTied();

    String bottlesLaid();

    String bottlesStood();

    String bottlesTied();

    String bottlesWound();

    String careBottle();

    String careChildren();

    String careFlames();

    String careFood();

    String careSpills();

    String corner(String corner);

    String diamond();

    String diamondRoll();

    String doubt(String end, String large, String least, String most, String small, String usual);

    String edgeFlaps();

    String edgeLaid();

    String edgePair();

    String edgeTied();

    String errandFar();

    String errandHidden();

    String errandNear();

    String errandSides();

    String errandTied();

    String fitJust(String gift, String tie);

    String fitJustKnotted(String gift, String tail, String tie);

    String fitNearly(String gift);

    String fitSewnSmaller(String spare);

    String fitShorter(String gift, String less, String tail, String tie, String usual);

    String fitTies(String gift, String reason, String spare, String tie);

    String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie);

    String fitUsualEnds(String gift);

    String fitWraps(String gift, String reason, String spare, String tie);

    String flatFar();

    String flatNear();

    String flatSides();

    String fourCornerNearAndFar();

    String fourCornerSides();

    String fourCornerTied();

    String knotFirst();

    String knotPull();

    String knotSecond();

    String reason(String reason);

    String rollCrossed();

    String rollEnds();

    String rollTied();

    String rollWound();

    String roundHandle();

    String roundLaid();

    String roundPair();

    String roundTied();

    String ruleMore(String more, String rule, String size, String source);

    String ruleSmall(String gift, String less, String rule, String size, String source);

    String ruleSmallForTall(String gift, String less, String rule, String size, String source);

    String ruleWords(String rule);

    String shortBooks();

    String shortBottle();

    String shortCorners();

    String shortFlat();

    String shortRolled();

    String shortRound();

    String shortTwoKnot();

    String showsFabric(String fabric, String percent, String where);

    String showsFabricInKnot(String fabric);

    String showsFabricNot(String fabric);

    String showsHearth(String percent, String where);

    String showsHearthAndUnder(String percent, String thing, String under, String where);

    String showsHearthInKnot();

    String showsHearthInside();

    String showsHearthUnder(String thing);

    String showsSpare();

    String tieName(String tie);

    String tieSuited(String tie);

    String tradeAll(String enough);

    String tradeNone(String small);

    String tradeSome(String enough, String small);

    String tradeUses(String size);

    String twoKnotCrossed();

    String twoKnotRight();

    String twoKnotTied();

    String twoKnotRollCrossed();

    String twoKnotRollEnds();

    String twoKnotRollTied();
}
