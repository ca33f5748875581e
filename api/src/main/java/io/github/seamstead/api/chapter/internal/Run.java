package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One run over the chapters, and what it gathers beside their parts.
 *
 * <p>Not thread-safe, but for {@link #progress}, {@link #goOn} and the terms: a chapter that works
 * beside the others reports from its own thread.
 */
public final class Run {

  private final Job job;

  private final PlanOptions options;
  private final Done done;
  private final Map<Class<?>, ChapterOf<?>> chapters = new LinkedHashMap<>();
  private final Map<Class<?>, Supplier<? extends List<?>>> planned = new LinkedHashMap<>();
  private final Deque<Chapter> under = new ArrayDeque<>();
  private final Set<Chapter> stopped = EnumSet.noneOf(Chapter.class);
  private final Findings findings;
  private final Series series;
  private final Beside beside;
  private double reported;

  /**
   * What the plan of a changed job found.
   *
   * @param parts what its chapters found
   * @param unmet what it asks for and cannot be met
   */
  public record Varied(Parts parts, List<Unmet> unmet) {}

  /**
   * Prepares a run.
   *
   * @param job the job as it was read
   * @param options the terms
   * @param chapters the chapters in the order of the work
   */
  public Run(Job job, PlanOptions options, List<ChapterOf<?>> chapters) {
    this(job, options, chapters, Series.alone(), Done.NOTHING);
  }

  /**
   * Prepares a run that is one of many, or that goes on from what is done.
   *
   * @param job the job, with the evidence of its diary if there is one
   * @param options the terms
   * @param chapters the chapters in the order of the work
   * @param series the terms of one of many plans
   * @param done what the diary says is done
   */
  public Run(Job job, PlanOptions options, List<ChapterOf<?>> chapters, Series series, Done done) {
    this.series = series;
    this.job = job;
    this.options = options;
    this.done = done;
    chapters.forEach(chapter -> this.chapters.put(chapter.part(), chapter));
    findings = new Findings(job.assumptions());
    beside = new Beside(options.executor());
  }

  /** Plans the chapters that the options ask for, in order, and those that they build on. */
  public Parts plan() {
    if (isAlone()) {
      // One plan of many begins none ahead: the others keep the threads busy.
      chapters.values().stream()
          .filter(chapter -> options.asksFor(chapter.chapter()))
          .forEach(chapter -> chapter.ahead(this));
    }
    int done = 0;
    for (ChapterOf<?> chapter : chapters.values()) {
      progress(0.95 * done++ / chapters.size(), chapter.chapter().title());
      if (options.asksFor(chapter.chapter())) {
        begin(chapter);
      }
    }
    Map<Class<?>, List<?>> parts = new LinkedHashMap<>();
    for (ChapterOf<?> chapter : chapters.values()) {
      if (planned.containsKey(chapter.part())) {
        parts.put(chapter.part(), result(chapter));
      }
    }
    progress(1, "done");
    return new Parts(parts);
  }

  /** Gives the part that a chapter found; plans that chapter first if it has not been yet. */
  public <P> Optional<P> part(Class<P> type) {
    return parts(type).stream().findFirst();
  }

  /** Gives the parts that a chapter found; plans that chapter first if it has not been yet. */
  public <P> List<P> parts(Class<P> type) {
    ChapterOf<?> chapter = chapters.get(type);
    if (chapter == null) {
      throw new IllegalStateException("no chapter plans " + type.getSimpleName());
    }
    begin(chapter);
    List<P> found = result(chapter).stream().map(type::cast).toList();
    Chapter asking = under.peek();
    if (found.isEmpty() && stopped.contains(chapter.chapter()) && asking != null) {
      skip(
          asking,
          "it builds on the chapter \""
              + chapter.chapter().title()
              + "\", which cannot be met as stated");
    }
    return found;
  }

  private void begin(ChapterOf<?> chapter) {
    if (!planned.containsKey(chapter.part())) {
      planned.put(chapter.part(), List::of);
      Optional<? extends Supplier<? extends List<?>>> started =
          unlessCancelled(chapter.chapter(), () -> chapter.start(this));
      started.ifPresent(result -> planned.put(chapter.part(), result));
    }
  }

  private List<?> result(ChapterOf<?> chapter) {
    Supplier<? extends List<?>> result = planned.getOrDefault(chapter.part(), List::of);
    // A search that was begun gives its best so far, also when the run is cancelled.
    List<?> parts =
        heard(chapter.chapter(), () -> within(chapter.chapter(), result::get))
            .<List<?>>map(found -> found)
            .orElse(List.of());
    planned.put(chapter.part(), () -> parts);
    return parts;
  }

  /** Begins a chapter; a run that is cancelled begins no more of them. */
  private <T> Optional<T> unlessCancelled(Chapter chapter, Supplier<T> work) {
    return heard(
        chapter,
        () -> {
          goOn();
          return within(chapter, work);
        });
  }

  private <T> Optional<T> heard(Chapter chapter, Supplier<T> work) {
    try {
      return Optional.of(work.get());
    } catch (CancellationException e) {
      stopped.add(chapter);
      skip(chapter, "the run was cancelled before it was done");
      return Optional.empty();
    }
  }

  /** Ends the chapter under way once the run is cancelled; for loops without a best so far. */
  public void goOn() {
    options.cancellation().goOn("a chapter was planned");
  }

  private <T> T within(Chapter chapter, Supplier<T> work) {
    under.push(chapter);
    try {
      return work.get();
    } finally {
      under.pop();
    }
  }

  /** Gives the document. */
  public JobDocument document() {
    return job.document();
  }

  /** Gives what is done already; nothing for a job without a diary. */
  public Done done() {
    return done;
  }

  /**
   * Gives the terms of a search: the seed, time limit and switch of the run, unheard.
   *
   * @param units work units that it may spend
   */
  public Work work(long units) {
    return new Work(
        new Budget(units, options.timeLimit()),
        options.seed(),
        Progress.NONE,
        options.cancellation(),
        options.executor());
  }

  /** Gives the terms of the run. */
  public PlanOptions options() {
    return options;
  }

  /** Gives what is supposed of numbers that the document does not state. */
  public Supposed supposed() {
    return series.supposed();
  }

  /** Whether this is a plan by itself, and not one of many that are compared. */
  public boolean isAlone() {
    return series.isAlone();
  }

  /**
   * Plans a changed job beside this run: the chapters asked for and what they build on, on the same
   * terms, unheard and without asides.
   *
   * @throws JobFaultsException if the changed document has a fault
   */
  public Varied varied(List<JobChange> changes, Chapter first, Chapter... more) {
    Job changed = JobDraft.of(job).with(changes).job();
    PlanOptions terms =
        new PlanOptions(
            options.effort(),
            options.seed(),
            false,
            EnumSet.of(first, more),
            options.timeLimit(),
            Progress.NONE,
            options.cancellation(),
            options.executor());
    Series one = new Series(series.recall(), series.supposed(), true, series.rough());
    Run other = new Run(changed, terms, List.copyOf(chapters.values()), one, done);
    Parts parts = other.plan();
    other.findings().requireNoFaults(parts);
    return new Varied(parts, other.findings().unmet());
  }

  /** Whether asides that no other chapter builds on are left out. */
  public boolean isBrief() {
    return series.brief();
  }

  /** Whether dear simulations march roughly, since only their differences are looked at. */
  public boolean isRough() {
    return series.rough();
  }

  /**
   * Gives what a dear calculation gave before for the same key, or calculates it. Ends the chapter
   * if the run is cancelled, since what is dear has no best so far.
   */
  public <T> T recalled(Object key, Class<T> type, Supplier<T> calculation) {
    goOn();
    return series.recall().of(key, type, calculation);
  }

  /** Gives the work beside the chapters. */
  public Beside beside() {
    return beside;
  }

  /**
   * Tries a part of a chapter. What a module refuses cannot be met as stated: it takes down the
   * chapter and what builds on it, and nothing else.
   */
  public <T> Optional<T> attempt(String path, Supplier<T> part) {
    return tried(path, part, this::setback);
  }

  /** Tries what values of the document state together; what a module refuses is a fault of it. */
  public <T> Optional<T> require(String path, Supplier<T> stated) {
    return tried(path, stated, findings::fault);
  }

  private <T> Optional<T> tried(String path, Supplier<T> part, Consumer<JobFault> refused) {
    try {
      return Optional.of(part.get());
    } catch (ArgumentFault e) {
      refused.accept(Refusal.of(job, path, e));
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      // Any other failure of a module is a defect of the library, not of the document.
      throw new IllegalStateException("a defect, met while " + path + " was planned: " + e, e);
    }
  }

  /** Notes a fault of the document: the run gives no plan. */
  public void fault(String path, String given, String allowed) {
    findings.fault(job.fault(path, given, allowed));
  }

  /** Notes that the chapter under way cannot be met for a value of the document. */
  public void setback(String path, String given, String allowed) {
    setback(job.fault(path, given, allowed));
  }

  private void setback(JobFault fault) {
    Chapter chapter = under.isEmpty() ? Chapter.SITE : under.peek();
    stopped.add(chapter);
    findings.setback(chapter, fault);
  }

  /** Notes a value that the document leaves out. */
  public void assume(String path, String value, String ground) {
    findings.assume(new Assumption(path, value, ground));
  }

  /** Notes what is left out of the plan, and why. */
  public void skip(Chapter chapter, String reason) {
    findings.skip(new NotPlanned(chapter, reason));
  }

  /** Notes what the job asks for and cannot be met as stated. */
  public void unmet(Chapter chapter, String what) {
    findings.unmet(Unmet.of(chapter, what));
  }

  /** Notes a caution under its chapter. */
  public void caution(Chapter chapter, Caution caution) {
    findings.caution(new ChapterCaution(chapter, caution));
  }

  /** Notes cautions under their chapter. */
  public void cautions(Chapter chapter, Collection<Caution> several) {
    several.forEach(caution -> caution(chapter, caution));
  }

  /** Calls a published calculation, and keeps its steps if they are asked for. */
  public <T> T worked(String id, String title, Function<Steps, T> calculation) {
    if (!options.worked()) {
      return calculation.apply(Steps.none());
    }
    StepRecorder recorder = new StepRecorder();
    T result = calculation.apply(recorder);
    keep(id, title, recorder);
    return result;
  }

  /** Works a sum that stands in the worked steps alone; without them it is not worked at all. */
  public void workedOnly(String id, String title, Consumer<Steps> calculation) {
    if (options.worked()) {
      StepRecorder recorder = new StepRecorder();
      calculation.accept(recorder);
      keep(id, title, recorder);
    }
  }

  private void keep(String id, String title, StepRecorder recorder) {
    if (!recorder.isEmpty()) {
      findings.worked(recorder.derivation(id, title));
    }
  }

  /** Reports progress; it never falls, whichever thread reports. */
  public synchronized void progress(double doneRatio, String message) {
    reported = Math.max(reported, doneRatio);
    options.progress().report(reported, message);
  }

  /** Gives what was found beside the parts. */
  public Findings findings() {
    return findings;
  }
}
