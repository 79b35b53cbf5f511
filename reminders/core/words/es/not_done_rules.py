"""Spanish rules for a session not done, or still to come today.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

# Left out, whatever else is told.
_SURELY_SKIPPED = """
        ni lo|los|las|la? intente|toque
        faltare hoy
        , hoy lo|los|la|las dejo|dejare|salto ,|.|$
        ^ hoy lo|los|la|las dejo|dejare|salto ,|.|$
        , lo|los|la|las dejo|salto por? hoy ,|.|$
        ^ lo|los|la|las dejo|salto por? hoy ,|.|$
"""

RULES = {
    "skip": _SURELY_SKIPPED
    + """
        quede|quedo|quedamos debiendo
        mejor descanso ,|.|$|hoy
        ni intente|probe|empece|comence|arranque|toque los|las|el|la EXERNOUN
        EXERNOUN no|ni hoy? los|las|la|lo|le? hice|pude|toque|alcance|intente|hago ,|.|$|hoy|porque|que
        EXERNOUN hoy|ahora no|ni los|las|la|lo? hice|pude|toque|alcance|intente|hago ,|.|$
        EXERNOUN queda|quedan|quedo|quedaron para|pa otro|otra|manana|pasado
        ni hice|hicimos los|las|el|la EXERNOUN
        hoy no hay|hubo|habra|toca EXERNOUN
        en su lugar ,? ~ fui|sali|camine|descanse|dormi|nade
        ^ ya? olvide|olvido $
        ^ no ejecutado|ejecutada|realizado|realizada|efectuado|efectuada|cumplido|cumplida|hecho|hecha|hechos
        no se ejecuto|realizo|efectuo|cumplio|hizo|hicieron
        ahora|hoy|orita|ahorita si no
        hoy me los|las salto|brinco
        me los|las salto|brinco hoy
        hoy toca descanso|descansar|flojera
        ^ NO $
        ^ NOPE $
        ^ NO|NOPE ,|.|
        ^ n|nel|nop|nope|nelson ,?
        ^ no hoy|ahora|pude|los|las|lo|hubo|hice|voy|puedo
        hoy no
        no hoy
        hoy mejor no
        hoy paso
        ^ paso
        yo paso
        hoy descanso|descanse|no|nada|tampoco
        no ~ hice|hize|ise|hise|ice|hizo|hicimos|izo|hare|hago|realice|hicieron
        no ~ pude|puedo|podre|pudo|pudimos|puede
        no ~ alcance|alcanzo
        no ~ voy a hacer|poder|hacerlos|hacerlas
        no ~ los ~ hice|hago|voy|hizo|he
        no ~ he ~ hecho|podido
        no ~ quiso|quise|quiero hoy
        no ~ toque
        no hubo|habra|hay|va|tuve ~ ejercicio|ejercicios|rutina|terapia|tiempo|chance|modo|energia
        no tuve|tengo ~ tiempo|ganas|chance|fuerzas|energia|cabeza|animo|humor
        sin ~ rutina|ejercicio|ejercicios ~ hoy|esta|por
        sin rutina|ejercicio|ejercicios
        sin ganas
        nada de ejercicio|ejercicios|rutina ~ hoy
        hoy ~ nada
        nada hoy
        ^ nada $
        ^ nada ,|.
        nada la vdd|verdad|neta
        ni uno|una|los|madres
        ninguno|ninguna|ningun
        se me olvido|paso|olvidaron|fue
        se ~ olvido|fue ~ dia|tiempo|por completo|hacer|los|onda
        se me paso
        olvide ~ hacer|hacerlos|los|por completo
        me quede dormida|dormido
        imposible
        no toca|toco
        que flojera|hueva|pereza
        flojera|hueva
        manana ~ los|lo|las|pongo|hago|le|me|si|sin|temprano|seguimos|al|primera
        hasta manana
        para|pa manana
        lo dejo|deje|dejamos para|pa manana
        los dejo|deje para|pa manana
        falle
        hoy fallo|falle|falte
        falte
        descanse|descansando|descanso
        dia libre|descanso
        en vez de|lugar
        en lugar de
        imposible hoy
        no anduve
        no se pudo|puede|va
        ni modo
        mejor no|descanso|otro
        otro dia
        me salte ~ hoy|los|la|sesion|dia
        tuve que ~ !parar !dejar !detener !agarrar !sentar
        estoy|ando|amaneci|sigo ~ enferma|enfermo|mala|malo|malita|malito|gripa|cama|hospital|calentura|fiebre|cansada|cansado|agripada|agripado
        en cama
        ando mala|malo|malita|malito
        no me siento bien|con ganas
        me siento mal
        no amaneci bien
        cero ejercicio|ejercicios|ganas|rutina
        no estoy para
        no ando de
        no tampoco
        muy cansada|cansado
        no ~ se me|pudo
    """,
    "skip_not": """
        no me|nos? duele|dolio|duelen|molesta ~ nada|hoy
        sin saltarme|saltar|faltar|brincarme|fallar|perdonar|perder ni? uno|una|ninguno|ninguna|nada
        no los|las|lo hice|hize|ise todos|todas|todo|completos|completas
        no se me? quita|pasa|calma|baja|cede|quito
        hoy ~ no ~ duele|duelen|dolio|molesta|siento ~ nada|dolor|ya
        hoy ~ no ~ duele|duelen|dolio|molesta|siento
        que descanse|descansen
        descanse|descansen usted|doctora|licenciada|mija|bien
        no ~ termine|acabe|complete|terminar|todo|todos|todas|completos
        no ~ hice ~ todos|todo|todas|@
        no ~ hice ~ mas|completo
        no ~ pude ~ terminar|todo|todos|mas|con|seguir|respirar|enderezar|acabar|completar|levantar|mover|dormir|orinar|hablar|caminar|aguantar|pararme|pisar
        no ~ puedo ~ respirar|mover|moverme|caminar|mas|dormir|hablar|enderezar|levantar|levantarme|orinar|aguantar|ni|pisar|pararme|ver|creer|esperar
        no ~ paso nada
        se me olvido ~ mandar|avisar|contestar|decir|responder|escribir|mensaje|reportar|textear
        se me paso ~ avisar|mandar|contestar|mensaje|decir|escribir
        se me paso ~ mareo|dolor|rapido
        olvide ~ avisar|mandar|contestar|decir|responder
        no se ~ como|que|si
        ninguno|ninguna ~ dolor
        dolor ninguno|ninguna
        sin dolor
        no @
        no ~ hice @
        no tengo ~ dolor|nada|molestia
        ni dolor|mareo|siento
        ni uno ~ falto|me falto
        no me salte|brinque
        tuve que
    """,
    "skip_sure": _SURELY_SKIPPED
    + """
        ^ ni un|uno solo? EXERNOUN
        , ni un|uno solo? EXERNOUN ,|.|$
        ninguno|ninguna|nada hecho|hecha|realizado|realizada|cumplido ,|.|$|hoy
        no se ha|han|pudo podido|logrado|hecho? ,|.|$
        ni los|las|lo? hare|voy a? hacer|hacerlos hoy|ya|,|.|$
        no los|las|lo he hecho ni
        ni|sin|cero ganas de hacer|hacerlos? EXERNOUN|ejercicio|los|nada ,|.|$|hoy
        ni intente|probe|empece|comence|arranque|toque los|las|el|la EXERNOUN
        EXERNOUN hoy no|ni los|las|la|lo? hice|pude|toque|alcance|intente ,|.|$
        EXERNOUN queda|quedan|quedaron para|pa otro|otra|manana|pasado
        hoy no hay|hubo|habra|toca EXERNOUN
        no se pudo ,|.|$
        ^ nada hoy
        ahora|orita|ahorita no pude|pudimos|hice|hicimos|alcance
        ^ olvide $
        hoy ya no ,|.|$
        ^ no ejecutado|ejecutada|realizado|realizada|efectuado|efectuada|cumplido|cumplida|hecho|hecha|hechos
        no se ejecuto|realizo|efectuo|cumplio
        ahora|hoy|orita|ahorita si no
        no|ni ~ he|hemos|ha hecho|podido|realizado|logrado
        no ~ hice|hize|ise|hise|hizo|pude|alcance|hicimos
        hoy no
        no ~ hoy
        ^ NO $
        ^ no ,|.
    """,
    "later": """
        lo|los|la|las dejo|dejamos|dejare|deje para la? noche|tarde|luego|despues|rato|mas
        cuando|apenas|luego ~~ los|lo|las|la hago|hare|hacemos ,|.|$|en|con|todos|todo|sin
        los|lo|las|la hago|hare|hacemos en cuanto|apenas|cuando|luego|despues
        tomarme|tomar|comer|desayunar|acabar|terminar|cambiarme|banarme|descansar ~ y ya? arranco|empiezo|comienzo
        ahoritita|horitita|ahorita que|mismo
        ahorita|horita|orita mismo|voy
        dame|deme|denme ~ hora|horas|rato|minutos|momento
        al rato|ratito
        en un rato|ratito|momento
        en la ~ noche|tarde|tardecita|nochecita !me !no !siempre
        mas tarde|al rato|noche|ratito
        a la noche|tarde
        esta|hoy en la? noche|tarde|tardecita
        todavia|aun no
        aun|todavia no ~ hago|hice|he|los|empiezo|pero
        ahorita|orita|horita|luego|luegito|despues|horitita ~ los|las|lo|me|le|empiezo|voy|hago|sigo|pongo ~ hago|hare|pongo|empiezo|entro
        ahorita|orita|horita ~ los|las hago
        los|las|lo|le ~ hago|hare|are|voy a hacer|entro ~ luego|despues|rato|noche|tarde|ahorita|llegando|llegue|cuando|en|esta|mas|al
        los|las hare|are
        ya los ~ voy a hacer
        voy a ~ hacer|hacerlos|empezar|hacerlas|comenzar ~ ahorita|rato|luego|tarde|noche|en|mas|despues|ya|hoy|al
        voy a hacerlos|hacerlas|empezar
        si los voy a hacer
        despues de ~ comer|cenar|trabajar|desayunar|misa|novela|trabajo|comida|siesta|las|la|que
        cuando ~ llegue|salga|duerma|duerman|termine|acabe|se|regrese|vuelva|pueda|baje|deje
        llegando|saliendo|terminando|acabando los|las|hago|le
        saliendo ~ del
        y los hago
        ya casi|voy|mero ~ los|hago|empiezo
        ya voy
        ahi voy
        me pongo !al
        ya me pongo
        dame|deme|denme ~ chance|rato|minutos|hora|minutito|ratito
        en # minutos|min|horas|hora
        en cuanto ~ llegue|pueda|salga|termine|acueste|duerma|despache|regrese|desocupe|baje|acabe|coma|cene|almuerce
        luego ~ los|lo|le|hago
        estoy ~ empezando|por
        antes de dormir|acostarme
        hoy mismo
        mas al rato
        todavia no
    """,
    "later_not": """
        ni|no los|las|lo hare|haremos|voy
        al rato|ratito le|les|te cuento|digo|aviso|platico|escribo|llamo
        a la noche ~ no
        en la noche ~ me|mande|manden|mejor|siempre|prefiero
        en la tarde ~ siempre|mejor|mande
        mandenme|mande|escribanme|mandeme ~ en la tarde|noche|mas|despues
        otra mitad
        mas tarde ~ siempre|mande|manden|mensajes
        luego ~ digo|aviso|les
        cuando ~ llueve|camino|me
    """,
    "later_sure": """
        todavia|aun no
        al rato
        los|las hago|hare ~ rato|noche|tarde|luego|despues
    """,
    "later_plain": """
        ^ luego|despues de|d la|el|mi? siesta|comida|cena|almuerzo|desayuno|misa|novela|cafe|bano|siestita ,|.|$
        ^ luego|luegito|ahorita|ahoritita , que|q|es
        ^ los|las|lo hago|hare|realizo en cuanto
        ^ los|las|lo hago|hare|realizo apenas|nomas que|q|llegue|salga|termine|pueda
        ^ mas tardecito|tardecita ,|.|$
        ^ dame|deme|denme una? horita|ratito|minutito ~ $
        ^ los|las realizare|hare ~ por|en la tarde|noche
        ^ luego|luegito|despues|ahorita|orita|horita|ahoritita|mas tarde? $
    """,
    "tomorrow": """
        manana !en !por !y !me !a !temprano
        manana ~ los|hago|pongo|sin|si|le|mismo
        para|pa|hasta manana
    """,
    "tomorrow_not": """
        la|de|por|esta|en manana
        manana $
    """,
    "skip_plain": """
        hoy ya no $
        ^ negativo $
        ^ hoy le fallo|falle ~ $
        ^ hoy nones ~ $
        ^ me brinque|salte el dia $
        ^ me faltaron|faltan|falto las? ganas $
    """,
}
