# Was die Chat-Plattformen außerhalb eines Gesprächs zeigen: Befehlsmenü, Hinweise, Übernahme als Werkstattplatz, Formulare.

platform-menu-begin = Einstellung beginnen
platform-menu-where = Wo bin ich gerade?
platform-menu-help = Was kann ich schicken?
platform-menu-person = Werkstatt rufen
platform-menu-desk = Diesen Kanal zum Werkstattplatz machen
platform-menu-desk-code = Der Code des Betreibers
platform-pointer = Ich leite nur im privaten Chat an.
platform-open-chat = Unseren Chat öffnen
platform-written-privately = Ich habe dir privat geschrieben:
platform-not-taken = Das konnte ich nicht festhalten. Schick es noch einmal.
platform-type-reading = Messwert eingeben
platform-reading-field = Was das Messgerät zeigt
platform-room-name = Deine Einstellung
platform-case-name = Fall { $case }
platform-desk-claimed = Hier ist jetzt der Werkstattplatz. Fälle kommen hierher.
platform-desk-code-wrong = Dieser Code ist falsch oder verbraucht.
platform-desk-only-in-group = Schreib das in der Gruppe oder im Kanal der Werkstatt.
