# Ein Kurs: ob er sich ausgeht, sein Plan, was hilft.

class-date = { $weekday }, { $day }.{ $month }.{ $year }
class-weekday-1 = Mo
class-weekday-2 = Di
class-weekday-3 = Mi
class-weekday-4 = Do
class-weekday-5 = Fr
class-weekday-6 = Sa
class-weekday-7 = So

class-fits = Die Zeit reicht: Am { $day } um { $time } sind alle fertig.
class-proven = Kein Plan endet früher; das ist bewiesen.
class-gap = Vor { $day }, { $time } kann kein Plan enden; ob dieser der beste ist, ist nicht bekannt.
class-does-not-fit = Die Zeit reicht nicht: Kein Plan endet innerhalb der Sitzungen. Das ist bewiesen.
class-unknown = In der gegebenen Zeit fand sich kein Plan, ausgeschlossen ist er aber nicht. Mehr Zeit geben (--time-limit).
class-too-long = { $step }: { $minutes } ohne Unterbrechung, und die längste Sitzung hat { $longest }. Mehr Tage helfen nicht.
class-days-alone = { $days ->
    [one] Wer allein ist und auf niemanden wartet, braucht einen solchen Tag.
   *[other] Wer allein ist und auf niemanden wartet, braucht { $days } solche Tage.
}
class-days-with-moulds = { $days ->
    [one] Mit einer Form für jeden brauchen alle zusammen einen Tag.
   *[other] Mit einer Form für jeden brauchen alle zusammen { $days } Tage.
}
class-days-for-all = { $days ->
    [one] Mit dem, was da ist, brauchen alle zusammen einen Tag.
   *[other] Mit dem, was da ist, brauchen alle zusammen { $days } Tage.
}
class-days-at-least = Dass weniger als { $days } nicht reichen, ist bewiesen; ein besserer Plan braucht vielleicht weniger.
class-days-many = Auch viele Tage mehr reichen nicht, oder ein solcher Plan fand sich nicht rechtzeitig.

class-mend-days = { $count ->
    [one] ein Tag mehr
   *[other] { $count } Tage mehr
}
class-mend-half = ein halber Tag mehr
class-mend-moulds = { $count ->
    [one] eine Form mehr
   *[other] { $count } Formen mehr
}
class-mend-drills = { $count ->
    [one] ein Handbohrer mehr
   *[other] { $count } Handbohrer mehr
}
class-mend-tables = { $count ->
    [one] an den Tischen Platz für eine Person mehr
   *[other] an den Tischen Platz für { $count } Personen mehr
}
class-mend-hands = { $count ->
    [one] Hilfe für die Kursleitung bei einer Person mehr zugleich
   *[other] Hilfe für die Kursleitung bei { $count } Personen mehr zugleich
}
class-mend-fewer = { $count ->
    [one] eine Person weniger
   *[other] { $count } Personen weniger
}
class-mend-home = Umwicklung, Stopfen und Oberfläche abends zu Hause, von 19 bis 21 Uhr
class-mend-ready = für alle vorbereitet: { $things }
class-mend-fits = { $days ->
    [one] { $changes }. Dann reicht die Zeit, an einem Tag.
   *[other] { $changes }. Dann reicht die Zeit, an { $days } Tagen.
}
class-mend-fails = { $changes }: Auch so reicht die Zeit nicht.

class-student = Platz { $number }
class-hand-learner = lernend
class-hand-practised = geübt
class-mould-held = Form { $letter }, von { $from } bis { $to }
class-does = { $from }–{ $to } { $step }
class-does-rows = { $from }–{ $to } { $step }, Reihen { $first } bis { $last }
class-does-on = { $from }–{ $to } { $step } (weiter)
class-at-home = zu Hause, { $day }: { $does }
class-then-wait = dann ruht es bis { $day }, { $time }
class-due = { $day }, { $time }: zu spät, wenn Reihe { $row } nicht erreicht ist
class-waits-mould = { $student } wartet vor „{ $step }“ auf eine Form: { $minutes } Kurszeit
class-waits-drill = { $student } wartet vor „{ $step }“ auf einen Handbohrer: { $minutes } Kurszeit
class-waits-table = { $student } wartet vor „{ $step }“ auf Platz an einem Tisch: { $minutes } Kurszeit
class-waits-teacher = { $student } wartet vor „{ $step }“ auf die Kursleitung: { $minutes } Kurszeit
class-nobody-waits = Während des Kurses wartet niemand auf eine Form, einen Handbohrer, einen Tisch oder die Kursleitung.
class-session = { $day }, { $from } bis { $to }
class-session-of = { $title }, Sitzung { $number } von { $count }
class-chance = Von tausend Kursen, deren Zeiten etwa wie üblich schwanken (angenommen: je Person um das 0,8- bis 1,4-Fache, je Schritt um das 0,8- bis 1,5-Fache), enden { $share } rechtzeitig. Nach der üblichen Formel für den längsten Weg sind es { $formula }.
class-decides = Dauert „{ $step }“ um ein Viertel länger, so endet der Kurs { $minutes } später.
class-decides-all = Dauert „{ $step }“ um ein Viertel länger, so reicht die Zeit nicht mehr.
class-decides-nothing = Kein einzelner Schritt, der ein Viertel länger dauert, lässt den Kurs später enden.
class-timetable-work = Arbeit, nach Buchstaben
class-timetable-mould = auf einer Form
class-timetable-description = { $students ->
    [one] Ein Platz
   *[other] { $students } Plätze
} über { $sessions ->
    [one] eine Sitzung
   *[other] { $sessions } Sitzungen
}: Balken für die Arbeit, helle Bänder, solange eine Form belegt ist.
class-timetable = Wer macht wann was

# Die Muster eines Kurses.

class-samples-none = Die Stunden der Kursleitung in einem ganzen Jahr vor dem Kurs fassen die Arbeit an diesen Mustern nicht. Längere Stunden oder weniger Stände angeben.
class-samples-moulds = { $count ->
    [one] Die Muster brauchen eine eigene Form, { $letters }, neben denen der Teilnehmenden.
   *[other] Die Muster brauchen eigene Formen, { $letters }, neben denen der Teilnehmenden.
}
class-sample = Muster { $number }: { $stage }
class-sample-ready = Bereit für die Sitzung am { $day }, { $time }; spätestens begonnen am { $beginday }, { $begintime }. Halt nach Schritt { $step }. { $title }.
class-sample-mould = Auf Form { $letter }, von { $from } bis { $to }.
class-sample-work = { $step }. { $title }
class-samples-together = Alle Muster zusammen

# Was in der Datei eines Kurses nicht stimmt.

class-fault-large = Die Datei ist größer als 1 MB.
    .help = Ein Kurs hat wenige Kilobyte: Ist das die richtige Datei?
class-fault-toml = Das ist kein Kurs: { $said }
    .help = `stavewright class --help` zeigt eine ganze Datei mit allen Angaben.
class-fault-zone = Eine Zeitzone `{ $zone }` gibt es nicht.
    .help = Einen Ort der Zeitzonen-Datenbank schreiben, etwa "America/New_York".
class-fault-zone-near = Eine Zeitzone `{ $zone }` gibt es nicht.
    .help = Ist `{ $nearest }` gemeint?
class-fault-number = `{ $key }` kann nicht { $value } sein.
    .help = Eine Zahl von { $from } bis { $to } schreiben.
class-fault-step = „{ $word }“ ist kein Schritt.
    .help = Eines davon schreiben: { $all }.
class-fault-step-near = „{ $word }“ ist kein Schritt.
    .help = Ist „{ $nearest }“ gemeint?
class-fault-ready = „{ $word }“ kann nicht bereitliegen.
    .help = Eines davon schreiben: { $all }.
class-fault-ready-near = „{ $word }“ kann nicht bereitliegen.
    .help = Ist „{ $nearest }“ gemeint?
class-fault-stage = „{ $word }“ ist kein Stand.
    .help = Einen davon schreiben: { $all }.
class-fault-stage-near = „{ $word }“ ist kein Stand.
    .help = Ist „{ $nearest }“ gemeint?
class-fault-hours = `{ $hours }` sind keine Stunden eines Tages.
    .help = Als "09:00-12:30" schreiben, die frühere zuerst.
class-fault-date = `{ $date }` ist kein Datum eines Kurses.
    .help = Jahr, Monat und Tag schreiben, etwa "2027-03-13".
class-fault-hand = „{ $hand }“ sagt nicht, wie geübt jemand ist.
    .help = "learner" (lernend) oder "practised" (geübt) schreiben.
class-fault-nobody = Zu diesem Kurs kommt niemand.
    .help = [[students]] mit count = 12 und hand = "learner" ergänzen.
class-fault-students = { $count } Plätze sind zu viele.
    .help = Ein Kurs hat höchstens { $most }.
class-fault-moment = `{ $moment }` ist kein Zeitpunkt.
    .help = Als "2027-03-13 13:00" schreiben.
class-fault-late = Diese Teilnehmenden kommen, wenn der Kurs vorbei ist.
    .help = Sie vor dem Ende der letzten Sitzung kommen lassen.
class-fault-day-hours = Dieser Tag hat keine Stunden.
    .help = hours = ["09:00-12:00"] ergänzen.
class-fault-no-days = Der Kurs hat keine Tage.
    .help = [[days]] mit date = "2027-03-13" und hours = ["09:00-12:00"] ergänzen.
class-fault-days = { $count } Tage sind zu viele.
    .help = Ein Kurs hat höchstens { $most }.
class-fault-clock = Am { $date } werden die Uhren umgestellt, und { $time } ist keine eindeutige Zeit.
    .help = Die Sitzung zu einer anderen Zeit beginnen und enden lassen.
class-fault-overlap = Zwei Sitzungen am { $date } überschneiden sich.
    .help = Die eine vor der anderen enden lassen.

# Die eigene Hand, aus Aufzeichnungen gelernt.

hand-figure = { $records ->
    [one] { $figure }: { $value } (üblich { $usual }); aus einer Aufzeichnung, also mit 95 % Sicherheit zwischen { $from } und { $to }
   *[other] { $figure }: { $value } (üblich { $usual }); aus { $records } Aufzeichnungen, also mit 95 % Sicherheit zwischen { $from } und { $to }
}
hand-of = { $whose }, aus Aufzeichnungen gelernt
hand-own = der Werkstatt
hand-take-up = Einarbeitung, mal dem Üblichen
hand-row-height = Höhe einer Reihe, mal dem Üblichen
hand-shrink = Verlust an Höhe beim Trocknen, mal dem Üblichen
hand-pace-preparing = Zeit für Staken und Boden, mal dem Üblichen
hand-pace-weaving = Zeit für das Flechten, mal dem Üblichen
hand-pace-rim = Zeit für Reifen und Stifte, mal dem Üblichen
hand-pace-lashing = Zeit für die Umwicklung, mal dem Üblichen
hand-pace-fittings = Zeit für Ohren und Henkel, mal dem Üblichen
hand-pace-finishing = Zeit für Stopfen und Oberfläche, mal dem Üblichen
hand-spoilt = Verdorbene Staken
hand-drafted = Der Korb mit diesen Werten
hand-work = Arbeit: { $after }, vorher { $before }
hand-rows = Reihen: { $after }, vorher { $before }
hand-weaver = Flechtfaden am Korb: { $after }, vorher { $before }

# Das Verzeichnis der Arbeiten auf der Seite, und die Geschichte der Vorlagen.

record-says-work = Arbeit: { $value }
record-says-rows = { $value ->
    [one] eine Reihe
   *[other] { $value } Reihen
}
record-says-weaver = Flechtmaterial: { $value }
record-says-wet = Höhe nass: { $value }
record-says-dry = Höhe trocken: { $value }
record-says-girth-wet = Umfang nass: { $value }
record-says-girth-dry = Umfang trocken: { $value }
record-says-wood = Holz: { $value }
record-says-learner = lernend
record-says-staves = { $value } Staken, davon { $spoilt } verdorben

history-not-kept = Gespeichert. Was die Vorlage vorher war, ist nicht aufgehoben, denn der Speicher der Werkstatt lässt sich nicht benutzen: { $said }
history-unread = nicht zu vergleichen, denn eines von beiden ist nicht lesbar
history-nothing = nichts
history-alike = nur Anmerkungen oder Anordnung
history-differs = { $what } { $before } → { $after }
history-more = { $count ->
    [one] und eines mehr
   *[other] und { $count } mehr
}
history-staves-fewer = { $count ->
    [one] eine Stake weniger
   *[other] { $count } Staken weniger
}
history-staves-more = { $count ->
    [one] eine Stake mehr
   *[other] { $count } Staken mehr
}
history-rows-fewer = { $count ->
    [one] eine Reihe weniger
   *[other] { $count } Reihen weniger
}
history-rows-more = { $count ->
    [one] eine Reihe mehr
   *[other] { $count } Reihen mehr
}
