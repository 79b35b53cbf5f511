"""English rules for what takes a danger word back: idioms, "none of that", a word taken back, an old habit.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "idiom": """
        fall|falling|fell|fallen in|out ~ love
        fell ~ love
        fell|fall|fallen off the wagon
        fell|fall|falling for it|him|her|them|you
        fell|fall|falling for that|this !time
        fell|fall|falling for a !second !third !fourth !sec !moment !minute !while !bit !fall !time
        fell|fall a|one|# rep|reps|set|sets|round|rounds short
        fell|fall # short ,|.|$|on|of
        ^ night fell
        dusk|darkness fell
        slept|sleep|sleeping like the dead
        slipped away|off to|for the|my|a
        slipped|snuck in a|some|my|one|# quick? set|sets|round|rows|exercises|workout|session|reps
        knocked back a|some|my|the coffee|beer|drink|whiskey|tea|shot|glass
        fell|fall hook ,? line ,? and ,? sinker ,? for
        fell|fall|fallen hard for
        fell|fall|fallen into bed|sleep|a|the? rabbit|trap|routine|habit|slump|rut|place|step|category|nap
        fell|fall|fallen into place|step|bed|sleep
        fell|fall|fallen between ~ cracks
        fell|fall|fallen from ~ grace|favor
        fall|falls|falling on a|monday|tuesday|wednesday|thursday|friday|saturday|sunday|the
        fall cleanup|raking|weather|colors|leaves|festival|break|semester|season|cleaning|garden|foliage|term|bulbs|2025|2026
        this|last|in|next|every fall $
        falls|fall prevention|risk|class|program|clinic|alarm|pendant|detector|monitor
        prices|temperature|sales fell|falling|fall
        rain|snow fell|falling|fall
        hit the|my|all ~ hay|sack|road|store|shower|gym|jackpot|spot|books|beach|town|target|goal|goals|marks|reps|sets|snooze|send|wrong|button|links|bottle
        hit ~ reps|sets|number|numbers|target|goal|goals|all|every|home|gym|key|button
        hit me up|later|funny|like
        hit the spot
        hit a|the wall .|,|$|at|halfway|today
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
        deep breathing
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
        dying to|of|laughing|for
        died of|laughing
        die laughing|for
        die of laughing|laughter|embarrassment|shame|boredom|thirst|hunger|curiosity
        dead lol|haha|tired|battery|serious|set|line|bug|lift|lifts|ass|on|end
        to die for
        im dead
        bored|tired|scared|hungry|laughing|embarrassed to death
        bored|boring|tired|scared|hungry|laughing|laughed|embarrassed|worried|worry|frightened|froze|frozen|freezing|starved|starving|talked|love|loved|loves|thrilled|tickled|busy|worked|sweated|sweating|overworked|roasted|baked|chilled|sick to death
        dead tired|dead dog
        gave|give|gives|giving me|him|her a|the heart attack
        about|nearly|almost had ~ heart attack|stroke|fit|cow|conniption
        heart attack ~ lol|haha
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
        blackout curtain|curtains|blind|blinds
        blackout in|on our|the|my street|road|town|area|village|building|house|city|neighbourhood|neighborhood|block|estate
        power|city|town|street|electric|electrical|planned blackout
        we|they had|have|got a? blackout
        blackout here|across|until|till|and no
        burning ~ calories|leaves|fat|dinner|toast|candle
        chest drawers|freezer|hair|high
        chest of drawers
        off my chest
        weight off my|the
        close to ~ chest|heart
        under pressure
        peer pressure
        blood pressure
        pressure 120|130|cooker|cuff|washer
        my pressure is|was
        bent|bend|bending over backwards
        fall|fell|falling over backwards to|trying|for
        head over heels
        head|heads up
        hit the nail
        nail on the head
        hit my head ~ wall ~ lol
        banging my head against
        cut it|the|my|them? short|grass|lawn|hair|back|down|out|corners|coupons|class
        cut it close|fine
        cut myself some
        broke down|dollar|up|my phone|my band|my streak|out
        car broke
        heavy ~ schedule|traffic|rain|heart|lifting|day|load|breakfast|meal
        drop|dropped|dropping in|by|off
        drop|dropped|dropping a|the|her|him|them? line|kids|note|ball|off
        dropped the ball
        dropped ~ grandkids|grandson|mail|kids
        end it there|here|today for|after|now|with|at|on #|one|two|a|the|today|now|set
        decided|had|chose|have to end it there|here|today .|,|$|after|for
        ended it all? at|with|there|here
        wet !myself !my !me !through ~ whistle|weather|grass|leaves|floor|outside|hair|wash
        funny|new|great ~ bone
        rolled|rolling ~ eyes
        rolled out of bed late|early|at
        rolled over
        rolled out
        turned my|the|his|her? back|heel|head|around|down
        turned in ,|.|$|early|late|at|for
        turned|turning 60|70|80|90|#
        strained ~ peas|relations|eyes
        jammed schedule|packed
        legs ~ sea
        asleep ~ at|wheel|chair|couch|sofa
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
        couldnt|cant breathe ~ laughing|lol
        couldnt|cant breathe through|thru|out my? nose
        not breathe ~ laughing|laughin
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
        end of the|this|that|next|week|day|month|year|summer|term|story|discussion|session !world !line !road !tether !rope !my
        stars ~ game|night|out
        saw stars|spots ~ game|sky|concert
        nearly|almost|about passed out ~ when|bill|price|from ~ shock|bill
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
    "told_of": """
        ^ back when i|we drove truck|trucks|semi|cab|bus
        ^ back when i|we played football|ball|hockey|college|soccer|baseball
        ^ back when i|we was in the army|navy|service|marines|force
        ^ back when i|we was a? kid|boy|girl|young|younger|little
    """,
    "chronic": """
        like|as it|they always does|do|did
        always done|does|did|been|has|have|had
        comes right back
        since i was
        my whole life
        all my life
        for years !but !and
    """,
}
