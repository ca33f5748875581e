package io.github.seamstead.shared.source;

/** How a published value was seen by those who wrote it down here. */
public enum SourceStatus {
  /** The value was seen in the publication or a copy of it. */
  FOUND("found"),
  /** The value is quoted from memory and was not seen again. */
  FROM_MEMORY("from memory"),
  /** Knowledge of the trade with no publication behind it. */
  COMMON_PRACTICE("common practice"),
  /** Computed from a formula or from data of another source. */
  DERIVED("derived");

  private final String label;

  SourceStatus(String label) {
    this.label = label;
  }

  /**
   * Names the status as the book prints it.
   *
   * @return for example {@code from memory}
   */
  public String label() {
    return label;
  }
}
