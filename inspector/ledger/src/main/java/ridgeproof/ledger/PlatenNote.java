package ridgeproof.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.imagery.platen.CellBox;
import ridgeproof.imagery.platen.PlatenFacts;

/**
 * What an image showed of the platen, as a line of text: {@code 100x62|boxes|stains|rows|columns},
 * numbers in decimal.
 *
 * @param width cells across
 * @param height cells down
 * @param prints where prints lay
 * @param stains cells, row by row
 */
public record PlatenNote(
    int width,
    int height,
    List<CellBox> prints,
    List<Integer> stains,
    List<Integer> deadRows,
    List<Integer> deadColumns) {

  private static final int PARTS = 5;
  private static final int BOX_NUMBERS = 4;

  public PlatenNote {
    prints = List.copyOf(prints);
    stains = List.copyOf(stains);
    deadRows = List.copyOf(deadRows);
    deadColumns = List.copyOf(deadColumns);
  }

  /** Keeps what was measured. */
  public static PlatenNote of(PlatenFacts facts) {
    return new PlatenNote(
        facts.width(),
        facts.height(),
        facts.prints(),
        facts.stains(),
        facts.deadRows(),
        facts.deadColumns());
  }

  /** The line of text. */
  public String text() {
    String boxes =
        prints.stream()
            .flatMap(box -> Stream.of(box.left(), box.top(), box.right(), box.bottom()))
            .map(String::valueOf)
            .collect(Collectors.joining(" "));
    return String.join(
        "|", width + "x" + height, boxes, words(stains), words(deadRows), words(deadColumns));
  }

  /**
   * Reads the line of text.
   *
   * @throws IllegalArgumentException if it is none
   */
  public static PlatenNote parse(String text) {
    String[] parts = text.split("\\|", -1);
    int times = parts[0].indexOf('x');
    if (parts.length != PARTS || times < 0) {
      throw new IllegalArgumentException("no note of a platen");
    }
    List<Integer> corners = numbers(parts[1]);
    List<CellBox> boxes = new ArrayList<>();
    for (int i = 0; i + BOX_NUMBERS <= corners.size(); i += BOX_NUMBERS) {
      boxes.add(
          new CellBox(corners.get(i), corners.get(i + 1), corners.get(i + 2), corners.get(i + 3)));
    }
    return new PlatenNote(
        Integer.parseInt(parts[0].substring(0, times)),
        Integer.parseInt(parts[0].substring(times + 1)),
        boxes,
        numbers(parts[2]),
        numbers(parts[3]),
        numbers(parts[4]));
  }

  /** Whether a print covered the cell. */
  public boolean covers(int cell) {
    return prints.stream().anyMatch(box -> box.contains(cell % width, cell / width));
  }

  /** All cells that a print covered. */
  public BitSet covered() {
    BitSet cells = new BitSet(width * height);
    for (CellBox box : prints) {
      int left = Math.max(0, box.left());
      int right = Math.min(width, box.right());
      for (int y = Math.max(0, box.top());
          y < Math.min(height, box.bottom()) && left < right;
          y++) {
        cells.set(y * width + left, y * width + right);
      }
    }
    return cells;
  }

  private static String words(List<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  private static List<Integer> numbers(String words) {
    return words.isEmpty()
        ? List.of()
        : Arrays.stream(words.split(" ")).map(Integer::valueOf).toList();
  }
}
