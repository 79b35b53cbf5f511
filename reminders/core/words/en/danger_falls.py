"""English rules for falls and injuries, what makes them graver or less, and falls that were none.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.fall_or_injury": """
        FELL !asleep !behind !apart !short !through !in !for !from !flat !ill !sick !into !victim !out !over !between !under !back !to !silent !love
        fell|fallen|fall|falling down|off|on|over|from|in|out|backward|backwards|forward|hard|again|flat|getting|going|trying|walking|carrying|twice|outside|yesterday|today|last|this|and|while|to|onto|into|at|against|between|by|coming|stepping|through|under|over|trip|tripped|because
        TOOK ~ FALLNOUN !weather !colors !leaves !festival
        took|taken|had|take ~ spill|tumble|fall|header|nosedive|digger
        went|go|gone|going down !to !the? !stairs? !hill !steps !from !and?
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
        never FELL before ,? but|until|till
        came off my|the|a bike|bicycle|motorbike|scooter|horse|pony|ladder|trike|stool|step|steps
        yanked|pulled|dragged|knocked|swept me off my feet|balance
        over|backwards|backward i went
        WHEELED hit|struck|clipped|rammed|bumped me
        hurt|injured|strained my low|lower|upper|left|right|bad? BACKBONE|JOINT lifting|moving|carrying|helping|pulling|pushing|catching|picking|shoveling|reaching|hauling|trying
        threw|pulled|pushed|put|popped|knocked my low|lower|upper? BACKBONE|JOINT out !of
        threw|pulled|popped|put out my low|lower|upper? BACKBONE|JOINT
        did my BACKBONE in lifting|moving|carrying|helping|pulling|pushing|bending|again|today|,|.|$
        injured|injury
        head hit|bounced
        concussion
        goose egg
        knot on my? head
        black and blue
        down on the floor|ground again|now|cant
        im|still|stuck|lying|laying|laid ~ on the floor|ground !doing !stretching !exercising
        stepped|step|stomped|rolled|ran|dropped|landed|sat|fell|slammed ~ on|over|onto ~ my|his|her? foot|toe|toes|hand|boot|leg|ankle|fingers
        came ~ cropper
        chair|stool|ladder|bed|toilet|seat|railing|step|deck collapsed|broke|tipped|slid|gave|snapped|flipped ~ under|out|over|with|me|on
        shins|head|face|knees|knee|hands|butt|hip first
        clobbered|whacked|beaned|smacked|struck|hit|kicked|knocked|bumped|nailed|thumped|walloped by|with
        kicked|kick|butted|bucked|threw ~ me
        nose ~ bled|bleeding|bloody
        gash|gashed
        # stitches|stitch
        got|needed|took|need ~ stitches !out
        came|fell|dropped|crashed ~ down ~ on ~ my|me
        knee|kneecap|shoulder|hip|elbow|finger|thumb|ankle|bone ~ went|moved|shifted|jumped|slid|popped ~ side|back|out|over|place
        hanging|sticking|stuck|lookin|looking|looks|sits|sitting ~ funny|wrong|lower|crooked ~ shoulder|arm|hip|knee|side|other
        shoulder|arm|hip|knee|finger|wrist|ankle ~ hanging|sticking|stuck|looks|lookin|looking|bent ~ funny|wrong|lower|crooked|odd|out
        went over on ~ ankle|foot
        stepped|step|walked ~ off|in|into ~~ hole|curb|edge|riser|step|backwards|backward ~
        landed ~ flat|hard|on|wrong|funny
        spilled|upended|upside down ~ floor|sidewalk|bike|chair
        tumble|tumbled|toppled|wipeout|splat|kersplat|faceplant
        rolled|fell|slid|slipped out of ~ bed|chair|bathtub|tub|shower|car|truck|recliner
        found|woke|came|waking|wake ~ on ~ floor|tile|ground|carpet|rug|linoleum
        legs|feet ~ out from under
        feet ~ flew|went|shot|slid ~ out
        lost ~ footing|balance ~ and
        lost my footing
        took ~ digger|header|flop|dive|plunge|pratfall
        went ~ over ~ handlebars|curb|stairs|dog|cat|rug|hose|railing|side|backwards|backward|sideways
        went ~ head|heels|ass|arse|butt ~ over
        landed in|on ~ er|bushes|rosebush
        crushed|pinched|slammed|caught|jammed ~ in ~ door|drawer
        slammed ~ finger|fingers|hand|thumb
        nail ~ black
        burned|burnt|scalded my
        rear|t boned|boned|sideswiped
        fender bender
        ambulance|er|xray|xrays ~~ fell|fall
        mugged|assaulted|pushed|shoved me|down
        dog|cat|horse ~ pulled|knocked|tripped|dragged|yanked ~ me ~ down|over
        pulled|knocked me down|over
        ribs ~ bruised|cracked|sore ~ from
        twisted|wrenched|tweaked|pulled ~ something
        swole|swollen|swelled ~ up ~~ stepped|hit|fell|twisted|dropped
    """,
    "idiom.fall_or_injury": """
        clock|clocks fell|fall|falls back
        CALLED_OFF fell|fall|fallen through ,|.|$|and|but|so|lol|again|today|tonight
        broke|break a leg tonight|today? out? there? ,? as they say
        knocked|knocks|knocking over my|the|a|his|her|our HOUSE_THING
        ^ !I !BODY _ fell|fainted|collapsed ~~ and|so i|im|we CARED ~ him|her ~~ my|me|mine
        landed on my|his|her feet
        bottom fell out
        never|didnt did? go down !so !that !like
        N0|typo|digit slipped
        something|sumthin|somethin cracked|popped|snapped in|inside
        hurt myself on purpose
        spill .? of coffee|tea|milk|water
        chiro|chiropractor cracked|cracks|crack|popped|pops|adjusted my|his|her? BACKBONE|neck
        fell|falls|fallen|falling asleep|apart|short|ill|sick|silent|victim
        fall asleep|silent|victim|short
        fall apart !from
        fell|fall|falls|fallen|falling behind on|with|in|schedule|again
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
        dream|dreamed|dreamt|thriller|movie i|we|that|where|about|of|he|she|they ~ fell|falls|fall|falling
        THIRD falls|fell ~ cliff
        thumb|finger|fingers|tongue|hand slipped|slip
        hit by ~ inspiration|nostalgia|bus lol
        knocked ~ socks|park
        dropped ~ ball
        kicked me out of|,|.|$
        kicked me off the|,|.|$
        kicked ~ butt|ass|habit
        band|bands|strap|chair|mat|rug|towel|bag|sock|slipper|shoe slipped|slid|slides !out
        !couldnt !cant !didnt !not !never !doesnt !wont _ keep|keeps|keeping|stop|stops|prevent|save|kept ~ from ~ falling|fall|falls
        ^ keep|keeps|keeping|stop|stops|prevent|save|kept ~ from ~ falling|fall|falls
        fall is|here|comes ~ favorite|season|pretty|here|lovely|beautiful
        FELL|DISLOC|BROKE|HIT|TWIST ~~ as a kid|child|boy|girl|teenager|youngster|teen
        DISLOC|BROKE|HIT|TWIST ~~ as a kid|child|boy|girl|teenager|youngster|teen
        burned out|dinner|supper|toast|calories
        pushed back|through|myself|on
        pushed hard !against !into
        pushed down on
        landed ~ job|account|deal
        stepped on ~ toes|scale|gas
        step ~ on it
        stepped ~ up
    """,
    "near_fall": """
        almost|nearly|practically|mightve|couldve !every !all !a ~ FELL|fall|tripped|slipped|went|fallen|falling|stumbled|toppled|lost|landed|slid|down|twisted|rolled|tipped
        ALMOST|close|nearly|about just|like|totally|really|kinda|i|to|to* FELL|fall|tripped|slipped|went|fallen|falling|stumbled|toppled|lost|landed|slid|down|twisted|rolled|tipped
        ALMOST came|come a cropper
        ALMOST just|i|have* took|taken|had a|my|an? bad|nasty|big? FALLNOUN
        ALMOST ~ ate|ended|landed|wound|broke
        could|couldve|would|wouldve have|of|easily|almost|just|nearly|probably|a|i|ve|so* FELL|fallen|tripped
        thought|sure|figured id|i would|might|d* have|take a fall
        like an? elevator going|goes|went|dropping down|up|in
        kept ~ from ~ falling
        instead of falling
        without falling
        caught|grabbed|stopped|steadied|saved|held ~~ before i fell|hit|fall
        before i fall
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
    "slip": """
        ate it
        SLIPWORD
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
}
