package io.github.seamstead.api.testing;

import io.github.seamstead.api.chapter.Chapter;

/** A square of 4 m, 3 m high, under heavy cloth with staples, glue, rope and pegs. */
public final class CoverJob {

  /** The document. */
  public static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t", "crew": {"people": 2}, "designWind": "20 m/s",
         "rope": {"fibre": "polyester", "diameter": "16 mm", "coil": "30 m"},
         "pegs": {"pulls": ["2 kN", "2.1 kN", "2.2 kN", "2.3 kN"]}},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "3000 g/m2", "thickness": "0.75 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "vents": [{"id": "v", "face": 1, "outline": [{"x": "1.8 m", "y": "2 m"},
           {"x": "2.2 m", "y": "2 m"}, {"x": "2.2 m", "y": "2.5 m"},
           {"x": "1.8 m", "y": "2.5 m"}]}],
         "fixings": {"method": "staples", "spacing": "50 mm", "rows": 2, "packSize": 100,
           "spare": "10 %", "adhesiveBead": "6 mm", "cartridge": "300 ml",
           "adhesive": {"openTime": "3 min", "cureTime": "24 h", "leastTemperature": "5 degC",
             "greatestTemperature": "30 degC", "greatestHumidity": "80 %", "source": "label"}}}}
      """;

  /** How much cloth of 0.75 mm grows that lies that much outside, by its part of the base. */
  public static final double GROWN = 1 + 0.00075 / Math.sin(Math.atan2(3, 2)) / 2;

  private CoverJob() {}

  /**
   * Plans fixings, handling and anchoring with one change.
   *
   * @param old a text that stands in the document
   * @param changed what stands there instead
   * @return what the plan tells
   * @throws IllegalArgumentException if the old text does not stand in the document
   */
  public static Fixture planned(String old, String changed) {
    return Fixture.of(
        EarthJob.with(TEXT, old, changed), Chapter.FIXINGS, Chapter.HANDLING, Chapter.ANCHORING);
  }

  /**
   * Plans fixings, handling and anchoring.
   *
   * @return what the plan tells
   */
  public static Fixture planned() {
    return Fixture.of(TEXT, Chapter.FIXINGS, Chapter.HANDLING, Chapter.ANCHORING);
  }
}
