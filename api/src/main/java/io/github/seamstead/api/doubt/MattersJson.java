package io.github.seamstead.api.doubt;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.SchemaHead;
import io.github.seamstead.api.json.JsonWriter;

/** What matters most as data: SI numbers, weeks in weeks, units in the names of the numbers. */
public final class MattersJson {

  /** The name of the published schema in the jar, beside this class. */
  public static final String SCHEMA_RESOURCE = "matters.schema.json";

  /** The name by which the schema is known; it does not change within a version. */
  public static final String SCHEMA_ID =
      "https://seamstead.github.io/schemas/matters-1.schema.json";

  private static final int VERSION = 1;

  private MattersJson() {}

  /**
   * Writes what matters.
   *
   * @param matters what matters
   * @return JSON text that follows the published schema
   */
  public static String text(Matters matters) {
    return JsonWriter.text(root().write(matters));
  }

  /**
   * Makes the JSON Schema (draft 2020-12) of that text.
   *
   * @return the schema as indented JSON text
   */
  public static String schemaText() {
    return SchemaHead.text(SCHEMA_ID, "Seamstead doubts weighed, version " + VERSION, root());
  }

  private static Facts<Matters> root() {
    return new Facts<Matters>()
        .whole("seamsteadMatters", "version of the form of this text", m -> VERSION)
        .text("schema", "the schema that it follows", m -> SCHEMA_ID)
        .text("job", "name of the job", Matters::job)
        .whole("points", "points of each of the two samples", m -> m.options().points())
        .text("seed", "seed of the points", m -> Long.toString(m.options().seed()))
        .whole("runs", "how many plans were made", Matters::runs)
        .text("leftOut", "what is not run anew for each point", m -> MattersOptions.LEFT_OUT)
        .many("numbers", "the numbers that a doubt moves", number(), Matters::numbers)
        .texts("still", "what no doubt moves, or is not looked at, and why", Matters::still)
        .texts("advice", "what to do, from plans run with half a doubt", Advice::of);
  }

  private static Facts<NumberInDoubt> number() {
    return new Facts<NumberInDoubt>()
        .text("number", "which number, with its unit", n -> n.measure().key())
        .number("planned", "with all inputs as planned", NumberInDoubt::planned)
        .range("range", "5 %, middle and 95 % over all doubts", NumberInDoubt::range)
        .whole("points", "points that the indices come from", NumberInDoubt::points)
        .many("doubts", "each doubt, the greatest total first", influence(), n -> n.influences());
  }

  private static Facts<Influence> influence() {
    return new Facts<Influence>()
        .text("doubt", "what is doubtful", Influence::doubt)
        .text("spread", "how far it may be off", Influence::spread)
        .text("ground", "where that is stated or taken from", Influence::ground)
        .text("remedy", "what to do to know it better", Influence::remedy)
        .number("low", "least, if this doubt alone goes from its 5 to its 95 %", Influence::low)
        .number("high", "most, likewise", Influence::high)
        .flag("open", "whether towards an end the plan cannot be met", Influence::open)
        .uncertain("first", "part of the variance that it makes alone", i -> i.index().first())
        .uncertain("total", "part that it makes with others", i -> i.index().total())
        .maybe("halved", "the range with half this doubt, if tried", halved(), Influence::halved);
  }

  private static Facts<Influence.Halved> halved() {
    return new Facts<Influence.Halved>()
        .number("lowBefore", "5 % end with all doubts", Influence.Halved::lowBefore)
        .number("highBefore", "95 % end with all doubts", Influence.Halved::highBefore)
        .number("lowAfter", "5 % end with half this doubt", Influence.Halved::lowAfter)
        .number("highAfter", "95 % end with half this doubt", Influence.Halved::highAfter)
        .number(
            "narrowing", "the part of the range's width that goes", Influence.Halved::narrowing);
  }
}
