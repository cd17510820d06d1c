# Lo que muestran las plataformas fuera de una conversación: el menú, avisos, el puesto del taller, formularios.

platform-menu-begin = Empezar un ajuste
platform-menu-where = ¿Dónde estoy?
platform-menu-help = ¿Qué puedo enviar?
platform-menu-person = Llamar al taller
platform-menu-desk = Hacer de este canal el puesto del taller
platform-menu-desk-code = El código del operador
platform-pointer = Solo guío en privado.
platform-open-chat = Abrir nuestro chat
platform-written-privately = Te he escrito en privado:
platform-not-taken = No pude anotarlo. Envíalo otra vez.
platform-type-reading = Escribir una lectura
platform-reading-field = Lo que marca el medidor
platform-room-name = Tu ajuste
platform-case-name = Caso { $case }
platform-desk-claimed = Este es ahora el puesto del taller. Los casos llegan aquí.
platform-desk-code-wrong = Ese código no vale o ya se usó.
platform-desk-only-in-group = Dilo en el grupo o canal del taller.
