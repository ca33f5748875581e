package io.github.seamstead.api.chapter.rigging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.TurnRoute;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A square frame of 4 m, 3 m high, whose hips, falls and vents a pencil gives. */
class RiggingByHandTest {

  private static final double HIP = Math.atan2(3, 2 * Math.sqrt(2));
  private static final double GRAVITY = 9.80665;

  private static JobPlan plan(String people, String site, String opening, String cover) {
    return plan("900", people, site, opening, cover);
  }

  private static JobPlan plan(
      String grams, String people, String site, String opening, String cover) {
    String text =
        """
        {"seamstead": 1,
         "site": {"name": "t", "crew": {"people": %s}, "designWind": "20 m/s" %s},
         "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"} %s},
         "cover": {"fabric": {"name": "x", "massPerArea": "%s g/m2", "thickness": "0.75 mm"},
          "seam": {"kind": "fin", "allowance": "40 mm"},
          "hem": {"kind": "raw"} %s}}
        """
            .formatted(people, site, opening, grams, cover);
    return JobPlanner.plan(
        JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), PlanOptions.defaults());
  }

  private static HandlingPart handling(String people, String site) {
    return plan(people, site, "", "").handling().orElseThrow();
  }

  /** The cover slides up the hips; the rope turns by both falls. */
  @Test
  void thePullIsThatOfASlopeAndACapstan() {
    HandlingPart part = handling("6", "");
    double mass = part.bundle().mass();
    assertThat(mass).isCloseTo(part.bundle().area() * 0.9, within(1e-9));
    // Four triangles of 4 m by sqrt 13 and at least their seams.
    assertThat(part.bundle().area()).isBetween(8 * Math.sqrt(13), 8 * Math.sqrt(13) * 1.1);
    double load = mass * GRAVITY * (Math.sin(HIP) + 0.5 * Math.cos(HIP));
    assertThat(part.pull().load()).isCloseTo(load, within(1e-6));
    // The crew stands as far out from the foot as the apex is high.
    double haul = Math.atan2(3, 3 + 2 * Math.sqrt(2));
    assertThat(part.pull().wrap()).isCloseTo(HIP + haul, within(1e-12));
    assertThat(part.pull().ropes()).isEqualTo(2);
    assertThat(part.pull().friction()).isEqualTo(0.37);
    // Held over the smoothest bar that was measured.
    assertThat(part.hold()).isCloseTo(load * Math.exp(-0.14 * (HIP + haul)), within(1e-6));
    double raise = load * Math.exp(0.37 * (HIP + haul));
    assertThat(part.pull().people())
        .isEqualTo(2 * (int) Math.ceil(raise / 2 / RopePull.ONE_PERSON));
    assertThat(part.tackle()).as("six people pull it").isEmpty();
  }

  @Test
  void aSmallCrewTakesTheLeastTackle() {
    HandlingPart part = plan("3000", "2", "", "", "").handling().orElseThrow();
    assertThat(part.pull().people()).isGreaterThan(2);
    // One on each rope: the fewest parts with which F (1 + 0.1 n) / n is 267 N or less.
    double rope = part.pull().raisePull() / 2;
    int parts = 2;
    while (rope * (1 + 0.1 * parts) / parts > RopePull.ONE_PERSON) {
      parts++;
    }
    assertThat(part.tackle().orElseThrow().parts()).isEqualTo(parts);
  }

  @Test
  void aRopeThatIsTooThinIsNamed() {
    JobPlan thin = plan("6", ", \"rope\": {\"fibre\": \"manila\", \"diameter\": \"5 mm\"}", "", "");
    RopePart rope = thin.handling().orElseThrow().rope().orElseThrow();
    assertThat(rope.load())
        .isCloseTo(thin.handling().orElseThrow().pull().ropePull(), within(1e-9));
    assertThat(rope.holds()).isEqualTo(rope.strength().workingLoad() >= rope.load());
    assertThat(rope.holds()).isFalse();
    assertThat(thin.unmet()).anyMatch(u -> u.chapter() == Chapter.HANDLING);
    JobPlan thick =
        plan(
            "6",
            ", \"rope\": {\"fibre\": \"polyester\", \"diameter\": \"16 mm\", \"coil\": \"30 m\"}",
            "",
            "");
    RopePart holding = thick.handling().orElseThrow().rope().orElseThrow();
    assertThat(holding.holds()).isTrue();
    assertThat(thick.unmet()).noneMatch(u -> u.chapter() == Chapter.HANDLING);
    // Over the apex from the foot to the crew and two metres of tail, twice.
    double foot = 2 * Math.sqrt(2);
    double length = Math.hypot(foot + 3, 3) + Math.hypot(foot, 3) + 2;
    assertThat(thick.handling().orElseThrow().zone().ropeLength()).isCloseTo(length, within(1e-9));
    assertThat(holding.coils()).isPresent();
  }

  @Test
  void theCoverTurnsThroughWhatItHas() {
    String door =
        ", \"door\": {\"id\": \"d\", \"face\": 1, \"outline\": [{\"x\": \"1.6 m\", \"y\": \"0.2"
            + " m\"}, {\"x\": \"2.4 m\", \"y\": \"0.2 m\"}, {\"x\": \"2.4 m\", \"y\": \"1.4 m\"},"
            + " {\"x\": \"1.6 m\", \"y\": \"1.4 m\"}]}";
    JobPlan plan = plan("4", "", ", \"opening\": {\"radius\": \"0.5 m\"}", door);
    HandlingPart part = plan.handling().orElseThrow();
    assertThat(part.turning().routes())
        .extracting(TurnRoute::through)
        .containsExactly("the hem", "the door", "the opening at the top");
    // Round a square of 4 m, a door of 0.8 m by 1.2 m, and a square in a circle of 0.5 m.
    assertThat(part.turning().routes().get(0).opening()).isCloseTo(16 / Math.PI, within(1e-9));
    assertThat(part.turning().routes().get(1).opening()).isCloseTo(4 / Math.PI, within(1e-9));
    assertThat(part.turning().routes().get(2).opening())
        .isCloseTo(4 * Math.sqrt(0.5) / Math.PI, within(1e-9));
    assertThat(handling("4", "").turning().routes()).hasSize(1);
  }

  private static final String STAPLED = ", \"fixings\": {\"method\": \"staples\"}";

  private static String vent(double from, double to) {
    return "{\"id\": \"v"
        + (int) (10 * from)
        + "\", \"face\": 1, \"outline\": [{\"x\": \"1.8 m\", \"y\": \""
        + from
        + " m\"},"
        + " {\"x\": \"2.2 m\", \"y\": \"%s m\"}, {\"x\": \"2.2 m\", \"y\": \"%s m\"},"
            .formatted(from, to)
        + " {\"x\": \"1.8 m\", \"y\": \"%s m\"}]}".formatted(to);
  }

  /** Vents of 0.4 m by half a metre, low and high: half of the area high, so 1/300 of the floor. */
  @Test
  void ventsAreHighOrLowByWhereTheyLieInTheRoom() {
    String both = STAPLED + ", \"vents\": [" + vent(0.5, 1) + ", " + vent(2.0, 2.5) + "]";
    var air = plan("4", "", "", both).anchoring().orElseThrow().ventilation();
    assertThat(air.floorArea()).isCloseTo(16, within(1e-9));
    assertThat(air.lowArea()).isCloseTo(0.2, within(1e-9));
    assertThat(air.highArea()).isCloseTo(0.2, within(1e-9));
    assertThat(air.neededArea()).isCloseTo(16 / 300.0, within(1e-9));
    // 1.9 m up a face of 56 degrees is 1.58 m up in the room, more than half; 1.75 m is less.
    String middle = STAPLED + ", \"vents\": [" + vent(1.65, 2.15) + "]";
    assertThat(plan("4", "", "", middle).anchoring().orElseThrow().ventilation().lowArea())
        .isZero();
    String lower = STAPLED + ", \"vents\": [" + vent(1.5, 2.0) + "]";
    assertThat(plan("4", "", "", lower).anchoring().orElseThrow().ventilation().highArea())
        .isZero();
  }

  @Test
  void pegsStandAtMostSixtyCentimetresApart() {
    JobPlan plan = plan("4", "", "", STAPLED);
    // Four sides of 4 m in seven parts each.
    assertThat(plan.fixings().orElseThrow().pegs().pegs()).isEqualTo(28);
    AnchoringPart anchoring = plan.anchoring().orElseThrow();
    assertThat(anchoring.screen().pegs()).isEqualTo(28);
    assertThat(anchoring.screen().restingMass())
        .isCloseTo(plan.handling().orElseThrow().bundle().mass(), within(1e-9));
    // Half of the density of air times the square of the speed.
    assertThat(anchoring.screen().pressure().pressure()).isCloseTo(0.5 * 1.25 * 400, within(12.0));
    assertThat(anchoring.pegs()).isEmpty();
    assertThat(plan.cautions())
        .anyMatch(c -> c.chapter() == Chapter.ANCHORING && c.toString().contains("peg"));
  }

  @Test
  void withoutWindOrFixingsNothingIsAnchored() {
    JobPlan none = plan("4", "", "", "");
    assertThat(none.anchoring()).isEmpty();
    assertThat(none.notPlanned())
        .anyMatch(n -> n.chapter() == Chapter.ANCHORING && n.reason().contains("fixings"));
  }

  @Test
  void weakPegsAreUnmet() {
    String weak = ", \"pegs\": {\"pulls\": [\"60 N\", \"70 N\", \"80 N\", \"75 N\"]}";
    JobPlan plan = plan("4", weak, "", STAPLED);
    var check = plan.anchoring().orElseThrow().pegs().orElseThrow();
    assertThat(check.usedRatio()).isGreaterThan(1);
    assertThat(plan.unmet()).anyMatch(u -> u.chapter() == Chapter.ANCHORING);
    String strong = weak.replace(" N\"", " kN\"");
    JobPlan good = plan("4", strong, "", STAPLED);
    assertThat(good.anchoring().orElseThrow().pegs().orElseThrow().usedRatio()).isLessThan(1);
    assertThat(good.unmet()).noneMatch(u -> u.chapter() == Chapter.ANCHORING);
  }

  @Test
  void staplesReachThroughTheirLayers() {
    FixingsPart two = plan("4", "", "", STAPLED).fixings().orElseThrow();
    // Two layers of 0.75 mm and 4 mm to clinch.
    assertThat(two.through().leastLeg().orElseThrow()).isCloseTo(0.0055, within(1e-12));
    assertThat(two.through().thread()).isEmpty();
    String four =
        ", \"fixings\": {\"method\": \"screws\", \"through\": {\"layers\": 4, \"extra\": \"10 mm\","
            + " \"beyond\": \"3 mm\"}}";
    FixingsPart screws = plan("4", "", "", four).fixings().orElseThrow();
    assertThat(screws.through().leastLeg().orElseThrow()).isCloseTo(0.016, within(1e-12));
    assertThat(screws.left().thread()).isEmpty();
  }

  @Test
  void glueIsSpreadInPortionsThatStayOpen() {
    String glue =
        ", \"fixings\": {\"method\": \"staples\", \"adhesiveBead\": \"6 mm\", \"adhesive\":"
            + " {\"openTime\": \"3 min\", \"cureTime\": \"24 h\", \"leastTemperature\": \"5 degC\","
            + " \"greatestTemperature\": \"30 degC\", \"greatestHumidity\": \"80 %\","
            + " \"source\": \"label\"}}";
    FixingsPart part = plan("4", "", "", glue).fixings().orElseThrow();
    // A round bead of 6 mm along four hips of sqrt 17 m.
    double area = Math.PI / 4 * 0.006 * 0.006;
    double all = part.seams().lengths().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(part.adhesive().orElseThrow().volume()).isCloseTo(area * all, within(1e-9));
    double seam = part.seams().lengths().get(0);
    // Half of nine minutes for each seam goes into spreading it.
    double pace = 540 * 4 / (4 * seam) / 2;
    int portions = (int) part.glue().orElseThrow().portions(seam);
    // Each spot waits as long as its portion is spread, three minutes at most.
    assertThat(portions).isGreaterThan(1);
    assertThat(seam / portions * pace).isLessThanOrEqualTo(180);
    assertThat(seam / (portions - 1) * pace).isGreaterThan(180);
    assertThat(part.shopping().items()).as("staples, adhesive, pegs").hasSize(3);
  }
}
