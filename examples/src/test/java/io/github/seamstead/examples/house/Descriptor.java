package io.github.seamstead.examples.house;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a module opens, as its descriptor says.
 *
 * @param toAll packages exported to all
 * @param toOwn packages exported to modules of the house alone, with the names of these modules
 */
record Descriptor(Set<String> toAll, Map<String, Set<String>> toOwn) {

  private static final Pattern EXPORTS =
      Pattern.compile("exports\\s+([\\w.]+)(?:\\s+to\\s+([\\w.,\\s]+))?;");

  /** Reads the descriptors of all modules that have one, by the short name of the module. */
  static Map<String, Descriptor> all() throws IOException {
    Map<String, Descriptor> all = new TreeMap<>();
    for (String module : Set.of("shared", "geometry", "materials", "assembly", "api")) {
      all.put(module, read(Path.of("..", module, "src/main/module/module-info.java")));
    }
    return all;
  }

  private static Descriptor read(Path file) throws IOException {
    Descriptor descriptor = new Descriptor(new TreeSet<>(), new TreeMap<>());
    Matcher exports = EXPORTS.matcher(Files.readString(file));
    while (exports.find()) {
      if (exports.group(2) == null) {
        descriptor.toAll.add(exports.group(1));
      } else {
        Set<String> names = new TreeSet<>();
        Arrays.stream(exports.group(2).split(","))
            .map(name -> name.strip().substring(House.ROOT.length()))
            .forEach(names::add);
        descriptor.toOwn.put(exports.group(1), names);
      }
    }
    return descriptor;
  }

  /** Whether another module of the house sees a package. */
  boolean isSeenBy(String module, String packageName) {
    return toAll.contains(packageName)
        || toOwn.getOrDefault(packageName, Set.of()).contains(module);
  }
}
