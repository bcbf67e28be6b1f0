# Das Formular einer Vorlage auf der Seite der Werkbank: Gruppen, Werte, Zahlen.

language-name = Deutsch

form-group-basket = Der Korb
form-group-mould = Form
form-group-base = Boden
form-group-staves = Staken
form-group-weave = Geflecht
form-group-rim = Rand
form-group-lashing = Umwicklung
form-group-handle = Ohren und Henkel
form-group-lid = Deckel
form-group-finish = Oberfläche

# Ein Wert mit der Gruppe, zu der er gehört, und worauf eine Abhilfe ihn setzt.
form-in-group = { $group }: { $field }
form-in-course = Abschnitt { $number }: { $field }
form-remedy = { $field } → { $value }
form-undoes = Von dir stand dort: { $field } { $value }.
form-problem = Was unter { $field } steht, geht so nicht. Dort steht: { $takes }.
form-problem-exact = { $field }: { $fault } Hier steht: { $takes }.
form-problem-near = { $field }: { $fault } Ist „{ $near }“ gemeint?
form-problem-at = Zeile { $line }: { $fault }
form-problem-at-near = Zeile { $line }: { $fault } Ist „{ $near }“ gemeint?
form-problem-line = Zeile { $line } im Text der Vorlage geht so nicht.
# Was ein anderes Geflecht noch ändert.
form-way-count = Staken: { $after } statt { $before }.
form-way-own-count = Staken: { $after } statt { $before }, die von dir sind.
form-way-courses = Aus dem Abschnitt werden { $count }, jeder ein Ring in einer Farbe.
form-way-dyed-staves = Ein Teil der Staken ist gefärbt.
form-way-plain-staves = Die Staken sind nicht mehr gefärbt.
form-way-float = Der längste Sprung geht über { $count } Staken und kann hängen bleiben.
form-course-summary = { $weave }, Reihen { $first } bis { $last }, { $weaver }
form-course-summary-one = { $weave }, Reihe { $first }, { $weaver }
form-course-summary-none = { $weave }, keine Reihe, { $weaver }

form-figure-staves = Staken
form-figure-rows = Reihen
form-figure-gap = Lücke am Rand
form-figure-stave-length = Länge einer Stake
form-figure-weaver = Flechtfaden insgesamt
form-figure-height = Höhe des Geflechts
form-figure-across = Durchmesser am Rand
form-figure-capacity = Fasst
form-figure-work = Arbeit, ungefähr
form-figure-hand = Zahlen
form-capacity = { $litres } Liter ({ $quarts } US-Quarts)

# Was auf den Zeichnungen einer Form gezogen wird.
form-grip-girth = Messung { $number }
form-grip-girth-at = Umfang { $girth } in { $height } Höhe
form-grip-top = Rand
form-grip-top-at = { $across } weit, { $height } hoch
form-grip-width = Breite { $number }
form-grip-ray = Strahl { $number } von { $count }

# Was von einer Form gesagt wird, die von einem Foto abgenommen ist.
trace-done = { $girths } Umfänge sind abgenommen, auf etwa { $trust } des Durchmessers genau.
trace-no-distance = Als Abstand der Kamera sind 1,5 m angenommen; mit dem wahren sind die Umfänge sicherer.
trace-no-girth = Mit einem Umfang, an der weitesten Stelle gemessen, sind sie noch sicherer.
trace-lopsided = Die beiden Seiten unterscheiden sich um { $share }: sieh nach, ob ein Schatten für Holz gehalten wurde.
trace-smoothed = Eine Verengung, die von den Fehlern des Bildes nicht zu unterscheiden ist, ist geglättet.

# Wie ein Korb in der nächsten Größe steht.
form-nest-room = Geht hinein: rundum mindestens { $room } Luft, { $at } über dem Boden; sein Rand liegt { $below } tiefer.

form-why-usual = üblich, wenn die Vorlage nichts anderes sagt
form-lean-count = die Anzahl entscheidet; nach der anderen Seite steigt es bei so vielen Staken: { $counts }

# Zeichnungen: Namen zur Auswahl.
form-drawing-section = Seite und Schnitt
form-drawing-base-plan = Bodenplan
form-drawing-taper-chart = Verjüngung und Lücken
form-drawing-lid-closed = Von der Seite, Deckel zu
form-drawing-lid-open = Von der Seite, Deckel offen
form-drawing-plan = Von oben
form-drawing-chart-outside = Flechtbild von außen
form-drawing-chart-inside = Flechtbild von innen
form-drawing-chart-outside-grid = Flechtbild von außen, in Kästchen
form-drawing-chart-inside-grid = Flechtbild von innen, in Kästchen
form-drawing-base-disc = Bodenscheibe
form-drawing-spacing-base = Abstandsstreifen für den Boden
form-drawing-spacing-rim = Abstandsstreifen für den Rand
form-drawing-stave = Stake
form-drawing-scarf = Schäftung
form-drawing-drilling = Bohrstreifen
form-drawing-ear = Ohr
form-drawing-check-bars = Balken zum Prüfen des Druckers

form-plate-join = Ein Ansatz
form-plate-handle-set = Henkel in den Rand gesetzt
form-plate-hoops-scarfed = Reifen geschäftet
form-plate-scarf-close-up = Eine Schäftung
form-plate-tips-trimmed = Spitzen abgeschnitten
form-plate-pin-and-clinch = Stift, vernietet
form-plate-lashing-start = Anfang der Umwicklung
form-plate-lashing-end = Ende der Umwicklung
form-plate-ear-with-rivet = Ohr mit Niet
form-plate-exploded = Alle Teile

# Ein Name, den die Datei einer Vorlage nicht haben kann.
form-name-signs = Dies kann nicht der Name einer Vorlage sein: Er ist leer oder sehr lang, beginnt oder endet mit einem Leerzeichen oder Punkt, oder er hat Zeichen, die in Dateinamen nicht stehen können oder nicht zu sehen sind.
    .help = Nimm Buchstaben, Ziffern, Leerzeichen und Striche, und lass .toml weg.
form-name-device = Dies kann nicht der Name einer Vorlage sein: Manche Systeme halten ihn für ein Gerät frei, und die Datei ließe sich dorthin nicht kopieren.
    .help = Setze ein Wort dazu.
