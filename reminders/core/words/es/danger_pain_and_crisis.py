"""Spanish rules for unbearable pain and for words of self-harm.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.severe_pain": """
        dolor ~ no baja|bajo|bajaba de 8|9|10|ocho|nueve|diez
        dolor ~~ paso|pasa|mas de lo que ~ puede|puedo|aguanta|aguanto|soporto|soporta
        mas de lo que ~ puede|puedo aguantar|soportar|tolerar
        dolor del demonio|diablo|infierno|carajo
        no aguanto|soporto|resisto la|el ciatica|lumbago|hernia|espalda|rodilla|cadera|artritis|reuma
        SEVERE
        dolor me tiene|trae|tenia|hace|hizo gritando|gritar|llorando|llorar|aullando|doblada|doblado|retorciendo|retorcida|retorcido|postrada|postrado
        no ~ aguanto|soporto|aguante|resisto|tolero|aguantando|soportar|aguantar|aguanta|soporta|puedo ~ dolor|mas
        ya no aguanto !pisar !parada !parado !sentada !los !las !mensajes
        dolor|duele ~~ no ~ aguanto|soporto|aguante|resisto|aguantar|soportar
        dolor|duele|doliendo|dolores ~~ no ~ puedo|pude|podia|deja ~ moverme|mover|caminar|dormir|levantarme|parar|pararme|respirar|pisar|enderezar
        dolor ~ matando|mata|muerte|infierno|infernal|brutal|insufrible|horroroso|perro|desgraciado|cabron
        matando ~ dolor
        me muero de|del dolor
        muero ~ dolor
        me esta|estan|tiene matando ~ !de !hambre !calor !nieto !risa
        peor dolor de|en mi|la vida
        peor dolor que|imaginable|posible|jamas|nunca
        dolor mas fuerte ~ vida
        lloro|llore|llorando|grito|grite|gritando|chillando|llorar|gritar|aullando ~~ dolor|duele
        dolor|duele ~~ llorar|llorando|gritar|grito|lloro|grite|gritos|chillar|vomite|vomitar
        dolor|duele _? que|tan|tanto ~ desmayo
        retuerzo|retorciendo ~ dolor
        mas de 10|diez
        no ~ lo|la|los|las aguanto|resisto|soporto|tolero
        ya no ~ resisto|soporto|doy
        mas de lo que puedo|aguanto
        no cabe en ~ escala|escalita
        dolor ~ matando|bestial|horrible ~ no|grito|lloro|aguanto
        peor dolor ~ mi vida
        nunca ~ dolor ~ asi|tan
        fuera de ~ escala
        me parte|partio ~ dolor
        rabiando|rabio|rabiar ~ dolor
        dolor ~ rabiar
        veo ~ diablo|estrellas ~ dolor
        dolor ~ estrellas
        prefiero ~ me corten|corten|arranquen
        duele|dolio|dolia ~ como nunca|jamas
        duele|duelen|dolia|dolio ~ horrores|rabiar|morir|infiernos|chingos|madres
        ya? no ~ lo|la|los|las resisto|aguanto|soporto|aguante|tolero !a !al
        no se aguanta|soporta|resiste|tolera
        no ~ le? ~ deseo|desea ~ a nadie ~~ dolor|resisto|aguanto
        dolor ~~ no ~ desea|deseo ~ nadie
        dolor ~~ no ~ deja|dejan|dejaba ~ pensar|vivir|dormir|hacer|hablar|comer|descansar|sentar|sentarme|ni
        dolor|duele ~ no cabe|baja|quita ~ escala|escalita|nada|numero
        mas de lo que ~ aguanto|puedo|soporto|aguantar
        dolor ~~ llorar|llorando|gritar|gritando|aullar|chillar|berrear|revolcar|retorcer|retuerzo|revuelco|subo por las paredes
        llorar|llorando|gritar|gritando|llorado|lloro|grito|aullo|berreo ~ dolor|duele
        retuerzo|retorciendo|revolcando|revuelco|muerdo|arranco ~~ dolor|duele
        me ~ parto|muero|mata|matan|parte|rompe|desgarra|despedaza ~ dolor|dolores
        dolor ~ mata|parte|espantoso|salvaje|bestial|atroz|criminal|endemoniado|horroroso|insoportable|brutal|inhumano
        atroz|espantoso|horroroso|bestial|brutal|inhumano dolor
        peor ~ dolor ~ vida|he|parto
        peor que ~ parto|parir
        subo|subiendo|subirme ~ por las paredes
        ver|veo|viendo ~ diablo|estrellas ~ dolor
        dolor|duele ~~ ver ~ estrellas|diablo
        quiero arrancarme|cortarme ~ pierna|brazo|cadera|espalda
        arrancar|cortar|corten|arranquen ~ pierna|pata|brazo|cadera ~ dolor|ya
        rabiando|rabiar|rabio ~ dolor
        mas de ~ diez|10 ~ dolor
        pasa de ~ diez|10
    """,
    "idiom.severe_pain": """
        insoportable|insufrible|inaguantable esperar|tanto
        aguanto|soporto a los|las|mis|esos|esas|mi|ese|esa|tanta !hora !noche
        me|nos estan|esta|van|va? matando|matar|matan con tanto|tanta|tantos|tantas|ese|esos|estos talon|talones|ejercicio|ejercicios|sentadilla|sentadillas|lagartijas|series|silla
        calor|frio|ruido|telenovela|novela|trafico|vecino|vecina|tramite|clima|humedad|musica|bulla tan|muy|mas? insoportable|insufrible|intolerable|inaguantable !el !la !mi !este
        ^ el|la|este|esta|un|ese|esa|mucho|hoy|que? calor|frio|ruido|telenovela|novela|trafico|vecino|vecina|tramite|clima|humedad|musica|bulla esta|es|tan|muy tan|muy? insoportable|insufrible|intolerable|inaguantable !el !la !mi !este
        <,|.|y|que|porque|pero|hace|hay|pues el|la|este|esta|un|ese|esa|mucho? calor|frio|ruido|telenovela|novela|trafico|vecino|vecina|tramite|clima|humedad|musica|bulla esta|es|tan|muy tan|muy? insoportable|insufrible|intolerable|inaguantable !el !la !mi !este
        insoportable|insufrible|intolerable|inaguantable el|la|este|esta|tanto|tanta|ese|esa calor|frio|ruido|telenovela|novela|trafico|vecino|vecina|tramite|clima|humedad|musica|bulla
        esperar|espera|fila|cola|papeleo ~ ~ es|esta|fue insoportable|insufrible|intolerable|inaguantable
        lloro|llore|llorar|llorando|grite|grito de gusto|risa|emocion|alegria|felicidad|coraje !y !pero
        lloro|llore|llorar|llorando ~ novela|pelicula|cebolla|boda
        no ~ lo|la|los aguanto ~ calor|frio|vecino|vecina|tele|ruido|suegra|cunado
        no aguanto ~ a mi|la PERSON
    """,
    "danger.crisis": """
        carta|cartas|nota|notas de despedida a|para|pa mi|mis
        pido|ruego|rezo|pidiendo|rogando|rezando|suplico ~ que|pa|para me? muera|lleve|recoja|morirme|llevarme|mori
        no llego|llegare|llegar|llegue viva|vivo a|al|hasta
        carta|cartas|nota|notas de despedida
        si no fuera|fuese|juera|estuviera|estuvieran|tuviera por? ~~ me habria|hubiera|hubiese|abria|ubiera matado|ahorcado|colgado|tirado|suicidado|quitado|aventado|envenenado|pegado|ido
        me habria|hubiera|hubiese|abria|ubiera matado|ahorcado|colgado|tirado|suicidado|quitado|aventado|envenenado|pegado|ido
        espero|esperando|espera|deseo|anhelo la muerte
        irme|voy|vaya de este mundo
        si tuviera ~ pistola|arma|veneno ~~ no|estaria|mataria|acabaria
        si no despierto|amanezco|despertara|amaneciera ~ mejor|igual|gracias|descanso
        mejor si no despierto|amanezco
        descansar para|pa siempre
        quiero|quisiera|kiero|ganas|gustaria|prefiero|preferiria|ojala|deseo|pienso|pensado|penso ~ morir|morirme|muera|muriera|matarme|muerta|muerto|desaparecer|despertar|irme|acabar
        no|ni ~ quiero|kiero|ganas|gustaria|quisiera|quiere ~ vivir|viva|vivo|despertar|seguir|estar|existir|vida|amanecer
        no quiero ~ seguir|vivir ~ asi|aqui|viviendo
        ganas de ~ vivir|seguir|morir|morirme|nada
        no ~ ganas ~ vivir|viva|seguir
        matarme|suicidarme|ahorcarme|dispararme|colgarme|envenenarme|quitarme la vida
        quitarme ~ vida
        quitar|quito|quite ~ vida
        SUICIDE
        hacerme|hacer|haga|hago ~ dano
        lastimarme|cortarme|danarme
        acabar|terminar|acabe|acabo con ~ todo|mi|vida|esto
        acabar ~ con mi vida
        no ~ sentido|caso|chiste|motivo|razon|veo|vale ~~ vida|vivir|viva|seguir|viviendo
        vida ~ no ~ sentido|vale
        sin ganas de vivir
        cansada|cansado|harta|harto de vivir|la vida|todo|existir
        mejor ~ muerta|muerto|muero|morirme|estaria|sin mi
        mejor me muero|mato
        estaria|estarian|estaran|estan|seria mejor ~ muerta|muerto|sin|muriera
        sin mi ~ mejor
        mejor|tranquilos sin mi
        nadie ~ extranaria|extrana|necesita|importo|quiere|echaria
        soy|son|siendo|ser ~ carga|estorbo ~~ muero|morir|muerta|vivir|todos|familia|hijos
        quitar|quito|quitarles|dejar ~ carga
        para que vivo|vivir|sigo|existo|estoy
        ni con mi|esta vida ,|.|$
        dormirme ~ no despertar
        no despertar|amanecer
        tomarme|tome|tomar|tragarme|tragar|tomando ~~ todas|frasco|bote|puno ~~ pastillas|medicinas|medicina
        pensando|pensado|pienso|viendo|mirando|juntando|guardando|guardado|juntado|contando ~~ PILLS
        ya no puedo ~ vivir|vida
        que me lleve dios|diosito|senor|muerte|la
        dios|diosito|senor ~ lleve|recoja|recoger
        reunirme|irme|alcanzar|estar con ~~ difunto|difunta|viejo|esposo|el|ella|dios ~ ya|cielo
        despedirme de todos
        tirarme ~ puente|tren|balcon|carro|ventana
        me quiero ~ matar|morir|ir de este
        quiero matarme|morirme|colgarme|desaparecer
        chato|chata|harto|harta|cansado|cansada|hasta ~ de ~ vivir|esta vida|la vida
        tirarme|aventarme|lanzarme|arrojarme ~ metro|tren|puente|carro|balcon|rio|ventana|azotea|vias
        pensado|pienso|pensando|penso|piensa ~ tirarme|matarme|ahorcarme|acabar|quitarme|morir|morirme|suicidio|aventarme
        tomarme|tragarme|tome|tomar|empastillarme ~ todas ~ pastillas|pastillas
        todas las pastillas ~ vez
        ya no ~ quiero|vale|aguanto|puedo ~ vivir|vida|existir
        nadie ~ necesita|extranaria|llorar|notaria|importo
        necesita nadie
        mejor ~ no ~ despertar|existir|haber nacido
        ojala ~ no despierte|amanezca|muera|muriera
        no ~ vale ~ pena ~ vivir|seguir
        no ~ encuentro|veo|hallo|tiene ~ sentido|chiste|caso|salida ~~ vivir|vida|viva|seguir
        ya me quiero ~ ir|morir
        despedi|despedirme|despedida|carta|cartas ~ hijos|familia|todos|despedida
        acabar ~ de una vez ~ todo|vida
        cortarme|cortando|corte ~ venas|brazos|munecas|proposito
        a proposito ~ corte|pastillas
        para que ~ vivo|sigo|vivir|despierto
        estorbo|estorbando|carga ~~ morir|muera|muerta|mejor|todos
        no ~ aguanto|soporto ~ vivir|viviendo|existir
        no puedo ~ vivir|seguir asi|mas
        pa|para que ~ sigo|seguir|vivo|vivir viviendo|vivir|viva|$
        mejor|ojala que ~ me muera|muriera
        mejor ~ no ~ existir|vivir|haber
        no|ni|sin ~ razon|razones|motivo|motivos|fuerzas ~ vivir|seguir|viviendo
        nadie ~ extranar|extrane|extranara|llorar ~ cuando|si ~ muera|muero|falte|falta
        me|se ~ quiero|quisiera|voy|kiero|provoca|gustaria|pienso ~ matar|morir|ahorcar|colgar|suicidar|tirar|aventar|lanzar !de ~ !risa
        me quiero|quisiera|kiero matar|morir|ahorcar|colgar|tirar|aventar
        pensado|pienso|pensando|penso|pensaba|ganas|idea|ideas ~ tirarme|aventarme|lanzarme|colgarme|ahorcarme|matarme|cortarme|quitarme|arrojarme|saltar|suicidarme|tomarme|tragarme|morirme|desaparecer
        tirarme|aventarme|lanzarme|arrojarme|tirar|saltar ~ metro|tren|puente|rio|ventana|azotea|balcon|barranco|camion|vias|carro|piso|techo
        chato|chata|harta|harto|aburrida|aburrido|cansada|cansado|podrida|podrido|hastiada|hastiado de vivir|existir
        chato|chata|harta|harto|aburrida|aburrido|cansada|cansado|podrida|podrido|hastiada|hastiado de esta|la|mi vida
        matarme|suicidarme|ahorcarme|colgarme
        no ~ me? ~ necesita|extrana|quiere|hace|echa|echaria ~ nadie ~~ pastillas|morir|matar|muero|vivir|mejor|irme
        a nadie le ~ importo|importa|hago|haria
        nadie ~ va|notaria|extranar|extranaria|daria ~ falta|cuenta|si ~~ muero|voy|muriera|falto
        tomarme|tomar|tragarme|tome|trague|tragar ~ todas|todo|frasco|caja|bote|puno ~ pastillas|remedios|medicinas|pastilla|somniferos
        pastillas ~~ todas|juntas|frasco|acabar|dormir ~~ vez|siempre|despertar|acabar|vivir|morir
        dormir|dormirme|acostarme|acueste ~~ no ~ despertar|despierte|despertarme|amanecer|levantarme
        no ~ quiero|quisiera|deseo|quiere ~ despertar|amanecer|viviendo|vivir|existir|viva|vivo
        ojala ~ no ~ despierte|despertara|amaneciera|amanezca
        ojala ~ me ~ muera|muriera|lleve|llevara
        que ~ dios|diosito|senor ~ me ~ lleve|recoja|quite
        ya ~ que me lleve
        para que ~ vivir|vivo|viva|naci
        para que ~ seguir|sigo|estoy ~~ vivir|viva|vivo|vida|viviendo
        mejor ~~ tierra|muerta|muerto|panteon|cementerio
        bajo tierra
        sobro|estorbo|carga|inutil ~~ mejor|muerta|muerto|vivir|muero|morirme|irme|descansen|descansan
        descansarian|descansen|descansan ~ de mi
        esta|mi vida ~ no ~ vale|sirve|sentido
        no ~ vale ~ vivir|viviendo
        no ~ vale ~ pena ~ vivir|viviendo|vida
        corte|corto|cortando|corté|hago|hice|lastimo|lastime ~ adrede|proposito|dano|venas|munecas|brazos
        me ~ corte|corto|queme|lastimo ~~ proposito|adrede|sentir
        tengo ~ pistola|soga|veneno|cuerda|navaja ~~ lista|listo|mano|pensando|acabar|usar
        carta|cartas ~ de? despedida|despidiendo
        despedirme|despido|despedi ~ todos|hijos|mundo|vida|ustedes ~
        me quiero desaparecer|ir ~ mundo|vida
        borrarme del mapa|mundo
        acabar|terminar ~ con ~ todo ~ vez|ya|siempre|para
        acabar|terminar ~ este? ~ sufrimiento
        no ~ le ~ veo ~ salida|sentido|caso ~~ vida|vivir|nada|seguir
    """,
    "idiom.crisis": """
        no quiero seguir con la|el|esa|ese serie|novela|libro|dieta|tejido|clase|curso|trabajo !ni !,
        serie|pelicula|novela|libro|noticia|documental|obra ~ suicidio|suicida y me|nos|se !dan !dieron !da
        tome|tomo todas las|mis pastillas de la|el|mi presion|azucar|colesterol|tiroides|manana|noche|corazon|dia como|, siempre
        no pienso|planeo|voy a? morirme|morir todavia|aun|tan|pronto
        ganas de vivir me|nos sobran|sobra
        me|nos sobran las? ganas de vivir
        matar|matando entrenando|trabajando|corriendo|ejercitandome
        no quiero seguir|continuar en|con|recibiendo esto|los|estos|el|la|lo|sus|tantos de? los|el|la? mensajes|mensaje|avisos|textos|recordatorios
        serie|pelicula|novela|libro|noticia|documental|obra ~ suicidio|suicida !y
        serie|pelicula|novela|libro|noticia|documental|obra ~ suicidio|suicida y no|ya|hice|lloramos|lloro|llore|que|termine|acabe
        ^ un|una senor|senora|muchacho|muchacha|joven|actriz|actor|hombre|mujer|cantante que se ~ quitar|quito|mato|colgo|suicido|matar
        <de|vi|vimos|sobre|era|habia|conoci|hay|salio|,|.|y|a|por|porque|donde|con|contra un|una senor|senora|muchacho|muchacha|joven|actriz|actor|hombre|mujer|cantante que se ~ quitar|quito|mato|colgo|suicido|matar
        suicidio de un|una|la|el|aquel _ !pienso !quiero !y
        no porque ~ quiera morir|morirme
        me quiero matar|morir LOL !no !de
        me quiero matar|morir , LOL !no !de
        me quiero matar|morir con|por|de ~ LOL !no
        muero|morir|matar|mata|matan|morirme de la|pura|puro|tanta|tanto|el? risa|hambre|sueno|verguenza|ganas|amor|frio|calor|aburrimiento
        voy a morir de amor
        tiro|tirarme ~ piso ~ ejercicio
        tirarme ~ cama|sofa|sillon|alberca|playa
        me quiero morir de|por la|pura|tanta|el? verguenza|pena|risa|calor|ganas
        acabar|terminar con todo|toda|todos lo? de? la|los|el|mi|mis|las? rutina|ejercicios|lista|pendientes|quehacer
    """,
}
