package io.github.seamstead.assembly.fixings;

/**
 * The seams of a cover in the order in which they are made, and which cloth lies on top. Water runs
 * down the outside, so what is higher up laps over what is lower: a lap the other way lets it in.
 */
public enum SeamKind {
  /** Parts of one panel, joined before the panel meets its neighbours. */
  SPLICE("splices in panels", "the upper part laps over the lower, outside"),
  /** The reinforcement round a door or vent, on the panel while it lies flat. */
  PATCH("patches round openings", "inside, or outside with its upper edge sealed"),
  /** The upper edge of the flap over a door or vent. */
  FLAP("flaps over openings", "outside, fixed above the opening, free at sides and foot"),
  /** The panels round the frame. */
  RING("panel to panel", "both edges alike; a lap faces away from the worst weather"),
  /** The fold along the lower edge. */
  HEM("hem", "folded to the inside, so that no pocket holds water"),
  /** The fold round the opening at the top. */
  TOP("turn-in at the top", "folded to the inside"),
  /** The ends of the strips of the skirt. */
  SKIRT_ENDS("ends of the skirt's strips", "any way; the skirt lies on the ground"),
  /** The skirt along the foot of the cover. */
  SKIRT("skirt to cover", "the cover laps over the skirt, outside"),
  /** The joints of the cap itself. */
  CAP_JOINTS("joints of the cap", "one sector over the next, all the same way round"),
  /** The apron or cap over the top, put on when the cover is right side out. */
  CAP("cap or apron to cover, after turning", "over the cover, outside"),
  /** The lining, a cover of its own inside. */
  LINING("lining", "any way; it sheds no rain");

  private final String label;
  private final String lap;

  SeamKind(String label, String lap) {
    this.label = label;
    this.lap = lap;
  }

  /**
   * Names the seams.
   *
   * @return for example {@code splices in panels}
   */
  public String label() {
    return label;
  }

  /**
   * Says which cloth lies on top.
   *
   * @return in words
   */
  public String lap() {
    return lap;
  }
}
