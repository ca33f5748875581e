package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One simulated drying: mean moisture of the coat, water given off, and a profile each day. */
public final class DryingCurve {

  private final DryingSlab slab;
  private final double[] times;
  private final double[] coat;
  private final double[] evaporated;
  private final double[] depths;
  private final List<double[]> profiles;
  private final double waterLeft;

  private DryingCurve(Builder builder) {
    slab = builder.slab;
    times = Arrays.copyOf(builder.times, builder.count);
    coat = Arrays.copyOf(builder.coat, builder.count);
    evaporated = Arrays.copyOf(builder.evaporated, builder.count);
    depths = builder.depths;
    profiles = List.copyOf(builder.profiles);
    waterLeft = builder.water;
  }

  /**
   * A moment of the curve.
   *
   * @param time since the coat was laid, in seconds
   * @param coatMoisture mean moisture of the coat, water over dry mass
   * @param evaporated water given off so far, in kg/m²
   */
  public record Point(double time, double coatMoisture, double evaporated) {}

  /**
   * A point of a profile.
   *
   * @param depth under the surface, in metres
   * @param moisture water over dry mass
   */
  public record ProfilePoint(double depth, double moisture) {}

  /**
   * Gives all moments computed.
   *
   * @return in order of time, first the laying
   */
  public List<Point> points() {
    List<Point> points = new ArrayList<>(times.length);
    for (int i = 0; i < times.length; i++) {
      points.add(new Point(times[i], coat[i], evaporated[i]));
    }
    return List.copyOf(points);
  }

  /**
   * Gives the length of the simulation.
   *
   * @return in seconds
   */
  public double duration() {
    return times[times.length - 1];
  }

  /**
   * Gives the mean moisture of the coat at the end.
   *
   * @return water over dry mass
   */
  public double finalMoisture() {
    return coat[coat.length - 1];
  }

  /**
   * Gives the water given off by the end.
   *
   * @return in kg/m²
   */
  public double evaporated() {
    return evaporated[evaporated.length - 1];
  }

  /**
   * Gives the water left in coat and base at the end. With {@link #evaporated()} it adds to the
   * water at the start, to rounding.
   *
   * @return in kg/m²
   */
  public double waterLeft() {
    return waterLeft;
  }

  /**
   * Gives the mean moisture of the coat at a time, on a straight line between moments computed.
   *
   * @param time in seconds, 0 to {@link #duration()}
   * @return water over dry mass
   * @throws IllegalArgumentException if the time is out of range
   */
  public double coatMoistureAt(double time) {
    return at(time, coat);
  }

  /**
   * Gives the water given off until a time.
   *
   * @param time in seconds, 0 to {@link #duration()}
   * @return in kg/m²
   * @throws IllegalArgumentException if the time is out of range
   */
  public double evaporatedAt(double time) {
    return at(time, evaporated);
  }

  private double at(double time, double[] values) {
    Args.within("time", time, 0, duration(), "s");
    int i = Arrays.binarySearch(times, time);
    if (i >= 0) {
      return values[i];
    }
    int after = -i - 1;
    double part = (time - times[after - 1]) / (times[after] - times[after - 1]);
    return values[after - 1] + part * (values[after] - values[after - 1]);
  }

  /**
   * Finds when the coat is first as dry as wanted.
   *
   * @param moisture mean moisture of the coat
   * @return in seconds; empty if the simulation ends before
   */
  public Optional<Double> timeTo(double moisture) {
    if (coat[0] <= moisture) {
      return Optional.of(0.0);
    }
    for (int i = 1; i < coat.length; i++) {
      if (coat[i] <= moisture) {
        double part = (coat[i - 1] - moisture) / (coat[i - 1] - coat[i]);
        return Optional.of(times[i - 1] + part * (times[i] - times[i - 1]));
      }
    }
    return Optional.empty();
  }

  /**
   * Counts the daily profiles.
   *
   * @return whole days simulated, and one for the start
   */
  public int profiles() {
    return profiles.size();
  }

  /**
   * Gives the moisture against depth at the end of a day.
   *
   * @param day 0 for the start
   * @return from the surface down, through coat and base
   * @throws IllegalArgumentException if the day was not simulated
   */
  public List<ProfilePoint> profile(int day) {
    Args.within("day", day, 0, profiles.size() - 1);
    double[] moisture = profiles.get(day);
    List<ProfilePoint> points = new ArrayList<>();
    for (int i = 0; i < moisture.length; i++) {
      points.add(new ProfilePoint(depths[i], moisture[i]));
    }
    return List.copyOf(points);
  }

  /**
   * Gives the slab that dried.
   *
   * @return coat and base
   */
  public DryingSlab slab() {
    return slab;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DryingCurve curve
        && curve.slab.equals(slab)
        && Arrays.equals(curve.times, times)
        && Arrays.equals(curve.coat, coat)
        && Arrays.equals(curve.evaporated, evaporated);
  }

  @Override
  public int hashCode() {
    return 31 * slab.hashCode() + Arrays.hashCode(coat);
  }

  @Override
  public String toString() {
    return "DryingCurve[" + times.length + " times]";
  }

  /** Collects the moments of a run. */
  static final class Builder {

    private final DryingSlab slab;
    private final DryingGrid grid;
    private final double[] depths;
    private final List<double[]> profiles = new ArrayList<>();
    private double[] times = new double[512];
    private double[] coat = new double[512];
    private double[] evaporated = new double[512];
    private int count;
    private double water;

    Builder(DryingSlab slab, DryingGrid grid, double[] moisture) {
      this.slab = slab;
      this.grid = grid;
      depths = new double[grid.cells() + 1];
      double top = 0;
      for (int i = 1; i <= grid.cells(); i++) {
        depths[i] = top + grid.size(i - 1) / 2;
        top += grid.size(i - 1);
      }
      add(0, 0, moisture, true);
    }

    double coatMoisture() {
      return coat[count - 1];
    }

    void add(double time, double given, double[] moisture, boolean profile) {
      if (count == times.length) {
        times = Arrays.copyOf(times, 2 * count);
        coat = Arrays.copyOf(coat, 2 * count);
        evaporated = Arrays.copyOf(evaporated, 2 * count);
      }
      double inCoat = 0;
      double inBase = 0;
      for (int i = 1; i < moisture.length; i++) {
        double here = moisture[i] * grid.size(i - 1);
        if (i <= grid.coatCells()) {
          inCoat += here;
        } else {
          inBase += here;
        }
      }
      times[count] = time;
      coat[count] = inCoat / slab.thickness();
      evaporated[count] = given;
      water = slab.dryDensity() * (inCoat + inBase);
      count++;
      if (profile) {
        profiles.add(moisture.clone());
      }
    }

    DryingCurve build() {
      return new DryingCurve(this);
    }
  }
}
