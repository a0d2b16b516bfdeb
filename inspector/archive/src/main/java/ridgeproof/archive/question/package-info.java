/**
 * Questions on an archive. In: its tables. Out: answers of SQL files, the health of stations by the
 * measures of the ledger, and a page with plots of both.
 */
package ridgeproof.archive.question;
