package io.github.seamstead.examples.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The classes of the house, read once, and the lists of exceptions with their reasons. */
final class House {

  static final String ROOT = "io.github.seamstead.";

  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("-tests.jar"))
          .importPackages("io.github.seamstead");

  /** What each module exports. */
  static final Map<String, Descriptor> DESCRIPTORS = descriptors();

  private static final Pattern MODULE = Pattern.compile("io\\.github\\.seamstead\\.([a-z]+)\\..*");

  private House() {}

  private static Map<String, Descriptor> descriptors() {
    try {
      return Descriptor.all();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether outside teams can name the type: public with all around it, exported to all. */
  static boolean isPublished(JavaClass type) {
    Descriptor descriptor = DESCRIPTORS.get(module(type));
    return descriptor != null
        && descriptor.toAll().contains(type.getPackageName())
        && isOpenWithAllAround(type);
  }

  private static boolean isOpenWithAllAround(JavaClass type) {
    return isOpen(type.getModifiers())
        && !type.isAnonymousClass()
        && type.getEnclosingClass().map(House::isOpenWithAllAround).orElse(true);
  }

  static boolean isOpen(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }

  static String module(JavaClass type) {
    Matcher matcher = MODULE.matcher(type.getName());
    return matcher.matches() ? matcher.group(1) : "";
  }

  /** The outermost class around a class. */
  static JavaClass outermost(JavaClass type) {
    JavaClass outer = type;
    while (outer.getEnclosingClass().isPresent()) {
      outer = outer.getEnclosingClass().get();
    }
    return outer;
  }

  /** Reads a list of exceptions, one on a line: what, a colon, the reason. */
  static Map<String, String> exceptions(String name) throws IOException {
    Map<String, String> exceptions = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/house", name))) {
      int colon = line.indexOf(": ");
      if (!line.isBlank() && !line.startsWith("#")) {
        if (colon < 1 || line.substring(colon + 2).isBlank()) {
          throw new IllegalArgumentException(name + ": no reason given in \"" + line + "\"");
        }
        exceptions.put(line.substring(0, colon), line.substring(colon + 2));
      }
    }
    return exceptions;
  }
}
