### Texts of the bench's page.

bench-page-title = { $title }: Stavewright
bench-new-title = New basket
bench-form = Pattern, in making order
bench-order = Making order
bench-picture = Pictures
bench-side-pane = Findings and cuts
bench-panes = What lies under the picture

## The bar

bench-state-saved = saved
bench-state-unsaved = not saved
bench-undo = Undo
bench-redo = Redo
bench-undo-step = Undo: { $step }
bench-redo-step = Redo: { $step }
bench-save = Save
bench-save-as = Save under another name
bench-save-heading = Save the pattern
bench-more = More
bench-print = Print what is shown
bench-to-dark = Dark
bench-to-light = Light
bench-close = Close
bench-close-notice = Put this notice away

## Patterns and their files

bench-patterns = Patterns
bench-patterns-here = In this folder
bench-patterns-none = There is no pattern in this folder yet.
bench-patterns-start = Begin a new one
bench-pattern-here = on the bench
bench-pattern-broken = has mistakes
bench-start-plain = An empty pattern
bench-start-plain-text = a plain mould; all else is chosen until you say otherwise
bench-start-scenario-text = a copy of the example
bench-name = Name of the file
bench-name-hint = Small letters, digits and dashes; .toml is added.
bench-name-taken = There is a pattern { $name }.toml already. Choose another name, or replace it.
bench-replace = Replace it
bench-rename = Rename
bench-rename-heading = Rename the pattern
bench-duplicate = Duplicate
bench-duplicate-heading = Duplicate the pattern as it is here
bench-unsaved-heading = Not saved yet
bench-unsaved-text = The pattern on the bench has changes that are not saved.
bench-unsaved-drop = Drop the changes
bench-unsaved-stay = Stay here
bench-outside-taken = { $name }.toml was changed outside the bench; the bench shows it as it is now. Undo brings back what was here.
bench-outside-conflict = { $name }.toml was changed outside the bench, and there are changes here that are not saved. Nothing was overwritten.
bench-outside-keep = Keep mine
bench-outside-take = Take the file’s
bench-outside-compare = Compare them
bench-outside-missing = { $name }.toml is no longer in the folder. Saving writes it anew.
bench-restored = Work that was not saved was taken up again.
bench-restored-drop = Go back to the file
## The photograph

bench-photo = Photograph of the finished basket
bench-photo-alt = { $title }, finished
bench-photo-none = None is kept yet. It lies beside the pattern, in the same folder.
bench-photo-choose = Choose a photograph
bench-photo-drop = Take it away
bench-photo-unread = This file cannot be read as a photograph.
bench-photo-unsaved = Save the pattern first; the photograph is kept beside it.

## The server

bench-gone = The program does not answer: it was stopped, or the machine is asleep. What you did is kept in this browser. The page goes on by itself when the program is back.
bench-back = The program is back.
bench-not-saved-gone = Not saved: the program does not answer.
bench-read-only = You can look and try everything here, but not save.

## What was done, for undo

bench-did-set = { $what }: { $value }
bench-did-drag = { $what }
bench-did-take = { $what } taken over
bench-did-give = { $what } given back
bench-did-put-in = { $what } put in
bench-did-take-out = { $what } taken out
bench-did-text = the text changed by hand
bench-did-take-file = the file’s text

## Fields

bench-chosen = Chosen by Stavewright: { $why }
bench-take-which = Take over: { $what }
bench-give-which = Give back to Stavewright: { $what }
bench-left-out = Left out
bench-slider = { $what }, slider
bench-slide-less = { $what }: less
bench-slide-more = { $what }: more
bench-takes = It takes: { $takes }.
bench-help-on = What is this: { $what }
bench-rest = { $count } more
bench-legend-chosen = chosen by Stavewright
bench-legend-own = yours; press the sign to hand it over
bench-meaning-basket = The basket as a whole: its name, and the units that you think in.
bench-meaning-mould = The mould is the wooden form that the basket is woven on. Its base becomes the foot, its top the rim.
bench-meaning-base = The base is a wooden disc. The feet of the staves stand in the groove that runs round its edge.
bench-meaning-staves = Staves are the uprights. They taper toward the foot, so that the gaps stay even from foot to rim.
bench-meaning-weave = The weaver is the strand that goes round, over and under the staves. A course is some rows in one weave. In plain weave it goes over one and under one; in a twill over two or more, moved on by one from row to row.
bench-meaning-rim = Two hoops, one outside and one inside, hold the tips of the staves. Where a hoop laps over itself, both ends are scarfed: planed to a wedge. The filler lies between the hoops and covers the tips.
bench-meaning-lashing = The lashing is the strand that is wrapped round both hoops, stave by stave.
bench-meaning-handle = Ears are tabs that come up out of the weaving and carry the handle. A swinging handle is riveted to them; a fixed one sits in the rim.
bench-meaning-finish = What goes on at the end, and what you write on the base.

## Choosing a material

bench-stock-heading = Choose: { $what }
bench-stock-hint = Each is drawn cut across, at about its true size.
bench-stock-choose = { $what }: { $value }. Choose another
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
bench-first-units = In
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

## The mould

bench-profile = The mould from the side
bench-profile-hint = Drag a point, or choose it and use the arrow keys (with Shift: ten times as far).
bench-profile-point = Measurement { $number }
bench-girth-at = { $girth } round, { $height } up
bench-height-above-base = Height above the base
bench-girth = Girth
bench-height-of = Height of measurement { $number }
bench-girth-of = Girth of measurement { $number }
bench-add-girth = Add a measurement
bench-remove-girth = Remove measurement { $number }
bench-mould-draw = Draw it from base, rim and height instead
bench-mould-measure = Measure it by girths instead

## Courses

bench-course = { $number }. { $summary }
bench-course-takes = Rows { $first } to { $last }; takes { $length }
bench-course-does-not-run = Does not run on this count of staves.
bench-course-add = Add a course
bench-course-up = Weave course { $number } one place earlier, nearer the base
bench-course-down = Weave course { $number } one place later, nearer the rim
bench-course-remove = Remove course { $number }
bench-courses-take = Take the courses over
bench-courses-give = Give the courses back to Stavewright
bench-course-choose = Choose by look
bench-course-choose-which = Choose the weave of course { $number } by its look
bench-course-seen = Seen from outside: { $seen }
bench-course-short = Course { $number }
bench-did-draw = course { $number } drawn by hand

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

## Views

bench-views = Views
bench-view-round = In the round
bench-view-side = Side and section
bench-view-chart = Weave chart
bench-view-stages = Stages
bench-view-templates = Templates
bench-view-compare = Compare
bench-view-text = Text
bench-pane-form = Form
bench-pane-picture = Picture
bench-pane-findings = Findings
bench-pane-cuts = Cuts
bench-no-picture = No picture of this could be made.
bench-place-shown = Shown: { $place }
bench-templates-hint = Drawn here to fit the page. The packet’s templates.pdf prints them at true size, in tiles where they are long, with bars to check the printer.

## In the round

bench-round-label = The basket in the round. Arrow keys turn it, plus and minus bring it nearer and farther, Page up and Page down name its parts, Home shows it whole.
bench-turning = Turn and look
bench-zoom-in = Nearer
bench-zoom-out = Farther
bench-turn-left = Turn to the left
bench-turn-right = Turn to the right
bench-turn-home = Show it whole
bench-part = Part
bench-part-next = Name the next part
bench-part-last = Name the part before
bench-stage = Stage
bench-cut-away = Cut away
bench-cut-share = { $share } % cut away
bench-no-webgl = This browser draws nothing in the round (no WebGL), so the line drawing stands here.
bench-node-mould = Mould
bench-node-band = Band round the staves
bench-node-base = Base
bench-node-plug = Plug in the screw hole
bench-node-screw = Screw of the base
bench-node-clamp = Clamp { $number }
bench-node-stave = Stave { $number }
bench-node-row = Row { $number }{ $weaver ->
        [0] {""}
       *[other] , weaver { $weaver }
    }{ $strand ->
        [0] {""}
       *[other] , strand { $strand }
    }
bench-node-outer-hoop = Outer hoop
bench-node-inner-hoop = Inner hoop
bench-node-filler = Filler, piece { $number }
bench-node-wrap = Lashing, wrap { $number }
bench-node-pin = Pin in stave { $number }
bench-node-ear = Ear { $number }
bench-node-handle = Handle
bench-node-knob = Knob { $number }
bench-node-rivet = Rivet { $number }
bench-node-washer = Washer { $number }
bench-node-length = { $length } long

## Weave chart

bench-chart-outside = From outside
bench-chart-inside = From inside
bench-chart-side = Side of the weaving
bench-chart-label = Weave chart of { $rows } rows on { $staves } staves. Arrow keys go from crossing to crossing.
bench-chart-hint = Base below. Point at a crossing, or use the arrow keys (with Shift: ten at a time).
bench-chart-printed = As it will print
bench-cell-over = Row { $row }, stave { $stave }: the weaver passes over ({ $colour }, weaver { $weaver } of course { $course }).
bench-cell-under = Row { $row }, stave { $stave }: the weaver passes under (course { $course }); the stave is seen, { $colour }.
bench-cell-join = Join: the spent strand is cut over stave { $cut }, the new one starts behind stave { $start }.

## Findings and cuts

bench-figures = Main figures
bench-findings = Findings
bench-tell-figure = { $label }: { $value }.
bench-tell-came = New: { $grade }, { $what }
bench-tell-went = Gone: { $what }
bench-findings-none = Nothing found against it.
bench-count-stop = { $count ->
        [one] one stop
       *[other] { $count } stops
    }
bench-count-care = { $count ->
        [one] one care
       *[other] { $count } cares
    }
bench-count-note = { $count ->
        [one] one note
       *[other] { $count } notes
    }
bench-where = Where: { $place }
bench-brings = But then: { $cares }
bench-step-changes = Changes with it: { $changes }
bench-step-more = And { $count } more.
bench-step-worse = Then more is wrong than now.
bench-cause = { $cause }: { $count } findings
bench-go-to-field = Go to the field
bench-cuts = Cut list
bench-cut-count = { $count } + { $spares }
bench-cut-length = { $length } long
bench-cut-width = { $width } wide
bench-cut-total = { $total } in all

## Comparing

bench-compare = Compare two versions
bench-compare-left = Left
bench-compare-right = Right
bench-compare-what = What
bench-compare-none = none
bench-compare-fields = Values that differ
bench-compare-findings-left = Findings of the left alone
bench-compare-findings-right = Findings of the right alone
bench-compare-findings-both = Findings of both
bench-compare-count = { $count ->
        [0] No difference.
        [one] One difference.
       *[other] { $count } differences.
    }
bench-compare-cannot = One of the two has mistakes and cannot be compared.
bench-version-now = As it is on the bench
bench-version-saved = As it was saved
bench-version-before = Before: { $step }
bench-version-file = { $title } ({ $name }.toml)

## Text

bench-text-label = The pattern’s text
bench-text-take = Take this text
bench-text-left = The text has changes that are not taken over. They are still there.
bench-text-drop = Drop the changes
bench-text-at = Line { $line }, column { $column }
bench-problems = { $count ->
        [one] The pattern has a mistake; the last good basket is shown. { $first }.
       *[other] The pattern has { $count } mistakes; the last good basket is shown. { $first }.
    }
bench-problems-text = Mend it in the text
bench-saved-problems = { $count ->
        [one] Saved as it is, with the mistake in it.
       *[other] Saved as it is, with the { $count } mistakes in it.
    }

## Take away

bench-take-away = Take away
bench-packet-text = The packet holds the handout, the teacher’s and the maker’s sheet, the bench card, the templates, the cut list and the drawings.
bench-paper = Paper
bench-paper-letter = Letter
bench-paper-a4 = A4
bench-packet-make = Make the packet
bench-packet-stop = Stop
bench-packet-progress = How far the packet is
bench-packet-now = { $done } of { $total }: { $now }
bench-packet-done = { $count } files.
bench-packet-zip = Download all as ZIP
bench-packet-print = Open to print
bench-packet-stopped = Stopped.
bench-packet-failed = The packet could not be made.
bench-kilobytes = { $size } kB
bench-solids = Solids of the finished basket
bench-solid-stl = STL
bench-solid-3mf = 3MF
bench-solid-glb = GLB

## The guide

bench-guide = Guide to this page
bench-words = Words of the trade
bench-guide-begin = Begin
bench-guide-begin-text = An empty bench asks five things and makes a pattern of the answers. Everything can be changed afterwards; what you do not say is chosen, and each field tells why. Undo takes back any step.
bench-guide-mould = The mould
bench-guide-mould-text = Lay a tape round the mould at its base, at its top and at a few heights between, closer together where the side curves. Write each height and what the tape read. Points on the profile can be dragged, or moved with the arrow keys. No mould yet? Give the width at base and rim, the height, and how the side runs.
bench-guide-staves = The staves
bench-guide-staves-text = The count decides which weaves run: plain weave wants an odd one, a twill one that its repeat does not divide. Unfold “Counts near by” to see for each count what runs, to which side it leans and how wide the gaps are.
bench-guide-weave = The weave
bench-guide-weave-text = “Choose by look” shows small pictures, each woven on your basket. Press colours, then a look, then one of the ways. What it changes besides stands under it. A course can be moved up or down, or woven in several colours.
bench-guide-drawn = A weave of your own
bench-guide-drawn-text = Choose “Draw it yourself”, then press or drag over the crossings. Mirror, shift or repeat the piece. Whether it holds, and whether a float is too long, is said below while you draw.
bench-guide-rim = Rim and lashing
bench-guide-rim-text = The hoops take their length from the wall, the lap and the scarf from the hoop’s thickness. The filler covers the tips of the staves, the lashing binds all together.
bench-guide-handle = Ears and handle
bench-guide-handle-text = Tick ears or handle to put them on. Their place, their length and their holes follow from the wall.
bench-guide-chosen = What was chosen for you
bench-guide-chosen-text = The woven sign beside a name says that Stavewright chose the value. Press it to take the value over; it is then fixed, and the sign becomes a pencil. Press the pencil to give it back. The question mark explains the value and why it was chosen.
bench-guide-findings = Findings
bench-guide-findings-text = A stop cannot be woven as it is, a care will show or give trouble, a note is good to know. Open one to see where it is, why it matters and what would mend it. A step says beforehand what else it changes, and when it changes what you wrote.
bench-guide-pictures = Pictures
bench-guide-pictures-text = Turn the basket with mouse, finger or arrow keys. The slider goes from the bare mould to the finished basket. The chart shows every crossing. A still picture can be saved for print.
bench-guide-files = Patterns and files
bench-guide-files-text = A pattern is a text file in your folder; nothing is sent anywhere. Press the title to see all patterns of the folder with their pictures. A photograph of the finished basket can be kept beside each.
bench-guide-away = Take away
bench-guide-away-text = The packet holds the handout, the sheets for teacher and maker, the bench card, templates at true size, the cut list and the drawings. Check the printer with the bars on the template sheet.
bench-guide-keys = By keyboard
bench-guide-keys-text = Tab goes from field to field. Arrow keys move points, sliders, crossings and the basket. Ctrl Z takes back, Ctrl Shift Z does it again, Ctrl S saves.
bench-word-stave = Stave
bench-word-stave-means = An upright that the weaver goes round.
bench-word-weaver = Weaver
bench-word-weaver-means = The strand that goes round, over and under the staves.
bench-word-course = Course
bench-word-course-means = Some rows woven in one way, one above the other.
bench-word-twill = Twill
bench-word-twill-means = A weave over two or more, moved on by one stave from row to row, so that slanting lines arise.
bench-word-chase = Chase
bench-word-chase-means = Two weavers that follow each other round, each with its own row.
bench-word-pairing = Pairing
bench-word-pairing-means = Two weavers twisted round each stave.
bench-word-wale = Wale
bench-word-wale-means = Three or more weavers, each passing in front of several staves in turn.
bench-word-float = Float
bench-word-float-means = A piece of weaver that passes several staves without changing sides.
bench-word-groove = Groove
bench-word-groove-means = The slot in the edge of the base, in which the staves stand.
bench-word-taper = Taper
bench-word-taper-means = How a stave gets narrower toward its foot.
bench-word-hoop = Hoop
bench-word-hoop-means = One of the two rings of the rim, outside or inside.
bench-word-scarf = Scarf
bench-word-scarf-means = Two ends planed to wedges, so that they lie on each other no thicker than one.
bench-word-filler = Filler
bench-word-filler-means = What lies between the hoops and covers the tips of the staves.
bench-word-lashing = Lashing
bench-word-lashing-means = The strand wrapped round both hoops.
bench-word-ear = Ear
bench-word-ear-means = A tab that comes up out of the weaving and carries the handle.
bench-word-join = Join
bench-word-join-means = Where one strand ends and the next begins.
