package hearthcloth.words.sewing;

/** The room of sewing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "etwa " + length;
    }

    @Override
    public String beforeGrain() {
        return "Jedes Stück so hinlegen, dass der Fadenlauf (die Richtung der Webkante) von oben nach unten läuft.";
    }

    @Override
    public String beforeMeasure(String length) {
        return "Jedes Stück messen. Ist eines mehr als " + length + " kleiner als in diesem Plan, mit dem wahren Maß neu planen.";
    }

    @Override
    public String beforePin() {
        return "Jedem Flicken gleich nach dem Zuschneiden seinen Zettel anstecken: auf der Seite, die am Tuch vorn liegt, die Oberkante des Zettels zur Oberkante des Tuchs.";
    }

    @Override
    public String beforePress() {
        return "Jedes Stück glatt bügeln und abkühlen lassen. Die Webkante abschneiden, falls noch vorhanden, und neu messen.";
    }

    @Override
    public String beforeStraight() {
        return "Zuerst die linke und die obere Kante gerade und rechtwinklig schneiden, denn jeder Schnitt wird von einer Kante gemessen. Wo ein Flicken das Stück bis zum Rand braucht, höchstens ein, zwei Fäden wegnehmen.";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return "Block " + letters + " beginnt. " + first + " bis " + last + " wie im Bild der Vorderseite auslegen. Mehr ist dafür nicht nötig.";
    }

    @Override
    public String blockDone(String letters) {
        return "Block " + letters + " ist fertig.";
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return added + " " + (side.equals("left") ? "links" : side.equals("right") ? "rechts" : side.equals("top") ? "oben" : "unten") + (part.equals("end") ? " am Ende" : "") + " an " + work + " nähen, wie in Schritt 1.";
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return wrapping + " umschließt: die Kante " + length + " hinausstehen lassen.";
    }

    @Override
    public String briefStitch(String top) {
        return top + " von der oben liegenden Kante nähen. Weiter wie in Schritt 1.";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return added + " " + (side.equals("left") ? "auf den linken" : side.equals("right") ? "auf den rechten" : side.equals("top") ? "nach unten auf den oberen" : "nach oben auf den unteren") + " Rand von " + work + " umschlagen" + (part.equals("end") ? " (Endkante)" : "") + ".";
    }

    @Override
    public String briefWraps(String wrapping) {
        return wrapping + " umschließt.";
    }

    @Override
    public String careChildren() {
        return "Ein geknotetes Tuch kann sich um den Hals zuziehen. Von Kindern unter drei Jahren fernhalten, vor allem, wenn die Enden länger als 22 cm sind.";
    }

    @Override
    public String careChildrenTitle() {
        return "Kleine Kinder";
    }

    @Override
    public String careCutter() {
        return "Nach jedem Schnitt den Schutz schließen. Vom Körper weg schneiden, die Klinge aufrecht. Die Finger weit von der Linealkante halten, keine Stecknadeln auf der Matte. Alte Klingen vor dem Wegwerfen einwickeln.";
    }

    @Override
    public String careCutterTitle() {
        return "Rollschneider";
    }

    @Override
    public String careDye() {
        return "Kräftiges Rot, Blau und Violett kann bei den ersten Wäschen abfärben. Ebenso, wenn ein feuchtes Tuch auf Hellem liegt.";
    }

    @Override
    public String careDyeTitle() {
        return "Farbe";
    }

    @Override
    public String careFlames() {
        return "Stoff brennt. Ein verpacktes Geschenk mindestens 30 cm von jeder Flamme fernhalten.";
    }

    @Override
    public String careFlamesTitle() {
        return "Kerzen und Herd";
    }

    @Override
    public String careFood() {
        return "Für Lebensmittel ein eigenes Tuch nehmen. Oft waschen und ganz trocknen lassen. Rohes Fleisch zuerst in einen geschlossenen Beutel geben.";
    }

    @Override
    public String careFoodTitle() {
        return "Lebensmittel";
    }

    @Override
    public String careIron() {
        return "Aufrecht abstellen, wo niemand am Kabel hängen bleibt. Gesicht und Finger aus dem Dampf halten. Am Ende den Stecker ziehen.";
    }

    @Override
    public String careIronTitle() {
        return "Bügeleisen";
    }

    @Override
    public String careNeedle() {
        return "Stecknadeln herausziehen, bevor der Nähfuß sie erreicht, und nie in den Mund nehmen. Bricht eine Nadel, alle Stücke suchen.";
    }

    @Override
    public String careNeedleTitle() {
        return "Nadel";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + ": " + size + (how.equals("turned") ? " (Vierteldrehung)" : how.equals("whole") ? ", das ganze Stück" : how.equals("turnedWhole") ? " (Vierteldrehung), das ganze Stück" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return "Aufheben: Reststück " + number + ", " + size;
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return what + " " + (way.equals("down") ? "von oben nach unten" : "von links nach rechts") + " schneiden, " + measure + " von der " + (side.equals("left") ? "linken" : side.equals("right") ? "rechten" : side.equals("top") ? "oberen" : "unteren") + " Kante. Das ergibt: " + gives + ". Übrig bleibt: " + leaves + ".";
    }

    @Override
    public String cutScraps(int n) {
        return (n == 1 ? "" + n + " Rest, zu klein zum Aufheben" : "" + n + " Reste, zu klein zum Aufheben");
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "Stück " + piece + ": " + fabric + ", " + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "Stück " + piece + ": " + fabric + ", " + size + ", schon zugeschnitten";
    }

    @Override
    public String fewClip(String length) {
        return "Von jeder Ecke ein Dreieck abschneiden: " + length + " an beiden Kanten.";
    }

    @Override
    public String fewClipNoMore() {
        return "Nicht mehr: Die Ecke wird dünner und bleibt zu.";
    }

    @Override
    public String fewClosePush() {
        return "Lose Fäden mit dem Nadelöhr hineinschieben.";
    }

    @Override
    public String fewCloseSew() {
        return "Jede Öffnung von Hand mit ein paar Stichen schließen.";
    }

    @Override
    public String fewDiagonals(String length) {
        return "Beide Diagonalen messen: jede etwa " + length + ".";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return "Zu " + wrapped + " bügeln, " + wrapping + " " + under + " einschlagen, Bruch absteppen.";
    }

    @Override
    public String fewFoldShort(String under) {
        return "Bügeln; breite Kante " + under + " einschlagen, Bruch absteppen.";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "An der Naht andersherum falten. " + band + " vom Bruch nähen.";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "Aufklappen, den Steg zu " + wrapped + " hin bügeln.";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "Aufklappen, den Steg flach bügeln.";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. " + length + " einschlagen, " + (edges.equals("topBottom") ? "oben und unten" : edges.equals("sides") ? "seitlich, samt Säumen" : "an allen vier Kanten") + ". Bügeln.";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return "Noch einmal " + length + " einschlagen. Bügeln und stecken.";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. " + length + " einschlagen, " + (edges.equals("topBottom") ? "oben und unten" : edges.equals("sides") ? "seitlich, samt Säumen" : "ringsum") + ". Stecken.";
    }

    @Override
    public String fewHemOpen() {
        return "Wieder aufklappen. Die Ecke liegt, wo sich die inneren Falten kreuzen.";
    }

    @Override
    public String fewHemPress() {
        return "Bügeln.";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return "Absteppen, " + edge + " von " + (from.equals("fold") ? "der inneren Bruchkante" : "der Schnittkante") + ". Beide Enden verriegeln.";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return "Ringsum absteppen, " + edge + " von " + (from.equals("fold") ? "der inneren Bruchkante" : "der Schnittkante") + ".";
    }

    @Override
    public String fewLappedHook(String band) {
        return "Die Brüche einhaken, " + band + " übereinander. Stecken.";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return "Beide " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben, " + (side.equals("left") ? "links" : side.equals("right") ? "rechts" : side.equals("top") ? "oben" : "unten") + ": " + added + ".";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return "Beide " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben nebeneinanderlegen.";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return wrapping + ": " + turn + " zur " + (face.equals("front") ? "Rückseite" : "Vorderseite") + ", das andere " + under + " zur " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " bügeln.";
    }

    @Override
    public String fewLappedPressShort() {
        return "Beide Kanten umbügeln, wie das Bild der Naht zeigt.";
    }

    @Override
    public String fewLappedStitch() {
        return "Beide Brüche absteppen, einen von jeder Seite. Bügeln.";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. " + added + " " + (side.equals("left") ? "links" : side.equals("right") ? "rechts" : side.equals("top") ? "oben" : "unten") + " darauf umschlagen" + (part.equals("end") ? ", am Ende" : "") + ".";
    }

    @Override
    public String fewLayLook() {
        return "Zurücktreten und ansehen. Zwei gleich große lassen sich noch tauschen.";
    }

    @Override
    public String fewLayOut(int n) {
        return (n == 1 ? "Den Flicken wie im Bild auslegen, mit seinem Zettel." : "Alle " + n + " wie im Bild auslegen, jeden mit seinem Zettel.");
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. " + (side.equals("left") ? "Links" : side.equals("right") ? "Rechts" : side.equals("top") ? "Oben" : "Unten") + " umschlagen" + (part.equals("end") ? ", Ende" : "") + ": " + added + ".";
    }

    @Override
    public String fewLayStack() {
        return "In Nähreihenfolge stapeln, der erste oben.";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return (start.equals("left") ? "Links" : start.equals("right") ? "Rechts" : start.equals("top") ? "Oben" : "Unten") + " bündig; " + length + " steht " + (end.equals("left") ? "links" : end.equals("right") ? "rechts" : end.equals("top") ? "oben" : "unten") + " über.";
    }

    @Override
    public String fewMitreFold(String face) {
        return "Die Ecke auf die Hälfte falten, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " innen, Schnittkanten bündig.";
    }

    @Override
    public String fewMitreMark(String length) {
        return "Beide Schnittkanten " + length + " von der Spitze anzeichnen.";
    }

    @Override
    public String fewMitreRule() {
        return "Von dort eine Linie rechtwinklig zum Bruch ziehen.";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "Darauf vom Bruch an nähen, " + about + ". Beide Enden verriegeln.";
    }

    @Override
    public String fewMitreStitchOut() {
        return "Darauf vom Bruch bis zur Schnittkante nähen. Beide Enden verriegeln.";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "Die Spitze " + about + " daneben abschneiden. Auseinanderbügeln, wenden.";
    }

    @Override
    public String fewPress(String wrapped) {
        return "Beide Kanten zu " + wrapped + " hin bügeln.";
    }

    @Override
    public String fewPressShort() {
        return "Beide Kanten zu einer Seite bügeln.";
    }

    @Override
    public String fewPull() {
        return "Bei Unterschied die kürzere länger ziehen und bügeln.";
    }

    @Override
    public String fewRoundCorner() {
        return "An der Ecke: Nadel unten, Fuß hoch, Tuch drehen.";
    }

    @Override
    public String fewRoundEnd() {
        return "Am Ende über die ersten Stiche nähen. Bügeln.";
    }

    @Override
    public String fewRoundFold() {
        return "Den Saum entlang der Falten einschlagen, Ecken scharf. Bügeln und stecken.";
    }

    @Override
    public String fewRoundStart() {
        return "In der Mitte einer Seite beginnen.";
    }

    @Override
    public String fewSides() {
        return "Stoffseiten wie im Bild.";
    }

    @Override
    public String fewSquare(String face) {
        return "Das ganze Tuch glatt bügeln, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben.";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return wrapping + ": " + length + " überstehen lassen, umschließt später. Stecken.";
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "Die umschließende Kante " + length + " überstehen lassen. Stecken.";
    }

    @Override
    public String fewStitch(String top) {
        return top + " von der oberen Kante nähen. An beiden Enden verriegeln.";
    }

    @Override
    public String fewTrialCut(String side) {
        return "Zwei Reste " + side + " im Quadrat schneiden. Wie die erste Naht nähen.";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return "Stichlänge " + stitch + " einstellen.";
    }

    @Override
    public String fewTrialMeasure() {
        return "Nach jedem Schritt messen.";
    }

    @Override
    public String fewTrialNarrow() {
        return "Zu schmal? Eine Fadenbreite näher an der Kante nähen.";
    }

    @Override
    public String fewTrialWide() {
        return "Zu breit? Eine Fadenbreite weiter innen nähen.";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "Das Ende abschneiden, die Kante um " + length + " kürzen.";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "Die Kante um " + length + " kürzen.";
    }

    @Override
    public String fewTrimEdges() {
        return "Kanten nur beschneiden, wo sie nicht gerade sind.";
    }

    @Override
    public String fewTrimEnd() {
        return "Das Ende bündig abschneiden.";
    }

    @Override
    public String fewWhipOpen() {
        return "Aufklappen und flach bügeln.";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return wrapping + " " + wide + ", das andere " + narrow + " zur " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " bügeln.";
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "Beide Kanten zur " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " bügeln.";
    }

    @Override
    public String fewWhipSew() {
        return "Brüche bündig legen. Von Hand überwendlich nähen, etwa 1 mm Abstand.";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "Die Naht flach aufklappen, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. Den Steg zu " + wrapped + " hin bügeln.";
    }

    @Override
    public String frenchOther(String face) {
        return "Die Naht bügeln, dann entlang der Naht andersherum falten, " + (face.equals("front") ? "Vorderseite auf Vorderseite" : "Rückseite auf Rückseite") + ".";
    }

    @Override
    public String frenchSecond(String band) {
        return band + " vom Bruch nähen. An beiden Enden verriegeln. Die Schnittkanten sind nun eingeschlossen.";
    }

    @Override
    public String frenchSharp() {
        return "Den Bruch scharf bügeln.";
    }

    @Override
    public String frenchSnip() {
        return "Lose Fäden abschneiden, damit keiner herausschaut.";
    }

    @Override
    public String frenchTrim(String length) {
        return "Beide Nahtzugaben auf " + length + " zurückschneiden.";
    }

    @Override
    public String hemCheck(String size) {
        return "Das Tuch soll jetzt " + size + " messen, Breite × Höhe, Vorderseite oben.";
    }

    @Override
    public String hemClip(String length) {
        return "Von jeder Ecke ein kleines Dreieck abschneiden: " + length + " an beiden Kanten, nicht mehr. So wird die Saumecke weniger dick.";
    }

    @Override
    public String hemClipTitle() {
        return "Die vier Ecken abschneiden";
    }

    @Override
    public String hemClosePush() {
        return "Jeder seitliche Saum ist an beiden Enden offen. Lose Fäden mit dem Nadelöhr hineinschieben.";
    }

    @Override
    public String hemCloseSew() {
        return "Jede Öffnung mit ein paar kleinen Handstichen zunähen.";
    }

    @Override
    public String hemCloseTitle() {
        return "Die vier Ecken schließen";
    }

    @Override
    public String hemCreases() {
        return "Den Saum wieder aufklappen. In jeder Ecke kreuzen sich die Bügelfalten. Die fertige Ecke liegt dort, wo sich die inneren kreuzen.";
    }

    @Override
    public String hemFold(String edges, String length) {
        return length + " einschlagen, " + (edges.equals("topBottom") ? "an der oberen und der unteren Kante" : edges.equals("sides") ? "an der linken und der rechten Kante, samt den Enden der eben genähten Säume" : "an allen vier Kanten") + ". Bügeln.";
    }

    @Override
    public String hemFoldAgain(String length) {
        return "Noch einmal " + length + " einschlagen, sodass die Schnittkante innen liegt. Bügeln und stecken.";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return length + " einschlagen, " + (edges.equals("topBottom") ? "an der oberen und der unteren Kante" : edges.equals("sides") ? "an der linken und der rechten Kante, samt den Enden der eben genähten Säume" : "an allen vier Kanten") + ". Bügeln und stecken. Die Schnittkante bleibt sichtbar.";
    }

    @Override
    public String hemLay(String face) {
        return "Das Tuch mit der " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " nach oben legen. Der Saum wird auf die " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " umgeschlagen.";
    }

    @Override
    public String hemMitreFold(String face) {
        return "Die Ecke auf die Hälfte falten, " + (face.equals("front") ? "Vorderseite auf Vorderseite" : "Rückseite auf Rückseite") + ", sodass beide Schnittkanten aufeinanderliegen.";
    }

    @Override
    public String hemMitreMark(String length) {
        return "Auf den Schnittkanten " + length + " von der Eckspitze anzeichnen. Von dort eine Linie rechtwinklig zum diagonalen Bruch ziehen. Sie trifft den Bruch, wo sich die inneren Falten kreuzen.";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "Auf der Linie vom Bruch bis zur äußeren Falte nähen, " + about + ". An beiden Enden verriegeln. Den Rest bis zur Schnittkante offen lassen: Er wird eingeschlagen.";
    }

    @Override
    public String hemMitreStitchOut() {
        return "Auf der Linie vom Bruch bis zur Schnittkante nähen. An beiden Enden verriegeln.";
    }

    @Override
    public String hemMitreTitle() {
        return "Die vier Briefecken, eine nach der anderen";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "Die Spitze neben der Linie abschneiden: an jeder Schnittkante bei " + about + " ansetzen. Die kleine Naht auseinanderbügeln und die Ecke wenden.";
    }

    @Override
    public String hemPressTitle() {
        return "Den Saum bügeln";
    }

    @Override
    public String hemRoundCorner() {
        return "An jeder Ecke die Nadel unten lassen, den Nähfuß heben und das Tuch drehen. Am Ende über die ersten Stiche nähen. Bügeln.";
    }

    @Override
    public String hemRoundFold() {
        return "Den Saum entlang der Falten wieder einschlagen, die Ecken scharf ausformen. Bügeln und stecken.";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return "Ringsum knappkantig absteppen, " + edge + " von " + (from.equals("fold") ? "der inneren Bruchkante" : "der Schnittkante") + ". In der Mitte einer Seite beginnen.";
    }

    @Override
    public String hemRoundTitle() {
        return "Den Saum absteppen";
    }

    @Override
    public String hemSidesTitle() {
        return "Links und rechts säumen";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "Beide Diagonalen messen. Jede soll etwa " + length + " lang sein. Sind sie verschieden, die kürzere vorsichtig länger ziehen und wieder bügeln.";
    }

    @Override
    public String hemSquarePress(String face) {
        return "Das ganze Tuch glatt bügeln, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben.";
    }

    @Override
    public String hemSquareTitle() {
        return "Rechtwinklig ausrichten";
    }

    @Override
    public String hemSquareTrim() {
        return "Die vier Kanten nur dort beschneiden, wo sie nicht gerade sind.";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return "Knappkantig absteppen, " + edge + " von " + (from.equals("fold") ? "der inneren Bruchkante" : "der Schnittkante") + ", Stichlänge " + stitch + ". An beiden Enden verriegeln. Bügeln.";
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return "Dick an der " + (side.equals("left") ? "linken" : side.equals("right") ? "rechten" : side.equals("top") ? "oberen" : "unteren") + " Kante, etwa " + places + " " + (side.equals("left") ? "von oben" : side.equals("right") ? "von oben" : "von links") + " (von vorn gesehen). Dort laufen Nähte in den Saum: bis zu " + plies + " Lagen.";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "Dick an jeder Ecke: bis zu " + plies + " Lagen. Die Reihe ein Stück weiter innen beginnen und die Ecke zuletzt nähen. Dort das Handrad drehen.";
    }

    @Override
    public String hemTopBottomTitle() {
        return "Oben und unten säumen";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return "Die Brüche ineinanderhaken, " + wrapping + " oben, bis sie sich " + band + " überlappen und die Schnittkanten innen aneinanderstoßen. Stecken.";
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return work + " mit der " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " nach oben legen. " + added + " ebenso danebenlegen, " + (side.equals("left") ? "links" : side.equals("right") ? "rechts" : side.equals("top") ? "oben" : "unten") + ".";
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return "An der Kante von " + wrapping + " " + turn + " zur " + (face.equals("front") ? "Rückseite" : "Vorderseite") + " bügeln, an der Kante von " + wrapped + " " + under + " zur " + (face.equals("front") ? "Vorderseite" : "Rückseite") + ".";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return "Knappkantig absteppen, " + edge + " vom sichtbaren Bruch, Stichlänge " + stitch + ". Wenden und den anderen Bruch ebenso absteppen. An beiden Enden verriegeln. Bügeln.";
    }

    @Override
    public String layAll(int n) {
        return (n == 1 ? "Den einen Flicken wie im Bild der Vorderseite auslegen, mit seinem Zettel." : "Alle " + n + " Flicken wie im Bild der Vorderseite auslegen, jeden mit seinem Zettel.");
    }

    @Override
    public String layBars() {
        return "Das Mittelstück liegt in der Mitte. Ein Streifen heißt nach Runde und Reihenfolge: 2C ist der dritte Streifen der zweiten Runde. 2C·1 ist der erste Teil dieses Streifens.";
    }

    @Override
    public String layLetters() {
        return "Ein Buchstabe ist eine kleine Aufgabe. Erst alles von A zusammennähen, dann alles von B und so weiter, in der Reihenfolge der Zahlen. Jeden Buchstaben auf einem eigenen Stapel halten.";
    }

    @Override
    public String layLook() {
        return "Zurücktreten und ansehen. Jetzt lassen sich zwei gleich große Flicken zum letzten Mal tauschen.";
    }

    @Override
    public String layStack() {
        return "Die Flicken in Nähreihenfolge stapeln, der erste oben.";
    }

    @Override
    public String layTitle() {
        return "Alles auslegen";
    }

    @Override
    public String layWork() {
        return "„Arbeit“ heißt in den Schritten alles, was bis dahin zusammengenäht ist.";
    }

    @Override
    public String lessThan(String length) {
        return "weniger als " + length;
    }

    @Override
    public String nameBar(String label) {
        return "Streifen " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "Block " + letters;
    }

    @Override
    public String nameFree(String label) {
        return "Flicken " + label;
    }

    @Override
    public String nameHearth() {
        return "Mittelstück";
    }

    @Override
    public String nameJoined(String label) {
        return "Streifen " + label + " (bisher)";
    }

    @Override
    public String nameOffcut(String number) {
        return "Reststück " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return "Paar " + from + " und " + to;
    }

    @Override
    public String namePart(String label) {
        return "Teil " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "Teil " + from + " bis " + to;
    }

    @Override
    public String namePatch(String label) {
        return "Flicken " + label;
    }

    @Override
    public String namePiece(String label) {
        return "Stück " + label;
    }

    @Override
    public String nameScrap() {
        return "ein Rest, zu klein zum Aufheben";
    }

    @Override
    public String nameStepBlock(String step) {
        return "Block aus Schritt " + step;
    }

    @Override
    public String nameStrip(String label) {
        return "Stoffstreifen " + label;
    }

    @Override
    public String nameThePiece() {
        return "das Stück";
    }

    @Override
    public String nameWork() {
        return "Arbeit";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "Arbeit " + from + " bis " + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "Stück " + piece + ", " + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "Stück " + piece + ", " + size + ", schon zugeschnitten";
    }

    @Override
    public String seamCheck(String size, String what) {
        return (what.equals("bar") ? "Der Streifen" : "Die Arbeit") + " soll jetzt " + size + " messen, Breite × Höhe, Vorderseite oben.";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "Knappkantig absteppen, " + edge + " vom Bruch, durch alle " + (plies == 4 ? "vier" : "" + plies) + " Lagen. An beiden Enden verriegeln. Bügeln.";
    }

    @Override
    public String seamEven() {
        return "Beide Kanten bündig legen. Stecken.";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return "Die Schnittkante von " + wrapping + " um " + under + " einschlagen, sodass sie die Schnittkante von " + wrapped + " umschließt. Der Bruch liegt " + band + " von der Naht. Bügeln und stecken.";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return work + " mit der " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " nach oben legen. " + added + " " + (side.equals("left") ? "wie eine Buchseite darauf umschlagen" : side.equals("right") ? "wie eine Buchseite darauf umschlagen" : side.equals("top") ? "nach unten darauf umklappen" : "nach oben darauf umklappen") + ", die " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " nach unten, " + (side.equals("left") ? "am linken" : side.equals("right") ? "am rechten" : side.equals("top") ? "am oberen" : "am unteren") + " " + (part.equals("end") ? "Ende" : "Rand") + " von " + work + ".";
    }

    @Override
    public String seamLevel(String start) {
        return "Die Enden " + (start.equals("left") ? "links" : start.equals("right") ? "rechts" : start.equals("top") ? "oben" : "unten") + " bündig legen.";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return "Die Kante von " + wrapping + " " + length + " über die Kante von " + wrapped + " hinausstehen lassen. Diese breitere Nahtzugabe wird später um die andere gelegt. Stecken.";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "Die Naht flach aufklappen, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. Beide Nahtzugaben zu " + wrapped + " hin bügeln; die breitere von " + wrapping + " liegt obenauf.";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "Die Naht flach aufklappen, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " oben. Beide Nahtzugaben zu " + wrapped + " hin bügeln; die von " + wrapping + " liegt obenauf.";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return added + " ist " + length + " zu lang zugeschnitten und steht " + (end.equals("left") ? "links" : end.equals("right") ? "rechts" : end.equals("top") ? "oben" : "unten") + " über.";
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return top + " von der Kante von " + added + " (liegt oben) nähen, Stichlänge " + stitch + ". An beiden Enden verriegeln.";
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return top + " von der Kante von " + added + " (liegt oben) nähen, Stichlänge " + stitch + ". Das sind " + below + " von der Kante von " + work + " darunter. An beiden Enden verriegeln.";
    }

    @Override
    public String seamThickAt(String end, String places) {
        return places + " " + (end.equals("top") ? "von oben" : "von links");
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return "Die Nahtzugabe von " + wrapped + " auf " + length + " zurückschneiden.";
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return "Die Außenkante von " + added + " um " + length + " gerade schneiden. Die Arbeit ist dann " + across + " " + (way.equals("wide") ? "breit" : "hoch") + ".";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return "Das Ende von " + added + " bündig mit " + work + " abschneiden.";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return "Dick etwa " + places + " " + (end.equals("top") ? "vom oberen Ende" : "vom linken Ende (von vorn gesehen)") + ": Hier kreuzt die Naht eine andere, bis zu " + plies + " Lagen. Langsam nähen oder das Handrad drehen.";
    }

    @Override
    public String thickAt(String places) {
        return "Dick bei " + places;
    }

    @Override
    public String thickBand(String plies) {
        return "Eine Naht hat auf gewöhnlicher Strecke " + plies + " Lagen.";
    }

    @Override
    public String thickFoot() {
        return "Dort einen gefalteten Stoffrest hinter den Nähfuß legen, damit er waagerecht bleibt. Die Stiche etwas länger stellen und das Handrad drehen. Den Stoff nie schieben oder ziehen; das verbiegt die Nadel.";
    }

    @Override
    public String thickHem() {
        return "Dick, wo Nähte einlaufen";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return (n == 1 ? "Bis zu " + plies + " Lagen an " + n + " Stelle, etwa " + height + " dick." : "Bis zu " + plies + " Lagen an " + n + " Stellen, etwa " + height + " dick.");
    }

    @Override
    public String thickPress() {
        return "Eine dicke Stelle vor dem Nähen mit Dampf fest bügeln. Oder einen Stoffrest darauflegen und mit dem Hammer flach klopfen.";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return "Insgesamt etwa " + total + ". Stichlänge " + stitch + " einstellen. Gerechnet für " + ply + " dicken Stoff, mit " + tail + " Faden an beiden Enden jeder Reihe und " + percent + " Zugabe.";
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return "Insgesamt etwa " + total + "; die Hälfte, " + each + ", auf Unterfadenspulen wickeln. Stichlänge " + stitch + " einstellen. Gerechnet für " + ply + " dicken Stoff, mit " + tail + " Faden an beiden Enden jeder Reihe und " + percent + " Zugabe.";
    }

    @Override
    public String titleJoin(String added, String work) {
        return added + " an " + work + " nähen";
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return added + " " + (side.equals("left") ? "links an" : side.equals("right") ? "rechts an" : side.equals("top") ? "oben an" : "unten an") + " " + work;
    }

    @Override
    public String toolCutter() {
        return "Rollschneider, Lineal und Schneidematte, oder Schere, Lineal und Kreide";
    }

    @Override
    public String toolHand() {
        return "Feine Handnähnadeln und eine Nähmaschine für den Saum";
    }

    @Override
    public String toolIron() {
        return "Bügeleisen und Bügelbrett, etwas Wasser oder eine Sprühflasche";
    }

    @Override
    public String toolMachine(String needle) {
        return "Nähmaschine mit neuer Nadel, Stärke " + needle;
    }

    @Override
    public String toolPins() {
        return "Stecknadeln oder Klammern, Nahttrenner, kleine Schere";
    }

    @Override
    public String toolSlips() {
        return "Die Flickenzettel oder kleine Papierzettel, dazu je eine Stecknadel";
    }

    @Override
    public String toolThread() {
        return "Garn, siehe „Garn“ in dieser Anleitung";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return "Die " + (ofAdded.equals("right") ? "rechte" : "linke") + " Stoffseite von " + added + " liegt auf der " + (ofWork.equals("right") ? "rechten" : "linken") + " von " + work + ".";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return "Die " + (side.equals("right") ? "rechte" : "linke") + " Stoffseite von " + one + " liegt zu " + other + " hin.";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return "Die " + (ofAdded.equals("right") ? "rechte" : "linke") + " Stoffseite von " + added + " liegt auf der " + (ofWork.equals("right") ? "rechten" : "linken") + " von " + work + ".";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return "Die " + (side.equals("right") ? "rechte" : "linke") + " Stoffseite von " + one + " liegt zu " + other + " hin.";
    }

    @Override
    public String touchLayMixed() {
        return "Manche Flicken liegen rechts innen, manche links innen, wie im Bild.";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "Rechts auf rechts." : "Links auf links.");
    }

    @Override
    public String touchMixed() {
        return "Manche Flicken liegen rechts innen, manche links innen, wie im Bild.";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "Rechts auf rechts." : "Links auf links.");
    }

    @Override
    public String trialCheck(String size) {
        return "Zusammen sollen sie jetzt " + size + " messen. Zuerst quer zur Naht messen.";
    }

    @Override
    public String trialCut(String side) {
        return "Zwei Reste von " + side + " im Quadrat zuschneiden und wie bei der ersten Naht unten zusammennähen.";
    }

    @Override
    public String trialFells(String fells) {
        return "Alle Nähte liegen auf der " + (fells.equals("front") ? "Vorderseite" : "Rückseite") + ", die " + (fells.equals("front") ? "Rückseite" : "Vorderseite") + " bleibt glatt. Daran sind vorn und hinten zu erkennen.";
    }

    @Override
    public String trialFree() {
        return "Nach jedem Schritt messen. Hier ist nichts länger zugeschnitten. Weicht ein Teil um mehr als ein, zwei Fäden ab, passt es nicht mehr an sein Nachbarteil.";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "Nach jedem Schritt messen. Jeder Streifen ist " + leeway + " länger zugeschnitten, eine kleine Abweichung schadet also nicht. Ist sie größer, auftrennen.";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return "Stichlänge " + stitch + " einstellen. Die Naht nimmt " + narrow + " von der einen Kante und " + wide + " von der anderen: zusammen " + loss + ".";
    }

    @Override
    public String trialTitle() {
        return "Die Naht an zwei Stoffresten probieren";
    }

    @Override
    public String trialWidth() {
        return "Werden die Reste zu schmal, eine Fadenbreite näher an der Kante nähen. Werden sie zu breit, eine Fadenbreite weiter innen.";
    }

    @Override
    public String washAll() {
        return "Alle Stoffe sind gewaschen.";
    }

    @Override
    public String washDye(String fabrics) {
        return "Kräftige Farben können auf helle abfärben. Eine Ecke von " + fabrics + " eine halbe Stunde in warmes Seifenwasser legen und nass auf weißen Stoff drücken. Färbt sie ab, diesen Stoff allein waschen, bis er nicht mehr abfärbt, oder weglassen.";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "Gewaschene und ungewaschene Stücke sind gemischt. " + (which.equals("washed") ? "Gewaschen" : "Nicht gewaschen") + ": " + pieces + ".";
    }

    @Override
    public String washMixedThen(String length) {
        return "Die ungewaschenen zuerst waschen und neu messen. Über die Seite dieses Tuchs könnten sie etwa " + length + " mehr einlaufen als die anderen, und das Tuch würde Falten werfen.";
    }

    @Override
    public String washNone() {
        return "Nichts ist gewaschen. Jetzt alles so waschen, wie das fertige Tuch gewaschen wird, und neu messen. Ist etwas eingelaufen, neu planen. Oder gar nichts waschen.";
    }

    @Override
    public String washNoneSaid() {
        return "Nach der Stoffliste ist nichts gewaschen. Jetzt alles so waschen, wie das fertige Tuch gewaschen wird, und neu messen. Ist etwas eingelaufen, neu planen. Oder gar nichts waschen.";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return (n == 1 ? "Die Stoffliste sagt nicht, ob " + pieces + " gewaschen ist. Im Zweifel waschen." : "Die Stoffliste sagt nicht, ob " + pieces + " gewaschen sind. Im Zweifel waschen.");
    }

    @Override
    public String washUnknown() {
        return "Die Stoffliste sagt nicht, was gewaschen ist. Alles so waschen, wie das fertige Tuch gewaschen wird, und neu messen. Ist etwas eingelaufen, neu planen. Oder gar nichts waschen.";
    }

    @Override
    public String washingAlone() {
        return "Das fertige Tuch beim ersten Mal allein waschen, so schonend, wie der empfindlichste Stoff es braucht. Im Zweifel von Hand in kühlem Wasser.";
    }

    @Override
    public String washingSquare(String face) {
        return "Feucht in Form ziehen und flach trocknen. Auf der " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " bügeln, bevor es ganz trocken ist.";
    }

    @Override
    public String whipOpen(String face) {
        return "Die Naht aufklappen und flach bügeln. Die Schnittkanten bleiben auf der " + (face.equals("front") ? "Vorderseite" : "Rückseite") + ".";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return "An der Kante von " + wrapping + " " + wide + " und an der Kante von " + wrapped + " " + narrow + " zur " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " bügeln.";
    }

    @Override
    public String whipSew() {
        return "Beide Brüche bündig legen. Von Hand überwendlich zusammennähen, etwa 1 mm Abstand. Jeder Stich fasst ein, zwei Fäden beider Brüche.";
    }
}
