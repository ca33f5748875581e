package io.github.seamstead.page;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A headless Firefox with one page, driven over WebDriver BiDi, the open protocol of the W3C. */
final class Firefox implements AutoCloseable {

  private static final List<String> NAMES = List.of("firefox-esr", "firefox");
  private static final Duration PATIENCE = Duration.ofSeconds(180);
  private static final Pattern ADDRESS = Pattern.compile("ws://\\S+");

  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
  private final Process process;
  private final WebSocket socket;
  private final String page;
  private int calls;

  private Firefox(Process process, String address) {
    this.process = process;
    socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address + "/session"), new Ear())
            .join();
    call("session.new", json.createObjectNode().set("capabilities", json.createObjectNode()));
    page =
        call("browsingContext.getTree", json.createObjectNode())
            .path("contexts")
            .path(0)
            .path("context")
            .asText();
  }

  /** Finds the program on the path, or where {@code SEAMSTEAD_FIREFOX} says. */
  static Optional<Path> find() {
    String stated = System.getenv("SEAMSTEAD_FIREFOX");
    if (stated != null) {
      return Optional.of(Path.of(stated));
    }
    String[] folders = System.getenv("PATH").split(File.pathSeparator, -1);
    return NAMES.stream()
        .flatMap(name -> Stream.of(folders).map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Starts it with an empty profile. */
  static Firefox start(Path program, Path folder) throws IOException, InterruptedException {
    Path log = folder.resolve("messages.txt");
    Path profile = Files.createDirectory(folder.resolve("profile"));
    ProcessBuilder builder =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-remote",
                "--profile",
                profile.toString(),
                "--remote-debugging-port=0",
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(log.toFile());
    builder.environment().put("HOME", folder.toString());
    Process process = builder.start();
    try {
      return new Firefox(process, address(process, log));
    } catch (IOException | RuntimeException e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static String address(Process process, Path log)
      throws IOException, InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      Matcher found = ADDRESS.matcher(Files.readString(log));
      if (found.find()) {
        return found.group();
      }
      if (process.waitFor(50, TimeUnit.MILLISECONDS)) {
        break;
      }
    }
    throw new IOException("the browser did not start: " + Files.readString(log));
  }

  /** Opens a page and waits until it is loaded. */
  void open(Path file) {
    call(
        "browsingContext.navigate",
        json.createObjectNode()
            .put("context", page)
            .put("url", file.toUri().toString())
            .put("wait", "complete"));
  }

  /** Runs a script in the page, and gives its text. */
  String run(String script) {
    ObjectNode call = json.createObjectNode().put("expression", script).put("awaitPromise", true);
    call.set("target", json.createObjectNode().put("context", page));
    JsonNode answer = call("script.evaluate", call);
    if (!"success".equals(answer.path("type").asText())) {
      throw new IllegalStateException("script failed: " + answer);
    }
    return answer.path("result").path("value").asText();
  }

  private JsonNode call(String method, JsonNode parameters) {
    int id = ++calls;
    ObjectNode message = json.createObjectNode().put("id", id).put("method", method);
    message.set("params", parameters);
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    answers.put(id, answer);
    socket.sendText(message.toString(), true).join();
    JsonNode got = answer.orTimeout(PATIENCE.toSeconds(), TimeUnit.SECONDS).join();
    if (!got.has("result")) {
      throw new IllegalStateException(method + ": " + got);
    }
    return got.path("result");
  }

  @Override
  public void close() {
    try {
      call("browser.close", json.createObjectNode());
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
        CompletableFuture<JsonNode> answer = answers.remove(node.path("id").asInt(-1));
        if (answer != null) {
          answer.complete(node);
        }
      } catch (IOException e) {
        throw new IllegalStateException("the browser sent no JSON", e);
      }
    }
  }
}
