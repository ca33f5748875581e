package io.github.seamstead.api.chapter.rigging;

import static io.github.seamstead.api.testing.CoverJob.GROWN;
import static io.github.seamstead.api.testing.CoverJob.TEXT;
import static io.github.seamstead.api.testing.CoverJob.planned;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Results and pages of fixings and handling of a square of 4 m, 3 m high. */
class RiggingFactsByHandTest {

  private static final double HIP_LENGTH = GROWN * Math.sqrt(17);
  private static final double GRAVITY = 9.80665;

  /** The cover without its vent: four hips are all its seams. */
  private static final String WHOLE = TEXT.replaceAll("(?s)\"vents\".*?\\]\\}\\],", "");

  /** Four hips of sqrt 17 m: 84 places 50 mm apart at most, two rows in each. */
  @Test
  void fixingsOfTheFourSeams() {
    Fixture f = Fixture.of(WHOLE, Chapter.FIXINGS);
    near(f, "/fixings/seamLength_m", 4 * HIP_LENGTH);
    int row = (int) Math.ceil(HIP_LENGTH / 0.05) + 1;
    near(f, "/fixings/total", 4 * 2 * row);
    near(f, "/fixings/made", 0);
    near(f, "/fixings/open", 4 * 2 * row);
    near(f, "/fixings/pegs", 28);
    near(f, "/fixings/pegSpacing_m", 16.0 * GROWN / 28);
    double bead = Math.PI / 4 * 0.006 * 0.006 * 4 * HIP_LENGTH;
    near(f, "/fixings/adhesive_m3", bead);
    near(f, "/fixings/adhesiveLeft_m3", bead);
    near(f, "/fixings/through/layers", 2);
    near(f, "/fixings/through/thickness_m", 0.0015);
    near(f, "/fixings/through/leastLeg_m", 0.0055);
    near(f, "/fixings/glue/open_s", 180);
    near(f, "/fixings/glue/cure_s", 86400);
    assertThat(f.at("/fixings/kindCode").asText()).isEqualTo("staples");
    // With a tenth to spare, in packs of a hundred.
    near(f, "/fixings/shopping/0/need", 8 * row * 1.1);
    near(f, "/fixings/shopping/0/packs", Math.ceil(8 * row * 1.1 / 100));
    near(f, "/fixings/shopping/0/packSize", 100);
    near(f, "/fixings/shopping/1/packs", Math.ceil(bead * 1.1 / 300e-6));
    near(f, "/fixings/shopping/2/need", 28 * 1.1);
    assertThat(f.noughts("/fixings")).isEqualTo(Set.of("/made"));
    assertThat(f.worked("assembly."))
        .contains(
            "assembly.fixings.count",
            "assembly.fixings.bead",
            "assembly.fixings.adhesive",
            "assembly.fixings.hempegs",
            "assembly.fixings.packs",
            "assembly.fixings.leg",
            "assembly.schedule.adhesive");
    assertThat(f.assumed())
        .contains(
            "(pegs): at most 0.6 m apart round the hem",
            "$.cover.fixings.through: 2 layers",
            "$.cover.fixings.through.beyond: 4 mm");
    // Of the adhesive, of its open time and of the conditions on its label.
    assertThat(f.cautions(Chapter.FIXINGS)).hasSize(3);
    List<String> page = f.read(Chapter.FIXINGS);
    assertThat(page)
        .contains("To buy", "By kind of seam", "28 pegs round the hem, 0.572 m apart.")
        .anyMatch(line -> line.startsWith(8 * row + " staples in 16.500 m of seams"))
        .anyMatch(
            line -> line.startsWith("A leg must be 6 mm long or longer for a seam of 2 layers"))
        .anyMatch(line -> line.startsWith("Glue at most "))
        .noneMatch(line -> line.contains("of them are in"));
    assertThat(f.lists().get("fixings.csv"))
        .contains("staples,piece,")
        .contains("pegs,piece,30.80");
  }

  /** Thread through two layers, two rows, and what is left when a seam is made. */
  @Test
  void stitchesTakeThreadAndSeamsMadeTakeNone() {
    String stitched =
        EarthJob.with(WHOLE, "\"method\": \"staples\"", "\"method\": \"stitches\"")
            .replace(
                "\"rows\": 2,", "\"rows\": 2, \"through\": {\"layers\": 2, \"reel\": \"50 m\"},");
    Fixture f = Fixture.of(stitched, Chapter.FIXINGS);
    double all = f.number("/fixings/through/thread_m");
    // Two threads lie along each of two rows, and a stitch of 50 mm goes through 1.5 mm.
    near(f, "/fixings/through/thread_m", 2 * 2 * 4 * HIP_LENGTH * (1 + 0.0015 / 0.05));
    near(f, "/fixings/threadLeft_m", all);
    // With a tenth to spare from reels of fifty metres.
    assertThat(f.at("/fixings/shopping/1/name").asText()).isEqualTo("thread");
    near(f, "/fixings/shopping/1/need", all * 1.1);
    near(f, "/fixings/shopping/1/packs", Math.ceil(all * 1.1 / 50));
    near(f, "/fixings/shopping/1/packSize", 50);
    assertThat(f.at("/fixings/through/leastLeg_m").isMissingNode()).isTrue();
    assertThat(f.read(Chapter.FIXINGS))
        .anyMatch(line -> line.startsWith("The stitches of all seams, through 2 layers"));
    Fixture one =
        Fixture.of(
            stitched,
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\", \"3\", \"4\"]}},"
                    + " {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"1R\", \"2L\"]}}"));
    near(one, "/fixings/made", one.number("/fixings/total") / 4);
    near(one, "/fixings/open", one.number("/fixings/total") * 3 / 4);
    near(one, "/fixings/threadLeft_m", all * 3 / 4);
    near(one, "/fixings/adhesiveLeft_m3", one.number("/fixings/adhesive_m3") * 3 / 4);
    assertThat(one.read(Chapter.FIXINGS))
        .anyMatch(line -> line.contains("of them are in: those of the seams"));
  }

  @Test
  void glueThatDislikesTheWeatherIsSaid() {
    Fixture f =
        planned(
            "\"seamstead\": 1,",
            "\"seamstead\": 1, \"weather\": {\"temperature\": \"2 degC\", \"humidity\": \"60 %\","
                + " \"airSpeed\": \"0.3 m/s\"},");
    assertThat(f.unmet(Chapter.FIXINGS)).singleElement().asString().startsWith("gluing: ");
    Fixture mild =
        planned(
            "\"seamstead\": 1,",
            "\"seamstead\": 1, \"weather\": {\"temperature\": \"15 degC\", \"humidity\": \"60 %\","
                + " \"airSpeed\": \"0.3 m/s\"},");
    assertThat(mild.unmet(Chapter.FIXINGS)).isEmpty();
  }

  /** Two people raise a heavy cover by a tackle. */
  @Test
  void turningAndRaising() {
    Fixture f = planned();
    double mass = f.number("/cover/clothMass_kg");
    near(f, "/handling/mass_kg", mass);
    near(f, "/cover/clothMass_kg", 3 * f.number("/cover/clothArea_m2"));
    double hip = Math.atan2(3, 2 * Math.sqrt(2));
    double haul = Math.atan2(3, 3 + 2 * Math.sqrt(2));
    double load = mass * GRAVITY * (Math.sin(hip) + 0.5 * Math.cos(hip));
    double raise = load * Math.exp(0.37 * (hip + haul));
    near(f, "/handling/raise_N", raise);
    near(f, "/handling/hold_N", load * Math.exp(-0.14 * (hip + haul)));
    near(f, "/handling/people", 2 * Math.ceil(raise / 2 / (60 * 4.4482216152605)));
    double foot = 2 * Math.sqrt(2);
    near(f, "/handling/dropZone_m", foot + 3);
    near(f, "/handling/rope_m", Math.hypot(foot + 3, 3) + Math.hypot(foot, 3) + 2);
    // The crew of two holds 1.2 * 0.625 * A v^2 and begins at 11.6/15.6 of that.
    double gust =
        Math.sqrt(2 * 2 * 60 * 4.4482216152605 / (1.25 * 1.2 * f.number("/cover/clothArea_m2")));
    near(f, "/handling/limitGust_m_per_s", Math.min(11.6, gust * 11.6 / 15.6));
    // A roll two metres long whose cross-section is the cloth over 0.7 of it.
    near(
        f,
        "/handling/roll_m/likely",
        Math.sqrt(4 / Math.PI * f.number("/cover/clothArea_m2") * 0.00075 / (2 * 0.7)));
    near(f, "/handling/rope/load_N", raise / 2);
    near(f, "/handling/rope/diameter_m", 0.016);
    // Two ropes of a good twelve metres from coils of thirty.
    near(f, "/handling/rope/coils", f.number("/handling/rope_m") * 2 > 30 ? 2 : 1);
    assertThat(f.at("/handling/rope/holds").asBoolean())
        .isEqualTo(f.number("/handling/rope/working_N") >= raise / 2);
    assertThat(f.number("/handling/onePerson_kg")).isBetween(5.0, 25.0);
    // The two pulls of the rope meet at the apex, turned by hip and haul.
    near(
        f,
        "/handling/apex_N",
        Math.sqrt(load * load + raise * raise - 2 * load * raise * Math.cos(hip + haul)));
    assertThat(f.noughts("/handling")).isSubsetOf("/liftOutside");
    // Two hands on two ropes: the fewest parts with which F (1 + 0.1 n) / n is within one pull.
    int parts = 2;
    while (raise / 2 * (1 + 0.1 * parts) / parts > 60 * 4.4482216152605) {
      parts++;
    }
    near(f, "/handling/tackleParts", parts);
    assertThat(f.at("/handling/lift").asText())
        .isEqualTo(f.plan().handling().orElseThrow().lift().text());
    assertThat(f.worked("assembly.handling"))
        .containsExactly(
            "assembly.handling.apex",
            "assembly.handling.dropzone",
            "assembly.handling.lift",
            "assembly.handling.mass",
            "assembly.handling.pull",
            "assembly.handling.roll",
            "assembly.handling.tackle",
            "assembly.handling.turn",
            "assembly.handling.turnloop",
            "assembly.handling.wind");
    assertThat(f.cautions(Chapter.HANDLING))
        .anyMatch(c -> c.contains("circle of"))
        .anyMatch(c -> c.contains("gusts"))
        .anyMatch(c -> c.contains("rope"))
        .anyMatch(c -> c.contains("Take the rope maker's figure"))
        .anyMatch(c -> c.contains("steadily"))
        .containsAll(
            f.plan().handling().orElseThrow().lift().cautions().stream()
                .map(c -> c.text())
                .toList());
    assertThat(f.assumed()).anyMatch(a -> a.startsWith("(raising): 2 ropes over timber edges"));
    assertThat(f.read(Chapter.HANDLING))
        .contains(
            f.plan().handling().orElseThrow().turning().text(),
            f.plan().handling().orElseThrow().lift().text(),
            "pull to raise, each rope | " + force(raise / 2),
            "pull to hold, each rope | " + force(f.number("/handling/hold_N") / 2),
            "is that enough? | "
                + (f.at("/handling/rope/holds").asBoolean() ? "yes" : "no, take a thicker one"),
            "Turning right side out",
            "Ways to turn",
            "Lifting",
            "The lift",
            "Raising with ropes",
            "The ropes",
            "ropes over the top | 2")
        .anyMatch(line -> line.startsWith("Do not raise the cover in gusts above"))
        .anyMatch(line -> line.startsWith("pull on each tackle | "))
        .anyMatch(line -> line.startsWith("parts of rope at the moving block of the tackle | "))
        .anyMatch(line -> line.startsWith("coils to cut the ropes from | "))
        .anyMatch(line -> line.startsWith("is that enough? | "))
        .anyMatch(line -> line.startsWith("pull to raise, each rope | "));
  }

  @Test
  void roundPolesAreSmootherThanTimber() {
    Fixture f =
        planned(
            "\"height\": \"3 m\"}}",
            "\"height\": \"3 m\"}, \"poles\": {\"section\": \"round\", \"diameter\": \"48 mm\"}}");
    assertThat(f.assumed())
        .anyMatch(a -> a.startsWith("(raising): 2 ropes over round metal poles"));
    assertThat(f.number("/handling/hold_N")).isLessThan(f.number("/handling/raise_N"));
  }

  private static String force(double newtons) {
    return String.format(java.util.Locale.ROOT, "%.0f N", newtons);
  }

  /** A light cover is lifted by a team; a heavy one by none, and by no tackle of eight parts. */
  @Test
  void whatNobodyMayLiftIsSaid() {
    Fixture light = planned("\"massPerArea\": \"3000 g/m2\"", "\"massPerArea\": \"350 g/m2\"");
    double people = light.number("/handling/liftPeople");
    assertThat(people).isBetween(1.0, 4.0);
    double one = light.number("/handling/onePerson_kg");
    double together = light.number("/handling/liftTogether_kg");
    assertThat(together).isBetween(light.number("/handling/mass_kg"), people * one + 1e-9);
    Fixture heavy =
        Fixture.of(
            EarthJob.with(
                EarthJob.with(TEXT, "3000 g/m2", "5000 g/m2"),
                "\"diameter\": \"16 mm\"",
                "\"diameter\": \"5 mm\""),
            Chapter.HANDLING);
    assertThat(heavy.at("/handling/liftPeople").isMissingNode()).isTrue();
    assertThat(heavy.unmet(Chapter.HANDLING))
        .anyMatch(u -> u.contains("no tackle of up to 8 parts is enough"))
        .anyMatch(u -> u.startsWith("each rope is pulled with "));
    assertThat(heavy.at("/handling/tackleParts").isMissingNode()).isTrue();
    assertThat(heavy.read(Chapter.HANDLING)).contains("is that enough? | no, take a thicker one");
    assertThat(light.unmet(Chapter.HANDLING)).isEmpty();
  }

  /** Rectangular poles are timber, which holds a rope more than a round bar of metal. */
  @Test
  void squarePolesAreTimber() {
    Fixture f =
        planned(
            "\"height\": \"3 m\"}}",
            "\"height\": \"3 m\"}, \"poles\": {\"section\": \"rectangular\", \"width\": \"50 mm\","
                + " \"depth\": \"80 mm\"}}");
    assertThat(f.assumed()).anyMatch(a -> a.startsWith("(raising): 2 ropes over timber edges"));
  }

  @Test
  void withoutFixingsThatIsSaid() {
    int from = TEXT.indexOf(",\n   \"fixings\"");
    Fixture f = Fixture.of(TEXT.substring(0, from) + "}}", Chapter.FIXINGS);
    assertThat(f.skipped(Chapter.FIXINGS))
        .containsExactly("the document has no fixings under cover");
  }
}
