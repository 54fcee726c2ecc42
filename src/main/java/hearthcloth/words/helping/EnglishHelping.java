package hearthcloth.words.helping;

/** The room of helping in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishHelping implements HelpingWords {

    @Override
    public String command() {
        return "[command]";
    }

    @Override
    public String completionHeader() {
        return "Writes a completion for bash, zsh or fish, or the manual page.";
    }

    @Override
    public String completionKind() {
        return "What to write.";
    }

    @Override
    public String guidelineAbout() {
        return "Of each choice in the cloth, say what it is: the idea itself (\"kept\"), its share of the cloth's width (\"share\"), only how it came that day (\"open\"), or a rule of your own. Seam and hem are the cloth's.";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\", \"share\", \"open\", \"strips\" (as wide as your strips), \"2 to 3 in\" or \"8 to 12 %\"; usually \"open\".";
    }

    @Override
    public String guidelineBy() {
        return "Who hands it on.";
    }

    @Override
    public String guidelineCloth() {
        return "The cloth: plan.json from its folder, \"-\" for standard input, or its name on Made.";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\", \"open\", or ways such as \"two halves or frames\"; usually \"kept\".";
    }

    @Override
    public String guidelineExFollow() {
        return "a cloth from your own stash by that guideline";
    }

    @Override
    public String guidelineExPage() {
        return "a page that anybody can open and plan with";
    }

    @Override
    public String guidelineHeader() {
        return "Makes a guideline from a finished cloth, to hand on.";
    }

    @Override
    public String guidelineHearth() {
        return "The middle piece: \"kept\", \"share\", \"open\", \"largest square\", \"30 to 40 %\" or \"14 in cut\"; usually \"share\".";
    }

    @Override
    public String guidelineMiddle() {
        return "What lies in the middle: \"any\", \"favourite\", \"lightest\", \"darkest\" or the name of a fabric; usually \"any\".";
    }

    @Override
    public String guidelineMostJoins() {
        return "The most joins in one bar, 0 to 40; left out, as the cloth allowed.";
    }

    @Override
    public String guidelineName() {
        return "What the idea is called; left out, the plan's title.";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" or \"open\"; usually \"kept\".";
    }

    @Override
    public String guidelinePicture() {
        return "A picture of yours, PNG or JPEG.";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\", \"open\", \"3\" or \"2 to 4\"; usually \"kept\".";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\", \"open\", \"16 in\", \"16 to 20 in\" or \"for box 30 x 20 x 8 cm\"; usually \"open\".";
    }

    @Override
    public String guidelineUnit() {
        return "The ruler of those who follow it; left out, as the cloth was cut.";
    }

    @Override
    public String guidelineWords() {
        return "What you want to say about it.";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "Commands:" : of.equals("wishes") ? "Wishes:" : of.equals("examples") ? "Examples:" : of.equals("stash") ? "The stash file" : of.equals("list") ? "The list" : of.equals("idea") ? "What is the idea:" : of.equals("ends") ? "It ends with:" : of.equals("try") ? "Try it on the example that comes with it:" : "Options:");
    }

    @Override
    public String helpAbout() {
        return "Without a command it explains the program.";
    }

    @Override
    public String helpHeader() {
        return "Explains a command, with all its options.";
    }

    @Override
    public String helpWhich() {
        return "The command to explain.";
    }

    @Override
    public String ideaAbout() {
        return "The page is one file. It opens on any phone or computer, without a network, and plans each reader a cloth from the pieces typed into it. Send it, or put it on your site.";
    }

    @Override
    public String ideaExFrom() {
        return "the example on it is planned from your scraps";
    }

    @Override
    public String ideaFile() {
        return "The guideline's file; \"-\" reads standard input.";
    }

    @Override
    public String ideaFrom() {
        return "Pieces for the example on the page; left out, invented ones.";
    }

    @Override
    public String ideaHeader() {
        return "Writes a guideline as one page with the planner inside, for anybody to open.";
    }

    @Override
    public String kitsAbout() {
        return "It plans a cloth for each line of a list, or one for each student, and promises no piece twice. It shares fairly: nobody has more joins than needed, middle pieces differ, everybody has lights and darks. Each cloth gets a numbered folder, as with plan. There is also kits.pdf (a sheet for the teacher, the shopping list, a slip for every bag and every patch) and kits.json. What you wish here holds for all; the list may say otherwise.";
    }

    @Override
    public String kitsCsv() {
        return "Comma-separated text (CSV, UTF-8), a line for each cloth. The first line names the columns: name, and gift or size. If you like, any wish of plan without its dashes, such as tie, hearth, bars, rounds, fabrics, free.";
    }

    @Override
    public String kitsDone() {
        return "every cloth is as you wished";
    }

    @Override
    public String kitsExList() {
        return "a list of gifts";
    }

    @Override
    public String kitsExStudents() {
        return "twelve bags for a class, one size for all";
    }

    @Override
    public String kitsFirst() {
        return "Anna";
    }

    @Override
    public String kitsHeader() {
        return "Plans many cloths from one stash, for a class or a season's gifts.";
    }

    @Override
    public String kitsSecond() {
        return "Grandmother";
    }

    @Override
    public String kitsShort() {
        return "some cloths lack something; it says what, and draws the nearest";
    }

    @Override
    public String kitsStudents() {
        return "So many cloths alike, instead of a list: 1 to 99.";
    }

    @Override
    public String kitsWishes() {
        return "The list of cloths.";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "FILE" : of.equals("COPY") ? "COPY" : of.equals("FOLDER") ? "FOLDER" : of.equals("LIST") ? "LIST" : of.equals("STASH") ? "STASH" : of.equals("IDEA") ? "IDEA" : of.equals("PLAN") ? "PLAN" : of.equals("CLOTH") ? "CLOTH" : of.equals("PAGE") ? "PAGE" : of.equals("PICTURE") ? "PICTURE" : of.equals("PHOTO") ? "PHOTO" : of.equals("SHEET") ? "SHEET" : of.equals("FABRIC") ? "FABRIC" : of.equals("NAMES") ? "NAMES" : of.equals("NAME") ? "NAME" : of.equals("WORDS") ? "WORDS" : of.equals("GIFT") ? "GIFT" : of.equals("TIE") ? "TIE" : of.equals("LENGTH") ? "LENGTH" : of.equals("SIZE") ? "SIZE" : of.equals("SIZES") ? "SIZES" : of.equals("WIDTHS") ? "WIDTHS" : of.equals("FACE") ? "FACE" : of.equals("WAY") ? "WAY" : of.equals("ORDER") ? "ORDER" : of.equals("SETTING") ? "SETTING" : of.equals("RULE") ? "RULE" : of.equals("PIECE") ? "PIECE" : of.equals("PIECES") ? "PIECES" : of.equals("SEAM") ? "SEAM" : of.equals("HEM") ? "HEM" : of.equals("CORNER") ? "CORNER" : of.equals("COLOURS") ? "COLOURS" : of.equals("HOW") ? "HOW" : of.equals("TIME") ? "TIME" : of.equals("LANGUAGE") ? "LANGUAGE" : of.equals("COMMAND") ? "COMMAND" : "");
    }

    @Override
    public String mainAbout() {
        return "Without a command it opens the workroom in your browser.";
    }

    @Override
    public String mainAddress() {
        return "Where people reach a studio through a proxy on this machine: https://studio.example.";
    }

    @Override
    public String mainCode() {
        return "Ask for a code on this machine too, where other people are logged in to it.";
    }

    @Override
    public String mainData() {
        return "The file that keeps your work; left out, the usual place. Or a studio's database: postgresql://HOST/NAME.";
    }

    @Override
    public String mainDone() {
        return "done";
    }

    @Override
    public String mainHeader() {
        return "Plans reversible, one-layer patchwork wrapping cloths from fabric you own.";
    }

    @Override
    public String mainLan() {
        return "Let phones and tablets on this network in, each with a code that the workroom shows.";
    }

    @Override
    public String mainLanguage() {
        return "Language of this help and of what is said here: \"en\", \"ko\", \"ja\", \"fr\", \"de\" or \"es\". The workroom speaks your browser's.";
    }

    @Override
    public String mainMore(String command) {
        return "For every wish, with examples: " + command;
    }

    @Override
    public String mainNew() {
        return "Begin an empty workroom where your file used to be and is gone.";
    }

    @Override
    public String mainNoBrowser() {
        return "Only say the workroom's address; open no browser.";
    }

    @Override
    public String mainPort(String usual) {
        return "Where the workroom listens: a port, usually " + usual + ". If it is in use, the next free one is taken.";
    }

    @Override
    public String mainRestore() {
        return "First put a safety copy in the file's place: \"last\", or the copy's name.";
    }

    @Override
    public String mainShort() {
        return "your stash cannot make what you wish; it says what is short";
    }

    @Override
    public String mainWrong() {
        return "something you typed, or something in a file, cannot be used; it says where";
    }

    @Override
    public String manualFiles() {
        return "Your work. Beside it, in workroom.db.copies, lie its safety copies.";
    }

    @Override
    public String manualSame() {
        return "What to use where the option of that name is not typed.";
    }

    @Override
    public String manualSettings() {
        return "A file of lines such as HEARTHCLOTH_PORT=4732, used where neither is given.";
    }

    @Override
    public String optionBudget(String usual) {
        return "How long to look for something better: \"500ms\", \"2s\", \"1min\"; usually \"" + usual + "\".";
    }

    @Override
    public String optionFile() {
        return "The file to write.";
    }

    @Override
    public String optionFolder() {
        return "The folder to write: a new one, or one that was planned before.";
    }

    @Override
    public String optionGift() {
        return "What you wrap: \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\", \"roll 6 x 40 cm\".";
    }

    @Override
    public String optionGuide(String usual) {
        return "How much each guide.pdf tells: \"full\" for you alone, \"class\" for four to six pages to teach by; usually \"" + usual + "\".";
    }

    @Override
    public String optionHelp() {
        return "Show this help.";
    }

    @Override
    public String optionJson() {
        return "Say it as JSON, for programs; lengths in nanometres.";
    }

    @Override
    public String optionLanguage() {
        return "Language of what is said and printed: \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\", or its name. Left out, your shell's.";
    }

    @Override
    public String optionPaper() {
        return "Paper to print on: \"a4\" or \"letter\". Left out, letter with inches, otherwise A4.";
    }

    @Override
    public String optionReplace() {
        return "Write over a file that is there already.";
    }

    @Override
    public String optionStash() {
        return "The stash file; \"-\" reads standard input.";
    }

    @Override
    public String optionTie() {
        return "How you tie it, such as \"errand wrap\". Left out, plans take the usual tie, and size names all.";
    }

    @Override
    public String optionUnit() {
        return "Your ruler, and the unit of bare numbers: \"in\" or \"cm\". Left out, as what is read is written.";
    }

    @Override
    public String optionVersion() {
        return "Say the version, and from which commit it was built.";
    }

    @Override
    public String optional() {
        return "[options]";
    }

    @Override
    public String planAbout() {
        return "It reads your stash and plans several different cloths that you really can make from it. Each gets a numbered folder, the best first, with plan.json, front.svg, back.svg, cut.svg and guide.pdf. With --gift there is also tied.svg, the gift as it will look. What you leave out is chosen for you, and said.";
    }

    @Override
    public String planCsv() {
        return "Comma-separated text (CSV, UTF-8). The first line names the columns, in any order; after it comes a line for each piece. Needed: fabric, width, length (along the selvage). If you like: count, colour (\"#8a9a5b\" or \"olive\"), faces (\"same\" on both or \"right\" on one), nap (\"any\" or \"lengthwise\"), washed (\"yes\" or \"no\"), unit, note.";
    }

    @Override
    public String planCsvOther() {
        return "Sail stripe";
    }

    @Override
    public String planCsvPlain() {
        return "Kelp linen";
    }

    @Override
    public String planDone() {
        return "cloths were planned";
    }

    @Override
    public String planExBest() {
        return "whatever your stash makes best, as large as it goes";
    }

    @Override
    public String planExBlocks() {
        return "nine small log cabins set together";
    }

    @Override
    public String planExCut() {
        return "middle piece and bars as cut; the size follows";
    }

    @Override
    public String planExFree() {
        return "scraps put together as they are";
    }

    @Override
    public String planExGift() {
        return "large enough to tie round that box";
    }

    @Override
    public String planExIdea() {
        return "a teacher's guideline, fitted to your stash";
    }

    @Override
    public String planExInput() {
        return "the stash comes from another program";
    }

    @Override
    public String planExPairs() {
        return "bars sewn on in pairs, two fabrics only";
    }

    @Override
    public String planFavourite() {
        return "With --guideline: the fabric you like best, for the middle where the guideline asks for it.";
    }

    @Override
    public String planGuideline() {
        return "Follow this guideline, in place of wishes of your own. You get the nearest cloth, and hear which rules it bends.";
    }

    @Override
    public String planHeader() {
        return "Plans cloths from a stash: what to cut from which piece, and how to sew it.";
    }

    @Override
    public String planLike() {
        return "A picture whose colours you love. Only the fabrics nearest to its main colours are used.";
    }

    @Override
    public String planNet() {
        return "With --gift: also write net.pdf and net.svg, the flat cloth with every fold, to try in paper.";
    }

    @Override
    public String planPng() {
        return "Also write the pictures as PNG.";
    }

    @Override
    public String planShort() {
        return "your stash cannot make what you wish; it says what is short, and writes the nearest cloth";
    }

    @Override
    public String planSlips() {
        return "Also write slips.pdf: a slip of paper to pin to each patch.";
    }

    @Override
    public String readAbout() {
        return "Lay the pieces flat and apart, on ground they stand out from. Put a sheet of paper, a bank card or a cutting mat of known size among them. Take one picture from above with everything whole in it. The sheet tells how large each piece is. Pieces in doubt are named and left out, unless you want them written.";
    }

    @Override
    public String readDone() {
        return "a stash file was written";
    }

    @Override
    public String readExPicture() {
        return "also draws on the picture what was read";
    }

    @Override
    public String readExPlan() {
        return "plans cloths from what was read";
    }

    @Override
    public String readFile() {
        return "The file has a line for each fabric and size: the largest rectangle that surely can be cut from the piece, rounded down to your ruler's marks. Pieces that look alike count as one fabric, named by its colour. Give them your own names in the file, and say which have a right side.";
    }

    @Override
    public String readHeader() {
        return "Reads pieces off a photograph and writes them as a stash file.";
    }

    @Override
    public String readKeepDoubtful() {
        return "Also write the pieces in doubt.";
    }

    @Override
    public String readOut() {
        return "The stash file to write.";
    }

    @Override
    public String readPhoto() {
        return "A JPEG or PNG; \"-\" reads standard input.";
    }

    @Override
    public String readPicture() {
        return "Also draw on the picture what was read.";
    }

    @Override
    public String readSheet() {
        return "What of known size lies in the picture: \"sheet\" (the measuring sheet; \"sheet 19.9 cm\" if its line measures that), \"a4\", \"letter\", \"card\" (a bank card), or a size such as \"12 x 18 in\".";
    }

    @Override
    public String readShort() {
        return "no piece could be written; it says why";
    }

    @Override
    public String readUnit() {
        return "Your ruler. Left out: inches with \"letter\", centimetres with \"a4\", otherwise as the sheet is written.";
    }

    @Override
    public String sheetAbout() {
        return "A photograph with this sheet measures pieces more surely than one with plain paper. Its marks cannot be taken for cloth, and they show how the sheet is bent. Print it at 100 %, not fitted to the page. Then lay a ruler to its thin line: it is 20 cm, or 7 7/8 in.";
    }

    @Override
    public String sheetExRuler() {
        return "if your ruler says that the line on the print is 19.9 cm long";
    }

    @Override
    public String sheetHeader() {
        return "Writes the measuring sheet, to print and lay among the pieces.";
    }

    @Override
    public String sheetPaper() {
        return "The paper in the printer: \"a4\" or \"letter\"; usually \"a4\".";
    }

    @Override
    public String sizeAbout() {
        return "Measure the outside of the gift. A box has length x width x height; a bottle, diameter x height; a ball, its diameter; books, height x width x thickness of one of two; a roll, diameter x length. The base may be measured either way round. Sizes are those of the finished, hemmed cloth.";
    }

    @Override
    public String sizeCloth() {
        return "A finished cloth: \"38 1/2 in\" or \"90 x 100 cm\".";
    }

    @Override
    public String sizeExCloth() {
        return "what a square cloth ties round";
    }

    @Override
    public String sizeExSteps() {
        return "with the steps of the tie";
    }

    @Override
    public String sizeExTie() {
        return "only this tie, in centimetres";
    }

    @Override
    public String sizeHeader() {
        return "Says how large a cloth a gift needs, or what a cloth ties round.";
    }

    @Override
    public String sizeSteps() {
        return "Also say how to tie it, step by step; best with --tie.";
    }

    @Override
    public String usage() {
        return "Usage:";
    }

    @Override
    public String wishBands() {
        return "With --free: bands that lie \"across\" the cloth, or run \"down\" it, or \"any\"; usually \"any\".";
    }

    @Override
    public String wishBars() {
        return "Widths of the bars, as cut: \"5 in\" for all, \"5 in, 4 in\" round by round (the last goes on); with \"finished\" for what shows. Usually \"stash\".";
    }

    @Override
    public String wishBlocks() {
        return "So many small log cabins in a row, and so many rows: \"3 x 3\". Then --rounds and --order are those of each block.";
    }

    @Override
    public String wishClearance() {
        return "A join keeps this far from every seam it would cross: \"1 in\" or \"25 mm\".";
    }

    @Override
    public String wishContrast() {
        return "\"most\" (as much contrast as can be), \"reads\" (the log cabin reads), \"easy\", \"quiet\" or \"melts\" (into one field); usually \"reads\".";
    }

    @Override
    public String wishCorner() {
        return "Corners of the hem: \"square\" or \"mitred\".";
    }

    @Override
    public String wishFabrics() {
        return "Use only these fabrics, with commas between; the first is for the middle.";
    }

    @Override
    public String wishFell() {
        return "The face on which fells and hem lie: \"front\" or \"back\".";
    }

    @Override
    public String wishFree() {
        return "Scraps put together as they are, without middle piece and bars. With --blocks or --rounds, scraps round the log cabins.";
    }

    @Override
    public String wishHearth() {
        return "The piece in the middle, as cut: \"14 in\", \"12 x 9 in\"; or \"12 in finished\" for what shows. Usually \"stash\": your stash decides.";
    }

    @Override
    public String wishHem() {
        return "First + second fold of the hem: \"1/4 + 1/4 in\".";
    }

    @Override
    public String wishLeastPiece() {
        return "No part of a pieced bar shows less than this: \"2 in\" or \"5 cm\".";
    }

    @Override
    public String wishLeeway() {
        return "Cut this much longer than each bar, and trim it after sewing: \"1/2 in\" or \"12 mm\".";
    }

    @Override
    public String wishMiddle() {
        return "With --free: the number of a piece that lies in the middle as it is, with the others round it.";
    }

    @Override
    public String wishMostJoins() {
        return "The most joins in one bar, 0 to 40; usually 4.";
    }

    @Override
    public String wishMostTrim() {
        return "With --free: trim no more than this off the width or the length of a piece: \"1/2 in\".";
    }

    @Override
    public String wishOffMiddle() {
        return "The gift set off the cloth's middle: \"1 in right\", \"2 cm left, 3 cm away\" (or \"near\").";
    }

    @Override
    public String wishOrder() {
        return "\"round\" (each bar on the next side), \"pairs\" (opposite sides), or \"two-sides\" (the middle piece stays in a corner).";
    }

    @Override
    public String wishOutside() {
        return "The face that shows on the tied gift: \"front\" or \"back\"; usually \"front\".";
    }

    @Override
    public String wishProposals() {
        return "How many different cloths to offer, 1 to 12; usually 4.";
    }

    @Override
    public String wishRounds() {
        return "Rounds of bars, 1 to 40, or \"stash\".";
    }

    @Override
    public String wishScheme() {
        return "How the colours lie: \"two halves\", \"spiral\", \"turn and turn about\", \"ring by ring\", \"light to dark\", \"frames\", \"one field\", \"scattered evenly\", \"one bright scrap\"; usually \"stash\". Two at once: \"two halves + one bright scrap\".";
    }

    @Override
    public String wishScraps() {
        return "With --free: \"as-they-are\" (no scrap is cut in two), \"cut\" (where it helps) or \"either\"; usually \"either\".";
    }

    @Override
    public String wishSeam() {
        return "Narrow + wide allowance of a felled seam, \"1/4 + 1/2 in\", or the name of a seam: \"ssamsol\", \"french\", \"lapped\" …";
    }

    @Override
    public String wishSeed() {
        return "Another whole number tries other chances; usually 1.";
    }

    @Override
    public String wishSetting() {
        return "How the light and dark halves of the blocks lie: \"straight furrow\", \"barn raising\", \"sunshine and shadow\", \"turned at will\" or \"all alike\".";
    }

    @Override
    public String wishShow() {
        return "Put this fabric where it shows once the gift is tied.";
    }

    @Override
    public String wishSize() {
        return "The size of the finished cloth, instead of a gift: \"38 1/2 in\" (a square) or \"38 x 30 in\".";
    }

    @Override
    public String wishSizes() {
        return "With --free: \"mixed\" (large and small patches), \"even\" (as alike as can be) or \"any\"; usually \"any\".";
    }

    @Override
    public String wishSlack() {
        return "How much larger than the least to plan a cloth for a gift, for what sewing may take: \"1/2 in\", \"12 mm\", or \"none\".";
    }

    @Override
    public String wishTrim() {
        return "Cut this much wider than each bar, and trim it after sewing; usually \"none\".";
    }

    @Override
    public String wishTurned() {
        return "Quarter turns of the cloth under the gift, to the left: 0 to 3; usually 0.";
    }

    @Override
    public String wishWith() {
        return "With --free: numbers of pieces that have to be in the cloth, with commas between: \"3, 12-2\".";
    }
}
