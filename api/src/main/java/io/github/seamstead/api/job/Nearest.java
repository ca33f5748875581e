package io.github.seamstead.api.job;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word nearest to a mistyped one. */
final class Nearest {

  private Nearest() {}

  /**
   * Gives the known word with the fewest single-letter edits, if few enough to be a slip: at most a
   * third of the word, and at least one. Costs O(a b) for each pair of words of a and b letters.
   */
  static Optional<String> to(String given, Collection<String> known) {
    String lower = given.toLowerCase(Locale.ROOT);
    if (lower.length() > 60) {
      return Optional.empty();
    }
    String best = "";
    int least = Integer.MAX_VALUE;
    for (String word : known) {
      int edits = edits(lower, word.toLowerCase(Locale.ROOT));
      if (edits < least) {
        least = edits;
        best = word;
      }
    }
    int allowed = Math.max(1, (Math.max(lower.length(), best.length()) + 1) / 3);
    return least <= allowed ? Optional.of(best) : Optional.empty();
  }

  /** Edit distance that counts a swap of two neighbours as one (optimal string alignment). */
  private static int edits(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
