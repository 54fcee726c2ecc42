package hearthcloth.words.reporting;

/** The room of reporting in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "Quadratyard");
    }

    @Override
    public String care(String what) {
        return "Achtung: " + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + ", " + tie + ": ein quadratisches Tuch von mindestens " + size;
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + ", " + tie + ": ein quadratisches Tuch von mindestens " + size + " (" + least + "–" + most + ", je nachdem ob der Stoff am Knoten dünn oder dick ist)";
    }

    @Override
    public String guidelineBent(String what) {
        return "Abweichung: " + what;
    }

    @Override
    public String guidelineKeeps() {
        return "nichts; alle Regeln sind eingehalten.";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + ", " + size + ", in " + folder + ", fertig zum Zuschneiden und Nähen.";
    }

    @Override
    public String guidelineNone() {
        return "Aus diesem Vorrat lässt sich kein Tuch machen.";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "In diesem Vorrat fand sich kein Tuch, das alle Regeln von „" + name + "“ einhält.";
    }

    @Override
    public String guidelineScraps() {
        return "Diese Stücke geben kein Mittelstück mit Streifen darum; die Reste werden so zusammengelegt, wie sie sind.";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + ", " + size + ", Mittelstück aus " + fabric + ", " + (n == 0 ? "ohne Stückelung" : n == 1 ? "" + n + " Stückelung" : "" + n + " Stückelungen");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + ", " + size + ", " + (n == 0 ? "ohne Stückelung" : n == 1 ? "" + n + " Stückelung" : "" + n + " Stückelungen");
    }

    @Override
    public String kitsHanded(int n) {
        return (n == 1 ? "" + n + " Stück bleibt von einem Tuch für ein anderes; kits.pdf sagt, wer zuerst schneidet." : "" + n + " Stücke bleiben von einem Tuch für ein anderes; kits.pdf sagt, wer zuerst schneidet.");
    }

    @Override
    public String kitsInTurn(String n) {
        return "Der Reihe nach: " + n + ".";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "Die meisten Stückelungen: " + worst + "; keine Aufteilung dieses Vorrats hat weniger als " + bound + ".";
    }

    @Override
    public String kitsNothing(String name) {
        return name + ": nichts ließ sich machen. Nicht wie gewünscht.";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + ": " + cloth + ", in " + folder + ".";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + ": " + cloth + ", in " + folder + ". Nicht wie gewünscht.";
    }

    @Override
    public String kitsPrint(String file) {
        return "Zettel, Einkaufsliste und das Blatt für die Lehrerin: " + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "Der Reihe nach wären " + n + " leer ausgegangen.";
    }

    @Override
    public String planChosen(String what) {
        return "Für dich gewählt: " + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "Schnitte: " + cuts + ". Verlust: " + lost + " (" + percent + " der angeschnittenen " + touched + ").";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "Schnitte: " + cuts + ". Verlust: " + lost + " (" + percent + " der angeschnittenen " + touched + "; kein Plan dafür schneidet weniger als " + least + " an).";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "Schnitte: " + cuts + ". Verlust: " + lost + " (" + percent + " der angeschnittenen " + touched + "; kein Plan dafür schneidet weniger als " + least + " an oder verliert weniger als " + leastLost + ").";
    }

    @Override
    public String planGift(String gift) {
        return "Geschenk: " + gift + ".";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + ", " + size + ", in " + folder;
    }

    @Override
    public String planImpossible() {
        return "Dieses Tuch lässt sich aus diesem Vorrat nicht machen.";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "Stückelungen: " + n + ", höchstens " + above + " mehr als möglich.";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "Stückelungen: " + n + ", weniger geht nicht.";
    }

    @Override
    public String planLarger(String length) {
        return "Es wird " + length + " größer geplant als das Mindeste, für das, was das Nähen einziehen kann.";
    }

    @Override
    public String planMore(String size) {
        return "Für mehr davon mit --size \"" + size + "\" fragen und den Rest dem Vorrat überlassen.";
    }

    @Override
    public String planNearest(String size, String title) {
        return "Das nächste, das geht, ist " + size + ": " + title + ".";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "Das nächste, das geht, ist " + size + ": " + title + ", " + (n == 0 ? "ohne Stückelung" : n == 1 ? "" + n + " Stückelung" : "" + n + " Stückelungen") + ".";
    }

    @Override
    public String planNotFound() {
        return "Es wurde kein Weg gefunden, dieses Tuch aus diesem Vorrat zu machen.";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "Flicken: " + patches + ". Nähte: " + seams + ".";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return "Es liegt in " + folder + ", fertig zum Zuschneiden und Nähen: aus " + fabrics + ".";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "Vorrat: " + (pieces == 1 ? "" + pieces + " Stück" : "" + pieces + " Stücke") + " von " + (fabrics == 1 ? "" + fabrics + " Stoff" : "" + fabrics + " Stoffen") + ", " + area + ".";
    }

    @Override
    public String planTied(String what) {
        return "Gebunden: " + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "Hinweis: Die Zeit lief ab, bevor alles versucht war; ein längeres --budget, etwa " + budget + ", findet vielleicht Besseres.";
    }

    @Override
    public String progressBest(int n, String tried) {
        return (n == 1 ? "" + tried + ", die beste mit " + n + " Stückelung" : "" + tried + ", die beste mit " + n + " Stückelungen");
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "Planung: " + tried + " von " + of + " Aufteilungen versucht, " + found + " sind möglich";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return (asked == 1 ? "gemeinsame Planung: " + tried + " von " + of + " Verteilungen versucht, " + made + " von " + asked + " Tuch möglich, höchstens " + most + " Stückelungen" : "gemeinsame Planung: " + tried + " von " + of + " Verteilungen versucht, " + made + " von " + asked + " Tüchern möglich, höchstens " + most + " Stückelungen");
    }

    @Override
    public String readAll(String doubt) {
        return "Alle Stücke: " + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "nutzbar" : column.equals("shape") ? "Form" : column.equals("colour") ? "Farbe" : column.equals("look") ? "Muster" : column.equals("fabric") ? "Stoff" : "Seiten");
    }

    @Override
    public String readDoubts() {
        return "Unsicher:";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return "Gefunden: " + (pieces == 1 ? "" + pieces + " Stück" : "" + pieces + " Stücke") + ", dem Aussehen nach aus " + (fabrics == 1 ? "" + fabrics + " Stoff" : "" + fabrics + " Stoffen") + ".";
    }

    @Override
    public String readKnow() {
        return "Gut zu wissen:";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return (n == 1 ? "Wegen eines Zweifels nicht in der Datei: " + n + " Stück (" + numbers + "). Das Foto wie gesagt noch einmal aufnehmen oder mit --keep-doubtful auch dieses schreiben." : "Wegen eines Zweifels nicht in der Datei: " + n + " Stücke (" + numbers + "). Das Foto wie gesagt noch einmal aufnehmen oder mit --keep-doubtful auch diese schreiben.");
    }

    @Override
    public String readLittle() {
        return "zu wenig";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "gemustert" : "uni");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return (n == 1 ? "Weggelassen, weil sich kein zentimeterbreites Rechteck daraus schneiden lässt: " + n + " Stück (" + numbers + ")." : "Weggelassen, weil sich kein zentimeterbreites Rechteck daraus schneiden lässt: " + n + " Stücke (" + numbers + ").");
    }

    @Override
    public String readNone() {
        return "Neben dem Blatt wurde kein Stoffstück gefunden. Leg die Stücke auf einen Grund, von dem sie sich abheben, sodass rings um jedes etwas davon zu sehen ist.";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "Stück " + number + ": " + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "Dreieck" : shape.equals("STRIP") ? "Streifen" : shape.equals("SQUARE") ? "Quadrat" : shape.equals("RECTANGLE") ? "Rechteck" : shape.equals("UNEVEN") ? "vier ungleiche Seiten" : shape.equals("L") ? "L-Form" : "" + n + " Seiten");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return file + " geschrieben: " + (pieces == 1 ? "" + pieces + " Stück" : "" + pieces + " Stücke") + " aus " + (fabrics == 1 ? "" + fabrics + " Stoff" : "" + fabrics + " Stoffen") + " in " + (lines == 1 ? "" + lines + " Zeile" : "" + lines + " Zeilen") + ". Ein Foto zeigt weder die rechte Seite noch die Webkante: Beide Seiten stehen als gleich da, die längere Kante als Länge. Wo das nicht stimmt, die Datei ändern.";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return "Die größten Geschenke, um die sich ein fertiges Tuch von " + size + " binden lässt, mit " + end + " an jeder geknoteten Ecke für Knoten und Ende:";
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "mit " + usual + " an jeder geknoteten Ecke; " + least + " bei " + leastEnd + ", " + most + " bei " + mostEnd;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "reicht" : "klein");
    }

    @Override
    public String sizeGift(String gift) {
        return "Für " + gift + " ist das fertige Tuch ein Quadrat von mindestens:";
    }

    @Override
    public String sizeKnot() {
        return "Der Kreuzknoten:";
    }

    @Override
    public String sizeNoKnot() {
        return "ohne Knoten";
    }

    @Override
    public String sizeNone(String uses) {
        return "keines; verkauft für: " + uses;
    }

    @Override
    public String sizeNothing() {
        return "nichts; es ist zu klein";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "eine Schachtel 3 : 2 : 0,8, wie eine Kuchenschachtel" : shape.equals("cube") ? "ein Würfel" : shape.equals("flat") ? "eine flache Schachtel 3 : 2 : 0,3, wie ein gefaltetes Hemd" : shape.equals("long") ? "eine lange Schachtel 5 : 1 : 1" : shape.equals("bottle") ? "eine Flasche, viermal so hoch wie breit, wie eine Weinflasche" : shape.equals("bottles") ? "zwei solche Flaschen" : shape.equals("ball") ? "ein Ball" : shape.equals("books") ? "zwei Taschenbücher 1,4 : 1 : 0,14" : "eine Rolle, viermal so lang wie dick");
    }

    @Override
    public String sizeSold(String tie) {
        return "Fertige Größen (übliche Praxis) und das größte Geschenk dieser Form (" + tie + "):";
    }

    @Override
    public String sizeSteps(String tie) {
        return "So wird gebunden (" + tie + "):";
    }

    @Override
    public String sizeTrade(String size) {
        return "Die nächstgrößere fertige Größe ist " + size + ".";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "Die nächstgrößere fertige Größe ist " + size + " (" + trade + ").";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return "bis " + gift + "; verkauft für: " + uses;
    }

    @Override
    public String square(String side) {
        return side + " im Quadrat";
    }

    @Override
    public String student(String n) {
        return "Teilnehmer " + n;
    }
}
