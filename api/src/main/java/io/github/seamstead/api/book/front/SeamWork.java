package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.rigging.FixingsPart;
import io.github.seamstead.assembly.fixings.FixingPattern;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the seams of a kind that are left to make take: their length, how they lap, what holds them.
 */
final class SeamWork {

  private final Sizes sizes;
  private final Optional<SeamBill> bill;
  private final Optional<FixingPattern> pattern;
  private final Optional<JoiningPart> joining;

  SeamWork(Desk desk) {
    sizes = desk.sizes();
    joining = desk.plan().joining();
    Optional<FixingsPart> fixings = desk.plan().fixings();
    bill = joining.map(j -> j.left().left()).filter(left -> !left.isEmpty()).map(SeamBill::new);
    pattern = fixings.map(f -> f.fixings().pattern());
  }

  boolean has(SeamKind kind) {
    return bill.filter(b -> b.kinds().contains(kind)).isPresent();
  }

  List<SeamKind> kinds() {
    return bill.map(SeamBill::kinds).orElse(List.of());
  }

  /** How many seams of a kind there are. */
  int count(SeamKind kind) {
    return bill.map(b -> b.of(kind).stream().mapToInt(run -> run.count()).sum()).orElse(0);
  }

  /** The length of all seams of a kind. */
  String length(SeamKind kind) {
    return bill.map(b -> sizes.rough(b.length(kind))).orElse("");
  }

  /** The length of all seams of a kind, and what holds them. */
  String amount(SeamKind kind) {
    List<String> parts = new ArrayList<>();
    bill.ifPresent(b -> parts.add(sizes.rough(b.length(kind))));
    String held = fixings(List.of(kind));
    if (!held.isEmpty()) {
      parts.add(held);
    }
    return String.join(", ", parts);
  }

  /** How long one team takes for all seams of a kind, at the pace of the ring. */
  String time(SeamKind kind) {
    return joining
        .flatMap(j -> bill.map(b -> b.workTime(kind, j.timePerLength())))
        .map(seconds -> sizes.words().duration(seconds))
        .orElse("");
  }

  /** The staples, screws or stitches of some kinds of seams together; empty if none are planned. */
  String fixings(List<SeamKind> kinds) {
    if (bill.isEmpty() || pattern.isEmpty()) {
      return "";
    }
    int count = 0;
    for (SeamKind kind : kinds) {
      count += has(kind) ? bill.get().fixings(kind, pattern.get()) : 0;
    }
    return count == 0 ? "" : count + " " + pattern.get().kind().label();
  }
}
