package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;

/**
 * A reading that cannot be right.
 *
 * @param number its place in the field book, from 1
 * @param reading the reading
 * @param statistic its standardised residual when it was taken out
 * @param critical the critical value it exceeded
 * @param predicted what all accepted readings say it should be, in metres
 * @param error how far it is off, given - predicted, in metres
 * @param hints what probably happened, the likeliest first; empty if nothing usual fits
 * @param alsoPossible other readings whose error would look nearly the same, so that no test can
 *     tell which of them it is: measure these again too
 */
public record Blunder(
    int number,
    Reading reading,
    double statistic,
    double critical,
    Uncertain predicted,
    double error,
    List<String> hints,
    List<Alternative> alsoPossible) {

  /**
   * A reading that may be the wrong one instead.
   *
   * @param number its place in the field book, from 1
   * @param reading the reading
   * @param predicted what the others then say it should be, in metres
   * @param hints what then probably happened; empty if nothing usual fits
   */
  public record Alternative(int number, Reading reading, Uncertain predicted, List<String> hints) {

    /**
     * Copies the list.
     *
     * @param number its place in the field book
     * @param reading the reading
     * @param predicted what the others then say
     * @param hints what then probably happened
     */
    public Alternative {
      hints = List.copyOf(hints);
    }
  }

  /**
   * Copies the lists.
   *
   * @param number its place in the field book
   * @param reading the reading
   * @param statistic its standardised residual
   * @param critical the critical value
   * @param predicted what the others say
   * @param error how far it is off
   * @param hints what probably happened
   * @param alsoPossible readings that it cannot be told from
   */
  public Blunder {
    hints = List.copyOf(hints);
    alsoPossible = List.copyOf(alsoPossible);
  }
}
