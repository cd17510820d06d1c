# Die Tipps für den Kanal der Werkstatt, jeder unter tip-<id>, und was der Werkstattplatz über sie erfährt. In einem Tipp gehen $machine und $procedure.

## Im Kanal

tip-closed-stop =
    Der Leerlauf wandert, und der Drosselklappensensor soll schuld sein? Such zuerst seinen Grundwert.
    Ein Messwert sagt nur dann etwas über den Sensor, wenn nichts die Klappe offen hält: Leerlaufanschlag und Kaltstartknopf ganz herausgedreht.
    Wir gehen es mit dir durch, Messwert für Messwert. Wo das Handbuch des Herstellers etwas anderes sagt, hat das Handbuch recht.
tip-three-decimals =
    Bevor du einen Drosselklappensensor misst, sieh dein Messgerät an: Zeigt es bei kleiner Spannung drei Nachkommastellen?
    Mit zweien ist die letzte Stelle so breit wie das Fenster, in das du willst. Nimm den kleineren Bereich oder leih dir ein besseres Gerät.
    Sobald es drei zeigt, fang hier an.
tip-bars-and-revs =
    Ändert sich die Drehzahl, wenn du den Lenker drehst? Dann stell den Motor ab und fahr so nicht: Etwas zieht am Gas.
    Kein Sensor muss eingestellt werden, bevor der Gaszug sein Spiel hat und von Anschlag zu Anschlag frei läuft.
    Danach fragen wir zuerst, gemessen wird später.
tips-start = Anfangen
tips-withdrawn = Dieser Tipp ist zurückgezogen. Bitte richte dich nicht danach.

## Am Werkstattplatz

tips-none = Es gibt keine Tipps.
tips-how = "tips NAME" zeigt einen.
tips-status = { $id }: { $posted }, { $comes }.
tips-never-posted = noch nicht gesendet
tips-posted = gesendet: { $when }
tips-comes = kommt nicht vor { $when }
tips-comes-never = kommt nicht von selbst
tips-stays-away = zurückgezogen
tips-gone = nicht mehr im Inhalt
tips-unknown = Ich kenne keinen Tipp "{ $id }".
tips-known = Es gibt: { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = Kein Kanal für Tipps ist eingestellt. Wer das Programm betreibt, kann einen einstellen.
tips-rests = Er ruht bis { $when }.
tips-quiet = Ruhezeit: Vor { $when } wird nichts gesendet.
tips-may-post = Jetzt senden: drücken, oder "tips post { $id }" schreiben.
tips-may-correct = Im Kanal steht es anders. Dort berichtigen: drücken, oder "tips correct { $id }" schreiben.
tips-may-withdraw = Zurückziehen: drücken, oder "tips withdraw { $id }" schreiben.
tips-button-post = Senden
tips-button-correct = Berichtigen
tips-button-withdraw = Zurückziehen
tips-did-post = { $name } sendet "{ $id }" in den Kanal.
tips-did-correct = { $name } berichtigt "{ $id }" im Kanal.
tips-did-withdraw = { $name } zieht "{ $id }" zurück. Von selbst kommt er nicht wieder.
tips-refused = Der Tipp "{ $id }" kam nicht in den Kanal: { $why }
tips-partly-refused = Der Tipp "{ $id }" kam nicht in alle Kanäle: { $why }
tips-change-refused = Der Tipp "{ $id }" ließ sich im Kanal nicht ändern: { $why }
tips-comes-again = Er kommt wieder, nicht vor { $when }.
