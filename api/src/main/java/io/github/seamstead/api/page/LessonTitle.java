package io.github.seamstead.api.page;

import java.util.Map;
import java.util.Optional;

/** The lessons that a book of a job names beside its sums, in the order of the work. */
public enum LessonTitle {
  /** Area of a regular polygon. */
  FLOOR_AREA("The floor of a many-sided shelter"),
  /** Measures of a pyramid. */
  POLES("How long are the poles?"),
  /** Angles at the apex. */
  FLAT_PANELS("Why flat panels make a tent"),
  /** Mitre and tilt of a saw. */
  SAW_ANGLES("Two angles on the saw"),
  /** Cutting from stock lengths. */
  BARS("Poles from bars"),
  /** Least squares on a quadrilateral. */
  SURVEY("Six tapes between four pegs"),
  /** Offset of a corner. */
  ALLOWANCE("Allowance at a sharp tip"),
  /** Least moved mass. */
  JOINING("The order of joining"),
  /** Settling. */
  JAR("Soil in a jar"),
  /** Mass balance of a mix. */
  SAND("Parts of sand, buckets of sand"),
  /** From layers to loads. */
  HEAPS("From millimetres to heaps"),
  /** Shrinkage. */
  CRACKS("Shrinking, cracks, and slip to fill them"),
  /** Propagation of uncertainty. */
  DOUBT("How sure is a volume?"),
  /** Proof of a least value. */
  LEAST("Least, and how one knows"),
  /** Samples and outliers. */
  FAIR_TEST("A fair test, and the odd tile");

  /** Ends the id of a sum that adds up the doubt of the result of another. */
  private static final String ADDED_DOUBT = "-doubt";

  /** Which lesson teaches a calculation, by its id or by its package. */
  private static final Map<String, LessonTitle> LESSONS =
      Map.ofEntries(
          Map.entry("geometry.frame", POLES),
          Map.entry("geometry.frame.offset", FLAT_PANELS),
          Map.entry("geometry.members", SAW_ANGLES),
          Map.entry("geometry.bars", BARS),
          Map.entry("geometry.survey", SURVEY),
          Map.entry("geometry.tape", SURVEY),
          Map.entry("geometry.templates", SURVEY),
          Map.entry("geometry.pattern", ALLOWANCE),
          Map.entry("geometry.pattern.cone", FLAT_PANELS),
          Map.entry("geometry.pattern.cap", FLAT_PANELS),
          Map.entry("geometry.layout", LEAST),
          Map.entry("assembly.merge", JOINING),
          Map.entry("materials.soil", JAR),
          Map.entry("materials.mix", SAND),
          Map.entry("materials.mix.trials", FAIR_TEST),
          Map.entry("materials.floor", HEAPS),
          Map.entry("materials.floor.area", FLOOR_AREA),
          Map.entry("materials.floor.regular-area", FLOOR_AREA),
          Map.entry("materials.water", HEAPS),
          Map.entry("materials.drying", CRACKS),
          Map.entry("shared.sensitivity", DOUBT));

  private final String title;

  LessonTitle(String title) {
    this.title = title;
  }

  /**
   * Gives the heading of the lesson.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * Finds the lesson that teaches a calculation.
   *
   * @param calculation the calculation's id
   * @return the lesson; empty if none does
   */
  public static Optional<LessonTitle> of(String calculation) {
    if (calculation.endsWith(ADDED_DOUBT)) {
      return Optional.of(DOUBT);
    }
    String room = calculation.substring(0, Math.max(0, calculation.lastIndexOf('.')));
    return Optional.ofNullable(LESSONS.get(calculation))
        .or(() -> Optional.ofNullable(LESSONS.get(room)));
  }
}
