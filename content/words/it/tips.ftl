# I consigli per il canale dell'officina, ciascuno sotto tip-<id>, e ciò che se ne dice al banco. In un consiglio si possono usare $machine e $procedure.

## Nel canale

tip-closed-stop =
    Il minimo balla e la colpa va al sensore dell'acceleratore? Trova prima il suo valore base.
    Una misura dice qualcosa del sensore solo quando niente tiene aperta la farfalla: fermo del minimo e pomello avviamento a freddo arretrati del tutto.
    Lo facciamo con te, misura per misura. Dove il manuale della casa dice altro, vale il manuale.
tip-three-decimals =
    Prima di misurare un sensore dell'acceleratore, guarda il tuo tester: mostra tre decimali con una tensione piccola?
    Con due, l'ultima cifra è larga quanto la fascia che cerchi. Scegli la portata più bassa, o fatti prestare un tester migliore.
    Quando ne mostra tre, comincia qui.
tip-bars-and-revs =
    I giri cambiano quando giri il manubrio? Allora spegni il motore e non guidare così: qualcosa tira l'acceleratore.
    Nessun sensore va regolato prima che il cavo dell'acceleratore abbia gioco e scorra libero da fine corsa a fine corsa.
    Prima chiediamo questo, e misuriamo dopo.
tips-start = Cominciare
tips-withdrawn = Questo consiglio è ritirato. Per favore, non seguirlo.

## Al banco

tips-none = Non ci sono consigli.
tips-how = "tips NOME" ne mostra uno.
tips-status = { $id }: { $posted }, { $comes }.
tips-never-posted = non ancora pubblicato
tips-posted = pubblicato { $when }
tips-comes = non esce prima di: { $when }
tips-comes-never = non esce da solo
tips-stays-away = ritirato
tips-gone = non è più nei contenuti
tips-unknown = Non conosco nessun consiglio "{ $id }".
tips-known = Ci sono questi: { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = Non c'è un canale per i consigli. Chi gestisce il programma può impostarlo.
tips-rests = Riposa fino a: { $when }.
tips-quiet = Ore di silenzio: non si pubblica niente prima di: { $when }.
tips-may-post = Per pubblicarlo adesso: tocca, o scrivi "tips post { $id }".
tips-may-correct = Nel canale è diverso. Per correggerlo lì: tocca, o scrivi "tips correct { $id }".
tips-may-withdraw = Per ritirarlo: tocca, o scrivi "tips withdraw { $id }".
tips-button-post = Pubblicarlo
tips-button-correct = Correggerlo
tips-button-withdraw = Ritirarlo
tips-did-post = { $name } invia "{ $id }" al canale.
tips-did-correct = { $name } corregge "{ $id }" nel canale.
tips-did-withdraw = { $name } ritira "{ $id }". Non esce più da solo.
tips-refused = Il consiglio "{ $id }" non è entrato nel canale: { $why }
tips-partly-refused = Il consiglio "{ $id }" non è entrato in tutti i canali: { $why }
tips-change-refused = Il consiglio "{ $id }" non si è potuto cambiare nel canale: { $why }
tips-comes-again = Esce di nuovo, non prima di: { $when }.
