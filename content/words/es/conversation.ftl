# Lo que el propio programa dice en todo procedimiento. $value, $low, $high, $amount son cifras; $unit es el signo de una unidad.

greeting = Hola. Soy la guía de ajustes de { $workshop }: un programa, con personas detrás.
greeting-scope = Yo guío, tú decides. Mandan el manual del fabricante, las normas locales y los oficios autorizados.
greeting-kept = Guardo lo que envías { $days } días; lo pueden leer tú y el puesto del taller. "bórrame" lo borra, "persona" llama a alguien.
menu-procedure = ¿Qué quieres hacer?
menu-machine = ¿Qué moto es?
set-up-opened = { $machine }: vamos paso a paso.

link-unknown = Ese enlace lleva a algo que no tengo.
link-replace = Tienes un ajuste abierto. ¿Lo mantienes o empiezas el nuevo?
link-keep = Mantenerlo
link-start-new = Empezar el nuevo
link-left-as-is = El otro ajuste termina aquí. Lo que se giró queda como está.
withdrawn = El taller ha retirado este procedimiento: { $why }.
withdrawn-goes-on = Seguimos con el correcto.

button-done = Hecho
button-understood = Entendido
button-skip = Omitir
button-yes = Sí
button-no = No
button-jumping = Salta
button-stale = Ese botón es de antes. Estamos aquí.
button-over = Eso ya terminó. Esto es lo que puedo hacer.

ask-number = Envía la cifra.
ask-speed = Envía el régimen de ralentí.
ask-readings = Envía las { $count } cifras en un solo mensaje, en orden.

heard-question = ¿Son { $value } { $unit }?
heard-as = { $typed } = { $value } { $unit }
send-again = Entonces no es eso.
send-all-at-once = Las necesito todas en un solo mensaje, de cerrado a cerrado.
read-again = Es un salto grande. Mira otra vez, con todos los dígitos.
read-once-more = Mira una vez más y envía todos los dígitos.
came-back-differently = Volvió a un punto distinto del de antes.
passed-to-desk = Eso ha ido al taller.
number-wanted = Necesito la cifra del medidor.
choose-one = Elige una opción.
confirm-wanted = Pulsa el botón o escribe hecho cuando esté.
not-yet = Sin prisa. Pulsa el botón o escribe hecho cuando esté.
lost-reading = Solo la cifra del medidor, con todos sus decimales.
lost-person = Si no avanzamos, escribe persona: alguien del taller lo mira.
picture-kept = Gracias por la foto. Yo no la sé leer; una persona del puesto sí.
picture-passed-on = La foto ha ido al puesto.
edited = Has cambiado un mensaje. Solo sigo los mensajes nuevos.

unclear-nothing-understood = No lo he entendido.
unclear-two-meanings = Eso puede significar dos cosas.
unclear-bare-figure = Lo necesito con su coma decimal o con su unidad.
unclear-wrong-quantity = Esa es otra unidad. Pon el medidor en voltios de continua.
unclear-malformed-number = No distingo la cifra. Solo los dígitos, por favor.
unclear-sign-or-bullet = No sé si eso es un signo menos.
unclear-bound-only = Necesito lo que marca la pantalla, con todos los dígitos.
unclear-refers-back = Necesito una lectura nueva.
unclear-too-long = Es demasiado largo para mí. Solo la cifra, por favor.
unclear-one-number = Necesito una sola cifra: lo que marca ahora el medidor.
unclear-count = Necesito un número.
unclear-digits = Así no se distingue. Pon el medidor en la escala que muestra pasos de { $digit }.
unclear-meter = Este medidor no llega a distinguirlo.

verdict-pass = { $value } { $unit }. Correcto.
verdict-loose = { $value } { $unit }. Mantenlo ahí.
verdict-out = { $value } { $unit }. Debe marcar de { $low } a { $high }.
verdict-out-high = { $value } { $unit }. Debe marcar { $high } o menos.
verdict-out-low = { $value } { $unit }. Debe marcar { $low } o más.
verdict-sweep-pass = Sube sin cortes y vuelve. Correcto.
noted = { $value } { $unit }, anotado.
loop-high = { $value }. Demasiado alto.
loop-low = { $value }. Demasiado bajo.

odd-value = { $value } { $unit } no cuadra.
odd-range = De { $low } a { $high } { $unit }: no se está quieto.
next-range = Pasa a la escala siguiente.
odd-overload = El medidor está fuera de escala.
odd-nothing = El medidor no marca nada.
odd-sweep = El barrido no sube y baja como debe.
asleep-again = Se durmió la centralita, o el medidor.
jumped-once-more = Otra vez, con las puntas bien puestas.

move-until = Detente entre { $low } y { $high }. Suelta.
# De una mano que no puede hacer menos que un toque cada vez.
amount-nudges = { $amount ->
    [1] un toque
   *[other] unos { $amount } toques
 }
amount-turns = { $amount ->
    [0.0625] un dieciseisavo de vuelta
    [0.125] un octavo de vuelta
    [0.1875] tres dieciseisavos de vuelta
    [0.25] un cuarto de vuelta
    [0.5] media vuelta
    [0.75] tres cuartos de vuelta
    [1] una vuelta
   *[other] { $amount } vueltas
 }
amount-clicks = { $amount ->
    [1] un clic
   *[other] { $amount } clics
 }
move-sensor-body-clockwise = Gira el sensor { amount-nudges } en sentido horario.
move-sensor-body-counter-clockwise = Gira el sensor { amount-nudges } en sentido antihorario.
move-idle-stop-in = Gira el tope de ralentí adentro, más o menos { amount-turns }.
move-idle-stop-out = Gira el tope de ralentí afuera, más o menos { amount-turns }.
move-fast-idle-in = Gira el mando adentro, { amount-clicks }.
move-fast-idle-out = Gira el mando afuera, { amount-clicks }.
move-upper-screw-in = Tornillo de arriba adentro, un toque.
move-upper-screw-out = Tornillo de arriba afuera, un toque.
move-lower-screw-in = Tornillo de abajo adentro, un toque.
move-lower-screw-out = Tornillo de abajo afuera, un toque.
# Lo mismo con la mano todavía en la pieza: pocas palabras.
again-nudge-clockwise = Horario, { amount-nudges }.
again-nudge-counter-clockwise = Antihorario, { amount-nudges }.
again-nudge-in = Adentro, { amount-nudges }.
again-nudge-out = Afuera, { amount-nudges }.
again-turn-in = Adentro, { amount-turns }.
again-turn-out = Afuera, { amount-turns }.
again-click-in = Adentro, { amount-clicks }.
again-click-out = Afuera, { amount-clicks }.
again-mm-more = Más juego, { $amount } mm.
again-mm-less = Menos juego, { $amount } mm.
again-until-clockwise = Horario hasta que marque de { $low } a { $high }. Suelta.
again-until-counter-clockwise = Antihorario hasta que marque de { $low } a { $high }. Suelta.
again-until-in = Adentro hasta que marque de { $low } a { $high }. Suelta.
again-until-out = Afuera hasta que marque de { $low } a { $high }. Suelta.
aim-off = Al apretar se mueve. Apuntamos al lado para compensarlo.
move-cable-more = Da al cable del acelerador { $amount } mm más de juego.
move-cable-less = Da al cable del acelerador { $amount } mm menos de juego.

do-wake = { $wake }
do-sleep = Deja dormir la centralita: desenchufa lo que la despertó.
do-probe = Punta roja en el { $signal }, negra en el { $ground }.
do-probe-supply = Punta roja en el { $supply }, negra en el { $ground }.
do-probe-ground = Punta roja en el { $ground }, negra en el borne negativo de la batería.
do-probe-battery = Punta roja en el borne positivo de la batería, negra en el negativo.
do-unprobe = Saca las agujas.
do-back-off-idle-stop = Tope de ralentí: { $where }. Gíralo afuera.
do-back-off-fast-idle = Mando de arranque en frío: { $where }. Gíralo afuera.
do-free-play-cable = Deja juego en el cable del acelerador.
do-turn-bars = Gira el manillar de tope a tope.
do-mark-sensor-body = Marca dónde está el sensor.
do-restore-sensor-body = Vuelve a poner el sensor en tu marca.
do-loosen-sensor-screws = Afloja los dos tornillos del sensor hasta que gire con algo de roce.
do-tighten-sensor-screws = Aprieta los dos tornillos por turnos, un poco cada uno. Suelta y espera un momento.
do-tighten-sensor-screws-to = Aprieta los dos tornillos por turnos, un poco cada uno, hasta { $torque } Nm. Suelta y espera un momento.
do-open = Abre el acelerador a fondo.
do-close = Cierra el acelerador.
do-snap = Abre el acelerador de golpe y suéltalo.
do-engage-fast-idle = Mete el mando de arranque en frío.
do-release-fast-idle = Cierra el puño del todo para que salte el mando de arranque en frío.
do-start-engine = Arranca el motor.
do-stop-engine = Apaga el motor.
do-check-leads = Mira en qué cables están las agujas. Corrígelo.
do-check-meter = Medidor: voltios de continua, sin HOLD ni REL, punta roja en la toma de voltios.
do-check-cable = Gira el manillar y mira la lectura. Si el cable tira, corrígelo.
do-check-screws = Empuja el sensor con la mano y mira la lectura. Aprieta lo que esté flojo.

unit-per-minute = rpm

wire-supply = cable de alimentación
wire-signal = cable de señal
wire-ground = cable de masa
wire-plain = cable { $colour }
wire-striped = cable { $colour } con raya de color { $stripe }
colour-black = negro
colour-white = blanco
colour-grey = gris
colour-brown = marrón
colour-red = rojo
colour-orange = naranja
colour-yellow = amarillo
colour-green = verde
colour-light-green = verde claro
colour-blue = azul
colour-light-blue = azul claro
colour-violet = violeta
colour-pink = rosa
tool-any = la herramienta adecuada
part-sensor-body = sensor
part-upper-screw = tornillo de arriba
part-lower-screw = tornillo de abajo
part-idle-stop = tope de ralentí
part-fast-idle = mando de arranque en frío
part-cable = cable del acelerador
part-chain-adjuster = tensor de cadena
part-preload-collar = collar de precarga

measure-supply-voltage = Alimentación
measure-ground-drop = Caída en masa
measure-battery-voltage = Batería
measure-charging-voltage = Carga
measure-signal-closed-stop = Tope cerrado
measure-signal-idle = Ralentí
measure-signal-idle-static = Ralentí, motor apagado
measure-signal-idle-warm = Ralentí, en caliente
measure-signal-fast-idle = Arranque en frío
measure-signal-released = Mando fuera
measure-signal-wide-open = A fondo
measure-signal-sweep = Barrido
measure-signal-snapped = Tras el golpe de gas
measure-idle-speed = Régimen de ralentí
measure-free-play = Juego
measure-chain-slack = Holgura de cadena
measure-rider-sag = Hundimiento con piloto
measure-free-sag = Hundimiento libre
measure-tyre-pressure = Presión de neumático

caution-guidance-only = Esto es una guía: manda el manual del fabricante. Si dudas, para y pregunta.
caution-guidance-only-name = solo una guía
caution-fuel-and-heat = Solo con el motor frío. Ni llama ni chispa cerca de la gasolina.
    Nunca ates el acelerador abierto, nunca abras una línea de gasolina.
caution-fuel-and-heat-name = gasolina y calor
caution-battery-care = Fuera anillos y reloj. Mantén separadas las puntas: un corto puede quemarte.
caution-battery-care-name = batería
caution-back-probing = Desliza agujas finas junto a las juntas de los cables. Nunca pinches un cable.
    Mantén separadas las agujas: alimentación a masa puede matar la centralita.
caution-back-probing-name = agujas en el conector
caution-waking = Motor apagado, punto muerto, manos fuera: un botón de arranque puede hacerlo girar.
    Si algo se calienta, echa humo o la bomba no para: desenchufa y dímelo.
caution-waking-name = despertarla
caution-stops-off = Mientras los topes estén fuera, nadie pulsa el arranque.
caution-stops-off-name = topes fuera
caution-loose-sensor = Mientras el sensor esté suelto, nadie pulsa el arranque. Dedos lejos de la mariposa.
caution-loose-sensor-name = sensor suelto
caution-running-engine = El gas de escape mata: solo al aire libre.
    Manos, puntas y ropa lejos de cadena, rueda y escape.
    Si se acelera solo: pulsa el interruptor de paro.
caution-running-engine-name = motor en marcha
caution-hot-engine = Está en marcha y caliente. Gira el tope de ralentí desde un lado, lejos del escape y del ventilador.
caution-hot-engine-name = motor caliente

figure-taken = { $value } { $unit }, de tu manual.
figure-out-of-reach = Eso no puede ser: espero de { $low } a { $high } { $unit }. Míralo otra vez.

check-only-by-wire = Un acelerador sin cable tiene una mariposa con motor que puede atrapar dedos. Solo medimos; aquí no se ajusta nada.
check-only-riveted = Un sensor fijo no se ajusta. Solo medimos.
check-only-not-known = Mientras no se sepa, solo medimos y no giramos nada.
check-only-map-not-known = Sin saber el mapa no hay valor al que ajustar. Solo medimos.
check-only-codes = Primero hay que resolver el código guardado. Solo medimos, no ajustamos nada.
check-only-dirty-bore = Primero limpia el conducto: ajustado sobre suciedad, mañana vuelve a estar mal. Solo medimos.
check-only-no-figure = Sin un valor no hay a qué ajustar. Solo medimos.
check-only-not-adjustable = El sensor de esta moto es fijo y no se ajusta. Solo medimos.

help = Escribe una cifra, o: hecho, atrás, repetir, pausa, parar, persona. Humo, gasolina, un acelerador que se atasca: dilo sin más.
where = { $machine }. Parte { $part } de { $parts }: { $name }.
where-plain = { $machine }.
part-begins = Parte { $part } de { $parts }: { $name }.
back-engine-runs = Primero apaga el motor.
back-sensor-loose = Primero ajusta el sensor y apriétalo.
back-no-further = No hay nada antes de esto.
paused = Escríbeme cuando sigas.
pause-engine = Primero apaga el motor.
come-back = Hola de nuevo.
come-back-pins = Mira primero que las dos agujas sigan en su sitio.
awake-too-long = La centralita lleva despierta { $minutes } minutos. Cuida la batería.

give-up = ¿Lo dejamos todo como estaba?
way-back-uncounted = No se contó el tope de ralentí. Gíralo adentro hasta que apenas toque. No hará el ralentí de antes: no salgas con ella todavía.
give-up-restore = Dejarlo como estaba
give-up-leave = Dejarlo como está
give-up-go-on = Seguir con el trabajo
give-up-wait = Esperar a la persona

called = He llamado a una persona del taller. Ve todo lo que has enviado.
called-closed = El taller está cerrado. Tu llamada es la primera cuando abra.
called-go-on = Mientras tanto puedes seguir.
enough = Van { $minutes } minutos. "persona" llama a alguien; "pausa" te guarda el sitio.
leave-it = Quita el puente, apaga el medidor. No arranques ni salgas así.
held = Esto espera a una persona del taller. Quita el puente, apaga el medidor. No arranques ni salgas así.

flag-throttle-sticks-first = Pulsa el interruptor de paro. Suelta el puño. No vuelvas a arrancar.
flag-revs-hang-first = Pulsa el interruptor de paro. Déjala quieta. No vuelvas a arrancar.
flag-engine-wont-stop-first = Pulsa el interruptor de paro. Quita el puente. Apártate.
flag-fuel-leak-first = Pulsa el interruptor de paro. Quita el puente. Ni chispa ni llama. Aléjate.
flag-smoke-first = Pulsa el interruptor de paro. Quita el puente. Aléjate. Si arde: teléfono de emergencias.
flag-hot-leads-first = Quita el puente. No toques las puntas. Apártate.
flag-pump-runs-on-first = Quita el puente ya. No lo vuelvas a poner.
flag-unwell-first = Apaga el motor. Sal al aire libre ya. Si no mejora enseguida: teléfono de emergencias.
flag-injured-first = Apaga el motor. Si es grave, llama al teléfono de emergencias. Atiende primero a la persona herida.

stuck-slots-at-end = El sensor está al final de sus ranuras. Déjalo ahí: de eso se ocupa una persona del taller.
stuck-moves-stop-helping = Seguir girando ya no ayuda. De eso se ocupa una persona del taller.
stuck-too-coarse = A mano no se puede ajustar más fino. Lo decide una persona.
call-unknown-cause-owner = No sé qué daría estas cifras. De eso se ocupa una persona del taller.
call-not-for-an-owner-owner = Eso no se arregla en el garaje con un chat. Sigue una persona del taller.
call-nothing-left-owner = Hemos comprobado todo lo posible desde aquí. Sigue una persona del taller.
call-look-alike-owner = Varias causas se verían así. Sigue una persona del taller.

record-set = { $machine }: ajuste terminado. Bien hecho.
record-right-as-found = { $machine }: ya estaba bien. No se cambió nada que importe.
record-accepted = { $machine }: terminado con el puesto.
record-not-set = { $machine }: sin ajustar.
record-baseline-checked = El valor base se comprobó con el tope cerrado.
record-baseline-not-checked = El valor base no se comprobó.
record-elsewhere = El sensor no es la causa de tu queja. Mira entradas de aire, válvulas, bujía, filtro y gasolina.
record-accepted-by = { $name } aceptó un valor.
record-value = { $measure }: { $value } { $unit }
record-speed-not-checked = Régimen de ralentí sin comprobar.
record-code = Tu ficha es { $code }. Guárdala para el taller.

erase-question = ¿Borro todo lo tuyo aquí? No se puede deshacer.
erase-yes = Borrarlo
erase-no = Conservarlo
erased = Todo lo tuyo está borrado.
