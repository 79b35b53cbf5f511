"""Spanish rules for a session done, wholly or in part, and for what became of its parts.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

_HUNDRED = """
        ^ el|un? N100 por ciento|percent|porciento ciento?
        hice|hecho|hechos|cumpli|complete|termine|los|el|al|todo* N100 por|percent|porciento ciento? !pero !menos !excepto
"""
# Not all of it, whatever else is told.
_SURELY_PART = """
        los|las medio hice|ise|hize|hicimos
        medio|media hechos|hecho|hechas|hecha|terminados|terminado
        quedo|quedaron|falto|faltaron uno|una|dos|tres|algunos|varios sin|por hacer|terminar|hacerse
        casi|cuasi ALL ,|.|$|pues|menos|pero|EXERNOUN
        casi|cuasi ALL los|las|mis EXERNOUN
        hasta donde|adonde pude|aguante|alcance|llegue|di|se
        medio los|las hice|ise|hize|hicimos
        tres cuartas|cuartos partes?
"""
RULES = {
    "done": """
        ejercicios|rutina|tarea ok ,|.|$
        salieron|salio todos|todas|todo|completos|completas|completo ,|.|$|bien|hoy
        sali|cumpli con todos|todas|todo
        ^ echo|exo|exho ,|.|$|todo|dolor|y|con|todos
        ejercicios|rutina|tarea bien|completos|completa|completos|listos|lista todos|toda ,|.|$|y
        completitos|completitas|completito|todititos
        DONE
        hice|hize|ise|ice|hise|realice|yse|hicimos
        hizo|izo|hicieron|realizo
        ya ~ hice|hize|ise|hizo
        ya ~ quedaron|quedo|estuvo|esta|estan|stuvo|estubo|stubo
        ya estuvo|stuvo|stubo|estubo|esta|estan|quedo|acabe|termine|los|las
        ya los|las $
        yastan|yasta|yestuvo|yastuvo
        los|las|lo hice|termine|acabe|complete|hize|ise
        me ~ avente|eche|chute|avento|aventado
        avente|chute|eche|despache|rife
        pude con todo|todos|todas
        saque|logre|alcance ~ todo|todos|todas|hacer|hacerlos|terminar|#
        logre ~ hacer|hacerlos|terminar
        acabo de ~ terminar|hacer|hacerlos|acabar
        listo el pollo
        al cien|100
        mision cumplida
        cumplida ~ mision
        con todo
        ^ todo $
        ^ todos $
        ^ todito|toditos|todas|completo|completos|todo $
        ^ todo ,|.
        ^ todos ,|.
        los # $
        ^ ya $
        ^ YES ~ todo|todos|todas|toditos|completo|completos
        YES ya
        fui haciendo
        quede al dia
        trabaje ~ todo
        le hice|entre
    """,
    "done_not": """
        hice ~ nada
        no ~ hice|hize|hizo|ise|pude|termine|acabe|complete|hise
        hice ~ dano|pipi|popo|pis|bolas|mal|cita
        lista ~ vez|hoy|otra|nueva|de|por
        la lista
        mi lista
        esta listo
        se acabaron|acabo ~ vacaciones|papel|luz|gas|pila
        esto|esta|es completo
        termine|acabe|termino ~ terapia|tratamiento|con la terapia
        me|le|los|las|lo hicieron
        quedo ~ dormida|dormido
        quedo|quedaron|queda|quedan doliendo|punzando|ardiendo|temblando|adolorida|adolorido|adoloridas|adoloridos|inflamada|hinchada
        quede dormida|dormido
    """,
    "done_plain": """
        ^ echo|exo|exho ,|.|$|todo|dolor|y|con|todos
        DONE
        hice|hize|ise ~ los|las|EXER|ALL|todo
    """,
    "all_sure": _HUNDRED,
    "all": _HUNDRED
    + """
        si? fueron todos|todas
        ALL
        la totalidad
        al cien
        al N100
        como dice|indica ~ papel|hoja
        lo indicado
        ni uno falto
        sin saltarme|saltar|faltar|brincarme|fallar|perdonar ni? uno|una|ninguno|ninguna|nada
        de principio a fin
        los # $
    """,
    "all_not": """
        para|con|a|gracias todos|todas|toditos|toditas ,|.|$
        todo|toda el|la|mi barrio|pueblo|colonia|edificio|calle|cuadra|ciudad|casa|familia
        y fue|es todo
        nada mas y todo
        ALL menos|excepto|salvo|pero|quitando|sin
        ALL ~ menos|excepto|salvo @
        no ~ ALL
        ALL ~ dia|dias|semana|noche|tarde|manana|tiempo|rato|mes|cuerpo|pierna|brazo|diciembre|enero
        toda|todo|todos|todas ~ la|el|los|las ~ dia|dias|semana|noche|tarde|manana|tiempo|rato|cuerpo|pierna|mes|cara|espalda
        ALL ~ bien|negro|tranquilo|vueltas|mal|da
        ALL ~ duele|duelen
        de ALL un|poquito|modos|formas|maneras
        con ALL ~ respeto|carino|gusto|calma|y
        sobre ALL
        ante ALL
        por ALL
        gracias por ALL
        ustedes|a ALL
        en ALL caso|momento
        ALL lo que pude
        lo demas
        todo lo demas
        todos los demas
        ALL ustedes|alla|ahi
        toda|todo adolorida|adolorido|golpeada|golpeado|mareada|moreteada
        perdi ALL
        ni ALL
        ALL sobre
    """,
    "part": _SURELY_PART
    + """
        los|las|lo que pude|alcance ,|.|$
        hice tantito|tantita|poquito|poquita
        lo que se? pudo|pude|alcance|aguante
        pare|paramos antes de acabar|terminar|acabarlos|terminarlos
        hice|hicimos poquitos|poquitas|pocos|pocas|poquito|poco
        tantito|poquito|poco|algo|cachito|pedacito de todo|cada|ALL
        me raje|rendi
        media|medio EXERNOUN
        pare|deje|quede|detuve a media|medio|mitad
        ya no segui|continue|seguimos|continuamos
        dos|tres|# de los? cuatro|ejercicios
        solo|nomas|nada una parte
        mitad|mita
        PART de ~ EXER|@|los|las
        a medias
        a la mitad
        por la mitad
        solo|nomas|solamente|unicamente|namas ~ # SET
        solo|nomas|solamente|unicamente ~ @
        solo|nomas|solamente|unicamente|namas ~ # ~ de|en|y|EXER
        @ nomas|namas|solo|solamente
        # SET ~ nomas|solamente|unicamente
        solo|nomas ~ pude|hice|alcance|una|un|uno|la|el|los|las|mitad
        alcance ~ una|un|unos|#|mitad|poquito
        no ~ todo|todos|todas|toda
        no ~ termine|acabe|complete|terminar|acabar|completar|completo|completos|completas|completa|enteros|enteras
        no ~ los|las ~ todos|todas
        tuve que parar|detenerme|dejar|dejarlo|sentarme|suspender
        pare|deje|detuve|suspendi|quede ~ mitad|medias|camino|ahi|medio
        me detuve|pare|sente ~ mitad|medio|camino|ahi
        medio camino
        ahi|hasta ahi|alli ~ llegue|pare|deje|quede|lo deje
        ahi le pare|deje
        hasta ahi
        y ya $
        y se acabo
        y hasta
        y ya ,
        ALL menos|excepto|salvo|quitando
        ALL ~ menos|excepto|salvo
        menos @|el|la|los|las ~ @
        me falto|faltaron|faltan|salte|brinque
        falto|faltaron|faltaron|faltan ~ @|uno|una|dos|el|la|los|#|ultimo|ultima
        lo que pude|alcance
        lo que ~ pude
        unos si
        algunos|algunas
        un poco|poquito
        poquito ~ todo
        tercio|tercera|cuarta parte
        la mayoria
        casi todo|todos|todas
        mas de|o menos ~ mitad
        de cada $
        una de cada
        # de # ~ ejercicios
        lo demas ~ manana|noche|rato|tarde|despues|pendiente|no
        los demas ~ manana|no|luego
        el resto ~ manana|noche|no|pendiente
        otra ~ pendiente|veremos
        ya no pude|aguante ~ mas|con|los|las|la|el|seguir|terminar
        no pude ~ con|terminar|mas|seguir
        empece pero
        intente
        primera serie|vuelta|ronda|mitad|parte
        los primeros|primeras
        percent
        por ciento
        rodilla no quiso
        no alcance ~ terminar|todo|todos
        # %
    """,
    "part_not": """
        N100 percent|por|porciento
        no me? falto|faltaron ninguno|ninguna|nada|ni
    """,
    "part_sure": _SURELY_PART
    + """
        lo que se? pudo|pude ,|.|$|y|nomas
        no los|las|lo|la termine|acabe|complete|acabamos|terminamos
        no completo|completos|completas|completa|enteros|enteras
        media|medio EXERNOUN
        ya no segui|continue|seguimos|continuamos
        tantito|poquito|poco|algo|cachito|pedacito de todo|cada|ALL
        me raje|rendi
        mitad|mita
        ALL menos|excepto|salvo
        ALL ~ menos|excepto|salvo
        no ~ todo|todos|todas
        no los|las|lo hice|hize|ise todos|todas|todo|completos|completas
        solo|nomas|solamente ~ @
        menos @
        falto|faltaron
        a medias
        tuve que parar
        solo|nomas|solamente ~ # SET
        no pude|complete ~
    """,
    "yes_report_not": """
        ^ dale ,? un|saludos|gracias|abrazo|besos
    """,
    "yes_report": """
        ^ YES $
        ^ YES YES* ,? # $
        ^ YES ,|.
        ^ YES ~ hice|termine|todo|todos|senora|senorita|senor|ya|los|las
        ^ s #
        ^ sip|simon|sii|sisi|claro
        ^ s $
        ya cumplimos|cumpli|acabamos
    """,
    "amount_unknown": """
        perdi la cuenta
        no ~ se|recuerdo|acuerdo|conte|supe ~ cuantos|cuantas|cuanto|cuenta
        no los conte
    """,
    "none_done": """
        ^ NONE|ni $
        ^ ninguno|ninguna|ningun|nada|ni|cero ~
        ^ no $
        ^ nada
    """,
    "rest_not": """
        falto|faltaron|falta todo|todos lo|los demas|resto
        lo|los|las|el demas|resto|otros|otras|otro ya? no !me !duele !dolio
        lo|los|las|el demas|resto|otros|otras|otro ni|nada|tampoco|pendiente|pendientes|manana|debiendo|luego
        lo|los|las|el demas|resto|otros|otras|otro para|pa|lo|los|las manana|luego|despues|dejo|deje|debo
        no hice|pude|alcance ~ lo|los|las demas|resto|otros|otras
        falto|faltaron lo|los|las|el demas|resto|otros|otras
        los demas|resto no $
        el resto no
    """,
    "rest_done_not": """
        falto|faltaron|falta todo|todos lo|los demas|resto
    """,
    "rest_done": """
        lo|los|las|el demas|resto|otros|otras|otro ~ si|igual|completo|completos|bien|hechos|todo|tambien|como|hice|completas|listo|perfecto
        lo|los|las|el demas|resto|otros|otras|otro ~ hecho|hechas|listos|listas|lista|ya|enteros|enteras|cabal|cabales|ok|normal|salio|salieron|tal
        lo|los|las|el demas|resto|otros|otras|otro ~ al tiro
        hice ~ otros|otras #
        todo lo demas ~ bien|si|completo|hecho|hice|listo|$
        todo lo demas
        lo demas ~ completo|si|bien|todo|como
        los demas si
        lo otro tambien
    """,
    "others_not": """
        otros|otras # ~ no|ni|nada|tampoco|debiendo|hueva|flojera|manana|deje|dejamos|faltaron|debo|salte|brinque|pendientes|olvide|luego
        ni ~ otros|otras #
        no ~ otros|otras #
    """,
}
