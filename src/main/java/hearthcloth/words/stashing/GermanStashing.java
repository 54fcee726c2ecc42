package hearthcloth.words.stashing;

/** The room of stashing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "" + n + " Stück hinzugefügt, Nummer " + first + "." : "" + n + " Stücke hinzugefügt, Nummern " + first + "–" + last + ".");
    }

    @Override
    public String addedKnown(String fabric) {
        return fabric + " war schon da; Farbe, Seiten und Strich bleiben wie hier.";
    }

    @Override
    public String and(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + " Quadratyard");
    }

    @Override
    public String asideBack() {
        return "Zurückgeben";
    }

    @Override
    public String asideNote() {
        return "Was zurückgelegt ist, bleibt im Vorrat, wird aber für kein Tuch eingeplant.";
    }

    @Override
    public String asideSet() {
        return "Zurücklegen";
    }

    @Override
    public String asideTitle() {
        return "Für etwas anderes";
    }

    @Override
    public String backStash() {
        return "Zurück zum Vorrat";
    }

    @Override
    public String backTable() {
        return "Zurück zum Tisch";
    }

    @Override
    public String chosen() {
        return "Ausgewählt";
    }

    @Override
    public String chosenBack() {
        return "Zurückgeben";
    }

    @Override
    public String chosenFirst() {
        return "Zuerst verwenden";
    }

    @Override
    public String chosenFreeAlready() {
        return "Sie sind schon frei.";
    }

    @Override
    public String chosenKeep() {
        return "Aufheben";
    }

    @Override
    public String chosenKeptAlready() {
        return "Sie sind schon aufgehoben.";
    }

    @Override
    public String chosenMany() {
        return "%d gewählt";
    }

    @Override
    public String chosenMore() {
        return "Mehr dazu";
    }

    @Override
    public String chosenNone() {
        return "Keine";
    }

    @Override
    public String chosenNothing() {
        return "Zuerst Stücke auf dem Tisch wählen.";
    }

    @Override
    public String chosenUsed() {
        return "Aufgebraucht";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "dunkel" + hue : tone.equals("light") ? "hell" + hue : tone.equals("pale") ? "blass" + hue : tone.equals("bright") ? "leuchtend " + hue : tone.equals("greyish") ? "gräulich " + hue : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "Farbe noch nicht bekannt";
    }

    @Override
    public String deedAdd(String what) {
        return what + " hinzufügen";
    }

    @Override
    public String deedAddFile(String what) {
        return what + " aus einer Datei hinzufügen";
    }

    @Override
    public String deedAside(String what) {
        return what + " zurücklegen";
    }

    @Override
    public String deedBack(String what) {
        return what + " zurückgeben";
    }

    @Override
    public String deedChange(String what) {
        return what + " ändern";
    }

    @Override
    public String deedDelete(String what) {
        return what + " löschen";
    }

    @Override
    public String deedFabric(String fabric) {
        return "Stoff " + fabric + " ändern";
    }

    @Override
    public String deedSplit(String what) {
        return what + " in zwei schneiden";
    }

    @Override
    public String deedUse(String what) {
        return what + " aufbrauchen";
    }

    @Override
    public String done(String deed) {
        return "Erledigt: " + deed + ".";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + ", " + (faces.equals("RIGHT") ? "hat eine rechte Seite" : "beidseitig gleich") + (nap.equals("LENGTHWISE") ? ", Strich in Längsrichtung" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + ", " + (faces.equals("RIGHT") ? "hat eine rechte Seite" : "beidseitig gleich") + ", linke Seite " + wrong + (nap.equals("LENGTHWISE") ? ", Strich in Längsrichtung" : "");
    }

    @Override
    public String fabricAcross() {
        return "Stoff entlang der kürzeren Seite";
    }

    @Override
    public String fabricAll() {
        return "Für alle Stücke davon";
    }

    @Override
    public String fabricAsideAll() {
        return "Alles zurücklegen";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return aside + " von " + pieces + " zurückgelegt.";
    }

    @Override
    public String fabricAway() {
        return "Bild entfernen";
    }

    @Override
    public String fabricAwaySure() {
        return "Das Bild entfernen? Es müsste neu gesendet werden.";
    }

    @Override
    public String fabricBackAll() {
        return "Alles zurückgeben";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "Geändert für " + pieces + ".";
    }

    @Override
    public String fabricFile() {
        return "Bild, PNG oder JPEG";
    }

    @Override
    public String fabricHow() {
        return "Den Stoff bei Tageslicht flach hinlegen. Die Mitte des Bilds wird überall gekachelt, wo dieser Stoff hier gezeichnet ist.";
    }

    @Override
    public String fabricIsAside() {
        return "Zurückgelegt: Damit wird kein Tuch geplant.";
    }

    @Override
    public String fabricIsBack() {
        return "Zurückgegeben: Damit wird wieder geplant.";
    }

    @Override
    public String fabricMerge() {
        return "Mit dem Namen eines anderen Stoffs werden beide zu einem. Das lässt sich auf der Vorratsseite rückgängig machen.";
    }

    @Override
    public String fabricNoPicture() {
        return "Von diesem Stoff gibt es kein Bild.";
    }

    @Override
    public String fabricNone() {
        return "Einen Stoff dieses Namens gibt es im Vorrat nicht mehr.";
    }

    @Override
    public String fabricOwn() {
        return "Dein eigenes Bild davon";
    }

    @Override
    public String fabricPicture(String about) {
        return about + ". Das Bild zeigt 20 cm davon, etwa 8 Zoll.";
    }

    @Override
    public String fabricSavePicture() {
        return "Bild speichern";
    }

    @Override
    public String fabricTiled() {
        return "Dein Bild ist gespeichert und maßstäblich gekachelt.";
    }

    @Override
    public String fabricUntiled() {
        return "Das Bild ist entfernt; die Farbe ist wieder zu sehen.";
    }

    @Override
    public String fabricWrongAcross() {
        return "Ein Bild zeigt zwischen 1 cm und 3 m Stoff; vom linken zum rechten Rand messen.";
    }

    @Override
    public String fieldColour() {
        return "Farbe";
    }

    @Override
    public String fieldColourBlank() {
        return "Farbe (kann leer bleiben)";
    }

    @Override
    public String fieldFabric() {
        return "Stoff";
    }

    @Override
    public String fieldFaces() {
        return "Seiten";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "beidseitig gleich" : "hat eine rechte Seite");
    }

    @Override
    public String fieldHowMany() {
        return "Wie viele";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return "Wie viele von " + n;
    }

    @Override
    public String fieldLength() {
        return "Entlang der Webkante";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "Entlang der Webkante, " + unit;
    }

    @Override
    public String fieldName() {
        return "Name";
    }

    @Override
    public String fieldNap() {
        return "Strich";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "keiner, liegt beliebig" : "in Längsrichtung");
    }

    @Override
    public String fieldWashed() {
        return "Gewaschen";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "nicht sicher" : washed.equals("YES") ? "gewaschen" : "nicht gewaschen");
    }

    @Override
    public String fieldWidth() {
        return "Breite";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "Breite, " + unit;
    }

    @Override
    public String fieldWrong() {
        return "Linke Seite";
    }

    @Override
    public String fieldWrongOwn() {
        return "Die linke Seite hat diese Farbe";
    }

    @Override
    public String fileColumns() {
        return "Spalten, die nicht den Stoff betreffen, wurden weggelassen.";
    }

    @Override
    public String fileEncoding() {
        return "Diese Datei ist kein Text in UTF-8; aus der Tabelle als CSV (UTF-8) speichern.";
    }

    @Override
    public String fileRefused() {
        return "Die Datei wurde nicht genommen; nichts wurde geändert.";
    }

    @Override
    public String goCloth() {
        return "Was gibt mein Vorrat her?";
    }

    @Override
    public String goGift() {
        return "Was soll eingebunden werden?";
    }

    @Override
    public String goneDelete() {
        return "Löschen (irrtümlich eingetragen)";
    }

    @Override
    public String goneNoPiece() {
        return "Dieses Stück gibt es nicht mehr; es wurde aufgebraucht oder entfernt.";
    }

    @Override
    public String goneTitle() {
        return "Nicht mehr da";
    }

    @Override
    public String goneUndo() {
        return "Beides lässt sich auf der Vorratsseite rückgängig machen.";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · Strich" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + "; " + width + " breit, " + length + " entlang der Webkante";
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return (fabrics == 1 ? "" + pieces + ", " + fabrics + " Stoff" : "" + pieces + ", " + fabrics + " Stoffe");
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return fabric + " ist schon im Vorrat und bleibt, wie es dort steht: " + about + ".";
    }

    @Override
    public String heardUnclear(String first, int n) {
        return (n == 1 ? "Eine Zeile ist unklar. " + first : "" + n + " Zeilen sind unklar; die erste: " + first);
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "zurückgelegt" : "" + n + " zurückgelegt");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "für " + cloth : "" + n + " für " + cloth);
    }

    @Override
    public String heldMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "weiß" : hue.equals("grey") ? "grau" : hue.equals("black") ? "schwarz" : hue.equals("pink") ? "rosa" : hue.equals("wine_red") ? "weinrot" : hue.equals("orange") ? "orange" : hue.equals("brown") ? "braun" : hue.equals("red") ? "rot" : hue.equals("cream") ? "cremefarben" : hue.equals("beige") ? "beige" : hue.equals("yellow") ? "gelb" : hue.equals("olive_green") ? "olivgrün" : hue.equals("green") ? "grün" : hue.equals("yellow_green") ? "gelbgrün" : hue.equals("teal") ? "petrol" : hue.equals("turquoise") ? "türkis" : hue.equals("blue") ? "blau" : "lila");
    }

    @Override
    public String lineAdd() {
        return "Hinzufügen";
    }

    @Override
    public String lineAsks() {
        return "Wie viele, was, wie groß; auch viele Zeilen auf einmal.";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "12 grüner Druck 10 x 20" : "12 grüner Druck 4 x 8");
    }

    @Override
    public String lineListening() {
        return "Hört zu; zum Beenden tippen";
    }

    @Override
    public String lineMany(String lines, String most) {
        return "Das sind " + lines + " Zeilen; auf einmal gehen " + most + ". Eine CSV-Datei fasst mehr.";
    }

    @Override
    public String lineMend() {
        return "Das muss zuerst berichtigt werden.";
    }

    @Override
    public String linePhotograph() {
        return "Fotografieren";
    }

    @Override
    public String lineSay() {
        return "Ein Stück beschreiben";
    }

    @Override
    public String lineSpeak() {
        return "Sprechen";
    }

    @Override
    public String lineStill() {
        return "Diese Zeilen stehen noch unten im Feld.";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "„" + line + "“: " + why + ".";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return (n == 1 ? "" + fabric + ", " + size + ", Nummer " + numbers : "" + n + ", " + fabric + ", " + size + ", Nummern " + numbers);
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return (n == 1 ? "" + fabric + ", " + size + ", " + washed + ", Nummer " + numbers : "" + n + ", " + fabric + ", " + size + ", " + washed + ", Nummern " + numbers);
    }

    @Override
    public String markClaimed() {
        return "für ein Tuch vorgesehen";
    }

    @Override
    public String markGreys() {
        return "dunkel bis hell";
    }

    @Override
    public String markKept() {
        return "aufgehoben";
    }

    @Override
    public String markNap() {
        return "Strich läuft nach oben";
    }

    @Override
    public String markRight() {
        return "hat eine rechte Seite";
    }

    @Override
    public String moreAll() {
        return "Der ganze Vorrat";
    }

    @Override
    public String moreByFabric() {
        return "Nach Stoff";
    }

    @Override
    public String moreFiles() {
        return "In Feldern und als Datei";
    }

    @Override
    public String moreFill() {
        return "Felder ausfüllen oder eine Datei bringen";
    }

    @Override
    public String moreFind() {
        return "Suchen";
    }

    @Override
    public String moreLeast() {
        return "Mindestens so groß";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "Als CSV speichern";
    }

    @Override
    public String moreText() {
        return "Stoff oder Nummer";
    }

    @Override
    public String moreTitle() {
        return "Mehr: suchen, Stoffe, Dateien";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + ", noch zu übernehmen: " + pieces;
    }

    @Override
    public String photoDay() {
        return "d.M., HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + ", noch nicht gelesen";
    }

    @Override
    public String photoNothing(String day) {
        return day + ", nichts daraus gelesen";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return (n == 1 ? "Ein Stück, Nummer " + numbers : "" + n + " gleiche, Nummern " + numbers);
    }

    @Override
    public String pieceChange() {
        return "Ändern";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + ". Die Länge läuft im Bild von oben nach unten, entlang der Webkante.";
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " Stück" : "" + n + " Stücke");
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return (n == 1 ? "" + n + " Stück (" + fabric + ")" : "" + n + " Stücke (" + fabric + ")");
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return (n == 1 ? "" + n + " Stück (" + fabric + ")" : "" + n + " Stücke (" + fabric + ")");
    }

    @Override
    public String redo() {
        return "Wiederholen";
    }

    @Override
    public String redoNothing() {
        return "Es gibt nichts zu wiederholen.";
    }

    @Override
    public String redone(String deed) {
        return "Wiederholt: " + deed + ".";
    }

    @Override
    public String save() {
        return "Speichern";
    }

    @Override
    public String splitAt(String unit) {
        return "Bei, " + unit;
    }

    @Override
    public String splitDivides() {
        return "Ein gerader Schnitt, der teilt";
    }

    @Override
    public String splitLength(String length) {
        return "die Länge, " + length;
    }

    @Override
    public String splitTitle() {
        return "In zwei schneiden";
    }

    @Override
    public String splitWidth(String width) {
        return "die Breite, " + width;
    }

    @Override
    public String staleChoose() {
        return "Diese Stücke wurden inzwischen in einem anderen Fenster geändert. Nichts wurde geändert; noch einmal nachsehen, dann wählen.";
    }

    @Override
    public String staleFabric() {
        return "Dieser Stoff wurde inzwischen in einem anderen Fenster geändert. Hier wurde nichts geändert.";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + ", " + colour + ", " + about + "; " + pieces + ".";
    }

    @Override
    public String staleGone() {
        return "Sie sind nicht mehr im Vorrat.";
    }

    @Override
    public String staleLast(String deed) {
        return "Der Vorrat wurde inzwischen in einem anderen Fenster geändert: Die letzte Änderung ist jetzt „" + deed + "“. Nichts wurde geändert; noch einmal nachsehen.";
    }

    @Override
    public String staleNothing() {
        return "Der Vorrat wurde inzwischen in einem anderen Fenster geändert: Es ist nichts mehr rückgängig zu machen. Nichts wurde geändert; noch einmal nachsehen.";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + ", " + size + ".";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + ", " + size + ", " + washed + ".";
    }

    @Override
    public String stalePieces() {
        return "Diese Stücke wurden inzwischen in einem anderen Fenster geändert. Hier wurde nichts geändert.";
    }

    @Override
    public String summary(String area, int n) {
        return (n == 1 ? "" + n + " Stück, " + area : "" + n + " Stücke, " + area);
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return (n == 1 ? "" + found + " von " + n + " Stück, " + area : "" + found + " von " + n + " Stücken, " + area);
    }

    @Override
    public String tableBefore() {
        return "Davor";
    }

    @Override
    public String tableChange(String fabric) {
        return "Stoff " + fabric + " ändern";
    }

    @Override
    public String tableColour() {
        return "Farbe";
    }

    @Override
    public String tableColours() {
        return "Farben";
    }

    @Override
    public String tableDrawn() {
        return "Deine Stücke, maßstäblich";
    }

    @Override
    public String tableFarther() {
        return "Weiter weg";
    }

    @Override
    public String tableGreys() {
        return "Hell und dunkel";
    }

    @Override
    public String tableKeep() {
        return "aufheben";
    }

    @Override
    public String tableNearer() {
        return "Näher";
    }

    @Override
    public String tableNext() {
        return "Weiter";
    }

    @Override
    public String tableNone() {
        return "So ein Stück gibt es nicht.";
    }

    @Override
    public String tablePage(String page, String pages) {
        return "Seite " + page + " von " + pages;
    }

    @Override
    public String tablePages() {
        return "Seiten des Vorrats";
    }

    @Override
    public String tableShowAll() {
        return "Den ganzen Vorrat zeigen";
    }

    @Override
    public String tableShown() {
        return "Wie der Tisch gezeigt wird";
    }

    @Override
    public String tableTap() {
        return "Ein Stück antippen, um es zu wählen.";
    }

    @Override
    public String tableUnknown() {
        return "Farbe noch unbekannt: zum Wählen antippen";
    }

    @Override
    public String title() {
        return "Was hast du da?";
    }

    @Override
    public String titleWays() {
        return "Felder und Dateien";
    }

    @Override
    public String unchanged() {
        return "Nichts wurde geändert.";
    }

    @Override
    public String undo() {
        return "Rückgängig";
    }

    @Override
    public String undoNothing() {
        return "Es gibt nichts rückgängig zu machen.";
    }

    @Override
    public String undoWhat(String deed) {
        return "Rückgängig: " + deed;
    }

    @Override
    public String undone(String deed) {
        return "Rückgängig gemacht: " + deed + ".";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "gewaschen" : washed.equals("NO") ? "nicht gewaschen" : "");
    }

    @Override
    public String waysAddFile() {
        return "Datei hinzufügen";
    }

    @Override
    public String waysAlso(String unit) {
        return "Auch count, colour, faces (same oder right), nap (any oder lengthwise), washed (yes oder no). Maße ohne Einheit sind " + (unit.equals("metric") ? "Zentimeter" : "Zoll") + ". Ist eine Zeile falsch, wird nichts hinzugefügt.";
    }

    @Override
    public String waysColumns() {
        return "Eine Datei mit den Spalten fabric, width, length";
    }

    @Override
    public String waysFields() {
        return "In Feldern";
    }

    @Override
    public String waysFile() {
        return "Als CSV-Datei";
    }

    @Override
    public String waysHelp() {
        return "Was kann ich in die Zeile auf dem Tisch schreiben?";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "In beliebiger Reihenfolge: wie viele, der Name, Breite mal Länge, eine Farbe, „rechte Seite“, wenn eine Seite die gute ist, „Strich“, wenn es nicht gedreht werden darf, „gewaschen“. Die Breite läuft quer, die Länge entlang der Webkante. " + (unit.equals("metric") ? "„12 grüner Druck 10 x 20“, „3 salbeigrünes Leinen 30 x 30 cm“." : "„12 grüner Druck 4 x 8“, „3 salbeigrünes Leinen 12 x 12 in“.") + " Viele Zeilen lassen sich auf einmal einfügen.";
    }

    @Override
    public String wrongCount(String count) {
        return "„" + count + "“ ist keine Stückzahl; eine ganze Zahl schreiben oder für eins leer lassen.";
    }

    @Override
    public String wrongHowMany(String n) {
        return "Davon gibt es " + n + "; angeben, wie viele, von 1 bis " + n + ".";
    }

    @Override
    public String wrongLongName(String most) {
        return "Der Name ist zu lang für einen Zettel; " + most + " Zeichen passen.";
    }

    @Override
    public String wrongNoName() {
        return "Der Stoff hat keinen Namen; schreiben, wie er heißt.";
    }

    @Override
    public String wrongOutside(String whole) {
        return "Der Schnitt liegt außerhalb des Stücks; angeben, wo er ist, über 0 und unter " + whole + ".";
    }
}
