package ridgeproof.examination.comparison;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Queue;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Pairs the records of two transactions by what they show and hold, never by their numbers: images
 * by finger and content, then by finger, then by content; other records by content, then by the
 * fingers that they describe, then by their order.
 */
final class RecordPairing {

  record Pair(LogicalRecord first, LogicalRecord second) {}

  private static final int LENGTH_FIELD = 1;
  private static final int IDC_FIELD = 2;

  private final SortedMap<Integer, LogicalRecord> removed = new TreeMap<>();
  private final SortedMap<Integer, LogicalRecord> added = new TreeMap<>();
  private final List<Pair> pairs = new ArrayList<>();

  RecordPairing(FindingsReport first, FindingsReport second) {
    first.transaction().records().forEach(record -> removed.put(record.ordinal(), record));
    second.transaction().records().forEach(record -> added.put(record.ordinal(), record));
    Shown inFirst = new Shown(first);
    Shown inSecond = new Shown(second);
    pairBy(inFirst, inSecond, Shown::fingersAndPixels);
    pairBy(inFirst, inSecond, Shown::fingers);
    pairBy(inFirst, inSecond, Shown::pixels);
    pairBy(inFirst, inSecond, Shown::contents);
    pairBy(inFirst, inSecond, Shown::described);
    pairBy(inFirst, inSecond, Shown::type);
    pairs.sort(Comparator.comparingInt(pair -> pair.first().ordinal()));
  }

  /** In the order of the first transaction. */
  List<Pair> pairs() {
    return List.copyOf(pairs);
  }

  /** Records that only the first transaction has. */
  List<LogicalRecord> removed() {
    return List.copyOf(removed.values());
  }

  /** Records that only the second transaction has. */
  List<LogicalRecord> added() {
    return List.copyOf(added.values());
  }

  /**
   * The ordinals, in the first transaction, of records that stand elsewhere: those outside the
   * longest run that both have in one order.
   */
  Set<Integer> moved() {
    int[] longest = new int[pairs.size()];
    int[] before = new int[pairs.size()];
    int last = -1;
    for (int i = 0; i < pairs.size(); i++) {
      longest[i] = 1;
      before[i] = -1;
      for (int j = 0; j < i; j++) {
        boolean inOrder = pairs.get(j).second().ordinal() < pairs.get(i).second().ordinal();
        if (inOrder && longest[j] + 1 > longest[i]) {
          longest[i] = longest[j] + 1;
          before[i] = j;
        }
      }
      last = last < 0 || longest[i] > longest[last] ? i : last;
    }
    Set<Integer> moved = new HashSet<>();
    pairs.forEach(pair -> moved.add(pair.first().ordinal()));
    for (int i = last; i >= 0; i = before[i]) {
      moved.remove(pairs.get(i).first().ordinal());
    }
    return moved;
  }

  /** What the records of one transaction can be paired by. */
  private static final class Shown {

    private final Map<Integer, ExaminedImage> images;
    private final Map<Integer, List<Integer>> fingersByIdc = new HashMap<>();

    Shown(FindingsReport report) {
      this.images = report.imagesByRecord();
      report
          .images()
          .forEach(
              image ->
                  image
                      .record()
                      .idc()
                      .ifPresent(idc -> fingersByIdc.putIfAbsent(idc, image.positions())));
    }

    private Optional<ExaminedImage> image(LogicalRecord record) {
      return Optional.ofNullable(images.get(record.ordinal()));
    }

    Optional<Object> fingersAndPixels(LogicalRecord record) {
      return fingers(record).flatMap(f -> pixels(record).map(bytes -> List.of(f, bytes)));
    }

    Optional<Object> fingers(LogicalRecord record) {
      return image(record).map(ExaminedImage::positions).filter(p -> !p.isEmpty()).map(p -> p);
    }

    Optional<Object> pixels(LogicalRecord record) {
      return image(record).flatMap(ExaminedImage::data).map(ByteSource::asBuffer).map(b -> b);
    }

    /** Every value but the length and the IDC. */
    Optional<Object> contents(LogicalRecord record) {
      if (images.containsKey(record.ordinal())) {
        return Optional.empty();
      }
      return Optional.of(
          record.fields().stream()
              .filter(f -> f.number().field() != LENGTH_FIELD && f.number().field() != IDC_FIELD)
              .map(field -> List.of(field.number(), bytes(record, field)))
              .toList());
    }

    private static Object bytes(LogicalRecord record, Field field) {
      ByteBuffer data = field.isData() ? record.dataOf(field).asBuffer() : ByteBuffer.allocate(0);
      return List.of(
          data,
          field.subfields().stream()
              .map(subfield -> subfield.items().stream().map(item -> item.text()).toList())
              .toList());
    }

    /** The fingers of the image that the IDC of a record without an image points at. */
    Optional<Object> described(LogicalRecord record) {
      OptionalInt idc = record.idc();
      return images.containsKey(record.ordinal()) || idc.isEmpty()
          ? Optional.empty()
          : Optional.ofNullable(fingersByIdc.get(idc.getAsInt())).map(fingers -> fingers);
    }

    /** What shows a finger is never paired by its order alone. */
    Optional<Object> type(LogicalRecord record) {
      return fingers(record).isPresent() ? Optional.empty() : Optional.of("");
    }
  }

  private interface Key {
    /** What two records of a type have in common; empty where there is nothing to pair by. */
    Optional<Object> of(Shown shown, LogicalRecord record);
  }

  private void pairBy(Shown first, Shown second, Key key) {
    Map<Object, Queue<LogicalRecord>> waiting = new HashMap<>();
    for (LogicalRecord record : added.values()) {
      named(second, key)
          .apply(record)
          .ifPresent(name -> waiting.computeIfAbsent(name, k -> new ArrayDeque<>()).add(record));
    }
    for (LogicalRecord record : List.copyOf(removed.values())) {
      LogicalRecord found =
          named(first, key).apply(record).map(waiting::get).map(Queue::poll).orElse(null);
      if (found != null) {
        pairs.add(new Pair(record, found));
        removed.remove(record.ordinal());
        added.remove(found.ordinal());
      }
    }
  }

  private static Function<LogicalRecord, Optional<Object>> named(Shown shown, Key key) {
    return record -> key.of(shown, record).map(name -> List.of(record.type(), name));
  }
}
