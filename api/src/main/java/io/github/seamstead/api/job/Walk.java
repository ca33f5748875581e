package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gathers faults and assumptions while a document is read, and remembers where values stand. */
final class Walk {

  /** Beyond this many faults a reader of the list gains nothing. */
  private static final int MOST_FAULTS = 200;

  private final List<JobFault> faults = new ArrayList<>();
  private int dropped;
  private final List<Assumption> assumptions = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();

  private int form = Forms.NEWEST;

  /** The version of the form that is read. */
  int form() {
    return form;
  }

  void form(int version) {
    form = version;
  }

  void fault(JobFault fault) {
    fault(fault.path(), fault.line(), fault.given(), fault.allowed());
  }

  void seen(String path, Json value) {
    lines.put(path, value.line());
  }

  void fault(String path, Json value, String allowed) {
    fault(path, value.line(), value.quoted(), allowed);
  }

  void fault(String path, int line, String given, String allowed) {
    if (isFull()) {
      dropped();
    } else {
      faults.add(new JobFault(path, line, given, allowed));
    }
  }

  /** Counts a fault that is not kept: a value that has one must not be used all the same. */
  void dropped() {
    dropped++;
  }

  /** Whether no further fault is kept, so that none need be put in words. */
  boolean isFull() {
    return faults.size() >= MOST_FAULTS;
  }

  void assume(String path, String value, String ground) {
    assumptions.add(new Assumption(path, value, ground));
  }

  boolean isClean() {
    return faults.isEmpty();
  }

  int faultCount() {
    return faults.size() + dropped;
  }

  /** The faults in the order of the text. */
  List<JobFault> faults() {
    return faults.stream().sorted(Comparator.comparingInt(JobFault::line)).toList();
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  Map<String, Integer> lines() {
    return Map.copyOf(lines);
  }
}
