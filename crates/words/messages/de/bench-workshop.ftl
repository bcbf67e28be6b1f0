### Die Seiten der Werkstatt.

bench-shop-ways = Seiten
bench-shop-back = Vorlagen
bench-shop-workshop = Werkstatt
bench-shop-closed = Die Werkstatt gehört dem, der hier arbeitet: Gästen zeigt diese Werkbank sie nicht.

## Das Lager

bench-shop-shelf = Lager
bench-shop-none = In diesem Ordner gibt es noch kein Lager. Es ist eine Datei neben den Vorlagen, workshop.db, und keine Vorlage braucht es. Mit ihm weiß die Einkaufsliste, was da ist, und deine eigenen Maße treten an die Stelle derer des Katalogs.
bench-shop-begin = Ein Lager anlegen
bench-shop-new = Etwas ins Lager legen
bench-shop-new-heading = Etwas Neues im Lager
bench-shop-put = Hineinlegen
bench-shop-change = Ändern
bench-shop-change-heading = Ändern: { $name }
bench-shop-csv-out = Als CSV sichern
bench-shop-csv-in = CSV aufnehmen
bench-shop-taken-in = { $name } wurde aufgenommen.
bench-shop-find = Im Lager suchen
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
bench-shop-unit-hint = etwa Bund oder Rolle
bench-shop-unit-of = { $unit } zu { $holds }
bench-shop-unit-priced = { $unit } für { $price }
bench-shop-holds = Stränge oder Stücke darin
bench-shop-price = Preis davon
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
bench-shop-how-many = Wie viele
bench-shop-there-now = Jetzt vorhanden: { $count }. Wenn du gezählt hast, schreib, was da ist.
bench-shop-for = Wofür
bench-shop-for-hint = etwa der Kurs, für den zugeschnitten wurde
bench-shop-did-change = { $name } geändert
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
bench-shop-undone = zurückgenommen
bench-shop-did-undo = { $kind } vom { $when } zurückgenommen
