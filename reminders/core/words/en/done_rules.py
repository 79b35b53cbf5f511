"""English rules for sessions: done, in part, not done, later; and for pain told without a number."""

RULES = {
    "done": """
        DONE
        DID EXER|EM|ALL|MY
        DID ~ EXER
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
    "all": """
        ALL
        the lot
        the whole
        and then some
        kit and caboodle
        start to finish
        a to z
        every single
        no exceptions
        as prescribed|instructed|directed|ordered|told|written|asked|listed|planned
    """,
    "all_not": """
        ALL but|except|minus|cept|besides|save|without
        ALL ~ but @
        not ALL
        not quite ALL
        after ALL
        at ALL
        ALL day|night|morning|afternoon|week|weekend|time|over|right|the|afternoon
        ALL i could|can|had|managed|got
        thats ALL
        that's ALL
        that is ALL
        is ALL
        over ALL
        every day|time|night|week|morning|step|other|year|single
        every WEEKDAY
        each side|leg|way|arm|other|time|hand|foot
        # each
        each of
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
        in ALL
        ALL else
        full time
        everything went
        everything ~ spinning|gray|grey|black|dark|blurry
        everyone|everybody
        100 percent
    """,
    "part": """
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
        ALL but|except|minus|cept|besides|save
        couldnt|didnt|couldn|cant|cudnt finish|complete
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
        less than
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
    """,
    "skip": """
        ^ NO|NOPE $
        ^ NO|NOPE ,|.|
        ^ n|nope|nah|naw|no not today|tonight|this|yet|doing
        ^ not today|tonight|tonite
        ^ NONE
        not today
        not happening
        not happenin
        not gonna happen
        not going to happen
        not doing
        not gonna do
        not going to do
        not up to
        not able
        not feeling up
        no can do
        no go
        no way
        no EXERNOUN
        no ~ EXERNOUN
        no time
        no energy
        ^ none $
        none of EM|EXER|THAT
        none today
        nothing today|done|yet
        not a thing|one|single
        not one
        didnt|havent|hadnt|havnt|dint|didn|dident|never do|get|did|done|exercise|manage|make|even|have|got|bother|touch|start|today|yet|nothing|any
        didnt|havent|never|couldnt ~ EXER
        didnt|never ~ to it|them|em
        NOT ~ EXERNOUN today
        ^ didnt
        ^ havent $
        ^ couldnt
        ^ cant
        couldnt|cant|cannot|couldn|wont|unable do|manage|get|make|today|exercise|to
        couldnt|cant|cannot ~ today|tonight
        couldnt ~ EXERNOUN
        wont be|do|make|get
        SKIPS !REST !@ !last !one !a
        SKIPS today|tonight|it|them|em|EXERNOUN|this
        ^ SKIPS
        missed it|them|today|my|em|EXERNOUN|session
        ^ missed
        forgot $
        forgot ~ EXER
        forgot ~ EXERNOUN
        forgot to do
        forgot about
        forgot $
        i forgot
        totally forgot
        completely forgot
        slipped my|his|her mind
        spaced it
        too tired|sick|sore|busy|hot|cold|weak|stiff|achy|worn|exhausted|sleepy|much|painful|beat|wiped
        rest day
        day off
        resting today|instead
        rested
        took ~ off
        taking ~ off
        taking a|the night|break|day|pass
        gonna|going to rest|pass|skip|sit|miss
        in bed
        staying|stayed in bed
        did it hurt
        so|instead i? ~ rested|rest|skipped|passed|slept
        let it be|go|rest
        sit|sitting|sat this|it|one|today out
        give|giving it|them|myself|today a rest|break|miss|day|pass
        pass today
        i pass
        ill pass
        hard pass
        ^ pass
        instead of EM|EXERNOUN|these|my|the|doing
        in place of
        ran out of time
        ran out of day
        got away from me
        tomorrow
        do|catch|try ~ tomorrow
        got ~ EXERNOUN
        bad day
        excused
        called off
        blew ~ off
        zero EXERNOUN|done|today|SET
        zilch|nada|zip $
        haven done
        off day
        playing hooky
        slacked
        lazy day
        lazy today
        under the weather
        took the day
        ^ lazy
        skipping
        gave ~ a miss
        no workout
        nothing done
        nothing doing
        nothing $
        wasnt up
        wasnt able
        didnt|couldnt feel|have ~ energy|time|it
        dont|didnt feel like
        dont have it in me
        not in the mood
        heart isnt in it
        not feeling it
        not feeling well|good|great
        another day
        no thanks $
        no i didnt
    """,
    "skip_not": """
        didnt|never do|get|have to stop
        didnt|dont|never miss|missed|skip|forget
        havent missed|skipped
        never missed
        not once
        didnt|couldnt ~ @
        didnt do ~ @
        didnt|cant|couldnt finish|complete
        cant|couldnt|didnt do ALL
        couldnt|cant|didnt do ALL|more|second|last|REST
        didnt get to ~ REST|@|last
        wont be|do ~ #? SPAN
        forgot to ~ text|answer|reply|tell|respond|send|report|write
        forgot ~ text|answer|reply|message
        couldnt|didnt do # @|more
        no problem|problems|trouble|issues|complaints
        nothing hurt|hurts|new|bad
        not bad
    """,
    "later": """
        later today|tonight|on|this
        ^ later
        ^ not yet
        not yet
        havent ~ yet
        didnt ~ yet
        WILL do|get|try|start|finish ~ later|tonight|soon|after|this|when|before|at
        WILL do|get|try|start|hit|knock ~ EM|EXER !tomorrow
        WILL ~ later|tonight|after|evening|afternoon
        WILL do it|them|em !tomorrow
        plan to|on ~ later|tonight|after
        getting to it|them
        get to it|them|em ~ later|tonight|evening|afternoon|soon|after|when|before
        about to
        fixing|fixin to
        getting ready to
        in a bit|while|minute|few|sec|hour
        in # MIN
        in about # MIN|hour|hours
        give me # MIN|hour|hours
        give me a|an minute|hour|few|bit|sec
        ^ after ~
        right after i
        soon as
        as soon as
        once ~ ill
        doing them|em|it now|soon|right|after|tonight|later
        starting now|soon|them
        just starting
        this afternoon|evening $
        in the evening|afternoon $
        on my list
        still to do
        still gotta
        working on it
        ^ on it $
        when i get home|back|up
        i will $
        ^ tonight
        before bed $
        ^ will do ~ after|later|tonight
        gonna do|get|start
        haven ~ yet
        not done yet
        remind me ~ later|tonight|hour
        halfway through now
        in the middle of ~ now
        ^ ~ after lunch|dinner|supper|breakfast|work|church|nap $
        later $
        round ~ tonight|later|evening
        in the works
        ill do
        saving|save ~ for tonight|later|after|evening
        gotta|got to wait
        soon
        put ~ off till|until ~ tonight|evening|later
    """,
    "pain_none": """
        NO pain|pains|discomfort|soreness|ache|aches|hurt|hurts|pian
        NO pain|hurt at all
        pain|discomfort|soreness ,? FILL* NO|none|nil|nada|zilch|nothing|nope|free !SET !stop
        pain free
        painfree|painless
        no PAINWORD|hurt
        didnt|doesnt|dont|dosent|not|never|aint hurt|hurts|hurting $
        didnt|doesnt|dont|dosent|not|never|aint hurt|hurts|hurting at|anywhere|any|none|one
        didnt|doesnt|dont|not|havent have|feel|had|got|having|feeling ~ PAINWORD
        have|had no|not PAINWORD
        have not ~ PAINWORD
        nothing hurts|hurt|hurting|aches|ached|sore|painful
        without any? PAINWORD
        no PAINWORD no|nothing
        not any PAINWORD
        not a bit|lick|twinge|speck|hint ~ PAINWORD|hurt
        no sort|kind of PAINWORD
        no aches ~ pains
        not in any? PAINWORD
        none PAINWORD
        no|not|aint|didnt|doesnt hurting|hurt|hurtin none|any|nothing|$
        nary a
        nuthin|nothin
    """,
    "pain_none_not": """
        no pain no gain
        no|not|nor CHEST PAINWORD|pain|pains
        dont|doesnt|not have|got ~ PAINWORD number|scale|thing
        NO|not PAINWORD meds|pills|medicine|medication|killers|killer|scale|number|patch|cream
        NO ~ pain|discomfort to speak
        NO ~ pain|discomfort worth
        no pain|discomfort|soreness than
        without PAINWORD !at
        no CHEST
        no BODY pain but
        no pain ~ until|till
        didnt|doesnt|dont|not hurt ~ much|bad|badly|alot|terribly|until|till|more|worse|that|as
        dont hurt me
        nothing hurts like|more
        no pain like
    """,
    "pain_said": """
        PAIN
        SORE
        HURT
        BODY ~ SORE|HURT|PAIN
        killing me
        rough|bad BODY
        hard on my BODY
        bothering|bothers|bothered me
        BODY ~ acting|barking|screaming|talking|bad|worse|better|grumbling|tight|stiff|swollen
        comes and goes
        about|bout ~ same
        less|worse|better|more than
        same as
        tolerable|bearable|manageable|mild|moderate|minor|slight|slightly|minimal
    """,
    "pain_answer_none": """
        ^ NO|none|NOPE|nothing|not|zip|zilch|nada|zero|nil
        ^ not really? any|none|at|today
        nothing hurts
        not any
        none FILL* $
        no thank
        painless
        im? FILL? pain free
        feel|feeling|felt great|good|fine|wonderful $
    """,
    "pain_answer_words": """
        nothing to write|new|much|major|bad|terrible|serious|crazy|special|unusual|too|out
        not bad|too|much|terrible|great|good|sure|so|that|as|really !any
        nothing i cant
        no more|worse|different|change|better|idea|number|clue
        no ~ than
    """,
    "worst_pain": """
        PAIN ~ through|thru the roof
        PAIN ~ off the charts|chart|scale
        PAIN ~ above|over|past|beyond ten|#
    """,
}
