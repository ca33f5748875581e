package io.github.seamstead.api.book;

import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Writes a plan as a folder of files. */
public final class BookWriter {

  private BookWriter() {}

  /**
   * Writes the book of a plan.
   *
   * @param plan the plan
   * @param folder where it goes; new, empty, or made by an earlier run
   * @throws IllegalArgumentException if the folder is refused, as {@link BookFolder#refusal(Path)}
   *     tells
   * @throws UncheckedIOException if a file cannot be written; nothing is left behind then
   */
  public static void write(JobPlan plan, Path folder) {
    try (BookFolder book = BookFolder.draft(folder)) {
      book.write("results.json", ResultsJson.text(plan));
      book.publish();
    } catch (IOException e) {
      throw new UncheckedIOException("the book cannot be written to " + folder, e);
    }
  }
}
