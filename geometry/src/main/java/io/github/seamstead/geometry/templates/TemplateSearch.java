package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the least worst misfit for each k; see {@link Templates} for why it is exact. */
final class TemplateSearch {

  /** Up to here colourings run to their end, whatever it takes. */
  private static final int EXACT_FACES = 24;

  private final AsBuilt frame;
  private final List<FaceMeasure> measures;
  private final int size;
  private final double[][] built;
  private final double[][] needed;
  private final double[][] conflict;
  private final double[] thresholds;
  private final double quantile;
  private final Work work;
  private final long deadline;

  TemplateSearch(AsBuilt frame, double quantile, Work work) {
    this.work = work;
    this.deadline =
        work.budget().time().map(t -> System.nanoTime() + t.toNanos()).orElse(Long.MAX_VALUE);
    this.frame = frame;
    this.quantile = quantile;
    this.size = frame.faces().size();
    this.measures = List.copyOf(frame.faces().get(0).measures().keySet());
    this.built = new double[size][measures.size()];
    this.needed = new double[size][measures.size()];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < measures.size(); j++) {
        Uncertain f = frame.faces().get(i).measure(measures.get(j));
        built[i][j] = f.value();
        needed[i][j] = f.value() + quantile * f.standardUncertainty();
      }
    }
    this.conflict = new double[size][size];
    double least = 0;
    for (int i = 0; i < size; i++) {
      for (int k = 0; k <= i; k++) {
        double most = 0;
        for (int j = 0; j < measures.size(); j++) {
          most = Math.max(most, Math.max(needed[i][j] - built[k][j], needed[k][j] - built[i][j]));
        }
        conflict[i][k] = most;
        conflict[k][i] = most;
      }
      least = Math.max(least, conflict[i][i]);
    }
    double floor = least;
    this.thresholds =
        Arrays.stream(conflict)
            .flatMapToDouble(Arrays::stream)
            .filter(value -> value >= floor)
            .sorted()
            .distinct()
            .toArray();
  }

  /** The misfit that the uncertainty alone demands, with a template for each face. */
  double floor() {
    int[] own = new int[size];
    Arrays.setAll(own, i -> i);
    return describe(size, own, thresholds[0]).worstMisfit();
  }

  /** Whether the search was asked to stop, or its time is up. */
  boolean isStopped() {
    return work.cancellation().endsSearches() || System.nanoTime() > deadline;
  }

  TemplateSet best(int k) {
    int low = 0;
    int high = thresholds.length - 1;
    int proven = 0;
    int[] groups = new int[size];
    // Invariant: `groups` is a colouring for thresholds[high]; below `low` none was found.
    while (low < high) {
      int middle = (low + high) / 2;
      ConflictColouring.Answer answer = colour(k, thresholds[middle]);
      Optional<int[]> colouring = answer.colouring();
      if (colouring.isPresent()) {
        high = middle;
        groups = colouring.get();
      } else {
        low = middle + 1;
        if (answer.isCertain()) {
          proven = low;
        }
      }
    }
    return describe(k, groups, thresholds[proven]);
  }

  private ConflictColouring.Answer colour(int k, double threshold) {
    boolean[][] clash = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        clash[i][j] = i != j && conflict[i][j] > threshold;
      }
    }
    long budget = size <= EXACT_FACES ? Long.MAX_VALUE : work.budget().workUnits();
    return ConflictColouring.solve(clash, k, budget, work.cancellation(), deadline);
  }

  private TemplateSet describe(int k, int[] groups, double lowerBound) {
    List<Template> templates = new ArrayList<>();
    int[] templateOf = new int[size];
    for (int group = 0; group < k; group++) {
      List<Integer> members = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        if (groups[i] == group) {
          members.add(i + 1);
          templateOf[i] = templates.size();
        }
      }
      if (!members.isEmpty()) {
        templates.add(template(templates.size() + 1, members));
      }
    }
    List<FaceFit> fits = new ArrayList<>();
    double worst = 0;
    for (int i = 0; i < size; i++) {
      FaceFit fit = TemplateFits.face(frame.faces().get(i), templates.get(templateOf[i]));
      worst = Math.max(worst, fit.greatest());
      fits.add(fit);
    }
    List<SeamFit> seams = TemplateFits.seams(frame, templates, templateOf);
    return new TemplateSet(
        templates, worst, Math.min(lowerBound, worst), fits, seams, TemplateFits.hem(frame, seams));
  }

  private Template template(int number, List<Integer> faces) {
    Map<FaceMeasure, Double> lengths = new EnumMap<>(FaceMeasure.class);
    for (int j = 0; j < measures.size(); j++) {
      double most = 0;
      for (int face : faces) {
        most = Math.max(most, needed[face - 1][j]);
      }
      lengths.put(measures.get(j), most);
    }
    double other = 0;
    for (int face : faces) {
      Optional<Uncertain> f = frame.faces().get(face - 1).otherDiagonal();
      other =
          Math.max(other, f.map(d -> d.value() + quantile * d.standardUncertainty()).orElse(0.0));
    }
    Map<FaceMeasure, Double> full = FaceShape.withOtherDiagonal(lengths, other);
    return new Template(number, full, FaceShape.outline(full), faces);
  }
}
