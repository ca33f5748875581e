package io.github.seamstead.api.chapter.joining;

import static io.github.seamstead.api.testing.Fixture.filled;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every seam of a square of 4 m, 3 m to its tip and cut off at 1 m, of cloth in narrow sheets. */
class JoiningSeamsByHandTest {

  /** What cloth of half a millimetre adds to each side of the square. */
  private static final double GROWN = 0.001 / Math.sin(Math.atan2(3, 2));

  private static final double HIP_SLOPE = Math.atan2(3, 2 * Math.sqrt(2));

  /** Three quarters of sqrt(17): the sides grow by as much below as above. */
  private static final double SEAM = 0.75 * Math.sqrt(17);

  private static final String SHEETS =
      " \"stock\": {\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\","
          + " \"count\": 9}], \"edgeMargin\": \"10 mm\"},\n";

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t", "crew": {"people": 4, "teams": 2}},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
      %s "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"},
         "hem": {"kind": "turned", "allowance": "50 mm"}, "topTurnIn": "60 mm",
         "keepTogether": false,
         "joining": {"quickestSeam": "8 min", "usualSeam": "12 min", "slowestSeam": "16 min"}}}
      """;

  private static final String TRIMMED =
      "\"seam\": {\"kind\": \"fin\", \"allowance\": \"40 mm\"}, \"door\": {\"id\": \"d\", \"face\":"
          + " 2, \"outline\": [{\"x\": \"1.6 m\", \"y\": \"0.2 m\"}, {\"x\": \"2.4 m\", \"y\":"
          + " \"0.2 m\"}, {\"x\": \"2.4 m\", \"y\": \"1.4 m\"}, {\"x\": \"1.6 m\", \"y\": \"1.4"
          + " m\"}], \"flap\": \"100 mm\", \"patch\": \"50 mm\"}, \"cap\": {\"overlap\": \"300"
          + " mm\", \"lap\": \"50 mm\"}, \"skirt\": {\"drop\": \"300 mm\", \"overlap\": \"150"
          + " mm\"}";

  private static String whole() {
    return TEXT.formatted("");
  }

  private static Fixture all() {
    return Fixture.of(
        EarthJob.with(
            TEXT.formatted(SHEETS),
            "\"seam\": {\"kind\": \"fin\", \"allowance\": \"40 mm\"}",
            TRIMMED),
        Chapter.JOINING);
  }

  private static Map<String, Double> lengths(Fixture f) {
    Map<String, Double> lengths = new TreeMap<>();
    for (JsonNode seam : f.at("/joining/seams")) {
      lengths.merge(
          seam.at("/kind").asText(),
          seam.at("/length_m").asDouble() * seam.at("/count").asInt(),
          Double::sum);
    }
    return lengths;
  }

  @Test
  void everySeamHasItsLength() {
    Fixture f = all();
    Map<String, Double> lengths = lengths(f);
    // The rim of the cap lies 0.3 m down the hips; its two joints run from there to the tip.
    double rim = (1 + GROWN) / Math.sqrt(2) + 0.3 * Math.cos(HIP_SLOPE);
    assertThat(lengths.get("joints of the cap"))
        .isCloseTo(2 * rim / Math.cos(HIP_SLOPE), within(1e-9));
    // A polygon within 0.2 mm of the circle is shorter by less than a thousandth.
    assertThat(lengths.get("cap or apron to cover, after turning"))
        .isBetween(2 * Math.PI * rim * 0.999, 2 * Math.PI * rim);
    assertThat(lengths.get("ends of the skirt's strips")).isCloseTo(4 * 0.45, within(1e-9));
    assertThat(lengths.get("skirt to cover")).isCloseTo(4 * (4 + GROWN), within(1e-9));
    assertThat(lengths.get("hem")).isCloseTo(4 * (4 + GROWN), within(1e-9));
    assertThat(lengths.get("turn-in at the top")).isCloseTo(4 * (1 + GROWN), within(1e-9));
    assertThat(lengths.get("panel to panel")).isCloseTo(4 * SEAM, within(1e-9));
    // A door of 0.8 m by 1.2 m with a patch of 50 mm round it and a flap of 100 mm.
    assertThat(lengths.get("patches round openings")).isCloseTo(2 * (0.9 + 1.3), within(1e-9));
    assertThat(lengths.get("flaps over openings")).isCloseTo(1.0, within(1e-9));
    double splices = 0;
    for (JsonNode splice : f.at("/cover/panels").findValues("splices")) {
      for (JsonNode one : splice) {
        splices += one.at("/length_m").asDouble();
      }
    }
    assertThat(splices).isPositive();
    assertThat(lengths.get("splices in panels")).isCloseTo(splices, within(1e-9));
    assertThat(lengths).hasSize(10);
    near(f, "/joining/seams_m", lengths.values().stream().mapToDouble(v -> v).sum());
    // Upright sheets stand beside each other.
    JsonNode first = f.at("/cover/panels/0/splices/0");
    assertThat(f.at("/joining/seams/0/name").asText())
        .isEqualTo(first.at("/over").asText() + " beside " + first.at("/under").asText());
  }

  /** The page, its list and the ticks tell the seams of the results, each once. */
  @Test
  void thePageListsEverySeam() {
    Fixture f = all();
    List<String> rows = new ArrayList<>(List.of("seams,seam,length_m,count"));
    List<String> ticks = new ArrayList<>();
    for (JsonNode seam : f.at("/joining/seams")) {
      String kind = seam.at("/kind").asText();
      String length = filled("%.3f", seam.at("/length_m").asDouble());
      String name = seam.at("/name").asText();
      rows.add(
          (kind.contains(",") ? "\"" + kind + "\"" : kind)
              + ","
              + name
              + ","
              + length
              + ","
              + seam.at("/count").asInt());
      if (kind.equals("splices in panels")) {
        ticks.add(name + ": " + length + " m");
      }
    }
    assertThat(f.lists().get("seams.csv").lines().toList()).isEqualTo(rows);
    List<String> page = f.read(Chapter.JOINING);
    assertThat(page.stream().filter(line -> line.matches("panel\\S* (beside|over) .*")).toList())
        .isEqualTo(ticks);
    // Twelve minutes for a seam of the ring.
    double pace = 12 / SEAM;
    assertThat(page)
        .contains("4 pieces: 4 joints, 8 edges to prepare, none free")
        .contains(
            filled("panel to panel | %.3f m | 48 min | ", 4 * SEAM)
                + "both edges alike; a lap faces away from the worst weather")
        .contains(
            "ends of the skirt's strips | 1.800 m | %d min | any way; the skirt lies on the ground"
                .formatted(Math.round(1.8 * pace)));
  }

  /** Low sheets lie one over the other. */
  @Test
  void lowSheetsAreSplicedOverEachOther() {
    Fixture f =
        Fixture.of(
            TEXT.formatted(
                " \"stock\": {\"rolls\": [{\"id\": \"r\", \"length\": \"1.6 m\", \"width\": \"1.6"
                    + " m\", \"count\": 40}]},\n"),
            Chapter.JOINING);
    assertThat(f.at("/joining/seams").findValuesAsText("name"))
        .anyMatch(name -> name.contains(" over "));
  }

  private static String days(String... edges) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < edges.length; i++) {
      text.append(
          ", {\"date\": \"2031-05-0%d\", \"joined\": {\"edges\": [%s]}}"
              .formatted(i + 6, edges[i]));
    }
    return text.toString();
  }

  private static Fixture joined(String text, String pieces, String... edges) {
    return Fixture.of(
        text,
        SmallJob.diary(
            "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [" + pieces + "]}}" + days(edges)));
  }

  /** Panels that hang together were put together of their parts before. */
  @Test
  void splicesOfJoinedPanelsAreMade() {
    String text = TEXT.formatted(SHEETS);
    Fixture before = Fixture.of(text, Chapter.JOINING);
    List<String> names = new ArrayList<>();
    for (JsonNode shape : before.at("/cover/shapes")) {
      shape.at("/labels").forEach(label -> names.add("\"" + label.asText() + "\""));
    }
    Fixture f = joined(text, String.join(", ", names), "\"1R\", \"2L\"");
    double made = SEAM;
    int count = 0;
    for (int panel = 0; panel < 2; panel++) {
      for (JsonNode splice : f.at("/cover/panels/" + panel + "/splices")) {
        made += splice.at("/length_m").asDouble();
        count++;
      }
    }
    assertThat(count).isPositive();
    near(f, "/joining/seamsMade_m", made);
    near(f, "/joining/seamsLeft_m", f.number("/joining/seams_m") - made);
    assertThat(f.assumed()).contains("(splices): " + count + " made");
    assertThat(f.read(Chapter.JOINING))
        .anyMatch(line -> line.matches("panel-3\\S* (beside|over) .*"))
        .noneMatch(line -> line.matches("panel-[12]\\S* (beside|over) .*"));
    Fixture without = joined(whole(), "\"1\", \"2\", \"3\", \"4\"", "\"1R\", \"2L\"");
    assertThat(without.assumed()).noneMatch(line -> line.startsWith("(splices)"));
  }

  /** Four panels of one shape: the second and the third may take each other's name. */
  @Test
  void panelsAlikeMayTakeEachOthersNames() {
    Fixture f = joined(whole(), "\"1\", \"2\", \"3\", \"4\"", "\"1R\", \"3L\"", "\"3R\", \"2L\"");
    assertThat(f.at("/joining/pieces").findValuesAsText("template"))
        .containsExactly("shape-1", "shape-1", "shape-1", "shape-1");
    assertThat(f.at("/joining/log/undo")).hasSize(2);
    assertThat(f.at("/joining/log/faults")).hasSize(2);
    assertThat(f.at("/joining/renaming/undo")).isEmpty();
    assertThat(f.at("/joining/renaming/newNames").toString())
        .isEqualTo("[\"2 becomes 3\",\"3 becomes 2\"]");
    assertThat(f.unmet(Chapter.JOINING)).hasSize(2);
    assertThat(f.read(Chapter.JOINING))
        .contains(
            "No joint stands yet that may stay.",
            f.at("/joining/log/faults/0").asText(),
            f.at("/joining/log/faults/1").asText(),
            f.at("/joining/log/proof").asText(),
            "Or undo 0 and write new names on pieces alike: 2 becomes 3, 3 becomes 2.");
    // Two right edges never meet under any name, so that this seam has to go.
    Fixture turned =
        joined(whole(), "\"1\", \"2\", \"3\", \"4\"", "\"1R\", \"3L\"", "\"3R\", \"4R\"");
    assertThat(turned.at("/joining/renaming/undo").toString()).isEqualTo("[\"entry 2: 3R to 4R\"]");
    // With a door in it the third is of a shape of its own and keeps its place.
    Fixture door =
        joined(
            EarthJob.with(
                whole(),
                "\"seam\":",
                "\"door\": {\"id\": \"d\", \"face\": 3, \"outline\": [{\"x\": \"1.6 m\", \"y\":"
                    + " \"0.2 m\"}, {\"x\": \"2.4 m\", \"y\": \"0.2 m\"}, {\"x\": \"2 m\", \"y\":"
                    + " \"1 m\"}]}, \"seam\":"),
            "\"1\", \"2\", \"3\", \"4\"",
            "\"1R\", \"3L\"");
    assertThat(door.at("/joining/renaming").isMissingNode()).isFalse();
    assertThat(door.at("/joining/renaming/newNames").toString())
        .doesNotContain("\"3 becomes", "becomes 3\"");
  }

  @Test
  void aRingThatIsMadeIsSaid() {
    Fixture f =
        joined(
            whole(),
            "\"1\", \"2\", \"3\", \"4\"",
            "\"1R\", \"2L\"",
            "\"2R\", \"3L\"",
            "\"3R\", \"4L\"",
            "\"4R\", \"1L\"");
    near(f, "/joining/seamsMade_m", 4 * SEAM);
    assertThat(f.at("/joining/order").isMissingNode()).isTrue();
    assertThat(f.at("/joining/renaming").isMissingNode()).isTrue();
    assertThat(f.read(Chapter.JOINING))
        .contains("Every joint of the ring is made.")
        .noneMatch(line -> line.startsWith("No joint stands"))
        .noneMatch(line -> line.contains(f.at("/joining/log/proof").asText()));
    Fixture half = joined(whole(), "\"1\", \"2\", \"3\", \"4\"", "\"1R\", \"2L\"");
    assertThat(half.read(Chapter.JOINING)).doesNotContain("Every joint of the ring is made.");
  }

  private static Fixture ofMass(int grams) {
    return Fixture.of(EarthJob.with(whole(), "500 g/m2", grams + " g/m2"), Chapter.JOINING);
  }

  /**
   * One lifts some 8.8 kg of cloth, two carry two thirds of the sum; the ring's half is carried.
   */
  @Test
  void whatIsTooHeavyIsDragged() {
    double panel = Fixture.of(whole(), Chapter.JOINING).number("/cover/clothMass_kg") / 4 / 500;
    double one = Fixture.of(whole(), Chapter.JOINING).number("/joining/teamLift_kg") * 3 / 4;
    // Two panels are a tenth more than one may lift, and less than two may.
    Fixture two = ofMass((int) Math.round(1.1 * one / panel / 2));
    assertThat(two.at("/joining/order/withinLimits").asBoolean()).isTrue();
    assertThat(two.read(Chapter.JOINING))
        .anyMatch(line -> line.startsWith("1. ") && line.endsWith(" carried by 1 person"))
        .anyMatch(line -> line.startsWith("4. ") && line.endsWith(" carried by 2 people"));
    assertThat(two.read(Chapter.JOINING))
        .anyMatch(line -> line.startsWith("pairs first | ") && line.endsWith(" | yes"));
    // Four carry half of the sum of four; two panels are a tenth more than that.
    Fixture heavy = ofMass((int) Math.round(1.1 * 2 * one / panel / 2));
    assertThat(heavy.at("/joining/order/withinLimits").asBoolean()).isFalse();
    near(heavy, "/joining/order/work_s", 4 * 720);
    assertThat(heavy.read(Chapter.JOINING))
        .anyMatch(
            line ->
                line.startsWith("4. ")
                    && line.endsWith("carried: too much for 4 people, drag it on a sheet"))
        .anyMatch(line -> line.startsWith("pairs first | ") && line.endsWith(" | no"));
    assertThat(heavy.cautions(Chapter.JOINING))
        .anyMatch(text -> text.startsWith("Joined cloth is a sail"))
        .anyMatch(text -> text.startsWith("Folded cloth sags"));
    // The list says which joint closes the ring.
    List<String> list = heavy.lists().get("join-order.csv").lines().toList();
    assertThat(list.get(4)).endsWith(",yes");
    assertThat(list.get(1)).endsWith(",no");
    // What was begun is finished by dragging too.
    Fixture rest =
        joined(
            EarthJob.with(whole(), "500 g/m2", Math.round(1.1 * 2 * one / panel / 2) + " g/m2"),
            "\"1\", \"2\", \"3\", \"4\"",
            "\"1R\", \"2L\"");
    assertThat(rest.at("/joining/order/steps")).hasSize(3);
  }

  /** The first panel was cut for a frame of 3 m, the others for one that is 2 m high. */
  @Test
  void edgesThatDifferAreEasedIn() {
    String bare =
        EarthJob.with(whole(), ",\n   \"opening\": {\"side\": \"1 m\"}", "")
            .replace(" \"topTurnIn\": \"60 mm\",", "");
    Fixture f =
        Fixture.of(
            bare,
            EarthJob.with(bare, "\"height\": \"3 m\"", "\"height\": \"2 m\""),
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\"]}}"));
    double high = Math.sqrt(17) * (1 + GROWN / 4);
    double slope = Math.atan2(2, 2);
    double low = Math.sqrt(8 + 2 * 2) * (1 + 0.001 / Math.sin(slope) / 4);
    near(f, "/joining/meetings/0/first_m", high);
    near(f, "/joining/meetings/0/second_m", low);
    assertThat(f.number("/joining/meetings/0/ease_m")).isCloseTo(high - low, within(1e-9));
    assertThat(f.number("/joining/meetings/3/ease_m")).isCloseTo(low - high, within(1e-9));
    assertThat(f.number("/joining/meetings/1/ease_m")).isCloseTo(0, within(1e-9));
    assertThat(f.at("/joining/meetings/0/notchesMatch").asBoolean()).isFalse();
    assertThat(f.at("/joining/meetings/1/notchesMatch").asBoolean()).isTrue();
    List<String> marks = f.at("/joining/ring").findValuesAsText("mark");
    assertThat(f.read(Chapter.JOINING))
        .contains(
            "Edges that meet",
            filled(
                "%s | %.3f m | %.3f m | %.1f mm | differ: go by the ends",
                marks.get(0), high, low, 1000 * (high - low)),
            filled("%s | %.3f m | %.3f m | 0.0 mm | meet", marks.get(1), low, low))
        .noneMatch(line -> line.startsWith("The two edges of every joint are equally long"));
  }

  /** An adhesive that no bead is laid of holds nothing back. */
  @Test
  void withoutBeadNothingRests() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                whole(),
                "\"joining\":",
                "\"fixings\": {\"method\": \"staples\", \"adhesive\": {\"openTime\": \"3 min\","
                    + " \"cureTime\": \"1 h\", \"leastTemperature\": \"5 degC\","
                    + " \"greatestTemperature\": \"30 degC\", \"greatestHumidity\": \"80 %\","
                    + " \"source\": \"label\"}}, \"joining\":"),
            Chapter.JOINING);
    near(f, "/schedule/mean_s", 3 * 720);
  }
}
