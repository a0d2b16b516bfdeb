package ridgeproof.transaction.xml;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Comment;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * A sample message as its comments tell it: below which element stands which traditional tag. Read
 * by the parser of the JDK, and without the tables that the reader goes by.
 */
final class CommentedMessage {

  private static final Pattern TAG = Pattern.compile("\\b(\\d{1,2}\\.\\d{3,4})([A-K])?\\b");
  private static final Map<String, Integer> BINARY =
      Map.of("IDC", 2, "IMP", 3, "FGP", 4, "ISR", 5, "HLL", 6, "VLL", 7, "GCA", 8, "IMG", 9);

  /** Spelled otherwise in one comment than in all others. */
  private static final Map<String, String> MISPRINTS = Map.of("2.204", "2.2040");

  private static final Map<String, String> LETTERS = Map.of("PATCL 2.034A", "B");

  /** One comment: a tag, perhaps an item, and the values that belong to it. */
  private record Commented(int record, String tag, int item, List<String> values) {}

  private final List<Commented> commented = new ArrayList<>();

  private CommentedMessage() {}

  static CommentedMessage of(Path file) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      Document document = factory.newDocumentBuilder().parse(file.toFile());
      CommentedMessage message = new CommentedMessage();
      int record = 0;
      for (Element element : elements(document.getDocumentElement())) {
        message.read(element, record++, recordType(element), new ArrayDeque<>());
      }
      return message;
    } catch (Exception e) {
      throw new IllegalStateException(file.toString(), e);
    }
  }

  int size() {
    return commented.size();
  }

  private static int recordType(Element record) {
    return Integer.parseInt(elements(record).get(0).getTextContent().strip());
  }

  private void read(Element parent, int record, int type, Deque<Commented> above) {
    List<String> comments = new ArrayList<>();
    Map<String, List<String>> earlier = new HashMap<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Comment comment) {
        comments.add(comment.getData().strip());
      } else if (node instanceof Element element) {
        // Of several elements in a row the comment stands before the first.
        if (comments.isEmpty()) {
          comments.addAll(earlier.getOrDefault(element.getNodeName(), List.of()));
        }
        earlier.put(element.getNodeName(), List.copyOf(comments));
        List<Commented> own = tags(comments, record, type);
        comments.clear();
        commented.addAll(own);
        own.forEach(above::push);
        if (elements(element).isEmpty()) {
          above.stream()
              .findFirst()
              .filter(tag -> !belongsElsewhere(tag, element))
              .ifPresent(tag -> tag.values().add(said(element)));
        }
        read(element, record, type, above);
        own.forEach(tag -> above.pop());
      }
    }
  }

  /**
   * The elements that are not of the field whose comment stands above them: the name of an agency
   * beside its identifier, which the comments of irises give a field of its own; a unit; rows of
   * maps, which have a comment of their own; and no, where the field can only say yes.
   */
  private static boolean belongsElsewhere(Commented tag, Element element) {
    String name = element.getLocalName();
    boolean onlyYes = name.matches("FingerprintImageStitchedIndicator|MinutiaeNo\\w+Indicator");
    return name.equals("OrganizationName") && tag.tag().endsWith(".004")
        || name.equals("MeasureUnitText")
        || name.endsWith("MapRowText") && !tag.tag().matches("9.3(08|1[02])")
        || onlyYes && said(element).equals("N");
  }

  private static List<Commented> tags(List<String> comments, int record, int type) {
    for (String comment : comments) {
      Matcher tag = TAG.matcher(comment);
      while (tag.find()) {
        if (tag.group(1).startsWith(type + ".")) {
          String letter = LETTERS.getOrDefault(comment, tag.group(2));
          int item = letter == null ? 0 : letter.charAt(0) - 'A' + 1;
          String number = MISPRINTS.getOrDefault(tag.group(1), tag.group(1));
          return List.of(new Commented(record, number, item, new ArrayList<>()));
        }
      }
      Integer binary = type == 4 || type == 7 ? BINARY.get(comment) : null;
      if (binary != null) {
        String number = new FieldNumber(type, binary).toString();
        return List.of(new Commented(record, number, 0, new ArrayList<>()));
      }
    }
    return List.of();
  }

  private static String said(Element element) {
    String text = element.getTextContent().strip();
    return switch (text) {
      case "true" -> "Y";
      case "false" -> "N";
      case "1" -> element.getLocalName().endsWith("Indicator") ? "Y" : text;
      default ->
          text.matches("\\d{4}-\\d{2}-\\d{2}(T.*)?|\\d{3}-\\d{2}-\\d{4}")
              ? text.replaceAll("[-T:]", "")
              : text.replaceAll("\\s+", " ");
    };
  }

  /** The comments whose values a reading does not have at the field. */
  List<String> absentFrom(Transaction transaction) {
    List<String> absent = new ArrayList<>();
    for (Commented one : commented) {
      LogicalRecord record = transaction.records().get(one.record());
      Optional<Field> field = record.field(FieldNumber.parse(one.tag()));
      for (String value : one.values()) {
        if (field.isEmpty() || !holds(record, field.get(), one.item(), value)) {
          absent.add(one.tag() + (one.item() > 0 ? "/" + one.item() : "") + " " + value);
          break;
        }
      }
    }
    return absent;
  }

  private static boolean holds(LogicalRecord record, Field field, int item, String value) {
    if (field.isData()) {
      byte[] bytes = record.dataOf(field).toArray();
      byte[] expected = Base64.getMimeDecoder().decode(value.replaceAll("[^A-Za-z0-9+/=]", ""));
      return Arrays.equals(expected, bytes);
    }
    return field.subfields().stream()
        .flatMap(
            subfield ->
                item > 0
                    ? Stream.of(subfield.text(item))
                    : subfield.items().stream().map(i -> i.text()))
        .anyMatch(text -> text.replaceAll("\\s+", " ").contains(value) || isSame(text, value));
  }

  /** Numbers that the XML writes with a zero in front, and a method that has its own two codes. */
  private static boolean isSame(String text, String value) {
    return ("0" + text).equals(value)
        || text.equals("U") && value.equals("N")
        || text.replaceAll("\\s+", "").equals(value.replaceAll("\\s+", ""));
  }

  private static List<Element> elements(Element parent) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }
}
