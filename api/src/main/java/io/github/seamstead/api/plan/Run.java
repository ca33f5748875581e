package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** What one run gathers beside its results. Not thread-safe. */
final class Run {

  /** What was given reads well before the name of the argument up to this many characters. */
  private static final int PLAIN_GIVEN = 40;

  private final Job job;
  private final PlanOptions options;
  private final Set<JobFault> faults = new LinkedHashSet<>();
  private final List<Assumption> assumptions = new ArrayList<>();
  private final List<NotPlanned> notPlanned = new ArrayList<>();
  private final List<Unmet> unmet = new ArrayList<>();
  private final Set<ChapterCaution> cautions = new LinkedHashSet<>();
  private final List<Derivation> derivations = new ArrayList<>();

  Run(Job job, PlanOptions options) {
    this.job = job;
    this.options = options;
    assumptions.addAll(job.assumptions());
  }

  JobDocument document() {
    return job.document();
  }

  PlanOptions options() {
    return options;
  }

  /**
   * Tries a part of the plan; what a module refuses becomes a fault at the path. Any other failure
   * of a module is a defect of the library, not of the document, and ends the run.
   */
  <T> Optional<T> attempt(String path, Supplier<T> part) {
    try {
      return Optional.of(part.get());
    } catch (ArgumentFault e) {
      fault(path, e);
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      throw new IllegalStateException("a defect, met while " + path + " was planned: " + e, e);
    }
  }

  /** Notes what a module says of a value: what was given, and what must be. */
  private void fault(String path, ArgumentFault refused) {
    String given = refused.given();
    if (!refused.name().isEmpty()) {
      boolean plain = given.length() <= PLAIN_GIVEN && given.indexOf(',') < 0;
      given = plain ? given + " for " + refused.name() : refused.name() + ": given " + given;
    }
    faults.add(job.fault(path, given, refused.allowed()));
  }

  void fault(String path, String given, String allowed) {
    faults.add(job.fault(path, given, allowed));
  }

  void assume(String path, String value, String ground) {
    assumptions.add(new Assumption(path, value, ground));
  }

  void skip(Chapter chapter, String reason) {
    notPlanned.add(new NotPlanned(chapter, reason));
  }

  void unmet(Chapter chapter, String what) {
    unmet.add(new Unmet(chapter, what));
  }

  void caution(Chapter chapter, Caution caution) {
    cautions.add(new ChapterCaution(chapter, caution));
  }

  void cautions(Chapter chapter, Collection<Caution> several) {
    several.forEach(caution -> caution(chapter, caution));
  }

  /** Calls a published calculation, and keeps its steps if they are asked for. */
  <T> T worked(String id, String title, Function<Steps, T> calculation) {
    if (!options.worked()) {
      return calculation.apply(Steps.none());
    }
    StepRecorder recorder = new StepRecorder();
    T result = calculation.apply(recorder);
    if (!recorder.isEmpty()) {
      derivations.add(recorder.derivation(id, title));
    }
    return result;
  }

  void progress(double doneRatio, String message) {
    options.progress().report(doneRatio, message);
  }

  List<Assumption> assumptions() {
    return assumptions;
  }

  List<NotPlanned> notPlanned() {
    return notPlanned;
  }

  List<Unmet> unmet() {
    return unmet;
  }

  List<ChapterCaution> cautions() {
    return List.copyOf(cautions);
  }

  List<Derivation> derivations() {
    return derivations;
  }

  /** Ends the run if the document has faults. */
  void requireNoFaults() {
    if (!faults.isEmpty()) {
      throw new JobFaultsException(List.copyOf(faults));
    }
  }
}
