# Les mots des causes de content/faults et des contrôles qui les trouvent, pour les clients et pour le poste.
# fault-<id> : son nom ; fault-<id>-why : ce qui nous y fait penser, dit avant le contrôle ; fault-<id>-remedy : ce qui répare.
# check-<id> : quoi faire ou répondre ; answer-<question>-<réponse> : les boutons ; call-<motif> : pourquoi une personne est appelée, pour le poste.

fault-nothing-wrong = rien d'anormal
fault-nothing-wrong-why = Les valeurs sont celles d'une machine en ordre.
fault-nothing-wrong-remedy = Rien à réparer. Continue.

fault-sensor-mis-set = capteur déréglé
fault-sensor-mis-set-why = Les valeurs sont celles d'un capteur simplement déréglé.
fault-sensor-mis-set-remedy = Règle le capteur en suivant les étapes.

fault-mistyped = valeur mal tapée ou mal lue
fault-mistyped-why = Cette valeur ne va pas avec les précédentes. Un chiffre a pu glisser.
fault-mistyped-remedy = Relis le multimètre et envoie chaque chiffre.

fault-unknown = une cause que nous ne connaissons pas
fault-unknown-why = Aucune cause connue de nous ne donne ces valeurs.
fault-unknown-remedy = Une personne doit regarder.

fault-leads-swapped = pointes inversées
fault-leads-swapped-why = C'est ce qu'affiche le multimètre quand la rouge et la noire sont inversées.
fault-leads-swapped-remedy = Rouge sur le fil de signal, noire sur le fil de masse.

fault-red-on-supply = pointe rouge sur le fil d'alimentation
fault-red-on-supply-why = C'est ce qu'affiche le multimètre quand la pointe rouge est sur le fil d'alimentation.
fault-red-on-supply-remedy = Mets la rouge sur le fil de signal.

fault-black-on-supply = pointe noire sur le fil d'alimentation
fault-black-on-supply-why = C'est ce qu'affiche le multimètre quand la pointe noire est sur le fil d'alimentation.
fault-black-on-supply-remedy = Mets la noire sur le fil de masse.

fault-red-on-supply-black-on-signal = rouge sur l'alimentation, noire sur le signal
fault-red-on-supply-black-on-signal-why = C'est ce qu'affiche le multimètre avec la rouge sur le fil d'alimentation et la noire sur le fil de signal.
fault-red-on-supply-black-on-signal-remedy = Rouge sur le fil de signal, noire sur le fil de masse.

fault-red-on-ground-black-on-supply = rouge sur la masse, noire sur l'alimentation
fault-red-on-ground-black-on-supply-why = C'est ce qu'affiche le multimètre avec la rouge sur le fil de masse et la noire sur le fil d'alimentation.
fault-red-on-ground-black-on-supply-remedy = Rouge sur le fil d'alimentation, noire sur le fil de masse.

fault-leads-on-one-pin = les deux pointes sur un même fil
fault-leads-on-one-pin-why = C'est ce qu'affiche le multimètre quand les deux pointes sont sur un même fil.
fault-leads-on-one-pin-remedy = Rouge sur le fil de signal, noire sur le fil de masse.

fault-probe-not-touching = une aiguille sans contact
fault-probe-not-touching-why = C'est ce qu'affiche le multimètre quand une aiguille ne touche pas le métal.
fault-probe-not-touching-remedy = Pousse les deux aiguilles le long du joint de fil jusqu'au contact.

fault-pin-slips = une aiguille qui glisse
fault-pin-slips-why = La valeur va et vient, comme avec une aiguille qui glisse.
fault-pin-slips-remedy = Cale les deux aiguilles et attache les cordons pour que rien ne tire.

fault-battery-wire-probed = pointe rouge sur un fil de batterie
fault-battery-wire-probed-why = C'est la tension de la batterie. Ce capteur n'en reçoit jamais autant.
fault-battery-wire-probed-remedy = Mets la rouge sur le fil de signal.

fault-meter-on-ac = multimètre en volts alternatifs
fault-meter-on-ac-why = Un multimètre en alternatif affiche ce genre de valeurs.
fault-meter-on-ac-remedy = Tourne le sélecteur sur volts continus.

fault-meter-range = multimètre sur le mauvais calibre
fault-meter-range-why = Le calibre est trop petit ou trop grossier pour cette valeur.
fault-meter-range-remedy = Prends le calibre qui affiche la valeur avec le plus de décimales.

fault-meter-on-ohms = multimètre en ohms
fault-meter-on-ohms-why = C'est ce qu'affiche un multimètre en ohms sur un fil sous tension.
fault-meter-on-ohms-remedy = Tourne le sélecteur sur volts continus.

fault-meter-battery-weak = pile du multimètre faible
fault-meter-battery-weak-why = Une pile faible dans le multimètre rend chaque valeur trop haute.
fault-meter-battery-weak-remedy = Mets une pile neuve dans le multimètre.

fault-red-in-current-jack = pointe rouge dans la borne des ampères
fault-red-in-current-jack-why = C'est ce qu'affiche le multimètre quand la rouge est dans la borne des ampères.
fault-red-in-current-jack-remedy = Branche la rouge dans la borne des volts. Vérifie le fusible du multimètre.

fault-meter-hold = HOLD enfoncé sur le multimètre
fault-meter-hold-why = La valeur ne bouge plus, comme avec HOLD enfoncé.
fault-meter-hold-remedy = Coupe HOLD.

fault-meter-relative = REL enfoncé sur le multimètre
fault-meter-relative-why = La valeur est décalée d'autant à chaque fois, comme avec REL enfoncé.
fault-meter-relative-remedy = Coupe REL.

fault-meter-min-max = MIN/MAX en marche sur le multimètre
fault-meter-min-max-why = Le multimètre semble garder sa valeur la plus haute.
fault-meter-min-max-remedy = Coupe MIN/MAX.

fault-meter-auto-off = multimètre éteint tout seul
fault-meter-auto-off-why = Un écran vide, c'est le plus souvent un multimètre qui s'est éteint tout seul.
fault-meter-auto-off-remedy = Rallume le multimètre.

fault-unit-asleep = calculateur endormi
fault-unit-asleep-why = C'est ce qu'affiche le multimètre quand le calculateur dort.
fault-unit-asleep-remedy = Réveille-le.

fault-no-power = calculateur sans courant
fault-no-power-why = Le calculateur ne semble pas se réveiller.
fault-no-power-remedy = Regarde coupe-circuit, clé, fusible et relais.

fault-supply-low = alimentation du capteur trop basse
fault-supply-low-why = Le capteur reçoit moins de tension qu'il ne faut.
fault-supply-low-remedy = Cherche pourquoi le calculateur en donne trop peu.

fault-supply-high = alimentation du capteur trop haute
fault-supply-high-why = Le capteur reçoit plus de tension qu'il ne faut.
fault-supply-high-remedy = Cherche pourquoi le calculateur en donne trop.

fault-battery-flat = batterie trop basse
fault-battery-flat-why = La batterie est peut-être trop basse pour ce travail.
fault-battery-flat-remedy = Charge la batterie, laisse-la reposer et recommence.

fault-brown-out = tension qui s'affaisse pendant l'éveil
fault-brown-out-why = La tension semble s'affaisser pendant que le calculateur est réveillé.
fault-brown-out-remedy = Charge la batterie, et laisse le calculateur réveillé moins longtemps.

fault-tight-cable = câble d'accélérateur trop tendu
fault-tight-cable-why = Un câble tendu tient les gaz un peu ouverts, et cela se voit ainsi.
fault-tight-cable-remedy = Donne son jeu au câble, guidon droit et aux deux butées.

fault-fast-idle-on = démarrage à froid resté enclenché
fault-fast-idle-on-why = La valeur est celle d'un bouton de démarrage à froid encore enfoncé.
fault-fast-idle-on-remedy = Referme bien la poignée jusqu'à ce que le bouton ressorte.

fault-knob-stays-in = bouton de démarrage à froid qui reste enfoncé
fault-knob-stays-in-why = Le bouton ne semble pas ressortir.
fault-knob-stays-in-remedy = Dégrippe le bouton et son ressort.

fault-stop-not-backed-off = butée de ralenti encore en appui
fault-stop-not-backed-off-why = La valeur n'a pas baissé comme il le fait quand la butée de ralenti est libre.
fault-stop-not-backed-off-remedy = Dévisse la butée de ralenti jusqu'à ce que rien n'appuie plus.

fault-idle-stop-never-bore = butée de ralenti trop dévissée
fault-idle-stop-never-bore-why = La valeur ne baisse peut-être pas parce que la butée de ralenti n'a jamais appuyé.
fault-idle-stop-never-bore-remedy = Règle la butée de ralenti en suivant les étapes.

fault-carbon-in-bore = calamine dans l'alésage
fault-carbon-in-bore-why = La calamine peut tenir les gaz ouverts comme une butée.
fault-carbon-in-bore-remedy = Nettoie l'alésage et le papillon, puis règle de nouveau.

fault-factory-stop-turned = butée d'usine tournée
fault-factory-stop-turned-why = La butée propre du papillon a peut-être été tournée.
fault-factory-stop-turned-remedy = L'atelier règle la butée d'usine selon sa propre méthode.

fault-plate-wedged = papillon tordu ou coincé
fault-plate-wedged-why = Le papillon ne semble pas se fermer.
fault-plate-wedged-remedy = Dépose le corps de papillon et regarde le papillon et son axe.

fault-wide-open-not-reached = gaz qui n'ouvrent pas en grand
fault-wide-open-not-reached-why = Les gaz ne semblent pas aller jusqu'au bout.
fault-wide-open-not-reached-remedy = Reprends le jeu du câble et regarde la butée de pleins gaz.

fault-worn-track-near-idle = piste du capteur usée près du ralenti
fault-worn-track-near-idle-why = Une valeur qui saute près du ralenti, c'est la marque d'une piste usée.
fault-worn-track-near-idle-remedy = Remplace le capteur et règle-le.

fault-worn-track-elsewhere = piste du capteur usée plus haut
fault-worn-track-elsewhere-why = Un saut à une ouverture donnée, c'est la marque d'une piste usée.
fault-worn-track-elsewhere-remedy = Remplace le capteur et règle-le.

fault-loose-sensor = vis du capteur desserrées
fault-loose-sensor-why = La valeur ne revient pas, comme avec un capteur desserré.
fault-loose-sensor-remedy = Serre les vis du capteur et règle-le de nouveau.

fault-shaft-play = jeu dans l'axe ou l'entraînement du capteur
fault-shaft-play-why = La valeur ne revient pas, comme avec du jeu sur l'axe.
fault-shaft-play-remedy = Regarde l'axe, ses paliers et l'entraînement du capteur.

fault-slots-at-end = capteur au bout de ses lumières
fault-slots-at-end-why = Le capteur ne peut pas tourner assez loin.
fault-slots-at-end-remedy = Cherche pourquoi il en faut tant avant de limer quoi que ce soit.

fault-tang-wrong-side = entraînement du capteur du mauvais côté
fault-tang-wrong-side-why = La valeur est très loin, comme avec l'entraînement du mauvais côté de l'axe.
fault-tang-wrong-side-remedy = Dépose le capteur et place son entraînement du bon côté.

fault-wrong-part-turned = une autre pièce a été tournée
fault-wrong-part-turned-why = La valeur n'a pas suivi. Une autre pièce a peut-être été tournée.
fault-wrong-part-turned-remedy = Trouve la bonne pièce, et remets l'autre comme avant.

fault-drifts-when-hot = capteur qui dérive à chaud
fault-drifts-when-hot-why = La valeur bouge avec la chaleur.
fault-drifts-when-hot-remedy = Remplace le capteur et règle-le.

fault-sensor-reversed = alimentation et masse inversées dans le connecteur
fault-sensor-reversed-why = Le signal descend là où il devrait monter : le connecteur est peut-être câblé à l'envers.
fault-sensor-reversed-remedy = Remets alimentation et masse sur leurs broches.

fault-resistive-ground = mauvaise masse du capteur
fault-resistive-ground-why = Le fil de masse du capteur semble perdre de la tension.
fault-resistive-ground-remedy = Répare le fil de masse ou son raccord.

fault-open-ground = masse du capteur coupée
fault-open-ground-why = Le fil de masse du capteur est peut-être coupé.
fault-open-ground-remedy = Répare le fil de masse.

fault-open-supply = alimentation du capteur coupée
fault-open-supply-why = Aucune alimentation ne semble arriver au capteur.
fault-open-supply-remedy = Répare le fil d'alimentation.

fault-resistive-supply = mauvais fil d'alimentation
fault-resistive-supply-why = Le fil d'alimentation semble perdre de la tension.
fault-resistive-supply-remedy = Répare le fil d'alimentation ou son raccord.

fault-open-signal = fil de signal coupé
fault-open-signal-why = Le fil de signal est peut-être coupé derrière le connecteur.
fault-open-signal-remedy = Répare le fil de signal.

fault-signal-shorted = fil de signal en court-circuit
fault-signal-shorted-why = Le signal ne bouge plus, comme avec un court-circuit.
fault-signal-shorted-remedy = Cherche où le fil de signal en touche un autre.

fault-corroded-plug = connecteur corrodé
fault-corroded-plug-why = La valeur saute, comme avec un connecteur corrodé.
fault-corroded-plug-remedy = Nettoie le connecteur et enfonce-le bien, ou remplace ses broches.

fault-chafed-loom = faisceau usé par frottement
fault-chafed-loom-why = La valeur se coupe de temps en temps, comme avec un faisceau usé.
fault-chafed-loom-remedy = Cherche l'endroit usé, le plus souvent là où le guidon plie le faisceau.

fault-box-on-signal = boîtier additionnel sur le fil de signal
fault-box-on-signal-why = Un boîtier sur le fil de signal fausse la valeur.
fault-box-on-signal-remedy = Débranche le boîtier et mesure de nouveau.

fault-air-leak = prise d'air
fault-air-leak-why = Les volts sont bons et le régime est trop haut : il y a peut-être une prise d'air.
fault-air-leak-remedy = Cherche la fuite : pipe d'admission, colliers, durites.

fault-dirty-bore = alésage sale
fault-dirty-bore-why = Les volts sont bons et le régime est trop bas : l'alésage est peut-être sale.
fault-dirty-bore-remedy = Nettoie l'alésage.

fault-valve-clearance = jeu aux soupapes
fault-valve-clearance-why = Les volts sont bons : le jeu aux soupapes est peut-être en cause.
fault-valve-clearance-remedy = Contrôle le jeu aux soupapes.

fault-air-filter = filtre à air
fault-air-filter-why = Les volts sont bons : le filtre à air est peut-être en cause.
fault-air-filter-remedy = Nettoie ou remplace le filtre à air.

fault-spark-plug = bougie
fault-spark-plug-why = Les volts sont bons : la bougie est peut-être en cause.
fault-spark-plug-remedy = Remplace la bougie.

fault-fuel-supply = arrivée d'essence
fault-fuel-supply-why = Les volts sont bons : l'essence est peut-être en cause.
fault-fuel-supply-remedy = Contrôle essence, filtre et pression.

fault-decompressor = décompresseur
fault-decompressor-why = Les volts sont bons : le décompresseur est peut-être en cause.
fault-decompressor-remedy = Contrôle le décompresseur.

fault-charging = charge
fault-charging-why = La batterie n'est peut-être pas rechargée.
fault-charging-remedy = Contrôle la tension de charge et le régulateur.

fault-fuel-map = cartographie
fault-fuel-map-why = Les volts sont bons : la cartographie ne convient peut-être pas.
fault-fuel-map-remedy = Charge la cartographie qui va avec l'échappement et le filtre.

check-read-again = Regarde encore le multimètre. Envoie chaque chiffre.
check-wake-again = Réveille encore le calculateur. Puis envoie la valeur.
check-look-at-leads = Laisse le calculateur se rendormir. Regarde dans quels fils sont les aiguilles, et remets-les comme il faut. Réveille-le. Puis envoie la valeur.
check-leads-on-battery = Rouge sur le plus de la batterie, noire sur le moins ; au multimètre, rouge dans la borne des volts. Puis envoie la valeur.
check-look-at-meter = Regarde le multimètre : volts continus, bon calibre, HOLD et REL coupés, rouge dans la borne des volts. Puis envoie la valeur.
check-look-at-cable = Tourne le guidon d'une butée à l'autre et regarde la valeur. Si elle bouge, donne du jeu au câble. Puis envoie la valeur, guidon droit.
check-look-at-screws = Pousse doucement le capteur à la main et regarde la valeur. Serre ce qui est desserré. Puis envoie la valeur.
check-back-off-again = Dévisse la butée de ralenti jusqu'à ce que rien n'appuie plus. Puis envoie la valeur.
check-knob-out-again = Referme bien la poignée pour que le bouton de démarrage à froid ressorte. Puis envoie la valeur.
check-set-it = Il semble seulement déréglé. Continue le réglage.
check-measure-supply = Laisse le calculateur se rendormir. Aiguilles sur alimentation et masse. Réveille-le. Envoie ce qu'affiche le multimètre.
check-measure-ground-drop = Laisse le calculateur se rendormir. Rouge sur le fil de masse du capteur, noire sur le moins de la batterie. Réveille-le. Envoie ce qu'affiche le multimètre.
check-measure-battery = Laisse le calculateur se rendormir. Rouge sur le plus de la batterie, noire sur le moins. Envoie ce qu'affiche le multimètre.
check-wiggle-plug = Remue doucement le connecteur du capteur et regarde la valeur. Saute-t-elle ?
check-watch-it-wake = Laisse le calculateur se rendormir, puis réveille-le. La pompe ronronne-t-elle, ou un voyant ou l'écran s'allume-t-il ?
check-unplug-and-look = Laisse le calculateur se rendormir. Débranche le capteur ; les aiguilles restent côté faisceau, sur alimentation et masse. Réveille-le. De nouveau près de cinq volts ? Ensuite laisse-le se rendormir et rebranche.
check-look-at-lever = Gaz fermé, mains retirées. Le levier repose-t-il sur la petite butée scellée, ou quelque chose le retient-il juste avant ?
check-measure-track = Connecteur débranché, mesurer la piste en ohms sur toute sa course : un saut ?
check-trace-wires = Suivre les fils du capteur en charge : alimentation, masse, signal.
check-clean-bore = Corps de papillon déposé : nettoyer alésage et papillon, regarder le siège.
check-read-again-name = Relire
check-wake-again-name = Réveiller à nouveau
check-look-at-leads-name = Aiguilles
check-look-at-meter-name = Multimètre
check-look-at-cable-name = Câble des gaz
check-look-at-screws-name = Vis du capteur
check-back-off-again-name = Butée de ralenti, à nouveau
check-knob-out-again-name = Bouton sorti, à nouveau
check-set-it-name = Continuer le réglage
check-measure-supply-name = Alimentation
check-measure-ground-drop-name = Chute de masse
check-measure-battery-name = Batterie
check-wiggle-plug-name = Bouger le connecteur
check-watch-it-wake-name = Regarder le réveil
check-unplug-and-look-name = Alimentation sans capteur
check-look-at-lever-name = Levier sur sa butée
check-measure-track-name = Piste en ohms
check-trace-wires-name = Suivre les fils
check-clean-bore-name = Nettoyer l'alésage

answer-wiggle-steady = Elle ne bouge pas
answer-wiggle-jumps = Elle saute
answer-wiggle-dont-know = Je ne peux pas dire
answer-wake-signs-signs = Oui, il se réveille
answer-wake-signs-nothing = Rien ne se passe
answer-wake-signs-dont-know = Je ne peux pas dire
answer-supply-unplugged-comes-back = De nouveau près de cinq
answer-supply-unplugged-still-off = Toujours faux
answer-supply-unplugged-dont-know = Je ne peux pas dire
answer-lever-rest-on-stop = Il repose dessus
answer-lever-rest-held = Quelque chose le retient
answer-lever-rest-dont-know = Je ne peux pas dire

call-unknown-cause = Aucune cause connue n'explique les mesures.
call-not-for-an-owner = La cause la plus probable n'est pas à réparer par un client.
call-nothing-left = Tous les contrôles qu'un client peut faire sont faits, et les mesures ne vont toujours pas.
call-look-alike = Plusieurs causes se ressemblent au multimètre ; une personne doit les départager.

reason-fault-lamp = Tensions justes, voyant de panne allumé moteur en marche : le calculateur voit autre chose que le multimètre. Lire ses codes ; fil de signal et connecteur.
reason-fault-lamp-owner = Le voyant dit que le calculateur voit une panne. Il faut d'abord la lire.
