package io.github.seamstead.shared.quantity;

/**
 * The kinds of quantity that a job document may hold, each with the unit that the library
 * calculates in.
 */
public enum Dimension {
  /** Length, in metres. */
  LENGTH("length", "m"),
  /** Plane angle, in radians. */
  ANGLE("angle", "rad"),
  /** Area, in square metres. */
  AREA("area", "m2"),
  /** Volume, in cubic metres. */
  VOLUME("volume", "m3"),
  /** Mass, in kilograms. */
  MASS("mass", "kg"),
  /** Mass per area, such as a fabric's weight, in kilograms per square metre. */
  MASS_PER_AREA("mass per area", "kg/m2"),
  /** Mass per length, such as a pipe's weight, in kilograms per metre. */
  MASS_PER_LENGTH("mass per length", "kg/m"),
  /** Mass density, in kilograms per cubic metre. */
  DENSITY("density", "kg/m3"),
  /** Duration, in seconds. */
  TIME("time", "s"),
  /** Temperature, in degrees Celsius. */
  TEMPERATURE("temperature", "degC"),
  /** Pressure or stress, in pascals. */
  PRESSURE("pressure", "Pa"),
  /** Force, in newtons. */
  FORCE("force", "N"),
  /** Speed, in metres per second. */
  SPEED("speed", "m/s"),
  /** A pure ratio, 1 for one hundred per cent. */
  RATIO("ratio", "1"),
  /** A sum of money: a plain number, in whatever money the reader uses; never a ratio. */
  MONEY("sum of money", "1");

  private final String label;
  private final String siSymbol;

  Dimension(String label, String siSymbol) {
    this.label = label;
    this.siSymbol = siSymbol;
  }

  /**
   * Names the dimension in lower case.
   *
   * @return for example {@code mass per area}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the symbol of the unit that the library calculates in.
   *
   * @return for example {@code kg/m2}; {@code 1} for a ratio and for money
   */
  public String siSymbol() {
    return siSymbol;
  }
}
