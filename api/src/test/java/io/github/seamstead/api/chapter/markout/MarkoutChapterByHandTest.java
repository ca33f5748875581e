package io.github.seamstead.api.chapter.markout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.Fixture;
import org.junit.jupiter.api.Test;

/** One triangle marked out by offsets and by two tapes. */
class MarkoutChapterByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t", "units": "%s"},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"}}}
      """;

  private static Fixture planned(String units) {
    return Fixture.of(TEXT.formatted(units), Chapter.MARKOUT);
  }

  /** Each corner of the cut line stands where its two lengths meet, to half a millimetre. */
  @Test
  void theTablesAreTheCutLine() {
    Fixture f = planned("metric");
    assertThat(f.at("/markout")).hasSize(1);
    assertThat(f.at("/markout/0/shape").asText()).isEqualTo("shape-1");
    assertThat(f.number("/markout/0/division_m")).isEqualTo(0.001);
    JsonNode cut = f.at("/cover/shapes/0/cut_m");
    int edge = f.at("/markout/0/baselineEdge").asInt();
    double[] a = {cut.get(edge).get(0).asDouble(), cut.get(edge).get(1).asDouble()};
    int next = (edge + 1) % cut.size();
    double[] b = {cut.get(next).get(0).asDouble(), cut.get(next).get(1).asDouble()};
    double base = Math.hypot(b[0] - a[0], b[1] - a[1]);
    assertThat(f.number("/markout/0/baseline_m")).isCloseTo(base, within(1e-9));
    assertThat(f.at("/markout/0/offsets")).hasSameSizeAs(cut);
    for (JsonNode row : f.at("/markout/0/offsets")) {
      JsonNode corner = cut.get((row.at("/corner").asInt() + edge) % cut.size());
      double x = corner.get(0).asDouble() - a[0];
      double y = corner.get(1).asDouble() - a[1];
      double along = (x * (b[0] - a[0]) + y * (b[1] - a[1])) / base;
      double off = (y * (b[0] - a[0]) - x * (b[1] - a[1])) / base;
      assertThat(row.at("/along_m").asDouble()).isCloseTo(along, within(0.00051));
      assertThat(row.at("/off_m").asDouble()).isCloseTo(off, within(0.00051));
      assertThat(row.at("/error_m").asDouble())
          .isCloseTo(
              Math.hypot(row.at("/along_m").asDouble() - along, row.at("/off_m").asDouble() - off),
              within(1e-9));
    }
    for (JsonNode row : f.at("/markout/0/twoTapes")) {
      JsonNode corner = cut.get((row.at("/corner").asInt() + edge) % cut.size());
      double fromA = Math.hypot(corner.get(0).asDouble() - a[0], corner.get(1).asDouble() - a[1]);
      double fromB = Math.hypot(corner.get(0).asDouble() - b[0], corner.get(1).asDouble() - b[1]);
      assertThat(row.at("/fromA_m").asDouble()).isCloseTo(fromA, within(0.00051));
      assertThat(row.at("/fromB_m").asDouble()).isCloseTo(fromB, within(0.00051));
      assertThat(row.at("/error_m").asDouble()).isLessThan(0.01);
    }
    for (JsonNode check : f.at("/markout/0/checks")) {
      JsonNode from = cut.get((check.at("/from").asInt() + edge) % cut.size());
      JsonNode to = cut.get((check.at("/to").asInt() + edge) % cut.size());
      assertThat(check.at("/length_m").asDouble())
          .isCloseTo(
              Math.hypot(
                  from.get(0).asDouble() - to.get(0).asDouble(),
                  from.get(1).asDouble() - to.get(1).asDouble()),
              within(0.00051));
    }
    assertThat(f.at("/markout/0/checks")).isNotEmpty();
    assertThat(f.at("/markout/0/fits").asBoolean()).isTrue();
    assertThat(f.at("/markout/0/twoTapesFit").asBoolean()).isTrue();
    assertThat(f.worked("geometry.markout"))
        .containsExactly(
            "geometry.markout.baseline", "geometry.markout.offset", "geometry.markout.twotapes");
    assertThat(f.assumed()).anyMatch(a2 -> a2.startsWith("(marking out): "));
    assertThat(f.read(Chapter.MARKOUT))
        .anyMatch(line -> line.startsWith("Each table needs a tape"))
        .anyMatch(line -> line.startsWith("By offsets: "))
        .anyMatch(line -> line.startsWith("By two tapes: "))
        .anyMatch(line -> line.startsWith("Then check: "))
        .anyMatch(line -> line.contains("at mark A"))
        .anyMatch(line -> line.contains("at mark B"))
        .anyMatch(line -> line.startsWith("By offsets the template fits, by two tapes it fits"))
        .anyMatch(line -> line.startsWith("Marking out "));
  }

  @Test
  void imperialTapesAreDividedInSixteenths() {
    Fixture f = planned("imperial");
    assertThat(f.number("/markout/0/division_m")).isCloseTo(0.0254 / 16, within(1e-12));
  }
}
