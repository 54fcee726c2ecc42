package hearthcloth.words.photographing;

import hearthcloth.words.korean.Particles;

/** The room of photographing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanPhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return "찾지 못했습니다: " + sheet + ".";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "다 들어오고 둘레가 비도록 다시 찍으세요(" + sheet + ")." : how.equals("FLAT") ? "아무것에도 닿지 않게 평평하게 놓고 다시 찍으세요(" + sheet + ")." : "아무것에도 닿지 않게 평평하게 놓고 더 가까이에서 다시 찍으세요(" + sheet + ").");
    }

    @Override
    public String doubtCutOff() {
        return "사진 밖으로 나갑니다. 안으로 옮기거나 뒤로 물러나 다시 찍으세요.";
    }

    @Override
    public String doubtEdge() {
        return "사진 가장자리에 닿습니다. 그 너머는 재지 않습니다. 더 이어지면 다시 찍으세요.";
    }

    @Override
    public String doubtFar() {
        return "기준 종이에서 멀어 크기를 덜 확실히 알 수 있습니다. 더 가까이 놓으세요.";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "가장자리 올이 약 " + mm + " mm 풀렸습니다. 풀린 올은 빼고 쟀습니다. 확실히 하려면 먼저 다듬으세요.";
    }

    @Override
    public String doubtGround() {
        return "바닥과 거의 구별되지 않습니다. 더 밝거나 어두운 곳에 놓으세요.";
    }

    @Override
    public String doubtOver(String piece) {
        return "천 " + piece + "에 겹칩니다. 하나를 빼지 않으면 같은 천이 두 번 들어갑니다.";
    }

    @Override
    public String doubtRim() {
        return "가장자리 일부가 보이지 않습니다. 윤곽을 확인하거나 다른 바닥에 놓으세요.";
    }

    @Override
    public String doubtRough() {
        return "귀퉁이를 대강 놓았습니다. 자세히 보고 제자리로 끌어 옮기세요.";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "이렇게 비스듬하면 A4와 레터가 비슷해 보입니다. 이것이 맞는지 확인하거나(" + sheet + ") 바로 위에서 찍으세요.";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return sheet + ": 바닥과 거의 구별되지 않는데, 모든 크기가 여기에 달려 있습니다. 사진에서 윤곽이 맞는지 보거나, 더 어둡거나 색이 있는 바닥에 놓고 다시 찍으세요.";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return sheet + ": 비율이 " + share + " % 어긋나 보입니다. 일부가 가려졌거나, 평평하지 않거나, 사진에서 너무 작을 수 있는데, 모든 크기가 여기에 달려 있습니다. 평평하게 다 보이도록 놓고 더 가까이에서 다시 찍으세요.";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return "누른 것의 비율이 " + share + " % 어긋나 보입니다(" + sheet + "). 귀퉁이가 빗나갔거나 평평하지 않을 수 있습니다. 모든 크기가 여기에 달려 있습니다.";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return sheet + ": " + "보이지 않는 변이 있어" + " 누른 자리에 있는 것으로 보았고, 모든 크기가 여기에 달려 있습니다.";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "사진 속 시트들이 서로 맞지 않습니다. 한 장으로 재면 다른 장으로 잴 때보다 전체가 약 " + share + " % 더 큽니다. 평평하고 가리지 않게 놓거나 한 장만 남기고 다시 찍어 주세요.";
    }

    @Override
    public String doubtSides() {
        return "변을 잘 알 수 없습니다. 윤곽을 확인하세요.";
    }

    @Override
    public String doubtTwo() {
        return "맞닿거나 겹친 천 두 장일 수 있습니다. 떼어 놓거나 여기서 나누세요.";
    }

    @Override
    public String doubtUneven() {
        return "가장자리가 고르지 않습니다. 윤곽을 확인하세요.";
    }

    @Override
    public String goneFabric() {
        return "그 천은 이 사진에 더 없습니다.";
    }

    @Override
    public String gonePiece(String piece) {
        return Particles.fitted("이 사진에 천 " + piece + "은(는) 더 없습니다.");
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "그림이 20 MB를 넘습니다. 줄여서 다시 해 보세요." : why.equals("DAMAGED") ? "그림이 손상되었습니다. PNG나 JPEG로 다시 저장하세요." : why.equals("KIND") ? "PNG나 JPEG 그림이 아닙니다. 그중 하나로 저장하세요." : "그림이 50메가픽셀을 넘습니다. 줄여서 다시 해 보세요.");
    }

    @Override
    public String noMarks() {
        return "측정지를 찾지 못했습니다. 네모 표시가 셋도 보이지 않습니다. 천 사이에 평평하게, 가리지 않게 놓고, 더 가까이 위에서 또렷하게 찍으세요.";
    }

    @Override
    public String noRival(String sheet) {
        return "사진에 둘이 있습니다(" + sheet + "). 하나는 모양이 맞고, 하나는 그만큼 희지만 휘었거나, 가려졌거나, 그늘졌거나, 잘렸습니다. 맞는 것의 네 귀퉁이를 누르거나, 다른 하나를 치우고 다시 찍으세요.";
    }

    @Override
    public String noRound(String sheet) {
        return "누른 네 귀퉁이가 한 모양을 두르지 않습니다. 차례로 돌아가며 다시 누르세요(" + sheet + ").";
    }

    @Override
    public String noShadow(String sheet) {
        return "사진에 둘이 있습니다(" + sheet + "). 큰 것도 희지만 그림자가 걸쳐 있습니다. 다른 하나를 치우거나, 종이 전체를 밝은 곳이나 그늘에 놓고 다시 찍으세요.";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "네 귀퉁이 사이의 비율이 " + share + " % 어긋납니다(" + sheet + "). 무엇인지 고르거나 귀퉁이를 다시 누르세요.";
    }

    @Override
    public String noSizes(String sheet) {
        return "사진에 같은 모양이 둘 있고 크기가 다릅니다(" + sheet + "). 모양이 같은 천을 치우고 다시 찍으세요.";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "놓인 것이 다른 것으로 보입니다. 고른 것: " + sheet + ", 보이는 것: " + twin + ". 보이는 것을 고르거나, 고른 것을 놓고 다시 찍으세요.";
    }

    @Override
    public String notePicture(String numbers) {
        return "사진에서: " + numbers;
    }

    @Override
    public String outlineCorner() {
        return "이 천에는 그 귀퉁이가 더 없습니다.";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "천의 귀퉁이는 셋 이상입니다. 하나 더 놓으세요." : fault.equals("OUTSIDE") ? "귀퉁이가 사진 밖에 있습니다. 되돌리고 사진 안에 놓으세요." : fault.equals("CROSSING") ? "두 변이 엇갈립니다. 마지막 귀퉁이를 되돌리고 차례로 돌아가며 놓으세요." : fault.equals("SMALL") ? "거기서는 1 cm × 1 cm도 잘라 낼 수 없습니다. 천은 그보다 큽니다." : "귀퉁이는 " + most + "개까지입니다. 몇 개를 되돌리고, 나중에 변에 더 넣으세요.") + " 더한 것은 없습니다.";
    }

    @Override
    public String outlineGrain() {
        return "선이 너무 짧아 방향을 알 수 없습니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String outlineNone() {
        return "그러면 윤곽이 남지 않습니다. 귀퉁이는 셋 이상이고, 가장자리 반대편에 있으면 안 됩니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String outlineSplit(String piece) {
        return Particles.fitted("선이 천 " + piece + "을(를) 둘로 나누지 않습니다. 끝까지 가로질러 그으세요. 바뀐 것은 없습니다.");
    }

    @Override
    public String pictureDamaged() {
        return "사진이 손상되었습니다. JPEG로 다시 저장하여 보내세요.";
    }

    @Override
    public String pictureHeic() {
        return "HEIC(또는 AVIF) 사진이라 여기서 읽을 수 없습니다. JPEG로 보내세요. 카메라 설정에서 JPEG나 호환성이 가장 높은 형식을 골라 다시 찍거나, 열어서 JPEG로 저장하거나 공유하세요.";
    }

    @Override
    public String pictureKind() {
        return "JPEG나 PNG 사진이 아닙니다. 그중 하나로 보내세요.";
    }

    @Override
    public String pictureLarge() {
        return "파일이 80 MB보다 큽니다. 전화기로 찍은 그대로 보내세요.";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "사진이 " + width + " × " + height + " 화소(" + mega + "메가픽셀)입니다. 50까지 읽습니다. 더 작은 것을 보내세요.";
    }

    @Override
    public String pictureScans() {
        return "이 JPEG는 카메라가 만들지 않는 방식입니다. 다시 저장하여 보내세요.";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "사진이 " + width + " × " + height + " 화소뿐입니다. 재려면 2메가픽셀이 넘어야 합니다. 원래 크기로 보내세요.";
    }

    @Override
    public String pictureUnread() {
        return "사진이 손상되었거나 여기서 읽을 수 없는 종류입니다. JPEG로 다시 저장하여 보내세요.";
    }

    @Override
    public String referenceCorner(String corner) {
        return Particles.fitted("\"" + corner + "\"은(는) 귀퉁이가 아닙니다. 가로와 세로 어디쯤인지 사진에 대한 비율로 적으세요. 예: 0.21 0.30.");
    }

    @Override
    public String referenceCorners(String count) {
        return "종이에는 귀퉁이가 넷인데 " + count + "개를 적었습니다. 넷을 차례로 쉼표로 나누어 적으세요.";
    }

    @Override
    public String referenceLine() {
        return "측정지의 선은 약 20 cm(7 7/8 in)여야 합니다. 양 끝 금 사이의 가늘고 긴 선을 한 번 더 재세요.";
    }

    @Override
    public String referenceSmall(String size) {
        return Particles.fitted(size + "은(는) 기준으로 삼기에 너무 작습니다. 2 cm가 넘는 것을 쓰세요.");
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return "사진의 " + (where.equals("MIDDLE") ? "한가운데" : where.equals("UPPER_LEFT") ? "왼쪽 위" : where.equals("UPPER") ? "위쪽" : where.equals("UPPER_RIGHT") ? "오른쪽 위" : where.equals("LEFT") ? "왼쪽" : where.equals("RIGHT") ? "오른쪽" : where.equals("LOWER_LEFT") ? "왼쪽 아래" : where.equals("LOWER") ? "아래쪽" : "오른쪽 아래") + "에 " + (white.equals("yes") ? "흰 것" : "귀퉁이가 넷인 것") + "이 있지만, " + (why.equals("CUT") ? "사진 밖으로 나가거나, 나가는 것에 닿아 있습니다" : why.equals("RIM") ? "가장자리가 곧은 네 변이 아닙니다. 무엇이 닿거나 얹혔거나, 접혔습니다" : "사진에서 너무 작거나 흐려 기준이 되지 못합니다") + ".";
    }

    @Override
    public String seenNothing(String white) {
        return "바닥에서 드러나는 " + (white.equals("yes") ? "희고 변이 곧은 네모" : "변이 곧은 네모") + "가 없습니다. 천 사이에 평평하게, 사진에 다 들어오게, 아무것에도 닿지 않게 놓고 위에서 찍으세요.";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return "사진의 " + (where.equals("MIDDLE") ? "한가운데" : where.equals("UPPER_LEFT") ? "왼쪽 위" : where.equals("UPPER") ? "위쪽" : where.equals("UPPER_RIGHT") ? "오른쪽 위" : where.equals("LEFT") ? "왼쪽" : where.equals("RIGHT") ? "오른쪽" : where.equals("LOWER_LEFT") ? "왼쪽 아래" : where.equals("LOWER") ? "아래쪽" : "오른쪽 아래") + "에 " + (white.equals("yes") ? "흰 것" : "귀퉁이가 넷인 것") + "이 있지만, 비율이 " + share + " % 어긋납니다(" + sheet + "). 그것이 맞다면 휘었거나 일부가 가려졌습니다. 아무것에도 닿지 않게 평평하게 놓고 다시 찍으세요. 아니면 무엇인지 고르세요.";
    }

    @Override
    public String seenWhite(String sheet) {
        return "사진 대부분이 밝고 거의 색이 없습니다. 종이가 사진을 채우거나, 종이만큼 흰 것 위에 놓였습니다(" + sheet + "). 더 어둡거나 색이 있는 것 위에, 천을 둘레에 두고, 아무것에도 닿지 않게 놓고 다시 찍으세요.";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "측정지" : sheet.equals("A4") ? "A4 종이" : sheet.equals("LETTER") ? "레터 종이" : sheet.equals("CARD") ? "카드" : "직사각형");
    }
}
