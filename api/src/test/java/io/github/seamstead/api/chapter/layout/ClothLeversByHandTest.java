package io.github.seamstead.api.chapter.layout;

import static io.github.seamstead.api.testing.Fixture.filled;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.EarthJob;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What can be changed where cloth is short, with the values that state it. */
class ClothLeversByHandTest {

  /** One sheet takes the first of the panels, 1 m wide. */
  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [{"id": "s", "length": "1.4 m", "width": "1.3 m"}],
         "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static JobPlan plan(String text) {
    // As one of many: what a plan by itself tries besides takes long.
    Series many = new Series(Recall.none(), Supposed.NOTHING, true, false);
    return JobPlanner.plan(JobReader.parse(text), PlanOptions.defaults(), many);
  }

  private static List<ClothLever> found(String text) {
    JobPlan plan = plan(text);
    return ClothLevers.of(plan.job().document(), plan.parts());
  }

  /** Each change as {@code name: path = value}. */
  private static List<String> levers(String text) {
    return found(text).stream()
        .map(
            lever ->
                lever.name()
                    + ": "
                    + String.join(
                        "; ",
                        lever.changes().stream()
                            .map(c -> c.path() + " = " + c.value().shown())
                            .toList()))
        .toList();
  }

  private static String with(String old, String changed) {
    return EarthJob.with(TEXT, old, changed);
  }

  @Test
  void everyPartOfTheJobThatTakesClothMayChange() {
    assertThat(levers(TEXT))
        .containsExactly(
            "Seam allowance a quarter smaller: cover.seam.allowance = 0.015 m",
            "A splice more in panel 2: cover.moreSplices = 2",
            "A splice more in panels 2–4: cover.moreSplices = 2, 3, 4",
            "Neighbouring faces in one piece where a sheet takes them: cover.keepTogether = none",
            "A tenth narrower: frame.measures.baseSide = 0.9 m",
            "A tenth lower: frame.measures.height = 0.9 m");
    assertThat(
            levers(
                with(
                        "\"height\": \"1 m\"}",
                        "\"height\": \"1 m\"}, \"opening\": {\"side\": \"0.2 m\"}")
                    .replace(
                        "\"hem\"",
                        "\"cap\": {\"overlap\": \"100 mm\", \"lap\": \"20 mm\"}, \"skirt\":"
                            + " {\"drop\": \"100 mm\"}, \"hem\"")))
        .containsSubsequence(
            "Seam allowance a quarter smaller: cover.seam.allowance = 0.015 m",
            "No skirt: cover.skirt = none",
            "Cap cut from other cloth: cover.cap = none");
  }

  @Test
  void whatIsNotThereOrSettledIsNoLever() {
    // Without stock nothing lacks, and no sheet takes several faces.
    assertThat(
            levers(
                with(
                    " \"stock\": {\"sheets\": [{\"id\": \"s\", \"length\": \"1.4 m\", \"width\":"
                        + " \"1.3 m\"}],\n"
                        + "   \"spacing\": \"5 mm\", \"edgeMargin\": \"10 mm\"},\n",
                    "")))
        .containsExactly(
            "Seam allowance a quarter smaller: cover.seam.allowance = 0.015 m",
            "A tenth narrower: frame.measures.baseSide = 0.9 m",
            "A tenth lower: frame.measures.height = 0.9 m");
    // Faces that may stay together already, and panels that are spliced already.
    assertThat(levers(with("\"keepTogether\": false", "\"moreSplices\": [2]")))
        .noneMatch(lever -> lever.startsWith("Neighbouring faces"))
        .noneMatch(lever -> lever.equals("A splice more in panel 2: cover.moreSplices = 2"));
    // A job without a cover has no cloth to save.
    JobPlan bare =
        plan(
            "{\"seamstead\": 1, \"frame\": {\"sides\": 4, \"measures\": {\"baseSide\": \"1 m\","
                + " \"height\": \"1 m\"}}}");
    assertThat(ClothLevers.of(bare.job().document(), bare.parts())).isEmpty();
  }

  /** Eight sides become six as wide across; of four none may go. */
  @Test
  void twoSidesFewer() {
    double across = 0.5 / Math.sin(Math.PI / 8);
    List<String> eight = levers(with("\"sides\": 4", "\"sides\": 8"));
    assertThat(eight)
        .contains(
            "Two sides fewer, as wide across: frame.sides = 6; frame.measures.baseSide = none;"
                + filled(" frame.measures.circumradius = %.8f m", across));
    assertThat(levers(with("\"sides\": 4", "\"sides\": 6")))
        .anyMatch(lever -> lever.startsWith("Two sides fewer, as wide across: frame.sides = 4; "));
    assertThat(levers(with("\"sides\": 4", "\"sides\": 5")))
        .noneMatch(lever -> lever.startsWith("Two sides fewer"));
    assertThat(
            levers(
                with("\"sides\": 4", "\"sides\": 8")
                    .replace("\"baseSide\": \"1 m\"", "\"circumradius\": \"1 m\"")))
        .contains(
            "Two sides fewer, as wide across: frame.sides = 6",
            "A tenth narrower: frame.measures.circumradius = 0.9 m");
    // More than six that lack: the first alone is spliced.
    assertThat(levers(with("\"sides\": 4", "\"sides\": 9")))
        .anyMatch(lever -> lever.startsWith("A splice more in panel "))
        .noneMatch(lever -> lever.startsWith("A splice more in panels "));
  }

  /** A lower edge that keeps the band of the sheet may be turned, of all panels or of some. */
  @Test
  void edgesOnTheBandMayBeTurned() {
    String band =
        with("\"width\": \"1.3 m\"}", "\"width\": \"1.3 m\", \"reinforced\": [\"bottom\"]}");
    String all = EarthJob.with(band, "\"raw\"", "\"reinforced\"");
    assertThat(levers(all))
        .contains(
            "Lower edges turned, not kept on the band: cover.hem.kind = turned;"
                + " cover.hem.allowance = 0.05 m")
        .noneMatch(lever -> lever.startsWith("Neighbouring faces"));
    assertThat(turned(all, "panels 2–4"))
        .isEqualTo(JobValue.list(List.of(hem(2, "turned"), hem(3, "turned"), hem(4, "turned"))));
    // The first keeps a hem of its own, and none of the others stands on a band.
    String first =
        EarthJob.with(
            band,
            "{\"kind\": \"raw\"}",
            "{\"kind\": \"reinforced\", \"faces\": [{\"face\": 1, \"kind\": \"turned\","
                + " \"allowance\": \"0.05 m\"}]}");
    List<String> names = found(first).stream().map(ClothLever::name).toList();
    assertThat(names)
        .doesNotContain("Lower edges turned, not kept on the band")
        .anyMatch(name -> name.startsWith("Lower edge turned, not kept on the band, of panel"))
        .anyMatch(name -> name.startsWith("Neighbouring faces"));
    String hems =
        found(first).stream()
            .filter(lever -> lever.name().startsWith("Lower edge turned"))
            .findFirst()
            .orElseThrow()
            .changes()
            .get(0)
            .value()
            .shown();
    assertThat(hems).startsWith("face 1, kind turned, allowance 0.05 m, face ");
    assertThat(levers(band)).noneMatch(lever -> lever.contains("turned"));
    // Of faces with hems of their own each is stated once.
    String own =
        EarthJob.with(
            band,
            "{\"kind\": \"raw\"}",
            "{\"kind\": \"raw\", \"faces\": [{\"face\": 1, \"kind\": \"reinforced\"}, {\"face\": 2,"
                + " \"kind\": \"reinforced\"}, {\"face\": 3, \"kind\": \"reinforced\"}]}");
    Map<String, JobValue> kept = new LinkedHashMap<>();
    kept.put("face", JobValue.number(1));
    kept.put("kind", JobValue.text("reinforced"));
    kept.put("allowance", JobValue.text("0 m"));
    assertThat(turned(own, "panels 2, 3"))
        .isEqualTo(
            JobValue.list(List.of(JobValue.object(kept), hem(2, "turned"), hem(3, "turned"))));
  }

  private static JobValue turned(String text, String panels) {
    ClothLever lever =
        found(text).stream()
            .filter(l -> l.name().equals("Lower edge turned, not kept on the band, of " + panels))
            .findFirst()
            .orElseThrow();
    assertThat(lever.changes()).hasSize(1);
    assertThat(lever.changes().get(0).path()).isEqualTo("cover.hem.faces");
    return lever.changes().get(0).value();
  }

  private static JobValue hem(int face, String kind) {
    Map<String, JobValue> members = new LinkedHashMap<>();
    members.put("face", JobValue.number(face));
    members.put("kind", JobValue.text(kind));
    members.put("allowance", JobValue.text("0.05 m"));
    return JobValue.object(members);
  }
}
