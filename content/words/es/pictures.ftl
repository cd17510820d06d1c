# Palabras dentro de las imágenes, y sus textos alternativos.

picture-pass = correcto
picture-adjust = ajustar
picture-too-low = demasiado bajo
picture-too-high = demasiado alto
picture-unclear = aún no se sabe
picture-implausible = no cuadra
picture-no-figure = el medidor no da cifra
picture-overload = OL
picture-off-scale = fuera de esta escala
picture-no-readings = aún sin lecturas
picture-no-limits = sin límites
picture-right-band = correcto: { $limits }
picture-aim = meta { $value } { $unit }
picture-meter = medidor ±{ $value } { $unit }
picture-between = { $low } a { $high } { $unit }
picture-at-least = { $low } { $unit } o más
picture-at-most = { $high } { $unit } o menos
picture-amount-turn = { $count ->
    [one] { $amount } vuelta
   *[other] { $amount } vueltas
}
picture-amount-click = { $count ->
    [one] { $amount } clic
   *[other] { $amount } clics
}
picture-amount-nudge = { $count ->
    [one] { $amount } toque
   *[other] { $amount } toques
}
picture-amount-mm = { $amount } mm
picture-way-in = adentro
picture-way-out = afuera
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = más
picture-way-less = menos

gauge-alternative = { $label }: { $value }, { $result }. Límites: { $limits }.

approach-earlier = { $count } antes
approach-alternative = { $count ->
    [one] { $label }: una lectura, { $value }.
   *[other] { $label }: { $count } lecturas en orden, la última { $value }.
}
approach-alternative-none = { $label }: aún sin lecturas.

strip-hidden = faltan { $count } anteriores
strip-alternative = { $title }: { $passed } de { $count } pasos correctos.

sweep-closed = cerrado
sweep-open = a fondo
sweep-up = al abrir
sweep-down = al cerrar
sweep-drop-out = corte al { $where }
sweep-dead-spot = punto muerto al { $where }
sweep-reversal = retrocede al { $where }
sweep-no-return = no regresa
sweep-not-wide-open = no abre a fondo
sweep-nothing = nada que señalar
sweep-alternative = { $label }: { $count } lecturas de cerrado a fondo y vuelta; { $found }.

connector-title = Conector del sensor
connector-wire-unknown = color del cable desconocido
connector-red = Punta ROJA
connector-black = Punta NEGRA
connector-pin = pin { $pin }
connector-signal = señal
connector-supply = alimentación
connector-ground = masa
connector-elsewhere = no va en este conector
connector-wire = cable { $base }
connector-wire-striped = cable { $base }, raya en { $stripe }
connector-seen = Visto por el lado de los cables: entra junto a ellos
connector-seen-latch-up = Visto por el lado de los cables, pestillo arriba
connector-seen-latch-down = Visto por el lado de los cables, pestillo abajo
connector-colour-black = negro
connector-colour-white = blanco
connector-colour-grey = gris
connector-colour-brown = marrón
connector-colour-red = rojo
connector-colour-orange = naranja
connector-colour-yellow = amarillo
connector-colour-green = verde
connector-colour-light-green = verde claro
connector-colour-blue = azul
connector-colour-light-blue = azul claro
connector-colour-violet = violeta
connector-colour-pink = rosa
connector-alternative = { $title }, visto por el lado de los cables. Punta roja: { $red }. Punta negra: { $black }.

part-name-sensor-body = Cuerpo del sensor
part-name-upper-screw = Sensor, tornillo de arriba
part-name-lower-screw = Sensor, tornillo de abajo
part-name-idle-stop = Tornillo de tope de ralentí
part-name-fast-idle = Mando de arranque en frío
part-name-cable = Cable del acelerador
part-name-chain-adjuster = Tensor de cadena
part-name-preload-collar = Collar de precarga
part-amount = { $amount } { $way }
part-way-in = adentro
part-way-out = afuera
part-way-clockwise = en sentido horario
part-way-counter-clockwise = en sentido antihorario
part-way-more = más juego
part-way-less = menos juego
part-until = hasta que el medidor marque { $low } a { $high } { $unit }
part-raises = sube la lectura
part-lowers = baja la lectura
part-seen-facing = visto de frente
part-seen-below = está boca abajo: míralo desde abajo
part-factory-stop = Tope de fábrica pintado: no se toca nunca
part-alternative = { $title }: { $move }.
part-alternative-where = { $title }. Dónde está: { $where }.

causes-none = Ninguna causa encaja con las lecturas
causes-more = … { $count } más
causes-rest = { $count ->
    [one] una más, { $share }
   *[other] { $count } más, { $share } en total
}
causes-alternative = { $count ->
    [one] Una causa: { $name }, { $share }.
   *[other] { $count } causas, la más probable { $name } con { $share }.
}

record-set = ajustado
record-right-as-found = ya estaba bien
record-accepted = aceptado
record-not-set = sin ajustar
record-accepted-by = aceptado por { $name }
record-hidden = { $count } valores más
record-no-values = sin valores
record-alternative = { $count ->
    [one] Ficha. { $title }, { $machine }, { $date }: { $result }, un valor, código { $code }.
   *[other] Ficha. { $title }, { $machine }, { $date }: { $result }, { $count } valores, código { $code }.
}

workshop-nothing = aún nada
workshop-of = { $stopped } de { $reached }
workshop-stops-note = extremo oscuro: se quedaron aquí
workshop-times-note = punto: la persona del medio
workshop-minutes = { $minutes } min
workshop-hidden = { $count } más
workshop-alternative = { $count ->
    [one] { $title }: una fila.
   *[other] { $title }: { $count } filas.
}
