# The form of a pattern on the local page: groups, values, figures.

language-name = English

form-group-basket = The basket
form-group-mould = Mould
form-group-base = Base
form-group-staves = Staves
form-group-weave = Weave
form-group-rim = Rim
form-group-lashing = Lashing
form-group-handle = Ears and handle
form-group-lid = Lid
form-group-finish = Finish

# A value with the group it belongs to, and what a remedy sets it to.
form-in-group = { $group }: { $field }
form-in-course = Course { $number }: { $field }
form-remedy = { $field } → { $value }
form-undoes = You wrote { $value } for { $field }.
form-problem = What stands under { $field } cannot be used. It takes: { $takes }.
form-problem-exact = { $field }: { $fault } It takes: { $takes }.
form-problem-near = { $field }: { $fault } Did you mean “{ $near }”?
form-problem-at = Line { $line }: { $fault }
form-problem-at-near = Line { $line }: { $fault } Did you mean “{ $near }”?
form-problem-line = Line { $line } of the pattern’s text cannot be used as it stands.
# What another weave changes besides.
form-way-count = Staves: { $after } instead of { $before }.
form-way-own-count = Staves: { $after } instead of { $before }, which you wrote.
form-way-courses = The course becomes { $count } courses, a ring of one colour each.
form-way-dyed-staves = Some of the staves are dyed.
form-way-plain-staves = The staves are no longer dyed.
form-way-float = The longest float passes { $count } staves and may catch on things.
form-course-summary = { $weave }, rows { $first } to { $last }, { $weaver }
form-course-summary-one = { $weave }, row { $first }, { $weaver }
form-course-summary-none = { $weave }, no row, { $weaver }

form-figure-staves = Staves
form-figure-rows = Rows
form-figure-gap = Gap at the rim
form-figure-stave-length = Length of a stave
form-figure-weaver = Weaver in all
form-figure-height = Height of the weaving
form-figure-across = Across at the rim
form-figure-capacity = Holds
form-figure-work = Work, roughly
form-figure-hand = Figures
form-capacity = { $litres } litres ({ $quarts } US quarts)

# What a hand takes hold of on the drawings of a mould.
form-grip-girth = Measurement { $number }
form-grip-girth-at = { $girth } round, { $height } up
form-grip-top = Rim
form-grip-top-at = { $across } across, { $height } up
form-grip-width = Width { $number }
form-grip-ray = Ray { $number } of { $count }

# What is said of a mould that was traced from a photograph.
trace-done = { $girths } girths were traced, good to about { $trust } of the diameter.
trace-no-distance = The distance of the camera was taken as 1.5 m; with it the girths are surer.
trace-no-girth = With a girth taped at the widest place they are surer still.
trace-lopsided = Both sides differ by { $share }: look whether a shadow was taken for wood.
trace-smoothed = A narrowing too small to be told from the picture’s own faults was smoothed away.

# How a basket stands in the next size.
form-nest-room = Goes in: least room { $room } all round, { $at } above the floor; its rim lies { $below } below.

form-why-usual = usual, unless the pattern says otherwise
form-lean-count = the count decides; to the other side it leans on so many staves: { $counts }

# Drawings: names to choose from.
form-drawing-section = Side and section
form-drawing-base-plan = Base plan
form-drawing-taper-chart = Taper and gaps
form-drawing-lid-closed = From the side, the lid closed
form-drawing-lid-open = From the side, the lid open
form-drawing-plan = From above
form-drawing-chart-outside = Chart from outside
form-drawing-chart-inside = Chart from inside
form-drawing-chart-outside-grid = Chart from outside, in squares
form-drawing-chart-inside-grid = Chart from inside, in squares
form-drawing-base-disc = Base disc
form-drawing-spacing-base = Spacing strip for the base
form-drawing-spacing-rim = Spacing strip for the rim
form-drawing-stave = Stave
form-drawing-scarf = Scarf
form-drawing-drilling = Drilling strip
form-drawing-ear = Ear
form-drawing-check-bars = Bars to check the printer

form-plate-join = A join
form-plate-handle-set = Handle set in the rim
form-plate-hoops-scarfed = Hoops scarfed
form-plate-scarf-close-up = A scarf
form-plate-tips-trimmed = Tips trimmed
form-plate-pin-and-clinch = Pin and clinch
form-plate-lashing-start = Beginning of the lashing
form-plate-lashing-end = End of the lashing
form-plate-ear-with-rivet = Ear with its rivet
form-plate-exploded = All parts

# A name that cannot be that of a pattern's file.
form-name-signs = This cannot be the name of a pattern: it is empty or very long, begins or ends with a space or a dot, or has signs that file names cannot have or that cannot be seen.
    .help = Use letters, digits, spaces and hyphens, and leave .toml out.
form-name-device = This cannot be the name of a pattern: some systems keep it for a device, and the file could not be copied there.
    .help = Add a word to it.
