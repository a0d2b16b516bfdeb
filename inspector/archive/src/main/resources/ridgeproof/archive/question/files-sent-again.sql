-- Files whose bytes came more than once, by the hash of the file.
SELECT file_hash, count(*) AS files, min(day) AS first_day, max(day) AS last_day
FROM files
GROUP BY file_hash
HAVING count(*) > 1
ORDER BY files DESC, file_hash
LIMIT 100
