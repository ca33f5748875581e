package io.github.seamstead.api.book;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;

/** Writes a plan as a folder of files. */
public final class BookWriter {

  private BookWriter() {}

  /**
   * Writes the book of a plan; with worked steps also {@code worked.md} and {@code worked.tex}.
   *
   * @param plan the plan
   * @param folder where it goes; new, empty, or made by an earlier run
   * @throws IllegalArgumentException if the folder is refused, as {@link BookFolder#refusal(Path,
   *     Path...)} tells
   * @throws UncheckedIOException if a file cannot be written, with the reason; nothing is left
   *     behind then
   */
  public static void write(JobPlan plan, Path folder) {
    try (BookFolder book = BookFolder.draft(folder)) {
      String results = ResultsJson.text(plan);
      Book pages = Book.of(plan, results);
      book.write("book.html", pages.html());
      book.write("results.json", results);
      for (Drawing drawing : pages.drawings().values()) {
        book.write("drawings/" + drawing.name() + ".svg", drawing.file());
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
