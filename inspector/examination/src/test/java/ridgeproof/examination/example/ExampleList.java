package ridgeproof.examination.example;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.ExaminationOptions;

/**
 * Files that each depart in one thing, by name: the id of the rule, and words after it where a rule
 * has several. What is found in each stands in a resource of the list's name.
 */
public final class ExampleList {

  private final String name;
  private final Map<String, Supplier<FindingsReport>> offending = new LinkedHashMap<>();
  private final Map<String, Supplier<FindingsReport>> conforming = new LinkedHashMap<>();

  public ExampleList(String name) {
    this.name = name;
  }

  public String name() {
    return name;
  }

  public Map<String, Supplier<FindingsReport>> offending() {
    return offending;
  }

  /** What stands just on the other side of the line for examples of the same names. */
  public Map<String, Supplier<FindingsReport>> conforming() {
    return conforming;
  }

  public static String rule(String example) {
    return example.split(" ")[0];
  }

  public ExampleList add(String example, SampleCard card) {
    return examined(example, card::examine);
  }

  public ExampleList bytes(String example, Supplier<byte[]> bytes) {
    return examined(example, () -> SampleCard.examine(bytes.get()));
  }

  public ExampleList latin1(String example, Supplier<String> text) {
    return bytes(example, () -> text.get().getBytes(StandardCharsets.ISO_8859_1));
  }

  public ExampleList with(ExaminationOptions options, String example, SampleCard card) {
    return examined(example, () -> SampleCard.examine(card.bytes(), options));
  }

  public ExampleList examined(String example, Supplier<FindingsReport> report) {
    if (offending.put(example, report) != null) {
      throw new IllegalArgumentException(example + " twice");
    }
    return this;
  }

  /** A card that departs, and one that does not by a unit. */
  public ExampleList pair(String example, SampleCard departs, SampleCard conforms) {
    conforming.put(example, conforms::examine);
    return add(example, departs);
  }

  /** For cards that are costly to make. */
  public ExampleList pair(
      String example, Supplier<SampleCard> departs, Supplier<SampleCard> conforms) {
    conforming.put(example, () -> conforms.get().examine());
    return examined(example, () -> departs.get().examine());
  }
}
