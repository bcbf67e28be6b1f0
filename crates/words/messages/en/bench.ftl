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
bench-doubt = { $number } inches? That is much. Or are millimetres meant?
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

## The mould

bench-profile = The mould from the side
bench-profile-hint = Drag a point, or choose it and use the arrow keys (with Shift: ten times as far).
bench-profile-lines = Solid: its long side. Dashed: one of its ends.
bench-trace = Trace a photograph
bench-trace-how = Stand a round mould before a plain sheet of another colour, seen on all four sides of it. Hold the camera level, at half its height, far away and zoomed in.
bench-trace-girth = Girth at the widest place
bench-trace-girth-hint = With it the side is good to about 0.3 % of the diameter.
bench-trace-height = Or its height, where no girth was taped
bench-trace-distance = Distance from the lens to the middle of the mould
bench-trace-distance-hint = 1.5 m is taken where it is not known.
bench-trace-foot-up = It stands on its rim, foot up
bench-trace-kept = The photograph is looked at by this program and kept nowhere. It lies under the drawing until the page is loaded anew.
bench-trace-begin = Trace it
bench-trace-none = Choose a photograph first.
bench-did-trace = girths from a photograph
bench-underlay = Dotted: the edges as they were found. Where the picture says otherwise, drag the points over it; both sides follow.
bench-underlay-seen = Photograph, from hidden to full
bench-underlay-away = Take the photograph away
bench-plan = The mould from above
bench-plan-hint = Solid: the foot; dashed: the top. Drag a point, or choose it and use the arrow keys (with Shift: ten times as far).
bench-plan-many = Solid: the foot; dashed: the top. Its points lie too close to be dragged one by one.
bench-plan-by-hand = Draw its outline by hand
bench-plan-fewer = Draw it through fewer points
bench-height-above-base = Height above the base
bench-girth = Girth
bench-height-of = Height of measurement { $number }
bench-girth-of = Girth of measurement { $number }
bench-add-girth = Add a measurement
bench-remove-girth = Remove measurement { $number }
bench-mould-draw = Draw it from base, rim and height instead
bench-mould-measure = Measure it by girths instead

## Sizes that stand in each other

bench-nest = Sizes and nest
bench-nest-text = The same basket over moulds of other sizes, each standing in the next. Staves and weavers come from stock of the same kind.
bench-nest-sizes = Across the moulds at the top, or their lengths
bench-nest-sizes-hint = Parted by commas, such as 5, 6, 7, 8; in the pattern’s units where none is written.
bench-nest-clearance = Room between one basket and the next
bench-nest-begin = Show them together
bench-nest-sheet = Sheet to print (sizes.pdf)
bench-nest-busy = Working them out …
bench-nest-picture = The baskets cut through, each standing in the next: { $names }
bench-nest-rooms = Each in the next

## Courses

bench-course = { $number }. { $summary }
bench-course-lean = Its lean: { $why }
bench-course-takes = Rows { $first } to { $last }; takes { $length }
bench-course-does-not-run = Does not run on this count of staves.
bench-course-add = Add a course
bench-course-up = Weave course { $number } one place earlier, nearer the base
bench-course-down = Weave course { $number } one place later, nearer the rim
bench-course-remove = Remove course { $number }
bench-courses-take = Take the courses over
bench-courses-give = Give the courses back to Stavewright
bench-course-choose = Choose by look
bench-course-choose-which = Choose by look: course { $number }
bench-course-seen = Seen from outside: { $seen }
bench-course-short = Course { $number }
bench-did-draw = course { $number } drawn by hand

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
bench-ruler = Ruler and hand for scale
bench-ruler-in = The ruler is 6 in long, an inch a mark; the hand is 7 1/2 in.
bench-ruler-mm = The ruler is 160 mm long, 20 mm a mark; the hand is 190 mm.
bench-still = Save the picture for print
bench-still-saved = Saved as { $name }: 6 in wide at 300 dots an inch.
bench-stage = Stage
bench-lid = Lid
bench-lid-closed = closed
bench-lid-open = open
bench-lid-off = off
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
bench-chart-more = The chart goes on sideways: swipe or scroll it.
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
bench-in-part = { $part }: { $what }
bench-anew = Left open and chosen anew: { $what } is { $after } now, not { $before }.
bench-anew-keep = Keep { $before }
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
bench-version-past = Saved { $at }
bench-version-back = Go back to the left version
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
bench-file-handout = the handout for students
bench-file-teacher = the teacher’s sheet
bench-file-maker = the maker’s sheet
bench-file-bench-card = the bench card, for the wall while you weave
bench-file-templates = templates at true size
bench-file-demonstration = the plan of a demonstration
bench-file-cuts = the cut list as a table
bench-file-section = the section as a drawing
bench-file-base = the base as a drawing
bench-file-chart = the weave chart from outside
bench-file-picture = the finished basket as a drawing
bench-file-basket = all figures, for other programs
bench-file-pattern = the pattern
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
