package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.StockCloth;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.geometry.layout.LayoutCheck;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.pattern.EdgeRole;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Covers from sheets of any outline, copies with their own flaws, and hems that differ by face. */
class OddClothTest {

  private static final String ELL =
      """
      {"id": "ell", "length": "5 m", "width": "4 m", "bands": [1], "outline": [
        {"x": "0 m", "y": "0 m"}, {"x": "5 m", "y": "0 m"}, {"x": "5 m", "y": "2.8 m"},
        {"x": "3 m", "y": "2.8 m"}, {"x": "3 m", "y": "4 m"}, {"x": "0 m", "y": "4 m"}]}
      """;

  /** Written clockwise: its third edge is the one along the foot. */
  private static final String TRIANGLES =
      """
      {"id": "tri", "length": "3.4 m", "width": "3.6 m", "bands": [3], "outline": [
        {"x": "0 m", "y": "0 m"}, {"x": "1.7 m", "y": "3.6 m"}, {"x": "3.4 m", "y": "0 m"}],
       "copies": [{"id": "tri-whole"}, {"id": "tri-torn", "flaws": [
        {"x": "1 m", "y": "0.2 m", "width": "0.3 m", "height": "0.2 m", "note": "tear"}]}]}
      """;

  private static String job(String sheets, String hem) {
    return """
    {"seamstead": 1,
     "site": {"name": "odd heap", "crew": {"people": 3}},
     "frame": {"sides": 6, "measures": {"baseSide": "1.6 m", "height": "2.2 m"}},
     "cover": {"fabric": {"massPerArea": "600 g/m2"}, "seam": {"kind": "fin", "allowance": "40 mm"},
      "hem": %s},
     "stock": {"sheets": [%s], "spacing": "5 mm", "edgeMargin": "10 mm"}}
    """
        .formatted(hem, sheets);
  }

  private static final String MIXED_HEM =
      """
      {"kind": "turned", "allowance": "60 mm",
       "faces": [{"face": 2, "kind": "reinforced"}, {"face": 5, "kind": "reinforced"}]}
      """;

  private static JobPlan plan(String text) {
    return JobPlanner.plan(JobReader.parse(text), PlanOptions.defaults());
  }

  @Test
  void oddSheetsAreLaidAndHeldToTheirOutlinesFlawsAndBands() {
    String text = job(ELL + "," + TRIANGLES, MIXED_HEM);
    JobPlan plan = plan(text);
    CoverPart cover = plan.cover().orElseThrow();
    LayoutPart layout = plan.layout().orElseThrow();
    assertThat(layout.result().unplaced()).isEmpty();
    var stock = JobReader.parse(text).document().stock().orElseThrow();
    assertThat(LayoutCheck.faults(StockCloth.request(cover.cuts(), stock), layout.result()))
        .isEmpty();
    assertThat(layout.stock())
        .extracting(item -> item.id() + " × " + item.count() + ": " + item.flaws().size())
        .containsExactly("ell × 1: 0", "tri-whole × 1: 0", "tri-torn × 1: 1");
    // The clockwise list is turned round and the band stays along the foot.
    assertThat(layout.stock().get(1).reinforcedEdges())
        .singleElement()
        .satisfies(e -> assertThat(layout.stock().get(1).outline().edgeLength(e)).isEqualTo(3.4));
    List<Placement> onBands =
        layout.result().used().stream()
            .map(StockUse::placements)
            .flatMap(List::stream)
            .filter(Placement::onReinforcedEdge)
            .toList();
    assertThat(onBands).hasSize(2);
  }

  @Test
  void eachFaceHasItsOwnHem() {
    JobPlan plan = plan(job(ELL + "," + TRIANGLES, MIXED_HEM));
    CoverPart cover = plan.cover().orElseThrow();
    for (int face = 1; face <= 6; face++) {
      EdgeRole role = cover.panels().get(face - 1).parts().get(0).edges().get(0).allowance().role();
      boolean kept = face == 2 || face == 5;
      assertThat(role).isEqualTo(kept ? EdgeRole.REINFORCED : EdgeRole.HEM);
    }
    // Four of six lower edges are folded.
    JoiningPart joining = plan.joining().orElseThrow();
    assertThat(joining.seams().length(SeamKind.HEM))
        .isCloseTo(4 * cover.face(1).edgeLength(0), within(1e-9));
  }

  @Test
  void anOddSheetOutsideWhichAPanelWouldLieTakesNone() {
    // A box of 3 m by 3 m would hold a panel; a sheet along its diagonal does not.
    String sliver =
        """
        {"id": "sliver", "length": "3 m", "width": "3 m", "count": 6, "outline": [
          {"x": "0 m", "y": "0 m"}, {"x": "0.4 m", "y": "0 m"}, {"x": "3 m", "y": "2.6 m"},
          {"x": "3 m", "y": "3 m"}, {"x": "2.6 m", "y": "3 m"}, {"x": "0 m", "y": "0.4 m"}]}
        """;
    JobPlan plan = plan(job(sliver, "{\"kind\": \"raw\"}"));
    LayoutPart layout = plan.layout().orElseThrow();
    layout
        .result()
        .used()
        .forEach(
            use ->
                use.placements().forEach(p -> assertThat(layout.placed(p).area()).isLessThan(1.6)));
  }

  @Test
  void whatIsStatedIsWrittenAgain() {
    Job job = JobReader.parse(job(ELL + "," + TRIANGLES, MIXED_HEM));
    assertThat(JobReader.parse(JobWriter.text(job)).document()).isEqualTo(job.document());
  }

  @Test
  void slipsOfOddSheetsAreNamedAtTheirKeys() {
    String plain = "{\"kind\": \"raw\"}";
    Stream.of(
            new String[] {
              ELL.replace("\"5 m\", \"width\"", "\"6 m\", \"width\""), "$.stock.sheets[0].outline"
            },
            new String[] {ELL.replace("[1]", "[7]"), "$.stock.sheets[0].bands[0]"},
            new String[] {
              ELL.replace("\"bands\": [1]", "\"reinforced\": [\"top\"]"),
              "$.stock.sheets[0].reinforced"
            },
            new String[] {
              TRIANGLES.replace("\"tri-torn\"", "\"tri-whole\""), "$.stock.sheets[0].copies[1].id"
            },
            new String[] {
              TRIANGLES.replace("\"bands\"", "\"count\": 2, \"bands\""), "$.stock.sheets[0].count"
            },
            new String[] {
              TRIANGLES.replace("\"0.2 m\", \"width\"", "\"3.6 m\", \"width\""),
              "$.stock.sheets[0].copies[1].flaws[0]"
            },
            new String[] {
              ELL.replace("{\"x\": \"3 m\", \"y\": \"4 m\"}", "{\"x\": \"6 m\", \"y\": \"-1 m\"}"),
              "$.stock.sheets[0].outline[4].y"
            })
        .forEach(
            wrong ->
                assertThatThrownBy(() -> JobReader.parse(job(wrong[0], plain)))
                    .isInstanceOf(JobFaultsException.class)
                    .hasMessageContaining(wrong[1]));
  }

  @Test
  void slipsOfHemsAreNamedAtTheirKeys() {
    for (String face : List.of("7", "2, \"kind\": \"raw\"}, {\"face\": 2")) {
      String hem = "{\"kind\": \"raw\", \"faces\": [{\"face\": " + face + ", \"kind\": \"raw\"}]}";
      assertThatThrownBy(() -> JobReader.parse(job(ELL, hem)))
          .isInstanceOf(JobFaultsException.class)
          .hasMessageContaining("$.cover.hem.faces[");
    }
  }
}
