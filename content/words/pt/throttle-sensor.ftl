# As palavras do procedimento do sensor do acelerador: throttle-sensor-<stage> diz o que fazer; as respostas são throttle-sensor-<question>-<answer>.
# A cada uma se dá: $machine $wake $connector $supply $signal $ground $minutes $seconds e, para peças, $part $where $tool.

throttle-sensor-complaint = O que não vai bem na moto?
throttle-sensor-complaint-none = Nada, só verificando
throttle-sensor-complaint-runs-badly = Funciona mal
throttle-sensor-complaint-bad-idle = Marcha lenta ruim
throttle-sensor-complaint-flat-acceleration = Fraca ao acelerar
throttle-sensor-complaint-hard-starting = Difícil de dar partida

throttle-sensor-place = Motor frio, no cavalete, em neutro.
    Ao ar livre, onde depois dê para ligar sem mover a moto.
    Saiba onde estão a chave e o corta-corrente.
    Na bancada: medidor, duas agulhas finas, chaves de fenda.

throttle-sensor-throttle-kind = O que vai da manopla ao corpo de borboleta?
throttle-sensor-throttle-kind-cable = Um cabo de aço
throttle-sensor-throttle-kind-by-wire = Só fios
throttle-sensor-throttle-kind-dont-know = Não sei

throttle-sensor-sensor-fixing = Como o sensor está preso?
throttle-sensor-sensor-fixing-slotted = Parafusos em rasgos compridos
throttle-sensor-sensor-fixing-riveted = Rebites, lacre ou sem rasgos
throttle-sensor-sensor-fixing-dont-know = Não sei

throttle-sensor-changed = O que foi trocado nela por último?
throttle-sensor-changed-nothing = Nada
throttle-sensor-changed-throttle-body = Corpo de borboleta ou cabo
throttle-sensor-changed-sensor = O sensor
throttle-sensor-changed-exhaust-or-filter = Escape ou filtro
throttle-sensor-changed-dont-know = Não sei

throttle-sensor-map = Qual mapa de injeção ela usa?
throttle-sensor-map-standard = O original
throttle-sensor-map-other = Outro
throttle-sensor-map-dont-know = Não sei

throttle-sensor-map-figure = Que valor com acelerador fechado dá quem fez o mapa? Envie em volts.

throttle-sensor-signal-box = Há um módulo de potência emendado nos fios do sensor?
throttle-sensor-signal-box-none = Não
throttle-sensor-signal-box-fitted = Sim
throttle-sensor-signal-box-dont-know = Não sei

throttle-sensor-unplug-box = Desconecte o módulo e una os fios como diz o fabricante dele. Ele carrega o sinal.

throttle-sensor-codes = A moto mostra um código de falha gravado?
throttle-sensor-codes-none = Não
throttle-sensor-codes-stored = Sim

throttle-sensor-bore = Olhe além da borboleta. O duto está limpo?
throttle-sensor-bore-clean = Limpo
throttle-sensor-bore-dirty = Anel escuro ou resíduo grudento
throttle-sensor-bore-dont-know = Não dá para ver

throttle-sensor-valves = A folga das válvulas foi verificada no prazo?
throttle-sensor-valves-in-time = Sim
throttle-sensor-valves-overdue = Está atrasada
throttle-sensor-valves-dont-know = Não sei

throttle-sensor-altitude = Onde ela roda?
throttle-sensor-altitude-below = Em regiões baixas
throttle-sensor-altitude-above = No alto da serra

throttle-sensor-tachometer = Como você vai ler a rotação da marcha lenta?
throttle-sensor-tachometer-have = Tenho conta-giros
throttle-sensor-tachometer-none = Não tenho

throttle-sensor-manual-closed = O que o seu manual dá com o acelerador fechado e o batente da marcha lenta recuado? Envie os volts do manual, não do medidor.
throttle-sensor-manual-idle = O que o seu manual dá em marcha lenta, com o motor desligado? Envie os volts do manual.
throttle-sensor-manual-fast-idle = O que o seu manual dá com o botão de partida a frio para dentro? Envie os volts do manual.
throttle-sensor-manual-speed = Que rotação da marcha lenta dá o seu manual, a quente?

throttle-sensor-battery = Tudo desligado.
throttle-sensor-bench-supply = Ela não tem bateria. Conecte a fonte de bancada, com o fusível.

throttle-sensor-knob-out = Ele deve ficar para fora sozinho.
throttle-sensor-free-play = Você deve sentir uma pequena folga na manopla antes que algo se mova.
throttle-sensor-bars-free = Em nenhum dos lados o acelerador pode ser puxado.

throttle-sensor-supply-leads = Para isso, desencaixe o conector { $connector }, enfie as agulhas ao lado das vedações dos fios e encaixe de novo. Depois ligue o medidor.
throttle-sensor-supply = Escute a bomba de gasolina quando acordar.
throttle-sensor-pump = A bomba zumbiu e parou em poucos segundos?
throttle-sensor-pump-stops = Parou
throttle-sensor-pump-no-pump = Não ouvi a bomba
throttle-sensor-pump-runs-on = Continua funcionando
throttle-sensor-signal-leads = A preta já está lá: só a vermelha muda.

throttle-sensor-as-found-idle = Era assim que ela funcionava. Solte a manopla.
throttle-sensor-as-found-snap = Deixe fechar de uma vez.
throttle-sensor-as-found-open = Segure aí. Se o medidor mostrar OL, passe para a escala seguinte.
throttle-sensor-as-found-sweep = Fique nesta escala. Abra em quatro passos até o fim e volte em quatro. Anote cada valor, de fechado a fechado.
throttle-sensor-as-found-jumps = Algo saltou ou caiu no caminho?
throttle-sensor-leave-alone = Está tudo como deve. Não mexa no sensor nem nos parafusos.
throttle-sensor-only-checked = Essa foi a verificação. Aqui não se gira nada.

throttle-sensor-factory-stop = A borboleta apoia em um pequeno batente próprio, lacrado com tinta. Não é o batente da marcha lenta e nunca se mexe nele. Como está a tinta?
throttle-sensor-factory-stop-untouched = Intacta
throttle-sensor-factory-stop-turned = Rompida, alguém girou
throttle-sensor-factory-stop-dont-know = Não dá para saber

throttle-sensor-mark = Um risco fino que cruze sensor e corpo. Tire também uma foto: é o seu caminho de volta.
throttle-sensor-knob-off = Com o botão para fora. Conte os cliques até ficar livre. Quantos?
throttle-sensor-stop-off = Conte as voltas até não apoiar mais. Deixe na rosca. Quantas voltas?

throttle-sensor-baseline = Acelerador fechado, tire as mãos. A escala com três casas decimais.
throttle-sensor-supply-again = Esse foi o valor de base. Antes de valer, a alimentação mais uma vez.
throttle-sensor-baseline-again = Espere { $seconds } segundos antes de acordar a central: assim ela assume o novo acelerador fechado.
throttle-sensor-baseline-once-more = Mais uma vez: tem que voltar o mesmo valor.
throttle-sensor-idle-stop = O valor de base está firme. Vamos à marcha lenta.
throttle-sensor-idle-stop-again = A leitura da marcha lenta mais uma vez.
throttle-sensor-snap = Duas vezes. Depois tire as mãos.
throttle-sensor-fast-idle = Deixe-o para dentro enquanto regula. Motor desligado.
throttle-sensor-release = Deve voltar à leitura da marcha lenta.
throttle-sensor-fast-idle-again = Mais uma vez, para ter certeza.
throttle-sensor-release-again = E mais uma vez.
throttle-sensor-open = Segure aí. Se o medidor mostrar OL, passe para a escala seguinte.
throttle-sensor-sweep = Fique nesta escala. Abra em quatro passos até o fim e volte em quatro. Anote cada valor, de fechado a fechado.
throttle-sensor-jumps = Algo saltou ou caiu no caminho?

throttle-sensor-sweep-jumps-smooth = Tudo suave
throttle-sensor-sweep-jumps-jumped = Saltou ou caiu

throttle-sensor-asleep = O medidor desligado também.
throttle-sensor-leads-out = As duas. Nenhuma ponta perto da corrente ou do escape.
throttle-sensor-refitted = Caixa do filtro, mangueiras e tudo o que você tirou está de volta e apertado?
throttle-sensor-latched = O conector do sensor está encaixado até o fim e travado?
throttle-sensor-snaps-shut = Deve fechar de uma vez com o guidão reto e nos dois batentes.
throttle-sensor-outdoors = A moto está ao ar livre, com o escape desimpedido?
throttle-sensor-kill-switch = Testou o corta-corrente? Você o alcança e ele faz clique nos dois sentidos?
throttle-sensor-people-clear = Neutro, no cavalete e todos longe de corrente, roda e escape?

throttle-sensor-start = Polegar junto ao corta-corrente.
throttle-sensor-warm-up = Deixe aquecer { $minutes } minutos com o botão de partida a frio para dentro.
throttle-sensor-warm-knob = Deve se firmar em uma marcha lenta regular.
throttle-sensor-idle-speed = Deixe estabilizar.
throttle-sensor-speed-bars = A rotação da marcha lenta muda enquanto você gira?
throttle-sensor-speed-bars-steady = Fica igual
throttle-sensor-speed-bars-changes = Muda
throttle-sensor-idle-speed-again = Guidão reto.
throttle-sensor-fault-lamp = Motor ainda ligado: a luz de falha está acesa, ou pisca?
throttle-sensor-fault-lamp-off = Está apagada
throttle-sensor-fault-lamp-lit = Acesa, ou pisca
throttle-sensor-fault-lamp-no-lamp = Não tem
throttle-sensor-engine-off = Depois tire as mãos: está quente.
throttle-sensor-warm-idle = Medidor de volta à escala com três casas decimais. Agora a leitura da marcha lenta, a quente: mais alta que a frio, e está certo assim.
throttle-sensor-warm-release = Deve voltar à leitura da marcha lenta a quente.
throttle-sensor-warm-snap = Tire as mãos, depois leia.
throttle-sensor-put-away = O medidor desligado também.
throttle-sensor-cover = Tampa e banco de volta?
throttle-sensor-road-ready = Antes de rodar: luzes, freios, cabos, nada solto. Tudo pronto?

# Como se chama cada parte do trabalho.
throttle-sensor-section-questions = algumas perguntas
throttle-sensor-section-power-and-cable = bateria e cabo
throttle-sensor-section-wake-and-probe = acordar e conectar
throttle-sensor-section-as-found = como está agora
throttle-sensor-section-baseline = o valor de base
throttle-sensor-section-idle = marcha lenta e partida a frio
throttle-sensor-section-before-start = antes da partida
throttle-sensor-section-warm = a quente, e pronto

# Como se chama cada passo, no posto e nos números da oficina.
throttle-sensor-complaint-name = O que há de errado
throttle-sensor-place-name = Lugar e ferramentas
throttle-sensor-throttle-kind-name = Cabo ou fios
throttle-sensor-sensor-fixing-name = Fixação do sensor
throttle-sensor-changed-name = Última mudança
throttle-sensor-map-name = Mapa de injeção
throttle-sensor-map-figure-name = Valor do mapa
throttle-sensor-signal-box-name = Módulo de potência
throttle-sensor-unplug-box-name = Módulo de potência fora
throttle-sensor-codes-name = Códigos de falha
throttle-sensor-bore-name = Duto
throttle-sensor-valves-name = Folga das válvulas
throttle-sensor-altitude-name = Altitude
throttle-sensor-tachometer-name = Conta-giros
throttle-sensor-manual-closed-name = Manual: acelerador fechado
throttle-sensor-manual-idle-name = Manual: marcha lenta
throttle-sensor-manual-fast-idle-name = Manual: partida a frio
throttle-sensor-manual-speed-name = Manual: rotação da marcha lenta
throttle-sensor-battery-name = Bateria
throttle-sensor-bench-supply-name = Fonte de bancada
throttle-sensor-knob-out-name = Botão para fora
throttle-sensor-free-play-name = Folga do cabo
throttle-sensor-bars-free-name = Guidão de batente a batente
throttle-sensor-supply-leads-name = Agulhas na alimentação
throttle-sensor-supply-name = Alimentação
throttle-sensor-pump-name = Bomba de gasolina
throttle-sensor-signal-leads-name = Agulhas no sinal
throttle-sensor-as-found-idle-name = Como estava: marcha lenta
throttle-sensor-as-found-snap-name = Como estava: após a acelerada
throttle-sensor-as-found-open-name = Como estava: todo aberto
throttle-sensor-as-found-sweep-name = Como estava: varredura
throttle-sensor-as-found-jumps-name = Como estava: saltos
throttle-sensor-factory-stop-name = Batente de fábrica
throttle-sensor-mark-name = Marca no sensor
throttle-sensor-knob-off-name = Botão recuado
throttle-sensor-stop-off-name = Batente da marcha lenta recuado
throttle-sensor-baseline-name = Valor de base
throttle-sensor-supply-again-name = Alimentação, de novo
throttle-sensor-baseline-again-name = Valor de base, de novo
throttle-sensor-baseline-once-more-name = Valor base, terceira vez
throttle-sensor-idle-stop-name = Batente da marcha lenta
throttle-sensor-snap-name = Após a acelerada
throttle-sensor-fast-idle-name = Partida a frio
throttle-sensor-release-name = Botão para fora, leitura
throttle-sensor-fast-idle-again-name = Partida a frio, de novo
throttle-sensor-release-again-name = Botão para fora, de novo
throttle-sensor-idle-stop-again-name = Batente da marcha lenta, de novo
throttle-sensor-open-name = Todo aberto
throttle-sensor-sweep-name = Varredura
throttle-sensor-jumps-name = Saltos no caminho
throttle-sensor-asleep-name = Dormindo, medidor desligado
throttle-sensor-leads-out-name = Agulhas fora
throttle-sensor-refitted-name = Tudo montado
throttle-sensor-latched-name = Conector travado
throttle-sensor-snaps-shut-name = Fecha sozinho
throttle-sensor-outdoors-name = Ao ar livre
throttle-sensor-kill-switch-name = Corta-corrente
throttle-sensor-people-clear-name = Todos longe
throttle-sensor-start-name = Partida
throttle-sensor-warm-up-name = Aquecimento
throttle-sensor-warm-knob-name = Botão para fora, a quente
throttle-sensor-idle-speed-name = Rotação da marcha lenta
throttle-sensor-speed-bars-name = Marcha lenta ao girar o guidão
throttle-sensor-idle-speed-again-name = Rotação da marcha lenta, de novo
throttle-sensor-fault-lamp-name = Luz de falha
throttle-sensor-engine-off-name = Motor desligado
throttle-sensor-warm-idle-name = Marcha lenta, a quente
throttle-sensor-warm-release-name = Botão para fora, leitura a quente
throttle-sensor-warm-snap-name = Após a acelerada, a quente
throttle-sensor-put-away-name = Agulhas fora, medidor desligado
throttle-sensor-cover-name = Tampa e banco
throttle-sensor-road-ready-name = Pronta para rodar
