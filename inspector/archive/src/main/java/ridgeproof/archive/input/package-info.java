/**
 * What a run is pointed at. In: addresses of folders and files. Out: inputs in batches, and parts
 * of a batch of about as many bytes each. Files are only read.
 */
package ridgeproof.archive.input;
