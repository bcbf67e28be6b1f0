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
