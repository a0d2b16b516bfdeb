/**
 * The work of a task. In: inputs. Out: one row for each, of what was found or of why nothing could
 * be found, without a biographic value and without an image.
 */
package ridgeproof.archive.examining;
