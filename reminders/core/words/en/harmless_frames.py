"""English turns that share the words of a danger sign and mean none, a kind of sign a block; each asks for its words
right beside one another, so that it hides no true sign.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "idiom.chest_or_breathing": """
        CHEST cold is|was|s? about|almost|nearly|all? gone|better|clearing|cleared
        everybody|everyone|everyones wheezing|coughing|sneezing|breathless but me
        N0|no|without any? trouble|problem|problems|difficulty|issues|issue with|in? my? breathing|breath|chest
        breathing|breath|chest|heart|lungs is|feels|felt|was|all? fine|ok|okay|good|clear|normal|perfect|grand|great ,|.|$|and|so|thanks|thank|chest|breathing|heart|fine
        breathing|breath|chest|heart|lungs is|feels|felt|was|all? fine|ok|okay|good|clear|normal|perfect|grand|great today ,|.|$|and
        price|prices|cost|bill|bills|taxes|news|rent of? _? gave|gives|giving|give me|us|her chest|heart pain|pains|attack|palpitations ,? ha|haha|lol|hee
        heart just? about|nearly|almost|practically|near stopped when|at i? saw|opened|read|heard|seeing|reading|opening|the bill|price|news|letter|the|that|it|my
        arms|hands crossed|folded? across|over|on|against my|the CHEST
        pulled|pull|pulling the|my band across|to|over my|the CHEST
        good|nice stretch across|in|through my|the CHEST
        out of puff for? a? moment|bit|minute|while|second|little* as|like|same|just* usual|always|normal
        cold|cough|phlegm|congestion|mucus|frog|bug on|in|over my|the CHEST ,|.|$|and|but|so|no|going|again|did|all|since|still|from
        hole|room|gap|toys|blankets|jumpers|sheets in|inside the CHEST
        winded the|my|some wool|yarn|hose|clock|string
        ^ my? husband|wife|hubby having|has|had chest|heart pain|pains|attack ~~ with|for him|her .? ,? so|and? not|no|skip|cant|wont|didnt
    """,
    "idiom.nerve_or_bladder": """
        weak in|at the knees when he|she|they|i saw|proposed|asked|heard
        brain|brains|mind is|are|was|feels|went|goes|gone* numb
        nothing|nowhere numb|numbness|tingling|tingly ,|.|$|and|nothing|no|today
        lost|losing|lose control of|over my|the|this|our whole? day|week|morning|time|temper|schedule|evening|house|kitchen|remote|diary
        arent|isnt|wasnt|werent|not|aint numb|numbness|tingling|tingly ,|.|$|just|but|only|anymore|now|any|today|at
        weak at|in the|my knees|knee over|about|seeing|watching
        a|the|newborn|baby|new|bambi|little* newborn|baby|new calf|deer|foal|fawn|lamb|giraffe|colt
        ANIMAL is|was|has|been|got* limping|lame|limp ,? ANIMAL|her|his|its|the|and? leg|legs|paw|hip|foot|back is|are|was|were weak|numb|limp|bad|dead
        giving|gives|gave|give me|us what for|gyp|grief|jip|hell|hassle|bother|stick|jazz|gip|gyppo|problems|trouble|troubles|fits|difficulty|pain
        giving|gives|gave|give me|us some|a|bit|lot|of|little|hard|such|so|much|real* grief|gyp|trouble|time|problems|stick|hell|bother
        dead leg|legs raise|raises|lift|lifts|one|ones|exercise
        NUMBONLY and? needles? has|have|is|are|all? gone|went|cleared|stopped|disappeared|eased since|now|completely|away|altogether|years|last|weeks|months|,|.|$ !but !then !and !until !came !or !now !up !its
        lost|losing|lose control of the|my|our|a ANIMAL|sheepdog|car|ball|band|weight|trolley|steering|remote|kids|grandkids|hose|kite
        weak coffee|tea|signal|excuse|joke|wifi
    """,
    "idiom.fall_or_injury": """
        fell|fall|falling into a|the|my good|great|new? book|novel|movie|show|film|series|story
        fell|fall|falling right|straight? into bed|bath|routine
        jaw hit|hits|dropped|fell to|on? the floor|ground when i|we saw|heard|read|got|opened
        tripped|trip|trips|stumbled|tripping over my|her|his words|tongue|lines
        kicked|kick|butted|bucked the|a|my|his|her gate|door|bucket|pail|fence|wall ,? missed me
        fell|fall|falling|went down a? rabbit hole of|on|online|with|about|watching|reading|looking|googling|again
        barometer|temperature|temperatures|temps|temp|leaves|prices|stocks falling|fell|dropping|fallen
        bowled over by how
        bowled over by your|their|the kindness|love|cards|news|flowers
        slipped|slip|slipping into my|the|some|a|good|old|new|favorite* sneakers|shoes|boots|pajamas|jeans|coat|trousers|sandals|dress|something
        apples|leaves|pecans|acorns|nuts|oranges|petals|pears|snowflakes|branches are|is|were|keep|started|kept falling|fall|fell
        leaves|petals|snowflakes|acorns falling|fell ,|.|$|all|everywhere|from|today|so
        a|another|one patient|resident|customer|pupil fall|fell|fallen
        fell great|wonderful|awesome ,|.|$|today|after|all|about|and|now|should
        crash|crashed|crashing landed? on the|my? sofa|couch|bed|recliner|settee ,|.|$|after|and? early|at|for|till|until|watching
        slipped|snuck out|away early|quietly|late
        shares|share|stocks|stock|market|markets|pound|dollar|sales|prices|price|rates took|take|taking|had a|an|another tumble|fall|dive|spill|knock|hit|hammering|nosedive
        almost|nearly|just about|about dropped the|my|a|that|it _? on|onto my|me|the foot|toe|toes|feet
        pain hit|hits #
        went|go|going|drove over a|the|some|that bump|bumps|pothole|potholes|hump|humps in|on|at|with
        fell|fall|fallen|falling head over heels for|in|with
        plans|plan|appointment|trip|visit|dinner|date|sale|ride ~ fell|fallen|falling through !the !a !my !ice !some !an
        ,|.|and|but|so|luckily nothing|nobody|none fell|falls|fallen|falling off|over|apart|out|down|through
        ^ nothing|nobody|none fell|falls|fallen|falling off|over|apart|out|down|through
        gone|goes|going|went|go down|up my|me|the left|right? LIMB|neck|jaw|side|spine|shin|calf
        went|go|going|gone over it|them|everything #|again|with
        went|go|going|gone over to _ for tea|lunch|dinner|coffee|supper
        fallen on my|our feet with|here|there
        knocked|knock|knocking|knocks it on the head .|,|$|today|for|tonight|after|now
        hit the floor|ground running
        fell|fallen|falling out with my|the|a|our? PERSON|CLIENTLIKE
        slipped on my|the? trainers|shoes|coat|jacket|cardigan|sneakers and did|do|done
        slid the|a|my chair|stool|table|mat|box|bag|sofa|settee against|to|over|back|under|out|up|aside|across !from
        tripped|trip|trips down memory
        down the|to the
        going down to|the
        went down to|the|my|our* store|shore|street|road|basement|hall|stairs|list|beach|river|cellar|block !and
        went down to|the|my|our* store|shore|street|road|basement|hall|list|beach|river|cellar|block
        went down a|the|that|my? rabbit|memory|list|drain
        pain|swelling|number|numbers|it|price|fever has|have|really|just|slowly|then|finally|always|level|levels? went|goes|going|gone|came down !on !onto !hard
        internet|power|tv|phone|website|wifi|line|sun|lights|elevator|system|server|network has|have|had|all|just|then|is|was|still* went|goes|down
        slipped|squeezed|snuck the|my|your|some|a|both|these exercises|exercise|sets|set|reps|rows|raises|carries|session|workout|hinges in
        slipped|squeezed|snuck them|it|one|both|these|those in between|before|after|during|while|when|at
        fell about|around laughing|laughin|giggling
        bank|account balance fell
        my|the bank balance
        went|go|going|gone down a treat|storm
        went|going|came|go down ~ stairs|steps and did|do|made|finished them|it|all|both|these|exercises
        went|go|going|gone over to my|our|his|her PERSON|CLIENTLIKE|daughters|sons|sisters|mums|moms|house|place|friends
        went|go|going|gone over to see|visit|help|church|get
        went|go|going|gone over the|my|your|our list|program|programme|sheet|exercises|instructions|handout|pictures|video|page|paper|leaflet|notes
        went|go|going|gone over well ,|.|$
        landed on # sets|reps|rounds|set
        going|go|lowering|sitting|sit|lowered down on|onto to? the|a|my? chair|seat|sofa|couch|toilet
        me|my|a mate|mates fell|tripped|slipped|broke|has|had|is
    """,
    "idiom.possible_fracture": """
        crack on ,|.|$|with|then|as|so
        lets|just|will|ill|can|to|gonna|now crack on
        didnt|hasnt|havent|doesnt|dont|wasnt|isnt|not|never|without pop|crack|click|creak|popping|cracking|clicking|popped|cracked|clicked or|nor|and? pop|crack|click|creak|popping|cracking|clicking|popped|cracked|clicked?
        popping|cracking|clicking|creaking|cracks|pops|clicks like|as usual|always|normal|ever ,|but|and? doesnt|no|without|didnt|never|not
    """,
    "idiom.faint_or_dizzy": """
        knocked|knocking|knock myself out doing|lol
        dizzy gillespie|dean|heights|rascal
        blacked|blacking out the|my|all? windows|window|bedroom|room|lines|names|text|answers|curtains
        afraid|scared|worried|frightened|nervous|fear that? i|id|ill would|might|could|will|may* get|be|feel|pass|go|faint DIZZY|dizzy|faint|out|woozy
        collapsed the|that|a|your ironing|tent|pram|stroller|umbrella|deckchair|pushchair|cot|playpen
        passed|passing|pass out menus|leaflets|hymnals|sandwiches|presents|samples|tickets|pamphlets|cookies|prizes|bibles|ballots|ribbons|medals|invitations
        fainting goat|goats|couch
        spinning with|from all? these|the|those|my|that? appointments|numbers|paperwork|forms|news|questions|visits|dates|info|information|choices|instructions|bills|work|emails
        faint|feint heart never
        me|my|a mate|mates passed|fainted|collapsed
    """,
    "idiom.severe_pain": """
        nothing i|we cant|couldnt|cannot live|handle|manage|cope|bear|stand with? ,|.|$
        thought|expected|figured|assumed|sure ~ id|i would|d? be|have in? agony|excruciating|unbearable|terrible !and !now
        nothing|not|never|isnt|wasnt|hardly|no unbearable|severe|terrible|awful|excruciating|agonising|agonizing|intolerable ,|.|$|just|but|only|today|at|#|about
        agony aunt|aunts|column|uncle
        unbearable|intolerable heat|weather|traffic|noise|cold|humidity|smell|wait|suspense|neighbours|neighbors|music
        torture these|those|the|your? exercises|raises|ones|lol|haha
        torture these|those|the|your heel|wall
    """,
    "idiom.crisis": """
        thought i was dying|gonna|going die? on|during|doing those|these|the|that @
        thought i was dying|gonna|going die? on|during|doing those|these|the|that _ ones
        see|seeing|sees the|a|any point of|in|to it|this|that|them|these|those ,? can|could|should|may|shall i|we just? skip|stop|drop|leave|quit|swap EXERNOUN|@|the|heel|wall|this|that|them
        laughed|laughing|laugh|giggled|funny ~~ id|i|would|nearly|almost die|died|pop|burst
        TEXTVERB|texting ,|.|? i|we want|need|would|like it|this|them to? stop
        heroine|hero|character|actor|actress|detective|villain ~~ kill|killed|killing|hurt|shoot|shot|hang herself|himself|themselves
        for the umpteenth|hundredth|millionth|thousandth time
        for the last time ,? please? STOPIT|quit|unsubscribe
        saved|saving my|the MEDS for|till|until after|food|dinner|bed|bedtime|later|lunch|breakfast|night
        ready to go home from|after|on|tomorrow hospital|rehab|the|work|monday|tuesday|wednesday|thursday|friday|hip|knee|surgery|op
        cant|cannot go on WEEKDAY|holiday|vacation|weekends|walks ,|.|$|because|as|so|to|for|but|with|this|next
    """,
    "told_of": """
        as a girl|boy|kid|child|youngster|teenager|teen|lad|lass ,|in|on|i|we
        in|since|from high|grade|junior|elementary|grammar school basketball|football|,|.|$|and|track|cheer|wrestling|days|gymnastics|volleyball|soccer
        reading|watching|watched|read|rereading a|my|this|the|some|an|old* mystery|book|novel|story|film|movie|thriller where|about
        when i|we was|were a|an|just|only|still* girl|boy|kid|child|youngster|teenager|teen|lad|lass|lassie|toddler|schoolgirl|schoolboy
        when i was in the? vietnam|korea|nam|service|army|navy|college|school|war|iraq
        when i was # ,|i|we|my
        about the time i|we
    """,
    "denied_all": """
        hasnt|havent happened yet|,|.|$|but
    """,
}
