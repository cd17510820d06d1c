# Was das Programm in jedem Ablauf selbst sagt. $value, $low, $high, $amount sind Zahlen; $unit ist ein Einheitenzeichen.

greeting = Hallo. Ich bin der Einstellhelfer von { $workshop }: ein Programm, hinter dem Menschen stehen.
greeting-scope = Ich leite an, du entscheidest. Das Handbuch des Herstellers, die Vorschriften vor Ort und der Fachbetrieb gehen vor.
greeting-kept = Was du schickst, hebe ich { $days } Tage auf; lesen können es du und die Werkstatt. "lösch mich" löscht es, "Werkstatt" ruft jemanden.
menu-procedure = Was möchtest du machen?
menu-machine = Welche Maschine ist es?
set-up-opened = { $machine }: Wir gehen Schritt für Schritt vor.

link-unknown = Dieser Link führt zu etwas, das ich nicht habe.
link-replace = Bei dir läuft schon eine Einstellung. Diese behalten oder die neue beginnen?
link-keep = Behalten
link-start-new = Neue beginnen
link-left-as-is = Die andere Einstellung endet hier. Was verdreht wurde, bleibt so.
withdrawn = Die Werkstatt hat diesen Ablauf zurückgezogen: { $why }.
withdrawn-goes-on = Wir machen mit dem richtigen weiter.

button-done = Fertig
button-understood = Verstanden
button-skip = Auslassen
button-yes = Ja
button-no = Nein
button-jumping = Der Wert springt
button-stale = Dieser Knopf ist von vorhin. Wir sind jetzt hier.
button-over = Das ist vorbei. Das kann ich für dich tun.

ask-number = Schick die Zahl.
ask-speed = Schick die Leerlaufdrehzahl.
ask-readings = Schick alle { $count } Zahlen in einer Nachricht, der Reihe nach.

heard-question = Sind das { $value } { $unit }?
heard-as = { $typed } = { $value } { $unit }
send-again = Also nicht das.
send-all-at-once = Ich brauche alle in einer Nachricht, von geschlossen bis geschlossen.
read-again = Das ist ein großer Sprung. Sieh noch einmal hin, jede Stelle.
read-once-more = Sieh noch einmal hin und schick jede Stelle.
came-back-differently = Der Wert kam anders zurück als vorher.
passed-to-desk = Das ging an die Werkstatt.
number-wanted = Ich brauche die Zahl vom Messgerät.
choose-one = Bitte wähle eine Antwort.
confirm-wanted = Tippe auf den Knopf oder schreib fertig, wenn es so ist.
not-yet = Lass dir Zeit. Tippe auf den Knopf oder schreib fertig, wenn es so ist.
lost-reading = Nur die Zahl vom Messgerät, mit allen Stellen.
lost-person = Wenn es nicht weitergeht, schreib Werkstatt: Dort sieht es sich jemand an.
picture-kept = Danke für das Bild. Ich kann es nicht lesen; ein Mensch in der Werkstatt schon.
picture-passed-on = Das Bild ging an die Werkstatt.
edited = Du hast eine Nachricht geändert. Ich richte mich nur nach neuen.

unclear-nothing-understood = Das habe ich nicht verstanden.
unclear-two-meanings = Das könnte zweierlei heißen.
unclear-bare-figure = Ich brauche die Zahl mit Komma oder mit Einheit.
unclear-wrong-quantity = Das ist eine andere Einheit. Stell das Messgerät auf Gleichspannung.
unclear-malformed-number = Ich kann die Zahl nicht entziffern. Bitte nur die Ziffern.
unclear-sign-or-bullet = Ich weiß nicht, ob das ein Minuszeichen ist.
unclear-bound-only = Ich brauche, was die Anzeige zeigt, alle Stellen.
unclear-refers-back = Ich brauche einen frischen Messwert.
unclear-too-long = Das ist mir zu lang. Bitte nur die Zahl.
unclear-one-number = Ich brauche eine Zahl: was das Messgerät jetzt zeigt.
unclear-count = Ich brauche eine Zahl.
unclear-digits = Das ist zu grob zum Urteilen. Stell das Messgerät auf den Bereich mit Schritten von { $digit }.
unclear-meter = So genau kann dieses Messgerät es nicht zeigen.

verdict-pass = { $value } { $unit }. Passt.
verdict-loose = { $value } { $unit }. So festhalten.
verdict-out = { $value } { $unit }. Soll: { $low } bis { $high }.
verdict-out-high = { $value } { $unit }. Soll: höchstens { $high }.
verdict-out-low = { $value } { $unit }. Soll: mindestens { $low }.
verdict-sweep-pass = Der Wert steigt durchgehend und kommt zurück. Passt.
noted = { $value } { $unit }, notiert.
loop-high = { $value }. Zu hoch.
loop-low = { $value }. Zu niedrig.

odd-value = { $value } { $unit } passt nicht ins Bild.
odd-range = { $low } bis { $high } { $unit }: Der Wert wandert.
next-range = Stell auf den nächsten Bereich.
odd-overload = Das Messgerät ist über seinem Bereich.
odd-nothing = Das Messgerät zeigt nichts.
odd-sweep = Im Durchlauf steigt und fällt der Wert nicht, wie er soll.
asleep-again = Das Steuergerät ist eingeschlafen, oder das Messgerät.
jumped-once-more = Noch einmal, und vorher nach den Leitungen sehen.

move-until = Bei { $low } bis { $high } aufhören. Loslassen.
# Zu einer Hand, die nicht weniger als einen Tick schafft.
amount-nudges = { $amount ->
    [1] einen Tick
   *[other] etwa { $amount } Ticks
 }
amount-turns = { $amount ->
    [0.0625] eine sechzehntel Umdrehung
    [0.125] eine achtel Umdrehung
    [0.1875] drei sechzehntel Umdrehungen
    [0.25] eine viertel Umdrehung
    [0.5] eine halbe Umdrehung
    [0.75] eine dreiviertel Umdrehung
    [1] eine Umdrehung
   *[other] { $amount } Umdrehungen
 }
amount-clicks = { $amount ->
    [1] eine Raste
   *[other] { $amount } Rasten
 }
move-sensor-body-clockwise = Dreh den Sensor { amount-nudges } im Uhrzeigersinn.
move-sensor-body-counter-clockwise = Dreh den Sensor { amount-nudges } gegen den Uhrzeigersinn.
move-idle-stop-in = Dreh den Leerlaufanschlag hinein, etwa { amount-turns }.
move-idle-stop-out = Dreh den Leerlaufanschlag heraus, etwa { amount-turns }.
move-fast-idle-in = Dreh den Kaltstartknopf hinein, { amount-clicks }.
move-fast-idle-out = Dreh den Kaltstartknopf heraus, { amount-clicks }.
move-upper-screw-in = Obere Schraube hinein, einen Tick.
move-upper-screw-out = Obere Schraube heraus, einen Tick.
move-lower-screw-in = Untere Schraube hinein, einen Tick.
move-lower-screw-out = Untere Schraube heraus, einen Tick.
# Dasselbe, solange die Hand noch am Teil ist: wenige Worte.
again-nudge-clockwise = Im Uhrzeigersinn, { amount-nudges }.
again-nudge-counter-clockwise = Gegen den Uhrzeigersinn, { amount-nudges }.
again-nudge-in = Hinein, { amount-nudges }.
again-nudge-out = Heraus, { amount-nudges }.
again-turn-in = Hinein, { amount-turns }.
again-turn-out = Heraus, { amount-turns }.
again-click-in = Hinein, { amount-clicks }.
again-click-out = Heraus, { amount-clicks }.
again-mm-more = Mehr Spiel, { $amount } mm.
again-mm-less = Weniger Spiel, { $amount } mm.
again-until-clockwise = Im Uhrzeigersinn auf { $low } bis { $high }. Loslassen.
again-until-counter-clockwise = Gegen den Uhrzeigersinn auf { $low } bis { $high }. Loslassen.
again-until-in = Hinein auf { $low } bis { $high }. Loslassen.
again-until-out = Heraus auf { $low } bis { $high }. Loslassen.
aim-off = Festziehen verschiebt den Wert. Das halten wir vor.
move-cable-more = Gib dem Gaszug { $amount } mm mehr Spiel.
move-cable-less = Gib dem Gaszug { $amount } mm weniger Spiel.

do-wake = { $wake }
do-sleep = Lass das Steuergerät wieder einschlafen: Zieh ab, was es geweckt hat.
do-probe = Rote Leitung an das { $signal }, schwarze an das { $ground }.
do-probe-supply = Rote Leitung an das { $supply }, schwarze an das { $ground }.
do-probe-ground = Rote Leitung an das { $ground }, schwarze an Batterie-Minus.
do-probe-battery = Rote Leitung an Batterie-Plus, schwarze an Batterie-Minus.
do-unprobe = Nimm die Messspitzen heraus.
do-back-off-idle-stop = Leerlaufanschlag: { $where }. Dreh ihn heraus.
do-back-off-fast-idle = Kaltstartknopf: { $where }. Dreh ihn heraus.
do-free-play-cable = Gib dem Gaszug freies Spiel.
do-turn-bars = Dreh den Lenker von Anschlag zu Anschlag.
do-mark-sensor-body = Markiere, wie der Sensor sitzt.
do-restore-sensor-body = Stell den Sensor zurück auf deine Markierung.
do-loosen-sensor-screws = Löse beide Sensorschrauben, bis er sich mit etwas Widerstand drehen lässt.
do-tighten-sensor-screws = Zieh beide Schrauben abwechselnd an, immer nur ein wenig. Hände weg, kurz warten.
do-tighten-sensor-screws-to = Zieh beide Schrauben abwechselnd an, immer nur ein wenig, bis { $torque } Nm. Hände weg, kurz warten.
do-open = Gas ganz auf.
do-close = Gas zu.
do-snap = Reiß das Gas auf und lass los.
do-engage-fast-idle = Drück den Kaltstartknopf hinein.
do-release-fast-idle = Dreh den Gasgriff zu, bis der Kaltstartknopf herausspringt.
do-start-engine = Starte den Motor.
do-stop-engine = Stell den Motor ab.
do-check-leads = Sieh nach, in welchen Kabeln die Messspitzen stecken. Steck sie richtig.
do-check-meter = Messgerät: Gleichspannung, HOLD und REL aus, rote Leitung in der Voltbuchse.
do-check-cable = Dreh den Lenker und beobachte den Wert. Mach einen strammen Gaszug frei.
do-check-screws = Drück mit der Hand gegen den Sensor und beobachte den Wert. Zieh an, was locker ist.

unit-per-minute = U/min

# "das … Kabel": Farben stehen als Stamm, -e und -em kommen hier daran.
wire-supply = Versorgungskabel
wire-signal = Signalkabel
wire-ground = Massekabel
wire-plain = { $colour }e Kabel
wire-striped = { $colour }e Kabel mit { $stripe }em Streifen
colour-black = schwarz
colour-white = weiß
colour-grey = grau
colour-brown = braun
colour-red = rot
colour-orange = orangefarben
colour-yellow = gelb
colour-green = grün
colour-light-green = hellgrün
colour-blue = blau
colour-light-blue = hellblau
colour-violet = violett
colour-pink = rosafarben
tool-any = das richtige Werkzeug
part-sensor-body = Sensor
part-upper-screw = obere Schraube
part-lower-screw = untere Schraube
part-idle-stop = Leerlaufanschlag
part-fast-idle = Kaltstartknopf
part-cable = Gaszug
part-chain-adjuster = Kettenspanner
part-preload-collar = Federvorspannung

measure-supply-voltage = Versorgung
measure-ground-drop = Spannungsabfall Masse
measure-battery-voltage = Batterie
measure-charging-voltage = Ladespannung
measure-signal-closed-stop = Ganz geschlossen
measure-signal-idle = Leerlauf
measure-signal-idle-static = Leerlauf, Motor aus
measure-signal-idle-warm = Leerlauf, warm
measure-signal-fast-idle = Kaltstart
measure-signal-released = Nach Kaltstart
measure-signal-wide-open = Ganz offen
measure-signal-sweep = Durchlauf
measure-signal-snapped = Nach Zuschnappen
measure-idle-speed = Leerlaufdrehzahl
measure-free-play = Spiel
measure-chain-slack = Kettendurchhang
measure-rider-sag = Durchhang mit Fahrer
measure-free-sag = Durchhang ohne Fahrer
measure-tyre-pressure = Reifendruck

caution-guidance-only = Das hier ist nur eine Anleitung: Das Handbuch des Herstellers geht vor. Im Zweifel aufhören und fragen.
caution-guidance-only-name = nur eine Anleitung
caution-fuel-and-heat = Nur bei kaltem Motor. Keine Flamme, kein Funke in der Nähe von Benzin.
    Nie das Gas festbinden, nie eine Benzinleitung öffnen.
caution-fuel-and-heat-name = Benzin und Hitze
caution-battery-care = Ringe und Uhr ab. Halte die Leitungen auseinander: Ein Kurzschluss kann dich verbrennen.
caution-battery-care-name = Batterie
caution-back-probing = Schieb dünne Messspitzen an den Kabeldichtungen entlang hinein. Nie ein Kabel anstechen.
    Halte die Spitzen auseinander: Versorgung auf Masse kann das Steuergerät zerstören.
caution-back-probing-name = Messspitzen im Stecker
caution-waking = Motor aus, Gang heraus, Hände weg: Ein Anlasserknopf kann den Motor durchdrehen.
    Wird etwas warm, raucht es oder läuft die Pumpe weiter: abziehen und mir sagen.
caution-waking-name = Wecken
caution-stops-off = Solange die Anschläge herausgedreht sind, drückt niemand den Anlasser.
caution-stops-off-name = Anschläge herausgedreht
caution-loose-sensor = Solange der Sensor locker ist, drückt niemand den Anlasser. Finger weg von der Drosselklappe.
caution-loose-sensor-name = lockerer Sensor
caution-running-engine = Abgas tötet: nur im Freien.
    Hände, Leitungen und Kleidung weg von Kette, Rad und Auspuff.
    Dreht er hoch: Killschalter.
caution-running-engine-name = laufender Motor
caution-hot-engine = Er läuft und ist heiß. Dreh den Leerlaufanschlag von der Seite, weg von Auspuff und Lüfter.
caution-hot-engine-name = heißer Motor

figure-taken = { $value } { $unit }, aus deinem Handbuch.
figure-out-of-reach = Das kann nicht stimmen: Ich erwarte { $low } bis { $high } { $unit }. Schlag noch einmal nach.

check-only-by-wire = Gas ohne Zug heißt: Ein Motor bewegt die Klappe und kann Finger einklemmen. Wir messen nur; gestellt wird hier nichts.
check-only-riveted = Ein fester Sensor wird nicht gestellt. Wir messen nur.
check-only-not-known = Solange das nicht bekannt ist, messen wir nur und drehen an nichts.
check-only-map-not-known = Ohne das Kennfeld zu kennen, gibt es keinen Sollwert. Wir messen nur.
check-only-codes = Ein gespeicherter Fehlercode geht vor. Wir messen nur und stellen nichts.
check-only-dirty-bore = Erst die Bohrung reinigen: Auf Schmutz eingestellt, ist es morgen wieder falsch. Wir messen nur.
check-only-no-figure = Ohne Sollwert gibt es nichts, worauf man stellt. Wir messen nur.
check-only-not-adjustable = Der Sensor dieser Maschine sitzt fest und wird nicht gestellt. Wir messen nur.

help = Schreib eine Zahl oder: fertig, zurück, nochmal, Pause, stop, Werkstatt. Rauch, Benzin, ein Gas, das klemmt: sag es einfach.
where = { $machine }. Teil { $part } von { $parts }: { $name }.
where-plain = { $machine }.
part-begins = Teil { $part } von { $parts }: { $name }.
back-engine-runs = Stell erst den Motor ab.
back-sensor-loose = Stell erst den Sensor ein und zieh ihn fest.
back-no-further = Davor kommt nichts mehr.
paused = Schreib mir, wenn du weitermachst.
pause-engine = Stell erst den Motor ab.
come-back = Willkommen zurück.
come-back-pins = Sieh erst nach, ob beide Messspitzen noch sitzen wie vorher.
awake-too-long = Das Steuergerät ist seit { $minutes } Minuten wach. Schone die Batterie.

give-up = Sollen wir alles zurückstellen, wie es war?
way-back-uncounted = Der Leerlaufanschlag wurde nicht gezählt. Dreh ihn hinein, bis er gerade berührt. Der Leerlauf wird nicht wie vorher sein: noch nicht fahren.
give-up-restore = Zurückstellen
give-up-leave = So lassen
give-up-go-on = Weitermachen
give-up-wait = Auf den Menschen warten

called = Ich habe einen Menschen in der Werkstatt gerufen. Dort sieht man alles, was du geschickt hast.
called-closed = Die Werkstatt hat gerade zu. Wenn sie öffnet, kommst du zuerst dran.
called-go-on = Du kannst solange weitermachen.
enough = Das sind jetzt { $minutes } Minuten. "Werkstatt" ruft jemanden zu Hilfe; "Pause" hält deinen Platz frei.
leave-it = Brücke ab, Messgerät aus. So nicht starten und nicht fahren.
held = Das wartet auf einen Menschen in der Werkstatt. Brücke ab, Messgerät aus. So nicht starten und nicht fahren.

flag-throttle-sticks-first = Killschalter! Hände weg vom Gasgriff. Nicht wieder starten.
flag-revs-hang-first = Killschalter! Stehen lassen. Nicht wieder starten.
flag-engine-wont-stop-first = Killschalter! Brücke ab. Abstand halten.
flag-fuel-leak-first = Killschalter! Brücke ab. Kein Funke, keine Flamme. Weg von der Maschine.
flag-smoke-first = Killschalter! Brücke ab. Weg von der Maschine. Wenn es brennt: Notruf.
flag-hot-leads-first = Brücke ab! Leitungen nicht anfassen. Abstand halten.
flag-pump-runs-on-first = Brücke sofort ab! Lass sie ab.
flag-unwell-first = Motor aus! Sofort an die frische Luft. Nicht gleich besser: Notruf.
flag-injured-first = Motor aus! Wenn es ernst ist: Notruf. Erst um den Verletzten kümmern.

stuck-slots-at-end = Der Sensor ist am Ende seiner Langlöcher. Lass ihn so: Das ist etwas für einen Menschen.
stuck-moves-stop-helping = Weiterdrehen hilft jetzt nicht. Das ist etwas für einen Menschen.
stuck-too-coarse = Feiner lässt es sich von Hand nicht stellen. Ein Mensch entscheidet.
call-unknown-cause-owner = Ich weiß nicht, was solche Werte zeigen würde. Das ist etwas für einen Menschen.
call-not-for-an-owner-owner = Das macht man nicht in der Garage nach Chat. Ein Mensch übernimmt.
call-nothing-left-owner = Wir haben alles geprüft, was von hier aus geht. Ein Mensch übernimmt.
call-look-alike-owner = Mehrere Ursachen sähen so aus. Ein Mensch übernimmt.

record-set = { $machine } ist eingestellt. Gut gemacht.
record-right-as-found = { $machine } war schon richtig. Es wurde nichts Wichtiges verändert.
record-accepted = { $machine }: mit der Werkstatt abgeschlossen.
record-not-set = { $machine } ist nicht eingestellt.
record-baseline-checked = Der Grundwert wurde bei ganz geschlossener Klappe geprüft.
record-baseline-not-checked = Der Grundwert selbst wurde nicht geprüft.
record-elsewhere = Dein Problem kommt nicht vom Sensor. Sieh nach Falschluft, Ventilen, Kerze, Filter und Benzin.
record-accepted-by = Ein Wert wurde von { $name } angenommen.
record-value = { $measure }: { $value } { $unit }
record-speed-not-checked = Leerlaufdrehzahl nicht geprüft.
record-code = Dein Protokoll hat den Code { $code }. Heb ihn für die Werkstatt auf.

erase-question = Alles über dich hier löschen? Das lässt sich nicht rückgängig machen.
erase-yes = Löschen
erase-no = Behalten
erased = Alles über dich ist gelöscht.
