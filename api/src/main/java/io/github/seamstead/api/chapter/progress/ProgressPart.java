package io.github.seamstead.api.chapter.progress;

import java.time.LocalDate;
import java.util.List;

/**
 * How far the job is.
 *
 * @param last the last day of the diary
 * @param pieces every piece to cut, with its state
 * @param seamsMade the joints of the ring that are made
 * @param seamsOpen the joints of the ring that are open
 * @param tiles the test tiles
 * @param nextDay what to do next, each a line
 */
public record ProgressPart(
    LocalDate last,
    List<PieceState> pieces,
    List<String> seamsMade,
    List<String> seamsOpen,
    List<TileState> tiles,
    List<String> nextDay) {

  public ProgressPart {
    pieces = List.copyOf(pieces);
    seamsMade = List.copyOf(seamsMade);
    seamsOpen = List.copyOf(seamsOpen);
    tiles = List.copyOf(tiles);
    nextDay = List.copyOf(nextDay);
  }

  /**
   * A piece to cut.
   *
   * @param name its name
   * @param cut whether it is cut
   * @param spoiled why one was written off, empty if none was
   * @param stock the sheet or roll on which it lies; empty if it has no place
   * @param copy which of several alike, 0 if it has no place
   */
  public record PieceState(String name, boolean cut, String spoiled, String stock, int copy) {

    /**
     * Says the state.
     *
     * @return cut, to cut, or to cut again
     */
    public String state() {
      return cut ? "cut" : spoiled.isEmpty() ? "to cut" : "to cut again";
    }
  }

  /**
   * A test tile.
   *
   * @param name its name
   * @param layer the layer whose mix it is of
   * @param weighings how many count
   * @param crack width of its cracks, in metres; 0 for none
   */
  public record TileState(String name, String layer, int weighings, double crack) {}

  /**
   * Gives the pieces that are not cut.
   *
   * @return the pieces, in the order of the shapes
   */
  public List<PieceState> open() {
    return pieces.stream().filter(p -> !p.cut()).toList();
  }
}
