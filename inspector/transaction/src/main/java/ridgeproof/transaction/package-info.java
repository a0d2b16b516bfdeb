/** A transaction as it was read: its records, and what reading met. */
package ridgeproof.transaction;
