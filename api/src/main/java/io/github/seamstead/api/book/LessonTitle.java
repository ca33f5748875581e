package io.github.seamstead.api.book;

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
}
