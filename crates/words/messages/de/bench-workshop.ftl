### Die Seiten der Werkstatt.

bench-shop-ways = Seiten
bench-shop-back = Vorlagen
bench-shop-workshop = Werkstatt
bench-shop-closed = Die Werkstatt gehört dem, der hier arbeitet: Gästen zeigt diese Werkbank sie nicht.

## Das Regal

bench-shop-shelf = Regal
bench-shop-none = In diesem Ordner gibt es noch kein Regal. Es ist eine Datei neben den Vorlagen, workshop.db, und keine Vorlage braucht es. Mit ihm weiß die Einkaufsliste, was da ist, und deine eigenen Maße treten an die Stelle derer des Katalogs.
bench-shop-begin = Ein Regal anlegen
bench-shop-unread = Das Regal dieses Ordners lässt sich nicht lesen, also gelten für Materialien die Maße des Katalogs. Die Seite Regal sagt, was fehlt.
bench-shop-new = Etwas ins Regal legen
bench-shop-new-heading = Etwas Neues im Regal
bench-shop-put = Hineinlegen
bench-shop-change = Ändern
bench-shop-change-heading = Ändern: { $name }
bench-shop-csv-out = Als CSV sichern
bench-shop-csv-in = CSV aufnehmen
bench-shop-taken-in = { $name } wurde aufgenommen.
bench-shop-find = Im Regal suchen
bench-shop-found = { $all ->
    [one] { $count } von einem
   *[other] { $count } von { $all }
}
bench-shop-more = { $count ->
    [one] Eines mehr ist nicht gezeigt; schreib oben mehr von seinem Namen.
   *[other] { $count } mehr sind nicht gezeigt; schreib oben mehr von einem Namen.
}
bench-shop-empty = Hier liegt noch nichts.
bench-shop-name = Name
bench-shop-name-hint = wie du es nennst, etwa „feines Flechtrohr, blau“
bench-shop-name-kept = Unter ihm stehen die Bewegungen, darum bleibt er.
bench-shop-material = Material
bench-shop-colour = Farbe
bench-shop-count = Vorhanden
bench-shop-whole = eine ganze Zahl
bench-shop-length = Länge eines Strangs
bench-shop-length-hint = etwa 3.6 m oder 12 ft; keine bei Stücken, die ganz verwendet werden
bench-shop-whole-piece = ganz verwendet
bench-shop-measured = Eigenes Maß
bench-shop-measured-hint = wie du es gemessen hast; es geht dem des Katalogs vor
bench-shop-width = Breite
bench-shop-thickness = Dicke
bench-shop-wide = { $width } breit
bench-shop-thick = { $thickness } dick
bench-shop-bought = Gekauft als
bench-shop-unit = Gekauft als
bench-shop-unit-hint = etwa Bund oder Rolle; Fuß oder Meter für das, was nach Länge verkauft wird (dann enthält jede Einheit 1)
bench-shop-unit-of = { $unit } zu { $holds }
bench-shop-unit-priced = { $unit } für { $price }
bench-shop-holds = Stränge oder Stücke darin
bench-shop-unit-price = Preis davon
bench-shop-from = Gekauft bei
bench-shop-reorder = Kaufen, wenn weniger als
bench-shop-low = kaufen
bench-shop-note = Notiz
bench-shop-acts = Zu tun
bench-shop-act-of = { $act }: { $of }
bench-shop-book = Buchen
bench-shop-book-heading = Was kam oder ging: { $name }
bench-shop-what = Was geschah
bench-shop-kind-bought = gekauft
bench-shop-kind-cut = zugeschnitten
bench-shop-kind-counted = gezählt
bench-shop-kind-removed = aus dem Regal genommen
bench-shop-how-many = Wie viele
bench-shop-there-now = Jetzt vorhanden: { $count }. Wenn du gezählt hast, schreib, was da ist.
bench-shop-for = Wofür
bench-shop-for-hint = etwa der Kurs, für den zugeschnitten wurde
bench-shop-did-change = { $name } geändert
bench-shop-remove = Herausnehmen
bench-shop-did-remove = { $name } aus dem Regal genommen
bench-shop-did-put = { $name } ins Regal gelegt
bench-shop-did-book = { $name } gebucht
bench-shop-took-back = Zurückgenommen: { $step }
bench-shop-moulds = Formen
bench-shop-no-moulds = Noch keine Form ist aufgeschrieben.
bench-shop-mould-new = Eine Form aufschreiben
bench-shop-mould-put = Aufschreiben
bench-shop-mould-hint = etwa A, oder was darauf steht
bench-shop-place = Wo sie steht
bench-shop-where = Wo sie ist
bench-shop-here = an ihrem Platz
bench-shop-fits = Passende Vorlagen
bench-shop-fits-hint = Namen der Dateien, mit Kommas dazwischen
bench-shop-lend = Verleihen
bench-shop-lend-heading = Form { $name } verleihen
bench-shop-lend-to = An wen
bench-shop-lend-hint = etwa Teilnehmer 4
bench-shop-due = Zurück am
bench-shop-due-on = zurück am { $day }
bench-shop-lent = bei { $to }
bench-shop-back-again = Sie ist zurück
bench-shop-did-lend = Form { $name } verliehen
bench-shop-did-back = Form { $name } ist zurück
bench-shop-history = Was kam und ging
bench-shop-no-history = Noch nichts wurde gebucht.
bench-shop-history-all = Alle { $count } zeigen
bench-shop-when = Wann
bench-shop-changes = Was sich änderte
bench-shop-change-of = { $item } { $count }
bench-shop-take-back = Zurücknehmen
bench-shop-change-mould = Form { $name }
bench-shop-undone = zurückgenommen
bench-shop-did-undo = { $kind } vom { $when } zurückgenommen

## Pläne

bench-shop-kits = Materialsätze und Einkauf
bench-shop-price = Preis
bench-shop-class = Kurs
bench-plan-file = Plan
bench-plan-new = Ein neuer
bench-plan-unsaved = noch nicht gespeichert
bench-plan-unsaved-text = An diesem Plan ist geändert, was nicht gespeichert ist.
bench-plan-save-heading = Den Plan speichern
bench-plan-form = Was geplant wird
bench-plan-comes-to = Was sich ergibt
bench-plan-text = Der Plan als Text
bench-plan-text-take = Diesen Text nehmen
bench-plan-working = Es wird gerechnet
bench-plan-worked = Neu gerechnet.
bench-plan-sheets = Blätter zum Drucken
bench-plan-setting = { $now } wird gesetzt
bench-plan-problem = Zeile { $line }, Spalte { $column }:
bench-plan-did-set = { $field } geändert
bench-plan-new-kits = Neuer Kurs
bench-plan-title = Titel
bench-plan-needed = Zuerst gebraucht am
bench-plan-pattern = Vorlage
bench-plan-count = Wie viele
bench-plan-students = Teilnehmer, Gruppe { $number }
bench-plan-students-add = Teilnehmer dazunehmen
bench-plan-students-drop = Diese Gruppe herausnehmen
bench-plan-colours = Farben geändert
bench-plan-colour-add = Eine andere Farbe für sie
bench-plan-colour-from = Anstelle von
bench-plan-colour-to = bekommen sie
bench-plan-colour-drop = { $from } so lassen, wie die Vorlage es hat
bench-plan-drop = Weg
bench-plan-ready = Für sie vorbereitet
bench-plan-ready-staves-cut = Staken, zugeschnitten
bench-plan-ready-staves-tapered = Staken, verjüngt
bench-plan-ready-rings = Reifen, als geleimte Ringe
bench-plan-ready-handle = Henkel, gebogen
bench-plan-ready-ears = Ohren, fertig geformt
bench-plan-ready-base = Boden, mit Nut
bench-plan-delivery = Lieferung und Schnitte
bench-plan-delivery-days = Tage von der Bestellung bis zur Lieferung
bench-plan-dye-days = Tage mehr für Gefärbtes
bench-plan-kerf = Verlust bei jedem Schnitt
bench-plan-together = Zusammen eingekauft mit
bench-plan-together-hint = Eine Einkaufsliste und ein Zuschnittplan für alle.
bench-plan-order-needed = { $order }, Material gebraucht am { $day }
bench-plan-order = Auftrag „{ $name }“, { $count ->
    [one] ein Korb
   *[other] { $count } Körbe
}
bench-plan-labels = Etiketten
bench-plan-labels-usual = 4 × 2 Zoll, auf dem üblichen Papier
bench-plan-labels-letter-10 = Letter: 10 zu 4 × 2 Zoll
bench-plan-labels-letter-6 = Letter: 6 zu 4 × 3 1/3 Zoll
bench-plan-labels-a4-4x2in = A4: 10 zu 4 × 2 Zoll
bench-plan-labels-a4-10 = A4: 10 zu 105 × 57 mm
bench-plan-labels-a4-8 = A4: 8 zu 99,1 × 67,7 mm
bench-plan-labels-a4-12 = A4: 12 zu 63,5 × 72 mm
bench-plan-no-shelf = Noch gibt es kein Regal, also wird alles gekauft. Mit einem wird zuerst genommen, was da ist, und Gekauftes oder Zugeschnittenes lässt sich buchen.
bench-plan-book-bought = Alles wurde gekauft: buchen
bench-plan-book-cut = So wurde zugeschnitten: buchen
bench-plan-booked-bought = Was gekauft wurde, liegt im Regal.
bench-plan-booked-cut = Was zugeschnitten wurde, ist aus dem Regal, und brauchbare Enden liegen darin.

bench-price-currency = Währung
bench-price-money = Geld
bench-price-shares = Anteile (0,1 sind zehn von hundert)
bench-price-times = Zeiten
bench-price-wage = Eine Stunde Arbeit
bench-price-overhead = Miete, Licht, Versicherung für einen
bench-price-mould = Abnutzung oder Miete der Form
bench-price-packing = Verpacken und Versenden
bench-price-step = Preise in Schritten von
bench-price-travel = Fahrt, für den Kurs
bench-price-room = Der Raum, für den Kurs
bench-price-target = Ein Preis, an den du denkst
bench-price-fee = Eine Gebühr, an die du denkst
bench-price-waste = Verschnitt
bench-price-margin = Aufschlag auf die Kosten
bench-price-retail = Ladenpreis, mal den Händlerpreis
bench-price-venue = Was das Haus von der Gebühr behält
bench-price-office-minutes = Minuten für Briefe und Bücher
bench-price-kit-minutes = Minuten, einen Materialsatz zu packen
bench-price-teaching-hours = Stunden Unterricht und Vorbereitung

bench-class-new = Neuer Kurs
bench-class-moulds = Formen
bench-class-drills = Bohrmaschinen
bench-class-zone = Zeitzone
bench-class-hand = Ihre Hand
bench-class-learner = Lernende
bench-class-practised = geübt
bench-class-from = Sie kommen um
bench-class-day = Tag { $number }
bench-class-day-add = Einen Tag dazunehmen
bench-class-day-drop = Diesen Tag herausnehmen
bench-class-date = Datum
bench-class-hours = Stunden
bench-class-times = So viele Male
bench-class-every = Alle so viele Tage
bench-class-pictures = Wer wann was macht

# Die Seite Arbeiten

bench-shop-records = Arbeiten
bench-records-heading = Was gemacht wurde
bench-records-log = Eine Arbeit notieren
bench-records-pattern = Vorlage
bench-records-made = Fertig am
bench-records-who = Wer (ein Name muss nicht sein)
bench-records-learner = lernend gemacht
bench-records-minutes = Minuten Arbeit, Warten nicht gezählt
bench-records-measures = Was gemessen wurde
bench-records-planned = geplant { $planned }
bench-records-rows = Reihen
bench-records-weaver = Flechtmaterial ohne den Rest
bench-records-wet = Höhe des Geflechts, nass
bench-records-dry = Höhe des Geflechts, trocken
bench-records-girth-wet = Größter Umfang, nass
bench-records-girth-dry = Größter Umfang, trocken
bench-records-staves = Gemachte Staken
bench-records-spoilt = davon verdorben
bench-records-wood = Holz
bench-records-wrong = Was schiefging
bench-records-photo = Foto
bench-records-photo-all = Ort und Zeit im Foto lassen
bench-records-photo-unread = Dieses Foto lässt sich hier nicht öffnen.
bench-records-photo-alt = Foto der Arbeit { $number }
bench-records-keep = Notieren
bench-records-kept = Als Nummer { $number } notiert.
bench-records-none = Noch ist nichts notiert.
bench-records-number = Nummer
bench-records-maker = Wer
bench-records-measured = Gemessen
bench-records-forget = Vergessen
bench-records-forget-one = Arbeit { $number } vergessen
bench-records-forget-ask = Arbeit { $number } wird für immer vergessen, mit ihren Fotos.
bench-records-forget-all = Alles von { $who } vergessen
bench-records-forget-all-ask = Alle { $count } Arbeiten von { $who } werden für immer vergessen, mit ihren Fotos.
bench-records-act = Was zu tun ist
bench-records-print = Das Werkbuch drucken
bench-records-card = Karte
bench-records-card-of = Karte zu Arbeit { $number }, zum Drucken
bench-records-export = Als Datei mitnehmen
bench-records-of = Von wem
bench-records-everybody = allen
bench-records-hand = Die Hand, von der sie erzählen
bench-records-hand-none = Noch erzählt hier keine Arbeit von einer Hand.
bench-records-hand-from = { $count ->
    [one] Aus einer Arbeit, neben den üblichen Zahlen:
   *[other] Aus { $count } Arbeiten, neben den üblichen Zahlen:
}
bench-records-hand-left = { $count ->
    [one] Eine Arbeit bleibt außen vor: Ihre Vorlage ist nicht hier, oder sie hat anderes gemessen.
   *[other] { $count } Arbeiten bleiben außen vor: Ihre Vorlagen sind nicht hier, oder sie haben anderes gemessen.
}
bench-records-hand-drafted = „{ $pattern }“ wird damit:
bench-records-adopt = Mit diesen Zahlen arbeiten
bench-records-adopted = Die Werkstatt arbeitet mit eigenen Zahlen: { $whose }. Sie gelten für alle Vorlagen an dieser Werkbank, und jede sagt es.
bench-records-usual = Die Werkstatt arbeitet mit den üblichen Zahlen.
bench-records-take-back = Wieder mit den üblichen Zahlen arbeiten
bench-class-seconds = Höchstens suchen
bench-class-seconds-of = { $seconds } s
bench-class-enough = Aufhören und das Beste bisher nehmen
