# Names of the computation's own words, units, and small joining phrases.

unit-minutes = { $minutes } min
unit-hours = { $hours } h
unit-hours-minutes = { $hours } h { $minutes } min
unit-span = { $from } to { $to }
length-by-width = { $length } × { $width }
unit-percent = { $number } %
unit-percent-span = { $from }–{ $to } %

grade-stop = stop
grade-care = care
grade-note = note

of-lid = Lid: { $text }
place-at-height = { $piece }, { $height } above the mould's foot
remedy-or = { " or " }
remedy-changes = { $what } In the pattern: { $changes }
remedy-brings = { $change } (but then: { $cares })

piece-whole = the whole basket
piece-mould = mould
piece-mould-part = part { $number } of the mould
piece-band = band
piece-base = base
    .cut = Base
piece-plaque = plaque
    .cut = Plaque
piece-groove = groove
piece-screw = screw
piece-plug = plug
    .cut = Plug
piece-staves = staves
    .cut = Stave
piece-stave = stave { $number }
piece-weaving = weaving
piece-course = course { $number }
    .cut = Weaver
piece-row = row { $number }
piece-rim = rim
piece-outer-hoop = outer hoop
    .cut = Outer hoop
piece-inner-hoop = inner hoop
    .cut = Inner hoop
piece-clamps = clamps
piece-clamp = clamp { $number }
piece-pins = pins
    .cut = Pin
piece-pin = pin in stave { $number }
piece-fillers = filler
    .cut = Filler
piece-filler = filler piece { $number }
piece-lashing = lashing
    .cut = Lashing
piece-wrap = wrap { $number } of the lashing
piece-tail = tail { $number } of the lashing
piece-ears = ears
    .cut = Ear
piece-ear = ear { $number }
piece-ledge = ledge of the lid
    .cut = Ledge
piece-collar = collar of the lid
    .cut = Collar
piece-lift = lift of the lid
    .cut = Lift
piece-hinge = hinge of the lid
    .cut = Hinge
piece-latch = latch of the lid
    .cut = Latch
piece-peg = peg of the latch
    .cut = Peg
piece-handle = handle
    .cut = Handle
piece-knobs = knobs
    .cut = Knob
piece-knob = knob { $number }
piece-rivets = rivets
    .cut = Rivet
piece-rivet = rivet { $number }
piece-washers = washers
    .cut = Washer or burr
piece-washer = washer { $number }

stage-prepared = Material cut and shaped
stage-base-on-mould = Base on the mould
stage-staves-set = Staves set under a band
stage-first-rows = First rows woven
stage-half-woven = Body half woven
stage-woven = Weaving finished
stage-rings-made = Hoops made as rings
stage-off-mould = Off the mould
stage-ears-set = Ears set
stage-rim-clamped = Hoops clamped
stage-pinned = Tips trimmed, pins in
stage-lashed = Filler and lashing on
stage-handled = Handle on
stage-finished = Finished

weave-plain = plain weave
weave-twill = { $over }/{ $under } twill
weave-reversed-twill = reversed { $over }/{ $under } twill
weave-chase = chased plain weave
weave-chase-twill = chased { $over }/{ $under } twill
weave-slew = slewing
weave-slew-twill = slewed { $over }/{ $under } twill
weave-pairing = pairing
weave-wale-3 = three-rod wale
weave-wale-4 = four-rod wale
weave-wale-5 = five-rod wale
weave-skip-one = plain weave that skips one a round
weave-drawn = hand-drawn weave

lean-left = left
lean-right = right

weave-mend-second-weaver = a second weaver that chases the first
weave-mend-one-weaver = one weaver in place of those that chase
weave-mend-run-on = one weaver that runs on from row to row
weave-mend-step-up = a step up at the end of each round
weave-mend-start-stop = each row begun and ended by itself
weave-mend-skip-one = one stave skipped a round
weave-mend-split-stave = one stave split in two
weave-mend-half-stave = a half stave put in
weave-mend-look-second-weaver = Rows of the two weavers alternate. In two colours that shows; in one it looks like one weaver. Two ends show at the top.
weave-mend-look-second-weaver-blocks = Rows of the two weavers lie opposite to each other: small blocks, no diagonal. Two ends show at the top.
weave-mend-look-one-weaver = It looks like one weaver, for it is one: no rows that alternate in two colours, and only one end at the top.
weave-mend-look-run-on = Rows climb in one spiral, by a row in each round, so that course ends do not lie level. No overlaps show.
weave-mend-look-step-up = A slanting line climbs the wall where each round steps up.
weave-mend-look-start-stop = Rows lie level, without a spiral. Each row overlaps its own beginning over four staves; beginnings are spread round, so that these thicker places do not lie above each other.
weave-mend-look-skip-one = The weaver goes over two once a round, and these longer floats climb in a spiral.
weave-mend-look-split-stave = From the split up two narrow staves stand close together. Few will see it in a narrow stave.
weave-mend-look-half-stave = One narrow stave more stands between the others, and they move a little closer.

ear-material-brass = sheet brass
ear-material-wood = wood
ear-material-oak = oak
ear-material-bone = bone

ear-way-woven-in = woven in
ear-way-pushed-down = pushed down afterwards
ear-way-as-stave = as a stave

hoop-way-rings = made as rings
hoop-way-bent = bent in place
hoop-way-bought = bought ready

ear-placing-on-staves = each ear on a stave
ear-placing-stave-and-gap = one ear on a stave, the other in the gap that faces it
ear-placing-shared = both ears a quarter pitch off their staves
ear-placing-by-angle = exactly opposite, wherever the staves are
ear-axis-long = at the two ends
ear-axis-short = in the middle of the long sides

bail-curve-semicircle = half circle
bail-curve-three-centred = three-centred curve
bail-curve-half-ellipse = half ellipse

handle-kind-swing = swinging
handle-kind-fixed = fixed in the rim
handle-kind-knob = two knobs
lid-way-mould = a mould of its own
lid-way-flat = a board, woven flat
lid-fit-drop-in = within the rim, on a ledge
lid-fit-cap = over the rim, as a cap
lid-fit-flush = flush on the rim
lid-hinge-side = at a side
lid-hinge-end = at an end
lid-hinge-none = without a hinge
lid-lift-knob = a knob
lid-lift-loop = a loop
lid-lift-none = nothing
handle-kind-none = no handle

handle-made-bought = bought bent
handle-made-bent = bent by the maker

handle-joint-outside = outside the ear
handle-joint-slot = a slot takes the ear
handle-joint-between = ear between two halves

mould-pieces-one = one piece
mould-pieces-several = pieces round a core

rings-none = none
rings-out = on the underside, looking out
rings-in = on the upper side, looking in

finish-none = left bare
finish-shellac = shellac
finish-stain-and-shellac = stain, then shellac
finish-oil = drying oil
finish-varnish = varnish
cane-face-dull = dull
cane-face-shiny = shiny
in-rim-ear = an ear
in-rim-end = an end of the handle
finish-part-all = the whole basket
finish-part-handle = the handle
finish-part-base = the base
finish-part-rim = the rim
level-beginner = beginner
level-intermediate = intermediate
level-advanced = advanced
handed-right = right
handed-left = left
direction-right = right
direction-left = left
ready-staves-cut = staves, cut to length
ready-staves-tapered = staves, cut and tapered
ready-rings = hoops, as glued rings
ready-handle = handle, bent
ready-ears = ears, shaped
ready-base = base, with its groove, sanded

every-stave = every stave
every-other-stave = every other stave

lashing-style-single = once round
lashing-style-crossed = crossed

staves-spacing-foot = at the foot
staves-spacing-rim = at the foot and at the rim

oval-side-out = rounded face out
oval-side-in = rounded face in

kind-round-reed = round reed
kind-flat-reed = flat reed
kind-flat-oval-reed = flat oval reed
kind-half-round-reed = half round reed
kind-chair-cane = chair cane
kind-binder-cane = binder cane
kind-splint = splint
kind-pin = pin
kind-rivet = rivet
kind-burr = burr

units-inches = inches
units-millimetres = millimetres

outline-round = round
outline-oval = oval
outline-stadium = straight sides and round ends
outline-rectangle = rounded rectangle
outline-traced = as traced

side-straight = straight up
side-cone = a straight slope
levels-even = even
levels-scaled = scaled
side-board = a board with a rounded edge, level before it
side-bowl = a bowl, upright at the rim

way-continuous = runs on from row to row
way-row-by-row = each row by itself

language-english = English
language-german = German
