package io.github.seamstead.api.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The drafts beside a book's folder. A draft's name tells its folder and the process that writes
 * it, so that a later run can tidy up after one that was killed.
 */
final class Drafts {

  static final String OLD = "-old";

  private static final Duration DEAD = Duration.ofHours(1);
  private static final int LONGEST_NAME_BYTES = 100;
  private static final int MOST_DRAWS = 100;

  private Drafts() {}

  /** Makes a folder for a draft; unlike a temporary folder it is open to whom the umask admits. */
  static Path create(Path parent, Path target) throws IOException {
    IOException taken = new IOException("no name is free for a draft");
    for (int i = 0; i < MOST_DRAWS; i++) {
      String random = Integer.toHexString(ThreadLocalRandom.current().nextInt());
      Path draft = parent.resolve(prefix(target) + ProcessHandle.current().pid() + "-" + random);
      try {
        return Files.createDirectory(draft);
      } catch (FileAlreadyExistsException e) {
        // Another draft drew the same number: draw again.
        taken = e;
      }
    }
    throw taken;
  }

  private static String prefix(Path target) {
    String name = String.valueOf(target.getFileName());
    byte[] bytes = MadeFiles.bytes(name);
    // The name of a draft must not be too long where the name of the folder is just short enough.
    String shown =
        bytes.length > LONGEST_NAME_BYTES ? MadeFiles.hash(bytes).substring(0, 16) : name;
    return "." + shown + "-draft-";
  }

  /**
   * Tidies up after runs that were killed: puts an old book back whose replacement never came,
   * empties one whose replacement stands, and deletes drafts more than an hour old.
   */
  static void sweep(Path parent, Path target) throws IOException {
    Pattern form =
        Pattern.compile(Pattern.quote(prefix(target)) + "(\\d{1,18})-[0-9a-f]{1,8}(-old)?");
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(parent)) {
      for (Path entry : entries) {
        Matcher matcher = form.matcher(String.valueOf(entry.getFileName()));
        if (matcher.matches()
            && Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)
            && isDead(Long.parseLong(matcher.group(1)))) {
          found.add(entry);
        }
      }
    }
    for (Path entry : found) {
      if (entry.toString().endsWith(OLD)) {
        settle(entry, target);
      }
    }
    for (Path entry : found) {
      if (!entry.toString().endsWith(OLD) && isOld(entry)) {
        delete(entry);
      }
    }
  }

  private static boolean isDead(long process) {
    return process != ProcessHandle.current().pid()
        && ProcessHandle.of(process).filter(ProcessHandle::isAlive).isEmpty();
  }

  private static void settle(Path old, Path target) throws IOException {
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      Files.move(old, target);
      return;
    }
    var made = MadeFiles.of(old);
    if (made.isPresent()) {
      KeptFiles.discard(old, made.get(), target);
    }
  }

  /** By its newest file: a run that is still writing on another machine is not dead. */
  private static boolean isOld(Path draft) throws IOException {
    Instant limit = Instant.now().minus(DEAD);
    boolean[] old = {true};
    Files.walkFileTree(
        draft,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            old[0] &= attributes.lastModifiedTime().toInstant().isBefore(limit);
            return old[0] ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
          }
        });
    return old[0] && Files.isRegularFile(draft.resolve(BookFolder.MARK), LinkOption.NOFOLLOW_LINKS);
  }

  /** Deletes a draft with all in it: what it holds of a person's files is a second name or copy. */
  static void delete(Path folder) throws IOException {
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
