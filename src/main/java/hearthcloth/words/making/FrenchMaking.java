package hearthcloth.words.making;

/** The room of making in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return "La bande " + bar + " est trop courte : longueur, bouts compris";
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " Aucune suite n’a été trouvée avec ce qu’il y a : ajoutez du tissu, ou décousez la dernière bande et cousez-en une autre.";
    }

    @Override
    public String amissBarPage() {
        return "La bande est trop courte";
    }

    @Override
    public String amissBarSewn(String bar) {
        return "La bande " + bar + " est déjà cousue ; décousez-la d’abord.";
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "La bande " + bar + " mesure " + measured + ", il était prévu " + planned + ".";
    }

    @Override
    public String amissRedo() {
        return "Je dois refaire cette étape";
    }

    @Override
    public String amissTitle() {
        return "Quelque chose a raté";
    }

    @Override
    public String back() {
        return "Retour";
    }

    @Override
    public String care() {
        return "Attention";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + " : " + words;
    }

    @Override
    public String cutAgain() {
        return "Ses morceaux sont de nouveau dans la réserve, leurs coupes cochées.";
    }

    @Override
    public String cutAlready() {
        return "Ce carré est déjà coupé.";
    }

    @Override
    public String cutAmiss() {
        return "On ne peut pas le couper tel qu’il est prévu : voyez plus bas ce qui manque.";
    }

    @Override
    public String cutChanged() {
        return "Quelque chose a changé depuis la coupe : revenez d’abord dessus avec Annuler, sur la page du carré.";
    }

    @Override
    public String cutGone() {
        return "Cette coupe n’est plus dans le plan ; rechargez la page.";
    }

    @Override
    public String cutIsCut(int n) {
        return (n == 0 || n == 1 ? "Coupé. " + n + " chute est revenue dans la réserve." : "Coupé. " + n + " chutes sont revenues dans la réserve.");
    }

    @Override
    public String cutNone() {
        return "Cette coupe n’existe pas.";
    }

    @Override
    public String cutPieceGone() {
        return "Ce morceau n’est plus dans le plan ; rechargez la page.";
    }

    @Override
    public String cutTicked(int n) {
        return (n == 0 || n == 1 ? "" + n + " coupe est cochée." : "" + n + " coupes sont cochées.");
    }

    @Override
    public String cutTitle(String cloth) {
        return "Couper : " + cloth;
    }

    @Override
    public String cutWhich() {
        return "Quel carré allez-vous couper ?";
    }

    @Override
    public String done() {
        return "Fait";
    }

    @Override
    public String height() {
        return "Hauteur";
    }

    @Override
    public String keys() {
        return "Espace ou Page suivante : fait. Page précédente : retour. Une pédale envoie ces touches.";
    }

    @Override
    public String length() {
        return "Longueur";
    }

    @Override
    public String listed(String before, String last) {
        return before + " et " + last;
    }

    @Override
    public String lookAgain() {
        return "Regardez encore une fois";
    }

    @Override
    public String matAll() {
        return "Tous les morceaux";
    }

    @Override
    public String matAllAreCut() {
        return "Tous les morceaux sont coupés.";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "Les deux coupes sont faites" : n == 0 || n == 1 ? "La coupe est faite" : "Les " + n + " coupes sont faites");
    }

    @Override
    public String matAllIsCut() {
        return "Tout est coupé";
    }

    @Override
    public String matAsItIs() {
        return "Il sert tel quel ; rien à couper.";
    }

    @Override
    public String matClothIsCut() {
        return "Ce carré est coupé.";
    }

    @Override
    public String matCount(String all, String done) {
        return done + " sur " + all;
    }

    @Override
    public String matCounted() {
        return "morceaux coupés";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "Coupe " + n + " sur " + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String matGives(String gives) {
        return "On obtient : " + gives + ".";
    }

    @Override
    public String matLeave() {
        return "Les morceaux quittent la réserve, les chutes y reviennent.";
    }

    @Override
    public String matMore() {
        return "Un souci ? Plus";
    }

    @Override
    public String matNextPiece() {
        return "Morceau suivant";
    }

    @Override
    public String matNow(String measure, String n) {
        return "Coupe " + n + " : " + measure + ".";
    }

    @Override
    public String matOff(String side) {
        return "ôté " + (side.equals("left") ? "à gauche" : side.equals("right") ? "à droite" : side.equals("top") ? "en haut" : "en bas");
    }

    @Override
    public String matPicture() {
        return "Image de la coupe";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "Morceau " + n + ", " + words + (done.equals("yes") ? ", coupé" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "Ce morceau est coupé.";
    }

    @Override
    public String matPin() {
        return "Épinglez son étiquette.";
    }

    @Override
    public String matPrintSlips() {
        return "Imprimer toutes les étiquettes";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "Morceau " + n + " sur " + all + " ; " + done + " faits.";
    }

    @Override
    public String matSew() {
        return "Le coudre";
    }

    @Override
    public String matShown(String n, String words) {
        return "Morceau " + n + " : " + words;
    }

    @Override
    public String measureAgain() {
        return "Retour, je mesure encore une fois";
    }

    @Override
    public String measuredBefore() {
        return "Les étapes d’avant ne sont pas encore faites.";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return "Un bout est plus long que l’autre de " + by + " : mettez-le d’abord d’équerre, recoupez-le à " + trim + ", puis mesurez encore.";
    }

    @Override
    public String measuredFar(String planned, String written) {
        return written + ", c’est loin des " + planned + " prévus ; mesurez encore une fois.";
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return written + ", c’est loin des " + planned + " prévus ; est-ce " + meant + " ?";
    }

    @Override
    public String measuredIsIt(String meant) {
        return "Est-ce " + meant + " ?";
    }

    @Override
    public String measuredIsRight() {
        return "Est-ce juste ?";
    }

    @Override
    public String measuredOtherStep() {
        return "Mesurez après avoir cousu une bande ; cette étape en est une autre.";
    }

    @Override
    public String measuredScraps() {
        return "Un carré de chutes n’a pas de bandes à recouper : décousez une couture qui s’écarte de plus d’un fil ou deux.";
    }

    @Override
    public String measuredSquare() {
        return "Mettez-le d’abord d’équerre";
    }

    @Override
    public String measuredSwapped() {
        return "Est-ce dans l’autre sens ?";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return size + " est dans le mauvais sens : il faudrait environ " + planned + ", la largeur d’abord, recto vers le haut.";
    }

    @Override
    public String measuredTitle() {
        return "Votre mesure";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "Il mesure " + size + " : " + (across.equals("less") ? "" + width + " plus étroit" : across.equals("more") ? "" + width + " plus large" : "") + (both.equals("yes") ? " et " : "") + (up.equals("less") ? "" + height + " moins haut" : up.equals("more") ? "" + height + " plus haut" : "") + " que prévu.";
    }

    @Override
    public String measuredTooMany(String written) {
        return "« " + written + " » compte plus de deux mesures ; écrivez-en une, ou les deux bouts.";
    }

    @Override
    public String more() {
        return "Plus";
    }

    @Override
    public String printGuide() {
        return "Le guide complet à imprimer";
    }

    @Override
    public String printPage() {
        return "Imprimer cette page";
    }

    @Override
    public String sewAsPlanned() {
        return "Comme prévu. Continuez.";
    }

    @Override
    public String sewAsleep() {
        return "Cet appareil peut se mettre en veille : réglez son écran pour qu’il reste allumé.";
    }

    @Override
    public String sewBackToCut() {
        return "Retour à la coupe";
    }

    @Override
    public String sewDiffers() {
        return "Chez moi, non";
    }

    @Override
    public String sewFinish() {
        return "Cousu. Sa photo et son étiquette";
    }

    @Override
    public String sewFollows() {
        return "Voir la suite";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + " h " + minutes + " min";
    }

    @Override
    public String sewHow() {
        return "Comment ?";
    }

    @Override
    public String sewHowLabel() {
        return "Comment faire";
    }

    @Override
    public String sewLookOnly() {
        return "À regarder seulement, tant que tout n’est pas coupé.";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "Après la couture. Un seul nombre suffit ; mesurez bords vifs compris. Si les deux bouts diffèrent, écrivez les deux, comme " + (unit.equals("in") ? "12 1/8 et 12 3/8" : "31,2 et 31,7") + ".";
    }

    @Override
    public String sewMeasures() {
        return "Mesure attendue";
    }

    @Override
    public String sewMeasuresHow() {
        return "largeur × hauteur, recto vers le haut";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + " min";
    }

    @Override
    public String sewNext() {
        return "Suivant";
    }

    @Override
    public String sewNoStep() {
        return "Cette étape n’existe pas ; rechargez la page.";
    }

    @Override
    public String sewNotCut() {
        return "Ce carré n’est pas encore entièrement coupé. Cochez d’abord ses coupes, puis « Tout est coupé ».";
    }

    @Override
    public String sewPace(String time) {
        return "À votre rythme, encore " + time + " environ.";
    }

    @Override
    public String sewPlanned() {
        return "Replanifié. Continuez.";
    }

    @Override
    public String sewPlannedCut() {
        return "Replanifié. Coupez d’abord ceci, puis continuez.";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return "Étape " + n + " sur " + all + (done.equals("yes") ? ", faite" : "");
    }

    @Override
    public String sewRead() {
        return "Me le lire";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + ". " + title;
    }

    @Override
    public String sewThick(String where) {
        return where + " : ralentissez là.";
    }

    @Override
    public String sewTitle(String cloth) {
        return "Coudre : " + cloth;
    }

    @Override
    public String sewToCut() {
        return "À la coupe";
    }

    @Override
    public String sewToNow() {
        return "À l’étape en cours";
    }

    @Override
    public String sewWhich() {
        return "Quel carré allez-vous coudre ?";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "Le carré entier : " + done + " étapes sur " + all + " sont faites";
    }

    @Override
    public String sewYes() {
        return "Oui, c’est bien cela";
    }

    @Override
    public String showWays() {
        return "Voir comment continuer";
    }

    @Override
    public String sideAlike() {
        return "Les deux côtés de son tissu se ressemblent. Continuez.";
    }

    @Override
    public String sideCannot() {
        return "Impossible : les bandes à venir, telles qu’elles sont coupées, n’iraient plus avec l’ouvrage.";
    }

    @Override
    public String sideFrayed() {
        return "Les bords effilochés en décousant perdent un peu ; mesurez encore après la couture.";
    }

    @Override
    public String sideGoBack() {
        return "Découdre et revenir";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "La bande " + bar + " est " + (wrong.equals("face") ? "envers dessus" : "du mauvais côté de l’ouvrage") + ". Que faire ?";
    }

    @Override
    public String sideLeave() {
        return "La laisser ainsi";
    }

    @Override
    public String sideLeft() {
        return "Les images le montrent ainsi désormais.";
    }

    @Override
    public String sideLooks() {
        return "Le recto est alors comme ceci ; rien à couper ni à découdre.";
    }

    @Override
    public String sideNoBar() {
        return "Aucune bande n’est cousue à cette étape ; choisissez l’étape de la bande.";
    }

    @Override
    public String sideNoFit() {
        return "Les bandes à venir n’iraient pas ainsi ; décousez-la.";
    }

    @Override
    public String sideNotSewn() {
        return "Cette étape n’est pas encore cousue.";
    }

    @Override
    public String sidePage() {
        return "Mal cousue";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "Recto, la bande " + bar + " " + (wrong.equals("face") ? "sur l’autre face" : "de l’autre côté de l’ouvrage");
    }

    @Override
    public String sideRight() {
        return "Retour, elle est bien placée";
    }

    @Override
    public String sideSteps(int n) {
        return (n == 0 || n == 1 ? "Pour arriver à la bande, " + n + " étape est défaite puis refaite :" : "Pour arriver à la bande, " + n + " étapes sont défaites puis refaites, la dernière d’abord :");
    }

    @Override
    public String sideUnpick() {
        return "Découdre";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "La bande " + bar + " est " + (wrong.equals("face") ? "envers dessus" : "du mauvais côté de l’ouvrage");
    }

    @Override
    public String smallAcross() {
        return "En largeur";
    }

    @Override
    public String smallAllCut() {
        return "Toutes les pièces de ce morceau sont coupées ; décochez la coupe qui est fausse.";
    }

    @Override
    public String smallDown() {
        return "De haut en bas";
    }

    @Override
    public String smallHow() {
        return "Pour ce morceau, cochez les coupes qui sont justes. Que mesure la pièce suivante, telle qu’elle est sur l’image ?";
    }

    @Override
    public String smallLarger() {
        return "Ce qui reste ne peut pas être plus grand que le morceau ; vérifiez les deux côtés.";
    }

    @Override
    public String smallNoWay() {
        return "Aucune suite n’a été trouvée avec ce qu’il y a.";
    }

    @Override
    public String smallPage() {
        return "Elle est trop petite";
    }

    @Override
    public String smallTitle() {
        return "La pièce est trop petite";
    }

    @Override
    public String smallWrite() {
        return "Écrivez ce que la pièce mesure maintenant, en largeur et en longueur.";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "La garder telle quelle et couper plus larges les bandes voisines" : way.equals("ANOTHER_PIECE") ? "La recouper" : way.equals("JOINED_STRIP") ? "Y ajouter une bandelette" : "La garder telle quelle ; le carré sera plus petit");
    }

    @Override
    public String waysCut(String told) {
        return told + " Ce qui est coupé reste tel quel. Comment continuer ?";
    }

    @Override
    public String waysGone() {
        return "Cette suite n’existe pas ; mesurez encore une fois.";
    }

    @Override
    public String waysLacking() {
        return "Il ne reste pas assez de tissu.";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "Continuer tel quel" : way.equals("keep") ? "Garder la taille : recouper les bandes à venir" : "Ajouter un tour étroit");
    }

    @Override
    public String waysNoCut() {
        return "Toutes les bandes déjà coupées sont assez longues : rien à couper, juste un peu plus ou moins à recouper.";
    }

    @Override
    public String waysPicture(String size) {
        return "Le carré alors, " + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " Ce qui est cousu reste tel quel. Comment continuer ?";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "Y ajouter une bandelette" : way.equals("ANEW") ? "Refaire la bande" : way.equals("PIECED") ? "Refaire la bande, en plusieurs parties" : "La garder telle quelle et recouper l’ouvrage");
    }

    @Override
    public String waysSize(String size) {
        return "Le carré fera " + size + ".";
    }

    @Override
    public String waysSizeLabel() {
        return "Taille du carré";
    }

    @Override
    public String waysThis() {
        return "Choisir cela";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return "Avec « " + tie + " », il noue " + gift + ".";
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "À couper maintenant : " + (n == 0 || n == 1 ? "la bande" : "les bandes") + " " + bars + ", dans " + (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + ".";
    }

    @Override
    public String width() {
        return "Largeur";
    }

    @Override
    public String wrongAllUsed() {
        return "Toutes les pièces déjà coupées servent telles quelles.";
    }

    @Override
    public String wrongChange() {
        return "Changez une bande ou une largeur.";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "Il faut " + (n == 0 || n == 1 ? "" + n + " raccord de moins" : "" + n + " raccords de moins") + ".";
    }

    @Override
    public String wrongHow() {
        return "Décochez ce qui est perdu. Les pièces dont les coupes sont cochées restent ; le reste est replanifié. Que mesure la plus grande partie de ce morceau encore à couper ? Laissez les deux vides s’il ne reste rien.";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "Il ne reste pas assez de tissu pour ce qui est encore à couper. " + why + " Ajoutez du tissu, puis redites-le ici.";
    }

    @Override
    public String wrongLatePlanned() {
        return "Replanifié avec ce qui reste. Ce qui est cousu et ce qui est coupé ne change pas.";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "Il faut " + (n == 0 || n == 1 ? "" + n + " raccord de plus" : "" + n + " raccords de plus") + ".";
    }

    @Override
    public String wrongPlan() {
        return "Replanifier le reste";
    }

    @Override
    public String wrongPlanned() {
        return "Replanifié avec ce qui reste.";
    }

    @Override
    public String wrongSameJoins() {
        return "Il faut autant de raccords qu’avant.";
    }

    @Override
    public String wrongScraps() {
        return "Un carré de chutes ne se replanifie pas après une erreur : coupez la pièce dans une autre chute au moins aussi grande, ou cherchez des propositions avec ce qui reste.";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "Sur " + (n == 0 || n == 1 ? "" + n + " pièce déjà coupée" : "" + n + " pièces déjà coupées") + ", " + (used == 0 || used == 1 ? "" + used + " sert telle quelle" : "" + used + " servent telles quelles") + ".";
    }

    @Override
    public String wrongTitle() {
        return "J’ai mal coupé";
    }
}
