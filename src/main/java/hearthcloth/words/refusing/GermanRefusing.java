package hearthcloth.words.refusing;

/** The room of refusing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "nach einem schließenden Anführungszeichen steht Text: " + text + "; eines, das zum Text gehört, verdoppeln, wie in \"6 1/2\"\" wide\"";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "Zeile " + line + ": " + what : "Zeile " + line + ", " + column + ": " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "es sind " + cells + " Zellen, aber " + columns + " Spalten; eine Zelle mit Komma in Anführungszeichen \" setzen, etwa \"16,5 cm\"";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return text + " bedeutet hier nichts; schreib " + one + " oder " + other + ", oder lass es leer";
    }

    @Override
    public String fileColour(String text) {
        return text + " ist keine Farbe; schreib eine wie #8a9a5b oder einen Namen wie dark green, oder lass es leer";
    }

    @Override
    public String fileCount(String most, String text) {
        return text + " ist keine Stückzahl; eine ganze Zahl von 1 bis " + most + " schreiben oder für eins leer lassen";
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return name + " ist hier " + now + " und in Zeile " + before + " " + was + "; ein Stoff ist das eine oder das andere, also eine Zeile ändern oder ihn anders nennen";
    }

    @Override
    public String fileEmpty() {
        return "die Vorratsdatei ist leer; die erste Zeile nennt die Spalten fabric,width,length, und jede weitere Zeile ist ein Stück";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return name + " ist " + letters + " Zeichen lang; " + most + " passen auf einen Zettel, also kürzen und den Rest unter note schreiben";
    }

    @Override
    public String fileMore(String more) {
        return "und " + more + " weitere";
    }

    @Override
    public String fileMost(String metres, String text) {
        return text + " ist mehr als die " + metres + " m, die als ein Stück gelten; prüf Zahl und Einheit";
    }

    @Override
    public String fileNoColumn(String header) {
        return "keine Spalte heißt so; die erste Zeile muss die Spalten fabric, width und length nennen (da steht " + header + ")";
    }

    @Override
    public String fileNoName() {
        return "der Stoff hat keinen Namen; schreib, wie du ihn nennst";
    }

    @Override
    public String fileNoPieces() {
        return "die Spalten sind genannt, aber kein Stück folgt; für jedes Stück eine Zeile eintragen";
    }

    @Override
    public String fileNoUnit(int more) {
        return "die Größe hat keine Einheit" + (more == 0 ? "" : " (auch in " + more + " anderen Zeilen nicht)") + "; in, cm oder mm hinter die Zahlen schreiben, eine Spalte unit anlegen oder --unit in oder --unit cm angeben";
    }

    @Override
    public String fileNothing(String text) {
        return text + " ist nichts; eine Größe über null schreiben oder die Zeile weglassen";
    }

    @Override
    public String fileQuoteOpen() {
        return "ein Anführungszeichen \" öffnet hier und schließt nie; schließen oder wegnehmen";
    }

    @Override
    public String fileTooMany(String most) {
        return "hier übersteigt der Vorrat " + most + " Stück, mehr als möglich; prüf die Zahlen oder lass Stücke weg";
    }

    @Override
    public String fileTwice() {
        return "zwei Spalten heißen so; eine umbenennen oder löschen";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return "Zeile " + line + ": " + (side.equals("wrong") ? "die linke Seite von " : "") + name + " ist hier " + now + " und in Zeile " + before + " " + was + "; das erste gilt";
    }

    @Override
    public String fileUnit(String text) {
        return text + " ist keine Einheit; schreib in, cm, mm, m, ft oder yd";
    }

    @Override
    public String giftBook() {
        return "ein Buch wird wie eine Schachtel gebunden; schreib \"box\" und seine drei Maße, oder \"books\" für zwei gleiche Bücher";
    }

    @Override
    public String giftBottle() {
        return "die Öffnung einer Flasche ist nicht weiter als ihr Bauch und ihre Schulter nicht höher als die Öffnung; prüf die Maße der Flasche";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "„" + text + "“ hat " + count + " Maße, aber " + rule;
    }

    @Override
    public String giftKinds() {
        return "schreib die Art und ihre Maße, etwa \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" oder \"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return size + " ist mehr als zwei Meter, zu groß für ein Tuch; prüf Zahl und Einheit";
    }

    @Override
    public String giftLong(String kinds, String text) {
        return "„" + text + "…“ ist zu lang für ein Geschenk; " + kinds;
    }

    @Override
    public String giftNone(String kinds) {
        return "kein Geschenk ist angegeben; " + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "eine Schachtel hat drei Maße: Länge x Breite x Höhe" : kind.equals("CUBE") ? "ein Würfel hat ein Maß" : kind.equals("BOTTLE") ? "eine Flasche hat zwei Maße: Durchmesser x Höhe" : kind.equals("BOTTLES") ? "zwei gleiche Flaschen haben zwei Maße: Durchmesser x Höhe" : kind.equals("BALL") ? "etwas Rundes hat ein Maß, den Durchmesser" : kind.equals("BOOKS") ? "zwei gleiche Bücher haben drei Maße, die von einem: Höhe x Breite x Dicke" : "eine Rolle hat zwei Maße: Durchmesser x Länge");
    }

    @Override
    public String giftSmall() {
        return "ein Geschenk unter einem Zentimeter lässt sich nicht binden; prüf die Zahlen und ihre Einheit";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "„" + text + "“ hat keine Maße; " + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "„" + text + "“ sagt nicht, was das Geschenk ist; " + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return "„" + text + "“: „" + word + "“ ist nicht verständlich; " + kinds;
    }

    @Override
    public String giftZero() {
        return "die Maße eines Geschenks sind alle größer als null; schreib das fehlende";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + " ist ein Ordner; die CSV-Datei darin angeben, etwa " + such + ".";
    }

    @Override
    public String givenEmpty(String name) {
        return name + " ist leer; die erste Zeile nennt die Spalten fabric,width,length, jede Zeile danach ist ein Stück.";
    }

    @Override
    public String givenGone(String name, String place) {
        return "Es gibt keine Datei " + name + "; den Namen prüfen und wo du gerade bist (" + place + ").";
    }

    @Override
    public String givenInput() {
        return "die Standardeingabe";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + " ist größer als " + most + " MB, weit mehr, als eine Vorratsdatei braucht; die Datei angeben, in der deine Stoffe stehen.";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + " ist eine Arbeitsmappe oder ein Archiv, kein Text; die Tabelle als CSV (UTF-8) speichern und diese Datei angeben." : why.equals("UTF16") ? "" + name + " ist Text in UTF-16; die Tabelle als CSV (UTF-8) speichern und diese Datei angeben." : why.equals("BYTE") ? "" + name + " ist kein Text (Zeile " + line + " enthält ein Byte, das kein Buchstabe ist); die Tabelle als CSV (UTF-8) speichern und diese Datei angeben." : "" + name + " ist nicht UTF-8 (Zeile " + line + " enthält einen Buchstaben in anderer Kodierung); die Tabelle als CSV (UTF-8) speichern und diese Datei angeben.");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "\"" + name + "\" ist kein Dateiname; die Schreibweise prüfen." : why.equals("LOCKED") ? "" + name + " darfst du nicht lesen; die Rechte ändern oder die Datei kopieren." : "" + name + " ließ sich nicht zu Ende lesen; den Datenträger prüfen und noch einmal versuchen.");
    }

    @Override
    public String givenPhoto(String name) {
        return name + " ist ein Ordner; das Foto darin angeben.";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + " ist leer; das Foto so angeben, wie Kamera oder Handy es aufgenommen haben.";
    }

    @Override
    public String heapLine(String line, String what) {
        return "Zeile " + line + ": " + what + ".";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "Das sind " + pieces + " Stück; eine Seite plant mit höchstens " + most + ". Lass einige weg.";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + ", Zeile " + line + ", " + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "kein Wunsch heißt „" + text + "“; es gibt " + names + ".";
    }

    @Override
    public String listExtent() {
        return "wie groß, ist nicht gesagt; schreib eine Größe wie 16 in oder ein Geschenk";
    }

    @Override
    public String listFile(String list, String what) {
        return list + ", " + what + ".";
    }

    @Override
    public String listMissing() {
        return "name: ein Name fehlt; schreib, wessen Tuch es ist.";
    }

    @Override
    public String listMost(String list, String most) {
        return list + " hat mehr als " + most + " Tücher; aufteilen.";
    }

    @Override
    public String listNoName() {
        return "keine Spalte heißt name; die erste Zeile nennt die Spalten, etwa name,size,gift.";
    }

    @Override
    public String listNone(String list) {
        return list + " nennt kein Tuch; die erste Zeile nennt die Spalten, etwa name,size,gift, und jede weitere Zeile ist ein Tuch.";
    }

    @Override
    public String listSame(String text) {
        return "name: ein anderes Tuch heißt auch „" + text + "“; unterscheide sie.";
    }

    @Override
    public String listTwice(String text) {
        return text + ": zwei Spalten heißen so; eine löschen.";
    }

    @Override
    public String listUnder(String text) {
        return "„" + text + "“ steht unter keiner Spalte; was ein Komma enthält, in Anführungszeichen setzen.";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + ", Zeile " + line + ": " + what;
    }

    @Override
    public String listYes(String text) {
        return "free: „" + text + "“ geht nicht; schreib yes oder no.";
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return option + ": \"" + name + "\" geht nicht; einen Dateinamen schreiben, der auf " + ending + " endet.";
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + ": " + name + " ist ein Ordner; einen Dateinamen angeben." : why.equals("THERE") ? "" + option + ": Eine Datei " + name + " gibt es schon; einen anderen Namen angeben oder mit --replace überschreiben." : why.equals("NOWHERE") ? "" + option + ": Für " + name + " gibt es keinen Ordner; ihn zuerst anlegen oder den Namen prüfen." : why.equals("LOCKED") ? "" + option + ": In den Ordner von " + name + " darfst du nicht schreiben; die Rechte ändern oder einen anderen angeben." : why.equals("NAME") ? "" + option + ": \"" + name + "\" ist kein Dateiname; die Schreibweise prüfen." : "" + option + ": " + name + " ließ sich nicht schreiben; Rechte und freien Platz prüfen.");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out: Ein Ordner fehlt; etwa --out cloths schreiben." : why.equals("FILE") ? "--out: " + name + " ist eine Datei; einen Ordner angeben, den es noch nicht geben muss." : why.equals("NAME") ? "--out: \"" + name + "\" ist kein Ordnername; die Schreibweise prüfen." : why.equals("CLOSED") ? "--out: In " + name + " ließ sich nicht hineinsehen; die Rechte prüfen." : "--out: " + name + " ließ sich nicht schreiben; Rechte und freien Platz prüfen. Nichts wurde geändert.");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out: " + name + " enthält anderes (" + thing + "); einen neuen Ordner angeben oder einen, der nur Vorschläge enthält.";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out: " + name + " ließ sich nicht anlegen, eine Datei ist im Weg (" + thing + "); einen anderen Ordner angeben.";
    }

    @Override
    public String outStopped(String name) {
        return "Angehalten. In " + name + " wurde nichts geändert.";
    }

    @Override
    public String stashFull(String most) {
        return "der Vorrat überstiege " + most + " Stück, mehr als möglich; prüf die Zahlen. Nichts wurde hinzugefügt";
    }

    @Override
    public String stashKnown(String fabric) {
        return fabric + " ist schon da; Farbe, Seiten und Strich bleiben, wie sie hier sind.";
    }

    @Override
    public String tieFirst() {
        return "ein Knoten braucht etwas zum Einbinden; gib --gift \"box 30 x 20 x 8 cm\" an";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return tie + ": für " + suited + "; für dieses Geschenk wähle " + names;
    }

    @Override
    public String tieUnknown(String names, String text) {
        return "„" + text + "“ ist kein bekannter Knoten; es gibt " + names;
    }

    @Override
    public String wishAt(String field, String what) {
        return field + ": " + what + ".";
    }

    @Override
    public String wishBands() {
        return "das geht nicht mit Stücken, die dabei oder in der Mitte sein müssen";
    }

    @Override
    public String wishBlocks(String text) {
        return "„" + text + "“ ist keine Zahl von Blöcken; schreib \"3 x 3\"";
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return "„" + text + "“ ist außer Reichweite; geplant werden 1 x 1 bis " + most + " x " + most + " Blöcke";
    }

    @Override
    public String wishBoth() {
        return "Größe und Geschenk lassen sich nicht beide wünschen; eines weglassen";
    }

    @Override
    public String wishCloth(String text) {
        return "„" + text + "“ ist außer Reichweite; geplant werden Tücher von 5 cm (2 in) bis 5 m (196 in), also prüf Zahl und Einheit";
    }

    @Override
    public String wishContrast(String names, String text) {
        return "„" + text + "“ ist kein Kontrast; schreib eines von " + names;
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "kein Stoff im Vorrat heißt „" + name + "“; es gibt " + names + (more == 0 ? "" : " und " + more + " weitere");
    }

    @Override
    public String wishFar(String text) {
        return "„" + text + "“ ist außer Reichweite; prüf Zahl und Einheit";
    }

    @Override
    public String wishFell(String text) {
        return "„" + text + "“ ergibt keine Kappnaht: Die zweite Zugabe umschließt die erste, sie muss die breitere sein";
    }

    @Override
    public String wishGoes(String other) {
        return "das gehört zu " + other;
    }

    @Override
    public String wishGoesBars() {
        return "das gehört zu Mittelstück und Streifen, nicht zu --free oder --blocks";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return count + " Breiten sind zu viele; höchstens " + most + " schreiben";
    }

    @Override
    public String wishMiddle() {
        return "schreib die Nummer eines Stücks";
    }

    @Override
    public String wishMixed(String text) {
        return "„" + text + "“ lässt sich nicht mischen; nach dem + schreib scattered evenly oder one bright scrap";
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return "„" + text + "“ ist zu schmal: " + (how.equals("finished") ? "die Kappnaht allein ist " + band + " breit" : "Nähte oder Saum nehmen bis zu " + eaten + " davon, und die Kappnaht bedeckt " + band) + "; schreib mehr als " + needed;
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return tie + " bräuchte ein Tuch von " + size + ", geplant wird bis " + most + "; etwas Kleineres einbinden oder anders binden";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return "„" + text + "“ ist mehr als " + most + " und lässt keinen Stoff übrig; prüf Zahl und Einheit";
    }

    @Override
    public String wishNotWith(String other) {
        return "das geht nicht zusammen mit " + other;
    }

    @Override
    public String wishNothing() {
        return "ein Teil aus nichts lässt sich nicht nähen; schreib eine Länge wie \"2 in\"";
    }

    @Override
    public String wishOff(String text) {
        return "„" + text + "“ ist kein Abstand von der Mitte; schreib eine Länge und right, left, away oder near: \"2 cm left, 3 cm away\"";
    }

    @Override
    public String wishOrder(String text) {
        return "„" + text + "“ ist keine Reihenfolge; schreib round, pairs oder two-sides";
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "„" + text + "“ hat " + (count == 1 ? "" + count + " Zahl" : "" + count + " Zahlen") + "; " + (what.equals("seam") ? "eine Kappnaht hat eine schmale und eine breite Zugabe, etwa \"1/4 + 1/2 in\"" : "ein Saum hat einen ersten und einen zweiten Bruch, etwa \"1/4 + 1/4 in\"");
    }

    @Override
    public String wishPart(String most, String text) {
        return "„" + text + "“ geht nicht: Jeder Teil ist mehr als nichts und höchstens " + most;
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return "„" + text + "“ ist außer Reichweite; geplant wird von " + least + " bis " + most + ", also prüf Zahl und Einheit";
    }

    @Override
    public String wishScheme(String names, String text) {
        return "„" + text + "“ ist kein Farbplan; schreib stash oder eines von " + names;
    }

    @Override
    public String wishScraps(String text) {
        return "„" + text + "“ ist keine Regel für Reste; schreib as-they-are, cut oder either";
    }

    @Override
    public String wishSeam(String names, String text) {
        return "„" + text + "“ ist keine Naht; schreib ihre schmale und breite Zugabe, etwa \"1/4 + 1/2 in\", oder eines von " + names;
    }

    @Override
    public String wishSeed(String text) {
        return "„" + text + "“ ist keine ganze Zahl; schreib eine wie 7";
    }

    @Override
    public String wishSetting(String text) {
        return "„" + text + "“ ist keine Anordnung; schreib straight furrow, barn raising, sunshine and shadow, turned at will oder all alike";
    }

    @Override
    public String wishShow(String text) {
        return "„" + text + "“ ist mehr als ein Stoff; schreib den, der zu sehen sein soll";
    }

    @Override
    public String wishSlack(String most, String text) {
        return "„" + text + "“ ist mehr als " + most + ", so viel nimmt das Nähen nicht auf; prüf Zahl und Einheit oder schreib none";
    }

    @Override
    public String wishTied() {
        return "das betrifft ein eingebundenes Geschenk; gib --gift \"box 30 x 20 x 8 cm\" an";
    }

    @Override
    public String wishTime(String text) {
        return "„" + text + "“ ist keine Zeit; schreib eine wie 2s, 500ms oder 1min";
    }

    @Override
    public String wishTimeReach(String text) {
        return "„" + text + "“ ist außer Reichweite; zwischen 1ms und 10min angeben";
    }

    @Override
    public String wishUnit(String text) {
        return "in „" + text + "“ wird hier nicht gemessen; schreib in oder cm";
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return "„" + text + "“ geht nicht; schreib eine ganze Zahl von " + least + " bis " + most;
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return (widths == 1 ? "" + widths + " Breite" : "" + widths + " Breiten") + " für " + (rounds == 1 ? "" + rounds + " Runde" : "" + rounds + " Runden") + "; eine Breite je Runde schreiben oder mehr Runden";
    }

    @Override
    public String wishWord(String names, String text) {
        return "„" + text + "“ geht nicht; schreib " + names;
    }
}
