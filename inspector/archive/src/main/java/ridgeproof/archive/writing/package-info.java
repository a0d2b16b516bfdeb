/**
 * Divides the results of a batch among the tables. In: results as the tasks staged them. Out:
 * staged Parquet files of each table, by day, and what the next batches need to know of them.
 */
package ridgeproof.archive.writing;
