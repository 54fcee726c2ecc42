package hearthcloth;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A line between a workroom and its database that can be slow, cut, or dead without a word. */
public final class FaultyLine implements AutoCloseable {

    /** What the line does. */
    public enum Fault {
        NONE,
        /** Whatever is on its way waits, and so does who connects; nobody is told. */
        SILENT,
        /** Whoever connects is cut off at once. */
        CUT
    }

    private final ServerSocket door;
    private final int to;
    private final List<Socket> open = new CopyOnWriteArrayList<>();
    private final Object turn = new Object();
    private Fault fault = Fault.NONE;

    private FaultyLine(ServerSocket door, int to) {
        this.door = door;
        this.to = to;
    }

    /** A line to a local port. */
    public static FaultyLine to(int port) {
        try {
            FaultyLine line = new FaultyLine(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()), port);
            begin(line::accept);
            return line;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The same database address, by way of this line. */
    public static FaultyLine to(String database) {
        return to(Integer.parseInt(database.replaceFirst(".*@localhost:(\\d+)/.*", "$1")));
    }

    public String address(String database) {
        return database.replaceFirst("@localhost:\\d+/", "@localhost:" + door.getLocalPort() + "/");
    }

    /** From now on; where it is cut, what is open is cut too. */
    public void becomes(Fault now) {
        synchronized (turn) {
            fault = now;
            turn.notifyAll();
        }
        if (now == Fault.CUT) {
            cut();
        }
    }

    /** Cuts all that is open; who connects anew is let through as before. */
    public void cut() {
        open.forEach(FaultyLine::close);
        open.clear();
    }

    private static void begin(Runnable work) {
        Thread thread = new Thread(work, "line");
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        try {
            while (true) {
                Socket from = door.accept();
                if (now() == Fault.CUT) {
                    close(from);
                } else {
                    connect(from);
                }
            }
        } catch (IOException e) {
            // Closed.
        }
    }

    private void connect(Socket from) throws IOException {
        Socket server = new Socket(InetAddress.getLoopbackAddress(), to);
        open.add(from);
        open.add(server);
        begin(() -> pass(from, server));
        begin(() -> pass(server, from));
    }

    private Fault now() {
        synchronized (turn) {
            return fault;
        }
    }

    private void pass(Socket from, Socket into) {
        byte[] bytes = new byte[8192];
        try {
            InputStream in = from.getInputStream();
            OutputStream out = into.getOutputStream();
            for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
                synchronized (turn) {
                    while (fault == Fault.SILENT) {
                        turn.wait();
                    }
                }
                out.write(bytes, 0, read);
                out.flush();
            }
        } catch (IOException e) {
            // Cut.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        close(from);
        close(into);
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // It is closed.
        }
    }

    @Override
    public void close() {
        becomes(Fault.CUT);
        try {
            door.close();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
