/**
 * The archive on its file system: four tables in Parquet, and the log of committed batches, by
 * which a run that was killed neither loses nor doubles a row. In: staged batches. Out: tables.
 */
package ridgeproof.archive.store;
