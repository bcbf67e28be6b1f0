# What stands on the screen beside the sheets' own texts: the summary, heads of tables.

screen-mould = Mould
screen-base = Base
screen-staves = Staves
screen-weave = Weave
screen-rim = Rim
screen-filler = Filler
screen-lashing = Lashing
screen-pins = Pins
screen-ears = Ears
screen-handle = Handle
screen-lid = Lid
screen-hand = Hand

screen-mould-foot = { $foot } at the foot
screen-mould-text = { $shape }, { $height } high, girth { $base } at the base and { $top } at the top; holds { $litres } litres ({ $quarts } US quarts)
screen-base-text = { $wood } disc, { $diameter } across, { $thickness } thick; groove { $depth } deep, { $width } wide
screen-staves-text = { $count } and { $spares } spare, { $length } long, of { $stock }, { $side }; { $width } wide from { $from } up, tapered to { $foot } at the foot
screen-gap-even = gap { $taped } from base to rim
screen-gaps = gap { $taped } at the rim, taped on the mould; from stave to stave { $narrowest } at the narrowest, { $widest } at the widest
screen-next-best = next best: { $others }
screen-candidate = { $count } of { $stock } (gap { $gap } at the rim)
screen-weave-text = { $rows } rows, { $length } of weaver, up to { $top } on the mould
screen-weave-dry = { $rows } more to add when it has dried and is packed down
screen-course = rows { $first } to { $last }: { $weave } in { $weaver }, { $length } in { $strands }, take-up { $takes }
screen-seen = seen outside: { $look }
screen-strands = { $count ->
    [one] 1 strand
   *[other] { $count } strands
}
screen-first-join = first join in row { $row }, cut over stave { $cut }, start behind stave { $start }
screen-hoops = outer hoop { $outer }; inner hoop { $inner }
screen-hoop = { $length } of { $stock } (scarf { $lap }, staves { $from } to { $to })
screen-and = { " and " }
screen-lashing-text = { $style }, { $every }, { $length } of { $weaver } in { $strands }
screen-pins-text = { $count } and { $spares } spare, { $stock }, { $every }; needs { $needed } through { $stack }
screen-pins-ears = {""}; at the ears { $count } and { $spares } spare, { $stock }; needs { $needed } through { $stack }
screen-ears-text = { $material }, at staves { $first } and { $second }, { $placing }
screen-ears-text-axis = { $material }, { $axis }, at staves { $first } and { $second }, { $placing }
screen-ears-off = { $angle } off opposite, { $off } along the rim
screen-lid-text = { $count } staves, { $rows } rows over a mould { $mould } across and { $height } high; { $across } over its rim, { $clearance } of room all round; { $seat }
screen-lid-ledge = on a ledge of { $rings ->
        [one] one ring
       *[other] { $rings } rings
    }
screen-lid-over = reaches { $down } down over the rim
screen-lid-collar = flush on the rim, with a collar { $outside } across
screen-lid-hinge = { $seat }, hinged { $at }
screen-handle-text = cut { $length }, rise { $rise }, on rivets { $pivot } above the rim; { $fold }
screen-handle-fixed = fixed, cut { $length }, rise { $rise } above the rim, ends { $ends } below it
screen-handle-bought = bought bent, { $span } across its feet, rise { $rise }, on rivets { $pivot } above the rim; { $fold }
screen-handle-fixed-bought = fixed, bought bent, { $span } across its feet, rise { $rise } above the rim, ends { $ends } below it
screen-handle-knobs = two knobs { $width } across, on rivets { $pivot } above the rim
screen-fold-wall-below = folds down to { $angle } below level
screen-fold-wall-above = folds down to { $angle } above level
screen-fold-rim-below = rests on the rim, { $angle } below level
screen-fold-rim-above = rests on the rim, { $angle } above level

screen-chosen = Chosen for you (write the key into the pattern to choose otherwise)
screen-changed = Otherwise than in the packet that stood here
screen-changed-line = { $key }: { $before } before, { $now } now
screen-changed-keep = {""}; to keep it: { $keep }
screen-findings = Findings
screen-no-findings = Nothing was found against this basket.
screen-measured = { $place }: measured { $measured }, limit { $limit }
screen-mend = mend:
screen-findings-count = { $stop } stop, { $care } care, { $note } note

screen-cuts = Cut list
screen-piece = Piece
screen-material = Material
screen-pieces = Pieces
screen-length = Length
screen-width = Width
screen-total = In all
