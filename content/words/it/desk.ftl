# Ciò che passa tra un proprietario e il banco dell'officina. $name è il nome visibile di una persona; $text è quello che qualcuno ha scritto, tale e quale.

## Al proprietario

too-fast = Vai più veloce di quanto io possa seguire. Aspetta un minuto, poi invia di nuovo l'ultimo.
called-already = Una persona dell'officina lo sa già. Vede tutto quello che invii.
called-taken = { $name }, dell'officina, ora lo vede.
called-closed-until = L'officina è chiusa. La tua chiamata è la prima: { $when }.
called-way-back = "stop" rimette tutto com'era.
called-put-back = Rimettere com'era
held-by = Ora se ne occupa { $name }, dell'officina. Riceve quello che scrivi.
taken-by = { $name }, dell'officina, ora è con te. Riceve quello che scrivi.
passed-on = { $name } ti passa a un'altra persona dell'officina, che scriverà qui.
staff-says = { $name } (officina): { $text }
staff-sends-picture = { $name } (officina) ha inviato una foto.
asked-by = { $name } (officina) chiede una misura. { $measure }:
asked-question-by = { $name } (officina) chiede:
asked-noted = { $shown }. { $name } lo vede.
asked-answered = Grazie. { $name } lo vede.
given-back = { $name } ti riaffida alla guida. Parli di nuovo con il programma.
given-back-fresh = Prima corrente e spilli, poi un valore nuovo.
closed-by = { $name }, dell'officina, ha chiuso il caso.
closed-not-rideable = Via il ponticello, via gli spilli. Non avviarla e non guidarla così com'è.

## La carta

desk-card = Caso { $id }, { $state }
desk-card-flag = C'è un allarme rosso. { $flag }
desk-state-waiting = in attesa da { $since }
desk-state-taken = preso da { $name }
desk-state-returned = restituito ({ $since })
desk-state-closed = chiuso ({ $since })
desk-erased = Caso { $id }: il proprietario ha fatto cancellare tutto ciò che lo riguarda. È finita.
desk-rideable = Stretto e regolato, spilli fuori: si può avviare.
desk-not-rideable = NON avviarla e NON guidarla così com'è.
desk-machine-power = { $power }; { $probes }.
desk-machine-parts = Sensore { $sensor }; { $stop }; { $knob }.
desk-machine-engine = Motore { $engine }; lista d'avviamento: { $confirmed } di { $items } confermati.
desk-awake = Sveglia e con ponticello da { $since }
desk-asleep = Addormentata, senza ponticello
desk-probes-none = nessuno spillo inserito
desk-probes-unsure = spilli forse ancora inseriti
desk-probes-signal = spilli su segnale e massa
desk-probes-supply = spilli su alimentazione e massa
desk-probes-ground = spilli su massa e negativo batteria
desk-probes-battery = puntali sulla batteria
desk-sensor-tight = stretto
desk-sensor-loose = ALLENTATO
desk-stop-set = fermo del minimo a posto
desk-stop-off = fermo del minimo ARRETRATO
desk-stop-off-by = fermo del minimo ARRETRATO, { $turns } { $turns ->
    [1] giro contato
   *[other] giri contati
 }
desk-knob-set = pomello avviamento a freddo a posto
desk-knob-off = pomello avviamento a freddo ARRETRATO
desk-knob-off-by = pomello avviamento a freddo ARRETRATO, { $clicks } { $clicks ->
    [1] scatto contato
   *[other] scatti contati
 }
desk-engine-running = ACCESO
desk-engine-hot = spento, ha girato
desk-engine-cold = spento, non ancora avviato
desk-no-set-up-open = Nessuna regolazione aperta.
desk-who = Proprietario: { $name } su { $platform }
desk-where = { $machine }, { $at }, da { $since }. Codice { $code }.
desk-at = a "{ $stage }"
desk-at-part = a "{ $stage }", parte { $part } di { $parts }
desk-about = { $machine }, codice { $code }
desk-answer = { $question }: { $answer }
desk-own-words = Ha scritto: { $text }
desk-head-readings = Misure:
desk-head-tried = Provato:
desk-head-causes = Probabile:
desk-reading = { $measure }: { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure }: { $shown }, { $result } ({ $limits }; { $source })
desk-reading-plain = { $measure }: { $shown }
desk-first = { $measure }, prima misura
desk-as-found = { $measure }, com'era
desk-asked-for = { $measure }, su richiesta
desk-struck = { $measure }: "{ $typed }", annullata: { $why }
desk-why-asleep = addormentata
desk-why-implausible = non torna
desk-why-unclear = troppo grossolana
desk-why-asked = instabile
desk-why-doubted = chiesta di nuovo
desk-figure = { $value } { $unit }
desk-figures = da { $low } a { $high } { $unit }
desk-overload = oltre la portata
desk-nothing = non segna niente
desk-limits = da { $low } a { $high }
desk-limits-high = { $high } o meno
desk-limits-low = { $low } o più
desk-result-pass = giusto
desk-result-low = troppo basso
desk-result-high = troppo alto
desk-result-unclear = troppo grossolano
desk-result-implausible = non torna
desk-result-accepted = accettato da { $name }
desk-source-manual = manuale
desk-source-workshop = officina
desk-source-common-practice = prassi comune
desk-source-owner = valore del proprietario
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction } { $amount } { $unit }: da { $before } a { $after }
desk-unit-turn = { $amount ->
    [1] giro
   *[other] giri
 }
desk-unit-click = { $amount ->
    [1] scatto
   *[other] scatti
 }
desk-unit-nudge = { $amount ->
    [1] pelo
   *[other] peli
 }
desk-unit-mm = mm
desk-direction-in = dentro
desk-direction-out = fuori
desk-direction-clockwise = in senso orario
desk-direction-counter-clockwise = in senso antiorario
desk-direction-more = più gioco
desk-direction-less = meno gioco
desk-checked = { $check }
desk-cause = { $cause }: { $share } %
desk-cautions = Avvertenze confermate: { $cautions }
desk-reason = Motivo della chiamata: { $reason }
desk-job = Commessa { $job }
desk-history-remark = { $name } ha annotato: { $note }
desk-history-accepted = { $name } ha accettato: { $note }
desk-history-cleared = { $name } dà l'allarme per risolto: { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure }: { $value }. { $why }

desk-take = Prenderlo
desk-take-over = Rilevarlo da { $name }
desk-give-back = Restituire
desk-ask = Chiedere una misura
desk-check = Inviare un controllo
desk-close = Chiuderlo
desk-help = Aiuto

## In un caso

desk-owner-said = Proprietario { $name }: { $text }
desk-owner-changed = Proprietario { $name } ha cambiato un messaggio in: { $text }
desk-owner-picture = Proprietario { $name } ha inviato una foto.
desk-owner-picture-with = Proprietario { $name } ha inviato una foto: { $text }
desk-owner-pressed = Proprietario { $name } ha toccato: { $choice }
desk-read-along = { $measure }: { $shown } sarebbe: { $result } ({ $limits }).
desk-taken = Lo segue { $name }. Quello che scrivi qui va al proprietario. "/aiuto" elenca il resto.
desk-taken-from = { $name } lo rileva da { $from }. Quello che scrivi qui va al proprietario.
desk-yours = È già tuo.
desk-held-by = Lo segue { $name }.
desk-take-first = Non lo segue nessuno. Prima prendilo.
desk-not-sent = Non lo segue ancora nessuno: al proprietario non è andato niente. Prima prendilo.
desk-too-old = È passato troppo tempo. Il proprietario può chiamare di nuovo.
desk-passed = { $name } cede il caso { $id }. Chi lo prende?
desk-passed-to = { $name } cede il caso { $id } a { $to }.
desk-returned = { $name } lo ha restituito. Il programma va avanti.
desk-closed = { $name } lo ha chiuso.
desk-closed-cause = { $name } lo ha chiuso. Causa: { $cause }
desk-closed-already = È già chiuso.
desk-which-cause = Quale causa era?
desk-asked = Chiesto: { $measure }
desk-ask-which = Quale misura? Toccane una, o scrivi "/chiedi fermo chiuso".
desk-ask-unknown = Non conosco quella misura. Posso chiedere queste:
desk-ask-running = Quella si legge al suo passo: "/salta" fin lì, poi restituisci il caso.
desk-asked-answer = { $check } Risposta: { $answer }
desk-check-which = Quale controllo? Toccane uno.
desk-check-unknown = Non conosco quel controllo. Posso inviare questi:
desk-check-sent = Inviato: { $check }
desk-accept-reason = Dai un motivo: "/accetta lo ammette il manuale".
desk-accept-loose = Il sensore è allentato e si muoverà. Prima fallo stringere e rileggere.
desk-accept-none = Non c'è un valore da accettare.
desk-accepted = { $measure }: { $shown } accettato da { $name }. La scheda lo dirà.
desk-stages = Saltare dove? "/salta" e uno di: { $stages }.
desk-goes-on-at = Restituito, continua da "{ $stage }".
desk-goes-on-at-after = Restituito, continua da "{ $stage }"; prima viene la lista d'avviamento, da "{ $first }".
desk-no-set-up = Nessuna regolazione aperta.
desk-flag-up = C'è un allarme rosso. { $flag } Assicurati che sia finito, poi scrivi "/risolto" e come lo sai.
desk-no-flag = Nessun allarme rosso.
desk-withdrawn = Questa procedura è ritirata, e nessun'altra ha questo passo: il programma non può andare avanti. Chiudi il caso.
desk-clear-reason = Scrivi come te ne sei assicurato: "/risolto perdita riparata, asciutto".
desk-cleared = { $name } dà l'allarme per risolto.
desk-noted = Annotato. Resta al banco.
desk-note-empty = Scrivilo dopo: "/nota sembra una farfalla piegata".
desk-job-noted = Commessa { $job }.
desk-job-none = Ora senza numero di commessa.
desk-edited = Un messaggio cambiato non viene inviato di nuovo. Scrivine uno nuovo.
desk-start = I link d'inizio sono per i proprietari.
desk-choice-unknown = Quel pulsante qui non fa niente.
desk-command-unknown = Quello non lo conosco. Al proprietario non è andato niente. "/aiuto" elenca ciò che c'è.
desk-case-past = Questo caso è finito. Quello attuale del proprietario è { $id }.
desk-case-unknown = Non conosco quel caso.
desk-case-unknown-id = Non conosco il caso { $id }.
desk-unreachable = Non è arrivato al proprietario: { $why }
desk-unanswered = Il proprietario aspetta { $name } da { $minutes } minuti.

desk-help-talk = Parole e foto vanno al proprietario, con il tuo nome. Ciò che comincia con "/" o "." non ci va mai.
desk-help-take = /prendi: è tuo. /passa NOME: a un'altra persona.
desk-help-measure = /chiedi MISURA: il programma chiede e giudica. /controlla NOME: invia un controllo.
desk-help-decide = /accetta MOTIVO: vale l'ultimo valore. /salta PASSO: da dove continua. /risolto COME: un allarme rosso è finito.
desk-help-end = /restituisci: il programma va avanti. /chiudi CAUSA: finisce, con una scheda.
desk-help-note = /nota TESTO resta qui. /lavoro NUMERO. /carta, /scheda, /scheda json.
desk-help-desk = Al banco in generale: casi, cerca PAROLE, scheda CODICE, chiuso oggi, di nuovo aperto, tips.
desk-help-case = Nel filo di un caso: prendilo, poi "/aiuto".

## Il banco in generale

desk-reminder = Il caso { $id } aspetta da { $minutes } minuti. { $reason }
desk-hint = I casi arrivano qui. "aiuto" elenca ciò che so fare.
desk-in-thread = Fallo nel filo del caso stesso. "casi" li elenca.
desk-list-none = Nessun caso in attesa e nessuno in corso.
desk-list-waiting = In attesa: { $count }
desk-list-taken = In corso: { $count }
desk-list-case = { $id }: { $name }, { $machine }, codice { $code }, da { $since }, { $state }. { $reason }
desk-list-state-waiting = in attesa
desk-list-state-taken = in corso
desk-list-state-returned = restituito
desk-list-state-closed = chiuso
desk-found-none = Non ho trovato niente per { $text }.
desk-found-record = Scheda { $code }: { $machine }, { $result }, { $when }
desk-result-record-set = regolato
desk-result-record-right-as-found = già giusto
desk-result-record-accepted = accettato
desk-result-record-not-set = non regolato
desk-closed-today = Chiuso per oggi.
desk-closed-today-until = Chiuso per oggi. Ai proprietari si dice: { $when }. "di nuovo aperto" lo annulla.
desk-open-again = Di nuovo secondo l'orario.
desk-summary = La giornata finisce. In attesa: { $waiting }, in corso: { $taken }, finiti oggi: { $ended }, schede: { $done }.
desk-record-head = Caso { $id }: { $name }, aperto { $opened }
desk-record-reading = { $reading }: { $value } ({ $result })
desk-record-asked = { $measure }: "{ $typed }", su richiesta
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = : { $note }
desk-record-cause = Causa: { $cause }
desk-did-opened = aperto
desk-did-flagged = allarme rosso
desk-did-cleared = { $name } dà un allarme per risolto
desk-did-taken = { $name } lo ha preso
desk-did-passed = { $name } lo ha ceduto
desk-did-returned = { $name } lo ha restituito
desk-did-closed = { $name } lo ha chiuso
desk-did-reopened = { $name } ha chiamato di nuovo
desk-did-accepted = { $name } ha accettato
desk-did-asked = { $name } ha chiesto
desk-did-checked = { $name } ha inviato un controllo
desk-did-jumped = { $name } ha scelto il passo
desk-did-remark = { $name } ha annotato
desk-json = { $json }

## Perché si chiama una persona

reason-asked = Il proprietario ha chiesto una persona.
reason-procedure-withdrawn = La procedura è stata ritirata, e nessun'altra ha questo passo.
reason-meter-too-coarse = Il tester del proprietario non mostra abbastanza cifre per decidere.
reason-factory-stop-turned = Il fermo di fabbrica della farfalla è stato girato: la posizione chiusa non è affidabile.
reason-factory-stop-turned-owner = Allora la posizione chiusa non è affidabile. Ci pensa una persona dell'officina.
reason-factory-stop-unsure = Il proprietario non sa dire se il fermo di fabbrica è stato girato.
reason-factory-stop-unsure-owner = Una persona ti aiuterà a capirlo.
reason-cable-tight-at-lock = Il regime del minimo cambia girando il manubrio: un cavo o il cablaggio è troppo tirato.
reason-cable-tight-at-lock-owner = Qualcosa tira l'acceleratore. Così non si può guidare.
reason-not-the-sensor = Il regime del minimo si raggiunge solo con il segnale fuori dalla sua fascia a caldo: non è il sensore. Condotto sporco, valvole, candela, benzina o infiltrazione d'aria.
reason-not-the-sensor-owner = Non dipende dal sensore. Lo lasciamo com'è e cerchiamo la causa.
reason-flag-throttle-sticks = ALLARME ROSSO: l'acceleratore si blocca.
reason-flag-revs-hang = ALLARME ROSSO: i giri non scendono o salgono da soli.
reason-flag-engine-wont-stop = ALLARME ROSSO: il motore non si spegne.
reason-flag-fuel-leak = ALLARME ROSSO: odore o perdita di benzina.
reason-flag-smoke = ALLARME ROSSO: fumo, bruciato o vapore.
reason-flag-hot-leads = ALLARME ROSSO: puntali, ponticello o batteria caldi o con scintille.
reason-flag-pump-runs-on = ALLARME ROSSO: la pompa non smette.
reason-flag-unwell = ALLARME ROSSO: qualcuno si sente male, forse per il gas di scarico.
reason-flag-injured = ALLARME ROSSO: qualcuno è ferito.
reason-call-unknown-cause = Nessuna causa conosciuta spiega le misure.
reason-call-not-for-an-owner = La causa più probabile non è da far riparare a un proprietario.
reason-call-nothing-left = Tutto ciò che un proprietario può controllare è fatto, e le misure ancora non tornano.
reason-call-look-alike = Diverse cause si vedono uguali sul tester. Deve distinguerle una persona.
reason-stuck-slots-at-end = Il sensore è in fondo alle asole e la misura non è ancora giusta.
reason-stuck-moves-stop-helping = Girare non avvicina più la misura.
reason-stuck-too-coarse = I passi di questo pezzo sono troppo grossi per la sua fascia.
desk-picture-readings = Tutte le misure con le loro fasce.
desk-picture-causes = Le cause probabili.
desk-picture-approach = Le correzioni di questo passo e che cosa ha fatto ciascuna.

## I numeri dell'officina

report-counts = Regolazioni finite: { $ended }. Casi chiusi: { $closed }.
report-stops = { $procedure }: dove si fermano i proprietari
report-times = { $procedure }: tempo per passo
report-causes = Cause trovate, per mese
report-head-stage = passo
report-head-reached = ci sono arrivati
report-head-stopped = si sono fermati lì
report-head-quarter = un quarto ha impiegato al massimo
report-head-half = la metà
report-head-three-quarters = tre quarti (min)
report-head-cause = causa
report-picture = Immagine: { $file }
report-nothing = ancora niente
