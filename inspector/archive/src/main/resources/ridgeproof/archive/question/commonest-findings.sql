-- In how many files each finding is, and at how many places; the commonest first.
SELECT rule, severity, count(DISTINCT file_hash) AS files, sum(places) AS places
FROM findings
GROUP BY rule, severity
ORDER BY files DESC, rule, severity
LIMIT 40
