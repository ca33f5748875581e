package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.MixChoice;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.Proportion;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.materials.soil.TestKind;
import io.github.seamstead.materials.soil.TestReading;
import io.github.seamstead.materials.soil.TextureClass;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Map;

/** Soils and mixes as data. */
final class SoilFacts {

  private SoilFacts() {}

  static Facts<SoilPart> soil() {
    return new Facts<SoilPart>()
        .text("id", "its name", s -> s.sample().id())
        .uncertain("clayRatio", "share of clay in dry mass", s -> s.finding().texture().clay())
        .uncertain("siltRatio", "share of silt in dry mass", s -> s.finding().texture().silt())
        .uncertain("sandRatio", "share of sand in dry mass", s -> s.finding().texture().sand())
        .range(
            "clayRange",
            "share of clay: 5 % quantile, mean, 95 % quantile",
            s -> s.finding().texture().clayRange())
        .many(
            "classes",
            "texture classes, the most probable first",
            textureClass(),
            s -> s.finding().texture().classProbabilities().entrySet().stream().toList())
        .text("floorVerdict", "whether it suits a floor", s -> s.floor().verdict().label())
        .code(
            "floorVerdictCode",
            "the same as a code",
            Suitability.Verdict.class,
            s -> s.floor().verdict())
        .number(
            "withinBandProbability",
            "probability that its clay suits a floor as it is",
            s -> s.floor().withinBand())
        .number("tooRichProbability", "probability of too much clay", s -> s.floor().tooRich())
        .number("tooLeanProbability", "probability of too little clay", s -> s.floor().tooLean())
        .maybeText("floorNext", "what to do before a verdict can be given", s -> s.floor().next())
        .texts("floorReasons", "why", s -> s.floor().reasons())
        .maybeText(
            "nextTest",
            "the test that would tell most for its effort",
            s -> s.nextTests().stream().findFirst().map(t -> t.kind().label()))
        .maybeCode(
            "nextTestCode",
            "the same as a code",
            TestKind.class,
            s -> s.nextTests().stream().findFirst().map(t -> t.kind()))
        .many("tests", "what each test says alone", reading(), SoilPart::readings)
        .maybeText("stoniness", "the word that stones add to the class", SoilPart::stoniness)
        .maybeText(
            "group",
            "group by sieve and limits, ASTM D2487",
            s -> s.group().map(g -> g.symbol() + (g.withGravel() ? " with gravel" : "")))
        .texts("remarks", "what the tests call attention to", s -> s.finding().remarks())
        .texts(
            "conflicts",
            "tests that disagree",
            s -> s.finding().conflicts().stream().map(c -> c.message()).toList());
  }

  private static Facts<MixSolution> design() {
    return new Facts<MixSolution>()
        .number("clayRatio", "share of clay before rounding to buckets", MixSolution::clayRatio)
        .maybeNumber(
            "gradingMisfit",
            "root mean square distance to the grading aimed at",
            MixSolution::gradingMisfit)
        .maybeNumber(
            "greatestShrinkage",
            "linear shrinkage, high end; empty if a soil or pit sand has no bar",
            d -> d.shrinkage().map(Range::high))
        .maybeNumber("pricePerDryTonne", "price of a dry tonne", MixSolution::pricePerDryTonne)
        .texts("unmet", "targets that cannot be met", MixSolution::unmet);
  }

  private static Facts<TestReading> reading() {
    return new Facts<TestReading>()
        .text("test", "the test with its outcome", TestReading::label)
        .range("clayRange", "share of clay that it allows", TestReading::clay)
        .flag(
            "ofPlasticity",
            "whether it errs together with the other tests of plasticity",
            TestReading::plastic);
  }

  private static Facts<Map.Entry<TextureClass, Double>> textureClass() {
    return new Facts<Map.Entry<TextureClass, Double>>()
        .text("name", "the class", e -> e.getKey().label())
        .number("probability", "its probability", Map.Entry::getValue);
  }

  private static Facts<Proportion.Part> bucketPart() {
    return new Facts<Proportion.Part>()
        .text("material", "the soil or the sand", Proportion.Part::name)
        .number("parts", "how many parts", Proportion.Part::amount);
  }

  static Facts<MixPart> mix() {
    return new Facts<MixPart>()
        .text("id", "its name", m -> m.spec().id())
        .number("leastClayRatio", "least share of clay aimed at", m -> m.blend().band().least())
        .number(
            "greatestClayRatio",
            "greatest share of clay aimed at",
            m -> m.blend().band().greatest())
        .number(
            "sandPerSoilDryMass",
            "dry mass of sand per dry mass of soil for the middle of the band",
            m -> m.blend().sandPerSoilDryMass())
        .text(
            "proportionByVolume",
            "proportion used, in loose volume, both sides named",
            m -> m.choice().recipe().proportion(Basis.LOOSE_VOLUME).text())
        .uncertain(
            "clayRatio", "share of clay of the mix used", m -> m.choice().recipe().clayRatio())
        .maybeRange(
            "clayRange",
            "the same: 5 % quantile, likely, 95 % quantile by the doubt of soil and buckets",
            MixPart::clay)
        .number(
            "sandParts",
            "parts of sand to one of soil that are used, by the bucket",
            m -> m.choice().sandParts())
        .many(
            "bucketParts",
            "parts by the bucket, loose and as damp as it lies, to one of the first",
            bucketPart(),
            m -> m.choice().recipe().proportion(Basis.LOOSE_VOLUME).perFirst().parts())
        .text("ratioGround", "why this ratio is used", m -> m.choice().ground().label())
        .code(
            "ratioGroundCode",
            "the same as a code",
            MixChoice.Ground.class,
            m -> m.choice().ground())
        .text("ratioReason", "the same in a sentence", m -> m.choice().reason())
        .texts("remarks", "what speaks against the ratio", m -> m.choice().remarks())
        .maybe("design", "the mix of several aggregates", design(), MixPart::design)
        .texts(
            "composition",
            "in which way it leaves the published envelope for its use",
            MixPart::composition)
        .maybeText("unmet", "what the proportion cannot meet", m -> m.choice().unmet());
  }
}
