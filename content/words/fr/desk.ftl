# Ce qui passe entre un client et le poste de l'atelier. $name est un nom affiché ; $text est ce que quelqu'un a écrit, tel quel.

## Au client

too-fast = C'est plus vite que je ne peux suivre. Attends une minute, puis renvoie le dernier message.
called-already = Une personne de l'atelier est au courant. Elle voit tout ce que tu envoies.
called-taken = { $name }, de l'atelier, voit cela maintenant.
called-closed-until = L'atelier est fermé. Ton appel passera en premier : { $when }.
called-way-back = "stop" remet tout comme c'était.
called-put-back = Tout remettre comme c'était
held-by = { $name }, de l'atelier, s'en occupe. Ce que tu écris lui parvient.
taken-by = { $name }, de l'atelier, est avec toi maintenant. Ce que tu écris lui parvient.
passed-on = { $name } te confie à quelqu'un d'autre de l'atelier, qui t'écrira ici.
staff-says = { $name } (atelier) : { $text }
staff-sends-picture = { $name } (atelier) a envoyé une photo.
asked-by = { $name } (atelier) demande une mesure. { $measure } :
asked-question-by = { $name } (atelier) demande :
asked-noted = { $shown }. { $name } le voit.
asked-answered = Merci. { $name } le voit.
given-back = { $name } te rend au guide. Tu parles de nouveau au programme.
given-back-fresh = D'abord le courant et les aiguilles, puis une valeur fraîche.
closed-by = { $name }, de l'atelier, a clos ce dossier.
closed-not-rideable = Pont retiré, aiguilles retirées. Ne démarre pas et ne roule pas ainsi.

## La fiche du dossier

desk-card = Dossier { $id }, { $state }
desk-card-flag = Alerte en cours. { $flag }
desk-state-waiting = en attente depuis { $since }
desk-state-taken = pris par { $name }
desk-state-returned = rendu ({ $since })
desk-state-closed = clos ({ $since })
desk-erased = Dossier { $id } : le client a fait effacer tout ce qui le concerne. C'est terminé.
desk-rideable = Serré et réglé, aiguilles retirées : peut démarrer.
desk-not-rideable = NE PAS démarrer, NE PAS rouler en l'état.
desk-machine-power = { $power } ; { $probes }.
desk-machine-parts = Capteur { $sensor } ; { $stop } ; { $knob }.
desk-machine-engine = Moteur { $engine } ; liste de démarrage : { $confirmed } sur { $items } confirmés.
desk-awake = Calculateur réveillé, pont en place depuis { $since }
desk-asleep = Calculateur endormi, pont retiré
desk-probes-none = pas d'aiguilles
desk-probes-unsure = aiguilles peut-être encore en place
desk-probes-signal = aiguilles sur signal et masse
desk-probes-supply = aiguilles sur alimentation et masse
desk-probes-ground = aiguilles sur masse et moins de la batterie
desk-probes-battery = pointes sur la batterie
desk-sensor-tight = serré
desk-sensor-loose = DESSERRÉ
desk-stop-set = butée de ralenti en place
desk-stop-off = butée de ralenti DÉVISSÉE
desk-stop-off-by = butée de ralenti DÉVISSÉE, comptée : { $turns } { $turns ->
    [one] tour
   *[other] tours
 }
desk-knob-set = bouton de démarrage à froid en place
desk-knob-off = bouton de démarrage à froid DÉVISSÉ
desk-knob-off-by = bouton de démarrage à froid DÉVISSÉ, compté : { $clicks } { $clicks ->
    [one] cran
   *[other] crans
 }
desk-engine-running = EN MARCHE
desk-engine-hot = arrêté, a tourné
desk-engine-cold = arrêté, n'a pas encore tourné
desk-no-set-up-open = Aucun réglage en cours.
desk-who = Client : { $name } sur { $platform }
desk-where = { $machine }, { $at }, depuis { $since }. Code { $code }.
desk-at = à "{ $stage }"
desk-at-part = à "{ $stage }", partie { $part } sur { $parts }
desk-about = { $machine }, code { $code }
desk-answer = { $question } : { $answer }
desk-own-words = A écrit : { $text }
desk-head-readings = Mesures :
desk-head-tried = Essayé :
desk-head-causes = Probable :
desk-reading = { $measure } : { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure } : { $shown }, { $result } ({ $limits } ; { $source })
desk-reading-plain = { $measure } : { $shown }
desk-first = { $measure }, première
desk-as-found = { $measure }, à l'arrivée
desk-asked-for = { $measure }, demandé
desk-struck = { $measure } : "{ $typed }", rayé : { $why }
desk-why-asleep = endormi
desk-why-implausible = incohérent
desk-why-unclear = trop grossier pour juger
desk-why-asked = se promène
desk-why-doubted = redemandé
desk-figure = { $value } { $unit }
desk-figures = { $low } à { $high } { $unit }
desk-overload = hors calibre
desk-nothing = rien d'affiché
desk-limits = { $low } à { $high }
desk-limits-high = { $high } ou moins
desk-limits-low = { $low } ou plus
desk-result-pass = correct
desk-result-low = trop bas
desk-result-high = trop haut
desk-result-unclear = trop grossier pour juger
desk-result-implausible = incohérent
desk-result-accepted = accepté par { $name }
desk-source-manual = manuel
desk-source-workshop = atelier
desk-source-common-practice = usage courant
desk-source-owner = valeur du client
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction }, { $amount } { $unit } : de { $before } à { $after }
desk-unit-turn = { $amount ->
    [one] tour
   *[other] tours
 }
desk-unit-click = { $amount ->
    [one] cran
   *[other] crans
 }
desk-unit-nudge = { $amount ->
    [one] poil
   *[other] poils
 }
desk-unit-mm = mm
desk-direction-in = en vissant
desk-direction-out = en dévissant
desk-direction-clockwise = sens horaire
desk-direction-counter-clockwise = sens antihoraire
desk-direction-more = plus de jeu
desk-direction-less = moins de jeu
desk-checked = { $check }
desk-cause = { $cause } : { $share } %
desk-cautions = Consignes de sécurité confirmées : { $cautions }
desk-reason = Motif de l'appel : { $reason }
desk-job = Ordre { $job }
desk-history-remark = { $name } a noté : { $note }
desk-history-accepted = { $name } a accepté : { $note }
desk-history-cleared = { $name } a déclaré terminé : { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure } : { $value }. { $why }

desk-take = Prendre
desk-take-over = Reprendre à { $name }
desk-give-back = Rendre
desk-ask = Demander une mesure
desk-check = Envoyer un contrôle
desk-close = Clore
desk-help = Aide

## Dans un dossier

desk-owner-said = Client { $name } : { $text }
desk-owner-changed = Client { $name } a modifié un message : { $text }
desk-owner-picture = Client { $name } a envoyé une photo.
desk-owner-picture-with = Client { $name } a envoyé une photo : { $text }
desk-owner-pressed = Client { $name } a appuyé sur : { $choice }
desk-read-along = { $measure } : { $shown } serait { $result } ({ $limits }).
desk-taken = { $name } l'a pris. Ce que tu écris ici va au client. "/aide" donne le reste.
desk-taken-from = { $name } l'a repris à { $from }. Ce que tu écris ici va au client.
desk-yours = Tu l'as déjà.
desk-held-by = { $name } l'a pris.
desk-take-first = Personne ne l'a pris. Prends-le d'abord.
desk-not-sent = Personne ne l'a encore pris : rien n'est allé au client. Prends-le d'abord.
desk-too-old = C'est trop ancien. Le client peut rappeler.
desk-passed = { $name } passe le dossier { $id }. Qui le prend ?
desk-passed-to = { $name } passe le dossier { $id } à { $to }.
desk-returned = { $name } l'a rendu. Le programme continue.
desk-closed = { $name } l'a clos.
desk-closed-cause = { $name } l'a clos. Cause : { $cause }
desk-closed-already = Il est déjà clos.
desk-which-cause = Quelle était la cause ?
desk-asked = Demandé : { $measure }
desk-ask-which = Quelle mesure ? Appuie sur une, ou écris "/demander complètement fermé".
desk-ask-unknown = Je ne connais pas cette mesure. Je peux demander celles-ci :
desk-ask-running = Celle-là a sa propre étape : "/aller" pour y aller, puis rends le dossier.
desk-asked-answer = { $check } Réponse : { $answer }
desk-check-which = Quel contrôle ? Appuie sur un.
desk-check-unknown = Je ne connais pas ce contrôle. Je peux envoyer ceux-ci :
desk-check-sent = Envoyé : { $check }
desk-accept-reason = Donne une raison : "/accepter permis par le manuel".
desk-accept-loose = Le capteur est desserré et bougera. Fais-le d'abord serrer et mesurer de nouveau.
desk-accept-none = Il n'y a aucune valeur à accepter.
desk-accepted = { $measure } : { $shown } accepté par { $name }. La fiche le dira.
desk-stages = Aller où ? "/aller" et l'une de : { $stages }.
desk-goes-on-at = Une fois rendu, cela continue à "{ $stage }".
desk-goes-on-at-after = Une fois rendu, cela continue à "{ $stage }" ; la liste de démarrage vient avant, dès "{ $first }".
desk-no-set-up = Aucun réglage en cours.
desk-flag-up = Une alerte est en cours. { $flag } Assure-toi que c'est fini, puis écris "/fini" et comment tu le sais.
desk-no-flag = Aucune alerte en cours.
desk-withdrawn = Cette procédure est retirée, et aucune autre n'a cette étape : le programme ne peut pas continuer. Ferme le dossier.
desk-clear-reason = Écris comment tu t'en es assuré : "/fini fuite réparée, sec".
desk-cleared = { $name } a déclaré que c'est fini.
desk-noted = Noté. Cela reste au poste.
desk-note-empty = Écris-le à la suite : "/note papillon sans doute tordu".
desk-job-noted = Ordre { $job }.
desk-job-none = Plus de numéro d'ordre.
desk-edited = Un message modifié n'est pas renvoyé. Écris-en un nouveau.
desk-start = Les liens de départ sont pour les clients.
desk-choice-unknown = Ce bouton ne fait rien ici.
desk-command-unknown = Je ne connais pas cette commande. Rien n'est allé au client. "/aide" donne la liste.
desk-case-past = Ce dossier est terminé. Le dossier actuel du client est { $id }.
desk-case-unknown = Je ne connais pas ce dossier.
desk-case-unknown-id = Je ne connais pas de dossier { $id }.
desk-unreachable = Cela n'est pas parvenu au client : { $why }
desk-unanswered = Le client attend { $name } depuis { $minutes } minutes.

desk-help-talk = Les mots simples et les photos vont au client, sous ton nom. Ce qui commence par "/" ou "." n'y va jamais.
desk-help-take = /prendre : il est à toi. /passer NOM : à quelqu'un d'autre.
desk-help-measure = /demander MESURE : le programme demande et juge. /contrôler NOM : il envoie un contrôle.
desk-help-decide = /accepter RAISON : la dernière valeur compte. /aller ÉTAPE : où cela continue. /fini COMMENT : une alerte est finie.
desk-help-end = /rendre : le programme continue. /clore CAUSE : c'est terminé, avec une fiche.
desk-help-note = /note TEXTE reste ici. /ordre NUMÉRO. /carte, /fiche, /fiche json.
desk-help-desk = Au poste, hors dossier : dossiers, chercher MOTS, fiche CODE, fermé aujourd'hui, ouvert à nouveau, tips.
desk-help-case = Dans le fil d'un dossier : prends-le, puis "/aide".

## Le poste dans son ensemble

desk-reminder = Le dossier { $id } attend depuis { $minutes } minutes. { $reason }
desk-hint = Les dossiers arrivent ici. "aide" dit ce que je sais faire.
desk-in-thread = Fais-le dans le fil du dossier. "dossiers" en donne la liste.
desk-list-none = Aucun dossier n'attend, aucun n'est en main.
desk-list-waiting = En attente : { $count }
desk-list-taken = En main : { $count }
desk-list-case = { $id } : { $name }, { $machine }, code { $code }, depuis { $since }, { $state }. { $reason }
desk-list-state-waiting = en attente
desk-list-state-taken = en main
desk-list-state-returned = rendu
desk-list-state-closed = clos
desk-found-none = Je n'ai rien trouvé pour { $text }.
desk-found-record = Fiche { $code } : { $machine }, { $result }, { $when }
desk-result-record-set = réglé
desk-result-record-right-as-found = déjà correct
desk-result-record-accepted = accepté
desk-result-record-not-set = non réglé
desk-closed-today = Fermé pour aujourd'hui.
desk-closed-today-until = Fermé pour aujourd'hui. Les clients lisent : { $when }. "ouvert à nouveau" l'annule.
desk-open-again = De nouveau selon les heures d'ouverture.
desk-summary = Fin de journée. En attente : { $waiting }, en main : { $taken }, terminés aujourd'hui : { $ended }, fiches : { $done }.
desk-record-head = Dossier { $id } : { $name }, ouvert { $opened }
desk-record-reading = { $reading } : { $value } ({ $result })
desk-record-asked = { $measure } : "{ $typed }", demandé
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = {" "}: { $note }
desk-record-cause = Cause : { $cause }
desk-did-opened = ouvert
desk-did-flagged = alerte
desk-did-cleared = { $name } a déclaré une alerte finie
desk-did-taken = { $name } l'a pris
desk-did-passed = { $name } l'a passé
desk-did-returned = { $name } l'a rendu
desk-did-closed = { $name } l'a clos
desk-did-reopened = { $name } a rappelé
desk-did-accepted = { $name } a accepté
desk-did-asked = { $name } a demandé
desk-did-checked = { $name } a envoyé un contrôle
desk-did-jumped = { $name } a choisi l'étape
desk-did-remark = { $name } a noté
desk-json = { $json }

## Pourquoi une personne est appelée

reason-asked = Le client a demandé une personne.
reason-procedure-withdrawn = La procédure a été retirée, et aucune autre n'a cette étape.
reason-meter-too-coarse = Le multimètre du client n'affiche pas assez de chiffres pour décider.
reason-factory-stop-turned = La butée d'usine du papillon a été tournée : on ne peut pas se fier à la position fermée.
reason-factory-stop-turned-owner = Alors on ne peut pas se fier à la position fermée. C'est pour une personne.
reason-factory-stop-unsure = Le client ne sait pas dire si la butée d'usine a été tournée.
reason-factory-stop-unsure-owner = Une personne t'aidera à le voir.
reason-cable-tight-at-lock = Le régime de ralenti change quand le guidon tourne : un câble ou le faisceau est trop tendu.
reason-cable-tight-at-lock-owner = Quelque chose tire sur les gaz. Il ne faut pas rouler ainsi.
reason-not-the-sensor = Le régime de ralenti n'est atteint qu'avec le signal hors de ses limites à chaud : ce n'est pas le capteur. Alésage sale, soupapes, bougie, essence ou prise d'air.
reason-not-the-sensor-owner = Cela ne vient pas du capteur. On n'y touche pas et on cherche la cause.
reason-flag-throttle-sticks = ALERTE : les gaz coincent.
reason-flag-revs-hang = ALERTE : le régime reste haut ou monte.
reason-flag-engine-wont-stop = ALERTE : le moteur ne s'arrête pas.
reason-flag-fuel-leak = ALERTE : odeur ou fuite d'essence.
reason-flag-smoke = ALERTE : fumée, feu ou vapeur.
reason-flag-hot-leads = ALERTE : cordons, pont ou batterie chauds, ou étincelles.
reason-flag-pump-runs-on = ALERTE : la pompe ne s'arrête pas.
reason-flag-unwell = ALERTE : quelqu'un se sent mal, peut-être à cause des gaz d'échappement.
reason-flag-injured = ALERTE : quelqu'un est blessé.
reason-call-unknown-cause = Aucune cause connue n'explique les mesures.
reason-call-not-for-an-owner = La cause la plus probable n'est pas à réparer par un client.
reason-call-nothing-left = Tous les contrôles qu'un client peut faire sont faits, et les mesures ne vont toujours pas.
reason-call-look-alike = Plusieurs causes se ressemblent au multimètre. Une personne doit les départager.
reason-stuck-slots-at-end = Le capteur est au bout de ses lumières et la mesure n'est pas encore bonne.
reason-stuck-moves-stop-helping = Tourner encore ne rapproche plus la mesure.
reason-stuck-too-coarse = Les pas de cette pièce sont trop grossiers pour ses limites.
desk-picture-readings = Toutes les mesures avec leurs limites.
desk-picture-approach = Les corrections de cette étape, et l'effet de chacune.
desk-picture-causes = Les causes probables.

## Les chiffres de l'atelier

report-counts = Réglages terminés : { $ended }. Dossiers clos : { $closed }.
report-stops = { $procedure } : où les clients s'arrêtent
report-times = { $procedure } : temps par étape
report-causes = Causes trouvées, par mois
report-head-stage = étape
report-head-reached = y sont arrivés
report-head-stopped = s'y sont arrêtés
report-head-quarter = un quart a mis au plus
report-head-half = la moitié
report-head-three-quarters = trois quarts (min)
report-head-cause = cause
report-picture = Image : { $file }
report-nothing = rien encore
