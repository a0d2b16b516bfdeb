package ridgeproof.cli.reporting;

/** The forms of a report, named as a user types them. */
public enum ReportFormat {
  text,
  json,
  html,
  csv,
  sarif,
  pdf
}
