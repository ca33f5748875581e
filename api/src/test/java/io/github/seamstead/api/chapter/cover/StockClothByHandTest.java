package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.Grain;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.Objective;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Cancellation;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** The cloth of a document, as panels stand on it and as the layout takes it. */
class StockClothByHandTest {

  private static final double MARGIN = 0.01;

  private static JobDocument document(String cover, String stock) {
    return JobReader.parse(
            """
            {"seamstead": 1,
             "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
             "stock": {%s, "edgeMargin": "10 mm"},
             "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
               "seam": {"kind": "fin", "allowance": "40 mm"}, %s
               "spliceLap": "100 mm"}}
            """
                .formatted(
                    stock,
                    cover.contains("hem") ? cover : "\"hem\": {\"kind\": \"raw\"}, " + cover))
        .document();
  }

  private static Cover cover(String more) {
    return document(more, "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\"}]")
        .cover()
        .orElseThrow();
  }

  private static Stock stock(String text) {
    return document("", text).stock().orElseThrow();
  }

  private static List<ClothKind> kinds(String text, boolean onBand) {
    return ClothKind.of(cover(""), stock(text), onBand, 12);
  }

  private static void is(ClothKind kind, double width, double height, int count) {
    // Kinds are told apart by the millimetre.
    assertThat(kind.width()).isCloseTo(width, within(0.0011)).isLessThanOrEqualTo(width + 1e-9);
    assertThat(kind.height()).isCloseTo(height, within(0.0011)).isLessThanOrEqualTo(height + 1e-9);
    assertThat(kind.count()).isEqualTo(count);
  }

  /** Upright along the longer side, less the margins; the kind of which there is most first. */
  @Test
  void kindsOfSheetsAndRolls() {
    List<ClothKind> kinds =
        kinds(
            "\"sheets\": [{\"id\": \"tiny\", \"length\": \"3 m\", \"width\": \"0.21 m\"},"
                + " {\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\", \"count\": 3},"
                + " {\"id\": \"b\", \"length\": \"2 m\", \"width\": \"5 m\"},"
                + " {\"id\": \"c\", \"length\": \"3 m\", \"width\": \"3 m\", \"copies\": [{\"id\":"
                + " \"c1\"}, {\"id\": \"c2\"}]}],"
                + " \"rolls\": [{\"id\": \"r\", \"length\": \"20 m\", \"width\": \"1.5 m\","
                + " \"count\": 2}]",
            false);
    // A strip of 0.19 m holds no part that laps by 0.1 m on both sides.
    assertThat(kinds).hasSize(3);
    is(kinds.get(0), 2 - 2 * MARGIN, 5 - 2 * MARGIN, 4);
    // No panel is larger than 12 m: more of the roll does not count.
    is(kinds.get(1), 1.5 - 2 * MARGIN, 12, 2);
    is(kinds.get(2), 3 - 2 * MARGIN, 3 - 2 * MARGIN, 2);
  }

  /** With the hem on a band the cloth stands on it and gives no margin there. */
  @Test
  void kindsOnABand() {
    String sheet =
        "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\", \"reinforced\":"
            + " [\"%s\"]}]";
    for (String edge : List.of("bottom", "top")) {
      List<ClothKind> kinds = kinds(sheet.formatted(edge), true);
      assertThat(kinds).hasSize(1);
      is(kinds.get(0), 5 - 2 * MARGIN, 2 - MARGIN, 1);
    }
    for (String edge : List.of("left", "right")) {
      List<ClothKind> kinds = kinds(sheet.formatted(edge), true);
      assertThat(kinds).hasSize(1);
      is(kinds.get(0), 2 - 2 * MARGIN, 5 - MARGIN, 1);
    }
    assertThatThrownBy(() -> kinds(sheet.replace(", \"reinforced\": [\"%s\"]", ""), true))
        .hasMessageContaining("must be turned or raw");
  }

  private static final String ELL =
      """
      "sheets": [{"id": "ell", "length": "5 m", "width": "4 m", "bands": [1], "outline": [
        {"x": "0 m", "y": "0 m"}, {"x": "5 m", "y": "0 m"}, {"x": "5 m", "y": "2.8 m"},
        {"x": "3 m", "y": "2.8 m"}, {"x": "3 m", "y": "4 m"}, {"x": "0 m", "y": "4 m"}]}]
      """;

  /** An angle holds what is in its box, and surely 5 m by 2.8 m, found to two cells of 64. */
  @Test
  void kindsOfOddSheets() {
    double cell = 2 * 5 / 64.0;
    List<ClothKind> whole = kinds(ELL, false);
    assertThat(whole).hasSize(2);
    is(whole.get(0), 4 - 2 * MARGIN, 5 - 2 * MARGIN, 1);
    assertThat(whole.get(1).width()).isCloseTo(2.8 - 2 * MARGIN, within(cell));
    assertThat(whole.get(1).height()).isCloseTo(5 - 2 * MARGIN, within(cell));
    List<ClothKind> onBand = kinds(ELL, true);
    assertThat(onBand).hasSize(2);
    is(onBand.get(0), 5 - 2 * MARGIN, 4 - MARGIN, 1);
    assertThat(onBand.get(1).width()).isCloseTo(5 - 2 * MARGIN, within(cell));
    assertThat(onBand.get(1).height()).isCloseTo(2.8 - MARGIN, within(cell));
  }

  /** Splices of neighbours keep two laps apart, or an eighth of the cloth. */
  @Test
  void splicesAreStaggered() {
    Cover plain = cover("\"staggerSplices\": false,");
    Cover staggered = cover("\"staggerSplices\": true,");
    assertThat(new ClothKind(2, 4, 1).rule(plain, 2, 4)).isEqualTo(SpliceRule.of(2, 4, 0.1));
    assertThat(new ClothKind(2, 4, 1).rule(staggered, 2, 4).stagger()).isEqualTo(2 * 0.1);
    assertThat(new ClothKind(2, 4, 1).rule(staggered, 2, 4).steps()).isEqualTo(1);
    assertThat(new ClothKind(2, 1.2, 1).rule(staggered, 1, 4).stagger()).isEqualTo(1.2 / 8);
    assertThat(new ClothKind(2, 4, 3).lower(1.5)).isEqualTo(new ClothKind(2, 1.5, 3));
    assertThat(new ClothKind(2, 4, 3).lower(5)).isEqualTo(new ClothKind(2, 4, 3));
  }

  private static LayoutRequest request(String stock) {
    return request("", stock);
  }

  private static LayoutRequest request(String cover, String stock) {
    Outline face =
        new Outline(List.of(Vector2D.of(0, 0), Vector2D.of(4, 0), Vector2D.of(2, Math.sqrt(13))));
    PanelDrawer drawer =
        new PanelDrawer(cover(cover), Collections.nCopies(4, face), new Cancellation());
    List<Panel> panels = List.of(drawer.panel(1, Optional.empty()));
    return StockCloth.request(CutShape.of(panels, List.of()), stock(stock));
  }

  @Test
  void theLayoutTakesTheStockAsItIsWritten() {
    LayoutRequest request =
        request(
            "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\", \"count\": 3,"
                + " \"cost\": 40, \"preference\": 2, \"reinforced\": [\"right\", \"left\"],"
                + " \"flaws\": [{\"x\": \"1 m\", \"y\": \"0.5 m\", \"width\": \"0.2 m\","
                + " \"height\": \"0.1 m\"}]}],"
                + " \"rolls\": [{\"id\": \"r\", \"length\": \"20 m\", \"width\": \"1.5 m\","
                + " \"count\": 2, \"costPerMetre\": 7, \"reinforced\": [\"bottom\", \"top\"]}],"
                + " \"spacing\": \"5 mm\"");
    assertThat(request.spacing()).isEqualTo(0.005);
    assertThat(request.edgeMargin()).isEqualTo(0.01);
    assertThat(request.objective()).isEqualTo(Objective.LEAST_COST);
    Sheet sheet = (Sheet) request.stock().get(0);
    assertThat(sheet.id()).isEqualTo("a");
    assertThat(sheet.count()).isEqualTo(3);
    assertThat(sheet.cost()).isEqualTo(40);
    assertThat(sheet.preference()).isEqualTo(2);
    // Edges run counter-clockwise from the lower one.
    assertThat(sheet.reinforcedEdges()).containsExactly(1, 3);
    assertThat(sheet.outline().bounds().width()).isEqualTo(5);
    assertThat(sheet.flaws())
        .singleElement()
        .satisfies(
            flaw -> {
              assertThat(flaw.bounds().minX()).isCloseTo(1, within(1e-12));
              assertThat(flaw.bounds().maxX()).isCloseTo(1.2, within(1e-12));
              assertThat(flaw.bounds().minY()).isCloseTo(0.5, within(1e-12));
              assertThat(flaw.bounds().maxY()).isCloseTo(0.6, within(1e-12));
            });
    Roll roll = (Roll) request.stock().get(1);
    assertThat(roll.count()).isEqualTo(2);
    assertThat(roll.costPerMetre()).isEqualTo(7);
    assertThat(roll.reinforcedEdges()).containsExactly(0, 2);
    assertThat(roll.outline().bounds().height()).isEqualTo(1.5);
  }

  /** What costs nothing is used up by the piece; one price is enough to look for the least. */
  @Test
  void pricesDecideWhatIsLookedFor() {
    String bare = "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\"}]";
    String rolls = ", \"rolls\": [{\"id\": \"r\", \"length\": \"20 m\", \"width\": \"2 m\"%s}]";
    assertThat(request(bare + rolls.formatted("")).objective()).isEqualTo(Objective.FEWEST_ITEMS);
    assertThat(request(bare + rolls.formatted(", \"costPerMetre\": 7")).objective())
        .isEqualTo(Objective.LEAST_COST);
    assertThat(request(bare.replace("\"2 m\"}", "\"2 m\", \"cost\": 3}")).objective())
        .isEqualTo(Objective.LEAST_COST);
  }

  /** Cloth with a grain turns any way but the one; without, by quarters. */
  @Test
  void piecesKeepTheGrainWhereItIsAskedFor() {
    String bare = "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\"}]";
    Piece free = request(bare).pieces().get(0);
    assertThat(free.id()).isEqualTo("shape-1");
    assertThat(free.count()).isEqualTo(1);
    assertThat(free.grain()).isEmpty();
    assertThat(free.rotations()).isEqualTo(Rotations.of(0, Math.PI / 2, Math.PI, 3 * Math.PI / 2));
    assertThat(free.hem()).isEmpty();
    Piece kept = request(bare + ", \"keepGrain\": true").pieces().get(0);
    // A quarter of a turn from the first axis: upwards.
    assertThat(kept.grain()).contains(new Grain(Math.PI / 2, false));
    assertThat(kept.rotations()).isEqualTo(Rotations.anyAngle());
    assertThat(request("\"hem\": {\"kind\": \"reinforced\"},", bare).pieces().get(0).hem())
        .isPresent();
  }

  /** Edges with a band are counted as they are written, also where the list runs clockwise. */
  @Test
  void bandsOfOddSheets() {
    StockItem ell = request(ELL).stock().get(0);
    assertThat(ell.outline().vertices())
        .containsExactly(
            Vector2D.of(0, 0),
            Vector2D.of(5, 0),
            Vector2D.of(5, 2.8),
            Vector2D.of(3, 2.8),
            Vector2D.of(3, 4),
            Vector2D.of(0, 4));
    assertThat(ell.reinforcedEdges()).containsExactly(0);
    // Clockwise: up the left leg, down the right one, back along the foot.
    double[] lengths = {Math.hypot(1.5, 3.6), Math.hypot(1.9, 3.6), 3.4};
    for (int band = 1; band <= 3; band++) {
      Outline[] outline = new Outline[1];
      StockItem triangle =
          request(
                  """
                  "sheets": [{"id": "tri", "length": "3.4 m", "width": "3.6 m", "bands": [%d],
                    "outline": [{"x": "0 m", "y": "0 m"}, {"x": "1.5 m", "y": "3.6 m"},
                    {"x": "3.4 m", "y": "0 m"}]}]
                  """
                      .formatted(band))
              .stock()
              .get(0);
      outline[0] = triangle.outline();
      double length = lengths[band - 1];
      assertThat(triangle.reinforcedEdges())
          .singleElement()
          .satisfies(
              edge -> assertThat(outline[0].edgeLength(edge)).isCloseTo(length, within(1e-12)));
    }
  }
}
