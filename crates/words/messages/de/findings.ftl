# Befunde: was gefunden wurde; .why warum es zählt; .remedy was hilft (Schlüssel und Werte der
# Vorlage folgen von selbst). Werte: $measured, $limit und die jeder Prüfung.

weave-count-odd = eine ungerade Zahl
weave-count-other = eine andere Zahl

mould-serves-pieces = Eine Form in Teilen tut es: ein Kern zum Herausziehen mit { $segments } Segmenten darum.
mould-serves-none = Es fand sich keine Form in Teilen, die herauskäme.
mould-no-core = der Hals ist zu eng für jeden Kern
mould-lacks = dem engsten Teil fehlen { $lack }

finding-mould-undercut = Die Form ist oben im Radius { $measured } kleiner als darunter ({ $narrowing } im Durchmesser). Ein Korb verzeiht { $limit }. { $serves }
    .why = Die geflochtene Wand kommt nicht über die weite Stelle, und der Korb bleibt auf der Form.
    .remedy = Wenn es diese Form geteilt gibt, um einen Kern, der sich ziehen lässt, das in der Vorlage sagen. Oder den Korb an der weitesten Stelle enden lassen, oder die Form oben nicht enger machen als unten.

finding-mould-level-pointed = Auf der Höhe { $height }, wo die Form { $length } lang und { $width } breit ist, läuft sie spitz zu.
    .why = Die Enden laufen so anders nach außen als die Seiten, dass keine glatte Ebene beide verbindet; Staken und Reifen lassen sich nicht darum biegen.
    .remedy = Die Breiten noch einmal ansehen, oder die Seiten verlaufen lassen wie die Enden.

finding-mould-does-not-come-apart = Die Form lässt sich im Korb nicht zerlegen: { $room }. Jedes Teil braucht auf seinem Weg ringsum { $limit } Luft.
    .why = Ein Segment, das nicht durch den Hals geht, bleibt im Korb, und der Korb auf der Form.
    .remedy = Den Hals weiter oder den Bauch enger machen, oder den Korb an der weitesten Stelle enden lassen.

outline-part-rings = gedrehte Ringe im Boden
outline-part-strips = ein Boden, der aus Streifen verleimt ist

finding-oval-part-not-computed = Für eine Form, die nicht rund ist, wird dies noch nicht berechnet: { $parts }.
    .why = Wo sie zu stehen kämen und ob sie passen, ist nur für runde Körbe bekannt; was die Zeichnungen davon zeigen, wäre falsch.
    .remedy = In der Vorlage weglassen und von Hand einpassen.

finding-oval-girth-contradicts = Das Bandmaß sagt { $taped } um den Fuß der Form, Länge und Breite sagen { $drawn }: { $measured } auseinander. Bis { $limit } kann es am Bandmaß liegen.
    .why = Eines der drei Maße ist falsch, oder der Umriss ist ein anderer: ein volleres Oval und ein Rechteck haben mehr Umfang als eine Ellipse.
    .remedy = Länge, Breite und Umfang des Fußes noch einmal messen oder den Umriss wählen, der passt.

finding-oval-ends-gape = Am Rand sind die Lücken an den beiden Enden { $measured } breit, die an den Seiten { $sides }. Ab { $limit } sieht man es.
    .why = Alle Staken neigen sich gleich weit nach außen, und um ein enges Ende fächern sie auf.
    .remedy = Die Staken auch am Rand gleichmäßig verteilen und sich neigen lassen, die an den Enden breiter lassen, wenn das Material es hergibt, die Wand weniger weit ausstellen oder einen runderen Fuß wählen.

finding-staves-lean = Die Staken { $staves } neigen sich gegen den rechten Winkel zum Fuß, um bis zu { $measured }. Ab { $limit } sieht man es.
    .why = Um die engen Bögen wächst der Rand mehr als an den Seiten. Darum können flache Staken nicht rechtwinklig zum Fuß und zugleich am Rand gleichmäßig stehen.
    .remedy = Auf die andere Weise verteilen, oder die Wand weniger weit ausstellen.

finding-staves-strained = Gerade über ihrem Fuß gehalten, würden die Staken { $staves } an ihren Kanten gedehnt, um bis zu { $measured }. Bis { $limit } liegt ein Streifen flach.
    .why = Eine Stake ist ein flacher Streifen. Über die Fläche biegt sie sich leicht, in ihrer eigenen Ebene kaum, und auf dieser Wand biegt sich der gerade Weg nach oben zur Seite.
    .remedy = Jede den Weg nehmen lassen, auf dem sie flach liegt, wie ihn die Teilstreifen für Fuß und Rand zeigen, oder schmalere Staken nehmen.

finding-wall-closes = Die Wand schließt sich: an der engsten Stelle hat sie einen Radius von { $measured }, und { $count } Staken mit dem inneren Reif brauchen { $limit }.
    .why = Wo die Staken nebeneinander keinen Platz haben, gibt es keinen Korb, was auch immer darunter geflochten ist. Reihen, die über das Ende einer enger werdenden Form hinauslaufen, kommen an eine solche Stelle.
    .remedy = Tiefer aufhören zu flechten, oder die Form dort weiter machen.

finding-base-wider-than-mould = Der Boden ({ $diameter }) steht ringsum { $measured } über den Fuß der Form ({ $foot } Durchmesser) vor. Die Grenze ist { $limit }.
    .why = Ein vorstehender Boden hält die Staken von der Form ab, und der Korb wird größer als die Form.
    .remedy = Den Boden nicht größer machen als den Fuß der Form.

finding-base-smaller-than-mould = Der Fuß der Form ({ $foot } Durchmesser) steht ringsum { $measured } über den Boden ({ $diameter }) vor. Die Grenze ist { $limit }.
    .why = Die Staken überbrücken diesen Abstand frei, und jede biegt sich, wo sie will.
    .remedy = Den Boden größer machen.

finding-base-wood-moves = Ein Boden aus { $wood } quillt und schwindet quer zur Faser um { $measured } zwischen trockenem und feuchtem Raum, auf jeder Seite { $side }. Bis zur halben Tiefe der Nut, { $limit }, schadet das nicht.
    .why = Die Scheibe wird mit den Jahreszeiten etwas oval. Staken, die quer zur Faser bis auf den Grund der Nut getrieben sind, werden herausgedrückt, und solche, die kaum hineinreichen, werden locker. Die Füße nicht einleimen.
    .remedy = Ein Holz wählen, das weniger arbeitet, oder die Nut tiefer schneiden.

finding-groove-too-narrow = Die Nut ist { $measured } breit, aber { $stock } ist { $limit } dick.
    .why = Die Staken gehen nicht hinein.
    .remedy = Die Nut breiter schneiden oder die Füße dünner machen.

finding-groove-too-wide = Die Nut ist { $measured } breit für Staken von { $thickness } Dicke. Mehr als { $limit } ist locker.
    .why = Lockere Füße wackeln und kippen, und die Staken neigen sich. Jede müsste verkeilt werden.
    .remedy = Die Nut schmaler schneiden.

finding-groove-too-shallow = Die Nut ist { $measured } tief. Es sollten mindestens { $limit } sein.
    .why = Staken schwinden beim Trocknen. Aus einer flachen Nut rutschen sie heraus, und der Boden fällt ab.
    .remedy = Die Nut tiefer schneiden.

finding-groove-too-deep = Zwischen der Nut ({ $depth } tief) und dem Zapfen ({ $plug } Durchmesser) bleiben nur { $measured } Holz. Es sollten { $limit } sein.
    .why = Dort bricht die Scheibe, wenn die Nut geschnitten oder der Zapfen eingeschlagen wird.
    .remedy = Die Nut weniger tief schneiden oder den Boden größer machen.

finding-groove-cheek-thin = Das Holz über und unter der Nut ist { $measured } dick. Es sollten { $limit } sein.
    .why = Eine dünne Wange bricht aus, wenn eine Stake schräg hineingedrückt wird.
    .remedy = Den Boden dicker machen.

finding-staves-overlap-in-groove = Die Füße sind { $measured } breit, aber { $count } davon haben am Grund der Nut nur je { $limit }.
    .why = Die letzten Staken gehen nicht hinein, oder sie schieben sich auf ihre Nachbarn.
    .remedy = Die Staken auf einen schmaleren Fuß verjüngen oder weniger nehmen.

finding-foot-too-thin = Die { $count } Staken verjüngen sich auf Füße von { $measured }. Unter { $limit } brechen sie.
    .why = Ein dünner Fuß knickt an der Kante der Nut, sobald die Stake aufgebogen wird.
    .remedy = Den Fuß breiter lassen; wo die Nut dafür keinen Platz hat, weniger Staken nehmen.

finding-gap-too-small = Die Lücke zwischen den Staken ist hier { $measured }, aber { $weaver } ist { $limit } dick.
    .why = Der Flechtfaden kommt nicht durch die Lücke. Er knickt, oder er drückt die Staken auseinander, und der Korb wächst.
    .remedy = Weniger Staken nehmen.

finding-gap-too-wide = Die Lücke zwischen den Staken ist hier { $measured }. Sie sollte nicht weiter sein als { $limit }.
    .why = Über einer weiten Lücke hat { $weaver } keinen Halt: die Wand ist weich, und die Reihen rutschen herunter.
    .remedy = Mehr Staken nehmen.

finding-stave-too-stiff = Staken aus { $stock } ({ $thickness } dick) biegen sich eingeweicht auf einen Radius von { $radius }, und dafür ist zwischen Nut und Wand kein Platz. Am Fuß schwingen sie um { $measured } von der Form ab und liegen erst ab { $touch } an. Bis { $limit } sieht man es nicht.
    .why = Die ersten Reihen laufen um einen Fuß, der weiter ist als die Form, und der Korb behält diesen Bauch.
    .remedy = Der Biegung Platz geben: ein kleinerer Boden oder eine Form mit weiterem Fuß, oder ein dickerer Boden. Oder dünneres Material nehmen, oder die Füße gut einweichen und in der Biegung dünner machen. Eingeweicht und dünner gemacht biegt sich Peddigrohr um eine Kante vom 1 1/2- bis 2-fachen seiner Dicke, das sind 20 bis 25 % Dehnung, und Flechtrohr verträgt über 30 %; diese Werte sind aus dem Gedächtnis, das eigene Probestück ersetzt sie.

finding-stave-too-short = Die Staken sind { $measured } lang. Nut, Biegung, Wand und Rand brauchen { $needed }; mit einem Griff zum Ziehen und Abschneiden sind es { $limit }.
    .why = Eine Stake, die unter der Oberkante des Rands endet, wird von ihm nicht gehalten.
    .remedy = Die Staken länger schneiden.

finding-stave-wasteful = Die Staken sind { $measured } lang; { $limit } wären reichlich.
    .why = Über alle Staken werden { $waste } Material abgeschnitten und weggeworfen.
    .remedy = Die Staken kürzer schneiden.

finding-stave-count-surprising = Der Korb hat { $measured ->
        [one] eine Stake
       *[other] { $measured } Staken
    }. Übliche Zahlen auf einer Form liegen zwischen 21 und 151.
    .why = Es kann gewollt sein. Es kann auch ein Versehen in einem Umfang, einer Breite oder einer Lücke sein.
    .remedy = Zahl, Umfänge und Breite der Staken noch einmal ansehen.

finding-weave-does-not-lock = Auf { $measured ->
        [one] einer Stake
       *[other] { $measured } Staken
    } hält { $weave } nicht: nötig ist { $limit }.
    .why = Über die Runden werden manche Staken immer nur auf einer Seite gekreuzt. Die Reihen stapeln sich dort, statt sich zu kreuzen, und die Wand fällt auseinander.
    .remedy = Eine der Zahlen nehmen, auf denen es geht.

finding-weave-chart-does-not-lock = In { $measured ->
        [one] einer Spalte
       *[other] { $measured } Spalten
    } des Flechtbilds sind alle Zeichen gleich, zuerst in Spalte { $column } von links.
    .why = Der Flechtfaden kreuzt eine solche Stake nie: sie steht lose auf einer Seite der Wand, bei jeder Stakenzahl.
    .remedy = Jeder Spalte des Flechtbilds sowohl ein Zeichen für den Flechtfaden als auch eines für die Stake geben; am schnellsten hilft eine Reihe mehr.

finding-weave-mend = Auf { $measured } Staken ginge { $weave } so: { $mend }.
    .why = { $look }
    .remedy = Wenn dieses Aussehen gefällt, den Abschnitt oder die Staken ändern.

finding-weave-seam = In { $weave } endet jede Reihe anders, als sie begann: { $measured } Staken sind kein Vielfaches von { $limit }.
    .why = Wo Reihen beginnen und enden, steigt ein Fehler die Wand hinauf: ein Sprung, der zu lang oder zu kurz ist.
    .remedy = Eine Zahl nehmen, die ein Vielfaches ist, oder die Linie hinnehmen und nach hinten drehen.

finding-weave-chase-uneven = Auf { $measured } Staken folgen die Fäden in { $weave } einander nicht gleichmäßig.
    .why = In jeder Runde liegt ein Faden falsch über dem darunter, und das Muster bricht.
    .remedy = Eine Zahl nehmen, auf der sie einander gleich folgen.

finding-weave-leans-other-way = Auf { $measured } Staken neigt sich { $weave } nach { $lean }, nicht nach { $wanted }.
    .why = Das Auge folgt den Feldern, die sich berühren oder am nächsten liegen. In einem Geflecht, das von Reihe zu Reihe weiterläuft, bestimmt allein die Zahl ihre Lage; Reihe für Reihe bestimmt sie der Schritt.
    .remedy = Eine Zahl oder einen Schritt nehmen, bei dem es sich wie gewünscht neigt.

finding-weave-no-diagonal = Auf { $measured } Staken hält { $weave }, aber es gibt keine Schräge: keine Linie steigt mehr zur einen als zur anderen Seite.
    .why = Das bestimmen allein Zahl und Bindung. Es kann gewollt sein: es gibt kleine Würfel oder Punkte.
    .remedy = Für eine Schräge eine andere Zahl nehmen.

finding-weave-skips-none = Auf { $measured } Staken, einer ungeraden Zahl, wird nichts ausgelassen: es ist einfaches Zäunen.
    .why = Die Spirale aus längeren Sprüngen entsteht nur auf einer geraden Zahl.
    .remedy = Eine gerade Zahl nehmen oder es einfaches Zäunen nennen.

finding-weave-chart-missing = Dieser Abschnitt ist von Hand gezeichnet, aber sein Flechtbild ({ $file }) wurde nicht gelesen.
    .why = Ohne Flechtbild gibt es nichts zu flechten.
    .remedy = Das Flechtbild in der Vorlage angeben.

finding-weave-start-past-count = Dieser Abschnitt beginnt an Stake { $measured }, aber es gibt { $limit } Staken.
    .why = Er beginnt stattdessen weiter herum, an einer Stake, die niemand gewählt hat.
    .remedy = An einer Stake beginnen, die es gibt.

finding-weave-float-staves = In { $weave } läuft der längste Sprung an { $measured } Staken vorbei, ohne die Seite zu wechseln. Mehr als { $limit } ist locker.
    .why = Ein langer Sprung bleibt hängen, und die Staken darunter wandern.
    .remedy = Einen kürzeren Sprung nehmen.

finding-weave-float-rows = In { $weave } liegt eine Stake { $measured } Reihen lang auf einer Seite. Mehr als { $limit } ist locker.
    .why = Reihen rutschen, wo nichts sie kreuzt, und die Stake beult sich aus der Wand.
    .remedy = Einen kürzeren Sprung nehmen.

finding-course-empty = Dieser Abschnitt hat keine Reihen: er würde enden, bevor er bei { $from } beginnt.
    .why = Die Vorlage verlangt etwas, das sich nicht flechten lässt.
    .remedy = Den Abschnitt höher enden lassen oder streichen.

finding-rows-do-not-fill = Nach { $rows ->
        [one] einer Reihe
       *[other] { $rows } Reihen
    } lässt der Rand { $measured } der Form frei. Ein Viertel der Wand sind { $limit }.
    .why = Der Korb endet weit unter dem Rand seiner Form: Höhe, Inhalt und Öffnung sind nicht die der Form.
    .remedy = Mehr Reihen flechten.

finding-rows-past-the-top = Die Oberkante des Rands kommt auf { $measured } an der Wand entlang, { $past } über das Ende der Form bei { $top } hinaus. Vom Rand, der { $rim } breit ist, darf { $over } darüber stehen: Er sollte höchstens auf { $limit } kommen.
    .why = Über der Form hält nichts die Gestalt des Geflechts, und nichts stützt Reifen, die an ihrem Platz gebogen werden.
    .remedy = Tiefer aufhören zu flechten.

finding-strand-too-short = Ein Faden { $weaver } ist { $measured } lang. Zwischen zwei Ansätzen sollte er mindestens { $limit } liegen, eine halbe Runde.
    .why = Bei mehr als zwei Ansätzen je Runde liegen sie unweigerlich übereinander, und Überlappungen von vier Staken lassen dazwischen keinen einfachen Faden. Mengen und Ansätze gelten für Fäden von { $limit }.
    .remedy = Längere Fäden nehmen.

finding-strand-count-surprising = Dieser Abschnitt braucht { $strands } Fäden { $weaver } (je { $strand }) mit { $joins ->
        [one] einem Ansatz
       *[other] { $joins } Ansätzen
    }: einem { $measured ->
        [one] in jeder Reihe
       *[other] alle { $measured } Reihen
    }.
    .why = So viele Ansätze kosten Zeit, und man sieht sie. Bei kurzem Material kann es stimmen; es kann auch ein Versehen in der Fadenlänge sein.
    .remedy = Einen Flechtfaden nehmen, den es länger gibt.

finding-weaver-bends-hard = In Reihe { $row } geht { $weaver } ({ $thickness } dick) durch eine Lücke von { $gap } zwischen Staken von { $stave } Dicke. Selbst der sanfteste Bogen dort (Radius { $radius }) dehnt das Material um { $measured }. Feucht, über die Kante einer Stake, verträgt es etwa { $limit }.
    .why = Es reißt auf seiner Außenseite, oder es knickt und steht von den Staken ab. Der Grenzwert ist ein Anhalt aus dem Gedächtnis: ein feuchtes Probestück über die Kante einer Stake biegen.
    .remedy = Einen dünneren Flechtfaden nehmen oder eine weitere Lücke lassen, und gut eingeweicht flechten.

finding-hoop-bent-too-hard = Auf den Rand gebogen (Radius { $radius }), dehnt sich { $stock } ({ $thickness } dick) um { $measured }. Eingeweicht verträgt es { $limit }.
    .why = Der Reifen reißt oder knickt beim Biegen.
    .remedy = Dünneres Material für den Reifen nehmen, oder eine Form, die runder ist, wo er sich am meisten biegt.

finding-lap-too-short = Die Enden des Reifens überlappen auf { $measured }. Bei Material von { $thickness } Dicke verlangt eine Schäftung { $limit }, das Achtfache der Dicke.
    .why = Eine kurze Schäftung ist steil: man sieht sie als Beule, und sie öffnet sich unter der Umwicklung.
    .remedy = Die Schäftung länger machen.

finding-scarf-under-ear = Die Schäftung (Staken { $from } bis { $to }) kommt { $end } auf { $measured } nahe. Sie sollte { $limit } Abstand halten.
    .why = Wo die Schäftung mit { $end } zusammentrifft, wird der Rand dick, und der Stift geht durch dünne Enden.
    .remedy = Die Schäftung kürzer machen, damit sie frei bleibt.

finding-scarfs-together = Die Schäftungen der beiden Reifen liegen { $measured } auseinander. Es sollten { $limit } sein.
    .why = Zwei dünne Stellen auf einer Seite machen den Rand dort schwach und uneben.
    .remedy = Die Schäftung kürzer machen.

finding-stock-cannot-yield = Das Stück ist { $measured } lang, aber ein Stück { $stock } misst { $limit }.
    .why = Dieses Teil lässt sich unterwegs nicht ansetzen.
    .remedy = Material nehmen, das es länger gibt, oder von Hand ein längeres Stück heraussuchen.

finding-filler-short = Ein Stück { $stock } misst { $measured }, aber dieses Stück Randfüllung { $limit }.
    .why = Die Randfüllung endet zu früh, und die Spitzen der Staken sind zu sehen.
    .remedy = Eine Randfüllung nehmen, die es länger gibt, oder zwei Stücke unter einer Windung stoßen.

finding-filler-too-narrow = Die Randfüllung ({ $stock }) ist { $measured } breit, aber die Spitzen der Staken sind { $limit } dick.
    .why = Auf einer Seite der Randfüllung sind die Spitzen zu sehen.
    .remedy = Eine breitere Randfüllung nehmen.

finding-lashing-short = Ein Faden { $weaver } ({ $strand }) lässt zwischen seinen Enden { $measured }. Ein Viertel der Umwicklung sind { $limit }.
    .why = Die Umwicklung braucht { $strands } Fäden, und jeder Ansatz darin kann sich lösen.
    .remedy = Einen Umwickelfaden nehmen, den es länger gibt.

finding-lashing-tail-short = Die Enden der Umwicklung sind { $measured } lang. { $limit } halten.
    .why = Ein kurzes Ende zieht sich hinter dem Rand heraus, wenn das Flechtrohr trocknet.
    .remedy = Längere Enden lassen.

finding-pin-too-short = Die Stifte ({ $pin }) sind { $measured } lang. Der Rand ist { $stack } dick, und mit genug zum Umlegen sind es { $limit }.
    .why = Ein Stift, der nicht durchreicht, lässt sich nicht umlegen und arbeitet sich heraus.
    .remedy = Längere Stifte nehmen.

finding-ear-pin-too-short = Die Stifte, die den Henkel halten ({ $pin }), sind { $measured } lang. Was sie durchdringen, ist { $stack } dick, und mit genug zum Umlegen sind es { $limit }.
    .why = An diesen beiden Stiften hängt der Henkel am Rand: Sie müssen durchreichen und umgelegt werden.
    .remedy = Dünner machen, was sie durchdringen, oder längere Stifte nehmen.

finding-pin-splits-stave = Die Löcher für die Stifte ({ $pin }) sind { $measured } weit, in Staken von { $width } Breite. Mehr als { $limit } spaltet sie.
    .why = Eine gespaltene Stake wird von ihrem Stift nicht mehr gehalten.
    .remedy = Dünnere Stifte nehmen.

finding-pins-far-apart = Zwischen den Staken { $from } und { $to } stehen die Stifte { $measured } auseinander. Wo sonst nichts den Rand bindet, sind { $limit } das Äußerste.
    .why = Ohne Umwicklung halten allein die Stifte die Reifen. Zwischen zweien, die weit auseinanderstehen, klaffen sie, und Reihen heben sich.
    .remedy = Mehr Staken verstiften oder den Rand umwickeln.

finding-pin-misses-stave = Dieses Ohr sitzt { $off } neben Stake { $stave }, sodass nur { $measured } der Stake dahinter liegen. Ein Stift braucht { $limit }.
    .why = Der Stift des Ohrs geht an der Stake vorbei und hält nur in den Reifen.
    .remedy = Die Ohren dorthin setzen, wo sie eine Stake hinter sich haben.

finding-ears-off-opposite = Die Ohren ({ $placing }) verfehlen das Gegenüber um { $measured }, { $off } am Rand entlang. Die meisten nehmen { $limit } hin.
    .why = Die Linie von Ohr zu Ohr verfehlt die Mitte des Korbs um { $middle }: der Henkel sitzt schief, und der Korb hängt nach einer Seite.
    .remedy = Die Ohren so setzen, dass sie einander gegenüberstehen.

finding-ear-too-wide = Die Ohren sind { $measured } breit, die Staken { $stave }. Eine Stake mit ihren Lücken gibt hier { $limit }.
    .why = Eine Angel, die breiter ist als { $tail }, geht neben ihrer Stake nicht hinunter, ohne die Nachbarn zu verdrängen.
    .remedy = Die Ohren schmaler machen oder ihre Angeln verjüngen.

finding-ear-tail-short = Die Angeln der Ohren sind { $measured } lang. { $limit } halten.
    .why = Was ein Ohr hält, bis sein Stift sitzt, und es danach stützt, ist die Angel. { $rows ->
        [0] Diese ist eingeschoben, und sonst hält sie nichts.
        [one] Nur eine Reihe geht darüber.
       *[other] Nur { $rows } Reihen gehen darüber.
    }
    .remedy = Die Angeln länger machen.

finding-ear-tail-too-long = Die Angeln der Ohren sind { $measured } lang. Vom Rand bis zum Boden sind es { $limit } Wand.
    .why = Die Angel käme am Boden wieder heraus.
    .remedy = Die Angeln kürzer machen oder die Ohren als Staken hinunterlaufen lassen.

finding-ear-tail-too-thick = Die Ohren sind unter dem Rand { $measured } dick, die Staken { $stave }. Bis { $limit } geht es.
    .why = Die Reihen über der Angel und die Reifen daneben stehen ab, und der Korb bekommt eine Beule.
    .remedy = Die Ohren dünner machen.

finding-ear-hole-near-edge = Ein Loch von { $drill } lässt in einem Ohr von { $width } Breite auf jeder Seite { $measured }. Es sollte { $limit } lassen.
    .why = Das Ohr bricht am Loch aus.
    .remedy = Die Ohren breiter machen.

finding-handle-fouls-rim = Zwischen dem Ende des Henkels und dem Rand sind beim Schwenken { $measured } Platz. Nötig sind { $limit }.
    .why = Der Henkel scheuert die Umwicklung durch oder schwenkt gar nicht. Sein Drehpunkt liegt { $pivot } über dem Rand, und der Henkel ist { $width } breit.
    .remedy = Das Nietloch im Ohr höher setzen.

finding-handle-cannot-fold = Umgelegt kommt der Henkel { $measured } über der Waagrechten auf dem Rand zu liegen. Bis { $limit } schadet es nicht.
    .why = Sein Drehpunkt liegt nur { $pivot } über dem Rand, und er ist { $width } breit; so steht er einem Deckel, einem Tuch und dem nächsten Korb im Stapel im Weg.
    .remedy = Das Nietloch im Ohr höher setzen.

finding-ear-shows = Zwischen dem Rand und dem Henkel sind { $measured } von jedem Ohr zu sehen. Üblich sind bis { $limit }.
    .why = Mehr vom Ohr sieht aus wie eine Lücke, und der Henkel steht auf dünnem Metall oder Holz.
    .remedy = Die Enden des Henkels weiter hinabreichen lassen.

finding-handle-end-short = Jenseits der Mitte seines Lochs endet der Henkel nach { $measured }. Ein Loch von { $drill } braucht { $limit }.
    .why = So nah am Ende spaltet das Holz aus, spätestens wenn der Korb gehoben wird.
    .remedy = Weniger vom Ohr zeigen oder das Loch höher setzen.

finding-handle-cheek-thin = Neben dem Ohr bleiben auf jeder Seite { $measured } vom Henkel; er ist { $thickness } dick. Nötig sind { $limit }.
    .why = Dünne Wangen spalten beim Bohren oder wenn der Niet geschlossen wird.
    .remedy = Einen dickeren Henkel oder dünnere Ohren nehmen oder den Henkel außen an die Ohren setzen.

finding-handle-ends-long = Die Enden des Henkels reichen { $measured } unter den Rand hinab. Die Wand hat Platz für { $limit }.
    .why = Am Fuß biegt die Wand zum Boden ab, und ein gerades Ende drückt die Staken nach außen.
    .remedy = Die Enden kürzer machen.

finding-knob-fouls-rim = Zwischen dem Knopf ({ $width } Durchmesser) und dem Rand sind { $measured } Platz. Nötig sind { $limit }.
    .why = Der Knopf drückt auf die Umwicklung oder geht gar nicht hin. Seine Mitte liegt { $pivot } über dem Rand.
    .remedy = Das Loch im Ohr höher setzen oder kleinere Knöpfe nehmen.

finding-bail-bent-too-hard = Wo er sich am stärksten biegt, auf einen Radius von { $radius }, dehnt sich der Henkel ({ $thickness } dick) um { $measured }. Gedämpftes Hartholz verträgt { $limit }.
    .why = Seine Außenseite splittert beim Biegen oder bricht dort später.
    .remedy = Den Henkel dünner machen oder zu einem runderen Bogen biegen.

finding-handle-uneven = Der Henkel neigt sich um { $measured }. Mehr als { $limit } sieht das Auge.
    .why = Die Stellen, an denen er steht, liegen einander nicht gegenüber, und der Scheitel des Henkels liegt nicht über der Mitte des Korbs.
    .remedy = Die Ohren so setzen, dass sie einander gegenüberstehen; ein fester Henkel braucht eine gerade Anzahl Staken oder mehr davon.

finding-rivet-too-short = Der Niet ({ $rivet }) ist { $measured } lang. Er geht durch { $grip }, und mit einem Kopf sind es { $limit }.
    .why = Ohne genug Metall wird der Kopf klein, und der Henkel arbeitet sich los.
    .remedy = Einen längeren Niet nehmen oder dünner machen, wodurch er geht.

finding-lid-clearance = Was vom Deckel in den Korb geht, misst { $inner }, die Öffnung im umwickelten Rand { $opening }: ringsum { $measured } Luft, gewünscht sind { $limit }.
    .why = Holz und Rohr wachsen in feuchter Luft, und ein Deckel ohne Luft klemmt oder geht gar nicht hinein.
    .remedy = Die Form des Deckels kleiner machen oder weniger Luft wünschen.

finding-lid-clearance-cap = Der Korb unter dem Stülpdeckel misst { $inner }, dessen Öffnung { $opening }: ringsum { $measured } Luft, gewünscht sind { $limit }.
    .why = Holz und Flechtrohr wachsen in feuchter Luft; ein Stülpdeckel ohne Luft klemmt oder geht gar nicht darüber.
    .remedy = Die Form des Deckels größer machen oder weniger Luft wünschen.

finding-lid-cap-shallow = Der Stülpdeckel reicht { $measured } über den Rand hinab; { $limit } halten ihn.
    .why = Ein Stülpdeckel, der kaum über den Rand reicht, rutscht ab.
    .remedy = Die Form des Deckels höher machen.

finding-lid-not-flush = Der Rand des Deckels misst { $lid } und liegt ringsum { $measured } neben dem des Korbs; mehr als { $limit } fühlt die Hand.
    .why = Ein Deckel, der bündig auf dem Rand liegt, zeigt jeden Unterschied der beiden Ränder.
    .remedy = Die Form des Deckels so groß machen, wie es der Rand des Korbs verlangt.

finding-lid-on-ears = Ohren oder ein Henkel stehen im Rand, wo der Deckel ({ $fit }) liegen soll.
    .why = Der Deckel kommt nicht bis auf den Rand hinunter.
    .remedy = Den Deckel zwischen ihnen in den Rand legen oder den Henkel weglassen.

finding-lid-ledge-narrow = Zur Seite geschoben liegt der Deckel { $measured } auf seiner Auflage aus { $rings } × { $stock }; sicher sind { $limit }.
    .why = Ist die Auflage schmaler, als der Deckel sich bewegen kann, fällt er hinein.
    .remedy = Die Auflage aus dickerem Material biegen.

finding-lid-too-flat = Der Deckel ist vom Deckelboden zum Rand über { $way } flach geflochten und steigt darauf um { $measured }; { $limit } halten ihn.
    .why = Breites flaches Geflecht sinkt in der Mitte ein, wenn es feucht wird oder etwas darauf liegt.
    .remedy = Das Brett wölben: dem Deckel etwas mehr Höhe geben oder einen größeren Deckelboden.

finding-lid-under-handle = Zwischen dem Griff des Deckels und dem Henkel darüber sind { $measured } Luft; eine Hand braucht { $limit }.
    .why = Ein Deckel, den niemand fassen kann, bleibt zu.
    .remedy = Den Henkel höher machen oder den Deckel flacher.

nest-has = { $inner } hat { $room } Luft in { $outer }
nest-lacks = { $inner } ist ringsum { $over } zu weit für { $outer }
nest-serves = Die äußere Form mindestens { $least } weit machen.
nest-none-serves = Keine etwas größere Form als { $outer } fand sich, die { $inner } aufnimmt: eine größere angeben.

finding-nest-clearance = { $stands }; ringsum sind { $limit } gewünscht.
    .why = Ein Korb, den man hineindrücken muss, scheuert seine Bindung und die des anderen, oder er bleibt draußen.
    .remedy = { $mend }

finding-note-without-step = Die Vorlage hat eine Notiz zum Schritt „{ $measured }“, der keiner der { $limit } Schritte dieses Korbs ist.
    .why = Die Notiz steht auf keinem Blatt.
    .remedy = Die Notiz einem anderen Schritt geben oder streichen.
