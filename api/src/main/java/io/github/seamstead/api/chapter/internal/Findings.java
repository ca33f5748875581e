package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** What a run finds beside the parts of its chapters, each once. Not thread-safe. */
public final class Findings {

  private final Set<JobFault> faults = new LinkedHashSet<>();
  private final Set<JobFault> setbacks = new LinkedHashSet<>();
  private final Set<Assumption> assumptions;
  private final Set<NotPlanned> notPlanned = new LinkedHashSet<>();
  private final List<Unmet> unmet = new ArrayList<>();
  private final Set<ChapterCaution> cautions = new LinkedHashSet<>();
  private final List<Derivation> derivations = new ArrayList<>();

  Findings(List<Assumption> assumed) {
    assumptions = new LinkedHashSet<>(assumed);
  }

  void fault(JobFault fault) {
    faults.add(fault);
  }

  void setback(Chapter chapter, JobFault fault) {
    setbacks.add(fault);
    unmet.add(Unmet.at(chapter, fault));
  }

  void assume(Assumption assumption) {
    assumptions.add(assumption);
  }

  void skip(NotPlanned left) {
    notPlanned.add(left);
  }

  void unmet(Unmet wish) {
    unmet.add(wish);
  }

  void caution(ChapterCaution caution) {
    cautions.add(caution);
  }

  void worked(Derivation derivation) {
    derivations.add(derivation);
  }

  /** What was assumed, in the order in which it was. */
  public List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  /** What was left out, in the order of the chapters. */
  public List<NotPlanned> notPlanned() {
    return inOrder(List.copyOf(notPlanned), NotPlanned::chapter);
  }

  /** What cannot be met, in the order of the chapters. */
  public List<Unmet> unmet() {
    return inOrder(unmet, Unmet::chapter);
  }

  /** Every caution once, in the order of the chapters. */
  public List<ChapterCaution> cautions() {
    return inOrder(List.copyOf(cautions), ChapterCaution::chapter);
  }

  private static <T> List<T> inOrder(List<T> list, Function<T, Chapter> chapter) {
    return list.stream().sorted((a, b) -> chapter.apply(a).compareTo(chapter.apply(b))).toList();
  }

  /** The worked steps that were asked for, in the order in which they were worked. */
  public List<Derivation> derivations() {
    return List.copyOf(derivations);
  }

  /**
   * Ends the run if the document has faults, or if nothing of it can be met.
   *
   * @throws JobFaultsException with every fault
   */
  public void requireNoFaults(Parts parts) {
    if (!faults.isEmpty()) {
      List<JobFault> all = new ArrayList<>(faults);
      all.addAll(setbacks);
      throw new JobFaultsException(all);
    }
    if (parts.isEmpty() && !setbacks.isEmpty()) {
      throw new JobFaultsException(List.copyOf(setbacks));
    }
  }
}
