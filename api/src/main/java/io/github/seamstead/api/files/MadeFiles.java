package io.github.seamstead.api.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of the files that a run made in a folder, each with the SHA-256 of its content. Only
 * what stands on this list with this very content is ever deleted: all else belongs to someone.
 */
final class MadeFiles {

  private static final String HEAD =
      "# A run made the files listed here, each with its SHA-256. The next run into this folder"
          + " replaces these and keeps all others.\n";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");
  private static final Pattern OUTSIDE =
      Pattern.compile("(^|/)\\.{0,2}(/|$)|\\\\|\u0000|^[A-Za-z]:");
  private static final long LARGEST_LIST = 4L * 1024 * 1024;

  private final SortedMap<String, String> hashes = new TreeMap<>();

  MadeFiles() {}

  /** Reads a folder's list; empty if it has none, or one of a form that proves nothing. */
  static Optional<MadeFiles> of(Path folder) throws IOException {
    Path mark = folder.resolve(BookFolder.MARK);
    if (!Files.isRegularFile(mark, LinkOption.NOFOLLOW_LINKS) || Files.size(mark) > LARGEST_LIST) {
      return Optional.empty();
    }
    MadeFiles made = new MadeFiles();
    try {
      for (String line : Files.readAllLines(mark)) {
        Matcher matcher = LINE.matcher(line);
        if (matcher.matches() && !OUTSIDE.matcher(matcher.group(2)).find()) {
          made.add(matcher.group(2), matcher.group(1));
        } else if (!line.startsWith("#")) {
          return Optional.empty();
        }
      }
    } catch (MalformedInputException e) {
      return Optional.empty();
    }
    return made.hashes.isEmpty() ? Optional.empty() : Optional.of(made);
  }

  void add(String name, String hash) {
    hashes.put(name, hash);
  }

  boolean has(String name) {
    return hashes.containsKey(name);
  }

  /** Tells whether a file of this name has the content that the run gave it. */
  boolean isAsMade(Path folder, String name) throws IOException {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && hash(file).equals(hashes.get(name));
  }

  /** The listed files that are there with another content; a deleted one is no loss. */
  List<String> edited(Path folder) throws IOException {
    List<String> edited = new ArrayList<>();
    for (String name : hashes.keySet()) {
      if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)
          && !isAsMade(folder, name)) {
        edited.add(name);
      }
    }
    return edited;
  }

  /** The list as the mark file holds it, in the form of the sum programs of most systems. */
  String text() {
    StringBuilder text = new StringBuilder(HEAD);
    for (Map.Entry<String, String> entry : hashes.entrySet()) {
      text.append(entry.getValue()).append("  ").append(entry.getKey()).append('\n');
    }
    return text.toString();
  }

  static String hash(byte[] content) {
    return HexFormat.of().formatHex(sha256().digest(content));
  }

  private static String hash(Path file) throws IOException {
    MessageDigest digest = sha256();
    byte[] buffer = new byte[64 * 1024];
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        digest.update(buffer, 0, read);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** The texts of an empty draft: a list without files. */
  static String begun() {
    return new MadeFiles().text();
  }

  /** Lists names for a message, the first few. */
  static String few(List<String> names) {
    int shown = Math.min(3, names.size());
    String first = String.join(", ", names.subList(0, shown));
    return names.size() > shown ? first + " and " + (names.size() - shown) + " more" : first;
  }

  /** A path below a folder with {@code /} between names on every system. */
  static String name(Path folder, Path file) {
    return folder.relativize(file).toString().replace(java.io.File.separatorChar, '/');
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
