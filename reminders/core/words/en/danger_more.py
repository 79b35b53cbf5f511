"""More English rules for danger signs: how people tell one without its name, by picture, by what they could not do.

Same labels as danger_rules.py, whose rules come first; two files only so that each stays short enough to read.
"""

RULES = {
    "danger.chest_or_breathing": """
        elephant|boulder|anvil|horse|piano|truck ~ on me
        breath|breathing|breathe ~ not|isnt|wont|aint ~ coming|come|good|right|there|easy
        stone|brick|weight|belt|band|strap|rope|vise|vice|anvil|boulder|truck|piano|horse|cow|clamp|hand|fist ~ on|round|around|across|squeezing ~ my? CHEST|ribs|heart|lungs
        CHEST ~ stone|brick|weight|belt|band|vise|elephant|truck|anvil|fist|clamped|caving
        belt|band|strap|rope|vise ~ round|around ~~ ribs|breathe|tighter|tight
        lungs ~ fill|tight|burn|burning|work|air|hurt|wont|cant|full|squeezed|closing|heavy
        fill ~ lungs
        suck|sucking|gulp|gulping|gasp|gasping|fighting|hungry|starved|starving|pull|begging|struggling ~ air|breath|breathe
        sit|sitting|up ~ to get air|breath|breathe
        drowning feeling|feel
        puffed|puffing|panting|puffy like|hard|for|just|after|badly|bad|out
        wheezing|wheezy|wheeze|whistling
        chest|substernal pressure|pressures|pains|discomfort|tightness
        radiating|radiates|shooting|running|runs|spreading|spreads|goes ~ arm|arms|jaw|shoulder ~~ CHEST|sweat|sweating|sick|nausea|heavy
        CHEST ~~ arm|jaw|shoulder
        pain|ache|aching|hurts ~ jaw
        jaw ~ pain|ache|aching|aches|hurts
        heart ~ thudding|hammering|bouncing|somersaults|flips|flip|doing|going|stops|skip|skipping|jumpy|flutter|fast|wild|irregular|too
        HEARTSIGN ~ in my CHEST
        fluttering|flutters|flip|flop|fish|bird ~ in my CHEST
        pulse ~ racing|fast|irregular|wild|jumping|erratic
        break|broke|broken|breaking ~ cold sweat
        cold sweat|sweats
        turning|turned|going|went|lips blue|purple
        blue lips|fingers|around
        could hardly|barely|scarcely talk|speak|breathe
        too ~ winded|breathless|short to talk
    """,
    "idiom.chest_or_breathing": """
        CHEST day|muscle|muscles|hair|cold|drawers|freezer
        CHEST ~ sore ~ push|pushups|gym|workout
        ran out of breath telling|yelling|singing|laughing|cheering|chasing
        not like heart
        sob none|no|neg|negative|nil|denied
        little|bit|tad winded|breathless|puffed ~~ like|any|anyone|anybody|normal|usual
        out of breath ~ like|any anyone|anybody|any ~
        put ~ hand on my heart
    """,
    "danger.nerve_or_bladder": """
        peed|peeing|pooped|soiled|crapped my|his|her _
        wet|wetting|messed|messing my|his|her ~ pants|bed|trousers|drawers|panties|leggings|shorts|nightgown|pajamas|chair|underwear|slacks|self|sheets
        peed|peeing|pee ~ little|bit|some|when|without|on ~ stand|sit|stood|cough|knowing|myself|way|meaning
        water|pee|urine|poop ~ coming|comes|came|runs|ran|leaking ~ not|doesnt|dont|without|cant ~ know|feel|stop
        LIMB ~ quit|quits ~ on me|working
        hand|arm|fingers ~ quit|went|just ~ dropped|limp|dead|useless
        LEG|legs ~ folded|crumpled|melted|collapsed|would|wouldnt|refuse|refused|wont|couldnt ~ answer|hold|under|work|move|warning|like|carry
        LEG|legs folded|crumpled|melted
        foot ~ slapping|slaps|flopping|flops|dragging|catches|scuffing|drops|drop|wont
        CANT|cant|couldnt ~ pull|lift|raise|pick|bend|flex ~ toes|toe|foot|feet
        toes|foot ~ wont|cant|dont ~ lift|come|pull|raise
        half ~ face|body|mouth|tongue ~ NUMB|asleep|dentist|needle|frozen|feeling|weak|gone
        half my|his|her face
        FACE ~ like ~ dentist|novocaine|needle
        dribbled|dribbling|drooling|drooled|drools|leaks|leaked|spilled ~ side|mouth|corner
        CANT|cant|couldnt ~ swallow|smile|whistle
        FACE|cheek|eyelid|mouth ~ slid|fallen|dropped|sagging|sagged|crooked|numb|lopsided|pulled|slack
        words ~ mush|mushy|stuck|jumble|wrong|slurring|slur|slurred|gone|scrambled|salad|tangled
        tongue ~ thick|heavy|tied|numb|wont
        calling|called|call ~ things|everything ~ wrong
        arm|hand|leg ~ heavy as|like
        arm|leg ~ like ~ lead|sand|wood|concrete|noodle|stranger|someone
        wooden|dead|numb ~ saddle|seat|bottom|butt|crotch|privates
        CANT|cant|couldnt ~ tell ~ when|if ~~ pee|go|full|wet|bathroom|poop
        dont|doesnt|not ~ feel ~~ pee|wipe|go|full|toilet|bladder
        havent|cant|couldnt|unable ~ made|make|pass ~ water|urine
        pins ~ needles
        sandpaper|cotton|socks|walking on ~ cotton|sponge|clouds|marshmallows|pillows
        sudden|suddenly ~ blind|weak|numb|confused|cant
        stroke ~ symptoms|signs|like
    """,
    "idiom.nerve_or_bladder": """
        wet ~ laughing
        numb with|from boredom|cold|bored|grief
        weak in the knees ~ haha|lol|altar|love
        weak in the knees at
        dead ~ tired
        leg ~ out of bed
        pulled my leg|pulling
        on pins and needles
        foot|feet|leg|legs|arm|hand ~ asleep ~~ sitting|sat|crossed|slept|lying|tv|toilet
        legs up the wall
        cold feet
        cost ~ arm ~ leg
        cut ~ off
        hand ~ dropped ~ phone
    """,
    "danger.fall_or_injury": """
        down on the floor|ground again|now|cant
        im|still|stuck|lying|laying|laid ~ on the floor|ground !doing !stretching !exercising
        stepped|step|stomped|rolled|ran|dropped|landed|sat|fell|slammed ~ on|over|onto ~ my|his|her? foot|toe|toes|hand|boot|leg|ankle|fingers
        came ~ cropper
        chair|stool|ladder|bed|toilet|seat|railing|step|deck collapsed|broke|tipped|slid|gave|snapped|flipped ~ under|out|over|with|me|on
        shins|head|face|knees|knee|hands|butt|hip first
        clobbered|whacked|beaned|smacked|struck|hit|kicked|knocked|bumped|nailed|thumped|walloped by|with
        kicked|kick|butted|bucked|threw ~ me
        nose ~ bled|bleeding|bloody
        gash|gashed|goose
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
        dream|dreamed|dreamt|thriller|movie ~~ fell|falls|fall|falling
        THIRD falls|fell ~ cliff
        thumb|finger|fingers|tongue|hand slipped|slip
        hit by ~ inspiration|nostalgia|bus lol
        knocked ~ socks|park
        dropped ~ ball
        kicked me out|up|off
        kicked ~ butt|ass|habit
        band|bands|strap|chair|mat|rug|towel|bag|sock|slipper|shoe slipped|slid|slides|snapped !out
        keep|keeps|keeping|stop|stops|prevent|save|kept ~ from ~ falling|fall|falls
        fall is|was|here|comes ~ favorite|season|pretty|here|lovely|beautiful
        FELL|DISLOC|BROKE|HIT|TWIST ~~ as a kid|child|boy|girl|teenager|youngster|teen
        DISLOC|BROKE|HIT|TWIST ~~ as a kid|child|boy|girl|teenager|youngster|teen
        burned out|dinner|supper|toast|calories
        pushed ~ back|through|hard|myself
        pushed down on
        landed ~ job|account|deal
        stepped on ~ toes|scale|gas
        step ~ on it
        stepped ~ up
    """,
    "danger.possible_fracture": """
        pop|crack|snap|crunch ~ hip|pelvis|rib|ribs|tailbone ~~ CANT|cant|couldnt|weight|PAIN|hurts|stand|walk
        something ~ let go|gave|went|shifted|slipped|moved|cracked|snapped|popped|crunched|broke|tore ~~ BACKBONE
        felt|heard ~ thunk|clunk|crunch|snap|pop|crack|thud|rip|tear|grind ~ in|down|low|from ~ BACKBONE|ribs|rib|hip
        BACKBONE ~ sound|noise|crunch|cracked|snapped|popped|snap|crunched
        sound|noise ~ branch|twig|stick|gunshot|celery|knuckle|wrap ~~ BACKBONE|back|pain|sharp|spine
        BACKBONE ~ went off|out like|with
        sharpest|sharp|shooting|stabbing|searing|electric pain|pains ~~ BACKBONE|blades|bra|rib|ribs
        BACKBONE|blades|bra|ribs ~~ sharpest|searing
        knife|stab|stabbed|spear|dagger|sword|arrow|icepick|spike|bolt ~ in|under|between|into|through ~ BACKBONE|blades|shoulder|bra|ribs|mid|middle|lower|upper
        heard|felt ~ rib|ribs|spine|back|hip|bone ~ go|pop|crack|snap|give|went|crunch
        crack|pop|snap|crunch ~ right|where|between|below ~~ bra|blades|belt|waist|spine|back|strap
        bent|reached|lifted|sneezed|coughed|twisted|rolled|turned|bending|lifting|reaching|sneezing|coughing|turning ~~ crack|pop|snap|crunch|pow|bang ~~ pain|hurts|straighten|move|lie|sleep|knife|stand|breathe|agony
        sneeze|sneezed|cough|coughed|coughing|sneezing ~~ knife|stab|pop|crack|snap|BACKBONE|spine
        BACKBONE ~~ CANT|cant|couldnt|havent straighten|stand|bend
        CANT|cant|couldnt straighten ~ up
        hunched|stooped|bent over ~ cant|stuck|since
        BACKBONE ~ seized|locked ~ sudden|suddenly|sharp
        shrunk|shrinking|shorter ~ inch|inches|pain
    """,
    "idiom.possible_fracture": """
        gave back
        gave it|them|this|that|me|him|her|us ~ back
        popped out|back
        came right back
    """,
    "danger.faint_or_dizzy": """
        out cold
        presyncope|syncope|syncopal|syncopy
        whirlies|spins|swirlies|dizzies|swimmies|vapors
        vision ~ narrowed|tunneled|tunnel|closed|closing|faded|fading|dimmed|went|swam|fuzzy|gray|grey|black|spotty
        tunnel vision
        elevator ~ in my head
        head ~ floating|floaty|balloon|elevator|empty|funny|weird|foggy|woozy|swam|whirling|swirling|fuzzy|light
        floaty|floating ~ head|stand|stood
        woke|wake|waking|came ~ on|to|up ~ floor|tile|ground|carpet|rug|bathroom
        found myself|me|him|her ~ on the ~ floor|tile|ground
        everything|world|room|lights|house|walls|floor ~ went|tilted|tipped|moving|moved|rocking|rocked|sideways|dark|black|fuzzy|white|gray|grey|spun|tilting|turned|faded|dimmed|wavy
        dont|cant|couldnt remember ~ falling|fell|how i|hitting
        unsteady|wobbly|tipsy|drunk ~ head|feet|standing|stand|legs|walking|all|when
        on a boat
        like i was drunk
        almost|nearly|about ~ dropping|dropped|drop|went|going ~ feet|out|over|down ~ stand|head|standing
        saw ~ sparkles|sparks|stars|spots|tweety
        blood ~ drained|rushed ~ head|face
        went|gone|turned|going white|pale|clammy|ashen|limp
        zoned|checked|lights out
        swooning|swoony|queasy ~ head|stand
        sick ~ dizzy
    """,
    "idiom.faint_or_dizzy": """
        passed|pass|passing out ~ on my? ~ phone|couch|sofa|bed|tired|sleep
        passed|pass out ~~ tired|nap
        passed out from ~ turkey|wine
        roller coaster
        knocked out ~ rows|carries|reps|sets|workout|exercises|session
        power|lights out
        spins|spin class|bike
    """,
    "danger.severe_pain": """
        CANT|cant|couldnt stand it|this $
        CANT|cant|couldnt stand it|this ,|.|anymore|any|longer|no
        CANT|cant|couldnt take it|this|anymore
        off the chart|charts|scale
        cut|saw|chop|take ~ leg|arm|foot|it|hip|back off
        worst of my life
        worst ~ ive|i ~ had|felt|ever
        worse than ~ childbirth|labor|kidney
        unbearable|unreal|blinding|ungodly|murder|murderous|hellish|savage pain|hurt|hurts|ache
        pain ~ blinding|unreal|ungodly|murder|hell|horrendous|savage
        hurts ~ like hell|the devil|blazes
        beg|begging|begged ~ for ~ pain|meds|help|mercy
        shoot me now
        climbing the walls
        pain ~ beside myself
        throw|threw|throwing up from ~ pain
        pain ~ throwing|threw up
    """,
    "idiom.severe_pain": """
        boobs|feet|dogs ~ killing me
        never a TEN|#
        words 'severe pain'
        at severe pain
    """,
    "danger.crisis": """
        might|may as well ~ dead|die
        point|use|reason of|in|to|for living|live|life
        thinking|thought|think|want|going|about ~ jumping|jump ~ bridge|roof|train|building|window|cliff|balcony|overpass
        better ~ off|if ~ without me
        nobody|noone|one ~ miss|notice|care ~ me
        want|wish|wanted ~ it ~ all? ~ to ~ be? over|stop|end|done|finished
        tired of ~ waking|breathing|existing|trying|fighting|living|hurting and
        nobody|noone|no one ~ notice|miss|care|cry ~ if|when|me ~ gone|died|dead|disappeared|wasnt
        thinking|thought|think ~ how|ways|way ~ id|i|to ~ do|end|go
        wont|will not|dont be|plan|expect|intend ~ around|alive|here ~~ much|next|longer|appointment|tomorrow|decided|see|christmas|week
        wont be around
        cut|cutting|burn|burned|hurt|hurting myself ~ again|purpose|on
        on purpose ~~ cut|pills|hurt|myself
        motor|engine|car running ~~ garage
        garage ~~ motor|engine|running
        put ~ me out of ~ misery
        nothing|anything left ~ live|for|me
        no|any reason ~ get up|wake|live|living|stay|keep|be
        dont|do not|didnt|never ~ want|wanna|care ~ wake|live|alive|exist|see ~ 
        hope|hoping|pray|wish ~ dont|not|never|wouldnt|didnt|wont ~ wake|make|morning
        give|giving|gave up on life|living|everything
        said|saying|say ~ goodbye|goodbyes|goodbys
        my time ~ go|over|is
        lord|god|jesus ~ take|call|let ~ me ~ home|now|tonight|go
        ready to ~ die|go ~ home|meet|now|be
        see|saw|seen no ~ future|way out|hope|point
        whats|what is the point|use ~ living|anymore|going|any|life|all
        what for ~~ alive|living|thought|how
        better if i ~ never|disappeared|vanished|died|werent
        stockpiling|hoarding|saving ~ pills|meds
        have ~ pills|gun ~ ready|loaded|counted|right
        loaded ~ gun|pistol|shotgun|rifle
        drive|driving|steer|veer ~ off ~ bridge|road|cliff|into
        jump ~ off|from|in front
        not be here ~ tomorrow|morning
        cant do ~ life|living ~ anymore
        cant do ~ this life
        dead inside ~ end|done
        everyone ~ better without
        only way out
        checking|check out ~ life|good|permanently
    """,
    "idiom.crisis": """
        years off my life
        not waking up early
        want ~ it ~ to be over ~ winter|snow|election|semester|chemo|cold|heat
        tired of waking up ~ early|at|for|night|pee
        bridge say
        goodbye ~ for now
        say|said|saying goodbye to ~ my|the|grandkids|son|daughter|kids
    """,
}
