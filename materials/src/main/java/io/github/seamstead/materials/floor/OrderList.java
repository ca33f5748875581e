package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to order for all layers, and how many trips it is.
 *
 * <p>A mixed layer needs its whole loads, so the batches add to the order; a layer tipped as it
 * comes needs its mass. Every rounding goes up. Materials of the same name in several layers are
 * ordered together.
 *
 * @param lines one line a material, in the order in which the layers need them
 * @param membranes rolls
 * @param finishes litres
 */
public record OrderList(
    List<OrderLine> lines, List<MembraneQuantity> membranes, List<FinishQuantity> finishes) {

  public OrderList {
    lines = List.copyOf(lines);
    membranes = List.copyOf(membranes);
    finishes = List.copyOf(finishes);
  }

  /**
   * Draws up the order. Linear in the parts of all layers.
   *
   * @param floor the layers
   * @param batches the batch plans of the mixed layers; a mixed layer without one is ordered by
   *     mass
   * @param supplies terms of delivery by material name; a material without one takes {@link
   *     Supply#of}
   * @param trailer the trailer, if materials are fetched
   * @param bucketVolume smallest load worth driving, in m³
   * @param reserve share added to the likely need, 0 to 1; 0.1 is common practice
   * @return the order
   * @throws IllegalArgumentException if the reserve is out of range, a supply has no material, or
   *     the payload is below one bucket
   */
  public static OrderList of(
      BuildUp floor,
      List<BatchPlan> batches,
      List<Supply> supplies,
      Optional<Trailer> trailer,
      double bucketVolume,
      double reserve) {
    return of(floor, floor.earth(), batches, supplies, trailer, bucketVolume, reserve);
  }

  /**
   * Draws up the order for parts of the layers, such as those that are not laid yet. Linear in the
   * parts of all layers.
   *
   * @param floor the layers
   * @param earth what of each earth layer is wanted
   * @param batches the batch plans of the mixed layers, for the same parts
   * @param supplies terms of delivery by material name
   * @param trailer the trailer, if materials are fetched
   * @param bucketVolume smallest load worth driving, in m³
   * @param reserve share added to the likely need, 0 to 1; 0.1 is common practice
   * @return the order
   * @throws IllegalArgumentException as the other form does
   */
  public static OrderList of(
      BuildUp floor,
      List<EarthQuantity> earth,
      List<BatchPlan> batches,
      List<Supply> supplies,
      Optional<Trailer> trailer,
      double bucketVolume,
      double reserve) {
    Args.within("reserve", reserve, 0, 1, "");
    Map<String, Need> needs = new LinkedHashMap<>();
    for (EarthQuantity quantity : earth) {
      Optional<BatchPlan> plan =
          batches.stream().filter(b -> b.quantity().layer().equals(quantity.layer())).findFirst();
      for (MixPart part : quantity.layer().mix().parts()) {
        Range dry =
            plan.map(p -> p.count().times(dryMassPerBatch(p.batch(), part)))
                .orElseGet(() -> quantity.dryMass().times(part.dryMassShare()));
        needs.computeIfAbsent(part.name(), name -> new Need(part)).add(part, dry);
      }
    }
    List<OrderLine> lines = new ArrayList<>();
    Map<String, Supply> terms = new LinkedHashMap<>();
    for (Supply supply : supplies) {
      Args.agree(
          needs.containsKey(supply.material()),
          "supply of " + supply.material() + ": no layer uses it",
          "must be one of " + String.join(", ", needs.keySet()));
      terms.put(supply.material(), supply);
    }
    for (Need need : needs.values()) {
      Supply supply = terms.getOrDefault(need.part.name(), Supply.of(need.part));
      lines.add(need.line(supply, trailer, bucketVolume, reserve));
    }
    return new OrderList(lines, floor.membranes(), floor.finishes());
  }

  private static double dryMassPerBatch(Batch batch, MixPart part) {
    return batch.parts().stream()
        .filter(p -> p.part().equals(part))
        .mapToDouble(BatchPart::dryMass)
        .sum();
  }

  /**
   * Computes the mass to order of one material: dry need × (1 + reserve) / (1 − screened out) × (1
   * + moisture), rounded up to the delivery step.
   *
   * @param dryNeed dry mass after screening, in kg, 0 or more
   * @param reserve share added, 0 to 1
   * @param screenedOut share by mass that the screen throws out, 0 to 0.95
   * @param moisture water over dry mass at delivery, 0 to 1
   * @param deliveryStep in kg, greater than 0
   * @param steps receives raw dry mass, damp mass and the rounding
   * @return the damp mass to order, in kg
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("materials.floor.order")
  public static double order(
      double dryNeed,
      double reserve,
      double screenedOut,
      double moisture,
      double deliveryStep,
      Steps steps) {
    Args.notNegative("dry need", dryNeed, "kg");
    Args.within("reserve", reserve, 0, 1, "");
    Args.within("screened out", screenedOut, 0, 0.95, "");
    Args.within("moisture", moisture, 0, 1, "");
    Args.positive("delivery step", deliveryStep, "kg");
    double raw =
        steps
            .step("m_raw", "dry mass before screening, with reserve")
            .formula("m_d * (1 + q) / (1 - s)")
            .with("m_d", dryNeed, "kg")
            .with("q", reserve, "")
            .with("s", screenedOut, "")
            .gives(dryNeed * (1 + reserve) / (1 - screenedOut), "kg");
    double damp =
        steps
            .step("m", "damp mass at delivery")
            .formula("m_raw * (1 + w)")
            .with("m_raw", raw, "kg")
            .with("w", moisture, "")
            .gives(raw * (1 + moisture), "kg");
    return steps
        .step("m_order", "order in whole delivery steps")
        .formula("ceil(m / k) * k")
        .with("m", damp, "kg")
        .with("k", deliveryStep, "kg")
        .gives(Math.ceil(damp / deliveryStep) * deliveryStep, "kg");
  }

  /**
   * Gives the trips of all materials that are fetched.
   *
   * @return the number of trips
   */
  public int trips() {
    return lines.stream().mapToInt(OrderLine::trips).sum();
  }

  /**
   * Gives the price of the earth materials.
   *
   * @return in the user's money, sheets and finishes not included
   */
  public double cost() {
    return lines.stream().mapToDouble(OrderLine::cost).sum();
  }

  /**
   * Gives the price of everything.
   *
   * @param pricePerUnit price of a roll by the sheet's name, or of a litre by the finish's name; a
   *     name that is missing costs nothing
   * @return earth materials, rolls, and the high end of the litres, in the user's money
   * @throws IllegalArgumentException if a price is negative or belongs to nothing in the order
   */
  public double cost(Map<String, Double> pricePerUnit) {
    double sum = cost();
    Map<String, Double> units = new LinkedHashMap<>();
    membranes.forEach(m -> units.merge(m.layer().name(), (double) m.rolls(), Double::sum));
    finishes.forEach(f -> units.merge(f.layer().name(), f.litres().high(), Double::sum));
    for (Map.Entry<String, Double> price : pricePerUnit.entrySet()) {
      Args.agree(
          units.containsKey(price.getKey()),
          "price of " + price.getKey() + ": the order has no such sheet or finish",
          "must be one of " + String.join(", ", units.keySet()));
      sum +=
          Args.notNegative("price of " + price.getKey(), price.getValue(), "")
              * units.getOrDefault(price.getKey(), 0.0);
    }
    return sum;
  }

  /** The need of one material over all layers. */
  private static final class Need {

    private final MixPart part;
    private Range dry = Range.exactly(0);
    private double screenedOut;
    private double looseVolume;

    Need(MixPart part) {
      this.part = part;
    }

    void add(MixPart same, Range more) {
      dry = dry.plus(more);
      screenedOut = Math.max(screenedOut, same.screenedOut());
      looseVolume += more.likely() / same.looseDryDensity();
    }

    OrderLine line(Supply supply, Optional<Trailer> trailer, double bucketVolume, double reserve) {
      double ordered =
          order(
              dry.likely(),
              reserve,
              screenedOut,
              supply.deliveryMoisture(),
              supply.deliveryStep(),
              Steps.none());
      double wet = 1 + supply.deliveryMoisture();
      Range raw = dry.times(wet / (1 - screenedOut));
      double looseDry = looseVolume > 0 ? dry.likely() / looseVolume : part.looseDryDensity();
      double volume = ordered / wet / looseDry;
      int trips =
          supply.hauled() && trailer.isPresent()
              ? trailer.get().trips(volume, looseDry * wet, bucketVolume, Steps.none())
              : 0;
      return new OrderLine(
          supply,
          dry,
          raw,
          ordered,
          volume,
          screenedOut,
          trips,
          ordered / 1000 * supply.pricePerTonne());
    }
  }
}
