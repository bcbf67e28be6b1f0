# Die Arbeitsschritte, das Werkzeug und die Warnhinweise.

## Zuschneiden und formen

step-cut = Staken zuschneiden und formen
step-cut-text-sort = { $stock } durchsehen und sortieren. Gleichmäßige, gerade Stücke für Staken behalten, dünne oder haarige beiseitelegen.
step-cut-text-staves = { $all } Stücke von { $length } Länge schneiden: { $count } für den Korb und { $spares ->
        [one] eines als Ersatz
       *[other] { $spares } als Ersatz
    }.
step-cut-text-staves-groups = { $all } Stücke schneiden, nicht alle gleich: { $count } für den Korb und { $spares ->
        [one] eines
       *[other] { $spares }
    } als Ersatz. Auf jedes seine Gruppe schreiben, und seine Nummer, wo es eine hat.
step-cut-text-group = Gruppe { $group }: { $count } Stücke, { $length } lang und { $width } breit, für die Staken { $staves }{ $spares ->
        [0] .
        [one] { " " }und eines als Ersatz.
       *[other] { " " }und { $spares } als Ersatz.
    }
step-cut-text-ready = { $all } Staken liegen bereit, { $length } lang geschnitten: { $count } für den Korb und { $spares ->
        [one] eine als Ersatz
       *[other] { $spares } als Ersatz
    }. Die dünnsten als Ersatz beiseitelegen.
step-cut-text-taper = Jedes zum Fuß hin verjüngen, allmählich und alle gleich; eine Lehre hilft. Ab { $above_foot } über dem Fuß aufwärts behält es seine volle Breite von { $width }; von dort läuft es gerade auf { $foot } zu. Auf beiden Seiten gleich viel abnehmen.
step-cut-text-full = Sie behalten ihre volle Breite von { $width } bis zum Fuß: Verjüngt wird nichts.
step-cut-text-try-full = Beide Seiten und beide Kanten schleifen. Jeden Fuß in der Nut probieren: Er geht von Hand { $groove } hinein, ohne Gewalt und ohne Spiel.
step-cut-text-try = Beide Seiten und beide Kanten schleifen, am meisten, wo geschnitzt wurde. Das schmale Ende kommt in die Nut: jeden Fuß dort probieren. Er geht von Hand { $groove } hinein, ohne Gewalt und ohne Spiel.

## Henkel, wenn er selbst gebogen wird

step-bend = Den Henkel biegen
step-bend-text-shape = Den Henkel { $length } lang, { $width } breit und { $thickness } dick formen, mit der Faser, und seine Kanten brechen.
step-bend-text-halves = Zwei Hälften des Henkels formen, jede { $length } lang, { $width } breit und { $half } dick, mit der Faser. Sie aufeinanderliegend zusammen biegen; wenn sie trocken sind, in der Mitte verleimen und die Enden für die Ohren offen lassen.
step-bend-text-bend = Dämpfen oder in heißem Wasser einweichen, bis er nachgibt. Sofort über seine Form biegen ({ $curve }), { $span } von Mitte zu Mitte an den Füßen und { $rise } hoch, und festklemmen.
step-bend-text-dry = Mindestens über Nacht auf seiner Form lassen. Er kann dort bleiben, bis der Korb für ihn bereit ist.

## Boden

step-seal = Den Boden versiegeln
step-seal-text-sand = Den Boden mit der Faser glatt schleifen, beide Seiten und die Kante, und den Staub abwischen.
step-seal-text-coat = Eine dünne Schicht Schellack auf beide Seiten und die Kante streichen, aber nicht in die Nut und nicht ins Schraubenloch, wo Leim halten muss. Trocknen lassen, wie der Hersteller angibt. Nasse Fäden hinterlassen auf rohem Holz Spuren.

step-base = Den Boden auf der Form befestigen
step-base-text-sand = Den Boden jetzt glatt schleifen, solange er sich flach halten lässt.
step-base-text-pieces = Die Form zusammensetzen: ihre Segmente um den Kern, mit einer Schnur gebunden. Die Schraube geht in den Kern.
step-base-text-screw = Die Form auf ihren Rand stellen, den Fuß nach oben. Den Boden ({ $diameter } Durchmesser) durch sein Loch von { $hole } mitten auf den Fuß der Form schrauben, die spätere Unterseite nach außen. Drehen und prüfen, ob er rund läuft.
step-base-text-along = Die Länge des Bodens liegt längs der Form: ringsum muss die Form gleich weit vorstehen.
step-base-text-strips = Der Boden ist aus Streifen von { $width } Breite verleimt: { $woods }.
step-base-text-rings-out = Seine gedrehten Ringe zeigen nach außen: sie sind auf der späteren Unterseite.
step-base-text-rings-in = Seine gedrehten Ringe zeigen nach innen: sie liegen auf der Form.
step-base-text-guard = Den Boden von hier an schützen: nasse Fäden und Klemmen davon fernhalten, oder ihn mit Pappe und Klebeband abdecken.
step-base-text-guard-bare = Das Holz ist roh: von hier an schützen. Mit Pappe und Klebeband abdecken, denn Wasser und Finger hinterlassen Spuren.
step-base-text-mark = Den Rand des Bodens mit dem Teilstreifen für { $count } Staken anzeichnen. Mit den Vierteln beginnen, an den Staken { $quarters }; dann jedes Viertel füllen. So summieren sich die Fehler nicht.

## Staken

step-staves = Die Staken setzen
step-staves-text-ready = { $all } Staken liegen bereit, { $length } lang geschnitten und verjüngt: { $count } für den Korb und { $spares ->
        [one] eine als Ersatz
       *[other] { $spares } als Ersatz
    }. Sie zählen, die schmalen Enden alle auf eine Seite legen und einige in der Nut probieren.
step-staves-text-soak = Die Staken ({ $stock }) in Wasser tauchen und in einem feuchten Tuch durchziehen lassen; langes Einweichen lässt sie nur quellen. Sie sind so weit, wenn sich das schmale Ende lautlos biegt.
step-staves-text-set = Zuerst die Staken { $quarters } setzen, dann die übrigen dazwischen auf ihre Marken, { $count } im Ganzen. Jeder Fuß geht bis auf den Grund der Nut ({ $depth }) und liegt rechtwinklig zur Kante.
step-staves-text-set-lean = Zuerst die Staken { $quarters } setzen, dann die übrigen dazwischen auf ihre Marken, { $count } im Ganzen. Jeder Fuß geht bis auf den Grund der Nut ({ $depth }).
step-staves-text-group = Gruppe { $group } kommt auf die Plätze { $staves }.
step-staves-text-lean = Nicht alle stehen im rechten Winkel zur Kante des Bodens: Die Staken { $staves } neigen sich, um bis zu { $lean }, und um ebenso viel liegen ihre Füße schräg in der Nut. So soll es sein: Auf diesem Weg liegt jede flach.
step-staves-text-ends = Jede Stake steht dort, wo ihr Fuß ist, im rechten Winkel zur Kante des Bodens, und so bleibt sie bis zum Rand: keine neigt sich zu einem Ende. Die Lücken wachsen an den beiden Enden am meisten, auf { $ends } am Rand, und an den Seiten am wenigsten, auf { $sides }.
step-staves-text-face-out = Die gerundete Seite zeigt nach außen; die flache liegt auf der Form.
step-staves-text-face-in = Die flache Seite zeigt nach außen; die gerundete liegt auf der Form.
step-staves-text-count = Die Staken zählen. Dann noch einmal zählen: { $count }.
step-staves-text-band = Alle Staken an der Form hochbiegen, aufrecht und in gleichen Abständen, und mit einem Gummiband um Form und Boden halten. Besprühen, ausrichten und über Nacht die Gestalt der Form annehmen lassen. Das Band feucht wieder anlegen, sooft die Arbeit ruht.
step-staves-text-band-lean = Alle Staken an der Form hochbiegen, jede von ihrer Marke am Fuß zu ihrer Marke am Rand, und mit einem Gummiband um Form und Boden halten. Besprühen, ausrichten und über Nacht die Gestalt der Form annehmen lassen. Das Band feucht wieder anlegen, sooft die Arbeit ruht.

## Flechten

step-first = Die ersten Reihen flechten
step-first-text-start = Die Form umdrehen, sodass sie auf dem Boden steht. { $weaver } einweichen. Die ersten Zentimeter des Flechtfadens dünner machen, bevor sein Ende hinter eine Stake gelegt wird.
step-first-text-direction = Die Staken sind in der Reihenfolge gezählt, in der der Faden an sie kommt; „weiter“ ist diese Richtung. Mit der Außenseite nach vorn und dem Fuß der Form nach oben läuft er nach rechts; steht sie auf dem Boden, nach links.
step-first-text-direction-left = Die Staken sind in der Reihenfolge gezählt, in der der Faden an sie kommt; „weiter“ ist diese Richtung. Mit der Außenseite nach vorn und dem Fuß der Form nach oben läuft er nach links; steht sie auf dem Boden, nach rechts.
step-first-text-face = In den ersten zwei Reihen, wo er am schärfsten biegt, zeigt die matte Seite des Flechtrohrs nach außen: so reißt es weniger. Danach zeigt die glänzende Seite nach außen.
step-first-text-face-shiny = Von der ersten Reihe an zeigt die glänzende Seite des Flechtrohrs nach außen. Wo es am schärfsten biegt, reißt sie eher als die matte: feucht halten und langsam um jede Stake führen.
step-first-text-odd = Die Zahl der Staken ist ungerade, so läuft ein Faden ohne Halt von Reihe zu Reihe weiter.
step-first-text-hardest = Die ersten zwei Reihen sind die schwersten, ab der vierten geht es leicht; mit jedem Zentimeter Abstand vom Boden wird es leichter. Die Staken eine nach der anderen mit einer stumpfen Nadel oder einem Klopfeisen anheben.
step-first-text-weave = { $rows ->
        [one] Eine Reihe
       *[other] { $rows } Reihen
    } fest am Boden flechten. Nach einer Runde geht der Faden vor der Stake vorbei, hinter der er zuvor lag. Wenn nicht, wurde eine Stake übersehen: zurückgehen.
step-first-text-weave-other = { $rows ->
        [one] Eine Reihe
       *[other] { $rows } Reihen
    } fest am Boden flechten. Jede Runde mit dem Flechtbild vergleichen, bevor es weitergeht: eine übersehene Stake zeigt sich sofort, und nur dann ist sie schnell behoben.
step-first-text-check = Die Staken aufrecht und gleichmäßig halten. Am Rand wird die Lücke dazwischen { $gap } sein; der Teilstreifen zeigt, wohin jede gehört.

step-half = Bis zur halben Höhe flechten
step-half-text-weave = Weiterflechten bis Reihe { $row }, etwa { $height } die Form hinauf. Staken und Flechtfaden feucht halten. Jede Reihe auf die darunter drücken und die Wand an der Form halten: eine locker geflochtene Wand wird größer als ihre Form.
step-to-ears = Bis zu den Ohren flechten
step-to-ears-text-weave = Weiterflechten bis Reihe { $row }. Darüber bleiben von der Form etwa { $left }: Hier werden die Ohren angelegt.

step-rest = Bis zum Rand flechten
step-rest-text-weave = Weiterflechten bis Reihe { $rows }, { $height } die Form hinauf. Ab und zu mit dem Teilstreifen für den Rand prüfen.
step-rest-text-stop = Sooft die Arbeit ruht, die Staken wieder anfeuchten und das Band anlegen, sonst wandern sie beim Trocknen.

step-joins-text-expect = { $joins ->
        [one] In diesen Reihen ist etwa einmal anzusetzen. Fäden sind verschieden lang, also dort, wo es sich ergibt.
       *[other] In diesen Reihen ist etwa { $joins }-mal anzusetzen. Fäden sind verschieden lang, also dort, wo es sich ergibt.
    }
step-joins-text-dyed = { $joins ->
        [one] Der Ansatz, der die Farbe wechselt, liegt, wo es oben steht
       *[other] Die { $joins } Ansätze gefärbter Fäden liegen, wo es oben oder in der Liste steht
    }: den alten Faden danach abschneiden.
step-joins-text-how = Den alten Faden abschneiden, wo er vor einer Stake liegt. Der neue beginnt hinter der vierten Stake zurück und läuft über dem alten, sodass kein Ende zu sehen ist.

step-dry = Trocknen lassen, zusammendrücken, auffüllen
step-dry-text-wait = Den Korb mit angelegtem Band auf der Form lassen, bis er durch und durch trocken ist: meist ein bis drei Tage.
step-dry-text-pack = Die Reihen ringsum vom Boden aufwärts zusammendrücken. Oben öffnen sich etwa { $gap }.
step-dry-text-add = Auffüllen mit { $rows ->
        [one] einer weiteren Reihe
       *[other] { $rows } weiteren Reihen
    } { $weaver }.
step-dry-text-end = Die letzten Zentimeter des Flechtfadens dünner machen und ihn hinter der Stake über dem Anfang enden lassen, damit die Oberkante eben bleibt.

## Ohren

step-ears = Die Ohren machen und setzen
step-ears-text-make = Zwei Ohren aus { $material } sägen: { $length } lang, { $width } breit, { $thickness } dick. Oben runden und alle Kanten brechen.
step-ears-text-ready = Die zwei Ohren nehmen, die bereitliegen: { $material }, { $length } lang, { $width } breit, { $thickness } dick. Nachsehen, dass keine Kante scharf ist.
step-ears-text-shave = { $shaved } über dem unteren Ende in beide Flächen eine Schulter { $shoulder } tief einsägen: Sie ruht später auf den Reifen. Alles darunter auf { $blade } abschnitzen und das Ende auf { $tip } auslaufen lassen.
step-ears-text-shave-stave = { $shaved } über dem unteren Ende in beide Flächen eine Schulter { $shoulder } tief einsägen: Sie ruht später auf den Reifen. Alles darunter zu einer Stake abschnitzen: { $blade } dick, { $width } breit, am Fuß wie die anderen auf { $foot } verjüngt.
step-ears-text-narrow = Den Teil, der unter den Rand kommt, auf { $width } verschmälern, die Breite einer Stake, damit der Flechtfaden daneben vorbeigeht.
step-ears-text-count = Beide Plätze in beide Richtungen abzählen. Von Stake { $first } sind es { $up } Staken mit steigenden Nummern bis Stake { $second } und { $down } mit fallenden. Beide Staken anzeichnen.
step-ears-text-long = Die Ohren stehen an den beiden Enden des Korbs.
step-ears-text-long-beside = Die Ohren gehören an die beiden Enden des Korbs; bei dieser Zahl steht eines bis zu { $off } neben seinem Ende.
step-ears-text-short = Die Ohren stehen in der Mitte der beiden langen Seiten.
step-ears-text-short-beside = Die Ohren gehören in die Mitte der beiden langen Seiten; bei dieser Zahl steht eines bis zu { $off } daneben.
step-ears-text-on-staves-off = Ein Ohr auf Stake { $first } setzen, das andere auf Stake { $second }. Bei dieser Zahl steht keine Stake einer anderen gegenüber: Ohr 2 steht { $off } zu Stake { $toward } hin.
step-ears-text-on-staves = Ein Ohr auf Stake { $first } setzen, das andere auf Stake { $second }. Sie stehen einander gegenüber.
step-ears-text-stave-and-gap = Ein Ohr auf Stake { $first } setzen. Das andere steht ihm aus der Lücke zwischen den Staken { $second } und { $toward_second } gegenüber.
step-ears-text-shared = Ein Ohr { $off_first } neben Stake { $first } setzen, zu Stake { $toward_first } hin, und das andere { $off_second } neben Stake { $second }, zu Stake { $toward_second } hin. So stehen sie einander gegenüber.
step-ears-text-by-angle = Das erste Ohr auf Stake { $first } setzen. Das andere steht ihm { $off_second } neben Stake { $second } gegenüber, zu Stake { $toward_second } hin.
step-ears-text-lay = Die Angel jedes Ohrs außen auf seine Stake legen, ihr Ende auf Reihe { $row }; von der Form bleiben dort { $left }. Mit einem Stück Schnur festbinden. { $rows ->
        [one] Die nächste Reihe geht
       *[other] Die nächsten { $rows } Reihen gehen
    } über Stake und Angel wie über eine. Das obere Ende des Ohrs steht dann { $stands } über der letzten Reihe.
step-ears-text-hide = Wo hier oben ein Flechtfaden endet oder neu anfängt, sein Ende hinter dem Ohr an Stake { $first } oder { $second } verstecken.
step-ears-text-push = Mit einer Ahle einen Weg die Stake hinunter öffnen und die Angel zwischen Stake und Geflecht hinunterschieben, { $tail } unter den Rand. Die Spitzen der Staken hinter dem Kopf des Ohrs bündig mit der Oberkante des Rands abschneiden.
step-ears-text-as-stave = Beide Ohren zuerst setzen: Jedes steht an der Stelle seiner Stake { $depth } tief in der Nut und zählt von nun an als diese Stake.
step-ears-text-on-stave = Die Staken beider Ohren zuerst setzen und die Angel jedes Ohrs außen auf seine legen, { $tail } hinunter bis zum Boden. Dort festbinden. Von der ersten Reihe an gehen die Reihen über beide wie über eine.
step-ears-text-hole = Das Nietloch kommt { $hole } über den Rand.
step-ears-text-measure = Ein Maßband am Rand von Ohr zu Ohr legen, in beide Richtungen: je { $girth }. Jetzt berichtigen, was abweicht.

## Rand

step-rings = Die Reifen als Ringe machen
step-rings-text-cut = Einen Streifen { $outer } lang aus { $outer_stock } für den Außenring schneiden und einen { $inner } lang aus { $inner_stock } für den Innenring. Beide einweichen, bis sie sich lautlos biegen.
step-rings-text-outer = Den langen Streifen außen um die Staken legen, dicht über dem Geflecht, die flache Seite zu den Staken. Die Enden um { $lap } überlappen lassen und beide anzeichnen, wo sie liegen. Der Ring ist innen { $across } weit.
step-rings-text-inner = Den anderen Streifen ebenso anzeichnen, aber mit der flachen Seite nach außen: Sein Ring kommt innen an die Spitzen und ist außen { $across } weit. Ihn oberhalb der Form innen an den Spitzen anprobieren.
step-rings-text-shave = Von jedem Streifen ein Ende von der Schauseite und das andere von der Rückseite her abschnitzen, über die ganzen { $lap }, bis beide Spitzen papierdünn sind. Sie runden. Den Ring auf seinen Marken schließen und anprobieren: Die Überlappung ist so dick wie der Rest.
step-rings-text-glue = Die Überlappungen leimen, mit Wäscheklammern halten und die Ringe rund und flach über Nacht trocknen lassen. Der Korb kann inzwischen auf seiner Form trocknen.
step-rings-text-sand = Jede Überlappung schleifen, bis der Stoß weder zu sehen noch zu fühlen ist.

step-rim = Die Reifen einsetzen und klammern
step-rim-text-outer = Den Außenreifen { $length } lang aus { $stock } schneiden. Seine Schäftung liegt zwischen den Staken { $from } und { $to }.
step-rim-text-inner = Den Innenreifen { $length } lang aus { $stock } schneiden. Seine Schäftung liegt zwischen den Staken { $from } und { $to }, weg von der anderen.
step-rim-text-scarf = Beide Enden jedes Reifens über { $lap } dünner machen, eines von oben und eines von unten, sodass sie zusammen eine Dicke ergeben.
step-rim-text-clamp = Die Reifen einweichen, etwas enger als der Rand biegen und mit den flachen Seiten zu den Staken auf der letzten Reihe klammern ({ $height } die Form hinauf). Gegenüber der Schäftung anfangen und von beiden Seiten auf sie zu arbeiten.
step-rim-text-dry = Die Schäftungen an den geklammerten Reifen anzeichnen und anpassen. Alles über Nacht in den Klammern trocknen lassen.
step-rim-text-ring-outer = Den Außenring über die Spitzen schieben, seine Unterkante auf die letzte Reihe ({ $height } die Form hinauf), seine Schäftung zwischen die Staken { $from } und { $to }.
step-rim-text-ring-inner = Den Innenring innen einsetzen, die flache Seite zu den Staken und auf gleicher Höhe mit dem äußeren, seine Schäftung zwischen den Staken { $from } und { $to }, weg von der anderen.
step-rim-text-ready-outer = Den Außenring nehmen, der bereitliegt, innen { $across } weit. Ihn über die Spitzen schieben, seine Unterkante auf die letzte Reihe ({ $height } die Form hinauf), seine Schäftung zwischen die Staken { $from } und { $to }.
step-rim-text-ready-inner = Den Innenring nehmen, außen { $across } weit, und ihn innen einsetzen, die flache Seite zu den Staken und auf gleicher Höhe mit dem äußeren, seine Schäftung zwischen den Staken { $from } und { $to }, weg von der anderen.
step-rim-text-bought-outer = Den Außenring anprobieren: Er soll innen { $across } weit sein und mit leichtem Druck über die Spitzen gehen. Seine Unterkante auf die letzte Reihe setzen ({ $height } die Form hinauf), seinen Stoß zwischen die Staken { $from } und { $to }.
step-rim-text-bought-inner = Den Innenring anprobieren: Er soll außen { $across } weit sein. Ihn innen einsetzen, auf gleicher Höhe mit dem äußeren, seinen Stoß zwischen den Staken { $from } und { $to }, weg von dem anderen. Einen zu engen Ring an der flachen Seite schleifen; ein loser zeigt sich beim Klammern als Lücken: ihn austauschen.
step-rim-text-ring-clamp = Beide Ringe ringsum zusammenklammern. Gegenüber einem Stoß anfangen und jede Lücke zwischen Ring und Stake zudrücken.
step-rim-text-ring-clamp-ears = Beide Ringe ringsum zusammenklammern. An den Ohren anfangen und jede Lücke zwischen Ring und Stake zudrücken.
step-rim-text-ring-clamp-ends = Beide Ringe ringsum zusammenklammern. An den Enden des Henkels anfangen und jede Lücke zwischen Ring und Stake zudrücken.

## Stifte

step-pins = Spitzen abschneiden, bohren und verstiften
step-pins-text-trim = Die Spitzen der Staken bündig mit der Oberkante der Reifen abschneiden.
step-pins-text-every-stave = { $pins ->
        [one] Ein Stift
       *[other] { $pins } Stifte
    }: einer durch die Mitte jeder Stake, in einer geraden Linie auf halber Höhe der Reifen.
step-pins-text-every-other = { $pins ->
        [one] Ein Stift
       *[other] { $pins } Stifte
    }: einer durch die Mitte jeder zweiten Stake, in einer geraden Linie auf halber Höhe der Reifen, beginnend mit Stake { $first }.
step-pins-text-neighbours = Die Stifte gehen in der Runde nicht auf, also werden diese Nachbarn beide verstiftet: die Staken { $pairs }.
step-pins-text-apart = Zwischen diesen Staken stehen die Stifte weiter auseinander, um die Ohren freizuhalten: { $pairs }.
step-pins-text-apart-ends = Zwischen diesen Staken stehen die Stifte weiter auseinander, um die Enden des Henkels freizuhalten: { $pairs }.
step-pins-text-ends = Die Staken { $staves }, an denen der Henkel steht, bekommen { $pin }: durch Reifen, Ende des Henkels, Stake und Reifen, { $stack } im Ganzen. Dafür mit Bohrer { $drill } bohren. Diese Stifte halten den Henkel.
step-pins-text-ears = Die Staken der Ohren, { $staves }, bekommen { $pin }: durch Reifen, Ohr, Stake und Reifen, { $stack } im Ganzen. Dafür mit Bohrer { $drill } bohren. Diese Stifte halten die Ohren.
step-pins-text-drill = Mit Bohrer { $drill } gerade und rechtwinklig zum Rand bohren, durch { $stack } im Ganzen, mit einem Stück Abfallholz dahinter. Immer erst bohren, dann verstiften, eins nach dem anderen.
step-pins-text-clinch = { $pin } von außen einstecken, sodass alle Köpfe nach einer Seite zeigen. Innen stehen { $over } vor: auf etwa { $clip } kürzen. Den Kopf auf Metall halten und das Ende sanft vernieten, bis es sich über dem Reifen schließt.
step-pins-text-alone = Dieser Rand ist nicht umwickelt: Allein die Stifte halten seine Reifen. An jedem Stift nachsehen, ob er beide Reifen fest an die Stake zieht, und die Spitzen bündig mit den Reifen schleifen; sie bleiben zu sehen.

## Umwicklung

step-lashing = Randfüllung auflegen und den Rand umwickeln
step-lashing-text-filler = { $pieces ->
        [one] Ein Stück
       *[other] { $pieces } Stücke
    } { $stock } auf die Spitzen der Staken legen.
step-lashing-text-filler-ears = { $pieces ->
        [one] Ein Stück
       *[other] { $pieces } Stücke
    } { $stock } auf die Spitzen der Staken legen, von Ohr zu Ohr, sodass keine Spitze zu sehen ist.
step-lashing-text-filler-ends = { $pieces ->
        [one] Ein Stück
       *[other] { $pieces } Stücke
    } { $stock } auf die Spitzen der Staken legen, von einem Ende des Henkels zum anderen, sodass keine Spitze zu sehen ist.
step-lashing-text-start = { $weaver } einweichen: { $strands ->
        [one] ein Faden
       *[other] { $strands } Fäden
    }, { $length } im Ganzen.
step-lashing-text-tail = Auf eine von zwei Weisen anfangen: ein Ende von { $tail } hinter den Innenreifen und über die oberste Reihe haken, oder es am Rand entlanglegen, mit den ersten Windungen darübergehen und es darunter festziehen.
step-lashing-text-single = Einmal um den Rand wickeln, durch die Lücken ({ $every }): { $wraps } Windungen. Jede fest anziehen, die glänzende Seite nach außen.
step-lashing-text-crossed = Um den Rand wickeln, durch die Lücken ({ $every }), dann in Gegenrichtung zurück, sodass sich die Windungen kreuzen: { $wraps } Windungen im Ganzen. Jede fest anziehen, die glänzende Seite nach außen.
step-lashing-text-joins = { $joins ->
        [one] Den zweiten Faden an Stake { $staves } anfangen.
       *[other] An den Staken { $staves } je einen neuen Faden anfangen.
    } Die Enden von altem und neuem Faden zwischen die Reifen stecken.
step-lashing-text-end = Mit einem Ende von { $tail } ebenso aufhören: zwischen die Reifen hinunterstecken oder unter den letzten Windungen zurückziehen. Es bündig abschneiden, wenn es trocken ist.

## Henkel

step-handle = Den Henkel anbringen
step-handle-text-bought = Der Henkel kommt gebogen ({ $curve }): { $span } von Mitte zu Mitte an den Füßen und { $rise } hoch, { $width } breit und { $thickness } dick. Ihn an die Ohren halten, bevor etwas geschnitten oder gebohrt wird; was ein wenig zu weit oder zu eng ist, federt sich von Hand zurecht.
step-handle-text-outside = Der Henkel geht außen an die Ohren, { $end } davon unter dem Loch. Die Enden runden.
step-handle-text-slot = In jedes Ende, mitten in seine Dicke, einen Schlitz von { $slot } sägen und feilen, so tief, dass das Ohr über sein Loch hinaus hineingeht. { $end } des Henkels bleiben unter dem Loch. Die Enden runden.
step-handle-text-between = Das Ohr geht zwischen die beiden Hälften, { $end } davon unter dem Loch. Die Enden runden.
step-handle-text-mark = Den Henkel waagrecht ausrichten: auf beiden Seiten gleich weit zum Rand hinab. Auf jeder Seite das Loch durch das Loch des Ohrs anzeichnen. Beide sind { $pivot } über dem Rand, auf einer Höhe, und { $shows } vom Ohr sind zwischen Rand und Henkel zu sehen.
step-handle-text-drill = Mit Bohrer { $drill } gerade durch Henkel und Ohr bohren, mit Abfallholz dahinter, erst eine Seite; probieren, dann die andere.
step-handle-text-rivet = { $rivet } von innen durchstecken, mindestens { $length } lang, mit einer Unterlegscheibe zwischen Ohr und Henkel und der Nietscheibe außen: { $grip } im Ganzen.
step-handle-text-rivet-through = { $rivet } durch Henkel und Ohr stecken, mindestens { $length } lang, und die Nietscheibe über sein Ende: { $grip } im Ganzen.
step-handle-text-clip = Den Niet abzwicken, sodass { $over } vorstehen. Seinen Kopf auf den Stahlblock legen und das Ende ringsum mit leichten Schlägen zu einem Kopf treiben. Aufhören und probieren: Der Henkel muss schwenken, mit etwas Reibung.
step-handle-text-knobs = An jedem Ohr steht außen ein Knopf: { $width } Durchmesser, { $length } lang, seine Mitte { $pivot } über dem Rand, beide auf einer Höhe.
step-handle-text-knob-drill = Durch das Loch des Ohrs anzeichnen. Mit Bohrer { $drill } gerade durch Knopf und Ohr bohren, mit Abfallholz dahinter, und das Loch außen erweitern, sodass die Nietscheibe bündig liegt.
step-handle-text-knob-rivet = { $rivet } von innen durchstecken, mindestens { $length } lang, mit einer Unterlegscheibe zwischen Ohr und Knopf und der Nietscheibe außen: { $grip } im Ganzen.
step-handle-text-knob-clip = Den Niet abzwicken, sodass { $over } vorstehen. Seinen Kopf auf den Stahlblock legen und das Ende mit leichten Schlägen zu einem Kopf treiben, bis sich der Knopf nicht mehr dreht.
step-handle-text-bought-fixed = Der Henkel kommt gebogen ({ $curve }): { $span } von Mitte zu Mitte und { $rise } hoch über dem Rand, { $width } breit und { $thickness } dick, mit geraden Enden.
step-handle-text-ends = Jedes Ende ist von der Oberkante des Rands { $leg } lang. Es dort auf { $thickness } dünner machen, sodass es zwischen den Reifen ({ $rim } hoch) so flach liegt wie eine Stake, und seine Spitze dünn und rund schneiden.
step-handle-text-into = Mit einer Ahle innen an den Staken { $first } und { $second } entlang einen Weg öffnen und die Enden innen ins Geflecht schieben, { $tail } unter den Rand.
step-handle-text-long = So steht er an den beiden Enden des Korbs.
step-handle-text-short = So steht er quer über der Mitte, von Längsseite zu Längsseite.
step-handle-text-off = Hier steht keine Stake einer anderen gegenüber: der Henkel steht am Rand entlang { $off } neben der Mittellinie. Das sehen wenige.
step-handle-text-level = Ihn waagrecht und aufrecht ausrichten: { $rise } von der Oberkante des Rands bis zu seiner Mittellinie, auf beiden Seiten gleich weit hinab. Ihn festbinden, bis die Reifen sitzen.
step-handle-text-held = Die Reifen gehen über seine Enden, an den Staken { $staves } gehen Stifte durch Reifen, Ende, Stake und Reifen, und die Umwicklung geht über alles. Er braucht keine Ohren.
step-handle-text-held-pinned = Die Reifen gehen über seine Enden, und an den Staken { $staves } gehen Stifte durch Reifen, Ende, Stake und Reifen. Er braucht keine Ohren.
step-handle-text-on-wall = Umgelegt geht der Henkel außen am Rand vorbei und liegt an der Wand, seine Mitte { $drop } unter den Drehpunkten.
step-handle-text-on-rim = Umgelegt liegt der Henkel auf dem Rand, { $rests } von den Ohren.

## Fertigstellen

step-off = Den Korb von der Form nehmen
step-off-text-screw = Die Schraube herausdrehen und den Korb von der Form heben, dabei etwas hin und her drehen: Der Rand braucht innen Platz.
step-off-text-pieces = Die Schraube herausdrehen und den Kern ziehen; er muss mindestens { $core } Durchmesser haben, sonst finden die Segmente keinen Platz. Die Segmente eines nach dem anderen nach innen kippen, zuerst das mit parallelen Seiten, und herausheben.
step-off-text-look = Ihn innen ansehen. Reihen, die sich gehoben haben, zurückschieben und die Staken lassen, wo sie stehen: Oben hält sie nichts, bis der Rand sitzt.

step-plug = Zapfen einleimen, schleifen
step-plug-text-lift = Den Korb innen ansehen, jetzt, da der Rand fertig ist. Ihn am Rand heben, nicht am Henkel, bis die Oberfläche trocken ist.
step-plug-text-plug = Den Zapfen ({ $diameter }) ins Schraubenloch leimen, seine Faser längs der Faser des Bodens, und abbinden lassen.
step-plug-text-sand = Den Zapfen innen und außen bündig schneiden und schleifen. Jetzt nur den Boden mit der Faser schleifen, nie über die Umwicklung. Härchen abschneiden.
step-plug-text-sand-handle = Den Zapfen innen und außen bündig schneiden und schleifen. Jetzt nur Boden und Henkel mit der Faser schleifen, nie über die Umwicklung. Härchen abschneiden.
step-plug-text-sand-pinned = Den Zapfen innen und außen bündig schneiden und schleifen. Jetzt den Boden mit der Faser schleifen. Härchen abschneiden.
step-plug-text-sand-handle-pinned = Den Zapfen innen und außen bündig schneiden und schleifen. Jetzt Boden und Henkel mit der Faser schleifen. Härchen abschneiden.

step-finish = Oberfläche und letzte Prüfung
step-finish-text-none = Der Korb bleibt unbehandelt. Den Staub abbürsten.
step-finish-text-stain = Zuerst beizen, gleichmäßig und nicht zu nass, und trocknen lassen, wie der Hersteller der Beize angibt.
step-finish-text-shellac = Zwei dünne Schichten Schellack aufstreichen und jede trocknen lassen, wie der Hersteller angibt.
step-finish-text-oil = Eine dünne Schicht trocknendes Öl einreiben, warten, alles wieder abwischen und aushärten lassen, wie der Hersteller angibt.
step-finish-text-varnish = Zwei dünne Schichten Lack aufstreichen und jede trocknen lassen, wie der Hersteller angibt; dazwischen leicht anschleifen.
step-finish-text-on-all = Das Mittel kommt auf den ganzen Korb, außen und innen, auf dem Geflecht dünn.
step-finish-text-on-handle = Das Mittel kommt auf den Henkel, auf alle seine Seiten. Soll er dunkler werden, ihn vorher leicht beizen.
step-finish-text-on-base = Das Mittel kommt auf den Boden, innen und außen.
step-finish-text-on-rim = Das Mittel kommt auf den Rand, dünn über die Wicklung.
step-finish-text-on-rim-pinned = Das Mittel kommt auf die Reifen des Rands und auf die Spitzen dazwischen.
step-finish-text-nowhere-else = Sonst nirgends: abdecken, was roh bleibt, und abwischen, was läuft.
step-finish-text-check = Den Korb von Hand prüfen, außen und innen: keine losen Enden, keine scharfen Stifte, keine Stake, die sich bewegt. Aufschreiben, was dieser Korb wirklich gebraucht hat.
step-finish-text-sign = Den Korb unten auf dem Boden signieren und datieren.
step-finish-text-sign-as = Unten auf den Boden schreiben: { $signature }, und das Datum.

## Werkzeug

tool-anvil = kleiner Stahlblock
tool-awl = Ahle
tool-band = Gummiband oder Schnur
tool-bending-form = Form zum Biegen des Henkels
tool-brush = weiche Bürste
tool-bucket = Eimer Wasser
tool-clamps = Klemmen oder Wäscheklammern (24)
tool-drill = Handbohrer und kleine Bohrer
tool-dust-mask = Staubmaske
tool-file = Feile
tool-glue = Holzleim
tool-goggles = Schutzbrille
tool-hammer = leichter Hammer
tool-knife = scharfes Messer
tool-mallet = Holzhammer
tool-packer = Klopfeisen oder stumpfe Nadel
tool-pen = feiner wasserfester Stift
tool-pencil = Bleistift
tool-rag = fusselfreie Lappen
tool-ruler = Lineal und Maßband
tool-sandpaper = Schleifpapier, Körnung 150 und 220
tool-saw = feine Säge
tool-scrap-wood = Abfallholz
tool-screwdriver = Schraubendreher
tool-shears = Seitenschneider oder Schere
tool-spacing-strip = Teilstreifen (Schablonen)
tool-spray = Sprühflasche
tool-stave-template = Stakenschablone
tool-steam = Dampfkasten oder Wanne mit heißem Wasser
tool-towel = Handtuch
