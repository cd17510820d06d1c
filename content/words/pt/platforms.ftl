# O que as plataformas mostram fora de uma conversa: o menu, avisos, o posto da oficina, formulários.

platform-menu-begin = Começar uma regulagem
platform-menu-where = Onde estou?
platform-menu-help = O que posso enviar?
platform-menu-person = Chamar a oficina
platform-menu-desk = Fazer deste canal o posto da oficina
platform-menu-desk-code = O código do operador
platform-pointer = Só oriento em particular.
platform-open-chat = Abrir a nossa conversa
platform-written-privately = Escrevi para você em particular:
platform-not-taken = Não consegui anotar. Envie de novo.
platform-type-reading = Digitar uma leitura
platform-reading-field = O que o medidor mostra
platform-room-name = A sua regulagem
platform-case-name = Caso { $case }
platform-desk-claimed = Este é agora o posto da oficina. Os casos chegam aqui.
platform-desk-code-wrong = Esse código está errado ou já foi usado.
platform-desk-only-in-group = Diga isso no grupo ou canal da oficina.
