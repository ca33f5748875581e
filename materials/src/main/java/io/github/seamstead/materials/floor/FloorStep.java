package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * One step of laying a floor, for a crew that has not done it before.
 *
 * @param title what is done; not blank
 * @param work plain sentences, how it is done; at least one sentence
 * @param quantities what the plan says of it
 * @param tools what must be at hand; not blank
 * @param hands how many people it takes, and who does what; not blank
 * @param check what must be true before the next step; not blank
 * @param ifLeftOut what goes wrong if the step is skipped or done badly; not blank
 * @param source where the practice stands
 */
public record FloorStep(
    String title,
    List<String> work,
    List<Quantity> quantities,
    String tools,
    String hands,
    String check,
    String ifLeftOut,
    Source source) {

  public FloorStep {
    Args.notBlank("step", title);
    work = Args.notEmpty(title + ": work", work);
    quantities = List.copyOf(quantities);
    Args.notBlank(title + ": tools", tools);
    Args.notBlank(title + ": hands", hands);
    Args.notBlank(title + ": check", check);
    Args.notBlank(title + ": if left out", ifLeftOut);
  }

  /** What a quantity measures, which tells how it is written. */
  public enum Kind {
    /** In metres, to the millimetre. */
    THICKNESS,
    /** In metres. */
    LENGTH,
    /** In m². */
    AREA,
    /** In m³. */
    VOLUME,
    /** In m³, of a liquid. */
    LIQUID,
    /** In kg. */
    MASS,
    /** In hours. */
    HOURS,
    /** A number of things. */
    COUNT
  }

  /**
   * A number of the plan that the step needs.
   *
   * @param name what it is
   * @param kind what it measures
   * @param value in the unit of its kind: low, likely, high
   */
  public record Quantity(String name, Kind kind, Range value) {

    static Quantity of(String name, Kind kind, double value) {
      return new Quantity(name, kind, Range.exactly(value));
    }
  }
}
