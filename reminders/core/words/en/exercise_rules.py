"""English rules for what is said of single exercises, and for days.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "ex.done": """
        done|did|finished|completed|complete|finish|got|knocked|managed|through|thru|went|accomplished|accomplish|nailed|crushed|performed|banged|stood|reached
    """,
    "ex.done_before": """
        all|both of? the? @
        only|just|do|made|doing
    """,
    "ex.done_after": """
        @ only ,|.|$
        @ alone
        yes|yep|yeah|yup|emojiyes|check|full|fine|good|ok|okay|y|easy|all|ya|perfect|too|also
    """,
    "ex.part": """
        half|halfway|partial|partly|partially|sorta|kinda
        some of
        most of
        one|left|right|good|bad side|leg|foot ONLY?
        ONLY one|left|right|good side|leg|foot
        didnt|couldnt|cant finish|complete
        not all
        a few
        a bit|little
    """,
    "ex.not": """
        didnt|dont|couldnt bother|bothered with|w?
        no|nope|none|nah|skipped|skip|missed|zero|emojino|not|nothing|forgot|omitted|avoided|ditched|nixed|skiped|zip|zilch|deferred|declined|na
        didnt|dont|cant|couldnt|havent|never|wouldnt|wasnt
        didnt|dont|cant|couldnt|havent|never|not|wouldnt do|get|did|try|manage|done|finish|attempt|make|have|happen ~ to|time?
        left out|off|undone
        leaving|leave out|off
        passed on
        sat out
    """,
    "ex.but": """
        except|but|minus|without|excluding|cept|besides|excep|barring|save|xcept
        apart from
        other than
    """,
    "ex.not_after": """
        @ ,? tomorrow|later|pending
    """,
    "day.today": """
        today|todays|tonight
        this morning|afternoon|evening
    """,
    "day.yesterday": """
        yesterday|yesterdays|yday
        last night|nights|evening
    """,
}
