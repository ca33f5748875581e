package io.github.seamstead.api.job;

import io.github.seamstead.materials.mix.TrialOutcome;
import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of the trial section. */
final class TrialShapes {

  private TrialShapes() {}

  static Shape<TrialSample> trialSample() {
    Shape<TrialSample> s =
        Shape.of(TrialSample.class, "one sample of a trial mix and what became of it");
    Key<Double> sandParts =
        s.required(
            "sandParts",
            Quantities.of(Dimension.RATIO, "1", 0, 20),
            "parts of sand to one part of soil, by the bucket");
    Key<Double> crack =
        s.required(
            "crack",
            Quantities.length("mm", 0, 400),
            "width of all cracks along the mould together");
    Key<Double> mould =
        s.assumed(
            "mould",
            Quantities.length("mm", 50, 2000),
            "length of the mould",
            0.3,
            "300 mm",
            "common practice: a tray of floor thickness");
    Key<TrialOutcome.Dusting> dusting =
        s.required(
            "dusting", Kinds.constant(TrialOutcome.Dusting.class), "how it dusts when rubbed dry");
    Key<TrialOutcome.Scratch> scratch =
        s.assumed(
            "scratch",
            Kinds.constant(TrialOutcome.Scratch.class),
            "what a nail does",
            TrialOutcome.Scratch.MARKED,
            "marked",
            "the sample was not scratched");
    Key<TrialOutcome.Drop> drop =
        s.assumed(
            "drop",
            Kinds.constant(TrialOutcome.Drop.class),
            "what a fall of 1 m does",
            TrialOutcome.Drop.CHIPS,
            "chips",
            "the sample was not dropped");
    Key<Boolean> sticky =
        s.or("sticky", Kinds.flag(), "whether it stuck to the trowel when wet", false);
    Key<Double> straw =
        s.optional(
            "straw",
            Quantities.ratio(0, 0.05),
            "chopped straw over its dry mass; as much as the mix has if left out");
    return s.makes(
        v ->
            new TrialSample(
                v.get(sandParts),
                v.get(crack),
                v.get(mould),
                v.get(dusting),
                v.get(scratch),
                v.get(drop),
                v.get(sticky),
                v.find(straw)));
  }

  static Shape<TrialMix> trialMix() {
    Shape<TrialMix> s = Shape.of(TrialMix.class, "trial samples of one mix");
    Key<String> mix = s.required("mix", Kinds.id(), "the mix, by its id under floor");
    Key<List<TrialSample>> samples =
        s.required("samples", Kinds.list(trialSample(), 1, 20), "the samples");
    Key<Double> crackLimit =
        s.assumed(
            "crackLimit",
            Quantities.ratio(0.0005, 0.05),
            "crack width over length that is accepted",
            0.004,
            "0.4 %",
            "aim below 4 mm in 1000 mm");
    Key<Double> step =
        s.assumed(
            "step",
            Quantities.of(Dimension.RATIO, "1", 0.25, 2),
            "the step in which parts of sand are chosen",
            0.5,
            "0.5",
            "common practice: half buckets");
    return s.makes(v -> new TrialMix(v.get(mix), v.get(samples), v.get(crackLimit), v.get(step)));
  }
}
