### Answers about weaves: what runs on a count, proposals, rows told.

weaves-run = Runs on { $count } staves
weaves-fail = Does not run on { $count } staves
weaves-weave = Weave
weaves-weavers = Weavers
weaves-seen = Seen outside
weaves-instead = Instead
weaves-row-by-row = { $weave }, row by row
weaves-loose = does not hold
weaves-open = rows do not meet
weaves-flat = no diagonal
weaves-plain = skips none: plain weave
weaves-skips = checks; the skips climb to the { $side }
weaves-counts = on { $counts } staves

look-plain = one even surface
look-columns = columns
look-bands = bands
look-checks = checks
look-spiral = lines that climb
look-chain = chain
look-climbs-right = climbs to the right, rising at { $climb }
look-climbs-left = climbs to the left, rising at { $climb }
look-turns-right = spiral to the right, turns: { $turns }, rising at { $climb }
look-turns-left = spiral to the left, turns: { $turns }, rising at { $climb }
look-spiral-right = climbs to the right; staves a row: { $slope }
look-spiral-left = climbs to the left; staves a row: { $slope }
look-arrows = arrows
look-mixed = no line stands out

proposal-head = { $number }. { $count } staves, { $weave }
proposal-turns = { $turns } turns in { $rows } rows
proposal-rows = { $turns } turns in { $rows } rows
proposal-sides = Charts show the outside with the base down, the lowest rows only; stave 1 is at the right.
proposal-sides-left = Charts show the outside with the base down, the lowest rows only; stave 1 is at the left. They are woven with the left hand: write hand = "left" in the pattern.
proposal-stave = stave
proposal-weaver = weaver

rows-course = Course { $number }: { $weave }
rows-join = join in row { $row }
rows-seen = Seen outside: { $outside }. Inside: { $inside }.
rows-tally = Tally, a box a row
