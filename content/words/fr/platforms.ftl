# Ce que les plateformes montrent hors d'une conversation : le menu, les renvois, le poste de l'atelier, les formulaires.

platform-menu-begin = Commencer un réglage
platform-menu-where = Où en suis-je ?
platform-menu-help = Que puis-je envoyer ?
platform-menu-person = Appeler l'atelier
platform-menu-desk = Faire de ce salon le poste de l'atelier
platform-menu-desk-code = Le code de l'exploitant
platform-pointer = Je ne guide qu'en privé.
platform-open-chat = Ouvrir notre discussion
platform-written-privately = Je t'ai écrit en privé :
platform-not-taken = Je n'ai pas pu le noter. Renvoie-le.
platform-type-reading = Saisir une mesure
platform-reading-field = Ce qu'affiche le multimètre
platform-room-name = Ton réglage
platform-case-name = Dossier { $case }
platform-desk-claimed = Le poste de l'atelier est ici maintenant. Les dossiers arrivent ici.
platform-desk-code-wrong = Ce code est faux ou déjà utilisé.
platform-desk-only-in-group = Écris cela dans le groupe ou le salon de l'atelier.
