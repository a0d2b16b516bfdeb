/** The rule catalogue, the code tables and their coverage, listed for people and programs. */
package ridgeproof.report.catalogue;
