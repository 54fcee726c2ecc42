package hearthcloth.words.ruling;

/** The room of ruling in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanRuling implements RulingWords {

    @Override
    public String asked() {
        return "Mittelstück, Streifen und Runden wie gewünscht";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String bars(String rule) {
        return "Streifen darum herum: " + rule + ".";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "Die Streifen sind " + widths + " breit geschnitten, nicht: " + rule + ".";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "Die Farben liegen, wie der Stoff es ergibt, nicht: " + ways + "." : "Die Farben: " + scheme + ", nicht: " + ways + ".");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "Das Mittelstück ist " + size + " geschnitten, " + share + " der Breite des Tuchs, nicht: " + rule + ".";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "Ein Streifen hat " + (joins == 1 ? "" + joins + " Stückelung" : "" + joins + " Stückelungen") + ", nicht höchstens " + most + ".";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "In der Mitte liegt " + lies + ", nicht " + wanted + ".";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return "Die Streifen liegen " + (found.equals("ROUND") ? "rundherum" : found.equals("PAIRS") ? "in gegenüberliegenden Paaren" : found.equals("TWO_SIDES") ? "an zwei Seiten" : "in anderer Reihenfolge") + ", nicht " + (wanted.equals("ROUND") ? "rundherum" : wanted.equals("PAIRS") ? "in gegenüberliegenden Paaren" : "an zwei Seiten") + ".";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return (rounds == 1 ? "Es ist eine Runde, nicht " + rule + "." : "Es sind " + rounds + " Runden, nicht " + rule + ".");
    }

    @Override
    public String bendSize(String rule, String size) {
        return "Das Tuch ist " + size + " groß, nicht: " + rule + ".";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + " bis " + most;
    }

    @Override
    public String colours(String rule) {
        return "Farben: " + rule + ".";
    }

    @Override
    public String fileField(String field, String what) {
        return "„" + field + "“: " + what + ".";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "hier steht „" + text + "“; in einer Plandatei steht " + plan + ", in einer Vorgabe " + guideline;
    }

    @Override
    public String fileGuideline(String what) {
        return "Das ist keine Datei einer Vorgabe: " + what + ".";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return "Zeile " + line + ": " + (why.equals("AFTER") ? "nach dem Ende des einen Objekts der Datei steht noch etwas" : why.equals("EARLY") ? "die Datei endet zu früh; vielleicht wurde sie nur zum Teil gesendet oder gespeichert" : why.equals("COLON") ? "ein " + text + " fehlt nach dem Namen eines Feldes" : why.equals("COMMA_FIELD") ? "ein " + text + " fehlt, oder ein Komma nach einem Feld" : why.equals("COMMA_LIST") ? "ein " + text + " fehlt, oder ein Komma in einer Liste" : why.equals("DEEP") ? "es ist zu tief verschachtelt" : why.equals("NAME") ? "der Name eines Feldes fehlt; er steht in Anführungszeichen" : why.equals("TWICE") ? "„" + text + "“ steht zweimal da; lass eines weg" : why.equals("OPEN_QUOTE") ? "ein Anführungszeichen wird nicht geschlossen" : why.equals("LINE_END") ? "eine Zeile endet innerhalb von Anführungszeichen; schreib \\n für eine neue Zeile" : why.equals("ESCAPE") ? "" + text + " ist kein Zeichen von JSON; schreib für einen Rückstrich zwei" : why.equals("CODE") ? "\\u verlangt vier Ziffern von 0 bis f" : "ein Wert ist nicht zu verstehen; Wörter stehen in Anführungszeichen");
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "hier gehört ein Objekt mit Feldern hin, in " + signs : kind.equals("LIST") ? "hier gehört eine Liste hin, in " + signs : "hier gehören Wörter in Anführungszeichen hin");
    }

    @Override
    public String fileLong(String letters, String most) {
        return "das ist " + letters + " Zeichen lang; " + most + " passen";
    }

    @Override
    public String fileMissing() {
        return "es fehlt";
    }

    @Override
    public String fileObject(String sign) {
        return "Die Datei enthält kein Objekt; ihr erstes Zeichen ist " + sign + ".";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "Dieser Plan ist ein Tuch aus Resten; es hat kein Mittelstück und keine Streifen, die man weitergeben könnte." : why.equals("HEARTH") ? "Kein Teil dieses Plans ist das Mittelstück; gib den Plan neu aus." : why.equals("NONE") ? "Dieser Plan hat keine Teile; gib den Plan neu aus." : why.equals("MANY") ? "Dieser Plan hat mehr Teile, als ein Tuch hier haben kann; gib den Plan neu aus." : "Die Teile dieses Plans passen nicht zusammen; gib den Plan neu aus.");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "das Bild ist zu groß; verkleinere es auf höchstens 330 kB" : "das ist kein Bild in Base64; setz das Bild neu ein");
    }

    @Override
    public String filePlan(String what) {
        return "Das ist keine Plandatei: " + what + ".";
    }

    @Override
    public String fileUnknown(String names) {
        return "dieses Feld ist hier unbekannt; es gibt " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "es fehlt; schreib eine ganze Zahl von " + least + " bis " + most : "das geht nicht; schreib eine ganze Zahl von " + least + " bis " + most);
    }

    @Override
    public String giftBooks(String sizes) {
        return "zwei Bücher, je " + sizes;
    }

    @Override
    public String giftBottle(String across, String high) {
        return "eine Flasche, " + across + " Durchmesser, " + high + " hoch";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "zwei Flaschen, je " + across + " Durchmesser, " + high + " hoch";
    }

    @Override
    public String giftBox(String sizes) {
        return "eine Schachtel " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "eine Rolle, " + across + " Durchmesser, " + length + " lang";
    }

    @Override
    public String giftRound(String across) {
        return "etwas Rundes, " + across + " Durchmesser";
    }

    @Override
    public String hearth(String rule) {
        return "Mittelstück: " + rule + ".";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "" + width + " breit, geschnitten" : kind.equals("WIDTHS_FINISHED") ? "" + width + " breit, fertig" : kind.equals("BETWEEN") ? "" + width + " bis " + most + " breit, geschnitten" : kind.equals("BETWEEN_FINISHED") ? "" + width + " bis " + most + " breit, fertig" : kind.equals("SHARE") ? "" + width + " bis " + most + " % der Breite des Tuchs" : kind.equals("STRIPS") ? "so breit wie deine Stoffstreifen" : "wie dein Stoff es ergibt");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "wie dein Stoff sie hat" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return "groß genug für " + gift + ", " + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", geschnitten" : kind.equals("FINISHED") ? "" + size + ", fertig" : kind.equals("SHARE") ? "" + least + " bis " + most + " % der Breite des Tuchs" : kind.equals("SQUARE") ? "das größte Quadrat, das eines deiner Stücke hergibt" : "wie dein Stoff es ergibt");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "so viele, wie dein Stoff ergibt" : "" + (least.equals("none") ? "" : "" + least + " bis ") + most);
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", fertig" : kind.equals("WITHIN") ? "ein Quadrat von " + size + " bis " + most + ", so groß dein Stoff es erlaubt" : "so groß dein Stoff es erlaubt");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + " (" + idea + ")";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "Jeder Streifen ist aus einem Stück; keiner ist gestückelt." : most == 1 ? "Ein Streifen darf gestückelt sein: höchstens " + most + " Stückelung, kein Teil fertig unter " + least + "." : "Ein Streifen darf gestückelt sein: höchstens " + most + " Stückelungen, kein Teil fertig unter " + least + ".");
    }

    @Override
    public String middle(String middle) {
        return "In der Mitte liegt " + (middle.equals("FAVOURITE") ? "dein Lieblingsstoff" : middle.equals("LIGHTEST") ? "dein hellster Stoff, der groß genug ist" : middle.equals("DARKEST") ? "dein dunkelster Stoff, der groß genug ist" : "irgendein Stoff") + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "Jeder Streifen kommt an die nächste Seite, immer rundherum." : order.equals("PAIRS") ? "Die Streifen kommen paarweise an gegenüberliegende Seiten." : "Die Streifen kommen nur an zwei Seiten; das Mittelstück bleibt in der Ecke.");
    }

    @Override
    public String orderOpen() {
        return "Die Reihenfolge der Streifen ergibt sich aus deinem Stoff.";
    }

    @Override
    public String plannerMissing() {
        return "Dieses Hearthcloth wurde ohne den Planer für Seiten gebaut; starte ideapage/build in seinem Ordner und bau es dann neu.";
    }

    @Override
    public String rounds(String rule) {
        return "Runden von Streifen: " + rule + ".";
    }

    @Override
    public String ruleBar(String text) {
        return "„" + text + "“ ist kein Streifen; Streifen heißen 1A, 1B und so weiter";
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return "„" + text + "“ geht nicht; schreib " + (rule.equals("SIZE") ? "open, eine Größe wie \"16 in\" oder \"16 to 20 in\", oder \"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open, largest square, einen Anteil wie \"30 to 40 %\" oder eine Größe wie \"14 in\"" : "open, strips, einen Anteil wie \"8 to 12 %\" oder Breiten wie \"2 to 3 in\"");
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return "„" + text + "“ geht nicht; schreib " + (none.equals("yes") ? "eine Länge von höchstens " + most : "mehr als nichts und höchstens " + most);
    }

    @Override
    public String ruleRange(String text) {
        return "„" + text + "“ ist kein Bereich; schreib das kleinere Maß zuerst, etwa \"2 to 3 in\"";
    }

    @Override
    public String ruleReach(String text) {
        return "„" + text + "“ ist außer Reichweite; schreib mehr als nichts und höchstens 5 m, und prüf die Einheit";
    }

    @Override
    public String ruleRounds(String most, String text) {
        return "„" + text + "“ geht nicht; schreib eine Zahl von Runden von 1 bis " + most + ", zwei wie \"2 to 4\", oder \"open\"";
    }

    @Override
    public String ruleSeam(String names, String text) {
        return "„" + text + "“ ist keine Naht, die wir kennen; es gibt " + names;
    }

    @Override
    public String ruleShare(String text) {
        return "„" + text + "“ ist kein Anteil; schreib ganze Zahlen von 1 bis 99, die kleinere zuerst, etwa \"30 to 40 %\"";
    }

    @Override
    public String ruleWay(String names, String text) {
        return "„" + text + "“ ist kein Farbweg; schreib " + names;
    }

    @Override
    public String ruleWider() {
        return "die breite Zugabe umschließt die schmale, sie muss die breitere sein";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "Kappnaht" : seam.equals("ssamsol") ? "Ssamsol" : seam.equals("felled_and_trimmed") ? "Kappnaht, zurückgeschnitten" : seam.equals("lapped") ? "verhakte Kappnaht" : seam.equals("french") ? "französische Naht" : seam.equals("french_trimmed") ? "französische Naht, zurückgeschnitten" : seam.equals("gamchimjil") ? "Gamchimjil" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "Nähte: " + seam + ", " + narrow + " + " + wide + ". Saum: " + first + " + " + second + ", " + (corner.equals("MITRED") ? "Briefecken" : "gerade Ecken") + ".";
    }

    @Override
    public String size(String rule) {
        return "Größe des Tuchs: " + rule + ".";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "Schachteln, Gestapeltes und Schweres" : tie.equals("EDGE_ALONG_EDGE") ? "Schachteln auf einem großen Tuch" : tie.equals("ERRAND") ? "Schachteln, die man in der Hand trägt" : tie.equals("FLAT") ? "flache Schachteln und gefaltete Kleidung, ohne Knoten" : tie.equals("TWO_KNOT") ? "lange Schachteln und gerollte Matten" : tie.equals("ONE_BOTTLE") ? "eine stehende Flasche" : tie.equals("TWO_BOTTLES") ? "zwei gleiche Flaschen" : tie.equals("ROUND") ? "Bälle, Melonen, Rundes" : tie.equals("BOOKS") ? "zwei gleiche Bücher" : "Stoffballen, Röhren, Dosen");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "Vier-Zipfel-Knoten" : tie.equals("EDGE_ALONG_EDGE") ? "Vier-Zipfel-Knoten, Kante an Kante" : tie.equals("ERRAND") ? "Botenpäckchen" : tie.equals("FLAT") ? "flaches Päckchen" : tie.equals("TWO_KNOT") ? "Päckchen mit zwei Knoten" : tie.equals("ONE_BOTTLE") ? "eine Flasche" : tie.equals("TWO_BOTTLES") ? "zwei Flaschen" : tie.equals("ROUND") ? "runder Beutel" : tie.equals("BOOKS") ? "Buchpäckchen" : "Rolle");
    }
}
