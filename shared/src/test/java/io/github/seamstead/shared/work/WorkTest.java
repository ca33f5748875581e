package io.github.seamstead.shared.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class WorkTest {

  @Test
  void aBudgetHasALimit() {
    assertThatThrownBy(() -> new Budget(Long.MAX_VALUE, Optional.empty()))
        .hasMessageContaining("no limit");
    assertThatThrownBy(() -> Budget.ofWork(-1)).hasMessageContaining("work units: given -1");
    assertThatThrownBy(() -> Budget.ofTime(Duration.ofSeconds(-1))).hasMessageContaining("time");
  }

  @Test
  void streamsDependOnSeedPurposeAndIndexAlone() {
    assertThat(Seeds.stream(1, "layout", 0).nextLong())
        .isEqualTo(Seeds.stream(1, "layout", 0).nextLong())
        .isNotEqualTo(Seeds.stream(2, "layout", 0).nextLong())
        .isNotEqualTo(Seeds.stream(1, "schedule", 0).nextLong())
        .isNotEqualTo(Seeds.stream(1, "layout", 1).nextLong());
  }

  @Test
  void cancellationStays() {
    Work work = Work.of(Budget.ofWork(1), 1);
    assertThat(work.cancellation().isCancelled()).isFalse();
    work.heardBy(Progress.NONE).cancellation().cancel();
    assertThat(work.cancellation().isCancelled()).isTrue();
    assertThat(work.cancellation().endsSearches()).isTrue();
    assertThatThrownBy(() -> work.cancellation().goOn("a knot was tied"))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("a knot was tied");
  }

  @Test
  void finishingEndsSearchesAlone() {
    Cancellation end = new Cancellation();
    assertThat(end.endsSearches()).isFalse();
    end.finish();
    assertThat(end.endsSearches()).isTrue();
    assertThat(end.isCancelled()).isFalse();
    end.goOn("a knot was tied");
    end.cancel();
    assertThat(end.isCancelled()).isTrue();
  }
}
