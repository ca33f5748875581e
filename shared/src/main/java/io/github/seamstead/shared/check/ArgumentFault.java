package io.github.seamstead.shared.check;

/**
 * An argument that a calculation refuses: its name, what was given and what is allowed, each to be
 * read alone, and all as one message. A caller that throws it has been given a wrong value; any
 * other {@link IllegalArgumentException} of this library is a defect of the library.
 */
public final class ArgumentFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private static final String GIVEN = ": given ";
  private static final String MUST = "must";
  private static final String ADVICE = "; ";

  /** What is said of a contradiction, in which no single limit is broken. */
  private static final String AGREE = "must not contradict each other or the rest";

  /** What the value is. */
  private final String name;

  /** What was given. */
  private final String given;

  /** What is allowed. */
  private final String allowed;

  /** The unit of both; empty if there is none. */
  private final String unit;

  /** What helps; empty if nothing is advised. */
  private final String advice;

  private ArgumentFault(
      String message, String name, String given, String allowed, String unit, String advice) {
    super(message);
    this.name = name;
    this.given = given;
    this.allowed = allowed;
    this.unit = unit;
    this.advice = advice;
  }

  /**
   * Makes the fault of one argument.
   *
   * @param name the argument's name in the trade's words
   * @param given what was given, with its unit
   * @param allowed what is allowed, from {@code must} on, with its unit
   * @param unit the unit's symbol; empty for a pure number or a text
   * @param advice what to do about it, if more is to be said; else empty
   * @return the fault with the message {@code name: given X, must Y; advice}
   */
  public static ArgumentFault of(
      String name, String given, String allowed, String unit, String advice) {
    String message = name + GIVEN + given + ", " + allowed;
    return new ArgumentFault(
        advice.isEmpty() ? message : message + ADVICE + advice, name, given, allowed, unit, advice);
  }

  /**
   * Makes the fault of several arguments together that break no single limit.
   *
   * @param found what was found, with the values that contradict
   * @return the fault with {@code found} as its message
   */
  public static ArgumentFault finding(String found) {
    return new ArgumentFault(found, "", found, AGREE, "", "");
  }

  /**
   * Makes the fault of several arguments together, with what is asked of them.
   *
   * @param found what was found, with the values that contradict
   * @param asked what is allowed, from {@code must} on, or what to do about it
   * @return the fault with the message {@code found, must Y} or {@code found; advice}
   */
  public static ArgumentFault finding(String found, String asked) {
    return asked.startsWith(MUST)
        ? new ArgumentFault(found + ", " + asked, "", found, asked, "", "")
        : new ArgumentFault(found + ADVICE + asked, "", found, asked, "", asked);
  }

  /**
   * Adds what led to the fault.
   *
   * @param cause what led to it
   * @return this fault
   */
  public ArgumentFault causedBy(Throwable cause) {
    initCause(cause);
    return this;
  }

  /**
   * Names the argument.
   *
   * @return its name in the trade's words; empty if the fault is of several arguments
   */
  public String name() {
    return name;
  }

  /**
   * Tells what was given.
   *
   * @return the value with its unit, or what was found
   */
  public String given() {
    return given;
  }

  /**
   * Tells what is allowed.
   *
   * @return the limits with their unit, or what to do
   */
  public String allowed() {
    return allowed;
  }

  /**
   * Gives the unit of the value.
   *
   * @return its symbol; empty for a pure number, a text or several arguments
   */
  public String unit() {
    return unit;
  }

  /**
   * Tells what to do about it.
   *
   * @return the advice; empty if the limits say all
   */
  public String advice() {
    return advice;
  }
}
