package io.github.seamstead.assembly.ring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class JoinLogTest {

  private static final PieceRing SIX = PieceRing.ofEqualPieces(6, 5, 3);

  private static LogReport verify(LogEntry... entries) {
    return JoinLog.verify(SIX, List.of(entries));
  }

  private static List<Fault.Kind> kinds(LogReport report) {
    return report.faults().stream().map(Fault::kind).toList();
  }

  @Test
  void aRightLogIsClean() {
    LogReport report = verify(LogEntry.joined("1R", "2L"), LogEntry.joined("4L", "3R"));
    assertThat(report.isClean()).isTrue();
    assertThat(report.undo()).isEmpty();
    assertThat(report.kept()).extracting(Joint::number).containsExactly(1, 3);
    assertThat(report.groups())
        .containsExactly(new Arc(1, 2), new Arc(3, 2), new Arc(5, 1), new Arc(6, 1));
    assertThat(report.open()).extracting(Joint::number).containsExactly(2, 4, 5, 6);
    assertThat(report.isComplete()).isFalse();
  }

  @Test
  void namesAWrongEdgeAndTheOneSeamToUndo() {
    LogReport report = verify(LogEntry.joined("1R", "2L"), LogEntry.joined("3R", "6L"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.WRONG_EDGE);
    assertThat(report.faults().get(0).message())
        .isEqualTo(
            "3R was joined to 6L, but 3R belongs to 4L (C-32) and 6L belongs to 5R (E-31): undo"
                + " this seam");
    assertThat(report.undo()).extracting(Seam::text).containsExactly("entry 2: 3R to 6L");
    assertThat(report.proof())
        .startsWith("This one is not in the finished cover, so it must be undone; what is left");
    assertThat(report.kept()).extracting(Joint::number).containsExactly(1);
  }

  @Test
  void twoLeftEdgesNeverMeet() {
    LogReport report = verify(LogEntry.joined("1L", "2L"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.WRONG_EDGE);
    assertThat(report.faults().get(0).message()).contains("two left edges never meet");
  }

  @Test
  void namesTheWrongSide() {
    LogReport report = verify(LogEntry.joined("1R", "2L", Facing.GOOD_TO_PLAIN));
    assertThat(kinds(report)).containsExactly(Fault.Kind.WRONG_SIDE);
    assertThat(report.undo()).hasSize(1);
    assertThat(report.kept()).isEmpty();
  }

  @Test
  void namesRightPiecesInWrongOrder() {
    LogReport pair = verify(LogEntry.joined("4R", "3L"));
    assertThat(kinds(pair)).containsExactly(Fault.Kind.WRONG_ORDER);
    LogReport run = verify(LogEntry.joined("1R", "3L"), LogEntry.joined("3R", "2L"));
    assertThat(kinds(run)).containsExactly(Fault.Kind.WRONG_ORDER, Fault.Kind.WRONG_ORDER);
    assertThat(run.undo()).hasSize(2);
    assertThat(run.proof())
        .startsWith("None of these 2 is in the finished cover, so each must be undone; what is");
  }

  @Test
  void namesAJointDoneTwiceAndUndoesOne() {
    LogReport report = verify(LogEntry.joined("1R", "2L"), LogEntry.joined("2L", "1R"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.DONE_TWICE);
    assertThat(report.undo()).extracting(Seam::entry).containsExactly(2);
    assertThat(report.kept()).hasSize(1);
  }

  @Test
  void ofTwoSeamsOverOneJointKeepsTheRightOne() {
    LogReport report =
        verify(LogEntry.joined("1R", "2L", Facing.PLAIN_TOGETHER), LogEntry.joined("1R", "2L"));
    assertThat(report.undo()).extracting(Seam::entry).containsExactly(1);
  }

  @Test
  void namesAnEdgeUsedBefore() {
    LogReport report = verify(LogEntry.joined("1R", "2L"), LogEntry.joined("1R", "5L"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.EDGE_TAKEN, Fault.Kind.WRONG_EDGE);
    assertThat(report.undo()).extracting(Seam::entry).containsExactly(2);
  }

  @Test
  void namesAMisreadMark() {
    LogReport report = verify(LogEntry.joined("1R", "2L").marked("A-10", "A-16"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.MISREAD_MARK);
    assertThat(report.faults().get(0).message())
        .isEqualTo("A-16 is no mark in use: 2L carries A-10; look again");
    LogReport swapped = verify(LogEntry.joined("1R", "2L").marked("b21", "A-10"));
    assertThat(swapped.faults().get(0).message())
        .isEqualTo("b21 is the mark of another joint: 1R carries A-10; look again");
    assertThat(report.undo()).isEmpty();
  }

  @Test
  void namesAnUnknownEdgeAndSaysThatTheStateIsInDoubt() {
    LogReport report = verify(LogEntry.joined("1R", "9L"), LogEntry.joined("1R", "1R"));
    assertThat(kinds(report)).containsExactly(Fault.Kind.UNKNOWN_EDGE, Fault.Kind.UNKNOWN_EDGE);
    assertThat(report.readable()).isFalse();
  }

  @Test
  void undoingAWrongSeamClearsIt() {
    LogReport report =
        verify(
            LogEntry.joined("3R", "6L"), LogEntry.undone("6L", "3R"), LogEntry.joined("3R", "4L"));
    assertThat(report.isClean()).isTrue();
    assertThat(report.kept()).extracting(Joint::number).containsExactly(3);
    assertThat(kinds(verify(LogEntry.undone("3R", "4L"))))
        .containsExactly(Fault.Kind.NOTHING_TO_UNDO);
  }

  @Test
  void undoingClearsASeamDoneTwiceOrWithTheWrongSide() {
    LogReport twice =
        verify(
            LogEntry.joined("1R", "2L"), LogEntry.joined("1R", "2L"), LogEntry.undone("1R", "2L"));
    assertThat(twice.isClean()).isTrue();
    assertThat(twice.kept()).hasSize(1);
    LogReport side =
        verify(
            LogEntry.joined("1R", "2L", Facing.GOOD_TO_PLAIN),
            LogEntry.undone("2L", "1R"),
            LogEntry.joined("1R", "2L"));
    assertThat(side.isClean()).isTrue();
    LogReport taken =
        verify(
            LogEntry.joined("1R", "5L"), LogEntry.joined("1R", "2L"), LogEntry.undone("1R", "5L"));
    assertThat(taken.isClean()).isTrue();
    assertThat(taken.kept()).hasSize(1);
  }

  @Test
  void aWholeRingIsComplete() {
    LogEntry[] all =
        SIX.joints().stream()
            .map(j -> LogEntry.joined(j.first().label(), j.second().label()))
            .toArray(LogEntry[]::new);
    LogReport report = verify(all);
    assertThat(report.isComplete()).isTrue();
    assertThat(report.groups()).containsExactly(new Arc(1, 6));
  }
}
