package io.github.seamstead.api.doubt;

import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobNumber;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.water.Saturation;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One way in which all doubtful inputs may really be. Filled once, then only read. */
final class Draw {

  /** Keeps clear of the last digit of the limit. */
  private static final double FULL = 0.9999;

  private static final Pattern MIX =
      Pattern.compile("floor\\.mixes\\[(\\d+)]\\.(density|placingMoisture)");

  private final List<JobChange> changes = new ArrayList<>();
  private final Map<Integer, Double> water = new TreeMap<>();
  private final Map<Integer, Double> density = new TreeMap<>();
  private double clay;
  private double looseSoil;
  private double looseSand;
  private double pace;
  private double diffusivity = 1;
  private double exchange = 1;
  private boolean sound;

  /** A number of the document with its unit. */
  void set(String path, double value, String unit) {
    String text = Numbers.plain(value) + (unit.isEmpty() ? "" : " " + unit);
    changes.add(new JobChange(path, JobValue.text(text)));
  }

  /**
   * A plain number of the document, in its SI unit. Water and density of a mix bind each other, and
   * wait for one another.
   */
  void put(JobNumber number, double value) {
    Matcher mix = MIX.matcher(number.path());
    if (!mix.matches()) {
      changes.add(number.put(value));
    } else {
      (mix.group(2).equals("density") ? density : water).put(Integer.parseInt(mix.group(1)), value);
    }
  }

  void clay(double score) {
    clay = score;
  }

  void looseSoil(double score) {
    looseSoil = score;
  }

  void looseSand(double score) {
    looseSand = score;
  }

  void pace(double position) {
    pace = position;
  }

  void diffusivity(double factor) {
    diffusivity = factor;
  }

  void exchange(double factor) {
    exchange = factor;
  }

  /** The readings of the tape hold no blunder. */
  void sound(boolean value) {
    sound = value;
  }

  /**
   * Gives the changed values. A mix holds no more water than its pores do: one that is laid denser
   * holds less.
   */
  List<JobChange> changes(List<MixSpec> mixes) {
    for (int i = 0; i < mixes.size(); i++) {
      MixSpec mix = mixes.get(i);
      double laid = density.getOrDefault(i, mix.density());
      double most =
          Saturation.moisture(Math.min(laid * (1 - mix.densitySpread()), FULL * Saturation.GRAINS));
      double wet = Math.min(water.getOrDefault(i, mix.placingMoisture()), FULL * most);
      set("floor.mixes[" + i + "].density", laid, "kg/m3");
      set("floor.mixes[" + i + "].placingMoisture", wet, "");
    }
    return List.copyOf(changes);
  }

  Supposed supposed() {
    return new Supposed(
        clay,
        looseSoil,
        looseSand,
        pace,
        new DryingDoubt(Range.exactly(diffusivity), Range.exactly(exchange)),
        sound);
  }
}
