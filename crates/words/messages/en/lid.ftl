# The lid: what to do when its own vessel is made, and what sheets say of it.

step-lid = Fit the lid
step-lid-text-ledge = Bend { $rings ->
        [one] a ring
       *[other] { $rings } rings
    } of { $stock } to fit inside the basket below its inner hoop, with scarfs of { $lap }, glued: { $inside } across inside when done.
step-lid-text-ledge-flat = The rings lie within each other, flat side to flat side; glue them to one ring.
step-lid-text-ledge-fix = Push the ledge up against the inner hoop, level all round. Glue it, and sew it to every tenth stave with fine cane. The lid lies { $overlap } on it even when it is pushed to one side.
step-lid-text-collar = Bend a ring of { $stock }, flat side out, with scarfs of { $lap }, glued: { $outside } across outside when done. It is the collar.
step-lid-text-collar-fix = Set the collar into the rim of the lid, so that it stands { $down } out of it, level all round. Pack cane between collar and rim where there is room, glue it, and sew it to every tenth stave with fine cane.
step-lid-text-knob = Glue the tenon of the knob into the hole of { $hole } in the plaque, from the outside.
step-lid-text-loop = Pull the cane twice through the hole of { $hole } in the plaque, a finger’s width high outside, tuck the ends inside, and close the hole with glue and a peg.
step-lid-text-plug = Close the hole of { $hole } in the plaque with its plug.
step-lid-text-try = Turn the lid plaque up and try it in, all ways round. There should be { $clearance } of room all round; its top stands { $rises } above the rim.
step-lid-text-try-cap = Turn the lid plaque up and try it on, all ways round. It reaches { $down } down over the rim, with { $clearance } of room all round; its top stands { $rises } above the rim.
step-lid-text-try-flush = Turn the lid plaque up and try it on, all ways round. Rim lies on rim, flush outside; the collar has { $clearance } of room in the basket. Its top stands { $rises } above the rim.
step-lid-text-hinge = Hinge: two loops of cane, twice round both rims and { $apart } apart. Between them the rim is nearly straight, so that the lid opens without pressing on the rim. Lay the lid on and tie the loops so loose that it stands upright when it is open. Turned over, its staves count the other way round.
step-lid-text-hinge-loop = A loop goes through the gap between staves { $from } and { $to } of the basket and the one between { $lid-from } and { $lid-to } of the lid.
step-lid-text-latch = Latch: a loop round the lid’s rim, in the gap between its staves { $lid-from } and { $lid-to }. Where it hangs, between staves { $from } and { $to } of the basket, drill the outer hoop and glue in the peg.
step-lid-text-alike = Mark one end of lid and basket alike, inside, so that the lid always goes in as it was fitted. The wraps of both rims climb the same way.

# The steps of its own making, in the words of a lid.
step-lid-own-seal = Seal the plaque
step-lid-own-seal-text-sand = Sand the plaque smooth with the grain, both faces and the edge, and wipe off the dust.
step-lid-own-base = Fix the plaque on the mould
step-lid-own-base-text-sand = Sand the plaque smooth now, while it can be held flat.
step-lid-own-base-text-screw = Stand the mould on its rim, foot up. Screw the plaque ({ $diameter } across) through its { $hole } hole to the foot of the mould, in the middle, the side that will be the top of the lid outward. Turn it to see that it runs true.
step-lid-own-base-text-along = The length of the plaque lies along the length of the mould: look that the mould shows as far all round.
step-lid-own-base-text-strips = The plaque is glued up from strips { $width } wide: { $woods }.
step-lid-own-base-text-guard = Guard the plaque from here on: keep wet strands and clamps off it, or cover it with card and tape.
step-lid-own-base-text-mark = Mark the edge of the plaque with the spacing strip for { $count } staves. Begin with the quarters, at staves { $quarters }; then fill each quarter. Errors do not add up that way.
step-lid-own-cut-text-staves = Cut { $all } pieces { $length } long: { $count } for the lid and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }.
step-lid-own-staves-text-ends = Each stave stands square to the edge of the plaque where its foot is, and so it stays up to the rim: none leans toward an end. The gaps grow most at the two ends, to { $ends } at the rim, and least along the sides, to { $sides }.
step-lid-own-staves-text-band = Bend all staves up along the mould, upright and evenly spaced, and hold them with an elastic band round mould and plaque. Spray them, true them up, and let them take the mould’s shape overnight. Put the band back on, damp, whenever work stops.
step-lid-own-first-text-start = Turn the mould over, so that it stands on the plaque. Soak { $weaver }. Thin the first few inches of the weaver before you lay its end behind a stave.
step-lid-own-first-text-direction = Staves are numbered in the order in which the weaver comes to them, and “further on” is that way. With the outside facing you and the foot of the mould up, it runs to the right; standing on its plaque, to the left.
step-lid-own-first-text-direction-left = Staves are numbered in the order in which the weaver comes to them, and “further on” is that way. With the outside facing you and the foot of the mould up, it runs to the left; standing on its plaque, to the right.
step-lid-own-first-text-hardest = The first two rows are the hardest, and from the fourth on it goes easily; every inch further from the plaque is easier. Lift the staves with a blunt needle or a packing tool, one after the other.
step-lid-own-dry-text-wait = Leave the lid on the mould, banded, until it is dry through: usually one to three days.
step-lid-own-dry-text-pack = Press the rows down, all round, from the plaque upward. About { $gap } opens at the top.
step-lid-own-cut-text-ready = { $all } staves lie ready, cut { $length } long: { $count } for the lid and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }. Set the thinnest aside as spares.
step-lid-own-staves-text-ready = { $all } staves lie ready, cut { $length } long and tapered: { $count } for the lid and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }. Count them, lay the narrow ends to one side and try a few in the groove.
step-lid-own-first-text-weave = Weave { $rows ->
        [one] one row
       *[other] { $rows } rows
    } tight against the plaque. After one round the weaver goes over where it went under. If it does not, a stave was missed: go back.
step-lid-own-rings-text-glue = Glue the laps, hold them with clothes pegs, and let the rings dry overnight, round and flat. The lid can dry on its mould meanwhile.
step-lid-own-off = Take the lid off the mould
step-lid-own-off-text-screw = Take out the screw and lift the lid off the mould, turning it a little to and fro: the rim needs the room inside.

# The same of a lid that is woven flat.
step-lid-flat-base-text-screw = Lay the board flat, its rounded edge up. Screw the plaque ({ $diameter } across) through its { $hole } hole to the middle of the board, the side that will be the top of the lid up.
step-lid-flat-staves-text-band = Lay all staves out flat on the board, like rays and evenly spaced, bend their ends down over its edge, and hold them with an elastic band round the edge. Spray them, true them up, and let them dry so overnight. Put the band back on, damp, whenever work stops.
step-lid-flat-first-text-start = The board stays as it lies, plaque up. Soak { $weaver }. Thin the first few inches of the weaver before you lay its end behind a stave.
step-lid-flat-dry-text-wait = Leave the lid on the board, banded, with a second board and a weight on it, until it is dry through: usually one to three days. What dries without a weight dries hollow.
step-lid-flat-dry-text-pack = Press the rows together, all round, from the plaque outward. About { $gap } opens at the edge.
step-lid-flat-half-text-weave = Weave on to row { $row }, flat on the board. Keep staves and weaver damp. Press each row against the one before, and look that every stave still runs straight out from the plaque: pulled too tight, flat weaving rises.
step-lid-flat-rest-text-weave = Weave on to row { $rows }, round the edge of the board and { $height } down from its face. Check with the spacing strip for the rim from time to time.

# On sheets.
sheet-fact-lid = lid
sheet-lid-of = { $across }, { $fit }: { $count } staves, { $rows } rows
sheet-card-lid = Lid, staves
sheet-card-lid-note = { $length } long; { $rows } rows
