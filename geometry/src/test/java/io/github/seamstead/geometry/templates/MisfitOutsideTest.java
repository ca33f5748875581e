package io.github.seamstead.geometry.templates;

import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.TestFrames;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One template for a frame with one corner pushed out: what it must have to spare elsewhere. */
class MisfitOutsideTest {

  private static final Source HAND =
      Source.derived("hand sum from first principles: longest less shortest edge of the corners");
  private static final double RADIUS = 3;
  private static final double HEIGHT = 3.5;

  /** Of readings without error the misfit is the greatest range of base sides and of hips. */
  @ParameterizedTest
  @CsvSource({"6,0.03", "8,0.05", "8,-0.04", "10,0.02", "5,0.06", "12,-0.03"})
  void rangeOfTheEdges(int sides, double out) {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(sides, false, RADIUS, HEIGHT, 0, 1));
    nodes.put(Node.base(3), nodes.get(Node.base(3)).multiply((RADIUS + out) / RADIUS));
    double side = 2 * RADIUS * Math.sin(Math.PI / sides);
    double bent = nodes.get(Node.base(3)).distance(nodes.get(Node.base(4)));
    double hip = Math.sqrt(RADIUS * RADIUS + HEIGHT * HEIGHT);
    double bentHip = Math.sqrt(Math.pow(RADIUS + out, 2) + HEIGHT * HEIGHT);
    Survey survey =
        Survey.of(TestFrames.shape(sides, false), TestFrames.readings(nodes, sides, false, 0, 1));
    AsBuilt frame = AsBuilt.of(survey.adjust().orThrow());
    TemplateSet one = Templates.plan(frame, 1, 0.5, 1).sets().get(0);
    OutsideCheck.of(
            "geometry.templates.misfit",
            sides + " sides, one corner " + out + " m out, one template, m",
            HAND)
        .expect(Math.max(Math.abs(bent - side), Math.abs(bentHip - hip)))
        .within(1e-6)
        .got(Templates.worstMisfit(frame, one, 0.5, Steps.none()));
  }
}
