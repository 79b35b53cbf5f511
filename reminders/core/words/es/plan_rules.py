"""Spanish rules for pauses and returns, other days or hours, and the list sent again.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

_BEHIND = """
        AGOMARK ya? #|unos|unas|varios|varias|muchos|muchas|un|una SPAN
        llevo|lleva|llevan|llevamos|llevas|tienen ya? #|unos|unas|varios|varias|muchos|muchas|un|una SPAN
        desde AGOMARK ~ SPAN
        a? cada #? SPAN|rato|dia|hora|momento|minuto
"""  # a stretch of time told of what was: it asks for no pause

RULES = {
    "pause": """
        vuelvo|regreso|volvere|regresare|retomo la otra|proxima|siguiente semana
        vuelvo|regreso|volvere|regresare|retomo la semana que|proxima|entrante
        aviso|avisamos|avisare|avisaremos|aviso|escribo|digo cuando|apenas salga|vuelva|regrese|regresemos|volvamos|mejore|salgamos
        la|lo internaron|hospitalizaron
        vacaciones|viaje ~~ del # al #
        aguanteme|aguantenme|aguanten ~ TEXT|recordatorios|dias
        semana ~ que|q viene
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
        luego|despues avisamos|avisaremos
        hasta entonces
        hasta que ~ vuelva|regrese|mejore|me
        hasta nuevo aviso
        no voy a estar
        voy a estar ~ fuera|hospital|viaje
        me ausento|ausentare
        descanso hasta
    """,
    "pause_not": _BEHIND
    + """
        regrese|volvi|llegue ~ de
        ya ~ regrese|volvi|llegue
        ya estoy de vuelta
    """,
    "pause_span": """
        suspender|suspendan|suspenda|suspendanme|pausar|detener|parar|paren ~ TEXT|TEXTNOUN|recordatorios por|x viaje|vacaciones|cirugia|operacion|enfermedad|salud|duelo|mudanza
        no|ni me|nos|le? TEXTVERB|SENDING nada|TEXT? manana|pasado !ni !mas !nunca
        no|ni me|nos|le? TEXTVERB|SENDING nada|TEXT? hoy|este|el|la WEEKDAY|semana|ni? ,|.|$|porque|que|estoy|es|tengo
        TEXT|TEXTNOUN mientras|durante !viva !exista !dure
        descansar esta|este|unos|unas semana|mes|dias|semanas|quincena
        esos|esas|estos|estas dias|fechas|semanas|meses
        semana santa|navidad|navidades
        por ahora|mientras
        por lo pronto
        por el momento
        lo que queda|resta ~ del|de
        un tiempo|tiempito
        suspendan|suspenda|paren|pare|pausen tantito
        en lo que ~ me ~ repongo|alivio|mejoro|recupero|curo|sano
        en lo que ~ vuelvo|regreso|salgo
        del # al #
        cuando ~ vuelva|regrese|salga|mejore
        mientras ~ viaje|vacaciones|estoy|ando|este
        por|hasta|unas|unos|un|una|dos|tres|# ~ SPAN
        hasta ~ #|MONTH|WEEKDAY|ano|proximo|que|nuevo|entonces
        regreso|vuelvo ~ #|MONTH|WEEKDAY|en|el
        toda la semana
    """,
    "pause_until": """
        retomo|reanudo|continuo|reinicio ~ el|en ~ #|MONTH|WEEKDAY
        regreso|vuelvo ~ el|en ~ #|MONTH|WEEKDAY
        hasta
    """,
    "pause_sure": """
        en|durante|por ese|este|dicho lapso|periodo|tiempo|intervalo
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
    "pause_plain": """
        ^ por? favor? PAUSEIT ,? por? # SPAN
        no|ni me|nos|le? TEXTVERB|SENDING nada|TEXT? manana|pasado !ni !mas !nunca
        ^ me|nos voy|vamos|iremos a|al|pa|para|de la|el? _ todo el? MONTH|mes|verano
        ^ me|nos voy|vamos|iremos de vacaciones|viaje todo el? MONTH|mes|verano
        PAUSEIT|STOPIT los|mis|las|estos|sus? TEXT|TEXTNOUN mientras|durante
        PAUSEIT|STOPIT los|mis|las|estos|sus? TEXT|TEXTNOUN hasta !nunca !siempre
        PAUSEIT|STOPIT los|mis|las|estos|sus? TEXT|TEXTNOUN por un|una|unos|unas|dos|tres|# SPAN
        PAUSEIT|STOPIT los|mis|las|estos|sus? TEXT|TEXTNOUN esta|este|estos|estas|unos|unas SPAN
        dejenme|dejeme descansar esta|este|unos|unas|# SPAN de los? TEXT|TEXTNOUN
        no voy a estar ~~ del # al # ~~ TEXT
        estare fuera ~~ del # al #
        ^ PAUSEIT los|las|mis|me|todo|esto? EXERNOUN|TEXTNOUN? por? favor? $
    """,
    "resume_plain": """
        ^ por? favor? reanudar|reanude|reanuden|reanudo|retomar|retomo|retomamos|continuar|reanudemos ~ EXERNOUN|TEXTNOUN|por|favor|porfa|ya|$
        ^ quite|quiten|quitele|quitenle|levanten|termine|terminen ~ pausa
        ^ ya estoy|ya? BACK a? casa|aqui? $
    """,
    "resume": """
        quitenme|quiten|quita|quiteme|quitar la pausa
        se acabo|termino el|mi|la reposo|descanso|pausa|receso ~ STARTIT|continuemos|seguimos|sigamos|retomemos|volvamos
        reanuden|reanude|retomen|reactiven|reactive|reinicien cuando|cuanto gusten|guste|quieran|quiera|puedan|pueda
        quite|quiten|quitele|quitenle|levanten|termine|terminen ~ pausa
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
        ya? retomare|reanudare|retomaremos en|el|cuando|hasta
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
        mandemelos|mandamelos|mandenmelos|enviemelos|enviamelos|envienmelos|pasemelos|pasamelos|mandemela|mandamela|mandemelas|reenviemelos ~ nuevo|vez|nuevamente
        volver|vuelve|vuelva|vuelvan a enviarme|mandarme|pasarme|enviar|mandar|pasar los|mis ejercicios
        mandelos|mandalos|mandenlos ~ de nuez
        de nuez
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
        no me? TEXTVERB|SENDING tan|muy temprano|tarde|noche|seguido
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
    "resend_plain": """
        volver|vuelve|vuelva|vuelvan a enviarme|mandarme|pasarme|enviar|mandar|pasar el|la|las|mi lista|listado|hoja|rutina|tabla
        ^ pasamelos|mandamelos|mandemelos|pasemelos|reenviemelos|mandenmelos ~ de nuevo|vez ~ $
        ^ que|q|cual|cuales|cuantos|cuantas me? tocaba|tocaban|tocara|eran ~ hoy? ? $
        ^ que|q tengo que|q hacer hoy ~ ? $
    """,
    "reschedule_plain": """
        ^ por? favor? no me? TEXTVERB|SENDING tan|muy temprano|tarde|noche ,|.|$
        no me? TEXTVERB nada|mensajes|mensaje|avisos|ejercicios|recordatorios? los WEEKDAY
        ^ se? puede|pueden|podria|podrian mover|cambiar|pasar pal|al|para|a ~ WEEKDAY ? $
        ^ me lo|los cambian|cambia|pasan|pasa|mueven|mueve pa|para|a las|el ~ $
        ^ pasalo|paselo|muevelo|muevalo|pasenlo|muevanlo|cambielo|cambienlo pal|para|al|a ~ $
        los WEEKDAY ~ no ~ TEXTVERB ~~ mejor ~ WEEKDAY|DAYTIME
        prefiero ~ dias y no #
    """,
    "pause_sure_not": _BEHIND,
    "pause_span_not": _BEHIND
    + """
        gracias|agradezco|agradecemos|atencion|agradecida|agradecido ~~ estos|estas|esos meses|semanas|dias
    """,
}
