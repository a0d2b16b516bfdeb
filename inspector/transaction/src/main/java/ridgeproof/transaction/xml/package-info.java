/**
 * Reads the NIEM-conformant XML encoding: bytes in, records with fields, subfields and items out,
 * each with its place in the file, as the traditional reader makes them. What departs becomes a
 * finding, and reading goes on with the next element that is known. Names of elements and fields
 * come from the tables alone.
 */
package ridgeproof.transaction.xml;
