package ridgeproof.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.desk.web.DeskSettings;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.gate.FolderWatch;
import ridgeproof.gate.Gate;
import ridgeproof.gate.GateExamination;
import ridgeproof.gate.GateFolders;
import ridgeproof.gate.GateSettings;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.report.ToolFacts;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;

/** A desk as the command line opens it, and files of the invented pilots' office to drop on it. */
final class DeskRun implements AutoCloseable {

  static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  private static final SpecTables TABLES = SpecTables.open();
  private static final Map<String, byte[]> STORIES = new ConcurrentHashMap<>();

  private final Desk desk;

  private DeskRun(Desk desk) {
    this.desk = desk;
  }

  static DeskRun open() {
    return open(settings -> {});
  }

  /** What a test can set otherwise than it usually is. */
  static final class Settings {
    Duration keep = Duration.ofMinutes(60);
    Supplier<ExaminationOptions> options = DeskRun::options;
    FolderWatch watch;
    Gate gate;
    Supplier<Optional<StationHealth>> ledger;

    private DeskSettings whole() {
      return new DeskSettings(
          0,
          keep,
          64L * 1024 * 1024,
          new Examiner(TABLES, ParseLimits.standard()),
          options,
          new ImageExtraction(TABLES, DecodingLimits.standard()),
          TABLES,
          Optional.ofNullable(watch),
          Optional.ofNullable(gate),
          Optional.ofNullable(ledger),
          () -> new Deidentifier(new Examiner(TABLES, ParseLimits.standard()), options()),
          new ToolFacts("0.1", "17", "harbor"),
          Clock.systemUTC());
    }
  }

  static DeskRun open(Consumer<Settings> change) {
    Settings settings = new Settings();
    change.accept(settings);
    try {
      Desk desk = Desk.open(settings.whole());
      Thread whenStopped = new Thread(() -> closeWhenStopped(desk));
      whenStopped.setDaemon(true);
      whenStopped.start();
      return new DeskRun(desk);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void closeWhenStopped(Desk desk) {
    try {
      desk.awaitStop();
      desk.close();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static ExaminationOptions options() {
    return ExaminationOptions.standard().withToday(TODAY).withPlaten(true);
  }

  /** A gate over three folders in that one, whose agency gives one reason to release a file. */
  static Gate gate(Path folder, String reason) {
    try {
      GateFolders folders =
          new GateFolders(
              Files.createDirectories(folder.resolve("from")),
              folder.resolve("ready"),
              folder.resolve("hold"));
      return Gate.open(
          folders,
          new GateExamination(new Examiner(TABLES, ParseLimits.standard()), DeskRun::options),
          new GateSettings(Duration.ZERO, 10_000_000, List.of(reason), Clock.systemUTC()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Desk desk() {
    return desk;
  }

  /** What lets a browser in. */
  String address() {
    return desk.address();
  }

  /** What every address begins with. */
  String base() {
    return address().replaceAll("/enter.*", "");
  }

  /** The bytes of a story of the demonstration set. */
  static byte[] story(String name) {
    return STORIES.computeIfAbsent(
        name,
        key ->
            new TransactionComposer(new SubjectCache())
                .compose(DemonstrationSet.scenario(key))
                .bytes());
  }

  /** A story as a file in that folder. */
  static Path story(Path folder, String name) {
    return file(folder, name + ".an2", story(name));
  }

  static Path file(Path folder, String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    desk.close();
  }
}
