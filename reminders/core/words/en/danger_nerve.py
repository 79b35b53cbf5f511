"""English rules for nerve, bladder and stroke signs, and what only sounds like them.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.nerve_or_bladder": """
        no pee|peeing|urine ,|.|$|since|for|yet|today|all|in
        no pee|urine|peeing ~ since|days|hours|all|yet|for
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
        CANT|cant|couldnt|havent|unable|trouble|hard ~ pee|urinate|poop|go|peed|empty !to !for !out !on !home !there !down !up !above !over !past !beyond !higher !away
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
        CANT|cant|couldnt|trouble|wont|hard ~ find|form|say|speak|talk|talking|speaking|understand|make ~ words|sentence|sentences|speak|talk|right
        CANT|cant|couldnt|trouble|wont|hard ~ get ~ words|sentence|sentences|speak|talk
        CANT|cant|couldnt|trouble|wont|hard ~ get my|the mouth|tongue|speech|talking|speaking|lips|face|hand|arm|leg|fingers|side ~ right
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
        my CLIENTLIKE had|has|took a|another stroke ~ ~ i|im|we|ive ~ ~ with her|him ~~ no|not|skip|skipping|skipped|cant|couldnt|missed|wont
        shift|shifts ,|.|and|so? my? feet|legs are dead ,|.|but|and|so|$
        long|hard|big|busy day|night ,|.|and|so? my? feet|legs are dead ,|.|but|so|$
        legs are|were|feel|felt|like like? jelly|jello|noodles|spaghetti|lead by|after the? end|it|them|that? ,|but|and ~~ did|done|got|finished
        pins and needles from|after sitting|crossing|kneeling|squatting|sleeping|lying
        feel|feeling|felt sorry
        is|are|was|were not numb|tingly|tingling !only !just
        nothing numb|tingly
        NUMBONLY for? # years|yrs from
        went|gone|goes|going|go from a? # to
        on my|his|her pins !and
        numb from the tv|television|cold
        give|gave|gives giving? me a stroke lol|haha
        price|prices|bill ~ give|gave|gives me a stroke
        pins and needles bowling|league|club
        went on vacation|strike
        dead from|tired
        wet ~ laughing
        numb with|from boredom|cold|bored|grief
        weak in the knees ~ haha|lol|altar|love
        weak in the knees at
        dead ~ tired
        leg ~ out of bed
        pulled my leg|pulling
        on pins and needles
        foot|feet|leg|legs ~ asleep ~~ sitting|sat|crossed|toilet
        arm|hand fell|went? asleep ~~ slept|lying|pillow
        legs up the wall
        cold feet
        cost ~ arm ~ leg
        hand slipped|wet|soapy|full|greasy|and|i* dropped ~ phone
    """,
}
