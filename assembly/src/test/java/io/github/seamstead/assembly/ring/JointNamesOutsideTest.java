package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks of joint names by hand, and the errors that none of them can miss. */
class JointNamesOutsideTest {

  private static final Source HAND =
      Source.derived("hand sum from first principles: remainder by 23 of the weighted letters");
  private static final Source THEORY =
      Source.fromMemory(
          "J. Verhoeff",
          "Error detecting decimal codes",
          "1969",
          "weights modulo a prime: single errors and swaps, if differences of weights are not 0");

  /** A is 0, B is 1, and so on without I, O and Q; weights 11, 1 and 22 from the last. */
  @ParameterizedTest
  @CsvSource({"A,10", "B,21", "C,32", "D,20", "M,16", "Z,22", "BA,11", "BB,22", "ZZ,21", "BAA,32"})
  void byHand(String name, int check) {
    OutsideCheck.of("assembly.ring.check", "check of " + name, HAND)
        .expect(check)
        .within(1e-9)
        .got(JointMark.check(name, Steps.none()));
  }

  /** Of all names of two letters: one letter misread, or the two swapped. */
  @Test
  void noSingleErrorOrSwapIsMissed() {
    int misread = 0;
    int swapped = 0;
    String letters = JointMark.LETTERS;
    for (char a : letters.toCharArray()) {
      for (char b : letters.toCharArray()) {
        double check = JointMark.check("" + a + b, Steps.none());
        for (char c : letters.toCharArray()) {
          misread += c != a && JointMark.check("" + c + b, Steps.none()) == check ? 1 : 0;
          misread += c != b && JointMark.check("" + a + c, Steps.none()) == check ? 1 : 0;
        }
        swapped += a != b && JointMark.check("" + b + a, Steps.none()) == check ? 1 : 0;
      }
    }
    OutsideCheck.of("assembly.ring.check", "misread letters that pass, of 23278", THEORY)
        .expect(0)
        .within(0.5)
        .got(misread);
    OutsideCheck.of("assembly.ring.check", "swapped letters that pass, of 506", THEORY)
        .expect(0)
        .within(0.5)
        .got(swapped);
  }
}
