"""Spanish wishes to hear no more as frames: a denial or an ending, any form of sending, and who is sent to.

What stands close by and is none asks for adjacent words too: "la mitad no más" is "only half", "no me llamen hoy" a day.
"""

# Verbs of sending, calling and bothering by their forms, so that a frame takes them all.
CONCEPTS = {
    "TEXT": "notificacion notificaciones alertas comunicaciones comunicados avisitos emails mails msgs textitos",
    "SENDING": "manden mande mandes mandeis envien envie envies enveis envieis escriban escriba escribas escribais texteen textee textees textes llamen llame llames llameis atosiguen atosigue rayen rayes raye"
    " molesten moleste molestes molesteis contacten contacte contactes notifiquen notifique notifiques avisen avise avises avisenme"
    " recuerden recuerde recuerdes comuniquen comunique busquen busque busques fastidien fastidie fastidies hostiguen acosen"
    " spameen bombardeen bombardee saturen sature hablen hable hables marquen marque marques insistan insista lleguen"
    " timbren timbre mensajeen mensajee mensajees wasapeen wasapee wasapees whatsapeen whatsappeen guasapeen incluyan incluya incluyas textien perturben perturbe importunen importune incomoden incomode persigan",
    "TO_SEND": "mandar mandarme mandarnos mandarle mandarles mandarlos mandandome enviar enviarme enviarnos enviarle enviarles llenarme llenarnos inundarme inundarnos atiborrarme atosigarme"
    " enviandome escribir escribirme escribirnos escribirle escribiendome textear textearme textearnos textearle texteandome"
    " molestar molestarme molestarnos molestarla molestarlo notificar notificarme notificarnos avisarme avisarnos contactar"
    " contactarme contactarnos llamarme llamarnos llamarla fastidiar fastidiarme fastidiarnos spamear spamearme bombardear"
    " bombardearme saturar saturarme hablarme buscarme insistir insistirme hostigar hostigarme acosar acosarme importunar"
    " marcarme marcarnos mensajearme mensajearnos wasapearme timbrarme incluirme llegar llegarme llegando importunarme incomodar incomodarme perturbar perturbarme recordarme recordarnos",
    "KEEPS": "esten este estes anden ande andes sigan siga sigas sigais continuen continue continuen vengan",
    "BEING_SENT": "mandando enviando escribiendo texteando llamando molestando llegando notificando avisando contactando"
    " mensajeando wasapeando enviandonos mandandonos marcando marcandome incluyendo incluyendome fastidiando recordando insistiendo buscando hablando spameando mandandome enviandome escribiendome molestandome",
    "ENDS": "deje dejen deja dejes dejeis dejad dejame dejeme dejenme dejadme dejaran dejara dejaras pare paren para parad"
    " parale parele parenle parenla cesen cese eviten evite evita evitar abstenganse abstengase basta desistan desista"
    " dejense detenganse",
    "NO_WISH": "quiero queremos quiere quieren deseo deseamos desea kiero quisiera quisieramos gustaria interesa necesito ocupo pretendo",
    "NOT_ANY": "no ni nunca jamas tampoco",
    "TAKE_OFF": "borren borre borra borres borrad quiten quite quita quites quitad saquen saque saca saques sacad eliminen elimine elimina"
    " remuevan remueva retiren retire retira desactiven desactive desactiva deshabiliten inhabiliten inhabilite cancelen quitaran quitara borraran borrara sacaran sacara eliminaran eliminara retiraran"
    " tachen tache supriman suprima borrar quitar sacar eliminar desactivar retirar desvinculen desvincule",
    "TAKE_ME_OFF": "borrenme borreme borrame quitenme quiteme quitame saquenme saqueme sacame eliminenme elimineme eliminame"
    " anulenme anuleme cancelenme canceleme quitenos saquenos borrenos quitennos saquennos eliminenos retirenos retirenme retireme desvinculenme desafilienme desuscribanme desuscribeme desactivenme bajenme bajeme excluyanme excluyame",
    "TAKE_IT_OFF": "borrenlo borrelo borralo quitenlo quitelo quitalo saquenlo saquelo sacalo eliminenlo eliminelo eliminalo cancelelo cancelalo quitelos"
    " cancelenlo desactivenlo tachenlo borrenla quitenla saquenla eliminenla olvidenlo",
    "MYNUMBER": "numero numerito celular cel celu telefono tel fono movil linea whatsapp contacto nombre datos",
    "ROLL": "lista listado listas sistema base registro registros servicio programa grupo agenda contactos difusion envios computadora archivo plataforma bandeja",
    "ENOUGH_NOW": "paren parenle parele parad basta dejenme cesen",
}
RULES = {
    "opt_out": """
        borre|borren|quite|quiten|elimine|eliminen lo mio|nuestro ,|.|$|de|del
        ^ fin de la|mi suscripcion|inscripcion|afiliacion ,|.|$|por
        <fin dejan|paran|dejaran|dejen de TO_SEND
        que|digale|pido ~ le pare|paren ya? a|con los|las|sus|estos|tantos|esos TEXT
        ^ le pare|paren ya? a|con los|las|sus|estos|tantos|esos TEXT
        ^ ya? pare|paren porque|xq|pq me|nos llegan|mandan|molestan|escriben|llaman|despiertan
        no paran los|sus|estos|tantos|tanto TEXT
        no quiero|queremos|deseo|deseamos nada que venga|viene|llegue|sea de
        no quiero|queremos|deseo|deseamos nada que me|nos? manden|envien ustedes|,|.|$
        no quiero|queremos|deseo|deseamos nada de $
        no quiero|queremos|deseo|deseamos nada de ustedes
        ya no me|nos mandan|escriben|llaman|envian|molestan|textean ,? por $
        ya no me|nos mandan|escriben|llaman|envian|molestan|textean ,? por? favor|porfa|porfavor
        quiero|quisiera|deseo|voy a? desapuntarme|desapuntar|desanotar|desanotarme
        me|nos quiero|queremos|quisiera|gustaria desapuntar|desanotar|desuscribir|desafiliar|desinscribir
        no me|nos textien
        no doy|dimos|di|damos mi? permiso|autorizacion|consentimiento >,|.|$|para|de
        ya? no tengo|tenemos interes|intencion|deseo|deseos para|de|en seguir|continuar recibiendo
        quisiera|quiero|gustaria|prefiero|agradeceria|necesito que ya? suspendieran|pararan|dejaran|quitaran|cancelaran|suspendan|cancelen|detuvieran|detengan|terminaran los|sus|estos|las|esos? TEXT|TEXTNOUN|avisos
        suspendan|suspendieran|cancelen|quiten|paren ~ TEXT|TEXTNOUN|avisos para|por siempre
        renuncio a los|sus|estos|las? TEXT|TEXTNOUN|mensajitos
        ya no le|les? sigan|siga con los|sus|estos|tantos? TEXT|TEXTNOUN
        pedir|solicitar|pido|solicito|quiero la|mi baja de|,|.|$|por
        no volver|vuelvan|vuelva|vuelvas a escribirme|escribirnos|enviarme|mandarme|contactarme|llamarme|mandarnos|enviarnos|molestarme
        que no me|nos llegue|lleguen|manden|envien|escriban|mande|envie mas|ya|ningun|ninguno|nada
        ^ remove|remover $
        ^ por? favor parar|paren|pare $
        please|pls|plz remove|unsubscribe ,|.|$|me
        ^ ya? olvidenme|olvidame|olvideme|sueltenme|sueltame ,|.|$|por|ya
        mandenle|mandele|escribanle|escribale a otro|otra ,|.|$|persona
        dejense|dejese|dejate de TEXT
        TEXT|TEXTNOUN ,? ya? basta ,|.|$|ya
        se me excluya|excluyan|retire|elimine|borre|quite|saque|desvincule|remueva de
        ^ bloqueado|bloqueada|bloqueados|reportado|reportados $
        esto|eso ya? es acoso|hostigamiento|spam|abuso
        permiso|autorizacion|consentimiento de|para que me|nos SENDING ,|.|$|mas|TEXT
        cancelenlo|cancelelo|desactivenlo ya? ,? por? favor|porfa|porfavor ,|.|$
        ^ ya? para|pare|parale|parenle|paren ya $
        me|nos hartaron|cansaron|aburrieron|tienen ~ con|de tanto|tantos|sus|los|tus TEXT
        no pedi|solicite|pedimos|quiero esto|eso|nada ,|.|y ya? TAKE_IT_OFF|quitenme|borrenme|saquenme|cancelen
        no me|nos hagan|haga|hagas perder ~ tiempo ,|.|$|con
        ^ borrame|borrenme|borreme|quitenme|quiteme|quitame|saquenme|sacame|saqueme|eliminenme|eliminame ,|.|$|por|porfa|ya
        <, borrame|borrenme|borreme|quitenme|quiteme|quitame|saquenme|sacame|saqueme|eliminenme|eliminame $|por|porfa|ya
        no los|las leo|abro|miro|veo|uso ,|.|y ya? no los|las|me? SENDING
        ^ que ya? no me|nos llegue|lleguen nada|mas ,|.|$|de|mas
        <, cancelenlo|cancelelo|cancelalo|desactivenlo|desactivelo|suspendanlo|quitenmelo ,|.|$|por|porfa|ya
        ENDS ya? de llenar|llenarme|llenarnos|saturar|inundar|inundarme ~ celular|cel|telefono|bandeja|correo|whatsapp|buzon
        no me|nos rayen|rayes|raye ,|.|$|mas|con
        esto|eso|estos|lo de los|las? TEXT no es|son para|pa mi|nosotros|eso
        esto|eso|estos|lo de los|las? TEXT ~ ,|. TAKE_IT_OFF|parenlo|suspendanlo ,|.|$|por|porfa|ya
        decidido|decidi|decidimos|prefiero|preferimos|deseo|quisiera|opto|opte no|por|en no? seguir|continuar recibiendo|recibir|con
        larga|largue|larguen|corta|corten ya? con los|sus|tus|tantos TEXT
        dont|do text|message|bother|write|contact me|us
        yo no|ni lo|los|las quiero|pedi|ocupo|necesito ,|. ~~ TAKE_IT_OFF|quitarlo|cancelarlo|borrarlo|quitarlos|pararlo|quitarmelo
        haga|haganme|hagan|hagame el? favor de? quitarlo|cancelarlo|borrarlo|quitarmelo|pararlo|suspenderlo|quitarlos|suspenderlos
        ^ no me|nos? contesten|respondan|conteste|responda|contestes|respondas mas $
        no me|nos llegue|lleguen nada|ningun|ninguna|ni mas|TEXT mas|de
        sus|estos|los TEXT no me|nos sirve|sirven ,|.? no los|lo|las NO_WISH
        ^ ya? no me|nos mandn|mnden|mandem|manen mas $
        NOT_ANY quiero|queremos|quiere|deseo|deseamos|kiero|quisiera|gustaria que ya? me|nos SENDING|llegue|digan|llegen nada|mas|,|.|$|TEXT
        ^ deseo|quiero|prefiero|quisiera no recibir ,|.|$|mas|nada
        pide|piden|quiere|prefiere|dice|solicita|pidio|pedia que ya? no le|les|la|lo SENDING ,|.|$|mas|nada|TEXT
        no me|nos hace falta que me|nos SENDING
        ^ me|nos quita|borra|saca|elimina|quitan|borran|sacan|eliminan ,? por? favor|porfa|porfavor|$ ,|.|$
        TAKE_ME_OFF ya? de|del|, la|su|el|sus|esta|este|esa|ese|tu? ROLL|ahi|aqui|eso|esto
        no esten|este|estes|sigan dando ya? la? lata|guerra|murga
        dejen|deje|dejad ya? de dar|darme|darnos la? lata|guerra|murga
        no tengo|tenemos interes|deseo|deseos|intencion en|de|por recibir|sus|los|estos|seguir TEXT|recibiendo|mas|nada|,|.|$
        ya? no|ni me|nos hacen|hace falta ya? mas? sus|los|estos|tus|tantos|esos TEXT
        ya? no requiero|requerimos|ocupo|ocupamos|preciso|precisamos mas? sus|los|estos|mas|tus|esos|ningun TEXT
        apaguenle|apaguele|apagale|bajenle|cortenle|cortele|parenle|parele ya? a|con los|sus|tantos|estos|esos|las? TEXT
        ^ ya? cortenle|cortele|apaguenle|parenle|parele ya? ,|.|$
        ^ no TEXT mas? ya? $
        no doy|dimos|di|tienen|tiene|damos mi? permiso|autorizacion|consentimiento ,|.|$|para|de
        mi|este MYNUMBER . TAKE_IT_OFF
        seria|serian|fuera|fueran ~ amable|amables|gentil|bueno|buena de ya? no TO_SEND
        amable|amables|bondad|gentileza|gentil de ya? no TO_SEND
        no NO_WISH que usen|tengan|usen|guarden|ocupen ya? mi MYNUMBER
        ^ ya? no NO_WISH participar|formar ,|.|$|parte|mas|en ,|.|$|de|esto|eso|el|este|su
        ya no NO_WISH ya? el|este|su|mas|ese programa|servicio|suscripcion|plan
        ^ no hinchen|hinches|frieguen|friegues|fastidien|fastidies|chinguen|jodan ya? $
        olvidense|olvidate|olvidese|olviden ya? de mi|nosotros ,|.|$
        ya no deseo|deseamos|desea continuar ,|.|$|con
        no|ni KEEPS ya? BEING_SENT
        no|sin ~ necesidad|falta|motivo|razon ~ KEEPS BEING_SENT
        no me|nos gusta|agrada|conviene|parece que ya? me|nos KEEPS BEING_SENT
        no me|nos gusta|agrada|conviene|parece que ya? me|nos SENDING ,|.|$
        me|nos fastidia|molesta|enoja|harta|choca|cansa|irrita que ya? me|nos KEEPS BEING_SENT
        favor|porfa|porfavor ,? de? ya? no TO_SEND ,|.|$|mas|nada|gracias|a|por
        no se|te molesten|moleste|molestes mas? en TO_SEND
        no usen|use|uses|utilicen|ocupen mas? mi|este MYNUMBER
        mi|este MYNUMBER ,? ya? no lo usen|use|utilicen|uses
        no me|nos incluyan|incluya|incluyas mas? en sus|su|la|el|tu|los ROLL
        ya les|le|os dije|pedi|dijimos|avise|repeti que no ,|.|$|quiero|queremos ,|.|$|mas|recibir|nada|TEXT
        les|le|os dije|pedi|dijimos que me TAKE_OFF|borraran|quitaran|sacaran|eliminaran
        les|le|os dije|pedi|dijimos que ya? no me|nos mandaran|escribieran|enviaran|llamaran|molestaran|textearan
        ^ cancelo|renuncio ya? $
        ^ doy|damos de baja ,|.|$|todo
        ^ baja del|de el|la|los|mi|este|sus? ROLL|TEXT|TEXTNOUN
        NO_WISH|exijo|pido que ya? se? detengan|paren|callen|cesen ,|.|$|ya|por|porfa
        ^ TAKE_ME_OFF ya? ,|.|$|por|porfa|please
        ^ por? porfa|porfavor|favor ya no mas? $
        ^ ya no por? porfa|favor|porfavor $
        ,|. ya? dejenme|dejeme|dejame|dejadme|dejennos ya? $
        ^ no mande|manden|mandes|envie|envien|envies|escriba|escriban|escribas|moleste|molesten|molestes|llamen ya? $
        no NO_WISH k|ke|q ya? me|nos? SENDING|mandn|manden ,|.|$|mas|nada
        ya no|ni cuenten|cuente conmigo ,|.|$
        ENDS ya? de? estar? TO_SEND ,|.|$|mas|por|porfa|a|cosas|esto|eso|estas|esas|tanto|tantos|tantas|con|los|las|sus|estos|esos|TEXT|ya|please|pls|nada|nunca
        ENDS ya? de una? vez? estar? BEING_SENT
        dejar|dejara|dejaran|parar|pare|paren ya? de recibir|recibirlos|recibirlas|recibirlo
        NOT_ANY|ya NO_WISH ~ que ya? me|nos|le|les? KEEPS BEING_SENT
        NOT_ANY NO_WISH ~ que ya? me|nos KEEPS ,|.|$
        NOT_ANY me|nos KEEPS ya? BEING_SENT
        NOT_ANY NO_WISH ya? tener|recibir|ver|ni|mas|ningun|ninguna|otro|otra|tantos|tantas? comunicaciones|comunicacion|contacto|cosas|llamadas|spam|publicidad|propaganda|alertas|emails|TEXT de|suyos|suyas|por|,|.|$|ya
        ya? NOT_ANY NO_WISH na|nada de eso|esto|ustedes|ahi|sus|los TEXT|,|.|$
        NOT_ANY NO_WISH ser|que ~ contactado|contactada|molestado|molestada|notificado|notificada|contacten|notifiquen|molesten
        TEXT|TEXTNOUN ,? ya? no los|las|lo|la quiero|queremos|deseo|necesito|ocupo|pedi|aguanto|soporto|quiere ,|.|$|mas|ya|recibir|ver|gracias|por|porfa
        jamas|nunca mas? me|nos? vuelva|vuelvan|vuelvas a TO_SEND
        jamas|nunca mas? me|nos SENDING
        ^ ni|no me|nos SENDING ,|.|$|mas|nada|ya|por|porfa
        ^ de? ya? no TO_SEND ,|.|$|mas|nada|ya|por|porfa|a|gracias
        ya no|ni me|nos|le|les SENDING ,|.|$|mas|nada|por|porfa|gracias|a|ni|please
        que ya? no|ni me|nos SENDING ,|.|$|mas|nada|por|porfa|gracias|ni
        NO_WISH|favor|pido|ruego|suplico|agradeceria|prefiero|preferiria|preferimos|mejor de? que? ya? no me|nos SENDING ,|.|$|mas|nada|ni|por|porfa|gracias|TEXT|cosas
        NOT_ANY consiento|autorizo|permito|acepto|autorizamos|acepte|autorice que ya? me|nos? SENDING|KEEPS
        ENDS ya? de? estar? TO_SEND a? mi|este|esta|ese MYNUMBER
        no SENDING|vuelvan|vuelva a? TO_SEND? nada|mas? a|al mi|este|ese|esta MYNUMBER
        a este|mi|ese MYNUMBER ,? ya? no SENDING
        mi|este MYNUMBER ,? TAKE_IT_OFF
        TAKE_OFF ya? mi|este|el|mis|nuestro MYNUMBER ,|.|$|de|del|por|porfa|ya|please
        den|deme|dan|dar|de de baja ya? mi|este|el|mis|nuestro MYNUMBER
        TAKE_ME_OFF ya? de|del|, la|su|el|sus|esta|este|esa|ese|tu|todas|todos? sus|las? ROLL
        que me TAKE_OFF|saquen|borren de|del la|su|el|sus|esta|este? ROLL
        ^ que me borren|saquen|quiten|eliminen|retiren
        quiero|quisiera|pido|exijo|necesito|favor que|de me|nos borren|saquen|quiten|eliminen|retiren|desvinculen|desafilien de|del|,|.|$|ya|por
        me|nos mandan|manda|escriben|escribe|llaman|molestan|molesta|textean|envian mucho|demasiado|tanto|diario|diarios|mucha|muchos|muchas|demasiados ~~ ENOUGH_NOW
        me|nos escriben|mandan|molestan|textean mucho|demasiado|tanto ,? ya no
        ya|porfavor|favor|porfa|gracias ,? paren|parenle|parele|parad ya? ,|.|$
        TEXT|esto|eso ,? paren|parenle|parad ya? ,|.|$
        ^ ya? me|nos tienen|tiene|traen|tenes|tienes hasta el|la|las|los|aca gorro|madre|coronilla|narices|huevos|pelotas|cogote|copete|tope|chingada ya? ,|.|$|con|ustedes
        ^ ya? me|nos tienen|traen harta|harto|hartos|aburrida|aburrido|cansada|cansado|podrida|podrido ,|.|con ~~ TEXT|SENDING|TO_SEND|ENOUGH_NOW|TAKE_ME_OFF
        puede|pueden|podria|podrian|puedes|podes|podeis|podras|podran ya? parar|detener|cancelar|quitar|suspender|eliminar|frenar|cortar|desactivar|terminar ya? con? los|las|estos|estas|sus|esos|tantos TEXT
        puede|pueden|podria|podrian|puedes|podes|podeis|podran ya? dejar|parar ya? de TO_SEND
        puede|pueden|podria|podrian|puedes|podes|podeis ya? no TO_SEND ,|.|$|mas|nada
        ya estuvo|estubo|fue|basta|suficiente|bueno bueno|suave|suficiente|mucho? ,? ya? no|dejen|dejenme|paren SENDING|TO_SEND|me|de|mas
        no|ni insistan|insista|insistas mas? ,|.|$|por|porfa
        paso|declino|rechazo|rehuso de|recibir|los|sus|estos|seguir TEXT|recibiendo|recibir|mas
        salgo|borro|retiro|bajo|desvinculo|excluyo|salirme|borrarme|retirarme|bajarme|darme de|del la|su|el|este|esta|sus ROLL
        no soy|somos parte|miembro|usuario de|del ~~ TAKE_ME_OFF|SENDING
        sin|no necesidad|hace falta de? que? me? KEEPS BEING_SENT
    """,
    # "No más" after an amount, an exercise or a deed is "only"; a call for another hour or in writing; a part of a day.
    "opt_out_sure": """
        no me? SENDING|TEXTVERB ~~ ni cuando vuelva|regrese|este|vuelvo
    """,
    "opt_out_denied": """
        no quiero|queremos|quisiera|deseo que ya? dejen|deje|paren|pare|cancelen|suspendan|quiten de|los|las|mis|mandarme|escribirme
        ^ ya? sigan|siga|sigue|continuen|continue mandando|mandandome|enviando|enviandome|escribiendo|escribiendome
        ,|. sigan|siga|sigue|continuen|continue mandando|mandandome|enviando|enviandome|escribiendo|escribiendome
    """,
    "opt_out_not": """
        ya estuvo bueno? de vivir|sufrir|aguantar
        para|pa esto|eso ?
        para|pa atras|adelante|abajo|arriba
        quiten|borren|cambien|corrijan el|la|ese|esa # que
        me baja|bajan todo|la|el presion|azucar|!de
        ya no quiero que llegue|lleguen|manden|mande|vengan los|el|las WEEKDAY
        hice|hicimos|termine|acabe ~~ ya no avise
        hice|hicimos|termine|acabe ~~ y ya no mas
        no me escriban|manden|mande|escriba|envien|llamen|texteen antes|despues de|a|al|las? !me !ya # !ya !mas
        hago|hace|hacer|haria|hay|puedo para|pa TO_SEND
        de nuevo|vuelta|vuelvo|otra|regreso para|pa los|las|el|recibir|sus TEXTNOUN|TEXT
        no se? les|le|te|nos? olvide|olviden|olvides de? mandar|mandarme|enviar|enviarme|escribirme|escribir|recordarme
        no me? manden|mande|mandes|pongan|ponga mas series|repeticiones|vueltas|tarea|tareas|rondas|ejercicios|piolines|memes|fotos !por
        dice|dicen|pide|piden que ya? no les|le|la|lo mande|escriba|envie|moleste
        me baja|bajan al|a|hasta|por|para|la|el|hacia|desde|presion|azucar
        vez|anotenme|anoteme|apunteme|apuntenme|inscribame|inscribanme|regresenme|registro|lista para los|las|el TEXT
        # ,|y|. ya no mas $
        sirve|sirven|funciona|funcionan|ayuda|ayudan|alcanza|alcanzan|estorba|estorban|afecta|afectan|importa|influye|perjudica|molesta|dana para esto
        deje de escribir|escribirles|contestar|contestarles|responder porque|pues me|se? quede|dormi|fui|fue|llego|llamaron|olvide|olvido
        le|les|se|te paso los|sus|estos TEXT
        vendedor|vendedora|banco|encuesta|telefonia ~~ dije|dijo que ya? no me|le? SENDING
        no me borre|sali|quite|desuscribi de esto|la|el|aqui|este
        quitenme|quiten|quita|quiteme|quitar la pausa
        no me|nos? manden|mandeis|mande|envien|envieis|mandes caritas|carita|fotos|cadenas|stickers|emojis|videos|musica|memes|dibujitos|animo|animos|besos|bendiciones !ni
        no me|nos? manden|mandeis|mande|envien|envieis|mandes caritas|carita|fotos|cadenas|stickers|emojis|videos|musica|memes|dibujitos|animo|animos|besos|bendiciones ni caritas|carita|fotos|cadenas|stickers|emojis|videos|musica|memes|dibujitos
        no puedo|aguanto mas ,|.|$|con
        basta de frio|calor|lluvia|nieve|problemas|chisme|chismes|comer|trabajo|viento|polvo
        no quiero nada hoy|ahora|ahorita|por
        no quiero nada mas que
        no quiero nada que !venga !sea !me !manden !llegue
        nunca|jamas dejen|deje|paren|dejes|dejeis de
        no me|nos vayan|vaya? a? saquen|saque|quiten|borren|eliminen|quitar|sacar|dar ~ lista|baja|programa
        no me lo|los|las? mande|manden|envien|envie|escriban de|en|por|tan|a|muy la? noche|madrugada|temprano|tarde|#|mediodia !ni
        no me lo|los|las? mande|manden|envien|envie|escriban de|en|por|tan|a|muy la? noche|madrugada|temprano|tarde|#|mediodia ni en|de|por|tan|muy|a la? madrugada|tarde|manana|temprano|noche|mediodia
        pare por la|los|las|un|una|mi|mis|dolor|cansancio|que|culpa|miedo|mareo
        pare por el !amor
        no quiero mas|mas? dolor|dolores|pastillas|pastilla|sufrir|molestias|penas|pena|medicinas|operaciones|inyecciones
        ^ alto ,|. me? equivoque|corrijo|perdon|perdone|error|espera|espere|esperen
        silla|sillas|pared|talones|tandem|equilibrio|serie|series|rodilla|rodillas|vuelta|espalda ,? ya? no mas $
        ^ pare , me dio|dolio|duele|senti|maree|falto|tiro|ardio|tembla
        ^ pare , me canse|agote !de
        ^ pare , me canse|agote de hacer|estar|caminar|subir|pie|tanto !TEXT
        ^ pare , senti|sentia|dolor|tuve|hice|iba|estaba
        saquenme|saqueme|sacame de? una|la|esta|mi|unas? duda|dudas|cita|copia|foto
        cita|turno|visita|consulta|ejercicio|@ ~ , cancelenlo|cancelelo|cancelalo|suspendanlo|quitenmelo
        no ni? me|nos? TEXTVERB|SENDING tan? ~ a las _ !ni
        no ni? me|nos? TEXTVERB|SENDING tan? ~ a las _ ni a las|la
        dejen|deje|deja|dejar de mandarme|mandar|enviarme|poner|ponerme|mandarnos tanta|tantas|tanto|tantos|mas|el|la|los|las? sillas|silla|talones|pared|tandem|equilibrio|series|repeticiones|lagartijas|sentadillas
        dejen|deje|deja|dejar de mandarme|mandar|enviarme|poner|ponerme|mandarnos tanta|tantas|tanto|tantos|mas ejercicio|ejercicios
        no se moleste|molesten|preocupe ,|.|yo|usted|$
        quitenme|quiteme|quiten|quite|saquen|saquenme|bajenme|bajeme un|una|#|el|ese|este|algun|los|la|las ejercicio|ejercicios|serie|series|repeticion|repeticiones|vuelta|pared|silla|talones|tandem|peso|pesas|puntas
        ^ suficiente|basta ,? ya? hice|hoy|termine|acabe|pude
        hoy|ahorita|ahora ya no mas ,|.|$
        ya estuvo de|el|la|con|mucho|del|bueno? de? tanto|tanta|el|la? dolor|dolores|ejercicio|ejercicios|lluvia|calor
        no me|nos cansan|fastidian|hartan|aburren|estorban|molestan|molesta que|sus|los|el|los? TEXT|me|recibir
        no|ni|nunca quiero|queremos|deseo|quisiera|queria que ya? ENDS de
        ^ manana|hoy|WEEKDAY ya? no me SENDING !mas !nunca !nada !ni
        ,|.|y|pero|gracias manana|hoy|WEEKDAY ya? no me SENDING !mas !nunca !nada !ni
        saquenme|saqueme|denme|deme|sacame una|otra|la|mi|# cita|foto|hora|consulta|radiografia
        PART|mitad|medias|poco|poquito|pokito|poquitito|tantito|rato|ratito|primero|primera|segundo|segunda|tercero|ultimo|ultima|uno|una|dos|tres|cuatro|hoy|ayer|eso|ese|esos|asi|casi|aqui|ahi|ahorita|ahora|tandem|pared|silla|talones|puntas|equilibrio|sentadillas|lagartijas|flexiones|ejercicio|ejercicios|ronda|vuelta|series|serie|minutos|minuto|lado|lados|pierna|brazo|rodilla|dolor|duele|molestia no mas !TEXT
        hice|hise|alcance|pude|logre|llegue|complete|termine|acabe|cumpli|toco|dio|dieron|avance|trabaje|quede ~ no mas !TEXT !mensajes !por !porfa
        no mas hice|pude|alcance|logre|me|falta|falto|tengo|quiero|una|un|dos|la|el|los|las|lo|que|fue|es|queda
        no mas ,? hice|pude|alcance|logre|falto|queda
        no me? llamen|llame|llames|hablen|hable|marquen|marque hoy|ahorita|manana|ahora|antes|despues|cuando|entre|durante|tan !ni
        no me? llamen|llame|llames|hablen|hable|marquen|marque en !ningun !ninguna
        no me? llamen|llame|llames|hablen|hable|marquen|marque ,|.|y|pero|mejor|solo ,? mejor|solo? mandenme|mandeme|mandame|escribanme|escribame|escribeme|texteenme|manden|mande|escriban|escriba|prefiero|por|un
        no me SENDING el|la|los|las|otro|otra|ese|esa|esos|esas video|videos|foto|fotos|dibujo|dibujos|imagen|audio|audios|hoja|papel|factura|cuenta|mismo|misma|mismos !ni
        no me SENDING el|la|los|las|otro|otra|ese|esa|esos|esas video|videos|foto|fotos|dibujo|dibujos|imagen|audio|audios|hoja|papel|factura|cuenta|mismo|misma|mismos ni el|la|los|las? video|videos|foto|fotos|dibujo|dibujos|imagen|audio|audios|hoja|papel|factura|cuenta
        no me SENDING ya? mas? el|la|los|las|lo|ese|esa de? la|el|los|las|un|una? pared|silla|talones|talon|puntas|equilibrio|tandem|sentadillas|sentadilla|flexion|flexiones|lagartijas
        no me molesten|moleste|molestes ya? los|las|el|la|mis|mi vecinos|vecina|vecino|ninos|nietos|perros|rodilla|rodillas|espalda|cadera|dolores|dolor|hijos
        basta de|con el|los|tanto|tantos|tanta|la|las? dolor|dolores|sufrir|pena|penas|llorar|quejas|excusas|flojera
        me|nos lo|la|los|las pueden|puede|podrian|podria|puedes|podes volver a
        no me|nos SENDING tan temprano|tarde|noche|seguido|rapido !ni
        no me|nos SENDING tan temprano|tarde|noche|seguido|rapido ni tan|muy|a|de|en
        no dejen|deje|dejes|paren de
        ya no me|nos mandan|llegan|escriben|llaman|avisan|recuerdan !por !porfa !porfavor !,
        ya no me|nos mandan|llegan|escriben|llaman|avisan|recuerdan por !favor !$
        ya no me|nos mandan|llegan|escriben|llaman|avisan|recuerdan , !por !porfa
    """,
    "opt_in_not": """
        me|nos lo|la|los|las pueden|puede|podrian|podria|puedes|podes volver a
        jamas|nunca mas? me|nos? vuelva|vuelvan|vuelvas a
    """,
    "pause_span": """
        entre el # y el? #
        todo|durante|en|por el? mes? de? MONTH
        toda|todo|todas|todos|esta|este|la|una|unas|unos|proxima|estas|estos la|el|las|los? semana|semanas|quincena|mes|vacaciones|verano|dias|feriado|puente ,? ~~ no me? SENDING|TO_SEND
        vacaciones|viaje|viajando ~~ semana|semanas|quincena|mes|dias|# ,? ~~ no me? SENDING|TO_SEND
    """,
    "pause_span_not": """
        todos los dias|lunes|martes|viernes
        todas las semanas|mananas|tardes|noches
    """,
}
