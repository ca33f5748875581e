package io.github.seamstead.shared.quantity;

/** A quantity text that cannot be read; the message says what was given and what to write. */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** Why the text cannot be read. */
  private final String reason;

  /**
   * Creates the exception.
   *
   * @param given what was given, for what
   * @param reason what is wrong with it and what to write
   */
  public QuantityFormatException(String given, String reason) {
    super(given + ": " + reason);
    this.reason = reason;
  }

  /**
   * Tells what is wrong and what to write, for a place that quotes the text given itself.
   *
   * @return the message without what was given
   */
  public String reason() {
    return reason;
  }
}
