/**
 * The XML encoding of the standard as data: which element path carries which field, in which form,
 * and which elements are records. Comes from the CSV files below {@code xml/}; names no field of
 * its own.
 */
package ridgeproof.spec.xml;
