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
    public String rounds(String rule) {
        return "Runden von Streifen: " + rule + ".";
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
