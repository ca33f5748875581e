package io.github.seamstead.api.results;

import java.io.IOException;
import java.util.List;

/** A text that is not results of this library, with everything that speaks against it. */
public final class ResultsException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** What speaks against the text. */
  private final String[] faults;

  ResultsException(List<String> faults) {
    super(String.join("\n", faults));
    this.faults = faults.toArray(String[]::new);
  }

  ResultsException(String fault, IOException cause) {
    super(fault, cause);
    this.faults = new String[] {fault};
  }

  /**
   * Lists what speaks against the text.
   *
   * @return at least one sentence, each with the JSON path that it is about
   */
  public List<String> faults() {
    return List.of(faults);
  }
}
