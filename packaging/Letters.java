import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Takes from a large font the letters that printed pages may need: java -cp "target/run/lib/*" packaging/Letters.java
 * korean|japanese IN.ttf OUT.ttf. Called by packaging/letters.
 *
 * <p>Korean: the 2350 syllables of KS X 1001 and the single letters. Japanese: the signs, kana and kanji of JIS X 0208 up
 * to its level 1 (2965 kanji), and those of the 2010 list of common kanji (Jōyō) that are not among them, but for U+20B9F, whose usual form U+53F1 is there. Java knows the
 * two standards by its charsets EUC-KR and EUC-JP; the last list is from memory.
 */
final class Letters {

    private static final String ADDED_2010 =
            "挨曖宛嵐畏萎椅彙茨咽淫唄鬱怨媛艶旺岡臆俺苛牙瓦楷潰諧崖蓋骸柿顎葛釜鎌韓玩伎亀毀畿臼嗅巾僅錦惧串窟熊詣憬稽隙桁拳鍵舷股虎錮勾梗喉乞傲駒頃痕"
                    + "沙挫采塞埼柵刹拶斬恣摯餌鹿叱嫉腫呪袖羞蹴憧拭尻芯腎須裾凄醒脊戚煎羨腺詮箋膳狙遡曽爽痩踪捉遜汰唾堆戴誰旦綻緻酎貼嘲捗椎爪鶴諦溺塡填妬賭藤"
                    + "瞳栃頓貪丼那奈梨謎鍋匂虹捻罵剝剥箸氾汎阪斑眉膝肘阜訃蔽餅璧蔑哺蜂貌頰頬睦勃昧枕蜜冥麺冶弥闇喩湧妖瘍沃拉辣藍璃慄侶瞭瑠呂賂弄籠麓脇堯槇遙瑤凜";

    private static final List<String> TABLES =
            List.of("head", "hhea", "maxp", "OS/2", "name", "post", "cmap", "loca", "glyf", "hmtx");

    private Letters() {}

    public static void main(String[] args) throws IOException {
        try (InputStream in = Files.newInputStream(Path.of(args[1]));
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter subset = new TTFSubsetter(font, TABLES);
            subset.add(' ');
            (args[0].equals("korean") ? korean() : japanese()).forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            Files.write(Path.of(args[2]), out.toByteArray());
        }
    }

    private static Set<Integer> korean() {
        CharsetEncoder known = Charset.forName("EUC-KR").newEncoder();
        Set<Integer> letters = new TreeSet<>();
        for (char letter = 0x3131; letter <= 0xd7a3; letter++) {
            boolean hangul = letter >= 0xac00 || letter <= 0x3163;
            if (hangul && known.canEncode(letter)) {
                letters.add((int) letter);
            }
        }
        return letters;
    }

    private static Set<Integer> japanese() {
        Set<Integer> letters = new TreeSet<>();
        for (int row = 0xa1; row <= 0xcf; row++) {
            for (int cell = 0xa1; cell <= 0xfe; cell++) {
                int letter = new String(new byte[] {(byte) row, (byte) cell}, Charset.forName("EUC-JP")).codePointAt(0);
                if (letter != 0xfffd && (row <= 0xa5 || row >= 0xb0)) {
                    letters.add(letter);
                }
            }
        }
        ADDED_2010.codePoints().forEach(letters::add);
        // Signs that keyboards write with another number than the standard's table has.
        "〜～－―∥￠￡￢".codePoints().forEach(letters::add);
        return letters;
    }
}
