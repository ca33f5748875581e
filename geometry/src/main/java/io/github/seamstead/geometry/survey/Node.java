package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A named point of the frame: {@code B1}, {@code B2}, … base corners and {@code T1}, {@code T2}, …
 * opening (top) corners, both counter-clockwise seen from above with {@code T1} above {@code B1};
 * {@code A} the apex; {@code C} the ground centre. Corner i is the foot of hip i, so face i, as
 * seen from outside, lies between {@code B<i-1>} on its left and {@code B<i>} on its right.
 *
 * @param kind which sort of point
 * @param number the corner's number from 1, or 0 for the apex and the centre; 1 to 64 for corners
 */
public record Node(Kind kind, int number) implements Comparable<Node> {

  /** The apex. */
  public static final Node APEX = new Node(Kind.APEX, 0);

  /** The ground centre. */
  public static final Node CENTRE = new Node(Kind.CENTRE, 0);

  private static final Pattern NAME = Pattern.compile("([A-Za-z]+) ?([0-9]{0,3})");

  /** The sorts of point. */
  public enum Kind {
    /** A corner of the base. */
    BASE("B"),
    /** A corner of the opening at the top. */
    OPENING("T"),
    /** The apex. */
    APEX("A"),
    /** The centre mark on the ground. */
    CENTRE("C");

    private final String letter;

    Kind(String letter) {
      this.letter = letter;
    }

    boolean isNumbered() {
      return this == BASE || this == OPENING;
    }
  }

  public Node {
    if (kind.isNumbered()) {
      Args.within("corner number", number, 1, SurveyShape.MOST_SIDES);
    } else {
      Args.within("number of " + kind.letter, number, 0, 0);
    }
  }

  /**
   * Names a base corner.
   *
   * @param number 1 to the number of sides
   * @return {@code B<number>}
   * @throws IllegalArgumentException if the number is out of range
   */
  public static Node base(int number) {
    return new Node(Kind.BASE, number);
  }

  /**
   * Names an opening corner.
   *
   * @param number 1 to the number of sides
   * @return {@code T<number>}
   * @throws IllegalArgumentException if the number is out of range
   */
  public static Node opening(int number) {
    return new Node(Kind.OPENING, number);
  }

  /**
   * Reads a name, in capital or small letters.
   *
   * @param text such as {@code B3}, {@code t12}, {@code A} or {@code apex}, {@code C}, {@code
   *     centre} or {@code center}
   * @return the node
   * @throws IllegalArgumentException if the text is no such name
   */
  public static Node parse(String text) {
    Matcher matcher = NAME.matcher(text.strip());
    if (matcher.matches()) {
      String word = matcher.group(1).toUpperCase(Locale.ROOT);
      String digits = matcher.group(2);
      if (digits.isEmpty()) {
        if (word.equals("A") || word.equals("APEX")) {
          return APEX;
        }
        if (word.equals("C") || word.equals("CENTRE") || word.equals("CENTER")) {
          return CENTRE;
        }
      } else if (word.equals("B")) {
        return base(Integer.parseInt(digits));
      } else if (word.equals("T")) {
        return opening(Integer.parseInt(digits));
      }
    }
    throw ArgumentFault.of(
        "node",
        "\"" + text + "\"",
        "must be B and a number (base corner), T and a number (opening corner), A (apex) or C"
            + " (ground centre)",
        "",
        "");
  }

  /**
   * Writes the name.
   *
   * @return such as {@code B3} or {@code A}
   */
  public String name() {
    return kind.isNumbered() ? kind.letter + number : kind.letter;
  }

  @Override
  public int compareTo(Node other) {
    int byKind = kind.compareTo(other.kind);
    return byKind != 0 ? byKind : Integer.compare(number, other.number);
  }

  @Override
  public String toString() {
    return name();
  }
}
