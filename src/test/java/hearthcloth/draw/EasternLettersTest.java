package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Hangul, kana and kanji in the three kinds of files. */
class EasternLettersTest {

    private static final String KOREAN = "막대 1A를 바탕의 위쪽 가장자리에 겉끼리 맞대고 박습니다.";
    private static final String JAPANESE = "縫い代は、上側の布の端から１センチのところを縫います。";

    private static Picture page(String... texts) {
        TextColumn column = new TextColumn(70);
        for (String text : texts) {
            column.words(text, Type.of(4, Weight.REGULAR, Palette.INK)).gap(2);
            column.words(text, Type.of(4, Weight.SEMIBOLD, Palette.INK)).gap(2);
        }
        return column.finished("letters");
    }

    @Test
    void a_pdf_embeds_the_letters_it_shows_and_they_can_be_searched() throws IOException {
        byte[] pdf = PdfWriter.write("letters", "ko", List.of(page(KOREAN, JAPANESE, "실 🧵")));

        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s", "");
            assertThat(text)
                    .contains(KOREAN.replace(" ", ""))
                    .contains(JAPANESE)
                    .contains("실□");
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
        assertThat(pdf.length).isLessThan(150_000);
        assertThat(PdfWriter.write("letters", "ko", List.of(page(KOREAN, JAPANESE, "실 🧵"))))
                .isEqualTo(pdf);
    }

    /** Fails where a letter is drawn as nothing or all as the same box: each line has ink of its own shape. */
    @Test
    void a_png_and_a_pdf_show_the_same_letters() throws IOException {
        for (String letter : List.of("막", "縫", "い", "ロ", "、", "🧵", "바 1A", "表 « a »")) {
            Picture one = page(letter);
            BufferedImage png = ImageIO.read(new ByteArrayInputStream(PngWriter.write(one, 300)));
            byte[] pdf = PdfWriter.write("one", "ja", List.of(one));
            try (PDDocument document = Loader.loadPDF(pdf)) {
                BufferedImage shown = new PDFRenderer(document).renderImageWithDPI(0, 300);
                double inPng = ink(png);
                double inPdf = ink(shown);
                assertThat(inPng).as(letter).isGreaterThan(20).isBetween(inPdf * 0.9, inPdf * 1.1);
            }
        }
    }

    /** The sum of how dark each pixel is. */
    private static double ink(BufferedImage image) {
        double ink = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                ink += 1 - (image.getRGB(x, y) & 0xff) / 255.0;
            }
        }
        return ink;
    }

    @Test
    void a_german_compound_is_parted_with_hyphens_and_french_marks_stay_with_their_word() {
        Type type = Type.of(4, Weight.REGULAR, Palette.INK);
        List<String> lines = Paragraph.lines("Die Nahtzugabenmarkierungslinie", 25, type);
        assertThat(lines).hasSizeGreaterThan(2).allMatch(line -> type.width(line) <= 25);
        assertThat(String.join("", lines).replace("-", "")).isEqualTo("DieNahtzugabenmarkierungslinie");
        assertThat(lines.subList(1, lines.size() - 1)).allMatch(line -> line.endsWith("-"));

        double width = type.width("Retournez-la");
        assertThat(Paragraph.lines("Retournez-la !", width, type)).noneMatch(line -> line.startsWith("!"));
    }

    @Test
    void an_svg_carries_its_own_small_fonts() throws Exception {
        String svg = SvgWriter.write(page(KOREAN, JAPANESE));

        assertThat(svg).contains("font-family=\"'hearthcloth','hearthcloth ko','hearthcloth ja',");
        Matcher face = Pattern.compile("font-family:'hearthcloth (ko|ja)';[^(]*\\(data:font/ttf;base64,([^)]*)\\)")
                .matcher(svg);
        int faces = 0;
        while (face.find()) {
            faces++;
            byte[] file = Base64.getDecoder().decode(face.group(2));
            Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file));
            assertThat(font.canDisplay(face.group(1).equals("ko") ? '막' : '縫')).isTrue();
            assertThat(font.canDisplay(face.group(1).equals("ko") ? '힣' : '鬱')).isFalse();
        }
        assertThat(faces).isEqualTo(4);
        assertThat(SvgWriter.write(page("Nähen"))).doesNotContain("hearthcloth ko");
    }
}
