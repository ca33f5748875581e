package io.github.seamstead.api.job;

import java.util.List;
import java.util.Map;

/**
 * A job document that was read without a fault, with what was assumed in reading it.
 *
 * @param document the document
 * @param assumptions values that the document leaves out and that were taken from elsewhere, in the
 *     order of the document
 * @param lines the line of the text where each value stands, by JSON path; empty for a document
 *     that was never a text
 */
public record Job(JobDocument document, List<Assumption> assumptions, Map<String, Integer> lines) {

  /**
   * Copies the list and the map.
   *
   * @param document the document
   * @param assumptions values taken from elsewhere
   * @param lines lines by JSON path
   */
  public Job {
    assumptions = List.copyOf(assumptions);
    lines = Map.copyOf(lines);
  }

  /**
   * Wraps a document that was put together in code.
   *
   * @param document the document
   * @return the job, without assumptions and lines
   */
  public static Job of(JobDocument document) {
    return new Job(document, List.of(), Map.of());
  }

  /**
   * Makes a fault of this document.
   *
   * @param path the JSON path of the value
   * @param given what the document says there
   * @param allowed what to write instead
   * @return the fault, with the line of the value or of the nearest value around it
   */
  public JobFault fault(String path, String given, String allowed) {
    String at = path;
    while (!at.isEmpty()) {
      Integer line = lines.get(at);
      if (line != null) {
        return new JobFault(path, line, given, allowed);
      }
      int cut = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
      at = at.substring(0, Math.max(0, cut));
    }
    return new JobFault(path, 0, given, allowed);
  }
}
