package io.github.seamstead.api.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelsTest {

  private final Canvas canvas = Canvas.fit(0, 0, 10, 4, 10, 400);
  private final Labels labels = new Labels(canvas);

  @Test
  void leavesALabelWithRoomWhereItIsWanted() {
    labels.set(5, 2, "A-10", 11, 0, (x, y) -> true);
    assertThat(body()).contains("translate(180 78)").doesNotContain("rotate");
  }

  @Test
  void movesTheSecondOfTwoAtOnePlace() {
    labels.set(5, 2, "A-10", 11, 0, (x, y) -> true);
    labels.set(5, 2, "GOOD SIDE", 11, 0, (x, y) -> true);
    assertThat(body().split("translate\\(180 78\\)", -1)).hasSize(2);
    assertThat(body()).contains("GOOD SIDE");
  }

  @Test
  void keepsALabelOffTheBorder() {
    labels.set(0, 2, "a long label", 11, 0, (x, y) -> true);
    assertThat(body()).doesNotContain("translate(10 78)");
  }

  @Test
  void turnsALabelThatFitsUprightOnly() {
    labels.fit(5, 2, "narrow", (x, y) -> Math.abs(x - 5) < 0.2);
    assertThat(body()).contains("translate(180 78) rotate(-90)");
  }

  @Test
  void leadsALineToALabelWithoutRoom() {
    Labels.Area tiny = (x, y) -> Math.hypot(x, y) < 0.05;
    labels.fit(0, 0, "a label of some length", tiny);
    assertThat(body()).contains("<path").contains("a label of some length");
  }

  private String body() {
    return canvas.drawing("d", "t", "d").body();
  }
}
