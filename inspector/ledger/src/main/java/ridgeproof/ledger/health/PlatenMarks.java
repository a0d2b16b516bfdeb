package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import ridgeproof.imagery.platen.CellBox;
import ridgeproof.imagery.platen.PlatenFacts;
import ridgeproof.ledger.PlatenNote;

/** Spots and dead lines of one station, for each size of image by itself. */
final class PlatenMarks {

  /** A mark that was not seen with the last people is gone. */
  private static final int MIN_GONE = 20;

  /** Lines of an image that can be dead, at most: for the bound of the error. */
  private static final int LINES = 4000;

  /** Share of the people with whom a cell has to be free to be drawn. */
  private static final double MIN_SEEN_SHARE = 0.1;

  private static final double PERCENT = 100;

  /** At 500 ppi, for the drawing alone. */
  private static final int PIXELS_OF_A_CELL = 16;

  private final Visits visits;
  private final long station;
  private final double rate;
  private final List<HealthFinding> findings = new ArrayList<>();

  PlatenMarks(Visits visits, long station, double rate) {
    this.visits = visits;
    this.station = station;
    this.rate = rate;
  }

  /** What one person left of one size of image. */
  private record Look(long day, List<PlatenNote> notes) {}

  List<HealthFinding> find() {
    Map<String, List<Look>> bySize = new TreeMap<>();
    for (Visit visit : visits.byStation().get(station)) {
      Map<String, List<PlatenNote>> notes = new TreeMap<>();
      for (Shot shot : visit.shots()) {
        shot.platen()
            .ifPresent(
                note ->
                    notes
                        .computeIfAbsent(note.width() + "x" + note.height(), s -> new ArrayList<>())
                        .add(note));
      }
      notes.forEach(
          (size, all) ->
              bySize.computeIfAbsent(size, s -> new ArrayList<>()).add(new Look(visit.day(), all)));
    }
    int sizes = Math.max(1, bySize.size());
    bySize.values().forEach(looks -> spots(looks, rate / sizes));
    bySize.values().forEach(looks -> lines(looks, rate / sizes));
    return findings;
  }

  private void spots(List<Look> looks, double errorRate) {
    PlatenNote size = looks.get(0).notes().get(0);
    FixedMarks marks = new FixedMarks(looks.size());
    for (int person = 0; person < looks.size(); person++) {
      List<PlatenNote> notes = looks.get(person).notes();
      // Marked if it is in every image of the person in which the place could be seen.
      Set<Integer> stained = new HashSet<>();
      notes.forEach(note -> stained.addAll(note.stains()));
      stained.removeIf(
          cell -> notes.stream().anyMatch(n -> !n.covers(cell) && !n.stains().contains(cell)));
      IntPredicate free = cell -> notes.stream().anyMatch(note -> !note.covers(cell));
      marks.add(person, stained.stream().sorted().toList(), free);
    }
    List<FixedMarks.Run> runs = marks.find(size.width() * size.height(), errorRate);
    for (List<FixedMarks.Run> spot : together(runs, size.width())) {
      findings.add(spot(spot, looks, size));
    }
  }

  /** Runs of cells that touch each other are one spot. */
  private static List<List<FixedMarks.Run>> together(List<FixedMarks.Run> runs, int width) {
    List<FixedMarks.Run> left = new ArrayList<>(runs);
    List<List<FixedMarks.Run>> spots = new ArrayList<>();
    while (!left.isEmpty()) {
      List<FixedMarks.Run> spot = new ArrayList<>(List.of(left.remove(0)));
      for (int i = 0; i < spot.size(); i++) {
        FixedMarks.Run here = spot.get(i);
        List<FixedMarks.Run> near =
            left.stream().filter(run -> touch(here.place(), run.place(), width)).toList();
        spot.addAll(near);
        left.removeAll(near);
      }
      spots.add(spot);
    }
    return spots;
  }

  private static boolean touch(int one, int other, int width) {
    return Math.abs(one % width - other % width) <= 2 && Math.abs(one / width - other / width) <= 2;
  }

  private HealthFinding spot(List<FixedMarks.Run> spot, List<Look> looks, PlatenNote size) {
    FixedMarks.Run surest =
        spot.stream().min(Comparator.comparingDouble(FixedMarks.Run::probability)).orElseThrow();
    int left = size.width();
    int top = size.height();
    int right = 0;
    int bottom = 0;
    for (FixedMarks.Run run : spot) {
      left = Math.min(left, run.place() % size.width());
      top = Math.min(top, run.place() / size.width());
      right = Math.max(right, run.place() % size.width() + 1);
      bottom = Math.max(bottom, run.place() / size.width() + 1);
    }
    CellBox box = new CellBox(left, top, right, bottom);
    String observed =
        String.format(
            Locale.ROOT,
            "spot of %.1f x %.1f mm, %.0f mm from the left and %.0f mm from the top of the image,"
                + " with %d of %d people (%.0f %%)",
            (right - left) * PlatenFacts.CELL_MM,
            (bottom - top) * PlatenFacts.CELL_MM,
            left * PlatenFacts.CELL_MM,
            top * PlatenFacts.CELL_MM,
            surest.seen(),
            surest.looked(),
            PERCENT * surest.seen() / surest.looked());
    return finding(StationFault.SPOT, surest, looks, observed, map(looks, surest, size, box));
  }

  private HealthFinding finding(
      StationFault fault, FixedMarks.Run run, List<Look> looks, String observed, PlatenMap map) {
    boolean gone = looks.size() - 1 - run.last() >= MIN_GONE;
    return new HealthFinding(
        fault,
        visits.nameOf(station),
        Optional.empty(),
        run.first() == 0 ? Optional.empty() : Optional.of(dayOf(looks, run.first())),
        gone ? Optional.of(dayOf(looks, run.last())) : Optional.empty(),
        observed,
        run.probability(),
        List.of(),
        map);
  }

  private static LocalDate dayOf(List<Look> looks, int person) {
    return LocalDate.ofEpochDay(looks.get(person).day());
  }

  private static PlatenMap map(List<Look> looks, FixedMarks.Run run, PlatenNote size, CellBox box) {
    int cells = size.width() * size.height();
    int[] seen = new int[cells];
    int[] stained = new int[cells];
    for (Look look : looks.subList(run.first(), run.last() + 1)) {
      for (PlatenNote note : look.notes()) {
        BitSet covered = note.covered();
        for (int c = covered.nextClearBit(0); c < cells; c = covered.nextClearBit(c + 1)) {
          seen[c]++;
        }
        note.stains().forEach(cell -> stained[cell]++);
      }
    }
    List<Double> shares = new ArrayList<>(cells);
    for (int cell = 0; cell < cells; cell++) {
      boolean known = seen[cell] > MIN_SEEN_SHARE * (run.last() - run.first() + 1);
      shares.add(known ? (double) stained[cell] / seen[cell] : -1.0);
    }
    return new PlatenMap(size.width(), size.height(), shares, box);
  }

  /** A line is so many pixels from the edge, and a cell as many pixels wide as the image has. */
  private static PlatenMap map(FixedMarks.Run run, List<Look> looks) {
    PlatenNote size = looks.get(0).notes().get(0);
    boolean row = run.place() % 2 == 0;
    int cell =
        Math.min((row ? size.height() : size.width()) - 1, run.place() / 2 / PIXELS_OF_A_CELL);
    CellBox box =
        row
            ? new CellBox(0, cell, size.width(), cell + 1)
            : new CellBox(cell, 0, cell + 1, size.height());
    return map(looks, run, size, box);
  }

  private void lines(List<Look> looks, double errorRate) {
    FixedMarks marks = new FixedMarks(looks.size());
    for (int person = 0; person < looks.size(); person++) {
      Set<Integer> dead = new HashSet<>();
      for (PlatenNote note : looks.get(person).notes()) {
        note.deadRows().forEach(row -> dead.add(2 * row));
        note.deadColumns().forEach(column -> dead.add(2 * column + 1));
      }
      marks.add(person, dead.stream().sorted().toList(), line -> true);
    }
    for (FixedMarks.Run run : marks.find(LINES, errorRate)) {
      String observed =
          String.format(
              Locale.ROOT,
              "%s %d with %d of %d people",
              run.place() % 2 == 0 ? "row" : "column",
              run.place() / 2 + 1,
              run.seen(),
              run.looked());
      findings.add(finding(StationFault.DEAD_LINE, run, looks, observed, map(run, looks)));
    }
  }
}
