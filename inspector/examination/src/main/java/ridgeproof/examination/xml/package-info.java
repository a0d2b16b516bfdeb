/**
 * What only a transaction in XML needs of an examination: places of findings as an editor of text
 * counts them, and the check against schemas that the user has.
 */
package ridgeproof.examination.xml;
