package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.layout.ClothLevers;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.LayerKind;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.PlantBarrow;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.materials.floor.GroundWork;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.ThinnerLayer;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the levers that a job has: which small changes its document can state. */
final class Levers {

  private static final double PART = 0.5;

  private final JobPlan plan;
  private final JobDocument job;
  private final List<Lever> found = new ArrayList<>();

  private Levers(JobPlan plan) {
    this.plan = plan;
    this.job = plan.job().document();
  }

  /**
   * Finds the levers.
   *
   * @param plan the plan of the job as it is written
   * @return the levers of the cover, then those of the floor; none for what the job does not have
   */
  public static List<Lever> of(JobPlan plan) {
    Levers levers = new Levers(plan);
    ClothLevers.of(levers.job, plan.parts())
        .forEach(
            cloth ->
                levers.found.add(
                    new Lever(cloth.name(), Lever.On.COVER, 0, cloth.price(), cloth.changes())));
    levers.job.cover().ifPresent(levers::lining);
    levers.job.floor().ifPresent(levers::floor);
    return List.copyOf(levers.found);
  }

  private void lining(Cover cover) {
    if (cover.lining().isPresent()) {
      add(
          "No lining",
          Lever.On.COVER,
          "water that condenses drips on the floor, and heat is lost",
          JobChange.none("cover.lining"));
    }
  }

  private void floor(Floor floor) {
    for (int i = 0; i < floor.layers().size(); i++) {
      FloorLayer layer = floor.layers().get(i);
      double thickness = layer.thickness().orElse(0.0);
      int number = i;
      if (layer.kind() == LayerKind.EARTH_COAT) {
        ThinnerLayer.coat(thickness, grain(floor, layer))
            .ifPresent(
                thinner ->
                    thinner(
                        number,
                        "Coat",
                        thinner,
                        "less to wear and to level with; a rough pack shows through"));
      }
      if (layer.kind() == LayerKind.DRY_PACK) {
        ThinnerLayer.pack(thickness)
            .ifPresent(
                thinner ->
                    thinner(
                        number,
                        "Dry pack",
                        thinner,
                        "less to level out soft ground; not below three times the largest stone"));
      }
    }
    mixes(floor);
    for (int i = 0; i < job.aggregates().size(); i++) {
      own(i, job.aggregates().get(i));
    }
    job.site().flatMap(Site::crew).ifPresent(this::crew);
    job.plant().flatMap(p -> p.barrow()).ifPresent(this::barrow);
  }

  /** Sand and gravel of the site instead of bought ones: what they cost goes, hours come. */
  private void own(int index, Aggregate aggregate) {
    double loose =
        plan.floor().flatMap(f -> f.orders()).stream()
            .flatMap(orders -> orders.lines().stream())
            .filter(line -> line.material().equals(aggregate.id()))
            .mapToDouble(OrderLine::looseVolume)
            .sum();
    if (aggregate.pricePerTonne().isPresent() && loose > 0) {
      double hours = GroundWork.hoursForLoose(loose).likely();
      found.add(
          new Lever(
              aggregate.id() + " dug on the site, not bought",
              Lever.On.FLOOR,
              hours,
              Numbers.fixed(hours, 0)
                  + " hours of digging and carrying, sieving not counted; test it first",
              List.of(
                  new JobChange("aggregates[" + index + "].pricePerTonne", JobValue.number(0)))));
    }
  }

  /** A thinner layer dries sooner and takes less. */
  private void thinner(int index, String name, double thinner, String price) {
    add(
        name + " thinner, " + millimetres(thinner),
        Lever.On.FLOOR,
        price,
        JobChange.quantity("floor.layers[" + index + "].thickness", thinner, "m"));
  }

  private double grain(Floor floor, FloorLayer layer) {
    return floor.mixes().stream()
        .filter(mix -> layer.mix().equals(Optional.of(mix.id())))
        .mapToDouble(MixSpec::largestGrain)
        .findFirst()
        .orElse(0);
  }

  private void mixes(Floor floor) {
    for (int i = 0; i < floor.mixes().size(); i++) {
      MixSpec spec = floor.mixes().get(i);
      Optional<Double> parts =
          plan.mixes().stream()
              .filter(mix -> mix.spec().id().equals(spec.id()))
              .findFirst()
              .map(mix -> mix.choice().sandParts());
      String path = "floor.mixes[" + i + "].sandParts";
      parts
          .filter(p -> p > PART)
          .ifPresent(
              p ->
                  add(
                      spec.id() + " with half a part less sand",
                      Lever.On.FLOOR,
                      "more clay shrinks more: lay a trial sample before",
                      new JobChange(path, JobValue.number(p - PART))));
    }
  }

  private void crew(Crew crew) {
    add(
        "Two people more",
        Lever.On.FLOOR,
        "more people to feed and to look after",
        new JobChange("site.crew.people", JobValue.number(crew.people() + 2)));
  }

  /** Two barrows in turn carry as one of twice the load does. */
  private void barrow(PlantBarrow barrow) {
    List<JobChange> changes = new ArrayList<>();
    changes.add(JobChange.quantity("plant.barrow.volume", 2 * barrow.volume() * 1000, "l"));
    barrow
        .payload()
        .ifPresent(mass -> changes.add(JobChange.quantity("plant.barrow.payload", 2 * mass, "kg")));
    found.add(
        new Lever(
            "A second barrow, loaded as the first",
            Lever.On.FLOOR,
            0,
            "a second barrow to find, and room for two on the planks",
            changes));
  }

  private void add(String name, Lever.On on, String price, JobChange change) {
    found.add(new Lever(name, on, 0, price, List.of(change)));
  }

  private static String millimetres(double metres) {
    return Numbers.fixed(metres * 1000, 0) + " mm";
  }
}
