package hearthcloth.words.mending;

/** The room of mending in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "Streifen " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "nach einem Fehler neu geplant" : "was noch zu schneiden ist, neu geplant");
    }

    @Override
    public String deedAllCut(String cloth) {
        return cloth + " zugeschnitten";
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return (made.equals("yes") ? "" : "noch nicht: ") + (count == 1 ? "Schnitt " + cut + " in Stück " + piece : "Schnitte in Stück " + piece);
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "Streifen " + bar + " " + (wrong.equals("FACE") ? "mit der anderen Seite oben" : "an der anderen Seite der Arbeit") + " gelassen";
    }

    @Override
    public String deedMistake(String piece) {
        return "ein Fehler in Stück " + piece;
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "Streifen " + name + " angenäht" : what.equals("measured") ? "Streifen " + name + " angenäht, " + size : "Schritt " + name + " genäht");
    }

    @Override
    public String deedShort(String bar, String way) {
        return "Streifen " + bar + " zu kurz: " + (way.equals("JOINED_STRIP") ? "ein Stück anstückeln" : way.equals("ANEW") ? "den Streifen neu machen" : way.equals("PIECED") ? "den Streifen neu machen, gestückelt" : "so verwenden und die Arbeit beschneiden");
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "aufgetrennt: " + (what.equals("bar") ? "Streifen " + name : "Schritt " + name) + (more == 0 ? "" : " und " + more + " weitere");
    }

    @Override
    public String hearth() {
        return "Mittelstück";
    }

    @Override
    public String noBar(String bar) {
        return "Streifen " + bar + " kann nicht so kurz sein; noch einmal messen, samt den Schnittkanten.";
    }

    @Override
    public String noLarge() {
        return "Er ist so groß, wie er sein sollte; den Rest abschneiden und weitermachen.";
    }

    @Override
    public String noLeft() {
        return "Dafür reicht der übrige Stoff nicht; wähle einen anderen Weg.";
    }

    @Override
    public String noNothing() {
        return "Ein Flicken aus nichts ist nicht zu brauchen; miss, was da ist, oder nimm ein anderes Stück.";
    }

    @Override
    public String noShort(String bar) {
        return "Streifen " + bar + " ist lang genug: annähen und den Rest abschneiden.";
    }

    @Override
    public String noWork() {
        return "So klein kann die Arbeit nicht sein; noch einmal messen, samt den Schnittkanten.";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "Stück " + piece + " (" + fabric + ", " + size + ")";
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return "Streifen " + bar + " neu schneiden, aus " + pieces + ".";
    }

    @Override
    public String shortBack() {
        return "Was dafür geschnitten war, kommt in den Vorrat zurück.";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return "Streifen " + bar + " wird gestückelt aus " + pieces + ".";
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return "An Streifen " + bar + " ein Stück von " + size + " anstückeln, aus " + piece + ".";
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return "Die genähte Arbeit bei " + from + " um " + less + " auf " + to + " " + (way.equals("high") ? "Höhe" : "Breite") + " beschneiden und Streifen " + bar + " annähen, wie er ist.";
    }

    @Override
    public String small(String by, String size, String what) {
        return what + " ist um " + by + " zu klein: gemessen " + size + ".";
    }

    @Override
    public String smallAcross(String length) {
        return length + " quer";
    }

    @Override
    public String smallAlong(String length) {
        return length + " längs";
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return what + " neu schneiden, aus " + pieces + ".";
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return (count == 1 ? "Streifen " + bars + " " + width + " breit" : "die Streifen " + bars + " " + width + " breit");
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return what + " ist dann aus " + now + ", nicht aus " + was + ".";
    }

    @Override
    public String waySmaller(String size, String what) {
        return what + " verwenden, wie es ist; das Tuch wird " + size + ".";
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return "An " + what + " ein Stück anstückeln, aus " + pieces + ".";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return what + " verwenden, wie es ist, und " + bars + " schneiden; das Tuch bleibt " + size + ".";
    }
}
