package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Runs a sum of the library and keeps its steps. */
final class Worked {

  private Worked() {}

  /** Keeps all steps that a sum writes. */
  static Derivation of(String id, String title, Consumer<Steps> sum) {
    StepRecorder steps = new StepRecorder();
    sum.accept(steps);
    return steps.derivation(id, title);
  }

  /** Keeps of a derivation the step with a symbol and those that it rests on, in their order. */
  static Derivation leadingTo(Derivation all, String symbol) {
    Set<String> wanted = new HashSet<>(Set.of(symbol));
    Deque<Step> kept = new ArrayDeque<>();
    for (int i = all.steps().size() - 1; i >= 0; i--) {
      Step step = all.steps().get(i);
      if (wanted.contains(step.symbol())) {
        kept.addFirst(step);
        step.inputs().forEach(input -> wanted.add(input.symbol()));
      }
    }
    return new Derivation(all.id(), all.title(), List.copyOf(kept));
  }
}
