package io.github.seamstead.shared.text;

/**
 * In which direction letters are written.
 *
 * <p>Written out here, as not every platform that the library is compiled for knows it. Source: The
 * Unicode Standard, version 16, file DerivedBidiClass: the runs of characters of classes R and AL,
 * blocks kept for such scripts among them.
 */
final class Direction {

  /** First and last code point of each run, ascending. */
  private static final int[] RIGHT_TO_LEFT = {
    0x05BE, 0x05F4, 0x0608, 0x0608, 0x060B, 0x060B, 0x060D, 0x060D, 0x061B, 0x064A, 0x066D, 0x06D5,
    0x06E5, 0x06E6, 0x06EE, 0x06EF, 0x06FA, 0x07F5, 0x07FA, 0x088F, 0x08A0, 0x08C9, 0x200F, 0x200F,
    0xFB1D, 0xFB28, 0xFB2A, 0xFD3D, 0xFD50, 0xFDFC, 0xFE70, 0xFEFC, 0x10800, 0x1091B, 0x10920,
    0x10B35, 0x10B40, 0x10D23, 0x10D40, 0x10E5F, 0x10E80, 0x10FF6, 0x1E800, 0x1EEBB
  };

  private Direction() {}

  /** Whether a character is written from right to left. */
  static boolean isRightToLeft(int code) {
    if (code < RIGHT_TO_LEFT[0]) {
      return false;
    }
    for (int i = 0; i < RIGHT_TO_LEFT.length; i += 2) {
      if (code >= RIGHT_TO_LEFT[i] && code <= RIGHT_TO_LEFT[i + 1]) {
        // Marks above and below letters have no direction of their own.
        return Character.getType(code) != Character.NON_SPACING_MARK;
      }
    }
    return false;
  }

  /** Whether a character is a letter written from left to right. */
  static boolean isLeftToRight(int code) {
    return Character.isLetter(code) && !isRightToLeft(code);
  }
}
