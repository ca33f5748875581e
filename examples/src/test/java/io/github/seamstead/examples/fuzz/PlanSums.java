package io.github.seamstead.examples.fuzz;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.materials.floor.Batch;
import io.github.seamstead.materials.floor.BatchPart;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import java.util.List;

/** Sums that hold for every plan whatever its numbers: counts, areas, masses, water, forces. */
final class PlanSums {

  private final JobPlan plan;
  private final List<String> wrong;

  private PlanSums(JobPlan plan, List<String> wrong) {
    this.plan = plan;
    this.wrong = wrong;
  }

  static void check(JobPlan plan, List<String> wrong) {
    PlanSums sums = new PlanSums(plan, wrong);
    sums.frame();
    sums.cover();
    sums.layout();
    sums.joining();
    plan.floor().ifPresent(sums::floor);
    sums.anchoring();
  }

  private void equal(String what, double one, double other) {
    double size = Math.max(Math.abs(one), Math.abs(other));
    if (!(Math.abs(one - other) <= 1e-6 * size + 1e-12)) {
      wrong.add(what + ": " + one + " is not " + other);
    }
  }

  private void atMost(String what, double one, double other) {
    if (!(one <= other + 1e-6 * Math.abs(other) + 1e-12)) {
      wrong.add(what + ": " + one + " is more than " + other);
    }
  }

  /** Pythagoras and the cone of the sides, none of it from the library. */
  private void frame() {
    plan.frame()
        .ifPresent(
            part -> {
              var m = part.measures();
              var pyramid = part.pyramid();
              double r = pyramid.baseSide() / (2 * Math.tan(Math.PI / pyramid.sides()));
              equal("slant height", m.slantHeight(), Math.hypot(r, m.apexHeight()));
              equal("faces of the cover", pyramid.sides() * m.faceArea(), m.coverArea());
              atMost("frame in its pyramid", m.volume(), m.baseArea() * m.apexHeight() / 3);
              part.bars()
                  .ifPresent(
                      bars -> {
                        double used = 0;
                        for (var bar : bars.bars()) {
                          double cut = bar.pieces().stream().mapToDouble(p -> p.length()).sum();
                          double kerfs = bars.kerf() * (bar.pieces().size() - 1);
                          atMost("pieces in a bar", cut + kerfs, bar.stock().length());
                          used += bar.times() * bar.stock().length();
                        }
                        equal("bars used", bars.usedLength(), used);
                      });
            });
  }

  private void cover() {
    plan.cover()
        .ifPresent(
            cover -> {
              double shapes =
                  cover.cuts().stream()
                      .mapToDouble(s -> s.pattern().clothArea() * s.pieces().size())
                      .sum();
              equal("cloth of the shapes", cover.clothArea(), shapes);
              double perArea = plan.job().document().cover().orElseThrow().fabric().massPerArea();
              equal("mass of the cloth", cover.clothMass(), shapes * perArea);
              double faces = cover.panels().stream().mapToDouble(p -> p.face().area()).sum();
              double openings = 0.7 * faces;
              atMost("faces less openings within the cloth", faces - openings, shapes);
              plan.handling().ifPresent(h -> equal("bundle", h.bundle().mass(), cover.clothMass()));
            });
  }

  private void layout() {
    plan.layout()
        .ifPresent(
            layout -> {
              int wanted =
                  plan.cover().orElseThrow().cuts().stream()
                      .map(CutShape::pieces)
                      .mapToInt(List::size)
                      .sum();
              int laid =
                  layout.result().used().stream().mapToInt(use -> use.placements().size()).sum();
              int missed = layout.result().unplaced().stream().mapToInt(Shortfall::count).sum();
              equal("pieces laid and missed", laid + missed, wanted);
              equal("complete", layout.result().isComplete() ? 0 : missed, missed);
              LaidPieces.check(layout, plan.job().document().stock().orElseThrow(), wrong);
            });
  }

  private void joining() {
    plan.joining()
        .ifPresent(
            joining -> {
              int panels = plan.cover().orElseThrow().panels().size();
              equal("joints of the ring", joining.ring().joints().size(), panels);
              joining
                  .order()
                  .ifPresent(
                      order -> {
                        equal("steps of the order", order.steps().size(), panels);
                        double work = order.steps().stream().mapToDouble(s -> s.time()).sum();
                        equal("work of the steps", order.cost().workTime(), work);
                        atMost("elapsed within work", order.cost().elapsedTime(), work);
                        atMost(
                            "carried within in hand",
                            order.cost().heaviestCarried(),
                            order.cost().heaviestInHand());
                      });
            });
  }

  private void floor(FloorPart floor) {
    equal("sectors", floor.sectors().area(), floor.buildUp().footprint().area());
    double dry = 0;
    for (EarthQuantity earth : floor.buildUp().earth()) {
      double density = earth.layer().mix().compactedDryDensity().likely();
      equal(
          "volume of a layer",
          earth.compactedVolume().likely(),
          earth.area() * earth.meanThickness());
      equal(
          "mass of a layer", earth.dryMass().likely(), earth.compactedVolume().likely() * density);
      double loose =
          earth.layer().mix().parts().stream()
              .mapToDouble(p -> earth.dryMass().likely() * p.dryMassShare() / p.looseDryDensity())
              .sum();
      equal("loose volume of a layer", earth.looseVolume().likely(), loose);
      dry += earth.dryMass().likely();
    }
    for (BatchPlan batches : floor.batches()) {
      load(batches);
    }
    double need = dry;
    floor
        .orders()
        .ifPresent(
            orders -> {
              double lines = orders.lines().stream().mapToDouble(l -> l.dryNeed().likely()).sum();
              atMost("layers within the orders", need, lines * (1 + 1e-6));
              equal(
                  "cost", orders.cost(), orders.lines().stream().mapToDouble(l -> l.cost()).sum());
              for (var line : orders.lines()) {
                atMost("need within the order", line.dryNeed().likely(), line.ordered());
              }
            });
  }

  /** Soil, sand, straw and water of a load are its mass; the loads are the layer. */
  private void load(BatchPlan batches) {
    Batch batch = batches.batch();
    double dry = 0;
    double moist = 0;
    double water = 0;
    for (BatchPart part : batch.parts()) {
      dry += part.dryMass();
      moist += part.moistMass();
      water += part.dryMass() * part.part().moisture();
    }
    equal("dry parts and their water", moist, dry + water);
    equal("mass of a load", batch.mass(), dry + water + batch.water());
    equal(
        "water of a load",
        water + batch.water() - batch.excessWater(),
        dry * batch.mix().placingMoisture());
    if (batch.water() > 0 && batch.excessWater() > 0) {
      wrong.add("a load both takes water and has too much");
    }
    double loads = batches.quantity().dryMass().likely() / dry;
    equal("loads of a layer", batches.likelyCount(), Math.ceil(loads));
  }

  /** The pegs together hold at least what the wind lifts beyond the weight. */
  private void anchoring() {
    plan.anchoring()
        .ifPresent(
            part -> {
              var screen = part.screen();
              double lift = screen.windFactor() * screen.uplift() - 9.81 * screen.restingMass();
              atMost("uplift within all pegs", lift, screen.pegs() * screen.pegUplift());
              double push = screen.windFactor() * screen.drag();
              atMost("drag within all pegs", push, screen.pegs() * screen.pegSliding());
              equal(
                  "pull of a peg",
                  screen.pegPull(),
                  Math.hypot(screen.pegUplift(), screen.pegSliding()));
            });
  }
}
