### Texts of the page where something is chosen by seeing it.

## Choosing a material

bench-stock-heading = Choose: { $what }
bench-stock-hint = Each is drawn cut across, at about its true size.
bench-stock-all = All materials ({ $count } more)
bench-own = Add your own, as you measured it
bench-own-hint = Reed and cane differ from maker to maker. All that you do not measure is taken from the one that it is like.
bench-own-name = What you call it
bench-own-like = Like
bench-own-width = Width, with its unit: 6.1 mm, 1/4 in
bench-own-thickness = Thickness, with its unit
bench-own-make = Add it and use it here
bench-own-taken = There is a material { $name } already. Give it another name.

## A first basket

bench-first = A first basket, in five questions
bench-first-fact = nothing needs to be known beforehand
bench-first-text = Answer what you know. Everything else is chosen for you, and can be changed afterwards.
bench-first-q-mould = 1. Do you have a mould?
bench-first-q-mould-hint = The wooden form that the basket is woven on.
bench-first-mould-guessed = Not yet, or not measured
bench-first-mould-measured = Yes, measured with a tape
bench-first-q-size = 2. How large?
bench-first-q-size-hint = A number is enough: 7, or 7 1/2.
bench-first-across = Across at the rim
bench-first-high = How high (may be left open)
bench-first-base = Round the base
bench-first-top = Round the top
bench-first-tall = From base to top
bench-first-units = Measured in
bench-first-in = inches
bench-first-mm = millimetres
bench-first-no-size = Say how large it is to be.
bench-first-q-staves = 3. What do you have for staves?
bench-first-q-staves-hint = Staves are the uprights that the weaver goes round.
bench-first-staves-which = Staves
bench-first-staves-any = Whatever suits
bench-first-q-look = 4. How is it to look?
bench-first-q-look-hint = The pictures are woven on a basket of your size. Choose none, and it becomes a plain one.
bench-first-q-handle = 5. A handle?
bench-first-q-handle-hint = It can be put on or left off later.
bench-first-handle-none = None
bench-first-handle-swing = One that swings
bench-first-handle-fixed = One fixed in the rim
bench-first-handle-knob = Two knobs
bench-first-name = Name of the basket
bench-first-make = Make the pattern
bench-first-others = Other ways to begin
bench-which-of = { $what } { $number }
bench-add-which = Add to { $what }
bench-remove = Remove
bench-remove-which = Remove { $what }

## Choosing a weave by its look

bench-ways-heading = How is course { $number } to look?
bench-ways-now = Now: { $seen }.
bench-ways-asking = Weaving it on this basket …
bench-ways-found = { $count ->
        [0] These colours do not give that look on a count near this one. Try other colours or another look.
        [one] One way, woven on this basket. Press it to take it.
       *[other] { $count } ways, each woven on this basket. Press one to take it.
    }
bench-ways-draw = Draw it yourself
bench-way-staves = { $count } staves
bench-wish-colours = Colours
bench-wish-colours-hint = Staves are natural. Press one or two colours for the weaver; press again to take one away.
bench-wish-look = Look
bench-wish-side = To which side
bench-wish-turns = Turns (may be left open)
bench-side-left = To the left
bench-side-right = To the right
bench-look-spiral = Spiral
bench-look-columns = Columns
bench-look-bands = Bands
bench-look-checks = Checks
bench-look-arrows = Arrows
bench-look-plain = Plain

## Counts of staves

bench-counts = Counts near by
bench-counts-label = Counts of staves near by, with what runs on each
bench-counts-runs = { $count } staves: every course runs; { $seen }; gap at the rim { $gap }.
bench-counts-fails = { $count } staves: not every course runs; { $seen }; gap at the rim { $gap }.
bench-counts-change-seen = Look: { $after } instead of { $before }.
bench-counts-change-gap = Gap: { $after } instead of { $before }.
bench-counts-change-width = Width of a stave: { $after } instead of { $before }.

## A weave drawn by hand

bench-draw-hint = Press a crossing to pass the weaver over or under; drag to draw several. The piece repeats round the basket.
bench-draw-grid = The drawn weave; arrow keys go from crossing to crossing, the space bar turns one over
bench-draw-over = Row { $row }, stave { $stave }: over
bench-draw-under = Row { $row }, stave { $stave }: under
bench-draw-width = Staves in the repeat
bench-draw-width-minus = One stave fewer in the repeat
bench-draw-width-plus = One stave more in the repeat
bench-draw-height = Rows in the repeat
bench-draw-height-minus = One row fewer in the repeat
bench-draw-height-plus = One row more in the repeat
bench-draw-mirror = Left for right
bench-draw-flip = Upside down
bench-draw-swap = Over for under
bench-draw-shift = One stave on
bench-draw-repeat = Repeat it
bench-draw-holds = It holds: every stave is passed on both sides, and no float is too long.
