package io.github.seamstead.assembly.ring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PieceRingTest {

  private static final PieceRing EIGHT = PieceRing.ofEqualPieces(8, 5.5, 3.2);

  @Test
  void countsJointsOnceAndEdgesTwice() {
    assertThat(EIGHT.count().text())
        .isEqualTo("8 pieces: 8 joints, 16 edges to prepare, none free");
    assertThat(EIGHT.count().jointLength()).isEqualTo(25.6, within());
    PieceRing line = PieceRing.line(EIGHT.pieces(), Collections.nCopies(7, 3.2));
    assertThat(line.count().text()).isEqualTo("8 pieces: 7 joints, 14 edges to prepare, 2 free");
    assertThat(PieceRing.ofEqualPieces(1, 5, 3).count().text())
        .isEqualTo("1 piece: 1 joint, 2 edges to prepare, none free");
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @Test
  void rightEdgeOfAPieceMeetsLeftEdgeOfTheNext() {
    assertThat(EIGHT.joint(3).text()).isEqualTo("C-32: 3R to 4L");
    assertThat(EIGHT.joint(8).first().label()).isEqualTo("8R");
    assertThat(EIGHT.joint(8).second().label()).isEqualTo("1L");
    for (Joint joint : EIGHT.joints()) {
      assertThat(EIGHT.jointAt(joint.first())).contains(joint);
      assertThat(EIGHT.jointAt(joint.second())).contains(joint);
    }
  }

  @Test
  void outerEdgesOfALineStayFree() {
    PieceRing line = PieceRing.line(EIGHT.pieces(), Collections.nCopies(7, 3.2));
    assertThat(line.jointAt(line.edge(1, Side.LEFT))).isEmpty();
    assertThat(line.jointAt(line.edge(8, Side.RIGHT))).isEmpty();
    assertThat(line.jointAt(line.edge(8, Side.LEFT))).contains(line.joint(7));
  }

  @Test
  void asItLiesTheOrderRunsTheOtherWayRound() {
    JointMap stands = JointMap.of(EIGHT, View.AS_IT_STANDS);
    JointMap lies = JointMap.of(EIGHT, View.AS_IT_LIES);
    assertThat(stands.places())
        .extracting(PlacedPiece::piece)
        .containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
    assertThat(lies.places())
        .extracting(PlacedPiece::piece)
        .containsExactly(1, 8, 7, 6, 5, 4, 3, 2);
    PlacedPiece three = lies.places().get(6);
    assertThat(three.onLeft().label()).isEqualTo("3R");
    assertThat(three.onRight().label()).isEqualTo("3L");
    assertThat(three.angle()).isEqualTo(-stands.places().get(2).angle());
  }

  @Test
  void bothMapsShowTheSameJointBetweenTheSameEdges() {
    for (View view : View.values()) {
      List<PlacedPiece> places = JointMap.of(EIGHT, view).places();
      for (int i = 0; i < places.size(); i++) {
        PlacedPiece here = places.get(i);
        PlacedPiece next = places.get((i + 1) % places.size());
        assertThat(here.rightJoint()).isPresent().isEqualTo(next.leftJoint());
        Joint joint = here.rightJoint().orElseThrow();
        assertThat(Set.of(joint.first(), joint.second()))
            .isEqualTo(Set.of(here.onRight(), next.onLeft()));
      }
    }
  }

  @Test
  void writesTheMapOnOneLine() {
    PieceRing three = PieceRing.ofEqualPieces(3, 1, 1);
    assertThat(JointMap.of(three, View.AS_IT_STANDS).text())
        .isEqualTo("C-32 | 1 | A-10 | 2 | B-21 | 3 | C-32");
    PieceRing line = PieceRing.line(three.pieces(), List.of(1.0, 1.0));
    assertThat(JointMap.of(line, View.AS_IT_LIES).text())
        .isEqualTo("free | 3 | B-21 | 2 | A-10 | 1 | free");
  }

  @Test
  void findsEdgesAsTheyAreTyped() {
    assertThat(EIGHT.edge(" 3 r")).contains(EIGHT.edge(3, Side.RIGHT));
    assertThat(EIGHT.edge("9R")).isEmpty();
  }

  @Test
  void groupsGoRoundTheClosing() {
    assertThat(EIGHT.groups(Set.of(8, 1, 4)))
        .containsExactly(new Arc(3, 1), new Arc(4, 2), new Arc(6, 1), new Arc(7, 1), new Arc(8, 3));
    assertThat(EIGHT.groups(Set.of(1, 2, 3, 4, 5, 6, 7, 8))).containsExactly(new Arc(1, 8));
    assertThat(EIGHT.groups(Set.of())).hasSize(8);
  }

  @Test
  void addsUpLoads() {
    assertThat(EIGHT.load(new Arc(7, 3)).mass()).isEqualTo(16.5);
  }

  @Test
  void refusesWhatDoesNotFit() {
    List<Piece> pieces = EIGHT.pieces();
    assertThatThrownBy(() -> PieceRing.ring(pieces, Collections.nCopies(7, 3.2)))
        .hasMessage("joint lengths: given 7, must be 8 for a ring of 8 pieces");
    assertThatThrownBy(() -> PieceRing.ring(List.of(), List.of()))
        .hasMessageContaining("must have at least one");
    assertThatThrownBy(() -> PieceRing.ring(pieces, Collections.nCopies(8, -1.0)))
        .hasMessage("length of joint 1: given -1 m, must be greater than 0 m");
    Piece twin = Piece.of("1", Load.NONE);
    assertThatThrownBy(() -> PieceRing.ring(List.of(twin, twin), List.of(1.0, 1.0)))
        .hasMessage("edge label: given 1L for two edges, every edge must have its own");
    assertThatThrownBy(() -> new Piece("1", "a", "A", "good side", "t", Load.NONE))
        .hasMessage("edges of piece 1: given a twice, must have two letters");
    assertThatThrownBy(() -> Load.ofMass(Double.NaN)).hasMessageContaining("mass: given NaN kg");
  }
}
