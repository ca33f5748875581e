package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.geometry.survey.BlunderReport;
import io.github.seamstead.geometry.survey.NextReading;
import io.github.seamstead.geometry.survey.SurveyControl;
import io.github.seamstead.geometry.templates.AsBuilt;
import io.github.seamstead.geometry.templates.TemplatePlan;
import io.github.seamstead.geometry.templates.TemplateSet;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The frame as it was taped.
 *
 * @param report the adjustment with its tests, and the readings found wrong
 * @param control what the accepted readings check among themselves
 * @param asBuilt the faces, seams and base corners as they stand
 * @param templates the sets of templates tried
 * @param chosen the set that the panels are cut by
 * @param nextReadings the readings that would help most, the best first
 * @param tape the corrections of the taped distances; empty if the document states no tape
 */
public record SurveyPart(
    BlunderReport report,
    SurveyControl control,
    AsBuilt asBuilt,
    TemplatePlan templates,
    TemplateSet chosen,
    List<NextReading> nextReadings,
    Optional<TapePart> tape) {

  public SurveyPart {
    nextReadings = List.copyOf(nextReadings);
  }

  /**
   * Gives the outline that each face's panel is cut by.
   *
   * @param sides the number of faces
   * @return the template of each face, from face 1 on
   */
  public List<Outline> faces(int sides) {
    List<Outline> faces = new ArrayList<>();
    for (int face = 1; face <= sides; face++) {
      int number = face;
      faces.add(
          chosen.templates().stream()
              .filter(t -> t.faces().contains(number))
              .findFirst()
              .orElseThrow()
              .outline());
    }
    return faces;
  }
}
