package io.github.seamstead.geometry.pattern;

/** What a piece is for. */
public enum PieceKind {
  /** A whole panel: one face in one piece. */
  PANEL("panel"),
  /** A part of a panel that is spliced from several. */
  PANEL_PART("panel part"),
  /** A reinforcement round an opening. */
  PATCH("reinforcement patch"),
  /** A flap over an opening. */
  FLAP("flap"),
  /** A cap over the top opening, or one face of it. */
  CAP("cap"),
  /** A strip that covers the joint between cap and cover. */
  APRON("apron"),
  /** A strip that carries the cover on over the ground. */
  SKIRT("ground skirt");

  private final String label;

  PieceKind(String label) {
    this.label = label;
  }

  /**
   * Names the kind in the trade's words.
   *
   * @return for example {@code ground skirt}
   */
  public String label() {
    return label;
  }
}
