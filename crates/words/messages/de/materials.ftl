# Die Materialien des Katalogs (ohne ihre Größe), Hölzer, Farben, und wie Material verkauft wird. Der
# Schlüssel ist der Name im Katalog. Stuhlflechtrohr wird im Deutschen nach seiner Breite benannt.

material-round-reed = Rundrohr
material-flat-reed = Flachrohr
material-flat-oval-reed = Flachovalrohr
material-half-round-reed = Halbrundrohr
material-cane-carriage = Stuhlflechtrohr 1,5{ "\u00A0" }mm
material-cane-superfine = Stuhlflechtrohr 2{ "\u00A0" }mm
material-cane-fine-fine = Stuhlflechtrohr 2,25{ "\u00A0" }mm
material-cane-fine = Stuhlflechtrohr 2,5{ "\u00A0" }mm
material-cane-narrow-medium = Stuhlflechtrohr 2,75{ "\u00A0" }mm
material-cane-medium = Stuhlflechtrohr 3{ "\u00A0" }mm
material-cane-common = Stuhlflechtrohr 3,5{ "\u00A0" }mm
material-binder-cane = Binderohr
material-ash-splint-upright = Eschenspan für Staken
material-ash-splint-weaver = Eschenspan zum Flechten
material-hickory-splint = Hickoryspan
material-hickory-bark = Hickoryrinde
material-brass-pin = Messingstift
material-copper-rivet = Kupferniet
material-copper-burr = Kupfernietscheibe

material-cherry = Kirschbaum
material-white-oak = Weißeiche
material-red-oak = Roteiche
material-sugar-maple = Zuckerahorn
material-walnut = Nussbaum
material-white-ash = Weißesche
material-black-ash = Schwarzesche
material-beech = Buche
material-basswood = Amerikanische Linde
material-yellow-poplar = Tulpenbaum
material-mockernut-hickory = Spottnuss-Hickory
material-shagbark-hickory = Schuppenrinden-Hickory

colour-natural = Natur
colour-white = Weiß
colour-grey = Grau
colour-black = Schwarz
colour-brown = Braun
colour-red = Rot
colour-orange = Orange
colour-yellow = Gelb
colour-green = Grün
colour-blue = Blau
colour-purple = Violett

put-up-coil = Ring
put-up-coil-of-1-lb = Ring von 1 lb (0,45 kg)
put-up-hank = Bund
put-up-half-hank = halber Bund
put-up-box = Schachtel
put-up-piece = Stück
put-up-foot = Fuß
put-up-metre = Meter
