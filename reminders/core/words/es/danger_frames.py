"""Spanish danger signs as frames: a sensation, "in the", a part of the body; and what stands close by and is none.

A label a block, a pattern a line; the notation stands in reading/patterns.py. A harmless turn asks for adjacent words.
"""

CONCEPTS = {
    "NUMB": "adormila adormilan anestesiada anestesiadas anestesiado anestesiados amodorrado acorchados acorchadas",
    "CRACK": "crujieron chasquearon crujian",
    "BONE": "clavicula femur tibia perone radio cubito humero pelvis craneo hueso huesito huesos costilla costillas rotula escafoides metatarso falange esternon omoplato",
    "BROKE": "partio partieron parti rompi rompio rompieron quebre quebro quebraron fracture fracturo fracturaron fisure fisuro astille astillo raje rajo",
    "SHOT": "disparo balazo martillazo corrientazo chispazo cohetazo estallido",
    "SNAPPING": "quiebra quiebran quebrar quebrarse rompe rompen romper romperse parte parten partirse truena disparo balazo rama ramita lapiz galleta nuez vara gis tabla",
    "TIGHT": "punzadota punzadotas piquetazo piquetote piquetazos apretoncito opresioncita dolorcillo dolorsote dolorote dolorones doliendo dolia dolian duelen punzando molestando pincha pinchando apretar apretarme oprimir oprimirme estrujar punzar",
    "SADDLE": "intima intimas genital vagina testiculos pene perine perineo",
    "SNAP": "clic click clac clack tac trac trakido traquido traqueo plop paf ploc cloc crujidito",
    "HEARTSIGN": "acelera aceleran aceleraba aceleró dispara disparaba desboca galopa retumba retumbando zumba revolotea alocado alborotado alborota agitado",
    "DIZZY": "ataranta ataranto atarante atarantando atarantan atarantaba destanteo destantea aturdo aturdi aturde aturdimiento desmayito desmayitos taranta tarantas mareadera mareadisima",
    "GRASP": "sirve sirven responde responden agarra agarran aprieta aprietan sostiene sostienen sujeta sujetan obedece obedecen funciona funcionan cierra cierran mueve mueven levanta levantan detiene detienen reacciona reaccionan",
    "SHARDS": "vidrio vidrios clavo clavos astilla fierro alambre navaja cuchillo tachuela aguja varilla lata tornillo cristal machete serrucho tijera tijeras",
    "FIBRE": "musculo musculos tendon ligamento ligamentos gemelo gemelos aductor isquio isquios isquiotibial cuadriceps soleo bicep biceps menisco aquiles",
    "BLADDER": "esfinteres caca heces orines evacuaciones",
    "BACKBONE": "lumbares",
    "PEE": "orina orines orin pipi pis chis pichi meados caca popo heces excremento",
    "BEDWET": "cama colchon sabana sabanas calzon calzones calzoncillo calzoncillos pantalon pantalones panal trusa pantaletas pijama bragas",
    "JOLT": "tiron jalon estiron punzada punzadas pinchazo piquete calambre calambrazo aguijonazo puntada dolor doloron dolorazo picotazo",
    "SHARP": "seco seca repentino repentina subito subita brusco brusca",
    "LASH": "ramalazo chicotazo trallazo hachazo lanzazo navajazo latigazo machetazo aguijonazo cuchillazo relampagazo",
    "BROKEN": "roto rota rotos quebrado quebrada partido partida fracturado fracturada astillado fisurado fisurada",
}
RULES = {
    "danger.chest_or_breathing": """
        normal|malo|grave|preocuparse|preocupante|raro|comun ~ que me duela|apriete|oprima|arda|pese el|la? pecho|corazon
        normal|malo|grave|preocuparse|preocupante|raro|comun ~ que me falte el? aire|respiracion
        respiracion ~ cortadita|cortita|cortica|agitadita|rapidita|trabajosa
        algo|cosa raro|rara|fea|feo en el|mi? pecho|corazon
        pecho|corazon ,? ~ como si ~ pusieran|sentaran|pisaran|apretaran|cargaran|aplastaran|metieran
        sin poder|lograr|conseguir|alcanzar|alcanzando ~ respirar|resollar|BREATHE
        CHEST ~ a apretar|oprimir|doler|dolerme|arder|molestar|punzar|quemar
        acezando|acezaba|acezo|aceza|acecido|resollando
        cuando|al|si respiro|respirar|inspiro|inhalo|tomo ~ me punza|duele|arde|pincha|clava|lastima
        BREATH ~ entrecorta|entrecortaba|entrecortada|acelera|agita|cierra|tranca
        cierra|cerro|cerraba|tranca ~ respiracion|garganta|bronquios
        aire ~ pesado|espeso ,|.|y|no|que
        aire ,? no me llena|alcanza|entra|pasa
        respirando|respiro por|con la boca abierta
        se me iba|va|fue|corta|cortaba|acaba|acababa|escapa|termina ~ BREATH
        respirar ~ me? cuesta|cansa|duele|agota|costaba|cansaba
        HEARTSIGN ~ HEART
        dolor|dolores|dolorcito|doloron|molestia|ardor|presion|opresion|punzada|punzadas|pinchazo|pinchazos|piquete|piquetes|puntada|puntadas|aguijonazo|hincada|hincadas|calambre|tiron|peso|apreton en el|mi? corazon|pecho|torax|esternon
        dolor|punzada|punzadas|puntada|pinchazo al|del|de corazon|pecho
        me|le punza|pincha|pica|hinca|clava|arde|lastima|molesta|cala|jala|duele|dolio|dolia|tiembla|aprieta|estruja|oprime|aplasta|quema mucho|feo|fuerte|aqui|bien|algo? el|mi corazon|pecho|torax|esternon
        dificultad|dificultades|problema|problemas|insuficiencia|crisis|trastorno|deficiencia respiratoria|respiratorias|respiratorio|respiratorios
        problema|problemas|dificultad|dificultades|trabajo|batalla|apuro|apuros para|al|de|con la? respirar|respiracion|resollar
        apenas me|si? entra|llega|pasa|alcanza|jalo|agarro|cojo el|un? aire|oxigeno|aliento|resuello
        entra|llega|pasa|alcanza|cojo|agarro|jalo poco|poquito|menos aire|oxigeno
    """,
    "danger.nerve_or_bladder": """
        entre las|mis piernas ~ anestesia|anestesiado|anestesiada|dormido|adormecido|muerto|entumido
        ingle|entrepierna ~ anestesia|anestesiado|anestesiada|dormida|adormecida|muerta|entumida
        BODY ~ toco ~~ como|parece ~ otra|otro|ajena|ajeno|corcho|carton|madera|hule persona|,|.|$|y
        BODY ~ toco ~~ como|parece ~ corcho|carton|madera|hule|ajena|ajeno
        pie|pierna|brazo|mano izquierdo|izquierda|derecho|derecha? no sube|levanta|jala|responde|obedece|agarra|aprieta
        normal|malo|grave|preocuparse|preocupante|raro|comun ~ que se me duerma|duerman|adormezca|adormezcan|entuma|hormiguee
        nunca|jamas me ~ habia orinado|meado|mojado|cagado|hecho
        LIMB|LEG|manos|pies ~~ no la|lo|las|los siento|sentia|senti ,|.|$|nada|casi
        LEG|LIMB ~ se me hacen|hace|hicieron|ponen|pusieron de|como? atole|gelatina|agua|trapo|aguadas|hule|chicle
        se me va|fue|iba|van la|el|las pierna|pie|mano|piernas ,? sola|solo|pa|para|hacia|sin|al
        LEG|LIMB ~~ no lo|la|los|las puedo|logro|puede|pude levantar|mover|sentir|doblar|alzar
        goteando|goteo|escurriendo|escurro|chorreando|perdiendo PEE
        sin poder|lograr ~ orinar|mear|obrar|hablar|tragar
        sin poder|lograr ~ aguantar|controlar|retener|contener ~ BLADDER|PEE|ganas|bano
        sin poder|lograr ~ mover|levantar|sentir|doblar ~ LIMB|LEG|dedos
        sin|perdi|pierdo|perdiendo|perdido|tengo ~ sensacion|sensibilidad|tacto en|entre|de el|la|las|los|mi|mis? LIMB|LEG|SADDLE|manos|dedos
        no me|le aguanta|aguantan|aguantaba|soporta|soportan|sujeta|carga ~ LIMB|LEG
        LIMB|LEG ~ no me|le aguanta|aguantan|aguantaba|soporta|sujeta
        estoy|ando|anduve|vengo|estuve|amaneci orinando|meando|miando sin|encima|en|la|de|toda
        LIMB|LEG ~~ como|parece de? trapo|gelatina|chicle|plomo|fideo|hilacho|corcho|madera|esponja|hule|lana
        LIMB|LEG|manos|brazos se me caen|caian
        se me duerme|durmio|duermen|adormece|entume|entumio|paraliza la|las|una pata|patas
        pata|patas ~ NUMBONLY|dormida|dormidas
        se me queda|quedo|quedaron|quedan sin fuerza|fuerzas|sensibilidad
        sin fuerza|fuerzas de repente|golpe|pronto
        LIMB|LEG|lado ,? como si no|ya fuera|fueran|estuviera|existiera
        panal|panales ~~ se me? sale|escapa|aguanto
        NUMB la|una|toda|mi parte|zona|region|area|mitad
        zona|parte|partes|area|region ~ NUMBONLY|dormida|dormidas|insensible
        LEG ~ se me va|vence|suelta|afloja|dobla|rinde
        se me cae|caen|cuelga el|la|las|los pie|pies|mano|manos|punta
        sin tacto
        LIMB|manos|dedos ~ no ~ GRASP
        no ~ GRASP ~ LIMB
        traigo|tengo|ando|quede|quedo|amaneci|siento|noto con? el|la|una|un|mi pie|mano|brazo|pierna|parpado|boca|lado ~ colgando|caido|caida|muerto|muerta|bobo|boba|flojo|floja|torcida|ajena|ajeno
        ensucio|ensucie|ensuciado|mancho|manche|mojo|moje|mojado|ensuciando ~ ropa|BEDWET ~~ sin|cuenta
        no|sin ~ controlo|control|controla|controlar|manejo ~ esfinteres|esfinter|vejiga|PEE
        me ice|hize|ise ~ encima|PEE
        me|se hice|ice|hize|hizo|hago de? PEE
        fuga|fugas|escape|escapes|perdida|perdidas|goteo|accidente|accidentes|incontinencia de|con PEE
        moje|mojo|mojado|mojando|mojaba la|el|las|los|mi|mis BEDWET
        amaneci|desperte ~ mojada|mojado|orinada|orinado|meada|meado|miada|miado|zurrada|zurrado|cagada|cagado
        agujitas|agujillas|alfileritos|alfilerazos|hormiguillas|hormiguero|hormiguitas|cosquillitas|adormecimientos ~ LIMB|LEG|dedos|manos|pies|cara
        LIMB|LEG|manos|dedos ~ agujitas|agujillas|alfileritos|alfilerazos|hormiguillas|hormiguero|hormiguitas
        se me duerme|durmio|duermen|durmieron|adormece|entume|entumece|entumio|paraliza|paralizo|engarrota|muere ~ LIMB|LEG|cuerpo|lengua
    """,
    "danger.fall_or_injury": """
        porrazo|matazo|costalazo|guarapazo|totazo|ranazo|cuetazo|zapotazo en|contra el|la|las|los|mi
        ^ porrazo|matazo|costalazo|guarapazo|totazo|ranazo|zapotazo
        nunca|no|jamas me caigo|tropiezo|resbalo ~ pero hoy|ayer|anoche|ahora|esta|este ~ si|me|cai
        tuve|di|llevo|tuvo una|un? caidita|caidilla|porracito|porrazo|costalazo|sentonazo
        cayo|cayeron un|una|el|la|mi|unas _ de|con ~ en|sobre|encima ~ JOINT|LIMB|HEADPART|BODY
        cai como _ en|por|de el|la ducha|regadera|bano|piso|escalera|calle|tina|cocina|patio|banqueta|suelo
        vine|fui|baje|cai|caimos rodando
        perdi el paso|escalon|pie
        cayo|cayeron un|una|el|la|mi|unas _ en|sobre|encima ~ JOINT|LIMB|HEADPART|BODY
        me|nos llevo|llevaron puesto|puesta|puestos|encuentro
        me descompuse|disloque|chueque|enchueque|falsee un|una|el|la|mi JOINT|LIMB|BODY
        se me? fue|resbalo|volteo|corrio|movio|patino ~~ y|,|pum|zas al|pal|contra suelo|piso
        pise mal|chueco|falso|torcido
        pise en falso
        me torci|esguince|descalabre ,|.|$|ayer|hoy|anoche
        me fui para|pa|hacia atras con|y|,|.|$
        me lleve la|el|un|una|# esquina|puerta|mesa|pared|marco|escalon|mueble|filo|canto
        me pegaron|patearon|golpearon|empujaron|chocaron|tumbaron|tiraron en|con|un|una|#|durisimo|fuerte|por
        me|se jale|jalo|estire|estiro|desgarre|desgarro|lesione|lastime|lastimo|rompi|rompio|torci|forcé|force|reviente|revente|esguince un|el|los|uno|mi|# FIBRE
        me|se clave|clavo|enterre|enterro|encaje|encajo|ensarte|pique|corte|corto|espiche|puye|hinque|pinche un|una|con|el|la|unos|unas|# un|una? SHARDS
        tuve|tube|sufri|tuvimos|sufrimos|ha|he un|otro|el tenido|sufrido? accidente|accidentito|percance ,|.|$|en|con|bajando|subiendo|al|ayer|hoy|anoche|y|me|fuerte|feo
        he tenido|sufrido un accidente|percance
    """,
    "danger.possible_fracture": """
        puntazo|balazo|latigazo|navajazo|cuchillada|flechazo ~ en|a|por el|la|mi espinazo|espalda|columna|cintura|lomo
        traquido|tronido|crujido|chasquido|tronada|clac ,? y|con ~ dolor ~ columna|espalda|espinazo|cadera|costilla
        rama seca ~ sono|trono|crujio ~ espalda|columna|cadera|espinazo|costilla
        sono|trono|crujio la|una|mi costilla|columna|cadera|vertebra ~~ duele|dolio|dolor
        dolor|punzada|tiron agudisimo|agudisima|durisimo|fortisimo|tremendo|brutal|filoso ~ BACKBONE
        JOINT|LIMB|hueso ~ deforme|deformada|deformado|desfigurada
        creo|parece|siento que? ~ esta|este|tengo rota|roto|quebrada|quebrado|fracturada|fracturado|partida
        se me|le BROKE el|la|un|una|los|las|# BONE
        me BROKE el|la|un|una|los|las|# BONE
        creo|parece|pienso|dicen|dice|dijo que se? me? fracturo|quebro|rompio|partio|fracture|quebre|fisuro|quebrado|fracturado
        no ~ enderezarme|enderezar|enderezo|endereza ~~ JOLT
        sono|oi|oyo|escuche|senti|fue como ~ SNAPPING
        SHOT ~ BACKBONE|cadera|rodilla|talon|pantorrilla
        sono|sonaron ~ BACKBONE|cadera|costilla ~~ quede|quedo|doblado|doblada|camino|no|dolor|duele|tieso|tiesa|grite
        senti|oi|escuche|oyo|hizo|dio ~ SNAP ~~ JOINT|BACKBONE|costilla|dolor|duele|grite|hinchado
        JOINT|BACKBONE|costilla ~ hizo|dio|pego|sono SNAP
        quede|quedo|quedado ~ clavado|doblado|trabado|tieso|pegado|atorado|engatillado de|en|con la|el BACKBONE
        JOINT|LIMB|BODY me? trono|crujio|chasqueo|sono|tronó ,? y se? ~ pelota|hinchado|hinchada|hincho|inflamo|puso|duele|dolio|morado|no|moradito
        JOLT SHARP ~~ BACKBONE
        JOLT de golpe|repente|pronto|sopeton|subito|improviso ~~ BACKBONE
        BACKBONE ~~ JOLT SHARP
        BACKBONE ~~ JOLT de golpe|repente|pronto|sopeton|improviso
        SHARP ~ JOLT ~~ BACKBONE
        LASH ~ BACKBONE|costillas|rinones
        BACKBONE ~~ LASH
        JOLT|LASH|dolor|duele|dolio ~~ de un|una segundo|momento|instante|rato|minuto al|a|para otro ~~ BACKBONE
        BACKBONE ~~ de un|una segundo|momento|instante|rato|minuto al|a|para otro
        BACKBONE ,? de un|una segundo|momento|instante al|a|para otro
        creo|parece|pienso|sospecho|dicen que? hay|tengo|tenga|es|haya|sea ~ fractura|fisura|quebradura
        hay|tengo|salio|encontraron|vieron|detectaron|diagnosticaron|confirmaron|aparecio una|otra|con? fractura|fisura|fracturita|quebradura
        dijeron|dijo|diagnosticaron ~ fractura|fisura
        fractura|fisura ~~ dijeron|dijo|salio|diagnosticaron|detectaron ~ hoy|ayer|urgencias|radiografia|placa
        crujio|trono|sono|chasqueo|revento|quebro|rompio|rajo algo ~ JOINT|LIMB|BODY|BACKBONE
        hueso|huesito|costilla|dedo|dedito|clavicula|tobillo|pie|mano|femur|pelvis BROKEN
        tengo ~ hueso|huesito|costilla|dedo|clavicula|femur|pelvis ~ BROKEN
        JOINT|LIMB|brazo|pierna|dedo ~ deforme|deformado|deformada|chueco|chueca|torcido|torcida y|, ~ hinchado|hinchada|morado|morada|inflamado|inflamada
        hueso ~ salido|asoma|asomado|afuera|expuesto
    """,
    "danger.faint_or_dizzy": """
        oscurece|oscurecio|nubla|nublo todo|la|el ,? vista|mundo?
        todo|vista se me oscurece|oscurecio|nubla|nublo|borra|borro
        se me oscurece|oscurecio|nubla|nublo la? vista|todo ~ casi|y|al|cuando
        nunca|no|jamas me mareo|desmayo ~ pero hoy|ayer|anoche|ahora|esta|este ~ si|me
        normal|malo|grave|preocuparse|preocupante|raro|comun ~ que me maree|desmaye|desvanezca
        marearse|desmayarse|marearme ~~ me|acaba|acabo acaba|paso|pasa|pasar|sucedio|dio
        da|dan|daba|daban vuelta|vueltas ~ casa|cuarto|cabeza|mundo|techo|piso|pieza|sala
        quede|quedo|estuve|cai ~ sin conocimiento|sentido|conciencia
        me voy|ando|vengo para|pal|hacia los|un|el|#? lado|lados|ladito
        bajo|baja|bajaba ~ tension|presion|azucar ~~ blanca|blanco|palida|palido|caigo|acostar|acostarme|sentar|sentarme|suelo
        me fui por|unos|unas|como|#|un ~ ratito|rato|momento|momentito|segundo|segundos|instante|minuto|minutos ,? >dice|dicen|dijo|dijeron|segun
        me fui por|unos|unas|como|#|un ~ ratito|rato|momento|momentito|segundo|segundos|instante|minuto|minutos ,? y|cuando volvi|desperte|no|abri
        me descompuse|descompense|indispuse !un !el !la !los !mi
        se me nubla|nublo|nublaba|oscurece|oscurecio|oscurecia|apaga|apago|apagaba|ennegrecio|volteaba|volteo todo
        no ~ contestaba|respondia|reaccionaba ~~ me fui|ida|ido|desconectada|desconectado
    """,
    "danger.severe_pain": """
        no hay cristiano|quien|nadie|persona|humano que? lo|la? aguante|soporte|resista
        duele|duelen|dolor ~~ no puedo|aguanto ni estar|sentarme|acostarme|pararme|moverme|voltear
        dolor|dolores ~ de|como parto|parir
        muriendo|muriendome ~ dolor|dolores
        dolor mas grande|fuerte|feo|intenso|horrible que|de ~ he|haya|mi|tenido|sentido
        duele|duelen|dolio|dolia como el|un|los|mil|# demonio|demonios|diablo|diablos|infierno
        duele|dolio|dolia|dolor ~ como si me ~ arrancaran|cortaran|quemaran|clavaran|mataran|partieran|enterraran|apunalaran|taladraran|arrancara|serrucharan|despedazaran
        duele|dolio|dolor ~ mas|peor que|q un|el|#? parto|parir
        doloron|dolorazo|dolorote|dolorsote ~~ no me? deja|dejan
        no|ni ~ puedo|pude|aguanto ~~ de lo|tanto que me? duele|dolio|dolia
        no hay pastilla|pastillas|remedio|medicina|nada que me? ~ quite|calme|baje|alivie ~ dolor
        no|ni se me|le? quita|calma|baja con nada ,? ~ dolor
        JOINT|LIMB|BACKBONE|dolor ~ me tiene|trae|hace|dejo gritando|gritar|llorando|llorar|aullando|postrada|postrado|tirada|tirado
        retorcida|retorcido|tirada|tirado|postrada|postrado|revolcandome|muerta|muerto de|del|por el? dolor
        no hay quien|nadie|persona que? aguante|soporte|resista
        duele|duelen|dolio|dolia|doliendo demasiado|exageradamente|espantosamente|terriblemente|brutalmente|horriblemente|exagerado|tremendamente|salvajemente
        duele|duelen|dolio|dolia|doliendo hasta el|la|los|mi alma|pelo|pelos|tuetano|respirar|hablar|pensar|conciencia
        duele|duelen|dolio|dolia|doliendo una barbaridad|bestialidad|brutalidad|salvajada|burrada|enormidad|atrocidad
        duele|duelen|dolio|dolia|doliendo un|como|mas huevo|cojon|carajo|vergo|chingo|infierno|demonio|condenado|condenada|maldito
        JOINT|BACKBONE|pierna|muela me esta|estan? mata|matan|mato|matando|mataba ,|.|$|de|hoy|y|pero|no
        dolor|dolores|dolorazo fuertisimo|fortisimo|intensisimo|durisimo|extremo|intolerable|maldito
        dolor ~ fuertisimo|fortisimo|intensisimo|durisimo
        fuertisimo|fortisimo|intensisimo dolor|dolores
        estoy|ando|vivo|pase|estuve|paso ~ en un|puro|#? grito
        duele|dolor|dolio ~ puro grito
    """,
    "danger.crisis": """
        sin|no|nada ~ ganas de seguir|continuar viviendo|vivo|viva|con
        miro|veo el|la|al|desde balcon|puente|ventana|azotea|via|tren ~ pienso|piensa|ganas ~ saltar|tirarme|aventarme|brincar
        me estoy|ando lastimando|cortando|quemando|golpeando|hiriendo ~~ yo misma|mismo|adrede|proposito
        lastimando|cortando|quemando|hiriendo ~ adrede
        guarde|junte|aparte|escondi|tengo ~ frasco|bote|caja|puno entero|entera|lleno|llena|completo ~ pastillas|pildoras|tabletas|somniferos
        que se acabe|termine ya? todo ,|.|$|ya|de
        yo ya? no sirvo|valgo ,|.|$|para|pa|nada
        que me lleve|atropelle|mate|aplaste un|el|una carro|camion|tren|bus|coche|metro|camioneta|moto
        que un|el|una carro|camion|tren|bus|coche|metro|camioneta me lleve|mate|atropelle|aplaste
        voy a hacer|cometer una|alguna locura|tonteria|barbaridad ,|.|$
        si me muero|muriera|muera|mato|matara ~ nadie|quien|ni
        pastillas|pildoras|tabletas juntas|juntadas|guardadas|listas|contadas ~~ tomo|trago|tomare|tragare|tomaria|todas
        tengo|junte|guarde|aparte|escondi ~ pastillas|pildoras|tabletas|frasco ~~ me las|lo|los tomo|trago|tomare
        ya no voy a estar|estare|estaria ~ este mundo
        si yo ya? no estuviera|existiera|viviera|estoy
        estaria|estarian|seria|vivirian mejor|felices|tranquilos si yo|no|sin|me
        tomarme|tomar|beber|beberme|tragarme el|un|# veneno|cloro|raticida|insecticida|acido
        quiero|quisiera|ganas|mejor|deseo ~ dejar de existir|vivir
        me pesa|cansa|agota|duele vivir|existir
        pastillas|pildoras|medicinas|tabletas ~~ tomarmelas|tragarmelas|tomarmelos|tomarme ~ juntas|todas|vez|juntos|noche
        guarde|junte|guardado|juntado|guardando|juntando|escondi|escondido ~ pastillas|pildoras|tabletas|somniferos ~~ tomarmelas|tomar|todas|juntas|acabar|vez
        no se|entiendo para|por que|q despierto|vivo|existo|naci|amanezco
        no se|entiendo para|por que|q sigo viva|vivo|aqui|viviendo ,|.|$
        me estoy haciendo|hago dano !con
        quitar|quitarme|quito|irme ~ de|del en? medio
        tengo ~ pistola|arma|soga|veneno|cuerda|navaja ~~ dejo|mirar|miro|pienso|tentacion|sola|solo
        no ~ quiero|deseo|quisiera despertarme !temprano !a !tan !tarde
        pensando|pienso|pensado ~ hacer|cometer una|alguna|# tonteria|locura|estupidez
        hacer|cometer una|alguna|# tonteria|locura|estupidez con|contra mi
        quiero|quisiera|deseo|gustaria|ganas ~ ir|irme ~ de|del este|esta? mundo|vida
        que caso|sentido|objeto|chiste|razon tiene|hay ya? de|en|para? seguir vivo|viva|viviendo|aqui
        que caso|sentido|objeto|chiste|razon tiene|hay ya? de|en|para? vivir|existir
        dios|diosito|senor|virgencita|virgen mio? ,? ya? llevame|recogeme|lleveme|recojame|llevateme
        llevame|recogeme|lleveme|recojame|llevateme ya? ,? dios|diosito|senor|virgencita|contigo
        mejor|ojala|nunca|debi no? hubiera|hubiese|haber|habria nacido
        no hubiera|hubiese|haber nacido
        ^ ya llevame|recogeme|lleveme|llevateme $
        he|habia cortado|lastimado|rajado los|las|mis brazos|venas|munecas
        la|mi|esta vida ya? no me? interesa|importa|llena|quiero|sirve|gusta ,|.|$|ya|nada|asi
        no|ni deseo|desearia|kiero|quiero|quisiera|pretendo|aguanto|pienso seguir|continuar|estar|vivir|quedarme ~ en|con este|esta mundo|vida|tierra|planeta
        no|ni deseo|desearia|pretendo|pienso vivir|existir|despertar|amanecer
        no|ni deseo|desearia|pretendo|pienso seguir viviendo|existiendo|viva|vivo
        si ya? no amanezco|despierto|despertara|amaneciera ,? mejor para|por todos|ellos|mi|ustedes|mis|nadie
        si me muero|muriera|muero ,? mejor
        termino|acabo|terminare|acabare|termina|acaba con todo|esto|todos esto? ,? ~~ adios|perdon|perdonen|perdonenme|despido|cuidense
        no|nada|ya|tampoco me? importa|importaria si|que ya? me? muero|morir|muera|muriera|morirme|mato|maten
        me da|daria igual|lo|mismo|= ~ morirme|morir|muero|muera|vivir|viva|muerta|muerto
        que mas? importa|da si me muero|muriera|mato
    """,
    # What shares the words and is no sign.
    "idiom": """
        PAINWORD N0 caidas|caida|mareos|mareo|desmayos|golpes|hormigueo|hormigueos|palpitaciones|ahogos
        ^ N0 caidas|caida|mareos|mareo|desmayos|golpes|hormigueo|hormigueos|palpitaciones|ahogos|tropezones|tropiezos|resbalones
        ,|.|y|con|e N0 caidas|caida|mareos|mareo|desmayos|golpes|hormigueo|hormigueos|palpitaciones|ahogos|tropezones|tropiezos|resbalones
        antes !de !del !que me|se ~ mareaba|dolia|ahogaba|desmayaba|caia|faltaba|dormia ~ ,? pero? ahora|hoy no ,|.|$
        transito|trafico|calor|trabajo|frio|sueno|jefe|viaje|bochorno|bus|metro|turno|transporte hoy|ya|casi|me? me? mato|mata|matan|matando
    """,
    "idiom.crisis": """
        acabar|terminar con los|las|mis|el|estos|la|estas|todos los? ejercicios|ejercicio|rutina|tarea|tareas|sesion|serie|series|terapia|talones|lista|quehacer !y !e
        transito|trafico|calor|trabajo|frio|jefe|viaje|bochorno|bus|metro|turno hoy|ya|casi|ayer? me mato|mata|matan
    """,
    "idiom.chest_or_breathing": """
        brinco|salto|vuelco el? corazon ~ cuando|al|de vi|ver|alegria|gusto|emocion
        falto|falta aire para inflar|soplar el|la|los|las|un|una|unos? globo|globos|llanta|llantas|pelota|velas|velitas|colchon
        para que entre|circule el|# aire
        ahogada|ahogado|ahogadas|ahogados|asfixiada|asfixiado|sofocada|sofocado de|en|entre tanto|tanta|mucho|puro|puras|el|las|los? trabajo|deudas|pendientes|papeles|tareas|chamba|quehacer|cuentas|tramites|pagos|juntas|tarea !al !cuando !si !subiendo !caminando
        sin aliento|aire|respiracion con el|la|ese|este gol|golazo|penal|final|partido|noticia|pelicula|novela
        golazo|gol|partidazo ~ me|nos dejo|deja sin aliento|aire|habla|respiracion
        ahogando|ahogo|ahogada|ahogado en|con los|las|tantos|tantas|puros|puras? papeles|deudas|cuentas|tramites|facturas|taxes|impuestos|recibos|pendientes
        todo|mi|el? dolor de|en mi corazon|alma le|les|te|los
    """,
    "idiom.nerve_or_bladder": """
        eche|echo|pongo|puse|meto|meti|hago|hice mas|mucha? fuerza
        LIMB|LEG|JOINT ya? tiene|tengo|agarra|agarro ya? mas|mucha|buena fuerza
        se me paso|fue la mano con|en
        mi|una|la|su|de|nuestra|otra|tu|mis tia
        ^ tia ,
        hola|oye|gracias|ay|jaja|si|no tia
        perdi|perdio|pierdo|perdido el? control remoto
        perdi|perdio|pierdo|perdido el? control de la|el|mi|los|las tele|television|tv|perro|perra|aire|situacion|ninos|nietos|clima
        con mas|mucha|buena|toda|harta fuerza
        ^ levanto|levante|levantamos|subi|subo|aprieto|aprete|hice|muevo|movi|estire|empuje|baje|siento|senti la|el|las|los|mi LIMB|LEG con fuerza ,|.|$
        <,|.|y|ya|hoy|yo|bien|que levanto|levante|levantamos|subi|subo|aprieto|aprete|hice|muevo|movi|estire|empuje|baje|siento|senti la|el|las|los|mi LIMB|LEG con fuerza ,|.|$
        ^ la|el|las|los|mi? LIMB|LEG con fuerza ,|.|$
        se? me? durmio|quedo dormido|dormida? el|la|mi|un|una ANIMAL|nieto|nieta|bebe|nino|nina en|encima|sobre ~ LIMB|regazo|brazos|mi|mia|hombro
    """,
    "idiom.fall_or_injury": """
        me caigo|caemos a pedazos|cachos|trozos
        me resbale del horario|tema
        con|las? la pierna|piernas|rodilla en alto
        queme la|el|los|las|mi lengua|paladar|comida|arroz|sopa|frijoles|tortillas|pan|cena|olla|camisa|ropa|pollo|almuerzo|sarten|azucar|pestanas !y
        queme la|el|los|las|mi lengua|paladar|comida|arroz|sopa|frijoles|tortillas|pan|cena|olla|camisa|ropa|pollo|almuerzo|sarten|azucar|pestanas y !la !el !mi !un
        me siento|sente|acuesto|acoste|hinco|arrodillo|arrodille|hinque|tumbo|tumbe|extiendo|estiro en|al el? piso|suelo a|para
        en|a|hasta|con la caida de la tarde|noche
        ^ la caida de la tarde es|cuando
        caida de la|las|los|el ventas|precios|acciones|hojas|bolsa|senal|tension
        caida del dolar|peso|pelo|cabello|gobierno|muro|internet|sistema|telon|euro
        a|hasta|con la caida del dia|sol
        choque las|los palmas|manos|cinco|vasos|copas
        ^ doble la|el|las|los rodilla|rodillas|cintura|codo|codos|cadera #|despacio|bien|sin|asi
        ^ doble la|el|las|los rodilla|rodillas|cintura|codo|codos|cadera como dijo|dijeron|me|usted|decia|indica|siempre|el|en
        y|luego|,|.|despues doble la|el|las|los rodilla|rodillas|cintura|codo|codos|cadera # veces
        con|de|a|por mi|la|el|una|un tia|tio|hermana|hermano|hija|hijo|abuela|abuelo|suegra|suegro|cunada|cunado que se cayo|callo|golpeo|quebro|rompio|fracturo|resbalo|lastimo|accidento
    """,
    "idiom.possible_fracture": """
        punalada por|en la espalda la|lo de|del
        tronido|trueno|crujido|estallido|chasquido afuera|lejos|arriba|abajo
        fractura|fisura vieja|antigua|operada|soldada|sanada|curada|pasada|consolidada !y
        quebradura vieja|antigua
        se me quebro|rompio|kebro|rompieron|quebraron un|el|unos|los|mi plato|vaso|platos|vasos|florero|celular|lentes
        se me quebro|rompio|kebro una|la|mi taza|olla|silla|liga|banda|lampara|maceta
        silla|mesa|vaso|plato|palo|banco|banda|liga|andador|baston|juguete|cama roto|rota|quebrado|quebrada
    """,
    "idiom.faint_or_dizzy": """
        casi me desmayo|desmaye|infarto|da ~ de|del|con|por|al ~~ factura|recibo|cuenta|precio|susto|boleta
        me fui en blanco !y
        da|dan|dando vueltas la|el|una idea|pregunta|cancion|asunto
        patatus|soponcio|telele|yeyo con|por|al|de el|la|los|las|ver? precio|precios|cuenta|recibo|factura|noticia|susto !y
        patatus|soponcio|telele|yeyo con|por|al|de el|la|los|las|ver? precio|precios|cuenta|recibo|factura|noticia|susto y !me !quede !perdi !fui
        vi|veo|viendo|mirando|mirar|ver las estrellas en|del|con|desde el|la|los|mi cielo|campo|noche|telescopio|playa|patio|ventana|azotea !al !cuando
        vi|veo|viendo|mirando|mirar|ver unas? estrellas en|del|con|desde el|la|los cielo|campo|telescopio|playa !al !cuando
        perdi|perder el? equilibrio ,? y|pero ~ agarre|agarro|sostuve|sostengo|detuve|apoye|recupere
        casi|poco pierdo|perdi el? equilibrio
        perdi el? equilibrio ~~ FELL|cai|caigo|suelo|piso|tierra|pegue|golpee|contra|rodilla|rodillas|sentada|sentado
        se me apago todo|toda la|el|lo luz|compu|computadora|tele|casa|celular|aparato
    """,
}
