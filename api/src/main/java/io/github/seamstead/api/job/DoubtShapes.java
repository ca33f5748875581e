package io.github.seamstead.api.job;

import java.util.Optional;

/** The shape of a stated doubt. */
final class DoubtShapes {

  private DoubtShapes() {}

  static Shape<ValueDoubt> valueDoubt() {
    Shape<ValueDoubt> s =
        Shape.of(
            ValueDoubt.class,
            "how far a value of the job may be off: a standard uncertainty, or its ends");
    Key<String> of =
        s.required(
            "of",
            Kinds.text(),
            "where the value stands, such as site.designWind or floor.layers[3].thickness");
    Key<String> standard =
        s.optional(
            "standard",
            Kinds.text(),
            "its standard uncertainty, with a unit of the value's kind, such as 2 m/s");
    Key<String> low = s.optional("low", Kinds.text(), "the least that it may be, beside high");
    Key<String> high =
        s.optional(
            "high",
            Kinds.text(),
            "the most that it may be; on each side of the value all is as likely");
    s.rule(
        (v, faults) -> {
          boolean ends = v.has(low) && v.has(high);
          if (ends == v.has(standard) || v.has(low) != v.has(high)) {
            Optional<String> named = v.find(of);
            faults.note(
                "",
                (v.has(standard) ? "standard beside an end" : "no whole doubt")
                    + named.map(name -> " of " + name).orElse(""),
                "must state standard, or both low and high");
          }
        });
    return s.makes(v -> new ValueDoubt(v.get(of), v.find(standard), v.find(low), v.find(high)));
  }
}
