/** Records, fields, subfields and items, each with its place in the bytes of the file. */
package ridgeproof.transaction.record;
