package hearthcloth.words.photographing;

/** The room of photographing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchPhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return "Il n’a pas été trouvé : " + sheet + ".";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "Reprenez la photo de sorte qu’on voie en entier, dégagée tout autour : " + sheet + "." : how.equals("FLAT") ? "Posez " + sheet + " à plat, sans rien toucher, et reprenez la photo." : "Posez " + sheet + " à plat, sans rien toucher, et reprenez la photo de plus près.");
    }

    @Override
    public String doubtCutOff() {
        return "Il sort de l’image ; ramenez-le dedans ou reculez, et reprenez la photo.";
    }

    @Override
    public String doubtEdge() {
        return "Il touche le bord de l’image ; ce qui est au-delà n’est pas mesuré. Reprenez la photo s’il continue.";
    }

    @Override
    public String doubtFar() {
        return "Il est loin de la feuille, là où l’image donne des mesures moins sûres ; rapprochez-le.";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "Ses bords sont effilochés sur " + mm + " mm environ ; il est mesuré sans les fils. Égalisez-le d’abord pour être sûr.";
    }

    @Override
    public String doubtGround() {
        return "Il se distingue à peine de ce qui est dessous ; posez-le sur quelque chose de plus clair ou de plus foncé.";
    }

    @Override
    public String doubtOver(String piece) {
        return "Il est sur le morceau " + piece + " ; écartez l’un des deux, sinon le même tissu entre deux fois.";
    }

    @Override
    public String doubtRim() {
        return "Une partie du bord ne se voit pas ; vérifiez le contour ou posez-le sur un autre fond.";
    }

    @Override
    public String doubtRough() {
        return "Ses coins sont placés à peu près ; regardez de près et faites glisser chacun à sa place.";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "Vues si en biais, A4 et Letter se ressemblent ; vérifiez que c’est bien " + sheet + ", ou prenez la photo bien d’en haut.";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return sheet + " se distingue à peine de ce qui est dessous, et toutes les mesures en dépendent. Vérifiez son contour sur l’image, ou posez-la sur un fond plus foncé ou plus coloré et reprenez la photo.";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return sheet + " paraît trop longue ou trop courte de " + share + " % : elle est peut-être en partie couverte, pas à plat, ou trop petite sur l’image, et toutes les mesures en dépendent. Posez-la à plat et dégagée, et reprenez la photo de plus près.";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return sheet + " que vous avez touchée paraît trop longue ou trop courte de " + share + " % : un coin est peut-être à côté, ou elle n’est pas à plat. Toutes les mesures en dépendent.";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return (sides == 0 || sides == 1 ? "Un côté ne se voit pas" : "Plusieurs côtés ne se voient pas") + " (" + sheet + ") ; il est pris là où vous avez touché, et toutes les mesures en dépendent.";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "Les feuilles sur l’image ne s’accordent pas : d’après l’une, tout est plus grand d’environ " + share + " % que d’après l’autre. Posez-les à plat et dégagées, ou n’en laissez qu’une, et reprenez la photo.";
    }

    @Override
    public String doubtSides() {
        return "Ses côtés se voient mal ; vérifiez le contour.";
    }

    @Override
    public String doubtTwo() {
        return "C’est peut-être deux morceaux qui se touchent ou se recouvrent ; écartez-les, ou partagez-le ici.";
    }

    @Override
    public String doubtUneven() {
        return "Son bord est irrégulier ; vérifiez le contour.";
    }

    @Override
    public String goneFabric() {
        return "Ce tissu n’est plus sur cette photo.";
    }

    @Override
    public String gonePiece(String piece) {
        return "Il n’y a plus de morceau " + piece + " sur cette photo.";
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "Cette image dépasse 20 Mo ; réduisez-la et réessayez." : why.equals("DAMAGED") ? "Cette image est abîmée ; exportez-la à nouveau en PNG ou JPEG." : why.equals("KIND") ? "Ce n’est pas une image PNG ou JPEG ; exportez-la dans l’un des deux." : "Cette image dépasse 50 mégapixels ; réduisez-la et réessayez.");
    }

    @Override
    public String noMarks() {
        return "La feuille de mesure n’a pas été trouvée : on voit moins de trois de ses marques carrées. Posez-la à plat et découverte parmi les morceaux, et prenez la photo de plus près, nette et d’en haut.";
    }

    @Override
    public String noRival(String sheet) {
        return "Deux choses sur l’image pourraient être " + sheet + " : l’une en a la forme, l’autre est aussi blanche mais courbée, couverte, à l’ombre ou coupée. Touchez les quatre coins de la bonne, ou ôtez l’autre et reprenez la photo.";
    }

    @Override
    public String noRound(String sheet) {
        return "Les quatre coins touchés ne font pas le tour d’une forme. Touchez-les à nouveau, l’un après l’autre autour : " + sheet + ".";
    }

    @Override
    public String noShadow(String sheet) {
        return "Deux choses sur l’image pourraient être " + sheet + " : la plus grande est aussi blanche, mais le bord d’une ombre la traverse. Ôtez l’autre, ou mettez la feuille toute à la lumière ou toute à l’ombre, et reprenez la photo.";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "Ce qui est entre les quatre coins est trop long ou trop court de " + share + " % pour être " + sheet + ". Dites ce que c’est, ou touchez à nouveau les coins.";
    }

    @Override
    public String noSizes(String sheet) {
        return "Deux choses sur l’image pourraient être " + sheet + ", et elles n’ont pas la même taille. Ôtez le morceau qui a cette forme, et reprenez la photo.";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "Ce qui est là ressemble à " + twin + ", pas à " + sheet + ". Choisissez " + twin + ", ou posez " + sheet + " et reprenez la photo.";
    }

    @Override
    public String notePicture(String numbers) {
        return "sur la photo : " + numbers;
    }

    @Override
    public String outlineCorner() {
        return "Ce morceau n’a plus ce coin.";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "Un morceau a trois coins ou plus ; placez-en un autre." : fault.equals("OUTSIDE") ? "Un coin est hors de l’image ; reprenez-le et placez-le sur la photo." : fault.equals("CROSSING") ? "Deux de ses côtés se croisent ; reprenez les derniers coins et placez-les l’un après l’autre autour du morceau." : fault.equals("SMALL") ? "On ne peut rien y couper de 1 cm sur 1 cm ; un morceau est plus grand." : "Un morceau se trace avec " + most + " coins au plus ; reprenez-en, et ajoutez-en ensuite sur ses côtés.") + " Rien n’a été ajouté.";
    }

    @Override
    public String outlineGrain() {
        return "La ligne est trop courte pour donner une direction. Rien n’a changé.";
    }

    @Override
    public String outlineNone() {
        return "Il ne resterait pas de contour ; un morceau a trois coins ou plus, aucun au-delà de son bord. Rien n’a changé.";
    }

    @Override
    public String outlineSplit(String piece) {
        return "La ligne ne partage pas le morceau " + piece + " en deux ; tracez-la d’un bord à l’autre. Rien n’a changé.";
    }

    @Override
    public String pictureDamaged() {
        return "L’image est abîmée ; enregistrez-la à nouveau en JPEG et réessayez.";
    }

    @Override
    public String pictureHeic() {
        return "C’est une photo HEIC (ou AVIF), qui ne se lit pas ici. Envoyez un JPEG : dans les réglages de l’appareil, choisissez JPEG ou le format le plus compatible et reprenez-la, ou ouvrez-la et enregistrez-la ou partagez-la en JPEG.";
    }

    @Override
    public String pictureKind() {
        return "Ce n’est pas une photo en JPEG ou PNG ; envoyez l’un des deux.";
    }

    @Override
    public String pictureLarge() {
        return "Le fichier dépasse 80 Mo ; envoyez la photo telle que le téléphone l’a prise.";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "L’image a " + width + " × " + height + " pixels (" + mega + " mégapixels) ; on lit ici 50 au plus. Envoyez-en une plus petite.";
    }

    @Override
    public String pictureScans() {
        return "Ce JPEG est fait comme aucun appareil ne le fait ; exportez-le à nouveau et réessayez.";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "L’image n’a que " + width + " × " + height + " pixels ; pour mesurer il faut 2 mégapixels ou plus. Envoyez-la dans sa taille d’origine.";
    }

    @Override
    public String pictureUnread() {
        return "L’image est abîmée ou d’un genre qui ne se lit pas ici ; enregistrez-la à nouveau en JPEG et réessayez.";
    }

    @Override
    public String referenceCorner(String corner) {
        return "« " + corner + " » n’est pas un coin ; écrivez où il est en largeur et en hauteur, en parts de l’image, comme 0.21 0.30.";
    }

    @Override
    public String referenceCorners(String count) {
        return "Une feuille a quatre coins, et " + count + " sont donnés ; donnez les quatre dans l’ordre, séparés par des virgules.";
    }

    @Override
    public String referenceLine() {
        return "La ligne de la feuille de mesure doit faire environ 20 cm (7 7/8 po) ; mesurez encore la longue ligne fine entre ses deux traits.";
    }

    @Override
    public String referenceSmall(String size) {
        return "Une référence de " + size + " est trop petite pour mesurer ; prenez-en une de 2 cm ou plus.";
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return (where.equals("MIDDLE") ? "Au milieu" : where.equals("UPPER_LEFT") ? "En haut à gauche" : where.equals("UPPER") ? "En haut" : where.equals("UPPER_RIGHT") ? "En haut à droite" : where.equals("LEFT") ? "À gauche" : where.equals("RIGHT") ? "À droite" : where.equals("LOWER_LEFT") ? "En bas à gauche" : where.equals("LOWER") ? "En bas" : "En bas à droite") + " de l’image il y a quelque chose " + (white.equals("yes") ? "de blanc" : "à quatre coins") + ", mais " + (why.equals("CUT") ? "cela sort de l’image, ou touche quelque chose qui en sort" : why.equals("RIM") ? "son bord n’a pas quatre côtés droits : quelque chose le touche ou est posé dessus, ou c’est plié" : "c’est trop petit ou trop flou pour servir de mesure") + ".";
    }

    @Override
    public String seenNothing(String white) {
        return "Rien " + (white.equals("yes") ? "de blanc à quatre côtés droits" : "à quatre côtés droits") + " ne se détache du fond. Posez-la à plat parmi les morceaux, entière sur l’image, sans rien toucher, et prenez la photo d’en haut.";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return (where.equals("MIDDLE") ? "Au milieu" : where.equals("UPPER_LEFT") ? "En haut à gauche" : where.equals("UPPER") ? "En haut" : where.equals("UPPER_RIGHT") ? "En haut à droite" : where.equals("LEFT") ? "À gauche" : where.equals("RIGHT") ? "À droite" : where.equals("LOWER_LEFT") ? "En bas à gauche" : where.equals("LOWER") ? "En bas" : "En bas à droite") + " de l’image il y a quelque chose " + (white.equals("yes") ? "de blanc" : "à quatre coins") + ", mais les proportions s’écartent de " + share + " % (" + sheet + "). Si c’est cela, elle est courbée ou en partie couverte : posez-la à plat, sans rien toucher, et reprenez la photo ; sinon, dites ce que c’est.";
    }

    @Override
    public String seenWhite(String sheet) {
        return "Ce qui remplit presque toute l’image est clair et presque sans couleur : ou bien " + sheet + " remplit l’image, ou elle est sur quelque chose d’aussi blanc. Posez-la sur quelque chose de plus foncé ou de plus coloré, les morceaux autour, sans rien toucher, et reprenez la photo.";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "la feuille de mesure" : sheet.equals("A4") ? "la feuille A4" : sheet.equals("LETTER") ? "la feuille Letter" : sheet.equals("CARD") ? "la carte" : "la forme mesurée");
    }
}
