/**
 * Entries in a database: SQLite in a file, or PostgreSQL at an address. In: entries. Out: entries,
 * and what is needed of them for a report. Each entry is written in one transaction, so that it is
 * there as a whole or not at all, whenever the process ends.
 */
package ridgeproof.ledger.store;
