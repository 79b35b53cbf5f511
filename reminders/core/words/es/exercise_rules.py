"""Spanish rules for what is said of single exercises, and for days.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "ex.done": """
        he|hemos podido|logrado|alcanzado con?
        puedo|pudimos|podido con
        hice|hize|termine|acabe|complete|listo|hecho|hechos|avente|hizo|pude|done|logre|ise|hicimos|realice|cumpli|hecha
        lista|listos|listas|hechas|echo|echos|echa|echas|ice|hise|yse|complete|finalice
        realizado|realizada|realizados|realizadas|cumplido|cumplida|cumplidos|cumplidas|logrado|logrados
        terminado|terminada|terminados|terminadas|completado|completados|acabado|acabados|acabadas
        salio|salieron|quedo|quedaron bien|listo|listos|lista|listas|hecho|hechos
        alcance|logre|pude|acabo a|de? hacer
        le hice|entre|di a|con
    """,
    "ex.done_before": """
        puro|pura|puros|puras
        todo|todos el|los|lo|la @
        solo|nomas|solamente|unicamente|namas
        nada|na mas|ma
        nada|no mas que el|la|los|las|lo? @
        ^ no mas el|la|los|las|lo? @
        meti|saque|eche|despache|avente el|los|las|la @
        puro|pura
        lo unico que hice|pude|alcance ~ fue|fueron
    """,
    "ex.done_after": """
        @ si los|las|lo|la hice|hize|ise|pude ,
        @ regular|masomenos|regularcito
        @ y|s ,|.|$
        , nada|no|na mas|ma eso|esos|esas|ellos|ellas|esas
        esos|esas|eso nomas|namas ,|.|$
        @ nomas|namas|solamente ,|.|$
        @ nada|no|na mas|ma
        al tiro
        cabal|cabales|filete|joya|dale|okay|sip|simon|impecable|parejo|redondo|redonda|ejecutado|ejecutados
        si|completo|completos|completa|completas|bien|emojiyes|todo|todos|perfecto|facil|ok|toditos|tambien|enteros|sip
        ya !no !los !las !lo !la !ni
    """,
    "ex.part": """
        @ ,? mas o menos ,|.|$
        puro|solo|nomas|namas el? lado|lao derecho|izquierdo de|del|en|con
        no ~ pude|alcance|logre|puedo|pudo a? terminar|acabar|completar|finalizar
        # ,? y|ahi|hasta deje|pare|quede|rendi >$|,|.
        a medias
        mitad|mita|mitades|medias
        dejo|deje|quedo|quedaron|quede a|por|en la? mitad|medias|medio
        solo|nomas|nada|apenas # SEC
        solo una parte|parte
        solo|nomas|namas un|una pierna|pie|lado|lao|rodilla|brazo
        na|nada|no ma|mas de un lado|lao|pie
        un lado|lao nomas|namas|solo|solamente|nada
        un lado|lao ,? y|pero? el otro lado|lao? no
        solo|nomas|namas|solamente|unicamente|nada|no ma|mas? con|de|por|en el|la|un|una pierna|pie|lado|lao|brazo derecho|derecha|izquierdo|izquierda|bueno|buena|malo|mala?
        de un solo lado|lao|pie
        # SEC nomas|namas|solamente|no|nada
        aguante|dure|llegue|alcance ~ TEN|SMALL SEC
        lado|derecho|derecha|izquierda|pierna|pie si ,|y|pero? izquierdo|izquierda|otro|otra|derecho|derecha no
        solo|nomas ~ con ~ derecha|izquierda
        solo|nomas ~ con un|una pierna|pie|lado|pata|brazo|rodilla
        solo|nomas ~ lado|derecha|izquierda|derecho|izquierdo
        no ~ todo|completo|termine|complete
        solo # SECNUM
        solo SECNUM
    """,
    "ex.not": """
        no hice|hicimos|pude fue|fueron|es|era el|la|los|las @
        falto|falta|faltan|faltaron|quedo|quedaron|debo el|la|los|las @
        quiten|quitenme|quite|quiteme el|la|los|las|lo de? @
        imposible|imposibles
        suspendi|suspendimos|cancele|aplace|pospuse|descarte|evite|obvie|saltee
        omiti|salte|brinque|saltamos|salteé|falto|faltaron solo|unicamente|solamente|nomas|namas|nada mas? >THE|@
        deje|dejamos pasar|fuera|pendiente|pendientes|sin|de
        falto|faltaron|falta nada|no|na mas
        falto|faltaron|falta solo|nomas|solamente|unicamente
        no ~ alcance|logre|pude|alcanzo|llegue a|de? hacer|hacerlo|hacerla|hacerlos|hacerlas
        skipie|skipee|skipeo|eskipie|skipié|skippie
        no me|nos dio|alcanzo el? tiempo de|para|pa|a
        me la|lo|los|las salte|brinque
        nada !mas
        quedaron|quedo|quedan|queda|quede pendiente|pendientes|debiendo
        me|nos salte|saltamos|brinque|faltaron
        pendientes|nop|nel|nones|negativo|omitido|omitidos|omitida|ninguna|ninguno|jamas|olvide|deje
        quite|cancele|evite
        ni lo|la|los|las intente|probe|toque|hice|pude|empece|comence|acabe
        ni tocarlo|tocarla|tocarlos|intentarlo|intentarla|hablar
        no !mas !me !se !hay !tuve !paso !duele !dolio
        no me|se !duele !dolio !dolieron !duelen !molesto !molesta !mareo !maree !cai !caigo !pego !falto !tambalee
        ni !me !se
        falto|faltaron|faltan !el !la !aire !fuerza
        falto|faltaron|faltan el|la !aire !respiracion !fuerza !vista !aliento
        cero|salte|brinque|emojino|tampoco|pendiente|omiti|nothing
        no ~ hice|pude|hago|hize|termine|anime|quise|hecho|hechas|hechos|realice|logre|alcance|intente
        ni los|las|lo|el|la toque|hice
    """,
    "ex.but": """
        aparte de|del
        menos|excepto|sin|salvo|quitando|exepto|exceptuando
        a|con excepcion del|de
        fuera del|de
        lo unico que no hice|pude|alcance ~ fue|fueron
        lo unico que me falto ~ fue
    """,
    "ex.not_after": """
        ni me acerque|arrime
        se|te|les|os lo|los|la|las debo|adeudo
        @ ,? otro ,|.|$
        @ n ,|.|$
        @ ,? otro dia|rato
        @ na|nadita ,|.|$
        @ ~ quedo|quedaron|queda|quedan|quedaran|quedara|van|seran|dejo para|pa manana|luego|despues|otro|la
        @ ~ quedo|quedaron|queda|quedan|quedaran debiendo|pendientes|pendiente|fuera|sin
        @ los|las|lo|la suspendi|cancele|pospuse|aplace|omiti|evite|descarte|obvie
        @ los|las|lo|la deje|dejo|dejamos|dejaba pasar|fuera|pendientes|pendiente|sin|de|a|para|pa? un|otro|lado|hacer|manana|luego? ,|.|$|dia|porque|que|por
        @ ya? no quiso|pudo|hizo|alcanzo|quise|aguanto
        @ lo|la|si|tambien? me falto|falta
        @ ~ quedo|quedaron|queda para|pa manana|luego
        @ lo|la|los|las dejo|deje|salte|brinque
        @ ,? manana|pendiente|pendientes|luego
        @ ,? se? lo|la|los|las|te|le|les? debo|quedo|quede debiendo?
        @ ,? pa|para manana|luego|despues
        @ ,? pa|para otro|la|el dia|rato|noche|tarde|proxima
        @ ,? en veremos
        @ ,? que|q|me hueva|flojera|fiaca|lata|pereza
        @ ,? me dio|da|dieron hueva|flojera|fiaca|lata|pereza|miedo
    """,
    "day.today": """
        hoy
        esta manana|tarde|noche
    """,
    "day.yesterday": """
        ayer|anoche
    """,
    "ex.place": """
        dormida|dormido|durmio|dormi|dormir|dormite en|sobre el|la|un|mi @
        perdi|perder|perdia|pierdo|perdio el|mi @
        partia|parti|partio|moria|mori|meaba de risa ~~ los? de? @
        pensando|preguntandome ~~ @
        compre|compramos|compraron|estrene|vendi|regale|regalaron|presto|pinte|pintaron|enamore|enamorada|enamorado ~ un|una|el|la|los|las|mi @
        amo|adoro|odio|detesto el|la|los|las|esos|esas @
        @ me|nos hizo|hace|dio|costo|canso|cuesta|gusto|gusta|deja|dejo|mata|mato|cansa
    """,
    "ex.part_after": """
        na|nada|no mas|ma de? un lado|lao|pie|pierna
        no la|lo|los|las acabe|acabo|termine|complete|termino
        no la|lo|los|las pude|alcance|logre a? terminar|acabar|completar
        a? medias|mitad la|lo|los|las deje
    """,
}
