# Los consejos para el canal del taller, cada uno bajo tip-<id>, y lo que se dice de ellos en el puesto. En un consejo se pueden usar $machine y $procedure.

## En el canal

tip-closed-stop =
    ¿El ralentí baila y le echan la culpa al sensor del acelerador? Busca primero su valor base.
    Una lectura solo dice algo del sensor cuando nada mantiene abierta la mariposa: tope de ralentí y mando de arranque en frío retirados del todo.
    Lo hacemos contigo, lectura a lectura. Donde el manual del fabricante diga otra cosa, vale el manual.
tip-three-decimals =
    Antes de medir un sensor del acelerador, mira tu medidor: ¿muestra tres decimales con una tensión pequeña?
    Con dos, el último dígito es tan ancho como el margen que buscas. Elige la escala más baja o pide prestado un medidor mejor.
    Cuando muestre tres, empieza aquí.
tip-bars-and-revs =
    ¿Cambian las revoluciones al girar el manillar? Entonces apaga el motor y no salgas así: algo tira del acelerador.
    No hay que ajustar ningún sensor antes de que el cable del acelerador tenga juego y corra libre de tope a tope.
    Eso lo preguntamos primero, y medimos después.
tips-start = Empezar
tips-withdrawn = Este consejo queda retirado. No lo sigas, por favor.

## En el puesto

tips-none = No hay consejos.
tips-how = "tips NOMBRE" muestra uno.
tips-status = { $id }: { $posted }, { $comes }.
tips-never-posted = aún sin publicar
tips-posted = publicado { $when }
tips-comes = no sale antes de: { $when }
tips-comes-never = no sale por sí solo
tips-stays-away = retirado
tips-gone = ya no está en el contenido
tips-unknown = No conozco ningún consejo "{ $id }".
tips-known = Hay estos: { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = No hay canal de consejos. Quien lleva el programa puede poner uno.
tips-rests = Descansa hasta: { $when }.
tips-quiet = Horas de silencio: no se publica nada antes de: { $when }.
tips-may-post = Para publicarlo ya: pulsa, o escribe "tips post { $id }".
tips-may-correct = El canal dice otra cosa. Para corregirlo allí: pulsa, o escribe "tips correct { $id }".
tips-may-withdraw = Para retirarlo: pulsa, o escribe "tips withdraw { $id }".
tips-button-post = Publicarlo
tips-button-correct = Corregirlo
tips-button-withdraw = Retirarlo
tips-did-post = { $name } envía "{ $id }" al canal.
tips-did-correct = { $name } corrige "{ $id }" en el canal.
tips-did-withdraw = { $name } retira "{ $id }". No vuelve a salir por sí solo.
tips-refused = El consejo "{ $id }" no entró en el canal: { $why }
tips-partly-refused = El consejo "{ $id }" no entró en todos los canales: { $why }
tips-change-refused = El consejo "{ $id }" no se pudo cambiar en el canal: { $why }
tips-comes-again = Sale otra vez, no antes de: { $when }.
