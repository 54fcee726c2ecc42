package hearthcloth.web.house;

import hearthcloth.web.door.Devices;
import hearthcloth.web.door.Openness;
import hearthcloth.web.door.RequestGuard;
import hearthcloth.web.door.Signpost;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.Language;
import hearthcloth.words.entering.EnteringWords;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Optional;

/** The other device: how it comes in, which are in, and how one is put out again. */
public final class DevicesPage {

    /**
     * How a device may reach the workroom: an address to type, and the same with the code as pictures to point a camera at.
     *
     * @param sew lets it in beside the machine
     * @param photo lets it in where its own camera is one tap away
     */
    public record Way(String address, String sew, String photo) {

        /** Where a device goes that is to photograph. */
        public String toPhoto() {
            return address + "?to=" + PHOTO;
        }
    }

    private static final String PHOTO = "photo";

    /** A device that is in. */
    public record Inside(String id, String name, String since) {}

    private static final String ASKED = "hearthcloth-asked";

    /**
     * The page at the machine itself.
     *
     * @param code lets the next device in; empty where the workroom is not shared
     * @param asking devices that wait to be let in
     */
    @PageView.Template("devices.jte")
    public record View(PageFrame frame, List<Way> ways, String code, List<Inside> inside, List<Devices.Asking> asking)
            implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }

        /** How the workroom is started for other devices. */
        public String option() {
            return "--lan";
        }

        /** The code in two halves, as it is read out. */
        public String spaced() {
            return code.substring(0, 4) + " " + code.substring(4);
        }
    }

    /**
     * What another device is shown before it is let in.
     *
     * @param code as far as it is known
     * @param to where it goes when it is in; empty for the machine's side
     * @param said what went wrong; may be empty
     * @param mark by which it is known at the machine; empty where it has not asked to come in
     */
    @PageView.Template("join.jte")
    public record Door(Language language, String code, String to, String said, String mark) implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(language);
        }
    }

    private final PageContext room;
    private final Openness openness;
    private final Optional<Devices> devices;

    private DevicesPage(PageContext room, Openness openness, Optional<Devices> devices) {
        this.room = room;
        this.openness = openness;
        this.devices = devices;
    }

    public static void add(PageRoutes routes, Openness openness, Optional<Devices> devices) {
        routes.of(room -> new DevicesPage(room, openness, devices))
                .get("/devices", DevicesPage::show)
                .post("/devices/{id}/end", DevicesPage::end)
                .get("/join", DevicesPage::ask)
                .post("/join", DevicesPage::join)
                .post("/join/ask", DevicesPage::knock)
                .post("/devices/asking/{id}", DevicesPage::answer);
    }

    private EnteringWords words() {
        return EnteringWords.in(room.language());
    }

    private void show(Context context) {
        here(context);
        String code = devices.map(Devices::code).orElse("");
        List<Way> ways = !openness.lan()
                ? List.of()
                : Signpost.hosts().stream()
                        .map(host -> door(host, context.port()))
                        .map(door -> new Way(
                                door, picture(door + "?code=" + code, words()), picture(straight(door, code), words())))
                        .toList();
        room.show(
                context,
                new View(
                        room.frame(context, words().devicesTitle(), ""),
                        ways,
                        code,
                        devices.map(DevicesPage::inside).orElse(List.of()),
                        devices.map(Devices::asking).orElse(List.of())));
    }

    private static String door(String host, int port) {
        return "http://" + host + ":" + port + "/join";
    }

    private static String straight(String door, String code) {
        return door + "?to=" + PHOTO + "&code=" + code;
    }

    /** Addresses that let one device in and show it the page whose button opens its camera; none without a network. */
    public static List<String> toTheCamera(Devices devices, int port) {
        return Signpost.hosts().stream()
                .map(host -> straight(door(host, port), devices.code()))
                .toList();
    }

    private static List<Inside> inside(Devices devices) {
        return devices.all().stream()
                .map(device -> new Inside(
                        device.id(), device.name(), device.since().toString().substring(11, 16) + " UTC"))
                .toList();
    }

    /** Only at the machine itself are devices let in and put out. */
    private void here(Context context) {
        if (!RequestGuard.isHere(context)) {
            throw new HttpResponseException(403, words().devicesAtMachine());
        }
    }

    private void end(Context context) {
        here(context);
        devices.ifPresent(all -> all.end(context.pathParam("id")));
        PageContext.go(context, "/devices", words().devicesIsOut());
    }

    /** The door: a code typed, or pointed at by a camera; or a device that asked hears what was answered. */
    private void ask(Context context) {
        if (devices.isEmpty()) {
            throw new NotFoundResponse(words().devicesNotShared());
        }
        String code = PageContext.text(context, "code");
        String asked = Optional.ofNullable(context.cookie(ASKED)).orElse("");
        Optional<String> key = devices.get().allowed(asked);
        if (key.isPresent()) {
            letIn(context, key.get());
        } else if (!code.isEmpty() && isMeant(context)) {
            enter(context, code, "");
        } else {
            room.show(
                    context,
                    new Door(
                            room.language(),
                            code,
                            PageContext.text(context, "to"),
                            PageContext.text(context, "said"),
                            devices.get().mark(asked).orElse("")));
        }
    }

    private void knock(Context context) {
        String to = to(context);
        Optional<String> secret = devices.flatMap(
                all -> all.ask(PageContext.field(context, "name"), context.req().getRemoteAddr()));
        secret.ifPresent(found -> context.cookie(cookie(ASKED, found)));
        PageContext.go(context, to, secret.isPresent() ? "" : words().devicesTooMany());
    }

    private void answer(Context context) {
        here(context);
        boolean yes = PageContext.field(context, "answer").equals("yes");
        devices.ifPresent(all -> all.answer(context.pathParam("id"), yes));
        PageContext.go(context, "/devices", words().devicesComes(yes ? "yes" : "no"));
    }

    private static String to(Context context) {
        return PageContext.text(context, "to").equals(PHOTO) ? "/join?to=" + PHOTO : "/join";
    }

    private static Cookie cookie(String name, String value) {
        Cookie cookie = new Cookie(name, value);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/");
        return cookie;
    }

    /** Whether she opened it: not a browser that looks ahead, nor the machine itself, which needs no code. */
    private boolean isMeant(Context context) {
        return HandlerType.GET.equals(context.method())
                && context.header("Sec-Purpose") == null
                && (openness.code() || !RequestGuard.isHere(context));
    }

    private void join(Context context) {
        enter(context, PageContext.field(context, "code"), PageContext.field(context, "name"));
    }

    private void enter(Context context, String code, String name) {
        Devices.Answer answer = devices.map(
                        all -> all.join(code, name, context.req().getRemoteAddr()))
                .orElseThrow(() -> new NotFoundResponse(words().devicesNotShared()));
        switch (answer.said()) {
            case IN -> letIn(context, answer.key());
            case WRONG -> PageContext.go(context, to(context), words().devicesWrongCode());
            case WAIT -> PageContext.go(context, to(context), words().devicesWait());
        }
    }

    private static void letIn(Context context, String key) {
        context.cookie(cookie(RequestGuard.COOKIE, key));
        context.removeCookie(ASKED, "/");
        boolean photo = PageContext.text(context, "to").equals(PHOTO);
        PageContext.go(context, photo ? "/stash/photo" : RequestGuard.isHere(context) ? "/gift" : "/sew", "");
    }

    private static String picture(String address, EnteringWords words) {
        return Signpost.picture(address, words.devicesPicture());
    }
}
