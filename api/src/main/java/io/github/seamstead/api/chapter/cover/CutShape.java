package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.internal.SameCut;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One shape to cut, as often as there are pieces of it.
 *
 * @param id its name, by which the layout calls it
 * @param pieces the pieces of this shape, each with its own label; the layout's copy k is the k-th;
 *     at least one
 */
public record CutShape(String id, List<PatternPiece> pieces) {

  public CutShape {
    pieces = List.copyOf(pieces);
  }

  /**
   * Gives the piece that stands for all.
   *
   * @return the first piece
   */
  public PatternPiece pattern() {
    return pieces.get(0);
  }

  /**
   * Names a fold of the shape. Where it holds for the one piece of the shape alone it has its own
   * name, else that of its place.
   *
   * @param fold one of the folds of its pattern
   * @return for example {@code hip 3|4}, or {@code fold 1}
   */
  public String name(Fold fold) {
    return pieces.size() == 1 ? fold.name() : Fold.byPlace(fold.ordinal());
  }

  /**
   * Gathers the shapes of a cover.
   *
   * @param panels the panels with their parts
   * @param trims the pieces beside them
   * @return one shape for each group of congruent pieces
   */
  static List<CutShape> of(List<Panel> panels, List<PatternPiece> trims) {
    List<PatternPiece> pieces =
        Stream.concat(panels.stream().flatMap(panel -> panel.pieces().stream()), trims.stream())
            .toList();
    List<CutShape> shapes = new ArrayList<>();
    for (List<PatternPiece> group : SameCut.groups(pieces)) {
      shapes.add(new CutShape("shape-" + (shapes.size() + 1), group));
    }
    return shapes;
  }

  /**
   * Tells whether different names are written on the edges of the pieces.
   *
   * @return whether at least two pieces differ in the name of an edge or of its joint
   */
  public boolean namesDiffer() {
    return pieces.stream().map(CutShape::names).distinct().count() > 1;
  }

  private static List<String> names(PatternPiece piece) {
    return piece.edges().stream().map(edge -> edge.letter() + " " + edge.joint()).toList();
  }

  /**
   * Writes the name of an edge or joint where it holds for all pieces of the shape.
   *
   * @param name the name on the first piece; may be empty
   * @return the name, a dash for none, or that each piece has its own
   */
  String named(String name) {
    if (name.isEmpty()) {
      return "–";
    }
    return namesDiffer() ? "see each" : name;
  }

  /**
   * Names the shape by what is written on its pieces.
   *
   * @return for example {@code panel 1–12}
   */
  public String name() {
    String kind = pattern().kind().label();
    String labels = runs(pieces.stream().map(PatternPiece::label).toList());
    return labels.contains(kind) ? labels : kind + " " + labels;
  }

  /**
   * Joins labels with commas, runs of three or more following numbers with a dash, counts equals.
   *
   * @param labels the labels in order
   * @return for example {@code 1, 3–7}
   */
  public static String runs(List<String> labels) {
    StringBuilder text = new StringBuilder();
    int start = 0;
    while (start < labels.size()) {
      int end = start;
      while (end + 1 < labels.size() && follows(labels.get(end), labels.get(end + 1))) {
        end++;
      }
      if (end - start < 2) {
        end = start;
      }
      int same = start;
      while (same + 1 < labels.size() && labels.get(same + 1).equals(labels.get(start))) {
        same++;
      }
      if (same > start) {
        text.append(text.isEmpty() ? "" : ", ").append(same - start + 1).append(" × ");
        text.append(labels.get(start));
        start = same + 1;
        continue;
      }
      text.append(text.isEmpty() ? "" : ", ").append(labels.get(start));
      if (end > start) {
        text.append("–").append(labels.get(end));
      }
      start = end + 1;
    }
    return text.toString();
  }

  private static boolean follows(String first, String second) {
    return first.matches("\\d{1,6}")
        && second.matches("\\d{1,6}")
        && Integer.parseInt(second) == Integer.parseInt(first) + 1;
  }
}
