# Die Worte zum Drosselklappensensor: throttle-sensor-<Schritt> sagt, was zu tun ist; Antworten sind throttle-sensor-<Frage>-<Antwort>.
# Jedem gegeben: $machine $wake $connector $supply $signal $ground $minutes $seconds und, bei Teilen, $part $where $tool.

throttle-sensor-complaint = Was stimmt nicht, wenn sie läuft?
throttle-sensor-complaint-none = Nichts, nur prüfen
throttle-sensor-complaint-runs-badly = Läuft schlecht
throttle-sensor-complaint-bad-idle = Schlechter Leerlauf
throttle-sensor-complaint-flat-acceleration = Zieht schlecht beim Gasgeben
throttle-sensor-complaint-hard-starting = Springt schlecht an

throttle-sensor-place = Motor kalt, Maschine auf dem Ständer, Gang heraus.
    Im Freien, oder wo du sie ohne Umstellen im Freien laufen lassen kannst.
    Du weißt, wo Schlüssel und Killschalter sind.
    Bereit liegen: Messgerät, zwei dünne Messspitzen, Schraubendreher.

throttle-sensor-throttle-kind = Was geht vom Gasgriff zur Drosselklappe?
throttle-sensor-throttle-kind-cable = Ein Gaszug
throttle-sensor-throttle-kind-by-wire = Nur Kabel
throttle-sensor-throttle-kind-dont-know = Weiß nicht

throttle-sensor-sensor-fixing = Wie ist der Sensor befestigt?
throttle-sensor-sensor-fixing-slotted = Schrauben in Langlöchern
throttle-sensor-sensor-fixing-riveted = Nieten, Siegel, keine Langlöcher
throttle-sensor-sensor-fixing-dont-know = Weiß nicht

throttle-sensor-changed = Was wurde zuletzt an ihr verändert?
throttle-sensor-changed-nothing = Nichts
throttle-sensor-changed-throttle-body = Drosselklappe oder Gaszug
throttle-sensor-changed-sensor = Der Sensor
throttle-sensor-changed-exhaust-or-filter = Auspuff oder Filter
throttle-sensor-changed-dont-know = Weiß nicht

throttle-sensor-map = Mit welchem Kennfeld läuft sie?
throttle-sensor-map-standard = Mit dem serienmäßigen
throttle-sensor-map-other = Mit einem anderen
throttle-sensor-map-dont-know = Weiß nicht

throttle-sensor-map-figure = Welchen Wert bei geschlossenem Gas gibt der Anbieter des Kennfelds an? Schick ihn in Volt.

throttle-sensor-signal-box = Ist ein Tuningmodul in die Kabel des Sensors eingeschleift?
throttle-sensor-signal-box-none = Nein
throttle-sensor-signal-box-fitted = Ja
throttle-sensor-signal-box-dont-know = Weiß nicht

throttle-sensor-unplug-box = Zieh das Modul ab und verbinde die Kabel, wie sein Hersteller es sagt. Es belastet das Signal.

throttle-sensor-codes = Zeigt die Maschine einen gespeicherten Fehlercode?
throttle-sensor-codes-none = Nein
throttle-sensor-codes-stored = Ja

throttle-sensor-bore = Sieh an der Drosselklappe vorbei. Ist die Bohrung sauber?
throttle-sensor-bore-clean = Sauber
throttle-sensor-bore-dirty = Dunkler Rand oder verharzt
throttle-sensor-bore-dont-know = Sehe ich nicht

throttle-sensor-valves = Wurde das Ventilspiel geprüft, als es fällig war?
throttle-sensor-valves-in-time = Ja
throttle-sensor-valves-overdue = Überfällig
throttle-sensor-valves-dont-know = Weiß nicht

throttle-sensor-altitude = Wo läuft sie?
throttle-sensor-altitude-below = Im Flachland
throttle-sensor-altitude-above = Hoch in den Bergen

throttle-sensor-tachometer = Womit liest du die Leerlaufdrehzahl ab?
throttle-sensor-tachometer-have = Ich habe einen Drehzahlmesser
throttle-sensor-tachometer-none = Ich habe keinen

throttle-sensor-manual-closed = Was gibt dein Handbuch für geschlossenes Gas an, Leerlaufanschlag herausgedreht? Schick die Volt aus dem Handbuch, nicht vom Messgerät.
throttle-sensor-manual-idle = Was gibt dein Handbuch für den Leerlauf an, Motor aus? Schick die Volt aus dem Handbuch.
throttle-sensor-manual-fast-idle = Was gibt dein Handbuch mit eingedrücktem Kaltstartknopf an? Schick die Volt aus dem Handbuch.
throttle-sensor-manual-speed = Welche Leerlaufdrehzahl gibt dein Handbuch an, warm?

throttle-sensor-battery = Nichts ist eingeschaltet.
throttle-sensor-bench-supply = Sie hat keine Batterie. Schließ das Netzteil an, mit eingesetzter Sicherung.

throttle-sensor-knob-out = Er muss von selbst draußen bleiben.
throttle-sensor-free-play = Am Griff muss etwas Luft zu spüren sein, bevor sich etwas bewegt.
throttle-sensor-bars-free = An keinem Anschlag darf das Gas gezogen werden.

throttle-sensor-supply-leads = Zieh dafür den Stecker ab ({ $connector }), schieb die Messspitzen an den Kabeldichtungen entlang hinein und steck ihn wieder auf. Dann das Messgerät an.
throttle-sensor-supply = Horch beim Wecken auf die Benzinpumpe.
throttle-sensor-pump = Hat die Pumpe gesummt und nach ein paar Sekunden aufgehört?
throttle-sensor-pump-stops = Sie hat aufgehört
throttle-sensor-pump-no-pump = Ich habe keine Pumpe gehört
throttle-sensor-pump-runs-on = Sie läuft weiter
throttle-sensor-signal-leads = Schwarz ist schon dort: nur Rot wandert.

throttle-sensor-as-found-idle = So lief sie bisher. Hände weg vom Gasgriff.
throttle-sensor-as-found-snap = Lass es zuschnappen.
throttle-sensor-as-found-open = So festhalten. Zeigt das Messgerät OL, nimm den nächsten Bereich.
throttle-sensor-as-found-sweep = Bleib in diesem Bereich. Öffne in vier Stufen bis ganz auf und geh in vier zurück. Notiere jede Zahl, von geschlossen bis geschlossen.
throttle-sensor-as-found-jumps = Ist unterwegs etwas gesprungen oder abgefallen?
throttle-sensor-leave-alone = Alles ist, wie es sein soll. Lass Sensor und Schrauben in Ruhe.
throttle-sensor-only-checked = Das war die Prüfung. Hier wird nichts gedreht.

throttle-sensor-factory-stop = Die Klappe liegt an ihrem eigenen kleinen Werksanschlag an, mit Lack versiegelt. Er ist nicht der Leerlaufanschlag und wird nie angerührt. Wie sieht der Lack aus?
throttle-sensor-factory-stop-untouched = Unversehrt
throttle-sensor-factory-stop-turned = Gebrochen, jemand hat gedreht
throttle-sensor-factory-stop-dont-know = Kann ich nicht sagen

throttle-sensor-mark = Ein feiner Strich über beide Teile. Mach auch ein Foto: Das ist dein Weg zurück.
throttle-sensor-knob-off = Der Knopf ist herausgesprungen. Zähl die Rasten, bis er frei ist. Wie viele?
throttle-sensor-stop-off = Zähl die Umdrehungen, bis er nicht mehr anliegt. Lass ihn im Gewinde. Wie viele Umdrehungen?

throttle-sensor-baseline = Gas zu, Hände weg. Der Bereich mit drei Nachkommastellen.
throttle-sensor-supply-again = Das war der Grundwert. Bevor er gilt, noch einmal die Versorgung.
throttle-sensor-baseline-again = Warte { $seconds } Sekunden, bevor du das Steuergerät weckst: Dann merkt es sich die neue Schließstellung.
throttle-sensor-baseline-once-more = Noch einmal: Es muss derselbe Wert kommen.
throttle-sensor-idle-stop = Der Grundwert steht. Weiter zum Leerlauf.
throttle-sensor-idle-stop-again = Noch einmal der Leerlaufwert.
throttle-sensor-snap = Zweimal. Dann Hände weg.
throttle-sensor-fast-idle = Lass ihn drin, während du ihn einstellst. Motor aus.
throttle-sensor-release = Der Wert soll zurück auf den Leerlaufwert.
throttle-sensor-fast-idle-again = Noch einmal, zur Sicherheit.
throttle-sensor-release-again = Und noch einmal.
throttle-sensor-open = So festhalten. Zeigt das Messgerät OL, nimm den nächsten Bereich.
throttle-sensor-sweep = Bleib in diesem Bereich. Öffne in vier Stufen bis ganz auf und geh in vier zurück. Notiere jede Zahl, von geschlossen bis geschlossen.
throttle-sensor-jumps = Ist unterwegs etwas gesprungen oder abgefallen?

throttle-sensor-sweep-jumps-smooth = Alles gleichmäßig
throttle-sensor-sweep-jumps-jumped = Gesprungen oder abgefallen

throttle-sensor-asleep = Messgerät auch aus.
throttle-sensor-leads-out = Beide. Keine Leitung bleibt bei Kette oder Auspuff.
throttle-sensor-refitted = Luftfilterkasten, Schläuche und alles, was ab war, wieder dran und fest?
throttle-sensor-latched = Stecker des Sensors ganz aufgeschoben und eingerastet?
throttle-sensor-snaps-shut = Es muss zuschnappen, bei geradem Lenker und an beiden Anschlägen.
throttle-sensor-outdoors = Steht die Maschine im Freien, der Auspuff frei?
throttle-sensor-kill-switch = Killschalter ausprobiert: Du kommst hin, und er schaltet in beide Richtungen?
throttle-sensor-people-clear = Gang heraus, auf dem Ständer, und alle weg von Kette, Rad und Auspuff?

throttle-sensor-start = Daumen am Killschalter.
throttle-sensor-warm-up = Lass sie { $minutes } Minuten mit Kaltstartknopf warmlaufen.
throttle-sensor-warm-knob = Der Leerlauf soll gleichmäßig werden.
throttle-sensor-idle-speed = Lass sie zur Ruhe kommen.
throttle-sensor-speed-bars = Ändert sich dabei die Leerlaufdrehzahl?
throttle-sensor-speed-bars-steady = Sie bleibt gleich
throttle-sensor-speed-bars-changes = Sie ändert sich
throttle-sensor-idle-speed-again = Lenker gerade.
throttle-sensor-fault-lamp = Der Motor läuft noch: Leuchtet oder blinkt die Störungslampe?
throttle-sensor-fault-lamp-off = Sie ist aus
throttle-sensor-fault-lamp-lit = Sie leuchtet oder blinkt
throttle-sensor-fault-lamp-no-lamp = Es gibt keine
throttle-sensor-engine-off = Dann Hände weg: Er ist heiß.
throttle-sensor-warm-idle = Messgerät zurück auf den Bereich mit drei Nachkommastellen. Jetzt der Leerlaufwert, warm: höher als der kalte, und das ist richtig.
throttle-sensor-warm-release = Der Wert soll zurück auf den warmen Leerlaufwert.
throttle-sensor-warm-snap = Hände weg, dann ablesen.
throttle-sensor-put-away = Messgerät auch aus.
throttle-sensor-cover = Abdeckung und Sitzbank wieder drauf?
throttle-sensor-road-ready = Bevor du fährst: Licht, Bremsen, Züge, nichts mehr locker. Bereit?

# Wie jeder Teil der Arbeit heißt.
throttle-sensor-section-questions = ein paar Fragen
throttle-sensor-section-power-and-cable = Batterie und Gaszug
throttle-sensor-section-wake-and-probe = Wecken und Anschließen
throttle-sensor-section-as-found = wie sie jetzt steht
throttle-sensor-section-baseline = der Grundwert
throttle-sensor-section-idle = Leerlauf und Kaltstart
throttle-sensor-section-before-start = vor dem Start
throttle-sensor-section-warm = warm, und fertig

# Wie jeder Schritt heißt, am Werkstattplatz und in den Zahlen der Werkstatt.
throttle-sensor-complaint-name = Was nicht stimmt
throttle-sensor-place-name = Platz und Werkzeug
throttle-sensor-throttle-kind-name = Gaszug oder Kabel
throttle-sensor-sensor-fixing-name = Befestigung des Sensors
throttle-sensor-changed-name = Zuletzt verändert
throttle-sensor-map-name = Kennfeld
throttle-sensor-map-figure-name = Wert zum Kennfeld
throttle-sensor-signal-box-name = Tuningmodul
throttle-sensor-unplug-box-name = Tuningmodul ab
throttle-sensor-codes-name = Gespeicherte Fehlercodes
throttle-sensor-bore-name = Bohrung
throttle-sensor-valves-name = Ventilspiel
throttle-sensor-altitude-name = Höhenlage
throttle-sensor-tachometer-name = Drehzahlmesser
throttle-sensor-manual-closed-name = Handbuch: Gas geschlossen
throttle-sensor-manual-idle-name = Handbuch: Leerlauf
throttle-sensor-manual-fast-idle-name = Handbuch: Kaltstart
throttle-sensor-manual-speed-name = Handbuch: Leerlaufdrehzahl
throttle-sensor-battery-name = Batterie
throttle-sensor-bench-supply-name = Netzteil
throttle-sensor-knob-out-name = Kaltstartknopf draußen
throttle-sensor-free-play-name = Spiel des Gaszugs
throttle-sensor-bars-free-name = Lenker von Anschlag zu Anschlag
throttle-sensor-supply-leads-name = Messspitzen an die Versorgung
throttle-sensor-supply-name = Versorgung
throttle-sensor-pump-name = Benzinpumpe
throttle-sensor-signal-leads-name = Messspitzen ans Signal
throttle-sensor-as-found-idle-name = Vorgefunden: Leerlauf
throttle-sensor-as-found-snap-name = Vorgefunden: nach Zuschnappen
throttle-sensor-as-found-open-name = Vorgefunden: ganz offen
throttle-sensor-as-found-sweep-name = Vorgefunden: Durchlauf
throttle-sensor-as-found-jumps-name = Vorgefunden: Sprünge
throttle-sensor-factory-stop-name = Werksanschlag
throttle-sensor-mark-name = Strich am Sensor
throttle-sensor-knob-off-name = Kaltstartknopf herausgedreht
throttle-sensor-stop-off-name = Leerlaufanschlag herausgedreht
throttle-sensor-baseline-name = Grundwert
throttle-sensor-supply-again-name = Versorgung, noch einmal
throttle-sensor-baseline-again-name = Grundwert, noch einmal
throttle-sensor-baseline-once-more-name = Grundwert, ein drittes Mal
throttle-sensor-idle-stop-name = Leerlaufanschlag
throttle-sensor-snap-name = Nach Zuschnappen
throttle-sensor-fast-idle-name = Kaltstart
throttle-sensor-release-name = Nach Kaltstart
throttle-sensor-fast-idle-again-name = Kaltstart, noch einmal
throttle-sensor-release-again-name = Nach Kaltstart, noch einmal
throttle-sensor-idle-stop-again-name = Leerlaufanschlag, noch einmal
throttle-sensor-open-name = Ganz offen
throttle-sensor-sweep-name = Durchlauf
throttle-sensor-jumps-name = Sprünge unterwegs
throttle-sensor-asleep-name = Schläft, Messgerät aus
throttle-sensor-leads-out-name = Messspitzen heraus
throttle-sensor-refitted-name = Alles wieder dran
throttle-sensor-latched-name = Stecker eingerastet
throttle-sensor-snaps-shut-name = Schnappt zu
throttle-sensor-outdoors-name = Im Freien
throttle-sensor-kill-switch-name = Killschalter
throttle-sensor-people-clear-name = Alle weg
throttle-sensor-start-name = Start
throttle-sensor-warm-up-name = Warmlaufen
throttle-sensor-warm-knob-name = Kaltstartknopf draußen, warm
throttle-sensor-idle-speed-name = Leerlaufdrehzahl
throttle-sensor-speed-bars-name = Leerlaufdrehzahl beim Lenken
throttle-sensor-idle-speed-again-name = Leerlaufdrehzahl, noch einmal
throttle-sensor-fault-lamp-name = Störungslampe
throttle-sensor-engine-off-name = Motor aus
throttle-sensor-warm-idle-name = Leerlauf, warm
throttle-sensor-warm-release-name = Nach Kaltstart, warm
throttle-sensor-warm-snap-name = Nach Zuschnappen, warm
throttle-sensor-put-away-name = Messspitzen heraus, Messgerät aus
throttle-sensor-cover-name = Abdeckung und Sitzbank
throttle-sensor-road-ready-name = Fahrbereit
