package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceEdge;
import io.github.seamstead.materials.floor.BatchPlan;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What has to stand on the cards of pieces, cloth, seams and mixer. */
class CardsTest {

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model"})
  void everyCopyHasItsOwnEdgeNames(String job) {
    Desk desk = Sheets.of(job);
    for (CutShape shape : desk.plan().cover().orElseThrow().cuts()) {
      String card = Sheets.text(desk, PieceCards.title(shape));
      for (PatternPiece piece : shape.pieces()) {
        StringBuilder row = new StringBuilder(piece.label());
        for (String side : List.of("R", "L")) {
          for (PieceEdge edge : piece.edges()) {
            if (edge.letter().endsWith(side)) {
              row.append(" ").append(edge.letter()).append(" ").append(edge.joint());
            }
          }
        }
        assertThat(card).contains(row);
      }
    }
  }

  /** A panel drawn from the numbers of its card alone has the checks that the card states. */
  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "class-model"})
  void thePieceCanBeDrawnFromTheCard(String job) {
    Desk desk = Sheets.of(job);
    double unit = job.equals("class-model") ? 1000 : 1;
    int drawn = 0;
    for (CutShape shape : desk.plan().cover().orElseThrow().cuts()) {
      BaseLine base = BaseLine.of(shape.pattern());
      if (base.isCurved()) {
        continue;
      }
      String card = Sheets.text(desk, PieceCards.title(shape));
      List<Vector2D> corners = new ArrayList<>();
      for (int i = 0; i < base.size(); i++) {
        String row = " " + BaseLine.letter(i) + " ([\\d.]+)\u00a0m+ ([\\d.]+)\u00a0m";
        var m = java.util.regex.Pattern.compile(row).matcher(card);
        assertThat(m.find()).as(shape.name() + BaseLine.letter(i)).isTrue();
        corners.add(
            Vector2D.of(
                Double.parseDouble(m.group(1)) / unit, Double.parseDouble(m.group(2)) / unit));
      }
      for (int i = 0; i < corners.size(); i++) {
        double length = shape.pattern().cut().edgeLength(base.index(i));
        assertThat(corners.get(i).distance(corners.get((i + 1) % corners.size())))
            .as(shape.name())
            .isCloseTo(length, within(0.0016));
      }
      List<String> checks = Sheets.find(card, "([a-z]–[a-z] [\\d.]+)\u00a0m+");
      assertThat(checks).isNotEmpty();
      for (String check : checks) {
        double far =
            corners.get(check.charAt(0) - 'a').distance(corners.get(check.charAt(2) - 'a'));
        assertThat(far * unit)
            .isCloseTo(Double.parseDouble(check.substring(4)), within(0.0016 * unit));
      }
      drawn++;
    }
    assertThat(drawn).isPositive();
  }

  @Test
  void holesNotchesAndCurvesHaveMeasures() {
    Desk desk = Sheets.of("seed-loft");
    // The door's lower corners: 0.42 and 1.18 m along the face, whose corner is 0.0609 m inside.
    assertThat(Sheets.part(desk, "Piece card"))
        .contains(
            "Hole “door”, along / up: 0.481\u00a0m / 0.200\u00a0m · 1.241\u00a0m / 0.200\u00a0m")
        .contains("(double, the lowest of the panel)")
        .contains("The curve: radius 0.92");
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model"})
  void everyPieceStandsOnOneCutCard(String job) {
    Desk desk = Sheets.of(job);
    int placed =
        desk.plan().layout().orElseThrow().result().used().stream()
            .map(StockUse::placements)
            .mapToInt(List::size)
            .sum();
    StringBuilder cards = new StringBuilder();
    desk.sheets().stream()
        .filter(s -> s.part().equals("Cut card"))
        .forEach(s -> cards.append(s.body()));
    assertThat(Sheets.find(cards.toString(), "data-k=\"cut-")).hasSize(placed);
  }

  /** The two marked corners of a piece lie as far apart on the cloth as on its own card. */
  @Test
  void twoCornersFixAPieceOnItsSheet() {
    String card = Sheets.text(Sheets.of("seed-loft"), "Cut card: curtain-long 1");
    var m =
        java.util.regex.Pattern.compile(" 1-1 ([\\d.]+) ([\\d.]+) ([\\d.]+) ([\\d.]+) ")
            .matcher(card);
    assertThat(m.find()).isTrue();
    double dx = Double.parseDouble(m.group(3)) - Double.parseDouble(m.group(1));
    double dy = Double.parseDouble(m.group(4)) - Double.parseDouble(m.group(2));
    assertThat(Math.hypot(dx, dy)).isCloseTo(1.740, within(0.0015));
    assertThat(card).contains("Ringed: a flaw");
  }

  @Test
  void theJoinCardHasEverySpliceAndEverySeamInOrder() {
    Desk desk = Sheets.of("seed-loft");
    String card = Sheets.text(desk, "Join card");
    String seams = card;
    assertThat(Sheets.find(seams, "\\d+-1 under \\d+-2")).hasSize(12).contains("1-1 under 1-2");
    int at = 0;
    for (JoinStep step : desk.plan().joining().orElseThrow().order().orElseThrow().steps()) {
      Joint joint = step.joint();
      String line =
          step.number()
              + " "
              + joint.mark().text()
              + " "
              + joint.first().label()
              + " "
              + joint.second().label();
      assertThat(card.indexOf(line)).as(line).isGreaterThan(at);
      at = card.indexOf(line);
    }
    SeamBill bill = desk.plan().joining().orElseThrow().seams();
    for (SeamKind kind : bill.kinds()) {
      assertThat(seams)
          .contains(kind.label())
          .contains(kind.lap())
          .contains(desk.sizes().rough(bill.length(kind)));
    }
  }

  @Test
  void theMixerCardHasABoxForEachLoadInTheOrderOfLaying() {
    Desk desk = Sheets.of("seed-loft");
    FloorPart floor = desk.plan().floor().orElseThrow();
    Sheet sheet =
        desk.sheets().stream().filter(s -> s.part().equals("Mixer card")).findFirst().orElseThrow();
    for (int b = 0; b < floor.batches().size(); b++) {
      BatchPlan plan = floor.batches().get(b);
      List<String> boxes = Sheets.find(sheet.body().toString(), "data-k=\"load" + b + "-(\\d+)\"");
      List<String> wanted = new ArrayList<>();
      for (int load = 1; load <= boxes.size(); load++) {
        wanted.add(Integer.toString(load));
      }
      assertThat(boxes).isEqualTo(wanted);
      assertThat(boxes).hasSize(plan.likelyCount());
    }
    List<String> sectors = Sheets.find(sheet.body().toString(), "<td><b>(\\d+)</b></td>");
    assertThat(sectors).hasSize(12).startsWith("1", "2").endsWith("12");
  }

  @Test
  void theSoilCardNamesOneNextTestAndTheTiles() {
    Desk desk = Sheets.of("seed-loft");
    String card = Sheets.text(desk, "Soil card");
    assertThat(card)
        .contains("bank-soil")
        .contains(desk.plan().soils().get(0).nextTests().get(0).kind().label())
        .contains("pack: 1 part bank-soil to 2 parts")
        .contains("coat: 1 part bank-soil to 2½ parts")
        // The first rung is richer than wanted; it shows what the sand does.
        .contains("1. 1 : 1")
        .contains("2. 1 : 2");
    double next = desk.plan().trials().get(0).reading().nextSandParts().orElseThrow();
    assertThat(card).containsPattern("\\d\\. 1 : " + Sizes.number(next));
  }

  @Test
  void theRopeCardHasTheLimitsOfTheParts() {
    Desk desk = Sheets.of("seed-loft");
    String card = Sheets.text(desk, "Rope and peg card");
    var h = desk.plan().handling().orElseThrow();
    assertThat(card)
        .contains(desk.sizes().speedAtMost(h.wind().limitGust()))
        .contains(desk.sizes().speedAtMost(h.wind().stopGust()))
        .contains(
            desk.sizes().pullAtLeast(desk.plan().anchoring().orElseThrow().screen().pegPull()));
  }

  @Test
  void theFrameCardHasEveryMember() {
    Desk desk = Sheets.of("seed-loft");
    String card = Sheets.text(desk, "Frame card");
    desk.plan()
        .frame()
        .orElseThrow()
        .members()
        .orElseThrow()
        .members()
        .forEach(
            m ->
                assertThat(card)
                    .contains(
                        m.name() + " " + m.count() + " " + desk.sizes().length(m.cutLength())));
  }
}
