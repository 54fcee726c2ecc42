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
