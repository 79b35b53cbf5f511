"""Spanish rules for the wish to hear no more or again, for help with the service, and for the wrong number.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "opt_out": """
        .|, la? baja por $
        ^ ya? no mas por $
        ^ ya? baja por $
        ^ solicito|pido|tramito|gestiono la|mi baja
        ya? no los|las quiero mas|ya ,|.|$
        como|donde hago|hacer|le ~ para que ya? no me lleguen|llegen|manden|escriban
        que ya no me lleguen|llegen mas|,|.|porfa|TEXT|$
        ^ STOPKEY a|con|de? ya? los|las|el|la|mis|estos|esos|sus|tantos|tanto? TEXT
        ^ STOPKEY todo|todos|everything|all|texting|sending|messaging|text|texts porfa|please|ya|,|.|$
        ^ ya? para|parale|parele|parenle|parad ya? a|con|de? los|las|esos|estos|sus|tantos|tanto|tu|tus? TEXT
        ^|.|,|favor|porfa|please|ya stop|estop los|the? TEXT
        pon|ponle|ponga|pongale|dale|denle|hagan|haz|da ~ stop|estop ~ a? ~ TEXT|eso|esto|esos|estos|mi|,|.|$
        dejen|deje|deja|dejad ya? de estar? fregar|fregando|joder|jodiendo|chingar|chingando|fastidiar|fastidiando|molestando|jorobar|hinchar|mamar|mamando|hostigar|acosar
        dejen|deje|dejad ya? de dar|darme la|lata|guerra
        dejadme|dejenme|dejeme|dejame ya? en paz
        dejadme|dejenme|dejeme|dejame ya? tranquila|tranquilo|quieta|quieto|sola|solo ya? ,|.|con|porfa|por|$
        que|ya me? ~ dejeis|dejes|dejen|deje|dejan en paz
        ya vale de|con ~ TEXT
        ya esta|estuvo bien|bueno|suave de|con ~ TEXT
        WANT me? que? desuscribir|desuscribirme|desinscribir|desinscribirme|desapuntarme|desafiliarme
        me WANT desuscribir|desinscribir|desapuntar|desafiliar|salir|retirar|dar de|del ~ baja|programa|servicio|lista|TEXT
        no|ni|tampoco ~ WANT seguir|continuar|participar|estar ~ recibiendo|participando|inscrito|inscrita|suscrito|suscrita|programa|servicio|plan
        no|ni|tampoco WANT seguir|continuar|participar ~ con|en el|la|este|su ~ programa|servicio|plan
        quitame|quitenme|quiteme|sacame|saqueme|saquenme|borrame|borreme|borrenme|eliminame|retireme|retirenme de|del ~ eso|esa|esto|ahi|aqui|todo|programa|servicio|sistema|grupo|lista|listado|registro !el !los !las
        me retiro|salgo|borro|desapunto|desuscribo|desinscribo|doy|damos de|del|, ~ baja|programa|servicio|lista|esto|aqui|TEXT
        como|donde me|hago|le ~ doy|darme|dar|borro|borrarme|salgo|salirme|desuscribo|desuscribirme|quito|cancelo|cancelar ~ baja|lista|TEXT|servicio|suscripcion|esto|programa|,|.|?|$
        cancelame|canceleme|cancelenme|anulame|anuleme|anulenme|suspendeme|suspendame|apagame|apaga|apague|apaguen|desactiven|desactive|desactiva|desactivame|corta|corten|corte|frena|frenen|frene|cesa|cese|elimina|elimine|eliminen|finalicen|finalice|terminen ~ TEXT|TEXTNOUN|suscripcion|servicio
        cancelame|canceleme|cancelenme|desactivame|desactiveme|desactivenme|desuscribeme|desuscribanme|desinscribanme $|,|.|porfa|por|favor
        ^ quitar|eliminar|quitarme|borrarme|eliminarme|desactivar|desactiveme|desactivenme|anular|retirarme|sacarme|darse $
        ^ N0|ningun TEXT por|porfa|porfavor|ya|mas
        ni un|una? solo|sola? TEXT mas
        los|las|te|lo voy|vamos|tendre a|que? ~ bloquear|reportar|denunciar
        voy a|tendre que bloquearlos|bloquearlas|bloquearte|bloquearlo|reportarlos|denunciarlos|bloquear|reportar este|el|su ~ numero|,|.|si|$
        quiero|kiero|necesito|pido|exijo que ya? paren|parenle|pares|cesen|dejen ya? ,|.|porfa|por|esto|eso|con|de|$
        puede|pueden|podria|podrian|puedes|podrias|podeis|podriais ~ dejar|parar de|con ~ TEXTVERB|mandar|mandarme|enviar|enviarme|escribir|escribirme|TEXT
        elimina|eliminame|borra|quita|saca mi|este ~ numero|nombre|telefono|celular
        ^ desinscribir|desinscribirme|desinscribanme|desinscribame|desapuntarme|desapunteme|desapuntenme|desuscribame|desuscribirme|darme ~ favor|porfa|de|$
        ya no ~ participo|participare|participaremos
        hasta aqui|aca|ahi ~ con ~ TEXT|mensajes|programa|servicio|esto
        hasta aqui|aca|ahi ~ llegue|llegamos|llego ~~ no ~ TEXTVERB|moleste|molesten
        no ~ moleste|molesten|molestes|fastidien|fastidie|insistan|insista|jodan mas|,|.|$|porfa|por
        no ~ vuelvan|vuelva|vuelvas ~ a contactar|contactarme|escribir|escribirme|mandar|mandarme|enviar|enviarme|buscar|buscarme|llamar|llamarme|molestar|molestarme|textear|textearme
        no ~ contacten|contacte|contactes|contactarme
        no ~ WANT|prefiero ~ que ~ sigan|siga|sigas|vuelvan|vuelva ~ mandando|enviando|escribiendo|texteando|molestando|llegando|llamando
        solicito|pido|quiero|deseo|favor|gestionar|tramitar ~ cancelacion|anulacion|baja|suspension ~~ TEXT|TEXTNOUN|suscripcion|numero
        no hace falta|necesario ~ que ~ sigan|siga|manden|mande|escriban|escriba
        me borras|borra|borran|quitas|quitan|sacas|sacan ~ porfa|porfis|favor|lista|de|$
        que ya no ~ lleguen|manden|escriban
        ya no ~ lleguen
        anulen|anula|anular|cortala|corten|cortenla ~ servicio|suscripcion|mensajes|con
        dame|deme|denme|dar|darme|quiero|ponme ~ de baja
        ^ desuscribir|desuscribirme|desuscribeme|desinscribir
        quitar|quite|quiten|saquen|saque|borren|borre|eliminen|elimine|sacar|borrar|eliminar ~~ de ~ TEXTNOUN|lista|servicio|sistema|programa
        detengan|detenganse|detener|paren|parenle|basta ~ con ~ TEXT
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        ^ STOPKEY ,|.
        ^ stop|alto|pare|paren me|yo|ya|mi
        ^ stop|alto|baja|cancelar|cancele|pare|paren TEXTNOUN|mensajes|porfa|por|ya|esto|a
        ^ baja ~ favor|porfa
        ^ STOPKEY por favor
        ya ~ no ~ TEXTVERB
        no ~ TEXTVERB ~ mas|nada|TEXT|esto|estos
        no me ~ TEXTVERB
        ya no ~ TEXT
        no ~ WANT ~ TEXT
        no ~ WANT ~ recibir|servicio|reciba|seguir ~
        ya no ~ WANT ~ TEXT|recibir|servicio|esto|estos|nada|los|mas|que
        ya no los|las quiero
        no ~ quiero|deseo|desea|quiere ~ mas ~ TEXT|mensajes|esto
        no mas ~ TEXT
        ^ no mas $
        no mas por? favor|porfa|gracias|porfavor $
        no mas please|pls|thanks|ok|texts|messages $
        please|pls|enough|thanks ,? no mas $
        no mas , !PAINISH ~ $
        ya|favor|porfa|porfavor|gracias|stop|basta no mas $
        REMOVE ~ de ~ lista|sistema|ahi|aqui|esto|servicio|base|sus
        REMOVE ~ mi ~ numero|nombre|telefono
        REMOVE ~ numero
        REMOVE me
        quitadme|borradme|sacadme|eliminadme|dadme de la|baja
        quitenme|quiteme|borrenme|borreme|saquenme|saqueme|elimineme|eliminenme|desuscribanme|bajeme
        den|deme|denme|dar|darme|quiero|solicito|pido|dan|das|de ~ de baja
        darme|deme|denme|quiero baja
        me baja|bajan de|del la|los|las|esto|lista|programa|servicio|TEXT
        baja ~ de ~ servicio|mensajes|lista|programa|esto
        STOPIT ~ de ~ TEXTVERB|mandar|mandarme|enviar|escribir|escribirme|molestar|TEXT
        STOPIT ~ con ~ TEXT
        STOPIT ~ TEXT
        STOPIT ~ TEXTNOUN|esto|suscripcion
        cancelen|cancele|cancelar|cancelenme|cancela ~ esto|mensajes|servicio|TEXT|todo|suscripcion
        STOPIT ~ todo ,|y|. los|las? correos|mensajes|emails tambien?
        dejen|deje|dejenme|dejeme|dejame ~ en paz
        dejen|deje|dejar ~ de ~ mandar|enviar|escribir|molestar|textear|mandarme|escribirme
        paren|pare|parenle|parele ~ con|de ~ TEXT|mensajes|mandar
        ya estuvo ~ bueno|TEXT
        ya basta
        basta de|con ~ TEXT|mensajes|esto
        me salgo
        quiero salir|salirme|retirarme
        salirme ~ de
        no me interesa|interesan
        no ~ interesa ~ servicio|TEXT|mensajes|seguir
        ya no necesito ~ TEXT|mensajes|servicio|esto|recordatorios
        no necesito ~ TEXT|mensajes|recordatorios
        no autorizo
        unsubscribe|stop $
        unsubscribe
        bloqueo|bloquear ~ numero
        ya no ~ participar|servicio
        no ~ manden ~ nada|mas
        ya no ~ manden|mande|mandes|escriban|escriba
        no quiero ~ saber
        no escriban|escriba|manden|mande|llamen|texteen ~ mas|por|$
        hasta aqui ~ mensajes
        ya no ~ mensajes|textos
        fuera de ~ lista
    """,
    "opt_out_not": """
        arrepenti|arrepiento de darme|dar|pedir de|la? baja
        arrepenti|arrepiento de haberme|haber dado|pedido de|la? baja
        di|dimos de baja sin querer
        ^ ya no quiero $
        no me? TEXTVERB los|el|esos|tantos? TEXT? tan|muy temprano|tarde|noche !ni
        no me? TEXTVERB los|el|esos|tantos? TEXT? tan|muy temprano|tarde|noche ni tan|muy|a|de|en
        de TEXTVERB los|el|esos? TEXT? los|el WEEKDAY !ni !y
        de TEXTVERB los|el|esos? TEXT? los|el WEEKDAY y !todos !nunca !ya
        de TEXTVERB los|el|esos? TEXT? los|el WEEKDAY ni los|el? WEEKDAY|feriados|festivos
        TEXT tan|muy temprano|tarde|noche|seguido !ni
        TEXT tan|muy temprano|tarde|noche|seguido ni tan|muy|a|de|en
        TEXT los|el WEEKDAY !ni !y
        TEXT los|el WEEKDAY y !todos !nunca !ya
        TEXT los|el WEEKDAY ni los|el? WEEKDAY|feriados|festivos
        fue|fueron|llego|llegaron|llega|cayo|entro a|al|en spam
        carpeta de? spam
        no me? TEXTVERB nada|mensajes|mensaje|avisos|ejercicios|recordatorios? los WEEKDAY !ni !y
        no me? TEXTVERB nada|mensajes|mensaje|avisos|ejercicios|recordatorios? los WEEKDAY y !todos !nunca !ya
        no me? TEXTVERB nada|mensajes|mensaje|avisos|ejercicios|recordatorios? los WEEKDAY ni los|el? WEEKDAY|feriados|festivos
        para recibir|volver|retomar|empezar|contestar|responder|leer|entender|usar|mandar|ver
        para seguir|continuar !recibiendo
        ^ para seguir|continuar recibiendo
        <hago|hacer|numero|telefono|celular|ayuda|aqui|quiero|puse|paso|todo|bien|necesito|debo|gracias|listo|lista|, para seguir|continuar recibiendo
        SET|REP|@|#|vez|veces|todo no mas
        ^ volver|vuelve|vuelva|vuelvan a enviarme|mandarme|pasarme el|la|los|las lista|listado|hoja|rutina|ejercicios|tabla
        <puede|pueden|podria|podrian|puedes|podrias|podes|favor|de|porfa|,|.|y|que|si|pido|necesito|quiero volver|vuelve|vuelva|vuelvan a enviarme|mandarme|pasarme el|la|los|las lista|listado|hoja|rutina|ejercicios|tabla
        ^ pare|paro|parar a|en|al|cuando|despues|tras|antes ~~ mitad|media|medias|rutina|ejercicio|ejercicios|serie|ronda|vuelta|@|#|me|sono|llego|llegaron|senti|dolia|duele
        ^ pare|paro|parar porque|xq|pq !me ~~ mitad|media|medias|rutina|ejercicio|ejercicios|serie|ronda|vuelta|@|#|me|sono|llego|llegaron|senti|dolia|duele
        ^ pare|paro porque|xq|pq me !llegan !mandan !molestan !escriben !llaman !despiertan
        ^ pare porque|xq|pq !me
        ^ pare cuando
        ^ pare !los !las !esos !sus !estos _ ~ porque|xq|pq|cuando
        ^ pare los|las !TEXT !TEXTNOUN _ ~ porque|xq|pq|cuando
        no ~ den|demos|dar ~ de baja
        quite|quiten|quitele|quitenle|saquen|levanten|termine|terminen ~ pausa
        los WEEKDAY ~ no ~ TEXTVERB
        basta de excusas|flojera|tonterias|pretextos
        quiten|quitenme|quite|saquen|dejen ~~ el|los|la|las de ~ pared|silla|equilibrio|talones|tandem
        dejen de ~ mandarme ~ el|la|los|las de
        repeticiones|veces|series y no mas
        no ~ tan temprano|tarde|noche !ni
        no ~ tan temprano|tarde|noche ni tan|muy|a|de|en
        si|debo|puedo|cuando ~ paro|parar|dejo|dejar !de !esto !con !los !estos !sus
        tuve|tuvimos|tengo que ~ parar|dejar|detener|suspender|cancelar
        debo|deberia parar
        dijo|dice|grito ~ alto
        muy|mas|tan|bien alto
        alto ~ dolor|el
        presion|azucar|colesterol alta|alto|baja
        dieron|dio|dar|me de alta
        de alta
        cancele mi|la ~ cita
        cancelar ~ cita
        baja ~ presion|azucar|la
        baja por enfermedad|maternidad|incapacidad|accidente|trabajo|lesion|depresion|estres|ansiedad|covid|riesgo
        baja por la|el|un|una|mi|los|las escalera|escaleras|calle|cuesta|pierna|brazo|espalda|pecho|enfermedad|trabajo|lesion|cirugia|operacion|rodilla|cadera|noche|noches|tarde|tardes|dia|dias|manana|mananas|seguro
        le pare !a !ya !con
        le pare a la|el|las|los|mi|media|medio !TEXT !TEXTNOUN
        le pare con la|el|los|las !TEXT !TEXTNOUN
        por fin
        al fin
        fin de !los !estos !esos !sus !mensajes !la !mi
        fin de la|mi semana|rutina|serie|sesion|clase|terapia|vida
        en fin
        para hacer|manana|ver
        para el|la|mi|las|mis|un !TEXT !TEXTNOUN
        para que !me
        para que me !borren|quiten|saquen|eliminen|retiren
        para los !TEXT
        telefono|numero|celular|hora|gracias|es|sirve|listo|lista para ~ TEXT
        para para
        parar ~ primera|de puntas
        hasta que ~ alto
        la lista se? me !borran !borren !quitan !quiten !sacan !saquen !eliminan !eliminen
        la lista ~ borro|perdi|otra
        borre el|la|su|ese|un|mi? lista|mensaje
        borre el|la|los? que
        borre lo !mio !mis !nuestro
        no me ~ molesta|molesto
    """,
    "opt_out_past": """
        habia ~ cancelado|quitado|borrado|parado
        por error|equivocacion
        sin querer
        habia cancelado|dado
        puse baja|stop|alto
    """,
    "opt_out_key_not": """
        arrepenti|arrepiento de darme|dar|pedir de|la? baja
        arrepenti|arrepiento de haberme|haber dado|pedido de|la? baja
        sin querer me? di de baja
        baja sin querer
    """,
    "opt_out_key": """
        hasta aqui|aca|ahi ~ llegue|llegamos|llego ~~ no ~ TEXTVERB
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        de baja
        unsubscribe
    """,
    "opt_in": """
        WANT ~ que me|nos lleguen|llegue|llegaran ~ TEXT !tan !a !mas !menos !solo
        quiero|deseo volver a recibir|recibirlos|tener|tenerlos
        anotenme|apuntenme|inscribanme|anoteme|apunteme|inscribame otra|de vez|nuevo
        ^ no quiero|queremos|deseo cancelar $
        ^ no quiero|queremos|deseo dejar de recibir|recibirlos
        ^ inicio|iniciar|alta|comenzar|empezar|activar|start|reactivar|unstop $
        ^ alta ~ favor|vez|otra|nuevo
        ^ inicio|iniciar|alta|activar|start|reactivar por $
        de alta ~ mensajes|servicio|otra|recordatorios
        STARTIT ~ TEXT
        STARTIT|activenme|reactivenme ~ TEXT|servicio|nuevo
        SIGN
        WANT ~ recibir ~ TEXT
        WANT ~ TEXT ~ otra|nuevo|vez|nuevamente
        WANT ~ que me ~ manden|mande|vuelvan|sigan|envien ~~ TEXT
        WANT ~ TEXT !ya
        vuelvan|vuelva|vuelve ~ a ~ mandar|mandarme|enviar|enviarme|poner|activar|inscribir
        manden|mandenme|mandeme|envienme ~ otra vez|nuevo ~ TEXT
        si|me interesa ~ recibir|TEXT
        interesa ~ recibir
        extrano ~ TEXT|mensajes
        otra vez ~ en la lista
        ponganme|pongame ~ lista|nuevo|otra
        activen ~ numero|mensajes
    """,
    "opt_in_not": """
        volver|vuelve|vuelva|vuelvan a enviarme|mandarme|pasarme|enviar|mandar|pasar el|la|los|las|mis lista|listado|hoja|rutina|tabla
        no ~ WANT
        ya no ~
        no quiero
    """,
    "opt_in_key": """
        ^ inicio|iniciar|alta|comenzar|activar|start|reactivar|unstop|inicia $
        ^ alta ~ favor|vez|otra
        ^ inicio|iniciar|alta|activar|start|reactivar por $
        ^ quiero|quisiera|deseo|queremos mas mensajes|mensajitos|recordatorios|avisos|textos $
    """,
    "help": """
        hablar con una|un|algun? persona|alguien|humano|encargado|encargada de? verdad|real?
        no me? entiendo|entero|comprendo ~ va|funciona|sirve esto|este|lo|los|sus
        no c|se|sé|entiendo como contestar|responder|contesto|respondo|mandar|usar|poner
        no c|se|sé q|que|ke pongo|poner|contesto|contestar|respondo|responder|mando
        que|q hay|debo|toca que? contestar|responder|poner|escribir
        ^ HELPKEY $
        ^ HELPKEY ~ favor|porfa|TEXT
        ^ ayuda con|por
        me|nos ayudan|ayuda|explican|explica|ayude ~ TEXT|contesto|sistema|esto|usar|contestar|mensajes|$
        quien|quienes es|son|eres|habla|manda|escribe|me|esta
        quien ~ escribe|manda|habla|es
        de donde ~ hablan|escriben|son|es|mandan|llaman
        que es esto|este|estos|eso
        de que ~ se trata
        que numero es
        como ~ funciona|uso|usa|contesto|respondo|contestar|sirve
        no ~ entiendo|se|entendi ~ a? esto|como|sistema|funciona|contestar|usar
        que ~ tengo que contestar|poner|responder|escribir|mandar
        que contesto|respondo|pongo|escribo
        que ~ debo ~ contestar|poner|responder|escribir
        maquina|robot|computadora|persona ~ o|real
        es ~ maquina|robot|computadora|persona|gratis
        cuesta|cobran|pagar|costo ~ TEXT|mensajes|contestar|servicio|algo
        contesto con
        con quien hablo
        quien me ~ escribe|manda|habla|textea
        no se ~ si|como ~ contesto|contestar|responder
        que significa|quiere decir ~ Y|esto|mensaje|numero
    """,
    "help_key": """
        ^ HELPKEY $
        ^ ayuda ~ TEXT
        ^ ayuda por favor
    """,
    "wrong_number": """
        WRONG ~ NUMBERWORD
        numero|telefono|persona WRONG
        se ~ equivocaron|equivoco|equivocaste|equivoca ~ !de ~
        equivocaron|equivocaste
        esta|estan equivocado|equivocada|equivocados
        no conozco
        no soy|es ~ _ _? $
        yo no soy
        aqui|aca|alla no ~ vive|es|hay|esta|conocemos|trabaja
        no vive ~ aqui
        este ~ no es ~ numero|telefono|celular|cel
        este ~ numero|telefono|celular|cel ~ es de|era|no
        este ~ es de ~ un|una
        ya no es ~ numero|celular|telefono|cel
        ya no es el ~ numero|celular|telefono
        nuevo dueno
        quien es _ $
        quien es _ ,|.|?
        yo no ~ voy ~ terapia|clinica
        tienen|tiene|anotaron|apuntaron mal el|mi? numero|telefono
        no|ni se de que|q me? hablan|habla
        no hago ninguna? terapia ni
        no ~ voy|tengo ~ terapia|terapias
        no ~ paciente
        nadie ~ se llama|con ese
        no es ~ numero|telefono ~ de
        yo no ~ registre|inscribi|pedi
        numero ~ cambio ~ dueno
        no se de ~ hablan|habla
        no ~ ninguna|ningun _ $
    """,
    "wrong_number_not": """
        me equivoque
        no soy ~ capaz|de|buena|bueno|tan
        mensaje|dedo|tecla equivocado|equivocada
        no es ~ nada|mucho|dolor|tanto|mi|que|normal|facil|2|#|la|el
    """,
}
