package io.github.seamstead.materials.water;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Solves the phases of a soil from any sufficient set of measures.
 *
 * <p>In a unit volume let x be the grains' mass and y the water's mass, both over the density of
 * water, and z the grains' volume. Every quantity of {@link PhaseQuantity} then is one linear
 * equation in x, y, z, so three that do not repeat each other suffice, whichever they are; further
 * ones are checked against the solution. Constant cost.
 *
 * <pre>{@code
 * PhaseState state = PhaseRelations.ofSample(2.1, 1.8, 0.001, 2.65);
 * state.moisture(); // 0.167 of the dry mass
 * }</pre>
 */
public final class PhaseRelations {

  private static final double CONSISTENT = 0.005;
  private static final double INDEPENDENT = 1e-9;
  private static final Source RELATIONS =
      Source.found("Venkatramaiah", "Geotechnical Engineering", "", "ch. 2, phase relations");

  private PhaseRelations() {}

  /**
   * Solves the phases with water of 1000 kg/m³.
   *
   * @param known three or more quantities, in kg/m³ or as pure numbers
   * @return the state
   * @throws IllegalArgumentException as {@link #solve(Map, double, Steps)}
   */
  public static PhaseState solve(Map<PhaseQuantity, Double> known) {
    return solve(known, WATER_DENSITY, Steps.none());
  }

  /**
   * Solves the phases.
   *
   * @param known three or more quantities, in kg/m³ or as pure numbers
   * @param waterDensity in kg/m³, 950 to 1050
   * @param steps receives the three equations' determinants and what follows from them, saturation
   *     last
   * @return the state
   * @throws IllegalArgumentException if a value is out of range, the quantities do not suffice, or
   *     they contradict each other by more than 0.5 %
   */
  @Calculation("materials.water.phases")
  public static PhaseState solve(
      Map<PhaseQuantity, Double> known, double waterDensity, Steps steps) {
    Args.within("density of water", waterDensity, 950, 1050, "kg/m3");
    List<Row> rows = new ArrayList<>();
    Map<PhaseQuantity, Double> ordered = new EnumMap<>(PhaseQuantity.class);
    ordered.putAll(known);
    ordered.forEach((quantity, value) -> rows.add(row(quantity, value, waterDensity)));
    Row[] three = independent(rows);
    String names = three[0].label() + ", " + three[1].label() + ", " + three[2].label();
    double d = determinant("D", three, -1, "determinant of the equations for " + names, steps);
    double x = unknown("x", "mass of grains over density of water", three, 0, d, steps);
    double y = unknown("y", "mass of water over density of water", three, 1, d, steps);
    double z = unknown("z", "volume of grains in a unit volume", three, 2, d, steps);
    for (Row row : rows) {
      double off = Math.abs(row.a * x + row.b * y + row.c * z - row.d);
      Args.agree(
          off <= CONSISTENT * row.size(x, y, z),
          row.quantity.label() + ": given " + Numbers.plain(row.given) + ", contradicts " + names,
          "leave one out or measure again");
    }
    // Rounding of dry soil's zero moisture may leave a trace below zero.
    double water = Math.abs(y) < 1e-12 ? 0 : y;
    Args.agree(
        x > 0 && z > 0 && z < 1 && water >= 0,
        "phases: "
            + names
            + " leave no possible soil (grains "
            + Numbers.significant(z, 4)
            + " and water "
            + Numbers.significant(y, 4)
            + " of a unit volume)",
        "check the values");
    PhaseState state = new PhaseState(z, water, x / z, waterDensity);
    record(state, x, water, z, steps);
    return state;
  }

  private static void record(PhaseState state, double x, double y, double z, Steps steps) {
    steps
        .step("rho_d", "dry density")
        .formula("G * z * rho_w")
        .with("G", state.specificGravity(), "")
        .with("z", z, "")
        .with("rho_w", state.waterDensity(), "kg/m3")
        .gives(state.dryDensity(), "kg/m3");
    steps
        .step("w", "moisture, water over dry mass")
        .formula("y / x")
        .with("y", y, "")
        .with("x", x, "")
        .from(RELATIONS)
        .gives(state.moisture(), "");
    steps
        .step("e", "void ratio")
        .formula("(1 - z) / z")
        .with("z", z, "")
        .from(RELATIONS)
        .gives(state.voidRatio(), "");
    steps
        .step("n", "porosity")
        .formula("1 - z")
        .with("z", z, "")
        .from(RELATIONS)
        .gives(state.porosity(), "");
    steps
        .step("A", "air content")
        .formula("1 - z - y")
        .with("z", z, "")
        .with("y", y, "")
        .from(RELATIONS)
        .gives(state.airContent(), "");
    steps
        .step("S", "degree of saturation")
        .formula("y / (1 - z)")
        .with("y", y, "")
        .with("z", z, "")
        .from(RELATIONS)
        .gives(state.saturation(), "");
  }

  /**
   * Solves the phases of a weighed sample of known volume.
   *
   * @param wetMass in kg, greater than 0
   * @param dryMass after drying at 105 °C, in kg, greater than 0, at most {@code wetMass}
   * @param volume of the wet sample, in m³, greater than 0
   * @param specificGravity of the grains, 1 to 6
   * @return the state
   * @throws IllegalArgumentException if a value is out of range or the sample holds more water than
   *     its voids
   */
  public static PhaseState ofSample(
      double wetMass, double dryMass, double volume, double specificGravity) {
    Args.positive("dry mass", dryMass, "kg");
    Args.require(
        wetMass >= dryMass,
        "wet mass",
        Numbers.plain(wetMass) + " kg",
        "must be at least the dry mass");
    Args.positive("volume", volume, "m3");
    return solve(
        Map.of(
            PhaseQuantity.BULK_DENSITY, wetMass / volume,
            PhaseQuantity.MOISTURE, (wetMass - dryMass) / dryMass,
            PhaseQuantity.SPECIFIC_GRAVITY, specificGravity));
  }

  /** a x + b y + c z = d. */
  private record Row(PhaseQuantity quantity, double given, double a, double b, double c, double d) {

    double size(double x, double y, double z) {
      return Math.abs(a * x) + Math.abs(b * y) + Math.abs(c * z) + Math.abs(d);
    }

    double norm() {
      return Math.sqrt(a * a + b * b + c * c);
    }

    double part(int column) {
      return switch (column) {
        case 0 -> a;
        case 1 -> b;
        case 2 -> c;
        default -> d;
      };
    }

    String label() {
      return quantity.label();
    }
  }

  private static Row row(PhaseQuantity quantity, double value, double water) {
    double v =
        Args.within(
            quantity.label(), value, quantity.least(), quantity.greatest(), quantity.unit());
    return switch (quantity) {
      case SPECIFIC_GRAVITY -> new Row(quantity, v, 1, 0, -v, 0);
      case VOID_RATIO -> new Row(quantity, v, 0, 0, 1 + v, 1);
      case POROSITY -> new Row(quantity, v, 0, 0, 1, 1 - v);
      case MOISTURE -> new Row(quantity, v, -v, 1, 0, 0);
      case MOISTURE_WET_BASIS -> new Row(quantity, v, -v, 1 - v, 0, 0);
      case SATURATION -> new Row(quantity, v, 0, 1, v, v);
      case AIR_CONTENT -> new Row(quantity, v, 0, 1, 1, 1 - v);
      case DRY_DENSITY -> new Row(quantity, v, 1, 0, 0, v / water);
      case BULK_DENSITY -> new Row(quantity, v, 1, 1, 0, v / water);
    };
  }

  /** The three rows whose directions span the largest volume. */
  private static Row[] independent(List<Row> rows) {
    Row[] best = new Row[0];
    double most = INDEPENDENT;
    for (int i = 0; i < rows.size(); i++) {
      for (int j = i + 1; j < rows.size(); j++) {
        for (int k = j + 1; k < rows.size(); k++) {
          Row[] three = {rows.get(i), rows.get(j), rows.get(k)};
          double size =
              Math.abs(determinant(three, -1))
                  / (three[0].norm() * three[1].norm() * three[2].norm());
          if (size > most) {
            most = size;
            best = three;
          }
        }
      }
    }
    String given = rows.stream().map(Row::label).collect(Collectors.joining(", "));
    Args.require(
        best.length == 3,
        "phases",
        (given.isEmpty() ? "nothing" : given),
        "must be three quantities that do not follow from each other, such as bulk density,"
            + " moisture and specific gravity");
    return best;
  }

  /** Determinant of the coefficients, with one column replaced by the right side if 0 to 2. */
  private static double determinant(Row[] r, int replaced) {
    double[][] m = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        m[i][j] = r[i].part(j == replaced ? 3 : j);
      }
    }
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }

  private static double determinant(
      String symbol, Row[] r, int replaced, String name, Steps steps) {
    Steps.Entry entry =
        steps
            .step(symbol, name)
            .formula(
                "a_1 * (b_2 * c_3 - c_2 * b_3) - b_1 * (a_2 * c_3 - c_2 * a_3)"
                    + " + c_1 * (a_2 * b_3 - b_2 * a_3)");
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        entry.with("abc".charAt(j) + "_" + (i + 1), r[i].part(j == replaced ? 3 : j), "");
      }
    }
    return entry.from(RELATIONS).gives(determinant(r, replaced), "");
  }

  private static double unknown(
      String symbol, String name, Row[] rows, int column, double d, Steps steps) {
    double replaced =
        determinant(
            "D_" + symbol, rows, column, "determinant with the right side for " + symbol, steps);
    return steps
        .step(symbol, name)
        .formula("D_" + symbol + " / D")
        .with("D_" + symbol, replaced, "")
        .with("D", d, "")
        .gives(replaced / d, "");
  }
}
