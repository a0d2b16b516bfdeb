package ridgeproof.gate;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.gate.Step.Decided;

/**
 * The files that a gate holds, and how a person lets one go. Works beside a running gate, also from
 * another process. What is asked for is looked up among what is held, and never used as a path.
 */
public final class HeldFiles {

  private static final String REPORT = "report.html";
  private static final String OTHER_REPORT = "report-2.html";
  private static final int MAX_BY = 100;

  private final GateFolders folders;
  private final GateSettings settings;
  private final GateFiles files;
  private final GateRecord record;
  private final GateLock lock;

  HeldFiles(GateFolders folders, GateSettings settings, GateFiles files) {
    this.folders = folders;
    this.settings = settings;
    this.files = files;
    this.record = new GateRecord(files, folders.record());
    this.lock = new GateLock(folders.lock());
  }

  /**
   * What is held in these folders.
   *
   * @throws GateFailure if the folders do not fit
   */
  public static HeldFiles in(GateFolders folders, GateSettings settings) {
    return new HeldFiles(folders.prepared(), settings, new GateFiles());
  }

  /** The name of the report beside a file of that name. */
  static String reportName(String name) {
    return name.toLowerCase(Locale.ROOT).equals(REPORT) ? OTHER_REPORT : REPORT;
  }

  /** The reasons for which a person may let a file go. */
  public List<String> reasons() {
    return settings.reasons();
  }

  /** What is held, by name. */
  public synchronized List<HeldFile> list() {
    try {
      Standing standing = Standing.of(record.steps());
      List<HeldFile> held = new ArrayList<>();
      for (Path folder : files.list(folders.hold())) {
        find(standing, folder.getFileName().toString()).ifPresent(held::add);
      }
      return List.copyOf(held);
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  private Optional<HeldFile> find(Standing standing, String entry) throws IOException {
    Optional<Decided> decided = standing.entry(entry);
    Optional<String> name = decided.map(Decided::id).flatMap(standing::name);
    if (name.isEmpty()
        || files.facts(folders.hold().resolve(entry).resolve(name.get())).isEmpty()) {
      return Optional.empty();
    }
    Decided made = decided.get();
    return Optional.of(new HeldFile(entry, name.get(), made.time(), made.verdict(), made.why()));
  }

  /** The report beside a file that is held, as a page. */
  public synchronized Optional<String> report(String entry) {
    try {
      for (HeldFile held : list()) {
        if (held.entry().equals(entry)) {
          Path report = folders.hold().resolve(held.entry()).resolve(reportName(held.name()));
          return Optional.of(new String(files.read(report), StandardCharsets.UTF_8));
        }
      }
      return Optional.empty();
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  private static GateFailure unreadable(IOException failure) {
    return new GateFailure("cannot read the --hold folder: " + failure.getMessage());
  }

  /**
   * Moves a held file on, as it is. No finding changes: the report goes to the released ones.
   *
   * @param entry the name of its folder
   * @param reason one of the agency's list
   * @param by the name of the person
   * @return its name in the folder of ready files
   * @throws GateFailure if it is not held, was changed, or reason or person are missing
   */
  public synchronized String release(String entry, String reason, String by) {
    if (settings.reasons().isEmpty()) {
      throw new GateFailure(
          "the agency's profile lists no release_reasons, so no file can be released");
    }
    if (!settings.reasons().contains(reason)) {
      throw new GateFailure("the reason is not in the agency's list");
    }
    String person = by.strip();
    if (person.isEmpty()
        || person.length() > MAX_BY
        || person.chars().anyMatch(Character::isISOControl)) {
      throw new GateFailure("the name of the person who releases the file is missing");
    }
    try {
      return lock.hold(() -> releaseHeld(entry, reason, person));
    } catch (IOException e) {
      throw new GateFailure("the file is still held: " + e.getMessage());
    }
  }

  private String releaseHeld(String entry, String reason, String by) throws IOException {
    Standing standing = Standing.of(record.steps());
    HeldFile held =
        list().stream()
            .filter(one -> one.entry().equals(entry))
            .findFirst()
            .orElseThrow(() -> new GateFailure("no file of that name is held"));
    Decided decided = standing.entry(entry).orElseThrow();
    Path file = folders.hold().resolve(held.entry()).resolve(held.name());
    if (!files.sha256(file).equals(decided.sha256())) {
      throw new GateFailure(
          "the file was changed after it was examined; move it to the --from folder to have it"
              + " examined again");
    }
    String as = FreeName.in(files, folders.ready(), held.name());
    record.add(new Step.Releasing(settings.clock().instant(), decided.id(), as, reason, by));
    files.move(file, folders.ready().resolve(as));
    files.move(folders.hold().resolve(entry), folders.released().resolve(decided.id()));
    return as;
  }

  /** Puts the reports of released files away where that was left undone. */
  void tidy() throws IOException {
    Standing standing = Standing.of(record.steps());
    for (Path folder : files.list(folders.hold())) {
      String entry = folder.getFileName().toString();
      Optional<Decided> decided = standing.entry(entry);
      if (decided.isPresent()
          && standing.isReleased(decided.get().id())
          && find(standing, entry).isEmpty()) {
        lock.hold(() -> files.move(folder, folders.released().resolve(decided.get().id())));
      }
    }
  }
}
