"""English rules for questions, chat, corrections, and who writes.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "correction_plain": """
        ^ tell a lie|fib
        ^ hold the phone|press|presses|line
        fat fingered
        change my|the pain|score ~ to ARTICLE? #
        ^ i? was|am wrong earlier|before|there
        ^ no? not ARTICLE? # ,|.|but !more ~ ARTICLE #
        did i say|write|put|type|text #
        disregard|ignore|scrap|forget previous|prior|earlier|last|my|the? previous|prior|earlier|last? msg|message|text|reply|answer
        amend|amending|rectify|correct|correcting my|the previous|prior|earlier|last? message|report|reply|answer|statement|entry
        told|tell|telling|sold you|u|ya|yous a? fib|fibs|fibbed|lie|porky
        fibbed|lied earlier|before|yesterday|last
        should|shouldve|shoulda read NO|not|#|all|none|done
        put|wrote|typed|gave|sent down? ARTICLE? # ~ .|,? its|it|was|is really|actually|truly ARTICLE? #
        put|wrote|typed|gave|sent down? ARTICLE? # for|on|as the|my? PAINNOUN .|,? its|it|was|is really|actually|truly ARTICLE? #
        wrong number|pain|answer in|on my|the|that last|previous|earlier|first? text|message|answer|reply|report
        error|mistake|typo|goof in my last|previous|earlier|first
        sorry for|about the|my|any mixup|mix|confusion|mistake|error|typo
        that|it wasnt|isnt right|correct|accurate|true ,|.|i
        ^ that|the|my YESKEY|done|n|no|text|message|answer|reply was ~ phone|pocket|mistake|accident|grandson|grandkid|kid|cat|dog|error|autocorrect
        fat|big|clumsy thumbs|thumb|fingers|finger
        wrote|typed|put|said ~~ meant to ~ write|type|put|say
        error|typo|mistake for #
        ^ typo|typos|correction|correcting|erratum|errata|edit|autocorrect|oops|whoops|oopsie
        scrap|scratch|strike|ignore|disregard|delete|forget that|it|my|the|last|what ~ $
        ^ scrap|scratch|strike|ignore|disregard that|it|my|the|last|what
        make that|it ~ #|none|all|no|part|half|yes
        i MEANT skip|no|yes|none|all|part|#|to? ~ say|write|put|type|done
        meant to ~ say|write|put|type|text|read|be|send
        was|were|thats|that supposed to ~ say|read|be|mean
        was|were meant|supposed to
        didnt|dint mean to ~ say|send|write|put|text|type
        hit send ~ soon|early|before
        wrong letters|letter|number|numbers|one|button|key|name|day ~ before|earlier|first|sorry|,|.
        when i SAIDWORD ~ all|done|yes|no|none|#
        i SAIDWORD ~ # ~~ was|meant|should|its|but
        i SAIDWORD ~ # ,|. ~ its|it|was|is
        ^ no? not # ,|. #
        not # , ~ #
        not YESKEY #
        YESKEY # not
        left off ~ zero
        take|taking back ~ that|what|my|done|it
        said|told ~ n|no|fine|done|all|yes ~ before|earlier ~~ but|truth|actually|managed|did
        said n|no|none before|earlier but
        mixed up|confused my|the|those ~ days|numbers|answers|letters|exercises
        change my ~ answer|report|reply|number|rating
        ^ no no i did
    """,
    "question": """
        ^ why do|did i|we|he|she ~ ~ got|have|need to
        ^ will|do i need|have
        ^ whats|what # mean
        will there be
        does|do|is|will _ work|working|available|there|in on|today|tomorrow
        need|want|like to ask
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
        ^ ~ fine|good|well thanks|thank ~ ,? and|how? about? you
        tell|say _ ~ hi|hello|hey|thanks|thank
        ill|will give it|that|them a go|try|shot|whirl
        ill try|do ~ harder|better|best
        love|enjoy getting|hearing|seeing|reading
        ^ same to you|ya|u $
        ^ ha|haha ha|haha? $
        kids|grandkids|family|company|son|daughter is|are coming|visiting ~ $
        how much you help|helped|mean
        ^ hi|hello|hey|howdy there|ben|all|folks|everyone|team|yall? $
        how|what about those|them|that _ $
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
        ^ no? not ARTICLE? # ,|.|but !more ~ ARTICLE #
        ^ sorry ,? the|my? PAINWORD is|was|at? #
        ^ not # SET ,? just|only|but #
        wrote|put|typed|said|sent # ~~ meant|intended
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
        sorry ,? no|nope ,? #
        oops|whoops ,? #
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
    "question_not": """
        ? no|none|nope|nah|nil|zero|yes|yep|done|all|nothing|never ,|.|$
        ? all of them|it ,|.|$
    """,
    "correction_not": """
        mean it|that|business ,|.|$
        forget the other|rest|others|last
        oops|whoops|oop|sorry ~ deleted|erased|lost|forgot|missed|dropped|fell|misplaced
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
    "self_fix": """
        sorry ,? no|nope
        wait no|,|that|i|actually|pain|it|make
        no wait
        no make
        i mean
        scratch that
        make that
        sorry #
        sorry i|pain|make
        or rather
        actually #|pain
        correction
        oops|whoops ,? #
        # ,|. no ,? put|say|call|make it|that? #
    """,
    "helper": """
        this is|its|it's ~ CLIENTLIKE|PERSON
        CLIENTLIKE ~ texts|texting|typing|messages|talking thru|through|via
        this is|its _ _? ~ daughter|son|wife|husband|granddaughter|grandson|aide|nurse|caregiver|caretaker|sister|neighbor|niece
        typing|texting|writing|answering|replying|sending|reporting for
        for my CLIENTLIKE
        her|his|moms|mamas|dads|grandmas|grandpas ~ exercises|therapy|session|program|exercise
        CLIENTLIKE ~ did|finished|completed|says|said|wants
        !SPOUSE CLIENTLIKE ~ had
        he|she says|said|did|finished|had|wants|got|completed
        sent by _ _? his|her
        wife|husband|daughter|son|aide|grandson|granddaughter|caregiver|nurse here
        your client|patient
        home health aide
        aide _ $
        this is his|her|their
    """,
    "both_of_us": """
        ^ for? both of? us? $
        ^ all|everyone of? us? $
    """,
    "near_day": """
        today|now
    """,
    "correction_plain_not": """
        ^ oops|whoops|oop|sorry ~ deleted|erased|lost|forgot|missed|dropped|fell|misplaced
    """,
}
