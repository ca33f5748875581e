package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Jar test: soil shaken up in water, and the top of what has settled marked three times.
 *
 * <p>The heights are marks of <em>settled</em> depth, so they rise: sand, then sand and silt, then
 * all. What has really settled at a time follows from Stokes' law for the fall height and the
 * temperature, so a mark made too early or too late is read for what it is. Heights become masses
 * by the dry density of freshly settled layers (two published sets, their spread kept): the clay
 * layer is by far the loosest, so its share of the height is not its share of the mass. In a full
 * jar the grains hinder one another: times count by {@link #settlingFactor()}.
 *
 * <p>What cannot be known is averaged over. From water stirred evenly a sixth of the silt and a
 * fifth of the clay begin so low that they are down before their size is due; guides that take the
 * layers for sand, silt and clay leave that out: anything from none to all of it is taken as alike.
 * With a dispersant two jars of three are clear at the last mark, as they should be; in the third
 * any part of what should float by Stokes' law does. Without one 30 to 90 % of the clay sinks in
 * flocs, before the silt mark, up to a third of these before the sand mark: that is no silt.
 *
 * <p>Likelihood: the two height shares (first and second mark over the third) are normal about the
 * prediction with standard deviation {@code sqrt(0.05^2 + (1.5 mm/total)^2)}, averaged over
 * timings, density sets and ways of sinking; a mark within 1.5 mm of the bottom or the top tells
 * only that it is no further. With probability 0.08 the test misleads.
 *
 * @param sandTop settled depth at the first mark, in metres; 0 or more
 * @param siltTop settled depth at the second mark, in metres, at least the first
 * @param totalLength settled depth at the last mark, in metres, at least the second, 0.01 to 0.5;
 *     0.01 to 0.5 m
 * @param fall depth of water above the bottom, in metres, above the total, to 0.6; to 0.6 m
 * @param celsius temperature of the water, 0 to 40 degC
 * @param dispersed whether a dispersant (salt, dish soap, polyphosphate) was used
 * @param timings when the marks were made; several if that is not known; one or more
 */
public record JarTest(
    double sandTop,
    double siltTop,
    double totalLength,
    double fall,
    double celsius,
    boolean dispersed,
    List<JarTiming> timings)
    implements SoilEvidence {

  /** Density of the grains that the reading assumes, in kg/m3 (quartz). */
  public static final double PARTICLE_DENSITY = 2650;

  /** Slowing by neighbours. */
  public static final Source HINDERED_SETTLING =
      Source.fromMemory("Richardson and Zaki", "Sedimentation and Fluidisation", "1954", "n 4.65");

  private static final double HINDERED = 4.65;
  private static final double USUAL_SOIL_PER_VOLUME = 50;

  /** Grains up to this size keep to Stokes' law in water of 0 to 40 degC. */
  private static final double COARSEST_BY_STOKES = 0.07e-3;

  /** Scale of the logistic that follows the normal within 0.01. */
  private static final double LOGISTIC = 1.702;

  private static final double MISLEADS = 0.08;
  private static final double SHARE_DEVIATION = 0.05;
  private static final double MARK_DEVIATION = 0.0015;

  public JarTest {
    Args.within("settled depth at the last mark", totalLength, 0.01, 0.5, "m");
    Args.require(
        sandTop >= 0 && siltTop >= sandTop && totalLength >= siltTop,
        "jar marks",
        "sand top "
            + Numbers.plain(sandTop)
            + " m, silt top "
            + Numbers.plain(siltTop)
            + " m, total "
            + Numbers.plain(totalLength)
            + " m",
        "must not fall (they are heights above the bottom, not layer thicknesses)");
    Args.require(
        fall > totalLength && fall <= 0.6,
        "jar water depth",
        Numbers.plain(fall) + " m",
        "must be above the settled " + Numbers.plain(totalLength) + " m and at most 0.6 m");
    Args.within("water temperature", celsius, 0, 40, "degC");
    timings = Args.notEmpty("jar timings", timings);
    for (JarTiming timing : timings) {
      // Refuses a sand mark so early that Stokes' law no longer holds.
      Stokes.smallestSettled(fall, timing.sandTime(), celsius, PARTICLE_DENSITY);
    }
  }

  @Override
  public String label() {
    return "jar test: settled "
        + millimetres(sandTop)
        + " mm, "
        + millimetres(siltTop)
        + " mm and "
        + millimetres(totalLength)
        + " mm in "
        + millimetres(fall)
        + " mm of water";
  }

  @Override
  public List<Source> sources() {
    List<Source> list = new ArrayList<>(List.of(Stokes.SOURCE, HINDERED_SETTLING));
    JarLayers.SETS.forEach(set -> list.add(set.source()));
    timings.forEach(timing -> list.add(timing.source()));
    return list;
  }

  @Override
  public TextureLikelihood likelihood() {
    double mark = MARK_DEVIATION / totalLength;
    double deviation = Math.sqrt(SHARE_DEVIATION * SHARE_DEVIATION + mark * mark);
    double first = sandTop / totalLength;
    double second = siltTop / totalLength;
    double variance = deviation * deviation;
    // As a rule no mark is at an end; both together then take one exponential.
    boolean within = first > mark && second < 1 - mark;
    JarLayers[] readings = JarLayers.readings(this);
    return (clay, silt, sand) -> {
      double sum = 0;
      for (JarLayers marks : readings) {
        double total = marks.heightAt(2, clay, silt, sand);
        double sandy = marks.heightAt(0, clay, silt, sand) / total;
        double silty = marks.heightAt(1, clay, silt, sand) / total;
        sum +=
            marks.weight()
                * (within
                    ? Densities.normal(first - sandy, second - silty, variance, variance)
                    : mark(first, sandy, deviation, mark) * mark(second, silty, deviation, mark));
      }
      return (1 - MISLEADS) * sum + 2 * MISLEADS;
    };
  }

  @Override
  public List<String> remarks() {
    List<String> list = new ArrayList<>();
    if (timings.size() > 1) {
      list.add(JarRemarks.ofUnknownTimes(this));
    } else {
      list.addAll(JarRemarks.of(this, timings.get(0)));
    }
    if (soilPerVolume() > USUAL_SOIL_PER_VOLUME) {
      list.add(
          "The jar held about "
              + Numbers.significant(soilPerVolume(), 2)
              + " g of soil in a litre: the grains hinder one another and sink at "
              + Numbers.significant(settlingFactor(), 2)
              + " of their speed alone, so the marks are due later. Take about 50 g in a litre.");
    }
    list.add(
        dispersed
            ? "If the water was still cloudy at the last mark, clay was afloat and is under-read:"
                + " mark again when it is clear."
            : "No dispersant was used: 30 to 90 % of the clay is taken to have sunk in flocs,"
                + " before the silt mark. Shake it again with salt or dish soap to know better.");
    return list;
  }

  /** Density of one height share; at the bottom or the top the probability of no further. */
  private static double mark(double seen, double expected, double deviation, double width) {
    if (seen <= width) {
      return Densities.logistic(LOGISTIC * (width - expected) / deviation) / width;
    }
    if (seen >= 1 - width) {
      return Densities.logistic(LOGISTIC * (expected - 1 + width) / deviation) / width;
    }
    return Densities.normal(seen, expected, deviation);
  }

  /**
   * Gives the soil in the jar, from its layers and the density of freshly settled ones.
   *
   * @return dry soil over volume of water and soil, in kilograms per cubic metre, which is g/L
   */
  public double soilPerVolume() {
    JarLayers.Settled set = JarLayers.SETS.get(0);
    return (sandTop * set.sand()
            + (siltTop - sandTop) * set.silt()
            + (totalLength - siltTop) * set.clay())
        / fall;
  }

  /**
   * Gives how much slower grains sink in this jar than alone: {@code (1 - C / 2650)^4.65} with the
   * soil per volume C (Richardson and Zaki, for slow grains).
   *
   * @return a factor above 0, at most 1, on speed and so on the time that counts
   */
  public double settlingFactor() {
    return StrictMath.pow(1 - soilPerVolume() / PARTICLE_DENSITY, HINDERED);
  }

  /**
   * Gives the time after which a single grain at the limit of sand, 0.05 mm, has fallen the whole
   * depth; in a full jar it is due later, by {@link #settlingFactor()}.
   *
   * @param steps receives Stokes' law
   * @return seconds after shaking
   */
  public double sandDue(Steps steps) {
    return Stokes.settlingTime(fall, GrainSizes.SILT_TO, celsius, PARTICLE_DENSITY, steps);
  }

  /**
   * Gives the smallest grain that has settled at the silt mark, if it sank alone.
   *
   * @param steps receives Stokes' law
   * @return diameter in metres, by the first of the timings
   */
  public double settledAtSiltMark(Steps steps) {
    return Stokes.smallestSettled(
        fall, timings.get(0).siltTime(), celsius, PARTICLE_DENSITY, steps);
  }

  /**
   * Smallest grain that has fallen the whole depth at a time, if its neighbours hinder it by a part
   * of {@link #settlingFactor()}: 1 as if all stayed in the water, 0 not at all.
   */
  double smallestSettled(double seconds, double hindered) {
    double alone = Stokes.settlingTime(fall, COARSEST_BY_STOKES, celsius, PARTICLE_DENSITY);
    return Stokes.smallestSettled(
        fall,
        Math.max(seconds * StrictMath.pow(settlingFactor(), hindered), Math.min(seconds, alone)),
        celsius,
        PARTICLE_DENSITY);
  }

  private static String millimetres(double metres) {
    return Numbers.significant(metres * 1000, 3);
  }
}
