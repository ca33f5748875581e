package io.github.seamstead.api.job;

import java.util.List;

/** The shapes of the job section. */
final class JobShapes {

  private JobShapes() {}

  static Shape<JobDocument> jobDocument() {
    Shape<JobDocument> s =
        Shape.of(
            JobDocument.class,
            "a job document: what a builder writes down, section by section in the order of the"
                + " work");
    s.required(
        "seamstead",
        Forms.version(),
        "version of the form of the document; the newest is " + Forms.NEWEST);
    Key<Site> site = s.optional("site", SiteShapes.site(), "the site and who works there");
    Key<Frame> frame =
        s.optional(
            "frame",
            FrameShapes.frame(),
            "the frame that carries the cover; a floor or soils can be planned without");
    Key<Cover> cover =
        s.optional("cover", CoverShapes.cover(), "the cover; not planned if left out");
    Key<Stock> stock =
        s.optional(
            "stock",
            StockShapes.stock(),
            "the sheets and rolls; panels are not laid out if left out");
    Key<List<SoilSample>> soils =
        s.or(
            "soils",
            Kinds.list(SoilShapes.soilSample(), 1, 50),
            "local soils with their tests",
            List.of());
    Key<List<Aggregate>> aggregates =
        s.or(
            "aggregates",
            Kinds.list(SoilShapes.aggregate(), 1, 50),
            "sands and gravels",
            List.of());
    Key<List<TrialMix>> trialMixes =
        s.or(
            "trialMixes",
            Kinds.list(TrialShapes.trialMix(), 1, 20),
            "trial samples of the mixes",
            List.of());
    Key<Floor> floor =
        s.optional("floor", FloorShapes.floor(), "the earthen floor; not planned if left out");
    Key<Plant> plant =
        s.optional("plant", PlantShapes.plant(), "the tools that move and mix material");
    Key<Weather> weather =
        s.optional("weather", WeatherShapes.weather(), "the weather while the floor dries");
    Key<List<ValueDoubt>> doubts =
        s.or(
            "doubts",
            Kinds.list(DoubtShapes.valueDoubt(), 1, 100),
            "how far values of the job may be off, in place of what the trade takes for usual",
            List.of());
    s.rule(
        (v, faults) -> {
          JobRules.frameAndCover(v.find(frame), v.find(cover), faults);
          JobRules.something(
              v.find(frame).isPresent()
                  || v.find(cover).isPresent()
                  || v.find(floor).isPresent()
                  || !v.get(soils).isEmpty(),
              faults);
          FloorRules.materials(v.get(soils), v.get(aggregates), v.find(floor), faults);
          FloorRules.trials(v.get(trialMixes), v.find(floor), faults);
          v.find(weather).ifPresent(w -> FloorRules.tiles(w.tiles(), v.find(floor), faults));
          v.find(floor).ifPresent(f -> FloorRules.door(f, v.find(frame), faults));
        });
    return s.makes(
        v ->
            new JobDocument(
                Forms.NEWEST,
                v.find(site),
                v.find(frame),
                v.find(cover),
                v.find(stock),
                v.get(soils),
                v.get(aggregates),
                v.get(trialMixes),
                v.find(floor),
                v.find(plant),
                v.find(weather),
                v.get(doubts)));
  }
}
