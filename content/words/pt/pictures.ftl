# Palavras dentro das imagens, e os seus textos alternativos.

picture-pass = certo
picture-adjust = ajustar
picture-too-low = baixo demais
picture-too-high = alto demais
picture-unclear = ainda não se sabe
picture-implausible = não bate
picture-no-figure = o medidor não dá valor
picture-overload = OL
picture-off-scale = fora desta escala
picture-no-readings = ainda sem leituras
picture-no-limits = sem limites
picture-right-band = certo: { $limits }
picture-aim = alvo { $value } { $unit }
picture-meter = medidor ±{ $value } { $unit }
picture-between = { $low } a { $high } { $unit }
picture-at-least = { $low } { $unit } ou mais
picture-at-most = { $high } { $unit } ou menos
picture-amount-turn = { $count ->
    [one] { $amount } volta
   *[other] { $amount } voltas
}
picture-amount-click = { $count ->
    [one] { $amount } clique
   *[other] { $amount } cliques
}
picture-amount-nudge = { $count ->
    [one] { $amount } toque
   *[other] { $amount } toques
}
picture-amount-mm = { $amount } mm
picture-way-in = dentro
picture-way-out = fora
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = mais
picture-way-less = menos

gauge-alternative = { $label }: { $value }, { $result }. Limites: { $limits }.

approach-earlier = { $count } antes
approach-alternative = { $count ->
    [one] { $label }: uma leitura, { $value }.
   *[other] { $label }: { $count } leituras em ordem, a última { $value }.
}
approach-alternative-none = { $label }: ainda sem leituras.

strip-hidden = faltam { $count } anteriores
strip-alternative = { $title }: { $passed } de { $count } passos certos.

sweep-closed = fechado
sweep-open = todo aberto
sweep-up = ao abrir
sweep-down = ao fechar
sweep-drop-out = falha a { $where }
sweep-dead-spot = ponto morto a { $where }
sweep-reversal = recua a { $where }
sweep-no-return = não volta
sweep-not-wide-open = não abre todo
sweep-nothing = nada a apontar
sweep-alternative = { $label }: { $count } leituras de fechado a todo aberto e de volta; { $found }.

connector-title = Conector do sensor
connector-wire-unknown = cor do fio desconhecida
connector-red = Ponta VERMELHA
connector-black = Ponta PRETA
connector-pin = pino { $pin }
connector-signal = sinal
connector-supply = alimentação
connector-ground = massa
connector-elsewhere = não vai neste conector
connector-wire = fio { $base }
connector-wire-striped = fio { $base }, traço { $stripe }
connector-seen = Visto do lado dos fios: entra ao longo deles
connector-seen-latch-up = Visto do lado dos fios, trinco em cima
connector-seen-latch-down = Visto do lado dos fios, trinco embaixo
connector-colour-black = preto
connector-colour-white = branco
connector-colour-grey = cinza
connector-colour-brown = marrom
connector-colour-red = vermelho
connector-colour-orange = laranja
connector-colour-yellow = amarelo
connector-colour-green = verde
connector-colour-light-green = verde-claro
connector-colour-blue = azul
connector-colour-light-blue = azul-claro
connector-colour-violet = violeta
connector-colour-pink = rosa
connector-alternative = { $title }, visto do lado dos fios. Ponta vermelha: { $red }. Ponta preta: { $black }.

part-name-sensor-body = Corpo do sensor
part-name-upper-screw = Sensor, parafuso de cima
part-name-lower-screw = Sensor, parafuso de baixo
part-name-idle-stop = Parafuso de batente da marcha lenta
part-name-fast-idle = Botão de partida a frio
part-name-cable = Cabo do acelerador
part-name-chain-adjuster = Esticador da corrente
part-name-preload-collar = Anel de pré-carga
part-amount = { $amount } { $way }
part-way-in = para dentro
part-way-out = para fora
part-way-clockwise = sentido horário
part-way-counter-clockwise = sentido anti-horário
part-way-more = mais folga
part-way-less = menos folga
part-until = até o medidor mostrar { $low } a { $high } { $unit }
part-raises = sobe a leitura
part-lowers = baixa a leitura
part-seen-facing = visto de frente
part-seen-below = virado para baixo: olhe por baixo
part-factory-stop = Batente de fábrica pintado: nunca mexa nele
part-alternative = { $title }: { $move }.
part-alternative-where = { $title }. Onde está: { $where }.

causes-none = Nenhuma causa condiz com as leituras
causes-more = … mais { $count }
causes-rest = { $count ->
    [one] mais uma, { $share }
   *[other] mais { $count }, { $share } no total
}
causes-alternative = { $count ->
    [one] Uma causa: { $name }, { $share }.
   *[other] { $count } causas, a mais provável { $name } com { $share }.
}

record-set = regulado
record-right-as-found = já estava certo
record-accepted = aceito
record-not-set = não regulado
record-accepted-by = aceito por { $name }
record-hidden = mais { $count } valores
record-no-values = sem valores
record-alternative = { $count ->
    [one] Ficha. { $title }, { $machine }, { $date }: { $result }, um valor, código { $code }.
   *[other] Ficha. { $title }, { $machine }, { $date }: { $result }, { $count } valores, código { $code }.
}

workshop-nothing = ainda nada
workshop-of = { $stopped } de { $reached }
workshop-stops-note = ponta escura: ficaram aqui
workshop-times-note = ponto: a pessoa do meio
workshop-minutes = { $minutes } min
workshop-hidden = mais { $count }
workshop-alternative = { $count ->
    [one] { $title }: uma linha.
   *[other] { $title }: { $count } linhas.
}
