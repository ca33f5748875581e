package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A mix of stated amounts, with everything that follows from them. The amounts are volumes as a
 * bucket measures them: loose and as damp as the material lies.
 *
 * @param portions the components with their volumes, in the order of the proportion; one or more,
 *     at least one above zero
 */
public record Recipe(List<Portion> portions) {

  /**
   * One component's amount.
   *
   * @param component the material
   * @param looseVolume volume as it lies, loose and damp, in cubic metres, 0 or more; m3
   */
  public record Portion(MixComponent component, double looseVolume) {

    public Portion {
      Args.notNegative(component.name() + ": volume", looseVolume, "m3");
    }

    /**
     * Gives the dry mass.
     *
     * @return kg
     */
    public double dryMass() {
      return looseVolume * component.dryMassPerLooseVolume().value();
    }

    /**
     * Gives the mass as it lies, water included.
     *
     * @return kg
     */
    public double dampMass() {
      return dryMass() * (1 + component.moistureRatio());
    }
  }

  public Recipe {
    portions = Args.notEmpty("portions", portions);
    Args.require(
        portions.stream().anyMatch(p -> p.looseVolume > 0),
        "recipe",
        "no volume above 0",
        "must have one");
  }

  /**
   * Makes a recipe from dry masses.
   *
   * @param components the materials
   * @param dryMasses dry mass of each, kg, in the same order
   * @return the recipe
   * @throws IllegalArgumentException if the lists differ in length or a mass is negative
   */
  public static Recipe ofDryMasses(List<MixComponent> components, List<Double> dryMasses) {
    Args.require(
        components.size() == dryMasses.size(),
        "recipe",
        components.size() + " components and " + dryMasses.size() + " masses",
        "must be as many");
    ArrayList<Portion> list = new ArrayList<>();
    for (int i = 0; i < components.size(); i++) {
      MixComponent component = components.get(i);
      double mass = Args.notNegative(component.name() + ": dry mass", dryMasses.get(i), "kg");
      list.add(new Portion(component, mass / component.dryMassPerLooseVolume().value()));
    }
    return new Recipe(list);
  }

  /**
   * Gives the dry mass of all portions.
   *
   * @return kg
   */
  public double dryMass() {
    return portions.stream().mapToDouble(Portion::dryMass).sum();
  }

  /**
   * Gives the mass of all portions as they lie.
   *
   * @return kg, water included
   */
  public double dampMass() {
    return portions.stream().mapToDouble(Portion::dampMass).sum();
  }

  /**
   * Gives the water that the damp materials bring with them.
   *
   * @return kg, which is litres
   */
  public double waterBrought() {
    return portions.stream().mapToDouble(p -> p.dryMass() * p.component.moistureRatio()).sum();
  }

  /**
   * Gives the volume of the portions before mixing, loose and damp.
   *
   * @return m3
   */
  public double looseVolume() {
    return portions.stream().mapToDouble(Portion::looseVolume).sum();
  }

  /**
   * Gives each component's share of the dry mass.
   *
   * @return shares that add to 1, in the order of the portions
   */
  public List<Double> dryMassRatios() {
    double all = dryMass();
    return portions.stream().map(p -> p.dryMass() / all).toList();
  }

  /**
   * Gives the clay share of the dry mass, {@code sum(m_i c_i) / sum(m_i)}, with the doubt of each
   * component's clay and loose density carried to first order.
   *
   * @return clay share with its standard uncertainty
   */
  public Uncertain clayRatio() {
    double all = dryMass();
    double clay =
        portions.stream().mapToDouble(p -> p.dryMass() * p.component.clayRatio().value()).sum()
            / all;
    double variance = 0;
    for (Portion p : portions) {
      double share = p.dryMass() / all;
      Uncertain own = p.component.clayRatio();
      Uncertain density = p.component.looseDryDensity();
      double byClay = share * own.standardUncertainty();
      double byDensity =
          share * (own.value() - clay) * density.standardUncertainty() / density.value();
      variance += byClay * byClay + byDensity * byDensity;
    }
    return new Uncertain(clay, Math.sqrt(variance));
  }

  /**
   * As {@link #clayRatio()} with the share of each doubt: of the clay of each component and of the
   * dry mass in its bucket.
   *
   * @param clay the clay of components of which a range is known, by their names; the others have
   *     the standard uncertainty that they carry
   * @param steps receives what each number does and its share
   * @return the doubt of the clay share
   */
  @Calculation("materials.mix.clay_blend-doubt")
  public Propagation.Doubt clayDoubt(Map<String, Range> clay, Steps steps) {
    StringBuilder ofClay = new StringBuilder();
    StringBuilder mass = new StringBuilder();
    for (int k = 1; k <= portions.size(); k++) {
      String between = k == 1 ? "" : " + ";
      ofClay.append(between).append("b_" + k + " * q_" + k + " * c_" + k);
      mass.append(between).append("b_" + k + " * q_" + k);
    }
    Propagation sum =
        Propagation.of(
            "c_mix",
            "clay share of the dry mass of the mix",
            "(" + ofClay + ") / (" + mass + ")",
            "");
    for (int k = 1; k <= portions.size(); k++) {
      MixComponent component = portions.get(k - 1).component();
      sum.exact("b_" + k, portions.get(k - 1).looseVolume(), "m3")
          .doubted(
              "q_" + k,
              "the dry mass in a loose cubic metre of " + component.name(),
              component.dryMassPerLooseVolume(),
              "kg/m3");
      String words = "the clay of " + component.name();
      Range known = clay.get(component.name());
      if (known == null) {
        sum.doubted("c_" + k, words, component.clayRatio(), "");
      } else {
        sum.doubted("c_" + k, words, known, "");
      }
    }
    return sum.write(steps);
  }

  /**
   * Gives the share finer than a diameter.
   *
   * @param diameter diameter, in metres
   * @return share of the dry mass, 0 to 1
   */
  public double finer(double diameter) {
    double all = dryMass();
    return portions.stream()
        .mapToDouble(p -> p.dryMass() / all * p.component.grading().finer(diameter))
        .sum();
  }

  /**
   * Gives the grain size curve of the mix, with a point at every diameter of a component's curve.
   *
   * @return the curve
   */
  public GradingCurve grading() {
    TreeSet<Double> diameters = new TreeSet<>();
    for (Portion p : portions) {
      if (p.looseVolume > 0) {
        p.component.grading().points().forEach(point -> diameters.add(point.diameter()));
      }
    }
    List<GradingCurve.Point> points = new ArrayList<>();
    double before = 0;
    for (double diameter : diameters) {
      // Sums of shares may fall or miss 1 by a rounding.
      before = diameter == diameters.last() ? 1 : Math.min(1, Math.max(before, finer(diameter)));
      points.add(new GradingCurve.Point(diameter, before));
    }
    return new GradingCurve(points);
  }

  /**
   * Gives the volume of the solids alone, {@code sum(m_i / rho_i)} of the grains.
   *
   * @return m3
   */
  public double solidVolume() {
    return portions.stream().mapToDouble(p -> p.dryMass() / p.component.particleDensity()).sum();
  }

  /**
   * Gives the volume of the mix when compacted by hand: less than the parts, because fines fill the
   * voids of the coarse.
   *
   * <p>Low: voids filled as far as there is room, from the finest component up ({@code V =
   * max(V_coarse, solids_coarse + V_fine)}). High: no filling, the compacted volumes side by side.
   * Likely: the middle, as common practice; weigh a compacted trial to know it better.
   *
   * @return m3
   */
  public Range compactedVolume() {
    return Packing.compactedVolume(portions);
  }

  /**
   * Gives the yield: compacted volume over the volume of the parts.
   *
   * @return a ratio below 1
   */
  public Range yieldRatio() {
    return compactedVolume().times(1 / looseVolume());
  }

  /**
   * Gives the price of all portions.
   *
   * @return in the components' currency; empty if one that is used has no price
   */
  public Optional<Double> price() {
    double sum = 0;
    for (Portion p : portions) {
      if (p.looseVolume > 0) {
        if (p.component.pricePerTonne().isEmpty()) {
          return Optional.empty();
        }
        sum += p.dampMass() / 1000 * p.component.pricePerTonne().get();
      }
    }
    return Optional.of(sum);
  }

  /**
   * States the recipe as a proportion.
   *
   * @param basis what the parts are parts of
   * @return all sides named; volumes in buckets of 10 litres, masses in kg
   */
  public Proportion proportion(Basis basis) {
    return new Proportion(
        portions.stream()
            .map(
                p ->
                    new Proportion.Part(
                        p.component.name(),
                        switch (basis) {
                          case DRY_MASS -> p.dryMass();
                          case DAMP_MASS -> p.dampMass();
                          case LOOSE_VOLUME -> p.looseVolume;
                        }))
            .toList(),
        basis);
  }

  /**
   * Scales all portions.
   *
   * @param factor above 0
   * @return the larger or smaller recipe
   */
  public Recipe times(double factor) {
    Args.positive("factor", factor, "");
    return new Recipe(
        portions.stream().map(p -> new Portion(p.component, p.looseVolume * factor)).toList());
  }
}
