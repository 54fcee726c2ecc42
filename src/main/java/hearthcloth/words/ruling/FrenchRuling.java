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
    public String fileField(String field, String what) {
        return "« " + field + " » : " + what + ".";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "il y a ici « " + text + " » ; un fichier de plan dit " + plan + ", un modèle " + guideline;
    }

    @Override
    public String fileGuideline(String what) {
        return "Ce n’est pas un fichier de modèle : " + what + ".";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return "ligne " + line + " : " + (why.equals("AFTER") ? "il y a encore quelque chose après la fin du seul objet du fichier" : why.equals("EARLY") ? "le fichier finit trop tôt ; il a peut-être été envoyé ou enregistré en partie seulement" : why.equals("COLON") ? "il manque " + text + " après le nom d’un champ" : why.equals("COMMA_FIELD") ? "il manque " + text + ", ou une virgule après un champ" : why.equals("COMMA_LIST") ? "il manque " + text + ", ou une virgule dans une liste" : why.equals("DEEP") ? "c’est emboîté trop profondément" : why.equals("NAME") ? "il manque le nom d’un champ ; il se met entre guillemets" : why.equals("TWICE") ? "« " + text + " » y est deux fois ; enlevez-en un" : why.equals("OPEN_QUOTE") ? "un guillemet n’est pas refermé" : why.equals("LINE_END") ? "une ligne finit entre guillemets ; écrivez \\n pour une nouvelle ligne" : why.equals("ESCAPE") ? "" + text + " n’est pas une lettre de JSON ; écrivez deux barres obliques inverses pour une" : why.equals("CODE") ? "\\u demande quatre chiffres de 0 à f" : "une valeur n’est pas comprise ; les mots se mettent entre guillemets");
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "il faut ici un objet avec des champs, entre " + signs : kind.equals("LIST") ? "il faut ici une liste, entre " + signs : "il faut ici des mots entre guillemets");
    }

    @Override
    public String fileLong(String letters, String most) {
        return "cela fait " + letters + " lettres ; " + most + " y tiennent";
    }

    @Override
    public String fileMissing() {
        return "il manque";
    }

    @Override
    public String fileObject(String sign) {
        return "Le fichier ne contient pas d’objet ; son premier signe est " + sign + ".";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "Ce plan est un carré fait de chutes ; il n’a ni pièce centrale ni bandes à transmettre." : why.equals("HEARTH") ? "Aucune pièce de ce plan n’est la pièce centrale ; refaites le fichier du plan." : why.equals("NONE") ? "Ce plan n’a pas de pièces ; refaites le fichier du plan." : why.equals("MANY") ? "Ce plan a plus de pièces qu’un carré ne peut en avoir ici ; refaites le fichier du plan." : "Les pièces de ce plan ne vont pas ensemble ; refaites le fichier du plan.");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "l’image est trop grande ; réduisez-la à 330 ko au plus" : "ce n’est pas une image en base 64 ; remettez l’image");
    }

    @Override
    public String filePlan(String what) {
        return "Ce n’est pas un fichier de plan : " + what + ".";
    }

    @Override
    public String fileUnknown(String names) {
        return "ce champ n’est pas connu ici ; il y a " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "il manque ; écrivez un entier de " + least + " à " + most : "cela ne va pas ; écrivez un entier de " + least + " à " + most);
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
    public String plannerMissing() {
        return "Ce Hearthcloth a été construit sans le planificateur pour les pages ; lancez ideapage/build dans son dossier, puis construisez-le de nouveau.";
    }

    @Override
    public String rounds(String rule) {
        return "Tours de bandes : " + rule + ".";
    }

    @Override
    public String ruleBar(String text) {
        return "« " + text + " » n’est pas une bande ; les bandes s’appellent 1A, 1B et ainsi de suite";
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return "« " + text + " » ne va pas ; écrivez " + (rule.equals("SIZE") ? "open, une taille comme \"16 in\" ou \"16 to 20 in\", ou \"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open, largest square, une part comme \"30 to 40 %\" ou une taille comme \"14 in\"" : "open, strips, une part comme \"8 to 12 %\" ou des largeurs comme \"2 to 3 in\"");
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return "« " + text + " » ne va pas ; écrivez " + (none.equals("yes") ? "une longueur de " + most + " au plus" : "plus que zéro et au plus " + most);
    }

    @Override
    public String ruleRange(String text) {
        return "« " + text + " » n’est pas un intervalle ; écrivez d’abord la plus petite mesure, comme \"2 to 3 in\"";
    }

    @Override
    public String ruleReach(String text) {
        return "« " + text + " » est hors de portée ; écrivez plus que zéro et au plus 5 m, et vérifiez l’unité";
    }

    @Override
    public String ruleRounds(String most, String text) {
        return "« " + text + " » ne va pas ; écrivez un nombre de tours de 1 à " + most + ", deux comme \"2 to 4\", ou \"open\"";
    }

    @Override
    public String ruleSeam(String names, String text) {
        return "« " + text + " » n’est pas une couture connue ; il y a " + names;
    }

    @Override
    public String ruleShare(String text) {
        return "« " + text + " » n’est pas une part ; écrivez des entiers de 1 à 99, le plus petit d’abord, comme \"30 to 40 %\"";
    }

    @Override
    public String ruleWay(String names, String text) {
        return "« " + text + " » n’est pas une disposition des couleurs ; écrivez " + names;
    }

    @Override
    public String ruleWider() {
        return "la marge large enveloppe la marge étroite, elle doit être la plus large";
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
