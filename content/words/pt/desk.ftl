# O que passa entre um dono e o posto da oficina. $name é o nome visível de uma pessoa; $text é o que alguém digitou, tal como está.

## Ao dono

too-fast = Isso é mais rápido do que consigo acompanhar. Espere um minuto e envie de novo o último.
called-already = Uma pessoa da oficina já sabe. Ela vê tudo o que você envia.
called-taken = { $name }, da oficina, está vendo isto agora.
called-closed-until = A oficina está fechada. O seu chamado é o primeiro da fila: { $when }.
called-way-back = "parar" deixa tudo como estava.
called-put-back = Deixar como estava
held-by = { $name }, da oficina, está com isto agora. Recebe o que você escreve.
taken-by = { $name }, da oficina, está com você agora. Recebe o que você escreve.
passed-on = { $name } passa você a outra pessoa da oficina, que vai escrever aqui.
staff-says = { $name } (oficina): { $text }
staff-sends-picture = { $name } (oficina) enviou uma foto.
asked-by = { $name } (oficina) pede uma leitura. { $measure }:
asked-question-by = { $name } (oficina) pergunta:
asked-noted = { $shown }. { $name } está vendo.
asked-answered = Obrigado. { $name } está vendo.
given-back = { $name } devolve você ao guia. Você fala de novo com o programa.
given-back-fresh = Primeiro energia e agulhas, depois um valor novo.
closed-by = { $name }, da oficina, encerrou isto.
closed-not-rideable = Tire o jumper, tire as agulhas. Não dê a partida nem rode do jeito que está.

## O cartão

desk-card = Caso { $id }, { $state }
desk-card-flag = Há alerta vermelho. { $flag }
desk-state-waiting = esperando desde { $since }
desk-state-taken = com { $name }
desk-state-returned = devolvido ({ $since })
desk-state-closed = encerrado ({ $since })
desk-erased = Caso { $id }: o dono mandou apagar tudo sobre ele. Acabou.
desk-rideable = Apertado e regulado, agulhas fora: pode dar a partida.
desk-not-rideable = NÃO dar a partida nem rodar do jeito que está.
desk-machine-power = { $power }; { $probes }.
desk-machine-parts = Sensor { $sensor }; { $stop }; { $knob }.
desk-machine-engine = Motor { $engine }; lista de partida: { $confirmed } de { $items } confirmados.
desk-awake = Acordada e com jumper desde { $since }
desk-asleep = Dormindo, sem jumper
desk-probes-none = sem agulhas
desk-probes-unsure = agulhas talvez ainda postas
desk-probes-signal = agulhas em sinal e massa
desk-probes-supply = agulhas em alimentação e massa
desk-probes-ground = agulhas em massa e negativo da bateria
desk-probes-battery = pontas na bateria
desk-sensor-tight = apertado
desk-sensor-loose = SOLTO
desk-stop-set = batente da marcha lenta no lugar
desk-stop-off = batente da marcha lenta RECUADO
desk-stop-off-by = batente da marcha lenta RECUADO, { $turns } { $turns ->
    [1] volta contada
   *[other] voltas contadas
 }
desk-knob-set = botão de partida a frio no lugar
desk-knob-off = botão de partida a frio RECUADO
desk-knob-off-by = botão de partida a frio RECUADO, { $clicks } { $clicks ->
    [1] clique contado
   *[other] cliques contados
 }
desk-engine-running = LIGADO
desk-engine-hot = desligado, já funcionou
desk-engine-cold = desligado, ainda não funcionou
desk-no-set-up-open = Não há regulagem aberta.
desk-who = Dono: { $name } em { $platform }
desk-where = { $machine }, { $at }, desde { $since }. Código { $code }.
desk-at = em "{ $stage }"
desk-at-part = em "{ $stage }", parte { $part } de { $parts }
desk-about = { $machine }, código { $code }
desk-answer = { $question }: { $answer }
desk-own-words = Escreveu: { $text }
desk-head-readings = Leituras:
desk-head-tried = Tentado:
desk-head-causes = Provável:
desk-reading = { $measure }: { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure }: { $shown }, { $result } ({ $limits }; { $source })
desk-reading-plain = { $measure }: { $shown }
desk-first = { $measure }, primeira
desk-as-found = { $measure }, como estava
desk-asked-for = { $measure }, a pedido
desk-struck = { $measure }: "{ $typed }", anulada: { $why }
desk-why-asleep = dormindo
desk-why-implausible = não bate
desk-why-unclear = grosseira demais
desk-why-asked = instável
desk-why-doubted = pedida de novo
desk-figure = { $value } { $unit }
desk-figures = de { $low } a { $high } { $unit }
desk-overload = acima da escala
desk-nothing = não mostra nada
desk-limits = { $low } a { $high }
desk-limits-high = { $high } ou menos
desk-limits-low = { $low } ou mais
desk-result-pass = certo
desk-result-low = baixo demais
desk-result-high = alto demais
desk-result-unclear = grosseiro demais
desk-result-implausible = não bate
desk-result-accepted = aceito por { $name }
desk-source-manual = manual
desk-source-workshop = oficina
desk-source-common-practice = prática comum
desk-source-owner = valor do dono
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction } { $amount } { $unit }: de { $before } a { $after }
desk-unit-turn = { $amount ->
    [1] volta
   *[other] voltas
 }
desk-unit-click = { $amount ->
    [1] clique
   *[other] cliques
 }
desk-unit-nudge = { $amount ->
    [1] toque
   *[other] toques
 }
desk-unit-mm = mm
desk-direction-in = para dentro
desk-direction-out = para fora
desk-direction-clockwise = no sentido horário
desk-direction-counter-clockwise = no sentido anti-horário
desk-direction-more = mais folga
desk-direction-less = menos folga
desk-checked = { $check }
desk-cause = { $cause }: { $share } %
desk-cautions = Avisos confirmados: { $cautions }
desk-reason = Motivo do chamado: { $reason }
desk-job = Ordem { $job }
desk-history-remark = { $name } anotou: { $note }
desk-history-accepted = { $name } aceitou: { $note }
desk-history-cleared = { $name } deu o alerta por resolvido: { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure }: { $value }. { $why }

desk-take = Assumir
desk-take-over = Assumir de { $name }
desk-give-back = Devolver
desk-ask = Pedir uma leitura
desk-check = Enviar uma verificação
desk-close = Encerrar
desk-help = Ajuda

## Em um caso

desk-owner-said = Dono { $name }: { $text }
desk-owner-changed = Dono { $name } alterou uma mensagem para: { $text }
desk-owner-picture = Dono { $name } enviou uma foto.
desk-owner-picture-with = Dono { $name } enviou uma foto: { $text }
desk-owner-pressed = Dono { $name } tocou em: { $choice }
desk-read-along = { $measure }: { $shown } seria: { $result } ({ $limits }).
desk-taken = Está com { $name }. O que você digitar aqui vai para o dono. "/ajuda" mostra o resto.
desk-taken-from = { $name } assumiu de { $from }. O que você digitar aqui vai para o dono.
desk-yours = Já está com você.
desk-held-by = Está com { $name }.
desk-take-first = Não está com ninguém. Assuma primeiro.
desk-not-sent = Ainda não está com ninguém: nada foi para o dono. Assuma primeiro.
desk-too-old = Isso faz tempo demais. O dono pode chamar de novo.
desk-passed = { $name } passa o caso { $id } adiante. Quem assume?
desk-passed-to = { $name } passa o caso { $id } para { $to }.
desk-returned = { $name } devolveu. O programa continua.
desk-closed = { $name } encerrou.
desk-closed-cause = { $name } encerrou. Causa: { $cause }
desk-closed-already = Já está encerrado.
desk-which-cause = Qual era a causa?
desk-asked = Pedido: { $measure }
desk-ask-which = Qual leitura? Toque em uma, ou escreva "/pedir batente fechado".
desk-ask-unknown = Não conheço essa leitura. Posso pedir estas:
desk-ask-running = Essa se lê no seu próprio passo: "/saltar" até ele e depois devolva o caso.
desk-asked-answer = { $check } Resposta: { $answer }
desk-check-which = Qual verificação? Toque em uma.
desk-check-unknown = Não conheço essa verificação. Posso enviar estas:
desk-check-sent = Enviado: { $check }
desk-accept-reason = Dê um motivo: "/aceitar o manual permite".
desk-accept-loose = O sensor está solto e vai se mover. Peça primeiro que apertem e leiam de novo.
desk-accept-none = Não há valor para aceitar.
desk-accepted = { $measure }: { $shown } aceito por { $name }. A ficha vai dizer isso.
desk-stages = Saltar para onde? "/saltar" e um destes: { $stages }.
desk-goes-on-at = Ao devolver, continua em "{ $stage }".
desk-goes-on-at-after = Ao devolver, continua em "{ $stage }"; antes vem a lista de partida, desde "{ $first }".
desk-no-set-up = Não há regulagem aberta.
desk-flag-up = Há alerta vermelho. { $flag } Certifique-se de que acabou e escreva "/resolvido" e como você sabe.
desk-no-flag = Não há alerta vermelho.
desk-withdrawn = Este procedimento está retirado, e nenhum outro tem este passo: o programa não pode continuar. Feche o caso.
desk-clear-reason = Escreva como você se certificou: "/resolvido vazamento consertado, seco".
desk-cleared = { $name } deu o alerta por resolvido.
desk-noted = Anotado. Fica no posto.
desk-note-empty = Escreva em seguida: "/nota parece borboleta torta".
desk-job-noted = Ordem { $job }.
desk-job-none = Agora sem número de ordem.
desk-edited = Uma mensagem alterada não é enviada de novo. Escreva uma nova.
desk-start = Os links de início são para donos.
desk-choice-unknown = Esse botão não faz nada aqui.
desk-command-unknown = Esse eu não conheço. Nada foi para o dono. "/ajuda" mostra o que existe.
desk-case-past = Este caso terminou. O atual do dono é { $id }.
desk-case-unknown = Não conheço esse caso.
desk-case-unknown-id = Não conheço o caso { $id }.
desk-unreachable = Isso não chegou ao dono: { $why }
desk-unanswered = O dono espera por { $name } há { $minutes } minutos.

desk-help-talk = Palavras e fotos vão para o dono, com o seu nome. O que começa com "/" ou "." nunca vai.
desk-help-take = /assumir: fica com você. /passar NOME: para outra pessoa.
desk-help-measure = /pedir LEITURA: o programa pede e julga. /verificar NOME: envia uma verificação.
desk-help-decide = /aceitar MOTIVO: vale o último valor. /saltar PASSO: onde continua. /resolvido COMO: um alerta vermelho acabou.
desk-help-end = /devolver: o programa continua. /encerrar CAUSA: termina, com ficha.
desk-help-note = /nota TEXTO fica aqui. /trabalho NÚMERO. /cartão, /ficha, /ficha json.
desk-help-desk = No posto em geral: casos, buscar PALAVRAS, ficha CÓDIGO, fechado hoje, aberto de novo, tips.
desk-help-case = No tópico de um caso: assuma, depois "/ajuda".

## O posto em geral

desk-reminder = O caso { $id } espera há { $minutes } minutos. { $reason }
desk-hint = Os casos chegam aqui. "ajuda" mostra o que posso fazer.
desk-in-thread = Faça isso no tópico do próprio caso. "casos" mostra todos.
desk-list-none = Nenhum caso espera e nenhum está em andamento.
desk-list-waiting = Esperando: { $count }
desk-list-taken = Em andamento: { $count }
desk-list-case = { $id }: { $name }, { $machine }, código { $code }, desde { $since }, { $state }. { $reason }
desk-list-state-waiting = esperando
desk-list-state-taken = em andamento
desk-list-state-returned = devolvido
desk-list-state-closed = encerrado
desk-found-none = Não encontrei nada para { $text }.
desk-found-record = Ficha { $code }: { $machine }, { $result }, { $when }
desk-result-record-set = regulado
desk-result-record-right-as-found = já estava certo
desk-result-record-accepted = aceito
desk-result-record-not-set = não regulado
desk-closed-today = Fechado por hoje.
desk-closed-today-until = Fechado por hoje. Aos donos se diz: { $when }. "aberto de novo" desfaz.
desk-open-again = De novo conforme o horário.
desk-summary = O dia termina. Esperando: { $waiting }, em andamento: { $taken }, encerrados hoje: { $ended }, fichas: { $done }.
desk-record-head = Caso { $id }: { $name }, aberto { $opened }
desk-record-reading = { $reading }: { $value } ({ $result })
desk-record-asked = { $measure }: "{ $typed }", a pedido
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = : { $note }
desk-record-cause = Causa: { $cause }
desk-did-opened = aberto
desk-did-flagged = alerta vermelho
desk-did-cleared = { $name } deu um alerta por resolvido
desk-did-taken = { $name } assumiu
desk-did-passed = { $name } passou adiante
desk-did-returned = { $name } devolveu
desk-did-closed = { $name } encerrou
desk-did-reopened = { $name } chamou de novo
desk-did-accepted = { $name } aceitou
desk-did-asked = { $name } pediu
desk-did-checked = { $name } enviou uma verificação
desk-did-jumped = { $name } escolheu o passo
desk-did-remark = { $name } anotou
desk-json = { $json }

## Por que se chama uma pessoa

reason-asked = O dono pediu uma pessoa.
reason-procedure-withdrawn = O procedimento foi retirado, e nenhum outro tem este passo.
reason-meter-too-coarse = O medidor do dono não mostra dígitos suficientes para decidir.
reason-factory-stop-turned = O batente de fábrica da borboleta foi girado: a posição fechada não é confiável.
reason-factory-stop-turned-owner = Então a posição fechada não é confiável. Disso cuida uma pessoa da oficina.
reason-factory-stop-unsure = O dono não sabe dizer se o batente de fábrica foi girado.
reason-factory-stop-unsure-owner = Uma pessoa vai ajudar você a saber.
reason-cable-tight-at-lock = A rotação da marcha lenta muda ao girar o guidão: um cabo ou o chicote está esticado demais.
reason-cable-tight-at-lock-owner = Algo puxa o acelerador. Assim a moto não pode rodar.
reason-not-the-sensor = A rotação da marcha lenta só é alcançada com o sinal fora da sua faixa a quente: não é o sensor. Duto sujo, válvulas, vela, gasolina ou entrada de ar.
reason-not-the-sensor-owner = Não é coisa do sensor. Deixamos como está e procuramos a causa.
reason-flag-throttle-sticks = ALERTA VERMELHO: o acelerador trava.
reason-flag-revs-hang = ALERTA VERMELHO: a rotação não cai ou sobe sozinha.
reason-flag-engine-wont-stop = ALERTA VERMELHO: o motor não desliga.
reason-flag-fuel-leak = ALERTA VERMELHO: cheiro ou vazamento de gasolina.
reason-flag-smoke = ALERTA VERMELHO: fumaça, queimado ou vapor.
reason-flag-hot-leads = ALERTA VERMELHO: pontas, jumper ou bateria quentes ou com faíscas.
reason-flag-pump-runs-on = ALERTA VERMELHO: a bomba não para.
reason-flag-unwell = ALERTA VERMELHO: alguém se sente mal, talvez pelo gás de escape.
reason-flag-injured = ALERTA VERMELHO: alguém está ferido.
reason-call-unknown-cause = Nenhuma causa conhecida explica as leituras.
reason-call-not-for-an-owner = A causa mais provável não é para um dono consertar.
reason-call-nothing-left = Tudo o que um dono pode verificar está feito, e as leituras ainda não batem.
reason-call-look-alike = Várias causas se mostram iguais no medidor. Uma pessoa precisa distingui-las.
reason-stuck-slots-at-end = O sensor está no fim dos rasgos e a leitura ainda não está certa.
reason-stuck-moves-stop-helping = Girar já não aproxima a leitura.
reason-stuck-too-coarse = Os passos desta peça são grosseiros demais para a faixa dela.
desk-picture-readings = Todas as leituras diante das suas faixas.
desk-picture-causes = As causas prováveis.
desk-picture-approach = As correções deste passo e o que cada uma fez.

## Os números da oficina

report-counts = Ajustes terminados: { $ended }. Casos encerrados: { $closed }.
report-stops = { $procedure }: onde os donos param
report-times = { $procedure }: tempo por passo
report-causes = Causas encontradas, por mês
report-head-stage = passo
report-head-reached = chegaram
report-head-stopped = pararam ali
report-head-quarter = um quarto levou no máximo
report-head-half = metade
report-head-three-quarters = três quartos (min)
report-head-cause = causa
report-picture = Imagem: { $file }
report-nothing = nada ainda
