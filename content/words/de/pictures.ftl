# Wörter in den Bildern, und deren Alternativtexte.

picture-pass = passt
picture-adjust = nachstellen
picture-too-low = zu niedrig
picture-too-high = zu hoch
picture-unclear = noch unklar
picture-implausible = unstimmig
picture-no-figure = keine Zahl am Messgerät
picture-overload = OL
picture-off-scale = außerhalb der Skala
picture-no-readings = noch keine Messwerte
picture-no-limits = keine Grenzen
picture-right-band = richtig: { $limits }
picture-aim = Ziel { $value } { $unit }
picture-meter = Gerät ±{ $value } { $unit }
picture-between = { $low } bis { $high } { $unit }
picture-at-least = ab { $low } { $unit }
picture-at-most = bis { $high } { $unit }
picture-amount-turn = { $count ->
    [one] { $amount } Umdr.
   *[other] { $amount } Umdr.
}
picture-amount-click = { $count ->
    [one] { $amount } Raste
   *[other] { $amount } Rasten
}
picture-amount-nudge = { $count ->
    [one] { $amount } Tick
   *[other] { $amount } Ticks
}
picture-amount-mm = { $amount } mm
picture-way-in = hinein
picture-way-out = heraus
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = mehr
picture-way-less = weniger

gauge-alternative = { $label }: { $value }, { $result }. Grenzen: { $limits }.

approach-earlier = { $count } früher
approach-alternative = { $count ->
    [one] { $label }: ein Messwert, { $value }.
   *[other] { $label }: { $count } Messwerte der Reihe nach, der letzte { $value }.
}
approach-alternative-none = { $label }: noch keine Messwerte.

strip-hidden = { $count } frühere fehlen
strip-alternative = { $title }: { $passed } von { $count } Schritten passen.

sweep-closed = geschlossen
sweep-open = ganz offen
sweep-up = beim Öffnen
sweep-down = beim Schließen
sweep-drop-out = Aussetzer bei { $where }
sweep-dead-spot = tote Stelle bei { $where }
sweep-reversal = läuft rückwärts bei { $where }
sweep-no-return = kommt nicht zurück
sweep-not-wide-open = nicht ganz offen
sweep-nothing = nichts gefunden
sweep-alternative = { $label }: { $count } Messwerte von geschlossen bis ganz offen und zurück; { $found }.

connector-title = Stecker des Drosselklappensensors
connector-wire-unknown = Kabelfarbe unbekannt
connector-red = ROTE Leitung
connector-black = SCHWARZE Leitung
connector-pin = Pin { $pin }
connector-signal = Signal
connector-supply = Versorgung
connector-ground = Masse
connector-elsewhere = nicht in diesen Stecker
connector-wire = Kabel { $base }
connector-wire-striped = Kabel { $base }, Streifen { $stripe }
connector-seen = Von der Kabelseite gesehen: Spitzen am Kabel entlang
connector-seen-latch-up = Von der Kabelseite gesehen, Raste oben
connector-seen-latch-down = Von der Kabelseite gesehen, Raste unten
connector-colour-black = schwarz
connector-colour-white = weiß
connector-colour-grey = grau
connector-colour-brown = braun
connector-colour-red = rot
connector-colour-orange = orange
connector-colour-yellow = gelb
connector-colour-green = grün
connector-colour-light-green = hellgrün
connector-colour-blue = blau
connector-colour-light-blue = hellblau
connector-colour-violet = violett
connector-colour-pink = rosa
connector-alternative = { $title }, von der Kabelseite gesehen. Rote Leitung: { $red }. Schwarze Leitung: { $black }.

part-name-sensor-body = Sensorgehäuse
part-name-upper-screw = Sensor, obere Schraube
part-name-lower-screw = Sensor, untere Schraube
part-name-idle-stop = Leerlaufanschlag
part-name-fast-idle = Kaltstartknopf
part-name-cable = Gaszug
part-name-chain-adjuster = Kettenspanner
part-name-preload-collar = Federvorspannung
part-amount = { $amount } { $way }
part-way-in = hinein
part-way-out = heraus
part-way-clockwise = im Uhrzeigersinn
part-way-counter-clockwise = gegen den Uhrzeiger
part-way-more = mehr Spiel
part-way-less = weniger Spiel
part-until = bis das Gerät { $low } bis { $high } { $unit } zeigt
part-raises = hebt den Messwert
part-lowers = senkt den Messwert
part-seen-facing = von vorn gesehen
part-seen-below = zeigt nach unten: von unten sehen
part-factory-stop = Lackierter Werksanschlag: nie anrühren
part-alternative = { $title }: { $move }.
part-alternative-where = { $title }. Wo: { $where }.

causes-none = Keine Ursache passt zu den Messwerten
causes-more = … { $count } mehr
causes-rest = { $count ->
    [one] eine weitere, { $share }
   *[other] { $count } weitere, zusammen { $share }
}
causes-alternative = { $count ->
    [one] Eine Ursache: { $name }, { $share }.
   *[other] { $count } Ursachen, am wahrscheinlichsten { $name } mit { $share }.
}

record-set = eingestellt
record-right-as-found = war schon richtig
record-accepted = angenommen
record-not-set = nicht eingestellt
record-accepted-by = angenommen von { $name }
record-hidden = { $count } weitere Werte
record-no-values = keine Werte
record-alternative = { $count ->
    [one] Karte. { $title }, { $machine }, { $date }: { $result }, ein Wert, Code { $code }.
   *[other] Karte. { $title }, { $machine }, { $date }: { $result }, { $count } Werte, Code { $code }.
}

workshop-nothing = noch nichts
workshop-of = { $stopped } von { $reached }
workshop-stops-note = dunkles Ende: hier aufgehört
workshop-times-note = Punkt: die Mitte aller Fahrer
workshop-minutes = { $minutes } min
workshop-hidden = { $count } weitere
workshop-alternative = { $count ->
    [one] { $title }: eine Zeile.
   *[other] { $title }: { $count } Zeilen.
}
