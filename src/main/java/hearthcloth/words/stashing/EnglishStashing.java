package hearthcloth.words.stashing;

/** The room of stashing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "Added " + n + " piece, number " + first + "." : "Added " + n + " pieces, numbers " + first + "–" + last + ".");
    }

    @Override
    public String addedKnown(String fabric) {
        return fabric + " was here already; its colour, faces and nap stay as they are here.";
    }

    @Override
    public String and(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + " sq yd");
    }

    @Override
    public String asideBack() {
        return "Give back";
    }

    @Override
    public String asideNote() {
        return "What is set aside stays in the stash, and no cloth is planned with it.";
    }

    @Override
    public String asideSet() {
        return "Set aside";
    }

    @Override
    public String asideTitle() {
        return "For something else";
    }

    @Override
    public String backStash() {
        return "Back to the stash";
    }

    @Override
    public String backTable() {
        return "Back to the table";
    }

    @Override
    public String chosen() {
        return "What is chosen";
    }

    @Override
    public String chosenBack() {
        return "Give back";
    }

    @Override
    public String chosenFirst() {
        return "Use these first";
    }

    @Override
    public String chosenFreeAlready() {
        return "They are free already.";
    }

    @Override
    public String chosenKeep() {
        return "Keep for later";
    }

    @Override
    public String chosenKeptAlready() {
        return "They are kept already.";
    }

    @Override
    public String chosenMany() {
        return "%d chosen";
    }

    @Override
    public String chosenMore() {
        return "Say more";
    }

    @Override
    public String chosenNone() {
        return "None";
    }

    @Override
    public String chosenNothing() {
        return "Choose pieces on the table first.";
    }

    @Override
    public String chosenUsed() {
        return "Used up";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "dark " + hue : tone.equals("light") ? "light " + hue : tone.equals("pale") ? "pale " + hue : tone.equals("bright") ? "bright " + hue : tone.equals("greyish") ? "greyish " + hue : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "colour not known yet";
    }

    @Override
    public String deedAdd(String what) {
        return "add " + what;
    }

    @Override
    public String deedAddFile(String what) {
        return "add " + what + " from a file";
    }

    @Override
    public String deedAside(String what) {
        return "set aside " + what;
    }

    @Override
    public String deedBack(String what) {
        return "give back " + what;
    }

    @Override
    public String deedChange(String what) {
        return "change " + what;
    }

    @Override
    public String deedDelete(String what) {
        return "delete " + what;
    }

    @Override
    public String deedFabric(String fabric) {
        return "change the fabric " + fabric;
    }

    @Override
    public String deedSplit(String what) {
        return "cut in two " + what;
    }

    @Override
    public String deedUse(String what) {
        return "use up " + what;
    }

    @Override
    public String done(String deed) {
        return "Done: " + deed + ".";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + ", " + (faces.equals("RIGHT") ? "has a right side" : "same on both sides") + (nap.equals("LENGTHWISE") ? ", nap lengthwise" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + ", " + (faces.equals("RIGHT") ? "has a right side" : "same on both sides") + ", its wrong side " + wrong + (nap.equals("LENGTHWISE") ? ", nap lengthwise" : "");
    }

    @Override
    public String fabricAcross() {
        return "Cloth along its shorter side";
    }

    @Override
    public String fabricAll() {
        return "For all its pieces";
    }

    @Override
    public String fabricAsideAll() {
        return "Set all of it aside";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return aside + " of " + pieces + " set aside.";
    }

    @Override
    public String fabricAway() {
        return "Take the picture away";
    }

    @Override
    public String fabricAwaySure() {
        return "Take the picture away? It would have to be sent again.";
    }

    @Override
    public String fabricBackAll() {
        return "Give all of it back";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "Changed for " + pieces + ".";
    }

    @Override
    public String fabricFile() {
        return "Picture, PNG or JPEG";
    }

    @Override
    public String fabricHow() {
        return "Lay the fabric flat in daylight. The middle of the picture is tiled wherever this fabric is drawn here.";
    }

    @Override
    public String fabricIsAside() {
        return "Set aside: no cloth is planned with it.";
    }

    @Override
    public String fabricIsBack() {
        return "Given back: cloths are planned with it again.";
    }

    @Override
    public String fabricMerge() {
        return "Give it the name of another fabric and the two become one. This can be undone on the stash page.";
    }

    @Override
    public String fabricNoPicture() {
        return "There is no picture of this fabric.";
    }

    @Override
    public String fabricNone() {
        return "There is no fabric of that name in the stash any more.";
    }

    @Override
    public String fabricOwn() {
        return "Your own picture of it";
    }

    @Override
    public String fabricPicture(String about) {
        return about + ". The picture shows 20 cm, about 8 in, of it.";
    }

    @Override
    public String fabricSavePicture() {
        return "Save the picture";
    }

    @Override
    public String fabricTiled() {
        return "Your picture is kept and tiled to scale.";
    }

    @Override
    public String fabricUntiled() {
        return "The picture is taken away; the colour shows again.";
    }

    @Override
    public String fabricWrongAcross() {
        return "A picture shows between 1 cm and 3 m of cloth; measure from its left edge to its right.";
    }

    @Override
    public String fieldColour() {
        return "Colour";
    }

    @Override
    public String fieldColourBlank() {
        return "Colour (may be left blank)";
    }

    @Override
    public String fieldFabric() {
        return "Fabric";
    }

    @Override
    public String fieldFaces() {
        return "Faces";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "same on both sides" : "has a right side");
    }

    @Override
    public String fieldHowMany() {
        return "How many";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return "How many of the " + n;
    }

    @Override
    public String fieldLength() {
        return "Along the selvage";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "Along the selvage, " + unit;
    }

    @Override
    public String fieldName() {
        return "Name";
    }

    @Override
    public String fieldNap() {
        return "Nap";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "none, lies any way" : "lengthwise");
    }

    @Override
    public String fieldWashed() {
        return "Washed";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "not sure" : washed.equals("YES") ? "washed" : "not washed");
    }

    @Override
    public String fieldWidth() {
        return "Width";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "Width, " + unit;
    }

    @Override
    public String fieldWrong() {
        return "Wrong side";
    }

    @Override
    public String fieldWrongOwn() {
        return "The wrong side has this colour";
    }

    @Override
    public String fileColumns() {
        return "Columns that are not about fabric were left out.";
    }

    @Override
    public String fileEncoding() {
        return "This file is not text in UTF-8; save it from the spreadsheet as CSV (UTF-8).";
    }

    @Override
    public String fileRefused() {
        return "The file was not taken; nothing was changed.";
    }

    @Override
    public String goCloth() {
        return "What can my heap make?";
    }

    @Override
    public String goGift() {
        return "What shall it wrap?";
    }

    @Override
    public String goneDelete() {
        return "Delete (entered by mistake)";
    }

    @Override
    public String goneNoPiece() {
        return "There is no such piece any more; it was used up or taken away.";
    }

    @Override
    public String goneTitle() {
        return "No longer there";
    }

    @Override
    public String goneUndo() {
        return "Either can be undone on the stash page.";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · nap" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + "; " + width + " wide, " + length + " along the selvage";
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return (fabrics == 1 ? "" + pieces + " of " + fabrics + " fabric" : "" + pieces + " of " + fabrics + " fabrics");
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return fabric + " is in your stash already and stays as it is there: " + about + ".";
    }

    @Override
    public String heardUnclear(String first, int n) {
        return (n == 1 ? "One line is unclear. " + first : "" + n + " lines are unclear; the first: " + first);
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "set aside" : "" + n + " set aside");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "for " + cloth : "" + n + " for " + cloth);
    }

    @Override
    public String heldMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "white" : hue.equals("grey") ? "grey" : hue.equals("black") ? "black" : hue.equals("pink") ? "pink" : hue.equals("wine_red") ? "wine red" : hue.equals("orange") ? "orange" : hue.equals("brown") ? "brown" : hue.equals("red") ? "red" : hue.equals("cream") ? "cream" : hue.equals("beige") ? "beige" : hue.equals("yellow") ? "yellow" : hue.equals("olive_green") ? "olive green" : hue.equals("green") ? "green" : hue.equals("yellow_green") ? "yellow green" : hue.equals("teal") ? "teal" : hue.equals("turquoise") ? "turquoise" : hue.equals("blue") ? "blue" : "purple");
    }

    @Override
    public String lineAdd() {
        return "Add";
    }

    @Override
    public String lineAsks() {
        return "How many, what, how large; many lines at once will do.";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "12 green print 10 x 20" : "12 green print 4 x 8");
    }

    @Override
    public String lineListening() {
        return "Listening; tap to stop";
    }

    @Override
    public String lineMany(String lines, String most) {
        return "These are " + lines + " lines; " + most + " are taken at once. A CSV file takes more.";
    }

    @Override
    public String lineMend() {
        return "This has to be mended first.";
    }

    @Override
    public String linePhotograph() {
        return "Photograph them";
    }

    @Override
    public String lineSay() {
        return "Say a piece";
    }

    @Override
    public String lineSpeak() {
        return "Speak";
    }

    @Override
    public String lineStill() {
        return "These lines are still in the box below.";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "“" + line + "”: " + why + ".";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return (n == 1 ? "" + size + " " + fabric + ", number " + numbers : "" + n + " of " + size + " " + fabric + ", numbers " + numbers);
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return (n == 1 ? "" + size + " " + fabric + ", " + washed + ", number " + numbers : "" + n + " of " + size + " " + fabric + ", " + washed + ", numbers " + numbers);
    }

    @Override
    public String markClaimed() {
        return "claimed by a cloth";
    }

    @Override
    public String markGreys() {
        return "dark to light";
    }

    @Override
    public String markKept() {
        return "kept for later";
    }

    @Override
    public String markNap() {
        return "nap runs up";
    }

    @Override
    public String markRight() {
        return "has a right side";
    }

    @Override
    public String moreAll() {
        return "All of the stash";
    }

    @Override
    public String moreByFabric() {
        return "By fabric";
    }

    @Override
    public String moreFiles() {
        return "In fields, and as a file";
    }

    @Override
    public String moreFill() {
        return "Fill in fields, or bring a file";
    }

    @Override
    public String moreFind() {
        return "Find";
    }

    @Override
    public String moreLeast() {
        return "At least this large";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "Save as CSV";
    }

    @Override
    public String moreText() {
        return "Fabric or number";
    }

    @Override
    public String moreTitle() {
        return "More: find, fabrics, files";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + ", " + pieces + " to take in";
    }

    @Override
    public String photoDay() {
        return "d MMM, HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + ", not read yet";
    }

    @Override
    public String photoNothing(String day) {
        return day + ", nothing was read off it";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return (n == 1 ? "One piece, number " + numbers : "" + n + " alike, numbers " + numbers);
    }

    @Override
    public String pieceChange() {
        return "Change";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + ". Its length runs down the picture, along the selvage.";
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " piece" : "" + n + " pieces");
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return "" + n + " of " + fabric;
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return (n == 1 ? "" + n + " piece of " + fabric : "" + n + " pieces of " + fabric);
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
    public String redone(String deed) {
        return "Redone: " + deed + ".";
    }

    @Override
    public String save() {
        return "Save";
    }

    @Override
    public String splitAt(String unit) {
        return "At, " + unit;
    }

    @Override
    public String splitDivides() {
        return "One straight cut that divides";
    }

    @Override
    public String splitLength(String length) {
        return "the length, " + length;
    }

    @Override
    public String splitTitle() {
        return "Cut in two";
    }

    @Override
    public String splitWidth(String width) {
        return "the width, " + width;
    }

    @Override
    public String staleChoose() {
        return "These pieces have meanwhile been changed in another window. Nothing was changed; look again, then choose.";
    }

    @Override
    public String staleFabric() {
        return "This fabric has meanwhile been changed in another window. Nothing was changed here.";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + ", " + colour + ", " + about + "; " + pieces + ".";
    }

    @Override
    public String staleGone() {
        return "They are no longer in the stash.";
    }

    @Override
    public String staleLast(String deed) {
        return "The stash has meanwhile been changed in another window: the last change now is “" + deed + "”. Nothing was changed; look again.";
    }

    @Override
    public String staleNothing() {
        return "The stash has meanwhile been changed in another window: nothing is left to undo. Nothing was changed; look again.";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + ", " + size + ".";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + ", " + size + ", " + washed + ".";
    }

    @Override
    public String stalePieces() {
        return "These pieces have meanwhile been changed in another window. Nothing was changed here.";
    }

    @Override
    public String summary(String area, int n) {
        return (n == 1 ? "" + n + " piece, " + area : "" + n + " pieces, " + area);
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return (n == 1 ? "" + found + " of " + n + " piece, " + area : "" + found + " of " + n + " pieces, " + area);
    }

    @Override
    public String tableBefore() {
        return "Before";
    }

    @Override
    public String tableChange(String fabric) {
        return "Change the fabric " + fabric;
    }

    @Override
    public String tableColour() {
        return "Colour";
    }

    @Override
    public String tableColours() {
        return "Colours";
    }

    @Override
    public String tableDrawn() {
        return "Your pieces, drawn to scale";
    }

    @Override
    public String tableFarther() {
        return "Farther off";
    }

    @Override
    public String tableGreys() {
        return "Light and dark";
    }

    @Override
    public String tableKeep() {
        return "keep";
    }

    @Override
    public String tableNearer() {
        return "Nearer";
    }

    @Override
    public String tableNext() {
        return "Next";
    }

    @Override
    public String tableNone() {
        return "No piece is like that.";
    }

    @Override
    public String tablePage(String page, String pages) {
        return "Page " + page + " of " + pages;
    }

    @Override
    public String tablePages() {
        return "Pages of the stash";
    }

    @Override
    public String tableShowAll() {
        return "Show all of the stash";
    }

    @Override
    public String tableShown() {
        return "How the table is shown";
    }

    @Override
    public String tableTap() {
        return "Tap a piece to choose it.";
    }

    @Override
    public String tableUnknown() {
        return "colour not known yet: tap to choose";
    }

    @Override
    public String title() {
        return "What have you got?";
    }

    @Override
    public String titleWays() {
        return "Fields and files";
    }

    @Override
    public String unchanged() {
        return "Nothing was changed.";
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
    public String undoWhat(String deed) {
        return "Undo: " + deed;
    }

    @Override
    public String undone(String deed) {
        return "Undone: " + deed + ".";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "washed" : washed.equals("NO") ? "not washed" : "");
    }

    @Override
    public String waysAddFile() {
        return "Add the file";
    }

    @Override
    public String waysAlso(String unit) {
        return "Also count, colour, faces (same or right), nap (any or lengthwise), washed (yes or no). Sizes without a unit are " + (unit.equals("metric") ? "centimetres" : "inches") + ". If one line is wrong, nothing is added.";
    }

    @Override
    public String waysColumns() {
        return "A file with the columns fabric, width, length";
    }

    @Override
    public String waysFields() {
        return "In fields";
    }

    @Override
    public String waysFile() {
        return "As a CSV file";
    }

    @Override
    public String waysHelp() {
        return "What can I type in the line on the table?";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "In any order: how many, what you call it, width by length, a colour, “right side” if one side is the good one, “nap” if it must not be turned, “washed”. Width lies across the cloth, length along the selvage. " + (unit.equals("metric") ? "“12 green print 10 x 20”, “3 sage linen 30 cm square”, “2.5 m of 140 cm navy wool”." : "“12 green print 4 x 8”, “3 sage linen 12 in square”, “1 1/2 yd of 44 in navy wool”.") + " Many lines can be pasted at once.";
    }

    @Override
    public String wrongCount(String count) {
        return "\"" + count + "\" is no number of pieces; write a whole number, or leave it blank for one.";
    }

    @Override
    public String wrongHowMany(String n) {
        return "There are " + n + " of these; say how many of them, from 1 to " + n + ".";
    }

    @Override
    public String wrongLongName(String most) {
        return "The name is too long for a label; " + most + " letters fit.";
    }

    @Override
    public String wrongNoName() {
        return "The fabric has no name; write what you call it.";
    }

    @Override
    public String wrongOutside(String whole) {
        return "The cut lies outside the piece; say where it is, above 0 and below " + whole + ".";
    }
}
