package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What of a job is tried in other ways: variations whose choices are combined, or a plain list.
 *
 * @param seamstead version of the form of the document; always 1
 * @param note a remark for the page, if stated
 * @param vary what is varied, each in several ways
 * @param combine how the choices make variants
 * @param list variants by name, instead of {@code vary}
 */
public record VariantsDocument(
    int seamstead,
    Optional<String> note,
    List<Variation> vary,
    Combine combine,
    List<Alternative> list) {

  /** The most variants of one document: far beyond what anyone reads, within minutes of work. */
  public static final int MOST_VARIANTS = 5000;

  public VariantsDocument {
    vary = List.copyOf(vary);
    list = List.copyOf(list);
  }

  /**
   * Tells how many variants the document asks for, the job as written not counted.
   *
   * @return the count
   */
  public long count() {
    if (!list.isEmpty()) {
      return list.size();
    }
    return combine == Combine.SINGLE
        ? vary.stream().mapToLong(v -> v.choices().size()).sum()
        : vary.stream().mapToLong(v -> v.choices().size()).reduce(1, VariantsDocument::bounded);
  }

  private static long bounded(long a, long b) {
    return Math.min(a * b, Integer.MAX_VALUE);
  }

  /**
   * Makes the variants, the last variation turning fastest.
   *
   * @return one alternative for each variant; its name is that of its choices
   */
  public List<Alternative> variants() {
    if (!list.isEmpty()) {
      return list;
    }
    List<Alternative> all = new ArrayList<>();
    if (combine == Combine.SINGLE) {
      for (Variation variation : vary) {
        variation.choices().forEach(choice -> all.add(named(variation, choice)));
      }
      return all;
    }
    all.add(new Alternative("as written", List.of()));
    List<Alternative> made = all;
    for (int i = 0; i < vary.size(); i++) {
      made = times(made, vary.get(i), i == 0);
    }
    return made;
  }

  private static List<Alternative> times(
      List<Alternative> before, Variation variation, boolean first) {
    List<Alternative> after = new ArrayList<>();
    for (Alternative left : before) {
      for (Alternative choice : variation.choices()) {
        List<JobChange> set = new ArrayList<>(left.set());
        set.addAll(choice.set());
        String name = named(variation, choice).name();
        after.add(new Alternative(first ? name : left.name() + ", " + name, set));
      }
    }
    return after;
  }

  private static Alternative named(Variation variation, Alternative choice) {
    return new Alternative(variation.name() + " " + choice.name(), choice.set());
  }
}
