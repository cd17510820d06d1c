# Ce que le programme dit lui-même dans chaque procédure. $value, $low, $high, $amount sont des chiffres ; $unit est le signe d'une unité.

greeting = Bonjour. Je suis le guide de réglage de { $workshop } : un programme, avec des gens derrière.
greeting-scope = Je guide, tu décides. Le manuel du constructeur, les règles locales et les professionnels agréés passent avant moi.
greeting-kept = Je garde ce que tu envoies { $days } jours ; toi et l'atelier pouvez le lire. "efface-moi" l'efface, "atelier" appelle quelqu'un.
menu-procedure = Que veux-tu faire ?
menu-machine = De quelle machine s'agit-il ?
set-up-opened = { $machine } : nous avançons pas à pas.

link-unknown = Ce lien mène à quelque chose que je n'ai pas.
link-replace = Tu as un réglage en cours. Le garder, ou commencer le nouveau ?
link-keep = Le garder
link-start-new = Commencer le nouveau
link-left-as-is = L'autre réglage s'arrête ici. Ce qui a été tourné reste ainsi.
withdrawn = L'atelier a retiré cette procédure : { $why }.
withdrawn-goes-on = On continue avec la bonne.

button-done = Fait
button-understood = Compris
button-skip = Passer
button-yes = Oui
button-no = Non
button-jumping = Ça saute
button-stale = Ce bouton date d'avant. Voici où nous en sommes.
button-over = C'est terminé. Voici ce que je peux faire.

ask-number = Envoie la valeur.
ask-speed = Envoie le régime de ralenti.
ask-readings = Envoie les { $count } valeurs en un seul message, dans l'ordre.

heard-question = C'est bien { $value } { $unit } ?
heard-as = { $typed } = { $value } { $unit }
send-again = Alors ce n'est pas ça.
send-all-at-once = Il me les faut toutes en un seul message, de fermé à fermé.
read-again = C'est un grand saut. Regarde encore, chaque chiffre.
read-once-more = Regarde encore une fois et envoie chaque chiffre.
came-back-differently = La mesure n'est pas revenue au même endroit.
passed-to-desk = C'est parti à l'atelier.
number-wanted = Il me faut la valeur du multimètre.
choose-one = Choisis une réponse.
confirm-wanted = Appuie sur le bouton ou écris fait quand c'est le cas.
not-yet = Prends ton temps. Appuie sur le bouton ou écris fait quand c'est le cas.
lost-reading = Seulement la valeur affichée, avec tous ses chiffres.
lost-person = Si on n'avance pas, écris atelier : quelqu'un va regarder.
picture-kept = Merci pour la photo. Je ne sais pas la lire ; une personne de l'atelier, si.
picture-passed-on = La photo est partie à l'atelier.
edited = Tu as modifié un message. Je ne suis que les nouveaux.

unclear-nothing-understood = Je n'ai pas compris.
unclear-two-meanings = Cela peut vouloir dire deux choses.
unclear-bare-figure = Il me la faut avec sa virgule, ou avec son unité.
unclear-wrong-quantity = C'est une autre unité. Mets le multimètre en volts continus.
unclear-malformed-number = Je n'arrive pas à lire la valeur. Rien que les chiffres, s'il te plaît.
unclear-sign-or-bullet = Je ne sais pas si c'est un signe moins.
unclear-bound-only = Il me faut ce que montre l'écran, tous les chiffres.
unclear-refers-back = Il me faut une mesure fraîche.
unclear-too-long = C'est trop long pour moi. Rien que la valeur, s'il te plaît.
unclear-one-number = Il me faut une seule valeur : ce qu'affiche le multimètre maintenant.
unclear-count = Il me faut un nombre.
unclear-digits = C'est trop grossier pour juger. Mets le multimètre sur le calibre qui avance par pas de { $digit }.
unclear-meter = Ce multimètre n'est pas assez fin pour le dire.

verdict-pass = { $value } { $unit }. Correct.
verdict-loose = { $value } { $unit }. Ne bouge plus.
verdict-out = { $value } { $unit }. Il faut { $low } à { $high }.
verdict-out-high = { $value } { $unit }. Il faut { $high } ou moins.
verdict-out-low = { $value } { $unit }. Il faut { $low } ou plus.
verdict-sweep-pass = La mesure monte tout du long et revient. Correct.
noted = { $value } { $unit }, noté.
loop-high = { $value }. Trop haut.
loop-low = { $value }. Trop bas.

odd-value = { $value } { $unit }, cela ne colle pas.
odd-range = { $low } à { $high } { $unit } : la mesure se promène.
next-range = Passe au calibre suivant.
odd-overload = Le multimètre dépasse son calibre.
odd-nothing = Le multimètre n'affiche rien.
odd-sweep = Le balayage ne monte et ne descend pas comme il faut.
asleep-again = Le calculateur s'est rendormi, ou le multimètre.
jumped-once-more = Encore une fois, après avoir revu les aiguilles.

move-until = Arrête-toi entre { $low } et { $high }. Lâche.
# Dit à une main qui ne peut pas faire moins qu'un poil.
amount-nudges = { $amount ->
    [1] d'un poil
   *[other] d'environ { $amount } poils
 }
amount-turns = { $amount ->
    [0.0625] un seizième de tour
    [0.125] un huitième de tour
    [0.1875] trois seizièmes de tour
    [0.25] un quart de tour
    [0.5] un demi-tour
    [0.75] trois quarts de tour
    [1] un tour
    [one] { $amount } tour
   *[other] { $amount } tours
 }
amount-clicks = { $amount ->
    [1] un cran
   *[other] { $amount } crans
 }
move-sensor-body-clockwise = Tourne le capteur { amount-nudges } dans le sens horaire.
move-sensor-body-counter-clockwise = Tourne le capteur { amount-nudges } dans le sens antihoraire.
move-idle-stop-in = Visse la butée de ralenti, environ { amount-turns }.
move-idle-stop-out = Dévisse la butée de ralenti, environ { amount-turns }.
move-fast-idle-in = Visse le bouton de démarrage à froid, { amount-clicks }.
move-fast-idle-out = Dévisse le bouton de démarrage à froid, { amount-clicks }.
move-upper-screw-in = Visse la vis du haut, d'un poil.
move-upper-screw-out = Dévisse la vis du haut, d'un poil.
move-lower-screw-in = Visse la vis du bas, d'un poil.
move-lower-screw-out = Dévisse la vis du bas, d'un poil.
# La même chose quand la main est encore sur la pièce : quelques mots.
again-nudge-clockwise = Sens horaire, { amount-nudges }.
again-nudge-counter-clockwise = Sens antihoraire, { amount-nudges }.
again-nudge-in = Visse { amount-nudges }.
again-nudge-out = Dévisse { amount-nudges }.
again-turn-in = Visse, { amount-turns }.
again-turn-out = Dévisse, { amount-turns }.
again-click-in = Visse, { amount-clicks }.
again-click-out = Dévisse, { amount-clicks }.
again-mm-more = Plus de jeu, { $amount } mm.
again-mm-less = Moins de jeu, { $amount } mm.
again-until-clockwise = Sens horaire, jusqu'à lire { $low } à { $high }. Lâche.
again-until-counter-clockwise = Sens antihoraire, jusqu'à lire { $low } à { $high }. Lâche.
again-until-in = Visse jusqu'à lire { $low } à { $high }. Lâche.
again-until-out = Dévisse jusqu'à lire { $low } à { $high }. Lâche.
aim-off = Le serrage décale la mesure. Nous visons à côté pour compenser.
move-cable-more = Donne au câble { $amount } mm de jeu en plus.
move-cable-less = Donne au câble { $amount } mm de jeu en moins.

do-wake = { $wake }
do-sleep = Laisse le calculateur se rendormir : débranche ce qui l'a réveillé.
do-probe = Pointe rouge sur le { $signal }, noire sur le { $ground }.
do-probe-supply = Pointe rouge sur le { $supply }, noire sur le { $ground }.
do-probe-ground = Pointe rouge sur le { $ground }, noire sur le moins de la batterie.
do-probe-battery = Pointe rouge sur le plus de la batterie, noire sur le moins.
do-unprobe = Retire les aiguilles.
do-back-off-idle-stop = Butée de ralenti : { $where }. Dévisse-la.
do-back-off-fast-idle = Bouton de démarrage à froid : { $where }. Dévisse-le.
do-free-play-cable = Donne du jeu au câble d'accélérateur.
do-turn-bars = Tourne le guidon d'une butée à l'autre.
do-mark-sensor-body = Marque la position du capteur.
do-restore-sensor-body = Remets le capteur sur ta marque.
do-loosen-sensor-screws = Desserre les deux vis du capteur jusqu'à ce qu'il tourne en résistant un peu.
do-tighten-sensor-screws = Resserre les deux vis tour à tour, un peu chacune. Lâche, attends un instant.
do-tighten-sensor-screws-to = Resserre les deux vis tour à tour, un peu chacune, jusqu'à { $torque } Nm. Lâche, attends un instant.
do-open = Ouvre les gaz en grand.
do-close = Ferme les gaz.
do-snap = Ouvre les gaz d'un coup sec et lâche.
do-engage-fast-idle = Enfonce le bouton de démarrage à froid.
do-release-fast-idle = Referme bien la poignée pour que le bouton de démarrage à froid ressorte.
do-start-engine = Démarre le moteur.
do-stop-engine = Arrête le moteur.
do-check-leads = Regarde dans quels fils sont les aiguilles. Remets-les comme il faut.
do-check-meter = Multimètre : volts continus, HOLD et REL coupés, pointe rouge dans la borne des volts.
do-check-cable = Tourne le guidon et regarde la mesure. Détends un câble trop tendu.
do-check-screws = Pousse le capteur à la main et regarde la mesure. Serre ce qui est desserré.

unit-per-minute = tr/min

# Toujours après "le" : le fil noir, le fil d'alimentation.
wire-supply = fil d'alimentation
wire-signal = fil de signal
wire-ground = fil de masse
wire-plain = fil { $colour }
wire-striped = fil { $colour } à filet { $stripe }
colour-black = noir
colour-white = blanc
colour-grey = gris
colour-brown = marron
colour-red = rouge
colour-orange = orange
colour-yellow = jaune
colour-green = vert
colour-light-green = vert clair
colour-blue = bleu
colour-light-blue = bleu clair
colour-violet = violet
colour-pink = rose
tool-any = l'outil qui convient
part-sensor-body = capteur
part-upper-screw = vis du haut
part-lower-screw = vis du bas
part-idle-stop = butée de ralenti
part-fast-idle = bouton de démarrage à froid
part-cable = câble
part-chain-adjuster = tendeur de chaîne
part-preload-collar = bague de précharge

measure-supply-voltage = Alimentation
measure-ground-drop = Chute de masse
measure-battery-voltage = Batterie
measure-charging-voltage = Charge
measure-signal-closed-stop = Complètement fermé
measure-signal-idle = Ralenti
measure-signal-idle-static = Ralenti, moteur arrêté
measure-signal-idle-warm = Ralenti, à chaud
measure-signal-fast-idle = Démarrage à froid
measure-signal-released = Après démarrage à froid
measure-signal-wide-open = Grand ouvert
measure-signal-sweep = Balayage
measure-signal-snapped = Après claquement
measure-idle-speed = Régime de ralenti
measure-free-play = Jeu
measure-chain-slack = Flèche de chaîne
measure-rider-sag = Enfoncement avec pilote
measure-free-sag = Enfoncement à vide
measure-tyre-pressure = Pression du pneu

caution-guidance-only = Ceci est un guide : le manuel du constructeur passe avant. Dans le doute, arrête et demande.
caution-guidance-only-name = un simple guide
caution-fuel-and-heat = Moteur froid uniquement. Ni flamme ni étincelle près de l'essence.
    N'attache jamais les gaz ouverts, n'ouvre jamais une conduite d'essence.
caution-fuel-and-heat-name = essence et chaleur
caution-battery-care = Enlève bagues et montre. Garde les pointes écartées : un court-circuit peut te brûler.
caution-battery-care-name = batterie
caution-back-probing = Glisse des aiguilles fines le long des joints de fils. Ne perce jamais un fil.
    Garde les aiguilles écartées : l'alimentation sur la masse peut détruire le calculateur.
caution-back-probing-name = aiguilles dans le connecteur
caution-waking = Moteur arrêté, point mort, mains dégagées : un bouton de démarreur peut le lancer.
    Quelque chose chauffe, fume, ou la pompe ne s'arrête pas : débranche et dis-le-moi.
caution-waking-name = réveil
caution-stops-off = Tant que les butées sont dévissées, personne n'appuie sur le démarreur.
caution-stops-off-name = butées dévissées
caution-loose-sensor = Tant que le capteur est desserré, personne n'appuie sur le démarreur. Pas de doigts près du papillon.
caution-loose-sensor-name = capteur desserré
caution-running-engine = Les gaz d'échappement tuent : dehors uniquement.
    Mains, cordons et vêtements loin de la chaîne, de la roue et de l'échappement.
    S'il s'emballe : coupe-circuit.
caution-running-engine-name = moteur en marche
caution-hot-engine = Il tourne et il est chaud. Tourne la butée de ralenti par le côté, loin de l'échappement et du ventilateur.
caution-hot-engine-name = moteur chaud

figure-taken = { $value } { $unit }, d'après ton manuel.
figure-out-of-reach = Ce n'est pas possible : j'attends { $low } à { $high } { $unit }. Vérifie dans le manuel.

check-only-by-wire = Sans câble, le papillon est motorisé et peut coincer des doigts. On mesure seulement ; ici, on ne règle rien.
check-only-riveted = Un capteur fixe ne se règle pas. On mesure seulement.
check-only-not-known = Tant que ce n'est pas connu, on mesure seulement et on ne tourne rien.
check-only-map-not-known = Sans connaître la cartographie, il n'y a pas de valeur à viser. On mesure seulement.
check-only-codes = Un code mémorisé passe d'abord. On mesure seulement, sans rien régler.
check-only-dirty-bore = Nettoie d'abord l'alésage : réglé sur la crasse, ce sera de nouveau faux demain. On mesure seulement.
check-only-no-figure = Sans valeur à viser, il n'y a rien à régler. On mesure seulement.
check-only-not-adjustable = Le capteur de cette machine est fixe et ne se règle pas. On mesure seulement.

help = Écris une valeur, ou : fait, retour, répéter, pause, stop, atelier. Fumée, essence, gaz qui coincent : dis-le simplement.
where = { $machine }. Partie { $part } sur { $parts } : { $name }.
where-plain = { $machine }.
part-begins = Partie { $part } sur { $parts } : { $name }.
back-engine-runs = Arrête d'abord le moteur.
back-sensor-loose = Règle d'abord le capteur et serre-le.
back-no-further = Il n'y a rien avant.
paused = Écris-moi quand tu continues.
pause-engine = Arrête d'abord le moteur.
come-back = Te revoilà.
come-back-pins = Regarde d'abord si les deux aiguilles sont toujours à leur place.
awake-too-long = Le calculateur est réveillé depuis { $minutes } minutes. Ménage la batterie.

give-up = On remet tout comme c'était ?
way-back-uncounted = La butée de ralenti n'a pas été comptée. Visse-la jusqu'à ce qu'elle touche à peine. Le ralenti ne sera pas comme avant : ne roule pas encore.
give-up-restore = Tout remettre
give-up-leave = Laisser comme c'est
give-up-go-on = Continuer le travail
give-up-wait = Attendre la personne

called = J'ai appelé une personne de l'atelier. Elle voit tout ce que tu as envoyé.
called-closed = L'atelier est fermé. Ton appel passera en premier à l'ouverture.
called-go-on = Tu peux continuer en attendant.
enough = Cela fait { $minutes } minutes. "atelier" appelle quelqu'un ; "pause" garde ta place.
leave-it = Pont retiré, multimètre éteint. Ne démarre pas et ne roule pas ainsi.
held = Cela attend une personne de l'atelier. Pont retiré, multimètre éteint. Ne démarre pas et ne roule pas ainsi.

flag-throttle-sticks-first = Coupe-circuit ! Lâche la poignée. Ne redémarre pas.
flag-revs-hang-first = Coupe-circuit ! Laisse-la à l'arrêt. Ne redémarre pas.
flag-engine-wont-stop-first = Coupe-circuit ! Retire le pont. Écarte-toi.
flag-fuel-leak-first = Coupe-circuit ! Retire le pont. Ni étincelle ni flamme. Éloigne-toi.
flag-smoke-first = Coupe-circuit ! Retire le pont. Éloigne-toi. Si ça brûle : numéro d'urgence.
flag-hot-leads-first = Retire le pont ! Ne touche pas aux cordons. Écarte-toi.
flag-pump-runs-on-first = Retire le pont tout de suite ! Laisse-le retiré.
flag-unwell-first = Coupe le moteur ! À l'air frais tout de suite. Pas mieux aussitôt : numéro d'urgence.
flag-injured-first = Coupe le moteur ! Si c'est grave : numéro d'urgence. Occupe-toi d'abord du blessé.

stuck-slots-at-end = Le capteur est au bout de ses lumières. Laisse-le là : c'est pour une personne.
stuck-moves-stop-helping = Tourner encore n'aide plus. C'est pour une personne.
stuck-too-coarse = À la main, on ne peut pas régler plus fin. Une personne décidera.
call-unknown-cause-owner = Je ne sais pas ce qui donnerait ces valeurs. C'est pour une personne.
call-not-for-an-owner-owner = Cela ne se répare pas au garage par messages. Une personne prend le relais.
call-nothing-left-owner = Nous avons contrôlé tout ce qui peut l'être d'ici. Une personne prend le relais.
call-look-alike-owner = Plusieurs causes donneraient cela. Une personne prend le relais.

record-set = { $machine } : réglage réussi. Bien joué.
record-right-as-found = { $machine } : c'était déjà correct. Rien d'important n'a été changé.
record-accepted = { $machine } : terminé avec l'atelier.
record-not-set = { $machine } : pas de réglage fait.
record-baseline-checked = La valeur de base a été contrôlée, papillon complètement fermé.
record-baseline-not-checked = La valeur de base elle-même n'a pas été contrôlée.
record-elsewhere = Ton problème ne vient pas du capteur. Cherche prise d'air, soupapes, bougie, filtre et essence.
record-accepted-by = Une valeur a été acceptée par { $name }.
record-value = { $measure } : { $value } { $unit }
record-speed-not-checked = Régime de ralenti non contrôlé.
record-code = Le code de ta fiche est { $code }. Garde-le pour l'atelier.

erase-question = Effacer ici tout ce qui te concerne ? C'est définitif.
erase-yes = Effacer
erase-no = Garder
erased = Tout ce qui te concerne est effacé.
