package io.github.seamstead.assembly.ring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JointMarkTest {

  private static List<String> marks(int joints) {
    return IntStream.rangeClosed(1, joints).mapToObj(i -> JointMark.of(i, joints).text()).toList();
  }

  private static int distance(String a, String b) {
    int distance = Math.abs(a.length() - b.length());
    for (int i = 0; i < Math.min(a.length(), b.length()); i++) {
      distance += a.charAt(i) == b.charAt(i) ? 0 : 1;
    }
    return distance;
  }

  @Test
  void anyTwoMarksOfARingDifferInTwoCharacters() {
    for (int joints : new int[] {2, 23, 24, 200, 529}) {
      List<String> marks = marks(joints);
      int least = Integer.MAX_VALUE;
      for (int i = 0; i < joints; i++) {
        for (int j = 0; j < i; j++) {
          least = Math.min(least, distance(marks.get(i), marks.get(j)));
        }
      }
      assertThat(least).as("ring of %s", joints).isGreaterThanOrEqualTo(2);
    }
  }

  @Test
  void neighboursDifferInALetterAndBothDigits() {
    for (int joints : new int[] {23, 529, 3000}) {
      List<String> marks = marks(joints);
      for (int i = 1; i < joints; i++) {
        String a = marks.get(i - 1);
        String b = marks.get(i);
        int digits = a.length() - 2;
        assertThat(a.substring(0, digits - 1)).isNotEqualTo(b.substring(0, digits - 1));
        assertThat(a.charAt(digits)).as("%s %s", a, b).isNotEqualTo(b.charAt(digits));
        assertThat(a.charAt(digits + 1)).as("%s %s", a, b).isNotEqualTo(b.charAt(digits + 1));
      }
    }
  }

  @Test
  void oneMisreadCharacterIsNeverAnotherMark() {
    List<String> taken = new ArrayList<>();
    String alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
    for (String mark : marks(200)) {
      for (int at = 0; at < mark.length(); at++) {
        for (char c : alphabet.toCharArray()) {
          String misread = mark.substring(0, at) + c + mark.substring(at + 1);
          if (c != mark.charAt(at)
              && mark.charAt(at) != '-'
              && JointMark.read(misread).isPresent()) {
            taken.add(mark + " read as " + misread);
          }
        }
      }
    }
    assertThat(taken).isEmpty();
  }

  @Test
  void swappedLettersOrDigitsAreNoMark() {
    for (String mark : marks(529)) {
      String letters = "" + mark.charAt(1) + mark.charAt(0) + mark.substring(2);
      String digits = mark.substring(0, 3) + mark.charAt(4) + mark.charAt(3);
      if (!letters.equals(mark)) {
        assertThat(JointMark.read(letters)).as(letters).isEmpty();
      }
      if (!digits.equals(mark)) {
        assertThat(JointMark.read(digits)).as(digits).isEmpty();
      }
    }
  }

  @Test
  void readsWhatPeopleType() {
    JointMark c = JointMark.of(3, 8);
    assertThat(c.text()).isEqualTo("C-32");
    for (String typed : List.of("C-32", "c32", " c 32 ")) {
      assertThat(JointMark.read(typed)).contains(c);
    }
    for (String typed : List.of("", "C", "32-C", "C-3", "C-320", "ABCD-10")) {
      assertThat(JointMark.read(typed)).as(typed).isEmpty();
    }
  }

  @Test
  void everyJointHasItsOwnName() {
    Set<String> names = new HashSet<>(marks(JointMark.MOST_JOINTS));
    assertThat(names).hasSize(JointMark.MOST_JOINTS);
  }

  @Test
  void theCheckIsShownStepByStep() {
    for (String name : List.of("C", "BZ", "WKA")) {
      StepRecorder recorder = new StepRecorder();
      double check = JointMark.check(name, recorder);
      DerivationChecks.assertFollowsTo(
          recorder.derivation("assembly.ring.check", "check of " + name), check);
      assertThat(JointMark.read(name + (int) check)).isPresent();
    }
  }

  @Test
  void refusesACheckOfAnotherName() {
    assertThatThrownBy(() -> new JointMark("C", 31))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "joint mark: given C-31, but the check of C is 32; one of its characters was misread");
    assertThatThrownBy(() -> new JointMark("", 10)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new JointMark("O", 10)).isInstanceOf(IllegalArgumentException.class);
  }
}
