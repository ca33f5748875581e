package io.github.seamstead.api.plan;

import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.PlanChanges.Reason;
import io.github.seamstead.api.job.Echoes;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.WrittenQuantity;
import io.github.seamstead.shared.quantity.Numbers;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The values in which two job documents differ, by their path. */
final class DocumentDifference {

  /** Two documents that differ in more values are two jobs; the list would help nobody. */
  private static final int MOST = 100;

  private static final Map<String, List<Kind>> TOUCHED =
      Map.of(
          "frame", List.of(Kind.values()),
          "cover", List.of(Kind.PIECE, Kind.SEAM, Kind.ORDER, Kind.HOURS, Kind.DATE, Kind.UNMET),
          "stock", List.of(Kind.PIECE, Kind.ORDER, Kind.UNMET),
          "site", List.of(Kind.HOURS, Kind.DATE, Kind.UNMET),
          "weather", List.of(Kind.DATE, Kind.UNMET),
          "doubts", List.of());

  private final List<Reason> found = new ArrayList<>();
  private List<Kind> touches = List.of();

  private DocumentDifference() {}

  static List<Reason> of(JobDocument before, JobDocument after) {
    DocumentDifference difference = new DocumentDifference();
    for (RecordComponent section : JobDocument.class.getRecordComponents()) {
      difference.touches =
          TOUCHED.getOrDefault(
              section.getName(), List.of(Kind.ORDER, Kind.HOURS, Kind.DATE, Kind.UNMET));
      difference.compare("$." + section.getName(), value(section, before), value(section, after));
    }
    return difference.found;
  }

  private static Object value(RecordComponent component, Object of) {
    try {
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("no access to " + component, e);
    }
  }

  private void compare(String path, Object before, Object after) {
    if (before.equals(after) || found.size() >= MOST) {
      return;
    }
    if (before instanceof Optional<?> a
        && after instanceof Optional<?> b
        && a.isPresent()
        && b.isPresent()) {
      compare(path, a.get(), b.get());
    } else if (before instanceof List<?> a && after instanceof List<?> b) {
      lists(path, a, b);
    } else if (before instanceof Map<?, ?> a && after instanceof Map<?, ?> b) {
      maps(path, a, b);
    } else if (before instanceof Record
        && before.getClass() == after.getClass()
        && !(before instanceof WrittenQuantity)) {
      for (RecordComponent component : before.getClass().getRecordComponents()) {
        compare(
            path + "." + component.getName(), value(component, before), value(component, after));
      }
    } else {
      found.add(
          new Reason(path + ": " + words(path, before) + ", now " + words(path, after), touches));
    }
  }

  private void lists(String path, List<?> a, List<?> b) {
    for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
      compare(
          path + "[" + i + "]",
          i < a.size() ? a.get(i) : Optional.empty(),
          i < b.size() ? b.get(i) : Optional.empty());
    }
  }

  private void maps(String path, Map<?, ?> a, Map<?, ?> b) {
    Set<Object> keys = new LinkedHashSet<>(a.keySet());
    keys.addAll(b.keySet());
    for (Object key : keys) {
      compare(path + "." + words(path, key), optional(a, key), optional(b, key));
    }
  }

  private static Optional<Object> optional(Map<?, ?> map, Object key) {
    return Optional.ofNullable(map.get(key));
  }

  /** The value in words; a number has the unit of its key. */
  private static String words(String path, Object value) {
    if (value instanceof Optional<?> maybe) {
      return maybe.map(v -> words(path, v)).orElse("nothing");
    }
    if (value instanceof Double number) {
      return Echoes.of(path, number).orElseGet(() -> Numbers.significant(number, 6));
    }
    if (value instanceof Enum<?> word) {
      return JobValue.word(word);
    }
    if (value instanceof WrittenQuantity reading) {
      return reading.text();
    }
    if (value instanceof Record) {
      return "stated";
    }
    return value instanceof List<?> list ? "a list of " + list.size() : String.valueOf(value);
  }
}
