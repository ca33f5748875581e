package io.github.seamstead.examples.service;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.json.JsonWriter;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Plans jobs over HTTP.
 *
 * <ul>
 *   <li>{@code POST /plans} with a job document starts a plan: 202 with its place, or 400 with all
 *       faults. {@code ?seconds=20} limits the search, {@code ?effort=3} asks for more of it.
 *   <li>{@code GET /plans/ID} gives the results, or 202 with the progress while it is under way.
 *   <li>{@code DELETE /plans/ID} stops it: the results then hold what was found so far and say so.
 * </ul>
 */
public final class PlanService implements AutoCloseable {

  private static final int PORT = 8080;
  private static final Pattern ONE = Pattern.compile("/plans/([0-9]+)");
  private static final Pattern SECONDS =
      Pattern.compile("(?:^|&)seconds=([0-9]{1,4}(?:\\.[0-9]{1,3})?)(?:&|$)");
  private static final Pattern EFFORT = Pattern.compile("(?:^|&)effort=([0-9]{1,4})(?:&|$)");
  private static final int USUAL_SECONDS = 30;

  private final HttpServer server;
  private final ExecutorService requests = Executors.newCachedThreadPool();
  private final PlanQueue queue;

  /**
   * Starts the service.
   *
   * @param port the port on this machine; 0 for any that is free
   * @param workers how many plans run at once, 1 or more
   * @throws IOException if the port is taken
   */
  public PlanService(int port, int workers) throws IOException {
    queue = new PlanQueue(workers);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    server.setExecutor(requests);
    server.createContext("/plans", this::answer);
    server.start();
  }

  /**
   * Starts the service and leaves it running.
   *
   * @param args a port, or nothing for 8080
   * @throws IOException if the port is taken
   */
  public static void main(String[] args) throws IOException {
    int port = args.length > 0 ? Integer.parseInt(args[0]) : PORT;
    PlanService service = new PlanService(port, Runtime.getRuntime().availableProcessors());
    System.out.println("POST a job to http://localhost:" + service.port() + "/plans");
  }

  /**
   * Tells where the service listens.
   *
   * @return the port
   */
  public int port() {
    return server.getAddress().getPort();
  }

  /** Stops all plans and the service. */
  @Override
  public void close() {
    server.stop(0);
    queue.close();
    requests.shutdownNow();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      route(exchange);
    }
  }

  /** Every request is answered, also one that no plan can be made of. */
  private void route(HttpExchange exchange) throws IOException {
    try {
      String path = exchange.getRequestURI().getPath();
      Matcher one = ONE.matcher(path);
      String method = exchange.getRequestMethod();
      if (path.equals("/plans") && method.equals("POST")) {
        start(exchange);
      } else if (one.matches() && method.equals("GET")) {
        show(exchange, queue.find(one.group(1)));
      } else if (one.matches() && method.equals("DELETE")) {
        Optional<PlanQueue.Entry> entry = queue.find(one.group(1));
        entry.ifPresent(PlanQueue.Entry::stop);
        show(exchange, entry);
      } else {
        send(exchange, 404, Map.of("error", "ask for POST /plans, GET or DELETE /plans/ID"));
      }
    } catch (JobFaultsException e) {
      send(exchange, 400, faults(e));
    } catch (IllegalArgumentException e) {
      send(exchange, 400, Map.of("error", String.valueOf(e.getMessage())));
    } catch (IllegalStateException e) {
      send(exchange, 500, Map.of("error", String.valueOf(e.getMessage())));
    }
  }

  private void start(HttpExchange exchange) throws IOException {
    byte[] body;
    try (InputStream in = exchange.getRequestBody()) {
      body = in.readNBytes((int) JobReader.LARGEST_BYTES + 1);
    }
    String query = Optional.ofNullable(exchange.getRequestURI().getQuery()).orElse("");
    double seconds = number(SECONDS, query, USUAL_SECONDS);
    Duration limit = Duration.ofMillis(Math.round(1000 * seconds));
    int effort = (int) number(EFFORT, query, 1);
    Optional<PlanQueue.Entry> entry = queue.start(JobReader.parse(body), effort, limit);
    if (entry.isEmpty()) {
      send(exchange, 503, Map.of("error", "too many plans are waiting; ask again later"));
      return;
    }
    exchange.getResponseHeaders().set("Location", "/plans/" + entry.get().id());
    show(exchange, entry);
  }

  private static double number(Pattern pattern, String query, double usual) {
    Matcher matcher = pattern.matcher(query);
    return matcher.find() ? Double.parseDouble(matcher.group(1)) : usual;
  }

  private static void show(HttpExchange exchange, Optional<PlanQueue.Entry> asked)
      throws IOException {
    if (asked.isEmpty()) {
      send(exchange, 404, Map.of("error", "there is no such plan, or no longer"));
      return;
    }
    PlanQueue.Entry entry = asked.get();
    Optional<String> results = entry.results();
    if (results.isPresent()) {
      send(exchange, 200, results.get());
    } else {
      Map<String, Object> state =
          Map.of("id", entry.id(), "done_ratio", entry.doneRatio(), "doing", entry.doing());
      send(exchange, 202, state);
    }
  }

  private static Map<String, Object> faults(JobFaultsException faults) {
    return Map.of("faults", faults.faults().stream().map(PlanService::fault).toList());
  }

  private static Map<String, Object> fault(JobFault fault) {
    return Map.of(
        "path", fault.path(),
        "line", fault.line(),
        "given", fault.given(),
        "allowed", fault.allowed());
  }

  private static void send(HttpExchange exchange, int status, Map<String, ?> body)
      throws IOException {
    send(exchange, status, JsonWriter.text(body));
  }

  private static void send(HttpExchange exchange, int status, String json) throws IOException {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().put("Content-Type", List.of("application/json; charset=utf-8"));
    exchange.sendResponseHeaders(status, bytes.length);
    exchange.getResponseBody().write(bytes);
  }
}
