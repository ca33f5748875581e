package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a reading of trial samples into words. */
final class TrialAdvice {

  private TrialAdvice() {}

  static List<String> of(
      List<TrialOutcome> outcomes,
      TrialReading.Candidate best,
      double probability,
      Optional<Double> next,
      double crackLimit) {
    List<String> list = new ArrayList<>();
    String ratio = "1 part of soil to " + parts(best.sandParts()) + " of sand";
    String chance = Numbers.significant(probability * 100, 2) + " %";
    if (next.isEmpty()) {
      list.add(
          "Take " + ratio + ": it neither cracks nor dusts with a probability of " + chance + ".");
    } else {
      list.add(
          "Not decided: "
              + ratio
              + " is the best so far with a probability of "
              + chance
              + ". "
              + further(outcomes, next.get()));
    }
    for (TrialOutcome outcome : outcomes) {
      boolean cracked = outcome.crackRatio() > crackLimit;
      if (cracked && outcome.weakness() == 1) {
        list.add(
            "The sample with "
                + parts(outcome.sandParts())
                + " of sand both cracks and crumbles: no ratio of these two may suit. Add"
                + " fibre, a coarser sand, or another soil.");
      }
      if (outcome.sticky() && !cracked) {
        list.add(
            "The sample with "
                + parts(outcome.sandParts())
                + " of sand stuck to the trowel without cracking: it was mixed wet; let the"
                + " mix stiffen before laying.");
      }
    }
    if (orderBroken(outcomes, crackLimit)) {
      list.add(
          "A sandier sample cracked while a richer one did not: samples were swapped or dried"
              + " unevenly. Repeat both.");
    }
    return List.copyOf(list);
  }

  private static String further(List<TrialOutcome> outcomes, double next) {
    boolean made =
        outcomes.stream().anyMatch(o -> Math.abs(o.sandParts() - next) <= TrialReading.SAME_PARTS);
    return made
        ? "Make the sample with " + parts(next) + " of sand a second time; it tells the most."
        : "Try 1 part of soil to " + parts(next) + " of sand next; it tells the most.";
  }

  private static boolean orderBroken(List<TrialOutcome> outcomes, double crackLimit) {
    for (TrialOutcome a : outcomes) {
      for (TrialOutcome b : outcomes) {
        if (a.sandParts() < b.sandParts()
            && a.crackRatio() <= crackLimit
            && b.crackRatio() > crackLimit) {
          return true;
        }
      }
    }
    return false;
  }

  private static String parts(double count) {
    return Numbers.plain(count) + (count == 1 ? " part" : " parts");
  }
}
