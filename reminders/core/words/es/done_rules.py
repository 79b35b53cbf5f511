"""Spanish rules for sessions: done, in part, not done, later; and for pain told without a number."""

RULES = {
    "done": """
        DONE
        hice|hize|ise|ice|hise|realice|yse|hicimos
        hizo|izo|hicieron|realizo
        ya ~ hice|hize|ise|hizo
        ya ~ quedaron|quedo|estuvo|esta|estan|stuvo|estubo
        ya estuvo|stuvo|esta|estan|quedo|acabe|termine|los|las
        ya los|las $
        yastan|yasta|yestuvo|siya|yastuvo
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
        quede dormida|dormido
    """,
    "all": """
        ALL
        la totalidad
        al cien
        al 100
        como dice|indica ~ papel|hoja
        lo indicado
        ni uno falto
        de principio a fin
        los # $
    """,
    "all_not": """
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
        no ~ ALL
        ni ALL
        ALL sobre
    """,
    "part": """
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
        no ~ termine|acabe|complete|terminar|acabar|completar|completo
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
    "skip": """
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
    "later": """
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
        en cuanto ~ llegue|pueda|salga|termine
        luego ~ los|lo|le|hago
        estoy ~ empezando|por
        antes de dormir|acostarme
        hoy mismo
        mas al rato
        todavia no
    """,
    "later_not": """
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
    "tomorrow": """
        manana !en !por !y !me !a !temprano
        manana ~ los|hago|pongo|sin|si|le|mismo
        para|pa|hasta manana
    """,
    "tomorrow_not": """
        la|de|por|esta|en manana
        manana $
    """,
    "skip_sure": """
        no ~ hice|hize|ise|hise|hizo|pude|alcance|hicimos
        hoy no
        no ~ hoy
        ^ NO $
        ^ no ,|.
    """,
    "yes_report": """
        ^ YES $
        ^ YES YES* ,? # $
        ^ YES ,|.
        ^ YES ~ hice|termine|todo|todos|senora|senorita|senor|ya|los|las
        ^ s #
        ^ sip|simon|sii|siya|sisi|claro
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
        los demas|resto no $
        el resto no
    """,
    "others_not": """
        otros|otras # ~ no|ni|nada|tampoco|debiendo|hueva|flojera|manana
        ni ~ otros|otras #
        no ~ otros|otras #
    """,
    "others_done": """
        otros|otras # ~ si|completos|completas|bien|igual|tambien
        hice ~ otros|otras #
    """,
    "rest_done": """
        lo|los|las|el demas|resto|otros|otras|otro ~ si|igual|completo|completos|bien|hechos|todo|tambien|como|hice|completas|listo|perfecto
        todo lo demas ~ bien|si|completo|hecho|hice|listo|$
        todo lo demas
        lo demas ~ completo|si|bien|todo|como
        los demas si
        lo otro tambien
    """,
    "part_sure": """
        mitad|mita
        ALL menos|excepto|salvo
        ALL ~ menos|excepto|salvo
        no ~ todo|todos|todas
        solo|nomas|solamente ~ @
        menos @
        falto|faltaron
        a medias
        tuve que parar
        solo|nomas|solamente ~ # SET
        no pude|complete ~ 
    """,
    "done_plain": """
        DONE
        hice|hize|ise ~ los|las|EXER|ALL|todo
    """,
    "pain_none": """
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
        no siento nada
        no ~ siento|senti nada de PAINWORD
        no me duelen
    """,
    "pain_none_not": """
        sin dolor ~ ganancia
        no ~ apoyo|piso|camino|puedo|aguanto|muevo|levanto|duermo|deja ~~ del|de|el dolor
        no ~ duele|dolio ~ tanto|mucho|casi|tan|mas|como|cabeza|pecho|pero
        sin dolor de ~ pecho|cabeza
        sin ~ dolor ~ pecho
        ni siento ~ pierna|pie|mano
        no siento nada ~ pierna|pie|mano|abajo|ahi
        no siento ~ los|la|el
        no ~ duele ~ CHEST
        no ~ mucho PAINWORD
        nada de ~ dolor de pecho
    """,
    "pain_said": """
        PAIN
        SORE
        HURT
        BODY ~ duele|molesta|tieso|tiesa|mal|malo|inflamada|hinchada
        leve|leves|soportable|tolerable|aguantable|moderado|fuertecito|fuerte|poquito
        me arde|punza|jala|cala
        igual que|q siempre|ayer
    """,
    "pain_answer_none": """
        ^ no $
        ^ no ,|.
        ^ NO|nada|nadita|ninguno|ninguna|cero|nulo
        ^ no ~ duele|dolio|nada|tengo|siento|hay
        nada ~ gracias|nada
    """,
    "pain_answer_words": """
        no ~ mucho|tanto|tan|se|sabria|sabia|demasiado|muy|quita
        nada ~ grave|serio|mal|importante|del|que|grave
        casi nada
        no nada mas
        no ~ numero
        igual|mas o menos|leve|poco|poquito|poquitico|regular|tolerable|soportable
    """,
}
