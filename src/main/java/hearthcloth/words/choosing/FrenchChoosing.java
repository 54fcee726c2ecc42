package hearthcloth.words.choosing;

/** The room of choosing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "étroites, coupées à " + width : "larges, coupées à " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "centre :" : kind.equals("show") ? "visible :" : kind.equals("only") ? "seulement :" : kind.equals("without") ? "sans :" : kind.equals("first") ? "d’abord :" : kind.equals("scheme") ? "couleurs :" : kind.equals("with") ? "avec :" : kind.equals("contrast") ? "contraste :" : kind.equals("bars") ? "bandes :" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "il faut : " + what;
    }

    @Override
    public String chipNoGift() {
        return "pas encore de cadeau";
    }

    @Override
    public String chipNoPiece() {
        return "aucun morceau assez grand";
    }

    @Override
    public String chipNotTogether() {
        return "pas trouvé avec le premier";
    }

    @Override
    public String chipQuick() {
        return "le moins de coutures d’abord";
    }

    @Override
    public String chooseNone() {
        return "Il n’y a pas encore de carré pour cela.";
    }

    @Override
    public String chooseSee() {
        return "Voir ce que permet votre réserve";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "le plus contrasté possible" : contrast.equals("reads") ? "la cabane en rondins se lit" : contrast.equals("easy") ? "entre les deux" : contrast.equals("quiet") ? "le plus calme possible" : "tout se fond en un seul champ");
    }

    @Override
    public String countPieces(int n, String name) {
        return (n == 0 || n == 1 ? "" + name + ", " + n + " morceau" : "" + name + ", " + n + " morceaux");
    }

    @Override
    public String foundBack() {
        return "Retour à tous";
    }

    @Override
    public String foundBackFace() {
        return "Verso";
    }

    @Override
    public String foundBeside() {
        return "Côte à côte";
    }

    @Override
    public String foundCannot() {
        return "Ce carré n’est pas possible avec cette réserve.";
    }

    @Override
    public String foundFailed() {
        return "La recherche a buté sur cette réserve. Changez un souhait et cherchez de nouveau.";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + " · sans raccord · " + lost + " perdu" : joins == 1 ? "" + patches + " · " + joins + " raccord · " + lost + " perdu" : "" + patches + " · " + joins + " raccords · " + lost + " perdu");
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + " · " + lost + " perdu";
    }

    @Override
    public String foundFront(String size, String title) {
        return "Recto : " + title + ", " + size;
    }

    @Override
    public String foundGone() {
        return "Cette proposition n’existe plus ; voici les actuelles.";
    }

    @Override
    public String foundJoins(String joins) {
        return "Raccords : " + joins + ".";
    }

    @Override
    public String foundKept() {
        return "Gardé parmi vos carrés.";
    }

    @Override
    public String foundKeptTap() {
        return "Gardé parmi vos carrés. Touchez une bande pour la changer.";
    }

    @Override
    public String foundLooking() {
        return "On parcourt votre réserve";
    }

    @Override
    public String foundMore() {
        return "En montrer quatre autres";
    }

    @Override
    public String foundNearest() {
        return "Le plus proche qui soit possible est celui-ci.";
    }

    @Override
    public String foundNotYet() {
        return "Aucune façon de le faire avec cette réserve n’a encore été trouvée.";
    }

    @Override
    public String foundOneScale() {
        return "Dessinés à la même échelle.";
    }

    @Override
    public String foundPatches(int n) {
        return (n == 0 || n == 1 ? "" + n + " pièce" : "" + n + " pièces");
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "Recherche en cours." : "" + n + " pour l’instant, la recherche continue.");
    }

    @Override
    public String foundStop() {
        return "Arrêter la recherche";
    }

    @Override
    public String foundStopped() {
        return "Arrêté ; voici le meilleur trouvé.";
    }

    @Override
    public String foundTake() {
        return "Prendre celui-ci";
    }

    @Override
    public String foundTakeNamed(String title) {
        return "Prendre " + title;
    }

    @Override
    public String galleryAddWish() {
        return "+ souhait";
    }

    @Override
    public String galleryChange() {
        return "Changer";
    }

    @Override
    public String galleryDropWishes() {
        return "Commencer sans";
    }

    @Override
    public String galleryEmpty() {
        return "Mettez quelque chose sur la table";
    }

    @Override
    public String galleryEmptySays() {
        return "Les carrés se font avec vos propres morceaux, et il n’y en a pas encore.";
    }

    @Override
    public String galleryFor(String gift) {
        return "pour " + gift + ".";
    }

    @Override
    public String galleryKeepWishes() {
        return "Garder ces souhaits";
    }

    @Override
    public String galleryKept() {
        return "Carrés gardés";
    }

    @Override
    public String galleryLarge() {
        return "aussi grand que le permet la réserve.";
    }

    @Override
    public String galleryNoneLeft() {
        return "Vos souhaits ne laissent aucun morceau. Retirez-en un.";
    }

    @Override
    public String gallerySayGift() {
        return "Dire ce qu’il enveloppera";
    }

    @Override
    public String gallerySpent() {
        return "Chaque morceau est déjà retenu";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "Retirer : " + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "Ce que peut donner votre réserve";
    }

    @Override
    public String galleryWaiting(String gift) {
        return "Vous aviez des souhaits pour " + gift + ". Valent-ils aussi pour celui-ci ?";
    }

    @Override
    public String galleryWish() {
        return "Vos souhaits";
    }

    @Override
    public String giftCloth() {
        return "Je connais le carré, pas le cadeau";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 ou 90 x 70" : "38 1/2 ou 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "Sa taille, " + unit;
    }

    @Override
    public String giftHow() {
        return "Comment le mesurer ?";
    }

    @Override
    public String giftHowSays(String unit) {
        return "Mesurez l’objet comme il sera posé : le plus grand côté, le côté en travers et la hauteur. Comptez les poignées, couvercles et nœuds. Une chose molle se mesure serrée comme elle sera nouée. " + (unit.equals("metric") ? "Écrivez 30 ou 30,5." : "Écrivez 12, 12 1/2 ou 12,5 ; en centimètres aussi : 30 cm.");
    }

    @Override
    public String giftKinds() {
        return "Sorte de cadeau";
    }

    @Override
    public String giftPlanSize() {
        return "Prévoir cette taille";
    }

    @Override
    public String giftRuler() {
        return "Votre règle";
    }

    @Override
    public String giftShow() {
        return "Montrer";
    }

    @Override
    public String giftType() {
        return "Écrivez sur le dessin. Une fraction ou un nombre décimal conviennent.";
    }

    @Override
    public String giftWhatTies() {
        return "Que peut-il nouer ?";
    }

    @Override
    public String heldKind() {
        return "Sorte d’objet";
    }

    @Override
    public String heldLargest() {
        return "Le plus grand possible";
    }

    @Override
    public String heldSmall() {
        return "trop petit pour ce nouage";
    }

    @Override
    public String heldTie() {
        return "Nouage";
    }

    @Override
    public String heldTitle() {
        return "Ce que ce carré peut nouer";
    }

    @Override
    public String leftAside(int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau mis de côté" : "" + n + " morceaux mis de côté");
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau retenu pour " + cloth : "" + n + " morceaux retenus pour " + cloth);
    }

    @Override
    public String leftMore(String before, String next) {
        return before + " ; " + next;
    }

    @Override
    public String leftOut(String what) {
        return "Laissé de côté : " + what + ".";
    }

    @Override
    public String leftShared(String what) {
        return "Pris aussi : " + what + ".";
    }

    @Override
    public String leftUnuse() {
        return "Les laisser de côté";
    }

    @Override
    public String leftUse() {
        return "Les prendre aussi";
    }

    @Override
    public String lovedFile() {
        return "Un jardin, un mur : PNG ou JPEG. Seules ses couleurs sont gardées";
    }

    @Override
    public String lovedFind() {
        return "Trouver mes tissus les plus proches";
    }

    @Override
    public String lovedList() {
        return "Les couleurs de votre image et vos tissus les plus proches";
    }

    @Override
    public String lovedNone() {
        return "Aucun de vos tissus n’est proche des couleurs de cette image ; tous peuvent servir.";
    }

    @Override
    public String lovedNothing() {
        return "rien d’approchant";
    }

    @Override
    public String lovedTitle() {
        return "Les couleurs d’une image que vous aimez";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + ", mi-clair, mi-foncé" : scheme.equals("ROUNDS") ? "Anneaux autour de " + hearth : scheme.equals("TURNS") ? "Clair et foncé autour de " + hearth : scheme.equals("FIELD") ? "" + hearth + " dans un champ de " + most : scheme.equals("SPIRAL") ? "Une spirale depuis " + hearth : scheme.equals("SCATTERED") ? "" + hearth + " parmi tant d’autres" : scheme.equals("GRADED") ? "" + hearth + " vers le crépuscule" : scheme.equals("FRAMES") ? "" + hearth + " dans des cadres de " + most : scheme.equals("ACCENT") ? "" + hearth + " et une chute vive" : scheme.equals("OUTWARDS") ? "" + hearth + " au cœur, le plus beau dehors" : "" + most + " autour de " + hearth);
    }

    @Override
    public String nameSeams(int n, String title) {
        return (n == 0 || n == 1 ? "" + title + ", " + n + " couture" : "" + title + ", " + n + " coutures");
    }

    @Override
    public String tiesCannot(String most) {
        return "plus que vos morceaux : " + most + " de côté au plus";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return size + " de côté, fini ; " + tie + ".";
    }

    @Override
    public String tiesGo() {
        return "Que peut donner ma réserve ?";
    }

    @Override
    public String tiesJust() {
        return "Montrez-moi quelque chose";
    }

    @Override
    public String tiesLaid() {
        return "Comment il se pose sur le carré";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "pour les choses lourdes" : tie.equals("EDGE_ALONG_EDGE") ? "sur un grand carré" : tie.equals("ERRAND") ? "à porter à la main" : tie.equals("FLAT") ? "sans nœud" : tie.equals("TWO_KNOT") ? "pour ce qui est long" : tie.equals("ONE_BOTTLE") ? "debout" : tie.equals("TWO_BOTTLES") ? "côte à côte" : tie.equals("ROUND") ? "pour ce qui est rond" : tie.equals("BOOKS") ? "pour deux pareils" : "couché");
    }

    @Override
    public String tiesRange(String least, String most) {
        return least + " avec des bouts courts, " + most + " avec des longs ; près d’enfants, de flammes ou de machines, les garder courts.";
    }

    @Override
    public String tiesSee() {
        return "Le voir noué, pas à pas";
    }

    @Override
    public String tiesSquare(String size) {
        return "carré de " + size;
    }

    @Override
    public String tiesTheirs() {
        return "Choisissez pour moi";
    }

    @Override
    public String tiesTheirsNote() {
        return "montre le plus de tissu";
    }

    @Override
    public String tiesTitle() {
        return "Comment le nouer ?";
    }

    @Override
    public String tiesUnsized() {
        return "Écrivez les mesures sur le dessin ; chaque nouage dit alors la taille de carré qu’il faut.";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "des chutes telles quelles" : way.equals("among") ? "une cabane en rondins parmi des chutes" : way.equals("two") ? "quatre petites cabanes en rondins" : way.equals("three") ? "neuf petites cabanes en rondins" : way.equals("four") ? "seize petites cabanes en rondins" : "une pièce centrale et des bandes autour");
    }

    @Override
    public String wishAgain() {
        return "Chercher de nouveau";
    }

    @Override
    public String wishAlso() {
        return "Aussi ce que retient un autre carré";
    }

    @Override
    public String wishAny() {
        return "libre";
    }

    @Override
    public String wishBands() {
        return "Bandes d’un bord à l’autre";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "en travers du tissu" : way.equals("down") ? "dans la hauteur du tissu" : "comme cela vient");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "Bandes, coupées, " + unit;
    }

    @Override
    public String wishBars() {
        return "Bandes et coutures";
    }

    @Override
    public String wishBefore() {
        return "le carré d’avant";
    }

    @Override
    public String wishColours() {
        return "Couleurs";
    }

    @Override
    public String wishContrast() {
        return "Contraste";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "Le plus contrasté possible" : contrast.equals("reads") ? "La cabane en rondins se lit" : contrast.equals("easy") ? "Entre les deux" : contrast.equals("quiet") ? "Le plus calme possible" : "Tout se fond en un seul champ");
    }

    @Override
    public String wishCutting() {
        return "Couper une chute en deux";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "jamais ; seuls les bords sont rognés" : rule.equals("cut") ? "quand c’est utile" : "les deux");
    }

    @Override
    public String wishExact() {
        return "Tailles, ordre, assemblage";
    }

    @Override
    public String wishGood() {
        return "Votre réserve se prête à";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return (kind.equals("HALVES") ? "vos clairs et vos foncés sont bien distincts" : kind.equals("SPIRAL") ? "vos clairs et vos foncés sont bien distincts" : kind.equals("TURNS") ? "vos clairs et vos foncés sont bien distincts" : kind.equals("GRADED") ? "vos tissus vont du clair au foncé par degrés réguliers" : kind.equals("ACCENT") ? "" + fabric + " est plus vif que tous les autres" : kind.equals("SCATTERED") ? "vous avez beaucoup de tissus et aucun ne domine" : kind.equals("FIELD") ? "la moitié de la réserve ou plus est en " + fabric : kind.equals("FRAMES") ? "deux tissus, dont un nettement plus clair, font l’essentiel" : "il y a assez de plusieurs tissus pour un tour chacun");
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "La pièce centrale en" : what.equals("show") ? "Visible une fois noué" : "Sans");
    }

    @Override
    public String wishHearth(String unit) {
        return "Pièce centrale, coupée, " + unit;
    }

    @Override
    public String wishMiddle() {
        return "Au milieu, non coupée";
    }

    @Override
    public String wishMixed() {
        return "Mêlé à";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "Rogner au plus d’une pièce, " + unit;
    }

    @Override
    public String wishNarrow() {
        return "Bandes étroites";
    }

    @Override
    public String wishOpen() {
        return "Que puis-je laisser ouvert ?";
    }

    @Override
    public String wishOpenSays() {
        return "Tout. La pièce centrale est le carré du milieu, les bandes l’entourent, un tour est une bande par côté. Ce que vous laissez vide, la réserve le décide. Plusieurs largeurs peuvent se suivre, du centre vers l’extérieur : 3, 4, 5.";
    }

    @Override
    public String wishOrder() {
        return "Ordre";
    }

    @Override
    public String wishPatches() {
        return "Morceaux";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "grands et petits ensemble" : sizes.equals("even") ? "aussi égaux que possible" : "au choix");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "La pièce centrale en " + fabric : what.equals("show") ? "Visible une fois noué : " + fabric : "Sans " + fabric);
    }

    @Override
    public String wishQuick() {
        return "Le moins de coutures d’abord";
    }

    @Override
    public String wishRounds() {
        return "Tours";
    }

    @Override
    public String wishScraps() {
        return "Pour des chutes telles quelles";
    }

    @Override
    public String wishSlack(String unit) {
        return "De plus que le minimum, " + unit + " ; vide : le minimum";
    }

    @Override
    public String wishTogether() {
        return "Assemblé en";
    }

    @Override
    public String wishWide() {
        return "Bandes larges";
    }

    @Override
    public String wishWith() {
        return "Pièces qui doivent y être";
    }
}
