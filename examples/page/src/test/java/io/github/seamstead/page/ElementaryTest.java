package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.page.maths.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Holds every function to the platform's own, bit by bit. */
class ElementaryTest {

  private static final int VALUES = 240_000;

  private static final double[] SPECIAL = {
    0.0,
    -0.0,
    1,
    -1,
    0.5,
    -0.5,
    2,
    -2,
    1.5,
    2.5,
    -2.5,
    3,
    1e-300,
    -1e-300,
    4.9e-324,
    2.2e-308,
    2.3e-308,
    1e300,
    -1e300,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Math.PI,
    Math.PI / 2,
    Math.PI / 4,
    3 * Math.PI / 4,
    16 * Math.PI,
    710,
    -745,
    -746,
    709.78271289338397,
    0.41421356,
    -0.29289323,
    0x1.0p53,
    0x1.0p31,
    0x1.0p52,
    0x1.0p52 - 0.5,
    0.49999999999999994,
    1e22,
    0.9999999999999999,
    1.0000000000000002,
    1024,
    -1075,
    -1074,
    0.975,
    1e-9,
    1e-17
  };

  private final SplittableRandom random = new SplittableRandom(20);

  @Test
  void functionsOfOneNumber() {
    same("sin", Elementary::sin, StrictMath::sin);
    same("cos", Elementary::cos, StrictMath::cos);
    same("tan", Elementary::tan, StrictMath::tan);
    same("asin", Elementary::asin, StrictMath::asin);
    same("acos", Elementary::acos, StrictMath::acos);
    same("atan", Elementary::atan, StrictMath::atan);
    same("exp", Elementary::exp, StrictMath::exp);
    same("log", Elementary::log, StrictMath::log);
    same("log10", Elementary::log10, StrictMath::log10);
    same("log1p", Elementary::log1p, StrictMath::log1p);
    same("cbrt", Elementary::cbrt, StrictMath::cbrt);
    same("rint", Elementary::rint, Math::rint);
    same("round", x -> (double) Elementary.round(x), x -> (double) Math.round(x));
    same("ulp", Elementary::ulp, Math::ulp);
    same("toRadians", Elementary::toRadians, Math::toRadians);
    same("toDegrees", Elementary::toDegrees, Math::toDegrees);
  }

  @Test
  void functionsOfTwoNumbers() {
    same("atan2", Elementary::atan2, StrictMath::atan2);
    same("pow", Elementary::pow, StrictMath::pow);
    same("hypot", Elementary::hypot, StrictMath::hypot);
    same("IEEEremainder", Elementary::IEEEremainder, Math::IEEEremainder);
  }

  private void same(String name, DoubleUnaryOperator own, DoubleUnaryOperator platform) {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < VALUES; i++) {
      double x = value(i);
      compare(name + "(" + x + ")", own.applyAsDouble(x), platform.applyAsDouble(x), wrong);
    }
    assertThat(wrong).as(name).isEmpty();
  }

  private void same(String name, DoubleBinaryOperator own, DoubleBinaryOperator platform) {
    List<String> wrong = new ArrayList<>();
    for (double x : SPECIAL) {
      for (double y : SPECIAL) {
        String call = name + "(" + x + ", " + y + ")";
        compare(call, own.applyAsDouble(x, y), platform.applyAsDouble(x, y), wrong);
      }
    }
    for (int i = 0; i < VALUES; i++) {
      double x = value(i);
      double y = i % 3 == 0 ? random.nextInt(-20, 20) / 2.0 : value(i + random.nextInt(7));
      String call = name + "(" + x + ", " + y + ")";
      compare(call, own.applyAsDouble(x, y), platform.applyAsDouble(x, y), wrong);
    }
    assertThat(wrong).as(name).isEmpty();
  }

  /**
   * Numbers of every size, of the sizes of shelters, of any bits, and those with rules of their
   * own.
   */
  private double value(int i) {
    if (i < SPECIAL.length) {
      return SPECIAL[i];
    }
    return switch (i % 6) {
      case 0 -> random.nextDouble() * 2 - 1;
      case 1 -> (random.nextDouble() - 0.5) * 20;
      case 2 -> (random.nextDouble() - 0.5) * 1500;
      case 3 -> Double.longBitsToDouble(random.nextLong());
      case 4 -> Math.nextUp(random.nextInt(2000) * (Math.PI / 4));
      default -> Math.scalb(random.nextDouble() + 1, random.nextInt(-60, 60));
    };
  }

  private static void compare(String call, double own, double platform, List<String> wrong) {
    boolean same = Double.doubleToLongBits(own) == Double.doubleToLongBits(platform);
    if (!same && wrong.size() < 10) {
      wrong.add(call + " = " + own + ", not " + platform);
    }
  }
}
