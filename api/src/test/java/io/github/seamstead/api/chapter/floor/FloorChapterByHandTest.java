package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A floor of nine square metres whose layers, loads, orders and hours a pencil gives. */
class FloorChapterByHandTest {

  private static final double GRAVITY = 9.80665;

  private static Fixture planned() {
    return Fixture.of(EarthJob.TEXT, Chapter.FLOOR);
  }

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.FLOOR);
  }

  /** Volumes are area times thickness, masses volume times density, heaps mass over loose one. */
  @Test
  void layersAreAreaTimesThickness() {
    Fixture f = planned();
    near(f, "/floor/area_m2", 9);
    near(f, "/floor/thickness_m", 0.19);
    near(f, "/floor/earth/0/thickness_m", 0.02);
    near(f, "/floor/earth/0/compactedVolume_m3/likely", 0.18);
    near(f, "/floor/earth/1/compactedVolume_m3/likely", 0.9);
    near(f, "/floor/earth/2/dryMass_kg/likely", 0.45 * 1850);
    near(f, "/floor/earth/3/dryMass_kg/likely", 0.18 * 1780);
    near(
        f,
        "/floor/earth/0/looseVolume_m3/likely",
        f.number("/floor/earth/0/dryMass_kg/likely") / 1400);
    near(
        f,
        "/floor/earth/1/looseVolume_m3/likely",
        f.number("/floor/earth/1/dryMass_kg/likely") / 1500);
    // One bucket of soil, 1000 kg/m3, and one of sand, 1400 kg/m3: 5/12 and 7/12 of the mass.
    double parts = 5.0 / 12 / 1000 + 7.0 / 12 / 1400;
    near(f, "/floor/earth/2/looseVolume_m3/likely", 832.5 * parts);
    near(f, "/floor/earth/3/looseVolume_m3/likely", 320.4 * (0.99 * parts + 0.01 / 55));
    // Placed damp: 9 % and 18 % of water in pack and coat, the others as they lie.
    double placed =
        f.number("/floor/earth/0/dryMass_kg/likely") * 1.05
            + f.number("/floor/earth/1/dryMass_kg/likely") * 1.02
            + 832.5 * 1.09
            + 320.4 * 1.18;
    near(f, "/floor/massPerArea_kgPerM2/likely", placed / 9);
    assertThat(f.at("/floor/earth/2/layer").asText()).isEqualTo("pack");
    // Two strips of a two metre roll, lapped by 0.2 m, over 3.2 m with the upstands.
    near(f, "/floor/membranes/0/rolls", 1);
    near(f, "/floor/membranes/0/areaWithLaps_m2", 2 * 3.2 * 2);
    assertThat(f.at("/floor/finishes")).hasSize(2);
    for (int i = 0; i < 4; i++) {
      near(f, "/floor/sectors/" + i + "/area_m2", 2.25);
    }
    // The far side first, the door's last.
    near(f, "/floor/sectors/0/side", 1);
    near(f, "/floor/sectors/0/order", 4);
    near(f, "/floor/sectors/2/order", 1);
    assertThat(f.noughts("/floor")).isEqualTo(NOTHING);
  }

  /** What the fixture has none of: places to test the pack, a diary, and clay out of its band. */
  private static final Set<String> NOTHING =
      Set.of(
          "/advice",
          "/batches/excessWater_kg",
          // Straw has no price here, and soil is dug and not fetched.
          "/orders/lines/cost",
          "/orders/lines/trips",
          "/packs",
          "/rest",
          // Steps without numbers, and the top of the floor under its mark.
          "/steps/quantities",
          "/steps/quantities/value/high",
          "/steps/quantities/value/likely",
          "/steps/quantities/value/low");

  /** Three buckets of each in a drum of 60 l: 30 kg of soil and 42 kg of sand, dry. */
  @Test
  void loadsHoldTheirWater() {
    Fixture f = planned();
    near(f, "/floor/batches/0/loads/likely", 12);
    near(f, "/floor/batches/0/water_kg", 30 * (0.09 - 0.10) + 42 * (0.09 - 0.05));
    near(f, "/floor/batches/0/moisture", 0.09);
    near(f, "/floor/batches/0/mass_kg", 72 * 1.09);
    near(f, "/floor/batches/0/parts/0/buckets", 3);
    near(f, "/floor/batches/0/parts/0/moistMass_kg", 33);
    near(f, "/floor/batches/0/parts/1/moistMass_kg", 44.1);
    // A hundredth of the coat's load is straw, 12 % damp.
    double straw = 72 / 0.99 * 0.01;
    near(f, "/floor/batches/1/loads/likely", 5);
    near(f, "/floor/batches/1/water_kg", 30 * 0.08 + 42 * 0.13 + straw * 0.06);
    near(f, "/floor/batches/1/mass_kg", (72 + straw) * 1.18);
    near(f, "/floor/batches/1/parts/2/moistMass_kg", straw * 1.12);
    near(f, "/floor/straw/mass_kg", 5 * straw * 1.12);
    near(f, "/floor/barrowTrips/2/trips", 12);
    near(f, "/floor/barrowTrips/3/trips", 5);
    double sand = f.number("/floor/earth/0/dryMass_kg/likely");
    near(
        f,
        "/floor/barrowTrips/0/trips",
        Math.ceil(Math.max(sand / 1400 / 0.08, sand * 1.05 / 100)));
    assertThat(f.at("/floor/batchClay/0/mix").asText()).isEqualTo("pack");
    double clay = f.number("/soils/0/clayRatio/value") * 5 / 12;
    near(f, "/floor/batchClay/0/wanted", clay);
    near(f, "/floor/batchClay/0/batched", clay);
    // 11.56 loads on four sides: an edge waits for three quarters of them, twelve minutes each.
    near(f, "/floor/joints/0/longestWait_s", 832.5 / 72 * 0.75 * 720);
    // Half an hour to two hours where the weather does not tell.
    near(f, "/floor/joints/0/openTime_s/low", 1800);
  }

  /** The need of all layers with a tenth in reserve, damp, in steps of 100 kg. */
  @Test
  void ordersAreTheNeedOfAllLayers() {
    Fixture f = planned();
    double sand = f.number("/floor/earth/0/dryMass_kg/likely") + 17 * 42;
    double gravel = f.number("/floor/earth/1/dryMass_kg/likely");
    near(f, "/floor/orders/lines/0/dryNeed_kg/likely", sand);
    double sandOrder = 100 * Math.ceil(sand * 1.1 * 1.05 / 100);
    near(f, "/floor/orders/lines/0/ordered_kg", sandOrder);
    near(f, "/floor/orders/lines/0/looseVolume_m3", sandOrder / 1.05 / 1400);
    near(f, "/floor/orders/lines/0/cost", sandOrder / 1000 * 20);
    double gravelOrder = 100 * Math.ceil(gravel * 1.1 * 1.02 / 100);
    near(f, "/floor/orders/lines/1/ordered_kg", gravelOrder);
    near(f, "/floor/orders/lines/1/cost", gravelOrder / 1000 * 30);
    // A twentieth of the soil is stones that the sieve keeps back.
    near(f, "/floor/orders/lines/2/dryNeed_kg/likely", 17 * 30);
    near(f, "/floor/orders/lines/2/ordered_kg", 100 * Math.ceil(510 * 1.1 / 0.95 * 1.1 / 100));
    near(f, "/floor/orders/lines/2/cost", 7);
    near(f, "/floor/orders/lines/2/trips", 0);
    near(f, "/floor/orders/cost", (sandOrder * 20 + gravelOrder * 30) / 1000 + 7);
    int trips = 0;
    for (int i = 0; i < 4; i++) {
      trips += f.at("/floor/orders/lines/" + i + "/trips").asInt();
    }
    near(f, "/floor/orders/trips", trips);
    assertThat(f.at("/floor/orders/lines/3/material").asText()).isEqualTo("chopped straw");
    // 0.5 m3 and 700 kg: damp sand weighs 1470 kg/m3 and fills it to 700 kg.
    near(f, "/floor/orders/lines/0/trips", Math.ceil(sandOrder / 700));
  }

  /** Work of three people, eight hours a day; ten centimetres of turf sink under the weight. */
  @Test
  void hoursAndSettlementAreTheirSums() {
    Fixture f = planned();
    double hours = 0;
    double clock = 0;
    for (int i = 0; i < 4; i++) {
      hours += f.number("/floor/work/layers/" + i + "/personHours_h/likely");
      clock += f.number("/floor/work/layers/" + i + "/clockHours_h/likely");
    }
    near(f, "/floor/work/personHours_h/likely", hours);
    near(f, "/floor/work/clockHours_h/likely", clock);
    near(f, "/floor/work/days_d/likely", clock / 8);
    // Twelve loads of twelve minutes by two; 2.7 h to a cubic metre and 0.45 h to a square metre.
    double pack =
        12 * 12 * 2 / 60.0 + 2.7 * f.number("/floor/earth/2/looseVolume_m3/likely") + 0.45 * 9;
    near(f, "/floor/work/layers/2/personHours_h/likely", pack);
    near(f, "/floor/work/layers/2/clockHours_h/likely", pack / 3);
    double mass = f.number("/floor/massPerArea_kgPerM2/likely");
    near(f, "/floor/settlement/squeeze_m/likely", 0.1 * 0.8e-6 * mass * GRAVITY);
    near(f, "/floor/settlement/decay_m/likely", 0.012);
    near(
        f,
        "/floor/settlement/total_m/likely",
        0.012 + f.number("/floor/settlement/squeeze_m/likely"));
    assertThat(f.worked("materials.floor"))
        .containsExactly(
            "materials.floor.area",
            "materials.floor.batch-clay",
            "materials.floor.batch-water",
            "materials.floor.batches",
            "materials.floor.batches-doubt",
            "materials.floor.dig",
            "materials.floor.loose-volume",
            "materials.floor.loose-volume-doubt",
            "materials.floor.order",
            "materials.floor.regular-area",
            "materials.floor.settlement",
            "materials.floor.settlement-doubt",
            "materials.floor.trips",
            "materials.floor.work",
            "materials.floor.work-doubt");
    assertThat(f.worked("materials.water.sat")).isNotEmpty();
    assertThat(f.worked("materials.mix.straw")).isNotEmpty();
    // Lifting, lime or dust, machines, the trailer and soft ground.
    assertThat(f.cautions(Chapter.FLOOR))
        .anyMatch(c -> c.contains("drum"))
        .anyMatch(c -> c.contains("trailer"))
        .anyMatch(c -> c.contains("ground"));
    assertThat(f.assumed())
        .contains(
            "$.site.crew: beginners",
            "$.floor.doorFace: 1",
            "$.floor.mixes[1].fibre: 1 %",
            "$.floor.shortestOpenTime: 30 min to 2 h");
    assertThat(f.assumed()).noneMatch(a -> a.contains("mixes[0]"));
  }

  @Test
  void thePageTellsAllOfIt() {
    Fixture f = planned();
    List<String> page = f.read(Chapter.FLOOR);
    assertThat(page)
        .contains(
            "Floor area 9.00 m² inside the edging.",
            "Earth layers, from the ground up",
            "At the mixer: pack",
            "Mix 12 (11 to 13) loads",
            "3 buckets pit (33 kg)",
            "3 buckets sand (44 kg)",
            "1.4 l water",
            "Loads by sector, in the order of laying: pack",
            "Hours of the crew",
            "Barrow trips to the floor",
            "pack | 12",
            "coat | 5",
            "How far it may sink",
            "Soft ground under the floor",
            "What to order",
            "Loose material",
            "Sheet and coats",
            "The work, step by step");
    assertThat(page).anyMatch(line -> line.startsWith("The floor in section"));
    assertThat(page).anyMatch(line -> line.startsWith("Sectors of the floor in the order"));
    assertThat(page).anyMatch(line -> line.startsWith("sheet | 1 roll, 12.80 m²"));
    assertThat(page).anyMatch(line -> line.startsWith("Of the straw, chopped: "));
    assertThat(page).anyMatch(line -> line.startsWith("By the plan: "));
    assertThat(page).anyMatch(line -> line.startsWith("Tools: "));
    assertThat(page).anyMatch(line -> line.startsWith("Done when: "));
    assertThat(page).anyMatch(line -> line.startsWith("If left out: "));
    assertThat(page).anyMatch(line -> line.startsWith("An open edge of pack stays wet enough"));
    assertThat(page).anyMatch(line -> line.startsWith("pack: an open edge waits up to 100 min"));
    assertThat(page).anyMatch(line -> line.startsWith("Rounded to buckets a load has"));
    assertThat(page).contains("A bucket is to the brim, struck level, and not shaken down.");
    assertThat(f.lists().get("shopping-list.csv"))
        .contains("pit,700,kg,7.00")
        .contains("sheet,1,roll,");
    assertThat(f.book().drawings()).containsKeys("floor-section", "floor-sectors");
  }

  @Test
  void withoutPlantAndCrewItIsTroddenOnATarpaulin() {
    String text = EarthJob.with(", \"crew\": {\"people\": 3, \"hoursPerDay\": \"8 h\"}", "");
    int from = text.indexOf(" \"plant\":");
    int until = text.indexOf(" \"weather\":");
    Fixture f = Fixture.of(text.substring(0, from) + text.substring(until), Chapter.FLOOR);
    // Three buckets and a tarpaulin of 40 l: two of each.
    near(f, "/floor/batches/0/parts/0/buckets", 2);
    near(f, "/floor/batches/0/loads/likely", Math.ceil(832.5 / 48));
    assertThat(f.at("/floor/work").isMissingNode()).isTrue();
    assertThat(f.at("/floor/barrowTrips")).isEmpty();
    assertThat(f.skipped(Chapter.FLOOR)).anyMatch(s -> s.contains("no crew"));
    assertThat(f.assumed())
        .contains("$.plant.bucket: 10 l", "$.plant.mixer: heaps of 40 l on a tarpaulin");
    assertThat(f.cautions(Chapter.FLOOR)).noneMatch(c -> c.contains("drum"));
    assertThat(f.read(Chapter.FLOOR))
        .contains("On the tarpaulin: pack")
        .anyMatch(line -> line.startsWith("Roll the heap over"));
    // A heap takes sixteen minutes; an edge waits for three sides of four.
    near(f, "/floor/joints/0/longestWait_s", 832.5 / 48 * 0.75 * 960);
  }

  @Test
  void vesselsWithoutALimitHoldTheDensestMix() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                EarthJob.with(", \"massLimit\": \"120 kg\"", ""), ", \"payload\": \"100 kg\"", ""),
            Chapter.FLOOR);
    assertThat(f.assumed())
        .contains("$.plant.mixer.massLimit: 132 kg", "$.plant.barrow.payload: 176 kg");
    near(f, "/floor/batches/0/loads/likely", 12);
  }

  @Test
  void wetPartsAreDriedFirst() {
    Fixture f = planned("\"moisture\": \"10 %\"", "\"moisture\": \"25 %\"");
    // The wet soil weighs 880 kg/m3 dry: 880/2280 of 25 % and 1400/2280 of 5 % are 12.7 %.
    assertThat(f.unmet(Chapter.FLOOR))
        .singleElement()
        .asString()
        .contains("pack: the parts as they lie bring 12.7 % of water, and 9.0 % is wanted")
        .contains("dry pit to 15.4 % first");
    near(f, "/floor/batches/0/water_kg", 0);
    assertThat(f.number("/floor/batches/0/excessWater_kg")).isPositive();
    assertThat(f.number("/floor/batches/0/moisture"))
        .isCloseTo((880 * 0.25 + 1400 * 0.05) / 2280, within(1e-9));
    assertThat(f.read(Chapter.FLOOR))
        .anyMatch(line -> line.startsWith("no water: the parts bring "))
        .anyMatch(
            line ->
                line.startsWith(
                    "Better: dry pit to 15 % of water first. As it is, the mix has 13 %"));
  }

  /** A ring of 10 cm all round leaves 2.8 m, and a post of 0.4 m takes its circle out of it. */
  @Test
  void edgingAndPostsAreTakenOff() {
    Fixture f =
        planned(
            "\"edging\": \"0 mm\"",
            "\"edging\": \"100 mm\", \"gaps\": [{\"x\": 0, \"y\": 0, \"diameter\": \"400 mm\"}]");
    assertThat(f.number("/floor/area_m2")).isCloseTo(2.8 * 2.8 - Math.PI * 0.04, within(1e-3));
  }

  @Test
  void doorsAreFoundOnAnyOutline() {
    String outline = "\"outline\": {\"sides\": 4, \"side\": \"3 m\"}";
    String door = ", \"doorFace\": 2";
    Fixture square = planned(outline, outline + door);
    near(square, "/floor/sectors/1/order", 4);
    near(square, "/floor/sectors/3/order", 1);
    String corners =
        "\"outline\": {\"corners\": [{\"x\": 0, \"y\": 0}, {\"x\": 3, \"y\": 0}, {\"x\": 3, \"y\":"
            + " 3}, {\"x\": 0, \"y\": 3}]}";
    near(planned(outline, corners + door), "/floor/sectors/1/order", 4);
    // The same square written clockwise: its second edge is the upper one of both.
    String clockwise =
        "\"outline\": {\"corners\": [{\"x\": 0, \"y\": 0}, {\"x\": 0, \"y\": 3}, {\"x\": 3, \"y\":"
            + " 3}, {\"x\": 3, \"y\": 0}]}";
    Fixture turned = planned(outline, clockwise + door);
    int last = 0;
    for (int i = 0; i < 4; i++) {
      if (turned.at("/floor/sectors/" + i + "/order").asInt() == 4) {
        last = turned.at("/floor/sectors/" + i + "/side").asInt();
      }
    }
    var sector = turned.plan().floor().orElseThrow().sectors().sectors().get(last - 1);
    assertThat(sector.outline().centroid().getY()).isGreaterThan(1.5);
    Fixture round = planned(outline, "\"outline\": {\"diameter\": \"3 m\"}");
    assertThat(round.number("/floor/area_m2")).isCloseTo(Math.PI * 2.25, within(1e-9));
  }

  @Test
  void withoutAnOutlineThereIsNoFloor() {
    assertThatThrownBy(() -> planned("\"outline\": {\"sides\": 4, \"side\": \"3 m\"},", ""))
        .hasMessageContaining("given no outline of the floor, and no frame over it");
  }
}
