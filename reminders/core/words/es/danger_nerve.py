"""Spanish rules for nerve, bladder and stroke signs, and what only sounds like them.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.nerve_or_bladder": """
        LIMB|LEG|manos|dedos sin|perdio|pierde sensibilidad|tacto|sensacion
        desde ~~ no|ni sienta|siento|sentia|senti nada|casi|bien entre|en|de ~ piernas|entrepierna|partes|genitales|abajo
        no|ni sienta|siento|sentia|senti nada|casi|bien ~ entre las? piernas|nalgas
        no ~ puedo|pude|puede|logro cerrar|abrir|apretar|agarrar|doblar|estirar el|la|los|las mano|manos|puno|dedos|boca|ojo|parpado
        no puede|pudo hablar|mover|sonreir|tragar
        cae|caido|caida|colgado un|el lado de la cara|boca
        se me esta|estan|anda|andan ~ saliendo|escapando|escurriendo|tirando ~ orina|pipi|pis|popo|caca|chis|orines
        se ~ NUMB ~~ LIMB|FACE|SADDLE|BODY|lengua
        NUMB ~ LIMB|FACE|SADDLE|lengua
        LIMB|FACE|SADDLE|lengua ~ NUMB
        NUMBONLY
        no|sin|perdi ~ siento|sentia|sensibilidad|senti|sentir ~~ LIMB|FACE|SADDLE|BODY|cuando|nada|abajo|hago|orino
        no|sin ~ mover|muevo|mueve|levantar|levanto|levanta|responde|responden|obedece|obedecen|controlar|sostiene|sostienen ~~ LIMB|pie
        LIMB ~ no ~ mueve|responde|responden|levanto|sostiene|sostienen|obedece|aguanta|siento|siente|mover|levantar|puedo
        LEG ~ BUCKLE
        BUCKLE ~ LEG|sola|solas
        LEG ~ sin fuerza|fuerzas
        sin fuerza|fuerzas ~ LIMB|en|las|la|media
        fuerza|fuerzas ~ no tengo ~ LIMB
        perdi|pierdo|perdio ~ fuerza|fuerzas
        LIMB ~ WEAK
        WEAK ~ LIMB
        debilidad
        arrastro|arrastra|arrastrando|jalando ~ pie|pierna
        pie ~ caido|arrastra|arrastro
        no ~ aguanto|aguante|aguanta|controlo|controlar|detener|detengo|retener|siento|pude|sentir|puedo|alcance|alcanzo ~ BLADDER|chorro
        no ~ puedo|podido|he ~ orinar|obrar|orinado|pipi|pis
        no ~ puedo|podido|he ~ hacer del|de|mis bano|cuerpo|vientre|necesidades
        perdi|pierdo|perdio|perdiendo ~ control ~ BLADDER|esfinter|esfinteres
        me|se oriné|orine|orino|orina|orinando|orinaba|orino|hice|hago|hizo|hace|cague|ensucie|zurre|mee|meo|cago|moje ~ encima|sin|cuenta|pipi|popo|pis|ropa|cama|calzon|chis|sola|sentir|pantalon|pantalones
        me orine|zurre|cague|mee|orino
        se orino|orina|zurro|cago|meo
        orine|orino|orina|pipi|chis|popo|pis ~ sin ~ sentir|darme|querer|cuenta|avisar|darse
        sale|salio|salia|gotea|escapa|escapo|escurre ~ orina|pipi|chis|popo|pis
        incontinencia|entumecimiento|adormecimiento
        ahi abajo ~~ NUMB|siento|dormida|dormido|adormecido
        NUMB ~ ahi abajo
        FACE ~ DROOP
        FACE ~~ chueca|torcida|caida|dormida|paralizada|ladeada|colgando
        DROOP ~ FACE
        fue|va|voltea|volteo|jalo|jala|torcio|tuerce ~ boca|cara ~ lado
        boca|cara ~ de lado
        media cara
        mitad ~ cara|cuerpo
        un lado ~ cara|cuerpo ~ NUMB|no|caido
        lado ~ cuerpo|cara ~~ NUMB|fuerza|dormido|no|debil|pesado
        SPEECH ~ SLUR
        SLUR ~ SPEECH
        habla|hablo|hablando|hablar ~ raro|enredado|mal|trabado|arrastrado|borracho|chistoso|feo|bien|chueco
        no ~ puedo|podia|pude|puede|sale|salen|salian|salia|salir|saca|encuentro|entiendo|entiende|entienden|entendemos|forma ~~ hablar|palabras|palabra|habla|dice|decir
        palabras ~ no ~ salen|salian|salieron
        no le entiendo|entendemos|entienden ~ habla|dice|nada|que
        lengua ~ trabada|traba|pesada|dormida|enreda
        derrame|embolia|derrame cerebral|ictus|apoplejia
        no ~ veo|ve|vi|mira|miro ~ ojo|lado|bien|nada|doble
        veo|vi|miro|ve ~ doble|borroso|nublado|borrosa
        mano|brazo ~ boba|bobo|tonta|inutil|muerto|muerta|paralizado|paralizada
        cae|caen|cayo|tiro ~ cosas|taza|cuchara|vaso ~~ mano|fuerza|manos
        cae ~ brazo|parpado
        peor dolor de cabeza
        no ~ responde|responden|obedece|obedecen|contesta ~ LIMB
        parestesia|parestesias|hipoestesia|paresia|hemiparesia|disartria|anestesia en silla
        perdida ~ fuerza|sensibilidad|control|esfinteres
        LIMB ~ como|de ~ trapo|gelatina|plomo|palo|corcho|madera|hule|esponja|lana
        arrastro|arrastra|arrastrando ~~ pierna|pie|martes|lunes|dias|ayer
        la|lo arrastro
        aguantar|aguanto|aguanta|controlar|controlo|contener ~ ganas ~ orinar|bano|pipi
        se ~ sale|salen|escapa|sale ~ orina|pipi|pis|caca|popo|sola|solo
        sale|escapa|salio|escapo ~ orina|pipi|pis|popo|caca|chis
        baba ~ lado
        babeo|babea|babeando ~ lado
        hablo|habla|hablando ~ como ~ borracha|borracho|papa|trapo
        hablo|habla|hablaba|hablando enredado|trabado|raro|mocho|chueco|feo|pastoso
        ojo|parpado ~ caido|cae|cayo|cierra
        un lado ~ dormido|caido|muerto|paralizado|no
        medio|media ~ cuerpo|cara|boca|lado ~ dormido|dormida|no|muerto|paralizado
        medio cuerpo
        no ~ puedo ~ sonreir|tragar|silbar|levantar ~ pie|brazo|lado|puntas
        tragar ~ no ~ puedo
        confundida|confundido|desorientada|desorientado ~ repente|hoy|no
        no ~ siento|sienti|sentia ~ cuando ~ hago|orino|bano|limpio
        al limpiarme ~ no|siento
        anestesiada|anestesiado|dormida|dormido|adormecida ~ entrepierna|partes|abajo|nalgas|ahi
        partes ~ dormidas|adormecidas|anestesiadas
        duerme|durmiendo|durmio|dormia|adormece|adormeciendo|adormecio ~ entrepierna|SADDLE|nalgas|genitales
        sin sensacion|sensibilidad|tacto|sentir en ~ LIMB|LEG|BODY|FACE|SADDLE|talon|talones
        piernas|pierna ~ aflojan|aflojaron|doblaron|vencieron|fallan|fallaron|fueron|caen|no me|sin
        me fallan|fallaron|fallo ~ piernas|pierna|rodillas
        mano|brazo ~ no ~ sirve|responde|agarra|aprieta|sostiene
        derrame|embolia|ictus|apoplejia|hemiplejia
        hormigas|hormiguitas|cosquillas|piquetitos|alfileres|agujas ~ LIMB|LEG|manos|cara|entrepierna
        cuesta|costaba|batallo ~ mover|levantar|hablar|pronunciar|decir|tragar ~ LIMB|LEG|palabras|palabra|bien
        cuesta|costaba|batallo ~ hablar|pronunciar|tragar
        pie|pierna|pata ~ arrastrando|arrastra|arrastro
        parestesia|parestesias|paresia|hemiparesia|disartria|afasia|paralisis|hipoestesia|anestesia_silla
        perdida|perdi|perdiendo|falta ~ de? ~ fuerza|sensibilidad|control|movilidad|vista|vision|habla
        LIMB|LEG ~ como|parece ~ trapo|gelatina|chicle|plomo|fideo|fideos|madera|palo|hilacho|mantequilla|algodon|corcho|muerta|muerto|muertas|trapos|esponja
        la|las|lo|los arrastro|arrastraba|vengo arrastrando
        arrastro|arrastra|arrastrando|arrastraba|jalo|jala ~ pierna|pie|pata|piernas|pies
        LEG|LIMB ~ no me|le ~ responde|responden|obedece|obedecen|hace|hacen|sostiene|sostienen|aguanta|aguantan|sirve|sirven|da|dan|sube
        no me|le responde|responden|obedece|sostiene|sostienen ~ LIMB|LEG|mano|brazo|pierna
        no|ni ~ levantar|levanto|mover|muevo|subir|doblar|sentir|siento ~ LIMB|LEG|brazo|dedo|dedos|pie|punta
        LEG ~ doblan|doblo|aflojan|aflojo|aflojaron|fallan|fallo|vencen|vencio|rinde|rinden|quedaron|flaquean|flaquea|flaqueo|flaquearon
        flaquean|flaqueo|flaquearon ~ piernas|rodillas
        no ~ aguantar|aguanto|aguante|contener|contengo|retener|retengo|controlar|controlo|detener ~ BLADDER|orinar|orina|pis|pipi|caca|popo|esfinter
        se me ~ sale|salio|escapa|escapo|escurre|sali ~ orina|pipi|pis|chis|caca|popo|todo|sola|solo|gotas|mojado
        orinar|orina|pipi|pis|bano|chis ~~ se me sale|salio|escapa|escapo
        me ~ orino|orine|hago|hice|hago|mojo|moje|ensucio|ensucie|meo|mee ~ toser|parar|pararme|cuenta|encima|cama|dormida|dormido|ropa|pararme|sentir|camino
        moje|mojo|moja|mojado ~ calzon|calzones|panal|cama|sabanas|pantalon|ropa|falda ~~ sin|cuenta|sentir|sola|orina|pipi|bano
        no ~ siento|sentia|senti|siente ~~ limpio|limpiarme|orino|bano|entrepierna|nalgas|partes|cuando|taza
        no ~ he|ha|puedo|pude|logro ~ orinar|orinado|mear|obrar
        no ~ he|ha|puedo|pude|logro ~ hacer|hecho ~ pipi|pis|popo|caca
        no me sale ~ orina|pipi|pis
        FACE|cara|boca|ojo|parpado ~ cayo|caido|caida|chueca|chueco|torcida|torcio|torcido|colgada|colgado|jalada|ladeada|volteo|fue|derrite|derretida|paralizada|paralizo|no responde
        se me ~ cae|cayo|caen|sale|salia|escurre ~ baba|babas|saliva|cafe|comida|parpado|boca ~~ lado|boca
        baba|babas|baboso ~ lado
        hablo|habla|hablaba|hablando|suena|sueno|pronuncio|pronuncia ~ como ~ borracha|borracho|trapo|papa|lengua
        lengua ~ no|se ~ traba|enreda|duerme|dormida|pesada|trapo|hace|mueve
        no ~ sale|salen|salian|encuentro|entienden|entiende|puedo|podia ~~ palabra|palabras|decir|hablar|nombre|frase
        digo|dice|decia|diciendo ~ incoherencias|disparates|cosas sin
        palabras ~ salen|salieron|enredadas|cambiadas|mochas|trabadas|pegadas|reves
        media ~ cara|lengua|boca|cuerpo ~ dormida|dormido|muerta|no|paralizada|tiesa|tieso
        medio cuerpo|lado
        un|mismo lado ~ cuerpo|cara|lengua ~~ dormido|muerto|no|flojo|pesado
        mano|brazo ~ se me ~ cae|caen|cayo|suelta ~ cosas|todo|vaso|taza|cuchara|llaves
        se me ~ caen|cayeron|cae|sueltan ~ cosas|vasos|tazas|todo|llaves|platos ~ mano|manos
        quede|quedo|quedando ~ ciego|ciega|tuerto ~ ojo|momento|rato|repente
        no ~ veo|veia|ve ~ lado|ojo|mitad
        veo|viendo|veia ~ doble|borroso|mitad|cortina|nublado
        cortina ~ ojo|vista
        dolor de cabeza ~ peor|vida|explota|trueno|repente|reventar
        chorro ~ orina
        toques|corriente|calambres ~ las dos|ambas|dos piernas
        panal ~ sin|orina|cuenta
        de repente|golpe ~ confundida|confundido|confundio|desorientada|desorientado
        confundida|confundido|desorientada|desorientado ~~ reconoce|sabe|habla|repente
    """,
    "idiom.nerve_or_bladder": """
        ^ _? no veo|ve|leo bien la|las|los|el letra|letras|letritas|numeros|pantalla|letrero|mensaje
        <,|.|y|que|porque|yo|ya|como|pero no veo|ve|leo bien la|las|los|el letra|letras|letritas|numeros|pantalla|letrero|mensaje
        cara como un|una globo|melon|sapo|tomate|pelota
        adormece|duermen|duerme|entume ~ hasta ~ ideas|neuronas|pensamiento
        comadre|vecina|vecino|amiga|amigo|hermana|hermano|prima|primo|cunada me? conto|dice|dijo|platico que se le NUMB ~ LIMB
        no puedo decir que !sienta !siento
        no|ni|nunca senti|siento|sentimos|sentia ningun|ninguna|ni? tronido|crujido|ruido|chasquido|dolor|molestia|mareo|hormigueo|malestar|cansancio
        sin|ni|cero hormigueo|hormigueos|adormecimiento|entumecimiento|calambres ,|.|$|y|ni|hoy|dolor
        ^ nada de? hormigueo|hormigueos|adormecimiento|entumecimiento|calambres
        <,|.|y nada de? hormigueo|hormigueos|adormecimiento|entumecimiento|calambres
        hago|hice|hacia|haciendo|meo|mee|orino|orine|meaba pis|pipi|encima? de la? risa|carcajada !y
        hago|hice|hacia|haciendo|meo|mee|orino|orine|meaba pis|pipi|encima? de la? risa|carcajada y !al !cuando !tambien !sin
        hago|hice|hacia|haciendo|meo|mee|orino|orine|meaba pis|pipi|encima? de tanto|tanta reir|reirme|reirnos|risa
        control ,|.|? remoto|del|de la? tele|television|tv|perro|carro|coche
        durmio ~ nalga|pierna|pie ~ manejar|sentada|sentado|jeje|jaja
        no sabe|se leer|escribir
        dentista|muela|endodoncia !ni ,? ~ boca|cara|lengua|labio ~ dormida|dormido|adormecida|adormecido
        <la|con|por|de anestesia ,? ~ boca|cara|lengua|labio ~ dormida|dormido|adormecida|adormecido
        dentista|muela|endodoncia !ni ,? ~ dormida|dormido|adormecida ~ boca|cara|lengua|labio
        <la|con|por|de anestesia ,? ~ dormida|dormido|adormecida ~ boca|cara|lengua|labio
        NUMB ~~ ya se? me? quito|paso ,? fue|es|era|estaba|por|de|tenia|estuve|nomas ~ sentada|sentado|manejar|cruzada|cruzado
        durmio ~ nalga|pompi
        perro|gato|perra|perrito|cachorro|nino|bebe|nieto|nieta|gata ya|todo|siempre? se? orina|mea
        perro|gato|perra|perrito|cachorro|nino|bebe|nieto|nieta|gata ya? se orino|meo
        perro|gato|perra|perrito|cachorro|nino|bebe|nieto|nieta|gata me orino|meo el|la|los|las|mi|toda|todo
        perro|gato|perra|perrito|cachorro|nino|bebe|nieto|nieta|gata ~ hizo|hace|hacia|hicieron pipi|popo|caca|pis|chis
        costo ~ ojo ~ cara
        risa casi|hasta|que|y? casi? me orino|meo|orine|meaba|orinaba !sin
        no|ni|sin ~ alteraciones
        me ~ orino|meo|orine|orinaba encima? de la|pura|tanta? risa !y
        cara de mucho|mucha|puro|pura? sueno|pocos|felicidad|risa
        habla|hablo|hablar ~ hasta por los codos
        se me fue la lengua
        meti la pata
    """,
}
