# Texte der Blätter: Anleitung, Arbeitskarte und Schablonen.

sheet-handout = Anleitung
sheet-teacher = Blatt für Lehrende
sheet-maker = Blatt zum Entwurf
sheet-sale = Vorlage
sheet-skip = Zum Text springen
sheet-bench-card = Arbeitskarte
sheet-templates = Schablonen
sheet-mould = Form
sheet-mould-note = Für alle, die die Form bauen. Alle Zeichnungen sind in wahrer Größe.
sheet-mould-foot = Fuß
sheet-mould-top = oben
sheet-mould-height = Höhe
sheet-mould-screw = Schraubenloch
sheet-mould-boards = Bretter, vom Fuß aufwärts
sheet-mould-board = Brett
sheet-mould-up-to = Oberseite über dem Fuß
sheet-mould-blank = Rohling
sheet-mould-upper = fertig an der Oberseite
sheet-mould-hole = Loch, höchstens
sheet-mould-bevel = Schräge
sheet-mould-boards-note = Verleimt aus Brettern von { $board }, die Faser von Brett zu Brett gekreuzt; zuerst das Schraubenloch durch alle bohren und sie auf einen Stab stecken. Rohlinge haben ringsum 3 mm (1/8 in) zum Abarbeiten. Ein Loch lässt eine Wand von 32 mm (1 1/4 in), die auf beiden Nachbarn liegt.
sheet-mould-turned = Die Karte an der Seite entlang ausschneiden, an das laufende Holz halten und wegnehmen, wo sie anstößt. Die Durchmesser mit dem Taster prüfen.
sheet-mould-planed = Jedes Brett mit dem auf seine Schräge gestellten Tisch am Umriss sägen, verleimen, und die Stufen hobeln und raspeln, bis die Karte an den Enden passt und die Seiten am Lineal liegen.
sheet-mould-undercut = Sie wird über der weitesten Stelle um { $depth } im Radius enger und muss sich darum zerlegen lassen.
sheet-mould-stuck = Es fand sich kein Kern mit Segmenten, die herauskämen: den Hals weiter machen oder den Bauch enger.
sheet-mould-apart = Sie lässt sich zerlegen: ein Kern, { $length } lang und { $width } breit, mit geraden Seiten, und { $segments } Segmente darum, davon { $keys } Schlüsselstücke mit parallelen Seiten. Den Kern nach oben herausziehen, jedes Schlüsselstück gerade nach innen schieben und herausheben, dann die anderen. Das engste hat { $room } Luft auf seinem Weg. Erst sägen, dann formen: den Rohling nach den Linien des Plans trennen, jeder Schnitt { $kerf } breit, Streifen so dick wie der Schnitt dazwischenlegen, alles mit einer Schraube durch ein Brett an jedem Ende halten und so formen. Den Kern wachsen.
sheet-mould-printed = { $count ->
    [one] Sie passt in einem Stück in einen Drucker von { $room }.
   *[other] Für einen Drucker von { $room } ist sie in { $count } Teile geschnitten; jedes liegt auf der größeren seiner waagerechten Flächen.
}
sheet-mould-pegs = { $pegs } Dübel halten sie zusammen, je { $length } lang, aus Rundstab von { $dowel } Durchmesser: { $whole } Rundstab im Ganzen. Ihre Löcher sind { $hole } weit und { $depth } tief, in beiden Flächen an denselben Stellen. Erst trocken zusammensetzen, dann leimen.
sheet-mould-bare = { $count ->
    [one] Eine Fuge hat keinen Platz für einen Dübel und hält nur durch Leim.
   *[other] { $count } Fugen haben keinen Platz für einen Dübel und halten nur durch Leim.
}
sheet-mould-pieces = In Teilen
sheet-mould-part = Teil
sheet-mould-part-of = was
sheet-mould-part-size = Länge, Breite, Höhe
sheet-mould-core = Kern
sheet-mould-key = Schlüsselstück
sheet-mould-segment = Segment
sheet-of = von
sheet-stop-mark = HALT: so nicht zu flechten – siehe Befunde
sheet-strips-scale = Gezeichnet

# Titelblock

sheet-summary = { $staves } Staken, { $rows } Reihen, über eine Form geflochten
sheet-summary-ears = { $staves } Staken, { $rows } Reihen, über eine Form geflochten, mit zwei Ohren
sheet-summary-handle = { $staves } Staken, { $rows } Reihen, über eine Form geflochten, mit zwei Ohren und beweglichem Henkel
sheet-summary-fixed = { $staves } Staken, { $rows } Reihen, über eine Form geflochten, mit festem Henkel
sheet-summary-knobs = { $staves } Staken, { $rows } Reihen, über eine Form geflochten, mit zwei Ohren und Knöpfen
sheet-fact-across = Randweite
sheet-fact-height = Höhe
sheet-fact-base = Boden
sheet-fact-holds = Inhalt
sheet-fact-staves = Staken
sheet-fact-weaving = Geflecht
sheet-fact-hand = Werte
sheet-fact-measured = gemessen
sheet-fact-time = Zeit
sheet-base-size = { $diameter } Durchmesser, { $thickness } dick, { $wood }
sheet-capacity-quarts = { $quarts } Quart ({ $litres } l)
sheet-capacity-litres = { $litres } l ({ $quarts } Quart)
sheet-staves-of = { $count } aus { $stock }
sheet-time-in-all = geübte Hände { $work }, Lernende etwa { $learner }; { $wait } Warten

# Überschriften der Anleitung

sheet-findings = Vor dem Anfang zu wissen
sheet-materials = Material und Zuschnitt
sheet-supplies = Insgesamt
sheet-tools = Werkzeug
sheet-preparation = Vorbereitung
sheet-steps = Arbeitsgang
sheet-drawings = So soll es aussehen
sheet-plans = Verjüngung, Lücken und Boden
sheet-weaving = Geflecht
sheet-joins = Ansätze
sheet-checkpoints = Kontrollpunkte
sheet-choices = Was gewählt wurde, und warum
sheet-glance = Auf einen Blick
sheet-sessions = Wo man aufhört
sheet-beforehand = Was vorzubereiten ist
sheet-bring = Was mitzubringen ist
sheet-faults = Übliche Fehler und was ihnen abhilft
sheet-safety = Warnhinweise
sheet-questions = Fragen an die Gruppe
sheet-candidates = Verwendete Staken und die nächstbesten
sheet-record = Aufzeichnung zu diesem Korb

# Material

sheet-piece = Stück
sheet-material = Material
sheet-number = Zahl
sheet-length-each = Länge
sheet-shape = Breite und Form
sheet-spare = Ersatz
sheet-width = { $width } breit
sheet-all-pieces = Alle Stücke samt Ersatz
sheet-sold = Verkauft als
sheet-sold-by = { $unit }
sheet-sold-by-length = { $unit } zu { $length }
sheet-pieces = { $count ->
    [one] 1 Stück
   *[other] { $count } Stück
}
sheet-range = { $from } bis { $to }

# Vorbereitung

sheet-ready = Was bereitliegt
sheet-ready-note = Vor dem Anfang durchsehen und fragen, wo etwas fehlt.
sheet-lies-ready = liegt bereit
sheet-soaking-note = Kurz vor Gebrauch in warmem Wasser einweichen. Herausnehmen, was geschmeidig ist; was zu lange liegt, wird grau und fasert.
sheet-soak = Einweichen
sheet-soak-for = Stücke
sheet-preparation-taper = Die Staken vor dem Einweichen formen. Stakenschablone und Verjüngungsbild geben für jede Stelle die wahre Breite.

# Arbeitsgang

sheet-times-note = Die Zeiten gelten für einen Korb: zuerst für geübte Hände, dann für Lernende, die etwa doppelt so lange brauchen.
sheet-caution = Vorsicht.
sheet-mind-again = { $count ->
    [one] Die Warnung in Schritt { $steps } gilt auch hier.
   *[other] Die Warnungen in den Schritten { $steps } gelten auch hier.
}
sheet-time-soak = einweichen { $time }
sheet-time-work = Arbeit { $time }, Lernende { $learner }
sheet-time-wait = dann warten { $time }

# Geflecht

sheet-weave = Geflecht
sheet-weaver = Flechtfaden
sheet-rows = Reihen
sheet-begin = Anfang
sheet-height-each = Höhe je Reihe
sheet-lay-out = Bereitlegen
sheet-strands = Fäden
sheet-take-up-note = Durch das Vor und Hinter braucht ein Flechtfaden mehr als seinen Weg um den Korb: Einarbeitung { $courses }. Das ist hier die unsicherste Zahl, darum gelten die Längen für das obere Ende; aufschreiben, was der Korb gebraucht hat.
sheet-take-up-course = { $takes } in den Reihen { $first }–{ $last }
sheet-packing-note = Wenn das Geflecht trocken ist, zusammendrücken: oben öffnen sich etwa { $gap }. Flechtfaden bereithalten für { $rows ->
    [one] 1 weitere Reihe
   *[other] { $rows } weitere Reihen
}.
sheet-joins-expected = Im Ganzen ist etwa { $count ->
    [one] einmal
   *[other] { $count }-mal
} anzusetzen, dort, wo ein Faden endet. Ihn abschneiden, wo er vor einer Stake liegt; der neue beginnt hinter der vierten Stake zurück und läuft über dem alten.
sheet-joins-note = Den alten Faden abschneiden, wo er vor der zuerst genannten Stake liegt. Den neuen hinter der zweiten ansetzen und über den alten laufen lassen, sodass kein Ende zu sehen ist. Die Staken zählen ab dem ersten Ohr oder ab der markierten Stake.
sheet-row = Reihe
sheet-cut-over = Abschneiden vor Stake
sheet-start-behind = Ansetzen hinter Stake
sheet-checkpoints-note = Steht die Oberkante dieser Reihe höher oder tiefer als hier angegeben, fester oder weniger fest andrücken.
sheet-height-at-top = Oberkante über dem Fuß der Form
sheet-used-so-far = Flechtfaden bis dahin

# Blatt für Lehrende

sheet-glance-note = Zeiten für einen Korb: von geübten Händen und von Lernenden.
sheet-step = Schritt
sheet-soak-before = Vorher einweichen
sheet-practised = Geübt
sheet-learner = Lernend
sheet-then-dry = Dann trocknen
sheet-in-all = Zusammen
sheet-sessions-note = Gerechnet mit Sitzungen von { $length } im Tempo von Lernenden. Eine Sitzung endet früher, wo etwas trocknen muss.
sheet-session = Sitzung
sheet-session-steps = Schritte
sheet-session-begin = { $step } (beginnen)
sheet-session-on = { $step } (fortsetzen)
sheet-session-end = { $step } (zu Ende)
sheet-before-leaving = Bevor alle gehen
sheet-leave-banded = Den Flechtfaden festklammern, die Staken anfeuchten und die Bänder anlegen.
sheet-leave-to-dry = Mindestens { $time } trocknen lassen.
sheet-beforehand-note = Vor dem Kurs getan, verkürzt ihn jeder dieser Schritte für alle.
sheet-done-beforehand = Schritt
sheet-saves = Erspart Lernenden
sheet-supplies-note = Für einen Korb, mit Ersatz; mal der Zahl der Lernenden.
sheet-fault = Fehler
sheet-cure = Was abhilft
sheet-question = Frage
sheet-answer = Worauf zu hören ist

# Gewähltes

sheet-choices-note = Die Vorlage lässt dies offen. Um es festzulegen, den Schlüssel mit dem eigenen Wert in die Vorlage schreiben.
sheet-key = Schlüssel
sheet-chosen = Gewählt
sheet-reason = Grund
sheet-staves = Staken
sheet-gap-rim = Lücke am Rand
sheet-gap-range = Lücken nach oben hin

# Aufzeichnung

sheet-record-note = Während der Arbeit ausfüllen. Was es wirklich brauchte, macht die Zahlen für den nächsten Korb besser.
sheet-what = Was
sheet-planned = Geplant
sheet-made = Ausgeführt
sheet-record-who = Geflochten von
sheet-record-days = Begonnen, fertig
sheet-record-staves = Staken
sheet-record-gap = Lücke am Rand
sheet-record-rows = Geflochtene Reihen
sheet-record-weaver = Verbrauchter Flechtfaden
sheet-record-height = Höhe des Geflechts, nass
sheet-record-rows-added = Reihen nach dem Trocknen
sheet-record-outer = Außenreifen, Zuschnitt
sheet-record-inner = Innenreifen, Zuschnitt
sheet-record-lashing = Verbrauchte Umwicklung
sheet-record-time = Arbeitszeit
sheet-notes = Notizen

# Arbeitskarte

sheet-card-staves = Staken
sheet-card-stave-length = Jede Stake schneiden
sheet-card-taper = Fuß { $from }, voll { $to }
sheet-card-gap = Lücke am Rand
sheet-card-gap-note = zwischen den Staken
sheet-card-rows = Reihen
sheet-card-rows-to-add = + { $rows } nach dem Trocknen
sheet-card-top = Flechten bis
sheet-card-top-note = über dem Fuß der Form
sheet-card-outer = Außenreifen
sheet-card-outer-ring = Außenring, innen
sheet-card-inner-ring = Innenring, außen
sheet-card-inner = Innenreifen
sheet-card-scarf = Schäftung: Staken { $from }–{ $to }
sheet-card-pins = Stifte
sheet-card-pins-ends = { $spares }; am Henkel { $stock }
sheet-card-pins-ears = { $spares }; an den Ohren { $stock }
sheet-card-spares = + { $count } Ersatz
sheet-card-lashing = Umwicklung
sheet-card-strands = { $count ->
    [one] in 1 Faden
   *[other] in { $count } Fäden
}
sheet-card-ears = Ohren an Staken
sheet-card-ears-note = { $placing }
sheet-card-handle = Henkel
sheet-card-drill = Bohrer { $drill }
sheet-card-band = Reihen { $rows } · { $weave } · Anfang { $begin }
sheet-card-ears-row = Dickes Feld, Reihe { $row }: Darauf stehen die Ohren; die Reihen darüber gehen über sie.
sheet-card-rim-row = Dickes Feld, Reihe { $row }: die letzte; auf ihr steht der Rand.
sheet-card-joins = Ansätze: Reihe, abschneiden vor Stake → ansetzen hinter Stake
sheet-card-more-joins = Weitere Ansätze: siehe Anleitung.

# Schablonen

sheet-print-full-size = Mit 100 % drucken (tatsächliche Größe, nicht an die Seite anpassen).
sheet-measure-first = Vor dem Schneiden die Strecken unten nachmessen.
sheet-templates-note = Alle Stücke sind in wahrer Größe gezeichnet. Die Strecken unten auf der Seite mit einem Lineal nachmessen. Stimmt eine nicht, mit dem dort angegebenen Maßstab neu drucken.
sheet-bar-measures = Misst die 100-mm-Strecke
sheet-print-at = drucken mit
sheet-tiled = In { $parts } Teilen: so übereinanderlegen, dass sich die Kreuze decken, Buchstabe auf Buchstabe.

# Eigene Notizen

sheet-own-note = Eigene Worte zur Vorlage

# Vorführung

sheet-demonstration = Vorführung
sheet-demo-intro = Muster zum Zeigen oder Weiterarbeiten, jedes auf einem Stand angehalten, und wann sie zu beginnen sind, damit alle zugleich bereitstehen. Die Tage zählen von der Vorführung zurück; sie beginnt, wenn der Arbeitstag begänne. Ein Paar Hände arbeitet { $hours } am Tag; Einweichen und Trocknen gehen zu jeder Stunde weiter. Wer mehr oder längere Arbeitstage hat, kann später beginnen.
sheet-demo-sum = { $samples ->
    [one] Ein Muster
   *[other] { $samples } Muster
}; { $work } Arbeit über { $days ->
    [one] einen Tag
   *[other] { $days } Tage
}; { $moulds ->
    [0] keine Form
    [one] eine Form
   *[other] { $moulds } Formen
} zugleich, davon { $standing ->
    [0] keine
    [one] eine
   *[other] { $standing }
} bei der Vorführung unter Mustern.
sheet-demo-missing = Diesen Stand erreicht der Korb nie: { $stages }.
sheet-demo-samples = Muster
sheet-demo-sample = Muster
sheet-demo-shows = Zeigt
sheet-demo-stop = Halt nach Schritt
sheet-demo-begin = Spätestens beginnen
sheet-demo-work = Arbeit
sheet-demo-mould = Auf einer Form
sheet-demo-on-mould = Nr. { $number }, bei der Vorführung
sheet-demo-off-mould = Nr. { $number }, bis { $when }
sheet-demo-no-mould = nein
sheet-demo-when = { $days ->
    [0] am Tag der Vorführung
    [one] am Tag davor, nach { $hours } Arbeitszeit
   *[other] { $days } Tage davor, nach { $hours } Arbeitszeit
}
sheet-demo-when-first = { $days ->
    [0] am Tag der Vorführung
    [one] am Tag davor, als Erstes
   *[other] { $days } Tage davor, als Erstes
}
sheet-demo-days = Tag für Tag
sheet-demo-day = { $days ->
    [one] Der Tag davor
   *[other] { $days } Tage davor
}
sheet-demo-task = { $sample }: { $step }. { $title } ({ $time })
sheet-demo-task-on = { $sample }: weiter mit { $step }. { $title } ({ $time })
sheet-demo-nothing = Tage, die nicht genannt sind, verlangen keine Arbeit: trocknen lassen.
sheet-demo-out = Bei der Vorführung
sheet-demo-out-note = Neben jedes Muster legen, bevor jemand kommt, was darunter steht. Rechtzeitig einweichen, was der nächste Schritt braucht. Die Warnhinweise jedes Schritts stehen in der Anleitung und gelten auch hier; örtliche Regeln und das Urteil der Lehrkraft gehen beidem vor.
sheet-demo-next = { $sample }: { $stage }. Als Nächstes { $step }. { $title }.
sheet-demo-next-soak = { $sample }: { $stage }. Als Nächstes { $step }. { $title }; davor { $time } einweichen.
sheet-demo-last = { $sample }: { $stage }.
sheet-demo-say = Dazu sagen: { $said }
sheet-demo-all = alle Muster
sheet-demo-piece = { $count } × { $piece }, { $material }

# Where there is more than a sheet tells.
sheet-table-left-out = { $count } weitere sind hier ausgelassen; basket.json enthält jede Reihe und jeden Ansatz.
sheet-demo-more-days = { $days } weitere Arbeitstage sind nicht einzeln aufgeführt.

# Das Plakat für die Wand
sheet-poster = Plakat
sheet-poster-join-parts = Die Blätter so übereinanderlegen, dass sich die Bilder treffen: Nachbarn teilen einen Streifen von 10{ "\u00A0" }mm. An den feinen Linien schneiden und kleben.
sheet-poster-note = Die Schrift ist hoch genug, um aus { $distance } gelesen zu werden: Großbuchstaben ein 300stel der Entfernung.
sheet-poster-part = Blatt { $number } von { $count }
sheet-poster-start = Anfang
sheet-poster-start-text = Hinter Stake { $stave } beginnen. Das Ende halten, bis die zweite Reihe es klemmt.
sheet-poster-join = Ansatz
sheet-poster-join-text = Den alten Faden über einer Stake abschneiden. Der neue beginnt { $back } Staken weiter hinten, obenauf.
sheet-poster-ear = Ohr
sheet-poster-ear-text = Ohren stehen an den Staken { $first } und { $second }. In beide Richtungen zählen.
sheet-poster-scarf = Schäftung
sheet-poster-scarf-text = Beide Enden über { $lap } dünn auslaufen lassen. Leimen, klammern, trocknen.
sheet-poster-lashing = Randwicklung
sheet-poster-lashing-text = Das Ende hinter den Rand stecken. { $every ->
        [other-stave] An jeder zweiten Stake wickeln.
       *[every-stave] An jeder Stake wickeln.
    } Jede Windung fest anziehen.

# Die Seite, mit der ein Kurs angeboten wird
sheet-class = Kursplan
sheet-class-timetable = Zeitplan für die Wand
sheet-class-sessions = Sitzung für Sitzung
sheet-class-cautions = Vorsicht in dieser Sitzung
sheet-class-cards = Eine Karte für jeden Platz
sheet-class-due = Fällige Reihen
sheet-class-waits = Wer wartet
sheet-class-chance = Zufall
sheet-class-when = Wann
sheet-class-step = Schritt
sheet-class-then = Danach
sheet-class-samples = Muster der Kursleitung
sheet-class-tray = Tablett neben dem Muster
sheet-class-say = Was zu sagen ist
sheet-class-mends = Was hilft; alles ausprobiert
sheet-class-who = Wer
sheet-proposal = Kursangebot
sheet-proposal-title = Titel
sheet-proposal-about = über den Korb
sheet-proposal-edit = Jeder Text lässt sich anklicken und ändern. Drucken, oder die Seite mit den Änderungen sichern.
sheet-proposal-print = Drucken
sheet-proposal-save = Seite sichern
sheet-proposal-hours = Stunden
sheet-proposal-hours-text = { $practised } für eine geübte Hand, { $learner } für Lernende, ohne Trocknen
sheet-proposal-level = Stufe
sheet-proposal-bring = Was die Teilnehmenden mitbringen
sheet-proposal-terms = Bedingungen
sheet-proposal-teacher = Kursleitung
sheet-proposal-place = Ort
sheet-proposal-dates = Tage und Zeiten
sheet-proposal-students = Zahl der Teilnehmenden
sheet-proposal-fee = Kursgebühr
sheet-proposal-materials-fee = Materialkosten
sheet-proposal-brings-teacher = was die Kursleitung mitbringt
