package hearthcloth.words.making;

/** The room of making in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return "Streifen " + bar + " ist zu kurz: Länge mit den Enden";
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " Mit dem, was da ist, wurde kein Weg gefunden: mehr Stoff eintragen, oder den letzten Streifen auftrennen und einen anderen annähen.";
    }

    @Override
    public String amissBarPage() {
        return "Der Streifen ist zu kurz";
    }

    @Override
    public String amissBarSewn(String bar) {
        return "Streifen " + bar + " ist schon angenäht; zuerst auftrennen.";
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "Streifen " + bar + " misst " + measured + ", geplant waren " + planned + ".";
    }

    @Override
    public String amissRedo() {
        return "Diesen Schritt noch einmal machen";
    }

    @Override
    public String amissTitle() {
        return "Etwas ging schief";
    }

    @Override
    public String back() {
        return "Zurück";
    }

    @Override
    public String care() {
        return "Vorsicht";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String cutAgain() {
        return "Die Stücke liegen wieder im Vorrat, ihre Schnitte sind abgehakt.";
    }

    @Override
    public String cutAlready() {
        return "Dieses Tuch ist schon zugeschnitten.";
    }

    @Override
    public String cutAmiss() {
        return "So, wie es geplant ist, lässt es sich nicht zuschneiden: unten steht, woran es liegt.";
    }

    @Override
    public String cutChanged() {
        return "Seit dem Zuschneiden wurde etwas geändert: das zuerst mit „Rückgängig“ auf der Seite des Tuchs zurücknehmen.";
    }

    @Override
    public String cutGone() {
        return "Dieser Schnitt ist nicht mehr im Plan; bitte die Seite neu laden.";
    }

    @Override
    public String cutIsCut(int n) {
        return (n == 1 ? "Zugeschnitten. " + n + " Reststück liegt wieder im Vorrat." : "Zugeschnitten. " + n + " Reststücke liegen wieder im Vorrat.");
    }

    @Override
    public String cutNone() {
        return "Diesen Schnitt gibt es nicht.";
    }

    @Override
    public String cutPieceGone() {
        return "Dieses Stück ist nicht mehr im Plan; bitte die Seite neu laden.";
    }

    @Override
    public String cutTicked(int n) {
        return (n == 1 ? "Ein Schnitt ist abgehakt." : "" + n + " Schnitte sind abgehakt.");
    }

    @Override
    public String cutTitle(String cloth) {
        return "Schneiden: " + cloth;
    }

    @Override
    public String cutWhich() {
        return "Welches Tuch wird zugeschnitten?";
    }

    @Override
    public String done() {
        return "Fertig";
    }

    @Override
    public String height() {
        return "Höhe";
    }

    @Override
    public String keys() {
        return "Leertaste oder Bild ab: fertig. Bild auf: zurück. Ein Fußschalter sendet diese Tasten.";
    }

    @Override
    public String length() {
        return "Länge";
    }

    @Override
    public String listed(String before, String last) {
        return before + " und " + last;
    }

    @Override
    public String lookAgain() {
        return "Bitte noch einmal prüfen";
    }

    @Override
    public String matAll() {
        return "Alle Stücke";
    }

    @Override
    public String matAllAreCut() {
        return "Alle Stücke sind zugeschnitten.";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "Beide Schnitte fertig" : n == 1 ? "Der Schnitt ist fertig" : "Alle " + n + " Schnitte fertig");
    }

    @Override
    public String matAllIsCut() {
        return "Alles zugeschnitten";
    }

    @Override
    public String matAsItIs() {
        return "Es wird ganz verwendet; nichts zu schneiden.";
    }

    @Override
    public String matClothIsCut() {
        return "Dieses Tuch ist zugeschnitten.";
    }

    @Override
    public String matCount(String all, String done) {
        return done + " von " + all;
    }

    @Override
    public String matCounted() {
        return "Stücke fertig";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "Schnitt " + n + " von " + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String matGives(String gives) {
        return "Ergibt: " + gives + ".";
    }

    @Override
    public String matLeave() {
        return "Die Stücke verlassen den Vorrat, die Reststücke kommen zurück.";
    }

    @Override
    public String matMore() {
        return "Schiefgegangen? Mehr";
    }

    @Override
    public String matNextPiece() {
        return "Nächstes Stück";
    }

    @Override
    public String matNow(String measure, String n) {
        return "Schnitt " + n + ": " + measure + ".";
    }

    @Override
    public String matOff(String side) {
        return (side.equals("left") ? "links" : side.equals("right") ? "rechts" : side.equals("top") ? "oben" : "unten") + " ab";
    }

    @Override
    public String matPicture() {
        return "Schnittbild";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "Stück " + n + ", " + words + (done.equals("yes") ? ", zugeschnitten" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "Dieses Stück ist zugeschnitten.";
    }

    @Override
    public String matPin() {
        return "Den Zettel anstecken.";
    }

    @Override
    public String matPrintSlips() {
        return "Alle Zettel drucken";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "Stück " + n + " von " + all + "; " + done + " fertig.";
    }

    @Override
    public String matSew() {
        return "Nähen";
    }

    @Override
    public String matShown(String n, String words) {
        return "Stück " + n + ": " + words;
    }

    @Override
    public String measureAgain() {
        return "Zurück, ich messe noch einmal";
    }

    @Override
    public String measuredBefore() {
        return "Die Schritte davor sind noch nicht fertig.";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return "Ein Ende ist " + by + " länger als das andere: zuerst rechtwinklig machen und auf " + trim + " schneiden, dann noch einmal messen.";
    }

    @Override
    public String measuredFar(String planned, String written) {
        return written + " ist weit von den geplanten " + planned + "; bitte noch einmal messen.";
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return written + " ist weit von den geplanten " + planned + "; sind es " + meant + "?";
    }

    @Override
    public String measuredIsIt(String meant) {
        return "Sind es " + meant + "?";
    }

    @Override
    public String measuredIsRight() {
        return "Stimmt das?";
    }

    @Override
    public String measuredOtherStep() {
        return "Erst messen, wenn ein Streifen angenäht ist; dies ist ein anderer Schritt.";
    }

    @Override
    public String measuredScraps() {
        return "Ein Tuch aus Resten hat keine Streifen zum Neuschneiden: eine Naht auftrennen, die um mehr als ein, zwei Fäden abweicht.";
    }

    @Override
    public String measuredSquare() {
        return "Zuerst rechtwinklig machen";
    }

    @Override
    public String measuredSwapped() {
        return "Ist es andersherum?";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return size + " ist andersherum: Es sollten etwa " + planned + " sein, die Breite zuerst, Vorderseite oben.";
    }

    @Override
    public String measuredTitle() {
        return "Dein Maß";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "Es misst " + size + ": " + (across.equals("less") ? "" + width + " schmaler" : across.equals("more") ? "" + width + " breiter" : "") + (both.equals("yes") ? " und " : "") + (up.equals("less") ? "" + height + " niedriger" : up.equals("more") ? "" + height + " höher" : "") + " als geplant.";
    }

    @Override
    public String measuredTooMany(String written) {
        return "„" + written + "“ sind mehr als zwei Maße; eines eintragen oder beide Enden.";
    }

    @Override
    public String more() {
        return "Mehr";
    }

    @Override
    public String printGuide() {
        return "Die ganze Anleitung zum Drucken";
    }

    @Override
    public String printPage() {
        return "Diese Seite drucken";
    }

    @Override
    public String sewAsPlanned() {
        return "Wie geplant. Weiternähen.";
    }

    @Override
    public String sewAsleep() {
        return "Dieses Gerät kann zwischendurch einschlafen: den Bildschirm auf „immer an“ stellen.";
    }

    @Override
    public String sewBackToCut() {
        return "Zurück zum Zuschneiden";
    }

    @Override
    public String sewDiffers() {
        return "Bei mir anders";
    }

    @Override
    public String sewFinish() {
        return "Genäht. Foto und Zettel";
    }

    @Override
    public String sewFollows() {
        return "Zeigen, was folgt";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + " Std. " + minutes + " Min.";
    }

    @Override
    public String sewHow() {
        return "Wie?";
    }

    @Override
    public String sewHowLabel() {
        return "Wie es gemacht wird";
    }

    @Override
    public String sewLookOnly() {
        return "Nur zum Ansehen, bis alles zugeschnitten ist.";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "Nach der Naht. Eine Zahl genügt; mit den Schnittkanten messen. Sind die beiden Enden verschieden, beide eintragen, etwa " + (unit.equals("in") ? "12 1/8 und 12 3/8" : "31,2 und 31,7") + ".";
    }

    @Override
    public String sewMeasures() {
        return "Soll jetzt messen";
    }

    @Override
    public String sewMeasuresHow() {
        return "Breite × Höhe, Vorderseite oben";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + " Min.";
    }

    @Override
    public String sewNext() {
        return "Weiter";
    }

    @Override
    public String sewNoStep() {
        return "Diesen Schritt gibt es nicht; bitte die Seite neu laden.";
    }

    @Override
    public String sewNotCut() {
        return "Dieses Tuch ist noch nicht ganz zugeschnitten. Erst die Schnitte abhaken, dann „Alles zugeschnitten“.";
    }

    @Override
    public String sewPace(String time) {
        return "In deinem Tempo noch etwa " + time + ".";
    }

    @Override
    public String sewPlanned() {
        return "Neu geplant. Weiternähen.";
    }

    @Override
    public String sewPlannedCut() {
        return "Neu geplant. Zuerst dies zuschneiden, dann weiternähen.";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return "Schritt " + n + " von " + all + (done.equals("yes") ? ", fertig" : "");
    }

    @Override
    public String sewRead() {
        return "Vorlesen";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + ". " + title;
    }

    @Override
    public String sewThick(String where) {
        return where + ": dort langsam nähen.";
    }

    @Override
    public String sewTitle(String cloth) {
        return "Nähen: " + cloth;
    }

    @Override
    public String sewToCut() {
        return "Zum Zuschneiden";
    }

    @Override
    public String sewToNow() {
        return "Zum aktuellen Schritt";
    }

    @Override
    public String sewWhich() {
        return "Welches Tuch wird genäht?";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "Das ganze Tuch: " + done + " von " + all + " Schritten sind fertig";
    }

    @Override
    public String sewYes() {
        return "Ja, genau";
    }

    @Override
    public String showWays() {
        return "Zeigen, wie es weitergeht";
    }

    @Override
    public String sideAlike() {
        return "Beide Seiten dieses Stoffs sehen gleich aus. Weiternähen.";
    }

    @Override
    public String sideCannot() {
        return "Das geht nicht: Die nächsten Streifen, wie sie geschnitten sind, würden dann nicht an die Arbeit passen.";
    }

    @Override
    public String sideFrayed() {
        return "Beim Auftrennen fransen die Kanten etwas aus; nach der Naht noch einmal messen.";
    }

    @Override
    public String sideGoBack() {
        return "Auftrennen und zurückgehen";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "Streifen " + bar + " " + (wrong.equals("face") ? "liegt mit der linken Seite oben" : "sitzt an der falschen Seite der Arbeit") + ". Was tun?";
    }

    @Override
    public String sideLeave() {
        return "So lassen";
    }

    @Override
    public String sideLeft() {
        return "Die Bilder zeigen es von nun an so.";
    }

    @Override
    public String sideLooks() {
        return "Die Vorderseite sieht dann so aus; nichts muss geschnitten oder aufgetrennt werden.";
    }

    @Override
    public String sideNoBar() {
        return "In diesem Schritt wird kein Streifen angenäht; bitte den Schritt des Streifens wählen.";
    }

    @Override
    public String sideNoFit() {
        return "Die nächsten Streifen würden so nicht passen; bitte auftrennen.";
    }

    @Override
    public String sideNotSewn() {
        return "Dieser Schritt ist noch nicht genäht.";
    }

    @Override
    public String sidePage() {
        return "Falsch angenäht";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "Vorderseite, Streifen " + bar + " " + (wrong.equals("face") ? "mit der anderen Seite oben" : "an der anderen Seite der Arbeit");
    }

    @Override
    public String sideRight() {
        return "Zurück, es liegt richtig";
    }

    @Override
    public String sideSteps(int n) {
        return (n == 1 ? "Um an den Streifen zu kommen, wird ein Schritt aufgetrennt und neu genäht:" : "Um an den Streifen zu kommen, werden " + n + " Schritte aufgetrennt und neu genäht, der letzte zuerst:");
    }

    @Override
    public String sideUnpick() {
        return "Auftrennen";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "Streifen " + bar + " " + (wrong.equals("face") ? "liegt mit der linken Seite oben" : "sitzt an der falschen Seite der Arbeit");
    }

    @Override
    public String smallAcross() {
        return "Quer";
    }

    @Override
    public String smallAllCut() {
        return "Alle Flicken aus diesem Stück sind geschnitten; beim falschen Schnitt das Häkchen wegnehmen.";
    }

    @Override
    public String smallDown() {
        return "Von oben nach unten";
    }

    @Override
    public String smallHow() {
        return "Bei diesem Stück die richtigen Schnitte abhaken. Was misst der nächste Flicken, so wie er im Bild liegt?";
    }

    @Override
    public String smallLarger() {
        return "Was übrig ist, kann nicht größer sein als das Stück war; bitte beide Seiten prüfen.";
    }

    @Override
    public String smallNoWay() {
        return "Mit dem, was da ist, wurde kein Weg gefunden.";
    }

    @Override
    public String smallPage() {
        return "Er ist zu klein geworden";
    }

    @Override
    public String smallTitle() {
        return "Der Flicken ist zu klein geworden";
    }

    @Override
    public String smallWrite() {
        return "Bitte eintragen, was der Flicken jetzt misst, quer und längs.";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "So verwenden und die Streifen daneben breiter schneiden" : way.equals("ANOTHER_PIECE") ? "Neu schneiden" : way.equals("JOINED_STRIP") ? "Einen Stoffstreifen ansetzen" : "So verwenden; das Tuch wird kleiner");
    }

    @Override
    public String waysCut(String told) {
        return told + " Was zugeschnitten ist, bleibt. Wie soll es weitergehen?";
    }

    @Override
    public String waysGone() {
        return "Diesen Weg gibt es nicht; bitte noch einmal messen.";
    }

    @Override
    public String waysLacking() {
        return "Es ist nicht genug Stoff übrig.";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "So weiternähen" : way.equals("keep") ? "Die Größe behalten: die nächsten Streifen neu schneiden" : "Eine schmale Runde anfügen");
    }

    @Override
    public String waysNoCut() {
        return "Alle geschnittenen Streifen sind lang genug: nichts zu schneiden, nur etwas mehr oder weniger abzuschneiden.";
    }

    @Override
    public String waysPicture(String size) {
        return "Das Tuch dann, " + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " Was genäht ist, bleibt. Wie soll es weitergehen?";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "Einen Stoffstreifen ansetzen" : way.equals("ANEW") ? "Den Streifen neu machen" : way.equals("PIECED") ? "Den Streifen neu machen, gestückelt" : "So verwenden und die Arbeit danach beschneiden");
    }

    @Override
    public String waysSize(String size) {
        return "Das Tuch wird " + size + " groß.";
    }

    @Override
    public String waysSizeLabel() {
        return "Größe des Tuchs";
    }

    @Override
    public String waysThis() {
        return "So weitermachen";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return "Mit „" + tie + "“ passt es um " + gift + ".";
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "Jetzt zu schneiden: " + "Streifen" + " " + bars + ", aus " + (pieces == 1 ? "einem Stück" : "" + pieces + " Stücken") + ".";
    }

    @Override
    public String width() {
        return "Breite";
    }

    @Override
    public String wrongAllUsed() {
        return "Alle schon geschnittenen Flicken werden so verwendet.";
    }

    @Override
    public String wrongChange() {
        return "Einen Streifen oder eine Breite ändern.";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "Es braucht " + (n == 1 ? "" + n + " Stückelung weniger" : "" + n + " Stückelungen weniger") + ".";
    }

    @Override
    public String wrongHow() {
        return "Bei allem Verdorbenen das Häkchen wegnehmen. Flicken, deren Schnitte abgehakt sind, bleiben; der Rest wird neu geplant. Was misst der größte Teil dieses Stücks, der noch zu schneiden ist? Beides leer lassen, wenn nichts übrig ist.";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "Für das, was noch zu schneiden ist, reicht der Stoff nicht. " + why + " Mehr Stoff eintragen und es dann noch einmal melden.";
    }

    @Override
    public String wrongLatePlanned() {
        return "Aus dem Übrigen neu geplant. Genähtes und Zugeschnittenes bleibt, wie es ist.";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "Es braucht " + (n == 1 ? "" + n + " Stückelung mehr" : "" + n + " Stückelungen mehr") + ".";
    }

    @Override
    public String wrongPlan() {
        return "Den Rest neu planen";
    }

    @Override
    public String wrongPlanned() {
        return "Aus dem Übrigen neu geplant.";
    }

    @Override
    public String wrongSameJoins() {
        return "Es braucht so viele Stückelungen wie vorher.";
    }

    @Override
    public String wrongScraps() {
        return "Ein Tuch aus Resten wird nach einem Fehler nicht neu geplant: den Flicken aus einem anderen Rest schneiden, der mindestens so groß ist, oder mit dem Übrigen neue Vorschläge suchen.";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "Von " + "" + n + " geschnittenen Flicken" + " " + (used == 1 ? "wird " + used + " so verwendet" : "werden " + used + " so verwendet") + ".";
    }

    @Override
    public String wrongTitle() {
        return "Ich habe mich verschnitten";
    }
}
