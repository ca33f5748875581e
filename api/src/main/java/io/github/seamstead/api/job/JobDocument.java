package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * A job document: what a builder writes down, section by section in the order of the work.
 *
 * @param seamstead version of the form of the document; always the newest, in which earlier ones
 *     are read
 * @param site the site and who works there, if stated
 * @param frame the frame that carries the cover, if there is one
 * @param cover the cover; not planned if left out, if stated
 * @param stock the sheets and rolls; panels are not laid out if left out, if stated
 * @param soils local soils with their tests
 * @param aggregates sands and gravels
 * @param trialMixes trial samples of the mixes
 * @param floor the earthen floor; not planned if left out, if stated
 * @param plant the tools that move and mix material, if stated
 * @param weather the weather while the floor dries, if stated
 * @param doubts how far values of the job may be off, where whoever measured them says so
 */
public record JobDocument(
    int seamstead,
    Optional<Site> site,
    Optional<Frame> frame,
    Optional<Cover> cover,
    Optional<Stock> stock,
    List<SoilSample> soils,
    List<Aggregate> aggregates,
    List<TrialMix> trialMixes,
    Optional<Floor> floor,
    Optional<Plant> plant,
    Optional<Weather> weather,
    List<ValueDoubt> doubts) {

  public JobDocument {
    soils = List.copyOf(soils);
    aggregates = List.copyOf(aggregates);
    trialMixes = List.copyOf(trialMixes);
    doubts = List.copyOf(doubts);
  }

  /**
   * Gives the units in which the job is told to its readers.
   *
   * @return as the site states them; metric without a site
   */
  public UnitSystem units() {
    return site.map(Site::units).orElse(UnitSystem.METRIC);
  }

  /**
   * Gives the paper that the book is made for.
   *
   * @return as the site states it; without that A4 where sizes are metric, Letter where they are
   *     imperial
   */
  public Paper paper() {
    return site.flatMap(Site::paper)
        .orElse(units() == UnitSystem.IMPERIAL ? Paper.LETTER : Paper.A4);
  }

  /**
   * Gives the face that is drawn nearest to the reader: the one with the door.
   *
   * @return the face of the cover's door, else that of the floor's, else 1
   */
  public int doorFace() {
    return cover
        .flatMap(Cover::door)
        .map(FaceOpening::face)
        .or(() -> floor.flatMap(Floor::doorFace))
        .orElse(1);
  }
}
