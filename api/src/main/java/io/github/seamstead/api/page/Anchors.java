package io.github.seamstead.api.page;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names for files and anchors out of names in any script: lower case Latin letters, digits and
 * hyphens alone, at most {@value #LONGEST} characters, each given out once. So they stay apart on
 * file systems that take capitals for small letters, too. Not thread-safe.
 */
public final class Anchors {

  /**
   * The most characters of a name; with a folder before and an ending after, all systems take it.
   */
  public static final int LONGEST = 60;

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
  private static final Pattern ENDS = Pattern.compile("^-|-$");

  /** Names that some systems keep for devices. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

  private static final String NAMELESS = "unnamed";

  private final Set<String> taken = new HashSet<>();

  /** Starts with no name given out. */
  public Anchors() {}

  /**
   * Gives a name that was not given out before.
   *
   * @param name what it is for, in any script
   * @return the plain form of the name; with a number behind if that was given out before
   */
  public String unique(String name) {
    String plain = plain(name);
    String anchor = plain;
    for (int i = 2; !taken.add(anchor); i++) {
      String number = "-" + i;
      anchor = cut(plain, LONGEST - number.length()) + number;
    }
    return anchor;
  }

  /**
   * Gives the plain form of a name, which may be that of other names as well.
   *
   * @param name a name in any script
   * @return lower case Latin letters, digits and hyphens, 1 to 60 of them
   */
  public static String plain(String name) {
    String bare = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll("");
    String plain = OTHERS.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("-");
    plain = cut(ENDS.matcher(plain).replaceAll(""), LONGEST);
    if (plain.isEmpty()) {
      return NAMELESS;
    }
    return DEVICE.matcher(plain).matches() ? plain + "-" : plain;
  }

  private static String cut(String plain, int length) {
    return plain.length() <= length ? plain : plain.substring(0, length).replaceFirst("-$", "");
  }
}
