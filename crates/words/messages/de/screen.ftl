# Was neben den Texten der Blätter auf dem Bildschirm steht: die Zusammenfassung, Köpfe von Tabellen.

screen-mould = Form
screen-base = Boden
screen-staves = Staken
screen-weave = Geflecht
screen-rim = Rand
screen-filler = Füllung
screen-lashing = Wicklung
screen-pins = Stifte
screen-ears = Ohren
screen-handle = Henkel
screen-lid = Deckel
screen-hand = Werte

screen-mould-foot = am Fuß { $foot }
screen-mould-text = { $shape }, { $height } hoch, Umfang { $base } am Fuß und { $top } oben; fasst { $litres } Liter ({ $quarts } US-Quart)
screen-base-text = Scheibe aus { $wood }, { $diameter } Durchmesser, { $thickness } dick; Nut { $depth } tief, { $width } breit
screen-staves-text = { $count } und { $spares } als Ersatz, { $length } lang, aus { $stock }, { $side }; { $width } breit ab { $from } aufwärts, am Fuß auf { $foot } verjüngt
screen-gap-even = Lücke { $taped } vom Boden bis zum Rand
screen-gaps = Lücke { $taped } am Rand, an der Form gemessen; von Stake zu Stake { $narrowest } an der engsten, { $widest } an der weitesten Stelle
screen-next-best = nächstbeste: { $others }
screen-candidate = { $count } aus { $stock } (Lücke { $gap } am Rand)
screen-weave-text = { $rows } Reihen, { $length } Flechtfaden, bis { $top } an der Form hinauf
screen-weave-dry = { $rows } mehr, wenn es getrocknet und zusammengedrückt ist
screen-course = Reihen { $first } bis { $last }: { $weave } mit { $weaver }, { $length } in { $strands }, Einarbeitung { $takes }
screen-seen = von außen zu sehen: { $look }
screen-strands = { $count ->
    [one] 1 Faden
   *[other] { $count } Fäden
}
screen-first-join = erster Ansatz in Reihe { $row }, abschneiden vor Stake { $cut }, ansetzen hinter Stake { $start }
screen-hoops = Außenreifen { $outer }; Innenreifen { $inner }
screen-hoop = { $length } aus { $stock } (Schäftung { $lap }, Staken { $from } bis { $to })
screen-and = { " und " }
screen-lashing-text = { $style }, { $every }, { $length } { $weaver } in { $strands }
screen-pins-text = { $count } und { $spares } als Ersatz, { $stock }, { $every }; nötig { $needed } durch { $stack }
screen-pins-ears = {""}; an den Ohren { $count } und { $spares } als Ersatz, { $stock }; nötig { $needed } durch { $stack }
screen-ears-text = { $material }, an den Staken { $first } und { $second }, { $placing }
screen-ears-text-axis = { $material }, { $axis }, an den Staken { $first } und { $second }, { $placing }
screen-ears-off = { $angle } neben dem Gegenüber, { $off } am Rand entlang
screen-lid-text = { $count } Staken, { $rows } Reihen über einer Form, { $mould } weit und { $height } hoch; über dem Rand { $across }, ringsum { $clearance } Luft; { $seat }
screen-lid-ledge = auf einer Auflage aus { $rings ->
        [one] einem Ring
       *[other] { $rings } Ringen
    }
screen-lid-over = reicht { $down } über den Rand hinab
screen-lid-collar = bündig auf dem Rand, mit einem Kragen, { $outside } weit
screen-lid-hinge = { $seat }, Scharnier { $at }
screen-handle-text = Zuschnitt { $length }, Höhe { $rise }, auf Nieten { $pivot } über dem Rand; { $fold }
screen-handle-fixed = fest, Zuschnitt { $length }, Stich { $rise } über dem Rand, Enden { $ends } darunter
screen-handle-bought = gebogen gekauft, { $span } an den Füßen, Stich { $rise }, auf Nieten { $pivot } über dem Rand; { $fold }
screen-handle-fixed-bought = fest, gebogen gekauft, { $span } an den Füßen, Stich { $rise } über dem Rand, Enden { $ends } darunter
screen-handle-knobs = zwei Knöpfe von { $width } Durchmesser, auf Nieten { $pivot } über dem Rand
screen-fold-wall-below = legt sich bis { $angle } unter die Waagrechte
screen-fold-wall-above = legt sich bis { $angle } über die Waagrechte
screen-fold-rim-below = liegt auf dem Rand, { $angle } unter der Waagrechten
screen-fold-rim-above = liegt auf dem Rand, { $angle } über der Waagrechten

screen-chosen = Für Sie gewählt (um anders zu wählen, den Schlüssel in die Vorlage schreiben)
screen-changed = Anders als in dem Paket, das hier lag
screen-changed-line = { $key }: vorher { $before }, jetzt { $now }
screen-changed-keep = {""}; so bleibt es beim Alten: { $keep }
screen-findings = Befunde
screen-no-findings = Gegen diesen Korb wurde nichts gefunden.
screen-measured = { $place }: gemessen { $measured }, Grenze { $limit }
screen-mend = Abhilfe:
screen-findings-count = { $stop } Halt, { $care } Achtung, { $note } Hinweis

screen-cuts = Zuschnitt
screen-piece = Stück
screen-material = Material
screen-pieces = Zahl
screen-length = Länge
screen-width = Breite
screen-total = Insgesamt
