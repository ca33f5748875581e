package io.github.seamstead.shared.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the runs of letters to the platform's own table of characters. */
class DirectionTest {

  @Test
  void everyLetterHasTheDirectionThatThePlatformGivesIt() {
    List<String> wrong = new ArrayList<>();
    int rightToLeft = 0;
    for (int code = 0; code <= Character.MAX_CODE_POINT; code++) {
      if (Character.isLetter(code)) {
        byte direction = Character.getDirectionality(code);
        boolean expected =
            direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        rightToLeft += expected ? 1 : 0;
        if (Direction.isRightToLeft(code) != expected) {
          wrong.add(Integer.toHexString(code));
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(rightToLeft).isGreaterThan(2000);
  }

  @Test
  void digitsStopsAndMarksHaveNone() {
    for (int code : new int[] {'1', '.', ' ', 0x0661, 0x05B0, 0x064B}) {
      assertThat(Direction.isRightToLeft(code)).isFalse();
      assertThat(Direction.isLeftToRight(code)).isFalse();
    }
    assertThat(Direction.isLeftToRight('a')).isTrue();
    assertThat(Direction.isLeftToRight(0x6C34)).isTrue();
    assertThat(Direction.isLeftToRight(0x05D0)).isFalse();
  }
}
