package io.github.seamstead.page;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Echoes;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.Renewal;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Reads and plans jobs. */
final class JobAnswers {

  private static final long MILLIS_BETWEEN = 100;

  private JobAnswers() {}

  static Map<String, Object> check(Request request) {
    String text = request.text("job");
    Job job = JobReader.parse(text);
    diary(request);
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("title", title(job));
    said.put(
        "assumed",
        job.assumptions().stream()
            .map(a -> Map.of("path", a.path(), "text", a.value() + " (" + a.ground() + ")"))
            .toList());
    renewed("job", text, Renewal.job(text), said);
    request
        .maybeText("diary")
        .filter(diary -> !diary.isBlank())
        .ifPresent(diary -> renewed("diary", diary, Renewal.diary(diary), said));
    return said;
  }

  /** A document of an earlier version comes back in the newest, which the form is drawn for. */
  private static void renewed(String key, String was, String is, Map<String, Object> said) {
    if (!was.equals(is)) {
      said.put(key, is);
    }
  }

  /** How each quantity was understood, also beside faults. */
  static List<Map<String, String>> understood(Request request) {
    return Echoes.of(request.text("job")).entrySet().stream()
        .map(echo -> Map.of("path", echo.getKey(), "text", echo.getValue()))
        .toList();
  }

  private static String title(Job job) {
    return job.document().site().map(Site::name).orElse("Cover and floor");
  }

  private static Optional<Diary> diary(Request request) {
    return request
        .maybeText("diary")
        .filter(text -> !text.isBlank())
        .map(text -> DiaryReader.parse(text.getBytes(StandardCharsets.UTF_8)));
  }

  static Map<String, Object> plan(
      Request request, Consumer<Map<String, Object>> heard, BooleanSupplier ending) {
    Job job = JobReader.parse(request.text("job"));
    Optional<Diary> diary = diary(request);
    // What was cut was planned by searches that ran to their end.
    if (diary.isPresent() && request.number("seconds").isPresent()) {
      throw new IllegalArgumentException("seconds cannot go with a diary: it states the search");
    }
    BooleanSupplier end = diary.isPresent() ? () -> false : ending;
    PlanOptions stated = options(request);
    PlanOptions options = stated.heardBy(new Throttle(heard, end, stated.cancellation()));
    JobPlan plan =
        diary
            .map(done -> JobPlanner.plan(job, done, options))
            .orElseGet(() -> JobPlanner.plan(job, options));
    Book book = Book.of(plan);
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("book", book.html());
    said.put("results", ResultsJson.text(plan));
    said.put("met", plan.unmet().isEmpty());
    said.put("unmet", plan.unmet().stream().map(JobAnswers::unmet).toList());
    said.put("stopped", plan.layout().flatMap(part -> part.result().stopped()).isPresent());
    return said;
  }

  private static String unmet(Unmet unmet) {
    return unmet.what();
  }

  private static PlanOptions options(Request request) {
    PlanOptions options = PlanOptions.defaults().on(Runnable::run);
    Optional<Integer> effort = request.whole("effort");
    if (effort.isPresent()) {
      options = options.withEffort(effort.get());
    }
    Optional<Double> seconds = request.number("seconds");
    if (seconds.isPresent()) {
      options = options.withTimeLimit(Duration.ofMillis(Math.round(seconds.get() * 1000)));
    }
    if (request.says("worked")) {
      options = options.withWorkedSteps();
    }
    return options;
  }

  /** Says progress, and asks whether to come to an end, at most ten times a second. */
  private static final class Throttle implements Progress {

    private final Consumer<Map<String, Object>> heard;
    private final BooleanSupplier ending;
    private final Cancellation cancellation;
    private long last;

    Throttle(
        Consumer<Map<String, Object>> heard, BooleanSupplier ending, Cancellation cancellation) {
      this.heard = heard;
      this.ending = ending;
      this.cancellation = cancellation;
    }

    @Override
    public void report(double share, String stage) {
      long now = System.currentTimeMillis();
      if (now - last >= MILLIS_BETWEEN) {
        last = now;
        heard.accept(Map.of("stage", stage, "share", share));
        if (ending.getAsBoolean()) {
          cancellation.finish();
        }
      }
    }
  }
}
