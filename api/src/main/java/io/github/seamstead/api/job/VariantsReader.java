package io.github.seamstead.api.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a variants document against the job that it varies. Every path must lead to a value that
 * the job could state, and every value must be one that could stand there. Costs time linear in the
 * text.
 */
public final class VariantsReader {

  private final JobPlaces places;
  private final Walk walk;

  private VariantsReader(JobDraft job, Walk walk) {
    this.places = new JobPlaces(job.json());
    this.walk = walk;
  }

  /**
   * Reads a document from a file.
   *
   * @param file a JSON file in UTF-8
   * @param job the job that is varied
   * @return the document
   * @throws JobFaultsException with all faults, if there are any
   * @throws JobFileException if the file cannot be read
   */
  public static VariantsDocument read(Path file, JobDraft job) {
    return parse(FileText.bytes(file), job);
  }

  /**
   * Reads a document from bytes.
   *
   * @param utf8 a JSON text in UTF-8
   * @param job the job that is varied
   * @return the document
   * @throws JobFaultsException with all faults, if there are any
   */
  public static VariantsDocument parse(byte[] utf8, JobDraft job) {
    Walk walk = new Walk();
    VariantsReader reader = new VariantsReader(job, walk);
    VariantsShapes.Document written =
        FileText.read(utf8, VariantsShapes.document(reader.check()), walk);
    reader.apart(written);
    VariantsDocument document = written.variants();
    if (document.count() > VariantsDocument.MOST_VARIANTS) {
      reader.fault(
          "$.vary",
          document.count() + " variants",
          "must make at most "
              + VariantsDocument.MOST_VARIANTS
              + "; vary less, or set combine to single");
    }
    if (!walk.isClean()) {
      throw new JobFaultsException(walk.faults());
    }
    return document;
  }

  private VariantsShapes.Check check() {
    return new VariantsShapes.Check() {
      @Override
      public void values(String at, String text, List<JobValue> values) {
        Optional<DraftPath> path = path(at + ".path", text);
        for (int i = 0; path.isPresent() && i < values.size(); i++) {
          value(path.get(), at + ".values[" + i + "]", values.get(i));
        }
      }

      @Override
      public void set(String at, List<JobChange> set) {
        List<DraftPath> own = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
          String place = at + "[" + i + "]";
          Optional<DraftPath> path = path(place + ".path", set.get(i).path());
          if (path.isPresent()) {
            value(path.get(), place + ".value", set.get(i).value());
            VariantsReader.this.apart(place + ".path", List.of(path.get()), own);
            own.add(path.get());
          }
        }
      }
    };
  }

  /** Variations that are combined must leave each other's values alone. */
  private void apart(VariantsShapes.Document document) {
    List<List<DraftPath>> used = new ArrayList<>();
    for (int i = 0; document.combine() == Combine.EVERY && i < document.vary().size(); i++) {
      String at = "$.vary[" + i + "]";
      List<DraftPath> paths =
          document.vary().get(i).variation().choices().stream()
              .flatMap(choice -> choice.set().stream())
              .flatMap(change -> DraftPath.parse(change.path()).stream())
              .distinct()
              .toList();
      used.forEach(other -> apart(at, paths, other));
      used.add(paths);
    }
  }

  /** Two places that are one, or that lie in one another, would undo each other. */
  private void apart(String at, List<DraftPath> paths, List<DraftPath> others) {
    for (DraftPath path : paths) {
      for (DraftPath other : others) {
        if (path.overlaps(other)) {
          fault(
              at,
              path.text() + (path.equals(other) ? " twice" : " beside " + other.text()),
              "must be varied in one place");
          return;
        }
      }
    }
  }

  private Optional<DraftPath> path(String at, String text) {
    Optional<DraftPath> path = DraftPath.parse(text);
    if (path.isEmpty()) {
      fault(at, "\"" + text + "\"", DraftPath.FORM);
      return Optional.empty();
    }
    return path.filter(
        p -> places.kind(p, (given, allowed) -> fault(at, given, allowed)).isPresent());
  }

  private void value(DraftPath path, String at, JobValue value) {
    Kind<?> kind = JobDraft.shape();
    boolean required = false;
    for (String step : path.steps()) {
      required = kind.isRequired(step);
      Optional<Kind<?>> next = DraftPath.next(kind, step);
      kind = next.orElseThrow();
    }
    if (!value.isNone()) {
      kind.read(value.json(), at, walk);
    } else if (required) {
      fault(at, "null", "must be there: a job cannot do without " + path.text());
    }
  }

  private void fault(String at, String given, String allowed) {
    String near = at;
    while (!walk.lines().containsKey(near) && near.length() > 1) {
      near = near.substring(0, Math.max(1, Math.max(near.lastIndexOf('.'), near.lastIndexOf('['))));
    }
    walk.fault(at, walk.lines().getOrDefault(near, 0), given, allowed);
  }
}
