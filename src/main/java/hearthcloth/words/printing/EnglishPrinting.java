package hearthcloth.words.printing;

/** The room of printing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishPrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return (n == 1 ? "Piece " + piece + ", " + fabric + ", " + size + ", with " + n + " cut" : "Piece " + piece + ", " + fabric + ", " + size + ", with " + n + " cuts");
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "Front of " + title + ", " + size : "Back of " + title + ", " + size);
    }

    @Override
    public String altPatches(int n) {
        return (n == 1 ? "" + n + " patch" : "" + n + " patches");
    }

    @Override
    public String altStep(String added, String step, String work) {
        return "Step " + step + ": " + work + " and " + added + ", front up, before they are sewn";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + ", " + size + ".";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + ", " + size + ". For " + gift + ".";
    }

    @Override
    public String bagHow() {
        return "Cut along the dashed lines and put each slip into its bag, with the pieces it names. Sizes are width × length, the length along the selvage.";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "piece " + piece + ", " + size + " (" + patches + ")";
    }

    @Override
    public String bagSlips() {
        return "Bag slips";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "Bag " + n + ", " + name;
    }

    @Override
    public String beforeTitle() {
        return "Before you cut";
    }

    @Override
    public String boxMeasure() {
        return "It should now measure";
    }

    @Override
    public String boxWay() {
        return "width × height, front up";
    }

    @Override
    public String cardMeasures(String size) {
        return "Measures " + size + ".";
    }

    @Override
    public String cardOthers(int n) {
        return (n == 1 ? "Sew the other in the same way." : "Sew the others in the same way.");
    }

    @Override
    public String cardThick(String places) {
        return "Thick: " + places + ". Slow down there.";
    }

    @Override
    public String careTitle() {
        return "Take care";
    }

    @Override
    public String chosenTitle() {
        return "Chosen for you";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "As red-blind eyes see it" : eyes.equals("deutan") ? "As green-blind eyes see it" : "As blue-blind eyes see it");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "black" : shade.equals("dark") ? "dark grey" : shade.equals("middle") ? "grey" : shade.equals("light") ? "light grey" : "white");
    }

    @Override
    public String coloursLeast() {
        return "Shows least";
    }

    @Override
    public String coloursLike(String fabric) {
        return "like " + fabric;
    }

    @Override
    public String coloursMost() {
        return "Shows most";
    }

    @Override
    public String coloursSeams() {
        return "Seams";
    }

    @Override
    public String coloursThread() {
        return "Thread for each seam, by its colour. One that shows least hides uneven stitches; one that shows most is part of the look.";
    }

    @Override
    public String coloursTitle() {
        return "Its colours";
    }

    @Override
    public String coloursValues() {
        return "Light and dark, in five steps";
    }

    @Override
    public String corner() {
        return "One corner";
    }

    @Override
    public String cornerFirst(String length) {
        return "First fold, " + length + " from the raw edge";
    }

    @Override
    public String cornerLast(String length) {
        return "Last fold, " + length + " from the raw edge: the finished edge";
    }

    @Override
    public String cornerLife() {
        return "One corner, life size";
    }

    @Override
    public String cornerMitre() {
        return "Mitre: stitched with the corner folded in half";
    }

    @Override
    public String cornerOff() {
        return "Corner cut off";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "Line " + row + " of the stash" + (washed.equals("YES") ? ", washed" : washed.equals("NO") ? ", not washed" : "") + ". Drawn " + scale + ", measures in " + (unit.equals("metric") ? "centimetres" : "inches") + ".";
    }

    @Override
    public String cutHow() {
        return "Cut in the order of the numbers. Each number sits on its cut with the measure. Its arrowhead points to the edge to measure from. Offcuts are drawn pale, with their names; keep them. Crossed-out parts are scraps too small to keep. In every drawing the lengthwise grain runs from top to bottom. Where it says \"quarter turn\", the patch is drawn a quarter turn from how it sits in the cloth.";
    }

    @Override
    public String cutLeft(String left) {
        return "Left: " + left + ".";
    }

    @Override
    public String cutNothing() {
        return "Nothing to cut: use the whole piece.";
    }

    @Override
    public String cutSheet(int n, String title) {
        return (n == 1 ? "" + title + ". " + n + " piece. Cut in the order of the numbers. The arrowhead of each circle points to the edge to measure from." : "" + title + ". " + n + " pieces. Cut in the order of the numbers. The arrowhead of each circle points to the edge to measure from.");
    }

    @Override
    public String cutTitle() {
        return "Cut";
    }

    @Override
    public String cutWhole() {
        return "Use these pieces whole";
    }

    @Override
    public String drawn(String scale) {
        return "Drawn " + scale + ".";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + ", drawn " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "Front, with fells and hem" : "Back, with fells and hem");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "Front" : "Back");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + ". " + size + " finished, hemmed. Drawn " + scale + ".";
    }

    @Override
    public String figureCuts() {
        return "Cuts";
    }

    @Override
    public String figureFinished() {
        return "Finished";
    }

    @Override
    public String figureJoins() {
        return "Joins";
    }

    @Override
    public String figureLost() {
        return "Lost";
    }

    @Override
    public String figurePatches() {
        return "Patches";
    }

    @Override
    public String figureSeams() {
        return "Seams";
    }

    @Override
    public String figureThread() {
        return "Thread";
    }

    @Override
    public String grain() {
        return "grain";
    }

    @Override
    public String grainNap() {
        return "grain, nap this way";
    }

    @Override
    public String hemTitle() {
        return "Hem";
    }

    @Override
    public String item(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + ": " + what + ".";
    }

    @Override
    public String kitsEach(String shared) {
        return "Each piece is in one bag only" + (shared.equals("yes") ? ", but for those that two share: there the first cuts before the second." : "; nobody has to wait for another.");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return who + " cuts piece " + of + " first; what is left, " + size + ", becomes piece " + piece + ".";
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return "Piece " + piece + " is what " + who + " leaves of piece " + of + ": cut it after " + who + ".";
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + ": " + (made.equals("no") ? "nothing could be made." : "not as it was asked for.") + " " + why;
    }

    @Override
    public String kitsNearest() {
        return "This is the nearest that could be made; see the shopping list.";
    }

    @Override
    public String kitsQuarters(int n) {
        return (n == 1 ? "" + n + " fat quarter" : "" + n + " fat quarters");
    }

    @Override
    public String kitsRunning(int n) {
        return "Kits for " + (n == 1 ? "" + n + " cloth" : "" + n + " cloths");
    }

    @Override
    public String kitsTitle() {
        return "Kits";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "In fat quarters (18 × 20 in at least)" : "In fat quarters (45 × 50 cm at least)") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "Off a bolt 44 in wide (40 in between the selvages)" : "Off a bolt 110 cm wide (102 cm between the selvages)") : "" + (unit.equals("in") ? "Off a bolt 60 in wide (58 in between the selvages)" : "Off a bolt 150 cm wide (145 cm between the selvages)"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "No bar is joined in any of them." : n == 1 ? "Nobody has more than " + n + " join." : "Nobody has more than " + n + " joins.");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " " + (way.equals("part") ? "of a yard" : way.equals("one") ? "yard" : "yards");
    }

    @Override
    public String labelHearth() {
        return "hearth";
    }

    @Override
    public String labelOffcut(String number) {
        return "offcut " + number;
    }

    @Override
    public String legendFell() {
        return "Fell, one shade off";
    }

    @Override
    public String legendStitches() {
        return "Row of stitches";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + " (colour not known yet)";
    }

    @Override
    public String legendWrong() {
        return "Hatched: its wrong side";
    }

    @Override
    public String lostJoins(int n) {
        return (n == 1 ? "No plan for this cloth has fewer than " + n + " join." : "No plan for this cloth has fewer than " + n + " joins.");
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "Lost: scraps too small to use again. You cut into " + touched + " of fabric; no plan for this cloth could manage with less than " + least + ".";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "Lost: scraps too small to use again. You cut into " + touched + " of fabric; no plan for this cloth could manage with less than " + least + " or lose less than " + lost + ".";
    }

    @Override
    public String lostTouched(String touched) {
        return "Lost: scraps too small to use again. You cut into " + touched + " of fabric.";
    }

    @Override
    public String matStays() {
        return "stays";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "Piece " + piece + " on the mat, " + made + " of " + all + " cuts made";
    }

    @Override
    public String measuringPrint() {
        return "Print at 100 %, not fitted to the page. Lay it flat among the pieces.";
    }

    @Override
    public String measuringRuler() {
        return "Lay a ruler to the thin line: it should measure 20 cm (7 7/8 in).";
    }

    @Override
    public String measuringSay() {
        return "If it does not, say what it measures when you send the photograph.";
    }

    @Override
    public String measuringTitle() {
        return "Measuring sheet";
    }

    @Override
    public String needsTitle() {
        return "What you need";
    }

    @Override
    public String netFold() {
        return "Inside up, as it lies before you. Fold along the lines; where they crowd, the cloth is gathered: crumple the paper there, or twist it.";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return "A cloth " + size + " round " + gift + ", drawn " + scale + ". Cut out, it wraps " + small + " of card.";
    }

    @Override
    public String netSquare(String side) {
        return side + " square";
    }

    @Override
    public String netTitle(String tie) {
        return "The folds of the " + tie;
    }

    @Override
    public String page(String all, String number) {
        return "page " + number + " of " + all;
    }

    @Override
    public String pictureCuts(String name) {
        return "Cutting plan of " + name;
    }

    @Override
    public String pictureDone() {
        return "Tied";
    }

    @Override
    public String pictureKnot() {
        return "A reef knot";
    }

    @Override
    public String pictureNet() {
        return "Flat net, inside up: fold along the lines";
    }

    @Override
    public String pictureTied() {
        return "The gift tied, from above, from the front and from a corner";
    }

    @Override
    public String pictureTying() {
        return "While tying";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + ", cut already";
    }

    @Override
    public String piecesHow(String unit) {
        return "Each piece with what you cut from it. Sizes are width × length in " + (unit.equals("metric") ? "centimetres" : "inches") + ": the second number runs along the lengthwise grain.";
    }

    @Override
    public String piecesTitle() {
        return "Fabric and pieces";
    }

    @Override
    public String pinHatched() {
        return "Hatched in every picture: the wrong side of a fabric.";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return added + " lies on top with its " + (face.equals("front") ? "front" : "back") + " up, pinned to " + work + ".";
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return wrapping + " sticks out " + length + ". This wider seam allowance will wrap round the other.";
    }

    @Override
    public String pinStitching() {
        return "The dashed line is the stitching. Take each pin out before the foot reaches it.";
    }

    @Override
    public String pinTitle() {
        return "Step 1, pinned";
    }

    @Override
    public String seamTitle() {
        return "The seam";
    }

    @Override
    public String sectionFold() {
        return "Fold under, edgestitch";
    }

    @Override
    public String sectionOpen() {
        return "Open out, press";
    }

    @Override
    public String sectionStitch() {
        return "Stitch";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + ", is wrapped";
    }

    @Override
    public String sectionWraps(String name) {
        return name + ", wraps";
    }

    @Override
    public String sewTitle() {
        return "Sew";
    }

    @Override
    public String shopNoWay() {
        return "However much of one fabric was added, no way was found to make these.";
    }

    @Override
    public String shopNone() {
        return "Nothing: every cloth can be cut from what you have. Thread and tools are named in each guide.";
    }

    @Override
    public String shopTitle() {
        return "Shopping list";
    }

    @Override
    public String shopWays() {
        return "Any one of these ways is enough, together with what the others leave. Each was tried: the cloths were planned from it. Wash and press what you buy before it is cut.";
    }

    @Override
    public String slipsHow() {
        return "Cut along the dashed lines. Pin each slip to its patch as soon as it is cut, on the side that will be the front of the cloth. The arrow points to the top of the cloth.";
    }

    @Override
    public String slipsRunning(String title) {
        return title + ", patch slips";
    }

    @Override
    public String slipsSize(String size) {
        return size + ", as cut";
    }

    @Override
    public String slipsTitle() {
        return "Patch slips";
    }

    @Override
    public String slipsTop() {
        return "top";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "Right side up" : showing.equals("WRONG") ? "Wrong side up" : "Either side up");
    }

    @Override
    public String square(String side) {
        return "This square measures " + side + " on each side. If yours does not, print again at 100 % (not \"fit to page\"). Measure on the paper only where it says life size. Everywhere else use the written measures.";
    }

    @Override
    public String stepTrim() {
        return "trim";
    }

    @Override
    public String stepWraps() {
        return "wraps";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + "; bar " + alone;
    }

    @Override
    public String tableHow() {
        return "Sew every seam as in step 1. \"The work\" is everything sewn together so far. Sizes are width × height, front up. Slow down at the thick places, or turn the handwheel.";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + " (join its " + n + " parts first)";
    }

    @Override
    public String tableMeasures() {
        return "Measures";
    }

    @Override
    public String tableNewWraps() {
        return "In a joined bar each new part wraps the one before.";
    }

    @Override
    public String tableOldWraps() {
        return "In a joined bar each part wraps the next.";
    }

    @Override
    public String tableSew() {
        return "Sew";
    }

    @Override
    public String tableStep() {
        return "Step";
    }

    @Override
    public String tableThick() {
        return "Thick";
    }

    @Override
    public String tableTitle() {
        return "All seams, in order";
    }

    @Override
    public String tableWraps() {
        return "Wraps";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + ", " + size + ": " + (patches == 1 ? "" + patches + " patch" : "" + patches + " patches") + " from " + (pieces == 1 ? "" + pieces + " piece" : "" + pieces + " pieces") + (joins == 0 ? "" : joins == 1 ? ", " + joins + " join" : ", " + joins + " joins") + ".";
    }

    @Override
    public String teacherDot() {
        return "A dot on a cloth marks where most layers meet. Have whoever sews there press the place with steam and turn the handwheel.";
    }

    @Override
    public String teacherNoCross() {
        return "No seam crosses another.";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "Thickest: " + plies + " layers at " + (places == 1 ? "" + places + " place" : "" + places + " places") + ", sewn in " + (count == 1 ? "step " + steps : "steps " + steps) + ".";
    }

    @Override
    public String teacherTitle() {
        return "For the teacher";
    }

    @Override
    public String thickTitle() {
        return "Where it will be thick";
    }

    @Override
    public String threadTitle() {
        return "Thread";
    }

    @Override
    public String tieCare() {
        return "Take care when you tie it";
    }

    @Override
    public String tieKnot() {
        return "The reef knot";
    }

    @Override
    public String tieTitle() {
        return "Tie it";
    }

    @Override
    public String tiedCare() {
        return "Take care when it is tied";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return "The " + tie + ", for " + suited + ". Each arrow ends where the corner is now.";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return "The " + tie + " (" + trade + "), for " + suited + ". Each arrow ends where the corner is now.";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "This cloth (" + size + ") is just large enough for " + reason + ".";
    }

    @Override
    public String tiedKnot() {
        return "The knot";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "This cloth (" + size + ") leaves " + spare + " more than the plan allows for " + reason + ".";
    }

    @Override
    public String tiedNear() {
        return "Near the knot (about a hand's width) real cloth gathers up, and loose ends fall where they will.";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "The next ready-made size up is " + size + ", sold for: " + uses + ".";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "The next ready-made size up is " + size + " (" + trade + "), sold for: " + uses + ".";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "The gift, tied: " + gift + ", " + tie;
    }

    @Override
    public String tiedShort() {
        return "When a corner will not reach";
    }

    @Override
    public String tiedShows() {
        return "What shows";
    }

    @Override
    public String tiedSure() {
        return "How sure the size is";
    }

    @Override
    public String tiedTitle() {
        return "The gift, tied";
    }

    @Override
    public String tiedTying() {
        return "Tying it";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + ".";
    }

    @Override
    public String toolsTitle() {
        return "Tools";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "From above" : view.equals("front") ? "From the front" : view.equals("right") ? "From the right" : view.equals("spine") ? "From the spine" : "From a corner");
    }

    @Override
    public String washingTitle() {
        return "Washing";
    }
}
