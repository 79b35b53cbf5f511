"""Spanish turns of phrase that wish to hear no more, by how people put it, and near neighbours that wish it not.

Every line asks for words that stand side by side, so that none takes in what is said of an exercise or of a pain.
"""

# Begged, asked or demanded: to be taken off a list, to be written to no more, to leave.
_ASKED = """
    puede|pueden|podria|podrian|podes|puedes|podeis|podrias|quisiera|necesito|quiero usted|ud? darme|dar|darnos de|d baja
    me|nos puede|pueden|podria|podrian|puedes|podes|podrias|podeis dar|quitar|borrar|sacar|eliminar|retirar de|del|d baja|lista|servicio|sistema|su|esta|ahi|esto|aqui|aca
    puede|pueden|podria|podrian|puedes|podes|podrias|podeis usted? quitarme|borrarme|sacarme|eliminarme|retirarme ,|.|$|ya|por|porfa|porfavor|porfis
    puede|pueden|podria|podrian|puedes|podes|podrias|podeis usted? quitarme|borrarme|sacarme|eliminarme|retirarme de|del la|su|sus|esta|este|el? lista|listado|base|sistema|servicio|contactos|agenda|programa|grupo|ahi|aqui|esto
    seria|es posible darme|que me den|quitarme|borrarme|sacarme de|del la|su? baja|lista|servicio|sistema
    me dieran|dieras|dierais|diera|diesen de|d baja
    me quitaran|quitara|sacaran|sacara|borraran|borrara|eliminaran|eliminara|retiraran|retirara de|del la|su|sus|esta|este|el|ese? lista|listado|base|sistema|servicio|contactos|programa|grupo|ahi|aqui|esto|eso
    me quitaran|quitara|sacaran|borraran|borrara|eliminaran|eliminara ,|.|$|ya|por|porfa
    dejaran|dejara|dejaras|dejarais|pararan ya? de TEXTVERB|mandarme|mandar|enviar|enviarme|escribir|escribirme|molestar|molestarme|textear|textearme|llamarme
    agradeceria|preferiria|preferimos|prefiero|quisiera|gustaria|gustaria|queria|quiero|quisieramos|pido|ruego|rogaria|pediria que|q|k ya? no me|nos? enviaran|enviara|mandaran|mandara|escribieran|escribiera|llegaran|llamaran|contactaran|textearan|manden|mande|escriban|escriba|envien|envie|lleguen|contacten
    agradeceria|agradezco|ruego|suplico|rogaria|solicito|pido|exijo|pediria|bondad|amabilidad|gentileza|prefiero|preferiria|preferimos de? no recibir ya? mas|los|sus|estos|mensajitos|nada|TEXT
    agradeceria|agradezco|ruego|suplico|rogaria|solicito|pido|exijo|pediria|bondad|amabilidad|gentileza|favor de? no me? TEXTVERB|contactarme|contactar|mandar|enviar|escribir|textear
    ruego|suplico|pido|exijo|solicito|quiero|necesito|agradeceria que? me de|den|des|deis de|d baja
    si es|fuera|sea|sean tan amable|amables|gentil de|, deme|denme|darme|quitarme|quiteme|borrarme|borreme|sacarme|saqueme|quitenme
    amable|amables|gentil|bondad|amabilidad|favor de|d quitarme|borrarme|sacarme|eliminarme|retirarme|darme de|del|, la|su|esta|este|el? lista|baja|servicio|sistema|grupo|aqui|ahi|contactos|listado
    que me borren|quiten|saquen|eliminen|retiren|desuscriban|desafilien|borreis|quiteis ,|.|$|ya|por|porfa|porfavor
    hablo|llamo|escribo|hago para que me borren|quiten|saquen|eliminen|retiren|desuscriban|den de|del|,|.|?|$ la? baja|lista|sistema|$
    les|le|os|te suplico|pido|ruego|imploro|exijo que? paren|pare|cesen|pareis ,|.|$|ya|por|porfa|con
    ^ les|le? suplico|pido|ruego|imploro|exijo que? paren|pare|cesen ,|.|$|ya|por|porfa|con
    dar|darme|darnos|den|deme|denme|dame|dadme|doy d baja
    nos? damos de|d baja
    me|nos voy|vamos a? dar|darme de baja
    ^ me|nos borro|salgo|retiro|borramos|salimos ,|.|$|ya|gracias
    ^ me|nos borro|bajo|salgo|retiro|borramos|salimos de esto|aqui|ahi|eso
    tachenme|tacheme|tachame|tachadme
    tachen|tache|tacha|quiten|borra mi nombre|numero|telefono|celular
    elimine|eliminen|elimina|eliminar|borren|borra|borrar|quiten|quita|saquen|saca|saque|tachen|remuevan|remueva|remover|suprima|suprimir|suprimid|borrad|quitad|eliminad|supriman mi|mis|este|nuestro numero|nombre|telefono|celular|cel|movil|contacto|datos|cuenta|registro|informacion
    eliminarme|borrarme|quitarme|sacarme|borrenme|borreme|borrame|quitenme|quiteme|quitame|saquenme|saqueme|sacame|eliminenme|elimineme|eliminame|borradme|quitadme de|del su|sus|tu|tus|los|la|el|vuestra|vuestros|esta|este? contactos|agenda|base|telefono|celular|sistema|registros|archivo|difusion|contacto
    olvidense|olvidate|olvidese|olviden|pierdan|pierda|pierdanse|boten|bota|pierde de? mi|este|nuestro numero|telefono|contacto|celular
    cierran|cierra|cerrar|cancelen|cancelar|eliminar|borrar|borren mi|la|esta|nuestra cuenta ,|.|$|por|porfa|ya|con|de
    ^ ya? no deseo|deseamos continuar ,|.|$|gracias|por|con esto|eso|$
    gracias|, pero|y? no deseo|deseamos continuar ,|.|$
    quiero|deseo|quisiera|voy|vamos|decidi|prefiero a? renunciar|renuncio al|a este|esto|programa|servicio|los|TEXT
    renuncio|renunciamos|abandono|dejamos|abandonamos el|al|a|este|su este|esto|el? programa|servicio
    ya? no voy|vamos a seguir|continuar|participar mas? en|con el|este|su programa|servicio|plan
    ya? no voy|vamos a seguir|continuar|participar mas? ,? y? quitenme|quiteme|borrenme|borreme|saquenme|saqueme|denme|deme|cancelen
    retiro|retiramos|revoco|revocamos|anulo|cancelo|quito mi|el|nuestro consentimiento|autorizacion|permiso|suscripcion|inscripcion|registro|participacion
    no les|le|te|os? doy|di|damos|dimos|he|hemos|tienen|tiene|tengo dado? mi|el|ningun? permiso|autorizacion|consentimiento|derecho ,|.|$|de|para|a TEXTVERB|escribirme|mandarme|enviarme|que|$
"""
# Had enough of being written to, in the plain and the coarse words of several countries.
_FED_UP = """
    harta|harto|hartos|hartas|hartita|cansada|cansado|cansados|aburrida|aburrido|podrida|podrido|fastidiada|fastidiado|estresada|mamado|mamada|mamao|jarta|jarto|chato|chata|obstinada|obstinado de|con tanto|tantos|tus|sus|los|las|estos|esos|vuestros|el|que? TEXT
    harta|harto|hartos|hartas|cansada|cansado|cansados|aburrida|podrida|podrido|fastidiada|fastidiado de|con que me|nos TEXTVERB
    hasta el|la|las|los|aca|aqui madre|gorro|narices|coronilla|huevos|cojones|pelotas|mono|mono|copete|tope|chingada|verga|cogote|tronco|queso de|con tanto|tantos|tus|sus|los|las|estos|esos|vuestros|el? TEXT
    me|nos canse|cansamos|aburri|harte|hartamos de|con tanto|tantos|tus|sus|los|las|estos|esos|vuestros|que|el? TEXT
    me|nos canse|cansamos|aburri|harte|hartamos de que me|nos TEXTVERB
    me|nos hartaron|cansaron|aburrieron|fastidian|molestan|hartan|cansan|estresan|abruman|joden|fastidiaron|estorban ya? sus|tus|los|las|estos|esos|vuestros|con? TEXT
    me molesta|fastidia|harta|choca que me|nos TEXTVERB
    no me? ~ deis|des|den|de|dad mas? la|el mas? lata|brasa|tabarra|vara|murga ,|.|$|con|por|porfa|mas|ya
    no me|nos? rompan|rompas|rompais|rompa las|los bolas|pelotas|huevos|cojones|guindas ,|.|$|mas
    no me|nos? rompan|rompas|rompais|rompa las|los bolas|pelotas|huevos|cojones|guindas con eso|esto|tanto|tantos|sus|tus|los|estos? TEXT|eso|esto
    no me|nos? rompan|rompas|rompais|rompa mas las|los|mas? bolas|pelotas|huevos|cojones|guindas
    no|ya me|nos? no? me? esten|este|estes|anden|ande|andes fregando|jodiendo|chingando|fastidiando|molestando|jorobando|hostigando|acosando|insistiendo|mandando|enviando|escribiendo|texteando|llamando|spameando
    ya no me|nos? frieguen|friegue|friegues|chinguen|chingue|jodan|joda|fastidien|fastidie|jorobe|jorobeis|hinchen|hostiguen|acosen|insistan|insista ,|.|$|mas|con|por|porfa
    no me|nos? frieguen|friegue|friegues|chinguen|chingue|chingues|jodan|joda|jodas|jodais|fastidien|fastidie|jorobe|jorobeis|hinchen|hinches|hostiguen|acosen|insistan|insistais mas
    no me|nos? frieguen|friegue|chinguen|chingue|chingues|jodan|jodas|fastidien|hinchen|hinches|mamen|mames|manchen|abusen con|de tanto|tantos|tanta|sus|tus|los|estos|esos? TEXT
    no me|nos? sigan|siga|sigas|sigais ya? mandando|enviando|escribiendo|texteando|llamando|molestando|insistiendo|fastidiando|buscando|fregando
    ya? bajenle|bajale|bajele|bajadle a|con los|sus|tantos|tanto|tus|esos|estos? TEXT
    ^ ya? paren|parenle|parele|parale|pareis|parad ya? por|porfa|porfavor|, favor|ya? ,|.|$|con
    ^ ya? parenle|parele|parale ya? ,|.|$
    ya paren|parenle|parele|parale|bajenle con|de|a eso|esto|tanto|todo
    ^ ya? deja|dejame|dejate|dejalo|dejenlo ya? de mandar|mandarme|enviar|enviarme|escribir|escribirme|textear|textearme|joder|jorobar|chingar|fregar|hinchar|fastidiar|spamear
    deja|dejame|dejate ya? de mandarme|enviarme|escribirme|textearme
    deja|dejate ya? de mandar|enviar|escribir|textear|joder|jorobar|chingar|fregar|hinchar|fastidiar|molestar ,|.|$|con|mas|tantos|tanto|los|esos|estos|a TEXT|eso|esto|este|tantos|tanto|$
    ^ ya? cortala|cortenla|terminala|terminenla ya? ,|.|$|con ,|.|$|los|sus|tus|tantos|tanto|eso|esto TEXT|,|.|$
    a la mierda|chingada|verga|porra con? los|sus|tus|estos|esos TEXT
"""
# What is to end: named with English words, as a service, as a reminder.
_ENDING = """
    stop|estop|stopp|quit|para|pare|paren|parar|basta ya? de? ya? mandando|mandar|mandarme|mandandome|enviando|enviar|enviarme|enviandome|textearme|textear|texteando|texteandome|escribiendo|escribirme|escribiendome|sending|texting|messaging ,|.|$|me|mas|esto|estos|eso|esos|los|las|texts|TEXT|por|porfa|please|pls|ya|a
    stop|estop|stopp|quit sending|texting|messaging|emailing|bothering me|us
    ^ fin de|a|con los|sus|estos|esos|tus? TEXT
    ^ ya? no me textees|textes mas|,|.|$|please|pls|plis|porfa|por
    no me|nos? textees|textes|tires|tiren|tire|echen|echeis mas TEXT|na|,|.|$
    no me|nos? tires|tiren|tire mas? TEXT
    ^ no|nada|cero|ningun|basta mas? de? mas? TEXT mas? ,? por|porfa|porfavor|please|pls|plis|ya|gracias|mas
    no more|mas TEXT|texts
    noo|nooo ya? no? quiero|kiero mas? TEXT
    que ya? no me|nos lleguen|llegen mas? TEXT|estos|esos|sus|nada
    hasta aqui|aca con los|sus|estos|esos TEXT
    tienen|tiene|traen hasta el|la|las|los|aca madre|gorro|narices|coronilla|huevos|cojones|pelotas|mono|copete|tope|chingada|verga|cogote con|de los|sus|tus|estos|esos|tantos|tanto? TEXT
    que ya? se? acaben|terminen|paren|cesen|detengan|suspendan|acabe|pare|cese ya? los|estos|sus|esos|tus|tantos|todos|este|el|esto TEXT
    quiero|quisiera|necesito|deseo|pido|exijo que se? pare|acabe|termine|cese esto|eso ,|.|$|ya|por|porfa
    que no me|nos vuelva|vuelvan a llegar mas? los|estos|esos|sus|esto|mas? TEXT|nada|,|.|$
    ^ ya? no me|nos? vuelva|vuelvan a llegar|mandar|escribir|enviar mas|nada|TEXT|,|.|$|estos|esos|esto
    que|q ya? no me|nos? vuelva|vuelvan a llegar|mandar|escribir|enviar mas|nada|TEXT|,|.|$|estos|esos|esto
    ^ no me|nos? recuerden|recuerde|recuerdes|avisen|avise|avises|hablen|hable|hables|busquen|busque|marquen|marque|marques mas|nada ,|.|$|por|porfa|de|gracias
    ,|.|favor|porfa|y|que|q|gracias|pero|mejor|ya no me|nos? recuerden|recuerde|recuerdes|avisen|avise|avises|hablen|hable|hables|busquen|busque|marquen|marque|marques mas|nada ,|.|$|por|porfa|de|gracias
    ^ ya no me|nos? recuerden|recuerde|recuerdes|avisen|avise|avises|hablen|hable|hables|marquen|marques|contacten|contacte ,|.|$|por|porfa|gracias|mas|nada
    ,|.|favor|porfa|gracias|pero|y|mejor ya no me|nos? recuerden|recuerde|recuerdes|avisen|avise|avises|hablen|hable|hables|marquen|marques|contacten|contacte ,|.|$|por|porfa|gracias|mas|nada
    ^ no enviar|mandar|escribir|contactar|enviarme|mandarme|escribirme|contactarme|molestar|textear|enviarnos mas|nada ,|.|$|mas|por|porfa|TEXT|gracias
    ,|.|favor|porfa|porfavor no enviar|mandar|escribir|contactar|enviarme|mandarme|escribirme|contactarme|molestar|textear|enviarnos mas|nada ,|.|$|mas|por|porfa|TEXT|gracias
    favor|porfa|porfavor|gracias no enviar|mandar|escribir|contactar|enviarme|mandarme|escribirme|contactarme|molestar|textear TEXT|a|,|.|$ este|ese|$
    no necesito|necesitamos|ocupo|ocupamos|preciso|requiero que me|nos recuerden|recuerde|recuerdes|escriban|escriba|textees|texteen|avisen|molesten|esten
    ya no ocupo|preciso|requiero|ocupamos los|estos|sus|mas|esos? TEXT|servicio
    no es|sera|seria|hace|era necesario|preciso|falta que me|nos? ya? sigan|siga|manden|mande|escriban|escriba|envien|envie|recuerden|recuerde|texteen mas|nada|TEXT|,|.|$|todos|tantos|cada|porque|ya|esto|eso|los|mandando|escribiendo|enviando
    no estoy|estamos|sigo|me encuentro? interesada|interesado|interesados en recibir|sus|los|seguir|continuar|el|este|estos|mas|su|participar|esto|nada ~ TEXT|recibiendo|programa|servicio|,|.|$
    no estoy|estamos interesada|interesado|interesados ,|.|$|gracias|por|ya
    ya no me interesa|interesan ,|.|$|gracias|esto|su|sus|el|los|nada|seguir|recibir
    no me recuerden|recuerde|recuerdes|avisen|avise mas|nada mas
    prefiero|preferiria|preferimos ya? no TEXTVERB|recibir|seguir mas|nada|TEXT|recibiendo|estos|sus|los
    desactivar|cancelar|quitar|eliminar|parar|detener|suspender|bloquear|anular|bloqueo|desactiven|desactive|apaguen los|las|estos|estas|sus|mis|esos|el|tus|todos TEXT|suscripcion|recordatorio|servicio
    quiero|quisiera|deseo|favor|necesito|solicito|pido|quiera|queria cancelar|anular|darme|suspender ,|.|$|ya|gracias|esto|todo|mi|la|el|de suscripcion|inscripcion|registro|membresia|participacion|enrolamiento|servicio|afiliacion|,|.|$
    ^ favor|porfa|porfavor|por favor? de? cancelar|cancelen|cancele|suspender ,|.|$|gracias
    ^ terminar|cancelar|anular|finalizar|eliminar mi|la? suscripcion|inscripcion|registro|servicio|afiliacion|participacion
    como ~ paro|quito|cancelo|detengo|elimino|apago|desactivo|bloqueo|termino|anulo ya? con? los|estos|sus|esos|el|este|la|tantos|esta TEXT|servicio|suscripcion
    como ~ paro|quito|cancelo|detengo|elimino|apago|desactivo|anulo esto|eso ,|.|$|de|por|ya|please
    ^ y? como se cancela|quita|apaga|desactiva|para|detiene|anula esto|eso|este|el|los|la|estos? TEXT|servicio|suscripcion|,|.|$
    como hago|hacemos|le hago|hacemos|hacer? para dejar de recibir|recibirlos
    ^ unsubscribanme|unsubscribame|unsuscribanme|unsuscribeme|desuscribame|desinscribame
"""
# Verbs that end something, with what is to be ended beside them.
_BRIEF = """
    ENDVERB ya? con? de? los|las|el|mis|sus|tus|tantos|esos|estos|estas|todos|vuestros|tanto TEXT|envio|envios|spam
    ENDVERB TEXT ,|.|$|por|porfa|porfavor|ya|please|pls|gracias
    ^ ya? terminen|paren|pare|pares|parad|corten|dejen|dejad|basta|suspendan|suspenda|cancelen|cancela|detengan|acaben con? esto|eso ,|.|$|por|porfa|ya|de
    pare|paren|parenle|parele|parad|dejen|cancelen|cancele|basta|terminen|borrenme|quitenme ya? con? esto|eso? de # buena? vez
    ^ ya? parale|parele|parenle|bajale|bajenle|bajele ya? we|wey|guey|pues|no|hombre|tio|che|mijo|porfa|por|,|.|$
    noo|nooo ya? me|nos TEXTVERB
    ^ basta|bastaya|suficiente ya? ,|.|$|porfa|please
    ^ basta|suficiente ya? por favor
    se puede|podria cancelar|anular|parar|desactivar|quitar|detener esto|eso|este|el|los|la|estos|sus|mi TEXT|servicio|suscripcion
    ^ se puede|podria cancelar|anular esto|eso? ,|.|$|por
    como|donde|que ~ puedo|podria|hago|hacer|debo para? cancelar|anular|parar|detener|quitar|desactivar|bloquear|eliminar|dejar ya? los|estos|sus|esos|el|este|la TEXT|servicio|suscripcion
    como|donde|que ~ puedo|podria|hago|hacer|debo para? cancelar|anular|parar|detener|desactivar esto|eso ,|.|$|por|ya
    como|donde|que ~ puedo|podria|hago|hacer|debo para? ya? dejar|parar de recibir
    como|donde|que ~ puedo|podria|hago|hacer|debo para? ya? no recibir
    ^ como|donde cancelo|desactivo|puedo ,|.|$|cancelar ,|.|$
    me|nos molesta|fastidia|cansa|harta|enoja recibir tantos|estos|sus|los|esos|tanto? TEXT
    no soporto|aguanto|tolero|soportamos|aguantamos mas? estos|sus|tantos|los|esos|tus|tanto TEXT
    no|nunca autorice|acepte|solicite|pedi|firme|autorizamos|pedimos recibir? estos|los|sus|esos|ningun|tus? TEXT
    no|nunca les|le|te? di|dimos|he|hemos dado? mi|ningun? permiso|autorizacion|consentimiento >para|de|,|.|$
    demasiados|tantos|muchos TEXT ,? ya? no quiero|queremos|mas
    no me? ~ deis|den|des mas? por mas? saco|culo
    dejen|deja|dejad|deje|dejate ya? de estar? romper|hinchar|joder|jorobar|tocar|fregar|chingar|rompiendo|tocando ,|.|$|mas|con|ya
    dejen|deja|dejad|deje|dejate ya? de estar? romper|hinchar|joder|jorobar|tocar|fregar|rompiendo|tocando las|los|la|me bolas|pelotas|huevos|narices|cojones|paciencia|las
    no rompan|rompas|hinchen|hinches|jodan|frieguen|chinguen|molesten|fastidien mas
    favor y|e me quita|borra|saca|elimina|quitan|borran|sacan|eliminan de|del|,|.|$|ya
    favor y|e no me escribe|escriben|manda|mandan|envia|envian|llama|llaman|textea
    hace|hacen|haga|hagame|hagan el favor y me quita|borra|saca|elimina|quitan|borran|sacan
    favor|amabilidad|bondad|gentileza de borrarme|quitarme|sacarme|eliminarme|desuscribirme ,|.|$|ya
    ta|esta|estuvo bueno ya? de|con tanto|tantos|los|sus|ya? TEXT
    no me|nos textea|texteen|textees
    ni|no me|nos? llamen|manden|escriban ,? ni|y me|nos? escriban|manden|llamen|texteen
    no|ni quiero|queremos|deseo|kiero que me|nos llamen|escriban|manden|texteen|molesten|contacten ,|.|$|ni|mas|nada|TEXT
    ^ stop the|it|this|that|these|those TEXT|,|.|$|por|porfa|please|ya
    ^ stop mandarme|enviarme|escribirme|textearme|mandando|enviando
    parala|parad con los|las|el|tantos|sus? TEXT|eso|esto
    ^ borrar|salirme|desactivar|desactivarme|removerme|remover $
    ^ salir|salirme de|del la|el|este? programa|lista|servicio|grupo|esto ,|.|$|por|porfa
    quitadme|borradme|sacadme|eliminadme ,|.|$|ya|por|porfa|de
    ^ ya? borrame|quitame|sacame|eliminame|borrenme|eliminenme ,|.|$|ya|che|we|wey|guey|porfa|por|mijo|mija|amigo|loco|plis|please|pues
    me pueden|puede|podeis|podrian|puedes borrar|eliminar ,|.|$|ya|porfa|por
    me|nos das|dan|dias|da de|d baja
    prefiero|quisiera|quiero|deseo|gustaria no recibir mas|nada|TEXT
    no quiero ma|mas na|nada|TEXT
    no hinchen|hinches|frieguen|friegue|rompan|rompas mas ,|.|$
    no|ni voy a|vamos seguir|continuar recibiendo
    muchas|muchisimas? gracias ,? pero ya no TEXT|mas
"""
# Refused, withdrawn, said before; for another who gets them; hoped.
_REFUSED = """
    no|ni quiero|deseo|queremos estar|seguir mas? en su|la|esta|tu|esa|el|este|sus? lista|listado|programa|sistema|servicio
    no quiero|deseo|queremos ser|formar parte de|del este|esta|su|la|el? programa|lista|servicio|esto|grupo
    no quiero|deseo|queremos pertenecer a|al su|la|este|esta|el? programa|lista|servicio|esto|grupo
    voy|vamos a salir|salirme|borrarme|retirarme|salirnos de|del la|este|esta|su|el? programa|lista|servicio|esto
    ^ ya? no sigan|sigais ,|.|$|por|porfa
    favor|porfa ya? no sigan|siga|sigas ,|.|$
    ya cansan|hartan|aburren|molestan|fastidian con sus|tus|los|tanto|tantos|estos? TEXT
    no|nada me|nos sirven|sirve sus|estos|los|tus|esos TEXT
    ,|. cancelen|quitenlos|borrenme|eliminenme ,|.|$
    no voy|vamos a necesitar|ocupar|querer mas|los|sus|estos TEXT
    prohibido escribirme|mandarme|enviarme|contactarme|textearme
    prohibo|prohibimos que me|nos TEXTVERB
    me|nos retire|retires|retiren|borre|saque|elimine|borres|saques de|del su|la|esta|tu|sus|esa|el? lista|listado|base|sistema|servicio|contactos|mensajes|agenda
    borrenlo|quitenlo|saquenlo|eliminenlo|borrenla|quitenla|saquenla|borrelo|quitelo|saquelo|eliminelo|eliminenla de|del la|su|esa|el|sus? lista|listado|sistema|base|registro|contactos
    me|nos niego|rehuso|opongo|resisto|negamos|oponemos a que? me? seguir|recibir|sigan|manden|escriban|continuar recibiendo|mas|estos|sus|TEXT|esto|mandando|nada|,|.|$
    no acepto|admito|consiento|permito|tolero|aceptamos que me|nos TEXTVERB
    no acepto|admito|consiento|permito|aceptamos recibir? mas|estos|sus|sus|los? TEXT
    no estoy|estamos de acuerdo en|con recibir|que|estos|los|sus|sus TEXT|me|estos|los|sus|mas TEXTVERB|TEXT
    no estoy|estamos de acuerdo en|con recibir|estos|los|sus TEXT
    cancelen|cancele|cancela|anulen|anule|anula|cancelad|cancelo|anulo|terminen|terminar mi|la|nuestra? participacion|registro|inscripcion|suscripcion|afiliacion|cuenta|autorizacion
    den|doy|damos por cancelada|cancelado|terminada|terminado|anulada mi|el|la suscripcion|servicio|inscripcion|participacion|registro
    ejerzo|ejercer|invoco mi derecho de|a cancelacion|oposicion|supresion|no
    lista de no llamar|molestar|contactar|enviar|escribir
    me|nos desuscribo|desapunto|desafilio|desinscribo|desuscribimos|desapuntamos ,|.|$|ya|gracias|por
    ^ dejenlo|dejalo ya ,|.|$|por
    dejen|deje|deja|dejad|dejate ya? de insistir|insistirme|acosar|acostarme|acosarnos|spamear|spam|importunar|importunarme
    no|ni me|nos acosen|acose|acoses|hostiguen|hostigue|importunen|importune ,|.|$|mas|con
    que|este sea el|su ultimo TEXT
    sigue|sigues|siguen|seguis mandando|escribiendo|enviando|llegando|texteando|molestando TEXT? si ya|les|me
    ^ ya|yo me|nos|ya me? di|dimos de baja
    ^ ya cancele ,|.|$|y sigue|me|todavia|,|.|$
    ya les|le|habia|os? pedido|pedi|solicite la|mi|una baja
    favor de dejarme|dejarnos en paz
    quiero|queremos|exijo|necesito que me|nos dejen|deje en paz
    ojala|espero|esperamos que? ya? no me|nos TEXTVERB|lleguen mas|nada ,|.|$|TEXT
    ojala|espero|esperamos que? ya? no me|nos TEXTVERB|lleguen ,|.|$|TEXT|nada
    ojala|espero|esperamos que? ya? dejen|paren|deje|pare de TEXTVERB|mandarme|escribirme|enviarme|mandar
    ojala|espero|esperamos no recibir mas|nada|ya|TEXT
    puede|pudiera|podria|pueden ,? que? ya? no me|nos TEXTVERB|lleguen
    ^ ya dejenme|dejeme|dejame|dejadme ya? ,|.|$
    cancelo todo ,|.|$
"""
_WISHED_NOT = """
    no|ni|nunca me? quiero|queremos|deseo|voy|vamos|pienso|quisiera a? que? me? dejar|darme|cancelar|salir|salirme|borren|quiten|saquen|eliminen|renunciar|retirarme|abandonar|borrarme|quitarme|desuscribirme|den
    no|ni me|nos? cancelo|renuncio|abandono|salgo|borro|retiro
    no|ni me|nos doy|damos
    no doy|damos de
    que ya? no me|nos mandan|llegan|escriben|mandaron|llegaron|llamaron|envian
    ya? no me|nos llegan|llega|mandan|llego|llegaron|mandaron|enviaron|escribieron el|los|la|sus|ningun|un|mis TEXT|recordatorio
    dejar|deje|dejen|deja|puede de mandarme|mandar|enviarme el|la|los|las|lo de|del|@
    no me? TEXTVERB a las|la #|CLOCK ,? mejor|sino|prefiero|puede|pueden
    me salgo a|al|con|por|para|temprano|un|una|hoy|manana|rapido
    basta|suficiente|bueno|estuvo|suave por hoy|ahora|ahorita
    ^ no me|nos? quiten|quite|quites|saquen|saque|borren|borre|eliminen|den|des|deis|dar|cancelen|cancele|suspendan|suspenda|retiren de|del|mis|los|la|el|, la? baja|lista|servicio|sistema|TEXT|programa|las
    .|,|porfa|favor|pero no me|nos? quiten|quite|quites|saquen|saque|borren|borre|eliminen|den|des|deis|dar|cancelen|cancele|suspendan|suspenda|retiren de|del|mis|los|la|el|, la? baja|lista|servicio|sistema|TEXT|programa|las
    ^ no dejen|deje|dejes|dejeis|paren|pare de TEXTVERB|mandar|mandarme|enviar|enviarme|escribir|escribirme|recordarme
    .|,|porfa|favor|pero no dejen|deje|dejes|dejeis|paren|pare de TEXTVERB|mandar|mandarme|enviar|enviarme|escribir|escribirme|recordarme
    baja en|del|por|de el|la|mi? trabajo|enfermedad|jale|chamba|maternidad|escuela
    baja laboral|medica|temporal
    ya? no encuentro|hallo|veo|vi|aparece|leo|lei|abre|abri|recibi|tengo|miro el|los|ese|su|mi|la|sus|ningun|un? TEXT
    no mande|envie|escribi|conteste el|mi|su TEXT ayer|anoche|antier|anteayer|antes|porque|hoy|pero
    quite|quiten|quiteme|quitenme|quitame|quita|saque|saquen|saquenme|saqueme|sacame|cambienme|cancelen|cancele|eliminen|elimine|suspendan|suspenda|cancelar|quitar|quitarme|eliminar|sacar|borren|borre|cambien el|la|los|las|lo|ese|esa|esos|esas @|pared|silla|ejercicio|ejercicios|talon|talones|equilibrio|tandem|puntas|sentadillas|sentadilla|flexiones|lagartijas|dolor|hinchazon|yeso|ferula|puntos|bota|faja|collarin|cita
    quite|quiten|quiteme|quitenme|quitame|quitarme|saquenme|cancelen|eliminen|suspendan el de|del la|los|el|las @|pared|silla|talon|talones|equilibrio|tandem|puntas
    quito|quitar|quitarme|quite el|la|los|las !TEXT !TEXTNOUN !suscripcion !plan !servicio !mensajitos !notificaciones _
    cortala|cortenla|corten con el|la|los|las @|talones|pared|silla|tandem|equilibrio|ejercicio|ejercicios|sentadillas
    salir|salirme a|al|con|por|para|adelante|temprano|mas|bien|pronto|hoy|manana !de
    salir de|del la|el|mi|este? viaje|casa|paseo|vacaciones|cama|hospital|dudas|duda|silla|bache|hoyo|depresion|dolor|noche|trabajo|clinica|cirugia|operacion
    voy|quiero|vamos a? renunciar|renuncio al|a mi|la trabajo|jale|chamba|empleo
    quite|borre|elimine|apague|cancele|termine los|el|la|mis TEXT|lista sin|por|de|antes|pero|y querer|error|mi|leer|leerlos|leerlo|ya|equivocacion
    mi|la|el|tu hija|hijo|nieto|nieta|esposo|marido me borro|quito los|el|la TEXT|lista
"""

CONCEPTS = {
    "ENDVERB": "stop estop stopp pare paren parar parad parale parenle parele parala detener detenga detengan suspender suspenda"
    " suspendan cancelar cancele cancelen cancela quitar quita quiten quitad eliminar elimina elimine eliminen terminen"
    "  apaga apague apaguen desactivar desactiva desactive desactiven  frena frene frenen corten anular anula"
    " anulen bloquear dejar deje dejen dejad bajenle bajale bajele finalizar finalice finalicen basta suficiente suficientes chole",
}
RULES = {
    "opt_out": _ASKED + _FED_UP + _ENDING + _BRIEF + _REFUSED,
    "opt_out_not": _WISHED_NOT,
    # With these a wish to hear no more is no pause, whatever stretch of time stands beside it.
    "for_good": """
        para|por siempre
        definitivamente|permanentemente
        de una buena? vez
        # SPAN son|fueron|es|fue|ya|esta* suficiente|suficientes|bastante|bastantes
    """,
    "for_good_not": """
        no es|sea? para|por siempre
        no es|sea? definitivamente|permanentemente
    """,
    # To be kept, in so many words.
    "opt_in": """
        no quiero|deseo|queremos darme|darnos de baja
        ^ no me|nos? quiten|saquen|borren|eliminen|den|deis de|del la? lista|baja|servicio|sistema|programa
        .|,|porfa|favor|pero no me|nos? quiten|saquen|borren|eliminen|den|deis de|del la? lista|baja|servicio|sistema|programa
        ^ no dejen|deje|dejes|dejeis|paren de mandar|mandarme|enviar|enviarme|escribir|escribirme|recordarme
        .|,|porfa|favor|pero no dejen|deje|dejes|dejeis|paren de mandar|mandarme|enviar|enviarme|escribir|escribirme|recordarme
        ^ no me? cancelen|cancele|suspendan|suspenda|quiten mis|los|las|el TEXT|servicio
        .|,|porfa|favor|pero no me? cancelen|cancele|suspendan|suspenda|quiten mis|los|las|el TEXT|servicio
        suscriben|suscriban|suscribes|suscribas|suscribeme|inscriben de|otra nuevo|vuelta|vez
    """,
    "opt_in_key": """
        ^ no quiero|queremos|deseo cancelar $
        ^ no quiero|queremos|deseo dejar de recibir|recibirlos
        no quiero|deseo|queremos darme|darnos de baja
        ^ no me|nos? quiten|saquen|borren|eliminen|den|deis de|del la? lista|baja|servicio|sistema|programa
        .|,|porfa|favor|pero no me|nos? quiten|saquen|borren|eliminen|den|deis de|del la? lista|baja|servicio|sistema|programa
        ^ no dejen|deje|dejes|dejeis|paren de mandarme|enviarme|escribirme|recordarme
        .|,|porfa|favor|pero no dejen|deje|dejes|dejeis|paren de mandarme|enviarme|escribirme|recordarme
        ^ no me? cancelen|cancele|suspendan|suspenda|quiten mis|los|las|el TEXT|servicio
        .|,|porfa|favor|pero no me? cancelen|cancele|suspendan|suspenda|quiten mis|los|las|el TEXT|servicio
    """,
    # "Up to here", "until never", "see you": no day until which she is away.
    "pause_until_not": """
        hasta luego|nunca|siempre|pronto|aqui|aca
        hasta la|el|las|los|aca madre|gorro|narices|coronilla|huevos|cojones|pelotas|mono|copete|tope|chingada|verga|cogote|vista|tronco
    """,
    "pause_span_not": """
        hasta luego|nunca|siempre|pronto|aqui|aca
        hasta la|el|las|los|aca madre|gorro|narices|coronilla|huevos|cojones|pelotas|mono|copete|tope|chingada|verga|cogote|vista|tronco
    """,
    "pause_span": """
        TEXT|TEXTNOUN|TEXTVERB|nada esta|estos|estas|este|la semana|semanas|mes|dias|quincena|proxima|fechas
        TEXT|TEXTNOUN|TEXTVERB|nada por? # SPAN
        PAUSEIT|STOPIT los|mis|las|estos|sus? TEXT|TEXTNOUN por? # ,|.|$|porfa|por
        TEXT|TEXTNOUN|TEXTVERB|nada por|durante unos|unas? #
    """,
    "idiom.severe_pain": """
        no|ni|ya soporto|aguanto|soportamos|aguantamos mas? estos|sus|tantos|los|esos|tus|tanto TEXT
    """,
    "idiom.crisis": """
        no|ni quiero|kiero|deseo|quisiera|queremos seguir|continuar en|con el|este|su|ese|sus|los|estos? programa|servicio|suscripcion|lista|grupo|TEXT !ni !y
    """,
    "opt_out_past": """
        me arrepenti|arrepiento
        cancele los|mis|el|sus TEXT y|pero|, me|ya|ahora
    """,
}
