package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * The earthen floor.
 *
 * @param edging how far the floor stays inside the base line, in metres
 * @param gaps places without floor
 * @param doorFace the face with the door, towards which the floor is laid; that of cover.door if
 *     left out, if stated
 * @param layers layers from the bottom to the top
 * @param mixes the mixes of the layers
 * @param shortestOpenTime shortest time in which a wet edge still joins, in seconds, if stated
 * @param longestOpenTime longest time in which a wet edge still joins, in seconds, if stated
 * @param reserve material ordered over the need, as a part of one
 * @param softBase thickness of turf and topsoil left under the floor, in metres, if stated
 * @param outline the floor's outline, instead of the base of the frame, if stated
 */
public record Floor(
    double edging,
    List<RoundGap> gaps,
    Optional<Integer> doorFace,
    List<FloorLayer> layers,
    List<MixSpec> mixes,
    Optional<Double> shortestOpenTime,
    Optional<Double> longestOpenTime,
    double reserve,
    Optional<Double> softBase,
    Optional<FloorOutline> outline) {

  /**
   * Copies the lists.
   *
   * @param edging how far the floor stays inside the base line, in metres
   * @param gaps places without floor
   * @param doorFace the face with the door, towards which the floor is laid; that of cover.door if
   *     left out, if stated
   * @param layers layers from the bottom to the top
   * @param mixes the mixes of the layers
   * @param shortestOpenTime shortest time in which a wet edge still joins, in seconds, if stated
   * @param longestOpenTime longest time in which a wet edge still joins, in seconds, if stated
   * @param reserve material ordered over the need, as a part of one
   * @param softBase thickness of turf and topsoil left under the floor, in metres, if stated
   * @param outline the floor's outline, instead of the base of the frame, if stated
   */
  public Floor {
    gaps = List.copyOf(gaps);
    layers = List.copyOf(layers);
    mixes = List.copyOf(mixes);
  }
}
