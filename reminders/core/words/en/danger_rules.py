"""English rules for danger signs, their grades and concerns: a body part, what is wrong with it, how it began.

Written wide on purpose: a sign that is lost is worse than a needless call. What takes a hit back (denied, another
person, long ago, an idiom) is decided by `reading/scope.py` and by the idioms here.
"""

RULES = {
    "danger.chest_or_breathing": """
        CHEST ~ TIGHT
        CHEST ~~ TIGHT
        TIGHT ~ CHEST
        TIGHT ~~ CHEST
        sitting|sit|settin|standing|stood|parked|stepping ~ on ~ CHEST
        something|someone|somebody|like|elephant ~ sitting|sit|settin|standing|parked ~ on it|me
        CANT|hard|trouble|difficulty|difficult|struggling|struggle|tough|problem|problems|fighting|gasping|gasp ~ BREATHE
        CANT ~ get|catch|draw|take ~ BREATH
        get|getting|got enough air
        not|wasnt|isnt|aint|wont|didnt ~ BREATHE|breathing ~ right|good|well|properly|easy|normal
        not get|getting ~ air
        short|shortness|shorter of? ~ breath|breathe|breaths|air|breth
        shortness
        short winded|breath
        shortwinded|sob|breathless|winded|windid|wheezing|wheezy|wheeze|hyperventilating|suffocating|smothering|asthma
        out of breath|wind|air|breth
        no air|wind|breath left
        no air
        breath ~ whistling|short|shallow
        whistling|whistles ~ breath|breathe|breathing
        lost my breath
        gasping|panting|huffing|puffing|heaving
        BREATHE|breathing ~ hard|heavy|fast|funny|difficult|shallow|labored|trouble|badly|rough|worse|bad
        cant|couldnt BREATH
        HEART ~ HEARTSIGN
        HEART ~~ HEARTSIGN
        HEART ~ out of my CHEST
        HEART ~ going|goes|went ~ mile|crazy|nuts|wild|haywire|#|dozen|hundred
        HEART ~ beat|beating|beats ~ fast|hard|funny|weird|out|like|too|irregular|skipped
        HEART ~ hurts|hurt|hurting|pain|fast|stopped
        HEARTSIGN HEART|heartbeat
        palpitations|palpitation|angina|arrhythmia|afib
        heart attack
        cold|clammy sweat|sweats|sweaty
        clammy
        TIGHT|PAIN|numb ~ down|into|in|up ~ left arm|jaw
        PAIN ~ arm|arms ~ jaw
        left arm|jaw ~ hurts|aches|aching|hurting|pain|throbbing ~ jaw|arm|sweat|sweaty|CHEST
        CHEST ~ like|feels|felt|bothering|bothered|bad
        CHEST ~ not right
        lips ~ blue|purple|gray
    """,
    "danger.nerve_or_bladder": """
        NUMB ~ LIMB|FACE|SADDLE|BODY|tongue
        LIMB|FACE|SADDLE|BODY|tongue ~ NUMB
        LIMB|FACE|SADDLE ~~ NUMBONLY
        NUMBONLY ~~ LIMB|FACE|SADDLE
        numb|numbness|tingling|tingly|pins
        no|lost|without|losing|lose ~ feeling|sensation ~ LIMB|FACE|SADDLE|BODY|down|below|between
        LIMB|SADDLE|BODY ~ no|lost|losing|without ~ feeling|sensation
        CANT|cant|couldnt ~ feel ~ LIMB|FACE|SADDLE|toilet|paper|BODY|anything|when
        CANT|cant|couldnt ~ move|lift|raise|control|use ~ LIMB|FACE|foot ~ all|anymore|right|left|side|suddenly|it
        CANT move|feel|control|lift|raise|use my|his|her|the? left|right? LIMB !past !above !over !higher !overhead
        cant feel my|the|anything|toilet
        LIMB ~ wont|cant|not|isnt|doesnt|wouldnt|aint|quit|stopped ~ work|working|move|moving|respond|lift|hold|listen|obey|cooperate
        LEG ~ GAVE ~ GIVEOUT !of
        LEG ~ keep|keeps|kept ~ giving|buckling|going|collapsing
        LEG ~ BUCKLE
        LEG ~ just? went|gave|gone !to !for !back !up !into
        LEG ~ gave|gives|giving|give
        BUCKLE|gave|gives|giving|wobbly ~ my? LEG
        LEG ~ weak|weakness|heavy|dead|useless|limp|noodle|noodles|rubber|rubbery|jelly|jello|lead
        LIMB|side|hand|arm ~ WEAK
        WEAK ~ LIMB|side|hand|arm|grip
        sudden|new ~ weakness
        weakness
        foot|toe|toes drop|drops|dragging|drags|slaps|slapping
        dragging|drag ~ foot|leg|toes
        CANT|cant|couldnt|didnt|lost|losing|lose|no|trouble|problem|problems ~ control|hold|feel|hold|holding|tell|controlling|started|start|starting ~~ BLADDER
        BLADDER ~ control|accident|accidents|leaking|leaked|leak
        BLADDER ~ without ~ knowing|feeling
        wet|wetting|peed|pee|peeing|pooped|soiled|messed|dirtied|crapped|shit|piddled ~ myself|himself|herself|pants|bed|self|drawers|sheets|undies|underwear|chair|trousers
        CANT|cant|couldnt|havent|unable|trouble|hard ~ pee|urinate|poop|go|peed|empty !to !for !out !on !home !there !down !up
        havent|couldnt|cant ~ peed|pee|urinated|urine
        cant|couldnt go ~ bathroom|toilet|pee
        leaking|leaked|dribbling ~ urine|pee|poop|stool|bladder
        incontinent|incontinence|retention
        lost|losing ~ bladder|bowel|bowels|water|control
        accident|accidents ~ bed|pants|bathroom|bladder|bowel|toilet|drawers|sheets|chair
        had ~ accident|accidents ~~ feel|know|control|bed|pants|bathroom
        bathroom|toilet accident|accidents
        numb|feeling|tingling|tingly|sensation|dead ~ between my? legs
        between my legs ~~ NUMB
        down there ~ NUMBONLY|dead|feeling
        NUMBONLY ~ down there
        wiping|wipe|wiped ~ feel|feels|different|numb|nothing
        cant|couldnt feel ~ wipe|wiping
        FACE ~ DROOP
        FACE ~~ DROOP
        DROOP ~ FACE
        face ~ funny|weird|wrong|off|one
        SPEECH ~ SLUR
        SLUR ~ SPEECH
        SPEECH ~ CANT|wont|not|wrong|trouble ~ come|coming|out|right|sense
        SPEECH ~ come|coming|came ~ out ~ wrong|funny|jumbled|garbled|weird|mixed
        CANT|cant|couldnt|trouble|wont|hard ~ get|find|form|say|speak|talk|talking|speaking|understand|make ~ words|sentence|sentences|speak|talk|right
        cant|couldnt speak|talk
        trouble|difficulty speaking|talking|finding
        slurred|slurring|slurry|slurs
        gone|went|going|goes|fell|falls|falling to? sleep|asleep ~~ LIMB|wake
        LIMB ~ gone|went|going|goes|fell|falls|falling to? sleep|asleep
        LIMB ~ sleep|asleep
        lost|lose|losing ~ water|bladder|bowels
        CANT|cant|couldnt ~ get ~ words|word
        eyelid ~ DROOP
        talking|speaking|talks ~ funny|gibberish|drunk|nonsense
        one side ~~ weak|droop|drooping|drooped|numb|limp|face|body|mouth|sagging|wont|cant|not
        side of ~ face|body ~ NUMB|WEAK|DROOP
        a stroke
        mini stroke
        ministroke|tia
        lost|losing|lose|blurry|double|blurred ~ sight|vision
        vision ~ lost|gone|blurry|double|blurred|black|dark
        CANT|cant see ~ one|left|right|either|eye
        blind ~ eye
        seeing double
        worst headache
        thunderclap
        headache ~ worst|ever|life
        sudden ~ confusion|confused|headache
        confused ~ cant|doesnt|where|suddenly
        dropping|drop|dropped|drops ~ cup|cups|things|everything|fork|spoon|glass|mug|keys ~~ hand|arm|weak|numb
        ARM|hand ~ dropping|drop|dropped ~ things|cup|stuff|everything
        arm|leg|hand ~ doesnt|dont|wont|isnt ~ work|lift|move|belong
        electric ~ down|legs|both
        both legs ~ heavy|weak|numb|tingling|shooting
    """,
    "danger.fall_or_injury": """
        FELL !asleep !behind !apart !short !through !in !for !from !flat !ill !sick !into !victim !out !over !between !under !back !to !silent !love
        fell|fallen|fall|falling down|off|on|over|from|in|out|backward|backwards|forward|hard|again|flat|getting|going|trying|walking|carrying|twice|outside|yesterday|today|last|this|and|while|to|onto|into|at|against|between|by|coming|stepping|through|under|over|trip|tripped|because
        TOOK ~ FALLNOUN !weather !colors !leaves !festival
        took|taken|had|take ~ spill|tumble|fall|header|nosedive|digger
        went|go|gone|going down !to !the? !stairs? !hill !from !and?
        went down ~ hard|like|on|floor|ground|kitchen|hall|bathroom|yard|garden|tub|shower|in|at|steps|stairs
        down i went
        went ~ flying|sprawling|tumbling|splat|over|head
        went|ended|wound ~ on|to|onto ~ FLOOR|floor|ground|knees|butt|backside|behind|bum|rear|rump|tail|fanny|keister|face|my? back
        ended up on ~ FLOOR|ground
        landed|land ~ on|in ~ FLOOR|BODY|butt|backside|behind|bum|rear|tailbone|keister|fanny|hard|my
        landed hard
        hit|hits|meet|met|kissed ~ FLOOR|deck
        found|woke ~ on ~ floor|ground|bathroom
        on the floor|ground ~ cant|couldnt|get|up
        couldnt|cant get up ~ floor|ground
        tripped|stumbled|toppled|slipped|slid !up !my? !disc !disk !mind
        tripped|stumbled|slipped ~~ hit|hurt|landed|down|knee|hip|head|floor|banged|fell|wrist|elbow|twisted|bruised
        bit the dust
        missed|miss ~ step|steps|chair|stair|curb|rung
        skinned|skint ~ hands|knee|knees|elbow|palms|shin|hand
        went|going|gone down like
        tumbled|tumble ~ off|down|over|from
        slid out|off
        wiped|wipe|wipe out on|in
        ate it|pavement|dirt|concrete|floor|asphalt
        faceplanted|faceplant|toppled
        lost my balance ~~ fell|down|hit|landed|floor
        TWIST ~ JOINT|BACKBONE|wrist
        rolled|twisted|sprained|turned|wrenched ~ JOINT|BACKBONE
        JOINT ~ twisted|rolled|sprained|wrenched|torn|snapped
        pulled ~ muscle|hamstring|groin|calf|back|something ~ bad|badly|pop
        HIT ~ JOINT|BACKBONE|HEADPART|ribs|head
        JOINT|HEADPART ~ size of ~ grapefruit|orange|melon|egg|golf|baseball|softball|lemon|balloon|football|cantaloupe|watermelon
        whacked|banged|bashed it|them
        face planted|plant
        JOINT|HEADPART|ribs ~ smashed|banged|bumped|hit|whacked|gashed|bruised|broken|broke|fractured
        BRUISE ~ JOINT|HEADPART|ribs|tailbone|BODY
        dropped|drop|fell ~~ on ~ foot|toe|toes|hand|leg|me|feet
        DISLOC
        dislocated
        JOINT|hip ~ popped|pop|came|slid|slipped|went|jumped|knocked ~ socket|joint|place
        JOINT|hip ~ came|come|popped|slipped|slid|jumped|went|pop ~ out
        out of ~ socket|joint|place
        car accident|wreck|crash|crashed
        rear ended
        rearended
        accident|wreck ~ car|truck|bike|road|driving|freeway
        crashed|wrecked ~ car|bike|truck|my
        hit|struck|knocked by ~ car|bike|truck|door|cart
        knocked ~ down|over ~~ me|i
        got|was|been knocked|hit|pushed|run|shoved ~ down|over|by|car
        broke|broken|fractured|cracked|busted my? JOINT|ribs|rib|bone|BODY
        broke|fractured ~ JOINT|bone|ribs|rib|something
        hurt|injured myself
        injured|injury
        head hit|bounced
        concussion
        goose egg
        knot on my? head
        black and blue
    """,
    "danger.possible_fracture": """
        BACKBONE ~ CRACK
        BACKBONE ~~ crack|cracked|pop|popped|snap|snapped|crunch|crunched
        CRACK ~ BACKBONE
        CRACK ~~ BACKBONE
        felt|heard|feel|hear|felt|made ~ crack|pop|snap|crunch|cracking|popping|snapping|give|tear|crackle ~~ PAIN|BACKBONE|hurts|hurt|bad|move|straighten|rib|ribs|stand|walk|sharp|agony|killing
        felt|heard|feel|hear ~ crack|pop|snap|crunch !no
        JOINT ~ went|go|goes|made|gave ~ pop|crack|snap|crunch
        something|sumthin|somethin|it ~ cracked|popped|snapped|crunched|crunch|pop|snap|crack
        SUDDEN ~ PAIN ~ BACKBONE
        SUDDEN ~ BACKBONE
        SUDDEN ~~ BACKBONE ~ PAIN
        SUDDEN ~~ BACKBONE
        BACKBONE ~ SUDDEN
        BACKBONE ~~ sudden|suddenly|knife|stabbing|lightning|nowhere|jolt
        BACKBONE ~ went|gave ~ out ~~ sharp|sudden|cant|stand|straighten
        BACKBONE|ribs ~ broke|broken|fracture|fractured|compression
        compression fracture
        broke|fractured ~ BACKBONE
        PAIN|hurt|hurts ~~ BACKBONE ~~ sneezed|coughed|sneeze|cough|coughing|sneezing|all? once
        sneezed|coughed|sneeze|coughing|sneezing ~~ BACKBONE
        BACKBONE ~~ sneezed|coughed|sneeze|coughing|sneezing|straighten
        getting|got|lost ~ shorter|height|stooped|hunched
    """,
    "danger.faint_or_dizzy": """
        DIZZY !heights
        light|lite|swimmy|swimming|foggy headed|head
        lightheaded|lite headed
        head|everything|room|world|walls|floor|things|ceiling|house ~ spinning|spun|spin|swimming|swirling|whirling|tilting|spins|swam|tilted|reeling
        head rush
        everything|its|all black|gray|grey|blurry|dark
        room|house ~ going ~ round
        passed|passing|pass|blacked|black|blacking|knocked ~ out
        passed|blacked|passing|blacking out
        faint|fainted|fainting|fainty
        lost|losing|lose|lost ~ consciousness
        keeled|keel over
        went|go|goes|turned|going|got|seeing|saw ~ black|gray|grey|dark|white|stars|spots|dim
        saw|seeing|seen ~ stars|spots|black|double
        stars ~ eyes
        eyes|vision|sight ~ black|gray|grey|dark|dim
        unconscious|swooned|vertigo
        about|almost|nearly|near ~ pass|passed|keeled|faint|fainted|black|blacked|collapse|collapsed
        collapsed
        collapse
        woke|came to|up ~ on ~ floor
        off balance
    """,
    "faint_full": """
        passed|blacked|passing|blacking out
        fainted|unconscious|swooned|collapsed
        lost ~ consciousness
        keeled over
    """,
    "faint_near": """
        ALMOST|gonna|going|about|close|thought|would|feel|felt|feeling ~ faint|fainted|pass|passed|passing|black|blacked|blacking|keeled|keel|collapse|collapsed|fainting
    """,
    "dizzy_standing": """
        DIZZY ~~ stand|standing|stood|get|getting|got|up|rise|rising|sit
        stand|standing|stood|get|getting|got|rise|sat ~~ DIZZY
        when|whenever|time|if ~~ up ~~ DIZZY
        head rush
    """,
    "passed_over": """
        passed !out
        went|gone|goes away
        better|ok|okay|fine|alright now|after|again
        for|lasted ~ second|sec|minute|moment|seconds
        im ok|okay|fine|alright
        over now
        cleared up
        settled
        wore off
        its gone
        ok|okay|fine now
    """,
    "danger.severe_pain": """
        SEVERE
        worst ever|agony
        worst pain|ache|hurt ive|i|weve|ever|yet|imaginable|possible
        worst ~ PAIN ~ life|ever|had
        worst its|it ever
        CANT|cant|couldnt|cannot ~ stand|bear|take|tolerate|handle|endure ~ PAIN
        CANT|cant|couldnt ~ stand|bear|take|tolerate|handle ~ anymore|longer|more|much
        PAIN|hurts|hurting ~ CANT|cant ~ stand|bear|take|tolerate|move|walk|sleep|breathe|function|think|get|straighten
        PAIN|hurts|hurting ~~ CANT|cant|hardly|barely stand|bear|take|tolerate it|this
        hurts|hurt|hurting so bad|much i|im|that ~ cry|crying|cried|scream|screaming|holler|hollering|hollerin|cant|couldnt|threw|vomit|sick|stand|move|walk
        PAIN ~ so ~ bad|intense|severe|awful ~~ cry|crying|cried|scream|screaming|cant|couldnt|threw|vomit|sick|move|walk
        scream|screaming|screamed|crying|cried|cry|tears|sobbing|weeping|hollering|holler|yelling ~~ PAIN|agony|hurts|hurt|hurting
        PAIN|hurts|agony ~~ screaming|crying|tears|sobbing|hollering
        agony
        PAIN ~ through|thru the roof
        PAIN ~ off the chart|charts|scale
        PAIN ~ killing me
        PAINWORD|BODY|it|this ~ killing me
        is|are killing me
        severe|extreme|intense|terrible|horrific PAINWORD !in? !no
        beyond|past|over ~ ten|# ~ PAIN
        more than TEN|10
        higher than TEN|10
        pain ~ beyond|past words|bearing
        too|so ~ PAIN|painful to ~ bear|stand|move|walk
        tortured|torture
        doubled over ~ PAIN
    """,
    "danger.crisis": """
        want|wanna|wish|wanted|rather|like|ready|going|gonna|thinking|thought|think|hoping ~ DIE|dead|dying
        wish|wished|wishing ~ was|were|wasnt ~ dead|here|born|alive|around
        wish|hope|hoping|pray|praying ~ wouldnt|dont|didnt|would|not|god|lord ~ wake|take
        kill|killing|hang|shoot|drown|harm|harming|hurting|cutting|hurt|off myself
        end|ending|finish|finishing|took|take|taking ~ my? life
        ending it !today
        end|ending it all|already
        ending it
        SUICIDE
        dont|dunno|not|never|no|cant|cannot ~ want|wanna|wish|see ~ live|living|alive|life|wake|going|here|around|anymore !today
        dont|dont want|wanna ~ be here|around|alive|on
        dont want|wanna to? live|wake
        dont wanna|want to? go|be on|alive|living
        better|best off ~ dead|without|gone
        better off dead|gone|without
        better ~ off ~ dead|gone|ground|grave
        better ~~ if i ~ dead|gone|died
        better ~ if i ~ dead|gone|died|wasnt|werent
        world|everyone|everybody|family|they|kids|yall|you ~ better ~ without me
        no ~ point|reason|use|sense|hope ~ living|live|alive|life|going|on|anymore|here
        nothing ~ live for
        dont|cant see|know ~ point|reason|why ~~ living|alive|live|going|on|anymore|here|bother
        life ~ not|isnt|aint|no|nothing ~ worth|living|meaning
        not worth living
        cant|cannot|dont want to go on|live ~ like|this|anymore|much|without|longer|with
        cant|cannot go on
        tired|sick|done ~ living|life|being alive|existing
        done with life|living|everything|it all
        be with|join|joining ~ him|her|harold|husband|wife|walter|god|lord|jesus|again|soon
        PILLS ~~ know|thinking|counted|ready|loaded|enough|take|end|all|look|looking|saved
        thinking|thought|look|looking|counting|counted|saved|saving|staring ~~ PILLS
        take|took|taken|swallow|swallowed|taking ~ all|whole|bottle|handful|many|every ~ PILLS|meds|medicine
        overdose
        nobody|no one ~ miss|care|notice ~ me|gone|if
        no good to ~ anybody|anyone
        goodbye|goodby|farewell ~ world|forever|everyone|cruel
        wont be|here ~ much longer|tomorrow|around
        hope i dont wake
        dont ~ wake up
        self harm
        if i ended it
        be|join|joining|see|meet|with ~ my maker
        see my maker
        sooner|rather be with my
        enough of ~ this life|life|living
        wrote|write|writing ~ letters|goodbyes|will|note ~~ kids|family|goodbye|today
        in the ground
        meet my maker
        easier ~ if i ~ gone|wasnt|ended|died|dead
        easier ~ without me
        thought about how
        for the last time
        thoughts of ~ harming|hurting|dying|death|ending|suicide
        give up on life|living
        giving up on life|living
        burden ~~ everyone|family|kids|die|dead|gone|anymore|them|alive
        rather ~ not ~ here|alive|be
        disappear forever
        what is there to live
        why ~ living|alive|live|bother living
        jump ~ off|from|front ~ bridge|roof|train|building
    """,
    "idiom.fall_or_injury": """
        fell|fall|falls|fallen|falling asleep|behind|apart|short|ill|sick|silent|victim
        fall|falling|fell back asleep
        fell in with
        fell to pieces|sleep
        knocked|knock ~ out of bed
        cracked|crack ~ up
        broke|break my|his|her neck ~ laughing
        nearly|about|almost broke
        dislocated my sense
        fell on ~ deaf
        arm|eyelid|face|mouth ~ falls|falling|fell|drop|drops|dropped|droop
    """,
    "idiom.faint_or_dizzy": """
        knocked|knock em|them|it|these|those|all|mine|both|my ~ out
        knocked|knock out ALL|#|my|the|em|mine|both
        knocked me out of bed
    """,
    "idiom.nerve_or_bladder": """
        pins and needles bowling|league|club
        went on vacation|strike
        dead from|tired
    """,
    "idiom.severe_pain": """
        killing me lol|haha
    """,
    "denied_all": """
        none of that|those|these|it|them
        nothing odd|unusual|weird|like that|strange|scary
        no such
    """,
    "taken_back": """
        in my dream
        i dreamed|dreamt|dream
        had a dream
        not me ~ hes|shes|he|she
        patients not me
        when i wrote|said|typed|put
        WROTE ~ meant
        i did not mean
        it was not me
    """,
    "chronic": """
        like|as it|they always does|do|did
        always done|does|did|been|has|have|had
        comes right back
        since i was
        my whole life
        all my life
        for years
    """,
    "idiom": """
        fall|falling|fell|fallen in|out ~ love
        fell ~ love
        fell|fall|fallen off the wagon
        fell|fall|falling for
        fell|fall|fallen hard for
        fell|fall|fallen into ~ bed|sleep|rabbit|trap|routine|habit|slump|rut|place|step|category|nap|chair|recliner
        fell|fall|fallen between ~ cracks|couch|cushions
        fell|fall|fallen from ~ grace|favor
        fall|falls|falling on a|monday|tuesday|wednesday|thursday|friday|saturday|sunday|the
        fall weather|colors|leaves|festival|break|semester|season|cleaning|garden|foliage|term|bulbs|2025|2026
        this|last|in|next|every fall $
        falls|fall prevention|risk|class|program|clinic|alarm|pendant|detector|monitor
        prices|temperature|sales fell|falling|fall
        rain|snow fell|falling|fall
        hit the|my|all ~ hay|sack|road|store|shower|gym|jackpot|spot|books|beach|town|target|goal|goals|marks|reps|sets|snooze|send|wrong|button|links|bottle
        hit ~ reps|sets|number|numbers|target|goal|goals|all|every|home|wall|gym|key|button
        hit me ~ hard|later|up|funny|like|that
        hit hard
        hit the spot|wall
        slipped|slip|slips|slipping my|his|her mind
        slipped up|away|by|out|on|into ~ robe|slippers|shoes|nightgown|something|coat|clothes
        slip|slipped disc|disk
        slipped|slip through ~ cracks
        slip of
        twisted|twist|twisting|broke|broken ~ my|his|her arm to
        twist my arm
        twisted ~ arm ~ to|into
        twisted sense|humor|story|plot
        leg|legs ~ TIRED
        break|breaks|broke|broken|breaking my|your|his|her|our heart|bank|news|record|habit|streak|sweat
        break a sweat|leg
        broke ~ sweat|even|record|habit|streak
        heart ~ isnt|wasnt|not ~ in
        heart skipped a beat
        heart ~ broke|broken|melted|melts|full|happy|sings|goes out|warm|gold|content
        heart's content
        bless ~ heart
        heart to heart
        by heart
        took|takes|take|taking|stole ~ my breath|breath away
        breath away
        out of breath laughing
        laughed ~ breathe|breath|hurt|cried|sides
        hold|holding|held|holdin ~ breath
        dont hold your breath
        deep breath|breaths|breathing
        breath of fresh air
        save your breath
        breathing exercises|exercise|techniques|room|down
        caught|catching my breath
        to|let ~ catch my breath
        waste|wasting ~ breath
        room to breathe
        fresh air
        nearly|almost|about|just killed me|us lol|haha
        killed|killing|kills me lol|haha|laughing|jk|ha
        nearly|almost|about|like|bout to? killed|died|killing|kill|die ~ lol|laughing|haha
        killing it|time|two
        kill for|time|the
        dying|die|died to|of|laughing|for|inside
        dead lol|haha|tired|battery|serious|set|line|bug|lift|lifts|ass|on|end
        to die for
        im dead
        bored|tired|scared|hungry|laughing|embarrassed to death
        to death
        dead tired|dead dog
        gave|give|gives|giving me a|the heart attack
        about|nearly|almost had ~ heart attack|stroke|fit|cow|conniption
        heart attack ~ lol|when|haha
        stroke of ~ luck|genius|midnight
        back stroke
        backstroke|breaststroke
        pop|popped|pops over|by|tart|corn
        pop|popped|pops in !my !the !both !his !her
        pop|popped|pops ~ tart|corn|quiz|question|music|champagne|balloon|pill|advil|tylenol
        cracked|crack|cracking|cracks|crackin me|us|myself ~ up
        cracked up
        cracked|crack|cracking ~ egg|eggs|nuts|joke|jokes|beer|book|window|door|smile|code|open
        crack of dawn
        wise crack
        snap|snapped|snaps ~ out|pictures|photo|picture|photos|peas|fingers|at|chat|decision|beans
        snap|crackle pop
        oh snap
        cold snap
        numb from ~ dentist|novocaine|cold
        dentist ~ numb
        novocaine|novocain|lidocaine
        mind|brain|tired|boredom numb|numbing
        number
        dizzy|giddy ~ with|from ~ joy|happiness|excitement|success|love
        dizzy blonde
        head ~ spinning ~ with|from ~ news|numbers|names|paperwork|forms|questions
        spinning class|class
        faint of heart
        faint|faintest hint|smell|idea|line|clue|memory|sound
        not for the faint
        pass|passed|passing out ~ candy|flyers|papers|programs|cards|bulletins|food|treats|masks|halloween
        pass out candy
        passed|passes|pass away|on
        blacked out curtains
        black ~ out curtains
        power|lights|electricity ~ blacked|out
        blackout
        burning ~ calories|leaves|fat|dinner|toast|candle
        chest ~ drawers|freezer|hair|cold|day|high
        chest of drawers
        off my chest
        weight off my|the
        close to ~ chest|heart
        under pressure
        peer pressure
        blood pressure
        pressure ~ is|was|120|130|cooker|cuff|washer
        bent|fall|fell|falling over backwards
        head over heels
        head|heads up
        hit the nail
        nail on the head
        hit my head ~ wall ~ lol
        banging my head against
        cut ~ short|grass|lawn|hair|back|off|down|it|out|corners|the|myself|coupons|class
        cut myself some
        broke down|dollar|up|my phone|my band|my streak|out
        car broke
        heavy ~ schedule|traffic|rain|heart|lifting|day|load|breakfast|meal
        drop|dropped|dropping ~ in|by|off|line|kids|note|ball
        dropped the ball
        dropped ~ grandkids|grandson|mail|kids
        end it there|here|today
        end|ended ~ it ~ at|with|there|here
        wet ~ whistle|weather|grass|leaves|floor|outside|hair|wash
        funny|new|great ~ bone
        rolled|rolling ~ eyes|out ~ bed
        rolled over
        rolled out
        turned ~ back|heel|head|down|around|in
        turned|turning 60|70|80|90|#
        strained ~ peas|relations|eyes
        jammed schedule|packed
        legs ~ sea
        asleep ~ at|wheel|chair|couch|sofa
        down the|to the
        going down to|the
        went down to|the ~ store|shore|street|road|basement|hall|stairs|list|beach|river|cellar|block
        went down ~ rabbit|memory|list|drain|swelling|swollen
        pain|swelling|number|numbers|it|price|fever ~ went|goes|going|gone|came down
        internet|power|tv|phone|website|wifi|line|sun|lights|elevator|system|server ~ went|is|down
        trip|trips to|with|this|next|planned|coming|home
        trip|trips ~ away|vacation|weekend|store|mall
        road|bus|business|day|boat|ski|fishing|field|church|surf|camping|next|long|big|my|our|a|the|on|for|hunting|group|this trip
        had to slip|run
        slid into home
        tumble dry|dryer
        stumbled upon|across|on
        spill ~ beans|coffee|tea|milk|guts|it
        had ~ spill ~ kitchen|coffee|milk
        shot ~ numb
        cold sweat ~ movie
        tore ~ through|into|up|down
        couldnt|cant breathe ~ laughing|lol|nose
        nose ~ breathe|stuffed|stuffy|stuffed|congested
        laughing|laughed ~~ breathe|breath|died|dying|fell|tears|hurt|crying
        crying|cried|tears ~ laughing|movie|wedding|happy|joy|onions|eyes|show
        pain in the neck|butt|ass|rear|backside
        pain ~ in the neck
        jump ~ rope
        cut the rope
        gun ~ show|range
        jumping|jump the gun
        under the gun
        top gun
        bridge ~ club|game|exercise|group
        tired ~ of ~ living ~ with|out
        done with everything ~ list|today|on
        done with everything $
        i want to live
        bless
        take my pills
        took my pills
        end of
        stars ~ game|night|out
        saw stars|spots ~ game|sky|concert
        nearly|almost|about passed out ~ when|bill|price|from ~ shock|bill|heat
        stop me dead
        dead in ~ tracks
        over my dead
        drop dead
        dead bug
        died ~ laughing|phone|battery|down
        hurt my feelings|pride
        hurt ~ feelings|pride
        killed ~ the|a|that ~ bug|snake|spider
        scared me
        no ~ falls
        fall free
        like a champ
        nothing broken
    """,
    "near_fall": """
        ALMOST|close|nearly|about ~ FELL|fall|tripped|slipped|went|fallen|falling|stumbled|toppled|lost|landed|slid|down|twisted|rolled
        ALMOST ~ took|had ~ FALLNOUN
        ALMOST ~ ate|ended|landed|wound|broke
        could|couldve|would|wouldve ~ FELL|fallen|tripped
        kept ~ from ~ falling
        instead of falling
        without falling
        before i fell|hit|fall
        save|saved ~ from ~ falling|fall
    """,
    "caught": """
        CAUGHT myself|me|my|the|it|a|onto|hold|on
        CAUGHT ~ rail|counter|table|wall|chair|bench|sink|door|elbow|arm|cane|walker|railing|banister
        held ~ on|rail|counter|onto
        didnt|never|not|wasnt ~ fall|fell|down|go|hit|land ~ down|$
        didnt|never|not ~ hit|touch|touched ~ ground|floor
        saved|save ~ it|myself
        didnt|never ~ go|went|fall|fell|hit down|over|floor|ground|$
        stayed up|upright|standing|feet
        kept my balance|feet
        steadied|recovered|righted
        in time
        before ~ fell|down|floor
        regained
    """,
    "head_hit": """
        HIT ~ HEADPART
        HEADPART ~ HIT|bounced|bleeding|wall|floor
        landed on my? HEADPART
        goose egg
        concussion
        knot on ~ head
        head ~ floor|ground|pavement|concrete
    """,
    "cannot_rise": """
        CANT|cant|couldnt|cannot|unable|wont|barely|hardly ~ get up|off
        CANT|cant|couldnt|cannot|unable|barely|hardly ~ stand|walk|weight|rise
        CANT|cant|couldnt|cannot ~ put ~ weight
        stuck on ~ floor
        still on ~ floor
        on the floor|ground now
        had to call|get|be ~ fire|ambulance|911|paramedics|help|neighbor|helped
        911|ambulance|paramedics
    """,
    "hurt_by_fall": """
        BODY ~ SORE|HURT|PAIN|swollen|bruised|black|fat|bleeding|#
        HURT|SORE|PAIN ~ BODY
        sore all
        bruised|bruise|bruises|bleeding|swollen|black|cut|gash|scraped|broken|broke|fat|stitches|er|xray|lump
        HIT ~ BODY|HEADPART
        landed on ~ BODY|HEADPART
        hurt|hurts|hurting|pain|injured|sore
    """,
    "unhurt": """
        not|wasnt|isnt|didnt|nothing|no|never ~ hurt|hurts|broken|broke|injured|injury|injuries|bruises|bruise|damage|harm|bad|worse
        unhurt|uninjured|fine|ok|okay|alright
        just ~ shook|shaken|embarrassed|pride|scared
        im ok|okay|fine|alright
    """,
    "older_day": """
        yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekend
        last night|week|weekend|monday|tuesday|wednesday|thursday|friday|saturday|sunday
        # days|weeks|week|day ago|back
        days|week|weeks|day ago|back
        other day|night|week
        mon|tues|tue|wed|thurs|thu|fri|sat
    """,
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
        new ~ PAIN ~ BACKBONE
        BACKBONE ~ PAIN|SORE ~ new|started|never|since
        PAIN ~ BACKBONE ~ new|started|since
        never|before ~ BACKBONE ~ PAIN|hurt
    """,
}
