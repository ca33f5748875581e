package io.github.seamstead.shared.source;

import io.github.seamstead.shared.check.Args;

/**
 * A published source, or the statement that there is none.
 *
 * <pre>{@code
 * Source source = Source.found("A. Writer", "Handbook of tents", "1999", "table 2");
 * source.status(); // FOUND
 * }</pre>
 *
 * @param author author or body; empty for common practice
 * @param title title of the work, or what the practice is; not blank
 * @param year year or edition as text; empty if there is none
 * @param locator table, clause, page or equation; empty for the whole work
 * @param status how the value was seen
 */
public record Source(
    String author, String title, String year, String locator, SourceStatus status) {

  public Source {
    Args.notBlank("title", title);
  }

  /**
   * Names a publication whose value was seen.
   *
   * @param author author or body
   * @param title title of the work
   * @param year year or edition
   * @param locator table, clause, page or equation; empty for the whole work
   * @return the source, found
   */
  public static Source found(String author, String title, String year, String locator) {
    return new Source(author, title, year, locator, SourceStatus.FOUND);
  }

  /**
   * Names a publication quoted from memory.
   *
   * @param author author or body
   * @param title title of the work
   * @param year year or edition
   * @param locator table, clause, page or equation; empty for the whole work
   * @return the source, from memory
   */
  public static Source fromMemory(String author, String title, String year, String locator) {
    return new Source(author, title, year, locator, SourceStatus.FROM_MEMORY);
  }

  /**
   * States knowledge of the trade that has no publication.
   *
   * @param what what the practice is
   * @return the source, common practice
   */
  public static Source commonPractice(String what) {
    return new Source("", what, "", "", SourceStatus.COMMON_PRACTICE);
  }

  /**
   * States that a value follows from a formula that needs no authority, such as plane geometry.
   *
   * @param what the formula's name or ground
   * @return the source, derived
   */
  public static Source derived(String what) {
    return new Source("", what, "", "", SourceStatus.DERIVED);
  }

  /**
   * Names another place in the same work.
   *
   * @param place table, clause, page or equation
   * @return the same source with another locator
   */
  public Source at(String place) {
    return new Source(author, title, year, place, status);
  }

  /**
   * Writes the source on one line.
   *
   * @return for example {@code ASTM, D2487 (2017), fig. 4 [from memory]}
   */
  public String citation() {
    StringBuilder text = new StringBuilder();
    if (!author.isEmpty()) {
      text.append(author).append(", ");
    }
    text.append(title);
    if (!year.isEmpty()) {
      text.append(" (").append(year).append(')');
    }
    if (!locator.isEmpty()) {
      text.append(", ").append(locator);
    }
    return text.append(" [").append(status.label()).append(']').toString();
  }
}
