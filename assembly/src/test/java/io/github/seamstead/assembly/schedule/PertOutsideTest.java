package io.github.seamstead.assembly.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published PERT and critical-path examples. Their days and weeks stand for seconds here. */
class PertOutsideTest {

  private static final Source TEXTBOOK =
      Source.fromMemory("", "PERT textbook example 3-5-13", "", "");
  private static final Source TAYLOR =
      Source.found("Taylor", "Introduction to Management Science", "", "PERT, seven activities");
  private static final Source ANSWER_SITE =
      Source.found("", "Answer site, PERT activities A to N", "", "days");
  private static final Source ANSWER_DERIVED =
      Source.derived("the same PERT activities A to N, recomputed");
  private static final Source POSEIDON =
      Source.found("", "Answer site, PERT path B-E-H-J", "", "weeks");
  private static final Source NETWORK_AK =
      Source.derived("answer-site data of activities A to K, recomputed");
  private static final Source STUDY =
      Source.found("", "Critical path example 1, activities A to G", "", "table 1");

  static Task task(String id, double a, double m, double b, String... after) {
    return Task.of(id, new ThreePoint(a, m, b), after);
  }

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("assembly.schedule", what, source).expect(expected).within(within).got(got);
  }

  static Network aToN() {
    return Network.of(
        List.of(
            task("A", 5, 5, 7),
            task("B", 1, 2, 5),
            task("C", 5, 5, 5, "A"),
            task("D", 4, 8, 13, "A"),
            task("E", 1, 10, 17, "B", "C"),
            task("F", 1, 5, 7, "D"),
            task("G", 2, 6, 9, "D"),
            task("H", 4, 4, 6, "E", "F"),
            task("I", 2, 7, 10, "G", "H"),
            task("J", 2, 4, 7, "I"),
            task("K", 6, 10, 13, "I"),
            task("L", 2, 6, 6, "J"),
            task("M", 2, 2, 3, "K"),
            task("N", 7, 7, 12, "L", "M")));
  }

  @Test
  void threePoint() {
    ThreePoint t = new ThreePoint(3, 5, 13);
    check("3-5-13: expected duration", TEXTBOOK, 6, 1e-9, t.mean());
    check("3-5-13: variance", TEXTBOOK, 2.778, 5e-4, t.variance());
    assertThat(t.triangularMean()).isEqualTo(7);
  }

  @Test
  void taylor() {
    // The published network's critical activities 1-3-5-7 in a row; the others run beside them.
    Network network =
        Network.of(
            List.of(
                task("1", 5, 8, 17),
                task("3", 3, 5, 7, "1"),
                task("5", 4, 6, 8, "3"),
                task("7", 3, 4, 5, "5")));
    CriticalPath path = CriticalPath.of(network);
    check("activities 1-3-5-7: expected weeks", TAYLOR, 24, 1e-9, path.length());
    check("activities 1-3-5-7: variance", TAYLOR, 5, 0.001, path.variance());
    check("probability within 28 weeks", TAYLOR, 0.9633, 5e-4, path.probabilityBy(28));
  }

  @Test
  void fourteenActivities() {
    CriticalPath path = CriticalPath.of(aToN());
    double[] means = {
      5.33, 2.33, 5.00, 8.17, 9.67, 4.67, 5.83, 4.33, 6.67, 4.17, 9.83, 5.33, 2.17, 7.83
    };
    double[] deviations = {.33, .67, 0, 1.5, 2.67, 1, 1.17, .33, 1.33, .83, 1.17, .67, .17, .83};
    for (int i = 0; i < means.length; i++) {
      Task task = aToN().tasks().get(i);
      check("mean of " + task.id(), ANSWER_SITE, means[i], 0.005, task.duration().mean());
      check(
          "standard deviation of " + task.id(),
          ANSWER_SITE,
          deviations[i],
          0.0051,
          task.duration().standardDeviation());
    }
    check("early start of E", ANSWER_SITE, 10.33, 0.005, path.of("E").earlyStart());
    check("late start of E", ANSWER_SITE, 10.33, 0.005, path.of("E").lateStart());
    check("early start of F", ANSWER_SITE, 13.50, 0.005, path.of("F").earlyStart());
    check("late start of F", ANSWER_SITE, 15.33, 0.005, path.of("F").lateStart());
    check("slack of B", ANSWER_SITE, 8.00, 0.005, path.of("B").slack());
    check("slack of D", ANSWER_SITE, 1.83, 0.005, path.of("D").slack());
    check("slack of F", ANSWER_SITE, 1.83, 0.005, path.of("F").slack());
    assertThat(path.path()).containsExactly("A", "C", "E", "H", "I", "K", "M", "N");
    check("expected days", ANSWER_DERIVED, 50.8333, 1e-4, path.length());
    check("variance", ANSWER_DERIVED, 11.1944, 1e-4, path.variance());
    check("probability within 53 days", ANSWER_DERIVED, 0.7414, 1e-4, path.probabilityBy(53));
    check("probability within 55 days", ANSWER_DERIVED, 0.8935, 1e-4, path.probabilityBy(55));
  }

  @Test
  void aToK() {
    CriticalPath path =
        CriticalPath.of(
            Network.of(
                List.of(
                    task("A", 8, 10, 15),
                    task("B", 7, 8, 9),
                    task("C", 5, 6, 10, "A"),
                    task("D", 3, 3, 3, "A"),
                    task("E", 1, 5, 9, "B", "D"),
                    task("F", 4, 7, 10, "B", "D"),
                    task("G", 3, 8, 10, "C"),
                    task("H", 5, 7, 9, "E"),
                    task("I", 4, 5, 8, "E"),
                    task("J", 2, 5, 8, "F"),
                    task("K", 1, 3, 6, "H", "I"))));
    assertThat(path.path()).containsExactly("A", "D", "E", "H", "K");
    check("A to K: weeks", NETWORK_AK, 28.6667, 1e-3, path.length());
    check("A to K: variance", NETWORK_AK, 4.2778, 1e-3, path.variance());
    check("A to K: probability within 35 weeks", NETWORK_AK, 0.9989, 1e-3, path.probabilityBy(35));
    check("A to K: weeks for 95 %", NETWORK_AK, 32.07, 5e-3, path.timeFor(0.95));
  }

  @Test
  void normalAlongAPathOfKnownVariance() {
    CriticalPath path = new CriticalPath(List.of(), List.of(), 26, 4.11);
    check("26 weeks, variance 4.11: P(25)", POSEIDON, 0.311, 1e-3, path.probabilityBy(25));
    check("26 weeks, variance 4.11: P(30)", POSEIDON, 0.975, 1e-3, path.probabilityBy(30));
  }

  @Test
  void fixedDurations() {
    CriticalPath path =
        CriticalPath.of(
            Network.of(
                List.of(
                    task("A", 6, 6, 6),
                    task("B", 2, 2, 2, "A"),
                    task("C", 2, 2, 2, "A"),
                    task("D", 3, 3, 3, "B"),
                    task("F", 2, 2, 2, "C"),
                    task("E", 4, 4, 4, "D", "F"),
                    task("G", 1, 1, 1, "E"))));
    assertThat(path.path()).containsExactly("A", "B", "D", "E", "G");
    check("A to G: hours", STUDY, 16, 1e-9, path.length());
    check("A to G: slack of C", STUDY, 1, 1e-9, path.of("C").slack());
    check("A to G: slack of F", STUDY, 1, 1e-9, path.of("F").slack());
    check("A to G: late finish of C", STUDY, 9, 1e-9, path.of("C").lateFinish());
    check("A to G: early start of F", STUDY, 8, 1e-9, path.of("F").earlyStart());
    check("A to G: late finish of F", STUDY, 11, 1e-9, path.of("F").lateFinish());
  }

  @Test
  void stepsFollow() {
    StepRecorder recorder = new StepRecorder();
    ThreePoint t = new ThreePoint(3, 5, 13);
    DerivationChecks.assertFollowsTo(
        derivation(recorder, t.mean(recorder), "assembly.schedule.pert"), t.mean());
    StepRecorder path = new StepRecorder();
    CriticalPath critical = CriticalPath.of(aToN());
    DerivationChecks.assertFollowsTo(
        derivation(path, critical.length(path), "assembly.schedule.criticalpath"),
        critical.length());
  }

  private static io.github.seamstead.shared.derivation.Derivation derivation(
      StepRecorder recorder, double value, String id) {
    assertThat(value).isPositive();
    return recorder.derivation(id, "worked");
  }

  @Test
  void refusesCirclesAndUnknownTasks() {
    List<Task> circle =
        new ArrayList<>(
            List.of(task("A", 1, 1, 1, "C"), task("B", 1, 1, 1, "A"), task("C", 1, 1, 1, "B")));
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> Network.of(circle))
        .hasMessage("tasks: given a circle: A waits for C waits for B waits for A");
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> Network.of(List.of(task("A", 1, 1, 1, "Z"))))
        .hasMessage("task A: given Z as a task before it, but there is no such task");
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new ThreePoint(3, 2, 4))
        .hasMessage("duration: given 3, 2, 4 s, must not fall");
  }
}
