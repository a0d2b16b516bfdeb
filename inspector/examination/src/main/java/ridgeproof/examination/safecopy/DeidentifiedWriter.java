package ridgeproof.examination.safecopy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.blank.BlankImages;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.FeaturePoints;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Separator;
import ridgeproof.transaction.record.Subfield;

/**
 * Writes the bytes of a safe copy. It begins with as many bytes that say nothing, and puts among
 * them what is layout, what is harmless, and what stands for the rest: nothing gets through by
 * being forgotten.
 */
final class DeidentifiedWriter {

  private static final byte NOTHING = '?';

  /** The seed of a finger is multiplied further on. */
  private static final int SEED_BITS_LESS = 24;

  /**
   * A field of a record.
   *
   * @param ordinal of the record, from 1
   */
  record Place(int ordinal, int field) {}

  private final FindingsReport original;
  private final Transaction transaction;
  private final ByteSource source;
  private final RetainedValues kept;
  private final SyntheticValues values;
  private final KeyedRandom secret;
  private final BlankImages eraser;
  private final Map<Integer, FeaturePoints> features = new HashMap<>();
  private final Map<Integer, byte[]> blanks = new HashMap<>();

  /**
   * @param original examined with its images
   */
  DeidentifiedWriter(FindingsReport original) {
    SpecTables tables = original.tables();
    this.original = original;
    this.transaction = original.transaction();
    this.source = transaction.source();
    this.kept = new RetainedValues(tables, transaction.version());
    this.secret = KeyedRandom.of(source);
    this.eraser = new BlankImages(tables.harmless()::isHarmlessComment);
    tables
        .agreements()
        .featurePoints()
        .forEach(points -> features.put(points.field().field(), points));
    OriginalWords known = new OriginalWords();
    List<String> replaced = replacedTexts();
    replaced.forEach(known::learn);
    Set<LocalDate> dates = SyntheticDates.datesIn(replaced);
    Optional<String> stated = transaction.header().flatMap(header -> header.text(5));
    this.values =
        new SyntheticValues(
            tables,
            kept,
            secret,
            new SyntheticDates(secret, SyntheticDates.pivot(stated, dates), dates),
            known);
  }

  private List<String> replacedTexts() {
    List<String> texts = new ArrayList<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        if (!field.tag().isEmpty() && points(record, field).isEmpty()) {
          for (Subfield subfield : field.subfields()) {
            for (int item = 1; item <= subfield.items().size(); item++) {
              if (!kept.keeps(record, field.number(), item, subfield.text(item))) {
                texts.add(subfield.text(item));
              }
            }
          }
        }
      }
    }
    return texts;
  }

  private Optional<FeaturePoints> points(LogicalRecord record, Field field) {
    return Optional.ofNullable(features.get(field.number().field()))
        .filter(found -> found.field().equals(field.number()))
        .filter(found -> record.type() == found.field().recordType());
  }

  /** Everything left to chance in the prints of a copy. */
  long seedOfPrints() {
    return secret.random("prints", "", 0).nextLong() >>> SEED_BITS_LESS;
  }

  /**
   * The copy.
   *
   * @param attempts how often each field has been tried before; 0 where it is not named
   * @param standIns what takes the place of the image of a record, by its ordinal; else it is blank
   */
  byte[] write(Map<Place, Integer> attempts, IntFunction<Optional<byte[]>> standIns) {
    byte[] out = new byte[source.length()];
    Arrays.fill(out, NOTHING);
    transaction.unread().forEach(range -> UnparsedBytes.copy(source, List.of(range), out));
    for (LogicalRecord record : transaction.records()) {
      UnparsedBytes.copy(source, record.unread(), out);
      for (Field field : record.fields()) {
        keep(out, field.range().offset(), field.value().offset());
        keep(out, field.value().end(), field.range().end());
        if (field.isData()) {
          byte[] image =
              standIns
                  .apply(record.ordinal())
                  .filter(bytes -> bytes.length == field.value().length())
                  .orElseGet(() -> blank(record, field));
          System.arraycopy(image, 0, out, field.value().offset(), image.length);
        } else if (record.encoding() == Encoding.BINARY) {
          if (kept.keepsNumber(field.number())) {
            keep(out, field.value().offset(), field.value().end());
          }
        } else if (UnparsedBytes.isText(record.dataOf(field))) {
          int attempt =
              attempts.getOrDefault(new Place(record.ordinal(), field.number().field()), 0);
          text(out, record, field, attempt);
        } else {
          UnparsedBytes.copyFirstOdd(record.dataOf(field), out);
        }
      }
    }
    return out;
  }

  /** The image of a record without anything that it shows. */
  byte[] blank(LogicalRecord record, Field field) {
    return blanks.computeIfAbsent(
        field.value().offset(),
        at ->
            image(
                record.dataOf(field),
                Optional.ofNullable(original.imagesByRecord().get(record.ordinal()))));
  }

  private void keep(byte[] out, int from, int to) {
    for (int i = from; i < to; i++) {
      out[i] = (byte) source.byteAt(i);
    }
  }

  private byte[] image(ByteSource data, Optional<ExaminedImage> image) {
    boolean sound = image.filter(DeidentifiedWriter::isSound).isPresent();
    ImageFormat stated = image.flatMap(ExaminedImage::statedFormat).orElse(ImageFormat.RAW);
    int bits = image.map(found -> found.bitsPerPixel().orElse(0)).orElse(0);
    return eraser.inPlaceOf(data, stated, bits, sound);
  }

  /** Whether nothing of the image is damaged, so that another can take its place. */
  static boolean isSound(ExaminedImage image) {
    return image.pixels().isPresent()
        && Stream.concat(
                image.decodingDefects().stream(),
                image.header().stream().flatMap(header -> header.defects().stream()))
            .noneMatch(DeidentifiedWriter::isDamage);
  }

  private static boolean isDamage(ImageDefect defect) {
    return defect.kind() == ImageDefect.Kind.DAMAGE;
  }

  private void text(byte[] out, LogicalRecord record, Field field, int attempt) {
    Map<Item, String> shuffled =
        points(record, field)
            .map(
                found ->
                    new FeatureShuffle(
                            found,
                            secret.random("features", record.ordinal() + field.tag(), attempt))
                        .shuffled(field, displaced(record, field)))
            .orElse(Map.of());
    for (Subfield subfield : field.subfields()) {
      for (int number = 1; number <= subfield.items().size(); number++) {
        Item item = subfield.items().get(number - 1);
        ByteRange range = item.range();
        if (kept.keeps(record, field.number(), number, item.text())) {
          keep(out, range.offset(), range.end());
        } else {
          String text = shuffled.get(item);
          put(
              out,
              range,
              text != null
                  ? text
                  : values.inPlaceOf(item.text(), range.length(), field.number(), number, attempt));
        }
        if (range.end() < field.value().end() && isSeparator(source.byteAt(range.end()))) {
          keep(out, range.end(), range.end() + 1);
        }
      }
    }
  }

  /** Past the limit of items there is none, and a character of the value stands there. */
  private static boolean isSeparator(int value) {
    return value == Separator.RS || value == Separator.US;
  }

  /** The subfields of features that the examination found out of place. */
  private Set<Integer> displaced(LogicalRecord record, Field field) {
    Set<Integer> displaced = new HashSet<>();
    for (Finding finding : original.unexplained()) {
      if (finding.location().record().orElse(0) == record.ordinal()
          && finding.location().field().equals(Optional.of(field.number()))) {
        finding.location().subfield().ifPresent(displaced::add);
      }
    }
    return displaced;
  }

  private static void put(byte[] out, ByteRange range, String text) {
    boolean single = text.length() == range.length();
    byte[] bytes = text.getBytes(single ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
    System.arraycopy(bytes, 0, out, range.offset(), Math.min(bytes.length, range.length()));
  }
}
