package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was done on a job, line by line in the order of the days.
 *
 * @param job the name of the job that it belongs to, if stated
 * @param effort the effort of the plans that pieces were cut by, if stated
 * @param seed the seed of the plans that pieces were cut by, if stated
 * @param lines what happened, first day first
 * @param textLines the line of the text where each value stands, by JSON path; empty for a diary
 *     that was never a text
 */
public record Diary(
    Optional<String> job,
    Optional<Integer> effort,
    Optional<Integer> seed,
    List<DiaryLine> lines,
    Map<String, Integer> textLines) {

  public Diary {
    lines = List.copyOf(lines);
    textLines = Map.copyOf(textLines);
  }

  /**
   * Makes a diary in code.
   *
   * @param lines what happened, first day first
   * @return the diary
   */
  public static Diary of(List<DiaryLine> lines) {
    return new Diary(Optional.empty(), Optional.empty(), Optional.empty(), lines, Map.of());
  }

  /**
   * Gives the diary as it stood before its last day, by which the crew of that day worked.
   *
   * @return the lines before the last date; all but the head is gone if there is only one day
   */
  public Diary before() {
    return lines.isEmpty() ? this : until(lines.get(lines.size() - 1).date());
  }

  /**
   * Gives the diary as it stood on the evening before a day.
   *
   * @param day the day
   * @return the lines that stand before the first one of that day or a later one
   */
  public Diary until(LocalDate day) {
    int end = 0;
    while (end < lines.size() && lines.get(end).date().isBefore(day)) {
      end++;
    }
    return new Diary(job, effort, seed, lines.subList(0, end), textLines);
  }

  /**
   * Gives the last day.
   *
   * @return the date of the last line; empty without lines
   */
  public Optional<LocalDate> last() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).date());
  }

  /**
   * Makes a fault of this diary.
   *
   * @param line which of its lines, counted from 0
   * @param key the key within the line; empty for the line as a whole
   * @param given what the diary says there
   * @param allowed what to write instead
   * @return the fault
   */
  public JobFault fault(int line, String key, String given, String allowed) {
    String at = "$.diary[" + line + "]";
    String path = key.isEmpty() ? at : at + "." + key;
    int where = textLines.getOrDefault(path, textLines.getOrDefault(at, 0));
    return new JobFault(path, where, given, allowed);
  }
}
