# The catalogue's materials (without their size), woods, colours, and how materials are sold. The
# identifier is the catalogue's name; in English the text is that name again.

material-round-reed = round reed
material-flat-reed = flat reed
material-flat-oval-reed = flat oval reed
material-half-round-reed = half round reed
material-cane-carriage = cane carriage
material-cane-superfine = cane superfine
material-cane-fine-fine = cane fine-fine
material-cane-fine = cane fine
material-cane-narrow-medium = cane narrow medium
material-cane-medium = cane medium
material-cane-common = cane common
material-binder-cane = binder cane
material-ash-splint-upright = ash splint upright
material-ash-splint-weaver = ash splint weaver
material-hickory-splint = hickory splint
material-hickory-bark = hickory bark
material-brass-pin = brass pin
material-copper-rivet = copper rivet
material-copper-burr = copper burr

material-cherry = cherry
material-white-oak = white oak
material-red-oak = red oak
material-sugar-maple = sugar maple
material-walnut = walnut
material-white-ash = white ash
material-black-ash = black ash
material-beech = beech
material-basswood = basswood
material-yellow-poplar = yellow poplar
material-mockernut-hickory = mockernut hickory
material-shagbark-hickory = shagbark hickory

colour-natural = natural
colour-white = white
colour-grey = grey
colour-black = black
colour-brown = brown
colour-red = red
colour-orange = orange
colour-yellow = yellow
colour-green = green
colour-blue = blue
colour-purple = purple

put-up-coil = coil
put-up-coil-of-1-lb = coil of 1 lb
put-up-hank = hank
put-up-half-hank = half hank
put-up-box = box
put-up-piece = piece
put-up-foot = foot
put-up-metre = metre
