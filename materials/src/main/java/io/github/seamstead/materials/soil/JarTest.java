package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
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
 * layer is by far the loosest, so its share of the height is not its share of the mass. Whether all
 * clay is down at the last mark is not known: without a dispersant it is taken to be (flocs), with
 * one both that and grains that sink singly are kept.
 *
 * <p>Likelihood: the two height shares (first and second mark over the third) are normal about the
 * prediction with standard deviation {@code sqrt(0.05^2 + (1.5 mm/total)^2)}, doubled if no
 * dispersant was used (clay then sinks in flocs), averaged over timings and density sets; with
 * probability 0.08 the test misleads.
 *
 * @param sandTopMetres settled depth at the first mark, in metres
 * @param siltTopMetres settled depth at the second mark, in metres, at least the first
 * @param totalMetres settled depth at the last mark, in metres, at least the second, 0.01 to 0.5
 * @param fallMetres depth of water above the bottom, in metres, above the total, to 0.6
 * @param celsius temperature of the water, 0 to 40 degC
 * @param dispersed whether a dispersant (salt, dish soap, polyphosphate) was used
 * @param timings when the marks were made; several if that is not known
 */
public record JarTest(
    double sandTopMetres,
    double siltTopMetres,
    double totalMetres,
    double fallMetres,
    double celsius,
    boolean dispersed,
    List<JarTiming> timings)
    implements SoilEvidence {

  /** Density of the grains that the reading assumes, in kg/m3 (quartz). */
  public static final double PARTICLE_DENSITY = 2650;

  private static final double MISLEADS = 0.08;
  private static final double SHARE_DEVIATION = 0.05;
  private static final double MARK_DEVIATION = 0.0015;

  /**
   * Checks the order and copies the timings.
   *
   * @param sandTopMetres 0 or more
   * @param siltTopMetres at least the first
   * @param totalMetres at least the second, 0.01 to 0.5 m
   * @param fallMetres above the total, to 0.6 m
   * @param celsius 0 to 40 degC
   * @param dispersed whether a dispersant was used
   * @param timings one or more
   * @throws IllegalArgumentException if the marks are out of order or a value is out of range
   */
  public JarTest {
    Args.within("settled depth at the last mark", totalMetres, 0.01, 0.5, "m");
    Args.require(
        sandTopMetres >= 0 && siltTopMetres >= sandTopMetres && totalMetres >= siltTopMetres,
        "jar marks: given sand top "
            + Numbers.plain(sandTopMetres)
            + " m, silt top "
            + Numbers.plain(siltTopMetres)
            + " m, total "
            + Numbers.plain(totalMetres)
            + " m, must not fall (they are heights above the bottom, not layer thicknesses)");
    Args.require(
        fallMetres > totalMetres && fallMetres <= 0.6,
        "jar water depth: given "
            + Numbers.plain(fallMetres)
            + " m, must be above the settled "
            + Numbers.plain(totalMetres)
            + " m and at most 0.6 m");
    Args.within("water temperature", celsius, 0, 40, "degC");
    timings = Args.notEmpty("jar timings", timings);
    for (JarTiming timing : timings) {
      // Refuses a sand mark so early that Stokes' law no longer holds.
      Stokes.smallestSettled(fallMetres, timing.sandSeconds(), celsius, PARTICLE_DENSITY);
    }
  }

  @Override
  public String label() {
    return "jar test: settled "
        + millimetres(sandTopMetres)
        + " / "
        + millimetres(siltTopMetres)
        + " / "
        + millimetres(totalMetres)
        + " mm in "
        + millimetres(fallMetres)
        + " mm of water";
  }

  @Override
  public List<Source> sources() {
    List<Source> list = new ArrayList<>(List.of(Stokes.SOURCE));
    JarLayers.SETS.forEach(set -> list.add(set.source()));
    timings.forEach(timing -> list.add(timing.source()));
    return list;
  }

  @Override
  public TextureLikelihood likelihood() {
    double mark = MARK_DEVIATION / totalMetres;
    double variance = (SHARE_DEVIATION * SHARE_DEVIATION + mark * mark) * (dispersed ? 1 : 4);
    double first = sandTopMetres / totalMetres;
    double second = siltTopMetres / totalMetres;
    JarLayers[] readings = JarLayers.readings(this);
    double scale = (1 - MISLEADS) / readings.length;
    return (clay, silt, sand) -> {
      double sum = 0;
      for (JarLayers marks : readings) {
        double total = marks.heightAt(2, clay, silt, sand);
        sum +=
            Densities.normal(
                first - marks.heightAt(0, clay, silt, sand) / total,
                second - marks.heightAt(1, clay, silt, sand) / total,
                variance,
                variance);
      }
      return scale * sum + 2 * MISLEADS;
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
    list.add(
        dispersed
            ? "If the water was still cloudy at the last mark, clay was afloat and is under-read:"
                + " mark again when it is clear."
            : "No dispersant was used: clay may have sunk in flocs and been read as silt.");
    return list;
  }

  private static String millimetres(double metres) {
    return Numbers.significant(metres * 1000, 3);
  }
}
