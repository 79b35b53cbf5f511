"""Spanish rules for danger signs, their grades and concerns: a body part, what is wrong with it, how it began.

Written wide on purpose, as in English; what takes a hit back is decided by `reading/scope.py` and by the idioms here.
"""

RULES = {
    "danger.chest_or_breathing": """
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
    """,
    "danger.nerve_or_bladder": """
        se ~ NUMB ~~ LIMB|FACE|SADDLE|BODY|lengua
        NUMB ~ LIMB|FACE|SADDLE|lengua
        LIMB|FACE|SADDLE|lengua ~ NUMB
        NUMBONLY
        no|sin|perdi ~ siento|sentia|sensibilidad|senti|sentir ~~ LIMB|FACE|SADDLE|BODY|cuando|nada|abajo|hago|orino
        no|sin ~ mover|muevo|mueve|levantar|levanto|levanta|responde|responden|obedece|obedecen|controlar|sostiene|sostienen ~~ LIMB|pie
        LIMB ~ no ~ mueve|responde|responden|levanto|sostiene|sostienen|obedece|aguanta|siento|siente|mover|levantar|puedo
        LEG ~ BUCKLE
        BUCKLE ~ LEG|sola|solas
        LEG ~ sin fuerza|fuerzas
        sin fuerza|fuerzas ~ LIMB|en|las|la|media
        fuerza|fuerzas ~ no tengo ~ LIMB
        perdi|pierdo|perdio ~ fuerza|fuerzas
        LIMB ~ WEAK
        WEAK ~ LIMB
        debilidad
        arrastro|arrastra|arrastrando|jalando ~ pie|pierna
        pie ~ caido|arrastra|arrastro
        no ~ aguanto|aguante|aguanta|controlo|controlar|detener|detengo|retener|siento|pude|sentir|puedo|alcance|alcanzo ~ BLADDER|chorro
        no ~ puedo|podido|he ~ orinar|hacer|obrar|orinado|pipi|pis
        perdi|pierdo|perdio|perdiendo ~ control ~ BLADDER|esfinter|esfinteres
        me|se oriné|orine|orino|orina|orinando|orinaba|orino|hice|hago|hizo|hace|cague|ensucie|zurre|mee|meo|cago|moje ~ encima|sin|cuenta|pipi|popo|pis|ropa|cama|calzon|chis|sola|sentir|pantalon|pantalones
        me orine|zurre|cague|mee|orino
        se orino|orina|zurro|cago|meo
        orine|orino|orina|pipi|chis|popo|pis ~ sin ~ sentir|darme|querer|cuenta|avisar|darse
        sale|salio|salia|gotea|escapa|escapo|escurre ~ orina|pipi|chis|popo|pis
        incontinencia|entumecimiento|adormecimiento
        ahi abajo ~~ NUMB|siento|dormida|dormido|adormecido
        NUMB ~ ahi abajo
        FACE ~ DROOP
        FACE ~~ chueca|torcida|caida|dormida|paralizada|ladeada|colgando
        DROOP ~ FACE
        fue|va|voltea|volteo|jalo|jala|torcio|tuerce ~ boca|cara ~ lado
        boca|cara ~ de lado
        media cara
        mitad ~ cara|cuerpo
        un lado ~ cara|cuerpo ~ NUMB|no|caido
        lado ~ cuerpo|cara ~~ NUMB|fuerza|dormido|no|debil|pesado
        SPEECH ~ SLUR
        SLUR ~ SPEECH
        habla|hablo|hablando|hablar ~ raro|enredado|mal|trabado|arrastrado|borracho|chistoso|feo|bien|chueco
        no ~ puedo|podia|pude|puede|sale|salen|salian|salia|salir|saca|encuentro|entiendo|entiende|entienden|entendemos|forma ~~ hablar|palabras|palabra|habla|dice|decir
        palabras ~ no ~ salen|salian|salieron
        no le entiendo|entendemos|entienden ~ habla|dice|nada|que
        lengua ~ trabada|traba|pesada|dormida|enreda
        derrame|embolia|derrame cerebral|ictus|apoplejia
        no ~ veo|ve|vi|mira|miro ~ ojo|lado|bien|nada|doble
        veo|vi|miro|ve ~ doble|borroso|nublado|borrosa
        mano|brazo ~ boba|bobo|tonta|inutil|muerto|muerta|paralizado|paralizada
        cae|caen|cayo|tiro ~ cosas|taza|cuchara|vaso ~~ mano|fuerza|manos
        cae ~ brazo|parpado
        peor dolor de cabeza
    """,
    "danger.fall_or_injury": """
        me cai|caigo|caia|caido|caimos
        me ~ he caido
        me he caido
        me cai
        cai !en !cuenta !rendida !dormida !enferma !como !bien !mal !de !a
        cai de ~ espaldas|nalgas|rodillas|sentada|sentado|boca|lado|sentones|pompas|escalera|bicicleta|cama|escaleras|silla|bruces|cabeza|hocico|frente|costado|lleno|cara|panza|ladito
        cai a|al suelo|piso|canal|hoyo
        cai en ~ bano|piso|cocina|calle|patio|suelo|escalera|regadera|banqueta|tina|pasto|hielo|jardin|sala|tienda|parada|porche
        cai ~ sentada|sentado|hincada|hincado|parada|escaleras|mano|rodilla|brazo|bano|cocina|patio|piso|calle
        se cayo|callo|cae|caia !el !la !mi !un !una !los !las !su !lo
        se cayo|callo|cae mi|la|el|su? CLIENTLIKE
        CLIENTLIKE ~ se? cayo|callo|cae
        se ha caido !el !la !mi
        se cayo de|en ~ cama|silla|escalera|escaleras|bano|espaldas|nalgas|carro|cocina|patio|calle|regadera|rodillas|lado|sentada
        caida|caidas|cayendo
        tuve|sufri|di|dio|pegue|metí|meti|lleve|puse|dimos ~ caida|costalazo|sentonazo|porrazo|guamazo|fregadazo|golpazo|trancazo|madrazo|ranazo|resbalon|tropezon|zapotazo|zapotazo|zarpazo|chingadazo|batacazo|golpe|culazo|suelazo|sentón|senton|ranazo
        costalazo|sentonazo|porrazo|guamazo|batacazo|suelazo|fregadazo|ranazo|senton|sapotazo
        fui ~ boca|bruces|lado|espaldas|nalgas|hocico|largo|suelo|piso|jeta|trompa
        fue ~ de boca|bruces|espaldas|nalgas|hocico
        me|se fui|fue|iba al piso|suelo
        termine|acabe|quede|pare|di|azote|dar|vine|llegue|aterrice|fui ~ en|al|contra ~ suelo|piso
        tirada|tirado ~ suelo|piso|bano|cocina
        tire|tiro ~ piso|suelo
        me resbale|tropece|rode|patine|enrede|atore|azote|estampe|desplome|volque
        resbale|tropece|rode|azote|patine|resbalé|desplome
        se resbalo|tropezo|rodo|desplomo
        torci|torcio|doble|falsee|luxe|lastime ~ JOINT|BACKBONE
        doblo|torcio|falseo ~ tobillo|pie|muneca|rodilla|mano|dedo
        tobillo|pie|muneca ~ doblo|torcio|torci|doble
        esguince|torcedura
        me|se HIT ~ JOINT|BACKBONE|HEADPART|BODY|con|contra
        HIT ~ JOINT|HEADPART
        pegue|golpee|golpe|golpie|pego|di|dio|machuque ~~ cabeza|rodilla|cadera|codo|brazo|espinilla|pie|dedo|mano|hombro|frente|cara|costillas|tobillo|pierna|rabadilla
        cabeza ~ golpe|golpee|pegue
        descalabre|descalabro
        golpeada|golpeado|moreteada|moreteado|chichon|moreton|moretones|lesion|lesione
        cayo|callo|deje|solte|cae ~ encima|pie|dedo|dedos ~ pie|pesa|plancha|mano|encima|silla
        se ~ zafo|safo|disloco|salio|luxo|descoyunto|descompuso ~ hombro|rodilla|cadera|hueso|dedo|codo|muneca|tobillo|mano|lugar
        hombro|rodilla|cadera|codo ~ zafo|safo|salio|disloco|luxo|zafado|dislocado|fuera|lugar
        DISLOC
        choque|chocamos|chocaron|choco|volcamos ~ carro|freeway|troca|coche|auto|camioneta|ayer|hoy|poste|me|nos|y
        choque ayer|hoy|en
        accidente|choque ~ carro|coche|auto|troca|freeway|moto
        atropello|atropellaron|atropellado|atropellada|empujo|empujaron|tumbo|tumbaron
        me ~ quebre|rompi|fracture|fisure|parti ~ JOINT|brazo|dedo|pie|muneca|hueso|costilla|costillas|mano|pierna|cadera
        quebre|rompi|fracture|fracturo|quebro ~ brazo|muneca|dedo|pie|tobillo|cadera|mano|hueso|pierna|hombro|codo
        me lastime|lesione|accidente
        caida del|de|en
    """,
    "danger.possible_fracture": """
        BACKBONE ~ CRACK
        BACKBONE ~~ crujido|trono|tronido|crujio|chasquido|trone|crac|crack
        CRACK ~ BACKBONE
        CRACK ~~ BACKBONE
        senti|sentir|oi|escuche|sintio|hizo|oyo ~ crujido|tronido|chasquido|crac|crack|trono|crujir|tronar|crujio|reventar|trueno|quebro|pop ~~ dolor|duele|BACKBONE|enderezar|puedo|cadera|aguanto|pisar|horrible|feo|costilla
        algo ~ trono|crujio|quebro|revento|rompio|crack|crac
        me trono|crujio ~ algo|cadera|espalda|hueso|columna|cintura|costilla
        SUDDEN ~~ BACKBONE
        BACKBONE ~~ SUDDEN
        SUDDEN ~ dolor ~ BACKBONE
        dolor ~ SUDDEN ~ BACKBONE
        estornude|tosi|estornudar|toser|tosiendo ~~ BACKBONE
        BACKBONE ~~ estornude|tosi|estornudar|toser|enderezar|enderezo
        de repente|pronto|golpe ~~ BACKBONE ~~ dolor|duele|dolio
        dolor ~~ de repente|golpe ~~ BACKBONE
        vertebra|vertebras|columna ~ fractura|fracturada|quebrada|rota|aplastada|quebro
        fractura|quebre|fracture ~ vertebra|columna|espalda
        me quebre|fracture ~ brazo|muneca|cadera|pie|tobillo|costilla|costillas|pierna
    """,
    "danger.faint_or_dizzy": """
        DIZZY
        me mareo|maree|marie|mareaba|mareo
        se mareo|marea|desmayo|desvanecio
        todo|cuarto|casa|mundo|cabeza|piso|techo|paredes ~ vueltas|vuelta|giraba|gira|girando|movia|movio
        da|dio|daba|daban|dan|dando ~ vueltas
        me|se ~ desmaye|desmayo|desmayaba|desmayar|desvaneci|desvanecio|desvanecer
        desmaye|desmayo|desmayada|desmayado|desmayar|desmayarme|desmayos|patatus|soponcio|yuyo|telele
        perdi|perdio|perder ~ conocimiento|sentido|conciencia
        inconsciente
        puso|pone|ponia|puse|nublo|nubla|oscurecio|oscurece|vi|veo|ponen|borro|fue ~ negro|nublado|vista|oscuro|blanco|estrellas|estrellitas|mundo|borroso
        nublo|nubla|oscurecio|borro|fue ~ vista
        vista ~ nublo|nublada|negro|oscurecio|fue|nubla
        vi|veo|viendo estrellas|estrellitas|lucecitas|negro|puntitos
        se me fue la vista|onda|avion|luz
        cabeza ~ ligera|hueca|vacia|flotando|flota
        siento|senti|sentia ~ desvanecer|desmayar|flotando
        colapse|desplome
        casi ~ desmayo|desmaye|desvanezco|apago
        apague|apago ~ luz|tele|de
    """,
    "faint_full": """
        me|se ~ desmaye|desmayo|desvaneci|desvanecio
        perdi|perdio ~ conocimiento|sentido|conciencia
        inconsciente|desmayada|desmayado
    """,
    "faint_near": """
        casi|iba|voy|siento|sentia|senti|por poco|quiere|queria|a punto ~~ desmayo|desmaye|desmayar|desmayaba|desvanecer|desvanezco|desvaneci
    """,
    "dizzy_standing": """
        DIZZY ~~ levanto|levante|levantarme|paro|pare|pararme|pararse|levantar|parar|levantarse
        levanto|levante|levantarme|paro|pare|pararme|pararse|levantar ~~ DIZZY
    """,
    "passed_over": """
        se me paso|quito
        se paso|quito
        ya ~ paso|bien|mejor|quito|estoy
        fue rapido|ratito|momento|nada
        paso rapido|luego
        ya estoy|ando bien|mejor
    """,
    "danger.severe_pain": """
        SEVERE
        no ~ aguanto|soporto|aguante|resisto|tolero|aguantando|soportar|aguantar|aguanta|soporta|puedo ~ dolor|mas
        ya no aguanto !pisar !parada !parado !sentada !los !las !mensajes
        dolor|duele ~~ no ~ aguanto|soporto|aguante|resisto|aguantar|soportar
        dolor|duele|doliendo|dolores ~~ no ~ puedo|pude|podia|deja ~ moverme|mover|caminar|dormir|levantarme|parar|pararme|respirar|pisar|enderezar
        dolor ~ matando|mata|muerte|infierno|infernal|brutal|insufrible|horroroso|perro|desgraciado|cabron
        matando ~ dolor
        me muero de|del dolor
        muero ~ dolor
        me esta|estan|tiene matando ~ !de !hambre !calor !nieto !risa
        peor dolor de|en mi|la vida
        peor dolor que|imaginable|posible|jamas|nunca
        dolor mas fuerte ~ vida
        lloro|llore|llorando|grito|grite|gritando|chillando|llorar|gritar|aullando ~~ dolor|duele
        dolor|duele ~~ llorar|llorando|gritar|grito|lloro|grite|gritos|chillar|vomite|vomitar|desmayo
        retuerzo|retorciendo ~ dolor
        mas de 10|diez
    """,
    "danger.crisis": """
        quiero|quisiera|kiero|ganas|gustaria|prefiero|preferiria|ojala|deseo|pienso|pensado|penso ~ morir|morirme|muera|muriera|matarme|muerta|muerto|desaparecer|despertar|irme|acabar
        no|ni ~ quiero|kiero|ganas|gustaria|quisiera|quiere ~ vivir|viva|vivo|despertar|seguir|estar|existir|vida|amanecer
        no quiero ~ seguir|vivir ~ asi|aqui|viviendo
        ganas de ~ vivir|seguir|morir|morirme|nada
        no ~ ganas ~ vivir|viva|seguir
        matarme|suicidarme|ahorcarme|dispararme|colgarme|envenenarme|quitarme la vida
        quitarme ~ vida
        quitar|quito|quite ~ vida
        SUICIDE
        hacerme|hacer|haga|hago ~ dano
        lastimarme|cortarme|danarme
        acabar|terminar|acabe|acabo con ~ todo|mi|vida|esto
        acabar ~ con mi vida
        no ~ sentido|caso|chiste|motivo|razon|veo|vale ~~ vida|vivir|viva|seguir|viviendo
        vida ~ no ~ sentido|vale
        sin ganas de vivir
        cansada|cansado|harta|harto de vivir|la vida|todo|existir
        mejor ~ muerta|muerto|muero|morirme|estaria|sin mi
        mejor me muero|mato
        estaria|estarian|estaran|estan|seria mejor ~ muerta|muerto|sin|muriera
        sin mi ~ mejor
        mejor|tranquilos sin mi
        nadie ~ extranaria|extrana|necesita|importo|quiere|echaria
        soy|son|siendo|ser ~ carga|estorbo ~~ muero|morir|muerta|vivir|todos|familia|hijos
        quitar|quito|quitarles|dejar ~ carga
        para que vivo|vivir|sigo|existo|estoy
        dormirme ~ no despertar
        no despertar|amanecer
        tomarme|tome|tomar|tragarme|tragar|tomando ~~ todas|frasco|bote|puno ~~ pastillas|medicinas|medicina
        pensando|pensado|pienso|viendo|mirando|juntando|guardando|guardado|juntado|contando ~~ PILLS
        ya no puedo ~ vivir|vida
        que me lleve dios|diosito|senor|muerte|la
        dios|diosito|senor ~ lleve|recoja|recoger
        reunirme|irme|alcanzar|estar con ~~ difunto|difunta|viejo|esposo|el|ella|dios ~ ya|cielo
        despedirme de todos
        tirarme ~ puente|tren|balcon|carro|ventana
    """,
    "idiom.fall_or_injury": """
        se ~ cae|cayo ~ brazo|parpado|boca|cara|mano|pelo|diente
        tocado caerme
    """,
    "idiom.chest_or_breathing": """
        no es que me falte ~ aire
        no es que me ahogue
    """,
    "denied_all": """
        nada de eso
        y no nada
        no , nada
    """,
    "taken_back": """
        me equivoque con lo
        olvide|borre|ignore lo que
        era de mi PERSON
        mensaje era de
    """,
    "chronic": """
        de siempre|toda
        siempre me|se ha
        toda la vida
        desde siempre|chiquita|chiquito|nina|nino
        como siempre
    """,
    "idiom": """
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
        todo|mi|con|de corazon
        corazoncito|corazon de melon
        golpe de ~ suerte|estado|calor
        de golpe
        pego ~ duro|fuerte ~ noticia|calor|sol|tristeza
        pego|pega ~ hambre|sueno|flojera|sol|calor|noticia
        me pegue ~ a|al ~ tele|novela|sofa
        me pegue ~ bano|banazo|desvelada|atracon
        di cuenta
        dio|di|da ~ vueltas|vuelta|vueltecita ~ parque|manzana|calle|tienda|centro|asunto
        vueltas ~ parque|manzana
        hice|hicimos|di|dos|tres|las|una ~ vueltas|vuelta
        se ~ fue ~ luz|dia|tiempo|tarde|manana|noche|internet|avion|camion|agua|senal|onda
        sin aire acondicionado
        sin aire ~ grados|calor|acondicionado|carro|casa
        grados ~ sin aire
        tomar|agarrar|salir|pegando aire|el aire
        al aire libre
        aire fresco
        duro|dormi|durmio|dormida|dormido|dormi|durmieron|dormir ~ sofa|sillon|tele|siesta|tarde|rato|cama|temprano|profundo|toda
        me quede dormida|dormido
        quede|quedo dormida|dormido
        bien dormida|dormido
        dentista|anestesia|muela ~~ NUMB|dormida|cara|boca
        NUMB|dormida ~~ anestesia|dentista
        rodillas ~ truenan|crujen|tronan|suenan
        truenan|tronar|truena|truene|cruje|trueno|crujen ~ rodillas|huesos|dedos|nudillos
        tronar|truene los dedos
        presion ~ # 
        presion alta|baja|arterial|me|salio|la
        baja|subio|bajo|sube ~ presion
        pastilla ~ presion
        presion de ~ trabajo|tiempo
        peso|pesa ~ #
        me ahogo en|de ~ trabajo|risa|vaso
        ahogar|ahogue|ahogando|ahogo|ahoga ~ vaso|trabajo|risa|deudas
        respirar ~ emocion|risa|nariz|tranquila|hondo|profundo|novela
        respiro hondo|profundo
        respire|respirar|respiro ~ hondo|profundo|profundamente
        quita|quito|quitan|robo|dejo ~ aliento
        precio ~~ aire|aliento|infarto|desmayo|mareo
        aire|aliento|infarto|desmayo|aliento ~~ precio|gol|cuenta|recibo|gas|renta
        infarto ~ gol|partido|susto
        casi me da ~ infarto|algo|ataque
        mareo ~ carro|barco|avion|camion
        marea ~ nietos|hablar|tanto|gente
        me ~ tiene|traen|trae|tienen mareada ~ papeles|vueltas
        saco de onda
        torcer|torci|torcio ~ brazo ~ para|hija
        hacer|hice ~ pedazos
        tropece con ~ noticia|foto|amiga|vecina|receta|comadre
        tropezar|tropece ~ misma piedra
        por poco|casi
        acabar|acabe|terminar|acabo con ~ ejercicios|rutina|quehacer|lista|tarea|dolor #|ellos|las|los
        acabar|terminar|acabe|termine con ~ todo ~ lista|rutina|ejercicios|#
        termine|acabe con todo
        ganas de ~ nada $
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
    "near_fall": """
        casi|por poco|poquito ~ cai|caigo|voy|cae|caer|resbalo|resbale|fui|tropiezo|caia|mato|azoto|doy
        casi me ~ cai|caigo|voy|resbalo|fui
        por poco ~ me ~ caigo|cai|voy|resbalo|mato
        por poquito
        estuve a punto ~ caer|caerme
        iba a caer
    """,
    "caught": """
        no ~ cai|caigo|caer|paso|llegue
        me agarre|sostuve|detuve|apoye|alcance|detuvo|agarro|agarraron
        alcance a ~ agarrarme|sostenerme|agarrar|detenerme
        pero no ~ cai|nada
        no paso ~ nada|mayores
    """,
    "slip": """
        resbale|tropece|resbalo|tropezo|patine|enrede|atore|resbalon|tropezon
    """,
    "head_hit": """
        pegue|golpee|golpe|golpie|di|descalabre|pego|golpeo ~~ cabeza|frente|nuca|cara|craneo
        cabeza ~ golpe|pegue|golpee|piso|suelo|pared|chichon
        chichon|descalabre
    """,
    "cannot_rise": """
        no ~ puedo|pude|puede|podia|pudo ~ levantar|levantarme|levantarse|parar|pararme|pararse|caminar|apoyar|pisar|enderezar|mover|moverme
        no ~ aguanto ~ pisar|apoyar
        sigo ~ piso|suelo
        sigo tirada|tirado
        ambulancia|bomberos|911|paramedicos
        tuvieron que ~ levantar|ayudar
        apenas ~ puedo ~ caminar|pisar|parar
    """,
    "hurt_by_fall": """
        duele|dolor|duelen|adolorida|adolorido|hinchada|hinchado|inflamo|inflamada|moreton|moretones|moreteada|moreteado|sangre|sangro|raspon|raspones|lastime|lastimada|golpeada|golpeado|chichon|quebre|torci|zafo|morada|enyesaron|puntos|melon
        pegue|golpee|di ~~ BODY|HEADPART
    """,
    "unhurt": """
        no ~ paso|hice|duele|lastime ~ nada
        sin ~ golpes|lesiones
        estoy bien
    """,
    "older_day": """
        ayer|antier|anteayer|anoche|lunes|martes|miercoles|jueves|viernes|sabado|domingo
        semana pasada
        hace # dias|semanas|dia|semana
        otro dia|noche
        pasado
    """,
    "concern.clot_or_wound": """
        CALF ~ SWOLLEN
        SWOLLEN ~ CALF
        WOUND ~ OOZE
        OOZE ~ WOUND
        coagulo|trombosis
    """,
    "concern.fever": """
        fiebre|calentura|escalofrios
        temperatura ~ #
    """,
    "concern.surgery_or_hospital": """
        SURGERY
        me quebre|fracture ~ cadera|brazo|muneca|pierna|tobillo
    """,
    "concern.death": """
        CLIENTLIKE ~ DIED
        fallecio|falleció
        ya no esta con nosotros
        DIED ~ CLIENTLIKE
        senora|senor ~ fallecio|murio
    """,
    "concern.bereaved": """
        se murio|fallecio ~ mi
        murio|fallecio mi
        mi PERSON|CLIENTLIKE|ANIMAL ~ murio|fallecio
        FUNERAL
        luto|duelo|velorio|entierro|funeral
    """,
    "concern.flare": """
        brote
        crisis de dolor|artritis|ciatica
    """,
    "concern.new_back_pain": """
        dolor|duele ~ nuevo ~ BACKBONE
        dolor nuevo
        BACKBONE ~ nuevo|nunca|antes|desde
    """,
}
