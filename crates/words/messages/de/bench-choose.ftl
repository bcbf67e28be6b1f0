### Texte der Seite, wo etwas nach dem Sehen gewählt wird.

## Choosing a material

bench-stock-heading = Wählen: { $what }
bench-stock-hint = Jedes ist quer geschnitten gezeichnet, etwa in wahrer Größe.
bench-stock-all = Alle Materialien ({ $count } weitere)
bench-own = Eigenes hinzufügen, wie du es gemessen hast
bench-own-hint = Peddigrohr und Flechtrohr fallen verschieden aus. Was du nicht misst, ist wie bei dem, dem es gleicht.
bench-own-name = Wie du es nennst
bench-own-like = Gleicht
bench-own-width = Breite mit Einheit: 6,1 mm, 1/4 in
bench-own-thickness = Dicke mit Einheit
bench-own-make = Hinzufügen und hier nehmen
bench-own-taken = Ein Material { $name } gibt es schon. Gib ihm einen anderen Namen.

## A first basket

bench-first = Ein erster Korb, in fünf Fragen
bench-first-fact = man muss vorher nichts wissen
bench-first-text = Beantworte, was du weißt. Alles andere wird für dich gewählt und lässt sich danach ändern.
bench-first-q-mould = 1. Hast du eine Form?
bench-first-q-mould-hint = Der Holzklotz, über dem der Korb geflochten wird.
bench-first-mould-guessed = Noch nicht, oder nicht gemessen
bench-first-mould-measured = Ja, mit dem Maßband gemessen
bench-first-q-size = 2. Wie groß?
bench-first-q-size-hint = Eine Zahl genügt: 180, oder 7 1/2.
bench-first-across = Durchmesser am Rand
bench-first-high = Höhe (kann offen bleiben)
bench-first-base = Umfang am Boden
bench-first-top = Umfang oben
bench-first-tall = Vom Boden bis oben
bench-first-units = Gemessen in
bench-first-in = Zoll
bench-first-mm = Millimeter
bench-first-no-size = Sag, wie groß er werden soll.
bench-first-q-staves = 3. Was hast du für Staken?
bench-first-q-staves-hint = Staken sind die senkrechten Streifen, um die der Flechtfaden geht.
bench-first-staves-which = Staken
bench-first-staves-any = Was passt
bench-first-q-look = 4. Wie soll er aussehen?
bench-first-q-look-hint = Die Bilder sind auf einem Korb deiner Größe geflochten. Wähle keines, und er wird schlicht.
bench-first-q-handle = 5. Ein Henkel?
bench-first-q-handle-hint = Er kann später noch dazu oder weg.
bench-first-handle-none = Keiner
bench-first-handle-swing = Einer zum Klappen
bench-first-handle-fixed = Einer fest im Rand
bench-first-handle-knob = Zwei Knäufe
bench-first-name = Name des Korbs
bench-first-make = Vorlage machen
bench-first-others = Anders beginnen
bench-which-of = { $what } { $number }
bench-add-which = { $what } ergänzen
bench-remove = Entfernen
bench-remove-which = { $what } entfernen

## Choosing a weave by its look

bench-ways-heading = Wie soll Abschnitt { $number } aussehen?
bench-ways-now = Jetzt: { $seen }.
bench-ways-asking = Wird auf diesem Korb geflochten …
bench-ways-found = { $count ->
        [0] Diese Farben ergeben das auf keiner Zahl nahebei. Nimm andere Farben oder ein anderes Aussehen.
        [one] Ein Weg, auf diesem Korb geflochten. Drücken übernimmt ihn.
       *[other] { $count } Wege, jeder auf diesem Korb geflochten. Drücken übernimmt einen.
    }
bench-ways-draw = Selbst zeichnen
bench-way-staves = { $count } Staken
bench-wish-colours = Farben
bench-wish-colours-hint = Staken sind naturfarben. Drücke eine oder zwei Farben für den Flechtfaden; noch einmal nimmt sie weg.
bench-wish-look = Aussehen
bench-wish-side = Zu welcher Seite
bench-wish-turns = Umläufe (kann offen bleiben)
bench-side-left = Nach links
bench-side-right = Nach rechts
bench-look-spiral = Spirale
bench-look-columns = Säulen
bench-look-bands = Bänder
bench-look-checks = Würfel
bench-look-arrows = Pfeile
bench-look-plain = Schlicht

## Counts of staves

bench-counts = Zahlen nahebei
bench-counts-label = Stakenzahlen nahebei, und was auf jeder aufgeht
bench-counts-runs = { $count } Staken: Jeder Abschnitt geht auf; { $seen }; Lücke am Rand { $gap }.
bench-counts-fails = { $count } Staken: Nicht jeder Abschnitt geht auf; { $seen }; Lücke am Rand { $gap }.
bench-counts-change-seen = Aussehen: { $after } statt { $before }.
bench-counts-change-gap = Lücke: { $after } statt { $before }.
bench-counts-change-width = Breite einer Stake: { $after } statt { $before }.

## A weave drawn by hand

bench-draw-hint = Drücke eine Kreuzung, und der Faden geht darüber oder darunter; ziehe, um mehrere zu zeichnen. Das Stück wiederholt sich um den Korb.
bench-draw-grid = Das gezeichnete Geflecht; Pfeiltasten gehen von Kreuzung zu Kreuzung, die Leertaste wendet eine
bench-draw-over = Reihe { $row }, Stake { $stave }: darüber
bench-draw-under = Reihe { $row }, Stake { $stave }: darunter
bench-draw-width = Staken im Rapport
bench-draw-width-minus = Eine Stake weniger im Rapport
bench-draw-width-plus = Eine Stake mehr im Rapport
bench-draw-height = Reihen im Rapport
bench-draw-height-minus = Eine Reihe weniger im Rapport
bench-draw-height-plus = Eine Reihe mehr im Rapport
bench-draw-mirror = Links und rechts vertauschen
bench-draw-flip = Auf den Kopf
bench-draw-swap = Darüber und darunter vertauschen
bench-draw-shift = Um eine Stake weiter
bench-draw-repeat = Verdoppeln
bench-draw-holds = Es hält: Jede Stake liegt auf beiden Seiten, und kein Sprung ist zu lang.
