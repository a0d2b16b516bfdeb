package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.submission.RecordLimit;
import ridgeproof.spec.submission.TransactionNeed;
import ridgeproof.spec.table.Source.Knowledge;
import ridgeproof.testing.ReferenceFiles;

/** The rows of types of transaction that call themselves published, against what is published. */
class TransactionListsReferenceTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final Pattern CODE = Pattern.compile(",([A-Z]+),.*,TOTCodeSimpleType,");
  private static final Pattern LIMIT =
      Pattern.compile("<!--\\s*Type[- ](\\d+)[^(<]*\\(\\s*(\\d+)(?:\\s*(?:\\.\\.|-)\\s*(\\d+))?");
  private static final Pattern TYPE_IN_NAME = Pattern.compile("-([A-Z]{3,7})-");

  @Test
  void theListOfTypesIsThePublishedOneWithOlderOnesNamedAsSuch() {
    Set<String> published = new TreeSet<>();
    for (String line : lines("standards/ebts10-codes.csv")) {
      Matcher match = CODE.matcher(line);
      if (match.find()) {
        published.add(match.group(1));
      }
    }
    assertTrue(published.size() > 90, published.toString());
    assertEquals(published, typesOf("EBTS10"));
    Set<String> older =
        lines("standards/tot-type2-occurs-efts71.csv").stream()
            .skip(1)
            .map(line -> line.substring(0, line.indexOf(',')))
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(older.containsAll(typesOf("EFTS71")), older.toString());
  }

  private static Set<String> typesOf(String document) {
    return TABLES.codes("transaction-types").codes().stream()
        .filter(code -> code.source().document().equals(document))
        .filter(code -> code.source().known() == Knowledge.PUBLISHED)
        .map(Code::code)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void theRecordLimitsAreThoseOfTheMessageTemplates() {
    Map<String, String> published = new TreeMap<>();
    List<String> rows = lines("standards/ebts10-template-records.csv");
    for (String line : rows.subList(1, rows.size())) {
      String[] cells = line.split(",");
      published.put(cells[0] + " " + cells[3], cells[4] + ".." + cells[5]);
    }
    messages().forEach((type, text) -> addLimits(type, text, published));
    Map<String, String> ours = new TreeMap<>();
    for (Code type : TABLES.codes("transaction-types").codes()) {
      for (RecordLimit limit : TABLES.submissions().recordLimits(type.code())) {
        // A record without a count in its template is listed and has no limit.
        limit
            .most()
            .ifPresent(
                most ->
                    ours.put(type.code() + " " + limit.recordType(), limit.least() + ".." + most));
      }
    }
    assertEquals(published, ours);
  }

  private static void addLimits(String type, String text, Map<String, String> limits) {
    Matcher match = LIMIT.matcher(text);
    while (match.find()) {
      String most = match.group(3) == null ? match.group(2) : match.group(3);
      limits.putIfAbsent(type + " " + match.group(1), match.group(2) + ".." + most);
    }
  }

  @Test
  void aPublishedNeedOfTenFingersHasTheFieldThatAnnotatesThem() {
    Set<String> annotating =
        lines("standards/ebts10-fields-by-tot.csv").stream()
            .filter(line -> line.contains(",2.084,,AMP,"))
            .map(line -> line.substring(0, line.indexOf(',')))
            .collect(Collectors.toSet());
    List<TransactionNeed> needs =
        TABLES.submissions().needs().stream()
            .filter(need -> need.kind() == TransactionNeed.Kind.TEN_FINGERS)
            .filter(need -> need.source().known() == Knowledge.PUBLISHED)
            .toList();
    assertTrue(needs.size() > 15);
    needs.forEach(need -> assertTrue(annotating.contains(need.type()), need.type()));
  }

  @Test
  void aPublishedNeedOfNothingIsThatOfATemplateWhoseRecordsAreAllOptional() {
    Map<String, String> messages = messages();
    for (TransactionNeed need : TABLES.submissions().needs()) {
      if (need.kind() == TransactionNeed.Kind.NOTHING
          && need.source().known() == Knowledge.PUBLISHED) {
        assertTrue(messages.containsKey(need.type()), need.type());
        assertTrue(
            TABLES.submissions().recordLimits(need.type()).stream()
                .allMatch(limit -> limit.recordType() == 2 || limit.least() == 0),
            need.type());
      }
    }
  }

  @Test
  void everyNeedIsOfAListedTypeAndNamesProfilesThatExist() {
    for (TransactionNeed need : TABLES.submissions().needs()) {
      assertTrue(TABLES.codes("transaction-types").find(need.type()).isPresent(), need.type());
      Stream.concat(need.ways().stream(), need.unusualWays().stream()).forEach(TABLES::profile);
      assertEquals(need.kind() == TransactionNeed.Kind.TEN_FINGERS, !need.ways().isEmpty());
      assertTrue(TABLES.documents().containsKey(need.source().document()), need.type());
    }
  }

  private static Map<String, String> messages() {
    Map<String, String> messages = new TreeMap<>();
    try (Stream<Path> files = Files.list(shared().resolve("xml/messages"))) {
      for (Path file : files.sorted().toList()) {
        Matcher type = TYPE_IN_NAME.matcher(file.getFileName().toString());
        if (type.find()) {
          messages.merge(type.group(1), Files.readString(file), String::concat);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return messages;
  }

  private static List<String> lines(String name) {
    try {
      return Files.readAllLines(shared().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path shared() {
    return ReferenceFiles.path("README.md").getParent().getParent();
  }
}
