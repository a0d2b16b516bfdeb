/** Single requirements, counted out of the layouts, and values that violate them. */
package ridgeproof.spec.requirement;
