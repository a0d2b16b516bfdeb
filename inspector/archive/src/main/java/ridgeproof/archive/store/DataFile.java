package ridgeproof.archive.store;

import java.io.Serializable;

/** A file of a table. */
public record DataFile(ArchiveTable table, String address) implements Serializable {}
