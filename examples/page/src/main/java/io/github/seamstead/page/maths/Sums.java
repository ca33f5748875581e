package io.github.seamstead.page.maths;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Sums of streams as the platform of the JVM adds them: with compensation. Source of the method: W.
 * Kahan, Further remarks on reducing truncation errors, Communications of the ACM 8 (1965) 40.
 */
public final class Sums {

  private Sums() {}

  /**
   * Adds all numbers of a stream.
   *
   * @param numbers any numbers
   * @return their sum; 0 for none
   */
  public static double sum(DoubleStream numbers) {
    return sum(numbers.toArray());
  }

  /**
   * Takes the mean of the numbers of a stream.
   *
   * @param numbers any numbers
   * @return their mean; empty for none
   */
  public static OptionalDouble average(DoubleStream numbers) {
    double[] all = numbers.toArray();
    return all.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum(all) / all.length);
  }

  private static double sum(double[] numbers) {
    double sum = 0;
    double lost = 0;
    double plain = 0;
    for (double number : numbers) {
      double added = number - lost;
      double next = sum + added;
      lost = (next - sum) - added;
      sum = next;
      plain += number;
    }
    double total = sum - lost;
    // Infinite numbers leave no sum with compensation, yet a plain one.
    return Double.isNaN(total) && Double.isInfinite(plain) ? plain : total;
  }
}
