/**
 * Files in and out, the terminal and exit statuses: the only place that knows the file system. In:
 * paths. Out: bytes, or a failure in a sentence.
 */
package ridgeproof.cli.io;
