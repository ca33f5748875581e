package io.github.seamstead.shared.quantity;

/** A quantity text that cannot be read; the message says what was given and what to write. */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what was given and what is allowed
   */
  public QuantityFormatException(String message) {
    super(message);
  }
}
