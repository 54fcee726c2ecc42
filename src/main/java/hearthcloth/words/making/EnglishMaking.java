package hearthcloth.words.making;

/** The room of making in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return "Bar " + bar + " is too short: it measures, ends and all";
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " No way on was found with what is there: bring in more fabric, or unpick the last bar and sew on another.";
    }

    @Override
    public String amissBarPage() {
        return "The bar is too short";
    }

    @Override
    public String amissBarSewn(String bar) {
        return "Bar " + bar + " is sewn on already; unpick it first.";
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "Bar " + bar + " measures " + measured + ", planned was " + planned + ".";
    }

    @Override
    public String amissRedo() {
        return "I need to redo this step";
    }

    @Override
    public String amissTitle() {
        return "Something went wrong";
    }

    @Override
    public String back() {
        return "Back";
    }

    @Override
    public String care() {
        return "Take care";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String cutAgain() {
        return "Its pieces are in the stash again, their cuts ticked.";
    }

    @Override
    public String cutAlready() {
        return "This cloth is cut already.";
    }

    @Override
    public String cutAmiss() {
        return "It cannot be cut as it is planned: see below what is amiss.";
    }

    @Override
    public String cutChanged() {
        return "Something was changed since it was cut: take that back first, with Undo on the cloth's page.";
    }

    @Override
    public String cutGone() {
        return "This cut is not in the plan any more; load the page again.";
    }

    @Override
    public String cutIsCut(int n) {
        return (n == 1 ? "Cut. " + n + " offcut is back in the stash." : "Cut. " + n + " offcuts are back in the stash.");
    }

    @Override
    public String cutNone() {
        return "There is no such cut.";
    }

    @Override
    public String cutPieceGone() {
        return "This piece is not in the plan any more; load the page again.";
    }

    @Override
    public String cutTicked(int n) {
        return (n == 1 ? "One cut is ticked." : "" + n + " cuts are ticked.");
    }

    @Override
    public String cutTitle(String cloth) {
        return "Cut " + cloth;
    }

    @Override
    public String cutWhich() {
        return "Which cloth will you cut?";
    }

    @Override
    public String done() {
        return "Done";
    }

    @Override
    public String height() {
        return "Height";
    }

    @Override
    public String keys() {
        return "Space or Page Down: done. Page Up: back. A foot switch sends these.";
    }

    @Override
    public String length() {
        return "Length";
    }

    @Override
    public String listed(String before, String last) {
        return before + " and " + last;
    }

    @Override
    public String lookAgain() {
        return "Look once more";
    }

    @Override
    public String matAll() {
        return "All pieces";
    }

    @Override
    public String matAllAreCut() {
        return "All pieces are cut.";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "Both are cut" : n == 3 ? "All three are cut" : n == 4 ? "All four are cut" : n == 5 ? "All five are cut" : n == 6 ? "All six are cut" : n == 1 ? "It is cut" : "All " + n + " are cut");
    }

    @Override
    public String matAllIsCut() {
        return "All is cut";
    }

    @Override
    public String matAsItIs() {
        return "It is used as it is; nothing to cut.";
    }

    @Override
    public String matClothIsCut() {
        return "This cloth is cut.";
    }

    @Override
    public String matCount(String all, String done) {
        return done + " of " + all;
    }

    @Override
    public String matCounted() {
        return "pieces cut";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "Cut " + n + " of " + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String matGives(String gives) {
        return "Gives " + gives + ".";
    }

    @Override
    public String matLeave() {
        return "The pieces leave the stash, the offcuts come back.";
    }

    @Override
    public String matMore() {
        return "Went wrong? More";
    }

    @Override
    public String matNextPiece() {
        return "Next piece";
    }

    @Override
    public String matNow(String measure, String n) {
        return "Cut " + n + ": " + measure + ".";
    }

    @Override
    public String matOff(String side) {
        return "off the " + (side.equals("left") ? "left" : side.equals("right") ? "right" : side.equals("top") ? "top" : "bottom");
    }

    @Override
    public String matPicture() {
        return "Cutting picture";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "Piece " + n + ", " + words + (done.equals("yes") ? ", cut" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "This piece is cut.";
    }

    @Override
    public String matPin() {
        return "Pin its slip on.";
    }

    @Override
    public String matPrintSlips() {
        return "Print all slips";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "Piece " + n + " of " + all + "; " + done + " done.";
    }

    @Override
    public String matSew() {
        return "Sew it";
    }

    @Override
    public String matShown(String n, String words) {
        return "Piece " + n + ": " + words;
    }

    @Override
    public String measureAgain() {
        return "Back, I will measure again";
    }

    @Override
    public String measuredBefore() {
        return "The steps before this one are not done yet.";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return "One end is " + by + " longer than the other: square it first, and trim it to " + trim + "; then measure again.";
    }

    @Override
    public String measuredFar(String planned, String written) {
        return written + " is far from the " + planned + " it was to be; measure it once more.";
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return written + " is far from the " + planned + " it was to be; is it " + meant + "?";
    }

    @Override
    public String measuredIsIt(String meant) {
        return "Is it " + meant + "?";
    }

    @Override
    public String measuredIsRight() {
        return "Is that right?";
    }

    @Override
    public String measuredOtherStep() {
        return "Measure after a bar is sewn on; this step is another.";
    }

    @Override
    public String measuredScraps() {
        return "A cloth of scraps has no bars to cut anew: unpick a seam that is off by more than a thread or two.";
    }

    @Override
    public String measuredSquare() {
        return "Square it first";
    }

    @Override
    public String measuredSwapped() {
        return "Is it the other way round?";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return size + " is the wrong way round: it should be about " + planned + ", width first, front up.";
    }

    @Override
    public String measuredTitle() {
        return "Your measure";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "It measures " + size + ": " + (across.equals("less") ? "" + width + " narrower" : across.equals("more") ? "" + width + " wider" : "") + (both.equals("yes") ? " and " : "") + (up.equals("less") ? "" + height + " lower" : up.equals("more") ? "" + height + " higher" : "") + " than planned.";
    }

    @Override
    public String measuredTooMany(String written) {
        return "“" + written + "” is more than two measures; write one, or both ends.";
    }

    @Override
    public String more() {
        return "More";
    }

    @Override
    public String printGuide() {
        return "The whole guide to print";
    }

    @Override
    public String printPage() {
        return "Print this page";
    }

    @Override
    public String sewAsPlanned() {
        return "As planned. Sew on.";
    }

    @Override
    public String sewAsleep() {
        return "This device may fall asleep meanwhile: set its screen to stay on.";
    }

    @Override
    public String sewBackToCut() {
        return "Back to the cutting";
    }

    @Override
    public String sewDiffers() {
        return "Mine differs";
    }

    @Override
    public String sewFinish() {
        return "Sewn. Its photograph and slip";
    }

    @Override
    public String sewFollows() {
        return "See what follows";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + " h " + minutes + " min";
    }

    @Override
    public String sewHow() {
        return "How?";
    }

    @Override
    public String sewHowLabel() {
        return "How it is done";
    }

    @Override
    public String sewLookOnly() {
        return "To look at only, until all is cut.";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "After the seam. One number is enough; measure raw edges and all. Where the two ends differ, write both, as " + (unit.equals("in") ? "12 1/8 and 12 3/8" : "31.2 and 31.7") + ".";
    }

    @Override
    public String sewMeasures() {
        return "It should now measure";
    }

    @Override
    public String sewMeasuresHow() {
        return "width × height, front up";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + " min";
    }

    @Override
    public String sewNext() {
        return "Next";
    }

    @Override
    public String sewNoStep() {
        return "There is no such step; load the page again.";
    }

    @Override
    public String sewNotCut() {
        return "This cloth is not all cut yet. Tick its cuts first, then “All is cut”.";
    }

    @Override
    public String sewPace(String time) {
        return "At your own pace about " + time + " to go.";
    }

    @Override
    public String sewPlanned() {
        return "Planned again. Sew on.";
    }

    @Override
    public String sewPlannedCut() {
        return "Planned again. Cut these first, then sew on.";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return "Step " + n + " of " + all + (done.equals("yes") ? ", done" : "");
    }

    @Override
    public String sewRead() {
        return "Read it to me";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + ". " + title;
    }

    @Override
    public String sewThick(String where) {
        return where + ": slow down there.";
    }

    @Override
    public String sewTitle(String cloth) {
        return "Sew " + cloth;
    }

    @Override
    public String sewToCut() {
        return "To the cutting";
    }

    @Override
    public String sewToNow() {
        return "To the step you are at";
    }

    @Override
    public String sewWhich() {
        return "Which cloth will you sew?";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "The whole cloth: " + done + " of " + all + " steps are done";
    }

    @Override
    public String sewYes() {
        return "Yes, that is it";
    }

    @Override
    public String showWays() {
        return "Show the ways on";
    }

    @Override
    public String sideAlike() {
        return "Both sides of its fabric look alike. Sew on.";
    }

    @Override
    public String sideCannot() {
        return "That cannot be: the bars to come, as they are cut, would not fit the work then.";
    }

    @Override
    public String sideFrayed() {
        return "Edges frayed by unpicking lose a little; measure again after the seam.";
    }

    @Override
    public String sideGoBack() {
        return "Unpick and go back";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "Bar " + bar + " " + (wrong.equals("face") ? "is wrong side up" : "is on the wrong side of the work") + ". What will you do?";
    }

    @Override
    public String sideLeave() {
        return "Leave it as it is";
    }

    @Override
    public String sideLeft() {
        return "The pictures show it so from now on.";
    }

    @Override
    public String sideLooks() {
        return "The front then looks like this; nothing has to be cut or unpicked.";
    }

    @Override
    public String sideNoBar() {
        return "No bar is sewn on in this step; choose the step of the bar.";
    }

    @Override
    public String sideNoFit() {
        return "The bars to come would not fit it so; unpick it.";
    }

    @Override
    public String sideNotSewn() {
        return "This step is not sewn yet.";
    }

    @Override
    public String sidePage() {
        return "Sewn on wrongly";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "Front, with bar " + bar + " " + (wrong.equals("face") ? "the other side up" : "on the other side of the work");
    }

    @Override
    public String sideRight() {
        return "Back, it lies right";
    }

    @Override
    public String sideSteps(int n) {
        return (n == 1 ? "To get at the bar, one step is undone and done again, the last first:" : "To get at the bar, " + n + " steps are undone and done again, the last first:");
    }

    @Override
    public String sideUnpick() {
        return "Unpick";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "Bar " + bar + " " + (wrong.equals("face") ? "is wrong side up" : "is on the wrong side of the work");
    }

    @Override
    public String smallAcross() {
        return "Across";
    }

    @Override
    public String smallAllCut() {
        return "Every patch of this piece is cut; untick the cut that went wrong.";
    }

    @Override
    public String smallDown() {
        return "Top to bottom";
    }

    @Override
    public String smallHow() {
        return "Of this piece, tick the cuts that are right. What does the next patch measure, as it lies in the picture?";
    }

    @Override
    public String smallLarger() {
        return "What is left cannot be larger than the piece was; check both sides.";
    }

    @Override
    public String smallNoWay() {
        return "No way on was found with what is there.";
    }

    @Override
    public String smallPage() {
        return "It came out too small";
    }

    @Override
    public String smallTitle() {
        return "The patch came out too small";
    }

    @Override
    public String smallWrite() {
        return "Write what the patch measures now, across and along.";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "Use it as it is, and cut the bars beside it wider" : way.equals("ANOTHER_PIECE") ? "Cut it again" : way.equals("JOINED_STRIP") ? "Join a strip to it" : "Use it as it is, and let the cloth be smaller");
    }

    @Override
    public String waysCut(String told) {
        return told + " What is cut stays as it is. How will you go on?";
    }

    @Override
    public String waysGone() {
        return "There is no such way on; measure again.";
    }

    @Override
    public String waysLacking() {
        return "You don't have enough fabric left.";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "Sew on as it is" : way.equals("keep") ? "Keep the size: cut the bars to come anew" : "Add a narrow round");
    }

    @Override
    public String waysNoCut() {
        return "Every bar you have cut is long enough: nothing to cut, only a little more or less to trim.";
    }

    @Override
    public String waysPicture(String size) {
        return "The cloth then, " + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " What is sewn stays as it is. How will you go on?";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "Join a strip to it" : way.equals("ANEW") ? "Make the bar anew" : way.equals("PIECED") ? "Make the bar anew, pieced" : "Use it as it is, and trim the work to it");
    }

    @Override
    public String waysSize(String size) {
        return "The cloth comes out " + size + ".";
    }

    @Override
    public String waysSizeLabel() {
        return "The cloth comes out";
    }

    @Override
    public String waysThis() {
        return "This way";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return "With the " + tie + " it ties round " + gift + ".";
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "To cut now: " + (n == 1 ? "bar" : "bars") + " " + bars + ", from " + (pieces == 1 ? "one piece" : "" + pieces + " pieces") + ".";
    }

    @Override
    public String width() {
        return "Width";
    }

    @Override
    public String wrongAllUsed() {
        return "Every patch you have cut is used as it is.";
    }

    @Override
    public String wrongChange() {
        return "Change a bar or a width.";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "It takes " + (n == 1 ? "" + n + " join fewer" : "" + n + " joins fewer") + ".";
    }

    @Override
    public String wrongHow() {
        return "Untick what is spoiled. Patches whose cuts are ticked stay as they are; the rest is planned again. What does the largest part still to be cut of this piece measure? Leave both empty if nothing is left.";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "You don't have enough fabric left for what is still to cut. " + why + " Bring in more fabric, then tell this once more.";
    }

    @Override
    public String wrongLatePlanned() {
        return "Planned again from what is left. What is sewn and what is cut stay as they are.";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "It takes " + (n == 1 ? "" + n + " join more" : "" + n + " joins more") + ".";
    }

    @Override
    public String wrongPlan() {
        return "Plan the rest again";
    }

    @Override
    public String wrongPlanned() {
        return "Planned again from what is left.";
    }

    @Override
    public String wrongSameJoins() {
        return "It takes as many joins as before.";
    }

    @Override
    public String wrongScraps() {
        return "A cloth of scraps is not planned again after a mistake: cut the patch from another scrap of at least its cut size, or look for proposals with what is left.";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "Of " + (n == 1 ? "" + n + " patch" : "" + n + " patches") + " you have cut, " + (used == 1 ? "" + used + " is used as it is" : "" + used + " are used as they are") + ".";
    }

    @Override
    public String wrongTitle() {
        return "I cut it wrong";
    }
}
