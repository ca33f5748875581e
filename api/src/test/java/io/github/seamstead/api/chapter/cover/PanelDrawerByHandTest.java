package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceEdge;
import io.github.seamstead.geometry.pattern.PieceKind;
import io.github.seamstead.geometry.pattern.Splice;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Cancellation;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Panels of six trapeziums of 2 m and 0.4 m, 2.4 m high. */
class PanelDrawerByHandTest {

  private static final Outline FACE =
      new Outline(
          List.of(
              Vector2D.of(0, 0), Vector2D.of(2, 0), Vector2D.of(1.2, 2.4), Vector2D.of(0.8, 2.4)));

  private static Cover cover(String more) {
    return JobReader.parse(
            """
            {"seamstead": 1,
             "frame": {"sides": 6, "measures": {"baseSide": "2 m", "height": "2 m"},
               "opening": {"side": "0.4 m"}},
             "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
               "seam": {"kind": "fin", "allowance": "40 mm"}, %s "topTurnIn": "60 mm"}}
            """
                .formatted(more))
        .document()
        .cover()
        .orElseThrow();
  }

  private static final String RAW = "\"hem\": {\"kind\": \"raw\"},";

  private static PanelDrawer drawer(String more) {
    return new PanelDrawer(cover(more), Collections.nCopies(6, FACE), new Cancellation());
  }

  private static List<Panel> together(String more, Integer... spans) {
    return drawer(more).together(List.of(spans)).orElseThrow();
  }

  @Test
  void sizesOfFaces() {
    PanelDrawer raw = drawer(RAW);
    assertThat(raw.faces()).isEqualTo(6);
    assertThat(raw.area(1)).isCloseTo((2 + 0.4) / 2 * 2.4, within(1e-12));
    // Twice the way across and eight times the largest allowance, in whole metres.
    assertThat(raw.largest()).isEqualTo(Math.ceil(2 * Math.hypot(2, 2.4) + 8 * 0.06)).isEqualTo(7);
    assertThat(drawer("\"hem\": {\"kind\": \"turned\", \"allowance\": \"200 mm\"},").largest())
        .isEqualTo(Math.ceil(2 * Math.hypot(2, 2.4) + 8 * 0.2))
        .isEqualTo(8);
    assertThat(raw.isOnBand(1)).isFalse();
    assertThat(drawer("\"hem\": {\"kind\": \"reinforced\"},").isOnBand(1)).isTrue();
  }

  /**
   * Two faces, three and one: the hips within are folds of 2.53 m, and are named by their faces.
   */
  @Test
  void facesInOnePiece() {
    List<Panel> panels = together(RAW, 2, 3, 1);
    assertThat(panels)
        .extracting(Panel::id)
        .containsExactly("panel-1-to-2", "panel-3-to-5", "panel-6");
    assertThat(panels).extracting(Panel::faces).containsExactly(2, 3, 1);
    assertThat(panels.get(0).parts().get(0).folds())
        .extracting(Fold::name)
        .containsExactly("hip 1|2");
    assertThat(panels.get(1).parts().get(0).folds())
        .extracting(Fold::name)
        .containsExactly("hip 3|4", "hip 4|5");
    assertThat(panels.get(2).parts().get(0).folds()).isEmpty();
    double hip = Math.hypot(0.8, 2.4);
    for (Panel panel : panels) {
      panel
          .parts()
          .get(0)
          .folds()
          .forEach(f -> assertThat(f.length()).isCloseTo(hip, within(1e-9)));
      assertThat(panel.face().area()).isCloseTo(panel.faces() * 1.2 * 2.4, within(1e-9));
    }
    // One edge on the right of each panel and one on its left meet by name.
    List<String> joints =
        panels.stream()
            .map(panel -> panel.parts().get(0).edges())
            .map(edges -> edges.stream().filter(e -> !e.joint().isEmpty()).toList())
            .map(edges -> edges.get(0).letter() + " " + edges.get(1).letter())
            .toList();
    assertThat(joints).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(right(panels.get(i)).joint()).isEqualTo(left(panels.get((i + 1) % 3)).joint());
    }
  }

  private static List<PieceEdge> named(Panel panel) {
    return panel.parts().get(0).edges().stream().filter(e -> !e.letter().isEmpty()).toList();
  }

  private static PieceEdge right(Panel panel) {
    return named(panel).get(0);
  }

  private static PieceEdge left(Panel panel) {
    return named(panel).get(1);
  }

  /** Lower edges of different kinds, or on a band, do not stay together. */
  @Test
  void unlikeHemsStayApart() {
    String own =
        "\"hem\": {\"kind\": \"turned\", \"allowance\": \"50 mm\", \"faces\": [{\"face\": %d,"
            + " \"kind\": \"%s\"%s}]},";
    String wide = ", \"allowance\": \"70 mm\"";
    assertThat(drawer(own.formatted(2, "raw", "")).together(List.of(2, 4))).isEmpty();
    assertThat(drawer(own.formatted(2, "turned", wide)).together(List.of(2, 4))).isEmpty();
    assertThat(drawer(own.formatted(6, "raw", "")).together(List.of(2, 4))).isEmpty();
    // Faces 1 and 2 are alike, and those from 3 on.
    assertThat(drawer(own.formatted(3, "raw", "")).together(List.of(2, 1, 3))).isPresent();
    assertThat(drawer("\"hem\": {\"kind\": \"reinforced\"},").together(List.of(2, 4))).isEmpty();
    assertThat(drawer("\"hem\": {\"kind\": \"reinforced\"},").together(List.of(1, 1, 1, 1, 1, 1)))
        .isPresent();
  }

  /** An opening lies in its own face of the fan, with its patch and flap beside. */
  @Test
  void openingsOfFans() {
    String door =
        RAW
            + " \"door\": {\"id\": \"d\", \"face\": %d, \"outline\": [{\"x\": \"0.8 m\", \"y\":"
            + " \"0.5 m\"}, {\"x\": \"1.2 m\", \"y\": \"0.5 m\"}, {\"x\": \"1.2 m\", \"y\": \"1"
            + " m\"}, {\"x\": \"0.8 m\", \"y\": \"1 m\"}], \"patch\": \"50 mm\", \"flap\": \"60"
            + " mm\"},";
    for (int face = 1; face <= 4; face++) {
      List<Panel> panels = together(door.formatted(face), 2, 2, 2);
      for (int i = 0; i < 3; i++) {
        boolean has = (face - 1) / 2 == i;
        PatternPiece part = panels.get(i).parts().get(0);
        assertThat(part.holes()).hasSize(has ? 1 : 0);
        assertThat(panels.get(i).extras()).hasSize(has ? 2 : 0);
        if (has) {
          Outline hole = part.holes().get(0).finished();
          assertThat(hole.area()).isCloseTo(0.4 * 0.5, within(1e-9));
          // As far from the ends of its own base as in the face by itself.
          int corner = (face - 1) % 2;
          double near =
              hole.vertices().stream()
                  .mapToDouble(v -> v.distance(part.stitch().vertex(corner)))
                  .min()
                  .orElseThrow();
          assertThat(near).isCloseTo(Math.hypot(0.8, 0.5), within(1e-9));
          assertThat(panels.get(i).extras())
              .extracting(PatternPiece::kind)
              .containsExactlyInAnyOrder(PieceKind.PATCH, PieceKind.FLAP);
        }
      }
    }
  }

  @Test
  void panelsOverSeveralFacesAreCalledByThem() {
    assertThat(EdgeMarks.names(List.of(1, 3, 2))).containsExactly("1", "2 to 4", "5 to 6");
    List<PanelMarks> marks = EdgeMarks.of(Collections.nCopies(6, FACE), List.of(3, 1, 2));
    // A base and a top for each face, and the hips on both sides: 8, 4 and 6 edges.
    assertThat(marks).extracting(m -> m.edges().size()).containsExactly(8, 4, 6);
    assertThat(marks)
        .extracting(PanelMarks::folds)
        .containsExactly(List.of("hip 1|2", "hip 2|3"), List.of(), List.of("hip 5|6"));
    CoverPart part =
        new CoverPart(
            Collections.nCopies(6, FACE),
            together(RAW, 1, 3, 2),
            List.of(),
            List.of(),
            0,
            0,
            Optional.empty(),
            Optional.empty(),
            List.of());
    assertThat(part.names()).containsExactly("1", "2 to 4", "5 to 6");
    assertThat(List.of(part.firstFace(1), part.firstFace(2), part.firstFace(3)))
        .containsExactly(1, 2, 5);
    assertThat(part.face(6)).isSameAs(FACE);
  }

  /** A shape of one piece has its own names, one of several pieces those of their places. */
  @Test
  void namesOfShapes() {
    List<CutShape> two = CutShape.of(together(RAW, 3, 3), List.of());
    assertThat(two).extracting(CutShape::id).containsExactly("shape-1");
    assertThat(two.get(0).name()).isEqualTo("panel 1 to 3, 4 to 6");
    Fold second = two.get(0).pattern().folds().get(1);
    assertThat(two.get(0).name(second)).isEqualTo("fold 2");
    assertThat(two.get(0).named("1R")).isEqualTo("see each");
    assertThat(two.get(0).named("")).isEqualTo("–");
    assertThat(two.get(0).namesDiffer()).isTrue();
    List<CutShape> three = CutShape.of(together(RAW, 4, 2), List.of());
    assertThat(three).extracting(CutShape::id).containsExactly("shape-1", "shape-2");
    assertThat(three.get(1).name(three.get(1).pattern().folds().get(0))).isEqualTo("hip 5|6");
    assertThat(three.get(1).named("5 to 6R")).isEqualTo("5 to 6R");
    assertThat(three.get(1).namesDiffer()).isFalse();
  }

  /** Of 2.46 m with its turn-in, in bands of 1.6 m: one splice, and with a band more two. */
  @Test
  void aBandMore() {
    Cover cover = cover(RAW + " \"spliceLap\": \"100 mm\",");
    PanelDrawer drawer = new PanelDrawer(cover, Collections.nCopies(6, FACE), new Cancellation());
    ClothKind low = new ClothKind(5, 1.6, 1);
    assertThat(drawer.panel(1, Optional.of(low.rule(cover, 1, 6))).splices()).hasSize(1);
    Panel more = new BandMore(cover, drawer).panel(1, low);
    assertThat(more.splices()).hasSize(2);
    for (PatternPiece part : more.parts()) {
      // A third of the whole and a lap at least, and no part as high as the cloth.
      assertThat(part.cut().bounds().height()).isLessThan(1.6 - 1e-6);
    }
    ClothKind high = new ClothKind(5, 5, 1);
    Panel one = new BandMore(cover, drawer).panel(1, high);
    assertThat(one.splices()).hasSize(1);
    Splice splice = one.splices().get(0);
    assertThat(splice.lap()).isEqualTo(0.1);
    // Two bands of one height: each half of 2.46 m, and the lap under the upper.
    assertThat(one.parts().get(0).cut().bounds().height())
        .isCloseTo((2.46 - 0.1) / 2 + 0.1, within(0.02));
  }
}
