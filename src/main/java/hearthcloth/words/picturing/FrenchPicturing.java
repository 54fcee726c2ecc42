package hearthcloth.words.picturing;

/** The room of picturing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchPicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau ajouté, numéro " + first + "." : "" + n + " morceaux ajoutés, numéros " + first + " à " + last + ".");
    }

    @Override
    public String another() {
        return "À partir d’une photo";
    }

    @Override
    public String askBefore() {
        return "Déjà commencé";
    }

    @Override
    public String askChoose() {
        return "Choisir une photo";
    }

    @Override
    public String askHow() {
        return "Comment disposer et photographier";
    }

    @Override
    public String askKinds() {
        return "JPEG ou PNG, tel que l’appareil l’a pris, jusqu’à 80 Mo. Elle reste sur cette machine.";
    }

    @Override
    public String askNoSize() {
        return "La taille de la référence est restée vide ; mesurez-la et écrivez largeur par hauteur.";
    }

    @Override
    public String askNone() {
        return "Aucune photo n’est choisie ; choisissez-en une ou prenez-la maintenant.";
    }

    @Override
    public String askNotWhole() {
        return "La photo n’est pas arrivée entière ; renvoyez-la.";
    }

    @Override
    public String askNow() {
        return "Prendre une photo";
    }

    @Override
    public String askPhotograph(String when) {
        return "Photo : " + when;
    }

    @Override
    public String askPreview() {
        return "La photo choisie, en petit";
    }

    @Override
    public String askPrint() {
        return "Imprimer la feuille de mesure";
    }

    @Override
    public String askPrintHow() {
        return "Imprimez-la à 100 %, sans l’ajuster à la page, et vérifiez sa ligne à la règle.";
    }

    @Override
    public String askRead() {
        return "La lire";
    }

    @Override
    public String askSend() {
        return "Envoyer une photo";
    }

    @Override
    public String askSheet() {
        return "Le plus sûr est notre feuille de mesure : ses repères ne se confondent pas avec du tissu et montrent si elle est courbée.";
    }

    @Override
    public String back() {
        return "Retour à la réserve";
    }

    @Override
    public String deleted() {
        return "La photo est supprimée.";
    }

    @Override
    public String drawBack() {
        return "Ôter le dernier coin";
    }

    @Override
    public String drawCloser() {
        return "Plus près";
    }

    @Override
    public String drawCorner() {
        return "Coin %1 sur %2. Les flèches le déplacent, plus loin avec Maj.";
    }

    @Override
    public String drawCross() {
        return "La croix : Entrée place un coin ici.";
    }

    @Override
    public String drawFarther() {
        return "Plus loin";
    }

    @Override
    public String drawFew() {
        return "%d coins ; continuez le tour.";
    }

    @Override
    public String drawFind() {
        return "Chercher son bord autour d’ici";
    }

    @Override
    public String drawHow() {
        return "Appuyez sur ses coins l’un après l’autre, en faisant le tour ; fermez en appuyant de nouveau sur le premier. Approchez pour être sûr. Ou appuyez une fois au milieu, et son bord est cherché.";
    }

    @Override
    public String drawKeys() {
        return "Deux doigts ou un glissement déplacent la photo. Au clavier : les flèches déplacent la croix, plus loin avec Maj ; Entrée place un coin, Retour arrière l’ôte, + et – approchent et éloignent.";
    }

    @Override
    public String drawLeave() {
        return "Laisser";
    }

    @Override
    public String drawMeasure() {
        return "Fermer et mesurer";
    }

    @Override
    public String drawMost() {
        return "%d coins, c’est le maximum. Fermez maintenant.";
    }

    @Override
    public String drawNoRim() {
        return "Aucun bord n’entoure cet endroit ; appuyez plutôt sur les coins l’un après l’autre. Rien n’a été ajouté.";
    }

    @Override
    public String drawNone() {
        return "Pas encore de coin.";
    }

    @Override
    public String drawOne() {
        return "1 coin ; continuez le tour, ou, si c’est le milieu, laissez chercher le bord.";
    }

    @Override
    public String drawPicture() {
        return "Votre photo, pour y dessiner";
    }

    @Override
    public String drawSome() {
        return "%d coins ; continuez, ou fermez.";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "a un endroit" : "pareil des deux côtés") + (nap.equals("yes") ? ", sens dans la longueur" : "") + (washed.equals("YES") ? ", lavé" : washed.equals("NO") ? ", non lavé" : "");
    }

    @Override
    public String fabricFaces() {
        return "Faces";
    }

    @Override
    public String fabricKeep() {
        return "Garder";
    }

    @Override
    public String fabricKnown() {
        return "Votre réserve a ce tissu ; sa couleur, ses faces et son sens y restent tels quels.";
    }

    @Override
    public String fabricLabel(String name) {
        return "Tissu " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "Nom, " + pieces;
    }

    @Override
    public String fabricNap() {
        return "Sens";
    }

    @Override
    public String fabricNapAny() {
        return "aucun, se pose comme on veut";
    }

    @Override
    public String fabricNapLong() {
        return "dans la longueur";
    }

    @Override
    public String fabricNo() {
        return "non lavé";
    }

    @Override
    public String fabricRight() {
        return "a un endroit";
    }

    @Override
    public String fabricSame() {
        return "pareil des deux côtés";
    }

    @Override
    public String fabricUnknown() {
        return "pas sûr";
    }

    @Override
    public String fabricWashed() {
        return "Lavé";
    }

    @Override
    public String fabricYes() {
        return "lavé";
    }

    @Override
    public String formCorners() {
        return "Il manque les coins d’un morceau ; placez-les sur la photo.";
    }

    @Override
    public String formKind() {
        return "Ce formulaire est d’une autre sorte ; rechargez la page.";
    }

    @Override
    public String formNumber() {
        return "Il manque le numéro d’un coin ; rechargez la page.";
    }

    @Override
    public String formPlace() {
        return "Il manque un endroit de la photo ; rechargez la page.";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "en attente" : what.equals("opening") ? "ouverture de la photo" : what.equals("ground") ? "examen du fond" : what.equals("sheet") ? "recherche de la feuille" : what.equals("pieces") ? "recherche des morceaux" : what.equals("measuring") ? "mesure" : what.equals("laying") ? "mise en place" : "terminé");
    }

    @Override
    public String goingLabel() {
        return "Lecture de la photo";
    }

    @Override
    public String goingLeave() {
        return "Vous pouvez quitter cette page ; la lecture continue et rien n’est perdu.";
    }

    @Override
    public String goingLook() {
        return "Regarder de nouveau";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %, " + what + " …";
    }

    @Override
    public String goingStop() {
        return "Arrêter et la ranger";
    }

    @Override
    public String goingTitle() {
        return "Lecture de votre photo";
    }

    @Override
    public String goingWaits(int n) {
        return (n == 0 || n == 1 ? "" + n + " photo est lue avant la vôtre ; elle attend son tour." : "" + n + " photos sont lues avant la vôtre ; elle attend son tour.");
    }

    @Override
    public String gone() {
        return "Cette photo a été supprimée ; renvoyez-la.";
    }

    @Override
    public String goneElsewhere() {
        return "Cette photo a été supprimée dans une autre fenêtre.";
    }

    @Override
    public String hintBlurred() {
        return "Elle est floue. Ne bougez pas, laissez l’appareil faire le point sur les morceaux et recommencez.";
    }

    @Override
    public String hintDark() {
        return "Elle est très sombre. Prenez-la à la lumière du jour ou avec plus de lampes, sans flash.";
    }

    @Override
    public String hintFine() {
        return "Rien à redire à première vue.";
    }

    @Override
    public String hintNoSheet() {
        return "Aucune feuille blanche n’est nette. Est-elle entière, sans rien toucher, sur un fond plus sombre ?";
    }

    @Override
    public String hintSlant() {
        return "Elle est prise en biais, de plus de 25°. Tenez l’appareil à plat au-dessus du milieu.";
    }

    @Override
    public String howAbove() {
        return "D’en haut.";
    }

    @Override
    public String howAboveHow() {
        return "Tenez l’appareil à plat au-dessus du milieu, tout dans l’image. La lumière du jour de côté est la meilleure ; pas de flash.";
    }

    @Override
    public String howAbovePicture() {
        return "Un téléphone est tenu à plat au-dessus du milieu des morceaux.";
    }

    @Override
    public String howApart() {
        return "Séparés.";
    }

    @Override
    public String howApartHow() {
        return "Disposez les morceaux à un doigt d’écart, sur un fond uni dont ils se détachent.";
    }

    @Override
    public String howApartPicture() {
        return "Cinq morceaux sont séparés sur un fond uni.";
    }

    @Override
    public String howFlat() {
        return "À plat.";
    }

    @Override
    public String howFlatHow() {
        return "Repassez plis et faux plis ; aucun morceau n’en couvre un autre.";
    }

    @Override
    public String howFlatPicture() {
        return "De côté : un morceau est à plat, un autre est plié et barré.";
    }

    @Override
    public String howSheet() {
        return "La feuille à plat et lestée.";
    }

    @Override
    public String howSheetHow() {
        return "Du papier ou une carte parmi eux, entier, sans rien toucher. Si le papier rebique, posez une pièce de monnaie dans chaque coin.";
    }

    @Override
    public String howSheetPicture() {
        return "Une feuille blanche est à plat entre les morceaux, une pièce de monnaie à chaque coin.";
    }

    @Override
    public String kept() {
        return "Gardé.";
    }

    @Override
    public String keyDoubt() {
        return "? à regarder";
    }

    @Override
    public String keyIn() {
        return "✓ dans la réserve";
    }

    @Override
    public String keyLeft() {
        return "× laissé";
    }

    @Override
    public String keyMeasured() {
        return "mesuré";
    }

    @Override
    public String keyUsable() {
        return "ce qui peut servir";
    }

    @Override
    public String labelAdd(int n) {
        return "ajouter " + (n == 0 || n == 1 ? "" + n + " morceau" : "" + n + " morceaux") + " d’une photo";
    }

    @Override
    public String labelAllRight() {
        return "tous ceux avec une question sont bons";
    }

    @Override
    public String labelBring(String piece) {
        return "reprendre le morceau " + piece;
    }

    @Override
    public String labelCorner(String piece) {
        return "coin du morceau " + piece;
    }

    @Override
    public String labelDraw(String piece) {
        return "dessiner le morceau " + piece;
    }

    @Override
    public String labelDrop(String piece) {
        return "laisser le morceau " + piece;
    }

    @Override
    public String labelFabric(String name) {
        return "tissu " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "droit-fil du morceau " + piece;
    }

    @Override
    public String labelLess(String piece) {
        return "coin de moins au morceau " + piece;
    }

    @Override
    public String labelMore(String piece) {
        return "coin de plus au morceau " + piece;
    }

    @Override
    public String labelMove(String piece) {
        return "tissu du morceau " + piece;
    }

    @Override
    public String labelName(String name) {
        return "nom " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "pas de droit-fil au morceau " + piece;
    }

    @Override
    public String labelNotSure(String piece) {
        return "le morceau " + piece + " n’est pas sûr";
    }

    @Override
    public String labelRight(String piece) {
        return "le morceau " + piece + " est bon";
    }

    @Override
    public String labelRim() {
        return "laisser tous ceux du bord";
    }

    @Override
    public String labelSplit(String piece) {
        return "partager le morceau " + piece;
    }

    @Override
    public String noPiece() {
        return "Ce morceau n’est pas sur cette photo.";
    }

    @Override
    public String notOpened() {
        return "Cette photo ne peut pas être ouverte.";
    }

    @Override
    public String notRead() {
        return "Cette photo n’est pas encore lue.";
    }

    @Override
    public String nothingToTake() {
        return "Aucun morceau à prendre : chacun est dans la réserve, laissé, ou encore à regarder.";
    }

    @Override
    public String pieceBring() {
        return "Le reprendre";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "Reprendre le morceau " + piece;
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "Dessiné par vous" : by.equals("hand") ? "Mesuré d’après votre contour" : "Mesuré d’après son bord") + (grain.equals("yes") ? ", dans le droit-fil" : "") + ".";
    }

    @Override
    public String pieceClose() {
        return "Fermer";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "Fermer le morceau " + piece;
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "Coin " + n + " sur " + all + ". Les flèches le déplacent, plus loin avec Maj.";
    }

    @Override
    public String pieceDrag() {
        return "Faites glisser un coin ; ou appuyez dessus, puis là où il va ; ou déplacez-le avec les flèches.";
    }

    @Override
    public String pieceEnd(String n) {
        return "Bout " + n + " de la ligne. Les flèches le déplacent, plus loin avec Maj.";
    }

    @Override
    public String pieceFabric() {
        return "Son tissu";
    }

    @Override
    public String pieceGrain() {
        return "Marquer le droit-fil";
    }

    @Override
    public String pieceIsIn() {
        return "Il est dans la réserve. Annulez cela sur la page de la réserve pour le corriger ici.";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return "Laisser le morceau " + piece + " hors de la réserve";
    }

    @Override
    public String pieceLess(String n) {
        return "Ôter le coin " + n;
    }

    @Override
    public String pieceLessAbout(String n) {
        return "Ôter le coin " + n;
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "Placez la ligne où les deux morceaux se touchent : faites glisser ses bouts, ou appuyez là où ils vont." : "Placez la ligne le long du droit-fil : faites glisser ses bouts, ou appuyez là où ils vont.");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "Partager ici" : "Le droit-fil va ainsi");
    }

    @Override
    public String pieceMore() {
        return "Coin ici";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "Un nouveau coin au milieu du côté " + n;
    }

    @Override
    public String pieceMove() {
        return "L’y mettre";
    }

    @Override
    public String pieceNoGrain() {
        return "Le droit-fil n’importe pas";
    }

    @Override
    public String pieceNotSure() {
        return "Finalement, ce n’est pas sûr";
    }

    @Override
    public String pieceOwn() {
        return "un tissu à part";
    }

    @Override
    public String piecePicture(String piece) {
        return "Morceau " + piece + ", de près";
    }

    @Override
    public String pieceSides() {
        return "Côtés et coins";
    }

    @Override
    public String pieceSplit() {
        return "Partager en deux";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "Ses diagonales font " + one + " et " + two + ", " + (same.equals("yes") ? "égales autant que la photo le montre" : "il n’est donc pas d’équerre") + " ; ses coins sont droits à " + degrees + "° près.";
    }

    @Override
    public String pieceStraight() {
        return "Sa photo comme vue droit d’en haut";
    }

    @Override
    public String pieceTitle(String piece) {
        return "Morceau " + piece;
    }

    @Override
    public String pieces(int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau" : "" + n + " morceaux");
    }

    @Override
    public String redo() {
        return "Rétablir";
    }

    @Override
    public String redoNothing() {
        return "Il n’y a rien à rétablir.";
    }

    @Override
    public String redone(String what) {
        return "Rétabli : " + what + ".";
    }

    @Override
    public String refusedAgain() {
        return "Recommencer les coins";
    }

    @Override
    public String refusedAnew() {
        return "Ou la reprendre";
    }

    @Override
    public String refusedAway() {
        return "Ranger celle-ci";
    }

    @Override
    public String refusedFailed() {
        return "Cette photo ne peut pas être lue ; quelque chose s’est mal passé. Reprenez-la, ou enregistrez-la de nouveau en JPEG et envoyez-la.";
    }

    @Override
    public String refusedHundredths() {
        return "Position de chaque coin, en largeur et en hauteur, en centièmes de la photo : 21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "Marquer ces coins";
    }

    @Override
    public String refusedNoPieces() {
        return "La référence est trouvée, mais aucun morceau de tissu à côté. Séparez les morceaux sur un fond uni dont ils se détachent, et reprenez la photo.";
    }

    @Override
    public String refusedNoTap() {
        return "Sans appuyer";
    }

    @Override
    public String refusedOnce() {
        return "La lire encore une fois";
    }

    @Override
    public String refusedOther() {
        return "Était-ce une autre référence ?";
    }

    @Override
    public String refusedPicture(String reference) {
        return "La photo : appuyez sur un coin (" + reference + ")";
    }

    @Override
    public String refusedRead() {
        return "La lire d’après ces coins";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "la feuille de mesure" : sheet.equals("A4") ? "la feuille A4" : sheet.equals("LETTER") ? "la feuille Letter" : sheet.equals("CARD") ? "la carte" : "le rectangle");
    }

    @Override
    public String refusedTake() {
        return "Prendre une autre photo";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "Appuyez sur un coin. À peu près suffit : le bord le plus proche est pris." : n.equals("some") ? "Appuyez sur le coin suivant, en faisant le tour." : n.equals("three") ? "Appuyez sur le dernier coin." : "Les quatre sont marqués.");
    }

    @Override
    public String refusedTitle() {
        return "Rien n’a pu y être lu";
    }

    @Override
    public String refusedTooMuch() {
        return "Cette photo est trop grande pour la mémoire de cette machine. Réglez l’appareil sur moins de mégapixels, 12 suffisent, et reprenez-la.";
    }

    @Override
    public String refusedWhere(String reference) {
        return "Est-ce bien là : " + reference + " ? Montrez où";
    }

    @Override
    public String scriptChosen() {
        return "Choisie : %s. Appuyez maintenant sur « La lire ».";
    }

    @Override
    public String scriptLarge() {
        return "%s dépasse 80 Mo. Envoyez-la telle que l’appareil l’a prise, ou une plus petite.";
    }

    @Override
    public String scriptNone() {
        return "Aucune photo n’est encore choisie.";
    }

    @Override
    public String scriptSending() {
        return "Envoi de la photo …";
    }

    @Override
    public String sheetA4() {
        return "Papier A4";
    }

    @Override
    public String sheetCard() {
        return "Une carte bancaire ou de bibliothèque";
    }

    @Override
    public String sheetLetter() {
        return "Papier Letter";
    }

    @Override
    public String sheetLine() {
        return "Longueur de sa ligne fine, si ce n’est pas 20 cm (7 7/8 po)";
    }

    @Override
    public String sheetMeasuring() {
        return "La feuille de mesure";
    }

    @Override
    public String sheetSize() {
        return "Un rectangle de";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "Sa largeur par sa hauteur, " + unit;
    }

    @Override
    public String sheetWhich() {
        return "Qu’y a-t-il parmi les morceaux ?";
    }

    @Override
    public String sortAllMine(int n) {
        return (n == 0 || n == 1 ? "" + n + " est à moi et bien mesuré" : "Les " + n + " sont à moi et bien mesurés");
    }

    @Override
    public String sortAllMineAbout() {
        return "Tous les morceaux avec une question sont à moi et bien mesurés";
    }

    @Override
    public String sortAway() {
        return "Ranger la photo";
    }

    @Override
    public String sortAwayAsk() {
        return "Ranger cette photo ? Ce qui est dans la réserve y reste ; le reste devrait être renvoyé.";
    }

    @Override
    public String sortFabrics(int n) {
        return (n == 0 || n == 1 ? "Un tissu" : "" + n + " tissus");
    }

    @Override
    public String sortFabricsHow() {
        return "Les morceaux semblables sont ensemble ; nommez-en un, tous le sont. Un nom déjà dans votre réserve rejoint ce tissu.";
    }

    @Override
    public String sortFirst() {
        return "À regarder d’abord";
    }

    @Override
    public String sortLead() {
        return "Des contours et des numéros sont posés sur votre photo. Appuyez sur un morceau pour le voir de près ; corrigez, nommez chaque tissu, puis prenez tout.";
    }

    @Override
    public String sortLeave() {
        return "Le laisser";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "Laisser le morceau " + piece;
    }

    @Override
    public String sortLook() {
        return "Voir de près";
    }

    @Override
    public String sortLookAt(String piece) {
        return "Voir de près le morceau " + piece;
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return piece + " est peut-être le morceau " + there + " d’une autre photo" + (in.equals("yes") ? ", qui est dans la réserve" : "") + ".";
    }

    @Override
    public String sortMaybeLook() {
        return "L’autre photo";
    }

    @Override
    public String sortMissed() {
        return "Dessiner un morceau oublié";
    }

    @Override
    public String sortRight() {
        return "C’est bien mesuré";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "Le morceau " + piece + " est bien mesuré";
    }

    @Override
    public String sortRim(int n) {
        return (n == 0 || n == 1 ? "Laisser celui du bord" : "Laisser les " + n + " du bord");
    }

    @Override
    public String sortRimAbout() {
        return "Laisser tous les morceaux avec une question qui sortent de la photo";
    }

    @Override
    public String sortSame() {
        return "Le même morceau : le laisser ici";
    }

    @Override
    public String sortSameAbout(String piece) {
        return "Le morceau " + piece + " est le même que sur l’autre photo : le laisser ici";
    }

    @Override
    public String sortStay(int n) {
        return (n == 0 || n == 1 ? "" + n + " reste tant que vous ne l’avez pas regardé." : "" + n + " restent tant que vous ne les avez pas regardés.");
    }

    @Override
    public String sortTake(int n) {
        return (n == 0 || n == 1 ? "Prendre " + n + " morceau" : "Prendre " + n + " morceaux");
    }

    @Override
    public String sortTitle() {
        return "Est-ce bien lu ?";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + ", " + off + ".";
    }

    @Override
    public String sortTwice() {
        return "Aussi vu sur une autre photo ?";
    }

    @Override
    public String sortTwiceHow() {
        return "Taille, couleur et motif se ressemblent. Rien n’est réuni sans demander : laissez ce qui est le même morceau ; gardez les deux s’ils se ressemblent seulement.";
    }

    @Override
    public String sortWhole(int n) {
        return (n == 0 || n == 1 ? "Votre photo avec le contour et le numéro de " + n + " morceau ; la liste le décrit." : "Votre photo avec le contour et le numéro de " + n + " morceaux ; la liste les décrit.");
    }

    @Override
    public String stale() {
        return "Cette photo a été modifiée entre-temps dans une autre fenêtre. Rien n’a changé ici ; rechargez la page.";
    }

    @Override
    public String staleTaking() {
        return "Cette photo a été modifiée entre-temps dans une autre fenêtre. Rien n’a été pris ; rechargez la page.";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "à regarder" : state.equals("SMALL") ? "trop petit pour votre règle" : state.equals("DROPPED") ? "laissé" : state.equals("IN") ? "dans la réserve" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return (n == 0 || n == 1 ? "Le morceau " + pieces + " reste sur la photo tant que vous ne l’avez pas regardé." : "Les morceaux " + pieces + " restent sur la photo tant que vous ne les avez pas regardés.");
    }

    @Override
    public String taken(String piece) {
        return "Le morceau " + piece + " est déjà dans la réserve ; annulez d’abord cela sur sa page, ou modifiez-le là-bas.";
    }

    @Override
    public String undo() {
        return "Annuler";
    }

    @Override
    public String undoNothing() {
        return "Il n’y a rien à annuler.";
    }

    @Override
    public String undone(String what) {
        return "Annulé : " + what + ".";
    }
}
