/**
 * File systems by address. In: an address and the configuration of Hadoop. Out: its file system,
 * for files of this machine one that starts no processes and leaves no files of check sums.
 */
package ridgeproof.archive.local;
