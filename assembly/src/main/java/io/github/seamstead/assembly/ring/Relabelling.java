package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A cure for right pieces in the wrong order where pieces were cut by one template: let alike
 * pieces change their names rather than their seams.
 *
 * <p>Seams between two left or two right edges, with the wrong sides together, over a joint done
 * before or at an edge used before can stay under no names. Of the others, as few as possible are
 * undone so that the chains left fit the places of the ring, template by template. Sets of seams to
 * undo are tried by rising size, so the first that fits is the least; the number of sets grows
 * exponentially with that size, and the search gives up at {@link #MOST_TRIALS}.
 *
 * @param undo the seams to undo, as few as possible, by entry
 * @param newNames for each piece that changes its place, the number of the place it takes; by piece
 */
public record Relabelling(List<Seam> undo, Map<Integer, Integer> newNames) {

  /** The most sets of seams that are tried. */
  public static final int MOST_TRIALS = 200_000;

  private static final int MOST_PIECES = 64;

  public Relabelling {
    undo = List.copyOf(undo);
    newNames = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(newNames));
  }

  /**
   * Writes the new names.
   *
   * @param ring the pieces, with what is written on them
   * @return for each piece that changes its place, such as {@code 3 becomes 2}
   */
  public List<String> texts(PieceRing ring) {
    return newNames.entrySet().stream()
        .map(e -> ring.piece(e.getKey()).name() + " becomes " + ring.piece(e.getValue()).name())
        .toList();
  }

  /**
   * Looks for a cure with fewer seams to undo than the report's.
   *
   * @param ring the pieces, at most 64; alike pieces carry one template
   * @param report what the log says
   * @return the least over all ways to rename alike pieces, or empty if that saves no seam, the
   *     ring is larger, or the search gave up
   */
  public static Optional<Relabelling> of(PieceRing ring, LogReport report) {
    return of(ring, report, new Cancellation());
  }

  /**
   * Looks for a cure with fewer seams to undo than the report's, until it is told to stop.
   *
   * @param ring the pieces, at most 64; alike pieces carry one template
   * @param report what the log says
   * @param cancellation the switch that lets the search give up
   * @return as {@link #of(PieceRing, LogReport)}; empty too if it was told to stop
   */
  public static Optional<Relabelling> of(
      PieceRing ring, LogReport report, Cancellation cancellation) {
    if (ring.size() > MOST_PIECES || report.undo().isEmpty()) {
      return Optional.empty();
    }
    List<Seam> lost = new ArrayList<>();
    List<Seam> usable = new ArrayList<>();
    Set<Edge> used = new HashSet<>();
    for (Seam seam : report.present()) {
      boolean fits =
          seam.facing() == Facing.GOOD_TOGETHER && seam.first().side() != seam.second().side();
      if (fits && !used.contains(seam.first()) && !used.contains(seam.second())) {
        used.add(seam.first());
        used.add(seam.second());
        usable.add(seam);
      } else if (fits && usable.stream().anyMatch(other -> sameEdges(other, seam))) {
        lost.add(seam);
      } else if (fits) {
        // Which of two seams at one edge to keep is a choice that renaming should not make.
        return Optional.empty();
      } else {
        lost.add(seam);
      }
    }
    return new Search(ring, usable, cancellation)
        .least(report.undo().size() - 1 - lost.size(), lost);
  }

  private static boolean sameEdges(Seam a, Seam b) {
    return Set.of(a.first(), a.second()).equals(Set.of(b.first(), b.second()));
  }

  /** Tries sets of seams to undo by rising size. */
  private static final class Search {

    private final PieceRing ring;
    private final List<Seam> seams;
    private final Cancellation cancellation;
    private final int n;
    private final int[] next;
    private final int[] placeOf;
    private int trials;

    Search(PieceRing ring, List<Seam> seams, Cancellation cancellation) {
      this.ring = ring;
      this.seams = seams;
      this.cancellation = cancellation;
      this.n = ring.size();
      this.next = new int[n + 1];
      this.placeOf = new int[n + 1];
      for (Seam seam : seams) {
        next[right(seam)] = left(seam);
      }
    }

    private static int right(Seam seam) {
      return seam.first().side() == Side.RIGHT ? seam.first().piece() : seam.second().piece();
    }

    private static int left(Seam seam) {
      return seam.first().side() == Side.RIGHT ? seam.second().piece() : seam.first().piece();
    }

    Optional<Relabelling> least(int most, List<Seam> lost) {
      for (int size = 0; size <= most; size++) {
        List<Seam> undo = new ArrayList<>(lost);
        if (without(size, 0, undo)) {
          Map<Integer, Integer> names = new LinkedHashMap<>();
          for (int piece = 1; piece <= n; piece++) {
            if (placeOf[piece] != piece) {
              names.put(piece, placeOf[piece]);
            }
          }
          return Optional.of(new Relabelling(undo, names));
        }
      }
      return Optional.empty();
    }

    /** Counts one trial and tells whether it is to be made; once it is not, none is any more. */
    private boolean mayTry() {
      if (trials < MOST_TRIALS && cancellation.endsSearches()) {
        trials = MOST_TRIALS;
      }
      return trials++ < MOST_TRIALS;
    }

    private boolean without(int size, int from, List<Seam> undo) {
      if (size == 0) {
        return mayTry() && fitsSomehow();
      }
      for (int i = from; i < seams.size() && trials < MOST_TRIALS; i++) {
        Seam seam = seams.get(i);
        next[right(seam)] = 0;
        undo.add(seam);
        if (without(size - 1, i + 1, undo)) {
          return true;
        }
        undo.remove(undo.size() - 1);
        next[right(seam)] = left(seam);
      }
      return false;
    }

    /** Splits the pieces into chains, longest first, and looks for places for all of them. */
    private boolean fitsSomehow() {
      boolean[] hasBefore = new boolean[n + 1];
      for (int piece = 1; piece <= n; piece++) {
        hasBefore[next[piece]] |= next[piece] > 0;
      }
      List<int[]> chains = new ArrayList<>();
      int inChains = 0;
      for (int piece = 1; piece <= n; piece++) {
        if (!hasBefore[piece]) {
          List<Integer> chain = new ArrayList<>();
          for (int at = piece; at > 0; at = next[at]) {
            chain.add(at);
          }
          chains.add(chain.stream().mapToInt(Integer::intValue).toArray());
          inChains += chain.size();
        }
      }
      if (inChains < n) {
        return ring.isRing() && chains.isEmpty() && closesAsOne();
      }
      chains.sort((a, b) -> Integer.compare(b.length, a.length));
      Arrays.fill(placeOf, 0);
      return place(chains, 0, new boolean[n + 1]);
    }

    /** All pieces in one closed round: it may be turned to any place that its templates fit. */
    private boolean closesAsOne() {
      int[] round = new int[n];
      int at = 1;
      for (int i = 0; i < n; i++) {
        round[i] = at;
        at = next[at];
        if (at == 1 && i < n - 1) {
          return false;
        }
      }
      Arrays.fill(placeOf, 0);
      return place(List.of(round), 0, new boolean[n + 1]);
    }

    private boolean place(List<int[]> chains, int which, boolean[] taken) {
      if (which == chains.size()) {
        return true;
      }
      int[] chain = chains.get(which);
      // The chain's own places first, so that as few names change as may be.
      for (int i = 0; i < n; i++) {
        int start = (chain[0] - 1 + i) % n + 1;
        if (!mayTry()) {
          return false;
        }
        if (!fits(chain, start, taken)) {
          continue;
        }
        mark(chain, start, taken, true);
        if (place(chains, which + 1, taken)) {
          return true;
        }
        mark(chain, start, taken, false);
      }
      return false;
    }

    private boolean fits(int[] chain, int start, boolean[] taken) {
      if (!ring.isRing() && start + chain.length - 1 > n) {
        return false;
      }
      int place = start;
      for (int piece : chain) {
        if (taken[place] || !ring.piece(piece).template().equals(ring.piece(place).template())) {
          return false;
        }
        place = ring.after(place);
      }
      return true;
    }

    private void mark(int[] chain, int start, boolean[] taken, boolean on) {
      int place = start;
      for (int piece : chain) {
        taken[place] = on;
        placeOf[piece] = on ? place : 0;
        place = ring.after(place);
      }
    }
  }
}
