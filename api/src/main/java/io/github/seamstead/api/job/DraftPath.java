package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A place in a job document: keys with dots between them, items of lists in brackets by their
 * number from 0 or by their id.
 *
 * @param steps keys as they are, items with their opening bracket
 */
record DraftPath(List<String> steps) {

  static final String FORM =
      "must be keys with dots between them and items of lists in brackets, such as"
          + " frame.measures.height or floor.layers[3].thickness";

  private static final Pattern STEP =
      Pattern.compile("\\.?([A-Za-z]+)|\\[([A-Za-z0-9][A-Za-z0-9._-]*)\\]");
  private static final String ITEM = "[";

  static Optional<DraftPath> parse(String text) {
    String rest = text.startsWith("$.") ? text.substring(2) : text;
    List<String> steps = new ArrayList<>();
    Matcher step = STEP.matcher(rest);
    int at = 0;
    while (at < rest.length()) {
      boolean dotted = rest.charAt(at) == '.';
      if (!step.find(at) || step.start() != at || (dotted == steps.isEmpty() && !isItem(step))) {
        return Optional.empty();
      }
      steps.add(isItem(step) ? ITEM + step.group(2) : step.group(1));
      at = step.end();
    }
    return steps.isEmpty() ? Optional.empty() : Optional.of(new DraftPath(List.copyOf(steps)));
  }

  private static boolean isItem(Matcher step) {
    return step.group(1) == null;
  }

  /** The kind of value that could stand one step on. */
  static Optional<Kind<?>> next(Kind<?> kind, String step) {
    return step.startsWith(ITEM) ? kind.item() : kind.under(step);
  }

  /** The kind of value that could stand here, in a document of a kind. */
  Optional<Kind<?>> kindIn(Kind<?> document) {
    Optional<Kind<?>> kind = Optional.of(document);
    for (String step : steps) {
      kind = kind.flatMap(k -> next(k, step));
    }
    return kind;
  }

  /** Whether the other place is this one, lies in it, or holds it. */
  boolean overlaps(DraftPath other) {
    int common = Math.min(steps.size(), other.steps.size());
    return steps.subList(0, common).equals(other.steps.subList(0, common));
  }

  /** The tree with a value put here; null if an item is not there. */
  @Nullable Json put(Json tree, Json value) {
    return put(tree, 0, value);
  }

  private @Nullable Json put(@Nullable Json at, int step, Json value) {
    if (step == steps.size()) {
      return unlined(value);
    }
    String name = steps.get(step);
    if (name.startsWith(ITEM)) {
      return at instanceof Json.Arr list ? putItem(list, name.substring(1), step, value) : null;
    }
    Json.Obj object = at instanceof Json.Obj o ? o : new Json.Obj(0, List.of());
    List<Json.Member> members = new ArrayList<>(object.members());
    int place = -1;
    for (int i = 0; i < members.size(); i++) {
      if (members.get(i).key().equals(name)) {
        place = i;
      }
    }
    boolean last = step == steps.size() - 1;
    if (last && value instanceof Json.Nil) {
      if (place >= 0) {
        members.remove(place);
      }
      return new Json.Obj(object.line(), members);
    }
    Json put = put(place < 0 ? null : members.get(place).value(), step + 1, value);
    if (put == null) {
      return null;
    }
    if (place < 0) {
      members.add(new Json.Member(name, 0, put));
    } else {
      members.set(place, new Json.Member(name, members.get(place).line(), put));
    }
    return new Json.Obj(object.line(), members);
  }

  private @Nullable Json putItem(Json.Arr list, String item, int step, Json value) {
    int index = index(list, item);
    if (index < 0) {
      return null;
    }
    List<Json> items = new ArrayList<>(list.items());
    if (step == steps.size() - 1 && value instanceof Json.Nil) {
      items.remove(index);
      return new Json.Arr(list.line(), items);
    }
    Json put = put(items.get(index), step + 1, value);
    if (put == null) {
      return null;
    }
    items.set(index, put);
    return new Json.Arr(list.line(), items);
  }

  /** The place of an item by its id, else by its number; -1 if it is not there. */
  private static int index(Json.Arr list, String item) {
    for (int i = 0; i < list.items().size(); i++) {
      if (list.items().get(i) instanceof Json.Obj object
          && object.members().stream()
              .anyMatch(
                  m ->
                      m.key().equals("id")
                          && m.value() instanceof Json.Text id
                          && id.text().equals(item))) {
        return i;
      }
    }
    boolean number = item.matches("[0-9]{1,6}");
    int index = number ? Integer.parseInt(item) : -1;
    return index < list.items().size() ? index : -1;
  }

  /** A value of another text has no line in this one. */
  private static Json unlined(Json value) {
    if (value instanceof Json.Obj object) {
      return new Json.Obj(
          0,
          object.members().stream()
              .map(m -> new Json.Member(m.key(), 0, unlined(m.value())))
              .toList());
    }
    if (value instanceof Json.Arr list) {
      return new Json.Arr(0, list.items().stream().map(DraftPath::unlined).toList());
    }
    if (value instanceof Json.Text text) {
      return new Json.Text(0, text.text());
    }
    if (value instanceof Json.Num number) {
      return new Json.Num(0, number.value());
    }
    return value instanceof Json.Flag flag ? new Json.Flag(0, flag.value()) : new Json.Nil(0);
  }

  /** What stands here in a tree; null if nothing does. */
  @Nullable Json find(Json tree) {
    Json at = tree;
    for (String step : steps) {
      at = next(at, step);
      if (at == null) {
        return null;
      }
    }
    return at;
  }

  private static @Nullable Json next(Json at, String step) {
    if (step.startsWith(ITEM)) {
      if (!(at instanceof Json.Arr list)) {
        return null;
      }
      int index = index(list, step.substring(1));
      return index < 0 ? null : list.items().get(index);
    }
    if (at instanceof Json.Obj object) {
      for (Json.Member member : object.members()) {
        if (member.key().equals(step)) {
          return member.value();
        }
      }
    }
    return null;
  }

  /** The same place with every item called by its number. */
  DraftPath numbered(Json tree) {
    List<String> numbered = new ArrayList<>();
    Json at = tree;
    for (String step : steps) {
      boolean item = step.startsWith(ITEM) && at instanceof Json.Arr;
      numbered.add(item ? ITEM + index((Json.Arr) at, step.substring(1)) : step);
      Json next = at == null ? null : next(at, step);
      at = next == null ? new Json.Nil(0) : next;
    }
    return new DraftPath(List.copyOf(numbered));
  }

  /** The place in one form, however it was written. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (String step : steps) {
      text.append(text.isEmpty() || step.startsWith(ITEM) ? "" : ".").append(step);
      text.append(step.startsWith(ITEM) ? "]" : "");
    }
    return text.toString();
  }
}
