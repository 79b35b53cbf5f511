"""English rules for pauses and returns, other days or hours, and the list sent again.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

_BEHIND = """
        # SPAN AGO
        a|couple|few of? SPAN AGO
        been|for|in|after # SPAN since|that|now|already|straight
        texted|texting|sent|sending|bothering|bothered|messaged|messaging|receiving|getting|gotten|got|annoying|hounding|calling ~ for ~ SPAN
        every|each # SPAN
        for|over|past ~ # SPAN now|,? i|ive|we|weve been|keep|kept|have|had? asking|asked|telling|told|getting|gotten|receiving|received|trying|begging
        had|gotten|received|getting|receiving the|your|all|so|many|of* TEXT|these|those|them TEXT? now? for ~ SPAN
"""  # a stretch of time told of what was: it asks for no pause

RULES = {
    "pause": """
        rest|remainder of MONTH
        wont|not|cant|no ~ rest|remainder of MONTH
        no exercises|exercise|workouts for a|# fortnight|week|weeks|month|months ,? ~ they|doctor|doc|surgeon|said|says|orders
        put|place me|us|it|this|these|mine|everything on pause|hold
        let you know when ~ i|im|we can|am|able|start|ready
        not ~ able to ~~ until|till
        until|till my|the _? cast|boot|brace|stitches|staples|surgeon|doctor|doc ~ off|out|says|clears|heals
        in the hospital
        let you know when ~ out|home|back|better|done
        rest of the month|week|summer|winter|year off
        take|taking ~ off ~ month|week|weeks
        doc|doctor|dr|surgeon says|said|wants nothing|none|no ~ till|until
        wants me to ~ lay|stay off
        hold off
        hold|holding em|them|these|my
        wait on me
        PAUSEIT ~ TEXT
        PAUSEIT TEXTNOUN|my|me|everything|these|them|things
        put ~ on hold
        on hold
        ^ PAUSEIT $
        PAUSEIT ~ until|till
        PAUSEIT please
        away|gone|out|traveling|travelling|visiting|vacation|cruise|abroad|camping|trip|town|country|florida|holiday|bed|commission|snowbirding|hospital|rehab ~~ until|till|thru|through|from|for ~ #|WEEKDAY|MONTH|next|the|DATE|SPAN|spring|summer|couple|few|after|date
        until|till|thru|back ~ #|WEEKDAY|MONTH|DATE|next|the
        out|away|gone from|for|of town
        WILL ~ away|gone|out|traveling|visiting|hospital|vacation
        on vacation|holiday
        out of town
        leaving ~ for ~ SPAN|#|trip|vacation|cruise
        leaving|leave|headed|going|off|flying|heading ~ to|on ~~ for|until|till|from|thru|back|next ~ #|SPAN|WEEKDAY|MONTH|DATE|a|few|couple|the
        going|leaving|headed|off|flying|heading ~ cruise|vacation|florida|trip|camping|hospital
        no|dont|hold|stop|skip|wont|not ~~ for|until|till ~~ SPAN
        no|dont|hold|stop ~ TEXT|send ~~ until|till|for|while ~
        take|taking|need ~ break ~ SPAN|from|for|until|till
        # SPAN ~ off|away|break|rest
        surgery|operation|procedure|surgeon ~~ next|on|#|WEEKDAY|MONTH|DATE|weeks|the|th
        surgery|operation ~~ SPAN
        dr|doctor|doc|surgeon says|said|wants|told ~~ SPAN|weeks|until|till
        nothing ~ for ~ SPAN
        not ~ for ~ SPAN
        wont be ~~ SPAN
        for ~ # SPAN
        next # SPAN
        for the next ~ SPAN
        for|a|couple|few ~ SPAN ~ please|hold|pause|stop
        mute|snooze ~ me|for|until|till|TEXT
        PAUSEIT me
        MONTH # ~ MONTH|DASH|to|thru|through ~ #
        from the # ORD? ~ to|through|till|until|thru|DASH ~ the? #
        # ORD ~ to|through|till|until|thru|DASH ~ the? # ORD
        be back ~ #|on|in|by|WEEKDAY|MONTH|DATE|next|after|the
        ill be back
        back on|by|in ~ #|WEEKDAY|MONTH|DATE|week|weeks
        start ~ back ~ next|in|on|after
        till|until i ~ back|return|home|better|well|recover
        until further notice
    """,
    "pause_span": """
        # ORD ~ to|through|till|until|thru|DASH ~ the? # ORD
        MONTH # ORD? ~ DASH|to|thru|through|until|till ~ #
        no|any TEXTNOUN those|that days|dates|weeks|week|month
        no|any TEXTNOUN from|between WEEKDAY|MONTH ~ to|thru|through|till|until|and|DASH
        during ~ time|trip|that|those|this
        rest of the month|week|summer|winter|year
        til ~ i|we|WEEKDAY|MONTH|#|next|the
        while ~ away|gone|im|i|on|in|we
        week of
        this|all week
        until|till|thru|for ~~ SPAN|WEEKDAY|MONTH|DATE|next|spring|summer|fall|winter|further|notice
        until|till the? #
        # SPAN
        a|couple|few|next ~ SPAN
    """,
    "pause_span_not": _BEHIND
    + """
        no|not|never|without SYMPTOM ~ this|all week
    """,
    "pause_sure_not": _BEHIND,
    "pause_not": _BEHIND,
    "pause_until": """
        til
        back|return ~ #|WEEKDAY|MONTH|DATE|next
        until|till|thru
    """,
    "pause_until_not": """
        ran|went|lasted|stayed|up|worked|working|out|open|slept|busy|here|kept|goes|runs|sat|waited til|till|until past|after|about|nearly|almost? #|CLOCK|late|noon|midnight|dinner|lunch|supper|dark
    """,
    "pause_sure": """
        # ORD ~ to|through|till|until|thru|DASH ~ the? # ORD ,? ~ no|dont|hold|stop|please
        MONTH # ORD? ~ DASH|to|thru|through|until|till ~ # ,? ~ no|dont|hold|stop|please
        put|place me|us|it|this|these|mine|everything on pause|hold
        let you know when ~ i|im|we can|am|able|start|ready
        PAUSEIT ~ TEXT|reminders
        PAUSEIT me|everything|things|these|them
        on hold
        until|till|thru ~ #|WEEKDAY|MONTH|DATE|next|the|further
        no|dont ~ TEXT ~~ until|till|for|while
    """,
    "pause_plain": """
        ^ PAUSEIT the|my|me|these|all|it|them|this? EXERNOUN|TEXTNOUN? please|now? $
        dont|not TEXTVERB me|us today|tonight|tomorrow ,|.|$|please|i|im|we|cause|because
        dont|not TEXTVERB me|us this|next week|weekend|month ,|.|$|please|i|im|we|cause|because
        ^ STOPIT TEXTVERB|sending me|us|them|these|texts|reminders? for now|awhile
        ^ STOPIT the|these|those|my|your|all? TEXTNOUN for now|awhile
        away|gone|out|vacation|traveling|cruise for ~ SPAN ,? STOPIT|no the|these|my? TEXTNOUN
    """,
    "resume_plain": """
        back on deck|board|duty|track from|on|starting? WEEKDAY|today|tomorrow|now
        ^ the|my? doc|doctor|dr|surgeon has? cleared me ,? and|so|to? lets|start|go|going|resume|again
        ^ im|we|i? am|are? BACK now|home|again? ,|.? please? start|resume|begin|continue? again|back|now? $
    """,
    "resume": """
        carry|keep on|going with the|your|these TEXTNOUN
        keep them|the|those|these TEXTNOUN? coming
        fire|crank|start|rev it|em|them|things|these up|rolling again|$
        get it|em|them|things|those|the TEXTNOUN? rolling|coming|going again|$
        start|let|pick|sign|put me|us back up|please|now|again|$
        cast|boot|brace|sling|stitches|staples is|are|s? off|out
        say|says|said i can|may ~ exercise|start|resume|go|begin|again
        ready to ~ again
        done with rehab|therapy|chemo|radiation|antibiotics|treatment ~~ send|start|ready|home
        green light|thumbs up|all clear|ok|okay to ~ start|go|exercise|resume|begin
        my # SPAN is|are up|over|done
        weeks|week|month|months|time is|are up|over
        ready to ~ pick ~ up
        can|you ~ send|start ~ them|these|it again
        cleared up ,|and|so
        pick|start ~ back up
        no need to ~ hold|pause|wait
        stop holding|pausing
        longer hold|pause
        break|vacation|trip|pause is|s? over|done|finished
        breaks|vacations|trips over|done
        unpause|un pause
        im|i am|we are|i got|got|am|is|we|just ~ BACK ~ from|home|now|and|again|ready|in|to|at
        ^ BACK ~ from|home|now|and|again
        im back
        i am back
        home from
        back from
        got|get|came|come|made back|home ~ from|yesterday|today|last|now|ready|again
        home now|again
        ready ~ start|go|begin|resume|exercise|continue|again|when|for
        STARTIT|resume|pick|continue ~ back|again|up ~ with|me|reminders|on|where
        unpause|resume|unmute
        start ~ me ~ AGAIN
        start ~ back
        back ~ home|town|action|business|saddle|track|again|feet|at
        cleared ~ exercise|go|start|by|to|for
        feeling|feel better ~ ready|start|send|resume
        returned ~ from|home
        resume ~ TEXT|exercises|my|please|sending
        begin ~ TEXT|again|my
        vacation|trip ~ over
        send|start|turn ~ TEXT ~ AGAIN|on
        turn ~ back on
        can|you ~ start|resume|begin ~ again|back|up
    """,
    "resume_sure": """
        ready ~ start|go|begin|resume|continue
        STARTIT|resume ~ AGAIN|reminders|texts
        im back ,?
    """,
    "resend": """
        binned|lost|ripped|misplaced|tossed|trashed|ruined ~ sheet|list|paper|instructions ~~ another|new|again
        wiped|deleted|erased|binned the|that|your|my message|text|list|reminder|exercises
        only got|received|see|get half|part|some of ~ message|text|list|it
        cant open|read|see|find it|the|that|your|text|message
        text|message|reminder|list|texts|messages didnt|never|not|hasnt come|came|arrive|arrived|show|load|go
        which|what ones ~ i|we doing|do|supposed
        didnt|havent|never|dint ~ receive|get|got|received|see anything|nothing|text|message|list|it
        nothing ~ came|come through|in|today|yet
        ^ the? list|exercises|routine please|again|today? $
        message|text|list|it came|comes ~ garbled|blank|scrambled|cut|empty|broken|funny
        cant|couldnt ~ open|read|see|find ~ list|text|message|link|exercises
        RESENDIT ~ AGAIN|list|exercises|EXERNOUN|them|me|it|once|today
        resend
        re send
        SEND|send|text|get|have|give|need|show|see|email ~ list|EXERNOUN ~ again|please|today|AGAIN
        send|text|give|show|email ~ list|EXERNOUN|todays|instructions|paper
        LOST ~ text|message|list|paper|sheet|email|instructions|it|msg|msgs|messages|page|phone|handout|reminder
        LOST ~~ send|resend|again|what
        what is|are|r|was|were|am ~ EXERNOUN
        whats|what ~ EXERNOUN|todays ~ today
        what ~ todays
        whats ~ todays|today|list|routine|workout
        which ~ exercises ~ today|do|supposed|am|again
        which|what ones ~ today|do|supposed
        what|which ~ supposed|do|doing ~ today
        what do i do today
        what am i ~ do|doing ~ today
        what was i ~ supposed|do
        what ~ supposed to ~ do
        didnt|havent|never|did not|dont ~ get|got|receive|received|see|have ~ TEXT|exercises|list|EXERNOUN|anything|reminder|one
        nothing came
        no ~ text|message|list|reminder|email ~ came|today|yet|came|received|morning
        remind me ~ what|which|exercises
        repeat ~ list|exercises|that|EXERNOUN|please|again
        say|send|tell ~ again
        can ~ i ~ see|get|have ~ list|exercises|again|EXERNOUN|copy
        what exercises
        forgot|dont remember|cant remember|not sure ~ what|which ~ do|exercises|supposed|ones|are
        another copy
        copy of ~ list|exercises|EXERNOUN
        the list ~ please|again
        todays ~ please|list|exercises
        where ~ my? ~ list|exercises|text
    """,
    "resend_not": """
        perform|do|did|done|complete|completed|finish|finished|skip|missed|miss todays EXER
        no need to send|resend|text it|that again
    """,
    "reschedule_plain": """
        dont|not TEXTVERB me|us on WEEKDAY ,|.|$|please|i|im|we|cause|because
        dont|not|never|stop|quit TEXTVERB|texting me|us|them|it? at|before #|CLOCK AMPM? ~ ,|. #|CLOCK AMPM? is|works|would better|good|fine|best|ok|okay|be
        dont|not|never|stop|quit TEXTVERB|texting me|us|them|it? at|before #|CLOCK AMPM? ~ ,|. make it|them # ,|.|$|AMPM|instead|please
        dont|not|never|stop|quit TEXTVERB|texting me|us|them|it? at|before #|CLOCK AMPM? ~ ,|. after|make|text|send|try it|them|me|at|after? #|CLOCK
    """,
    "resend_plain": """
        cant|couldnt|dont|didnt|cannot ~ find|open|see|read|have|get|got|received the|my|it|them|your? EXERNOUN|list|text|message|it? ,|.|so? please? SEND|send|resend it|them|me? AGAIN
        never mind ,? just? send|SEND it|them|me? AGAIN
    """,
    "reschedule": """
        prefer|rather getting|get|to|receiving|receive ~ TEXTNOUN|these|them|it after|before|at|in|around
        prefer|rather ~ getting|get|receiving|receive these|them|it after|before|at|in|around
        text|txt|message|send|remind me|it|them|mine at # not|instead|rather at? #
        text|txt|message|send|remind me|it|them|mine at # instead|please|plz|pls
        STOPIT|quit sending|texting|messaging|reminding me|us|them|it? on|at|before #|CLOCK|WEEKDAY ~~ send|text|make|do|use|better
        take me|us off WEEKDAY
        start|begin sending|texting|messaging them|it|these|those|me|the? TEXTNOUN? at|after|around|before|later|earlier|in|on
        like|want|prefer|rather WEEKDAY ,? and? WEEKDAY
        possible to ~ do|have|get WEEKDAY|DAYTIME
        no WEEKDAY please
        get|have ~ reminder|reminders|text|texts|message|messages ~ later|earlier|DAYTIME
        move|make|change|switch it|them|mine|my|the ~ after|before|around lunch|dinner|supper|breakfast|work|church|noon
        text|send|remind|message ~ in|at|on the? DAYTIME|WEEKDAY|#|CLOCK
        cancel|drop|skip WEEKDAY ~~ do|make|use|WEEKDAY
        better|best at|after|before|around|on|in #|CLOCK|DAYTIME|WEEKDAY
        SWITCH ~ to ~ WEEKDAY|DAYTIME|#|CLOCK|another|different|later
        SWITCH ~ my|the|it|these|days|day|time|hour|schedule ~ to|WEEKDAY|DAYTIME|time|days|earlier|later
        SWITCH ~ time|days|day|schedule|hour|times
        SWITCH ~~ to ~ WEEKDAY|DAYTIME|CLOCK|#
        could|can|may|would ~~ WEEKDAY ~ WEEKDAY
        WEEKDAY ~ WEEKDAY ~ WEEKDAY ~ INSTEAD
        INSTEAD ~ WEEKDAY|DAYTIME
        WEEKDAY|DAYTIME|CLOCK ~ INSTEAD
        WEEKDAY|DAYTIME|CLOCK ~ work|works|worked|working ~ better|best|not
        WEEKDAY|DAYTIME ~ dont|doesnt|not|cant|wont|suck|bad ~ work|good|suit|do|for
        WEEKDAY|DAYTIME|CLOCK ~ please
        text|remind|send|message ~ at|in|on|around|by|after|before ~ #|CLOCK|DAYTIME|WEEKDAY|the
        send ~ earlier|later
        text|remind|send|message ~ me ~ earlier|later
        not ~ so early|late
        too early|late
        different|other|another|new time|day|days|hour
        # AMPM ~ instead|better|not|rather|please
        instead of ~ #|CLOCK|DAYTIME|WEEKDAY|the
        can|could ~ we|you|i ~ do|have|get|move|make|switch|change|try ~ WEEKDAY|DAYTIME|#|CLOCK|it
        reschedule
        prefer ~ WEEKDAY|DAYTIME|#|CLOCK|to
        rather ~ WEEKDAY|DAYTIME|#|CLOCK|have|get
        switch|move ~ WEEKDAY|DAYTIME|session|sessions|days|reminder|reminders
        make it|them ~ #|CLOCK|WEEKDAY|DAYTIME|earlier|later
        possible ~ receive|get|have|send ~ at|in|on|earlier|later
        only ~ on WEEKDAY
    """,
    "reschedule_sure": """
        STOPIT|quit sending|texting|messaging|reminding me|us|them|it? on|at|before #|CLOCK|WEEKDAY ~~ send|text|make|do|use|better
        take me|us off WEEKDAY
        get|have ~ reminder|reminders|text|texts|message|messages ~ later|earlier
        move|make|change|switch it|them|mine|my|the ~ after|before|around lunch|dinner|supper|breakfast|work|church|noon
        cancel|drop|skip WEEKDAY ~~ do|make|use|WEEKDAY
        SWITCH ~~ to ~ WEEKDAY|DAYTIME|CLOCK|#
        INSTEAD ~ WEEKDAY|DAYTIME
        WEEKDAY|DAYTIME|CLOCK ~ INSTEAD
        reschedule
    """,
}
