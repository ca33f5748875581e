package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.JobFault;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Gathers what contradicts itself in a diary, line by line. */
final class Contradictions {

  /** Names listed as known in a fault, at most. */
  private static final int SHOWN = 12;

  private final Diary diary;
  private final List<JobFault> faults = new ArrayList<>();
  private int line;

  Contradictions(Diary diary) {
    this.diary = diary;
  }

  /** Says which line is being read. */
  void at(int index) {
    line = index;
  }

  void note(String key, String given, String allowed) {
    faults.add(diary.fault(line, key, given, allowed));
  }

  /** Notes a name that the job does not know. */
  void unknown(String key, String what, String name, Collection<String> known) {
    String few = String.join(", ", known.stream().limit(SHOWN).toList());
    note(
        key,
        "\"" + name + "\"",
        known.isEmpty()
            ? "must be left out: the job has no " + what
            : "must be a "
                + what
                + " of the job: "
                + few
                + (known.size() > SHOWN ? " and " + (known.size() - SHOWN) + " more" : ""));
  }

  List<JobFault> faults() {
    return List.copyOf(faults);
  }
}
