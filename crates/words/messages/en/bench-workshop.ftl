### The pages of the workshop.

bench-shop-ways = Pages
bench-shop-back = Patterns
bench-shop-workshop = Workshop
bench-shop-closed = The workshop is the maker’s own: this bench does not show it to guests.

## The shelf

bench-shop-shelf = Shelf
bench-shop-none = There is no shelf in this folder yet. It is one file beside the patterns, workshop.db, and no pattern needs it. With it the shopping list knows what is there, and your own measures take the place of the catalogue’s.
bench-shop-begin = Make a shelf
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
bench-shop-unit-hint = such as hank or coil
bench-shop-unit-of = { $unit } of { $holds }
bench-shop-unit-priced = { $unit } at { $price }
bench-shop-holds = Strands or pieces in it
bench-shop-price = Price of it
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
bench-shop-how-many = How many
bench-shop-there-now = On hand now: { $count }. When you counted, write what is there.
bench-shop-for = For what
bench-shop-for-hint = such as the class it was cut for
bench-shop-did-change = { $name } changed
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
bench-shop-undone = taken back
bench-shop-did-undo = { $kind } of { $when } taken back
