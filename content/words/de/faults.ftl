# Die Worte zu den Ursachen in content/faults und zu den Prüfungen, die sie finden, für Fahrer und Werkstattplatz.
# fault-<id>: ihr Name; fault-<id>-why: warum wir das denken, vor der Prüfung gesagt; fault-<id>-remedy: was hilft.
# check-<id>: was zu tun oder zu beantworten ist; answer-<Frage>-<Antwort>: die Knöpfe; call-<Grund>: warum ein Mensch gerufen wird, für den Werkstattplatz.

fault-nothing-wrong = alles in Ordnung
fault-nothing-wrong-why = Die Werte passen zu einer Maschine in Ordnung.
fault-nothing-wrong-remedy = Es ist nichts zu beheben. Mach weiter.

fault-sensor-mis-set = Sensor verstellt
fault-sensor-mis-set-why = Die Werte passen zu einem Sensor, der nur verstellt ist.
fault-sensor-mis-set-remedy = Stell den Sensor nach den Schritten ein.

fault-mistyped = Zahl vertippt oder verlesen
fault-mistyped-why = Dieser Wert passt nicht zu den vorigen. Vielleicht ist eine Ziffer verrutscht.
fault-mistyped-remedy = Lies das Messgerät noch einmal ab und schick jede Stelle.

fault-unknown = eine Ursache, die wir nicht kennen
fault-unknown-why = Keine Ursache, die wir kennen, zeigt solche Werte.
fault-unknown-remedy = Das muss sich ein Mensch ansehen.

fault-leads-swapped = Messleitungen vertauscht
fault-leads-swapped-why = Das zeigt das Messgerät, wenn Rot und Schwarz vertauscht sind.
fault-leads-swapped-remedy = Rot an das Signalkabel, Schwarz an das Massekabel.

fault-red-on-supply = rote Leitung am Versorgungskabel
fault-red-on-supply-why = Das zeigt das Messgerät, wenn die rote Leitung am Versorgungskabel sitzt.
fault-red-on-supply-remedy = Rot an das Signalkabel umstecken.

fault-black-on-supply = schwarze Leitung am Versorgungskabel
fault-black-on-supply-why = Das zeigt das Messgerät, wenn die schwarze Leitung am Versorgungskabel sitzt.
fault-black-on-supply-remedy = Schwarz an das Massekabel umstecken.

fault-red-on-supply-black-on-signal = Rot an Versorgung, Schwarz an Signal
fault-red-on-supply-black-on-signal-why = Das zeigt das Messgerät mit Rot am Versorgungskabel und Schwarz am Signalkabel.
fault-red-on-supply-black-on-signal-remedy = Rot an das Signalkabel, Schwarz an das Massekabel.

fault-red-on-ground-black-on-supply = Rot an Masse, Schwarz an Versorgung
fault-red-on-ground-black-on-supply-why = Das zeigt das Messgerät mit Rot am Massekabel und Schwarz am Versorgungskabel.
fault-red-on-ground-black-on-supply-remedy = Rot an das Versorgungskabel, Schwarz an das Massekabel.

fault-leads-on-one-pin = beide Leitungen an einem Kabel
fault-leads-on-one-pin-why = Das zeigt das Messgerät, wenn beide Leitungen an einem Kabel sitzen.
fault-leads-on-one-pin-remedy = Rot an das Signalkabel, Schwarz an das Massekabel.

fault-probe-not-touching = eine Messspitze hat keinen Kontakt
fault-probe-not-touching-why = Das zeigt das Messgerät, wenn eine Messspitze kein Metall berührt.
fault-probe-not-touching-remedy = Schieb beide Messspitzen an der Kabeldichtung entlang, bis sie Kontakt haben.

fault-pin-slips = eine Messspitze rutscht
fault-pin-slips-why = Der Wert kommt und geht, wie bei einer rutschenden Messspitze.
fault-pin-slips-remedy = Steck beide Messspitzen fest und binde die Leitungen an, damit nichts zieht.

fault-battery-wire-probed = rote Leitung an einem Batteriekabel
fault-battery-wire-probed-why = Das ist Batteriespannung. So viel bekommt dieser Sensor nie.
fault-battery-wire-probed-remedy = Rot an das Signalkabel umstecken.

fault-meter-on-ac = Messgerät auf Wechselspannung
fault-meter-on-ac-why = Solche Werte zeigt ein Messgerät auf Wechselspannung.
fault-meter-on-ac-remedy = Dreh auf Gleichspannung.

fault-meter-range = Messgerät im falschen Bereich
fault-meter-range-why = Der Bereich ist für diesen Wert zu klein oder zu grob.
fault-meter-range-remedy = Nimm den Bereich, der den Wert mit den meisten Nachkommastellen zeigt.

fault-meter-on-ohms = Messgerät auf Ohm
fault-meter-on-ohms-why = Das zeigt ein Messgerät auf Ohm an einem Kabel unter Spannung.
fault-meter-on-ohms-remedy = Dreh auf Gleichspannung.

fault-meter-battery-weak = schwache Batterie im Messgerät
fault-meter-battery-weak-why = Eine schwache Batterie im Messgerät macht jeden Wert zu hoch.
fault-meter-battery-weak-remedy = Leg eine frische Batterie ins Messgerät.

fault-red-in-current-jack = rote Leitung in der Strombuchse
fault-red-in-current-jack-why = Das zeigt das Messgerät, wenn Rot in der Strombuchse steckt.
fault-red-in-current-jack-remedy = Steck Rot in die Voltbuchse. Sieh nach der Sicherung im Messgerät.

fault-meter-hold = HOLD am Messgerät gedrückt
fault-meter-hold-why = Der Wert steht still, wie bei gedrücktem HOLD.
fault-meter-hold-remedy = Schalte HOLD aus.

fault-meter-relative = REL am Messgerät gedrückt
fault-meter-relative-why = Der Wert ist immer um dasselbe daneben, wie bei gedrücktem REL.
fault-meter-relative-remedy = Schalte REL aus.

fault-meter-min-max = MIN/MAX am Messgerät an
fault-meter-min-max-why = Das Messgerät scheint seinen höchsten Wert zu halten.
fault-meter-min-max-remedy = Schalte MIN/MAX aus.

fault-meter-auto-off = Messgerät hat sich abgeschaltet
fault-meter-auto-off-why = Ein Messgerät ohne Anzeige hat sich meist selbst abgeschaltet.
fault-meter-auto-off-remedy = Schalte das Messgerät wieder ein.

fault-unit-asleep = Steuergerät schläft
fault-unit-asleep-why = Das zeigt das Messgerät, wenn das Steuergerät schläft.
fault-unit-asleep-remedy = Weck es wieder.

fault-no-power = Steuergerät ohne Strom
fault-no-power-why = Das Steuergerät scheint nicht aufzuwachen.
fault-no-power-remedy = Sieh nach Killschalter, Schlüssel, Sicherung und Relais.

fault-supply-low = Sensorversorgung zu niedrig
fault-supply-low-why = Der Sensor bekommt weniger Spannung, als er soll.
fault-supply-low-remedy = Finde heraus, warum das Steuergerät zu wenig gibt.

fault-supply-high = Sensorversorgung zu hoch
fault-supply-high-why = Der Sensor bekommt mehr Spannung, als er soll.
fault-supply-high-remedy = Finde heraus, warum das Steuergerät zu viel gibt.

fault-battery-flat = Batterie zu niedrig
fault-battery-flat-why = Die Batterie reicht für diese Arbeit vielleicht nicht.
fault-battery-flat-remedy = Lade die Batterie, lass sie ruhen und fang neu an.

fault-brown-out = Spannung bricht im Wachzustand ein
fault-brown-out-why = Die Spannung scheint einzubrechen, während das Steuergerät wach ist.
fault-brown-out-remedy = Lade die Batterie und halte das Steuergerät kürzer wach.

fault-tight-cable = Gaszug zu stramm
fault-tight-cable-why = Ein strammer Gaszug hält das Gas etwas offen, und das zeigt sich so.
fault-tight-cable-remedy = Gib dem Gaszug sein Spiel, bei geradem Lenker und an beiden Anschlägen.

fault-fast-idle-on = Kaltstartknopf noch drin
fault-fast-idle-on-why = Der Wert passt zu einem Kaltstartknopf, der noch drin ist.
fault-fast-idle-on-remedy = Dreh den Gasgriff zu, bis der Knopf herausspringt.

fault-knob-stays-in = Kaltstartknopf springt nicht heraus
fault-knob-stays-in-why = Der Knopf scheint nicht herauszuspringen.
fault-knob-stays-in-remedy = Mach den Knopf und seine Feder gängig.

fault-stop-not-backed-off = Leerlaufanschlag liegt noch an
fault-stop-not-backed-off-why = Der Wert fiel nicht so, wie er fällt, wenn der Leerlaufanschlag frei ist.
fault-stop-not-backed-off-remedy = Dreh den Leerlaufanschlag heraus, bis nichts mehr anliegt.

fault-idle-stop-never-bore = Leerlaufanschlag zu weit heraus
fault-idle-stop-never-bore-why = Der Wert fällt vielleicht nicht, weil der Leerlaufanschlag nie anlag.
fault-idle-stop-never-bore-remedy = Stell den Leerlaufanschlag nach den Schritten ein.

fault-carbon-in-bore = Ölkohle in der Bohrung
fault-carbon-in-bore-why = Ölkohle kann das Gas offen halten wie ein Anschlag.
fault-carbon-in-bore-remedy = Reinige Bohrung und Klappe, dann stell neu ein.

fault-factory-stop-turned = Werksanschlag verdreht
fault-factory-stop-turned-why = Der eigene Anschlag der Klappe wurde vielleicht verdreht.
fault-factory-stop-turned-remedy = Den Werksanschlag stellt die Werkstatt nach eigenem Verfahren.

fault-plate-wedged = Drosselklappe verbogen oder verklemmt
fault-plate-wedged-why = Die Klappe scheint nicht zu schließen.
fault-plate-wedged-remedy = Drosselklappengehäuse ab, Klappe und Welle ansehen.

fault-wide-open-not-reached = Gas öffnet nicht ganz
fault-wide-open-not-reached-why = Das Gas scheint nicht ganz aufzugehen.
fault-wide-open-not-reached-remedy = Nimm dem Gaszug das überflüssige Spiel und sieh nach dem Vollgasanschlag.

fault-worn-track-near-idle = Sensorbahn beim Leerlauf verschlissen
fault-worn-track-near-idle-why = Ein Wert, der beim Leerlauf springt, ist das Zeichen einer verschlissenen Bahn.
fault-worn-track-near-idle-remedy = Tausch den Sensor und stell ihn neu ein.

fault-worn-track-elsewhere = Sensorbahn weiter oben verschlissen
fault-worn-track-elsewhere-why = Ein Sprung bei einer Öffnung ist das Zeichen einer verschlissenen Bahn.
fault-worn-track-elsewhere-remedy = Tausch den Sensor und stell ihn neu ein.

fault-loose-sensor = Sensorschrauben locker
fault-loose-sensor-why = Der Wert kommt nicht zurück, wie bei einem lockeren Sensor.
fault-loose-sensor-remedy = Zieh die Sensorschrauben fest und stell ihn neu ein.

fault-shaft-play = Spiel in Welle oder Sensormitnehmer
fault-shaft-play-why = Der Wert kommt nicht zurück, wie bei Spiel auf der Welle.
fault-shaft-play-remedy = Sieh nach Welle, Lagern und Mitnehmer des Sensors.

fault-slots-at-end = Sensor am Ende seiner Langlöcher
fault-slots-at-end-why = Der Sensor lässt sich nicht weit genug drehen.
fault-slots-at-end-remedy = Finde heraus, warum so viel nötig ist, bevor etwas gefeilt wird.

fault-tang-wrong-side = Sensormitnehmer auf der falschen Seite
fault-tang-wrong-side-why = Der Wert ist weit daneben, wie mit dem Mitnehmer auf der falschen Seite der Welle.
fault-tang-wrong-side-remedy = Nimm den Sensor ab und setz den Mitnehmer auf die richtige Seite.

fault-wrong-part-turned = ein anderes Teil wurde gedreht
fault-wrong-part-turned-why = Der Wert ging nicht mit. Vielleicht wurde ein anderes Teil gedreht.
fault-wrong-part-turned-remedy = Such das richtige Teil und stell das andere zurück.

fault-drifts-when-hot = Sensor driftet bei Hitze
fault-drifts-when-hot-why = Der Wert wandert mit der Wärme.
fault-drifts-when-hot-remedy = Tausch den Sensor und stell ihn neu ein.

fault-sensor-reversed = Versorgung und Masse im Stecker vertauscht
fault-sensor-reversed-why = Das Signal fällt, wo es steigen soll: Der Stecker ist vielleicht falsch belegt.
fault-sensor-reversed-remedy = Setz Versorgung und Masse auf ihre eigenen Pins.

fault-resistive-ground = schlechte Sensormasse
fault-resistive-ground-why = Am Massekabel des Sensors scheint Spannung verloren zu gehen.
fault-resistive-ground-remedy = Setz das Massekabel oder seine Verbindung instand.

fault-open-ground = Sensormasse unterbrochen
fault-open-ground-why = Das Massekabel des Sensors ist vielleicht unterbrochen.
fault-open-ground-remedy = Setz das Massekabel instand.

fault-open-supply = Sensorversorgung unterbrochen
fault-open-supply-why = Beim Sensor scheint keine Versorgung anzukommen.
fault-open-supply-remedy = Setz das Versorgungskabel instand.

fault-resistive-supply = schlechtes Versorgungskabel
fault-resistive-supply-why = Am Versorgungskabel scheint Spannung verloren zu gehen.
fault-resistive-supply-remedy = Setz das Versorgungskabel oder seine Verbindung instand.

fault-open-signal = Signalkabel unterbrochen
fault-open-signal-why = Das Signalkabel ist hinter dem Stecker vielleicht unterbrochen.
fault-open-signal-remedy = Setz das Signalkabel instand.

fault-signal-shorted = Signalkabel mit Kurzschluss
fault-signal-shorted-why = Das Signal steht still, wie bei einem Kurzschluss.
fault-signal-shorted-remedy = Such, wo das Signalkabel ein anderes berührt.

fault-corroded-plug = Stecker korrodiert
fault-corroded-plug-why = Der Wert springt, wie bei einem korrodierten Stecker.
fault-corroded-plug-remedy = Reinige den Stecker und steck ihn fest, oder tausch seine Pins.

fault-chafed-loom = Kabelbaum durchgescheuert
fault-chafed-loom-why = Der Wert fällt ab und zu aus, wie bei einem durchgescheuerten Kabelbaum.
fault-chafed-loom-remedy = Such die Scheuerstelle, meist dort, wo der Lenker den Kabelbaum biegt.

fault-box-on-signal = Zusatzmodul am Signalkabel
fault-box-on-signal-why = Ein Modul am Signalkabel verbiegt den Wert.
fault-box-on-signal-remedy = Zieh das Modul ab und miss noch einmal.

fault-air-leak = Falschluft
fault-air-leak-why = Die Volt stimmen, die Drehzahl ist zu hoch: Vielleicht zieht er Falschluft.
fault-air-leak-remedy = Such das Leck: Ansaugstutzen, Schellen, Schläuche.

fault-dirty-bore = schmutzige Bohrung
fault-dirty-bore-why = Die Volt stimmen, die Drehzahl ist zu niedrig: Vielleicht ist die Bohrung schmutzig.
fault-dirty-bore-remedy = Reinige die Bohrung.

fault-valve-clearance = Ventilspiel
fault-valve-clearance-why = Die Volt stimmen: Vielleicht liegt es am Ventilspiel.
fault-valve-clearance-remedy = Prüf das Ventilspiel.

fault-air-filter = Luftfilter
fault-air-filter-why = Die Volt stimmen: Vielleicht liegt es am Luftfilter.
fault-air-filter-remedy = Reinige oder tausch den Luftfilter.

fault-spark-plug = Zündkerze
fault-spark-plug-why = Die Volt stimmen: Vielleicht liegt es an der Zündkerze.
fault-spark-plug-remedy = Tausch die Zündkerze.

fault-fuel-supply = Benzinzufuhr
fault-fuel-supply-why = Die Volt stimmen: Vielleicht liegt es am Benzin.
fault-fuel-supply-remedy = Prüf Benzin, Filter und Druck.

fault-decompressor = Dekompressor
fault-decompressor-why = Die Volt stimmen: Vielleicht liegt es am Dekompressor.
fault-decompressor-remedy = Prüf den Dekompressor.

fault-charging = Ladung
fault-charging-why = Vielleicht wird die Batterie nicht geladen.
fault-charging-remedy = Prüf Ladespannung und Regler.

fault-fuel-map = Kennfeld
fault-fuel-map-why = Die Volt stimmen: Vielleicht passt das Kennfeld nicht.
fault-fuel-map-remedy = Lade das Kennfeld, das zu Auspuff und Filter passt.

check-read-again = Sieh noch einmal aufs Messgerät. Schick jede Stelle.
check-wake-again = Weck das Steuergerät noch einmal. Dann schick die Zahl.
check-look-at-leads = Lass das Steuergerät einschlafen. Sieh nach, in welchen Kabeln die Messspitzen stecken, und steck sie richtig. Weck es. Dann schick die Zahl.
check-leads-on-battery = Rot an Batterie-Plus, Schwarz an Batterie-Minus, am Messgerät Rot in der Voltbuchse. Dann schick die Zahl.
check-look-at-meter = Sieh aufs Messgerät: Gleichspannung, richtiger Bereich, HOLD und REL aus, Rot in der Voltbuchse. Dann schick die Zahl.
check-look-at-cable = Dreh den Lenker von Anschlag zu Anschlag und beobachte den Wert. Bewegt er sich, gib dem Gaszug Spiel. Dann schick die Zahl, Lenker gerade.
check-look-at-screws = Drück mit der Hand sacht gegen den Sensor und beobachte den Wert. Zieh an, was locker ist. Dann schick die Zahl.
check-back-off-again = Dreh den Leerlaufanschlag heraus, bis nichts mehr anliegt. Dann schick die Zahl.
check-knob-out-again = Dreh den Gasgriff zu, bis der Kaltstartknopf herausspringt. Dann schick die Zahl.
check-set-it = Es sieht nur nach verstellt aus. Mach mit dem Einstellen weiter.
check-measure-supply = Lass das Steuergerät einschlafen. Messspitzen auf Versorgung und Masse. Weck es. Schick, was das Messgerät zeigt.
check-measure-ground-drop = Lass das Steuergerät einschlafen. Rot an das Massekabel des Sensors, Schwarz an Batterie-Minus. Weck es. Schick, was das Messgerät zeigt.
check-measure-battery = Lass das Steuergerät einschlafen. Rot an Batterie-Plus, Schwarz an Batterie-Minus. Schick, was das Messgerät zeigt.
check-wiggle-plug = Wackle sacht am Stecker des Sensors und beobachte den Wert. Springt er?
check-watch-it-wake = Lass das Steuergerät einschlafen und weck es wieder. Summt die Pumpe, oder geht eine Lampe oder die Anzeige an?
check-unplug-and-look = Lass das Steuergerät einschlafen. Zieh den Stecker des Sensors ab; die Messspitzen bleiben auf der Seite des Kabelbaums, an Versorgung und Masse. Weck es. Wieder nahe fünf Volt? Dann einschlafen lassen und wieder einstecken.
check-look-at-lever = Gas zu, Hände weg. Liegt der Hebel am kleinen versiegelten Anschlag an, oder hält ihn etwas knapp davor?
check-measure-track = Stecker ab, Bahn in Ohm über den ganzen Weg messen: Springt etwas?
check-trace-wires = Kabel des Sensors unter Last verfolgen: Versorgung, Masse, Signal.
check-clean-bore = Drosselklappengehäuse ab: Bohrung und Klappe reinigen, Sitz ansehen.
check-read-again-name = Noch einmal ablesen
check-wake-again-name = Noch einmal wecken
check-look-at-leads-name = Messspitzen
check-look-at-meter-name = Messgerät
check-look-at-cable-name = Gaszug
check-look-at-screws-name = Sensorschrauben
check-back-off-again-name = Leerlaufanschlag, noch einmal
check-knob-out-again-name = Kaltstartknopf, noch einmal
check-set-it-name = Weiter einstellen
check-measure-supply-name = Versorgung
check-measure-ground-drop-name = Spannungsabfall Masse
check-measure-battery-name = Batterie
check-wiggle-plug-name = Am Stecker wackeln
check-watch-it-wake-name = Beim Wecken zusehen
check-unplug-and-look-name = Versorgung ohne Sensor
check-look-at-lever-name = Hebel am Anschlag
check-measure-track-name = Sensorbahn in Ohm
check-trace-wires-name = Kabel verfolgen
check-clean-bore-name = Bohrung reinigen

answer-wiggle-steady = Er bleibt ruhig
answer-wiggle-jumps = Er springt
answer-wiggle-dont-know = Kann ich nicht sagen
answer-wake-signs-signs = Ja, es wacht auf
answer-wake-signs-nothing = Nichts tut sich
answer-wake-signs-dont-know = Kann ich nicht sagen
answer-supply-unplugged-comes-back = Wieder nahe fünf
answer-supply-unplugged-still-off = Immer noch daneben
answer-supply-unplugged-dont-know = Kann ich nicht sagen
answer-lever-rest-on-stop = Er liegt an
answer-lever-rest-held = Etwas hält ihn
answer-lever-rest-dont-know = Kann ich nicht sagen

call-unknown-cause = Keine bekannte Ursache erklärt die Messwerte.
call-not-for-an-owner = Die wahrscheinlichste Ursache kann ein Fahrer nicht selbst beheben.
call-nothing-left = Alles, was ein Fahrer prüfen kann, ist geprüft, und die Messwerte stimmen noch nicht.
call-look-alike = Mehrere Ursachen sehen am Messgerät gleich aus; ein Mensch muss sie unterscheiden.

reason-fault-lamp = Spannungen richtig, Störungslampe an bei laufendem Motor: Das Steuergerät sieht etwas anderes als das Messgerät. Fehlercodes lesen; Signalleitung und Stecker.
reason-fault-lamp-owner = Die Lampe sagt, dass das Steuergerät einen Fehler sieht. Das muss zuerst ausgelesen werden.
