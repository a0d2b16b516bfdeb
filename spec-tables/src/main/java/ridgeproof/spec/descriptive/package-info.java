/** What is known of the Type-2 fields beyond their layout, by type of transaction. */
package ridgeproof.spec.descriptive;
