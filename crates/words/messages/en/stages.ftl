### Captions and descriptions of the drawings of the making.

plate-base-on-mould = The mould stands on its rim, foot up; the base is screwed on, its bottom outward
    .alt = The mould upside down. On its foot lies the round base, with the head of the screw sunk in its middle and the groove round its edge.
plate-staves-set = All { $count } staves in the groove, held by a band; the mould still stands foot up
    .alt = { $count } staves stand round the mould, their feet in the groove of the base, close together at the base and wider apart toward the rim, with a band round them near the rim.
plate-first-rows = The first { $rows ->
        [one] row
       *[other] { $rows } rows
    }, woven from the base upward; the mould now stands on the base
    .alt = Mould and basket stand upright. Just above the base the first { $rows ->
        [one] row runs
       *[other] { $rows } rows run
    } over and under { $count } staves; the band still holds the staves near the rim.
plate-half-woven = Half way: { $rows } rows
    .alt = { $rows } rows cover the wall from the base to half its height; above them { $count } staves stand free on the mould under their band.
plate-join = A join in row { $row }: the spent strand is cut over stave { $cut }, the new one starts behind stave { $start } (drawn before the new strand is pressed down)
    .alt = A piece of the wall from outside. The new strand, light, begins behind stave { $start } and lies over the spent strand, dark, which ends over stave { $cut }.
plate-woven = The weaving done: { $rows } rows on { $count } staves
    .alt = { $rows } rows cover the wall, still on the mould; the tips of { $count } staves stand up above the last row.
plate-ears-set = Off the mould, the ears set at staves { $first-ear } and { $second-ear }
    .alt = The basket without its mould. Two ears face each other between the tips of the staves, their tails inside the weaving.
plate-handle-set = The ends of the fixed handle pushed down along staves { $first-ear } and { $second-ear }
    .alt = The basket before it has its hoops. The handle stands upright over it, its ends pushed down behind the weaving along two staves that face each other.
plate-ears-woven-in = The ears laid on staves { $first-ear } and { $second-ear }, their tails outside, after row { $rows }; the next rows go over them
    .alt = The basket on its mould, { $rows } rows high. On two staves that face each other lie ears, their tails on the outside down to the last row.
plate-ears-as-staves = The ears stand first, at the places of staves { $first-ear } and { $second-ear }; the mould stands foot up
    .alt = The mould upside down with the base on it. Two ears stand on opposite sides, each running from the base down past the rim.
plate-rings-made = Both hoops lie ready as rings beside the basket, which is still on its mould
    .alt = The basket, { $rows } rows high, on its mould. Beside it lie two rings of half round stock, one inside the other, each with a long tapered lap.
plate-hoops-scarfed = Both hoops, closed, above their places; the inner one is the lower here
    .alt = The basket, and above it two closed hoops, first the inner and then the outer one, each with a long tapered lap.
plate-scarf-close-up = The scarf of the outer hoop, between staves { $from } and { $to }
    .alt = The rim from outside and above. One end of the outer hoop thins to nothing over the other, which thins beneath it, so that the pair keeps one thickness.
plate-rim-clamped = Both hoops in place on the last row, held by { $clamps } clamps
    .alt = The basket with one hoop outside and one inside the staves, standing on the last row. { $clamps } clamps reach over the tips of the staves and hold both hoops.
plate-tips-trimmed = The tips of all { $count } staves trimmed level with the hoops
    .alt = The rim from outside and above: the tips of the staves between both hoops, cut level with their tops.
plate-pinned = All { $pins } pins in
    .alt = The basket with trimmed tips; the heads of pins stand in a row round the outer hoop.
plate-pin-and-clinch = A pin from outside and from inside
    .alt = Two pieces of the rim. On the left, from outside, the domed head of a pin on the outer hoop; on the right, from inside, its end peened over the inner hoop to a small head.
plate-lashed = Filler and lashing on: { $wraps } wraps
    .alt = The basket with its rim bound: { $wraps } wraps of cane round both hoops and the filler.
plate-lashing-start = The lashing starts: the first wraps, and the tail inside, behind the inner hoop and over the top rows
    .alt = Two pieces of the rim. On the left, from outside, the first wraps of cane go round both hoops and the filler, each through a gap between staves; the rest of the rim is bare. On the right, from inside, a tail of cane, dark, hangs from under the inner hoop over the top rows.
plate-lashing-end = The lashing ends where it began; its tail has come down between the hoops and is still to be cut flush
    .alt = The rim from outside and above: the last of { $wraps } wraps of cane meets the first. Between them a tail, dark, hangs from under the outer hoop.
plate-handled = The handle riveted to the ears
    .alt = The basket with its handle upright, riveted to both ears.
plate-handled-knob = The knobs riveted to the ears
    .alt = The basket with a turned knob riveted to the outside of each ear.
plate-ear-with-rivet = Ear, handle, washers and rivet
    .alt = An ear rising from the rim, the end of the handle outside it, a washer between them, and a rivet through all.
plate-ear-with-rivet-slot = Ear in the slot of the handle, with its rivet
    .alt = An ear rising from the rim into a slot in the end of the handle, which stands on both sides of it, and a rivet through all three.
plate-ear-with-rivet-between = Ear between the two halves of the handle, with its rivet
    .alt = An ear rising from the rim between two halves of the handle, which close above it, and a rivet through all three.
plate-ear-with-rivet-knob = Ear, knob, washers and rivet
    .alt = An ear rising from the rim, a turned knob outside it, a washer between them, and a rivet through both.
plate-lid-fitted = { $title }: the lid open, and what it sits on
    .alt = The finished basket with its lid open: turned back on its hinge, or lifted off.
plate-lid-base-on-mould = Lid: its mould foot up, the plaque screwed on
    .alt = The shallow mould of the lid upside down. On its foot lies the plaque, with the head of the screw sunk in its middle and the groove round its edge.
plate-lid-staves-set = Lid: all { $count } staves in the groove of the plaque, held by a band
    .alt = { $count } staves stand round the shallow mould, their feet in the groove of the plaque, with a band round them near the rim.
plate-lid-woven = Lid: the weaving done, { $rows } rows on { $count } staves
    .alt = { $rows } rows cover the wall of the lid, still on its mould; the tips of { $count } staves stand out beyond the last row.
plate-lid-rim-clamped = Lid: both hoops in place, held by { $clamps } clamps
    .alt = The lid, its plaque down, with one hoop outside and one inside the staves and { $clamps } clamps on them.
plate-lid-lashed = Lid: the rim lashed, { $wraps } wraps
    .alt = The lid, its plaque down, with its rim bound: { $wraps } wraps of cane round both hoops.
plate-finished = { $title }, finished
    .alt = The finished basket: { $count } staves, { $rows } rows, a rim and, where it has them, ears and handle.
plate-exploded = The parts of { $title }
    .alt = The parts of the basket drawn apart, one above the other, with their names: base, wall of { $count } staves and { $rows } rows, and above them what makes the rim and the handle.
plate-cover = { $title }
    .alt = The finished basket: { $count } staves, { $rows } rows, a rim and, where it has them, ears and handle.

plate-outside = from outside
plate-inside = from inside
plate-new-strand = new strand
plate-spent-strand = spent strand
plate-part-lid = lid
plate-part-handle = handle
plate-part-rivet = rivet and washers
plate-part-lashing = lashing
plate-part-filler = filler
plate-part-outer-hoop = outer hoop
plate-part-pin = pins
plate-part-inner-hoop = inner hoop
plate-part-ear = ears
plate-part-wall = staves and weaving
plate-part-base = base and plug
