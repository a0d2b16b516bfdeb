/**
 * The examination of millions of transactions on Apache Spark. In: folders, lists and tables of
 * files. Out: Parquet tables of what was found, and answers to questions on them. Only this module
 * and what starts it know of Spark.
 */
package ridgeproof.archive;
