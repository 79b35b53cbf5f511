"""English danger signs as they are misspelled or heard wrong, and plain ones of which the other tables have no frame.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.chest_or_breathing": """
        short|shortness of breadth|bread|breathe
        chess is|was|feels* hurts|hurting|hurt|pain|pains|tight|tightness|heavy
        chests is|are|feels* pain|pains|hurt|hurts|hurting|tight|heavy
        heart isnt|wasnt|not ~ rhythm|right|regular|regularly|properly
        heart ~ out of rhythm
        pain|pains|ache|hurting by|near|close|around to? my|the heart
        heart skipped|skipping|skips|skip ~ beats|several|times|again
        heart skipped a beat several|twice|again|often|on|all
        sit|stop|rest|lean|stopping|sitting ~ catch my breath ~ every|few|often|constantly|times
        rest|stop|stopped|stopping|pause|sit down? to? get|find my breath ~ every|twice|times
        without|had|have|keep|kept ~ stop|stopping|rest|resting ~ for air|breath
    """,
    "danger.nerve_or_bladder": """
        calf|foot|leg|ankle|LIMB has|got|with|is no push|spring|strength|power|lift in|left|,|.|$
        LIMB|side|face|arm|leg|hand ~ paralysed|paralyzed|paralised
        paralysed|paralyzed|paralised ~ LIMB|side|face|down
        CANT|cant|couldnt|no|lost ~ control|hold ~ bowls
        my bowls let|gave|went|moved|opened
        leg|legs|arm|hand|knee is|are|so|very|really|too+ week now|today|cant|wont|,|.|$|and
        LIMB ~ number than
    """,
    "danger.fall_or_injury": """
        havent|hadnt|never ~ fallen|fell|tripped ~~ until|till|til today|yesterday|now|then|tonight|this|last
        havent|hadnt|not|never ~ fallen|fell|tripped ~~ but ~ i did
        ankle|knee|foot|wrist gave|had|did a little|bad|nasty? twist|turn|wrench|roll
        went down the|a|my whole|entire|full? flight
        feel off|down|over|from my|the|a ladder|stairs|steps|chair|bed|curb|porch|stool|toilet|bike|horse
        twisted|sprained|rolled|turned my left|right? angle|ankel|ankl|anckle
        bumped|hit|banged|cracked|knocked my hed
        first|second|third|another|bad|nasty fall in|for years|ages|months|today
        head over heels on|down|off the|my|some ice|stairs|steps|porch|curb|snow|path|drive
        had|took a nasty|bad|silly|little trip at|over|on|in|off the|a|my
        took a trip over|off the|a|my !the
        tore|torn my|a|the* left|right? muscle|calf|hamstring|tendon|ligament|meniscus|cuff|achilles
        did break|broke a|my leg|arm|hip|wrist|ankle|foot|toe|rib|hand|finger
        my car|van|truck hit|crashed|rolled
        lost control of the|my car|van|truck|scooter|bike ,|.|and|$ crashed|hit|went|rolled
        crashed|crash into|in a|the tree|wall|pole|ditch|car|truck
        truck|car|van|bike|cyclist|bus|scooter hit|clipped me !up
    """,
    "danger.possible_fracture": """
        LIMB|hip|rib|ribs|knee|shoulder cracked|snapped ~~ loud|swollen|swelling|painful|cant|agony
        pop|crack|snap|crunch . in|from|at my|the BACKBONE|spine|back|neck
        ray|xray|scan|mri|ct ~ shows|showed|found|says ~ fracture|fractures|break|crack|broken
    """,
    "danger.faint_or_dizzy": """
        blackout|blackouts came|come|comes|coming|while|when|on|after|upon|getting ~ rising|rise|getting|stand|standing|stood|bed|up|bending
        i|and|then|just|nearly|almost|have past out ,|.|$|in|on|at|from|this|cold|again|for|while|when|last|yesterday
        feel|feeling|felt|so|a|bit faintly ,|.|$|all|today|this|when|after|and|again
    """,
    "danger.severe_pain": """
        cannae|canny|couldnae|cant|couldnt thole|bide|stick|thole this|the|it|that
        cannae|canny|couldnae take|bear|stand|handle it|this|the|any
        dying|die of|from|in|with the|this|my? pain|agony
        pain|its is|was|so|just* unbeatable|unbareable|unberable
    """,
    "danger.crisis": """
        look|looked|looking at|over the|that|my bridge|river|pills|knife|train|railing ~~ think|thought|why|jump|end
        took|taken|ended his|her|their own? life ~~ i|ill|me|im ~ same|too|next
        fell|feel ~ do the same|it too with|to my life|myself
        thoughts|thinking|thought of|about suicides
        feel|feeling|felt like dyeing
        cut|cutting myself some? again|tonight|last|more
    """,
}
