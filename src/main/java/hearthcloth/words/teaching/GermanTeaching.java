package hearthcloth.words.teaching;

/** The room of teaching in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "Kurs beginnen";
    }

    @Override
    public String classCode() {
        return "Code";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "Noch niemand ist da." : inside == 1 ? "" + inside + " Person ist da." : "" + inside + " Personen sind da.");
    }

    @Override
    public String classEnd() {
        return "Kurs beenden";
    }

    @Override
    public String classEndAsk() {
        return "Kurs beenden? Alle gehen hinaus, und was sie nicht gespeichert haben, ist fort.";
    }

    @Override
    public String classEnded() {
        return "Der Kurs ist zu Ende. Alle sind draußen.";
    }

    @Override
    public String classFile() {
        return "Die Datei";
    }

    @Override
    public String classFromCloth() {
        return "Mit der Idee eines Tuchs beginnen";
    }

    @Override
    public String classFromFile() {
        return "Mit einer Leitfadendatei beginnen";
    }

    @Override
    public String classHidden() {
        return "zeigt noch nichts";
    }

    @Override
    public String classIntro() {
        return "Die Teilnehmenden kommen mit ihren Telefonen herein und tippen ihre eigenen Reste ein. Alle bekommen ein Tuch nach deiner Idee. Die Wand zeigt, was sie zeigen wollen.";
    }

    @Override
    public String classIsOut(String name) {
        return name + " ist draußen.";
    }

    @Override
    public String classNoCloth() {
        return "Noch gibt es kein Tuch mit Mittelstück und Streifen.";
    }

    @Override
    public String classNotShared() {
        return "Teilnehmende können nur hereinkommen, wenn die Werkstatt zum Netz hin offen ist. Schließ sie und starte sie mit ./hearthcloth --lan, in einem Netz, dem du vertraust.";
    }

    @Override
    public String classOut(String name) {
        return name + " hinausbitten";
    }

    @Override
    public String classPoint() {
        return "Die Kamera des Telefons auf das Bild richten, oder die Adresse öffnen und den Code eintippen. Er lässt alle herein, solange der Kurs dauert.";
    }

    @Override
    public String classQr() {
        return "QR-Code der Adresse mit dem Code";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return sewn + " von " + all + " Nähten genäht";
    }

    @Override
    public String classTitle() {
        return "Ein Kurs";
    }

    @Override
    public String classWall() {
        return "Die Wand";
    }

    @Override
    public String classWith() {
        return "Einen Kurs damit beginnen";
    }

    @Override
    public String comeCode() {
        return "Code auf dem Bildschirm der Kursleitung";
    }

    @Override
    public String comeFull() {
        return "Der Kurs ist voll.";
    }

    @Override
    public String comeIn() {
        return "Hereinkommen";
    }

    @Override
    public String comeName() {
        return "Dein Name, wie andere ihn sehen";
    }

    @Override
    public String comeNone() {
        return "Gerade gibt es keinen Kurs. Frag die Kursleitung.";
    }

    @Override
    public String comeTitle() {
        return "In den Kurs kommen";
    }

    @Override
    public String comeWait() {
        return "Zu viele falsche Codes. Warte zehn Minuten.";
    }

    @Override
    public String comeWrong() {
        return "Der Code stimmt nicht. Schau auf den Bildschirm der Kursleitung.";
    }

    @Override
    public String cutCut() {
        return "Zuschnitt";
    }

    @Override
    public String cutFabric() {
        return "Stoff";
    }

    @Override
    public String cutList() {
        return "Zuschnittliste";
    }

    @Override
    public String cutPatch() {
        return "Teil";
    }

    @Override
    public String cutPiece() {
        return "Stück";
    }

    @Override
    public String ideaBack() {
        return "Rückseite";
    }

    @Override
    public String ideaBy(String name) {
        return "Eine Idee von " + name;
    }

    @Override
    public String ideaCare(String words) {
        return "Vorsicht: " + words;
    }

    @Override
    public String ideaEmpty() {
        return "Es gibt nichts zu zeigen.";
    }

    @Override
    public String ideaExample(String size) {
        return "Die Vorderseite eines Beispiels, " + size + "; seine Stoffe sind erfunden.";
    }

    @Override
    public String ideaExampleBack() {
        return "Seine Rückseite.";
    }

    @Override
    public String ideaFirst() {
        return "Ein erstes Tuch; ein besseres wird gesucht …";
    }

    @Override
    public String ideaFoot() {
        return "Diese Seite fragt kein Netz und behält nichts. Geplant wird auf deinem eigenen Gerät. Gemacht mit Hearthcloth.";
    }

    @Override
    public String ideaFront() {
        return "Vorderseite";
    }

    @Override
    public String ideaGuide() {
        return "Die ganze Anleitung, Seite für Seite";
    }

    @Override
    public String ideaHeapHelp() {
        return "Breite quer, Länge an der Webkante entlang. Diese Zeilen sind ein Beispiel; schreib deine darüber.";
    }

    @Override
    public String ideaKeep() {
        return "Seinen Plan speichern";
    }

    @Override
    public String ideaLabel() {
        return "Die Idee";
    }

    @Override
    public String ideaLanguage() {
        return "Sprache";
    }

    @Override
    public String ideaMade() {
        return "Wie es gemacht wird";
    }

    @Override
    public String ideaMadeMore() {
        return "Nähen, Saum, Binden, Waschen, und wo Vorsicht nötig ist";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "Keine Datei und kein Tuch von dir heißt „" + name + "“; es gibt " + all + ".";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "Keine Datei und kein Tuch von dir heißt „" + name + "“; keines mit Mittelstück und Streifen ist da.";
    }

    @Override
    public String ideaOld() {
        return "Dieser Browser kann nicht planen; öffne die Seite in einem neueren (ab 2023).";
    }

    @Override
    public String ideaOne() {
        return "Hier ist dein Tuch.";
    }

    @Override
    public String ideaOwn() {
        return "Dein eigenes, aus deinen Resten";
    }

    @Override
    public String ideaPieces() {
        return "Was aus welchem Stück geschnitten wird";
    }

    @Override
    public String ideaPrint() {
        return "Dieses Tuch drucken";
    }

    @Override
    public String ideaSave() {
        return "Den Leitfaden als Datei speichern";
    }

    @Override
    public String ideaStop() {
        return "Anhalten";
    }

    @Override
    public String ideaStopped() {
        return "Angehalten.";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "etwa " + fabric;
    }

    @Override
    public String ideaTied() {
        return "Gebunden.";
    }

    @Override
    public String ideaTrouble() {
        return "Die Planung brach ab. Deine Zeilen sind noch da; versuch es mit weniger Stücken.";
    }

    @Override
    public String ideaTwo() {
        return "Hier ist dein Tuch, und noch eines.";
    }

    @Override
    public String ideaTying() {
        return "Wie es gebunden wird";
    }

    @Override
    public String kitCame() {
        return "Das Kit ist da: Seine Stücke sind in deinem Vorrat, und das Tuch ist aus ihnen geplant.";
    }

    @Override
    public String kitHelp() {
        return "Eine Kitdatei bringt ihre Stücke mit.";
    }

    @Override
    public String kitRefused() {
        return "Dieses Kit ist nicht zu gebrauchen: Es stammt von einem neueren Hearthcloth, ist beschädigt oder von Hand geändert. Bitte neu darum; nichts wurde übernommen.";
    }

    @Override
    public String kitsAnew() {
        return "Sie sind nicht mehr da; plane sie neu.";
    }

    @Override
    public String kitsAsked(String asked) {
        return "Gewünscht: " + asked;
    }

    @Override
    public String kitsCount() {
        return "Wie viele Teilnehmende";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return "„" + given + "“ geht nicht als Zahl der Teilnehmenden; schreib eine Zahl von 1 bis " + most + ".";
    }

    @Override
    public String kitsEmpty() {
        return "Dein Vorrat hat kein freies Stück. Leg zuerst etwas hinein.";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "Meiste Stückelungen in einem Tuch: " + most + ". Keine Teilung dieses Haufens hat weniger als " + least + ".";
    }

    @Override
    public String kitsFile() {
        return "Kitdatei";
    }

    @Override
    public String kitsForget() {
        return "Diesen Plan weglegen";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "Eine gerechtere Teilung wird gesucht: " + tried + " von " + all + ".";
    }

    @Override
    public String kitsGuide() {
        return "Anleitung für einen Kurs";
    }

    @Override
    public String kitsHeap(int count) {
        return (count == 1 ? "" + count + " Stück aus deinem Vorrat ist frei." : "" + count + " Stücke aus deinem Vorrat sind frei.");
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "Nacheinander geplant hätte das schlechteste " + joins + ", und " + lacking + " gingen leer aus.";
    }

    @Override
    public String kitsIntro() {
        return "Viele Tücher aus einem Haufen gemeinsam planen: Nichts wird zweimal versprochen, und wer am schlechtesten wegkommt, hat es so gut wie möglich.";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "keine Stückelung" : count == 1 ? "" + count + " Stückelung" : "" + count + " Stückelungen");
    }

    @Override
    public String kitsKeep() {
        return "Diese Tücher behalten";
    }

    @Override
    public String kitsKeepHelp() {
        return "Sie kommen zu Gemacht, und ihre Stücke sind ihnen im Vorrat versprochen.";
    }

    @Override
    public String kitsKept(int count) {
        return (count == 1 ? "" + count + " Tuch ist behalten." : "" + count + " Tücher sind behalten.") + " Ihre Stücke sind ihnen versprochen.";
    }

    @Override
    public String kitsLines() {
        return "Ein Tuch je Zeile";
    }

    @Override
    public String kitsLinesHelp() {
        return "Ein Name, dann eine Größe oder ein Geschenk. Oder eine Liste einfügen, deren erste Zeile die Spalten nennt: name, size, gift, tie, fabrics.";
    }

    @Override
    public String kitsList() {
        return "Eine Saison: ein Tuch je Zeile";
    }

    @Override
    public String kitsMove() {
        return "Ein Stück einem anderen Tuch geben";
    }

    @Override
    public String kitsMoveIt() {
        return "Geben, die anderen richten sich";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return "Stück " + piece + " ist jetzt im Tuch von " + name + ". Die anderen haben sich gerichtet.";
    }

    @Override
    public String kitsNearest() {
        return "Das ist das Nächste, was möglich war.";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return "Für " + name + " fand sich kein Tuch mit Stück " + piece + ". Nichts wurde geändert.";
    }

    @Override
    public String kitsNothing() {
        return "Daraus war nichts zu machen.";
    }

    @Override
    public String kitsPiece() {
        return "Stück";
    }

    @Override
    public String kitsPlan() {
        return "Den Kurs planen";
    }

    @Override
    public String kitsPlanGifts() {
        return "Die Geschenke planen";
    }

    @Override
    public String kitsPrint() {
        return "Zettel, Einkaufsliste und Blatt für die Kursleitung";
    }

    @Override
    public String kitsSample() {
        return "Anna, 40 cm\nGroßmutter, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "Fertige Größe";
    }

    @Override
    public String kitsStop() {
        return "Anhalten und das Beste bisher nehmen";
    }

    @Override
    public String kitsStudents() {
        return "Ein Kurs: so viele gleiche Tücher";
    }

    @Override
    public String kitsTheList() {
        return "Die Liste";
    }

    @Override
    public String kitsTitle() {
        return "Kits und Geschenke";
    }

    @Override
    public String kitsTo() {
        return "An";
    }

    @Override
    public String mineAgain() {
        return "Neu planen";
    }

    @Override
    public String mineAnother() {
        return "Das andere zeigen";
    }

    @Override
    public String mineCentimetres() {
        return "Zentimeter";
    }

    @Override
    public String mineFavourite() {
        return "Der Stoff, der dir am liebsten ist";
    }

    @Override
    public String mineGuide() {
        return "Anleitung zum Drucken";
    }

    @Override
    public String mineHelp() {
        return "Eine Zeile für jede Sorte: Breite mal Länge, wie viele, was es ist. Breite quer, Länge an der Webkante entlang.";
    }

    @Override
    public String mineHide() {
        return "Von der Wand nehmen";
    }

    @Override
    public String mineInches() {
        return "Zoll";
    }

    @Override
    public String mineKeep() {
        return "Nach dem Kurs bleibt nichts. Speichere, was du mitnehmen willst.";
    }

    @Override
    public String mineKeeps() {
        return "Es hält jede Regel der Idee ein.";
    }

    @Override
    public String mineLeave() {
        return "Den Kurs verlassen";
    }

    @Override
    public String mineLess() {
        return "Eine Naht zurück";
    }

    @Override
    public String mineLooking() {
        return "Dein Tuch wird gesucht …";
    }

    @Override
    public String mineMore() {
        return "Eine Naht weiter";
    }

    @Override
    public String mineNearest() {
        return "Das Nächste, was deine Stücke hergeben.";
    }

    @Override
    public String mineNone() {
        return "Aus diesen Stücken wird noch kein Tuch.";
    }

    @Override
    public String mineOnWall() {
        return "Die Wand zeigt sein Bild, seine Größe und deinen Namen.";
    }

    @Override
    public String minePlan() {
        return "Mein Tuch planen";
    }

    @Override
    public String minePlanFile() {
        return "Plandatei zum Aufheben";
    }

    @Override
    public String mineRuler() {
        return "Lineal";
    }

    @Override
    public String mineRules() {
        return "Die Regeln der Idee";
    }

    @Override
    public String mineSample() {
        return "10 x 20 cm, 12 Stück, grün gemustert";
    }

    @Override
    public String mineScraps() {
        return "Deine Stücke";
    }

    @Override
    public String mineScrapsOnly() {
        return "Deine Stücke geben kein Mittelstück mit Streifen darum. Die Reste sind so zusammengelegt, wie sie sind.";
    }

    @Override
    public String mineShow() {
        return "An der Wand zeigen";
    }

    @Override
    public String mineWhy() {
        return "Warum";
    }
}
