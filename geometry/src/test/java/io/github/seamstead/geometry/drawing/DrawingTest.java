package io.github.seamstead.geometry.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.drawing.PieceDrawing.LineKind;
import io.github.seamstead.geometry.pattern.Demo;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Mark;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.Opening;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceEdge;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Jts;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class DrawingTest {

  private static PatternPiece door() {
    Outline door = Outline.rectangle(0.5, 1).placed(0, Demo.v(0.75, 0.4));
    return Panel.of(
            Demo.trapezoid(2, 4, 0.75),
            PanelSpec.of("P1", Demo.PLAN)
                .withMarks(
                    new PanelMarks("1", List.of("a", "b", "c", "d"), List.of("", "J1", "", "J9")))
                .withOpenings(List.of(Opening.of("door", door, 0.03))))
        .parts()
        .get(0);
  }

  @Test
  void drawingIsInMillimetresWithItsMargin() {
    PatternPiece piece = door();
    PieceDrawing drawing = PieceDrawing.of(piece, 10);
    assertThat(drawing.width()).isCloseTo(piece.cut().bounds().width() * 1000 + 20, within(1e-9));
    PieceDrawing.Line cut = drawing.lines().get(0);
    assertThat(cut.kind()).isEqualTo(LineKind.CUT);
    assertThat(cut.points().stream().mapToDouble(Vector2D::getX).min().orElseThrow())
        .isCloseTo(10, within(1e-9));
    assertThat(cut.points().stream().mapToDouble(Vector2D::getY).max().orElseThrow())
        .isCloseTo(drawing.height() - 10, within(1e-9));
    assertThat(new Outline(cut.points()).area()).isCloseTo(piece.clothArea() * 1e6, within(1e-3));
    assertThat(drawing.lines())
        .extracting(PieceDrawing.Line::kind)
        .contains(
            LineKind.STITCH,
            LineKind.HOLE_CUT,
            LineKind.HOLE_FOLD,
            LineKind.SLIT,
            LineKind.NOTCH,
            LineKind.GRAIN);
    assertThat(drawing.texts()).hasSameSizeAs(piece.marks());
  }

  @Test
  void notchesReachHalfWayIntoTheAllowance() {
    PatternPiece piece = door();
    PieceDrawing drawing = PieceDrawing.of(piece, 0);
    List<PieceDrawing.Line> notches =
        drawing.lines().stream().filter(l -> l.kind() == LineKind.NOTCH).toList();
    // The first on each hip is a pair.
    assertThat(notches).hasSize(piece.notches().size() + 2);
    for (PieceDrawing.Line notch : notches) {
      assertThat(notch.points().get(0).distance(notch.points().get(1))).isCloseTo(20, within(1e-9));
      assertThat(new Outline(drawing.lines().get(0).points()).distanceToEdge(notch.points().get(0)))
          .isLessThan(1e-6);
    }
  }

  /** A bare edge has no allowance to cut into: the notch is a short tick into the cloth. */
  @Test
  void notchesOfBareEdgesPointInward() {
    EdgePlan bare = EdgePlan.of(EdgeAllowance.raw(), EdgeAllowance.finSeam(0), EdgeAllowance.raw());
    PatternPiece piece =
        Panel.of(Demo.trapezoid(2, 4, 0.75), PanelSpec.of("P1", bare)).parts().get(0);
    List<PieceDrawing.Line> notches =
        PieceDrawing.of(piece, 0).lines().stream().filter(l -> l.kind() == LineKind.NOTCH).toList();
    assertThat(notches).isNotEmpty();
    Outline cut = new Outline(PieceDrawing.of(piece, 0).lines().get(0).points());
    for (PieceDrawing.Line notch : notches) {
      assertThat(notch.points().get(0).distance(notch.points().get(1))).isCloseTo(6, within(1e-9));
      assertThat(cut.contains(notch.points().get(1))).isTrue();
      assertThat(cut.distanceToEdge(notch.points().get(1))).isCloseTo(6, within(0.1));
    }
  }

  /** However narrow the piece, its warp arrow is drawn, on the cloth and along the grain. */
  @Test
  void everyPieceShowsItsGrain() {
    for (double width : new double[] {0.03, 0.1, 0.4}) {
      PatternPiece strip =
          Panel.of(Demo.trapezoid(width, 3, 0.6), PanelSpec.of("P1", Demo.PLAN)).parts().get(0);
      List<PieceDrawing.Line> grain =
          PieceDrawing.of(strip, 0).lines().stream()
              .filter(l -> l.kind() == LineKind.GRAIN)
              .toList();
      assertThat(grain).as("width " + width).hasSize(2);
      Vector2D shaft = grain.get(0).points().get(1).subtract(grain.get(0).points().get(0));
      assertThat(Math.atan2(shaft.getY(), shaft.getX())).isCloseTo(strip.grain(), within(1e-9));
    }
  }

  @Test
  void marksLieOnTheClothAndClearOfTheDoor() {
    PatternPiece piece = door();
    for (Mark mark : piece.marks()) {
      assertThat(piece.stitch().contains(mark.at())).as(mark.text()).isTrue();
      assertThat(piece.holes().get(0).finished().contains(mark.at())).as(mark.text()).isFalse();
      assertThat(mark.rotation()).isBetween(-Math.PI / 2, Math.PI / 2);
    }
  }

  @Test
  void turnedOverPieceIsTheMirrorImage() {
    PatternPiece piece = door();
    PatternPiece turned = piece.turnedOver();
    assertThat(turned.goodSide()).isFalse();
    assertThat(turned.marks()).extracting(Mark::text).contains("PLAIN SIDE", "J9");
    assertThat(turned.clothArea()).isCloseTo(piece.clothArea(), within(1e-12));
    for (int i = 0; i < piece.edges().size(); i++) {
      PieceEdge edge = turned.edges().get(i);
      assertThat(turned.stitch().edgeLength(i)).isCloseTo(edge.finishedLength(), within(1e-12));
    }
    for (Notch notch : turned.notches()) {
      assertThat(
              Jts.segment(
                      turned.stitch().vertex(notch.edge()),
                      turned.stitch().vertex(notch.edge() + 1))
                  .distance(Jts.point(notch.onStitch())))
          .isLessThan(1e-9);
    }
    for (int i = 0; i < turned.cutEdgeOwners().size(); i++) {
      int owner = turned.cutEdgeOwners().get(i);
      if (owner >= 0) {
        Vector2D cutEdge = turned.cut().vertex(i + 1).subtract(turned.cut().vertex(i));
        Vector2D edge = turned.stitch().vertex(owner + 1).subtract(turned.stitch().vertex(owner));
        assertThat(Math.abs(cutEdge.normalize().signedArea(edge.normalize()))).isLessThan(1e-9);
        assertThat(cutEdge.dot(edge)).isPositive();
      }
    }
    assertThat(turned.turnedOver()).isEqualTo(piece);
  }

  @Property(tries = 60, seed = "2026110027")
  void sheetsShowAllInkAndNoneIsBlank(
      @ForAll @Scale(4) @DoubleRange(min = 0.02, max = 0.4) double scale,
      @ForAll PaperSize paper,
      @ForAll @Scale(1) @DoubleRange(min = 0, max = 12) double margin,
      @ForAll @Scale(1) @DoubleRange(min = 0, max = 30) double overlap) {
    PieceDrawing drawing = PieceDrawing.of(door(), 10).scaled(scale);
    PrintTiles tiles = PrintTiles.plan(drawing, paper, margin, overlap);
    Geometry shown = Jts.polygon(rectangle(tiles.tiles().get(0).area()));
    for (PrintTiles.Tile tile : tiles.tiles()) {
      Polygon sheet = Jts.polygon(rectangle(tile.area()));
      shown = shown.union(sheet);
      assertThat(hasInk(drawing, sheet)).as("sheet %s", tile.number()).isTrue();
      assertThat(tile.registration())
          .allSatisfy(c -> assertThat(sheet.distance(Jts.point(c))).isLessThan(1e-9));
      assertThat(tile.area().width() + 2 * margin)
          .isCloseTo(tiles.turned() ? paper.height() : paper.width(), within(1e-9));
    }
    Geometry cover = shown.buffer(1e-6);
    for (PieceDrawing.Line line : drawing.lines()) {
      for (LineString segment : segments(line)) {
        assertThat(cover.covers(segment)).isTrue();
      }
    }
    for (PrintTiles.Tile one : tiles.tiles()) {
      for (PrintTiles.Tile next : tiles.tiles()) {
        if (next.row() == one.row() && next.column() == one.column() + 1) {
          assertThat(shared(one, next)).isEqualTo(2);
          assertThat(one.area().maxX() - next.area().minX()).isCloseTo(overlap, within(1e-9));
        }
      }
    }
  }

  @Test
  void blankSheetsAreLeftOut() {
    PieceDrawing drawing = PieceDrawing.of(door(), 10);
    PrintTiles tiles = PrintTiles.plan(drawing, PaperSize.A4, 5, 10);
    assertThat(tiles.pages()).isLessThan(tiles.columns() * tiles.rows());
    assertThat(tiles.tiles())
        .extracting(PrintTiles.Tile::number)
        .startsWith(1, 2)
        .endsWith(tiles.pages());
    assertThat(tiles.tiles().get(0).row()).isEqualTo(1);
  }

  @Test
  void badSheetsAreRefused() {
    PieceDrawing drawing = PieceDrawing.of(door(), 10);
    assertThatThrownBy(() -> PrintTiles.plan(drawing, PaperSize.A4, 0, 120))
        .hasMessageContaining("sheet overlap: given 120 mm");
    assertThatThrownBy(() -> PrintTiles.plan(drawing, PaperSize.A4, 110, 0))
        .hasMessageContaining("sheet overlap: given 0 mm with a margin of 110 mm");
    assertThatThrownBy(() -> PrintTiles.plan(drawing.scaled(50), PaperSize.LETTER, 5, 5))
        .hasMessageContaining("must fit on 1000 sheets");
    assertThatThrownBy(() -> PieceDrawing.of(door(), -1)).hasMessageContaining("drawing margin");
    assertThatThrownBy(() -> drawing.scaled(0)).hasMessageContaining("drawing scale");
  }

  private static boolean hasInk(PieceDrawing drawing, Polygon sheet) {
    for (PieceDrawing.Line line : drawing.lines()) {
      for (LineString segment : segments(line)) {
        if (sheet.distance(segment) < 1e-6) {
          return true;
        }
      }
    }
    // A text is a box as wide as its letters at most, turned about its middle.
    return drawing.texts().stream()
        .anyMatch(
            t ->
                sheet.distance(Jts.point(t.at()))
                    <= t.height() * Math.hypot(0.45 * t.text().length(), 0.5) + 1e-6);
  }

  private static List<LineString> segments(PieceDrawing.Line line) {
    List<Vector2D> p = line.points();
    return java.util.stream.IntStream.range(line.closed() ? 0 : 1, p.size())
        .mapToObj(i -> Jts.segment(p.get((i + p.size() - 1) % p.size()), p.get(i)))
        .toList();
  }

  private static long shared(PrintTiles.Tile one, PrintTiles.Tile next) {
    return one.registration().stream()
        .filter(a -> next.registration().stream().anyMatch(b -> a.distance(b) < 1e-9))
        .count();
  }

  private static Outline rectangle(Bounds area) {
    return Outline.rectangle(area.width(), area.height())
        .placed(0, Demo.v(area.minX(), area.minY()));
  }
}
