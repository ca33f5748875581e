package io.github.seamstead.page.maths;

import org.teavm.jso.typedarrays.Float64Array;
import org.teavm.jso.typedarrays.Int32Array;

/** What {@link Words} does, by two views of the same eight bytes (on machines low half first). */
final class BrowserWords {

  private static final Float64Array WHOLE = new Float64Array(1);
  private static final Int32Array HALVES = new Int32Array(WHOLE.getBuffer());

  private BrowserWords() {}

  static int high(double x) {
    WHOLE.set(0, x);
    return HALVES.get(1);
  }

  static int low(double x) {
    WHOLE.set(0, x);
    return HALVES.get(0);
  }

  static double of(int high, int low) {
    HALVES.set(0, low);
    HALVES.set(1, high);
    return WHOLE.get(0);
  }

  static double withHigh(double x, int high) {
    WHOLE.set(0, x);
    HALVES.set(1, high);
    return WHOLE.get(0);
  }

  static double cut(double x) {
    WHOLE.set(0, x);
    HALVES.set(0, 0);
    return WHOLE.get(0);
  }
}
