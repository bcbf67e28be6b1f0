# Materialsätze, Einkaufsliste, Schnittplan und Preise.

workshop-kits = Materialsätze
workshop-labels = Etiketten
workshop-shopping = Einkaufsliste
workshop-cutting = Schnittplan
workshop-price = Preis

# Materialsätze

workshop-batch = Zuzuschneiden, für alle zusammen
workshop-batch-note = Die Reserve ist für alle da: Die Lehrkraft behält sie. Sie reicht in 95 von 100 Kursen.
workshop-student = Platz { $number }
workshop-bag = { $who } – { $title }
workshop-room = Für den Raum
workshop-room-note = Alle teilen es sich; vor dem Kurs bereitlegen.
workshop-soak = vor Gebrauch { $time } einweichen
workshop-piece = Teil
workshop-material = Material
workshop-length = Länge
workshop-bags-hold = In den Tüten
workshop-spares = Reserve
workshop-in-all = Insgesamt
workshop-count = Anzahl
workshop-there = Da
workshop-share = { $bags } × { $each }

# Einkaufsliste

workshop-buy = Zu kaufen
workshop-nothing-to-buy = Alles liegt im Regal; es muss nichts gekauft werden.
workshop-units = { $count } × { $unit }
workshop-in-lengths = { $run }, in Längen von { $lengths }
workshop-feet = { $count } Fuß
workshop-metres = { $count } m
workshop-order-by = Bestellen bis
workshop-when-to-order = Wann bestellen
workshop-for = Für
workshop-needed = Gebraucht am
workshop-order-dyed-by = Gefärbtes bestellen bis
workshop-price-each = Einzeln
workshop-cost = Kosten
workshop-sum = Zusammen: { $sum }
workshop-sum-unknown = Kein Preis bekannt für: { $what }. Die Summe ist ohne sie: { $sum }
workshop-from-shelf = Aus dem Regal
workshop-lot = Im Regal
workshop-takes = Nehmen
workshop-stays = Bleibt
workshop-left = Übrig, wenn alles zugeschnitten ist
workshop-left-whole = { $count ->
    [one] ein Faden oder Stück bleibt ganz
   *[other] { $count } Fäden oder Stücke bleiben ganz
}
workshop-left-ends = Enden, die sich aufzuheben lohnen: { $ends }
workshop-too-long = { $count ->
    [one] ein Stück von { $length } ist länger als jeder Faden: anderes Material wählen oder einen längeren Faden suchen
   *[other] { $count } Stücke von { $length } sind länger als jeder Faden: anderes Material wählen oder längere Fäden suchen
}
workshop-not-planned = das lässt sich nicht planen: eine Länge fehlt, oder es sind zu viele

# Schnittplan

workshop-proven = { $count ->
    [one] Ein Faden wird angeschnitten; weniger reichen nicht.
   *[other] { $count } Fäden werden angeschnitten; weniger reichen nicht.
}
workshop-unproven = { $count ->
    [one] Ein Faden wird angeschnitten.
   *[other] { $count } Fäden werden angeschnitten; mindestens { $bound } sind nötig. Die Suche wurde beendet, bevor feststand, ob weniger reichen.
}
workshop-kerf = Bei jedem Schnitt gehen { $kerf } verloren.
workshop-times = Fäden
workshop-strand = Aus
workshop-pieces = Stücke, lange zuerst
workshop-marks = Am Band markieren bei
workshop-end = Ende
workshop-bought-strand = gekauft, { $length }
workshop-pieces-of = { $count } × { $length }

# Preise

workshop-price-basket = Der Korb
workshop-price-kit = Der Materialsatz
workshop-price-seat = Ein Platz im Kurs
workshop-line = Posten
workshop-amount = Betrag
workshop-line-materials = Material, zum Preis der Neubeschaffung
workshop-line-waste = Verschnitt, { $share } des Materials
workshop-line-labour = Arbeit, { $time } zu { $wage } die Stunde
workshop-line-overhead = Miete, Licht, Versicherung
workshop-line-mould = Abnutzung oder Miete der Form
workshop-line-packing = Verpackung und Versand
workshop-line-cost = Kosten
workshop-line-margin = Aufschlag, { $share } der Kosten
workshop-line-wholesale = Preis an den Laden
workshop-line-retail = Preis im Laden
workshop-line-teaching = Unterricht und Vorbereitung, { $time } zu { $wage } die Stunde, für alle
workshop-line-travel = Anreise, für alle
workshop-line-room = Raum, für alle
workshop-line-kit = der Materialsatz einer Person
workshop-line-venue = Anteil des Hauses, { $share } der Gebühr
workshop-line-fee = Gebühr einer Person
workshop-seat-cost = Kosten einer Person: Materialsatz und Anteil an dem, was für alle ist, bei { $students } Personen
workshop-rounding = Jeder Posten ist auf den Cent gerundet, ein halber Cent nach oben; Summen sind Summen gerundeter Posten.
workshop-rounding-step = Preise sind auf ein Vielfaches von { $step } aufgerundet.
workshop-ten-minutes = Mit zehn Minuten weniger Arbeit, etwa beim Umwickeln, kostet er an den Laden { $price }: { $less } weniger.
workshop-least = { $least ->
    [one] Bei { $fee } deckt eine Person die Ausgaben.
   *[other] Bei { $fee } braucht es { $least } Personen, um die Ausgaben zu decken.
}
workshop-never = Bei { $fee } deckt keine Zahl von Personen die Ausgaben: Jeder Materialsatz kostet mehr, als die Gebühr einbringt.
workshop-target = Bei einem Preis von { $target } beträgt der Aufschlag { $share } der Kosten.
workshop-unpriced = Kein Preis bekannt für: { $what }. Sie fehlen in der Summe; die Preise ins Regal eintragen.

# Größen

workshop-sizes = Größen
workshop-sizes-set = Der Satz
workshop-size = Größe
workshop-size-mould = Weite
workshop-size-high = Höhe
workshop-size-staves = Staken
workshop-size-stave = Stakenmaterial
workshop-size-cane = Flechtmaterial
workshop-size-rows = Reihen
workshop-size-holds = Fasst
workshop-size-holds-text = { $litres } l ({ $quarts } qt)
workshop-nests = Jeder im nächsten
workshop-nests-note = Der innere Korb steht auf dem Boden des äußeren, den Henkel aufgestellt. Ringsum sind { $wanted } gewünscht.
workshop-nest = Welche
workshop-nest-in = { $inner } in { $outer }
workshop-nest-room = Kleinster Spielraum
workshop-nest-at = In der Höhe
workshop-nest-below = Rand tiefer um
workshop-nest-verdict = Passt
workshop-nest-fits = ja
workshop-nest-tight = nein
workshop-for-sizes = Für
workshop-sizes-changed = Was eine andere Größe ändert
workshop-sizes-kept = Alles andere bleibt, wie die Vorlage es hat.
workshop-size-key = Schlüssel
workshop-size-value = Jetzt
workshop-size-why = Warum
workshop-size-out = herausgenommen
sizes-why-scaled = behält sein Verhältnis
sizes-why-stock = nächstes Material seiner Art
sizes-why-anew = neu berechnet
sizes-why-mould = andere Form
sizes-why-title = nennt die Größe

# Bestellungen

workshop-quote = Angebot
workshop-packing-slip = Packzettel
workshop-order-price = Preis
workshop-order-for = Für { $buyer }
workshop-order-baskets = { $count } × { $title }, je { $price }
workshop-order-deposit = Anzahlung, vor Beginn der Arbeit
workshop-order-rest = zu zahlen bei der Übergabe
workshop-order-promised = Fertig bis { $day }.
workshop-order-hand-made = Jeder Korb ist von Hand gemacht: Maße können ein wenig abweichen, Farben von Charge zu Charge.
workshop-order-what = Maß
workshop-order-size = Größe
workshop-order-packed = Im Paket
workshop-order-owed = Noch zu zahlen: { $sum }
workshop-order-paid = Alles ist bezahlt.

# Prüfkarte

workshop-makings-log = Werkbuch
workshop-makings-title = Was gemacht wurde
workshop-makings = { $count ->
    [one] Eine Arbeit
   *[other] { $count } Arbeiten
}
workshop-makings-number = Nr.
workshop-makings-pattern = Vorlage
workshop-makings-made = Fertig
workshop-makings-who = Wer
workshop-makings-measured = Gemessen
workshop-makings-wrong = Was schiefging
workshop-checks = Prüfkarte
workshop-checks-note = Nach jedem Schritt die eigene Arbeit ansehen. Abhaken, was stimmt; den Rest richten, bevor es weitergeht.
workshop-checks-step = Schritt
workshop-checks-none = Nicht so?
workshop-checks-mend = Falls doch

# Karten, die einem Korb beiliegen

card-provenance = Woher dieser Korb kommt
card-care = Wie dieser Korb gepflegt wird
card-number = Nummer
card-made = gemacht
card-wood = Holz
card-maker = gemacht von
care-dust = Mit einer weichen, trockenen Bürste abstauben.
care-wet = Verschüttetes mit einem feuchten Tuch abwischen und an der Luft trocknen lassen. Nie ins Wasser stellen.
care-sun = Vor Sonne und Öfen schützen: Trockene Hitze macht Flechtrohr spröde.
care-bare = Er ist unbehandelt. Einmal im Jahr, in der trockenen Zeit, leicht mit Wasser besprühen und an der Luft trocknen lassen.
care-oil = Er ist geölt. Wird er stumpf, etwas vom selben Öl einreiben, offen stehen lassen, bis es trocken ist, und den Lappen flach auslegen: Ein Haufen öliger Lappen kann sich entzünden.
care-coat = Er ist überzogen. Alkohol und heiße Schüsseln hinterlassen Spuren; ein Tuch dazwischenlegen.
care-swing = Am Henkel tragen; eine schwere Last von unten fassen, mit beiden Händen.
care-fixed = Nur leicht gefüllt am Henkel heben; sonst von unten fassen.
care-mend = Bricht ein Faden, die Enden aufheben und in einer Korbmacherei fragen: Ein kurzes Stück lässt sich einflechten.

# Was eine Suche unterwegs sagt

workshop-searching = bis jetzt { $found } Stränge, mindestens { $least }
workshop-class-searching = ein Plan wird gesucht; bis jetzt endet er { $best }
workshop-class-trying = was helfen würde, wird versucht: { $count }

# Das Regal auf der Seite: was nicht geht, und wie es zu beheben ist

workshop-own-size = { $size }, nach deinem Regal
measured-of = { $material } { $width } breit, { $thickness } dick
own-measures = Gemessen nach deinem Regal: { $measures }.
own-unread = Das Regal ({ $file }) lässt sich nicht lesen, deshalb gelten die Maße des Katalogs: { $why }
workshop-no-shelf = In diesem Ordner gibt es noch kein Regal.
    .help = Erst eines anlegen.
workshop-no-name = Hier fehlt ein Name.
    .help = Schreib, wie du es nennst, etwa „feines Flechtrohr, blau“.
workshop-name-taken = „{ $typed }“ liegt schon im Regal.
    .help = Wähl einen anderen Namen, oder ändere jenes.
workshop-no-material = Ein Material „{ $typed }“ gibt es nicht.
    .help = Wähl eines aus der Liste.
workshop-no-length = „{ $typed }“ ist keine Länge.
    .help = Schreib etwa 3.6 m, 90 mm oder 12 ft.
workshop-no-amount = „{ $typed }“ ist kein Betrag.
    .help = Schreib etwa 12,50.
kits-fault-large = Die Datei ist größer als 1 MB.
    .help = Ein Plan hat wenige Kilobyte: Ist das die richtige Datei?
kits-fault-toml = Das lässt sich nicht als TOML lesen.
    .help = Eine Zeile ist ein Name, = und ein Wert; Texte stehen in Anführungszeichen, und jede Klammer ist geschlossen.
kits-fault-key = `{ $key }` ist hier nicht bekannt.
    .help = Bekannt ist hier: { $all }.
kits-fault-key-near = `{ $key }` ist hier nicht bekannt.
    .help = Ist `{ $nearest }` gemeint?
kits-fault-missing = `{ $key }` fehlt.
    .help = { $key } = und einen Text in Anführungszeichen schreiben.
kits-fault-text = `{ $key }` muss ein Text sein.
    .help = In Anführungszeichen schreiben, und nicht leer.
kits-fault-list = `{ $key }` muss eine Liste sein.
    .help = In eckigen Klammern schreiben; Teilnehmende als [[students]] in einer eigenen Zeile.
kits-fault-section = `{ $key }` muss ein Abschnitt sein.
    .help = [{ $key }] in eine eigene Zeile schreiben, oder die Werte in geschweifte Klammern.
kits-fault-group = Das ist keine Gruppe von Teilnehmenden.
    .help = [[students]] in eine eigene Zeile schreiben, darunter pattern und count.
kits-fault-nobody = In diesem Kurs ist niemand.
    .help = Unter jedem [[students]] sagen, was sie machen und wie viele es sind: pattern, und count = 8.
kits-fault-students = { $count } Teilnehmende sind zu viele; ein Kurs hat 1 bis { $most }.
    .help = Unter jedem [[students]] sagen, wie viele es sind: count = 8.
kits-fault-time = `{ $key }` kann nicht { $value } sein.
    .help = Minuten und Stunden sind Zahlen von 0 bis 100 000, etwa { $key } = 40.
kits-fault-amount = `{ $key }` kann nicht { $value } sein.
    .help = Beträge von 0 bis zehn Millionen als Text schreiben, etwa { $key } = "24.00"; Anteile als "0.1".
kits-fault-day = „{ $value }“ ist kein Tag.
    .help = Jahr, Monat und Tag schreiben, etwa { $key } = "2026-10-17".
kits-fault-kerf = Ein Schnitt kann nicht „{ $value }“ kosten.
    .help = Eine Länge von 0 bis 50 mm schreiben, etwa { $key } = "1 mm".
kits-fault-colour = Eine Farbe `{ $colour }` gibt es nicht.
    .help = Eine von { $all } schreiben, oder #rrggbb.
kits-fault-colour-near = Eine Farbe `{ $colour }` gibt es nicht.
    .help = Ist `{ $nearest }` gemeint?
kits-fault-in = { $file }.toml, Zeile { $line }: { $said }
    .help = Diesen Plan öffnen und dort ausbessern.
plan-pattern = { $file }: { $said }
    .help = Diese Vorlage öffnen und dort ausbessern.
workshop-fault-newer = Das Regal wurde von einem neueren Stavewright geschrieben (seine Version { $found }, bekannt bis { $known }).
    .help = Nimm jenes; die Datei blieb, wie sie ist.
workshop-fault-no-store = Diese Datei ist kein Regal von Stavewright.
    .help = Leg workshop.db in diesem Ordner anderswohin; die Datei blieb, wie sie ist.
workshop-fault-damaged = Die Datei des Regals ist beschädigt: { $said }.
    .help = Setz die letzte Sicherung an ihre Stelle, und heb diese Datei auf.
workshop-fault-read-only = Das Regal darf nicht beschrieben werden.
    .help = Erlaube das Schreiben in workshop.db in diesem Ordner.
workshop-fault-full = Auf dem Datenträger ist kein Platz mehr; nichts wurde geändert.
    .help = Schaff Platz und versuch es noch einmal.
workshop-fault-busy = Ein anderes Programm schreibt gerade ins Regal.
    .help = Versuch es gleich noch einmal.
workshop-fault-unopened = Das Regal lässt sich nicht öffnen: { $said }
    .help = Prüf, ob in den Ordner geschrieben werden darf.
workshop-fault-unknown = „{ $name }“ ist nicht mehr da.
    .help = Lade die Seite neu.
workshop-fault-too-few = Von „{ $name }“ sind { $there } da, und { $wanted } würden entnommen.
    .help = Zähl, was da ist, und buch das zuerst.
workshop-fault-row = Zeile { $line } der Tabelle: { $said }
    .help = Berichtige die Zeile und nimm die Tabelle noch einmal auf; nichts wurde geändert.
workshop-fault-refused = Das geht nicht: { $said }.
    .help = Nichts wurde geändert.
workshop-fault-other = Das Regal hat es nicht getan: { $said }
    .help = Nichts wurde geändert.

# Was mit dem Regal nicht geht; steht mitten im Satz

workshop-cannot-unnamed-item = ein Stück braucht einen Namen und ein Material
workshop-cannot-measure = ein Maß von „{ $name }“ ist keine Länge über null
workshop-cannot-length-unit = „{ $name }“ wird nach Fuß oder Meter gekauft: Dann enthält eine Einheit 1 und ist einen Fuß (304,8 mm) oder einen Meter (1000 mm) lang
workshop-cannot-hold = von „{ $name }“ wären es mehr, als es geben kann
workshop-cannot-unnamed-mould = eine Form braucht einen Namen
workshop-cannot-girth = ein Umfang einer Form ist eine Länge über null, in einer Höhe
workshop-cannot-lend-to-nobody = es fehlt, wer die Form bekommt
workshop-cannot-due = der Tag der Rückgabe wird als 2026-10-18 geschrieben
workshop-cannot-mould-out = Form { $name } ist unterwegs: { $to } hat sie
workshop-cannot-bring-back = Form { $name } ist nicht unterwegs
workshop-cannot-undo-nothing = es gibt nichts zurückzunehmen
workshop-cannot-undo-twice = Buchung { $number } ist schon zurückgenommen
workshop-cannot-undo-there = „{ $name }“ liegt inzwischen wieder im Regal
workshop-cannot-unnamed-order = ein Auftrag braucht einen Namen und mindestens einen Korb
workshop-cannot-promise = der zugesagte Tag wird als 2026-11-20 geschrieben
workshop-cannot-unnamed-record = ein Eintrag nennt die Vorlage, nach der gearbeitet wurde
workshop-cannot-two-records = zwei Einträge haben die Nummer { $number }
workshop-cannot-more-records = es sind zu viele Einträge
workshop-cannot-pour-over = das Regal enthält schon etwas; nimm alles in ein neues auf
workshop-cannot-read = { $said }

# Was in einer Zeile einer Tabelle falsch ist; steht mitten im Satz

workshop-row-large = die Tabelle ist größer als 16 Megabyte
workshop-row-encoding = das ist kein Text in UTF-8; speichere die Tabelle als CSV in UTF-8
workshop-row-unread = { $said }
workshop-row-cells = diese Zeile hat mehr oder weniger Zellen als die Kopfzeile (getrennt werden sie durch { $sign })
workshop-row-no-column = eine Spalte „{ $name }“ gibt es nicht; die Spalten sind { $known }
workshop-row-missing = die Spalte „{ $name }“ fehlt
workshop-row-empty = die Spalte „{ $name }“ darf nicht leer sein
workshop-row-whole = in der Spalte „{ $name }“ steht „{ $text }“, keine ganze Zahl
workshop-row-amount = in der Spalte „{ $name }“ steht „{ $text }“, kein Betrag wie 12.50
workshop-row-length = in der Spalte „{ $name }“ steht „{ $text }“, keine Zahl von Millimetern über null
