package io.github.seamstead.api.job;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What must hold between the sections of a document. */
final class JobRules {

  private JobRules() {}

  static void frameAndCover(Optional<Frame> frame, Optional<Cover> cover, Shape.Faults faults) {
    frame.ifPresent(f -> evenMeasures(f, faults));
    frame.ifPresent(f -> cover.ifPresent(c -> openings(f, c, faults)));
    if (cover.isPresent() && frame.isEmpty()) {
      faults.note("frame", "no frame under a cover", "must be there: a cover is drawn for a frame");
    }
  }

  /** A document asks for something. */
  static void something(boolean anything, Shape.Faults faults) {
    if (!anything) {
      faults.note(
          "frame", "neither frame nor floor nor soils", "must be there, or at least one of these");
    }
  }

  private static void evenMeasures(Frame frame, Shape.Faults faults) {
    if (frame.sides() % 2 == 0) {
      return;
    }
    for (FrameMeasure measure : List.of(FrameMeasure.ACROSS_FLATS, FrameMeasure.ACROSS_CORNERS)) {
      if (frame.measures().isPresent() && frame.measures().get().containsKey(measure)) {
        faults.note(
            "frame.measures." + measure.word(),
            measure.word() + " of a base with " + frame.sides() + " sides",
            "must be left out: an odd base has no opposite edges or corners");
      }
    }
  }

  private static void openings(Frame frame, Cover cover, Shape.Faults faults) {
    Set<String> names = new HashSet<>();
    cover.door().ifPresent(door -> opening("cover.door", door, frame, names, faults));
    for (int i = 0; i < cover.vents().size(); i++) {
      opening("cover.vents[" + i + "]", cover.vents().get(i), frame, names, faults);
    }
    List<FaceHem> hems = cover.hem().faces();
    for (int i = 0; i < hems.size(); i++) {
      face("cover.hem.faces[" + i + "]", hems.get(i).face(), frame, faults);
    }
    List<Integer> spliced = cover.moreSplices();
    for (int i = 0; i < spliced.size(); i++) {
      if (spliced.get(i) > frame.sides()) {
        faults.note(
            "cover.moreSplices[" + i + "]",
            "face " + spliced.get(i),
            "must be from 1 to " + frame.sides() + ", the number of sides");
      }
    }
    if (cover.cap().isPresent() && frame.opening().isEmpty() && frame.survey().isEmpty()) {
      faults.note(
          "cover.cap",
          "a cap on a frame without an opening",
          "must be left out, or state frame.opening");
    }
  }

  private static void opening(
      String path, FaceOpening opening, Frame frame, Set<String> names, Shape.Faults faults) {
    face(path, opening.face(), frame, faults);
    StockRules.once(path + ".id", opening.id(), names, faults);
  }

  private static void face(String path, int face, Frame frame, Shape.Faults faults) {
    if (face > frame.sides()) {
      faults.note(
          path + ".face",
          "face " + face,
          "must be from 1 to " + frame.sides() + ", the number of sides");
    }
  }
}
