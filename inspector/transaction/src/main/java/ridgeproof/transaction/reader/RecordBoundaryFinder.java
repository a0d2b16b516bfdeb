package ridgeproof.transaction.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Separator;

/** Tells where in a file a record could begin. */
final class RecordBoundaryFinder {

  /** LEN and IDC, which every binary record begins with. */
  private static final int MIN_HEADER = 5;

  private final ByteSource source;
  private final SpecTables tables;
  private int version;
  private Set<Integer> binaryTypes = Set.of();
  private Set<Integer> taggedTypes = Set.of();
  private int searchedFrom = -1;
  private int searchResult;

  RecordBoundaryFinder(ByteSource source, SpecTables tables) {
    this.source = source;
    this.tables = tables;
  }

  /** Takes in what the Type-1 record says. */
  void expect(TransactionContent contents, int statedVersion) {
    version = statedVersion;
    Set<Integer> binary = new TreeSet<>();
    Set<Integer> tagged = new TreeSet<>();
    for (TransactionContent.Entry entry : contents.entries()) {
      (isBinary(entry.type()) ? binary : tagged).add(entry.type());
    }
    binaryTypes = binary;
    taggedTypes = tagged;
    searchedFrom = -1;
  }

  boolean isBinary(int type) {
    return tables.recordType(type).map(row -> row.encoding() == Encoding.BINARY).orElse(false);
  }

  /**
   * The type of the tagged record that begins here; not within the digits of a tag, where a length
   * that is off by one leads.
   */
  OptionalInt taggedAt(int position) {
    return source.isDigitAt(position - 1) ? OptionalInt.empty() : tagAt(position);
  }

  /** The type of the tagged record that begins here, whatever stands before it. */
  OptionalInt tagAt(int position) {
    return Tag.at(source, position, source.length())
        .filter(Tag::opensRecord)
        .map(tag -> OptionalInt.of(tag.number().recordType()))
        .orElse(OptionalInt.empty());
  }

  /**
   * The announced binary type whose header and length fit here, up to a record start or the end of
   * the file.
   */
  OptionalInt binaryAt(int position) {
    for (int type : binaryTypes) {
      if (headerFits(position, type) && reachesBoundary(position)) {
        return OptionalInt.of(type);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Whether the file ends here or a record could begin here, looking no further than this record's
   * header.
   */
  boolean isBoundary(int position) {
    return position == source.length()
        || taggedAt(position).isPresent()
        || binaryTypes.stream().anyMatch(type -> headerFits(position, type));
  }

  /**
   * Whether the bytes can be the header of that binary type; its length is only held against the
   * file's.
   */
  boolean headerFits(int position, int type) {
    if (!source.has(position, MIN_HEADER)) {
      return false;
    }
    long length = source.uint32At(position);
    // The length alone refuses almost every place in an image, and costs next to nothing.
    if (length < MIN_HEADER || length > source.length() - position) {
      return false;
    }
    Optional<List<BinaryHeader.Value>> header =
        BinaryHeader.read(source, position, tables.layout(type), version);
    if (header.isEmpty()) {
      return false;
    }
    return length >= BinaryHeader.size(header.get())
        && header.get().stream().allMatch(this::isAllowed);
  }

  /** Whether every value but the length is one that the layout allows. */
  boolean valuesFit(List<BinaryHeader.Value> header) {
    return header.stream().skip(1).allMatch(this::isAllowed);
  }

  /**
   * The type of an announced record that begins here although the record before it does not end
   * with FS, so that a digit may stand before its tag.
   */
  OptionalInt afterMissingEnd(int position) {
    if (position < 1
        || source.byteAt(position - 1) == Separator.FS
        || !source.has(position, MIN_HEADER)) {
      return OptionalInt.empty();
    }
    if (opensTagged(position)) {
      int type = Tag.at(source, position, source.length()).orElseThrow().number().recordType();
      return taggedTypes.contains(type) ? OptionalInt.of(type) : OptionalInt.empty();
    }
    return OptionalInt.empty();
  }

  /** The first place from {@code from} on where a record begins beyond doubt. */
  OptionalInt next(int from) {
    if (searchedFrom < 0 || from < searchedFrom || from > searchResult) {
      searchedFrom = from;
      searchResult = search(from);
    }
    return searchResult < source.length() ? OptionalInt.of(searchResult) : OptionalInt.empty();
  }

  private int search(int from) {
    for (int i = from; i < source.length(); i++) {
      if (source.byteAt(i) < ':' && (opensTagged(i) || binaryAt(i).isPresent())) {
        return i;
      }
    }
    return source.length();
  }

  /**
   * A tag with field number 1 and a length of digits after it; bytes of an image do not come out
   * like that.
   */
  private boolean opensTagged(int position) {
    int first = source.byteAt(position);
    if (first < '1' || first > '9') {
      return false;
    }
    Optional<Tag> tag = Tag.at(source, position, source.length()).filter(Tag::opensRecord);
    if (tag.isEmpty()) {
      return false;
    }
    int i = tag.get().valueStart();
    while (source.isDigitAt(i)) {
      i++;
    }
    return i > tag.get().valueStart() && i < source.length() && source.byteAt(i) == Separator.GS;
  }

  private boolean reachesBoundary(int position) {
    return isBoundary(position + (int) source.uint32At(position));
  }

  private boolean isAllowed(BinaryHeader.Value value) {
    FieldRow row = value.row();
    return row.values()
        .map(rule -> rule.matches(Long.toString(value.number()), this::knows))
        .orElse(true);
  }

  private boolean knows(String table, String code) {
    return tables.codes(table).find(code, version).isPresent();
  }
}
