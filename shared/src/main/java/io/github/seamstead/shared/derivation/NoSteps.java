package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.source.Source;

/** Keeps nothing. One instance, no state, so that the plain call allocates nothing. */
final class NoSteps implements Steps, Steps.Entry {

  static final NoSteps INSTANCE = new NoSteps();

  private NoSteps() {}

  @Override
  public boolean isRecording() {
    return false;
  }

  @Override
  public void section(String heading) {}

  @Override
  public Entry step(String symbol, String name) {
    return this;
  }

  @Override
  public Entry formula(String formula) {
    return this;
  }

  @Override
  public Entry with(String symbol, double value, String unit) {
    return this;
  }

  @Override
  public Entry from(Source source) {
    return this;
  }

  @Override
  public Entry note(String note) {
    return this;
  }

  @Override
  public double gives(double value, String unit) {
    return value;
  }
}
