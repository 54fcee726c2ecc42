package hearthcloth.words.photographing;

/** What is said in the room of photographing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface PhotographingWords {

    String absent(String sheet);

    String again(String how, String sheet);

    String doubtCutOff();

    String doubtEdge();

    String doubtFar();

    String doubtFrayed(String mm);

    String doubtGround();

    String doubtOver(String piece);

    String doubtRim();

    String doubtRough();

    String doubtSheetAlike(String sheet);

    String doubtSheetFaint(String sheet);

    String doubtSheetSkew(String share, String sheet);

    String doubtSheetTapped(String share, String sheet);

    String doubtSheetUnseen(String sheet, int sides);

    String doubtSheetsApart(String share);

    String doubtSides();

    String doubtTwo();

    String doubtUneven();

    String goneFabric();

    String gonePiece(String piece);

    String kept(String why);

    String noMarks();

    String noRival(String sheet);

    String noRound(String sheet);

    String noShadow(String sheet);

    String noShare(String share, String sheet);

    String noSizes(String sheet);

    String noTwin(String sheet, String twin);

    String notePicture(String numbers);

    String outlineCorner();

    String outlineFault(String fault, String most);

    String outlineGrain();

    String outlineNone();

    String outlineSplit(String piece);

    String pictureDamaged();

    String pictureHeic();

    String pictureKind();

    String pictureLarge();

    String picturePixels(String height, String mega, String width);

    String pictureScans();

    String pictureSmall(String height, String width);

    String pictureUnread();

    String referenceCorner(String corner);

    String referenceCorners(String count);

    String referenceLine();

    String referenceSmall(String size);

    String seenCut(String where, String white, String why);

    String seenNothing(String white);

    String seenSkew(String share, String sheet, String where, String white);

    String seenWhite(String sheet);

    String sheet(String sheet);
}
