### Titel, Beschreibungen und Beschriftungen der Zeichnungen.

drawing-bars = Prüfstrecken
drawing-bars-description = Eine Strecke von 100 mm und eine von 4 Zoll. Beide nach dem Drucken nachmessen.

drawing-strip-base = Teilstreifen für den Boden, Umfang { $girth }
drawing-strip-base-short = Boden
drawing-strip-rim = Teilstreifen für den Rand, Umfang { $girth }
drawing-strip-rim-short = Rand
drawing-strip-description = Ein Papierstreifen in wahrer Größe, { $girth } lang und mit einer Lasche, mit einer Marke in wahrer Breite für jede von { $count } Staken, mit Viertelmarken und den Stellen von Ohren, Stiften und Schäftungen.
drawing-drilling = Bohrstreifen für den Außenreifen, Umfang { $girth }; Bohrer { $drill }
drawing-drilling-short = bohren
drawing-drilling-description = Ein Papierstreifen in wahrer Größe, so hoch wie der Außenreifen und { $girth } lang, mit der Mitte jedes von { $count } Stiften. Bohrer { $drill }.
drawing-drills-ends = { $drill }; am Henkel { $ears }
drawing-drills = { $drill }; an den Ohren { $ears }
drawing-tab = unterkleben

drawing-ear-number = Ohr { $number }
drawing-outer-scarf = Schäftung außen
drawing-inner-scarf = Schäftung innen

drawing-base-plan = Boden von unten, wie er auf der Form liegt
drawing-base-plan-description = Der Holzboden, Durchmesser { $diameter }, von unten gesehen, mit den Plätzen von { $count } Staken, am Rand auf der zugewandten Seite nach rechts gezählt. Außen, nach Richtung, stehen die Stifte, die Ohren und die Schäftungen beider Reifen.
drawing-base-plan-description-left = Der Holzboden, Durchmesser { $diameter }, von unten gesehen, mit den Plätzen von { $count } Staken, am Rand auf der zugewandten Seite nach links gezählt. Außen, nach Richtung, stehen die Stifte, die Ohren und die Schäftungen beider Reifen.
drawing-lid-base-disc = Deckelboden
drawing-base-disc = Bodenscheibe
drawing-base-disc-description = Die Bodenscheibe in wahrer Größe: Durchmesser { $diameter }, Dicke { $thickness }, mit Mittelpunkt, Nutgrund und Schraubenloch.
drawing-turning = Karte für die Drehbank
drawing-turning-description = Die halbe Form von der Seite in wahrer Größe, Fuß unten, { $height } hoch, mit ihrer Länge oder ihrem Durchmesser in gleichen Höhen.
drawing-turning-width = Karte für die Seite längs der Breite
drawing-turning-width-description = Die halbe Form quer über ihre Breite in wahrer Größe, Fuß unten, { $height } hoch, mit ihrer Länge und Breite in gleichen Höhen.
drawing-boards = Umrisse der Bretter
drawing-boards-description = Die Umrisse von { $count } Brettern in wahrer Größe, ineinander, vom Fuß an gezählt.
drawing-mould-plan = Teile der Form
drawing-mould-plan-description = Die { $count } Teile der Form von oben in wahrer Größe, jedes, wo es am größten ist, mit Nummer und Dübeln; der Fuß ist gestrichelt.
drawing-screw-hole = Schraubenloch { $length }
drawing-base-strips = Streifen: { $woods }
drawing-groove-deep = Nut { $length } tief
drawing-plan-pins = Stift
drawing-plan-key = Stifte, Ohren und Schäftungen sitzen am Rand, in diesen Richtungen

drawing-stave = Stake
drawing-stave-group = Stake, Gruppe { $group }: { $staves }
drawing-stave-description = Eine Stake in wahrer Größe: { $length } lang, { $width } breit, zum Fuß auf { $foot } verjüngt, mit den Stellen, wo die Nut endet, die volle Breite beginnt, der Rand liegt und die Spitze abgeschnitten wird.
drawing-place-foot = Fuß
drawing-place-groove = Kante des Bodens, { $from }
drawing-place-mould = Fuß der Form, { $from }
drawing-place-full = ab hier volle Breite, { $from }
drawing-place-last-row = Oberkante der letzten Reihe, { $from }
drawing-place-rim = Rand, Unterkante, { $from }
drawing-place-trim = hier abschneiden, { $from }
drawing-place-tip = Spitze, { $from }
drawing-section = Der Korb von der Seite, { $scale }
drawing-section-description = Der Korb von der Seite, die linke Hälfte von außen, die rechte durch die Mitte geschnitten. Der Boden misst { $base }, der Rand { $rim }; von der Unterseite des Bodens bis zur Oberkante des Rands sind es { $height }, bis ganz oben { $overall }. Zwei Einzelheiten zeigen Nut und Rand vergrößert.
drawing-plan = Der fertige Korb von oben, { $scale }
drawing-plan-description = Der fertige Korb von oben, die Ohren, falls er welche hat, rechts und links. Der Rand misst { $rim }, der Boden, gestrichelt, { $base }. Beziffert sind die Staken an den Vierteln, { $count } im Ganzen, im Uhrzeigersinn steigend.
drawing-plan-description-left = Der fertige Korb von oben, die Ohren, falls er welche hat, rechts und links. Der Rand misst { $rim }, der Boden, gestrichelt, { $base }. Beziffert sind die Staken an den Vierteln, { $count } im Ganzen, gegen den Uhrzeigersinn steigend.
drawing-plan-description-sides = Der fertige Korb von oben, die Ohren oben und unten in der Mitte der langen Seiten. Der Rand misst { $rim }, der Boden, gestrichelt, { $base }. Beziffert sind die Staken an den Vierteln, { $count } im Ganzen, im Uhrzeigersinn steigend.
drawing-plan-description-sides-left = Der fertige Korb von oben, die Ohren oben und unten in der Mitte der langen Seiten. Der Rand misst { $rim }, der Boden, gestrichelt, { $base }. Beziffert sind die Staken an den Vierteln, { $count } im Ganzen, gegen den Uhrzeigersinn steigend.
drawing-section-scale = Maßstab { $scale }
drawing-handle-down = gestrichelt: Henkel umgelegt
drawing-detail-groove = Nut
drawing-detail-rim = Rand
drawing-part-stave = Stake { $length }
drawing-part-stave-name = Stake
drawing-part-groove = Nut { $length }
drawing-part-base = Boden { $length }
drawing-part-outer-hoop = Außenreifen
drawing-part-inner-hoop = Innenreifen
drawing-part-pin = Stift { $length }
drawing-part-filler = Randfüllung
drawing-part-lashing = Umwicklung

drawing-scarf = Schäftungen der Reifen
drawing-scarf-description = Die Enden des Außen- und des Innenreifens in wahrer Größe von der Kante, getrennt und gefügt. Jedes Ende verjüngt sich gleichmäßig über { $lap }, sodass beide zusammen eine Dicke behalten.
drawing-ear = Ohr, { $material }
drawing-ear-description = Ein Ohr in wahrer Größe, von vorn und von der Kante: { $length } lang, { $width } breit, { $thickness } dick, mit der Mitte des Nietlochs und, gestrichelt, den Kanten des Rands.
drawing-ear-shoulder = Absatz, auf beiden Seiten { $length } tief
drawing-ear-rim = Rand
drawing-ear-hole = Bohrer { $length }

drawing-taper-chart = Breite der Staken und Lücke dazwischen
drawing-taper-chart-description = Zwei Kurven über der Höhe ab dem Fuß der Form. Oben die Breite einer Stake, wie sie geformt wird, und gestrichelt die Breite, die die gewünschte Lücke hielte. Unten die Lücke zwischen den Staken und gestrichelt die gewünschte.
drawing-chart-width = Breite einer Stake
drawing-chart-gap = Lücke zur nächsten
drawing-chart-height = Höhe über dem Fuß der Form
drawing-chart-made = wie geformt
drawing-chart-ideal = ideal

drawing-chart = Flechtbild von { $side }, { $scale }
drawing-chart-description = Das Geflecht von { $title } abgerollt und von { $side } gesehen, { $scale }: { $rows } Reihen auf { $count } Staken, Reihe 1 unten, mit den Stellen der Ansätze, Abschnitte und Ohren und einer Farblegende.
drawing-chart-outside = außen
drawing-chart-inside = innen
drawing-chart-true = jede Reihe in wahrem Umfang, Maßstab 1 : { $scale }
drawing-chart-grid = als Raster
drawing-chart-course = Abschnitt { $number }
drawing-chart-about-course = Abschnitt { $number }: { $weave }, { $weavers }, { $rows ->
        [one] Reihe { $from }
       *[other] Reihen { $from } bis { $to }
    }
drawing-chart-course-seen = { $course }; zu sehen: { $look }
drawing-chart-begin = Reihe beginnt hier und endet darüber
drawing-chart-join-outside = alter Faden endet vor dieser Stake
drawing-chart-join-inside = neuer Faden beginnt hinter dieser Stake
drawing-chart-to-left = Der Korb steht auf dem Boden; von außen gesehen zählen die Staken nach links. Links in jedem Muster: Flechtfaden; rechts: Stake.
drawing-chart-inside-to-left = Der Korb steht auf dem Boden; von innen gesehen zählen die Staken nach links. Links in jedem Muster: Flechtfaden; rechts: Stake.
drawing-chart-to-right = Der Korb steht auf dem Boden; von innen gesehen zählen die Staken nach rechts. Links in jedem Muster: Flechtfaden; rechts: Stake.
drawing-chart-outside-to-right = Der Korb steht auf dem Boden; von außen gesehen zählen die Staken nach rechts. Links in jedem Muster: Flechtfaden; rechts: Stake.

drawing-moves = Die Züge von Abschnitt { $number }: { $weave }
drawing-moves-description = Einige Staken von außen, die Form steht mit dem Boden nach oben, und { $weavers ->
        [one] der Flechtfaden
       *[other] die { $weavers } Flechtfäden
    } von Abschnitt { $number } ({ $weave }): Wo ein Band die Stake verdeckt, geht der Faden darüber, wo die Stake das Band verdeckt, darunter. Die Reihen oder, wo Fäden umeinander gedreht werden, die Züge sind in ihrer Folge nummeriert.
drawing-moves-laid = Ziffern am Rand: Reihen in ihrer Folge. Die Form steht mit dem Boden nach oben; die nächste Reihe liegt darunter.
drawing-moves-twisted = Buchstaben: Fäden. Ziffern: die Züge in ihrer Folge; bei jedem kommt der unten genannte Faden hinter allen anderen hervor, geht vor den Staken auf seinem Weg und hinter dieser vorbei.

drawing-timeline = Die Tage vor der Vorführung
drawing-timeline-description = Eine Zeile für jedes von { $samples } Mustern über { $days ->
        [one] den Tag
       *[other] die { $days } Tage
    } vor der Vorführung, die Zeit läuft nach rechts. Dunkle Marken sind Arbeit; ein helles Band ist die Zeit auf einer Form. Höchstens { $moulds ->
        [one] eine Form ist
       *[other] { $moulds } Formen sind
    } zugleich belegt. Dasselbe steht in der Tabelle und in der Liste der Tage.
drawing-timeline-days = Tage vorher
drawing-timeline-show = Vorführung
drawing-timeline-work = Arbeit
drawing-timeline-mould = auf einer Form

# Wo eine Zeichnung fehlt.
drawing-left-out-nothing = Nicht gezeichnet: davon ist nichts zu zeigen. Die Befunde sagen, woran dieser Korb scheitert.
drawing-left-out-absent = Nicht gezeichnet: dieser Korb hat kein solches Teil.
drawing-left-out-elements = Nicht gezeichnet: die Zeichnung hätte mehr als { $most } Punkte und Kurven.
drawing-left-out-crossings = Nicht gezeichnet: { $crossings } Kreuzungen von Reihen und Staken sind zu viele, um sie zu unterscheiden; gezeichnet werden höchstens { $most }.
drawing-left-out-tiles = Nicht gezeichnet: in wahrer Größe wären es { $pages } Seiten, und gedruckt werden höchstens { $most }. Mit Maßstab und Zirkel nach den Zahlen der Anleitung anreißen.
drawing-plan-left-out = Der Korb von oben
solid-coarser = (In weniger Dreiecke zerlegt als verlangt: es wären zu viele.)
solid-bands = (Reihen sind als glatte Bänder gezeigt: es sind zu viele Kreuzungen zum Zeichnen.)
