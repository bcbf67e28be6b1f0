# Die Zuschnittliste: Form und Zweck jedes Stücks; die Namen stehen bei den Stücken in terms.ftl.

cut-base-shape = Scheibe, { $thickness } dick; Nut im Rand { $depth } tief und { $width } breit; Loch { $hole } in der Mitte{ $strips }{ $rings }
cut-base-strips = ; aus { $count } Streifen von { $width } Breite nebeneinander verleimt
cut-base-rings-out = ; Ringe von { $across } Durchmesser in die Unterseite gedreht
cut-base-rings-in = ; Ringe von { $across } Durchmesser in die Oberseite gedreht
cut-base-purpose = hält die Füße der Staken

cut-plug-purpose = verschließt das Schraubenloch von { $hole }, wenn der Korb von der Form ist

cut-stave-shape = volle Breite bis { $above_foot } über dem Fuß, dann gerade auf { $foot } am Fuß
cut-stave-shape-narrower = auf { $width } gerissen; volle Breite bis { $above_foot } über dem Fuß, dann gerade auf { $foot } am Fuß
cut-stave-shape-full = volle Breite bis zum Fuß
cut-stave-shape-narrower-full = auf { $width } gerissen, bis zum Fuß
cut-stave-purpose = die Ständer der Wand
cut-stave-purpose-group = Ständer der Wand, Gruppe { $group }: Staken { $staves }

cut-weaver-purpose = Abschnitt { $course }: { $rows ->
        [one] eine Reihe
       *[other] { $rows } Reihen
    }

cut-outer-hoop-purpose = der Rand außen an den Staken
cut-inner-hoop-purpose = der Rand innen an den Staken
cut-hoop-shape = flache Seite zu den Staken; beide Enden über { $lap } verjüngt, damit sie zusammen eine Dicke ergeben
cut-hoop-shape-ring-outer = flache Seite nach innen; ein Ende von der Schauseite, eines von der Rückseite über { $lap } abgeschnitzt, zu einem Ring geleimt, innen { $across } weit
cut-hoop-shape-ring-inner = flache Seite nach außen; ein Ende von der Schauseite, eines von der Rückseite über { $lap } abgeschnitzt, zu einem Ring geleimt, außen { $across } weit
cut-hoop-shape-bought-outer = innen { $across } weit, flache Seite nach innen
cut-hoop-shape-bought-inner = außen { $across } weit, flache Seite nach außen
cut-ring-bought = fertiger Ring aus { $stock }

cut-filler-purpose = deckt die Spitzen der Staken zwischen den Reifen

cut-lashing-purpose = bindet den Rand: { $wraps ->
        [one] eine Windung
       *[other] { $wraps } Windungen
    }, Enden und Zugabe eingerechnet

cut-pin-shape = Bohrer { $drill }; mindestens { $needed } lang
cut-pin-purpose = durch Reifen und Staken
cut-pin-end-purpose = durch Reifen, Staken und die Enden des Henkels
cut-pin-ear-purpose = durch Reifen, Staken und Ohren

cut-ear-shape = { $thickness } dick; die unteren { $tail } sind die Angel, { $tail_width } breit
cut-ear-shape-shaved = { $thickness } dick, in beiden Flächen eine Schulter { $shoulder } tief; darunter auf { $blade } abgeschnitzt; die unteren { $tail } sind die Angel, { $tail_width } breit, am Ende { $tip } dick
cut-ear-shape-stave = { $thickness } dick, in beiden Flächen eine Schulter { $shoulder } tief; darunter zu einer Stake von { $blade } Dicke abgeschnitzt: die unteren { $tail } gehen bis auf den Grund der Nut
cut-ear-purpose = hält den Henkel

cut-bail-shape = { $thickness } dick; Enden gerundet, { $drill } gebohrt, { $end } vom Ende
cut-bail-shape-slot = { $thickness } dick; ein Schlitz von { $slot } in jedem Ende; Enden gerundet, { $drill } gebohrt, { $end } vom Ende
cut-bail-shape-between = zwei Hälften von je { $half } Dicke; Enden gerundet, { $drill } gebohrt, { $end } vom Ende
cut-fixed-shape = { $thickness } dick; die letzten { $leg } an jedem Ende gerade, dünner gemacht für den Rand
cut-bow-bought = { $curve }, { $span } von Mitte zu Mitte an den Füßen, { $rise } hoch; { $shape }
cut-bow-material = ein gebogen gekaufter Henkel
cut-fixed-purpose = der feste Henkel
cut-knob-shape = steht { $length } vor; ein Loch { $drill } durch die Mitte, außen für die Nietscheibe erweitert
cut-ledge-purpose = Ring { $number } von { $rings }, auf dem der Deckel liegt, innen unter dem Innenreifen
cut-ledge-shape = beide Enden über { $lap } verjüngt, damit sie zusammen eine Dicke ergeben, zum Ring geleimt
cut-collar-purpose = der Kragen im Rand des Deckels, der in den Rand des Korbs greift
cut-hinge-purpose = eine Schlaufe des Scharniers, um beide Ränder
cut-latch-purpose = die Schlaufe vorn, die über den Pflock geht
cut-peg-purpose = im Rand des Korbs, für die Schlaufe des Verschlusses
cut-lift-purpose = auf dem Deckelboden, zum Abheben
cut-lift-shape = gedrechselt, mit einem Zapfen von { $hole } Dicke und { $thickness } Länge
cut-loop-purpose = eine Schlaufe durch das Loch von { $hole } im Deckelboden, zum Abheben
cut-knob-material = feinfaseriges Holz oder Bein, gedreht
cut-knob-purpose = einer an jedem Ohr, zum Anfassen
cut-bail-material = Eiche, Esche oder Hickory mit gerader Faser
cut-bail-purpose = der bewegliche Henkel

cut-rivet-shape = reicht durch { $grip }; mindestens { $needed } lang
cut-rivet-purpose = die Drehpunkte des Henkels
cut-rivet-purpose-knob = halten die Knöpfe an den Ohren

cut-washer-for = Nietscheibe zu { $rivet }
cut-washer-purpose = unter den Nietköpfen und zwischen Henkel und Ohr
cut-washer-purpose-head = unter den Nietköpfen
cut-washer-purpose-knob = unter den Nietköpfen und zwischen Knopf und Ohr
