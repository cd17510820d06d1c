# Mots dans les images, et leurs textes de remplacement.

picture-pass = correct
picture-adjust = à régler
picture-too-low = trop bas
picture-too-high = trop haut
picture-unclear = pas encore clair
picture-implausible = incohérent
picture-no-figure = aucun chiffre affiché
picture-overload = OL
picture-off-scale = hors de cette échelle
picture-no-readings = pas encore de mesures
picture-no-limits = sans limites
picture-right-band = correct : { $limits }
picture-aim = cible { $value } { $unit }
picture-meter = appareil ±{ $value } { $unit }
picture-between = { $low } à { $high } { $unit }
picture-at-least = { $low } { $unit } ou plus
picture-at-most = { $high } { $unit } ou moins
picture-amount-turn = { $count ->
    [one] { $amount } tour
   *[other] { $amount } tours
}
picture-amount-click = { $count ->
    [one] { $amount } cran
   *[other] { $amount } crans
}
picture-amount-nudge = { $count ->
    [one] { $amount } poil
   *[other] { $amount } poils
}
picture-amount-mm = { $amount } mm
picture-way-in = vissé
picture-way-out = dévissé
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = plus
picture-way-less = moins

gauge-alternative = { $label } : { $value }, { $result }. Limites : { $limits }.

approach-earlier = { $count } avant
approach-alternative = { $count ->
    [one] { $label } : une mesure, { $value }.
   *[other] { $label } : { $count } mesures dans l'ordre, la dernière { $value }.
}
approach-alternative-none = { $label } : pas encore de mesures.

strip-hidden = { $count } plus tôt, non montrées
strip-alternative = { $title } : { $passed } étapes correctes sur { $count }.

sweep-closed = fermé
sweep-open = grand ouvert
sweep-up = à l'ouverture
sweep-down = à la fermeture
sweep-drop-out = coupure à { $where }
sweep-dead-spot = point mort à { $where }
sweep-reversal = recule à { $where }
sweep-no-return = ne revient pas
sweep-not-wide-open = pas grand ouvert
sweep-nothing = rien à signaler
sweep-alternative = { $label } : { $count } mesures de fermé à grand ouvert et retour ; { $found }.

connector-title = Connecteur du capteur
connector-wire-unknown = couleur du fil inconnue
connector-red = Pointe ROUGE
connector-black = Pointe NOIRE
connector-pin = broche { $pin }
connector-signal = signal
connector-supply = alimentation
connector-ground = masse
connector-elsewhere = pas dans ce connecteur
connector-wire = fil { $base }
connector-wire-striped = fil { $base }, filet { $stripe }
connector-seen = Vu du côté des fils : piquer le long des fils
connector-seen-latch-up = Vu du côté des fils, verrou en haut
connector-seen-latch-down = Vu du côté des fils, verrou en bas
connector-colour-black = noir
connector-colour-white = blanc
connector-colour-grey = gris
connector-colour-brown = marron
connector-colour-red = rouge
connector-colour-orange = orange
connector-colour-yellow = jaune
connector-colour-green = vert
connector-colour-light-green = vert clair
connector-colour-blue = bleu
connector-colour-light-blue = bleu clair
connector-colour-violet = violet
connector-colour-pink = rose
connector-alternative = { $title }, vu du côté des fils. Pointe rouge : { $red }. Pointe noire : { $black }.

part-name-sensor-body = Corps du capteur
part-name-upper-screw = Capteur, vis du haut
part-name-lower-screw = Capteur, vis du bas
part-name-idle-stop = Vis de butée de ralenti
part-name-fast-idle = Bouton de démarrage à froid
part-name-cable = Câble d'accélérateur
part-name-chain-adjuster = Tendeur de chaîne
part-name-preload-collar = Bague de précharge
part-amount = { $amount } { $way }
part-way-in = vissé
part-way-out = dévissé
part-way-clockwise = sens horaire
part-way-counter-clockwise = sens antihoraire
part-way-more = plus de jeu
part-way-less = moins de jeu
part-until = jusqu'à lire { $low } à { $high } { $unit }
part-raises = fait monter la mesure
part-lowers = fait baisser la mesure
part-seen-facing = vu de face
part-seen-below = tourné vers le bas : à voir d'en dessous
part-factory-stop = Butée d'usine peinte : n'y touche jamais
part-alternative = { $title } : { $move }.
part-alternative-where = { $title }. Où : { $where }.

causes-none = Aucune cause ne correspond aux mesures
causes-more = … { $count } de plus
causes-rest = { $count ->
    [one] une autre, { $share }
   *[other] { $count } autres, { $share } ensemble
}
causes-alternative = { $count ->
    [one] Une cause : { $name }, { $share }.
   *[other] { $count } causes, la plus probable { $name } avec { $share }.
}

record-set = réglé
record-right-as-found = déjà correct
record-accepted = accepté
record-not-set = non réglé
record-accepted-by = accepté par { $name }
record-hidden = { $count } valeurs de plus
record-no-values = aucune valeur
record-alternative = { $count ->
    [one] Fiche. { $title }, { $machine }, { $date } : { $result }, une valeur, code { $code }.
   *[other] Fiche. { $title }, { $machine }, { $date } : { $result }, { $count } valeurs, code { $code }.
}

workshop-nothing = encore rien
workshop-of = { $stopped } sur { $reached }
workshop-stops-note = bout foncé : arrêtés ici
workshop-times-note = point : la personne du milieu
workshop-minutes = { $minutes } min
workshop-hidden = { $count } de plus
workshop-alternative = { $count ->
    [one] { $title } : une ligne.
   *[other] { $title } : { $count } lignes.
}
