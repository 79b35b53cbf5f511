"""English danger signs told behind another statement without a pause ("not working right, struggling to breathe"), and
turns of phrase that the frames by kind do not reach.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.chest_or_breathing": """
        ^ FILL* # ,? but|and|only|just? FILL* in|on|across|over the|my|middle|of|all|left|right* CHEST
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* short|breathless|wheezing|wheezy|winded|struggling|gasping|palpitations|chest !cold !better
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* CANT breathe|breath|get|catch
        lungs|lung ~ working|work|playing|packing|packed ~ right|properly|up|well|good
        CANT|cant|couldnt|cannot fill my|the? lungs
        short of wind|puff|oxygen
        puffer|inhaler|nebuliser|nebulizer|ventolin ~ times|twice|again|already ~~ tight|tightness|breath|breathe|wheezy|wheezing|worse|better
        sleep|sleeping|slept|lie|lying propped|sat|sitting|upright up? ~ breathe|breath|air
        HEART is|was|been|keeps|has|started|been? acting|playing|playin|messing up|about|around
        HEART ~ missing|missed|misses|dropping|drops|skipping|skips a|some|odd|few|the* beat|beats
    """,
    "danger.nerve_or_bladder": """
        feeling|sensation ~ hasnt|havent|not|isnt|wont|aint come|coming|came|returned|returning back|in|to? ~ BODY
        runs|running|comes|coming|leaks|leaking|dribbles|pours out ~ dont|cant|without|never feel|feeling it|$|,|.
        feeling|sensation ~ BODY ~ hasnt|havent|not|isnt|wont|aint come|coming|came back
        leg|legs|foot|feet|knees getting|growing|gotten weaker|weak every|each|by|daily|this|since|and
        touch|touching my? BODY ~ like touching|feeling someone|somebody|anybody|anothers|elses|else
        N0 strength|power|feeling|grip|sensation ~ LIMB
        leg|legs|knee|knees just|simply|suddenly|up|and* folded|crumpled|caved|crumbled|quit
        foot|leg|hand|arm|feet|legs|hands ~ no push|strength|power|grip|feeling|life in it|them|that|my
        slaps|slapping|slapped the floor|ground|pavement ~ walk|step|go
        peed|wet|weed|piddled ~~ hadnt|havent|didnt|not|never|without ~ know|known|knew|feel|felt|notice|noticed|knowing
        messing|messed|dirtying|dirtied|fouling|fouled myself|himself|herself
        accident|accidents ~~ number # in my|his|her|the pants|bed|drawers|trousers
        # in my|his|her pants|drawers|undies|knickers
        foot|feet|toe|toes|foots ~~ slapping|slaps|dragging|drags|flopping|flops|floppy
        number # in my|his|her|the pants|bed|drawers|trousers|underwear|undies
        no control at all|whatsoever ,|.|$|since|now|any|anymore|over
        waterworks|bladder|bowels|bowel|water|waters ~~ no|lost|zero|any control|warning
        leg|legs|foot|feet|arm|hand|knee|knees just|simply|suddenly|wasnt* wasnt|isnt|werent|not there ,|.|$|and|when|gave|under
        peed|weed|wet|piddled|pissed|dribbled|leaked on|over|all|over|in the|my|me kitchen|bathroom|new|living|good* floor|carpet|chair|seat|sofa|settee|car|bed|mat|rug
        no|without|little|hardly|any warning|notice ~~ pee|peeing|wee|go|toilet|urinate|bathroom|loo|potty
        pee|peeing|wee|weeing|urinating|bladder ~ no|without|little warning|notice|control|feeling
        still|stays|stayed NUMBONLY|NUMB
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* numb|numbness|tingling|tingly|weak|incontinent
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* LIMB ~ numb|tingling|weak|dead
        hand|hands|fingers|thumb wont|doesnt|cant|dont|not|couldnt grip|close|hold|open|grasp|squeeze
        arm|leg|hand|foot|side feels|felt|feel|is like? its|it|it's? not mine
        strain|straining|struggle|struggling|trouble|push|pushing to? wee|weeing|pee|peeing|urinate|pass
        dribbling|leaking|trickling|dripping wee|pee|urine|water|poo
        wee|pee|urine ~ nothing|hardly|barely comes|coming|came|there
        down below|there ~~ asleep|numb|dead|nothing
        accident|accidents with my|the? bowel|bowels|bladder|waterworks|poo|wee|pee
        CANT|cant|couldnt lift|raise|pull the front|end|top of my|the left|right? foot|feet
        i|ive|im seem|seems|appear|keep|started|think|been|have|am im|to|be|been* leaking|dribbling|leak|dribble !in !from !through !roof !tap
        leaking|dribbling|dripping|leaked|dribbled ~ dont|cant|without|not|never|didnt|couldnt ~ feel|feeling|know|knowing|notice|noticing|control|stop
        weeing|wees|weed|pooing|pooed|widdling|widdled|tinkling|tinkled|wetting|pissing|pissed|peeing|pees|peed|soiling myself|himself|herself !laughing !lol !haha
        wee|piss|tinkle|widdle myself|himself|herself !laughing !lol !haha
    """,
    "danger.fall_or_injury": """
        i slip|trip|tumble in|on|at|down|off|over|from the|my|a? _ ~~ hurt|hurts|pain|sore|bruise|bruised|swell|swollen|bleeding|bleed|BODY
        i slip|fall|trip and|then drop|fall|fell|hit|hurt|land|landed|bang|knock
        i fall|falled|fallen in|on|at|down|off|from the|my|a? bath|bathroom|kitchen|stairs|floor|street|ice|yard|garden|bed|shower|step|steps|sidewalk|road|house|chair
        afraid|worried|scared|feared ~ fall|trip|slip|tumble ~~ sure enough ~ did|happened
        never|hardly|dont|rarely usually? fall|trip|tumble ~ but ~ today|yesterday|tonight|last|this ~ did|i|night|morning|fell
        slammed|pinned|mashed|crushed|shoved|bowled|flattened|squashed me|us into|against|on|over|to|down|between
        sprawled|sprawling out|flat|on|across|over|full
        car|truck|van|bus|driver|somebody|someone|suv|bike|cyclist|taxi|lorry|scooter|trolley|cart ~ hit|rammed|struck|bumped|smashed|backed|ran|clipped|knocked us|me|my|into|our
        rear ended us|me|my|at|by|on|yesterday|today
        came|fell|dropped|landed|crashed|toppled down? off|from|out ~~ on|onto my|me HEADPART|BODY|shoulder|toe|foot
        down i|we went|came
        down onto my|me the? bum|backside|behind|bottom|arse|ass|rear|butt|tail|tailbone|posterior|keister|tush
        slid|slipped|went|came|landed|sat|plopped|dropped straight|right|hard* down? on|onto|to my|me|the bum|backside|behind|bottom|arse|ass|rear|butt|tail|tailbone|posterior|keister|tush
        leg|foot|feet slip|slipped|slips|enter|entered|go|went|gone inside|into|in|through the|a|one? gutter|hole|drain|pothole|ditch|grating|crack|gap|manhole|floorboard|floorboards
        ankle|knee|wrist|foot|hand|elbow|shoulder|leg don|done swell|swollen|swole|swelled|swelling
        caught|catch|snagged|hooked ~ the|a|my rug|mat|step|kerb|curb|carpet|cable|lead|doorstep|threshold ~~ down|fell|went|flying|over
        down i|we came|went|go|tumbled
        knocked|sent me|us? for # by|down|off|on|when|.|,|$
        flat on my|me|his|her face|back|bum|backside|nose|arse|bottom|stomach|side
        caught|cut|gashed|scraped|nicked|sliced|bashed my|me left|right? JOINT|LIMB|HEADPART|shin|hand|arm|finger on|against ~~ bleeding|blood|bled|gash|stitches|swollen
        may|might|could|must|think|reckon|believe i|ive|have|of|well|done* broken|broke|fractured|torn|dislocated|sprained|twisted|cracked a|my|me|some|something left|right? JOINT|LIMB|HEADPART|BODY|rib|ribs|bone|wrist|ankle|hip
        legs|feet|leg|foot just? went|gone|shot|slid|flew|taken out? from|beneath under? me|us
        walked|ran|bumped|crashed|banged|smacked straight|right|smack|bang? into a|the|my|an _? lamp|post|lamppost|door|wall|tree|pole|cabinet|table|window|bollard|doorframe|bedpost|cupboard|drawer|shelf|chair|railings
        overbalanced|overbalance|unbalanced|toppled ~~ landed|land|hit|fell|floor|banged|bumped|against|onto|into|down|crashed
        landed|crashed|ended|fell|went up? against|into|onto the|my|a radiator|wall|table|counter|worktop|sink|bath|sideboard|dresser|cupboard|cooker|stove|fireplace|wardrobe|bookcase|desk|railing|rail|bannister|banister|fence
        missed|miss|missing the|my|a seat|chair|bed|toilet|loo|sofa|stool|bench|settee !on !at !so !from !already !time !one !ones !exercise !exercises !stuff !thing !things !part !raises !set !sets !squats !squat !bit !work !stand !stands !row !today !yesterday
        bumped|thumped|thudded|plonked|crashed down hard|heavily|heavy|awkwardly
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|i|had|took|a|another* fell|fall|tripped|tumble|slipped !asleep !behind !ill !short !apart
    """,
    "danger.possible_fracture": """
        JOINT|BACKBONE|rib|ribs|hip went|goes|gone|go snap|pop|crack|crunch|bang|clunk ~~ hurt|hurts|hurting|pain|sore|weight|cant|swollen
        sound|noise|clunk|crunch|tak|tok ~~ BACKBONE ~~ pain|hurts|hurt|sore|ache|aching|paining
        sound|noise|clunk|crunch|tak|tok ~~ BACKBONE ,? ~~ pain|hurts|hurt|sore|ache|aching|paining
        BACKBONE ~~ sound|noise|clunk|crunch|tak|tok ~~ pain|hurts|hurt|sore|ache|aching|paining
        wrist|hip|ankle|ribs|rib|collarbone|shoulder cracked|popped|snapped|crunched ~~ hurts|hurt|hurting|PAIN|agony
        felt|feel|feels something|summat|somethin|sumthin|it go|give|went|gave|move|shift in|inside my|me|the low|lower|upper|left|right? BACKBONE|hip|groin|ribs|pelvis|neck
        snap|crack|pop|crunch|bang . in|inside my|me low|lower|upper|left|right|mid? BACKBONE|hip|ribs|neck
        something|summat|somethin went|gave|go with a|an sharp|awful|horrible|terrible|stabbing|sudden? pain|crack|pop|snap|stab
        may|might|could|must|think|reckon|believe i|ive|have|of|well|done* broken|broke|fractured|cracked|crushed a|my|me|some|something low|lower|upper? vertebra|vertebrae|BACKBONE|hip|pelvis|rib|ribs
        pop|crack|snap|crunch in|from my|the|me left|right|lower? JOINT|wrist|ankle|hip|shoulder ~~ BADLY|PAIN
        BACKBONE locked|seized|froze|jammed|spasmed|caught|cramped up|solid? ~~ once|sudden|suddenly|sharp|agony|horrible|awful|terrible|excruciating
        PAIN|sharp ~~ BACKBONE ~~ all at once
        BACKBONE ~~ all at once ~~ PAIN|sharp|agony
        fractured|fracture|broke|broken|cracked|snapped something|summat|somethin|a|my bone? ~~ heard|felt|feel it|something|somethin|summat go|crack|snap|pop|give|went
        heard|hear it|something|summat|somethin go|went|give|gave ,|.|$|and|then|in
        clicked|click|clunk|clunked|twanged|twang|pinged|ping|clonk|thunk ~ in|inside my|the? left|right? groin|pelvis|BACKBONE|hip|ribs ~~ CANT|cant|couldnt|hardly walk|stand|put|move|bear|lift
    """,
    "danger.faint_or_dizzy": """
        head|heads|world|brain ~ spinning|swimming|reeling|whirling !with !from !lol !over !about
        swoon|swooned|swooning|swooned|swoony
        greying|graying|greyed|grayed|browning|browned|whiting|whited out ,|.|$|at|when|on|every|again|and|for|if|on
        place|room|floor|house|walls|everything|kitchen|world|ceiling|bathroom|ground ~ tilting|spinning|tipping|swaying|moving|turning|whirling|swimming|rocking|lurching
        spinning room|head|world|walls
        black|white|dark|floating spots|dots|specks ~~ eyes|vision|sight
        came|come|gone|went over all? hot|cold|clammy|wobbly|strange|weird|shaky ~~ went|sit|dizzy|faint|lie|head|drop
        nearly|almost|just went ,|.|$
        felt|feel|like i|im was|am? falling|tipping|leaning|veering sideways|backwards|backward
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* DIZZY|fainted|fainting|spinning|swimming
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|i|nearly|almost|just* passed|blacked|collapsed !by !away !the !through
    """,
    "danger.severe_pain": """
        hurts|hurting|pain|its|aching|ache past|beyond|more what|than|anything what? i|me|anyone? can|could? bear|take|stand|endure|tolerate
        pain|hurt pass|past|passing|beyond|more|above|over than? what|anything? i|me|mi|a? body|person|man|woman? can|could|able? bear|take|stand|endure|tolerate
        no|cant|not fit bear|take|stand am|it|this|again
        pain ~ too much|plenty ~ no|cant|cannot|not ~ bear|stand|take|endure
        ^ so|just|absolutely|really|its|it|pain|pain's|is* unbareable|unberable|unbarable|unbearible|excrutiating|excruciatin|agonising|agonizing|agony
        beside myself|meself with|in|from the|this? PAIN|agony
        PAIN is|was|gone|getting? beyond a joke
        not|isnt|hardly|barely|longer bearable|tolerable
        CANT|cant|couldnt cope|deal with this|the|my|it? PAIN|agony
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|in|my|is|are|still|just|very|really* agony|SEVERE
        CANT|cant|couldnt bear|stand|take to|be|being|it|the|anyone|anybody|anything|even* touched|touch|touching
        more|worse pain|painful|hurt|agony? than when i|we? had|birthed|gave|delivered my|the|our|birth babies|baby|kids|children|first|second|son|daughter|twins|bairns|to
        more|worse pain|painful|hurt|agony? than giving|having|labour|labor|childbirth|delivering birth|babies|baby|kids|a|.|,|$|was|ever
    """,
    "danger.crisis": """
        never|havent|not ~ cut|hurt|harmed|harm|burned myself ~~ but ~ want|wanna|going|need ~ again|tonight
        reason|thing|stopping|keeping ~ i|ive havent|didnt|dont|wont|hadnt killed|kill|ended|end|hurt|offed|off myself|it|my
        wish i had ~ died|dead|drowned|killed
        tired|sick|weary|done|bored of|with living|existing !with !in !at !here !alone !like !out !on !next !near !by !room !next
        wish it was|were all? over|finished ,? ~~ tired|live|life|living|die|dead|anymore
        could|might|should|would|id|think|thinking|thought just? run|start|leave|running|starting the|my|a truck|car|engine|motor ~ garage
        run|running|leave|leaving|start|starting|sit|sitting the|my|in* car|truck|engine|motor|pickup in the|my garage
        swallow|take|taking|swallowing|down the|a|whole|entire|full* bottle ,|.|$|of|tonight|and|some|one
        let it|the|them|this cold|snow|water|river|train|sea? finish|take|have|end me
        gun|pistol|rifle|revolver|knife|blade|razor to|in|against|at my|me head|mouth|temple|throat|wrist|wrists|chest
        i would|wouldve|d have? killed|hung|shot|offed|drowned|hanged|topped myself
        id have? killed|hung|shot|offed|drowned|hanged|topped myself
        decided|deciding|going|gonna|ready|want|plan|planning|time|intend|intending|made|mind to? end it ,|.|$|all|now|tonight|soon|tomorrow
        nuh|no|nah|dont waan|wan|want|wanna live|liv again|anymore|no|more
        throw|throwing|chuck|chucking|hurl|fling yourself|myself|meself|me down|off|under|in|out|over|from|into
        id|i|we|would|wouldve|have have|be|of|already|long|been|done* ended|finished it all? ,|.|$|by|long|already|if
        if|only it|the|my wasnt|werent|weren't|not|hadnt for|been the|my ~ i|id ~ gone|ended|dead|done|checked|over
        by|at my own hand|hands
        plan|planning|intend|intending|mean|going|gonna to? be gone|out|dead by|before|soon|tomorrow|tonight|when|for
        put|got|have|getting|putting my papers|affairs|will|things in order ~~ letter|letters|goodbye|note|gone
        wrote|written|writing a|my|the|some letter|letters|note|notes to|for the|my kids|children|family|son|daughter|husband|wife|grandkids ~~ gone|goodbye|when|before|end|order|go
        i|ive|im got|have|took|brought|dug|keep|holding|loaded|get _? _? old? pistol|gun|rifle|shotgun|revolver|rope|razor|blade out|loaded|ready|beside|next|under|here|of|from|near
        no|lost|losing|lack|without any|the|my? will to live !waiting !watching !listening !queuing !queueing !in !on !at !lol !haha
        favour|favor if i|im was|were|am|went|is|just|wasnt* gone|dead|died|here|around
        happier|relieved|glad|better if i|im was|were|am|just* dead|died|gone|die
        thinking|think|thought|thoughts of|about jumping ,|.|$|off|from|in|again
        join|joining my|the? CLIENTLIKE|PERSON|him|her|them in|up heaven|there|above
        self harming|harmed|harms|injuring|injured|injury
        selfharm|selfharming|selfharmed
        let me die ,|.|$|now|please|in
        cut|cutting|slashed|slashing|slit|slitting|scratched|burned|burnt|carved my left|right|own|both? arms|wrists|wrist|thighs|forearm|forearms !short
        cut|cutting|slashed|slashing|slit|slitting|scratched|burned|burnt|carved my left|right|own|both? arms|arm|legs|leg|thigh|stomach ~ on purpose
        cut|cutting|slashed|slashing|slit|scratched|burned|burnt my left|right|own|both? arm|arms|leg|legs|thigh again .|,|$|last|tonight|today|to
    """,
    "idiom.chest_or_breathing": """
        breath of fresh air
        view|sunset|scenery|leaves|sight ~ took my breath right? away
        breathless|winded from|with laughing|laughter|singing|cheering
        not short of breath|wind|puff|air ,|.|$|or|nor|and|just|but|at|either
        chest press|presses|fly|flies|expander machine|bar|exercise|exercises|reps|sets|with|is|was|at
    """,
    "idiom.nerve_or_bladder": """
        weak at the knees
        dead on my|me|our|his|her feet
        breath|breathless|winded|wind|puff|puffed|air|wheezing all? day|today|night|morning|after? ,|and|so? i|im? CANT|cant|couldnt|could hardly|barely|even? talk|speak !right !properly !clearly !words
        CANT|cant|couldnt|cannot hardly|barely|even? talk|speak|finish in? a|one? full|whole sentence|sentences
        legs are|were|feel|felt|like like? jelly|jello|noodles|spaghetti ,|but|and? happy|worth|proud|chuffed|delighted|pleased
        laughed|laughing so hard|much? that? i nearly|almost? weed|wet|peed|pissed
    """,
    "idiom.fall_or_injury": """
        bumped into !the !a !my !door !table !wall !something
        nearly|almost|about split my sides
        hit|hits # for|,|.|today|tonight|$
        hit|hits|hitting a|an? # OUTOF|,|.|$|today|when|while|by|this
        hit|hits|hitting a|an? FRAC10
        fell|fall|fallen out|about laughing|laughin|giggling
        fell|fall|fallen out of the? habit|practice|favour|favor|touch|step|sync|routine
        hit with a|an big|huge|massive|nasty|surprise|repair|tax* bill|bills|fine|quote
        cake|souffle|bread|joke|party|idea fell flat|apart
        niagara|victoria|iguazu|angel falls
        they|she|he|kids|you|who twisted my|his|her arm to
        fell|falling|fall|sank|dropped to|on my|his|her|our knees in|and|to prayer|prayed|pray|praying|thanks|gave|worship
        first|last day|week|day of fall
        happy fall
        slipped|snuck out of church|mass|work|class|meeting|school|service|practice|there
        slipped|snuck out to church|bingo|the|my|a|get|buy|see|lunch|dinner|vote|mass
        fallen|fell|fall|falling to|into pieces
        little|younger|older|young one|ones fell|tripped|slipped|bumped !on !into
        hit|struck with|by a|an great? bout|wave|burst|bolt of energy|inspiration|sleepiness|giggles|nostalgia
        pride took|had|got|suffered|taken a|quite|bit|of* tumble|knock|bruise|bruising|hit|fall|bump|dent|beating
        only thing|part hurt|bruised was|is my pride
        slipped|squeezed|snuck|fit|fitted # set|sets|round|rounds|go|goes in
        band|bands|phone|cup|plate|weight|weights|ball|book|glass|mug|dumbbell|kettlebell|case|suitcase|bag|remote|tablet|keys|pan|tin|can hit|hits the floor|ground|deck >so|,|.|$|but
        weights|weight|dumbbells|kettlebell|bottle|bottles|tins|cans|jar|vase|ornament|books|plant|box|boxes fell|rolled|slid|came|dropped off|out|down of? the|my|a shelf|table|counter|hook|wall|rack|worktop|cupboard|bag|car|van >,|.|$|but|so|nobody|no
        missed|miss|missing the|my|all|those* chair|step|stair|bench|seat|stool|bed|toilet one|ones|exercise|exercises|stuff|thing|things|part|raises|set|sets|squats|squat|bit|work|stand|stands|time|reps|ups|row|rows|program|routine
        shower head|rail|curtain|door|rod|screen|hose fell|came down|off|apart|loose >,|.|$|so
        cupboard|drawer|door|saucepan|tap|oven|toilet|fridge handle|knob|lid|door|seat fell|came down|off|apart|loose >,|.|$|so
        tripped|trip|trips|tripping the|a|my|our? breaker|breakers|fuse|fuses|switch|circuit|electrics|sensor|fusebox
        when|after|until|till|once|before the heat|sun|rain|wind|temperature|fever|swelling|traffic|tide|noise has|have? gone|went|goes|comes|came|come|dies|died down
        knocked|knocks|knocking|knock the|my|your|those|these|all? EXWORD|it|them|that EXWORD? out of the|our? park|ballpark
        PERSON|CLIENTLIKE|he|she the one who|that fell|tripped|slipped|collapsed|fainted ,? not
    """,
    "idiom.possible_fracture": """
        snap crackle
        pop|crack|snap and|but it|that was just|only the|my|a _? lid|chair|floor|door|jar|stick|branch|ice|bag|box|knuckles
        BACKBONE|neck|hips|hip|knees|joints cracked|popped|clicked|crunched nicely|beautifully|pleasantly|satisfyingly
        crack|pop|snap|bang|noise|creak|crunch ,|but|and|.? it|that was|is|came from? only|just? from? the|my|our|a? chair|floor|floorboard|floorboards|door|bed|table|box|band|window|stick|twig|sofa|fridge|house|heating|pipes|pipe|firework|fireworks|neighbours|neighbors|dog|cat ,|.|$|not|lol|haha|all
        BACKBONE|hip|hips|knees|joints but a sharp|stabbing|sudden
    """,
    "idiom.faint_or_dizzy": """
        wind knocked out of me|us by|when|at ~ bill|price|news|cost|score|result
        passed|passing out the|our|some? church|school|wedding|funeral? bulletins|programs|leaflets|candy|hymnals
        ink|print|writing|letters|sheet|copy is|are|was|so|too|very* faint
        nearly|almost|about|practically fainted|dropped|collapsed|keeled when|at|over ~~ bill|price|cost|prices|receipt|total|estimate|quote
        passed|passing|pass out my|the|some|our|all|more* sheets|sheet|exercises|handouts|copies|bulletins|invitations
        street|block|town|neighborhood|neighbourhood|city|building|house blacked out
        spinning|spins from|with all? these|the|those|my|that tax|insurance|medicare|legal forms|papers|paperwork|rules
        DIZZY|faint|fainting ? no|nope|nah|none not today|now|lately|really|at|since|this
        collapsed|collapse|collapsing the|my|a|an|our|that? table|tent|stroller|pushchair|box|boxes|trolley|umbrella|cane|deckchair|buggy
        knocked|knocks|knocking|knock the|my|your|those|these|all? EXWORD|it|them|that EXWORD? out of the|our? park|ballpark
    """,
    "idiom.severe_pain": """
        singing|music|noise|voice|wait|line|queue|traffic|movie|meeting|sermon ~ was|is|were? pure|excruciating|torture|unbearable agony|excruciating|torture|,|.|$
        heat|weather|traffic|noise|cold|humidity|smell|wait|suspense|wind|smoke is|was|are|getting|got|just|really|so* unbearable|intolerable|awful ,|.|$|so|out|today|here|and|outside|again
        agony of choosing|deciding|waiting|defeat|watching|picking
        is|was|pure|be|what|sheer agony|torture watching|listening|deciding|choosing !to
    """,
    "idiom.crisis": """
        are|is|will|gonna|going|would to? be? the death of me lol|haha|ha|hehe|,|.|$
    """,
}
