package ridgeproof.examination.submission;

import java.util.Optional;
import ridgeproof.examination.rules.descriptive.DescriptiveText;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.submission.TransactionNeed;
import ridgeproof.transaction.Transaction;

/** What the lists say of the type of a transaction, field 1.004, in the domain of field 1.013. */
public final class TransactionKind {

  public static final FieldNumber FIELD = new FieldNumber(1, 4);
  public static final String TABLE = "transaction-types";

  private static final int DOMAIN_FIELD = 13;
  private static final String LISTED_DOMAIN = "NORAM";

  private final Transaction transaction;
  private final SpecTables tables;

  public TransactionKind(Transaction transaction, SpecTables tables) {
    this.transaction = transaction;
    this.tables = tables;
  }

  /** Whether the lists of types are those of the file's domain; a file that names none is meant. */
  public boolean isOfListedDomain() {
    return transaction
        .header()
        .flatMap(header -> header.text(DOMAIN_FIELD))
        .filter(domain -> !domain.equalsIgnoreCase(LISTED_DOMAIN))
        .isEmpty();
  }

  /** The type as it is listed; bureaus compare codes letter by letter. */
  public Optional<Code> listed() {
    return isOfListedDomain()
        ? transaction
            .typeOfTransaction()
            .flatMap(
                type -> tables.codes(TABLE).find(type).filter(code -> code.code().equals(type)))
        : Optional.empty();
  }

  /** What such a transaction has to hold; empty where no list says so, and for a placeholder. */
  public Optional<TransactionNeed> need() {
    return listedNeed()
        .filter(need -> need.kind() == TransactionNeed.Kind.NOTHING || !isPlaceholder());
  }

  /**
   * Whether the file has none of the fields of its type. That is reported for itself; the type may
   * only fill its field then, and is no measure of anything else.
   */
  public boolean isPlaceholder() {
    return DescriptiveText.areAbsent(transaction, tables);
  }

  private Optional<TransactionNeed> listedNeed() {
    return listed().flatMap(code -> tables.submissions().need(code.code()));
  }

  /** Why completeness cannot be judged by the type of transaction; empty where it can. */
  public Optional<String> whyUnknown() {
    if (need().isPresent()) {
      return Optional.empty();
    }
    if (listedNeed().isPresent()) {
      return Optional.of("the file has none of the fields required for its type of transaction");
    }
    if (transaction.typeOfTransaction().isEmpty()) {
      return Optional.of("the file states no type of transaction");
    }
    if (!isOfListedDomain()) {
      return Optional.of("the types of transaction of this domain are not known");
    }
    return Optional.of(
        listed()
            .map(code -> "no published list says which records " + code.code() + " needs")
            .orElse("the type of transaction is not in any published list"));
  }
}
