"""Spanish rules for pain told without a number, and for none.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "num.meant": """
        sino #
        es|era|fue # ,? no #
        ,|. es|era|fue # ,|.|$|y
        quise|queria|era SAIDWORD|decir|poner|escribir? FILL* #
        pon|ponga|ponle|pongale ~ #
    """,
    "num.retracted": """
        no era|es|fue|son de? PAINWORD? # ,? sino
        donde|cuando dice|decia|dije|puse|escribi|mande ~ #
        # ,|. no ,|. >#
        # no ,|.|$
        para|pa no decir #
        por no decir #
        CLIENTLIKE|PERSON dice|dijo|puso|cree|piensa ~ _? # ,? y|pero|.? el|la|a? yo|mio|mia
        dije|puse|escribi|juraba|juraria|pensaba|pense|creia|esperaba que ~ #
        dije|puse|escribi ~ dolia|dolio ~ #
    """,
    "pain_none": """
        PAINWORD ni pizca|gota|tantito|chispa
        na de PAINWORD
        no|ni ~ dolio|duele|dolieron|duelen|molesto|molesta na ,|.|$
        ni senti|sentimos|tuve|hubo|noto|note PAINWORD
        PAINWORD emojino ,|.|$
        no|ni me|nos? ha|han dolido|molestado ,? nada|nadita|ninguno|ninguna
        ni tantito|tantita|poquito|poquita|pizca|chispita|gotita de? PAINWORD
        sin que me|le? doliera|dolieran|duela|duelan|moleste|molestara ,? nada|nadita|ninguno|$
        PAINWORD ? nada|ninguno|cero|nadita ,|.|$
        ni|sin pizca|gota|chispa|asomo|rastro de PAINWORD
        PAINWORD ni|no|nunca se? asomo|asoma|aparecio|presento|existio|existe ,|.|$|hoy
        PAINWORD brillo|brilla por su ausencia
        libre|libres de PAINWORD
        ni|sin una|un gota|pizca|chispa|asomo|rastro de PAINWORD
        dolor no tengo|tuve|hay|siento|traigo|hubo|senti
        PAIN|duele|dolia|dolio|adolorida ~~ pero|mas hoy|ahora|ya ,? nada|cero|ninguno|nadita ,|.|$
        PAIN|duele|dolia|dolio|adolorida ~~ pero|mas hoy|ahora|ya ,? nada , cero
        ni un|una|N1 solo|sola? PAINWORD ,|.|$
        ^ PAINWORD PAINWORD? ,? no ,|.|$
        , PAINWORD no ,|.|$
        sin achaques|dolencias
        PAINWORD ,? FILL* nadita
        sin|cero|ningun|ninguna|ni|nada PAINWORD
        nada de PAINWORD
        cero|nada|ningun ~ PAINWORD
        PAINWORD ,? FILL* cero|ninguno|ninguna|nada|nulo|ningun
        no ~ duele|dolio|duelen|dolieron|molesta|molesto|molestan ~ nada|nadita|ni
        no ~ duele|dolio|duelen|dolieron|molesta|molesto ,|.|$
        no me|le|les ~ duele|dolio|dolieron|duelen|molesta|molesto $
        no ~ tengo|tuve|hay|hubo|siento|senti|traigo|sintio|tiene|tuvo ~ PAINWORD
        no ~ PAINWORD $
        ni siento PAINWORD
        nada ~ duele|dolio|molesta|molesto|duelen
        nada me|le duele|dolio|molesto
        no dolio|duele
        ni ~ dolio|duele
        sin ~ PAINWORD
        no senti nada
        no siento nada !entre !en !de !desde !del
        no ~ siento|senti nada de PAINWORD
        no me duelen
    """,
    "pain_none_not": """
        sin|ni|ningun|ninguna|no ~ PAINWORD resenable|resenables|importante|importantes|significativo|significativa|significativos|significativas|notable|notables|relevante|relevantes|mayor|mayores|grave|graves|fuerte|fuertes|serio|serios|destacable|destacables
        ni|sin PAINWORD de pecho|cabeza|estomago|muela|muelas|garganta|oido|panza
        si no me? duele|duelen|dolia
        no ~ PAINWORD de|en el? pecho|cabeza|estomago|muela|muelas|garganta|oido|panza
        no|sin ~ PAINWORD de pecho
        no me? duele|duelen|dolio ,? es el|la|los|las BODY
        nada|sin|cero de? PAINWORD al|a empezar|principio|inicio|comenzar ,? y|pero? FILL* #
        nada por|x|con|del el|tanto? PAINWORD
        nada ~ por|x el|tanto|este? PAINWORD
        ni un|una solo|sola? dia ~ sin PAINWORD
        no me quita|quitan|alivia|calma ~ PAINWORD
        casi no me? duele|dolio|dolia|duelen
        no me? quita|calma|alivia el PAINWORD ninguna|ningun
        antes no ~ PAINWORD
        PAINWORD no hay ~ que|quien|cristiano|nadie
        no es|fue|era por|de el? PAINWORD
        sin|cero|ningun|nada PAINWORD|de en|de? el|la|los|las|mi BODY ,|pero ~~ si me? dolio|duele|molesta|molesto|dolieron|duelen
        no puedo|podria|voy a? decir que no|sin|cero|nada
        mentiria|miento|mentir|mentira|mentirosa|mentiroso ~~ no ~ duele|dolio|duelen|molesta|tengo|hay
        mentiria|miento|mentir|mentira|mentirosa|mentiroso ~~ sin|cero|ningun|nada PAINWORD
        cero|0 no es|fue|era
        sin dolor no hay|gana
        no me? duele|dolio|dolia|duela ~ ,? pero ~~ si ,|.|$|me|duele
        nunca|jamas|ni|imposible ~ sin PAINWORD
        ningun|sin|no|ninguna PAINWORD nuevo|nueva|nuevos|extra
        no|ni es que no ~
        cero|sin PAINWORD ,|y|pero ~ no era|es|fue cierto|verdad|asi
        puse|marque|dije|escribi cero|0|sin PAINWORD
        sin|cero PAINWORD ~~ pero a? mi si
        limpio|lavo|toco|baño|bano|orino ~ no siento nada
        no siento nada ~~ anestesiada|anestesiado|dormida|dormido|abajo|partes|piernas
        no siento nada de|en|entre|al|del|cuando
        dormi|comi|descanse|avance|camine|duermo|descanso|puedo|pude nada del|por|con el? PAINWORD
        hice|hacer|hago|pude|hecho nada el|la|un|una|mi|del|con|por PAINWORD
        nada|na|no mas ~ me? duele|dolio|duelen|molesta|molesto|punza
        no hay|tengo|tuve|encuentro|hallo quien|manera|forma|modo|como|pastilla|medicina|palabras|remedio|dia|noche|posicion ~~ PAINWORD
        PAINWORD ,? no , ~ molestia|molesta|molesto|ardor|poco|poquito|si|un
        truena|truenan|trona|tronaron|trono|cruje|crujen|chasquea|suena|suenan ~ sin PAINWORD
        casi|practicamente|apenas ~ sin|nada|no|ningun ~ PAINWORD
        PAINWORD nada mas
        PAINWORD ~ nomas|namas
        truena|truenan|trona|tronaron|trono|cruje|crujen|chasquea|suena|suenan|clic ~~ no ~ duele|duelen|dolio|molesta|dolor !nada
        no ~ aguanto|soporto|resisto|tolero|quiero|aguanta ~ PAINWORD
        no senti|siento nada de !PAINWORD
        no ~ nada de mareo|hormigueo
        sin dolor ~ ganancia
        no ~ apoyo|piso|camino|puedo|aguanto|muevo|levanto|duermo|deja ~~ del|de|el dolor
        no ~ duele|dolio ~ tanto|mucho|casi|tan|mas|como|cabeza|pecho|pero
        sin dolor de ~ pecho|cabeza
        sin ~ dolor ~ pecho
        ni siento ~ pierna|pie|mano
        no siento nada ~ pierna|piernas|pie|pies|mano|manos|abajo|ahi|entrepierna|limpio|orino
        no siento ~ los|la|el
        no ~ duele ~ CHEST
        no ~ mucho PAINWORD
        nada de ~ dolor de pecho
    """,
    "pain_said": """
        dando|dio|da|dan|dieron guerra|lata|problemas|candela|batalla
        PAIN
        SORE
        HURT
        BODY ~ duele|molesta|tieso|tiesa|mal|malo|inflamada|hinchada
        leve|leves|soportable|tolerable|aguantable|moderado|fuertecito|fuerte|poquito
        me arde|punza|jala|cala
        igual que|q siempre|ayer
    """,
    "pain_answer_none": """
        ^ PAINWORD no ,|.|$
        ^ hoy|ahora|ahorita gracias|gracia a dios nada|nadita|ninguno|cero ,|.|$
        ^ fijate|fijese que hoy si? nada|nadita|ninguno|cero ,|.|$
        ^ hoy si? nada|nadita|ninguno|cero ,|.|$
        ^ dice|dijo que ninguno|ninguna|nada|cero ,|.|$
        ^ cap ,? ninguno|ninguna|res|dolor
        ^ para|pa nada ,|.|$
        ^ na $
        ^ na de na|nada
        ^ no $
        ^ no ,|.
        ^ no|sin|nada|nadita|ninguno|ninguna|ningun|cero|nulo
        ^ ni PAINWORD|tantito|poquito|poco|pizca|gota|asomo|rastro|chispa|nada|cosquillas
        ^ ni un|una tantito|poquito|poco|pizca|gota|chispa|PAINWORD
        ^ ni me|lo? duele|dolio|molesta|molesto|senti|siento
        ^ no ~ duele|dolio|nada|tengo|siento|hay
        nada ~ gracias|nada
    """,
    "pain_answer_words": """
        nada por|x|del|con|de el? ~ PAINWORD
        no puedo decir|negar
        mentiria|miento|mentir|mentira|mentirosa|mentiroso
        ^ nada|cero|no|ninguno en el|la|mi|los|las? BODY|@ ~~ HURT|SORE|PAIN
        no es que no|sea
        ni un solo|dia
        no ~ llega|alcanza|pasa|baja|sube
        ni a? #
        ^ lo de siempre|costumbre
        ^ lo mismo|igual de|que siempre|ayer|antes
        ^ va y viene
        ^ ahi va|anda|nomas|nada ,|.|$
        no ~ soporto|aguanto|resisto|tolero|aguantable|baja|deja
        ni !antes !durante _ ni
        no ~ mucho|tanto|tan|se|sabria|sabia|demasiado|muy|quita
        nada ~ grave|serio|mal|importante|del|que|grave
        casi nada
        no nada mas
        no ~ numero
        igual|mas o menos|leve|poco|poquito|poquitico|regular|tolerable|soportable
    """,
    "num.now": """
        ahora|ahorita es|esta|va|anda en? #
        no paso|subio|pasa|sube|llego|llega de|a|en mas? FILL* #
        hoy WEEKDAY? FILL* en? #
        nunca paso|subio|llego|estuvo de|a|en|arriba|mas FILL* #
        pongo|doy|diria|calculo|digo|califico FILL* #
    """,
    "num.rating": """
        estado|andado|quedado|seguido en|como|de FILL* #
        ahora|ahorita es|esta|va|anda en? #
        empece|comence|inicie|arranque en|con FILL* # ,? y|pero? acabe|termine|sali en|con #
        durante ~ # ,? y|ya? ya? despues|luego FILL* #
        # al|a terminar|final|acabar|acabarlos|terminarlos ,|.|$|los|hice|todo|todos
        # esta manana ,? y|pero? # esta tarde|noche
        rodilla|espalda|cadera|cintura|hombro|cuello|tobillo|pie izquierdo|izquierda|derecho|derecha|izq|der? en #
        # punto|puntos|puntito|puntitos de PAINWORD
        anduvo|estuvo|andaba|anda por|en|como el|un # ,|.|$|y|pero
        antes de empezar|comenzar tenia|era|estaba en? # ,? y|pero? al|despues terminar|acabar #
        arranco|empezo|comenzo|inicio en|con FILL* # ~ va|fue|esta|anda ~ #
        fui|fue|paso|subio|pase|subi de # a|hasta|al #
        antes de empezar|comenzar|iniciar|arrancar # ,? y|pero? al|despues|ya ~ terminar|acabar|final FILL* #
        no paso|subio|pasa|sube|llego|llega de|a|en mas? FILL* #
        # le? pongo|pondria|doy|calculo ,|.|$
        al empezar|principio|inicio|comienzo|comenzar FILL* # ,? y|pero? al|a terminar|final|acabar FILL* #
        YESTERDAYISH ,? FILL* # ,? y|pero? hoy|ahora FILL* #
        esta|anda|ando|amaneci|amanecio|sigue|sigo|va|estoy en FILL* #
        el mio|mia FILL* #
        yo # ,|.|$
        llego|subio|brinco a|hasta # ,|.|$|y|pero
        al levantarme|despertar|despertarme|pararme|sentarme|agacharme|caminar|subir|bajar|amanecer FILL* #
        en|por la manana|tarde|noche|madrugada era|fue|estaba|tenia|estuvo FILL* #
        # y subiendo|aumentando|empeorando|creciendo
        # al|a empezar|principio|inicio|comienzo|comenzar ,? y|pero? FILL* # al|a terminar|final|acabar
        lo|la tuve|tenia|traigo|traia|tengo FILL* #
    """,
    "num.own": """
        pongo|pondria|doy|daria|diria|digo|califico|calculo FILL* #
    """,
    "num.past": """
        antes de _? venir|ir|llegar|conocerlos|tratarme|empezar|entrar ~ con|aqui|ahi|ustedes|terapia|programa ~ #
        en MONTH ~ #
        ayer|antier|anteayer ~~ andaba|estaba|tenia|andaban|amaneci en? FILL* #
        # en MONTH
        WEEKDAY FILL* #? habia|fue|era|estaba|estuvo sido|en? FILL* #
        # cuando|antes empece|comence|inicie|empezaba ~ con|aqui|terapia|tratamiento|fisio|ustedes|programa
        WEEKDAY FILL* # ~~ >hoy
        era|fue|estaba FILL* # ,|y|pero? hoy FILL* >#
        # era|fue|eran|estaba antes de|del la|mi? operacion|cirugia|operarme|pandemia|caida|accidente|navidad
        YESTERDAYISH ,? FILL* # ,? y|pero? >TODAY
        LASTTIME|YESTERDAYISH ,? que fue|era|estaba|tuve|tenia|andaba FILL* #
        cuando empece|comence|llegue|vine|inicie ~ era|estaba|andaba|dolia|tenia ~ #
        hace ~ SPAN|AGESPAN ~ era|estaba|andaba|dolia|tenia ~ #
        antes me|era|andaba|estaba|tenia|llegaba|traia ~ #
        # cuando llegue|vine
        # cuando empece|comence ,? y|pero? >hoy
    """,
    "num.never": """
        pense|crei|pensaba|creia ~~ # ,? pero|y|mas no
        puse|marque|dije|escribi|mande ~ # de? PAINWORD? ,? y|pero? eso? no era|es|fue cierto|verdad|asi|correcto
        si manana|luego|despues|algun|llega|llegara|llegase|pasa|pasara|subiera|sube ~~ # ~ que|paro|sigo|llamo|aviso|debo|puedo
        dice|dicen|dijo|dijeron|explica ~ que si|cuando ~~ dolor ~ # ~ >pare|parar|llame|llamar|avise|descanse
    """,
    "num.other": """
        de # a # trabajo|trabajamos|laboro|turno|oficina
        partido|juego|marcador|resultado ~ # a #
        trabajo|turno de # a #
        ^ de # a # trabajo|estoy|tengo
        siento|sintiendo|sentia|sentimos como? de # hoy|,|.|$
        dedo|dedos # del|de
        canal # ~ juego|partido|tele|novela
        faltaban|faltan # para las|la #
        a la N1 ,|.|$|y|pero|porque
        baile|camine|subi|lave|plante|cocine|barri # !hoy !ahora !de !en !y !pero !cuando !al !por !con _
        # dedos|costillas|rodillas|muelas|dientes|uñas
        # de PAINWORD le|les dio|da|dieron|dan|doy a mi|la|el|su|mis
        doy|pongo|di ~ # a|para mi|la|el|los|las fisioterapeuta|fisio|doctora|terapeuta|kinesiologa|kinesiologo|enfermera|muchacha|nieta|nieto|hija|hijo|senorita
        pelicula|novela|serie|sopa|comida|partido|hotel|cafe ~ pongo|doy|di #
        ARTICLE # al|a|para ~ programa|servicio|atencion|doctora|terapeuta|clinica|equipo|video|videos
        # FRAC10? ,? lo|los|las|le repetiria|recomiendo|recomendaria|haria|volveria
        FRAC10 ,? lo|los|las|le|el|al|de|para repetiria|recomiendo|recomendaria|volveria|servicio|programa
        le|les|lo|los pongo|doy|saque|sacamos|califico ~ # al|a|de|en ~ programa|servicio|rutina|ejercicios|ustedes|doctora|video|videos
        # ,? era|fue|es|son de mi|la|el|su CLIENTLIKE|PERSON
        el|la de mi|la|el|su CLIENTLIKE|PERSON es|era|fue|anda|esta FILL* #
        ^ de # a? #? estuve|anduve|estaba haciendolos|haciendo|ejercitando
        , de # a? #? estuve|anduve|estaba haciendolos|haciendo|ejercitando
        no ~ fueron|eran|hice ~ todos|todas ,? ~ fueron|eran|hice # nomas|namas|solamente|,|.|$
        SET ~ pongan|ponga|pon|ponle|son|eran|fue|era|fueron ~ _ ,? de #
    """,
    "num.times_through": """
        todo|todos|todas|rutina|ejercicios|completo|completa USED TIMES ,|.|$|cada|y|dolor
        USED TIMES todo|todos|todas|cada ,|.|$|uno|una|ejercicio|dolor
        los|las hice|hicimos USED TIMES ,|.|$|cada|dolor
    """,
    "num.theirs": """
        a mi|su|el|la PERSON|CLIENTLIKE le duele|dolia|dolio FILL* #
    """,
}
