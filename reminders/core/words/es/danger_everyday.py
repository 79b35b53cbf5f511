"""Spanish danger signs of all kinds in further everyday wordings, and harmless turns that sound like them.

A label a block, a pattern a line; the notation stands in reading/patterns.py. The files by kind hold the plain ones.
"""

RULES = {
    "idiom.crisis": """
        no quiero|quisiera seguir con esto|estos|los|el|la|tantos? de? los? TEXT|TEXTNOUN
        me ~ voy|vas|va a ~ matar ~ con ~ tandem|ejercicio|ejercicios|rutina|silla|talones|lagartijas
        dormida|dormido en ~ silla|sofa
    """,
    "danger.chest_or_breathing": """
        no se? me|le? quita|pasa|calma|baja|cede|quito|paso el|la|este|esta dolor|presion|opresion|ardor|apreton|peso|punzada ~ CHEST
        no se? me|le? quita|pasa|calma|baja|cede|quito|paso la|el falta|ahogo de? aire?
        no ~ respiro|respirar ~ bien|normal|igual
        no ~ alcanzo|agarro|jalo|tengo|hallo|encuentro|llega ~ aliento|resuello
        no ~ alcanzo|agarro|jalo|hallo ~ aire
        apretandome|oprimiendome|aplastandome|apachurrandome|estrujandome|quemandome|apachurrando|aplastandose|oprimiendose ~ CHEST|HEART
        CHEST ~ apretandome|oprimiendome|aplastandome|apachurrandome
        puno|garra|pinza|prensa|tenaza ~ CHEST
        CHEST ~ puno|garra|prensa|tenaza
        chest|heart pain|pains|pressure|hurts
        pain|pressure ~ chest
        costando|cuesta|costo|costaba ~ respirar|resollar|aire
        cuesta|costando ~ mucho|trabajo ~ respirar
        pecho ~ duele|dolio|doliendo|apretado|apretando|pesado|punza|ardiendo|raro
        dolor|opresion|presion|ardor|peso|apreton|pinchazo ~ en|de el? pecho
        falta|faltaba|falto|faltando ~ aire|aliento|oxigeno
        no ~ puedo|podia|pude ~ respirar|resollar
        corazon ~ desbocado|acelerado|galopando|brincando|reventar|salir|loco
        corazon ~ no ~ calma|calmo|baja
        tosi|tos|toso|escupi|escupo ~ sangre
        no ~ puedo ~ dormir ~ acostada|acostado|plana ~~ aire|respirar|ahogo
        hombre|hombro|brazo izquierdo ~ pecho
    """,
    "danger.nerve_or_bladder": """
        no se? me|le? quita|pasa|quito|paso el|la|lo hormigueo|adormecimiento|entumecimiento|debilidad|dormido|entumido|adormecido
        me ~ gana|gano|ganaba|ganando|ganado ~ pipi|orina|orines|bano|popo|pis|chis|meada
        gana|ganaba|ganando ~ pipi|orina|chis
        hizo|hicieron|hace|pone|puso|volvio ~ agua|gelatina|trapo|hilacho|chicle ~ LEG|LIMB
        LEG|LIMB ,? no me|le obedece|obedecen|responde|responden|sostiene|sostienen
        entre ~ piernas|nalgas|muslos ~~ anestesiado|anestesiada|dormido|dormida|NUMBONLY|muerto|acorchado
        orinando|orinandome|meando|haciendo encima
        me ando ~ orinando|meando|haciendo
        no ~ siento|sentia|senti ~ piso|suelo|pie|pies|piernas|mano|manos|nada ~ abajo|cintura|ahi
        planta ~ pie|pies ~ acolchonada|dormida|rara|corcho|algodon|adormecida
        camino|piso ~ como ~ algodon|colchon|nubes|esponja
        se me ~ sale|salio|escapa|escapo|fue ~ orina|pipi|popo|caca|pis
        me gano ~ pipi|orina|bano|popo
        me gana ~ pipi|orina|bano
        no ~ alcance|alcanzo|llegue ~ bano
        mano|brazo|pierna|pie ~ no ~ me? ~ hace|hacen ~ caso
        no ~ me? ~ hace|hacen caso ~ mano|brazo|pierna|pie|piernas
        boca|cara ~ se me ~ fue|va|chueca|torcio|volteo ~ lado
        se me ~ fue|va|torcio|enchueco ~ boca|cara
        se me ~ traba|trabo|enreda|enredo|arrastra ~ lengua|habla|palabras
        se me ~ olvidan|van|pierden ~ palabras ~ hablar|repente
        se me ~ cae|caen|caia|caian ~ cosas|todo|cuchara|taza|vaso
        no ~ puedo ~ pararme|parar|levantar ~ puntas|puntitas ~~ pie|pierna|izquierdo|derecho
        sin ~ sentir ~ ganas ~ bano|orinar
        de la cintura ~ abajo ~ siento|dormida|dormido|nada
    """,
    "danger.fall_or_injury": """
        volvio|volvieron a salir|zafar|safar|dislocar|doblar|torcer ~ JOINT|hueso
        volvi|volvio|vuelto a caer|caerme|caerse|resbalar|resbalarme|tropezar
        me|se|nos habia|habria|hubiera? caido
        habia caido
        perdi|perdio pie
        kebrado|kebre|quebrado ~ tobillo|muneca|pie|brazo|dedo|cadera
        aterrice|aterrizo ~ nalgas|pompis|piso|suelo|sentada|sentado|espalda|rodillas|cara|manos
        me|se saque|saco|safe|safo|zafe|zafo ~ JOINT|hueso|dedo|muneca|hombro|cadera|rodilla|tobillo
        protesis ~ salio|zafo|movio|solto|trono
        se ~ salio|zafo|safo|solto ~ protesis|hueso|JOINT
        silla|banco|escalera|cama ~ fue|voltio|volteo|rompio|quebro|doblo|vencio ~ conmigo|atras|para|y
        silla ~ fue ~ para? atras|patras
        me|nos ~ chocaron|pegaron|aventaron ~ carro|coche|atras|troca|camion|moto
        ojo morado
        moreton|moretones|chipote|chichon|bola ~ cabeza|frente|ojo|cadera|pierna|brazo
        me ~ lleve|pegue|di ~ tremendo|buen|fuerte|duro
        pesa|mancuerna|banda|liga|puerta ~ pego|cayo|dio|golpeo|solto ~ me|pie|cara|ojo|dedo|cabeza
        me ~ cayo|pego ~ pesa|mancuerna|silla|puerta|liga|banda|olla|caja
        me ~ corte|rebane ~ dedo|mano|pie|pierna|vidrio|cuchillo
        fui a dar ~ piso|suelo|pared
        quede|acabe|termine ~ en el|al? piso|suelo
    """,
    "danger.possible_fracture": """
        talon|pantorrilla|corva|tobillo ~ como si me ~ dado|aventado|pegado|tirado ~ piedra|pedrada|patada|palo|balazo
        me kebre|quebre|kebro|quebro|fracture ~ muneca|brazo|tobillo|pie|cadera|dedo|costilla|mano|hombro|codo|pierna|rodilla
        sono|sonaba|trono|crujio|chasqueo ~ hombro|rodilla|cadera|tobillo|muneca|codo|talon|pantorrilla|corva|cuello ~~ doliendo|duele|dolio|horrores|hinchado|hinchada|hincho|moverlo|moverla
        pum|pop|tas|zas|paf|chasquido|tronido|crac|crack ~ talon|pantorrilla|corva|tobillo|rodilla|hombro ~~ no|apenas puedo|pude|aguanto
        tengo ~ tobillo|muneca|pie|brazo|dedo|cadera|costilla ~ quebrado|quebrada|kebrado|roto|rota|fracturado
        se me quebro ~ algo|hueso|pie
        tronido|crujido|tras|crac|crack y|, ~ dolor|duele|dolio
        oyo|oi|escucho|escuche|senti|sintio|sono|hizo ~ chasquido|crujido|tronido|crac|crack|trueno|tronar|crujir|trono|crujio
        crac|crack|tronido|crujido|chasquido ~~ duele|dolor|dolio|hinchada|hinchado|hincho
        me ~ trono|truena|crujio ~ JOINT|hueso|costilla|espalda|cadera|cintura|muneca ~~ dolor|duele|hinchada|hinchado|mover|puedo
        trono|crujio|tronido ~ muneca|cadera|costilla|hueso|tobillo|rodilla ~~ duele|dolor|hinchada|hinchado|morada|morado|puedo
        costilla ~ crack|crac|trono|crujio
    """,
    "danger.faint_or_dizzy": """
        no se? me|le? quita|pasa|quito|paso el|la|este|lo mareo|vertigo|mareada|mareado
        mareadisima|mareadisimo|sirimba|palida
        puse blanca|blanco ~~ sudando|sudor|frio|voy|iba
        quede|ando|toda ~ mareada|mareado|atarantada|atarantado|mareadisimo
        piso|suelo|cuarto|casa|todo ~ movia|mueve|moviendo|giraba|gira|daba|da|temblaba
        vi|veo|veia ~ puntitos|estrellas|lucecitas|todo negro|negro
        casi me ~ desmayo|voy|caigo ~ mareo|mareada|vista|blanco
        se me ~ fue|nubla|nublo|va|oscurecio ~ mundo|vista|cabeza|luz
        anduve|andar|ando|amaneci mareada|mareado|atarantada|atarantado
    """,
    "danger.severe_pain": """
        ^ un? BIG de lo que ~ duele|dolio
        arrancarme|cortarme|arrancar|cortar ~ pierna|brazo|rodilla|cadera|espalda ~~ duele|dolor|dolia
        quisiera|kisiera|quiero arrancarme
        no ~ aguanto|soporto|tolero ~ espalda|rodilla|cadera|hombro|pierna|cintura|cuello|dolor|dolores
        ya no aguanto ~ dolor|espalda|rodilla|cadera|pierna|hombro
        duele ~ gritos|horrores|horrible|muchisimo ~~ no|lloro|llorar|dormir|grito|mover
        duele a gritos
        nunca ~ me ~ habia dolido|doler ~ asi|tanto
        me ~ quiero ~ arrancar|cortar ~ pierna|brazo|rodilla|espalda
        dolor ~ insoportable|inaguantable|infernal|horrible|terrible|espantoso ~
        no ~ puedo ~ ni ~ moverme|caminar|dormir|respirar ~ dolor
        llorando|gritando|chillando ~ del? dolor
    """,
    "danger.crisis": """
        me mato|matare
        compre ~ veneno|pistola|soga|pastillas
        veneno ~ perdonenme|perdon|adios
        adios a todos
        hoy|ya acabo ~ con ~ esto|todo
        seguir ~ viviendo
        junte|juntado|juntando|guarde|tengo ~ todas ~ pastillas
        pastillas ~~ quiero|voy|pienso|ganas ~ tomar|tomarme|tomarmelas
        se quiere|queria|quiso matar|morir|suicidar|quitar
        dice ~ que ~ quiere ~ matar|matarse|morir|morirse
        pienso|pensando|pensado ~ en ~ muerte|morirme|morir|matarme|suicidio
        hacerlo yo misma|mismo
        tengo ~ pistola|soga|veneno|cuerda|navaja|arma ~~ aqui|mano|lista|listo|cerca|se
        matarse|suicidarse|ahorcarse
        ganas de ~ matarme|morirme|desaparecer|tirarme
        ya no ~ quiero|tengo ganas|vale ~ vivir|vida|estar|seguir
    """,
    "idiom.chest_or_breathing": """
        casi me infarto|infarta
        infarto ~ con|de|por ~ penal|gol|partido|cuenta|precio|susto
        sin aliento|aire|respiracion ~ de la|tanta? emocion|risa
        sin aliento|aire ~ con|por el|la gol|noticia|belleza|atardecer
        robo|quito|quita|deja ~ aliento|respiracion ~~ belleza|vista|paisaje|atardecer|bonito|nieto|vestido|precio
        tomar|agarrar|coger ~ aire fresco
        aire acondicionado|fresco|libre
        infarto ~ susto|precio|partido|cuenta
    """,
    "idiom.nerve_or_bladder": """
        cae|cayo ~ cara ~ verguenza|pena
        quede|quede|me dormida|dormido ~ en ~ silla|sofa|sillon|cama|tele
        dormida|dormido ~~ antes ~ operacion|cirugia
        bebe|nieto|nieta|nino|nina|gato|gata|perro|perrita|perrito ~ durmio ~ pierna|piernas|brazo|brazos|encima
        PERSON|nieto|nieta|gato|gata|perro|perrita ~ durmio ~ en ~ pierna|piernas|brazo|brazos|regazo
        risa ~ pipi|orine|orino|hice
        orine|pipi|hice ~ de la? risa
    """,
    "idiom.fall_or_injury": """
        gato|perro|nino|nieto|viento|perra ~ tumbo|tiro|boto ~ florero|vaso|maceta|lampara|plato|mesa|cafe|agua
        peso|dolar|bolsa|precio ~ cayo
        zafe|zafo ~ del? ~ compromiso|trabajo|reunion|apuro
        tire en|a la? cama|sofa|sillon|hamaca
        me tire ~ cama|sofa|sillon|dormir|descansar
        torcida|torcido ~ cuello ~~ almohada|dormir|dormi
        amaneci torcida|torcido
        quebre|rompi|quebro|rompio ~ una $
        quebre|rompi|quebro|rompio la una ~ pared|uñas|pintada|puerta|dedo|jaja
        quebre|rompi el|la|un|una|mi|los|mis? plato|vaso|taza|dieta|record|silla|banda|liga|florero|lentes
        se me fue el|la|de? dedo|mano|onda|tiempo|hora|pedo
        cai en la? cuenta
        me|le|nos|les cayo muy|re|tan? gordo|bien|mal|veinte
        cayo mucha|la|el|una|tremenda? nieve|lluvia|noche|veinte
        calambre|calambres|calambrito
        me cae muy|re|tan? bien|mal|gordo
        golpe de suerte|estado|vista
    """,
    "idiom.faint_or_dizzy": """
        ni que ~ desmayar|marear|desmayara
        bajon ~ de? flojera|sueno|animo|luz|pilas|tristeza
        mareo|marea|mareada|mareado ~ con ~ papeles|cuentas|noticias|numeros
        dando|di|dar|dimos vueltas por|al|a|en el|la? casa|centro|tienda|banco|mandados|asunto
    """,
    "idiom.severe_pain": """
        no ~ aguanto|soporto ~ calor|frio|ruido|vecino|vecina|suegra|ganas|hambre|sueno|risa
    """,
    "taken_back": """
        antes ~ me|se|le ~ daba|daban|dolia|faltaba|mareaba|pasaba ~~ ya no
        antes ~~ ahora ya no ,|.|$
    """,
    "happening": """
        lo|la|eso tengo|siento ahora|ahorita|hoy|ya
        me esta pasando|dando
        ahorita|ahora lo|la|me ~ tengo|siento|pasa
    """,
}
