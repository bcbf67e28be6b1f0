# The lid: what to do when its own vessel is made.

step-lid = Ledge, lift and fit
step-lid-text-ledge = Bend { $rings ->
        [one] a ring
       *[other] { $rings } rings
    } of { $stock } to fit inside the basket below its inner hoop, with scarfs of { $lap }, glued: { $inside } across inside when done.
step-lid-text-ledge-flat = The rings lie within each other, flat side to flat side; glue them to one ring.
step-lid-text-ledge-fix = Push the ledge up against the inner hoop, level all round. Glue it, and sew it to every tenth stave with fine cane. The lid lies { $overlap } on it even when it is pushed to one side.
step-lid-text-knob = Glue the tenon of the knob into the hole of { $hole } in the plaque, from the outside.
step-lid-text-loop = Pull the cane twice through the hole of { $hole } in the plaque, a finger’s width high outside, tuck the ends inside, and close the hole with glue and a peg.
step-lid-text-plug = Close the hole of { $hole } in the plaque with its plug.
step-lid-text-try = Turn the lid plaque up and try it in, all ways round. There should be { $clearance } of room all round; its top stands { $rises } above the rim.
step-lid-text-alike = Mark one end of lid and basket alike, inside, so that the lid always goes in as it was fitted. The wraps of both rims climb the same way.
