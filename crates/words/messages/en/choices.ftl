# Why Stavewright chose what the pattern left out, and what speaks for or against a way to stave.

choice-base-diameter = as wide as fits inside staves { $stave } thick at the foot of the mould ({ $girth } round)
choice-base-thickness = { $thickness } is usual: it leaves wood above and below the groove
choice-base-groove-depth = { $depth } is usual: deep enough to keep the feet when they shrink
choice-base-groove-width = the staves are { $stave } thick, and { $play } of play lets them in by hand
choice-base-screw-hole = { $hole } takes the usual screw
choice-base-wood = { $wood } is a usual wood for bases; across the grain it shrinks by { $tangential } from green to oven dry
choice-base-sealed = a coat before the weaving keeps water and fingers from marking the wood

choice-staves-gap = a weaver’s width is usual between staves at the rim, but no less than { $gap }
choice-staves-gap-weaver = one weaver’s width between staves at the rim is usual: { $gap }
choice-staves-stock = { $stock } is { $thickness } thick and fits the groove of { $groove }; { $count } staves of it fill the mould best
choice-staves-width = the full width of { $stock } is used
choice-staves-count = { $count } staves of { $stock } come nearest to a gap of { $wanted }: { $rim } at the rim, taped on the mould, and from stave to stave { $narrowest } at the narrowest and { $widest } at the widest place
choice-staves-taper = full width ({ $width }) from { $from } up the mould, { $foot } at the foot; no gap is more than { $worst } off the one wanted (a width that follows the mould exactly: { $ideal })
choice-staves-taper-usual = the taper begins { $above_foot } above the foot, as is usual, from { $width } to { $foot }: every gap stays at least { $least } wide with it, and none is more than { $worst } off the one wanted (a width that follows the mould exactly: { $ideal })
choice-staves-taper-none = staves of full width down to the foot: a taper would not better the worst gap ({ $worst } off the one wanted) by 0.1 mm
choice-staves-length = { $groove } in the groove, { $turn } round the bend, { $wall } of wall, { $rim } of rim and { $trim } to hold and trim
choice-staves-spares = { $spares ->
        [one] one spare
       *[other] { $spares } spares
    } on { $count }: at least { $share }, and enough if { $spoilt } are spoilt, in { $confidence } of baskets
choice-staves-spacing = evenly at the foot alone, as is usual: each stave goes up the way on which it lies flat
choice-staves-oval-side = the rounded face looks out, as is usual

choice-weave-courses = { $rows } rows of { $finer } at the turn, one grade finer, then { $weaver } to the top of the mould, less the { $room } that packing takes: the hoops go on as rings, when the basket is off it
choice-weave-courses-bent = { $rows } rows of { $finer } at the turn, one grade finer, then { $weaver } up to { $room } below the top of the mould, which leaves room for the rim

choice-lid-height = usual: flat enough to lie close, high enough to weave well, and of a cap to cover the rim
choice-lid-clearance = usual: what a damp day and thick cane take, and a little more
choice-lid-across = so that its lashed rim goes into the opening of { $mouth } with the room that is wanted
choice-lid-across-cap = so that its own opening goes over all that lies below it, { $mouth } at the rim, with the room that is wanted
choice-lid-across-flush = so that its lashed rim is as large as the basket’s, { $mouth }
choice-lid-hinge = in the middle of a long side, where the rim is flattest and a hinge turns most easily
choice-lid-ledge = so that few rings side by side reach far enough under the lid
choice-lid-plaque = so that the staves do not crowd at the tight ends
choice-rim-stock = { $width } wide and { $thickness } thick is usual for a basket of this kind
choice-rim-stock-none = no half round stock is known; { $width } by { $thickness } is assumed
choice-rim-hoops = glued rings close to a joint that cannot be seen, and are made without haste
choice-rim-lap = { $usual } is usual: it shaves down to tips as thin as paper
choice-rim-lap-small = { $usual } is usual on a rim less than { $small } across
choice-rim-lap-fits-ends = shorter than the usual { $usual }, so that it finds room between the ends of the handle
choice-rim-lap-fits = shorter than the usual { $usual }, so that it finds room between the ears

choice-filler-common = common cane ({ $width } wide) covers the tips between the hoops
choice-filler = wide enough to cover the tips of staves { $stave } thick
choice-filler-none = no cane or round reed is known that would cover tips { $stave } thick

choice-lashing-weaver-same = the finest weaver of the basket lies flat and binds well
choice-lashing-weaver-cane = { $weaver } does not lie flat round a rim; cane { $width } wide does
choice-lashing-every-stave = the staves stand { $pitch } apart, which leaves room between wraps { $width } wide
choice-lashing-every-other = the staves stand only { $pitch } apart; wraps { $width } wide at every one would crowd
choice-lashing-style = once round is usual
choice-lashing-tail = this much holds when it is tucked behind the rim

choice-weave-first-face = where cane turns hardest, its dull face cracks less than the shiny one

choice-pins-stock = the shortest pin that goes through { $stack } and can be clinched ({ $needed })
choice-pins-stock-short = the longest pin there is; { $needed } would be needed to go through { $stack } and be clinched
choice-pins-stock-none = no pins are known; one of this size goes through { $stack } and can be clinched ({ $needed })
choice-pins-every-even = every other stave is usual, and here it comes out evenly
choice-pins-every-alone = no lashing binds this rim, so each stave is pinned
choice-pins-every-odd = every other stave is usual; where that does not come out evenly, the step changes in a few places

choice-ears-material = brass is thin, strong and needs no carving
choice-ears-wood = { $wood }, as the base
choice-ears-way = a tail with rows woven over it holds best and shows least
choice-ears-axis = at the two ends, so that a handle goes down outside the long sides; from side to side it would have to reach over the ends
choice-ears-placing-odd = on { $count } staves no stave faces another: on two staves, where their pins hold best, ear 2 stands { $off } toward stave { $toward } ({ $angle }); most makers accept 2 to 3 degrees
choice-ears-placing-even = on { $count } staves each stave faces another
choice-ears-width = as wide as a stave
choice-ears-width-least = wider than a stave ({ $stave }), so that wood or metal is left beside the rivet
choice-ears-width-most = narrower than a stave ({ $stave }): wider holds no better
choice-ears-size-brass = usual for sheet brass
choice-ears-size-wood = the usual blank, 3/8 in square, dressed so that a rivet reaches through
choice-ears-size-bone = usual for bone
choice-ears-hole-height = lets the end of the handle swing clear of the rim
choice-ears-tail-woven-in = rows over so much of it hold it
choice-ears-tail-pushed-down = long enough to hold behind the weaving
choice-ears-tail-stave = down the whole wall and { $foot } more, as a stave
choice-ears-tail-on-stave = down the whole wall, on its stave

choice-handle-width = usual for a rim { $rim } across
choice-handle-axis = from side to side it is short and stiff, and both ends stay open to the hand
choice-handle-knob-width = usual for a knob
choice-handle-knob-length = usual for a knob: fingers find room behind it
choice-handle-ends = half of the wall below the rim ({ $wall }), and no more than is usual
choice-handle-thickness = the thickest of the usual ones that takes its bend, { $radius } where it turns most
choice-handle-thickness-thinnest = the thinnest of the usual ones; it turns to a radius of { $radius }
choice-handle-curve = a half circle bends evenly: no place of it is bent harder than another
choice-handle-curve-corner = a corner radius is given, so the curve is three-centred
choice-handle-curve-rise = a rise is given, so the curve is half an ellipse
choice-handle-rise = in proportion to half its span, { $half_span }
choice-handle-rise-semicircle = half its span, as in every half circle
choice-handle-rise-not-semicircle = a half circle rises by half its span, { $half_span }, and by nothing else
choice-handle-corner = gives an even curve for a half span of { $half_span }
choice-handle-not-three-centred = with this rise and corner no three-centred curve spans twice { $half_span }
choice-handle-rivet = long enough for a grip of { $grip } and a head to form ({ $needed })
choice-handle-rivet-short = the longest there is; { $needed } would be needed for a grip of { $grip }
choice-handle-rivet-none = no rivets are known; one of this size needs { $needed } for a grip of { $grip }

stave-reason-lock = every course runs on { $count }
stave-reason-no-lock = not every course runs on { $count }
stave-reason-some-run = on { $count } staves { $amiss } of { $courses } courses do not run as wanted
stave-reason-stock-narrow = staves { $width } wide cannot be cut from stock { $stock } wide
stave-reason-groove-tight = { $thickness } thick, too thick for a groove of { $groove }
stave-reason-groove-loose = { $thickness } thick, loose in a groove of { $groove }
stave-reason-groove-fits = { $thickness } thick, fits a groove of { $groove }
stave-reason-ears = on { $count } staves no stave faces another for the ears
stave-reason-gap = gap { $rim } at the rim, { $over } over the height, { $wanted } wanted
stave-reason-weaver-jams = at the narrowest gap, { $narrowest }, a weaver { $weaver } thick jams
stave-reason-feet-overlap = feet { $foot } wide overlap: there is room for { $touch }
stave-reason-foot-thin = feet { $foot } wide are thin; { $least } would be stout
stave-reason-too-stiff = stands { $off } off the mould at the foot: soaked it bends to a radius of { $radius }
stave-reason-work = { $count } staves to shape and set
