package ridgeproof.desk;

/** A desk in a process of its own, to be killed from outside. */
final class DeskProcess {

  private DeskProcess() {}

  public static void main(String[] arguments) throws InterruptedException {
    try (DeskRun run = DeskRun.open()) {
      System.out.println(run.address());
      System.out.flush();
      run.desk().awaitStop();
    }
  }
}
