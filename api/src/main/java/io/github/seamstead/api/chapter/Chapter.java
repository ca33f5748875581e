package io.github.seamstead.api.chapter;

/** The parts of a plan, in the order of the work. */
public enum Chapter {
  /** The site and the crew. */
  SITE("site", "The site and the crew"),
  /** The ideal frame and its members. */
  FRAME("frame", "The frame"),
  /** The frame as it was taped. */
  SURVEY("survey", "The frame as it stands"),
  /** The panels and the other pieces of the cover. */
  PATTERN("pattern", "The panels"),
  /** Marking panels out with a tape. */
  MARKOUT("markout", "Marking out"),
  /** Pieces laid on the stock. */
  LAYOUT("layout", "Cutting"),
  /** The joint map, the join order and its schedule. */
  JOINING("joining", "Joining"),
  /** Staples, adhesive, tape and rope. */
  FIXINGS("fixings", "Fixings"),
  /** Lifting, turning and raising the cover. */
  HANDLING("handling", "Turning and raising"),
  /** Pegs, ropes and wind. */
  ANCHORING("anchoring", "Anchoring"),
  /** What the local soil is. */
  SOIL("soil", "The soil"),
  /** The mix that suits it, and the trial mixes. */
  MIX("mix", "The mix"),
  /** Layers, batches and orders of the floor. */
  FLOOR("floor", "The floor"),
  /** Drying, shrinkage and repair. */
  DRYING("drying", "Drying and repair");

  private final String word;
  private final String title;

  Chapter(String word, String title) {
    this.word = word;
    this.title = title;
  }

  /**
   * Gives the chapter's name in data.
   *
   * @return one lower-case word
   */
  public String word() {
    return word;
  }

  /**
   * Gives the chapter's heading.
   *
   * @return a few words
   */
  public String title() {
    return title;
  }
}
