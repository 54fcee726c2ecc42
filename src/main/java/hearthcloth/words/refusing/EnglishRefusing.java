package hearthcloth.words.refusing;

/** The room of refusing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "there is text after a closing quote: " + text + "; double a quote that belongs to the text, as in \"6 1/2\"\" wide\"";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "line " + line + ": " + what : "line " + line + ", " + column + ": " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "there are " + cells + " cells but " + columns + " columns; put quotes \" round a cell that holds a comma, such as \"16,5 cm\"";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return text + " means nothing here; write " + one + " or " + other + ", or leave it blank";
    }

    @Override
    public String fileColour(String text) {
        return text + " is not a colour; write one such as #8a9a5b or a name such as dark green, or leave it blank";
    }

    @Override
    public String fileCount(String most, String text) {
        return text + " is not a number of pieces; write a whole number from 1 to " + most + ", or leave it blank for one";
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return name + " is " + now + " here and " + was + " on line " + before + "; a fabric is one or the other, so mend one line or give it another name";
    }

    @Override
    public String fileEmpty() {
        return "the stash file is empty; its first line names the columns fabric,width,length and each line after it is a piece";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return name + " is " + letters + " letters long; " + most + " fit on a label, so shorten it and put the rest under note";
    }

    @Override
    public String fileMore(String more) {
        return "and " + more + " more";
    }

    @Override
    public String fileMost(String metres, String text) {
        return text + " is more than the " + metres + " m we take for one piece; check the number and its unit";
    }

    @Override
    public String fileNoColumn(String header) {
        return "no column has this name; the first line must name the columns fabric, width and length (it says " + header + ")";
    }

    @Override
    public String fileNoName() {
        return "the fabric has no name; write what you call it";
    }

    @Override
    public String fileNoPieces() {
        return "the columns are named but no piece follows; add a line for each piece";
    }

    @Override
    public String fileNoUnit(int more) {
        return "the size has no unit" + (more == 0 ? "" : " (nor has it on " + more + " other lines)") + "; write in, cm or mm after the numbers, add a column unit, or say --unit in or --unit cm";
    }

    @Override
    public String fileNothing(String text) {
        return text + " is nothing; write a size above zero or leave the line out";
    }

    @Override
    public String fileQuoteOpen() {
        return "a quote \" opens here and never closes; close it or take it out";
    }

    @Override
    public String fileTooMany(String most) {
        return "here the stash passes " + most + " pieces, more than we take; check the counts or leave pieces out";
    }

    @Override
    public String fileTwice() {
        return "two columns have this name; rename or delete one of them";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return "line " + line + ": " + (side.equals("wrong") ? "the wrong side of " : "") + name + " is " + now + " here and " + was + " on line " + before + "; the first one is used";
    }

    @Override
    public String fileUnit(String text) {
        return text + " is not a unit; write in, cm, mm, m, ft or yd";
    }

    @Override
    public String giftBook() {
        return "one book ties as a box; write \"box\" and its three measures, or \"books\" for two like books";
    }

    @Override
    public String giftBottle() {
        return "a bottle's mouth is no wider than its body and its shoulder no higher than its mouth; check the bottle's measures";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "\"" + text + "\" has " + count + " measures, but " + rule;
    }

    @Override
    public String giftKinds() {
        return "write the kind and its measures, such as \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" or \"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return size + " is more than two metres, too large to wrap in one cloth; check the number and its unit";
    }

    @Override
    public String giftLong(String kinds, String text) {
        return "\"" + text + "…\" is too long for a gift; " + kinds;
    }

    @Override
    public String giftNone(String kinds) {
        return "no gift is written; " + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "a box has three measures: length x width x height" : kind.equals("CUBE") ? "a cube has one measure" : kind.equals("BOTTLE") ? "a bottle has two measures: diameter x height" : kind.equals("BOTTLES") ? "two like bottles have two measures: diameter x height" : kind.equals("BALL") ? "something round has one measure, its diameter" : kind.equals("BOOKS") ? "two like books have three measures, those of one: height x width x thickness" : "a roll has two measures: diameter x length");
    }

    @Override
    public String giftSmall() {
        return "a gift less than one centimetre long cannot be tied; check the numbers and their unit";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "\"" + text + "\" has no measures; " + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "\"" + text + "\" does not say what the gift is; " + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return "\"" + text + "\": \"" + word + "\" is not understood; " + kinds;
    }

    @Override
    public String giftZero() {
        return "a gift's measures are all more than zero; write the one that is missing";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + " is a folder; give the CSV file inside it, such as " + such + ".";
    }

    @Override
    public String givenEmpty(String name) {
        return name + " is empty; its first line names the columns fabric,width,length and each line after it is a piece.";
    }

    @Override
    public String givenGone(String name, String place) {
        return "There is no file " + name + "; check its name and where you are (" + place + ").";
    }

    @Override
    public String givenInput() {
        return "standard input";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + " is larger than " + most + " MB, far more than a stash file needs; give the file that lists your fabric.";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + " is a workbook or an archive, not text; save the table as CSV (UTF-8) and give that file." : why.equals("UTF16") ? "" + name + " is text in UTF-16; save the table as CSV (UTF-8) and give that file." : why.equals("BYTE") ? "" + name + " is not text (line " + line + " holds a byte that is no letter); save the table as CSV (UTF-8) and give that file." : "" + name + " is not UTF-8 (line " + line + " holds a letter in another encoding); save the table as CSV (UTF-8) and give that file.");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "\"" + name + "\" is not the name of a file; check how it is written." : why.equals("LOCKED") ? "" + name + " may not be read by you; change its permissions or copy it." : "" + name + " could not be read to its end; check the disk and try again.");
    }

    @Override
    public String givenPhoto(String name) {
        return name + " is a folder; give the photograph inside it.";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + " is empty; give the photograph as the camera or phone took it.";
    }

    @Override
    public String heapLine(String line, String what) {
        return "Line " + line + ": " + what + ".";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "These are " + pieces + " pieces; a page plans with up to " + most + ". Leave some out.";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + ", line " + line + ", " + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "no wish is called \"" + text + "\"; there are " + names + ".";
    }

    @Override
    public String listExtent() {
        return "how large is not said; write a size such as 16 in, or a gift";
    }

    @Override
    public String listFile(String list, String what) {
        return list + ", " + what + ".";
    }

    @Override
    public String listMissing() {
        return "name: a name is missing; write whose cloth it is.";
    }

    @Override
    public String listMost(String list, String most) {
        return list + " has more than " + most + " cloths; split it.";
    }

    @Override
    public String listNoName() {
        return "no column is called name; the first line names the columns, such as name,size,gift.";
    }

    @Override
    public String listNone(String list) {
        return list + " names no cloth; its first line names the columns, such as name,size,gift, and each line after it is a cloth.";
    }

    @Override
    public String listSame(String text) {
        return "name: another cloth is called \"" + text + "\" too; tell them apart.";
    }

    @Override
    public String listTwice(String text) {
        return text + ": two columns have this name; delete one of them.";
    }

    @Override
    public String listUnder(String text) {
        return "\"" + text + "\" stands under no column; put what holds a comma in quotes.";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + ", line " + line + ": " + what;
    }

    @Override
    public String listYes(String text) {
        return "free: \"" + text + "\" will not do; write yes or no.";
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return option + ": \"" + name + "\" will not do; write a file name that ends with " + ending + ".";
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + ": " + name + " is a folder; give a file name." : why.equals("THERE") ? "" + option + ": there is a file " + name + " already; give another name, or add --replace to write over it." : why.equals("NOWHERE") ? "" + option + ": there is no folder for " + name + "; make it first, or check the name." : why.equals("LOCKED") ? "" + option + ": the folder of " + name + " may not be written to by you; change its permissions or give another." : why.equals("NAME") ? "" + option + ": \"" + name + "\" is not the name of a file; check how it is written." : "" + option + ": " + name + " could not be written; check its permissions and the room on the disk.");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out: a folder is missing; write one such as --out cloths." : why.equals("FILE") ? "--out: " + name + " is a file; give a folder, which need not exist yet." : why.equals("NAME") ? "--out: \"" + name + "\" is not the name of a folder; check how it is written." : why.equals("CLOSED") ? "--out: " + name + " could not be looked into; check its permissions." : "--out: " + name + " could not be written; check its permissions and the room on the disk. Nothing was changed.");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out: " + name + " holds other things (" + thing + "); give a new folder, or one that holds only proposals.";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out: " + name + " could not be made, since a file is in its way (" + thing + "); give another folder.";
    }

    @Override
    public String outStopped(String name) {
        return "Stopped. Nothing was changed in " + name + ".";
    }

    @Override
    public String stashFull(String most) {
        return "the stash would pass " + most + " pieces, more than it takes; check the counts. Nothing was added";
    }

    @Override
    public String stashKnown(String fabric) {
        return fabric + " was here already; its colour, faces and nap stay as they are here.";
    }

    @Override
    public String tieFirst() {
        return "a tie needs something to tie round; add --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return "the " + tie + " is for " + suited + "; for this gift choose " + names;
    }

    @Override
    public String tieUnknown(String names, String text) {
        return "\"" + text + "\" is not a tie we know; there are " + names;
    }

    @Override
    public String wishAt(String field, String what) {
        return field + ": " + what + ".";
    }

    @Override
    public String wishBands() {
        return "it does not go with pieces that have to be in or in the middle";
    }

    @Override
    public String wishBlocks(String text) {
        return "\"" + text + "\" is no number of blocks; write \"3 x 3\"";
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return "\"" + text + "\" is out of reach; from 1 x 1 to " + most + " x " + most + " blocks are planned";
    }

    @Override
    public String wishBoth() {
        return "a size and a gift cannot both be wished; leave out the size or the gift";
    }

    @Override
    public String wishCloth(String text) {
        return "\"" + text + "\" is out of reach; cloths are planned from 2 in (5 cm) to 196 in (5 m), so check the number and its unit";
    }

    @Override
    public String wishContrast(String names, String text) {
        return "\"" + text + "\" is no contrast; write one of " + names;
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "no fabric of the stash is called \"" + name + "\"; there are " + names + (more == 0 ? "" : " and " + more + " more");
    }

    @Override
    public String wishFar(String text) {
        return "\"" + text + "\" is out of reach; check the number and its unit";
    }

    @Override
    public String wishFell(String text) {
        return "\"" + text + "\" leaves no fell: the second allowance wraps round the first, so it must be the wider one";
    }

    @Override
    public String wishGoes(String other) {
        return "it goes with " + other;
    }

    @Override
    public String wishGoesBars() {
        return "it goes with hearth and bars, not with --free or --blocks";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return count + " widths are too many; write at most " + most;
    }

    @Override
    public String wishMiddle() {
        return "write the number of one piece";
    }

    @Override
    public String wishMixed(String text) {
        return "\"" + text + "\" cannot be mixed; after the + write scattered evenly or one bright scrap";
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return "\"" + text + "\" is too narrow: " + (how.equals("finished") ? "the fell alone is " + band + " wide" : "seams or hem take up to " + eaten + " of it and the fell covers " + band) + "; write more than " + needed;
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return "the " + tie + " would need a cloth of " + size + ", and we plan up to " + most + "; wrap something smaller or choose another tie";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return "\"" + text + "\" is more than " + most + ", which leaves no cloth; check the number and its unit";
    }

    @Override
    public String wishNotWith(String other) {
        return "it does not go with " + other;
    }

    @Override
    public String wishNothing() {
        return "a piece of nothing cannot be sewn; write a length such as \"2 in\"";
    }

    @Override
    public String wishOff(String text) {
        return "\"" + text + "\" is not a way off the middle; write a length and right, left, away or near: \"2 cm left, 3 cm away\"";
    }

    @Override
    public String wishOrder(String text) {
        return "\"" + text + "\" is not an order; write round, pairs or two-sides";
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "\"" + text + "\" has " + (count == 1 ? "" + count + " number" : "" + count + " numbers") + "; " + (what.equals("seam") ? "a felled seam has a narrow and a wide allowance, such as \"1/4 + 1/2 in\"" : "a hem has a first and a second fold, such as \"1/4 + 1/4 in\"");
    }

    @Override
    public String wishPart(String most, String text) {
        return "\"" + text + "\" will not do: each part is more than nothing and at most " + most;
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return "\"" + text + "\" is out of reach; we plan from " + least + " to " + most + ", so check the number and its unit";
    }

    @Override
    public String wishScheme(String names, String text) {
        return "\"" + text + "\" is no plan of colour; write stash or one of " + names;
    }

    @Override
    public String wishScraps(String text) {
        return "\"" + text + "\" is no rule for scraps; write as-they-are, cut or either";
    }

    @Override
    public String wishSeam(String names, String text) {
        return "\"" + text + "\" is not a seam; write its narrow and wide allowance such as \"1/4 + 1/2 in\", or one of " + names;
    }

    @Override
    public String wishSeed(String text) {
        return "\"" + text + "\" is not a whole number; write one such as 7";
    }

    @Override
    public String wishSetting(String text) {
        return "\"" + text + "\" is not a setting; write straight furrow, barn raising, sunshine and shadow, turned at will or all alike";
    }

    @Override
    public String wishShow(String text) {
        return "\"" + text + "\" is more than one fabric; write the one that is to show";
    }

    @Override
    public String wishSlack(String most, String text) {
        return "\"" + text + "\" is more than " + most + ", which sewing does not take; check the number and its unit, or write none";
    }

    @Override
    public String wishTied() {
        return "this is about a tied gift; add --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String wishTime(String text) {
        return "\"" + text + "\" is not a time; write one such as 2s, 500ms or 1min";
    }

    @Override
    public String wishTimeReach(String text) {
        return "\"" + text + "\" is out of reach; allow between 1ms and 10min";
    }

    @Override
    public String wishUnit(String text) {
        return "\"" + text + "\" is not a unit we measure in; write in or cm";
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return "\"" + text + "\" will not do; write a whole number from " + least + " to " + most;
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return (widths == 1 ? "" + widths + " width" : "" + widths + " widths") + " for " + (rounds == 1 ? "" + rounds + " round" : "" + rounds + " rounds") + "; write one width a round, or more rounds";
    }

    @Override
    public String wishWord(String names, String text) {
        return "\"" + text + "\" will not do; write " + names;
    }
}
