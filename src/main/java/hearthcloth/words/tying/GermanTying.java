package hearthcloth.words.tying;

/** The room of tying in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "Ein Buch auf das andere klappen, sodass der Zwischenraum zum Rücken wird.";
    }

    @Override
    public String booksEnds() {
        return "Den linken und den rechten Zipfel über die Bücher legen. Im Zwischenraum fest kreuzen.";
    }

    @Override
    public String booksLaid() {
        return "Das Tuch als Raute hinlegen. Ein Buch vorn, eines hinten hinlegen. Dazwischen so viel Platz lassen, wie beide zusammen dick sind.";
    }

    @Override
    public String booksTied() {
        return "Die beiden Enden verdrehen. Am Rücken entlang zurückführen und verknoten.";
    }

    @Override
    public String booksWound() {
        return "Den vorderen Zipfel über das vordere Buch schlagen, den hinteren über das hintere.";
    }

    @Override
    public String bottleCrossed() {
        return "Den linken und den rechten Zipfel raffen. Um die Flasche führen und hinten kreuzen.";
    }

    @Override
    public String bottleHandle() {
        return "Für einen Henkel die obere Hälfte des Knotens wieder lösen. Beide Enden verdrehen und zusammenknoten.";
    }

    @Override
    public String bottleLaid() {
        return "Das Tuch als Raute hinlegen. Die Flasche in die Mitte stellen.";
    }

    @Override
    public String bottlePair() {
        return "Den vorderen und den hinteren Zipfel hochheben. Über der Flasche mit einem Kreuzknoten verknoten, dicht an der Öffnung.";
    }

    @Override
    public String bottleTied() {
        return "Nach vorn führen und dort eng an der Flasche verknoten.";
    }

    @Override
    public String bottlesLaid() {
        return "Das Tuch als Raute hinlegen. Beide Flaschen quer darauflegen, Boden an Boden, eine Faust breit Abstand.";
    }

    @Override
    public String bottlesStood() {
        return "Den hinteren Zipfel in den Zwischenraum stecken. Beide Flaschen aufstellen, sodass sich das Tuch zwischen den Böden biegt.";
    }

    @Override
    public String bottlesTied() {
        return "Die beiden Enden über den Flaschen mit einem Kreuzknoten verknoten.";
    }

    @Override
    public String bottlesWound() {
        return "Den vorderen Zipfel über die Flaschen legen. Die Flaschen von dir weg bis zum hinteren Zipfel rollen.";
    }

    @Override
    public String careBottle() {
        return "Den Knoten erst über einem Tisch prüfen. Bis dahin eine Hand unter die Flasche halten.";
    }

    @Override
    public String careChildren() {
        return "Lange Enden und Schlaufen von kleinen Kindern und Kinderbetten fernhalten: Ein geknotetes Tuch kann sich um den Hals zuziehen.";
    }

    @Override
    public String careFlames() {
        return "Ein verpacktes Geschenk von Kerzen, Herd und Lampen fernhalten. Lose Enden fangen zuerst Feuer.";
    }

    @Override
    public String careFood() {
        return "Lebensmittel zuerst in eine eigene Schachtel oder in Papier packen. Das Tuch waschen, bevor es Lebensmittel berührt.";
    }

    @Override
    public String careSpills() {
        return "Nicht für Dinge nehmen, die auslaufen können: Eine Rolle liegt auf der Seite.";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "der rechte Zipfel" : corner.equals("FAR") ? "der hintere Zipfel" : corner.equals("LEFT") ? "der linke Zipfel" : corner.equals("NEAR") ? "der vordere Zipfel" : corner.equals("FAR_RIGHT") ? "der Zipfel hinten rechts" : corner.equals("FAR_LEFT") ? "der Zipfel hinten links" : corner.equals("NEAR_LEFT") ? "der Zipfel vorn links" : corner.equals("NEAR_RIGHT") ? "der Zipfel vorn rechts" : "das Tuch");
    }

    @Override
    public String diamond() {
        return "Das Tuch als Raute hinlegen, ein Zipfel zu dir, die Seite, die außen sein soll, nach unten. Das Geschenk in die Mitte stellen, die lange Seite von links nach rechts.";
    }

    @Override
    public String diamondRoll() {
        return "Das Tuch als Raute hinlegen. Die Rolle quer darauflegen, von links nach rechts.";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return "Unsicher ist der Knoten: Dünner Stoff verbraucht weniger von jedem Zipfel, dicker Stoff mehr. Brauchen Knoten und Ende " + least + " von jedem Zipfel, genügt ein Quadrat von " + small + "; brauchen sie " + most + ", sind " + large + " nötig. Hier sind " + usual + " vorgesehen; das passt für leichte Baumwolle mit Enden von etwa " + end + ".";
    }

    @Override
    public String edgeFlaps() {
        return "Die Tuchkanten um die Oberseite glatt ziehen, sodass die Klappen darüber liegen.";
    }

    @Override
    public String edgeLaid() {
        return "Das Tuch gerade vor dich legen, die Seite, die außen sein soll, nach unten. Das Geschenk in die Mitte stellen, seine Kanten parallel zu den Tuchkanten.";
    }

    @Override
    public String edgePair() {
        return "Zwei gegenüberliegende Zipfel an den Ecken des Geschenks hochheben. Über der Mitte verknoten.";
    }

    @Override
    public String edgeTied() {
        return "Die anderen beiden Zipfel über dem ersten Knoten verknoten.";
    }

    @Override
    public String errandFar() {
        return "Den hinteren Zipfel darüberlegen und die Spitze einschlagen.";
    }

    @Override
    public String errandHidden() {
        return "Um den Knoten zu verstecken, die Spitze des hinteren Zipfels darunter hervorziehen und über den Knoten legen.";
    }

    @Override
    public String errandNear() {
        return "Den vorderen Zipfel über das Geschenk legen. Die Spitze an der hinteren Kante darunterstecken.";
    }

    @Override
    public String errandSides() {
        return "Den linken und den rechten Zipfel hochheben und die Seiten glatt anlegen.";
    }

    @Override
    public String errandTied() {
        return "Beide oben mit einem Kreuzknoten verknoten.";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "Dieses Tuch ist gerade groß genug für " + gift + " (Bindung: " + tie + ").";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return "Dieses Tuch ist gerade groß genug für " + gift + " (Bindung: " + tie + "). An jedem geknoteten Zipfel bleiben " + tail + " für den Knoten und sein Ende.";
    }

    @Override
    public String fitNearly(String gift) {
        return "Um " + gift + " lässt es sich binden.";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return "Auch " + spare + " kleiner genäht würde es noch reichen.";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return "Dieses Tuch ist " + less + " kleiner, als es für " + gift + " sein sollte (Bindung: " + tie + "). Binden lässt es sich trotzdem: An jedem geknoteten Zipfel bleiben " + tail + " für den Knoten und sein Ende statt " + usual + ".";
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "Dieses Tuch lässt sich um " + gift + " binden (Bindung: " + tie + "). Für " + reason + " bleiben " + spare + " mehr als nötig.";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "Dieses Tuch ist zu klein für " + gift + " (Bindung: " + tie + "): " + corner + " ist " + lack + " zu kurz für " + reason + ". Ein Tuch von " + size + " ist groß genug.";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "Mit den üblichen Enden reicht es um " + gift + ".";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "Dieses Tuch reicht um " + gift + " (Bindung: " + tie + "). Für " + reason + " bleiben " + spare + " mehr als nötig.";
    }

    @Override
    public String flatFar() {
        return "Den hinteren Zipfel über alles legen. Die Spitze an der vorderen Kante einstecken.";
    }

    @Override
    public String flatNear() {
        return "Den vorderen Zipfel über das Geschenk legen. Wo die Spitze übersteht, nach unten zurückschlagen.";
    }

    @Override
    public String flatSides() {
        return "Erst die linke, dann die rechte Seite darüberlegen. Beide an der Kante des Geschenks glatt streichen.";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "Den vorderen und den hinteren Zipfel über die Mitte legen. Mit einem Kreuzknoten eng auf dem Geschenk verknoten.";
    }

    @Override
    public String fourCornerSides() {
        return "Den linken und den rechten Zipfel gerade hochheben. Den Stoff, der neben dem Geschenk absteht, innen flach an die Seiten legen.";
    }

    @Override
    public String fourCornerTied() {
        return "Den linken und den rechten Zipfel über dem ersten Knoten verknoten. Die vier Enden ausbreiten.";
    }

    @Override
    public String knotFirst() {
        return "Das linke Ende über das rechte legen. Hinten herum nach oben führen. Das ist der halbe Knoten.";
    }

    @Override
    public String knotPull() {
        return "An beiden Enden ziehen. Ein Kreuzknoten liegt flach, die Enden in Zugrichtung. Stehen die Enden quer, ist es ein Altweiberknoten, der sich löst. Dann die zweite Hälfte lösen und andersherum kreuzen.";
    }

    @Override
    public String knotSecond() {
        return "Dasselbe Ende, das jetzt rechts liegt, wieder über das andere legen und durch die Schlinge führen.";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "Knoten und Enden" : reason.equals("COVER") ? "das Bedecken des Geschenks" : reason.equals("TUCK") ? "das Einstecken der letzten Klappe" : "das Überlappen der Seiten");
    }

    @Override
    public String rollCrossed() {
        return "Dort kreuzen, sodass auf jeder Seite eines nach unten geht.";
    }

    @Override
    public String rollEnds() {
        return "Die Seiten über beide Enden der Rolle schlagen. An der Rolle entlang bis zur Mitte zurückführen.";
    }

    @Override
    public String rollTied() {
        return "Die Rolle umdrehen. Auf der anderen Seite mit einem Kreuzknoten verknoten.";
    }

    @Override
    public String rollWound() {
        return "Den vorderen Zipfel über die Rolle legen. Die Rolle von dir weg bis zum hinteren Zipfel rollen.";
    }

    @Override
    public String roundHandle() {
        return "Für einen Henkel den zweiten Knoten unter dem ersten durchziehen. Festziehen.";
    }

    @Override
    public String roundLaid() {
        return "Das Tuch flach hinlegen. Die Kugel in die Mitte setzen.";
    }

    @Override
    public String roundPair() {
        return "Den vorderen mit dem rechten Zipfel über der Kugel verknoten. Die Enden lang genug für eine Schlaufe lassen.";
    }

    @Override
    public String roundTied() {
        return "Den hinteren mit dem linken Zipfel verknoten.";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "Die übliche Faustregel (" + rule + ") ergibt " + size + " (" + source + "). Das ist " + more + " mehr, als diese Bindung braucht.";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "Die übliche Faustregel (" + rule + ") ergibt " + size + " (" + source + "). Das ist " + less + " zu klein für " + gift + ".";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "Die übliche Faustregel (" + rule + ") ergibt " + size + " (" + source + "). Das ist " + less + " zu klein für " + gift + ", weil das Geschenk hoch ist.";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "Diagonale = dreimal die längste Seite" : "Seite = dreimal die Höhe der Flasche");
    }

    @Override
    public String shortBooks() {
        return "Wenn die verdrehten Enden zu kurz sind, vor dem Zuklappen im Zwischenraum verknoten. Die Bücher unter dem Arm tragen.";
    }

    @Override
    public String shortBottle() {
        return "Wenn sich die Zipfel über der Öffnung nicht treffen, um den Hals binden; der Hals bleibt dann sichtbar.";
    }

    @Override
    public String shortCorners() {
        return "Wenn zwei Zipfel einander nicht erreichen, über dem Geschenk kreuzen. Jeden mit einem seitlichen Zipfel verknoten, wie beim Päckchen mit zwei Knoten. Oder die beiden Zipfel einer Kante verknoten, dann die anderen beiden.";
    }

    @Override
    public String shortFlat() {
        return "Wenn der hintere Zipfel die vordere Kante nicht erreicht, einschlagen und feststecken. Oder das Botenpäckchen binden.";
    }

    @Override
    public String shortRolled() {
        return "Wenn die Enden zu kurz sind, weniger Stoff aufrollen. Oder ein Band dazwischenknoten.";
    }

    @Override
    public String shortRound() {
        return "Wenn zwei Zipfel zu kurz sind, gegenüberliegende Zipfel oben verknoten, ohne Henkel.";
    }

    @Override
    public String shortTwoKnot() {
        return "Wenn ein Zipfel zu kurz ist, die Kreuzung zu ihm hin verschieben. Oder ein Band dazwischenknoten.";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + ": " + percent + " von dem, was zu sehen ist" + (where.equals("top") ? ", oben" : where.equals("sides") ? ", an den Seiten" : where.equals("both") ? ", an den Seiten und oben" : "") + ".";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + ": nur im Knoten und an den Enden zu sehen.";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + ": nicht zu sehen.";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return "Vom Mittelstück sind " + percent + " zu sehen" + (where.equals("top") ? ", oben" : where.equals("sides") ? ", an den Seiten" : where.equals("both") ? ", an den Seiten und oben" : "") + ".";
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return "Vom Mittelstück sind " + percent + " zu sehen" + (where.equals("top") ? ", oben" : where.equals("sides") ? ", an den Seiten" : where.equals("both") ? ", an den Seiten und oben" : "") + "; " + under + " liegen unter " + (thing.equals("box") ? "der Schachtel" : thing.equals("books") ? "den Büchern" : thing.equals("roll") ? "der Rolle" : thing.equals("ball") ? "der Kugel" : thing.equals("bottles") ? "den Flaschen" : "der Flasche") + ".";
    }

    @Override
    public String showsHearthInKnot() {
        return "Das Mittelstück ist nur im Knoten und an den Enden zu sehen.";
    }

    @Override
    public String showsHearthInside() {
        return "Das Mittelstück liegt eingefaltet innen.";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "Das Mittelstück liegt verdeckt unter " + (thing.equals("box") ? "der Schachtel" : thing.equals("books") ? "den Büchern" : thing.equals("roll") ? "der Rolle" : thing.equals("ball") ? "der Kugel" : thing.equals("bottles") ? "den Flaschen" : "der Flasche") + ".";
    }

    @Override
    public String showsSpare() {
        return "Wo zwei Zahlen stehen, kommt es auf die vier freien Ecken an: unter die Klappen gesteckt oder außen, wie sie fallen.";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "Vier-Zipfel-Knoten" : tie.equals("EDGE_ALONG_EDGE") ? "Vier-Zipfel-Knoten, Kante an Kante" : tie.equals("ERRAND") ? "Botenpäckchen" : tie.equals("FLAT") ? "flaches Päckchen" : tie.equals("TWO_KNOT") ? "Päckchen mit zwei Knoten" : tie.equals("ONE_BOTTLE") ? "eine Flasche" : tie.equals("TWO_BOTTLES") ? "zwei Flaschen" : tie.equals("ROUND") ? "runder Beutel" : tie.equals("BOOKS") ? "Buchpäckchen" : "Rolle");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "Schachteln, Gestapeltes und Schweres" : tie.equals("EDGE_ALONG_EDGE") ? "Schachteln auf einem großen Tuch" : tie.equals("ERRAND") ? "Schachteln, die man in der Hand trägt" : tie.equals("FLAT") ? "flache Schachteln und gefaltete Kleidung, ohne Knoten" : tie.equals("TWO_KNOT") ? "lange Schachteln und gerollte Matten" : tie.equals("ONE_BOTTLE") ? "eine stehende Flasche" : tie.equals("TWO_BOTTLES") ? "zwei gleiche Flaschen" : tie.equals("ROUND") ? "Bälle, Melonen, Rundes" : tie.equals("BOOKS") ? "zwei gleiche Bücher" : "Stoffballen, Röhren, Dosen");
    }

    @Override
    public String tradeAll(String enough) {
        return "Fertige Größen, die reichen: " + enough + ".";
    }

    @Override
    public String tradeNone(String small) {
        return "Alle fertigen Größen für Geschenke sind hier zu klein: " + small + ".";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "Fertige Größen, die reichen: " + enough + ". Zu klein: " + small + ".";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "kleine Geschenke, Brotdose, Umschlag" : size.equals("SHAKUSAN") ? "Brotdose, Taschentuchbox, Halbliterflasche" : size.equals("SHAKUYON") ? "Brotdose" : size.equals("FUTAHABA") ? "Kuchenschachtel, eine Weinflasche, Kleidung, Rundes" : size.equals("NISHAKU") ? "größere Kuchenschachtel" : size.equals("NISHI") ? "eine 1,8-Liter-Flasche, zwei Weinflaschen, Tasche" : size.equals("MIHABA") ? "1,8-Liter-Flasche, Karton mit zwei Flaschen, Einkaufstasche" : size.equals("LARGE") ? "große Tasche" : size.equals("YOHABA") ? "zwei bis vier Sitzkissen, Tischdecke" : size.equals("ITSUHABA") ? "fünf oder sechs Sitzkissen" : size.equals("MUHABA") ? "eine Garnitur Bettzeug" : "zwei Garnituren Bettzeug");
    }

    @Override
    public String twoKnotCrossed() {
        return "Den vorderen und den hinteren Zipfel über das Geschenk legen. Zum Verknoten reichen sie nicht. In der Mitte kreuzen, sodass einer nach links und einer nach rechts zeigt.";
    }

    @Override
    public String twoKnotRight() {
        return "Den rechten Zipfel hochheben und mit dem Zipfel verknoten, der nach rechts zeigt.";
    }

    @Override
    public String twoKnotTied() {
        return "Den linken Zipfel ebenso verknoten. Beide Knoten sind gleich weit von der Mitte entfernt.";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "Den vorderen und den hinteren Zipfel darüberlegen. Oben kreuzen und an der Rolle entlang legen.";
    }

    @Override
    public String twoKnotRollEnds() {
        return "Die linke und die rechte Seite über die Enden der Rolle schlagen.";
    }

    @Override
    public String twoKnotRollTied() {
        return "Jede Seite mit dem gekreuzten Zipfel verknoten, der ihr entgegenkommt.";
    }
}
