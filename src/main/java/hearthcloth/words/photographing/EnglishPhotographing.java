package hearthcloth.words.photographing;

/** The room of photographing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishPhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return "No " + sheet + " was found.";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "Take the picture again with the " + sheet + " whole in it and free all round." : how.equals("FLAT") ? "Lay the " + sheet + " flat, touching nothing, and take the picture again." : "Lay the " + sheet + " flat, touching nothing, and take the picture again from nearer by.");
    }

    @Override
    public String doubtCutOff() {
        return "It runs off the picture; move it in or step back, and take the picture again.";
    }

    @Override
    public String doubtEdge() {
        return "It reaches the picture's edge; what lies beyond is not measured. Take the picture again if it runs on.";
    }

    @Override
    public String doubtFar() {
        return "It lies far from the sheet, where the picture tells sizes less surely; move it nearer.";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "Its edges are frayed by about " + mm + " mm; it is measured without the threads. Trim it first to be sure.";
    }

    @Override
    public String doubtGround() {
        return "It hardly differs from what it lies on; lay it on something lighter or darker.";
    }

    @Override
    public String doubtOver(String piece) {
        return "It lies over piece " + piece + "; leave one of them out, or the same cloth comes in twice.";
    }

    @Override
    public String doubtRim() {
        return "Part of its rim cannot be made out; check the outline or lay it on another ground.";
    }

    @Override
    public String doubtRough() {
        return "Its corners were placed roughly; look closely, and drag each to where it belongs.";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "Seen so slantwise A4 and Letter look alike; make sure that it is " + sheet + ", or take the picture from straight above.";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return "The " + sheet + " hardly differs from what it lies on, and all sizes hang on it. Look whether its outline in the picture is right, or lay it on darker or more colourful ground and take the picture again.";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return "The " + sheet + " looks " + share + " % too long or too short: it may be partly covered, or not flat, or too small in the picture, and all sizes hang on it. Lay it flat and clear, and take the picture again from nearer by.";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return "The " + sheet + " that you tapped looks " + share + " % too long or too short: a corner may be beside it, or it may not lie flat. All sizes hang on it.";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return (sides == 1 ? "A side" : "More than one side") + " of the " + sheet + " cannot be seen, so it was taken to lie where you tapped, and all sizes hang on it.";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "The sheets in the picture do not agree: by one of them everything is about " + share + " % larger than by another. Lay them flat and clear, or leave only one there, and take the picture again.";
    }

    @Override
    public String doubtSides() {
        return "Its sides cannot be told well; check the outline.";
    }

    @Override
    public String doubtTwo() {
        return "It may be two pieces that touch or overlap; lay them apart, or split it here.";
    }

    @Override
    public String doubtUneven() {
        return "Its rim is uneven; check the outline.";
    }

    @Override
    public String goneFabric() {
        return "That fabric is not on this photograph any more.";
    }

    @Override
    public String gonePiece(String piece) {
        return "There is no piece " + piece + " on this photograph any more.";
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "This picture is over 20 MB; make it smaller and try again." : why.equals("DAMAGED") ? "This picture is damaged; export it again as PNG or JPEG." : why.equals("KIND") ? "This is no PNG or JPEG picture; export it as one of these." : "This picture has over 50 megapixels; make it smaller and try again.");
    }

    @Override
    public String noMarks() {
        return "The measuring sheet was not found: fewer than three of its square marks can be made out. Lay it flat and uncovered among the pieces, and take the picture from nearer by, sharp and from above.";
    }

    @Override
    public String noRival(String sheet) {
        return "Two things in the picture could be the " + sheet + ": one has its shape, and another is as white or whiter but bent, covered, in shadow or cut off. Tap the four corners of the right one, or take the other out of the picture and take the picture again.";
    }

    @Override
    public String noRound(String sheet) {
        return "The four corners that were tapped do not go round one shape. Tap them again, one after the other round the " + sheet + ".";
    }

    @Override
    public String noShadow(String sheet) {
        return "Two things in the picture could be the " + sheet + ": the larger one is as white, but a shadow's edge crosses it. Take the other one out of the picture, or lay the sheet all in the light or all in the shade, and take the picture again.";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "What lies between the four corners is " + share + " % too long or too short for " + sheet + ". Say which sheet it is, or tap its corners again.";
    }

    @Override
    public String noSizes(String sheet) {
        return "Two things in the picture could be the " + sheet + ", and they are not of one size. Take the piece that has its shape out of the picture, and take the picture again.";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "What lies there looks like " + twin + ", not like " + sheet + ". Say " + twin + ", or lay a sheet of " + sheet + " there, and take the picture again.";
    }

    @Override
    public String notePicture(String numbers) {
        return "in the picture: " + numbers;
    }

    @Override
    public String outlineCorner() {
        return "This piece has no such corner any more.";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "A piece has three corners or more; place another one." : fault.equals("OUTSIDE") ? "A corner lies outside the picture; take it back and place it on the photograph." : fault.equals("CROSSING") ? "Two of its sides cross; take the last corners back, and place them one after another round the piece." : fault.equals("SMALL") ? "Nothing of 1 cm by 1 cm can be cut from that; a piece is larger." : "A piece is drawn with " + most + " corners at most; take some back, and put more in its sides afterwards.") + " Nothing was added.";
    }

    @Override
    public String outlineGrain() {
        return "The line is too short to tell a direction. Nothing was changed.";
    }

    @Override
    public String outlineNone() {
        return "That would leave no outline; a piece has three corners or more, none of them on the other side of its rim. Nothing was changed.";
    }

    @Override
    public String outlineSplit(String piece) {
        return "The line does not part piece " + piece + " in two; draw it right across. Nothing was changed.";
    }

    @Override
    public String pictureDamaged() {
        return "The picture is damaged; save it again as a JPEG and retry.";
    }

    @Override
    public String pictureHeic() {
        return "This is a HEIC (or AVIF) photograph, which cannot be read here. Send a JPEG: in the settings of the camera choose JPEG, or the most compatible format, and take it again, or open it and save or share it as JPEG.";
    }

    @Override
    public String pictureKind() {
        return "This is not a photograph in JPEG or PNG form; send one of those.";
    }

    @Override
    public String pictureLarge() {
        return "The file is larger than 80 MB; send the photograph as the phone took it.";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "The picture is " + width + " × " + height + " pixels (" + mega + " megapixels); the most read here is 50. Send a smaller one.";
    }

    @Override
    public String pictureScans() {
        return "This JPEG is put together in a way no camera does; export it again and retry.";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "The picture is only " + width + " × " + height + " pixels; to measure by it needs 2 megapixels or more. Send it in its original size.";
    }

    @Override
    public String pictureUnread() {
        return "The picture is damaged or of a kind that cannot be read here; save it again as a JPEG and retry.";
    }

    @Override
    public String referenceCorner(String corner) {
        return "\"" + corner + "\" is no corner; write how far across and how far down it lies, as shares of the picture, such as 0.21 0.30.";
    }

    @Override
    public String referenceCorners(String count) {
        return "A sheet has four corners, and " + count + " were said; give all four in order round it, with commas between.";
    }

    @Override
    public String referenceLine() {
        return "The line on the measuring sheet should be about 20 cm (7 7/8 in) long; measure the long thin line between its two end strokes once more.";
    }

    @Override
    public String referenceSmall(String size) {
        return "A reference of " + size + " is too small to measure by; use one of 2 cm or more.";
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return "Something " + (white.equals("yes") ? "white" : "with four corners") + " lies " + (where.equals("MIDDLE") ? "in the middle" : where.equals("UPPER_LEFT") ? "in the upper left part" : where.equals("UPPER") ? "in the upper part" : where.equals("UPPER_RIGHT") ? "in the upper right part" : where.equals("LEFT") ? "in the left part" : where.equals("RIGHT") ? "in the right part" : where.equals("LOWER_LEFT") ? "in the lower left part" : where.equals("LOWER") ? "in the lower part" : "in the lower right part") + " of the picture, but " + (why.equals("CUT") ? "it runs off the picture, or something that does touches it" : why.equals("RIM") ? "its rim is not four straight sides: something touches it or lies on it, or it is folded" : "it is too small or too unclear in the picture to measure by") + ".";
    }

    @Override
    public String seenNothing(String white) {
        return "Nothing " + (white.equals("yes") ? "white with four straight sides" : "with four straight sides") + " stands out from what it lies on. Lay it flat among the pieces, whole in the picture, touching nothing, and take the picture from above.";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return "Something " + (white.equals("yes") ? "white" : "with four corners") + " lies " + (where.equals("MIDDLE") ? "in the middle" : where.equals("UPPER_LEFT") ? "in the upper left part" : where.equals("UPPER") ? "in the upper part" : where.equals("UPPER_RIGHT") ? "in the upper right part" : where.equals("LEFT") ? "in the left part" : where.equals("RIGHT") ? "in the right part" : where.equals("LOWER_LEFT") ? "in the lower left part" : where.equals("LOWER") ? "in the lower part" : "in the lower right part") + " of the picture, but its sides are " + share + " % off the proportions of the " + sheet + ". If it is that, it is bent or partly covered: lay it flat and clear, touching nothing, and take the picture again; if not, say what it is.";
    }

    @Override
    public String seenWhite(String sheet) {
        return "What fills most of the picture is light and nearly without colour itself: either the " + sheet + " fills the picture, or it lies on something as white as itself. Lay it on something darker or more colourful, with the pieces round it, touching nothing, and take the picture again.";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "measuring sheet" : sheet.equals("A4") ? "A4" : sheet.equals("LETTER") ? "Letter" : sheet.equals("CARD") ? "card" : "rectangle");
    }
}
