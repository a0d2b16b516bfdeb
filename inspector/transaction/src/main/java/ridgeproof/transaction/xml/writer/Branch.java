package ridgeproof.transaction.xml.writer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ridgeproof.spec.xml.XmlElement;
import ridgeproof.spec.xml.XmlStep;
import ridgeproof.transaction.record.ByteSource;

/** An element to be written, with those within it. */
final class Branch {

  private final XmlElement element;
  private final Map<Integer, List<Branch>> children = new TreeMap<>();
  private String text;
  private ByteSource data;
  private boolean claimed;

  Branch(XmlElement element) {
    this.element = element;
  }

  XmlElement element() {
    return element;
  }

  /** The element at the end of a path, made where it is not there yet. */
  Branch at(List<XmlStep> steps, int[] numbers) {
    Branch branch = this;
    for (int i = 0; i < steps.size(); i++) {
      XmlElement child = branch.element.child(steps.get(i).name());
      List<Branch> siblings =
          branch.children.computeIfAbsent(child.order(), key -> new ArrayList<>());
      while (siblings.size() <= numbers[i]) {
        siblings.add(new Branch(child));
      }
      branch = siblings.get(numbers[i]);
    }
    return branch;
  }

  /**
   * Whether a text can stand at the end of a path: nothing is there, or the same, said beside
   * others.
   *
   * @param beside the text is said beside others
   */
  boolean hasRoom(List<XmlStep> steps, int[] numbers, String wanted, boolean beside) {
    Branch branch = this;
    for (int i = 0; i < steps.size(); i++) {
      List<Branch> siblings =
          branch.children.getOrDefault(
              branch.element.child(steps.get(i).name()).order(), List.of());
      if (siblings.size() <= numbers[i]) {
        return true;
      }
      branch = siblings.get(numbers[i]);
    }
    return branch.text == null || branch.text.equals(wanted) && (beside || !branch.claimed);
  }

  /**
   * Says a text.
   *
   * @param beside it is said beside others, and another field may say it too
   */
  void say(String value, boolean beside) {
    text = value;
    claimed |= !beside;
  }

  void hold(ByteSource bytes) {
    data = bytes;
  }

  Optional<String> text() {
    return Optional.ofNullable(text);
  }

  Optional<ByteSource> data() {
    return Optional.ofNullable(data);
  }

  /** The elements within, in the order of the schema. */
  List<Branch> children() {
    return children.values().stream().flatMap(List::stream).toList();
  }

  boolean isBlank() {
    return text == null && data == null && children().stream().allMatch(Branch::isBlank);
  }
}
