package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One question with its numbers, its sum and what goes wrong.
 *
 * @param question the question, with every number that the sum needs
 * @param givens those numbers
 * @param solution the sum; each step rests on givens and earlier steps alone
 * @param digits significant digits of the answer
 * @param estimate how to see the size of the answer beforehand
 * @param low the estimate's lower end, in the unit of the answer
 * @param high the estimate's upper end
 * @param slips usual mistakes, each with a number that differs from the answer
 */
public record Task(
    String question,
    List<Given> givens,
    Derivation solution,
    int digits,
    String estimate,
    double low,
    double high,
    List<Slip> slips) {

  private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]\\w*)(:model)?}");

  /** Digits of a step in running text. */
  private static final int IN_TEXT = 3;

  /**
   * Copies the lists.
   *
   * @param question the question
   * @param givens its numbers
   * @param solution its sum
   * @param digits significant digits
   * @param estimate a sentence
   * @param low lower end
   * @param high upper end
   * @param slips usual mistakes
   */
  public Task {
    givens = List.copyOf(givens);
    slips = List.copyOf(slips);
  }

  /**
   * Gives the answer.
   *
   * @return in the unit of the last step
   */
  public double answer() {
    return solution.result().value();
  }

  /**
   * Gives the unit of the answer.
   *
   * @return the unit of the last step, {@code rad} for an angle
   */
  public String unit() {
    return solution.result().unit();
  }

  /**
   * Writes the answer as a pupil should.
   *
   * @return for example {@code 9.910 m2}
   */
  public String shownAnswer() {
    return shown(answer());
  }

  /**
   * Writes a number in the unit and to the digits of the answer.
   *
   * @param value the number
   * @return for example {@code 12.3 m}
   */
  public String shown(double value) {
    return Figures.result(value, Parts.raised(unit()), digits);
  }

  /**
   * Finds the number of a symbol.
   *
   * @param symbol of a given or a step
   * @return the number that goes into the sum
   * @throws IllegalArgumentException if there is none
   */
  public double value(String symbol) {
    return givens.stream()
        .filter(given -> given.symbol().equals(symbol))
        .map(Given::value)
        .findFirst()
        .orElseGet(() -> step(symbol).value());
  }

  /**
   * Writes the number of a symbol with its unit.
   *
   * @param symbol of a given or a step
   * @return a given as printed, a step to three digits
   */
  public String text(String symbol) {
    return givens.stream()
        .filter(given -> given.symbol().equals(symbol))
        .map(Given::shown)
        .findFirst()
        .orElseGet(() -> Figures.result(value(symbol), Parts.raised(step(symbol).unit()), IN_TEXT));
  }

  /**
   * Puts numbers into a text: <code>{a}</code> is the number of a, <code>{a:model}</code> the same
   * length in the model one to ten, in whole millimetres.
   *
   * @param text with places
   * @return the text with numbers
   */
  public String fill(String text) {
    Matcher places = PLACE.matcher(text);
    StringBuilder filled = new StringBuilder();
    int from = 0;
    while (places.find()) {
      String symbol = places.group(1);
      String number =
          places.group(2) == null
              ? text(symbol)
              : Figures.quantity(Long.toString(Shelter.modelMillimetres(value(symbol))), "mm");
      filled.append(text, from, places.start()).append(number);
      from = places.end();
    }
    return filled.append(text, from, text.length()).toString();
  }

  private Step step(String symbol) {
    return solution.steps().stream()
        .filter(step -> step.symbol().equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no number for " + symbol));
  }
}
