package hearthcloth.words.choosing;

/** The room of choosing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "narrow, cut " + width : "wide, cut " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "hearth:" : kind.equals("show") ? "shows:" : kind.equals("only") ? "only:" : kind.equals("without") ? "without:" : kind.equals("first") ? "first:" : kind.equals("scheme") ? "colours:" : kind.equals("with") ? "with:" : kind.equals("contrast") ? "contrast:" : kind.equals("bars") ? "bars:" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "needs " + what;
    }

    @Override
    public String chipNoGift() {
        return "no gift yet";
    }

    @Override
    public String chipNoPiece() {
        return "no piece large enough";
    }

    @Override
    public String chipNotTogether() {
        return "not found together with the first";
    }

    @Override
    public String chipQuick() {
        return "fewest seams first";
    }

    @Override
    public String chooseNone() {
        return "There is no cloth for this yet.";
    }

    @Override
    public String chooseSee() {
        return "See what your stash can make";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "as contrasty as can be" : contrast.equals("reads") ? "the log cabin reads" : contrast.equals("easy") ? "between the two" : contrast.equals("quiet") ? "as quiet as can be" : "it melts into one field");
    }

    @Override
    public String countPieces(int n, String name) {
        return (n == 1 ? "" + name + ", " + n + " piece" : "" + name + ", " + n + " pieces");
    }

    @Override
    public String foundBack() {
        return "Back to all of them";
    }

    @Override
    public String foundBackFace() {
        return "Back";
    }

    @Override
    public String foundBeside() {
        return "Side by side";
    }

    @Override
    public String foundCannot() {
        return "This cannot be made from this stash.";
    }

    @Override
    public String foundFailed() {
        return "The search stumbled over this stash. Change a wish and look again.";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + " · no joins · " + lost + " lost" : joins == 1 ? "" + patches + " · " + joins + " join · " + lost + " lost" : "" + patches + " · " + joins + " joins · " + lost + " lost");
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + " · " + lost + " lost";
    }

    @Override
    public String foundFront(String size, String title) {
        return "Front: " + title + ", " + size;
    }

    @Override
    public String foundGone() {
        return "That proposal is gone; these are the ones now.";
    }

    @Override
    public String foundJoins(String joins) {
        return "Joins: " + joins + ".";
    }

    @Override
    public String foundKept() {
        return "Kept among your cloths.";
    }

    @Override
    public String foundKeptTap() {
        return "Kept among your cloths. Tap any bar to change it.";
    }

    @Override
    public String foundLooking() {
        return "Looking through your stash";
    }

    @Override
    public String foundMore() {
        return "Show four more";
    }

    @Override
    public String foundNearest() {
        return "The nearest that can be made is this one.";
    }

    @Override
    public String foundNotYet() {
        return "No way was found yet to make this from this stash.";
    }

    @Override
    public String foundOneScale() {
        return "Drawn to one scale.";
    }

    @Override
    public String foundPatches(int n) {
        return "" + n + " patches";
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "Looking." : "" + n + " so far, still looking.");
    }

    @Override
    public String foundStop() {
        return "Stop looking";
    }

    @Override
    public String foundStopped() {
        return "Stopped; the best so far is shown.";
    }

    @Override
    public String foundTake() {
        return "Take this one";
    }

    @Override
    public String foundTakeNamed(String title) {
        return "Take " + title;
    }

    @Override
    public String galleryAddWish() {
        return "+ wish";
    }

    @Override
    public String galleryChange() {
        return "Change";
    }

    @Override
    public String galleryDropWishes() {
        return "Begin without";
    }

    @Override
    public String galleryEmpty() {
        return "Put something on the table";
    }

    @Override
    public String galleryEmptySays() {
        return "Cloths are made of your own pieces, and none lies there yet.";
    }

    @Override
    public String galleryFor(String gift) {
        return "for " + gift + ".";
    }

    @Override
    public String galleryKeepWishes() {
        return "Keep these wishes";
    }

    @Override
    public String galleryKept() {
        return "Cloths you kept";
    }

    @Override
    public String galleryLarge() {
        return "as large as the stash goes.";
    }

    @Override
    public String galleryNoneLeft() {
        return "Your wishes leave no piece to plan from. Take one of them back.";
    }

    @Override
    public String gallerySayGift() {
        return "Say what it will wrap";
    }

    @Override
    public String gallerySpent() {
        return "Every piece is spoken for";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "Take back: " + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "What your heap can make";
    }

    @Override
    public String galleryWaiting(String gift) {
        return "You had wishes for " + gift + ". Do they hold for this one too?";
    }

    @Override
    public String galleryWish() {
        return "You wish";
    }

    @Override
    public String giftCloth() {
        return "I know the cloth, not the gift";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 or 90 x 70" : "38 1/2 or 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "Its size, " + unit;
    }

    @Override
    public String giftHow() {
        return "How do I measure it?";
    }

    @Override
    public String giftHowSays(String unit) {
        return "Measure the thing as it will lie: its longest side, the side across it, and how high it stands. Measure over handles, lids and bows. A soft thing is measured pressed as tight as you will tie it. " + (unit.equals("metric") ? "Write 30 or 30.5." : "Write 12, 12 1/2 or 12.5; centimetres too, as 30 cm.");
    }

    @Override
    public String giftKinds() {
        return "Kind of gift";
    }

    @Override
    public String giftPlanSize() {
        return "Plan this size";
    }

    @Override
    public String giftRuler() {
        return "Your ruler";
    }

    @Override
    public String giftShow() {
        return "Show";
    }

    @Override
    public String giftType() {
        return "Type on the drawing. A fraction or a decimal will do.";
    }

    @Override
    public String giftWhatTies() {
        return "What does it tie?";
    }

    @Override
    public String heldKind() {
        return "Kind of thing";
    }

    @Override
    public String heldLargest() {
        return "Largest it ties round";
    }

    @Override
    public String heldSmall() {
        return "too small for this tie";
    }

    @Override
    public String heldTie() {
        return "Tie";
    }

    @Override
    public String heldTitle() {
        return "What the cloth ties round";
    }

    @Override
    public String leftAside(int n) {
        return (n == 1 ? "" + n + " piece you have set aside" : "" + n + " pieces you have set aside");
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return (n == 1 ? "" + n + " piece that " + cloth + " counts on" : "" + n + " pieces that " + cloth + " counts on");
    }

    @Override
    public String leftMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String leftOut(String what) {
        return "Left out: " + what + ".";
    }

    @Override
    public String leftShared(String what) {
        return "Planned with too: " + what + ".";
    }

    @Override
    public String leftUnuse() {
        return "Leave them out";
    }

    @Override
    public String leftUse() {
        return "Plan with them too";
    }

    @Override
    public String lovedFile() {
        return "A garden, a wall: PNG or JPEG. Only its colours are kept";
    }

    @Override
    public String lovedFind() {
        return "Find my nearest fabrics";
    }

    @Override
    public String lovedList() {
        return "The colours of your picture and your fabrics nearest to them";
    }

    @Override
    public String lovedNone() {
        return "None of your fabrics lies near the colours of this picture; any may be used.";
    }

    @Override
    public String lovedNothing() {
        return "nothing near it";
    }

    @Override
    public String lovedTitle() {
        return "The colours of a picture you love";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + ", half light, half dark" : scheme.equals("ROUNDS") ? "Rings round " + hearth : scheme.equals("TURNS") ? "Light and dark round " + hearth : scheme.equals("FIELD") ? "" + hearth + " in a field of " + most : scheme.equals("SPIRAL") ? "A spiral from " + hearth : scheme.equals("SCATTERED") ? "" + hearth + " among many" : scheme.equals("GRADED") ? "" + hearth + " into the dusk" : scheme.equals("FRAMES") ? "" + hearth + " in frames of " + most : scheme.equals("ACCENT") ? "" + hearth + " and one bright scrap" : scheme.equals("OUTWARDS") ? "" + hearth + " at heart, best side out" : "" + most + " round " + hearth);
    }

    @Override
    public String nameSeams(int n, String title) {
        return (n == 1 ? "" + title + ", " + n + " seam" : "" + title + ", " + n + " seams");
    }

    @Override
    public String tiesCannot(String most) {
        return "more than your pieces: " + most + " square at most";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return size + " square, finished; " + tie + ".";
    }

    @Override
    public String tiesGo() {
        return "What can my heap make?";
    }

    @Override
    public String tiesJust() {
        return "Just show me something";
    }

    @Override
    public String tiesLaid() {
        return "How it lies on the cloth";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "for heavy things" : tie.equals("EDGE_ALONG_EDGE") ? "on a large cloth" : tie.equals("ERRAND") ? "to carry by hand" : tie.equals("FLAT") ? "no knot" : tie.equals("TWO_KNOT") ? "for what is long" : tie.equals("ONE_BOTTLE") ? "stands up" : tie.equals("TWO_BOTTLES") ? "side by side" : tie.equals("ROUND") ? "for what is round" : tie.equals("BOOKS") ? "for two alike" : "lies on its side");
    }

    @Override
    public String tiesRange(String least, String most) {
        return least + " with short ends, " + most + " with long; near children, flame or machines keep them short.";
    }

    @Override
    public String tiesSee() {
        return "See it tied, step by step";
    }

    @Override
    public String tiesSquare(String size) {
        return size + " square";
    }

    @Override
    public String tiesTheirs() {
        return "You choose";
    }

    @Override
    public String tiesTheirsNote() {
        return "shows most of your fabric";
    }

    @Override
    public String tiesTitle() {
        return "How will it be tied?";
    }

    @Override
    public String tiesUnsized() {
        return "Type its sizes on the drawing; each tie then says how large a cloth it takes.";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "scraps as they are" : way.equals("among") ? "a log cabin among scraps" : way.equals("two") ? "four small log cabins" : way.equals("three") ? "nine small log cabins" : way.equals("four") ? "sixteen small log cabins" : "a hearth and bars round it");
    }

    @Override
    public String wishAgain() {
        return "Look again";
    }

    @Override
    public String wishAlso() {
        return "Also what another cloth counts on";
    }

    @Override
    public String wishAny() {
        return "any";
    }

    @Override
    public String wishBands() {
        return "Bands from edge to edge";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "across the cloth" : way.equals("down") ? "down the cloth" : "as it comes");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "Bars, cut, " + unit;
    }

    @Override
    public String wishBars() {
        return "Bars and seams";
    }

    @Override
    public String wishBefore() {
        return "the cloth before";
    }

    @Override
    public String wishColours() {
        return "Colours";
    }

    @Override
    public String wishContrast() {
        return "Contrast";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "As contrasty as can be" : contrast.equals("reads") ? "The log cabin reads" : contrast.equals("easy") ? "Between the two" : contrast.equals("quiet") ? "As quiet as can be" : "It melts into one field");
    }

    @Override
    public String wishCutting() {
        return "Cutting a scrap in two";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "never; only edges are trimmed" : rule.equals("cut") ? "where it helps" : "either");
    }

    @Override
    public String wishExact() {
        return "Sizes, order, what is put together";
    }

    @Override
    public String wishGood() {
        return "Your heap is good for";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return (kind.equals("HALVES") ? "your lights and darks lie well apart" : kind.equals("SPIRAL") ? "your lights and darks lie well apart" : kind.equals("TURNS") ? "your lights and darks lie well apart" : kind.equals("GRADED") ? "your fabrics run from light to dark in even steps" : kind.equals("ACCENT") ? "" + fabric + " is brighter than all the rest" : kind.equals("SCATTERED") ? "you have many fabrics, and none is most of the heap" : kind.equals("FIELD") ? "half of the heap or more is " + fabric : kind.equals("FRAMES") ? "two fabrics, one clearly lighter, are most of the heap" : "you have enough of several fabrics for a round each");
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "The hearth of" : what.equals("show") ? "Shows when tied" : "Without");
    }

    @Override
    public String wishHearth(String unit) {
        return "Hearth, cut, " + unit;
    }

    @Override
    public String wishMiddle() {
        return "In the middle, uncut";
    }

    @Override
    public String wishMixed() {
        return "Mixed with";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "Trim off a piece at most, " + unit;
    }

    @Override
    public String wishNarrow() {
        return "Narrow bars";
    }

    @Override
    public String wishOpen() {
        return "What may I leave open?";
    }

    @Override
    public String wishOpenSays() {
        return "All of it. The hearth is the square in the middle, bars are the strips round it, a round is one bar on each side. What you leave empty the stash decides. Several bar widths may stand side by side, from the hearth outwards: 3, 4, 5.";
    }

    @Override
    public String wishOrder() {
        return "Order";
    }

    @Override
    public String wishPatches() {
        return "Patches";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "large and small together" : sizes.equals("even") ? "as alike as can be" : "any");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "The hearth of " + fabric : what.equals("show") ? "Shows when tied " + fabric : "Without " + fabric);
    }

    @Override
    public String wishQuick() {
        return "Fewest seams first";
    }

    @Override
    public String wishRounds() {
        return "Rounds";
    }

    @Override
    public String wishScraps() {
        return "For scraps as they are";
    }

    @Override
    public String wishSlack(String unit) {
        return "Larger than the least by, " + unit + "; none for the least";
    }

    @Override
    public String wishTogether() {
        return "Put together as";
    }

    @Override
    public String wishWide() {
        return "Wide bars";
    }

    @Override
    public String wishWith() {
        return "Pieces that must be in";
    }
}
