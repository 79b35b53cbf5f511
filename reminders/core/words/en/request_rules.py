"""English rules for what a reply asks for: the carrier words and their plain wordings, pauses, changes, questions, chat."""

RULES = {
    "opt_out": """
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        ^ STOPKEY ,|.
        ^ opt out
        opt ~ out
        optout|unsubscribe|stopall|unsub|unsuscribe|revoke
        ^ STOPKEY please|now|pls|it|this|already|immediately|all|asap|everything $
        ^ please STOPKEY|STOPIT $
        ^ i said STOPIT
        unsubscribe|unsuscribe|unsubcribe|unsub me|us|please|from|this|now
        REMOVE ~~ from|off ~ TEXTNOUN|list|lists|service|system
        lose this|our number
        be|get|been taken|removed|dropped off|from ~ $
        how ~ STOPIT|unsubscribe|cancel ~ TEXTNOUN
        ^ discontinue|desist|unsubscribe|cease $
        cease|discontinue|kill|ditch|nix|block|end ~ TEXTNOUN
        block me
        STOPIT ~ TEXTVERB
        STOPIT ~ TEXTNOUN !till !until
        STOPIT the|these|those|all|my|your|this|sending|getting ~ TEXTNOUN
        please STOPIT these|this|them|it
        make it|this|them stop
        STOPIT these|those|them|this please|now|$
        STOPIT ~ send|sending
        REMOVE ~ from|off ~ TEXTNOUN|list|lists|this|system|service|here|phone
        REMOVE me|us|my|him|her|this ~ off|from|out
        REMOVE me|us|number $
        REMOVE my|this|our number|phone|name|info|contact
        TEXTNOUN ~ REMOVE my name|number
        take ~ off ~ list
        off ~ list
        no more|longer ~ TEXT
        no|dont more TEXT
        NOT|no|never ~ TEXTVERB ~ me|us|this|my|again|anymore ~ MORE|again|phone|number|please|$
        dont|do|never ~ TEXTVERB me|us|this
        not TEXTVERB me|this
        dont|not|no|cant|doesnt ~ WANT ~ TEXT
        dont|not|no|doesnt ~ WANT ~ RECEIVE|more ~ TEXT|these|them|this|$
        dont|not|no|doesnt WANT ~ these|them|this|it ~ anymore|more|longer
        dont|doesnt WANT these
        no longer ~ WANT|wish ~ TEXT|RECEIVE|service|this|program|these|participate|be|reminders
        leave me|us alone
        lose my number
        dont|not want|wish|interested ~ to ~ participate|be ~ program|anymore|contacted|texted|list|service|part
        not interested
        cancel ~ TEXTNOUN|service|subscription|this|these|me|everything|my
        ^ cancel
        i quit ~ TEXT|program|service|this
        im done with|getting ~ TEXT|these|this|messages|service
        want|wanna|like|need ~ out of ~ this|program|TEXTNOUN|list
        end ~ TEXTNOUN|service|this|subscription
        quit ~ TEXTVERB|TEXTNOUN|sending|bugging|bothering|these
        quit bugging|bothering|pestering
        enough ~ TEXT
        stop bugging|bothering|pestering|harassing|spamming
        spam|harassing|harassment
        block|blocking ~ number|you
        please ~ discontinue
        deactivate|unenroll|disenroll
        sign|signed me out|off
        turn|shut ~ off ~ TEXT|these|this|service
        turn|shut ~ TEXTNOUN|these|this off
        withdraw ~ consent|permission|me|from
        revoke ~ consent|permission
        no TEXT please|$
        no TEXTNOUN ~ anymore
        ^ no more $
        ^ no more please
        no more of|these|them
        cease and
        dont need ~ TEXT|these|this|reminders ~ anymore|more|longer|$
        not need ~ TEXT|these ~ anymore|more|longer
        stop it ~ TEXT|phone
        stop with ~ TEXT
        get rid of ~ TEXT|these
        get me off
        i want off
        out of this
        opting out
        do not ~ TEXTVERB|contact|text|message
        do not ~ send ~ TEXT|these|me|any
        dont send ~ TEXT|these|me|any|more|this
    """,
    "opt_out_not": """
        IF|should|when|why|do|can ~ i|we ~ STOPIT|quit|stop
        STOPIT ~ till|until|for|while|after|when
        before ~ STOPIT
        had to|i|we stop|stopped|quit
        i|we stop|stopped|quit|end|ended
        dont|didnt|never|not|wont|couldnt|cant stop|quit|cancel|end|unsubscribe|stopping
        stop at|in|after|halfway|doing|exercising|half|here|there
        stop the exercise|exercises|workout|set|band
        stop|stopped ~ after|half|set|halfway|early|at|because|by|hurting
        pain|hurt ~ stop
        stop by
        nonstop|stoped
        do not ~ send|text ~ until|till
        cancel ~ appointment|visit|appt
        cancelled|canceled
        remove ~ shoes|brace|cast|stitches|boot
        end of
        end|ended up|at|with|on
        in the end
        to stop ~ smoking|drinking
        tell|told me to stop
        doctor|dr said|says ~ stop
        when can i stop
    """,
    "opt_out_past": """
        had ~ STOPIT|quit|stopped|cancelled|unsubscribed|removed
        by mistake|accident
        i|had stopped|cancelled|canceled|unsubscribed|quit ~ by|TEXT|them
        accidentally|accident
    """,
    "opt_in": """
        ^ STARTKEY $
        ^ STARTKEY please|now|again|me|texts|messages|$
        STARTIT ~ TEXTVERB
        STARTIT ~ TEXTNOUN
        unstop|subscribe|optin|resubscribe|reactivate|reenroll
        opt ~ in
        opt me back
        SIGN|signed|put|add|enroll ~ me|up ~ AGAIN|back|up|on|in
        SIGN ~ me ~ up
        SIGN ~ up ~ TEXT|program|service|again|for
        add me
        put me ~ on ~ list
        WANT ~ TEXT ~ AGAIN|back
        WANT ~ TEXT
        want|like|love|wish ~ receive|receiving|get|getting|start|join ~ TEXT|them|these|again|those
        turn ~ TEXT ~ on|back
        turn ~ on ~ TEXT
        can i ~ get|start|join ~ TEXT|reminders ~ AGAIN
        bring back ~ TEXT
        send|text ~ me ~ AGAIN|back ~ please|now|$ !list !today
        miss ~ TEXT
        changed my mind ~ TEXT|start|want|send
        reinstate|restart
        back on the list
        enroll me
        start me ~ AGAIN|up|back
    """,
    "help": """
        ^ HELPKEY $
        ^ HELPKEY HELPKEY* please|me|$
        ^ help menu|commands|options|info|!me $
        who is|are|r|this ~ this|that|it|you|texting|sending|these
        ^ who|whos is|are|r|dis|dat this|that|you|dis|it
        whos this|that
        who ~ texting|sending
        who am i ~ texting|talking
        what is|are this|these|that number|text|texts|messages|about|for|service|thing|line
        what|whats is|are|this|these number|service|texts|messages|line
        what is this
        whats this
        how does|do|this|it ~ work
        how do|can i ~ use|answer|reply|respond|work|text|stop|change|send
        how ~ use ~ this|it|thing|system|service|line
        what ~ do i ~ text|reply|answer|type|say|put|send|write
        what ~ supposed to ~ text|reply|answer|type|say|put|write|send
        is this ~ person|robot|computer|bot|machine|real|human|automated|clinic|scam|legit|spam
        are you ~ person|robot|computer|bot|machine|real|human|automated|legit|scam
        am i ~ talking|texting ~ person|robot|computer|bot|machine|human
        real person|human
        what|which ~ words|commands|codes ~ text|use|send
        do i ~ text back|reply|answer|respond
        dont|not|cant ~ understand|know|figure|get ~ how ~ work|works|use|answer|reply|text|system
        how ~ get ~ help
        where|where's ~ these|this ~ coming|from|texts
        who sent
        what company|clinic|office|place
        need help ~ text|this|using|with
        how ~ works
        instructions ~ text|reply|service
    """,
    "wrong_number": """
        WRONG NUMBERWORD
        WRONG ~ NUMBERWORD
        you|u|ya|yall got|have|want|reached ~ WRONG
        no NUMBERWORD|one|body ~ here|by ~ name
        nobody|no one ~ by|here|named|called ~ name|that|here
        dont|do not|never ~ know ~ _ _? $
        i dont|do not know any|anyone|anybody|a|no|who|you !if !why !how !about
        dont know ~ anyone|anybody|person
        not my ~ therapy|number|exercises|message
        im|i am|this is|isnt|aint|isn not _ $
        im not _ $
        this isnt _ $
        this is not _ ,? $
        isnt|not ~ phone|number anymore
        you ~ mistaken|wrong|confused
        isnt|is not ~ her|his|their ~ phone|number|anymore
        wrong house|person|number|lady|guy|people
        mixed up ~ number|person
        think ~ you ~ wrong
        i|we dont|do not|never|didnt ~ sign|signed ~ up|for
        never signed
        i|we never ~ therapy|clinic|patient|physical
        not|dont ~ patient|therapist|therapy|physio|pt
        who is _ $
        new|got|this ~ number|phone ~ last|new|belonged|used|previous
        moved|changed|had ~ number|phone ~ ago|years|person
        doesnt|dont|does not live|work ~ here|anymore|there
        this is a _? _? $
        meant for ~ someone|somebody|else|another|other
        someone else
        not for me $
        had this number
        i am a
        who dis
    """,
    "pause": """
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
        from|the ~ # ~ to|through|till|until|thru|DASH ~ the? #
        be back ~ #|on|in|by|WEEKDAY|MONTH|DATE|next|after|the
        ill be back
        back on|by|in ~ #|WEEKDAY|MONTH|DATE|week|weeks
        start ~ back ~ next|in|on|after
        till|until i ~ back|return|home|better|well|recover
        until further notice
    """,
    "resume": """
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
    "resend": """
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
    "reschedule": """
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
    "question": """
        ?
        ^ QWORD ~
        should|can|could|may|must|shall i|we|he|she|my
        is|are|was|will|does|do|did it|this|that|these|they|the|there|my ~ ok|okay|safe|normal|alright|supposed|fine|bad|all|better|cover|cause|help|hurt|count
        is|are it|these|this ~ MODAL
        MODAL ~ i|we
        do|does|did i|we|you|my|the|it|this
        how many|much|long|often|far|heavy|high|low|do|should|soon|fast|come|can
        what if|about|should|do|kind|size|color|weight|does|is|happens|time|would|can|day
        when|where|why|which|who can|should|do|does|is|will|are|hand|side|leg|one|band|did
        if i ~ should
        wondering|wonder|curious
        question
        quick q
        was wondering
        what do you think
        any|advice|tips ~ tips|advice|suggestions
        please|can|could call|advise|phone ~ me
        call me
        have|need|want ~ talk|speak|ask ~ to|you|someone|ben|therapist
        supposed to
        ask ~ therapist|ben|doctor|her|him|you
        let me know if|what|when|how
        tell me if|what|when|how|why
        normal to
        ok|okay|safe|alright to
        ok|okay|safe|alright if
        do i
        would it|you|that|ice|heat
        whats|what ~ the|best|right|difference
    """,
    "chat": """
        ^ CHATWORD ~ $
        ^ CHATWORD CHATWORD* $
        CHATWORD ~ you|u|all|everyone|clinic|team|much|so|heart|again
        thank
        THANKS
        happy|merry ~ _ ~ $
        happy birthday|easter|thanksgiving|holidays|new|diwali|christmas|fourth|4th|mothers|fathers|monday|friday
        merry christmas
        god bless
        good morning|night|evening|afternoon|day|luck|one|to|job|idea
        ok|okay|k|sure|alright|right|fine|great|perfect $
        ok|okay|sure will do
        will do $
        got it $
        sounds good
        have a ~ day|night|weekend|evening|one|week
        see you
        see ya
        love ~ you|this|these|it|yall|ya
        you are|youre|your ~ kind|sweet|best|great|welcome|awesome|angel|doll|wonderful|nice
        how are you
        hope ~ you|well|all|everyone|yall
        stay warm|safe|cool|well|dry
        go bills|team|dodgers|yankees|birds|pack|chiefs|cubs|#|_ $
        no problem $
        no worries
        my pleasure
        nice ~ meeting|talking|seeing
        talk soon|later
        looking forward
        congratulations|congrats
        same to you
        you too
        lol|haha|lmao $
        what a ~ day|game
        weather|sunny|snow|rain|beautiful|game|score
        best wishes
        take care
        noted|gotcha|roger
        ill keep|be|try ~ at|good|best
    """,
    "correction": """
        SORRY ,|. DID|#|pain|not|it|i|was|should|that|make|the|my|meant|wrong|only|actually|typed|said|no
        oops|whoops|oop|woops|correction|scratch|disregard|erratum|typo|mistyped|nvm
        correction|mistake|correct|correcting
        i ~ meant
        MEANT !to !a !for !well
        meant to ~ say|write|put|type|text|send
        should|supposed ~ have|to|of ~ said|say|read|been|put|written|be !to !stand
        shoulda|shouldve said|been|put
        ignore|disregard|delete|forget|scratch|cancel ~ my|that|last|previous|earlier|first|what|the
        i|we SAID|put|told|typed|wrote|texted|sent|reported ~~ but|was|its|actually|should|really|not|meant|instead|wasnt
        SAID|put|typed|wrote|told ~ done|all|yes|no|none|#|not|2|everything ~~ but|was|actually|not|only|really|meant|instead|its
        i SAID|told|put|typed|wrote # ~
        hit|pressed|typed ~ wrong|key|button
        fat fingers|finger|fingered
        typed wrong
        wrong ~ key|button|number ~ typed|hit|pressed
        # , not #
        # not #
        not # ~ #
        not # ~~ it|was|is|its ~ #
        instead of #
        make that|it ~ #
        change ~ that|it|my ~ to
        change ~ my|that|the ~ answer|number|pain|report|last|yes|no
        earlier|previous|last|other|first|my ~ text|message|email|answer|report|reply|note ~~ was|wrong|said|should|read|incorrect|mistake|had|is
        actually ~ it|i|that|was|did|pain|only|make|its|no
        no wait
        wait ~ no|i|it|that|actually|,|.
        ^ wait
        ^ actually
        by mistake|accident|error
        take ~ back
        in error
        i ~ lied|fibbed|exaggerated|miscounted|misspoke|mispoke|misread|misremembered
        miscounted|misspoke|misread
        counted wrong
        my mistake|bad|error
        update
        after all
        reread|on second thought
        to correct
        not ~ like i said
        that was ~ yesterday|wednesday|monday|my|supposed|wrong|tuesday|thursday|friday|sunday|saturday
    """,
    "correction_not": """
        ^ sorry ,? cant|couldnt|no|i|didnt|not|too|but|for|about|im
        sorry $
        sorry ~ late|didnt|couldnt|for|about|missed|forgot|delay|cant|busy|to
        no mistake
        by mistake ~ deleted|erased
        deleted|erased|lost ~ mistake|accident
        by accident|mistake $
        correct form|way|posture
        wait till|until|for|to
        cant wait
        # wait no
        wait no pain
        if i ~ said
        not # AMPM
        # AMPM not
        not # ~ DAYTIME
        actually felt|feel|feels|enjoyed|liked|went|fun|did ~ all
        dr|doctor|therapist|ben said
        update my
        quit ~ by mistake
    """,
    "helper": """
        this is|its|it's ~ CLIENTLIKE|PERSON
        this is|its _ _? ~ daughter|son|wife|husband|granddaughter|grandson|aide|nurse|caregiver|caretaker|sister|neighbor|niece
        typing|texting|writing|answering|replying|sending|reporting for
        for my CLIENTLIKE
        her|his|moms|mamas|dads|grandmas|grandpas ~ exercises|therapy|session|program|exercise
        CLIENTLIKE ~ did|finished|completed|says|said|had|wants
        he|she says|said|did|finished|had|wants|got|completed
        sent by _ _? his|her
        wife|husband|daughter|son|aide|grandson|granddaughter|caregiver|nurse here
        your client|patient
        home health aide
        aide _ $
        this is his|her|their
    """,
}
