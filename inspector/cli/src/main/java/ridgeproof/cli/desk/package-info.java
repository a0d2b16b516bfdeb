/**
 * The commands that stay open: the desk and the gate.
 *
 * <p>In: options. Out: a page in the browser of this machine, or files moved between folders.
 */
package ridgeproof.cli.desk;
