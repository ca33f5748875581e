package io.github.seamstead.api;

/** What this release of the library is. */
public final class Seamstead {

  /** The version of the library, by the rules of semantic versions. */
  public static final String VERSION = "0.2.0-SNAPSHOT";

  private Seamstead() {}
}
