package io.github.seamstead.api.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/**
 * The results of the demo jobs against sums by hand from textbook formulas. Nothing here calls the
 * library but to plan the job.
 */
class DemoResultsTest {

  private static final Source POLYGONS =
      Source.found("Engineering ToolBox", "Regular Polygons", "", "area over side squared");
  private static final Source HANDBOOK =
      Source.fromMemory("CRC", "Standard Mathematical Tables", "", "regular polygons");

  private static JsonNode results(String job) throws IOException {
    return new ObjectMapper().readTree(ResultsJson.text(DemoJobs.plan(job)));
  }

  private static void check(JsonNode at, String key, double byHand) {
    assertThat(at.get(key)).as(key).isNotNull();
    assertThat(at.get(key).asDouble()).as(key).isCloseTo(byHand, within(1e-9 * (1 + byHand)));
  }

  /** Hip, slant, slopes and areas of a pyramid over a regular n-gon, by Pythagoras. */
  private static void checkPyramid(JsonNode m, int n, double a, double h) {
    double tan = Math.tan(Math.PI / n);
    double inradius = a / (2 * tan);
    double circumradius = a / (2 * Math.sin(Math.PI / n));
    check(m, "baseSide_m", a);
    check(m, "inradius_m", inradius);
    check(m, "circumradius_m", circumradius);
    check(m, "perimeter_m", n * a);
    check(m, "baseArea_m2", n * a * a / (4 * tan));
    check(m, "apexHeight_m", h);
    check(m, "hipEdge_m", Math.sqrt(circumradius * circumradius + h * h));
    check(m, "slantHeight_m", Math.sqrt(inradius * inradius + h * h));
    check(m, "faceSlope_rad", Math.atan(h / inradius));
    check(m, "hipSlope_rad", Math.atan(h / circumradius));
  }

  @Test
  void theSeedLoftsFrame() throws IOException {
    JsonNode m = results("seed-loft").get("frame").get("measures");
    double a = 1.6;
    double h = 3.4;
    double top = 0.35;
    checkPyramid(m, 12, a, h);
    // The frustum: the whole less the small pyramid, whose scale is the ratio of the radii.
    double circumradius = a / (2 * Math.sin(Math.PI / 12));
    double scale = top / circumradius;
    double slant = Math.hypot(a / (2 * Math.tan(Math.PI / 12)), h);
    double whole = 12 * a * slant / 2;
    double base = 12 * a * a / (4 * Math.tan(Math.PI / 12));
    check(m, "openingSide_m", a * scale);
    check(m, "frameHeight_m", h * (1 - scale));
    check(m, "hipLength_m", Math.hypot(circumradius, h) * (1 - scale));
    check(m, "coverArea_m2", whole * (1 - scale * scale));
    check(m, "volume_m3", base * h / 3 * (1 - scale * scale * scale));
  }

  @Test
  void areasAgreeWithThePrintedPolygonTables() throws IOException {
    double twelve = results("seed-loft").at("/frame/measures/baseArea_m2").asDouble();
    OutsideCheck.of("api.results", "twelve-sided demo: base area / side²", POLYGONS)
        .expect(11.1961)
        .within(1e-4)
        .got(twelve / (1.6 * 1.6));
    double five = results("class-model").at("/frame/measures/baseArea_m2").asDouble();
    OutsideCheck.of("api.results", "five-sided demo: base area / side²", POLYGONS)
        .expect(1.7205)
        .within(1e-4)
        .got(five / (0.24 * 0.24));
    JsonNode six = results("hill-hide").at("/frame/measures");
    OutsideCheck.of("api.results", "six-sided demo: radius / side", HANDBOOK)
        .expect(1)
        .within(1e-6)
        .got(six.get("circumradius_m").asDouble() / six.get("baseSide_m").asDouble());
  }

  @Test
  void theClassModel() throws IOException {
    JsonNode r = results("class-model");
    checkPyramid(r.at("/frame/measures"), 5, 0.24, 0.31);
    double slant = Math.hypot(0.24 / (2 * Math.tan(Math.PI / 5)), 0.31);
    check(r.at("/frame/measures"), "coverArea_m2", 5 * 0.24 * slant / 2);
    assertThat(r.at("/joining/joints").asInt()).isEqualTo(5);
    assertThat(r.at("/joining/edgesToPrepare").asInt()).isEqualTo(10);
    // The fabric lies one pole radius and one thickness outside: 3 mm + 0.5 mm.
    check(r.at("/frame/fabric"), "distance_m", 0.0035);
    // Planes moved out by d keep their slopes: the apex rises by d / cos(slope).
    double slope = Math.atan(0.31 / (0.24 / (2 * Math.tan(Math.PI / 5))));
    double grown = (0.31 + 0.0035 / Math.cos(slope)) / 0.31;
    check(r.at("/frame/fabric"), "baseSide_m", 0.24 * grown);
    check(r.at("/cover"), "clothMass_kg", r.at("/cover/clothArea_m2").asDouble() * 0.4);
    assertThat(r.has("floor")).isFalse();
  }

  @Test
  void theHillHideInFeetAndInches() throws IOException {
    JsonNode r = results("hill-hide");
    double inch = 0.0254;
    checkPyramid(r.at("/frame/measures"), 6, (7 * 12 + 8.5) * inch, (8 * 12 + 6.5) * inch);
    check(r.at("/frame/measures"), "openingSide_m", 15.75 * inch);
    assertThat(r.at("/survey/blunders")).isEmpty();
    assertThat(r.at("/survey/readings").size()).isEqualTo(50);
    // 6 corners at the base, 6 at the opening, 3 coordinates each, less 6 free motions.
    int unknowns = 12 * 3 - 6;
    assertThat(r.at("/survey/degreesOfFreedom").asInt())
        .isGreaterThanOrEqualTo(50 - unknowns - 2)
        .isLessThanOrEqualTo(50 - unknowns + 2);
  }

  @Test
  void thePlantedBlunderIsNamedAndNoOther() throws IOException {
    JsonNode blunders = results("hill-hide-blunder").at("/survey/blunders");
    assertThat(blunders.size()).isEqualTo(1);
    assertThat(blunders.get(0).get("number").asInt()).isEqualTo(9);
    // 9 ft 5 in was written as 5 ft 9 in: 3 ft 8 in too short.
    assertThat(blunders.get(0).get("error_m").asDouble()).isCloseTo(-44 * 0.0254, within(0.012));
  }

  @Test
  void theSeedLoftsFloor() throws IOException {
    JsonNode floor = results("seed-loft").get("floor");
    double inradius = 1.6 / (2 * Math.tan(Math.PI / 12)) - 0.08;
    double area = 12 * inradius * inradius * Math.tan(Math.PI / 12) - Math.PI * 0.12 * 0.12 / 4;
    check(floor, "area_m2", area);
    check(floor, "thickness_m", 0.020 + 0.100 + 0.050 + 0.025);
    double[] thickness = {0.020, 0.100, 0.050, 0.025};
    for (int i = 0; i < thickness.length; i++) {
      check(floor.get("earth").get(i).get("compactedVolume_m3"), "likely", area * thickness[i]);
    }
    check(floor.get("earth").get(2).get("dryMass_kg"), "likely", area * 0.050 * 1850);
    check(floor.get("earth").get(3).get("dryMass_kg"), "likely", area * 0.025 * 1780);
    double sectors = 0;
    for (JsonNode sector : floor.get("sectors")) {
      sectors += sector.get("area_m2").asDouble();
    }
    // Sectors tile the floor: each leaves out its share of the post.
    assertThat(sectors).isCloseTo(area, within(1e-9));
  }

  /**
   * Loads of 12 min with two at the mixer, and hours for the loose volume and the area of each
   * layer: 2.3 and 0.15 tipped, 2.7 and 0.45 rammed, 2 and 0.8 trowelled.
   */
  @Test
  void theSeedLoftsHoursAndBarrowTrips() throws IOException {
    JsonNode floor = results("seed-loft").get("floor");
    double area = floor.get("area_m2").asDouble();
    JsonNode work = floor.get("work");
    double[] perVolume = {2.3, 2.3, 2.7, 2};
    double[] perArea = {0.15, 0.15, 0.45, 0.8};
    double[] leastVolume = {1.4, 1.4, 1.5, 1};
    double[] leastArea = {0.05, 0.05, 0.15, 0.4};
    double hours = 0;
    double least = 0;
    for (int i = 0; i < 4; i++) {
      JsonNode loose = floor.at("/earth/" + i + "/looseVolume_m3");
      hours += loose.get("likely").asDouble() * perVolume[i] + area * perArea[i];
      least += loose.get("low").asDouble() * leastVolume[i] + area * leastArea[i];
    }
    int trips = 0;
    for (JsonNode batch : floor.get("batches")) {
      hours += batch.at("/loads/likely").asDouble() * 12 * 2 / 60;
      least += batch.at("/loads/low").asDouble() * 12 * 8 / 11 * 2 / 60;
      // The barrow takes 85 l and 150 kg; buckets of 12 l tell the loose volume of a load.
      double litres = 0;
      for (JsonNode part : batch.get("parts")) {
        litres += 12 * part.get("buckets").asDouble();
      }
      double barrows = Math.max(litres / 85, batch.get("mass_kg").asDouble() / 150);
      trips += batch.at("/loads/likely").asInt() * (int) Math.ceil(barrows);
    }
    check(work.get("personHours_h"), "likely", hours);
    check(work.get("personHours_h"), "low", least);
    assertThat(work.get("layers").size()).isEqualTo(4);
    // Levelling and gravel are tipped as they come: six people share their laying.
    double levelling = floor.at("/earth/0/looseVolume_m3/likely").asDouble() * 2.3 + area * 0.15;
    check(work.at("/layers/0/clockHours_h"), "likely", levelling / 6);
    check(work.get("days_d"), "likely", work.at("/clockHours_h/likely").asDouble() / 7);
    assertThat(floor.at("/barrowTrips/2/trips").asInt() + floor.at("/barrowTrips/3/trips").asInt())
        .isEqualTo(trips);
    assertThat(floor.has("settlement")).isFalse();
  }

  @Test
  void theClayBanksSoftGround() throws IOException {
    JsonNode floor = results("clay-bank").get("floor");
    double pressure = 9.80665 * floor.at("/massPerArea_kgPerM2/likely").asDouble();
    check(floor.at("/settlement/squeeze_m"), "likely", 0.08 * 0.8e-6 * pressure);
    check(floor.at("/settlement/total_m"), "high", 0.08 * (2.0e-6 * pressure + 0.35));
    assertThat(floor.has("work")).isFalse();
  }

  @Test
  void aShutCoverKeepsTheSeedLoftWetLonger() throws IOException {
    JsonNode coat = results("seed-loft").at("/drying/1");
    JsonNode firm = coat.at("/milestones/0/likely_d");
    JsonNode shut = coat.at("/air/shutMilestones/0/likely_d");
    assertThat(firm.isNumber()).isTrue();
    assertThat(shut.isMissingNode() || shut.asDouble() > 2 * firm.asDouble()).isTrue();
    assertThat(coat.at("/air/shutHumidity").asDouble()).isGreaterThan(0.9);
    assertThat(coat.at("/air/changesPerDayToHold").asDouble())
        .isGreaterThan(2 * coat.at("/air/leastChangesPerDay").asDouble());
  }

  @Test
  void theSeedLoftsMixHasItsClay() throws IOException {
    JsonNode r = results("seed-loft");
    double soilClay = r.at("/soils/0/clayRatio/value").asDouble();
    double sand = r.at("/mixes/0/sandPerSoilDryMass").asDouble();
    // Clay-free sand: the clay of one part is shared by 1 + s parts; the band is 14 to 20 %.
    assertThat(soilClay / (1 + sand)).isCloseTo(0.17, within(1e-9));
  }

  @Test
  void theJoinOrderHandlesNoMoreThanJoiningPairs() throws IOException {
    JsonNode joining = results("class-model").get("joining");
    double least = joining.at("/order/handledMass_kg").asDouble();
    for (JsonNode other : joining.get("alternatives")) {
      assertThat(least).isLessThanOrEqualTo(other.get("handledMass_kg").asDouble() + 1e-12);
    }
    assertThat(joining.at("/order/steps").size()).isEqualTo(5);
  }
}
