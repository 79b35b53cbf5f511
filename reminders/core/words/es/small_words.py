"""Spanish small words: people, time, joining and denying words. Words about exercise or the body stand elsewhere."""

CONCEPTS = {
    "BUT": "pero aunque sino mas excepto",
    "AND": "y e luego despues tambien mas / ni o",
    "JOIN": "y e o u ni / tambien mas",
    "NOT": "no ni nunca jamas tampoco sin",
    "NO": "no sin cero ningun ninguna ninguno nada ni",
    "NONE": "nada ninguno ninguna ningun cero nadita",
    "NEGATOR": "no ni nunca jamas tampoco sin cero ningun ninguna ninguno nada nadie",
    "CANT": "no apenas",
    "I": "yo me mi mis mio mia mios conmigo hice termine acabe complete pude tengo ando estoy siento senti traigo quiero fui voy soy",
    "SUBJECT": "yo me mi mis",
    "SUBJECT_I": "yo hice termine acabe pude fui quise alcance lleve llegue cumpli voy estuve ando cuido hago voy",
    "MY": "mi mis",
    "THIRD": "el ella ellos su sus le les",
    "HERS": "su sus",
    "NOWISH": "ahora ahorita hoy orita horita ahora ya parada parado sentada sentado acostada caminando durante despues antes mientras cuando final principio descansando subiendo bajando",
    "NOW": "hoy ahora ahorita orita horita",
    "IF": "si",
    "FEAR": "miedo temo temor preocupa evitar prevenir riesgo peligro asusta",
    "ASKING": "puedo debo tengo es son esta hay que cuando cuanto como cual por donde quien",
    "QWORD": "que cual cuales cuando cuanto cuantos cuantas cuanta como donde quien quienes puedo debo puede es debe porque",
    "CAUSE": "porque pues ya",
    "BLOCK": "porque pq xq pues que hice hago pude puedo fui quise yo y pero cuando si mientras despues desde hasta mi alcance quiero voy",
    "CAUGHT": "agarre agarro agarrar detuve sostuve sostuvo alcance detuvo apoye",
    "CLIENTLIKE": "mama mami ma ama papa papi pa apa abuela abuelo abue abuelita abuelito esposo esposa marido mujer viejo vieja viejita viejito nana senora senor tata don dona madre padre jefa jefe tia tio patrona patron paciente suegro",
    "PERSON": "hermana hermano hija hijo nieto nieta nietos nietas vecina vecino amiga amigo comadre compadre cunada cunado suegra sobrino sobrina primo prima nina nino bebe muchacha muchacho muchachos chamaco chamacos nuera yerno doctora doctor maestra companera companero jugador gente alguien novio novia patojo patoja clienta cliente pacientes titi hijos hijas padrino madrina ahijado cura personaje actriz actor muchachita titi patojo patoja nene nena nenes chavalo chavala pelao cipote wawa guagua clienta cliente clientes alumna alumno alumnos companeros colega galan protagonista villano villana heroe heroina muchachote actores",
    "ANIMAL": "perro perra perrito perrita gato gata gatito caballo vaca gallina burro loro pajaro puerco chivo mascota perros gatos borrego becerro pollo yegua potro mula ternero",
    "THING": "celular telefono tele television luz senal internet precio precios arbol techo lampara vaso plato taza silla andador baston sistema app computadora camion carro troca pantalla llamada lista bolsa florero ladrillo rama puente barda cerca jarra olla foto temperatura lluvia nieve pelicula novela mesa servicio agua pantaleta cartera lentes llaves celu cel andamio jornal reloj teja poste estante libro control remoto termo garrafa bandeja",
    "STORY": "pelicula novela telenovela serie programa libro cuento sueno sone personaje noticias historia",
    "LONGAGO": "juventud mocedad veintes treintas chiquita chiquito nina joven juventud chica decadas novecientos",
    "AGESPAN": "ano anos mes meses decada decadas",
    "PASTSPAN": "ano mes pasado invierno verano enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
    "LAST": "pasado pasada",
    "USED": "solia chiquita chiquito joven",
    "AGOMARK": "hace pasado pasada atras hacen tiene",
    "TODAY": "hoy",
    "TOMORROW": "manana mannana",
    "WEEKDAY": "lunes martes miercoles jueves viernes sabado sabados domingo domingos",
    "MONTH": "enero febrero marzo abril mayo junio julio agosto septiembre setiembre octubre noviembre diciembre",
    "AMPM": "am pm",
    "POLITE": "hola gracias favor buenos buenas buen dias tardes noches dia saludos saludo porfa porfis pf porfavor atte cordialmente atentamente bendiciones bendicion bendiga mija mijo hijita hija nina senorita seno srita senora senor doctora doctor licenciada lic maestra joven amigo amiga jefa linda mil muchas muchisimas estimada estimado estimados oiga oye guapa corazon carino reina ok dios",
    "NAMEFRONT": "esto es de para soy habla a nombre",
    "TITLE": "senorita senora senor sra sr dra dr doctora doctor licenciada lic maestra terapeuta a todos todas muy tenga que mil muchas usted ustedes bonito feliz clinica equipo nancy le la lo los las",
    "SIGN_OFF": "atte atentamente cordialmente saludos saludo afectuosamente abrazo abrazos att sinceramente",
    "FILLER": "pues bueno ps pos este eh ah ay oiga mire fijese fijate la neta vdd verdad jaja jajaja",
    "LOL": "jaja jajaja jajajaja jeje jejeje jajajajaja ja jiji lol",
    "ART": "un una unos unas",
    "INDEF": "una un otra otro unas unos",
    "POSTPOSED": "el la los las mi mis un una a al su",
    "THE": "el la los las lo mi mis su sus",
    "THAT": "eso esto ese esa este esta esos esas estos",
    "OF": "de del a por con en al",
    "OF_MONTH": "de",
    "FILL": "es fue era esta estaba estuvo de un una el la los como a en mas menos nivel solo nomas nada diria digo que le pongo pondria puse seria anda ando andaba andaban tuve tengo siento senti llego llega llegaba subio bajo bajo hasta fue maximo max promedio entre casi tipo quedo quedaria quede ahi ya por del me unos unas aproximadamente aprox creo tantito poquito hoy ahorita ahora quiza quizas tal vez numero calificacion escala doy va si seguro no fueron sera digamos y mi al se empezo empece acabe termine dolio andube anduve traigo trae total molesto sentido pasa paso tirandole",
    "LINK": "de sola solo buena",
    "LINK_HALF": "y",
    "HALFWORD": "medio media",
    "ONEWORD": "un una uno",
    "ONE_NOT_AFTER": "cada el la ese esa este otro otra cualquier ningun",
    "ONE_NOT_BEFORE": "pie pierna rodilla mano brazo hombro tobillo dedo talon ojo tiron calambre golpe mareo dolor molestia dolorcito ardor crujido tronido poco poquito momento dia rato lado vez barco lancha bote hamaca trompo nube ratito carro camion sillon sofa parque hospital avion tren puno peso nudo",
    "ONE_AFTER": "solo nomas dolor en un de fue pain hice tambien",
    "ONE_BEFORE": "serie series set sets ronda vuelta tanda rep repeticion vez de x por y",
    "LETTERWORD": "a e o y",
}
NUMBERS = {
    "cero": 0, "un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7,
    "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13, "catorce": 14, "quince": 15,
    "dieciseis": 16, "diecisiete": 17, "dieciocho": 18, "diecinueve": 19, "veinte": 20, "veinticinco": 25,
    "treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70, "ochenta": 80, "noventa": 90,
    "sinco": 5, "ceis": 6, "cuatr": 4, "dosee": 12, "dies": 10, "dose": 12, "beinte": 20, "trez": 3, "sero": 0,
    "unito": 1, "dosito": 2, "doscito": 2, "tresito": 3, "trecito": 3, "cuatrito": 4, "cinquito": 5, "seisito": 6,
    "tre": 3,
}  # fmt: skip
NEAR_NUMBERS = {
    "ambas": 2,
    "ambos": 2,
    "par": 2,
    "primera": 1,
    "primer": 1,
    "sola": 1,
    "solo": 1,
    "doz": 2,
    "segunda": 2,
}
COMMON = frozenset(
    "el la los las de que y en un una por con para se lo me mi no si es como mas pero sus le ya o este porque esta"
    " cuando muy sin sobre tambien hasta hay donde quien desde todo nos durante todos uno les ni contra otros ese eso"
    " ante ellos e esto antes algunos que unos yo otro otras otra tanto esa estos mucho quienes nada muchos cual poco"
    " ella estar estas algunas algo nosotros hoy ayer ahora fue era soy estoy tengo hice hacer hago puedo pude son al"
    " he ha han has haya del su te va voy ando bien gracias porfa favor usted me mis".split()
)
# Who writes by ear: h is silent, b and v, s z and soft c, ll and y, qu and k sound the same.
SOUNDS = (
    ("qu", "k"), ("ch", "C"), ("h", ""), ("v", "b"), ("z", "s"), ("ce", "se"), ("ci", "si"), ("c", "k"), ("ll", "y"),
    ("ge", "je"), ("gi", "ji"), ("gu", "g"), ("w", "gu"),
)  # fmt: skip
SPELLED_OUT: dict[str, str] = {}
