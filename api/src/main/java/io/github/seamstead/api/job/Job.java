package io.github.seamstead.api.job;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A job without a fault, with what was assumed where it states nothing. It comes from a document
 * ({@link JobReader}) or from code ({@link #builder()}), and passed the same checks either way.
 * Immutable.
 *
 * <pre>{@code
 * Job job =
 *     Job.builder()
 *         .frame(
 *             Frame.builder()
 *                 .sides(12)
 *                 .measures(Map.of(FrameMeasure.BASE_SIDE, 1.2, FrameMeasure.HEIGHT, 2.6)))
 *         .build();
 * job.document().frame().isPresent(); // true
 * }</pre>
 */
public final class Job {

  private final JobDocument document;
  private final List<Assumption> assumptions;
  private final Map<String, Integer> lines;

  private Job(JobDocument document, List<Assumption> assumptions, Map<String, Integer> lines) {
    this.document = document;
    this.assumptions = List.copyOf(assumptions);
    this.lines = Map.copyOf(lines);
  }

  static Job read(byte[] utf8) {
    return ofTree(FileText.json(utf8, new Walk()));
  }

  static Job ofTree(Json tree) {
    Walk walk = new Walk();
    JobDocument document = FileText.read(tree, Shapes.DOCUMENT, walk);
    DoubtReader.read(tree, document.doubts(), walk);
    if (!walk.isClean()) {
      throw new JobFaultsException(walk.faults());
    }
    Map<String, Integer> lines = new HashMap<>(walk.lines());
    lines.values().removeIf(line -> line == 0);
    return new Job(document, walk.assumptions(), lines);
  }

  /**
   * Checks a document that was put together in code from finished records. Every value of it counts
   * as stated, so nothing is assumed.
   *
   * @param document the document
   * @return the job, without lines
   * @throws JobFaultsException with all faults, if there are any
   */
  public static Job of(JobDocument document) {
    return ofTree(Shapes.DOCUMENT.write(document, "$", Set.of()));
  }

  /**
   * Gives this job with other values, checked anew. A value that was assumed and is the same still
   * counts as assumed.
   *
   * @param changed the document with the other values
   * @return the job, with the lines of this one
   * @throws JobFaultsException with all faults, if there are any
   */
  public Job with(JobDocument changed) {
    Job other = ofTree(Shapes.DOCUMENT.write(changed, "$", assumedPaths()));
    return new Job(other.document, other.assumptions, lines);
  }

  /**
   * Starts a job in code. What is not stated is assumed and recorded, as for a document.
   *
   * @return a builder that states nothing yet
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Starts a job in code from this one.
   *
   * @return a builder that states what this job states, and leaves open what was assumed
   */
  public Builder toBuilder() {
    return new Builder(this);
  }

  /**
   * Gives the values, stated and assumed.
   *
   * @return the document
   */
  public JobDocument document() {
    return document;
  }

  /**
   * Gives the values that the job leaves out and that were taken from elsewhere.
   *
   * @return the assumptions in the order of the document
   */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /**
   * Tells where values stand in the text that the job was read from.
   *
   * @return lines, counted from 1, by JSON path; empty for a job that was never a text
   */
  public Map<String, Integer> lines() {
    return lines;
  }

  /**
   * Makes a fault of this job.
   *
   * @param path the JSON path of the value
   * @param given what the document says there
   * @param allowed what to write instead
   * @return the fault, with the line of the value or of the nearest value around it
   */
  public JobFault fault(String path, String given, String allowed) {
    String at = path;
    while (!at.isEmpty()) {
      Integer line = lines.get(at);
      if (line != null) {
        return new JobFault(path, line, given, allowed);
      }
      int cut = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
      at = at.substring(0, Math.max(0, cut));
    }
    return new JobFault(path, 0, given, allowed);
  }

  /**
   * Marks what the job says, so that results can be told to be of this job and no other. It does
   * not depend on the layout of a text, the order of its keys or its units.
   *
   * @return the SHA-256 digest of {@link JobWriter#text}, as 64 hexadecimal digits
   */
  public String digest() {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      byte[] text = JobWriter.text(this).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(sha256.digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** The paths whose values were assumed. */
  Set<String> assumedPaths() {
    return assumptions.stream().map(Assumption::path).collect(Collectors.toUnmodifiableSet());
  }

  /** Jobs are equal if they say and assume the same, wherever it stands in a text. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Job that
        && document.equals(that.document)
        && assumptions.equals(that.assumptions);
  }

  @Override
  public int hashCode() {
    return Objects.hash(document, assumptions);
  }

  @Override
  public String toString() {
    return "Job["
        + document.site().map(site -> site.name() + ", ").orElse("")
        + assumptions.size()
        + " assumed]";
  }

  /** Builds a job section by section. Belongs to one thread. */
  public static final class Builder extends Draft<JobDocument> {

    private final Set<String> assumed;

    private Builder() {
      super(JobDocument.class);
      assumed = Set.of();
      state("seamstead", Forms.NEWEST);
    }

    private Builder(Job job) {
      super(JobDocument.class);
      assumed = job.assumedPaths();
      stateAll(job.document, assumed);
    }

    /**
     * Checks all that is stated and assumes what is not.
     *
     * @return the job
     * @throws JobFaultsException with all faults, if there are any
     */
    public Job build() {
      return ofTree(tree("$", assumed));
    }

    /**
     * States site.
     *
     * @param site the site and who works there
     * @return this builder
     */
    public Builder site(Site.Builder site) {
      state("site", site);
      return this;
    }

    /**
     * States frame.
     *
     * @param frame the frame that carries the cover, if there is one
     * @return this builder
     */
    public Builder frame(Frame.Builder frame) {
      state("frame", frame);
      return this;
    }

    /**
     * States cover.
     *
     * @param cover the cover; not planned if left out
     * @return this builder
     */
    public Builder cover(Cover.Builder cover) {
      state("cover", cover);
      return this;
    }

    /**
     * States stock.
     *
     * @param stock the sheets and rolls; panels are not laid out if left out
     * @return this builder
     */
    public Builder stock(Stock.Builder stock) {
      state("stock", stock);
      return this;
    }

    /**
     * States soils.
     *
     * @param soils local soils with their tests
     * @return this builder
     */
    public Builder soils(List<SoilSample.Builder> soils) {
      state("soils", soils);
      return this;
    }

    /**
     * States aggregates.
     *
     * @param aggregates sands and gravels
     * @return this builder
     */
    public Builder aggregates(List<Aggregate.Builder> aggregates) {
      state("aggregates", aggregates);
      return this;
    }

    /**
     * States trialMixes.
     *
     * @param trialMixes trial samples of the mixes
     * @return this builder
     */
    public Builder trialMixes(List<TrialMix.Builder> trialMixes) {
      state("trialMixes", trialMixes);
      return this;
    }

    /**
     * States floor.
     *
     * @param floor the earthen floor; not planned if left out
     * @return this builder
     */
    public Builder floor(Floor.Builder floor) {
      state("floor", floor);
      return this;
    }

    /**
     * States plant.
     *
     * @param plant the tools that move and mix material
     * @return this builder
     */
    public Builder plant(Plant.Builder plant) {
      state("plant", plant);
      return this;
    }

    /**
     * States weather.
     *
     * @param weather the weather while the floor dries
     * @return this builder
     */
    public Builder weather(Weather.Builder weather) {
      state("weather", weather);
      return this;
    }

    /**
     * States doubts.
     *
     * @param doubts how far values of the job may be off, where whoever measured them says so
     * @return this builder
     */
    public Builder doubts(List<ValueDoubt.Builder> doubts) {
      state("doubts", doubts);
      return this;
    }
  }
}
