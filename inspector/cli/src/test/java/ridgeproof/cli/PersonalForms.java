package ridgeproof.cli;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** What of a person stands in a transaction, and every form in which it could come out of one. */
final class PersonalForms {

  private static final int SHORTEST = 3;

  /** Fewer digits come about by chance in any offset or length. */
  private static final int MIN_DIGITS = 5;

  /** The name and its aliases, of which each word is telling. */
  private static final Set<Integer> NAMES = Set.of(18, 19);

  private static final Set<Integer> ABOUT_AGENCIES_AND_NUMBERS = Set.of(7, 8, 9, 10, 17);
  private static final List<String> DATES =
      List.of(
          "uuuuMMdd",
          "uuuu-MM-dd",
          "uuuu/MM/dd",
          "uuuu.MM.dd",
          "ddMMuuuu",
          "dd-MM-uuuu",
          "dd/MM/uuuu",
          "dd.MM.uuuu",
          "MMdduuuu",
          "MM-dd-uuuu",
          "MM/dd/uuuu",
          "d.M.uuuu",
          "d MMMM uuuu",
          "d MMM uuuu",
          "MMMM d, uuuu");

  private PersonalForms() {}

  /** Every word and value that a safe copy may not hold, but for those that are codes elsewhere. */
  static Set<String> words(Transaction transaction) {
    Set<String> words = new LinkedHashSet<>();
    Set<String> others = new HashSet<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        int number = field.number().field();
        boolean told =
            record.type() == 2 && number > 2 && !isHarmless(number)
                || record.type() == 1 && ABOUT_AGENCIES_AND_NUMBERS.contains(number)
                || record.type() >= 10 && number == 4;
        if (told) {
          texts(field).forEach(text -> addWithParts(text, words));
        } else {
          texts(field).forEach(text -> others.add(text.toUpperCase(Locale.ROOT)));
        }
      }
    }
    words.removeIf(word -> others.contains(word.toUpperCase(Locale.ROOT)));
    return words;
  }

  private static boolean isHarmless(int field) {
    return field == 5 || field == 84;
  }

  private static void addWithParts(String text, Set<String> words) {
    add(text.strip(), words);
    for (String part : text.split("[^\\p{L}\\p{Nd}]+")) {
      add(part, words);
    }
    dateOf(text).ifPresent(date -> words.addAll(dates(date)));
  }

  private static void add(String word, Set<String> words) {
    boolean digits = word.chars().allMatch(c -> c >= '0' && c <= '9');
    boolean zeros = word.chars().allMatch(c -> c == '0');
    if (word.length() >= (digits ? MIN_DIGITS : SHORTEST) && !zeros) {
      words.add(word);
    }
  }

  /** The values that the layouts do not call public and that stand in no other field. */
  static Set<String> values(Transaction transaction) {
    Set<String> personal = new LinkedHashSet<>();
    Set<String> others = new HashSet<>();
    for (LogicalRecord record : transaction.records()) {
      for (Field field : record.fields()) {
        for (Subfield subfield : field.subfields()) {
          for (int item = 1; item <= subfield.items().size(); item++) {
            boolean told = !isPublic(field, item, transaction.version());
            (told ? personal : others).add(subfield.text(item));
          }
        }
        if (record.type() == 2 && NAMES.contains(field.number().field())) {
          texts(field).forEach(text -> personal.addAll(List.of(text.split("[ ,]+"))));
        }
      }
    }
    personal.removeAll(others);
    personal.removeIf(
        value ->
            value.length() < SHORTEST
                || value.length() < MIN_DIGITS && value.chars().allMatch(Character::isDigit));
    return personal;
  }

  private static boolean isPublic(Field field, int item, int version) {
    return ToldStories.TABLES
        .layout(field.number().recordType())
        .isPublic(field.number(), item, version);
  }

  private static List<String> texts(Field field) {
    return field.subfields().stream()
        .map(Subfield::items)
        .flatMap(List::stream)
        .map(Item::text)
        .filter(text -> !text.isBlank())
        .toList();
  }

  /** A value as it is, as dates are written, and as it stands in other files. */
  static Set<String> of(String value) {
    Set<String> forms = new LinkedHashSet<>();
    forms.add(value);
    forms.add(value.toLowerCase(Locale.ROOT));
    forms.add(value.toUpperCase(Locale.ROOT));
    forms.add(new StringBuilder(value).reverse().toString());
    dateOf(value).ifPresent(date -> forms.addAll(dates(date)));
    for (String form : List.copyOf(forms)) {
      forms.add(URLEncoder.encode(form, StandardCharsets.UTF_8));
      forms.add(form.replace("&", "&amp;").replace("<", "&lt;").replace(",", "&#44;"));
      forms.add(form.replace(",", "\\u002c").replace("\"", "\\\""));
      byte[] bytes = form.getBytes(StandardCharsets.UTF_8);
      forms.add(HexFormat.of().formatHex(bytes));
      forms.add(HexFormat.of().withUpperCase().formatHex(bytes));
      forms.add(HexFormat.ofDelimiter(" ").withUpperCase().formatHex(bytes));
      if (bytes.length >= 4) {
        for (int before = 0; before < 3; before++) {
          forms.add(base64(bytes, before));
        }
      }
    }
    return forms;
  }

  /** The characters that the value alone decides, so many bytes after a multiple of three. */
  private static String base64(byte[] bytes, int before) {
    byte[] shifted = new byte[before + bytes.length];
    System.arraycopy(bytes, 0, shifted, before, bytes.length);
    String coded = Base64.getEncoder().withoutPadding().encodeToString(shifted);
    int from = (before * 8 + 5) / 6;
    return coded.substring(from, shifted.length * 8 / 6);
  }

  /** The day a value names, turned round too. */
  private static Optional<LocalDate> dateOf(String value) {
    if (!value.matches("[0-9]{8}")) {
      return Optional.empty();
    }
    String turned = value.substring(4) + value.substring(2, 4) + value.substring(0, 2);
    return Calendar.date(value)
        .filter(date -> date.getYear() > 1800 && date.getYear() < 2200)
        .or(() -> Calendar.date(turned));
  }

  private static Set<String> dates(LocalDate date) {
    Set<String> forms = new LinkedHashSet<>();
    DATES.forEach(
        form -> forms.add(DateTimeFormatter.ofPattern(form, Locale.ENGLISH).format(date)));
    return forms;
  }
}
