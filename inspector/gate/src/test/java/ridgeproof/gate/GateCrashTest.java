package ridgeproof.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.gate.FaultyFiles.Fault;
import ridgeproof.gate.FaultyFiles.Killed;

/** A gate that is ended at each of its steps, or for which the disk is full from one on. */
@Tag("slow")
class GateCrashTest {

  private static final byte[] NOTE = "tide table".getBytes(StandardCharsets.US_ASCII);
  private static final int MORE_STEPS_THAN_THERE_ARE = 2_000;

  @TempDir Path folder;

  private Harbor harbor(String name) throws IOException {
    Harbor harbor = new Harbor(folder.resolve(name));
    harbor.export("card.an2", HarborFiles.ready(1));
    harbor.export("copy-of-card.an2", HarborFiles.ready(1));
    harbor.export("wrong.an2", HarborFiles.held(2));
    harbor.export("report.html", NOTE);
    harbor.leave(harbor.ready.resolve("card.an2"), HarborFiles.ready(3));
    harbor.leave(harbor.hold.resolve("wrong.an2").resolve("wrong.an2"), HarborFiles.held(4));
    return harbor;
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void whateverIsKilledWhenEachFileEndsInOnePlaceAndIsSentOnce(Fault fault) throws IOException {
    int at = 0;
    for (boolean reached = true; reached; at++) {
      assertTrue(at < MORE_STEPS_THAN_THERE_ARE, "the gate never comes to an end");
      String when = fault + " at step " + at;
      Harbor harbor = harbor(fault + "-" + at);
      FaultyFiles files = new FaultyFiles(fault, at);
      passAndMaybeDie(harbor, files);
      reached = files.reached();
      harbor.assertEachInputIsInOnePlace(when);
      // The bureau does not wait until the gate is started again.
      harbor.collect();
      finish(harbor);
      harbor.collect();
      harbor.assertEachInputIsInOnePlace(when);
      assertEquals(List.of(), Harbor.filesBelow(harbor.from), when);
      assertEquals(List.of(), Harbor.filesBelow(harbor.hold.resolve(".gate/checking")), when);
      assertEquals(
          List.of(
                  GateExamination.sha256(HarborFiles.ready(1)),
                  GateExamination.sha256(HarborFiles.ready(3)))
              .stream()
              .sorted()
              .toList(),
          harbor.taken().stream().sorted().toList(),
          when);
      assertWhatIsHeldHasItsReport(harbor, when);
    }
    assertTrue(at > 20, "there are more steps than " + at);
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void whateverIsKilledWhenAReleasedFileIsSentOnce(Fault fault) throws IOException {
    int at = 0;
    for (boolean reached = true; reached; at++) {
      String when = fault + " at step " + at;
      Harbor harbor = new Harbor(folder.resolve("release-" + fault + "-" + at));
      harbor.export("wrong.an2", HarborFiles.held(1));
      finish(harbor);
      FaultyFiles files = new FaultyFiles(fault, at);
      HeldFiles held = new HeldFiles(harbor.folders(), HarborFiles.settings(), files);
      try {
        held.release("wrong.an2", HarborFiles.REASON, "Harbor Master");
      } catch (Killed | GateFailure e) {
        // The person tries again below, if the file is still held.
      }
      reached = files.reached();
      harbor.assertEachInputIsInOnePlace(when);
      harbor.collect();
      finish(harbor);
      HeldFiles again = HeldFiles.in(harbor.folders(), HarborFiles.settings());
      if (!again.list().isEmpty()) {
        again.release("wrong.an2", HarborFiles.REASON, "Harbor Master");
      }
      harbor.collect();
      finish(harbor);
      harbor.assertEachInputIsInOnePlace(when);
      assertEquals(List.of(GateExamination.sha256(HarborFiles.held(1))), harbor.taken(), when);
      assertFalse(Files.exists(harbor.hold.resolve("wrong.an2")), when);
    }
    assertTrue(at > 5, "there are more steps than " + at);
  }

  private static void passAndMaybeDie(Harbor harbor, FaultyFiles files) {
    try (Gate gate =
        Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings(), files)) {
      gate.pass();
    } catch (Killed e) {
      // The process is gone; the system closed what it had open.
    }
  }

  /** A gate on a sound disk does what is left. */
  private static void finish(Harbor harbor) {
    try (Gate gate =
        Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings())) {
      gate.pass();
      gate.pass();
    }
  }

  private static void assertWhatIsHeldHasItsReport(Harbor harbor, String when) throws IOException {
    List<HeldFile> held = HeldFiles.in(harbor.folders(), HarborFiles.settings()).list();
    assertEquals(
        new HashSet<>(List.of("copy-of-card.an2", "wrong.an2", "report.html")),
        new HashSet<>(held.stream().map(HeldFile::name).toList()),
        when);
    HeldFiles files = HeldFiles.in(harbor.folders(), HarborFiles.settings());
    for (HeldFile one : held) {
      assertTrue(files.report(one.entry()).orElseThrow().endsWith("</html>\n"), when);
    }
  }
}
