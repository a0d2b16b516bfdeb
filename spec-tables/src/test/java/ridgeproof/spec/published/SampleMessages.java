package ridgeproof.spec.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the comments of the published sample messages say: which traditional tag and mnemonic an
 * element carries, whether it is optional, and which items are within it.
 */
final class SampleMessages {

  private static final Map<String, Integer> RECORDS =
      Map.of(
          "PackageInformationRecord", 1,
          "PackageDescriptiveTextRecord", 2,
          "PackageHighResolutionGrayscaleImageRecord", 4,
          "PackageMinutiaeRecord", 9,
          "PackageFacialAndSMTImageRecord", 10,
          "PackageLatentImageRecord", 13,
          "PackageFingerprintImageRecord", 14,
          "PackagePalmprintImageRecord", 15,
          "PackageUserDefinedImageRecord", 16,
          "PackageIrisImageRecord", 17);

  private static final Pattern TOKEN =
      Pattern.compile("<!--(.*?)-->|<\\?.*?\\?>|<(/?)([\\w:.-]+)[^>]*?(/?)>", Pattern.DOTALL);
  private static final Pattern NAME_THEN_TAG =
      Pattern.compile("\\b([A-Z][A-Z0-9_]*)\\s*,?\\s*(\\d{1,2}\\.\\d{3,4})([A-Z])?\\b");
  private static final Pattern TAG_THEN_NAME =
      Pattern.compile("\\b(\\d{1,2}\\.\\d{3,4})([A-Z])?\\s+([A-Z][A-Z0-9_]+)\\b");
  private static final Pattern NAME_ALONE =
      Pattern.compile("([A-Z][A-Z0-9_]{1,6})\\s*[-,(]*\\s*(?:Optional.*|\\(\\d.*)?");
  private static final Pattern MAY_BE_LEFT_OUT = Pattern.compile("[Oo]ptional|\\(0\\.\\.");

  /** A field of the messages. */
  static final class Tagged {
    final Set<String> mnemonics = new TreeSet<>();
    final Set<String> elements = new TreeSet<>();
    final Map<String, Set<String>> items = new TreeMap<>();
    boolean optional;
  }

  private record Open(String element, Optional<String> tag) {}

  private record Named(String tag, String letter, String mnemonic) {}

  private final Map<String, Tagged> fields = new HashMap<>();
  private final Map<String, Set<String>> ofRecords = new HashMap<>();

  SampleMessages(PublishedLists shared) {
    shared.files("xml/messages", ".xml").forEach(this::read);
  }

  /** The field with this tag, {@code 14.013}. */
  Optional<Tagged> field(String tag) {
    return Optional.ofNullable(fields.get(tag));
  }

  Set<String> tags() {
    return new TreeSet<>(fields.keySet());
  }

  /** The elements that carry a mnemonic somewhere in a record type, as an item or without a tag. */
  Set<String> elements(int recordType, String mnemonic) {
    return ofRecords.getOrDefault(recordType + " " + mnemonic, Set.of());
  }

  private void read(Path message) {
    String text;
    try {
      text = Files.readString(message, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Deque<Open> open = new ArrayDeque<>();
    List<String> comments = new ArrayList<>();
    for (Matcher token = TOKEN.matcher(text); token.find(); ) {
      if (token.group(1) != null) {
        comments.add(token.group(1).replaceAll("\\s+", " ").strip());
      } else if (token.group(3) != null) {
        if (token.group(2).isEmpty()) {
          String element = token.group(3).replaceFirst(".*:", "");
          Optional<String> tag = note(element, comments, open);
          if (token.group(4).isEmpty()) {
            open.push(new Open(element, tag));
          }
        } else {
          open.pop();
        }
        comments.clear();
      }
    }
  }

  private Optional<String> note(String element, List<String> comments, Deque<Open> open) {
    Optional<Integer> record =
        open.stream().map(Open::element).filter(RECORDS::containsKey).map(RECORDS::get).findFirst();
    Optional<String> tag = Optional.empty();
    for (String comment : record.isPresent() ? comments : List.<String>of()) {
      List<Named> named = named(comment, record.get());
      for (Named name : named) {
        note(name, comment, element);
      }
      if (!named.isEmpty()) {
        tag = Optional.of(named.get(0).tag());
      } else {
        Matcher alone = NAME_ALONE.matcher(comment);
        if (alone.matches()) {
          noteItem(record.get(), alone.group(1), element, open);
        }
      }
    }
    return tag;
  }

  private static List<Named> named(String comment, int record) {
    List<Named> named = new ArrayList<>();
    for (Matcher m = NAME_THEN_TAG.matcher(comment); m.find(); ) {
      named.add(new Named(m.group(2), m.group(3) == null ? "" : m.group(3), m.group(1)));
    }
    if (named.isEmpty()) {
      for (Matcher m = TAG_THEN_NAME.matcher(comment); m.find(); ) {
        named.add(new Named(m.group(1), m.group(2) == null ? "" : m.group(2), m.group(3)));
      }
    }
    named.removeIf(name -> !name.tag().startsWith(record + "."));
    // A second tag is named beside the first only as "CIN 2.010/CIX 2.011"; else it is a remark.
    return named.size() > 1 && comment.contains("/") ? named.subList(0, 2) : first(named);
  }

  private static List<Named> first(List<Named> named) {
    return named.isEmpty() ? named : named.subList(0, 1);
  }

  private void note(Named name, String comment, String element) {
    Tagged field = fields.computeIfAbsent(name.tag(), key -> new Tagged());
    if (name.letter().isEmpty()) {
      field.mnemonics.add(name.mnemonic());
      field.elements.add(element);
      field.optional |= MAY_BE_LEFT_OUT.matcher(comment).find();
    } else {
      field.items.computeIfAbsent(name.mnemonic(), key -> new TreeSet<>()).add(element);
    }
  }

  private void noteItem(int record, String mnemonic, String element, Deque<Open> open) {
    ofRecords.computeIfAbsent(record + " " + mnemonic, key -> new TreeSet<>()).add(element);
    open.stream()
        .flatMap(parent -> parent.tag().stream())
        .findFirst()
        .map(fields::get)
        .ifPresent(
            field -> field.items.computeIfAbsent(mnemonic, key -> new TreeSet<>()).add(element));
  }
}
