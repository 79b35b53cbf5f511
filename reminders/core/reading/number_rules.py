"""The grammar of numbers in replies, the same for every language: it speaks of concepts, the words come from words/.

Order is meaning: each number takes the role of the first rule that claims it. `roles.py` applies them.
"""

# (role, pattern); a number that a rule claims is out of reach for the rules after it.
NUMBER_RULES: tuple[tuple[str, str], ...] = (
    ("pain_level", "^ SMALL YESKEY !# !YESKEY_NOT"),
    ("pain_level", "^ YES ,? .? SMALL ALLWELL"),
    ("pain_level", "^ YES_OTHER SMALL $"),
    ("pain_level", "^ YES JOIN SMALL $"),
    ("pain_level", "^ NO_KEY SMALL !# !SET !REP !X !OF !EXERNOUN !YESKEY_NOT"),
    ("other", "DATE|CLOCK|PHONE|PRESSURE"),
    ("pain_one", "# IN_BODY ARTICLE? RATE OF_SCALE? FROM_SCALE? # RANGE|TO_SCALE|DASH TEN"),
    ("other", "INTIME # ,|.|$"),
    ("other", "TOOKMED FILL? #"),
    ("other", "THE # BODY|SIDEWORD"),
    ("other", "HOURPREP # _ PAINNOUN"),
    ("other", "# OUTOF OF? TEN EXERNOUN"),
    ("other", "FRAC10 EXERNOUN"),
    ("count_of", "# OUTOF|OF OF? THE? # NOWISH"),
    ("all_count", "ALL|THE THE? # NOWISH"),
    ("other", "DIDVERB FILL? # JOINAND|BUT|CAUSE|NOWISH"),
    ("other", "ONLY # NOWISH"),
    ("other", "CAUSE FILL? DIDVERB #"),
    ("sets_only", "CAUSE FILL? # SET"),
    ("other", "THE? # JOINAND THE? # FILL? HURTVERB"),
    ("other", "FROM_SCALE #|ONEWORD TO_SCALE TEN"),
    ("other", "CLOCKPREP THE? # IN_BODY THE DAYPART|$"),
    ("other", "TO_SCALE HOURSURE #"),
    ("pain_first", "NEARER TO_SCALE? A? # THAN TO_SCALE? A? #"),
    ("other", "NOTREACH NEARER? TO_SCALE? ARTICLE? #"),
    ("other", "NOT FILL? REACHES TO_SCALE? ARTICLE? #"),
    ("other", "# OUTOF_THIRDS"),
    ("other", "MINUSWORD #"),
    ("other", "GOAL FILL? #"),
    ("other", "THE # NOWISH? NOT"),
    ("pain_level", "# OF_SCALE THE? PAINISH RATE"),
    ("pain_level", "RATINGWORD FILL* #"),
    ("frac_pain", "PAINISH FILL* ,? FILL* FRAC10"),
    ("other", "FRAC ~ FRAC10"),
    ("other", "FRAC10 ~ FRAC"),
    ("other", "RATE FILL* # RANGE #"),
    ("other", "WASWORD # TOOHARD"),
    ("other", "GOINGBACK BODY FILL* CLOCKPREP #"),
    ("rated", "WASWORD ARTICLE SMALL WHENWORD"),
    ("other", "AGE_WAS FILL* # WHENWORD"),
    ("other", "INSTEADOF OF? #"),
    ("other", "MEASURE_BEFORE OF|FILL* ,? # OVER? #?"),
    ("other", "# over # >$"),
    ("other", "BIG over BIG"),
    ("other", "# RANGE # MEASURE_AFTER|AMPM"),
    ("other", "# MEASURE_AFTER"),
    ("other", "# HALF_LINK? MEASURE_AFTER"),
    ("other", "# OF_MONTH MEASURE_AFTER"),
    ("other", "# AMPM"),
    ("other", "MONTH THE? # RANGE MONTH? #"),
    ("other", "MONTH THE? #"),
    ("other", "# OF_MONTH? MONTH"),
    ("other", "THE # RANGE|to THE? # ORD"),
    ("other", "# ORD"),
    ("other", "YEAR"),
    ("sets_reps", "FEW TEN YES_OTHER"),
    ("second", "# RANGE # EACH? SEC"),
    ("second", "# EACH? SEC"),
    ("minute", "# RANGE # TIMEUNIT"),
    ("minute", "# TIMEUNIT"),
    ("other", "AGE_BEFORE # AGE_NEXT"),
    ("other", "UNTIL_WORD THE? #"),
    ("frac_all", "@ ,? FRAC10"),
    ("frac_pain", "# RANGE FRAC10"),
    ("frac_pain", "FRAC10"),
    ("pain_of", "# RANGE # OUTOF OF? TEN"),
    ("pain_of", "# OUTOF OF? TEN"),
    ("pain_of", "PAINISH|RATE FILL* # OF_SCALE TEN"),
    ("pain_of", "PAINISH _ ,? FILL* # DE TEN"),
    ("pain_of", "# DE TEN DE? PAINISH"),
    ("other", "OUTOF OF? TEN"),
    ("sets_reps", "DID # DE A? #"),
    ("not_amount", "NOTNUM # X # REP|SET?"),
    ("not_amount", "NOTNUM # SET"),
    ("not_amount", "SENDER SAIDWORD ~ # SET"),
    ("not_amount", "SELFSAID # X # REP|SET?"),
    ("half_set", "# SET LINK_HALF LINK_HALF? HALFWORD"),
    ("sets_only", "# X|DE ALL"),
    ("sets", "ALL X #"),
    ("sets_reps", "# X # X # REP|SET?"),
    ("sets_reps", "# X|TIMES FILL? # X|TIMES"),
    ("sets_reps", "# X # REP|EACH?"),
    ("sets_reps", "# X DE|OF A? #"),
    ("reps_sets", "@ ,? X # # TIMES"),
    ("x_count", "@ ,? X # SET?"),
    ("sets_only", "BODY X # SET?"),
    ("other", "SHEETWORD SAYSWORD # X # REP|SET?"),
    ("sets_only", "# X SECNUM"),
    ("sets_only", "# SET|@ OF|X|FILL? SECNUM"),
    ("sets_only", "# SECNUM"),
    ("sets_reps", "# SET ,? # OF? EACHWORD"),
    ("reps_sets", "# OF? EACHWORD ,? # TIMES"),
    ("sets_only", "# OF|DE EACHWORD"),
    ("de_amount", "# DE A? #"),
    ("first_sets", "# OUTOF|OF OF? THE? # @? SET"),
    ("sets", "N1 N1 SET"),
    ("sets_reps", "# SET OF|X|FILL|,|@|AND? OF|FILL? # REP|X|EACH? "),
    ("sets_reps", "# SET OF THE? #"),
    ("sets_reps", "# SET FILL|X? FILL? # REP"),
    ("sets_reps", "# SET ,? # EACHWORD"),
    ("reps_sets", "# REP FILL|X|OF|,|AND? FILL|THE? # SET"),
    ("reps_sets", "# @ # SET"),
    ("reps_sets", "# AND|, # SET"),
    ("sets_reps", "SET OF|FILL? # REP?"),
    ("sets", "# @ SET"),
    ("ex_two", "@ ,? # ,? #"),
    ("frac_sets", "FRAC ,? @"),
    ("frac_sets", "@ ,? FRAC"),
    ("paired", "# JOINAND|AGAIN|, JOINAND|AGAIN? ANOTHER? # MORE_REPS"),
    ("of_ex", "# OUTOF|OF OF? THE? # IN_BODY? THE? @"),
    ("of_ex", "@ FILL? FILL? # OUTOF|OF OF? THE? #"),
    ("count_of", "# OUTOF|OF OF? THE? #"),
    ("same", "# ~~ ANOTHER #"),
    ("same", "# ~~ THE OTHERS #"),
    ("same", "# ~~ # MORE_REPS"),
    ("number_ex", "@ ALL #"),
    ("all_count", "ALL|THE THE? # $"),
    ("all_count", "ALL|THE THE? # EXERNOUN|STOP|COMMA|SIDEBOTH|DONE|ALL"),
    ("all_count", "# EXERNOUN"),
    ("other", "OTHERS FILL? #"),
    ("other", "THE REST_ALL FILL? N0"),
    ("other", "# NOT WASWORD? FILL? PAINNOUN"),
    ("pain_level", "PAINISH FILL* ,? FILL* # SELFFIX SELFFIX? PAINISH? #"),
    ("pain_level", "PAINISH FILL* ,? FILL* # RANGE FILL* #"),
    ("pain_level", "PAINISH NOWISH ,? #"),
    ("pain_level", "# OF PAINNOUN"),
    ("pain_level", "# IN_BODY THE? PAINNOUN"),
    ("pain_level", "PAINISH FILL* ,? FILL* #"),
    ("not_number", "NOTNUM FILL? OF? # SET?"),
    ("pain_level", "# DASHWORD|DASH|OR FILL? # FILL* PAINISH"),
    ("pain_level", "# FILL? FILL? PAINNOUN !USED"),
    ("pain_level", "NUMBERSAY WASWORD FILL* #"),
    ("pain_level", "PAINISH NOMORE NOMORE+ FILL* #"),
    ("sets", "# MORESETS? SET"),
    ("sets", "SETS_WORD FILL? #"),
    ("reps", "# MORESETS? REP"),
    ("list", "# , # , # , #"),
    ("list", "# , # , #"),
    ("pair", "# JOINAND|AGAIN JOINAND|ANOTHER|AGAIN? #"),
    ("number_ex", "@ FILL|DID? # !OF"),
    ("ex_number", "# OF? THE|FILL? @"),
    ("number_ex", "@ FILL|DID|,? #"),
    ("number_ex", "@ ,? ~ ONLY DIDVERB? FILL? # !OF"),
    ("number_ex", "@ ,? ~ STOPPED HOURPREP #"),
    ("times", "# TIMES? THROUGH"),
    ("times", "# TIMES"),
    ("dash_amount", "# DASH #"),
    ("other", "DIDVERB SAYS_RATE|ARTICLE|ONLY|ISH SAYS_RATE|ARTICLE? # DASHWORD|OR|DASH #"),
    ("other", "DIDVERB SAYS_RATE|ARTICLE|ONLY|ISH SAYS_RATE|ARTICLE? #"),
    ("other", "DIDVERB #"),
    ("rated", "RANGE_START ARTICLE # AND ARTICLE? #"),
    ("rated", "SAYS_RATE FILL* RANGE_START # AND #"),
    ("rated", "BODY FILL* ,? FILL* # RANGE FILL* #"),
    ("rated", "BODY FILL* ,? FILL* #"),
    ("rated", "RATESAY THAT? FILL? FILL? # RANGE FILL* #"),
    ("rated", "RATESAY THAT? FILL? FILL? #"),
    ("sure_hour", "HOURPREP #"),
    ("hour", "CLOCKPREP # RANGE #"),
    ("hour", "CLOCKPREP #"),
    ("other", "AGE_BEFORE #"),
)

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
        DONE|ALL|YES ,? .? FILL* # DASH|DASHWORD|OR # $
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
        ^ FILL* # ,|.
        . FILL* # ,|.
        DONE|ALL ,? FILL* # $
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
        , FILL* # ATMOVE
        AND FILL* # $
        AND FILL* # NOWISH|IN_BODY
    """,
    "yes_report": """
        ^ YES ,? .? #|FRAC10
        ^ SMALL YESKEY !# !YESKEY_NOT
        ^ YES_OTHER SMALL $
    """,
    "num.invited": """
        ^ YES ,? .? FILL* PAINISH? FILL* #
        ^ # YESKEY !# !YESKEY_NOT
        ^ YES_OTHER # $
    """,
    "num.retracted": """
        NOT FILL? FILL? #
        NOT YESKEY #
        # THAT? SENDER? SAIDWORD
        # FILL? MISTAKE
        INSTEADOF FILL? #
        THATNUM #
    """,
    "num.said": """
        SAIDWORD ~ #
    """,
    "num.never": """
        NEVER FILL? FILL? #
    """,
    "num.alone": """
        . # , # _? $
        , # $
        . FILL* # $
        . FILL* # .
        ^ # .
    """,
    "num.past": """
        BEFOREWORD FILL* # ,|.|BUT TODAY
        # WHENWORD SENDER PASTVERB
        # WASWORD FILL? WEEKDAY|YESTERDAYISH
        BEFOREWORD ~ SURGERY ~ #
        # BEFOREWORD ~ SURGERY
        # ~~ IN_YEAR MONTH|YEAR
        YESTERDAYISH FILL* _? FILL* #
        LASTTIME !that _? _? FILL* #
        USEDTO _? _? FILL* #
        # YESTERDAYISH
        # LASTTIME
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
