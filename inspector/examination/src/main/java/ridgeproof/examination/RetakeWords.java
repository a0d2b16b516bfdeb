package ridgeproof.examination;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;

/** Names the print to capture again, and says each remedy once for all fingers that need it. */
final class RetakeWords {

  private static final String FINGER = "{finger}";
  private static final String PLAIN = "plain ";
  private static final String ONE = " finger";

  private final SpecTables tables;

  RetakeWords(SpecTables tables) {
    this.tables = tables;
  }

  /** Such as "right four fingers (slap, record 13)". */
  String print(ExaminedImage image) {
    int position = image.position().orElse(0);
    String name = tables.positionName(position);
    String kind = new Positions(tables).kind(position);
    String capture =
        kind.equals("combination")
            ? "slap, "
            : kind.matches("rolled|plain|slap") ? kind + ", " : "";
    return String.format(
        Locale.ROOT,
        "%s (%srecord %d)",
        name.startsWith(PLAIN) ? name.substring(PLAIN.length()) : name,
        capture,
        image.record().ordinal());
  }

  /** Every remedy, those of the worst findings first. */
  String how(List<Finding> answered) {
    Map<String, List<String>> fingers = new LinkedHashMap<>();
    for (Finding finding :
        answered.stream().sorted(Comparator.comparing(Finding::severity)).toList()) {
      String name =
          finding.location().position().isPresent()
              ? tables.positionName(finding.location().position().getAsInt())
              : "finger";
      String remedy = finding.remedy().replace("the " + name, FINGER);
      List<String> named = fingers.computeIfAbsent(remedy, key -> new ArrayList<>());
      if (!named.contains(name)) {
        named.add(name);
      }
    }
    return fingers.entrySet().stream()
        .map(each -> each.getKey().replace(FINGER, "the " + together(each.getValue())))
        .collect(Collectors.joining(" "));
  }

  /** Such as "right index, middle, and ring fingers". */
  static String together(List<String> names) {
    String hand = names.get(0).substring(0, names.get(0).indexOf(' ') + 1);
    boolean ofOneHand =
        names.size() > 1
            && !hand.isEmpty()
            && names.stream().allMatch(name -> name.startsWith(hand) && name.endsWith(ONE));
    if (!ofOneHand) {
      return list(names, " and the ");
    }
    List<String> fingers =
        names.stream()
            .map(name -> name.substring(hand.length(), name.length() - ONE.length()))
            .toList();
    return hand + list(fingers, " and ") + ONE + "s";
  }

  private static String list(List<String> words, String and) {
    if (words.size() == 1) {
      return words.get(0);
    }
    String first = String.join(", ", words.subList(0, words.size() - 1));
    return first + (words.size() > 2 ? "," : "") + and + words.get(words.size() - 1);
  }
}
