package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.rigging.RopePart;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.chapter.survey.TapePart;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.geometry.pattern.SeamMatch;
import io.github.seamstead.shared.derivation.Derivation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the orchard tent states beside the usual, against sums by hand. */
class StatedInputsTest {

  private static final String THROUGH = "\"through\": {\"layers\": 2, \"beyond\": \"4 mm\"}";

  private static JobPlan tent;

  @BeforeAll
  static void planned() {
    tent = DemoJobs.plan("orchard-tent");
  }

  /** The tent without its stock, which takes the longest, and with other texts in place of some. */
  private static JobPlan with(String... textAndInstead) throws IOException {
    String job = Files.readString(DemoJobs.FOLDER.resolve("orchard-tent.json"));
    for (int i = 0; i < textAndInstead.length; i += 2) {
      assertThat(job).contains(textAndInstead[i]);
      job = job.replace(textAndInstead[i], textAndInstead[i + 1]);
    }
    String other = job.replaceAll("(?s),\\s*\"stock\": \\{.*", "\n}");
    return JobPlanner.plan(
        JobReader.parse(other.getBytes(StandardCharsets.UTF_8)), PlanOptions.defaults());
  }

  @Test
  void theDemoCanBeMet() {
    assertThat(tent.unmet()).isEmpty();
  }

  @Test
  void aMeanIsRaisedToTheGust() {
    var screen = tent.anchoring().orElseThrow().screen();
    double z = screen.form().height();
    // EN 1991-1-4, terrain II: roughness 0.05 m, terrain factor 0.19.
    double log = Math.log(z / 0.05);
    double exposure = (1 + 7 / log) * Math.pow(0.19 * log, 2);
    assertThat(screen.pressure().gust()).isCloseTo(15 * Math.sqrt(exposure), within(1e-9));
    assertThat(tent.cautions())
        .anyMatch(c -> c.chapter() == Chapter.ANCHORING && c.caution().text().contains("hill"));
  }

  @Test
  void aGustBesideAMeanIsAFault() {
    assertThatThrownBy(() -> with("\"basicWind\"", "\"designWind\": \"30 m/s\", \"basicWind\""))
        .isInstanceOf(JobFaultsException.class)
        .hasMessageContaining("counted twice");
  }

  @Test
  void theRopeIsHeldAgainstItsPull() throws IOException {
    RopePart rope = tent.handling().orElseThrow().rope().orElseThrow();
    // Twice manila's D² / 200 t, half for the knot, a twelfth.
    double working = 2 * 12 * 12 / 200.0 * 1000 * 9.80665 / 2 / 12;
    assertThat(rope.strength().workingLoad()).isCloseTo(working, within(1e-6));
    assertThat(rope.load()).isEqualTo(tent.handling().orElseThrow().pull().ropePull());
    assertThat(rope.holds()).isTrue();
    // Two ropes of 14.6 m from coils of 30 m.
    assertThat(rope.coils().orElseThrow().rolls()).isEqualTo(1);
    assertThat(tent.cautions())
        .anyMatch(c -> c.chapter() == Chapter.HANDLING && c.caution().text().contains("rope"));
    JobPlan thin = with("\"diameter\": \"12 mm\"", "\"diameter\": \"8 mm\"");
    assertThat(thin.unmet()).anyMatch(u -> u.what().contains("take a thicker one"));
    JobPlan shortCoil = with("\"coil\": \"30 m\"", "\"coil\": \"12 m\"");
    assertThat(shortCoil.handling()).isPresent();
    assertThat(shortCoil.unmet()).anyMatch(u -> u.what().contains("roll of 12 m"));
  }

  @Test
  void theLegReachesThroughTheLayers() throws IOException {
    var through = tent.fixings().orElseThrow().through();
    assertThat(through.leastLeg().orElseThrow()).isCloseTo(2 * 0.00075 + 0.004, within(1e-12));
    assertThat(through.thread()).isEmpty();
    // Without a stated bite a staple turns over 4 mm.
    var plain = with(THROUGH, "\"through\": {\"layers\": 2}").fixings().orElseThrow();
    assertThat(plain.through().leastLeg().orElseThrow()).isCloseTo(0.0055, within(1e-12));
  }

  @Test
  void stitchesTakeThread() throws IOException {
    var sewn =
        with(
                "\"method\": \"staples\"",
                "\"method\": \"stitches\"",
                THROUGH,
                "\"through\": {\"layers\": 2, \"reel\": \"100 m\"}")
            .fixings()
            .orElseThrow();
    assertThat(sewn.through().leastLeg()).isEmpty();
    double thread = 2 * sewn.seams().length() * (1 + 0.0015 / 0.04);
    assertThat(sewn.through().thread().orElseThrow()).isCloseTo(thread, within(1e-9));
    assertThat(sewn.shopping().items())
        .filteredOn(item -> item.name().equals("thread"))
        .singleElement()
        .satisfies(item -> assertThat(item.packs()).isEqualTo((int) Math.ceil(thread * 1.1 / 100)));
  }

  @Test
  void tapedDistancesAreCorrected() {
    TapePart tape = tent.survey().flatMap(SurveyPart::tape).orElseThrow();
    assertThat(tape.distances()).hasSize(21);
    double weight = 0.012 * 9.80665;
    for (TapePart.Corrected one : tape.distances()) {
      double length = one.taped();
      double byHand =
          length
              + length * (19.998 / 20 - 1)
              + 1.16e-5 * length * (31 - 20)
              + (40 - 50) * length / 500e3
              - weight * weight * Math.pow(length, 3) / (24 * 40 * 40);
      assertThat(one.corrected()).isCloseTo(byHand, within(1e-9));
    }
    // At that pull all four corrections of the longest distance add up to nothing.
    double pull = tape.truePull().orElseThrow();
    double longest =
        tape.distances().stream().mapToDouble(TapePart.Corrected::taped).max().orElseThrow();
    double sum =
        longest * (19.998 / 20 - 1)
            + 1.16e-5 * longest * 11
            + (pull - 50) * longest / 500e3
            - weight * weight * Math.pow(longest, 3) / (24 * pull * pull);
    assertThat(sum).isCloseTo(0, within(1e-9));
  }

  @Test
  void aTapeThatHangsNeedsItsPull() {
    assertThatThrownBy(() -> with("\"pull\": \"40 N\", ", ""))
        .isInstanceOf(JobFaultsException.class)
        .hasMessageContaining("hung free");
  }

  @Test
  void laterSeamsGoQuicker() {
    GanttChart chart = tent.schedule().orElseThrow().chart();
    List<GanttChart.Bar> bars = chart.bars();
    // PERT's mean of 25, 30 and 50 min; the n-th seam takes n^(ln 0.9 / ln 2) of the first.
    double first = (25 + 4 * 30 + 50) / 6.0 * 60;
    for (int n = 1; n <= bars.size(); n++) {
      double seconds = bars.get(n - 1).endTime() - bars.get(n - 1).startTime();
      assertThat(seconds).isCloseTo(first * Math.pow(n, Math.log(0.9) / Math.log(2)), within(1e-6));
    }
  }

  @Test
  void theDaysOfTheJoiningKeepTheCure() {
    GanttChart days = tent.schedule().orElseThrow().days().orElseThrow();
    assertThat(days.bars()).hasSize(6);
    assertThat(days.bars().get(0).startTime()).isEqualTo(8 * 3600);
  }

  @Test
  void edgesOfEveryJointAreCompared() {
    JoiningPart joining = tent.joining().orElseThrow();
    var panels = tent.cover().orElseThrow().panels();
    assertThat(joining.meetings()).hasSameSizeAs(joining.ring().joints());
    for (int i = 0; i < panels.size(); i++) {
      SeamMatch meeting = joining.meetings().get(i);
      var next = panels.get((i + 1) % panels.size()).face();
      assertThat(meeting.first()).isCloseTo(panels.get(i).face().edgeLength(1), within(1e-9));
      assertThat(meeting.second()).isCloseTo(next.edgeLength(next.size() - 1), within(1e-9));
    }
  }

  /** Each worked sum ends in the number that the part has; all demos, as the book prints them. */
  @Test
  void workedSumsEndInTheNumbersOfTheParts() {
    JobPlan worked = DemoJobs.plan("orchard-tent", PlanOptions.defaults().withWorkedSteps());
    assertEnds(
        worked,
        "assembly.anchor.gust",
        worked.anchoring().orElseThrow().screen().pressure().gust());
    assertEnds(
        worked,
        "assembly.fixings.rope",
        worked.handling().orElseThrow().rope().orElseThrow().strength().workingLoad());
    assertEnds(worked, "assembly.handling.apex", worked.handling().orElseThrow().pull().apexPull());
    assertEnds(
        worked,
        "assembly.fixings.leg",
        worked.fixings().orElseThrow().through().leastLeg().orElseThrow());
    var members = worked.frame().orElseThrow().members().orElseThrow().members();
    assertEnds(worked, "geometry.members.hiplength", members.get(0).cutLength());
    assertEnds(worked, "geometry.members.ringlength", members.get(1).cutLength());
    assertEnds(worked, "geometry.members.ringcut", members.get(1).cuts().get(0).setting().tilt());
    assertEnds(
        worked,
        "geometry.members.cheekcut",
        members.get(0).cuts().stream()
            .filter(c -> c.where().contains("cheeks") && c.laidOn().equals("edge"))
            .findFirst()
            .orElseThrow()
            .setting()
            .tilt());
    assertEnds(
        worked,
        "geometry.frame.offset",
        worked.frame().orElseThrow().fabric().orElseThrow().surface().baseSide());
    assertEnds(worked, "geometry.layout.density", worked.layout().orElseThrow().result().density());
    assertEnds(
        worked, "geometry.templates.misfit", worked.survey().orElseThrow().chosen().worstMisfit());
  }

  private static void assertEnds(JobPlan plan, String id, double value) {
    Derivation derivation =
        plan.derivations().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    assertThat(derivation.steps().get(derivation.steps().size() - 1).value())
        .as(id)
        .isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
  }
}
