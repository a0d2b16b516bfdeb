package ridgeproof.spec;

import java.util.HexFormat;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.IntUnaryOperator;
import ridgeproof.spec.table.Table;

/**
 * How a kind of file begins.
 *
 * @param hex the bytes, two digits each
 * @param offset where they stand
 * @param kind what to call it, with an article
 * @param rule what reports such a file in place of a transaction; empty for the general rule
 */
public record FileSignature(String hex, int offset, String kind, Optional<String> rule) {

  static FileSignature of(Table.Row row) {
    return new FileSignature(
        row.required("hex"),
        row.parse("offset", Integer::parseInt),
        row.required("kind"),
        row.optional("rule"));
  }

  /**
   * Whether a file begins like this.
   *
   * @param has whether there are so many bytes at a position
   * @param byteAt the byte at a position, 0 to 255
   */
  public boolean matches(BiPredicate<Integer, Integer> has, IntUnaryOperator byteAt) {
    byte[] wanted = HexFormat.of().parseHex(hex);
    if (!has.test(offset, wanted.length)) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if (byteAt.applyAsInt(offset + i) != (wanted[i] & 0xFF)) {
        return false;
      }
    }
    return true;
  }
}
