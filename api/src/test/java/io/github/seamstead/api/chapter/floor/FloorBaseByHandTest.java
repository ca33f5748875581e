package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.materials.floor.Sector;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** What a floor covers, and that the sector at the door is laid last. */
class FloorBaseByHandTest {

  private static final String OUTLINE = "\"outline\": {\"sides\": 4, \"side\": \"3 m\"}";

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.FLOOR);
  }

  /** The sector that is laid last. */
  private static Sector last(Fixture f) {
    return f.plan().floor().orElseThrow().sectors().sectors().stream()
        .max(Comparator.comparingInt(Sector::order))
        .orElseThrow();
  }

  private static boolean holds(Sector sector, double x, double y) {
    return sector.outline().vertices().stream().anyMatch(v -> v.distance(Vector2D.of(x, y)) < 1e-6);
  }

  /** Without an outline the floor is the base of the frame: six triangles of sqrt(3) m². */
  @Test
  void theBaseOfTheFrameIsTheFloor() {
    String frame =
        "\"frame\": {\"sides\": 6, \"measures\": {\"baseSide\": \"2 m\", \"height\": \"2 m\"}},";
    String text = EarthJob.with(OUTLINE + ",", "");
    Fixture f = Fixture.of(EarthJob.with(text, " \"floor\": {", frame + " \"floor\": {"));
    near(f, "/floor/area_m2", 6 * Math.sqrt(3));
    assertThat(f.at("/floor/sectors")).hasSize(6);
    assertThat(f.assumed()).contains("$.floor.doorFace: 1");
    near(f, "/floor/sectors/0/order", 6);
    String cover =
        "\"cover\": {\"fabric\": {\"massPerArea\": \"500 g/m2\"}, \"seam\": {\"kind\": \"fin\","
            + " \"allowance\": \"40 mm\"}, \"hem\": {\"kind\": \"raw\"}, \"door\": {\"id\": \"d\","
            + " \"face\": 3, \"outline\": [{\"x\": \"0.8 m\", \"y\": \"0.3 m\"}, {\"x\": \"1.2 m\","
            + " \"y\": \"0.3 m\"}, {\"x\": \"1.2 m\", \"y\": \"1 m\"}, {\"x\": \"0.8 m\", \"y\":"
            + " \"1 m\"}]}},";
    Fixture door =
        Fixture.of(
            EarthJob.with(text, " \"floor\": {", frame + cover + " \"floor\": {"), Chapter.FLOOR);
    near(door, "/floor/sectors/2/order", 6);
    assertThat(door.assumed()).noneMatch(a -> a.startsWith("$.floor.doorFace"));
    // An outline has sides of its own: the door of the cover is not one of them.
    Fixture own =
        Fixture.of(
            EarthJob.with(EarthJob.TEXT, " \"floor\": {", frame + cover + " \"floor\": {"),
            Chapter.FLOOR);
    near(own, "/floor/area_m2", 9);
    near(own, "/floor/sectors/0/order", 4);
    assertThat(own.assumed()).contains("$.floor.doorFace: 1");
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }

  /** A taped base of corners that are not square: face 1 stands between the last and the first. */
  @Test
  void theTapedBaseIsTheFloor() {
    double[][] at = {{2, -2, 0}, {2.6, 2, 0}, {-2, 2.2, 0}, {-2, -2, 0}, {0, 0, 3}};
    String[] names = {"B1", "B2", "B3", "B4", "A"};
    StringBuilder distances = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      for (int k = i + 1; k < 5; k++) {
        distances
            .append(distances.isEmpty() ? "" : ", ")
            .append(
                "{\"from\": \"%s\", \"to\": \"%s\", \"distance\": %s}"
                    .formatted(names[i], names[k], distance(at[i], at[k])));
      }
    }
    String heights =
        "{\"from\": \"B1\", \"to\": \"B2\", \"rise\": 0}, {\"from\": \"B2\", \"to\": \"B3\","
            + " \"rise\": 0}, {\"from\": \"B3\", \"to\": \"B4\", \"rise\": 0}";
    String frame =
        "\"frame\": {\"sides\": 4, \"survey\": {\"distances\": ["
            + distances
            + "], \"heights\": ["
            + heights
            + "], \"uncertainty\": \"2 mm\", \"tolerance\": \"500 mm\"}}, \"floor\": {";
    String text = EarthJob.with(OUTLINE + ",", "\"doorFace\": 2,");
    Fixture f = Fixture.of(EarthJob.with(text, "\"floor\": {", frame), Chapter.FLOOR);
    double twice = 0;
    for (int i = 0; i < 4; i++) {
      double[] a = at[i];
      double[] b = at[(i + 1) % 4];
      twice += a[0] * b[1] - b[0] * a[1];
    }
    assertThat(f.number("/floor/area_m2")).isCloseTo(twice / 2, within(1e-5));
    assertThat(f.at("/floor/sectors")).hasSize(4);
    // Each side is as long as it was taped, from that before the first corner on.
    List<Sector> sectors = f.plan().floor().orElseThrow().sectors().sectors();
    for (Sector sector : sectors) {
      double[] from = at[(sector.number() + 2) % 4];
      double[] to = at[sector.number() - 1];
      List<Vector2D> corners = sector.outline().vertices();
      assertThat(corners.get(1).distance(corners.get(2)))
          .as("side %d", sector.number())
          .isCloseTo(distance(from, to), within(1e-4));
    }
    assertThat(last(f).number()).isEqualTo(2);
  }

  /** Sixteen places round a circle of 3 m, counter-clockwise from the reader's side. */
  @Test
  void theDoorOfARoundRoomIsOneOfSixteen() {
    int[] doors = {1, 5, 9, 13};
    double[][] ways = {{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
    for (int i = 0; i < doors.length; i++) {
      Fixture f =
          planned(OUTLINE, "\"outline\": {\"diameter\": \"3 m\"}, \"doorFace\": " + doors[i]);
      Vector2D middle = last(f).outline().centroid();
      double along = middle.getX() * ways[i][0] + middle.getY() * ways[i][1];
      assertThat(along / middle.norm()).as("door %d", doors[i]).isGreaterThan(0.9);
    }
  }

  /** A triangle written clockwise: its first side is that at x = 0, its third that at y = 0. */
  @Test
  void theSidesOfCornersAreCountedAsWritten() {
    String clockwise =
        "\"outline\": {\"corners\": [{\"x\": 0, \"y\": 0}, {\"x\": 0, \"y\": 3}, {\"x\": 4, \"y\":"
            + " 0}]}, \"doorFace\": ";
    Sector first = last(planned(OUTLINE, clockwise + 1));
    assertThat(holds(first, 0, 0) && holds(first, 0, 3)).isTrue();
    Sector second = last(planned(OUTLINE, clockwise + 2));
    assertThat(holds(second, 0, 3) && holds(second, 4, 0)).isTrue();
    Sector third = last(planned(OUTLINE, clockwise + 3));
    assertThat(holds(third, 4, 0) && holds(third, 0, 0)).isTrue();
    String counter =
        "\"outline\": {\"corners\": [{\"x\": 0, \"y\": 0}, {\"x\": 4, \"y\": 0}, {\"x\": 0, \"y\":"
            + " 3}]}, \"doorFace\": 3";
    Sector turned = last(planned(OUTLINE, counter));
    assertThat(holds(turned, 0, 0) && holds(turned, 0, 3)).isTrue();
  }

  @Test
  void whatCannotBePlannedIsSaid() {
    Fixture none =
        Fixture.of(
            "{\"seamstead\": 1, \"frame\": {\"sides\": 4, \"measures\": {\"baseSide\": \"4 m\","
                + " \"height\": \"3 m\"}}}",
            Chapter.FLOOR);
    assertThat(none.skipped(Chapter.FLOOR)).containsExactly("the document has no floor");
    // Salts make the soil unfit: both mixes are missing, and each is named once.
    Fixture unfit =
        planned(
            "\"sand\": \"28 %\"}",
            "\"sand\": \"28 %\", \"organicMatter\": \"12 %\", \"solubleSalts\": \"4 %\"}");
    assertThat(unfit.skipped(Chapter.FLOOR))
        .containsExactly("no loads and no orders: there is no mix yet for pack, coat");
    assertThat(unfit.at("/floor").isMissingNode()).isTrue();
    // One of two: a soil that is fit, and one that is not.
    String other =
        "{\"id\": \"bog\", \"laboratory\": {\"clay\": \"42 %\", \"silt\": \"30 %\", \"sand\": \"28"
            + " %\", \"organicMatter\": \"12 %\"}}, {\"id\": \"pit\"";
    Fixture one =
        Fixture.of(
            EarthJob.with(
                EarthJob.with("{\"id\": \"pit\"", other),
                "{\"id\": \"coat\", \"soil\": \"pit\"",
                "{\"id\": \"coat\", \"soil\": \"bog\""),
            Chapter.FLOOR);
    assertThat(one.skipped(Chapter.FLOOR))
        .containsExactly("no loads and no orders: there is no mix yet for coat");
  }

  /** Gravel, sand and wax alone: nothing is mixed, so that nothing turns in a drum. */
  @Test
  void aFloorOfLooseMaterialMixesNothing() {
    String text = EarthJob.TEXT;
    int from = text.indexOf("{\"kind\": \"membrane\"");
    int until = text.indexOf("\"reserve\"");
    int weather = text.indexOf(",\n \"weather\":");
    String loose =
        text.substring(0, from).strip().replaceAll(",$", "")
            + "], "
            + text.substring(until, weather)
            + "}";
    Fixture f = Fixture.of(loose, Chapter.FLOOR);
    assertThat(f.at("/floor/batches")).isEmpty();
    assertThat(f.at("/floor/earth")).hasSize(2);
    assertThat(f.cautions(Chapter.FLOOR))
        .noneMatch(c -> c.contains("drum"))
        .noneMatch(c -> c.contains("Rags"))
        .noneMatch(c -> c.contains("A full bucket"));
    assertThat(f.worked("materials.water.saturation")).isEmpty();
    int plant = loose.indexOf(" \"plant\":");
    Fixture bare =
        Fixture.of(loose.substring(0, plant).strip().replaceAll(",$", "") + "}", Chapter.FLOOR);
    assertThat(bare.assumed()).noneMatch(a -> a.startsWith("$.plant"));
    assertThat(bare.worked("materials.floor.trips")).isEmpty();
    near(bare, "/floor/orders/trips", 0);
  }

  /** A bucket of 20 l of damp sand: 29.4 kg, over the guide weight of 25 kg. */
  @Test
  void bucketsAndOilHaveTheirCautions() {
    Fixture f = planned("\"bucket\": \"10 l\"", "\"bucket\": \"20 l\"");
    assertThat(f.cautions(Chapter.FLOOR))
        .anyMatch(c -> c.startsWith("A full bucket is about 29.4 kg"))
        .anyMatch(c -> c.startsWith("Rags with drying oil"));
    assertThat(
            planned("{\"kind\": \"oil\"}, {\"kind\": \"wax\"}", "{\"kind\": \"oil\"}")
                .cautions(Chapter.FLOOR))
        .anyMatch(c -> c.startsWith("A full bucket is about 14.7 kg"));
  }
}
