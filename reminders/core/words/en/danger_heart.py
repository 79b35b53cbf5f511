"""English rules for heart and breath: pain or pressure in the chest, no air, and what only sounds like it.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.chest_or_breathing": """
        jaw AND my? left? arm ~ hurt|hurts|hurting|ache|aches|aching|pain|heavy|numb
        left? arm AND my? jaw ~ hurt|hurts|hurting|ache|aches|aching|pain|heavy|numb
        PAIN|pain|ache|aching in|down my? jaw AND my? left? arm
        CHEST ~ TIGHT
        CHEST ~~ TIGHT
        TIGHT ~ CHEST
        TIGHT ~~ CHEST
        sitting|sit|settin|standing|stood|parked|stepping ~ on ~ CHEST
        something|someone|somebody|like|elephant ~ sitting|sit|settin|standing|parked ~ on it|me
        cant|couldnt|cannot|hardly|barely|unable|hard|trouble|difficulty|difficult|struggling|struggle|tough|problem|problems|fighting|gasping|gasp ~ BREATHE
        CANT ~ get|catch|draw|take ~ BREATH
        get|getting|got enough air
        not|wasnt|isnt|aint|wont|didnt ~ BREATHE|breathing ~ right|good|well|properly|easy|normal
        not get|getting ~ air
        short|shortness|shorter of? ~ breath|breathe|breaths|air|breth
        shortness
        short winded|breath
        shortwinded|sob|breathless|winded|windid|wheezing|wheezy|wheeze|hyperventilating|suffocating|smothering|asthma
        out of breath|wind|air|breth
        no air|wind|breath left
        no air
        breath ~ whistling|short|shallow
        whistling|whistles ~ breath|breathe|breathing
        lost my breath
        gasping|panting|huffing|puffing|heaving
        BREATHE|breathing ~ hard|heavy|fast|funny|difficult|shallow|labored|trouble|badly|rough|worse|bad
        cant|couldnt BREATH
        HEART ~ HEARTSIGN
        HEART ~~ HEARTSIGN
        HEART ~ out of my CHEST
        HEART ~ going|goes|went ~ mile|crazy|nuts|wild|haywire|#|dozen|hundred
        HEART ~ beat|beating|beats ~ fast|hard|funny|weird|out|like|too|irregular|skipped
        HEART !# ~ hurts|hurt|hurting|pain|fast|stopped
        HEARTSIGN HEART|heartbeat
        palpitations|palpitation|angina|arrhythmia|afib
        heart attack
        cold|clammy sweat|sweats|sweaty
        clammy
        TIGHT|PAIN|numb ~ down|into|in|up ~ left arm|jaw
        PAIN ~ arm|arms ~ jaw
        left arm|jaw ~ hurts|aches|aching|hurting|pain|throbbing ~ jaw|arm|sweat|sweaty|CHEST
        CHEST ~ like|feels|felt|bothering|bothered|bad
        CHEST ~ not right
        lips ~ blue|purple|gray
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
        heart set on
        CHEST muscle|muscles|hair|drawers|freezer
        <was|is|its|todays|did|for|arm|leg|back|shoulder CHEST day !and !after !long !all !by !two !before !#
        ^ CHEST day !and !after !long !all !by !two !before !#
        CHEST cold .|,|$|so|going|clearing|still
        CHEST ~ sore ~ push|pushups|gym|workout
        ran out of breath telling|yelling|laughing|cheering
        not like heart
        sob none|neg|negative|nil|denied
        sob no ,|.|$
        little|bit|tad winded|breathless|puffed ~~ like|any|anyone|anybody normal|usual|would|anyone|anybody|body|always !not
        little|bit|tad winded|breathless|puffed as|is|thats|like* normal|usual|always
        out of breath ~ like|any anyone|anybody ~
        put|hand ~ hand|hands on my heart and|,|.|$|for|when|to !it !racing !felt
        CHEST xray? is|was|looks|sounds|all clear|fine|good|ok|okay|normal ,? no pain|discomfort|tightness|pressure
    """,
}
