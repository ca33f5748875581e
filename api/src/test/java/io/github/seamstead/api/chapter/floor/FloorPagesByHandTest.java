package io.github.seamstead.api.chapter.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page, the list and the drawings of a floor of nine square metres: the numbers they show. */
class FloorPagesByHandTest {

  private static final Pattern PATH = Pattern.compile("<path d=\"M([^\"Z]*)Z?\"");
  private static final Pattern TEXT =
      Pattern.compile("<text transform=\"translate\\(([-0-9.]+) ([-0-9.]+)\\)[^>]*>([^<]*)<");

  private static Fixture planned() {
    return Fixture.of(EarthJob.TEXT, Chapter.FLOOR);
  }

  private static String fixed(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  /** Two figures, as hours are written. */
  private static String rough(double value) {
    return new BigDecimal(value).round(new MathContext(2)).stripTrailingZeros().toPlainString();
  }

  private static String hours(Fixture f, String pointer, String unit) {
    return rough(f.number(pointer + "/likely"))
        + unit
        + " ("
        + rough(f.number(pointer + "/low"))
        + unit
        + " to "
        + rough(f.number(pointer + "/high"))
        + unit
        + ")";
  }

  @Test
  void hoursAreThoseOfTheResults() {
    Fixture f = planned();
    List<String> page = f.read(Chapter.FLOOR);
    String[] layers = {"levelling", "capillary break", "pack", "coat"};
    for (int i = 0; i < 4; i++) {
      String layer = "/floor/work/layers/" + i;
      assertThat(page)
          .contains(
              layers[i]
                  + " | "
                  + hours(f, layer + "/personHours_h", " h")
                  + " | "
                  + hours(f, layer + "/clockHours_h", " h"));
    }
    assertThat(page)
        .contains(
            "all earth layers | "
                + hours(f, "/floor/work/personHours_h", " h")
                + " | "
                + hours(f, "/floor/work/clockHours_h", " h"))
        .anyMatch(
            line ->
                line.startsWith(
                    "Working days, one layer after the other: "
                        + hours(f, "/floor/work/days_d", " d")
                        + ". A crew of beginners; "))
        .contains("A bound from the thickness stated, not an investigation of the ground.")
        .contains("strip turf and topsoil to subsoil before the first layer")
        .anyMatch(line -> line.startsWith("or load it and wait through a wet season"));
  }

  /** Nine square metres take 0.2 + 0.1 + 0.05 + 0.025 litres of oil each, give or take 40 %. */
  @Test
  void ordersAreThoseOfTheResults() {
    Fixture f = planned();
    List<String> page = f.read(Chapter.FLOOR);
    double oil = 9 * 0.375;
    assertThat(page)
        .contains(
            "linseed oil | "
                + fixed(oil, 1)
                + " l ("
                + fixed(oil * 0.6, 1)
                + " l to "
                + fixed(oil * 1.4, 1)
                + " l)")
        .anyMatch(
            line ->
                line.startsWith("sand | ")
                    && line.endsWith(" | " + (int) f.number("/floor/orders/lines/0/trips")))
        .anyMatch(line -> line.startsWith("pit | ") && line.endsWith(" | –"));
    // Enough for the thirstiest floor is bought.
    assertThat(f.lists().get("shopping-list.csv").lines())
        .contains("linseed oil," + fixed(oil * 1.4, 1) + ",l,")
        .contains("wax," + fixed(9 * 0.02 * 1.4, 1) + ",l,");
    double straw = 5 * 72 / 0.99 * 0.01 * 1.12;
    assertThat(page)
        .anyMatch(
            line ->
                line.startsWith("Of the straw, chopped: " + fixed(straw, 1) + " kg, loose ")
                    && line.endsWith(", or 1 bale."));
    // A coat of twenty times the straw fills more than a bale of 15 to 20 kg.
    Fixture more =
        Fixture.of(
            EarthJob.with(
                EarthJob.with("\"side\": \"3 m\"", "\"side\": \"9 m\""),
                "\"fibre\": true",
                "\"fibre\": true, \"straw\": \"2 %\""),
            Chapter.FLOOR);
    assertThat(more.read(Chapter.FLOOR))
        .anyMatch(
            line ->
                line.startsWith("Of the straw, chopped: ")
                    && line.matches(".*, or \\d+ \\(\\d+ to \\d+\\) bales with two strings\\."));
  }

  /** Clay of the soil by 5/12 of the mix; two sacks of figures on one line. */
  @Test
  void theCardStatesTheClayOfALoad() {
    Fixture f = planned();
    String clay = fixed(100 * f.number("/soils/0/clayRatio/value") * 5 / 12, 1) + " %";
    assertThat(f.read(Chapter.FLOOR))
        .contains(
            "Rounded to buckets a load has "
                + clay
                + " clay; "
                + clay
                + " is wanted, 14.0 % to 20.0 % is allowed.");
  }

  /** The coat has a band of its own, and at 20 % more water than its pores hold, 18.4 %. */
  @Test
  void eachLoadHasItsOwnBandAndItsWater() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                EarthJob.with(
                    "{\"id\": \"coat\",",
                    "{\"id\": \"coat\", \"leastClay\": \"10 %\", \"greatestClay\": \"25 %\","),
                "\"placingMoisture\": \"18 %\"",
                "\"placingMoisture\": \"20 %\""),
            Chapter.FLOOR);
    assertThat(f.read(Chapter.FLOOR))
        .anyMatch(line -> line.endsWith(" is wanted, 14.0 % to 20.0 % is allowed."))
        .anyMatch(line -> line.endsWith(" is wanted, 10.0 % to 25.0 % is allowed."));
    double full = 1000 / 1780.0 - 1000 / 2650.0;
    String advice = f.at("/floor/advice/0").asText();
    assertThat(advice)
        .startsWith(
            "coat: laid at 20.0 % of water it is wetter than its density can hold ("
                + fixed(100 * full, 1)
                + " %)");
    assertThat(f.read(Chapter.FLOOR)).contains(advice);
  }

  /** In a drum of 30 l 1.3 parts of sand are measured as one and a half: too lean by 0.6 %. */
  @Test
  void aLoadThatIsRoundedOutOfItsBandIsRefused() {
    String text =
        EarthJob.with(
            EarthJob.with("\"sandParts\": 1,", "\"sandParts\": 1.3,"),
            "\"workingVolume\": \"60 l\"",
            "\"workingVolume\": \"30 l\"");
    Fixture f = Fixture.of(text, Chapter.FLOOR);
    double soil = f.number("/soils/0/clayRatio/value");
    // A bucket of soil is 10 kg, one of sand 14 kg, dry.
    double wanted = soil * 10 / (10 + 1.3 * 14);
    double batched = soil * 10 / (10 + 1.5 * 14);
    Fixture.near(f, "/floor/batchClay/0/wanted", wanted);
    Fixture.near(f, "/floor/batchClay/0/batched", batched);
    String start =
        "the load rounded to buckets has "
            + fixed(100 * batched, 1)
            + " % clay instead of "
            + fixed(100 * wanted, 1)
            + " %, outside 14.0 % to 20.0 %; measure in quarter buckets: ";
    assertThat(f.at("/floor/batchClay/0/refusal").asText()).startsWith(start).contains(" of 8 L: ");
    assertThat(f.unmet(Chapter.FLOOR))
        .hasSize(2)
        .anyMatch(u -> u.startsWith("pack: " + start) && u.contains("or with a bucket of 8 l: "))
        .anyMatch(u -> u.startsWith("coat: " + start));
    assertThat(f.read(Chapter.FLOOR))
        .anyMatch(line -> line.startsWith("Do not mix it so: " + start))
        .noneMatch(line -> line.startsWith("Rounded to buckets"));
    // Eight litres are 2.1 gallons of the United States (3.785 l).
    Fixture imperial =
        Fixture.of(
            EarthJob.with(text, "\"site\": {", "\"site\": {\"units\": \"imperial\", "),
            Chapter.FLOOR);
    assertThat(imperial.unmet(Chapter.FLOOR))
        .anyMatch(u -> u.contains("or with a bucket of 2.1 US gal: "));
  }

  /** The steps are numbered from one and say what the results say. */
  @Test
  void theStepsAreNumberedAndSayTheirNumbers() {
    Fixture f = planned();
    List<String> page = f.read(Chapter.FLOOR);
    var steps = f.plan().floor().orElseThrow().steps();
    int last = -1;
    for (int i = 0; i < steps.size(); i++) {
      int at = page.indexOf(i + 1 + ". " + steps.get(i).title());
      assertThat(at).as(steps.get(i).title()).isGreaterThan(last);
      assertThat(page.subList(at + 1, at + 1 + steps.get(i).work().size()))
          .containsExactlyElementsOf(
              steps.get(i).work().stream().map(s -> s.replace('\u00a0', ' ')).toList());
      last = at;
    }
    // A hole of 9 m² and 190 mm; a rail from the middle to the edge; four sectors.
    assertThat(page)
        .contains(
            "depth | 190 mm",
            "volume in the ground | 1.71 m³",
            "outline to drain | 12.000 m",
            "sheet with laps | 12.80 m²",
            "rolls | 1",
            "longest rail, centre to edge | 1.500 m",
            "sectors, in the order of laying | 4",
            "coat 1 | 1.8 l (1.1 l to 2.5 l)")
        .anyMatch(line -> line.startsWith("work of all hands | ") && line.contains(" h ("));
    assertThat(f.sums("materials.floor.dig"))
        .allSatisfy(value -> assertThat(value).isGreaterThan(1.7));
    assertThat(f.sums("materials.floor.regular-area"))
        .singleElement()
        .satisfies(area -> assertThat(area).isCloseTo(9, within(1e-9)));
    assertThat(f.sums("materials.water.saturation")).hasSize(2);
    // Soil is dug and not fetched: trips are worked for sand, gravel and straw.
    assertThat(f.sums("materials.floor.trips"))
        .containsExactly(
            f.number("/floor/orders/lines/0/trips"),
            f.number("/floor/orders/lines/1/trips"),
            f.number("/floor/orders/lines/3/trips"));
  }

  private static List<double[]> corners(String path) {
    List<double[]> corners = new ArrayList<>();
    for (String pair : path.split("L", -1)) {
      String[] xy = pair.strip().split(" ", -1);
      corners.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
    }
    return corners;
  }

  private static List<List<double[]>> paths(String drawing) {
    List<List<double[]>> paths = new ArrayList<>();
    Matcher matcher = PATH.matcher(drawing);
    while (matcher.find()) {
      if (!matcher.group(1).matches(".*[HVv].*")) {
        paths.add(corners(matcher.group(1)));
      }
    }
    return paths;
  }

  private static double[] place(String drawing, String text) {
    Matcher matcher = TEXT.matcher(drawing);
    while (matcher.find()) {
      if (matcher.group(3).replace('\u00a0', ' ').equals(text)) {
        return new double[] {
          Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))
        };
      }
    }
    throw new AssertionError("no text " + text);
  }

  /** Seven bands, each on the one below; gravel of 100 mm is twice the pack of 50 mm. */
  @Test
  void theSectionStacksTheLayers() {
    Fixture f = planned();
    String drawing = f.book().drawings().get("floor-section");
    assertThat(f.read(Chapter.FLOOR))
        .contains(
            "The floor in section. Not to scale. From the ground up: levelling 20 mm, capillary"
                + " break 100 mm, sheet, pack 50 mm, coat 20 mm, linseed oil, wax; together 190"
                + " mm.");
    List<List<double[]>> bands = paths(drawing);
    assertThat(bands).hasSize(7);
    String[] names = {
      "levelling, 20 mm",
      "capillary break, 100 mm",
      "sheet",
      "pack, 50 mm",
      "coat, 20 mm",
      "linseed oil",
      "wax"
    };
    double[] heights = new double[7];
    for (int i = 0; i < 7; i++) {
      double bottom = bands.get(i).get(0)[1];
      double top = bands.get(i).get(2)[1];
      heights[i] = bottom - top;
      assertThat(heights[i]).isPositive();
      if (i > 0) {
        assertThat(bottom).isCloseTo(bands.get(i - 1).get(2)[1], within(0.02));
      }
      double[] name = place(drawing, names[i]);
      assertThat(name[1]).isCloseTo((bottom + top) / 2, within(0.02));
    }
    assertThat(heights[1] / heights[3]).isCloseTo(2, within(0.01));
    // What is thinner than a line of text is drawn as high as one: 0.09 of 0.8 to the whole.
    assertThat(heights[0]).isCloseTo(heights[2], within(0.02));
    assertThat(heights[3] / heights[2]).isCloseTo(0.8 * 50 / 190 / 0.09, within(0.01));
    assertThat(bands.get(6).get(2)[1]).isCloseTo(10, within(0.02));
    assertThat(drawing).contains("height=\"" + fixed(bands.get(0).get(0)[1] + 10, 2) + "\"");
  }

  /** Four triangles round the middle; the door's side is at the bottom, with the last number. */
  @Test
  void theMapShowsTheOrderAndTheDoor() {
    String square = "\"outline\": {\"sides\": 4, \"side\": \"3 m\"}";
    Fixture f =
        Fixture.of(
            EarthJob.with(
                square,
                square
                    + ", \"doorFace\": 2, \"gaps\": [{\"x\": 0.5, \"y\": 0, \"diameter\": \"400"
                    + " mm\"}]"),
            Chapter.FLOOR);
    String drawing = f.book().drawings().get("floor-sectors");
    double[] first = place(drawing, "1");
    double[] last = place(drawing, "4");
    assertThat(last[1]).isGreaterThan(first[1] + 100);
    Matcher heavy =
        Pattern.compile("<path d=\"M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)\"[^>]*width=\"2.8\"")
            .matcher(drawing);
    assertThat(heavy.find()).isTrue();
    // The door's side runs level below the last number, as long as the floor is wide.
    double y = Double.parseDouble(heavy.group(2));
    assertThat(Double.parseDouble(heavy.group(4))).isCloseTo(y, within(0.02));
    assertThat(y).isGreaterThan(last[1]);
    assertThat(Math.abs(Double.parseDouble(heavy.group(3)) - Double.parseDouble(heavy.group(1))))
        .isCloseTo(300, within(0.05));
    assertThat(heavy.find()).isFalse();
    assertThat(paths(drawing).subList(0, 4))
        .allSatisfy(sector -> assertThat(sector.size()).isGreaterThanOrEqualTo(3));
    // The post is hatched: a seventh and a half of the side across.
    assertThat(drawing).containsPattern("<path d=\"[^\"]*\" fill=\"url\\(#hatch\\)\"");
  }
}
