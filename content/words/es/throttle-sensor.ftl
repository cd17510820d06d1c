# Las palabras del procedimiento del sensor del acelerador: throttle-sensor-<stage> dice qué hacer; las respuestas son throttle-sensor-<question>-<answer>.
# A cada una se le da: $machine $wake $connector $supply $signal $ground $minutes $seconds y, para las piezas, $part $where $tool.

throttle-sensor-complaint = ¿Qué no va bien en la moto?
throttle-sensor-complaint-none = Nada, solo compruebo
throttle-sensor-complaint-runs-badly = Va mal
throttle-sensor-complaint-bad-idle = Mal ralentí
throttle-sensor-complaint-flat-acceleration = Floja al abrir gas
throttle-sensor-complaint-hard-starting = Le cuesta arrancar

throttle-sensor-place = Motor frío, en su caballete, en punto muerto.
    Al aire libre, donde luego puedas arrancarla sin moverla.
    Ten claro dónde están la llave y el interruptor de paro.
    En el banco: medidor, dos agujas finas, destornilladores.

throttle-sensor-throttle-kind = ¿Qué va del puño al cuerpo de mariposa?
throttle-sensor-throttle-kind-cable = Un cable de acero
throttle-sensor-throttle-kind-by-wire = Solo cables eléctricos
throttle-sensor-throttle-kind-dont-know = No lo sé

throttle-sensor-sensor-fixing = ¿Cómo está sujeto el sensor?
throttle-sensor-sensor-fixing-slotted = Tornillos en ranuras largas
throttle-sensor-sensor-fixing-riveted = Remaches, precinto o sin ranuras
throttle-sensor-sensor-fixing-dont-know = No lo sé

throttle-sensor-changed = ¿Qué fue lo último que se le cambió?
throttle-sensor-changed-nothing = Nada
throttle-sensor-changed-throttle-body = Cuerpo de mariposa o cable del acelerador
throttle-sensor-changed-sensor = El sensor
throttle-sensor-changed-exhaust-or-filter = Escape o filtro
throttle-sensor-changed-dont-know = No lo sé

throttle-sensor-map = ¿Qué mapa de inyección lleva?
throttle-sensor-map-standard = El de serie
throttle-sensor-map-other = Otro
throttle-sensor-map-dont-know = No lo sé

throttle-sensor-map-figure = ¿Qué valor con acelerador cerrado da quien hizo el mapa? Envíalo en voltios.

throttle-sensor-signal-box = ¿Hay un módulo de potencia empalmado en los cables del sensor?
throttle-sensor-signal-box-none = No
throttle-sensor-signal-box-fitted = Sí
throttle-sensor-signal-box-dont-know = No lo sé

throttle-sensor-unplug-box = Desenchufa el módulo y une los cables como dice su fabricante. Carga la señal.

throttle-sensor-codes = ¿Muestra la moto un código de avería guardado?
throttle-sensor-codes-none = No
throttle-sensor-codes-stored = Sí

throttle-sensor-bore = Mira más allá de la mariposa. ¿Está limpio el conducto?
throttle-sensor-bore-clean = Limpio
throttle-sensor-bore-dirty = Cerco oscuro o residuo pegajoso
throttle-sensor-bore-dont-know = No se ve

throttle-sensor-valves = ¿Se revisó el juego de válvulas cuando tocaba?
throttle-sensor-valves-in-time = Sí
throttle-sensor-valves-overdue = Va con retraso
throttle-sensor-valves-dont-know = No lo sé

throttle-sensor-altitude = ¿Por dónde circula?
throttle-sensor-altitude-below = Por zonas bajas
throttle-sensor-altitude-above = Por alta montaña

throttle-sensor-tachometer = ¿Cómo vas a leer el régimen de ralentí?
throttle-sensor-tachometer-have = Tengo cuentarrevoluciones
throttle-sensor-tachometer-none = No tengo

throttle-sensor-manual-closed = ¿Qué da tu manual con el acelerador cerrado y el tope de ralentí retirado? Envía los voltios del manual, no del medidor.
throttle-sensor-manual-idle = ¿Qué da tu manual al ralentí, con el motor apagado? Envía los voltios del manual.
throttle-sensor-manual-fast-idle = ¿Qué da tu manual con el mando de arranque en frío metido? Envía los voltios del manual.
throttle-sensor-manual-speed = ¿Qué régimen de ralentí da tu manual, en caliente?

throttle-sensor-battery = Todo apagado.
throttle-sensor-bench-supply = No lleva batería. Conecta la fuente de banco, con su fusible.

throttle-sensor-knob-out = Debe quedarse fuera por sí solo.
throttle-sensor-free-play = Debes notar algo de juego en el puño antes de que se mueva nada.
throttle-sensor-bars-free = En ningún extremo debe tirar del acelerador.

throttle-sensor-supply-leads = Para eso, desenchufa el conector { $connector }, mete las agujas junto a las juntas de los cables y enchúfalo otra vez. Después enciende el medidor.
throttle-sensor-supply = Escucha la bomba de gasolina cuando se despierte.
throttle-sensor-pump = ¿Zumbó la bomba y paró a los pocos segundos?
throttle-sensor-pump-stops = Paró
throttle-sensor-pump-no-pump = No oí la bomba
throttle-sensor-pump-runs-on = Sigue funcionando
throttle-sensor-signal-leads = La negra ya está ahí: solo se mueve la roja.

throttle-sensor-as-found-idle = Así funcionaba. Suelta el puño.
throttle-sensor-as-found-snap = Deja que cierre de golpe.
throttle-sensor-as-found-open = Mantenlo ahí. Si el medidor marca OL, pasa a la escala siguiente.
throttle-sensor-as-found-sweep = Sigue en esta escala. Abre en cuatro pasos a fondo y vuelve en cuatro. Apunta cada cifra, de cerrado a cerrado.
throttle-sensor-as-found-jumps = ¿Saltó o cayó algo por el camino?
throttle-sensor-leave-alone = Todo está como debe. Deja en paz el sensor y los tornillos.
throttle-sensor-only-checked = Esa era la comprobación. Aquí no se gira nada.

throttle-sensor-factory-stop = La mariposa apoya en su propio tope pequeño, sellado con pintura. No es el tope de ralentí y no se toca nunca. ¿Cómo está la pintura?
throttle-sensor-factory-stop-untouched = Intacta
throttle-sensor-factory-stop-turned = Rota, alguien lo giró
throttle-sensor-factory-stop-dont-know = No se distingue

throttle-sensor-mark = Una línea fina que cruce sensor y cuerpo. Haz también una foto: es tu camino de vuelta.
throttle-sensor-knob-off = Con el mando fuera. Cuenta los clics hasta que quede libre. ¿Cuántos?
throttle-sensor-stop-off = Cuenta las vueltas hasta que ya no apoye. Déjalo en su rosca. ¿Cuántas vueltas?

throttle-sensor-baseline = Acelerador cerrado, manos fuera. La escala con tres decimales.
throttle-sensor-supply-again = Ese era el valor base. Antes de que valga, la alimentación otra vez.
throttle-sensor-baseline-again = Espera { $seconds } segundos antes de despertarla: así toma el nuevo acelerador cerrado.
throttle-sensor-baseline-once-more = Otra vez: tiene que dar lo mismo.
throttle-sensor-idle-stop = El valor base queda. Vamos al ralentí.
throttle-sensor-idle-stop-again = La lectura de ralentí otra vez.
throttle-sensor-snap = Dos veces. Después, manos fuera.
throttle-sensor-fast-idle = Déjalo metido mientras lo ajustas. Motor apagado.
throttle-sensor-release = Debe volver a la lectura de ralentí.
throttle-sensor-fast-idle-again = Otra vez, para estar seguros.
throttle-sensor-release-again = Y otra vez.
throttle-sensor-open = Mantenlo ahí. Si el medidor marca OL, pasa a la escala siguiente.
throttle-sensor-sweep = Sigue en esta escala. Abre en cuatro pasos a fondo y vuelve en cuatro. Apunta cada cifra, de cerrado a cerrado.
throttle-sensor-jumps = ¿Saltó o cayó algo por el camino?

throttle-sensor-sweep-jumps-smooth = Todo suave
throttle-sensor-sweep-jumps-jumped = Saltó o cayó

throttle-sensor-asleep = El medidor también apagado.
throttle-sensor-leads-out = Las dos. Ninguna punta cerca de la cadena o del escape.
throttle-sensor-refitted = ¿Caja del filtro, manguitos y todo lo que quitaste, puesto y apretado?
throttle-sensor-latched = ¿El conector del sensor está metido a fondo y con el pestillo cerrado?
throttle-sensor-snaps-shut = Debe cerrar de golpe con el manillar recto y en los dos topes.
throttle-sensor-outdoors = ¿La moto está al aire libre, con el escape despejado?
throttle-sensor-kill-switch = ¿Has probado el interruptor de paro? ¿Llegas a él y hace clic en los dos sentidos?
throttle-sensor-people-clear = ¿Punto muerto, en su caballete y todos lejos de cadena, rueda y escape?

throttle-sensor-start = Pulgar junto al interruptor de paro.
throttle-sensor-warm-up = Deja que se caliente { $minutes } minutos con el mando de arranque en frío metido.
throttle-sensor-warm-knob = Debe quedar en un ralentí parejo.
throttle-sensor-idle-speed = Deja que se asiente.
throttle-sensor-speed-bars = ¿Cambia el régimen de ralentí mientras lo giras?
throttle-sensor-speed-bars-steady = Sigue igual
throttle-sensor-speed-bars-changes = Cambia
throttle-sensor-idle-speed-again = Manillar recto.
throttle-sensor-fault-lamp = Motor aún en marcha: ¿está encendido o parpadea el testigo de avería?
throttle-sensor-fault-lamp-off = Está apagado
throttle-sensor-fault-lamp-lit = Encendido o parpadea
throttle-sensor-fault-lamp-no-lamp = No lleva
throttle-sensor-engine-off = Después, manos fuera: está caliente.
throttle-sensor-warm-idle = El medidor otra vez en la escala con tres decimales. Ahora la lectura de ralentí, en caliente: más alta que en frío, y está bien así.
throttle-sensor-warm-release = Debe volver a la lectura de ralentí en caliente.
throttle-sensor-warm-snap = Manos fuera, luego lee.
throttle-sensor-put-away = El medidor también apagado.
throttle-sensor-cover = ¿Tapa y asiento puestos?
throttle-sensor-road-ready = Antes de salir: luces, frenos, cables, nada suelto. ¿Todo listo?

# Cómo se llama cada parte del trabajo.
throttle-sensor-section-questions = unas preguntas
throttle-sensor-section-power-and-cable = batería y cable
throttle-sensor-section-wake-and-probe = despertar y conectar
throttle-sensor-section-as-found = cómo está ahora
throttle-sensor-section-baseline = el valor base
throttle-sensor-section-idle = ralentí y arranque en frío
throttle-sensor-section-before-start = antes de arrancar
throttle-sensor-section-warm = en caliente, y listo

# Cómo se llama cada paso, en el puesto y en los números del taller.
throttle-sensor-complaint-name = Qué falla
throttle-sensor-place-name = Sitio y herramientas
throttle-sensor-throttle-kind-name = Cable o hilos
throttle-sensor-sensor-fixing-name = Fijación del sensor
throttle-sensor-changed-name = Último cambio
throttle-sensor-map-name = Mapa de inyección
throttle-sensor-map-figure-name = Cifra del mapa
throttle-sensor-signal-box-name = Módulo de potencia
throttle-sensor-unplug-box-name = Módulo de potencia fuera
throttle-sensor-codes-name = Códigos de avería
throttle-sensor-bore-name = Conducto
throttle-sensor-valves-name = Juego de válvulas
throttle-sensor-altitude-name = Altitud
throttle-sensor-tachometer-name = Cuentarrevoluciones
throttle-sensor-manual-closed-name = Manual: acelerador cerrado
throttle-sensor-manual-idle-name = Manual: ralentí
throttle-sensor-manual-fast-idle-name = Manual: arranque en frío
throttle-sensor-manual-speed-name = Manual: régimen de ralentí
throttle-sensor-battery-name = Batería
throttle-sensor-bench-supply-name = Fuente de banco
throttle-sensor-knob-out-name = Mando fuera
throttle-sensor-free-play-name = Juego del cable
throttle-sensor-bars-free-name = Manillar de tope a tope
throttle-sensor-supply-leads-name = Agujas en la alimentación
throttle-sensor-supply-name = Alimentación
throttle-sensor-pump-name = Bomba de gasolina
throttle-sensor-signal-leads-name = Agujas en la señal
throttle-sensor-as-found-idle-name = Como estaba: ralentí
throttle-sensor-as-found-snap-name = Como estaba: tras el golpe de gas
throttle-sensor-as-found-open-name = Como estaba: a fondo
throttle-sensor-as-found-sweep-name = Como estaba: barrido
throttle-sensor-as-found-jumps-name = Como estaba: saltos
throttle-sensor-factory-stop-name = Tope de fábrica
throttle-sensor-mark-name = Marca en el sensor
throttle-sensor-knob-off-name = Mando aflojado del todo
throttle-sensor-stop-off-name = Tope de ralentí aflojado del todo
throttle-sensor-baseline-name = Valor base
throttle-sensor-supply-again-name = Alimentación, otra vez
throttle-sensor-baseline-again-name = Valor base, otra vez
throttle-sensor-baseline-once-more-name = Valor base, tercera vez
throttle-sensor-idle-stop-name = Tope de ralentí
throttle-sensor-snap-name = Tras el golpe de gas
throttle-sensor-fast-idle-name = Arranque en frío
throttle-sensor-release-name = Mando fuera, lectura
throttle-sensor-fast-idle-again-name = Arranque en frío, otra vez
throttle-sensor-release-again-name = Mando fuera, otra vez
throttle-sensor-idle-stop-again-name = Tope de ralentí, otra vez
throttle-sensor-open-name = A fondo
throttle-sensor-sweep-name = Barrido
throttle-sensor-jumps-name = Saltos en el recorrido
throttle-sensor-asleep-name = Dormida, medidor apagado
throttle-sensor-leads-out-name = Agujas fuera
throttle-sensor-refitted-name = Todo montado
throttle-sensor-latched-name = Conector cerrado
throttle-sensor-snaps-shut-name = Cierra de golpe
throttle-sensor-outdoors-name = Al aire libre
throttle-sensor-kill-switch-name = Interruptor de paro
throttle-sensor-people-clear-name = Todos lejos
throttle-sensor-start-name = Arranque
throttle-sensor-warm-up-name = Calentar
throttle-sensor-warm-knob-name = Mando fuera, en caliente
throttle-sensor-idle-speed-name = Régimen de ralentí
throttle-sensor-speed-bars-name = Ralentí al girar el manillar
throttle-sensor-idle-speed-again-name = Régimen de ralentí, otra vez
throttle-sensor-fault-lamp-name = Testigo de avería
throttle-sensor-engine-off-name = Motor apagado
throttle-sensor-warm-idle-name = Ralentí, en caliente
throttle-sensor-warm-release-name = Mando fuera, lectura en caliente
throttle-sensor-warm-snap-name = Tras el golpe de gas, en caliente
throttle-sensor-put-away-name = Agujas fuera, medidor apagado
throttle-sensor-cover-name = Tapa y asiento
throttle-sensor-road-ready-name = Lista para rodar
