"""Wider Spanish rules for danger signs, put together from parts: a place, what it does or can no longer do, how it began.

Same labels as danger_rules.py and danger_more.py; several files only so that each stays short enough to read.
"""

RULES = {
    "danger.chest_or_breathing": """
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
    "danger.nerve_or_bladder": """
        derrame|embolia|ictus|apoplejia|hemiplejia
        hormigas|hormiguitas|cosquillas|piquetitos|alfileres|agujas ~ LIMB|LEG|manos|cara|entrepierna
        cuesta|costaba|batallo ~ mover|levantar|hablar|pronunciar|decir|tragar ~ LIMB|LEG|palabras|palabra|bien
        cuesta|costaba|batallo ~ hablar|pronunciar|tragar
        pie|pierna|pata ~ arrastrando|arrastra|arrastro
        parestesia|parestesias|paresia|hemiparesia|disartria|afasia|paralisis|hipoestesia|anestesia_silla
        perdida|perdi|perdiendo|falta ~ de? ~ fuerza|sensibilidad|control|movilidad|vista|vision|habla
        LIMB|LEG ~ como|parece ~ trapo|gelatina|chicle|plomo|fideo|fideos|madera|palo|hilacho|mantequilla|algodon|corcho|muerta|muerto|muertas|trapos|esponja
        la|las|lo|los arrastro|arrastraba|vengo arrastrando
        arrastro|arrastra|arrastrando|arrastraba|jalo|jala ~ pierna|pie|pata|piernas|pies
        LEG|LIMB ~ no me|le ~ responde|responden|obedece|obedecen|hace|hacen|sostiene|sostienen|aguanta|aguantan|sirve|sirven|da|dan|sube
        no me|le responde|responden|obedece|sostiene|sostienen ~ LIMB|LEG|mano|brazo|pierna
        no|ni ~ levantar|levanto|mover|muevo|subir|doblar|sentir|siento ~ LIMB|LEG|brazo|dedo|dedos|pie|punta
        LEG ~ doblan|doblo|aflojan|aflojo|aflojaron|fallan|fallo|vencen|vencio|rinde|rinden|quedaron|flaquean|flaquea|flaqueo|flaquearon
        flaquean|flaqueo|flaquearon ~ piernas|rodillas
        no ~ aguantar|aguanto|aguante|contener|contengo|retener|retengo|controlar|controlo|detener ~ BLADDER|orinar|orina|pis|pipi|caca|popo|esfinter
        se me ~ sale|salio|escapa|escapo|escurre|sali ~ orina|pipi|pis|chis|caca|popo|todo|sola|solo|gotas|mojado
        orinar|orina|pipi|pis|bano|chis ~~ se me sale|salio|escapa|escapo
        me ~ orino|orine|hago|hice|hago|mojo|moje|ensucio|ensucie|meo|mee ~ toser|parar|pararme|cuenta|encima|cama|dormida|dormido|ropa|pararme|sentir|camino
        moje|mojo|moja|mojado ~ calzon|calzones|panal|cama|sabanas|pantalon|ropa|falda ~~ sin|cuenta|sentir|sola|orina|pipi|bano
        no ~ siento|sentia|senti|siente ~~ limpio|limpiarme|orino|bano|entrepierna|nalgas|partes|cuando|taza
        no ~ he|ha|puedo|pude|logro ~ orinar|orinado|mear|obrar
        no ~ he|ha|puedo|pude|logro ~ hacer|hecho ~ pipi|pis|popo|caca
        no me sale ~ orina|pipi|pis
        FACE|cara|boca|ojo|parpado ~ cayo|caido|caida|chueca|chueco|torcida|torcio|torcido|colgada|colgado|jalada|ladeada|volteo|fue|derrite|derretida|paralizada|paralizo|no responde
        se me ~ cae|cayo|caen|sale|salia|escurre ~ baba|babas|saliva|cafe|comida|parpado|boca ~~ lado|boca
        baba|babas|baboso ~ lado
        hablo|habla|hablaba|hablando|suena|sueno|pronuncio|pronuncia ~ como ~ borracha|borracho|trapo|papa|lengua
        lengua ~ no|se ~ traba|enreda|duerme|dormida|pesada|trapo|hace|mueve
        no ~ sale|salen|salian|encuentro|entienden|entiende|puedo|podia ~~ palabra|palabras|decir|hablar|nombre|frase
        digo|dice|decia|diciendo ~ incoherencias|disparates|cosas sin
        palabras ~ salen|salieron|enredadas|cambiadas|mochas|trabadas|pegadas|reves
        media ~ cara|lengua|boca|cuerpo ~ dormida|dormido|muerta|no|paralizada|tiesa|tieso
        medio cuerpo|lado
        un|mismo lado ~ cuerpo|cara|lengua ~~ dormido|muerto|no|flojo|pesado
        mano|brazo ~ se me ~ cae|caen|cayo|suelta ~ cosas|todo|vaso|taza|cuchara|llaves
        se me ~ caen|cayeron|cae|sueltan ~ cosas|vasos|tazas|todo|llaves|platos ~ mano|manos
        quede|quedo|quedando ~ ciego|ciega|tuerto ~ ojo|momento|rato|repente
        no ~ veo|veia|ve ~ lado|ojo|mitad
        veo|viendo|veia ~ doble|borroso|mitad|cortina|nublado
        cortina ~ ojo|vista
        dolor de cabeza ~ peor|vida|explota|trueno|repente|reventar
        chorro ~ orina
        toques|corriente|calambres ~ las dos|ambas|dos piernas
        panal ~ sin|orina|cuenta
        de repente|golpe ~ confundida|confundido|confundio|desorientada|desorientado
        confundida|confundido|desorientada|desorientado ~~ reconoce|sabe|habla|repente
    """,
    "idiom.nerve_or_bladder": """
        dentista|muela|anestesia|endodoncia ~~ dormida|dormido|boca|cara|lengua|adormecida
        NUMB ~~ ya ~ quito|paso ~~ sentada|manejar|cruzada
        durmio ~ nalga|pompi
        perro|gato|perra|perrito|cachorro|nino|bebe|nieto ~ orina|orino|mea|meo|pipi
        costo ~ ojo ~ cara
        risa ~ orino|meo|orine
        no|ni|sin ~ alteraciones
        me ~ orino|meo|orine|orinaba ~ de ~ risa
        cara ~ sueno|pocos|felicidad|risa
        habla|hablo|hablar ~ hasta por los codos
        se me fue la lengua
        meti la pata
    """,
    "danger.fall_or_injury": """
        azoton|azote|porrazon|ranazo
        me golpee|golpie
        ^ me? choque|golpee|golpie $
        ^ me? choque|golpee|golpie ,|.
        . me? choque|golpee|golpie $
        . me? choque|golpee|golpie ,|.
        me|se ~ cayo|callo|vino ~ encima
        me|se corto|corte|cortó ~ el|la|un|una|con ~ vidrio|cuchillo|lata|navaja|mano|dedo
        JOINT ~ fue|movio|volteo|salio ~ un|otro|lado|costado ~ lado|trono|crujio
        pegue|di|dado|metido|metio|metí|metiste|meti|puse|lleve|llevado|saque|partí|dio|pego|metio|metío ~ palo|hostia|ostia|porrazo|castanazo|leche|hostion|trompada|mamporro|golpazo|cresta|mierda|chucha|madre|mugre|trompazo|batatazo|talegazo|totazo|golpeton|guarapazo|matada|caidon|culada|planazo|cuesco|costalada|zapatazo|tortazo|trastazo|tropezada|mamonazo|cabezazo|golpe|encontron
        saque|sacado|saco ~ la|el cresta|chucha|madre|mugre|mierda|entrepierna
        matada|castanazo|trompazo|talegazo|totazo|trastazo|costalada|golpazo|revolcon|maroma|machucon|sentonazo|hostion|talegada|panzazo
        me|le|nos ~ dio|dieron|pego|pegaron|metio|tiro|aventó|avento|solto|clavo|planto ~ patada|coz|cornada|codazo|empujon|golpe|cabezazo|punetazo|pelotazo|palazo|puerta|topetazo|portazo|trancazo|sape
        patada|coz|cornada|codazo|empujon|pelotazo ~ pantorrilla|rodilla|cara|ojo|costillas|pierna|espalda|cadera|pecho|cabeza|me
        patino|resbalo|fue|fueron|doblo|volteo|voltio|viro|torcio|falseo|tropezo|chueco ~ el|los|un ~ pie|pies|tobillo|pata|chancla|zapato|baston|andador
        pie|tobillo|pata ~ volteo|voltio|viro|doblo|torcio|chueco|falseo
        abri|rompi|parti|raje|corte|reventé|revente|descalabre ~ la|el|una ~ pera|ceja|frente|cabeza|barbilla|menton|labio|nariz|boca|mano|rodilla|pierna|dedo
        atropello|atropellaron|arrollo|embistio|embistieron|tumbo|tumbaron|empujo|empujaron|derribo|derribaron|chocaron|asaltaron|golpearon|volteo ~ me|nos|una|un|la|el|por
        me|nos|lo|la chocaron|choco|atropello|atropellaron|arrollo|tumbo|tumbaron|empujaron|empujo|tiraron|derribo|embistio|asaltaron|golpearon|volcamos
        termine|acabe|quede|aterrice|fui|pare|vine ~ en|al|a ~ piso|suelo|bano|banqueta|pasto|urgencias|bruces
        me ~ fui|vine ~ de ~ boca|cabeza|lado|espaldas|bruces|narices|hocico|frente|jeta|trompa|cara|nalgas|poto|culo|costado
        me vine|fui abajo|patras|atras
        me ~ desbarranque|embarre|estrelle|estampe|embroque|derrumbe|despene|descolgue|voltee|rode|desparrame|tumbe|espatarre
        rode ~ escaleras|escalera|gradas|cerro|abajo
        boto|salio|movio|corrio|brinco|zafo|zafado|zafada|desencajo|desmonto|chispo|disloco|desplazo|fue ~ cadera|hombro|rodilla|rotula|codo|dedo|muneca|hueso|tobillo|quijada
        cadera|hombro|rodilla|rotula|codo|dedo|muneca|quijada ~ boto|salio|zafo|fuera|desencajo|chispo|disloco|brinco|corrio|colgando|chueco|chueca|desmonto
        pierna|pata|brazo|dedo|muneca ~ quedo ~ corta|corto|torcida|torcido|chueca|chueco|colgando|volteado|volteada
        pierna ~ mas corta
        machuque|machuco|prense|aplaste|aplasto|pise|pelisque|pellizque|corto|corte|queme|rebane|trabe ~ dedo|dedos|mano|pie|pierna|brazo|muneca|una
        cayo|caido|callo|vino|solto|resbalo ~ encima|pie|cabeza|pies|dedo|mano ~~ pie|dedo|cabeza|duele|hinchado|morado|morada|lata|pesa|caja|mueble
        cayo ~ lata|caja|pesa|mueble|puerta|plancha|bote|tabla|rama ~ en|encima
        BODY|JOINT ~ como ~ berenjena|pelota|melon|papa|globo|tomate|camote|jamon|mango|toronja|sapo
        negra|morada|morado|moreteada|hinchada ~ de la? caida|golpe|porrazo
        puntos ~ cabeza|ceja|frente|barbilla|pierna
        yeso|enyesaron|ferula|inmovilizaron|cabestrillo
        aplasto ~ el|la|un ~ me
        caida|caidas|resbalon|tropezon ~ bano|escaleras|calle|regadera|hoy|ayer|anoche|feo|fea
        latigazo cervical
    """,
    "idiom.fall_or_injury": """
        cayendo|caigo|caia|caida|caido|caer|cae ~ de ~ sueno|hambre|risa|cansancio|maduro|madura|vieja|viejo
        cai|cayo|caimos|cae|caigo|caer malo|mala|enfermo|enferma|redondo|redonda|rendida|rendido|frito|privada|privado
        cai|caigo|caer|caen de ~ risa
        me cai de ~ risa
        cai|cayo|caer|caigo ~ rodillas ~~ ante|rezar|altar|santisimo|virgen|dios|orar|misa|iglesia
        se ~ me? ~ cayo|cae|callo ~ el|la|los|las ~ alma|celu|cel|cara|ojos|pelo|baba|sistema|moco|internet|veinte|luz|jornal|app|quijada|andamio|barda|calzon|calzones|panuelo|lista|red|teja|estante|poste
        cayo|caen|cayeron|cae ~ pesado|pesada|pesados|gordo|gorda|bien|mal|chistoso|chistosa|granizo|agua|nieve|rayo|helada|novia|visita
        sone|sonaba|sonando|pesadilla|pesadillas|pelicula|novela|videojuego ~~ caia|cai|caida|cayo|caer|tropece
        caida ~ camus|libre|cabello
        cayo|cae ~ # a #
        echar|echo|eche ~ mano
        di ~ golpe ~ estado|suerte|mesa
        metio|meti ~ pata
        meti ~ gol
        saco ~ susto|jugo
        pegue ~ susto|gritos|sueno|siesta|banazo|resfriado
        me ~ pego ~ resfriado|gripa|gripe|catarro|virus|sueno|hambre|tos
        dio ~ susto|gripa|gripe|tos|sueno|hambre|pena|gusto|risa|flojera
        puntos ~ examen|partido|tienda|tarjeta|liga
        me ~ volteo a ver
        pise ~ el acelerador
        corto|corte ~ pelo|cabello|luz|una?s|pasto|zacate|vestidos|tela|pastel|dedo de queso
        corte|corto ~ #|dos|tres ~ vestidos
        salio ~ todo ~ bien
        se ~ cayo|callo ~ la noche
    """,
    "danger.possible_fracture": """
        de pronto|repente|golpe ~~ dolor ~~ BACKBONE
        estornude|estornudo|tosi|toser|estornudar ~~ dolor|punzada|piquete ~~ BACKBONE|costilla|costillas
        dolor|punzada|tiron ~ repentino|repentina|subito|subita ~~ BACKBONE
        BACKBONE ~~ repentino|repentina|subito|subita
        CRACK ~~ cadera|costilla|costillas|rabadilla|coxis|pelvis|hueso|espalda|columna|cintura|lomo ~~ dolor|duele|apoyar|pisar|tieso|tiesa|enderezar|mover|caminar|mucho|levantar
        CRACK ~ cadera|costilla|costillas|espalda|columna|cintura|hueso|lomo
        cadera|costilla|costillas|espalda|columna|cintura|hueso|lomo ~ CRACK
        sono|sonaba|hizo|oi|escuche|senti|trono|truena ~ crac|crack|crujido|rama|vara|palo|galleta|ramita|hueso|tronido|chasquido|pum|clac|tac|reventon|desgarro|quebro|rompio|rompia|quebraba|partia
        chasquido|tronido|crujido|clac|reventon ~~ dolor|duele|apoyar|pisar|enderezar|caminar
        cunas|cuchillo|cuchillada|navajazo|lanza|punal|estaca|clavo|rayo|corrientazo|latigazo|puntazo|puyazo|lanzazo ~~ BACKBONE|costillas|omoplato|paletilla|rinones|rinon
        BACKBONE|paletilla|omoplato|costillas ~~ cuchillo|cuchillada|navajazo|lanza|punal|rayo|corrientazo|latigazo|puntazo|puyazo|lanzazo|clavada
        estornude|estornudo|estornudar|tosi|tos|toser|agache|agacharme|cargue|cargar|levante|voltee ~~ BACKBONE ~~ trono|quebro|rompio|crac|crujio|tiesa|tieso|doblada|doblado|clavo|enderezar|cuchillo|punzada|repente
        estornude|estornudo|estornudar|tosi|toser ~~ costilla|costillas|BACKBONE|trono|crac
        espalda|columna|cintura ~~ no ~ enderezar|enderezarme|enderezo|endereza
        quede|quedo|quedado ~ doblada|doblado|trabada|trabado|tieso|tiesa|engarrotada|clavada|jorobada ~~ dolor|espalda|cintura|lomo|crac|trono
        se me ~ quebro|rompio|partio|trono|revento|salio ~~ espalda|columna|costilla|hueso|cadera|vertebra
        aplastamiento|aplasto|colapso vertebral|vertebra
        fractura ~ estres|compresion|columna|vertebra|cadera|costilla
        encogi|encogiendo|achaparrando|jorobando|jorobada ~~ dolor|espalda|centimetros|estatura
    """,
    "danger.faint_or_dizzy": """
        me|se puse|puso blanca|blanco|palida|palido|helada|amarilla ~~ sentar|sentarme|acostar|acostarme|caigo|sudor|mareo
        se me ~ movio|mueve|movia|movian|mueven|voltea|volteo|hundio|hunde ~ piso|suelo|todo|mundo|casa|cuarto|cama
        se me mueve|mueven todo
        sincope|lipotimia|presincope|mareada|mareado|vahido|vaguido|desvanecimiento|desmayada|desmayado|patatus|soponcio|yeyo|chiripiorca
        me ~ voy|fui|iba|quede|quedaba|quedo|puse|pongo ~ en blanco
        dio|da|dieron|daba ~ bajon|vahido|vaguido|soponcio|yeyo|telele|patatus|sincope|lipotimia|palida|desmayo|jamacuco|parraque|ataque
        la palida
        todo ~ se ~ me? ~ mueve|movia|movio|gira|giraba|oscurecio|nublo|apago|borro|fue|volteo|bambolea|menea
        casa|cuarto|piso|suelo|mundo|paredes|techo|cama|sala|pared|pieza ~ se ~ me? ~ mueve|mueven|movia|movian|menea|vienen|viene|voltea|gira|giran|hunde|bambolea|inclina
        paredes|techo|piso|mundo ~ encima|vueltas
        anduve|ando ~ borracha|borracho|barco|lancha|ebria|ebrio|trompo|hamaca
        ando|camino|siento|siente|estoy ~ como ~ borracha|borracho|lancha|barco|flotando|trompo|hamaca
        vi|veia|veo|viendo|miro ~ lucecitas|estrellitas|estrellas|puntitos|moscas|chispas|chispitas|negro|oscuro|borroso|manchas|luces
        lucecitas|estrellitas|chispitas ~ ojos|vista|vi|veia
        amaneci|desperte|desperto|encontro|encontraron|recobre|volvi ~ en el|tirada|tirado ~ piso|suelo|bano
        recobre|recupere|recobro|volvi|perdi|perdio ~ sentido|conocimiento|conciencia
        volvi en mi|si
        se me ~ fue|fueron|va|iba|borro|apago|apagaron|nublo|oscurecio ~ mundo|luces|luz|vista|cabeza|onda|avion|todo|conocimiento|sentido|ojos|senales|foco
        se me bajo|subio ~ sangre|presion|azucar ~~ caigo|negro|mareo|vista|sudor|debil
        me apague|desconecte|desplome|prive
        perdi|pierdo|perdiendo ~ el equilibrio
        equilibrio ~ perdi|pierdo|fue|va
        tambaleo|tambaleando|tambaleaba|bamboleo ~~ cabeza|pararme|camino|paro|borracha|borracho|mareo
        cabeza ~ vueltas|flota|flotando|hueca|globo|liviana|livianita|gira|abombada|ida|volando|vacia
        casi ~ me ~ voy|desmayo|caigo|desplomo|apago ~~ pararme|mareo|vista|blanco|negro|pare|levante
        piernas ~~ negro|mareo
        sudor frio ~~ vista|negro|mareo
        palida|palido ~ como ~ papel|cera|muerto
    """,
    "idiom.faint_or_dizzy": """
        desayuno
        me ~ mareo ~ con ~ tantos|papeles|numeros|nietos|tramites
        montana rusa
        marea ~ alta|baja
        borracho|borracha ~ vecino|fiesta|boda
        mareo ~ barco|carro|camion|lancha
    """,
    "danger.severe_pain": """
        duele|dolio|dolia ~ como nunca|jamas
        duele|duelen|dolia|dolio ~ horrores|rabiar|morir|infiernos|chingos|madres
        ya? no ~ lo|la|los|las resisto|aguanto|soporto|aguante|tolero !a !al
        no se aguanta|soporta|resiste|tolera
        no ~ le? ~ deseo|desea ~ a nadie ~~ dolor|resisto|aguanto
        dolor ~~ no ~ desea|deseo ~ nadie
        dolor ~~ no ~ deja|dejan|dejaba ~ pensar|vivir|dormir|hacer|hablar|comer|descansar|sentar|sentarme|ni
        dolor|duele ~ no cabe|baja|quita ~ escala|escalita|nada|numero
        mas de lo que ~ aguanto|puedo|soporto|aguantar
        dolor ~~ llorar|llorando|gritar|gritando|aullar|chillar|berrear|revolcar|retorcer|retuerzo|revuelco|subo por las paredes
        llorar|llorando|gritar|gritando|llorado|lloro|grito|aullo|berreo ~ dolor|duele
        retuerzo|retorciendo|revolcando|revuelco|muerdo|arranco ~~ dolor|duele
        me ~ parto|muero|mata|matan|parte|rompe|desgarra|despedaza ~ dolor|dolores
        dolor ~ mata|parte|espantoso|salvaje|bestial|atroz|criminal|endemoniado|horroroso|insoportable|brutal|inhumano
        atroz|espantoso|horroroso|bestial|brutal|inhumano dolor
        peor ~ dolor ~ vida|he|parto
        peor que ~ parto|parir
        subo|subiendo|subirme ~ por las paredes
        ver|veo|viendo ~ diablo|estrellas ~ dolor
        dolor|duele ~~ ver ~ estrellas|diablo
        quiero arrancarme|cortarme ~ pierna|brazo|cadera|espalda
        arrancar|cortar|corten|arranquen ~ pierna|pata|brazo|cadera ~ dolor|ya
        rabiando|rabiar|rabio ~ dolor
        mas de ~ diez|10 ~ dolor
        pasa de ~ diez|10
    """,
    "idiom.chest_or_breathing": """
        no|ni me|le falta ~ aire|respiracion|aliento
    """,
    "idiom.severe_pain": """
        lloro|llore|llorar|llorando|grite|grito de gusto|risa|emocion|alegria|felicidad|coraje
        lloro|llore|llorar|llorando ~ novela|pelicula|cebolla|boda
        no ~ lo|la|los aguanto ~ calor|frio|vecino|vecina|tele|ruido|suegra|cunado
        no aguanto ~ a mi|la PERSON
    """,
    "danger.crisis": """
        no ~ aguanto|soporto ~ vivir|viviendo|existir
        no puedo ~ vivir|seguir asi|mas
        pa|para que ~ sigo|seguir|vivo|vivir viviendo|vivir|viva|$
        mejor|ojala que ~ me muera|muriera
        mejor ~ no ~ existir|vivir|haber
        no|ni|sin ~ razon|razones|motivo|motivos|fuerzas ~ vivir|seguir|viviendo
        nadie ~ extranar|extrane|extranara|llorar ~ cuando|si ~ muera|muero|falte|falta
        me|se ~ quiero|quisiera|voy|kiero|provoca|gustaria|pienso ~ matar|morir|ahorcar|colgar|suicidar|tirar|aventar|lanzar !de ~ !risa
        me quiero|quisiera|kiero matar|morir|ahorcar|colgar|tirar|aventar
        pensado|pienso|pensando|penso|pensaba|ganas|idea|ideas ~ tirarme|aventarme|lanzarme|colgarme|ahorcarme|matarme|cortarme|quitarme|arrojarme|saltar|suicidarme|tomarme|tragarme|morirme|desaparecer
        tirarme|aventarme|lanzarme|arrojarme|tirar|saltar ~ metro|tren|puente|rio|ventana|azotea|balcon|barranco|camion|vias|carro|piso|techo
        chato|chata|harta|harto|aburrida|aburrido|cansada|cansado|podrida|podrido|hastiada|hastiado de vivir|existir
        chato|chata|harta|harto|aburrida|aburrido|cansada|cansado|podrida|podrido|hastiada|hastiado de esta|la|mi vida
        matarme|suicidarme|ahorcarme|colgarme
        no ~ me? ~ necesita|extrana|quiere|hace|echa|echaria ~ nadie ~~ pastillas|morir|matar|muero|vivir|mejor|irme
        a nadie le ~ importo|importa|hago|haria
        nadie ~ va|notaria|extranar|extranaria|daria ~ falta|cuenta|si ~~ muero|voy|muriera|falto
        tomarme|tomar|tragarme|tome|trague|tragar ~ todas|todo|frasco|caja|bote|puno ~ pastillas|remedios|medicinas|pastilla|somniferos
        pastillas ~~ todas|juntas|frasco|acabar|dormir ~~ vez|siempre|despertar|acabar|vivir|morir
        dormir|dormirme|acostarme|acueste ~~ no ~ despertar|despierte|despertarme|amanecer|levantarme
        no ~ quiero|quisiera|deseo|quiere ~ despertar|amanecer|viviendo|vivir|existir|viva|vivo
        ojala ~ no ~ despierte|despertara|amaneciera|amanezca
        ojala ~ me ~ muera|muriera|lleve|llevara
        que ~ dios|diosito|senor ~ me ~ lleve|recoja|quite
        ya ~ que me lleve
        para que ~ vivir|vivo|viva|naci
        para que ~ seguir|sigo|estoy ~~ vivir|viva|vivo|vida|viviendo
        mejor ~~ tierra|muerta|muerto|panteon|cementerio
        bajo tierra
        sobro|estorbo|carga|inutil ~~ mejor|muerta|muerto|vivir|muero|morirme|irme|descansen|descansan
        descansarian|descansen|descansan ~ de mi
        esta|mi vida ~ no ~ vale|sirve|sentido
        no ~ vale ~ vivir|viviendo
        no ~ vale ~ pena ~ vivir|viviendo|vida
        corte|corto|cortando|corté|hago|hice|lastimo|lastime ~ adrede|proposito|dano|venas|munecas|brazos
        me ~ corte|corto|queme|lastimo ~~ proposito|adrede|sentir
        tengo ~ pistola|soga|veneno|cuerda|navaja ~~ lista|listo|mano|pensando|acabar|usar
        carta|cartas ~ de? despedida|despidiendo
        despedirme|despido|despedi ~ todos|hijos|mundo|vida|ustedes ~ 
        me quiero desaparecer|ir ~ mundo|vida
        borrarme del mapa|mundo
        acabar|terminar ~ con ~ todo ~ vez|ya|siempre|para
        acabar|terminar ~ este? ~ sufrimiento
        no ~ le ~ veo ~ salida|sentido|caso ~~ vida|vivir|nada|seguir
    """,
    "idiom.crisis": """
        muero|morir|matar|mata|matan|morirme de ~ risa|hambre|sueno|verguenza|ganas|amor|frio|calor|aburrimiento
        voy a morir de amor
        tiro|tirarme ~ piso ~ ejercicio
        tirarme ~ cama|sofa|sillon|alberca|playa
        me quiero morir ~ verguenza|pena|risa|jaja
        acabar|terminar con ~ todo ~ rutina|ejercicios|lista|pendientes|quehacer
    """,
    "taken_back": """
        no mentira
        mentira , 
        jaja|jajaja mentira|broma
        quise|queria ~ poner|decir|escribir
        corrector ~ puso|cambio|pone|escribio
        era que no ~ 
    """,
    "caught": """
        no ~ paso|pase ~ nada|susto
        ni ~ paso ~ nada
        fue puro|solo susto
    """,
}
