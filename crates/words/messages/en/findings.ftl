# Findings: what was found; .why it matters; .remedy what mends it (the pattern keys and values
# follow by themselves). Values: $measured, $limit, and those of each check.

weave-count-odd = an odd count
weave-count-other = another count

mould-serves-pieces = A mould in pieces serves: a core that draws out, with { $segments } segments round it.
mould-serves-none = No mould in pieces was found that would come out.
mould-no-core = the neck is too narrow for any core
mould-lacks = the tightest piece lacks { $lack }

finding-mould-undercut = The mould is { $measured } smaller in radius above than below ({ $narrowing } across). A basket forgives { $limit }. { $serves }
    .why = The woven wall cannot pass the wide place, so the basket stays on the mould.
    .remedy = If you have or can get this mould in pieces round a core that draws out, say so in the pattern. Or end the basket at the widest place, or make the mould no narrower above than below.

finding-mould-level-pointed = At height { $height }, where the mould is { $length } long and { $width } wide, it comes to a point.
    .why = The ends run out so much otherwise than the sides that no smooth level joins them; staves and hoops cannot bend round it.
    .remedy = Look at the widths again, or let the sides run as the ends do.

finding-mould-does-not-come-apart = The mould does not come apart inside the basket: { $room }. Each piece wants { $limit } of room all round on its way out.
    .why = A segment that does not pass the neck stays in the basket, and the basket on the mould.
    .remedy = Make the neck wider or the belly narrower, or end the basket at the widest place.

outline-part-rings = turned rings in the base
outline-part-strips = a base glued up from strips

finding-oval-part-not-computed = For a mould that is not round this is not computed yet: { $parts }.
    .why = Where these would come to stand, and whether they fit, is known for round baskets alone; what the drawings show of them would be wrong.
    .remedy = Leave them out of the pattern, and fit them by hand.

finding-oval-girth-contradicts = The tape says { $taped } round the foot of the mould, its length and width say { $drawn }: { $measured } apart. Up to { $limit } may be the tape.
    .why = One of the three figures is wrong, or the shape is another: a fuller oval or a rectangle is longer round than an ellipse.
    .remedy = Measure length, width and girth of the foot again, or choose the shape that fits.

finding-oval-ends-gape = At the rim the gaps at the two ends are { $measured } wide, those along the sides { $sides }. From { $limit } on it is seen.
    .why = All staves lean out alike, and round a tight end they fan.
    .remedy = Space the staves evenly at the rim too and let them lean, leave those at the ends wider where the stock allows, let the wall lean out less, or choose a rounder foot.

finding-staves-lean = Staves { $staves } lean from square to the foot, by up to { $measured }. From { $limit } on it is seen.
    .why = The rim grows more round the tight bends than along the sides. So flat staves cannot stand square to the foot and evenly at the rim as well.
    .remedy = Space them the other way, or let the wall lean out less.

finding-staves-strained = Held straight up from their feet, staves { $staves } would be strained at their edges, by up to { $measured }. Up to { $limit } a strip lies flat.
    .why = A stave is a flat strip. Across its face it bends easily, in its own plane hardly, and on this wall the way straight up bends sideways.
    .remedy = Let each take the way on which it lies flat, as the strips for foot and rim show it, or take narrower staves.

finding-wall-closes = The wall closes: it is { $measured } in radius where it is narrowest, and { $count } staves with the inner hoop need { $limit }.
    .why = Where staves have no room side by side there is no basket, whatever is woven below. Rows that run on past the end of a mould that narrows come to such a place.
    .remedy = End the weaving lower, or make the mould wider there.

finding-base-wider-than-mould = The base ({ $diameter }) stands out { $measured } all round beyond the foot of the mould ({ $foot } across). The limit is { $limit }.
    .why = A base that stands out holds the staves off the mould, and the basket grows larger than the mould.
    .remedy = Make the base no wider than the foot of the mould.

finding-base-smaller-than-mould = The foot of the mould ({ $foot } across) stands out { $measured } all round beyond the base ({ $diameter }). The limit is { $limit }.
    .why = The staves bridge that distance free, and each bends where it likes.
    .remedy = Make the base larger.

finding-base-wood-moves = A disc of { $wood } grows and shrinks by { $measured } across its grain between a dry and a damp room, { $side } on each side. Up to half the depth of the groove, { $limit }, is harmless.
    .why = The disc goes a little oval with the seasons. Staves that are pushed hard to the bottom of the groove across the grain are squeezed out, and ones that barely reach in come loose. Do not glue the feet.
    .remedy = Choose a wood that moves less, or cut a deeper groove.

finding-groove-too-narrow = The groove is { $measured } wide, but { $stock } is { $limit } thick.
    .why = The staves do not go in.
    .remedy = Cut the groove wider, or thin the feet.

finding-groove-too-wide = The groove is { $measured } wide for staves { $thickness } thick. More than { $limit } is loose.
    .why = Loose feet rattle and tip, and the staves lean. Each one would have to be wedged.
    .remedy = Cut the groove narrower.

finding-groove-too-shallow = The groove is { $measured } deep. It should be at least { $limit }.
    .why = Staves shrink when they dry. In a shallow groove they slip out, and the bottom falls off.
    .remedy = Cut the groove deeper.

finding-groove-too-deep = Only { $measured } of wood is left between the groove ({ $depth } deep) and the plug ({ $plug } across). It should be { $limit }.
    .why = The disc breaks there when the groove is cut or the plug is driven in.
    .remedy = Cut the groove less deep, or make the base larger.

finding-groove-cheek-thin = The wood above and below the groove is { $measured } thick. It should be { $limit }.
    .why = A thin cheek breaks off when a stave is pushed in at a slant.
    .remedy = Make the base thicker.

finding-staves-overlap-in-groove = The feet are { $measured } wide, but { $count } of them have only { $limit } each at the bottom of the groove.
    .why = The last staves do not go in, or they ride up on their neighbours.
    .remedy = Taper the staves to a narrower foot, or use fewer.

finding-foot-too-thin = The { $count } staves taper to feet of { $measured }. Below { $limit } they break.
    .why = A thin foot snaps at the edge of the groove as soon as the stave is bent up.
    .remedy = Leave the foot wider; where the groove has no room for that, use fewer staves.

finding-gap-too-small = The gap between staves is { $measured } here, but { $weaver } is { $limit } thick.
    .why = The weaver cannot turn through the gap. It buckles, or it pushes the staves apart and the basket grows.
    .remedy = Use fewer staves.

finding-gap-too-wide = The gap between staves is { $measured } here. It should not be wider than { $limit }.
    .why = Across a wide gap { $weaver } has nothing to hold it: the wall is soft and the rows slide down.
    .remedy = Use more staves.

finding-stave-too-stiff = Staves of { $stock } ({ $thickness } thick) bend to a radius of { $radius } when soaked, and between the groove and the wall there is no room for that. At the foot they swing out by { $measured } from the mould and lie on it only from { $touch } up. { $limit } is not seen.
    .why = The first rows go round a foot that is wider than the mould, and the basket keeps that belly.
    .remedy = Give the bend room: a smaller base or a mould with a wider foot, or a thicker base. Or use thinner stock, or soak the feet well and thin them where they bend. Soaked and thinned, reed bends round an edge of 1 1/2 to 2 times its thickness, a stretch of 20 to 25 %, and cane stands more than 30 %; these figures are from memory, and your own test piece replaces them.

finding-stave-too-short = The staves are { $measured } long. Groove, bend, wall and rim need { $needed }, and a grip to pull and trim makes { $limit }.
    .why = A stave that ends below the top of the rim is not held by it.
    .remedy = Cut the staves longer.

finding-stave-wasteful = The staves are { $measured } long; { $limit } would be plenty.
    .why = Over all staves { $waste } of stock is trimmed off and thrown away.
    .remedy = Cut the staves shorter.

finding-stave-count-surprising = The basket has { $measured ->
        [one] one stave
       *[other] { $measured } staves
    }. Usual counts on a mould lie between 21 and 151.
    .why = It may be meant. It may also be a slip in a girth, a width or a gap.
    .remedy = Look again at the count, the girths and the width of the staves.

finding-weave-does-not-lock = On { $measured ->
        [one] one stave
       *[other] { $measured } staves
    } { $weave } does not lock: it needs { $limit }.
    .why = As rounds go by, some staves are only ever crossed on one side. The rows stack there instead of crossing, and the wall falls apart.
    .remedy = Use one of the counts on which it runs.

finding-weave-chart-does-not-lock = In { $measured ->
        [one] one column
       *[other] { $measured } columns
    } of the chart all signs are alike, first in column { $column } from the left.
    .why = The weaver never crosses such a stave: it stands loose on one side of the wall, on any count.
    .remedy = Give each column of the chart both a sign for the weaver and one for the stave; one more row is the quickest way.

finding-weave-mend = On { $measured } staves { $weave } would run with { $mend }.
    .why = { $look }
    .remedy = If you like that look, change the course or the staves.

finding-weave-seam = In { $weave } each row ends out of step with where it began: { $measured } staves are no multiple of { $limit }.
    .why = A fault in the weave climbs the wall where rows begin and end: a float too long or too short.
    .remedy = Use a count that is a multiple, or put up with the line and turn it to the back.

finding-weave-chase-uneven = On { $measured } staves the weavers of { $weave } do not follow each other evenly.
    .why = Each round one weaver sits wrong against the one below, and the pattern breaks.
    .remedy = Use a count on which they follow alike.

finding-weave-leans-other-way = On { $measured } staves { $weave } leans to the { $lean }, not to the { $wanted }.
    .why = The eye follows the cells that touch or lie nearest. In a weave that runs on from row to row the count alone decides how they lie; row by row the step does.
    .remedy = Use a count, or a step, that leans as you want it.

finding-weave-no-diagonal = On { $measured } staves { $weave } holds, but it makes no diagonal: no line climbs to one side more than to the other.
    .why = Count and rule alone decide that. It may be meant: it makes small blocks or dots.
    .remedy = For a diagonal use another count.

finding-weave-skips-none = On { $measured } staves, an odd count, nothing is skipped: it is plain weave.
    .why = The spiral of longer floats comes only on an even count.
    .remedy = Use an even count, or call it plain weave.

finding-weave-chart-missing = This course is drawn by hand, but its chart ({ $file }) was not read.
    .why = Without a chart there is nothing to weave.
    .remedy = Give the chart in the pattern.

finding-weave-start-past-count = This course begins at stave { $measured }, but there are { $limit } staves.
    .why = It begins further round instead, at a stave you did not choose.
    .remedy = Begin at a stave there is.

finding-weave-float-staves = In { $weave } the longest float passes { $measured } staves without changing sides. More than { $limit } is loose.
    .why = A long float catches on things, and the staves under it wander.
    .remedy = Use a shorter float.

finding-weave-float-rows = In { $weave } a stave lies on one side for { $measured } rows. More than { $limit } is loose.
    .why = Rows slide where nothing crosses them, and the stave bulges out of the wall.
    .remedy = Use a shorter float.

finding-course-empty = This course has no rows: it would end before it begins, at { $from }.
    .why = The pattern asks for something that cannot be woven.
    .remedy = Let the course end higher, or take it out.

finding-rows-do-not-fill = After { $rows ->
        [one] one row
       *[other] { $rows } rows
    } the rim leaves { $measured } of the mould bare. A quarter of the wall is { $limit }.
    .why = The basket ends far below the rim of its mould: its height, its capacity and its mouth are not the mould's.
    .remedy = Weave more rows.

finding-rows-past-the-top = The top of the rim comes to { $measured } along the wall, { $past } past the end of the mould at { $top }. Of the rim, which is { $rim } wide, { $over } may stand past it: it should come to { $limit } at most.
    .why = Above the mould nothing holds the shape of what is woven, and nothing backs hoops that are bent in their place.
    .remedy = End the weaving lower.

finding-strand-too-short = A strand of { $weaver } is { $measured } long. Between two joins it should lie at least { $limit }, half a round.
    .why = More than two joins a round cannot be kept from lying above each other, and overlaps of four staves leave no single weaver between them. Amounts and joins are given for strands of { $limit }.
    .remedy = Use longer strands.

finding-strand-count-surprising = This course takes { $strands } strands of { $weaver } ({ $strand } each) with { $joins ->
        [one] one join
       *[other] { $joins } joins
    }: one every { $measured ->
        [one] row
       *[other] { $measured } rows
    }.
    .why = That many joins take time and show. It may be right for short stock, or a slip in the length of a strand.
    .remedy = Use a weaver with longer strands.

finding-weaver-bends-hard = In row { $row } { $weaver } ({ $thickness } thick) crosses a gap of { $gap } between staves { $stave } thick. Even the gentlest bend there (radius { $radius }) stretches it by { $measured }. Damp, over the edge of a stave, it stands about { $limit }.
    .why = It cracks on its outer face, or it kinks and stands off the staves. The limit is a guide from memory: bend a damp test piece over the edge of a stave.
    .remedy = Use a thinner weaver or leave a wider gap, and weave it well soaked.

finding-hoop-bent-too-hard = Bent to the rim (radius { $radius }), { $stock } ({ $thickness } thick) stretches by { $measured }. Soaked, it stands { $limit }.
    .why = The hoop cracks or kinks while it is bent.
    .remedy = Use thinner stock for the hoop, or a mould that is rounder where it bends most.

finding-lap-too-short = The ends of the hoop lap over { $measured }. For stock { $thickness } thick a scarf wants { $limit }, eight times the thickness.
    .why = A short scarf is steep: it shows as a lump and opens under the lashing.
    .remedy = Make the lap longer.

finding-scarf-under-ear = The scarf (staves { $from } to { $to }) comes within { $measured } of { $end }. It should keep { $limit } away.
    .why = Where a scarf and { $end } meet, the rim gets thick and the pin goes through thin ends.
    .remedy = Make the lap shorter, so that the scarf keeps clear.

finding-scarfs-together = The scarfs of the two hoops are { $measured } apart. They should be { $limit } apart.
    .why = Two thin places on one side make the rim weak and lumpy there.
    .remedy = Make the lap shorter.

finding-stock-cannot-yield = The piece is { $measured } long, but a strand of { $stock } is { $limit }.
    .why = This piece cannot be joined on the way.
    .remedy = Use stock that comes in longer strands, or pick out a longer piece by hand.

finding-filler-short = A strand of { $stock } is { $measured }, but this piece of filler is { $limit }.
    .why = The filler ends too soon, and the tips of the staves show.
    .remedy = Use a filler that comes in longer strands, or join two pieces under a wrap.

finding-filler-too-narrow = The filler ({ $stock }) is { $measured } wide, but the tips of the staves are { $limit } thick.
    .why = The tips show on one side of the filler.
    .remedy = Use a wider filler.

finding-lashing-short = One strand of { $weaver } ({ $strand }) leaves { $measured } between its tails. A quarter of the binding is { $limit }.
    .why = The lashing takes { $strands } strands, and every join in it is a place that can come loose.
    .remedy = Use a lashing that comes in longer strands.

finding-lashing-tail-short = The tails of the lashing are { $measured }. { $limit } holds.
    .why = A short tail pulls out from behind the rim when the cane dries.
    .remedy = Leave longer tails.

finding-pin-too-short = The pins ({ $pin }) are { $measured } long. The rim is { $stack } thick, and with enough to clinch that makes { $limit }.
    .why = A pin that does not come through cannot be clinched and works its way out.
    .remedy = Use longer pins.

finding-ear-pin-too-short = The pins that hold the handle ({ $pin }) are { $measured } long. What they go through is { $stack } thick, and with enough to clinch that makes { $limit }.
    .why = Through these two pins the handle hangs on the rim: they have to come through and be clinched.
    .remedy = Make what they go through thinner, or use longer pins.

finding-pin-splits-stave = The holes for the pins ({ $pin }) are { $measured } across in staves { $width } wide. More than { $limit } splits them.
    .why = A split stave is no longer held by its pin.
    .remedy = Use thinner pins.

finding-pins-far-apart = Between staves { $from } and { $to } the pins stand { $measured } apart. Where nothing else binds the rim, { $limit } is the most.
    .why = Without a lashing the hoops are held at their pins alone. Between two that stand far apart they gape, and rows lift.
    .remedy = Pin more staves, or let the rim be lashed.

finding-pin-misses-stave = This ear is { $off } off stave { $stave }, so that only { $measured } of the stave lies behind it. A pin wants { $limit }.
    .why = The pin of the ear goes past the stave and holds in the hoops alone.
    .remedy = Place the ears where they have a stave behind them.

finding-ears-off-opposite = The ears ({ $placing }) are { $measured } off facing each other, { $off } along the rim. Most makers accept { $limit }.
    .why = The line from ear to ear misses the middle of the basket by { $middle }: the handle sits askew and the basket hangs to one side.
    .remedy = Place the ears so that they face each other.

finding-ear-too-wide = The ears are { $measured } wide on staves { $stave } wide. A stave with its gaps gives { $limit } here.
    .why = A tail wider than { $tail } does not go down beside its stave without pushing the neighbours aside.
    .remedy = Make the ears narrower, or narrow their tails.

finding-ear-tail-short = The tails of the ears are { $measured } long. { $limit } holds.
    .why = What holds an ear until its pin is in, and steadies it afterwards, is its tail. { $rows ->
        [0] This one is pushed in and held by nothing else.
        [one] Only one row goes over it.
       *[other] Only { $rows } rows go over it.
    }
    .remedy = Make the tails longer.

finding-ear-tail-too-long = The tails of the ears are { $measured } long. From the rim to the base there is { $limit } of wall.
    .why = The tail would come out at the base.
    .remedy = Make the tails shorter, or let the ears run down as staves.

finding-ear-tail-too-thick = The ears are { $measured } thick below the rim, on staves { $stave } thick. Up to { $limit } passes.
    .why = The rows over the tail and the hoops beside it stand off, and the basket shows a lump.
    .remedy = Make the ears thinner.

finding-ear-hole-near-edge = A hole of { $drill } in an ear { $width } wide leaves { $measured } on either side. It should leave { $limit }.
    .why = The ear breaks out at its hole.
    .remedy = Make the ears wider.

finding-handle-fouls-rim = Between the end of the handle and the rim there is { $measured } of room as it swings. It needs { $limit }.
    .why = The handle rubs the lashing through, or does not swing at all. Its pivot is { $pivot } above the rim and the handle is { $width } wide.
    .remedy = Put the rivet hole higher in the ear.

finding-handle-cannot-fold = Let down, the handle comes to rest on the rim { $measured } above level. Up to { $limit } does no harm.
    .why = Its pivot is only { $pivot } above the rim and it is { $width } wide, so it stands up in the way of a lid, a cloth and the next basket of a nest.
    .remedy = Put the rivet hole higher in the ear.

finding-ear-shows = { $measured } of each ear shows between the rim and the handle. Up to { $limit } is usual.
    .why = More of the ear looks like a gap, and the handle stands on thin metal or wood.
    .remedy = Let the ends of the handle reach further down.

finding-handle-end-short = Beyond the middle of its hole the handle ends after { $measured }. A hole of { $drill } wants { $limit }.
    .why = So near the end the wood splits out of the hole, at the latest when the basket is lifted.
    .remedy = Let less of the ear show, or set the hole higher.

finding-handle-cheek-thin = Beside the ear { $measured } of the handle is left on each side; it is { $thickness } thick. { $limit } is needed.
    .why = Thin cheeks split when they are drilled or when the rivet is closed.
    .remedy = Use a thicker handle or thinner ears, or set the handle outside the ears.

finding-handle-ends-long = The ends of the handle go { $measured } down below the rim. The wall has room for { $limit }.
    .why = At the foot the wall turns into the base, and a straight end pushes the staves out.
    .remedy = Make the ends shorter.

finding-knob-fouls-rim = Between the knob ({ $width } across) and the rim there is { $measured } of room. It needs { $limit }.
    .why = The knob presses on the lashing, or does not go on at all. Its middle is { $pivot } above the rim.
    .remedy = Put the hole higher in the ear, or use smaller knobs.

finding-bail-bent-too-hard = Where it turns most, to a radius of { $radius }, the handle ({ $thickness } thick) stretches by { $measured }. Steamed hardwood takes { $limit }.
    .why = Its outer face splinters while it is bent, or breaks there later.
    .remedy = Make the handle thinner, or bend it to a rounder curve.

finding-handle-uneven = The handle leans by { $measured }. The eye sees more than { $limit }.
    .why = The places where it stands do not face each other, so the top of the handle is not over the middle of the basket.
    .remedy = Place the ears so that they face each other; a fixed handle wants an even count of staves, or more of them.

finding-rivet-too-short = The rivet ({ $rivet }) is { $measured } long. It goes through { $grip }, and with a head to form that makes { $limit }.
    .why = Without enough metal the head is small, and the handle works itself off.
    .remedy = Use a longer rivet, or thin what it goes through.

finding-lid-clearance = The part of the lid that goes into the basket is { $inner } across, the opening within the lashed rim { $opening }: { $measured } of room all round, and { $limit } are wanted.
    .why = Wood and cane grow in a damp room, and a lid without room jams or does not go in at all.
    .remedy = Make the mould of the lid smaller, or want less room.

finding-lid-clearance-cap = The basket under the cap is { $inner } across, the cap’s own opening { $opening }: { $measured } of room all round, and { $limit } are wanted.
    .why = Wood and cane grow in a damp room, and a cap without room jams or does not go on at all.
    .remedy = Make the mould of the lid larger, or want less room.

finding-lid-cap-shallow = The cap reaches { $measured } down over the rim; { $limit } hold it.
    .why = A cap that hardly reaches over the rim slips off.
    .remedy = Make the mould of the lid higher.

finding-lid-not-flush = The lid’s rim is { $lid } across and lies { $measured } off the basket’s all round; a hand feels more than { $limit }.
    .why = A lid that lies flush on the rim shows every difference of the two rims.
    .remedy = Make the mould of the lid as large as the basket’s rim asks for.

finding-lid-on-ears = Ears or a handle stand in the rim, where the lid ({ $fit }) has to lie.
    .why = The lid cannot come down to the rim.
    .remedy = Let the lid drop in, between them, or leave the handle out.

finding-lid-ledge-narrow = Pushed to one side the lid lies { $measured } on its ledge of { $rings } × { $stock }; { $limit } are safe.
    .why = Where the ledge is narrower than the lid can move, the lid falls in.
    .remedy = Bend the ledge from thicker stock.

finding-lid-too-flat = The lid is woven flat over { $way } from plaque to rim and rises { $measured } on it; { $limit } hold it.
    .why = Flat weaving over a wide way sinks in the middle when it is damp or something is laid on it.
    .remedy = Dome the board: give the lid a little more height, or a larger plaque.

finding-lid-under-handle = Between what lifts the lid and the handle above it there are { $measured } of room; a hand takes { $limit }.
    .why = A lid that nobody can get hold of stays shut.
    .remedy = Make the handle higher, or the lid flatter.

nest-has = { $inner } has { $room } of room in { $outer }
nest-lacks = { $inner } is { $over } too wide all round for { $outer }
nest-serves = Make the outer mould at least { $least } across.
nest-none-serves = No mould a little larger than { $outer } was found that takes { $inner }: write a larger size.

finding-nest-clearance = { $stands }; all round { $limit } is wanted.
    .why = A basket that has to be pushed in wears its lashing and that of the other, or stays outside.
    .remedy = { $mend }

finding-note-without-step = The pattern has a note for the step “{ $measured }”, which is none of this basket’s { $limit } steps.
    .why = The note stands on no sheet.
    .remedy = Give the note another step, or take it out.
