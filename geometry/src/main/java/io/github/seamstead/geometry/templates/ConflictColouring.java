package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.work.Cancellation;
import java.util.Arrays;
import java.util.Optional;

/**
 * Colours a conflict graph with k colours by branch and bound: always the vertex that has the
 * fewest colours left (then the one with most conflicts), colours used so far and at most one new
 * one. Exponential in the worst case, quick on the few dozen faces of a frame.
 */
final class ConflictColouring {

  /** A colouring, the certainty that there is none, or an open question. */
  static final class Answer {

    private final Optional<int[]> colouring;
    private final boolean certain;

    private Answer(Optional<int[]> colouring, boolean certain) {
      this.colouring = colouring;
      this.certain = certain;
    }

    /** A colour per vertex, from 0. */
    Optional<int[]> colouring() {
      return colouring;
    }

    /** True if there is a colouring, or if none exists. */
    boolean isCertain() {
      return certain;
    }
  }

  private final boolean[][] clash;
  private final int colours;
  private final int[] colour;
  private final int[][] blocked;
  private final int[] degree;
  private final Cancellation cancellation;
  private final long deadline;
  private long budget;

  private ConflictColouring(
      boolean[][] clash, int colours, long budget, Cancellation cancellation, long deadline) {
    this.cancellation = cancellation;
    this.deadline = deadline;
    this.clash = clash;
    this.colours = colours;
    this.budget = budget;
    this.colour = new int[clash.length];
    Arrays.fill(colour, -1);
    this.blocked = new int[clash.length][colours];
    this.degree = new int[clash.length];
    for (int i = 0; i < clash.length; i++) {
      for (boolean c : clash[i]) {
        degree[i] += c ? 1 : 0;
      }
    }
  }

  /** Colours; a question that is cancelled, or not answered by the nano time, is left open. */
  static Answer solve(
      boolean[][] clash, int colours, long budget, Cancellation cancellation, long deadline) {
    ConflictColouring search =
        new ConflictColouring(clash, colours, budget, cancellation, deadline);
    boolean done = search.colour(0, 0);
    return done
        ? new Answer(Optional.of(search.colour), true)
        : new Answer(Optional.empty(), search.budget > 0);
  }

  private boolean colour(int done, int used) {
    if (done == colour.length) {
      return true;
    }
    if (budget <= 0 || cancellation.endsSearches() || isLate()) {
      budget = 0;
      return false;
    }
    budget--;
    int vertex = hardest(used);
    // Colours not used yet are all alike: one stands for them.
    for (int c = 0; c < Math.min(used + 1, colours); c++) {
      if (blocked[vertex][c] == 0) {
        paint(vertex, c, 1);
        if (colour(done + 1, Math.max(used, c + 1))) {
          return true;
        }
        paint(vertex, c, -1);
      }
    }
    return false;
  }

  /** The clock is dear beside a branch, so it is looked at every so often. */
  private boolean isLate() {
    return (budget & 255) == 0 && System.nanoTime() > deadline;
  }

  private int hardest(int used) {
    int best = -1;
    int bestFree = Integer.MAX_VALUE;
    for (int i = 0; i < colour.length; i++) {
      if (colour[i] >= 0) {
        continue;
      }
      int free = colours - used;
      for (int c = 0; c < used; c++) {
        free += blocked[i][c] == 0 ? 1 : 0;
      }
      if (free < bestFree || (free == bestFree && degree[i] > degree[best])) {
        best = i;
        bestFree = free;
      }
    }
    return best;
  }

  private void paint(int vertex, int c, int sign) {
    colour[vertex] = sign > 0 ? c : -1;
    for (int i = 0; i < colour.length; i++) {
      if (clash[vertex][i]) {
        blocked[i][c] += sign;
      }
    }
  }
}
