package io.github.seamstead.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The outside reference: the reference implementation of JSR 385 (Units of Measurement), which
 * builds every unit from the base units step by step.
 */
class UnitTableTest {

  private static final List<Double> NUMBERS = List.of(1.0, 0.0, -40.0, 5.204, 1e-6, 98.6, 1234.5);

  private record Case(Dimension dimension, String symbol) {}

  static Stream<Case> units() {
    return Stream.of(Dimension.values())
        .flatMap(d -> QuantityText.symbols(d).stream().map(symbol -> new Case(d, symbol)));
  }

  @ParameterizedTest
  @MethodSource("units")
  void aUnitIsWhatTheReferenceSays(Case given) throws IncommensurableException {
    Map<String, Unit<?>> reference = reference();
    Unit<?> unit = reference.get(given.symbol());
    assertThat(unit).as("the reference has %s", given.symbol()).isNotNull();
    var toSi = unit.getConverterToAny(reference.get(given.dimension().siSymbol()));
    for (double number : NUMBERS) {
      double expected = toSi.convert(number);
      double slack = 1e-12 * Math.max(Math.abs(expected), given.symbol().contains("F") ? 300 : 0);
      double si = QuantityText.toSi(number, given.dimension(), given.symbol());
      assertThat(si).as("%s %s", number, given.symbol()).isCloseTo(expected, within(slack));
      assertThat(QuantityText.toUnit(si, given.dimension(), given.symbol()))
          .isCloseTo(number, within(1e-12 * Math.max(Math.abs(number), 300)));
    }
  }

  @Test
  void thereIsAFactorForEveryDimension() {
    for (Dimension dimension : Dimension.values()) {
      assertThat(QuantityText.symbols(dimension)).first().isEqualTo(dimension.siSymbol());
    }
  }

  private static Map<String, Unit<?>> reference() {
    Map<String, Unit<?>> u = new HashMap<>();
    Unit<?> foot = METRE.multiply(9144).divide(30000);
    Unit<?> inch = foot.divide(12);
    Unit<?> yard = foot.multiply(3);
    Unit<?> pound = KILOGRAM.multiply(45359237).divide(100000000);
    Unit<?> ounce = pound.divide(16);
    Unit<?> gravity = METRE.divide(SECOND.pow(2)).multiply(980665).divide(100000);
    Unit<?> square = METRE.pow(2);
    Unit<?> cube = METRE.pow(3);
    u.putAll(Map.of("m", METRE, "mm", METRE.divide(1000), "cm", METRE.divide(100)));
    u.putAll(Map.of("km", METRE.multiply(1000), "ft", foot, "'", foot, "in", inch, "\"", inch));
    u.putAll(Map.of("yd", yard, "m2", square, "mm2", METRE.divide(1000).pow(2)));
    u.putAll(Map.of("cm2", METRE.divide(100).pow(2), "ft2", foot.pow(2), "in2", inch.pow(2)));
    u.putAll(Map.of("yd2", yard.pow(2), "m3", cube, "l", METRE.divide(10).pow(3)));
    u.putAll(Map.of("L", METRE.divide(10).pow(3), "ml", METRE.divide(100).pow(3)));
    u.putAll(Map.of("cm3", METRE.divide(100).pow(3), "ft3", foot.pow(3), "yd3", yard.pow(3)));
    u.putAll(Map.of("US gal", inch.pow(3).multiply(231)));
    u.putAll(Map.of("imp gal", cube.multiply(454609).divide(100000000)));
    u.putAll(Map.of("kg", KILOGRAM, "g", KILOGRAM.divide(1000), "t", KILOGRAM.multiply(1000)));
    u.putAll(Map.of("lb", pound, "oz", ounce, "kg/m2", KILOGRAM.divide(square)));
    u.putAll(Map.of("g/m2", KILOGRAM.divide(1000).divide(square)));
    u.putAll(Map.of("oz/yd2", ounce.divide(yard.pow(2)), "lb/ft2", pound.divide(foot.pow(2))));
    u.putAll(Map.of("kg/m", KILOGRAM.divide(METRE), "lb/ft", pound.divide(foot)));
    u.putAll(Map.of("g/m", KILOGRAM.divide(1000).divide(METRE), "kg/m3", KILOGRAM.divide(cube)));
    u.putAll(Map.of("t/m3", KILOGRAM.multiply(1000).divide(cube)));
    u.putAll(Map.of("g/cm3", KILOGRAM.divide(1000).divide(METRE.divide(100).pow(3))));
    u.putAll(Map.of("kg/l", KILOGRAM.divide(METRE.divide(10).pow(3))));
    u.putAll(Map.of("lb/ft3", pound.divide(foot.pow(3)), "rad", RADIAN));
    u.putAll(Map.of("deg", RADIAN.multiply(Math.PI).divide(180)));
    u.putAll(Map.of("°", RADIAN.multiply(Math.PI).divide(180)));
    u.putAll(Map.of("s", SECOND, "min", SECOND.multiply(60), "h", SECOND.multiply(3600)));
    u.putAll(Map.of("d", SECOND.multiply(86400), "degC", CELSIUS, "°C", CELSIUS, "K", KELVIN));
    Unit<?> fahrenheit = KELVIN.multiply(5).divide(9).shift(459.67);
    u.putAll(Map.of("degF", fahrenheit, "°F", fahrenheit, "Pa", PASCAL));
    u.putAll(Map.of("kPa", PASCAL.multiply(1000), "MPa", PASCAL.multiply(1000000)));
    u.putAll(Map.of("kN/m2", NEWTON.multiply(1000).divide(square), "hPa", PASCAL.multiply(100)));
    u.putAll(Map.of("psi", pound.multiply(gravity).divide(inch.pow(2))));
    u.putAll(Map.of("psf", pound.multiply(gravity).divide(foot.pow(2))));
    u.putAll(Map.of("N", NEWTON, "kN", NEWTON.multiply(1000), "lbf", pound.multiply(gravity)));
    u.putAll(Map.of("kgf", KILOGRAM.multiply(gravity), "m/s", METRE.divide(SECOND)));
    u.putAll(Map.of("km/h", METRE.multiply(1000).divide(SECOND.multiply(3600))));
    u.putAll(Map.of("mph", foot.multiply(5280).divide(SECOND.multiply(3600))));
    u.putAll(Map.of("kn", METRE.multiply(1852).divide(SECOND.multiply(3600))));
    u.putAll(Map.of("ft/s", foot.divide(SECOND), "1", ONE, "%", ONE.divide(100)));
    u.putAll(Map.of("‰", ONE.divide(1000)));
    return u;
  }
}
