package io.github.seamstead.api.results;

import io.github.seamstead.api.Seamstead;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.internal.SchemaParts;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFileException;
import io.github.seamstead.api.json.JsonReader;
import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.api.plan.JobPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The results of a plan as data, read back from their text or taken from the plan: equal either
 * way. Immutable. Costs time linear in the text.
 *
 * <pre>{@code
 * Job job = JobReader.read(Path.of("jobs/class-model.json"));
 * BookWriter.write(JobPlanner.plan(job, PlanOptions.defaults()), folder.resolve("book"));
 * Results results = Results.read(folder.resolve("book/results.json"));
 * double hip = results.root().one("frame").one("measures").number("hipEdge_m"); // 0.371
 * }</pre>
 */
public final class Results {

  private static final Map<String, Object> SCHEMA = ResultsJson.root().schema();

  private final Map<String, Object> data;

  private Results(Map<String, Object> data) {
    this.data = data;
  }

  /**
   * Takes the results of a plan.
   *
   * @param plan the plan
   * @return its results
   */
  public static Results of(JobPlan plan) {
    return new Results(SchemaParts.map(frozen(ResultsJson.data(plan))));
  }

  /**
   * Reads results from a file.
   *
   * @param file a JSON file in UTF-8 that {@link ResultsJson} wrote
   * @return the results
   * @throws JobFileException if the file cannot be read
   * @throws ResultsException if it does not hold results, or results of a later version
   */
  public static Results read(Path file) {
    try {
      return parse(Files.readString(file));
    } catch (IOException e) {
      throw new JobFileException(file, e);
    }
  }

  /**
   * Reads results from a text. Keys of a later release are kept and left aside.
   *
   * @param json JSON text that {@link ResultsJson} wrote
   * @return the results
   * @throws ResultsException if it does not hold results, or results of a later version
   */
  public static Results parse(String json) {
    Object read;
    try {
      read = JsonReader.read(json);
    } catch (IOException e) {
      throw new ResultsException("$: given text that is not JSON; " + e.getMessage(), e);
    }
    if (read instanceof Map<?, ?> map
        && map.get("seamsteadResults") instanceof Double version
        && version > ResultsJson.VERSION) {
      throw new ResultsException(List.of(later(version)));
    }
    List<String> faults = ResultsCheck.faults(read, SCHEMA);
    if (!faults.isEmpty()) {
      throw new ResultsException(faults);
    }
    return new Results(SchemaParts.map(frozen(read)));
  }

  private static String later(double version) {
    return "$.seamsteadResults: given "
        + Math.round(version)
        + "; must be "
        + ResultsJson.VERSION
        + "; a later version needs a later release of the library than "
        + Seamstead.version();
  }

  /** All numbers as doubles, so that what was read equals what was taken from the plan. */
  private static Object frozen(Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> frozen = new LinkedHashMap<>();
      map.forEach((key, inner) -> frozen.put(String.valueOf(key), frozen(inner)));
      return Collections.unmodifiableMap(frozen);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Results::frozen).toList();
    }
    return value instanceof Number number ? (Object) number.doubleValue() : value;
  }

  /**
   * Writes the results.
   *
   * @return the text that {@link ResultsJson#text} gives for the plan
   */
  public String text() {
    return JsonWriter.text(data);
  }

  /**
   * Names the release that wrote the results.
   *
   * @return the version of the library
   */
  public String library() {
    return root().text("library");
  }

  /**
   * Tells of which job these are the results.
   *
   * @return what {@link io.github.seamstead.api.job.Job#digest()} gives for it
   */
  public String jobDigest() {
    return root().text("jobDigest");
  }

  /**
   * Gives the results by key, as the schema describes them.
   *
   * @return the outermost object; a chapter that was not planned is not in it
   */
  public ResultsNode root() {
    return new ResultsNode(data, SCHEMA, "$");
  }

  /**
   * Lists what was assumed.
   *
   * @return the assumptions of the plan
   */
  public List<Assumption> assumptions() {
    return root().many("assumptions").stream()
        .map(a -> new Assumption(a.text("path"), a.text("value"), a.text("ground")))
        .toList();
  }

  /**
   * Lists what cannot be met as stated.
   *
   * @return what is unmet, as in the plan
   */
  public List<Unmet> unmet() {
    return root().many("unmet").stream()
        .map(u -> new Unmet(chapter(u), u.text("what"), u.findOne("fault").map(Results::fault)))
        .toList();
  }

  /**
   * Lists the chapters left out.
   *
   * @return chapters with the reason, as in the plan
   */
  public List<NotPlanned> notPlanned() {
    return root().many("notPlanned").stream()
        .map(n -> new NotPlanned(chapter(n), n.text("reason")))
        .toList();
  }

  private static JobFault fault(ResultsNode f) {
    return new JobFault(f.text("path"), f.whole("line"), f.text("given"), f.text("allowed"));
  }

  private static Chapter chapter(ResultsNode node) {
    String word = node.text("chapter");
    return Arrays.stream(Chapter.values())
        .filter(chapter -> chapter.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new ResultsException(
                    List.of("$: given the chapter \"" + word + "\"; must be one that is known")));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Results that && data.equals(that.data);
  }

  @Override
  public int hashCode() {
    return data.hashCode();
  }

  @Override
  public String toString() {
    return "Results[library " + library() + ", job " + jobDigest() + "]";
  }
}
