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

# On sheets.
sheet-fact-lid = Deckel
sheet-lid-of = { $across }, { $fit }: { $count } Staken, { $rows } Reihen
sheet-card-lid = Deckel, Staken
sheet-card-lid-note = { $length } lang; { $rows } Reihen
