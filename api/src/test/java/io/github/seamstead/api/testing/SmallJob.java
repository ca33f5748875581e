package io.github.seamstead.api.testing;

import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import java.nio.charset.StandardCharsets;

/** A small shelter that is planned in a moment, and diaries of it. */
public final class SmallJob {

  private static final String TEXT =
      """
      {
        "seamstead": 1,
        "site": {"name": "Hen house", "crew": {"people": 4, "teams": 2}},
        "frame": {"sides": 6, "measures": {"baseSide": "1.2 m", "height": "%s"},
                  "opening": {"radius": "0.2 m"}},
        "cover": {"fabric": {"name": "canvas", "massPerArea": "500 g/m2", "thickness": "0.6 mm"},
                  "seam": {"kind": "fin", "allowance": "40 mm"},
                  "hem": {"kind": "raw"}, "keepTogether": false,
                  "cap": {"overlap": "200 mm", "lap": "40 mm"}},
        "stock": {"sheets": [{"id": "tarp", "length": "4 m", "width": "2.6 m", "count": 3}],
                  "spacing": "5 mm", "edgeMargin": "10 mm"},
        "soils": [{"id": "pit", "ribbon": "60 mm", "moisture": "12 %%"}],
        "aggregates": [{"id": "sand", "kind": "sand", "largest": "2 mm"}],
        "trialMixes": [{"mix": "coat", "samples": [
          {"sandParts": 2, "crack": "1 mm", "mould": "500 mm", "dusting": "none",
           "scratch": "hard"}]}],
        "floor": {
          "layers": [
            {"kind": "levelling", "thickness": "30 mm", "material": "sand"},
            {"kind": "earthCoat", "name": "coat", "thickness": "30 mm", "mix": "coat"}],
          "mixes": [{"id": "coat", "soil": "pit", "sand": "sand", "use": "floor",
                     "placingMoisture": "16 %%", "largestGrain": "3 mm", "density": "1800 kg/m3"}]},
        "plant": {"mixer": {"workingVolume": "60 l", "massLimit": "120 kg", "cycle": "10 min"},
                  "bucket": "10 l"},
        "weather": {"temperature": "18 degC", "humidity": "60 %%", "airSpeed": "0.5 m/s"}
      }
      """;

  private SmallJob() {}

  /**
   * Reads the job.
   *
   * @return the job with a frame 2 m high
   */
  public static Job job() {
    return ofHeight("2 m");
  }

  /**
   * Gives the document.
   *
   * @return its text, with a frame 2 m high
   */
  public static String text() {
    return String.format(TEXT, "2 m");
  }

  /**
   * Reads the job with another height.
   *
   * @param height of the frame, with its unit
   * @return the job
   */
  public static Job ofHeight(String height) {
    return JobReader.parse(String.format(TEXT, height).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads the job with fixings and adhesive in its seams.
   *
   * @param method what holds the seams, as the document writes it
   * @return the job with a frame 2 m high
   */
  public static Job heldBy(String method) {
    String fixings =
        "\"keepTogether\": false, \"fixings\": {\"method\": \""
            + method
            + "\", \"spacing\": \"40 mm\", \"rows\": 2, \"packSize\": 50, \"adhesiveBead\":"
            + " \"5 mm\", \"through\": {\"layers\": 4, \"reel\": \"50 m\"}},";
    String text = text().replace("\"keepTogether\": false,", fixings);
    return JobReader.parse(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads a diary of the job.
   *
   * @param lines its lines as JSON objects, with commas between
   * @return the diary
   */
  public static Diary diary(String lines) {
    return DiaryReader.parse(
        ("{\"seamstead\": 1, \"diary\": [" + lines + "]}").getBytes(StandardCharsets.UTF_8));
  }
}
