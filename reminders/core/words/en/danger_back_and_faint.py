"""English rules for a back or bone that gave, and for faint or dizzy spells.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.possible_fracture": """
        BACKBONE ~ gave|give|gives|giving !me !us !him !her
        gave|give|gives|giving in|inside|at|down ~ BACKBONE
        felt|feel|heard ~ give|gave|giving ~ BACKBONE
        BACKBONE ~ CRACK
        BACKBONE ~~ crack|cracked|pop|popped|snap|snapped|crunch|crunched
        CRACK ~ BACKBONE
        crack|cracked|cracking|pop|popped|popping|snap|snapped|snapping|crunch|crunched|crunching|crackle|tear|tearing ~~ BACKBONE
        a|the|loud|big|awful crack|snap|pop|crunch when i ~~ ~~ BACKBONE
        felt|heard|feel|hear|felt|made ~ crack|pop|snap|crunch|cracking|popping|snapping|give|tear|crackle ~~ PAIN|BACKBONE|hurts|hurt|bad|move|straighten|rib|ribs|stand|walk|sharp|agony|killing
        felt|heard|feel|hear ~ crack|pop|snap|crunch !no
        JOINT ~ went|go|goes|made|gave ~ pop|crack|snap|crunch
        something|sumthin|somethin|it ~ cracked|popped|snapped|crunched|crunch|pop|snap|crack
        SUDDEN ~ PAIN ~ BACKBONE
        SUDDEN ~ BACKBONE
        SUDDEN ~~ BACKBONE ~ PAIN
        SUDDEN ~~ BACKBONE
        BACKBONE ~ SUDDEN
        BACKBONE ~~ sudden|suddenly|knife|stabbing|lightning|nowhere|jolt
        BACKBONE ~ went|gave ~ out ~~ sharp|sudden|cant|stand|straighten
        BACKBONE|ribs ~ broke|broken|fracture|fractured|compression
        compression fracture
        rib|ribs cracked|popped|snapped|crunched
        broke|fractured ~ BACKBONE
        PAIN|hurt|hurts ~~ BACKBONE ~~ sneezed|coughed|sneeze|cough|coughing|sneezing|all? once
        sneezed|coughed|sneeze|coughing|sneezing ~~ BACKBONE
        BACKBONE ~~ sneezed|coughed|sneeze|coughing|sneezing|straighten
        getting|got|lost ~ shorter|height|stooped|hunched
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
        head|heads|feel|feeling|felt|am|im all|so|a? bit? floaty|swimmy
        floor|room|walls|ground|house tilts|tilting|sways|swaying !the !a !my
        DIZZY !heights
        light|lite|swimmy|swimming|foggy headed|head
        lightheaded|lite headed
        head|everything|room|world|walls|floor|things|ceiling|house ~ spinning|spun|spin|swimming|swirling|whirling|tilting|spins|swam|tilted|reeling
        head rush
        everything|all black|gray|grey|blurry|dark
        everything|it|its went|going|goes|turned black|gray|grey|blurry|dark
        room|house ~ going ~ round
        passed|passing|pass|blacked|black|blacking|knocked ~ out
        passed|blacked|passing|blacking out
        faint|fainted|fainting|fainty
        lost|losing|lose|lost ~ consciousness
        keeled|keel over
        went|go|goes|turned|going|got|seeing|saw ~ black|gray|grey|dark|white|stars|spots|dim
        saw|seeing|seen ~ stars|spots|black|double
        stars ~ eyes
        eyes|vision|sight ~ black|gray|grey|dark|dim
        unconscious|swooned|vertigo
        about|almost|nearly|near ~ pass|passed|keeled|faint|fainted|black|blacked|collapse|collapsed
        collapsed
        collapse
        woke|came to|up ~ on ~ floor
        off balance
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
        world|room|lights|house|walls|floor went
        everything|world|room|lights|house|walls|floor ~ round|far|dim|blurry|tilted|tipped|moving|moved|rocking|rocked|sideways|dark|black|fuzzy|white|gray|grey|spun|tilting|turned|faded|dimmed|wavy
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
        so as not to faint|pass|black|keel
        trying not to faint|pass|black|keel
    """,
    "idiom.faint_or_dizzy": """
        screen|phone|tablet|tv|telly|computer went|goes|gone dark|black|blank|dead
        spinning with _? plans|paperwork|numbers|names|ideas|news|choices|orders
        <my|the|took|take|taking|on|for|of|those|these|got|have|new|some dizzy meds|pills|pill|medicine|medication
        ^ dizzy meds|pills|pill|medicine|medication
        PERSON|CLIENTLIKE passed and|away|last|on|this|,|.
        dizzy with _? plans|planning|preparations|errands|company
        knocked out with|from|by jet
        knocked|knock em|them|it|these|those|all|mine|both|my ~ out
        knocked|knock out ALL|#|my|the|em|mine|both
        knocked me out of bed
        passed|pass|passing out cold? ~~ tired|nap|slept|snoring
        passed out from ~ turkey|wine
        roller coaster
        knocked|knock|knocks|took|taken the? wind out of my|our|his|her? sails
        ALMOST fainted|died|passed|swooned out? when i|we saw|heard|opened|got|read the|my|that|our ~ BILLWORD
        ALMOST fainted|died|passed|swooned out? at|over the|my|that ~ BILLWORD
        ^ !I !BODY _ had|took a|an|another dizzy|fainting|bad|funny spell|turn|attack ~ and|so i|im|we CARED ~ him|her ~~ my|me|mine
        knocked out ~ rows|carries|reps|sets|workout|exercises|session
        power|lights out
        spins|spin class|bike
    """,
    "faint_full": """
        passed|blacked|passing|blacking out
        fainted|unconscious|swooned|collapsed
        lost ~ consciousness
        keeled over
    """,
    "faint_near": """
        ALMOST|gonna|going|about|close|thought|would|feel|felt|feeling ~ faint|fainted|pass|passed|passing|black|blacked|blacking|keeled|keel|collapse|collapsed|fainting
    """,
    "dizzy_standing": """
        DIZZY ~~ stand|standing|stood|get|getting|got|up|rise|rising|sit
        stand|standing|stood|get|getting|got|rise|sat ~~ DIZZY
        when|whenever|time|if ~~ up ~~ DIZZY
        head rush
    """,
    "passed_over": """
        passed !out
        went|gone|goes away
        better|ok|okay|fine|alright now|after|again
        for|lasted ~ second|sec|minute|moment|seconds
        im ok|okay|fine|alright
        over now
        cleared up
        settled
        wore off
        its gone
        ok|okay|fine now
    """,
}
