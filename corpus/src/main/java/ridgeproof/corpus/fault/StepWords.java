package ridgeproof.corpus.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What follows the verb in a step. */
record StepWords(List<String> words) {

  StepWords {
    words = List.copyOf(words);
  }

  String word(int index) {
    if (index >= words.size()) {
      throw new IllegalArgumentException("word " + (index + 1) + " is missing");
    }
    return words.get(index);
  }

  int number(int index) {
    return Integer.parseInt(word(index));
  }

  double decimal(int index) {
    return Double.parseDouble(word(index));
  }

  int size() {
    return words.size();
  }

  /** Position codes joined by commas. */
  List<Integer> boxes(int index) {
    return Arrays.stream(word(index).split(",")).map(Integer::valueOf).toList();
  }

  /** Every word from here on as a number. */
  List<Integer> numbersFrom(int index) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = index; i < words.size(); i++) {
      numbers.add(number(i));
    }
    return numbers;
  }

  /** Words from here on as a value; {@code {US}} and the like stand for what cannot be typed. */
  String valueFrom(int index) {
    return String.join(" ", words.subList(Math.min(index, words.size()), words.size()))
        .replace("{US}", "\u001f")
        .replace("{RS}", "\u001e")
        .replace("{SP}", " ")
        .replace("{SEMI}", ";")
        .replace("{TAB}", "\t")
        .replace("{CRLF}", "\r\n");
  }
}
