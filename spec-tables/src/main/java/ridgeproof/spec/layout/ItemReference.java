package ridgeproof.spec.layout;

/**
 * An information item of a field, {@code 9.300/1}.
 *
 * @param item counted from 1
 */
public record ItemReference(FieldNumber field, int item) {

  /**
   * Reads {@code 9.300/1}; without the slash it is the first item.
   *
   * @throws IllegalArgumentException if the text is not that
   */
  public static ItemReference parse(String text) {
    int slash = text.indexOf('/');
    return slash < 0
        ? new ItemReference(FieldNumber.parse(text), 1)
        : new ItemReference(
            FieldNumber.parse(text.substring(0, slash)),
            Integer.parseInt(text.substring(slash + 1)));
  }
}
