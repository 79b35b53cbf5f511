"""English rules for concerns that are no danger sign: wound or clot, fever, hospital, a death, a flare, new back pain.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "concern.clot_or_wound": """
        CALF ~ SWOLLEN
        SWOLLEN ~ CALF
        WOUND ~ OOZE|red|hot|infected
        OOZE ~ WOUND
        blood clot
        dvt|clot
        CALF ~~ hot|warm|red ~~ SWOLLEN|swollen
    """,
    "concern.fever": """
        FEVER
        temp|temperature ~ 100|101|102|103|104|#
        running a temp|temperature
    """,
    "concern.surgery_or_hospital": """
        SURGERY
        in|at|from|to|the ~ hospital
        having|had|getting|need|needs|scheduled|cataract|hernia|knee|hip|bypass ~ surgery|operation|procedure|replacement|replaced
        broke|fractured my ~ hip|wrist|arm|leg|ankle
    """,
    "concern.death": """
        CLIENTLIKE|THIRD|patient|client|name DIED away|last|this|on|yesterday|in|today|peacefully|$
        CLIENTLIKE|he|she has|have|had? died|passed|deceased
        is deceased|dead
        CLIENTLIKE ~ passed away|on
        CLIENTLIKE ~ died
        he|she ~ died|passed
        has|have died|passed !the !her !his !my
        passed away
        deceased
        death of
        no longer ~ with us|living|alive
    """,
    "concern.bereaved": """
        my PERSON|CLIENTLIKE|ANIMAL ~ died|passed|death|dead
        lost my CLIENTLIKE|PERSON|ANIMAL
        FUNERAL
        since _ passed|died
        buried|bury|burying
        in mourning
        grieving|grief|bereaved
        at|to|for|from ~ funeral|wake|memorial
        late husband|wife
    """,
    "concern.flare": """
        flare up
        FLARE
        having ~ flare
    """,
    "concern.new_back_pain": """
        new ~ BACKBONE ~ PAIN|SORE
        BACKBONE ,|AND ~ new|started
        BACKBONE ~ is|its new
        new ~ PAIN ~ BACKBONE
        BACKBONE ~ PAIN|SORE ~ new|started|never|since
        PAIN ~ BACKBONE ~ new|started|since
        never|before ~ BACKBONE ~ PAIN|hurt
    """,
}
