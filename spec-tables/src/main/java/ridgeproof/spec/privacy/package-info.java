/** Fields whose values identify nobody. Everything else is masked. */
package ridgeproof.spec.privacy;
