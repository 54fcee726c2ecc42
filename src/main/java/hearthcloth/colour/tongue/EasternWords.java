package hearthcloth.colour.tongue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Korean and Japanese, which put no blanks between a word and what belongs to it: at each place the longest known word is
 * taken. A colour written as a single kanji counts only where it does not belong to a longer word: "青い" and "青無地", but
 * neither "青山さん" nor "赤ちゃん". A Korean word counts from the beginning of what stands between blanks.
 */
final class EasternWords {

    private static final Map<String, String> KOREAN = read("""
            red: 빨강 빨간 붉은 적색 홍색 레드
            scarlet: 다홍
            orange: 주황 오렌지
            yellow: 노랑 노란 황색 개나리색 옐로
            yellowgreen: 연두
            green: 초록 녹색 풀색 그린
            blue: 파랑 파란 푸른 청색 블루
            sky: 하늘색 하늘빛
            indigo: 남색 쪽빛 인디고
            navy: 감색 곤색 네이비 군청
            purple: 보라 퍼플
            plum: 자주 자두색
            pink: 분홍 핑크
            brown: 갈색 브라운
            chestnut: 밤색
            dark_brown: 고동색 암갈색
            grey: 회색 잿빛 그레이 쥐색
            black: 검정 검은 까만 흑색 블랙
            white: 흰 하얀 하양 백색 화이트
            beige: 베이지
            ivory: 아이보리 상아색
            cream: 크림 미색
            ecru: 소색 생지
            natural: 자연색 내추럴
            khaki: 카키
            mint: 민트
            teal: 청록
            jade: 옥색 비취색
            sage: 쑥색
            mustard: 겨자색 머스타드
            apricot: 살구색
            peach: 복숭아색
            wine: 와인
            burgundy: 버건디
            brick: 벽돌색
            gold: 금색 골드
            silver: 은색 실버
            olive: 올리브
            turquoise: 터키석 터콰이즈 터키색
            coral: 산호색 코랄
            lavender: 라벤더
            charcoal: 차콜 먹색
            light: 연한 옅은 밝은 라이트
            dark: 진한 짙은 어두운 다크
            bright: 선명한
            dusty: 바랜 물빠진
            pastel: 파스텔
            linen: 리넨 린넨 아마
            ramie: 모시
            hemp: 삼베 대마
            denim: 데님 청바지 청지
            calico: 광목
            corduroy: 코듀로이 골덴 벨벳 우단
            twill: 능직 트윌
            check: 체크 깅엄 격자
            stripe: 줄무늬 스트라이프
            dot: 물방울 땡땡이 도트
            floral: 꽃
            leaf: 나뭇잎 잎무늬
            star: 별
            bird: 새무늬
            print: 무늬 프린트 날염
            small: 작은 잔
            large: 큰
            """);

    private static final Map<String, String> JAPANESE = read("""
            red: 赤 赤い 赤色 レッド
            scarlet: 朱 朱色 緋色
            orange: 橙 橙色 オレンジ だいだい色
            yellow: 黄 黄色 黄色い イエロー
            yellowgreen: 黄緑 黄緑色 若草色 萌黄 萌黄色
            green: 緑 緑色 みどり グリーン
            bluish_green: 青緑 青緑色
            blue: 青 青い 青色 ブルー
            sky: 水色 空色
            navy: 紺 紺色 濃紺 ネイビー
            indigo: 藍 藍色 藍染 藍染め インディゴ
            purple: 紫 紫色 むらさき パープル
            wisteria: 藤色
            pink: ピンク 桃色
            pale_pink: 桜色
            brown: 茶 茶色 茶色い ブラウン 柿渋
            dark_brown: 焦げ茶 焦茶 こげ茶 チョコレート色
            grey: 灰色 グレー グレイ 鼠色 ねずみ色 グレイッシュ
            black: 黒 黒い 黒色 ブラック
            white: 白 白い 白色 ホワイト
            unbleached: 生成り 生成 きなり
            beige: ベージュ
            ivory: アイボリー 象牙色
            cream: クリーム
            khaki: カーキ
            pistachio: 抹茶色 抹茶
            greyish_red: 小豆色 あずき色
            burgundy: 臙脂 臙脂色 えんじ えんじ色 バーガンディ
            wine: ワインレッド ワイン色
            mustard: 辛子色 からし色 マスタード
            dark_green: 深緑 深緑色 モスグリーン
            olive: 鶯色 うぐいす色 オリーブ
            mint: ミント
            turquoise: ターコイズ トルコ石
            lavender: ラベンダー
            coral: コーラル 珊瑚色
            gold: 金色 ゴールド
            silver: 銀色 シルバー
            charcoal: 墨色 チャコール
            brick: 煉瓦色 れんが色 レンガ色
            saffron: 山吹色
            reddish_orange: 柿色
            light: 薄い 薄 うすい 淡い 淡 明るい ライト
            dark: 濃い 濃 こい 暗い ダーク
            deep: 深い
            bright: 鮮やかな 鮮やか
            dusty: くすんだ 色あせた
            pastel: パステル
            linen: リネン 麻
            denim: デニム ジーンズ
            calico: シーチング
            corduroy: コーデュロイ コール天 ビロード ベルベット 別珍
            twill: ツイル 綾織 綾織り
            check: チェック 格子 ギンガム
            stripe: 縞 しま模様 ストライプ ボーダー
            dot: 水玉 ドット
            floral: 花柄 花模様 花
            leaf: リーフ 葉っぱ
            star: 星
            bird: 鳥柄
            print: プリント 柄 模様
            small: 小さい 小さな 小
            large: 大きい 大きな 大
            plum: グレープ
            thread: スレッド
            tea: 緑茶 紅茶
            red_ground: 赤地
            blue_ground: 青地
            black_ground: 黒地
            white_ground: 白地
            navy_ground: 紺地
            """);

    /** What may follow a single kanji that is a word by itself: endings, "and", "cloth", "plain", a cloth, a pattern. */
    private static final String MAY_FOLLOW = "いのとやに色系っ無柄布生麻綿縞格水花地、。・，, 　/赤橙黄緑青紺藍紫茶黒白";

    private static final String MAY_PRECEDE = "薄淡濃地色赤橙黄緑青紺藍紫茶黒白";

    private EasternWords() {}

    private static Map<String, String> read(String table) {
        Map<String, String> words = new HashMap<>();
        for (String line : table.strip().split("\n", -1)) {
            int colon = line.indexOf(':');
            for (String word : line.substring(colon + 1).strip().split("\\s+", -1)) {
                words.put(word, line.substring(0, colon).strip().replace('_', ' '));
            }
        }
        return Map.copyOf(words);
    }

    /** The name in parts, each English or as it was written. */
    static List<String> parts(String name) {
        List<String> parts = new ArrayList<>();
        StringBuilder rest = new StringBuilder();
        for (int at = 0; at < name.length(); ) {
            String word = longest(name, at);
            if (word.isEmpty()) {
                rest.append(name.charAt(at));
                at++;
                continue;
            }
            parts.add(LatinWords.english(rest.toString().strip()));
            rest.setLength(0);
            parts.add(meaning(word));
            at += word.length();
        }
        parts.add(LatinWords.english(rest.toString().strip()));
        return parts.stream().filter(part -> !part.isBlank()).toList();
    }

    private static String meaning(String word) {
        String japanese = JAPANESE.get(word);
        if (japanese != null) {
            return japanese;
        }
        String korean = KOREAN.get(word);
        return korean != null ? korean : meaning(word.substring(0, 1).equals("진") ? "진한" : "연한");
    }

    /** The longest word that stands at this place; empty if none. */
    private static String longest(String name, int from) {
        for (int to = Math.min(name.length(), from + LONGEST); to > from; to--) {
            String word = name.substring(from, to);
            if (JAPANESE.containsKey(word) && mayStand(name, from, to)) {
                return word;
            }
            if (isKorean(word, name, from, to)) {
                return word;
            }
        }
        return "";
    }

    private static final int LONGEST = 7;

    private static boolean isKorean(String word, String name, int from, int to) {
        boolean begins = from == 0
                || !Character.isLetter(name.charAt(from - 1))
                || (isTinge(name.charAt(from - 1)) && (from == 1 || !Character.isLetter(name.charAt(from - 2))));
        if (!begins) {
            return false;
        }
        if (word.length() == 1 && isTinge(word.charAt(0))) {
            return to < name.length() && KOREAN.containsKey(known(name, to));
        }
        boolean alone = to == name.length() || !Character.isLetter(name.charAt(to)) || name.startsWith("색", to);
        boolean picture = word.equals("꽃") || word.equals("별");
        return KOREAN.containsKey(word) && (word.length() > 1 || alone || picture);
    }

    /** 연 and 진 before a colour: pale and dark. */
    private static boolean isTinge(char letter) {
        return letter == '연' || letter == '진';
    }

    /** The Korean word that starts here; empty if none. */
    private static String known(String name, int from) {
        for (int to = Math.min(name.length(), from + LONGEST); to > from + 1; to--) {
            if (KOREAN.containsKey(name.substring(from, to))) {
                return name.substring(from, to);
            }
        }
        return "";
    }

    /** A single kanji must not be part of a longer word that is not known. */
    private static boolean mayStand(String name, int from, int to) {
        if (to - from > 1) {
            return true;
        }
        char letter = name.charAt(from);
        boolean begins =
                from == 0 || !isKanji(name.charAt(from - 1)) || MAY_PRECEDE.indexOf(name.charAt(from - 1)) >= 0;
        if ("薄淡濃大小".indexOf(letter) >= 0) {
            return begins && to < name.length() && !longestColour(name, to).isEmpty();
        }
        boolean ends = to == name.length()
                || MAY_FOLLOW.indexOf(name.charAt(to)) >= 0
                || !(isKanji(name.charAt(to)) || isHiragana(name.charAt(to)));
        return ends && (begins || "麻柄花縞".indexOf(letter) >= 0);
    }

    private static String longestColour(String name, int from) {
        for (int to = Math.min(name.length(), from + LONGEST); to > from; to--) {
            if (JAPANESE.containsKey(name.substring(from, to))) {
                return name.substring(from, to);
            }
        }
        return "";
    }

    private static boolean isKanji(char letter) {
        return letter >= 0x3400 && letter <= 0x9fff;
    }

    private static boolean isHiragana(char letter) {
        return letter >= 0x3041 && letter <= 0x309f;
    }
}
