"""English danger signs told behind another statement without a pause ("not working right, struggling to breathe"), and
turns of phrase that the frames by kind do not reach.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.chest_or_breathing": """
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* short|breathless|wheezing|wheezy|winded|struggling|gasping|palpitations|chest !cold !better
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* CANT breathe|breath|get|catch
        lungs|lung ~ working|work|playing|packing|packed ~ right|properly|up|well|good
        CANT|cant|couldnt|cannot fill my|the? lungs
        short of wind|puff|oxygen
    """,
    "danger.nerve_or_bladder": """
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* numb|numbness|tingling|tingly|weak|incontinent
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* LIMB ~ numb|tingling|weak|dead
        weeing|wees|weed|pooing|pooed|widdling|widdled|tinkling|tinkled|wetting|pissing|pissed|peeing|pees|peed|soiling myself|himself|herself !laughing !lol !haha
        wee|piss|tinkle|widdle myself|himself|herself !laughing !lol !haha
    """,
    "danger.fall_or_injury": """
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|i|had|took* fell|fall|tripped|tumble|slipped !asleep !behind !ill !short !apart
    """,
    "danger.possible_fracture": """
        clicked|click|clunk|clunked|twanged|twang|pinged|ping|clonk|thunk ~ in|inside my|the? left|right? groin|pelvis|BACKBONE|hip|ribs ~~ CANT|cant|couldnt|hardly walk|stand|put|move|bear|lift
    """,
    "danger.faint_or_dizzy": """
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|im|my|is|are|still|just|very|really* DIZZY|fainted|fainting|spinning|swimming
        not|isnt|arent|wasnt doing|feeling|feel|working|been|so|too|very|all? good|well|great|right|myself|best today|now|tonight|again|this|morning|,|and|i|nearly|almost|just* passed|blacked|collapsed !by !away !the !through
    """,
    "danger.crisis": """
        cut|cutting|slashed|slashing|slit|slitting|scratched|burned|burnt|carved my left|right|own|both? arms|wrists|wrist|thighs|forearm|forearms !short
        cut|cutting|slashed|slashing|slit|slitting|scratched|burned|burnt|carved my left|right|own|both? arms|arm|legs|leg|thigh|stomach ~ on purpose
        cut|cutting|slashed|slashing|slit|scratched|burned|burnt my left|right|own|both? arm|arms|leg|legs|thigh again .|,|$|last|tonight|today|to
    """,
    "idiom.chest_or_breathing": """
        not short of breath|wind|puff|air ,|.|$|or|nor|and|just|but|at|either
    """,
    "idiom.nerve_or_bladder": """
        breath|breathless|winded|wind|puff|puffed|air|wheezing all? day|today|night|morning|after? ,|and|so? i|im? CANT|cant|couldnt|could hardly|barely|even? talk|speak !right !properly !clearly !words
        CANT|cant|couldnt|cannot hardly|barely|even? talk|speak|finish in? a|one? full|whole sentence|sentences
        legs are|were|feel|felt|like like? jelly|jello|noodles|spaghetti ,|but|and? happy|worth|proud|chuffed|delighted|pleased
        laughed|laughing so hard|much? that? i nearly|almost? weed|wet|peed|pissed
    """,
    "idiom.fall_or_injury": """
        pride took|had|got|suffered|taken a|quite|bit|of* tumble|knock|bruise|bruising|hit|fall|bump|dent|beating
        only thing|part hurt|bruised was|is my pride
        slipped|squeezed|snuck|fit|fitted # set|sets|round|rounds|go|goes in
        shower head|rail|curtain|door|rod|screen|hose fell|came down|off|apart|loose >,|.|$|so|and
        cupboard|drawer|door|saucepan|tap|oven|toilet|fridge handle|knob|lid|door|seat fell|came down|off|apart|loose >,|.|$|so
        tripped|trip|trips|tripping the|a|my|our? breaker|breakers|fuse|fuses|switch|circuit|electrics|sensor|fusebox
        when|after|until|till|once|before the heat|sun|rain|wind|temperature|fever|swelling|traffic|tide|noise has|have? gone|went|goes|comes|came|come|dies|died down
        knocked|knocks|knocking|knock the|my|your|those|these|all? EXWORD|it|them|that EXWORD? out of the|our? park|ballpark
        PERSON|CLIENTLIKE|he|she the one who|that fell|tripped|slipped|collapsed|fainted ,? not
    """,
    "idiom.possible_fracture": """
        crack|pop|snap|bang|noise|creak|crunch ,|but|and|.? it|that was|is|came from? only|just? from? the|my|our|a? chair|floor|floorboard|floorboards|door|bed|table|box|band|window|stick|twig|sofa|fridge|house|heating|pipes|pipe|firework|fireworks|neighbours|neighbors|dog|cat ,|.|$|not|lol|haha|all
        BACKBONE|hip|hips|knees|joints but a sharp|stabbing|sudden
    """,
    "idiom.faint_or_dizzy": """
        knocked|knocks|knocking|knock the|my|your|those|these|all? EXWORD|it|them|that EXWORD? out of the|our? park|ballpark
    """,
    "idiom.crisis": """
        are|is|will|gonna|going|would to? be? the death of me lol|haha|ha|hehe|,|.|$
    """,
}
