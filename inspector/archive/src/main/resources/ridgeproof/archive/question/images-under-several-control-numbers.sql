-- The same image, by its keyed hash, in files with different control numbers, by theirs. Nothing is compared but hashes.
SELECT
  image_hash,
  count(DISTINCT control) AS control_numbers,
  count(DISTINCT fingers.file_hash) AS files,
  array_join(array_sort(collect_set(position)), ', ') AS positions,
  min(files.day) AS first_day,
  max(files.day) AS last_day
FROM fingers JOIN files ON files.file_hash = fingers.file_hash AND files.day = fingers.day
WHERE NOT repeat AND image_hash IS NOT NULL AND control IS NOT NULL
GROUP BY image_hash
HAVING count(DISTINCT control) > 1
ORDER BY control_numbers DESC, image_hash
LIMIT 100
