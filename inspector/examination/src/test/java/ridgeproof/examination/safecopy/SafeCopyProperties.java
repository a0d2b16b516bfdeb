package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

@Tag("slow")
class SafeCopyProperties {

  private static final SpecTables TABLES = SpecTables.open();
  private static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());
  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withToday(LocalDate.of(2026, 3, 3));

  /** Fewer digits come about by chance in lengths and in values that are made up. */
  private static final int MIN_DIGITS = 5;

  /** A field of a particular, and what it says. */
  record Particular(int field, String value) {}

  @Provide
  Arbitrary<List<Particular>> particulars() {
    Arbitrary<String> word =
        Arbitraries.strings()
            .withCharRange('A', 'Z')
            .withCharRange('a', 'z')
            .ofMinLength(4)
            .ofMaxLength(12);
    Arbitrary<String> number = Arbitraries.strings().numeric().ofMinLength(5).ofMaxLength(10);
    Arbitrary<String> date =
        Arbitraries.integers()
            .between(-20_000, 40_000)
            .map(day -> LocalDate.of(1990, 1, 1).plusDays(day).toString().replace("-", ""));
    Arbitrary<String> accented = word.map(text -> "\u00c5" + text + "\u00f1\u4eba");
    Arbitrary<String> name = Combinators.combine(word, word).as((a, b) -> a + "," + b + " 7th");
    Arbitrary<Integer> field =
        Arbitraries.of(3, 6, 9, 10, 14, 15, 16, 17, 18, 19, 20, 22, 24, 26, 27, 31, 33, 37, 38, 39)
            .flatMap(known -> Arbitraries.of(known, 41, 45, 56, 67, 73, 88, 777, 1234));
    return Combinators.combine(field, Arbitraries.oneOf(word, number, date, accented, name))
        .as(Particular::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12);
  }

  private static byte[] file(List<Particular> particulars) {
    TreeMap<Integer, String> fields = new TreeMap<>();
    particulars.forEach(particular -> fields.put(particular.field(), particular.value()));
    List<FieldDraft> second = new ArrayList<>(List.of(field(2, 1, ""), field(2, 2, "00")));
    fields.forEach((number, value) -> second.add(field(2, number, value)));
    return new TransactionWriter(CharacterEncoding.UTF_8)
        .write(List.of(header(), RecordDraft.tagged(2, second)));
  }

  private static RecordDraft header() {
    return RecordDraft.tagged(
        1,
        List.of(
            field(1, 1, ""),
            field(1, 2, "0500"),
            field(1, 3, ""),
            field(1, 4, "FAUF"),
            field(1, 5, "20260302"),
            field(1, 7, "THP000000"),
            field(1, 8, "THP000001"),
            field(1, 9, "PILOT-0001"),
            field(1, 11, "00.00"),
            field(1, 12, "00.00"),
            FieldDraft.text(new FieldNumber(1, 15), List.of(List.of("003", "UTF-8")))));
  }

  private static FieldDraft field(int type, int number, String value) {
    return FieldDraft.text(new FieldNumber(type, number), value);
  }

  private static SafeCopy copy(byte[] file) {
    return new Deidentifier(EXAMINER, OPTIONS).of(EXAMINER.examine(ByteSource.of(file), OPTIONS));
  }

  private static Transaction read(byte[] file) {
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(file));
  }

  private static List<String> structure(Transaction transaction) {
    List<String> lines = new ArrayList<>();
    transaction
        .records()
        .forEach(
            record -> {
              lines.add(record.type() + " " + record.idc() + " " + record.range());
              record.fields().forEach(f -> lines.add(f.tag() + " " + f.range() + " " + f.value()));
            });
    for (Finding finding : transaction.findings()) {
      lines.add(finding.ruleId() + " " + finding.location());
    }
    return lines;
  }

  @Property(tries = 150)
  void noValueOfThePersonIsInTheCopy(@ForAll("particulars") List<Particular> particulars) {
    byte[] file = file(particulars);
    byte[] copy = copy(file).bytes().toArray();
    String text = new String(copy, StandardCharsets.UTF_8).toUpperCase(Locale.ROOT);
    for (Particular particular : particulars) {
      if (!read(file)
          .records()
          .get(1)
          .text(particular.field())
          .equals(Optional.of(particular.value()))) {
        continue;
      }
      for (String part :
          (particular.value() + " " + particular.value().replaceAll("[^A-Za-z0-9]", " "))
              .split("[ ,]")) {
        boolean digits = part.chars().allMatch(Character::isDigit);
        if (part.length() >= (digits ? MIN_DIGITS : 3) && !part.matches("0*")) {
          assertFalse(text.contains(part.toUpperCase(Locale.ROOT)), particular::toString);
        }
      }
    }
  }

  @Property(tries = 150)
  void theLayoutOfTheCopyIsThatOfTheFile(@ForAll("particulars") List<Particular> particulars) {
    byte[] file = file(particulars);
    byte[] copy = copy(file).bytes().toArray();
    assertEquals(file.length, copy.length);
    assertEquals(structure(read(file)), structure(read(copy)));
    assertArrayEquals(copy, copy(file.clone()).bytes().toArray());
  }

  @Property(tries = 150)
  void aDamagedFileHasACopyOfItsLengthWithoutItsWords(
      @ForAll("particulars") List<Particular> particulars,
      @ForAll @IntRange(min = 0, max = 100_000) int place,
      @ForAll byte value,
      @ForAll boolean cut) {
    List<Particular> marked = new ArrayList<>(particulars);
    marked.add(new Particular(18, "ZYXWSPECIMEN,ZYXWADA"));
    byte[] file = file(marked);
    int at = place % file.length;
    byte[] damaged = cut ? Arrays.copyOf(file, at) : file.clone();
    if (!cut) {
      damaged[at] = value;
    }
    byte[] copy = copy(damaged).bytes().toArray();
    assertEquals(damaged.length, copy.length);
    assertFalse(
        new String(copy, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT).contains("ZYXW"));
  }
}
