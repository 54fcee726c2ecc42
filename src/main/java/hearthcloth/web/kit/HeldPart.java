package hearthcloth.web.kit;

import gg.jte.Content;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A section of an answer, as {@code part/held.jte} shows it: who has it already, as it would be sent, is only told so. A press
 * on the bench changes little of what stands there, and on a tablet reading the rest anew takes longer than all else.
 *
 * @param of which section
 * @param text what stands in it, as HTML
 * @param mark the same for the same section with the same in it, whatever the cloth's version is
 * @param isThere whether the page that asks has it
 */
public record HeldPart(String of, String text, String mark, boolean isThere) {

    private static final String HEADER = "Held";

    /** A page that was shown for another version counts its fields up itself. */
    private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"\\d+\"");

    /** The marks of the sections which the page that asks has. */
    public static Set<String> by(Context context) {
        String marks = context.header(HEADER);
        return marks == null || !PageContext.isPart(context)
                ? Set.of()
                : Arrays.stream(marks.split(" ", -1)).collect(Collectors.toSet());
    }

    /**
     * A section of this name.
     *
     * @param held the marks which the page that asks has
     */
    public static HeldPart of(String of, Set<String> held, Content content) {
        StringOutput output = new StringOutput();
        content.writeTo(new OwaspHtmlTemplateOutput(output));
        String text = output.toString();
        byte[] bare = VERSION.matcher(text).replaceAll("").getBytes(StandardCharsets.UTF_8);
        String mark = of + "-" + UUID.nameUUIDFromBytes(bare);
        return new HeldPart(of, text, mark, held.contains(mark));
    }
}
