package io.github.seamstead.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Changed and made-up documents against rules that hold for every plan. A case is named by seed and
 * number: {@code -Dseamstead.fuzz.seed=S -Dseamstead.fuzz.from=N -Dseamstead.fuzz.cases=1} runs one
 * alone.
 */
class FuzzTest {

  private static final long SEED = 20261128;

  /** Seconds of processor time that no case may pass. */
  private static final long LIMIT = 20;

  /** So many that only what hangs passes them, on however busy a machine. */
  private static final long PATIENCE = 500;

  @Test
  void aFewCases() throws Exception {
    FuzzRun run = new FuzzRun(SEED, PATIENCE);
    run.cases(0, 75, 15);
    assertThat(run.failures()).as(run.summary()).isEmpty();
    assertThat(run.accepted()).isGreaterThan(15);
    assertThat(run.refused()).isGreaterThan(15);
  }

  /** A splice more may take more cloth and still let every piece find a place. */
  @ParameterizedTest
  @ValueSource(ints = {2674, 4241, 4322})
  void casesThatFailedOnce(int number) throws Exception {
    FuzzRun run = new FuzzRun(SEED, PATIENCE);
    run.cases(number, number + 1, 1);
    assertThat(run.failures()).as(run.summary()).isEmpty();
  }

  @Tag("soak")
  @Test
  void manyCases() throws Exception {
    long seed = Long.getLong("seamstead.fuzz.seed", System.nanoTime());
    int from = Integer.getInteger("seamstead.fuzz.from", 0);
    int cases = Integer.getInteger("seamstead.fuzz.cases", 10_000);
    System.out.println("cases of seed " + seed);
    FuzzRun run = new FuzzRun(seed, Long.getLong("seamstead.fuzz.limit", LIMIT));
    run.cases(from, from + cases, 4);
    System.out.println(run.summary());
    assertThat(run.failures()).as(run.summary()).isEmpty();
  }
}
