/**
 * The commands, one class each, and the way into the program. In: arguments. Out: an exit status.
 */
package ridgeproof.cli;
