package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * How fast the crew works.
 *
 * @param people in the crew, mixing and laying; 1 to 100
 * @param minutesPerLoad from load to load at the mixer; 0.25 to 480 minutes
 * @param peopleAtMixer who are bound while a load is mixed; 1 to {@code people}
 */
public record CrewRates(int people, Range minutesPerLoad, int peopleAtMixer) {

  public CrewRates {
    Args.within("people", people, 1, 100);
    Args.within("minutes per load (low)", minutesPerLoad.low(), 0.25, 480, "min");
    Args.within("minutes per load (high)", minutesPerLoad.high(), 0.25, 480, "min");
    Args.within("people at the mixer", peopleAtMixer, 1, people);
  }

  /**
   * Makes the rates of beginners with a small drum mixer: 8 to 15 min a load with two people, or
   * one if alone (common practice).
   *
   * @param people 1 to 100
   * @return the rates
   * @throws IllegalArgumentException if the number is out of range
   */
  public static CrewRates beginners(int people) {
    return new CrewRates(people, new Range(8, 11, 15), Math.min(2, people));
  }

  /**
   * Makes the rates of beginners who turn and tread heaps on a tarpaulin: 10 to 25 min a heap with
   * two people, or one if alone (common practice; treading alone takes 5 to 10 min in {@link
   * Mixer#TARPAULIN}, and a tiller is said to double the output of feet).
   *
   * @param people 1 to 100
   * @return the rates
   * @throws IllegalArgumentException if the number is out of range
   */
  public static CrewRates onTarpaulin(int people) {
    return new CrewRates(people, new Range(10, 16, 25), Math.min(2, people));
  }

  /**
   * Keeps the spread of the minutes per load and moves their likely value.
   *
   * @param likely minutes from load to load
   * @return the rates with low, likely and high in the same proportion to one another
   * @throws IllegalArgumentException if an end of the range leaves 0.25 to 480 minutes
   */
  public CrewRates withUsualMinutesPerLoad(double likely) {
    return new CrewRates(
        people, minutesPerLoad.times(likely / minutesPerLoad.likely()), peopleAtMixer);
  }
}
