package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.ArgumentFault;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A job document as it is written, before it is read: values can be put in the place of others, and
 * the document read with them. Immutable and safe to share between threads.
 */
public final class JobDraft {

  private static final Shape<JobDocument> SHAPE = Shapes.DOCUMENT;

  private final Json json;

  private JobDraft(Json json) {
    this.json = json;
  }

  /**
   * Takes in a document from a file.
   *
   * @param file a JSON file in UTF-8, or a pipe that gives one
   * @return the draft
   * @throws JobFaultsException if the text is no JSON or too large
   * @throws JobFileException if the file cannot be read
   */
  public static JobDraft read(Path file) {
    return parse(FileText.bytes(file));
  }

  /**
   * Takes in a document from bytes.
   *
   * @param utf8 a JSON text in UTF-8
   * @return the draft
   * @throws JobFaultsException if the text is no JSON or too large
   */
  public static JobDraft parse(byte[] utf8) {
    return new JobDraft(FileText.json(utf8, new Walk()));
  }

  /**
   * Takes in a job as its document would state it; what was assumed is left out again.
   *
   * @param job the job
   * @return the draft
   */
  public static JobDraft of(Job job) {
    return new JobDraft(SHAPE.write(job.document(), "$", job.assumedPaths()));
  }

  /**
   * Reads the document. Costs time linear in its text.
   *
   * @return the job
   * @throws JobFaultsException with all faults, if there are any
   */
  public Job job() {
    return Job.ofTree(json);
  }

  /**
   * Puts values in the place of others, one after the other. A value that the document leaves out
   * is added, with the objects around it.
   *
   * @param changes the values with their paths
   * @return the changed draft; this one stays as it is
   * @throws IllegalArgumentException if a path leads to a list item that is not there
   */
  public JobDraft with(List<JobChange> changes) {
    Json changed = json;
    for (JobChange change : changes) {
      DraftPath path =
          DraftPath.parse(change.path())
              .orElseThrow(() -> refused(change, "which is no path; " + DraftPath.FORM));
      Json next = path.put(changed, change.value().json());
      if (next == null) {
        throw refused(change, "which leads nowhere in the document; must lead to a list's item");
      }
      changed = next;
    }
    return new JobDraft(changed);
  }

  /**
   * Finds a plain number: a quantity, a share or a price.
   *
   * @param path where it may stand, list items that are there called by their number or id
   * @return the number, whether the document states it or leaves it out; empty if no plain number
   *     could stand there
   */
  public Optional<JobNumber> number(String path) {
    return DraftPath.parse(path)
        .flatMap(
            p ->
                new JobPlaces(json)
                    .kind(p, (given, allowed) -> {})
                    .flatMap(
                        kind -> kind.limits().map(l -> new JobNumber(p.numbered(json), kind, l))));
  }

  /**
   * Looks up the doubts that the document states.
   *
   * @return in the order of the document
   * @throws JobFaultsException with all faults of the document, if there are any
   */
  public List<StatedDoubt> doubts() {
    return DoubtReader.read(json, job().document().doubts(), new Walk());
  }

  private static ArgumentFault refused(JobChange change, String why) {
    return ArgumentFault.finding("path: given " + change.path() + ", " + why);
  }

  Json json() {
    return json;
  }

  static Shape<JobDocument> shape() {
    return SHAPE;
  }
}
