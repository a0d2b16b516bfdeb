/**
 * Ledgers on the command line: recording what is examined, and the commands that report on it. The
 * file of a ledger and that of its key are made and guarded here. In: reports on files. Out:
 * entries of a ledger, and what is printed of them.
 */
package ridgeproof.cli.ledger;
