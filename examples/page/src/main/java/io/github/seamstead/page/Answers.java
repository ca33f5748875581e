package io.github.seamstead.page;

import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.json.JsonReader;
import io.github.seamstead.api.json.JsonWriter;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Answers the messages of the page. A request is a JSON object with {@code id} and {@code kind}
 * ({@code check}, {@code plan}, {@code sketch}, {@code lesson}, {@code answer}); each answer
 * carries the same {@code id} and a {@code kind} of its own: {@code progress} any number of times,
 * then one of {@code done}, {@code faults}, {@code failed}.
 */
public final class Answers {

  private Answers() {}

  /**
   * Answers a request in full. Whatever goes wrong is said as an answer.
   *
   * @param request JSON text
   * @param reply hears each answer as JSON text
   */
  public static void answer(String request, Consumer<String> reply) {
    answer(request, reply, () -> false);
  }

  /**
   * Answers a request. Whatever goes wrong is said as an answer.
   *
   * @param request JSON text
   * @param reply hears each answer as JSON text
   * @param ending asked ten times a second at most whether a plan is to come to an end: its
   *     searches then give their best so far, and the rest of it is planned in full
   */
  public static void answer(String request, Consumer<String> reply, BooleanSupplier ending) {
    Object id = "";
    try {
      Object given = JsonReader.read(request);
      id = given instanceof Map<?, ?> values ? Request.id(values) : "";
      Request read = Request.of(given);
      say(id, done(read, reply, ending), reply);
    } catch (JobFaultsException e) {
      say(id, faults(e), reply);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      String text = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      say(id, of("failed", Map.of("text", text)), reply);
    }
  }

  private static Map<String, Object> done(
      Request request, Consumer<String> reply, BooleanSupplier ending) {
    return switch (request.kind()) {
      case "check" -> checked(request);
      case "plan" ->
          of(
              "done",
              JobAnswers.plan(
                  request, heard -> say(request.id(), of("progress", heard), reply), ending));
      case "sketch" -> of("done", Sketch.of(request));
      case "lesson" -> LessonAnswers.lesson(request);
      case "answer" -> of("done", LessonAnswers.answer(request));
      default -> throw new IllegalArgumentException("unknown kind of request: " + request.kind());
    };
  }

  private static Map<String, Object> checked(Request request) {
    Map<String, Object> answer;
    try {
      answer = of("done", JobAnswers.check(request));
    } catch (JobFaultsException e) {
      answer = faults(e);
    }
    answer.put("understood", JobAnswers.understood(request));
    return answer;
  }

  /** An answer of a kind. */
  static Map<String, Object> of(String kind, Map<String, Object> content) {
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("kind", kind);
    answer.putAll(content);
    return answer;
  }

  private static Map<String, Object> faults(JobFaultsException e) {
    List<Map<String, Object>> faults = e.faults().stream().map(Answers::fault).toList();
    return of("faults", Map.of("faults", faults));
  }

  private static Map<String, Object> fault(JobFault fault) {
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("path", fault.path());
    if (fault.line() > 0) {
      said.put("line", fault.line());
    }
    said.put("given", fault.given());
    said.put("allowed", fault.allowed());
    said.put("text", fault.text());
    return said;
  }

  private static void say(Object id, Map<String, Object> answer, Consumer<String> reply) {
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("id", id);
    whole.putAll(answer);
    reply.accept(JsonWriter.text(whole));
  }
}
