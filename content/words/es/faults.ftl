# Las palabras de las averías de content/faults y de las comprobaciones que las encuentran, para propietarios y para el puesto.
# fault-<id>: su nombre; fault-<id>-why: por qué lo pensamos, dicho antes de comprobar; fault-<id>-remedy: qué la arregla.
# check-<id>: qué hacer o responder; answer-<question>-<answer>: sus botones; call-<reason>: por qué se llama a una persona, para el puesto.

fault-nothing-wrong = nada averiado
fault-nothing-wrong-why = Las cifras encajan con una moto en orden.
fault-nothing-wrong-remedy = No hay nada que arreglar. Sigue.

fault-sensor-mis-set = sensor desajustado
fault-sensor-mis-set-why = Las cifras encajan con un sensor que solo está desajustado.
fault-sensor-mis-set-remedy = Ajusta el sensor paso a paso.

fault-mistyped = cifra mal escrita o mal leída
fault-mistyped-why = Esa cifra no encaja con las anteriores. Puede haber bailado un dígito.
fault-mistyped-remedy = Lee otra vez el medidor y envía todos los dígitos.

fault-unknown = una causa que no conocemos
fault-unknown-why = Ninguna causa que conozcamos da estas cifras.
fault-unknown-remedy = Tiene que mirarlo una persona.

fault-leads-swapped = puntas del medidor cambiadas
fault-leads-swapped-why = Eso marca el medidor cuando la roja y la negra están cambiadas.
fault-leads-swapped-remedy = Roja en el cable de señal, negra en el cable de masa.

fault-red-on-supply = punta roja en el cable de alimentación
fault-red-on-supply-why = Eso marca el medidor cuando la punta roja está en el cable de alimentación.
fault-red-on-supply-remedy = Pasa la roja al cable de señal.

fault-black-on-supply = punta negra en el cable de alimentación
fault-black-on-supply-why = Eso marca el medidor cuando la punta negra está en el cable de alimentación.
fault-black-on-supply-remedy = Pasa la negra al cable de masa.

fault-red-on-supply-black-on-signal = roja en alimentación, negra en señal
fault-red-on-supply-black-on-signal-why = Eso marca el medidor con la roja en el cable de alimentación y la negra en el de señal.
fault-red-on-supply-black-on-signal-remedy = Roja en el cable de señal, negra en el cable de masa.

fault-red-on-ground-black-on-supply = roja en masa, negra en alimentación
fault-red-on-ground-black-on-supply-why = Eso marca el medidor con la roja en el cable de masa y la negra en el de alimentación.
fault-red-on-ground-black-on-supply-remedy = Roja en el cable de alimentación, negra en el cable de masa.

fault-leads-on-one-pin = las dos puntas en un mismo cable
fault-leads-on-one-pin-why = El medidor marca eso cuando las dos puntas están en un mismo cable.
fault-leads-on-one-pin-remedy = Roja en el cable de señal, negra en el cable de masa.

fault-probe-not-touching = una aguja que no toca
fault-probe-not-touching-why = El medidor marca eso cuando una aguja no toca metal.
fault-probe-not-touching-remedy = Mete las dos agujas junto a la junta del cable hasta que toquen.

fault-pin-slips = una aguja que se suelta
fault-pin-slips-why = La cifra va y viene, como con una aguja que se suelta.
fault-pin-slips-remedy = Asienta las dos agujas y sujeta las puntas para que nada tire.

fault-battery-wire-probed = punta roja en un cable de batería
fault-battery-wire-probed-why = Esa es tensión de batería. A este sensor nunca le llega tanto.
fault-battery-wire-probed-remedy = Pasa la roja al cable de señal.

fault-meter-on-ac = medidor en voltios de alterna
fault-meter-on-ac-why = Un medidor puesto en alterna marca cifras así.
fault-meter-on-ac-remedy = Gira el selector a voltios de continua.

fault-meter-range = medidor en la escala equivocada
fault-meter-range-why = La escala es demasiado pequeña o demasiado basta para esta cifra.
fault-meter-range-remedy = Elige la escala que muestra la cifra con más decimales.

fault-meter-on-ohms = medidor en ohmios
fault-meter-on-ohms-why = Un medidor puesto en ohmios marca eso en un cable con tensión.
fault-meter-on-ohms-remedy = Gira el selector a voltios de continua.

fault-meter-battery-weak = pila del medidor gastada
fault-meter-battery-weak-why = Con la pila gastada, el medidor da de más en todo.
fault-meter-battery-weak-remedy = Pon una pila nueva en el medidor.

fault-red-in-current-jack = punta roja en la toma de corriente
fault-red-in-current-jack-why = El medidor marca eso cuando la roja está en la toma de corriente.
fault-red-in-current-jack-remedy = Pasa la roja a la toma de voltios. Mira el fusible del medidor.

fault-meter-hold = HOLD activado en el medidor
fault-meter-hold-why = La cifra no se mueve, como con HOLD activado.
fault-meter-hold-remedy = Quita HOLD.

fault-meter-relative = REL activado en el medidor
fault-meter-relative-why = La cifra se desvía siempre lo mismo, como con REL activado.
fault-meter-relative-remedy = Quita REL.

fault-meter-min-max = MIN/MAX activado en el medidor
fault-meter-min-max-why = El medidor parece quedarse con su cifra más alta.
fault-meter-min-max-remedy = Quita MIN/MAX.

fault-meter-auto-off = medidor apagado solo
fault-meter-auto-off-why = Un medidor en blanco casi siempre se ha apagado solo.
fault-meter-auto-off-remedy = Enciende otra vez el medidor.

fault-unit-asleep = centralita dormida
fault-unit-asleep-why = Eso marca el medidor cuando la centralita está dormida.
fault-unit-asleep-remedy = Despiértala otra vez.

fault-no-power = centralita sin corriente
fault-no-power-why = La centralita parece no despertarse.
fault-no-power-remedy = Mira interruptor de paro, llave, fusible y relé.

fault-supply-low = alimentación del sensor demasiado baja
fault-supply-low-why = Al sensor le llega menos tensión de la debida.
fault-supply-low-remedy = Averigua por qué la centralita da de menos.

fault-supply-high = alimentación del sensor demasiado alta
fault-supply-high-why = Al sensor le llega más tensión de la debida.
fault-supply-high-remedy = Averigua por qué la centralita da de más.

fault-battery-flat = batería demasiado baja
fault-battery-flat-why = La batería puede estar demasiado baja para este trabajo.
fault-battery-flat-remedy = Carga la batería, déjala reposar y empieza de nuevo.

fault-brown-out = la tensión cae con la centralita despierta
fault-brown-out-why = La tensión parece caer mientras la centralita está despierta.
fault-brown-out-remedy = Carga la batería y tenla despierta menos tiempo.

fault-tight-cable = cable del acelerador demasiado tenso
fault-tight-cable-why = Un cable tenso deja el acelerador un poco abierto y da eso.
fault-tight-cable-remedy = Deja juego en el cable del acelerador, con el manillar recto y en los dos topes.

fault-fast-idle-on = mando de arranque en frío metido
fault-fast-idle-on-why = La cifra encaja con un mando de arranque en frío aún metido.
fault-fast-idle-on-remedy = Cierra el puño del todo hasta que salte el mando.

fault-knob-stays-in = el mando de arranque en frío no sale
fault-knob-stays-in-why = El mando parece no saltar hacia fuera.
fault-knob-stays-in-remedy = Libera el mando y su muelle.

fault-stop-not-backed-off = el tope de ralentí aún apoya
fault-stop-not-backed-off-why = La cifra no bajó como hace cuando el tope de ralentí queda libre.
fault-stop-not-backed-off-remedy = Gira afuera el tope de ralentí hasta que no apoye.

fault-idle-stop-never-bore = tope de ralentí demasiado afuera
fault-idle-stop-never-bore-why = La cifra puede no bajar si el tope de ralentí nunca llegó a apoyar.
fault-idle-stop-never-bore-remedy = Ajusta el tope de ralentí paso a paso.

fault-carbon-in-bore = carbonilla en el conducto
fault-carbon-in-bore-why = La carbonilla puede dejar el acelerador abierto igual que un tope.
fault-carbon-in-bore-remedy = Limpia conducto y mariposa y ajusta otra vez.

fault-factory-stop-turned = tope de fábrica girado
fault-factory-stop-turned-why = Puede que se haya girado el tope propio de la mariposa.
fault-factory-stop-turned-remedy = El taller ajusta el tope de fábrica con su propio método.

fault-plate-wedged = mariposa doblada o trabada
fault-plate-wedged-why = La mariposa parece no cerrar.
fault-plate-wedged-remedy = Desmonta el cuerpo de mariposa y mira mariposa y eje.

fault-wide-open-not-reached = el acelerador no abre a fondo
fault-wide-open-not-reached-why = El acelerador parece no llegar a fondo.
fault-wide-open-not-reached-remedy = Quita holgura al cable del acelerador y mira el tope de apertura total.

fault-worn-track-near-idle = pista del sensor gastada cerca del ralentí
fault-worn-track-near-idle-why = Una cifra que salta cerca del ralentí es señal de pista gastada.
fault-worn-track-near-idle-remedy = Cambia el sensor y ajústalo de nuevo.

fault-worn-track-elsewhere = pista del sensor gastada más arriba
fault-worn-track-elsewhere-why = Un salto siempre en la misma apertura es señal de pista gastada.
fault-worn-track-elsewhere-remedy = Cambia el sensor y ajústalo de nuevo.

fault-loose-sensor = tornillos del sensor flojos
fault-loose-sensor-why = La cifra no vuelve, como con un sensor flojo.
fault-loose-sensor-remedy = Aprieta los tornillos del sensor y ajústalo otra vez.

fault-shaft-play = holgura en el eje o en el arrastre del sensor
fault-shaft-play-why = La cifra no vuelve, como con holgura en el eje.
fault-shaft-play-remedy = Mira eje, cojinetes y arrastre del sensor.

fault-slots-at-end = sensor al final de sus ranuras
fault-slots-at-end-why = El sensor no puede girar lo suficiente.
fault-slots-at-end-remedy = Averigua por qué hace falta tanto antes de limar nada.

fault-tang-wrong-side = arrastre del sensor en el lado equivocado
fault-tang-wrong-side-why = La cifra está muy lejos, como con el arrastre en el lado equivocado del eje.
fault-tang-wrong-side-remedy = Desmonta el sensor y asienta su arrastre en el lado correcto.

fault-wrong-part-turned = se giró otra pieza
fault-wrong-part-turned-why = La cifra no siguió. Puede que se girara otra pieza.
fault-wrong-part-turned-remedy = Busca la pieza correcta y devuelve la otra a su sitio.

fault-drifts-when-hot = el sensor se va en caliente
fault-drifts-when-hot-why = La cifra se mueve con el calor.
fault-drifts-when-hot-remedy = Cambia el sensor y ajústalo de nuevo.

fault-sensor-reversed = alimentación y masa cambiadas en el conector
fault-sensor-reversed-why = La señal baja donde debe subir: el conector puede estar mal cableado.
fault-sensor-reversed-remedy = Pon alimentación y masa en sus propios pines.

fault-resistive-ground = mala masa del sensor
fault-resistive-ground-why = El cable de masa del sensor parece perder tensión.
fault-resistive-ground-remedy = Repara el cable de masa o su empalme.

fault-open-ground = masa del sensor cortada
fault-open-ground-why = El cable de masa del sensor puede estar cortado.
fault-open-ground-remedy = Repara el cable de masa.

fault-open-supply = alimentación del sensor cortada
fault-open-supply-why = Parece que al sensor no le llega alimentación.
fault-open-supply-remedy = Repara el cable de alimentación.

fault-resistive-supply = mal cable de alimentación
fault-resistive-supply-why = El cable de alimentación parece perder tensión.
fault-resistive-supply-remedy = Repara el cable de alimentación o su empalme.

fault-open-signal = cable de señal cortado
fault-open-signal-why = El cable de señal puede estar cortado detrás del conector.
fault-open-signal-remedy = Repara el cable de señal.

fault-signal-shorted = cable de señal en cortocircuito
fault-signal-shorted-why = La señal no se mueve, como con un cortocircuito.
fault-signal-shorted-remedy = Busca dónde toca el cable de señal con otro.

fault-corroded-plug = conector con óxido
fault-corroded-plug-why = La cifra salta, como con un conector oxidado.
fault-corroded-plug-remedy = Limpia el conector y asiéntalo, o cambia sus pines.

fault-chafed-loom = mazo de cables rozado
fault-chafed-loom-why = La cifra cae de vez en cuando, como con un mazo rozado.
fault-chafed-loom-remedy = Busca el roce, casi siempre donde el manillar dobla el mazo.

fault-box-on-signal = módulo añadido en el cable de señal
fault-box-on-signal-why = Un módulo en el cable de señal falsea la cifra.
fault-box-on-signal-remedy = Desenchufa el módulo y mide otra vez.

fault-air-leak = entrada de aire
fault-air-leak-why = Los voltios son correctos y el régimen es demasiado alto: puede entrar aire.
fault-air-leak-remedy = Busca la entrada: tobera de admisión, abrazaderas, manguitos.

fault-dirty-bore = conducto sucio
fault-dirty-bore-why = Los voltios son correctos y el régimen es demasiado bajo: el conducto puede estar sucio.
fault-dirty-bore-remedy = Limpia el conducto.

fault-valve-clearance = juego de válvulas
fault-valve-clearance-why = Los voltios son correctos: la causa puede ser el juego de válvulas.
fault-valve-clearance-remedy = Revisa el juego de válvulas.

fault-air-filter = filtro de aire
fault-air-filter-why = Los voltios son correctos: la causa puede ser el filtro de aire.
fault-air-filter-remedy = Limpia o cambia el filtro de aire.

fault-spark-plug = bujía
fault-spark-plug-why = Los voltios son correctos: la causa puede ser la bujía.
fault-spark-plug-remedy = Cambia la bujía.

fault-fuel-supply = paso de gasolina
fault-fuel-supply-why = Los voltios son correctos: la causa puede ser la gasolina.
fault-fuel-supply-remedy = Revisa gasolina, filtro y presión.

fault-decompressor = descompresor
fault-decompressor-why = Los voltios son correctos: la causa puede ser el descompresor.
fault-decompressor-remedy = Revisa el descompresor.

fault-charging = carga
fault-charging-why = Puede que la batería no se cargue.
fault-charging-remedy = Revisa tensión de carga y regulador.

fault-fuel-map = mapa de inyección
fault-fuel-map-why = Los voltios son correctos: el mapa de inyección puede no corresponder.
fault-fuel-map-remedy = Carga el mapa que corresponde al escape y al filtro.

check-read-again = Mira otra vez el medidor. Envía todos los dígitos.
check-wake-again = Despierta otra vez la centralita. Después envía la cifra.
check-look-at-leads = Deja dormir la centralita. Mira en qué cables están las agujas y corrígelo. Despiértala. Después envía la cifra.
check-leads-on-battery = Roja en el positivo de la batería, negra en el negativo; en el medidor, roja en la toma de voltios. Después envía la cifra.
check-look-at-meter = Mira el medidor: voltios de continua, la escala correcta, sin HOLD ni REL, roja en la toma de voltios. Después envía la cifra.
check-look-at-cable = Gira el manillar de tope a tope y mira la cifra. Si se mueve, deja juego en el cable del acelerador. Después envía la cifra, con el manillar recto.
check-look-at-screws = Empuja suavemente el sensor con la mano y mira la cifra. Aprieta lo que esté flojo. Después envía la cifra.
check-back-off-again = Gira afuera el tope de ralentí hasta que no apoye. Después envía la cifra.
check-knob-out-again = Cierra el puño del todo para que salte el mando de arranque en frío. Después envía la cifra.
check-set-it = Parece solo desajustado. Sigue con el ajuste.
check-measure-supply = Deja dormir la centralita. Agujas en alimentación y masa. Despiértala. Envía lo que marca el medidor.
check-measure-ground-drop = Deja dormir la centralita. Roja en el cable de masa del sensor, negra en el borne negativo de la batería. Despiértala. Envía lo que marca el medidor.
check-measure-battery = Deja dormir la centralita. Roja en el borne positivo de la batería, negra en el negativo. Envía lo que marca el medidor.
check-wiggle-plug = Mueve suavemente el conector del sensor y mira la cifra. ¿Salta?
check-watch-it-wake = Deja dormir la centralita y despiértala. ¿Zumba la bomba, o se enciende un testigo o la pantalla?
check-unplug-and-look = Deja dormir la centralita. Suelta el conector del sensor; las agujas se quedan en el lado del cableado, en alimentación y masa. Despiértala. ¿Otra vez cerca de cinco voltios? Después déjala dormir y vuelve a enchufar.
check-look-at-lever = Acelerador cerrado, sin manos. ¿La palanca apoya en el tope pequeño sellado, o algo la sujeta un poco antes?
check-measure-track = Conector fuera, mide la pista en ohmios en todo su recorrido: ¿algún salto?
check-trace-wires = Sigue los cables del sensor con carga: alimentación, masa, señal.
check-clean-bore = Cuerpo de mariposa fuera: limpia conducto y mariposa, mira el asiento.
check-read-again-name = Leer otra vez
check-wake-again-name = Despertar otra vez
check-look-at-leads-name = Agujas
check-look-at-meter-name = Medidor
check-look-at-cable-name = Cable del acelerador
check-look-at-screws-name = Tornillos del sensor
check-back-off-again-name = Tope de ralentí, otra vez
check-knob-out-again-name = Mando fuera, otra vez
check-set-it-name = Seguir ajustando
check-measure-supply-name = Alimentación
check-measure-ground-drop-name = Caída en masa
check-measure-battery-name = Batería
check-wiggle-plug-name = Mover el conector
check-watch-it-wake-name = Ver si despierta
check-unplug-and-look-name = Alimentación sin sensor
check-look-at-lever-name = Palanca en su tope
check-measure-track-name = Pista en ohmios
check-trace-wires-name = Seguir los cables
check-clean-bore-name = Limpiar el conducto

answer-wiggle-steady = No se mueve
answer-wiggle-jumps = Salta
answer-wiggle-dont-know = No se distingue
answer-wake-signs-signs = Sí, despierta
answer-wake-signs-nothing = No pasa nada
answer-wake-signs-dont-know = No se distingue
answer-supply-unplugged-comes-back = Cerca de cinco
answer-supply-unplugged-still-off = Sigue mal
answer-supply-unplugged-dont-know = No se distingue
answer-lever-rest-on-stop = Apoya en el tope
answer-lever-rest-held = Algo la sujeta
answer-lever-rest-dont-know = No se distingue

call-unknown-cause = Ninguna causa conocida explica las lecturas.
call-not-for-an-owner = La causa más probable no es para que la repare un propietario.
call-nothing-left = Está hecho todo lo que un propietario puede comprobar y las lecturas siguen sin cuadrar.
call-look-alike = Varias causas se ven igual en el medidor; las tiene que distinguir una persona.

reason-fault-lamp = Tensiones correctas y testigo de avería encendido con el motor en marcha: la centralita ve otra cosa que el medidor. Leer sus códigos; cable de señal y conector.
reason-fault-lamp-owner = El testigo dice que la centralita ve una avería. Primero hay que leerla.
