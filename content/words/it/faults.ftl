# Le parole dei guasti di content/faults e dei controlli che li trovano, per i proprietari e per il banco.
# fault-<id>: il nome; fault-<id>-why: perché lo pensiamo, detto prima del controllo; fault-<id>-remedy: che cosa lo ripara.
# check-<id>: che cosa fare o rispondere; answer-<question>-<answer>: i pulsanti; call-<reason>: perché si chiama una persona, per il banco.

fault-nothing-wrong = nessun guasto
fault-nothing-wrong-why = I valori vanno d'accordo con una moto in ordine.
fault-nothing-wrong-remedy = Non c'è niente da riparare. Vai avanti.

fault-sensor-mis-set = sensore sregolato
fault-sensor-mis-set-why = I valori vanno d'accordo con un sensore soltanto sregolato.
fault-sensor-mis-set-remedy = Regola il sensore passo per passo.

fault-mistyped = valore scritto o letto male
fault-mistyped-why = Quel valore non va d'accordo con quelli di prima. Può essere scappata una cifra.
fault-mistyped-remedy = Leggi di nuovo il tester e invia tutte le cifre.

fault-unknown = una causa che non conosciamo
fault-unknown-why = Nessuna causa che conosciamo dà questi valori.
fault-unknown-remedy = Deve guardarla una persona.

fault-leads-swapped = puntali del tester scambiati
fault-leads-swapped-why = È quello che il tester segna quando rosso e nero sono scambiati.
fault-leads-swapped-remedy = Rosso sul filo di segnale, nero sul filo di massa.

fault-red-on-supply = puntale rosso sul filo di alimentazione
fault-red-on-supply-why = È quello che il tester segna quando il puntale rosso è sul filo di alimentazione.
fault-red-on-supply-remedy = Sposta il rosso sul filo di segnale.

fault-black-on-supply = puntale nero sul filo di alimentazione
fault-black-on-supply-why = È quello che il tester segna quando il puntale nero è sul filo di alimentazione.
fault-black-on-supply-remedy = Sposta il nero sul filo di massa.

fault-red-on-supply-black-on-signal = rosso su alimentazione, nero su segnale
fault-red-on-supply-black-on-signal-why = È quello che il tester segna con il rosso sul filo di alimentazione e il nero sul filo di segnale.
fault-red-on-supply-black-on-signal-remedy = Rosso sul filo di segnale, nero sul filo di massa.

fault-red-on-ground-black-on-supply = rosso su massa, nero su alimentazione
fault-red-on-ground-black-on-supply-why = È quello che il tester segna con il rosso sul filo di massa e il nero sul filo di alimentazione.
fault-red-on-ground-black-on-supply-remedy = Rosso sul filo di alimentazione, nero sul filo di massa.

fault-leads-on-one-pin = i due puntali sullo stesso filo
fault-leads-on-one-pin-why = Il tester segna così quando i due puntali sono sullo stesso filo.
fault-leads-on-one-pin-remedy = Rosso sul filo di segnale, nero sul filo di massa.

fault-probe-not-touching = uno spillo che non tocca
fault-probe-not-touching-why = Il tester segna così quando uno spillo non tocca il metallo.
fault-probe-not-touching-remedy = Infila i due spilli lungo il gommino del filo finché toccano.

fault-pin-slips = uno spillo che scivola
fault-pin-slips-why = Il valore va e viene, come con uno spillo che scivola.
fault-pin-slips-remedy = Sistema bene i due spilli e lega i puntali perché niente tiri.

fault-battery-wire-probed = puntale rosso su un filo della batteria
fault-battery-wire-probed-why = Quella è tensione di batteria. A questo sensore non ne arriva mai così tanta.
fault-battery-wire-probed-remedy = Sposta il rosso sul filo di segnale.

fault-meter-on-ac = tester in volt in alternata
fault-meter-on-ac-why = Un tester in alternata segna valori così.
fault-meter-on-ac-remedy = Gira il selettore su volt in continua.

fault-meter-range = tester sulla portata sbagliata
fault-meter-range-why = La portata è troppo piccola o troppo grossolana per questo valore.
fault-meter-range-remedy = Scegli la portata che mostra il valore con più decimali.

fault-meter-on-ohms = tester in ohm
fault-meter-on-ohms-why = Un tester in ohm segna così su un filo in tensione.
fault-meter-on-ohms-remedy = Gira il selettore su volt in continua.

fault-meter-battery-weak = pila del tester scarica
fault-meter-battery-weak-why = Con la pila scarica il tester segna tutto troppo alto.
fault-meter-battery-weak-remedy = Metti una pila nuova nel tester.

fault-red-in-current-jack = puntale rosso nella presa della corrente
fault-red-in-current-jack-why = Il tester segna così quando il rosso è nella presa della corrente.
fault-red-in-current-jack-remedy = Metti il rosso nella presa dei volt. Guarda il fusibile del tester.

fault-meter-hold = HOLD inserito sul tester
fault-meter-hold-why = Il valore sta fermo, come con HOLD inserito.
fault-meter-hold-remedy = Togli HOLD.

fault-meter-relative = REL inserito sul tester
fault-meter-relative-why = Il valore è spostato sempre della stessa misura, come con REL inserito.
fault-meter-relative-remedy = Togli REL.

fault-meter-min-max = MIN/MAX inserito sul tester
fault-meter-min-max-why = Il tester sembra tenere il suo valore più alto.
fault-meter-min-max-remedy = Togli MIN/MAX.

fault-meter-auto-off = tester spento da solo
fault-meter-auto-off-why = Un tester con il display vuoto di solito si è spento da solo.
fault-meter-auto-off-remedy = Riaccendi il tester.

fault-unit-asleep = centralina addormentata
fault-unit-asleep-why = È quello che il tester segna quando la centralina dorme.
fault-unit-asleep-remedy = Svegliala di nuovo.

fault-no-power = centralina senza corrente
fault-no-power-why = La centralina sembra non svegliarsi.
fault-no-power-remedy = Guarda interruttore di spegnimento, chiave, fusibile e relè.

fault-supply-low = alimentazione del sensore troppo bassa
fault-supply-low-why = Al sensore arriva meno tensione del dovuto.
fault-supply-low-remedy = Trova perché la centralina ne dà troppo poca.

fault-supply-high = alimentazione del sensore troppo alta
fault-supply-high-why = Al sensore arriva più tensione del dovuto.
fault-supply-high-remedy = Trova perché la centralina ne dà troppa.

fault-battery-flat = batteria troppo bassa
fault-battery-flat-why = La batteria può essere troppo bassa per questo lavoro.
fault-battery-flat-remedy = Carica la batteria, lasciala riposare e ricomincia.

fault-brown-out = la tensione cala con la centralina sveglia
fault-brown-out-why = La tensione sembra calare mentre la centralina è sveglia.
fault-brown-out-remedy = Carica la batteria e tieni sveglia la centralina meno a lungo.

fault-tight-cable = cavo dell'acceleratore troppo tirato
fault-tight-cable-why = Un cavo tirato tiene il gas un po' aperto, e si vede così.
fault-tight-cable-remedy = Lascia gioco al cavo dell'acceleratore, con il manubrio dritto e ai due fine corsa.

fault-fast-idle-on = pomello avviamento a freddo rimasto dentro
fault-fast-idle-on-why = Il valore va d'accordo con un pomello avviamento a freddo ancora dentro.
fault-fast-idle-on-remedy = Chiudi bene la manopola finché il pomello salta fuori.

fault-knob-stays-in = il pomello avviamento a freddo non esce
fault-knob-stays-in-why = Il pomello sembra non saltare fuori.
fault-knob-stays-in-remedy = Libera il pomello e la sua molla.

fault-stop-not-backed-off = il fermo del minimo appoggia ancora
fault-stop-not-backed-off-why = Il valore non è sceso come fa quando il fermo del minimo è libero.
fault-stop-not-backed-off-remedy = Gira il fermo del minimo in fuori finché non appoggia più.

fault-idle-stop-never-bore = fermo del minimo troppo in fuori
fault-idle-stop-never-bore-why = Il valore può non scendere se il fermo del minimo non appoggiava mai.
fault-idle-stop-never-bore-remedy = Regola il fermo del minimo passo per passo.

fault-carbon-in-bore = incrostazioni nel condotto
fault-carbon-in-bore-why = Le incrostazioni possono tenere il gas aperto come un fermo.
fault-carbon-in-bore-remedy = Pulisci condotto e farfalla, poi regola di nuovo.

fault-factory-stop-turned = fermo di fabbrica girato
fault-factory-stop-turned-why = Il fermo proprio della farfalla può essere stato girato.
fault-factory-stop-turned-remedy = L'officina regola il fermo di fabbrica con un metodo suo.

fault-plate-wedged = farfalla piegata o incastrata
fault-plate-wedged-why = La farfalla sembra non chiudersi.
fault-plate-wedged-remedy = Smonta il corpo farfallato e guarda farfalla e alberino.

fault-wide-open-not-reached = il gas non apre tutto
fault-wide-open-not-reached-why = Il gas sembra non arrivare a fondo.
fault-wide-open-not-reached-remedy = Riprendi il gioco del cavo dell'acceleratore e guarda il fermo a gas tutto aperto.

fault-worn-track-near-idle = pista del sensore consumata vicino al minimo
fault-worn-track-near-idle-why = Un valore che salta vicino al minimo è segno di pista consumata.
fault-worn-track-near-idle-remedy = Sostituisci il sensore e regolalo da capo.

fault-worn-track-elsewhere = pista del sensore consumata più in alto
fault-worn-track-elsewhere-why = Un salto sempre alla stessa apertura è segno di pista consumata.
fault-worn-track-elsewhere-remedy = Sostituisci il sensore e regolalo da capo.

fault-loose-sensor = viti del sensore allentate
fault-loose-sensor-why = Il valore non ritorna, come con un sensore allentato.
fault-loose-sensor-remedy = Stringi le viti del sensore e regolalo di nuovo.

fault-shaft-play = gioco nell'alberino o nel trascinamento del sensore
fault-shaft-play-why = Il valore non ritorna, come con gioco sull'alberino.
fault-shaft-play-remedy = Guarda alberino, boccole e trascinamento del sensore.

fault-slots-at-end = sensore in fondo alle asole
fault-slots-at-end-why = Il sensore non riesce a girare abbastanza.
fault-slots-at-end-remedy = Trova perché ne serve così tanto prima di limare qualcosa.

fault-tang-wrong-side = trascinamento del sensore dal lato sbagliato
fault-tang-wrong-side-why = Il valore è molto lontano, come con il trascinamento dal lato sbagliato dell'alberino.
fault-tang-wrong-side-remedy = Smonta il sensore e metti il trascinamento dal lato giusto.

fault-wrong-part-turned = girato un altro pezzo
fault-wrong-part-turned-why = Il valore non ha seguito. Può essere stato girato un altro pezzo.
fault-wrong-part-turned-remedy = Trova il pezzo giusto, e rimetti l'altro com'era.

fault-drifts-when-hot = il sensore deriva a caldo
fault-drifts-when-hot-why = Il valore si sposta con il calore.
fault-drifts-when-hot-remedy = Sostituisci il sensore e regolalo da capo.

fault-sensor-reversed = alimentazione e massa scambiate nel connettore
fault-sensor-reversed-why = Il segnale scende dove deve salire: il connettore può essere cablato al contrario.
fault-sensor-reversed-remedy = Metti alimentazione e massa sui loro pin.

fault-resistive-ground = massa del sensore cattiva
fault-resistive-ground-why = Il filo di massa del sensore sembra perdere tensione.
fault-resistive-ground-remedy = Ripara il filo di massa o la sua giunta.

fault-open-ground = massa del sensore interrotta
fault-open-ground-why = Il filo di massa del sensore può essere interrotto.
fault-open-ground-remedy = Ripara il filo di massa.

fault-open-supply = alimentazione del sensore interrotta
fault-open-supply-why = Sembra che al sensore non arrivi alimentazione.
fault-open-supply-remedy = Ripara il filo di alimentazione.

fault-resistive-supply = filo di alimentazione cattivo
fault-resistive-supply-why = Il filo di alimentazione sembra perdere tensione.
fault-resistive-supply-remedy = Ripara il filo di alimentazione o la sua giunta.

fault-open-signal = filo di segnale interrotto
fault-open-signal-why = Il filo di segnale può essere interrotto dietro il connettore.
fault-open-signal-remedy = Ripara il filo di segnale.

fault-signal-shorted = filo di segnale in corto
fault-signal-shorted-why = Il segnale sta fermo, come in un corto.
fault-signal-shorted-remedy = Trova dove il filo di segnale ne tocca un altro.

fault-corroded-plug = connettore ossidato
fault-corroded-plug-why = Il valore salta, come con un connettore ossidato.
fault-corroded-plug-remedy = Pulisci il connettore e innestalo bene, o sostituisci i suoi pin.

fault-chafed-loom = cablaggio spelato
fault-chafed-loom-why = Il valore ogni tanto cade, come con un cablaggio spelato.
fault-chafed-loom-remedy = Trova il punto spelato, di solito dove il manubrio piega il cablaggio.

fault-box-on-signal = centralina aggiuntiva sul filo di segnale
fault-box-on-signal-why = Una centralina aggiuntiva sul filo di segnale falsa il valore.
fault-box-on-signal-remedy = Stacca la centralina aggiuntiva e misura di nuovo.

fault-air-leak = infiltrazione d'aria
fault-air-leak-why = I volt sono giusti e il regime è troppo alto: può infiltrarsi aria.
fault-air-leak-remedy = Cerca l'infiltrazione: collettore di aspirazione, fascette, manicotti.

fault-dirty-bore = condotto sporco
fault-dirty-bore-why = I volt sono giusti e il regime è troppo basso: il condotto può essere sporco.
fault-dirty-bore-remedy = Pulisci il condotto.

fault-valve-clearance = gioco valvole
fault-valve-clearance-why = I volt sono giusti: la causa può essere il gioco valvole.
fault-valve-clearance-remedy = Controlla il gioco valvole.

fault-air-filter = filtro dell'aria
fault-air-filter-why = I volt sono giusti: la causa può essere il filtro dell'aria.
fault-air-filter-remedy = Pulisci o sostituisci il filtro dell'aria.

fault-spark-plug = candela
fault-spark-plug-why = I volt sono giusti: la causa può essere la candela.
fault-spark-plug-remedy = Sostituisci la candela.

fault-fuel-supply = arrivo della benzina
fault-fuel-supply-why = I volt sono giusti: la causa può essere la benzina.
fault-fuel-supply-remedy = Controlla benzina, filtro e pressione.

fault-decompressor = decompressore
fault-decompressor-why = I volt sono giusti: la causa può essere il decompressore.
fault-decompressor-remedy = Controlla il decompressore.

fault-charging = ricarica
fault-charging-why = La batteria può non ricaricarsi.
fault-charging-remedy = Controlla tensione di ricarica e regolatore.

fault-fuel-map = mappa d'iniezione
fault-fuel-map-why = I volt sono giusti: la mappa d'iniezione può non essere adatta.
fault-fuel-map-remedy = Carica la mappa adatta a scarico e filtro.

check-read-again = Guarda di nuovo il tester. Invia tutte le cifre.
check-wake-again = Sveglia di nuovo la centralina. Poi invia il valore.
check-look-at-leads = Lascia dormire la centralina. Guarda in quali fili sono gli spilli e mettili a posto. Svegliala. Poi invia il valore.
check-leads-on-battery = Rosso sul positivo della batteria, nero sul negativo; sul tester, rosso nella presa dei volt. Poi invia il valore.
check-look-at-meter = Guarda il tester: volt in continua, la portata giusta, niente HOLD né REL, rosso nella presa dei volt. Poi invia il valore.
check-look-at-cable = Gira il manubrio da fine corsa a fine corsa e guarda il valore. Se si muove, lascia gioco al cavo dell'acceleratore. Poi invia il valore, con il manubrio dritto.
check-look-at-screws = Spingi piano il sensore con la mano e guarda il valore. Stringi ciò che è allentato. Poi invia il valore.
check-back-off-again = Gira il fermo del minimo in fuori finché non appoggia più. Poi invia il valore.
check-knob-out-again = Chiudi bene la manopola, così il pomello avviamento a freddo salta fuori. Poi invia il valore.
check-set-it = Sembra soltanto sregolato. Continua la regolazione.
check-measure-supply = Lascia dormire la centralina. Spilli su alimentazione e massa. Svegliala. Invia quello che il tester segna.
check-measure-ground-drop = Lascia dormire la centralina. Rosso sul filo di massa del sensore, nero sul polo negativo della batteria. Svegliala. Invia quello che il tester segna.
check-measure-battery = Lascia dormire la centralina. Rosso sul polo positivo della batteria, nero sul negativo. Invia quello che il tester segna.
check-wiggle-plug = Muovi piano il connettore del sensore e guarda il valore. Salta?
check-watch-it-wake = Lascia dormire la centralina, poi svegliala. La pompa ronza, o si accende una spia o il display?
check-unplug-and-look = Lascia dormire la centralina. Stacca il connettore del sensore; gli spilli restano dal lato del cablaggio, su alimentazione e massa. Svegliala. Di nuovo vicino a cinque volt? Poi lasciala dormire e ricollega.
check-look-at-lever = Gas chiuso, mani via. La leva appoggia sul piccolo fermo sigillato, o qualcosa la tiene poco prima?
check-measure-track = Connettore staccato, misura la pista in ohm su tutta la corsa: qualche salto?
check-trace-wires = Segui i fili del sensore sotto carico: alimentazione, massa, segnale.
check-clean-bore = Corpo farfallato smontato: pulisci condotto e farfalla, guarda la sede.
check-read-again-name = Rileggere
check-wake-again-name = Svegliare di nuovo
check-look-at-leads-name = Spilli
check-look-at-meter-name = Tester
check-look-at-cable-name = Cavo dell'acceleratore
check-look-at-screws-name = Viti del sensore
check-back-off-again-name = Fermo del minimo, di nuovo
check-knob-out-again-name = Pomello fuori, di nuovo
check-set-it-name = Continuare a regolare
check-measure-supply-name = Alimentazione
check-measure-ground-drop-name = Caduta sulla massa
check-measure-battery-name = Batteria
check-wiggle-plug-name = Muovere il connettore
check-watch-it-wake-name = Guardare il risveglio
check-unplug-and-look-name = Alimentazione senza sensore
check-look-at-lever-name = Leva sul suo fermo
check-measure-track-name = Pista in ohm
check-trace-wires-name = Seguire i fili
check-clean-bore-name = Pulire il condotto

answer-wiggle-steady = Sta fermo
answer-wiggle-jumps = Salta
answer-wiggle-dont-know = Non si capisce
answer-wake-signs-signs = Sì, si sveglia
answer-wake-signs-nothing = Non succede niente
answer-wake-signs-dont-know = Non si capisce
answer-supply-unplugged-comes-back = Vicino a cinque
answer-supply-unplugged-still-off = Ancora fuori
answer-supply-unplugged-dont-know = Non si capisce
answer-lever-rest-on-stop = Appoggia sul fermo
answer-lever-rest-held = Qualcosa la tiene
answer-lever-rest-dont-know = Non si capisce

call-unknown-cause = Nessuna causa conosciuta spiega le misure.
call-not-for-an-owner = La causa più probabile non è da far riparare a un proprietario.
call-nothing-left = Tutto ciò che un proprietario può controllare è fatto, e le misure ancora non tornano.
call-look-alike = Diverse cause si vedono uguali sul tester; deve distinguerle una persona.

reason-fault-lamp = Tensioni giuste, spia di guasto accesa a motore acceso: la centralina vede altro rispetto al tester. Leggere i codici; filo del segnale e connettore.
reason-fault-lamp-owner = La spia dice che la centralina vede un guasto. Prima va letto.
