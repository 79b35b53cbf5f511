"""Spanish rules for falls and injuries, what makes them graver or less, and falls that were none.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.fall_or_injury": """
        me pegue|golpee en|con|contra el|la|un|una bano|puerta|pared|escalera|cocina|ducha|regadera|esquina|mesa|mueble|tina|lavabo|marco
        CLIENTLIKE ha caido
        y|, me corte|rebane ,|.|$|feo|fea|hondo|con|mucho
        me e caido|resbalado|golpeado|pegado
        encontre|encontramos|halle|hallamos|encontraron tirada|tirado|caida|caido !el !la !un !una !mi !los !las !su
        boca|ceja|frente|cabeza|barbilla partida|descalabrada
        me somate|somato|somataron|somatado
        me|le somate|somato ~ BODY
        culetazo|culazo|culada|trancazo|trompazo|cabezazo|rodillazo|codazo ~ en|contra|con|al|cuando|bajando|subiendo|.|,|$
        me fui al hoyo|pozo|barranco|canal|suelo|piso|agua|zanja
        me raspe|despelleje toda|todita|todo|todito|la|las|el|los|mi
        pum|zas|cataplum|pumba|tras ,|.? al piso|suelo
        me fui contra|encima|sobre el|la|un|una|mi
        sangre|sangro|sangrando|sangraba de|por el|la|mi ceja|frente|nariz|cabeza|boca|rodilla
        me cai|caigo|caia|caido|caimos
        me ~ he caido
        me he caido
        me cai
        cai !en !cuenta !rendida !dormida !enferma !como !bien !mal !de !a
        cai de ~ espaldas|nalgas|rodillas|sentada|sentado|boca|lado|sentones|pompas|escalera|bicicleta|cama|escaleras|silla|bruces|cabeza|hocico|frente|costado|lleno|cara|panza|ladito
        cai a|al suelo|piso|canal|hoyo
        cai en ~ bano|piso|cocina|calle|patio|suelo|escalera|regadera|banqueta|tina|pasto|hielo|jardin|sala|tienda|parada|porche
        cai ~ sentada|sentado|hincada|hincado|parada|escaleras|mano|rodilla|brazo|bano|cocina|patio|piso|calle
        se cayo|callo|cae|caia !el !la !mi !un !una !los !las !su !lo
        se cayo|callo|cae mi|la|el|su? CLIENTLIKE
        CLIENTLIKE ~ se? cayo|callo|cae
        se ha caido !el !la !mi
        se cayo de|en ~ cama|silla|escalera|escaleras|bano|espaldas|nalgas|carro|cocina|patio|calle|regadera|rodillas|lado|sentada
        caida|caidas|cayendo
        tuve|sufri|di|dio|pegue|metí|meti|lleve|puse|dimos ~ caida|costalazo|sentonazo|porrazo|guamazo|fregadazo|golpazo|trancazo|madrazo|ranazo|resbalon|tropezon|zapotazo|zapotazo|zarpazo|chingadazo|batacazo|golpe|culazo|suelazo|sentón|senton|ranazo
        costalazo|sentonazo|porrazo|guamazo|batacazo|suelazo|fregadazo|ranazo|senton|sapotazo
        fui ~ boca|bruces|lado|espaldas|nalgas|hocico|largo|suelo|piso|jeta|trompa
        fue ~ de boca|bruces|espaldas|nalgas|hocico
        me|se fui|fue|iba al piso|suelo
        termine|acabe|quede|pare|di|azote|dar|vine|llegue|aterrice|fui ~ en|al|contra ~ suelo|piso
        tirada|tirado ~ suelo|piso|bano|cocina
        tire|tiro ~ piso|suelo
        me resbale|tropece|rode|patine|enrede|atore|azote|estampe|desplome|volque
        resbale|tropece|rode|azote|patine|resbalé|desplome
        se resbalo|tropezo|rodo|desplomo
        torci|torcio|doble|falsee|luxe|lastime ~ JOINT|BACKBONE
        doblo|torcio|falseo ~ tobillo|pie|muneca|rodilla|mano|dedo
        tobillo|pie|muneca ~ doblo|torcio|torci|doble
        esguince|torcedura
        me|se HIT ~ JOINT|BACKBONE|HEADPART|BODY|con|contra
        HIT ~ JOINT|HEADPART
        pegue|golpee|golpe|golpie|pego|di|dio|machuque ~~ cabeza|rodilla|cadera|codo|brazo|espinilla|pie|dedo|mano|hombro|frente|cara|costillas|tobillo|pierna|rabadilla
        cabeza ~ golpe|golpee|pegue
        descalabre|descalabro
        golpeada|golpeado|moreteada|moreteado|chichon|moreton|moretones|lesion|lesione
        cayo|callo|deje|solte|cae ~ encima|pie|dedo|dedos ~ pie|pesa|plancha|mano|encima|silla
        se ~ zafo|safo|disloco|salio|luxo|descoyunto|descompuso ~ hombro|rodilla|cadera|hueso|dedo|codo|muneca|tobillo|mano|lugar
        hombro|rodilla|cadera|codo ~ zafo|safo|salio|disloco|luxo|zafado|dislocado|fuera|lugar
        DISLOC
        choque|chocamos|chocaron|choco|volcamos ~ carro|freeway|troca|coche|auto|camioneta|ayer|hoy|poste|me|nos|y
        choque ayer|hoy|en
        accidente|choque ~ carro|coche|auto|troca|freeway|moto
        atropello|atropellaron|atropellado|atropellada|empujo|empujaron|tumbo|tumbaron
        me ~ quebre|rompi|fracture|fisure|parti ~ JOINT|brazo|dedo|pie|muneca|hueso|costilla|costillas|mano|pierna|cadera
        quebre|rompi|fracture|fracturo|quebro ~ brazo|muneca|dedo|pie|tobillo|cadera|mano|hueso|pierna|hombro|codo
        me lastime|lesione|accidente
        caida del|de|en
        pegue|di|dio|dado|meti|metio|metido|acomode|puse|lleve|llevo|saque|sacado ~ palo|porrazo|hostia|madrazo|golpazo|golpe|trancazo|cresta|mugre|chucha|madre|ranazo|tortazo|guarrazo|leche|talegazo|costalazo|piña|pina|castanazo|fregada|matada|suelazo|zambombazo|tremendo
        hostia|porrazo|madrazo|guarrazo|talegazo|tortazo|matada bajando|subiendo|en|que|contra
        patino|resbalo|fue|volteo|voltio|volte|doblo|torcio|chanfleo ~ pie|tobillo|pies
        pie|tobillo ~ patino|volteo|doblo|torcio|resbalo|voltio
        me abri|partí|parti|rompi|raspe|descalabre ~ pera|cabeza|ceja|frente|labio|rodilla|rodillas|mano|barbilla|menton|boca|diente
        patada|codazo|pisoton|pelotazo|pedrada|cornada|topetazo ~ BODY|ojo|cabeza|cara|costillas|pecho|espinilla
        me ~ pateo|patio|tumbo|piso|tiro|aventó|avento|empujo|embistio|revolco
        me|nos chocaron|choco|atropellaron|atropello
        boto|botó|salio|sali|descompuso|zafo|movio ~ cadera|hombro|rodilla ~
        cadera|hombro|rodilla ~ boto|zafo|movio|descompuso|brinco
        cai|caida|caer ~ escalera|escaleras|bano|regadera|banera|ducha|tina|vereda|anden|acera|banqueta
        rode|rodando|rodo ~ escaleras|escalera|cuesta|barranco|gradas
        me vine|fui|mande ~ abajo|piso|suelo
        me ~ machuque|aplaste|prense|cogi|pille|agarre ~ dedo|dedos|mano|pie ~ puerta|cajon
        puerta|cajon|martillo|piedra|lata|bulto|olla ~ cayo|pego|dio ~ pie|dedo|cabeza|mano
        quemada|queme|quemadura
        aterrice ~
        besé|bese el piso|suelo
        tropezon|resbalon|tropiezo ~ y|cai|al
        amaneci|desperte|quede|termine ~ tirada|tirado
        azoton|azote|porrazon|ranazo
        me golpee|golpie
        ^ me? choque|golpee|golpie $
        ^ me? choque|golpee|golpie ,|.
        . me? choque|golpee|golpie $
        . me? choque|golpee|golpie ,|.
        me|se ~ cayo|callo|vino ~ encima
        me|se corto|corte|cortó ~ el|la|un|una|con ~ vidrio|cuchillo|lata|navaja|mano|dedo
        JOINT ~ fue|movio|volteo|salio ~ un|otro|lado|costado ~ lado|trono|crujio
        pegue|di|dado|metido|metio|metí|metiste|meti|puse|lleve|llevado|saque|partí|dio|pego|metio|metío ~ palo|hostia|ostia|porrazo|castanazo|leche|hostion|trompada|mamporro|golpazo|cresta|mierda|chucha|madre|mugre|trompazo|batatazo|talegazo|totazo|golpeton|guarapazo|matada|caidon|culada|planazo|cuesco|costalada|zapatazo|tortazo|trastazo|tropezada|mamonazo|cabezazo|golpe|encontron
        saque|sacado|saco ~ la|el cresta|chucha|madre|mugre|mierda|entrepierna
        matada|castanazo|trompazo|talegazo|totazo|trastazo|costalada|golpazo|revolcon|maroma|machucon|sentonazo|hostion|talegada|panzazo
        me|le|nos ~ dio|dieron|pego|pegaron|metio|tiro|aventó|avento|solto|clavo|planto ~ patada|coz|cornada|codazo|empujon|golpe|cabezazo|punetazo|pelotazo|palazo|puerta|topetazo|portazo|trancazo|sape
        patada|coz|cornada|codazo|empujon|pelotazo ~ pantorrilla|rodilla|cara|ojo|costillas|pierna|espalda|cadera|pecho|cabeza|me
        patino|resbalo|fue|fueron|doblo|volteo|voltio|viro|torcio|falseo|tropezo|chueco ~ el|los|un ~ pie|pies|tobillo|pata|chancla|zapato|baston|andador
        pie|tobillo|pata ~ volteo|voltio|viro|doblo|torcio|chueco|falseo
        abri|rompi|parti|raje|corte|reventé|revente|descalabre ~ la|el|una ~ pera|ceja|frente|cabeza|barbilla|menton|labio|nariz|boca|mano|rodilla|pierna|dedo
        atropello|atropellaron|arrollo|embistio|embistieron|tumbo|tumbaron|empujo|empujaron|derribo|derribaron|chocaron|asaltaron|golpearon|volteo ~ me|nos|una|un|la|el|por
        me|nos|lo|la chocaron|choco|atropello|atropellaron|arrollo|tumbo|tumbaron|empujaron|empujo|tiraron|derribo|embistio|asaltaron|golpearon|volcamos
        termine|acabe|quede|aterrice|pare ~ en|al|a ~ piso|suelo|bano|banqueta|pasto|urgencias|bruces
        fui|vine ~ en|al|a ~ piso|suelo|bruces
        me ~ fui|vine ~ de ~ boca|cabeza|lado|espaldas|bruces|narices|hocico|frente|jeta|trompa|cara|nalgas|poto|culo|costado
        me vine|fui abajo|patras|atras
        me ~ desbarranque|embarre|estrelle|estampe|embroque|derrumbe|despene|descolgue|voltee|rode|desparrame|tumbe|espatarre
        rode ~ escaleras|escalera|gradas|cerro|abajo
        cadera|rodilla|hombro|tobillo|pierna se me|le? fue|iba|va de|para|pa|a|hacia el|un? lado|atras|dentro|afuera|fuera|adelante
        se me|le? fue ~ cadera|hombro|rodilla|rotula|codo|muneca|hueso|tobillo|quijada
        se me|le fue ~ dedo en|entre|bajo|debajo el|la|los|las|mi|una|un !tecla !teclado !telefono !celular !numero !boton !pantalla
        boto|salio|movio|corrio|brinco|zafo|zafado|zafada|desencajo|desmonto|chispo|disloco|desplazo ~ cadera|hombro|rodilla|rotula|codo|dedo|muneca|hueso|tobillo|quijada
        cadera|hombro|rodilla|rotula|codo|dedo|muneca|quijada ~ boto|salio|zafo|fuera|desencajo|chispo|disloco|brinco|corrio|colgando|chueco|chueca|desmonto
        pierna|pata|brazo|dedo|muneca ~ quedo ~ corta|corto|torcida|torcido|chueca|chueco|colgando|volteado|volteada
        pierna ~ mas corta
        machuque|machuco|prense|aplaste|aplasto|pise|pelisque|pellizque|corto|corte|queme|rebane|trabe ~ dedo|dedos|mano|pie|pierna|brazo|muneca|una
        cayo|caido|callo|vino|solto|resbalo ~ encima|pie|cabeza|pies|dedo|mano ~~ pie|dedo|cabeza|duele|hinchado|morado|morada|lata|pesa|caja|mueble
        cayo ~ lata|caja|pesa|mueble|puerta|plancha|bote|tabla|rama ~ en|encima
        BODY|JOINT ~ como ~ berenjena|pelota|melon|papa|globo|tomate|camote|jamon|mango|toronja|sapo
        negra|morada|morado|moreteada|hinchada ~ de la? caida|golpe|porrazo
        puntos ~ cabeza|ceja|frente|barbilla|pierna
        yeso|enyesaron|ferula|inmovilizaron|cabestrillo
        aplasto ~ el|la|un ~ me
        caida|caidas|resbalon|tropezon ~ bano|escaleras|calle|regadera|hoy|ayer|anoche|feo|fea
        latigazo cervical
    """,
    "happening": """
        caidas ~ contando|con|incluida|incluyendo la de hoy|ayer
    """,
    "idiom.fall_or_injury": """
        cai|caigo muerta|muerto|rendida|rendido en el|la|mi sofa|cama|sillon|hamaca
        cai|caigo|cayo en cama ,|.|$|con|por
        me tiro la|el|una toalla|beso|besos|indirecta
        cabeza dando|da|daba|dan vueltas
        nietito|nietita|bisnieto|bisnieta que? se golpeo|cayo|pego|quebro|lastimo
        cai|cayo redondita|redondito
        de golpe y porrazo
        torci .? de la? risa
        me|nos|se vino|vinieron|cayo el|la|los|las tiempo|hora|tarde|noche|dia|horas|fecha|navidad|semana|trabajo|quehacer|mundo encima
        de chica|nina|chiquita|muchacha|chiquito|morra me cai|quebre|rompi
        cayendo|caigo|caia|caida|caido|caer|cae de la|el|puro|pura|tanto|tanta|un? sueno|hambre|risa|cansancio|maduro|madura|vieja|viejo y !me !en !pegue !golpee !del
        cai|caigo|caer|caerme|cayendo|caia|caemos muerta|muerto|rendida|rendido|redonda|redondo? de la? risa|sueno|cansancio|hambre|cansada|cansado y !me !en !pegue !golpee !del
        rompi|rompo|rompiendo|rompia|quebre|quebrando|quebrar|romper la|el cabeza|cabesa|coco ~ crucigrama|rompecabezas|sudoku|pensando|tarea|cuentas|sopa|letras|acertijo|recordando
        me|nos? rompi|rompo|rompiendo|rompia|quebre|quebrando los sesos con|en|pensando?
        ni|no me pegue|golpee|lastime|lesione ,|.|$|ni|nada|hechos|hice|y|pero
        torci|torcer|torciendo|tuerzo|retorci|exprimi la|el|las|los|un|una ropa|trapo|trapos|trapeador|sabana|sabanas|toalla|toallas|pescuezo
        cai|caigo|cayo|caia|caido|caida|cae dormida|dormido ,|.|$|en|como|despues|viendo|anoche|temprano|toda|todo|a|tarde
        caido|cai|caiste|cae|caigo|caer del guindo|nido
        se me|le|nos|les cae|cayo el|la|las|los|un|una? brazo|parpado|boca|cara|mano|pelo|diente
        tocado caerme
        cai|caigo|caer|caerme|cayendo|caia|caemos muerta|muerto|rendida|rendido|redonda|redondo? de la? risa|sueno|cansancio|hambre|cansada|cansado !en !y !por !bajando !subiendo
        cai|caigo|caer|caerme|caemos de|del la|un? nube
        cai malo|mala|enferma|enfermo|gorda|redonda|parada
        caer|cayo ~ alma ~ pies
        caia|cai ~ de ~ puente ~ sueno
        de rodillas ante|a rezar|rezando
        caida de camus
        la|una|mi pelota se? me|nos|le? cayo
        el|mi|otro equipo|gol ya? se? cayo
        dio ~ patada ~ LOL ,|.|$
        me tiro en|a|sobre|un rato? en|a? la|mi cama
        tiro a la cama
        quebro la|el|un|una|mi|otro|otra silla|vaso|taza !conmigo !y !cuando
        quebro la|el|un|una|mi|otro|otra vaso|taza y
        pego ~ resfrio|gripa|gripe|covid|bicho
        me pego ~ resfriado|gripa|gripe|sol|calor
        golpe de estado|vista|suerte
        golpe al|a|en el|la|mi|un? bolsillo|presupuesto|cartera|economia
        pelicula|novela donde|que|en|porque|cuando ~ cae|caia|caer|cayo
        sone donde|que me|se|no? cai|cae|caia|caigo|caer
        <un|el|mi|en sueno ~~ caia|caigo
        <un|el|mi|en sueno donde|que|en ~ cai|cae|caer
        me movio ~ piso|tapete
        cayendo|caigo|caia|caida|caido|caer|cae de la|el|puro|pura|tanto|tanta|un? sueno|hambre|risa|cansancio|maduro|madura|vieja|viejo !en !y !por
        sueno|hambre|cansancio|flojera que me caigo|cai|muero|desmayo
        cai|cayo|caimos|cae|caigo|caer malo|mala|enfermo|enferma|redondo|redonda|rendida|rendido|frito|privada|privado
        cai|caigo|caer|caen de la|pura|tanta? risa
        cai|cayo|caer|caigo de rodillas ante|frente|para|a|, ~ rezar|orar|altar|santisimo|virgen|dios|jesus|cruz|gracias|cristo|senor
        cai|cayo|caer|caigo de rodillas rezando|orando|llorando
        se? me|nos|le|les? cayo|cae|callo|cayeron|caen el|la|los|las|mi|un|una alma|celu|cel|cara|ojos|pelo|baba|sistema|moco|internet|veinte|luz|jornal|app|quijada|andamio|barda|calzon|calzones|panuelo|lista|red|teja|estante|poste !encima !en !sobre
        se? me|nos|le|les? cayo|cae|callo|cayeron|caen el|la|los|las|mi|un|una alma|celu|cel|cara|ojos|pelo|baba|sistema|moco|internet|veinte|luz|jornal|app|quijada|andamio|barda|calzon|calzones|panuelo|lista|red|teja|estante|poste en|al|a el|la|los? piso|suelo|agua|pies|bano|calle
        cayo|caen|cayeron|cae un|una|el|la|mucha|mucho|tremenda|tremendo|puro|los|las? granizo|nieve|rayo|helada|novia|visita
        me|le|les|nos cayo|caen|cayeron|cae ~ chistoso|chistosa
        sone|sonaba|sonando|pesadilla|pesadillas|videojuego ~~ caia|caida|caer|caigo
        en|de la|una|mi|esa|el|un pelicula|novela|videojuego ~ se cayo|cae|caia
        caida de|del camus|cabello
        cayo|cae ~ # a #
        echar|echo|eche ~ mano
        di un golpe de estado|suerte
        metio|meti ~ pata
        meti ~ gol
        saco ~ susto|jugo
        pegue ~ susto|gritos|sueno|siesta|banazo|resfriado
        me ~ pego ~ resfriado|gripa|gripe|catarro|virus|sueno|hambre|tos
        dio ~ susto|gripa|gripe|tos|sueno|hambre|pena|gusto|risa|flojera
        puntos ~ examen|partido|tienda|tarjeta|liga
        me ~ volteo a ver
        pise ~ el acelerador
        corto|corte|cortaron el|la|las|los|mi|mis|un|una|unos|unas|#? pelo|cabello|luz|una?s|pasto|zacate|vestidos|tela|pastel|dedo de queso
        corte|corto ~ #|dos|tres ~ vestidos
        salio ~ todo ~ bien
    """,
    "near_fall": """
        pense|crei que me caia|iba ,? pero no $|y|.
        casi|por poco|poquito !pero ~ cai|caigo|voy|cae|caer|resbalo|resbale|fui|tropiezo|caia|mato|azoto|doy
        casi me ~ cai|caigo|voy|resbalo|fui
        por poco !pero ~ me ~ caigo|cai|voy|resbalo|mato
        por poquito !pero
        estuve a punto ~ caer|caerme
        iba a caer
    """,
    "caught": """
        no ~ cai|caigo|caer|paso|llegue
        me agarre|sostuve|detuve|apoye|alcance|detuvo|agarro|agarraron
        alcance a ~ agarrarme|sostenerme|agarrar|detenerme
        pero no ~ cai|nada
        no paso ~ nada|mayores
        no ~ paso|pase ~ nada|susto
        ni ~ paso ~ nada
        fue puro|solo susto
    """,
    "slip": """
        se me fue un|el? pie
        resbale|tropece|resbalo|tropezo|patine|enrede|atore|resbalon|tropezon
    """,
    "head_hit": """
        pegue|golpee|golpe|golpie|di|descalabre|pego|golpeo ~~ cabeza|frente|nuca|cara|craneo
        cabeza ~ golpe|pegue|golpee|piso|suelo|pared|chichon
        chichon|descalabre
    """,
    "cannot_rise": """
        no ~ puedo|pude|puede|podia|pudo ~ levantar|levantarme|levantarse|parar|pararme|pararse|caminar|apoyar|pisar|enderezar|mover|moverme
        no ~ aguanto ~ pisar|apoyar
        sigo ~ piso|suelo
        sigo tirada|tirado
        ambulancia|bomberos|911|paramedicos
        tuvieron que ~ levantar|ayudar
        apenas ~ puedo ~ caminar|pisar|parar
    """,
    "hurt_by_fall": """
        duele|dolor|duelen|adolorida|adolorido|hinchada|hinchado|inflamo|inflamada|moreton|moretones|moreteada|moreteado|sangre|sangro|raspon|raspones|lastime|lastimada|golpeada|golpeado|chichon|quebre|torci|zafo|morada|enyesaron|puntos|melon
        pegue|golpee|di ~~ BODY|HEADPART
    """,
    "unhurt": """
        no ~ paso|hice|duele|lastime ~ nada
        sin ~ golpes|lesiones
        estoy bien
    """,
    "older_day": """
        ayer|antier|anteayer|anoche|lunes|martes|miercoles|jueves|viernes|sabado|domingo
        semana pasada
        hace # dias|semanas|dia|semana
        otro dia|noche
        pasado
    """,
}
