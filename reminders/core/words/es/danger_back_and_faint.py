"""Spanish rules for a back or bone that gave, and for faint or dizzy spells.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.possible_fracture": """
        clac|crac|crack|trac|trak|clack . ~ me? duele|dolor|dolio ~ BACKBONE|cadera|costilla|costillas
        dolor ~ golpe|repente|pronto|subito ~~ omoplatos|paletas|paletillas|escapulas|espalda|columna|lomo|cintura
        sin avisar|aviso|previo|mas ~ pinchazo|punzada|puntada|latigazo|dolor ~~ BACKBONE
        BODY ~ trono|trueno|sono|crujio|tronaron|chasqueo ~~ no ~ puedo|pude|aguanto apoyar|apoyarlo|apoyarla|pisar|mover|moverlo|caminar
        BODY ~ trono|trueno|sono|crujio|tronaron|chasqueo ,|y ~~ no ~ puedo|pude|aguanto apoyar|apoyarlo|apoyarla|pisar|mover|moverlo|caminar
        algo|me|se sono|trono|crujio|chasqueo|clac|crac|solto ~ en la|el|mi columna|espalda|cadera|lomo|cintura|vertebra|vertebras|espinazo
        golpe|repente|pronto|avisar|aviso|subito ~ pinchazo|punzada|puntada|latigazo|dolor ~~ BACKBONE
        pinchazo|puntada|punzada|latigazo fuerte|fuertisimo|fuertisima|agudo|aguda|terrible|brutal|horrible|tremendo|tremenda ~ en|por la|el|mi espalda|columna|lomo|cintura
        tronidazo|tronidote|crujidazo|crujidote ~ BACKBONE|cadera|rodilla
        crujio|trono|sono|chasqueo ,? ~ no me? puedo enderezar|mover|parar|caminar|levantar
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
        me fui , ~ me fui
        me fui , y|cuando|hasta desperte|volvi|recobre
        no supe de mi ,|.|$|hasta|por|un|y
        marearme|marearse|mareandome|mareandose asi|tanto|mucho|seguido|cada|al|cuando|otra
        vi|veo|veia|viendo estrellitas|lucecitas|chispitas|puntitos
        se|me ha|he desmayado|desvanecido|desvanecio|desplomado
        me voy|iba|fui ,? ~ sudor|sude|sudando|sudaba frio|fria|frios
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
        con|puso|quedo|tenia|tengo|traigo|vi la|toda? vista negra|nublada|oscura|nublosa
        vi|veo|viendo estrellas|estrellitas|lucecitas|negro|puntitos
        se me fue la vista|onda|avion|luz
        cabeza ~ ligera|hueca|vacia|flotando|flota
        siento|senti|sentia ~ desvanecer|desmayar|flotando
        colapse|desplome
        casi ~ desmayo|desmaye|desvanezco|apago
        apague|apago ~ luz|tele|de
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
        noche|noches dando|di|doy|daba vueltas
        di|daba|dando|doy vueltas en la cama
        calor|frio|sueno de perder el sentido|conocimiento
        que mareo debe|deben|daria|ha
        me desmayo de la? hambre|sueno
        vertigo|mareo|mareos da|dan|me? el|los|la|las precio|precios|cuenta|renta
        desmaye|desmayo|desmayar|desmayaba de la|pura? alegria|emocion|gusto|felicidad|risa
        puede|pueden|podria|podrian dar|causar|provocar|producir mareo|mareos|vertigo|desmayo|desmayos
        vueltas en la? cabeza lo|que|esto|eso
        vueltas en la? cabeza el|la|un|una|este|esta|ese|esa idea|pregunta|asunto|tema|cancion|problema|noticia|frase|cosa|pensamiento|recuerdo
        tanto|tanta|tantos|tantas papeleo|papeles|papel|numeros|tramite|tramites|botones|boton|noticias|citas|mensajes|formularios|opciones|cuentas|nietos|preguntas que? ya? me|nos? marea|marean|mareo
        tanto|tanta|tantos|tantas papeleo|papeles|papel|numeros|tramite|tramites|botones|boton|noticias|citas|mensajes|formularios|opciones|cuentas|nietos|preguntas ,? que? ya? me|nos tiene|tienen|trae|traen|deja|dejan mareada|mareado|mareados|mareadas
        con tanto|tanta|tantos|tantas papeleo|papeles|papel|numeros|tramite|tramites|botones|boton|noticias|citas|mensajes|formularios|opciones|cuentas|nietos|preguntas ya? ando|estoy|quede|acabe|termine mareada|mareado
        papeleo|numeros|tramites|papeles|cuentas|formularios ~ me|nos tiene|tienen|trae|traen|deja|dejan mareado|mareada|mareados|mareadas
        marea|marean|mareo|mareado|mareada|marearme tanto|tanta|tantos|tantas botones|boton|papeleo|papel|papeles|mensaje|mensajes|noticia|opciones|letra|numero|numeros|cosa
        corrector ~ desmayo
        era desayuno
        desayuno
        marearon|marean|mareo|maree|mareado|mareada|mareados con tanto|tantos|tanta|tantas|los|las|esos|estos|sus? papeleo|papeles|papel|numeros|tramite|tramites|botones|boton|noticias|citas|mensajes|formularios|opciones|cuentas|nietos|preguntas
        montana rusa
        marea ~ alta|baja
        borracho|borracha en|de|del|por|con la|el|un|una|mi? vecino|fiesta|boda
        vecino borracho
        mareo|mareos de barco|carro|viaje|mar
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
}
