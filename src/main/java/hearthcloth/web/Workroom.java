package hearthcloth.web;

import hearthcloth.store.SafetyCopies;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.web.cloth.ClothPage;
import hearthcloth.web.cloth.ClothsPage;
import hearthcloth.web.cloth.Example;
import hearthcloth.web.cloth.NearestPage;
import hearthcloth.web.cloth.PicturesPage;
import hearthcloth.web.door.Devices;
import hearthcloth.web.door.Openness;
import hearthcloth.web.door.RequestGuard;
import hearthcloth.web.door.RequestMeasure;
import hearthcloth.web.door.UploadFolder;
import hearthcloth.web.gallery.GalleryPage;
import hearthcloth.web.gift.GiftPage;
import hearthcloth.web.home.HomePage;
import hearthcloth.web.house.ArchivePage;
import hearthcloth.web.house.ClosingPage;
import hearthcloth.web.house.DevicesPage;
import hearthcloth.web.house.EntrancePage;
import hearthcloth.web.house.GuidelinesPage;
import hearthcloth.web.house.HandOnPage;
import hearthcloth.web.house.PeoplePage;
import hearthcloth.web.house.SafetyPage;
import hearthcloth.web.house.SettingsPage;
import hearthcloth.web.house.StudioDesk;
import hearthcloth.web.kit.ConflictPage;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageSources;
import hearthcloth.web.kit.Visitor;
import hearthcloth.web.kits.KitsPage;
import hearthcloth.web.lesson.ClassPage;
import hearthcloth.web.lesson.Classroom;
import hearthcloth.web.lesson.StudentPage;
import hearthcloth.web.made.MadePage;
import hearthcloth.web.make.CutPage;
import hearthcloth.web.make.SewPage;
import hearthcloth.web.photo.PhotoPage;
import hearthcloth.web.piecing.PiecingPage;
import hearthcloth.web.stash.StashPage;
import hearthcloth.web.tie.TiePage;
import hearthcloth.web.tie.TiedPage;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/** The workroom on this machine: pages over the maker's store, for her own browser only. */
public final class Workroom implements AutoCloseable {

    private static final int PORTS_TRIED = 20;
    /** In this time the last page reaches a browser on the same machine. */
    private static final int ANSWER_MS = 500;

    private static final int LAST_PORT = 65_535;

    private final Javalin server;
    private final Optional<Store> store;
    private final Optional<Devices> devices;
    private final boolean isAskedHere;
    private final UploadFolder uploads;
    private final Classroom classroom;
    private final CountDownLatch closing;

    private Workroom(Javalin server, Opened opened) {
        this.server = server;
        this.store = opened.store();
        this.devices = opened.devices();
        this.isAskedHere = opened.openness().code();
        this.uploads = opened.uploads();
        this.classroom = opened.classroom();
        this.closing = opened.closing();
    }

    /**
     * Opens the workroom, for whom {@code openness} says.
     *
     * @param data the maker's file; made if it is not there
     * @param port the port to listen on, 0 for any; the next free one is taken where it is in use
     * @throws StoreException where the file cannot be used, in words
     */
    public static Workroom open(Path data, int port, Clock clock, Openness openness) {
        Store store = Store.open(data, clock);
        store.hold();
        Optional<Devices> devices = openness.keepsDoor() ? Optional.of(new Devices(clock)) : Optional.empty();
        Visitor visitor = Visitor.own(store, RequestGuard.newToken());
        return new Opened(
                        context -> visitor,
                        Optional.empty(),
                        Optional.of(store),
                        openness,
                        devices,
                        UploadFolder.open(),
                        new Classroom(clock),
                        new CountDownLatch(1))
                .at(port);
    }

    /**
     * Opens a workroom of a studio, for whoever comes in by name and passphrase.
     *
     * @param port as for {@link #open(Path, int, Clock, Openness)}
     */
    public static Workroom open(Studio studio, int port, Clock clock, Openness openness) {
        StudioDesk desk = new StudioDesk(studio, RequestGuard.newToken());
        return new Opened(
                        desk::visitor,
                        Optional.of(desk),
                        Optional.empty(),
                        openness,
                        Optional.empty(),
                        UploadFolder.open(),
                        new Classroom(clock),
                        new CountDownLatch(1))
                .at(port);
    }

    /**
     * All that a workroom is made of but its port.
     *
     * @param who tells whom a request comes from
     * @param desk of a studio; empty on one's own machine
     * @param store on one's own machine; empty in a studio, which has one for each person
     * @param classroom the class that may be going on in it
     * @param closing falls when she closes the workroom from its page
     */
    private record Opened(
            Function<Context, Visitor> who,
            Optional<StudioDesk> desk,
            Optional<Store> store,
            Openness openness,
            Optional<Devices> devices,
            UploadFolder uploads,
            Classroom classroom,
            CountDownLatch closing) {

        /** Whom a request comes from: on a class's own pages a student, whoever else she is. */
        private Visitor visitor(Context context) {
            return classroom.door().guest(context).orElseGet(() -> who.apply(context));
        }

        /** Each port is tried with a server of its own, since one that found its port taken cannot be started again. */
        private Workroom at(int port) {
            String host = openness.lan() ? "0.0.0.0" : "127.0.0.1";
            int last = port == 0 ? 0 : Math.min(port + PORTS_TRIED, LAST_PORT);
            for (int tried = port; ; tried++) {
                try {
                    return new Workroom(server(this).start(host, tried), this);
                } catch (JavalinBindException e) {
                    if (tried == last) {
                        store.ifPresent(Store::close);
                        throw new StoreException(StoringSentences.placeNoPort(Argument.number(port)), e);
                    }
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
        return isAskedHere
                ? List.of()
                : devices.map(all -> DevicesPage.toTheCamera(all, port())).orElse(List.of());
    }

    /** Waits until she closes the workroom from its page, and until that page has gone out. */
    void awaitClosing() throws InterruptedException {
        closing.await();
        TimeUnit.MILLISECONDS.sleep(ANSWER_MS);
    }

    /** What is typed on the page that asks for a code, where this machine asks for one; each lets one browser in. */
    public Optional<String> code() {
        return isAskedHere ? devices.map(Devices::code) : Optional.empty();
    }

    /** What she has to know although the workroom is open; mostly empty. */
    Optional<Sentence> careful() {
        return store.flatMap(Store::copies).flatMap(SafetyCopies::trouble);
    }

    @Override
    public void close() {
        server.stop();
        classroom.close();
        store.ifPresent(Store::close);
        uploads.close();
    }

    private static Javalin server(Opened opened) {
        return Javalin.create(config -> {
            settle(config, opened.uploads());
            PageRoutes pages = new PageRoutes(config.routes, opened::visitor);
            config.events.serverStopping(pages::close);
            door(pages, opened);
            new ErrorPages(pages).add();
            new ConflictPage(pages).add();
            LetterFiles.add(config.routes);
            add(pages, opened);
        });
    }

    private static void add(PageRoutes pages, Opened opened) {
        HomePage.add(pages);
        GiftPage.add(pages, GalleryPage.add(pages));
        ClothPage.add(pages);
        NearestPage.add(pages);
        TiedPage.add(pages);
        TiePage.add(pages);
        StashPage.add(pages);
        PhotoPage.add(pages);
        CutPage.add(pages);
        SewPage.add(pages);
        ClothsPage.add(pages);
        MadePage.add(pages);
        PicturesPage.add(pages);
        ArchivePage.add(pages);
        HandOnPage.add(pages);
        KitsPage.add(pages);
        PiecingPage.add(pages);
        ClassPage.add(pages, opened.classroom(), opened.openness());
        StudentPage.add(pages, opened.classroom());
        DevicesPage.add(pages, opened.openness(), opened.devices());
        SettingsPage.add(pages);
        SafetyPage.add(pages);
        Example.add(pages);
        opened.store().ifPresent(own -> ClosingPage.add(pages, opened.closing()::countDown));
    }

    /** Who may come in, and what is done before a page is shown. */
    private static void door(PageRoutes pages, Opened opened) {
        RequestGuard guard = new RequestGuard(
                opened::visitor,
                opened.openness(),
                opened.devices(),
                opened.classroom().door());
        opened.desk().ifPresent(desk -> desk.recognise(pages.routes()));
        guard.stand(pages.routes());
        opened.desk().ifPresent(desk -> {
            desk.bar(pages.routes());
            EntrancePage.add(pages, desk);
            PeoplePage.add(pages, desk);
            GuidelinesPage.add(pages, desk);
        });
        opened.store()
                .ifPresent(
                        store -> pages.routes().before(context -> store.copies().ifPresent(SafetyCopies::daily)));
    }

    private static void settle(JavalinConfig config, UploadFolder uploads) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.http.maxRequestSize = RequestMeasure.LARGEST_PHOTOGRAPH;
        config.jetty.multipartConfig.maxTotalRequestSize(RequestMeasure.LARGEST_PHOTOGRAPH, SizeUnit.BYTES);
        config.jetty.multipartConfig.cacheDirectory(uploads.path().toString());
        config.jetty.modifyServer(server -> server.insertHandler(new RequestMeasure()));
        config.staticFiles.enableWebjars();
        config.staticFiles.add(files -> {
            files.hostedPath = "/own";
            new PageSources().lay(files);
        });
    }
}
