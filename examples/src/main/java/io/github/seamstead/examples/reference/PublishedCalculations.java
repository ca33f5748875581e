package io.github.seamstead.examples.reference;

import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.geometry.frame.RegularPolygon;
import io.github.seamstead.materials.soil.Stokes;
import io.github.seamstead.shared.derivation.Calculation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds the published calculations of the library in its classes. */
public final class PublishedCalculations {

  /** One class of each module that computes. */
  private static final List<Class<?>> MODULES =
      List.of(RegularPolygon.class, Stokes.class, HandledMass.class);

  private static final String CLASS = ".class";

  private PublishedCalculations() {}

  /**
   * Lists them.
   *
   * @return the name of the class that computes, by the calculation's id
   * @throws UncheckedIOException if the library's classes cannot be read
   */
  public static Map<String, String> all() {
    Map<String, String> all = new TreeMap<>();
    for (Class<?> module : MODULES) {
      try {
        Path place = Path.of(uri(module));
        if (Files.isDirectory(place)) {
          read(place, module, all);
        } else {
          try (FileSystem jar = FileSystems.newFileSystem(place)) {
            read(jar.getPath("/"), module, all);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException("the library's classes cannot be read", e);
      }
    }
    return all;
  }

  private static URI uri(Class<?> module) throws IOException {
    try {
      return module.getProtectionDomain().getCodeSource().getLocation().toURI();
    } catch (URISyntaxException e) {
      throw new IOException(e);
    }
  }

  private static void read(Path root, Class<?> module, Map<String, String> all) throws IOException {
    List<String> names;
    try (Stream<Path> files = Files.walk(root)) {
      names =
          files
              .map(file -> root.relativize(file).toString().replace('\\', '/'))
              .filter(name -> name.startsWith("io/github/seamstead/") && name.endsWith(CLASS))
              .map(name -> name.substring(0, name.length() - CLASS.length()).replace('/', '.'))
              .toList();
    }
    for (String name : names) {
      collect(name, module.getClassLoader(), all);
    }
  }

  private static void collect(String name, ClassLoader loader, Map<String, String> all)
      throws IOException {
    try {
      Class<?> type = Class.forName(name, false, loader);
      if (!Modifier.isPublic(type.getModifiers())) {
        return;
      }
      for (Method method : type.getDeclaredMethods()) {
        Calculation calculation = method.getAnnotation(Calculation.class);
        if (calculation != null && Modifier.isPublic(method.getModifiers())) {
          all.put(calculation.value(), type.getName());
        }
      }
    } catch (ClassNotFoundException e) {
      throw new IOException(e);
    }
  }
}
