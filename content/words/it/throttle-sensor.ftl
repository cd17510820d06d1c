# Le parole della procedura del sensore dell'acceleratore: throttle-sensor-<stage> dice che cosa fare; le risposte sono throttle-sensor-<question>-<answer>.
# A ciascuna si dà: $machine $wake $connector $supply $signal $ground $minutes $seconds e, per i pezzi, $part $where $tool.

throttle-sensor-complaint = Che cosa non va nella moto?
throttle-sensor-complaint-none = Niente, controllo e basta
throttle-sensor-complaint-runs-badly = Va male
throttle-sensor-complaint-bad-idle = Minimo irregolare
throttle-sensor-complaint-flat-acceleration = Vuota quando apro il gas
throttle-sensor-complaint-hard-starting = Parte a fatica

throttle-sensor-place = Motore freddo, sul cavalletto, in folle.
    All'aperto, dove poi puoi avviarla senza spostarla.
    Sappi dove sono la chiave e l'interruttore di spegnimento.
    Sul banco: tester, due spilli sottili, cacciaviti.

throttle-sensor-throttle-kind = Che cosa va dalla manopola al corpo farfallato?
throttle-sensor-throttle-kind-cable = Un cavo d'acciaio
throttle-sensor-throttle-kind-by-wire = Solo fili
throttle-sensor-throttle-kind-dont-know = Non so

throttle-sensor-sensor-fixing = Com'è fissato il sensore?
throttle-sensor-sensor-fixing-slotted = Viti in asole lunghe
throttle-sensor-sensor-fixing-riveted = Rivetti, sigillo o senza asole
throttle-sensor-sensor-fixing-dont-know = Non so

throttle-sensor-changed = Qual è l'ultima cosa cambiata?
throttle-sensor-changed-nothing = Niente
throttle-sensor-changed-throttle-body = Corpo farfallato o cavo
throttle-sensor-changed-sensor = Il sensore
throttle-sensor-changed-exhaust-or-filter = Scarico o filtro
throttle-sensor-changed-dont-know = Non so

throttle-sensor-map = Che mappa d'iniezione monta?
throttle-sensor-map-standard = Quella di serie
throttle-sensor-map-other = Un'altra
throttle-sensor-map-dont-know = Non so

throttle-sensor-map-figure = Che valore a gas chiuso dà chi ha fatto la mappa? Invialo in volt.

throttle-sensor-signal-box = C'è una centralina aggiuntiva innestata sui fili del sensore?
throttle-sensor-signal-box-none = No
throttle-sensor-signal-box-fitted = Sì
throttle-sensor-signal-box-dont-know = Non so

throttle-sensor-unplug-box = Stacca la centralina aggiuntiva e unisci i fili come dice chi la produce. Carica il segnale.

throttle-sensor-codes = La moto mostra un codice di errore memorizzato?
throttle-sensor-codes-none = No
throttle-sensor-codes-stored = Sì

throttle-sensor-bore = Guarda oltre la farfalla. Il condotto è pulito?
throttle-sensor-bore-clean = Pulito
throttle-sensor-bore-dirty = Anello scuro o residui appiccicosi
throttle-sensor-bore-dont-know = Non si vede

throttle-sensor-valves = Il gioco valvole è stato controllato alla scadenza?
throttle-sensor-valves-in-time = Sì
throttle-sensor-valves-overdue = È in ritardo
throttle-sensor-valves-dont-know = Non so

throttle-sensor-altitude = Dove gira la moto?
throttle-sensor-altitude-below = In pianura
throttle-sensor-altitude-above = In alta montagna

throttle-sensor-tachometer = Come leggerai il regime del minimo?
throttle-sensor-tachometer-have = Ho un contagiri
throttle-sensor-tachometer-none = Non ne ho

throttle-sensor-manual-closed = Che cosa dà il tuo manuale a gas chiuso, con il fermo del minimo arretrato? Invia i volt del manuale, non del tester.
throttle-sensor-manual-idle = Che cosa dà il tuo manuale al minimo, a motore spento? Invia i volt del manuale.
throttle-sensor-manual-fast-idle = Che cosa dà il tuo manuale con il pomello avviamento a freddo dentro? Invia i volt del manuale.
throttle-sensor-manual-speed = Che regime del minimo dà il tuo manuale, a caldo?

throttle-sensor-battery = Tutto spento.
throttle-sensor-bench-supply = Non ha batteria. Collega l'alimentatore da banco, con il suo fusibile.

throttle-sensor-knob-out = Deve restare fuori da solo.
throttle-sensor-free-play = Devi sentire un po' di gioco alla manopola prima che si muova qualcosa.
throttle-sensor-bars-free = A nessuno dei due fine corsa l'acceleratore deve essere tirato.

throttle-sensor-supply-leads = Per questo, stacca il connettore { $connector }, infila gli spilli lungo i gommini dei fili e riattaccalo. Poi accendi il tester.
throttle-sensor-supply = Ascolta la pompa della benzina mentre si sveglia.
throttle-sensor-pump = La pompa ha ronzato e si è fermata dopo pochi secondi?
throttle-sensor-pump-stops = Si è fermata
throttle-sensor-pump-no-pump = Non ho sentito la pompa
throttle-sensor-pump-runs-on = Continua a girare
throttle-sensor-signal-leads = Il nero è già lì: si sposta solo il rosso.

throttle-sensor-as-found-idle = Così è come andava. Mani via dalla manopola.
throttle-sensor-as-found-snap = Lascia che si chiuda di colpo.
throttle-sensor-as-found-open = Tienilo lì. Se il tester segna OL, passa alla portata successiva.
throttle-sensor-as-found-sweep = Resta su questa portata. Apri in quattro passi fino in fondo e torna in quattro. Annota ogni valore, da chiuso a chiuso.
throttle-sensor-as-found-jumps = Qualcosa è saltato o caduto lungo la corsa?
throttle-sensor-leave-alone = È tutto come deve. Lascia stare il sensore e le viti.
throttle-sensor-only-checked = Questo era il controllo. Qui non si gira niente.

throttle-sensor-factory-stop = La farfalla appoggia su un suo piccolo fermo, sigillato con vernice. Non è il fermo del minimo, e non si tocca mai. Com'è la vernice?
throttle-sensor-factory-stop-untouched = Intatta
throttle-sensor-factory-stop-turned = Rotta, qualcuno lo ha girato
throttle-sensor-factory-stop-dont-know = Non si capisce

throttle-sensor-mark = Una riga sottile a cavallo di sensore e corpo. Fai anche una foto: è la tua via di ritorno.
throttle-sensor-knob-off = Con il pomello fuori. Conta gli scatti finché è libero. Quanti?
throttle-sensor-stop-off = Conta i giri finché non appoggia più. Lascialo nel suo filetto. Quanti giri?

throttle-sensor-baseline = Gas chiuso, mani via. La portata con tre decimali.
throttle-sensor-supply-again = Quello era il valore base. Prima che valga, ancora l'alimentazione.
throttle-sensor-baseline-again = Aspetta { $seconds } secondi prima di svegliarla: così prende il nuovo gas chiuso.
throttle-sensor-baseline-once-more = Ancora una volta: deve tornare lo stesso valore.
throttle-sensor-idle-stop = Il valore base è a posto. Passiamo al minimo.
throttle-sensor-idle-stop-again = Ancora la misura del minimo.
throttle-sensor-snap = Due volte. Poi mani via.
throttle-sensor-fast-idle = Lascialo dentro mentre lo regoli. Motore spento.
throttle-sensor-release = Deve tornare alla misura del minimo.
throttle-sensor-fast-idle-again = Ancora una volta, per sicurezza.
throttle-sensor-release-again = E ancora una volta.
throttle-sensor-open = Tienilo lì. Se il tester segna OL, passa alla portata successiva.
throttle-sensor-sweep = Resta su questa portata. Apri in quattro passi fino in fondo e torna in quattro. Annota ogni valore, da chiuso a chiuso.
throttle-sensor-jumps = Qualcosa è saltato o caduto lungo la corsa?

throttle-sensor-sweep-jumps-smooth = Tutto regolare
throttle-sensor-sweep-jumps-jumped = È saltato o caduto

throttle-sensor-asleep = Spento anche il tester.
throttle-sensor-leads-out = Tutti e due. Nessun puntale vicino a catena o scarico.
throttle-sensor-refitted = Cassa filtro, manicotti e tutto ciò che hai tolto è rimontato e stretto?
throttle-sensor-latched = Il connettore del sensore è spinto fino in fondo e agganciato?
throttle-sensor-snaps-shut = Deve chiudersi di colpo con il manubrio dritto e ai due fine corsa.
throttle-sensor-outdoors = La moto è all'aperto, con lo scarico libero?
throttle-sensor-kill-switch = Hai provato l'interruttore di spegnimento? Ci arrivi e scatta nei due sensi?
throttle-sensor-people-clear = In folle, sul cavalletto e tutti lontani da catena, ruota e scarico?

throttle-sensor-start = Pollice vicino all'interruttore di spegnimento.
throttle-sensor-warm-up = Lasciala scaldare { $minutes } minuti con il pomello avviamento a freddo dentro.
throttle-sensor-warm-knob = Deve assestarsi su un minimo regolare.
throttle-sensor-idle-speed = Lascia che si assesti.
throttle-sensor-speed-bars = Il regime del minimo cambia mentre lo giri?
throttle-sensor-speed-bars-steady = Resta uguale
throttle-sensor-speed-bars-changes = Cambia
throttle-sensor-idle-speed-again = Manubrio dritto.
throttle-sensor-fault-lamp = Motore ancora acceso: la spia di guasto è accesa, o lampeggia?
throttle-sensor-fault-lamp-off = È spenta
throttle-sensor-fault-lamp-lit = Accesa, o lampeggia
throttle-sensor-fault-lamp-no-lamp = Non c'è
throttle-sensor-engine-off = Poi mani via: è caldo.
throttle-sensor-warm-idle = Tester di nuovo sulla portata con tre decimali. Ora la misura del minimo, a caldo: più alta che a freddo, ed è giusto così.
throttle-sensor-warm-release = Deve tornare alla misura del minimo a caldo.
throttle-sensor-warm-snap = Mani via, poi leggi.
throttle-sensor-put-away = Spento anche il tester.
throttle-sensor-cover = Carena e sella rimontate?
throttle-sensor-road-ready = Prima di guidare: luci, freni, cavi, niente di allentato. Tutto pronto?

# Come si chiama ogni parte del lavoro.
throttle-sensor-section-questions = alcune domande
throttle-sensor-section-power-and-cable = batteria e cavo
throttle-sensor-section-wake-and-probe = risveglio e collegamento
throttle-sensor-section-as-found = com'è adesso
throttle-sensor-section-baseline = il valore base
throttle-sensor-section-idle = minimo e avviamento a freddo
throttle-sensor-section-before-start = prima di avviare
throttle-sensor-section-warm = a caldo, e finito

# Come si chiama ogni passo, al banco e nei numeri dell'officina.
throttle-sensor-complaint-name = Che cosa non va
throttle-sensor-place-name = Posto e attrezzi
throttle-sensor-throttle-kind-name = Cavo o fili
throttle-sensor-sensor-fixing-name = Fissaggio del sensore
throttle-sensor-changed-name = Ultima modifica
throttle-sensor-map-name = Mappa d'iniezione
throttle-sensor-map-figure-name = Valore della mappa
throttle-sensor-signal-box-name = Centralina aggiuntiva
throttle-sensor-unplug-box-name = Via la centralina aggiuntiva
throttle-sensor-codes-name = Codici di errore
throttle-sensor-bore-name = Condotto
throttle-sensor-valves-name = Gioco valvole
throttle-sensor-altitude-name = Altitudine
throttle-sensor-tachometer-name = Contagiri
throttle-sensor-manual-closed-name = Manuale: gas chiuso
throttle-sensor-manual-idle-name = Manuale: minimo
throttle-sensor-manual-fast-idle-name = Manuale: avviamento a freddo
throttle-sensor-manual-speed-name = Manuale: regime del minimo
throttle-sensor-battery-name = Batteria
throttle-sensor-bench-supply-name = Alimentatore da banco
throttle-sensor-knob-out-name = Pomello fuori
throttle-sensor-free-play-name = Gioco del cavo
throttle-sensor-bars-free-name = Manubrio da fine corsa a fine corsa
throttle-sensor-supply-leads-name = Spilli sull'alimentazione
throttle-sensor-supply-name = Alimentazione
throttle-sensor-pump-name = Pompa della benzina
throttle-sensor-signal-leads-name = Spilli sul segnale
throttle-sensor-as-found-idle-name = Come trovato: minimo
throttle-sensor-as-found-snap-name = Come trovato: dopo il colpo di gas
throttle-sensor-as-found-open-name = Come trovato: tutto aperto
throttle-sensor-as-found-sweep-name = Come trovato: corsa
throttle-sensor-as-found-jumps-name = Come trovato: salti
throttle-sensor-factory-stop-name = Fermo di fabbrica
throttle-sensor-mark-name = Segno sul sensore
throttle-sensor-knob-off-name = Pomello arretrato
throttle-sensor-stop-off-name = Fermo del minimo arretrato
throttle-sensor-baseline-name = Valore base
throttle-sensor-supply-again-name = Alimentazione, di nuovo
throttle-sensor-baseline-again-name = Valore base, di nuovo
throttle-sensor-baseline-once-more-name = Valore base, terza volta
throttle-sensor-idle-stop-name = Fermo del minimo
throttle-sensor-snap-name = Dopo il colpo di gas
throttle-sensor-fast-idle-name = Avviamento a freddo
throttle-sensor-release-name = Pomello fuori, misura
throttle-sensor-fast-idle-again-name = Avviamento a freddo, di nuovo
throttle-sensor-release-again-name = Pomello fuori, di nuovo
throttle-sensor-idle-stop-again-name = Fermo del minimo, di nuovo
throttle-sensor-open-name = Tutto aperto
throttle-sensor-sweep-name = Corsa
throttle-sensor-jumps-name = Salti lungo la corsa
throttle-sensor-asleep-name = Addormentata, tester spento
throttle-sensor-leads-out-name = Spilli fuori
throttle-sensor-refitted-name = Tutto rimontato
throttle-sensor-latched-name = Connettore agganciato
throttle-sensor-snaps-shut-name = Si chiude di scatto
throttle-sensor-outdoors-name = All'aperto
throttle-sensor-kill-switch-name = Interruttore di spegnimento
throttle-sensor-people-clear-name = Tutti lontani
throttle-sensor-start-name = Avviamento
throttle-sensor-warm-up-name = Riscaldamento
throttle-sensor-warm-knob-name = Pomello fuori, a caldo
throttle-sensor-idle-speed-name = Regime del minimo
throttle-sensor-speed-bars-name = Minimo girando il manubrio
throttle-sensor-idle-speed-again-name = Regime del minimo, di nuovo
throttle-sensor-fault-lamp-name = Spia di guasto
throttle-sensor-engine-off-name = Motore spento
throttle-sensor-warm-idle-name = Minimo, a caldo
throttle-sensor-warm-release-name = Pomello fuori, misura a caldo
throttle-sensor-warm-snap-name = Dopo il colpo di gas, a caldo
throttle-sensor-put-away-name = Spilli fuori, tester spento
throttle-sensor-cover-name = Carena e sella
throttle-sensor-road-ready-name = Pronta per la strada
