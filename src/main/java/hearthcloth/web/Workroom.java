package hearthcloth.web;

import hearthcloth.store.SafetyCopies;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.web.cloth.ClothPage;
import hearthcloth.web.cloth.ClothsPage;
import hearthcloth.web.cloth.Example;
import hearthcloth.web.cloth.GalleryPage;
import hearthcloth.web.gift.GiftPage;
import hearthcloth.web.house.ArchivePage;
import hearthcloth.web.house.DevicesPage;
import hearthcloth.web.house.EntrancePage;
import hearthcloth.web.house.GuidelinesPage;
import hearthcloth.web.house.PeoplePage;
import hearthcloth.web.house.SafetyPage;
import hearthcloth.web.house.SettingsPage;
import hearthcloth.web.house.StudioDesk;
import hearthcloth.web.kit.ConflictPage;
import hearthcloth.web.kit.Desk;
import hearthcloth.web.kit.Devices;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.LetterFiles;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageSources;
import hearthcloth.web.kit.RequestGuard;
import hearthcloth.web.make.CutPage;
import hearthcloth.web.make.SewPage;
import hearthcloth.web.photo.PhotoPage;
import hearthcloth.web.stash.StashPage;
import hearthcloth.web.tie.TiePage;
import hearthcloth.web.tie.TiedPage;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The workroom on this machine: pages over the maker's store, for her own browser only. */
public final class Workroom implements AutoCloseable {

    private static final int PORTS_TRIED = 20;
    private static final int LAST_PORT = 65_535;

    private final Javalin server;
    private final Optional<Store> store;
    private final Optional<Devices> devices;

    private Workroom(Javalin server, Optional<Store> store, Optional<Devices> devices) {
        this.server = server;
        this.store = store;
        this.devices = devices;
    }

    /**
     * Opens the workroom.
     *
     * @param data the maker's file; made if it is not there
     * @param port the port to listen on, 0 for any; the next free one is taken where it is in use
     * @throws StoreException where the file cannot be used, in words
     */
    public static Workroom open(Path data, int port, Clock clock) {
        return open(data, port, clock, false);
    }

    /**
     * Opens the workroom.
     *
     * @param lan true to answer other devices on the network too, those that are let in
     */
    public static Workroom open(Path data, int port, Clock clock, boolean lan) {
        Optional<Devices> devices = lan ? Optional.of(new Devices(clock)) : Optional.empty();
        Store store = Store.open(data, clock);
        Desk desk = new Desk.Own(store, RequestGuard.newToken());
        return started(() -> server(desk, devices), Optional.of(store), port, devices);
    }

    /**
     * Opens a workroom of a studio, for whoever comes in.
     *
     * @param port as for {@link #open(Path, int, Clock)}
     */
    public static Workroom open(Studio studio, int port, Clock clock, boolean lan) {
        Optional<Devices> devices = lan ? Optional.of(new Devices(clock)) : Optional.empty();
        Desk desk = new StudioDesk(studio, RequestGuard.newToken());
        return started(() -> server(desk, devices), Optional.empty(), port, devices);
    }

    /** Each port is tried with a server of its own, since one that found its port taken cannot be started again. */
    private static Workroom started(
            Supplier<Javalin> servers, Optional<Store> store, int port, Optional<Devices> devices) {
        String host = devices.isPresent() ? "0.0.0.0" : "127.0.0.1";
        int last = port == 0 ? 0 : Math.min(port + PORTS_TRIED, LAST_PORT);
        for (int tried = port; ; tried++) {
            try {
                return new Workroom(servers.get().start(host, tried), store, devices);
            } catch (JavalinBindException e) {
                if (tried == last) {
                    throw new StoreException("No port is free from " + port + " on; choose another with --port.", e);
                }
            }
        }
    }

    /** Where the browser goes. */
    public String address() {
        return "http://localhost:" + server.port() + "/";
    }

    public int port() {
        return server.port();
    }

    /** Where a telephone goes to photograph scraps, for the next ten minutes; empty where the workroom is not shared. */
    public List<String> toTheCamera() {
        return devices.map(all -> DevicesPage.toTheCamera(all, port())).orElse(List.of());
    }

    /** What she has to know although the workroom is open; mostly empty. */
    Optional<String> careful() {
        return store.flatMap(Store::copies).flatMap(SafetyCopies::trouble);
    }

    @Override
    public void close() {
        server.stop();
    }

    private static Javalin server(Desk desk, Optional<Devices> devices) {
        PageContext room = new PageContext(desk);
        return Javalin.create(config -> {
            settle(config);
            door(room, desk, devices, config.routes);
            new ErrorPages(room).add(config.routes);
            new ConflictPage(room).add(config.routes);
            new LetterFiles().add(config.routes);
            new GiftPage(room).add(config.routes);
            new GalleryPage(room).add(config.routes);
            new ClothPage(room).add(config.routes);
            new TiedPage(room).add(config.routes);
            new TiePage(room).add(config.routes);
            new StashPage(room).add(config.routes);
            new PhotoPage(room).add(config.routes);
            new CutPage(room).add(config.routes);
            new SewPage(room).add(config.routes);
            new ClothsPage(room).add(config.routes);
            new ArchivePage(room).add(config.routes);
            new DevicesPage(room, devices).add(config.routes);
            new SettingsPage(room).add(config.routes);
            new SafetyPage(room).add(config.routes);
            new Example(room).add(config.routes);
        });
    }

    /** Who may come in, and what is done before a page is shown. */
    private static void door(PageContext room, Desk desk, Optional<Devices> devices, RoutesConfig routes) {
        if (desk instanceof StudioDesk studio) {
            studio.recognise(routes);
            new RequestGuard(desk, devices).stand(routes);
            studio.bar(routes);
            new EntrancePage(room, studio).add(routes);
            new PeoplePage(room, studio).add(routes);
            new GuidelinesPage(room, studio).add(routes);
        } else {
            new RequestGuard(desk, devices).stand(routes);
            routes.before(context -> room.store().copies().ifPresent(SafetyCopies::daily));
        }
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.http.maxRequestSize = RequestGuard.LARGEST_REQUEST;
        config.jetty.multipartConfig.maxTotalRequestSize(RequestGuard.LARGEST_PHOTOGRAPH, SizeUnit.BYTES);
        config.staticFiles.enableWebjars();
        config.staticFiles.add(files -> {
            files.hostedPath = "/own";
            new PageSources().lay(files);
        });
    }
}
