# As dicas para o canal da oficina, cada uma sob tip-<id>, e o que se diz delas no posto. Em uma dica podem entrar $machine e $procedure.

## No canal

tip-closed-stop =
    A marcha lenta oscila e a culpa cai no sensor do acelerador? Ache primeiro o valor de base dele.
    Uma leitura só diz algo sobre o sensor quando nada mantém a borboleta aberta: batente da marcha lenta e botão de partida a frio recuados até o fim.
    Fazemos isso com você, leitura por leitura. Onde o manual do fabricante disser outra coisa, vale o manual.
tip-three-decimals =
    Antes de medir um sensor do acelerador, olhe o seu medidor: ele mostra três casas decimais em uma tensão pequena?
    Com duas, o último dígito é tão largo quanto a faixa que você procura. Escolha a escala mais baixa, ou peça emprestado um medidor melhor.
    Quando ele mostrar três, comece aqui.
tip-bars-and-revs =
    A rotação muda quando você gira o guidão? Então desligue o motor e não rode assim: algo puxa o acelerador.
    Nenhum sensor precisa de regulagem antes de o cabo do acelerador ter folga e correr livre de batente a batente.
    Perguntamos isso primeiro, e medimos depois.
tips-start = Começar
tips-withdrawn = Esta dica foi retirada. Por favor, não siga o que ela diz.

## No posto

tips-none = Não há dicas.
tips-how = "tips NOME" mostra uma.
tips-status = { $id }: { $posted }, { $comes }.
tips-never-posted = ainda não publicada
tips-posted = publicada { $when }
tips-comes = não sai antes de: { $when }
tips-comes-never = não sai sozinha
tips-stays-away = retirada
tips-gone = já não está no conteúdo
tips-unknown = Não conheço nenhuma dica "{ $id }".
tips-known = Há estas: { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = Não há canal de dicas. Quem cuida do programa pode definir um.
tips-rests = Descansa até: { $when }.
tips-quiet = Horas de silêncio: nada é publicado antes de: { $when }.
tips-may-post = Para publicar agora: toque, ou escreva "tips post { $id }".
tips-may-correct = No canal está diferente. Para corrigir lá: toque, ou escreva "tips correct { $id }".
tips-may-withdraw = Para retirar: toque, ou escreva "tips withdraw { $id }".
tips-button-post = Publicar
tips-button-correct = Corrigir
tips-button-withdraw = Retirar
tips-did-post = { $name } envia "{ $id }" ao canal.
tips-did-correct = { $name } corrige "{ $id }" no canal.
tips-did-withdraw = { $name } retira "{ $id }". Não sai mais sozinha.
tips-refused = A dica "{ $id }" não entrou no canal: { $why }
tips-partly-refused = A dica "{ $id }" não entrou em todos os canais: { $why }
tips-change-refused = A dica "{ $id }" não pôde ser alterada no canal: { $why }
tips-comes-again = Ela sai de novo, não antes de: { $when }.
