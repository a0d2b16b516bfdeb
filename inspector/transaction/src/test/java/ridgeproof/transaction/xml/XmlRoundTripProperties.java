package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;
import ridgeproof.transaction.xml.writer.ConversionCheck;
import ridgeproof.transaction.xml.writer.Loss;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/**
 * For random records over the mapping: what is not the same after the way to the other encoding and
 * back is named as a loss, and where no loss is named the bytes are the same.
 */
class XmlRoundTripProperties {

  private static final List<Integer> TYPES =
      List.of(2, 9, 10, 13, 14, 15, 16, 17, 19, 20, 21, 98, 99);
  private static final int FILES = 400;

  /** Written to the same elements, so that one may read as another; seen by reading again. */
  private static final Set<String> SHARED =
      Stream.of("2.034", "2.074", "2.091", "2.092")
          .map(field -> "Optional[" + field + "]")
          .collect(Collectors.toSet());

  private static final SpecTables TABLES = SpecTables.open();

  private static Transaction read(byte[] bytes) {
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
  }

  @Test
  void whatDoesNotComeBackIsNamed() throws IOException {
    int whole = 0;
    Set<String> carried = new HashSet<>();
    for (int seed = 0; seed < FILES; seed++) {
      byte[] traditional = file(seed);
      Transaction first = read(traditional);
      ByteArrayOutputStream xml = new ByteArrayOutputStream();
      List<Loss> losses = new XmlTransactionWriter(TABLES).write(first, xml);
      Transaction second = read(xml.toByteArray());
      assertTrue(second.isXml());
      TraditionalDrafts drafts = new TraditionalDrafts(TABLES);
      byte[] back = drafts.write(second);
      List<Loss> seen = ConversionCheck.of(first, second, losses);
      seen.forEach(loss -> assertTrue(SHARED.contains(loss.field().toString()), loss.toString()));
      losses = Stream.concat(losses.stream(), seen.stream()).toList();
      Map<String, Object> before = values(first);
      before.keySet().removeAll(named(losses));
      Map<String, Object> between = values(second);
      between.keySet().removeAll(named(losses));
      assertSame(before, between, "seed " + seed + ", to XML, " + losses);
      Map<String, Object> after = values(read(back));
      after.keySet().removeAll(named(losses));
      assertSame(between, after, "seed " + seed + ", from XML, " + drafts.losses());
      assertEquals(List.of(), drafts.losses());
      if (losses.isEmpty()) {
        assertArrayEquals(traditional, back, "seed " + seed);
        whole++;
      }
      before.keySet().forEach(field -> carried.add(field.substring(field.indexOf(' ') + 1)));
    }
    System.out.println(
        whole + " of " + FILES + " files without a loss, " + carried.size() + " fields carried");
    assertTrue(whole > FILES / 10, whole + " files without a loss");
    assertTrue(carried.size() > 300, carried.size() + " fields");
  }

  static byte[] file(int seed) {
    Random random = new Random(seed);
    RandomRecords records = new RandomRecords(TABLES, random);
    List<RecordDraft> drafts =
        random
            .ints(1 + random.nextInt(3), 0, TYPES.size())
            .mapToObj(TYPES::get)
            .collect(
                Collectors.collectingAndThen(
                    Collectors.toList(),
                    types -> {
                      List<RecordDraft> made = new ArrayList<>();
                      made.add(records.header());
                      types.forEach(type -> made.add(records.record(type, made.size())));
                      return made;
                    }));
    return new TransactionWriter(CharacterEncoding.ASCII).write(drafts);
  }

  private static Set<String> named(List<Loss> losses) {
    return losses.stream()
        .map(loss -> loss.record() + " " + loss.field().map(Object::toString).orElse(""))
        .collect(Collectors.toSet());
  }

  private static void assertSame(Map<String, Object> one, Map<String, Object> other, String where) {
    Set<String> all = new TreeSet<>(one.keySet());
    all.addAll(other.keySet());
    for (String field : all) {
      assertEquals(one.get(field), other.get(field), field + ", " + where);
    }
  }

  private static Map<String, Object> values(Transaction transaction) {
    Map<String, Object> values = new HashMap<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        if (field.number().field() != 1) {
          values.put(
              record.ordinal() + " " + field.number(),
              field.isData()
                  ? Arrays.hashCode(record.dataOf(field).toArray())
                  : field.subfields().stream()
                      .map(subfield -> subfield.items().stream().map(Item::text).toList())
                      .toList());
        }
      }
    }
    return values;
  }
}
