# Ciò che le piattaforme mostrano fuori da una conversazione: il menu, i rimandi, il banco dell'officina, i moduli.

platform-menu-begin = Iniziare una regolazione
platform-menu-where = Dove sono?
platform-menu-help = Che cosa posso inviare?
platform-menu-person = Chiamare l'officina
platform-menu-desk = Fare di questo canale il banco dell'officina
platform-menu-desk-code = Il codice del gestore
platform-pointer = Guido solo in privato.
platform-open-chat = Aprire la nostra chat
platform-written-privately = Ti ho scritto in privato:
platform-not-taken = Non sono riuscito a segnarlo. Invialo di nuovo.
platform-type-reading = Scrivere una misura
platform-reading-field = Che cosa mostra lo strumento
platform-room-name = La tua regolazione
platform-case-name = Caso { $case }
platform-desk-claimed = Ora il banco dell'officina è qui. I casi arrivano qui.
platform-desk-code-wrong = Quel codice è sbagliato o già usato.
platform-desk-only-in-group = Scrivilo nel gruppo o nel canale dell'officina.
