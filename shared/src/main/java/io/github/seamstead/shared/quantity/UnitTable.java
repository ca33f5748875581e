package io.github.seamstead.shared.quantity;

import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * The unit symbols that are read, by dimension, with their converters to the library's unit.
 *
 * <p>Factors of the customary units are exact by definition: the international yard and pound
 * agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg), the US liquid gallon of 231 cubic
 * inches, the imperial gallon of 4.54609 L, and standard gravity 9.80665 m/s2 (NIST SP 811, app. B;
 * from memory).
 */
final class UnitTable {

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double YARD = 0.9144;
  private static final double POUND = 0.45359237;
  private static final double OUNCE = POUND / 16;
  private static final double STANDARD_GRAVITY = 9.80665;

  /** Symbol to converter by dimension; filled at first use, since most runs need a few only. */
  private static final Map<Dimension, Map<String, UnitConverter>> CONVERTERS =
      new ConcurrentHashMap<>();

  private UnitTable() {}

  /** Symbols with their converters to the SI unit, in the order in which messages offer them. */
  static Map<String, UnitConverter> of(Dimension dimension) {
    return CONVERTERS.computeIfAbsent(dimension, UnitTable::converters);
  }

  private static Map<String, UnitConverter> converters(Dimension dimension) {
    Map<String, Unit<?>> units = units(dimension);
    Unit<?> si = units.values().iterator().next();
    Map<String, UnitConverter> converters = new LinkedHashMap<>();
    units.forEach(
        (symbol, unit) -> {
          try {
            converters.put(symbol, unit.getConverterToAny(si));
          } catch (IncommensurableException e) {
            throw new IllegalStateException(symbol + " is no unit of " + dimension, e);
          }
        });
    return Collections.unmodifiableMap(converters);
  }

  private static Map<String, Unit<?>> units(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> lengths();
      case ANGLE -> angles();
      case AREA -> areas();
      case VOLUME -> volumes();
      case MASS -> masses();
      case MASS_PER_AREA -> massesPerArea();
      case MASS_PER_LENGTH -> massesPerLength();
      case DENSITY -> densities();
      case TIME -> times();
      case TEMPERATURE -> temperatures();
      case PRESSURE -> pressures();
      case FORCE -> forces();
      case SPEED -> speeds();
      case RATIO -> ratios();
    };
  }

  private static Map<String, Unit<?>> lengths() {
    Map<String, Unit<?>> length = new LinkedHashMap<>();
    length.put("m", METRE);
    length.put("mm", METRE.divide(1000));
    length.put("cm", METRE.divide(100));
    length.put("km", METRE.multiply(1000));
    length.put("ft", METRE.multiply(FOOT));
    length.put("in", METRE.multiply(INCH));
    length.put("yd", METRE.multiply(YARD));
    length.put("'", METRE.multiply(FOOT));
    length.put("\"", METRE.multiply(INCH));
    return length;
  }

  private static Map<String, Unit<?>> areas() {
    Map<String, Unit<?>> area = new LinkedHashMap<>();
    Unit<?> squareMetre = METRE.pow(2);
    area.put("m2", squareMetre);
    area.put("mm2", squareMetre.divide(1e6));
    area.put("cm2", squareMetre.divide(1e4));
    area.put("ft2", squareMetre.multiply(FOOT * FOOT));
    area.put("in2", squareMetre.multiply(INCH * INCH));
    area.put("yd2", squareMetre.multiply(YARD * YARD));
    return area;
  }

  private static Map<String, Unit<?>> volumes() {
    Map<String, Unit<?>> volume = new LinkedHashMap<>();
    Unit<?> cubicMetre = METRE.pow(3);
    volume.put("m3", cubicMetre);
    volume.put("l", cubicMetre.divide(1000));
    volume.put("L", cubicMetre.divide(1000));
    volume.put("ml", cubicMetre.divide(1e6));
    volume.put("cm3", cubicMetre.divide(1e6));
    volume.put("ft3", cubicMetre.multiply(FOOT * FOOT * FOOT));
    volume.put("yd3", cubicMetre.multiply(YARD * YARD * YARD));
    volume.put("US gal", cubicMetre.multiply(231 * INCH * INCH * INCH));
    volume.put("imp gal", cubicMetre.multiply(0.00454609));
    return volume;
  }

  private static Map<String, Unit<?>> masses() {
    Map<String, Unit<?>> mass = new LinkedHashMap<>();
    mass.put("kg", KILOGRAM);
    mass.put("g", KILOGRAM.divide(1000));
    mass.put("t", KILOGRAM.multiply(1000));
    mass.put("lb", KILOGRAM.multiply(POUND));
    mass.put("oz", KILOGRAM.multiply(OUNCE));
    return mass;
  }

  private static Map<String, Unit<?>> massesPerArea() {
    Map<String, Unit<?>> perArea = new LinkedHashMap<>();
    Unit<?> kilogramPerSquareMetre = KILOGRAM.divide(METRE.pow(2));
    perArea.put("kg/m2", kilogramPerSquareMetre);
    perArea.put("g/m2", kilogramPerSquareMetre.divide(1000));
    perArea.put("oz/yd2", kilogramPerSquareMetre.multiply(OUNCE / (YARD * YARD)));
    perArea.put("lb/ft2", kilogramPerSquareMetre.multiply(POUND / (FOOT * FOOT)));
    return perArea;
  }

  private static Map<String, Unit<?>> massesPerLength() {
    Map<String, Unit<?>> perLength = new LinkedHashMap<>();
    Unit<?> kilogramPerMetre = KILOGRAM.divide(METRE);
    perLength.put("kg/m", kilogramPerMetre);
    perLength.put("g/m", kilogramPerMetre.divide(1000));
    perLength.put("lb/ft", kilogramPerMetre.multiply(POUND / FOOT));
    return perLength;
  }

  private static Map<String, Unit<?>> densities() {
    Map<String, Unit<?>> density = new LinkedHashMap<>();
    Unit<?> kilogramPerCubicMetre = KILOGRAM.divide(METRE.pow(3));
    density.put("kg/m3", kilogramPerCubicMetre);
    density.put("t/m3", kilogramPerCubicMetre.multiply(1000));
    density.put("g/cm3", kilogramPerCubicMetre.multiply(1000));
    density.put("kg/l", kilogramPerCubicMetre.multiply(1000));
    density.put("lb/ft3", kilogramPerCubicMetre.multiply(POUND / (FOOT * FOOT * FOOT)));
    return density;
  }

  private static Map<String, Unit<?>> angles() {
    Map<String, Unit<?>> angle = new LinkedHashMap<>();
    angle.put("rad", RADIAN);
    angle.put("deg", RADIAN.multiply(Math.PI / 180));
    angle.put("°", RADIAN.multiply(Math.PI / 180));
    return angle;
  }

  private static Map<String, Unit<?>> times() {
    Map<String, Unit<?>> time = new LinkedHashMap<>();
    time.put("s", SECOND);
    time.put("min", SECOND.multiply(60));
    time.put("h", SECOND.multiply(3600));
    time.put("d", SECOND.multiply(86400));
    return time;
  }

  private static Map<String, Unit<?>> temperatures() {
    Map<String, Unit<?>> temperature = new LinkedHashMap<>();
    temperature.put("degC", CELSIUS);
    temperature.put("°C", CELSIUS);
    temperature.put("K", KELVIN);
    Unit<?> fahrenheit = KELVIN.multiply(5).divide(9).shift(459.67);
    temperature.put("degF", fahrenheit);
    temperature.put("°F", fahrenheit);
    return temperature;
  }

  private static Map<String, Unit<?>> pressures() {
    Map<String, Unit<?>> pressure = new LinkedHashMap<>();
    pressure.put("Pa", PASCAL);
    pressure.put("kPa", PASCAL.multiply(1000));
    pressure.put("MPa", PASCAL.multiply(1e6));
    pressure.put("kN/m2", PASCAL.multiply(1000));
    pressure.put("hPa", PASCAL.multiply(100));
    pressure.put("psi", PASCAL.multiply(POUND * STANDARD_GRAVITY / (INCH * INCH)));
    pressure.put("psf", PASCAL.multiply(POUND * STANDARD_GRAVITY / (FOOT * FOOT)));
    return pressure;
  }

  private static Map<String, Unit<?>> forces() {
    Map<String, Unit<?>> force = new LinkedHashMap<>();
    force.put("N", NEWTON);
    force.put("kN", NEWTON.multiply(1000));
    force.put("kgf", NEWTON.multiply(STANDARD_GRAVITY));
    force.put("lbf", NEWTON.multiply(POUND * STANDARD_GRAVITY));
    return force;
  }

  private static Map<String, Unit<?>> speeds() {
    Map<String, Unit<?>> speed = new LinkedHashMap<>();
    Unit<?> metrePerSecond = METRE.divide(SECOND);
    speed.put("m/s", metrePerSecond);
    speed.put("km/h", metrePerSecond.divide(3.6));
    speed.put("mph", metrePerSecond.multiply(FOOT * 5280 / 3600));
    speed.put("kn", metrePerSecond.multiply(1852.0 / 3600));
    speed.put("ft/s", metrePerSecond.multiply(FOOT));
    return speed;
  }

  private static Map<String, Unit<?>> ratios() {
    Map<String, Unit<?>> ratio = new LinkedHashMap<>();
    ratio.put("1", ONE);
    ratio.put("%", ONE.divide(100));
    ratio.put("‰", ONE.divide(1000));
    return ratio;
  }
}
