# Texts of the sheets: handout, bench card and templates.

sheet-handout = handout
sheet-teacher = teacher’s sheet
sheet-maker = maker’s sheet
sheet-sale = pattern
sheet-skip = Skip to the text
sheet-bench-card = bench card
sheet-templates = templates
sheet-mould = mould
sheet-mould-note = For whoever makes the mould. All drawings are at true size.
sheet-mould-foot = foot
sheet-mould-top = top
sheet-mould-height = height
sheet-mould-screw = screw hole
sheet-mould-boards = Boards, from the foot upward
sheet-mould-board = board
sheet-mould-up-to = its top above the foot
sheet-mould-blank = blank
sheet-mould-upper = finished at its top
sheet-mould-hole = hole, at most
sheet-mould-bevel = bevel
sheet-mould-boards-note = Glued up from boards { $board } thick, grain crossed from board to board, the screw hole drilled through first and all set on one rod. Blanks have 1/8 in (3 mm) all round to work away. A hole leaves a wall of 1 1/4 in (32 mm) that lies on both neighbours.
sheet-mould-turned = Cut the card out along the side, hold it against the turning wood, and take off where it touches. Check the diameters with calipers.
sheet-mould-planed = Saw each board along its outline with the table set to its bevel, glue, and plane and rasp the steps away until the card fits at the ends and straight walls lie under the rule along the sides.
sheet-mould-undercut = It narrows by { $depth } in radius above its widest place, so it must come apart.
sheet-mould-stuck = No core with segments round it was found that would come out: make the neck wider, or the belly narrower.
sheet-mould-apart = It comes apart: a core { $length } long and { $width } wide with straight sides, and { $segments } segments round it, { $keys } of them keys with parallel sides. Draw the core out upward, move each key straight in and lift it out, then the others. The tightest has { $room } of room on its way. Saw before you shape: cut the blank along the lines of the plan, each cut { $kerf } wide, lay slips as thick as the cut between, hold all with a screw through a board at each end, and shape it so. Wax the core.
sheet-mould-printed = { $count ->
    [one] It goes into a printer of { $room } in one piece.
   *[other] For a printer of { $room } it is cut into { $count } parts, each lying on the larger of its level faces.
}
sheet-mould-pegs = { $pegs } pegs hold it together, each { $length } long, of dowel { $dowel } across: { $whole } of dowel in all. Their holes are { $hole } across and { $depth } deep, at the same places in both faces. Put it together dry first, then glue.
sheet-mould-bare = { $count ->
    [one] One joint has no room for a peg and holds by glue alone.
   *[other] { $count } joints have no room for a peg and hold by glue alone.
}
sheet-mould-pieces = In pieces
sheet-mould-part = part
sheet-mould-part-of = what
sheet-mould-part-size = length, width, height
sheet-mould-core = core
sheet-mould-key = key
sheet-mould-segment = segment
sheet-of = of
sheet-stop-mark = STOP: cannot be woven as written – see findings
sheet-strips-scale = Drawn

# Title block

sheet-summary = { $staves } staves, { $rows } rows, woven over a mould
sheet-summary-ears = { $staves } staves, { $rows } rows, woven over a mould, with two ears
sheet-summary-handle = { $staves } staves, { $rows } rows, woven over a mould, with two ears and a swing handle
sheet-summary-fixed = { $staves } staves, { $rows } rows, woven over a mould, with a fixed handle
sheet-summary-knobs = { $staves } staves, { $rows } rows, woven over a mould, with two ears and knobs
sheet-fact-across = across rim
sheet-fact-height = height
sheet-fact-base = base
sheet-fact-holds = holds
sheet-fact-staves = staves
sheet-fact-weaving = weaving
sheet-fact-hand = hand
sheet-fact-measured = measured
sheet-fact-time = time
sheet-base-size = { $diameter } across, { $thickness } thick, { $wood }
sheet-capacity-quarts = { $quarts } qt ({ $litres } l)
sheet-capacity-litres = { $litres } l ({ $quarts } qt)
sheet-staves-of = { $count } of { $stock }
sheet-time-in-all = practised hands { $work }, learners about { $learner }; { $wait } of waiting

# Headings of the handout

sheet-findings = What to know before you begin
sheet-materials = Materials and cut list
sheet-supplies = In all
sheet-tools = Tools
sheet-preparation = Preparation
sheet-steps = Making
sheet-drawings = How it should look
sheet-plans = Taper, gaps and base
sheet-weaving = Weaving
sheet-joins = Joins
sheet-checkpoints = Checkpoints
sheet-choices = What was chosen, and why
sheet-glance = At a glance
sheet-sessions = Where to stop
sheet-beforehand = What to prepare
sheet-bring = What to bring
sheet-faults = Usual faults, and what mends them
sheet-safety = Cautions
sheet-questions = Questions for the group
sheet-candidates = Staves used, and the next best
sheet-record = Record of this making

# Materials

sheet-piece = Piece
sheet-material = Material
sheet-number = Number
sheet-length-each = Length
sheet-shape = Width and shape
sheet-spare = spare
sheet-width = { $width } wide
sheet-all-pieces = All pieces, spares included
sheet-sold = Sold as
sheet-sold-by = { $unit }
sheet-sold-by-length = { $unit } of { $length }
sheet-pieces = { $count ->
    [one] 1 piece
   *[other] { $count } pieces
}
sheet-range = { $from } to { $to }

# Preparation

sheet-ready = What lies ready
sheet-ready-note = Look it over before you begin, and ask where something is missing.
sheet-lies-ready = lies ready
sheet-soaking-note = Soak in warm water just before use. Take out what is supple; what lies too long turns grey and frays.
sheet-soak = Soak for
sheet-soak-for = Pieces
sheet-preparation-taper = Shape the staves before soaking. The stave template and the taper drawing give the true width at each place.

# Steps

sheet-times-note = Times are for one basket: first for practised hands, then for learners, who take about twice as long.
sheet-caution = Take care.
sheet-mind-again = { $count ->
    [one] What step { $steps } says of care holds here too.
   *[other] What steps { $steps } say of care holds here too.
}
sheet-time-soak = soak { $time }
sheet-time-work = work { $time }, learners { $learner }
sheet-time-wait = then wait { $time }

# Weaving

sheet-weave = Weave
sheet-weaver = Weaver
sheet-rows = Rows
sheet-begin = Begin at
sheet-height-each = Height a row
sheet-lay-out = Lay out
sheet-strands = Strands
sheet-take-up-note = Going over and under makes a weaver longer than its way round: take-up { $courses }. It is the least certain figure here, so lengths are for the upper end; write down what your basket took.
sheet-take-up-course = { $takes } in rows { $first }–{ $last }
sheet-packing-note = When the weaving is dry, pack it down: about { $gap } opens at the top. Have enough weaver at hand for { $rows ->
    [one] 1 more row
   *[other] { $rows } more rows
}.
sheet-joins-expected = Expect about { $count ->
    [one] one join
   *[other] { $count } joins
} in all; they fall where a strand ends. Cut it where it lies on top of a stave; the new one starts behind the fourth stave back and runs on top of the old.
sheet-joins-note = Cut the spent strand where it lies over the first stave named. Start the new one behind the second and let it run over the old one, so that neither end shows. Staves are numbered from the first ear, or from the stave you mark.
sheet-row = Row
sheet-cut-over = Cut over stave
sheet-start-behind = Start behind stave
sheet-checkpoints-note = When the top of this row stands higher or lower than this, pack more or less firmly.
sheet-height-at-top = Its top above the mould’s foot
sheet-used-so-far = Weaver used by then

# Teacher’s sheet

sheet-glance-note = Times for one basket, of practised hands and of a learner.
sheet-step = Step
sheet-soak-before = Soak before
sheet-practised = Practised
sheet-learner = Learner
sheet-then-dry = Then dry
sheet-in-all = In all
sheet-sessions-note = Reckoned for sessions of { $length } at a learner’s pace. A session ends early where something has to dry.
sheet-session = Session
sheet-session-steps = Steps
sheet-session-begin = { $step } (begin)
sheet-session-on = { $step } (go on)
sheet-session-end = { $step } (to its end)
sheet-before-leaving = Before everybody leaves
sheet-leave-banded = Peg the weaver, wet the staves and put the bands on.
sheet-leave-to-dry = Leave it to dry for { $time } at least.
sheet-beforehand-note = Done before the class, each of these shortens it for every learner.
sheet-done-beforehand = Step
sheet-saves = Saves a learner
sheet-supplies-note = For one basket, spares included; multiply by the number of learners.
sheet-fault = Fault
sheet-cure = What mends it
sheet-question = Question
sheet-answer = What to listen for

# Choices

sheet-choices-note = The pattern leaves these open. Write the key with your own value into the pattern to fix it.
sheet-key = Key
sheet-chosen = Chosen
sheet-reason = Reason
sheet-staves = Staves
sheet-gap-rim = Gap at rim
sheet-gap-range = Gaps on the way up

# Record

sheet-record-note = Fill this in while you work. What it really took makes the next basket’s figures better.
sheet-what = What
sheet-planned = Planned
sheet-made = As made
sheet-record-who = Made by
sheet-record-days = Begun, finished
sheet-record-staves = Staves
sheet-record-gap = Gap at the rim
sheet-record-rows = Rows woven
sheet-record-weaver = Weaver used
sheet-record-height = Height of the weaving, wet
sheet-record-rows-added = Rows added when dry
sheet-record-outer = Outer hoop, cut
sheet-record-inner = Inner hoop, cut
sheet-record-lashing = Lashing used
sheet-record-time = Time at work
sheet-notes = Notes

# Bench card

sheet-card-staves = Staves
sheet-card-stave-length = Cut each stave
sheet-card-taper = foot { $from }, full { $to }
sheet-card-gap = Gap at the rim
sheet-card-gap-note = between staves
sheet-card-rows = Rows
sheet-card-rows-to-add = + { $rows } when dry
sheet-card-top = Weave up to
sheet-card-top-note = above the mould’s foot
sheet-card-outer = Outer hoop
sheet-card-outer-ring = Outer ring, inside
sheet-card-inner-ring = Inner ring, outside
sheet-card-inner = Inner hoop
sheet-card-scarf = scarf: staves { $from }–{ $to }
sheet-card-pins = Pins
sheet-card-pins-ends = { $spares }; at the handle { $stock }
sheet-card-pins-ears = { $spares }; at the ears { $stock }
sheet-card-spares = + { $count } spare
sheet-card-lashing = Lashing
sheet-card-strands = { $count ->
    [one] in 1 strand
   *[other] in { $count } strands
}
sheet-card-ears = Ears at staves
sheet-card-ears-note = { $placing }
sheet-card-handle = Handle
sheet-card-drill = drill { $drill }
sheet-card-band = rows { $rows } · { $weave } · begin { $begin }
sheet-card-ears-row = Heavy box, row { $row }: the ears lie on it; the rows above go over them.
sheet-card-rim-row = Heavy box, row { $row }: the last; the rim stands on it.
sheet-card-joins = Joins: row, cut over stave → start behind stave
sheet-card-more-joins = More joins: see the handout.

# Templates

sheet-print-full-size = Print at 100 % (actual size, no fitting to the page).
sheet-measure-first = Measure the bars below before you cut.
sheet-templates-note = All pieces are drawn at true size. Measure the bars at the foot of the page with a rule. If one is off, print again at the scale given there.
sheet-bar-measures = If the 100 mm bar measures
sheet-print-at = print at
sheet-tiled = In { $parts } parts: lay them over each other so that the crosses meet, letter on letter.

# Own notes

sheet-own-note = In the maker’s own words

# Demonstration

sheet-demonstration = demonstration
sheet-demo-intro = Samples to show or go on from, each stopped at a stage, and when to begin them so that all stand ready together. Days are counted back from the show; it begins when your working day would. One pair of hands works { $hours } a day; soaking and drying go on at any hour. If you have more hands, or work longer days, you can begin later.
sheet-demo-sum = { $samples ->
    [one] One sample
   *[other] { $samples } samples
}; { $work } of work over { $days ->
    [one] one day
   *[other] { $days } days
}; { $moulds ->
    [0] no mould
    [one] one mould
   *[other] { $moulds } moulds
} at once, of which { $standing ->
    [0] none stands
    [one] one stands
   *[other] { $standing } stand
} under samples at the show.
sheet-demo-missing = This basket never comes to: { $stages }.
sheet-demo-samples = Samples
sheet-demo-sample = Sample
sheet-demo-shows = Shows
sheet-demo-stop = Stop after step
sheet-demo-begin = Begin at the latest
sheet-demo-work = Work
sheet-demo-mould = On a mould
sheet-demo-on-mould = no. { $number }, at the show
sheet-demo-off-mould = no. { $number }, until { $when }
sheet-demo-no-mould = no
sheet-demo-when = { $days ->
    [0] on the day of the show
    [one] the day before, { $hours } into the day
   *[other] { $days } days before, { $hours } into the day
}
sheet-demo-when-first = { $days ->
    [0] on the day of the show
    [one] the day before, first thing
   *[other] { $days } days before, first thing
}
sheet-demo-days = Day by day
sheet-demo-day = { $days ->
    [one] The day before
   *[other] { $days } days before
}
sheet-demo-task = { $sample }: { $step }. { $title } ({ $time })
sheet-demo-task-on = { $sample }: go on with { $step }. { $title } ({ $time })
sheet-demo-nothing = Days that are not named ask for no work: let things dry.
sheet-demo-out = At the show
sheet-demo-out-note = Set out beside each sample, before anyone comes, what stands below it. Soak what the next step needs in time. Cautions of each step stand in the handout and hold here too; local rules and the teacher’s judgement go before both.
sheet-demo-next = { $sample }: { $stage }. Next comes { $step }. { $title }.
sheet-demo-next-soak = { $sample }: { $stage }. Next comes { $step }. { $title }; soak for { $time } before.
sheet-demo-last = { $sample }: { $stage }.
sheet-demo-say = Say: { $said }
sheet-demo-all = all samples
sheet-demo-piece = { $count } × { $piece }, { $material }

# Where there is more than a sheet tells.
sheet-table-left-out = { $count } more are left out here; basket.json holds every row and every join.
sheet-demo-more-days = { $days } more days of work are not told one by one.

# The poster for the wall
sheet-poster = poster
sheet-poster-join-parts = Lay the pages over each other so that the pictures meet: neighbours share a strip of 10 mm. Cut on the thin lines and paste.
sheet-poster-note = Lettering is high enough to be read from { $distance }: capitals a 300th of the distance, an inch for every 25 feet.
sheet-poster-part = Page { $number } of { $count }
sheet-poster-start = Start
sheet-poster-start-text = Begin behind stave { $stave }. Hold the end until the second row locks it.
sheet-poster-join = Join
sheet-poster-join-text = Cut the old strand over a stave. Start the new one { $back } staves back, on top of it.
sheet-poster-ear = Ear
sheet-poster-ear-text = Ears stand at staves { $first } and { $second }. Count both ways.
sheet-poster-scarf = Scarf
sheet-poster-scarf-text = Shave both ends over { $lap } to thin tips. Glue, peg, dry.
sheet-poster-lashing = Lashing
sheet-poster-lashing-text = Tuck the end behind the rim. { $every ->
        [other-stave] Wrap at every other stave.
       *[every-stave] Wrap at every stave.
    } Pull each wrap tight.

# The page that offers a class
sheet-class = class plan
sheet-class-timetable = Timetable for the wall
sheet-class-sessions = Session by session
sheet-class-cautions = Cautions of this session
sheet-class-cards = A card for each student
sheet-class-due = Rows due
sheet-class-waits = Who waits
sheet-class-chance = Chance
sheet-class-when = When
sheet-class-step = Step
sheet-class-then = Then
sheet-class-samples = Samples of the teacher
sheet-class-tray = Tray, beside the sample
sheet-class-say = What to say
sheet-class-mends = What would mend it; each was tried
sheet-class-who = Who
sheet-proposal = class proposal
sheet-proposal-title = title
sheet-proposal-about = about the basket
sheet-proposal-edit = Click on any text to change it. Print, or save the page with your changes.
sheet-proposal-print = Print
sheet-proposal-save = Save the page
sheet-proposal-hours = hours
sheet-proposal-hours-text = { $practised } for a practised hand, { $learner } for a learner, drying not counted
sheet-proposal-level = level
sheet-proposal-bring = What students bring
sheet-proposal-terms = Terms
sheet-proposal-teacher = teacher
sheet-proposal-place = place
sheet-proposal-dates = days and times
sheet-proposal-students = number of students
sheet-proposal-fee = fee
sheet-proposal-materials-fee = fee for materials
sheet-proposal-brings-teacher = what the teacher brings
