"""English rules for a session done, wholly or in part, and for what became of its parts.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

_HUNDRED = """
        ^ N100 percent ,|.|$|done|complete|completed|finished|today|pain
        did|do|done|finished|completed|complete|at it|them|em|exercises|all|the* N100 percent !but !except !minus
"""
RULES = {
    "done_not": """
        none done
        did|done sod|bugger|naff all
        no harm|damage done
        ALL i|we did was|is
        had|have|got|getting|having my|the|a|some cataract|cataracts|surgery|operation|procedure|hip|knee|eye|eyes|hair|nails|teeth|tooth|test|tests|scan|mri|bloods|bloodwork|labs|roof|dishes|laundry|shopping|taxes done
        done with ~ life|living|TEXT|therapy|it
        done fell|fall|hurt|lost|broke
        pure|all|totally|absolutely|completely|right|just|im|am|was|feeling|feel done in ,|.|$|today|tonight|and|so
    """,
    "done": """
        exercises|routine|session ok|okay ,|.|$
        i|we saw it|them through
        ^ YES|YESKEY ,? no problem|problems|problemo|prob|probs|trouble|issues|bother ,|.|$
        i did finish|complete|do|manage everything|it|them|all|the|my|both
        i sure|certainly|absolutely|surely|definitely did
        in the bag
        ^ all? sorted ,|.|$
        job|jobs a good un|one
        DONE
        DID EXER|EM|ALL|MY
        DID !not ~ EXER
        did ~ @
        DID ~ ALL
        did # SET|REP|X
        did # @
        got ~ done|in|through|thru
        got|went|made|make|get|getting|going|push|powered|muscled ~ through|thru
        through|thru ~ EXER|ALL|@
        knocked|knock ~ out
        took care of
        VERYDONE it|em|them
        VERYDONE the lot|whole|set|session|workout|list|program
        threw|put in every|all
        wrapped ~ up
        i did
        we did
        did mine
        ^ did $
        did both
        worked ~ out
        managed ALL|#|half|part|some|most|one|@
        ^ ALL $
        ^ ALL of? them|it|em|these $
        ^ the? whole|full|entire _ _? _? _? $
        finito|completado|check|checked|nailed
        mission accomplished
        no problem ~ EXER
        all set $
        all taken care
        kept up
        in the books
        ^ all #
        done it
        had done
        stuck to ~ EXER
        twice through
        # x through|thru
        went ahead
    """,
    "done_plain": """
        DONE
        did ~ EXER|ALL
    """,
    "all_sure": _HUNDRED,
    "all": _HUNDRED
    + """
        did|do|finish|finished|complete|completed|done|managed everything
        got through ALL
        through ALL the? SET|SETS_WORD|sets|rounds
        ALL !down !along
        the lot
        the whole
        every|ever last one
        half ~~ other|second half
        half ~~ and|then ~ half
        and then some
        kit and caboodle
        start to finish
        a to z
        every single
        no exceptions
        as prescribed|instructed|directed|ordered|told|written|asked|listed|planned
    """,
    "all_not": """
        did|done sod|bugger|naff all
        for ALL you|yall|ya|u do|did|does|have|ve|are
        ALL i|we did was|is
        ALL # TIMES|SET|REP|X
        thats|that ~ lot|all
        thats all folks
        ALL but !i !im !it !its !now !we !then !had !was !got !felt !still !she !he !they !after !theres !there !BODY !pain
        ALL except|minus|cept|besides|save|without
        ALL ~ but @
        not ALL
        not quite ALL
        after ALL
        at ALL
        ALL day|night|morning|afternoon|week|weekend|time|over|right|the|afternoon
        ALL i could|can|had|managed|got
        thats ALL !done !finished !complete
        that's ALL
        that is ALL
        is ALL
        over ALL
        every day|time|night|week|morning|step|other|year|single
        every WEEKDAY
        each side|leg|way|arm|other|time|hand|foot
        # each
        each of
        of each
        sets|reps each
        full of
        you all
        ALL of you
        y all
        lots|lot of
        a lot
        the lot of you
        whole thing hurts
        ALL good
        ALL better
        ALL fine
        ALL pain
        ALL sore|achy|stiff
        without ALL
        cant do ALL
        couldnt do ALL
        everyone
        ALL about
        first of ALL
        ALL too
        ALL swollen|bruised|red|numb
        whole|full|entire day|night|week|body|family|morning|afternoon|weekend|leg|side|house|time|arm
        full set|sets
        whole left|right
        ALL the time|way|feeling
        everything hurts|aches|else|is|was
        everything else
        ALL the rest|others|other
        not ~ whole|full|entire|hole
        in ALL
        ALL else
        full time
        everything went
        everything ~ spinning|gray|grey|black|dark|blurry
        everyone|everybody
    """,
    "part": """
        abandoned ship
        all bar|but|save|except the? last set|round|one
        # exercises|ones out of the? #
        all|everything|finished|done|managed|completed|lot ~ bar|save the|my @
        did|got|made|done|finished|went thru|through most ,|.|$|then|but|before
        # quarters|thirds|fourths|fifths done|complete|completed|finished|through|there
        # quarters|thirds|fourths|fifths of the|it|them|my|em
        not ~ full|whole whack|shebang|hog|monty|enchilada|kit|shooting
        nearly|almost|practically|virtually ALL of? EM|EXER|THE|$|,|.
        ONLY ~ # each|per
        could only|barely|hardly
        half
        halfway
        half way
        PART of EM|EXER|@|my|the
        did|done|got|managed|finished|completed PART
        some !pain !soreness !discomfort !ache !of
        most of
        mostly
        not ALL
        not quite ALL
        not everything
        not finished|complete
        did what i could
        ONLY # SET|REP|x
        ONLY ~ # SET
        ONLY ~ PART
        ONLY ~ @
        ONLY @
        ONLY did|managed|got|made|finished ~ #
        ALL but !i !im !it !its !now !we !then !had !was !got !felt !still !she !he !they !after !theres !there !BODY !pain
        ALL except|minus|cept|besides|save
        couldnt|didnt|couldn|cant|cudnt finish|complete
        could|can|did not finish|complete
        was|am|were not able to finish|complete
        didnt|couldnt make it through
        had to stop|quit
        STOPPED ~ after|halfway|early|short|there|at|midway
        then STOPPED|quit
        and STOPPED|quit
        ran out of
        gave out
        gave up
        a few
        a couple
        tried
        tried but
        as many as
        as much as
        not as many
        started ~ but
        # out? of the? # SET
        part way
        partway
        partial
        partially
        cut ~ short
        quit ~ after|halfway|early
        quit on me
        threw in the towel
        thirds|quarter|third
        ALL i could|had
        thats ALL i
        thats it
        that's it
        thats as far
        before i
        to be honest no
        about PART
        a little
        a bit of
        rest tomorrow|later
        rest ~ tomorrow|later|tonight
        one side
        one leg
        shy of
        fell short
        rest of
        called it
        bits and pieces
        bit off
        less than !yesterday !before !last !usual !monday
        fewer
        not enough
        one of
        one set ONLY
        first set
        first half|part|two|couple|few|one|round
        @ ONLY
        minus @
        no REST
        skipped|missed|omitted ~ @|one|two|last|rest|others|#|some|few
        left out
        leaving out
        got # in
        wasnt|isnt able ~ finish|complete|ALL
        not ~ whole|full|entire|hole thing|lot|session|routine|set|list|program|way
    """,
    "num.times_through": """
        ALL ,|. USED TIMES
        last one ,? USED TIMES
        everything|all|it|they was|were|is|are? done|performed|completed|gone|finished USED TIMES
        through|thru it|them|em USED TIMES like|as|and|like
        ^ did it|them|em USED TIMES ,|.|$
        through it|them|em|everything ALL? USED TIMES ,|.|$
        through|thru ALL of? it|them|em|EXERNOUN USED TIMES
    """,
    "part_not": """
        N100 percent
        half ~~ and|then ~ half
        half the|a|an|this day|morning|afternoon|night|evening|week|minute|hour|time|town|block|street|family
        ALL but my|the|a BODY|CHEST|head|heart is|was|were|are|felt|feels|hurt|hurts|got|started|has|had|ached|aches
        half an hour
        cant|couldnt|cannot finish|complete|get a|my|the|out|whole? whole? sentence|sentences|breath|word|words
        not half ,|.|$
        halfway through the|my|a !list !set !exercises !routine !program !workout !first !second !session
        half ~~ other|second half
        half|quarter|third|couple past|hour|hours|mile|block|minute
        half hour|hours|asleep|dozen|dead|expected|century
        a little|bit sore|stiff|tired|achy|tender|better|worse|harder|easier|pain|hurt|winded|wobbly
        one of ~ days|kids|grandkids|cats|dogs|nights|ladies|girls|guys
        every one of
        ran out of milk|gas|coffee|bread|eggs|clean|paper
        called it a day|night
    """,
    "part_plain": """
        CANT|couldnt|didnt finish|complete them|em|these|it ,|.|$|but|because
        did|done|do|got|managed|finished|completed HALFWORD
        ONLY ~ some|half|few|part|couple of? EM|EXER|THE|,|.|$
        did|done|do|managed|finished|completed some|part|most|few of? EM|EXER|$|,|.
        HALFWORD of? EM|EXER|THE
        ^ HALFWORD $
        ^ HALFWORD ,|.
    """,
    "part_sure": """
        all|everything|finished|done|managed|completed|lot ~ bar|save the|my @
        did|got|made|done|finished|went thru|through most ,|.|$|then|but|before
        # quarters|thirds|fourths|fifths done|complete|completed|finished|through|there
        not ~ full|whole whack|shebang|hog|monty|enchilada|kit|shooting
        nearly|almost|practically|virtually ALL
        thats|that is|was? all i|we had|did|managed|got
        @ ONLY ,|.|$|today|tonight
        @ ones ONLY ,|.|$|today|tonight
        thats ~ my|your|the lot
        half
        ALL but !i !im !it !its !now !we !then !had !was !got !felt !still !she !he !they !after !theres !there !BODY !pain
        ALL except|minus|cept|besides|save
        ONLY # SET
        ONLY @
        most of
        not ALL
        SKIPS ~ @
        had to stop
        not ~ whole|full|entire|hole thing|lot|session|routine|list|program|way
    """,
    "yes_report": """
        ^ emojiyes emojiyes* ,? no|zero? pain|pains free|none|,|.|$
        ^ emojiyes emojiyes* ,? FRAC10 $
        ^ YES|YESKEY ,? no problem|problems|problemo|prob|probs|trouble|issues|bother ,|.|$
        ^ emojiyes emojiyes+ $
        ^ YES $
        ^ YES YES* ,? # $
        ^ YES ,|.
        ^ YES DID|i|all|sir|maam|mam|to|we|they|it|done|ALL
    """,
    "amount_unknown": """
        lost count
        dont|cant|couldnt|not ~ remember|recall|know|sure|tell|say ~ how|count|many|you
        lost track
        didnt count
    """,
    "none_done": """
        ^ NONE|NOPE|no $
        ^ NONE of|,|.|today
        ^ not any|one|a
        ^ NOPE
        ^ zero $
    """,
}
