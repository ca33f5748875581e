package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layouts whose best length is known: rows of triangles and trapezoids, and squared rectangles. */
class KnownLayoutsOutsideTest {

  private static final Source ROWS =
      Source.derived("hand sum from first principles: triangles turned about tile a strip");
  private static final Source TRAPEZOIDS =
      Source.derived("hand sum from first principles: two trapezoids make a parallelogram");
  private static final Source MORON =
      Source.fromMemory("Z. Moron", "Rectangles cut into unequal squares", "1925", "33 by 32");
  private static final Source TUTTE =
      Source.fromMemory(
          "Brooks, Smith, Stone, Tutte", "The dissection of rectangles into squares", "1940", "");
  private static final Source DUIJVESTIJN =
      Source.fromMemory(
          "A. Duijvestijn", "Simple perfect squared square of lowest order", "1978", "112 by 112");
  private static final Source PENTOMINOES =
      Source.fromMemory("S. Golomb", "Polyominoes", "1994", "the twelve pentominoes fill 60 cells");

  private static LayoutResult laid(LayoutRequest request) {
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(3_000), 1));
    assertThat(result.unplaced()).isEmpty();
    return result;
  }

  private static LayoutRequest row(Outline panel, int count, double width) {
    return LayoutRequest.of(
            List.of(Piece.of("p", panel).withCount(count).withRotations(Rotations.of(0, Math.PI))),
            List.of(Roll.of("roll", width, 50)))
        .withObjective(Objective.LEAST_LENGTH);
  }

  /**
   * k triangles of base a, turned about by turns, take (k + 1) a / 2 of a strip of their height.
   */
  @ParameterizedTest
  @CsvSource({"5,2", "6,2", "8,1.5", "10,1.2", "12,1.1", "7,1.8"})
  void trianglesInARow(int count, double base) {
    double height = 2.5;
    Outline triangle = CuttingLayoutTest.outline(0, 0, base, 0, base / 2, height);
    LayoutRequest request = row(triangle, count, height);
    LayoutResult result = laid(request);
    String what = count + " triangles of base " + base + " m on a roll of their height";
    OutsideCheck.of("geometry.layout.rowlength", what + ", m", ROWS)
        .expect((count + 1) * base / 2)
        .within(1e-6)
        .got(LayoutSums.rowLength(request, result, Steps.none()).orElseThrow());
    OutsideCheck.of("geometry.layout.density", what, ROWS)
        .expect(count / (count + 1.0))
        .within(1e-6)
        .got(LayoutSums.density(request, result, Steps.none()));
  }

  /** n trapezoids turned about take n (b + t) / 2 and half of what one leans over. */
  @ParameterizedTest
  @CsvSource({"4,2,1", "5,2.4,0.6", "6,1.9,1.1", "9,1.2,0.4"})
  void trapezoidsInARow(int count, double base, double top) {
    double height = 2;
    double inset = (base - top) / 2;
    Outline panel = CuttingLayoutTest.outline(0, 0, base, 0, base - inset, height, inset, height);
    LayoutRequest request = row(panel, count, height);
    OutsideCheck.of(
            "geometry.layout.rowlength",
            count + " trapezoids " + base + " to " + top + " m on a roll of their height, m",
            TRAPEZOIDS)
        .expect(count * (base + top) / 2 + inset)
        .within(1e-6)
        .got(LayoutSums.rowLength(request, laid(request), Steps.none()).orElseThrow());
  }

  private record Squared(String name, Source source, int width, int length, int... sides) {}

  static Stream<Squared> squared() {
    return Stream.of(
        new Squared("33 by 32", MORON, 32, 33, 1, 4, 7, 8, 9, 10, 14, 15, 18),
        new Squared("69 by 61", TUTTE, 61, 69, 2, 5, 7, 9, 16, 25, 28, 33, 36),
        new Squared(
            "112 by 112",
            DUIJVESTIJN,
            112,
            112,
            2,
            4,
            6,
            7,
            8,
            9,
            11,
            15,
            16,
            17,
            18,
            19,
            24,
            25,
            27,
            29,
            33,
            35,
            37,
            42,
            50));
  }

  /** Squares that are known to fill a rectangle: by area no strip can be shorter than that. */
  @ParameterizedTest
  @org.junit.jupiter.params.provider.MethodSource("squared")
  void boundsOfSquaredRectangles(Squared squared) {
    List<Piece> pieces = new ArrayList<>();
    for (int side : squared.sides()) {
      pieces.add(Piece.of("s" + side, Outline.rectangle(side / 100.0, side / 100.0)));
    }
    LayoutRequest request =
        LayoutRequest.of(pieces, List.of(Roll.of("roll", squared.width() / 100.0, 50)))
            .withObjective(Objective.LEAST_LENGTH);
    LayoutResult result = laid(request);
    OutsideCheck.of(
            "geometry.layout.bound",
            "squares that fill " + squared.name() + ", least strip",
            squared.source())
        .expect(squared.length())
        .within(1e-6)
        .got(100 * LayoutSums.lengthBound(request, result, Steps.none()));
    OutsideCheck.of(
            "geometry.layout.density",
            "squares that fill " + squared.name() + ", density times length laid",
            squared.source())
        .expect(squared.length())
        .within(1e-6)
        .got(100 * result.usedLength() * LayoutSums.density(request, result, Steps.none()));
  }

  /** 60 cells fill strips 3, 4, 5 and 6 wide to 20, 15, 12 and 10. */
  @ParameterizedTest
  @CsvSource({"3,20", "4,15", "5,12", "6,10"})
  void boundsOfPentominoes(int width, double length) {
    OutsideCheck.of(
            "geometry.layout.bound", "twelve pentominoes on a strip of " + width, PENTOMINOES)
        .expect(length)
        .within(1e-9)
        .got(
            LayoutMeasures.lowerBound(60, width, 5.0 / Math.max(1, width - 2), 0, 0, Steps.none()));
  }
}
