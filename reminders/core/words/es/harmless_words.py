"""Spanish rules for what takes a danger word back: idioms, "none of that", a word taken back, an old habit.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "idiom": """
        ni un|una tronido|mareo|crujido|caida|tropezon|desmayo|calambre en|,|.|$
        le falta|faltaba aire a|al la|las|el|mi? llanta|llantas|balon|bici|bicicleta|carro|globo
        se me fue la onda
        sin aliento me dejo|dejaron el|la|los|las ~ gol|partido|novela|noticia|paisaje|vista
        mareo|mareos|caida|caidas|desmayo|desmayos|hormigueo|hormigueos|palpitaciones|adormecimiento no ,
        me mareaba|dolia|ahogaba|desmayaba|faltaba|caia ~ antes ,? pero|y? ya no >,|.|$
        la|el que se mareo|cayo|callo|desmayo|golpeo|lastimo|ahogo fue la|el|mi|un|una ANIMAL|cabra|nieta|nieto|vecina|vecino|hija|hijo|hermana|hermano|comadre|suegra
        ANIMAL ya|casi? se me|nos? desmayo|mareo|desvanecio|ahogaba|ahoga
        ANIMAL ya|casi? se lastimo|quebro|ahogo|cayo
        hablaron|hablan|charla|programa|reportaje|campana ~ del|de|sobre un|los|la|el? derrame|derrames|infarto|infartos|embolia|ictus
        cai como un|una? piedra|tronco|tabla en la|mi cama
        caigo|caemos como un|una? piedra|tronco|tabla !en !de !al
        casi me desmayo|infarto|infarta|muero cuando|al vi|ver|veo el|la|los|las precio|precios|boleta|recibo|cuenta|factura|noticia
        deja|dejaba|dejan ni? respirar tranquila|tranquilo|agusto
        no me he orinado|meado|hecho !bien !desde
        dejo|deja sin aire|aliento|habla|respiracion ese|esa|el|la gol|golazo|partido|final|noticia|precio
        corrector ~ puso|pone|escribio que? me|se? _
        sone|sonaba|sonando que !y _
        sone|sonaba|sonando que !y _ !y _
        sone|sonaba|sonando que !y _ !y _ !y !desperte _
        en mi|un|el sueno que? !y _
        en mi|un|el sueno que? !y _ !y _
        en mi|un|el sueno que? !y _ !y _ !y !desperte _
        por si me caigo|mareo|desmayo|tropiezo|resbalo|caigo
        no vaya|sea que|a que? me caiga|maree|caer|marear|resbale
        dice|dijo|dicen|dijeron|explico que si|cuando me mareo|caigo|maree|desmayo|falta|duele ~ pare|llame|avise|descanse|siente|deje
        que caida la del|de la|los|las? dolar|peso|euro|bolsa|precios|gobierno|acciones|ventas|temperatura|internet
        antes me|se|le _ ~ ~ pero|y|, eso? ya? paso|fue hace # ? AGESPAN|anos
        antes me|se|le _ ~ ~ pero|y|, eso? ya? paso|fue hace AGESPAN|anos|mucho|tiempo
        antes !de !del !que ~ me|se|le ~~ ya no >,|.|$
        pasado|pasada|YEAR|anos ~~ mira|mire|miren|mirame|mireme|mirenme|vea|veame|veanme ahora|hoy
        no es que ~ haya|hayan|hubiera _
        no|ni se me ha? sale|salio|salido|escapa|escapo|duerme|durmio|dormido
        se me rompio|partio|partieron|rompieron ~ corazon|alma con?
        se? me? cayo|vino|cae|viene ~ mundo|cielo encima con?
        que pasa|pasaria si ~ me|se caigo|mareo|cayera|desmayo|desmayara|cae !asi !otra !de
        de tanto gritar|llorar|reir|reirme|reirnos
        gritar|grite|gritando|grito ~ gol|goles|penal|partido
        murio|murieron|fallecio ~ de ~ derrame|embolia|infarto|ataque|corazon
        en la la? caida del sol
        caida del sol
        cai|caer|caigo|cae|caiga|cayo|caia|callo|caido en la? cuenta|gracia|tentacion|coma
        cae|caiga|caen en WEEKDAY|fin
        <cumpleanos|cita|feriado|fecha|dia|navidad|santo|fiesta|aniversario|me|que|examen cayo|caia|caera en WEEKDAY|fin
        me|le|les|nos|te cae|caen|cayo|cayeron|caia|caian muy|re|tan|super|bien|medio|un? poco? bien|mal|gordo|gordos|gorda|gordas|pesado|pesada|pesados|pesadas|perfecto|remal !duro !feo !fuerte !recio
        le|les|te cai|caigo muy|re|tan|super? bien|mal|gordo|pesado|pesada
        me|le|les|nos|te ha|han caido muy|re|tan|super? bien|mal|gordo|pesado|pesada
        caerle|caerles muy|re|tan? bien|mal|gordo|pesado
        caer muy|re|tan? bien|gordo|pesado !feo !duro !fuerte !mal
        comida|cena|desayuno|almuerzo|cafe|leche|medicina|pastilla|pastillas|antibiotico|te cayo|cae|cayeron muy|re? bien|mal|pesado|pesada
        cae|cayo|caiga|caer el veinte
        cayo|cae|caen|cayeron de perlas|maravilla
        cai|caigo|cayo|caer|caemos rendida|rendido
        cai|caigo|cayo|caer|caemos ~ rendida|rendido|dormida|dormido|muerta|muerto|enferma|enfermo|cama|redonda|redondo|sueno|piedra|tabla|tronco|noqueada|fulminada|desmayada de sueno
        cai|caigo|caimos como un|una? piedra|tronco|tabla ,|.|$|de|y|anoche|toda|hasta|dormida|dormido|a|temprano|despues
        cae|cayo como ~ anillo|balde
        cayo|cae|caer|caen|cayeron|caia|cayendo el|la|las|los|un|una|mucha|mucho|puro|otra|tremendo|tremenda|fuerte? visita|visitas|sistema|senal|internet|luz|red|llamada|pagina|nieve|lluvia|aguacero|granizo|helada|tormenta|chaparron|nevada
        cayo|cae|caia|cayendo mucha|el|un|tremenda|tanta? agua|aguacero
        cuando|al|antes|ya|hasta|apenas que? cayera|cayo|caer|caia|cae la noche|tarde
        cayo|cae|caia la noche|tarde ,|.|$|y|encima
        se? nos|me cayo|callo|vino la noche|tarde
        cayo|caer|cae de ~ visita|sorpresa|peso
        cai|cayo de ~ nube|luna|cielo
        me|nos cae|cayo|cayeron|caen el|la|mi|los|mis|toda? la? visita|visitas|cunada|suegra|familia|comadre|aguacero|lluvia
        cae|cayo el|la app|pagina|internet|senal|sistema
        se? me|nos|le|les cayo|cayeron|cae|caen|callo el|la|mi|las|los|un|una|mis celular|celu|cel|telefono|lista|internet|sistema|senal|plato|vaso|taza|lampara|pantalla|arbol|olla|silla|florero|servilleta|papel|pelo|diente|luz|app|control|caja|libro|cuchara|pastilla|pastillas|lentes|llaves|bolsa !en !encima !sobre !de
        se? me|nos|le|les cayo|cayeron|cae|callo el|la|mi|un|una olla|plato|vaso|taza|caja|bolsa de _ !caliente !en !encima !sobre
        se? me|nos|le|les cayo|cayeron|cae|callo el|la|mi|un|una celular|celu|cel|telefono|lista|internet|sistema|senal|plato|vaso|taza|lampara|pantalla|arbol|olla|silla|florero|servilleta|papel|pelo|diente|luz|app|control|caja|libro|cuchara|pastilla|pastillas|lentes|llaves|bolsa|pesa|mancuerna|banda|liga|toalla|jabon en|al el|la? piso|suelo|agua|bano|excusado|inodoro|patio|calle
        se cayo|callo|cae el|la|mi|los|un|una celular|celu|cel|telefono|lista|internet|sistema|senal|plato|vaso|taza|lampara|pantalla|arbol|florero|servilleta|papel|pelo|diente|luz|app|control|caja|libro|cuchara|pastilla|pastillas|lentes|llaves|bolsa !en !encima !sobre
        deje|dejar caer
        muero|morir|muere|morirme|muriendo|muerta|muerto|morirse de la|pura|puro|tanta|tanto|el|puras? purita|puritita? hambre|sueno|risa|calor|frio|sed|ganas|cansancio|amor|verguenza|miedo|pena|coraje|gusto|nervios|flojera|hueva|aburrimiento|envidia|curiosidad
        muero|muriendo|muero por ~ comer|un|una|ver|ir|probar
        matar|mata|matando|mato|mataron de|el|la|los|mi|mis|tanta|tanto|este|esta|un|su? pura|puro? risa|hambre|calor|coraje|nieto|nietos|nervios|tiempo|trabajo|susto|curiosidad
        risa|hambre|calor|coraje|nieto|nietos|nervios|trabajo|curiosidad me|nos esta|estan matando|mata|matan
        mata|matar|matan de ~ risa|hambre|calor|coraje|aburrimiento|susto
        casi ~ me ~ muero|mata|matan ~ susto|risa|pena|jaja|coraje
        me mataron|matan|mata ~ ejercicios|jaja|sentadillas
        ataque de ~ risa|nervios|tos|llanto
        ataque de risa
        rompio|rompieron|rompe|partio|parte|romper ~ corazon
        corazon ~ contento|lleno|roto|alegre|agradecido|partido|abierto
        gracias|hola|ok|bueno|adios|ay mi? corazon !anda !me !esta !late !acelerado !se !duele !muy !brinca !a
        de|con todo mi? corazon
        gracias|agradezco|deseo|bendiciones|saludos|abrazo|digo ~ de corazon
        corazoncito|corazon de melon
        golpe de ~ suerte|estado|calor
        pego ~ duro|fuerte ~ noticia|calor|sol|tristeza
        pego|pega ~ hambre|sueno|flojera|sol|calor|noticia
        me pegue ~ a|al ~ tele|novela|sofa
        me pegue un|una|tremendo|tremenda|buen|buena buen|buena? bano|banazo|desvelada|atracon
        di cuenta
        di|dio|dimos|dar ~ vueltas|vuelta|vueltecita al|a|por|en el|la? parque|manzana|calle|tienda|centro|asunto
        da la|una vuelta|vueltas ~ parque|manzana|calle|tienda|centro|asunto
        vueltas al|a|por la|el? parque|manzana
        hice|hicimos|di|dimos _? vueltas|vuelta
        dos|tres|las|una|# vueltas|vuelta !la !mi !todo
        se me|nos|le|les? fue|iba el|la|todo|toda|los|las|mi|un|volando? el|la|los? dia|dias|tiempo|tarde|manana|noche|internet|avion|camion|bus|hora
        se me fue la onda !un !en !por !unos !y
        se me fue la onda y no|se !supe
        se nos? fue la|el? luz|agua|senal !de
        sin aire acondicionado
        sin aire ,? # grados
        grados ,? y|aqui? sin aire
        salir|sali|salgo|salimos|fui a? tomar|agarrar|coger el|un? poco? de? aire
        tomar el? aire
        salir|pegando el? aire
        al aire libre
        aire fresco
        duro|dormi|durmieron|dormir ~ sofa|sillon|tele|siesta|tarde|rato|cama|temprano|profundo|toda
        me quede dormida|dormido !de !del
        quede dormida|dormido !de !del
        se quedo|durmio dormida|dormido !la !el !mi !un !una !toda !todo !media !medio
        ^ estoy|estaba|estuve bien dormida|dormido !de !del
        <,|.|y|ya|yo|cuando|porque|que|todavia|pues|pero|si|aun estoy|estaba|estuve bien dormida|dormido !de !del
        dentista|muela|muelas !ni ,? ~ boca|cara|labio|lengua|encia ~ NUMB|dormida
        <la|con|por|de anestesia ,? ~ boca|cara|labio|lengua|encia ~ NUMB|dormida
        dentista|muela|muelas !ni ,? ~ NUMB|dormida ~ boca|cara|labio|lengua|encia
        <la|con|por|de anestesia ,? ~ NUMB|dormida ~ boca|cara|labio|lengua|encia
        FACE|lengua|encia|muela ~ NUMB por|de|con la anestesia|inyeccion
        NUMB por|de|con la anestesia|inyeccion del|de|que dentista|muela
        boca|cara|labio|lengua|encia NUMB ,? por|de|del|con|fui|vengo|al ~ anestesia|dentista|muela
        NUMB|dormida ~ boca|cara|labio|lengua|encia ,? por|de|del|con|fui|vengo|al ~ anestesia|dentista|muela
        rodillas ~ truenan|crujen|tronan|suenan
        truenan|tronar|truena|truene|cruje|trueno|crujen ~ rodillas|huesos|dedos|nudillos
        tronar|truene los dedos
        presion !en !de !del !por ~ # !en !# !/
        presion !en !de !del !por ~ # # !en
        presion !en !de !del !por ~ # / # !en
        presion alta|baja|arterial|salio
        presion me salio|sube|subio|baja|bajo|marco|dio !en !al !del
        presion la tengo|traigo|traia|tenia !en
        pastilla ~ presion
        presion de ~ trabajo|tiempo
        peso|pesa|pesan de|unos|como|mas|casi? # !en !sobre !kilos !libras !kg !kilo
        peso|pesa|pesan de|unos|como|mas|casi? # kilos|kilo|libras|kg !en !sobre
        me ahogo en|de tanto|tanta|el|la|un|#|puro|pura? trabajo|risa|vaso !al !cuando !si !subiendo !caminando
        ahogar|ahogue|ahogando|ahogo|ahoga en|de|con un|una|tanto|tanta|tantas|tantos|puro|pura|la|el|las|mis? vaso|trabajo|risa|deudas !al !cuando !si !subiendo !caminando
        respirar de|con|por la|tanta|el? emocion|risa|novela
        respirar por la nariz !ni
        respiro hondo|profundo
        respire|respiro ~ hondo|profundo|profundamente
        <que|hay|y|,|recuerdo|recordar|video|ayuda|puse respirar ~ hondo|profundo|profundamente
        <pare|puse|puso|sente|aprendi|ensenaron a respirar ~ hondo|profundo|profundamente
        ^ respirar bien|muy|mas? hondo|profundo|profundamente !me !duele !cuesta !y
        precio|precios|recibo|cuenta ,? casi ~ aire|aliento|infarto|desmayo|mareo
        precio|precios|recibo ~ ~ aire|aliento|infarto|desmayo
        aire|aliento|infarto|desmayo ~ con|por|del|ver|vi|viendo ~ precio|precios|gol|recibo|renta|cuenta
        casi ~ infarto ~ gol|partido|susto|penal|noticia
        infarto ~ gol|partido|susto|penal ~~ LOL
        casi me da|dio algo
        me da|daria un? infarto si
        casi me da|dio un? infarto|ataque !,
        casi me da|dio un? infarto|ataque , !estoy !sigo !me !internaron
        mareo|maree|mareada|mareado en|con el|la|los? carro|barco|avion|camion
        marea ~ nietos|hablar|tanto|gente
        me ~ tiene|traen|trae|tienen mareada ~ papeles|vueltas
        saco de onda
        torcer|torci|torcio|torcieron el brazo para que
        torcer|torcio|torcieron el brazo mi|a la|el|mi|los? hija|hijo|nieta|nieto|esposo|doctor
        hacer|hice ~ pedazos
        tropece con ~ noticia|foto|amiga|vecina|receta|comadre
        tropezar|tropece ~ misma piedra
        por poco|casi
        acabar|acabe|terminar|acabo con ~ ejercicios|rutina|quehacer|lista|tarea|dolor #|ellos|las|los
        acabar|terminar|acabe|termine con todo|toda|todos lo? de? la|los|el|mi|las? lista|rutina|ejercicios|quehacer|tarea
        termine|acabe con todo
        ganas de hacer? nada $
        sin ganas $
        harta|harto de ~ todo ~ papeleo|frio
        no quiero seguir recibiendo|con los|sus|estos|tantos|mas|tus? mensajes|textos
        caida de ~ pelo|sol|agua|internet
        caida ~ temperatura|precios
        <van|va|esta|estan|sigue|siguen|anda|andan|precios|dolar|bolsa en caida libre
        lesion de guerra
        no quiero estar mas? recibiendo
        no quiero estar mas? en la|su|esta|ninguna? lista
        morir ~ intento
        corto ~ circuito|tiempo
        corte|corto|cortaron el|la|las|mi|un? pelo|luz|cabello|agua|fleco
        se corto ~ luz|llamada|internet
    """,
    "denied_all": """
        <,|.|ya|ahora nada de eso !sirve !hice !hago !hare !pude !puedo !me
        ^ nada de eso
        y no nada ,|.|$
    """,
    "taken_back": """
        antes me? _ ,? ahora|ya|hoy nada|no|cero ,|.|$
        mareo|mareos|vertigo|vertigos|entumecimiento|hormigueo|hormigueos|caidas|caida|desmayos ,? ninguno|ninguna|cero|nulo|nulos !de !que !como
        sirven|sirve|servirian|sirvan ~ a ella|el ,|.|$
        me equivoque con lo de que
        me equivoque con lo de|del la|el|los|las? DIZZY|caida|golpe|desmayo|pecho|aire|hormigueo|orina
        olvide|borre|ignore lo que ~ puse|dije|escribi|mande|conte antes|ahorita|recien? .|$
        olvide|borre|ignore lo que ~ puse|dije|escribi|mande|conte de|del la|el|los|las? DIZZY|caida|golpe|desmayo|pecho|aire|hormigueo|orina
        era de mi PERSON
        mensaje era de|para mi|la|el|un|una|otra|otro? PERSON|CLIENTLIKE|persona
        LOL no mentira , !me !si !yo !mi
        LOL no mentira .|$
        , no ,? mentira .|$
        era mentira|broma|chiste .|$|LOL
        era mentira|broma|chiste , !me !si !se !mi !yo !no
        era mentira|broma|chiste lo
        era mentira|broma|chiste que !estoy !estaba
        quise|queria|quisiera ~ poner|decir|escribir|mandar #|N0
        quise|queria ~ poner|decir|escribir que? me|se? calle|callo|callada|dormi|rei
        quise|queria ~ poner|decir|escribir que? me fui a dormir|acostar|comer|trabajar|caminar|descansar
        dije|puse|escribi que ~~ era que
        , mentira , !me !si !mi !yo !se
        , mentira .|$
        LOL mentira|broma !que !me !si !no !de
    """,
    "chronic": """
        dolor|dolores|molestia|molestias|mareo|mareos|mareito|hormigueo|dormida|dormido|dormidas|entumida|adormecida de siempre
        de siempre me|se da|dan|pasa|duele|truena|truenan|cruje|crujen|ha
        el|la|los|mi dolor|dolores|molestia|molestias|hormigueo|mareo|mareos de toda la|mi vida
        siempre me|se ha
        ^ toda la vida
        toda la vida me|he|ha|se|igual|con
        desde siempre|chiquita|chiquito|nina|nino
        truena|truenan|cruje|crujen|crujio|trono|crujieron|tronaron|suena|suenan|duerme|duermen|hormigueo|hormiguea ~ como siempre
        como siempre me|se truena|truenan|cruje|crujen|duerme|duermen
    """,
    "idiom.chest_or_breathing": """
        asfixian|asfixia|ahogan|ahoga las|los|mis|la|el|mi deudas|cuentas|deuda|bills|facturas|recibos|trabajo|tareas
        baja|subio|bajo|sube la|mi|de? presion !del !en !al
        pico un|una|el|la zancudo|mosquito|mosco|abeja|bicho|hormiga|pulga|avispa en el pecho
        me ahogue con el|la|un|mi|una agua|saliva|cafe|pan|comida|tortilla|te|jugo ,? pero|y ya? paso
        sin aliento|aire|respiracion viendo|mirando|escuchando|oyendo el|la|los|las|una|un|ese|esa|esas final|partido|gol|penal|capitulo|atardecer|paisaje|foto|fotos|vista|noticia|noticias|concierto|pelicula !sentada !sentado !sin
        gol|partido|penal|foto|noticia|final|capitulo|vista|precio|recibo me|nos dejo|deja sin aliento|aire|habla|respiracion
        lleve|llevo|llevamos|llevando|acompane|acompano|acompanando a mi|la|el|una|un CLIENTLIKE|PERSON al|a hospital|urgencias|emergencia|emergencias|doctor|medico|clinica|seguro con|por _
        novela|telenovela|pelicula|teleserie ,? le|al dio|da|dieron un|el infarto|ataque al|a !mi
        corazon en la mano le|les|te doy|dan|damos|agradezco
        matar|mata de un? infarto
        me ahogo en|de papeles|tramites|pendientes|quehacer|tareas|cuentas|deudas
        sin aliento|aire de ver|mirar el|la|lo|los|las|tanto|tanta|a|esa|ese
        mareada|mareado|mareo|maree|marie|palida|palido|blanca|desmayo ,? y? con? sudando|sude|sudor|sudores|sudaba frio|fria|frios
        casi|que me voy|desmayo|iba ,? y? con? sudando|sude|sudor|sudores|sudaba frio|fria|frios
        sudando|sude|sudor|sudaba frio ,? y? casi? perdi|me voy|desmaye|sentido|desmayo
        blanca|palida y? sudando|sude|sudor|sudaba frio
        ^ el|la|del|de|mi? la|el? pecho|aire|respiracion|corazon bien|perfecto|perfecta|limpio|limpia|tranquilo|tranquila|normal ,|.|y|ni|$
        ,|.|y|pero el|la|del|de|mi? la|el? pecho|aire|respiracion|corazon bien|perfecto|perfecta|limpio|limpia|tranquilo|tranquila|normal ,|.|y|ni|$
        ^ respiro|respirando bien|perfecto|normal ,|.|y|ni|$
        ,|.|y respiro|respirando bien|perfecto|normal ,|.|y|ni|$
        nada|cero|ni de|del el? pecho
        como respiro ,|.|$
        como ~~ boto|suelto|tomo|saco|inhalo|exhalo ~ aire
        PAIN|# ~ nada|cero|ni|no de|del|en el? pecho
        quitaron|quito|quite|quitan|quitaste un|ese|gran|tremendo|tamano gran? peso de|del mi? encima|pecho
        me quite|quitaron el|este|ese peso de encima
        sin aire en? la|las|el? llanta|llantas|goma|gomas|rueda|ruedas|neumatico|pelota
        bici|bicicleta|llanta|llantas|rueda|ruedas|goma|gomas|pelota esta|estan|estaba|quedo|quedaron|andaba? sin aire
        pulmones de nadador|toro|atleta|roble
    """,
    "idiom.fall_or_injury": """
        recupere|recuperada|recuperado de la|mi caida de MONTH
        recupere|recuperada|recuperado de la|mi caida del ano pasado
        hombro|pierna|espalda|rodilla|cintura|cadera|gemelo|pantorrilla|cuello|tendon me tira|tiro|tiraba un|una|poco|mucho|#|bastante
        me tira|tiro|tiraba un? poco|poquito|bastante el|la|los|las? hombro|pierna|espalda|rodilla|cintura|cadera|gemelo|pantorrilla|cuello|tendon
        caigo|cai|caimos ~ para|pa atras ~ risa
        cai|caigo|caimos en la|su|tu|una trampa|tentacion|broma
        cai|caigo|caimos ~ como? una? piedra|tronco|tabla|costal|plomo ,|.|$
        cai|caigo en la|mi|el|una hamaca|cama|sofa|sillon
        hoy zafo ,|.|$|de
        ^ ya? aterrice|aterrizamos .|$
        ^ ya? aterrice|aterrizamos , !de !en !sentada !sentado !y
        mi CLIENTLIKE se cayo|callo|lastimo ayer|anoche|hoy? ,? y|pero? yo hice|termine|complete|cumpli mis|los|las|todo|todos|mi
        enyesaron|enyesar|enyeso|escayolaron el|la|un|una|los _ de|a la|el|mi|un|una PERSON
        rompi|rompo|rompiendo|quebre la cabeza buscando|pensando
        con|de|a mi|la|el|una|un vecina|vecino|amiga|amigo|comadre|nieto|nieta|sobrina|sobrino|prima|primo que se cayo|callo|golpeo|quebro|rompio|fracturo|resbalo
        hace # anos me quebre|rompi|fracture|lastime|torci|cai ~ y hoy|ahora hice|termine|complete|cumpli !y !pero
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
        fue|era un? error|falla|culpa de|del el|los|mi|mis? dedo|dedos
        n|mensaje|rato|numero|letra|respuesta ~ fue con el? codo|dedo|pulgar
        rompi|rompo|parti|parto ~ lomo ~ haciendolos|haciendolas|haciendo|trabajando
        cae|caia|cayo|cayendo ~ baba ~ con|por|viendo|ver|cuando ~ PERSON|bisnieto|bisnieta|bisnietos
        me cai de la mata ,|.* pensaba|pense|crei|creia|resulta|hoy
        dije que me cai ,? pero no ,|.|$|fue|era|es|cierto|verdad|paso
        cuando me cai ~ en MONTH ~~ usaba|andaba|estaba|tenia|era
    """,
    "idiom.faint_or_dizzy": """
        no es que me maree|desmaye
        perdi|perdio un? poco|poquito? el? equilibrio ,? y|pero|mas ~ agarre|sostuve|detuve|apoye|recupere
        perdi|perdio un? poco|poquito? el? equilibrio en|haciendo|tantito|un|poquito|hoy|ahi|al ~ ~ ,? y|pero|mas ~ agarre|sostuve|detuve|apoye|recupere
        PAINWORD ya? se me fue|va|iba|ha !la !el !todo
        PAINWORD ya? se me fue|va|ha el WEEKDAY|dia
        un|una _ se me|nos desmayo|desvanecio|mareo
        mi CLIENTLIKE se desmayo|mareo ayer|anoche|hoy? ,? y|pero? yo hice|termine|complete|cumpli mis|los|las|todo|todos|mi
        desmaye|desmayo|desmayar|desmayarme|desmayaba de risa|amor|emocion|ternura
        vi todo negro porque|cuando se fue la luz ,|.|$|LOL
        con|de|a mi|la|el|una|un vecina|vecino|amiga|amigo|comadre|nieto|nieta|sobrina|sobrino|prima|primo que se desmayo|mareo|desvanecio
        apague la|el tele|television|radio|telefono|celular|novela|luz|computadora
        perdi|perdio|perdiendo el equilibrio y|pero ~ agarre|sostuve|detuve|apoye|agarro|recupere
        el|los|ese|esos|aquel|aquellos mareo|mareos|vahido|desmayo de|en MONTH|invierno|verano !y !siguen !sigue !volvio
        mareada|mareado|mareados|mareadas con|de tantas|tantos|sus|las|los|tanta|la|tanto|el|puras|puros? preguntas|historias|platica|platicas|cuentos|preguntadera|juegos
        mareada|mareado|mareados mi|el|la|los|mis PERSON|CLIENTLIKE con|de ~ preguntas|historias|platica|platicas|cuentos|preguntadera|juegos
    """,
    "idiom.nerve_or_bladder": """
        se me durmio la|el pierna|pie ~ viendo|sentada|sentado|mirando ~ ~ ,? pero|y ya ,|.|$|paso|desperto
        ya se me|le quito|paso|fue|desaparecio el|la|lo hormigueo|adormecimiento|entumecimiento|cosquilleo|dormido|entumido ,|.|$|que|gracias
        ya se me|le quito|paso|fue|desaparecio el|la|lo hormigueo|adormecimiento|entumecimiento|cosquilleo|dormido|entumido de|del la|el|los|las|mi|mis? _ pasada|pasado? ,|.|$|gracias
        no|ni le veo|encuentro|hallo sentido|caso|chiste
        boca del pecho|estomago
        no|ni senti|siento nada de mareo|dolor|molestia|molestias|cansancio|feo|raro|malo !ni !en
        no|ni senti|siento nada de mareo|dolor|molestia|molestias|cansancio ni de? mareo|dolor|molestia|molestias|cansancio|nada ,|.|$
        escribo|contesto ~~ <porque|ella|el|pues|que|ya|mama|papa|abuela|abuelo|esposo|esposa|senora|senor|paciente no ve bien ,|.|$
        LIMB ~ como ~ palo|palos|piedra|piedras|tabla|tablas de? ~ duras|duros|agujetas|tiesas|tiesos|cansancio ,|.|$
        cae|caia|cayo|cayendo ~ baba ~ con|por|viendo|ver|cuando ~ PERSON|bisnieto|bisnieta|bisnietos
        no puedo hacer los|las|mis? ejercicio|ejercicios|rutina|terapia|lagartijas|flexiones|puntas|talones
    """,
    "idiom.possible_fracture": """
        hace # anos me quebre|rompi|fracture ~ y hoy|ahora hice|termine|complete|cumpli !y !pero
    """,
    "idiom.severe_pain": """
        insoportable no es|fue|era|llega ,|.|$|ni|pero
        no es|fue|era|llega|esta a? insoportable|inaguantable|intolerable ,|.|$|ni|pero
        no es|fue|era|llega|esta a? insoportable|inaguantable|intolerable solo|nomas !de !en !por
        no aguanto|soporto|resisto esta|la|tanta|mi soledad|tristeza|vida|pena|situacion|angustia|depresion
        no puedo mas ,? ya|asi? que? lo|los|la|las dejo|deje
        no puedo mas ,? manana|luego|despues sigo|termino|acabo|le|los|las|lo
        no puedo mas ,? otro dia
        no puedo mas tarde|tardecito|tardesito|tardito|ratito|rato|temprano|adelante
        no puedo mas noche !y
    """,
    "idiom.crisis": """
        la|el|mi DOCTOR|profesora|profe|maestra|licenciada|fisio|terapeuta|jefe|jefa me va a matar
        me lleva el|la diablo|demonio|chingada|fregada|tostada|trampa
        me mato la|el|esa|ese|esta subida|caminata|cuesta|escalera|rutina|clase|sesion|serie|calor|trabajo|tandem|silla|pared
        que ganas de vivir me|nos da|dan|dio|dieron
    """,
}
