package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What both edges of a joint carry: the joint's name in letters and a two-digit check, such as
 * {@code C-32}.
 *
 * <p>The code. Letters are the 23 of {@link #LETTERS}: I, O and Q are left out because they are
 * read as 1 and 0. A letter stands for its place a in that row, 0 to 22. All names of one ring have
 * the same count k of letters, the least that gives every joint its own: 1 for up to 23 joints, 2
 * for up to 529, 3 for up to 12 167. The check is
 *
 * <pre>
 *   c = 10 + (sum of w_i a_i mod 23),   weights, last letter first: w = 11, 1, 22
 * </pre>
 *
 * <p>What it guarantees. 23 is a prime and no weight is 0, so a change of one letter always changes
 * the check: any two marks of a ring differ in at least two characters (code distance 2), and one
 * misread character, letter or digit, never gives another valid mark. The weights differ from each
 * other, so two neighbouring letters in swapped order are noticed, and swapped digits are, because
 * the check follows from the name. The step from one joint to the next changes c by +11 or -12 (or
 * +12 or -11), so neighbouring joints differ in the letter and in both digits. A mark read upside
 * down starts with a digit and is no mark.
 *
 * <p>Method: a weighted check symbol over a prime field, as in Verhoeff, Error Detecting Decimal
 * Codes (1969), from memory; the weights are this library's own.
 *
 * @param name the joint's letters
 * @param check the check, 10 to 32
 */
public record JointMark(String name, int check) {

  /** The letters in the order of their places. */
  public static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

  /** The most joints that can be named. */
  public static final int MOST_JOINTS = 23 * 23 * 23;

  private static final Source WEIGHTED_CHECK =
      Source.fromMemory(
          "Verhoeff", "Error detecting decimal codes", "1969", "weighted sums over a prime field");
  private static final int FIELD = LETTERS.length();
  private static final int[] WEIGHTS_FROM_LAST = {11, 1, 22};
  private static final int LEAST_CHECK = 10;
  private static final Pattern WRITTEN = Pattern.compile("([A-Z]{1,3})[-\\s]?(\\d{2})");

  public JointMark {
    int right = checkOf(name);
    if (right != check) {
      throw ArgumentFault.finding(
          "joint mark: given " + name + "-" + check + ", but the check of " + name + " is " + right,
          "one of its characters was misread");
    }
  }

  /**
   * Names a joint.
   *
   * @param number the joint's number, 1 to {@code joints}
   * @param joints how many joints the ring or line has, at most {@link #MOST_JOINTS}
   * @return its mark
   */
  static JointMark of(int number, int joints) {
    int letters = joints <= FIELD ? 1 : joints <= FIELD * FIELD ? 2 : 3;
    char[] name = new char[letters];
    int rest = number - 1;
    for (int i = letters - 1; i >= 0; i--) {
      name[i] = LETTERS.charAt(rest % FIELD);
      rest /= FIELD;
    }
    String text = new String(name);
    return new JointMark(text, checkOf(text));
  }

  /**
   * Reads a mark as somebody types it: capitals or not, with a hyphen, a space or neither.
   *
   * @param text such as {@code C-32}, {@code c32} or {@code C 32}
   * @return the mark, or empty if this is no mark or its check does not fit its name
   */
  public static Optional<JointMark> read(String text) {
    Matcher written = WRITTEN.matcher(text.strip().toUpperCase(Locale.ROOT));
    if (!written.matches() || written.group(1).chars().anyMatch(c -> LETTERS.indexOf(c) < 0)) {
      return Optional.empty();
    }
    int check = Integer.parseInt(written.group(2));
    return check == checkOf(written.group(1))
        ? Optional.of(new JointMark(written.group(1), check))
        : Optional.empty();
  }

  /**
   * Writes the mark as it goes on the cloth.
   *
   * @return such as {@code C-32}
   */
  public String text() {
    return name + "-" + check;
  }

  /**
   * Computes the check of a name with its steps.
   *
   * @param name one to three of {@link #LETTERS}
   * @param steps where the steps go
   * @return the check, 10 to 32
   * @throws IllegalArgumentException if the name has no letter, too many or one not in use
   */
  @Calculation("assembly.ring.check")
  public static double check(String name, Steps steps) {
    int check = checkOf(name);
    double sum = 0;
    for (int i = name.length() - 1; i >= 0; i--) {
      int letterWeight = WEIGHTS_FROM_LAST[name.length() - 1 - i];
      int place = LETTERS.indexOf(name.charAt(i));
      sum =
          steps
              .step("S", "weighted sum with letter " + name.charAt(i))
              .formula("S_before + w * a")
              .with("S_before", sum, "")
              .with("w", letterWeight, "")
              .with("a", place, "")
              .from(WEIGHTED_CHECK)
              .gives(sum + letterWeight * place, "");
    }
    return steps
        .step("c", "check of " + name)
        .formula("10 + S - 23 * floor(S / 23)")
        .with("S", sum, "")
        .from(WEIGHTED_CHECK)
        .note("the remainder of S by 23, plus 10 so that there are always two digits")
        .gives(check, "");
  }

  private static int checkOf(String name) {
    if (name.isEmpty() || name.length() > WEIGHTS_FROM_LAST.length) {
      throw ArgumentFault.of(
          "joint name", "'" + name + "'", "must have one to three letters", "", "");
    }
    int sum = 0;
    for (int i = 0; i < name.length(); i++) {
      int place = LETTERS.indexOf(name.charAt(i));
      if (place < 0) {
        throw ArgumentFault.of(
            "joint name", "'" + name + "'", "must be made of " + LETTERS, "", "");
      }
      sum += WEIGHTS_FROM_LAST[name.length() - 1 - i] * place;
    }
    return LEAST_CHECK + sum % FIELD;
  }
}
