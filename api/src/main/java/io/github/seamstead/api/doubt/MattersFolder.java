package io.github.seamstead.api.doubt;

import io.github.seamstead.api.files.BookFolder;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes what matters most as a folder of files. */
public final class MattersFolder {

  private MattersFolder() {}

  /**
   * Writes {@code matters.html}, {@code matters.csv}, {@code matters.json} and the bar charts.
   *
   * @param matters what matters
   * @param folder where it goes; new, empty, or made by an earlier run
   * @throws IllegalArgumentException if the folder is refused: it is not empty and no earlier run
   *     made it, a file of it was edited since, or this program was started in it
   * @throws UncheckedIOException if a file cannot be written, with the reason; nothing is left
   *     behind then
   */
  public static void write(Matters matters, Path folder) {
    try (BookFolder book = BookFolder.draft(folder)) {
      MattersPage.Written page = MattersPage.of(matters);
      book.write("matters.html", page.html());
      book.write("matters.csv", csv(matters));
      book.write("matters.json", MattersJson.text(matters));
      for (Drawing drawing : page.drawings().values()) {
        book.write("drawings/" + drawing.name() + ".svg", drawing.file());
      }
      book.publish();
    } catch (IOException e) {
      throw new UncheckedIOException(
          "what matters cannot be written to " + folder + ": " + IoReason.of(e), e);
    }
  }

  private static String csv(Matters matters) {
    StringBuilder csv = new StringBuilder();
    line(
        csv,
        Stream.of("number", "doubt", "low", "high", "first", "firstError", "total", "totalError"));
    for (NumberInDoubt number : matters.numbers()) {
      for (Influence i : number.influences()) {
        line(
            csv,
            Stream.concat(
                Stream.of(number.measure().key(), i.doubt()),
                Stream.of(
                        i.low(),
                        i.high(),
                        i.index().first().value(),
                        i.index().first().standardUncertainty(),
                        i.index().total().value(),
                        i.index().total().standardUncertainty())
                    .map(Numbers::plain)));
      }
    }
    return csv.toString();
  }

  private static void line(StringBuilder csv, Stream<String> cells) {
    csv.append(cells.map(Escapes::csv).collect(Collectors.joining(","))).append("\r\n");
  }
}
