"""What people call the exercises in Spanish, by the words of their names ("silla?" only beside other exercise talk)."""

ALIASES = {
    "sentarse y pararse": "sentarse y pararse; pararse y sentarse; sentarse pararse; senta y para; sentar y parar; sentadilla; sentadillas de silla; sentadillas en la silla; sentada; sentadas; levantadas de silla; levantadas de la silla; levantarse de la silla; pararse de la silla; sientate y parate; el de la silla; los de la silla; lo de la silla; sit to stand; silla; sillas; sillita; silleo; sentadita y paradita; sentadita; paradita; cuclillas; cuclillas de silla; sentarme y pararme; levantarse del mueble; levantarse de la silla; levantarme de la silla; el de sentado; chair thing; levantadas?; sentar?; chair?; pararse?; sentarse?; sentarme; sentarme y pararme; pararme y sentarme; parar y sentar; levantarse; sillita; sube y baja de la silla; subir y bajar de la silla; levantarme del sofa; levantarse del sofa; sentaditas; parada de la silla; levantarme de la cama",
    "flexión en la pared": "flexion en la pared; flexiones en la pared; flexion de pared; flexion pared; flecion pared; flexiones; flexion; lagartijas; lagartija; lagartijas en la pared; planchas; push up; pushup; lo de la pared; paredes; pared; la pared; empujar la pared; empujon; empujoncito; empujar muro; muro; paredcita; paredita; wall thing; empujones; wall?; flecion; fleccion; flexion de la pared; wall push up; push?; empujar?; empujando la pared; empujar contra la pared; empujones a la pared; lo del muro",
    "elevación de talones": "pararme en puntas; pararme de puntas; pararme de puntitas; pararme en puntitas; elevacion de talones; elevaciones de talones; elevacion talones; levantar talones; levantamiento de talones; subir talones; puntas; puntitas; de puntas; de puntitas; talones; talon; talonera; taloneo; taloncitos; talonsito; puntilla; puntillas; de puntillas; punticas; en puntas; carcanal; carcanales; ponerme de puntillas; pararse en las punticas; heel raise; heels; pantorrillas?; heel?; elevacion?; elevaciones; punta?; subir los talones; levantar los talones; pararse de puntas; pararse de puntitas; empinarme; empinarse; talonsitos; talonsillos; levante talones; puntas de pie; puntas de los pies; lo de empinarse",
    "equilibrio en tándem": "un pie delante otro; un pie enfrente otro; pie delante de otro; equilibrio en tandem; equilibrio tandem; tandem; tamden; tandm; equilibrio; balance; parada en linea; pararse en linea; parado en linea; un pie delante del otro; un pie enfrente del otro; pie con pie; linea; rayita; raya; caminar en rayita; el de la rayita; fila india; pies en fila india; gallo; funambulista; pie con pie; pararse como gallo; equili; pies en linea; lo del equilibrio; equilibro; balanse; tantem; tandem stance; un pie adelante del otro; un pie delante de otro; un pie atras del otro; cuerda floja; pies en hilera; pies en fila; un pie tras otro; pararse como en la cuerda floja; pararme como en la cuerda floja; malabarista; equilibrista; tanden; tander",
    "remo con banda": "remo con banda; remo; liga; banda?; jalar liga; remar",
    "bisagra de cadera": "bisagra de cadera; bisagra; agacharse; inclinarse?",
    "caminar con peso": "caminar con peso; maleta; cargar; caminata con peso",
    "puente": "puente; puentes; levantar cadera",
    "marcha": "marcha; marchar; levantar rodillas",
    "sit to stand": "sentarse y pararse; sentadilla; silla; levantarse de la silla",
    "wall push-up": "flexion en la pared; flexiones; lagartijas; pared",
    "heel raise": "elevacion de talones; talones; puntitas",
    "tandem stance": "equilibrio en tandem; equilibrio",
    "band row": "remo; liga; banda?",
}
ORDINALS = {
    "primero": 1, "primera": 1, "primer": 1, "primeros": 1, "primeras": 1, "segundo": 2, "segunda": 2, "tercero": 3,
    "tercera": 3, "tercer": 3, "cuarto": 4, "cuarta": 4, "quinto": 5, "ultimo": -1, "ultima": -1, "ultimos": -1,
    "ultimas": -1,
}  # fmt: skip
