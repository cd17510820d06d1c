# O que o próprio programa diz em todo procedimento. $value, $low, $high, $amount são valores; $unit é o símbolo de uma unidade.

greeting = Olá. Sou o guia de regulagens de { $workshop }: um programa, com pessoas por trás.
greeting-scope = Eu oriento, você decide. Valem primeiro o manual do fabricante, as normas locais e os profissionais habilitados.
greeting-kept = Guardo o que você envia por { $days } dias; você e o posto da oficina podem ler. "apague tudo" apaga tudo, "pessoa" chama alguém.
menu-procedure = O que você quer fazer?
menu-machine = Qual é a moto?
set-up-opened = { $machine }: vamos passo a passo.

link-unknown = Esse link leva a algo que não tenho.
link-replace = Você tem uma regulagem aberta. Quer mantê-la ou começar a nova?
link-keep = Manter
link-start-new = Começar a nova
link-left-as-is = A outra regulagem termina aqui. O que foi girado fica como está.
withdrawn = A oficina retirou este procedimento: { $why }.
withdrawn-goes-on = Continuamos com o certo.

button-done = Feito
button-understood = Entendi
button-skip = Pular
button-yes = Sim
button-no = Não
button-jumping = Salta
button-stale = Esse botão é de antes. Estamos aqui.
button-over = Isso já terminou. Veja o que posso fazer.

ask-number = Envie o valor.
ask-speed = Envie a rotação da marcha lenta.
ask-readings = Envie os { $count } valores em uma só mensagem, em ordem.

heard-question = São { $value } { $unit }?
heard-as = { $typed } = { $value } { $unit }
send-again = Então não é isso.
send-all-at-once = Preciso de todos em uma só mensagem, de fechado a fechado.
read-again = É um salto grande. Olhe de novo, com todos os dígitos.
read-once-more = Olhe mais uma vez e envie todos os dígitos.
came-back-differently = Voltou a um ponto diferente do anterior.
passed-to-desk = Isso foi para a oficina.
number-wanted = Preciso do valor do medidor.
choose-one = Escolha uma opção.
confirm-wanted = Toque no botão ou escreva feito quando estiver.
not-yet = Sem pressa. Toque no botão ou escreva feito quando estiver.
lost-reading = Só o valor do medidor, com todas as casas.
lost-person = Se não avançar, escreva pessoa: alguém da oficina vai olhar.
picture-kept = Obrigado pela foto. Eu não sei ler fotos; uma pessoa do posto sabe.
picture-passed-on = A foto foi para o posto.
edited = Você alterou uma mensagem. Só sigo mensagens novas.

unclear-nothing-understood = Não entendi.
unclear-two-meanings = Isso pode significar duas coisas.
unclear-bare-figure = Preciso dele com a vírgula decimal ou com a unidade.
unclear-wrong-quantity = Essa é outra unidade. Ponha o medidor em volts de corrente contínua.
unclear-malformed-number = Não consigo distinguir o valor. Só os dígitos, por favor.
unclear-sign-or-bullet = Não sei se isso é um sinal de menos.
unclear-bound-only = Preciso do que o visor mostra, com todos os dígitos.
unclear-refers-back = Preciso de uma leitura nova.
unclear-too-long = É longo demais para mim. Só o valor, por favor.
unclear-one-number = Preciso de um só valor: o que o medidor mostra agora.
unclear-count = Preciso de um número.
unclear-digits = Assim não dá para distinguir. Ponha o medidor na escala que mostra passos de { $digit }.
unclear-meter = Este medidor não consegue distinguir tanto.

verdict-pass = { $value } { $unit }. Certo.
verdict-loose = { $value } { $unit }. Segure aí.
verdict-out = { $value } { $unit }. Deve mostrar de { $low } a { $high }.
verdict-out-high = { $value } { $unit }. Deve mostrar { $high } ou menos.
verdict-out-low = { $value } { $unit }. Deve mostrar { $low } ou mais.
verdict-sweep-pass = Sobe sem falhas e volta. Certo.
noted = { $value } { $unit }, anotado.
loop-high = { $value }. Alto demais.
loop-low = { $value }. Baixo demais.

odd-value = { $value } { $unit } não bate.
odd-range = De { $low } a { $high } { $unit }: não para quieto.
next-range = Passe para a escala seguinte.
odd-overload = O medidor está acima da escala.
odd-nothing = O medidor não mostra nada.
odd-sweep = A varredura não sobe e desce como deve.
asleep-again = A central dormiu, ou o medidor.
jumped-once-more = Mais uma vez, com as pontas bem firmes.

move-until = Pare entre { $low } e { $high }. Solte.
# De uma mão que não consegue fazer menos que um toque por vez.
amount-nudges = { $amount ->
    [1] um toque
   *[other] uns { $amount } toques
 }
amount-turns = { $amount ->
    [0.0625] um dezesseis avos de volta
    [0.125] um oitavo de volta
    [0.1875] três dezesseis avos de volta
    [0.25] um quarto de volta
    [0.5] meia volta
    [0.75] três quartos de volta
    [1] uma volta
   *[other] { $amount } voltas
 }
amount-clicks = { $amount ->
    [1] um clique
   *[other] { $amount } cliques
 }
move-sensor-body-clockwise = Gire o sensor { amount-nudges } no sentido horário.
move-sensor-body-counter-clockwise = Gire o sensor { amount-nudges } no sentido anti-horário.
move-idle-stop-in = Gire o batente da marcha lenta para dentro, mais ou menos { amount-turns }.
move-idle-stop-out = Gire o batente da marcha lenta para fora, mais ou menos { amount-turns }.
move-fast-idle-in = Gire o botão para dentro, { amount-clicks }.
move-fast-idle-out = Gire o botão para fora, { amount-clicks }.
move-upper-screw-in = Parafuso de cima para dentro, um toque.
move-upper-screw-out = Parafuso de cima para fora, um toque.
move-lower-screw-in = Parafuso de baixo para dentro, um toque.
move-lower-screw-out = Parafuso de baixo para fora, um toque.
# O mesmo com a mão ainda na peça: poucas palavras.
again-nudge-clockwise = Horário, { amount-nudges }.
again-nudge-counter-clockwise = Anti-horário, { amount-nudges }.
again-nudge-in = Para dentro, { amount-nudges }.
again-nudge-out = Para fora, { amount-nudges }.
again-turn-in = Para dentro, { amount-turns }.
again-turn-out = Para fora, { amount-turns }.
again-click-in = Para dentro, { amount-clicks }.
again-click-out = Para fora, { amount-clicks }.
again-mm-more = Mais folga, { $amount } mm.
again-mm-less = Menos folga, { $amount } mm.
again-until-clockwise = Horário até mostrar de { $low } a { $high }. Solte.
again-until-counter-clockwise = Anti-horário até mostrar de { $low } a { $high }. Solte.
again-until-in = Para dentro até mostrar de { $low } a { $high }. Solte.
again-until-out = Para fora até mostrar de { $low } a { $high }. Solte.
aim-off = Ao apertar, ele se move. Miramos ao lado para compensar.
move-cable-more = Dê ao cabo do acelerador { $amount } mm a mais de folga.
move-cable-less = Dê ao cabo do acelerador { $amount } mm a menos de folga.

do-wake = { $wake }
do-sleep = Deixe a central dormir: desconecte o que a acordou.
do-probe = Ponta vermelha no { $signal }, preta no { $ground }.
do-probe-supply = Ponta vermelha no { $supply }, preta no { $ground }.
do-probe-ground = Ponta vermelha no { $ground }, preta no polo negativo da bateria.
do-probe-battery = Ponta vermelha no polo positivo da bateria, preta no negativo.
do-unprobe = Tire as agulhas.
do-back-off-idle-stop = Batente da marcha lenta: { $where }. Gire para fora.
do-back-off-fast-idle = Botão de partida a frio: { $where }. Gire para fora.
do-free-play-cable = Deixe folga no cabo do acelerador.
do-turn-bars = Gire o guidão de batente a batente.
do-mark-sensor-body = Marque onde o sensor está.
do-restore-sensor-body = Ponha o sensor de volta na sua marca.
do-loosen-sensor-screws = Afrouxe os dois parafusos do sensor até ele girar com algum atrito.
do-tighten-sensor-screws = Aperte os dois parafusos alternando, um pouco cada um. Solte e espere um momento.
do-tighten-sensor-screws-to = Aperte os dois parafusos alternando, um pouco cada um, até { $torque } Nm. Solte e espere um momento.
do-open = Abra o acelerador todo.
do-close = Feche o acelerador.
do-snap = Abra o acelerador de uma vez e solte.
do-engage-fast-idle = Empurre o botão de partida a frio para dentro.
do-release-fast-idle = Feche bem a manopla para o botão de partida a frio saltar para fora.
do-start-engine = Dê a partida no motor.
do-stop-engine = Desligue o motor.
do-check-leads = Olhe em quais fios estão as agulhas. Corrija.
do-check-meter = Medidor: volts de corrente contínua, sem HOLD nem REL, ponta vermelha na entrada de volts.
do-check-cable = Gire o guidão e observe a leitura. Se o cabo puxar, corrija.
do-check-screws = Empurre o sensor com a mão e observe a leitura. Aperte o que estiver frouxo.

unit-per-minute = rpm

wire-supply = fio de alimentação
wire-signal = fio de sinal
wire-ground = fio de massa
wire-plain = fio { $colour }
wire-striped = fio { $colour } com traço { $stripe }
colour-black = preto
colour-white = branco
colour-grey = cinza
colour-brown = marrom
colour-red = vermelho
colour-orange = laranja
colour-yellow = amarelo
colour-green = verde
colour-light-green = verde-claro
colour-blue = azul
colour-light-blue = azul-claro
colour-violet = violeta
colour-pink = rosa
tool-any = a ferramenta certa
part-sensor-body = sensor
part-upper-screw = parafuso de cima
part-lower-screw = parafuso de baixo
part-idle-stop = batente da marcha lenta
part-fast-idle = botão de partida a frio
part-cable = cabo do acelerador
part-chain-adjuster = esticador da corrente
part-preload-collar = anel de pré-carga

measure-supply-voltage = Alimentação
measure-ground-drop = Queda na massa
measure-battery-voltage = Bateria
measure-charging-voltage = Carga
measure-signal-closed-stop = Batente fechado
measure-signal-idle = Marcha lenta
measure-signal-idle-static = Marcha lenta, motor desligado
measure-signal-idle-warm = Marcha lenta, a quente
measure-signal-fast-idle = Partida a frio
measure-signal-released = Botão para fora
measure-signal-wide-open = Todo aberto
measure-signal-sweep = Varredura
measure-signal-snapped = Após a acelerada
measure-idle-speed = Rotação da marcha lenta
measure-free-play = Folga
measure-chain-slack = Folga da corrente
measure-rider-sag = Afundamento com piloto
measure-free-sag = Afundamento livre
measure-tyre-pressure = Pressão do pneu

caution-guidance-only = Isto é orientação: o manual do fabricante vem primeiro. Na dúvida, pare e pergunte.
caution-guidance-only-name = só orientação
caution-fuel-and-heat = Só com o motor frio. Nem chama nem faísca perto de gasolina.
    Nunca amarre o acelerador aberto, nunca abra uma linha de gasolina.
caution-fuel-and-heat-name = gasolina e calor
caution-battery-care = Tire anéis e relógio. Mantenha as pontas separadas: um curto pode queimar você.
caution-battery-care-name = bateria
caution-back-probing = Deslize agulhas finas ao lado das vedações dos fios. Nunca fure um fio.
    Mantenha as agulhas separadas: alimentação na massa pode matar a central.
caution-back-probing-name = agulhas no conector
caution-waking = Motor desligado, neutro, mãos longe: um botão de partida pode girar o motor.
    Algo quente, fumaça ou a bomba que não para: desconecte e me diga.
caution-waking-name = acordar
caution-stops-off = Enquanto os batentes estiverem recuados, ninguém aperta a partida.
caution-stops-off-name = batentes recuados
caution-loose-sensor = Enquanto o sensor estiver solto, ninguém aperta a partida. Dedos longe da borboleta.
caution-loose-sensor-name = sensor solto
caution-running-engine = Gás de escape mata: só ao ar livre.
    Mãos, pontas e roupas longe de corrente, roda e escape.
    Se o motor disparar: acione o corta-corrente.
caution-running-engine-name = motor ligado
caution-hot-engine = O motor está ligado e quente. Gire o batente da marcha lenta pela lateral, longe do escape e da ventoinha.
caution-hot-engine-name = motor quente

figure-taken = { $value } { $unit }, do seu manual.
figure-out-of-reach = Isso não pode estar certo: espero de { $low } a { $high } { $unit }. Confira de novo.

check-only-by-wire = Um acelerador sem cabo tem uma borboleta motorizada que pode prender dedos. Só medimos; aqui não se regula nada.
check-only-riveted = Um sensor fixo não se regula. Só medimos.
check-only-not-known = Enquanto isso não se sabe, só medimos e não giramos nada.
check-only-map-not-known = Sem saber o mapa, não há valor para regular. Só medimos.
check-only-codes = Um código gravado vem primeiro. Só medimos, não regulamos nada.
check-only-dirty-bore = Limpe antes o duto: regulado sobre sujeira, amanhã está errado de novo. Só medimos.
check-only-no-figure = Sem um valor não há para onde regular. Só medimos.
check-only-not-adjustable = O sensor desta moto é fixo e não se regula. Só medimos.

help = Digite um valor, ou: feito, voltar, repetir, pausa, parar, pessoa. Fumaça, gasolina, acelerador que trava: é só dizer.
where = { $machine }. Parte { $part } de { $parts }: { $name }.
where-plain = { $machine }.
part-begins = Parte { $part } de { $parts }: { $name }.
back-engine-runs = Desligue o motor primeiro.
back-sensor-loose = Primeiro regule o sensor e aperte-o.
back-no-further = Não há nada antes disto.
paused = Escreva quando for continuar.
pause-engine = Desligue o motor primeiro.
come-back = Que bom que voltou.
come-back-pins = Olhe primeiro se as duas agulhas continuam no lugar.
awake-too-long = A central está acordada há { $minutes } minutos. Poupe a bateria.

give-up = Vamos deixar tudo como estava?
way-back-uncounted = O batente da marcha lenta não foi contado. Gire para dentro até apenas encostar. A marcha lenta não será a de antes: não rode ainda.
give-up-restore = Deixar como estava
give-up-leave = Deixar como está
give-up-go-on = Continuar o trabalho
give-up-wait = Esperar a pessoa

called = Chamei uma pessoa da oficina. Ela vê tudo o que você enviou.
called-closed = A oficina está fechada. O seu chamado é o primeiro quando abrir.
called-go-on = Enquanto isso, você pode continuar.
enough = Já são { $minutes } minutos. "pessoa" chama alguém; "pausa" guarda o seu lugar.
leave-it = Tire o jumper, desligue o medidor. Não dê a partida nem rode assim.
held = Isto espera por uma pessoa da oficina. Tire o jumper, desligue o medidor. Não dê a partida nem rode assim.

flag-throttle-sticks-first = Acione o corta-corrente. Solte a manopla. Não dê a partida de novo.
flag-revs-hang-first = Acione o corta-corrente. Deixe a moto parada. Não dê a partida de novo.
flag-engine-wont-stop-first = Acione o corta-corrente. Tire o jumper. Afaste-se.
flag-fuel-leak-first = Acione o corta-corrente. Tire o jumper. Nem faísca nem chama. Saia de perto.
flag-smoke-first = Acione o corta-corrente. Tire o jumper. Saia de perto. Se pegar fogo: número de emergência.
flag-hot-leads-first = Tire o jumper. Não toque nas pontas. Afaste-se.
flag-pump-runs-on-first = Tire o jumper agora. Não ponha de novo.
flag-unwell-first = Desligue o motor. Vá para o ar livre agora. Se não melhorar logo: número de emergência.
flag-injured-first = Desligue o motor. Se for grave, ligue para o número de emergência. Cuide primeiro da pessoa ferida.

stuck-slots-at-end = O sensor está no fim dos rasgos. Deixe aí: disso cuida uma pessoa da oficina.
stuck-moves-stop-helping = Continuar girando já não ajuda. Disso cuida uma pessoa da oficina.
stuck-too-coarse = À mão não dá para regular mais fino. Uma pessoa decide.
call-unknown-cause-owner = Não sei o que mostraria estes valores. Disso cuida uma pessoa da oficina.
call-not-for-an-owner-owner = Isso não se conserta na garagem com um chat. Uma pessoa da oficina assume.
call-nothing-left-owner = Já verificamos tudo o que dá daqui. Uma pessoa da oficina assume.
call-look-alike-owner = Várias causas se mostrariam assim. Uma pessoa da oficina assume.

record-set = { $machine }: regulagem concluída. Bom trabalho.
record-right-as-found = { $machine }: já estava certa. Nada de importante foi mudado.
record-accepted = { $machine }: concluída com o posto.
record-not-set = { $machine }: não regulada.
record-baseline-checked = O valor de base foi verificado no batente fechado.
record-baseline-not-checked = O valor de base não foi verificado.
record-elsewhere = O sensor não é a causa da sua queixa. Veja entradas de ar, válvulas, vela, filtro e gasolina.
record-accepted-by = Um valor foi aceito por { $name }.
record-value = { $measure }: { $value } { $unit }
record-speed-not-checked = Rotação da marcha lenta não verificada.
record-code = A sua ficha é { $code }. Guarde-a para a oficina.

erase-question = Apago tudo sobre você aqui? Não dá para desfazer.
erase-yes = Apagar
erase-no = Manter
erased = Tudo sobre você foi apagado.
