package io.github.seamstead.examples.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A headless browser with one page, driven over its own debugging protocol, so that the tests need
 * no driver beside the browser.
 */
public final class Browser implements AutoCloseable {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
  private static final Duration PATIENCE = Duration.ofSeconds(120);
  private static final Pattern ADDRESS = Pattern.compile("ws://\\S+");

  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
  private final List<JsonNode> events = new CopyOnWriteArrayList<>();
  private final Process process;
  private final WebSocket socket;
  private final String session;
  private int calls;

  private Browser(Process process, URI address) {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, new Ear()).join();
    ObjectNode target = json.createObjectNode().put("url", "about:blank");
    String id = send("Target.createTarget", target, "").path("targetId").asText();
    ObjectNode attach = json.createObjectNode().put("targetId", id).put("flatten", true);
    session = send("Target.attachToTarget", attach, "").path("sessionId").asText();
    for (String domain : List.of("Page", "Network", "Runtime", "Log")) {
      call(domain + ".enable", Map.of());
    }
  }

  /** Finds a browser on the path, or where {@code SEAMSTEAD_BROWSER} says. */
  public static Optional<Path> find() {
    String stated = System.getenv("SEAMSTEAD_BROWSER");
    if (stated != null) {
      return Optional.of(Path.of(stated));
    }
    String[] folders = System.getenv("PATH").split(File.pathSeparator, -1);
    return NAMES.stream()
        .flatMap(name -> Stream.of(folders).map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Starts a browser with an empty profile. */
  public static Browser start(Path program, Path profile) throws IOException, InterruptedException {
    Path log = profile.resolve("messages.txt");
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--user-data-dir=" + profile.resolve("profile"),
                "--remote-debugging-port=0",
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    try {
      return new Browser(process, address(process, log));
    } catch (IOException | RuntimeException e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static URI address(Process process, Path log) throws IOException, InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      Matcher found = ADDRESS.matcher(Files.readString(log));
      if (found.find()) {
        return URI.create(found.group());
      }
      if (process.waitFor(50, TimeUnit.MILLISECONDS)) {
        break;
      }
    }
    throw new IOException("the browser did not start: " + Files.readString(log));
  }

  /** Opens a page and waits until it is loaded. Forgets what the last page reported. */
  public void open(Path page) {
    events.clear();
    JsonNode answer = call("Page.navigate", Map.of("url", page.toUri().toString()));
    if (answer.has("errorText")) {
      throw new IllegalStateException(page + ": " + answer.path("errorText").asText());
    }
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (events("Page.loadEventFired").isEmpty()) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException(page + " did not load");
      }
      // Not by a timer of the page: it stands still where scripts are switched off.
      LockSupport.parkNanos(2_000_000);
    }
  }

  /** Sets the size of the window, in CSS pixels. */
  public void size(int width, int height) {
    call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Lets pages run their scripts, or not. */
  public void scripts(boolean run) {
    call("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  /** Shows the page as on paper or, with an empty text, as on a screen. */
  public void media(String media) {
    call("Emulation.setEmulatedMedia", Map.of("media", media));
  }

  /** Runs a script in the page, waits for its promise, and gives its value. */
  public JsonNode run(String script) {
    JsonNode answer =
        call(
            "Runtime.evaluate",
            Map.of("expression", script, "returnByValue", true, "awaitPromise", true));
    if (answer.has("exceptionDetails")) {
      throw new IllegalStateException("script failed: " + answer.path("exceptionDetails"));
    }
    return answer.path("result").path("value");
  }

  /** Runs a script that gives a list of texts. */
  public List<String> texts(String script) {
    List<String> texts = new ArrayList<>();
    run(script).forEach(text -> texts.add(text.asText()));
    return texts;
  }

  /** Prints the page; sizes in inches, as the protocol has them. */
  public byte[] print(double width, double height) throws IOException {
    return call(
            "Page.printToPDF",
            Map.of("paperWidth", width, "paperHeight", height, "preferCSSPageSize", false))
        .path("data")
        .binaryValue();
  }

  /** Gives what the page reported under a name since it was opened. */
  public List<JsonNode> events(String method) {
    return events.stream().filter(e -> e.path("method").asText().equals(method)).toList();
  }

  /** Calls the page over the protocol, and gives the answer. */
  public JsonNode call(String method, Map<String, Object> parameters) {
    return send(method, json.valueToTree(parameters), session);
  }

  private JsonNode send(String method, JsonNode parameters, String to) {
    int id = ++calls;
    ObjectNode message = json.createObjectNode().put("id", id).put("method", method);
    message.set("params", parameters);
    if (!to.isEmpty()) {
      message.put("sessionId", to);
    }
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    answers.put(id, answer);
    socket.sendText(message.toString(), true).join();
    JsonNode got = answer.orTimeout(PATIENCE.toSeconds(), TimeUnit.SECONDS).join();
    if (got.has("error")) {
      throw new IllegalStateException(method + ": " + got.path("error"));
    }
    return got.path("result");
  }

  @Override
  public void close() {
    try {
      send("Browser.close", json.createObjectNode(), "");
      if (process.waitFor(20, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    socket.abort();
    process.descendants().forEach(ProcessHandle::destroy);
    process.destroyForcibly();
  }

  /** Puts messages together and hands them to whoever waits. */
  private final class Ear implements WebSocket.Listener {

    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
      text.append(data);
      if (last) {
        hear(text.toString());
        text.setLength(0);
      }
      from.request(1);
      return CompletableFuture.completedFuture(null);
    }

    private void hear(String message) {
      try {
        JsonNode node = json.readTree(message);
        if (node.has("id")) {
          CompletableFuture<JsonNode> answer = answers.remove(node.path("id").asInt());
          if (answer != null) {
            answer.complete(node);
          }
        } else {
          events.add(node);
        }
      } catch (IOException e) {
        throw new IllegalStateException("the browser sent no JSON", e);
      }
    }
  }
}
