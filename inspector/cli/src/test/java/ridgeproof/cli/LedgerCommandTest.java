package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** The commands of the ledger, from the first examination to the last forgotten entry. */
class LedgerCommandTest {

  private static final char FIELD = 0x1D;

  @TempDir Path folder;

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private String write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes).toString();
  }

  private CommandRun examine(String file) {
    return CommandRun.of("examine", "--ledger", path("ledger.db"), file);
  }

  /** An answer is a small transaction with a reference and perhaps a message. */
  private String answer(String name, String type, String reference, String message)
      throws IOException {
    String text = new String(SmallTransaction.numbered("BUREAU-1"), StandardCharsets.ISO_8859_1);
    String answer =
        text.replace("1.004:NAR", "1.004:" + type)
            .replace(FIELD + "1.011:", FIELD + "1.010:" + reference + FIELD + "1.011:")
            .replace(
                FIELD + "2.073:",
                message.isEmpty()
                    ? FIELD + "2.073:"
                    : FIELD + "2.060:" + message + FIELD + "2.073:");
    return write(name, answer.getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void eachExaminationIsAnEntry() throws IOException {
    String file = write("card.an2", SmallTransaction.numbered("PILOT-7"));
    int status = CommandRun.of("examine", file).status();
    assertEquals(status, examine(file).status());
    assertEquals(status, examine(file).status());
    CommandRun check = CommandRun.of("ledger", "check", path("ledger.db"));
    assertEquals("The ledger is sound: 2 entries.\n", check.out(), check.error());
    assertEquals(0, check.status());
  }

  @Test
  void theKeyAndTheLedgerAreForTheirOwnerAlone() throws IOException {
    examine(write("card.an2", SmallTransaction.bytes()));
    for (String file : List.of("ledger.db", "ledger.db.key")) {
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file))));
    }
    Files.setPosixFilePermissions(
        folder.resolve("ledger.db.key"), PosixFilePermissions.fromString("rw-r--r--"));
    CommandRun.of("ledger", "check", path("ledger.db"))
        .isOneLineOf(ExitStatus.INPUT_OUTPUT, "others may read the key file");
  }

  @Test
  void withoutItsKeyALedgerIsNotContinued() throws IOException {
    String file = write("card.an2", SmallTransaction.bytes());
    examine(file);
    Files.delete(folder.resolve("ledger.db.key"));
    CommandRun run = examine(file);
    assertEquals(ExitStatus.INPUT_OUTPUT, run.status());
    assertTrue(run.error().contains("the key file of the ledger is missing"), run.error());
    assertFalse(Files.exists(folder.resolve("ledger.db.key")));
  }

  @Test
  void aRejectionIsExplainedAndTiedToItsSubmission() throws IOException {
    examine(write("card.an2", SmallTransaction.numbered("PILOT-7")));
    String rejection =
        answer("r.an2", "ERRT", "PILOT-7", "L0008 QUALITY TOO LOW, FINGER 3 OF SPECIMEN");
    CommandRun run = CommandRun.of("ledger", "response", path("ledger.db"), rejection);
    assertEquals(2, run.status(), run.error());
    assertTrue(run.out().contains("The bureau rejected the submission."), run.out());
    assertTrue(run.out().contains("It answers the submission of 2026-03-02"), run.out());
    assertTrue(run.out().contains("Reason: L0008 Print quality is too low (right middle finger)."));
    assertTrue(run.out().contains("a miss"), run.out());
    String report = CommandRun.of("ledger", "report", path("ledger.db")).out();
    assertTrue(report.contains("1 submissions, 1 of them answered."), report);
    assertTrue(report.contains("L0008: Print quality is too low"), report);
  }

  @Test
  void aSubmissionIsNotTakenAsAResponse() throws IOException {
    String file = write("card.an2", SmallTransaction.numbered("PILOT-7"));
    examine(file);
    CommandRun run = CommandRun.of("ledger", "response", path("ledger.db"), file);
    run.isOneLineOf(3, "not a response to a submission");
  }

  @Test
  void anAnswerToWhatIsNotInTheLedgerSaysSo() throws IOException {
    examine(write("card.an2", SmallTransaction.numbered("PILOT-7")));
    String answer = answer("r.an2", "SRE", "PILOT-8", "");
    CommandRun run = CommandRun.of("ledger", "response", path("ledger.db"), answer);
    assertEquals(0, run.status(), run.error());
    assertTrue(run.out().contains("a control number that is not in the ledger"), run.out());
  }

  @Test
  void whatIsForgottenIsNoLongerInAnyFile() throws IOException {
    examine(write("card.an2", SmallTransaction.bytes()));
    String hash = CommandRun.of("ledger", "export", path("ledger.db")).out();
    String sha = hash.replaceAll("(?s).*\"file_sha256\":\"([0-9a-f]+)\".*", "$1");
    assertEquals(64, sha.length(), hash);
    CommandRun run = CommandRun.of("ledger", "forget", path("ledger.db"), "--before", "2026-03-03");
    assertEquals("Removed 1 entry before 2026-03-03.\n", run.out());
    assertEquals("", CommandRun.of("ledger", "export", path("ledger.db")).out());
    for (Map.Entry<String, String> file : files().entrySet()) {
      assertFalse(file.getValue().contains(sha), file.getKey());
    }
  }

  @Test
  void theControlNumberIsKeptInClearOnlyWhenAsked() throws IOException {
    String file = write("card.an2", SmallTransaction.numbered("PILOT-7319"));
    examine(file);
    assertFalse(CommandRun.of("ledger", "export", path("ledger.db")).out().contains("PILOT-7319"));
    CommandRun.of("examine", "--ledger", path("clear.db"), "--ledger-control-numbers", file);
    assertTrue(CommandRun.of("ledger", "export", path("clear.db")).out().contains("PILOT-7319"));
  }

  @Test
  void thePageRunsNoScriptAndLoadsNothing() throws IOException {
    examine(write("card.an2", SmallTransaction.bytes()));
    String page = CommandRun.of("ledger", "report", path("ledger.db"), "--format", "html").out();
    assertTrue(page.startsWith("<!DOCTYPE html>"), page);
    assertFalse(page.contains("<script"), page);
    assertFalse(page.contains("http:") || page.contains("https:"), page);
    assertFalse(page.contains(" style="), "the policy of the page forbids it");
  }

  @Test
  void aLedgerThatIsNotThereIsNotMadeByReadingIt() {
    CommandRun.of("ledger", "report", path("none.db"))
        .isOneLineOf(ExitStatus.INPUT_OUTPUT, "there is no ledger");
    assertFalse(Files.exists(folder.resolve("none.db")));
    assertFalse(Files.exists(folder.resolve("none.db.key")));
  }

  @Test
  void aDeskIsNotOpenedOverALedgerThatIsNotThere() {
    CommandRun.of("desk", "--no-browser", "--ledger", path("none.db"))
        .isOneLineOf(ExitStatus.INPUT_OUTPUT, "there is no ledger");
    assertFalse(Files.exists(folder.resolve("none.db")));
  }

  private Map<String, String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      Map<String, String> texts = new TreeMap<>();
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (!file.toString().endsWith(".an2")) {
          texts.put(file.toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
        }
      }
      return texts;
    }
  }

  /** Of all canaries, in every field of every type of record, only the stations' own are kept. */
  @Test
  void noValueOfAFileIsInTheLedgerButTheStation() throws IOException {
    SpecTables tables = ToldStories.TABLES;
    Set<String> allowed = new HashSet<>();
    Path inputs = Files.createDirectory(folder.resolve("in"));
    for (Map.Entry<String, byte[]> file : CanaryFiles.all(tables).entrySet()) {
      Files.write(inputs.resolve(file.getKey() + ".an2"), file.getValue());
      allowed.addAll(stations(file.getValue(), tables));
    }
    CommandRun run =
        CommandRun.of(
            "examine",
            "--depth",
            "images",
            "--operator-field",
            "2.037",
            "--ledger",
            path("ledger.db"),
            "--output",
            path("out.an2"),
            inputs.toString());
    assertTrue(run.status() <= 3, run.error());
    Map<String, String> texts = files();
    texts.put("export", CommandRun.of("ledger", "export", path("ledger.db")).out());
    texts.put("report", CommandRun.of("ledger", "report", path("ledger.db")).out());
    texts.put(
        "page", CommandRun.of("ledger", "report", path("ledger.db"), "--format", "html").out());
    assertTrue(texts.containsKey(path("ledger.db")), texts.keySet().toString());
    Set<String> kept = new TreeSet<>();
    texts.forEach(
        (name, text) ->
            Canaries.foundIn(text).stream()
                .filter(found -> !allowed.contains(found))
                .filter(found -> !isOfDigits(found) || isOutsideNumbers(found, text))
                .forEach(found -> kept.add(name + ": " + found)));
    assertEquals(Set.of(), kept);
  }

  private static boolean isOfDigits(String canary) {
    return canary.chars().allMatch(Character::isDigit);
  }

  /** Hashes and the random numbers of entries can hold any eight digits. */
  private static boolean isOutsideNumbers(String canary, String text) {
    return text.replaceAll("[0-9a-f]{17,}", " ").contains(canary);
  }

  private static Set<String> stations(byte[] bytes, SpecTables tables) {
    Transaction transaction =
        new TransactionReader(tables, ParseLimits.standard()).read(ByteSource.of(bytes));
    Set<String> stations = new HashSet<>();
    for (CaptureOrigin origin : tables.captureOrigins()) {
      if (origin.kind() == CaptureOrigin.Kind.STATION) {
        transaction.recordsOfType(origin.field().recordType()).stream()
            .flatMap(record -> record.field(origin.field()).stream())
            .flatMap(field -> field.subfields().stream())
            .flatMap(subfield -> subfield.items().stream())
            .forEach(item -> stations.addAll(Canaries.foundIn(item.text())));
      }
    }
    return stations;
  }
}
