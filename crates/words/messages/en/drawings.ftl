### Titles, descriptions and labels of drawings.

drawing-bars = Check bars
drawing-bars-description = A bar 100 mm long and a bar 4 in long. Measure both after printing.

drawing-strip-base = Spacing strip for the base, { $girth } round
drawing-strip-base-short = base
drawing-strip-rim = Spacing strip for the rim, { $girth } round
drawing-strip-rim-short = rim
drawing-strip-description = A paper strip at true size, { $girth } long and a tab beyond, with a mark for each of { $count } staves at its true width, quarter marks, and the places of ears, pins and scarfs.
drawing-drilling = Drilling strip for the outer hoop, { $girth } round; drill { $drill }
drawing-drilling-short = drill
drawing-drilling-description = A paper strip at true size, as high as the outer hoop and { $girth } long, with the middle of each of { $count } pins. Drill { $drill }.
drawing-drills-ends = { $drill }; { $ears } at the handle
drawing-drills = { $drill }; { $ears } at the ears
drawing-tab = tape under

drawing-ear-number = ear { $number }
drawing-outer-scarf = scarf, outer hoop
drawing-inner-scarf = scarf, inner hoop

drawing-base-plan = Base from below, as it stands on the mould
drawing-base-plan-description = The wooden base, { $diameter } across, seen from below, with the slots of { $count } staves numbered round its edge to the right on the near side. Outside it, by direction, stand the pins, the ears and the scarfs of both hoops.
drawing-base-plan-description-left = The wooden base, { $diameter } across, seen from below, with the slots of { $count } staves numbered round its edge to the left on the near side. Outside it, by direction, stand the pins, the ears and the scarfs of both hoops.
drawing-lid-base-disc = Plaque of the lid
drawing-base-disc = Base disc
drawing-base-disc-description = The base disc at true size: { $diameter } across, { $thickness } thick, with its middle, the bottom of the groove and the screw hole.
drawing-turning = Card for the lathe
drawing-turning-description = Half the mould from the side at true size, foot below, { $height } high, with its length or diameter at even heights.
drawing-turning-width = Card for the side along the width
drawing-turning-width-description = Half the mould across its width at true size, foot below, { $height } high, with its length and width at even heights.
drawing-boards = Outlines of the boards
drawing-boards-description = The outlines of { $count } boards at true size, one within the other, numbered from the foot.
drawing-mould-plan = Parts of the mould
drawing-mould-plan-description = The { $count } parts of the mould from above at true size, each where it is largest, with its number and its pegs; the foot is dashed.
drawing-screw-hole = screw hole { $length }
drawing-base-strips = strips: { $woods }
drawing-groove-deep = groove { $length } deep
drawing-plan-pins = pin
drawing-plan-key = pins, ears and scarfs stand at the rim, in these directions

drawing-stave = Stave
drawing-stave-group = Stave, group { $group }: { $staves }
drawing-stave-description = A stave at true size: { $length } long, { $width } wide, tapering to { $foot } at the foot, with the places where the groove ends, full width begins, the rim lies and the tip is trimmed.
drawing-place-foot = foot
drawing-place-groove = edge of the base, { $from }
drawing-place-mould = foot of the mould, { $from }
drawing-place-full = full width from here up, { $from }
drawing-place-last-row = top of the last row, { $from }
drawing-place-rim = rim, lower edge, { $from }
drawing-place-trim = trim here, { $from }
drawing-place-tip = tip, { $from }
drawing-section = Side of the basket, { $scale }
drawing-section-description = The basket from the side, the left half from outside, the right half cut through the middle. The base is { $base } across, the rim { $rim }; from the underside of the base to the top of the rim are { $height }, to the top { $overall }. Two details show the groove and the rim enlarged.
drawing-plan = The finished basket from above, { $scale }
drawing-plan-description = The finished basket from above, with its ears, if it has any, at the right and left. The rim is { $rim } across, the base, dashed, { $base }. The staves at the quarters are numbered, { $count } in all, rising clockwise.
drawing-plan-description-left = The finished basket from above, with its ears, if it has any, at the right and left. The rim is { $rim } across, the base, dashed, { $base }. The staves at the quarters are numbered, { $count } in all, rising counter-clockwise.
drawing-plan-description-sides = The finished basket from above, with its ears above and below, in the middle of the long sides. The rim is { $rim } across, the base, dashed, { $base }. The staves at the quarters are numbered, { $count } in all, rising clockwise.
drawing-plan-description-sides-left = The finished basket from above, with its ears above and below, in the middle of the long sides. The rim is { $rim } across, the base, dashed, { $base }. The staves at the quarters are numbered, { $count } in all, rising counter-clockwise.
drawing-section-scale = scale { $scale }
drawing-handle-down = dashed: handle let down
drawing-detail-groove = Groove
drawing-detail-rim = Rim
drawing-part-stave = stave { $length }
drawing-part-stave-name = stave
drawing-part-groove = groove { $length }
drawing-part-base = base { $length }
drawing-part-outer-hoop = outer hoop
drawing-part-inner-hoop = inner hoop
drawing-part-pin = pin { $length }
drawing-part-filler = filler
drawing-part-lashing = lashing

drawing-scarf = Scarfs of the hoops
drawing-scarf-description = The ends of the outer and of the inner hoop at true size from the edge, apart and joined. Each end thins evenly over a lap of { $lap }, so that the pair keeps one thickness.
drawing-ear = Ear, { $material }
drawing-ear-description = An ear at true size, from the front and on edge: { $length } long, { $width } wide, { $thickness } thick, with the middle of its rivet hole and, dashed, the edges of the rim.
drawing-ear-shoulder = shoulder, { $length } deep on both faces
drawing-ear-rim = rim
drawing-ear-hole = drill { $length }

drawing-taper-chart = Width of the staves and gap between them
drawing-taper-chart-description = Two curves against the height above the base of the mould. Above, the width of a stave as shaped, and dashed the width that would keep the wanted gap. Below, the gap between staves, and dashed the gap wanted.
drawing-chart-width = width of a stave
drawing-chart-gap = gap to the next
drawing-chart-height = height above the base of the mould
drawing-chart-made = as shaped
drawing-chart-ideal = ideal

drawing-chart = Chart of the weaving from { $side }, { $scale }
drawing-chart-description = The weaving of { $title } unrolled and seen from { $side }, { $scale }: { $rows } rows on { $count } staves, row 1 at the bottom, with the places of joins, courses and ears and a key of colours.
drawing-chart-outside = outside
drawing-chart-inside = inside
drawing-chart-true = each row at its true girth, scale 1 : { $scale }
drawing-chart-grid = as a grid
drawing-chart-course = course { $number }
drawing-chart-about-course = course { $number }: { $weave }, { $weavers }, { $rows ->
        [one] row { $from }
       *[other] rows { $from } to { $to }
    }
drawing-chart-course-seen = { $course }; seen: { $look }
drawing-chart-begin = row begins here and ends over it
drawing-chart-join-outside = old strand ends, over this stave
drawing-chart-join-inside = new strand starts, behind this stave
drawing-chart-to-left = The basket stands on its base; seen from outside, staves are numbered to the left. Left of each sample: weaver; right of it: stave.
drawing-chart-inside-to-left = The basket stands on its base; seen from inside, staves are numbered to the left. Left of each sample: weaver; right of it: stave.
drawing-chart-to-right = The basket stands on its base; seen from inside, staves are numbered to the right. Left of each sample: weaver; right of it: stave.
drawing-chart-outside-to-right = The basket stands on its base; seen from outside, staves are numbered to the right. Left of each sample: weaver; right of it: stave.

drawing-moves = The moves of course { $number }: { $weave }
drawing-moves-description = A few staves from outside, with the mould standing base up, and { $weavers ->
        [one] the weaver
       *[other] the { $weavers } weavers
    } of course { $number } ({ $weave }): where a band covers a stave the weaver goes over it, where the stave covers the band it goes under. The rows, or where weavers are twisted the moves, are numbered in their order.
drawing-moves-laid = Numbers at the side: rows in their order. The mould stands base up; the next row lies below.
drawing-moves-twisted = Letters: weavers. Numbers: the moves in their order; at each, the weaver named below comes from behind all others, goes in front of the staves on its way and behind this one.

drawing-timeline = The days before the show
drawing-timeline-description = A row for each of { $samples } samples over { $days ->
        [one] the day
       *[other] the { $days } days
    } before the show, time running to the right. Dark marks are work; a light band is the time on a mould. At most { $moulds ->
        [one] one mould is
       *[other] { $moulds } moulds are
    } taken at once. The same stands in the table and the list of days.
drawing-timeline-days = days before
drawing-timeline-show = show
drawing-timeline-work = work
drawing-timeline-mould = on a mould

# In the place of a drawing that is left out.
drawing-left-out-nothing = Not drawn: there is nothing of it to show. The findings say what stops this basket.
drawing-left-out-absent = Not drawn: this basket has no such part.
drawing-left-out-elements = Not drawn: it would have more than { $most } points and curves.
drawing-left-out-crossings = Not drawn: { $crossings } crossings of rows and staves are too many to be told apart; at most { $most } are drawn.
drawing-left-out-tiles = Not drawn: at true size it would take { $pages } pages, and at most { $most } are printed. Lay it out with rule and compasses from the figures of the handout.
drawing-plan-left-out = The basket from above
solid-coarser = (Cut into fewer triangles than asked for: there would be too many.)
solid-bands = (Rows are shown as plain bands: there are too many crossings to draw.)
