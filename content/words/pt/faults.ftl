# As palavras das falhas de content/faults e das verificações que as encontram, para donos e para o posto.
# fault-<id>: o nome; fault-<id>-why: por que pensamos nela, dito antes da verificação; fault-<id>-remedy: o que a conserta.
# check-<id>: o que fazer ou responder; answer-<question>-<answer>: os botões; call-<reason>: por que se chama uma pessoa, para o posto.

fault-nothing-wrong = nada errado
fault-nothing-wrong-why = Os valores combinam com uma moto em ordem.
fault-nothing-wrong-remedy = Não há nada a consertar. Continue.

fault-sensor-mis-set = sensor desregulado
fault-sensor-mis-set-why = Os valores combinam com um sensor que só está desregulado.
fault-sensor-mis-set-remedy = Regule o sensor passo a passo.

fault-mistyped = valor mal digitado ou mal lido
fault-mistyped-why = Esse valor não combina com os anteriores. Um dígito pode ter escapado.
fault-mistyped-remedy = Leia o medidor de novo e envie todos os dígitos.

fault-unknown = uma causa que não conhecemos
fault-unknown-why = Nenhuma causa que conhecemos mostra estes valores.
fault-unknown-remedy = Uma pessoa precisa olhar.

fault-leads-swapped = pontas do medidor trocadas
fault-leads-swapped-why = É o que o medidor mostra quando a vermelha e a preta estão trocadas.
fault-leads-swapped-remedy = Vermelha no fio de sinal, preta no fio de massa.

fault-red-on-supply = ponta vermelha no fio de alimentação
fault-red-on-supply-why = É o que o medidor mostra quando a ponta vermelha está no fio de alimentação.
fault-red-on-supply-remedy = Passe a vermelha para o fio de sinal.

fault-black-on-supply = ponta preta no fio de alimentação
fault-black-on-supply-why = É o que o medidor mostra quando a ponta preta está no fio de alimentação.
fault-black-on-supply-remedy = Passe a preta para o fio de massa.

fault-red-on-supply-black-on-signal = vermelha na alimentação, preta no sinal
fault-red-on-supply-black-on-signal-why = É o que o medidor mostra com a vermelha no fio de alimentação e a preta no fio de sinal.
fault-red-on-supply-black-on-signal-remedy = Vermelha no fio de sinal, preta no fio de massa.

fault-red-on-ground-black-on-supply = vermelha na massa, preta na alimentação
fault-red-on-ground-black-on-supply-why = É o que o medidor mostra com a vermelha no fio de massa e a preta no fio de alimentação.
fault-red-on-ground-black-on-supply-remedy = Vermelha no fio de alimentação, preta no fio de massa.

fault-leads-on-one-pin = as duas pontas no mesmo fio
fault-leads-on-one-pin-why = O medidor mostra isso quando as duas pontas estão no mesmo fio.
fault-leads-on-one-pin-remedy = Vermelha no fio de sinal, preta no fio de massa.

fault-probe-not-touching = uma agulha que não encosta
fault-probe-not-touching-why = O medidor mostra isso quando uma agulha não encosta no metal.
fault-probe-not-touching-remedy = Enfie as duas agulhas ao lado da vedação do fio até encostarem.

fault-pin-slips = uma agulha que escapa
fault-pin-slips-why = O valor vai e volta, como com uma agulha que escapa.
fault-pin-slips-remedy = Firme as duas agulhas e prenda as pontas para que nada puxe.

fault-battery-wire-probed = ponta vermelha em um fio da bateria
fault-battery-wire-probed-why = Isso é tensão de bateria. Este sensor nunca recebe tanto.
fault-battery-wire-probed-remedy = Passe a vermelha para o fio de sinal.

fault-meter-on-ac = medidor em volts de corrente alternada
fault-meter-on-ac-why = Um medidor em corrente alternada mostra valores assim.
fault-meter-on-ac-remedy = Gire o seletor para volts de corrente contínua.

fault-meter-range = medidor na escala errada
fault-meter-range-why = A escala é pequena ou grosseira demais para este valor.
fault-meter-range-remedy = Escolha a escala que mostra o valor com mais casas decimais.

fault-meter-on-ohms = medidor em ohms
fault-meter-on-ohms-why = Um medidor em ohms mostra isso em um fio com tensão.
fault-meter-on-ohms-remedy = Gire o seletor para volts de corrente contínua.

fault-meter-battery-weak = pilha do medidor fraca
fault-meter-battery-weak-why = Com a pilha fraca, o medidor mostra tudo alto demais.
fault-meter-battery-weak-remedy = Ponha uma pilha nova no medidor.

fault-red-in-current-jack = ponta vermelha na entrada de corrente
fault-red-in-current-jack-why = O medidor mostra isso quando a vermelha está na entrada de corrente.
fault-red-in-current-jack-remedy = Passe a vermelha para a entrada de volts. Olhe o fusível do medidor.

fault-meter-hold = HOLD ligado no medidor
fault-meter-hold-why = O valor fica parado, como com HOLD ligado.
fault-meter-hold-remedy = Desligue HOLD.

fault-meter-relative = REL ligado no medidor
fault-meter-relative-why = O valor se desvia sempre o mesmo tanto, como com REL ligado.
fault-meter-relative-remedy = Desligue REL.

fault-meter-min-max = MIN/MAX ligado no medidor
fault-meter-min-max-why = O medidor parece guardar o seu valor mais alto.
fault-meter-min-max-remedy = Desligue MIN/MAX.

fault-meter-auto-off = medidor desligado sozinho
fault-meter-auto-off-why = Um medidor sem nada no visor quase sempre se desligou sozinho.
fault-meter-auto-off-remedy = Ligue o medidor de novo.

fault-unit-asleep = central dormindo
fault-unit-asleep-why = É o que o medidor mostra quando a central está dormindo.
fault-unit-asleep-remedy = Acorde a central de novo.

fault-no-power = central sem energia
fault-no-power-why = A central parece não acordar.
fault-no-power-remedy = Veja corta-corrente, chave, fusível e relé.

fault-supply-low = alimentação do sensor baixa demais
fault-supply-low-why = O sensor recebe menos tensão do que deveria.
fault-supply-low-remedy = Descubra por que a central dá de menos.

fault-supply-high = alimentação do sensor alta demais
fault-supply-high-why = O sensor recebe mais tensão do que deveria.
fault-supply-high-remedy = Descubra por que a central dá demais.

fault-battery-flat = bateria baixa demais
fault-battery-flat-why = A bateria pode estar baixa demais para este trabalho.
fault-battery-flat-remedy = Carregue a bateria, deixe repousar e comece de novo.

fault-brown-out = a tensão cai com a central acordada
fault-brown-out-why = A tensão parece cair enquanto a central está acordada.
fault-brown-out-remedy = Carregue a bateria e mantenha a central acordada por menos tempo.

fault-tight-cable = cabo do acelerador esticado demais
fault-tight-cable-why = Um cabo esticado mantém o acelerador um pouco aberto e mostra isso.
fault-tight-cable-remedy = Deixe folga no cabo do acelerador, com o guidão reto e nos dois batentes.

fault-fast-idle-on = botão de partida a frio deixado para dentro
fault-fast-idle-on-why = O valor combina com um botão de partida a frio ainda para dentro.
fault-fast-idle-on-remedy = Feche bem a manopla até o botão saltar para fora.

fault-knob-stays-in = botão de partida a frio não sai
fault-knob-stays-in-why = O botão parece não saltar para fora.
fault-knob-stays-in-remedy = Solte o botão e a mola dele.

fault-stop-not-backed-off = batente da marcha lenta ainda apoia
fault-stop-not-backed-off-why = O valor não caiu como cai quando o batente da marcha lenta fica livre.
fault-stop-not-backed-off-remedy = Gire o batente da marcha lenta para fora até não apoiar mais.

fault-idle-stop-never-bore = batente da marcha lenta recuado demais
fault-idle-stop-never-bore-why = O valor pode não cair se o batente da marcha lenta nunca apoiou.
fault-idle-stop-never-bore-remedy = Regule o batente da marcha lenta passo a passo.

fault-carbon-in-bore = carvão no duto
fault-carbon-in-bore-why = O carvão pode manter o acelerador aberto como um batente.
fault-carbon-in-bore-remedy = Limpe duto e borboleta e regule de novo.

fault-factory-stop-turned = batente de fábrica girado
fault-factory-stop-turned-why = O batente próprio da borboleta pode ter sido girado.
fault-factory-stop-turned-remedy = A oficina regula o batente de fábrica pelo seu próprio método.

fault-plate-wedged = borboleta torta ou presa
fault-plate-wedged-why = A borboleta parece não fechar.
fault-plate-wedged-remedy = Tire o corpo de borboleta e veja borboleta e eixo.

fault-wide-open-not-reached = acelerador não abre todo
fault-wide-open-not-reached-why = O acelerador parece não chegar ao fim.
fault-wide-open-not-reached-remedy = Tire a folga excessiva do cabo do acelerador e veja o batente do acelerador todo aberto.

fault-worn-track-near-idle = pista do sensor gasta perto da marcha lenta
fault-worn-track-near-idle-why = Um valor que salta perto da marcha lenta é sinal de pista gasta.
fault-worn-track-near-idle-remedy = Troque o sensor e regule de novo.

fault-worn-track-elsewhere = pista do sensor gasta mais acima
fault-worn-track-elsewhere-why = Um salto sempre na mesma abertura é sinal de pista gasta.
fault-worn-track-elsewhere-remedy = Troque o sensor e regule de novo.

fault-loose-sensor = parafusos do sensor frouxos
fault-loose-sensor-why = O valor não volta, como com um sensor frouxo.
fault-loose-sensor-remedy = Aperte os parafusos do sensor e regule de novo.

fault-shaft-play = folga no eixo ou no arraste do sensor
fault-shaft-play-why = O valor não volta, como com folga no eixo.
fault-shaft-play-remedy = Veja eixo, buchas e arraste do sensor.

fault-slots-at-end = sensor no fim dos rasgos
fault-slots-at-end-why = O sensor não consegue girar o bastante.
fault-slots-at-end-remedy = Descubra por que é preciso tanto antes de limar qualquer coisa.

fault-tang-wrong-side = arraste do sensor do lado errado
fault-tang-wrong-side-why = O valor está muito longe, como com o arraste do lado errado do eixo.
fault-tang-wrong-side-remedy = Tire o sensor e assente o arraste do lado certo.

fault-wrong-part-turned = outra peça foi girada
fault-wrong-part-turned-why = O valor não acompanhou. Outra peça pode ter sido girada.
fault-wrong-part-turned-remedy = Ache a peça certa e ponha a outra de volta.

fault-drifts-when-hot = sensor desvia a quente
fault-drifts-when-hot-why = O valor se move com o calor.
fault-drifts-when-hot-remedy = Troque o sensor e regule de novo.

fault-sensor-reversed = alimentação e massa trocadas no conector
fault-sensor-reversed-why = O sinal cai onde deveria subir: o conector pode estar ligado ao contrário.
fault-sensor-reversed-remedy = Ponha alimentação e massa nos seus próprios pinos.

fault-resistive-ground = massa do sensor ruim
fault-resistive-ground-why = O fio de massa do sensor parece perder tensão.
fault-resistive-ground-remedy = Conserte o fio de massa ou a emenda dele.

fault-open-ground = massa do sensor rompida
fault-open-ground-why = O fio de massa do sensor pode estar rompido.
fault-open-ground-remedy = Conserte o fio de massa.

fault-open-supply = alimentação do sensor rompida
fault-open-supply-why = Parece que nenhuma alimentação chega ao sensor.
fault-open-supply-remedy = Conserte o fio de alimentação.

fault-resistive-supply = fio de alimentação ruim
fault-resistive-supply-why = O fio de alimentação parece perder tensão.
fault-resistive-supply-remedy = Conserte o fio de alimentação ou a emenda dele.

fault-open-signal = fio de sinal rompido
fault-open-signal-why = O fio de sinal pode estar rompido atrás do conector.
fault-open-signal-remedy = Conserte o fio de sinal.

fault-signal-shorted = fio de sinal em curto
fault-signal-shorted-why = O sinal fica parado, como em um curto.
fault-signal-shorted-remedy = Ache onde o fio de sinal encosta em outro.

fault-corroded-plug = conector oxidado
fault-corroded-plug-why = O valor salta, como com um conector oxidado.
fault-corroded-plug-remedy = Limpe o conector e encaixe bem, ou troque os pinos.

fault-chafed-loom = chicote esfolado
fault-chafed-loom-why = O valor some de vez em quando, como com um chicote esfolado.
fault-chafed-loom-remedy = Ache o ponto esfolado, quase sempre onde o guidão dobra o chicote.

fault-box-on-signal = módulo adicional no fio de sinal
fault-box-on-signal-why = Um módulo no fio de sinal distorce o valor.
fault-box-on-signal-remedy = Desconecte o módulo e meça de novo.

fault-air-leak = entrada de ar
fault-air-leak-why = Os volts estão certos e a rotação está alta demais: pode entrar ar.
fault-air-leak-remedy = Procure a entrada: coletor de admissão, abraçadeiras, mangueiras.

fault-dirty-bore = duto sujo
fault-dirty-bore-why = Os volts estão certos e a rotação está baixa demais: o duto pode estar sujo.
fault-dirty-bore-remedy = Limpe o duto.

fault-valve-clearance = folga das válvulas
fault-valve-clearance-why = Os volts estão certos: a folga das válvulas pode ser a causa.
fault-valve-clearance-remedy = Verifique a folga das válvulas.

fault-air-filter = filtro de ar
fault-air-filter-why = Os volts estão certos: o filtro de ar pode ser a causa.
fault-air-filter-remedy = Limpe ou troque o filtro de ar.

fault-spark-plug = vela
fault-spark-plug-why = Os volts estão certos: a vela pode ser a causa.
fault-spark-plug-remedy = Troque a vela.

fault-fuel-supply = passagem de gasolina
fault-fuel-supply-why = Os volts estão certos: a gasolina pode ser a causa.
fault-fuel-supply-remedy = Verifique gasolina, filtro e pressão.

fault-decompressor = descompressor
fault-decompressor-why = Os volts estão certos: o descompressor pode ser a causa.
fault-decompressor-remedy = Verifique o descompressor.

fault-charging = carga
fault-charging-why = A bateria pode não estar carregando.
fault-charging-remedy = Verifique tensão de carga e regulador.

fault-fuel-map = mapa de injeção
fault-fuel-map-why = Os volts estão certos: o mapa de injeção pode não combinar.
fault-fuel-map-remedy = Carregue o mapa que combina com o escape e o filtro.

check-read-again = Olhe o medidor de novo. Envie todos os dígitos.
check-wake-again = Acorde a central de novo. Depois envie o valor.
check-look-at-leads = Deixe a central dormir. Olhe em quais fios estão as agulhas e corrija. Acorde a central. Depois envie o valor.
check-leads-on-battery = Vermelha no positivo da bateria, preta no negativo; no medidor, vermelha na entrada de volts. Depois envie o valor.
check-look-at-meter = Olhe o medidor: volts de corrente contínua, a escala certa, sem HOLD nem REL, vermelha na entrada de volts. Depois envie o valor.
check-look-at-cable = Gire o guidão de batente a batente e observe o valor. Se ele se mover, deixe folga no cabo do acelerador. Depois envie o valor, com o guidão reto.
check-look-at-screws = Empurre o sensor de leve com a mão e observe o valor. Aperte o que estiver frouxo. Depois envie o valor.
check-back-off-again = Gire o batente da marcha lenta para fora até não apoiar mais. Depois envie o valor.
check-knob-out-again = Feche bem a manopla para o botão de partida a frio saltar para fora. Depois envie o valor.
check-set-it = Parece só desregulado. Continue a regulagem.
check-measure-supply = Deixe a central dormir. Agulhas em alimentação e massa. Acorde a central. Envie o que o medidor mostra.
check-measure-ground-drop = Deixe a central dormir. Vermelha no fio de massa do sensor, preta no polo negativo da bateria. Acorde a central. Envie o que o medidor mostra.
check-measure-battery = Deixe a central dormir. Vermelha no polo positivo da bateria, preta no negativo. Envie o que o medidor mostra.
check-wiggle-plug = Mexa de leve o conector do sensor e observe o valor. Ele salta?
check-watch-it-wake = Deixe a central dormir e depois a acorde. A bomba zumbe, ou uma luz ou o painel acende?
check-unplug-and-look = Deixe a central dormir. Solte o conector do sensor; as agulhas ficam do lado do chicote, em alimentação e massa. Acorde a central. De volta perto de cinco volts? Depois deixe dormir e encaixe de novo.
check-look-at-lever = Acelerador fechado, sem mãos. A alavanca apoia no pequeno batente lacrado, ou algo a segura um pouco antes?
check-measure-track = Conector fora, meça a pista em ohms em todo o curso: algum salto?
check-trace-wires = Siga os fios do sensor com carga: alimentação, massa, sinal.
check-clean-bore = Corpo de borboleta fora: limpe duto e borboleta, veja o assento.
check-read-again-name = Ler de novo
check-wake-again-name = Acordar de novo
check-look-at-leads-name = Agulhas
check-look-at-meter-name = Medidor
check-look-at-cable-name = Cabo do acelerador
check-look-at-screws-name = Parafusos do sensor
check-back-off-again-name = Batente, de novo
check-knob-out-again-name = Botão para fora, de novo
check-set-it-name = Continuar ajustando
check-measure-supply-name = Alimentação
check-measure-ground-drop-name = Queda na massa
check-measure-battery-name = Bateria
check-wiggle-plug-name = Mexer no conector
check-watch-it-wake-name = Ver se acorda
check-unplug-and-look-name = Alimentação sem sensor
check-look-at-lever-name = Alavanca no batente
check-measure-track-name = Trilha em ohms
check-trace-wires-name = Rastrear os fios
check-clean-bore-name = Limpar o duto

answer-wiggle-steady = Fica parado
answer-wiggle-jumps = Salta
answer-wiggle-dont-know = Não dá para saber
answer-wake-signs-signs = Sim, ela acorda
answer-wake-signs-nothing = Nada acontece
answer-wake-signs-dont-know = Não dá para saber
answer-supply-unplugged-comes-back = Perto de cinco
answer-supply-unplugged-still-off = Continua errado
answer-supply-unplugged-dont-know = Não dá para saber
answer-lever-rest-on-stop = Apoia no batente
answer-lever-rest-held = Algo a segura
answer-lever-rest-dont-know = Não dá para saber

call-unknown-cause = Nenhuma causa conhecida explica as leituras.
call-not-for-an-owner = A causa mais provável não é para um dono consertar.
call-nothing-left = Tudo o que um dono pode verificar está feito, e as leituras ainda não batem.
call-look-alike = Várias causas se mostram iguais no medidor; uma pessoa precisa distingui-las.

reason-fault-lamp = Tensões certas, luz de falha acesa com o motor ligado: a central vê outra coisa que o medidor. Ler os códigos; fio do sinal e conector.
reason-fault-lamp-owner = A luz diz que a central vê uma falha. Primeiro é preciso ler qual.
