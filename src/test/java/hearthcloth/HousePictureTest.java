package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The picture on the architecture page is drawn from the compiled imports, so that it cannot be untrue: where it differs
 * from the one that is kept, this fails, and {@code -Dgolden=write} writes it anew.
 */
class HousePictureTest {

    private static final Path PICTURE = Path.of("docs", "pictures", "house.svg");
    private static final Pattern ROOM = Pattern.compile("^hearthcloth\\.(\\w+)(?:\\.(.+))?$");
    private static final int WIDTH = 1080;
    private static final int BOX = 150;
    private static final int GAP = 24;
    private static final int LINE = 16;

    /** Which rooms each room knows, and the sub-rooms of each. */
    private record House(Map<String, Set<String>> knows, Map<String, Set<String>> parts) {

        static House of(JavaClasses classes) {
            Map<String, Set<String>> knows = new TreeMap<>();
            Map<String, Set<String>> parts = new TreeMap<>();
            for (JavaClass each : classes) {
                Matcher at = ROOM.matcher(each.getPackageName());
                if (!at.matches() || each.getPackageName().startsWith("hearthcloth.web.pages")) {
                    continue;
                }
                String room = at.group(1);
                knows.computeIfAbsent(room, name -> new TreeSet<>());
                parts.computeIfAbsent(room, name -> new TreeSet<>());
                if (at.group(2) != null) {
                    parts.getOrDefault(room, new TreeSet<>()).add(at.group(2));
                }
                for (Dependency arrow : each.getDirectDependenciesFromSelf()) {
                    Matcher to = ROOM.matcher(arrow.getTargetClass().getPackageName());
                    if (to.matches() && !to.group(1).equals(room)) {
                        knows.getOrDefault(room, new TreeSet<>()).add(to.group(1));
                    }
                }
            }
            return new House(knows, parts);
        }

        /** 0 on the ground; each room one above the highest it knows. */
        int floor(String room) {
            return knows.getOrDefault(room, Set.of()).stream()
                    .mapToInt(below -> 1 + floor(below))
                    .max()
                    .orElse(0);
        }

        /** Without arrows that a longer way makes needless. */
        Set<String> nearest(String room) {
            Set<String> nearest = new TreeSet<>(knows.getOrDefault(room, Set.of()));
            nearest.removeIf(far ->
                    knows.getOrDefault(room, Set.of()).stream().anyMatch(mid -> !mid.equals(far) && reaches(mid, far)));
            return nearest;
        }

        private boolean reaches(String from, String to) {
            return knows.getOrDefault(from, Set.of()).stream().anyMatch(next -> next.equals(to) || reaches(next, to));
        }
    }

    private record Spot(int x, int y, int height) {}

    @Test
    void the_picture_of_the_house_is_drawn_from_its_imports() throws IOException {
        String drawn = drawn(House.of(ImportedHouse.classes()));
        if ("write".equals(System.getProperty("golden"))) {
            Files.writeString(PICTURE, drawn);
        }
        assertThat(Files.readString(PICTURE)).isEqualTo(drawn);
    }

    private static String drawn(House house) {
        Map<Integer, List<String>> floors = new TreeMap<>((a, b) -> b - a);
        house.knows()
                .keySet()
                .forEach(room -> floors.computeIfAbsent(house.floor(room), f -> new ArrayList<>())
                        .add(room));
        Map<String, Spot> spots = new TreeMap<>();
        int y = GAP;
        for (List<String> rooms : floors.values()) {
            int tallest =
                    rooms.stream().mapToInt(room -> height(house, room)).max().orElse(0);
            int x = (WIDTH - rooms.size() * (BOX + GAP) + GAP) / 2;
            for (String room : rooms) {
                spots.put(room, new Spot(x, y, height(house, room)));
                x += BOX + GAP;
            }
            y += tallest + 2 * GAP;
        }
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " "
                + y
                + "\" font-family=\"sans-serif\">\n<title>The rooms of Hearthcloth, each above what it knows</title>\n"
                + "<rect width=\"" + WIDTH + "\" height=\"" + y + "\" fill=\"#fbfaf5\"/>\n");
        spots.forEach((room, from) ->
                house.nearest(room).forEach(below -> arrow(svg, from, spots.getOrDefault(below, from))));
        spots.forEach((room, at) -> box(svg, house, room, at));
        return svg.append("</svg>\n").toString();
    }

    private static int height(House house, String room) {
        return LINE * (house.parts().getOrDefault(room, Set.of()).size() + 2);
    }

    private static void arrow(StringBuilder svg, Spot from, Spot to) {
        int x1 = from.x() + BOX / 2;
        int y1 = from.y() + from.height();
        int x2 = to.x() + BOX / 2;
        int y2 = to.y();
        int mid = (y1 + y2) / 2;
        svg.append("<path d=\"M" + x1 + " " + y1 + " C" + x1 + " " + mid + " " + x2 + " " + mid + " " + x2 + " " + y2
                + "\" fill=\"none\" stroke=\"#8a8577\" stroke-width=\"1.4\"/>\n");
    }

    private static void box(StringBuilder svg, House house, String room, Spot at) {
        svg.append("<rect x=\"" + at.x() + "\" y=\"" + at.y() + "\" width=\"" + BOX + "\" height=\"" + at.height()
                + "\" rx=\"8\" fill=\"#ffffff\" stroke=\"#2b3a55\" stroke-width=\"1.4\"/>\n<text x=\""
                + (at.x() + 12) + "\" y=\"" + (at.y() + 21)
                + "\" font-size=\"15\" font-weight=\"bold\" fill=\"#2b3a55\">"
                + room + "</text>\n");
        int line = at.y() + 21;
        for (String part : house.parts().getOrDefault(room, Set.of())) {
            line += LINE;
            svg.append("<text x=\"" + (at.x() + 12) + "\" y=\"" + line + "\" font-size=\"12\" fill=\"#4a4a42\">." + part
                    + "</text>\n");
        }
    }
}
