package io.github.seamstead.examples.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
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
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A browser that runs, with a socket to it over which messages with numbers are answered by
 * messages with the same numbers; what they say is the matter of the protocol.
 */
public final class BrowserProcess {

  private static final Pattern ADDRESS = Pattern.compile("ws://\\S+");

  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
  private final Process process;
  private final WebSocket socket;
  private final Duration patience;
  private int calls;

  private BrowserProcess(
      Process process, URI address, Duration patience, Consumer<JsonNode> events) {
    this.process = process;
    this.patience = patience;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(address, new Ear(events))
            .join();
  }

  /**
   * Finds a program on the path, or where a variable of the environment says.
   *
   * @param variable the variable
   * @param names how the program may be called, the best first
   */
  public static Optional<Path> find(String variable, List<String> names) {
    String stated = System.getenv(variable);
    if (stated != null) {
      return Optional.of(Path.of(stated));
    }
    String[] folders = System.getenv("PATH").split(File.pathSeparator, -1);
    return names.stream()
        .flatMap(name -> Stream.of(folders).map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * Starts the program and waits until it says where it listens.
   *
   * @param command what to start
   * @param folder for its messages
   * @param path what to add to the address that it names
   * @param patience how long to wait for it and for an answer
   * @param events hears the messages that answer none
   */
  public static BrowserProcess start(
      ProcessBuilder command,
      Path folder,
      String path,
      Duration patience,
      Consumer<JsonNode> events)
      throws IOException, InterruptedException {
    Path log = folder.resolve("messages.txt");
    Process process = command.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    try {
      URI address = URI.create(address(process, log, patience) + path);
      return new BrowserProcess(process, address, patience, events);
    } catch (IOException | RuntimeException e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static String address(Process process, Path log, Duration patience)
      throws IOException, InterruptedException {
    long end = System.nanoTime() + patience.toNanos();
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

  /**
   * Makes a message, still without a number.
   *
   * @param method what is asked for
   * @param parameters its parameters
   */
  public static ObjectNode message(String method, JsonNode parameters) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("method", method);
    message.set("params", parameters);
    return message;
  }

  /**
   * Sends a message under a number of its own, and gives what its answer holds.
   *
   * @param message the method, the parameters and whatever else the protocol wants
   */
  public JsonNode ask(ObjectNode message) {
    int id = ++calls;
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    answers.put(id, answer);
    socket.sendText(message.put("id", id).toString(), true).join();
    JsonNode got = answer.orTimeout(patience.toSeconds(), TimeUnit.SECONDS).join();
    if (!got.has("result")) {
      throw new IllegalStateException(message.path("method").asText() + ": " + got);
    }
    return got.path("result");
  }

  /**
   * Ends the program.
   *
   * @param farewell asks it to end by itself
   */
  public void end(ObjectNode farewell) {
    try {
      ask(farewell);
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

    private final Consumer<JsonNode> events;
    private final StringBuilder text = new StringBuilder();

    private Ear(Consumer<JsonNode> events) {
      this.events = events;
    }

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
        if (!node.has("id")) {
          events.accept(node);
          return;
        }
        CompletableFuture<JsonNode> answer = answers.remove(node.path("id").asInt());
        if (answer != null) {
          answer.complete(node);
        }
      } catch (IOException e) {
        throw new IllegalStateException("the browser sent no JSON", e);
      }
    }
  }
}
