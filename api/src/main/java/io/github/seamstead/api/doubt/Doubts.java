package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.shared.sensitivity.NormalScore;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/** Gathers the doubts that a job has: those that it states, and usual ones where it states none. */
final class Doubts {

  /** Standard deviation of a design wind read off a map for a place between two zones. */
  private static final double WIND = 0.10;

  private static final double CLOTH_MASS = 0.05;
  private static final double CUT = 0.003;
  private static final double BUILT = 0.005;
  private static final double PRICE = 0.15;

  private final JobDocument job;
  private final List<Doubt> found = new ArrayList<>();

  private Doubts(JobDocument job) {
    this.job = job;
  }

  static List<Doubt> of(Job job) {
    Doubts doubts = new Doubts(job.document());
    doubts.frame();
    doubts.cover();
    EarthDoubts.addTo(doubts.found, doubts.job);
    doubts.prices();
    return List.copyOf(doubts.found);
  }

  private void frame() {
    if (job.frame().isEmpty()) {
      return;
    }
    Frame frame = job.frame().get();
    if (frame.survey().isPresent()) {
      found.add(TapeDoubt.of(frame.survey().get()));
      return;
    }
    frame
        .measures()
        .ifPresent(
            measures -> {
              List<Length> lengths = Length.of(measures);
              if (!lengths.isEmpty()) {
                found.add(
                    new Doubt(
                        "measures of the frame as built",
                        "5 mm on each stated length, one standard deviation",
                        Source.commonPractice("poles cut and set by hand"),
                        "Tape the frame as it stands and plan again with the readings",
                        lengths.size(),
                        (at, width, draw) -> {
                          for (int i = 0; i < lengths.size(); i++) {
                            double off = width * BUILT * NormalScore.of(at[i]);
                            draw.set(lengths.get(i).path(), lengths.get(i).metres() + off, "m");
                          }
                        }));
              }
            });
  }

  private void cover() {
    job.cover()
        .ifPresent(
            cover -> {
              double allowance = cover.seam().allowance();
              found.add(
                  new Doubt(
                      "seam allowance as cut",
                      "3 mm, one standard deviation",
                      Source.commonPractice("marking out and cutting by hand"),
                      "Draw every piece from two tapes and check both diagonals",
                      1,
                      (at, width, draw) ->
                          draw.set(
                              "cover.seam.allowance",
                              Math.max(CUT, allowance + width * CUT * NormalScore.of(at[0])),
                              "m")));
              double mass = cover.fabric().massPerArea();
              found.add(
                  new Doubt(
                      "weight of the cloth",
                      "5 %, one standard deviation",
                      Source.commonPractice("reclaimed cloth, worn and damp"),
                      "Weigh a whole dry sheet and divide by its area",
                      1,
                      (at, width, draw) ->
                          draw.set(
                              "cover.fabric.massPerArea",
                              mass * factor(at[0], width * CLOTH_MASS),
                              "kg/m2")));
            });
    job.site()
        .flatMap(Site::designWind)
        .ifPresent(
            wind ->
                found.add(
                    new Doubt(
                        "design wind",
                        "10 %, one standard deviation",
                        Source.commonPractice("a gust speed read off a map for the place"),
                        "Ask for the gust speed of this very place by the local code",
                        1,
                        (at, width, draw) ->
                            draw.set(
                                "site.designWind", wind * factor(at[0], width * WIND), "m/s"))));
  }

  /** A factor about 1 that is never negative: the logarithm is normal. */
  static double factor(double at, double deviation) {
    return StrictMath.exp(deviation * NormalScore.of(at));
  }

  private void prices() {
    List<Price> prices = Price.of(job);
    if (!prices.isEmpty()) {
      found.add(
          new Doubt(
              "prices",
              "15 % up or down, all together, evenly spread",
              Source.commonPractice("quotations for loose material at short notice"),
              "Ask for a written offer, with delivery",
              1,
              (at, width, draw) -> {
                double factor = 1 + width * PRICE * (2 * at[0] - 1);
                prices.forEach(price -> draw.set(price.path(), price.amount() * factor));
              }));
    }
  }
}
