package hearthcloth.words.ruling;

/** The room of ruling in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchRuling implements RulingWords {

    @Override
    public String asked() {
        return "pièce centrale, bandes et tours comme demandé";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String bars(String rule) {
        return "Bandes autour : " + rule + ".";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "Les bandes sont coupées à " + widths + " de large, et non : " + rule + ".";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "Les couleurs viennent comme le tissu, et non : " + ways + "." : "Couleurs : " + scheme + ", et non : " + ways + ".");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "La pièce centrale est coupée à " + size + ", soit " + share + " de la largeur du carré, et non : " + rule + ".";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "Une bande a " + (joins == 0 || joins == 1 ? "" + joins + " raccord" : "" + joins + " raccords") + ", et non " + most + " au plus.";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "Au milieu, c’est " + lies + ", et non " + wanted + ".";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return "Les bandes vont " + (found.equals("ROUND") ? "tout autour" : found.equals("PAIRS") ? "par paires opposées" : found.equals("TWO_SIDES") ? "sur deux côtés" : "dans un autre ordre") + ", et non " + (wanted.equals("ROUND") ? "tout autour" : wanted.equals("PAIRS") ? "par paires opposées" : "sur deux côtés") + ".";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return (rounds == 0 || rounds == 1 ? "Il y a un tour, et non " + rule + "." : "Il y a " + rounds + " tours, et non " + rule + ".");
    }

    @Override
    public String bendSize(String rule, String size) {
        return "Le carré mesure " + size + ", et non : " + rule + ".";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + " à " + most;
    }

    @Override
    public String colours(String rule) {
        return "Couleurs : " + rule + ".";
    }

    @Override
    public String giftBooks(String sizes) {
        return "deux livres de " + sizes + " chacun";
    }

    @Override
    public String giftBottle(String across, String high) {
        return "une bouteille de " + across + " de diamètre, " + high + " de haut";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "deux bouteilles de " + across + " de diamètre, " + high + " de haut";
    }

    @Override
    public String giftBox(String sizes) {
        return "une boîte " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "un rouleau de " + across + " de diamètre, " + length + " de long";
    }

    @Override
    public String giftRound(String across) {
        return "un objet rond de " + across + " de diamètre";
    }

    @Override
    public String hearth(String rule) {
        return "Pièce centrale, au milieu : " + rule + ".";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "" + width + " de large, coupées" : kind.equals("WIDTHS_FINISHED") ? "" + width + " de large, finies" : kind.equals("BETWEEN") ? "de " + width + " à " + most + " de large, coupées" : kind.equals("BETWEEN_FINISHED") ? "de " + width + " à " + most + " de large, finies" : kind.equals("SHARE") ? "de " + width + " à " + most + " % de la largeur du carré" : kind.equals("STRIPS") ? "aussi larges que vos bandes de tissu" : "selon vos tissus");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "selon vos tissus" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return "assez grande pour envelopper " + gift + ", " + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", coupée" : kind.equals("FINISHED") ? "" + size + ", finie" : kind.equals("SHARE") ? "de " + least + " à " + most + " % de la largeur du carré" : kind.equals("SQUARE") ? "le plus grand carré que donne un de vos morceaux" : "selon vos tissus");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "autant que vos tissus en donnent" : "" + (least.equals("none") ? "" : "" + least + " à ") + most);
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", fini" : kind.equals("WITHIN") ? "un carré de " + size + " à " + most + " de côté, aussi grand que vos tissus le permettent" : "aussi grande que vos tissus le permettent");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + " (" + idea + ")";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "Chaque bande est d’un seul morceau ; aucun raccord." : most == 1 ? "Une bande peut être raccordée : " + most + " raccord au plus, aucun morceau fini sous " + least + "." : "Une bande peut être raccordée : " + most + " raccords au plus, aucun morceau fini sous " + least + ".");
    }

    @Override
    public String middle(String middle) {
        return "Au milieu : " + (middle.equals("FAVOURITE") ? "votre tissu préféré" : middle.equals("LIGHTEST") ? "votre tissu le plus clair qui soit assez grand" : middle.equals("DARKEST") ? "votre tissu le plus foncé qui soit assez grand" : "un tissu quelconque") + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "Chaque bande va sur le côté suivant, en tournant." : order.equals("PAIRS") ? "Les bandes vont par paires opposées." : "Les bandes vont sur deux côtés seulement ; la pièce centrale reste dans un coin.");
    }

    @Override
    public String orderOpen() {
        return "L’ordre des bandes dépend de vos tissus.";
    }

    @Override
    public String rounds(String rule) {
        return "Tours de bandes : " + rule + ".";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "rabattue" : seam.equals("ssamsol") ? "ssamsol" : seam.equals("felled_and_trimmed") ? "rabattue et recoupée" : seam.equals("lapped") ? "agrafée" : seam.equals("french") ? "anglaise" : seam.equals("french_trimmed") ? "anglaise recoupée" : seam.equals("gamchimjil") ? "gamchimjil" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "Coutures : " + seam + ", " + narrow + " + " + wide + ". Ourlet : " + first + " + " + second + ", coins " + (corner.equals("MITRED") ? "à onglet" : "droits") + ".";
    }

    @Override
    public String size(String rule) {
        return "Taille du carré : " + rule + ".";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "boîtes, objets empilés ou lourds" : tie.equals("EDGE_ALONG_EDGE") ? "boîtes sur un grand carré" : tie.equals("ERRAND") ? "boîtes portées à la main" : tie.equals("FLAT") ? "boîtes plates et vêtements pliés, sans nœud" : tie.equals("TWO_KNOT") ? "boîtes longues et nattes roulées" : tie.equals("ONE_BOTTLE") ? "une bouteille debout" : tie.equals("TWO_BOTTLES") ? "deux bouteilles pareilles" : tie.equals("ROUND") ? "balles, melons, objets ronds" : tie.equals("BOOKS") ? "deux livres pareils" : "coupons roulés, tubes, boîtes rondes");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "nouage à quatre coins" : tie.equals("EDGE_ALONG_EDGE") ? "nouage à quatre coins, boîte parallèle au carré" : tie.equals("ERRAND") ? "paquet à un nœud" : tie.equals("FLAT") ? "paquet plat" : tie.equals("TWO_KNOT") ? "paquet à deux nœuds" : tie.equals("ONE_BOTTLE") ? "une bouteille" : tie.equals("TWO_BOTTLES") ? "deux bouteilles" : tie.equals("ROUND") ? "objet rond" : tie.equals("BOOKS") ? "deux livres" : "rouleau");
    }
}
