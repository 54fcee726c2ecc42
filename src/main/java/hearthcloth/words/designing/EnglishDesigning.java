package hearthcloth.words.designing;

/** The room of designing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "Plan the colours again";
    }

    @Override
    public String againLocked() {
        return "What is locked stays.";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return name + " to " + eyes + " eyes, " + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "Front of " + name + ", " + size : "Back of " + name + ", " + size);
    }

    @Override
    public String altFront() {
        return "Front; each bar can be chosen";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + ", " + fabrics + ", cut " + cut + (locked.equals("yes") ? ", locked" : "");
    }

    @Override
    public String altValues(String name) {
        return "Light and dark of " + name + ", in five steps";
    }

    @Override
    public String altWide(String width) {
        return width + " wide";
    }

    @Override
    public String barAny() {
        return "Any fabric";
    }

    @Override
    public String barAnySays() {
        return "the plan chooses";
    }

    @Override
    public String barCut(String unit) {
        return "Cut, " + unit;
    }

    @Override
    public String barLock() {
        return "Lock";
    }

    @Override
    public String barLockIt() {
        return "Lock as it is";
    }

    @Override
    public String barLocked() {
        return "Locked";
    }

    @Override
    public String barMiddle() {
        return "the middle";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "Hearth" : "Bar " + label);
    }

    @Override
    public String barNarrower() {
        return "Narrower";
    }

    @Override
    public String barSet() {
        return "Set width";
    }

    @Override
    public String barUnlock() {
        return "Locked; press to unlock";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "left, round " + round : side.equals("RIGHT") ? "right, round " + round : side.equals("TOP") ? "above, round " + round : "below, round " + round);
    }

    @Override
    public String barWider() {
        return "Wider";
    }

    @Override
    public String benchChoices() {
        return "Choices";
    }

    @Override
    public String benchClose() {
        return "Choose nothing";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + ": " + largest;
    }

    @Override
    public String benchLacking() {
        return "You don't have enough fabric for this.";
    }

    @Override
    public String benchPanel() {
        return "What can be changed";
    }

    @Override
    public String benchRedo() {
        return "Redo";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "Redo " + deed;
    }

    @Override
    public String benchReplan() {
        return "Plan it again from the stash";
    }

    @Override
    public String benchReplanCuts() {
        return "Plan what is still to cut again";
    }

    @Override
    public String benchTap() {
        return "Tap the hearth or a bar to change its fabric or width. A hatched bar shows the wrong side of its fabric.";
    }

    @Override
    public String benchTies() {
        return "What it ties round";
    }

    @Override
    public String benchUndo() {
        return "Undo";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "Undo " + deed;
    }

    @Override
    public String benchViews() {
        return "Ways to look at it";
    }

    @Override
    public String benchWall() {
        return "Fill the screen with the picture";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + ", " + deed;
    }

    @Override
    public String besideOld() {
        return "This cloth has been changed many times in another window since this page was loaded. Nothing was changed here; load it again.";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return name + " has meanwhile been changed in another window. Both are kept: it stays as that window left it, and yours stands beside it with your change of the " + deed + ".";
    }

    @Override
    public String coloursBest() {
        return "as the plan finds best";
    }

    @Override
    public String coloursContrast() {
        return "Contrast";
    }

    @Override
    public String coloursLabel() {
        return "Colours";
    }

    @Override
    public String copyName(String name) {
        return name + ", another";
    }

    @Override
    public String deedAgain() {
        return "colours planned again";
    }

    @Override
    public String deedAnyFabric() {
        return "any fabric";
    }

    @Override
    public String deedBar(String bar) {
        return "width of " + bar;
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return fabric + " for " + place;
    }

    @Override
    public String deedFell() {
        return "face of the fells";
    }

    @Override
    public String deedHearth() {
        return "hearth";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "lock " + place : "unlock " + place);
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "seam" : "hem");
    }

    @Override
    public String deedOrder() {
        return "order";
    }

    @Override
    public String deedReplan() {
        return "planned again";
    }

    @Override
    public String deedRound(String round) {
        return "width of round " + round;
    }

    @Override
    public String deedRounds(int n) {
        return (n == 1 ? "one round" : "" + n + " rounds");
    }

    @Override
    public String deedRules() {
        return "rules of piecing";
    }

    @Override
    public String deedSwap() {
        return "swap of fabrics";
    }

    @Override
    public String exampleAway() {
        return "put the example away";
    }

    @Override
    public String exampleGone() {
        return "The example is deleted.";
    }

    @Override
    public String exampleLaid() {
        return "An example stash and a cloth lie here to play with; one press deletes them again.";
    }

    @Override
    public String exampleLay() {
        return "lay out the example";
    }

    @Override
    public String exampleName(String title) {
        return "Example: " + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "red-blind" : eyes.equals("DEUTAN") ? "green-blind" : "blue-blind");
    }

    @Override
    public String eyesTo() {
        return "To other eyes:";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return "To " + eyes + " eyes " + colours;
    }

    @Override
    public String fabricsSwap() {
        return "Swap";
    }

    @Override
    public String fabricsTitle() {
        return "Fabrics";
    }

    @Override
    public String fabricsWith() {
        return "with";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "front" : "back");
    }

    @Override
    public String figureCuts() {
        return "Cuts";
    }

    @Override
    public String figureJoins() {
        return "Joins";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + ", the fewest possible" : "" + joins + ", at most " + above + " above the fewest possible");
    }

    @Override
    public String figureLayers(int n) {
        return "" + n + " layers";
    }

    @Override
    public String figureLost() {
        return "Lost fabric";
    }

    @Override
    public String figurePatches() {
        return "Patches";
    }

    @Override
    public String figurePieces() {
        return "Pieces cut into";
    }

    @Override
    public String figureThickest() {
        return "Thickest place";
    }

    @Override
    public String figureThread() {
        return "Thread";
    }

    @Override
    public String figureWas(String was) {
        return "was " + was;
    }

    @Override
    public String figuresAll() {
        return "All figures";
    }

    @Override
    public String goCut() {
        return "Cut this cloth";
    }

    @Override
    public String goRecut() {
        return "Cut what is asked for";
    }

    @Override
    public String goSew() {
        return "Sew this cloth";
    }

    @Override
    public String handEnough() {
        return "enough";
    }

    @Override
    public String handJoined() {
        return "joined";
    }

    @Override
    public String handShort() {
        return "too short";
    }

    @Override
    public String handWide(String width) {
        return width + " wide";
    }

    @Override
    public String labelRenamed(String name, String was) {
        return "renamed " + was + " to " + name;
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "Flat" : look.equals("BACK") ? "Back" : look.equals("TIED") ? "Tied" : look.equals("VALUES") ? "Light, dark" : look.equals("PROTAN") ? "Protan" : look.equals("DEUTAN") ? "Deutan" : "Tritan");
    }

    @Override
    public String nameCopy() {
        return "Keep a copy";
    }

    @Override
    public String nameMore() {
        return "More proposals";
    }

    @Override
    public String nameName() {
        return "Name";
    }

    @Override
    public String nameRename() {
        return "Rename";
    }

    @Override
    public String nameTitle() {
        return "Name and copy";
    }

    @Override
    public String nearGone() {
        return "That one cannot be made any more; look once more.";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "In other fabrics" : kind.equals("BARS") ? "With narrower bars" : kind.equals("HEARTH") ? "With a smaller hearth" : kind.equals("ROUNDS") ? "With fewer rounds" : "Smaller all over");
    }

    @Override
    public String nearLead() {
        return "Each of these differs in one thing, and you have the fabric for it.";
    }

    @Override
    public String nearNone() {
        return "No cloth near this one can be made from what is free. Undo, or look at other cloths.";
    }

    @Override
    public String nearOf(String fabrics) {
        return "Of " + fabrics + ".";
    }

    @Override
    public String nearTaken(String way) {
        return "Taken: " + way + ".";
    }

    @Override
    public String nearTitle() {
        return "The nearest cloths you can make";
    }

    @Override
    public String picturesBack(String kind) {
        return "Back, " + kind;
    }

    @Override
    public String picturesBoth() {
        return "Both, to send";
    }

    @Override
    public String picturesFlat(String kind) {
        return "Flat, " + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "Tied, " + kind;
    }

    @Override
    public String picturesTitle() {
        return "Pictures to keep and send";
    }

    @Override
    public String picturesWhat() {
        return "A picture of both sides and the tied gift, or each by itself.";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "Take apart" : "Put back");
    }

    @Override
    public String piecingClear() {
        return "Clear the table";
    }

    @Override
    public String piecingDeed() {
        return "the patches";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "Fill anew, keep what is locked" : "Fill the rest");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + ", " + way;
    }

    @Override
    public String piecingFrom() {
        return "Change it patch by patch";
    }

    @Override
    public String piecingGo() {
        return "Put scraps together by hand";
    }

    @Override
    public String piecingHeap(int n) {
        return (n == 1 ? "" + n + " scrap beside it" : "" + n + " scraps beside it");
    }

    @Override
    public String piecingIntro() {
        return "Tap a scrap, then another: you see how the two go together and what that trims. Fill the rest when you like; what you put together stays together.";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + ", locked";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return "Pieces " + a + " and " + b + " are together; " + trims + ".";
    }

    @Override
    public String piecingKeep(String cloth) {
        return "Keep it in " + cloth;
    }

    @Override
    public String piecingLay() {
        return "Lay on the table";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "Unlock" : "Lock");
    }

    @Override
    public String piecingMake() {
        return "Make this cloth";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "trims as much as now" : how.equals("MORE") ? "trims " + area + " more" : "trims " + area + " less");
    }

    @Override
    public String piecingNext() {
        return "What fits next";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "Nothing fits next to it in this cloth." : what.equals("two") ? "These two do not go together: a patch would show too little, or the cloth has no room for both." : "No other scrap is large enough for this place.");
    }

    @Override
    public String piecingPanel() {
        return "The chosen scrap";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + ", " + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "Undone." : what.equals("REDO") ? "Redone." : what.equals("CLEAR") ? "The table is clear." : what.equals("LAY") ? "It lies on the table and will be in the cloth." : what.equals("APART") ? "Taken apart." : what.equals("LOCK") ? "Done." : what.equals("TURN") ? "Turned." : what.equals("SWAP") ? "The two have changed places." : what.equals("SIZE") ? "The size is set." : what.equals("FILL") ? "The cloth is filled. Tap a patch to lock it or to give it another scrap." : what.equals("SHORT") ? "No way was found to fill the rest at this size. Take something apart, or make the cloth smaller." : what.equals("MADE") ? "Your cloth is kept." : what.equals("FROM") ? "Tap a patch to give it another scrap, or lock what you like and fill the rest anew." : "This cloth cannot be changed here: two of its patches come out of one piece, or a piece is gone.");
    }

    @Override
    public String piecingSet() {
        return "Set";
    }

    @Override
    public String piecingSize(String unit) {
        return "Size of the cloth in " + unit;
    }

    @Override
    public String piecingStale() {
        return "The table has changed meanwhile; look at it once more.";
    }

    @Override
    public String piecingSwap() {
        return "Another scrap in its place";
    }

    @Override
    public String piecingTable() {
        return "On the table";
    }

    @Override
    public String piecingTitle() {
        return "Scraps by hand";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "nothing is trimmed" : off.equals("SECOND") ? "" + length + " off piece " + piece : "" + length + " off the other side");
    }

    @Override
    public String piecingTurn() {
        return "Turn";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "to the right" : "below") + (turned.equals("yes") ? ", turned" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return "Together with " + piece;
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return (n == 1 ? "" + n + " patch" : "" + n + " patches") + ", " + cloth + ", " + percent + " % trimmed off.";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "hearth" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "It is called " + name + " now.";
    }

    @Override
    public String saidCopy() {
        return "This is a copy; the first stays as it was.";
    }

    @Override
    public String saidLacking() {
        return "You don't have enough fabric for it; change a bar or a width.";
    }

    @Override
    public String saidLocked() {
        return "Locked: planning again leaves it as it is.";
    }

    @Override
    public String saidNothing() {
        return "There is nothing to undo.";
    }

    @Override
    public String saidPlanned() {
        return "Planned again from what is in the stash.";
    }

    @Override
    public String saidRedone(String deed) {
        return "Redone: " + deed + ".";
    }

    @Override
    public String saidUndone(String deed) {
        return "Undone: " + deed + ".";
    }

    @Override
    public String saidUnlocked() {
        return "Unlocked.";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "felled: one allowance folded round the other and sewn down" : seam.equals("ssamsol") ? "ssamsol: a narrow felled seam, as on Korean wrapping cloths" : seam.equals("felled_and_trimmed") ? "felled and trimmed: sewn level, one allowance trimmed, then felled" : seam.equals("lapped") ? "lap-felled (interlocked): two folded edges hooked into each other" : seam.equals("french") ? "french: sewn twice, the raw edges shut inside" : seam.equals("french_trimmed") ? "french, trimmed: wider allowances, trimmed after the first row" : seam.equals("gamchimjil") ? "gamchimjil: two folded edges whipstitched by hand" : "" + name);
    }

    @Override
    public String set() {
        return "Set";
    }

    @Override
    public String sewingAllowances() {
        return "Felled, narrow + wide";
    }

    @Override
    public String sewingCorner() {
        return "Corner of the hem";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "square corners" : "mitred corners");
    }

    @Override
    public String sewingFell() {
        return "Folded-down side of the seams (fells) on the";
    }

    @Override
    public String sewingHelp() {
        return "What are narrow and wide?";
    }

    @Override
    public String sewingHelpSays() {
        return "In a felled seam one seam allowance is narrow; the other, wider one is folded over it and sewn down. Both are set below. The fell lies on one face and makes a line there. The least piece is the shortest part you are willing to join into a bar.";
    }

    @Override
    public String sewingHem(String unit) {
        return "Hem, first + second fold, " + unit;
    }

    @Override
    public String sewingJoins() {
        return "Most joins a bar";
    }

    @Override
    public String sewingLeast(String unit) {
        return "Least piece, finished, " + unit;
    }

    @Override
    public String sewingSeam() {
        return "Seam";
    }

    @Override
    public String sewingTitle() {
        return "Seam, hem and piecing";
    }

    @Override
    public String shapeHearth(String unit) {
        return "Hearth, cut, " + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "Hearth height, cut, " + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "Hearth width, cut, " + unit;
    }

    @Override
    public String shapeHelp() {
        return "What do these widths mean?";
    }

    @Override
    public String shapeHelpSays() {
        return "Every width is what you cut, seam allowances and all; the finished bar is narrower by what its seams and the hem take up. The size above is the finished, hemmed cloth. The order says in which turn the bars of a round are sewn on.";
    }

    @Override
    public String shapeMixed() {
        return "(they differ)";
    }

    @Override
    public String shapeOrder() {
        return "Order";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return "Round " + round + ", bars cut, " + unit;
    }

    @Override
    public String shapeRounds() {
        return "Rounds";
    }

    @Override
    public String shapeSetHearth() {
        return "Set hearth";
    }

    @Override
    public String shapeTitle() {
        return "Shape";
    }

    @Override
    public String shapeWhole() {
        return "The whole cloth";
    }

    @Override
    public String shortJoins(int n) {
        return (n == 1 ? "join" : "joins");
    }

    @Override
    public String shortLayers() {
        return "layers";
    }

    @Override
    public String shortLost() {
        return "lost";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "square" : "finished");
    }

    @Override
    public String shortThread() {
        return "thread";
    }

    @Override
    public String sinceEnough() {
        return "You have enough fabric again.";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "Joins " + before + ", now " + now + ".";
    }

    @Override
    public String sinceLacking(String why) {
        return "Not enough fabric: " + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "Lost " + before + ", now " + now + ".";
    }

    @Override
    public String sinceSame() {
        return "Changed; size, joins and loss stay as they were.";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "Size " + before + ", now " + now + ".";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " square";
    }

    @Override
    public String staleCalled(String name) {
        return "It is called " + name + ".";
    }

    @Override
    public String staleRenamed() {
        return "This cloth has meanwhile been renamed in another window. Nothing was changed here.";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + ", tied. " + fit;
    }

    @Override
    public String tiedColours() {
        return "In its colours";
    }

    @Override
    public String tiedExample() {
        return "box 12 x 8 x 4 in";
    }

    @Override
    public String tiedFaces() {
        return "Face outside, and how the cloth lies";
    }

    @Override
    public String tiedGreys() {
        return "Light and dark";
    }

    @Override
    public String tiedMore() {
        return "What shows, and more";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "as drawn" : turn.equals("1") ? "a quarter" : turn.equals("2") ? "half" : "three quarters");
    }

    @Override
    public String tiedRound() {
        return "What is wrapped";
    }

    @Override
    public String tiedRoundWhat() {
        return "What is wrapped";
    }

    @Override
    public String tiedSay() {
        return "Say what it is to be tied round.";
    }

    @Override
    public String tiedShow() {
        return "Show";
    }

    @Override
    public String tiedSize() {
        return "Its size";
    }

    @Override
    public String tiedTooSmall() {
        return "too small";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "You have not said what it wraps. Here it is round " + gift + ".";
    }

    @Override
    public String tiedWhich() {
        return "In which tie";
    }

    @Override
    public String turnCanvas() {
        return "The tied gift. Arrow keys turn it, plus and minus bring it nearer or farther, Home looks from a corner.";
    }

    @Override
    public String turnGroup() {
        return "Turn the gift";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "turned to the left" : way.equals("right") ? "turned to the right" : way.equals("up") ? "tipped towards you" : "tipped away");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "Turn left" : way.equals("right") ? "Turn right" : way.equals("up") ? "Tip towards you" : way.equals("down") ? "Tip away" : way.equals("nearer") ? "Nearer" : "Farther");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return (n == 1 ? "This cloth counts on " + pieces + ", which you have set aside. Give it back in the stash, or plan the cloth again." : "This cloth counts on " + pieces + ", which you have set aside. Give them back in the stash, or plan the cloth again.");
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return (n == 1 ? "" + n + " piece (" + fabrics + ")" : "" + n + " pieces (" + fabrics + ")");
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return (n == 1 ? "This cloth counts on " + pieces + ", which is no longer in the stash as planned. It cannot be cut so; plan it again." : "This cloth counts on " + pieces + ", which are no longer in the stash as planned. It cannot be cut so; plan it again.");
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + " (" + fabric + ")";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return (n == 1 ? "piece " + pieces : "pieces " + pieces);
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "This cloth is measured in centimetres" : "This cloth is measured in inches") + (begun.equals("yes") ? ", as it is cut." : ", as it was planned. Plan it again to have it on the ruler you use now.");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return cloth + " counts on " + pieces + " too. The cloth that is cut first gets them; the other is then planned again.";
    }

    @Override
    public String wrongBar() {
        return "Choose a bar first.";
    }

    @Override
    public String wrongCloth() {
        return "That would not leave a cloth. Nothing was changed; choose other measures.";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "No fabric in the stash is called \"" + fabric + "\".";
    }

    @Override
    public String wrongForm() {
        return "This form is of another kind; load the page again.";
    }

    @Override
    public String wrongIsCut() {
        return "This cloth is cut already. Keep a copy of it to change the design.";
    }

    @Override
    public String wrongLacking() {
        return "You don't have enough fabric for this cloth; change it first.";
    }

    @Override
    public String wrongLeast() {
        return "The least piece is more than nothing and at most 39 in (1 m).";
    }

    @Override
    public String wrongName() {
        return "Write a name of up to 80 letters.";
    }

    @Override
    public String wrongNoBars() {
        return "This cloth has no bars to change. For other scraps or another size, look for proposals again.";
    }

    @Override
    public String wrongNoOther() {
        return "No other plan of colours was found for these sizes; unlock a bar, or change a width.";
    }

    @Override
    public String wrongNone() {
        return "There is no such cloth; it may have been removed.";
    }

    @Override
    public String wrongOrder(String written) {
        return "\"" + written + "\" is not an order.";
    }

    @Override
    public String wrongPart() {
        return "Each part is more than nothing and at most 4 in (10 cm).";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return "\"" + scheme + "\" was not found for these sizes; it needs " + needs + ".";
    }

    @Override
    public String wrongSeam(String written) {
        return "\"" + written + "\" is not a seam we know.";
    }

    @Override
    public String wrongTiesNone() {
        return "This cloth ties no gift yet: say what it is to wrap.";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return (what.equals("hem") ? "\"" + written + "\" will not do; a hem has a first and a second fold, such as 1/4 + 1/2 in." : "\"" + written + "\" will not do; a felled seam has a narrow and a wide allowance, such as 1/4 + 1/2 in.");
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return "\"" + written + "\" will not do; write a whole number from " + least + " to " + most + ".";
    }

    @Override
    public String wrongWide(String written) {
        return "\"" + written + "\" is wider than any cloth; check the unit.";
    }

    @Override
    public String wrongWrap() {
        return "The wide edge wraps round the narrow one, so the second must be the wider.";
    }
}
