/**
 * Stories of transactions, written as TOML. In: text. Out: a scenario, or the place of the mistake.
 */
package ridgeproof.corpus.scenario;
