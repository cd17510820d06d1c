# Les conseils pour le salon de l'atelier, chacun sous tip-<id>, et ce que le poste en apprend. $machine et $procedure peuvent servir dans un conseil.

## Dans le salon

tip-closed-stop =
    Le ralenti se promène, et on accuse le capteur papillon ? Cherche d'abord sa valeur de base.
    Une mesure ne dit quelque chose du capteur que si rien ne tient le papillon ouvert : butée de ralenti et bouton de démarrage à froid dévissés à fond.
    Nous le faisons avec toi, mesure par mesure. Si le manuel du constructeur dit autre chose, c'est lui qui a raison.
tip-three-decimals =
    Avant de mesurer un capteur papillon, regarde ton multimètre : affiche-t-il trois décimales sur une petite tension ?
    Avec deux, le dernier chiffre est aussi large que la fenêtre visée. Prends le calibre inférieur, ou emprunte un meilleur appareil.
    Dès qu'il en affiche trois, commence ici.
tip-bars-and-revs =
    Le régime change quand tu tournes le guidon ? Alors arrête le moteur, et ne roule pas ainsi : quelque chose tire sur les gaz.
    Aucun capteur n'est à régler avant que le câble ait son jeu et coulisse librement d'une butée à l'autre.
    C'est ce que nous demandons d'abord ; on mesure ensuite.
tips-start = Commencer
tips-withdrawn = Ce conseil est retiré. Merci de ne pas le suivre.

## Au poste de l'atelier

tips-none = Il n'y a aucun conseil.
tips-how = "tips NOM" en montre un.
tips-status = { $id } : { $posted }, { $comes }.
tips-never-posted = pas encore publié
tips-posted = publié : { $when }
tips-comes = ne vient pas avant { $when }
tips-comes-never = ne vient pas de lui-même
tips-stays-away = retiré
tips-gone = n'est plus dans le contenu
tips-unknown = Je ne connais pas de conseil "{ $id }".
tips-known = Il y a : { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = Aucun salon n'est choisi pour les conseils. L'exploitant du programme peut en choisir un.
tips-rests = Il se repose jusqu'à { $when }.
tips-quiet = Heures calmes : rien n'est publié avant { $when }.
tips-may-post = Pour le publier maintenant : appuie, ou écris "tips post { $id }".
tips-may-correct = Le salon dit autre chose. Pour l'y corriger : appuie, ou écris "tips correct { $id }".
tips-may-withdraw = Pour le retirer : appuie, ou écris "tips withdraw { $id }".
tips-button-post = Publier
tips-button-correct = Corriger
tips-button-withdraw = Retirer
tips-did-post = { $name } publie "{ $id }" dans le salon.
tips-did-correct = { $name } corrige "{ $id }" dans le salon.
tips-did-withdraw = { $name } retire "{ $id }". Il ne reviendra pas de lui-même.
tips-refused = Le conseil "{ $id }" n'a pas pu entrer dans le salon : { $why }
tips-partly-refused = Le conseil "{ $id }" n'a pas pu entrer dans tous les salons : { $why }
tips-change-refused = Le conseil "{ $id }" n'a pas pu être changé dans le salon : { $why }
tips-comes-again = Il reviendra, pas avant { $when }.
