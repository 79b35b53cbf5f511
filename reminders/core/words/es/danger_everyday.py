"""Spanish danger signs of all kinds in further everyday wordings, and harmless turns that sound like them.

A label a block, a pattern a line; the notation stands in reading/patterns.py. The files by kind hold the plain ones.
"""

RULES = {
    "idiom.crisis": """
        no quiero|deseo seguir con el|la|los|las|estos|esta|mi ejercicio|ejercicios|rutina|terapia|programa|tratamiento !ni !,
        no quiero|deseo seguir con el|la|los|las|estos|esta|mi ejercicio|ejercicios|rutina|terapia|programa|tratamiento , !ni
        no|ni quiero|deseo|quisiera seguir recibiendo|participando|inscrita|inscrito|suscrita|suscrito
        no quiero|quisiera seguir con esto|estos|los|el|la|tantos? de? los? TEXT|TEXTNOUN !ni
        no quiero|quisiera seguir con esto|estos|los|el|la|tantos? de? los? TEXT|TEXTNOUN ni los|las|recibir|recibiendo|con|nada|sus|el
        me|nos ~ voy|vas|va|van a ~ matar con ese|esa|este|esta|estos|esos|tanto|tanta|tantos|tantas|el|la|los|las|sus? tandem|ejercicio|ejercicios|rutina|silla|talones|lagartijas|talon !de
        dormida|dormido en ~ silla|sofa
    """,
    "danger.chest_or_breathing": """
        respirar ~ me duele|dolia|punza
        duele|dolia|punza|dolor ~ al? respirar
        respiracion ~ cortada|cortado
        cierra|cerro|cerrando ~ garganta
        no ~ me|le sale ~ aire|aliento|respiracion
        punzada|dolor|dolorcito|pinchazo|piquete|duele ~ lado|altura|parte|encima del? corazon|pecho
        arde|ardia|ardio|quema|quemaba|ardiendo el|mi? pecho|corazon
        me agito|agite|fatigo|fatigue|sofoco|asfixio con|por|al|de|por nada|todo|cualquier|caminar|hablar|solo|moverme|poco
        me duele|aprieta|late|palpita|salta|brinca|tiembla|falla el|mi corazon
        ataque|paro al|del|de? corazon|cardiaco
        duele|dolia|dolio ~ aqui|donde|junto|por ~ corazon
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
        pierna|piernas|pie|pies|mano|manos|brazo ~ no siente|siento|sentia|sienten lo|el|la caliente|frio|calor|agua|piso|suelo
        no ~ aguanto|aguanta|aguante las ganas y|que me|se orino|orina|orine|meo|hago
        orinar|pipi|mear|chis ,? y|pero? ~ no ~ sale|logro|consigo
        se me sale|salio|escapa|escapo|chorrea|chorreo|va|fue el|la|los|las|un? orin|orines|orina|orinas|pipi|pis|meado|meados|miado|miados|chi|chis|chichi|caca|popo|excremento|cuerpo|zurullo
        y|que|pero me orino|orine|meo|mee|cago|cague|zurro|surro !de
        no ~ puedo|pude ~ hacer ~ necesidades|pipi|pis|popo|chis|caca
        pie ~ me? quedo|queda|quedaba|cuelga|anda colgando|caido|muerto
        se me apago|apaga|apagaron|pasmo|paralizo el|la|media|mi ~ pierna|brazo|mano|pie|cara|boca
        dio|pego|agarro un|el aire|pasmo en|a la|mi? cara|boca|ojo
        y|que no me responde|responden|obedece|obedecen|sostiene|sostienen ,|.|ya|$
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
        <redonda|redondo|rendida|rendido|privada|privado en|al|contra el|la? piso|suelo|bano|cocina|calle|patio
        <me piso|pateo|mordio|corneo|embistio|cocio un|una|el|la >ANIMAL
        silla|banco|banquito|banqueta|cama|escalera ~ conmigo
        me esconete|escone|esbarate|esmorrille|espete|desnuque|esnuque|desgonce|destartale|esguache|esgolize|espatarre
        disloque|disloco|desgarre|desgarro|chingue|chingo|fregue|frege|jodi|jodio|amole|estropee|friegue|escone|malogre|malogro|desgracie|escacharre|desbarate|descojone|arruine el|la|mi|un|una ~ JOINT|BACKBONE|pantorrilla|muslo|musculo|ligamento|tendon|aquiles|corva|ingle
        di|dio|pegue|meti|metio|pego|llevo|lleve|mande un|el|tremendo|senor? lenazo|golpetazo|trompicon|matacazo|guayazo|tropezon|sopapo|galletazo|mecazo|tablazo|ramalazo
        lenazo|golpetazo|matacazo ~ con|contra|en|bajando|subiendo|que|en
        me fui|cai|iba pal|patras|pa'|pa ~ piso|suelo|atras
        me llevo|arrollo|levanto ~ por delante
        me llevo por delante ~ moto|carro|auto|bici|bicicleta|coche|guagua|puerta|mesa
        me quebre|kebre|rompi|fracture|parti algo
        <me tiro|tumbo|boto|revolco|arrastro|avento|empujo el|la|mi|un|una >ANIMAL|nieto|nina|nino|viento|moto|bici|ola|carro
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
        me|nos han|ha|dieron|dio dado|dao|pegado|golpeado|chocado? por detras|atras
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
        me parti|quebre|fracture|rompi la espalda|columna|cadera !trabajando !haciendo !cargando !jaja
        dolor|doloron|dolorazo|tiron ~ BACKBONE ~ de la nada
        de la nada ~~ dolor|doloron|dolorazo ~ BACKBONE
        tiron fuerte|feo|tremendo|horrible|bruto|durisimo en|por|de la|mi espalda|cintura|columna
        se me rompio|partio|quebro|trono|revento|desprendio|zafo algo ~ JOINT|BACKBONE|LIMB|adentro|dentro|hueso
        senti|siento|sentir ~ que? ~ algo|se me? rompio|quebro|partio|abrio|desprendio|revento|rajo ~ BACKBONE|JOINT|LIMB|adentro|dentro
        senti|siento ~ se me partia|partio|partiera|abria|abrio|quebraba|rompia|rajaba ~ BACKBONE
        me quebre|kebre|rompi|fracture|parti algo
        trac|trak|traca|crash|clac|clack ,? ~ BACKBONE|cadera|costilla|rodilla
        BACKBONE|cadera|costilla ~ trac|trak|clac|clack
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
        senti|sentia|siento ~ que me iba|voy ,|.|a|de|del|pa|$
        pierdo|perder|perdiera|pierda el conocimiento|sentido|equilibrio
        estoy|toy|ando|bien|toda|todo|amaneci|sigo|muy|media|medio|tan|super|quede|quedo|siento marea|mareaa|mareao|mareaos|mareaito|mareaita|mareaico
        ^ marea|mareaa|mareao|mareaito|mareaita $
        mareaa|mareao|mareaito|mareaita|mareaico|mareadera|mareazon
        me fui a negro|blanco|negros
        me quede|quedo privada|privado|ida|ido|lela|atontada|atontado|aturdida|aturdido !de !por
        me privaba|prive
        me voy pa|pal los? piso|suelo|lados
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
        me tiene|trae|tenia|vuelve|volviendo loca|loco ~ dolor
        dolor ~ me tiene|trae|vuelve|volviendo loca|loco
        duele|dolio|dolor ~ que te cagas|mueres
        vi|mire|viendo al|el? ~ diablo|estrellas ~ dolor
        duele|dolio|dolia ~ que me muero|moria|mato
        dolor ~ mil demonios|diablos|infiernos
        dolor al maximo|tope|limite|cien
        me mata|matan|mataba el|la|las|los|mi ~ JOINT|BACKBONE|dolor|ciatica ,|.|y|no|$|con|hoy|de|al|desde|cuando
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
        canse|harte|aburri de vivir|existir
        ganas de no existir|vivir|despertar|estar|amanecer
        dormirme|dormir para|pa siempre
        encuentro|veo|hallo|tengo para|pa que levantarme|despertar|despertarme !temprano !de
        no sirvo|valgo ~ nada ,|. ~ morirme|morir|muerta|muerto|muero|muera|desaparecer|existir
        mejor ~ seria|sera no estar|existir|haber|vivir ,|.|ya|aqui|$
        no ~ tengo a|por|para que|quien vivir|vivo|viva
        que ya? me lleve|recoja|lleven dios|diosito|el|la|,|.|$
        ya que? me lleve dios|diosito
        nadie ~ va a extranar|extranarme|llorar|llorarme
        no aguanto|soporto|resisto|quiero mas? esta|la|mi vida|existencia ,|.|$|asi|ya|mas
        acabar|terminar|acabe con todo|esto de una|un vez|jalon
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
        trabajo|tarea|deudas|pendientes|cuentas|papeleo ~ me|nos tiene|tienen ahogada|ahogado|asfixiada|asfixiado|sin
        corazon ~ salta|brinca|late|palpita|baila ~ de|por|pero alegria|emocion|gusto|felicidad|contento|contenta|amor|orgullo !no
        corazon ~ late|palpita fuerte? pero? por mi|el _ jaja|jajaja
        dejo|deja|quita|quito|robo|roba sin|el aliento|aire|respiracion esa|ese|la|el|tu|su|esta|este foto|fotos|vista|paisaje|noticia|belleza|video|vestido|atardecer|nieto|nieta|bebe
        casi me infarto|infarta
        casi ~ infarto ~ con|de|por ~ penal|gol|partido|cuenta|precio|susto
        sin aliento|aire|respiracion ~ de la|tanta? emocion|risa
        sin aliento|aire con|por el|la|ese|tanta|tanto gol|noticia|belleza|atardecer|partido|novela|pelicula|concierto
        sin aliento|aire con el|la final|capitulo ~ partido|juego|novela|pelicula|serie
        robo|quito|quita|deja ~ aliento|respiracion !al !cuando !si ~~ belleza|vista|paisaje|atardecer|bonito|nieto|vestido|precio
        tomar|agarrar|coger ~ aire fresco
        aire acondicionado|fresco|libre
        casi ~ infarto ~ susto|precio|partido|cuenta
    """,
    "idiom.nerve_or_bladder": """
        control del|de|con carrito|carro|volante|coche|auto|gastos|televisor|tele|remoto
        cae|cayo ~ cara ~ verguenza|pena
        quede|quede|me dormida|dormido ~ en ~ silla|sofa|sillon|cama|tele
        dormida|dormido ya|fue|era? desde? antes de la|mi operacion|cirugia
        bebe|nieto|nieta|nino|nina|gato|gata|perro|perrita|perrito se? me? durmio|queda|quedo dormido|dormida? en|encima|sobre ~ pierna|piernas|brazo|brazos|mi|mia
        PERSON|nieto|nieta|gato|gata|perro|perrita se? me? durmio|queda|quedo ~ en ~ pierna|piernas|brazo|brazos|regazo
        risa casi|hasta|que|y? casi? me hice|orine|orino|hago|hacia !sin
        orine|pipi|hice|encima de la|pura|tanta? risa !y
        orine|pipi|hice|encima de la|pura|tanta? risa y !al !cuando !tambien !sin
    """,
    "idiom.fall_or_injury": """
        de golpe
        me tiro|tire|tiramos al|en|a el|la? piso|suelo|pasto|alfombra a|pa|para jugar|hacer|descansar|estirar|dormir|reir|gatear|ver
        dio|da|dan|dieron un|unos? ahogo|ahogos|mareo|mareos|vahido|vertigo
        gato|perro|nino|nieto|nieta|viento|perra|aire me|nos|ya|casi? tumbo|tiro|boto el|la|un|una|mi|los|las|todo florero|vaso|maceta|lampara|plato|mesa|cafe|agua|ropa
        peso|dolar|bolsa|precio ~ cayo
        zafe|zafo|zafar de|del un|una|ese|esa|el|la|mi? compromiso|trabajo|reunion|apuro
        tire en|a la? cama|sofa|sillon|hamaca
        me tire en|a|al|sobre|un ~ cama|sofa|sillon|dormir|descansar
        torcida|torcido ~ cuello ~~ almohada|dormir|dormi
        amaneci torcida|torcido
        quebre|rompi|quebro|rompio ~ una $
        quebre|rompi|quebro|rompio la una ~ pared|uñas|pintada|puerta|dedo|jaja
        quebre|rompi el|la|un|una|mi|los|mis? plato|vaso|taza|dieta|record|silla|banda|liga|florero|lentes
        se me fue el|la|de? dedo|mano|onda|tiempo|hora|pedo !en !entre !bajo !debajo
        se me fue el|la dedo|mano en|con el|la|los|las celular|teclado|tecla|telefono|numero|mensaje|sal|azucar|chile
        cai en la? cuenta
        cayo mucha|la|el|una|tremenda? nieve|lluvia|veinte
        calambre|calambres|calambrito
        me cae muy|re|tan? bien|mal|gordo
        golpe de suerte|estado|vista
    """,
    "idiom.faint_or_dizzy": """
        ni que ~ desmayar|marear|desmayara
        bajon ~ de? flojera|sueno|animo|luz|pilas|tristeza
        di|dar|dimos vueltas por|al|a|en el|la? casa|centro|tienda|banco|mandados|asunto
        dando vueltas por|al|a el|la? casa|centro|tienda|banco|mandados|asunto
    """,
    "idiom.severe_pain": """
        no ~ aguanto|soporto ~ calor|frio|ruido|vecino|vecina|suegra|ganas|hambre|sueno|risa
    """,
    "told_of": """
        antes !de !del ~ me|se|le ~ daba|daban|dolia|faltaba|mareaba|pasaba ~~ ya no >,|.|$|me|se|le|duele|da
        antes !de !del ~~ ahora ya no >,|.|$
    """,
    "hindered": """
        no _? _? puedo|pude|podia|deja|dejan|dejaba ni? enderezar|enderezarme|mover|moverme|moverla|moverlo|pisar|apoyar|apoyarlo|apoyarla|apoyarme|asentar|agachar|agacharme|acostar|acostarme|reir|reirme|toser|girar|voltear|voltearme|parar|pararme|caminar|levantar|levantarme|doblar|doblarme|sentar|sentarme
    """,
    "happening": """
        me pasa cada|siempre|todos|diario|seguido|a
        ayer|hoy|anoche y? hoy|ayer? me paso|pasa|pasó|ha|sucedio|dio
        me paso|sucedio ayer|hoy|anoche|al|cuando|otra|de
        siento|tengo|me ~~ ahorita|ahora|orita|ahoritita ,|.|$
        lo|la|eso tengo|siento ahora|ahorita|hoy|ya
        me esta pasando|dando
        ahorita|ahora lo|la|me ~ tengo|siento|pasa
    """,
}
