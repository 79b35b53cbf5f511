"""Spanish rules for what a reply asks for: the carrier words and their plain wordings, pauses, changes, questions, chat."""

RULES = {
    "opt_out": """
        dame|deme|denme|dar|darme|quiero|ponme ~ de baja
        ^ desuscribir|desuscribirme|desuscribeme|desinscribir
        quitar|quite|quiten|saquen|saque|borren|borre|eliminen|elimine|sacar|borrar|eliminar ~~ de ~ TEXTNOUN|lista|servicio|sistema|programa
        detengan|detenganse|detener|paren|parenle|basta ~ con ~ TEXT
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        ^ STOPKEY ,|.
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
        no mas ~ $
        REMOVE ~ de ~ lista|sistema|ahi|aqui|esto|servicio|base|sus
        REMOVE ~ mi ~ numero|nombre|telefono
        REMOVE ~ numero
        REMOVE me
        quitenme|quiteme|borrenme|borreme|saquenme|saqueme|elimineme|eliminenme|desuscribanme|bajeme
        den|deme|denme|dar|darme|quiero|solicito|pido|dan|das|de ~ de baja
        darme|deme|denme|quiero|me baja
        baja ~ de ~ servicio|mensajes|lista|programa|esto
        STOPIT ~ de ~ TEXTVERB|mandar|mandarme|enviar|escribir|escribirme|molestar|TEXT
        STOPIT ~ con ~ TEXT
        STOPIT ~ TEXT
        STOPIT ~ TEXTNOUN|esto|suscripcion
        cancelen|cancele|cancelar|cancelenme|cancela ~ esto|mensajes|servicio|TEXT|todo|suscripcion
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
        si|debo|puedo|cuando ~ paro|parar|dejo|dejar
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
        baja ~ presion|azucar|por|la
        le pare
        por fin
        al fin
        fin de
        en fin
        para hacer|los|que|el|la|mi|manana|ver|las|mis|un
        para para
        parar ~ primera|de puntas
        hasta que ~ alto
        la lista ~ me|borro|perdi|otra
        borre ~ lista|mensaje|lo|que
        borre lo
        no me ~ molesta|molesto|moleste
    """,
    "opt_out_past": """
        habia ~ cancelado|quitado|borrado|parado
        por error|equivocacion
        sin querer
        habia cancelado|dado
        puse baja|stop|alto
    """,
    "opt_out_key": """
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        de baja
        unsubscribe
    """,
    "opt_in": """
        ^ inicio|iniciar|alta|comenzar|empezar|activar|start|reactivar|unstop $
        ^ alta ~ favor|vez|otra|nuevo
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
        no ~ WANT
        ya no ~ 
        no quiero
    """,
    "opt_in_key": """
        ^ inicio|iniciar|alta|comenzar|activar|start|reactivar|unstop|inicia $
        ^ alta ~ favor|vez|otra
    """,
    "help": """
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
    "pause": """
        PAUSEIT ~ TEXT
        PAUSEIT ~ TEXTNOUN|todo|semana|semanas|mes|dias|esto
        ^ pausa|pausar|pause
        ^ pausa ~ favor
        hasta ~ #|MONTH|proximo|WEEKDAY|ano|que ~ 
        regreso|vuelvo|regresa|vuelve|regresamos ~ el|en|hasta|la|dentro ~ #|MONTH|WEEKDAY|proxima|semana|mes
        me voy|salgo|viajo|salimos|vamos|voy|estare|estaremos ~ de|a|para|pa|en|fuera ~~ por|hasta|regreso|vuelvo|todo|del|desde|# 
        me voy|salgo|viajo ~ de vacaciones|viaje|crucero|fuera
        de vacaciones|viaje ~~ hasta|regreso|semana|semanas|#
        salgo|voy|vamos ~~ un|una|dos|tres|# ~ SPAN
        por ~ un|una|dos|tres|# ~ SPAN
        por ~ SPAN
        # ~ SPAN ~ sin|no|de|fuera|descanso
        me operan|operaron|opero|sacaron|van|internan
        operan|operaron|operacion|cirugia ~~ SPAN|#|MONTH|WEEKDAY
        doctor|doctora|medico dijo|dice|mando ~~ SPAN|#
        denme|deme|dame|den ~ # ~ SPAN
        no ~ TEXTVERB ~~ hasta
        no ~ TEXT ~~ hasta
        SPAN ~ no ~ voy|estar|puedo|voy|estare
        sin ejercicio ~~ SPAN
        nada de ejercicio ~~ SPAN
        toda la semana
        luego ~ aviso|digo|les
        hasta entonces
        hasta que ~ vuelva|regrese|mejore|me
        hasta nuevo aviso
        no voy a estar
        voy a estar ~ fuera|hospital|viaje
        me ausento|ausentare
        descanso hasta
    """,
    "pause_not": """
        regrese|volvi|llegue ~ de
        ya ~ regrese|volvi|llegue
        ya estoy de vuelta
    """,
    "pause_span": """
        por|hasta|unas|unos|un|una|dos|tres|# ~ SPAN
        hasta ~ #|MONTH|WEEKDAY|ano|proximo|que|nuevo|entonces
        regreso|vuelvo ~ #|MONTH|WEEKDAY|en|el
        toda la semana
    """,
    "pause_until": """
        regreso|vuelvo ~ el|en ~ #|MONTH|WEEKDAY
        hasta
    """,
    "pause_sure": """
        PAUSEIT ~ TEXT
        no ~ TEXTVERB ~~ hasta
        hasta ~ #|MONTH|WEEKDAY|ano|proximo|nuevo|que|el
        ^ pausa
        pausen|pausar|pause
        dijo|dice ~~ SPAN
        # SPAN
        por ~ SPAN
        me operan
    """,
    "resume": """
        ya ~ regrese|volvi|llegue|regresamos|volvimos|estoy|sali|alivie|ando|vine
        regrese|volvi|llegue|regresamos ~ de|del|ayer|hoy|ya
        de vuelta|regreso ~ ya|puedo|aqui|estoy|listo|lista|seguir|empezar
        estoy ~ de vuelta
        aqui estoy ~ vuelta|nuevo|otra
        lista|listo ~ para|pa ~ seguir|seguirle|empezar|continuar|volver|comenzar|retomar
        ya puedo ~ seguir|continuar|empezar|volver|hacer|retomar
        ya estoy ~ bien|mejor|lista|listo|de
        ya ~ paso ~ luto|gripa|gripe|covid
        volver a ~ mis|los|la|empezar
        quiero ~ volver|seguir|retomar|continuar|regresar ~ mis|con|los|ejercicios|a
        retomar|retomamos|retomo|reanudar|reanuden|reanudemos|sigamos|seguimos
        se acabaron ~ vacaciones
        vamos a empezar ~ vez
        otra vez ~ cuenten|aqui|lista|listo
        empezar otra vez
        activenme|reactivenme|activeme
        ya ~ sali ~ hospital
        me dieron ~ permiso
        seguir con lo mio
    """,
    "resume_not": """
        ya ~ llegue ~ trabajo|jale
        ya estoy ~ cansada|harta
        ya ando ~ mal
    """,
    "resume_sure": """
        ya ~ regrese|volvi
        lista|listo ~ para|pa ~ seguir|empezar|seguirle
        de vuelta
        STARTIT ~ TEXT
        activenme|reactivenme|sigamos|retomar|reanudar
        volver a mis
    """,
    "resend": """
        RESENDIT
        SENDIT ~ vez|nuevo|nuevamente ~ 
        SENDIT ~ lista|rutina|EXERNOUN|hoja ~ 
        SENDIT ~ otra
        LOST ~ lista|rutina|papel|mensaje|hoja|texto|todo|ejercicios|msj
        borro|borre|borraron|perdio ~ 
        no ~ llego|llegaron|llega|llegan|recibi|veo|abre|aparece|aparecen|encuentro|carga|guarde|abrio|llegado ~ EXERNOUN|mensaje|lista|rutina|nada|los|texto|hoy|$
        no ~ me|nos llego|llegaron
        cual|cuales|que ~ es|son|eran|era ~ EXERNOUN|de hoy|hoy
        cual|cuales ~ toca|tocan|tengo|hago|son|van|eran|me
        que ~ ejercicios|rutina|toca|tocan|hago|me ~ hoy|tocan|toca|son|tengo
        que ~ toca|tocan
        que ~ hay que hacer
        que hago hoy
        me ~ repite|repiten|manda|mandan|pasa|pasan|reenvia|vuelve|da|puede|pueden ~~ lista|rutina|EXERNOUN|mensaje|vez|nuevo|otra
        otra vez ~ porfis|porfa|lista|mensaje|favor|$
        la lista ~ favor|hoy|porfa
        la de hoy ~ porfa
        no me acuerdo|recuerdo ~ cuales|que|ejercicios|rutina
        olvide ~ cuales|que ~ ejercicios|eran
        mensaje de hoy
        y los de hoy
        donde ~ lista|ejercicios|rutina
    """,
    "resend_not": """
        se ~ fue
        borre lo que
        RESENDIT ~ todo|dos
        perdi ~ cuenta
        olvide ~ decir
    """,
    "reschedule": """
        SWITCH ~~ a las #
        SWITCH ~~ por|a|al|para|en|de ~ WEEKDAY|DAYTIME|mediodia|otro
        SWITCH ~ hora|horario|dia|dias|horarios
        cambio|cambiar|cambie ~ de ~ hora|horario|dia|dias
        mejor|prefiero|preferiria ~ WEEKDAY|DAYTIME|las #
        mejor|prefiero|preferiria ~~ WEEKDAY|DAYTIME
        prefiero ~ las #
        WEEKDAY ~ WEEKDAY ~~ mejor|prefiero|si
        WEEKDAY|DAYTIME ~ mejor|prefiero
        los WEEKDAY ~ no
        puede ser ~ a las|por|en|WEEKDAY|mas
        pueden|puede|podrian|podria|me ~ mandar|mandarlos|escribir|cambiar|mover|ser|enviar|mandarme ~~ a las|en la|por la|mas|WEEKDAY|mejor|temprano|tarde
        en lugar|vez de ~~ #|WEEKDAY|DAYTIME|las
        mandenlos|mandelos|mandenmelos|escribanme|escribame|mandenme|mandeme ~~ #|mediodia|DAYTIME|despues|WEEKDAY
        muy temprano|tarde ~ llegan|llega|me|mandan
        otro|otra|otros dia|hora|horario|dias
        mas temprano|tarde ~ porfa|favor|mensajes|mande|puede|recordatorios
        no ~ WEEKDAY ~ favor
        los WEEKDAY ~ tengo|trabajo|dialisis
        que sea ~ WEEKDAY|DAYTIME|a las
        me conviene|acomoda|queda ~ mejor
        reagendar|reprogramar|recorrer
        hora a las
    """,
    "reschedule_not": """
        otro dia ~ los|$
        mejor manana ~ los|$
        en vez de ~ ejercicios|los|eso
    """,
    "reschedule_sure": """
        SWITCH ~ hora|horario|dia|dias
        SWITCH ~~ WEEKDAY|las #
        prefiero
        los WEEKDAY ~ no
        mandenmelos|mandenlos|mandelos
        puede ser
    """,
    "question": """
        ?
        puedo|debo|tengo que|se puede|deberia|puede ~ hacer|hacerlos|usar|tomar|banar|banarme|ponerme|cargar|apoyarme|ir|comer|salir|nadar|manejar|caminar|poner|seguir|apoyar|descansar|parar|esperar|saltar
        es normal|malo|bueno|mejor|necesario|peligroso|verdad
        cuanto|cuantos|cuantas|cuanta|cuando|como|cual|donde|porque|por que ~
        que hago si|cuando
        que ~ significa|pasa|es|tan|tipo|tanto|hago
        una pregunta|duda|consulta
        pregunta|duda|preguntar
        quisiera ~ saber|preguntar
        queria ~ saber|preguntar
        ganas de saber
        me puede|pueden ~ decir|llamar|explicar|hablar
        si ~ debo|puedo|sigo|paro
        la uso o no
        con ~ o ~ sin
        llamenme|llameme|hablenme|hableme
    """,
    "question_not": """
        cuando ~ llueve|camino|subo|me|llegue|salga|termine
        como ~ #
        cuando se
        cual
        ya cuando
        tanto|dolor ?
        q tanto
    """,
    "chat": """
        ^ CHATWORD CHATWORD* $
        THANKS
        gracias
        dios ~ bendiga|cuide|pague|guarde
        bendiciones
        que ~ este|tenga|pase ~ bien|dia|noche|semana
        que dios
        feliz ~ _
        buenos|buenas|buen dias|dia|tardes|noches|provecho
        ta|esta|muy bien|bueno
        ok|okey|oki|vale|sale|orale|entendido|enterada|enterado|perfecto|excelente ~ $
        igualmente
        hasta luego|pronto
        nos vemos
        un abrazo
        saludos
        usted|ustedes ~ amor|amable|amables|angel|linda|lindas|buena
        me caen ~ bien
        jaja|jajaja|jajajaja|jeje|lol $
        arriba ~ _
        viva ~ _
        son ~ buena|un|muy|bien ~ amor|onda|amables
        como esta|estan
        cuidese|cuidense
        que bueno|padre|bonito
    """,
    "correction": """
        perdon|disculpe|disculpa|perdone ,? # 
        perdon|disculpe|disculpa|perdone ~ puse|era|fue|fueron|es|si|quise|no|dije|son|mis
        corrijo|correccion|corrigo|errata|retracto|rectifico|correcion
        me equivoque|confundi
        equivoque
        quise|queria decir|poner|escribir
        digo # ~ no
        digo ,? # $
        no # sino #
        no|digo # ~ no # $
        # no # 
        # ,? no #
        no ~ es|fue|era|fueron|son #? ,? ~ es|fue|era|sino|fueron #
        no fue|es|era # ,
        era # ~ no #
        fue|fueron|era # ~ no # 
        puse|dije|escribi|mande|conteste|le|ponerle # ~~ era|fue|es|eran|fueron|pero|y
        puse|dije|escribi ~ que ~ si|no|todo|todos|hice ~~ era|pero|fue
        dije|puse ~ todo|todos|si|no|done ~~ pero|era|y
        donde ~ dije|puse
        dije|puse|escribi ~ # ~~ es|era|fue|eran
        debe decir
        olvide|borre|ignore|olvidelo ~ lo ~ que ~ puse|dije|mande|anterior|le|no|de
        borre|ignore|olvide ~ lo|mensaje|anterior
        borre lo
        mensaje ~ anterior|rato|otro|pasado ~~ era|fue|no|olvide|decir|error|mal
        otro|anterior mensaje|correo
        hace rato ~~ era|no|fue|dije
        conte mal
        fallo la cuenta
        me fallo
        se me fue ~ dedo
        dedo gordo
        mis dedos
        por error|equivocacion ~ 
        sin querer
        espere|espera|aguanta ,? 
        ah no
        no espere|espera
        retiro lo dicho
        mejor dicho
        como le puse|dije
        no le dije ~ verdad
        autocorrector
        yo digo ~ #
        cambie mi|lo
        era que no|si
        le dije que no
        en realidad
        al final ~ no|si
        mal escrito|puesto
        fe de erratas
    """,
    "correction_not": """
        perdon ~ no pude|hice|tarde|avise|por
        perdone ~ avise|tarde|por|no
        disculpe ~ no|tarde|la|las|por|que
        por error ~ alta
        baja por error
        perdi|borre ~ lista|por error
        olvide ~ hacer|hacerlos
        espere|espera ~ turno
        digo pare
        arrete
        se me borro
    """,
    "num.past": """
        antes me|era|andaba|estaba|tenia|llegaba|traia ~ #
        # cuando empece|comence|llegue
    """,
    "self_fix": """
        digo #|dolor
        perdon #
        no espera|espere
        mejor dicho
        corrijo
    """,
    "helper": """
        soy ~ hija|hijo|esposo|esposa|nieta|nieto|cuidadora|nuera|sobrina|enfermera
        mi CLIENTLIKE ~ dice|dijo|hizo|termino|quiere|ya
        CLIENTLIKE ~ dice|dijo|hizo|ya|termino
        dice ~ mi ~ CLIENTLIKE
        dice mi|la|el
        don|dona _ ya|hizo|termino|dice
        abuela|abuelita|nana|mami dice|hizo
        sus ejercicios
    """,
    "ex.done": """
        hice|hize|termine|acabe|complete|listo|hecho|hechos|avente|hizo|pude|done|logre|ise|hicimos|realice|cumpli|hecha
    """,
    "ex.done_before": """
        solo|nomas|solamente|unicamente|namas
    """,
    "ex.done_after": """
        si|ya|completo|completos|completa|completas|bien|emojiyes|todo|todos|perfecto|facil|ok|toditos|tambien|enteros|sip
    """,
    "ex.part": """
        a medias
        mitad|medias
        solo|nomas ~ con ~ derecha|izquierda|un|una
        solo|nomas ~ lado|derecha|izquierda|derecho|izquierdo
        no ~ todo|completo|termine|complete
        solo # SECNUM
        solo SECNUM
    """,
    "ex.not": """
        no|ni|cero|nada|falto|faltaron|faltan|salte|brinque|emojino|tampoco|pendiente|omiti|nothing
        no ~ hice|pude|hago|hize|termine|anime|quise
        ni los|las|lo|el|la toque|hice
    """,
    "ex.but": """
        menos|excepto|sin|salvo|quitando|exepto
    """,
    "day.today": """
        hoy
        esta manana|tarde|noche
    """,
    "day.yesterday": """
        ayer|anoche
    """,
}
