package hearthcloth.words.planning;

/** The room of planning in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchPlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "Aucun morceau n’est assez large pour une bande coupée à " + width + " ; le plus large est " + piece + ".";
    }

    @Override
    public String betterCuts() {
        return "moins de coupes";
    }

    @Override
    public String betterFewerBars() {
        return "moins de bandes à coudre";
    }

    @Override
    public String betterHearth() {
        return "une pièce centrale plus grande";
    }

    @Override
    public String betterJoins() {
        return "moins de raccords";
    }

    @Override
    public String betterLost() {
        return "moins de tissu perdu";
    }

    @Override
    public String betterMoreBars() {
        return "plus de bandes à regarder";
    }

    @Override
    public String betterNarrower() {
        return "des bandes plus étroites";
    }

    @Override
    public String betterPieces() {
        return "plus de morceaux utilisés";
    }

    @Override
    public String betterSize() {
        return "un carré plus grand";
    }

    @Override
    public String betterTouched() {
        return "moins de réserve entamée";
    }

    @Override
    public String betterWider() {
        return "des bandes plus larges";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "Un log cabin parmi des chutes" : "Un log cabin");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return "Ces chutes ne suffisent pas pour " + across + " × " + down + " log cabins de " + (rounds == 0 || rounds == 1 ? "" + rounds + " tour" : "" + rounds + " tours") + " à " + size + " ; moins de blocs ou de tours en demandent moins.";
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + ", " + across + " × " + down + " log cabins" + (scraps.equals("yes") ? " parmi des chutes" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return "En bandes qui " + (direction.equals("ACROSS") ? "traversent le carré dans sa largeur" : "traversent le carré dans sa hauteur") + ", d’un bord à l’autre.";
    }

    @Override
    public String chosenBars(String width) {
        return "Bandes coupées à " + width + " de large.";
    }

    @Override
    public String chosenByHand() {
        return "Choisi à la main.";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "Un log cabin, " + (rounds == 0 || rounds == 1 ? "un tour" : "" + rounds + " tours") + ", " + order + ".";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return count + " log cabins, " + across + " × " + down + ", " + (rounds == 0 || rounds == 1 ? "un tour" : "" + rounds + " tours") + " pour chacun, " + order + ".";
    }

    @Override
    public String chosenHearth(String size) {
        return "La pièce centrale est coupée à " + size + ".";
    }

    @Override
    public String chosenMiddle(String piece) {
        return "La pièce " + piece + " est au milieu, telle quelle.";
    }

    @Override
    public String chosenMixed() {
        return "Le clair et le foncé sont mêlés : il n’y avait pas moyen de les séparer.";
    }

    @Override
    public String chosenOrder(String order) {
        return "L’ordre : " + order + ".";
    }

    @Override
    public String chosenOuter(String size) {
        return "Le tour extérieur est coupé sur mesure, pour que le carré fasse " + size + ".";
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "Bandes coupées à " + widths + " de large, la largeur de vos morceaux.";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "Largeurs de coupe des bandes, celles de vos morceaux : " + rounds + ".";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return "tour " + number + " : " + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return (n == 0 || n == 1 ? "Un tour." : "" + n + " tours.");
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "La taille : le plus grand carré trouvé ; tout le tissu réuni n’en ferait pas un de plus de " + limit + ".";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "La taille : le plus grand carré trouvé, " + side + " ; toutes ces chutes réunies n’en feraient pas un de plus de " + limit + ".";
    }

    @Override
    public String chosenSizeSteps() {
        return "La taille : la plus grande trouvée, par pas d’un quatorzième environ.";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "La taille : par pas de " + step + ", aucun carré plus grand n’est possible.";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "Ce carré est " + percent + " plus petit que souhaité.";
    }

    @Override
    public String chosenWith(String pieces) {
        return "Les pièces demandées y sont : " + pieces + ".";
    }

    @Override
    public String colour(String what) {
        return what + ".";
    }

    @Override
    public String colourApart() {
        return "aucun tissu ne se touche lui-même";
    }

    @Override
    public String colourBack(String what) {
        return "Sur l'envers : " + what + ".";
    }

    @Override
    public String colourCouldLie(String length) {
        return "Au plus " + length + " de ses coutures pourraient être mieux placés.";
    }

    @Override
    public String colourField() {
        return "les bandes forment un seul champ de tissu";
    }

    @Override
    public String colourHearthAll() {
        return "la pièce centrale ressort de tous les côtés";
    }

    @Override
    public String colourHearthNone() {
        return "la pièce centrale est discrète, proche de ce qui l’entoure";
    }

    @Override
    public String colourHearthSome(String share) {
        return "la pièce centrale ressort sur " + share + " de son bord";
    }

    @Override
    public String colourMixed(int n) {
        return (n == 0 || n == 1 ? "une bande est de plusieurs tissus" : "" + n + " bandes sont de plusieurs tissus");
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + " : " + share + " de ce qui se voit une fois noué.";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + " se voit quelle que soit la façon de nouer : de " + least + " à " + most + " de ce qui se voit une fois noué.";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + " : de " + least + " à " + most + " de ce qui se voit une fois noué, selon la position des coins libres.";
    }

    @Override
    public String colourPrice(int n) {
        return (n == 0 || n == 1 ? "Une coupe de plus que le minimum trouvé, pour ses couleurs." : "" + n + " coupes de plus que le minimum trouvé, pour ses couleurs.");
    }

    @Override
    public String colourPriceJoins(int n) {
        return (n == 0 || n == 1 ? "Un raccord de plus que le minimum trouvé, pour ses couleurs." : "" + n + " raccords de plus que le minimum trouvé, pour ses couleurs.");
    }

    @Override
    public String colourProven() {
        return "Aucun autre choix de tissu par bande n’est meilleur ; c’est prouvé.";
    }

    @Override
    public String colourSame(String share) {
        return "un tissu se touche lui-même sur " + share + " des coutures entre bandes";
    }

    @Override
    public String colourTied(String what) {
        return "Sur les bords visibles une fois noué : " + what + ".";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "Aucun tissu de la réserve ne s’appelle « " + name + " » ; il y a " + names + ".";
    }

    @Override
    public String good(String idea, String points) {
        return idea + " ; " + points + ".";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + ".";
    }

    @Override
    public String heapEmpty() {
        return "Il n’y a pas de tissu ; ajouter au moins un morceau.";
    }

    @Override
    public String hearth() {
        return "la pièce centrale";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "Aucun morceau ne contient la pièce centrale, coupée à " + size + " ; le meilleur est " + piece + ".";
    }

    @Override
    public String moreAdded(String pieces) {
        return "Cela irait en ajoutant : " + pieces + ".";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return number + " de " + fabric + ", " + size;
    }

    @Override
    public String moreTime() {
        return "Un plan demande plus de temps ; refaire le plan avec une limite de temps plus longue.";
    }

    @Override
    public String needFabrics() {
        return "Vous n’avez pas assez de ces tissus pour aucun des plans de couleurs essayés.";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return "La disposition la plus économe demande " + takes + " avec coutures et ourlet. Tout votre tissu réuni fait " + has + " : il en faut environ " + more + " de plus.";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "tout autour" : order.equals("PAIRS") ? "paires opposées" : "deux côtés");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + ", " + size + " (ligne " + line + ")";
    }

    @Override
    public String pointFewestBars(String n) {
        return "le moins de bandes à coudre, " + n;
    }

    @Override
    public String pointFewestCuts(String n) {
        return "le moins de coupes, " + n;
    }

    @Override
    public String pointFewestJoins(String n) {
        return "le moins de raccords, " + n;
    }

    @Override
    public String pointJoins(int n) {
        return (n == 0 || n == 1 ? "un raccord" : "" + n + " raccords");
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return (n == 0 || n == 1 ? "un raccord, aucun n’en a moins" : "" + n + " raccords, aucun n’en a moins");
    }

    @Override
    public String pointLargest() {
        return "le plus grand de tous";
    }

    @Override
    public String pointLargestHearth() {
        return "la plus grande pièce centrale";
    }

    @Override
    public String pointLeastLost() {
        return "le moins de tissu perdu";
    }

    @Override
    public String pointLeavesMost() {
        return "laisse la réserve la plus entière";
    }

    @Override
    public String pointMostBars(String n) {
        return "le plus de bandes à regarder, " + n;
    }

    @Override
    public String pointMostPieces(String n) {
        return "utilise le plus de morceaux, " + n;
    }

    @Override
    public String pointNarrowest() {
        return "les bandes les plus étroites";
    }

    @Override
    public String pointNoJoin() {
        return "aucune bande n’a besoin de raccord";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "le seul sans coupe";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "le seul sans raccord";
    }

    @Override
    public String pointThan(String better) {
        return better + " que le premier";
    }

    @Override
    public String pointWidest() {
        return "les bandes les plus larges";
    }

    @Override
    public String rulesNone() {
        return "Aucun carré ne les respecte toutes, bien que beaucoup aient été essayés.";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "Deux moitiés" : scheme.equals("ROUNDS") ? "Anneau par anneau" : scheme.equals("TURNS") ? "Tour à tour" : scheme.equals("FIELD") ? "Un seul champ" : scheme.equals("SPIRAL") ? "Spirale" : scheme.equals("SCATTERED") ? "Bien répartis" : scheme.equals("GRADED") ? "Du clair au foncé" : scheme.equals("FRAMES") ? "Cadres" : scheme.equals("ACCENT") ? "Une chute vive" : scheme.equals("ALL") ? "De toute la réserve" : scheme.equals("FALLS") ? "Comme le tissu vient" : scheme.equals("OUTWARDS") ? "Le plus beau dehors" : "Votre choix");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "le clair et le foncé se rencontrent sur la diagonale" : scheme.equals("ROUNDS") ? "chaque tour a son tissu" : scheme.equals("TURNS") ? "le clair et le foncé alternent, bande par bande" : scheme.equals("FIELD") ? "la pièce centrale est seule dans un même tissu" : scheme.equals("SPIRAL") ? "le clair et le foncé tournent côte à côte vers l’extérieur" : scheme.equals("SCATTERED") ? "un tissu par bande, jamais à côté de lui-même" : scheme.equals("GRADED") ? "chaque tour est plus foncé que celui qu’il entoure" : scheme.equals("FRAMES") ? "deux tissus alternent, tour par tour" : scheme.equals("ACCENT") ? "un tissu vif ressort en quelques endroits" : scheme.equals("ALL") ? "les tissus n’importe où" : scheme.equals("FALLS") ? "les bandes sont coupées là où le tissu va le plus loin" : scheme.equals("OUTWARDS") ? "le tissu choisi est là où il se voit une fois noué" : "choisi à la main");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "des tissus qui se partagent nettement en clairs et foncés, assez de chaque" : scheme.equals("TURNS") ? "des tissus qui se partagent nettement en clairs et foncés, assez de chaque" : scheme.equals("SPIRAL") ? "des tissus qui se partagent nettement en clairs et foncés, assez de chaque" : scheme.equals("ROUNDS") ? "assez d’un même tissu pour chaque tour, autre que celui de la pièce centrale" : scheme.equals("FIELD") ? "assez d’un même tissu pour toutes les bandes, et un autre pour la pièce centrale" : scheme.equals("SCATTERED") ? "assez de tissus différents pour qu’aucun ne touche lui-même" : scheme.equals("GRADED") ? "un tissu par tour, chacun plus foncé que le tour intérieur" : scheme.equals("FRAMES") ? "deux tissus, l’un nettement plus clair, assez de chaque pour ses tours" : scheme.equals("ACCENT") ? "un tissu vif à côté de plus calmes" : "du tissu, rien de plus");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "Aucun carré trouvé ne mérite le nom « " + scheme + " » ; il faut " + needs + ".";
    }

    @Override
    public String scrapsByHand() {
        return "Assemblé à la main";
    }

    @Override
    public String scrapsMore(String size) {
        return "Avec un morceau de plus de " + size + ", c’est possible.";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "Il n’y a pas de pièce " + piece + " où couper un morceau ; cherchez-la dans la réserve.";
    }

    @Override
    public String scrapsNone() {
        return "Aucun carré ne peut être fait de ces chutes ; il en faut davantage, ou de plus grandes.";
    }

    @Override
    public String scrapsShort(String area) {
        return "De quelque façon qu’on place ces chutes, il manque " + area + " une fois les coutures déduites.";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "Les chutes comme elles viennent" : choice.equals("WHOLE") ? "Aucune chute coupée en deux" : choice.equals("SMALL") ? "Beaucoup de petites chutes" : choice.equals("LARGE") ? "Peu de grandes chutes" : choice.equals("EVEN") ? "Des tailles plus proches" : choice.equals("CALM") ? "Des couleurs voisines" : choice.equals("ALIKE") ? "Des tailles voisines" : "Clair contre foncé");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "Aucun morceau n’est assez grand pour une pièce qui montre " + length + " dans chaque sens ; demander un --least-piece plus petit.";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return (n == 0 || n == 1 ? "" + n + " chute : " + whole + " telles quelles, " + trimmed + " rognées, " + parted + " coupées en deux ; " + lost + " de ce qui est cousu est rogné et perdu." : "" + n + " chutes : " + whole + " telles quelles, " + trimmed + " rognées, " + parted + " coupées en deux ; " + lost + " de ce qui est cousu est rogné et perdu.");
    }

    @Override
    public String seamsApart() {
        return "Aucun tissu ne touche lui-même.";
    }

    @Override
    public String seamsClear(String clear) {
        return "Aucune couture ne finit à moins de " + clear + " d’une autre de part et d’autre d’une troisième.";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return (n == 0 || n == 1 ? "À un endroit, des coutures finissent à moins de " + clear + " l’une de l’autre de part et d’autre d’une troisième ; le guide dit où c’est épais." : "À " + n + " endroits, des coutures finissent à moins de " + clear + " l’une de l’autre de part et d’autre d’une troisième ; le guide dit où c’est épais.");
    }

    @Override
    public String seamsNowhere() {
        return "Nulle part quatre coutures ne se rencontrent.";
    }

    @Override
    public String seamsThick(int n) {
        return (n == 0 || n == 1 ? "À un endroit, des coutures se rejoignent de part et d’autre d’une troisième ; le guide dit où c’est épais." : "À " + n + " endroits, des coutures se rejoignent de part et d’autre d’une troisième ; le guide dit où c’est épais.");
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "Tous pareils" : setting.equals("STRAIGHT_FURROW") ? "Sillons droits" : setting.equals("BARN_RAISING") ? "Losanges (barn raising)" : setting.equals("SUNSHINE_AND_SHADOW") ? "Soleil et ombre" : "Tournés au hasard");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "Chaque bloc est tourné de la même façon." : setting.equals("STRAIGHT_FURROW") ? "Le clair et le foncé forment des bandes d’un coin à l’autre." : setting.equals("BARN_RAISING") ? "Le clair et le foncé partent du milieu en carrés sur pointe." : setting.equals("SUNSHINE_AND_SHADOW") ? "Les moitiés claires de quatre blocs se rejoignent, et les foncées aussi." : "Chaque bloc est tourné au hasard.");
    }

    @Override
    public String shapeComes(String sizes) {
        return "Cette pièce centrale avec ces bandes donne " + sizes + " ; demander l’une de ces tailles, ou laisser la pièce centrale ou les bandes à la réserve.";
    }

    @Override
    public String shapeNone(String size) {
        return "Aucune pièce centrale avec de telles bandes ne donne " + size + " ; laisser l’une des deux à la réserve, ou demander un autre nombre de tours.";
    }

    @Override
    public String shapeNoneAny() {
        return "Aucune pièce centrale avec de telles bandes ne donne un carré ; laisser l’une des deux à la réserve, ou demander un autre nombre de tours.";
    }

    @Override
    public String shapeNothing() {
        return "Avec ces coutures, il ne resterait rien de la pièce centrale ou des bandes ; les agrandir.";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return size + " avec " + (rounds == 0 || rounds == 1 ? "un tour" : "" + rounds + " tours");
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return "Il manque " + (sure.equals("proven") ? "au moins" : "environ") + " " + length + " d’un de " + number + " tissus, par exemple " + fabric + ", en " + width + " de large, pour " + what + ".";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "Le carré seul fait " + size + " ; tout le tissu réuni fait " + has + " : il manque au moins " + missing + " avant toute couture.";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return "Il manque " + (sure.equals("proven") ? "au moins" : "environ") + " " + length + " de " + fabrics + " en " + width + " de large, pour " + what + ".";
    }

    @Override
    public String stashEmpty() {
        return "La réserve est vide ; ajouter au moins un morceau.";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + ", " + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "Certains morceaux sont lavés (comme " + washed + ", " + washedFabric + ") et d’autres non (comme " + unwashed + ", " + unwashedFabric + ") : ils rétréciront différemment. Tout laver et repasser avant de couper.";
    }
}
