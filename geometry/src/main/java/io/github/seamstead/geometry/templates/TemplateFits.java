package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Compares templates with faces, seams and the hem. */
final class TemplateFits {

  private TemplateFits() {}

  static FaceFit face(AsBuiltFace face, Template template) {
    Map<FaceMeasure, Uncertain> fullness = new EnumMap<>(FaceMeasure.class);
    template
        .measures()
        .forEach((measure, length) -> fullness.put(measure, less(length, face.measure(measure))));
    double middle = middle(template.outline());
    // Compared on the flat face, so that a twisted face shows no shortness that is only its twist.
    Uncertain built = new Uncertain(middle(face.outline()), face.middle().standardUncertainty());
    Optional<Uncertain> other =
        face.otherDiagonal().map(f -> less(template.otherDiagonal().orElseThrow(), f));
    return new FaceFit(face.number(), template.number(), fullness, other, less(middle, built));
  }

  static List<SeamFit> seams(AsBuilt frame, List<Template> templates, int[] templateOf) {
    List<SeamFit> fits = new ArrayList<>();
    int n = templateOf.length;
    for (AsBuilt.SeamLine seam : frame.seams()) {
      int i = seam.number() - 1;
      double left = templates.get(templateOf[i]).measure(FaceMeasure.RIGHT_HIP);
      double right = templates.get(templateOf[(i + 1) % n]).measure(FaceMeasure.LEFT_HIP);
      fits.add(
          new SeamFit(
              seam.number(),
              seam.length(),
              left,
              right,
              less(Math.min(left, right), seam.length())));
    }
    return fits;
  }

  static List<HemTakeUp> hem(AsBuilt frame, List<SeamFit> seams) {
    List<HemTakeUp> hem = new ArrayList<>();
    for (int i = 0; i < seams.size(); i++) {
      SeamFit seam = seams.get(i);
      double longer = Math.max(seam.leftPanelEdge(), seam.rightPanelEdge());
      AsBuilt.BaseCorner corner = frame.corners().get(i);
      hem.add(new HemTakeUp(corner.node(), corner.aboveLowest(), less(longer, seam.length())));
    }
    return hem;
  }

  private static Uncertain less(double template, Uncertain built) {
    return new Uncertain(template - built.value(), built.standardUncertainty());
  }

  private static double middle(Outline outline) {
    Vector2D base = outline.vertex(0).lerp(outline.vertex(1), 0.5);
    Vector2D top =
        outline.size() == 3 ? outline.vertex(2) : outline.vertex(2).lerp(outline.vertex(3), 0.5);
    return base.distance(top);
  }
}
