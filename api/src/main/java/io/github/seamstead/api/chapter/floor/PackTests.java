package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.CompactionPoint;
import io.github.seamstead.api.job.CompactionTest;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.SandCone;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.water.CompactionControl;
import io.github.seamstead.materials.water.FieldDensity;
import io.github.seamstead.materials.water.Moisture;
import io.github.seamstead.materials.water.ProctorCurve;
import io.github.seamstead.materials.water.ProctorPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the compaction tests of the packs. */
final class PackTests {

  private PackTests() {}

  static List<PackControl> of(Run run, Floor floor, BuildUp buildUp) {
    List<PackControl> controls = new ArrayList<>();
    for (int i = 0; i < floor.layers().size(); i++) {
      FloorLayer stated = floor.layers().get(i);
      Layer layer = buildUp.layers().get(i);
      if (stated.compaction().isPresent() && layer instanceof EarthLayer pack) {
        CompactionTest test = stated.compaction().get();
        run.attempt("$.floor.layers[" + i + "].compaction", () -> control(run, pack, test))
            .ifPresent(controls::add);
      }
    }
    return controls;
  }

  private static PackControl control(Run run, EarthLayer pack, CompactionTest test) {
    double gravity = test.particleDensity() / WATER_DENSITY;
    List<ProctorPoint> points = new ArrayList<>();
    for (CompactionPoint point : test.points()) {
      points.add(ProctorPoint.ofCylinder(point.wetMass(), test.mould(), point.moisture()));
    }
    ProctorCurve curve =
        run.worked(
            "materials.water.proctor",
            "Compaction test of " + pack.name(),
            steps -> ProctorCurve.fit(points, Optional.of(gravity), steps));
    double optimum = curve.optimumMoisture().likely();
    run.worked(
        "materials.water.zero-air-voids",
        "Density of " + pack.name() + " without air, at the optimum",
        steps -> ProctorCurve.zeroAirVoids(gravity, optimum, 1, steps));
    List<CompactionControl.Place> places = new ArrayList<>();
    for (SandCone cone : test.cones()) {
      double density =
          run.worked(
              "materials.water.sand-cone",
              "Place " + (places.size() + 1) + " of " + pack.name(),
              steps ->
                  FieldDensity.ofSandCone(
                      cone.poured(),
                      cone.inCone(),
                      cone.sandDensity(),
                      cone.dug(),
                      cone.moisture(),
                      steps));
      places.add(
          run.worked(
              "materials.water.phases",
              "Pores of place " + (places.size() + 1) + " of " + pack.name(),
              steps -> CompactionControl.place(curve, density, cone.moisture(), steps)));
    }
    double placed = pack.mix().placingMoisture();
    run.worked(
        "materials.water.water-to-add",
        "Water for one kilogram of " + pack.name() + " up to the optimum",
        steps -> Moisture.waterToAdd(1, placed, optimum, steps));
    CompactionControl control =
        CompactionControl.of(curve, places, placed, pack.mix().compactedDryDensity().likely());
    if (!control.places().stream().allMatch(CompactionControl.Place::passes)) {
      control.advice().stream()
          .limit(control.places().stream().filter(p -> !p.passes()).count())
          .forEach(advice -> run.unmet(Chapter.FLOOR, pack.name() + ": " + advice));
    }
    return new PackControl(pack.name(), control);
  }
}
