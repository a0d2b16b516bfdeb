package ridgeproof.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A gate whose process is killed without a word, again and again, while the bureau takes files. */
class GateKillTest {

  private static final int FILES = 30;
  private static final int KILLS = 6;

  @TempDir Path folder;

  @Test
  void nothingIsLostOrSentTwice() throws Exception {
    Harbor harbor = new Harbor(folder);
    for (int i = 0; i < FILES; i++) {
      harbor.export("card" + i + ".an2", i % 3 == 0 ? HarborFiles.held(i) : HarborFiles.ready(i));
    }
    Random moments = new Random(18);
    for (int i = 0; i < KILLS; i++) {
      runAndKill(moments.nextInt(250));
      harbor.assertEachInputIsInOnePlace("after kill " + i);
      harbor.collect();
    }
    try (Gate gate =
        Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings())) {
      gate.pass();
    }
    harbor.collect();
    harbor.assertEachInputIsInOnePlace("at the end");
    assertEquals(List.of(), Harbor.filesBelow(harbor.from));
    assertEquals(FILES - FILES / 3, harbor.taken().size());
    assertEquals(harbor.taken().size(), harbor.taken().stream().distinct().count());
  }

  private void runAndKill(int afterMillis) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                GateProcess.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    BufferedReader output = process.inputReader();
    assertTrue("open".equals(output.readLine()), "the gate did not open");
    Thread.sleep(afterMillis);
    process.destroyForcibly().waitFor();
  }
}
