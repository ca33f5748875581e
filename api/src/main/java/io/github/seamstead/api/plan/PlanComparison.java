package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.diary.PlanChanges.Change;
import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.PlanChanges.Reason;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Compares two plans thing by thing. */
final class PlanComparison {

  /** Differences that no tape, scale or crew can tell, in the unit of each. */
  private static final double METRES = 0.001;

  private static final double KILOGRAMS = 0.5;
  private static final double PACKS = 0.5;
  private static final double LITRES = 0.05;
  private static final double SECONDS = 60;
  private static final double PERSON_HOURS = 0.1;
  private static final double DAYS = 0.5;

  private final JobPlan before;
  private final JobPlan after;
  private final List<Reason> reasons;
  private final List<Change> changes = new ArrayList<>();

  PlanComparison(JobPlan before, JobPlan after, List<Reason> reasons) {
    this.before = before;
    this.after = after;
    this.reasons = reasons;
  }

  PlanChanges changes() {
    changes.addAll(new PieceComparison(before, after, METRES, this::because).changes());
    seams();
    orders();
    hours();
    dates();
    unmet();
    return new PlanChanges(reasons, changes);
  }

  private List<String> because(Kind kind) {
    return reasons.stream().filter(r -> r.touches().contains(kind)).map(Reason::text).toList();
  }

  private void change(Kind kind, String name, String was, String now, boolean done) {
    changes.add(new Change(kind, name, was, now, done, because(kind)));
  }

  private void seams() {
    Map<String, Joint> old = joints(before);
    Map<String, Joint> now = joints(after);
    for (String name : both(old.keySet(), now.keySet())) {
      Joint a = old.get(name);
      Joint b = now.get(name);
      if (a == null || b == null) {
        change(Kind.SEAM, name, a == null ? "none" : "there", b == null ? "none" : "there", false);
        continue;
      }
      boolean made = isMade(after, b);
      if (isMade(before, a) != made) {
        change(Kind.SEAM, name, made ? "open" : "joined", made ? "joined" : "open", made);
      }
      if (Math.abs(a.length() - b.length()) > METRES) {
        change(Kind.SEAM, name, metres(a.length()), metres(b.length()), made);
      }
    }
    wrong();
  }

  /** Wrong seams that came or went. */
  private void wrong() {
    List<String> old = undo(before);
    List<String> now = undo(after);
    now.stream()
        .filter(s -> !old.contains(s))
        .forEach(s -> change(Kind.SEAM, s, "not there", "wrong, to undo", false));
    old.stream()
        .filter(s -> !now.contains(s))
        .forEach(s -> change(Kind.SEAM, s, "wrong, to undo", "undone", true));
  }

  private static List<String> undo(JobPlan plan) {
    return plan.joining().flatMap(j -> j.log()).stream()
        .flatMap(log -> log.undo().stream())
        .map(s -> s.first().label() + " to " + s.second().label())
        .toList();
  }

  private static Map<String, Joint> joints(JobPlan plan) {
    return plan.joining().map(j -> j.ring().joints()).orElse(List.of()).stream()
        .collect(
            Collectors.toMap(
                j -> j.mark().text(), j -> j, (a, b) -> a, () -> new LinkedHashMap<>()));
  }

  private static boolean isMade(JobPlan plan, Joint joint) {
    return plan.joining().flatMap(j -> j.log()).stream()
        .flatMap(log -> log.kept().stream())
        .anyMatch(made -> made.number() == joint.number());
  }

  private void orders() {
    compare(Kind.ORDER, ordered(before), ordered(after), KILOGRAMS, " kg", 0);
    compare(Kind.ORDER, rolls(before), rolls(after), KILOGRAMS, " rolls", 0);
    compare(Kind.ORDER, packs(before), packs(after), PACKS, "", 0);
    compare(Kind.ORDER, litres(before), litres(after), LITRES, " l", 1);
  }

  private static Map<String, Double> ordered(JobPlan plan) {
    Map<String, Double> orders = new LinkedHashMap<>();
    for (OrderLine line :
        plan.floor().flatMap(f -> f.orders()).map(o -> o.lines()).orElse(List.of())) {
      orders.put(line.material(), line.ordered());
    }
    return orders;
  }

  private static Map<String, Double> packs(JobPlan plan) {
    Map<String, Double> packs = new LinkedHashMap<>();
    plan.fixings()
        .ifPresent(
            f ->
                f.shopping().items().forEach(item -> packs.put(pack(item), (double) item.packs())));
    return packs;
  }

  private static String pack(ShoppingItem item) {
    boolean single = item.packSize() == 1;
    return item.name() + (single ? "" : ", packs of " + Numbers.significant(item.packSize(), 6));
  }

  private static Map<String, Double> rolls(JobPlan plan) {
    Map<String, Double> rolls = new LinkedHashMap<>();
    for (MembraneQuantity m :
        plan.floor().flatMap(f -> f.orders()).map(o -> o.membranes()).orElse(List.of())) {
      rolls.merge(m.layer().name(), (double) m.rolls(), Double::sum);
    }
    return rolls;
  }

  private static Map<String, Double> litres(JobPlan plan) {
    Map<String, Double> litres = new LinkedHashMap<>();
    for (FinishQuantity f :
        plan.floor().flatMap(p -> p.orders()).map(o -> o.finishes()).orElse(List.of())) {
      litres.merge(f.layer().name(), f.litres().likely(), Double::sum);
    }
    return litres;
  }

  private void hours() {
    compare(Kind.HOURS, joining(before), joining(after), SECONDS / 3600, " h", 2);
    compare(Kind.HOURS, floorWork(before), floorWork(after), PERSON_HOURS, " h", 1);
  }

  private static Map<String, Double> joining(JobPlan plan) {
    Map<String, Double> hours = new LinkedHashMap<>();
    if (plan.joining().isPresent()) {
      hours.put(
          "joining the ring", plan.schedule().map(s -> s.simulation().p50() / 3600).orElse(0.0));
    }
    return hours;
  }

  private static Map<String, Double> floorWork(JobPlan plan) {
    Map<String, Double> hours = new LinkedHashMap<>();
    plan.floor()
        .flatMap(f -> f.work())
        .ifPresent(w -> hours.put("the floor, all hands together", w.personHours().likely()));
    return hours;
  }

  private void dates() {
    String was = joined(before);
    String now = joined(after);
    if (!was.equals(now)) {
      change(Kind.DATE, "the ring joined", was, now, false);
    }
    compare(Kind.DATE, waits(before), waits(after), DAYS, " d", 1);
  }

  private static String joined(JobPlan plan) {
    return plan.schedule()
        .flatMap(s -> s.start().flatMap(d -> s.lastDay().map(n -> d.plusDays(n - 1L).toString())))
        .orElseGet(() -> plan.joining().flatMap(j -> j.log()).isPresent() ? "done" : "open");
  }

  /** Days from laying to each state; from the day of laying, where it is laid. */
  private static Map<String, Double> waits(JobPlan plan) {
    Map<String, Double> waits = new LinkedHashMap<>();
    plan.drying()
        .forEach(
            part -> {
              for (Milestone m : part.forecast().milestones()) {
                Optional<Double> days = m.likely();
                waits.merge(
                    part.layer().name() + ", " + m.name() + ", after laying",
                    days.orElse(m.horizon()),
                    Math::max);
              }
            });
    return waits;
  }

  private void unmet() {
    List<String> old = before.unmet().stream().map(Unmet::what).toList();
    List<String> now = after.unmet().stream().map(Unmet::what).toList();
    now.stream()
        .filter(what -> !old.contains(what))
        .forEach(what -> change(Kind.UNMET, what, "met", "cannot be met", false));
    old.stream()
        .filter(what -> !now.contains(what))
        .forEach(what -> change(Kind.UNMET, what, "could not be met", "met", false));
  }

  private void compare(
      Kind kind,
      Map<String, Double> old,
      Map<String, Double> now,
      double tolerance,
      String unit,
      int decimals) {
    for (String name : both(old.keySet(), now.keySet())) {
      double a = old.getOrDefault(name, 0.0);
      double b = now.getOrDefault(name, 0.0);
      if (Math.abs(a - b) > tolerance) {
        change(
            kind,
            name,
            Numbers.fixed(a, decimals) + unit,
            Numbers.fixed(b, decimals) + unit,
            false);
      }
    }
  }

  private static Set<String> both(Set<String> a, Set<String> b) {
    Set<String> both = new LinkedHashSet<>(a);
    both.addAll(b);
    return both;
  }

  private static String metres(double value) {
    return Numbers.fixed(value, 3) + " m";
  }
}
