### The pages of the workshop.

bench-shop-ways = Pages
bench-shop-back = Patterns
bench-shop-workshop = Workshop
bench-shop-closed = The workshop is the maker’s own: this bench does not show it to guests.

## The shelf

bench-shop-shelf = Shelf
bench-shop-none = There is no shelf in this folder yet. It is one file beside the patterns, workshop.db, and no pattern needs it. With it the shopping list knows what is there, and your own measures take the place of the catalogue’s.
bench-shop-begin = Make a shelf
bench-shop-unread = The shelf of this folder cannot be read, so materials measure what the catalogue says. The page Shelf says what is wrong.
bench-shop-new = Put something on the shelf
bench-shop-new-heading = Something new on the shelf
bench-shop-put = Put it there
bench-shop-change = Change
bench-shop-change-heading = Change: { $name }
bench-shop-csv-out = Save as CSV
bench-shop-csv-in = Take in a CSV
bench-shop-taken-in = { $name } was taken in.
bench-shop-find = Find on the shelf
bench-shop-found = { $all ->
    [one] { $count } of one
   *[other] { $count } of { $all }
}
bench-shop-more = { $count ->
    [one] One more is not shown; write more of its name above.
   *[other] { $count } more are not shown; write more of a name above.
}
bench-shop-empty = Nothing lies here yet.
bench-shop-name = Name
bench-shop-name-hint = what you call it, such as “fine cane, blue”
bench-shop-name-kept = Movements are kept under it, so it stays.
bench-shop-material = Material
bench-shop-colour = Colour
bench-shop-count = On hand
bench-shop-whole = a whole number
bench-shop-length = Length of a strand
bench-shop-length-hint = such as 12 ft or 3.6 m; none for pieces used whole
bench-shop-whole-piece = used whole
bench-shop-measured = Own measure
bench-shop-measured-hint = as you measured it; it goes before the catalogue’s
bench-shop-width = Width
bench-shop-thickness = Thickness
bench-shop-wide = { $width } wide
bench-shop-thick = { $thickness } thick
bench-shop-bought = Bought as
bench-shop-unit = Bought in
bench-shop-unit-hint = such as hank or coil; foot or metre for what is sold by length (then each holds 1)
bench-shop-unit-of = { $unit } of { $holds }
bench-shop-unit-priced = { $unit } at { $price }
bench-shop-holds = Strands or pieces in it
bench-shop-unit-price = Price of it
bench-shop-from = Bought from
bench-shop-reorder = Buy when below
bench-shop-low = buy
bench-shop-note = Note
bench-shop-acts = To do
bench-shop-act-of = { $act }: { $of }
bench-shop-book = Book
bench-shop-book-heading = What came or went: { $name }
bench-shop-what = What happened
bench-shop-kind-bought = bought
bench-shop-kind-cut = cut
bench-shop-kind-counted = counted
bench-shop-kind-removed = taken off the shelf
bench-shop-how-many = How many
bench-shop-there-now = On hand now: { $count }. When you counted, write what is there.
bench-shop-for = For what
bench-shop-for-hint = such as the class it was cut for
bench-shop-did-change = { $name } changed
bench-shop-remove = Take off
bench-shop-did-remove = { $name } taken off the shelf
bench-shop-did-put = { $name } put on the shelf
bench-shop-did-book = { $name } booked
bench-shop-took-back = Taken back: { $step }
bench-shop-moulds = Moulds
bench-shop-no-moulds = No mould is written down.
bench-shop-mould-new = Write a mould down
bench-shop-mould-put = Write it down
bench-shop-mould-hint = such as A, or what stands on it
bench-shop-place = Kept where
bench-shop-where = Where it is
bench-shop-here = in its place
bench-shop-fits = Patterns that fit
bench-shop-fits-hint = names of files, with commas between
bench-shop-lend = Lend
bench-shop-lend-heading = Lend mould { $name }
bench-shop-lend-to = To whom
bench-shop-lend-hint = such as student 4
bench-shop-due = Due back on
bench-shop-due-on = due back { $day }
bench-shop-lent = with { $to }
bench-shop-back-again = It is back
bench-shop-did-lend = mould { $name } lent
bench-shop-did-back = mould { $name } is back
bench-shop-history = What came and went
bench-shop-no-history = Nothing was booked yet.
bench-shop-history-all = Show all { $count }
bench-shop-when = When
bench-shop-changes = What changed
bench-shop-change-of = { $item } { $count }
bench-shop-take-back = Take back
bench-shop-change-mould = mould { $name }
bench-shop-undone = taken back
bench-shop-did-undo = { $kind } of { $when } taken back

## Plans

bench-shop-kits = Kits and buying
bench-shop-price = Price
bench-shop-class = Class
bench-plan-file = Plan
bench-plan-new = A new one
bench-plan-unsaved = not saved yet
bench-plan-unsaved-text = This plan has changes that are not saved.
bench-plan-save-heading = Save the plan
bench-plan-form = What is planned
bench-plan-comes-to = What it comes to
bench-plan-text = The plan as text
bench-plan-text-take = Take this text
bench-plan-working = It is being worked out
bench-plan-worked = Worked out anew.
bench-plan-sheets = Sheets to print
bench-plan-setting = Setting { $now }
bench-plan-problem = Line { $line }, column { $column }:
bench-plan-did-set = { $field } changed
bench-plan-new-kits = New class
bench-plan-title = Title
bench-plan-needed = First used on
bench-plan-pattern = Pattern
bench-plan-count = How many
bench-plan-students = Students, group { $number }
bench-plan-students-add = Add students
bench-plan-students-drop = Take this group out
bench-plan-colours = Colours changed
bench-plan-colour-add = Another colour for them
bench-plan-colour-from = In the place of
bench-plan-colour-to = they have
bench-plan-colour-drop = Leave { $from } as the pattern has it
bench-plan-drop = Drop
bench-plan-ready = Prepared for them
bench-plan-ready-staves-cut = staves, cut to length
bench-plan-ready-staves-tapered = staves, tapered
bench-plan-ready-rings = hoops, as glued rings
bench-plan-ready-handle = handle, bent
bench-plan-ready-ears = ears, shaped
bench-plan-ready-base = base, with its groove
bench-plan-delivery = Delivery and cuts
bench-plan-delivery-days = Days from order to delivery
bench-plan-dye-days = Further days for dyed stock
bench-plan-kerf = Lost at each cut
bench-plan-together = Bought for together with
bench-plan-together-hint = One shopping list and one cutting plan for all of them.
bench-plan-order-needed = { $order }, material needed on { $day }
bench-plan-order = order “{ $name }”, { $count ->
    [one] one basket
   *[other] { $count } baskets
}
bench-plan-labels = Labels
bench-plan-labels-usual = 4 × 2 in, on the usual paper
bench-plan-labels-letter-10 = Letter: 10 of 4 × 2 in
bench-plan-labels-letter-6 = Letter: 6 of 4 × 3 1/3 in
bench-plan-labels-a4-4x2in = A4: 10 of 4 × 2 in
bench-plan-labels-a4-10 = A4: 10 of 105 × 57 mm
bench-plan-labels-a4-8 = A4: 8 of 99.1 × 67.7 mm
bench-plan-labels-a4-12 = A4: 12 of 63.5 × 72 mm
bench-plan-no-shelf = There is no shelf yet, so all of it is bought. With one, what is there is used first, and what was bought or cut can be booked.
bench-plan-book-bought = All of it was bought: book it
bench-plan-book-cut = It was cut so: book it
bench-plan-booked-bought = What was bought is on the shelf.
bench-plan-booked-cut = What was cut is taken from the shelf, and ends worth keeping lie there.

bench-price-currency = Currency
bench-price-money = Money
bench-price-shares = Shares, 0.1 for ten in a hundred
bench-price-times = Times
bench-price-wage = An hour of work
bench-price-overhead = Rent, light, insurance for one
bench-price-mould = The mould’s wear or rent
bench-price-packing = Packing and sending
bench-price-step = Prices in steps of
bench-price-travel = Travel, for the class
bench-price-room = The room, for the class
bench-price-target = A price you have in mind
bench-price-fee = A fee you have in mind
bench-price-waste = Waste of material
bench-price-margin = Margin on the cost
bench-price-retail = Price in the shop, times the wholesale price
bench-price-venue = What the venue keeps of the fee
bench-price-office-minutes = Minutes for letters and accounts
bench-price-kit-minutes = Minutes to put a kit together
bench-price-teaching-hours = Hours of teaching and preparing

bench-class-new = New class
bench-class-moulds = Moulds
bench-class-drills = Drills
bench-class-zone = Time zone
bench-class-hand = Their hand
bench-class-learner = learners
bench-class-practised = practised
bench-class-from = They come at
bench-class-day = Day { $number }
bench-class-day-add = Add a day
bench-class-day-drop = Take this day out
bench-class-date = Date
bench-class-hours = Hours
bench-class-times = So many times
bench-class-every = Every so many days
bench-class-pictures = Who does what when

# The page Records

bench-shop-records = Records
bench-records-heading = What was made
bench-records-log = Write a making down
bench-records-pattern = Pattern
bench-records-made = Finished on
bench-records-who = Who (a name need not be given)
bench-records-learner = made by a learner
bench-records-minutes = Minutes of work, waiting not counted
bench-records-measures = What was measured
bench-records-planned = planned { $planned }
bench-records-rows = Rows
bench-records-weaver = Weaver, less what was left over
bench-records-wet = Height of the weaving, wet
bench-records-dry = Height of the weaving, dry
bench-records-girth-wet = Girth at the widest, wet
bench-records-girth-dry = Girth at the widest, dry
bench-records-staves = Staves made
bench-records-spoilt = of them spoilt
bench-records-wood = Wood
bench-records-wrong = What went wrong
bench-records-photo = Photograph
bench-records-photo-all = Leave place and time in the photograph
bench-records-photo-unread = This photograph cannot be opened here.
bench-records-photo-alt = Photograph of making { $number }
bench-records-keep = Write it down
bench-records-kept = Written down as number { $number }.
bench-records-none = Nothing was written down yet.
bench-records-number = Number
bench-records-maker = Who
bench-records-measured = Measured
bench-records-forget = Forget
bench-records-forget-one = Forget making { $number }
bench-records-forget-ask = Making { $number } is forgotten for good, with its photographs.
bench-records-forget-all = Forget all of { $who }
bench-records-forget-all-ask = All { $count } makings of { $who } are forgotten for good, with their photographs.
bench-records-act = What to do
bench-records-print = Print the log
bench-records-card = Card
bench-records-card-of = Card of making { $number }, to print
bench-records-export = Take them away as a file
bench-records-of = Of whom
bench-records-everybody = everybody
bench-records-hand = The hand that they tell of
bench-records-hand-none = No making here tells of a hand yet.
bench-records-hand-from = { $count ->
    [one] From one making, beside the usual figures:
   *[other] From { $count } makings, beside the usual figures:
}
bench-records-hand-left = { $count ->
    [one] One making is left out: its pattern is not here, or it measured something else.
   *[other] { $count } makings are left out: their patterns are not here, or they measured something else.
}
bench-records-hand-drafted = With them, “{ $pattern }” is:
bench-records-adopt = Work with these figures
bench-records-adopted = The workshop works with figures of its own: { $whose }. They hold for all patterns on this bench, and each says so.
bench-records-usual = The workshop works with the usual figures.
bench-records-take-back = Work with the usual figures again
bench-class-seconds = Search for at most
bench-class-seconds-of = { $seconds } s
bench-class-enough = Stop, and take the best so far
