package ridgeproof.ledger.health;

/** What the picture beside a finding shows. */
public sealed interface Evidence permits PlatenMap, LevelSeries, GroupLevels, SeasonShares {}
