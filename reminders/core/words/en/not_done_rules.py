"""English rules for a session not done, or still to come today.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

# Left out, whatever else is told.
_SURELY_SKIPPED = """
        did|done sod|bugger|naff all? ,|.|$|today
        , skipping ,|.|$|today|it|them
        never did|do|done|touched them|em|it|any|one|a ,|.|$|thing
        havent|hadnt exercised|exercise|worked at? all? today|tonight|,|.|$
"""

RULES = {
    "skip": _SURELY_SKIPPED
    + """
        none done ,|.|$
        too late now? for|to EXERNOUN|exercise|do|start
        ^ hail|hell|heck|lord|goodness no|nope
        unable to? complete|do|perform|manage|attempt|finish today|todays|tonights|this|my EXERNOUN
        not tonight ,|.|$
        zero|nil sets|reps|exercises ,|.|$|today|tonight|done
        none|nil|zero of the|them|my|these|those? #? exercises? done ,|.|$|today|tonight
        did|do know exercise|exercises|reps|sets|today
        not a|even? one|single|any one? of? EM|EXER|THE? got|was|were|is|has|been done
        none of? EM|EXER|THE got|was|were done
        fell|fall|fallen|dozed|nodded|drifted|conked asleep|off|out ~ before i could|got|did|even|started|had
        refused|declined ~ EXERNOUN
        refused|declined to do|exercise
        no|not|nae the day|nicht|morn ,|.|$
        gave|give|giving the|my|all|those|these _? EXERNOUN|lot a miss|pass|rest|skip
        ^ no dice|chance|soap|deal|sir|maam|joy|luck ,|.|$
        count me out
        big|fat|hard|absolutely|definitely|emphatic|resounding no|not ,|.|$
        BODY said|says|told ~ no|not|nope
        ^ not a|any #|one|single ,|.|$
        in the cards
        got up and went
        ^ honestly|sadly|unfortunately|regrettably|sorry|alas|frankly ,? no|nope|not|none|zero|nothing ,|.|$
        rain check
        raincheck
        overslept
        slept right? through
        life|day|time|company|something got in the? way
        ^ negative
        let it slide
        ^ afraid|fraid not
        didnt get around to
        didnt happen|work
        not one|a single
        instead $
        had every intention
        ^ neg|negatory $
        did squat|zip|zilch|nada|jack
        SKIPS $
        SKIPS ,|.
        ^ i? didnt|havent|couldnt|dint $
        , couldnt|didnt $
        . couldnt|didnt $
        forgot again|,|.
        ~ says no ,|.|$
        so i? rested
        did not ~ get|do|have|make|manage|happen
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
    "skip_plain": """
        ^ i? gave|giving it|them|today a miss|pass ,|.|$
        ^ i? gave|giving it|them|today a $
        ^ i? ran out of steam|time|energy before i began|started ,|.|$
    """,
    "skip_not": """
        forget|forgot|forgets my|her|his|own head|name|own
        i SAIDWORD that? i? skipped|missed|didnt ~ but|that|. that|it was
        was|am|were not able to finish|complete
        could|can|did not finish|complete
        rain check ~ appointment|visit
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
    "skip_sure": _SURELY_SKIPPED
    + """
        ^ skipping today|it|them|,|.|$
        ^ no|nope|nah siree|sirree|sirreebob
        . zip|zilch|nada|zero|nothing done|completed|finished ,|.|$|today
        ^ zip|zilch|nada|zero|nothing done|completed|finished ,|.|$|today
        none done|completed|finished|happened ,|.|$|today
        ^ i? totally|completely|just? spaced on? it|them ,|.|$
        havent|hadnt touched todays|today|it|them ~ and|nor|or wont|cant|not
        ^ i? didnt|dint|couldnt even|really? bother ,|.|$|today|tonight
        didnt|dint|couldnt bother ,|.|$
        too late now? for|to EXERNOUN
        unable to? complete|do|perform|manage|attempt|finish today|todays|tonights|this|my EXERNOUN
        not a|even? one|single of? EM|EXER got|was|were done
        didnt|havent|never do|get|did|done
        ^ NO|NOPE $
        ^ NO|NOPE ,|.|
        SKIPS today|it|them
        no ~ EXERNOUN
        not today
    """,
    "later_not": """
        round|around my|the CHEST
    """,
    "later": """
        be at it round|around|about|by #
        # TIMEUNIT and im|ill on|at it
        next ~ on my agenda|list
        give me|us a few|sec|second|minute|min|hour|bit
        in a|an|# hour|hours|bit|while|few|minutes or|$|,|.
        then starting|start|begin
        when|once|after i get off|home|back
        not done but ~ will
        give me ~ till|until #|CLOCK|noon|tonight
        not done !with but|yet
        let me ~ finish|eat|get|do ~~ then|and ~ ill|i
        after that ~ ill|i
        ^ ~ no , tonight
        then ill|i do
        gimme a|an|# hour|minute|min|bit|few|sec
        day|days|the is|s|aint|isnt? not? over|young|done
        nothing yet
        ^ not yet
        soon as ~ ill|im|i|he|she|it|the
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
    "later_sure": """
        not done but ~ will
        nothing yet
        ^ gimme a|an|# hour|minute|min|bit|few
        not yet
        havent ~ yet
        later today|tonight
    """,
    "tomorrow": """
        TOMORROW
    """,
}
