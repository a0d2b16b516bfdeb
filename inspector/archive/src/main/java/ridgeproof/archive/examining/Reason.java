package ridgeproof.archive.examining;

/** Why a file is in quarantine. */
public enum Reason {
  /** It is something else, such as a thumbnail of a file manager. */
  NOT_A_TRANSACTION,
  /** It is larger than the limit. */
  TOO_LARGE,
  /** It could not be read. */
  NOT_READABLE,
  /** The memory of a worker is too small for it, even with no other file under way. */
  OUT_OF_MEMORY,
  /** It was given up. */
  OUT_OF_TIME,
  /** A defect of Ridgeproof. */
  INTERNAL_ERROR
}
