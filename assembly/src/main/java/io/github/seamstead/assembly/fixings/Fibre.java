package io.github.seamstead.assembly.fixings;

/** What a rope is made of, with its strength as a multiple of manila of the same size. */
public enum Fibre {
  /** Manila, the measure of the old rules. */
  MANILA("manila", 1, 1),
  /** Polypropylene. */
  POLYPROPYLENE("polypropylene", 1.4, 1.4),
  /** Polyester: 2.0 on one page and 2.5 on another. */
  POLYESTER("polyester", 2.0, 2.5),
  /** Nylon. */
  NYLON("nylon", 2.5, 2.5);

  private final String label;
  private final double timesManila;
  private final double rivalTimesManila;

  Fibre(String label, double timesManila, double rivalTimesManila) {
    this.label = label;
    this.timesManila = timesManila;
    this.rivalTimesManila = rivalTimesManila;
  }

  /**
   * Names the fibre.
   *
   * @return for example {@code polyester}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the lower printed multiple of manila's strength, which is used.
   *
   * @return 1 or more
   */
  public double timesManila() {
    return timesManila;
  }

  /**
   * Gives the higher printed multiple, for comparison.
   *
   * @return {@link #timesManila()} or more
   */
  public double rivalTimesManila() {
    return rivalTimesManila;
  }
}
