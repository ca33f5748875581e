package io.github.seamstead.api.chapter.pieces;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A name for each piece to cut, by which a diary calls it: its label, with a number where several
 * pieces carry the same label, such as {@code skirt 4}.
 */
public final class PieceNames {

  /**
   * A piece among the shapes.
   *
   * @param shape the shape
   * @param copy which of its pieces, counted from 1
   */
  public record Named(CutShape shape, int copy) {

    /**
     * Gives the piece.
     *
     * @return the piece as drawn
     */
    public PatternPiece piece() {
      return shape.pieces().get(copy - 1);
    }
  }

  private final Map<String, Named> pieces = new LinkedHashMap<>();
  private final Map<String, String> names = new HashMap<>();

  private PieceNames(List<CutShape> shapes) {
    Map<String, Integer> count = new HashMap<>();
    shapes.forEach(s -> s.pieces().forEach(p -> count.merge(p.label(), 1, Integer::sum)));
    Map<String, Integer> met = new HashMap<>();
    for (CutShape shape : shapes) {
      for (int copy = 1; copy <= shape.pieces().size(); copy++) {
        String label = shape.pieces().get(copy - 1).label();
        int number = met.merge(label, 1, Integer::sum);
        boolean alone = count.getOrDefault(label, 1) == 1;
        String name = alone ? label : label + " " + number;
        pieces.put(name, new Named(shape, copy));
        names.put(key(shape.id(), copy), name);
      }
    }
  }

  /**
   * Names the pieces of a cover.
   *
   * @param shapes the shapes to cut
   * @return the names
   */
  public static PieceNames of(List<CutShape> shapes) {
    return new PieceNames(shapes);
  }

  private static String key(String shape, int copy) {
    return shape + '/' + copy;
  }

  /**
   * Gives all pieces by name.
   *
   * @return the pieces in the order of the shapes
   */
  public Map<String, Named> all() {
    return java.util.Collections.unmodifiableMap(pieces);
  }

  /**
   * Finds a piece.
   *
   * @param name its name
   * @return the piece, if there is one of that name
   */
  public Optional<Named> find(String name) {
    return Optional.ofNullable(pieces.get(name));
  }

  /**
   * Names a piece of the layout.
   *
   * @param shape the shape's name
   * @param copy which of its pieces, counted from 1
   * @return the piece's name; that of the shape if it has no such piece
   */
  public String name(String shape, int copy) {
    return names.getOrDefault(key(shape, copy), shape);
  }
}
