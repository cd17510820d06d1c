# Was zwischen Fahrer und Werkstattplatz hin und her geht. $name ist ein Anzeigename; $text ist, was jemand schrieb, unverändert.

## An den Fahrer

too-fast = Das ist schneller, als ich folgen kann. Warte eine Minute, dann schick das Letzte noch einmal.
called-already = Ein Mensch in der Werkstatt weiß Bescheid. Dort sieht man alles, was du schickst.
called-taken = { $name } aus der Werkstatt sieht das jetzt.
called-closed-until = Die Werkstatt hat gerade zu. Du kommst zuerst dran: { $when }.
called-way-back = "stop" stellt alles zurück, wie es war.
called-put-back = Zurückstellen, wie es war
held-by = { $name } aus der Werkstatt hat das jetzt. Was du schreibst, geht dorthin.
taken-by = { $name } aus der Werkstatt ist jetzt bei dir. Was du schreibst, geht dorthin.
passed-on = { $name } gibt dich weiter; jemand anderes aus der Werkstatt schreibt dir hier.
staff-says = { $name } (Werkstatt): { $text }
staff-sends-picture = { $name } (Werkstatt) hat ein Bild geschickt.
asked-by = { $name } (Werkstatt) bittet um einen Messwert. { $measure }:
asked-question-by = { $name } (Werkstatt) fragt:
asked-noted = { $shown }. { $name } sieht es.
asked-answered = Danke. { $name } sieht es.
given-back = { $name } gibt dich zurück. Du sprichst wieder mit dem Programm.
given-back-fresh = Erst Strom und Messspitzen, dann eine frische Zahl.
closed-by = { $name } aus der Werkstatt hat das abgeschlossen.
closed-not-rideable = Brücke ab, Messspitzen heraus. So nicht starten und nicht fahren.

## Die Karte

desk-card = Fall { $id }, { $state }
desk-card-flag = Alarm steht an. { $flag }
desk-state-waiting = wartet seit { $since }
desk-state-taken = übernommen von { $name }
desk-state-returned = zurückgegeben ({ $since })
desk-state-closed = abgeschlossen ({ $since })
desk-erased = Fall { $id }: Der Fahrer hat alles über sich löschen lassen. Der Fall ist vorbei.
desk-rideable = Fest und eingestellt, Messspitzen heraus: darf gestartet werden.
desk-not-rideable = So NICHT starten, NICHT fahren.
desk-machine-power = { $power }; { $probes }.
desk-machine-parts = Sensor { $sensor }; { $stop }; { $knob }.
desk-machine-engine = Motor { $engine }; Startliste: { $confirmed } von { $items } bestätigt.
desk-awake = Wach, Brücke steckt seit { $since }
desk-asleep = Schläft, Brücke ab
desk-probes-none = keine Messspitzen drin
desk-probes-unsure = Messspitzen vielleicht noch drin
desk-probes-signal = Messspitzen auf Signal und Masse
desk-probes-supply = Messspitzen auf Versorgung und Masse
desk-probes-ground = Messspitzen auf Masse und Batterie-Minus
desk-probes-battery = Leitungen an der Batterie
desk-sensor-tight = fest
desk-sensor-loose = LOCKER
desk-stop-set = Leerlaufanschlag eingestellt
desk-stop-off = Leerlaufanschlag HERAUSGEDREHT
desk-stop-off-by = Leerlaufanschlag HERAUSGEDREHT, { $turns } { $turns ->
    [1] Umdrehung
   *[other] Umdrehungen
 } gezählt
desk-knob-set = Kaltstartknopf eingestellt
desk-knob-off = Kaltstartknopf HERAUSGEDREHT
desk-knob-off-by = Kaltstartknopf HERAUSGEDREHT, { $clicks } { $clicks ->
    [1] Raste
   *[other] Rasten
 } gezählt
desk-engine-running = LÄUFT
desk-engine-hot = aus, ist gelaufen
desk-engine-cold = aus, noch nicht gelaufen
desk-no-set-up-open = Keine Einstellung ist offen.
desk-who = Fahrer: { $name } auf { $platform }
desk-where = { $machine }, { $at }, seit { $since }. Code { $code }.
desk-at = bei "{ $stage }"
desk-at-part = bei "{ $stage }", Teil { $part } von { $parts }
desk-about = { $machine }, Code { $code }
desk-answer = { $question }: { $answer }
desk-own-words = Schrieb: { $text }
desk-head-readings = Messwerte:
desk-head-tried = Versucht:
desk-head-causes = Wahrscheinlich:
desk-reading = { $measure }: { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure }: { $shown }, { $result } ({ $limits }; { $source })
desk-reading-plain = { $measure }: { $shown }
desk-first = { $measure }, zuerst
desk-as-found = { $measure }, wie vorgefunden
desk-asked-for = { $measure }, angefragt
desk-struck = { $measure }: "{ $typed }", gestrichen: { $why }
desk-why-asleep = schlief
desk-why-implausible = unstimmig
desk-why-unclear = zu grob zum Urteilen
desk-why-asked = wandert
desk-why-doubted = noch einmal angefragt
desk-figure = { $value } { $unit }
desk-figures = { $low } bis { $high } { $unit }
desk-overload = über dem Bereich
desk-nothing = nichts angezeigt
desk-limits = { $low } bis { $high }
desk-limits-high = höchstens { $high }
desk-limits-low = mindestens { $low }
desk-result-pass = passt
desk-result-low = zu niedrig
desk-result-high = zu hoch
desk-result-unclear = zu grob zum Urteilen
desk-result-implausible = unstimmig
desk-result-accepted = angenommen von { $name }
desk-source-manual = Handbuch
desk-source-workshop = Werkstatt
desk-source-common-practice = allgemein üblich
desk-source-owner = Angabe des Fahrers
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction }, { $amount } { $unit }: von { $before } auf { $after }
desk-unit-turn = { $amount ->
    [1] Umdrehung
   *[other] Umdrehungen
 }
desk-unit-click = { $amount ->
    [1] Raste
   *[other] Rasten
 }
desk-unit-nudge = { $amount ->
    [1] Tick
   *[other] Ticks
 }
desk-unit-mm = mm
desk-direction-in = hinein
desk-direction-out = heraus
desk-direction-clockwise = im Uhrzeigersinn
desk-direction-counter-clockwise = gegen den Uhrzeigersinn
desk-direction-more = mehr Spiel
desk-direction-less = weniger Spiel
desk-checked = { $check }
desk-cause = { $cause }: { $share } %
desk-cautions = Bestätigte Warnhinweise: { $cautions }
desk-reason = Grund des Rufs: { $reason }
desk-job = Auftrag { $job }
desk-history-remark = { $name } notierte: { $note }
desk-history-accepted = { $name } nahm an: { $note }
desk-history-cleared = { $name } erklärte für vorbei: { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure }: { $value }. { $why }

desk-take = Übernehmen
desk-take-over = Von { $name } übernehmen
desk-give-back = Zurückgeben
desk-ask = Messwert anfragen
desk-check = Prüfung schicken
desk-close = Abschließen
desk-help = Hilfe

## In einem Fall

desk-owner-said = Fahrer { $name }: { $text }
desk-owner-changed = Fahrer { $name } änderte eine Nachricht: { $text }
desk-owner-picture = Fahrer { $name } schickte ein Bild.
desk-owner-picture-with = Fahrer { $name } schickte ein Bild: { $text }
desk-owner-pressed = Fahrer { $name } drückte: { $choice }
desk-read-along = { $measure }: { $shown } wäre { $result } ({ $limits }).
desk-taken = { $name } hat ihn. Was du hier schreibst, geht an den Fahrer. "/hilfe" zeigt den Rest.
desk-taken-from = { $name } hat ihn von { $from } übernommen. Was du hier schreibst, geht an den Fahrer.
desk-yours = Du hast ihn schon.
desk-held-by = { $name } hat ihn.
desk-take-first = Niemand hat ihn. Übernimm ihn erst.
desk-not-sent = Noch hat ihn niemand: Nichts ging an den Fahrer. Übernimm ihn erst.
desk-too-old = Das ist zu lange her. Der Fahrer kann wieder rufen.
desk-passed = { $name } gibt Fall { $id } weiter. Wer übernimmt?
desk-passed-to = { $name } gibt Fall { $id } weiter an { $to }.
desk-returned = { $name } hat ihn zurückgegeben. Das Programm macht weiter.
desk-closed = { $name } hat ihn abgeschlossen.
desk-closed-cause = { $name } hat ihn abgeschlossen. Ursache: { $cause }
desk-closed-already = Er ist schon abgeschlossen.
desk-which-cause = Welche Ursache war es?
desk-asked = Angefragt: { $measure }
desk-ask-which = Welcher Messwert? Drück einen, oder schreib "/frag ganz geschlossen".
desk-ask-unknown = Diesen Messwert kenne ich nicht. Diese kann ich anfragen:
desk-ask-running = Der hat einen eigenen Schritt: mit "/sprung" dorthin, dann zurückgeben.
desk-asked-answer = { $check } Antwort: { $answer }
desk-check-which = Welche Prüfung? Drück eine.
desk-check-unknown = Diese Prüfung kenne ich nicht. Diese kann ich schicken:
desk-check-sent = Geschickt: { $check }
desk-accept-reason = Nenn einen Grund: "/gilt laut Handbuch zulässig".
desk-accept-loose = Der Sensor ist locker und wird sich bewegen. Lass ihn erst festziehen und neu messen.
desk-accept-none = Es gibt keinen Wert zum Annehmen.
desk-accepted = { $measure }: { $shown } angenommen von { $name }. So steht es im Protokoll.
desk-stages = Wohin? "/sprung" und eines von: { $stages }.
desk-goes-on-at = Zurückgegeben, geht es bei "{ $stage }" weiter.
desk-goes-on-at-after = Zurückgegeben, geht es bei "{ $stage }" weiter; davor kommt die Startliste, ab "{ $first }".
desk-no-set-up = Keine Einstellung ist offen.
desk-flag-up = Ein Alarm steht an. { $flag } Vergewissere dich, dass es vorbei ist, dann schreib "/vorbei" und woher du es weißt.
desk-no-flag = Kein Alarm steht an.
desk-withdrawn = Dieser Ablauf ist zurückgezogen, und kein anderer hat diesen Schritt: Das Programm kann damit nicht weitermachen. Schließ den Fall ab.
desk-clear-reason = Schreib, wie du dich vergewissert hast: "/vorbei Leck behoben, trocken".
desk-cleared = { $name } hat es für vorbei erklärt.
desk-noted = Notiert. Es bleibt am Werkstattplatz.
desk-note-empty = Schreib es dahinter: "/notiz Klappe wohl verbogen".
desk-job-noted = Auftrag { $job }.
desk-job-none = Jetzt ohne Auftragsnummer.
desk-edited = Eine geänderte Nachricht wird nicht noch einmal geschickt. Schreib eine neue.
desk-start = Startlinks sind für Fahrer.
desk-choice-unknown = Dieser Knopf tut hier nichts.
desk-command-unknown = Den Befehl kenne ich nicht. Nichts ging an den Fahrer. "/hilfe" zeigt, was es gibt.
desk-case-past = Dieser Fall ist vorbei. Der jetzige des Fahrers ist { $id }.
desk-case-unknown = Einen solchen Fall kenne ich nicht.
desk-case-unknown-id = Einen Fall { $id } kenne ich nicht.
desk-unreachable = Das hat den Fahrer nicht erreicht: { $why }
desk-unanswered = Der Fahrer wartet seit { $minutes } Minuten auf { $name }.

desk-help-talk = Einfache Worte und Bilder gehen an den Fahrer, unter deinem Namen. Was mit "/" oder "." beginnt, nie.
desk-help-take = /nimm: Du übernimmst. /weitergeben NAME: an jemand anderen.
desk-help-measure = /frag MESSWERT: Das Programm fragt und beurteilt. /prüfung NAME: Es schickt eine Prüfung.
desk-help-decide = /gilt GRUND: Der letzte Wert gilt. /sprung SCHRITT: wo es weitergeht. /vorbei WIE: Ein Alarm ist vorbei.
desk-help-end = /zurückgeben: Das Programm macht weiter. /abschließen URSACHE: Ende, mit Protokoll.
desk-help-note = /notiz TEXT bleibt hier. /auftrag NUMMER. /karte, /protokoll, /protokoll json.
desk-help-desk = Am Werkstattplatz als Ganzem: fälle, suche WÖRTER, protokoll CODE, heute zu, wieder offen, tips.
desk-help-case = Im Faden eines Falls: übernehmen, dann "/hilfe".

## Der Werkstattplatz als Ganzes

desk-reminder = Fall { $id } wartet seit { $minutes } Minuten. { $reason }
desk-hint = Fälle kommen hierher. "hilfe" zeigt, was ich kann.
desk-in-thread = Mach das im Faden des Falls. "fälle" listet sie auf.
desk-list-none = Kein Fall wartet, keiner ist in Arbeit.
desk-list-waiting = Wartend: { $count }
desk-list-taken = In Arbeit: { $count }
desk-list-case = { $id }: { $name }, { $machine }, Code { $code }, seit { $since }, { $state }. { $reason }
desk-list-state-waiting = wartet
desk-list-state-taken = in Arbeit
desk-list-state-returned = zurückgegeben
desk-list-state-closed = abgeschlossen
desk-found-none = Zu { $text } fand ich nichts.
desk-found-record = Protokoll { $code }: { $machine }, { $result }, { $when }
desk-result-record-set = eingestellt
desk-result-record-right-as-found = war schon richtig
desk-result-record-accepted = angenommen
desk-result-record-not-set = nicht eingestellt
desk-closed-today = Für heute geschlossen.
desk-closed-today-until = Für heute geschlossen. Fahrer erfahren: { $when }. "wieder offen" nimmt es zurück.
desk-open-again = Wieder nach den Öffnungszeiten.
desk-summary = Der Tag endet. Wartend: { $waiting }, in Arbeit: { $taken }, heute beendet: { $ended }, Protokolle: { $done }.
desk-record-head = Fall { $id }: { $name }, eröffnet { $opened }
desk-record-reading = { $reading }: { $value } ({ $result })
desk-record-asked = { $measure }: "{ $typed }", angefragt
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = : { $note }
desk-record-cause = Ursache: { $cause }
desk-did-opened = eröffnet
desk-did-flagged = Alarm
desk-did-cleared = { $name } erklärte einen Alarm für vorbei
desk-did-taken = { $name } übernahm
desk-did-passed = { $name } gab weiter
desk-did-returned = { $name } gab zurück
desk-did-closed = { $name } schloss ab
desk-did-reopened = { $name } rief wieder
desk-did-accepted = { $name } nahm an
desk-did-asked = { $name } fragte an
desk-did-checked = { $name } schickte eine Prüfung
desk-did-jumped = { $name } wählte den Schritt
desk-did-remark = { $name } notierte
desk-json = { $json }

## Warum ein Mensch gerufen wird

reason-asked = Der Fahrer bat um einen Menschen.
reason-procedure-withdrawn = Der Ablauf wurde zurückgezogen, und kein anderer hat diesen Schritt.
reason-meter-too-coarse = Das Messgerät des Fahrers zeigt zu wenige Stellen, um zu entscheiden.
reason-factory-stop-turned = Der Werksanschlag der Klappe wurde verdreht: Auf die geschlossene Stellung ist kein Verlass.
reason-factory-stop-turned-owner = Dann ist auf die geschlossene Stellung kein Verlass. Das ist etwas für einen Menschen.
reason-factory-stop-unsure = Der Fahrer kann nicht sagen, ob der Werksanschlag verdreht wurde.
reason-factory-stop-unsure-owner = Ein Mensch hilft dir, das zu erkennen.
reason-cable-tight-at-lock = Die Leerlaufdrehzahl ändert sich beim Lenken: Gaszug oder Kabelbaum ist zu stramm.
reason-cable-tight-at-lock-owner = Etwas zieht am Gas. So darf sie nicht gefahren werden.
reason-not-the-sensor = Die Leerlaufdrehzahl wird nur erreicht, wenn das Signal außerhalb seiner warmen Grenzen liegt: nicht der Sensor. Schmutzige Bohrung, Ventile, Kerze, Benzin oder Falschluft.
reason-not-the-sensor-owner = Das macht nicht der Sensor. Wir lassen ihn in Ruhe und suchen die Ursache.
reason-flag-throttle-sticks = ALARM: Das Gas klemmt.
reason-flag-revs-hang = ALARM: Die Drehzahl bleibt oben oder steigt.
reason-flag-engine-wont-stop = ALARM: Der Motor geht nicht aus.
reason-flag-fuel-leak = ALARM: Benzingeruch oder Leck.
reason-flag-smoke = ALARM: Rauch, Brand oder Dampf.
reason-flag-hot-leads = ALARM: Leitungen, Brücke oder Batterie heiß oder funkend.
reason-flag-pump-runs-on = ALARM: Die Pumpe hört nicht auf.
reason-flag-unwell = ALARM: Jemandem ist unwohl, vielleicht durch Abgas.
reason-flag-injured = ALARM: Jemand ist verletzt.
reason-call-unknown-cause = Keine bekannte Ursache erklärt die Messwerte.
reason-call-not-for-an-owner = Die wahrscheinlichste Ursache kann ein Fahrer nicht selbst beheben.
reason-call-nothing-left = Alles, was ein Fahrer prüfen kann, ist geprüft, und die Messwerte stimmen noch nicht.
reason-call-look-alike = Mehrere Ursachen sehen am Messgerät gleich aus. Ein Mensch muss sie unterscheiden.
reason-stuck-slots-at-end = Der Sensor ist am Ende seiner Langlöcher, und der Messwert stimmt noch nicht.
reason-stuck-moves-stop-helping = Weiterdrehen bringt den Messwert nicht mehr näher.
reason-stuck-too-coarse = Die Schritte dieses Teils sind zu grob für seine Grenzen.
desk-picture-readings = Alle Messwerte mit ihren Grenzen.
desk-picture-approach = Was in diesem Schritt gedreht wurde, und was es bewirkte.
desk-picture-causes = Die wahrscheinlichen Ursachen.

## Die Zahlen der Werkstatt

report-counts = Beendete Einstellungen: { $ended }. Abgeschlossene Fälle: { $closed }.
report-stops = { $procedure }: wo Fahrer aufhören
report-times = { $procedure }: Zeit je Schritt
report-causes = Gefundene Ursachen, nach Monat
report-head-stage = Schritt
report-head-reached = kamen hin
report-head-stopped = hörten dort auf
report-head-quarter = ein Viertel brauchte höchstens
report-head-half = die Hälfte
report-head-three-quarters = drei Viertel (min)
report-head-cause = Ursache
report-picture = Bild: { $file }
report-nothing = noch nichts
