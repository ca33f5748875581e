package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;

/** A value of a JSON text with the line it stands on. */
sealed interface Json {

  /** The line in the text, counted from 1. */
  int line();

  /** The value as a fault quotes it, short. */
  String quoted();

  /** A member of an object, kept in order and kept when its key is repeated. */
  record Member(String key, int line, Json value) {}

  /** An object. */
  record Obj(int line, List<Member> members) implements Json {
    @Override
    public String quoted() {
      return members.isEmpty() ? "an empty object" : "an object";
    }
  }

  /** An array. */
  record Arr(int line, List<Json> items) implements Json {
    @Override
    public String quoted() {
      return items.isEmpty() ? "an empty list" : "a list of " + items.size();
    }
  }

  /** A string. */
  record Text(int line, String text) implements Json {
    private static final int LONGEST = 60;

    @Override
    public String quoted() {
      return '"' + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text) + '"';
    }
  }

  /** A number. */
  record Num(int line, double value) implements Json {
    @Override
    public String quoted() {
      return Numbers.exact(value);
    }
  }

  /** True or false. */
  record Flag(int line, boolean value) implements Json {
    @Override
    public String quoted() {
      return Boolean.toString(value);
    }
  }

  /** The JSON null. */
  record Nil(int line) implements Json {
    @Override
    public String quoted() {
      return "null";
    }
  }
}
