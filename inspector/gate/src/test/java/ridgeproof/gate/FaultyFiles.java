package ridgeproof.gate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Files on which everything goes well up to one step, and nothing after it. */
final class FaultyFiles extends GateFiles {

  /** The process ends here. */
  static final class Killed extends Error {

    private static final long serialVersionUID = 1L;

    Killed() {
      super("killed", null, false, false);
    }
  }

  /** What happens at that step. */
  enum Fault {
    KILLED_BEFORE,
    /** Of what is written, the first half is. */
    KILLED_WITHIN,
    KILLED_AFTER,
    /** Nothing can be written from then on; moves still work. */
    DISK_FULL
  }

  private final Fault fault;
  private final int at;
  private int steps;
  private boolean dead;

  /**
   * @param at the number of the step, from 0
   */
  FaultyFiles(Fault fault, int at) {
    this.fault = fault;
    this.at = at;
  }

  /** Whether that step was reached. */
  boolean reached() {
    return steps > at;
  }

  private interface Action<T> {
    T run() throws IOException;
  }

  private interface Half {
    void run() throws IOException;
  }

  private <T> T step(Action<T> action, Half half, boolean writes) throws IOException {
    if (dead) {
      throw new Killed();
    }
    int number = steps++;
    if (fault == Fault.DISK_FULL) {
      if (number >= at && writes) {
        half.run();
        throw new IOException("No space left on device");
      }
      return action.run();
    }
    if (number != at) {
      return action.run();
    }
    dead = true;
    if (fault == Fault.KILLED_WITHIN) {
      half.run();
    } else if (fault == Fault.KILLED_AFTER) {
      action.run();
    }
    throw new Killed();
  }

  private void act(Half action, Half half, boolean writes) throws IOException {
    step(
        () -> {
          action.run();
          return true;
        },
        half,
        writes);
  }

  private static byte[] halfOf(byte[] bytes) {
    return Arrays.copyOf(bytes, bytes.length / 2);
  }

  private static void nothing() {}

  @Override
  List<Path> list(Path folder) throws IOException {
    return step(() -> super.list(folder), FaultyFiles::nothing, false);
  }

  @Override
  Optional<Facts> facts(Path file) throws IOException {
    return step(() -> super.facts(file), FaultyFiles::nothing, false);
  }

  @Override
  byte[] read(Path file) throws IOException {
    return step(() -> super.read(file), FaultyFiles::nothing, false);
  }

  @Override
  String sha256(Path file) throws IOException {
    return step(() -> super.sha256(file), FaultyFiles::nothing, false);
  }

  @Override
  void makeFolder(Path folder) throws IOException {
    act(() -> super.makeFolder(folder), FaultyFiles::nothing, true);
  }

  @Override
  void write(Path file, byte[] bytes) throws IOException {
    act(() -> super.write(file, bytes), () -> super.write(file, halfOf(bytes)), true);
  }

  @Override
  void append(Path file, byte[] bytes) throws IOException {
    act(() -> super.append(file, bytes), () -> super.append(file, halfOf(bytes)), true);
  }

  @Override
  void move(Path from, Path to) throws IOException {
    act(() -> super.move(from, to), FaultyFiles::nothing, false);
  }

  @Override
  void delete(Path path) throws IOException {
    act(() -> super.delete(path), FaultyFiles::nothing, false);
  }
}
