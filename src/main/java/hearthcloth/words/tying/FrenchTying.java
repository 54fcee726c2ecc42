package hearthcloth.words.tying;

/** The room of tying in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "Refermer un livre sur l’autre : l’intervalle devient le dos.";
    }

    @Override
    public String booksEnds() {
        return "Ramener le coin gauche et le coin droit sur les livres. Les croiser bien serrés dans l’intervalle.";
    }

    @Override
    public String booksLaid() {
        return "Étaler le carré en losange. Poser un livre près de vous et l’autre plus loin. Laisser entre eux un intervalle égal à leurs deux épaisseurs.";
    }

    @Override
    public String booksTied() {
        return "Torsader les deux bouts. Les ramener le long du dos et les nouer.";
    }

    @Override
    public String booksWound() {
        return "Rabattre le coin du bas sur le livre proche et le coin du haut sur l’autre livre.";
    }

    @Override
    public String bottleCrossed() {
        return "Resserrer le coin gauche et le coin droit. Les passer autour de la bouteille et les croiser derrière.";
    }

    @Override
    public String bottleHandle() {
        return "Pour faire une anse, défaire une moitié du nœud du haut. Torsader les deux bouts et les nouer ensemble.";
    }

    @Override
    public String bottleLaid() {
        return "Étaler le carré en losange. Poser la bouteille debout au milieu.";
    }

    @Override
    public String bottlePair() {
        return "Relever le coin du bas et le coin du haut. Les nouer au-dessus d’un nœud plat, tout près du goulot.";
    }

    @Override
    public String bottleTied() {
        return "Les ramener devant et les nouer là, bien serrés contre la bouteille.";
    }

    @Override
    public String bottlesLaid() {
        return "Étaler le carré en losange. Coucher les deux bouteilles en travers, fond contre fond, à un poing de distance.";
    }

    @Override
    public String bottlesStood() {
        return "Rentrer le coin du haut dans l’intervalle. Redresser les deux bouteilles : le tissu se plie entre les fonds.";
    }

    @Override
    public String bottlesTied() {
        return "Nouer les deux bouts au-dessus des bouteilles d’un nœud plat.";
    }

    @Override
    public String bottlesWound() {
        return "Ramener le coin du bas sur les bouteilles. Les rouler en s’éloignant de vous jusqu’au coin du haut.";
    }

    @Override
    public String careBottle() {
        return "Essayer d’abord le nœud au-dessus d’une table. D’ici là, porter la bouteille une main dessous.";
    }

    @Override
    public String careChildren() {
        return "Tenir les longs bouts et les boucles loin des petits enfants et des berceaux : un tissu noué peut se serrer autour du cou.";
    }

    @Override
    public String careFlames() {
        return "Tenir un cadeau emballé loin des bougies, des fourneaux et des lampes. Les bouts libres prennent feu en premier.";
    }

    @Override
    public String careFood() {
        return "Mettre d’abord les aliments dans leur boîte ou dans du papier. Laver le carré avant qu’il touche des aliments.";
    }

    @Override
    public String careSpills() {
        return "Ne pas s’en servir pour ce qui peut couler : un rouleau est couché.";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "le coin droit" : corner.equals("FAR") ? "le coin du haut" : corner.equals("LEFT") ? "le coin gauche" : corner.equals("NEAR") ? "le coin du bas" : corner.equals("FAR_RIGHT") ? "le coin en haut à droite" : corner.equals("FAR_LEFT") ? "le coin en haut à gauche" : corner.equals("NEAR_LEFT") ? "le coin en bas à gauche" : corner.equals("NEAR_RIGHT") ? "le coin en bas à droite" : "le carré");
    }

    @Override
    public String diamond() {
        return "Étaler le carré en losange, un coin vers vous, la face à montrer dessous. Poser le cadeau au milieu, son grand côté de gauche à droite.";
    }

    @Override
    public String diamondRoll() {
        return "Étaler le carré en losange. Poser le rouleau en travers, de gauche à droite.";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return "Le nœud est la part incertaine : un tissu fin prend moins de chaque coin, un tissu épais en prend plus. Si le nœud et son bout prennent " + least + " de chaque coin, un carré de " + small + " suffit ; s’ils prennent " + most + ", il faut " + large + ". Ce plan prévoit " + usual + ", ce qui convient à un coton léger avec des bouts d’environ " + end + ".";
    }

    @Override
    public String edgeFlaps() {
        return "Lisser les bords du carré autour du dessus, pour que les rabats le couvrent.";
    }

    @Override
    public String edgeLaid() {
        return "Étaler le carré bien droit devant vous, la face à montrer dessous. Poser le cadeau au milieu, ses bords parallèles aux bords du carré.";
    }

    @Override
    public String edgePair() {
        return "Relever deux coins opposés le long des angles du cadeau. Les nouer au-dessus du milieu.";
    }

    @Override
    public String edgeTied() {
        return "Nouer les deux autres coins par-dessus le premier nœud.";
    }

    @Override
    public String errandFar() {
        return "Ramener le coin du haut par-dessus et replier sa pointe dessous.";
    }

    @Override
    public String errandHidden() {
        return "Pour cacher le nœud, dégager la pointe du coin du haut et la poser sur le nœud.";
    }

    @Override
    public String errandNear() {
        return "Ramener le coin du bas sur le cadeau. Glisser sa pointe dessous, au bord opposé.";
    }

    @Override
    public String errandSides() {
        return "Relever le coin gauche et le coin droit et lisser les côtés vers l’intérieur.";
    }

    @Override
    public String errandTied() {
        return "Les nouer sur le dessus d’un seul nœud plat.";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "Ce carré est juste assez grand pour " + gift + " (" + tie + ").";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return "Ce carré est juste assez grand pour " + gift + " (" + tie + "). Il reste " + tail + " à chaque coin noué pour le nœud et son bout.";
    }

    @Override
    public String fitNearly(String gift) {
        return "Il convient pour " + gift + ".";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return "Cousu " + spare + " plus petit, il suffirait encore.";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return "Ce carré est " + less + " plus petit qu’il ne devrait pour " + gift + " (" + tie + "). Il se noue quand même : il reste " + tail + " à chaque coin noué pour le nœud et son bout, au lieu de " + usual + ".";
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "Ce carré se noue autour du cadeau : " + gift + " (" + tie + "). Il reste " + spare + " de plus que nécessaire pour " + reason + ".";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "Ce carré est trop petit pour " + gift + " (" + tie + ") : il manque " + lack + " pour " + reason + " (" + corner + "). Un carré de " + size + " est assez grand.";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "Avec les bouts habituels, il convient pour " + gift + ".";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "Ce carré emballe " + gift + " (" + tie + "). Il reste " + spare + " de plus que nécessaire pour " + reason + ".";
    }

    @Override
    public String flatFar() {
        return "Ramener le coin du haut par-dessus le tout. Rentrer sa pointe au bord du bas.";
    }

    @Override
    public String flatNear() {
        return "Ramener le coin du bas sur le cadeau. Là où sa pointe dépasse, la replier dessous.";
    }

    @Override
    public String flatSides() {
        return "Rabattre le côté gauche, puis le côté droit. Lisser chacun le long du bord du cadeau.";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "Ramener le coin du bas et le coin du haut par-dessus le milieu. Les nouer d’un nœud plat, bien serré sur le cadeau.";
    }

    @Override
    public String fourCornerSides() {
        return "Relever tout droit le coin gauche et le coin droit. Rabattre à plat contre les côtés, vers l’intérieur, le tissu qui dépasse.";
    }

    @Override
    public String fourCornerTied() {
        return "Nouer le coin gauche et le coin droit par-dessus le premier nœud. Étaler les quatre bouts.";
    }

    @Override
    public String knotFirst() {
        return "Poser le bout gauche sur le bout droit. Le passer derrière et vers le haut. C’est la moitié du nœud.";
    }

    @Override
    public String knotPull() {
        return "Tirer sur les deux bouts. Un nœud plat est à plat, ses bouts dans l’axe. Si les bouts sont en travers, c’est un nœud de vache, qui se défait. Défaire la seconde moitié et croiser dans l’autre sens.";
    }

    @Override
    public String knotSecond() {
        return "Poser ce même bout, maintenant à droite, de nouveau sur l’autre et le passer dans la boucle.";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "le nœud et ses bouts" : reason.equals("COVER") ? "couvrir le cadeau" : reason.equals("TUCK") ? "rentrer le dernier rabat" : "faire chevaucher les côtés");
    }

    @Override
    public String rollCrossed() {
        return "Les croiser là, pour qu’il en descende un de chaque côté.";
    }

    @Override
    public String rollEnds() {
        return "Rabattre les côtés sur les deux extrémités du rouleau. Les ramener le long du rouleau jusqu’au milieu.";
    }

    @Override
    public String rollTied() {
        return "Retourner le rouleau. Les nouer de l’autre côté d’un nœud plat.";
    }

    @Override
    public String rollWound() {
        return "Ramener le coin du bas sur le rouleau. Le rouler en s’éloignant de vous jusqu’au coin du haut.";
    }

    @Override
    public String roundHandle() {
        return "Pour faire une anse, passer le second nœud sous le premier. Serrer.";
    }

    @Override
    public String roundLaid() {
        return "Étaler le carré à plat. Poser la balle au milieu.";
    }

    @Override
    public String roundPair() {
        return "Nouer le coin du bas et le coin droit au-dessus de la balle. Laisser des bouts assez longs pour une boucle.";
    }

    @Override
    public String roundTied() {
        return "Nouer le coin du haut et le coin gauche.";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "La règle courante (" + rule + ") donne " + size + " (" + source + "). C’est " + more + " de plus que ce qu’il faut ici.";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "La règle courante (" + rule + ") donne " + size + " (" + source + "). C’est " + less + " de trop peu pour " + gift + ".";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "La règle courante (" + rule + ") donne " + size + " (" + source + "). C’est " + less + " de trop peu pour " + gift + ", à cause de sa hauteur.";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "diagonale = trois fois le plus grand côté" : "côté = trois fois la hauteur d’une bouteille");
    }

    @Override
    public String shortBooks() {
        return "Si les bouts torsadés sont courts, les nouer dans l’intervalle avant de refermer. Porter les livres sous le bras.";
    }

    @Override
    public String shortBottle() {
        return "Si les coins ne se rejoignent pas au-dessus du goulot, les nouer autour du goulot et le laisser visible.";
    }

    @Override
    public String shortCorners() {
        return "Si deux coins ne se rejoignent pas, les croiser sur le cadeau. Nouer chacun avec un coin de côté, comme pour le paquet à deux nœuds. Ou nouer les deux coins d’un même bord, puis les deux autres.";
    }

    @Override
    public String shortFlat() {
        return "Si le coin du haut n’atteint pas le bord du bas, le replier et l’épingler. Ou faire le paquet à un nœud.";
    }

    @Override
    public String shortRolled() {
        return "Si les bouts sont courts, rouler avec moins de tissu. Ou les nouer avec un ruban entre les deux.";
    }

    @Override
    public String shortRound() {
        return "Si deux coins sont courts, nouer les coins opposés au-dessus, sans anse.";
    }

    @Override
    public String shortTwoKnot() {
        return "Si un coin est court, déplacer le croisement vers lui. Ou nouer avec un ruban entre les deux.";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + " : " + percent + " de ce qui se voit" + (where.equals("top") ? ", sur le dessus" : where.equals("sides") ? ", sur les côtés" : where.equals("both") ? ", sur les côtés et le dessus" : "") + ".";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + " : visible seulement dans le nœud et ses bouts.";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + " : ne se voit pas.";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return "On voit " + percent + " de la pièce centrale" + (where.equals("top") ? ", sur le dessus" : where.equals("sides") ? ", sur les côtés" : where.equals("both") ? ", sur les côtés et le dessus" : "") + ".";
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return "On voit " + percent + " de la pièce centrale" + (where.equals("top") ? ", sur le dessus" : where.equals("sides") ? ", sur les côtés" : where.equals("both") ? ", sur les côtés et le dessus" : "") + " ; " + under + " se trouvent sous " + (thing.equals("box") ? "la boîte" : thing.equals("books") ? "les livres" : thing.equals("roll") ? "le rouleau" : thing.equals("ball") ? "la balle" : thing.equals("bottles") ? "les bouteilles" : "la bouteille") + ".";
    }

    @Override
    public String showsHearthInKnot() {
        return "La pièce centrale ne se voit que dans le nœud et ses bouts.";
    }

    @Override
    public String showsHearthInside() {
        return "La pièce centrale est repliée à l’intérieur.";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "La pièce centrale est cachée sous " + (thing.equals("box") ? "la boîte" : thing.equals("books") ? "les livres" : thing.equals("roll") ? "le rouleau" : thing.equals("ball") ? "la balle" : thing.equals("bottles") ? "les bouteilles" : "la bouteille") + ".";
    }

    @Override
    public String showsSpare() {
        return "Là où il y a deux chiffres, tout dépend des quatre coins libres : rentrés sous les rabats, ou laissés dehors comme ils tombent.";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "nouage à quatre coins" : tie.equals("EDGE_ALONG_EDGE") ? "nouage à quatre coins, boîte parallèle au carré" : tie.equals("ERRAND") ? "paquet à un nœud" : tie.equals("FLAT") ? "paquet plat" : tie.equals("TWO_KNOT") ? "paquet à deux nœuds" : tie.equals("ONE_BOTTLE") ? "une bouteille" : tie.equals("TWO_BOTTLES") ? "deux bouteilles" : tie.equals("ROUND") ? "objet rond" : tie.equals("BOOKS") ? "deux livres" : "rouleau");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "boîtes, objets empilés ou lourds" : tie.equals("EDGE_ALONG_EDGE") ? "boîtes sur un grand carré" : tie.equals("ERRAND") ? "boîtes portées à la main" : tie.equals("FLAT") ? "boîtes plates et vêtements pliés, sans nœud" : tie.equals("TWO_KNOT") ? "boîtes longues et nattes roulées" : tie.equals("ONE_BOTTLE") ? "une bouteille debout" : tie.equals("TWO_BOTTLES") ? "deux bouteilles pareilles" : tie.equals("ROUND") ? "balles, melons, objets ronds" : tie.equals("BOOKS") ? "deux livres pareils" : "coupons roulés, tubes, boîtes rondes");
    }

    @Override
    public String tradeAll(String enough) {
        return "Tailles vendues assez grandes : " + enough + ".";
    }

    @Override
    public String tradeNone(String small) {
        return "Toutes les tailles vendues pour les cadeaux sont trop petites ici : " + small + ".";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "Tailles vendues assez grandes : " + enough + ". Trop petites : " + small + ".";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "petits cadeaux, boîte à repas, enveloppe" : size.equals("SHAKUSAN") ? "boîte à repas, boîte de mouchoirs, bouteille d’un demi-litre" : size.equals("SHAKUYON") ? "boîte à repas" : size.equals("FUTAHABA") ? "boîte à gâteau, une bouteille de vin, vêtements, objets ronds" : size.equals("NISHAKU") ? "grande boîte à gâteau" : size.equals("NISHI") ? "une bouteille de 1,8 litre, deux bouteilles de vin, sac" : size.equals("MIHABA") ? "bouteille de 1,8 litre, carton de deux bouteilles, sac à provisions" : size.equals("LARGE") ? "grand sac" : size.equals("YOHABA") ? "deux à quatre coussins de sol, nappe" : size.equals("ITSUHABA") ? "cinq ou six coussins de sol" : size.equals("MUHABA") ? "une literie" : "deux literies");
    }

    @Override
    public String twoKnotCrossed() {
        return "Ramener le coin du bas et le coin du haut sur le cadeau. Ils sont trop courts pour être noués. Les croiser au milieu, l’un vers la gauche, l’autre vers la droite.";
    }

    @Override
    public String twoKnotRight() {
        return "Relever le coin droit et le nouer avec le coin tourné vers la droite.";
    }

    @Override
    public String twoKnotTied() {
        return "Nouer le coin gauche de la même façon. Les deux nœuds sont à la même distance du milieu.";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "Ramener le coin du bas et le coin du haut par-dessus. Les croiser et les tourner le long du rouleau.";
    }

    @Override
    public String twoKnotRollEnds() {
        return "Rabattre le côté gauche et le côté droit sur les extrémités du rouleau.";
    }

    @Override
    public String twoKnotRollTied() {
        return "Nouer chaque côté avec le coin croisé qui vient vers lui.";
    }
}
