# Les mots du capteur papillon : throttle-sensor-<étape> dit quoi faire ; les réponses sont throttle-sensor-<question>-<réponse>.
# Donnés à chacune : $machine $wake $connector $supply $signal $ground $minutes $seconds et, pour une pièce, $part $where $tool.

throttle-sensor-complaint = Qu'est-ce qui ne va pas quand elle tourne ?
throttle-sensor-complaint-none = Rien, juste un contrôle
throttle-sensor-complaint-runs-badly = Elle tourne mal
throttle-sensor-complaint-bad-idle = Mauvais ralenti
throttle-sensor-complaint-flat-acceleration = Molle à l'accélération
throttle-sensor-complaint-hard-starting = Démarre mal

throttle-sensor-place = Moteur froid, machine sur béquille, au point mort.
    Dehors, ou là où elle pourra tourner dehors sans être déplacée.
    Tu sais où sont la clé et le coupe-circuit.
    À portée de main : multimètre, deux aiguilles fines, tournevis.

throttle-sensor-throttle-kind = Qu'est-ce qui va de la poignée au papillon ?
throttle-sensor-throttle-kind-cable = Un câble
throttle-sensor-throttle-kind-by-wire = Seulement des fils
throttle-sensor-throttle-kind-dont-know = Je ne sais pas

throttle-sensor-sensor-fixing = Comment le capteur est-il fixé ?
throttle-sensor-sensor-fixing-slotted = Vis dans des lumières
throttle-sensor-sensor-fixing-riveted = Rivets, scellé ou sans lumières
throttle-sensor-sensor-fixing-dont-know = Je ne sais pas

throttle-sensor-changed = Qu'est-ce qui a été changé en dernier ?
throttle-sensor-changed-nothing = Rien
throttle-sensor-changed-throttle-body = Papillon ou câble
throttle-sensor-changed-sensor = Le capteur
throttle-sensor-changed-exhaust-or-filter = Échappement ou filtre
throttle-sensor-changed-dont-know = Je ne sais pas

throttle-sensor-map = Avec quelle cartographie tourne-t-elle ?
throttle-sensor-map-standard = Celle d'origine
throttle-sensor-map-other = Une autre
throttle-sensor-map-dont-know = Je ne sais pas

throttle-sensor-map-figure = Quelle valeur gaz fermés le fournisseur de la cartographie donne-t-il ? Envoie-la en volts.

throttle-sensor-signal-box = Un boîtier additionnel est-il branché sur les fils du capteur ?
throttle-sensor-signal-box-none = Non
throttle-sensor-signal-box-fitted = Oui
throttle-sensor-signal-box-dont-know = Je ne sais pas

throttle-sensor-unplug-box = Débranche le boîtier et raccorde les fils comme le dit son fabricant. Il charge le signal.

throttle-sensor-codes = La machine affiche-t-elle un code défaut mémorisé ?
throttle-sensor-codes-none = Non
throttle-sensor-codes-stored = Oui

throttle-sensor-bore = Regarde derrière le papillon. L'alésage est-il propre ?
throttle-sensor-bore-clean = Propre
throttle-sensor-bore-dirty = Anneau noir ou gomme
throttle-sensor-bore-dont-know = Je ne vois pas

throttle-sensor-valves = Le jeu aux soupapes a-t-il été contrôlé à l'échéance ?
throttle-sensor-valves-in-time = Oui
throttle-sensor-valves-overdue = En retard
throttle-sensor-valves-dont-know = Je ne sais pas

throttle-sensor-altitude = Où roule-t-elle ?
throttle-sensor-altitude-below = En plaine
throttle-sensor-altitude-above = En haute montagne

throttle-sensor-tachometer = Avec quoi liras-tu le régime de ralenti ?
throttle-sensor-tachometer-have = J'ai un compte-tours
throttle-sensor-tachometer-none = Je n'en ai pas

throttle-sensor-manual-closed = Que donne ton manuel gaz fermés, butée de ralenti dévissée ? Envoie les volts du manuel, pas ceux du multimètre.
throttle-sensor-manual-idle = Que donne ton manuel au ralenti, moteur arrêté ? Envoie les volts du manuel.
throttle-sensor-manual-fast-idle = Que donne ton manuel avec le démarrage à froid enclenché ? Envoie les volts du manuel.
throttle-sensor-manual-speed = Quel régime de ralenti donne ton manuel, à chaud ?

throttle-sensor-battery = Rien d'allumé.
throttle-sensor-bench-supply = Elle n'a pas de batterie. Branche l'alimentation d'atelier, fusible en place.

throttle-sensor-knob-out = Il doit rester sorti tout seul.
throttle-sensor-free-play = Tu dois sentir un peu de jeu à la poignée avant que rien ne bouge.
throttle-sensor-bars-free = Les gaz ne doivent être tirés à aucune des deux butées.

throttle-sensor-supply-leads = Pour cela, débranche le connecteur ({ $connector }), pousse les aiguilles le long des joints de fils, puis rebranche-le. Ensuite, allume le multimètre.
throttle-sensor-supply = Écoute la pompe à essence au réveil.
throttle-sensor-pump = La pompe a-t-elle ronronné, puis cessé après quelques secondes ?
throttle-sensor-pump-stops = Elle s'est arrêtée
throttle-sensor-pump-no-pump = Je n'ai pas entendu de pompe
throttle-sensor-pump-runs-on = Elle continue de tourner
throttle-sensor-signal-leads = La noire y est déjà : seule la rouge change de place.

throttle-sensor-as-found-idle = C'est ainsi qu'elle tournait. Lâche la poignée.
throttle-sensor-as-found-snap = Laisse claquer.
throttle-sensor-as-found-open = Tiens-les ouverts. Si le multimètre affiche OL, passe au calibre suivant.
throttle-sensor-as-found-sweep = Reste sur ce calibre. Ouvre en quatre pas jusqu'au bout et reviens en quatre. Note chaque valeur, de fermé à fermé.
throttle-sensor-as-found-jumps = Y a-t-il eu un saut ou une chute en chemin ?
throttle-sensor-leave-alone = Tout est comme il faut. Ne touche ni au capteur ni aux vis.
throttle-sensor-only-checked = C'était le contrôle. Ici, on ne tourne rien.

throttle-sensor-factory-stop = Le papillon repose sur sa propre petite butée d'usine, scellée à la peinture. Ce n'est pas la butée de ralenti, et on n'y touche jamais. Comment est la peinture ?
throttle-sensor-factory-stop-untouched = Intacte
throttle-sensor-factory-stop-turned = Cassée, quelqu'un y a touché
throttle-sensor-factory-stop-dont-know = Je ne peux pas dire

throttle-sensor-mark = Un trait fin à cheval sur les deux pièces. Prends aussi une photo : c'est ton chemin de retour.
throttle-sensor-knob-off = Bouton sorti. Compte les crans jusqu'à ce qu'il soit libre. Combien ?
throttle-sensor-stop-off = Compte les tours jusqu'à ce qu'elle n'appuie plus. Laisse-la dans son filetage. Combien de tours ?

throttle-sensor-baseline = Gaz fermés, lâche tout. Le calibre à trois décimales.
throttle-sensor-supply-again = C'était la valeur de base. Avant qu'elle compte, encore une fois l'alimentation.
throttle-sensor-baseline-again = Attends { $seconds } secondes avant de réveiller le calculateur : il apprend alors la nouvelle position fermée.
throttle-sensor-baseline-once-more = Encore une fois : la valeur doit être la même.
throttle-sensor-idle-stop = La valeur de base est bonne. Passons au ralenti.
throttle-sensor-idle-stop-again = Encore une fois la mesure du ralenti.
throttle-sensor-snap = Deux fois. Puis lâche tout.
throttle-sensor-fast-idle = Laisse-le enfoncé pendant que tu le règles. Moteur arrêté.
throttle-sensor-release = La mesure doit revenir à celle du ralenti.
throttle-sensor-fast-idle-again = Encore une fois, pour confirmer.
throttle-sensor-release-again = Et encore une fois.
throttle-sensor-open = Tiens-les ouverts. Si le multimètre affiche OL, passe au calibre suivant.
throttle-sensor-sweep = Reste sur ce calibre. Ouvre en quatre pas jusqu'au bout et reviens en quatre. Note chaque valeur, de fermé à fermé.
throttle-sensor-jumps = Y a-t-il eu un saut ou une chute en chemin ?

throttle-sensor-sweep-jumps-smooth = Tout est régulier
throttle-sensor-sweep-jumps-jumped = Un saut ou une chute

throttle-sensor-asleep = Éteins aussi le multimètre.
throttle-sensor-leads-out = Les deux. Aucun cordon près de la chaîne ou de l'échappement.
throttle-sensor-refitted = Boîte à air, durites et tout ce que tu as démonté : remis et serré ?
throttle-sensor-latched = Le connecteur du capteur est enfoncé à fond et verrouillé ?
throttle-sensor-snaps-shut = Les gaz doivent claquer fermés, guidon droit et aux deux butées.
throttle-sensor-outdoors = La machine est dehors, l'échappement dégagé ?
throttle-sensor-kill-switch = Coupe-circuit essayé : tu l'atteins, et il bascule dans les deux sens ?
throttle-sensor-people-clear = Au point mort, sur béquille, et personne près de la chaîne, de la roue ou de l'échappement ?

throttle-sensor-start = Pouce sur le coupe-circuit.
throttle-sensor-warm-up = Laisse-la chauffer { $minutes } minutes avec le démarrage à froid.
throttle-sensor-warm-knob = Le ralenti doit devenir régulier.
throttle-sensor-idle-speed = Laisse le régime se poser.
throttle-sensor-speed-bars = Le régime de ralenti change-t-il en chemin ?
throttle-sensor-speed-bars-steady = Il reste le même
throttle-sensor-speed-bars-changes = Il change
throttle-sensor-idle-speed-again = Guidon droit.
throttle-sensor-fault-lamp = Moteur encore en marche : le voyant de panne est-il allumé, ou clignote-t-il ?
throttle-sensor-fault-lamp-off = Il est éteint
throttle-sensor-fault-lamp-lit = Allumé, ou il clignote
throttle-sensor-fault-lamp-no-lamp = Il n'y en a pas
throttle-sensor-engine-off = Ensuite, n'y touche plus : il est chaud.
throttle-sensor-warm-idle = Remets le multimètre sur le calibre à trois décimales. Maintenant la mesure du ralenti, à chaud : plus haute qu'à froid, et c'est normal.
throttle-sensor-warm-release = La mesure doit revenir à celle du ralenti à chaud.
throttle-sensor-warm-snap = Lâche tout, puis lis.
throttle-sensor-put-away = Éteins aussi le multimètre.
throttle-sensor-cover = Cache et selle remis ?
throttle-sensor-road-ready = Avant de rouler : feux, freins, câbles, plus rien de desserré. C'est bon ?

# Le nom de chaque partie du travail.
throttle-sensor-section-questions = quelques questions
throttle-sensor-section-power-and-cable = batterie et câble
throttle-sensor-section-wake-and-probe = réveil et branchement
throttle-sensor-section-as-found = son état actuel
throttle-sensor-section-baseline = la valeur de base
throttle-sensor-section-idle = ralenti et démarrage à froid
throttle-sensor-section-before-start = avant de démarrer
throttle-sensor-section-warm = à chaud, et fini

# Le nom de chaque étape, au poste et dans les chiffres de l'atelier.
throttle-sensor-complaint-name = Ce qui ne va pas
throttle-sensor-place-name = Place et outils
throttle-sensor-throttle-kind-name = Câble ou fils
throttle-sensor-sensor-fixing-name = Fixation du capteur
throttle-sensor-changed-name = Dernier changement
throttle-sensor-map-name = Cartographie
throttle-sensor-map-figure-name = Valeur de la cartographie
throttle-sensor-signal-box-name = Boîtier additionnel
throttle-sensor-unplug-box-name = Boîtier additionnel débranché
throttle-sensor-codes-name = Codes défaut
throttle-sensor-bore-name = Alésage
throttle-sensor-valves-name = Jeu aux soupapes
throttle-sensor-altitude-name = Altitude
throttle-sensor-tachometer-name = Compte-tours
throttle-sensor-manual-closed-name = Manuel : gaz fermés
throttle-sensor-manual-idle-name = Manuel : ralenti
throttle-sensor-manual-fast-idle-name = Manuel : démarrage à froid
throttle-sensor-manual-speed-name = Manuel : régime de ralenti
throttle-sensor-battery-name = Batterie
throttle-sensor-bench-supply-name = Alimentation d'atelier
throttle-sensor-knob-out-name = Bouton sorti
throttle-sensor-free-play-name = Jeu du câble
throttle-sensor-bars-free-name = Guidon d'une butée à l'autre
throttle-sensor-supply-leads-name = Aiguilles sur l'alimentation
throttle-sensor-supply-name = Alimentation
throttle-sensor-pump-name = Pompe à essence
throttle-sensor-signal-leads-name = Aiguilles sur le signal
throttle-sensor-as-found-idle-name = Tel que trouvé : ralenti
throttle-sensor-as-found-snap-name = Tel que trouvé : après claquement
throttle-sensor-as-found-open-name = Tel que trouvé : grand ouvert
throttle-sensor-as-found-sweep-name = Tel que trouvé : balayage
throttle-sensor-as-found-jumps-name = Tel que trouvé : sauts
throttle-sensor-factory-stop-name = Butée d'usine
throttle-sensor-mark-name = Repère sur le capteur
throttle-sensor-knob-off-name = Bouton dévissé
throttle-sensor-stop-off-name = Butée de ralenti dévissée
throttle-sensor-baseline-name = Valeur de base
throttle-sensor-supply-again-name = Alimentation, encore une fois
throttle-sensor-baseline-again-name = Valeur de base, encore une fois
throttle-sensor-baseline-once-more-name = Valeur de base, une troisième fois
throttle-sensor-idle-stop-name = Butée de ralenti
throttle-sensor-snap-name = Après claquement
throttle-sensor-fast-idle-name = Démarrage à froid
throttle-sensor-release-name = Après démarrage à froid
throttle-sensor-fast-idle-again-name = Démarrage à froid, encore une fois
throttle-sensor-release-again-name = Après démarrage à froid, encore une fois
throttle-sensor-idle-stop-again-name = Butée de ralenti, encore une fois
throttle-sensor-open-name = Grand ouvert
throttle-sensor-sweep-name = Balayage
throttle-sensor-jumps-name = Sauts en chemin
throttle-sensor-asleep-name = Endormi, multimètre éteint
throttle-sensor-leads-out-name = Aiguilles retirées
throttle-sensor-refitted-name = Tout remonté
throttle-sensor-latched-name = Connecteur verrouillé
throttle-sensor-snaps-shut-name = Claque en se fermant
throttle-sensor-outdoors-name = Dehors
throttle-sensor-kill-switch-name = Coupe-circuit
throttle-sensor-people-clear-name = Tous à l'écart
throttle-sensor-start-name = Démarrage
throttle-sensor-warm-up-name = Mise en température
throttle-sensor-warm-knob-name = Bouton sorti, à chaud
throttle-sensor-idle-speed-name = Régime de ralenti
throttle-sensor-speed-bars-name = Ralenti en tournant le guidon
throttle-sensor-idle-speed-again-name = Régime de ralenti, encore une fois
throttle-sensor-fault-lamp-name = Voyant de panne
throttle-sensor-engine-off-name = Moteur arrêté
throttle-sensor-warm-idle-name = Ralenti, à chaud
throttle-sensor-warm-release-name = Après démarrage à froid, à chaud
throttle-sensor-warm-snap-name = Après claquement, à chaud
throttle-sensor-put-away-name = Aiguilles retirées, multimètre éteint
throttle-sensor-cover-name = Cache et selle
throttle-sensor-road-ready-name = Prête à rouler
