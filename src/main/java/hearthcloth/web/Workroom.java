package hearthcloth.web;

import io.javalin.http.Context;
import java.util.function.Consumer;
import java.util.function.Function;
import hearthcloth.web.kit.Visitor;
import hearthcloth.web.kit.PageRoutes;
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
import hearthcloth.web.kit.Devices;
import hearthcloth.web.kit.ErrorPages;
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
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The workroom on this machine: pages over the maker's store, for her own browser only. */
public final class Workroom implements AutoCloseable {

    private static final int PORTS_TRIED = 20;

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
        return started(own(store, devices), Optional.of(store), port, devices);
    }

    /**
     * Opens a workroom of a studio, for whoever comes in.
     *
     * @param port as for {@link #open(Path, int, Clock)}
     */
    public static Workroom open(Studio studio, int port, Clock clock, boolean lan) {
        Optional<Devices> devices = lan ? Optional.of(new Devices(clock)) : Optional.empty();
        return started(shared(studio, devices), Optional.empty(), port, devices);
    }

    private static Workroom started(Javalin server, Optional<Store> store, int port, Optional<Devices> devices) {
        for (int tried = 0; ; tried++) {
            try {
                String host = devices.isPresent() ? "0.0.0.0" : "127.0.0.1";
                return new Workroom(server.start(host, port == 0 ? 0 : port + tried), store, devices);
            } catch (JavalinBindException e) {
                if (port == 0 || tried == PORTS_TRIED) {
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

    /** On her own machine, where nobody has to come in; a safety copy is made before the first page of a day. */
    private static Javalin own(Store store, Optional<Devices> devices) {
        Visitor visitor = Visitor.own(store, RequestGuard.newToken());
        return server(context -> visitor, devices, pages -> {
            new RequestGuard(context -> visitor, devices).stand(pages.routes());
            pages.routes().before(context -> store.copies().ifPresent(SafetyCopies::daily));
        });
    }

    /** In a studio, where each request is somebody's. */
    private static Javalin shared(Studio studio, Optional<Devices> devices) {
        StudioDesk desk = new StudioDesk(studio, RequestGuard.newToken());
        return server(desk::visitor, devices, pages -> {
            desk.recognise(pages.routes());
            new RequestGuard(desk::visitor, devices).stand(pages.routes());
            desk.bar(pages.routes());
            EntrancePage.add(pages, desk);
            PeoplePage.add(pages, desk);
            GuidelinesPage.add(pages, desk);
        });
    }

    /**
     * The pages.
     *
     * @param who tells whom a request comes from
     * @param door says who may come in, and what is done before a page is shown
     */
    private static Javalin server(
            Function<Context, Visitor> who, Optional<Devices> devices, Consumer<PageRoutes> door) {
        return Javalin.create(config -> {
            settle(config);
            PageRoutes pages = new PageRoutes(config.routes, who);
            door.accept(pages);
            new ErrorPages(pages).add();
            new ConflictPage(pages).add();
            LetterFiles.add(config.routes);
            GiftPage.add(pages);
            GalleryPage.add(pages);
            ClothPage.add(pages);
            TiedPage.add(pages);
            TiePage.add(pages);
            StashPage.add(pages);
            PhotoPage.add(pages);
            CutPage.add(pages);
            SewPage.add(pages);
            ClothsPage.add(pages);
            ArchivePage.add(pages);
            DevicesPage.add(pages, devices);
            SettingsPage.add(pages);
            SafetyPage.add(pages);
            Example.add(pages);
        });
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
