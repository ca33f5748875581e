package io.github.seamstead.assembly.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeamBillTest {

  private static final SeamBill BILL =
      new SeamBill(
          List.of(
              new SeamRun(SeamKind.CAP_JOINTS, "cap", 0.9, 2),
              new SeamRun(SeamKind.RING, "A", 4, 6),
              new SeamRun(SeamKind.SPLICE, "1-2 over 1-1", 1.2, 6),
              new SeamRun(SeamKind.SPLICE, "2-2 over 2-1", 1.3, 1)));

  @Test
  void seamsStandInTheOrderOfTheWork() {
    assertThat(BILL.kinds()).containsExactly(SeamKind.SPLICE, SeamKind.RING, SeamKind.CAP_JOINTS);
    assertThat(BILL.runs().get(0).name()).isEqualTo("1-2 over 1-1");
    assertThat(BILL.runs().get(1).name()).isEqualTo("2-2 over 2-1");
    assertThat(SeamKind.SPLICE).isLessThan(SeamKind.RING);
    assertThat(SeamKind.CAP).isGreaterThan(SeamKind.HEM);
    assertThat(SeamKind.SPLICE.lap()).contains("upper part laps over the lower");
    assertThat(SeamKind.SKIRT.lap()).contains("cover laps over the skirt");
  }

  @Test
  void everySeamIsCounted() {
    assertThat(BILL.length()).isCloseTo(7.2 + 1.3 + 24 + 1.8, within(1e-12));
    assertThat(BILL.length(SeamKind.SPLICE)).isCloseTo(8.5, within(1e-12));
    assertThat(BILL.length(SeamKind.HEM)).isZero();
    assertThat(BILL.lengths()).hasSize(15);
    FixingPattern pattern = FixingPattern.of(FixingKind.STAPLES, 0.04, 1);
    int all = BILL.kinds().stream().mapToInt(kind -> BILL.fixings(kind, pattern)).sum();
    assertThat(all).isEqualTo(FixingCount.of(pattern, BILL.lengths(), 0.1, 1000).total());
    assertThat(BILL.fixings(SeamKind.RING, pattern)).isEqualTo(6 * (int) pattern.count(4));
    assertThat(BILL.workTime(SeamKind.RING, 135)).isCloseTo(6 * 540.0, within(1e-9));
    StepRecorder recorder = new StepRecorder();
    double metres = BILL.length(recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("assembly.fixings.seams", "seams"), metres);
    assertThatThrownBy(() -> new SeamRun(SeamKind.HEM, "hem", 0, 1))
        .hasMessageContaining("length of the seam");
    assertThatThrownBy(() -> new SeamBill(List.of())).hasMessageContaining("seams");
  }
}
