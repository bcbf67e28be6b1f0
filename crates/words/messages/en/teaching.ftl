# What a teacher wants to know: the usual faults with their cure, and questions for the group.

## Faults

fault-cut-uneven = The tapers differ from stave to stave.
    .cure = Shape all of them against one gauge and lay them side by side. What is off goes to the spares.
fault-cut-one-edge = Only one edge was shaved: the stave leans.
    .cure = Turn the stave over on its own outline. Take as much from the other edge, or begin a new one.
fault-cut-foot = The foot does not go into the groove, or drops out of it.
    .cure = Too thick: sand its face, and never force it, for the edge of the groove splits. Too thin: keep it for a spare, or wedge it with a shaving.

fault-bend-splinters = The outer face splinters at the bend.
    .cure = Make a new one: a splinter runs on. Steam longer, bend at once and in one movement, with the straightest grain outside.
fault-bend-springs = The handle springs open when it comes off its form.
    .cure = It came off too soon, or was bent too dry. Steam it again, bend it a little tighter than drawn, and leave it another night.

fault-seal-groove = Shellac ran into the groove or the screw hole.
    .cure = Scrape it out when it is dry: feet swell against it, and the plug's glue does not hold on it. Next time use less on the brush near both.

fault-base-off-centre = The base stands off the middle of the mould.
    .cure = Loosen the screw, measure from edge to edge at four places, tighten again. Off the middle, one side of the basket comes out steeper.
fault-base-marks = The marks do not come out even where the round closes.
    .cure = Rub them out and begin again with the quarters. Do not hide the difference in the last few gaps.

fault-staves-count = There is one stave more or fewer than { $count }.
    .cure = Have somebody else count, by tens, before the first row. One off changes the weave as well as the gaps.
fault-staves-wander = Staves lean or wander out of their places.
    .cure = Wet them, true them up with the strip, put the band back on, damp, and let them dry in their shape.
fault-staves-upright = A stave that has to lean is pulled upright, and one of its edges stands off the mould.
    .cure = Let go of it and press it flat from the foot up: where it comes to at the rim, there is its mark. Look whether the strip at the rim begins at stave 1.
fault-staves-crack = A stave cracks where it turns up.
    .cure = Let the others mellow longer in the towel and bend them round a thumb, little by little. Put a spare in its place now, not later.
fault-staves-face = One stave has its rounded face on the other side.
    .cure = Look along the wall in low light before the first row, and turn it.

fault-first-skipped = Two rows lie alike beside each other: a stave was passed wrongly.
    .cure = Go back to that place at once. Each row that covers it makes it dearer.
fault-first-loose = Daylight shows between the base and the first row.
    .cure = Wet it, pull the weaver tight round by round toward its end, and press it down to the base before the next row.
fault-first-cracks = The cane cracks at the turn.
    .cure = Soak a new strand a little longer, thin its beginning, and turn it without a kink. It goes easily from about the fourth row on.
fault-first-seam = After the first round the weaver does not change sides.
    .cure = Count the staves. If there are { $count }, a stave was skipped in this round; if not, mend the count before you weave on.

fault-half-bulges = The wall stands off the mould.
    .cure = Press it on while it is damp and keep a finger behind the weaver. Where a hand's breadth stands off, take rows out.
fault-half-drawn-in = The staves are drawn together and the gaps close.
    .cure = Pull less. Lay the weaver round the stave instead of dragging it, and true the gaps with the strip.
fault-half-join = A join shows, or its end slips out.
    .cure = Cut the old end where it lies on top of a stave and begin the new one behind the fourth stave back. Let both lie damp together.
fault-half-twill = The diagonal breaks.
    .cure = Follow it down to the last row in which it is right. The first stave passed wrongly is there; undo to that place.
fault-half-twined = The weavers were taken in the wrong order.
    .cure = Always take the one furthest behind. Peg the others down while you work with it.
fault-half-colour = A colour begins at the wrong stave.
    .cure = Compare with the card before the second row of it. Peg a tag to the stave at which each band begins.

fault-to-ears-height = The weaving stands at different heights where the two ears go.
    .cure = Measure at both marked staves before you lay the ears on. Pack the higher side; in a spiral the difference is a row at most.

fault-rest-wander = After a break staves stand crooked.
    .cure = Wet them and band them for a quarter of an hour before you weave on; band them at the end of each session.
fault-rest-slopes = The rows climb on one side.
    .cure = Measure from the base at the four quarters. Pack the high side, and leave the low side as it is, until both agree.

fault-dry-early = The rim was put on before the weaving was dry: a gap opens below it later.
    .cure = Dry, then pack, then fill up, then the rim. If it has happened, push one thin row in before the lashing.
fault-dry-damp = The weaving still feels cool inside: it is damp.
    .cure = Leave it another day in moving air, outside up. Cool to the cheek is damp.

fault-ears-opposite = The ears do not face each other.
    .cure = Count from one to the other both ways, or lay a tape round the rim, before anything is cut or covered.
fault-ears-neighbour = An ear stands on the stave beside its own.
    .cure = There are { $count } staves, so one way round has one more. Mark both staves with thread before the ears are made.
fault-ears-slips = The tail slips up while the rows go over it.
    .cure = Bind it tight with the band, damp, and let the first row cross it without pulling it up. Measure both ears after each row.
fault-ears-lifts = The tail lifts the rows as it goes down.
    .cure = Open the way with the awl first and thin the tail’s end. Press the rows down again before anything is pinned.
fault-ears-brass = The brass ear has a sharp edge and cuts the cane.
    .cure = Take it out, break all edges with a file, and rub it on paper until it does not catch on a cloth.
fault-ears-wood = The ear splits when its hole is drilled, or its tail breaks.
    .cure = Drill before the outline is cut, with scrap wood behind. Leave the tail thick until it is fitted.
fault-ears-bone = The bone chips at the edge of the hole.
    .cure = Drill slowly from both sides, wet, with a sharp bit and scrap wood behind.

fault-rings-size = A ring comes out too large or too small.
    .cure = Mark both ends on the basket itself and close the ring on its marks before you glue. One that is off is for another basket.
fault-rings-scarf = The lap shows a step or gapes.
    .cure = Shave until the tips are like paper, over the whole length. Try it closed, and only then glue; sand it when it is dry.
fault-rings-crack = The strip cracks while it is bent.
    .cure = Soak it longer and bend it a little at a time, the rounded side outward, over the knee. Put the crack into the lap if there is room.

fault-off-sticks = The basket does not come off the mould.
    .cure = Look whether the screw is out. Warm the mould or let it all dry another day, and turn to and fro. Never lever at the top row.
fault-off-tips = The tips spring apart, or the top rows come up.
    .cure = Tie a band round the tips before you lift, and leave it until the outer hoop is on.

fault-rim-slopes = The rim stands higher on one side.
    .cure = Take the clamps off there and set the hoop’s lower edge on the last row, all round, before anything is trimmed.
fault-rim-gap = There is a gap between ring and stave.
    .cure = Clamp it from the ears outward and press it in. A ring that stays loose is too large: change it.
fault-rim-short = The ends of a hoop do not overlap far enough.
    .cure = Mark both ends on the basket before you cut. Too short is too short: keep it for a smaller basket.
fault-rim-scarf = The scarf of a hoop shows a step or gapes.
    .cure = Thin both ends over the whole lap, a little more in the middle, and clamp them on each other before the next clamp is set.
fault-rim-cracks = The hoop cracks while it is bent.
    .cure = Soak it again and bend it a little at a time over the knee. Put the crack into the scarf if there is room.

fault-pins-bit = The bit breaks in the rim.
    .cure = Leave it in place, drill beside it through the same stave, and go slowly and straight. Have several bits.
fault-pins-bend = The pin bends when it is struck.
    .cure = Drill through all layers first. Hold the block tight against the head and clip the end short: about 1/16 in (1.5 mm) is enough.
fault-pins-splits = The stave splits, or the pin comes out beside it.
    .cure = Mark the middle of the stave on the outer hoop. A split tip is held by the lashing; pin the next stave instead.
fault-pins-ears = The stave of an ear was left without a pin.
    .cure = Pin it now, through hoop, ear, stave and hoop, whatever the count says. It holds the handle.

fault-lashing-frays = The lashing frays or cracks.
    .cure = Wet it again, pull it straight through the gap and not over an edge. Work with shorter strands.
fault-lashing-slack = The wraps become slack when they dry.
    .cure = Pull each wrap with the thumb on the one before it, and dry the rim before the ends are cut.
fault-lashing-runs-out = The strand ends just before the round is closed.
    .cure = Begin a new one three or four wraps earlier. Tuck both tails between the hoops where the filler hides them.
fault-lashing-crosses = The crosses do not meet in the middle of the rim.
    .cure = Look at the first round before you come back: every wrap leans alike and misses no gap.

fault-handle-level = The handle stands askew.
    .cure = Stand the basket on a level table and set the handle level before the second hole is marked. Both holes stand at one height.
fault-handle-binds = The handle does not swing, or it wobbles.
    .cure = Too tight: ease it with a washer's thickness of paper while you strike. Too loose: strike lightly all round the edge of the rivet.
fault-handle-cracks = The wood cracks at the bend or at the hole.
    .cure = A crack goes on: use a new one. Drill slowly with a sharp bit and before the ends are rounded, and spring the handle no further than it goes easily.

fault-plug-proud = The plug stands proud, or glue stains the base.
    .cure = Cut it flush with a saw laid flat, sand with the grain, and sand the stain off before any finish.
fault-plug-lashing = The sandpaper went over the lashing and left it hairy.
    .cure = Sand nothing but wood now. Singe nothing: trim hairs with small scissors.

fault-lid-rocks = The lid rocks or jams.
    .cure = Rocks: the ledge is not level; press it up against the hoop all round before the glue sets. Jams: find the tight place with a strip of paper, and pack the lashing there with a smooth stick.

fault-finish-runs = The finish runs, or stays sticky.
    .cure = Wipe a run at once. Two thin coats dry, one thick coat does not; wait as its maker says, in a dry room.
fault-finish-oil = The oil was not wiped off and stays tacky.
    .cure = Rub it with a little fresh oil on a rag, wait a few minutes and wipe all of it off. Mind the rags.
fault-finish-hairs = Ends and hairs stand out in the finish.
    .cure = Run a hand over it before the first coat, inside too, and trim what catches.

## Questions for the group

question-taper = Why does a stave narrow toward its foot?
    .answer = The base is smaller round than the rim. { $count } staves of full width would overlap at the groove.
question-odd = Why { $count } staves? What would one weaver do on { $more }?
    .answer = On an odd count it changes sides in every round and locks each stave. On { $more } it would lie the same way in every round, and nothing would hold.
question-twill = Which way does the diagonal climb, and what would turn it round?
    .answer = It climbs the way in which each row is one stave further on. Weaving the other way round, or a count that is off to the other side, turns it.
question-band = What do the staves do if the band comes off while they are damp?
    .answer = They spring back, dry that way and stay so. Whenever work stops they are wetted and banded.
question-dry = Why does the rim wait until the weaving is dry?
    .answer = Cane swells in water. As it dries each row becomes narrower, and all of them together leave a gap that would open below the rim.
question-base = The base is { $base } across. Does it stay so, and which way does it move?
    .answer = Wood grows and shrinks across its grain as the air grows damp and dry, hardly along it. So the staves need a little room in the groove.
question-ears = On { $count } staves, does any stave stand opposite another?
    .answer = No: on an odd count there is a gap opposite each stave. The ears share the difference, or one of them stands a little off.
question-ear-pins = Which pins carry the basket when it hangs by its handle?
    .answer = Those through the ears: hoop, ear, stave and hoop. All others only hold the hoops together.
question-scarfs = Why do the scarfs of the two hoops lie apart?
    .answer = A scarf is the weakest and stiffest place of a hoop. Apart, each is held by the whole wood of the other.
question-lashing = How would you find out how much lashing a rim takes?
    .answer = Wrap once, measure that, and multiply by the number of wraps ({ $wraps } here); then add the tails.
question-oil = Where are the oily rags now?
    .answer = Spread out flat to dry, or under water in a lidded metal can. In a heap they can set themselves on fire.
question-next = What would you do otherwise in your next basket?
    .answer = Each writes it into the record, with the time that it took.
