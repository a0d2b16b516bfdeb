package ridgeproof.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ridgeproof.transaction.Transaction;

/**
 * Looks in an output for values of a person, in every form in which they could stand there.
 *
 * @param codes forms of values of three characters, which come about by chance within other words
 * @param forms forms of all other values
 */
record PersonalSearch(Set<String> codes, Set<String> forms) {

  private static final int CODE = 3;
  private static final Pattern LINE_BREAKS = Pattern.compile("\\s*\\R\\s*");
  private static final Pattern SPACE = Pattern.compile("\\s+");

  /** For the values that the layouts call personal. */
  static PersonalSearch of(Transaction transaction) {
    return of(PersonalForms.values(transaction));
  }

  static PersonalSearch of(Set<String> values) {
    return new PersonalSearch(
        formsOf(values.stream().filter(value -> value.length() == CODE).toList()),
        formsOf(values.stream().filter(value -> value.length() != CODE).toList()));
  }

  private static Set<String> formsOf(List<String> values) {
    return values.stream()
        .flatMap(value -> PersonalForms.of(value).stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** What a text tells, also where a line ends within it. */
  Set<String> foundIn(String text) {
    Set<String> found = new LinkedHashSet<>();
    codes.stream().filter(code -> isWord(text, code)).forEach(found::add);
    String unbroken = LINE_BREAKS.matcher(text).replaceAll(" ");
    String closed = SPACE.matcher(text).replaceAll("");
    for (String form : forms) {
      // Digits of columns side by side would make any number.
      boolean word = form.chars().anyMatch(Character::isLetter);
      boolean there =
          word
              ? closed.contains(SPACE.matcher(form).replaceAll(""))
              : text.contains(form) || unbroken.contains(form);
      if (there) {
        found.add(form);
      }
    }
    return found;
  }

  private static boolean isWord(String text, String form) {
    return text.contains(form)
        && Pattern.compile("(?<![\\w./#&-])" + Pattern.quote(form) + "(?![\\w-])")
            .matcher(text)
            .find();
  }
}
