"""Spanish rules for concerns that are no danger sign: wound or clot, fever, hospital, a death, a flare, new back pain.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "concern.clot_or_wound": """
        CALF ~ SWOLLEN
        SWOLLEN ~ CALF
        WOUND ~ OOZE
        OOZE ~ WOUND
        coagulo|trombosis
    """,
    "concern.fever": """
        fiebre|calentura|escalofrios
        temperatura ~ #
    """,
    "concern.surgery_or_hospital": """
        SURGERY
        me quebre|fracture ~ cadera|brazo|muneca|pierna|tobillo
    """,
    "concern.death": """
        CLIENTLIKE ~ DIED
        fallecio|falleció
        ya no esta con nosotros
        DIED ~ CLIENTLIKE
        senora|senor ~ fallecio|murio
    """,
    "concern.bereaved": """
        se murio|fallecio ~ mi
        murio|fallecio mi
        mi PERSON|CLIENTLIKE|ANIMAL ~ murio|fallecio
        FUNERAL
        luto|duelo|velorio|entierro|funeral
    """,
    "concern.flare": """
        brote
        crisis de dolor|artritis|ciatica
    """,
    "concern.new_back_pain": """
        dolor|duele ~ nuevo ~ BACKBONE
        dolor nuevo
        BACKBONE baja? ,|y ~ nuevo|nueva|reciente|empezo
        BACKBONE ~ es|son nuevo|nueva
        BACKBONE ~ nuevo|nunca|antes|desde
    """,
}
