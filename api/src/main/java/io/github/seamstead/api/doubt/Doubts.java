package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobNumber;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.StatedDoubt;
import io.github.seamstead.assembly.internal.ClothDoubt;
import io.github.seamstead.assembly.internal.WindDoubt;
import io.github.seamstead.geometry.internal.CuttingDoubt;
import io.github.seamstead.geometry.internal.FrameDoubt;
import io.github.seamstead.materials.internal.LayingDoubt;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Gathers the doubts that a job has: those that it states, and usual ones where it states none. */
final class Doubts {

  private static final Source STATED = Source.derived("the doubt of this value in the job");

  /** A number of the document and what the plan takes it for, in its SI unit. */
  record Input(JobNumber number, double value) {}

  /** What people call a doubtful number, and how to know it better. */
  private record Called(String name, String remedy) {}

  private final JobDraft draft;
  private final JobDocument job;
  private final Set<String> stated;
  private final Map<String, Called> called = new HashMap<>();
  private final List<Doubt> found = new ArrayList<>();

  private Doubts(JobDraft draft, JobDocument job, List<StatedDoubt> stated) {
    this.draft = draft;
    this.job = job;
    this.stated = stated.stream().map(s -> s.number().path()).collect(Collectors.toSet());
  }

  /**
   * Gathers the doubts.
   *
   * @param draft the job with what the plan decided
   * @param job the same as it was read
   * @param written the job as it is written
   * @param stated the doubts that it states
   */
  static List<Doubt> of(
      JobDraft draft, JobDocument job, JobDocument written, List<StatedDoubt> stated) {
    Doubts doubts = new Doubts(draft, job, stated);
    doubts.frame();
    doubts.cover();
    doubts.wind();
    EarthDoubts.addTo(doubts, job, written);
    doubts.prices();
    stated.forEach(doubts::state);
    return List.copyOf(doubts.found);
  }

  void add(Doubt doubt) {
    found.add(doubt);
  }

  Input input(String path, double value) {
    return new Input(draft.number(path).orElseThrow(), value);
  }

  /** Numbers that are off by the same draw: one hand, one tool, one season. */
  void together(String name, String spread, UsualDoubt usual, String remedy, List<Input> all) {
    add(name, spread, usual, remedy, open(name, remedy, all), true);
  }

  /** Numbers that are each off by a draw of their own. */
  private void apart(String name, String spread, UsualDoubt usual, String remedy, List<Input> all) {
    add(name, spread, usual, remedy, open(name, remedy, all), false);
  }

  private void add(
      String name,
      String spread,
      UsualDoubt usual,
      String remedy,
      List<Input> open,
      boolean byOneDraw) {
    if (open.isEmpty()) {
      return;
    }
    Doubt.Effect effect =
        (at, width, draw) -> {
          for (int i = 0; i < open.size(); i++) {
            Input one = open.get(i);
            double place = at[byOneDraw ? 0 : i];
            draw.put(one.number(), usual.scatter().at(one.value(), place, width));
          }
        };
    add(new Doubt(name, spread, usual.source(), remedy, byOneDraw ? 1 : open.size(), effect));
  }

  /** The numbers whose doubt the job does not state itself. */
  private List<Input> open(String name, String remedy, List<Input> all) {
    for (Input one : all) {
      String path = one.number().path();
      called.put(path, new Called(all.size() == 1 ? name : name + ", " + path, remedy));
    }
    return all.stream().filter(i -> !stated.contains(i.number().path())).toList();
  }

  private void state(StatedDoubt doubt) {
    String path = doubt.number().path();
    Called known = called.getOrDefault(path, new Called(path, "Measure " + path + " again"));
    add(
        new Doubt(
            known.name(),
            doubt.text(),
            STATED,
            known.remedy(),
            1,
            (at, width, draw) ->
                draw.put(doubt.number(), doubt.scatter().at(doubt.value(), at[0], width))));
  }

  private void frame() {
    if (job.frame().isEmpty()) {
      return;
    }
    Frame frame = job.frame().get();
    if (frame.survey().isPresent()) {
      add(TapeDoubt.of(frame.survey().get()));
      return;
    }
    frame
        .measures()
        .ifPresent(
            measures ->
                apart(
                    "measures of the frame as built",
                    SpreadText.millimetres(FrameDoubt.LENGTH) + " on each stated length",
                    FrameDoubt.LENGTH,
                    "Tape the frame as it stands and plan again with the readings",
                    Length.of(measures).stream().map(l -> input(l.path(), l.value())).toList()));
  }

  private void cover() {
    job.cover()
        .ifPresent(
            cover -> {
              together(
                  "seam allowance as cut",
                  SpreadText.millimetres(CuttingDoubt.ALLOWANCE),
                  CuttingDoubt.ALLOWANCE,
                  "Draw every piece from two tapes and check both diagonals",
                  List.of(input("cover.seam.allowance", cover.seam().allowance())));
              together(
                  "weight of the cloth",
                  SpreadText.percent(ClothDoubt.MASS_PER_AREA),
                  ClothDoubt.MASS_PER_AREA,
                  "Weigh a whole dry sheet and divide by its area",
                  List.of(input("cover.fabric.massPerArea", cover.fabric().massPerArea())));
            });
  }

  private void wind() {
    job.site()
        .flatMap(Site::designWind)
        .ifPresent(
            wind ->
                together(
                    "design wind",
                    SpreadText.percent(WindDoubt.GUST),
                    WindDoubt.GUST,
                    "Ask for the gust speed of this very place by the local code",
                    List.of(input("site.designWind", wind))));
    job.site()
        .flatMap(Site::basicWind)
        .ifPresent(
            wind ->
                together(
                    "basic wind",
                    SpreadText.percent(WindDoubt.MEAN),
                    WindDoubt.MEAN,
                    "Ask for the basic wind speed of this very place by the local code",
                    List.of(input("site.basicWind.speed", wind.speed()))));
  }

  private void prices() {
    together(
        "prices",
        SpreadText.evenPercent(LayingDoubt.PRICE) + ", all together",
        LayingDoubt.PRICE,
        "Ask for a written offer, with delivery",
        Price.of(job).stream().map(p -> input(p.path(), p.amount())).toList());
  }
}
