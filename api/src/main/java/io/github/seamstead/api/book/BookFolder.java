package io.github.seamstead.api.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A folder that appears whole or not at all. Files go into a draft beside it; {@link #publish()}
 * moves the draft into place.
 */
public final class BookFolder implements AutoCloseable {

  /** The file that marks a folder as made by a run, and so as replaceable. */
  public static final String MARK = ".made-by-seamstead";

  private static final String MARK_TEXT =
      "An earlier run made this folder. The next run with the same --out replaces it.\n";

  private final Path target;
  private final Path draft;
  private boolean published;

  private BookFolder(Path target, Path draft) {
    this.target = target;
    this.draft = draft;
  }

  /**
   * Tells why a folder cannot be written, without writing anything.
   *
   * @param folder the folder asked for
   * @return what is wrong and what to do; empty if it can be written
   */
  public static Optional<String> refusal(Path folder) {
    Path target = folder.toAbsolutePath().normalize();
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      if (!Files.isDirectory(target)) {
        return Optional.of(
            "given " + folder + ", a file; must be a folder that does not exist yet");
      }
      if (!Files.exists(target.resolve(MARK)) && !isEmpty(target)) {
        return Optional.of(
            "given "
                + folder
                + ", a folder that no earlier run made; must be a new folder, an empty one, or one"
                + " that a run made");
      }
    }
    Path above = target.getParent();
    while (above != null && !Files.exists(above)) {
      above = above.getParent();
    }
    if (above == null || !Files.isDirectory(above) || !Files.isWritable(above)) {
      return Optional.of(
          "given " + folder + ", where nothing can be written; must be in a writable folder");
    }
    return Optional.empty();
  }

  /**
   * Opens a draft beside the folder asked for.
   *
   * @param folder the folder asked for
   * @return the draft
   * @throws IOException if the draft cannot be made
   * @throws IllegalArgumentException if the folder is refused, as {@link #refusal(Path)} tells
   */
  public static BookFolder draft(Path folder) throws IOException {
    Optional<String> refusal = refusal(folder);
    if (refusal.isPresent()) {
      throw new IllegalArgumentException("output folder: " + refusal.get());
    }
    Path target = folder.toAbsolutePath().normalize();
    Path parent = target.getParent();
    if (parent == null) {
      throw new IllegalArgumentException(
          "output folder: given the root, must be a folder below it");
    }
    Files.createDirectories(parent);
    Path draft = Files.createTempDirectory(parent, "." + target.getFileName() + "-draft");
    BookFolder book = new BookFolder(target, draft);
    book.write(MARK, MARK_TEXT);
    return book;
  }

  /**
   * Writes a text file into the draft.
   *
   * @param name its path below the folder, with {@code /} between names
   * @param text its content, written as UTF-8
   * @throws IOException if it cannot be written
   */
  public void write(String name, String text) throws IOException {
    Path file = draft.resolve(name);
    Path parent = file.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Moves the draft into place. A folder that an earlier run made is moved aside first and deleted
   * when the new one stands.
   *
   * @throws IOException if it cannot be moved; the earlier folder then stands as it was
   */
  public void publish() throws IOException {
    Path aside = draft.resolveSibling(draft.getFileName() + "-old");
    boolean replaces = Files.exists(target);
    if (replaces) {
      Files.move(target, aside);
    }
    try {
      Files.move(draft, target);
    } catch (IOException e) {
      if (replaces) {
        Files.move(aside, target);
      }
      throw e;
    }
    published = true;
    if (replaces) {
      delete(aside);
    }
  }

  /**
   * Deletes the draft if it was not published.
   *
   * @throws IOException if it cannot be deleted
   */
  @Override
  public void close() throws IOException {
    if (!published) {
      delete(draft);
    }
  }

  private static boolean isEmpty(Path folder) {
    try (var entries = Files.newDirectoryStream(folder)) {
      return !entries.iterator().hasNext();
    } catch (IOException e) {
      return false;
    }
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(visited);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
