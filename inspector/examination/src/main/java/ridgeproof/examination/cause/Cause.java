package ridgeproof.examination.cause;

import ridgeproof.finding.Finding;

/**
 * What happened to the whole file, to a card or to a print.
 *
 * @param finding what is reported of it
 * @param consequences the findings that would not be there without it
 */
public record Cause(Finding finding, Consequences consequences) {}
