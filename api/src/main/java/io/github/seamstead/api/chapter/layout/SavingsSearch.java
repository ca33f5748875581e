package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.geometry.layout.LayoutResult;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Plans a job whose cloth is short once more for each change that saves cloth: the panels drawn and
 * laid out, on the terms of the plan itself.
 *
 * <p>Costs as many layouts as there are changes, fifteen at most, and no further one after a count
 * of work. A run with a time limit spends on all of them together hardly more than a search may
 * take. What it did not come to is said.
 */
final class SavingsSearch {

  /** Plans of several changes together. */
  private static final int MOST_TOGETHER = 3;

  /** Placements after which no further change is planned, at the least effort. */
  private static final long MOST_WORK = 1_000_000;

  /** What drawing the panels anew takes, as placements for each two of its pieces. */
  private static final long DRAWING = 8;

  private final Run run;
  private final CoverPart cover;
  private final LayoutPart layout;
  private final long start = System.nanoTime();
  private long work;
  private final List<ClothSaving> tried = new ArrayList<>();
  private final List<Savings.NotTried> notTried = new ArrayList<>();

  SavingsSearch(Run run, CoverPart cover, LayoutPart layout) {
    this.run = run;
    this.cover = cover;
    this.layout = layout;
  }

  /** Whether cloth is known to be short; a search that was stopped does not know. */
  static boolean isWorthIt(Run run, LayoutPart layout) {
    LayoutResult result = layout.result();
    return run.isAlone() && !result.isComplete() && result.stopped().isEmpty();
  }

  Savings savings() {
    List<ClothLever> levers = ClothLevers.of(run.document(), parts());
    for (int i = 0; i < levers.size(); i++) {
      ClothLever lever = levers.get(i);
      run.progress(0.5 + 0.2 * i / levers.size(), "where to save cloth: " + lever.name());
      Optional<String> over = over();
      if (over.isPresent()) {
        notTried.add(new Savings.NotTried(lever, over.get()));
      } else {
        pull(lever);
      }
    }
    tried.sort(Savings.MOST_SAVED_FIRST);
    if (tried.stream().noneMatch(ClothSaving::isEnough)) {
      together();
      tried.sort(Savings.MOST_SAVED_FIRST);
    }
    return new Savings(tried, notTried);
  }

  /** Adds one change to the other, the best first, until the cloth goes round. */
  private void together() {
    List<ClothSaving> helps =
        tried.stream()
            .filter(s -> s.unmet().isEmpty() && s.areaWithoutPlace() < layout.areaWithoutPlace())
            .toList();
    List<ClothLever> chosen = new ArrayList<>();
    double least = layout.areaWithoutPlace();
    int plans = 0;
    for (ClothSaving next : helps) {
      if (chosen.stream().anyMatch(lever -> isOfOneKind(lever, next.lever()))) {
        continue;
      }
      chosen.add(next.lever());
      if (chosen.size() == 1) {
        least = next.areaWithoutPlace();
        continue;
      }
      if (least == 0 || plans++ == MOST_TOGETHER || over().isPresent()) {
        return;
      }
      least = added(chosen, least);
    }
  }

  /** Plans the changes together; the last is dropped again where it leaves no less. */
  private double added(List<ClothLever> chosen, double least) {
    int before = tried.size();
    pull(both(chosen));
    boolean isPlanned = tried.size() > before;
    if (isPlanned && tried.get(before).areaWithoutPlace() < least) {
      return tried.get(before).areaWithoutPlace();
    }
    if (isPlanned) {
      tried.remove(before);
    }
    chosen.remove(chosen.size() - 1);
    return least;
  }

  /** Whether two changes are of the same part of the document, such as of its frame. */
  private static boolean isOfOneKind(ClothLever a, ClothLever b) {
    return a.changes().stream()
        .anyMatch(x -> b.changes().stream().anyMatch(y -> part(x.path()).equals(part(y.path()))));
  }

  private static String part(String path) {
    int first = path.indexOf('.');
    int second = path.indexOf('.', first + 1);
    boolean isWhole = path.startsWith("frame.");
    return isWhole ? "frame" : second < 0 ? path : path.substring(0, second);
  }

  private static ClothLever both(List<ClothLever> levers) {
    return new ClothLever(
        levers.stream().map(ClothLever::name).collect(Collectors.joining(" + ")),
        levers.stream().map(ClothLever::price).collect(Collectors.joining("; ")),
        levers.stream().flatMap(lever -> lever.changes().stream()).toList());
  }

  private Parts parts() {
    Map<Class<?>, List<?>> parts = new LinkedHashMap<>();
    parts.put(CoverPart.class, List.of(cover));
    parts.put(LayoutPart.class, List.of(layout));
    parts.put(FramePart.class, run.parts(FramePart.class));
    return new Parts(parts);
  }

  private Optional<String> over() {
    if (run.options().cancellation().isCancelled()) {
      return Optional.of("the run was cancelled");
    }
    if (work > MOST_WORK << (run.options().effort() - 1)) {
      return Optional.of("the work set aside for such plans was spent");
    }
    Duration spent = Duration.ofNanos(System.nanoTime() - start);
    return run.options()
        .timeLimit()
        .filter(limit -> spent.compareTo(limit) > 0)
        .map(limit -> "the time limit was reached");
  }

  private void pull(ClothLever lever) {
    try {
      Run.Varied varied = run.varied(lever.changes(), Chapter.PATTERN, Chapter.LAYOUT);
      Optional<CoverPart> drawn = varied.parts().one(CoverPart.class);
      Optional<LayoutPart> laid = varied.parts().one(LayoutPart.class);
      work += laid.map(l -> l.result().workUsed()).orElse(0L);
      work += drawn.map(SavingsSearch::drawing).orElse(0L);
      List<String> unmet =
          varied.unmet().stream()
              .filter(u -> u.chapter() != Chapter.LAYOUT || u.fault().isPresent())
              .map(Unmet::what)
              .toList();
      if (drawn.isEmpty() || laid.isEmpty()) {
        String why = unmet.isEmpty() ? over().orElse("it was not planned") : unmet.get(0);
        notTried.add(new Savings.NotTried(lever, why));
      } else if (laid.get().result().stopped().isPresent()) {
        notTried.add(new Savings.NotTried(lever, over().orElse("its search was stopped")));
      } else {
        tried.add(saving(lever, drawn.get(), laid.get(), unmet));
      }
    } catch (JobFaultsException e) {
      String why = e.faults().stream().map(JobFault::text).findFirst().orElse("it has a fault");
      notTried.add(new Savings.NotTried(lever, why));
    }
  }

  /** Panels are put together and tried side by side, so that it grows with their square. */
  private static long drawing(CoverPart drawn) {
    long pieces = drawn.cuts().stream().mapToInt(shape -> shape.pieces().size()).sum();
    return DRAWING * pieces * pieces;
  }

  private ClothSaving saving(
      ClothLever lever, CoverPart drawn, LayoutPart laid, List<String> unmet) {
    return new ClothSaving(
        lever,
        cover.clothArea() - drawn.clothArea(),
        laid.withoutPlace(),
        laid.areaWithoutPlace(),
        laid.result().furtherStock(),
        unmet);
  }
}
