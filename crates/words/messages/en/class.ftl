# A class: whether it fits, its plan, what would mend it.

class-date = { $weekday } { $year }-{ $month }-{ $day }
class-weekday-1 = Mon
class-weekday-2 = Tue
class-weekday-3 = Wed
class-weekday-4 = Thu
class-weekday-5 = Fri
class-weekday-6 = Sat
class-weekday-7 = Sun

class-fits = It fits: all is done on { $day } at { $time }.
class-proven = No plan ends earlier; that is proven.
class-gap = No plan can end before { $day }, { $time }; whether this one is the best is not known.
class-does-not-fit = It does not fit: no plan ends within the sessions. That is proven.
class-unknown = No plan was found in the time that was given, and none was ruled out. Give it longer (--time-limit).
class-too-long = { $step }: { $minutes } without a break, and the longest session has { $longest }. No number of days helps.
class-days-alone = { $days ->
    [one] One student who waits for nobody needs one day like these.
   *[other] One student who waits for nobody needs { $days } days like these.
}
class-days-with-moulds = { $days ->
    [one] With a mould for each, all together need one day.
   *[other] With a mould for each, all together need { $days } days.
}
class-days-for-all = { $days ->
    [one] With what there is, all together need one day.
   *[other] With what there is, all together need { $days } days.
}
class-days-at-least = That fewer than { $days } do not do is proven; a better plan may need fewer.
class-days-many = Even many more days would not do, or none such plan was found in time.

class-mend-days = { $count ->
    [one] one day more
   *[other] { $count } days more
}
class-mend-half = half a day more
class-mend-moulds = { $count ->
    [one] one mould more
   *[other] { $count } moulds more
}
class-mend-drills = { $count ->
    [one] one drill more
   *[other] { $count } drills more
}
class-mend-tables = { $count ->
    [one] room at the tables for one more
   *[other] room at the tables for { $count } more
}
class-mend-hands = { $count ->
    [one] help for the teacher by one student more at once
   *[other] help for the teacher by { $count } students more at once
}
class-mend-fewer = { $count ->
    [one] one student fewer
   *[other] { $count } students fewer
}
class-mend-home = lashing, plug and finish at home in the evening, from 7 to 9
class-mend-ready = prepared for all beforehand: { $things }
class-mend-fits = { $days ->
    [one] { $changes }. Then it fits, in one day.
   *[other] { $changes }. Then it fits, in { $days } days.
}
class-mend-fails = { $changes }: it does not fit even so.

class-student = Student { $number }
class-hand-learner = learner
class-hand-practised = practised
class-mould-held = mould { $letter }, from { $from } to { $to }
class-does = { $from }–{ $to } { $step }
class-does-rows = { $from }–{ $to } { $step }, rows { $first } to { $last }
class-does-on = { $from }–{ $to } { $step } (goes on)
class-at-home = at home, { $day }: { $does }
class-then-wait = then it waits until { $day }, { $time }
class-due = { $day }, { $time }: late if not at row { $row }
class-waits-mould = { $student } waits for a mould before “{ $step }”: { $minutes } of class
class-waits-drill = { $student } waits for a drill before “{ $step }”: { $minutes } of class
class-waits-table = { $student } waits for room at a table before “{ $step }”: { $minutes } of class
class-waits-teacher = { $student } waits for the teacher before “{ $step }”: { $minutes } of class
class-nobody-waits = Nobody waits for a mould, a drill, a table or the teacher while class is on.
class-session = { $day }, { $from } to { $to }
class-session-of = { $title }, session { $number } of { $count }
class-chance = Of a thousand classes whose times vary about as they do (assumed: each student by 0.8 to 1.4, each step by 0.8 to 1.5 times), { $share } end in time. By the usual formula for the longest path it is { $formula }.
class-decides = If “{ $step }” takes a quarter longer, the class ends { $minutes } later.
class-decides-all = If “{ $step }” takes a quarter longer, it no longer fits.
class-decides-nothing = No single step that takes a quarter longer makes the class end later.
class-timetable-work = work, by its letter
class-timetable-mould = on a mould
class-timetable-description = { $students ->
    [one] One student
   *[other] { $students } students
} over { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}: bars for work, light bands while a mould is held.
class-timetable = Who does what when

# The samples of a class.

class-samples-none = The teacher’s hours of a whole year before the class do not hold the work on these samples. Give longer hours, or fewer stages.
class-samples-moulds = { $count ->
    [one] The samples take a mould of their own, { $letters }, beside the students’.
   *[other] The samples take moulds of their own, { $letters }, beside the students’.
}
class-sample = Sample { $number }: { $stage }
class-sample-ready = Ready for the session on { $day }, { $time }; begun at the latest on { $beginday }, { $begintime }. Stopped after step { $step }. { $title }.
class-sample-mould = On mould { $letter }, from { $from } to { $to }.
class-sample-work = { $step }. { $title }
class-samples-together = All samples together

# What is wrong in the file of a class.

class-fault-large = the file is larger than 1 MB
    .help = a class is a few kilobytes: is this the right file?
class-fault-toml = { $said }
    .help = `stavewright class --help` shows a whole file with every key
class-fault-zone = there is no time zone `{ $zone }`
    .help = write a place of the time zone database, such as "America/New_York"
class-fault-zone-near = there is no time zone `{ $zone }`
    .help = did you mean `{ $nearest }`?
class-fault-number = `{ $key }` cannot be { $value }
    .help = write a number from { $from } to { $to }
class-fault-step = "{ $word }" is no step
    .help = write one of { $all }
class-fault-step-near = "{ $word }" is no step
    .help = did you mean "{ $nearest }"?
class-fault-ready = "{ $word }" is no thing that can lie ready
    .help = write one of { $all }
class-fault-ready-near = "{ $word }" is no thing that can lie ready
    .help = did you mean "{ $nearest }"?
class-fault-stage = "{ $word }" is no stage
    .help = write one of { $all }
class-fault-stage-near = "{ $word }" is no stage
    .help = did you mean "{ $nearest }"?
class-fault-hours = `{ $hours }` are no hours of a day
    .help = write them as "09:00-12:30", the earlier first
class-fault-date = `{ $date }` is no date of a class
    .help = write year, month and day, as in "2027-03-13"
class-fault-hand = "{ $hand }" is no hand
    .help = write "learner" or "practised"
class-fault-nobody = nobody comes to this class
    .help = add [[students]] with count = 12 and hand = "learner"
class-fault-students = { $count } students are too many
    .help = a class has { $most } at the most
class-fault-moment = `{ $moment }` is no date and time
    .help = write "2027-03-13 13:00"
class-fault-late = these students come when the class is over
    .help = let them come before the last session ends
class-fault-day-hours = this day has no hours
    .help = add hours = ["09:00-12:00"]
class-fault-no-days = the class has no days
    .help = add [[days]] with date = "2027-03-13" and hours = ["09:00-12:00"]
class-fault-days = { $count } days are too many
    .help = a class has { $most } at the most
class-fault-clock = on { $date } the clocks change, and { $time } is not one time
    .help = begin and end the session at another time
class-fault-overlap = two sessions on { $date } overlap
    .help = let one end before the other begins

# The maker's own hand, learned from records.

hand-figure = { $records ->
    [one] { $figure }: { $value } (usually { $usual }); from one record, so with 95 % certainty between { $from } and { $to }
   *[other] { $figure }: { $value } (usually { $usual }); from { $records } records, so with 95 % certainty between { $from } and { $to }
}
hand-of = { $whose }, learned from records
hand-own = the workshop’s own
hand-take-up = Take-up, times the usual
hand-row-height = Height of a row, times the usual
hand-shrink = Loss of height in drying, times the usual
hand-pace-preparing = Time for staves and base, times the usual
hand-pace-weaving = Time for weaving, times the usual
hand-pace-rim = Time for hoops and pins, times the usual
hand-pace-lashing = Time for lashing, times the usual
hand-pace-fittings = Time for ears and handle, times the usual
hand-pace-finishing = Time for plug and finish, times the usual
hand-spoilt = Staves spoilt
hand-drafted = The basket with these figures
hand-work = Work: { $after }, before { $before }
hand-rows = Rows: { $after }, before { $before }
hand-weaver = Weaver on the basket: { $after }, before { $before }

# The log of makings on the page, and the history of patterns.

record-says-work = Work: { $value }
record-says-rows = { $value ->
    [one] one row
   *[other] { $value } rows
}
record-says-weaver = Weaver: { $value }
record-says-wet = Height wet: { $value }
record-says-dry = Height dry: { $value }
record-says-girth-wet = Girth wet: { $value }
record-says-girth-dry = Girth dry: { $value }
record-says-wood = Wood: { $value }
record-says-learner = by a learner
record-says-staves = { $value } staves, of which { $spoilt } spoilt

history-not-kept = Saved. What the pattern was before is not kept, as the store of the workshop cannot be used: { $said }
history-unread = cannot be compared, as one of the two cannot be read
history-nothing = nothing
history-alike = only remarks or layout
history-differs = { $what } { $before } → { $after }
history-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
history-staves-fewer = { $count ->
    [one] one stave fewer
   *[other] { $count } staves fewer
}
history-staves-more = { $count ->
    [one] one stave more
   *[other] { $count } staves more
}
history-rows-fewer = { $count ->
    [one] one row fewer
   *[other] { $count } rows fewer
}
history-rows-more = { $count ->
    [one] one row more
   *[other] { $count } rows more
}
