/**
 * Which fields describe images and features, and what records of one transaction have to agree in.
 */
package ridgeproof.spec.consistency;
