"""English wishes to hear no more in roundabout words, what only sounds like one, and stretches of time beside it.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

# What ends nothing, whatever the judge makes of it: "if you stop the texts", "don't unsubscribe me".
_NO_WISH = """
        ^ if you|u|yall|ya stop|stopped|quit TEXTVERB|sending|the|these|my
        ,|.|but|and|because|cause if you|u|yall|ya stop|stopped|quit TEXTVERB|sending|the|these|my
        why dont|wont|havent|arent|didnt|not you|u|yall|ya ever|even|just? TEXTVERB
        said|say|know|told|sure ~ when to stop
        why did|have|are|would you|u|yall|ya just|suddenly|all|even|ever? stop|stopped|stopping|quit
        why|when|how did|have|has|do the|my|these|those|your|all|it|they ~ stop|stopped
        i|we wont|dont|didnt|never|wouldnt ever? unsubscribe|stop|quit|cancel TEXTVERB|the|these|those|my|them|it|$|,|.
        ^ no|oh|hey|ok? ,? dont|never unsubscribe|unsub|remove|delete|drop|take me|us|my|this
"""
# Commands of a word or two, as one ends a machine, and what is asked of a number or of what is kept.
_COMMANDS = """
        ^ please|pls|ok|okay|hello|hi? ,? exit|halt|terminate|desist|abort|deregister|unlist|delist|vamoose|scram please|pls|now|robot|immediately? ,? please|robot? .|$
        ^ please|pls|ok|okay? un subscribe
        ^ please|pls? de register
        ^ leave this|the? group|chat .|$
        ^ not another text|message|msg|word|reminder .|,|$|please|from
        ^ please|pls|ok|okay|oh|now? ,? knock it off please|now|already? .|,|$
        ^ please|pls|ok|okay|oh|now? ,? lay off please|now|already|will? .|,|$
        ^ enough already .|,|$
        delete|purge|expunge|erase|scrub|wipe|destroy all? my|our|this information|info|data|details|record|records|account|profile
        purge|expunge|unlist|delist|deregister all? my|our|this number|phone|name|mobile
        unlist|delist|deregister|unenroll me|us
        rescind|rescinding my|our|the|all? permission|consent|authorization
        take|taking back my permission|consent
        ^ please|pls|go|just? go|just? bug|pester|harass|bother someone|somebody|anyone|anybody else
        call off the dogs
        no thanks|thank you? to all|any|future|more future|more|further? TEXTNOUN|TEXT
        forget you|u|yall|ya ever? had|have my number
        wont|shant|dont|not be? needing|need these|them|those any|no? longer|more|anymore .|,|$|thanks|thank|please
        resign|resigning|resignation from the|your|these|all exercise|exercises|daily? TEXTNOUN|reminders
        wants|want|asks|asked|wishes the|these|those|all TEXTNOUN ended|stopped|discontinued|off
        i|we want no part of this|these|them ,|.|$|anymore|please|texting|TEXTNOUN
        ^ you|u|yall|ya can|may quit|stop now .|,|$|dear|please|thanks|thank
        ,|.|but|so|thanks you|u|yall|ya can|may quit|stop now .|,|$|dear|please|thanks|thank
        who|whom ever? sends these|this|them ~ stop|quit
"""
RULES = {
    "opt_out": _COMMANDS
    + """
        no need to|for keep|continue|go sending|texting|messaging|on
        no need to|for send|sending|text|texting|message|messaging me|these|those|them|us anymore|any|more|now|from
        discharged ~~ no|stop|dont need|send|text|keep|more
        dont|do not|not send them|those|these ,|.|$|anymore|again|please|to me
        stop|quit writing|mailing|phoning|ringing to? me|us|my
        ^ please? discontinue ,|.|$|i|we|my|now
        ^ REMOVE me|us|my number? ,|.|$|pls|please|thanks
        no to the|these|your|any? TEXT|TEXTNOUN
        switch these|those|the|your|all|them? TEXTNOUN? off
        switch off these|those|the|your|all? TEXTNOUN
        dont|do|never tex|texted|txt me|us|this
        bin|ditch|junk|trash|burn my|this|our number|phone|contact
        not get|getting these|those|them|any anymore|again|ever|,|.|$
        TEXTNOUN ~ ,|. ~ cut it|that|them out
        would|d like|wish|prefer|love|appreciate to discontinue|stop|cancel|end|terminate|quit|unsubscribe|opt|cease ~ TEXTNOUN|TEXT|out|these|this|from
        text|texts|messages|message|msgs ~~ turn|shut|switch it|them|this off ,|.|$|please|now
        like|want|wish|prefer to discontinue|terminate|end the|these|your|all|my|receiving TEXTNOUN|TEXT
        give over|up with? the|these|your TEXTNOUN|TEXTVERB
        can|could|may|should|might|how i|we please|just|simply? unsubscribe|unsub|unsuscribe|unsubcribe|deregister|unenroll !from
        can|could|may|might i|we please|just|simply? STOPIT getting|receiving|these|the|those|your|all|my? exercise|daily? TEXTNOUN|this
        can|could|may|might i|we please|just|simply? stop|quit|end getting|receiving these|them|those|this
        can|could|may|might i|we please|just? be|get taken|removed|dropped|unsubscribed off|from ,|.|$|by|now|please|this|the|your|these|at
        what|how do|must|should|can|could|would i|we have|need|got? to? do|say|text|send|reply|type|press|push|write|answer to|so unsubscribe|unsub|opt|unenroll
        what|how do|must|should|can|could|would i|we have|need|got? to? do|say|text|send|reply|type|press|push|write|answer to|so STOPIT getting|receiving|the|these|those|your|all|my? TEXTNOUN
        what|how do|must|should|can|could|would i|we have|need|got? to? do|say|text|send|reply|type|press|push|write|answer to|so STOPIT getting|receiving|being these|them|those|texted|reminded|messaged
        what|how do|must|should|can|could|would i|we have|need|got? to? do|say|text|send|reply|type to|so get|make these|them|the|this TEXTNOUN? to? stop
        what|how do|must|should|can|could|would i|we have|need|got? to? do|say|text|send|reply|type to|so get|be off|out|taken|removed of|off|from? this|the|your|these TEXTNOUN|thing|$
        when can|will|do|may i|we stop|quit getting|receiving these|them|those|the|your|this TEXTNOUN|?|.|,|$
        can|could|will|would you|u|yall please|pls|kindly|just|possibly? remove|delete|cancel|end my|the|these|those|your|all|any exercise|exercises|daily|balance|therapy? reminder|reminders|texts|notifications|alerts|program|service !on !at !until !till !in !while !this !today !tomorrow !WEEKDAY
        ^ STOPKEY because|cause|cuz|since|as ~~ died|dead|deceased|hospice|cured|healed|hate|hates|annoying|useless|fed
        ^ STOPKEY because|cause|cuz|since|as ~ passed !out
        ^ STOPKEY because|cause|cuz|since|as i|we|im|ive|weve|he|she have|has|already|just? moved ,|.|$|to|away|house|out|home|and|so|last
        ^ STOPKEY because|cause|cuz|since|as i|we|im|ive|weve|he|she ~ changed|switched ~ therapists|therapist|doctors|doctor|phones|phone|number|numbers|clinic|clinics
        ^ STOPKEY because|cause|cuz|since|as i|we|im|ive|weve|he|she ~ finished|done|through with? ~ therapy|physio|pt|program|rehab|treatment|this|you
        ^ STOPKEY because|cause|cuz|since|as ~ phone|number belongs|is
        ^ STOPKEY because|cause|cuz|since|as ~ dont|didnt|never|no|not ~ want|need|like|signed|sign|asked|ask|agreed|interested
        ^ STOPKEY|STOPIT at once|last
        ^ stop|quit in the? future
        ^ stop|quit|cease doing this|that|it to? me|us? ,|.|$|now|please
        ^ stop|quit|cease doing this|that to me|us
        ,|. please? stop|quit right? now|immediately|already $
        already unsubscribed|unenrolled !from
        have|get me|us|my removed|unsubscribed|deleted ,|.|$|please|now|by|from
        can|could|may|might i|we please|just? be|get removed|unsubscribed|deleted ,|.|$|by|now|please
        these|those|TEXT ~~ ,|. no more please|pls|,|.|$
        no longer wish|want|care|wants|wishes to take part|participate
        dont|not|longer wish|want|care to take part in the|this|your ~ TEXTNOUN|TEXTVERB|texting|study
        like|want|wanna|need|wish out of the|this|your|these TEXTVERB|TEXTNOUN|texting|reminder thing|program|service|stuff|,|.|$?
        not|never|no|didnt ~ permission|authorize|authorized|allowed|consent|right|give ~ TEXTVERB me|us|this
        didnt|never|not give|gave|given you|yall|u my number to|for TEXTVERB
        you|u|yall cant|cannot|mustnt|shouldnt be? TEXTVERB me|us|this|here ~ MORE|again|ever !today
        you|u|yall can|may|must|should not be? TEXTVERB me|us|this|here ~ MORE|again|ever !today
        werent|arent|isnt|wasnt|shouldnt|wouldnt|hadnt supposed|allowed|meant|be|to* TEXTVERB me|us|this ~ MORE|again|phone|$
        hadnt|havent|never|didnt agreed|agree|consented|consent|authorized ~ TEXTVERB|texted|messaged|contacted
        way to not be|get texted|messaged|reminded|contacted
        dont|never|not call|ring|phone|email me|us? ,? or|nor text|message|contact !today !tonight !tomorrow !till !until !on !at !before
        dont|never|not call|ring|phone|email , text|message or|nor|and email|call|write
        nobody|noone should|can|may|must|is to? TEXTVERB me|us
        get|take this|that|it|these off my|our phone|cell|mobile
        make|let|be|is this|that|it be? the|your|my last|final TEXTNOUN|one|time you|u|i|that|ever|,|.|$|please
    """,
    "opt_out_not": """
        no more of those|them|these ,? everything|rest|others|all|the else|others|rest|did|done
        ANIMAL|dog|cat|puppy|kitten|grandkids|kids|grandson|granddaughter|bird|goat wouldnt|wont|doesnt|didnt|never leave|leaves me alone
        understand|understanding|follow|following this|these|your|the message|messages|text|texts|words
        count me out !of
        no more? TEXTNOUN|reminders please? this|next week|weekend|month|fortnight ,|.|$|please|i|im|we|cause|because !ever !again
        no more? TEXTNOUN|reminders please? for the? next? #? week|weeks|fortnight|month|days ,|.|$|please|i|im|we|cause|because !ever !again
        off|away|gone ~ # to|till|until|- # MONTH ,? ~ no TEXTNOUN|reminders please|then|while|.|,|$
        # MONTH to|till|until|through # MONTH ~~ dont|not|no send|text|message|reminders|texts|messages !ever
        dont|not|no send|text|message|reminders ~ in|during|for that|this|those time|period|weeks|days|stretch
        son|sons|daughter|brother|sister|friend|friends|neighbor|neighbour|bank|kids|grandkids|grandson|they|he|she|people|scammers|insurance|church wouldnt|wont|didnt|doesnt|dont|never stop|stopped|quit texting|calling|messaging|ringing
        told|tell|asked|ask the|my|that|those bank|son|insurance|store|boss|salesman|company|people|scammers|politicians ~ to? stop|quit
        dont|not|hate|sorry|didnt|never want|mean|wish|like|meant|trying? to? bother|trouble|disturb|worry you|anyone|anybody !again
        kids|children|sons|daughters|family|son|daughter|grandkids|friends dont|never|doesnt|hardly|wont even? text|call|message|write
        this is my number|phone|cell|mobile now|use
        dont|not TEXTVERB me|us so|this|that|too early|late|soon ,|.|?|$|in|please|its|it|i|im|we
        turn|turning|turned|switch|shut off the|my|these|this caps|capitals|sound|ringer|stove|tv|telly|television|light|lights|radio|volume|oven|heat|heater|beep|beeping|buzzing|vibration|speaker|flashlight|camera|autocorrect
        push off from|of|the|my|a|using|on
        dont|never|not forget|hesitate|fail to TEXTVERB
        dont|never|not be afraid to TEXTVERB
        cancel this|next|the week|weekend|month
        dont|not TEXTVERB me|us at|during|in|on the|my? night|nights|evening|evenings|morning|mornings|weekend|weekends ~~ ,|. DAYTIME is|are|better|good|work|works|please|only
        no need to send|resend|text it|that again
        dont|not TEXTVERB me|us tomorrow|today|tonight ,|.|$|please|i|im|we|cause|because
        dont|not TEXTVERB me|us on WEEKDAY ,|.|$|please|i|im|we|cause|because
        dont|not TEXTVERB me|us this|next week|weekend|month|WEEKDAY ,|.|$|please|i|im|we|cause|because
        dont|not|never TEXTVERB me|us|them|it? at|before #|CLOCK AMPM? ~ ,|. #|CLOCK AMPM? is|works|would better|good|fine|best|ok|okay|be
        push off with !the !your !these !those
        push off with the|your|these|those !TEXTNOUN
        dont|not|never TEXTVERB me|us|them|it? at|before #|CLOCK AMPM? ~ ,|. make|send|text|after|do|use|try|rather|later|anytime|any|how|noon !not
        must|should|can|could|may|shall|do i|we REMOVE my|the|these ~ off|out
        is # a stop
        wouldnt|wont|couldnt|dont|not give up|trade|miss|lose these|the|your|those TEXTNOUN
        took|taking the|my|that|those|this? EXWORD EXWORD* one|ones|thing|things? off|out|from
    """
    + _NO_WISH,
    # With these a wish to hear no more is no pause, whatever stretch of time stands beside it.
    "for_good": """
        for good|ever
        forever|permanently|altogether|indefinitely
        once and for all
        # ~ SPAN is|are|was|were|has been? plenty|enough|sufficient
    """,
    "for_good_not": """
        not|isnt|aint|wont|dont be? for good|ever
        not|isnt|aint|dont|takes|take|taking|took forever|permanently|altogether|indefinitely
    """,
    "opt_out_sure": """
        cancel|stop|end|quit|drop|kill them|these|those|it|this|all|everything for good|ever
        cancel|stop|end|quit|drop|kill them|these|those|it|this|all|everything forever|permanently|altogether
        TEXTNOUN .|, quit|stop it please|now|already|will
        stop|quit .|, the|your|these|those TEXTNOUN i|is|im
        rather|prefer|wish|better|appreciate|glad|happy|grateful|nice it? if? you|u|yall didnt|wouldnt|dont|not|wont TEXTVERB me|us|this|any|these|$
        after|though i|we|ive|weve said|told|asked you|u|yall|them? to? STOPIT
        if|unless you|u|yall|ya dont|wont|do|not* stop|quit ,? ~~ sue|report|lawyer|police|attorney|block|complain|complaint
        they|clinic|office never|didnt|havent stopped|cancelled|canceled|ended TEXTVERB|sending|these|those|the|my TEXTNOUN?
        not|dont|never to? be contacted|texted|messaged|reminded again|anymore|further|ever
        STOPKEY|STOPIT TEXTVERB|TEXTNOUN|it|this|these|them|me|us* for the last|third|umpteenth|tenth|hundredth|# ORD? time
        what|how do|must|should|can|could|would i|we have|need|got? to? text|send|reply|type|press|push|write|answer to STOPIT this|these|them|it? ,|.|$
        dont|doesnt|not|longer want|wish|care|interested|like to|in take|taking part|participate|participating ,|.|$|anymore|any
        no longer interested in doing|continuing this|that|it|these|them ,|.|$|please|anymore
        ^ STOPIT ~ till|until hell|kingdom|doomsday
        if|when|until|till|unless you|u|yall|ya dont|wont|cant|didnt stop|quit|cease|end|cancel TEXTVERB|sending|bothering|these|the|those|this|your|all|my|it
        if|when|until|till|unless you|u|yall|ya do|will|can not stop|quit|cease|end|cancel TEXTVERB|sending|bothering|these|the|those|this|your|all|my|it
        unless you|u|yall|ya stop|quit|cease|end|cancel TEXTVERB|sending|bothering|these TEXTNOUN?
        if|until|till|when you|u|yall|ya dont|wont|cant|didnt REMOVE|take me|us|my name|number|phone? off|from
        if|until|till|when you|u|yall|ya do|can|will not REMOVE|take me|us|my name|number|phone? off|from
        unless|until|till you|u|yall|ya REMOVE|take me|us|my name|number|phone? off|from
        if these|those|the|your|all TEXTNOUN dont|doesnt|wont stop|end|cease
        if these|those|the|your|all TEXTNOUN do|does|will not stop|end|cease
        if you|u|yall|ya keep|continue|text|message|send ~ TEXTVERB|me|again ~~ sue|report|lawyer|police|attorney|fcc|complain|complaint|block
        why dont|wont|cant|havent|didnt|arent|not you|u|yall|ya ever|just|please? stop|stopped|quit|cease|end|ended TEXTVERB|sending|bothering|these|those|the|your TEXTNOUN?
        you|u|yall|ya still? never|didnt|havent|still|dont|wont ever? stop|stopped|quit|cancel|cancelled|canceled|end|ended TEXTVERB|sending|these|those|the|your|my|them TEXTNOUN|like|as|,|.|$
        you|u|yall|ya still? never|didnt|havent|dont|wont ever? stop|stopped|quit TEXTVERB|sending|bothering
        cant|couldnt|cannot|unable|possible to? unsubscribe|unsub|unsuscribe|unsubcribe|deregister|unenroll !from
        can|could|does|will|did not unsubscribe|unsub|unsuscribe|unsubcribe !from
        cant|couldnt|cannot|wont|doesnt|didnt|not unsubscribe|unsub me|us|this|it|from this|these|the|your|you|,|.|$
        told|asked|said|say|requested|texted|wrote you|u|yall|ya|them|this|it? once|#|many? times? before|already ,|.|to|please? STOPIT|stop
        told|asked|said|say|requested|texted|wrote you|u|yall|ya|them|this|it? once|#|many? times? before|already ,|.|to|please? REMOVE|take me|us|my|him|her
        STOPIT|dont|not|never ~ TEXTVERB|TEXT|send ~ till|until hell|kingdom|doomsday
        no more today|now|tonight ,? or|nor|and ever|never|any
        not taking|take part ~ anymore|longer
        want|like|ask|asked|asking|wish to be removed ,|.|$|please|by|now|at
        want|like|ask|asked|asking|need|wish to be taken off ,|.|$|please|now|this
        want|like|ask|asked|asking|need|wish to be taken off by|at WEEKDAY|tomorrow|today|tonight|once
        STOPIT today|todays|tonight|tonights|tomorrow|tomorrows|WEEKDAY|this ~ AND all|every|any of? the? rest|others of them|these|those|the
        no need|reason|call to TEXTVERB ~~ ever|anymore|longer !today !tonight !till !until !this
        no need|reason|call to TEXTVERB ~~ any more|longer !today !tonight !till !until !this !EXERNOUN
        no need|reason|call to TEXTVERB ~ again ,|.|$|please|ever
        no need|reason|call to TEXTVERB ~~ from now|here
        dont|not need|have to TEXTVERB me|us ~ ever|anymore !today
        STOPIT today|todays|tonight|tonights|tomorrow|tomorrows|WEEKDAY|this ~ AND all|everything|anything|any ~ after|afterwards|thereafter|following|from|else|future
        STOPIT today|todays|tonight|tonights|tomorrow|tomorrows|WEEKDAY|this ~ AND all|every|any|the of? the|my|your? other|others|future one|ones|TEXTNOUN
        STOPIT today|todays|tonight|tonights|tomorrow|tomorrows|WEEKDAY|this ~ AND all|every|any the? others|rest ,|.|$|please
        texts|messages|reminders|notifications|alerts|msgs|txts|emails ~~ make|get them|these|those to? stop
        texting|messaging|reminding is|are ~~ make|get it|this to? stop
        dont|doesnt|not|no want|need|wish|more|care these|them|those|it|any|your|for|the* TEXTNOUN? full stop
        STOPIT|dont|not|never ~ TEXTVERB ~~ or|nor at all|$
        STOPIT|dont|not|never ~ TEXTVERB ~~ or|nor ever
        not|no|isnt|aint interested|interest in doing|continuing|keeping this|it|that|these|them up? anymore|longer|again !today
        not|no interested|interest in doing|continuing this|it|that|these|them any more|longer !today !tonight !now
        what|how do|must|should|can ~ i|we ~~ so|for you|yall|ya to|would|will|can? leave me|us alone|be
        until|till i ask|say|tell ~~ which|thats|meaning|is ~ never
        you|u|yall|ya ~ start|started|starting|begin|began TEXTVERB ~ again ~ ,|. please|just? stop|quit|REMOVE
    """,
    "opt_out_key": """
        never|dont want|need|send another|one more? one? of|from these|those|you ,|.|$
        fact|actually|matter ,? just|please? STOPIT TEXTVERB|TEXTNOUN|altogether|completely
        STOPIT TEXTVERB|TEXTNOUN|sending ~ altogether|completely|entirely|permanently|forever
        ^ STOPIT ~ till|until hell|kingdom|doomsday
        STOPIT|dont|not|never ~ TEXTVERB|TEXT|send ~ till|until hell|kingdom|doomsday
        until|till i ask|say|tell ~~ which|thats|meaning|is ~ never
    """,
    "opt_out_sure_not": """
        you|u|youve|dr|doc|doctor|therapist|he|she|they|pt ~ told|said|say|asked|requested|wrote|texted once|twice|before|already
        no need to send|resend|text it|that again
        i|we dont|didnt|wont|wouldnt|never unsubscribe|stop|quit|cancel
    """,
    "opt_in_not": """
        can|could|should|may|shall|must|do|to|would|will|if|when i|we? add|put !me !us !my !him !her !this !myself !ourselves !back !on !mine
        can|could|should|may|shall|must|do|to|would|will|if|when i|we? add|put my !name !number !phone !cell !mom !wife !husband
    """,
    "opt_out_denied": _NO_WISH,
    "opt_out_past": """
        wrong|sorry|silly|foolish|mistake|dumb to quit|stop|cancel|leave|unsubscribe
        didnt|never|not|dint mean|want|intend|meant|ask to opt|stop|unsubscribe|quit
    """,
    "pause_span_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "pause_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "pause_sure_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "pause_span": """
        for that|this|the time|period|stretch|spell only
        from the? # _? to|till|until|through|thru the? #
    """,
    "pause_until": """
        til|till|until|untill WEEKDAY|mon|tues|wed|thurs|fri
        till|until|til thanksgiving|christmas|easter|spring|summer|winter|fall|january|new
    """,
}
