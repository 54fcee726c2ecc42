package hearthcloth.words.picturing;

/** The room of picturing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanPicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "" + n + " Stück hinzugefügt, Nummer " + first + "." : "" + n + " Stücke hinzugefügt, Nummern " + first + "–" + last + ".");
    }

    @Override
    public String another() {
        return "Aus einem Foto";
    }

    @Override
    public String askBefore() {
        return "Schon begonnen";
    }

    @Override
    public String askChoose() {
        return "Ein Bild wählen";
    }

    @Override
    public String askHow() {
        return "Auslegen und fotografieren";
    }

    @Override
    public String askKinds() {
        return "JPEG oder PNG, wie die Kamera es aufnahm, bis 80 MB. Es bleibt auf diesem Gerät.";
    }

    @Override
    public String askNoSize() {
        return "Die Größe der Vorlage fehlt; bitte messen und Breite mal Höhe eintragen.";
    }

    @Override
    public String askNone() {
        return "Es ist kein Bild gewählt; eines wählen oder jetzt fotografieren.";
    }

    @Override
    public String askNotWhole() {
        return "Das Bild ist nicht ganz angekommen; noch einmal senden.";
    }

    @Override
    public String askNow() {
        return "Jetzt fotografieren";
    }

    @Override
    public String askPhotograph(String when) {
        return "Foto: " + when;
    }

    @Override
    public String askPreview() {
        return "Das gewählte Bild, klein";
    }

    @Override
    public String askPrint() {
        return "Das Messblatt drucken";
    }

    @Override
    public String askPrintHow() {
        return "Mit 100 % drucken, nicht an die Seite anpassen, und ein Lineal an die Linie legen.";
    }

    @Override
    public String askRead() {
        return "Auslesen";
    }

    @Override
    public String askSend() {
        return "Ein Foto senden";
    }

    @Override
    public String askSheet() {
        return "Am sichersten ist unser Messblatt: Seine Zeichen lassen sich nicht mit Stoff verwechseln und zeigen, ob es gebogen ist.";
    }

    @Override
    public String back() {
        return "Zurück zum Vorrat";
    }

    @Override
    public String deleted() {
        return "Das Foto ist gelöscht.";
    }

    @Override
    public String drawBack() {
        return "Letzte Ecke zurück";
    }

    @Override
    public String drawCloser() {
        return "Näher";
    }

    @Override
    public String drawCorner() {
        return "Ecke %1 von %2. Pfeiltasten bewegen sie, mit Umschalt weiter.";
    }

    @Override
    public String drawCross() {
        return "Das Kreuz: Eingabe setzt hier eine Ecke.";
    }

    @Override
    public String drawFarther() {
        return "Weiter weg";
    }

    @Override
    public String drawFew() {
        return "%d Ecken; weiter rundherum.";
    }

    @Override
    public String drawFind() {
        return "Den Rand um diese Stelle suchen";
    }

    @Override
    public String drawHow() {
        return "Die Ecken der Reihe nach antippen, rundherum; mit der ersten schließen. Näher herangehen, um sicher zu sein. Oder einmal in die Mitte tippen und den Rand suchen lassen.";
    }

    @Override
    public String drawKeys() {
        return "Zwei Finger oder Ziehen bewegen das Bild. Mit der Tastatur: Pfeiltasten bewegen das Kreuz, mit Umschalt weiter; Eingabe setzt eine Ecke, Rücktaste nimmt sie zurück, + und – gehen näher und weiter weg.";
    }

    @Override
    public String drawLeave() {
        return "Lassen";
    }

    @Override
    public String drawMeasure() {
        return "Schließen und messen";
    }

    @Override
    public String drawMost() {
        return "%d Ecken, mehr geht nicht. Jetzt schließen.";
    }

    @Override
    public String drawNoRim() {
        return "Um diese Stelle ist kein Rand zu sehen; stattdessen die Ecken der Reihe nach antippen. Nichts wurde hinzugefügt.";
    }

    @Override
    public String drawNone() {
        return "Noch keine Ecke.";
    }

    @Override
    public String drawOne() {
        return "1 Ecke; weiter rundherum, oder, wenn das die Mitte ist, den Rand suchen lassen.";
    }

    @Override
    public String drawPicture() {
        return "Dein Foto zum Einzeichnen";
    }

    @Override
    public String drawSome() {
        return "%d Ecken; weiter, oder schließen.";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "hat eine rechte Seite" : "beide Seiten gleich") + (nap.equals("yes") ? ", Strich längs" : "") + (washed.equals("YES") ? ", gewaschen" : washed.equals("NO") ? ", nicht gewaschen" : "");
    }

    @Override
    public String fabricFaces() {
        return "Seiten";
    }

    @Override
    public String fabricKeep() {
        return "Speichern";
    }

    @Override
    public String fabricKnown() {
        return "Diesen Stoff hat dein Vorrat; Farbe, Seiten und Strich bleiben, wie sie dort sind.";
    }

    @Override
    public String fabricLabel(String name) {
        return "Stoff " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "Name, " + pieces;
    }

    @Override
    public String fabricNap() {
        return "Strich";
    }

    @Override
    public String fabricNapAny() {
        return "keiner, liegt beliebig";
    }

    @Override
    public String fabricNapLong() {
        return "längs";
    }

    @Override
    public String fabricNo() {
        return "nicht gewaschen";
    }

    @Override
    public String fabricRight() {
        return "hat eine rechte Seite";
    }

    @Override
    public String fabricSame() {
        return "beide Seiten gleich";
    }

    @Override
    public String fabricUnknown() {
        return "nicht sicher";
    }

    @Override
    public String fabricWashed() {
        return "Gewaschen";
    }

    @Override
    public String fabricYes() {
        return "gewaschen";
    }

    @Override
    public String formCorners() {
        return "Es fehlen die Ecken eines Stücks; bitte auf dem Foto setzen.";
    }

    @Override
    public String formKind() {
        return "Dieses Formular ist von anderer Art; bitte die Seite neu laden.";
    }

    @Override
    public String formNumber() {
        return "Es fehlt die Nummer einer Ecke; bitte die Seite neu laden.";
    }

    @Override
    public String formPlace() {
        return "Es fehlt eine Stelle im Bild; bitte die Seite neu laden.";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "wartet" : what.equals("opening") ? "das Bild wird geöffnet" : what.equals("ground") ? "der Grund wird angesehen" : what.equals("sheet") ? "das Blatt wird gesucht" : what.equals("pieces") ? "die Stücke werden gesucht" : what.equals("measuring") ? "wird gemessen" : what.equals("laying") ? "wird ausgelegt" : "fertig");
    }

    @Override
    public String goingLabel() {
        return "Auslesen des Fotos";
    }

    @Override
    public String goingLeave() {
        return "Diese Seite kann verlassen werden; es geht weiter, und nichts geht verloren.";
    }

    @Override
    public String goingLook() {
        return "Noch einmal nachsehen";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %, " + what + " …";
    }

    @Override
    public String goingStop() {
        return "Anhalten und weglegen";
    }

    @Override
    public String goingTitle() {
        return "Das Foto wird ausgelesen";
    }

    @Override
    public String goingWaits(int n) {
        return (n == 1 ? "" + n + " Foto wird vor deinem ausgelesen; es wartet." : "" + n + " Fotos werden vor deinem ausgelesen; es wartet.");
    }

    @Override
    public String gone() {
        return "Dieses Foto wurde gelöscht; bitte neu senden.";
    }

    @Override
    public String goneElsewhere() {
        return "Dieses Foto wurde in einem anderen Fenster gelöscht.";
    }

    @Override
    public String hintBlurred() {
        return "Es ist verwackelt. Stillhalten, auf die Stücke scharfstellen und noch einmal aufnehmen.";
    }

    @Override
    public String hintDark() {
        return "Es ist sehr dunkel. Bei Tageslicht oder mit mehr Lampen fotografieren, ohne Blitz.";
    }

    @Override
    public String hintFine() {
        return "Auf den ersten Blick nichts auszusetzen.";
    }

    @Override
    public String hintNoSheet() {
        return "Kein weißes Blatt ist klar zu sehen. Liegt es ganz im Bild, berührt nichts und auf dunklerem Grund?";
    }

    @Override
    public String hintSlant() {
        return "Es ist schräg aufgenommen, mehr als 25°. Die Kamera waagerecht über die Mitte halten.";
    }

    @Override
    public String howAbove() {
        return "Von oben.";
    }

    @Override
    public String howAboveHow() {
        return "Die Kamera waagerecht über die Mitte halten, alles im Bild. Tageslicht von der Seite ist am besten; kein Blitz.";
    }

    @Override
    public String howAbovePicture() {
        return "Ein Telefon wird waagerecht über die Mitte der Stücke gehalten.";
    }

    @Override
    public String howApart() {
        return "Getrennt.";
    }

    @Override
    public String howApartHow() {
        return "Die Stücke fingerbreit auseinander auf einfarbigen Grund legen, von dem sie sich abheben.";
    }

    @Override
    public String howApartPicture() {
        return "Fünf Stücke liegen getrennt auf einfarbigem Grund.";
    }

    @Override
    public String howFlat() {
        return "Flach.";
    }

    @Override
    public String howFlatHow() {
        return "Falten ausbügeln; kein Stück liegt auf einem anderen.";
    }

    @Override
    public String howFlatPicture() {
        return "Von der Seite: Ein Stück liegt flach, ein anderes ist gefaltet und durchgestrichen.";
    }

    @Override
    public String howSheet() {
        return "Das Blatt flach und beschwert.";
    }

    @Override
    public String howSheetHow() {
        return "Papier oder eine Karte dazwischen, ganz zu sehen, ohne etwas zu berühren. Wellt sich das Papier, in jede Ecke eine Münze legen.";
    }

    @Override
    public String howSheetPicture() {
        return "Ein weißes Blatt liegt flach zwischen den Stücken, auf jeder Ecke eine Münze.";
    }

    @Override
    public String kept() {
        return "Gespeichert.";
    }

    @Override
    public String keyDoubt() {
        return "? ansehen";
    }

    @Override
    public String keyIn() {
        return "✓ im Vorrat";
    }

    @Override
    public String keyLeft() {
        return "× weggelassen";
    }

    @Override
    public String keyMeasured() {
        return "gemessen";
    }

    @Override
    public String keyUsable() {
        return "was sich verwenden lässt";
    }

    @Override
    public String labelAdd(int n) {
        return (n == 1 ? "" + n + " Stück" : "" + n + " Stücke") + " aus einem Foto hinzufügen";
    }

    @Override
    public String labelAllRight() {
        return "alle mit Fragezeichen stimmen";
    }

    @Override
    public String labelBring(String piece) {
        return "Stück " + piece + " zurückholen";
    }

    @Override
    public String labelCorner(String piece) {
        return "Ecke von Stück " + piece;
    }

    @Override
    public String labelDraw(String piece) {
        return "Stück " + piece + " einzeichnen";
    }

    @Override
    public String labelDrop(String piece) {
        return "Stück " + piece + " weglassen";
    }

    @Override
    public String labelFabric(String name) {
        return "Stoff " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "Fadenlauf von Stück " + piece;
    }

    @Override
    public String labelLess(String piece) {
        return "Ecke weniger an Stück " + piece;
    }

    @Override
    public String labelMore(String piece) {
        return "Ecke mehr an Stück " + piece;
    }

    @Override
    public String labelMove(String piece) {
        return "Stoff von Stück " + piece;
    }

    @Override
    public String labelName(String name) {
        return "Name " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "kein Fadenlauf an Stück " + piece;
    }

    @Override
    public String labelNotSure(String piece) {
        return "Stück " + piece + " ist nicht sicher";
    }

    @Override
    public String labelRight(String piece) {
        return "Stück " + piece + " stimmt";
    }

    @Override
    public String labelRim() {
        return "alle am Rand weglassen";
    }

    @Override
    public String labelSplit(String piece) {
        return "Stück " + piece + " teilen";
    }

    @Override
    public String noPiece() {
        return "Dieses Stück gibt es auf dem Foto nicht.";
    }

    @Override
    public String notOpened() {
        return "Dieses Foto lässt sich nicht öffnen.";
    }

    @Override
    public String notRead() {
        return "Dieses Foto ist noch nicht ausgelesen.";
    }

    @Override
    public String nothingToTake() {
        return "Es gibt kein Stück zu übernehmen: Jedes ist im Vorrat, weggelassen oder noch anzusehen.";
    }

    @Override
    public String pieceBring() {
        return "Zurückholen";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "Stück " + piece + " zurückholen";
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "Von dir eingezeichnet" : by.equals("hand") ? "Nach deinem Umriss gemessen" : "Am Rand gemessen") + (grain.equals("yes") ? ", im Fadenlauf" : "") + ".";
    }

    @Override
    public String pieceClose() {
        return "Schließen";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "Stück " + piece + " schließen";
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "Ecke " + n + " von " + all + ". Pfeiltasten bewegen sie, mit Umschalt weiter.";
    }

    @Override
    public String pieceDrag() {
        return "Eine Ecke ziehen; oder antippen und dann, wohin sie gehört; oder mit den Pfeiltasten bewegen.";
    }

    @Override
    public String pieceEnd(String n) {
        return "Ende " + n + " der Linie. Pfeiltasten bewegen es, mit Umschalt weiter.";
    }

    @Override
    public String pieceFabric() {
        return "Sein Stoff";
    }

    @Override
    public String pieceGrain() {
        return "Fadenlauf markieren";
    }

    @Override
    public String pieceIsIn() {
        return "Es ist im Vorrat. Das auf der Seite Vorrat rückgängig machen, um es hier zu berichtigen.";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return "Stück " + piece + " nicht in den Vorrat nehmen";
    }

    @Override
    public String pieceLess(String n) {
        return "Ecke " + n + " weg";
    }

    @Override
    public String pieceLessAbout(String n) {
        return "Ecke " + n + " wegnehmen";
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "Die Linie dorthin legen, wo die beiden Stücke aneinanderstoßen: die Enden ziehen oder antippen, wohin sie gehören." : "Die Linie in den Fadenlauf legen: die Enden ziehen oder antippen, wohin sie gehören.");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "Hier teilen" : "So läuft der Faden");
    }

    @Override
    public String pieceMore() {
        return "Ecke hier";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "Eine neue Ecke in der Mitte von Seite " + n;
    }

    @Override
    public String pieceMove() {
        return "Dorthin legen";
    }

    @Override
    public String pieceNoGrain() {
        return "Fadenlauf egal";
    }

    @Override
    public String pieceNotSure() {
        return "Doch nicht sicher";
    }

    @Override
    public String pieceOwn() {
        return "ein eigener Stoff";
    }

    @Override
    public String piecePicture(String piece) {
        return "Stück " + piece + ", ganz nah";
    }

    @Override
    public String pieceSides() {
        return "Seiten und Ecken";
    }

    @Override
    public String pieceSplit() {
        return "In zwei teilen";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "Die Diagonalen sind " + one + " und " + two + ", " + (same.equals("yes") ? "gleich, soweit das Bild es zeigt" : "also nicht rechtwinklig") + "; die Ecken sind auf " + degrees + "° rechtwinklig.";
    }

    @Override
    public String pieceStraight() {
        return "Sein Bild wie senkrecht von oben";
    }

    @Override
    public String pieceTitle(String piece) {
        return "Stück " + piece;
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " Stück" : "" + n + " Stücke");
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
    public String redone(String what) {
        return "Wiederholt: " + what + ".";
    }

    @Override
    public String refusedAgain() {
        return "Mit den Ecken neu beginnen";
    }

    @Override
    public String refusedAnew() {
        return "Oder neu fotografieren";
    }

    @Override
    public String refusedAway() {
        return "Dieses weglegen";
    }

    @Override
    public String refusedFailed() {
        return "Dieses Foto lässt sich nicht auslesen; unterwegs ging etwas schief. Neu aufnehmen oder noch einmal als JPEG speichern und senden.";
    }

    @Override
    public String refusedHundredths() {
        return "Wie weit jede Ecke quer und nach unten liegt, in Hundertsteln des Bildes: 21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "Diese Ecken markieren";
    }

    @Override
    public String refusedNoPieces() {
        return "Die Vorlage wurde gefunden, aber daneben kein Stück Stoff. Die Stücke getrennt auf einfarbigen Grund legen, von dem sie sich abheben, und neu fotografieren.";
    }

    @Override
    public String refusedNoTap() {
        return "Ohne Tippen";
    }

    @Override
    public String refusedOnce() {
        return "Noch einmal auslesen";
    }

    @Override
    public String refusedOther() {
        return "War es eine andere Vorlage?";
    }

    @Override
    public String refusedPicture(String reference) {
        return "Das Foto: auf eine Ecke drücken (" + reference + ")";
    }

    @Override
    public String refusedRead() {
        return "Mit diesen Ecken auslesen";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "das Messblatt" : sheet.equals("A4") ? "das A4-Blatt" : sheet.equals("LETTER") ? "das Letter-Blatt" : sheet.equals("CARD") ? "die Karte" : "das Rechteck");
    }

    @Override
    public String refusedTake() {
        return "Ein anderes Bild aufnehmen";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "Auf eine Ecke tippen. Ungefähr genügt: der nächste Rand wird genommen." : n.equals("some") ? "Auf die nächste Ecke tippen, rundherum." : n.equals("three") ? "Auf die letzte Ecke tippen." : "Alle vier sind markiert.");
    }

    @Override
    public String refusedTitle() {
        return "Daraus ließ sich nichts lesen";
    }

    @Override
    public String refusedTooMuch() {
        return "Dieses Foto ist zu groß für den Speicher dieses Geräts. Die Kamera auf weniger Megapixel stellen, 12 genügen, und neu aufnehmen.";
    }

    @Override
    public String refusedWhere(String reference) {
        return "Ist das da: " + reference + "? Bitte zeigen, wo";
    }

    @Override
    public String scriptChosen() {
        return "Gewählt: %s. Jetzt „Auslesen“ drücken.";
    }

    @Override
    public String scriptLarge() {
        return "%s ist größer als 80 MB. So senden, wie die Kamera es aufnahm, oder ein kleineres.";
    }

    @Override
    public String scriptNone() {
        return "Noch ist kein Bild gewählt.";
    }

    @Override
    public String scriptSending() {
        return "Das Bild wird gesendet …";
    }

    @Override
    public String sheetA4() {
        return "A4-Papier";
    }

    @Override
    public String sheetCard() {
        return "Eine Bank- oder Büchereikarte";
    }

    @Override
    public String sheetLetter() {
        return "Letter-Papier";
    }

    @Override
    public String sheetLine() {
        return "Länge der dünnen Linie, falls nicht 20 cm (7 7/8 in)";
    }

    @Override
    public String sheetMeasuring() {
        return "Das Messblatt";
    }

    @Override
    public String sheetSize() {
        return "Ein Rechteck von";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "Breite mal Höhe, " + unit;
    }

    @Override
    public String sheetWhich() {
        return "Was liegt zwischen den Stücken?";
    }

    @Override
    public String sortAllMine(int n) {
        return (n == 1 ? "" + n + " gehört mir und ist richtig gemessen" : "Alle " + n + " gehören mir und sind richtig gemessen");
    }

    @Override
    public String sortAllMineAbout() {
        return "Alle Stücke mit Fragezeichen gehören mir und sind richtig gemessen";
    }

    @Override
    public String sortAway() {
        return "Das Foto weglegen";
    }

    @Override
    public String sortAwayAsk() {
        return "Dieses Foto weglegen? Was im Vorrat ist, bleibt dort; der Rest müsste neu gesendet werden.";
    }

    @Override
    public String sortFabrics(int n) {
        return (n == 1 ? "Ein Stoff" : "" + n + " Stoffe");
    }

    @Override
    public String sortFabricsHow() {
        return "Gleiche Stücke liegen zusammen; eines benennen, und alle heißen so. Ein Name aus deinem Vorrat gehört zu diesem Stoff.";
    }

    @Override
    public String sortFirst() {
        return "Diese zuerst ansehen";
    }

    @Override
    public String sortLead() {
        return "Auf dem Foto liegen Umrisse und Nummern. Ein Stück antippen, um es genau zu sehen; Falsches berichtigen, jeden Stoff benennen, dann alles übernehmen.";
    }

    @Override
    public String sortLeave() {
        return "Weglassen";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "Stück " + piece + " weglassen";
    }

    @Override
    public String sortLook() {
        return "Genau ansehen";
    }

    @Override
    public String sortLookAt(String piece) {
        return "Stück " + piece + " genau ansehen";
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return piece + " ist vielleicht Stück " + there + " eines anderen Fotos" + (in.equals("yes") ? ", das im Vorrat ist" : "") + ".";
    }

    @Override
    public String sortMaybeLook() {
        return "Das andere Foto";
    }

    @Override
    public String sortMissed() {
        return "Ein übersehenes Stück einzeichnen";
    }

    @Override
    public String sortRight() {
        return "Richtig gemessen";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "Stück " + piece + " ist richtig gemessen";
    }

    @Override
    public String sortRim(int n) {
        return (n == 1 ? "Das am Rand weglassen" : "Alle " + n + " am Rand weglassen");
    }

    @Override
    public String sortRimAbout() {
        return "Alle Stücke mit Fragezeichen weglassen, die über das Bild hinausgehen";
    }

    @Override
    public String sortSame() {
        return "Dasselbe Stück: hier weglassen";
    }

    @Override
    public String sortSameAbout(String piece) {
        return "Stück " + piece + " ist dasselbe wie auf dem anderen Foto: hier weglassen";
    }

    @Override
    public String sortStay(int n) {
        return (n == 1 ? "" + n + " bleibt, bis es angesehen ist." : "" + n + " bleiben, bis sie angesehen sind.");
    }

    @Override
    public String sortTake(int n) {
        return (n == 1 ? "" + n + " Stück übernehmen" : "" + n + " Stücke übernehmen");
    }

    @Override
    public String sortTitle() {
        return "Ist es richtig gelesen?";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + ", " + off + ".";
    }

    @Override
    public String sortTwice() {
        return "Auch auf einem anderen Foto?";
    }

    @Override
    public String sortTwiceHow() {
        return "Größe, Farbe und Muster sind ähnlich. Ungefragt wird nichts zusammengelegt: weglassen, was dasselbe Stück ist; was nur ähnlich aussieht, kommt beides herein.";
    }

    @Override
    public String sortWhole(int n) {
        return (n == 1 ? "Dein Foto mit Umriss und Nummer von " + n + " Stück; die Liste nennt es." : "Dein Foto mit Umriss und Nummer von " + n + " Stücken; die Liste nennt jedes.");
    }

    @Override
    public String stale() {
        return "Dieses Foto wurde inzwischen in einem anderen Fenster geändert. Hier wurde nichts geändert; bitte die Seite neu laden.";
    }

    @Override
    public String staleTaking() {
        return "Dieses Foto wurde inzwischen in einem anderen Fenster geändert. Nichts wurde übernommen; bitte die Seite neu laden.";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "ansehen" : state.equals("SMALL") ? "zu klein für dein Lineal" : state.equals("DROPPED") ? "weggelassen" : state.equals("IN") ? "im Vorrat" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return (n == 1 ? "Stück " + pieces + " bleibt auf dem Foto, bis es angesehen ist." : "Stücke " + pieces + " bleiben auf dem Foto, bis sie angesehen sind.");
    }

    @Override
    public String taken(String piece) {
        return "Stück " + piece + " ist schon im Vorrat; das dort zuerst rückgängig machen oder dort ändern.";
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
    public String undone(String what) {
        return "Rückgängig: " + what + ".";
    }
}
