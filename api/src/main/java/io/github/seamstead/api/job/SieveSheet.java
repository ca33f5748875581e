package io.github.seamstead.api.job;

import java.util.List;

/**
 * A sieve analysis.
 *
 * @param sieves sieves, the coarsest first
 * @param pan dry mass in the pan, in kilograms
 * @param washed whether the fines were washed through
 */
public record SieveSheet(List<SieveReading> sieves, double pan, boolean washed) {

  /**
   * Copies the lists.
   *
   * @param sieves sieves, the coarsest first
   * @param pan dry mass in the pan, in kilograms
   * @param washed whether the fines were washed through
   */
  public SieveSheet {
    sieves = List.copyOf(sieves);
  }
}
