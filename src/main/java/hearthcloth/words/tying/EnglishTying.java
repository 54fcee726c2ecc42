package hearthcloth.words.tying;

/** The room of tying in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "Close one book onto the other, so that the gap becomes the spine.";
    }

    @Override
    public String booksEnds() {
        return "Bring the left and right corners in over the books. Cross them tightly in the gap.";
    }

    @Override
    public String booksLaid() {
        return "Lay the cloth as a diamond. Lay one book near you and one far from you. Leave a gap between them as wide as both are thick.";
    }

    @Override
    public String booksTied() {
        return "Twist the two ends. Bring them back along the spine and tie them.";
    }

    @Override
    public String booksWound() {
        return "Fold the near corner in over the near book, and the far corner over the far book.";
    }

    @Override
    public String bottleCrossed() {
        return "Gather the left and right corners. Take them round the bottle and cross them behind it.";
    }

    @Override
    public String bottleHandle() {
        return "To make a handle, undo one half of the top knot. Twist both ends and tie them together.";
    }

    @Override
    public String bottleLaid() {
        return "Lay the cloth as a diamond. Stand the bottle in the middle.";
    }

    @Override
    public String bottlePair() {
        return "Lift the near and far corners. Tie them over the top with a reef knot, close to the mouth.";
    }

    @Override
    public String bottleTied() {
        return "Bring them to the front and tie them there, snug on the bottle.";
    }

    @Override
    public String bottlesLaid() {
        return "Lay the cloth as a diamond. Lay both bottles across it, base to base, a fist apart.";
    }

    @Override
    public String bottlesStood() {
        return "Tuck the far corner into the gap. Stand both bottles up, so that the cloth bends between the bases.";
    }

    @Override
    public String bottlesTied() {
        return "Tie the two ends over the tops with a reef knot.";
    }

    @Override
    public String bottlesWound() {
        return "Bring the near corner over the bottles. Roll them away from you to the far corner.";
    }

    @Override
    public String careBottle() {
        return "Try the knot over a table first. Until then, carry a bottle with one hand under it.";
    }

    @Override
    public String careChildren() {
        return "Keep long ends and loops away from small children and out of cots: a tied cloth can tighten round a neck.";
    }

    @Override
    public String careFlames() {
        return "Keep a wrapped gift away from candles, stoves and lamps. Loose ends catch fire first.";
    }

    @Override
    public String careFood() {
        return "Put food in its own box or paper first. Wash the cloth before it touches food.";
    }

    @Override
    public String careSpills() {
        return "Do not use it for anything that can spill: a roll lies on its side.";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "the right corner" : corner.equals("FAR") ? "the far corner" : corner.equals("LEFT") ? "the left corner" : corner.equals("NEAR") ? "the near corner" : corner.equals("FAR_RIGHT") ? "the far right corner" : corner.equals("FAR_LEFT") ? "the far left corner" : corner.equals("NEAR_LEFT") ? "the near left corner" : corner.equals("NEAR_RIGHT") ? "the near right corner" : "the cloth");
    }

    @Override
    public String diamond() {
        return "Lay the cloth as a diamond, a corner towards you, with the face that you want to show underneath. Stand the gift in the middle, its long side from left to right.";
    }

    @Override
    public String diamondRoll() {
        return "Lay the cloth as a diamond. Lay the roll across it from left to right.";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return "The uncertain part is the knot: thin cloth takes up less of each corner, thick cloth more. If knot and end take " + least + " of each corner, a square of " + small + " is enough; if they take " + most + ", you need " + large + ". This plan allows " + usual + ", which suits light cotton with ends of about " + end + ".";
    }

    @Override
    public String edgeFlaps() {
        return "Straighten the edges of the cloth round the top of the gift, so that the flaps lie over it.";
    }

    @Override
    public String edgeLaid() {
        return "Lay the cloth square in front of you, with the face that you want to show underneath. Set the gift in the middle, its edges along the edges of the cloth.";
    }

    @Override
    public String edgePair() {
        return "Lift two opposite corners along the corners of the gift. Tie them over the middle.";
    }

    @Override
    public String edgeTied() {
        return "Tie the other two corners over the first knot.";
    }

    @Override
    public String errandFar() {
        return "Bring the far corner over it and turn its point under.";
    }

    @Override
    public String errandHidden() {
        return "To hide the knot, pull the point of the far corner out from under it and lay it over the knot.";
    }

    @Override
    public String errandNear() {
        return "Bring the near corner over the gift. Tuck its point under at the far edge.";
    }

    @Override
    public String errandSides() {
        return "Lift the left and right corners and smooth the sides in.";
    }

    @Override
    public String errandTied() {
        return "Tie them on top with one reef knot.";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "This cloth is just large enough for " + gift + " with the " + tie + ".";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return "This cloth is just large enough for " + gift + " with the " + tie + ". It leaves " + tail + " at each knotted corner for the knot and its end.";
    }

    @Override
    public String fitNearly(String gift) {
        return "It does tie round " + gift + ".";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return "Sewn " + spare + " smaller, it would still do.";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return "This cloth is " + less + " smaller than it should be for " + gift + " with the " + tie + ". It still ties: " + tail + " is left at each knotted corner for the knot and its end, instead of " + usual + ".";
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "This cloth ties round " + gift + " with the " + tie + ", with " + spare + " more than it needs for " + reason + ".";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "This cloth is too small for " + gift + " with the " + tie + ": " + corner + " is " + lack + " short for " + reason + ". A cloth of " + size + " is large enough.";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "With the usual ends it ties round " + gift + ".";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "This cloth wraps " + gift + " with the " + tie + ", with " + spare + " more than it needs for " + reason + ".";
    }

    @Override
    public String flatFar() {
        return "Bring the far corner over everything. Tuck its point in at the near edge.";
    }

    @Override
    public String flatNear() {
        return "Bring the near corner over the gift. Where its point hangs over, fold it back under.";
    }

    @Override
    public String flatSides() {
        return "Bring the left side over, then the right side. Smooth each along the edge of the gift.";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "Bring the near and far corners up over the middle. Tie them with a reef knot, snug on the gift.";
    }

    @Override
    public String fourCornerSides() {
        return "Lift the left and right corners straight up. Fold the cloth that stands out beside the gift flat against the sides, inside the corners.";
    }

    @Override
    public String fourCornerTied() {
        return "Tie the left and right corners over the first knot. Spread the four ends.";
    }

    @Override
    public String knotFirst() {
        return "Lay the left end over the right end. Bring it round behind and up. This is half the knot.";
    }

    @Override
    public String knotPull() {
        return "Pull both ends. A reef knot lies flat, its ends in line with the pull. If the ends stand up and down, it is a granny knot, which comes loose. Undo the second half and cross it the other way.";
    }

    @Override
    public String knotSecond() {
        return "Lay the same end, now on the right, over the other again, and bring it through the loop.";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "the knot and its ends" : reason.equals("COVER") ? "covering the gift" : reason.equals("TUCK") ? "tucking in the last flap" : "the overlap of the side flaps");
    }

    @Override
    public String rollCrossed() {
        return "Cross them there, so that one goes down each side.";
    }

    @Override
    public String rollEnds() {
        return "Fold the sides in over both ends of the roll. Bring them back along the roll to its middle.";
    }

    @Override
    public String rollTied() {
        return "Turn the roll over. Tie them on the other side with a reef knot.";
    }

    @Override
    public String rollWound() {
        return "Bring the near corner over the roll. Roll it away from you to the far corner.";
    }

    @Override
    public String roundHandle() {
        return "To make a handle, pass the second knot through under the first. Pull it snug.";
    }

    @Override
    public String roundLaid() {
        return "Lay the cloth flat. Set the ball in the middle.";
    }

    @Override
    public String roundPair() {
        return "Tie the near corner to the right corner above the ball. Leave ends long enough for a loop.";
    }

    @Override
    public String roundTied() {
        return "Tie the far corner to the left corner.";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "The usual rule of thumb (" + rule + ") gives " + size + " (" + source + "). That is " + more + " more than this tie needs.";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "The usual rule of thumb (" + rule + ") gives " + size + " (" + source + "). That is " + less + " too small for " + gift + ".";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "The usual rule of thumb (" + rule + ") gives " + size + " (" + source + "). That is " + less + " too small for " + gift + ", because it is tall.";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "diagonal = three times the longest side" : "side = three times the height of a bottle");
    }

    @Override
    public String shortBooks() {
        return "If the twisted ends are short, tie them in the gap before closing. Carry the books under your arm.";
    }

    @Override
    public String shortBottle() {
        return "If the corners do not meet over the mouth, tie them round the neck and let it show.";
    }

    @Override
    public String shortCorners() {
        return "If two corners do not reach each other, cross them over the gift. Tie each to a side corner, as in the two-knot wrap. Or tie the two corners of one edge together, then the other two.";
    }

    @Override
    public String shortFlat() {
        return "If the far corner does not reach the near edge, turn it under and pin it. Or use the errand wrap.";
    }

    @Override
    public String shortRolled() {
        return "If the ends are short, roll with less cloth. Or tie them with a ribbon between.";
    }

    @Override
    public String shortRound() {
        return "If two corners are short, tie opposite corners over the top, without a handle.";
    }

    @Override
    public String shortTwoKnot() {
        return "If one corner is short, move the crossing towards it. Or tie with a ribbon between.";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + " is " + percent + " of what shows" + (where.equals("top") ? ", on the top" : where.equals("sides") ? ", on the sides" : where.equals("both") ? ", on the sides and top" : "") + ".";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + " shows only in the knot and its ends.";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + " does not show.";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return percent + " of your hearth shows" + (where.equals("top") ? ", on the top" : where.equals("sides") ? ", on the sides" : where.equals("both") ? ", on the sides and top" : "") + ".";
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return percent + " of your hearth shows" + (where.equals("top") ? ", on the top" : where.equals("sides") ? ", on the sides" : where.equals("both") ? ", on the sides and top" : "") + "; " + under + " lies under the " + (thing.equals("box") ? "box" : thing.equals("books") ? "books" : thing.equals("roll") ? "roll" : thing.equals("ball") ? "ball" : thing.equals("bottles") ? "bottles" : "bottle") + ".";
    }

    @Override
    public String showsHearthInKnot() {
        return "Your hearth shows only in the knot and its ends.";
    }

    @Override
    public String showsHearthInside() {
        return "Your hearth is folded away inside.";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "Your hearth is hidden under the " + (thing.equals("box") ? "box" : thing.equals("books") ? "books" : thing.equals("roll") ? "roll" : thing.equals("ball") ? "ball" : thing.equals("bottles") ? "bottles" : "bottle") + ".";
    }

    @Override
    public String showsSpare() {
        return "Where there are two figures, it depends on the four spare corners: tucked in under the flaps, or left outside as they fall.";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "four-corner tie" : tie.equals("EDGE_ALONG_EDGE") ? "four-corner tie, box square to the cloth" : tie.equals("ERRAND") ? "errand wrap" : tie.equals("FLAT") ? "flat wrap" : tie.equals("TWO_KNOT") ? "two-knot wrap" : tie.equals("ONE_BOTTLE") ? "one-bottle wrap" : tie.equals("TWO_BOTTLES") ? "two-bottle wrap" : tie.equals("ROUND") ? "round wrap" : tie.equals("BOOKS") ? "book wrap" : "roll wrap");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "boxes, tiered and heavy things" : tie.equals("EDGE_ALONG_EDGE") ? "boxes on a large cloth" : tie.equals("ERRAND") ? "boxes carried by hand" : tie.equals("FLAT") ? "flat boxes and folded garments, without a knot" : tie.equals("TWO_KNOT") ? "long boxes and rolled mats" : tie.equals("ONE_BOTTLE") ? "a bottle standing up" : tie.equals("TWO_BOTTLES") ? "two like bottles" : tie.equals("ROUND") ? "balls, melons, round things" : tie.equals("BOOKS") ? "two like books" : "bolts of cloth, tubes, canisters");
    }

    @Override
    public String tradeAll(String enough) {
        return "Ready-made sizes that are large enough: " + enough + ".";
    }

    @Override
    public String tradeNone(String small) {
        return "Every ready-made size for gifts is too small here: " + small + ".";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "Ready-made sizes that are large enough: " + enough + ". Too small: " + small + ".";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "small gifts, lunch box, envelope" : size.equals("SHAKUSAN") ? "lunch box, tissue box, half-litre bottle" : size.equals("SHAKUYON") ? "lunch box" : size.equals("FUTAHABA") ? "cake box, one wine bottle, clothes, round things" : size.equals("NISHAKU") ? "larger cake box" : size.equals("NISHI") ? "one 1.8 litre bottle, two wine bottles, bag" : size.equals("MIHABA") ? "1.8 litre bottle, box of two bottles, shopping bag" : size.equals("LARGE") ? "large bag" : size.equals("YOHABA") ? "two to four floor cushions, table cloth" : size.equals("ITSUHABA") ? "five or six floor cushions" : size.equals("MUHABA") ? "one set of bedding" : "two sets of bedding");
    }

    @Override
    public String twoKnotCrossed() {
        return "Bring the near and far corners over the gift. They will not reach far enough to tie. Cross them in the middle, so that one turns left and the other right.";
    }

    @Override
    public String twoKnotRight() {
        return "Lift the right corner and tie it to the corner that turned right.";
    }

    @Override
    public String twoKnotTied() {
        return "Tie the left corner in the same way. The two knots are equally far from the middle.";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "Bring the near and far corners over. Cross them on top and turn them along the roll.";
    }

    @Override
    public String twoKnotRollEnds() {
        return "Fold the left and right sides in over the ends of the roll.";
    }

    @Override
    public String twoKnotRollTied() {
        return "Tie each of them to the crossed corner that comes towards it.";
    }
}
