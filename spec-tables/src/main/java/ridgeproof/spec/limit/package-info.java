/** Numbers that measured values are compared with, each with its unit and source. */
package ridgeproof.spec.limit;
