# The steps, the tools and the cautions.

## Cut and shape

step-cut = Cut and shape the staves
step-cut-text-sort = Look through { $stock } and sort it. Keep even, straight pieces for staves; set thin or hairy ones aside.
step-cut-text-staves = Cut { $all } pieces { $length } long: { $count } for the basket and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }.
step-cut-text-staves-groups = Cut { $all } pieces, not all alike: { $count } for the basket and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }. Write its group on each, and its number where it has one.
step-cut-text-group = Group { $group }: { $count } pieces { $length } long and { $width } wide, for staves { $staves }{ $spares ->
        [0] .
        [one] { " " }and one spare.
       *[other] { " " }and { $spares } spares.
    }
step-cut-text-ready = { $all } staves lie ready, cut { $length } long: { $count } for the basket and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }. Set the thinnest aside as spares.
step-cut-text-taper = Taper each one toward the foot, gradually and all alike; a gauge helps. From { $above_foot } above the foot upward it keeps its full width of { $width }; from there it runs straight down to { $foot }. Take the same from both sides.
step-cut-text-full = They keep their full width of { $width } down to the foot: nothing is tapered.
step-cut-text-try-full = Sand both faces and both edges. Try each foot in the groove: it goes in { $groove } by hand, without force and without play.
step-cut-text-try = Sand both faces and both edges, most where they were shaved. The narrow end goes into the groove: try each foot there. It goes in { $groove } by hand, without force and without play.

## Handle, where it is bent by the maker

step-bend = Bend the handle
step-bend-text-shape = Shape the handle { $length } long, { $width } wide and { $thickness } thick, with the grain, and break its edges.
step-bend-text-halves = Shape two halves of the handle, each { $length } long, { $width } wide and { $half } thick, with the grain. Bend them together, one on the other; when they are dry, glue them in the middle and leave the ends open for the ears.
step-bend-text-bend = Steam it, or soak it in hot water, until it gives. Bend it at once over its form to a { $curve }, { $span } from middle to middle at its feet and { $rise } high, and clamp it.
step-bend-text-dry = Leave it on its form at least overnight. It may stay there until the basket is ready for it.

## Base

step-seal = Seal the base
step-seal-text-sand = Sand the base smooth with the grain, both faces and the edge, and wipe off the dust.
step-seal-text-coat = Brush one thin coat of shellac on both faces and the edge, but not into the groove and not into the screw hole, where glue will have to hold. Let it dry as its maker says. Wet strands leave marks in bare wood.

step-base = Fix the base on the mould
step-base-text-sand = Sand the base smooth now, while it can be held flat.
step-base-text-pieces = Put the mould together: its segments round the core, tied with a cord. The screw goes into the core.
step-base-text-screw = Stand the mould on its rim, foot up. Screw the base ({ $diameter } across) through its { $hole } hole to the foot of the mould, in the middle, the side that will be the bottom outward. Turn it to see that it runs true.
step-base-text-along = The length of the base lies along the length of the mould: look that the mould shows as far all round.
step-base-text-strips = The base is glued up from strips { $width } wide: { $woods }.
step-base-text-rings-out = Its turned rings look out: they are on the side that will be the bottom.
step-base-text-rings-in = Its turned rings look in: they lie on the mould.
step-base-text-guard = Guard the base from here on: keep wet strands and clamps off it, or cover it with card and tape.
step-base-text-guard-bare = The wood is bare: guard it from here on. Cover it with card and tape, for water and fingers mark it.
step-base-text-mark = Mark the edge of the base with the spacing strip for { $count } staves. Begin with the quarters, at staves { $quarters }; then fill each quarter. Errors do not add up that way.

## Staves

step-staves = Set the staves
step-staves-text-ready = { $all } staves lie ready, cut { $length } long and tapered: { $count } for the basket and { $spares ->
        [one] one spare
       *[other] { $spares } spares
    }. Count them, lay the narrow ends to one side and try a few in the groove.
step-staves-text-soak = Dip the staves ({ $stock }) in water and let them mellow in a damp towel; a long soak only swells them. They are ready when the narrow end bends without a sound.
step-staves-text-set = Set staves { $quarters } first, then the rest between them, on their marks, { $count } in all. Each foot goes to the bottom of the groove ({ $depth }) and lies square to the edge.
step-staves-text-set-lean = Set staves { $quarters } first, then the rest between them, on their marks, { $count } in all. Each foot goes to the bottom of the groove ({ $depth }).
step-staves-text-group = Group { $group } goes to the places { $staves }.
step-staves-text-lean = Not all of them stand square to the edge of the base: staves { $staves } lean, by up to { $lean }, and their feet lie as much aslant in the groove. Let them: on that way each lies flat.
step-staves-text-ends = Each stave stands square to the edge of the base where its foot is, and so it stays up to the rim: none leans toward an end. The gaps grow most at the two ends, to { $ends } at the rim, and least along the sides, to { $sides }.
step-staves-text-face-out = The rounded face looks out; the flat face lies on the mould.
step-staves-text-face-in = The flat face looks out; the rounded face lies on the mould.
step-staves-text-count = Count the staves. Then count them again: { $count }.
step-staves-text-band = Bend all staves up along the mould, upright and evenly spaced, and hold them with an elastic band round mould and base. Spray them, true them up, and let them take the mould’s shape overnight. Put the band back on, damp, whenever work stops.
step-staves-text-band-lean = Bend all staves up along the mould, each from its mark at the foot to its mark at the rim, and hold them with an elastic band round mould and base. Spray them, true them up, and let them take the mould’s shape overnight. Put the band back on, damp, whenever work stops.

## Weaving

step-first = Weave the first rows
step-first-text-start = Turn the mould over, so that it stands on the base. Soak { $weaver }. Thin the first few inches of the weaver before you lay its end behind a stave.
step-first-text-direction = Staves are numbered in the order in which the weaver comes to them, and “further on” is that way. With the outside facing you and the foot of the mould up, it runs to the right; standing on its base, to the left.
step-first-text-direction-left = Staves are numbered in the order in which the weaver comes to them, and “further on” is that way. With the outside facing you and the foot of the mould up, it runs to the left; standing on its base, to the right.
step-first-text-face = In the first two rows, where it turns hardest, the dull face of the cane looks out: it cracks less. From then on the shiny face looks out.
step-first-text-face-shiny = The shiny face of the cane looks out from the first row on. Where it turns hardest it cracks sooner than the dull one: keep it damp, and turn it slowly round each stave.
step-first-text-odd = The count of staves is odd, so one weaver runs on from row to row without stopping.
step-first-text-hardest = The first two rows are the hardest, and from the fourth on it goes easily; every inch further from the base is easier. Lift the staves with a blunt needle or a packing tool, one after the other.
step-first-text-weave = Weave { $rows ->
        [one] one row
       *[other] { $rows } rows
    } tight against the base. After one round the weaver goes over where it went under. If it does not, a stave was missed: go back.
step-first-text-weave-other = Weave { $rows ->
        [one] one row
       *[other] { $rows } rows
    } tight against the base. Compare each round with the chart before you go on: a stave missed shows at once, and only then is it quick to mend.
step-first-text-check = Keep the staves upright and even. The gap between them at the rim will be { $gap }; the spacing strip shows where each one belongs.

step-half = Weave to half the height
step-half-text-weave = Weave on to row { $row }, about { $height } up the mould. Keep staves and weaver damp. Press each row down on the one below, and keep the wall against the mould: a wall woven loose comes out larger than its mould.
step-to-ears = Weave to the ears
step-to-ears-text-weave = Weave on to row { $row }. About { $left } of the mould is left above it: here the ears are laid on.

step-rest = Weave to the rim
step-rest-text-weave = Weave on to row { $rows }, { $height } up the mould. Check with the spacing strip for the rim from time to time.
step-rest-text-stop = Whenever work stops, wet the staves again and put the band back on, or they wander while they dry.

step-joins-text-expect = { $joins ->
        [one] Expect about one join in these rows. Strands differ in length, so it falls where it falls.
       *[other] Expect about { $joins } joins in these rows. Strands differ in length, so they fall where they fall.
    }
step-joins-text-dyed = { $joins ->
        [one] The join that changes a colour falls where it is told above
       *[other] The { $joins } joins of dyed strands fall where they are told above or listed
    }: cut the spent strand to suit.
step-joins-text-how = Cut the spent strand where it lies on top of a stave. The new one starts behind the fourth stave back and runs on top of the old, so that neither end shows.

step-dry = Let it dry, pack it, fill up
step-dry-text-wait = Leave the basket on the mould, banded, until it is dry through: usually one to three days.
step-dry-text-pack = Press the rows down, all round, from the base upward. About { $gap } opens at the top.
step-dry-text-add = Fill it with { $rows ->
        [one] one more row
       *[other] { $rows } more rows
    } of { $weaver }.
step-dry-text-end = Thin the last few inches of the weaver and end it behind the stave above where you began, so that the top stays level.

## Ears

step-ears = Make and set the ears
step-ears-text-make = Saw two ears from { $material }: { $length } long, { $width } wide, { $thickness } thick. Round the top and break all edges.
step-ears-text-ready = Take the two ears that lie ready: { $material }, { $length } long, { $width } wide, { $thickness } thick. Look that no edge is sharp.
step-ears-text-shave = Saw a shoulder { $shoulder } deep into both faces, { $shaved } above the lower end: it will rest on the hoops. Shave everything below it to { $blade }, and let the end run out to { $tip }.
step-ears-text-shave-stave = Saw a shoulder { $shoulder } deep into both faces, { $shaved } above the lower end: it will rest on the hoops. Shave everything below it to a stave: { $blade } thick, { $width } wide, tapered at the foot to { $foot } like the others.
step-ears-text-narrow = Narrow the part that goes below the rim to { $width }, the width of a stave, so that the weaver passes beside it.
step-ears-text-count = Find both places by counting both ways. From stave { $first } it is { $up } staves up to stave { $second } by rising numbers, and { $down } by falling ones. Mark both staves.
step-ears-text-long = The ears stand at the two ends of the basket.
step-ears-text-long-beside = The ears belong to the two ends of the basket; on this count one stands up to { $off } beside its end.
step-ears-text-short = The ears stand in the middle of both long sides.
step-ears-text-short-beside = The ears belong to the middle of both long sides; on this count one stands up to { $off } beside it.
step-ears-text-on-staves-off = Set one ear on stave { $first } and the other on stave { $second }. On this count no stave faces another: ear 2 stands { $off } toward stave { $toward }.
step-ears-text-on-staves = Set one ear on stave { $first } and the other on stave { $second }. They face each other.
step-ears-text-stave-and-gap = Set one ear on stave { $first }. The other faces it from the gap between staves { $second } and { $toward_second }.
step-ears-text-shared = Set one ear { $off_first } beside stave { $first }, toward stave { $toward_first }, and the other { $off_second } beside stave { $second }, toward stave { $toward_second }. So they face each other.
step-ears-text-by-angle = Set the first ear on stave { $first }. The other faces it { $off_second } beside stave { $second }, toward stave { $toward_second }.
step-ears-text-lay = Lay the tail of each ear on the outside of its stave, its end on row { $row }; { $left } of the mould is left there. Bind it there with a piece of cord. The next { $rows ->
        [one] row goes
       *[other] { $rows } rows go
    } over stave and tail as over one. The top of the ear then stands { $stands } above the last row.
step-ears-text-hide = Where a weaver ends or begins anew up here, hide its end behind the ear at stave { $first } or { $second }.
step-ears-text-push = Open a way down along the stave with an awl and push the tail down between stave and weaving, { $tail } below the rim. Cut the tips of the staves behind the ear’s head level with the top of the rim.
step-ears-text-as-stave = Set both ears first: each stands in the groove in the place of its stave, { $depth } deep, and counts as that stave from now on.
step-ears-text-on-stave = Set the staves of both ears first and lay the tail of each ear on the outside of its own, { $tail } down to the base. Bind it there. From the first row on, the rows go over both as over one.
step-ears-text-hole = The hole for the rivet comes { $hole } above the rim.
step-ears-text-measure = Lay a tape round the rim from ear to ear, both ways: { $girth } each. Correct now what differs.

## Rim

step-rings = Make the hoops as rings
step-rings-text-cut = Cut a strip { $outer } long from { $outer_stock } for the outer ring and one { $inner } long from { $inner_stock } for the inner one. Soak both until they bend without a sound.
step-rings-text-outer = Lay the long strip round the outside of the staves, just above the weaving, flat side to the staves. Let the ends overlap by { $lap } and mark both ends where they fall. The ring is { $across } across inside.
step-rings-text-inner = Mark the other strip the same way with its flat side outward: its ring goes inside the tips and is { $across } across outside. Try it inside the tips, above the mould.
step-rings-text-shave = Shave one end of each strip from the face and the other from the back, over the whole { $lap }, until both tips are paper-thin. Round them. Close the ring on its marks and try it: the lap is as thick as the rest.
step-rings-text-glue = Glue the laps, hold them with clothes pegs, and let the rings dry overnight, round and flat. The basket can dry on its mould meanwhile.
step-rings-text-sand = Sand each lap until the joint cannot be seen or felt.

step-rim = Set and clamp the hoops
step-rim-text-outer = Cut the outer hoop { $length } long from { $stock }. Its scarf lies between staves { $from } and { $to }.
step-rim-text-inner = Cut the inner hoop { $length } long from { $stock }. Its scarf lies between staves { $from } and { $to }, away from the other.
step-rim-text-scarf = Thin both ends of each hoop over { $lap }, one from above and one from below, so that they lap as one thickness.
step-rim-text-clamp = Soak the hoops, bend them a little tighter than the rim, and clamp them, flat sides to the staves, on the last row ({ $height } up the mould). Start opposite the scarf and work toward it from both sides.
step-rim-text-dry = Mark and fit the scarfs while the hoops are clamped. Let all of it dry in the clamps overnight.
step-rim-text-ring-outer = Slip the outer ring over the tips, its lower edge on the last row ({ $height } up the mould), its scarf between staves { $from } and { $to }.
step-rim-text-ring-inner = Set the inner ring inside, flat side to the staves and level with the outer one, its scarf between staves { $from } and { $to }, away from the other.
step-rim-text-ready-outer = Take the outer ring that lies ready, { $across } across inside. Slip it over the tips, its lower edge on the last row ({ $height } up the mould), its scarf between staves { $from } and { $to }.
step-rim-text-ready-inner = Take the inner ring, { $across } across outside, and set it inside, flat side to the staves and level with the outer one, its scarf between staves { $from } and { $to }, away from the other.
step-rim-text-bought-outer = Try the outer ring: it should be { $across } across inside and go over the tips with a light push. Set its lower edge on the last row ({ $height } up the mould), its joint between staves { $from } and { $to }.
step-rim-text-bought-inner = Try the inner ring: it should be { $across } across outside. Set it inside, level with the outer one, its joint between staves { $from } and { $to }, away from the other. Sand a ring that is too tight at its flat side; one that is loose shows as gaps when it is clamped: change it.
step-rim-text-ring-clamp = Clamp both rings together all round. Begin opposite a joint, and press out every gap between ring and stave.
step-rim-text-ring-clamp-ears = Clamp both rings together all round. Begin at the ears, and press out every gap between ring and stave.
step-rim-text-ring-clamp-ends = Clamp both rings together all round. Begin at the ends of the handle, and press out every gap between ring and stave.

## Pins

step-pins = Trim the tips, drill and pin
step-pins-text-trim = Cut the tips of the staves level with the top of the hoops.
step-pins-text-every-stave = { $pins ->
        [one] One pin
       *[other] { $pins } pins
    }: one through the middle of each stave, on one straight line half way up the hoops.
step-pins-text-every-other = { $pins ->
        [one] One pin
       *[other] { $pins } pins
    }: one through the middle of every other stave, on one straight line half way up the hoops, beginning with stave { $first }.
step-pins-text-neighbours = The pins do not come out evenly, so these neighbours are both pinned: staves { $pairs }.
step-pins-text-apart = Between these staves the pins stand farther apart, to keep clear of the ears: { $pairs }.
step-pins-text-apart-ends = Between these staves the pins stand farther apart, to keep clear of the ends of the handle: { $pairs }.
step-pins-text-ends = Staves { $staves }, where the handle stands, get { $pin }: through hoop, end of the handle, stave and hoop, { $stack } in all. Drill { $drill } for them. These pins hold the handle.
step-pins-text-ears = The staves of the ears, { $staves }, get { $pin }: through hoop, ear, stave and hoop, { $stack } in all. Drill { $drill } for them. These pins hold the ears.
step-pins-text-drill = Drill { $drill }, straight, square to the rim, through { $stack } in all, with a piece of scrap wood behind. Drill and pin one after the other.
step-pins-text-clinch = Push in { $pin } from outside, so that all heads point one way. { $over } stands out inside: clip it to about { $clip }. Hold the head on metal and peen the end gently until it closes over the hoop.
step-pins-text-alone = This rim is not lashed: pins alone hold its hoops. Look at each pin that it draws both hoops tight to the stave, and sand the tips level with the hoops; they stay in sight.

## Lashing

step-lashing = Lay the filler and lash the rim
step-lashing-text-filler = Lay { $pieces ->
        [one] one piece
       *[other] { $pieces } pieces
    } of { $stock } on the tips of the staves.
step-lashing-text-filler-ears = Lay { $pieces ->
        [one] one piece
       *[other] { $pieces } pieces
    } of { $stock } on the tips of the staves, from ear to ear, so that no tip shows.
step-lashing-text-filler-ends = Lay { $pieces ->
        [one] one piece
       *[other] { $pieces } pieces
    } of { $stock } on the tips of the staves, from one end of the handle to the other, so that no tip shows.
step-lashing-text-start = Soak { $weaver }: { $strands ->
        [one] one strand
       *[other] { $strands } strands
    }, { $length } in all.
step-lashing-text-tail = Begin one of two ways: hook a tail of { $tail } behind the inner hoop and over the top row, or lay it along the rim and go over it with the first wraps, then pull it tight under them.
step-lashing-text-single = Go round the rim once, through the gap at { $every }: { $wraps } wraps. Pull each one tight, shiny side out.
step-lashing-text-crossed = Go round the rim through the gap at { $every }, then come back the other way so that the wraps cross: { $wraps } wraps in all. Pull each one tight, shiny side out.
step-lashing-text-joins = { $joins ->
        [one] Start the second lasher at stave { $staves }.
       *[other] Start a new lasher at staves { $staves }.
    } Tuck the ends of old and new between the hoops.
step-lashing-text-end = End with a tail of { $tail } in the same way: tuck it down between the hoops, or draw it back under the last wraps. Cut it flush when it is dry.

## Handle

step-handle = Set the handle
step-handle-text-bought = The handle comes bent: a { $curve }, { $span } from middle to middle at its feet and { $rise } high, { $width } wide and { $thickness } thick. Hold it to the ears before you cut or drill anything; what is a little too wide or narrow is sprung by hand.
step-handle-text-outside = The handle goes outside the ears, { $end } of it below the hole. Round the ends.
step-handle-text-slot = Saw and file a slot { $slot } wide into each end, in the middle of its thickness, deep enough for the ear to go in past its hole. { $end } of the handle is left below the hole. Round the ends.
step-handle-text-between = The ear goes between the two halves, { $end } of them below the hole. Round the ends.
step-handle-text-mark = Set the handle level: on both sides the same way down to the rim. Mark the hole on each side through the hole of the ear. Both are { $pivot } above the rim, at one height, and { $shows } of the ear shows between the rim and the handle.
step-handle-text-drill = Drill { $drill } through handle and ear, straight, with scrap wood behind, first one side; try it, then the other.
step-handle-text-rivet = Push { $rivet } through from inside, at least { $length } long, with a washer between ear and handle and the burr outside: { $grip } in all.
step-handle-text-rivet-through = Push { $rivet } through handle and ear, at least { $length } long, and the burr over its end: { $grip } in all.
step-handle-text-clip = Clip the rivet so that { $over } stands out. Rest its head on the steel block and mushroom the end with light blows, all round. Stop and try: the handle must swing, with a little drag.
step-handle-text-knobs = A knob stands outside on each ear: { $width } across, { $length } long, its middle { $pivot } above the rim, both at one height.
step-handle-text-knob-drill = Mark through the hole of the ear. Drill { $drill } through knob and ear, straight, with scrap wood behind, and widen the hole on the outside so that the burr lies flush.
step-handle-text-knob-rivet = Push { $rivet } through from inside, at least { $length } long, with a washer between ear and knob and the burr outside: { $grip } in all.
step-handle-text-knob-clip = Clip the rivet so that { $over } stands out. Rest its head on the steel block and mushroom the end with light blows until the knob no longer turns.
step-handle-text-bought-fixed = The handle comes bent: a { $curve }, { $span } from middle to middle and { $rise } high above the rim, { $width } wide and { $thickness } thick, with straight ends.
step-handle-text-ends = Each end is { $leg } long from the top of the rim down. Thin it there to { $thickness }, so that it lies between the hoops ({ $rim } high) as flat as a stave, and shave its tip thin and round.
step-handle-text-into = Open a way down inside, along staves { $first } and { $second }, with an awl, and push the ends down inside the weaving, { $tail } below the rim.
step-handle-text-long = So it stands at the two ends of the basket.
step-handle-text-short = So it stands across the middle, from long side to long side.
step-handle-text-off = No stave faces another here: the handle stands { $off } along the rim off the middle line. Few see it.
step-handle-text-level = Set it level and upright: { $rise } from the top of the rim to its middle line, on both sides the same way down. Tie it while the hoops go on.
step-handle-text-held = The hoops go over its ends, pins go through hoop, end, stave and hoop at staves { $staves }, and the lashing goes over all of it. It needs no ears.
step-handle-text-held-pinned = The hoops go over its ends, and pins go through hoop, end, stave and hoop at staves { $staves }. It needs no ears.
step-handle-text-on-wall = Let down, the handle passes outside the rim and rests on the wall, its middle { $drop } below the pivots.
step-handle-text-on-rim = Let down, the handle rests on the rim, { $rests } from the ears.

## Finish

step-off = Take the basket off the mould
step-off-text-screw = Take out the screw and lift the basket off the mould, turning it a little to and fro: the rim needs the room inside.
step-off-text-pieces = Take out the screw and draw out the core; it has to be at least { $core } across, or the segments find no room. Tip the segments inward one by one, first the one with parallel sides, and lift them out.
step-off-text-look = Look it over inside. Push back any row that was lifted, and keep the staves where they stand: nothing holds them at the top until the rim is on.

step-plug = Plug the base and sand
step-plug-text-lift = Look the basket over inside, now that the rim is done. Lift it by its rim, not by the handle, until the finish is dry.
step-plug-text-plug = Glue the plug ({ $diameter }) into the screw hole, its grain along the grain of the base, and let it set.
step-plug-text-sand = Cut the plug flush, inside and out, and sand it. Sand only the base now, with the grain, and never over the lashing. Trim hairs.
step-plug-text-sand-handle = Cut the plug flush, inside and out, and sand it. Sand only base and handle now, with the grain, and never over the lashing. Trim hairs.

step-plug-text-sand-pinned = Cut the plug flush, inside and out, and sand it. Sand the base now, with the grain. Trim hairs.
step-plug-text-sand-handle-pinned = Cut the plug flush, inside and out, and sand it. Sand base and handle now, with the grain. Trim hairs.

step-finish = Finish and check
step-finish-text-none = The basket is left bare. Brush the dust off.
step-finish-text-stain = Stain first, evenly and not too wet, and let it dry as the maker of the stain says.
step-finish-text-shellac = Brush on two thin coats of shellac and let each dry as its maker says.
step-finish-text-oil = Rub in a thin coat of drying oil, wait, wipe it all off again, and let it cure as its maker says.
step-finish-text-varnish = Brush on two thin coats of varnish and let each dry as its maker says; rub down lightly between them.
step-finish-text-on-all = The finish goes on the whole basket, outside and inside; keep it thin over the weaving.
step-finish-text-on-handle = The finish goes on the handle, on all its sides. If you want it darker, stain it lightly first.
step-finish-text-on-base = The finish goes on the base, inside and outside.
step-finish-text-on-rim = The finish goes on the rim, thinly over the lashing.
step-finish-text-on-rim-pinned = The finish goes on the hoops of the rim and on the tips between them.
step-finish-text-nowhere-else = It goes nowhere else: mask what stays bare, and wipe off what runs.
step-finish-text-check = Check the basket by hand, outside and inside: no loose ends, no sharp pins, no stave that moves. Write down what this one really took.
step-finish-text-sign = Sign and date the basket on the underside of its base.
step-finish-text-sign-as = Write on the underside of its base: { $signature }, and the date.

## Tools

tool-anvil = small steel block
tool-awl = awl
tool-band = elastic or cord band
tool-bending-form = form to bend the handle on
tool-brush = soft brush
tool-bucket = bucket of water
tool-clamps = clamps or clothes pegs (24)
tool-drill = hand drill and small bits
tool-dust-mask = dust mask
tool-file = file
tool-glue = wood glue
tool-goggles = eye protection
tool-hammer = light hammer
tool-knife = sharp knife
tool-mallet = mallet
tool-packer = packing tool or blunt needle
tool-pen = fine waterproof pen
tool-pencil = pencil
tool-rag = lint-free rags
tool-ruler = ruler and tape
tool-sandpaper = sandpaper, 150 and 220 grit
tool-saw = fine saw
tool-scrap-wood = scrap wood
tool-screwdriver = screwdriver
tool-shears = side cutters or shears
tool-spacing-strip = spacing strips (templates)
tool-spray = spray bottle
tool-stave-template = stave template
tool-steam = steam box or pan of hot water
tool-towel = towel
