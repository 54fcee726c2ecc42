package hearthcloth.words.planning;

/** The room of planning in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishPlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "No piece is wide enough for a bar cut " + width + "; the widest is " + piece + ".";
    }

    @Override
    public String betterCuts() {
        return "fewer cuts";
    }

    @Override
    public String betterFewerBars() {
        return "fewer bars to sew";
    }

    @Override
    public String betterHearth() {
        return "a larger hearth";
    }

    @Override
    public String betterJoins() {
        return "fewer joins";
    }

    @Override
    public String betterLost() {
        return "less fabric lost";
    }

    @Override
    public String betterMoreBars() {
        return "more bars to look at";
    }

    @Override
    public String betterNarrower() {
        return "narrower bars";
    }

    @Override
    public String betterPieces() {
        return "more pieces used up";
    }

    @Override
    public String betterSize() {
        return "a larger cloth";
    }

    @Override
    public String betterTouched() {
        return "less of the stash cut into";
    }

    @Override
    public String betterWider() {
        return "wider bars";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "A log cabin among scraps" : "A log cabin");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return "These scraps were not enough for " + across + " × " + down + " log cabins of " + (rounds == 1 ? "" + rounds + " round" : "" + rounds + " rounds") + " at " + size + "; fewer blocks or rounds need less.";
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + ", " + across + " × " + down + " log cabins" + (scraps.equals("yes") ? " among scraps" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return "In bands that " + (direction.equals("ACROSS") ? "lie across the cloth" : "run down the cloth") + ", from rim to rim.";
    }

    @Override
    public String chosenBars(String width) {
        return "Bars cut " + width + " wide.";
    }

    @Override
    public String chosenByHand() {
        return "Chosen by hand.";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "One log cabin, " + (rounds == 1 ? "one round" : "" + rounds + " rounds") + " in each, " + order + ".";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return count + " log cabins, " + across + " × " + down + ", " + (rounds == 1 ? "one round" : "" + rounds + " rounds") + " in each, " + order + ".";
    }

    @Override
    public String chosenHearth(String size) {
        return "The hearth is cut " + size + ".";
    }

    @Override
    public String chosenMiddle(String piece) {
        return "Piece " + piece + " lies in the middle as it is.";
    }

    @Override
    public String chosenMixed() {
        return "Light and dark are mixed: there was no way to keep them apart.";
    }

    @Override
    public String chosenOrder(String order) {
        return "The order: " + order + ".";
    }

    @Override
    public String chosenOuter(String size) {
        return "The outer round is cut to fit, so that the cloth comes out at " + size + ".";
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "Bars cut " + widths + " wide, the widths of pieces you have.";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "Bar widths as cut, the widths of pieces you have: " + rounds + ".";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return "round " + number + ": " + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return (n == 1 ? "One round." : "" + n + " rounds.");
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "The size: the largest square found; all the fabric together could not make one above " + limit + ".";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "The size: the largest square that was found, " + side + "; all these scraps together could not make one above " + limit + ".";
    }

    @Override
    public String chosenSizeSteps() {
        return "The size: the largest that was found, in steps of about a fourteenth.";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "The size: in steps of " + step + " no larger square is possible.";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "This cloth is " + percent + " smaller than you wished.";
    }

    @Override
    public String chosenWith(String pieces) {
        return "The pieces you asked for are in it: " + pieces + ".";
    }

    @Override
    public String colour(String what) {
        return what + ".";
    }

    @Override
    public String colourApart() {
        return "no fabric meets itself";
    }

    @Override
    public String colourBack(String what) {
        return "On the back " + what + ".";
    }

    @Override
    public String colourCouldLie(String length) {
        return "At most " + length + " of its seams could lie better.";
    }

    @Override
    public String colourField() {
        return "the bars are one field of fabric";
    }

    @Override
    public String colourHearthAll() {
        return "the hearth stands out on every side";
    }

    @Override
    public String colourHearthNone() {
        return "the hearth is quiet, close to what lies round it";
    }

    @Override
    public String colourHearthSome(String share) {
        return "the hearth stands out along " + share + " of its edge";
    }

    @Override
    public String colourMixed(int n) {
        return (n == 1 ? "one bar is of several fabrics" : "" + n + " bars are of several fabrics");
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + ": " + share + " of what shows once tied.";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + " shows however you tie it: " + least + " to " + most + " of what shows once tied.";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + ": " + least + " to " + most + " of what shows once tied, by how the spare corners lie.";
    }

    @Override
    public String colourPrice(int n) {
        return (n == 1 ? "One cut more than the least that was found, for its colours." : "" + n + " cuts more than the least that was found, for its colours.");
    }

    @Override
    public String colourPriceJoins(int n) {
        return (n == 1 ? "One join more than the fewest that were found, for its colours." : "" + n + " joins more than the fewest that were found, for its colours.");
    }

    @Override
    public String colourProven() {
        return "No other choice of a fabric for each bar lies better; that is proven.";
    }

    @Override
    public String colourSame(String share) {
        return "a fabric meets itself along " + share + " of the seams between bars";
    }

    @Override
    public String colourTied(String what) {
        return "Of the edges that show tied: " + what + ".";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "No fabric in the stash is called \"" + name + "\"; there are " + names + ".";
    }

    @Override
    public String good(String idea, String points) {
        return idea + "; " + points + ".";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + ".";
    }

    @Override
    public String heapEmpty() {
        return "The heap is empty; add at least one piece.";
    }

    @Override
    public String hearth() {
        return "the hearth";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "No single piece holds the hearth, cut " + size + "; the best is " + piece + ".";
    }

    @Override
    public String moreAdded(String pieces) {
        return "It would work with this added: " + pieces + ".";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return number + " of " + fabric + ", " + size;
    }

    @Override
    public String moreTime() {
        return "A plan needs more time; plan again with a longer time limit.";
    }

    @Override
    public String needFabrics() {
        return "You don't have enough of these fabrics for any colour plan that was tried.";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return "The layout that needs least fabric takes " + takes + " with its seams and hem. All your fabric together is " + has + ", so you need about " + more + " more.";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "round the square" : order.equals("PAIRS") ? "opposite pairs" : "two sides");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + ", " + size + " (line " + line + ")";
    }

    @Override
    public String pointFewestBars(String n) {
        return "the fewest bars to sew, " + n;
    }

    @Override
    public String pointFewestCuts(String n) {
        return "the fewest cuts, " + n;
    }

    @Override
    public String pointFewestJoins(String n) {
        return "the fewest joins, " + n;
    }

    @Override
    public String pointJoins(int n) {
        return (n == 1 ? "one join" : "" + n + " joins");
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return (n == 1 ? "one join, as few as any" : "" + n + " joins, as few as any");
    }

    @Override
    public String pointLargest() {
        return "the largest of these";
    }

    @Override
    public String pointLargestHearth() {
        return "the largest hearth";
    }

    @Override
    public String pointLeastLost() {
        return "the least fabric lost";
    }

    @Override
    public String pointLeavesMost() {
        return "leaves most of the stash whole";
    }

    @Override
    public String pointMostBars(String n) {
        return "the most bars to look at, " + n;
    }

    @Override
    public String pointMostPieces(String n) {
        return "uses up most pieces, " + n;
    }

    @Override
    public String pointNarrowest() {
        return "the narrowest bars";
    }

    @Override
    public String pointNoJoin() {
        return "no bar needs a join";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "the only one without a cut";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "the only one without a join";
    }

    @Override
    public String pointThan(String better) {
        return better + " than the first";
    }

    @Override
    public String pointWidest() {
        return "the widest bars";
    }

    @Override
    public String rulesNone() {
        return "None was found that keeps them all, though many were tried.";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "Two halves" : scheme.equals("ROUNDS") ? "Ring by ring" : scheme.equals("TURNS") ? "Turn and turn about" : scheme.equals("FIELD") ? "One field" : scheme.equals("SPIRAL") ? "Spiral" : scheme.equals("SCATTERED") ? "Scattered evenly" : scheme.equals("GRADED") ? "Light to dark" : scheme.equals("FRAMES") ? "Frames" : scheme.equals("ACCENT") ? "One bright scrap" : scheme.equals("ALL") ? "From the whole stash" : scheme.equals("FALLS") ? "As the fabric falls" : scheme.equals("OUTWARDS") ? "Best side out" : "Your own choice");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "light and dark meet along the diagonal" : scheme.equals("ROUNDS") ? "each round has its own fabric" : scheme.equals("TURNS") ? "light and dark take turns, bar by bar" : scheme.equals("FIELD") ? "the hearth sits alone in one fabric" : scheme.equals("SPIRAL") ? "light and dark wind outwards side by side" : scheme.equals("SCATTERED") ? "one fabric for each bar, and none beside itself" : scheme.equals("GRADED") ? "each round is darker than the one inside it" : scheme.equals("FRAMES") ? "two fabrics take turns, round by round" : scheme.equals("ACCENT") ? "a bright fabric stands out among the others in a few places" : scheme.equals("ALL") ? "fabrics anywhere" : scheme.equals("FALLS") ? "the bars are cut where the fabric goes farthest" : scheme.equals("OUTWARDS") ? "the fabric you chose is where it shows once tied" : "chosen by hand");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "fabrics that part clearly into light and dark, enough of each" : scheme.equals("TURNS") ? "fabrics that part clearly into light and dark, enough of each" : scheme.equals("SPIRAL") ? "fabrics that part clearly into light and dark, enough of each" : scheme.equals("ROUNDS") ? "enough of one fabric for each round, none of them the hearth's" : scheme.equals("FIELD") ? "enough of one fabric for all bars, and another for the hearth" : scheme.equals("SCATTERED") ? "enough of several fabrics that none need lie beside itself" : scheme.equals("GRADED") ? "a fabric for each round, each darker than the one inside it" : scheme.equals("FRAMES") ? "two fabrics, one clearly lighter, enough of each for its rounds" : scheme.equals("ACCENT") ? "one bright fabric beside quieter ones" : "nothing but fabric");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "No cloth was found to which the name \"" + scheme + "\" is true; it needs " + needs + ".";
    }

    @Override
    public String scrapsByHand() {
        return "Put together by hand";
    }

    @Override
    public String scrapsMore(String size) {
        return "With one more piece of " + size + " it was found to be possible.";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "There is no piece " + piece + " that a patch can be cut from; look it up in the stash.";
    }

    @Override
    public String scrapsNone() {
        return "No cloth could be made of these scraps; more of them, or larger ones, are needed.";
    }

    @Override
    public String scrapsShort(String area) {
        return "However these scraps are laid, they are " + area + " short once the seams are taken off.";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "Scraps as they come" : choice.equals("WHOLE") ? "No scrap cut in two" : choice.equals("SMALL") ? "Many small scraps" : choice.equals("LARGE") ? "Few large scraps" : choice.equals("EVEN") ? "Sizes more alike" : choice.equals("CALM") ? "Colours near each other" : choice.equals("ALIKE") ? "Sizes near each other" : "Light against dark");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "No piece is large enough for a patch that shows " + length + " each way; wish a smaller --least-piece.";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return (n == 1 ? "" + n + " scrap: " + whole + " just as they are, " + trimmed + " trimmed, " + parted + " cut in two; " + lost + " of what is sewn is trimmed off and lost." : "" + n + " scraps: " + whole + " just as they are, " + trimmed + " trimmed, " + parted + " cut in two; " + lost + " of what is sewn is trimmed off and lost.");
    }

    @Override
    public String seamsApart() {
        return "No fabric lies beside itself.";
    }

    @Override
    public String seamsClear(String clear) {
        return "No two seams end within " + clear + " of each other across a third.";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return (n == 1 ? "At one place seams end within " + clear + " of each other across a third; the guide says where it is thick." : "At " + n + " places seams end within " + clear + " of each other across a third; the guide says where it is thick.");
    }

    @Override
    public String seamsNowhere() {
        return "Nowhere do four seams meet.";
    }

    @Override
    public String seamsThick(int n) {
        return (n == 1 ? "At one place seams meet on both sides of a third; the guide says where it is thick." : "At " + n + " places seams meet on both sides of a third; the guide says where it is thick.");
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "All alike" : setting.equals("STRAIGHT_FURROW") ? "Straight furrow" : setting.equals("BARN_RAISING") ? "Barn raising" : setting.equals("SUNSHINE_AND_SHADOW") ? "Sunshine and shadow" : "Turned at will");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "Every block lies the same way." : setting.equals("STRAIGHT_FURROW") ? "Light and dark run in bands from corner to corner." : setting.equals("BARN_RAISING") ? "Light and dark go out from the middle in squares on their points." : setting.equals("SUNSHINE_AND_SHADOW") ? "The light halves of four blocks meet, and the dark ones." : "Each block is turned as chance had it.");
    }

    @Override
    public String shapeComes(String sizes) {
        return "This hearth with these bars comes to " + sizes + "; ask for one of these, or leave the hearth or the bars to the stash.";
    }

    @Override
    public String shapeNone(String size) {
        return "No hearth and bars of this kind come to " + size + "; leave one of them to the stash, or ask for another number of rounds.";
    }

    @Override
    public String shapeNoneAny() {
        return "No hearth and bars of this kind come to a cloth; leave one of them to the stash, or ask for another number of rounds.";
    }

    @Override
    public String shapeNothing() {
        return "With these seams nothing would be left of the hearth or the bars; make them larger.";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return size + " with " + (rounds == 1 ? "one round" : "" + rounds + " rounds");
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return "Any of " + number + " fabrics, such as " + fabric + ", is " + (sure.equals("proven") ? "at least" : "about") + " " + length + " short at " + width + " wide, for " + what + ".";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "The cloth alone is " + size + "; all the fabric together is " + has + ", so at least " + missing + " is missing before any seam.";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return fabrics + " is " + (sure.equals("proven") ? "at least" : "about") + " " + length + " short at " + width + " wide, for " + what + ".";
    }

    @Override
    public String stashEmpty() {
        return "The stash is empty; add at least one piece.";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + ", " + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "Some pieces are washed (such as " + washed + ", " + washedFabric + ") and some are not (such as " + unwashed + ", " + unwashedFabric + "): they will shrink differently. Wash and press all of them before cutting.";
    }
}
