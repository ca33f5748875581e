package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.text.Escapes;
import java.io.Serializable;

/**
 * One fault of a job document.
 *
 * @param path the JSON path of the value, such as {@code $.stock.rolls[0].width}; {@code $} for the
 *     document as a whole; not blank
 * @param line the line of the text where the value stands, counted from 1; 0 if it has none; 0 or
 *     more
 * @param given what the document says there; not blank
 * @param allowed what to write instead; not blank
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // A class may leave itself out of the page of serial forms.
public record JobFault(String path, int line, String given, String allowed)
    implements Serializable {

  public JobFault {
    Args.notBlank("path", path);
    Args.require(line >= 0, "line", String.valueOf(line), "must be 0 or more");
    Args.notBlank("given", given);
    Args.notBlank("allowed", allowed);
  }

  /**
   * Writes the fault on one line that is safe on a terminal: what the document says is shown with
   * its control characters and marks of writing direction as codes.
   *
   * @return for example {@code $.frame.sides (line 4): given 2; must be from 3 to 64}
   */
  public String text() {
    String where = line > 0 ? path + " (line " + line + ")" : path;
    return Escapes.terminal(where + ": given " + given + "; " + allowed);
  }
}
