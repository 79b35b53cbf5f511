"""Spanish rules for questions, chat, corrections, and who writes.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "correction_plain": """
        borra|borre|borren|tache|tachen|tacha|taches|quite|quiten lo de antes|anterior|hace
        tache|tachen|tacha|taches el|ese|la|mi #
        conteste|dije|puse|respondi|mande que? si ~~ la? verdad no
        conteste|dije|puse|respondi|mande que? si ~~ pero no los|las|lo hice|pude|ise
        olvide|olviden|olvida lo que dije|puse|mande|escribi|conteste|les|le
        fallo|error|culpa|equivocacion|metida mio|mia
        ignoren|ignore|ignora|ignorad mi|el|lo si|no|mensaje|anterior|respuesta|que|de
        disculpe|disculpen|perdon|perdone lo de hace|ahorita|antes|denantes|enantes
        fe de erratas
        ^ error ,|. fueron|eran|era|son|fue|es #
        ^ correccion|corrijo|correcion|fe de erratas|perdon era|uy
        me equivoque ,? ~ era|es|son|eran|hice|fue|puse|#
        me confundi ~~ era|es|fue|hice|#
        quise|queria decir|poner|escribir
        donde|cuando dije|dice|puse|decia ~ pon|ponga|es|va|era|lea
        no era|eran|es|fue|son ~ # ~ era|sino|es|fue|son|eran #
        no # sino|,|. ~ #
        le|les menti|mentimos
        puse|escribi|mande|teclee ~ mal|equivocado|error
        me comi un numero|cero|letra
        cambio|corrijo|cambie ~ mi|la respuesta|reporte|mensaje|numero
        borre|ignore|olvide|olviden|haga ~ lo|el ~ anterior|dije|puse|mande|primero
        se me fue ~ dedo|dedos
        antes dije|puse ~~ pero|era|es
    """,
    "question": """
        ^ cuando veo|voy|toca|tengo|nos|vemos|hay
        ^ por que|q me|le|nos|se|no|tengo|siento
        cuanto|cuantos|cuantas|cuanta rato|tiempo|minutos|segundos|dias|veces hay|tengo|debo|q|que|se|dejo|espero|descanso
        ^ de|a|en|con|por|para|hasta que|q _ ~ es|tiene|tienen|debe|va|son|hay
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
        perdone|perdonen|perdon|disculpe|disculpen|disculpa la|las molestia|molestias
        son|es|eres|sois lo maximo|mejor|mejores
        dios se lo|la|le|les? pague
        eskerrik|gracies|gracias|obrigada|obrigado|grazie|thanks|thank
        que dios|el senor|virgen|virgencita? ~ acompane|bendiga|cuide|guarde|pague
        senor|virgen|virgencita ~ acompane|bendiga|cuide|guarde
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
        borra|borre|borren|olvide|olviden|ignore|ignoren lo|el que dije|puse|escribi|mande|conteste
        ^ mentira ,
        ^ perdon|perdone|disculpe|disculpa|disculpen ,? el|mi? PAINWORD es|era|fue|de|en? #
        sorry|sori|sory ,? era|es|fue|eran|#|no
        ^ aclaro|aclaracion|rectificacion|enmiendo|rectificando|retifico
        le aclaro|rectifico|enmiendo
        anula|anule|anulen|tacha|tache|desestime|descarte|omita|cancele lo|mi|el anterior|dicho|mensaje|reporte
        error mio|mia
        error en|de mi|dedo|captura|dedazo
        fue error|errata
        me exprese|explique|lie|enrede|confundi|equivoque|revolvi ~ mal|,|:|y|de|al
        lei|marque|anote|apunte|escribi|capture|teclee mal|al
        le? dije|puse|mande|escribi|conteste mal
        le erre|regue|falle
        la regue|cague
        corrector|dictado|teclado puso|cambio|escribio|me
        me puso|cambio el? corrector|dictado
        no le? haga|hagan|haz caso
        ^ siempre si|no ,? los|la|lo|las|hice
        mi PERSON|CLIENTLIKE contesto|escribio|apreto|mando|puso
        ese|esa|esos # ~ no|era|fue|fueron
        ese|el listo|si|no|n|y|numero|mensaje que ~ mande|puse|envie ~ era|fue|es
        mande|puse|escribi un|una # ~ pero|y ~ es|era|fue
        antes dije|puse|mande|conteste|le|habia ~ #|que|dicho|puesto
        el|lo|la que puse|mande|dije ~ ayer|rato|antes|manana ~ era|no|esta
        menti|mentí
        ^ mentira
        el? mensaje ~ va|esta|salio mal
        me comi un|una palabra|letra|numero|cero
        puse listo|que|todo ~ antes de tiempo
        ^ uy|ay|ups no ,
        pon|ponga|pongale|ponle|cambie|cambiele|anote # ~ en? lugar|vez de|del FILL* #
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
        hace rato dije|puse|mande|escribi|conteste|respondi|avise ~~ era|no|fue|dije|eran
        de|lo|el hace rato ~~ era|no|fue|dije
        dije|puse|mande|escribi|conteste|respondi hace rato ~~ era|no|fue|dije|eran
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
    "self_fix": """
        digo ,? el|un? #|dolor
        perdon ,? #
        miento ,? #
        # ~~ exagere ,?
        # ,|. no ,? mejor|mas|mejor dicho? #
        no espera|espere
        mejor dicho
        corrijo
    """,
    "both_of_us": """
        ^ para|de? ambos|ambas|todos|todas $
        ^ para|de? los|las # de? nosotros|nosotras? $
    """,
    "helper": """
        habla|hablamos|contesta|responde|aqui el|la|su|un|una esposo|esposa|marido|mujer|hija|hijo|nieta|nieto|nuera|yerno|hermana|hermano|cuidadora|cuidador|vecina|vecino|sobrina|sobrino|enfermera de|del
        soy ~ marido|mujer|hermana|hermano|yerno|sobrino|vecina|vecino ,|.|de|del|y
        soy _ ,? el|la|su hija|hijo|esposo|esposa|marido|mujer|hermana|hermano|yerno|nuera|nieta|nieto|sobrina de
        ,|.|atte|att su hija|hijo|esposo|esposa|marido|mujer|nieta|nieto|nuera|yerno|hermana|hermano|sobrina ,|.|$
        le|les escribe|habla|saluda _
        le|les escribo yo por|de ella|el|mi
        soy ~ hija|hijo|esposo|esposa|nieta|nieto|cuidadora|nuera|sobrina|enfermera
        mi CLIENTLIKE ~ dice|dijo|hizo|termino|quiere|ya
        CLIENTLIKE ~ dice|dijo|hizo|ya|termino
        dice ~ mi ~ CLIENTLIKE
        dice mi|la|el
        don|dona _ ya|hizo|termino|dice
        abuela|abuelita|nana|mami dice|hizo
        sus ejercicios
    """,
    "wrong_number": """
        se ha|han confundido|equivocado usted? de persona|numero|telefono
    """,
}
