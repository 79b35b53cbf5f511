"""More Spanish rules for danger signs: the words of many countries, and how people tell a sign without its name.

Same labels as danger_rules.py, whose rules come first; two files only so that each stays short enough to read.
"""

RULES = {
    "danger.chest_or_breathing": """
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
        no ~ llena|llenan|lleno ~ pulmones
        pulmones ~ llenan|cerrados|aire
        elefante|piedra|loza|losa|ladrillo|tanque|vaca|bulto ~ pecho
        pecho ~ elefante|piedra|losa|ladrillo|bulto|peso
        corazon ~ loco|desbocado|mil|boca|salir|salia|sale|brincos|caballo|tropezando|rapido|fuerte
        corazon ~ duele|dolor|arde|punza|falla|para
        dolor|duele ~~ brazo izquierdo
        labios|boca|unas ~ morados|azules|moradas|azul
    """,
    "danger.nerve_or_bladder": """
        no ~ responde|responden|obedece|obedecen|contesta ~ LIMB
        parestesia|parestesias|hipoestesia|paresia|hemiparesia|disartria|anestesia en silla
        perdida ~ fuerza|sensibilidad|control|esfinteres
        LIMB ~ como|de ~ trapo|gelatina|plomo|palo|corcho|madera|hule|esponja|lana
        arrastro|arrastra|arrastrando ~~ pierna|pie|martes|lunes|dias|ayer
        la|lo arrastro
        aguantar|aguanto|aguanta|controlar|controlo|contener ~ ganas ~ orinar|bano|pipi
        se ~ sale|salen|escapa|sale ~ orina|pipi|pis|caca|popo|sola|solo
        sale|escapa|salio|escapo ~ orina|pipi|pis|popo|caca|chis
        baba ~ lado
        babeo|babea|babeando ~ lado
        hablo|habla|hablando ~ como ~ borracha|borracho|papa|trapo
        hablo|habla|hablaba|hablando enredado|trabado|raro|mocho|chueco|feo|pastoso
        ojo|parpado ~ caido|cae|cayo|cierra
        un lado ~ dormido|caido|muerto|paralizado|no
        medio|media ~ cuerpo|cara|boca|lado ~ dormido|dormida|no|muerto|paralizado
        medio cuerpo
        no ~ puedo ~ sonreir|tragar|silbar|levantar ~ pie|brazo|lado|puntas
        tragar ~ no ~ puedo
        confundida|confundido|desorientada|desorientado ~ repente|hoy|no
        no ~ siento|sienti|sentia ~ cuando ~ hago|orino|bano|limpio
        al limpiarme ~ no|siento
        anestesiada|anestesiado|dormida|dormido|adormecida ~ entrepierna|partes|abajo|nalgas|ahi
        partes ~ dormidas|adormecidas|anestesiadas
        piernas|pierna ~ aflojan|aflojaron|doblaron|vencieron|fallan|fallaron|fueron|caen|no me|sin
        me fallan|fallaron|fallo ~ piernas|pierna|rodillas
        mano|brazo ~ no ~ sirve|responde|agarra|aprieta|sostiene
    """,
    "danger.fall_or_injury": """
        pegue|di|dio|dado|meti|metio|metido|acomode|puse|lleve|llevo|saque|sacado ~ palo|porrazo|hostia|madrazo|golpazo|golpe|trancazo|cresta|mugre|chucha|madre|ranazo|tortazo|guarrazo|leche|talegazo|costalazo|piña|pina|castanazo|fregada|matada|suelazo|zambombazo|tremendo
        hostia|porrazo|madrazo|guarrazo|talegazo|tortazo|matada bajando|subiendo|en|que|contra
        patino|resbalo|fue|volteo|voltio|volte|doblo|torcio|chanfleo ~ pie|tobillo|pies
        pie|tobillo ~ patino|volteo|doblo|torcio|resbalo|voltio
        me abri|partí|parti|rompi|raspe|descalabre ~ pera|cabeza|ceja|frente|labio|rodilla|rodillas|mano|barbilla|menton|boca|diente
        patada|codazo|pisoton|pelotazo|pedrada|cornada|topetazo ~ BODY|ojo|cabeza|cara|costillas|pecho|espinilla
        me ~ pateo|patio|tumbo|piso|tiro|aventó|avento|empujo|embistio|revolco
        me|nos chocaron|choco|atropellaron|atropello
        boto|botó|salio|sali|descompuso|zafo|movio ~ cadera|hombro|rodilla ~ 
        cadera|hombro|rodilla ~ boto|zafo|movio|descompuso|brinco
        cai|caida|caer ~ escalera|escaleras|bano|regadera|banera|ducha|tina|vereda|anden|acera|banqueta
        rode|rodando|rodo ~ escaleras|escalera|cuesta|barranco|gradas
        me vine|fui|mande ~ abajo|piso|suelo
        me ~ machuque|aplaste|prense|cogi|pille|agarre ~ dedo|dedos|mano|pie ~ puerta|cajon
        puerta|cajon|martillo|piedra|lata|bulto|olla ~ cayo|pego|dio ~ pie|dedo|cabeza|mano
        quemada|queme|quemadura
        aterrice ~ 
        besé|bese el piso|suelo
        tropezon|resbalon|tropiezo ~ y|cai|al
        amaneci|desperte|quede|termine ~ tirada|tirado
    """,
    "idiom.fall_or_injury": """
        cai|caigo|caer|caerme|cayendo|caia|caemos ~ de|del? ~ risa|sueno|cansancio|nube|catre|hambre|cansada|cansado
        cai malo|mala|enferma|enfermo|gorda|redonda|parada
        cayo|cayeron|cae|caen ~ pesada|pesado|pesadas|mal|bien|de perlas|gordo
        caer|cayo ~ alma ~ pies
        caia|cai ~ de ~ puente ~ sueno
        de rodillas ante|a rezar|rezando
        caida de camus
        pelota|gol|equipo ~ cayo
        dio ~ patada ~ jaja
        me tiro ~ la cama
        tiro a la cama
        quebro ~ silla|vaso|taza
        pego ~ resfrio|gripa|gripe|covid|bicho
        me pego ~ resfriado|gripa|gripe|sol|calor
        golpe ~ estado|vista|suerte|bolsillo
        pelicula|novela|sueno|sone ~~ cai|cae|caia|caer
        me movio ~ piso|tapete
    """,
    "idiom.crisis": """
        no porque ~ quiera morir|morirme
        me quiero matar ~ jaja|jeje
    """,
    "idiom.faint_or_dizzy": """
        corrector ~ desmayo
        era desayuno
    """,
    "idiom.nerve_or_bladder": """
        durmio ~ nalga|pierna|pie ~ manejar|sentada|sentado|jeje|jaja
        no sabe|se leer|escribir
    """,
    "taken_back": """
        no mentira
        era mentira|broma|chiste
        quise poner
        corrector ~ puso
        sone que
        en mi sueno
        antes dije que
    """,
    "danger.possible_fracture": """
        senti|sentir|oi|escuche|percibi|note|oyo|hizo|sono|sonó ~ chasquido|crac|crack|tronido|crujido|rama|seco|algo ~~ dolor|duele|cadera|espalda|cintura|costilla|apoyo|apoyar|tieso|tiesa|enderezar
        sono|hizo|trueno ~ crac|crack|rama|crujido|tronido|chasquido ~ cadera|cintura|espalda|costilla|hueso|columna|lomo
        sono como|a ~ rama|palo|crac
        chasquido|crac|tronido|crujido ~~ dolor|duele|apoyar|enderezar|moverme
        algo ~ quebro|rompio|trono|solto|zafo|revento ~ adentro|cadera|espalda|cintura|columna|costilla
        punalada|cuchillada|latigazo|relampago|rayo|clavo|puyazo|chuzo|chuzos ~ espalda|cintura|lomo|columna|costillas|omoplatos
        espalda|cintura|lomo|columna|rinones ~ trabo|tranco|engatillo|clavo|partio|rajo|quebro|abrio
        quede|quedo ~ doblada|doblado|tiesa|tieso|agachada|agachado|engarrotada|trabada|trabado ~~ espalda|cintura|dolor|lomo
        me ~ rompi|quebre|fracture ~ vertebra|columna|costilla
        mas bajita|chaparra|encogida ~ espalda|dolor
    """,
    "danger.faint_or_dizzy": """
        bajon|palida|lipotimia|sincope|presincope|telele|vaguido|vagido|soponcio|sopor|desvanecimiento|patatus
        irme|iba|voy|fui ~ en blanco|negro
        todo|casa|cuarto|piso|paredes|mundo|suelo|cama|techo ~ mueve|movia|movio|mecia|gira|giraba|baila|bailaba|balancea|encima
        paredes ~ vienen
        amaneci|desperte|aparecio|apareci|encontraron|encontro|hallaron|hallo ~ piso|suelo|bano|regadera
        vi|veo|veia|viendo ~ lucecitas|estrellas|estrellitas|luces|negro|borroso|puntitos|manchas|candelillas|chiribitas
        ando|camino|estoy|siento|sentia ~ como ~ borracha|borracho|barco|nube|flotando|tomada
        como borracha|borracho
        me apague|apago
        cabeza ~ vueltas|da|globo|liviana|aire|volando|hueca|girando
        casi me ~ desmayo|apago
        sudor frio ~ caer|caigo|desmayar
        me fui de ~ mundo|este
        perdi|perdio ~ equilibrio
    """,
    "danger.severe_pain": """
        no ~ lo|la|los|las aguanto|resisto|soporto|tolero
        ya no ~ resisto|soporto|doy
        mas de lo que puedo|aguanto
        no cabe en ~ escala|escalita
        dolor ~ matando|bestial|horrible ~ no|grito|lloro|aguanto
        peor dolor ~ mi vida
        nunca ~ dolor ~ asi|tan
        fuera de ~ escala
        me parte|partio ~ dolor
        rabiando|rabio|rabiar ~ dolor
        dolor ~ rabiar
        veo ~ diablo|estrellas ~ dolor
        dolor ~ estrellas
        prefiero ~ me corten|corten|arranquen
    """,
    "danger.crisis": """
        me quiero ~ matar|morir|ir de este
        quiero matarme|morirme|colgarme|desaparecer
        chato|chata|harto|harta|cansado|cansada|hasta ~ de ~ vivir|esta vida|la vida
        tirarme|aventarme|lanzarme|arrojarme ~ metro|tren|puente|carro|balcon|rio|ventana|azotea|vias
        pensado|pienso|pensando|penso|piensa ~ tirarme|matarme|ahorcarme|acabar|quitarme|morir|morirme|suicidio|aventarme
        tomarme|tragarme|tome|tomar|empastillarme ~ todas ~ pastillas|pastillas
        todas las pastillas ~ vez
        ya no ~ quiero|vale|aguanto|puedo ~ vivir|vida|existir
        nadie ~ necesita|extranaria|llorar|notaria|importo
        necesita nadie
        mejor ~ no ~ despertar|existir|haber nacido
        ojala ~ no despierte|amanezca|muera|muriera
        no ~ vale ~ pena ~ vivir|seguir
        no ~ encuentro|veo|hallo|tiene ~ sentido|chiste|caso|salida ~~ vivir|vida|viva|seguir
        ya me quiero ~ ir|morir
        despedi|despedirme|despedida|carta|cartas ~ hijos|familia|todos|despedida
        acabar ~ de una vez ~ todo|vida
        cortarme|cortando|corte ~ venas|brazos|munecas|proposito
        a proposito ~ corte|pastillas
        para que ~ vivo|sigo|vivir|despierto
        estorbo|estorbando|carga ~~ morir|muera|muerta|mejor|todos
    """,
}
