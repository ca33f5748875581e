package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A floor of nine square metres of which a diary says what is laid and what came. */
class FloorRestByHandTest {

  private static final String COAT =
      "{\"kind\": \"earthCoat\", \"name\": \"coat\", \"thickness\": \"20 mm\", \"mix\": \"coat\"},";

  private static Fixture planned(String text, String... lines) {
    return Fixture.of(
        JobPlanner.plan(
            JobReader.parse(text),
            SmallJob.diary(String.join(", ", lines)),
            Fixture.options(Chapter.FLOOR)));
  }

  private static String laid(String layer) {
    return "{\"date\": \"2027-05-04\", \"laid\": {\"layer\": \"" + layer + "\"}}";
  }

  private static String sector(int day, String layer, int sector) {
    return "{\"date\": \"2027-05-%02d\", \"laid\": {\"layer\": \"%s\", \"sector\": %d}}"
        .formatted(day, layer, sector);
  }

  private static String delivered(int day, String material, int kilograms) {
    return "{\"date\": \"2027-05-%02d\", \"delivered\": {\"material\": \"%s\", \"mass\": \"%d kg\"}}"
        .formatted(day, material, kilograms);
  }

  private static double ordered(Fixture f, String material) {
    for (JsonNode line : f.at("/floor/orders/lines")) {
      if (line.at("/material").asText().equals(material)) {
        return line.at("/ordered_kg").asDouble();
      }
    }
    throw new AssertionError("no order of " + material);
  }

  /**
   * Seventeen loads take 42 kg of dry sand each, thirteen are left when a half of the pack is laid
   * and eight of its loads are open: what the levelling and the four loads took of the 900 kg that
   * came is gone, damp by a twentieth.
   */
  @Test
  void whatCameAndIsNotLaidIsNotOrderedAgain() {
    Fixture f =
        planned(
            EarthJob.TEXT,
            delivered(3, "sand", 500),
            laid("levelling"),
            laid("capillaryBreak"),
            laid("sheet"),
            sector(5, "pack", 1),
            sector(5, "pack", 2),
            delivered(6, "sand", 400));
    near(f, "/floor/rest/3/laid_ratio", 0.5);
    // 11.56 loads of which a half is 5.78: six are left, and five of the coat.
    near(f, "/floor/rest/3/loadsLeft/likely", 6);
    double levelling = f.number("/floor/earth/0/dryMass_kg/likely");
    double whole = (levelling + 17 * 42) * 1.05;
    double rest = 11 * 42 * 1.05;
    double onSite = 900 - (whole - rest);
    assertThat(onSite).isPositive();
    double order = 100 * Math.ceil(rest * 1.1 / 100);
    assertThat(ordered(f, "sand")).isEqualTo(100 * Math.ceil((order - onSite) / 100));
    // The order without what came would be two steps more.
    assertThat(ordered(f, "sand")).isLessThan(order);
    // No soil came: what is left to mix is ordered whole, 30 kg of dry soil a load with stones.
    assertThat(ordered(f, "pit")).isEqualTo(100 * Math.ceil(11 * 30 * 1.1 / 0.95 * 1.1 / 100));
    assertThat(ordered(f, "gravel")).isZero();
    List<String> page = f.read(Chapter.FLOOR);
    assertThat(page)
        .contains("For what is not laid yet, less what came and lies ready.")
        .noneMatch(line -> line.startsWith("sheet | 1 roll"))
        .anyMatch(line -> line.startsWith("linseed oil | "));
    assertThat(f.lists().get("shopping-list.csv"))
        .doesNotContain("sheet,")
        .contains("linseed oil,")
        .contains("wax,");
    // Straw of the five loads of the coat.
    near(f, "/floor/straw/mass_kg", 5 * 72 / 0.99 * 0.01 * 1.12);
    var floor = f.plan().floor().orElseThrow();
    var layers = floor.buildUp().layers();
    assertThat(layers.stream().map(floor::isLaid).toList())
        .containsExactly(true, true, true, false, false, false, false);
    assertThat(floor.restOf(layers.get(3)).orElseThrow().layer()).isEqualTo("pack");
  }

  /** Half of the oiling is to be bought still, as long as a sector is open. */
  @Test
  void finishesAndSheetsAreBoughtUntilTheyAreLaid() {
    String[] below = {laid("levelling"), laid("capillaryBreak"), laid("sheet"), laid("pack")};
    Fixture f =
        planned(EarthJob.TEXT, below[0], below[1], sector(5, "sheet", 1), sector(6, "sheet", 2));
    assertThat(f.lists().get("shopping-list.csv")).contains("sheet,1,roll,");
    assertThat(f.at("/floor/rest/2/laidOn").isMissingNode()).isTrue();
    Fixture oiled =
        planned(
            EarthJob.TEXT,
            String.join(", ", below),
            laid("coat"),
            sector(8, "oil", 1),
            sector(8, "oil", 2),
            sector(9, "oil", 3),
            sector(10, "oil", 4));
    assertThat(oiled.lists().get("shopping-list.csv"))
        .doesNotContain("linseed oil,")
        .contains("wax,");
    // Laid in four parts, the last of them on the tenth.
    assertThat(oiled.at("/floor/rest/5/laidOn").asText()).isEqualTo("2027-05-10");
    assertThat(oiled.at("/floor/straw").isMissingNode()).isTrue();
    near(oiled, "/floor/work/personHours_h/likely", 0);
  }

  /** Loads are counted by the layer and the sector that they went into: 2.89 to a sector. */
  @Test
  void loadsAreCountedInTheirOwnSector() {
    // Face 2 is the door, so that the order of laying is not that of the sides.
    String square = "\"outline\": {\"sides\": 4, \"side\": \"3 m\"}";
    Fixture f =
        planned(
            EarthJob.with(square, square + ", \"doorFace\": 2"),
            laid("levelling"),
            laid("capillaryBreak"),
            laid("sheet"),
            "{\"date\": \"2027-05-05\", \"laid\": {\"layer\": \"pack\", \"sector\": 1}}",
            "{\"date\": \"2027-05-05\", \"laid\": {\"layer\": \"coat\", \"sector\": 1, \"loads\":"
                + " 0.5}}");
    double perSector = 320.4 / (72 / 0.99) / 4;
    near(f, "/floor/rest/4/laid_ratio", 0.5 / perSector / 4);
    assertThat(f.at("/floor/rest/4/sectorsLeft").toString()).isEqualTo("[1,2,3,4]");
    near(f, "/floor/rest/3/laid_ratio", 0.25);
    assertThat(f.at("/floor/rest/3/sectorsLeft").toString()).isEqualTo("[2,3,4]");
  }

  /** Of unequal sectors, a load is the same part of the whole layer in each of them. */
  @Test
  void aLoadIsAPartOfTheLayerInEverySector() {
    String outline =
        EarthJob.with(
            "\"outline\": {\"sides\": 4, \"side\": \"3 m\"}",
            "\"outline\": {\"corners\": [{\"x\": 0, \"y\": 0}, {\"x\": 4, \"y\": 0}, {\"x\": 4,"
                + " \"y\": 2}, {\"x\": 0, \"y\": 3.5}]}");
    for (int sector : new int[] {2, 4}) {
      Fixture f =
          planned(
              outline,
              laid("levelling"),
              laid("capillaryBreak"),
              laid("sheet"),
              "{\"date\": \"2027-05-05\", \"laid\": {\"layer\": \"pack\", \"sector\": %d,"
                      .formatted(sector)
                  + " \"loads\": 0.5}}");
      // Eleven square metres, 50 mm thick, of 1850 kg/m3 in loads of 72 kg, dry.
      near(f, "/floor/rest/3/laid_ratio", 0.5 / (11 * 0.05 * 1850 / 72));
    }
  }

  /** Two equal coats: the diary calls the second by a 2, and it is not laid with the first. */
  @Test
  void twoEqualLayersAreTwo() {
    String twice = EarthJob.with(COAT, COAT + "\n" + COAT);
    Fixture f =
        planned(
            twice,
            laid("levelling"),
            laid("capillaryBreak"),
            laid("sheet"),
            laid("pack"),
            laid("coat"));
    assertThat(f.at("/floor/earth").findValuesAsText("layer"))
        .containsExactly("levelling", "capillary break", "pack", "coat", "coat 2");
    assertThat(f.at("/floor/rest").findValuesAsText("layer"))
        .containsExactly(
            "levelling", "capillaryBreak", "sheet", "pack", "coat", "coat 2", "oil", "wax");
    near(f, "/floor/rest/4/laid_ratio", 1);
    near(f, "/floor/rest/5/laid_ratio", 0);
    near(f, "/floor/rest/5/loadsLeft/likely", 5);
    // Five loads of 42 kg of dry sand, damp by a twentieth, with a tenth in reserve.
    assertThat(ordered(f, "sand")).isEqualTo(100 * Math.ceil(5 * 42 * 1.05 * 1.1 / 100));
    String sheet = "{\"kind\": \"membrane\", \"name\": \"sheet\", \"rollWidth\": \"2 m\",";
    String oil = "{\"kind\": \"oil\"}, ";
    Fixture whole =
        Fixture.of(
            EarthJob.with(
                EarthJob.with(oil, oil + oil),
                sheet,
                "{\"kind\": \"membrane\", \"name\": \"sheet\", \"rollWidth\": \"4 m\","
                    + " \"rollLength\": \"10 m\", \"lap\": \"200 mm\", \"upstand\": \"100 mm\"},"
                    + sheet),
            Chapter.FLOOR);
    assertThat(whole.at("/floor/membranes").findValuesAsText("layer"))
        .containsExactly("sheet", "sheet 2");
    near(whole, "/floor/membranes/0/areaWithLaps_m2", 3.2 * 4);
    near(whole, "/floor/membranes/1/areaWithLaps_m2", 2 * 3.2 * 2);
    assertThat(whole.at("/floor/finishes").findValuesAsText("layer"))
        .containsExactly("linseed oil", "linseed oil 2", "wax");
    near(
        whole,
        "/floor/finishes/1/volume_L/likely",
        whole.number("/floor/finishes/0/volume_L/likely"));
  }
}
