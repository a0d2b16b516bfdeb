package ridgeproof.gate;

import java.nio.file.Path;

/** A gate in a process of its own, to be killed from outside. */
final class GateProcess {

  private GateProcess() {}

  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    GateFolders folders =
        new GateFolders(folder.resolve("from"), folder.resolve("ready"), folder.resolve("hold"));
    GateExamination examination = HarborFiles.examination();
    try (Gate gate = Gate.open(folders, examination, HarborFiles.settings())) {
      System.out.println("open");
      System.out.flush();
      while (true) {
        gate.pass();
      }
    }
  }
}
