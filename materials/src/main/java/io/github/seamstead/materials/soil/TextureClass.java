package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * The twelve texture classes of the USDA. Exactly one rule holds at each point of the triangle; a
 * point on a line belongs to the class that the inequality includes.
 */
public enum TextureClass {
  /** Sand: silt + 1.5 clay below 15 %. */
  SAND("sand", "S"),
  /** Loamy sand: not sand, and silt + 2 clay below 30 %. */
  LOAMY_SAND("loamy sand", "LS"),
  /** Sandy loam. */
  SANDY_LOAM("sandy loam", "SL"),
  /** Loam. */
  LOAM("loam", "L"),
  /** Silt loam. */
  SILT_LOAM("silt loam", "SiL"),
  /** Silt: 80 % silt or more and less than 12 % clay. */
  SILT("silt", "Si"),
  /** Sandy clay loam. */
  SANDY_CLAY_LOAM("sandy clay loam", "SCL"),
  /** Clay loam. */
  CLAY_LOAM("clay loam", "CL"),
  /** Silty clay loam. */
  SILTY_CLAY_LOAM("silty clay loam", "SiCL"),
  /** Sandy clay. */
  SANDY_CLAY("sandy clay", "SC"),
  /** Silty clay. */
  SILTY_CLAY("silty clay", "SiC"),
  /** Clay. */
  CLAY("clay", "C");

  /** Where the limits of the classes stand. */
  public static final Source SOURCE =
      Source.found(
          "Benham, Ahrens and Nettleton, USDA-NRCS",
          "Clarification of Soil Texture Class Boundaries",
          "2009",
          "table of inequalities");

  // Snaps products such as 0.29 * 100 back to the printed figure before a limit is compared.
  private static final double SNAP = 1e7;

  private final String label;
  private final String symbol;

  TextureClass(String label, String symbol) {
    this.label = label;
    this.symbol = symbol;
  }

  /**
   * Names the class.
   *
   * @return for example {@code sandy clay loam}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the usual short form.
   *
   * @return for example {@code SCL}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Gives the corners of the class's area in the triangle, in order, for a drawing.
   *
   * @return three or more corners; the last joins the first
   */
  public List<Texture> corners() {
    return ClassCorners.of(this);
  }

  static TextureClass of(double clayRatio, double siltRatio, double sandRatio) {
    double cl = Math.rint(clayRatio * 100 * SNAP) / SNAP;
    double si = Math.rint(siltRatio * 100 * SNAP) / SNAP;
    double sa = Math.rint(sandRatio * 100 * SNAP) / SNAP;
    if (cl >= 40) {
      return sa > 45 ? SANDY_CLAY : si >= 40 ? SILTY_CLAY : CLAY;
    }
    if (sa > 45 && cl >= 35) {
      return SANDY_CLAY;
    }
    if (cl >= 27 && sa <= 45) {
      return sa <= 20 ? SILTY_CLAY_LOAM : CLAY_LOAM;
    }
    if (cl >= 20 && si < 28) {
      return SANDY_CLAY_LOAM;
    }
    return light(cl, si, sa);
  }

  /** The classes below the clay loams. */
  private static TextureClass light(double cl, double si, double sa) {
    if (snapped(si + 1.5 * cl) < 15) {
      return SAND;
    }
    if (snapped(si + 2 * cl) < 30) {
      return LOAMY_SAND;
    }
    if (si >= 80 && cl < 12) {
      return SILT;
    }
    if (si >= 50) {
      return SILT_LOAM;
    }
    return cl >= 7 && si >= 28 && sa <= 52 ? LOAM : SANDY_LOAM;
  }

  /** A sum of snapped shares may miss its own round value by a rounding. */
  private static double snapped(double percent) {
    return Math.rint(percent * SNAP) / SNAP;
  }
}
