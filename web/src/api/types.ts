// Generated from crates/stavewright/src/bench/api; do not edit.
// STAVEWRIGHT_UPDATE=1 cargo test -p stavewright typescript

/**
 * The weaving, crossing by crossing.
 */
export type Chart = { 
/**
 * How many staves.
 */
staves: number, 
/**
 * Whether stave numbers rise to the left as one looks at it (they do from outside, base down).
 */
numbers_rise_left: boolean, 
/**
 * What may be seen at a crossing.
 */
seen: Array<Seen>, 
/**
 * Each row from the base upward.
 */
rows: Array<ChartRow>, 
/**
 * Where strands are joined.
 */
joins: Array<ChartJoin>, };

/**
 * A join.
 */
export type ChartJoin = { 
/**
 * Row in which the spent strand ends.
 */
row: number, 
/**
 * Stave over which it is cut.
 */
cut_over: number, 
/**
 * Stave behind which the new one starts.
 */
start_behind: number, 
/**
 * Whether the colour changes.
 */
recolour: boolean, };

/**
 * Which side of the weaving.
 */
export type ChartRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * From which side; outside if left out.
 */
face?: FaceWord | null, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, };

/**
 * One row.
 */
export type ChartRow = { 
/**
 * Its number, counted from 1 at the base.
 */
number: number, 
/**
 * Number of its course, counted from 1.
 */
course: number, 
/**
 * For each stave from 1 up an index into [`Chart::seen`].
 */
cells: Array<number>, };

/**
 * A colour.
 */
export type ColourName = { 
/**
 * Name under which a pattern asks for it.
 */
name: string, 
/**
 * The same in the reader's language.
 */
label: string, 
/**
 * As `#rrggbb`.
 */
hex: string, };

/**
 * Which versions.
 */
export type CompareRequest = { 
/**
 * One pattern.
 */
left: string, 
/**
 * The other.
 */
right: string, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first; the left pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * In what two versions differ.
 */
export type Comparison = { 
/**
 * Main figures of both, those that are the same too.
 */
figures: Array<Pair>, 
/**
 * Values of the form that differ.
 */
fields: Array<Pair>, 
/**
 * Lines of the cut list that differ.
 */
cuts: Array<Pair>, 
/**
 * Findings of the left alone.
 */
left_findings: Array<Finding>, 
/**
 * Findings of the right alone.
 */
right_findings: Array<Finding>, 
/**
 * Findings that both have, as the right has them.
 */
both_findings: Array<Finding>, };

/**
 * What a count of staves does.
 */
export type CountOfStaves = { 
/**
 * How many.
 */
count: number, 
/**
 * Whether it is the present one.
 */
now: boolean, 
/**
 * Whether every course runs on it as wanted.
 */
runs: boolean, 
/**
 * What is seen of the longest course, in words.
 */
seen: string, 
/**
 * To which side that climbs, if it does.
 */
lean: SideWord | null, 
/**
 * Gap between the staves at the rim, in both units.
 */
gap: string, 
/**
 * Width of a stave at the rim, in both units.
 */
width: string, 
/**
 * What to do to have it.
 */
edits: Array<Edit>, };

/**
 * Counts of staves near by.
 */
export type Counts = { 
/**
 * From few to many.
 */
each: Array<CountOfStaves>, };

/**
 * Which counts of staves there are near by.
 */
export type CountsRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first in the answer; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * One course.
 */
export type Course = { 
/**
 * Its place in the pattern, such as `weave.courses[1]`; none while the courses are chosen.
 */
path: string | null, 
/**
 * Its values; only those that its weave knows.
 */
fields: Array<Field>, 
/**
 * Number of its first row.
 */
first_row: number, 
/**
 * How many rows.
 */
rows: number, 
/**
 * Weave, rows and material in one line.
 */
summary: string, 
/**
 * What it takes of the weaver, in both units.
 */
length: string, 
/**
 * Whether it runs on this count of staves.
 */
runs: boolean, 
/**
 * Colours of its weavers as `#rrggbb`.
 */
colours: Array<string>, 
/**
 * What is seen of it from outside, in words.
 */
seen: string, 
/**
 * Why it leans as it does where the pattern leaves that open, and what would turn it; none where nothing would.
 */
lean: string | null, };

/**
 * The courses.
 */
export type Courses = { 
/**
 * Each from the base upward, written or chosen.
 */
each: Array<Course>, 
/**
 * Why Stavewright chose them; none if the maker wrote them.
 */
why: string | null, 
/**
 * What to do to take chosen courses over; empty if they are written.
 */
take: Array<Edit>, 
/**
 * What to do to give them back to Stavewright.
 */
give: Array<Edit>, 
/**
 * A course to begin with, for an edit `insert` at `weave.courses`.
 */
fresh: EditValue, };

/**
 * One line of the cut list.
 */
export type Cut = { 
/**
 * What sort of piece, such as `staves`.
 */
id: string, 
/**
 * The same in words.
 */
piece: string, 
/**
 * The material.
 */
material: string, 
/**
 * How many.
 */
count: number, 
/**
 * How many more to have ready.
 */
spares: number, 
/**
 * Length of one, in both units.
 */
length: string | null, 
/**
 * Width of one, in both units.
 */
width: string | null, 
/**
 * All together with spares, in both units.
 */
total: string | null, 
/**
 * How to shape it.
 */
shape: string | null, 
/**
 * What it is for.
 */
purpose: string, };

/**
 * How finely a picture is cut into triangles.
 */
export type DetailWord = "thumbnail" | "page" | "full";

/**
 * A drawing that there is of this basket.
 */
export type DrawingName = { 
/**
 * Name for `POST /api/drawing`.
 */
name: string, 
/**
 * Its heading.
 */
label: string, 
/**
 * For which view.
 */
view: DrawingView, };

/**
 * Which drawing.
 */
export type DrawingRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * Its name, one of [`super::Shown::drawings`].
 */
name: string, 
/**
 * Language of its labels, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * For which view a drawing is.
 */
export type DrawingView = "side" | "chart" | "stage" | "template";

/**
 * One change.
 */
export type Edit = { "do": "set", 
/**
 * Which value.
 */
path: string, 
/**
 * What to write.
 */
value: EditValue, } | { "do": "measure", 
/**
 * Which value.
 */
path: string, 
/**
 * The length in millimetres.
 */
mm: number, } | { "do": "remove", 
/**
 * Which value.
 */
path: string, } | { "do": "insert", 
/**
 * Which list.
 */
path: string, 
/**
 * Place of the new entry, counted from 1.
 */
at: number, 
/**
 * The entry.
 */
value: EditValue, } | { "do": "move", 
/**
 * Which list.
 */
path: string, 
/**
 * Its place now, counted from 1.
 */
from: number, 
/**
 * Its place afterwards, counted from 1.
 */
to: number, };

/**
 * Changes to be made in order, all or none.
 */
export type EditRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * The changes.
 */
edits: Array<Edit>, 
/**
 * Whether a hand still moves: then what mends a finding is left out of the answer, which comes the sooner.
 */
glance?: boolean | null, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first in the answer; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * A value as a pattern file holds it.
 */
export type EditValue = boolean | number | number | string | Array<EditValue> | { [key in string]: EditValue };

/**
 * The changed pattern. It may have problems: what a maker types is written as it is typed.
 */
export type Edited = { 
/**
 * The changed text.
 */
source: string, 
/**
 * What it gives.
 */
look: Looked, };

/**
 * From which side the weaving is looked at.
 */
export type FaceWord = "outside" | "inside";

/**
 * Why a request was not done. The status code says the class, this the particulars.
 */
export type Fault = { 
/**
 * What is wrong.
 */
what: string, 
/**
 * Where: a file, a key, a header.
 */
where: string, 
/**
 * How to mend it.
 */
how_to_mend: string, 
/**
 * What is wrong in the pattern, where that is why.
 */
problems: Array<Problem>, 
/**
 * The file as it stands now, where it changed outside the bench.
 */
present: PatternText | null, };

/**
 * One value of the pattern.
 */
export type Field = { 
/**
 * Which value, such as `base.groove.depth`.
 */
path: string, 
/**
 * Its name.
 */
label: string, 
/**
 * What it is, in a sentence.
 */
about: string, 
/**
 * What may be written, in words.
 */
takes: string, 
/**
 * Whether it is usually changed, so that it is shown before what is rarely touched.
 */
usual: boolean, 
/**
 * What it takes.
 */
kind: FieldKind, 
/**
 * As it stands in the file; none if it was left out.
 */
written: EditValue | null, 
/**
 * What is used, written or chosen; none where nothing is (no inner hoop of its own).
 */
used: Used | null, 
/**
 * Why Stavewright chose it; none for what the maker wrote.
 */
why: string | null, 
/**
 * What to do to take it over: writes the value in use, or a usual one.
 */
take: Array<Edit>, 
/**
 * What to do to give it back to Stavewright.
 */
give: Array<Edit>, 
/**
 * What may be chosen from, for words.
 */
options: Array<Word>, 
/**
 * Kinds of materials that fit, as in [`super::MaterialName::kind`].
 */
kinds: Array<string>, 
/**
 * Where a slider runs, for lengths (in mm) and counts.
 */
range: Range | null, };

/**
 * What a field takes.
 */
export type FieldKind = "text" | "length" | "count" | "share" | "word" | "words" | "open-word" | "material" | "materials" | "wood" | "colours" | "lengths" | "chart" | "flag" | "part";

/**
 * A main figure.
 */
export type Figure = { 
/**
 * Which, such as `staves`.
 */
id: string, 
/**
 * Its name.
 */
label: string, 
/**
 * Its value, lengths in both units.
 */
value: string, };

/**
 * A checked fact.
 */
export type Finding = { 
/**
 * Which check, such as `weave-does-not-lock`.
 */
code: string, 
/**
 * How much it weighs.
 */
grade: Grade, 
/**
 * The same in words.
 */
grade_label: string, 
/**
 * What was found.
 */
what: string, 
/**
 * Why it matters.
 */
why: string, 
/**
 * What mends it, in words; empty for what needs no mending.
 */
remedy: string, 
/**
 * What was measured.
 */
measured: string, 
/**
 * What it was measured against.
 */
limit: string, 
/**
 * Where on the basket.
 */
place: Place, 
/**
 * Single steps that mend it, best first.
 */
steps: Array<Step>, };

/**
 * How the mould of a first basket is known.
 */
export type FirstMould = { "how": "guessed", 
/**
 * Across at the rim, as a maker types it.
 */
across: string, 
/**
 * How high; in keeping with the width if empty.
 */
high: string, } | { "how": "measured", 
/**
 * Round the base.
 */
base: string, 
/**
 * Round the top.
 */
top: string, 
/**
 * From the base to the top.
 */
high: string, };

/**
 * What is asked for a first basket.
 */
export type FirstRequest = { 
/**
 * Name of the basket.
 */
title: string, 
/**
 * Units of what was typed.
 */
typed_in: UnitsWord, 
/**
 * The mould.
 */
mould: FirstMould, 
/**
 * Name of the material at hand for staves; chosen if empty.
 */
staves: string, 
/**
 * How it is to look; the weaving is chosen if no look is said.
 */
wish: Wish, 
/**
 * Its handle.
 */
handle: HandleWord, 
/**
 * Language of the answer and of the sheets, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first in the answer; those of what was typed if left out.
 */
units?: UnitsWord | null, };

/**
 * One tape measurement.
 */
export type Girth = { 
/**
 * Its place in the pattern, such as `mould.girths[2]`; height is its entry `[1]`, girth `[2]`.
 */
path: string, 
/**
 * Height above the base.
 */
height: Measured, 
/**
 * What the tape read.
 */
girth: Measured, };

/**
 * How much a finding weighs.
 */
export type Grade = "stop" | "care" | "note";

/**
 * A place of a drawing that a hand takes hold of.
 */
export type Grip = { 
/**
 * What it is called.
 */
name: string, 
/**
 * What it stands at, in both units.
 */
text: string, 
/**
 * Where it is, in mm.
 */
at: [number, number], 
/**
 * What changes when it is pulled.
 */
pulls: Array<Pull>, };

/**
 * Fields that are filled in together, in making order.
 */
export type Group = { 
/**
 * `basket`, `mould`, `base`, `staves`, `weave`, `rim`, `lashing`, `handle` or `finish`.
 */
id: string, 
/**
 * Its heading.
 */
label: string, 
/**
 * Its fields. Courses and girths stand in [`super::Courses`] and [`super::Mould`].
 */
fields: Array<Field>, };

/**
 * What handle a first basket is to have.
 */
export type HandleWord = "none" | "swing" | "fixed" | "knob";

/**
 * That the server lives, and what it may do.
 */
export type Health = { 
/**
 * Version of the program.
 */
version: string, 
/**
 * Changes each time the server starts.
 */
started: string, 
/**
 * Stands for the folder with the patterns, the same from start to start; it does not tell where it is.
 */
folder: string, 
/**
 * Whether the page may save.
 */
may_write: boolean, 
/**
 * Whether it is open to the local network.
 */
studio: boolean, 
/**
 * Name of the pattern to open first, if the server was started for one.
 */
open: string | null, 
/**
 * The languages that there are.
 */
languages: Array<LanguageName>, };

/**
 * What a maker says of something on the shelf. Measures and price are text as they are typed; empty where
 * nothing is said.
 */
export type ItemText = { 
/**
 * What it is called.
 */
name: string, 
/**
 * Its material, by the name that a pattern uses.
 */
material: string, 
/**
 * Its colour; natural if empty.
 */
colour: string, 
/**
 * How many there are; heeded for something new alone.
 */
count: number, 
/**
 * Length of one strand, such as `12 ft`.
 */
length: string, 
/**
 * Width as measured.
 */
width: string, 
/**
 * Thickness as measured.
 */
thickness: string, 
/**
 * What it is bought in.
 */
unit: string, 
/**
 * Strands, or pieces, in one such unit.
 */
holds: number, 
/**
 * What one such unit costs, such as `12.50`.
 */
price: string, 
/**
 * Where it is bought.
 */
bought_from: string, 
/**
 * Below this many it is time to buy.
 */
reorder: number, 
/**
 * Anything else.
 */
note: string, };

/**
 * A photograph that is kept.
 */
export type KeptPhoto = { 
/**
 * Its name.
 */
name: string, };

/**
 * Sheets of labels, by their paper and how many are on it.
 */
export type LabelWord = "letter-10" | "letter-6" | "a4-4x2in" | "a4-10" | "a4-8" | "a4-12";

/**
 * A language.
 */
export type LanguageName = { 
/**
 * Its tag, such as `en`.
 */
tag: string, 
/**
 * Its own name for itself.
 */
name: string, };

/**
 * A piece on a strand.
 */
export type LeafPiece = { 
/**
 * Its length in millimetres.
 */
length_mm: number, 
/**
 * What stands on it.
 */
label: string, };

/**
 * A section of a leaf.
 */
export type LeafSection = { 
/**
 * Its heading.
 */
heading: string, 
/**
 * What is said first, a paragraph each.
 */
notes: Array<string>, 
/**
 * Its table.
 */
table: LeafTable | null, 
/**
 * Strands, drawn to one scale.
 */
strips: Array<LeafStrip>, 
/**
 * What is said last.
 */
after: Array<string>, };

/**
 * A strand with the pieces that are cut from it.
 */
export type LeafStrip = { 
/**
 * How many are cut so, and from what.
 */
name: string, 
/**
 * Its length in millimetres.
 */
length_mm: number, 
/**
 * The pieces in their order.
 */
pieces: Array<LeafPiece>, };

/**
 * A table.
 */
export type LeafTable = { 
/**
 * The heads of its columns.
 */
head: Array<string>, 
/**
 * Which columns hold figures.
 */
figures: Array<boolean>, 
/**
 * Its rows.
 */
rows: Array<Array<string>>, };

/**
 * What the log says of a hand.
 */
export type LearnedHand = { 
/**
 * From how many makings.
 */
makings: number, 
/**
 * How many are left out: their pattern is not here, or they measured something else.
 */
left_out: number, 
/**
 * Each figure beside the usual one, with the bounds within which it lies.
 */
figures: Array<string>, 
/**
 * Title of the pattern that was worked out with and without them.
 */
pattern: string, 
/**
 * What it is with them, and was before.
 */
drafted: Array<string>, };

/**
 * How a lid is shown.
 */
export type LidWord = "closed" | "open" | "off";

/**
 * A piece of the weaving as it is seen from outside, base below.
 */
export type LittleChart = { 
/**
 * What may be seen, as `#rrggbb`.
 */
colours: Array<string>, 
/**
 * For each row, the uppermost first, what is seen at each stave from left to right: an index into
 * [`LittleChart::colours`], and whether it is a weaver.
 */
rows: Array<Array<[number, boolean]>>, };

/**
 * Something to do with the log; the answer is the log as it stands afterwards.
 */
export type LogAct = { "do": "log", 
/**
 * File of its pattern, without `.toml`.
 */
pattern: string, 
/**
 * What was measured.
 */
making: MakingText, } | { "do": "forget", 
/**
 * Their numbers.
 */
numbers: Array<number>, } | { "do": "adopt", 
/**
 * Whose; of all if left out.
 */
who?: string | null, } | { "do": "take-back" };

/**
 * What is to be looked at.
 */
export type LookRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first in the answer; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * What is seen from outside.
 */
export type LookWord = "spiral" | "columns" | "bands" | "checks" | "arrows" | "plain";

/**
 * What a pattern gives: problems, or a basket.
 */
export type Looked = { 
/**
 * What keeps the pattern from being read, in the order of the file.
 */
problems: Array<Problem>, 
/**
 * The basket; none if there are problems.
 */
basket: Shown | null, };

/**
 * A making that was written down.
 */
export type Making = { 
/**
 * Its number.
 */
number: number, 
/**
 * Title of the pattern.
 */
pattern: string, 
/**
 * The day on which it was finished; empty if nobody said.
 */
made: string, 
/**
 * Who made it; empty if nobody said.
 */
who: string, 
/**
 * What was measured, to read.
 */
says: Array<string>, 
/**
 * What went wrong.
 */
went_wrong: string, 
/**
 * Names of its photographs.
 */
photos: Array<string>, };

/**
 * What can be written down of a pattern's making, with what was planned.
 */
export type MakingForm = { 
/**
 * Title of the pattern.
 */
title: string, 
/**
 * Its steps with work in them, in order.
 */
steps: Array<MakingStep>, 
/**
 * What was planned, to read: rows, weaver, staves.
 */
rows: string, 
/**
 * How much weaver was planned.
 */
weaver: string, 
/**
 * How many staves were planned.
 */
staves: string, };

/**
 * The log as it stands.
 */
export type MakingLog = { 
/**
 * The makings, the last first.
 */
makings: Array<Making>, 
/**
 * Everybody who is named in it.
 */
makers: Array<string>, 
/**
 * Whose hand the workshop works with; none for the usual one.
 */
adopted: string | null, };

/**
 * How long a step took.
 */
export type MakingMinutes = { 
/**
 * The word of the step.
 */
step: string, 
/**
 * Minutes, as they are typed.
 */
minutes: string, };

/**
 * A step.
 */
export type MakingStep = { 
/**
 * Its word.
 */
step: string, 
/**
 * Its name.
 */
label: string, 
/**
 * How long it was planned to take.
 */
planned: string, };

/**
 * A making as it is typed; empty where nothing was measured.
 */
export type MakingText = { 
/**
 * The day on which it was finished, as `2027-04-11`.
 */
made: string, 
/**
 * Who made it; a name is the maker's to give.
 */
who: string, 
/**
 * Whether by a learner.
 */
learner: boolean, 
/**
 * Minutes of work a step.
 */
minutes: Array<MakingMinutes>, 
/**
 * Length of all weavers on the basket.
 */
weaver: string, 
/**
 * Rows.
 */
rows: string, 
/**
 * Height of the weaving along the wall, wet.
 */
wet: string, 
/**
 * The same, dry.
 */
dry: string, 
/**
 * Girth of the weaving at its widest, wet.
 */
girth_wet: string, 
/**
 * The same, dry.
 */
girth_dry: string, 
/**
 * Staves that were made.
 */
staves: string, 
/**
 * How many of them were spoilt.
 */
spoilt: string, 
/**
 * The wood.
 */
wood: string, 
/**
 * What went wrong.
 */
went_wrong: string, 
/**
 * Names of photographs that were sent before.
 */
photos: Array<string>, };

/**
 * A material.
 */
export type MaterialName = { 
/**
 * Name under which a pattern asks for it.
 */
name: string, 
/**
 * The same in the reader's language.
 */
label: string, 
/**
 * What it is, such as `flat oval reed`.
 */
kind: string, 
/**
 * The same in the reader's language.
 */
kind_label: string, 
/**
 * Width and thickness, in both units.
 */
size: string, 
/**
 * Width in mm.
 */
width_mm: number, 
/**
 * Thickness in mm.
 */
thickness_mm: number, 
/**
 * Whether its cut is round.
 */
round: boolean, 
/**
 * Its natural colour as `#rrggbb`.
 */
hex: string, };

/**
 * A length as written.
 */
export type Measured = { 
/**
 * As it stands in the file.
 */
written: string, 
/**
 * In both units.
 */
text: string, 
/**
 * In millimetres.
 */
mm: number, };

/**
 * The mould.
 */
export type Mould = { 
/**
 * Its measured girths, base upward; empty for a mould that is drawn from base, rim and height.
 */
girths: Array<Girth>, 
/**
 * The side from base to top: girth over 2π, and height, in mm.
 */
profile: Array<[number, number]>, 
/**
 * The same as it is seen: half of how far it reaches along its length, then along its width, and the
 * height, in mm.
 */
seen: Array<[number, number, number]>, 
/**
 * Height of the mould in mm.
 */
height_mm: number, 
/**
 * Top of the weaving as a height, in mm.
 */
woven_to_mm: number, 
/**
 * What to do to measure a drawn mould by girths instead; empty for a measured one.
 */
measure: Array<Edit>, 
/**
 * What to do to draw a measured mould from base, rim and height instead; empty for a drawn one.
 */
draw: Array<Edit>, 
/**
 * What a hand takes hold of on its side: to the right of the middle, and up, in mm.
 */
grips: Array<Grip>, 
/**
 * Seen from above; none where it is round.
 */
plan: MouldPlan | null, 
/**
 * The other shapes that it may take, seen from above.
 */
shapes: Array<MouldShape>, };

/**
 * The mould seen from above.
 */
export type MouldPlan = { 
/**
 * Its foot, once round: along its length and across, in mm.
 */
foot: Array<[number, number]>, 
/**
 * Its top.
 */
top: Array<[number, number]>, 
/**
 * What a hand takes hold of.
 */
grips: Array<Grip>, };

/**
 * A shape seen from above.
 */
export type MouldShape = { 
/**
 * Its word in a pattern.
 */
word: string, 
/**
 * What to do so that the mould takes it and stays of about its size.
 */
edits: Array<Edit>, };

/**
 * What kind of movement it was.
 */
export type MovementKind = "bought" | "cut" | "counted" | "removed";

/**
 * A new name.
 */
export type NameRequest = { 
/**
 * The new name without `.toml`.
 */
to: string, };

/**
 * A basket of the set.
 */
export type NestBasket = { 
/**
 * What it is called, such as `5 in`.
 */
name: string, 
/**
 * Its wall cut through on the right, once round: to the right of the middle, and above the floor of the
 * largest basket, in mm.
 */
wall: Array<[number, number]>, 
/**
 * Its rim.
 */
rim: Array<[number, number]>, 
/**
 * Half of its base.
 */
base: Array<[number, number]>, };

/**
 * Which sizes.
 */
export type NestRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * How far across the moulds are at the top, parted by commas or semicolons; bare numbers are in the
 * pattern's units.
 */
sizes: string, 
/**
 * Room that is wanted all round between one basket and the next.
 */
clearance: string, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * How one basket stands in the next.
 */
export type NestRoom = { 
/**
 * Which in which.
 */
name: string, 
/**
 * Whether there is as much room as is wanted.
 */
fits: boolean, 
/**
 * How much room there is, and where, in a sentence.
 */
said: string, 
/**
 * Where it is least: above the floor of the largest basket, in mm.
 */
at_mm: number, };

/**
 * The set.
 */
export type NestShown = { 
/**
 * The baskets cut through along their length, the smallest first, standing in each other.
 */
baskets: Array<NestBasket>, 
/**
 * How each stands in the next.
 */
rooms: Array<NestRoom>, 
/**
 * The set as a sheet: its sizes, one cut list for all, what was changed.
 */
leaf: PlanLeaf, };

/**
 * A packet in the making, or made.
 */
export type Packet = { 
/**
 * Its name for the other requests.
 */
id: string, 
/**
 * How far it is.
 */
state: PacketState, 
/**
 * What is being made now, such as `handout.pdf`.
 */
now: string | null, 
/**
 * How many pieces of work are done.
 */
done: number, 
/**
 * Of how many.
 */
total: number, 
/**
 * Its files, when it is done, for `GET /api/packets/{id}/{file}`; `packet.zip` holds them all.
 */
files: Array<PacketFile>, 
/**
 * Why it cannot be made.
 */
fault: string | null, };

/**
 * One file of a packet.
 */
export type PacketFile = { 
/**
 * Its name.
 */
name: string, 
/**
 * Its media type.
 */
media: string, 
/**
 * How many bytes.
 */
bytes: number, };

/**
 * Which packet.
 */
export type PacketRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * The paper; letter for inches and A4 for millimetres if left out.
 */
paper?: PaperWord | null, 
/**
 * Language of the sheets, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * How far a packet is.
 */
export type PacketState = "working" | "done" | "stopped" | "failed";

/**
 * A figure of both versions.
 */
export type Pair = { 
/**
 * Which: the figure's id, the value's path or the piece.
 */
id: string, 
/**
 * Its name.
 */
label: string, 
/**
 * On the left; none if it has it not.
 */
left: string | null, 
/**
 * On the right; none if it has it not.
 */
right: string | null, 
/**
 * Whether they are the same.
 */
same: boolean, };

/**
 * Paper in the printer.
 */
export type PaperWord = "letter" | "a4";

/**
 * A text that a pattern had when it was saved.
 */
export type PastVersion = { 
/**
 * Its number.
 */
id: number, 
/**
 * When it was saved, in UTC, as `2026-10-18T14:05:00Z`.
 */
at: string, 
/**
 * The text.
 */
source: string, 
/**
 * In what it differs from the one before it; empty for the first.
 */
says: Array<string>, };

/**
 * A pattern file.
 */
export type PatternName = { 
/**
 * Name of the file without `.toml`.
 */
name: string, 
/**
 * Title of the basket; the name where the file has none that can be read.
 */
title: string, 
/**
 * What the text amounts to: two texts of one hash are the same.
 */
hash: string, 
/**
 * When it was changed, in seconds since 1970.
 */
modified: number, 
/**
 * Whether it can be read without problems.
 */
reads: boolean, 
/**
 * Whether a photograph is kept beside it.
 */
photo: boolean, };

/**
 * A pattern file with its text.
 */
export type PatternText = { 
/**
 * Name of the file without `.toml`.
 */
name: string, 
/**
 * The text.
 */
source: string, 
/**
 * Its hash, for saving.
 */
hash: string, };

/**
 * Which picture.
 */
export type PictureRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * The stage of the making, one of [`super::Shown::stages`]; finished if left out.
 */
stage?: string | null, 
/**
 * How fine; for a page if left out.
 */
detail?: DetailWord | null, 
/**
 * How the lid of a finished basket is shown; closed if left out.
 */
lid?: LidWord | null, 
/**
 * The file wanted; GLB if left out.
 */
format?: SolidFormat | null, };

/**
 * How long a piece is.
 */
export type PieceLength = { 
/**
 * What it is; without numbers all of its like.
 */
piece: PieceWord, 
/**
 * Its length, in both units.
 */
length: string, };

/**
 * A piece of the basket, as the nodes of the GLB carry it in their extras.
 */
export type PieceWord = { 
/**
 * What sort of piece: `stave`, `row`, `outer-hoop`, …
 */
kind: string, 
/**
 * Of which vessel: `body` or `lid`.
 */
of: string, 
/**
 * What tells it from its like: of a row its number, its weaver and its strand. Numbers left out at the
 * end stand for any.
 */
numbers: Array<number>, };

/**
 * A place on the basket.
 */
export type Place = { 
/**
 * In words.
 */
label: string, 
/**
 * Between which heights above the mould's base it lies, in mm; the same twice for one height.
 */
span_mm: [number, number], 
/**
 * The pieces that show it; none for the whole basket.
 */
shown: Array<PieceWord>, 
/**
 * The value in the form that has most to do with it.
 */
path: string | null, 
/**
 * The name of that value: findings that share it have one cause.
 */
cause: string | null, };

/**
 * What is booked by one movement.
 */
export type PlanBooking = { 
/**
 * What is new on the shelf by it.
 */
items: Array<ItemText>, 
/**
 * What changes.
 */
changes: Array<ShelfChange>, };

/**
 * What kind of plan a file is.
 */
export type PlanKind = "kits" | "class";

/**
 * A leaf in sections.
 */
export type PlanLeaf = { 
/**
 * Which: `kits`, `shopping`, `cutting`, `price`, `class`.
 */
id: string, 
/**
 * Its name, for the reader.
 */
name: string, 
/**
 * Its sections.
 */
sections: Array<LeafSection>, };

/**
 * A plan in the folder.
 */
export type PlanName = { 
/**
 * Name of the file without `.toml`.
 */
name: string, 
/**
 * Its title.
 */
title: string, 
/**
 * What kind it is.
 */
kind: PlanKind, };

/**
 * A plan to be worked out.
 */
export type PlanOrder = { 
/**
 * What kind of plan it is.
 */
kind: PlanKind, 
/**
 * Its text.
 */
source: string, 
/**
 * Whether its sheets are wanted, or what is shown of it.
 */
sheets: boolean, 
/**
 * Seconds after which the best that was found is taken.
 */
seconds: number, 
/**
 * Other kits files of the folder, by name without `.toml`, that are bought and cut for together with it.
 */
plans: Array<string>, 
/**
 * Orders that are bought and cut for together with it.
 */
orders: Array<string>, 
/**
 * Sheets of labels; those of 4 × 2 in on the paper if left out.
 */
labels?: LabelWord | null, 
/**
 * Paper of the sheets; letter for inches and A4 for millimetres if left out.
 */
paper?: PaperWord | null, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first; the first pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * A plan with changes to be made in it, in order, all or none.
 */
export type PlanRequest = { 
/**
 * What kind of plan it is.
 */
kind: PlanKind, 
/**
 * Its text.
 */
source: string, 
/**
 * The changes.
 */
edits: Array<Edit>, 
/**
 * Language of what is wrong in it, such as `en`.
 */
language?: string | null, };

/**
 * What a plan comes to.
 */
export type PlanShown = { 
/**
 * Its leaves, in the order in which they are worked with.
 */
leaves: Array<PlanLeaf>, 
/**
 * What is booked when all was bought; none where nothing is to be bought.
 */
bought: PlanBooking | null, 
/**
 * What is booked when all was cut; none where not everything lies on the shelf.
 */
cut: PlanBooking | null, 
/**
 * Drawings as SVG.
 */
pictures: Array<string>, };

/**
 * A plan as it stands.
 */
export type PlanText = { 
/**
 * Its text, with comments and layout kept.
 */
source: string, 
/**
 * All that is written in it, by its keys.
 */
values: unknown, 
/**
 * What keeps it from being planned.
 */
problems: Array<Problem>, };

/**
 * Something in a pattern that keeps it from being read.
 */
export type Problem = { 
/**
 * What is wrong.
 */
message: string, 
/**
 * How to mend it.
 */
help: string | null, 
/**
 * The same for those who fill in the form, in their language and without the words of the file.
 */
told: string, 
/**
 * Line, counted from 1.
 */
line: number, 
/**
 * Column in characters, counted from 1.
 */
column: number, 
/**
 * The value of the pattern that it concerns, if it lies in one.
 */
path: string | null, };

/**
 * A value that follows when a grip is pulled.
 */
export type Pull = { 
/**
 * Its place in the pattern, and those of values that must stay the same as it.
 */
paths: Array<string>, 
/**
 * Whether it is a share and no length.
 */
share: boolean, 
/**
 * What it is now, in mm or as a share.
 */
value: number, 
/**
 * In which direction the grip is pulled for it; of length 1.
 */
way: [number, number], 
/**
 * How much it grows for each mm that way.
 */
per: number, 
/**
 * The least that it may be.
 */
least: number, 
/**
 * The most.
 */
most: number, 
/**
 * One step of an arrow key.
 */
step: number, };

/**
 * Where a slider runs. It is wide enough for the value in use.
 */
export type Range = { 
/**
 * Its lower end.
 */
least: number, 
/**
 * Its upper end.
 */
most: number, 
/**
 * One step.
 */
step: number, };

/**
 * A text to save.
 */
export type SaveRequest = { 
/**
 * The text.
 */
source: string, 
/**
 * Hash of the file that it grew from; none for a new file.
 */
base_hash: string | null, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, };

/**
 * What was saved.
 */
export type Saved = { 
/**
 * Name of the file without `.toml`.
 */
name: string, 
/**
 * Hash of its text.
 */
hash: string, 
/**
 * What keeps it from being read; it was saved all the same.
 */
problems: Array<Problem>, 
/**
 * Why its history is not kept; empty if it is. It was saved all the same.
 */
history: string, };

/**
 * A pattern to start from.
 */
export type Scenario = { 
/**
 * Its name, fit for a file.
 */
name: string, 
/**
 * Title of the basket.
 */
title: string, 
/**
 * Its text.
 */
source: string, };

/**
 * What may be seen at a crossing.
 */
export type Seen = { 
/**
 * The weaver within its course, counted from 1; none where the stave is seen.
 */
weaver: number | null, 
/**
 * Its colour.
 */
colour: ColourName, };

/**
 * The shelf as it stands.
 */
export type Shelf = { 
/**
 * Whether there is one; it is made when the maker asks for it.
 */
there: boolean, 
/**
 * What lies there and was looked for, by material and name; the first of it where that is much.
 */
items: Array<ShelfItem>, 
/**
 * How many items were found.
 */
found: number, 
/**
 * How many lie there.
 */
all: number, 
/**
 * Colours of what lies there.
 */
colours: Array<string>, 
/**
 * The moulds, by name.
 */
moulds: Array<ShelfMould>, 
/**
 * Quotes and orders that are still to be made, the first first that needs its material first.
 */
orders: Array<ShelfOrder>, 
/**
 * What came and went, the last first.
 */
movements: Array<ShelfMovement>, };

/**
 * Something to do with the shelf; the answer is the shelf as it stands afterwards.
 */
export type ShelfAct = { "do": "begin" } | { "do": "put", 
/**
 * What is said of it.
 */
item: ItemText, 
/**
 * Whether it must be new: then nothing of that name is changed.
 */
new: boolean, } | { "do": "book", 
/**
 * What kind of movement it is.
 */
kind: MovementKind, 
/**
 * For what.
 */
note: string, 
/**
 * What is new on the shelf by it; of what is there already, nothing is changed.
 */
items: Array<ItemText>, 
/**
 * What changes.
 */
changes: Array<ShelfChange>, } | { "do": "count", 
/**
 * The item.
 */
item: string, 
/**
 * So many are there.
 */
count: number, } | { "do": "remove", 
/**
 * The item.
 */
item: string, } | { "do": "remove-mould", 
/**
 * The mould.
 */
mould: string, } | { "do": "undo", 
/**
 * Its number.
 */
movement: number, } | { "do": "mould", 
/**
 * What it is called.
 */
name: string, 
/**
 * Where it is kept.
 */
place: string, 
/**
 * Pattern files that fit it, separated by commas.
 */
patterns: string, 
/**
 * Anything else.
 */
note: string, } | { "do": "lend", 
/**
 * The mould.
 */
mould: string, 
/**
 * To whom.
 */
to: string, 
/**
 * The day on which it is due back, as `2026-10-18`; empty if none.
 */
due: string, } | { "do": "back", 
/**
 * The mould.
 */
mould: string, } | { "do": "take-in", 
/**
 * The table as CSV.
 */
csv: string, };

/**
 * How many of an item came (above zero) or went.
 */
export type ShelfChange = { 
/**
 * The item's name.
 */
item: string, 
/**
 * How many.
 */
count: number, };

/**
 * Something on the shelf.
 */
export type ShelfItem = { 
/**
 * Its material in the reader's language.
 */
material_label: string, 
/**
 * Its colour in the reader's language.
 */
colour_label: string, 
/**
 * What it is bought in, in the reader's language.
 */
unit_label: string, 
/**
 * Length of one strand to read, in both units; none for pieces used whole.
 */
length_said: string | null, 
/**
 * Width to read, as the maker measured it.
 */
width_said: string | null, 
/**
 * Thickness to read, as the maker measured it.
 */
thickness_said: string | null, 
/**
 * Whether it is time to buy.
 */
low: boolean, 
/**
 * What it is called.
 */
name: string, 
/**
 * Its material, by the name that a pattern uses.
 */
material: string, 
/**
 * Its colour; natural if empty.
 */
colour: string, 
/**
 * How many there are; heeded for something new alone.
 */
count: number, 
/**
 * Length of one strand, such as `12 ft`.
 */
length: string, 
/**
 * Width as measured.
 */
width: string, 
/**
 * Thickness as measured.
 */
thickness: string, 
/**
 * What it is bought in.
 */
unit: string, 
/**
 * Strands, or pieces, in one such unit.
 */
holds: number, 
/**
 * What one such unit costs, such as `12.50`.
 */
price: string, 
/**
 * Where it is bought.
 */
bought_from: string, 
/**
 * Below this many it is time to buy.
 */
reorder: number, 
/**
 * Anything else.
 */
note: string, };

/**
 * A mould.
 */
export type ShelfMould = { 
/**
 * What it is called.
 */
name: string, 
/**
 * Where it is kept.
 */
place: string, 
/**
 * Pattern files that fit it, separated by commas.
 */
patterns: string, 
/**
 * Anything else.
 */
note: string, 
/**
 * Who has it; none where it is in its place.
 */
lent_to: string | null, 
/**
 * The day on which it is due back, as `2026-10-18`.
 */
due: string | null, };

/**
 * One movement.
 */
export type ShelfMovement = { 
/**
 * Its number.
 */
id: number, 
/**
 * When, in UTC, as `2026-10-18T14:05:00Z`.
 */
at: string, 
/**
 * What kind.
 */
kind: MovementKind, 
/**
 * For what, in the maker's words.
 */
note: string, 
/**
 * Whether it was taken back.
 */
undone: boolean, 
/**
 * The mould that was taken off the shelf.
 */
mould: string | null, 
/**
 * What changed.
 */
changes: Array<ShelfChange>, };

/**
 * A quote or an order that is still to be made.
 */
export type ShelfOrder = { 
/**
 * What it is called.
 */
name: string, 
/**
 * Its pattern file.
 */
pattern: string, 
/**
 * How many baskets.
 */
count: number, 
/**
 * The day on which its material is needed, as `2026-11-02`.
 */
needed: string | null, };

/**
 * A basket.
 */
export type Shown = { 
/**
 * Its name.
 */
title: string, 
/**
 * Units of the file.
 */
units: UnitsWord, 
/**
 * The form in making order.
 */
groups: Array<Group>, 
/**
 * The mould's measurements and profile.
 */
mould: Mould, 
/**
 * Whether it has a lid.
 */
lid: boolean, 
/**
 * The courses of the weaving.
 */
courses: Courses, 
/**
 * What was found, heaviest first.
 */
findings: Array<Finding>, 
/**
 * The cut list in making order.
 */
cuts: Array<Cut>, 
/**
 * Its main figures.
 */
figures: Array<Figure>, 
/**
 * The stages of its making for `POST /api/picture`, in making order.
 */
stages: Array<Word>, 
/**
 * The drawings for `POST /api/drawing`.
 */
drawings: Array<DrawingName>, 
/**
 * Materials that the pattern adds to the catalogue, and those that the maker measured.
 */
materials: Array<MaterialName>, 
/**
 * Whether there is a shelf that cannot be read, so that the catalogue's figures hold.
 */
shelf_unread: boolean, 
/**
 * Colours that the pattern may name: the built-in ones and its own.
 */
colours: Array<ColourName>, 
/**
 * How long the pieces are, for those who point at one in the picture.
 */
lengths: Array<PieceLength>, };

/**
 * To which side, as seen from outside on a basket that stands on its base.
 */
export type SideWord = "left" | "right";

/**
 * Files of solids.
 */
export type SolidFormat = "glb" | "stl" | "3mf";

/**
 * One step that can be taken with a click.
 */
export type Step = { 
/**
 * What it does: `Staves, count: 73`.
 */
label: string, 
/**
 * What comes with it, a sentence for each care.
 */
brings: Array<string>, 
/**
 * What the maker wrote and it changes, a sentence each.
 */
undoes: Array<string>, 
/**
 * The changes.
 */
edits: Array<Edit>, };

/**
 * What a pattern may name.
 */
export type Stock = { 
/**
 * The catalogue's materials, in its order.
 */
materials: Array<MaterialName>, 
/**
 * The woods for bases.
 */
woods: Array<Word>, 
/**
 * The built-in colours.
 */
colours: Array<ColourName>, };

/**
 * A photograph to be traced.
 */
export type TraceRequest = { 
/**
 * The photograph as JPEG or PNG, in base64.
 */
photo: string, 
/**
 * The girth at the widest place, as it is typed; empty where it was not taped.
 */
girth: string, 
/**
 * The height, where no girth was taped.
 */
height: string, 
/**
 * Distance from the lens to the middle of the mould; empty where it is not known.
 */
distance: string, 
/**
 * Whether the mould stands on its rim.
 */
foot_up: boolean, 
/**
 * Units of the pattern.
 */
units: UnitsWord, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, };

/**
 * What was traced.
 */
export type TracedMould = { 
/**
 * What to do to give the pattern this mould.
 */
edits: Array<Edit>, 
/**
 * How far to trust it, a sentence each.
 */
said: Array<string>, 
/**
 * Width and height of the photograph in pixels.
 */
size: [number, number], 
/**
 * From its pixels to mm right of the axis and below the foot: six numbers as SVG has them in `matrix`.
 */
matrix: [number, number, number, number, number, number], 
/**
 * Both edges as they were found, in pixels.
 */
edges: [Array<[number, number]>, Array<[number, number]>], };

/**
 * Units by the words of a pattern.
 */
export type UnitsWord = "in" | "mm";

/**
 * A value in use.
 */
export type Used = { 
/**
 * To read: `4 7/8 in (124 mm)`, `67`, `sheet brass`.
 */
text: string, 
/**
 * As the pattern would say it: `4 7/8 in`, `67`, `brass`.
 */
word: string, 
/**
 * In millimetres, or the count itself: where a slider stands.
 */
number: number | null, };

/**
 * A way to weave a course.
 */
export type Way = { 
/**
 * The look that it was searched for.
 */
look: LookWord, 
/**
 * Name of the weave.
 */
weave: string, 
/**
 * What is seen, in words.
 */
seen: string, 
/**
 * How many staves it stands on.
 */
staves: number, 
/**
 * What it changes besides the weave, a sentence each.
 */
changes: Array<string>, 
/**
 * How it looks.
 */
picture: LittleChart, 
/**
 * The changes.
 */
edits: Array<Edit>, };

/**
 * What was found, best first.
 */
export type Ways = { 
/**
 * Each of them was woven on this basket.
 */
each: Array<Way>, };

/**
 * Ways to weave a course so that it looks as wanted.
 */
export type WaysRequest = { 
/**
 * The pattern.
 */
source: string, 
/**
 * Number of the course, counted from 1.
 */
course: number, 
/**
 * What is wanted.
 */
wish: Wish, 
/**
 * How many ways to answer; six if left out.
 */
most?: number | null, 
/**
 * Language of the answer, such as `en`.
 */
language?: string | null, 
/**
 * Units that stand first in the answer; the pattern's own if left out.
 */
units?: UnitsWord | null, };

/**
 * A look that is wanted.
 */
export type Wish = { 
/**
 * Which; the best of each if left out.
 */
look?: LookWord | null, 
/**
 * For spirals: to which side they climb; either if left out.
 */
lean?: SideWord | null, 
/**
 * For spirals: how often a line goes round; any number if left out.
 */
turns?: number | null, 
/**
 * The colours, one to three by their names; the staves' first.
 */
colours: Array<string>, };

/**
 * One option of a word.
 */
export type Word = { 
/**
 * As a pattern says it.
 */
word: string, 
/**
 * As a reader wants it.
 */
label: string, };
