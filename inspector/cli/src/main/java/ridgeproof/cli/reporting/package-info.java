/**
 * Which report of which form goes where, for one file or many. In: what an examination found. Out:
 * reports on the terminal, in a file or in a folder.
 */
package ridgeproof.cli.reporting;
