package io.github.seamstead.shared.check;

/**
 * An argument that a calculation refuses: its name, what was given and what is allowed, each to be
 * read alone, and all as one message. A caller that throws it has been given a wrong value; any
 * other {@link IllegalArgumentException} of this library is a defect of the library.
 */
public final class ArgumentFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private static final String GIVEN = "given ";
  private static final String NAME_END = ": ";
  private static final String MUST = ", must";
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
    String message = name + NAME_END + GIVEN + given + ", " + allowed;
    return new ArgumentFault(
        advice.isEmpty() ? message : message + ADVICE + advice, name, given, allowed, unit, advice);
  }

  /**
   * Makes the fault of several arguments together from a sentence of this library: {@code name:
   * given X, must Y}, or a finding and, after a semicolon, what to do.
   *
   * @param sentence the sentence
   * @return the fault with the sentence as its message; without a name where the sentence has more
   *     before {@code given} than a name
   */
  public static ArgumentFault of(String sentence) {
    int must = sentence.indexOf(MUST);
    int cut = must >= 0 ? must : sentence.lastIndexOf(ADVICE);
    String found = cut < 0 ? sentence : sentence.substring(0, cut);
    String allowed = cut < 0 ? AGREE : sentence.substring(cut + 2);
    int given = found.indexOf(NAME_END + GIVEN);
    boolean named = given > 0 && found.indexOf(NAME_END) == given;
    String name = named ? found.substring(0, given) : "";
    String rest = named ? found.substring(given + NAME_END.length()) : found;
    return new ArgumentFault(
        sentence,
        name,
        rest.startsWith(GIVEN) ? rest.substring(GIVEN.length()) : rest,
        allowed,
        "",
        must >= 0 || cut < 0 ? "" : allowed);
  }

  /**
   * Makes the fault of several arguments together, with what led to it.
   *
   * @param sentence the sentence, as {@link #of(String)} has it
   * @param cause what led to it
   * @return the fault
   */
  public static ArgumentFault of(String sentence, Throwable cause) {
    ArgumentFault fault = of(sentence);
    fault.initCause(cause);
    return fault;
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
