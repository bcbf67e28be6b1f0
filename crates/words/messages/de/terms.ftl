# Namen der eigenen Wörter der Berechnung, Einheiten und kurze Verbindungen.

unit-minutes = { $minutes }{ "\u00A0" }min
unit-hours = { $hours }{ "\u00A0" }h
unit-hours-minutes = { $hours }{ "\u00A0" }h{ "\u00A0" }{ $minutes }{ "\u00A0" }min
unit-span = { $from } bis { $to }
length-by-width = { $length } × { $width }
unit-percent = { $number }{ "\u00A0" }%
unit-percent-span = { $from }–{ $to }{ "\u00A0" }%

grade-stop = Halt
grade-care = Achtung
grade-note = Hinweis

of-lid = Deckel: { $text }
place-at-height = { $piece }, { $height } über dem Fuß der Form
remedy-or = { " oder " }
remedy-changes = { $what } In der Vorlage: { $changes }
remedy-brings = { $change } (dann aber: { $cares })

piece-whole = der ganze Korb
piece-mould = Form
piece-mould-part = Teil { $number } der Form
piece-band = Band
piece-base = Boden
    .cut = Boden
piece-plaque = Deckelboden
    .cut = Boden
piece-groove = Nut
piece-screw = Schraube
piece-plug = Zapfen
    .cut = Zapfen
piece-staves = Staken
    .cut = Stake
piece-stave = Stake { $number }
piece-weaving = Geflecht
piece-course = Abschnitt { $number }
    .cut = Flechtfaden
piece-row = Reihe { $number }
piece-rim = Rand
piece-outer-hoop = Außenreifen
    .cut = Außenreifen
piece-inner-hoop = Innenreifen
    .cut = Innenreifen
piece-clamps = Klammern
piece-clamp = Klammer { $number }
piece-pins = Stifte
    .cut = Stift
piece-pin = Stift in Stake { $number }
piece-fillers = Randfüllung
    .cut = Randfüllung
piece-filler = Randfüllung, Stück { $number }
piece-lashing = Umwicklung
    .cut = Umwicklung
piece-wrap = Wicklung { $number }
piece-tail = Ende { $number } der Wicklung
piece-ears = Ohren
    .cut = Ohr
piece-ear = Ohr { $number }
piece-ledge = Auflage des Deckels
    .cut = Auflage
piece-collar = Kragen des Deckels
    .cut = Kragen
piece-lift = Griff des Deckels
    .cut = Griff
piece-hinge = Scharnier des Deckels
    .cut = Scharnier
piece-latch = Verschluss des Deckels
    .cut = Verschluss
piece-peg = Pflock des Verschlusses
    .cut = Pflock
piece-handle = Henkel
    .cut = Henkel
piece-knobs = Knöpfe
    .cut = Knopf
piece-knob = Knopf { $number }
piece-rivets = Niete
    .cut = Niet
piece-rivet = Niet { $number }
piece-washers = Scheiben
    .cut = Unterlegscheibe
piece-washer = Scheibe { $number }

stage-prepared = Material zugeschnitten und geformt
stage-base-on-mould = Boden auf der Form
stage-staves-set = Staken unter einem Band gesetzt
stage-first-rows = Erste Reihen geflochten
stage-half-woven = Wand halb geflochten
stage-woven = Fertig geflochten
stage-rings-made = Reifen als Ringe gemacht
stage-off-mould = Von der Form genommen
stage-ears-set = Ohren gesetzt
stage-rim-clamped = Reifen geklammert
stage-pinned = Spitzen abgeschnitten, Stifte gesetzt
stage-lashed = Randfüllung und Umwicklung fertig
stage-handled = Henkel montiert
stage-finished = Fertig

weave-plain = Zäunen
weave-twill = { $over }/{ $under }-Köper
weave-reversed-twill = { $over }/{ $under }-Umkehrköper
weave-chase = Zäunen mit folgenden Fäden
weave-chase-twill = { $over }/{ $under }-Köper mit folgenden Fäden
weave-slew = Zäunen im Bündel
weave-slew-twill = { $over }/{ $under }-Köper im Bündel
weave-pairing = Fitzen
weave-wale-3 = Dreierkimme
weave-wale-4 = Viererkimme
weave-wale-5 = Fünferkimme
weave-skip-one = Zäunen, eine Stake je Runde ausgelassen
weave-drawn = von Hand gezeichnetes Geflecht

lean-left = links
lean-right = rechts

weave-mend-second-weaver = ein zweiter Faden, der dem ersten folgt
weave-mend-one-weaver = ein Faden statt derer, die einander folgen
weave-mend-run-on = ein Faden, der von Reihe zu Reihe weiterläuft
weave-mend-step-up = ein Aufstieg am Ende jeder Runde
weave-mend-start-stop = jede Reihe für sich begonnen und beendet
weave-mend-skip-one = eine Stake je Runde ausgelassen
weave-mend-split-stave = eine Stake gespalten
weave-mend-half-stave = eine halbe Stake eingesetzt
weave-mend-look-second-weaver = Die Reihen der beiden Fäden wechseln sich ab. In zwei Farben sieht man das; in einer wirkt es wie ein Faden. Oben sind zwei Enden zu sehen.
weave-mend-look-second-weaver-blocks = Die Reihen der beiden Fäden liegen einander entgegengesetzt: kleine Würfel, keine Schräge. Oben sind zwei Enden zu sehen.
weave-mend-look-one-weaver = Es sieht nach einem Faden aus, denn es ist einer: keine Reihen, die in zwei Farben wechseln, und oben nur ein Ende.
weave-mend-look-run-on = Die Reihen steigen in einer einzigen Spirale, je Runde um eine Reihe, sodass das Ende eines Abschnitts nicht waagrecht liegt. Keine Überlappung ist zu sehen.
weave-mend-look-step-up = Eine schräge Linie steigt die Wand hinauf, wo jede Runde aufsteigt.
weave-mend-look-start-stop = Die Reihen liegen waagrecht, ohne Spirale. Jede überlappt ihren Anfang über vier Staken; die Anfänge sind ringsum verteilt, damit diese dickeren Stellen nicht übereinanderliegen.
weave-mend-look-skip-one = Der Faden geht einmal je Runde vor zwei Staken, und diese längeren Sprünge steigen in einer Spirale.
weave-mend-look-split-stave = Vom Spalt aufwärts stehen zwei schmale Staken dicht beisammen. Bei einer schmalen Stake fällt es kaum auf.
weave-mend-look-half-stave = Eine schmale Stake mehr steht zwischen den anderen, und diese rücken etwas zusammen.

ear-material-brass = Messingblech
ear-material-wood = Holz
ear-material-oak = Eiche
ear-material-bone = Bein

ear-way-woven-in = eingeflochten
ear-way-pushed-down = nachträglich eingeschoben
ear-way-as-stave = als Stake

hoop-way-rings = als Ringe gemacht
hoop-way-bent = an Ort und Stelle gebogen
hoop-way-bought = fertig gekauft

ear-placing-on-staves = jedes Ohr auf einer Stake
ear-placing-stave-and-gap = ein Ohr auf einer Stake, das andere in der Lücke gegenüber
ear-placing-shared = beide Ohren einen Viertelabstand neben ihren Staken
ear-placing-by-angle = genau gegenüber, wo immer die Staken sind
ear-axis-long = an den beiden Enden
ear-axis-short = in der Mitte der langen Seiten

bail-curve-semicircle = Halbkreis
bail-curve-three-centred = Korbbogen
bail-curve-half-ellipse = halbe Ellipse

handle-kind-swing = beweglich
handle-kind-fixed = fest im Rand
handle-kind-knob = zwei Knöpfe
lid-way-mould = eine eigene Form
lid-way-flat = ein Brett, flach geflochten
lid-fit-drop-in = im Rand, auf einer Auflage
lid-fit-cap = über dem Rand, als Stülpdeckel
lid-fit-flush = bündig auf dem Rand
lid-hinge-side = an einer Seite
lid-hinge-end = an einem Ende
lid-hinge-none = ohne Scharnier
lid-lift-knob = ein Knauf
lid-lift-loop = eine Schlaufe
lid-lift-none = nichts
handle-kind-none = kein Henkel

handle-made-bought = gebogen gekauft
handle-made-bent = selbst gebogen

handle-joint-outside = außen am Ohr
handle-joint-slot = ein Schlitz nimmt das Ohr auf
handle-joint-between = Ohr zwischen zwei Hälften

mould-pieces-one = ein Stück
mould-pieces-several = Teile um einen Kern

rings-none = keine
rings-out = an der Unterseite, nach außen
rings-in = an der Oberseite, nach innen

finish-none = unbehandelt
finish-shellac = Schellack
finish-stain-and-shellac = Beize, dann Schellack
finish-oil = trocknendes Öl
finish-varnish = Lack
cane-face-dull = matt
cane-face-shiny = glänzend
in-rim-ear = einem Ohr
in-rim-end = einem Ende des Henkels
finish-part-all = der ganze Korb
finish-part-handle = der Henkel
finish-part-base = der Boden
finish-part-rim = der Rand
level-beginner = Anfang
level-intermediate = Mittelstufe
level-advanced = Fortgeschrittene
handed-right = rechte
handed-left = linke
direction-right = rechts
direction-left = links
ready-staves-cut = Staken, zugeschnitten
ready-staves-tapered = Staken, zugeschnitten und verjüngt
ready-rings = Reifen, als geleimte Ringe
ready-handle = Henkel, gebogen
ready-ears = Ohren, fertig geformt
ready-base = Boden, mit Nut, geschliffen

every-stave = jede Stake
every-other-stave = jede zweite Stake

lashing-style-single = einmal herum
lashing-style-crossed = gekreuzt

staves-spacing-foot = am Fuß
staves-spacing-rim = am Fuß und am Rand

oval-side-out = gerundete Seite außen
oval-side-in = gerundete Seite innen

kind-round-reed = Rundrohr
kind-flat-reed = Flachrohr
kind-flat-oval-reed = Flachovalrohr
kind-half-round-reed = Halbrundrohr
kind-chair-cane = Stuhlflechtrohr
kind-binder-cane = Binderohr
kind-splint = Span
kind-pin = Stift
kind-rivet = Niet
kind-burr = Nietscheibe

units-inches = Zoll
units-millimetres = Millimeter

outline-round = rund
outline-oval = oval
outline-stadium = gerade Seiten und runde Enden
outline-rectangle = abgerundetes Rechteck
outline-traced = wie abgenommen

side-straight = senkrecht
side-cone = gerade Schräge
levels-even = gleichmäßig
levels-scaled = vergrößert
side-board = ein Brett mit gerundeter Kante, davor eben
side-bowl = Schale, am Rand senkrecht

way-continuous = läuft von Reihe zu Reihe weiter
way-row-by-row = jede Reihe für sich

language-english = Englisch
language-german = Deutsch
