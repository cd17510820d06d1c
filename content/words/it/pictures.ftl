# Parole dentro le immagini, e i loro testi alternativi.

picture-pass = giusto
picture-adjust = da regolare
picture-too-low = troppo basso
picture-too-high = troppo alto
picture-unclear = non ancora chiaro
picture-implausible = non torna
picture-no-figure = nessun valore sul tester
picture-overload = OL
picture-off-scale = fuori da questa scala
picture-no-readings = ancora nessuna misura
picture-no-limits = senza limiti
picture-right-band = giusto: { $limits }
picture-aim = mira { $value } { $unit }
picture-meter = tester ±{ $value } { $unit }
picture-between = da { $low } a { $high } { $unit }
picture-at-least = { $low } { $unit } o più
picture-at-most = { $high } { $unit } o meno
picture-amount-turn = { $count ->
    [one] { $amount } giro
   *[other] { $amount } giri
}
picture-amount-click = { $count ->
    [one] { $amount } scatto
   *[other] { $amount } scatti
}
picture-amount-nudge = { $count ->
    [one] { $amount } pelo
   *[other] { $amount } peli
}
picture-amount-mm = { $amount } mm
picture-way-in = dentro
picture-way-out = fuori
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = più
picture-way-less = meno

gauge-alternative = { $label }: { $value }, { $result }. Limiti: { $limits }.

approach-earlier = { $count } prima
approach-alternative = { $count ->
    [one] { $label }: una misura, { $value }.
   *[other] { $label }: { $count } misure in ordine, l'ultima { $value }.
}
approach-alternative-none = { $label }: ancora nessuna misura.

strip-hidden = { $count } precedenti non mostrate
strip-alternative = { $title }: { $passed } passi giusti su { $count }.

sweep-closed = chiuso
sweep-open = tutto aperto
sweep-up = in apertura
sweep-down = in chiusura
sweep-drop-out = vuoto al { $where }
sweep-dead-spot = punto morto al { $where }
sweep-reversal = torna indietro al { $where }
sweep-no-return = non ritorna
sweep-not-wide-open = non apre tutto
sweep-nothing = niente da segnalare
sweep-alternative = { $label }: { $count } misure da chiuso a tutto aperto e ritorno; { $found }.

connector-title = Connettore del sensore
connector-wire-unknown = colore del filo ignoto
connector-red = Puntale ROSSO
connector-black = Puntale NERO
connector-pin = pin { $pin }
connector-signal = segnale
connector-supply = alimentazione
connector-ground = massa
connector-elsewhere = non in questo connettore
connector-wire = filo { $base }
connector-wire-striped = filo { $base } rigato di { $stripe }
connector-seen = Visto dal lato dei fili: si entra lungo i fili
connector-seen-latch-up = Visto dal lato dei fili, fermo in alto
connector-seen-latch-down = Visto dal lato dei fili, fermo in basso
connector-colour-black = nero
connector-colour-white = bianco
connector-colour-grey = grigio
connector-colour-brown = marrone
connector-colour-red = rosso
connector-colour-orange = arancione
connector-colour-yellow = giallo
connector-colour-green = verde
connector-colour-light-green = verde chiaro
connector-colour-blue = blu
connector-colour-light-blue = azzurro
connector-colour-violet = viola
connector-colour-pink = rosa
connector-alternative = { $title }, visto dal lato dei fili. Puntale rosso: { $red }. Puntale nero: { $black }.

part-name-sensor-body = Corpo del sensore
part-name-upper-screw = Sensore, vite superiore
part-name-lower-screw = Sensore, vite inferiore
part-name-idle-stop = Vite di fermo del minimo
part-name-fast-idle = Pomello avviamento a freddo
part-name-cable = Cavo dell'acceleratore
part-name-chain-adjuster = Tendicatena
part-name-preload-collar = Ghiera del precarico
part-amount = { $amount } { $way }
part-way-in = dentro
part-way-out = fuori
part-way-clockwise = in senso orario
part-way-counter-clockwise = in senso antiorario
part-way-more = più gioco
part-way-less = meno gioco
part-until = finché il tester segna da { $low } a { $high } { $unit }
part-raises = alza la misura
part-lowers = abbassa la misura
part-seen-facing = visto di fronte
part-seen-below = rivolto in basso: guardalo da sotto
part-factory-stop = Fermo di fabbrica verniciato: mai toccarlo
part-alternative = { $title }: { $move }.
part-alternative-where = { $title }. Dove si trova: { $where }.

causes-none = Nessuna causa spiega le misure
causes-more = … altre { $count }
causes-rest = { $count ->
    [one] un'altra, { $share }
   *[other] altre { $count }, { $share } in tutto
}
causes-alternative = { $count ->
    [one] Una causa: { $name }, { $share }.
   *[other] { $count } cause, la più probabile { $name } con { $share }.
}

record-set = regolato
record-right-as-found = già giusto
record-accepted = accettato
record-not-set = non regolato
record-accepted-by = accettato da { $name }
record-hidden = altri { $count } valori
record-no-values = nessun valore
record-alternative = { $count ->
    [one] Scheda. { $title }, { $machine }, { $date }: { $result }, un valore, codice { $code }.
   *[other] Scheda. { $title }, { $machine }, { $date }: { $result }, { $count } valori, codice { $code }.
}

workshop-nothing = ancora niente
workshop-of = { $stopped } su { $reached }
workshop-stops-note = punta scura: fermi qui
workshop-times-note = punto: la persona di mezzo
workshop-minutes = { $minutes } min
workshop-hidden = altri { $count }
workshop-alternative = { $count ->
    [one] { $title }: una riga.
   *[other] { $title }: { $count } righe.
}
