package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** The shapes of the variants document. */
final class VariantsShapes {

  private static final int MOST_VARIATIONS = 12;
  private static final int MOST_CHANGES = 100;

  /** What is varied, as the document writes it: one path with values, or named choices. */
  record Written(
      Optional<String> name,
      Optional<String> path,
      List<JobValue> values,
      List<String> names,
      List<Alternative> choices) {

    Variation variation() {
      if (path.isEmpty()) {
        return new Variation(name.orElse("choice"), choices);
      }
      String at = path.get();
      List<Alternative> made = new ArrayList<>();
      for (int i = 0; i < values.size(); i++) {
        JobValue value = values.get(i);
        String called = names.isEmpty() ? value.shown() : names.get(i);
        String shown = called.isBlank() ? "(blank)" : called;
        made.add(new Alternative(shown, List.of(new JobChange(at, value))));
      }
      return new Variation(name.orElse(at.substring(at.lastIndexOf('.') + 1)), made);
    }
  }

  /** The document as it is written, before its paths are looked up in a job. */
  record Document(
      int seamstead,
      Optional<String> note,
      List<Written> vary,
      Combine combine,
      List<Alternative> list) {

    VariantsDocument variants() {
      return new VariantsDocument(
          seamstead, note, vary.stream().map(Written::variation).toList(), combine, list);
    }
  }

  /** What is looked up in the job once a part of the document was read without a fault. */
  interface Check {

    /** Checks nothing, as for the schema. */
    Check NONE = new Check() {};

    /** Checks a path with its values. */
    default void values(String at, String path, List<JobValue> values) {}

    /** Checks the values of a named way. */
    default void set(String at, List<JobChange> set) {}
  }

  /** A kind whose values are checked where they stand. */
  private record Checked<T>(Kind<T> kind, BiConsumer<String, T> check) implements Kind<T> {

    @Override
    public List<Kind<?>> parts() {
      return List.of(kind);
    }

    @Override
    public @Nullable T read(Json value, String path, Walk walk) {
      T read = kind.read(value, path, walk);
      if (read != null) {
        check.accept(path, read);
      }
      return read;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return kind.write(value, path, assumed);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return kind.schema(definitions);
    }
  }

  private VariantsShapes() {}

  private static Shape<JobChange> change() {
    Shape<JobChange> s = Shape.of(JobChange.class, "a value in the place of another");
    Key<String> path =
        s.required("path", Kinds.text(), "where the value stands in the job document");
    Key<JobValue> value =
        s.required("value", Kinds.any(), "the value; null to leave it out of the job");
    return s.makes(v -> new JobChange(v.get(path), v.get(value)));
  }

  private static Kind<Alternative> alternative(Check check) {
    Shape<Alternative> s = Shape.of(Alternative.class, "one way to state some values of the job");
    Key<String> name = s.required("name", Kinds.text(), "what it is called in tables");
    Key<List<JobChange>> set =
        s.or(
            "set",
            Kinds.list(change(), 1, MOST_CHANGES),
            "the values; the job as it is written if left out",
            List.of());
    Shape<Alternative> whole = s.makes(v -> new Alternative(v.get(name), v.get(set)));
    return new Checked<>(whole, (at, read) -> check.set(at + ".set", read.set()));
  }

  private static Kind<Written> written(Check check) {
    Shape<Written> s = Shape.of(Written.class, "something that is tried in several ways");
    Key<String> name = s.optional("name", Kinds.text(), "what is varied, as tables head it");
    Key<String> path =
        s.optional("path", Kinds.text(), "where the values stand in the job document");
    Key<List<JobValue>> values =
        s.or(
            "values",
            Kinds.list(Kinds.any(), 1, VariantsDocument.MOST_VARIANTS),
            "the values that are tried; null to leave it out of the job",
            List.of());
    Key<List<String>> names =
        s.or(
            "names",
            Kinds.list(Kinds.text(), 1, VariantsDocument.MOST_VARIANTS),
            "what each value is called in tables; the value itself if left out",
            List.of());
    Key<List<Alternative>> choices =
        s.or(
            "choices",
            Kinds.list(alternative(check), 1, VariantsDocument.MOST_VARIANTS),
            "named ways, each with its values; instead of path and values",
            List.of());
    s.rule(
        (v, faults) -> {
          boolean byPath = v.has(path) && v.has(values);
          if (byPath == v.has(choices) || v.has(path) != v.has(values)) {
            faults.note(
                "",
                v.has(choices) ? "choices beside path or values" : "no whole variation",
                "must state path with values, or name with choices");
          }
          if (v.has(names) && v.get(names).size() != v.get(values).size()) {
            faults.note(
                "names",
                "a list of " + v.get(names).size(),
                "must have a name for each of the " + v.get(values).size() + " values");
          }
        });
    Shape<Written> whole =
        s.makes(
            v ->
                new Written(
                    v.find(name), v.find(path), v.get(values), v.get(names), v.get(choices)));
    return new Checked<>(
        whole, (at, read) -> read.path().ifPresent(p -> check.values(at, p, read.values())));
  }

  static Shape<Document> document(Check check) {
    Shape<Document> s =
        Shape.of(Document.class, "what of a job is tried in other ways, to compare the plans");
    Key<Integer> seamstead =
        s.required("seamstead", Kinds.count(1, 1), "version of the form of the document; always 1");
    Key<String> note = s.optional("note", Kinds.text(), "a remark for the page");
    Key<List<Written>> vary =
        s.or(
            "vary",
            Kinds.list(written(check), 1, MOST_VARIATIONS),
            "what is varied, each in several ways",
            List.of());
    Key<Combine> combine =
        s.or(
            "combine",
            Kinds.choice(Combine.class, Combine::word),
            "every: each choice with each of the others; single: one choice at a time, all else as"
                + " the job is written; every if left out",
            Combine.EVERY);
    Key<List<Alternative>> list =
        s.or(
            "list",
            Kinds.list(alternative(check), 1, VariantsDocument.MOST_VARIANTS),
            "variants by name, instead of vary",
            List.of());
    s.rule(
        (v, faults) -> {
          if (v.has(vary) == v.has(list)) {
            faults.note(
                v.has(vary) ? "list" : "vary",
                v.has(vary) ? "a list beside vary" : "nothing to vary",
                "must state one of: vary, list");
          }
        });
    return s.makes(
        v ->
            new Document(v.get(seamstead), v.find(note), v.get(vary), v.get(combine), v.get(list)));
  }
}
