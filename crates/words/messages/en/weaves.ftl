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

# The weaving told row by row.
weave-row-drawn-over = From stave { $stave }, over first and then under and over in turn: { $runs }.
weave-row-drawn-under = From stave { $stave }, under first and then over and under in turn: { $runs }.
weave-row-drawn-over-again = From stave { $stave }, over first and then under and over in turn: { $runs }; the last { $repeat } of these again and again.
weave-row-drawn-under-again = From stave { $stave }, under first and then over and under in turn: { $runs }; the last { $repeat } of these again and again.
weave-row-end = Each row is a piece of its own: end it where it began, four staves over its beginning.
weave-row-step-up = Each round ends with a step up: where it comes to its beginning, let the weaver rise into the row above and begin that as told.
weave-row-join = Cut the spent strand over stave { $cut }; the new one starts behind stave { $start }.
weave-row-join-colour = Cut the spent strand over stave { $cut }; the new one, { $colour }, starts behind stave { $start }.

# The weaving told band by band. "Further on" is the way in which it is woven.
weave-rows-one = Row { $first }
weave-rows = Rows { $first }–{ $last }
weave-rows-two = Rows { $first } and { $last }
weave-rows-every = Rows { $first }, { $second } and so on to { $last }
weave-weaver = { $colour } { $material }
weave-how-on = over { $over }, under { $under }, running on from row to row
weave-how-in-turn = over { $over }, under { $under }; they take the rows in turn, and each runs on from its own row to its next
weave-how-each = over { $over }, under { $under } in each row
weave-how-twined = twisted, always with the one furthest behind: in front of { $over }, behind 1
weave-begin-over = begin over { $count ->
        [one] stave { $from }
       *[other] staves { $from }–{ $to }
    }
weave-begin-under = begin behind { $count ->
        [one] stave { $from }
       *[other] staves { $from }–{ $to }
    }
weave-on-over = go on over { $count ->
        [one] stave { $from }
       *[other] staves { $from }–{ $to }
    }
weave-on-under = go on behind { $count ->
        [one] stave { $from }
       *[other] staves { $from }–{ $to }
    }
weave-begin-behind = lay its end behind stave { $stave }
weave-on-behind = go on where it lies behind stave { $stave }
weave-band-one = { $rows }, { $weaver }: { $how }; { $begin }.
weave-band-together = { $rows }, { $count } weavers laid side by side as one: { $how }; { $begin }.
weave-band-lies = Weaver { $number } from below: { $weaver }.
weave-band-several = { $rows }, { $count } weavers: { $how }.
weave-band-each = Weaver { $number }, { $weaver }: { $begin }.
weave-band-each-from = Weaver { $number }, { $weaver }: { $begin } in row { $row }.
weave-band-drawn = { $rows }, { $weaver }.
weave-band-twined-step-up = Each round ends with a step up: where they come to their beginning, let each weaver rise in turn, the foremost first, and begin the next row as this one.
weave-band-further = Begin each row { $staves ->
        [one] one stave
       *[other] { $staves } staves
    } further on than the row below.
weave-band-skip-one = In row { $row } pass stave { $stave } on the same side as the one before it.
weave-band-skip = In row { $row } pass stave { $stave } on the same side as the one before it, and up to row { $last } one stave further on in each row.
weave-band-change = From stave { $stave } in row { $row } on: { $colour }.
weave-band-change-of = Weaver { $weaver } from stave { $stave } in row { $row } on: { $colour }.
weave-band-changes-more = { $count ->
        [one] One more change of colour stands
       *[other] { $count } more changes of colour stand
    } in the list of joins.
weave-shift-on = Each row lies { $staves ->
        [one] one stave
       *[other] { $staves } staves
    } further on than the row below.
weave-shift-back = Each row lies { $staves ->
        [one] one stave
       *[other] { $staves } staves
    } further back than the row below.
weave-shift-none = Each row lies as the row below.
