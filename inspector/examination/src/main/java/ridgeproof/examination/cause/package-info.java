/**
 * Causes before consequences: what happened to a whole file, card or print is one finding, and what
 * follows from it alone is no longer reported beside it. A {@link
 * ridgeproof.examination.cause.Cause} says which findings it explains; an {@link
 * ridgeproof.examination.cause.Attribution} takes those out and counts them. Whoever establishes a
 * cause proves it, where possible by undoing the damage in memory and reading again.
 */
package ridgeproof.examination.cause;
