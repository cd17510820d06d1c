# Lo que pasa entre un propietario y el puesto del taller. $name es el nombre visible de una persona; $text es lo que alguien escribió, tal cual.

## Al propietario

too-fast = Vas más rápido de lo que puedo seguir. Espera un minuto y envía otra vez lo último.
called-already = Una persona del taller ya lo sabe. Ve todo lo que envías.
called-taken = { $name }, del taller, lo está viendo.
called-closed-until = El taller está cerrado. Tu llamada es la primera: { $when }.
called-way-back = "parar" lo deja como estaba.
called-put-back = Dejarlo como estaba
held-by = Ahora lo lleva { $name }, del taller. Recibe lo que escribes.
taken-by = { $name }, del taller, está ahora contigo. Recibe lo que escribes.
passed-on = { $name } te pasa a otra persona del taller, que te escribirá aquí.
staff-says = { $name } (taller): { $text }
staff-sends-picture = { $name } (taller) envió una foto.
asked-by = { $name } (taller) pide una lectura. { $measure }:
asked-question-by = { $name } (taller) pregunta:
asked-noted = { $shown }. { $name } lo ve.
asked-answered = Gracias. { $name } lo ve.
given-back = { $name } te devuelve a la guía. Hablas otra vez con el programa.
given-back-fresh = Primero corriente y agujas, luego una cifra nueva.
closed-by = { $name }, del taller, ha cerrado esto.
closed-not-rideable = Quita el puente, saca las agujas. No arranques ni salgas con ella tal como está.

## La tarjeta

desk-card = Caso { $id }, { $state }
desk-card-flag = Hay alerta roja. { $flag }
desk-state-waiting = en espera desde { $since }
desk-state-taken = lo lleva { $name }
desk-state-returned = devuelto ({ $since })
desk-state-closed = cerrado ({ $since })
desk-erased = Caso { $id }: el propietario hizo borrar todo lo suyo. Se acabó.
desk-rideable = Apretado y ajustado, agujas fuera: se puede arrancar.
desk-not-rideable = NO arrancar ni salir con ella tal como está.
desk-machine-power = { $power }; { $probes }.
desk-machine-parts = Sensor { $sensor }; { $stop }; { $knob }.
desk-machine-engine = Motor { $engine }; lista de arranque: { $confirmed } de { $items } confirmados.
desk-awake = Despierta y con el puente desde { $since }
desk-asleep = Dormida, sin puente
desk-probes-none = sin agujas puestas
desk-probes-unsure = agujas quizá aún puestas
desk-probes-signal = agujas en señal y masa
desk-probes-supply = agujas en alimentación y masa
desk-probes-ground = agujas en masa y negativo de batería
desk-probes-battery = puntas en la batería
desk-sensor-tight = apretado
desk-sensor-loose = SUELTO
desk-stop-set = tope de ralentí en su sitio
desk-stop-off = tope de ralentí FUERA
desk-stop-off-by = tope de ralentí FUERA, { $turns } { $turns ->
    [1] vuelta contada
   *[other] vueltas contadas
 }
desk-knob-set = mando de arranque en frío en su sitio
desk-knob-off = mando de arranque en frío FUERA
desk-knob-off-by = mando de arranque en frío FUERA, { $clicks } { $clicks ->
    [1] clic contado
   *[other] clics contados
 }
desk-engine-running = EN MARCHA
desk-engine-hot = apagado, ha funcionado
desk-engine-cold = apagado, aún sin arrancar
desk-no-set-up-open = No hay ningún ajuste abierto.
desk-who = Propietario: { $name } en { $platform }
desk-where = { $machine }, { $at }, desde { $since }. Código { $code }.
desk-at = en "{ $stage }"
desk-at-part = en "{ $stage }", parte { $part } de { $parts }
desk-about = { $machine }, código { $code }
desk-answer = { $question }: { $answer }
desk-own-words = Escribió: { $text }
desk-head-readings = Lecturas:
desk-head-tried = Probado:
desk-head-causes = Probable:
desk-reading = { $measure }: { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure }: { $shown }, { $result } ({ $limits }; { $source })
desk-reading-plain = { $measure }: { $shown }
desk-first = { $measure }, primera
desk-as-found = { $measure }, como estaba
desk-asked-for = { $measure }, a petición
desk-struck = { $measure }: "{ $typed }", anulada: { $why }
desk-why-asleep = dormida
desk-why-implausible = no cuadra
desk-why-unclear = demasiado basta
desk-why-asked = inestable
desk-why-doubted = pedida otra vez
desk-figure = { $value } { $unit }
desk-figures = de { $low } a { $high } { $unit }
desk-overload = fuera de escala
desk-nothing = no marca nada
desk-limits = { $low } a { $high }
desk-limits-high = { $high } o menos
desk-limits-low = { $low } o más
desk-result-pass = correcto
desk-result-low = demasiado bajo
desk-result-high = demasiado alto
desk-result-unclear = demasiado basto
desk-result-implausible = no cuadra
desk-result-accepted = aceptado por { $name }
desk-source-manual = manual
desk-source-workshop = taller
desk-source-common-practice = práctica común
desk-source-owner = valor del propietario
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction } { $amount } { $unit }: de { $before } a { $after }
desk-unit-turn = { $amount ->
    [1] vuelta
   *[other] vueltas
 }
desk-unit-click = { $amount ->
    [1] clic
   *[other] clics
 }
desk-unit-nudge = { $amount ->
    [1] toque
   *[other] toques
 }
desk-unit-mm = mm
desk-direction-in = adentro
desk-direction-out = afuera
desk-direction-clockwise = en sentido horario
desk-direction-counter-clockwise = en sentido antihorario
desk-direction-more = más juego
desk-direction-less = menos juego
desk-checked = { $check }
desk-cause = { $cause }: { $share } %
desk-cautions = Avisos confirmados: { $cautions }
desk-reason = Motivo de la llamada: { $reason }
desk-job = Orden { $job }
desk-history-remark = { $name } anotó: { $note }
desk-history-accepted = { $name } aceptó: { $note }
desk-history-cleared = { $name } la dio por resuelta: { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure }: { $value }. { $why }

desk-take = Tomarlo
desk-take-over = Relevar a { $name }
desk-give-back = Devolver
desk-ask = Pedir una lectura
desk-check = Enviar una comprobación
desk-close = Cerrarlo
desk-help = Ayuda

## Dentro de un caso

desk-owner-said = Propietario { $name }: { $text }
desk-owner-changed = Propietario { $name } cambió un mensaje a: { $text }
desk-owner-picture = Propietario { $name } envió una foto.
desk-owner-picture-with = Propietario { $name } envió una foto: { $text }
desk-owner-pressed = Propietario { $name } pulsó: { $choice }
desk-read-along = { $measure }: { $shown } sería: { $result } ({ $limits }).
desk-taken = Lo lleva { $name }. Lo que escribas aquí va al propietario. "/ayuda" muestra lo demás.
desk-taken-from = { $name } releva a { $from }. Lo que escribas aquí va al propietario.
desk-yours = Ya lo llevas tú.
desk-held-by = Lo lleva { $name }.
desk-take-first = No lo lleva nadie. Tómalo primero.
desk-not-sent = Aún no lo lleva nadie: no ha ido nada al propietario. Tómalo primero.
desk-too-old = Hace demasiado tiempo de eso. El propietario puede volver a llamar.
desk-passed = { $name } cede el caso { $id }. ¿Quién lo toma?
desk-passed-to = { $name } cede el caso { $id } a { $to }.
desk-returned = { $name } lo ha devuelto. Sigue el programa.
desk-closed = { $name } lo ha cerrado.
desk-closed-cause = { $name } lo ha cerrado. Causa: { $cause }
desk-closed-already = Ya está cerrado.
desk-which-cause = ¿Qué causa era?
desk-asked = Pedido: { $measure }
desk-ask-which = ¿Qué lectura? Pulsa una, o escribe "/pedir tope cerrado".
desk-ask-unknown = No conozco esa lectura. Puedo pedir estas:
desk-ask-running = Esa se lee en su propio paso: "/saltar" hasta él y luego devuelve el caso.
desk-asked-answer = { $check } Respuesta: { $answer }
desk-check-which = ¿Qué comprobación? Pulsa una.
desk-check-unknown = No conozco esa comprobación. Puedo enviar estas:
desk-check-sent = Enviado: { $check }
desk-accept-reason = Da un motivo: "/aceptar lo permite el manual".
desk-accept-loose = El sensor está suelto y se moverá. Haz que lo aprieten y lo lean otra vez primero.
desk-accept-none = No hay ninguna cifra que aceptar.
desk-accepted = { $measure }: { $shown } aceptado por { $name }. La ficha lo dirá.
desk-stages = ¿Adónde saltar? "/saltar" y uno de: { $stages }.
desk-goes-on-at = Al devolverlo, sigue en "{ $stage }".
desk-goes-on-at-after = Al devolverlo, sigue en "{ $stage }"; antes va la lista de arranque, desde "{ $first }".
desk-no-set-up = No hay ningún ajuste abierto.
desk-flag-up = Hay alerta roja. { $flag } Asegúrate de que se acabó y escribe "/resuelto" y cómo lo sabes.
desk-no-flag = No hay alerta roja.
desk-withdrawn = Este procedimiento está retirado, y ningún otro tiene este paso: el programa no puede seguir. Cierra el caso.
desk-clear-reason = Escribe cómo te aseguraste: "/resuelto fuga reparada, seco".
desk-cleared = { $name } la ha dado por resuelta.
desk-noted = Anotado. Se queda en el puesto.
desk-note-empty = Escríbelo detrás: "/nota parece una mariposa doblada".
desk-job-noted = Orden { $job }.
desk-job-none = Ya no hay número de orden.
desk-edited = Un mensaje cambiado no se envía otra vez. Escribe uno nuevo.
desk-start = Los enlaces de inicio son para propietarios.
desk-choice-unknown = Ese botón no hace nada aquí.
desk-command-unknown = Ese no lo conozco. No ha ido nada al propietario. "/ayuda" muestra lo que hay.
desk-case-past = Este caso terminó. El actual del propietario es { $id }.
desk-case-unknown = No conozco ese caso.
desk-case-unknown-id = No conozco el caso { $id }.
desk-unreachable = Eso no llegó al propietario: { $why }
desk-unanswered = El propietario lleva { $minutes } minutos esperando a { $name }.

desk-help-talk = Las palabras y fotos van al propietario, con tu nombre. Lo que empieza por "/" o "." nunca va.
desk-help-take = /tomar: lo llevas tú. /pasar NOMBRE: a otra persona.
desk-help-measure = /pedir LECTURA: el programa pide y juzga. /comprobar NOMBRE: envía una comprobación.
desk-help-decide = /aceptar MOTIVO: vale la última cifra. /saltar PASO: dónde sigue. /resuelto CÓMO: una alerta roja se acabó.
desk-help-end = /devolver: sigue el programa. /cerrar CAUSA: termina, con ficha.
desk-help-note = /nota TEXTO se queda aquí. /trabajo NÚMERO. /tarjeta, /ficha, /ficha json.
desk-help-desk = En el puesto en general: casos, buscar PALABRAS, ficha CÓDIGO, cerrado hoy, abierto otra vez, tips.
desk-help-case = En el hilo de un caso: tómalo y luego "/ayuda".

## El puesto en general

desk-reminder = El caso { $id } lleva { $minutes } minutos en espera. { $reason }
desk-hint = Los casos llegan aquí. "ayuda" muestra lo que puedo hacer.
desk-in-thread = Hazlo en el hilo del propio caso. "casos" los muestra.
desk-list-none = No hay casos en espera ni en curso.
desk-list-waiting = En espera: { $count }
desk-list-taken = En curso: { $count }
desk-list-case = { $id }: { $name }, { $machine }, código { $code }, desde { $since }, { $state }. { $reason }
desk-list-state-waiting = en espera
desk-list-state-taken = en curso
desk-list-state-returned = devuelto
desk-list-state-closed = cerrado
desk-found-none = No he encontrado nada para { $text }.
desk-found-record = Ficha { $code }: { $machine }, { $result }, { $when }
desk-result-record-set = ajustado
desk-result-record-right-as-found = ya estaba bien
desk-result-record-accepted = aceptado
desk-result-record-not-set = sin ajustar
desk-closed-today = Cerrado por hoy.
desk-closed-today-until = Cerrado por hoy. A los propietarios se les dice: { $when }. "abierto otra vez" lo anula.
desk-open-again = De nuevo según el horario.
desk-summary = Termina el día. En espera: { $waiting }, en curso: { $taken }, terminados hoy: { $ended }, fichas: { $done }.
desk-record-head = Caso { $id }: { $name }, abierto { $opened }
desk-record-reading = { $reading }: { $value } ({ $result })
desk-record-asked = { $measure }: "{ $typed }", a petición
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = : { $note }
desk-record-cause = Causa: { $cause }
desk-did-opened = abierto
desk-did-flagged = alerta roja
desk-did-cleared = { $name } dio por resuelta una alerta
desk-did-taken = { $name } lo tomó
desk-did-passed = { $name } lo cedió
desk-did-returned = { $name } lo devolvió
desk-did-closed = { $name } lo cerró
desk-did-reopened = { $name } llamó otra vez
desk-did-accepted = { $name } aceptó
desk-did-asked = { $name } pidió
desk-did-checked = { $name } envió una comprobación
desk-did-jumped = { $name } eligió el paso
desk-did-remark = { $name } anotó
desk-json = { $json }

## Por qué se llama a una persona

reason-asked = El propietario pidió una persona.
reason-procedure-withdrawn = El procedimiento se retiró, y ningún otro tiene este paso.
reason-meter-too-coarse = El medidor del propietario no muestra dígitos suficientes para decidir.
reason-factory-stop-turned = El tope de fábrica de la mariposa se ha girado: la posición cerrada no es de fiar.
reason-factory-stop-turned-owner = Entonces la posición cerrada no es de fiar. De eso se ocupa una persona del taller.
reason-factory-stop-unsure = El propietario no sabe si se giró el tope de fábrica.
reason-factory-stop-unsure-owner = Una persona te ayudará a saberlo.
reason-cable-tight-at-lock = El régimen de ralentí cambia al girar el manillar: un cable o el mazo tira.
reason-cable-tight-at-lock-owner = Algo tira del acelerador. Así no se puede salir con ella.
reason-not-the-sensor = El régimen de ralentí solo se alcanza con la señal fuera de su margen en caliente: no es el sensor. Conducto sucio, válvulas, bujía, gasolina o entrada de aire.
reason-not-the-sensor-owner = No es cosa del sensor. Lo dejamos como está y buscamos la causa.
reason-flag-throttle-sticks = ALERTA ROJA: el acelerador se atasca.
reason-flag-revs-hang = ALERTA ROJA: las revoluciones no bajan o suben solas.
reason-flag-engine-wont-stop = ALERTA ROJA: el motor no se para.
reason-flag-fuel-leak = ALERTA ROJA: olor o fuga de gasolina.
reason-flag-smoke = ALERTA ROJA: humo, quemado o vapor.
reason-flag-hot-leads = ALERTA ROJA: puntas, puente o batería calientes o con chispas.
reason-flag-pump-runs-on = ALERTA ROJA: la bomba no para.
reason-flag-unwell = ALERTA ROJA: alguien se siente mal, quizá por el gas de escape.
reason-flag-injured = ALERTA ROJA: hay alguien herido.
reason-call-unknown-cause = Ninguna causa conocida explica las lecturas.
reason-call-not-for-an-owner = La causa más probable no es para que la repare un propietario.
reason-call-nothing-left = Está hecho todo lo que un propietario puede comprobar y las lecturas siguen sin cuadrar.
reason-call-look-alike = Varias causas se ven igual en el medidor. Las tiene que distinguir una persona.
reason-stuck-slots-at-end = El sensor está al final de sus ranuras y la lectura aún no es correcta.
reason-stuck-moves-stop-helping = Girar ya no acerca la lectura.
reason-stuck-too-coarse = Los pasos de esta pieza son demasiado grandes para su margen.
desk-picture-readings = Todas las lecturas frente a sus márgenes.
desk-picture-causes = Las causas probables.
desk-picture-approach = Las correcciones de este paso y lo que hizo cada una.

## Los números del taller

report-counts = Ajustes terminados: { $ended }. Casos cerrados: { $closed }.
report-stops = { $procedure }: dónde paran los propietarios
report-times = { $procedure }: tiempo por paso
report-causes = Causas halladas, por mes
report-head-stage = paso
report-head-reached = llegaron
report-head-stopped = pararon ahí
report-head-quarter = un cuarto tardó como mucho
report-head-half = la mitad
report-head-three-quarters = tres cuartos (min)
report-head-cause = causa
report-picture = Imagen: { $file }
report-nothing = nada aún
