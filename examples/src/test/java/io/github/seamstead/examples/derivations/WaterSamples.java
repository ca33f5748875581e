package io.github.seamstead.examples.derivations;

import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Evaporation;
import io.github.seamstead.materials.drying.OpenTime;
import io.github.seamstead.materials.drying.Psychrometrics;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.Ventilation;
import io.github.seamstead.materials.drying.Weather;
import io.github.seamstead.materials.water.FieldDensity;
import io.github.seamstead.materials.water.Moisture;
import io.github.seamstead.materials.water.PhaseQuantity;
import io.github.seamstead.materials.water.PhaseRelations;
import io.github.seamstead.materials.water.ProctorCurve;
import io.github.seamstead.materials.water.ProctorPoint;
import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.materials.water.Saturation;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Water in earth and its drying. */
final class WaterSamples {

  private WaterSamples() {}

  static void addTo(Samples to) {
    to.add(
        "materials.water.sand-cone",
        steps -> FieldDensity.ofSandCone(3.2, 0.25, 1580, 3.7, 0.11, steps));
    to.add("materials.water.tin", steps -> Moisture.ofTin(0.152, 0.139, 0.031, steps));
    to.add("materials.water.water-to-add", steps -> Moisture.waterToAdd(104, 0.04, 0.12, steps));
    to.add(
        "materials.water.proctor",
        steps -> ProctorCurve.fit(PROCTOR, Optional.of(2.7), steps).maximumDryDensity().likely());
    to.add(
        "materials.water.zero-air-voids", steps -> ProctorCurve.zeroAirVoids(2.7, 0.12, 1, steps));
    to.add(
        "materials.water.phases", steps -> PhaseRelations.solve(PHASES, 1000, steps).saturation());
    to.add(
        "materials.drying.crack-width-doubt",
        steps ->
            Cracking.of(new Range(0.004, 0.006, 0.011), Cracking.ROUGH_BASE, Cracking.WITHOUT_FIBRE)
                .forecastDoubt(steps)
                .sampled()
                .high());
    to.add(
        "materials.drying.crack-width", steps -> Cracking.widthPerMetre(0.006, 0.8, 0.0003, steps));
    to.add("materials.drying.slip", steps -> SlipRepair.volume(0.01, 17, 0.025, 0.001, steps));
    to.add("materials.drying.open-time", steps -> OpenTime.of(AIR, 1750, 0.2, 0.14, steps));
    to.add(
        "materials.drying.saturation-pressure",
        steps -> Psychrometrics.saturationPressure(18, steps));
    to.add(
        "materials.drying.wet-bulb",
        steps -> Psychrometrics.vapourPressureFromWetBulb(20, 15, 101_325, steps));
    to.add(
        "materials.drying.simulation",
        steps ->
            DryingForecast.of(
                    SLAB,
                    Weather.constant(AIR),
                    Optional.empty(),
                    DryingCriteria.wetLaid(0.14, EarthMoisture.sandyMix()),
                    DryingDoubt.published(),
                    30,
                    steps)
                .likely()
                .finalMoisture());
    to.add("materials.drying.evaporation", steps -> Evaporation.wetFloor(AIR, steps));
    Ventilation shut = new Ventilation(12, 29, 27);
    to.add(
        "materials.drying.closed-cover",
        steps -> shut.humidityOverWetFloor(new AirState(18, 0.65, 0.2), steps));
    to.add(
        "materials.drying.air-changes",
        steps -> Ventilation.changesFor(27, 29, 18, 0.65, 0.85, steps));
    to.add("materials.water.bulking", steps -> SandBulking.tin(0.125, 0.1, steps));
    to.add("materials.water.bulked-density", steps -> SandBulking.bulkedDensity(1555, 0.3, steps));
    to.add("materials.water.saturation", steps -> Saturation.moisture(1780, 2650, steps));
  }

  private static final AirState AIR = new AirState(18, 0.6, 0.4);
  private static final DryingSlab SLAB =
      DryingSlab.sealed(0.025, 1750, 0.2, EarthMoisture.sandyMix());
  private static final Map<PhaseQuantity, Double> PHASES =
      Map.of(
          PhaseQuantity.SPECIFIC_GRAVITY, 2.7,
          PhaseQuantity.MOISTURE, 0.12,
          PhaseQuantity.DRY_DENSITY, 1800.0);
  private static final List<ProctorPoint> PROCTOR =
      List.of(
          new ProctorPoint(0.08, 1720),
          new ProctorPoint(0.10, 1800),
          new ProctorPoint(0.12, 1845),
          new ProctorPoint(0.14, 1820),
          new ProctorPoint(0.16, 1750));
}
