package hearthcloth.words.mending;

/** The room of mending in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "la bande " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "nouveau plan après une erreur" : "nouveau plan de ce qui reste à couper");
    }

    @Override
    public String deedAllCut(String cloth) {
        return cloth + " coupé";
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return (made.equals("yes") ? "" : "pas encore : ") + (count == 0 || count == 1 ? "coupe " + cut + " du morceau " + piece : "coupes du morceau " + piece);
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "bande " + bar + " laissée " + (wrong.equals("FACE") ? "sur l’autre face" : "sur l’autre côté de l’ouvrage");
    }

    @Override
    public String deedMistake(String piece) {
        return "une erreur dans le morceau " + piece;
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "bande " + name + " cousue" : what.equals("measured") ? "bande " + name + " cousue, " + size : "étape " + name + " cousue");
    }

    @Override
    public String deedShort(String bar, String way) {
        return "bande " + bar + " trop courte : " + (way.equals("JOINED_STRIP") ? "raccorder une bandelette" : way.equals("ANEW") ? "refaire la bande" : way.equals("PIECED") ? "refaire la bande, raccordée" : "l’utiliser telle quelle et recouper l’ouvrage");
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "décousu : " + (what.equals("bar") ? "bande " + name : "étape " + name) + (more == 0 ? "" : " et " + more + " de plus");
    }

    @Override
    public String hearth() {
        return "la pièce centrale";
    }

    @Override
    public String noBar(String bar) {
        return "La bande " + bar + " ne peut pas être si courte ; mesurez-la encore, bouts vifs compris.";
    }

    @Override
    public String noLarge() {
        return "Elle a la taille prévue ; coupez ce qui dépasse et continuez.";
    }

    @Override
    public String noLeft() {
        return "Il ne reste pas assez de tissu pour cela ; choisissez une autre façon.";
    }

    @Override
    public String noNothing() {
        return "Une pièce de rien ne peut pas servir ; mesurez ce qu’il y a, ou prenez un autre morceau.";
    }

    @Override
    public String noShort(String bar) {
        return "La bande " + bar + " est assez longue : cousez-la, et coupez ce qui dépasse.";
    }

    @Override
    public String noWork() {
        return "L’ouvrage ne peut pas être si petit ; mesurez-le encore, bords vifs compris.";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "le morceau " + piece + " (" + fabric + ", " + size + ")";
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return "Recouper la bande " + bar + ", dans " + pieces + ".";
    }

    @Override
    public String shortBack() {
        return "Ce qui était coupé pour elle revient dans la réserve.";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return "La bande " + bar + " est assemblée avec " + pieces + ".";
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return "Raccorder à la bande " + bar + " une bandelette coupée à " + size + ", prise dans " + piece + ".";
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return "Recouper l’ouvrage cousu de " + less + " sur " + from + ", à " + to + " " + (way.equals("high") ? "de haut" : "de large") + ", et coudre la bande " + bar + " telle quelle.";
    }

    @Override
    public String small(String by, String size, String what) {
        return what + " est trop petite de " + by + " : elle mesure " + size + ".";
    }

    @Override
    public String smallAcross(String length) {
        return length + " en largeur";
    }

    @Override
    public String smallAlong(String length) {
        return length + " en longueur";
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return "Recouper " + what + ", dans " + pieces + ".";
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return (count == 0 || count == 1 ? "la bande " + bars + " à " + width + " de large" : "les bandes " + bars + " à " + width + " de large");
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return what + " est alors en " + now + ", et non en " + was + ".";
    }

    @Override
    public String waySmaller(String size, String what) {
        return "Utiliser " + what + " telle quelle ; le carré fera " + size + ".";
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return "Raccorder une bandelette à " + what + ", prise dans " + pieces + ".";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return "Utiliser " + what + " telle quelle, et couper " + bars + " ; le carré reste à " + size + ".";
    }
}
