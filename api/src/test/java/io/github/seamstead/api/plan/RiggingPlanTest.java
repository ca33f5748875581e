package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.joining.SchedulePart;
import io.github.seamstead.api.chapter.rigging.AnchoringPart;
import io.github.seamstead.api.chapter.rigging.HandlingPart;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.assembly.anchor.ShelterForm;
import io.github.seamstead.assembly.fixings.SeamKind;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Joining, raising and anchoring of small invented jobs. */
class RiggingPlanTest {

  private static String job(String site, String frame, String cover) {
    return """
    {"seamstead": 1,
     "site": {"name": "t", "crew": {"people": 4}, "designWind": "25 m/s" %s},
     "frame": {"sides": 8, %s},
     "cover": {"fabric": {"name": "x", "massPerArea": "900 g/m2", "thickness": "0.75 mm"},
      "seam": {"kind": "fin", "allowance": "40 mm"},
      "hem": {"kind": "turned", "allowance": "50 mm"},
      "fixings": {"method": "staples"} %s}}
    """
        .formatted(site, frame, cover);
  }

  private static JobPlan plan(String site, String frame, String cover) {
    byte[] text = job(site, frame, cover).getBytes(StandardCharsets.UTF_8);
    return JobPlanner.plan(JobReader.parse(text), PlanOptions.defaults());
  }

  private static final String STEEP =
      "\"measures\": {\"baseSide\": \"1.6 m\", \"height\": \"2.2 m\"}";
  private static final String FLAT =
      "\"measures\": {\"baseSide\": \"1.6 m\", \"faceSlope\": \"25 deg\"}";
  private static final String CUT = STEEP + ", \"opening\": {\"cutHeight\": \"1.4 m\"}";
  private static final String CAP = ", \"cap\": {\"overlap\": \"150 mm\", \"lap\": \"50 mm\"}";

  @Test
  void windMeetsWhatStands() {
    ShelterForm cut = plan("", CUT, "").anchoring().orElseThrow().screen().form();
    assertThat(cut.apexHeight()).isCloseTo(2.2, within(0.01));
    assertThat(cut.height()).isCloseTo(1.4, within(0.01));
    assertThat(cut.openAtTheTop()).isTrue();
    ShelterForm capped = plan("", CUT, CAP).anchoring().orElseThrow().screen().form();
    assertThat(capped.height()).isCloseTo(2.2, within(0.01));
    assertThat(capped.openAtTheTop()).isFalse();
  }

  @Test
  void aFlatRoofLeavesTheChapterOutOrTakesFiguresOfItsOwn() {
    JobPlan flat = plan("", FLAT, "");
    assertThat(flat.anchoring()).isEmpty();
    assertThat(flat.notPlanned())
        .filteredOn(n -> n.chapter() == Chapter.ANCHORING)
        .singleElement()
        .satisfies(n -> assertThat(n.reason()).contains("25.0 deg").contains("windFigures"));
    String own =
        ", \"windFigures\": {\"drag\": 0.8, \"uplift\": 1.4, \"source\": \"local code, table 3\"}";
    assertThat(plan(own, FLAT, "").anchoring().orElseThrow().screen().coefficients().limits())
        .contains("local code, table 3");
  }

  @Test
  void oneLimitForJoiningAndHandling() {
    JobPlan plan = plan("", STEEP, "");
    double one = plan.handling().orElseThrow().lift().onePersonMass();
    var team = plan.joining().orElseThrow().lift().orElseThrow();
    assertThat(team.massPerPerson()).isEqualTo(one);
    assertThat(team.capacity()).isCloseTo(2 * one, within(1e-9));
    assertThat(plan.cautions()).anyMatch(c -> c.chapter() == Chapter.JOINING);
  }

  @Test
  void pulledPegsAreJudgedOnWetGroundUnlessItIsStated() {
    String pulls = ", \"pegs\": {\"pulls\": [\"2000 N\", \"2400 N\", \"2800 N\"] %s}";
    double wet =
        plan(pulls.formatted(""), STEEP, "")
            .anchoring()
            .flatMap(AnchoringPart::pegs)
            .orElseThrow()
            .test()
            .holding();
    double dry =
        plan(pulls.formatted(", \"ground\": \"asTested\""), STEEP, "")
            .anchoring()
            .flatMap(AnchoringPart::pegs)
            .orElseThrow()
            .test()
            .holding();
    // Mean 2400 N, deviation 400 N, k 3.372: 1051 N, halved; half of that on wet ground.
    assertThat(dry).isCloseTo(525.7, within(0.5));
    assertThat(wet).isCloseTo(dry / 2, within(1e-9));
  }

  @Test
  void ropesOverTimberRunHarder() {
    String timber =
        STEEP
            + ", \"poles\": {\"section\": \"rectangular\", \"width\": \"95 mm\","
            + " \"depth\": \"45 mm\", \"setback\": \"30 mm\"}";
    String pipe = STEEP + ", \"poles\": {\"section\": \"round\", \"diameter\": \"48 mm\"}";
    assertThat(plan("", timber, "").handling().orElseThrow().pull().friction()).isEqualTo(0.37);
    assertThat(plan("", pipe, "").handling().orElseThrow().pull().friction()).isEqualTo(0.25);
    HandlingPart raised = plan("", pipe, "").handling().orElseThrow();
    assertThat(raised.pull().wrap()).isLessThan(2 * Math.atan(2.2 / (0.8 / Math.sin(Math.PI / 8))));
    assertThat(raised.hold()).isGreaterThan(raised.pull().hold());
  }

  @Test
  void everySeamHasItsFixings() {
    JobPlan plan = plan("", CUT, CAP + ", \"topTurnIn\": \"60 mm\"");
    var seams = plan.joining().orElseThrow().seams();
    assertThat(seams.kinds())
        .contains(SeamKind.RING, SeamKind.HEM, SeamKind.TOP, SeamKind.CAP_JOINTS);
    int all =
        seams.kinds().stream()
            .mapToInt(kind -> seams.fixings(kind, plan.fixings().orElseThrow().fixings().pattern()))
            .sum();
    assertThat(plan.fixings().orElseThrow().fixings().total()).isEqualTo(all);
    assertThat(seams.length(SeamKind.HEM)).isCloseTo(8 * 1.6, within(0.3));
  }

  @Test
  void seamsAreLaidIntoWorkingDays() {
    JobPlan plan = plan(", \"start\": \"2031-05-17\"", STEEP, "");
    SchedulePart schedule = plan.schedule().orElseThrow();
    // Eight seams of nine minutes by one team in a day of eight hours.
    assertThat(schedule.lastDay()).contains(1);
    assertThat(schedule.start()).contains(java.time.LocalDate.of(2031, 5, 17));
    assertThat(schedule.days().orElseThrow().endTime())
        .isCloseTo(8 * 3600 + 8 * 540.0, within(1.0));
  }
}
