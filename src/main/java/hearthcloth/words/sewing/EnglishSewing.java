package hearthcloth.words.sewing;

/** The room of sewing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "about " + length;
    }

    @Override
    public String beforeGrain() {
        return "Lay each piece with its lengthwise grain (the direction of the selvage) running from top to bottom.";
    }

    @Override
    public String beforeMeasure(String length) {
        return "Measure each piece. If one is more than " + length + " smaller than in this plan, plan again with its true size.";
    }

    @Override
    public String beforePin() {
        return "Pin its slip to every patch as soon as it is cut. Pin it on the side that will be the front of the cloth, with the top of the slip towards the top of the cloth.";
    }

    @Override
    public String beforePress() {
        return "Press every piece flat and let it cool. Cut off the selvage if it is still there, and measure again.";
    }

    @Override
    public String beforeStraight() {
        return "First cut the left and the top edge straight and square to each other, because you measure every cut from an edge. Where a patch needs the piece to its very edge, take off no more than a thread or two.";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return "Block " + letters + " begins. Lay out " + first + " to " + last + " as in the picture of the front. You need nothing else for it.";
    }

    @Override
    public String blockDone(String letters) {
        return "Block " + letters + " is done.";
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return "Sew " + added + " to the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " " + (part.equals("end") ? "end" : "edge") + " of " + work + ", as in step 1.";
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return wrapping + " wraps: let its edge stick out " + length + ".";
    }

    @Override
    public String briefStitch(String top) {
        return "Stitch " + top + " from the edge on top. Finish as in step 1.";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return (side.equals("left") ? "Turn " + added + " over" : side.equals("right") ? "Turn " + added + " over" : side.equals("top") ? "Flip " + added + " down" : "Flip " + added + " up") + " onto the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " " + (part.equals("end") ? "end" : "edge") + " of " + work + ".";
    }

    @Override
    public String briefWraps(String wrapping) {
        return wrapping + " wraps.";
    }

    @Override
    public String careChildren() {
        return "A knotted cloth can tighten round a neck. Keep it away from children under three, above all when its ends are longer than 22 cm (8½ in).";
    }

    @Override
    public String careChildrenTitle() {
        return "Small children";
    }

    @Override
    public String careCutter() {
        return "Shut the guard after every cut. Cut away from yourself with the blade upright. Keep your fingers well back from the edge of the ruler, and keep pins off the mat. Wrap old blades before you throw them away.";
    }

    @Override
    public String careCutterTitle() {
        return "Rotary cutter";
    }

    @Override
    public String careDye() {
        return "Deep reds, blues and purples may bleed in the first few washes. They may also bleed when a damp cloth lies on something pale.";
    }

    @Override
    public String careDyeTitle() {
        return "Dye";
    }

    @Override
    public String careFlames() {
        return "Cloth burns. Keep a wrapped gift at least 30 cm (12 in) from any flame.";
    }

    @Override
    public String careFlamesTitle() {
        return "Candles and hobs";
    }

    @Override
    public String careFood() {
        return "Keep a separate cloth for food. Wash it often and dry it right through. Put raw meat in a closed bag first.";
    }

    @Override
    public String careFoodTitle() {
        return "Food";
    }

    @Override
    public String careIron() {
        return "Stand it on its heel where nobody can catch the cord. Keep your face and fingers out of the steam. Unplug it when you stop.";
    }

    @Override
    public String careIronTitle() {
        return "Iron";
    }

    @Override
    public String careNeedle() {
        return "Take pins out before they reach the foot, and never hold them in your mouth. If a needle breaks, find every piece of it.";
    }

    @Override
    public String careNeedleTitle() {
        return "Needle";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + ": " + size + (how.equals("turned") ? " (quarter turn)" : how.equals("whole") ? ", the whole piece" : how.equals("turnedWhole") ? " (quarter turn), the whole piece" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return "Keep offcut " + number + ": " + size;
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return "Cut " + what + " " + (way.equals("down") ? "from top to bottom" : "from left to right") + ", " + measure + " from its " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " edge. This gives " + gives + " and leaves " + leaves + ".";
    }

    @Override
    public String cutScraps(int n) {
        return (n == 1 ? "" + n + " scrap too small to keep" : "" + n + " scraps too small to keep");
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "Piece " + piece + ": " + fabric + ", " + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "Piece " + piece + ": " + fabric + ", " + size + ", cut already";
    }

    @Override
    public String fewClip(String length) {
        return "Cut a triangle off each raw corner: " + length + " along both edges.";
    }

    @Override
    public String fewClipNoMore() {
        return "No more than that: the corner gets less thick, and stays shut.";
    }

    @Override
    public String fewClosePush() {
        return "Push loose threads in with the eye of a needle.";
    }

    @Override
    public String fewCloseSew() {
        return "Sew each opening shut by hand, a few small stitches.";
    }

    @Override
    public String fewDiagonals(String length) {
        return "Measure both diagonals: each about " + length + ".";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return "Press to " + wrapped + ", turn " + wrapping + " under " + under + ", stitch the fold.";
    }

    @Override
    public String fewFoldShort(String under) {
        return "Press; turn the wide edge under " + under + ", stitch the fold.";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "Fold the other way along the stitches. Stitch " + band + " from the fold.";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "Open it, press the flap towards " + wrapped + ".";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "Open it, press the flap flat.";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "Front" : "Back") + " up. Fold in " + length + " along " + (edges.equals("topBottom") ? "the top and bottom edges" : edges.equals("sides") ? "both side edges, hems and all" : "all four edges") + ". Press.";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return "Fold in again by " + length + ". Press and pin.";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "Front" : "Back") + " up. Fold in " + length + " along " + (edges.equals("topBottom") ? "the top and bottom edges" : edges.equals("sides") ? "both side edges, hems and all" : "all four edges") + ". Press and pin.";
    }

    @Override
    public String fewHemOpen() {
        return "Open it again. The corner will be where the inner creases cross.";
    }

    @Override
    public String fewHemPress() {
        return "Press.";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return "Edgestitch " + edge + " from " + (from.equals("fold") ? "the inner fold" : "the raw edge") + ". Backstitch both ends.";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return "Edgestitch " + edge + " from " + (from.equals("fold") ? "the inner fold" : "the raw edge") + ", all the way round.";
    }

    @Override
    public String fewLappedHook(String band) {
        return "Hook the folds, " + band + " over each other. Pin.";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return "Both " + (face.equals("front") ? "front" : "back") + " up, " + added + " at the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + ".";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return "Both " + (face.equals("front") ? "front" : "back") + " up, beside each other.";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return "Press " + turn + " of " + wrapping + " to the " + (face.equals("front") ? "back" : "front") + ", " + under + " of the other to the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String fewLappedPressShort() {
        return "Press both edges over, as the picture of the seam shows.";
    }

    @Override
    public String fewLappedStitch() {
        return "Stitch along both folds, one from each side. Press.";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return (face.equals("front") ? "Front" : "Back") + " up. " + (side.equals("left") ? "Turn " + added + " onto it like a page" : side.equals("right") ? "Turn " + added + " onto it like a page" : "Flip " + added + " onto it") + ", at its " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " " + (part.equals("end") ? "end" : "edge") + ".";
    }

    @Override
    public String fewLayLook() {
        return "Step back and look. Two of the same size can still be swapped.";
    }

    @Override
    public String fewLayOut(int n) {
        return (n == 1 ? "Lay out the one patch as in the picture, each with its slip." : "Lay out all " + n + " as in the picture, each with its slip.");
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "Front" : "Back") + " up. " + (side.equals("left") ? "Turn " + added : side.equals("right") ? "Turn " + added : "Flip " + added) + " onto its " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " " + (part.equals("end") ? "end" : "edge") + ".";
    }

    @Override
    public String fewLayStack() {
        return "Stack them in sewing order, the first on top.";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return "Level at the " + (start.equals("left") ? "left" : start.equals("right") ? "right" : start.equals("top") ? "top" : "bottom") + "; " + length + " runs on at the " + (end.equals("left") ? "left" : end.equals("right") ? "right" : end.equals("top") ? "top" : "bottom") + ".";
    }

    @Override
    public String fewMitreFold(String face) {
        return "Fold the corner in half, " + (face.equals("front") ? "front to front" : "back to back") + ", raw edges together.";
    }

    @Override
    public String fewMitreMark(String length) {
        return "Mark both raw edges " + length + " from the point.";
    }

    @Override
    public String fewMitreRule() {
        return "From the mark rule a line square to the fold.";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "Stitch on it from the fold, " + about + ". Backstitch both ends.";
    }

    @Override
    public String fewMitreStitchOut() {
        return "Stitch on it from fold to raw edge. Backstitch both ends.";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "Trim the point " + about + " beside it. Press open, turn out.";
    }

    @Override
    public String fewPress(String wrapped) {
        return "Press both edges towards " + wrapped + ".";
    }

    @Override
    public String fewPressShort() {
        return "Press both edges one way.";
    }

    @Override
    public String fewPull() {
        return "If they differ, pull the short one longer and press again.";
    }

    @Override
    public String fewRoundCorner() {
        return "At a corner: needle down, foot up, turn the cloth.";
    }

    @Override
    public String fewRoundEnd() {
        return "Sew over the first stitches at the end. Press.";
    }

    @Override
    public String fewRoundFold() {
        return "Fold the hem in along its creases, corners sharp. Press and pin.";
    }

    @Override
    public String fewRoundStart() {
        return "Start in the middle of a side.";
    }

    @Override
    public String fewSides() {
        return "Sides as in the picture.";
    }

    @Override
    public String fewSquare(String face) {
        return "Press the whole cloth flat, " + (face.equals("front") ? "front" : "back") + " up.";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return "Let " + wrapping + " stick out " + length + ": it will wrap. Pin.";
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "Let the edge that wraps stick out " + length + ". Pin.";
    }

    @Override
    public String fewStitch(String top) {
        return "Stitch " + top + " from the edge on top. Backstitch both ends.";
    }

    @Override
    public String fewTrialCut(String side) {
        return "Cut two scraps " + side + " square. Sew them as you will the first seam.";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return "Set the stitch length to " + stitch + ".";
    }

    @Override
    public String fewTrialMeasure() {
        return "Measure after every step.";
    }

    @Override
    public String fewTrialNarrow() {
        return "Too narrow? Stitch a thread nearer the edge next time.";
    }

    @Override
    public String fewTrialWide() {
        return "Too wide? Stitch a thread farther in.";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "Trim its end, and its edge by " + length + ".";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "Trim its edge by " + length + ".";
    }

    @Override
    public String fewTrimEdges() {
        return "Trim the edges only where they are not straight.";
    }

    @Override
    public String fewTrimEnd() {
        return "Trim its end even.";
    }

    @Override
    public String fewWhipOpen() {
        return "Open it out and press it flat.";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return "Press " + wide + " of " + wrapping + ", " + narrow + " of the other to the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "Press both edges to the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String fewWhipSew() {
        return "Line up the two folds. Whipstitch them by hand, about 1 mm apart.";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "Open the seam out flat, " + (face.equals("front") ? "front" : "back") + " up. Press the flap towards " + wrapped + ".";
    }

    @Override
    public String frenchOther(String face) {
        return "Press the seam, then fold along the stitching the other way, " + (face.equals("front") ? "front to front" : "back to back") + ".";
    }

    @Override
    public String frenchSecond(String band) {
        return "Stitch " + band + " from the fold. Backstitch at both ends. The raw edges are now shut in.";
    }

    @Override
    public String frenchSharp() {
        return "Press the fold sharp.";
    }

    @Override
    public String frenchSnip() {
        return "Snip off loose threads, so that none can show.";
    }

    @Override
    public String frenchTrim(String length) {
        return "Trim both seam allowances to " + length + ".";
    }

    @Override
    public String hemCheck(String size) {
        return "The cloth should now measure " + size + ", width × height, front up.";
    }

    @Override
    public String hemClip(String length) {
        return "Cut a small triangle off each raw corner: " + length + " along both edges and no more. This makes the corner of the hem less thick.";
    }

    @Override
    public String hemClipTitle() {
        return "Clip the four corners";
    }

    @Override
    public String hemClosePush() {
        return "Each side hem is open at both ends. Push loose threads in with the eye of a needle.";
    }

    @Override
    public String hemCloseSew() {
        return "Sew each opening shut by hand with a few small stitches.";
    }

    @Override
    public String hemCloseTitle() {
        return "Close the four corners";
    }

    @Override
    public String hemCreases() {
        return "Open the hem out again. In each corner the creases cross. The finished corner will be where the inner ones cross.";
    }

    @Override
    public String hemFold(String edges, String length) {
        return "Fold in " + length + " along " + (edges.equals("topBottom") ? "the top and the bottom edge" : edges.equals("sides") ? "the left and the right edge, including the ends of the hems you have just sewn" : "all four edges") + ". Press.";
    }

    @Override
    public String hemFoldAgain(String length) {
        return "Fold in again by " + length + ", so that the raw edge is inside. Press and pin.";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return "Fold in " + length + " along " + (edges.equals("topBottom") ? "the top and the bottom edge" : edges.equals("sides") ? "the left and the right edge, including the ends of the hems you have just sewn" : "all four edges") + ". Press and pin. The raw edge still shows.";
    }

    @Override
    public String hemLay(String face) {
        return "Lay the cloth " + (face.equals("front") ? "front" : "back") + " up. The hem is turned to the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String hemMitreFold(String face) {
        return "Fold the corner in half, " + (face.equals("front") ? "front to front" : "back to back") + ", so that its two raw edges lie on each other.";
    }

    @Override
    public String hemMitreMark(String length) {
        return "Mark the raw edges " + length + " from the point of the corner. Rule a line from that mark, square to the diagonal fold. It meets the fold where the inner creases cross.";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "Stitch on the line from the fold to the outer crease, " + about + ". Backstitch at both ends. Leave the rest open up to the raw edge: it will be folded in.";
    }

    @Override
    public String hemMitreStitchOut() {
        return "Stitch on the line from the fold to the raw edge. Backstitch at both ends.";
    }

    @Override
    public String hemMitreTitle() {
        return "Mitre the four corners, one after the other";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "Trim the point off beside the line: cut from " + about + " along each raw edge. Press the small seam open and turn the corner out.";
    }

    @Override
    public String hemPressTitle() {
        return "Press the hem";
    }

    @Override
    public String hemRoundCorner() {
        return "At each corner stop with the needle down, lift the foot and turn the cloth. At the end sew over the first stitches. Press.";
    }

    @Override
    public String hemRoundFold() {
        return "Fold the hem in again along its creases and push the corners out sharp. Press and pin.";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return "Edgestitch " + edge + " from " + (from.equals("fold") ? "the inner fold" : "the raw edge") + " all the way round. Start in the middle of a side.";
    }

    @Override
    public String hemRoundTitle() {
        return "Stitch the hem";
    }

    @Override
    public String hemSidesTitle() {
        return "Hem the left and the right side";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "Measure both diagonals. Each should be about " + length + ". If they differ, gently pull the short one longer and press again.";
    }

    @Override
    public String hemSquarePress(String face) {
        return "Press the whole cloth flat, " + (face.equals("front") ? "front" : "back") + " up.";
    }

    @Override
    public String hemSquareTitle() {
        return "Square up";
    }

    @Override
    public String hemSquareTrim() {
        return "Trim the four edges only where they are not straight.";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return "Edgestitch " + edge + " from " + (from.equals("fold") ? "the inner fold" : "the raw edge") + ", with " + stitch + " stitches. Backstitch at both ends. Press.";
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return "Thick on the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " edge about " + places + " from " + (side.equals("left") ? "its top end" : side.equals("right") ? "its top end" : "its left end") + " (seen from the front). Seams run into the hem there: up to " + plies + " layers.";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "Thick at each corner: up to " + plies + " layers. Start the row a little way in and sew the corner last. Turn the handwheel there.";
    }

    @Override
    public String hemTopBottomTitle() {
        return "Hem the top and the bottom";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return "Hook the folds into each other, " + wrapping + " on top, until they overlap by " + band + " and the raw edges meet inside. Pin.";
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return "Lay " + work + " " + (face.equals("front") ? "front" : "back") + " up. Lay " + added + " beside it, also " + (face.equals("front") ? "front" : "back") + " up, at the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " edge.";
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return "Press " + turn + " along the edge of " + wrapping + " to its " + (face.equals("front") ? "back" : "front") + ", and " + under + " along the edge of " + wrapped + " to its " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return "Edgestitch " + edge + " from the fold you see, with " + stitch + " stitches. Turn over and edgestitch the other fold. Backstitch at both ends. Press.";
    }

    @Override
    public String layAll(int n) {
        return (n == 1 ? "Lay out the one patch as in the picture of the front, each with its slip." : "Lay out all " + n + " patches as in the picture of the front, each with its slip.");
    }

    @Override
    public String layBars() {
        return "The hearth is the centre. A bar is named by its round and its turn: 2C is the third bar of the second round. 2C·1 is the first part of that bar.";
    }

    @Override
    public String layLetters() {
        return "A letter is a small task. Sew all of A together first, then all of B and so on, in the order of the numbers. Keep each letter in its own pile.";
    }

    @Override
    public String layLook() {
        return "Step back and look. Now is the last time to swap two patches of the same size.";
    }

    @Override
    public String layStack() {
        return "Stack the patches in sewing order, the first on top.";
    }

    @Override
    public String layTitle() {
        return "Lay everything out";
    }

    @Override
    public String layWork() {
        return "In the steps below, \"the work\" is everything sewn together so far.";
    }

    @Override
    public String lessThan(String length) {
        return "less than " + length;
    }

    @Override
    public String nameBar(String label) {
        return "bar " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "block " + letters;
    }

    @Override
    public String nameFree(String label) {
        return label;
    }

    @Override
    public String nameHearth() {
        return "the hearth";
    }

    @Override
    public String nameJoined(String label) {
        return "the joined parts of " + label;
    }

    @Override
    public String nameOffcut(String number) {
        return "offcut " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return "the pair " + from + " and " + to;
    }

    @Override
    public String namePart(String label) {
        return "part " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "the part " + from + " to " + to;
    }

    @Override
    public String namePatch(String label) {
        return "patch " + label;
    }

    @Override
    public String namePiece(String label) {
        return "piece " + label;
    }

    @Override
    public String nameScrap() {
        return "a scrap too small to keep";
    }

    @Override
    public String nameStepBlock(String step) {
        return "the block of step " + step;
    }

    @Override
    public String nameStrip(String label) {
        return "strip " + label;
    }

    @Override
    public String nameThePiece() {
        return "the piece";
    }

    @Override
    public String nameWork() {
        return "the work";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "the work " + from + " to " + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "piece " + piece + ", " + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "piece " + piece + ", " + size + ", cut already";
    }

    @Override
    public String seamCheck(String size, String what) {
        return (what.equals("bar") ? "The bar" : "The work") + " should now measure " + size + ", width × height, front up.";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "Edgestitch " + edge + " from the fold, through all " + (plies == 4 ? "four" : "" + plies) + " layers. Backstitch at both ends. Press.";
    }

    @Override
    public String seamEven() {
        return "Line up the two edges. Pin.";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return "Fold the raw edge of " + wrapping + " under by " + under + ", so that it wraps the raw edge of " + wrapped + ". The fold lies " + band + " from the stitching. Press and pin.";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return "Lay " + work + " " + (face.equals("front") ? "front" : "back") + " up. " + (side.equals("left") ? "Turn " + added + " over onto it like a page" : side.equals("right") ? "Turn " + added + " over onto it like a page" : side.equals("top") ? "Flip " + added + " down onto it" : "Flip " + added + " up onto it") + ", " + (face.equals("front") ? "front" : "back") + " down, along the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom") + " " + (part.equals("end") ? "end" : "edge") + " of " + work + ".";
    }

    @Override
    public String seamLevel(String start) {
        return "Line up the ends at the " + (start.equals("left") ? "left" : start.equals("right") ? "right" : start.equals("top") ? "top" : "bottom") + ".";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return "Let the edge of " + wrapping + " stick out " + length + " beyond the edge of " + wrapped + ". This wider seam allowance will wrap round the other. Pin.";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "Open the seam out flat, " + (face.equals("front") ? "front" : "back") + " up. Press both seam allowances towards " + wrapped + "; the wider one of " + wrapping + " lies on top.";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "Open the seam out flat, " + (face.equals("front") ? "front" : "back") + " up. Press both seam allowances towards " + wrapped + "; the one of " + wrapping + " lies on top.";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return added + " is cut " + length + " too long and runs past the " + (end.equals("left") ? "left" : end.equals("right") ? "right" : end.equals("top") ? "top" : "bottom") + ".";
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return "Stitch " + top + " from the edge of " + added + ", which lies on top, with " + stitch + " stitches. Backstitch at both ends.";
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return "Stitch " + top + " from the edge of " + added + ", which lies on top, with " + stitch + " stitches. That is " + below + " from the edge of " + work + " underneath. Backstitch at both ends.";
    }

    @Override
    public String seamThickAt(String end, String places) {
        return places + " " + (end.equals("top") ? "from top" : "from left");
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return "Trim the seam allowance of " + wrapped + " to " + length + ".";
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return "Trim the outer edge of " + added + " straight by " + length + ". The work is then " + across + " " + (way.equals("wide") ? "wide" : "high") + ".";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return "Trim the end of " + added + " even with " + work + ".";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return "Thick about " + places + " from " + (end.equals("top") ? "the top end" : "the left end (seen from the front)") + ": this seam crosses another, up to " + plies + " layers. Slow down, or turn the handwheel.";
    }

    @Override
    public String thickAt(String places) {
        return "Thick at " + places;
    }

    @Override
    public String thickBand(String plies) {
        return "An ordinary stretch of seam has " + plies + " layers.";
    }

    @Override
    public String thickFoot() {
        return "When you reach it, put a folded scrap behind the presser foot to keep the foot level. Lengthen the stitch a little and turn the handwheel. Never push or pull the cloth; that bends the needle.";
    }

    @Override
    public String thickHem() {
        return "Thick where seams run in";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return (n == 1 ? "Up to " + plies + " layers at " + n + " place, about " + height + " thick." : "Up to " + plies + " layers at " + n + " places, about " + height + " thick.");
    }

    @Override
    public String thickPress() {
        return "Before you sew over a thick place, press it hard with steam. Or lay a scrap of cloth on it and tap it flat with a hammer.";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return "About " + total + " in all. Set your stitch length to " + stitch + ". This allows for cloth " + ply + " thick, " + tail + " of thread left at both ends of every row, and " + percent + " extra.";
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return "About " + total + " in all; wind half of it, " + each + ", on bobbins. Set your stitch length to " + stitch + ". This allows for cloth " + ply + " thick, " + tail + " of thread left at both ends of every row, and " + percent + " extra.";
    }

    @Override
    public String titleJoin(String added, String work) {
        return "Join " + added + " to " + work;
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return added + " " + (side.equals("left") ? "to the left of" : side.equals("right") ? "to the right of" : side.equals("top") ? "above" : "below") + " " + work;
    }

    @Override
    public String toolCutter() {
        return "Rotary cutter, ruler and mat, or shears, ruler and chalk";
    }

    @Override
    public String toolHand() {
        return "Fine hand needles, and a sewing machine for the hem";
    }

    @Override
    public String toolIron() {
        return "Iron and board, a cup of water or a spray";
    }

    @Override
    public String toolMachine(String needle) {
        return "Sewing machine with a new needle, size " + needle;
    }

    @Override
    public String toolPins() {
        return "Pins or clips, seam ripper, small scissors";
    }

    @Override
    public String toolSlips() {
        return "The patch slips, or small paper slips, and a pin for each";
    }

    @Override
    public String toolThread() {
        return "Thread, see \"Thread\" in this guide";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return "The " + (ofAdded.equals("right") ? "right" : "wrong") + " side of " + added + " facing the " + (ofWork.equals("right") ? "right" : "wrong") + " side of " + work + ".";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return "The " + (side.equals("right") ? "right" : "wrong") + " side of " + one + " facing " + other + ".";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return "Lay them with the " + (ofAdded.equals("right") ? "right" : "wrong") + " side of " + added + " facing the " + (ofWork.equals("right") ? "right" : "wrong") + " side of " + work + ".";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return "Lay them with the " + (side.equals("right") ? "right" : "wrong") + " side of " + one + " facing " + other + ".";
    }

    @Override
    public String touchLayMixed() {
        return "Lay them with some patches right side in and some wrong side in, as in the picture.";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "Lay them right sides together." : "Lay them wrong sides together.");
    }

    @Override
    public String touchMixed() {
        return "Some patches right side in and some wrong side in, as in the picture.";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "Right sides together." : "Wrong sides together.");
    }

    @Override
    public String trialCheck(String size) {
        return "Together they should now measure " + size + ". Measure across the seam first.";
    }

    @Override
    public String trialCut(String side) {
        return "Cut two scraps " + side + " square and sew them together as in the first seam below.";
    }

    @Override
    public String trialFells(String fells) {
        return "All seams are pressed to the " + (fells.equals("front") ? "front" : "back") + ", and the " + (fells.equals("front") ? "back" : "front") + " stays smooth. This is how you tell front from back.";
    }

    @Override
    public String trialFree() {
        return "Measure after every step. Nothing is cut too long here. If a part is off by more than a thread or two, it no longer meets its neighbour.";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "Measure after every step. Every bar is cut " + leeway + " too long, so a small difference does no harm. If it is off by more than that, unpick.";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return "Set the stitch length to " + stitch + ". The seam takes up " + narrow + " of one edge and " + wide + " of the other: " + loss + " in all.";
    }

    @Override
    public String trialTitle() {
        return "Try the seam on two scraps";
    }

    @Override
    public String trialWidth() {
        return "If the scraps come out too narrow, stitch a thread's width nearer the edge. If they come out too wide, stitch a thread's width farther in.";
    }

    @Override
    public String washAll() {
        return "All the fabric has been washed.";
    }

    @Override
    public String washDye(String fabrics) {
        return "Deep colours can bleed into pale ones. Soak a corner of " + fabrics + " in warm soapy water for half an hour and press it wet on white cloth. If it stains, wash that fabric alone until it does not, or leave it out.";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "Washed and unwashed pieces are mixed. " + (which.equals("washed") ? "Washed" : "Not washed") + ": " + pieces + ".";
    }

    @Override
    public String washMixedThen(String length) {
        return "Wash the unwashed ones first and measure them again. Over the side of this cloth they could shrink about " + length + " more than the others, and the cloth would pucker.";
    }

    @Override
    public String washNone() {
        return "Nothing has been washed. Wash all of it now, the way you will wash the finished cloth, and measure again. If it has shrunk, plan again. Or wash none of it.";
    }

    @Override
    public String washNoneSaid() {
        return "Nothing has been washed, as far as the stash says. Wash all of it now, the way you will wash the finished cloth, and measure again. If it has shrunk, plan again. Or wash none of it.";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return (n == 1 ? "The stash does not say whether " + pieces + " has been washed. If in doubt, wash." : "The stash does not say whether " + pieces + " have been washed. If in doubt, wash.");
    }

    @Override
    public String washUnknown() {
        return "The stash does not say what has been washed. Wash all of it the way you will wash the finished cloth, and measure again. If it has shrunk, plan again. Or wash none of it.";
    }

    @Override
    public String washingAlone() {
        return "Wash the finished cloth alone the first time, as gently as its most delicate fabric needs. If in doubt, wash it by hand in cool water.";
    }

    @Override
    public String washingSquare(String face) {
        return "Pull it square while it is damp and dry it flat. Press it on the " + (face.equals("front") ? "front" : "back") + " before it is fully dry.";
    }

    @Override
    public String whipOpen(String face) {
        return "Open the seam out and press it flat. The raw edges stay on the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return "Press " + wide + " along the edge of " + wrapping + " and " + narrow + " along the edge of " + wrapped + " to the " + (face.equals("front") ? "front" : "back") + ".";
    }

    @Override
    public String whipSew() {
        return "Line up the two folds. Whipstitch them together by hand, about 1 mm apart. Each stitch catches a thread or two of both folds.";
    }
}
