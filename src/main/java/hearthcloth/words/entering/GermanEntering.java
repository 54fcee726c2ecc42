package hearthcloth.words.entering;

/** The room of entering in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "Die Seite noch einmal versuchen";
    }

    @Override
    public String awayAnew() {
        return "Neu schreiben";
    }

    @Override
    public String awayAnewHow() {
        return "Die Datei zurücklegen, wo sie war, oder die ganze Arbeit, wie bei der letzten Änderung, dort neu schreiben lassen.";
    }

    @Override
    public String awayHeading() {
        return "Deine Arbeit ist nicht erreichbar";
    }

    @Override
    public String awaySend() {
        return "Noch einmal senden";
    }

    @Override
    public String awayTitle() {
        return "Nicht erreichbar";
    }

    @Override
    public String awayWrote() {
        return "Was du eingetragen hast, steht noch auf dieser Seite:";
    }

    @Override
    public String bothAgain() {
        return "Trotzdem machen";
    }

    @Override
    public String bothLook() {
        return "Ansehen und so lassen";
    }

    @Override
    public String bothNow() {
        return "Wie es jetzt ist";
    }

    @Override
    public String bothWrote() {
        return "Was du eingetragen hast";
    }

    @Override
    public String closeClosed() {
        return "Die Werkstatt ist geschlossen. Deine Arbeit ist gespeichert; diese Seite kann auch weg.";
    }

    @Override
    public String closeElsewhere() {
        return "Die Werkstatt läuft auf einem anderen Rechner. Dort wird sie geschlossen.";
    }

    @Override
    public String closeKept() {
        return "Deine Arbeit wird bei jeder Änderung gespeichert. Beim Schließen geht nichts verloren.";
    }

    @Override
    public String closeOpen() {
        return "Wieder öffnen wie heute: aus dem Menü oder mit dem Befehl.";
    }

    @Override
    public String closeOthers() {
        return "Telefone und Tablets, die diese Werkstatt nutzen, können erst weitermachen, wenn sie wieder offen ist.";
    }

    @Override
    public String closeTitle() {
        return "Die Werkstatt schließen";
    }

    @Override
    public String copiesAlone() {
        return "Was nur dir gehört, lässt sich unter Fertig als eine Datei mitnehmen.";
    }

    @Override
    public String copiesAnew() {
        return "Deine Arbeit ist wieder an ihrem Platz, wie bei deiner letzten Änderung.";
    }

    @Override
    public String copiesBack() {
        return "Zurückholen";
    }

    @Override
    public String copiesBackAbout(String made) {
        return "Die Kopie vom " + made + " zurückholen";
    }

    @Override
    public String copiesBackAsk(String made) {
        return "Zum Stand vom " + made + " zurückgehen? Der jetzige Stand wird zuerst kopiert.";
    }

    @Override
    public String copiesIsBack(String made) {
        return "Deine Arbeit ist auf dem Stand vom " + made + ". Was vorher war, ist die neueste Kopie in dieser Liste.";
    }

    @Override
    public String copiesIsMade(String size) {
        return "Kopiert: " + size + ".";
    }

    @Override
    public String copiesKeeper() {
        return "In einer Werkstatt kopiert die ganze Datenbank, wer sie betreut.";
    }

    @Override
    public String copiesLead() {
        return "Jede ist deine ganze Arbeit, wie sie damals war. Beim Zurückholen wird zuerst der jetzige Stand kopiert; durch Probieren geht nichts verloren.";
    }

    @Override
    public String copiesLie(String folder) {
        return "Sie liegen in " + folder + ". Diesen Ordner ab und zu auf einen anderen Datenträger legen: Eine Kopie daneben hilft nicht, wenn die Platte kaputtgeht.";
    }

    @Override
    public String copiesMade() {
        return "Gemacht am";
    }

    @Override
    public String copiesNone() {
        return "Es gibt noch keine. Beim ersten Öffnen jedes Tages wird eine gemacht.";
    }

    @Override
    public String copiesNow() {
        return "Jetzt eine Kopie machen";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "erstes Öffnen des Tages" : reason.equals("UPDATE") ? "bevor ein neueres Hearthcloth die Datei übernahm" : reason.equals("RESTORE") ? "bevor eine ältere Kopie zurückgeholt wurde" : "gewünscht");
    }

    @Override
    public String copiesSize() {
        return "Größe";
    }

    @Override
    public String copiesStudio() {
        return "Deine Arbeit liegt in der Datenbank der Werkstatt. Wer sie betreut, kopiert sie als Ganzes; dort nach einem älteren Stand fragen.";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return day + ". " + (month.equals("m1") ? "Januar" : month.equals("m2") ? "Februar" : month.equals("m3") ? "März" : month.equals("m4") ? "April" : month.equals("m5") ? "Mai" : month.equals("m6") ? "Juni" : month.equals("m7") ? "Juli" : month.equals("m8") ? "August" : month.equals("m9") ? "September" : month.equals("m10") ? "Oktober" : month.equals("m11") ? "November" : "Dezember") + " " + year + ", " + time;
    }

    @Override
    public String copiesTitle() {
        return "Sicherungskopien";
    }

    @Override
    public String copiesTo() {
        return "Zu Fertig";
    }

    @Override
    public String copiesWhy() {
        return "Warum";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + ", nach einer Uhr, die damals falsch ging oder jetzt falsch geht";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "Ein Gerät mit dem Zeichen " + mark + " möchte herein: " + name + ", von " + address + ". Nur zustimmen, wenn dieses Zeichen auf deinem Gerät steht.";
    }

    @Override
    public String devicesAtMachine() {
        return "Geräte werden am Rechner selbst herein- und hinausgelassen.";
    }

    @Override
    public String devicesCode() {
        return "Code:";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "Es kommt in einigen Sekunden herein." : "Das Gerät bleibt draußen.");
    }

    @Override
    public String devicesHere() {
        return "Die Werkstatt antwortet nur diesem Rechner.";
    }

    @Override
    public String devicesInside() {
        return "Geräte, die drin sind";
    }

    @Override
    public String devicesIsOut() {
        return "Das Gerät ist abgemeldet.";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return mark + " draußen lassen";
    }

    @Override
    public String devicesLet() {
        return "Hereinlassen";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return mark + " hereinlassen";
    }

    @Override
    public String devicesNo() {
        return "Nein";
    }

    @Override
    public String devicesNone() {
        return "Keine.";
    }

    @Override
    public String devicesNotShared() {
        return "Diese Werkstatt ist nicht freigegeben. Mit --lan starten, um sie von anderen Geräten zu nutzen.";
    }

    @Override
    public String devicesOnce() {
        return "Er lässt ein Gerät einmal herein, innerhalb von zehn Minuten. Nur in einem Netz, dem du traust: Andere darin können mitlesen.";
    }

    @Override
    public String devicesOut() {
        return "Abmelden";
    }

    @Override
    public String devicesOutAbout(String name) {
        return name + " abmelden";
    }

    @Override
    public String devicesPhotograph() {
        return "Zum Fotografieren von Resten";
    }

    @Override
    public String devicesPicture() {
        return "QR-Code der Adresse mit dem Code";
    }

    @Override
    public String devicesPoint() {
        return "Die Kamera des anderen Geräts auf das Bild richten, oder dort die Adresse öffnen und den Code eingeben.";
    }

    @Override
    public String devicesSew() {
        return "Zum Nähen";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + ", seit " + since;
    }

    @Override
    public String devicesStart() {
        return "Um sie von einem Telefon oder Tablet im selben Netz zu nutzen, schließen und so neu starten:";
    }

    @Override
    public String devicesTitle() {
        return "Auf einem anderen Gerät";
    }

    @Override
    public String devicesTooMany() {
        return "Gerade möchten zu viele Geräte herein. Später noch einmal versuchen.";
    }

    @Override
    public String devicesTrust() {
        return "Nur in einem Netz, dem du traust: Andere darin können mitlesen.";
    }

    @Override
    public String devicesWait() {
        return "Zu viele falsche Codes. Zehn Minuten warten, oder um Einlass bitten und am anderen Bildschirm zustimmen.";
    }

    @Override
    public String devicesWrongCode() {
        return "Dieser Code stimmt nicht oder nicht mehr. Auf dem anderen Bildschirm den jetzigen nachsehen.";
    }

    @Override
    public String doorBefore() {
        return "Das ist mehr, als vor dem Hereinkommen gelesen wird.";
    }

    @Override
    public String doorBusy() {
        return "Die Werkstatt ist mit anderen großen Dateien beschäftigt. Nichts wurde geändert; noch einmal senden.";
    }

    @Override
    public String doorCharset() {
        return "Das Gesendete ist nicht in Zeichen geschrieben, die hier bekannt sind.";
    }

    @Override
    public String doorClosing() {
        return "Die Werkstatt wird gerade geschlossen.";
    }

    @Override
    public String doorEarlier() {
        return "Diese Seite stammt von einem früheren Start der Werkstatt. Bitte neu laden.";
    }

    @Override
    public String doorLarge(String most) {
        return "Das ist mehr als " + most + " MB; weniger auf einmal senden.";
    }

    @Override
    public String doorLargePhotograph() {
        return "Das Foto ist größer als 80 MB; so senden, wie das Telefon es aufnahm, oder ein kleineres.";
    }

    @Override
    public String doorLetters() {
        return "Darin ist etwas, das kein Buchstabe ist; bitte neu eintippen.";
    }

    @Override
    public String doorNotIn() {
        return "Dieses Gerät ist nicht oder nicht mehr hereingelassen. /join öffnen und den Code eingeben.";
    }

    @Override
    public String doorNotOurs() {
        return "Diese Änderung kam nicht von einer Seite der Werkstatt.";
    }

    @Override
    public String doorOwnAddress() {
        return "Diese Werkstatt antwortet nur unter ihrer eigenen Adresse auf diesem Rechner.";
    }

    @Override
    public String enterAtMachine() {
        return "Eine Werkstatt wird an dem Rechner angefangen, auf dem sie läuft; zuerst dort hereinkommen.";
    }

    @Override
    public String enterBegin() {
        return "Anfangen";
    }

    @Override
    public String enterBusy() {
        return "Von deinem Gerät kommt gerade jemand herein; in einigen Sekunden noch einmal versuchen.";
    }

    @Override
    public String enterFirst() {
        return "Zu dieser Werkstatt gehört noch niemand. Wer zuerst hereinkommt, leitet den Kurs und holt die anderen herein.";
    }

    @Override
    public String enterForgotten() {
        return "Kennwort vergessen? Die Kursleitung gibt ein neues.";
    }

    @Override
    public String enterIn() {
        return "Hereinkommen";
    }

    @Override
    public String enterLeft() {
        return "Abgemeldet. Hier sieht jetzt niemand deine Arbeit.";
    }

    @Override
    public String enterLong() {
        return "Mindestens 12 Zeichen; drei oder vier Wörter, die nichts miteinander zu tun haben, sind gut. Niemand kann es für dich nachsehen.";
    }

    @Override
    public String enterName() {
        return "Name";
    }

    @Override
    public String enterOwn() {
        return "Vorrat und Tücher gehören hier nur dir.";
    }

    @Override
    public String enterPassphrase() {
        return "Kennwort";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "Eine Werkstatt anfangen" : "Hereinkommen");
    }

    @Override
    public String enterWrong() {
        return "Name oder Kennwort ist falsch. Noch einmal versuchen.";
    }

    @Override
    public String joinAsk() {
        return "Um Einlass bitten";
    }

    @Override
    public String joinAsks() {
        return "Dieses Gerät möchte herein. Sein Zeichen:";
    }

    @Override
    public String joinCode() {
        return "Code auf dem anderen Bildschirm";
    }

    @Override
    public String joinHeading() {
        return "In die Werkstatt kommen";
    }

    @Override
    public String joinLook() {
        return "Am Rechner unter Schublade → Auf einem anderen Gerät nach diesem Zeichen sehen und zustimmen. Diese Seite geht von selbst weiter.";
    }

    @Override
    public String joinName() {
        return "Wie dieses Gerät heißt";
    }

    @Override
    public String joinNoCode() {
        return "Kein Code zur Hand? Bitten und am Rechner zustimmen.";
    }

    @Override
    public String joinTablet() {
        return "mein Tablet";
    }

    @Override
    public String joinTitle() {
        return "Hereinkommen";
    }

    @Override
    public String peopleAs() {
        return "Als";
    }

    @Override
    public String peopleBring() {
        return "Jemanden hereinholen";
    }

    @Override
    public String peopleBringIn() {
        return "Hereinholen";
    }

    @Override
    public String peopleCanCome(String name) {
        return name + " kann jetzt hereinkommen. Das Kennwort weitersagen; es lässt sich hier ändern.";
    }

    @Override
    public String peopleChange() {
        return "Ändern";
    }

    @Override
    public String peopleChanged() {
        return "Dein Kennwort ist geändert; auf anderen Geräten neu hereinkommen.";
    }

    @Override
    public String peopleCurrent() {
        return "Bisheriges Kennwort";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "Erstes Kennwort";
    }

    @Override
    public String peopleGive() {
        return "Vergeben";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " hat ein neues Kennwort. Weitersagen; es lässt sich hier ändern.";
    }

    @Override
    public String peopleNew() {
        return "Neues Kennwort";
    }

    @Override
    public String peopleNewFor(String name) {
        return "Neues Kennwort für " + name;
    }

    @Override
    public String peopleNewPassphrase() {
        return "Ein neues Kennwort";
    }

    @Override
    public String peopleNobody() {
        return "Unter dieser Nummer gibt es niemanden.";
    }

    @Override
    public String peopleNotYours() {
        return "Das ist nicht dein Kennwort. Nichts wurde geändert.";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "Kursleitung" : "Teilnahme");
    }

    @Override
    public String peopleTeacherOnly() {
        return "Das macht nur die Kursleitung.";
    }

    @Override
    public String peopleTitle() {
        return "Personen dieser Werkstatt";
    }

    @Override
    public String peopleYours() {
        return "Dein Kennwort";
    }

    @Override
    public String troubleBack() {
        return "Zurück, wo du warst";
    }
}
