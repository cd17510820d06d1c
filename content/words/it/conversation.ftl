# Ciò che il programma stesso dice in ogni procedura. $value, $low, $high, $amount sono valori; $unit è il simbolo di un'unità.

greeting = Ciao. Sono la guida alle regolazioni di { $workshop }: un programma, con delle persone dietro.
greeting-scope = Io guido, tu decidi. Prima vengono il manuale della casa, le norme locali e i mestieri abilitati.
greeting-kept = Tengo quello che invii per { $days } giorni; potete leggerlo tu e il banco dell'officina. "cancellami" cancella tutto, "persona" chiama qualcuno.
menu-procedure = Che cosa vuoi fare?
menu-machine = Che moto è?
set-up-opened = { $machine }: andiamo passo per passo.

link-unknown = Quel link porta a qualcosa che non ho.
link-replace = Hai una regolazione aperta. La tieni o cominci la nuova?
link-keep = Tenerla
link-start-new = Cominciare la nuova
link-left-as-is = L'altra regolazione finisce qui. Quello che è stato girato resta com'è.
withdrawn = L'officina ha ritirato questa procedura: { $why }.
withdrawn-goes-on = Andiamo avanti con quella giusta.

button-done = Fatto
button-understood = Capito
button-skip = Tralasciare
button-yes = Sì
button-no = No
button-jumping = Salta
button-stale = Quel pulsante è di prima. Siamo qui.
button-over = Quello è finito. Ecco che cosa posso fare.

ask-number = Invia il valore.
ask-speed = Invia il regime del minimo.
ask-readings = Invia tutti i { $count } valori in un solo messaggio, in ordine.

heard-question = Sono { $value } { $unit }?
heard-as = { $typed } = { $value } { $unit }
send-again = Allora non è quello.
send-all-at-once = Mi servono tutti in un solo messaggio, da chiuso a chiuso.
read-again = È un salto grande. Guarda di nuovo, con tutte le cifre.
read-once-more = Guarda ancora una volta e invia tutte le cifre.
came-back-differently = È tornato in un punto diverso da prima.
passed-to-desk = Quello è andato all'officina.
number-wanted = Mi serve il valore del tester.
choose-one = Scegli una voce.
confirm-wanted = Tocca il pulsante o scrivi fatto quando è così.
not-yet = Con calma. Tocca il pulsante o scrivi fatto quando è così.
lost-reading = Solo il valore del tester, con tutte le cifre.
lost-person = Se non si va avanti, scrivi persona: qualcuno in officina ci guarda.
picture-kept = Grazie della foto. Io non so leggerla; una persona al banco sì.
picture-passed-on = La foto è andata al banco.
edited = Hai cambiato un messaggio. Seguo solo i messaggi nuovi.

unclear-nothing-understood = Non ho capito.
unclear-two-meanings = Può voler dire due cose.
unclear-bare-figure = Mi serve con la virgola decimale, o con l'unità.
unclear-wrong-quantity = Quella è un'altra unità. Metti il tester in volt in continua.
unclear-malformed-number = Non distinguo il valore. Solo le cifre, per favore.
unclear-sign-or-bullet = Non so se quello è un segno meno.
unclear-bound-only = Mi serve quello che mostra il display, con tutte le cifre.
unclear-refers-back = Mi serve una misura nuova.
unclear-too-long = È troppo lungo per me. Solo il valore, per favore.
unclear-one-number = Mi serve un solo valore: quello che il tester segna adesso.
unclear-count = Mi serve un numero.
unclear-digits = Così non si distingue. Metti il tester sulla portata che mostra passi di { $digit }.
unclear-meter = Questo tester non arriva a distinguerlo.

verdict-pass = { $value } { $unit }. Giusto.
verdict-loose = { $value } { $unit }. Tienilo lì.
verdict-out = { $value } { $unit }. Deve segnare da { $low } a { $high }.
verdict-out-high = { $value } { $unit }. Deve segnare { $high } o meno.
verdict-out-low = { $value } { $unit }. Deve segnare { $low } o più.
verdict-sweep-pass = Sale senza vuoti e torna. Giusto.
noted = { $value } { $unit }, annotato.
loop-high = { $value }. Troppo alto.
loop-low = { $value }. Troppo basso.

odd-value = { $value } { $unit } non torna.
odd-range = Da { $low } a { $high } { $unit }: non sta fermo.
next-range = Passa alla portata successiva.
odd-overload = Il tester è oltre la portata.
odd-nothing = Il tester non segna niente.
odd-sweep = La corsa non sale e scende come deve.
asleep-again = Si è addormentata la centralina, o il tester.
jumped-once-more = Ancora una volta, con i puntali ben messi.

move-until = Fermati tra { $low } e { $high }. Lascia.
# Di una mano che non sa fare meno di un pelo alla volta.
amount-nudges = { $amount ->
    [1] un pelo
   *[other] circa { $amount } peli
 }
amount-turns = { $amount ->
    [0.0625] un sedicesimo di giro
    [0.125] un ottavo di giro
    [0.1875] tre sedicesimi di giro
    [0.25] un quarto di giro
    [0.5] mezzo giro
    [0.75] tre quarti di giro
    [1] un giro
   *[other] { $amount } giri
 }
amount-clicks = { $amount ->
    [1] uno scatto
   *[other] { $amount } scatti
 }
move-sensor-body-clockwise = Gira il sensore { amount-nudges } in senso orario.
move-sensor-body-counter-clockwise = Gira il sensore { amount-nudges } in senso antiorario.
move-idle-stop-in = Gira il fermo del minimo in dentro, circa { amount-turns }.
move-idle-stop-out = Gira il fermo del minimo in fuori, circa { amount-turns }.
move-fast-idle-in = Gira il pomello in dentro, { amount-clicks }.
move-fast-idle-out = Gira il pomello in fuori, { amount-clicks }.
move-upper-screw-in = Vite superiore in dentro, un pelo.
move-upper-screw-out = Vite superiore in fuori, un pelo.
move-lower-screw-in = Vite inferiore in dentro, un pelo.
move-lower-screw-out = Vite inferiore in fuori, un pelo.
# Lo stesso con la mano ancora sul pezzo: poche parole.
again-nudge-clockwise = Orario, { amount-nudges }.
again-nudge-counter-clockwise = Antiorario, { amount-nudges }.
again-nudge-in = Dentro, { amount-nudges }.
again-nudge-out = Fuori, { amount-nudges }.
again-turn-in = Dentro, { amount-turns }.
again-turn-out = Fuori, { amount-turns }.
again-click-in = Dentro, { amount-clicks }.
again-click-out = Fuori, { amount-clicks }.
again-mm-more = Più gioco, { $amount } mm.
again-mm-less = Meno gioco, { $amount } mm.
again-until-clockwise = Orario finché segna da { $low } a { $high }. Lascia.
again-until-counter-clockwise = Antiorario finché segna da { $low } a { $high }. Lascia.
again-until-in = Dentro finché segna da { $low } a { $high }. Lascia.
again-until-out = Fuori finché segna da { $low } a { $high }. Lascia.
aim-off = Stringendo si sposta. Miriamo di lato per compensare.
move-cable-more = Dai al cavo dell'acceleratore { $amount } mm di gioco in più.
move-cable-less = Dai al cavo dell'acceleratore { $amount } mm di gioco in meno.

do-wake = { $wake }
do-sleep = Lascia dormire la centralina: stacca ciò che l'ha svegliata.
do-probe = Puntale rosso sul { $signal }, nero sul { $ground }.
do-probe-supply = Puntale rosso sul { $supply }, nero sul { $ground }.
do-probe-ground = Puntale rosso sul { $ground }, nero sul polo negativo della batteria.
do-probe-battery = Puntale rosso sul polo positivo della batteria, nero sul negativo.
do-unprobe = Togli gli spilli.
do-back-off-idle-stop = Fermo del minimo: { $where }. Giralo in fuori.
do-back-off-fast-idle = Pomello avviamento a freddo: { $where }. Giralo in fuori.
do-free-play-cable = Lascia gioco al cavo dell'acceleratore.
do-turn-bars = Gira il manubrio da fine corsa a fine corsa.
do-mark-sensor-body = Segna dove sta il sensore.
do-restore-sensor-body = Rimetti il sensore sul tuo segno.
do-loosen-sensor-screws = Allenta le due viti del sensore finché gira con un po' di attrito.
do-tighten-sensor-screws = Stringi le due viti a turno, poco per volta. Lascia e aspetta un momento.
do-tighten-sensor-screws-to = Stringi le due viti a turno, poco per volta, fino a { $torque } Nm. Lascia e aspetta un momento.
do-open = Apri il gas a fondo.
do-close = Chiudi il gas.
do-snap = Apri il gas di colpo e lascialo andare.
do-engage-fast-idle = Spingi dentro il pomello avviamento a freddo.
do-release-fast-idle = Chiudi bene la manopola, così il pomello avviamento a freddo salta fuori.
do-start-engine = Avvia il motore.
do-stop-engine = Spegni il motore.
do-check-leads = Guarda in quali fili sono gli spilli. Mettili a posto.
do-check-meter = Tester: volt in continua, niente HOLD né REL, puntale rosso nella presa dei volt.
do-check-cable = Gira il manubrio e guarda la misura. Se il cavo tira, mettilo a posto.
do-check-screws = Spingi il sensore con la mano e guarda la misura. Stringi ciò che è allentato.

unit-per-minute = giri/min

wire-supply = filo di alimentazione
wire-signal = filo di segnale
wire-ground = filo di massa
wire-plain = filo { $colour }
wire-striped = filo { $colour } rigato di { $stripe }
colour-black = nero
colour-white = bianco
colour-grey = grigio
colour-brown = marrone
colour-red = rosso
colour-orange = arancione
colour-yellow = giallo
colour-green = verde
colour-light-green = verde chiaro
colour-blue = blu
colour-light-blue = azzurro
colour-violet = viola
colour-pink = rosa
tool-any = l'attrezzo giusto
part-sensor-body = sensore
part-upper-screw = vite superiore
part-lower-screw = vite inferiore
part-idle-stop = fermo del minimo
part-fast-idle = pomello avviamento a freddo
part-cable = cavo dell'acceleratore
part-chain-adjuster = tendicatena
part-preload-collar = ghiera del precarico

measure-supply-voltage = Alimentazione
measure-ground-drop = Caduta sulla massa
measure-battery-voltage = Batteria
measure-charging-voltage = Carica
measure-signal-closed-stop = Fermo chiuso
measure-signal-idle = Minimo
measure-signal-idle-static = Minimo, motore spento
measure-signal-idle-warm = Minimo, a caldo
measure-signal-fast-idle = Avviamento a freddo
measure-signal-released = Pomello fuori
measure-signal-wide-open = Tutto aperto
measure-signal-sweep = Corsa
measure-signal-snapped = Dopo il colpo di gas
measure-idle-speed = Regime del minimo
measure-free-play = Gioco
measure-chain-slack = Lasco della catena
measure-rider-sag = Abbassamento con pilota
measure-free-sag = Abbassamento libero
measure-tyre-pressure = Pressione gomme

caution-guidance-only = Questa è una guida: prima viene il manuale della casa. Nel dubbio, fermati e chiedi.
caution-guidance-only-name = solo una guida
caution-fuel-and-heat = Solo a motore freddo. Niente fiamme né scintille vicino alla benzina.
    Mai legare il gas aperto, mai aprire un tubo della benzina.
caution-fuel-and-heat-name = benzina e calore
caution-battery-care = Via anelli e orologio. Tieni separati i puntali: un corto può bruciarti.
caution-battery-care-name = batteria
caution-back-probing = Infila spilli sottili lungo i gommini dei fili. Mai forare un filo.
    Tieni separati gli spilli: alimentazione a massa può uccidere la centralina.
caution-back-probing-name = spilli nel connettore
caution-waking = Motore spento, in folle, mani lontane: un pulsante d'avviamento può farlo girare.
    Qualcosa che scalda, fumo o la pompa che non smette: stacca e dimmelo.
caution-waking-name = risveglio
caution-stops-off = Finché i fermi sono arretrati, nessuno preme l'avviamento.
caution-stops-off-name = fermi arretrati
caution-loose-sensor = Finché il sensore è allentato, nessuno preme l'avviamento. Dita lontane dalla farfalla.
caution-loose-sensor-name = sensore allentato
caution-running-engine = Il gas di scarico uccide: solo all'aperto.
    Mani, puntali e vestiti lontani da catena, ruota e scarico.
    Se va su di giri da sola: premi l'interruttore di spegnimento.
caution-running-engine-name = motore acceso
caution-hot-engine = Il motore è acceso e caldo. Mettiti di lato per girare il fermo del minimo, lontano da scarico e ventola.
caution-hot-engine-name = motore caldo

figure-taken = { $value } { $unit }, dal tuo manuale.
figure-out-of-reach = Non può essere: mi aspetto da { $low } a { $high } { $unit }. Ricontrolla.

check-only-by-wire = Un acceleratore senza cavo ha una farfalla motorizzata che può intrappolare le dita. Misuriamo soltanto; qui non si regola niente.
check-only-riveted = Un sensore fisso non si regola. Misuriamo soltanto.
check-only-not-known = Finché non si sa, misuriamo soltanto e non giriamo niente.
check-only-map-not-known = Senza sapere la mappa non c'è un valore a cui regolare. Misuriamo soltanto.
check-only-codes = Prima viene il codice memorizzato. Misuriamo soltanto, non regoliamo niente.
check-only-dirty-bore = Prima pulisci il condotto: regolato sullo sporco, domani è di nuovo sbagliato. Misuriamo soltanto.
check-only-no-figure = Senza un valore non c'è a che cosa regolare. Misuriamo soltanto.
check-only-not-adjustable = Il sensore di questa moto è fisso e non si regola. Misuriamo soltanto.

help = Scrivi un valore, oppure: fatto, indietro, ripeti, pausa, stop, persona. Fumo, benzina, un acceleratore che si blocca: dillo e basta.
where = { $machine }. Parte { $part } di { $parts }: { $name }.
where-plain = { $machine }.
part-begins = Parte { $part } di { $parts }: { $name }.
back-engine-runs = Prima spegni il motore.
back-sensor-loose = Prima regola il sensore e stringilo.
back-no-further = Non c'è niente prima di questo.
paused = Scrivimi quando riprendi.
pause-engine = Prima spegni il motore.
come-back = Bentornato.
come-back-pins = Guarda prima che i due spilli siano ancora al loro posto.
awake-too-long = La centralina è sveglia da { $minutes } minuti. Risparmia la batteria.

give-up = Rimettiamo tutto com'era?
way-back-uncounted = Il fermo del minimo non è stato contato. Giralo in dentro finché tocca appena. Il minimo non sarà quello di prima: non guidarla ancora.
give-up-restore = Rimettere com'era
give-up-leave = Lasciare com'è
give-up-go-on = Continuare il lavoro
give-up-wait = Aspettare la persona

called = Ho chiamato una persona dell'officina. Vede tutto quello che hai inviato.
called-closed = L'officina è chiusa. La tua chiamata è la prima quando apre.
called-go-on = Intanto puoi andare avanti.
enough = Sono { $minutes } minuti. "persona" chiama qualcuno; "pausa" tiene il segno.
leave-it = Via il ponticello, spegni il tester. Non avviarla e non guidarla così.
held = Questo aspetta una persona dell'officina. Via il ponticello, spegni il tester. Non avviarla e non guidarla così.

flag-throttle-sticks-first = Premi l'interruttore di spegnimento. Mani via dalla manopola. Non riavviarla.
flag-revs-hang-first = Premi l'interruttore di spegnimento. Lasciala ferma. Non riavviarla.
flag-engine-wont-stop-first = Premi l'interruttore di spegnimento. Via il ponticello. Stai lontano.
flag-fuel-leak-first = Premi l'interruttore di spegnimento. Via il ponticello. Niente scintille, niente fiamme. Allontanati.
flag-smoke-first = Premi l'interruttore di spegnimento. Via il ponticello. Allontanati. Se brucia: numero di emergenza.
flag-hot-leads-first = Via il ponticello. Non toccare i puntali. Stai lontano.
flag-pump-runs-on-first = Via il ponticello subito. Non rimetterlo.
flag-unwell-first = Spegni il motore. Fuori all'aria aperta subito. Se non passa presto: numero di emergenza.
flag-injured-first = Spegni il motore. Se è grave, chiama il numero di emergenza. Prima pensa a chi è ferito.

stuck-slots-at-end = Il sensore è in fondo alle asole. Lascialo lì: ci pensa una persona dell'officina.
stuck-moves-stop-helping = Girare ancora non aiuta. Ci pensa una persona dell'officina.
stuck-too-coarse = A mano non si regola più fine di così. Decide una persona.
call-unknown-cause-owner = Non so che cosa darebbe questi valori. Ci pensa una persona dell'officina.
call-not-for-an-owner-owner = Questo non si ripara in garage con una chat. Continua una persona dell'officina.
call-nothing-left-owner = Da qui abbiamo controllato tutto il possibile. Continua una persona dell'officina.
call-look-alike-owner = Diverse cause si vedrebbero così. Continua una persona dell'officina.

record-set = { $machine }: regolazione finita. Ben fatto.
record-right-as-found = { $machine }: era già a posto. Non è stato cambiato niente di importante.
record-accepted = { $machine }: conclusa con il banco.
record-not-set = { $machine }: non regolata.
record-baseline-checked = Il valore base è stato controllato al fermo chiuso.
record-baseline-not-checked = Il valore base non è stato controllato.
record-elsewhere = La causa del tuo problema non è il sensore. Guarda infiltrazioni d'aria, valvole, candela, filtro e benzina.
record-accepted-by = Un valore è stato accettato da { $name }.
record-value = { $measure }: { $value } { $unit }
record-speed-not-checked = Regime del minimo non controllato.
record-code = La tua scheda è { $code }. Tienila per l'officina.

erase-question = Cancello tutto ciò che ti riguarda qui? Non si può annullare.
erase-yes = Cancellare
erase-no = Tenere
erased = Tutto ciò che ti riguarda è cancellato.
