package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceHem;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Finds where a job could save cloth: which small changes of cover and frame it can state. */
public final class ClothLevers {

  private static final int FEWEST_SIDES = 4;

  /** Panels changed one by one; where more of them lack, the whole cover has to change. */
  private static final int FEW = 6;

  private final Parts parts;
  private final List<ClothLever> found = new ArrayList<>();

  private ClothLevers(Parts parts) {
    this.parts = parts;
  }

  /**
   * Finds where cloth could be saved.
   *
   * @param job what is stated
   * @param parts what the plan of it found; panels that found no place are met here
   * @return changes of the cover, then of the panels that lack, then of the frame; none for what
   *     the job does not have or what a survey has fixed
   */
  public static List<ClothLever> of(JobDocument job, Parts parts) {
    ClothLevers levers = new ClothLevers(parts);
    job.cover().ifPresent(levers::cover);
    job.cover().ifPresent(levers::lacking);
    if (job.stock().isPresent()) {
      job.cover().ifPresent(levers::together);
    }
    if (job.cover().isPresent()) {
      job.frame().ifPresent(levers::frame);
    }
    return List.copyOf(levers.found);
  }

  private void lacking(Cover cover) {
    List<Integer> faces =
        parts
            .one(LayoutPart.class)
            .flatMap(
                layout -> parts.one(CoverPart.class).map(part -> LackingFaces.of(part, layout)))
            .orElse(List.of());
    if (faces.isEmpty()) {
      return;
    }
    spliced(cover, faces.subList(0, 1));
    if (faces.size() > 1 && faces.size() <= FEW) {
      spliced(cover, faces);
    }
    List<Integer> kept = faces.stream().filter(face -> isOnBand(cover, face)).toList();
    if (kept.size() <= FEW) {
      turned(cover, kept);
    }
  }

  private static boolean isOnBand(Cover cover, int face) {
    return cover.hem().of(face).kind() == HemKind.REINFORCED;
  }

  private void spliced(Cover cover, List<Integer> faces) {
    TreeSet<Integer> all = new TreeSet<>(cover.moreSplices());
    if (all.addAll(faces)) {
      List<JobValue> numbers = all.stream().map(face -> JobValue.number(face)).toList();
      add(
          "A splice more in " + panels(faces),
          "a splice more in each is a seam to make, to keep tight and to look after",
          new JobChange("cover.moreSplices", JobValue.list(numbers)));
    }
  }

  private void turned(Cover cover, List<Integer> faces) {
    if (faces.isEmpty()) {
      return;
    }
    List<JobValue> hems = new ArrayList<>();
    cover.hem().faces().stream()
        .filter(own -> !faces.contains(own.face()))
        .forEach(own -> hems.add(hem(own)));
    faces.forEach(
        face -> hems.add(hem(new FaceHem(face, HemKind.TURNED, EdgeAllowance.USUAL_HEM))));
    add(
        "Lower edge turned, not kept on the band, of " + panels(faces),
        "the band is lost to these hems; they are folded and fastened by hand",
        new JobChange("cover.hem.faces", JobValue.list(hems)));
  }

  private static JobValue hem(FaceHem own) {
    Map<String, JobValue> members = new LinkedHashMap<>();
    members.put("face", JobValue.number(own.face()));
    members.put("kind", JobValue.text(own.kind().word()));
    members.put("allowance", JobValue.text(Numbers.plain(own.allowance()) + " m"));
    return JobValue.object(members);
  }

  private static String panels(List<Integer> faces) {
    return (faces.size() == 1 ? "panel " : "panels ")
        + CutShape.runs(faces.stream().map(String::valueOf).toList());
  }

  private void cover(Cover cover) {
    if (cover.seam().allowance() > 0) {
      add(
          "Seam allowance a quarter smaller",
          "a seam forgives less when cloth is cut short, and holds less",
          JobChange.quantity("cover.seam.allowance", cover.seam().allowance() * 3 / 4, "m"));
    }
    if (cover.skirt().isPresent()) {
      add(
          "No skirt",
          "wind and water come in under the hem, and the hem is not weighed down",
          JobChange.none("cover.skirt"));
    }
    if (cover.cap().isPresent()) {
      add(
          "Cap cut from other cloth",
          "the other cloth's price, and the time to cut and close the cap, are not in the plan",
          JobChange.none("cover.cap"));
    }
  }

  /** A lower edge on the band of a sheet is straight, so that it keeps the faces apart. */
  private void together(Cover cover) {
    if (cover.hem().isAnywhere(HemKind.REINFORCED) && cover.hem().faces().isEmpty()) {
      found.add(
          new ClothLever(
              "Lower edges turned, not kept on the band",
              "the band is lost to the hem; faces may then stay in one piece",
              List.of(
                  new JobChange("cover.hem.kind", JobValue.text(HemKind.TURNED.word())),
                  JobChange.quantity("cover.hem.allowance", EdgeAllowance.USUAL_HEM, "m"))));
    } else if (!cover.keepTogether()) {
      add(
          "Neighbouring faces in one piece where a sheet takes them",
          "larger pieces are heavier to handle, and one that is spoiled costs more cloth",
          JobChange.none("cover.keepTogether"));
    }
  }

  private void frame(Frame frame) {
    if (frame.survey().isPresent()) {
      return;
    }
    frame.measures().ifPresent(measures -> sides(frame, measures));
    for (FrameMeasure across : List.of(FrameMeasure.BASE_SIDE, FrameMeasure.CIRCUMRADIUS)) {
      frame
          .measures()
          .map(m -> m.get(across))
          .ifPresent(
              size ->
                  add(
                      "A tenth narrower",
                      "a fifth less floor; steeper faces catch more wind from the side",
                      JobChange.quantity("frame.measures." + across.word(), size * 9 / 10, "m")));
    }
    frame
        .measures()
        .map(m -> m.get(FrameMeasure.HEIGHT))
        .ifPresent(
            height ->
                add(
                    "A tenth lower",
                    "flatter faces shed rain and snow more slowly",
                    JobChange.quantity("frame.measures.height", height * 9 / 10, "m")));
  }

  /** Fewer sides of the same size across, so that the floor stays nearly as large. */
  private void sides(Frame frame, Map<FrameMeasure, Double> measures) {
    int fewer = frame.sides() - 2;
    Optional<FramePart> planned = parts.one(FramePart.class);
    if (fewer < FEWEST_SIDES || planned.isEmpty()) {
      return;
    }
    List<JobChange> changes = new ArrayList<>();
    changes.add(new JobChange("frame.sides", JobValue.number(fewer)));
    if (measures.containsKey(FrameMeasure.BASE_SIDE)) {
      changes.add(JobChange.none("frame.measures." + FrameMeasure.BASE_SIDE.word()));
      changes.add(
          JobChange.quantity(
              "frame.measures." + FrameMeasure.CIRCUMRADIUS.word(),
              planned.get().measures().circumradius(),
              "m"));
    }
    found.add(
        new ClothLever(
            "Two sides fewer, as wide across",
            "longer sides between the poles: each pole, peg and panel carries more",
            changes));
  }

  private void add(String name, String price, JobChange change) {
    found.add(new ClothLever(name, price, List.of(change)));
  }
}
