-- How many people's files were READY when they came for the first time, by station and month.
-- A person is a control number (by its keyed hash); a file without one is a person of its own.
WITH first AS (
  SELECT *, row_number() OVER (PARTITION BY coalesce(control, file_hash) ORDER BY day, examined, file_hash) AS turn
  FROM files
  WHERE NOT repeat AND verdict <> 'UNREADABLE'
)
SELECT
  coalesce(nullif(concat_ws(' ', nullif(make, ''), nullif(model, ''), nullif(serial, '')), ''), 'station not stated') AS station,
  date_trunc('month', day) :: date AS month,
  count_if(verdict = 'READY') AS ready,
  count(*) AS people
FROM first
WHERE turn = 1
GROUP BY ALL
ORDER BY station, month
