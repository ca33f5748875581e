package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.QuantityFormatException;
import io.github.seamstead.shared.sensitivity.Scatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks up the doubts that a job states: each must be of a number that the job states, too. */
final class DoubtReader {

  private static final String DOUBTS = "$.doubts";

  private final Json job;
  private final JobPlaces places;
  private final Walk walk;
  private final Map<String, Integer> met = new HashMap<>();

  private DoubtReader(Json job, Walk walk) {
    this.job = job;
    this.places = new JobPlaces(job);
    this.walk = walk;
  }

  /** Gives the doubts that have no fault, and notes the faults of the others. */
  static List<StatedDoubt> read(Json job, List<ValueDoubt> doubts, Walk walk) {
    DoubtReader reader = new DoubtReader(job, walk);
    List<StatedDoubt> read = new ArrayList<>();
    for (int i = 0; i < doubts.size(); i++) {
      reader.doubt(i, doubts.get(i)).ifPresent(read::add);
    }
    return read;
  }

  private Optional<StatedDoubt> doubt(int index, ValueDoubt doubt) {
    String at = DOUBTS + "[" + index + "]";
    Optional<DraftPath> path = DraftPath.parse(doubt.of());
    if (path.isEmpty()) {
      fault(at + ".of", "\"" + doubt.of() + "\"", DraftPath.FORM);
      return Optional.empty();
    }
    Optional<Kind<?>> kind =
        places.kind(path.get(), (given, allowed) -> fault(at + ".of", given, allowed));
    return kind.flatMap(k -> of(at, index, path.get().numbered(job), k, doubt));
  }

  private Optional<StatedDoubt> of(
      String at, int index, DraftPath path, Kind<?> kind, ValueDoubt doubt) {
    String place = "\"" + path.text() + "\"";
    Integer before = met.putIfAbsent(path.text(), index);
    if (before != null) {
      fault(at + ".of", place + " twice", "must stand once; see doubts[" + before + "]");
      return Optional.empty();
    }
    if (kind.limits().isEmpty()) {
      fault(
          at + ".of",
          place,
          kind.quantity().isPresent()
              ? "states its own doubt: write ± and a standard uncertainty after the reading"
              : "must be where a number with a unit, a share or a price stands");
      return Optional.empty();
    }
    Json stated = path.find(job);
    Object value = stated == null ? null : kind.read(stated, at, walk);
    if (!(value instanceof Double number)) {
      fault(at + ".of", place + ", which the job leaves out", "must be a value that it states");
      return Optional.empty();
    }
    return scatter(at, kind, number, doubt)
        .map(
            s ->
                new StatedDoubt(
                    new JobNumber(path, kind, kind.limits().orElseThrow()),
                    number,
                    s,
                    text(doubt)));
  }

  private static String text(ValueDoubt doubt) {
    return doubt
        .standard()
        .map(s -> s + ", one standard deviation, as the job states")
        .orElseGet(
            () ->
                "from "
                    + doubt.low().orElse("")
                    + " to "
                    + doubt.high().orElse("")
                    + ", evenly on each side, as the job states");
  }

  private Optional<Scatter> scatter(String at, Kind<?> kind, double value, ValueDoubt doubt) {
    if (doubt.standard().isPresent()) {
      return standard(at + ".standard", kind, doubt.standard().get()).map(Scatter::normal);
    }
    Optional<Double> low = end(at + ".low", kind, doubt.low().orElse(""));
    Optional<Double> high = end(at + ".high", kind, doubt.high().orElse(""));
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.get() > value || high.get() < value || low.get().equals(high.get())) {
      fault(
          at,
          "from " + doubt.low().orElse("") + " to " + doubt.high().orElse(""),
          "must hold the value that the job states, and more than one value");
      return Optional.empty();
    }
    return Optional.of(new Scatter(Scatter.Form.EVEN, value - low.get(), high.get() - value));
  }

  private Optional<Double> standard(String at, Kind<?> kind, String text) {
    try {
      double apart = kind.apart(text);
      if (apart > 0) {
        return Optional.of(apart);
      }
      fault(at, "\"" + text + "\"", "must be more than nothing; leave the doubt out else");
    } catch (QuantityFormatException e) {
      fault(at, "\"" + text + "\"", e.reason());
    }
    return Optional.empty();
  }

  private Optional<Double> end(String at, Kind<?> kind, String text) {
    int line = walk.lines().getOrDefault(at, 0);
    return Optional.ofNullable((Double) kind.read(new Json.Text(line, text), at, walk));
  }

  private void fault(String at, String given, String allowed) {
    String near = at.substring(0, Math.max(at.lastIndexOf('.'), 1));
    int line = walk.lines().getOrDefault(at, walk.lines().getOrDefault(near, 0));
    walk.fault(at, line, given, allowed);
  }
}
