package io.github.seamstead.api.compare;

import io.github.seamstead.api.files.BookFolder;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Writes a comparison as a folder of files. */
public final class CompareFolder {

  private CompareFolder() {}

  /**
   * Writes {@code compare.html}, {@code variants.csv}, {@code variants.json} and the small
   * pictures.
   *
   * @param comparison the comparison
   * @param folder where it goes; new, empty, or made by an earlier run
   * @throws IllegalArgumentException if the folder is refused: it is not empty and no earlier run
   *     made it, a file of it was edited since, or this program was started in it
   * @throws UncheckedIOException if a file cannot be written, with the reason; nothing is left
   *     behind then
   */
  public static void write(Comparison comparison, Path folder) {
    try (BookFolder book = BookFolder.draft(folder)) {
      ComparePage.Written page = ComparePage.of(comparison);
      book.write("compare.html", page.html());
      book.write("variants.csv", CompareTable.csv(comparison));
      book.write("variants.json", CompareJson.text(comparison));
      for (Drawing drawing : page.drawings().values()) {
        book.write("drawings/" + drawing.name() + ".svg", drawing.file());
      }
      book.publish();
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the comparison cannot be written to " + folder + ": " + IoReason.of(e), e);
    }
  }
}
