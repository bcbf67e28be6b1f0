### Unterschriften und Beschreibungen der Bilder vom Werdegang.

plate-base-on-mould = Die Form steht auf ihrem Rand, den Fuß nach oben; der Boden ist aufgeschraubt, die Unterseite nach außen
    .alt = Die Form auf dem Kopf. Auf ihrem Fuß liegt der runde Boden, in seiner Mitte der versenkte Kopf der Schraube und ringsum im Rand die Nut.
plate-staves-set = Alle { $count } Staken in der Nut, von einem Band gehalten; die Form steht noch mit dem Fuß nach oben
    .alt = { $count } Staken stehen rings um die Form, die Füße in der Nut des Bodens, am Boden dicht beisammen und zum Rand hin weiter auseinander, nahe am Rand von einem Band umfasst.
plate-first-rows = { $rows ->
        [one] Die erste Reihe
       *[other] Die ersten { $rows } Reihen
    }, vom Boden aufwärts geflochten; die Form steht jetzt auf dem Boden
    .alt = Form und Korb stehen aufrecht. Gleich über dem Boden { $rows ->
        [one] läuft die erste Reihe
       *[other] laufen die ersten { $rows } Reihen
    } vor und hinter { $count } Staken; das Band hält die Staken noch nahe am Rand.
plate-half-woven = Halb geflochten: { $rows } Reihen
    .alt = { $rows } Reihen bedecken die Wand vom Boden bis zur halben Höhe; darüber stehen { $count } Staken frei an der Form unter ihrem Band.
plate-join = Ein Ansatz in Reihe { $row }: der alte Faden ist vor Stake { $cut } abgeschnitten, der neue beginnt hinter Stake { $start } (gezeichnet, bevor der neue Faden angedrückt ist)
    .alt = Ein Stück der Wand von außen. Der neue Faden, hell, beginnt hinter Stake { $start } und liegt über dem alten, dunklen, der vor Stake { $cut } endet.
plate-woven = Fertig geflochten: { $rows } Reihen auf { $count } Staken
    .alt = { $rows } Reihen bedecken die Wand, noch auf der Form; die Spitzen von { $count } Staken stehen über die letzte Reihe hinaus.
plate-ears-set = Von der Form genommen, die Ohren gesetzt an den Staken { $first-ear } und { $second-ear }
    .alt = Der Korb ohne seine Form. Zwei Ohren stehen einander zwischen den Spitzen der Staken gegenüber, die Angeln im Geflecht.
plate-handle-set = Die Enden des festen Henkels an den Staken { $first-ear } und { $second-ear } hinabgeschoben
    .alt = Der Korb, bevor er seine Reifen hat. Der Henkel steht aufrecht darüber, seine Enden an zwei gegenüberliegenden Staken hinter das Geflecht geschoben.
plate-ears-woven-in = Die Ohren nach Reihe { $rows } auf die Staken { $first-ear } und { $second-ear } gelegt, die Angeln außen; die nächsten Reihen gehen darüber
    .alt = Der Korb auf seiner Form, { $rows } Reihen hoch. Auf zwei gegenüberliegenden Staken liegen Ohren, die Angeln außen bis auf die letzte Reihe.
plate-ears-as-staves = Die Ohren stehen zuerst, an den Plätzen der Staken { $first-ear } und { $second-ear }; die Form steht mit dem Fuß nach oben
    .alt = Die Form kopfüber mit dem Boden darauf. Zwei Ohren stehen einander gegenüber, jedes vom Boden bis über den Rand hinaus.
plate-rings-made = Beide Reifen liegen als Ringe neben dem Korb bereit, der noch auf seiner Form steht
    .alt = Der Korb, { $rows } Reihen hoch, auf seiner Form. Daneben liegen zwei Ringe aus halbrundem Material, einer im anderen, jeder mit einer langen verjüngten Überlappung.
plate-hoops-scarfed = Beide Reifen, geschlossen, über ihrem Platz; der innere ist hier der untere
    .alt = Der Korb und darüber zwei geschlossene Reifen, zuerst der innere, dann der äußere, jeder mit einer langen verjüngten Überlappung.
plate-scarf-close-up = Die Schäftung des Außenreifens, zwischen den Staken { $from } und { $to }
    .alt = Der Rand von außen und oben. Ein Ende des Außenreifens läuft über dem anderen zu nichts aus, das sich darunter verjüngt, sodass beide zusammen eine Dicke behalten.
plate-rim-clamped = Beide Reifen an ihrem Platz auf der letzten Reihe, von { $clamps } Klammern gehalten
    .alt = Der Korb mit einem Reifen außen und einem innen an den Staken, auf der letzten Reihe. { $clamps } Klammern greifen über die Spitzen der Staken und halten beide Reifen.
plate-tips-trimmed = Die Spitzen aller { $count } Staken bündig mit den Reifen abgeschnitten
    .alt = Der Rand von außen und oben: die Spitzen der Staken zwischen beiden Reifen, bündig mit deren Oberkanten geschnitten.
plate-pinned = Alle { $pins } Stifte gesetzt
    .alt = Der Korb mit abgeschnittenen Spitzen; die Köpfe der Stifte stehen in einer Reihe rings um den Außenreifen.
plate-pin-and-clinch = Ein Stift von außen und von innen
    .alt = Zwei Stücke des Rands. Links, von außen, der gewölbte Kopf eines Stifts auf dem Außenreifen; rechts, von innen, sein Ende, über dem Innenreifen zu einem kleinen Kopf vernietet.
plate-lashed = Randfüllung und Umwicklung: { $wraps } Windungen
    .alt = Der Korb mit gebundenem Rand: { $wraps } Windungen Flechtrohr um beide Reifen und die Randfüllung.
plate-lashing-start = Die Umwicklung beginnt: die ersten Windungen, und innen der Anfang des Fadens, hinter dem Innenreifen und über den obersten Reihen
    .alt = Zwei Stücke des Rands. Links, von außen, gehen die ersten Windungen Flechtrohr um beide Reifen und die Randfüllung, jede durch eine Lücke zwischen den Staken; der übrige Rand ist frei. Rechts, von innen, hängt ein dunkles Fadenende unter dem Innenreifen hervor über die obersten Reihen.
plate-lashing-end = Die Umwicklung endet, wo sie begann; ihr Ende kommt zwischen den Reifen herab und ist noch bündig abzuschneiden
    .alt = Der Rand von außen und oben: die letzte von { $wraps } Windungen Flechtrohr trifft auf die erste. Dazwischen hängt ein dunkles Fadenende unter dem Außenreifen hervor.
plate-handled = Der Henkel an die Ohren genietet
    .alt = Der Korb mit aufgerichtetem Henkel, an beide Ohren genietet.
plate-handled-knob = Die Knöpfe an die Ohren genietet
    .alt = Der Korb mit einem gedrehten Knopf, außen an jedes Ohr genietet.
plate-ear-with-rivet = Ohr, Henkel, Scheiben und Niet
    .alt = Ein Ohr, das aus dem Rand ragt, außen davor das Ende des Henkels, dazwischen eine Scheibe und durch alles ein Niet.
plate-ear-with-rivet-slot = Ohr im Schlitz des Henkels, mit seinem Niet
    .alt = Ein Ohr, das aus dem Rand in einen Schlitz im Ende des Henkels ragt, der auf beiden Seiten davon steht, und durch alle drei ein Niet.
plate-ear-with-rivet-between = Ohr zwischen den beiden Hälften des Henkels, mit seinem Niet
    .alt = Ein Ohr, das aus dem Rand zwischen zwei Hälften des Henkels ragt, die sich darüber schließen, und durch alle drei ein Niet.
plate-ear-with-rivet-knob = Ohr, Knopf, Scheiben und Niet
    .alt = Ein Ohr, das aus dem Rand ragt, außen davor ein gedrehter Knopf, dazwischen eine Scheibe und durch beide ein Niet.
plate-lid-fitted = { $title }: der Deckel offen, und worauf er sitzt
    .alt = Der fertige Korb mit offenem Deckel: am Scharnier zurückgeklappt oder abgehoben.
plate-lid-base-on-mould = Deckel: seine Form mit dem Fuß nach oben, der Deckelboden aufgeschraubt
    .alt = Die flache Form des Deckels, umgedreht. Auf ihrem Fuß liegt der Deckelboden, in der Mitte der versenkte Schraubenkopf, ringsum an der Kante die Nut.
plate-lid-staves-set = Deckel: alle { $count } Staken in der Nut des Deckelbodens, von einem Band gehalten
    .alt = { $count } Staken stehen um die flache Form, ihre Füße in der Nut des Deckelbodens, nahe dem Rand von einem Band gehalten.
plate-lid-woven = Deckel: fertig geflochten, { $rows } Reihen auf { $count } Staken
    .alt = { $rows } Reihen bedecken die Wand des Deckels, noch auf seiner Form; die Spitzen von { $count } Staken stehen über die letzte Reihe hinaus.
plate-lid-rim-clamped = Deckel: beide Reifen an ihrem Platz, von { $clamps } Klemmen gehalten
    .alt = Der Deckel mit dem Deckelboden nach unten, ein Reifen außen und einer innen an den Staken, darauf { $clamps } Klemmen.
plate-lid-lashed = Deckel: der Rand gebunden, { $wraps } Windungen
    .alt = Der Deckel mit dem Deckelboden nach unten und gebundenem Rand: { $wraps } Windungen Flechtrohr um beide Reifen.
plate-finished = { $title }, fertig
    .alt = Der fertige Korb: { $count } Staken, { $rows } Reihen, ein Rand und, wo vorhanden, Ohren und Henkel.
plate-exploded = Die Teile von { $title }
    .alt = Die Teile des Korbs auseinandergezogen, übereinander, mit ihren Namen: Boden, Wand aus { $count } Staken und { $rows } Reihen und darüber, was Rand und Henkel ausmacht.
plate-cover = { $title }
    .alt = Der fertige Korb: { $count } Staken, { $rows } Reihen, ein Rand und, wo vorhanden, Ohren und Henkel.

plate-outside = von außen
plate-inside = von innen
plate-new-strand = neuer Faden
plate-spent-strand = alter Faden
plate-part-lid = Deckel
plate-part-handle = Henkel
plate-part-rivet = Niet und Scheiben
plate-part-lashing = Umwicklung
plate-part-filler = Randfüllung
plate-part-outer-hoop = Außenreifen
plate-part-pin = Stifte
plate-part-inner-hoop = Innenreifen
plate-part-ear = Ohren
plate-part-wall = Staken und Geflecht
plate-part-base = Boden und Zapfen
