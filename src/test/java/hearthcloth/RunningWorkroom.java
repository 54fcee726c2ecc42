package hearthcloth;

import hearthcloth.web.Multipart;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program as she starts it, in a Java of its own, which can be killed; and one browser that talks to it. */
public final class RunningWorkroom implements AutoCloseable {

    private static final Pattern ADDRESS = Pattern.compile("open at http://localhost:(\\d+)/");
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([0-9a-f]+)\"");

    private final Process process;
    private final BufferedReader said;
    private final HttpClient client = HttpClient.newHttpClient();
    private int port;
    private String cookie = "";
    private String heard = "";

    private RunningWorkroom(Process process) {
        this.process = process;
        this.said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Starts the program; {@code before} are words put before {@code java}. */
    public static RunningWorkroom started(List<String> before, String... words) {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-Xmx256m",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "hearthcloth.Main",
                "--no-browser",
                "--port",
                "0"));
        command.addAll(List.of(words));
        try {
            return new RunningWorkroom(
                    new ProcessBuilder(command).redirectErrorStream(true).start());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Starts it and waits until it is open. */
    public static RunningWorkroom opened(String... words) {
        RunningWorkroom room = started(List.of(), words);
        room.awaitOpen();
        return room;
    }

    private void awaitOpen() {
        StringBuilder before = new StringBuilder();
        try {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                Matcher matcher = ADDRESS.matcher(line);
                before.append(line).append('\n');
                if (port > 0) {
                    heard = before.toString();
                    return;
                }
                if (matcher.find()) {
                    port = Integer.parseInt(matcher.group(1));
                }
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        throw new AssertionError("the workroom did not open: " + before);
    }

    /** What it said when it opened: its address, and the line after it that says where the work is kept. */
    public String heard() {
        return heard;
    }

    /** What it says until it ends by itself, then its exit code; where it opens instead, that fails. */
    public String words() {
        StringBuilder all = new StringBuilder();
        try {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                all.append(line).append('\n');
                if (ADDRESS.matcher(line).find()) {
                    throw new AssertionError("it opened: " + all);
                }
            }
            return all + "exit " + process.waitFor();
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    public HttpResponse<String> see(String path) throws IOException {
        return sent(HttpRequest.newBuilder(uri(path)));
    }

    /** What is to be kept as a file. */
    public byte[] bytes(String path) throws IOException {
        try {
            return client.send(
                            HttpRequest.newBuilder(uri(path))
                                    .header("Cookie", cookie)
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray())
                    .body();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** The token of the page at {@code path}. */
    public String token(String path) throws IOException {
        Matcher matcher = TOKEN.matcher(see(path).body());
        if (!matcher.find()) {
            throw new AssertionError("no token on " + path);
        }
        return matcher.group(1);
    }

    /** Posts a form; names and values in turn. Fails with an exception where no answer comes. */
    public HttpResponse<String> post(String path, String token, String... fields) throws IOException {
        StringBuilder form = new StringBuilder("token=" + token);
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&')
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        HttpResponse<String> response = sent(HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form.toString())));
        response.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.replaceFirst(";.*", ""));
        return response;
    }

    /** Posts a form with a file. */
    public HttpResponse<String> send(String path, String token, String name, byte[] file, String... fields)
            throws IOException {
        return sent(HttpRequest.newBuilder(uri(path))
                .header("Content-Type", Multipart.TYPE)
                .POST(HttpRequest.BodyPublishers.ofByteArray(Multipart.of(token, name, file, fields))));
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private HttpResponse<String> sent(HttpRequest.Builder request) throws IOException {
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** The same browser at another workroom. */
    public void with(RunningWorkroom other) {
        cookie = other.cookie;
    }

    public int port() {
        return port;
    }

    /** How much memory the program holds, in kB, as Linux tells it (proc(5), VmRSS). */
    public long residentKb() throws IOException {
        return Files.readAllLines(Path.of("/proc", String.valueOf(process.pid()), "status")).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                .findFirst()
                .orElseThrow();
    }

    /** SIGKILL: no hook runs, nothing is flushed. */
    public void kill() {
        process.destroyForcibly();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        kill();
    }
}
