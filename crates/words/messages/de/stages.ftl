### Unterschriften und Beschreibungen der Bilder vom Werdegang.

plate-base-on-mould = Der Boden auf der Form, Unterseite nach außen (Boden oben gezeichnet)
    .alt = Die Form steht mit dem Fuß nach oben; darauf liegt der runde Boden mit dem Schraubenloch in der Mitte und der Nut ringsum im Rand.
plate-staves-set = Alle { $count } Staken in der Nut, von einem Band gehalten (Boden oben gezeichnet)
    .alt = { $count } Staken stehen rings um die Form, die Füße in der Nut des Bodens, am Boden dicht beisammen und zum Rand hin weiter auseinander, nahe am Rand von einem Band umfasst.
plate-first-rows = { $rows ->
        [one] Die erste Reihe
       *[other] Die ersten { $rows } Reihen
    } (Boden oben gezeichnet)
    .alt = Gleich am Boden laufen die ersten Reihen vor und hinter { $count } Staken; das Band hält die Staken noch nahe am Rand.
plate-half-woven = Halb geflochten: { $rows } Reihen (Boden oben gezeichnet)
    .alt = { $rows } Reihen bedecken die Wand vom Boden bis zur halben Höhe; darüber hinaus stehen die Staken frei unter ihrem Band.
plate-join = Ein Ansatz in Reihe { $row }: der alte Faden ist vor Stake { $cut } abgeschnitten, der neue beginnt hinter Stake { $start } (Boden oben gezeichnet, bevor der neue Faden angedrückt ist)
    .alt = Ein Stück der Wand von außen. Der neue Faden, hell, beginnt hinter Stake { $start } und liegt über dem alten, dunklen, der vor Stake { $cut } endet.
plate-woven = Fertig geflochten: { $rows } Reihen auf { $count } Staken (Boden oben gezeichnet)
    .alt = { $rows } Reihen bedecken die Wand; die Spitzen von { $count } Staken stehen über die letzte Reihe hinaus.
plate-ears-set = Die Ohren sind gesetzt, an den Staken { $first-ear } und { $second-ear }
    .alt = Der Korb mit dem Boden nach unten. Zwei Ohren stehen einander zwischen den Spitzen der Staken gegenüber, die Angeln im Geflecht.
plate-hoops-scarfed = Beide Reifen gebogen und geschäftet, über ihrem Platz; der innere ist hier der untere
    .alt = Der Korb und darüber zwei geschlossene Reifen, zuerst der innere, dann der äußere, jeder mit einer langen verjüngten Überlappung.
plate-scarf-close-up = Die Schäftung des Außenreifens, zwischen den Staken { $from } und { $to }
    .alt = Der Rand von außen und oben. Ein Ende des Außenreifens läuft über dem anderen zu nichts aus, das sich darunter verjüngt, sodass beide zusammen eine Dicke behalten.
plate-rim-clamped = Beide Reifen an ihrem Platz auf der letzten Reihe
    .alt = Der Korb mit einem Reifen außen und einem innen an den Staken, auf der letzten Reihe stehend; die Spitzen der Staken ragen darüber hinaus.
plate-tips-trimmed = Die Spitzen bündig mit den Reifen abgeschnitten
    .alt = Der Rand von außen und oben: die Spitzen der Staken zwischen beiden Reifen, bündig mit deren Oberkanten geschnitten.
plate-pinned = Alle { $pins } Stifte gesetzt
    .alt = Der Korb mit abgeschnittenen Spitzen; die Köpfe der Stifte stehen in einer Reihe rings um den Außenreifen.
plate-pin-and-clinch = Ein Stift von außen und von innen
    .alt = Zwei Stücke des Rands. Links, von außen, der gewölbte Kopf eines Stifts auf dem Außenreifen; rechts, von innen, seine umgelegte Spitze auf dem Innenreifen.
plate-lashed = Randfüllung und Umwicklung: { $wraps } Windungen
    .alt = Der Korb mit gebundenem Rand: { $wraps } Windungen Flechtrohr um beide Reifen und die Randfüllung.
plate-lashing-start = Die Umwicklung beginnt: die ersten Windungen
    .alt = Der Rand von außen und oben. Die ersten Windungen Flechtrohr gehen um beide Reifen und die Randfüllung, jede durch eine Lücke zwischen den Staken; der übrige Rand ist noch frei.
plate-lashing-end = Die Umwicklung endet, wo sie begann
    .alt = Der Rand von außen und oben: die letzte Windung Flechtrohr trifft auf die erste.
plate-handled = Der Henkel an die Ohren genietet
    .alt = Der Korb mit aufgerichtetem Henkel, an beide Ohren genietet.
plate-ear-with-rivet = Ohr, Henkel, Scheiben und Niet
    .alt = Ein Ohr, das aus dem umwickelten Rand ragt, außen davor das Ende des Henkels, dazwischen eine Scheibe und durch alles ein Niet.
plate-finished = { $title }, fertig
    .alt = Der fertige Korb: { $count } Staken, { $rows } Reihen, ein umwickelter Rand und, wo vorhanden, Ohren und Henkel.
plate-exploded = Die Teile von { $title }
    .alt = Die Teile des Korbs auseinandergezogen, übereinander, mit ihren Namen: Boden, Wand aus { $count } Staken und { $rows } Reihen und darüber, was Rand und Henkel ausmacht.
plate-cover = { $title }
    .alt = Der fertige Korb: { $count } Staken, { $rows } Reihen, ein umwickelter Rand und, wo vorhanden, Ohren und Henkel.

plate-outside = von außen
plate-inside = von innen
plate-new-strand = neuer Faden
plate-spent-strand = alter Faden
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
