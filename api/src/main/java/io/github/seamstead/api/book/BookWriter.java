package io.github.seamstead.api.book;

import io.github.seamstead.api.files.BookFolder;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;

/**
 * Writes a plan as a folder of files.
 *
 * <pre>{@code
 * JobPlan plan =
 *     JobPlanner.plan(JobReader.read(Path.of("jobs/class-model.json")), PlanOptions.defaults());
 * BookWriter.write(plan, folder.resolve("book"));
 * Files.exists(folder.resolve("book/book.html")); // true
 * }</pre>
 */
public final class BookWriter {

  private BookWriter() {}

  /**
   * Writes the book of a plan; with worked steps also {@code worked.md} and {@code worked.tex}.
   *
   * @param plan the plan
   * @param folder where it goes; new, empty, or made by an earlier run
   * @throws IllegalArgumentException if the folder is refused: it is not empty and no earlier run
   *     made it, a file of it was edited since, or this program was started in it
   * @throws UncheckedIOException if a file cannot be written, with the reason; nothing is left
   *     behind then
   */
  public static void write(JobPlan plan, Path folder) {
    try (BookFolder book = BookFolder.draft(folder)) {
      String results = ResultsJson.text(plan);
      Book pages = Book.of(plan, results);
      book.write("book.html", pages.html());
      book.write("results.json", results);
      for (Map.Entry<String, String> drawing : pages.drawings().entrySet()) {
        book.write("drawings/" + drawing.getKey() + ".svg", drawing.getValue());
      }
      for (Map.Entry<String, String> list : pages.lists().entrySet()) {
        book.write("lists/" + list.getKey(), list.getValue());
      }
      if (pages.printSheets().isPresent()) {
        book.write("print-sheets.html", pages.printSheets().get());
      }
      if (!plan.derivations().isEmpty()) {
        book.write("worked.md", WorkedText.markdown(plan.derivations()));
        book.write("worked.tex", WorkedText.latex(plan.derivations()));
      }
      book.publish();
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the book cannot be written to " + folder + ": " + IoReason.of(e), e);
    }
  }
}
