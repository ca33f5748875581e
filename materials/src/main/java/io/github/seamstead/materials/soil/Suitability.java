package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a soil suits a use, with reasons.
 *
 * @param use the use
 * @param verdict the verdict
 * @param withinBand probability that the clay share lies in the use's band as the soil is
 * @param tooRich probability that it is above the band
 * @param tooLean probability that it is below the band
 * @param reasons sentences, the deciding one first
 * @param cautions what can hurt
 */
public record Suitability(
    SoilUse use,
    Verdict verdict,
    double withinBand,
    double tooRich,
    double tooLean,
    List<String> reasons,
    List<Caution> cautions) {

  /** What to do with the soil. */
  public enum Verdict {
    /** In the band as it is, probably. */
    AS_IT_IS("suits as it is"),
    /** Too rich: sand makes it suit. */
    WITH_SAND("suits with sand added"),
    /** Too lean: a richer soil has to be added. */
    WITH_RICHER_SOIL("needs a richer soil added"),
    /** Not known well enough: test more. */
    TEST_MORE("not known well enough: test more"),
    /** A sign speaks against it whatever its clay. */
    NOT_ADVISED("not advised");

    private final String label;

    Verdict(String label) {
      this.label = label;
    }

    /**
     * Says it in words.
     *
     * @return a few words
     */
    public String label() {
      return label;
    }
  }

  private static final double SURE = 0.6;
  private static final double ACTIVE = 0.5;
  private static final double MUCH_SILT = 0.5;

  /**
   * Copies the lists.
   *
   * @param use the use
   * @param verdict the verdict
   * @param withinBand probability of a clay share in the band
   * @param tooRich probability of a clay share above the band
   * @param tooLean probability of a clay share below the band
   * @param reasons sentences
   * @param cautions what can hurt
   */
  public Suitability {
    reasons = List.copyOf(reasons);
    cautions = List.copyOf(cautions);
  }

  /**
   * Judges a soil for a use. Clay is counted on the whole dry mass, gravel included.
   *
   * @param finding what the tests say
   * @param use the use
   * @return the judgement
   */
  public static Suitability of(SoilFinding finding, SoilUse use) {
    double fine = 1 - finding.gravelRatio().map(Uncertain::value).orElse(0.0);
    TexturePosterior texture = finding.texture();
    double rich = texture.expectation((c, si, sa) -> c * fine > use.greatestClay() ? 1 : 0);
    double lean = texture.expectation((c, si, sa) -> c * fine < use.leastClay() ? 1 : 0);
    double within = Math.max(0, 1 - rich - lean);
    List<String> reasons = new ArrayList<>();
    Verdict verdict = verdict(within, rich, lean);
    reasons.add(
        "Clay is "
            + percent(texture.clayRange().low() * fine)
            + " to "
            + percent(texture.clayRange().high() * fine)
            + " of the dry mass (nine times in ten); "
            + use.label()
            + " wants "
            + percent(use.leastClay())
            + " to "
            + percent(use.greatestClay())
            + " ("
            + use.source().citation()
            + ").");
    addReasons(finding, reasons);
    if (finding.evidence().stream().anyMatch(Suitability::forbids)) {
      verdict = Verdict.NOT_ADVISED;
    }
    return new Suitability(use, verdict, within, rich, lean, reasons, dust());
  }

  private static Verdict verdict(double within, double rich, double lean) {
    if (within >= SURE) {
      return Verdict.AS_IT_IS;
    }
    if (rich >= SURE) {
      return Verdict.WITH_SAND;
    }
    return lean >= SURE ? Verdict.WITH_RICHER_SOIL : Verdict.TEST_MORE;
  }

  private static boolean forbids(SoilEvidence evidence) {
    return evidence instanceof WarningSign sign && sign.kind() != WarningSign.Kind.SWELLING;
  }

  private static void addReasons(SoilFinding finding, List<String> reasons) {
    for (SoilEvidence evidence : finding.evidence()) {
      if (evidence instanceof WarningSign sign) {
        reasons.add(0, sign.kind().advice());
      }
      if (evidence instanceof LinearShrinkage shrinkage && shrinkage.ratio() >= 0.05) {
        reasons.add(
            "The soil alone shrinks by "
                + percent(shrinkage.ratio())
                + "; from 5 % it is troublesome without sand or fibre.");
      }
    }
    if (finding.plasticity().activity().filter(a -> a.active() > ACTIVE).isPresent()) {
      reasons.add(
          "The clay is active (plasticity index over clay above 1.25): it swells and shrinks much;"
              + " keep to the lean end and make trials.");
    }
    if (finding.texture().silt().value() > MUCH_SILT) {
      reasons.add(
          "More than half is silt, which neither binds nor holds its shape when wet: expect"
              + " dusting.");
    }
    if (!finding.conflicts().isEmpty()) {
      reasons.add("Tests contradict one another, so the range is wide: repeat those named.");
    }
  }

  private static List<Caution> dust() {
    return List.of(
        new Caution(
            Hazard.SILICA_DUST,
            "Dry soil and sand give off fine quartz dust that scars the lungs when screened or"
                + " swept.",
            "Usual limit 0.05 mg of respirable crystalline silica per m3 of air over 8 hours: damp"
                + " the material, work outdoors, wear a fitted respirator.",
            Optional.of(
                Source.found("OSHA", "29 CFR 1926.1153", "2016", "50 micrograms per m3, 8 h"))));
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}
