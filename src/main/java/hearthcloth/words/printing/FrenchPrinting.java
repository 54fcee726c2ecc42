package hearthcloth.words.printing;

/** The room of printing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchPrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return (n == 0 || n == 1 ? "Morceau " + piece + ", " + fabric + ", " + size + ", avec " + n + " coupe" : "Morceau " + piece + ", " + fabric + ", " + size + ", avec " + n + " coupes");
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "Recto : " + title + ", " + size : "Verso : " + title + ", " + size);
    }

    @Override
    public String altPatches(int n) {
        return (n == 0 || n == 1 ? "" + n + " pièce" : "" + n + " pièces");
    }

    @Override
    public String altStep(String added, String step, String work) {
        return "Étape " + step + " : " + work + " et " + added + ", recto vers le haut, avant la couture";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + ", " + size + ".";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + ", " + size + ". Pour " + gift + ".";
    }

    @Override
    public String bagHow() {
        return "Découpez le long des pointillés et mettez chaque fiche dans son sachet, avec les morceaux nommés. Tailles en largeur × longueur, la longueur le long de la lisière.";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "morceau " + piece + ", " + size + " (" + patches + ")";
    }

    @Override
    public String bagSlips() {
        return "Fiches de sachet";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "Sachet " + n + ", " + name;
    }

    @Override
    public String beforeTitle() {
        return "Avant de couper";
    }

    @Override
    public String boxMeasure() {
        return "On doit mesurer";
    }

    @Override
    public String boxWay() {
        return "largeur × hauteur, recto vers le haut";
    }

    @Override
    public String cardMeasures(String size) {
        return "Mesure " + size + ".";
    }

    @Override
    public String cardOthers(int n) {
        return (n == 0 || n == 1 ? "Coudre l’autre de la même façon." : "Coudre les autres de la même façon.");
    }

    @Override
    public String cardThick(String places) {
        return "Épais : " + places + ". Ralentir là.";
    }

    @Override
    public String careTitle() {
        return "Attention";
    }

    @Override
    public String chosenTitle() {
        return "Choisi pour vous";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "Vu par des yeux aveugles au rouge" : eyes.equals("deutan") ? "Vu par des yeux aveugles au vert" : "Vu par des yeux aveugles au bleu");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "noir" : shade.equals("dark") ? "gris foncé" : shade.equals("middle") ? "gris" : shade.equals("light") ? "gris clair" : "blanc");
    }

    @Override
    public String coloursLeast() {
        return "Se voit le moins";
    }

    @Override
    public String coloursLike(String fabric) {
        return "comme " + fabric;
    }

    @Override
    public String coloursMost() {
        return "Se voit le plus";
    }

    @Override
    public String coloursSeams() {
        return "Coutures";
    }

    @Override
    public String coloursThread() {
        return "Le fil de chaque couture, par sa couleur. Celui qui se voit le moins cache les points irréguliers ; celui qui se voit le plus fait partie du dessin.";
    }

    @Override
    public String coloursTitle() {
        return "Ses couleurs";
    }

    @Override
    public String coloursValues() {
        return "Clair et foncé, en cinq degrés";
    }

    @Override
    public String corner() {
        return "Un coin";
    }

    @Override
    public String cornerFirst(String length) {
        return "Premier pli, à " + length + " du bord vif";
    }

    @Override
    public String cornerLast(String length) {
        return "Dernier pli, à " + length + " du bord vif : le bord fini";
    }

    @Override
    public String cornerLife() {
        return "Un coin, grandeur réelle";
    }

    @Override
    public String cornerMitre() {
        return "Onglet : piqué, coin plié en deux";
    }

    @Override
    public String cornerOff() {
        return "Coin coupé";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "Ligne " + row + " de la réserve" + (washed.equals("YES") ? ", lavé" : washed.equals("NO") ? ", non lavé" : "") + ". Dessiné à " + scale + ", mesures en " + (unit.equals("metric") ? "centimètres" : "pouces") + ".";
    }

    @Override
    public String cutHow() {
        return "Couper dans l’ordre des numéros. Chaque numéro est sur sa coupe, avec la mesure. La pointe de flèche montre le bord d’où mesurer. Les chutes à garder sont pâles et nommées. Ce qui est barré est trop petit pour être gardé. Sur chaque dessin, le droit-fil va de haut en bas. « Quart de tour » veut dire que la pièce est dessinée un quart de tour par rapport à sa place dans le carré.";
    }

    @Override
    public String cutLeft(String left) {
        return "Reste : " + left + ".";
    }

    @Override
    public String cutNothing() {
        return "Rien à couper : utiliser le morceau entier.";
    }

    @Override
    public String cutSheet(int n, String title) {
        return (n == 0 || n == 1 ? "" + title + ". " + n + " morceau. Couper dans l’ordre des numéros. La pointe de flèche de chaque cercle montre le bord d’où mesurer." : "" + title + ". " + n + " morceaux. Couper dans l’ordre des numéros. La pointe de flèche de chaque cercle montre le bord d’où mesurer.");
    }

    @Override
    public String cutTitle() {
        return "Couper";
    }

    @Override
    public String cutWhole() {
        return "Utiliser ces morceaux entiers";
    }

    @Override
    public String drawn(String scale) {
        return "Dessiné à " + scale + ".";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + ", dessiné à " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "Recto, avec rabats et ourlet" : "Verso, avec rabats et ourlet");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "Recto" : "Verso");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + ". " + size + " fini, ourlé. Dessiné à " + scale + ".";
    }

    @Override
    public String figureCuts() {
        return "Coupes";
    }

    @Override
    public String figureFinished() {
        return "Fini";
    }

    @Override
    public String figureJoins() {
        return "Raccords";
    }

    @Override
    public String figureLost() {
        return "Perte";
    }

    @Override
    public String figurePatches() {
        return "Pièces";
    }

    @Override
    public String figureSeams() {
        return "Coutures";
    }

    @Override
    public String figureThread() {
        return "Fil";
    }

    @Override
    public String grain() {
        return "droit-fil";
    }

    @Override
    public String grainNap() {
        return "droit-fil, sens du poil";
    }

    @Override
    public String hemTitle() {
        return "Ourler";
    }

    @Override
    public String item(String topic, String words) {
        return topic + " : " + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + " : " + what + ".";
    }

    @Override
    public String kitsEach(String shared) {
        return "Chaque morceau est dans un seul sachet" + (shared.equals("yes") ? ", sauf ceux que deux se partagent : là, le premier coupe avant le second." : " ; personne n’attend personne.");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return who + " coupe d’abord le morceau " + of + " ; ce qui reste, " + size + ", devient le morceau " + piece + ".";
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return "Le morceau " + piece + " est ce que " + who + " laisse du morceau " + of + " : coupez-le après " + who + ".";
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + " : " + (made.equals("no") ? "rien n’a pu se faire." : "pas comme demandé.") + " " + why;
    }

    @Override
    public String kitsNearest() {
        return "C’est le plus proche qui puisse se faire ; voir la liste d’achats.";
    }

    @Override
    public String kitsQuarters(int n) {
        return (n == 0 || n == 1 ? "" + n + " coupon (fat quarter)" : "" + n + " coupons (fat quarters)");
    }

    @Override
    public String kitsRunning(int n) {
        return "Lots pour " + (n == 0 || n == 1 ? "" + n + " carré" : "" + n + " carrés");
    }

    @Override
    public String kitsTitle() {
        return "Lots";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "En coupons (18 × 20 po au moins)" : "En coupons (45 × 50 cm au moins)") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "Au mètre, 44 po de large (40 po entre lisières)" : "Au mètre, 110 cm de large (102 cm entre lisières)") : "" + (unit.equals("in") ? "Au mètre, 60 po de large (58 po entre lisières)" : "Au mètre, 150 cm de large (145 cm entre lisières)"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "Aucune bande n’est raccordée." : n == 1 ? "Personne n’a plus de " + n + " raccord." : "Personne n’a plus de " + n + " raccords.");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " " + (way.equals("part") ? "de yard" : way.equals("one") ? "yard" : "yards");
    }

    @Override
    public String labelHearth() {
        return "centre";
    }

    @Override
    public String labelOffcut(String number) {
        return "chute " + number;
    }

    @Override
    public String legendFell() {
        return "Rabat, plus foncé";
    }

    @Override
    public String legendStitches() {
        return "Ligne de points";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + " (couleur pas encore connue)";
    }

    @Override
    public String legendWrong() {
        return "Hachuré : l’envers";
    }

    @Override
    public String lostJoins(int n) {
        return (n == 0 || n == 1 ? "Aucun plan de ce carré n’a moins de " + n + " raccord." : "Aucun plan de ce carré n’a moins de " + n + " raccords.");
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "Perte : chutes trop petites pour resservir. On entame " + touched + " de tissu ; aucun plan de ce carré ne se contente de moins de " + least + ".";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "Perte : chutes trop petites pour resservir. On entame " + touched + " de tissu ; aucun plan de ce carré ne se contente de moins de " + least + " ni ne perd moins de " + lost + ".";
    }

    @Override
    public String lostTouched(String touched) {
        return "Perte : chutes trop petites pour resservir. On entame " + touched + " de tissu.";
    }

    @Override
    public String matStays() {
        return "reste";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "Morceau " + piece + " sur le tapis, " + made + " coupes sur " + all + " faites";
    }

    @Override
    public String measuringPrint() {
        return "Imprimer à 100 %, sans ajuster. Poser à plat parmi les morceaux.";
    }

    @Override
    public String measuringRuler() {
        return "Poser une règle sur la ligne fine : 20 cm (7 7/8 po).";
    }

    @Override
    public String measuringSay() {
        return "Sinon, dire sa longueur en envoyant la photo.";
    }

    @Override
    public String measuringTitle() {
        return "Feuille de mesure";
    }

    @Override
    public String needsTitle() {
        return "Ce qu’il faut";
    }

    @Override
    public String netFold() {
        return "L’intérieur vers le haut, tel qu’il est devant vous. Plier le long des lignes ; là où elles se serrent, le tissu est froncé : y froisser le papier, ou le tordre.";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return "Un carré de " + size + " pour " + gift + ", dessiné à " + scale + ". Découpé, il emballe " + small + " en carton.";
    }

    @Override
    public String netSquare(String side) {
        return side + " de côté";
    }

    @Override
    public String netTitle(String tie) {
        return "Les plis : " + tie;
    }

    @Override
    public String page(String all, String number) {
        return "page " + number + " sur " + all;
    }

    @Override
    public String pictureCuts(String name) {
        return "Plan de coupe : " + name;
    }

    @Override
    public String pictureDone() {
        return "Noué";
    }

    @Override
    public String pictureKnot() {
        return "Un nœud plat";
    }

    @Override
    public String pictureNet() {
        return "Patron à plat, intérieur dessus : pliez le long des lignes";
    }

    @Override
    public String pictureTied() {
        return "Le cadeau noué, vu de dessus, de face et d’un coin";
    }

    @Override
    public String pictureTying() {
        return "Pendant le nouage";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + ", déjà coupé";
    }

    @Override
    public String piecesHow(String unit) {
        return "Chaque morceau avec ce qu’on y coupe. Mesures : largeur × longueur en " + (unit.equals("metric") ? "centimètres" : "pouces") + " ; le second nombre suit le droit-fil.";
    }

    @Override
    public String piecesTitle() {
        return "Tissus et morceaux";
    }

    @Override
    public String pinHatched() {
        return "Hachuré sur chaque image : l’envers du tissu.";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return added + " est dessus, " + (face.equals("front") ? "recto" : "verso") + " vers le haut ; dessous : " + work + ".";
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return wrapping + " dépasse de " + length + ". Cette marge plus large enveloppera l’autre.";
    }

    @Override
    public String pinStitching() {
        return "La ligne en tirets est la piqûre. Retirer chaque épingle avant que le pied l’atteigne.";
    }

    @Override
    public String pinTitle() {
        return "Étape 1, épinglée";
    }

    @Override
    public String seamTitle() {
        return "La couture";
    }

    @Override
    public String sectionFold() {
        return "Replier, surpiquer";
    }

    @Override
    public String sectionOpen() {
        return "Ouvrir, repasser";
    }

    @Override
    public String sectionStitch() {
        return "Piquer";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + " : côté enveloppé";
    }

    @Override
    public String sectionWraps(String name) {
        return name + " : enveloppe";
    }

    @Override
    public String sewTitle() {
        return "Coudre";
    }

    @Override
    public String shopNoWay() {
        return "Quelle que soit la quantité ajoutée d’un tissu, aucune façon de les faire n’a été trouvée.";
    }

    @Override
    public String shopNone() {
        return "Rien : tous les carrés se coupent dans ce que vous avez. Fil et outils sont nommés dans chaque guide.";
    }

    @Override
    public String shopTitle() {
        return "Liste d’achats";
    }

    @Override
    public String shopWays() {
        return "Une seule de ces façons suffit, avec ce que les autres laissent. Chacune a été essayée : les carrés en ont été planifiés. Lavez et repassez ce que vous achetez avant de couper.";
    }

    @Override
    public String slipsHow() {
        return "Découper sur les pointillés. Épingler chaque étiquette sur sa pièce dès qu’elle est coupée, sur la face qui sera le recto du carré. La flèche montre le haut du carré.";
    }

    @Override
    public String slipsRunning(String title) {
        return title + ", étiquettes";
    }

    @Override
    public String slipsSize(String size) {
        return size + ", à la coupe";
    }

    @Override
    public String slipsTitle() {
        return "Étiquettes des pièces";
    }

    @Override
    public String slipsTop() {
        return "haut";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "Endroit vers le haut" : showing.equals("WRONG") ? "Envers vers le haut" : "Sans envers");
    }

    @Override
    public String square(String side) {
        return "Ce carré mesure " + side + " de côté. Sinon, réimprimer à 100 % (pas « ajuster à la page »). Ne mesurer sur le papier que là où il est écrit « grandeur réelle ». Ailleurs, suivre les mesures écrites.";
    }

    @Override
    public String stepTrim() {
        return "recouper";
    }

    @Override
    public String stepWraps() {
        return "enveloppe";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + " ; bande " + alone;
    }

    @Override
    public String tableHow() {
        return "Coudre chaque couture comme à l’étape 1. « L’ouvrage » désigne tout ce qui est déjà cousu. Mesures : largeur × hauteur, recto vers le haut. Ralentir aux endroits épais, ou tourner le volant.";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + " (" + n + " parties avant)";
    }

    @Override
    public String tableMeasures() {
        return "Mesure";
    }

    @Override
    public String tableNewWraps() {
        return "Dans une bande raccordée, chaque nouvelle partie enveloppe la précédente.";
    }

    @Override
    public String tableOldWraps() {
        return "Dans une bande raccordée, chaque partie enveloppe la suivante.";
    }

    @Override
    public String tableSew() {
        return "Coudre";
    }

    @Override
    public String tableStep() {
        return "N°";
    }

    @Override
    public String tableThick() {
        return "Épais";
    }

    @Override
    public String tableTitle() {
        return "Toutes les coutures, dans l’ordre";
    }

    @Override
    public String tableWraps() {
        return "Enveloppe";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + ", " + size + " : " + (patches == 0 || patches == 1 ? "" + patches + " pièce" : "" + patches + " pièces") + " dans " + (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + (joins == 0 ? "" : joins == 1 ? ", " + joins + " raccord" : ", " + joins + " raccords") + ".";
    }

    @Override
    public String teacherDot() {
        return "Un point sur un carré marque l’endroit où se croisent le plus d’épaisseurs. Faites-y repasser à la vapeur et tourner le volant à la main.";
    }

    @Override
    public String teacherNoCross() {
        return "Aucune couture n’en croise une autre.";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "Le plus épais : " + plies + " épaisseurs à " + (places == 0 || places == 1 ? "" + places + " endroit" : "" + places + " endroits") + ", cousues à " + (count == 0 || count == 1 ? "l’étape " + steps : "ces étapes : " + steps) + ".";
    }

    @Override
    public String teacherTitle() {
        return "Pour l’enseignante ou l’enseignant";
    }

    @Override
    public String thickTitle() {
        return "Où ce sera épais";
    }

    @Override
    public String threadTitle() {
        return "Fil";
    }

    @Override
    public String tieCare() {
        return "Attention en nouant";
    }

    @Override
    public String tieKnot() {
        return "Le nœud plat";
    }

    @Override
    public String tieTitle() {
        return "Nouer";
    }

    @Override
    public String tiedCare() {
        return "Attention une fois noué";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return tie + ", pour : " + suited + ". Chaque flèche finit là où se trouve maintenant le coin.";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return tie + " (" + trade + "), pour : " + suited + ". Chaque flèche finit là où se trouve maintenant le coin.";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "Ce carré (" + size + ") suffit juste pour " + reason + ".";
    }

    @Override
    public String tiedKnot() {
        return "Le nœud";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "Ce carré (" + size + ") laisse " + spare + " de plus que prévu pour " + reason + ".";
    }

    @Override
    public String tiedNear() {
        return "Près du nœud (à une main environ), le vrai tissu se fronce, et les bouts libres tombent comme ils veulent.";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "La taille vendue juste au-dessus est " + size + ", pour : " + uses + ".";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "La taille vendue juste au-dessus est " + size + " (" + trade + "), pour : " + uses + ".";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "Le cadeau, noué : " + gift + ", " + tie;
    }

    @Override
    public String tiedShort() {
        return "Si un coin est trop court";
    }

    @Override
    public String tiedShows() {
        return "Ce qui se voit";
    }

    @Override
    public String tiedSure() {
        return "Ce qui est sûr de la taille";
    }

    @Override
    public String tiedTitle() {
        return "Le cadeau, noué";
    }

    @Override
    public String tiedTying() {
        return "Comment nouer";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + ".";
    }

    @Override
    public String toolsTitle() {
        return "Outils";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "De dessus" : view.equals("front") ? "De face" : view.equals("right") ? "De droite" : view.equals("spine") ? "Du dos" : "De biais");
    }

    @Override
    public String washingTitle() {
        return "Lavage";
    }
}
