"""What the fictional clients write, by language and way of speaking: data, as different as people are.

`{p}` is a pain rating 0-10, `{dose}` an amount such as 2x10, `{left}` an exercise left out, `{me}` the writer's first
name. A way of speaking that lacks a kind of reply takes the plain one. How the service reads them is not decided here.
"""

from collections.abc import Mapping

Kinds = Mapping[str, tuple[str, ...]]

ENGLISH: Mapping[str, Kinds] = {
    "plain": {
        "all": (
            "Done, pain {p}",
            "All done, pain {p}",
            "Did everything, pain {p} out of 10",
            "Finished them all. Pain was {p}",
            "Did all of them today, worst pain {p}/10",
            "Yes, all done. Pain {p}",
            "Y{p}",
        ),
        "part": (
            "Did half, pain {p}",
            "Did all but the {left}, pain {p}",
            "Only did some of them, pain {p}",
            "Only one set of each today, pain {p}",
        ),
        "none": ("N", "Not today", "No exercises today, too tired", "Skipped today, family visiting"),
        "no_number": ("All done!", "Done", "Did them all", "yes done"),
        "late": ("Did yesterday's exercises, forgot to write. Pain {p}", "Yesterday all done, pain {p}"),
        "chat": ("Thank you", "Thanks!", "ok thank you"),
    },
    "keen": {
        "all": ("Y{p}", "Y{p} thank you", "y{p}", "All done! Pain {p}", "Y{p} 😊", "Done before breakfast, pain {p}"),
        "part": ("All but the {left}, pain {p}",),
    },
    "terse": {
        "all": ("y{p}", "Y {p}", "Y{p}", "done {p}/10", "{p}y"),
        "part": ("half, pain {p}", "some. pain {p}"),
        "none": ("n", "N", "no"),
        "no_number": ("y", "done"),
        "chat": ("ok", "k"),
    },
    "chatty": {
        "all": (
            "Good morning dear! Did all my exercises while the soup was on, pain {p} out of 10 I would say.",
            "Well the rain kept me in so I did the whole lot. Worst pain {p}/10. The cat watched!",
            "All done, and my granddaughter counted for me, bless her. Pain {p}",
            "Hello, it is me again. I did everything on the list, pain {p}. Have a lovely day",
            "Did them all before choir practice, pain was about {p}",
        ),
        "part": ("I managed most of it but not the {left}, my neighbour came by for tea. Pain {p}",),
        "none": ("Not today dear, my sister is here from Ohio and we are baking",),
        "no_number": ("All done, and the snow is so pretty today!",),
        "chat": ("You are very kind, thank you", "Thank you so much, have a nice day!"),
    },
    "numbers": {
        "all": ("{dose} pain {p}", "{dose}, pain {p}/10", "did {dose} of everything, pain {p}", "{dose} all, pain {p}"),
        "part": ("1 set only, pain {p}", "half of it, pain {p}"),
        "no_number": ("{dose} done",),
    },
    "typos": {
        "all": (
            "all doen pain {p}",
            "did evrything pain {p}",
            "Done. pian {p}",
            "al done, pain {p}",
            "finishd all pain {p}",
        ),
        "part": ("did haf, pain {p}",),
        "none": ("not todya", "n"),
        "late": ("sory forgot to write, did yesterdays, pain {p}",),
    },
    "helper": {
        "all": (
            "Mum did all of them, pain {p}",
            "She did everything today, {p} out of 10",
            "Mum says all done, pain {p}",
            "Y{p}",
        ),
        "part": ("Mum did half, pain {p}",),
        "none": ("Mum is not doing them today",),
        "no_number": ("Mum did all her exercises",),
    },
    "couple": {
        "all": ("{me}: Y{p}", "{me} all done, pain {p}", "This is {me}, did everything, pain {p}"),
        "part": ("{me} did half, pain {p}",),
        "none": ("{me}: not today",),
        "no_number": ("{me}: all done",),
        "unsigned": ("All done, pain {p}", "Y{p}"),
    },
    "mail": {
        "all": (
            "Hello,\n\nI did all the exercises today. Pain {p} out of 10.\n\nKind regards,\nEvangeline",
            "All done, pain {p}.\n\nEvangeline",
            "Dear all,\nfinished everything, worst pain {p}/10.\nEvangeline",
        ),
        "part": ("I did half of them today, pain {p}.\n\nEvangeline",),
        "none": ("Not today, I am afraid.\n\nEvangeline",),
    },
}

SPANISH: Mapping[str, Kinds] = {
    "plain": {
        "all": (
            "Listo, dolor {p}",
            "Hice todo, dolor {p}",
            "Todo hecho, dolor {p} de 10",
            "Sí, terminé todos. Dolor {p}",
            "S{p}",
            "Ya hice los ejercicios, dolor {p}",
        ),
        "part": ("Hice la mitad, dolor {p}", "Solo hice algunos, dolor {p}"),
        "none": ("N", "Hoy no", "Hoy no pude, tengo visita"),
        "no_number": ("Todo hecho", "Ya los hice todos"),
        "late": ("Ayer hice todo, dolor {p}",),
        "chat": ("Gracias", "Muchas gracias", "ok gracias"),
    },
    "terse": {"all": ("s{p}", "S {p}", "si {p}", "S{p}"), "none": ("n", "no"), "no_number": ("si",)},
    "chatty": {
        "all": (
            "Buenos días, hice todos los ejercicios mientras oía la radio, dolor {p} de 10",
            "Hola, ya terminé todo, dolor {p}. Que Dios los bendiga",
            "Todo hecho, mi nieta me ayudó a contar. Dolor {p}",
        ),
        "part": ("Hice solo la mitad porque llegó mi comadre, dolor {p}",),
        "none": ("Hoy no, tengo a los nietos en casa",),
    },
}

PHRASES: Mapping[str, Mapping[str, Kinds]] = {"en": ENGLISH, "es": SPANISH}

# What a client answers to a question of ours, by language and the question's kind, unless her habit has its own.
ANSWERS: Mapping[str, Mapping[str, tuple[str, ...]]] = {
    "en": {
        "pain": ("{p}", "about a {p}", "{p} out of 10"),
        "amount": ("all of them", "all", "everything"),
        "meaning": ("Y{p}",),
        "settling": ("{m}", "{m} this morning"),
        "reason": ("busy", "I forgot", "too busy with the family"),
        "offer": ("no", "no thank you"),
        "effort": ("medium", "easy", "about right, medium"),
        "falls": ("no", "0", "none"),
        "where": ("my right hip", "left knee", "lower back"),
        "keep": ("keep", "keep going please"),
        "days": ("5", "6 days", "7"),
        "until": ("{date}",),
        "who": ("{me}",),
    },
    "es": {
        "pain": ("{p}", "como {p}", "{p} de 10"),
        "amount": ("todos", "todo"),
        "meaning": ("S{p}",),
        "settling": ("{m}",),
        "reason": ("se me olvidó", "estuve muy ocupada"),
        "offer": ("no", "no gracias"),
        "effort": ("medio", "fácil"),
        "falls": ("no", "0", "ninguna"),
        "where": ("la rodilla izquierda", "la cadera derecha"),
        "keep": ("seguir",),
        "days": ("5", "6"),
        "until": ("{date}",),
        "who": ("{me}",),
    },
}


def choices(language: str, style: str, kind: str) -> tuple[str, ...]:
    """Return what a way of speaking has for a kind of reply, else the plain ones of the language."""
    spoken = PHRASES[language]
    return spoken.get(style, {}).get(kind) or spoken["plain"].get(kind, ())
