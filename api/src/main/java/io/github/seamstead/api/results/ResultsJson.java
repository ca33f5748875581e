package io.github.seamstead.api.results;

import io.github.seamstead.api.Seamstead;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.SchemaHead;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.api.plan.Chapters;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import java.util.Map;

/**
 * Writes a plan as data: SI numbers with the unit in each key's name.
 *
 * <pre>{@code
 * Job job = JobReader.read(Path.of("jobs/class-model.json"));
 * String text = ResultsJson.text(JobPlanner.plan(job, PlanOptions.defaults()));
 * Results.parse(text).root().one("frame").one("measures").number("hipEdge_m"); // 0.371
 * }</pre>
 */
public final class ResultsJson {

  /** The name of the published schema in the jar, beside this class. */
  public static final String SCHEMA_RESOURCE = "results.schema.json";

  /** The name by which the schema is known; it does not change within a version. */
  public static final String SCHEMA_ID =
      "https://seamstead.github.io/schemas/results-1.schema.json";

  /** The version of the form of the results. */
  static final int VERSION = 1;

  private ResultsJson() {}

  /**
   * Writes the results.
   *
   * @param plan the plan
   * @return JSON text that follows the published schema
   */
  public static String text(JobPlan plan) {
    return JsonWriter.text(data(plan));
  }

  /**
   * Makes the JSON Schema (draft 2020-12) of the results.
   *
   * @return the schema as indented JSON text
   */
  public static String schemaText() {
    return SchemaHead.text(SCHEMA_ID, "Seamstead results, version " + VERSION, root());
  }

  static Map<String, Object> data(JobPlan plan) {
    return root().write(plan);
  }

  static Facts<JobPlan> root() {
    return new Facts<JobPlan>()
        .whole("seamsteadResults", "version of the form of the results", p -> VERSION)
        .text("schema", "the schema that they follow", p -> SCHEMA_ID)
        .text("library", "version of the library that wrote them", p -> Seamstead.version())
        .text(
            "jobDigest",
            "SHA-256 of the job as the library writes it: equal for equal jobs",
            p -> p.job().digest())
        .maybeText("job", "name of the job", p -> p.job().document().site().map(s -> s.name()))
        .whole("effort", "effort of the layout search", p -> p.options().effort())
        .text("seed", "seed of searches and simulations", p -> Long.toString(p.options().seed()))
        .maybe("changes", "what changed since the plan before", changes(), JobPlan::changes)
        .flatten(chapters(), JobPlan::parts)
        .many("notPlanned", "chapters left out, and why", notPlanned(), JobPlan::notPlanned)
        .many("unmet", "what cannot be met as stated", unmet(), JobPlan::unmet)
        .many("assumptions", "values that were assumed", assumption(), JobPlan::assumptions)
        .many("cautions", "cautions", caution(), JobPlan::cautions)
        .many("worked", "worked steps, if asked for", derivation(), JobPlan::derivations);
  }

  private static Facts<Parts> chapters() {
    Facts<Parts> facts = new Facts<>();
    Chapters.all().forEach(chapter -> chapter.facts(facts));
    return facts;
  }

  private static Facts<PlanChanges> changes() {
    return new Facts<PlanChanges>()
        .texts(
            "reasons",
            "what happened between the two plans",
            c -> c.reasons().stream().map(PlanChanges.Reason::text).toList())
        .many("changes", "each thing that differs", change(), PlanChanges::changes);
  }

  private static Facts<PlanChanges.Change> change() {
    return new Facts<PlanChanges.Change>()
        .text("kind", "what it is", c -> c.kind().word())
        .text("name", "which it is", PlanChanges.Change::name)
        .text("before", "as it was", PlanChanges.Change::before)
        .text("after", "as it is now", PlanChanges.Change::after)
        .flag("done", "whether it is cut, joined or laid", PlanChanges.Change::done)
        .texts("because", "what can have changed it", PlanChanges.Change::because);
  }

  private static Facts<NotPlanned> notPlanned() {
    return new Facts<NotPlanned>()
        .text("chapter", "the chapter", n -> n.chapter().word())
        .text("reason", "what is lacking", NotPlanned::reason);
  }

  private static Facts<Unmet> unmet() {
    return new Facts<Unmet>()
        .text("chapter", "the chapter", u -> u.chapter().word())
        .text("what", "what is missing", Unmet::what)
        .maybe("fault", "the value that it follows from, if a single one", fault(), Unmet::fault);
  }

  private static Facts<JobFault> fault() {
    return new Facts<JobFault>()
        .text("path", "where the value stands", JobFault::path)
        .whole("line", "its line in the text; 0 if it has none", JobFault::line)
        .text("given", "what is said there", JobFault::given)
        .text("allowed", "what must be said there", JobFault::allowed);
  }

  private static Facts<Assumption> assumption() {
    return new Facts<Assumption>()
        .text("path", "where the document could state the value", Assumption::path)
        .text("value", "the value taken, with its unit", Assumption::value)
        .text("ground", "why this value", Assumption::ground);
  }

  private static Facts<ChapterCaution> caution() {
    return new Facts<ChapterCaution>()
        .text("chapter", "the chapter", c -> c.chapter().word())
        .text("hazard", "what can hurt", c -> c.caution().hazard().label())
        .code("hazardCode", "the same as a code", Hazard.class, c -> c.caution().hazard())
        .text("risk", "what is at risk", c -> c.caution().risk())
        .text("limit", "the usual limit", c -> c.caution().limit())
        .maybeText("source", "the source", c -> c.caution().source().map(s -> s.citation()))
        .text("text", "what is at risk, and the usual limit", c -> c.caution().text());
  }

  private static Facts<Derivation> derivation() {
    return new Facts<Derivation>()
        .text("id", "the calculation", Derivation::id)
        .text("title", "what was calculated", Derivation::title)
        .many("steps", "the steps in the order in which they were done", step(), Derivation::steps);
  }

  private static Facts<Step> step() {
    return new Facts<Step>()
        .text("section", "the heading it stands under", Step::section)
        .text("symbol", "the symbol of the result", Step::symbol)
        .text("name", "the name of the result", Step::name)
        .maybeText("formula", "the right-hand side", s -> s.formula().map(f -> f.text()))
        .many("inputs", "the numbers that go in", input(), Step::inputs)
        .number("value", "the result in its unit", Step::value)
        .text("unit", "the unit of the result", Step::unit)
        .maybeText("source", "the source", s -> s.source().map(source -> source.citation()))
        .text("note", "a remark", Step::note);
  }

  private static Facts<Step.Input> input() {
    return new Facts<Step.Input>()
        .text("symbol", "the symbol in the formula", Step.Input::symbol)
        .number("value", "the number in its unit", Step.Input::value)
        .text("unit", "its unit", Step.Input::unit);
  }
}
