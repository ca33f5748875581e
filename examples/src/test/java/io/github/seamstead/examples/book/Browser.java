package io.github.seamstead.examples.book;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.LockSupport;

/**
 * A headless browser with one page, driven over its own debugging protocol, so that the tests need
 * no driver beside the browser.
 */
public final class Browser implements AutoCloseable {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private final ObjectMapper json = new ObjectMapper();
  private final List<JsonNode> events = new CopyOnWriteArrayList<>();
  private final BrowserProcess process;
  private final String session;

  private Browser(ProcessBuilder command, Path folder) throws IOException, InterruptedException {
    process = BrowserProcess.start(command, folder, "", PATIENCE, events::add);
    ObjectNode target = json.createObjectNode().put("url", "about:blank");
    String id = send("Target.createTarget", target, "").path("targetId").asText();
    ObjectNode attach = json.createObjectNode().put("targetId", id).put("flatten", true);
    session = send("Target.attachToTarget", attach, "").path("sessionId").asText();
    for (String domain : List.of("Page", "Network", "Runtime", "Log")) {
      call(domain + ".enable", Map.of());
    }
  }

  /**
   * Finds a browser on the path, or where {@code SEAMSTEAD_BROWSER} says. Without one the tests are
   * skipped with a message, unless {@code SEAMSTEAD_REQUIRE_BROWSER=1} asks for one.
   */
  public static Path orSkip() {
    Optional<Path> program = BrowserProcess.find("SEAMSTEAD_BROWSER", NAMES);
    if (program.isEmpty()) {
      String message = "skipped: no chromium or chrome on the path and SEAMSTEAD_BROWSER not set";
      if ("1".equals(System.getenv("SEAMSTEAD_REQUIRE_BROWSER"))) {
        fail("SEAMSTEAD_REQUIRE_BROWSER=1, but " + message);
      }
      abort(message);
    }
    return program.orElseThrow();
  }

  /** Starts a browser with an empty profile. */
  public static Browser start(Path program, Path profile) throws IOException, InterruptedException {
    return new Browser(
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
            "about:blank"),
        profile);
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

  /**
   * Prints the page; sizes in inches, as the protocol has them.
   *
   * @param width width of the paper
   * @param height height of the paper
   * @param own whether the page's own sizes of paper are used where it states them
   * @return a PDF file
   * @throws IOException if the browser's answer cannot be read
   */
  public byte[] print(double width, double height, boolean own) throws IOException {
    return call(
            "Page.printToPDF",
            Map.of("paperWidth", width, "paperHeight", height, "preferCSSPageSize", own))
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
    ObjectNode message = BrowserProcess.message(method, parameters);
    if (!to.isEmpty()) {
      message.put("sessionId", to);
    }
    return process.ask(message);
  }

  @Override
  public void close() {
    process.end(BrowserProcess.message("Browser.close", json.createObjectNode()));
  }
}
