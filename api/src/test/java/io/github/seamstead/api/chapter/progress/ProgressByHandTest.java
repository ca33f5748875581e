package io.github.seamstead.api.chapter.progress;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Six panels and a cap on three tarps, and a floor of two layers in six sectors. */
class ProgressByHandTest {

  private static final String CUT =
      "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\", \"3\", \"4\", \"cap 1\"]}}";

  private static Fixture planned(Job job, String lines) {
    return Fixture.of(JobPlanner.plan(job, SmallJob.diary(lines), Fixture.options(Chapter.SITE)));
  }

  private static Fixture planned(String lines) {
    return planned(SmallJob.job(), lines);
  }

  private static String day(int day, String what) {
    return ", {\"date\": \"2031-05-%02d\", %s}".formatted(day, what);
  }

  private static String joined(String first, String second) {
    return day(6, "\"joined\": {\"edges\": [\"" + first + "\", \"" + second + "\"]}");
  }

  /** The page of the chapter: what stands between its heading and the next. */
  private static String page(Fixture f) {
    String html = f.book().html().replace('\u00a0', ' ');
    int start = html.indexOf(">The job so far</h2>");
    assertThat(start).isPositive();
    return html.substring(start, html.indexOf("<h2", start)).replaceAll("<[^>]*>", "|");
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }

  private static JsonNode piece(Fixture f, String name) {
    for (JsonNode piece : f.at("/progress/pieces")) {
      if (piece.at("/name").asText().equals(name)) {
        return piece;
      }
    }
    throw new AssertionError("no piece " + name);
  }

  @Test
  void withoutADiaryThereIsNoProgress() {
    Fixture f = Fixture.of(JobPlanner.plan(SmallJob.job(), Fixture.options(Chapter.SITE)));
    assertThat(f.at("/progress").isMissingNode()).isTrue();
  }

  /**
   * Four panels of six are cut, one of them is torn: three are left to keep, and one of the cap.
   */
  @Test
  void everyPieceHasItsStateAndItsPlace() {
    Fixture f =
        planned(
            CUT
                + day(6, "\"spoiled\": {\"pieces\": [\"2\"], \"why\": \"torn\"}")
                + day(9, "\"note\": \"rest\""));
    assertThat(f.at("/progress/last").asText()).isEqualTo("2031-05-09");
    List<String> names = f.at("/progress/pieces").findValuesAsText("name");
    assertThat(names).doesNotHaveDuplicates().contains("1", "2", "3", "4", "5", "6", "cap 1");
    int caps = names.size() - 6;
    for (String name : names) {
      boolean cut = List.of("1", "3", "4", "cap 1").contains(name);
      assertThat(piece(f, name).at("/cut").asBoolean()).as(name).isEqualTo(cut);
      assertThat(piece(f, name).has("spoiled")).as(name).isEqualTo(name.equals("2"));
      assertThat(piece(f, name).at("/stock").asText()).as(name).isEqualTo("tarp");
      assertThat(piece(f, name).at("/copy").asInt()).as(name).isBetween(1, 3);
    }
    assertThat(piece(f, "2").at("/spoiled").asText()).isEqualTo("torn");
    // The place is that of the layout, whose copies are named in the order of the shapes.
    var layout = f.plan().layout().orElseThrow().result();
    layout
        .used()
        .forEach(
            use -> {
              long here =
                  names.stream()
                      .filter(name -> piece(f, name).at("/copy").asInt() == use.copy())
                      .count();
              assertThat(here).isEqualTo(use.placements().size());
            });
    String page = page(f);
    assertThat(page)
        .contains("As the diary stands on the evening of 2031-05-09.")
        .contains("4 of " + names.size() + " pieces are cut; they keep their shape")
        .contains("|2||to cut again||tarp number " + piece(f, "2").at("/copy").asInt() + "||torn|")
        .contains("|5||to cut||tarp number " + piece(f, "5").at("/copy").asInt() + "|")
        .doesNotContain("|3||cut|");
    assertThat(f.lists().get("pieces.csv").lines())
        .hasSize(1 + 6 + caps)
        .contains("piece,state,stock,copy")
        .contains("3,cut,tarp," + piece(f, "3").at("/copy").asInt())
        .contains("2,to cut again,tarp," + piece(f, "2").at("/copy").asInt())
        .contains("6,to cut,tarp," + piece(f, "6").at("/copy").asInt());
    // Every piece that is not cut is told once, by its sheet.
    List<String> next = texts(f.at("/progress/nextDay"));
    List<String> told = new ArrayList<>();
    for (String line : next) {
      if (line.startsWith("Cut from tarp number ")) {
        int copy = Character.digit(line.charAt("Cut from tarp number ".length()), 10);
        for (String name : line.replaceAll("^[^:]*: |\\.$", "").split(", ", -1)) {
          assertThat(piece(f, name).at("/copy").asInt()).as(name).isEqualTo(copy);
          told.add(name);
        }
      }
    }
    assertThat(told)
        .containsExactlyInAnyOrderElementsOf(
            names.stream().filter(n -> !List.of("1", "3", "4", "cap 1").contains(n)).toList());
    next.forEach(line -> assertThat(page).contains("|" + line + "|"));
  }

  /** Without cloth no piece has a place. */
  @Test
  void piecesWithoutClothHaveNoPlace() {
    int from = SmallJob.text().indexOf("\"stock\": {");
    int until = SmallJob.text().indexOf("\"soils\":");
    String bare = SmallJob.text().substring(0, from) + SmallJob.text().substring(until);
    String tested =
        "{\"date\": \"2031-05-05\", \"soilTested\": {\"soil\": \"pit\", \"ribbon\": \"50 mm\"}}";
    Fixture f = planned(JobReader.parse(bare), tested);
    assertThat(f.at("/progress/pieces").size()).isGreaterThan(6);
    for (JsonNode piece : f.at("/progress/pieces")) {
      assertThat(piece.has("stock")).isFalse();
      assertThat(piece.at("/copy").asInt()).isZero();
    }
    List<String> names = f.at("/progress/pieces").findValuesAsText("name");
    assertThat(texts(f.at("/progress/nextDay")))
        .contains("Without a place yet: " + String.join(", ", names) + ".");
    assertThat(page(f))
        .contains("0 of " + names.size() + " pieces are cut")
        .contains("|1||to cut||–||");
    var part = f.plan().parts().one(ProgressPart.class).orElseThrow();
    assertThat(part.open()).isEqualTo(part.pieces());
  }

  /** Of four panels side by side two seams of three are made; the third is the next. */
  @Test
  void seamsAreMadeOpenAndNext() {
    Fixture f = planned(CUT + joined("1R", "2L") + joined("3R", "4L"));
    var joints = f.plan().joining().orElseThrow().ring().joints();
    assertThat(texts(f.at("/progress/seamsMade")))
        .containsExactly(joints.get(0).text(), joints.get(2).text());
    assertThat(texts(f.at("/progress/seamsOpen")))
        .containsExactly(
            joints.get(1).text(), joints.get(3).text(), joints.get(4).text(), joints.get(5).text());
    assertThat(joints.get(1).text()).endsWith(": 2R to 3L");
    // 5 and 6 are not cut, so that no seam of theirs can be made.
    List<String> join =
        texts(f.at("/progress/nextDay")).stream().filter(l -> l.startsWith("Join: ")).toList();
    assertThat(join).allMatch(l -> l.equals("Join: " + joints.get(1).text() + "."));
    assertThat(page(f))
        .contains("|Made: " + joints.get(0).text() + "; " + joints.get(2).text() + ".|")
        .contains("|Open: " + joints.get(1).text() + "; " + joints.get(3).text() + "; ")
        .doesNotContain("The ring is closed.");
  }

  /** Without a seam all six are open, and the first wave is made of panels that are cut. */
  @Test
  void beforeTheFirstSeamAllAreOpen() {
    Fixture f = planned(CUT);
    var joining = f.plan().joining().orElseThrow();
    assertThat(f.at("/progress/seamsMade")).isEmpty();
    assertThat(texts(f.at("/progress/seamsOpen")))
        .containsExactlyElementsOf(joining.ring().joints().stream().map(j -> j.text()).toList());
    assertThat(page(f)).doesNotContain("Seams of the ring");
    List<String> first = new ArrayList<>();
    joining
        .order()
        .orElseThrow()
        .steps()
        .forEach(
            step -> {
              if (step.wave() == 1
                  && step.joint().first().piece() <= 4
                  && step.joint().second().piece() <= 4) {
                first.add(step.joint().text());
              }
            });
    assertThat(first).isNotEmpty();
    assertThat(texts(f.at("/progress/nextDay")))
        .contains("Join: " + String.join("; ", first) + ".");
  }

  /** A right edge sewn to the wrong left one is undone before anything else. */
  @Test
  void whatIsWrongIsUndoneFirst() {
    Fixture f = planned(CUT + joined("1R", "3L"));
    assertThat(texts(f.at("/progress/nextDay")).get(0))
        .isIn("Undo first: 1R from 3L.", "Undo first: 3L from 1R.");
    assertThat(f.at("/progress/seamsMade")).isEmpty();
    assertThat(f.at("/progress/seamsOpen")).hasSize(6);
  }

  /** Panels 2 and 3 are alike and were sewn in each other's place: they change their names. */
  @Test
  void piecesAlikeMayChangeTheirNames() {
    Fixture f = planned(CUT + joined("1R", "3L") + joined("3R", "2L") + joined("2R", "4L"));
    List<String> next = texts(f.at("/progress/nextDay"));
    assertThat(next.get(0)).startsWith("Undo first: ").contains(" from ").contains("; ");
    assertThat(next.get(1))
        .startsWith("Or undo nothing and write new names on pieces alike: ")
        .contains("2 becomes 3")
        .contains("3 becomes 2");
    assertThat(next.get(1).split(" becomes ", -1)).hasSize(3);
    assertThat(texts(f.at("/joining/renaming/newNames")))
        .containsExactlyInAnyOrder("2 becomes 3", "3 becomes 2");
    assertThat(f.at("/joining/renaming/undo")).isEmpty();
    // No name cures two right edges that were sewn together.
    String more = CUT.replace("\"cap 1\"", "\"5\"");
    List<String> worse =
        texts(
            planned(
                    more
                        + joined("1R", "3L")
                        + joined("3R", "2L")
                        + joined("2R", "4L")
                        + joined("4R", "5R"))
                .at("/progress/nextDay"));
    assertThat(worse.get(1)).startsWith("Or undo 4R from 5R and write new names on pieces alike: ");
  }

  @Test
  void aClosedRingSaysSo() {
    StringBuilder lines = new StringBuilder(CUT.replace("\"cap 1\"", "\"5\", \"6\""));
    for (int i = 1; i <= 6; i++) {
      lines.append(joined(i + "R", i % 6 + 1 + "L"));
    }
    Fixture f = planned(lines.toString());
    assertThat(f.at("/progress/seamsMade")).hasSize(6);
    assertThat(f.at("/progress/seamsOpen")).isEmpty();
    assertThat(page(f)).contains("|The ring is closed.|").doesNotContain("|Open: ");
    assertThat(texts(f.at("/progress/nextDay"))).noneMatch(l -> l.startsWith("Join: "));
  }

  private static final String FLOOR =
      "{\"date\": \"2031-05-05\", \"laid\": {\"layer\": \"levelling\"}}"
          + day(6, "\"laid\": {\"layer\": \"coat\", \"sector\": 1}");

  /** One sector of six is laid; the loads of the others are those of five sixths. */
  @Test
  void theLowestLayerThatIsOpenIsNext() {
    Fixture f = planned(FLOOR);
    var batch = f.plan().floor().orElseThrow().batches().get(0);
    double whole = batch.quantity().dryMass().likely() / batch.batch().dryMass();
    int left = (int) Math.ceil(whole * 5 / 6);
    near(f, "/floor/rest/1/loadsLeft/likely", left);
    assertThat(texts(f.at("/progress/nextDay")))
        .endsWith("Lay coat: sectors 2, 3, 4, 5 and on, " + left + " loads in all.");
    assertThat(page(f))
        .contains("Layers of the floor")
        .contains("|levelling||100 %||–||done on 2031-05-05|")
        .contains("|coat||17 %||" + left)
        .contains("||2, 3, 4, 5, 6|");
    // Two sectors more leave three, which are named whole.
    Fixture less =
        planned(
            FLOOR
                + day(7, "\"laid\": {\"layer\": \"coat\", \"sector\": 2}")
                + day(7, "\"laid\": {\"layer\": \"coat\", \"sector\": 3}"));
    assertThat(texts(less.at("/progress/nextDay")))
        .endsWith("Lay coat: sectors 4, 5, 6, " + (int) Math.ceil(whole / 2) + " loads in all.");
  }

  @Test
  void aLayerWithoutLoadsIsLaidWholeOrBySectors() {
    Fixture none = planned(CUT);
    assertThat(texts(none.at("/progress/nextDay"))).endsWith("Lay levelling: the whole floor.");
    assertThat(page(none)).doesNotContain("Layers of the floor");
    Fixture some =
        planned(
            "{\"date\": \"2031-05-05\", \"laid\": {\"layer\": \"levelling\", \"sector\":" + " 6}}");
    assertThat(texts(some.at("/progress/nextDay")))
        .endsWith("Lay levelling: sectors 1, 2, 3, 4 and on.");
    assertThat(page(some)).contains("|levelling||17 %||–||1, 2, 3, 4, 5|");
  }

  @Test
  void aFloorThatIsLaidIsNotNext() {
    Fixture f =
        planned(
            "{\"date\": \"2031-05-05\", \"laid\": {\"layer\": \"levelling\"}}"
                + day(8, "\"laid\": {\"layer\": \"coat\"}"));
    assertThat(texts(f.at("/progress/nextDay"))).noneMatch(l -> l.startsWith("Lay "));
    assertThat(page(f)).contains("|coat||100 %||–||done on 2031-05-08|");
  }

  /** Two weighings count; what was weighed after the crack does not. */
  @Test
  void tilesAreCountedUpToTheirCrack() {
    String made =
        "\"tileMade\": {\"tile\": \"%s\", \"layer\": \"coat\", \"thickness\": \"30 mm\","
            + " \"area\": \"0.09 m2\", \"scale\": \"2 g\"}";
    String weighed = "\"tileWeighed\": {\"tile\": \"%s\", \"mass\": \"%s kg\"}";
    Fixture f =
        planned(
            "{\"date\": \"2031-05-05\", \"time\": \"08:00\", %s}".formatted(made.formatted("a"))
                + day(5, made.formatted("b")).replace("\"date\"", "\"time\": \"08:00\", \"date\"")
                + day(6, weighed.formatted("a", "6"))
                + day(7, weighed.formatted("a", "5.9"))
                + day(8, "\"tileCracked\": {\"tile\": \"a\", \"crack\": \"2 mm\"}")
                + day(9, weighed.formatted("a", "5.8")));
    assertThat(f.at("/progress/tiles/0/name").asText()).isEqualTo("a");
    assertThat(f.at("/progress/tiles/0/layer").asText()).isEqualTo("coat");
    near(f, "/progress/tiles/0/weighings", 2);
    near(f, "/progress/tiles/0/crack_m", 0.002);
    near(f, "/progress/tiles/1/weighings", 0);
    near(f, "/progress/tiles/1/crack_m", 0);
    assertThat(page(f))
        .contains("|a||coat||2||2 mm: weighings after it do not count|")
        .contains("|b||coat||0||none|");
    assertThat(page(planned(CUT))).doesNotContain("Test tiles");
  }

  /** A floor alone has no pieces and no seams, and when it is laid nothing is left. */
  @Test
  void whenAllIsDoneNothingIsLeft() {
    StringBuilder lines = new StringBuilder();
    for (String layer :
        List.of("levelling", "capillaryBreak", "sheet", "pack", "coat", "oil", "wax")) {
      lines
          .append(lines.isEmpty() ? "" : ", ")
          .append("{\"date\": \"2027-05-09\", \"laid\": {\"layer\": \"" + layer + "\"}}");
    }
    Fixture f = planned(JobReader.parse(EarthJob.TEXT), lines.toString());
    assertThat(texts(f.at("/progress/nextDay")))
        .containsExactly("Nothing of this plan is left to cut, to join or to lay.");
    assertThat(f.noughts("/progress"))
        .containsExactly("/pieces", "/seamsMade", "/seamsOpen", "/tiles");
    assertThat(page(f)).doesNotContain("Pieces");
  }

  /** The cap was cut and then left out of the job. */
  @Test
  void aPieceThatTheJobHasNoMoreIsTold() {
    Job without = JobReader.parse(SmallJob.text().replaceFirst(",\\s*\"cap\": \\{[^}]*}", ""));
    assertThat(without.document().cover().orElseThrow().cap()).isEmpty();
    Fixture f =
        Fixture.of(
            JobPlanner.plan(
                SmallJob.job(), without, SmallJob.diary(CUT), Fixture.options(Chapter.SITE)));
    assertThat(f.unmet(Chapter.PATTERN))
        .contains("the piece cap 1 is cut, but the job has no piece of that name")
        .noneMatch(u -> u.startsWith("the piece 1 "));
  }

  /** Two fans of three faces each: that which is not cut is not joined yet. */
  @Test
  void fansAreJoinedOnceTheyAreCut() {
    Job job =
        JobReader.parse(
            """
            {"seamstead": 1,
             "site": {"name": "t", "crew": {"people": 2}},
             "frame": {"sides": 6, "measures": {"baseSide": "2 m", "height": "2.5 m"}},
             "cover": {"fabric": {"massPerArea": "250 g/m2"},
               "seam": {"kind": "lap", "allowance": "50 mm"}, "hem": {"kind": "raw"}},
             "stock": {"sheets": [
               {"id": "tarp", "length": "5.6 m", "width": "4.6 m", "count": 2}]}}
            """);
    List<String> fans =
        JobPlanner.plan(job, Fixture.options(Chapter.PATTERN)).cover().orElseThrow().names();
    assertThat(fans).hasSizeGreaterThan(1).anyMatch(name -> name.contains(" to "));
    String one = "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"" + fans.get(0) + "\"]}}";
    Fixture f = planned(job, one);
    assertThat(texts(f.at("/progress/nextDay"))).noneMatch(l -> l.startsWith("Join: "));
    String all =
        "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\""
            + String.join("\", \"", fans)
            + "\"]}}";
    assertThat(texts(planned(job, all).at("/progress/nextDay")))
        .anyMatch(l -> l.startsWith("Join: ") && l.contains(": " + fans.get(0) + "R to "));
  }
}
