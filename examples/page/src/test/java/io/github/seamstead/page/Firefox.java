package io.github.seamstead.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.examples.book.BrowserProcess;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** A headless Firefox with one page, driven over WebDriver BiDi, the open protocol of the W3C. */
final class Firefox implements AutoCloseable {

  private static final List<String> NAMES = List.of("firefox-esr", "firefox");
  private static final Duration PATIENCE = Duration.ofSeconds(180);

  private final ObjectMapper json = new ObjectMapper();
  private final BrowserProcess process;
  private final String page;

  private Firefox(ProcessBuilder command, Path folder) throws IOException, InterruptedException {
    process = BrowserProcess.start(command, folder, "/session", PATIENCE, event -> {});
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
    return BrowserProcess.find("SEAMSTEAD_FIREFOX", NAMES);
  }

  /** Starts it with an empty profile. */
  static Firefox start(Path program, Path folder) throws IOException, InterruptedException {
    Path profile = Files.createDirectory(folder.resolve("profile"));
    ProcessBuilder command =
        new ProcessBuilder(
            program.toString(),
            "--headless",
            "--no-remote",
            "--profile",
            profile.toString(),
            "--remote-debugging-port=0",
            "about:blank");
    command.environment().put("HOME", folder.toString());
    return new Firefox(command, folder);
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
    return process.ask(BrowserProcess.message(method, parameters));
  }

  @Override
  public void close() {
    process.end(BrowserProcess.message("browser.close", json.createObjectNode()));
  }
}
