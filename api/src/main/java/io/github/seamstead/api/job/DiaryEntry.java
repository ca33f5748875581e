package io.github.seamstead.api.job;

import io.github.seamstead.assembly.ring.Facing;
import io.github.seamstead.assembly.ring.LogEntry;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one line of a diary says. */
public sealed interface DiaryEntry {

  /**
   * Pieces cut out of the cloth.
   *
   * @param pieces their names, such as 3 or 3-1, or {@code skirt 4} where several are named alike
   * @param place where the piece was cut, if not where the plan of the evening before puts it; for
   *     a single piece
   */
  record Cut(List<String> pieces, Optional<CutPlace> place) implements DiaryEntry {
    public Cut {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Where a piece was cut: turned over first if so, then turned about its origin, then moved.
   *
   * @param stock the sheet or roll
   * @param copy which of several alike, counted from 1
   * @param x shift along the stock, in metres
   * @param y shift across the stock, in metres
   * @param turn counter-clockwise, in radians
   * @param turnedOver whether it was cut with the plain side up
   */
  record CutPlace(String stock, int copy, double x, double y, double turn, boolean turnedOver) {}

  /**
   * Cut pieces that are of no more use.
   *
   * @param pieces their names
   * @param why what happened, if stated
   */
  record Spoiled(List<String> pieces, Optional<String> why) implements DiaryEntry {
    public Spoiled {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Pieces written off that are there and sound after all.
   *
   * @param pieces their names
   */
  record Found(List<String> pieces) implements DiaryEntry {
    public Found {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A part of a sheet or roll that is gone: used for something else, or torn.
   *
   * @param stock the sheet or roll
   * @param copy which of several alike, counted from 1
   * @param x where it begins along the stock, in metres
   * @param y where it begins across the stock, in metres
   * @param width along the stock, in metres
   * @param height across the stock, in metres
   */
  record ClothPart(String stock, int copy, double x, double y, double width, double height) {}

  /**
   * Cloth used for something else than pieces of the plan.
   *
   * @param part which part of the stock
   */
  record ClothUsed(ClothPart part) implements DiaryEntry {}

  /**
   * Cloth torn or stained, from which no piece may be cut.
   *
   * @param part which part of the stock
   */
  record ClothTorn(ClothPart part) implements DiaryEntry {}

  /**
   * Cloth that came in addition.
   *
   * @param sheet sheets of one size, if it is sheets
   * @param roll rolls of one width, if it is rolls
   */
  record ClothBought(Optional<StockSheet> sheet, Optional<StockRoll> roll) implements DiaryEntry {}

  /**
   * A material of the floor delivered or dug.
   *
   * @param material the soil or aggregate, by its name
   * @param mass damp as it came, in kilograms
   */
  record Delivered(String material, double mass) implements DiaryEntry {}

  /**
   * A seam joined.
   *
   * @param edges the two edges, such as 3R and 4L
   * @param facing how the pieces lay; good sides together if left out
   * @param marks the joint names read on the two edges, with their check marks, if stated
   */
  record Joined(List<String> edges, Facing facing, Optional<List<String>> marks)
      implements DiaryEntry {
    public Joined {
      edges = List.copyOf(edges);
      marks = marks.map(List::copyOf);
    }

    /**
     * Gives the seam as the join log takes it.
     *
     * @return the entry
     */
    public LogEntry log() {
      LogEntry joined = LogEntry.joined(edges.get(0), edges.get(1), facing);
      return marks.map(m -> joined.marked(m.get(0), m.get(1))).orElse(joined);
    }
  }

  /**
   * A seam taken apart again.
   *
   * @param edges the two edges
   */
  record Undone(List<String> edges) implements DiaryEntry {
    public Undone {
      edges = List.copyOf(edges);
    }

    /**
     * Gives the seam as the join log takes it.
     *
     * @return the entry
     */
    public LogEntry log() {
      return LogEntry.undone(edges.get(0), edges.get(1));
    }
  }

  /**
   * A layer of the floor laid, or a part of it.
   *
   * @param layer the layer, by its name, or its kind where it has none
   * @param sector the sector by its number on the floor map, which is its place in the order of
   *     laying; the whole layer if left out
   * @param loads how many loads went into the sector; the whole sector if left out
   */
  record Laid(String layer, Optional<Integer> sector, Optional<Double> loads)
      implements DiaryEntry {}

  /**
   * A test tile filled with the mix of a layer.
   *
   * @param tile its name
   * @param layer the layer whose mix it is of
   * @param thickness of the tile, in metres
   * @param area of its open face, in square metres
   * @param scale standard uncertainty of one weighing, in kilograms
   */
  record TileMade(String tile, String layer, double thickness, double area, double scale)
      implements DiaryEntry {}

  /**
   * A test tile weighed, tray and all.
   *
   * @param tile its name
   * @param mass in kilograms
   */
  record TileWeighed(String tile, double mass) implements DiaryEntry {}

  /**
   * A test tile that cracked; later weighings do not count, for cracks dry faster.
   *
   * @param tile its name
   * @param crack width of the cracks across it, all together, in metres
   */
  record TileCracked(String tile, double crack) implements DiaryEntry {}

  /**
   * Tests of a soil; each replaces the one of its kind that the job states.
   *
   * @param tests the tests
   */
  record SoilTested(SoilTests tests) implements DiaryEntry {}

  /**
   * A trial sample of a mix made and read.
   *
   * @param mix the mix, by its name
   * @param sample the sample
   */
  record TrialMade(String mix, TrialSample sample) implements DiaryEntry {}

  /**
   * A reading of the frame taken again; it replaces what the job states.
   *
   * @param distance a taped distance, if it is one
   * @param height a difference of height, if it is one
   * @param plumb a plumb line, if it is one
   * @param measures measures of an ideal frame, if it is these
   */
  record Retaken(
      Optional<TapedDistance> distance,
      Optional<HeightReading> height,
      Optional<PlumbReading> plumb,
      Optional<Map<FrameMeasure, Double>> measures)
      implements DiaryEntry {
    public Retaken {
      measures = measures.map(Map::copyOf);
    }
  }

  /**
   * Pegs pulled on this ground, along the rope.
   *
   * @param pulls pull at which each began to move, in newtons
   */
  record PegsPulled(List<Double> pulls) implements DiaryEntry {
    public PegsPulled {
      pulls = List.copyOf(pulls);
    }
  }

  /**
   * The weather of the day, or of several up to it, as it was over the floor.
   *
   * @param temperature mean air temperature, in degrees Celsius
   * @param humidity mean relative humidity, as a part of one
   * @param airSpeed mean air speed over the floor, in metres per second
   * @param days how many days it holds for, the last of them that of the line
   */
  record WeatherSeen(double temperature, double humidity, double airSpeed, int days)
      implements DiaryEntry {}

  /**
   * A remark.
   *
   * @param text the remark
   */
  record Note(String text) implements DiaryEntry {}
}
