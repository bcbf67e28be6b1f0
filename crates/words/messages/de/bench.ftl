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

## Choosing a material

bench-stock-heading = Wählen: { $what }
bench-stock-hint = Jedes ist quer geschnitten gezeichnet, etwa in wahrer Größe.
bench-stock-choose = { $what }: { $value }. Anderes wählen
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
bench-first-units = In
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

## Die Form

bench-profile = Die Form von der Seite
bench-profile-hint = Einen Punkt ziehen, oder ihn ansteuern und die Pfeiltasten nehmen (mit Umschalttaste zehnmal so weit).
bench-profile-point = Messung { $number }
bench-girth-at = Umfang { $girth } in { $height } Höhe
bench-height-above-base = Höhe über dem Boden
bench-girth = Umfang
bench-height-of = Höhe der Messung { $number }
bench-girth-of = Umfang der Messung { $number }
bench-add-girth = Messung hinzufügen
bench-remove-girth = Messung { $number } entfernen
bench-mould-draw = Lieber aus Boden, Rand und Höhe zeichnen
bench-mould-measure = Lieber mit Umfängen messen

## Abschnitte

bench-course = { $number }. { $summary }
bench-course-takes = Reihen { $first } bis { $last }; braucht { $length }
bench-course-does-not-run = Geht mit dieser Zahl von Staken nicht auf.
bench-course-add = Abschnitt hinzufügen
bench-course-up = Abschnitt { $number } einen Platz früher flechten, näher am Boden
bench-course-down = Abschnitt { $number } einen Platz später flechten, näher am Rand
bench-course-remove = Abschnitt { $number } entfernen
bench-courses-take = Abschnitte übernehmen
bench-courses-give = Abschnitte an Stavewright zurückgeben
bench-course-choose = Nach Aussehen wählen
bench-course-choose-which = Geflecht von Abschnitt { $number } nach dem Aussehen wählen
bench-course-seen = Von außen gesehen: { $seen }
bench-course-short = Abschnitt { $number }
bench-did-draw = Abschnitt { $number } von Hand gezeichnet

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
bench-stage = Arbeitsstand
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

## The guide

bench-guide = Anleitung zu dieser Seite
bench-words = Wörter des Handwerks
bench-guide-begin = Beginnen
bench-guide-begin-text = Eine leere Werkbank fragt fünf Dinge und macht aus den Antworten eine Vorlage. Alles lässt sich danach ändern; was du nicht sagst, wird gewählt, und jedes Feld sagt warum. Rückgängig nimmt jeden Schritt zurück.
bench-guide-mould = Die Form
bench-guide-mould-text = Lege ein Maßband um die Form: am Boden, oben und auf einigen Höhen dazwischen, dichter, wo die Seite sich krümmt. Schreib jede Höhe auf und was das Band zeigt. Punkte der Seite lassen sich ziehen oder mit den Pfeiltasten bewegen. Noch keine Form? Gib die Durchmesser unten und am Rand an, die Höhe, und wie die Seite läuft.
bench-guide-staves = Die Staken
bench-guide-staves-text = Die Zahl entscheidet, welches Geflecht aufgeht: Zäunen will eine ungerade, Köper eine, die sein Rapport nicht teilt. Klappe „Zahlen nahebei“ auf und sieh für jede Zahl, was aufgeht, wohin es steigt und wie breit die Lücken sind.
bench-guide-weave = Das Geflecht
bench-guide-weave-text = „Nach Aussehen wählen“ zeigt kleine Bilder, jedes auf deinem Korb geflochten. Drücke Farben, dann ein Aussehen, dann einen der Wege. Was sich sonst ändert, steht darunter. Ein Abschnitt lässt sich nach oben oder unten setzen und in mehreren Farben flechten.
bench-guide-drawn = Ein eigenes Geflecht
bench-guide-drawn-text = Wähle „Selbst zeichnen“, dann drücke oder ziehe über die Kreuzungen. Spiegle, verschiebe oder verdopple das Stück. Ob es hält, und ob ein Sprung zu lang ist, steht beim Zeichnen darunter.
bench-guide-rim = Rand und Umwicklung
bench-guide-rim-text = Die Länge der Reifen kommt von der Wand, Überlappung und Schäftung von ihrer Dicke. Die Füllung deckt die Spitzen der Staken, die Umwicklung bindet alles zusammen.
bench-guide-handle = Ohren und Henkel
bench-guide-handle-text = Setze den Haken bei Ohren oder Henkel, um sie anzubringen. Ihr Platz, ihre Länge und ihre Löcher folgen aus der Wand.
bench-guide-chosen = Was für dich gewählt ist
bench-guide-chosen-text = Das geflochtene Zeichen neben einem Namen sagt, dass Stavewright den Wert gewählt hat. Drücke es, um ihn zu übernehmen; dann steht er fest, und das Zeichen wird ein Stift. Drücke den Stift, um ihn zurückzugeben. Das Fragezeichen erklärt den Wert und warum er gewählt ist.
bench-guide-findings = Befunde
bench-guide-findings-text = Ein Halt lässt sich so nicht flechten, eine Vorsicht wird man sehen oder sie macht Mühe, ein Hinweis ist gut zu wissen. Öffne einen, und du siehst, wo es ist, warum es zählt und was abhilft. Ein Schritt sagt vorher, was er sonst noch ändert, und ob er ändert, was von dir ist.
bench-guide-pictures = Bilder
bench-guide-pictures-text = Drehe den Korb mit Maus, Finger oder Pfeiltasten. Der Schieber geht von der leeren Form bis zum fertigen Korb. Das Flechtbild zeigt jede Kreuzung. Ein Standbild lässt sich für den Druck speichern.
bench-guide-files = Vorlagen und Dateien
bench-guide-files-text = Eine Vorlage ist eine Textdatei in deinem Ordner; nichts wird irgendwohin geschickt. Drücke den Titel, um alle Vorlagen des Ordners mit ihren Bildern zu sehen. Neben jeder kann ein Foto des fertigen Korbs liegen.
bench-guide-away = Mitnehmen
bench-guide-away-text = Das Paket enthält das Handout, die Blätter für Lehrende und Machende, die Werkbankkarte, Schablonen in wahrer Größe, die Zuschnittliste und die Zeichnungen. Prüfe den Drucker mit den Balken auf dem Schablonenblatt.
bench-guide-keys = Mit der Tastatur
bench-guide-keys-text = Tab geht von Feld zu Feld. Pfeiltasten bewegen Punkte, Schieber, Kreuzungen und den Korb. Strg Z nimmt zurück, Strg Umschalt Z macht es wieder, Strg S speichert.
bench-word-stave = Stake
bench-word-stave-means = Ein senkrechter Streifen, um den der Flechtfaden geht.
bench-word-weaver = Flechtfaden
bench-word-weaver-means = Der Faden, der rundum über und unter die Staken geht.
bench-word-course = Abschnitt
bench-word-course-means = Einige Reihen in einem Geflecht, übereinander.
bench-word-twill = Köper
bench-word-twill-means = Ein Geflecht über zwei oder mehr, von Reihe zu Reihe um eine Stake versetzt, sodass schräge Linien entstehen.
bench-word-chase = Folgende Fäden
bench-word-chase-means = Zwei Fäden, die einander rundum folgen, jeder mit seiner Reihe.
bench-word-pairing = Fitzen
bench-word-pairing-means = Zwei Fäden, um jede Stake gedreht.
bench-word-wale = Kimme
bench-word-wale-means = Drei oder mehr Fäden, von denen jeder der Reihe nach vor mehreren Staken liegt.
bench-word-float = Sprung
bench-word-float-means = Ein Stück Faden, das an mehreren Staken vorbeigeht, ohne die Seite zu wechseln.
bench-word-groove = Nut
bench-word-groove-means = Der Schlitz in der Kante des Bodens, in dem die Staken stehen.
bench-word-taper = Verjüngung
bench-word-taper-means = Wie eine Stake zum Fuß hin schmaler wird.
bench-word-hoop = Reif
bench-word-hoop-means = Einer der beiden Ringe des Rands, außen oder innen.
bench-word-scarf = Schäftung
bench-word-scarf-means = Zwei zu Keilen gehobelte Enden, die aufeinander nicht dicker sind als eines.
bench-word-filler = Füllung
bench-word-filler-means = Was zwischen den Reifen liegt und die Spitzen der Staken deckt.
bench-word-lashing = Umwicklung
bench-word-lashing-means = Der Faden, der um beide Reifen gewickelt ist.
bench-word-ear = Ohr
bench-word-ear-means = Eine Zunge, die aus dem Geflecht kommt und den Henkel trägt.
bench-word-join = Ansatz
bench-word-join-means = Wo ein Faden endet und der nächste beginnt.
