"""Spanish rules for heart and breath: pain or pressure in the chest, no air, and what only sounds like it.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.chest_or_breathing": """
        punza|punzada|punzadas|pica|molesta|jala|pesa|truena|aprieta|oprime|arde es|esta? adentro|dentro|en del|de|el|medio pecho
        boqueo|boqueando|boquear
        no me? vuelve|llega|entra|alcanza|da|pasa|baja|jala|rinde el? aire|resuello|respiro|aliento|resuelo|oxigeno
        se me corta|corto|cortaba|va|iba|fue|acaba|acabo la|el respiracion|respiro|aire|aliento|resuello
        no puedo ni|siquiera hablar|platicar|caminar ~ se me corta|corto|va|acaba la|el respiracion|aire|aliento|resuello
        siento|sento|como|parece|tengo|sintiendo|sentia como? si? tuviera|tengo|hubiera|fuera|estuviera|trajera|traigo un|una|unos|algo|alguien _ _? sentado|sentada|parado|parada|subido|encima|aplastando|aplastandome|apretando|apretandome|arriba|sobre|pisando ~ CHEST
        ^ FILL* # ,? pero|y|solo|nomas? FILL* en|al|por el|mi|medio|todo|lado* CHEST
        como|q|que si me|nos? ~ apretaran|apretara|apretasen|oprimieran|oprimiera|estrujaran|estrujara|aplastaran|aplastara|exprimieran|pisaran|pisara|amarraran ~ pecho
        respirar ~ costando|cuesta|costaba
        respiro|respirando|respiraba como pez|pescado|perro|perrito
        no|ni ~ llenar|llenan|lleno ~ pecho|pulmones
        me pesa|pesaba|pesando el|mi pecho|corazon
        aire cortado|corto|entrecortado|atorado|contado
        CHEST ~ TIGHT
        CHEST ~~ TIGHT
        TIGHT ~ CHEST
        TIGHT ~~ CHEST
        sentado|sentada|parado|sento|encima ~ CHEST
        CHEST ~ encima
        falta|falto|faltaba|falte|faltando|faltan ~ BREATH
        no ~ puedo|podia|pude|puede|alcanzo|alcanza ~ BREATHE
        no ~ respirar|resollar
        cuesta|costo|costaba|trabajo|dificil|dificultad|trabajos|apenas ~ respirar|BREATHE|respiracion
        respiro ~ mal|apenas|dificultad|trabajo|corto|rapido|feo
        respirar ~ mal|trabajo|bien|feo
        no ~ entra|entraba|pasa|jala|jalo|agarro|llega|alcanza|alcanzo ~ aire|aliento
        quede|quedo|quedaba|quedando|ando|estoy|dejo|dejaron|deja|termino|termine|acabe ~ sin ~ aire|aliento|resuello|respiracion
        sin aire|aliento|resuello
        me ahogo|ahogaba|ahogue|ahogando|asfixio|asfixie|sofoco|sofoque|sofocaba
        se ahoga|asfixia|sofoca|ahogaba|ahogo
        ahogo|ahogos|asfixia|sofocacion|agitada|agitado|jadeando|silbido|agitadisima
        HEART ~ HEARTSIGN
        HEART ~~ HEARTSIGN
        HEARTSIGN ~ corazon
        palpitaciones|palpitacion|taquicardia|arritmia|angina|infarto
        ataque al corazon
        sudor|sudores frio|frios|helado
        TIGHT|dolor|duele|hormigueo ~ brazo ~ quijada|mandibula|izquierdo
        brazo izquierdo ~ duele|dolor|pesado|hormigueo|corre
        quijada|mandibula ~~ dolor|duele|brazo|pecho
        dolor|duele ~~ quijada|mandibula
        se|me ~ tranca|cierra|cerro|tranco|oprime|aprieta|apreto|apachurra ~ pecho|corazon
        pecho|corazon ~ tranca|tranco|cierra|cerrado|trancado|aprieta|apreto|oprime|punza|salta|arde|quema
        calambre|piquete|pinchazo|punzada|punalada|ardor|molestia|agujas|presion ~ pecho|corazon|esternon
        pecho|corazon ~~ calambre|piquete|pinchazo|punzada|punalada|apretado|resuello|aliento
        sudo|sudando|sudor|sudores frio|helado|fria
        corta|corto|cortaba ~ resuello|respiracion|aire|aliento
        disnea|retroesternal|precordial|anginoso|taquicardia|sibilancias
        opresion|dolor toracico|toracica|precordial|retroesternal
        falta|faltando|falto ~ respiracion
        respiracion|aire ~ falta|corta|cortita|entrecortada|pesada|agitada
        bocanadas|boqueando|jadeo|jadeando|sofocon|sofocada|sofocado
        no ~ llena|llenan|lleno|llenar ~ pulmones
        pulmones ~ llenan|cerrados|aire
        elefante|piedra|loza|losa|ladrillo|tanque|vaca|bulto ~ pecho
        pecho ~ elefante|piedra|losa|ladrillo|bulto|peso
        corazon ~ loco|desbocado|mil|boca|salir|salia|sale|brincos|caballo|tropezando|rapido|fuerte
        corazon ~ duele|dolor|arde|punza|falla|para
        dolor|duele ~~ brazo izquierdo
        labios|boca|unas ~ morados|azules|moradas|azul
        batallo|batallando|lucho|luchando|cuesta|costaba|costo|forzada|apuros|trabajos|trabajo ~ respirar|resollar|aire|respiro|respiracion
        respiro|respira|respirando|respiracion ~ cortito|cortita|corto|corta|entrecortado|entrecortada|agitado|agitada|rapido|rapida|pesado|pesada|dificil
        sin fuelle|resuello
        dolorón|doloron|dolorazo|molestia|malestar|dolorcito ~ CHEST
        disnea|retroesternal|precordial|precordialgia|angor|disneico|disneica
        CHEST ~ tranca|tranco|trancado|cierra|cerro|aplasta|apachurra|oprime|aprieta|apreto|estruja|pesa|arde|ardor|quema|jala|explota|explotar|revienta|calambre
        tranca|tranco|cierra|cerro|calambre|puntada|puntadas|pinchazo|pinchazos|retortijon|estrujon|agarron|nudo|ladrillo|plancha|costal|bulto|faja|cincho|cinturon ~ CHEST
        punzada|punzadas|piquete|piquetes|puntada|puntadas|pinchazo|pinchazos|apreton|estrujon|opresion ~ HEART
        HEART ~ punzada|piquete|puntada|apreton|aprieta|oprime|explota|sale|salta|saltos|brinca|loco|desboca|desbocado
        sudo|sudando|sudor|sudores|sudaba|sude ~ frio|frios|helado|helada
        corta|corto|cortaba|quita|quito|roba|robo|va|fue|acaba|acabo|falta ~ resuello|aliento|respiracion|aire
        ahogando|ahogada|ahogado|ahogandome|ahogarme|asfixiada|asfixiado|asfixiandome|sofocada|sofocado|jadeo|jadeaba|jadeante !jaja
        no ~ me|le|se ~ da|llena|llenan|alcanza|alcanzan|entra|pasa|baja|llega ~ aire|pulmones|pulmon|respiracion
        pulmones|pulmon ~ no|cierran|queman|arden|llenan|duelen|pitan|silban
        pito|silba|silban|pitan|pitido|chifla|chiflan ~ pecho|pulmones|respirar|respiro
        pecho ~ silba|pita|pitan|chifla|ronca
        sentarme|sentada|sentado|almohadas|almohada ~~ respirar|aire
        no puedo ~ hablar|terminar ~~ aire|aliento|ahogo
        puedo ~ ni ~ respirar|hablar|resollar
        labios|boca|unas ~ morados|azules|morada|azul
        brazo ~ izquierdo ~~ pecho|dormido|pesado|duele|dolor|punzada|mandibula
        dolor|duele|corre|baja|sube ~ al|hacia|por ~ brazo|mandibula|quijada ~~ pecho|sudor|sudo
    """,
    "idiom.chest_or_breathing": """
        corazon en la boca con|por|del|de|pero|, ~ partido|susto|temblor|final|gol|juego|noticia|sismo
        nos dejo|deja|tiene|tuvo con? el corazon en la boca
        sin aliento|aire de solo|nomas|puro ver|verlo|mirar|pensar
        sin falta de aire|aliento
        vista|vistas|paisaje|belleza me|nos? quita|quitan|quito|robo|corta el aliento|aire|respiracion
        aire ,|.? acondicionado
        donde ~~ les|le|se da|dio|dan un? infarto|ataque
        mensaje|mensajes|palabras|carta|regalo|cancion|vista|vistas|paisaje|belleza|noticia|pelicula|sorpresa|foto|fotos|musica|cuadro|atardecer|concierto ,? ~ me|nos|te dejo|dejaron|deja|dejan sin aliento|respiracion|habla
        quede|quedo|quedamos sin aliento|respiracion|habla con|por|de|al ver? el|la|los|las|su|sus|tu|tus|un|una? mensaje|mensajes|palabras|carta|regalo|cancion|vista|vistas|paisaje|belleza|noticia|pelicula|sorpresa|foto|fotos|musica|cuadro|atardecer|concierto
        no es que me falte el? aire !siempre !todo !tanto
        no es que me ahogue !siempre !todo !tanto
        no|ni me|le falta ~ aire|respiracion|aliento
    """,
}
