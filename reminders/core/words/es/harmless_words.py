"""Spanish rules for what takes a danger word back: idioms, "none of that", a word taken back, an old habit.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "idiom": """
        por si me caigo|mareo|desmayo|tropiezo|resbalo|caigo
        no vaya|sea que|a que? me caiga|maree|caer|marear|resbale
        dice|dijo|dicen|dijeron|explico que si|cuando me mareo|caigo|maree|desmayo|falta|duele ~ pare|llame|avise|descanse|siente|deje
        que caida la de|del
        antes me|se|le _ ~ ~ pero|y|, eso? ya? paso|fue hace # ? AGESPAN|anos
        antes me|se|le _ ~ ~ pero|y|, eso? ya? paso|fue hace AGESPAN|anos|mucho|tiempo
        antes !de !del !que ~ me|se|le ~~ ya no ,|.|$
        pasado|pasada|YEAR|anos ~~ mira|mire|miren|mirame|mireme|mirenme|vea|veame|veanme ahora|hoy
        no es que ~ haya|hayan|hubiera _
        no|ni se me ha? sale|salio|salido|escapa|escapo|duerme|durmio|dormido
        se me rompio|partio|partieron|rompieron ~ corazon|alma con?
        se? me? cayo|vino|cae|viene ~ mundo|cielo encima con?
        que pasa|pasaria si ~ me|se caigo|mareo|cayera|desmayo|desmayara|cae
        de tanto gritar|llorar|reir|reirme|reirnos
        gritar|grite|gritando|grito ~ gol|goles|penal|partido
        murio|murieron|fallecio ~ de ~ derrame|embolia|infarto|ataque|corazon
        en la la? caida del sol
        caida del ~ sol|tarde|noche
        cai|caer|caigo|cae|caiga|cayo|caia|callo|caido en ~ cuenta|gracia|domingo|lunes|martes|miercoles|jueves|viernes|sabado|tentacion|coma|fin
        cae|caen|cayo|cayeron|cai|caigo|caer|caen ~ bien|mal|gordo|gordos|gorda|gordas|pesado|pesada|perfecto|veinte|como|encima|de peso|re|super|remal
        cai|caigo|cayo|caer|caemos rendida|rendido
        cai|caigo|cayo|caer|caemos ~ rendida|rendido|dormida|dormido|muerta|muerto|enferma|enfermo|cama|redonda|redondo|sueno|piedra|tabla|tronco|noqueada|fulminada|desmayada de sueno
        cai|cae|caigo|cayo como ~ piedra|tronco|anillo|balde|tabla
        cayo|cae|caer|caen|cayeron ~ visita|visitas|sistema|senal|internet|luz|red|llamada|pagina|nieve|lluvia|agua|aguacero|granizo|noche
        cayo|caer|cae de ~ visita|sorpresa|peso
        cai|cayo de ~ nube|luna|cielo
        cae|cayo ~ el|la|mi|los ~ noche|visita|cunada|suegra|familia|aguacero|lluvia|internet|senal|sistema|veinte|app
        se ~ cayo ~ el|la|mi|al ~ celular|telefono|lista|internet|sistema|senal|plato|vaso|taza|lampara|pantalla|arbol|olla|silla|florero|servilleta|papel|pelo|diente|luz|app
        deje|dejar caer
        muero|morir|muere|morirme|muriendo|muerta|muerto|morirse de ~ hambre|sueno|risa|calor|frio|sed|ganas|cansancio|amor|verguenza|miedo|pena|coraje|gusto|nervios|flojera|hueva|aburrimiento|envidia|curiosidad
        muero|muriendo|muero por ~ comer|un|una|ver|ir|probar
        matar|mata|matando|mato|mataron ~ risa|hambre|calor|coraje|nieto|nietos|nervios|tiempo|trabajo|coraje|susto|curiosidad
        mata|matar|matan de ~ risa|hambre|calor|coraje|aburrimiento|susto
        casi ~ me ~ muero|mata|matan ~ susto|risa|pena|jaja|coraje
        me mataron|matan|mata ~ ejercicios|jaja|sentadillas
        ataque de ~ risa|nervios|tos|llanto
        ataque de risa
        rompio|rompieron|rompe|partio|parte|romper ~ corazon
        corazon ~ contento|lleno|roto|alegre|agradecido|partido|abierto
        gracias|hola|ok|bueno|adios|ay mi? corazon
        de|con todo mi? corazon
        gracias|agradezco|deseo|bendiciones|saludos|abrazo|digo ~ de corazon
        corazoncito|corazon de melon
        golpe de ~ suerte|estado|calor
        pego ~ duro|fuerte ~ noticia|calor|sol|tristeza
        pego|pega ~ hambre|sueno|flojera|sol|calor|noticia
        me pegue ~ a|al ~ tele|novela|sofa
        me pegue ~ bano|banazo|desvelada|atracon
        di cuenta
        di|dio|dimos|dar ~ vueltas|vuelta|vueltecita al|a|por|en el|la? parque|manzana|calle|tienda|centro|asunto
        da la|una vuelta|vueltas ~ parque|manzana|calle|tienda|centro|asunto
        vueltas al|a|por la|el? parque|manzana
        hice|hicimos|di|dimos _? vueltas|vuelta
        dos|tres|las|una|# vueltas|vuelta !la !mi !todo
        se ~ fue ~ dia|tiempo|tarde|manana|noche|internet|avion|camion|onda
        se nos? fue la|el? luz|agua|senal !de
        sin aire acondicionado
        sin aire ,? # grados
        grados ~ sin aire
        tomar|agarrar|salir|pegando aire|el aire
        al aire libre
        aire fresco
        duro|dormi|durmieron|dormir ~ sofa|sillon|tele|siesta|tarde|rato|cama|temprano|profundo|toda
        me quede dormida|dormido !de !del
        quede dormida|dormido !de !del
        se quedo|durmio dormida|dormido !la !el !mi !un !una
        estoy|estaba|estuve bien dormida|dormido !de !del
        dentista|anestesia|muela ~~ boca|cara|labio|lengua|encia ~ NUMB|dormida
        dentista|anestesia|muela ~~ NUMB|dormida ~ boca|cara|labio|lengua|encia
        NUMB|dormida por|de|con la anestesia|inyeccion
        boca|cara|labio|lengua|encia ~~ anestesia|dentista|muela
        NUMB|dormida ~ boca|cara|labio|lengua|encia ~~ anestesia|dentista|muela
        rodillas ~ truenan|crujen|tronan|suenan
        truenan|tronar|truena|truene|cruje|trueno|crujen ~ rodillas|huesos|dedos|nudillos
        tronar|truene los dedos
        presion !en !de !del !por ~ #
        presion alta|baja|arterial|salio
        presion me salio|sube|subio|baja|bajo|marco|dio
        presion la tengo|traigo|traia|tenia
        baja|subio|bajo|sube la|mi|de? presion
        pastilla ~ presion
        presion de ~ trabajo|tiempo
        peso|pesa ~ #
        me ahogo en|de ~ trabajo|risa|vaso
        ahogar|ahogue|ahogando|ahogo|ahoga ~ vaso|trabajo|risa|deudas
        respirar ~ emocion|risa|nariz|tranquila|novela
        respiro hondo|profundo
        respire|respiro ~ hondo|profundo|profundamente
        <que|hay|y|,|recuerdo|recordar|video|ayuda|puse respirar ~ hondo|profundo|profundamente
        <pare|puse|puso|sente|aprendi|ensenaron a respirar ~ hondo|profundo|profundamente
        ^ respirar ~ hondo|profundo|profundamente
        precio ~~ aire|aliento|infarto|desmayo|mareo
        aire|aliento|infarto|desmayo ~~ precio|gol|recibo|gas|renta
        aire|aliento|infarto|desmayo ~~ la|una cuenta
        infarto ~ gol|partido|susto
        casi me da ~ infarto|algo|ataque
        mareo|maree|mareada|mareado en|con el|la|los? carro|barco|avion|camion
        marea ~ nietos|hablar|tanto|gente
        me ~ tiene|traen|trae|tienen mareada ~ papeles|vueltas
        saco de onda
        torcer|torci|torcio ~ brazo ~ para|hija
        hacer|hice ~ pedazos
        tropece con ~ noticia|foto|amiga|vecina|receta|comadre
        tropezar|tropece ~ misma piedra
        por poco|casi
        acabar|acabe|terminar|acabo con ~ ejercicios|rutina|quehacer|lista|tarea|dolor #|ellos|las|los
        acabar|terminar|acabe|termine con ~ todo ~ lista|rutina|ejercicios
        termine|acabe con todo
        ganas de hacer? nada $
        sin ganas $
        harta|harto de ~ todo ~ papeleo|frio
        no quiero seguir ~ recibiendo|con ~ mensajes|textos
        caida de ~ pelo|sol|agua|internet
        caida ~ temperatura|precios
        en caida libre
        lesion de guerra
        no quiero estar ~ recibiendo|lista
        morir ~ intento
        corto ~ circuito|tiempo
        corte ~ pelo|luz|cabello|agua
        se corto ~ luz|llamada|internet
    """,
    "denied_all": """
        nada de eso
        y no nada
    """,
    "taken_back": """
        sirven|sirve|servirian|sirvan ~ a ella|el ,|.|$
        me equivoque con lo
        olvide|borre|ignore lo que
        era de mi PERSON
        mensaje era de
        no mentira
        era mentira|broma|chiste
        quise poner
        corrector ~ puso
        sone que
        en mi sueno
        antes dije que
        mentira ,
        jaja|jajaja mentira|broma
        quise ~ poner|decir|escribir
        queria ~ poner|escribir
        ^ queria ~ decir
        ,|.|y|pero|yo|digo queria ~ decir
        corrector ~ puso|cambio|pone|escribio
        era que no ~
    """,
    "chronic": """
        de siempre|toda
        siempre me|se ha
        toda la vida
        desde siempre|chiquita|chiquito|nina|nino
        como siempre
    """,
    "idiom.chest_or_breathing": """
        pico un|una|el|la zancudo|mosquito|mosco|abeja|bicho|hormiga|pulga|avispa en el pecho
        me ahogue con el|la|un|mi|una agua|saliva|cafe|pan|comida|tortilla|te|jugo ,? pero|y ya? paso
        sin aliento|aire|respiracion viendo|mirando|escuchando|oyendo|leyendo el|la|los|las|una|un|mi
        gol|partido|penal|foto|noticia|final|capitulo|vista|precio|recibo me|nos dejo|deja sin aliento|aire|habla|respiracion
        lleve|llevo|llevamos|llevando|acompane|acompano|acompanando a mi|la|el|una|un CLIENTLIKE|PERSON al|a hospital|urgencias|emergencia|emergencias|doctor|medico|clinica|seguro con|por _
        novela|telenovela|pelicula|teleserie ,? le|al dio|da|dieron un|el infarto|ataque al|a
        corazon en la mano le|les|te doy|dan|damos|agradezco
        matar|mata de un? infarto
        me ahogo en|de papeles|tramites|pendientes|quehacer|tareas|cuentas|deudas
        sin aliento|aire de ver|mirar el|la|lo|los|las|tanto|tanta|a|esa|ese
        mareada|mareado|mareo|maree|marie|palida|palido|blanca|desmayo ,? y? con? sudando|sude|sudor|sudores|sudaba frio|fria|frios
        casi|que me voy|desmayo|iba ,? y? con? sudando|sude|sudor|sudores|sudaba frio|fria|frios
        sudando|sude|sudor|sudaba frio ,? y? casi? perdi|me voy|desmaye|sentido|desmayo
        blanca|palida y? sudando|sude|sudor|sudaba frio
        ^ el|la|del|de|mi? la|el? pecho|aire|respiracion|corazon bien|perfecto|perfecta|limpio|limpia|tranquilo|tranquila|normal ,|.|y|ni|$
        ,|.|y el|la|del|de|mi? la|el? pecho|aire|respiracion|corazon bien|perfecto|perfecta|limpio|limpia|tranquilo|tranquila|normal ,|.|y|ni|$
        ^ respiro|respirando bien|perfecto|normal ,|.|y|ni|$
        ,|.|y respiro|respirando bien|perfecto|normal ,|.|y|ni|$
        nada|cero|ni de|del el? pecho
        como respiro ,|.|$
        como ~~ boto|suelto|tomo|saco|inhalo|exhalo ~ aire
        PAIN|# ~ nada|cero|ni|no de|del|en el? pecho
        quitaron|quito|quite|quitan|quitaste ~ peso ~ pecho|encima
        sin aire en? la|las|el? llanta|llantas|goma|gomas|rueda|bici|bicicleta|neumatico|pelota
        pulmones de nadador|toro|atleta|roble
    """,
    "idiom.fall_or_injury": """
        ^ ya? aterrice|aterrizamos ,|.|$
        mi CLIENTLIKE se cayo|callo|lastimo ayer|anoche|hoy? ,? y|pero? yo hice|termine|complete|cumpli mis|los|las|todo|todos|mi
        enyesaron|enyesar|enyeso|escayolaron el|la|un|una|los _ de|a la|el|mi|un|una PERSON
        rompi|rompo|rompiendo|quebre la cabeza buscando|pensando
        con|de|a mi|la|el|una|un vecina|vecino|amiga|amigo|comadre|nieto|nieta|sobrina|sobrino|prima|primo que se cayo|callo|golpeo|quebro|rompio|fracturo|resbalo
        hace # anos me quebre|rompi|fracture|lastime|torci|cai ~ y hoy|ahora hice|termine|complete|cumpli
        me? quiero|quitaron|quite|quitar|quitarme|saque|sacaron|sacar|retiraron el|la yeso|ferula|cabestrillo
        FACE como? caida|caido
        tumbo|tiro|tumbaron la|el|una|un gripe|gripa|fiebre|cansancio|sueno|covid|virus|catarro|resfriado
        normal|bien que me queme|arda
        dio|dieron|da un|una|unos|unas? calambre|calambres|calambrito|calambritos|puntada|punzada|punzadas|piquete|ardor|comezon
        algo se? me? quebro|kebro|rompio !la !el !mi !un
        se me quebro|kebro|rompio algo !la !el !mi !un
        de chico|nino|joven|muchacho me cai|quebre|rompi
        gallo|avion|helicoptero|puente|gobierno ~ se? cayo|cae|caia
        se cayo ~ gallo|avion|helicoptero|puente|gobierno
        senora|senor|muchacha|companera de|del la|mi|el? grupo|clase|edificio|cuadra|iglesia|terapia ~ se? cayo
        quitaron|quitan|quito|quitaran ~ yeso|ferula|cabestrillo|puntos
        fue|era error|falla|culpa ~ de? ~ dedo|dedos
        n|mensaje|rato|numero|letra|respuesta ~ fue con el? codo|dedo|pulgar
        rompi|rompo|parti|parto ~ lomo ~ haciendolos|haciendolas|haciendo|trabajando
        cae|caia|cayo|cayendo ~ baba ~ con|por|viendo|ver|cuando ~ PERSON|bisnieto|bisnieta|bisnietos
        me cai de la mata ,|.* pensaba|pense|crei|creia|resulta|hoy
        dije que me cai ,? pero no
        cuando me cai ~ en MONTH ~~ usaba|andaba|estaba|tenia|era
    """,
    "idiom.faint_or_dizzy": """
        no es que me maree|desmaye
        perdi|perdio ~ equilibrio ~ ~ ,? y|pero|mas ~ agarre|sostuve|detuve|apoye|recupere
        PAINWORD ya? se me fue|va|iba|ha
        un|una _ se me|nos desmayo|desvanecio|mareo
        mi CLIENTLIKE se desmayo|mareo ayer|anoche|hoy? ,? y|pero? yo hice|termine|complete|cumpli mis|los|las|todo|todos|mi
        desmaye|desmayo|desmayar|desmayarme|desmayaba de risa|amor|emocion|ternura
        vi todo negro porque|cuando se fue la luz ,|.|$|LOL
        con|de|a mi|la|el|una|un vecina|vecino|amiga|amigo|comadre|nieto|nieta|sobrina|sobrino|prima|primo que se desmayo|mareo|desvanecio
        apague la|el tele|television|radio|telefono|celular|novela|luz|computadora
        perdi|perdio|perdiendo ~ equilibrio ~ y|pero ~ agarre|sostuve|detuve|apoye|agarro|recupere
        mareo|mareos|vahido|desmayo ~ de|en MONTH|invierno|verano
        me ~ dejo|deja|tiene|traen|trae mareada|mareado ~ con|de ~ preguntas|historias|platica|platicas|cuentos|preguntadera|juegos
    """,
    "idiom.nerve_or_bladder": """
        se me durmio la|el pierna|pie ~ viendo|sentada|sentado|mirando ~ ~ ,? pero|y ya ,|.|$|paso|desperto
        ya se me|le quito|paso|fue|desaparecio el|la|lo hormigueo|adormecimiento|entumecimiento|cosquilleo|dormido|entumido ,|.|$|de|que|gracias
        no|ni le veo|encuentro|hallo sentido|caso|chiste
        boca del pecho|estomago
        no|ni senti|siento nada de mareo|dolor|molestia|molestias|cansancio|feo|raro|malo !ni !en
        no|ni senti|siento nada de mareo|dolor|molestia|molestias|cansancio ni de? mareo|dolor|molestia|molestias|cansancio|nada ,|.|$
        escribo|contesto ~~ no ve bien ,|.|$
        LIMB ~ como ~ palo|palos|piedra|piedras|tabla|tablas de? ~ duras|duros|agujetas|tiesas|tiesos|cansancio ,|.|$
        cae|caia|cayo|cayendo ~ baba ~ con|por|viendo|ver|cuando ~ PERSON|bisnieto|bisnieta|bisnietos
        no puedo hacer los|las|mis? ejercicio|ejercicios|rutina|terapia|lagartijas|flexiones|puntas|talones
    """,
    "idiom.possible_fracture": """
        hace # anos me quebre|rompi|fracture ~ y hoy|ahora hice|termine|complete|cumpli
    """,
    "idiom.severe_pain": """
        insoportable no es|fue|era|llega ,|.|$|ni|pero
        no es|fue|era|llega|esta a? insoportable|inaguantable|intolerable ,|.|$|ni|pero|solo|nomas
        no aguanto|soporto|resisto esta|la|tanta|mi soledad|tristeza|vida|pena|situacion|angustia|depresion
        no puedo mas ,? ya|asi? que? lo|los|la|las dejo|deje
        no puedo mas ,? manana|luego|despues sigo|termino|acabo|le|los|las|lo
        no puedo mas ,? otro dia
        no puedo mas tarde|tardecito|tardesito|tardito|ratito|rato|noche|temprano|adelante
    """,
    "idiom.crisis": """
        me mato la|el|esa|ese|esta subida|caminata|cuesta|escalera|rutina|clase|sesion|serie|calor|trabajo|tandem|silla|pared
        que ganas de vivir me|nos da|dan|dio|dieron
    """,
}
