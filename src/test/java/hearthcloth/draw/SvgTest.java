package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.cloth.DrawingScale;
import hearthcloth.draw.cloth.FacePicture;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.guide.CutBlocks;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.words.speech.Voice;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** Pictures as SVG: kept ones, hostile names, letters of their own; and as PNG. */
class SvgTest {

    private static final PlanFolder SMALL = new PlanFolder(Samples.small(), Ruler.EIGHTHS, Paper.A4);

    @Test
    void front_and_back_are_kept() throws IOException {
        Golden.isKept("front.svg", SvgWriter.writeBare(SMALL.face(Face.FRONT)));
        Golden.isKept("back.svg", SvgWriter.writeBare(SMALL.face(Face.BACK)));
    }

    @Test
    void the_cutting_plan_is_kept() throws IOException {
        Plan plan = SMALL.plan();
        Picture cut = CutBlocks.sheet(plan, Guide.of(plan, Ruler.EIGHTHS).cutting(), Voice.english(Ruler.EIGHTHS));
        Golden.isKept("cut.svg", SvgWriter.writeBare(cut));
    }

    @Test
    void a_step_with_a_trim_and_one_with_a_wrong_side_are_kept() throws IOException {
        Plan plan = SMALL.plan();
        var steps = plan.cloth().steps();
        Golden.isKept(
                "step-1.svg",
                SvgWriter.writeBare(new StepPicture(plan, steps.get(0), Voice.english(Ruler.EIGHTHS)).within(78, 78)));
        Golden.isKept(
                "step-last.svg",
                SvgWriter.writeBare(new StepPicture(plan, steps.get(steps.size() - 1), Voice.english(Ruler.EIGHTHS))
                        .within(78, 78)));
    }

    @Test
    void names_that_mean_harm_stay_text(@TempDir Path folder) throws Exception {
        new PlanFolder(Samples.large(2, 2), Ruler.MILLIMETRES, Paper.A4).write(folder, GuideLength.FULL);
        for (String file : List.of("front.svg", "back.svg", "cut.svg")) {
            String svg = Files.readString(folder.resolve(file));
            Document document = parsed(svg);
            assertThat(document.getElementsByTagName("script").getLength()).isZero();
            assertThat(svg).doesNotContain("\u202e", "\u0007");
            assertThat(texts(document)).anyMatch(text -> text.contains("<script>alert('x')"));
        }
    }

    @Test
    void no_picture_reaches_out_of_itself(@TempDir Path folder) throws IOException {
        SMALL.write(folder, GuideLength.FULL);
        for (String file : List.of("front.svg", "back.svg", "cut.svg")) {
            String svg = Files.readString(folder.resolve(file)).replace("http://www.w3.org/2000/svg", "");
            assertThat(svg).doesNotContain("http").doesNotContainPattern("href=\"(?!#)|url\\((?!#|data:font)");
        }
    }

    /** Java's own reader of fonts is the judge: the embedded letters are as wide as the labels were measured. */
    @Test
    void the_embedded_letters_are_as_wide_as_they_were_measured() throws Exception {
        Picture picture = SMALL.face(Face.FRONT);
        Matcher face = Pattern.compile("font-weight:(\\d+);src:url\\(data:font/ttf;base64,([^)]+)\\)")
                .matcher(SvgWriter.write(picture));
        int faces = 0;
        while (face.find()) {
            faces++;
            Font font = Font.createFont(
                    Font.TRUETYPE_FONT,
                    new ByteArrayInputStream(Base64.getDecoder().decode(face.group(2))));
            for (Mark.Words words : picture.words()) {
                if (String.valueOf(words.type().weight().number()).equals(face.group(1))) {
                    double width = font.deriveFont(1000f)
                            .getStringBounds(words.text(), new FontRenderContext(null, true, true))
                            .getWidth();
                    assertThat(width * words.type().size() / 1000)
                            .as(words.text())
                            .isCloseTo(
                                    words.bounds().width()
                                            * (words.type().way() == hearthcloth.draw.picture.Type.Way.UP
                                                    ? words.bounds().height()
                                                            / words.bounds().width()
                                                    : 1),
                                    org.assertj.core.api.Assertions.within(0.01));
                }
            }
        }
        assertThat(faces).isEqualTo(3);
    }

    @Test
    void a_png_shows_the_colours_of_the_cloth() throws IOException {
        Picture picture =
                new FacePicture(SMALL.plan(), Face.FRONT, Voice.english(Ruler.EIGHTHS)).at(new DrawingScale(5));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(picture, 254)));
        assertThat(image.getWidth()).isEqualTo((int) Math.ceil(picture.width() * 10));
        int kelp = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                kelp += (image.getRGB(x, y) & 0xffffff) == 0x3f5d52 ? 1 : 0;
            }
        }
        assertThat(kelp).isGreaterThan(image.getWidth() * image.getHeight() / 5);
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> texts(Document document) {
        List<String> texts = new ArrayList<>();
        for (String tag : List.of("text", "title")) {
            NodeList found = document.getElementsByTagName(tag);
            for (int i = 0; i < found.getLength(); i++) {
                texts.add(found.item(i).getTextContent());
            }
        }
        return texts;
    }
}
