-- How many fingers have which score, in tens, by make and model; needs ridges depth.
SELECT
  coalesce(nullif(concat_ws(' ', nullif(make, ''), nullif(model, '')), ''), 'device not stated') AS device,
  least(score div 10, 9) * 10 AS score_from,
  count(*) AS fingers
FROM fingers JOIN files ON files.file_hash = fingers.file_hash AND files.day = fingers.day
WHERE NOT repeat AND score IS NOT NULL
GROUP BY ALL
ORDER BY device, score_from
