# Warum Stavewright wählte, was die Vorlage offen ließ, und was für oder gegen eine Bestakung spricht.

choice-base-diameter = so groß, wie er innerhalb von Staken der Dicke { $stave } am Fuß der Form (Umfang { $girth }) Platz hat
choice-base-thickness = { $thickness } sind üblich: über und unter der Nut bleibt Holz stehen
choice-base-groove-depth = { $depth } sind üblich: tief genug, damit die Füße auch nach dem Schwinden halten
choice-base-groove-width = die Staken sind { $stave } dick; mit { $play } Spiel lassen sie sich von Hand einsetzen
choice-base-screw-hole = { $hole } nehmen die übliche Schraube auf
choice-base-wood = { $wood } ist als Holz für Böden üblich; quer zur Faser schwindet es von grün bis darrtrocken um { $tangential }
choice-base-sealed = ein Anstrich vor dem Flechten hält Wasser und Finger vom Holz fern

choice-staves-gap = zwischen den Staken am Rand ist eine Breite des Flechtfadens üblich, aber nicht weniger als { $gap }
choice-staves-gap-weaver = zwischen den Staken am Rand ist eine Breite des Flechtfadens üblich: { $gap }
choice-staves-stock = { $stock } ist { $thickness } dick und passt in die Nut von { $groove }; { $count } Staken davon füllen die Form am besten
choice-staves-width = { $stock } wird in voller Breite verwendet
choice-staves-count = { $count } Staken aus { $stock } kommen einer Lücke von { $wanted } am nächsten: { $rim } am Rand, an der Form gemessen, und von Stake zu Stake { $narrowest } an der engsten und { $widest } an der weitesten Stelle
choice-staves-taper = volle Breite ({ $width }) ab { $from } die Form hinauf, { $foot } am Fuß; keine Lücke weicht mehr als { $worst } von der gewünschten ab (eine Breite, die der Form genau folgt: { $ideal })
choice-staves-taper-usual = die Verjüngung beginnt wie üblich { $above_foot } über dem Fuß, von { $width } auf { $foot }: Jede Lücke bleibt damit mindestens { $least } weit, und keine weicht mehr als { $worst } von der gewünschten ab (eine Breite, die der Form genau folgt: { $ideal })
choice-staves-taper-none = Staken in voller Breite bis zum Fuß: eine Verjüngung würde die schlechteste Lücke ({ $worst } neben der gewünschten) nicht um 0,1 mm bessern
choice-staves-length = { $groove } in der Nut, { $turn } um die Biegung, { $wall } Wand, { $rim } Rand und { $trim } zum Halten und Abschneiden
choice-staves-spares = { $spares ->
        [one] eine Ersatzstake
       *[other] { $spares } Ersatzstaken
    } auf { $count }: mindestens { $share }, und bei { $confidence } der Körbe genug, wenn { $spoilt } missraten
choice-staves-spacing = gleichmäßig nur am Fuß, wie üblich: jede Stake nimmt den Weg, auf dem sie flach liegt
choice-staves-oval-side = die gerundete Seite zeigt nach außen, wie üblich

choice-weave-courses = { $rows } Reihen { $finer } an der Biegung, einen Grad feiner, dann { $weaver } bis zur Oberkante der Form, weniger { $room }, die das Verdichten nimmt: Die Reifen kommen als Ringe darauf, wenn der Korb von der Form ist
choice-weave-courses-bent = { $rows } Reihen { $finer } an der Biegung, einen Grad feiner, dann { $weaver } bis { $room } unter die Oberkante der Form; das lässt Platz für den Rand

choice-lid-height = üblich: flach genug, um anzuliegen, hoch genug, um sich gut zu flechten und als Stülpdeckel den Rand zu decken
choice-lid-clearance = üblich: was ein feuchter Tag und dickes Rohr nehmen, und etwas mehr
choice-lid-across = damit sein umwickelter Rand mit der gewünschten Luft in die Öffnung von { $mouth } geht
choice-lid-across-cap = damit seine Öffnung mit der gewünschten Luft über alles geht, was darunter liegt, am Rand { $mouth }
choice-lid-across-flush = damit sein umwickelter Rand so groß ist wie der des Korbs, { $mouth }
choice-lid-hinge = in der Mitte einer langen Seite, wo der Rand am geradesten ist und ein Scharnier am leichtesten dreht
choice-lid-ledge = damit wenige Ringe nebeneinander weit genug unter den Deckel reichen
choice-lid-plaque = damit sich die Staken an den engen Enden nicht drängen
choice-rim-stock = { $width } breit und { $thickness } dick sind für einen solchen Korb üblich
choice-rim-stock-none = kein Halbrundrohr ist bekannt; angenommen sind { $width } mal { $thickness }
choice-rim-hoops = geleimte Ringe haben einen Stoß, den man nicht sieht, und lassen sich ohne Eile machen
choice-rim-lap = { $usual } sind üblich: so werden die Spitzen dünn wie Papier
choice-rim-lap-small = { $usual } sind an einem Rand unter { $small } Weite üblich
choice-rim-lap-fits-ends = kürzer als die üblichen { $usual }, damit sie zwischen den Enden des Henkels Platz findet
choice-rim-lap-fits = kürzer als die üblichen { $usual }, damit sie zwischen den Ohren Platz findet

choice-filler-common = Flechtrohr von { $width } Breite deckt die Spitzen zwischen den Reifen
choice-filler = breit genug, um die Spitzen von Staken der Dicke { $stave } zu decken
choice-filler-none = weder Flechtrohr noch Rundrohr ist bekannt, das Spitzen der Dicke { $stave } deckt

choice-lashing-weaver-same = der feinste Flechtfaden des Korbs liegt flach und bindet gut
choice-lashing-weaver-cane = { $weaver } liegt nicht flach um den Rand; Flechtrohr von { $width } Breite schon
choice-lashing-every-stave = die Staken haben { $pitch } Abstand; zwischen Windungen von { $width } Breite bleibt Platz
choice-lashing-every-other = die Staken haben nur { $pitch } Abstand; Windungen von { $width } Breite an jeder würden sich drängen
choice-lashing-style = einmal herum ist üblich
choice-lashing-tail = so viel hält, wenn es hinter den Rand gesteckt ist

choice-weave-first-face = wo Flechtrohr am schärfsten biegt, reißt es mit der matten Seite außen seltener

choice-pins-stock = der kürzeste Stift, der durch { $stack } reicht und umgelegt werden kann ({ $needed })
choice-pins-stock-short = der längste Stift, den es gibt; um durch { $stack } zu reichen und umgelegt zu werden, müssten es { $needed } sein
choice-pins-stock-none = keine Stifte sind bekannt; einer dieser Größe reicht durch { $stack } und kann umgelegt werden ({ $needed })
choice-pins-every-even = jede zweite Stake ist üblich, und hier geht es auf
choice-pins-every-alone = keine Umwicklung bindet diesen Rand, also wird jede Stake verstiftet
choice-pins-every-odd = jede zweite Stake ist üblich; wo das nicht aufgeht, wechselt an wenigen Stellen der Schritt

choice-ears-material = Messing ist dünn und fest und braucht kein Schnitzen
choice-ears-wood = { $wood }, wie der Boden
choice-ears-way = eine Angel, über die Reihen geflochten sind, hält am besten und fällt am wenigsten auf
choice-ears-axis = an den beiden Enden, damit ein Henkel außen an den langen Seiten hinuntergeht; von Seite zu Seite müsste er über die Enden reichen
choice-ears-placing-odd = bei { $count } Staken steht keine Stake einer anderen gegenüber: auf zwei Staken, wo ihre Stifte am besten halten, steht Ohr 2 um { $off } zu Stake { $toward } hin ({ $angle }); die meisten nehmen 2 bis 3 Grad hin
choice-ears-placing-even = bei { $count } Staken steht jede Stake einer anderen gegenüber
choice-ears-width = so breit wie eine Stake
choice-ears-width-least = breiter als eine Stake ({ $stave }), damit neben der Niete etwas stehen bleibt
choice-ears-width-most = schmaler als eine Stake ({ $stave }): breiter hält nicht besser
choice-ears-size-brass = üblich für Messingblech
choice-ears-size-wood = das übliche Kantholz von 10 mm, so weit abgerichtet, dass eine Niete hindurchreicht
choice-ears-size-bone = üblich für Bein
choice-ears-hole-height = so schwenkt das Ende des Henkels frei über dem Rand
choice-ears-tail-woven-in = Reihen über so viel davon halten sie
choice-ears-tail-pushed-down = lang genug, um hinter dem Geflecht zu halten
choice-ears-tail-stave = die ganze Wand hinunter und { $foot } mehr, wie eine Stake
choice-ears-tail-on-stave = die ganze Wand hinunter, auf ihrer Stake

choice-handle-width = üblich für einen Rand von { $rim } Durchmesser
choice-handle-axis = von Seite zu Seite ist er kurz und steif, und beide Enden bleiben für die Hand offen
choice-handle-knob-width = üblich für einen Knopf
choice-handle-knob-length = üblich für einen Knopf: Finger finden dahinter Platz
choice-handle-ends = die Hälfte der Wand unter dem Rand ({ $wall }), und nicht mehr als üblich
choice-handle-thickness = die dickste der üblichen, die ihren Bogen aushält, { $radius } an der engsten Stelle
choice-handle-thickness-thinnest = die dünnste der üblichen; an der engsten Stelle ist ihr Bogen { $radius }
choice-handle-curve = ein Halbkreis biegt sich gleichmäßig: keine Stelle ist stärker gebogen als eine andere
choice-handle-curve-corner = ein Eckradius ist angegeben, darum ist der Bogen ein Korbbogen
choice-handle-curve-rise = eine Höhe ist angegeben, darum ist der Bogen eine halbe Ellipse
choice-handle-rise = im Verhältnis zur halben Spannweite von { $half_span }
choice-handle-rise-semicircle = die halbe Spannweite, wie bei jedem Halbkreis
choice-handle-rise-not-semicircle = ein Halbkreis ist so hoch wie seine halbe Spannweite, { $half_span }, und nicht anders
choice-handle-corner = ergibt einen ebenmäßigen Bogen bei einer halben Spannweite von { $half_span }
choice-handle-not-three-centred = mit dieser Höhe und diesem Eckradius überspannt kein Korbbogen das Doppelte von { $half_span }
choice-handle-rivet = lang genug für { $grip } Klemmlänge und einen Kopf ({ $needed })
choice-handle-rivet-short = der längste, den es gibt; für { $grip } Klemmlänge müssten es { $needed } sein
choice-handle-rivet-none = keine Niete sind bekannt; einer dieser Größe braucht { $needed } für { $grip } Klemmlänge

stave-reason-lock = jeder Abschnitt geht auf { $count } auf
stave-reason-no-lock = nicht jeder Abschnitt geht auf { $count } auf
stave-reason-some-run = auf { $count } Staken laufen { $amiss } von { $courses } Abschnitten nicht wie gewünscht
stave-reason-stock-narrow = Staken von { $width } Breite lassen sich nicht aus Material von { $stock } Breite schneiden
stave-reason-groove-tight = { $thickness } dick, zu dick für eine Nut von { $groove }
stave-reason-groove-loose = { $thickness } dick, locker in einer Nut von { $groove }
stave-reason-groove-fits = { $thickness } dick, passt in eine Nut von { $groove }
stave-reason-ears = bei { $count } Staken steht für die Ohren keine Stake einer anderen gegenüber
stave-reason-gap = Lücke { $rim } am Rand, über die Höhe { $over }, gewünscht { $wanted }
stave-reason-weaver-jams = an der engsten Lücke, { $narrowest }, klemmt ein Flechtfaden von { $weaver } Dicke
stave-reason-feet-overlap = Füße von { $foot } Breite überlappen: Platz ist für { $touch }
stave-reason-foot-thin = Füße von { $foot } Breite sind dünn; kräftig wären { $least }
stave-reason-too-stiff = steht am Fuß { $off } von der Form ab: eingeweicht biegt es sich auf einen Radius von { $radius }
stave-reason-work = { $count } Staken zu formen und zu setzen
