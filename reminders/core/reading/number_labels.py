"""What stands beside numbers, the same for every language: ratings by their company, what is past or taken back.

Each label is found like a word rule; what number it speaks of is decided in `pain.py`.
"""

# Rules of figures that speak of concepts alone; spans cover the figure they mark.
SHARED_RULES: dict[str, str] = {
    "num.rating": """
        CALLIT ~ #
        ^ # POSTURE
        # POSTURE , FILL* # POSTURE
        ARTICLE|SAYS_RATE FILL* # DASHWORD|OR FILL* #
        SAYS_RATE FILL* #
        ARTICLE #
        # ISH
        # AT? ITS? WORST
        WORST ,? FILL* #
        ITS A? FILL* # NOWISH
        JUST_AT FILL* # $
        NOWISH FILL* #
        ^ # NOWISH
        , # NOWISH
        . # NOWISH
        AND|BUT|ARTICLE|SAYS_RATE # NOWISH
    """,
    "num.rating_body": """
        BODY FILL* ,? FILL* #
        BODY _ #
        # FILL+ BODY
        # IN_BODY THE? BODYSIDE? BODY
    """,
    "num.after_done": """
        DONE|ALL|YES ,? .? FILL* # DASH|DASHWORD|OR # $|,|.
        . FILL* # DASH # $
        , FILL* # DASH # $
        ^ YES|DONE|ALLDONE ,? .? FILL* # $
        ^ YES|DONE DONE|YES|ALL|EXER ,? .? FILL* # $
        ^ YES ,? JOINAND? #
        ^ YES ,? .? #
        . YES FILL* # $
        YES ~ EXERNOUN ,? # $
        . FILL* # $
        , FILL* # $
        , # .
        ^ FILL* # ,|.
        . FILL* # ,|.
        DONE|ALL ,? FILL* # $
        DONE|ALL|YES ,? .? FILL* WITHWORD? FILL* # ,|.
        YES FILL* # $
    """,
    "num.rating_also": """
        # DASHWORD|OR FILL* #
        # NOWISH
        # POSTURE
        , FILL* # FILL* POSTURE
        # IN_BODY THE? DAYPART|NOWISH
        NOWISH FILL* #
        AFTERWORD _ FILL* #
        BUT FILL* # NOWISH
        BODY FILL* #
        # FILL* BODY
        , FILL* # ATMOVE !# !USED
        AND FILL* # $
        AND FILL* # NOWISH|IN_BODY
    """,
    "yes_report": """
        ^ YES ,? .? #|FRAC10
        ^ YES_OTHER $
        . YES SMALL $
        ^ SMALL YESKEY !# !YESKEY_NOT
        ^ YES_OTHER SMALL $
        ^ YES_OTHER SMALL ,|.|BUT|JOINAND !#
    """,
    "num.invited": """
        ^ YES ,? .? FILL* PAINISH? FILL* #
        . YES SMALL $
        ^ # YESKEY !# !YESKEY_NOT
        ^ YES_OTHER # $
        ^ YES_OTHER SMALL|TEN POLITE|CHATWORD|THANKS
        ^ YES_OTHER SMALL ,|.|BUT|JOINAND !#
    """,
    "num.retracted": """
        NOT FILL? FILL? #
        NOT YESKEY #
        # THAT? SENDER? SAIDWORD
        # FILL? MISTAKE
        INSTEADOF OF|DE|THAN FILL? #
        INSTEADOF #
        THATNUM #
    """,
    "num.said": """
        SAIDWORD ~ #
    """,
    "num.never": """
        NEVER FILL* #
        NEVER ONCE_WORD? BEEN_WORD ARTICLE? #
    """,
    "num.theirs": """
        MY|THE PERSON|CLIENTLIKE PAINISH|BODY FILL* #
        MY|THE PERSON|CLIENTLIKE THIRD? HAS_IT ARTICLE? # OF|DE PAINNOUN
    """,
    "num.alone": """
        ^ FILL* # ,
        . # , # _? $
        , # $
        , # .
        , # , !#
        . FILL* # $
        . FILL* # .
        ^ # .
    """,
    "num.past": """
        BEFOREWORD FILL* # ,|.|BUT TODAY
        # WHENWORD SENDER !DIDVERB PASTVERB
        # WASWORD FILL? WEEKDAY|YESTERDAYISH
        BEFOREWORD ~ SURGERY ~ _? FILL* #
        # BEFOREWORD ~ SURGERY
        # WASWORD BEFOREWORD ~ SURGERY
        # !DE !PAINNOUN ~~ IN_YEAR MONTH|YEAR
        YESTERDAYISH !JOINAND FILL* _? FILL* #
        LASTTIME !that FILL* #
        LASTTIME !that !few !SET !REP !EXERNOUN !ONEWORD !@ !# _ FILL* #
        LASTTIME !that !few !SET !REP !EXERNOUN !ONEWORD !@ !# _ !# _ FILL* #
        USEDTO _? _? FILL* #
        # YESTERDAYISH
        # LASTTIME !few !SET !REP !EXERNOUN !ONEWORD !@
    """,
    "num.now": """
        # TODAY >$|,|.
        ^ # ,|.
        DONE|EXERNOUN ,? PAINISH FILL* # >$|,|.
        NEVER _? NOMORE THAN? #
    """,
    "num.before": """
        BEFOREWORD ~ #
        # ~ BEFOREWORD
    """,
    "num.after": """
        AFTERWORD ~ #
        # ~ AFTERWORD
    """,
    "num.times_through": """
        USED TIMES? THROUGH
        USED TIMES EACH|ALL
    """,
}
