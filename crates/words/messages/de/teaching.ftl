# Was Lehrende wissen wollen: die üblichen Fehler mit ihrer Abhilfe, und Fragen an die Gruppe.

## Fehler

fault-cut-uneven = Die Verjüngungen sind von Stake zu Stake verschieden.
    .cure = Alle nach einer Lehre formen und nebeneinanderlegen. Was abweicht, kommt zu den Ersatzstaken.
fault-cut-one-edge = Nur eine Kante wurde abgenommen: Die Stake steht schief.
    .cure = Die Stake gewendet auf ihren eigenen Umriss legen. An der anderen Kante ebenso viel abnehmen oder eine neue beginnen.
fault-cut-foot = Der Fuß geht nicht in die Nut oder fällt heraus.
    .cure = Zu dick: die Fläche schleifen und nie zwingen, denn der Rand der Nut platzt ab. Zu dünn: als Ersatz aufheben oder mit einem Span verkeilen.

fault-bend-splinters = Die Außenseite splittert an der Biegung.
    .cure = Einen neuen machen: ein Splitter läuft weiter. Länger dämpfen, sofort und in einem Zug biegen, die geradeste Faser nach außen.
fault-bend-springs = Der Henkel federt auf, wenn er von seiner Form kommt.
    .cure = Er kam zu früh herunter oder wurde zu trocken gebogen. Noch einmal dämpfen, etwas enger biegen als gezeichnet und noch eine Nacht liegen lassen.

fault-seal-groove = Schellack ist in die Nut oder ins Schraubenloch gelaufen.
    .cure = Auskratzen, wenn er trocken ist: die Füße sitzen darin zu eng, und der Leim des Zapfens hält darauf nicht. Beim nächsten Mal dort weniger auf den Pinsel nehmen.

fault-base-off-centre = Der Boden sitzt nicht mitten auf der Form.
    .cure = Die Schraube lösen, an vier Stellen von Rand zu Rand messen, wieder festziehen. Neben der Mitte wird eine Seite des Korbs steiler.
fault-base-marks = Die Marken gehen am Ende der Runde nicht auf.
    .cure = Auswischen und mit den Vierteln neu beginnen. Den Unterschied nicht in den letzten Lücken verstecken.

fault-staves-count = Es ist eine Stake mehr oder weniger als { $count }.
    .cure = Vor der ersten Reihe zählt jemand anderes, in Zehnern. Eine daneben ändert das Muster ebenso wie die Lücken.
fault-staves-wander = Staken neigen sich oder wandern von ihrem Platz.
    .cure = Anfeuchten, mit dem Teilstreifen ausrichten, das Band feucht wieder anlegen und in Form trocknen lassen.
fault-staves-upright = Eine Stake, die sich neigen muss, wird gerade gezogen, und eine ihrer Kanten steht von der Form ab.
    .cure = Loslassen und vom Fuß her flach andrücken: Wo sie am Rand ankommt, dort ist ihre Marke. Nachsehen, ob der Teilstreifen am Rand bei Stake 1 beginnt.
fault-staves-crack = Eine Stake bricht an der Biegung.
    .cure = Die anderen länger im Tuch durchziehen lassen und nach und nach um den Daumen biegen. Jetzt Ersatz einsetzen, nicht später.
fault-staves-face = Eine Stake hat ihre runde Seite auf der anderen Seite.
    .cure = Vor der ersten Reihe in flachem Licht an der Wand entlangsehen und sie wenden.

fault-first-skipped = Zwei Reihen liegen gleich übereinander: Eine Stake wurde falsch umflochten.
    .cure = Gleich bis dorthin zurückgehen. Jede Reihe darüber macht es mühsamer.
fault-first-loose = Zwischen Boden und erster Reihe ist Licht zu sehen.
    .cure = Anfeuchten, den Flechtfaden Runde für Runde zum Ende hin straffen und vor der nächsten Reihe an den Boden drücken.
fault-first-cracks = Das Rohr bricht an der Wende.
    .cure = Einen neuen Faden etwas länger einweichen, den Anfang dünner schaben und ohne Knick wenden. Etwa ab der vierten Reihe geht es leicht.
fault-first-seam = Nach der ersten Runde wechselt der Flechtfaden nicht die Seite.
    .cure = Die Staken zählen. Sind es { $count }, wurde in dieser Runde eine übersprungen; sonst erst die Zahl richtigstellen, dann weiterflechten.

fault-half-bulges = Die Wand steht von der Form ab.
    .cure = Andrücken, solange sie feucht ist, und einen Finger hinter dem Flechtfaden lassen. Wo es eine Handbreit absteht, Reihen lösen.
fault-half-drawn-in = Die Staken werden zusammengezogen und die Lücken eng.
    .cure = Weniger ziehen. Den Flechtfaden um die Stake legen, nicht zerren, und die Lücken mit dem Streifen richten.
fault-half-join = Ein Ansatz ist zu sehen, oder sein Ende rutscht heraus.
    .cure = Das alte Ende dort abschneiden, wo es über einer Stake liegt, und das neue hinter der vierten Stake davor beginnen. Beide feucht aufeinander liegen lassen.
fault-half-twill = Die Diagonale bricht ab.
    .cure = Sie hinunterverfolgen bis zur letzten richtigen Reihe. Dort liegt die erste falsch umflochtene Stake; bis dahin lösen.
fault-half-twined = Die Flechtfäden wurden in falscher Folge genommen.
    .cure = Immer den hintersten nehmen. Die anderen so lange mit Klammern festhalten.
fault-half-colour = Eine Farbe beginnt an der falschen Stake.
    .cure = Vor ihrer zweiten Reihe mit der Karte vergleichen. An jede Stake, an der ein Band beginnt, ein Schildchen klammern.

fault-to-ears-height = Das Geflecht ist an den Stellen der beiden Ohren verschieden hoch.
    .cure = An beiden bezeichneten Staken messen, bevor die Ohren angelegt werden. Die höhere Seite zusammendrücken; in einer Spirale ist der Unterschied höchstens eine Reihe.

fault-rest-wander = Nach einer Pause stehen Staken schief.
    .cure = Anfeuchten und eine Viertelstunde binden, bevor es weitergeht; am Ende jeder Sitzung binden.
fault-rest-slopes = Die Reihen steigen auf einer Seite an.
    .cure = An den vier Vierteln vom Boden aus messen. Die hohe Seite andrücken, die niedrige lassen, bis beide gleich sind.

fault-dry-early = Der Rand kam auf das feuchte Geflecht: Später klafft darunter eine Lücke.
    .cure = Trocknen, andrücken, auffüllen, dann der Rand. Ist es geschehen, vor dem Umwickeln eine dünne Reihe einschieben.
fault-dry-damp = Das Geflecht fühlt sich innen noch kühl an: Es ist feucht.
    .cure = Noch einen Tag in bewegter Luft lassen. Was an der Wange kühl ist, ist feucht.

fault-ears-opposite = Die Ohren stehen einander nicht gegenüber.
    .cure = Von einem zum anderen in beiden Richtungen zählen oder ein Maßband um den Rand legen, bevor etwas geschnitten oder verdeckt wird.
fault-ears-neighbour = Ein Ohr sitzt an der Stake neben der richtigen.
    .cure = Es sind { $count } Staken, also ist ein Weg um eine länger. Beide Staken mit Garn bezeichnen, bevor die Ohren gemacht werden.
fault-ears-slips = Die Angel rutscht hoch, während die Reihen darübergehen.
    .cure = Mit dem Band fest und feucht anbinden und die erste Reihe darüberlegen, ohne sie hochzuziehen. Nach jeder Reihe beide Ohren messen.
fault-ears-lifts = Die Angel hebt beim Hineinschieben die Reihen.
    .cure = Erst mit der Ahle den Weg öffnen und das Ende der Angel dünner schaben. Die Reihen wieder niederdrücken, bevor verstiftet wird.
fault-ears-brass = Das Messingohr hat eine scharfe Kante und schneidet ins Rohr.
    .cure = Herausnehmen, alle Kanten mit der Feile brechen und auf Papier abziehen, bis es an keinem Tuch mehr hängen bleibt.
fault-ears-wood = Das Ohr reißt beim Bohren, oder seine Angel bricht.
    .cure = Bohren, bevor der Umriss gesägt wird, mit Restholz dahinter. Die Angel dick lassen, bis er angepasst ist.
fault-ears-bone = Der Knochen splittert am Rand der Bohrung.
    .cure = Langsam von beiden Seiten bohren, nass, mit scharfem Bohrer und Restholz dahinter.

fault-rings-size = Ein Ring wird zu groß oder zu klein.
    .cure = Beide Enden am Korb selbst anzeichnen und den Ring vor dem Leimen auf den Marken schließen. Was nicht passt, ist für einen anderen Korb.
fault-rings-scarf = Die Schäftung hat eine Stufe oder klafft.
    .cure = Abnehmen, bis die Spitzen dünn wie Papier sind, über die ganze Länge. Geschlossen ansehen, dann erst leimen; trocken schleifen.
fault-rings-crack = Der Streifen bricht beim Biegen.
    .cure = Länger einweichen und nach und nach über dem Knie biegen, die runde Seite nach außen. Den Riss in die Schäftung legen, wenn Platz ist.

fault-off-sticks = Der Korb geht nicht von der Form.
    .cure = Nachsehen, ob die Schraube heraus ist. Die Form wärmen oder alles noch einen Tag trocknen lassen und hin und her drehen. Nie an der obersten Reihe hebeln.
fault-off-tips = Die Spitzen springen auseinander, oder die obersten Reihen kommen hoch.
    .cure = Vor dem Abheben ein Band um die Spitzen legen und lassen, bis der Außenreifen sitzt.

fault-rim-slopes = Der Rand steht auf einer Seite höher.
    .cure = Dort die Klammern abnehmen und die untere Kante des Reifens ringsum auf die letzte Reihe setzen, bevor etwas gekürzt wird.
fault-rim-gap = Zwischen Ring und Stake ist eine Lücke.
    .cure = Von den Ohren aus klammern und andrücken. Ein Ring, der locker bleibt, ist zu groß: einen anderen nehmen.
fault-rim-short = Die Enden eines Reifens überlappen nicht weit genug.
    .cure = Beide Enden am Korb anzeichnen, bevor geschnitten wird. Zu kurz bleibt zu kurz: für einen kleineren Korb aufheben.
fault-rim-scarf = Die Schäftung eines Reifens hat eine Stufe oder klafft.
    .cure = Beide Enden über die ganze Schäftung abnehmen, in der Mitte etwas mehr, und aufeinander klammern, bevor die nächste Klammer sitzt.
fault-rim-cracks = Der Reifen bricht beim Biegen.
    .cure = Wieder einweichen und nach und nach über dem Knie biegen. Den Riss in die Schäftung legen, wenn Platz ist.

fault-pins-bit = Der Bohrer bricht im Rand ab.
    .cure = Stecken lassen, daneben durch dieselbe Stake bohren, langsam und gerade. Mehrere Bohrer bereithalten.
fault-pins-bend = Der Stift biegt sich beim Schlagen.
    .cure = Erst durch alle Lagen bohren. Den Block fest an den Kopf halten und das Ende kurz abzwicken: etwa 1,5 mm genügen.
fault-pins-splits = Die Stake reißt, oder der Stift kommt daneben heraus.
    .cure = Die Mitte der Stake auf dem äußeren Reifen anzeichnen. Eine gerissene Spitze hält die Umwicklung; die nächste Stake verstiften.
fault-pins-ears = Die Stake eines Ohrs blieb ohne Stift.
    .cure = Jetzt verstiften, durch Reifen, Ohr, Stake und Reifen, was die Zählung auch sagt. Dieser Stift hält den Henkel.

fault-lashing-frays = Die Umwicklung fasert oder bricht.
    .cure = Wieder anfeuchten, gerade durch die Lücke ziehen und nicht über eine Kante. Mit kürzeren Fäden arbeiten.
fault-lashing-slack = Die Windungen werden beim Trocknen locker.
    .cure = Jede anziehen, den Daumen auf der vorigen, und den Rand trocknen lassen, bevor die Enden abgeschnitten werden.
fault-lashing-runs-out = Der Faden endet kurz bevor die Runde geschlossen ist.
    .cure = Drei oder vier Windungen früher neu ansetzen. Beide Enden zwischen die Reifen stecken, wo die Randfüllung sie verdeckt.
fault-lashing-crosses = Die Kreuze treffen sich nicht in der Mitte des Randes.
    .cure = Die erste Runde ansehen, bevor es zurückgeht: Jede Windung neigt sich gleich und lässt keine Lücke aus.

fault-handle-level = Der Henkel steht schief.
    .cure = Den Korb auf einen ebenen Tisch stellen und den Henkel ausrichten, bevor das zweite Loch angezeichnet wird. Beide Löcher liegen auf einer Höhe.
fault-handle-binds = Der Henkel schwingt nicht, oder er wackelt.
    .cure = Zu fest: beim Schlagen Papier von der Dicke einer Scheibe beilegen. Zu locker: den Rand des Niets ringsum leicht nachschlagen.
fault-handle-cracks = Das Holz reißt an der Biegung oder am Loch.
    .cure = Ein Riss geht weiter: einen neuen nehmen. Langsam mit scharfem Bohrer bohren, bevor die Enden gerundet werden, und den Henkel nicht weiter auffedern, als es leicht geht.

fault-plug-proud = Der Zapfen steht vor, oder Leim fleckt den Boden.
    .cure = Mit flach aufgelegter Säge bündig schneiden, mit der Faser schleifen und den Fleck vor jedem Anstrich abschleifen.
fault-plug-lashing = Das Schleifpapier ging über die Umwicklung und machte sie haarig.
    .cure = Jetzt nur noch Holz schleifen. Nichts absengen: Haare mit kleiner Schere schneiden.

fault-lid-rocks = Der Deckel wackelt oder klemmt.
    .cure = Wackelt: Die Auflage ist nicht eben; sie ringsum gegen den Reifen drücken, bevor der Leim fest wird. Klemmt: Die enge Stelle mit einem Papierstreifen suchen und die Umwicklung dort mit einem glatten Stab andrücken.

fault-finish-runs = Der Anstrich läuft oder bleibt klebrig.
    .cure = Einen Läufer gleich abwischen. Zwei dünne Anstriche trocknen, ein dicker nicht; warten, wie der Hersteller sagt, in trockenem Raum.
fault-finish-oil = Das Öl wurde nicht abgewischt und bleibt klebrig.
    .cure = Mit etwas frischem Öl auf einem Lappen abreiben, ein paar Minuten warten und alles abwischen. Auf die Lappen achten.
fault-finish-hairs = Enden und Haare stehen im Anstrich.
    .cure = Vor dem ersten Anstrich mit der Hand darüberfahren, auch innen, und schneiden, was hängen bleibt.

## Fragen an die Gruppe

question-taper = Warum wird eine Stake zum Fuß hin schmaler?
    .answer = Der Umfang des Bodens ist kleiner als der des Randes. { $count } Staken voller Breite lägen in der Nut übereinander.
question-odd = Warum { $count } Staken? Was täte ein Flechtfaden bei { $more }?
    .answer = Bei ungerader Zahl wechselt er in jeder Runde die Seite und bindet jede Stake. Bei { $more } läge er in jeder Runde gleich, und nichts hielte.
question-twill = Wohin steigt die Diagonale, und was kehrt sie um?
    .answer = Sie steigt dorthin, wohin jede Reihe um eine Stake weiterrückt. Andersherum flechten, oder eine Zahl, die zur anderen Seite abweicht, kehrt sie um.
question-band = Was tun die Staken, wenn das Band abgeht, solange sie feucht sind?
    .answer = Sie federn zurück, trocknen so und bleiben so. Bei jeder Pause werden sie angefeuchtet und gebunden.
question-dry = Warum wartet der Rand, bis das Geflecht trocken ist?
    .answer = Rohr quillt im Wasser. Beim Trocknen wird jede Reihe schmaler, und zusammen ergibt das eine Lücke, die unter dem Rand klaffen würde.
question-base = Der Boden misst { $base }. Bleibt das so, und in welcher Richtung bewegt er sich?
    .answer = Holz quillt und schwindet quer zur Faser mit der Feuchte der Luft, längs kaum. Darum brauchen die Staken etwas Luft in der Nut.
question-ears = Steht bei { $count } Staken irgendeine einer anderen gegenüber?
    .answer = Nein: Bei ungerader Zahl liegt jeder Stake eine Lücke gegenüber. Die Ohren teilen den Unterschied, oder eines steht ein wenig daneben.
question-ear-pins = Welche Stifte tragen den Korb, wenn er am Henkel hängt?
    .answer = Die durch die Ohren: Reifen, Ohr, Stake, Reifen. Alle anderen halten nur die Reifen zusammen.
question-scarfs = Warum liegen die Schäftungen der beiden Reifen auseinander?
    .answer = Eine Schäftung ist die schwächste und steifste Stelle eines Reifens. Auseinander wird jede vom vollen Holz des anderen gehalten.
question-lashing = Wie findet man heraus, wie viel Flechtrohr ein Rand braucht?
    .answer = Eine Windung legen, das messen und mit der Zahl der Windungen malnehmen (hier { $wraps }); dann die Enden dazu.
question-oil = Wo sind die öligen Lappen jetzt?
    .answer = Flach ausgebreitet zum Trocknen oder unter Wasser in einer Blechdose mit Deckel. Auf einem Haufen können sie sich selbst entzünden.
question-next = Was würdet ihr beim nächsten Korb anders machen?
    .answer = Alle schreiben es in ihr Blatt, mit der Zeit, die es gebraucht hat.
