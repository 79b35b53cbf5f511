"""English danger signs as general frames: a part of the body, what it does or feels, and where it goes from there.

A label a block, a pattern a line; the notation stands in reading/patterns.py. The files by kind hold the plain words.
"""

CONCEPTS = {
    "MEDS": "pills tablets tabs meds medication medications medicine medicines paracetamol tylenol painkillers insulin morphine capsules oxycodone codeine sleepers",
    "WEE": "wee pee urine poo poop stool water motions faeces",
    "ODD": "funny odd strange weird wrong awkward peculiar unnatural",
    "BADLY": "bad badly hurts hurt hurting agony sharp killing sore painful swollen swelled cant couldnt throbbing",
    "OUTDOORS": "shower bath tub kitchen hall hallway garden yard street road path ice snow mud grass steps step stairs pavement kerb curb bathroom drive driveway patio rug mat landing",
    "SINEW": "calf hamstring groin achilles muscle ligament tendon cuff meniscus cartilage quad shoulder knee bicep",
    "DEADLY": "train trains traffic tree wall bus lorry truck car cars bridge cliff river sea lake canal platform tracks",
}
RULES = {
    "danger.chest_or_breathing": """
        CHEST ~ gyp|jip|grief|trouble|bother|aggro|gripe
        in|behind|inside my|the|her|his? CHEST !freezer !drawers
        CHEST is|was|feels|felt|keeps|kept|went|has|gets|got !fine !ok !okay !good !clear !better !great !clearer !normal !not !all !no !up !out !xray !press !off !moved _
        with my heart .|,|$|yesterday|again|today|last|this
        heart is|was|been|playing|acting bad|poorly|funny|up|dicky|dodgy|wonky|weak !at !for !to
        out of puff|puffs
        choking|choke|choked for|on|fighting breath|air|my|own
        breathing|breathe through a straw
        breathing|breath|respiratory|breathin problem|problems|trouble|troubles|difficulty|difficulties|issue|issues|attack|distress|bad|worse|laboured
        problem|problems|trouble|troubles|difficulty|difficulties|issue|issues|bother ~ breathing|breath|breathe|breathin|breathlessness
        breathlessness
        used|took|take|taken|need|needed|needing|using|taking|had|puffed ~ gtn|nitro|nitroglycerin|nitroglycerine|nitrolingual
        hurts|hurt|hurting|pain|painful|sharp|stabbing|stabs|catches|sore|ache when|if|as|to|whenever|everytime i? breathe|inhale|breath
        hurts|hurt|hurting|pain|painful|sharp|stabbing|stabs|catches|sore ~ every|each time i ~ breath|breathe
        breathing|inhaling hurts|painful|sharp|stabs
        every|each breath hurts|painful|hurt|agony
        could|do|did|can|would not breathe|breath
        inhaler|puffer|ventolin isnt|not|wont|doesnt|aint ~ helping|working|touching|help|work
        PAIN|pain|pains|ache|aching across|in|around|round|over|under|behind my|the? CHEST|breast|bosom|heart|sternum
        struggling|struggle|battling|hard ~ get|getting|draw|catch|for ~ air|breath|oxygen
        CANT ~ get ~ oxygen|air
        HEART|heart ~ somersaults|pounding|jumping|hammering ~ CHEST|since|all|sitting
        tightening|tightness|squeezing|pressure|gripping around|round|across|over|on|in my|the? heart|ribs|lungs
        CANT|cant|couldnt|cannot ~ talk|speak ~ full|whole sentence|sentences
        wind ~ gone ~ right out of me
    """,
    "danger.nerve_or_bladder": """
        FACE ~ like ~~ dentist|novocaine|injection|needle
        LEG just|keep|keeps|simply? go|goes|going|went from|out under|beneath
        didnt|couldnt|not|cant make it|get to|in the|time? loo|toilet|bathroom|restroom|lavatory
        CANT|cant|couldnt|cannot tell|feel hot|cold|heat|temperature
        LIMB|LEG|arm|legs has|have|got|with no|little|zero life|feeling|power|strength
        no life|feeling|power|strength|sensation left? in|to ~ LIMB|leg|legs|arm
        ants|insects crawling ~ LIMB|legs|leg|arm
        lost|losing|loss the|of? use of ~ LIMB|legs|leg|arm|hand
        wee|pee|urine|poo|poop|stool|motions|faeces ~ came|come|comes|coming|slipped|ran|running|leaked|dribbled|trickled|escaped ~ out|itself|own|down|through|without|before
        i|ive|im|have|keep leaked|leaking|leak|dribbled|trickled|weed|piddled !some !tea !coffee !the
        BLADDER|bladder|bowels|bowel ~ went|moved|opened|emptied|failed ~ on|by|themselves|itself|own
        bowels|bladder ~ on|of ~ own
        bowels|bladder failed|emptied|released
        CANT|cant|couldnt|cannot|havent|unable wee|poo !bit
        CANT|cant|couldnt|cannot|unable pass urine|water|wee|stool|pee
        CANT|cant|couldnt|cannot|havent|unable|not been? able? to? go|have|do|had|done|pass|manage for? a|any? wee|pee|poo|water|urine
        CANT|cant|couldnt|cannot control|hold|stop my|the|any? wee|poo|pee|water|bladder|bowels|urine
        weed|pooed|pood|shat myself|my
        loss|lost|losing|lack of|the|all|any? all? feeling|sensation|power|strength|movement|grip|bladder|bowel|bowels|use in|of|from|to|control my|the|left|right|both? LIMB|LEG|ARM|SADDLE|BODY|legs
        loss of feeling|sensation|power|strength|movement|control|grip|bladder|bowel|bowels
        LIMB|LEG ~ not|no|without|lost|losing|isnt|arent ~ power|strength|feeling|sensation
        LIMB|legs ~ wont|dont|doesnt|not|refuse ~ do|doing|go|obey|support|carry what|where|me|properly
        leg|legs|foot|feet|toes|arm|arms|hand|hands|sole|soles ~ cotton|cottonwool|wood|wooden|blocks|post|marshmallow|sponge !shoes !floor
        LIMB|leg|legs numb as
        LIMB|leg|legs|knee|knees keep|keeps|kept|keeping giving|buckling|folding|collapsing|failing
        LIMB|leg|legs ~ folded|buckled|crumpled|collapsed on|under me
        LIMB|thigh|LEG been|gone|is|are|was|has dead|prickly|numb|wooden !tired
        weak as _ _? ~ LEG|leg|legs|arm|arms|side
        CANT|cant|couldnt|cannot ~ tell ~ when ~ need|needed ~ go|wee|toilet|loo
        CANT|cant|couldnt|cannot ~ feel ~ loo|toilet|seat|sit|sitting|wipe|bum|bottom|backside|privates
        numb|numbness|tingly|tingling ~ bum|backside|bottom|privates|downstairs|underneath
        numbness|weakness and|or|/ weakness|numbness|tingling
        foot drop|dropping|dropped
    """,
    "danger.fall_or_injury": """
        ice|step|kerb|curb|pothole got me
        down the|some|my|all? stairs|steps|slope|escalator on|head my|first|over !way !own !list
        for a burton|purler|gutser|sixer
        took|had|got|taken|having a|another nasty|bad|right|real|big|good? knock|bang|whack|bump|clout|wallop|bash on|to|in my|the HEADPART|JOINT|BACKBONE|ribs
        swan|belly dive|flop off|down|in|into|on|onto
        bowled|tipped|barged|sent me over|down|off|flying|sprawling
        done|did|do|put|wrecked|knackered|buggered my left|right|bad|good|other|low|lower? ankle|knee|hip|back|shoulder|wrist|neck in|again|out|something
        argument|fight|disagreement|altercation with the|a|my _? kerb|curb|door|step|steps|pavement|wall|stairs|table|chair|fence|gate|hedge|bollard
        over the handlebars|bannister|banister|railing|barrier
        kicked|kick|butted|headbutted|trampled|bitten|trod|stamped|stomped|gored|rammed|barged|charged|squashed|crushed|clouted|thumped|walloped|whacked|nipped my|me _? JOINT|LIMB|HEADPART|BODY|ribs !out !up !back !forward !behind !high !to !sideways !straight
        kicked|butted|bitten|trampled|gored|mauled|attacked|savaged|rammed|squashed|trodden|struck by
        thrown off|from my|the|a >ANIMAL|bike|quad|tractor|cart
        hit|banged|bumped|cracked|smacked|knocked|whacked a|the _ with my left|right? JOINT|HEADPART
        <ANIMAL trod|stood|stepped|jumped|landed|fell on my left|right|bad? LIMB|JOINT|HEADPART|BODY
        <ANIMAL trod|stomped|trampled|stamped on me|my
        bit|kicked|butted|trampled|threw|knocked|pulled|dragged|charged|bucked me !out !up
        knocked|bowled|pushed|pulled|dragged|shoved|mown|run|flattened down|over|flat|off by
        tore|torn|ripped|ruptured|strained|pinged|twanged|snapped my|a|the|some|something left|right|bad? SINEW !band !brace !strap !wrap !strengthening
        did go|went over|down !to !the !that !this !it !my !your !a !well !them
        go|went|gone|going|came over in|on|outside|by|near the|my|a|some? OUTDOORS
        went|go|gone|going over sideways|backwards|backward|forwards
        i|ive fel .|,|$|in|on|off|down|over|again|and|out|so|this|last|when|while|yesterday|today|twice|hard|at|by|to|onto|what|will
        ^ fel .|,|$|in|on|off|down|over|again|and|out
        picked|helped|lifted|scraped|hauled|pick|help|lift|haul|scrape me|us up|off ~ floor|ground
        be|was|been|being picked|helped|lifted|hauled|scraped up|off ~ floor|ground
        JOINT|LIMB|arm|leg|wrist|ankle ~ ODD shape|angle|way
        JOINT|LIMB|arm|leg|wrist|ankle ~ swollen and a|an|at|in? a? ODD
        swollen and a|an|at|in? a? ODD shape|angle|way|looking
        trip|trips over my|the|a|own|his|her
        crashed|overturned|tipped|rolled|flipped my|the|a mobility|motability|wheel? scooter|wheelchair|chair|buggy|walker|tractor|quad
        tipped|fell|tumbled|thrown|slid|slipped|rolled out|off of|the|my|a ~ wheelchair|chair|bed|scooter|sofa|couch|toilet|loo|quad|tractor
        slid|slipped|rolled|tipped|dropped ~ onto|on|to the floor|ground
        ladder|box|shelf|branch|tin|door|plank|bag|pan|brick|drawer|case|wardrobe fell|came|dropped|landed|crashed|slammed ~ on|onto|down|against me|my|on|top|onto
        ran|run|drove|rode|cycled|crashed|skidded|backed|reversed into me
        a|the _ on a|the? bike|scooter|bicycle|skateboard ran|went|rode|crashed into|over me|my
        got|was|been whacked|hit|clipped|struck|clouted|smacked|thumped|kicked|knocked on|in|by
        stood|stepped|trod on a|the|something _? and|, down|over|i
        down i|we went
        ankle|knee|leg|foot gave|went|turned|rolled ,|and ~ over|down
        grazed|skinned|scraped|barked|bruised my|both|a? hands|knee|knees|elbow|elbows|palms|shin|shins|face|chin|hip
        hit the floor|ground|deck|pavement|tarmac|concrete|sidewalk|road !running
        tumbled|tumble|fell|slid|slipped|bumped down ~ step|steps|stairs|escalator
    """,
    "danger.possible_fracture": """
        gave|gives|giving way|out in|inside my|the? hip|pelvis|rib|ribs|BACKBONE
        almighty|mighty|terrific|huge|hell|great|horrid crack|pop|snap|crunch|bang
        BACKBONE ~ folded|crumpled|buckled|crushed|caved|crumbled
        BACKBONE has|just|is|completely? gone|went ,|and? cant|couldnt|so|really|very ~ sharp|move|up|straighten|stand|agony
        poker|skewer|needle|dagger|spike in|through|into|up|down my|the? BACKBONE
        went bang|crack|snap|crunch|pop when|as|and|,|.|$
        cracked|broke|broken|bust|busted|fractured|fracture a|my|some|two|another|the? couple? of? rib|ribs|vertebra|vertebrae|bone|bones
        CANT|cant|couldnt|cannot|unable ~ put|bear|take any|my|much|full|the|no? weight on|through|thru my|the left|right|bad|good? LEG|leg|foot|hip|ankle|knee
        bent|bend|bending|lifted|reached|twisted|sneezed|coughed|stooped ~~ AND|then|, crack|snap|pop|bang|ping|twang .|,|$
        bone|bones|hip|wrist|ankle|rib|ribs|back|spine went|gone|goes pop|crack|snap|twang|ping|bang|crunch|clunk|bang
        clicked|click|clunk|clunked|twanged|twang|pinged|ping|clonk|thunk ~ in|inside ~ BACKBONE|hip|rib|ribs ~ BADLY
        snap|crack|crunch|twang ,|and|then ~ agony|sharp|terrible|awful|hurts
        snap|crack|pop|crunch , agony
        sound|noise|gunshot in|from my|the? BACKBONE|hip|ribs|rib ~ PAIN|hurts|pain
        felt|feel|feels ~ bone|bones|vertebra|vertebrae|disc|disk ~ move|moved|moving|shift|shifted|slip|slipped|crumble|collapse|grate|crack|go|went
        JOINT|LIMB|hip|wrist|ankle|arm|foot cracked|snapped|crunched ~ BADLY
        JOINT|LIMB|hip|wrist|ankle|arm|foot cracked|snapped|crunched ~~ swollen|swelled|agony|sharp|cant|throbbing
        bone ~ broke|broken|cracked|snapped
        sickening|horrible|nasty|awful crunch|snap|crack|pop
        BACKBONE|back just? exploded|snapped|shattered|crumbled|collapsed
        something|summat|sth|sumat broke|snapped|cracked|popped|went|tore in my? BACKBONE|ribs|hip
        BACKBONE|hip|rib|neck|pelvis is|was|may|might|be be|well? be? broke|broken|fractured|cracked
        hip|pelvis went|gave|gone|popped ~~ cant|couldnt put|stand|walk|bear
        jolt|bolt|shock|spasm|stab|stabbing ~ through|in|up|down my|the? BACKBONE|spine
        out of the|nowhere blue? ~ stabbing|sharp|pain|stab ~ BACKBONE
        new|fresh|another fracture|fractures !clinic !risk !class !nurse
        doctor|doc|hospital|er|scan|xray|mri|consultant says|said|shows|showed|found ~ fracture|fractured|broken|crack|break
        lifted|lifting|caught|picked ~~ felt|heard|hear ~ crack|pop|snap|crunch|go
    """,
    "danger.faint_or_dizzy": """
        head goes|went when|if|whenever|as
        feel|feels|felt|feeling drunk|tipsy
        heads|head in a spin|whirl|swirl !with
        heads|head swimming|spinning|swirling|whirling
        it|sounds|everything|all went|going|goes|sounded|seemed far away|distant|off
        slid|slumped|sank|crumpled|slithered down|to|onto the|a wall|floor|ground|door
        getting|having|get|keep|had|more blackouts|faints|dizzies|spells !of
        funny|queer|nasty|dizzy|peculiar|giddy|weird|fainting|strange|faint|dizzying turn|turns|spell|spells|do|dos|moment|episode|episodes !of !in !out !taken
        had|having|took|take|get|getting|got ~ bad turn|spell|turns|spells !of !in
        #|another of my|the turns|spells|dos|do|dizzy|funny !left !on !of
        dizziness|dizzyness|lightheadedness|lightheadness|swoony|swimmy|syncope|giddyness
        light|lite headedness|heady
        conked|zonked|flaked|sparked|spark|passed out ~ floor|landing|bathroom|shower|bath|stairs|hall|kitchen|tiles
        conked|zonked|flaked|sparked out ~~ woke|came ~ up|to|round ~ floor|tiles|dog|ground
        had|having|getting|get|suffered|another|two|several a|another|bad|little|short|quick|my|few? blackout|blackouts !here !no !all !across
        spinning|swimming|woozy|fuzzy|swimmy|whirling head
        head|heads keeps|kept|is|was|been? going|goes|went|gone round|around|everywhere
        sit|sat|lie|lay|laid down? before|or i dropped|drop|fainted|faint|collapsed|collapse|passed|pass|keeled|fell|fall
        felt|feel|feeling|feels|came|coming|come|went|going|gone over? all|quite|a|very|so|really|right? bit? queer|giddy|woozy|swimmy|swoony|faint|peculiar|lightheaded
        <pressure dropped|fell|low|crashed|plunged ~ nearly|almost|went|passed ~ out|over|down|faint
        went|go|gone white|pale|grey|gray as
        eyes|vision|everything|sight went|gone|goes|going dark|black|dim|blurry|grey|gray
        was|went|me|i out cold|cold? for a|some|several|# few|couple? of? seconds|second|minute|minutes|moments|secs|mins|bit
        legs turned|went|gone to water|jelly ~~ passed|faint|fainted|nearly|over
        walls|room|floor|ceiling|world|house|bed are|is|was|were|keeps|kept moving|going|spinning|swaying|tilting
    """,
    "danger.severe_pain": """
        PAIN|it|hurts is|was? ~ too much|bad|great to bear|take|stand|handle|endure
        PAIN beyond|above|past|exceeds TEN !minutes !mins !reps
        PAIN|hurts|hurting ~ , CANT hardly|barely|even? move|walk|stand|sleep
        pain woke|wakes|waking|has|had me ~ screaming|crying|tears
        in tears with|from|over|because|at|of my|the|this? PAIN|BACKBONE|BODY
        pain is|was|been|just|absolutely absolutely|just|really? shocking|brutal|diabolical|vicious|ferocious|hideous|ghastly|atrocious|wicked|savage
        PAIN|hurts ~~ never known|felt|experienced anything|pain|owt|such like|pain
        dying with|from|in the|this? pain|agony
        BODY|BACKBONE ~ screaming ~~ CANT sleep|move|walk|stand
        im|i|am|was|me|hes|shes|back|hip in absolute|total|complete|utter? bits|pieces|shreds with|from|by|over|.|,|$|today|tonight
        in absolute|total|complete|utter bits
        BODY|BACKBONE|pain|pains is|was|been|are|just absolute|sheer|pure|bloody|plain|like? murder|hell|torture|agony !of
        absolute|sheer|pure|bloody murder|hell|torture|agony ,? in|on|with? my|the BODY|BACKBONE
        its|is murder|hell|torture|agony ,? in|on|with? my BODY|BACKBONE
        terrible|awful|horrible|dreadful|horrendous|unbelievable|incredible|extreme|severe|excruciating|intense|hellish amount|amounts|lot|deal|level|levels of PAINWORD
        severe|excruciating|intolerable|horrific|horrendous|crippling|unbearable my|low|lower|upper|left|right? BODY|BACKBONE PAINWORD
        pain|pains|ache is|was|are|were|been|got|gets|getting|became|more|went|turned|now|today very|really|quite|so|too|pretty|extremely|more|just? severe|horrific|horrendous|intolerable|excruciating|unbearable|crippling|insufferable
        pain|pains|it brought|drove|reduced|put|dropped me to|on|in my? knees|tears|floor|crying
        pain|pains|back|hip|knee|it made|makes|had|got|has me cry|crying|weep|weeping|scream|screaming|howl|vomit|sick|faint|tears|sob|sobbing !laughing !with
        writhing
        howling|screaming|whimpering|sobbing|wailing|crawling|rolling|weeping with|from|in|because it|the|pain|agony|this
        crippled|crippling|floored|felled|paralysed|paralyzed|poleaxed with|by|from pain|it|agony
        crippling PAINWORD|BODY|BACKBONE
        pain ~ like|than ~ never|ever ~ had|felt|known
        pain so|too|that bad|strong|severe|much i|im|that ~ vomited|threw|sick|cried|screamed|fainted
    """,
    "danger.crisis": """
        nobody|noone ~ notice|miss|care|cry|mind ~ if|when i|im|id|me ~ gone|died|dead|disappeared|die|vanished
        nobody|noone would|will|d? ~ miss me
        dont|cant|not|no|cannot see the|any|a|no? point of|in me|life|living|existing
        cant|cannot|couldnt live like this
        if i had|got a gun|pistol|rifle|rope|noose
        night|day|time i end|ended|finish|top it|everything|myself|things|all
        i end it|everything|all .|,|$|tonight|all|now
        god|lord|jesus to|would|should|could|please? take|takes|call me|us !to !for !out !through
        hate|loathe|despise my|this life
        been|keep|started|am|im cutting|burning again|myself|.|$
        ive been|started cutting !the !my !out !back !down !it !grass !wood !up !short !some !a !corners !off !through !hay !hedges !sugar !carbs
        dont|not be? surprised|shocked if im|i|am not|gone|dead around|here|alive
        surprised|shocked if im|i not|gone around|here|alive
        dont|not be? surprised|shocked if im|i gone|dead
        why bother|am|do|should i? living|alive|here|existing
        MEDS saved|stashed|hoarded|stored|lined|counted|hidden|stocked up|by|away|out|together|ready
        saved|saving|stashed|hoarded|hoarding|stockpiled|stockpiling ~ MEDS
        might|will|could|want|gonna|going|ill|may|thinking|thought|tempted|feel|id ~ take|swallow|neck|taking|swallowing|down|swallo the|whole|all|my? lot|them|bottle|MEDS .|,|$|all|tonight|now|together|at|and
        MEDS ~~ take|swallow|neck|taking|down|necking the|whole|all lot|packet|bottle|box|of
        tonight ~ take|swallow|neck|taking|down|necking the|whole|all lot|packet|bottle|of .|,|$|MEDS|them
        take|swallow|neck|taking|swallowing the|whole|them|all whole|lot|of|the|all lot? of? MEDS|them? at|in|together one|once
        thinking|thought|think|thoughts|want|going|might|could ~ taking|take|swallowing|swallow ~ MEDS ~ at once|together|all
        topping|top|offing|unalive|unaliving|necking|finish|finishing|ending|end myself !up !off
        finish|finishing myself off .|,|$|for
        do|doing|done myself in
        do|doing|make|making away with myself
        unalive|unaliving|kms
        written|wrote|writing my|the|suicide|goodbye note|letter|letters .|,|$|for|to|and|already|so|what|sorry
        written|wrote|writing a|my|the? suicide|goodbye|farewell note|notes|letter|letters
        done|through|finished|fed|had up|enough? of|with living|life|existing|existence|breathing !insurance !jacket !skills
        fed up with|of life|living|being|existing
        tired of being|staying alive|here
        god|lord|jesus|he|him takes|take|took me|us !to !for !out !through
        thought|thoughts|thinking|think|might|could|want|going|gonna|feel|tempted|considering|considered|just ~ driving|drive|steer|walk|walking|step|stepping|jump|jumping|run|throw|throwing|lie|lay|lying|swerve|swerving|leap myself|it|the|my? car? in? front|into|under|off|onto of? a|the|some|an|oncoming|moving? DEADLY !to !and !at
        thought|thoughts|thinking|think|might|could|want|going|gonna|feel|tempted ~ driving|drive|steer|walk|walking|run|swerve|swerving myself|it|the|my? car? into|off a|the FEW !sets !set !reps !exercises !rounds !of !x !more !good !minutes !houses
        check|checking|checked out of|from|on this|the|my|life life|world|it|.|,|$
        not|isnt|aint|hardly worth being|living|staying|it alive|here|anymore
        feel|want|like|thinking|thought|wanna|going|about to|of|like|on|about ending|end everything|things|myself !here !there !on !by !with !at !for !early
        do|doing something|summat|anything silly|stupid|daft|drastic|terrible|foolish to|with myself
        might|could|will|going|gonna|afraid|scared|worried ~ do something|summat|anything silly|stupid|daft|drastic|foolish|desperate !in !with !at
        think|thinking|thought|thoughts|wish|like|want|prefer about|of|i|to not|never being|be|was|were|wasnt here|around|alive|born !on !for !next !this !tomorrow !until !till !friday !monday !when
        think|thought|wish|wished|wishing i hadnt|didnt|never woken|wake|woke
        mind|care|matter|fine|ok if|whether i didnt|dont|never|not wake|woke|woken|woken
        sleep|asleep|bed and|to|, not|never|dont|just wake|waking|never|not up|wake
        sleep forever
        bridge|cliff|platform|tracks|roof|balcony and|or|of jumping|jump
        cant|cannot|couldnt live|carry|keep|go on? like|living|going? like? this|living|it .|,|$|anymore|any|no|pain|life|longer|much
        hanging|hang|drowning|drown|shooting|shoot|gassing|stabbing|poisoning|killing|starving|starve myself
        see|have|no|any|a reason|point|sense to|in|for|of carry|go|keep|carrying|keeping|going on .|,|$|living|anymore|any
        rather|sooner|better be dead
        im|am|feel|feeling dying|dead inside
        MEDS ,? the|whole whole? lot .|,|$
        MEDS ~~ all at once
        going|gonna|want|wanna|ready|plan|planning to end it .|,|$|all|tonight|with
    """,
}
