### Texte der Seite der Werkbank.

bench-page-title = { $title }: Stavewright
bench-new-title = Neuer Korb
bench-form = Vorlage in der Reihenfolge der Arbeit
bench-order = Reihenfolge der Arbeit
bench-picture = Bilder
bench-side-pane = Befunde und Zuschnitte
bench-panes = Was unter dem Bild liegt

## Die Leiste

bench-state-saved = gespeichert
bench-state-unsaved = nicht gespeichert
bench-undo = Rückgängig
bench-redo = Wiederholen
bench-undo-step = Rückgängig: { $step }
bench-redo-step = Wiederholen: { $step }
bench-save = Speichern
bench-save-as = Unter anderem Namen speichern
bench-save-heading = Vorlage speichern
bench-more = Mehr
bench-print = Gezeigtes drucken
bench-to-dark = Dunkel
bench-to-light = Hell
bench-close = Schließen
bench-close-notice = Hinweis weglegen

## Vorlagen und ihre Dateien

bench-patterns = Vorlagen
bench-patterns-here = In diesem Ordner
bench-patterns-none = In diesem Ordner ist noch keine Vorlage.
bench-patterns-start = Eine neue beginnen
bench-pattern-here = auf der Werkbank
bench-pattern-broken = hat Fehler
bench-start-plain = Eine leere Vorlage
bench-start-plain-text = eine schlichte Form; alles andere wird gewählt, bis du es anders sagst
bench-start-scenario-text = eine Kopie des Beispiels
bench-name = Name der Datei
bench-name-hint = Kleinbuchstaben, Ziffern und Striche; .toml wird angehängt.
bench-name-taken = Eine Vorlage { $name }.toml gibt es schon. Wähle einen anderen Namen oder ersetze sie.
bench-replace = Ersetzen
bench-rename = Umbenennen
bench-rename-heading = Vorlage umbenennen
bench-duplicate = Verdoppeln
bench-duplicate-heading = Vorlage verdoppeln, wie sie hier ist
bench-unsaved-heading = Noch nicht gespeichert
bench-unsaved-text = Die Vorlage auf der Werkbank hat Änderungen, die nicht gespeichert sind.
bench-unsaved-drop = Änderungen verwerfen
bench-unsaved-stay = Hier bleiben
bench-outside-taken = { $name }.toml wurde außerhalb der Werkbank geändert; die Werkbank zeigt den jetzigen Stand. Rückgängig bringt zurück, was hier war.
bench-outside-conflict = { $name }.toml wurde außerhalb der Werkbank geändert, und hier gibt es Änderungen, die nicht gespeichert sind. Nichts wurde überschrieben.
bench-outside-keep = Meine behalten
bench-outside-take = Die der Datei nehmen
bench-outside-compare = Vergleichen
bench-outside-missing = { $name }.toml ist nicht mehr im Ordner. Speichern schreibt die Datei neu.
bench-restored = Nicht gespeicherte Arbeit wurde wieder aufgenommen.
bench-restored-drop = Zurück zur Datei
## The photograph

bench-photo = Foto des fertigen Korbs
bench-photo-alt = { $title }, fertig
bench-photo-none = Noch keines da. Es liegt neben der Vorlage, im selben Ordner.
bench-photo-choose = Ein Foto wählen
bench-photo-drop = Foto wegnehmen
bench-photo-unread = Diese Datei lässt sich nicht als Foto lesen.
bench-photo-unsaved = Speichere erst die Vorlage; das Foto liegt dann daneben.

## Der Server

bench-gone = Das Programm antwortet nicht: Es wurde beendet, oder der Rechner schläft. Was du gemacht hast, bleibt in diesem Browser. Die Seite macht von selbst weiter, sobald das Programm wieder da ist.
bench-back = Das Programm ist wieder da.
bench-not-saved-gone = Nicht gespeichert: Das Programm antwortet nicht.
bench-read-only = Hier lässt sich alles ansehen und ausprobieren, aber nicht speichern.

## Was getan wurde, für das Rückgängigmachen

bench-did-set = { $what }: { $value }
bench-did-drag = { $what }
bench-did-take = { $what } übernommen
bench-did-give = { $what } zurückgegeben
bench-did-put-in = { $what } hinzugefügt
bench-did-take-out = { $what } weggelassen
bench-did-text = Text von Hand geändert
bench-did-take-file = Text der Datei

## Felder

bench-chosen = Von Stavewright gewählt: { $why }
bench-take-which = Übernehmen: { $what }
bench-give-which = An Stavewright zurückgeben: { $what }
bench-left-out = Weggelassen
bench-slider = { $what }, Schieber
bench-slide-less = { $what }: weniger
bench-slide-more = { $what }: mehr
bench-doubt = { $number } Zoll? Das ist viel. Oder sind Millimeter gemeint?
bench-takes = Dort steht: { $takes }.
bench-help-on = Was ist das: { $what }
bench-rest = { $count } weitere
bench-legend-chosen = von Stavewright gewählt
bench-legend-own = von dir; das Zeichen gibt die Wahl weiter
bench-meaning-basket = Der Korb als Ganzes: wie er heißt, und die Einheiten, in denen du denkst.
bench-meaning-mould = Die Form ist der Holzklotz, über dem der Korb geflochten wird. Ihr Boden wird der Fuß, ihre Oberkante der Rand.
bench-meaning-base = Der Boden ist eine Holzscheibe. Die Füße der Staken stehen in der Nut, die um ihre Kante läuft.
bench-meaning-staves = Staken sind die senkrechten Streifen. Zum Fuß hin werden sie schmaler, damit die Lücken vom Fuß bis zum Rand gleich bleiben.
bench-meaning-weave = Der Flechtfaden geht rundum, über und unter die Staken. Ein Abschnitt sind einige Reihen in einem Geflecht. Beim Zäunen geht er über eine und unter eine; beim Köper über zwei oder mehr, von Reihe zu Reihe um eine versetzt.
bench-meaning-rim = Zwei Reifen, einer außen und einer innen, halten die Spitzen der Staken. Wo ein Reif sich überlappt, sind beide Enden geschäftet: zu einem Keil gehobelt. Die Füllung liegt zwischen den Reifen und deckt die Spitzen.
bench-meaning-lashing = Die Umwicklung ist der Faden, der um beide Reifen gewickelt wird, Stake für Stake.
bench-meaning-handle = Ohren sind Zungen, die aus dem Geflecht kommen und den Henkel tragen. Ein Klapphenkel ist mit ihnen vernietet, ein fester sitzt im Rand.
bench-meaning-finish = Was am Ende darauf kommt, und was du auf den Boden schreibst.

## Die Form

bench-profile = Die Form von der Seite
bench-profile-hint = Einen Punkt ziehen, oder ihn ansteuern und die Pfeiltasten nehmen (mit Umschalttaste zehnmal so weit).
bench-profile-lines = Durchgezogen: auf die Längsseite gesehen. Gestrichelt: auf ein Ende gesehen.
bench-trace = Von einem Foto abnehmen
bench-trace-how = Stell eine runde Form vor ein einfarbiges Tuch in anderer Farbe, das auf allen vier Seiten zu sehen ist. Halte die Kamera waagerecht, auf halber Höhe der Form, weit weg und herangezoomt.
bench-trace-girth = Umfang an der weitesten Stelle
bench-trace-girth-hint = Mit ihm stimmt die Seite auf etwa 0,3 % des Durchmessers.
bench-trace-height = Oder ihre Höhe, wo kein Umfang gemessen ist
bench-trace-distance = Abstand von der Linse zur Mitte der Form
bench-trace-distance-hint = Wo er nicht bekannt ist, werden 1,5 m angenommen.
bench-trace-foot-up = Sie steht auf dem Rand, Fuß oben
bench-trace-kept = Dieses Programm sieht das Foto an und bewahrt es nicht auf. Es liegt unter der Zeichnung, bis die Seite neu geladen wird.
bench-trace-begin = Abnehmen
bench-trace-none = Wähle zuerst ein Foto.
bench-did-trace = Umfänge von einem Foto
bench-underlay = Gepunktet: die Kanten, wie sie gefunden wurden. Wo das Bild anderes zeigt, zieh die Punkte darüber; beide Seiten folgen.
bench-underlay-seen = Foto, von verborgen bis voll
bench-underlay-away = Foto wegnehmen
bench-plan = Die Form von oben
bench-plan-hint = Durchgezogen: der Fuß; gestrichelt: die Oberkante. Einen Punkt ziehen, oder ihn ansteuern und die Pfeiltasten nehmen (mit Umschalttaste zehnmal so weit).
bench-plan-many = Durchgezogen: der Fuß; gestrichelt: die Oberkante. Seine Punkte liegen zu dicht, um sie einzeln zu ziehen.
bench-plan-by-hand = Den Umriss von Hand zeichnen
bench-plan-fewer = Durch weniger Punkte zeichnen
bench-height-above-base = Höhe über dem Boden
bench-girth = Umfang
bench-height-of = Höhe der Messung { $number }
bench-girth-of = Umfang der Messung { $number }
bench-add-girth = Messung hinzufügen
bench-remove-girth = Messung { $number } entfernen
bench-mould-draw = Lieber aus Boden, Rand und Höhe zeichnen
bench-mould-measure = Lieber mit Umfängen messen

## Größen, die ineinander stehen

bench-nest = Größen und Satz
bench-nest-text = Derselbe Korb über Formen anderer Größe, jeder im nächsten stehend. Staken und Flechtfäden kommen aus Vorräten derselben Art.
bench-nest-sizes = Weite der Formen oben, oder ihre Länge
bench-nest-sizes-hint = Mit Strichpunkt getrennt, etwa 120; 150; 180; wo keine Einheit steht, in der der Vorlage.
bench-nest-clearance = Luft zwischen einem Korb und dem nächsten
bench-nest-begin = Zusammen zeigen
bench-nest-sheet = Blatt zum Drucken (sizes.pdf)
bench-nest-busy = Wird berechnet …
bench-nest-picture = Die Körbe im Schnitt, jeder im nächsten stehend: { $names }
bench-nest-rooms = Jeder im nächsten

## Abschnitte

bench-course = { $number }. { $summary }
bench-course-lean = Neigung: { $why }
bench-course-takes = Reihen { $first } bis { $last }; braucht { $length }
bench-course-does-not-run = Geht mit dieser Zahl von Staken nicht auf.
bench-course-add = Abschnitt hinzufügen
bench-course-up = Abschnitt { $number } einen Platz früher flechten, näher am Boden
bench-course-down = Abschnitt { $number } einen Platz später flechten, näher am Rand
bench-course-remove = Abschnitt { $number } entfernen
bench-courses-take = Abschnitte übernehmen
bench-courses-give = Abschnitte an Stavewright zurückgeben
bench-course-choose = Nach Aussehen wählen
bench-course-choose-which = Nach Aussehen wählen: Abschnitt { $number }
bench-course-seen = Von außen gesehen: { $seen }
bench-course-short = Abschnitt { $number }
bench-did-draw = Abschnitt { $number } von Hand gezeichnet

## Ansichten

bench-views = Ansichten
bench-view-round = Rundum
bench-view-side = Seite und Schnitt
bench-view-chart = Flechtbild
bench-view-stages = Arbeitsstände
bench-view-templates = Schablonen
bench-view-compare = Vergleich
bench-view-text = Text
bench-pane-form = Vorlage
bench-pane-picture = Bild
bench-pane-findings = Befunde
bench-pane-cuts = Zuschnitt
bench-no-picture = Davon ließ sich kein Bild machen.
bench-place-shown = Gezeigt: { $place }
bench-templates-hint = Hier passend zur Seite gezeichnet. Die templates.pdf des Pakets druckt sie in wahrer Größe, lange in Teilen, mit Balken zum Prüfen des Druckers.

## Rundum

bench-round-label = Der Korb rundum. Pfeiltasten drehen ihn, Plus und Minus holen ihn näher und ferner, Bild auf und Bild ab nennen seine Teile, Pos1 zeigt ihn ganz.
bench-turning = Drehen und ansehen
bench-zoom-in = Näher
bench-zoom-out = Ferner
bench-turn-left = Nach links drehen
bench-turn-right = Nach rechts drehen
bench-turn-home = Ganz zeigen
bench-part = Teil
bench-part-next = Nächsten Teil nennen
bench-part-last = Vorigen Teil nennen
bench-ruler = Maßstab und Hand zum Vergleich
bench-ruler-in = Der Maßstab ist 6 Zoll lang, ein Zoll je Feld; die Hand 7 1/2 Zoll.
bench-ruler-mm = Der Maßstab ist 160 mm lang, 20 mm je Feld; die Hand 190 mm.
bench-still = Das Bild für den Druck speichern
bench-still-saved = Gespeichert als { $name }: 6 Zoll breit mit 300 Punkten je Zoll.
bench-stage = Arbeitsstand
bench-lid = Deckel
bench-lid-closed = zu
bench-lid-open = offen
bench-lid-off = daneben
bench-cut-away = Aufschneiden
bench-cut-share = { $share } % weggeschnitten
bench-no-webgl = Dieser Browser zeichnet nichts räumlich (kein WebGL); darum steht hier die Strichzeichnung.
bench-node-mould = Form
bench-node-band = Band um die Staken
bench-node-base = Boden
bench-node-plug = Stopfen im Schraubenloch
bench-node-screw = Schraube des Bodens
bench-node-clamp = Klammer { $number }
bench-node-stave = Stake { $number }
bench-node-row = Reihe { $number }{ $weaver ->
        [0] {""}
       *[other] , Faden { $weaver }
    }{ $strand ->
        [0] {""}
       *[other] , Stück { $strand }
    }
bench-node-outer-hoop = Außenreifen
bench-node-inner-hoop = Innenreifen
bench-node-filler = Randfüllung, Stück { $number }
bench-node-wrap = Umwicklung, Windung { $number }
bench-node-pin = Stift in Stake { $number }
bench-node-ear = Ohr { $number }
bench-node-handle = Henkel
bench-node-knob = Knopf { $number }
bench-node-rivet = Niet { $number }
bench-node-washer = Scheibe { $number }
bench-node-length = { $length } lang

## Flechtbild

bench-chart-outside = Von außen
bench-chart-inside = Von innen
bench-chart-side = Seite des Geflechts
bench-chart-label = Flechtbild von { $rows } Reihen auf { $staves } Staken. Pfeiltasten gehen von Kreuzung zu Kreuzung.
bench-chart-hint = Boden unten. Zeige auf eine Kreuzung, oder nimm die Pfeiltasten (mit Umschalttaste je zehn).
bench-chart-more = Das Flechtbild geht seitlich weiter: wische oder blättere darin.
bench-chart-printed = Wie gedruckt
bench-cell-over = Reihe { $row }, Stake { $stave }: Der Faden geht darüber ({ $colour }, Faden { $weaver } von Abschnitt { $course }).
bench-cell-under = Reihe { $row }, Stake { $stave }: Der Faden geht darunter (Abschnitt { $course }); man sieht die Stake, { $colour }.
bench-cell-join = Ansatz: Der alte Faden endet über Stake { $cut }, der neue beginnt hinter Stake { $start }.

## Befunde und Zuschnitt

bench-figures = Wichtigste Zahlen
bench-findings = Befunde
bench-tell-figure = { $label }: { $value }.
bench-tell-came = Neu: { $grade }, { $what }
bench-tell-went = Nicht mehr da: { $what }
bench-in-part = { $part }: { $what }
bench-anew = Offen gelassen und neu gewählt: { $what } ist jetzt { $after }, nicht { $before }.
bench-anew-keep = Bei { $before } bleiben
bench-findings-none = Nichts spricht dagegen.
bench-count-stop = { $count ->
        [one] einmal Halt
       *[other] { $count }-mal Halt
    }
bench-count-care = { $count ->
        [one] einmal Achtung
       *[other] { $count }-mal Achtung
    }
bench-count-note = { $count ->
        [one] ein Hinweis
       *[other] { $count } Hinweise
    }
bench-where = Wo: { $place }
bench-brings = Dann aber: { $cares }
bench-step-changes = Damit ändert sich: { $changes }
bench-step-more = Und { $count } weitere.
bench-step-worse = Dann ist mehr falsch als jetzt.
bench-cause = { $cause }: { $count } Befunde
bench-go-to-field = Zum Feld
bench-cuts = Zuschnittliste
bench-cut-count = { $count } + { $spares }
bench-cut-length = { $length } lang
bench-cut-width = { $width } breit
bench-cut-total = { $total } insgesamt

## Vergleichen

bench-compare = Zwei Fassungen vergleichen
bench-compare-left = Links
bench-compare-right = Rechts
bench-compare-what = Was
bench-compare-none = keine
bench-compare-fields = Werte, die sich unterscheiden
bench-compare-findings-left = Befunde nur links
bench-compare-findings-right = Befunde nur rechts
bench-compare-findings-both = Befunde beider
bench-compare-count = { $count ->
        [0] Kein Unterschied.
        [one] Ein Unterschied.
       *[other] { $count } Unterschiede.
    }
bench-compare-cannot = Eine der beiden Fassungen hat Fehler und lässt sich nicht vergleichen.
bench-version-now = Wie auf der Werkbank
bench-version-past = Gespeichert { $at }
bench-version-back = Zur linken Fassung zurückgehen
bench-version-saved = Wie gespeichert
bench-version-before = Vor: { $step }
bench-version-file = { $title } ({ $name }.toml)

## Text

bench-text-label = Der Text der Vorlage
bench-text-take = Diesen Text nehmen
bench-text-left = Der Text hat Änderungen, die nicht übernommen sind. Sie sind noch da.
bench-text-drop = Änderungen verwerfen
bench-text-at = Zeile { $line }, Spalte { $column }
bench-problems = { $count ->
        [one] Die Vorlage hat einen Fehler; gezeigt wird der letzte gute Korb. { $first }.
       *[other] Die Vorlage hat { $count } Fehler; gezeigt wird der letzte gute Korb. { $first }.
    }
bench-problems-text = Im Text beheben
bench-saved-problems = { $count ->
        [one] Gespeichert, wie sie ist, mit dem Fehler darin.
       *[other] Gespeichert, wie sie ist, mit den { $count } Fehlern darin.
    }

## Mitnehmen

bench-take-away = Mitnehmen
bench-file-handout = die Anleitung für Teilnehmende
bench-file-teacher = das Blatt für Lehrende
bench-file-maker = das Blatt zum Entwurf
bench-file-bench-card = die Arbeitskarte, für die Wand beim Flechten
bench-file-templates = Schablonen in wahrer Größe
bench-file-demonstration = der Plan einer Vorführung
bench-file-cuts = die Zuschnittliste als Tabelle
bench-file-section = der Schnitt als Zeichnung
bench-file-base = der Boden als Zeichnung
bench-file-chart = das Flechtbild von außen
bench-file-picture = der fertige Korb als Zeichnung
bench-file-basket = alle Maße, für andere Programme
bench-file-pattern = die Vorlage
bench-packet-text = Das Paket enthält die Anleitung, die Blätter für Lehrende und zum Entwurf, die Arbeitskarte, die Schablonen, die Zuschnittliste und die Zeichnungen.
bench-paper = Papier
bench-paper-letter = Letter
bench-paper-a4 = A4
bench-packet-make = Paket machen
bench-packet-stop = Anhalten
bench-packet-progress = Wie weit das Paket ist
bench-packet-now = { $done } von { $total }: { $now }
bench-packet-done = { $count } Dateien.
bench-packet-zip = Alles als ZIP herunterladen
bench-packet-print = Zum Drucken öffnen
bench-packet-stopped = Angehalten.
bench-packet-failed = Das Paket ließ sich nicht machen.
bench-kilobytes = { $size } kB
bench-solids = Körper des fertigen Korbs
bench-solid-stl = STL
bench-solid-3mf = 3MF
bench-solid-glb = GLB
