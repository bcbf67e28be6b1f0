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

# On sheets.
sheet-fact-lid = lid
sheet-lid-of = { $across }, { $fit }: { $count } staves, { $rows } rows
sheet-card-lid = Lid, staves
sheet-card-lid-note = { $length } long; { $rows } rows
