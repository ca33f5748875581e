package io.github.seamstead.api.files;

import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A folder that appears whole or not at all. Files go into a draft beside it; {@link #publish()}
 * moves the draft into place.
 *
 * <p>A book that an earlier run made is replaced file by file: what that run made goes, by its list
 * in the file {@link #MARK}, and all else in the folder is kept and stands in the new one. A made
 * file that someone edited since stops the run. A link is followed: the folder it leads to is
 * written.
 */
public final class BookFolder implements AutoCloseable {

  /** The file that lists what a run made in a folder, each with the SHA-256 of its content. */
  public static final String MARK = ".made-by-seamstead";

  private final Path folder;
  private final Path target;
  private final Path parent;
  private final Path draft;
  private final MadeFiles made = new MadeFiles();
  private final Set<String> taken = new HashSet<>();
  private boolean published;

  private BookFolder(Path folder, Path target, Path parent, Path draft) {
    this.folder = folder;
    this.target = target;
    this.parent = parent;
    this.draft = draft;
  }

  /**
   * Tells why a folder cannot be written, without writing anything.
   *
   * @param folder the folder asked for
   * @param inputs files that the run reads, none of which may lie in the folder
   * @return what is wrong and what to do; empty if it can be written
   */
  public static Optional<String> refusal(Path folder, Path... inputs) {
    try {
      return why(folder, inputs);
    } catch (IOException e) {
      return Optional.of(
          "given " + folder + ", which cannot be looked at (" + IoReason.of(e) + ")");
    }
  }

  private static Optional<String> why(Path folder, Path... inputs) throws IOException {
    if (folder.toString().isEmpty()) {
      return Optional.of("given an empty name, must name a folder");
    }
    if (Files.isSymbolicLink(folder) && !Files.exists(folder)) {
      return Optional.of("given " + folder + ", a link that leads nowhere; must lead to a folder");
    }
    Path target = resolved(folder);
    if (target.getParent() == null) {
      return Optional.of("given the root, must be a folder below it");
    }
    if (resolved(Path.of("")).startsWith(target)) {
      return Optional.of(
          "given " + folder + ", in which this program was started; must be a folder of its own");
    }
    for (Path input : inputs) {
      if (liesIn(input, target)) {
        return Optional.of(
            "given "
                + folder
                + ", in which "
                + input
                + " lies, which this run reads; must be"
                + " another folder");
      }
    }
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      Optional<String> held = content(folder, target);
      if (held.isPresent()) {
        return held;
      }
    }
    return place(folder, target);
  }

  /** Why a folder that is there cannot be replaced. */
  private static Optional<String> content(Path folder, Path target) throws IOException {
    if (!Files.isDirectory(target)) {
      return Optional.of("given " + folder + ", a file; must be a folder that does not exist yet");
    }
    Optional<MadeFiles> made = MadeFiles.of(target);
    if (made.isPresent()) {
      List<String> edited = made.get().edited(target);
      return edited.isEmpty()
          ? Optional.empty()
          : Optional.of(
              "given "
                  + folder
                  + ", in which "
                  + MadeFiles.few(edited)
                  + " was edited since a run made it; move that file elsewhere, or name another"
                  + " folder");
    }
    if (isEmpty(target)) {
      return Optional.empty();
    }
    return Optional.of(
        Files.exists(target.resolve(MARK), LinkOption.NOFOLLOW_LINKS)
            ? "given "
                + folder
                + ", which does not say which of its files a run made; move it elsewhere, or name"
                + " another folder"
            : "given "
                + folder
                + ", a folder that no earlier run made; must be a new folder, an empty one, or one"
                + " that a run made");
  }

  private static Optional<String> place(Path folder, Path target) {
    Path above = target.getParent();
    while (above != null && !Files.exists(above)) {
      above = above.getParent();
    }
    return above == null || !Files.isDirectory(above) || !Files.isWritable(above)
        ? Optional.of(
            "given " + folder + ", where nothing can be written; must be in a writable folder")
        : Optional.empty();
  }

  /** The path with every link followed, as far as it exists. */
  private static boolean liesIn(Path input, Path target) throws IOException {
    try {
      return resolved(input).startsWith(target);
    } catch (NoSuchFileException e) {
      // The name of a pipe, such as the standard input's, leads to no place in a folder.
      return false;
    }
  }

  private static Path resolved(Path path) throws IOException {
    Path whole = path.toAbsolutePath();
    Path there = whole;
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    return there == null
        ? whole.normalize()
        : there.toRealPath().resolve(there.relativize(whole)).normalize();
  }

  /**
   * Opens a draft beside the folder asked for, and tidies up what killed runs left there.
   *
   * @param folder the folder asked for
   * @return the draft
   * @throws IOException if the draft cannot be made
   * @throws ArgumentFault if the folder is refused, as {@link #refusal(Path, Path...)} tells
   */
  public static BookFolder draft(Path folder) throws IOException {
    Optional<String> refusal = refusal(folder);
    if (refusal.isPresent()) {
      throw refused(refusal.get());
    }
    Path target = resolved(folder);
    Path parent = target.getParent();
    if (parent == null) {
      throw new IllegalStateException("a folder without one above it was refused before");
    }
    Files.createDirectories(parent);
    Drafts.sweep(parent, target);
    // An old book that was put back may be one that cannot be replaced.
    refusal = refusal(folder);
    if (refusal.isPresent()) {
      throw refused(refusal.get());
    }
    Path draft = Drafts.create(parent, target);
    BookFolder book = new BookFolder(folder, target, parent, draft);
    try {
      book.put(MARK, MadeFiles.bytes(MadeFiles.begun()));
    } catch (IOException e) {
      Drafts.delete(draft);
      throw e;
    }
    return book;
  }

  private static ArgumentFault refused(String why) {
    return ArgumentFault.finding("output folder: " + why);
  }

  /**
   * Writes a text file into the draft.
   *
   * @param name its path below the folder, with {@code /} between names
   * @param text its content, written as UTF-8
   * @throws IOException if it cannot be written
   * @throws IllegalStateException if a file of that name was written before, in whatever case of
   *     its letters
   */
  public void write(String name, String text) throws IOException {
    if (!taken.add(name.toLowerCase(Locale.ROOT))) {
      throw new IllegalStateException("the book has two files of the name " + name);
    }
    byte[] content = MadeFiles.bytes(text);
    put(name, content);
    made.add(name, MadeFiles.hash(content));
  }

  /** Writes a file through to the disk, so that no switch can leave an empty one behind. */
  private void put(String name, byte[] content) throws IOException {
    Path file = draft.resolve(name);
    Path parent = file.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer buffer = ByteBuffer.wrap(content);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  /**
   * Moves the draft into place. A folder that an earlier run made is moved aside first; of it the
   * files are deleted that the run made, and all others stand in the new folder.
   *
   * @throws IOException if it cannot be moved; the earlier folder then stands as it was
   * @throws ArgumentFault if a file that no run made has the name of one that must be written, or
   *     the folder was changed since the draft was opened so that it is refused now
   */
  public void publish() throws IOException {
    put(MARK, MadeFiles.bytes(made.text()));
    Optional<String> refusal = refusal(folder);
    if (refusal.isPresent()) {
      throw refused(refusal.get());
    }
    boolean replaces = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
    MadeFiles before = replaces ? MadeFiles.of(target).orElseGet(MadeFiles::new) : new MadeFiles();
    if (replaces) {
      List<String> clashes = KeptFiles.carry(target, before, draft);
      if (!clashes.isEmpty()) {
        throw refused(
            "given "
                + folder
                + ", in which no run made "
                + MadeFiles.few(clashes)
                + "; move it elsewhere: this run must write there");
      }
    }
    syncFolders();
    exchange(replaces, before);
  }

  private void exchange(boolean replaces, MadeFiles before) throws IOException {
    Path aside = draft.resolveSibling(draft.getFileName() + Drafts.OLD);
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
    sync(parent);
    if (replaces) {
      try {
        KeptFiles.discard(aside, before, target);
      } catch (IOException e) {
        // The new book stands whole; what is left of the old one is taken up by the next run.
        return;
      }
    }
  }

  private void syncFolders() throws IOException {
    try (var files = Files.walk(draft)) {
      for (Path entry : new TreeSet<>(files.filter(Files::isDirectory).toList())) {
        sync(entry);
      }
    }
  }

  private static void sync(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Not every system lets a folder be opened; its entries are then the system's own care.
      return;
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
      Drafts.delete(draft);
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (var entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        if (!entry.endsWith(MARK)) {
          return false;
        }
      }
      return true;
    }
  }
}
