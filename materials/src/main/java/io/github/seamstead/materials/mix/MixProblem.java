package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;

/** The numbers of a mix problem, one entry for each component. */
final class MixProblem {

  final double[] clay;

  /** Shrinkage of each component; empty array if there is no limit. */
  final double[] shrinkage;

  private final List<MixComponent> components;

  MixProblem(List<MixComponent> components, MixTarget target) {
    this.components = components;
    clay = components.stream().mapToDouble(c -> c.clayRatio().value()).toArray();
    shrinkage =
        target.greatestShrinkage().isPresent()
            ? components.stream().mapToDouble(MixProblem::knownShrinkage).toArray()
            : new double[0];
  }

  int size() {
    return clay.length;
  }

  boolean limitsShrinkage() {
    return shrinkage.length > 0;
  }

  /** Price of a dry tonne of each component. */
  double[] prices() {
    double[] prices = new double[size()];
    for (int i = 0; i < prices.length; i++) {
      MixComponent component = components.get(i);
      Args.require(
          component.pricePerTonne().isPresent(),
          component.name() + ": price per tonne: given none, needed for the least cost");
      prices[i] = component.pricePerTonne().get() * (1 + component.moistureRatio());
    }
    return prices;
  }

  double finer(int component, double diameter) {
    return components.get(component).grading().finer(diameter);
  }

  static double dot(double[] a, double[] x) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * x[i];
    }
    return sum;
  }

  /**
   * Shrinkage of a mix if every component that has clay tells its own: all that shrink are taken as
   * one soil in the rest.
   */
  static Optional<Range> shrinkageOf(List<MixComponent> components, double[] shares) {
    double share = 0;
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      MixComponent component = components.get(i);
      Optional<Double> own = component.linearShrinkageRatio();
      if (own.isEmpty() && component.clayRatio().value() > 0) {
        return Optional.empty();
      }
      if (own.isPresent()) {
        share += shares[i];
        sum += shares[i] * own.get();
      }
    }
    return Optional.of(
        share > 0
            ? Shrinkage.ofMix(Math.min(Shrinkage.MOST, sum / share), Math.min(1, share))
            : Range.exactly(0));
  }

  private static double knownShrinkage(MixComponent component) {
    if (component.linearShrinkageRatio().isPresent()) {
      return component.linearShrinkageRatio().get();
    }
    Args.require(
        component.clayRatio().value() == 0,
        component.name()
            + ": linear shrinkage: given none, needed for the shrinkage limit because it has clay");
    return 0;
  }
}
