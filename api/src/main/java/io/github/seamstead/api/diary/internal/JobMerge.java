package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.DiaryLine;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.HeightReading;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.PegPulls;
import io.github.seamstead.api.job.PlumbReading;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.api.job.StockRoll;
import io.github.seamstead.api.job.StockSheet;
import io.github.seamstead.api.job.SurveyReadings;
import io.github.seamstead.api.job.TapedDistance;
import io.github.seamstead.api.job.TrialMix;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.assembly.anchor.Ground;
import io.github.seamstead.assembly.anchor.PegTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the evidence of a diary into the job: tests, readings, pulls and cloth that came. */
public final class JobMerge {

  private JobMerge() {}

  /**
   * Merges lines into a job, in their order: the later reading replaces the earlier one.
   *
   * @param job the job as it is written
   * @param lines lines that the fold found to be without contradiction
   * @return the job with the diary's evidence
   */
  public static Job into(Job job, List<DiaryLine> lines) {
    JobDocument d = job.document();
    List<Double> pulls = new ArrayList<>();
    for (DiaryLine line : lines) {
      d = merged(d, line.entry());
      if (line.entry() instanceof DiaryEntry.PegsPulled pulled) {
        pulls.addAll(pulled.pulls());
      }
    }
    if (!pulls.isEmpty()) {
      d = withSite(d, d.site().map(s -> pulled(s, pulls)));
    }
    Optional<LocalDate> last =
        lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).date());
    JobDocument dated = last.isPresent() ? withStart(d, last.get().plusDays(1)) : d;
    return job.with(dated);
  }

  private static JobDocument merged(JobDocument d, DiaryEntry entry) {
    if (entry instanceof DiaryEntry.ClothBought bought) {
      return with(d, d.stock().map(s -> more(s, bought)));
    }
    if (entry instanceof DiaryEntry.SoilTested tested) {
      return withSoils(
          d,
          d.soils().stream()
              .map(s -> s.id().equals(tested.tests().soil()) ? tested.tests().into(s) : s)
              .toList());
    }
    if (entry instanceof DiaryEntry.TrialMade trial) {
      return withTrials(d, trials(d.trialMixes(), trial));
    }
    if (entry instanceof DiaryEntry.Retaken retaken) {
      return withFrame(d, d.frame().map(f -> retaken(f, retaken)));
    }
    return d;
  }

  private static Stock more(Stock stock, DiaryEntry.ClothBought bought) {
    List<StockSheet> sheets = new ArrayList<>(stock.sheets());
    List<StockRoll> rolls = new ArrayList<>(stock.rolls());
    bought.sheet().ifPresent(sheets::add);
    bought.roll().ifPresent(rolls::add);
    return new Stock(sheets, rolls, stock.spacing(), stock.edgeMargin(), stock.keepGrain());
  }

  private static List<TrialMix> trials(List<TrialMix> stated, DiaryEntry.TrialMade made) {
    List<TrialMix> trials = new ArrayList<>();
    for (TrialMix mix : stated) {
      if (!mix.mix().equals(made.mix())) {
        trials.add(mix);
        continue;
      }
      List<TrialSample> samples = new ArrayList<>(mix.samples());
      samples.add(made.sample());
      trials.add(new TrialMix(mix.mix(), samples, mix.crackLimit(), mix.step()));
    }
    return trials;
  }

  private static Frame retaken(Frame f, DiaryEntry.Retaken again) {
    Optional<Map<FrameMeasure, Double>> measures =
        again.measures().isEmpty() ? f.measures() : Optional.of(replaced(f, again));
    return new Frame(
        f.sides(),
        measures,
        f.opening(),
        f.poles(),
        f.purlins(),
        f.survey().map(s -> retaken(s, again)));
  }

  private static Map<FrameMeasure, Double> replaced(Frame f, DiaryEntry.Retaken again) {
    Map<FrameMeasure, Double> all = new EnumMap<>(FrameMeasure.class);
    f.measures().ifPresent(all::putAll);
    again.measures().ifPresent(all::putAll);
    return all;
  }

  private static SurveyReadings retaken(SurveyReadings s, DiaryEntry.Retaken again) {
    List<TapedDistance> distances = new ArrayList<>(s.distances());
    again
        .distance()
        .ifPresent(
            d -> {
              distances.removeIf(old -> samePair(old, d));
              distances.add(d);
            });
    List<HeightReading> heights = new ArrayList<>(s.heights());
    again
        .height()
        .ifPresent(
            h -> {
              heights.removeIf(
                  old ->
                      pair(old.from(), old.to(), h.from(), h.to())
                          || pair(old.from(), old.to(), h.to(), h.from()));
              heights.add(h);
            });
    List<PlumbReading> plumbs = new ArrayList<>(s.plumbs());
    again
        .plumb()
        .ifPresent(
            p -> {
              plumbs.removeIf(
                  old -> old.hung().equals(p.hung()) && old.towards().equals(p.towards()));
              plumbs.add(p);
            });
    return new SurveyReadings(
        distances,
        heights,
        plumbs,
        s.uncertainty(),
        s.heightUncertainty(),
        s.tolerance(),
        s.tape());
  }

  /** A distance taped from either end is the same reading; one held level is another. */
  static boolean samePair(TapedDistance a, TapedDistance b) {
    return a.level() == b.level()
        && (pair(a.from(), a.to(), b.from(), b.to()) || pair(a.from(), a.to(), b.to(), b.from()));
  }

  private static boolean pair(String a, String b, String c, String d) {
    return a.equals(c) && b.equals(d);
  }

  /** Adds pulls; fewer than a test needs are kept in the diary alone. */
  private static Site pulled(Site s, List<Double> pulls) {
    List<Double> all = new ArrayList<>(s.pegs().map(PegPulls::pulls).orElse(List.of()));
    all.addAll(pulls);
    Optional<PegPulls> pegs =
        all.size() < PegTest.LEAST_TESTS
            ? s.pegs()
            : Optional.of(
                new PegPulls(
                    all,
                    s.pegs().map(PegPulls::ground).orElse(Ground.WET_OR_THAWING),
                    s.pegs().map(PegPulls::factor).orElse(PegTest.USUAL_FACTOR)));
    return copy(s, pegs, s.start());
  }

  /** The work goes on the day after the last one. */
  private static JobDocument withStart(JobDocument d, LocalDate day) {
    return withSite(d, d.site().map(s -> copy(s, s.pegs(), Optional.of(day))));
  }

  private static Site copy(Site s, Optional<PegPulls> pegs, Optional<LocalDate> start) {
    return new Site(
        s.name(),
        s.note(),
        s.units(),
        s.crew(),
        s.basicWind(),
        s.designWind(),
        s.windFigures(),
        pegs,
        s.rope(),
        start,
        s.paper());
  }

  private static JobDocument withSite(JobDocument d, Optional<Site> site) {
    return copy(d, site, d.frame(), d.stock(), d.soils(), d.trialMixes());
  }

  private static JobDocument withFrame(JobDocument d, Optional<Frame> frame) {
    return copy(d, d.site(), frame, d.stock(), d.soils(), d.trialMixes());
  }

  private static JobDocument with(JobDocument d, Optional<Stock> stock) {
    return copy(d, d.site(), d.frame(), stock, d.soils(), d.trialMixes());
  }

  private static JobDocument withSoils(JobDocument d, List<SoilSample> soils) {
    return copy(d, d.site(), d.frame(), d.stock(), soils, d.trialMixes());
  }

  private static JobDocument withTrials(JobDocument d, List<TrialMix> trials) {
    return copy(d, d.site(), d.frame(), d.stock(), d.soils(), trials);
  }

  private static JobDocument copy(
      JobDocument d,
      Optional<Site> site,
      Optional<Frame> frame,
      Optional<Stock> stock,
      List<SoilSample> soils,
      List<TrialMix> trials) {
    return new JobDocument(
        d.seamstead(),
        site,
        frame,
        d.cover(),
        stock,
        soils,
        d.aggregates(),
        trials,
        d.floor(),
        d.plant(),
        d.weather(),
        // What a diary says in place of a value has a doubt of its own.
        List.of());
  }
}
