package ridgeproof.gate;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ridgeproof.gate.GateFiles.Facts;
import ridgeproof.gate.GatePassage.Outcome;

/**
 * A gate at work. A file goes from the station's folder into one of the gate's own, under a number;
 * then, once examined, on or into a folder with its report. Each of these is one atomic move, each
 * is in the record before it is done, and each look at the folders begins with what an earlier one
 * left behind.
 */
public final class Gate implements AutoCloseable {

  private static final String LARGE = "This file is larger than the limit (--max-file-size).";
  private static final String SENT_BEFORE =
      "A file with the same content was moved on before. Send it again only if the bureau asks"
          + " for it.";

  private final GateFolders folders;
  private final GateExamination examination;
  private final GateSettings settings;
  private final GateFiles files;
  private final GateRecord record;
  private final HeldFiles held;
  private final Settling settling;
  private final GateLock lock;
  private final FileChannel running;

  private Gate(
      GateFolders folders,
      GateExamination examination,
      GateSettings settings,
      GateFiles files,
      FileChannel running) {
    this.folders = folders;
    this.examination = examination;
    this.settings = settings;
    this.files = files;
    this.record = new GateRecord(files, folders.record());
    this.held = new HeldFiles(folders, settings, files);
    this.settling = new Settling(settings.settle());
    this.lock = new GateLock(folders.lock());
    this.running = running;
  }

  /**
   * Opens the gate over these folders, of which there is one at a time.
   *
   * @throws GateFailure if the folders do not fit or another gate is at work
   */
  public static Gate open(GateFolders folders, GateExamination examination, GateSettings settings) {
    return open(folders, examination, settings, new GateFiles());
  }

  static Gate open(
      GateFolders folders, GateExamination examination, GateSettings settings, GateFiles files) {
    GateFolders prepared = folders.prepared();
    return new Gate(prepared, examination, settings, files, alone(prepared.running()));
  }

  private static FileChannel alone(Path file) {
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock held = null;
      try {
        held = channel.tryLock();
      } catch (OverlappingFileLockException e) {
        // In this process, which is the same to whoever asks.
      }
      if (held == null) {
        channel.close();
        throw new GateFailure("another gate is at work on this --hold folder");
      }
      return channel;
    } catch (IOException e) {
      throw new GateFailure("cannot use the --hold folder: " + e.getMessage());
    }
  }

  /** The files that are held. */
  public HeldFiles held() {
    return held;
  }

  /** Looks at the folders once, and moves on or holds every file that is ready to be examined. */
  public List<GatePassage> pass() {
    List<GatePassage> done = new ArrayList<>();
    try {
      held.tidy();
      for (Path left : files.list(folders.checking())) {
        attempt(left.getFileName().toString(), done);
      }
      Set<String> seen = new HashSet<>();
      for (Path file : files.list(folders.from())) {
        String name = file.getFileName().toString();
        Optional<Facts> facts = isTemporary(name) ? Optional.empty() : files.facts(file);
        if (facts.isPresent()) {
          seen.add(name);
          if (settling.hasSettled(name, facts.get(), System.nanoTime())) {
            take(file, done);
          }
        }
      }
      files.list(folders.checking()).forEach(own -> seen.add(own.getFileName().toString()));
      settling.keep(seen);
    } catch (IOException e) {
      done.add(problem("", e));
    }
    return List.copyOf(done);
  }

  /** How programs name what they have not finished writing. */
  static boolean isTemporary(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.startsWith(".")
        || lower.endsWith("~")
        || lower.endsWith(".tmp")
        || lower.endsWith(".part")
        || lower.endsWith(".partial");
  }

  private void take(Path file, List<GatePassage> done) {
    String name = file.getFileName().toString();
    String id = UUID.randomUUID().toString();
    try {
      Path own = folders.checking().resolve(id);
      lock.hold(() -> record.add(new Step.Taking(settings.clock().instant(), id, name)));
      files.makeFolder(own);
      files.move(file, own.resolve(name));
      settling.rename(name, id);
    } catch (NoSuchFileException e) {
      // Somebody else took it away. The folder stays empty and is removed with the next look.
      settling.forget(name);
      return;
    } catch (IOException e) {
      done.add(problem(name, e));
      return;
    }
    attempt(id, done);
  }

  private void attempt(String id, List<GatePassage> done) {
    try {
      examine(id).ifPresent(done::add);
    } catch (IOException e) {
      done.add(problem(id, e));
    }
  }

  /** Examines what lies in a folder of the gate's own, unless it still grows. */
  private Optional<GatePassage> examine(String id) throws IOException {
    Path own = folders.checking().resolve(id);
    Optional<String> name = Standing.of(record.steps()).name(id);
    if (name.isEmpty()) {
      throw new IOException("not in the record; move the file back to the --from folder by hand");
    }
    Path file = own.resolve(name.get());
    Optional<Facts> facts = files.facts(file);
    if (facts.isEmpty()) {
      removeEmptied(own, name.get());
      return Optional.empty();
    }
    if (!settling.hasSettled(id, facts.get(), System.nanoTime())) {
      return Optional.empty();
    }
    boolean large = facts.get().bytes() > settings.maxFileBytes();
    Checked checked =
        large ? GateExamination.notChecked(LARGE) : examination.check(name.get(), files.read(file));
    String sha256 = files.sha256(file);
    return lock.hold(() -> decide(id, file, facts.get(), sha256, checked));
  }

  private Optional<GatePassage> decide(
      String id, Path file, Facts facts, String sha256, Checked checked) throws IOException {
    // Somebody may have written to it meanwhile: then it is another file than the one examined.
    if (!files.facts(file).equals(Optional.of(facts)) || !checked.isOf(sha256)) {
      settling.forget(id);
      return Optional.empty();
    }
    boolean again = checked.ready() && Standing.of(record.steps()).wasSent(sha256, id);
    return Optional.of(
        checked.ready() && !again
            ? moveOn(id, file, sha256, checked)
            : hold(id, file, sha256, checked, again ? SENT_BEFORE : ""));
  }

  private GatePassage moveOn(String id, Path file, String sha256, Checked checked)
      throws IOException {
    String name = file.getFileName().toString();
    String as = FreeName.in(files, folders.ready(), name);
    record.add(
        new Step.Decided(
            settings.clock().instant(), id, Standing.READY, as, sha256, checked.verdict(), ""));
    files.move(file, folders.ready().resolve(as));
    removeEmptied(file.getParent(), name);
    return new GatePassage(name, Outcome.READY, as, checked.verdict(), checked.step());
  }

  private GatePassage hold(String id, Path file, String sha256, Checked checked, String why)
      throws IOException {
    String name = file.getFileName().toString();
    Path own = file.getParent();
    files.write(
        own.resolve(HeldFiles.reportName(name)), checked.report().getBytes(StandardCharsets.UTF_8));
    String as = FreeName.in(files, folders.hold(), name);
    record.add(
        new Step.Decided(
            settings.clock().instant(), id, Standing.HOLD, as, sha256, checked.verdict(), why));
    files.move(own, folders.hold().resolve(as));
    return new GatePassage(
        name, Outcome.HOLD, as, checked.verdict(), why.isEmpty() ? checked.step() : why);
  }

  /**
   * A gate that was killed may have left its report behind; it is made again where it is needed.
   */
  private void removeEmptied(Path own, String name) throws IOException {
    files.delete(own.resolve(HeldFiles.reportName(name)));
    files.delete(own);
  }

  private static GatePassage problem(String name, IOException failure) {
    String words = failure.getMessage() == null ? "" : failure.getMessage();
    return new GatePassage(name, Outcome.PROBLEM, "", "", words);
  }

  @Override
  public void close() {
    try {
      running.close();
    } catch (IOException e) {
      // The lock ends with the process at the latest.
    }
  }
}
