package hearthcloth.words.picturing;

/** The room of picturing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishPicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "Added " + n + " piece, number " + first + "." : "Added " + n + " pieces, numbers " + first + "–" + last + ".");
    }

    @Override
    public String another() {
        return "From a photograph";
    }

    @Override
    public String askBefore() {
        return "Begun before";
    }

    @Override
    public String askChoose() {
        return "Choose a picture";
    }

    @Override
    public String askHow() {
        return "How to lay and take it";
    }

    @Override
    public String askKinds() {
        return "JPEG or PNG, as the camera took it, up to 80 MB. It stays on this machine.";
    }

    @Override
    public String askNoSize() {
        return "How large the reference is was left blank; measure it and write its width by height.";
    }

    @Override
    public String askNone() {
        return "No picture was chosen; choose one or take it now.";
    }

    @Override
    public String askNotWhole() {
        return "The picture did not arrive whole; send it again.";
    }

    @Override
    public String askNow() {
        return "Take a picture now";
    }

    @Override
    public String askPhotograph(String when) {
        return "Photograph of " + when;
    }

    @Override
    public String askPreview() {
        return "The picture that you chose, small";
    }

    @Override
    public String askPrint() {
        return "Print the measuring sheet";
    }

    @Override
    public String askPrintHow() {
        return "Print it at 100 %, not fitted to the page, and lay a ruler to its line.";
    }

    @Override
    public String askRead() {
        return "Read it";
    }

    @Override
    public String askSend() {
        return "Send a photograph";
    }

    @Override
    public String askSheet() {
        return "Surest is a sheet of our own: its marks cannot be taken for cloth, and they tell when it is bent.";
    }

    @Override
    public String back() {
        return "Back to the stash";
    }

    @Override
    public String deleted() {
        return "The photograph is deleted.";
    }

    @Override
    public String drawBack() {
        return "Last corner back";
    }

    @Override
    public String drawCloser() {
        return "Closer";
    }

    @Override
    public String drawCorner() {
        return "Corner %1 of %2. Arrow keys move it, with Shift further.";
    }

    @Override
    public String drawCross() {
        return "The cross: Enter places a corner here.";
    }

    @Override
    public String drawFarther() {
        return "Farther";
    }

    @Override
    public String drawFew() {
        return "%d corners; go on round the piece.";
    }

    @Override
    public String drawFind() {
        return "Find its rim round this place";
    }

    @Override
    public String drawHow() {
        return "Tap its corners one after another, going round it; close it by tapping the first again. Come closer to be sure of each. Or tap once in its middle, and let its rim be found.";
    }

    @Override
    public String drawKeys() {
        return "Two fingers or a drag move the picture. By keyboard: arrow keys move the cross, with Shift further; Enter places a corner, Backspace takes it back, + and – come closer and go back.";
    }

    @Override
    public String drawLeave() {
        return "Leave it";
    }

    @Override
    public String drawMeasure() {
        return "Close it and measure";
    }

    @Override
    public String drawMost() {
        return "%d corners; that is the most. Close it now.";
    }

    @Override
    public String drawNoRim() {
        return "No rim shows that goes round this place; tap the piece's corners one after another instead. Nothing was added.";
    }

    @Override
    public String drawNone() {
        return "No corner yet.";
    }

    @Override
    public String drawOne() {
        return "1 corner; go on round the piece, or, where this is its middle, let its rim be found.";
    }

    @Override
    public String drawPicture() {
        return "Your photograph, to draw on";
    }

    @Override
    public String drawSome() {
        return "%d corners; go on, or close it.";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "has a right side" : "same on both sides") + (nap.equals("yes") ? ", nap lengthwise" : "") + (washed.equals("YES") ? ", washed" : washed.equals("NO") ? ", not washed" : "");
    }

    @Override
    public String fabricFaces() {
        return "Faces";
    }

    @Override
    public String fabricKeep() {
        return "Keep";
    }

    @Override
    public String fabricKnown() {
        return "Your stash has this fabric; its colour, faces and nap stay as they are there.";
    }

    @Override
    public String fabricLabel(String name) {
        return "Fabric " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "Name, " + pieces;
    }

    @Override
    public String fabricNap() {
        return "Nap";
    }

    @Override
    public String fabricNapAny() {
        return "none, lies any way";
    }

    @Override
    public String fabricNapLong() {
        return "lengthwise";
    }

    @Override
    public String fabricNo() {
        return "not washed";
    }

    @Override
    public String fabricRight() {
        return "has a right side";
    }

    @Override
    public String fabricSame() {
        return "same on both sides";
    }

    @Override
    public String fabricUnknown() {
        return "not sure";
    }

    @Override
    public String fabricWashed() {
        return "Washed";
    }

    @Override
    public String fabricYes() {
        return "washed";
    }

    @Override
    public String formCorners() {
        return "This form lacks the corners of a piece; place them on the photograph.";
    }

    @Override
    public String formKind() {
        return "This form is of another kind; load the page again.";
    }

    @Override
    public String formNumber() {
        return "This form lacks the number of a corner; load the page again.";
    }

    @Override
    public String formPlace() {
        return "This form lacks a place in the picture; load the page again.";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "waiting" : what.equals("opening") ? "opening the picture" : what.equals("ground") ? "looking at the ground" : what.equals("sheet") ? "finding the sheet" : what.equals("pieces") ? "finding the pieces" : what.equals("measuring") ? "measuring" : what.equals("laying") ? "laying it out" : "done");
    }

    @Override
    public String goingLabel() {
        return "Reading the photograph";
    }

    @Override
    public String goingLeave() {
        return "You may leave this page; it goes on, and nothing is lost.";
    }

    @Override
    public String goingLook() {
        return "Look again";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %, " + what + " …";
    }

    @Override
    public String goingStop() {
        return "Stop, and put it away";
    }

    @Override
    public String goingTitle() {
        return "Reading your photograph";
    }

    @Override
    public String goingWaits(int n) {
        return (n == 1 ? "" + n + " photograph is read before yours; it waits its turn." : "" + n + " photographs are read before yours; it waits its turn.");
    }

    @Override
    public String gone() {
        return "This photograph has been deleted; send it again.";
    }

    @Override
    public String goneElsewhere() {
        return "This photograph has been deleted in another window.";
    }

    @Override
    public String hintBlurred() {
        return "It is blurred. Hold still, let the camera focus on the pieces, and take it again.";
    }

    @Override
    public String hintDark() {
        return "It is very dark. Take it by daylight or with more lamps, without flash.";
    }

    @Override
    public String hintFine() {
        return "Nothing against it at first sight.";
    }

    @Override
    public String hintNoSheet() {
        return "No white sheet shows clearly. Does it lie whole in the picture, touching nothing, on something darker?";
    }

    @Override
    public String hintSlant() {
        return "It is seen slantwise, by more than 25°. Hold the camera level above the middle.";
    }

    @Override
    public String howAbove() {
        return "From above.";
    }

    @Override
    public String howAboveHow() {
        return "Hold the camera level above the middle, everything in the picture. Daylight from the side is best; no flash.";
    }

    @Override
    public String howAbovePicture() {
        return "A phone is held level above the middle of the pieces.";
    }

    @Override
    public String howApart() {
        return "Apart.";
    }

    @Override
    public String howApartHow() {
        return "Lay the pieces a finger's width apart, on plain ground that they stand out from.";
    }

    @Override
    public String howApartPicture() {
        return "Five pieces lie apart on plain ground.";
    }

    @Override
    public String howFlat() {
        return "Flat.";
    }

    @Override
    public String howFlatHow() {
        return "Press folds and creases out; no piece lies over another.";
    }

    @Override
    public String howFlatPicture() {
        return "From the side: one piece lies flat, another is folded and crossed out.";
    }

    @Override
    public String howSheet() {
        return "The sheet flat and weighed down.";
    }

    @Override
    public String howSheetHow() {
        return "Paper or a card among them, whole, touching nothing. Where paper curls, put a coin just inside each corner.";
    }

    @Override
    public String howSheetPicture() {
        return "A white sheet lies flat between the pieces, a coin on each corner.";
    }

    @Override
    public String kept() {
        return "Kept.";
    }

    @Override
    public String keyDoubt() {
        return "? look at it";
    }

    @Override
    public String keyIn() {
        return "✓ in the stash";
    }

    @Override
    public String keyLeft() {
        return "× left out";
    }

    @Override
    public String keyMeasured() {
        return "measured";
    }

    @Override
    public String keyUsable() {
        return "what can be used";
    }

    @Override
    public String labelAdd(int n) {
        return "add " + (n == 1 ? "" + n + " piece" : "" + n + " pieces") + " from a photograph";
    }

    @Override
    public String labelAllRight() {
        return "all with a question are right";
    }

    @Override
    public String labelBring(String piece) {
        return "bring back piece " + piece;
    }

    @Override
    public String labelCorner(String piece) {
        return "corner of piece " + piece;
    }

    @Override
    public String labelDraw(String piece) {
        return "draw in piece " + piece;
    }

    @Override
    public String labelDrop(String piece) {
        return "leave out piece " + piece;
    }

    @Override
    public String labelFabric(String name) {
        return "fabric " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "grain of piece " + piece;
    }

    @Override
    public String labelLess(String piece) {
        return "corner less on piece " + piece;
    }

    @Override
    public String labelMore(String piece) {
        return "corner more on piece " + piece;
    }

    @Override
    public String labelMove(String piece) {
        return "fabric of piece " + piece;
    }

    @Override
    public String labelName(String name) {
        return "name " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "no grain on piece " + piece;
    }

    @Override
    public String labelNotSure(String piece) {
        return "piece " + piece + " is not sure";
    }

    @Override
    public String labelRight(String piece) {
        return "piece " + piece + " is right";
    }

    @Override
    public String labelRim() {
        return "leave out all at the rim";
    }

    @Override
    public String labelSplit(String piece) {
        return "split piece " + piece;
    }

    @Override
    public String noPiece() {
        return "There is no such piece on this photograph.";
    }

    @Override
    public String notOpened() {
        return "This photograph cannot be opened.";
    }

    @Override
    public String notRead() {
        return "This photograph is not read yet.";
    }

    @Override
    public String nothingToTake() {
        return "There is no piece to take in: each is in the stash, left out, or still to be looked at.";
    }

    @Override
    public String pieceBring() {
        return "Bring it back";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "Bring piece " + piece + " back";
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "Drawn in by you" : by.equals("hand") ? "Measured by your outline" : "Measured by its rim") + (grain.equals("yes") ? ", along its grain" : "") + ".";
    }

    @Override
    public String pieceClose() {
        return "Close";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "Close piece " + piece;
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "Corner " + n + " of " + all + ". Arrow keys move it, with Shift further.";
    }

    @Override
    public String pieceDrag() {
        return "Drag a corner; or tap it, then where it belongs; or move it with the arrow keys.";
    }

    @Override
    public String pieceEnd(String n) {
        return "End " + n + " of the line. Arrow keys move it, with Shift further.";
    }

    @Override
    public String pieceFabric() {
        return "Its fabric";
    }

    @Override
    public String pieceGrain() {
        return "Mark the grain";
    }

    @Override
    public String pieceIsIn() {
        return "It is in the stash. Undo that on the stash page to put it right here.";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return "Leave piece " + piece + " out of the stash";
    }

    @Override
    public String pieceLess(String n) {
        return "Corner " + n + " away";
    }

    @Override
    public String pieceLessAbout(String n) {
        return "Take corner " + n + " away";
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "Lay the line where the two pieces meet: drag its ends, or tap where each belongs." : "Lay the line along the grain: drag its ends, or tap where each belongs.");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "Split it here" : "The grain runs so");
    }

    @Override
    public String pieceMore() {
        return "Corner here";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "A new corner in the middle of side " + n;
    }

    @Override
    public String pieceMove() {
        return "Move it there";
    }

    @Override
    public String pieceNoGrain() {
        return "Grain does not matter";
    }

    @Override
    public String pieceNotSure() {
        return "I am not sure after all";
    }

    @Override
    public String pieceOwn() {
        return "a fabric of its own";
    }

    @Override
    public String piecePicture(String piece) {
        return "Piece " + piece + ", close up";
    }

    @Override
    public String pieceSides() {
        return "Sides and corners";
    }

    @Override
    public String pieceSplit() {
        return "Split in two";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "Its diagonals are " + one + " and " + two + ", " + (same.equals("yes") ? "the same as far as the picture tells" : "so it is not square") + "; its corners are right angles to " + degrees + "°.";
    }

    @Override
    public String pieceStraight() {
        return "Its picture as from straight above";
    }

    @Override
    public String pieceTitle(String piece) {
        return "Piece " + piece;
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " piece" : "" + n + " pieces");
    }

    @Override
    public String redo() {
        return "Redo";
    }

    @Override
    public String redoNothing() {
        return "There is nothing to redo.";
    }

    @Override
    public String redone(String what) {
        return "Redone: " + what + ".";
    }

    @Override
    public String refusedAgain() {
        return "Begin again with the corners";
    }

    @Override
    public String refusedAnew() {
        return "Or take it anew";
    }

    @Override
    public String refusedAway() {
        return "Put this one away";
    }

    @Override
    public String refusedFailed() {
        return "This photograph cannot be read; something went wrong on the way. Take it again, or save it as a JPEG once more and send that.";
    }

    @Override
    public String refusedHundredths() {
        return "How far across and down each corner lies, in hundredths of the picture: 21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "Mark these corners";
    }

    @Override
    public String refusedNoPieces() {
        return "The reference was found, but no piece of cloth beside it. Lay the pieces apart on plain ground that they stand out from, and take the picture again.";
    }

    @Override
    public String refusedNoTap() {
        return "Without tapping";
    }

    @Override
    public String refusedOnce() {
        return "Read it once more";
    }

    @Override
    public String refusedOther() {
        return "Was it another reference?";
    }

    @Override
    public String refusedPicture(String reference) {
        return "The photograph: press on a corner of the " + reference;
    }

    @Override
    public String refusedRead() {
        return "Read it by these corners";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "measuring sheet" : sheet.equals("A4") ? "A4 sheet" : sheet.equals("LETTER") ? "Letter sheet" : sheet.equals("CARD") ? "card" : "rectangle");
    }

    @Override
    public String refusedTake() {
        return "Take another picture";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "Tap one corner of it. Near is enough: the nearest rim is taken." : n.equals("some") ? "Tap the next corner, going round." : n.equals("three") ? "Tap the last corner." : "All four are marked.");
    }

    @Override
    public String refusedTitle() {
        return "Nothing could be read off it";
    }

    @Override
    public String refusedTooMuch() {
        return "This photograph is too large for the memory of this machine. Set the camera to fewer megapixels, 12 are plenty, and take it again.";
    }

    @Override
    public String refusedWhere(String reference) {
        return "Is the " + reference + " there? Show where";
    }

    @Override
    public String scriptChosen() {
        return "Chosen: %s. Now press “Read it”.";
    }

    @Override
    public String scriptLarge() {
        return "%s is larger than 80 MB. Send it as the camera took it, or a smaller one.";
    }

    @Override
    public String scriptNone() {
        return "No picture is chosen yet.";
    }

    @Override
    public String scriptSending() {
        return "Sending the picture …";
    }

    @Override
    public String sheetA4() {
        return "A4 paper";
    }

    @Override
    public String sheetCard() {
        return "A bank or library card";
    }

    @Override
    public String sheetLetter() {
        return "Letter paper";
    }

    @Override
    public String sheetLine() {
        return "Its thin line measures, if not 20 cm (7 7/8 in)";
    }

    @Override
    public String sheetMeasuring() {
        return "The measuring sheet";
    }

    @Override
    public String sheetSize() {
        return "A rectangle of";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "Its width by height, " + unit;
    }

    @Override
    public String sheetWhich() {
        return "What lies among the pieces?";
    }

    @Override
    public String sortAllMine(int n) {
        return (n == 1 ? "" + n + " is mine and measured right" : "All " + n + " are mine and measured right");
    }

    @Override
    public String sortAllMineAbout() {
        return "All pieces with a question are mine and measured right";
    }

    @Override
    public String sortAway() {
        return "Put the photograph away";
    }

    @Override
    public String sortAwayAsk() {
        return "Put this photograph away? What is in the stash stays there; the rest would have to be sent again.";
    }

    @Override
    public String sortFabrics(int n) {
        return (n == 1 ? "One fabric" : "" + n + " fabrics");
    }

    @Override
    public String sortFabricsHow() {
        return "Like pieces lie together; name one, and all of it are named. A name that your stash has joins that fabric.";
    }

    @Override
    public String sortFirst() {
        return "Look at these first";
    }

    @Override
    public String sortLead() {
        return "Outlines and numbers lie on your photograph. Tap a piece to look closely; put right what is wrong, say what each fabric is, then take all in.";
    }

    @Override
    public String sortLeave() {
        return "Leave it out";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "Leave piece " + piece + " out";
    }

    @Override
    public String sortLook() {
        return "Look closely";
    }

    @Override
    public String sortLookAt(String piece) {
        return "Look at piece " + piece + " closely";
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return piece + " may be piece " + there + " of another photograph" + (in.equals("yes") ? ", which is in the stash" : "") + ".";
    }

    @Override
    public String sortMaybeLook() {
        return "The other photograph";
    }

    @Override
    public String sortMissed() {
        return "Draw in a piece that was missed";
    }

    @Override
    public String sortRight() {
        return "It is measured right";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "Piece " + piece + " is measured right";
    }

    @Override
    public String sortRim(int n) {
        return (n == 1 ? "Leave the one at the rim out" : "Leave all " + n + " at the rim out");
    }

    @Override
    public String sortRimAbout() {
        return "Leave out all pieces with a question that run off the picture";
    }

    @Override
    public String sortSame() {
        return "The same piece: leave it out here";
    }

    @Override
    public String sortSameAbout(String piece) {
        return "Piece " + piece + " is the same as on the other photograph: leave it out here";
    }

    @Override
    public String sortStay(int n) {
        return (n == 1 ? "" + n + " stays until you have looked at it." : "" + n + " stay until you have looked at them.");
    }

    @Override
    public String sortTake(int n) {
        return (n == 1 ? "Take " + n + " piece in" : "Take " + n + " pieces in");
    }

    @Override
    public String sortTitle() {
        return "Is it read right?";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + ", " + off + ".";
    }

    @Override
    public String sortTwice() {
        return "Seen on another photograph too?";
    }

    @Override
    public String sortTwiceHow() {
        return "Size, colour and figure are alike. Nothing is put together unasked: leave out what is the same piece; let two that only look alike both come in.";
    }

    @Override
    public String sortWhole(int n) {
        return (n == 1 ? "Your photograph with the outline and number of " + n + " piece; the list tells each." : "Your photograph with the outline and number of " + n + " pieces; the list tells each.");
    }

    @Override
    public String stale() {
        return "This photograph has meanwhile been changed in another window. Nothing was changed; load the page again and look.";
    }

    @Override
    public String staleTaking() {
        return "This photograph has meanwhile been changed in another window. Nothing was taken in; load the page again and look.";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "look at it" : state.equals("SMALL") ? "too small for your ruler" : state.equals("DROPPED") ? "left out" : state.equals("IN") ? "in the stash" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return (n == 1 ? "Piece " + pieces + " stays on the photograph until you have looked at it." : "Pieces " + pieces + " stay on the photograph until you have looked at them.");
    }

    @Override
    public String taken(String piece) {
        return "Piece " + piece + " is in the stash already; take that back on the stash page first, or change it there.";
    }

    @Override
    public String undo() {
        return "Undo";
    }

    @Override
    public String undoNothing() {
        return "There is nothing to undo.";
    }

    @Override
    public String undone(String what) {
        return "Undone: " + what + ".";
    }
}
