package io.github.seamstead.shared.quantity;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;
import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;
import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The unit symbols that are read, by dimension, with their factors to the library's unit.
 *
 * <p>Every factor is exact by definition: the prefixes and the minute, hour, day, degree, litre and
 * tonne of the SI Brochure (9th edition, tables 7 and 8); the international yard and pound
 * agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg); the US liquid gallon of 231 cubic
 * inches, the imperial gallon of 4.54609 L, the nautical mile of 1852 m and standard gravity of
 * 9.80665 m/s2 (NIST SP 811, appendix B; from memory).
 */
final class UnitTable {

  private static final double FOOT = 0.3048;
  private static final double YARD = 0.9144;
  private static final double POUND = 0.45359237;
  private static final double OUNCE = POUND / 16;
  private static final double MILE = 5280 * FOOT;

  private static final Map<Dimension, Map<String, Factor>> FACTORS = factors();

  private UnitTable() {}

  /**
   * What a unit is in the library's unit. A thousandth is kept as a division by a thousand, which
   * is one rounding less than a multiplication by a factor that is itself rounded.
   *
   * @param zero what the unit reads at the zero of the library's unit
   * @param times what a number in the unit is multiplied by, after the zero is taken off
   * @param over what it is divided by
   */
  record Factor(double zero, double times, double over) {

    double toSi(double number) {
      return (number - zero) * times / over;
    }

    double fromSi(double si) {
      return si * over / times + zero;
    }
  }

  /** Symbols with their factors, the SI unit first, in the order in which messages offer them. */
  static Map<String, Factor> of(Dimension dimension) {
    return FACTORS.getOrDefault(dimension, Map.of());
  }

  private static Map<Dimension, Map<String, Factor>> factors() {
    Map<Dimension, Map<String, Factor>> all = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      Units units = new Units();
      switch (dimension) {
        case LENGTH -> lengths(units);
        case ANGLE -> angles(units);
        case AREA -> areas(units);
        case VOLUME -> volumes(units);
        case MASS -> masses(units);
        case MASS_PER_AREA -> massesPerArea(units);
        case MASS_PER_LENGTH -> massesPerLength(units);
        case DENSITY -> densities(units);
        case TIME -> times(units);
        case TEMPERATURE -> temperatures(units);
        case PRESSURE -> pressures(units);
        case FORCE -> forces(units);
        case SPEED -> speeds(units);
        case RATIO -> units.of("1", 1).part("%", 100).part("‰", 1000);
        case MONEY -> units.of("1", 1);
      }
      all.put(dimension, Collections.unmodifiableMap(units.table));
    }
    return all;
  }

  private static void lengths(Units length) {
    length.of("m", 1).part("mm", 1000).part("cm", 100).of("km", 1000);
    length.of("ft", FOOT).of("in", INCH).of("yd", YARD).of("'", FOOT).of("\"", INCH);
  }

  private static void areas(Units area) {
    area.of("m2", 1).part("mm2", 1e6).part("cm2", 1e4);
    area.of("ft2", FOOT * FOOT).of("in2", INCH * INCH).of("yd2", YARD * YARD);
  }

  private static void volumes(Units volume) {
    volume.of("m3", 1).part("l", 1000).part("L", 1000).part("ml", 1e6).part("cm3", 1e6);
    volume.of("ft3", FOOT * FOOT * FOOT).of("yd3", YARD * YARD * YARD);
    volume.of("US gal", 231 * INCH * INCH * INCH).of("imp gal", 0.00454609);
  }

  private static void masses(Units mass) {
    mass.of("kg", 1).part("g", 1000).of("t", 1000).of("lb", POUND).of("oz", OUNCE);
  }

  private static void massesPerArea(Units perArea) {
    perArea.of("kg/m2", 1).part("g/m2", 1000);
    perArea.of("oz/yd2", OUNCE / (YARD * YARD)).of("lb/ft2", POUND / (FOOT * FOOT));
  }

  private static void massesPerLength(Units perLength) {
    perLength.of("kg/m", 1).part("g/m", 1000).of("lb/ft", POUND / FOOT);
  }

  private static void densities(Units density) {
    density.of("kg/m3", 1).of("t/m3", 1000).of("g/cm3", 1000).of("kg/l", 1000);
    density.of("lb/ft3", POUND / (FOOT * FOOT * FOOT));
  }

  private static void angles(Units angle) {
    angle.of("rad", 1).of("deg", Math.PI / 180).of("°", Math.PI / 180);
  }

  private static void times(Units time) {
    time.of("s", 1).of("min", 60).of("h", 3600).of("d", 86400);
  }

  private static void temperatures(Units temperature) {
    temperature.of("degC", 1).of("°C", 1).put("K", new Factor(ZERO_CELSIUS, 1, 1));
    temperature.put("degF", new Factor(32, 5, 9)).put("°F", new Factor(32, 5, 9));
  }

  private static void pressures(Units pressure) {
    pressure.of("Pa", 1).of("kPa", 1000).of("MPa", 1e6).of("kN/m2", 1000).of("hPa", 100);
    pressure.of("psi", POUND * STANDARD_GRAVITY / (INCH * INCH));
    pressure.of("psf", POUND * STANDARD_GRAVITY / (FOOT * FOOT));
  }

  private static void forces(Units force) {
    force.of("N", 1).of("kN", 1000).of("kgf", STANDARD_GRAVITY);
    force.of("lbf", POUND * STANDARD_GRAVITY);
  }

  private static void speeds(Units speed) {
    speed.of("m/s", 1).part("km/h", 3.6).put("mph", new Factor(0, MILE, 3600));
    speed.put("kn", new Factor(0, 1852, 3600)).of("ft/s", FOOT);
  }

  /** A table as it is filled. */
  private static final class Units {

    private final Map<String, Factor> table = new LinkedHashMap<>();

    Units of(String symbol, double si) {
      return put(symbol, new Factor(0, si, 1));
    }

    Units part(String symbol, double inOne) {
      return put(symbol, new Factor(0, 1, inOne));
    }

    Units put(String symbol, Factor factor) {
      table.put(symbol, factor);
      return this;
    }
  }
}
