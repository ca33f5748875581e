package io.github.seamstead.page.face;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/** The page in a browser of its own, with a folder that files are saved to. */
final class Face implements AutoCloseable {

  static final Path JOBS = Path.of("../jobs");

  /** Waits until every section that the demo has is read and sound. */
  static final String SOUND_JOB =
      "hand.until(() => { const said = [...document.querySelectorAll('#sections small')]"
          + ".map(s => s.textContent).filter(s => s !== 'not in this job');"
          + " return said.length > 7 && said.every(s => s === 'sound'); }, 'a sound job')";

  private static final Path PAGE =
      Path.of(System.getProperty("seamstead.page", "target/seamstead-page.html"));
  private static final Path UNPACK = Path.of("src/main/web/app/unpack.js");
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final ObjectMapper json = new ObjectMapper();
  private final Browser browser;
  private final Path saved;

  private Face(Browser browser, Path saved) {
    this.browser = browser;
    this.saved = saved;
  }

  /** Starts a browser; without one the tests are skipped, unless one is required. */
  static Face start(Path folder) throws IOException, InterruptedException {
    Path program = Browser.orSkip();
    Path profile = Files.createDirectory(folder.resolve("browser"));
    Path saved = Files.createDirectory(folder.resolve("saved"));
    Face face = new Face(Browser.start(program, profile), saved);
    face.browser.call(
        "Page.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", saved.toAbsolutePath().toString()));
    // A dialog of the system cannot be answered here: the page then saves as other browsers do.
    face.before("delete window.showSaveFilePicker");
    return face;
  }

  /** A script that runs in every page before the page's own. */
  void before(String script) {
    browser.call("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
  }

  Browser browser() {
    return browser;
  }

  /** Opens the page at a width, with a hand to use it and questions to ask of it. */
  Browser open(int width) throws IOException {
    browser.size(width, 800);
    browser.open(PAGE.toAbsolutePath());
    browser.run(
        Files.readString(UNPACK)
                .replace("const lettersToBytes =", "globalThis.lettersToBytes =")
                .replace("const gunzip =", "globalThis.gunzip =")
                .replaceAll("(?m)^const \\w+ =", "0,")
            + "0");
    browser.run(resource(Face.class, "hand.js").replace("const hand =", "globalThis.hand ="));
    browser.run(resource(Browser.class, "probe.js").replace("const probe =", "globalThis.probe ="));
    browser.run("hand.until(() => document.documentElement.dataset.ready, 'the page')");
    return browser;
  }

  /** Opens the page as on a first visit. */
  Browser openNew(int width) throws IOException {
    open(width);
    // Away from the page first, which keeps what is open when it is left.
    browser.run("Object.defineProperty(Storage.prototype, 'setItem', {value: () => {}}); 0");
    browser.run("localStorage.clear()");
    return open(width);
  }

  /** Gives files to the page as a person would who chooses them. */
  void choose(Path... files) {
    String input =
        browser
            .call("Runtime.evaluate", Map.of("expression", "document.getElementById('file')"))
            .path("result")
            .path("objectId")
            .asText();
    List<String> paths =
        Stream.of(files).map(file -> file.toAbsolutePath().normalize().toString()).toList();
    browser.call("DOM.setFileInputFiles", Map.of("files", paths, "objectId", input));
  }

  /** Presses a key, such as {@code Tab} or {@code Enter}. */
  void key(String key) {
    boolean enter = key.equals("Enter");
    for (String type : List.of("keyDown", "keyUp")) {
      browser.call(
          "Input.dispatchKeyEvent",
          Map.of(
              "type", type,
              "key", key,
              "code", key,
              "windowsVirtualKeyCode", enter ? 13 : key.equals("Tab") ? 9 : 32,
              "text", enter ? "\r" : key.equals(" ") ? " " : ""));
    }
  }

  /** Types into what has the focus. */
  void write(String text) {
    browser.call("Input.insertText", Map.of("text", text));
  }

  /** Presses Tab until something with this text or label has the focus; gives what was passed. */
  List<String> tabTo(String name) {
    List<String> passed = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      key("Tab");
      String focused = browser.run(FOCUSED).asText();
      if (focused.equals(name)) {
        return passed;
      }
      passed.add(focused);
    }
    throw new AssertionError(name + " is not reached, only " + passed);
  }

  private static final String FOCUSED =
      "(e => ((e.labels && e.labels[0] && e.labels[0].textContent) || e.getAttribute('aria-label')"
          + " || e.textContent || e.tagName).trim())(document.activeElement)";

  /** Waits for a file that was saved. */
  Path saved(String name) throws IOException {
    Path file = saved.resolve(name);
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      if (Files.exists(file) && Files.size(file) > 0) {
        return file;
      }
      LockSupport.parkNanos(20_000_000);
    }
    try (Stream<Path> all = Files.list(saved)) {
      throw new AssertionError(name + " was not saved, only " + all.toList());
    }
  }

  /** A text as the source of a script has it. */
  String quoted(String text) throws IOException {
    return json.writeValueAsString(text);
  }

  /** What the browser complained of, and what it asked the network for beside the page itself. */
  List<String> complaints() {
    List<String> found = new ArrayList<>();
    for (String event :
        List.of("Runtime.exceptionThrown", "Runtime.consoleAPICalled", "Log.entryAdded")) {
      browser.events(event).forEach(e -> found.add(e.path("params").toString()));
    }
    for (JsonNode event : browser.events("Network.requestWillBeSent")) {
      String url = event.path("params").path("request").path("url").asText();
      if (!url.startsWith(PAGE.toAbsolutePath().toUri().toString())
          && !url.startsWith("blob:")
          && !url.startsWith("data:")
          && !url.startsWith("about:")) {
        found.add("asked for " + url);
      }
    }
    return found;
  }

  private static String resource(Class<?> place, String name) throws IOException {
    try (InputStream in = place.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Override
  public void close() {
    browser.close();
  }
}
