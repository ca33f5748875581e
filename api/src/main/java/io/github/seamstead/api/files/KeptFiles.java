package io.github.seamstead.api.files;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What people have put into a book's folder: it is carried into the new folder before that takes
 * the old one's place, and the old one loses only what is proved to be elsewhere.
 */
final class KeptFiles {

  private KeptFiles() {}

  /**
   * Gives a draft every file and folder of the old book that the run did not make, by a second name
   * for the same file where the file system has such, else by a copy.
   *
   * @return the names that the draft holds already, so that they cannot be carried
   */
  static List<String> carry(Path from, MadeFiles made, Path to) throws IOException {
    List<String> clashes = new ArrayList<>();
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes)
              throws IOException {
            Path twin = to.resolve(from.relativize(folder).toString());
            if (Files.isDirectory(twin, LinkOption.NOFOLLOW_LINKS)) {
              return FileVisitResult.CONTINUE;
            }
            if (Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
              clashes.add(MadeFiles.name(from, folder));
              return FileVisitResult.SKIP_SUBTREE;
            }
            if (holdsOtherThan(folder, from, made)) {
              Files.copy(folder, twin, StandardCopyOption.COPY_ATTRIBUTES);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            String name = MadeFiles.name(from, file);
            if (name.equals(BookFolder.MARK) || made.has(name)) {
              return FileVisitResult.CONTINUE;
            }
            Path twin = to.resolve(from.relativize(file).toString());
            if (Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
              clashes.add(name);
            } else {
              second(file, attributes, twin);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return clashes;
  }

  /** A folder that holds made files alone goes with them; an empty one is someone's. */
  private static boolean holdsOtherThan(Path folder, Path from, MadeFiles made) throws IOException {
    boolean empty = true;
    try (var entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        empty = false;
        if (!made.has(MadeFiles.name(from, entry))) {
          return true;
        }
      }
    }
    return empty;
  }

  private static void second(Path file, BasicFileAttributes attributes, Path twin)
      throws IOException {
    if (attributes.isRegularFile()) {
      try {
        Files.createLink(twin, file);
        return;
      } catch (UnsupportedOperationException | FileSystemException e) {
        // Not every file system has second names; a copy does as well.
        Files.deleteIfExists(twin);
      }
    } else if (!attributes.isSymbolicLink()) {
      throw new FileSystemException(
          file.toString(), null, "is neither a file nor a folder and cannot be kept");
    }
    Files.copy(file, twin, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Empties a folder that a new one has replaced: deletes what the run made and what the new folder
   * has too, moves over what it lacks, and leaves the rest.
   */
  static void discard(Path old, MadeFiles made, Path replacement) throws IOException {
    Files.walkFileTree(
        old,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            String name = MadeFiles.name(old, file);
            Path twin = replacement.resolve(old.relativize(file).toString());
            if (name.equals(BookFolder.MARK)
                || (made.has(name) && made.isAsMade(old, name))
                || isSame(file, attributes, twin)) {
              Files.delete(file);
            } else if (!Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
              Path parent = twin.getParent();
              if (parent != null) {
                Files.createDirectories(parent);
              }
              Files.move(file, twin);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            try {
              Files.delete(folder);
            } catch (DirectoryNotEmptyException e) {
              // What could not be moved over stays where it is.
              return FileVisitResult.CONTINUE;
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static boolean isSame(Path file, BasicFileAttributes attributes, Path twin)
      throws IOException {
    if (!Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    if (attributes.isSymbolicLink() || Files.isSymbolicLink(twin)) {
      return attributes.isSymbolicLink()
          && Files.isSymbolicLink(twin)
          && Files.readSymbolicLink(file).equals(Files.readSymbolicLink(twin));
    }
    return attributes.isRegularFile()
        && Files.isRegularFile(twin)
        && (Files.isSameFile(file, twin) || Files.mismatch(file, twin) < 0);
  }
}
