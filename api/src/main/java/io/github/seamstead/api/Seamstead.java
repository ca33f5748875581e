package io.github.seamstead.api;

/** What this release of the library is. */
public final class Seamstead {

  private static final String VERSION = "0.2.1-SNAPSHOT";

  private Seamstead() {}

  /**
   * Names the release that runs. It is a method, since a constant would be copied into the classes
   * of whoever compiles against another release.
   *
   * @return the version, by the rules of semantic versions
   */
  public static String version() {
    return VERSION;
  }
}
