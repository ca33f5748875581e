package io.github.seamstead.api.testing;

/**
 * A floor of three by three metres without frame and cover, of materials that were weighed, so that
 * a pencil gives its sums: loose and dry the soil weighs 1000 kg/m³, the sand 1400 and the gravel
 * 1500.
 */
public final class EarthJob {

  /** The document. */
  public static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "Floor", "crew": {"people": 3, "hoursPerDay": "8 h"}, "start": "2027-05-03"},
       "soils": [{"id": "pit", "laboratory": {"clay": "42 %", "silt": "30 %", "sand": "28 %"},
         "shrinkage": {"mould": "140 mm", "gap": "14 mm"}, "moisture": "10 %",
         "weighed": {"volume": "10 l", "mass": "11 kg"}, "stones": "5 %", "pricePerTonne": 10}],
       "aggregates": [
         {"id": "sand", "kind": "sand", "largest": "2 mm", "moisture": "5 %",
          "weighed": {"volume": "10 l", "mass": "14.7 kg"}, "deliveryStep": "100 kg",
          "pricePerTonne": 20},
         {"id": "gravel", "kind": "gravel", "smallest": "8 mm", "largest": "16 mm",
          "moisture": "2 %", "weighed": {"volume": "10 l", "mass": "15.3 kg"},
          "deliveryStep": "100 kg", "pricePerTonne": 30}],
       "floor": {
         "outline": {"sides": 4, "side": "3 m"},
         "edging": "0 mm",
         "softBase": "100 mm",
         "layers": [
           {"kind": "levelling", "thickness": "20 mm", "material": "sand"},
           {"kind": "capillaryBreak", "thickness": "100 mm", "material": "gravel"},
           {"kind": "membrane", "name": "sheet", "rollWidth": "2 m", "rollLength": "10 m",
            "lap": "200 mm", "upstand": "100 mm"},
           {"kind": "dryPack", "name": "pack", "thickness": "50 mm", "mix": "pack"},
           {"kind": "earthCoat", "name": "coat", "thickness": "20 mm", "mix": "coat"},
           {"kind": "oil"}, {"kind": "wax"}],
         "mixes": [
           {"id": "pack", "soil": "pit", "sand": "sand", "use": "floor", "sandParts": 1,
            "placingMoisture": "9 %", "largestGrain": "6 mm", "density": "1850 kg/m3",
            "densitySpread": "4 %"},
           {"id": "coat", "soil": "pit", "sand": "sand", "use": "floor", "sandParts": 1,
            "placingMoisture": "18 %", "largestGrain": "3 mm", "fibre": true,
            "density": "1780 kg/m3", "densitySpread": "4 %"}],
         "reserve": "10 %"},
       "plant": {"mixer": {"workingVolume": "60 l", "massLimit": "120 kg", "cycle": "12 min"},
         "bucket": "10 l", "barrow": {"volume": "80 l", "payload": "100 kg"},
         "trailer": {"volume": "0.5 m3", "payload": "700 kg"}},
       "weather": {"temperature": "18 degC", "humidity": "60 %", "airSpeed": "0.3 m/s",
         "roomVolume": "20 m3"}}
      """;

  private EarthJob() {}

  /**
   * Gives the document with one change.
   *
   * @param old a text that stands in it once or more
   * @param changed what stands there instead
   * @return the changed document
   * @throws IllegalArgumentException if the old text does not stand in it
   */
  public static String with(String old, String changed) {
    return with(TEXT, old, changed);
  }

  /**
   * Gives a document with one change.
   *
   * @param text the document
   * @param old a text that stands in it once or more
   * @param changed what stands there instead
   * @return the changed document
   * @throws IllegalArgumentException if the old text does not stand in it
   */
  public static String with(String text, String old, String changed) {
    if (!text.contains(old)) {
      throw new IllegalArgumentException("the document does not hold " + old);
    }
    return text.replace(old, changed);
  }
}
