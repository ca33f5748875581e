package io.github.seamstead.assembly.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SeamsLeftTest {

  private static final SeamRun A = new SeamRun(SeamKind.RING, "A", 4, 1);
  private static final SeamRun B = new SeamRun(SeamKind.RING, "B", 3.9, 1);
  private static final SeamRun SPLICE = new SeamRun(SeamKind.SPLICE, "1-2 over 1-1", 1.2, 2);
  private static final SeamBill BILL = new SeamBill(List.of(A, B, SPLICE));
  private static final FixingPattern PATTERN = FixingPattern.of(FixingKind.SCREWS, 0.05, 2);

  @Test
  void madeAndLeftAreTheWhole() {
    SeamsLeft left = SeamsLeft.of(BILL, List.of(B, SPLICE));
    assertThat(left.made()).containsExactly(SPLICE, B);
    assertThat(left.left()).containsExactly(A);
    assertThat(left.madeLength() + left.leftLength()).isCloseTo(BILL.length(), within(1e-12));
    assertThat(left.leftLengths()).containsExactly(4.0);
    int all = FixingCount.of(PATTERN, BILL.lengths(), 0, 100).total();
    assertThat(left.madeFixings(PATTERN) + left.leftFixings(PATTERN)).isEqualTo(all);
    assertThat(left.leftFixings(PATTERN)).isEqualTo((int) PATTERN.count(4));
  }

  @Test
  void withoutADiaryAllIsLeft() {
    SeamsLeft left = SeamsLeft.of(BILL, List.of());
    assertThat(left.left()).isEqualTo(BILL.runs());
    assertThat(left.madeFixings(PATTERN)).isZero();
    assertThat(SeamsLeft.of(BILL, BILL.runs()).leftLength()).isZero();
  }

  @Test
  void aSeamThatTheCoverDoesNotHaveIsRefused() {
    assertThatThrownBy(() -> SeamsLeft.of(BILL, List.of(new SeamRun(SeamKind.RING, "Z", 4, 1))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be seams of the cover");
    assertThatThrownBy(() -> SeamsLeft.of(BILL, List.of(A, A))).hasMessageContaining("[A]");
  }
}
