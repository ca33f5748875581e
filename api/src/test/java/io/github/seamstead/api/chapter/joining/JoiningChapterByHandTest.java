package io.github.seamstead.api.chapter.joining;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Four equal panels of a square of 4 m, 3 m high, by two teams of two. */
class JoiningChapterByHandTest {

  /**
   * A hip of sqrt(17) m; the cloth lies its 0.5 mm off the faces, 6 / sqrt(13) m from the middle of
   * the base.
   */
  private static final double SEAM = Math.sqrt(17) * (1 + 0.0005 * Math.sqrt(13) / 6);

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t", "crew": {"people": 4, "teams": 2, "hoursPerDay": "8 h"},
         "start": "2027-05-03"},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "joining": {"quickestSeam": "8 min", "usualSeam": "9 min", "slowestSeam": "14 min"}}}
      """;

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.JOINING);
  }

  /** Two pairs first, then both, then the ring: 2 + 2 + 4 + 4 panels in hand. */
  @Test
  void theOrderOfFourPanels() {
    Fixture f = planned(TEXT);
    near(f, "/joining/joints", 4);
    near(f, "/joining/edgesToPrepare", 8);
    assertThat(f.at("/joining/pieces")).hasSize(4);
    double one = f.number("/joining/pieces/0/mass_kg");
    near(f, "/cover/clothMass_kg", 4 * one);
    near(f, "/joining/ring/0/length_m", SEAM);
    near(f, "/joining/seams_m", 4 * SEAM);
    near(f, "/joining/seamsMade_m", 0);
    near(f, "/joining/seamsLeft_m", 4 * SEAM);
    near(f, "/joining/meetings/0/first_m", SEAM);
    near(f, "/joining/meetings/0/ease_m", 0);
    assertThat(f.at("/joining/meetings/0/notchesMatch").asBoolean()).isTrue();
    near(f, "/joining/order/handledMass_kg", 12 * one);
    near(f, "/joining/order/work_s", 4 * 540);
    near(f, "/joining/order/elapsed_s", 3 * 540);
    // A team carries the pair to the other.
    near(f, "/joining/order/heaviestCarried_kg", 2 * one);
    assertThat(f.at("/joining/order/withinLimits").asBoolean()).isTrue();
    assertThat(f.at("/joining/order/optimality/proved").asBoolean()).isTrue();
    JsonNode steps = f.at("/joining/order/steps");
    assertThat(steps).hasSize(4);
    assertThat(steps.get(3).at("/closing").asBoolean()).isTrue();
    assertThat(steps.get(0).at("/closing").asBoolean()).isFalse();
    near(f, "/joining/order/steps/0/inHand_kg", 2 * one);
    near(f, "/joining/order/steps/2/inHand_kg", 4 * one);
    near(f, "/joining/order/steps/0/time_s", 540);
    assertThat(Set.of(steps.get(0).at("/team").asInt(), steps.get(1).at("/team").asInt()))
        .containsExactlyInAnyOrder(1, 2);
    assertThat(f.at("/joining/standing")).hasSize(4);
    assertThat(f.at("/joining/lying")).hasSize(4);
    // Inside out the pieces run the other way: what is on the right of the first is on its left.
    List<String> standing = f.at("/joining/standing").findValuesAsText("piece");
    List<String> lying = f.at("/joining/lying").findValuesAsText("piece");
    int first = lying.indexOf(standing.get(0));
    for (int i = 0; i < 4; i++) {
      assertThat(lying.get(Math.floorMod(first - i, 4))).isEqualTo(standing.get(i));
    }
    assertThat(f.number("/joining/teamLift_kg")).isPositive();
    assertThat(f.noughts("/joining"))
        .isSubsetOf(
            Set.of(
                "/alternatives/steps/carried_kg",
                "/alternatives/steps/closing",
                "/alternatives/steps/start_s",
                "/alternatives/withinLimits",
                "/meetings/ease_m",
                "/order/steps/carried_kg",
                "/order/steps/closing",
                "/order/steps/start_s",
                "/seamsMade_m"));
    assertThat(f.worked("assembly."))
        .contains(
            "assembly.fixings.seams",
            "assembly.merge.handledmass",
            "assembly.merge.teamlift",
            "assembly.ring.check",
            "assembly.schedule.criticalpath",
            "assembly.schedule.pert");
    assertThat(f.cautions(Chapter.JOINING)).isNotEmpty();
  }

  /** A mean of (8 + 4 * 9 + 14) / 6 minutes, three seams one after the other. */
  @Test
  void theScheduleOfTwoTeams() {
    Fixture f = planned(TEXT);
    double mean = (8 + 36 + 14) / 6.0 * 60;
    near(f, "/schedule/mean_s", 3 * mean);
    near(f, "/schedule/bound_s", 3 * mean);
    assertThat(f.at("/schedule/proved").asBoolean()).isTrue();
    double p50 = f.number("/schedule/p50_s");
    assertThat(p50).isBetween(3 * 480.0, 3 * 840.0);
    assertThat(f.number("/schedule/p80_s")).isGreaterThan(p50);
    assertThat(f.number("/schedule/p95_s"))
        .isGreaterThan(f.number("/schedule/p80_s"))
        .isLessThan(3 * 840);
    // From eight in the morning.
    near(f, "/schedule/days/0/start_s", 8 * 3600);
    near(f, "/schedule/days/3/end_s", 8 * 3600 + 3 * mean);
    near(f, "/schedule/days/3/start_s", 8 * 3600 + 2 * mean);
    assertThat(f.at("/schedule/learning_ratio").isMissingNode()).isTrue();
    assertThat(f.assumed()).contains("(working day): one shift from 8 in the morning, every day");
    // Cure of a glue of an hour makes its joints wait for an hour more.
    Fixture learning =
        planned(
            EarthJob.with(
                TEXT,
                "\"slowestSeam\": \"14 min\"",
                "\"slowestSeam\": \"14 min\", \"learning\": \"90 %\""));
    near(learning, "/schedule/learning_ratio", 0.9);
    assertThat(learning.number("/schedule/mean_s")).isLessThan(3 * mean);
    assertThat(learning.worked("assembly.schedule.learning")).hasSize(1);
    assertThat(learning.read(Chapter.JOINING))
        .anyMatch(line -> line.startsWith("Each doubling of the seams leaves 90"));
  }

  /** Glue that rests an hour holds each group back by it. */
  @Test
  void gluedJointsRest() {
    Fixture f =
        planned(
            EarthJob.with(
                TEXT,
                "\"joining\":",
                "\"fixings\": {\"method\": \"staples\", \"adhesiveBead\": \"6 mm\", \"adhesive\":"
                    + " {\"openTime\": \"3 min\", \"cureTime\": \"1 h\", \"leastTemperature\":"
                    + " \"5 degC\", \"greatestTemperature\": \"30 degC\", \"greatestHumidity\":"
                    + " \"80 %\", \"source\": \"label\"}}, \"joining\":"));
    double mean = (8 + 36 + 14) / 6.0 * 60;
    assertThat(f.number("/schedule/mean_s")).isBetween(3 * mean + 7200 - 1, 3 * mean + 10_801);
  }

  @Test
  void thePageTellsAllOfIt() {
    Fixture f = planned(TEXT);
    assertThat(f.read(Chapter.JOINING))
        .contains(
            "The two edges of every joint are equally long, and their notches meet.",
            "The order, to tick off",
            "All seams, in the order of the work",
            "Every seam",
            "Other orders",
            "Orders side by side",
            "How long it takes",
            "Time for all seams, with the teams stated",
            "by the working hours of the crew, done on working day | 1 (2027-05-03)")
        .anyMatch(line -> line.startsWith("Every joint has one name"))
        .anyMatch(line -> line.startsWith("One person lifts at most"))
        .anyMatch(line -> line.startsWith("Proved best: "))
        .anyMatch(line -> line.startsWith("The order as a tree"))
        .anyMatch(line -> line.startsWith("The seams in time"))
        .anyMatch(line -> line.startsWith("The seams by the clock"))
        .anyMatch(line -> line.startsWith("The cover as it stands"))
        .anyMatch(line -> line.startsWith("The cover as it lies"))
        .anyMatch(line -> line.startsWith("From 500 runs"))
        .anyMatch(line -> line.startsWith("Times are at the pace"))
        .anyMatch(line -> line.matches("4\\. .*close the ring, team \\d.*"));
    assertThat(f.lists().get("join-order.csv").lines().count()).isEqualTo(5);
    assertThat(f.lists().get("seams.csv").lines().count()).isEqualTo(5);
  }

  @Test
  void seamsThatAreMadeAreNotMadeAgain() {
    Fixture f =
        Fixture.of(
            TEXT,
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\", \"3\", \"4\"]}},"
                    + " {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"1R\", \"2L\"]}}"));
    near(f, "/joining/seamsMade_m", SEAM);
    near(f, "/joining/seamsLeft_m", 3 * SEAM);
    assertThat(f.at("/joining/log/made")).hasSize(1);
    assertThat(f.at("/joining/log/open")).hasSize(3);
    assertThat(f.at("/joining/log/undo")).isEmpty();
    assertThat(f.at("/joining/order/steps")).hasSize(3);
    assertThat(f.read(Chapter.JOINING))
        .contains("What is joined")
        .anyMatch(line -> line.startsWith("These joints stand: "))
        .anyMatch(line -> line.contains("of them are made"));
    Fixture wrong =
        Fixture.of(
            TEXT,
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\", \"3\", \"4\"]}},"
                    + " {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"1R\", \"3L\"]}}"));
    assertThat(wrong.at("/joining/log/undo")).hasSize(1);
    assertThat(wrong.unmet(Chapter.JOINING)).isNotEmpty();
  }

  @Test
  void withoutCrewOneTeamJoins() {
    String alone =
        EarthJob.with(
            TEXT, "\"crew\": {\"people\": 4, \"teams\": 2, \"hoursPerDay\": \"8 h\"},\n   ", "");
    Fixture f =
        planned(
            EarthJob.with(
                alone,
                ",\n"
                    + "   \"joining\": {\"quickestSeam\": \"8 min\", \"usualSeam\": \"9 min\","
                    + " \"slowestSeam\": \"14 min\"}",
                ""));
    assertThat(f.assumed()).contains("$.site.crew.teams: 1");
    assertThat(f.assumed()).anyMatch(a -> a.startsWith("$.cover.joining.usualSeam: 9 min"));
    near(f, "/joining/order/elapsed_s", f.number("/joining/order/work_s"));
    assertThat(f.at("/joining/teamLift_kg").isMissingNode()).isTrue();
    assertThat(f.at("/schedule/days")).isEmpty();
    // Between eight and ten minutes, nine in the mean, four times.
    assertThat(f.number("/schedule/mean_s")).isCloseTo(4 * 540, within(1e-6));
  }

  /** A cap, a skirt and a lining each bring their seams. */
  @Test
  void seamsBesideTheRing() {
    Fixture f =
        planned(
            EarthJob.with(
                    TEXT,
                    "\"height\": \"3 m\"}}",
                    "\"height\": \"3 m\"}, \"opening\": {\"side\": \"1 m\"}}")
                .replace(
                    "\"hem\": {\"kind\": \"raw\"},",
                    "\"hem\": {\"kind\": \"turned\", \"allowance\": \"50 mm\"}, \"topTurnIn\": \"60"
                        + " mm\", \"cap\": {\"overlap\": \"300 mm\", \"lap\": \"50 mm\"},"
                        + " \"skirt\": {\"drop\": \"300 mm\", \"overlap\": \"150 mm\"}, \"lining\":"
                        + " {\"fabric\": {\"name\": \"y\", \"massPerArea\": \"200 g/m2\","
                        + " \"thickness\": \"0.4 mm\"}, \"airGap\": \"80 mm\", \"allowance\": \"30"
                        + " mm\"},"));
    Map<String, Double> lengths = new TreeMap<>();
    double all = 0;
    for (JsonNode seam : f.at("/joining/seams")) {
      double length = seam.at("/length_m").asDouble() * seam.at("/count").asInt();
      lengths.merge(seam.at("/kind").asText(), length, Double::sum);
      all += length;
    }
    near(f, "/joining/seams_m", all);
    // Round base and opening, four hips cut off at three quarters, and the lining's own hips.
    assertThat(lengths.get("hem")).isCloseTo(16, within(0.05));
    assertThat(lengths.get("skirt to cover")).isCloseTo(lengths.get("hem"), within(1e-9));
    assertThat(lengths.get("turn-in at the top")).isCloseTo(4, within(0.05));
    assertThat(lengths.get("panel to panel")).isCloseTo(3 * SEAM, within(0.01));
    assertThat(lengths.get("lining")).isCloseTo(3 * SEAM, within(0.05));
    assertThat(lengths.get("joints of the cap")).isPositive();
    assertThat(lengths.get("cap or apron to cover, after turning")).isPositive();
    assertThat(lengths.get("ends of the skirt's strips")).isPositive();
  }
}
