package hearthcloth.words.planning;

/** What is said in the room of planning, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface PlanningWords {

    String barNoPiece(String piece, String width);

    String betterCuts();

    String betterFewerBars();

    String betterHearth();

    String betterJoins();

    String betterLost();

    String betterMoreBars();

    String betterNarrower();

    String betterPieces();

    String betterSize();

    String betterTouched();

    String betterWider();

    String cabinTitle(String scraps);

    String cabinsFew(String across, String down, int rounds, String size);

    String cabinsTitle(String across, String down, String scraps, String setting);

    String chosenBands(String direction);

    String chosenBars(String width);

    String chosenByHand();

    String chosenCabin(String order, int rounds);

    String chosenCabins(String across, String count, String down, String order, int rounds);

    String chosenHearth(String size);

    String chosenMiddle(String piece);

    String chosenMixed();

    String chosenOrder(String order);

    String chosenOuter(String size);

    String chosenReadyBars(String widths);

    String chosenReadyRounds(String rounds);

    String chosenRound(String number, String widths);

    String chosenRounds(int n);

    String chosenSizeFound(String limit);

    String chosenSizeScraps(String limit, String side);

    String chosenSizeSteps();

    String chosenSizeSure(String step);

    String chosenSmaller(String percent);

    String chosenWith(String pieces);

    String colour(String what);

    String colourApart();

    String colourBack(String what);

    String colourCouldLie(String length);

    String colourField();

    String colourHearthAll();

    String colourHearthNone();

    String colourHearthSome(String share);

    String colourMixed(int n);

    String colourOutside(String fabric, String share);

    String colourOutsideAlways(String fabric, String least, String most);

    String colourOutsideRange(String fabric, String least, String most);

    String colourPrice(int n);

    String colourPriceJoins(int n);

    String colourProven();

    String colourSame(String share);

    String colourTied(String what);

    String fabricUnknown(String name, String names);

    String good(String idea, String points);

    String goodAlone(String idea);

    String heapEmpty();

    String hearth();

    String hearthNoPiece(String piece, String size);

    String moreAdded(String pieces);

    String morePiece(String fabric, String size);

    String morePieces(String fabric, String number, String size);

    String moreTime();

    String needFabrics();

    String needMore(String has, String more, String takes);

    String order(String order);

    String pieceLine(String fabric, String line, String size);

    String pointFewestBars(String n);

    String pointFewestCuts(String n);

    String pointFewestJoins(String n);

    String pointJoins(int n);

    String pointJoinsAsFew(int n);

    String pointLargest();

    String pointLargestHearth();

    String pointLeastLost();

    String pointLeavesMost();

    String pointMostBars(String n);

    String pointMostPieces(String n);

    String pointNarrowest();

    String pointNoJoin();

    String pointOnlyWithoutCut();

    String pointOnlyWithoutJoin();

    String pointThan(String better);

    String pointWidest();

    String rulesNone();

    String scheme(String scheme);

    String schemeIdea(String scheme);

    String schemeNeeds(String scheme);

    String schemeUntrue(String needs, String scheme);

    String scrapsByHand();

    String scrapsMore(String size);

    String scrapsNoPiece(String piece);

    String scrapsNone();

    String scrapsShort(String area);

    String scrapsTitle(String choice);

    String scrapsTooSmall(String length);

    String scrapsUsed(String lost, int n, String parted, String trimmed, String whole);

    String seamsApart();

    String seamsClear(String clear);

    String seamsNear(String clear, int n);

    String seamsNowhere();

    String seamsThick(int n);

    String setting(String setting);

    String settingIdea(String setting);

    String shapeComes(String sizes);

    String shapeNone(String size);

    String shapeNoneAny();

    String shapeNothing();

    String shapeSize(int rounds, String size);

    String shortAny(String fabric, String length, String number, String sure, String what, String width);

    String shortCloth(String has, String missing, String size);

    String shortOf(String fabrics, String length, String sure, String what, String width);

    String stashEmpty();

    String title(String order, String scheme);

    String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric);
}
