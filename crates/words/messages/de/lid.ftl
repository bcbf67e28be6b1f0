# Der Deckel: was zu tun ist, wenn er selbst geflochten ist.

step-lid = Auflage, Griff und Passung
step-lid-text-ledge = { $rings ->
        [one] Einen Ring
       *[other] { $rings } Ringe
    } aus { $stock } biegen, der innen unter den Innenreifen des Korbs passt, mit geleimten Schäftungen von { $lap }: fertig innen { $inside } weit.
step-lid-text-ledge-flat = Die Ringe liegen ineinander, flache Seite an flacher Seite; zu einem Ring verleimen.
step-lid-text-ledge-fix = Die Auflage ringsum gleich hoch gegen den Innenreifen schieben, leimen und an jeder zehnten Stake mit feinem Flechtrohr annähen. Der Deckel liegt { $overlap } auf, auch wenn er zur Seite geschoben ist.
step-lid-text-knob = Den Zapfen des Knaufs von außen in das Loch von { $hole } im Deckelboden leimen.
step-lid-text-loop = Das Flechtrohr zweimal durch das Loch von { $hole } im Deckelboden ziehen, außen einen Finger hoch, die Enden innen einstecken und das Loch mit Leim und einem Pflock schließen.
step-lid-text-plug = Das Loch von { $hole } im Deckelboden mit seinem Zapfen schließen.
step-lid-text-try = Den Deckel mit dem Boden nach oben einsetzen, in jeder Lage. Ringsum sollen { $clearance } Luft sein; er steht { $rises } über den Rand.
step-lid-text-alike = Ein Ende von Deckel und Korb innen gleich zeichnen, damit der Deckel stets so liegt, wie er eingepasst wurde. Die Windungen beider Ränder steigen nach derselben Seite.
