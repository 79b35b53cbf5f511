"""English rules for pain told without a number, and for none.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "num.retracted": """
        # was|is a|my|the? fat|wrong|butter|clumsy finger|fingers|thumb|thumbs|key|button
        # was|is a|my|the|just? just|a? mistake|typo|error|slip
        # is|was what|the|number? one|number? i|we SAIDWORD
        CLIENTLIKE|PERSON would say|put|call|rate ~ # ,? but? i|id|me
        CLIENTLIKE|PERSON says|said|thinks|put|wrote ~ _? # ,? but|and|.? i|im|id|me|mine
    """,
    "num.times_through": """
        everything|them|em|lot|list|program|routine|exercises|thing|shebang|sheet|workout|works|nonsense USED TIMES
        ALL of it|these USED TIMES
    """,
    "num.alone": """
        hurts|hurt|hurting|hurtin like|as ~~ # $
        ,|. ITS|it|thats is|was|now? a|at|about? # ,|.|$
    """,
    "num.rating": """
        # walking|standing|sitting|bending|moving|lying|climbing !time !times !minutes
        BODY|pain|it|she started|began|start out|off? at? a? #
        BODY|pain|it hit|hits|reached a|an? # for|today|at|when|on|while|,|.|$
        sitting|standing|walking|lying|bending|resting|lifting # ,? and|but? sitting|standing|walking|lying|bending|resting|lifting #
        im|i the? one with the|a #
        down|up to a|an? #
        started|start out|off|at|as? at? a? # ~ # by|at|near|toward the end|finish
        ^ started|start out|off|at|as? at? a? # ,? and|but|then ~ #
        then|before|until|till it hit|reached|got|went|climbed|jumped to? ARTICLE? #
        # an|one|two|couple|few|# hours|hour|hrs|minutes later|after|afterwards
        # at|by|near|toward|towards the end|finish|close
        by then|now|noon|lunch|evening|night|supper it was|is FILL* #
        scale ,? FILL* ITS|THATS|is FILL* #
        # or so
        a|an sharp|dull|honest|generous|hard|firm|strong|weak|low|high|real|bad|nasty|mild|light|slight|steady|soft|small|big #
        mistake|error|typo for #
        BODY FILL* LOUD me|to|at? me? ,? FILL* #
        was|is|were # when|once|before|until|till
        this time|session ,? FILL* #
        mine FILL* #
        ^ # since|after
        these days ,? FILL* #
        nowadays ,? FILL* #
        # and rising|climbing|counting|growing|worsening
        # at rest
        # on|up|down|climbing the? stairs|steps|hill|hills
        no|not more|higher|worse than FILL* #
    """,
    "num.now": """
        minutes|minute|mins|min|hours|hour|hrs|hr ago ,? it|pain|that was|is ARTICLE? #
        last|yesterday week|month|year|time|night? down|up? to FILL* #
        today|tonight FILL* #
        # now|nowadays|currently|lately ,|.|$
        # when|once|as i|we first? got|woke|get|wake|stood|sat|bent|moved|walked|stepped|lay|tried|twisted|lifted|reached|turned
        # when|once|as i|we first? started|began !therapy !treatment !physio !pt !rehab !coming !seeing !with !this !here
        # before|after|til|till|until ~ _? coffee|breakfast|tea|lunch|dinner|supper|pill|pills|tablet|tablets|meds|medicine|medication|tylenol|ibuprofen|paracetamol|advil|aleve|shower|bath|bed|bedtime|nap|shift
        never went|got|rose|climbed|was|been|hit over|above|past|beyond|higher #
        these days ,? FILL* #
        nowadays ,? FILL* #
        ^ this time ,? FILL* #
        ,|.|and|but|so this time ,? FILL* #
        this week|month|session|morning ,? FILL* #
    """,
    "num.never": """
        thought|figured|expected|feared it|theyd|itd|thatd|id ~ # ,? but|and|only|yet
        SAIDWORD ~ # PAINWORD? ,|and|but ~ wasnt|isnt|not true|correct|honest|accurate
        would|wouldve|id|might be|been FILL* # if|without|unless|otherwise
        if ~ gets|got|goes|went|hits|reaches|climbs|rises up|back? to|above|over|past? FILL* #
    """,
    "num.meant": """
        it|that was|is|should in|really|actually fact? FILL* #
        its actually|really|in fact? FILL* #
        mistake|error|typo for #
        MEANT to? SAIDWORD? FILL* YESKEY? #
        should|supposed have|be|to? been|say|said|read|be? FILL* YESKEY? #
    """,
    "pain_none": """
        it|that|this|them? doesnt|didnt|dont|not|aint hurt|hurting today|tonight|now ,|.|$
        nowt hurts|hurt|hurting|hurtin|aches
        PAINWORD ? nah|naw|nope|no .|$
        PAINWORD emojino ,|.|$
        never|not|didnt|havent felt|feel|had|felt ~ twinge|bit|ounce|lick of? PAINWORD
        N0 percent PAINWORD
        not hurt a|one bit|lick|jot|whit
        PAINWORD ? none|nope|N0|nil|no|nada ,|.|$
        no more pain ,|.|$|all|today|now|at|since|done|done
        not|nary|without a|an|one|the|single|slightest twinge|ache|peep|niggle|whimper|murmur|grumble|pang ,|.|$|all|today|from|out|in|anywhere
        not one|# bit|lick|twinge|speck|hint|ounce|iota|drop|peep|murmur|whimper of? PAINWORD
        what pain ,|.|$
        denies|denied ~ pain|discomfort
        didnt|doesnt|dont|didn|never hurt|ache a|one|at|none bit|lick|all|whatsoever?
        pain ~ nil|nada|zip|zilch
        PAINWORD ,? neg|negative|nought|naught
        NO pain|pains|discomfort|soreness|ache|aches|hurt|hurts|pian
        NO pain|hurt at all
        pain|discomfort|soreness ,? FILL* NO|none|nil|nada|zilch|nothing|nope|free !SET !stop !EXERNOUN !EXWORD !EXER !time !way
        pain free
        painfree|painless
        no PAINWORD|hurt
        didnt|doesnt|dont|dosent|not|never|aint hurt|hurts|hurting $
        didnt|doesnt|dont|dosent|not|never|aint hurt|hurts|hurting at|anywhere|any|none|one
        didnt|doesnt|dont|not|havent have|feel|had|got|having|feeling ~ PAINWORD
        have|had no|not PAINWORD
        have not ~ PAINWORD
        nothing|nothin|nuthin hurts|hurt|hurting|hurtin|aches|ached|sore|painful
        without any? PAINWORD
        no PAINWORD no|nothing
        not a pain|ache|twinge in|on me|us|sight
        N0 ouch|ouches|ouchies|owies|aches|pains
        not any PAINWORD
        not a bit|lick|twinge|speck|hint ~ PAINWORD|hurt
        no sort|kind of PAINWORD
        no aches ~ pains
        not in any? PAINWORD
        none PAINWORD
        no|not|aint|didnt|doesnt hurting|hurt|hurtin none|any|nothing|$
        nary a !#
    """,
    "pain_none_not": """
        not|dont|doesnt|didnt|never|havent|no have|had|got|feel|felt|having any|a|the? CHEST PAINWORD|pain|pains
        nary a thing|word|soul|one|day
        nary an|a EXERNOUN|@
        no|zero PAINWORD ? ha|hah|haha|hardly|hmph|wish|right|sure|please|lol|dont|as|you|i|im|ive|plenty|lots|since|never|not
        PAINWORD , nothing a|an|that|which|i|we|some|serious|terrible|major|bad|crazy
        no|zero|without PAINWORD in|during|all the? morning|mornings|afternoon|day ,|but|though # by|at|tonight|this|now|later|after
        pain ,? so|and|then|but? no|nothing more|further
        NO PAINWORD at|in|to the? first|start|beginning|outset|begin
        who|whoever told|said|says|thinks ~ no PAINWORD
        why|how ~ say|said|think ~ no PAINWORD
        no|zero|without PAINWORD last|yesterday|this|the|for week|night|month|,|morning ~~ but|now|today|plenty
        no|zero|without PAINWORD yesterday
        wish|wished|if ~ say|said|had|have ~ none|nothing|no|zero|zip
        PERSON|CLIENTLIKE|she|he|they has|had|have|got no|zero|not ~ PAINWORD
        want|wanted|wish|wishing|need|like|pray|praying|hope|hoping ~ no more pain
        cant|couldnt|cannot|wont say|claim|pretend|tell|swear ~ no|zero PAINWORD
        no|not|never|hardly|isnt|arent|havent|wasnt been|quite|longer|completely|totally|entirely? PAINWORD free
        lie|lying|liar|fib|fibbing ~~ say|said|tell|told|claim|claimed ~ no|zero|without PAINWORD
        cant|couldnt|cannot|wont honestly|truthfully|really say|claim|pretend|tell|swear ~ no|zero PAINWORD
        no|zero|without PAINWORD in|on|at|with the|my left|right? BODY ,|.? but|just|only|though|however|except
        NO|no PAINWORD relief|reliever|relievers|control|management|gel|specialist|clinic
        cant|cannot|couldnt|wont|not|never take|stand|bear|handle|stick|tolerate|live ~ pain any|no
        pain any|no more|longer|worse|way
        hardly|barely|almost|nearly|practically|virtually|scarcely any|no|zero|without|little? ~ PAINWORD
        hardly|barely|scarcely hurt|hurts|hurting|any
        cracking !good !session !job !day !start !workout !on ~~ doesnt|dont|didnt|no|not|aint|never ~ hurt|hurts|pain|none !though !tho !today !at !whatsoever
        crack|cracks|cracked|pop|pops|popped|popping|click|clicks|clicked|clicking|creak|creaks|creaky|snap|snaps|crunch|crunches|crunchy|grinds ~~ doesnt|dont|didnt|no|not|aint|never ~ hurt|hurts|pain|none !though !tho !today !at !whatsoever
        no pain no gain
        no|not|nor CHEST PAINWORD|pain|pains
        dont|doesnt|not have|got ~ PAINWORD number|scale|thing
        NO|not PAINWORD meds|pills|medicine|medication|killers|killer|scale|number|patch|cream
        NO ~ pain|discomfort to speak
        NO ~ pain|discomfort worth
        no pain|discomfort|soreness than
        not|never|cant|couldnt|hardly|cannot|without ~ without PAINWORD
        no CHEST
        no BODY pain but
        no pain ~ until|till
        didnt|doesnt|dont|not hurt ~ much|bad|badly|alot|terribly|until|till|more|worse|that|as
        dont hurt me
        nothing hurts like|more
        no pain like
        pain|hurt no more|longer|joke
    """,
    "pain_said": """
        giving|gives|gave me what for|gyp|grief|jip|hell|stick|gip|trouble|bother
        giving|gives|gave me some|a|bit|lot|of|hard|real* grief|gyp|trouble|time|stick|hell|bother
        ^ FILL* bad|rough|terrible|awful|worse|better today|tonight|now $
        ^ not FILL* bad|awful|terrible today|tonight|now? $
        BODY ~ singing|talking|screaming|hollering|yelling|barking|complaining
        BODY went|goes|gone|going out
        BODY ~ grouchy|cranky|grumpy|crabby|ornery|mad|angry|unhappy|complaining|griping|whining
        ^ eish|ouch|oww|ow|ooh|argh|ugh|oof|aiyo|ay|oh my|me left|right? BODY ,|.|$
        PAIN
        SORE
        HURT
        BODY ~ SORE|HURT|PAIN
        killing me
        rough|bad BODY
        hard on my BODY
        bothering|bothers|bothered me
        BODY ~ acting|barking|screaming|talking|bad|worse|better|grumbling|tight|stiff|swollen
        comes and goes
        about|bout ~ same
        less|worse|better|more than
        same as
        tolerable|bearable|manageable|mild|moderate|minor|slight|slightly|minimal
    """,
    "pain_answer_none": """
        ^ yeah|yep|yes nah|no ,? zero|none|nothing|nil|N0|nowt
        ^ CLIENTLIKE|she|he says|said|sez ,? none|nothing|zero|nil ,|.|$
        ^ not so much as a twinge|ache|peep|niggle|murmur
        i? have|had|got none ,|.|$
        nada|zip|nil ,? zilch|zip|nada|nil
        didnt|dont|havent feel|have|had|felt|notice any|anything|none|nothing ,|.|$|at
        ^ zippo|zipp|nuttin|diddly|diddlysquat|squat|zerooo|goose|bupkis|nowt|nuthing|nein|nyet
        none whatsoever|at|today|now|really
        ^ nought|naught|neg|negative
        ^ no|zero|without|nil|minus|any|neither|nor|none|NOPE|nothing|nothin|nuthin|not|zip|zilch|nada|zero|nil
        ^ not really? any|none|at|today
        nothing hurts
        not any
        none FILL* $
        no thank
        painless
        im? FILL? pain free
        feel|feeling|felt great|good|fine|wonderful $
    """,
    "pain_answer_words": """
        ^ not today|tonight|now|yet|this ,|.|$|time|week|one
        not to|too|so|that|half|all bad|good|shabby|terrible|awful|great
        wish|wished|if ~ say|said|had|have ~ none|nothing|no|zero|zip
        no|zero PAINWORD last|yesterday
        not N0|nothing|none|nil
        not even|quite a|an? #
        not|never reach|reached|hit|get|got|gotten|make|made ~ #
        minus #
        not|never|isnt|arent|aint|wasnt|hardly|havent|no FILL? quite|completely|exactly|totally|entirely|been|yet|longer? pain free
        not|never|isnt|arent|aint|wasnt|hardly|havent|no FILL? quite|completely|exactly|totally|entirely|been|yet|longer? painless|painfree
        ^ none|nothing|nope|no|zero in|on|at the|my|left|right? BODY|@ ~~ SORE|HURT|PAIN
        lie|lying|liar|fib|fibbing ~~ no|none|zero|nothing|without
        cant|couldnt|cannot|wont honestly|truthfully|really? say|claim|pretend|tell|swear
        nothing|nothin to write|new|much|major|bad|terrible|serious|crazy|special|unusual|too|out
        not enough|exactly|quite|hardly|bad|too|much|terrible|great|good|sure|so|that|as|really !any
        nothing i cant
        no more|worse|different|change|better|idea|number|clue
        no ~ than
    """,
    "num.after_done": """
        crushed|nailed|killed|aced|smashed it|em|them ,? # $
    """,
    "num.said": """
        SAIDWORD that? FILL|PAINISH|MY+ #
    """,
    "num.past": """
        WEEKDAY it|pain|that|mine|hip|back|knee was|were|hit ARTICLE? #
        the # i had|was|got|felt ~ in|last|on MONTH|week|month|spring|winter|summer|fall|january|WEEKDAY
        ^ WEEKDAY # ,|.
        pain|it then was|is FILL* #
        WEEKDAY # , WEEKDAY
        childbirth|labour|labor|stones|stone|birth|shingles|toothache|surgery|operation|op|canal|migraine was|is|were|being|wouldve|be a|an|about|only* #
        ^ back in the day ~~ #
        WEEKDAY FILL* # ,|.|but|and ~ >today
        # in the? spring|summer|winter|autumn
        <today|now|tonight ,|but|and was|had FILL* # FILL* on? WEEKDAY
        <today|now|tonight ,? but|and? it|that was FILL* # FILL* on? WEEKDAY
        was|had FILL* # on? WEEKDAY ,? but|and|now|its|today ~ >#
        # when|before|til|till|until i|we|you first? ~ therapy|treatment|physio|pt|rehab|coming|seeing|with|here|program
        # before
        before ITS|PAINNOUN|WASWORD|MY FILL* PAINISH? FILL* #
        before|until therapy|treatment|physio|physiotherapy|rehab|pt|injection|injections|shot|shots ~~ # ~~ >today|nowadays|lately|these
        when ~ started|began|came|met|joined ~ you|therapy|treatment|physio|pt|rehab|coming|seeing|here|program ~ was|were FILL* #
        LASTTIME|ago at|about|around? this time ~ #
        year|month|week|summer|winter ago ~ #
        # ~ every|ever|each day|night|morning .|,|but now|today|lately|nowadays
    """,
    "num.own": """
        BODY hit|hits|reached|reaches ARTICLE? #
        pain|it hit|reached #
        id|would|ill|could|lets SAIDWORD|call ~ #
    """,
    "num.other": """
        when i|he|she was # ,|.|$|and|but|on
        when i|he|she was # years
        score|point|points # for|to
        # for the old|good lady|girl|guys|team|man
        had|have|got # !PAINISH !today !now !tonight !in !on !out !of !at !after !before !when !while !but !and !or !maybe !again !yesterday !last !this !all !the !as !though !tho !too _
    """,
    "num.theirs": """
        hed|shed|he|she|they|theyd would? say|says|said|rate|rates ARTICLE? #
    """,
}
