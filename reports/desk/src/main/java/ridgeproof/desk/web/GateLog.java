package ridgeproof.desk.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import ridgeproof.gate.GatePassage;

/** The last files that went through the gate since the desk was opened. */
final class GateLog {

  private static final int MAX_SHOWN = 20;

  private final Deque<GatePassage> passages = new ArrayDeque<>();

  synchronized void add(GatePassage passage) {
    // A file that cannot be moved is tried every second, and told once.
    passages.removeIf(
        earlier ->
            earlier.outcome() == GatePassage.Outcome.PROBLEM
                && earlier.name().equals(passage.name()));
    passages.addFirst(passage);
    while (passages.size() > MAX_SHOWN) {
      passages.removeLast();
    }
  }

  /** The latest first. */
  synchronized List<GatePassage> latest() {
    return new ArrayList<>(passages);
  }
}
