package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A published envelope: how much clay, silt, sand and gravel a mix for a use may have, as shares of
 * the whole dry mass.
 *
 * @param use the use; not blank
 * @param clay limits of clay
 * @param silt limits of silt
 * @param sand limits of sand
 * @param gravel limits of gravel
 * @param source where it stands
 */
public record CompositionRange(
    String use, Limits clay, Limits silt, Limits sand, Limits gravel, Source source) {

  /** Adobe, Peru E.080. */
  public static final CompositionRange ADOBE =
      of(
          "adobe",
          new double[] {10, 20, 15, 25, 55, 70, 0, 100},
          Source.fromMemory("NTE E.080", "Adobe, Peru", "", "grading"));

  /** Rammed earth; sand and gravel together are 45 to 80 %. */
  public static final CompositionRange RAMMED_EARTH =
      of(
          "rammed earth",
          new double[] {5, 20, 10, 30, 0, 80, 0, 80},
          Source.fromMemory("Walker et al.", "Rammed Earth: Design Guidelines", "2005", "grading"));

  /** Pressed block, the band called good. */
  public static final CompositionRange PRESSED_BLOCK =
      of(
          "pressed block",
          new double[] {10, 20, 0, 20, 65, 80, 0, 100},
          Source.found("", "Ratio for compressed earth blocks", "", "good"));

  /** Cob, builders' range. */
  public static final CompositionRange COB =
      of(
          "cob",
          new double[] {15, 25, 0, 10, 75, 85, 0, 100},
          Source.found("", "Test your cob mix", "2017", "clay 15 to 25, sand 75 to 85 %"));

  /** All envelopes named here. */
  public static final List<CompositionRange> ALL = List.of(ADOBE, RAMMED_EARTH, PRESSED_BLOCK, COB);

  /**
   * Gives the envelope for a use.
   *
   * @param use the use
   * @return the envelope; empty for floors and plasters, which have none in print
   */
  public static Optional<CompositionRange> of(SoilUse use) {
    return switch (use) {
      case COB -> Optional.of(COB);
      case PRESSED_BLOCK -> Optional.of(PRESSED_BLOCK);
      case RAMMED_EARTH -> Optional.of(RAMMED_EARTH);
      case FLOOR, PLASTER -> Optional.empty();
    };
  }

  /**
   * Two limits of a share.
   *
   * @param least least share, 0 to 1
   * @param greatest greatest share, at least the least, to 1
   */
  public record Limits(double least, double greatest) {

    public Limits {
      Args.within("least share", least, 0, 1, "");
      Args.within("greatest share", greatest, least, 1, "");
    }
  }

  public CompositionRange {
    Args.notBlank("use", use);
    double least = clay.least + silt.least + sand.least + gravel.least;
    double greatest = clay.greatest + silt.greatest + sand.greatest + gravel.greatest;
    Args.agree(
        least <= 1 + 1e-9 && greatest >= 1 - 1e-9,
        "composition range of "
            + use
            + ": its limits add to "
            + Numbers.significant(least, 4)
            + " and "
            + Numbers.significant(greatest, 4),
        "must have 1 between them");
  }

  private static CompositionRange of(String use, double[] percent, Source source) {
    return new CompositionRange(
        use,
        limits(percent, 0),
        limits(percent, 2),
        limits(percent, 4),
        limits(percent, 6),
        source);
  }

  private static Limits limits(double[] percent, int at) {
    return new Limits(percent[at] / 100, percent[at + 1] / 100);
  }

  /**
   * Says in which way a grading leaves the envelope.
   *
   * @param grading the grading
   * @return one sentence for each share outside; none if it fits
   */
  public List<String> outside(GradingCurve grading) {
    double clayShare = grading.finer(0.002 / 1000);
    double fines = grading.finer(0.05 / 1000);
    double fine = grading.finer(0.002);
    List<String> list = new ArrayList<>();
    check("clay", clay, clayShare, list);
    check("silt", silt, fines - clayShare, list);
    check("sand", sand, fine - fines, list);
    check("gravel", gravel, 1 - fine, list);
    return List.copyOf(list);
  }

  private void check(String name, Limits limits, double share, List<String> list) {
    if (share < limits.least - 1e-9 || share > limits.greatest + 1e-9) {
      list.add(
          name
              + " "
              + Numbers.significant(share * 100, 3)
              + " %, "
              + use
              + " has "
              + Numbers.significant(limits.least * 100, 3)
              + " to "
              + Numbers.significant(limits.greatest * 100, 3)
              + " %");
    }
  }
}
