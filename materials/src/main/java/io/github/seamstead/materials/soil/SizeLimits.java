package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * A named system of size limits. A report that says only "silt 20 %" is ambiguous by the part
 * between 0.02 and 0.075 mm, so the system is always asked for.
 *
 * @param label the system's name; not blank
 * @param clayLimit diameter between clay and silt, in metres; above 0
 * @param siltLimit diameter between silt and sand, in metres, above the clay's
 * @param sandLimit diameter between sand and gravel, in metres, above the silt's
 * @param source where the limits stand
 */
public record SizeLimits(
    String label, double clayLimit, double siltLimit, double sandLimit, Source source) {

  /** United States Department of Agriculture: the library's own system. */
  public static final SizeLimits USDA =
      of("USDA", 0.002, 0.05, 2, Source.found("USDA", "Soil Survey Manual", "2017", "ch. 3"));

  /** ISO 14688-1, geotechnical. */
  public static final SizeLimits ISO_14688 =
      of("ISO 14688-1", 0.002, 0.063, 2, Source.found("ISO", "14688-1", "", "table 1"));

  /** DIN 4022, the older German standard. */
  public static final SizeLimits DIN_4022 =
      of("DIN 4022", 0.002, 0.06, 2, Source.found("DIN", "4022", "", "size limits"));

  /** International (Atterberg) limits, used in Australia. */
  public static final SizeLimits INTERNATIONAL =
      of(
          "International (Atterberg)",
          0.002,
          0.02,
          2,
          Source.found("Shaw and Miles", "Soil Sci. Soc. Am. J. 4", "1940", "p. 159"));

  /**
   * ASTM D2487: fines pass 0.075 mm, gravel starts at 4.75 mm. The standard tells clay from silt by
   * plasticity; the 0.002 mm here is the hydrometer sheet's own.
   */
  public static final SizeLimits ASTM =
      of("ASTM D2487", 0.002, 0.075, 4.75, Source.found("ASTM", "D2487", "", "definitions"));

  /** The old US Bureau of Soils, with clay to 0.005 mm. */
  public static final SizeLimits BUREAU_OF_SOILS =
      of(
          "US Bureau of Soils (old)",
          0.005,
          0.05,
          2,
          Source.found("US Bureau of Soils", "Mechanical analysis", "", "size limits"));

  /** All systems named here. */
  public static final List<SizeLimits> ALL =
      List.of(USDA, ISO_14688, DIN_4022, INTERNATIONAL, ASTM, BUREAU_OF_SOILS);

  public SizeLimits {
    Args.notBlank("size system", label);
    Args.require(
        clayLimit > 0 && siltLimit > clayLimit && sandLimit > siltLimit,
        "size limits of " + label,
        Numbers.plain(clayLimit)
            + ", "
            + Numbers.plain(siltLimit)
            + ", "
            + Numbers.plain(sandLimit)
            + " m",
        "must rise from above 0");
  }

  private static SizeLimits of(
      String label, double clayMm, double siltMm, double sandMm, Source source) {
    return new SizeLimits(label, clayMm / 1000, siltMm / 1000, sandMm / 1000, source);
  }
}
