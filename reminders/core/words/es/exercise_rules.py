"""Spanish rules for what is said of single exercises, and for days.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "ex.done": """
        hice|hize|termine|acabe|complete|listo|hecho|hechos|avente|hizo|pude|done|logre|ise|hicimos|realice|cumpli|hecha
    """,
    "ex.done_before": """
        puro|pura|puros|puras
        todo|todos el|los|lo|la @
        solo|nomas|solamente|unicamente|namas
        nada mas
    """,
    "ex.done_after": """
        @ nomas|namas|solamente ,|.|$
        @ nada mas
        si|ya|completo|completos|completa|completas|bien|emojiyes|todo|todos|perfecto|facil|ok|toditos|tambien|enteros|sip
    """,
    "ex.part": """
        a medias
        mitad|medias
        solo|nomas ~ con ~ derecha|izquierda|un|una
        solo|nomas ~ lado|derecha|izquierda|derecho|izquierdo
        no ~ todo|completo|termine|complete
        solo # SECNUM
        solo SECNUM
    """,
    "ex.not": """
        me la|lo|los|las salte|brinque
        nada !mas
        no|ni|cero|falto|faltaron|faltan|salte|brinque|emojino|tampoco|pendiente|omiti|nothing
        no ~ hice|pude|hago|hize|termine|anime|quise
        ni los|las|lo|el|la toque|hice
    """,
    "ex.but": """
        menos|excepto|sin|salvo|quitando|exepto
    """,
    "ex.not_after": """
        @ ~ me falto|falta
        @ ~ quedo|quedaron|queda para|pa manana|luego
        @ lo|la|los|las dejo|deje|salte|brinque
        @ ,? manana|pendiente|luego
    """,
    "day.today": """
        hoy
        esta manana|tarde|noche
    """,
    "day.yesterday": """
        ayer|anoche
    """,
}
