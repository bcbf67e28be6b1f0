# Kits, shopping list, cutting plan and prices.

workshop-kits = kits
workshop-labels = labels
workshop-shopping = shopping list
workshop-cutting = cutting plan
workshop-price = price

# Kits

workshop-batch = To cut, for all together
workshop-batch-note = Spares are for everybody: the teacher keeps them. There are as many as are enough in 95 of 100 classes.
workshop-student = student { $number }
workshop-bag = { $who } – { $title }
workshop-room = For the room
workshop-room-note = Shared by all; lay them out before the class.
workshop-soak = soak { $time } before use
workshop-piece = Piece
workshop-material = Material
workshop-length = Length
workshop-bags-hold = In the bags
workshop-spares = Spare
workshop-in-all = In all
workshop-count = Count
workshop-there = There
workshop-share = { $bags } × { $each }

# Shopping list

workshop-buy = To buy
workshop-nothing-to-buy = Everything lies on the shelf; nothing has to be bought.
workshop-units = { $count } × { $unit }
workshop-in-lengths = { $run }, in lengths of { $lengths }
workshop-feet = { $count } ft
workshop-metres = { $count } m
workshop-order-by = Order by
workshop-when-to-order = When to order
workshop-for = For
workshop-needed = Needed on
workshop-order-dyed-by = Dyed: order by
workshop-price-each = Each
workshop-cost = Cost
workshop-sum = Together: { $sum }
workshop-sum-unknown = No price is known of: { $what }. The sum is without them: { $sum }
workshop-from-shelf = From the shelf
workshop-lot = On the shelf
workshop-takes = Take
workshop-stays = Stays
workshop-left = Left when all is cut
workshop-left-whole = { $count ->
    [one] one strand or piece stays whole
   *[other] { $count } strands or pieces stay whole
}
workshop-left-ends = ends worth keeping: { $ends }
workshop-too-long = { $count ->
    [one] one piece of { $length } is longer than any strand: choose another material, or find a longer strand
   *[other] { $count } pieces of { $length } are longer than any strand: choose another material, or find longer strands
}
workshop-not-planned = this cannot be planned: a length is missing, or there are too many

# Cutting plan

workshop-proven = { $count ->
    [one] One strand is opened; fewer will not do.
   *[other] { $count } strands are opened; fewer will not do.
}
workshop-unproven = { $count ->
    [one] One strand is opened.
   *[other] { $count } strands are opened; { $bound } are needed at least. The search was stopped before it knew whether fewer will do.
}
workshop-kerf = At each cut { $kerf } is lost.
workshop-times = Strands
workshop-strand = From
workshop-pieces = Pieces, long ones first
workshop-marks = Mark the tape at
workshop-end = End
workshop-bought-strand = bought, { $length }
workshop-pieces-of = { $count } × { $length }

# Prices

workshop-price-basket = The basket
workshop-price-kit = The kit
workshop-price-seat = A seat in the class
workshop-line = Line
workshop-amount = Amount
workshop-line-materials = materials, at the price of buying them anew
workshop-line-waste = waste, { $share } of the materials
workshop-line-labour = work, { $time } at { $wage } an hour
workshop-line-overhead = rent, light, insurance
workshop-line-mould = the mould’s wear or rent
workshop-line-packing = packing and sending
workshop-line-cost = cost
workshop-line-margin = margin, { $share } of the cost
workshop-line-wholesale = price to a shop
workshop-line-retail = price in the shop
workshop-line-teaching = teaching and preparing, { $time } at { $wage } an hour, for all
workshop-line-travel = travel, for all
workshop-line-room = the room, for all
workshop-line-kit = one student’s kit
workshop-line-venue = what the venue keeps, { $share } of the fee
workshop-line-fee = fee of one student
workshop-seat-cost = cost of one student: the kit and a share of what is for all, { $students } students
workshop-rounding = Every line is rounded to the cent, half a cent upward; sums are sums of rounded lines.
workshop-rounding-step = Prices are rounded up to a multiple of { $step }.
workshop-ten-minutes = Ten minutes less of work, on the lashing for instance, make it { $price } to a shop: { $less } less.
workshop-least = { $least ->
    [one] At { $fee } one student covers what is spent.
   *[other] At { $fee } it takes { $least } students to cover what is spent.
}
workshop-never = At { $fee } no number of students covers what is spent: each kit costs more than the fee brings.
workshop-target = For a price of { $target } the margin is { $share } of the cost.
workshop-unpriced = No price is known of: { $what }. They are not in the sum; write prices on the shelf.

# Sizes

workshop-sizes = sizes
workshop-sizes-set = The set
workshop-size = Size
workshop-size-mould = Across
workshop-size-high = High
workshop-size-staves = Staves
workshop-size-stave = Stave stock
workshop-size-cane = Weavers
workshop-size-rows = Rows
workshop-size-holds = Holds
workshop-size-holds-text = { $litres } l ({ $quarts } qt)
workshop-nests = Each in the next
workshop-nests-note = The inner basket stands on the floor of the outer one, with its handle up. All round { $wanted } are wanted.
workshop-nest = Which
workshop-nest-in = { $inner } in { $outer }
workshop-nest-room = Least room
workshop-nest-at = At height
workshop-nest-below = Rim below
workshop-nest-verdict = Fits
workshop-nest-fits = yes
workshop-nest-tight = no
workshop-for-sizes = For
workshop-sizes-changed = What another size changes
workshop-sizes-kept = All else is kept as the pattern has it.
workshop-size-key = Key
workshop-size-value = Now
workshop-size-why = Why
workshop-size-out = taken out
sizes-why-scaled = keeps its proportion
sizes-why-stock = nearest stock of its kind
sizes-why-anew = computed anew
sizes-why-mould = another mould
sizes-why-title = names the size

# Orders

workshop-quote = quote
workshop-packing-slip = packing slip
workshop-order-price = Price
workshop-order-for = For { $buyer }
workshop-order-baskets = { $count } × { $title }, { $price } each
workshop-order-deposit = paid ahead, before the work begins
workshop-order-rest = to be paid on delivery
workshop-order-promised = It is ready by { $day }.
workshop-order-hand-made = Every basket is made by hand: sizes may differ by a little, and colours by the lot.
workshop-order-what = Measure
workshop-order-size = Size
workshop-order-packed = In the parcel
workshop-order-owed = Still to be paid: { $sum }
workshop-order-paid = All is paid.

# Check card

workshop-makings-log = log of makings
workshop-makings-title = What was made
workshop-makings = { $count ->
    [one] One making
   *[other] { $count } makings
}
workshop-makings-number = No.
workshop-makings-pattern = Pattern
workshop-makings-made = Finished
workshop-makings-who = Who
workshop-makings-measured = Measured
workshop-makings-wrong = What went wrong
workshop-checks = check card
workshop-checks-note = Look at your work after each step. Tick what is right; mend the rest before you go on.
workshop-checks-step = Step
workshop-checks-none = Not so?
workshop-checks-mend = If so

# Cards that go with a basket

card-provenance = Where this basket comes from
card-care = How to care for this basket
card-number = number
card-made = made
card-wood = wood
card-maker = made by
care-dust = Dust it with a soft dry brush.
care-wet = Wipe spills off with a damp cloth and let it dry in the air. Never stand it in water.
care-sun = Keep it out of the sun and away from stoves: dry heat makes cane brittle.
care-bare = It is bare. Once a year, in the dry season, mist it lightly with water and let it dry in the air.
care-oil = It is oiled. When it looks dull, rub on a little of the same oil, let it stand open until it is dry, and lay the rag out flat: a heap of oily rags can catch fire.
care-coat = It is coated. Alcohol and hot dishes leave marks on the coat; put a cloth between.
care-swing = Carry it by the handle; take a heavy load from below, with both hands.
care-fixed = Lift it by its handle only when it is lightly filled; take it from below otherwise.
care-mend = If a strand breaks, keep the ends and ask a basketmaker: a short piece can be woven in.

# What a search tells meanwhile

workshop-searching = { $found } strands found so far, { $least } at least
workshop-class-searching = looking for a plan; so far it ends { $best }
workshop-class-trying = trying what would mend it: { $count }

# The shelf on the page: what cannot be done, and how to mend it

workshop-own-size = { $size }, by your shelf
measured-of = { $material } { $width } wide, { $thickness } thick
own-measures = Measured on your shelf: { $measures }.
own-unread = The shelf ({ $file }) cannot be read, so the catalogue’s measures hold: { $why }
workshop-no-shelf = There is no shelf in this folder yet.
    .help = Make one first.
workshop-no-name = This needs a name.
    .help = Write what you call it, such as “fine cane, blue”.
workshop-name-taken = There is “{ $typed }” on the shelf already.
    .help = Choose another name, or change that one.
workshop-no-material = There is no material “{ $typed }”.
    .help = Choose one of the list.
workshop-no-length = “{ $typed }” is no length.
    .help = Write it as 12 ft, 3 1/2 in or 3.6 m.
workshop-no-amount = “{ $typed }” is no amount.
    .help = Write it as 12.50.
kits-fault-large = the file is larger than 1 MB
    .help = A plan has a few kilobytes: is this the right file?
kits-fault-toml = this cannot be read as TOML
    .help = A line is a name, = and a value; texts stand in quotation marks, and each bracket is closed.
kits-fault-key = `{ $key }` is not known here
    .help = Known here: { $all }.
kits-fault-key-near = `{ $key }` is not known here
    .help = Is `{ $nearest }` meant?
kits-fault-missing = `{ $key }` is missing
    .help = Write { $key } = and a text in quotation marks.
kits-fault-text = `{ $key }` must be a text
    .help = Write it in quotation marks, and not empty.
kits-fault-list = `{ $key }` must be a list
    .help = Write it in square brackets; students as [[students]] on a line of its own.
kits-fault-section = `{ $key }` must be a section
    .help = Write [{ $key }] on a line of its own, or the values in braces.
kits-fault-group = this is no group of students
    .help = Write [[students]] on a line of its own, and pattern and count below it.
kits-fault-nobody = there are 0 students in this class
    .help = Say in each [[students]] what they make and how many they are: pattern, and count = 8.
kits-fault-students = there are { $count } students; a class has 1 to { $most }
    .help = Say in each [[students]] how many they are: count = 8.
kits-fault-time = `{ $key }` cannot be { $value }
    .help = Minutes and hours are numbers from 0 to 100,000, such as { $key } = 40.
kits-fault-amount = `{ $key }` cannot be { $value }
    .help = Write amounts from 0 to ten million as text, such as { $key } = "24.00"; shares as "0.1".
kits-fault-day = "{ $value }" is no day
    .help = Write year, month and day, such as { $key } = "2026-10-17".
kits-fault-kerf = a cut cannot take "{ $value }"
    .help = Write a length from 0 to 50 mm, such as { $key } = "1 mm".
kits-fault-colour = there is no colour `{ $colour }`
    .help = Write one of { $all }, or #rrggbb.
kits-fault-colour-near = there is no colour `{ $colour }`
    .help = Is `{ $nearest }` meant?
kits-fault-in = { $file }.toml, line { $line }: { $said }
    .help = Open that plan and mend it there.
plan-pattern = { $file }: { $said }
    .help = Open that pattern and mend it there.
workshop-fault-newer = The shelf was written by a newer Stavewright (its version { $found }, known up to { $known }).
    .help = Use that one; the file was left as it is.
workshop-fault-no-store = This file is no shelf of Stavewright.
    .help = Move workshop.db in this folder elsewhere; it was left as it is.
workshop-fault-damaged = The shelf’s file is damaged: { $said }.
    .help = Put the last backup in its place, and keep this file aside.
workshop-fault-read-only = The shelf may not be written.
    .help = Allow writing to workshop.db in this folder.
workshop-fault-full = There is no room left on the disk; nothing was changed.
    .help = Make room and try again.
workshop-fault-busy = Another program is writing to the shelf.
    .help = Try again in a moment.
workshop-fault-unopened = The shelf cannot be opened: { $said }
    .help = Check that the folder may be written to.
workshop-fault-unknown = “{ $name }” is no longer there.
    .help = Load the page again.
workshop-fault-too-few = Of “{ $name }” there are { $there }, and { $wanted } would be taken.
    .help = Count what is there, and book that first.
workshop-fault-row = Line { $line } of the table: { $said }
    .help = Mend the line and take the table in again; nothing was changed.
workshop-fault-refused = That cannot be: { $said }.
    .help = Nothing was changed.
workshop-fault-other = The shelf did not do it: { $said }
    .help = Nothing was changed.

# What cannot be done with the shelf; it stands within a sentence

workshop-cannot-unnamed-item = an item needs a name and a material
workshop-cannot-measure = a measure of “{ $name }” is no length above zero
workshop-cannot-length-unit = “{ $name }” is bought by the foot or the metre: then one unit holds 1 and is one foot (304.8 mm) or one metre (1000 mm) long
workshop-cannot-hold = of “{ $name }” there would be more than can be
workshop-cannot-unnamed-mould = a mould needs a name
workshop-cannot-girth = a girth of a mould is a length above zero, at a height
workshop-cannot-lend-to-nobody = say to whom the mould is lent
workshop-cannot-due = the day it is due back is written as 2026-10-18
workshop-cannot-mould-out = mould { $name } is out: { $to } has it
workshop-cannot-bring-back = mould { $name } is not out
workshop-cannot-undo-nothing = there is nothing to take back
workshop-cannot-undo-twice = movement { $number } was taken back already
workshop-cannot-undo-there = “{ $name }” was put on the shelf again meanwhile
workshop-cannot-unnamed-order = an order needs a name and at least one basket
workshop-cannot-promise = the promised day is written as 2026-11-20
workshop-cannot-unnamed-record = a record names the pattern that was made
workshop-cannot-two-records = there are two records of the number { $number }
workshop-cannot-more-records = there are too many records
workshop-cannot-pour-over = the store holds something already; take everything into a new one
workshop-cannot-read = { $said }

# What is wrong in a row of a table; it stands within a sentence

workshop-row-large = the table is larger than 16 megabytes
workshop-row-encoding = this is not UTF-8 text; save the table as CSV in UTF-8
workshop-row-unread = { $said }
workshop-row-cells = this row has more or fewer cells than the heading (they are parted by { $sign })
workshop-row-no-column = there is no column “{ $name }”; the columns are { $known }
workshop-row-missing = the column “{ $name }” is missing
workshop-row-empty = the column “{ $name }” must not be empty
workshop-row-whole = the column “{ $name }” is “{ $text }”, not a whole number
workshop-row-amount = the column “{ $name }” is “{ $text }”, not an amount such as 12.50
workshop-row-length = the column “{ $name }” is “{ $text }”, not a number of millimetres above zero
