package io.github.seamstead.api.job;

import io.github.seamstead.api.json.JsonWriter;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes jobs as documents. A value that was assumed is left out, so that reading assumes and
 * records it again: the text reads back as an equal job. Costs time linear in the job.
 *
 * <pre>{@code
 * Job job = JobReader.read(Path.of("jobs/class-model.json"));
 * String text = JobWriter.text(job);
 * JobReader.parse(text).equals(job); // true
 * }</pre>
 */
public final class JobWriter {

  private JobWriter() {}

  /**
   * Writes a job in the newest version of the form.
   *
   * @param job the job
   * @return indented JSON text that ends with a line break; quantities with their units, to the
   *     last digit
   */
  public static String text(Job job) {
    return text(Shapes.DOCUMENT.write(job.document(), "$", job.assumedPaths()));
  }

  /** Writes a tree of the table as text. */
  static String text(Json tree) {
    return JsonWriter.text(plain(tree));
  }

  private static Object plain(Json json) {
    if (json instanceof Json.Obj object) {
      Map<String, Object> members = new LinkedHashMap<>();
      object.members().forEach(member -> members.put(member.key(), plain(member.value())));
      return members;
    }
    if (json instanceof Json.Arr array) {
      return array.items().stream().map(JobWriter::plain).toList();
    }
    if (json instanceof Json.Text text) {
      return text.text();
    }
    if (json instanceof Json.Flag flag) {
      return flag.value();
    }
    return ((Json.Num) json).value();
  }
}
