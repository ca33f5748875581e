package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The cover over the frame.
 *
 * @param fabric what the cover is made of
 * @param seam the joint between neighbouring panels
 * @param hem the lower edge
 * @param topTurnIn fabric added at the edge of the opening at the top, in metres
 * @param door the door, if stated
 * @param vents vents
 * @param cap the cap over the opening at the top, if stated
 * @param skirt the strip on the ground round the base, if stated
 * @param lining the lining inside the frame, if stated
 * @param fixings what holds seams and hem, if stated
 * @param joining how the crew joins, if stated
 * @param spliceLap how much two parts of one panel lap where the stock is too small, in metres
 * @param staggerSplices whether splices of neighbouring panels are kept apart
 * @param keepTogether whether neighbouring faces stay in one piece where a sheet takes them and no
 *     more cloth is used
 * @param moreSplices faces whose panels are put together from a band more than the cloth asks for
 */
public record Cover(
    Fabric fabric,
    Seam seam,
    Hem hem,
    double topTurnIn,
    Optional<FaceOpening> door,
    List<FaceOpening> vents,
    Optional<Cap> cap,
    Optional<Skirt> skirt,
    Optional<Lining> lining,
    Optional<Fixings> fixings,
    Optional<Joining> joining,
    double spliceLap,
    boolean staggerSplices,
    boolean keepTogether,
    List<Integer> moreSplices) {

  public Cover {
    vents = List.copyOf(vents);
    moreSplices = List.copyOf(moreSplices);
  }

  /**
   * Starts a builder, for {@link Job#builder()}.
   *
   * @return a builder that states nothing yet
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Starts a builder from this record.
   *
   * @return a builder that states all that this record holds
   */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.stateAll(this, Set.of());
    return builder;
  }

  /** Builds this section of a job. Belongs to one thread. */
  public static final class Builder extends Draft<Cover> {

    private Builder() {
      super(Cover.class);
    }

    /**
     * States fabric.
     *
     * @param fabric what the cover is made of
     * @return this builder
     */
    public Builder fabric(Fabric.Builder fabric) {
      state("fabric", fabric);
      return this;
    }

    /**
     * States seam.
     *
     * @param seam the joint between neighbouring panels
     * @return this builder
     */
    public Builder seam(Seam.Builder seam) {
      state("seam", seam);
      return this;
    }

    /**
     * States hem.
     *
     * @param hem the lower edge
     * @return this builder
     */
    public Builder hem(Hem.Builder hem) {
      state("hem", hem);
      return this;
    }

    /**
     * States topTurnIn.
     *
     * @param topTurnIn fabric added at the edge of the opening at the top, in metres; 0 mm is
     *     assumed if left out
     * @return this builder
     */
    public Builder topTurnIn(double topTurnIn) {
      state("topTurnIn", topTurnIn);
      return this;
    }

    /**
     * States door.
     *
     * @param door the door
     * @return this builder
     */
    public Builder door(FaceOpening.Builder door) {
      state("door", door);
      return this;
    }

    /**
     * States vents.
     *
     * @param vents vents
     * @return this builder
     */
    public Builder vents(List<FaceOpening.Builder> vents) {
      state("vents", vents);
      return this;
    }

    /**
     * States cap.
     *
     * @param cap the cap over the opening at the top
     * @return this builder
     */
    public Builder cap(Cap.Builder cap) {
      state("cap", cap);
      return this;
    }

    /**
     * States skirt.
     *
     * @param skirt the strip on the ground round the base
     * @return this builder
     */
    public Builder skirt(Skirt.Builder skirt) {
      state("skirt", skirt);
      return this;
    }

    /**
     * States lining.
     *
     * @param lining the lining inside the frame
     * @return this builder
     */
    public Builder lining(Lining.Builder lining) {
      state("lining", lining);
      return this;
    }

    /**
     * States fixings.
     *
     * @param fixings what holds seams and hem
     * @return this builder
     */
    public Builder fixings(Fixings.Builder fixings) {
      state("fixings", fixings);
      return this;
    }

    /**
     * States joining.
     *
     * @param joining how the crew joins
     * @return this builder
     */
    public Builder joining(Joining.Builder joining) {
      state("joining", joining);
      return this;
    }

    /**
     * States spliceLap.
     *
     * @param spliceLap how much two parts of one panel lap where the stock is too small, in metres;
     *     100 mm is assumed if left out
     * @return this builder
     */
    public Builder spliceLap(double spliceLap) {
      state("spliceLap", spliceLap);
      return this;
    }

    /**
     * States staggerSplices.
     *
     * @param staggerSplices whether splices of neighbouring panels are kept apart; true is assumed
     *     if left out
     * @return this builder
     */
    public Builder staggerSplices(boolean staggerSplices) {
      state("staggerSplices", staggerSplices);
      return this;
    }

    /**
     * States keepTogether.
     *
     * @param keepTogether whether neighbouring faces stay in one piece where a sheet takes them and
     *     no more cloth is used; true is assumed if left out
     * @return this builder
     */
    public Builder keepTogether(boolean keepTogether) {
      state("keepTogether", keepTogether);
      return this;
    }

    /**
     * States moreSplices.
     *
     * @param moreSplices faces whose panels are put together from a band more than the cloth asks
     *     for
     * @return this builder
     */
    public Builder moreSplices(List<Integer> moreSplices) {
      state("moreSplices", moreSplices);
      return this;
    }
  }
}
