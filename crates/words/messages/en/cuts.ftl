# The cut list: shape and purpose of each piece; names stand with the pieces in terms.ftl.

cut-base-shape = disc, { $thickness } thick; groove in the edge { $depth } deep and { $width } wide; hole { $hole } in the middle{ $strips }{ $rings }
cut-base-strips = ; glued up from { $count } strips { $width } wide, side by side
cut-base-rings-out = ; rings { $across } across turned in the underside
cut-base-rings-in = ; rings { $across } across turned in the upper side
cut-base-purpose = holds the feet of the staves

cut-plug-purpose = closes the { $hole } screw hole when the basket is off the mould

cut-stave-shape = full width down to { $above_foot } above the foot, then straight to { $foot } at the foot
cut-stave-shape-narrower = stripped to { $width }; full width down to { $above_foot } above the foot, then straight to { $foot } at the foot
cut-stave-shape-full = full width down to the foot
cut-stave-shape-narrower-full = stripped to { $width }, down to the foot
cut-stave-purpose = the uprights of the wall
cut-stave-purpose-group = uprights of the wall, group { $group }: staves { $staves }

cut-weaver-purpose = course { $course }: { $rows ->
        [one] one row
       *[other] { $rows } rows
    }

cut-outer-hoop-purpose = the rim outside the staves
cut-inner-hoop-purpose = the rim inside the staves
cut-hoop-shape = flat side to the staves; both ends thinned over { $lap } to lap as one thickness
cut-hoop-shape-ring-outer = flat side inward; one end shaved from the face and one from the back over { $lap }, glued to a ring { $across } across inside
cut-hoop-shape-ring-inner = flat side outward; one end shaved from the face and one from the back over { $lap }, glued to a ring { $across } across outside
cut-hoop-shape-bought-outer = { $across } across inside, flat side inward
cut-hoop-shape-bought-inner = { $across } across outside, flat side outward
cut-ring-bought = ready ring of { $stock }

cut-filler-purpose = covers the stave tips between the hoops

cut-lashing-purpose = binds the rim: { $wraps ->
        [one] one wrap
       *[other] { $wraps } wraps
    }, tails and a spare counted in

cut-pin-shape = drill { $drill }; at least { $needed } long
cut-pin-purpose = through hoops and staves
cut-pin-end-purpose = through hoops, staves and the ends of the handle
cut-pin-ear-purpose = through hoops, staves and ears

cut-ear-shape = { $thickness } thick; the lower { $tail } is the tail, { $tail_width } wide
cut-ear-shape-shaved = { $thickness } thick, with a shoulder { $shoulder } deep on both faces; below it shaved to { $blade }; the lower { $tail } is the tail, { $tail_width } wide, { $tip } thick at its end
cut-ear-shape-stave = { $thickness } thick, with a shoulder { $shoulder } deep on both faces; below it shaved to a stave { $blade } thick: the lower { $tail } goes down to the bottom of the groove
cut-ear-purpose = holds the handle

cut-bail-shape = { $thickness } thick; ends rounded, drilled { $drill }, { $end } from the end
cut-bail-shape-slot = { $thickness } thick; a slot { $slot } wide in each end; ends rounded, drilled { $drill }, { $end } from the end
cut-bail-shape-between = two halves { $half } thick each; ends rounded, drilled { $drill }, { $end } from the end
cut-fixed-shape = { $thickness } thick; the last { $leg } at each end straight, thinned to go into the rim
cut-bow-bought = { $curve }, { $span } from middle to middle at its feet, { $rise } high; { $shape }
cut-bow-material = a handle bought bent
cut-fixed-purpose = the fixed handle
cut-knob-shape = stands out { $length }; a hole { $drill } through the middle, widened outside for the burr
cut-ledge-purpose = ring { $number } of { $rings } on which the lid lies, inside the wall below the inner hoop
cut-ledge-shape = both ends thinned over { $lap } to lap as one thickness, glued to a ring
cut-collar-purpose = the collar in the lid’s rim that reaches into the basket’s
cut-hinge-purpose = a loop of the hinge, round both rims
cut-latch-purpose = the loop at the front that goes over the peg
cut-peg-purpose = in the basket’s rim, for the loop of the latch
cut-lift-purpose = on the plaque, to lift the lid by
cut-lift-shape = turned, with a tenon { $hole } thick and { $thickness } long
cut-loop-purpose = a loop through the plaque’s hole of { $hole }, to lift the lid by
cut-knob-material = close-grained wood or bone, turned
cut-knob-purpose = one on each ear, to lift it by
cut-bail-material = straight-grained oak, ash or hickory
cut-bail-purpose = the swinging handle

cut-rivet-shape = goes through { $grip }; at least { $needed } long
cut-rivet-purpose = the pivots of the handle
cut-rivet-purpose-knob = hold the knobs on the ears

cut-washer-for = burr for { $rivet }
cut-washer-purpose = under the formed heads and between handle and ear
cut-washer-purpose-head = under the formed heads
cut-washer-purpose-knob = under the formed heads and between knob and ear
