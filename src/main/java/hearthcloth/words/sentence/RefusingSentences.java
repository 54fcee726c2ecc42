package hearthcloth.words.sentence;

import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of refusing. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class RefusingSentences implements Room {

    static final Room ROOM = new RefusingSentences();

    private RefusingSentences() {}

    public static Sentence fileAfterQuote(Argument text) {
        return new Sentence(ROOM, "file.afterQuote", text);
    }

    public static Sentence fileAt(String column, Argument line, Argument what) {
        return new Sentence(ROOM, "file.at", new Argument.Text(column), line, what);
    }

    public static Sentence fileCells(Argument cells, Argument columns) {
        return new Sentence(ROOM, "file.cells", cells, columns);
    }

    public static Sentence fileChoice(Argument one, Argument other, Argument text) {
        return new Sentence(ROOM, "file.choice", one, other, text);
    }

    public static Sentence fileColour(Argument text) {
        return new Sentence(ROOM, "file.colour", text);
    }

    public static Sentence fileCount(Argument most, Argument text) {
        return new Sentence(ROOM, "file.count", most, text);
    }

    public static Sentence fileDisagree(Argument before, Argument name, Argument now, Argument was) {
        return new Sentence(ROOM, "file.disagree", before, name, now, was);
    }

    public static Sentence fileEmpty() {
        return new Sentence(ROOM, "file.empty");
    }

    public static Sentence fileLongName(Argument letters, Argument most, Argument name) {
        return new Sentence(ROOM, "file.longName", letters, most, name);
    }

    public static Sentence fileMore(Argument more) {
        return new Sentence(ROOM, "file.more", more);
    }

    public static Sentence fileMost(Argument metres, Argument text) {
        return new Sentence(ROOM, "file.most", metres, text);
    }

    public static Sentence fileNoColumn(Argument header) {
        return new Sentence(ROOM, "file.noColumn", header);
    }

    public static Sentence fileNoName() {
        return new Sentence(ROOM, "file.noName");
    }

    public static Sentence fileNoPieces() {
        return new Sentence(ROOM, "file.noPieces");
    }

    public static Sentence fileNoUnit(int more) {
        return new Sentence(ROOM, "file.noUnit", new Argument.Count(more));
    }

    public static Sentence fileNothing(Argument text) {
        return new Sentence(ROOM, "file.nothing", text);
    }

    public static Sentence fileQuoteOpen() {
        return new Sentence(ROOM, "file.quoteOpen");
    }

    public static Sentence fileTooMany(Argument most) {
        return new Sentence(ROOM, "file.tooMany", most);
    }

    public static Sentence fileTwice() {
        return new Sentence(ROOM, "file.twice");
    }

    public static Sentence fileTwoColours(Argument before, Argument line, Argument name, Argument now, String side, Argument was) {
        return new Sentence(ROOM, "file.twoColours", before, line, name, now, new Argument.Text(side), was);
    }

    public static Sentence fileUnit(Argument text) {
        return new Sentence(ROOM, "file.unit", text);
    }

    public static Sentence giftBook() {
        return new Sentence(ROOM, "gift.book");
    }

    public static Sentence giftBottle() {
        return new Sentence(ROOM, "gift.bottle");
    }

    public static Sentence giftCount(Argument count, Argument rule, Argument text) {
        return new Sentence(ROOM, "gift.count", count, rule, text);
    }

    public static Sentence giftKinds() {
        return new Sentence(ROOM, "gift.kinds");
    }

    public static Sentence giftLarge(Argument size) {
        return new Sentence(ROOM, "gift.large", size);
    }

    public static Sentence giftLong(Argument kinds, Argument text) {
        return new Sentence(ROOM, "gift.long", kinds, text);
    }

    public static Sentence giftNone(Argument kinds) {
        return new Sentence(ROOM, "gift.none", kinds);
    }

    public static Sentence giftRule(String kind) {
        return new Sentence(ROOM, "gift.rule", new Argument.Text(kind));
    }

    public static Sentence giftSmall() {
        return new Sentence(ROOM, "gift.small");
    }

    public static Sentence giftUnmeasured(Argument rule, Argument text) {
        return new Sentence(ROOM, "gift.unmeasured", rule, text);
    }

    public static Sentence giftWhat(Argument kinds, Argument text) {
        return new Sentence(ROOM, "gift.what", kinds, text);
    }

    public static Sentence giftWord(Argument kinds, Argument text, Argument word) {
        return new Sentence(ROOM, "gift.word", kinds, text, word);
    }

    public static Sentence giftZero() {
        return new Sentence(ROOM, "gift.zero");
    }

    public static Sentence givenCsv(Argument name, Argument such) {
        return new Sentence(ROOM, "given.csv", name, such);
    }

    public static Sentence givenEmpty(Argument name) {
        return new Sentence(ROOM, "given.empty", name);
    }

    public static Sentence givenGone(Argument name, Argument place) {
        return new Sentence(ROOM, "given.gone", name, place);
    }

    public static Sentence givenInput() {
        return new Sentence(ROOM, "given.input");
    }

    public static Sentence givenLarge(Argument most, Argument name) {
        return new Sentence(ROOM, "given.large", most, name);
    }

    public static Sentence givenNoText(Argument line, Argument name, String why) {
        return new Sentence(ROOM, "given.noText", line, name, new Argument.Text(why));
    }

    public static Sentence givenNot(Argument name, String why) {
        return new Sentence(ROOM, "given.not", name, new Argument.Text(why));
    }

    public static Sentence givenPhoto(Argument name) {
        return new Sentence(ROOM, "given.photo", name);
    }

    public static Sentence givenPhotoEmpty(Argument name) {
        return new Sentence(ROOM, "given.photoEmpty", name);
    }

    public static Sentence heapLine(Argument line, Argument what) {
        return new Sentence(ROOM, "heap.line", line, what);
    }

    public static Sentence heapMany(Argument most, Argument pieces) {
        return new Sentence(ROOM, "heap.many", most, pieces);
    }

    public static Sentence listAt(Argument line, Argument list, Argument what) {
        return new Sentence(ROOM, "list.at", line, list, what);
    }

    public static Sentence listColumn(Argument names, Argument text) {
        return new Sentence(ROOM, "list.column", names, text);
    }

    public static Sentence listExtent() {
        return new Sentence(ROOM, "list.extent");
    }

    public static Sentence listFile(Argument list, Argument what) {
        return new Sentence(ROOM, "list.file", list, what);
    }

    public static Sentence listMissing() {
        return new Sentence(ROOM, "list.missing");
    }

    public static Sentence listMost(Argument list, Argument most) {
        return new Sentence(ROOM, "list.most", list, most);
    }

    public static Sentence listNoName() {
        return new Sentence(ROOM, "list.noName");
    }

    public static Sentence listNone(Argument list) {
        return new Sentence(ROOM, "list.none", list);
    }

    public static Sentence listSame(Argument text) {
        return new Sentence(ROOM, "list.same", text);
    }

    public static Sentence listTwice(Argument text) {
        return new Sentence(ROOM, "list.twice", text);
    }

    public static Sentence listUnder(Argument text) {
        return new Sentence(ROOM, "list.under", text);
    }

    public static Sentence listWhole(Argument line, Argument list, Argument what) {
        return new Sentence(ROOM, "list.whole", line, list, what);
    }

    public static Sentence listYes(Argument text) {
        return new Sentence(ROOM, "list.yes", text);
    }

    public static Sentence outEnding(Argument ending, Argument name, Argument option) {
        return new Sentence(ROOM, "out.ending", ending, name, option);
    }

    public static Sentence outFile(Argument name, Argument option, String why) {
        return new Sentence(ROOM, "out.file", name, option, new Argument.Text(why));
    }

    public static Sentence outFolder(Argument name, String why) {
        return new Sentence(ROOM, "out.folder", name, new Argument.Text(why));
    }

    public static Sentence outHolds(Argument name, Argument thing) {
        return new Sentence(ROOM, "out.holds", name, thing);
    }

    public static Sentence outInWay(Argument name, Argument thing) {
        return new Sentence(ROOM, "out.inWay", name, thing);
    }

    public static Sentence outStopped(Argument name) {
        return new Sentence(ROOM, "out.stopped", name);
    }

    public static Sentence stashFull(Argument most) {
        return new Sentence(ROOM, "stash.full", most);
    }

    public static Sentence stashKnown(Argument fabric) {
        return new Sentence(ROOM, "stash.known", fabric);
    }

    public static Sentence tieFirst() {
        return new Sentence(ROOM, "tie.first");
    }

    public static Sentence tieOther(Argument names, Argument suited, Argument tie) {
        return new Sentence(ROOM, "tie.other", names, suited, tie);
    }

    public static Sentence tieUnknown(Argument names, Argument text) {
        return new Sentence(ROOM, "tie.unknown", names, text);
    }

    public static Sentence wishAt(Argument field, Argument what) {
        return new Sentence(ROOM, "wish.at", field, what);
    }

    public static Sentence wishBands() {
        return new Sentence(ROOM, "wish.bands");
    }

    public static Sentence wishBlocks(Argument text) {
        return new Sentence(ROOM, "wish.blocks", text);
    }

    public static Sentence wishBlocksReach(Argument most, Argument text) {
        return new Sentence(ROOM, "wish.blocksReach", most, text);
    }

    public static Sentence wishBoth() {
        return new Sentence(ROOM, "wish.both");
    }

    public static Sentence wishCloth(Argument text) {
        return new Sentence(ROOM, "wish.cloth", text);
    }

    public static Sentence wishContrast(Argument names, Argument text) {
        return new Sentence(ROOM, "wish.contrast", names, text);
    }

    public static Sentence wishFabric(int more, Argument name, Argument names) {
        return new Sentence(ROOM, "wish.fabric", new Argument.Count(more), name, names);
    }

    public static Sentence wishFar(Argument text) {
        return new Sentence(ROOM, "wish.far", text);
    }

    public static Sentence wishFell(Argument text) {
        return new Sentence(ROOM, "wish.fell", text);
    }

    public static Sentence wishGoes(Argument other) {
        return new Sentence(ROOM, "wish.goes", other);
    }

    public static Sentence wishGoesBars() {
        return new Sentence(ROOM, "wish.goesBars");
    }

    public static Sentence wishManyWidths(Argument count, Argument most) {
        return new Sentence(ROOM, "wish.manyWidths", count, most);
    }

    public static Sentence wishMiddle() {
        return new Sentence(ROOM, "wish.middle");
    }

    public static Sentence wishMixed(Argument text) {
        return new Sentence(ROOM, "wish.mixed", text);
    }

    public static Sentence wishNarrow(Argument band, Argument eaten, String how, Argument needed, Argument text) {
        return new Sentence(ROOM, "wish.narrow", band, eaten, new Argument.Text(how), needed, text);
    }

    public static Sentence wishNeed(Argument most, Argument size, Argument tie) {
        return new Sentence(ROOM, "wish.need", most, size, tie);
    }

    public static Sentence wishNoCloth(Argument most, Argument text) {
        return new Sentence(ROOM, "wish.noCloth", most, text);
    }

    public static Sentence wishNotWith(Argument other) {
        return new Sentence(ROOM, "wish.notWith", other);
    }

    public static Sentence wishNothing() {
        return new Sentence(ROOM, "wish.nothing");
    }

    public static Sentence wishOff(Argument text) {
        return new Sentence(ROOM, "wish.off", text);
    }

    public static Sentence wishOrder(Argument text) {
        return new Sentence(ROOM, "wish.order", text);
    }

    public static Sentence wishPair(int count, Argument text, String what) {
        return new Sentence(ROOM, "wish.pair", new Argument.Count(count), text, new Argument.Text(what));
    }

    public static Sentence wishPart(Argument most, Argument text) {
        return new Sentence(ROOM, "wish.part", most, text);
    }

    public static Sentence wishReach(Argument least, Argument most, Argument text) {
        return new Sentence(ROOM, "wish.reach", least, most, text);
    }

    public static Sentence wishScheme(Argument names, Argument text) {
        return new Sentence(ROOM, "wish.scheme", names, text);
    }

    public static Sentence wishScraps(Argument text) {
        return new Sentence(ROOM, "wish.scraps", text);
    }

    public static Sentence wishSeam(Argument names, Argument text) {
        return new Sentence(ROOM, "wish.seam", names, text);
    }

    public static Sentence wishSeed(Argument text) {
        return new Sentence(ROOM, "wish.seed", text);
    }

    public static Sentence wishSetting(Argument text) {
        return new Sentence(ROOM, "wish.setting", text);
    }

    public static Sentence wishShow(Argument text) {
        return new Sentence(ROOM, "wish.show", text);
    }

    public static Sentence wishSlack(Argument most, Argument text) {
        return new Sentence(ROOM, "wish.slack", most, text);
    }

    public static Sentence wishTied() {
        return new Sentence(ROOM, "wish.tied");
    }

    public static Sentence wishTime(Argument text) {
        return new Sentence(ROOM, "wish.time", text);
    }

    public static Sentence wishTimeReach(Argument text) {
        return new Sentence(ROOM, "wish.timeReach", text);
    }

    public static Sentence wishUnit(Argument text) {
        return new Sentence(ROOM, "wish.unit", text);
    }

    public static Sentence wishWhole(Argument least, Argument most, Argument text) {
        return new Sentence(ROOM, "wish.whole", least, most, text);
    }

    public static Sentence wishWidths(int rounds, int widths) {
        return new Sentence(ROOM, "wish.widths", new Argument.Count(rounds), new Argument.Count(widths));
    }

    public static Sentence wishWord(Argument names, Argument text) {
        return new Sentence(ROOM, "wish.word", names, text);
    }

    @Override
    public String name() {
        return "refusing";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "file.afterQuote" -> "t";
            case "file.at" -> "wtt";
            case "file.cells" -> "tt";
            case "file.choice" -> "ttt";
            case "file.colour" -> "t";
            case "file.count" -> "tt";
            case "file.disagree" -> "tttt";
            case "file.empty" -> "";
            case "file.longName" -> "ttt";
            case "file.more" -> "t";
            case "file.most" -> "tt";
            case "file.noColumn" -> "t";
            case "file.noName" -> "";
            case "file.noPieces" -> "";
            case "file.noUnit" -> "c";
            case "file.nothing" -> "t";
            case "file.quoteOpen" -> "";
            case "file.tooMany" -> "t";
            case "file.twice" -> "";
            case "file.twoColours" -> "ttttwt";
            case "file.unit" -> "t";
            case "gift.book" -> "";
            case "gift.bottle" -> "";
            case "gift.count" -> "ttt";
            case "gift.kinds" -> "";
            case "gift.large" -> "t";
            case "gift.long" -> "tt";
            case "gift.none" -> "t";
            case "gift.rule" -> "w";
            case "gift.small" -> "";
            case "gift.unmeasured" -> "tt";
            case "gift.what" -> "tt";
            case "gift.word" -> "ttt";
            case "gift.zero" -> "";
            case "given.csv" -> "tt";
            case "given.empty" -> "t";
            case "given.gone" -> "tt";
            case "given.input" -> "";
            case "given.large" -> "tt";
            case "given.noText" -> "ttw";
            case "given.not" -> "tw";
            case "given.photo" -> "t";
            case "given.photoEmpty" -> "t";
            case "heap.line" -> "tt";
            case "heap.many" -> "tt";
            case "list.at" -> "ttt";
            case "list.column" -> "tt";
            case "list.extent" -> "";
            case "list.file" -> "tt";
            case "list.missing" -> "";
            case "list.most" -> "tt";
            case "list.noName" -> "";
            case "list.none" -> "t";
            case "list.same" -> "t";
            case "list.twice" -> "t";
            case "list.under" -> "t";
            case "list.whole" -> "ttt";
            case "list.yes" -> "t";
            case "out.ending" -> "ttt";
            case "out.file" -> "ttw";
            case "out.folder" -> "tw";
            case "out.holds" -> "tt";
            case "out.inWay" -> "tt";
            case "out.stopped" -> "t";
            case "stash.full" -> "t";
            case "stash.known" -> "t";
            case "tie.first" -> "";
            case "tie.other" -> "ttt";
            case "tie.unknown" -> "tt";
            case "wish.at" -> "tt";
            case "wish.bands" -> "";
            case "wish.blocks" -> "t";
            case "wish.blocksReach" -> "tt";
            case "wish.both" -> "";
            case "wish.cloth" -> "t";
            case "wish.contrast" -> "tt";
            case "wish.fabric" -> "ctt";
            case "wish.far" -> "t";
            case "wish.fell" -> "t";
            case "wish.goes" -> "t";
            case "wish.goesBars" -> "";
            case "wish.manyWidths" -> "tt";
            case "wish.middle" -> "";
            case "wish.mixed" -> "t";
            case "wish.narrow" -> "ttwtt";
            case "wish.need" -> "ttt";
            case "wish.noCloth" -> "tt";
            case "wish.notWith" -> "t";
            case "wish.nothing" -> "";
            case "wish.off" -> "t";
            case "wish.order" -> "t";
            case "wish.pair" -> "ctw";
            case "wish.part" -> "tt";
            case "wish.reach" -> "ttt";
            case "wish.scheme" -> "tt";
            case "wish.scraps" -> "t";
            case "wish.seam" -> "tt";
            case "wish.seed" -> "t";
            case "wish.setting" -> "t";
            case "wish.show" -> "t";
            case "wish.slack" -> "tt";
            case "wish.tied" -> "";
            case "wish.time" -> "t";
            case "wish.timeReach" -> "t";
            case "wish.unit" -> "t";
            case "wish.whole" -> "ttt";
            case "wish.widths" -> "cc";
            case "wish.word" -> "tt";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        RefusingWords words = voice.rooms().refusing();
        return switch (sentence.key()) {
            case "file.afterQuote" -> words.fileAfterQuote(sentence.text(0, voice));
            case "file.at" -> words.fileAt(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice));
            case "file.cells" -> words.fileCells(sentence.text(0, voice), sentence.text(1, voice));
            case "file.choice" -> words.fileChoice(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "file.colour" -> words.fileColour(sentence.text(0, voice));
            case "file.count" -> words.fileCount(sentence.text(0, voice), sentence.text(1, voice));
            case "file.disagree" -> words.fileDisagree(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice));
            case "file.empty" -> words.fileEmpty();
            case "file.longName" -> words.fileLongName(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "file.more" -> words.fileMore(sentence.text(0, voice));
            case "file.most" -> words.fileMost(sentence.text(0, voice), sentence.text(1, voice));
            case "file.noColumn" -> words.fileNoColumn(sentence.text(0, voice));
            case "file.noName" -> words.fileNoName();
            case "file.noPieces" -> words.fileNoPieces();
            case "file.noUnit" -> words.fileNoUnit(sentence.count(0));
            case "file.nothing" -> words.fileNothing(sentence.text(0, voice));
            case "file.quoteOpen" -> words.fileQuoteOpen();
            case "file.tooMany" -> words.fileTooMany(sentence.text(0, voice));
            case "file.twice" -> words.fileTwice();
            case "file.twoColours" -> words.fileTwoColours(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice), sentence.word(4), sentence.text(5, voice));
            case "file.unit" -> words.fileUnit(sentence.text(0, voice));
            case "gift.book" -> words.giftBook();
            case "gift.bottle" -> words.giftBottle();
            case "gift.count" -> words.giftCount(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "gift.kinds" -> words.giftKinds();
            case "gift.large" -> words.giftLarge(sentence.text(0, voice));
            case "gift.long" -> words.giftLong(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.none" -> words.giftNone(sentence.text(0, voice));
            case "gift.rule" -> words.giftRule(sentence.word(0));
            case "gift.small" -> words.giftSmall();
            case "gift.unmeasured" -> words.giftUnmeasured(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.what" -> words.giftWhat(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.word" -> words.giftWord(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "gift.zero" -> words.giftZero();
            case "given.csv" -> words.givenCsv(sentence.text(0, voice), sentence.text(1, voice));
            case "given.empty" -> words.givenEmpty(sentence.text(0, voice));
            case "given.gone" -> words.givenGone(sentence.text(0, voice), sentence.text(1, voice));
            case "given.input" -> words.givenInput();
            case "given.large" -> words.givenLarge(sentence.text(0, voice), sentence.text(1, voice));
            case "given.noText" -> words.givenNoText(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2));
            case "given.not" -> words.givenNot(sentence.text(0, voice), sentence.word(1));
            case "given.photo" -> words.givenPhoto(sentence.text(0, voice));
            case "given.photoEmpty" -> words.givenPhotoEmpty(sentence.text(0, voice));
            case "heap.line" -> words.heapLine(sentence.text(0, voice), sentence.text(1, voice));
            case "heap.many" -> words.heapMany(sentence.text(0, voice), sentence.text(1, voice));
            case "list.at" -> words.listAt(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "list.column" -> words.listColumn(sentence.text(0, voice), sentence.text(1, voice));
            case "list.extent" -> words.listExtent();
            case "list.file" -> words.listFile(sentence.text(0, voice), sentence.text(1, voice));
            case "list.missing" -> words.listMissing();
            case "list.most" -> words.listMost(sentence.text(0, voice), sentence.text(1, voice));
            case "list.noName" -> words.listNoName();
            case "list.none" -> words.listNone(sentence.text(0, voice));
            case "list.same" -> words.listSame(sentence.text(0, voice));
            case "list.twice" -> words.listTwice(sentence.text(0, voice));
            case "list.under" -> words.listUnder(sentence.text(0, voice));
            case "list.whole" -> words.listWhole(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "list.yes" -> words.listYes(sentence.text(0, voice));
            case "out.ending" -> words.outEnding(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "out.file" -> words.outFile(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2));
            case "out.folder" -> words.outFolder(sentence.text(0, voice), sentence.word(1));
            case "out.holds" -> words.outHolds(sentence.text(0, voice), sentence.text(1, voice));
            case "out.inWay" -> words.outInWay(sentence.text(0, voice), sentence.text(1, voice));
            case "out.stopped" -> words.outStopped(sentence.text(0, voice));
            case "stash.full" -> words.stashFull(sentence.text(0, voice));
            case "stash.known" -> words.stashKnown(sentence.text(0, voice));
            case "tie.first" -> words.tieFirst();
            case "tie.other" -> words.tieOther(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "tie.unknown" -> words.tieUnknown(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.at" -> words.wishAt(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.bands" -> words.wishBands();
            case "wish.blocks" -> words.wishBlocks(sentence.text(0, voice));
            case "wish.blocksReach" -> words.wishBlocksReach(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.both" -> words.wishBoth();
            case "wish.cloth" -> words.wishCloth(sentence.text(0, voice));
            case "wish.contrast" -> words.wishContrast(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.fabric" -> words.wishFabric(sentence.count(0), sentence.text(1, voice), sentence.text(2, voice));
            case "wish.far" -> words.wishFar(sentence.text(0, voice));
            case "wish.fell" -> words.wishFell(sentence.text(0, voice));
            case "wish.goes" -> words.wishGoes(sentence.text(0, voice));
            case "wish.goesBars" -> words.wishGoesBars();
            case "wish.manyWidths" -> words.wishManyWidths(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.middle" -> words.wishMiddle();
            case "wish.mixed" -> words.wishMixed(sentence.text(0, voice));
            case "wish.narrow" -> words.wishNarrow(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2), sentence.text(3, voice), sentence.text(4, voice));
            case "wish.need" -> words.wishNeed(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "wish.noCloth" -> words.wishNoCloth(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.notWith" -> words.wishNotWith(sentence.text(0, voice));
            case "wish.nothing" -> words.wishNothing();
            case "wish.off" -> words.wishOff(sentence.text(0, voice));
            case "wish.order" -> words.wishOrder(sentence.text(0, voice));
            case "wish.pair" -> words.wishPair(sentence.count(0), sentence.text(1, voice), sentence.word(2));
            case "wish.part" -> words.wishPart(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.reach" -> words.wishReach(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "wish.scheme" -> words.wishScheme(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.scraps" -> words.wishScraps(sentence.text(0, voice));
            case "wish.seam" -> words.wishSeam(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.seed" -> words.wishSeed(sentence.text(0, voice));
            case "wish.setting" -> words.wishSetting(sentence.text(0, voice));
            case "wish.show" -> words.wishShow(sentence.text(0, voice));
            case "wish.slack" -> words.wishSlack(sentence.text(0, voice), sentence.text(1, voice));
            case "wish.tied" -> words.wishTied();
            case "wish.time" -> words.wishTime(sentence.text(0, voice));
            case "wish.timeReach" -> words.wishTimeReach(sentence.text(0, voice));
            case "wish.unit" -> words.wishUnit(sentence.text(0, voice));
            case "wish.whole" -> words.wishWhole(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "wish.widths" -> words.wishWidths(sentence.count(0), sentence.count(1));
            case "wish.word" -> words.wishWord(sentence.text(0, voice), sentence.text(1, voice));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
