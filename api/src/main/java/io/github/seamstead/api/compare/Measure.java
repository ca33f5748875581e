package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.Chapter;
import java.util.Arrays;
import java.util.Optional;

/** The numbers of a plan that people decide by. */
public enum Measure {
  /** Cloth in all pieces of the cover. */
  CLOTH_AREA("clothArea", "cloth", "m2", Better.LESS, Chapter.PATTERN),
  /** Cloth of the pieces that found no place on the stock. */
  CLOTH_SHORT("clothShort", "cloth short", "m2", Better.LESS, Chapter.LAYOUT),
  /** Length of all seams. */
  SEAM_LENGTH("seamLength", "seams", "m", Better.LESS, Chapter.JOINING),
  /** Staples, stitches or screws. */
  FIXINGS("fixings", "fixings", "", Better.LESS, Chapter.FIXINGS),
  /** What has a price, in the money of the site. */
  MONEY("money", "money (priced part)", "", Better.LESS, Chapter.FLOOR),
  /** Days of one person's work. */
  PERSON_DAYS("personDays", "person-days", "d", Better.LESS, Chapter.SITE),
  /** Hours of all hands on the floor and at all seams. */
  HOURS("hours", "person-hours (seams, floor)", "h", Better.LESS, Chapter.SITE),
  /** Weeks from the first day to the end, with drying, as likely. */
  WEEKS("weeks", "weeks (likely)", "weeks", Better.LESS, Chapter.DRYING),
  /** Height under the top of the frame. */
  HEADROOM("headroom", "headroom in the middle", "m", Better.MORE, Chapter.FRAME),
  /** Area of the earthen floor, else of the frame's base. */
  FLOOR_AREA("floorArea", "floor", "m2", Better.MORE, Chapter.FLOOR),
  /** Mass handled over all joints of the join order. */
  HANDLED_MASS("handledMass", "handled mass", "kg", Better.LESS, Chapter.JOINING),
  /** Pull of the wind on each peg. */
  PEG_PULL("pegPull", "wind pull per peg", "N", Better.LESS, Chapter.ANCHORING),
  /** Clay in the mix of the uppermost mixed layer, over its dry mass. */
  CLAY("clay", "clay in the top mix", "1", Better.NEITHER, Chapter.MIX),
  /** The worst misfit of a panel on the frame as taped. */
  SEAM_MISFIT("seamMisfit", "seam misfit", "m", Better.LESS, Chapter.SURVEY),
  /** Trips of the barrow for all layers of the floor. */
  BARROW_TRIPS("barrowTrips", "barrow trips", "", Better.LESS, Chapter.FLOOR);

  /** Which way a measure is better. */
  public enum Better {
    /** The less the better. */
    LESS,
    /** The more the better. */
    MORE,
    /** Neither way: there is a right amount. */
    NEITHER
  }

  private final String word;
  private final String label;
  private final String unit;
  private final Better better;
  private final Chapter chapter;

  Measure(String word, String label, String unit, Better better, Chapter chapter) {
    this.word = word;
    this.label = label;
    this.unit = unit;
    this.better = better;
    this.chapter = chapter;
  }

  /**
   * Gives the name in data and on the command line.
   *
   * @return for example {@code clothArea}
   */
  public String word() {
    return word;
  }

  /**
   * Gives the name for people.
   *
   * @return a few words
   */
  public String label() {
    return label;
  }

  /**
   * Gives the key in data.
   *
   * @return the word, with the unit if there is one: {@code clothArea_m2}
   */
  public String key() {
    return unit.isEmpty() || unit.equals("1") || unit.equals(word) ? word : word + "_" + unit;
  }

  /**
   * Tells which way it is better.
   *
   * @return less, more or neither
   */
  public Better better() {
    return better;
  }

  /**
   * Gives the chapter that it comes from.
   *
   * @return the chapter; that of the site for sums over several
   */
  public Chapter chapter() {
    return chapter;
  }

  /**
   * Finds a measure by its word.
   *
   * @param word such as {@code weeks}
   * @return the measure; empty if there is none of that word
   */
  public static Optional<Measure> of(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
