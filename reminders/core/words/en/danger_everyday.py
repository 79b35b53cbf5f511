"""English danger signs of all kinds in further everyday wordings, and harmless turns that sound like them.

A label a block, a pattern a line; the notation stands in reading/patterns.py. The files by kind hold the plain ones.
"""

RULES = {
    "told_of": """
        CLIENTLIKE|PERSON had|took|fell|got|is|was ~~ not me ,|.|$
    """,
    "taken_back": """
        take|taking back ~ dizzy
    """,
    "slip": """
        missed|miss ~ step|stair|curb|rung
    """,
    "danger.chest_or_breathing": """
        burning|burn|pain|pains|pressure|tight|tightness|squeeze|squeezing|weight|ache|heavy|heaviness ~ breast bone
        choking|fighting|starved|hungry|begging for air|breath
        air hunger
        HEART ~ took|taking|takes|ran|run off|away
        HEART ~ wont|cant|hasnt|not ~ slow|settle|calm|slowed|settled
        HEART ~ pounds|pounded|races|raced|thumps|thumped|leaping|bucking|drumming
        cant|couldnt|hardly|barely ~ breathe|breath ~ lying|laying|flat|down|night
        CANT|cant|couldnt lie|lay|sleep flat
        pillows ~ breathe|breath|air
        PAIN|ache|aching|hurts|tightness ~ down|in|into ~ left arm
        PAIN|ache|aching|tightness ~ between my|the shoulder blades ~ sweat|sweaty|sweating|breath
        chest ~ hurts|hurting|hurt|tightened|pounding|caving|squeezes|burns|burning|seized|grabbed
        like ~ heart attack !lol !haha
        cough|coughing|coughed ~ blood
        blood ~ when ~ cough
        lips|fingers|fingertips ~ blue|purple|grey|gray
        chess pain|pains
        hardly|barely|cant|couldnt draw|catch|get|take ~ breath|air
        crushing ~ CHEST
    """,
    "danger.nerve_or_bladder": """
        BLADDER|bowels ~ let|gave|went|goes|lets go|loose|out
        peed|peeing|pee|urine|wet ~ down ~ leg|legs
        CANT|cant|couldnt ~ hold ~ pee|water|urine|it ~ leg|bathroom|toilet|pants|floor
        arm|hand|leg|foot|fingers ~ wont|doesnt|dont|isnt ~ do|doing|obey|listen|listening|cooperate ~ what|like|right
        CANT|cant|couldnt ~ push|raise|rise|stand|lift|go ~ up on ~ toes|tiptoe|tiptoes ~~ foot|leg|left|right|side
        foot|leg|arm|hand ~ just wont|doesnt|quit|quits|stopped|dead
        no strength|power|grip ~ in|on ~ LIMB|side
        LIMB|side ~ no strength|power|grip
        cant|couldnt ~ button|hold|grip ~ fork|cup|pen|shirt|buttons|pencil|spoon|phone|key
        keep|keeps|kept dropping ~ spoon|fork|cup|things|phone|stuff|pen|keys|everything|it
        smile ~ crooked|lopsided|one|uneven|half
        cant|couldnt ~ feel ~ floor|ground|toilet|seat|myself
        shooting|electric|shocks ~ both ~ legs|arms
        half of my|his|her ~ body|face
        lost ~ sight|vision|words|speech ~ suddenly|sudden|eye|one
        lost ~ balance ~ suddenly|sudden
        cant|couldnt ~ think|come|get ~ word|words|name|names ~ for|out|right
        wet ~ without ~ knowing|feeling|noticing
        numb from ~ waist|knee|knees|hip|neck down
        no feeling ~ BODY|fingers|finger|toes|toe|hands|hand
        arm|leg|face|mouth|side ~ hanging|drooping|limp|sagging
        cant|cannot|couldnt ~ say ~ name
        gone|went|all|suddenly confused ~~ arm|face|speech|name|words
    """,
    "danger.fall_or_injury": """
        fel out|off|down|over|backwards|backward|in|on|against|into|from|getting|again|hard
        feel out of bed|the ~ tub|bed|chair|shower|truck
        feel down the|my|our|some stairs|steps|porch|ladder|escalator
        FELL back ,|.|$|and|hard|against|onto|over|when|hitting
        came|come a cropper
        FELL for no|the _
        FELL for a second|third|fourth|fifth|# ORD? time
        FELL behind|between|under the|my|a couch|sofa|bed|door|shed|chair|house|counter|garage|barn|toilet
        FELL out of ~ bed|chair|tub|car|wheelchair|recliner|truck|shower
        FELL off|from ~ bed|chair|ladder|step|steps|stool|porch|curb|toilet|ball|treadmill
        FELL over the|my|a _
        goose egg ~ head|forehead|face
        finger|thumb|toe|knee|ankle|wrist|elbow ~ bent|bends|bend ~ back|backwards|wrong|sideways
        bent ~ finger|thumb|toe|wrist ~ back|backwards|wrong
        joint|finger|thumb|knee|shoulder ~ sitting|looks|looking|sits ~ crooked|wrong|funny|odd
        JOINT ~ size of ~ grapefruit|orange|melon|baseball|softball|balloon ~~ fell|hit|twisted|banged
        car|truck|van|bike ~ got|was|were ~ rear|hit|rearended|totaled|totalled|boned|sideswiped
        rolled|rolling ~ out of ~ bed|couch|recliner|chair
        shiner|black eye
        black eye
        chair|stool|couch|bed|seat ~ went|shot|slid|rolled|flew ~ out|back|backwards|from ~ under|and|me
        landed|plopped|sat|hit ~ smack|bang|whack|hard ~ on ~ FLOOR|floor|ground|butt|tailbone|my
        down like ~ ton|sack|tree|rock|log
        took ~ chunk|skin ~ out|off
        split my|his|her ~ lip|head|chin|eyebrow|brow|forehead
        cut|sliced|gashed my|his|her ~ foot|hand|finger|leg|arm|thumb|head|toe ~ on|with|open
        band|bands|strap|weight|kettlebell|dumbbell|door ~ hit|smacked|snapped|whacked|popped|caught|clocked|got ~ me|face|eye|mouth|nose|lip|shin|toe|foot|hand|head
        smashed|jammed|caught|shut|slammed my|his|her ~ finger|fingers|hand|thumb|toe ~ in|with
        knee|hip|shoulder|elbow|finger|thumb ~ out of ~ place|joint|whack
        knee|shoulder|hip|elbow popped|slipped|slid|came ~ out
        swollen|swole|swelled|blew ~ like|size|up ~ balloon|baseball|grapefruit|egg|melon|softball
        BODY|JOINT ~ turned|gone|went|is|all ~ black|purple|blue !hands !lips !fingers
        legs|feet ~ went|gave|shot|slid ~ out ~ under|from
        wiped out ~ on|getting|going|in|by|coming
        toppled|tipped|pitched|tumbled over !with !in
        got ~ feet|legs ~ tangled ~ down|fell|floor
        tangled ~~ went|fell|down ~ floor|down
        tipped|toppled|pitched|tumbled|went|keeled ~ backwards|backward|headlong|sideways ~ into|onto|over|on|off
        walked|ran|bumped ~ into ~ door|wall|pole|post|glass|cabinet ~~ lump|bump|egg|bruise|blood|cut|forehead|head
        lump|knot|egg ~ forehead|head|temple
        dropped ~ on|onto ~ toe|toes|foot
        popped|hit|snapped ~ me ~ in ~ eye|face|mouth|head
        cut|split|busted|gashed my? lip|chin|brow|eyebrow|forehead|head|scalp
        come|came|popped unhinged|out ~ socket|place|crooked
        setting|sitting|settin crooked
    """,
    "danger.possible_fracture": """
        loud|big|awful|sickening|horrible|nasty|sharp|real ~ crack|pop|snap|crunch
        crack|pop|snap|crunch , ~ then ~ PAIN|hurt|hurts|sharp
        a|the pop|crack|snap|crunch in my|the BODY ~~ PAIN|hurts|hurt|cant|swollen|weight|walk|stand
        felt|heard|hear|feel ~ go|went|gave|give ~ crack|pop|snap|crunch|crunchy
        back|spine|ribs|rib ~ just ~ gave|went|snapped|popped|cracked
        lightning|knife|bolt|dagger|spear|stab|jolt ~ in|up|down|through ~ BACKBONE
        bent|bending|lifted|lifting|reached|stood|sat|twisted ~~ lightning|knife|bolt|stab|pow|bam ~~ BACKBONE
        snap|crack|pop ~~ spine|back|hip ~~ fire|since|pain|hurts|agony|awful
    """,
    "danger.faint_or_dizzy": """
        everything|world|room|voices ~ far away|distant
        sparkly|sparkles|fuzzy ~ everything|vision|eyes
        everything ~ sparkly|fuzzy|tilts|tilted
        came over ~ woozy|dizzy|faint|funny|queer
        room|world|everything|floor|walls|bed|house ~ started|starts|wont|kept|keeps|began ~ spin|spinning|stop|moving|tilting|turning|swaying|rocking
        room|world|floor ~ was|is|were|started ~ moving|swaying|rocking|tilting|turning
        nearly|almost|about ~ blacked|passed|fainted|keeled|conked out|over
        swaying|swayed|wobbly|woozy|staggered|staggering ~ head|dizzy|stood|standing|like|everywhere
        had to sit ~ before ~ passed|fainted|fell|black|down
        saw|seeing|see ~ stars|black spots|dots|double
        dots|spots ~ eyes|vision
        going ~ gray|grey|black|dark ~ eyes|when|edges
        hearing ~ went|faded ~ far|muffled
        giddy|giddiness
        light in the|my head
        drunk|swimmy|swimming headed
        fell out ~~ gone|minute|woke|came to
        i was gone|out ~ minute|seconds|while
    """,
    "danger.severe_pain": """
        CANT|cant|couldnt stand|bear|take|tolerate ~ it|this|the|anymore|much !when !that !waiting !weather !heat
        never ~ hurt ~ like this|so|in my
        never ~ felt|had ~ pain|anything ~ like this|so|bad
        if i had a? saw|knife|axe
        saw|chop|cut ~ leg|arm|foot|hip|it off
        pain|hurts|hurting ~ so ~ bad|much ~~ cry|crying|scream|screaming|sleep|stand|move|walk|breathe|vomit|throw
        crying|screaming|hollering|bawling|sobbing from|with|in ~ pain|agony
        pain ~ is|was ~ unreal|insane|ridiculous|horrific|horrible|terrible|awful ~~ cant|cannot|sleep|move|walk|cry
        in agony
        worst ~ ive|i ~ ever|felt|had
        screaming pain
        pain ~ beyond|above|past ~ ten|10|scale
        hurts ~ beyond|past ~ words|belief|anything
        bawling|bawlin|crying|hollering|screaming|sobbing ~~ hurts|hurt|pain|hurting
        hurts|hurt|hurtin so bad ~~ crying|bawlin|bawling|cant|layin|laying|lying
        cant|cannot ~ take|stand|bear ~ this|the pain ~ no|any|anymore|longer|more
        awful nine|9
    """,
    "danger.crisis": """
        dont|not|cant want|wanna|to ~ get|go|face|wake|see ~ another|tomorrow day|morning
        written|wrote|writing the|my|a ~ letter|letters|note|will ~~ goodbye|affairs|order|end
        affairs ~ in order
        kill himself|herself|themselves
        nobody|noone|no one needs|need me
        what|something|thing i ~ do to myself
        scared|afraid ~ of ~ myself
        hurt|harm|cut|burn|burned|kill myself
        all my|the pills ~ at once|done|end
        take|taking|took|swallow|swallowing all ~ pills|meds|medicine|tablets
        done with ~ living|it all|this world
        dont|do not|didnt ~ want|wanna ~ be|live|wake|exist ~ here|anymore|alive|more|up $
        think|thinking|thought|thoughts ~ about|of ~ dying|death|ending|killing|suicide
        no one|nobody ~ would|will ~ notice|miss|care
        world|family|kids|wife|husband|everyone ~ better off
        gun|rope|pills|bridge ~~ end|ending it
        cant ~ see ~ way ~ out|forward|on ~ !of
        want ~ it all to|over ~ end|stop|over
        reason|point ~ to ~ live|living|alive|going
        not ~ want|wanna ~ to ~ live|be alive
    """,
    "idiom.chest_or_breathing": """
        price|prices ~ gave|give|gives me chest pain|pains lol|haha
        puffing|puffed|winded|breathless|panting a|little ~~ settled|fine|ok !not
        puffing|puffed|winded|breathless|panting a|little ,|but|and|then* back|is|its* normal
        out of breath ~ dog|cat|puppy|laughing|dancing
        out of breath from laughing|laughin|singing
        breathless with|from|over excitement|joy|anticipation|laughter|awe
        knocked|knocks ~ wind out
        wind out of my? sails
        have|having|had heart attack from|over the? bill|price|laughing|surprise
        heart ~ hurts|aches|broken|broke for|over
        heart pounding|racing from|at|watching|during|with|over a|the|that? movie|game|match|race
        price|prices of ~ gave|give|gives me PALP|palpitations|the
        heart attack on there|tv|television|screen
    """,
    "idiom.nerve_or_bladder": """
        bored|bores|boring me? numb|stiff|rigid
        water heater|main|pipe|pipes|tank|bill|company|pump|line
        gave|give|giving|gives the|my|those|them? side|sideways? leg lift|lifts|raise|raises|ones|exercise|exercises
        give|gave me|him|her a stroke from|when|if|over|watching
        weak in the knees for|over
        LEG ~~ good kind|way|tired|workout|burn
        noodles|noodle|jelly|jello|rubber|lead ~~ good|nice kind|way|workout|lol|haha
        stroke of luck|genius|midnight|pen
        numb ~ bleachers|pew|flight
        foot|leg|feet|legs fell|went asleep ~~ sitting|crossed|toilet|pew
        arm|hand fell|went asleep ~~ slept|pillow|under
        arm|leg|foot|hand|legs|feet fell asleep ~~ woke right up
        wet ~ pants ~ laughing
        peed|pee|wet myself|my|pants|from|with* laughing|laughter
        peed|pee|wet myself lol|haha ,|.|$
        laughed|laughing so|till|until|hard|that|i|nearly|almost|and* peed|pee|wet
        dropped|dropping hints|by
        numb from tv|cold|boredom|television
        tingling with excitement|joy|anticipation
        jab|shot|vaccine|booster ~~ arm like lead
    """,
    "idiom.fall_or_injury": """
        stumbled|fumbled|limped|muddled|slogged through
        tossed and turned
        <the|this|that|our|some|of|for|in|love|lovely|nice|beautiful fall|falls weather
        fall|falls season|colors|foliage
        wiped out by|from|after the? chemo|heat|work|day|week|flu|cold
        i? fell ~ meant feel|felt
        WROTE i? fell ~~ feel|felt
        scared|tickled|bored|worried|worked to death
        hit a|the? song|show|single|movie|parade
        broke|broken a|my|the|another? nail|heart|record|bank|news|fast|bread|plate|dish|glass|band|chair|phone|glasses|tv|car
        cracked a|my|the|an? smile|joke|egg|nut|window|phone|screen
        dropped my|the|a? phone|keys|glasses|pounds|lbs|call|jaw
        black and blue team|jersey
        fell in love
        fell behind on|with|in|schedule
        falls class|prevention|risk|screening
        cut the|my|a|out? grass|hair|coupons|cake|lawn|hedge|class|sugar|salt|carbs
        tumbled clothes|dryer
        cracked my back ~ felt|feels
        fell into|in a|our? conversation|step|habit|chat
        fell to it
        PRESSURE fell
        pressure|temperature|fever|price fell
        a stubbed toe
        tripped|stumbled over my words
        wore|worn slap out
        feel|felt|feels|think|like ~ hit by a bus|truck|train
        winters|summers ago i slipped|fell|broke
        back in the service|army|navy|war|day|sixties|seventies ~~ dislocated|broke|fell
    """,
    "idiom.possible_fracture": """
        chiro|chiropractor|doc|doctor|therapist|masseuse|husband cracked|cracks|crack|popped|pops|adjusted my|his|her? BACKBONE|neck
        cracked|cracks|cracking|popped|pops|popping ~ BACKBONE|neck|knuckles|joints|toes ~~ felt|feels good|great|better|wonderful|amazing
        BACKBONE|neck|knuckles|joints cracked|popped|cracks|pops ~~ felt|feels good|great|better|wonderful|amazing|nice
        CRACK ~~ felt|feels good|great|better|wonderful|amazing|heavenly
        cracks|pops|clicks|creaks like ~ always|usual|old|rice
        band|chair|twig|pencil|stick snapped|cracked|popped|broke
        pop|popped of corn|champagne|toaster
    """,
    "idiom.faint_or_dizzy": """
        dizzy with|from numbers|paperwork|choices|news|grandkids|joy|love
        its all ~ black|gray|dark ~ nail|toe|toenail|outside
        knocked|took ~ wind ~ out of me
        world spinning news|politics
        seeing|saw ~ stars ~ sky|telescope|movie
        passed out candy|flyers|programs
        dizzy is my|the cats|cat|dog|dogs
        price|prices ~ makes|make|made me faint|dizzy
        passed out laughin|laughing
    """,
    "idiom.severe_pain": """
        killing me ~~ lol|haha|hehe|joking
        more ~ of an? annoyance|nuisance|bother than
        CANT|cant|couldnt stand|bear|take the|this heat|weather|cold|noise|music|news|wait|show|smell|neighbor
        beyond tired
        your|my torture ~ afterwards|later|tomorrow|session|exercises
        used to be unbearable|agony|excruciating
    """,
    "idiom.crisis": """
        dont|do|not|didnt|no want|wanna|need|wish these|them|those|your|TEXT
        dont|do|not|didnt|no want|wanna|need|wish to? get|receive any|more|these|them|your|TEXT
        dont|not|no want|wanna this TEXT|TEXTNOUN|program|service
        suicide squad|squeeze|door|doors|awareness|walk
        kill|die|dying for a cup|coffee|beer|cigarette|drink|smoke|nap|rest|cookie|piece|slice|steak|burger|sandwich
        killing for a cup|coffee|beer|cigarette|drink|nap
        killing time
        done with it all by|before noon|lunch|ten|nine|breakfast
        shoot me now lol|haha
        better off without sugar|band|coffee|tv
    """,
    "near_fall": """
        missed my|me|his|her ~ foot|toe|toes|head|hand|leg|by
    """,
    "caught": """
        landed on my? feet
        nothing ~ happened|came|hurt
        no harm
        hand ~ was|were on ~ counter|rail|wall|chair|sink|table
        landed ~ couch|sofa|cushions|pillow
        sat ~ back ~ down|in|on
    """,
    "hindered": """
        CANT|cant|cannot|couldnt|hardly|barely even|hardly|barely|ever? straighten|walk|move|bend|step|turn|sit|lie|laugh|cough
        CANT|cant|cannot|couldnt|hardly|barely even|hardly|barely|ever? stand on|up|straight|upright|for
    """,
    "happening": """
        it did|does today|again|just|now|yesterday|tonight
        its|is|im|am|and|been still numb|numbness|tingling|tingly|dizzy|woozy|weak|swollen|bleeding|tight|there
        have|having|got|feel|feeling it|that|this|them now|today|already
        happening now|today|already
        ? i|it? am|is|do|does right? now ,|.|$|and
        its|it happening|happened|here|there now|again|today|already
    """,
}
