package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.SchemaHead;
import io.github.seamstead.api.json.JsonWriter;
import java.util.Optional;

/** A comparison as data: SI numbers, weeks in weeks, units in the keys. */
public final class CompareJson {

  /** The name of the published schema in the jar, beside this class. */
  public static final String SCHEMA_RESOURCE = "comparison.schema.json";

  /** The name by which the schema is known; it does not change within a version. */
  public static final String SCHEMA_ID =
      "https://seamstead.github.io/schemas/comparison-1.schema.json";

  private static final int VERSION = 1;

  private CompareJson() {}

  /** A row beside the comparison that it stands in. */
  private record Row(Comparison of, VariantRow row) {}

  /**
   * Writes a comparison.
   *
   * @param comparison the comparison
   * @return JSON text that follows the published schema
   */
  public static String text(Comparison comparison) {
    return JsonWriter.text(root().write(comparison));
  }

  /**
   * Makes the JSON Schema (draft 2020-12) of that text.
   *
   * @return the schema as indented JSON text
   */
  public static String schemaText() {
    return SchemaHead.text(SCHEMA_ID, "Seamstead comparison, version " + VERSION, root());
  }

  private static Facts<Comparison> root() {
    return new Facts<Comparison>()
        .whole("seamsteadComparison", "version of the form of this text", c -> VERSION)
        .text("schema", "the schema that it follows", c -> SCHEMA_ID)
        .text("job", "name of the job", Comparison::job)
        .maybeText("note", "a remark of the variants document", Comparison::note)
        .flag("quick", "whether the layout was left out", c -> c.options().quick())
        .whole("effort", "effort of the layout search", c -> c.options().plan().effort())
        .text("seed", "seed of the searches", c -> Long.toString(c.options().plan().seed()))
        .texts(
            "objectives",
            "what counts for which rows none beats",
            c -> c.front().objectives().stream().map(Measure::word).toList())
        .many(
            "variants",
            "the job as written, then each variant",
            row(),
            c -> c.rows().stream().map(r -> new Row(c, r)).toList())
        .many("levers", "what saves, the most first", lever(), Comparison::levers);
  }

  private static Facts<Row> row() {
    Facts<Row> facts =
        new Facts<Row>()
            .whole("variant", "its number; 0 for the job as written", r -> r.row().number())
            .text("name", "what is other than in the job as written", r -> r.row().name())
            .flag("feasible", "whether all can be met", r -> r.row().isFeasible())
            .flag("best", "whether no row beats it", r -> r.of().isBest(r.row()))
            .texts("whyNot", "what cannot be met", r -> r.row().whyNot());
    for (Measure m : Measure.values()) {
      facts.maybeNumber(m.key(), m.label(), r -> r.row().value(m));
    }
    return facts
        .maybeNumber(
            "soonest_weeks", "if each wait is short", r -> r.row().weeks().map(w -> w.low()))
        .maybeNumber("latest_weeks", "if each is long", r -> r.row().weeks().map(w -> w.high()))
        .flag("openEnded", "whether a wait may outlast the forecast", r -> r.row().openEnded())
        .texts("unpriced", "what has to be bought and has no price", r -> r.row().unpriced());
  }

  private static Facts<LeverRow> lever() {
    return new Facts<LeverRow>()
        .text("lever", "what is done", l -> l.lever().name())
        .text("on", "to the cover or the floor", l -> l.lever().on().word())
        .flag("feasible", "whether all can be met with it", l -> l.after().isFeasible())
        .texts("whyNot", "what cannot be met with it", l -> l.after().whyNot())
        .maybeNumber("savedMoney", "money saved", l -> l.saved(Measure.MONEY))
        .maybeNumber("savedHours_h", "person-hours saved", l -> l.saved(Measure.HOURS))
        .one("changes", "after less before, where it moves", moves(), l -> l)
        .text("price", "what it costs that no number shows", l -> l.lever().price());
  }

  private static Facts<LeverRow> moves() {
    Facts<LeverRow> facts = new Facts<>();
    for (Measure m : Measure.values()) {
      if (m != Measure.MONEY && m != Measure.HOURS) {
        facts.maybeNumber(m.key(), m.label(), l -> moved(l, m));
      }
    }
    return facts;
  }

  private static Optional<Double> moved(LeverRow row, Measure measure) {
    return Optional.of(measure)
        .filter(m -> row.elsewhere().contains(m))
        .flatMap(row::saved)
        .map(saved -> saved == 0 ? 0.0 : -saved);
  }
}
