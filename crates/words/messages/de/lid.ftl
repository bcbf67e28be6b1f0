# Der Deckel: was zu tun ist, wenn er selbst geflochten ist, und was auf den Blättern von ihm steht.

step-lid = Deckel einpassen
step-lid-text-ledge = { $rings ->
        [one] Einen Ring
       *[other] { $rings } Ringe
    } aus { $stock } biegen, der innen unter den Innenreifen des Korbs passt, mit geleimten Schäftungen von { $lap }: fertig innen { $inside } weit.
step-lid-text-ledge-flat = Die Ringe liegen ineinander, flache Seite an flacher Seite; zu einem Ring verleimen.
step-lid-text-ledge-fix = Die Auflage ringsum gleich hoch gegen den Innenreifen schieben, leimen und an jeder zehnten Stake mit feinem Flechtrohr annähen. Der Deckel liegt { $overlap } auf, auch wenn er zur Seite geschoben ist.
step-lid-text-collar = Einen Ring aus { $stock } biegen, flache Seite außen, mit geleimten Schäftungen von { $lap }: fertig außen { $outside } weit. Er ist der Kragen.
step-lid-text-collar-fix = Den Kragen so in den Rand des Deckels setzen, dass er ringsum gleich weit vorsteht, { $down }. Wo Luft ist, Rohr zwischen Kragen und Rand legen, leimen und an jeder zehnten Stake mit feinem Flechtrohr annähen.
step-lid-text-knob = Den Zapfen des Knaufs von außen in das Loch von { $hole } im Deckelboden leimen.
step-lid-text-loop = Das Flechtrohr zweimal durch das Loch von { $hole } im Deckelboden ziehen, außen einen Finger hoch, die Enden innen einstecken und das Loch mit Leim und einem Pflock schließen.
step-lid-text-plug = Das Loch von { $hole } im Deckelboden mit seinem Zapfen schließen.
step-lid-text-try = Den Deckel mit dem Boden nach oben einsetzen, in jeder Lage. Ringsum sollen { $clearance } Luft sein; er steht { $rises } über den Rand.
step-lid-text-try-cap = Den Deckel mit dem Boden nach oben aufsetzen, in jeder Lage. Er reicht { $down } über den Rand hinab, ringsum mit { $clearance } Luft; er steht { $rises } über den Rand.
step-lid-text-try-flush = Den Deckel mit dem Boden nach oben aufsetzen, in jeder Lage. Rand liegt auf Rand, außen bündig; der Kragen hat im Korb { $clearance } Luft. Er steht { $rises } über den Rand.
step-lid-text-hinge = Scharnier: zwei Schlaufen aus Flechtrohr, zweimal um beide Ränder, { $apart } voneinander. Zwischen ihnen ist der Rand fast gerade, damit sich der Deckel öffnet, ohne auf den Rand zu drücken. Den Deckel auflegen und die Schlaufen so locker binden, dass er offen aufrecht steht. Umgedreht zählen seine Staken andersherum.
step-lid-text-hinge-loop = Eine Schlaufe geht durch die Lücke zwischen den Staken { $from } und { $to } des Korbs und durch die zwischen { $lid-from } und { $lid-to } des Deckels.
step-lid-text-latch = Verschluss: eine Schlaufe um den Rand des Deckels, in der Lücke zwischen seinen Staken { $lid-from } und { $lid-to }. Wo sie hängt, zwischen den Staken { $from } und { $to } des Korbs, den Außenreifen bohren und den Pflock einleimen.
step-lid-text-alike = Ein Ende von Deckel und Korb innen gleich zeichnen, damit der Deckel stets so liegt, wie er eingepasst wurde. Die Windungen beider Ränder steigen nach derselben Seite.

# The steps of its own making, in the words of a lid.
step-lid-own-seal = Den Deckelboden versiegeln
step-lid-own-seal-text-sand = Den Deckelboden mit der Faser glatt schleifen, beide Seiten und die Kante, und den Staub abwischen.
step-lid-own-base = Den Deckelboden auf der Form befestigen
step-lid-own-base-text-sand = Den Deckelboden jetzt glatt schleifen, solange er sich flach halten lässt.
step-lid-own-base-text-screw = Die Form auf ihren Rand stellen, den Fuß nach oben. Den Deckelboden ({ $diameter } Durchmesser) durch sein Loch von { $hole } mitten auf den Fuß der Form schrauben, die spätere Oberseite des Deckels nach außen. Drehen und prüfen, ob er rund läuft.
step-lid-own-base-text-along = Die Länge des Deckelbodens liegt längs der Form: ringsum muss die Form gleich weit vorstehen.
step-lid-own-base-text-strips = Der Deckelboden ist aus Streifen von { $width } Breite verleimt: { $woods }.
step-lid-own-base-text-guard = Den Deckelboden von hier an schützen: nasse Fäden und Klemmen davon fernhalten, oder ihn mit Pappe und Klebeband abdecken.
step-lid-own-base-text-mark = Den Rand des Deckelbodens mit dem Teilstreifen für { $count } Staken anzeichnen. Mit den Vierteln beginnen, an den Staken { $quarters }; dann jedes Viertel füllen. So summieren sich die Fehler nicht.
step-lid-own-cut-text-staves = { $all } Stücke von { $length } Länge schneiden: { $count } für den Deckel und { $spares ->
        [one] eines als Ersatz
       *[other] { $spares } als Ersatz
    }.
step-lid-own-staves-text-ends = Jede Stake steht dort, wo ihr Fuß ist, im rechten Winkel zur Kante des Deckelbodens, und so bleibt sie bis zum Rand: keine neigt sich zu einem Ende. Die Lücken wachsen an den beiden Enden am meisten, auf { $ends } am Rand, und an den Seiten am wenigsten, auf { $sides }.
step-lid-own-staves-text-band = Alle Staken an der Form hochbiegen, aufrecht und in gleichen Abständen, und mit einem Gummiband um Form und Deckelboden halten. Besprühen, ausrichten und über Nacht die Gestalt der Form annehmen lassen. Das Band feucht wieder anlegen, sooft die Arbeit ruht.
step-lid-own-first-text-start = Die Form umdrehen, sodass sie auf dem Deckelboden steht. { $weaver } einweichen. Die ersten Zentimeter des Flechtfadens dünner machen, bevor sein Ende hinter eine Stake gelegt wird.
step-lid-own-first-text-direction = Die Staken sind in der Reihenfolge gezählt, in der der Faden an sie kommt; „weiter“ ist diese Richtung. Mit der Außenseite nach vorn und dem Fuß der Form nach oben läuft er nach rechts; steht sie auf dem Deckelboden, nach links.
step-lid-own-first-text-direction-left = Die Staken sind in der Reihenfolge gezählt, in der der Faden an sie kommt; „weiter“ ist diese Richtung. Mit der Außenseite nach vorn und dem Fuß der Form nach oben läuft er nach links; steht sie auf dem Deckelboden, nach rechts.
step-lid-own-first-text-hardest = Die ersten zwei Reihen sind die schwersten, ab der vierten geht es leicht; mit jedem Zentimeter Abstand vom Deckelboden wird es leichter. Die Staken eine nach der anderen mit einer stumpfen Nadel oder einem Klopfeisen anheben.
step-lid-own-dry-text-wait = Den Deckel mit angelegtem Band auf der Form lassen, bis er durch und durch trocken ist: meist ein bis drei Tage.
step-lid-own-dry-text-pack = Die Reihen ringsum vom Deckelboden aufwärts zusammendrücken. Oben öffnen sich etwa { $gap }.
step-lid-own-cut-text-ready = { $all } Staken liegen bereit, { $length } lang geschnitten: { $count } für den Deckel und { $spares ->
        [one] eine als Ersatz
       *[other] { $spares } als Ersatz
    }. Die dünnsten als Ersatz beiseitelegen.
step-lid-own-staves-text-ready = { $all } Staken liegen bereit, { $length } lang geschnitten und verjüngt: { $count } für den Deckel und { $spares ->
        [one] eine als Ersatz
       *[other] { $spares } als Ersatz
    }. Sie zählen, die schmalen Enden alle auf eine Seite legen und einige in der Nut probieren.
step-lid-own-first-text-weave = { $rows ->
        [one] Eine Reihe
       *[other] { $rows } Reihen
    } fest am Deckelboden flechten. Nach einer Runde geht der Faden vor der Stake vorbei, hinter der er zuvor lag. Wenn nicht, wurde eine Stake übersehen: zurückgehen.
step-lid-own-rings-text-glue = Die Überlappungen leimen, mit Wäscheklammern halten und die Ringe rund und flach über Nacht trocknen lassen. Der Deckel kann inzwischen auf seiner Form trocknen.
step-lid-own-off = Den Deckel von der Form nehmen
step-lid-own-off-text-screw = Die Schraube herausdrehen und den Deckel von der Form heben, dabei etwas hin und her drehen: Der Rand braucht innen Platz.

# The same of a lid that is woven flat.
step-lid-flat-base-text-screw = Das Brett flach hinlegen, seine gerundete Kante nach oben. Den Deckelboden ({ $diameter } Durchmesser) durch sein Loch von { $hole } mitten auf das Brett schrauben, die spätere Oberseite des Deckels nach oben.
step-lid-flat-staves-text-band = Alle Staken wie Strahlen und in gleichen Abständen flach auf das Brett legen, ihre Enden über seine Kante hinunterbiegen und mit einem Gummiband um die Kante halten. Besprühen, ausrichten und über Nacht so trocknen lassen. Das Band feucht wieder anlegen, sooft die Arbeit ruht.
step-lid-flat-first-text-start = Das Brett bleibt liegen, der Deckelboden oben. { $weaver } einweichen. Die ersten Zentimeter des Flechtfadens dünner machen, bevor sein Ende hinter eine Stake gelegt wird.
step-lid-flat-dry-text-wait = Den Deckel mit angelegtem Band auf dem Brett lassen, darauf ein zweites Brett und ein Gewicht, bis er durch und durch trocken ist: meist ein bis drei Tage. Was ohne Gewicht trocknet, wird hohl.
step-lid-flat-dry-text-pack = Die Reihen ringsum vom Deckelboden nach außen zusammendrücken. An der Kante öffnen sich etwa { $gap }.
step-lid-flat-half-text-weave = Flach auf dem Brett bis Reihe { $row } weiterflechten. Staken und Flechtfaden feucht halten. Jede Reihe an die vorige drücken und sehen, dass jede Stake noch gerade vom Deckelboden wegläuft: zu fest gezogen, wölbt sich flaches Geflecht.
step-lid-flat-rest-text-weave = Um die Kante des Bretts bis Reihe { $rows } weiterflechten, { $height } unter seine Fläche. Ab und zu mit dem Teilstreifen für den Rand prüfen.

# On sheets.
sheet-fact-lid = Deckel
sheet-lid-of = { $across }, { $fit }: { $count } Staken, { $rows } Reihen
sheet-card-lid = Deckel, Staken
sheet-card-lid-note = { $length } lang; { $rows } Reihen
