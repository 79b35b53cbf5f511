"""English rules for what takes a danger word back: idioms, "none of that", a word taken back, an old habit.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "idiom": """
        dizzy|numb|faint|fainting|fainter|falling|falls|falling|faller one|ones? , not me|i ,|.|$|but
        fall|falling|fell|fallen|fallin in|out of? love
        fell totally|completely|quite|right|so|madly in love
        fell|fall|fallen off the wagon
        fell|fallen|falling off my|the|this|that diet|schedule|routine|regimen|regime|program|programme|plan
        fell|fall|falling for it|him|her|them|you
        fell|fall|falling for that|this !time
        fell|fall|falling for a !second !third !fourth !sec !moment !minute !while !bit !fall !time
        fell|fall a|one|# rep|reps|set|sets|round|rounds short
        fell|fall # short ,|.|$|on|of
        ^ night fell
        dusk|darkness fell
        slept|sleep|sleeping like the dead
        slipped|snuck away|off to|for the|my|a|bed|church|bingo|mass|work !side !end !edge !bottom !left !right
        slipped|snuck in a|some|my|one|# quick? set|sets|round|rows|exercises|workout|session|reps
        knocked back a|some|my|the coffee|beer|drink|whiskey|tea|shot|glass
        fell|fall hook ,? line ,? and ,? sinker ,? for
        fell|fall|fallen hard for him|her|them|it|that|you|my|the|a !first !second !third !time !reason !good
        fell|fall|fallen into bed|sleep|a|the? rabbit|trap|routine|habit|slump|rut|place|step|category|nap
        fell|fall|fallen into place|step|bed|sleep
        fell|fall|fallen between ~ cracks
        fell|fall|fallen from ~ grace|favor
        birthday|holiday|appointment|christmas|easter|thanksgiving|session|date|day|it|which|that|practice|rehearsal|class|meeting|game|club|mass falls|fall|fell|falling on
        <the|this|that|our|some|of|for|in|during|doing|love|enjoying|every|like|by|my|your fall cleanup|raking|weather|colors|leaves|festival|break|semester|season|cleaning|garden|foliage|term|bulbs
        ^ fall cleanup|raking|weather|colors|leaves|festival|break|semester|season|cleaning|garden|foliage|term|bulbs
        fall colors|festival|semester|season|foliage|term|bulbs|2025|2026
        !after !from !since !with !of !by !and _ this|last fall $
        in|next|every fall $
        falls|fall prevention|risk|class|program|clinic|alarm|pendant|detector|monitor
        prices|temperature|sales fell|falling|fall
        rain|snow fell|falling|fall
        hit the|my|all ~ hay|sack|road|store|shower|gym|jackpot|spot|books|beach|town|target|goal|goals|marks|reps|sets|snooze|send|wrong|button|links|bottle
        hit !my !me !his !her ~ reps|sets|number|numbers|target|goal|goals|all|every|gym|key|button
        hit my reps|sets|number|numbers|target|goal|goals
        hit home
        hit me up
        it|that|this|really|just hit me later|funny|like|hard|how|that
        hit the spot
        hit a|the wall .|,|$|at|halfway|today
        slipped|slip|slips|slipping my|his|her mind
        slipped into|on my|a|the|some|something|warm|nice* robe|slippers|shoes|nightgown|coat|clothes|comfortable
        slipped up ,|.|$|and|yesterday|today|again
        slip|slipped disc|disk
        slipped|slip through ~ cracks
        slip of
        twisted|twist|twisting my|his|her arm to|into do|come|go|get|try|join|doing|coming|going|trying|it|this|these|exercise
        twisted|twist|twisting my|his|her? PERSON|CLIENTLIKE arm to|into
        twist my arm ,|.|$|why|if|then|you|ok|go|lol|haha
        twisted sense|humor|story|plot
        leg|legs is|are|was|were|feel|feels|felt|got|get|just|so|very|really|a|bit|little|both|my* TIRED !numb
        breaks|broke|broken|breaking my|your|his|her|our heart|bank|news|record|habit|streak|sweat
        break your|his|her|our|the heart|bank|news|record|habit|streak|sweat
        break my heart ,|.|$|to|when|seeing
        break a sweat|leg
        broke a|my|the|no|into|out|in|real|good* sweat|record|habit|streak
        broke even ,|.|$|on|at|today
        heart is|was? isnt|wasnt|not|aint|just|really* in it|this|that|them|exercise|exercises|today
        heart skipped a beat when|at|seeing|hearing|he|she|looking|meeting
        heart ~ broke|broken|melted|melts|full|happy|sings|goes out|warm|gold|content
        heart's content
        bless your|his|her|their|its|the|you heart|hearts
        bless my heart ,|.|$
        heart to heart
        know|knew|knows|learned|learn|memorized|them|it|sheet|list|exercises|recite|words|all|routine|program by heart
        took|takes|take|taking|stole ~ my breath|breath away
        breath away
        out of breath laughing
        laughed ~ breathe|breath|hurt|cried|sides
        hold|holding|held|holdin my|your|the|our|me breath
        dont hold your breath
        deep breathing
        breath of fresh air
        save your breath
        <the|my|your|some|do|did|doing|deep|with|these|those breathing exercises|exercise|techniques
        ^ breathing exercises|exercise|techniques
        breathing room !was !is
        breathing down my|your|his|her|our neck|back
        caught|catching my breath
        let me catch my breath
        !able !unable !trying !hard !struggling !struggle !fighting _ to catch my breath
        waste|wasting ~ breath
        room to breathe
        fresh air
        nearly|almost|about|just killed me|us lol|haha
        killed|killing|kills me lol|haha|laughing|jk|ha
        nearly|almost|about|like|bout to? killed|died|killing|kill|die ~ lol|laughing|haha
        killing it|time|two
        kill for|time|the
        dying to know|see|hear|try|tell|meet|find|use|sit|eat|ask|show|start|read|watch|taste|add
        dying of|from laughter|laughing|thirst|hunger|heat|boredom|curiosity|embarrassment|cold|shame|envy
        dying laughing
        dying for a|some|my|the|coffee|tea|chocolate
        died of|laughing
        die laughing|for
        die of laughing|laughter|embarrassment|shame|boredom|thirst|hunger|curiosity
        dead lol|haha|tired|battery|serious|set|line|bug|lift|lifts|ass|on|end
        to die for
        !when !once !after !if !until !til !before !wish _ im dead !and !i
        ^ im dead !and !i
        bored|tired|scared|hungry|laughing|embarrassed to death
        bored|boring|tired|scared|hungry|laughing|laughed|embarrassed|worried|worry|frightened|froze|frozen|freezing|starved|starving|talked|love|loved|loves|thrilled|tickled|busy|worked|sweated|sweating|overworked|roasted|baked|chilled|sick to death
        dead tired|dead dog
        price|prices|bill|bills|news|letter|dog|cat|kids|grandkids|noise|phone|doorbell|game|movie|you|he|she|they|that|it|which|spider|mouse|snake|cost ~ gave|give|gives|giving me|him|her a|the heart attack
        price|prices ~~ gave|give|gives me a|the heart attack
        about|nearly|almost had a|my|the heart attack|stroke ,|.|$|when|at|seeing|looking|laughing|opening|over|lol|watching|hearing|haha
        about|nearly|almost had a? fit|cow|conniption|kittens
        heart attack ~ lol|haha
        stroke of ~ luck|genius|midnight
        back stroke
        backstroke|breaststroke
        pop|popped|pops over|by|tart|corn
        pop|popped|pops in !my !the !both !his !her
        pop|popped|pops ~ tart|corn|quiz|question|music|champagne|balloon|pill|advil|tylenol
        cracked|crack|cracking|cracks|crackin me|us|myself|him|her right|all|so|just|really|completely? up
        cracked up
        cracked|crack|cracking an|a|the|some|open|two|few|my|# egg|eggs|nuts|joke|jokes|beer|book|window|door|smile|code
        cracked|crack|cracking open a|the|an|my egg|beer|book|window|door|can|bottle
        cracked|crack|cracking jokes|eggs|nuts
        crack of dawn
        wise crack
        snap|snapped|snaps ~ out|pictures|photo|picture|photos|peas|fingers|at|chat|decision|beans
        snap|crackle pop
        oh snap
        cold snap
        numb from ~ dentist|novocaine|cold
        dentist ~ numb
        novocaine|novocain|lidocaine
        mind|brain|boredom numb|numbing
        number
        dizzy|giddy with|from joy|happiness|excitement|success|love
        dizzy blonde
        head ~ spinning ~ with|from ~ news|numbers|names|paperwork|forms|questions
        <a|my|the|to|at|of|in|from|missed|did|taught|our spinning|spin class|classes
        faint of heart
        faint|faintest hint|smell|idea|line|clue|memory|sound
        not for the faint
        pass|passed|passing out the|some|our|my|a|all|more|free|of|lots* candy|flyers|papers|programs|cards|bulletins|food|treats|masks
        pass out candy
        passed|passes|pass away|on
        blacked out curtains
        black ~ out curtains
        power|lights|electricity ~ blacked|out
        blackout curtain|curtains|blind|blinds
        blackout in|on our|the|my street|road|town|area|village|building|house|city|neighbourhood|neighborhood|block|estate
        power|city|town|street|electric|electrical|planned blackout
        we|they had|have|got a? blackout
        blackout here|across|until|till
        blackout and no power|lights|light|electric|electricity|tv|internet|heat
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
        cut myself some slack|cake|pie|bread|flowers|cheese|melon|roses
        broke down|dollar|up|my phone|my band|my streak|out
        car broke
        heavy ~ schedule|traffic|rain|heart|lifting|day|load|breakfast|meal
        drop|dropped|dropping by|off
        drop|dropped|dropping in !the !my !a !bathroom !kitchen !shower !tub !bath
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
        asleep in|on|at my|the|his|her|a|that? chair|couch|sofa|wheel|desk|table|church|tv|movie|recliner
        trip|trips to|with|this|next|planned|coming|home
        trip|trips ~ away|vacation|weekend|store|mall
        road|bus|business|day|boat|ski|fishing|field|church|surf|camping|next|long|big|my|our|hunting|group|this|for trip
        a|the|on trip ,|.|$|was|is|we|next|last|so|home|back
        had to slip|run
        slid into home
        tumble dry|dryer
        stumbled upon|across|on
        spill the|my|some|your|a|hot* beans|coffee|tea|milk|guts
        had ~ spill ~ kitchen|coffee|milk
        shot ~ numb
        cold sweat ~ movie
        tore|tearing through|into|up|down
        couldnt|cant breathe ~ laughing|lol
        couldnt|cant breathe through|thru|out my? nose
        not breathe ~ laughing|laughin
        nose ~ breathe|stuffed|stuffy|stuffed|congested
        laughing|laughed ~~ breathe|breath|died|dying|fell|tears|hurt|crying
        crying|cried|tears ~ laughing|movie|wedding|happy|joy|onions|show
        <a|real|such|royal|right|big|total|absolute|the|what pain in the|my neck|butt|ass|rear|backside
        jump ~ rope
        cut the rope
        gun ~ show|range
        jumping|jump the gun
        under the gun
        top gun
        bridge ~ club|game|exercise|group
        tired ~ of living with|out
        done with everything ~ list|today|on
        done with everything $
        i want to live
        bless
        take my pills
        took my pills
        end of the|this|that|next|week|day|month|year|summer|term|story|discussion|session !world !line !road !tether !rope !my
        stars at night
        stars are|were|come out
        all stars|star game
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
        no falls
        no more|other|new|further|recent|actual falls|fall !since
        fall free
        like a champ
        nothing broken
    """,
    "denied_all": """
        ,|.|and|but none of that|those|these ,|.|$|thank|thanks|thankfully|at|for|here|lately|recently|this|now|today
        ^ none of that|those|these ,|.|$|thank|thanks|thankfully|at|for|here|lately|recently|this|now|today
        had|have|has|get|got|felt|feel|noticed|with none of that|those|these|it|them ,|.|$|today|at|this|thank
        nothing odd|unusual|weird|strange|scary
        nothing like that !ever !before !happened !has
        no such thing|things|problem|problems|symptom|symptoms|feeling|feelings|complaints|issues|trouble|troubles !before
    """,
    "taken_back": """
        in my dream
        i dreamed|dreamt
        had a dream i|that|about|of|where
        not me ~ hes|shes|he|she
        patients not me
        when i wrote|said|typed
        when i put # ,|i|it|that
        i did not mean i|that|to say|write|put|type|send
        it was not me ,|.|$|who|that|but|it
    """,
    "put_right": """
        WROTE ~ meant
    """,
    "told_of": """
        patient|client|customer|student|pupil of mine|ours ~
        ^ back when i|we drove truck|trucks|semi|cab|bus
        ^ back when i|we played football|ball|hockey|college|soccer|baseball
        ^ back when i|we was in the army|navy|service|marines|force
        ^ back when i|we was a? kid|boy|girl|young|younger|little
    """,
    "chronic": """
        like|as it|they always does|do|did
        it|its|that|they|has|have|had always done|does|did|been|has|have|had
        since i was
        !in !of !ever _ my whole life
        !in _ all my life
        !time !happened !fallen !fainted !first !fall _ for years !but !and !till !until
    """,
}
