-- The last people of each station, from whose prints its health is judged as that of a ledger is.
WITH last AS (
  SELECT *,
    row_number() OVER (PARTITION BY make, model, serial ORDER BY day DESC, examined DESC, file_hash) AS turn
  FROM files
  WHERE NOT repeat AND images > 0 AND verdict <> 'UNREADABLE'
)
SELECT
  file_hash, day, examined, control, operator, make, model, serial, verdict, depth, program, tables,
  (SELECT array_agg(struct(record, position, finger, rolled, score, image_hash, encoder, platen,
      ground, contrast, ridge_period, width, unevenness, ghost, compression))
    FROM fingers WHERE fingers.file_hash = last.file_hash AND fingers.day = last.day) AS prints,
  (SELECT array_distinct(flatten(array_agg(positions)))
    FROM findings WHERE findings.file_hash = last.file_hash AND findings.day = last.day AND rule = 'RP-RDG-004') AS dry
FROM last
WHERE turn <= 1000
