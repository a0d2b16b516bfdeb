package ridgeproof.gate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.gate.GatePassage.Outcome;

class GateTest {

  private static final String PERSON = "Harbor Master";

  @TempDir Path folder;
  private Harbor harbor;

  @BeforeEach
  void openHarbor() throws IOException {
    harbor = new Harbor(folder);
  }

  private Gate gate() {
    return gate(HarborFiles.settings());
  }

  private Gate gate(GateSettings settings) {
    return Gate.open(harbor.folders(), HarborFiles.examination(), settings);
  }

  private HeldFiles held() {
    return HeldFiles.in(harbor.folders(), HarborFiles.settings());
  }

  @Test
  void whatIsReadyIsMovedOnAndAnythingElseIsHeldWithItsReport() throws IOException {
    harbor.export("good.an2", HarborFiles.ready(1));
    harbor.export("wrong.an2", HarborFiles.held(2));
    harbor.export("diary.txt", "tide table".getBytes(StandardCharsets.US_ASCII));
    try (Gate gate = gate()) {
      List<GatePassage> passages = gate.pass();
      assertEquals(
          List.of("diary.txt HOLD UNREADABLE", "good.an2 READY READY", "wrong.an2 HOLD HOLD"),
          passages.stream()
              .map(one -> one.name() + " " + one.outcome() + " " + one.verdict())
              .toList());
      assertArrayEquals(HarborFiles.ready(1), Files.readAllBytes(harbor.ready.resolve("good.an2")));
      Path wrong = harbor.hold.resolve("wrong.an2");
      assertArrayEquals(HarborFiles.held(2), Files.readAllBytes(wrong.resolve("wrong.an2")));
      String report = Files.readString(wrong.resolve("report.html"));
      assertTrue(report.contains("Date of birth"), report);
      assertFalse(report.contains("SPECIMEN"), "biographic data is masked");
    }
    harbor.assertEachInputIsInOnePlace("at the end");
  }

  @Test
  void aFileThatStillGrowsIsLeftAlone() throws Exception {
    byte[] whole = HarborFiles.ready(1);
    Path file = harbor.from.resolve("card.an2");
    try (Gate gate = gate(HarborFiles.settings(Duration.ofMillis(400)))) {
      for (int written = 0; written < whole.length; written += 60_000) {
        int count = Math.min(60_000, whole.length - written);
        try (var out =
            Files.newOutputStream(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
          out.write(whole, written, count);
        }
        assertEquals(List.of(), gate.pass());
      }
      List<GatePassage> done = List.of();
      for (int i = 0; i < 200 && done.isEmpty(); i++) {
        Thread.sleep(50);
        done = gate.pass();
      }
      assertEquals(Outcome.READY, done.get(0).outcome());
      assertArrayEquals(whole, Files.readAllBytes(harbor.ready.resolve("card.an2")));
    }
  }

  @Test
  void aFileThatGrowsWhileItIsExaminedIsExaminedAgain() throws IOException {
    harbor.export("card.an2", HarborFiles.ready(1));
    GateFiles growing =
        new GateFiles() {
          private boolean grown;

          @Override
          byte[] read(Path file) throws IOException {
            byte[] bytes = super.read(file);
            if (!grown && file.endsWith("card.an2")) {
              grown = true;
              Files.write(
                  file, "more".getBytes(StandardCharsets.US_ASCII), StandardOpenOption.APPEND);
            }
            return bytes;
          }
        };
    try (Gate gate =
        Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings(), growing)) {
      assertEquals(List.of(), gate.pass());
      GatePassage second = gate.pass().get(0);
      assertEquals(Outcome.HOLD, second.outcome());
      assertEquals(
          HarborFiles.ready(1).length + 4,
          Files.size(harbor.hold.resolve("card.an2").resolve("card.an2")));
    }
  }

  @Test
  void whatProgramsHaveNotFinishedWritingIsLeftAlone() throws IOException {
    for (String name : List.of(".card.an2", "card.an2.part", "card.an2.tmp", "card.an2~")) {
      harbor.export(name, HarborFiles.ready(1));
    }
    Files.createDirectories(harbor.from.resolve("folder"));
    Files.createSymbolicLink(harbor.from.resolve("link.an2"), harbor.from.resolve(".card.an2"));
    try (Gate gate = gate()) {
      assertEquals(List.of(), gate.pass());
    }
  }

  @Test
  void theSameNameTwiceKeepsBothFiles() throws IOException {
    try (Gate gate = gate()) {
      for (int number : new int[] {1, 2, 3}) {
        harbor.export("card.an2", HarborFiles.ready(number));
        harbor.export("wrong.an2", HarborFiles.held(number));
        gate.pass();
      }
    }
    harbor.assertEachInputIsInOnePlace("at the end");
    assertEquals(
        List.of("card-2.an2", "card-3.an2", "card.an2"),
        Harbor.filesBelow(harbor.ready).stream()
            .map(file -> file.getFileName().toString())
            .toList());
    assertEquals(
        List.of("wrong-2.an2", "wrong-3.an2", "wrong.an2"),
        held().list().stream().map(HeldFile::entry).toList());
  }

  @Test
  void theSameContentIsMovedOnOnce() throws IOException {
    try (Gate gate = gate()) {
      harbor.export("card.an2", HarborFiles.ready(1));
      gate.pass();
      harbor.collect();
      harbor.export("card-again.an2", HarborFiles.ready(1));
      GatePassage again = gate.pass().get(0);
      assertEquals(Outcome.HOLD, again.outcome());
      assertTrue(again.step().contains("moved on before"), again.step());
    }
    try (Gate later = gate()) {
      harbor.export("card-once-more.an2", HarborFiles.ready(1));
      assertEquals(Outcome.HOLD, later.pass().get(0).outcome());
    }
  }

  @Test
  void aHeldFileIsReleasedByAPersonWithAReasonOfTheList() throws IOException {
    harbor.export("wrong.an2", HarborFiles.held(1));
    try (Gate gate = gate()) {
      gate.pass();
      String reportBefore = gate.held().report("wrong.an2").orElseThrow();
      for (String[] wrong :
          new String[][] {
            {"wrong.an2", "because", PERSON},
            {"wrong.an2", HarborFiles.REASON, " "},
            {"other.an2", HarborFiles.REASON, PERSON},
            {"../from", HarborFiles.REASON, PERSON},
            {".gate", HarborFiles.REASON, PERSON},
          }) {
        assertThrows(
            GateFailure.class, () -> gate.held().release(wrong[0], wrong[1], wrong[2]), wrong[0]);
      }
      assertEquals("wrong.an2", gate.held().release("wrong.an2", HarborFiles.REASON, PERSON));
      assertEquals(List.of(), gate.held().list());
      assertEquals(List.of(), gate.pass());
      Path kept = Harbor.filesBelow(harbor.hold.resolve(".gate/released")).get(0);
      assertEquals(reportBefore, Files.readString(kept), "no finding changes");
    }
    assertArrayEquals(HarborFiles.held(1), Files.readAllBytes(harbor.ready.resolve("wrong.an2")));
    String last =
        Files.readAllLines(harbor.folders().record()).stream()
            .reduce((one, next) -> next)
            .orElseThrow();
    assertTrue(
        last.contains("\"step\":\"releasing\"")
            && last.contains("\"reason\":\"" + HarborFiles.REASON + "\"")
            && last.contains("\"by\":\"" + PERSON + "\""),
        last);
  }

  @Test
  void aHeldFileThatSomebodyChangedIsNotReleased() throws IOException {
    harbor.export("wrong.an2", HarborFiles.held(1));
    try (Gate gate = gate()) {
      gate.pass();
      Files.write(harbor.hold.resolve("wrong.an2/wrong.an2"), HarborFiles.held(2));
      GateFailure refused =
          assertThrows(
              GateFailure.class,
              () -> gate.held().release("wrong.an2", HarborFiles.REASON, PERSON));
      assertTrue(refused.getMessage().contains("changed"), refused.getMessage());
      assertEquals(1, gate.held().list().size());
    }
  }

  @Test
  void withoutAListOfReasonsNothingIsReleased() throws IOException {
    harbor.export("wrong.an2", HarborFiles.held(1));
    GateSettings none = new GateSettings(Duration.ZERO, 1_000_000, List.of(), Clock.systemUTC());
    try (Gate gate = gate(none)) {
      gate.pass();
      assertThrows(
          GateFailure.class, () -> gate.held().release("wrong.an2", HarborFiles.REASON, PERSON));
    }
  }

  @Test
  void aFileBeyondTheLimitIsHeldWithoutBeingRead() throws IOException {
    harbor.export("large.an2", new byte[1_000_001]);
    try (Gate gate = gate()) {
      GatePassage large = gate.pass().get(0);
      assertEquals(Outcome.HOLD, large.outcome());
      assertEquals("NOT CHECKED", large.verdict());
    }
    harbor.assertEachInputIsInOnePlace("at the end");
  }

  @Test
  void thereIsOneGateForTheSameFolders() {
    try (Gate gate = gate()) {
      assertThrows(GateFailure.class, this::gate);
    }
    gate().close();
  }

  @Test
  void theThreeFoldersAreThree() {
    GateFolders same = new GateFolders(harbor.from, harbor.from, harbor.hold);
    assertThrows(
        GateFailure.class,
        () -> Gate.open(same, HarborFiles.examination(), HarborFiles.settings()));
  }
}
