package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The sheets of the demos, planned once. */
final class Sheets {

  private static final ConcurrentHashMap<String, Desk> DESKS = new ConcurrentHashMap<>();

  private Sheets() {}

  static Desk of(String job) {
    return DESKS.computeIfAbsent(
        job,
        name -> {
          JobPlan plan = DemoJobs.plan(name);
          UnitSystem units =
              plan.job().document().site().map(Site::units).orElse(UnitSystem.METRIC);
          return Front.sheets(plan, new Words(units), text -> Optional.empty());
        });
  }

  /** The text of a sheet as it is read, without markup. */
  static String text(Desk desk, String title) {
    return text(
        desk.sheets().stream().filter(s -> s.title().equals(title)).findFirst().orElseThrow());
  }

  static String text(Sheet sheet) {
    return sheet
        .body()
        .toString()
        .replaceAll("<desc[^>]*>[^<]*</desc>", "")
        .replaceAll("<[^>]+>", " ")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
        .replaceAll("[ \\n]+", " ");
  }

  /** The texts of all sheets of a part. */
  static String part(Desk desk, String part) {
    return desk.sheets().stream()
        .filter(s -> s.part().equals(part))
        .map(Sheets::text)
        .collect(Collectors.joining("\n"));
  }

  static List<String> find(String text, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    return m.results().map(r -> r.group(r.groupCount() > 0 ? 1 : 0)).toList();
  }
}
