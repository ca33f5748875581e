package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.TrialLadder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** What the soil is held to be, the next test, the tiles to make with room for what they show. */
final class SoilCard {

  private static final int MOST_TILES = 5;

  private SoilCard() {}

  static void write(Desk desk) {
    if (desk.plan().soils().isEmpty()) {
      return;
    }
    Markup m = new Markup();
    for (SoilPart soil : desk.plan().soils()) {
      soil(desk, m, soil);
    }
    mixes(desk, m);
    tiles(desk, m);
    desk.add("Soil card", "Soil card", Sheet.Kind.CARD, m);
  }

  private static void soil(Desk desk, Markup m, SoilPart soil) {
    var texture = soil.finding().texture();
    m.open("p").element("b", soil.sample().id());
    m.text(
        ": "
            + soil.floor().use().label()
            + ": "
            + soil.floor().verdict().label()
            + ". Clay "
            + desk.sizes().words().range(texture.clayRange(), desk.sizes().words()::percent)
            + ".");
    m.closeLine();
    if (!soil.finding().conflicts().isEmpty()) {
      m.element(
          "p",
          "Its tests contradict each other: repeat them before anything is ordered.",
          "class",
          "model");
    }
    if (!soil.nextTests().isEmpty()) {
      var next = soil.nextTests().get(0);
      m.open("p").text("Next test, it tells most for its work: ").element("b", next.kind().label());
      m.text(
          " (" + desk.sizes().words().duration(next.kind().handsOnTime()) + " of work). Result: ");
      Ticks.blank(m, "soil-" + desk.plan().soils().indexOf(soil), "result of the next test");
      m.closeLine();
    }
  }

  private static void mixes(Desk desk, Markup m) {
    Map<String, List<String>> texts = new LinkedHashMap<>();
    for (MixPart mix : desk.plan().mixes()) {
      String text = mix.choice().recipe().proportion(Basis.LOOSE_VOLUME).text();
      texts.computeIfAbsent(text, k -> new ArrayList<>()).add(mix.spec().id());
    }
    texts.forEach(
        (text, mixes) -> m.element("p", String.join(" and ", mixes) + ": " + text, "class", "mix"));
  }

  private static void tiles(Desk desk, Markup m) {
    List<String> proportions = proportions(desk);
    if (proportions.isEmpty()) {
      return;
    }
    m.element("h3", "Trial tiles: soil to sand, by bucket, loose and as damp as they lie");
    Ticks.table(
        m,
        "Trial tiles",
        "tile",
        "made",
        "cracks in the mould",
        "dust, rubbed",
        "scratch",
        "sticky");
    for (int i = 0; i < proportions.size(); i++) {
      m.open("tr");
      Ticks.cells(m, (i + 1) + ". " + proportions.get(i));
      String key = "tile" + (i + 1);
      m.open("td");
      Ticks.bare(m, key, "tile " + (i + 1) + " made");
      m.close();
      for (String what : List.of("cracks", "dust", "scratch", "sticky")) {
        m.open("td");
        Ticks.blank(m, key + what, "tile " + (i + 1) + ": " + what);
        m.close();
      }
      m.closeLine();
    }
    Ticks.endTable(m);
    for (var trial : desk.plan().trials()) {
      m.element(
          "p",
          "Tiles of "
              + trial.trials().mix()
              + " in the job: "
              + String.join(", ", made(trial.trials().samples()))
              + ". "
              + String.join(" ", trial.reading().advice()));
    }
  }

  private static List<String> made(List<TrialSample> samples) {
    List<String> texts = new ArrayList<>();
    for (TrialSample s : samples) {
      texts.add("1 : " + Sizes.number(s.sandParts()));
    }
    return texts;
  }

  private static List<String> proportions(Desk desk) {
    if (desk.plan().mixes().isEmpty()) {
      return List.of();
    }
    var blend = desk.plan().mixes().get(0).blend();
    if (blend.unmet().isPresent()) {
      return List.of();
    }
    TrialLadder ladder =
        TrialLadder.design(
            blend.exact().portions().get(0).component(),
            blend.exact().portions().get(1).component(),
            blend.band(),
            Basis.LOOSE_VOLUME,
            1,
            MOST_TILES);
    TreeSet<Double> parts = new TreeSet<>(ladder.sandParts());
    // What the tiles so far ask for next has a row of its own.
    desk.plan().trials().forEach(t -> t.reading().nextSandParts().ifPresent(parts::add));
    return parts.stream().map(part -> "1 : " + Sizes.number(part)).toList();
  }
}
