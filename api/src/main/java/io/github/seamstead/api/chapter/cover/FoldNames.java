package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the hips within a piece over several faces are called. */
public final class FoldNames {

  private static final Pattern FIRST_FACE = Pattern.compile("(\\d{1,6}) to \\d{1,6}");

  private FoldNames() {}

  /**
   * Names a fold of a shape. Where it holds for the one piece of the shape alone it is named by the
   * faces beside it, else by its place from the left.
   *
   * @param shape the shape
   * @param fold one of the folds of its pattern
   * @return for example {@code hip 3|4}, or {@code fold 1}
   */
  public static String of(CutShape shape, Fold fold) {
    return shape.pieces().size() == 1 ? of(shape.pattern(), fold) : "fold " + fold.ordinal();
  }

  /**
   * Names a fold of a piece by the faces beside it.
   *
   * @param piece the piece
   * @param fold one of its folds
   * @return for example {@code hip 3|4}; {@code fold 1} for a piece that is not called by its faces
   */
  public static String of(PatternPiece piece, Fold fold) {
    Matcher faces = FIRST_FACE.matcher(piece.label());
    if (!faces.matches()) {
      return "fold " + fold.ordinal();
    }
    int left = Integer.parseInt(faces.group(1)) + fold.ordinal() - 1;
    return "hip " + left + "|" + (left + 1);
  }
}
