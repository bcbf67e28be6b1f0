### Antworten zu Geflechten: was auf einer Stakenzahl geht, Vorschläge, Reihe für Reihe.

weaves-run = Geht auf { $count } Staken
weaves-fail = Geht nicht auf { $count } Staken
weaves-weave = Geflecht
weaves-weavers = Fäden
weaves-seen = Von außen zu sehen
weaves-instead = Stattdessen
weaves-row-by-row = { $weave }, Reihe für Reihe
weaves-loose = hält nicht
weaves-open = die Reihen treffen sich nicht
weaves-flat = keine Schräge
weaves-plain = lässt keine aus: Zäunen
weaves-skips = Würfel; die Sprünge steigen nach { $side }
weaves-counts = auf { $counts } Staken

look-plain = eine ebenmäßige Fläche
look-columns = Säulen
look-bands = Bänder
look-checks = Würfel
look-spiral = steigende Linien
look-chain = Kette
look-climbs-right = steigt nach rechts, Steigung { $climb }
look-climbs-left = steigt nach links, Steigung { $climb }
look-turns-right = Spirale nach rechts, Umläufe: { $turns }, Steigung { $climb }
look-turns-left = Spirale nach links, Umläufe: { $turns }, Steigung { $climb }
look-spiral-right = steigt nach rechts; Staken je Reihe: { $slope }
look-spiral-left = steigt nach links; Staken je Reihe: { $slope }
look-arrows = Pfeile
look-mixed = keine Linie tritt hervor

proposal-head = { $number }. { $count } Staken, { $weave }
proposal-turns = { $turns } Umläufe in { $rows } Reihen
proposal-rows = { $turns } Umläufe in { $rows } Reihen
proposal-sides = Die Flechtbilder zeigen die Außenseite mit dem Boden unten, nur die untersten Reihen; Stake 1 ist rechts.
proposal-sides-left = Die Flechtbilder zeigen die Außenseite mit dem Boden unten, nur die untersten Reihen; Stake 1 ist links. Geflochten wird mit der linken Hand: In die Vorlage gehört hand = "left".
proposal-stave = Stake
proposal-weaver = Flechtfaden

rows-course = Abschnitt { $number }: { $weave }
rows-join = Ansatz in Reihe { $row }
rows-seen = Von außen zu sehen: { $outside }. Von innen: { $inside }.
rows-tally = Strichliste, ein Kästchen je Reihe

# Das Geflecht Reihe für Reihe.
weave-row-drawn-over = Ab Stake { $stave }, zuerst davor, dann abwechselnd dahinter und davor: { $runs }.
weave-row-drawn-under = Ab Stake { $stave }, zuerst dahinter, dann abwechselnd davor und dahinter: { $runs }.
weave-row-drawn-over-again = Ab Stake { $stave }, zuerst davor, dann abwechselnd dahinter und davor: { $runs }; davon die letzten { $repeat } immer wieder.
weave-row-drawn-under-again = Ab Stake { $stave }, zuerst dahinter, dann abwechselnd davor und dahinter: { $runs }; davon die letzten { $repeat } immer wieder.
weave-row-end = Jede Reihe ist ein Stück für sich: sie enden lassen, wo sie begann, vier Staken über ihrem Anfang.
weave-row-step-up = Jede Runde endet mit einem Aufstieg: wo der Faden zu seinem Anfang kommt, ihn in die Reihe darüber steigen lassen und diese wie angegeben beginnen.
weave-row-join = Den alten Faden vor Stake { $cut } abschneiden; der neue beginnt hinter Stake { $start }.
weave-row-join-colour = Den alten Faden vor Stake { $cut } abschneiden; der neue, { $colour }, beginnt hinter Stake { $start }.

# Das Flechten, Abschnitt für Abschnitt. „Weiter“ ist die Richtung, in der geflochten wird.
weave-rows-one = Reihe { $first }
weave-rows = Reihen { $first }–{ $last }
weave-rows-two = Reihen { $first } und { $last }
weave-rows-every = Reihen { $first }, { $second } und so weiter bis { $last }
weave-weaver = { $material }, { $colour }
weave-how-on = vor { $over }, hinter { $under }, fortlaufend von Reihe zu Reihe
weave-how-in-turn = vor { $over }, hinter { $under }; sie nehmen die Reihen abwechselnd, und jeder läuft von seiner Reihe in seine nächste weiter
weave-how-each = vor { $over }, hinter { $under } in jeder Reihe
weave-how-twined = verdreht, immer mit dem hintersten: vor { $over }, hinter 1
weave-begin-over = vor { $count ->
        [one] Stake { $from }
       *[other] Staken { $from }–{ $to }
    } beginnen
weave-begin-under = hinter { $count ->
        [one] Stake { $from }
       *[other] Staken { $from }–{ $to }
    } beginnen
weave-on-over = vor { $count ->
        [one] Stake { $from }
       *[other] Staken { $from }–{ $to }
    } weitermachen
weave-on-under = hinter { $count ->
        [one] Stake { $from }
       *[other] Staken { $from }–{ $to }
    } weitermachen
weave-begin-behind = sein Ende hinter Stake { $stave } legen
weave-on-behind = weiter, wo er hinter Stake { $stave } liegt
weave-band-one = { $rows }, { $weaver }: { $how }; { $begin }.
weave-band-together = { $rows }, { $count } Fäden, nebeneinander wie einer: { $how }; { $begin }.
weave-band-lies = Faden { $number } von unten: { $weaver }.
weave-band-several = { $rows }, { $count } Fäden: { $how }.
weave-band-each = Faden { $number }, { $weaver }: { $begin }.
weave-band-each-from = Faden { $number }, { $weaver }: in Reihe { $row } { $begin }.
weave-band-drawn = { $rows }, { $weaver }.
weave-band-twined-step-up = Jede Runde endet mit einer Stufe: wo die Fäden an ihren Anfang kommen, jeden der Reihe nach steigen lassen, den vordersten zuerst, und die nächste Reihe beginnen wie diese.
weave-band-further = Jede Reihe { $staves ->
        [one] eine Stake
       *[other] { $staves } Staken
    } weiter beginnen als die Reihe darunter.
weave-band-skip-one = In Reihe { $row } an Stake { $stave } auf derselben Seite vorbei wie an der davor.
weave-band-skip = In Reihe { $row } an Stake { $stave } auf derselben Seite vorbei wie an der davor, und bis Reihe { $last } in jeder Reihe eine Stake weiter.
weave-band-change = Ab Stake { $stave } in Reihe { $row }: { $colour }.
weave-band-change-of = Faden { $weaver } ab Stake { $stave } in Reihe { $row }: { $colour }.
weave-band-changes-more = { $count ->
        [one] Ein weiterer Farbwechsel steht
       *[other] { $count } weitere Farbwechsel stehen
    } in der Liste der Ansatzstellen.
weave-shift-on = Jede Reihe liegt { $staves ->
        [one] eine Stake
       *[other] { $staves } Staken
    } weiter als die Reihe darunter.
weave-shift-back = Jede Reihe liegt { $staves ->
        [one] eine Stake
       *[other] { $staves } Staken
    } weiter zurück als die Reihe darunter.
weave-shift-none = Jede Reihe liegt wie die Reihe darunter.
